"""The words: one English template for each kind of step.

A template gets one column of the alignment (the same step in every size that works it) and gives a phrase without
capital or full stop; `sentences` puts phrases together. Each template has a rule of the same name in
`grammar/instructions.lark`: what is said here must be readable there.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from walewright.knit import steps as st
from walewright.knit.steps import Step
from walewright.write.grading import Graded
from walewright.write.model import Run


@dataclass(frozen=True, slots=True)
class Said:
    """One step as all sizes have it (None: skipped there), printed for the sizes `group`."""

    steps: tuple[Step | None, ...]
    group: tuple[int, ...]

    @property
    def any(self) -> Any:
        """A size's step, for its text fields: they agree in all."""
        return next(s for s in self.steps if s is not None)

    @property
    def working(self) -> tuple[int, ...]:
        """Those of the group that work the step."""
        return tuple(i for i in self.group if self.steps[i] is not None)

    def graded(self, field: str) -> Graded:
        return Graded(tuple(None if s is None else getattr(s, field) for s in self.steps), self.group)

    def constant(self, value: int) -> Graded:
        """`value` in every size that works the step, so that a dash can say who does not."""
        return Graded(tuple(None if s is None else value for s in self.steps), self.group)


Phrase = tuple[Run, ...]


def phrase(said: Said) -> Phrase:
    """The words of one step. Raises KeyError for a kind of step without a template."""
    return TEMPLATES[type(said.any)](said)


def has_number(step: Step) -> bool:
    """Whether the step's phrase has a number that can be a dash for the sizes that skip it."""
    return not isinstance(step, _NUMBERLESS) and not (isinstance(step, st.JoinEdges) and step.easing_mm == 0)


def _phrase(*parts: str | Run) -> Phrase:
    return tuple(Run(p) if isinstance(p, str) else p for p in parts if p)


def _counted(number: Graded, one: str, many: str) -> tuple[Run, str]:
    return number.number(), f" {number.of(one, many)}"


def _sts(number: Graded) -> tuple[Run, str]:
    return _counted(number, "st", "sts")


def _rows(number: Graded) -> tuple[Run, str]:
    return _counted(number, "row", "rows")


def _span(said: Said) -> tuple[Run, str, Run]:
    return said.graded("first").needle(), " to ", said.graded("last").needle()


# ----------------------------------------------------------------- setting up


def _needles_to_work(s: Said) -> Phrase:
    return _phrase("bring needles ", *_span(s), " to working position: ", *_sts(s.graded("stitches")))


def _carriage_at(s: Said) -> Phrase:
    return _phrase(f"take the carriage to the {s.any.side} without knitting")


def _waste_start(s: Said) -> Phrase:
    rows = _rows(s.graded("rows"))
    return _phrase("cast on in waste yarn with the comb and knit ", *rows, ", then 1 row with ravel cord")


WAYS = {"e-wrap": "e-wrap", "chain": "latch-tool chain"}


def _closed_start(s: Said) -> Phrase:
    return _phrase(f"cast on all needles in working position by {WAYS[s.any.way]}")


def _use_yarn(s: Said) -> Phrase:
    return _phrase(f"change to {s.any.yarn}, tension {s.any.tension}")


def _set_row_counter(s: Said) -> Phrase:
    return _phrase("set the row counter to ", s.graded("rows").counter())


# ----------------------------------------------------------------- knitting and shaping


def _knit_rows(s: Said) -> Phrase:
    return _phrase("knit ", *_rows(s.graded("rows")))


def _knit_to(s: Said) -> Phrase:
    return _phrase("knit to RC ", s.graded("row").number())


def _in(inset: Graded) -> tuple[str | Run, ...]:
    return () if inset.always(0) else (", ", *_sts(inset), " in")


def _decrease(s: Said) -> Phrase:
    return _phrase("decrease ", *_sts(s.graded("by")), f" at {_ends(s)}", *_in(s.graded("inset")))


def _increase_fashioned(s: Said) -> Phrase:
    return _phrase("increase ", *_sts(s.constant(1)), f" at {_ends(s)}", *_in(s.graded("inset")))


