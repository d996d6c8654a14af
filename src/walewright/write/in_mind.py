"""In mind: what a knitter knows from the lines before, so that a line says only what is new.

A yarn that is threaded already is not threaded again; what is held at an end is more than was held there before; what must
be true says how many stitches are in work beside those that are held; and the carriage is set where the first needle goes right
out, and where the last one comes back.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import field, fields
from typing import Any, TypeVar

from walewright.knit import bench_steps as bs
from walewright.knit import steps as st
from walewright.knit.steps import Step
from walewright.record import record, replace
from walewright.write.tally import RowTally, counted, held_at


@record
class UseYarnInMind(st.UseYarnStep):
    """`threaded`: 1 where it is this yarn that is threaded, else 0."""

    threaded: int = 0


@record
class UseLooserInMind(st.UseLooser):
    """`threaded` as above."""

    threaded: int = 0


TO_HOLD, TO_KNIT, TO_KNIT_IF_FREE = 1, 2, 3
"""What a step sets the carriage to, 0 where it stays as it is: to hold, to knit all, or to knit all if none is held any more."""


@record
class HoldInMind(st.HoldAtEnd):
    """`more`: 1 where others are held there already, 0 where there are not any, 2 in a repeat, where it is the one and then the
    other; `carriage`: what it is set to."""

    more: int = 0
    carriage: int = 0


@record
class ReturnHeldInMind(st.ReturnHeld):
    """`carriage`: what it is set to, here and below."""

    carriage: int = 0


@record
class HoldPartInMind(st.HoldPart):
    carriage: int = 0


@record
class PartOnCordInMind(st.PartOnCord):
    carriage: int = 0


@record
class ReturnPartInMind(st.ReturnPart):
    carriage: int = 0


@record
class NowInMind(st.Now):
    """`held` of the stitches are held for shaping."""

    held: int = 0


@record
class NowInHalfInMind(st.NowInHalf):
    """`held` of the stitches of the part being worked are held for shaping."""

    held: int = 0


PLAIN: Mapping[type[Step], type[Step]] = {
    UseYarnInMind: st.UseYarnStep,
    UseLooserInMind: st.UseLooser,
    HoldInMind: st.HoldAtEnd,
    ReturnHeldInMind: st.ReturnHeld,
    HoldPartInMind: st.HoldPart,
    PartOnCordInMind: st.PartOnCord,
    ReturnPartInMind: st.ReturnPart,
    NowInMind: st.Now,
    NowInHalfInMind: st.NowInHalf,
}
"""What each of these is in the plan."""


@record
class InMind:
    """The tally, and the yarn that is threaded, as far as it is known. `striped`: the rows are knitted in stripes; `right_out`:
    the parts whose needles are right out while they wait. `others`: needles may be right out of which the tally knows nothing,
    those of a part that waits for the other half only, of a chart, or of what goes on at the same time."""

    tally: RowTally = field(default_factory=RowTally)
    yarn: str = ""
    striped: bool = False
    right_out: frozenset[tuple[str, int]] = frozenset()
    others: bool = False

    @property
    def held(self) -> bool:
        """Whether any needle is known to be right out."""
        return sum(self.tally.held) > 0 or bool(self.right_out)


def in_mind(steps: Iterable[Step], mind: InMind) -> tuple[tuple[Step, ...], InMind]:
    """The steps as they are said after what is in mind, and what is in mind after them."""
    made: list[Step] = []
    for step in steps:
        made.append(_said(step, mind))
        mind = _after(step, mind)
    return tuple(made), mind


def _after(step: Step, mind: InMind) -> InMind:
    striped = _striped(step, mind.striped)
    # The rows of stripes change the yarn.
    yarn = "" if striped and isinstance(step, _KNITTING) else _threaded(step, mind.yarn)
    right_out = mind.right_out
    match step:
        case st.HoldPart(side=side, nth=nth):
            right_out |= {(side, nth)}
        case st.ReturnPart(side=side, nth=nth):
            right_out -= {(side, nth)}
    others = mind.others or isinstance(step, st.HoldPart | st.StartChart)
    return InMind(counted(mind.tally, step), yarn, striped, right_out, others)


def written_out_in_mind(steps: Iterable[Step], mind: InMind) -> tuple[tuple[Step, ...], InMind]:
    """The same of steps in which everything is written out: of nothing but the yarn that is threaded and of what is held."""
    made: list[Step] = []
    for step in steps:
        said = _said(step, mind) if isinstance(step, st.UseYarnStep | st.UseLooser | st.HoldAtEnd) else step
        # A line of its own says how the carriage is set.
        made.append(replace(said, carriage=0) if isinstance(said, HoldInMind) else said)
        mind = InMind(counted(mind.tally, step), _threaded(step, mind.yarn))
    return tuple(made), mind


def _said(step: Step, mind: InMind) -> Step:
    held = sum(mind.tally.held)
    match step:
        case st.UseYarnStep(yarn=yarn, before=before):
            return _as(UseYarnInMind, step, threaded=int(yarn == mind.yarn and not before))
        case st.UseLooser(yarn=yarn):
            return _as(UseLooserInMind, step, threaded=int(yarn == mind.yarn))
        case st.HoldAtEnd(side=side):
            return _as(HoldInMind, step, more=int(held_at(mind.tally, side) > 0), carriage=0 if held else TO_HOLD)
        case st.ReturnHeld() | st.HoldPart() | st.PartOnCord() | st.ReturnPart():
            return _setting(step, mind)
        case st.NowInHalf():
            return _as(NowInHalfInMind, step, held=held)
        case st.Now():
            return _as(NowInMind, step, held=held)
        case st.Repeat(body=body, times=times):
            return replace(step, body=_in_repeat(body, mind) if times > 1 else in_mind(body, mind)[0])
        case st.Together(tracks=tracks):
            # Where one of them changes the yarn, another cannot say which is threaded.
            begun = replace(mind, yarn=_threaded(step, mind.yarn) and mind.yarn, others=True)
            return replace(step, tracks=tuple(replace(t, steps=in_mind(t.steps, begun)[0]) for t in tracks))
    return step


def _setting(step: st.ReturnHeld | st.HoldPart | st.PartOnCord | st.ReturnPart, mind: InMind) -> Step:
    """The step, with what the carriage is set to by it. Of needles that come back while `others` may be right out it says what
    holds of either half, for the other one is worked by the same words."""
    then = _after(step, mind)
    free = TO_KNIT_IF_FREE if mind.others else TO_KNIT
    match step:
        case st.ReturnHeld():
            # What goes on at the same time may have returned what is held at the other end.
            stays = sum(then.tally.held) > 0 and not mind.others
            return step if stays else _as(ReturnHeldInMind, step, carriage=free)
        case st.HoldPart():
            return step if mind.held else _as(HoldPartInMind, step, carriage=TO_HOLD)
        case st.PartOnCord():
            return _as(PartOnCordInMind, step, carriage=TO_KNIT) if mind.held and not then.held else step
    if then.held:
        return step if mind.held else _as(ReturnPartInMind, step, carriage=TO_HOLD)
    return _as(ReturnPartInMind, step, carriage=TO_KNIT)


def _in_repeat(body: Sequence[Step], mind: InMind) -> tuple[Step, ...]:
    """What is said is said of every round."""
    made: list[Step] = []
    now = mind
    for step in body:
        if isinstance(step, st.HoldAtEnd):
            more = 1 if held_at(mind.tally, step.side) else 2
            made.append(_as(HoldInMind, step, more=more, carriage=0 if sum(now.tally.held) else TO_HOLD))
        elif isinstance(step, st.ReturnHeld):
            made.append(_setting(step, now))
        elif isinstance(step, st.Repeat):
            made.append(replace(step, body=_in_repeat(step.body, now)))
        else:
            made.append(step)
        now = _after(step, now)
    return tuple(made)


def _threaded(step: Step, yarn: str) -> str:
    """The yarn in the carriage after a step; nothing where hands take it out, or stripes change it."""
    match step:
        case st.UseYarnStep(yarn=now) | st.UseLooser(yarn=now):
            return now
        case st.Repeat(body=body):
            for inner in body:
                yarn = _threaded(inner, yarn)
            return yarn
        case st.Together(tracks=tracks):
            told = {_threaded(st.Repeat(t.steps, 1), yarn) for t in tracks}
            return yarn if told == {yarn} else ""
        case st.BreakOff() | st.WasteStart() | st.OffOnWaste() | st.StartStripes() | st.StopStripes() | st.StartChart():
            return ""
        case bs.TakeUp() | bs.LayColours() | bs.StripesBegin() | bs.StripesEnd() | bs.FabricBegins() | bs.MotifBegins():
            return ""
    return yarn


_KNITTING = (st.KnitRows, st.KnitTo, st.Repeat, st.Together)


def _striped(step: Step, striped: bool) -> bool:
    """Whether stripes are begun and not ended after a step."""
    match step:
        case st.StartStripes():
            return True
        case st.StopStripes():
            return False
        case st.Together(tracks=tracks):
            return any(_striped(st.Repeat(t.steps, 1), striped) != striped for t in tracks) != striped
        case st.Repeat(body=body):
            for inner in body:
                striped = _striped(inner, striped)
    return striped


Kind = TypeVar("Kind", bound=Step)


def _as(kind: type[Kind], step: Step, **more: Any) -> Kind:
    """The step as a kind that has its fields and `more`."""
    return kind(**{f.name: getattr(step, f.name) for f in fields(step)}, **more)
