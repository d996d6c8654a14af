"""The words: one English template for each kind of step.

A template gets one column of the alignment (the same step in every size that works it) and gives a phrase without
capital or full stop; `sentences` puts phrases together. Each template has a rule of the same name in
`grammar/instructions.lark`: what is said here must be readable there.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from walewright.knit import steps as st
from walewright.knit.operations import Side
from walewright.knit.steps import Step
from walewright.trade.ends import ClosedCastOn, WasteCastOn
from walewright.write import edgings, making_up, partings, patterns
from walewright.write.grading import Graded
from walewright.write.model import Abbreviation, Run
from walewright.write.said import RC, ST, STS, Phrase, StepSaid, counted, plain, rows, span, sts, together, worded


def phrase(said: StepSaid) -> Phrase:
    """The words of one step. Raises KeyError for a kind of step without a template."""
    return TEMPLATES[type(said.any)](said)


def kinds(said: StepSaid) -> tuple[str, ...]:
    """Class names of the steps that the phrase says, those inside a repeat after "Repeat"; with the numbers where hands do
    something else for each."""
    if not isinstance(said.any, st.Repeat):
        return tuple(dict.fromkeys(kind(step) for step in said.steps if step is not None))
    return ("Repeat", *(kind for inner in bodies(said) for kind in kinds(inner)))


def kind(step: Step) -> str:
    """ "Decrease 2 in", "Decrease 1", "EveryOutOfWork 3", "StartStripes carried"; of any other step the class name."""
    match step:
        case st.Decrease():
            return f"Decrease {step.by} in" if step.inset else f"Decrease {step.by}"
        case st.EveryOutOfWork():
            return f"EveryOutOfWork {step.every}"
        case st.StartStripes() if step.carried:
            return "StartStripes carried"
    return type(step).__name__


def has_number(step: Step) -> bool:
    """Whether the step's phrase has a number that can be a dash for the sizes that skip it."""
    if isinstance(step, st.JoinEdges):
        return (step.easing_mm, step.longer_mm, step.rows) != (0, 0, 0)
    if isinstance(step, st.BreakOff):
        return step.tail_cm > 0
    return type(step) in TEMPLATES and not isinstance(step, _NUMBERLESS)


# ----------------------------------------------------------------- setting up


def _needles_to_work(s: StepSaid) -> Phrase:
    return worded("bring needles ", *span(s), " to working position: ", *sts(s.graded("stitches")))


def _carriage_at(s: StepSaid) -> Phrase:
    return worded(f"take the carriage to the {s.any.side} without knitting")


def _waste_start(s: StepSaid) -> Phrase:
    tally = rows(s.graded("rows"))
    return worded(f"cast on in waste yarn {WASTE_WAYS[s.any.way]} and knit ", *tally, ", then 1 row with ravel cord")


WASTE_WAYS: Mapping[WasteCastOn, str] = {"comb": "with the comb", "by hand": "by e-wrap"}

WAYS: Mapping[ClosedCastOn, str] = {"e-wrap": "e-wrap", "chain": "latch-tool chain"}


def _closed_start(s: StepSaid) -> Phrase:
    return worded(f"cast on all needles in working position by {WAYS[s.any.way]}")


def _use_yarn(s: StepSaid) -> Phrase:
    carried = ", the yarn before it left hanging at its side" if s.any.before == "carried" else ""
    said = f", for “{s.any.fabric}”" if s.any.fabric else ""
    return worded(f"change to {s.any.yarn}, tension {s.any.tension}{said}{carried}")


def _set_row_counter(s: StepSaid) -> Phrase:
    return worded("set the row counter to ", s.graded("rows").counter())


# ----------------------------------------------------------------- knitting and shaping


def _knit_rows(s: StepSaid) -> Phrase:
    return worded("knit ", *rows(s.graded("rows")))


def _knit_to(s: StepSaid) -> Phrase:
    return worded("knit to ", RC, s.graded("row").number())


def _in(inset: Graded) -> tuple[str | Run, ...]:
    return () if inset.always(0) else (", ", *sts(inset), " in")


def _decrease(s: StepSaid) -> Phrase:
    return worded("decrease ", *sts(s.graded("by")), f" at {_ends(s)}", *_in(s.graded("inset")))


def _increase_fashioned(s: StepSaid) -> Phrase:
    return worded("increase ", *sts(s.constant(1)), f" at {_ends(s)}", *_in(s.graded("inset")))


def _ends(s: StepSaid) -> str:
    ends: str = s.any.ends
    return ends if ends == "both ends" else f"the {ends}"


def _increase_at_carriage(s: StepSaid) -> Phrase:
    return worded("increase ", *sts(s.constant(1)), " at the carriage side")


def _cast_off_at_carriage(s: StepSaid) -> Phrase:
    return worded("cast off ", *sts(s.graded("stitches")), " at the carriage side")


def _cast_on_at_carriage(s: StepSaid) -> Phrase:
    return worded("cast on ", *sts(s.graded("stitches")), " by e-wrap at the carriage side")


def _hold_at_end(s: StepSaid) -> Phrase:
    return worded(f"at the {s.any.side} end hold ", *sts(s.graded("stitches")))


def _wrap_held(s: StepSaid) -> Phrase:
    return worded(f"wrap the innermost needle held at the {s.any.side}")


def _return_held(s: StepSaid) -> Phrase:
    return worded(f"return the needles held at the {s.any.side} to work")


def _return_some(s: StepSaid) -> Phrase:
    return worded("return the innermost ", *sts(s.graded("stitches")), f" held at the {s.any.side} to work")


def _repeat(s: StepSaid) -> Phrase:
    inner = repeated(s)
    return worded("[", *inner, "]")