def _ends(s: Said) -> str:
    ends: str = s.any.ends
    return ends if ends == "both ends" else f"the {ends}"


def _increase_at_carriage(s: Said) -> Phrase:
    return _phrase("increase ", *_sts(s.constant(1)), " at the carriage side")


def _cast_off_at_carriage(s: Said) -> Phrase:
    return _phrase("cast off ", *_sts(s.graded("stitches")), " at the carriage side")


def _cast_on_at_carriage(s: Said) -> Phrase:
    return _phrase("cast on ", *_sts(s.graded("stitches")), " by e-wrap at the carriage side")


def _hold_at_end(s: Said) -> Phrase:
    return _phrase(f"at the {s.any.side} end hold ", *_sts(s.graded("stitches")))


def _wrap_held(s: Said) -> Phrase:
    return _phrase(f"wrap the innermost needle held at the {s.any.side}")


def _return_held(s: Said) -> Phrase:
    return _phrase(f"return the needles held at the {s.any.side} to work")


def _repeat(s: Said) -> Phrase:
    inner = repeated(s)
    return _phrase("[", *inner, "]")


def repeated(said: Said) -> Phrase:
    """The words of a repeat as a sentence of its own, without the square brackets of a repeat inside another."""
    parts: list[Run] = []
    # The dash of a size that skips the repeat stands with the times; the body's numbers are for those who work it.
    for position in range(len(said.any.body)):
        steps = tuple(worked(s.body[position]) if isinstance(s, st.Repeat) else None for s in said.steps)
        if any(steps):
            parts += (*([Run(", ")] if parts else []), *phrase(Said(steps, said.working)))
    times = said.graded("times")
    if times.always(1) and all(said.steps[i] is not None for i in said.group):
        return tuple(parts)
    return _phrase(*parts, ": work this ", *_counted(times, "time", "times"), " in all")


def worked(step: Step) -> Step | None:
    """The step, or None where its numbers say that nothing is done."""
    if isinstance(step, st.KnitRows) and step.rows == 0:
        return None
    if isinstance(step, st.Repeat) and (step.times == 0 or not any(worked(s) for s in step.body)):
        return None
    return step


def _mark_edges(s: Said) -> Phrase:
    return _phrase(f"tie a marker thread at both ends for the {s.any.what}")


_CARRIAGES = {"left": 0, "right": 1}


def _now(s: Said) -> Phrase:
    return check(s, f"RC {s.graded('row').text()}, ")


def check(said: Said, counter: str = "") -> Phrase:
    """What must be true, without the counter where the same line has just named its value."""
    stitches = said.graded("stitches")
    sides = tuple(_CARRIAGES[s.side] if isinstance(s, st.Now) else None for s in said.steps)
    # The stitches have the dash of who skips this; the carriage needs none where it is on one side for all others.
    carriage = Graded(sides, said.working).text(lambda side: ("COL", "COR")[side])
    beside = f"and {said.graded('waiting').text()} waiting, " if isinstance(said.any, st.NowInHalf) else ""
    return (Run(f"{stitches.text()} {stitches.of('st', 'sts')}, {beside}{counter}{carriage}", "check"),)


# ----------------------------------------------------------------- parting


def _centre_to_waste(s: Said) -> Phrase:
    stitches = _sts(s.graded("stitches"))
    return _phrase("take the centre ", *stitches, ", ", *_span(s), f", off on waste yarn ({s.any.edge})")


def _hold_part(s: Said) -> Phrase:
    return _phrase(f"put the {s.any.side} half, ", *_span(s), ", into hold until its turn")


def _off_on_waste(s: Said) -> Phrase:
    rows = _rows(s.graded("rows"))
    return _phrase("knit ", *rows, f" of waste yarn over the sts in work and take them off the bed ({s.any.edge})")


def _cast_off_all(s: Said) -> Phrase:
    return _phrase("cast off the sts in work from the carriage side")


def _break_off(s: Said) -> Phrase:
    return _phrase("break off the yarn")


