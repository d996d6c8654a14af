"""Words for stitches that leave the bed or come back to it away from the edges: slots, gaps, parts that wait, spreading."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.knit import steps as st
from walewright.knit.manners import SpreadChange
from walewright.knit.steps import Step
from walewright.write.grading import Graded
from walewright.write.model import Run
from walewright.write.said import ST, STS, Phrase, StepSaid, counted, needles, rows, span, sts, worded

CHANGED: Mapping[SpreadChange, str] = {"two together": "2 loops on the next", "an empty needle": "none on the next"}


def spread_evenly(s: StepSaid) -> Phrase:
    """Words of `steps.SpreadEvenly`."""
    rounds: list[str | Run] = []
    for prefix in ("", "more_"):
        times = s.graded(f"{prefix}runs")
        if prefix and times.always(0):
            continue
        singles = s.graded(f"{prefix}singles")
        plain_first = () if singles.always(0) else ("1 loop each on ", *counted(singles, "needle", "needles"), " and ")
        rounds += (*plain_first, f"{CHANGED[s.any.changed]}, ", *counted(times, "time", "times"), "; ")
    rest = Graded(tuple(None if step is None else _rest(step) for step in s.steps), s.group)
    if rest.always(0):
        rounds.pop()
    else:
        rounds += ("1 loop each on the last ", *counted(rest, "needle", "needles"))
    onto = ("hang them back from the left on needles ", *span(s), ", ", *sts(s.graded("stitches")))
    return worded("take the ", STS, " in work off on waste yarn and ", *onto, ": ", *rounds)


def _rest(step: Step) -> int:
    """Needles that get one loop each after the last changed one."""
    assert isinstance(step, st.SpreadEvenly)
    return step.stitches - (step.singles + 1) * step.runs - (step.more_singles + 1) * step.more_runs


_CHAINED = "by chaining them through each other to the right and on to the next needle"


def _again(s: StepSaid) -> tuple[str | Run, ...]:
    return ("cast on again on the same needles by e-wrap", *_length(s))


def _length(s: StepSaid) -> tuple[str | Run, ...]:
    """The yarn that first loops are made of away from the carriage."""
    length = s.graded("length_cm")
    if length.always(0):
        return (" with a separate length of the yarn",)
    return (" with a separate length of at least ", length.number(), " cm of the yarn")


def slot_on_waste(s: StepSaid) -> Phrase:
    """Words of `steps.SlotOnWaste`."""
    return worded("take ", *sts(s.graded("stitches")), ", ", *needles(s), f", off on waste yarn ({s.any.edge}) and ", *_again(s))


def slot_closed(s: StepSaid) -> Phrase:
    """Words of `steps.SlotClosed`."""
    return worded("close ", *sts(s.graded("stitches")), ", ", *needles(s), f", {_CHAINED}; ", *_again(s))


def eyelet_at(s: StepSaid) -> Phrase:
    """Words of `steps.EyeletAt`."""
    way = f" one needle to the {s.any.side} and leave the empty needle in work"
    return worded("move the ", ST, " of ", s.graded("needle").needle(), way)


def _gap(s: StepSaid) -> tuple[str | Run, ...]:
    """The stitches where a piece parts: in the middle of the bed, as a rule."""
    middle = all(step.first + step.last in (-1, 0) for step in s.steps if isinstance(step, st.CentreToWaste | st.CloseCentre))
    stitches = sts(s.graded("stitches"))
    named: tuple[str | Run, ...] = ("the centre ", *stitches) if middle else ("the ", *stitches, " between the parts")
    return (*named, ", ", *needles(s), ", ")


def centre_to_waste(s: StepSaid) -> Phrase:
    """Words of `steps.CentreToWaste`."""
    return worded("take ", *_gap(s), f"off on waste yarn ({s.any.edge})")


def close_centre(s: StepSaid) -> Phrase:
    """Words of `steps.CloseCentre`."""
    return worded("close ", *_gap(s), _CHAINED)


def cast_on_between(s: StepSaid) -> Phrase:
    """Words of `steps.CastOnBetween`."""
    return worded("cast on ", *sts(s.graded("stitches")), " by e-wrap on ", *needles(s), " between the parts", *_length(s))


def hold_part(s: StepSaid) -> Phrase:
    """Words of `steps.HoldPart`."""
    return worded(f"put the {s.any.side} part, ", *needles(s), ", into hold until its turn")


def part_on_cord(s: StepSaid) -> Phrase:
    """Words of `steps.PartOnCord`."""
    tally = ("; it waits ", *rows(s.graded("rows")), " for its turn, too long to wait right out")
    how = ", by hand and push each needle fully back on it"
    return worded(f"lay ravel cord into the hooks of the {s.any.side} part, ", *needles(s), how, *tally)


def draw_parts_cord(s: StepSaid) -> Phrase:
    """Words of `steps.DrawPartsCord`."""
    return worded(f"push the needles of the {s.any.side} part, ", *needles(s), ", right out and draw the ravel cord out of them")


def off_on_waste(s: StepSaid) -> Phrase:
    """Words of `steps.OffOnWaste`."""
    tally = rows(s.graded("rows"))
    return worded("knit ", *tally, " of waste yarn over the ", STS, f" in work and take them off the bed ({s.any.edge})")


def cast_off_all(s: StepSaid) -> Phrase:
    """Words of `steps.CastOffAll`."""
    return worded("cast off the ", STS, " in work from the carriage side")


def sew_off_all(s: StepSaid) -> Phrase:
    """Words of `steps.SewOffAll`."""
    return worded("cast off the ", STS, " in work by back-stitch with the tail, from the carriage side")


def gather_all(s: StepSaid) -> Phrase:
    """Words of `steps.GatherAll`."""
    return worded("thread the tail of the yarn through the ", STS, " in work, take them off the bed and draw them up")


def break_off(s: StepSaid) -> Phrase:
    """Words of `steps.BreakOff`."""
    tail = s.graded("tail_cm")
    left: tuple[str | Run, ...] = () if tail.always(0) else (", leaving a tail of ", tail.number(), " cm")
    return worded("break off the yarn", *left)


def return_part(s: StepSaid) -> Phrase:
    """Words of `steps.ReturnPart`."""
    return worded(f"return the waiting {s.any.side} part, ", *needles(s), ", to work")
