"""Words for what the finished pieces are to each other, and for how they are put together."""

from __future__ import annotations

from walewright.write.grading import Graded
from walewright.write.model import Run
from walewright.write.said import Phrase, Said, rows, worded


def edge_is(s: Said) -> Phrase:
    """Words of `steps.EdgeIs`."""
    start, end = s.graded("from_row").number(), s.graded("to_row").number()
    edges, make = ("edge", "makes") if s.any.where in ("left", "right") else ("edges", "make")
    return worded(f"the {s.any.where} {edges} from RC ", start, " to RC ", end, f" {make} the {s.any.edge}")


JOINED = {"sewn": "join", "gathered": "gather", "grafted": "graft", "linked": "link"}


HOW = {
    "open": ", loop for loop, by grafting, or on the bed, both on the same needles, with 1 row knitted, "
    "2 to 3 numbers looser, and cast off",
    "no tail": ", loop for loop with a new end of yarn, four times as long as the row",
    "grafted": ", loop for loop with the long tail",
    "linked": ", on the bed as told under the heading of the link",
}


def join_edges(s: Said) -> Phrase:
    """Words of `steps.JoinEdges`."""
    one, other = s.any.one.replace(" + ", " and "), s.any.other.replace(" + ", " and ")
    easing, longer = s.graded("easing_mm"), s.graded("longer_mm")
    eased: tuple[str | Run, ...] = (", easing in up to ", easing.number(), " mm")
    if not longer.always(0):
        shorter = s.any.longer_mm < 0
        by = Graded(tuple(None if v is None else abs(v) for v in longer.values), s.group)
        eased = (", stretching it " if shorter else ", easing in ", by.number(), " mm, give or take ", easing.number(), " mm")
    elif easing.always(0):
        eased = ()
    return worded(f"{JOINED[s.any.way]} {one} to {other}", *_matched(s), *eased, HOW.get(s.any.edges or s.any.way, ""))


def _matched(s: Said) -> tuple[str | Run, ...]:
    """What lies against what."""
    if s.any.rows:
        return (", row for row, ", *rows(s.graded("rows")))
    if s.any.one_mm:
        return (", ", s.graded("one_mm").number(), " mm to ", s.graded("other_mm").number(), " mm")
    return ()