def _return_part(s: Said) -> Phrase:
    return _phrase(f"return the waiting {s.any.side} half, ", *_span(s), ", to work")


# ----------------------------------------------------------------- edgings and bands


def _rehang_start(s: Said) -> Phrase:
    loops = _counted(s.graded("stitches"), "loop", "loops")
    row = f" of the first row of the {s.any.piece}"
    return _phrase("wrong side facing, hang the ", *loops, row, " on these needles and unravel its waste yarn")


PARTS = {"whole": "whole", "left": "left part", "centre": "centre", "right": "right part"}


def _pick_up_along(s: Said) -> Phrase:
    edge = f" along the {PARTS[s.any.part]} of the {s.any.piece} {s.any.edge} on needles "
    return _phrase("pick up ", *_sts(s.graded("stitches")), edge, *_span(s))


def _latch_rib(s: Said) -> Phrase:
    every = s.graded("every")
    right = Graded(tuple(None if e is None else e // 2 for e in every.values), s.group)
    left = Graded(tuple(None if e is None else -1 - e // 2 for e in every.values), s.group)
    return _phrase(
        *("beginning with ", left.needle(), " and ", right.needle(), ", drop every ", every.ordinal()),
        *(" st outwards, end needles left out, ", *_rows(s.graded("rows"))),
        " deep, and latch it up on the other face",
    )


# ----------------------------------------------------------------- what the piece is to the others


def _edge_is(s: Said) -> Phrase:
    start, end = s.graded("from_row").number(), s.graded("to_row").number()
    return _phrase(f"the {s.any.where} edges from RC ", start, " to RC ", end, f" make the {s.any.edge}")


def _join_edges(s: Said) -> Phrase:
    one, other = s.any.one.replace(" + ", " and "), s.any.other.replace(" + ", " and ")
    easing = s.graded("easing_mm")
    eased: tuple[str | Run, ...] = () if easing.always(0) else (", easing in up to ", easing.number(), " mm")
    return _phrase(f"join {one} to {other}", *eased)


def _say(s: Said) -> Phrase:
    return _phrase(f"note “{plain(s.any.text).replace('”', '’')}”")


def plain(text: str) -> str:
    """An author's text on one line."""
    return " ".join(text.split())


TEMPLATES: dict[type[Step], Callable[[Said], Phrase]] = {
    st.NeedlesToWork: _needles_to_work,
    st.CarriageAt: _carriage_at,
    st.WasteStart: _waste_start,
    st.ClosedStart: _closed_start,
    st.UseYarnStep: _use_yarn,
    st.SetRowCounter: _set_row_counter,
    st.KnitRows: _knit_rows,
    st.KnitTo: _knit_to,
    st.Decrease: _decrease,
    st.IncreaseFashioned: _increase_fashioned,
    st.IncreaseAtCarriage: _increase_at_carriage,
    st.CastOffAtCarriage: _cast_off_at_carriage,
    st.CastOnAtCarriage: _cast_on_at_carriage,
    st.HoldAtEnd: _hold_at_end,
    st.WrapHeld: _wrap_held,
    st.ReturnHeld: _return_held,
    st.Repeat: _repeat,
    st.MarkEdges: _mark_edges,
    st.Now: _now,
    st.NowInHalf: _now,
    st.CentreToWaste: _centre_to_waste,
    st.HoldPart: _hold_part,
    st.OffOnWaste: _off_on_waste,
    st.CastOffAll: _cast_off_all,
    st.BreakOff: _break_off,
    st.ReturnPart: _return_part,
    st.RehangStart: _rehang_start,
    st.PickUpAlong: _pick_up_along,
    st.LatchRib: _latch_rib,
    st.EdgeIs: _edge_is,
    st.JoinEdges: _join_edges,
    st.Say: _say,
}

_NUMBERLESS = (
    st.CarriageAt,
    st.ClosedStart,
    st.UseYarnStep,
    st.WrapHeld,
    st.ReturnHeld,
    st.MarkEdges,
    st.CastOffAll,
    st.BreakOff,
    st.Say,
)
