"""Words for what the finished pieces are to each other, and for how they are put together."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.knit.operations import SeamWay
from walewright.knit.steps import EdgeInSeam, SeamOf
from walewright.write.grading import Graded
from walewright.write.model import Run
from walewright.write.said import RC, Phrase, StepSaid, rows, worded


def edge_is(s: StepSaid) -> Phrase:
    """Words of `steps.EdgeIs`."""
    start, end = s.graded("from_row").number(), s.graded("to_row").number()
    edges, make = ("edge", "makes") if s.any.where in ("left", "right") else ("edges", "make")
    return worded(f"the {s.any.where} {edges} from ", RC, start, " to ", RC, end, f" {make} the {s.any.edge}")


JOINED: Mapping[SeamWay, str] = {"sewn": "join", "gathered": "gather", "grafted": "graft"}


HOW = {
    "open": ", loop for loop, by grafting, or on the bed, both on the same needles, with 1 row knitted, "
    "2 to 3 numbers looser, and cast off",
    "no tail": ", loop for loop with a new end of yarn, four times as long as the row",
    "grafted": ", loop for loop with the long tail",
}


def join_edges(s: StepSaid) -> Phrase:
    """Words of `steps.JoinEdges`."""
    easing, longer = s.graded("easing_mm"), s.graded("longer_mm")
    eased: tuple[str | Run, ...] = (", easing in up to ", easing.number(), " mm")
    if not longer.always(0):
        shorter = s.any.longer_mm < 0
        by = Graded(tuple(None if v is None else abs(v) for v in longer.values), s.group)
        if s.any.edges == "beyond":
            longer_one = ", the second reaching " if shorter else ", the first reaching "
            eased = (longer_one, by.number(), " mm beyond, give or take ", easing.number(), " mm")
        else:
            eased = (", stretching it " if shorter else ", easing in ", by.number(), " mm, give or take ", easing.number(), " mm")
    elif easing.always(0):
        eased = ()
    strips = f", and on along the ends of {s.any.strips}" if s.any.strips else ""
    how = HOW.get(s.any.edges or s.any.way, "")
    return worded(f"{JOINED[s.any.way]} {_seams(s.any.seams)}", *_matched(s), *eased, how, strips)


def _seams(seams: Sequence[SeamOf]) -> str:
    """ "back armhole left, then front armhole right to sleeve end (1st), from its right end": sides in the order of the seam."""
    return " and ".join(f"{_side(s.one)} to {_side(s.other)}" if s.other else f"{_named(s.one)} upon itself" for s in seams)


def _side(edges: Sequence[EdgeInSeam]) -> str:
    return _named(edges) + _from(edges[0].begin)


def _named(edges: Sequence[EdgeInSeam]) -> str:
    return " then ".join(f"{e.piece}{f' ({e.copy})' if e.copy else ''} {e.edge}" for e in edges)


def _from(begin: str) -> str:
    """Where a side begins; nothing said: at the bottom of its rows."""
    if begin == "bottom":
        return ""
    return f" from its {begin}" if begin == "top" else f" from its {begin} end"


def _matched(s: StepSaid) -> tuple[str | Run, ...]:
    """What lies against what."""
    if s.any.rows:
        return (", row for row, ", *rows(s.graded("rows")))
    if s.any.one_mm:
        return (", ", s.graded("one_mm").number(), " mm to ", s.graded("other_mm").number(), " mm")
    return ()
