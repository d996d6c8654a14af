"""Words for what is hung on to finished pieces, and for how pieces are put together."""

from __future__ import annotations

from walewright.write.grading import Graded
from walewright.write.model import Run
from walewright.write.said import Phrase, Said, counted, rows, span, sts, worded


def rehang_start(s: Said) -> Phrase:
    """Words of `steps.RehangStart`."""
    loops = counted(s.graded("stitches"), "loop", "loops")
    row = f" of the first row of the {s.any.piece}"
    return worded("wrong side facing, hang the ", *loops, row, " on these needles and unravel its waste yarn")


PARTS = {"whole": "whole", "left": "left part", "centre": "centre", "right": "right part"}


def pick_up_along(s: Said) -> Phrase:
    """Words of `steps.PickUpAlong`."""
    edge = f" along the {PARTS[s.any.part]} of the {s.any.piece} {s.any.edge} on needles "
    return worded("pick up ", *sts(s.graded("stitches")), edge, *span(s))


def _beginning(s: Said) -> tuple[Run, Run, Run]:
    """The needles that a rib's count outwards begins with, and which of the wales it takes."""
    every = s.graded("every")
    right = Graded(tuple(None if e is None else e // 2 for e in every.values), s.group)
    left = Graded(tuple(None if e is None else -1 - e // 2 for e in every.values), s.group)
    return left.needle(), right.needle(), every.ordinal()


def latch_rib(s: Said) -> Phrase:
    """Words of `steps.LatchRib`."""
    left, right, every = _beginning(s)
    return worded(
        *("beginning with ", left, " and ", right, ", drop every ", every),
        *(" st outwards, end needles left out, ", *rows(s.graded("rows"))),
        " deep, and latch it up on the other face",
    )


def latch_panel(s: Said) -> Phrase:
    """Words of `steps.LatchPanel`."""
    left, right, every = _beginning(s)
    return worded(
        *("of every ", every, " st counted outwards from ", left, " and ", right, ", drop those on needles ", *span(s)),
        *(", end needles left out, ", *rows(s.graded("rows")), " deep, and latch them up on the other face"),
    )


# ----------------------------------------------------------------- what the piece is to the others


def edge_is(s: Said) -> Phrase:
    """Words of `steps.EdgeIs`."""
    start, end = s.graded("from_row").number(), s.graded("to_row").number()
    edges, make = ("edge", "makes") if s.any.where in ("left", "right") else ("edges", "make")
    return worded(f"the {s.any.where} {edges} from RC ", start, " to RC ", end, f" {make} the {s.any.edge}")


JOINED = {"sewn": "join", "gathered": "gather", "grafted": "graft", "linked": "link"}


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
    return worded(f"{JOINED[s.any.way]} {one} to {other}", *eased)
