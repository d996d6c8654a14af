"""Words for edgings and bands: needles out of work, folds and picots, what is hung on again, ribs latched up."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.knit import steps as st
from walewright.knit.manners import FoldOnto, FoldWay, LinkedOver, Sooner
from walewright.knit.operations import HungPart
from walewright.write.grading import Graded
from walewright.write.model import Run
from walewright.write.said import RC, ST, STS, Phrase, StepSaid, counted, rows, span, sts, worded


def every_out_of_work(s: StepSaid) -> Phrase:
    """Words of `steps.EveryOutOfWork`."""
    every = s.graded("every").ordinal()
    left = (" needle from the left back out of work, but not the last one: ", *sts(s.graded("stitches")))
    return worded("push every ", every, *left)


def picot_row(s: StepSaid) -> Phrase:
    """Words of `steps.PicotRow`."""
    which = ", beginning with the 2nd from the left and leaving out the last"
    return worded("move every 2nd ", ST, f"{which}, one needle to the right and leave the empty needles in work")


def use_looser(s: StepSaid) -> Phrase:
    """Words of `steps.UseLooser`."""
    if not s.any.tension:
        return worded(f"change to {s.any.yarn}, the next looser setting after tension {s.any.than}")
    return worded(f"change to {s.any.yarn}, tension {s.any.tension}, {s.any.numbers} looser than tension {s.any.than}")


ONTO: Mapping[FoldOnto, tuple[str, str]] = {
    "the same needles": ("", "each on the needle that knitted it"),
    "all needles": (
        "bring the needles out of work back to work; ",
        "each on the needle that knitted it, but where the needle to the right of that one is empty, on the empty one",
    ),
}


WAYS: Mapping[FoldWay, str] = {
    "in front": "in front, towards you, purl sides together,",
    "behind": "behind, away from you, knit sides together,",
}


def fold_up(s: StepSaid) -> Phrase:
    """Words of `steps.FoldUp`."""
    before, onto = ONTO[s.any.onto]
    loops = counted(s.graded("loops"), "loop", "loops")
    hung = f" of the first garment row from left to right, {onto}: "
    folded = f"fold the work up {WAYS[s.any.way]} and hang the "
    return worded(before + folded, *loops, hung, *sts(s.graded("stitches")))


OVER: Mapping[LinkedOver, tuple[str | Run, ...]] = {
    "empty needles": (),
    "the other piece": (", over the ", STS, " of the other piece"),
}


def hang_to_link(s: StepSaid) -> Phrase:
    """Words of `steps.HangToLink`."""
    loops = counted(s.graded("stitches"), "open loop", "open loops")
    edge = f" along the {PARTS[s.any.part]} of the {s.any.piece}{_copy(s)} {s.any.edge}, {_end(s)}, on needles "
    return worded(f"{s.any.facing} side facing, hang the ", *loops, edge, *span(s), *OVER[s.any.over])


def _copy(s: StepSaid) -> str:
    return f" ({s.any.copy})" if s.any.copy else ""


def _end(s: StepSaid) -> str:
    """Which end of an edge hangs at the left."""
    return f"its {s.any.left_end} end at the left" if s.any.left_end in ("left", "right") else f"its {s.any.left_end} at the left"


def rehang_start(s: StepSaid) -> Phrase:
    """Words of `steps.RehangStart`."""
    loops = counted(s.graded("stitches"), "loop", "loops")
    row = f" of the first row of the {s.any.piece}"
    return worded(f"{s.any.facing} side facing, hang the ", *loops, row, " on these needles and unravel its waste yarn")


PARTS: Mapping[HungPart, str] = {"whole": "whole", "left": "left part", "centre": "centre", "right": "right part"}


def pick_up_along(s: StepSaid) -> Phrase:
    """Words of `steps.PickUpAlong`."""
    edge = f" along the {PARTS[s.any.part]} of the {s.any.piece}{_copy(s)} {s.any.edge}, {_end(s)}, on needles "
    if s.any.loops == "open":
        loops = counted(s.graded("stitches"), "open loop", "open loops")
        return worded(f"{s.any.facing} side facing, hang the ", *loops, edge, *span(s))
    return worded(f"{s.any.facing} side facing, pick up ", *sts(s.graded("stitches")), edge, *span(s))


def _beginning(s: StepSaid) -> tuple[Run, Run, Run]:
    """The needles that a rib's count outwards begins with, and which of the wales it takes."""
    every, right = s.graded("every"), s.graded("begin")
    left = Graded(tuple(None if b is None else -1 - b for b in right.values), s.group)
    return left.needle(), right.needle(), every.ordinal()


def latch_rib(s: StepSaid) -> Phrase:
    """Words of `steps.LatchRib`."""
    left, right, every = _beginning(s)
    return worded(
        *("beginning with ", left, " and ", right, ", drop every ", every),
        *(" ", ST, " outwards, end needles left out, ", *rows(s.graded("rows"))),
        " deep, and latch it up on the other face",
    )


_SOONER: Mapping[Sooner, tuple[str | Run, ...]] = {
    "": (),
    "disturbed": (
        *(" and never deeper than to the ", RC, "named before, sooner where its ", ST),
        " is about to be moved, cast off, held, taken off or hung with another",
    ),
}


def _at_rows(s: StepSaid) -> tuple[str | Run, ...]:
    """The rows of the stages. Sizes that have fewer have dashes before their last one."""
    lists = [list(step.rows) if isinstance(step, st.LatchInStages | st.LatchPanelInStages) else None for step in s.steps]
    longest = max(len(rows) for rows in lists if rows)
    columns = [_graded_row(lists, i, longest, s) for i in range(longest)]
    *most, last = (column.number() for column in columns)
    named: list[str | Run] = [", at ", RC]
    for number, row in enumerate(most):
        named += [", " if number else "", row]
    return (*named, " and " if most else "", last, ", each time down to where it was latched up last", *_SOONER[s.any.sooner])


def _graded_row(lists: list[list[int] | None], number: int, longest: int, s: StepSaid) -> Graded:
    def row(rows: list[int] | None) -> int | None:
        if not rows or (number < longest - 1 and number >= len(rows) - 1):
            return None
        return rows[-1] if number == longest - 1 else rows[number]

    return Graded(tuple(row(rows) for rows in lists), s.group)


def latch_in_stages(s: StepSaid) -> Phrase:
    """Words of `steps.LatchInStages`."""
    left, right, every = _beginning(s)
    which = (" ", ST, " on the other face, beginning with ", left, " and ", right, " and counting outwards, end needles left out")
    return worded("from here on latch up every ", every, *which, *_at_rows(s))


def latch_panel_in_stages(s: StepSaid) -> Phrase:
    """Words of `steps.LatchPanelInStages`."""
    left, right, every = _beginning(s)
    which = (" ", ST, " on the other face, counted outwards from ", left, " and ", right, ", only those on needles ", *span(s))
    return worded("from here on latch up every ", every, *which, ", end needles left out", *_at_rows(s))


def latch_panel(s: StepSaid) -> Phrase:
    """Words of `steps.LatchPanel`."""
    left, right, every = _beginning(s)
    return worded(
        *("of every ", every, " ", ST, " counted outwards from ", left, " and ", right, ", drop those on needles ", *span(s)),
        *(", end needles left out, ", *rows(s.graded("rows")), " deep, and latch them up on the other face"),
    )