def repeated(said: StepSaid) -> Phrase:
    """The words of a repeat as a sentence of its own, without the square brackets of a repeat inside another."""
    parts: list[Run] = []
    for inner in bodies(said):
        parts += (*([Run(", ")] if parts else []), *phrase(inner))
    times = said.graded("times")
    if times.always(1) and all(said.steps[i] is not None for i in said.group):
        return tuple(parts)
    return worded(*parts, ": work this ", *counted(times, "time", "times"), " in all")


def bodies(said: StepSaid) -> tuple[StepSaid, ...]:
    """The steps inside a repeat that are worked at all. The dash of a size that skips the repeat stands with the times; the
    body's numbers are for those who work it."""
    columns = (
        tuple(worked(s.body[i]) if isinstance(s, st.Repeat) else None for s in said.steps) for i in range(len(said.any.body))
    )
    return tuple(StepSaid(column, said.working) for column in columns if any(column))


def worked(step: Step) -> Step | None:
    """The step, or None where its numbers say that nothing is done."""
    if isinstance(step, st.KnitRows) and step.rows == 0:
        return None
    if isinstance(step, st.Repeat) and (step.times == 0 or not any(worked(s) for s in step.body)):
        return None
    return step


def _mark_edges(s: StepSaid) -> Phrase:
    end = "end of the " if s.any.at == "end" else ""
    return worded(f"tie a marker thread at {_ends(s)} for the {end}{s.any.what}")


_CARRIAGES: Mapping[Side, int] = {"left": 0, "right": 1}
_CARRIAGE_AT = (Abbreviation.COL, Abbreviation.COR)


def _now(s: StepSaid) -> Phrase:
    return check(s, s.graded("row"))


def check(said: StepSaid, row: Graded | None = None) -> Phrase:
    """What must be true, without the counter where the same line has just named its value."""
    stitches = said.graded("stitches")
    sides = tuple(_CARRIAGES[s.side] if isinstance(s, st.Now) else None for s in said.steps)
    # The stitches have the dash of who skips this; the carriage needs none where it is on one side for all others.
    carriage = Graded(sides, said.working)
    at = frozenset(_CARRIAGE_AT[v] for v in carriage.values if v is not None)
    parts: list[str | Run] = [stitches.number(), " ", ST if stitches.of_one else STS, ", "]
    if isinstance(said.any, st.NowInHalf):
        parts += ["and ", said.graded("waiting").number(), " waiting, "]
    if row:
        parts += [row.run(f"{RC.text}{row.text()}", short=RC.short), ", "]
    return (together("check", *parts, carriage.run(carriage.text(lambda side: _CARRIAGE_AT[side].value), short=at)),)


def _say(s: StepSaid) -> Phrase:
    return worded(f"note “{plain(s.any.text).replace('”', '’')}”")


TEMPLATES: dict[type[Step], Callable[[StepSaid], Phrase]] = {
    st.NeedlesToWork: _needles_to_work,
    st.CarriageAt: _carriage_at,
    st.EveryOutOfWork: edgings.every_out_of_work,
    st.WasteStart: _waste_start,
    st.ClosedStart: _closed_start,
    st.UseYarnStep: _use_yarn,
    st.SetRowCounter: _set_row_counter,
    st.StartChart: patterns.start_chart,
    st.StopChart: patterns.stop_chart,
    st.StopChartOn: patterns.stop_chart_on,
    st.StartStripes: patterns.start_stripes,
    st.StopStripes: patterns.stop_stripes,
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
    st.ReturnSome: _return_some,
    st.SpreadEvenly: partings.spread_evenly,
    st.SlotOnWaste: partings.slot_on_waste,
    st.SlotClosed: partings.slot_closed,
    st.EyeletAt: partings.eyelet_at,
    st.Repeat: _repeat,
    st.MarkEdges: _mark_edges,
    st.Now: _now,
    st.NowInHalf: _now,
    st.CentreToWaste: partings.centre_to_waste,
    st.HoldPart: partings.hold_part,
    st.PartOnCord: partings.part_on_cord,
    st.DrawPartsCord: partings.draw_parts_cord,
    st.OffOnWaste: partings.off_on_waste,
    st.CastOffAll: partings.cast_off_all,
    st.SewOffAll: partings.sew_off_all,
    st.CloseCentre: partings.close_centre,
    st.CastOnBetween: partings.cast_on_between,
    st.GatherAll: partings.gather_all,
    st.BreakOff: partings.break_off,
    st.ReturnPart: partings.return_part,
    st.UseLooser: edgings.use_looser,
    st.RehangStart: edgings.rehang_start,
    st.PickUpAlong: edgings.pick_up_along,
    st.PicotRow: edgings.picot_row,
    st.FoldUp: edgings.fold_up,
    st.HangToLink: edgings.hang_to_link,
    st.LatchRib: edgings.latch_rib,
    st.LatchPanel: edgings.latch_panel,
    st.LatchInStages: edgings.latch_in_stages,
    st.LatchPanelInStages: edgings.latch_panel_in_stages,
    st.EdgeIs: making_up.edge_is,
    st.JoinEdges: making_up.join_edges,
    st.Say: _say,
}

_NUMBERLESS = (
    st.CarriageAt,
    st.ClosedStart,
    st.UseYarnStep,
    st.UseLooser,
    st.StopChart,
    st.StartStripes,
    st.StopStripes,
    st.WrapHeld,
    st.ReturnHeld,
    st.MarkEdges,
    st.CastOffAll,
    st.SewOffAll,
    st.PicotRow,
    st.GatherAll,
    st.Say,
)
