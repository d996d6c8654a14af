"""What a pattern's boxes have to say for each move that its plan asks of hands: read from steps, not from the words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from walewright.guide.english import LANGUAGE
from walewright.knit import steps as st
from walewright.knit.steps import Repeat, Step, Together
from walewright.pipeline import Outcome
from walewright.sheet.handwork import handwork

OF_THE_MACHINE = (
    st.NeedlesToWork, st.CarriageAt, st.UseYarnStep, st.SetRowCounter, st.KnitRows, st.KnitTo, st.Now, st.NowInHalf, st.BreakOff,
    st.EdgeIs, st.Say, st.StartStripes, st.StopStripes, st.StopChart, st.StopChartOn,
)  # fmt: skip
"""Steps whose own words are enough."""
OF_CHARTS = (st.StartChart,)
"""Told by the symbols of the chart and its key."""

SAID = {
    st.IncreaseFashioned: "set them one needle outwards",
    st.DecreaseOn: "the first of them shares the needle on the line",
    st.DecreaseOuter: "the first of them shares the needle on the line",
    st.IncreaseBeside: "hang the loop below the stitch on the line",
    st.IncreaseOuter: "hang the loop below the stitch on the line",
    st.NeedleOut: "Set its loop on the needle at its right and push it right back",
    st.NeedlesOutEvery: "Set its loop on the needle at its right and push it right back",
    st.LeaveOut: "Push it right back before anything is cast on",
    st.LeaveOutEvery: "Push it right back before anything is cast on",
    st.NeedleBack: "Bring it to working position, empty",
    st.NeedlesBackEvery: "Bring it to working position, empty",
    st.IncreaseAtCarriage: "Bring the next empty needle to work on the side where the carriage stands",
    st.CastOffAtCarriage: "set the end loop on the next needle",
    st.CastOffAll: "set the end loop on the next needle",
    st.CastOnAtCarriage: "lead the yarn round each from the work outwards",
    st.HoldAtEnd: "Pull the needles right out and set the carriage so that it does not knit them",
    st.HoldPart: "a part that still waits stays out",
    st.ReturnHeld: "pushed by hand until the latch lies behind the loop",
    st.ReturnPart: "pushed by hand until the latch lies behind the loop",
    st.ReturnSome: "Push back only the needles that the line names",
    st.WrapHeld: "lay the yarn under and over the held needle",
    st.SpreadEvenly: "hang the loops back from left to right in the order given",
    st.SlotOnWaste: "Knit the named stitches by hand with a length of waste yarn",
    st.SlotClosed: "Set the first loop on the needle to its right",
    st.CloseCentre: "Set the first loop on the needle to its right",
    st.CastOnBetween: "Cut a length of the same yarn",
    st.EyeletAt: "Leave the empty needle in work",
    st.MarkEdges: "Knot a thread of another colour into the end stitch",
    st.CentreToWaste: "With a length of waste yarn knit these stitches by hand",
    st.OffOnWaste: "Thread the waste yarn in the carriage and knit the rows",
    st.SewOffAll: "through the second loop, back through the first",
    st.GatherAll: "Take it through every loop in turn",
    st.WasteStart: "Then one row with ravel cord",
    st.RehangStart: "Hang the loop between two stitches of the first garment row on each needle",
    st.PickUpAlong: "along rows, push the needle through the edge, a whole stitch deep",
    st.LatchRib: "draw bar after bar through towards you",
    st.LatchPanel: "draw bar after bar through towards you",
    st.LatchInStages: "draw bar after bar through towards you",
    st.LatchPanelInStages: "draw bar after bar through towards you",
    st.PartOnCord: "lay the cord in the hook of each needle",
    st.DrawPartsCord: "draw the cord out from one end",
    st.PicotRow: "set every second stitch on the needle at its right",
    st.FoldUp: "up in front",
    st.UseLooser: "looser",
    st.HangToLink: "so that the right sides meet",
}
ROWS = "Take the needle under the bar between the edge stitch and its neighbour on one side, then on the other, row for row"
SEAMS = {
    "gathered": "Run a thread through the longer edge",
    "grafted": "go down through a loop and up through the next",
    "linked": "so that the right sides meet",
}
STARTS = {"e-wrap": "lead the yarn round each shank in turn", "chain": "towards the carriage, so that the yarn ends where"}


def words_for(step: Step) -> str:
    """What a box has to say of the move, with its numbers; KeyError for a kind of step that nobody has thought of."""
    match step:
        case st.Decrease(inset=0):
            return "do it twice" if step.by == 2 else "Move the end loop on to its neighbour"
        case st.Decrease():
            return f"set them {'one needle' if step.by == 1 else 'two needles'} inwards"
        case st.EveryOutOfWork():
            return f"Push every {'second' if step.every == 2 else 'third'} needle"
        case st.ClosedStart():
            return STARTS[step.way]
        case st.JoinEdges():
            if step.edges == "open":
                return SEAMS["grafted"]
            return ROWS if step.rows and step.way == "sewn" else SEAMS.get(step.way, "the needle under")
    return SAID[type(step)]


def steps(outcome: Outcome) -> Iterator[Step]:
    """All steps of all sizes, those within repeats and tracks too."""
    for plan in outcome.plans:
        for block in plan.blocks:
            for _, paragraph in block.paragraphs:
                yield from _within(paragraph)


def _within(row: Iterable[Step]) -> Iterator[Step]:
    for step in row:
        if isinstance(step, Repeat):
            yield from _within(step.body)
        elif isinstance(step, Together):
            for track in step.tracks:
                yield from _within(track.steps)
        else:
            yield step


def untold(outcome: Outcome) -> set[str]:
    """What no box of the pattern says, of all that its steps ask of hands."""
    assert outcome.design is not None
    assert outcome.instructions is not None
    texts = " ".join(text for box in handwork(LANGUAGE, outcome.design, outcome.instructions) for text in box.lines)
    moves = [s for s in steps(outcome) if not isinstance(s, (*OF_THE_MACHINE, *OF_CHARTS))]
    return {f"{step}: {words}" for step in moves if (words := words_for(step)) not in texts}
