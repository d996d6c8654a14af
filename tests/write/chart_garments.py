"""Charts, and plans that work them: a few that are fixed, and random ones that a knitter could work."""

from __future__ import annotations

from hypothesis import strategies as hs

from tests.write.garments import joined, joining
from walewright.design.model import Cell, CellKey, Chart, Origin
from walewright.knit import steps as st
from walewright.knit.copies import NONE
from walewright.knit.steps import SizePlan, Step, StepBlock

HERE = Origin("chart")

CELLS = {
    ".": Cell("knit"),
    "O": Cell("hole"),
    ">": Cell("from left"),
    "<": Cell("from right"),
    "\\": Cell("two from left"),
    "/": Cell("two from right"),
    "A": Cell("three"),
    "-": Cell("purl"),
    "u": Cell("tuck"),
    "v": Cell("slip"),
    "l": Cell("long"),
    "|": Cell("ladder"),
    "x": Cell("knit", "navy"),
    "c": Cell("cross", "", 1, "left"),
    "C": Cell("cross", "", 2, "right"),
}
"""Every kind of cell, with a symbol for it; among them the one that also frames the rows."""

PICTURE_CELLS = {".": Cell("knit"), "x": Cell("knit", "navy"), "1": Cell("knit", "red")}

SEGMENTS = (".", ".", "..", "-", "u", "v", "l", "|.", "x", "cc", "CCCC", "O\\", "O>\\", "/O", "/<O", "OAO", "O>AO", "OA<<O")
"""What a row is made of; a loop that moves comes with its hole."""


def chart(name: str, *drawn: str, before: int = 0, repeat: int = 0, after: int = 0, cells: dict[str, Cell] = CELLS) -> Chart:
    """A chart whose rows are drawn from the top down."""
    key = tuple(CellKey(symbol, cell, HERE) for symbol, cell in cells.items())
    return Chart(name, tuple(reversed(drawn)), key, before, repeat, after, cells is PICTURE_CELLS, HERE)


LOZENGE = chart(
    "lozenge",
    "..O\\.-|.uu",
    "./O...|.vl",
    "CCCC..|.x.",
    "..OA<O-..-",
    repeat=10,
)
ROSE = chart("rose", "..x1", "x11.", "xxx.", cells=PICTURE_CELLS)
WIDE = chart("wide", *("".join(".-uv"[(x * y) % 4] for x in range(100)) for y in range(200)), before=3, repeat=90, after=7)


@hs.composite
def charts(draw: hs.DrawFn, name: str = "lozenge", picture: bool | None = None) -> Chart:
    """Any chart that can be worked, rows perhaps twice or three times over so that columns grow."""
    laid = draw(hs.booleans()) if picture is None else picture
    before, after = draw(hs.integers(0, 2)), draw(hs.integers(0, 2))
    repeats = draw(hs.integers(0, 3)) > 0
    width = draw(hs.integers(4, 12))
    whole = width + before + after if repeats else width
    rows: list[str] = []
    for _ in range(draw(hs.integers(1, 5))):
        if laid:
            row = "".join(draw(hs.lists(hs.sampled_from(tuple(PICTURE_CELLS)), min_size=whole, max_size=whole)))
        else:
            row = _row(draw, width)
            if repeats:
                # A group may cross the border of two repeats.
                turn = draw(hs.integers(0, width - 1))
                row = "." * before + row[turn:] + row[:turn] + "." * after
        rows += [row] * draw(hs.integers(1, 3))
    cells = PICTURE_CELLS if laid else CELLS
    if not repeats:
        return chart(name, *rows, cells=cells)
    return chart(name, *rows, before=before, repeat=width, after=after, cells=cells)


def _row(draw: hs.DrawFn, width: int) -> str:
    row = ""
    for segment in draw(hs.lists(hs.sampled_from(SEGMENTS), max_size=width)):
        if len(row + segment) <= width:
            row += segment
    return row + "." * (width - len(row))


def worked(size: str, steps: tuple[Step, ...], half: int = 20) -> SizePlan:
    """A piece of 2 * `half` stitches, the carriage at the right, that works `steps` and is cast off."""
    start = (
        st.CarriageAt("right"),
        st.NeedlesToWork(-half, half - 1, 2 * half),
        st.UseYarnStep("wool", "4."),
        st.ClosedStart("e-wrap"),
        st.SetRowCounter(0),
    )
    off = (st.CastOffAll(), st.BreakOff(60))
    return SizePlan(size, (StepBlock("back", 1, (("Knit", (*start, *steps)), ("Finish", off))),))


@hs.composite
def charted_plans(draw: hs.DrawFn) -> tuple[tuple[SizePlan, ...], tuple[Chart, ...]]:
    """Plans of one or two sizes that work a fabric and a motif by chart while they are shaped, perhaps in stripes after that."""
    lace, rose = draw(charts("lozenge")), draw(charts("rose"))
    moves = draw(hs.lists(hs.sampled_from(("rows", "motif", "stop", "in", "two in", "out", "off", "wedge")), max_size=8))
    striped = draw(hs.booleans())
    plans = []
    for size in range(draw(hs.integers(1, 2))):
        steps: list[Step] = [_placed(draw, lace, "lace")]
        started = stopped = False
        for move in moves:
            match move:
                case "rows":
                    steps.append(st.KnitRows(draw(hs.integers(1, 6))))
                case "motif" if not started:
                    steps.append(_placed(draw, rose, ""))
                    started = True
                case "stop" if started and not stopped:
                    steps.append(st.StopChart("rose"))
                    stopped = True
                case "in":
                    steps.append(st.Decrease("both ends", 1, 2))
                case "two in":
                    steps.append(st.Decrease("left end", 2, 0))
                case "out":
                    steps.append(st.IncreaseFashioned("both ends", 1))
                case "off":
                    steps.append(st.CastOffAtCarriage(2))
                case "wedge":
                    held = draw(hs.integers(1, 4))
                    steps += (st.HoldAtEnd("right", held), st.KnitRows(1), st.WrapHeld("right"), st.KnitRows(1))
                    steps.append(st.ReturnHeld("right"))
        steps.append(st.KnitRows(2))
        if striped:
            steps += (st.StopChart("lozenge"), st.StartStripes("bands", (("navy", 3), ("wool", 1)), "4", ("navy",)))
            steps += (st.KnitRows(9), st.StopStripes("bands"))
        plans.append(worked(f"{size}X", tuple(steps)))
    return tuple(plans), (lace, rose)


def _placed(draw: hs.DrawFn, one: Chart, fabric: str) -> st.StartChart:
    """The chart over the whole width or on some needles in the middle; the end needles are never in it."""
    edge = draw(hs.integers(1, 2))
    first = draw(hs.integers(-18, -1))
    if not one.repeat:
        return st.StartChart(one.name, fabric, "panel", first, first + one.width - 1, edge, first)
    if draw(hs.booleans()):
        first, last = edge - 20, 19 - edge
        return st.StartChart(one.name, fabric, "whole", first, last, edge, first + one.before)
    last = first + one.before + one.repeat * draw(hs.integers(1, 2)) + one.after - 1
    return st.StartChart(one.name, fabric, "panel", first, last, edge, first + one.before)


def edged(size: str, stitches: int, every: int) -> SizePlan:
    """A piece that begins with a folded mock rib and ends on waste, a striped sleeve with a picot hem, a link, sewn ends."""
    half = stitches // 2
    idle = len(range(every - 1, stitches - 1, every))
    rib = (
        st.CarriageAt("right"),
        st.NeedlesToWork(-half, half - 1, stitches),
        st.EveryOutOfWork(every, stitches - idle),
        st.WasteStart(7, "by hand"),
        st.UseYarnStep("wool", "2"),
        st.SetRowCounter(0),
        st.KnitRows(6),
        st.UseYarnStep("wool", "5"),
        st.KnitRows(1),
        st.UseYarnStep("wool", "2"),
        st.KnitRows(5),
        st.Now(stitches - idle, 12, "left"),
        st.FoldUp(stitches - idle, "all needles", stitches),
        st.Now(stitches, 12, "left"),
    )
    rest = (st.UseYarnStep("wool", "4"), st.SetRowCounter(0), st.KnitRows(5), st.BreakOff(40), st.OffOnWaste(8, "end"))
    hem = (
        st.CarriageAt("left"),
        st.NeedlesToWork(-half, half - 1, stitches),
        st.WasteStart(8),
        st.UseYarnStep("wool", "2"),
        st.SetRowCounter(0),
        st.KnitRows(3),
        st.PicotRow(),
        st.KnitRows(3),
        st.FoldUp(stitches, "the same needles", stitches),
        st.UseYarnStep("navy", "2", "carried"),
        st.StartStripes("bands", (("navy", 2), ("wool", 4)), "4", ("navy", "wool")),
        st.KnitRows(2 * every + 12),
        st.StopStripes("bands"),
        st.BreakOff(120),
        st.SewOffAll(),
    )
    link = (
        st.CarriageAt("right"),
        st.NeedlesToWork(-half, half - 1, stitches),
        st.HangToLink("back", "end", "whole", stitches, -half, half - 1, "knit", "empty needles", "right"),
        st.HangToLink("front", "end", "whole", stitches, -half, half - 1, "purl", "the other piece", "left"),
        st.UseYarnStep("wool", "4"),
        st.SetRowCounter(0),
        st.KnitRows(1),
        st.CastOffAll(),
        st.BreakOff(),
    )
    blocks = (
        StepBlock("back", 1, (("Rib", rib), ("Knit", rest))),
        StepBlock("sleeve", 2, (("Hem", hem),)),
        StepBlock("back end link", 1, (("Link", link),), linked=st.Linked("back", "end", NONE)),
    )
    joins = joining(joined("sleeve start", "cuff end", 0, 0, "grafted", ends="left right"))
    return SizePlan(size, (*blocks, joins))
