"""Plans to write from: one that is fixed, and random ones that a knitter could work."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import strategies as hs

from walewright.knit import steps as st
from walewright.knit.copies import EACH, NEXT, Copy
from walewright.knit.hands import State, perform
from walewright.knit.manners import EndsShaped
from walewright.knit.steps import SizePlan, Step, StepBlock

SIDES = ("left", "right")
ENDS = ("both ends", "left end", "right end")


def joined(
    one: str,
    other: str,
    *numbers: int | str,
    ends: str = "bottom bottom",
    **more: int | str | tuple[st.Strip, ...] | tuple[int, ...],
) -> st.JoinEdges:
    """One seam: sides as "back armhole + front armhole left", a piece knitted several times as "sleeve.2 end". `ends`: where the
    sides begin."""

    def side(text: str, begin: str) -> tuple[st.EdgeInSeam, ...]:
        found = []
        for part in text.split(" + ") if text else ():
            piece, edge = part.split(" ", 1)
            name, _, copy = piece.partition(".")
            of = {"each": EACH, "next": NEXT}.get(copy) or Copy(int(copy or 0))
            found.append(st.EdgeInSeam(name, edge, of, begin))
        return tuple(found)

    first, second = ends.split()
    return st.JoinEdges((st.SeamOf(side(one, first), side(other, second)),), *numbers, **more)  # type: ignore[arg-type]


def joining(*steps: Step, before: str = "") -> StepBlock:
    """A block of what is put together off the bed."""
    return StepBlock("joining", 1, (("", steps),), joining=True, before=before)


def sweater(size: str, stitches: int, gap: int, group: int, times: int, copies: int = 1) -> SizePlan:
    """A parted piece, its welt and two seams. `times` 0 leaves the shaping out."""
    half = stitches // 2
    narrow = half - times
    waste = (
        st.CarriageAt("left"),
        st.NeedlesToWork(-half, half - 1, stitches),
        st.WasteStart(8),
        st.UseYarnStep("wool", "4"),
        st.SetRowCounter(0),
        st.Now(stitches, 0, "right"),
    )
    shaping = (
        st.Say("Weigh the\n  cone first."),
        st.KnitTo(10),
        st.Now(stitches, 10, "right"),
        st.Repeat((st.KnitRows(gap), st.Decrease("both ends", 1, 2)), times),
        *([st.Now(2 * narrow, 10 + gap * times, "right")] if times else []),
        st.KnitTo(60),
        st.Now(2 * narrow, 60, "right"),
    )
    wedge = (st.HoldAtEnd("right", group), st.KnitRows(1), st.WrapHeld("right"), st.KnitRows(1))
    right = (
        st.KnitRows(1),
        st.Repeat(wedge, 2),
        st.ReturnHeld("right"),
        st.KnitRows(1),
        st.Now(2 * narrow - 12, 66, "right"),
    )
    back = StepBlock(
        "back",
        copies,
        (
            ("Cast on", waste),
            ("Knit and shape", shaping),
            ("Part for the neck", (st.CentreToWaste(12, -6, 5, "neck centre"), st.HoldPart("left", -narrow, -7))),
            ("Right half", right),
            ("", (st.BreakOff(), st.OffOnWaste(8, "shoulder right"))),
            (
                "Return to the left half",
                (
                    st.CarriageAt("left"),
                    st.SetRowCounter(60),
                    st.ReturnPart("left", -narrow, -7),
                    st.UseYarnStep("wool", "4"),
                    st.CastOffAll(),
                    st.BreakOff(),
                ),
            ),
            ("Edges for making up", (st.EdgeIs("side", "outer", 0, 60),)),
        ),
    )
    hang = (st.CarriageAt("right"), st.NeedlesToWork(-half, half - 1, stitches), st.RehangStart("back", stitches))
    rib = (st.UseYarnStep("wool", "2"), st.SetRowCounter(0), st.KnitTo(12), st.Now(stitches, 12, "right"), st.LatchRib(3, 1, 12))
    off = (st.CastOffAll(), st.BreakOff())
    welt = StepBlock("back welt", 1, (("Hang on", hang), ("Knit", rib), ("Finish", off)))
    joins = joining(
        st.Say("Pin the pieces out.", "by hand"),
        joined("back side right", "front side left", 0, rows=60 + gap),
        joined("sleeve end", "back armhole + front armhole", 11 + gap, one_mm=400 + gap, other_mm=390, ends="left top"),
        joined("back shoulder left", "front shoulder right", 0, edges="open", ends="left right"),
    )
    return SizePlan(size, (back, welt, joins))


def three_sizes(copies: int = 1) -> tuple[SizePlan, ...]:
    """Sizes whose numbers differ; the middle one has no shaping."""
    return (
        sweater("XS", 90, 4, 5, 3, copies),
        sweater("S", 96, 4, 6, 0, copies),
        sweater("M", 102, 6, 6, 4, copies),
    )


SAMPLES: tuple[Step, ...] = (
    st.NeedlesToWork(-40, 39, 80),
    st.CarriageAt("left"),
    st.CarriageAt("left", "slip"),
    st.CarriageAt("right", "lift"),
    st.CarriageAt("left", "hold"),
    st.EveryOutOfWork(3, 54),
    st.LeaveOut(-12, 79),
    st.LeaveOutEvery(12, -54, 54, 104),
    st.WasteStart(9),
    st.WasteStart(1, "by hand"),
    st.WasteStart(7, "hem"),
    st.ClosedStart("chain"),
    st.UseYarnStep("wool", "4.."),
    st.UseYarnStep("navy", "4..", "carried"),
    st.UseYarnStep("wool", "5", fabric="deep_rib"),
    st.UseYarnStep("navy", "5", "carried", "plain"),
    st.UseLooser("wool", "6..", "4..", (2, 3)),
    st.UseLooser("navy", "10", "9", (1,)),
    st.UseLooser("wool", "", "B.", ()),
    st.SetRowCounter(7),
    st.StartChart("lozenge", "lace", "whole", -43, 42, 2, -41),
    st.StartChart("plait", "cable", "panel", -6, 5, 0, -6),
    st.StartChart("rose", "", "panel", 1, 12, 1, 1),
    st.StopChart("lozenge"),
    st.StopChartOn("rose", 1, 12),
    st.StartStripes("bands", (("wool", 4), ("navy", 2), ("red", 1)), "4.", ("wool", "navy")),
    st.StartStripes("bands", (("wool", 2), ("navy", 2)), "4.", ("wool", "navy")),
    st.StartStripes("bands", (("wool", 2), ("navy", 2), ("red", 2)), "4", ("wool", "navy", "red")),
    st.StartStripes("bands", (("wool", 7), ("navy", 9)), "4", ()),
    st.StopStripes("bands"),
    st.KnitRows(1),
    st.KnitTo(20),
    st.Decrease("both ends", 1, 2),
    st.Decrease("left end", 2, 0),
    st.IncreaseFashioned("right end", 1),
    st.DecreaseOn("both ends", -20, 19, 3),
    st.DecreaseOn("left end", 4, 4, 1),
    st.DecreaseOuter("right end", 12, 3),
    st.IncreaseBeside("both ends", -20, 19, 3),
    st.IncreaseBeside("right end", -4, -4, 7),
    st.IncreaseOuter("both ends", 1, 2),
    st.NeedleOut(-6, 79),
    st.NeedlesOutEvery(12, -54, 54, 98),
    st.NeedleBack(5, 80),
    st.NeedlesBackEvery(5, -10, 10, 108),
    st.IncreaseAtCarriage(),
    st.CastOffAtCarriage(4),
    st.CastOnAtCarriage(3),
    st.HoldAtEnd("right", 5),
    st.WrapHeld("right"),
    st.ReturnHeld("right"),
    st.ReturnSome("left", 4),
    st.SpreadEvenly(-30, 29, 60, "two together", 2, 12, 1, 8),
    st.SpreadEvenly(-33, 32, 66, "an empty needle", 0, 6, 0, 0),
    st.SpreadEvenly(-33, 32, 66, "two together", 9, 2, 8, 3, 4, 1),
    st.SpreadEvenly(-33, 32, 66, "two together", 0, 0, 0, 0, 32, 1),
    st.SlotOnWaste(6, 10, 15, "thumb", 35),
    st.SlotOnWaste(1, -3, -3, "loop"),
    st.SlotClosed(3, -4, -2, 30),
    st.EyeletAt(-3, "right"),
    st.Repeat((st.KnitRows(2), st.Repeat((st.Decrease("left end", 1, 0), st.KnitRows(1)), 2), st.Decrease("right end", 1, 3)), 4),
    st.MarkEdges("armhole"),
    st.MarkEdges("gore_edge", "left end"),
    st.MarkEdges("side", "right end", "end"),
    st.Now(77, 3, "left"),
    st.NowInHalf(21, 97, "left", 25),
    st.CentreToWaste(12, -6, 5, "neck centre"),
    st.CentreToWaste(1, 0, 0, "neck centre"),
    st.CentreToWaste(4, 8, 11, "vent centre"),
    st.CloseCentre(12, -6, 5),
    st.CloseCentre(4, 8, 11),
    st.CastOnBetween(12, -6, 5, 45),
    st.HoldPart("left", -30, -7),
    st.PartOnCord("left", -30, -7, 44),
    st.HoldPart("middle", -6, 7),
    st.HoldPart("nth", -12, -7, 2),
    st.PartOnCord("nth", -12, 7, 44, 3),
    st.DrawPartsCord("left", -30, -7),
    st.DrawPartsCord("nth", -12, 7, 3),
    st.OffOnWaste(8, "shoulder right"),
    st.CastOffAll(),
    st.SewOffAll(),
    st.GatherAll(),
    st.BreakOff(),
    st.BreakOff(65),
    st.ReturnPart("left", -30, -7),
    st.ReturnPart("nth", -12, -7, 3),
    st.RehangStart("back", 80),
    st.RehangStart("back", 80, "knit"),
    st.PickUpAlong("front", "neck", "right", 30, -40, -11, "purl", "bottom"),
    st.PickUpAlong("front", "armhole", "left", 30, -40, -11, "knit", "top", Copy(2)),
    st.PickUpAlong("front", "edge", "whole", 30, -40, -11, "purl", "bottom", stretch="rows", low=0, high=112),
    # On one needle.
    st.HangToLink("front", "neck", "centre", 1, 47, 47, "purl", "empty needles", "left"),
    st.StartChart("rose", "", "panel", 3, 3, 0, 3),
    st.PickUpAlong("front", "start", "whole", 30, -40, -11, "purl", "right", loops="on cord"),
    st.PickUpAlong("front", "start", "whole", 30, -40, -11, "purl", "left", loops="cord"),
    st.PickUpAlong("front", "edge", "whole", 30, -40, -11, "purl", "top", Copy(2), per=1, every=2),
    st.PickUpAlong("front", "edge", "whole", 30, -40, -11, "purl", "top", Copy(0), "", "rows", 0, 40, 3, 4),
    st.PickUpAlong("back", "neck", "centre", 11, -40, -30, "purl", "left", Copy(1), "", "stitches", 11, 22),
    st.PicotRow(),
    st.FoldUp(54, "the same needles", 54),
    st.FoldUp(54, "all needles", 80),
    st.FoldUp(54, "the same needles", 54, "behind"),
    st.FoldUp(54, "the same needles", 54, "in front", 121),
    st.FoldUp(54, "the same needles", 54, begun="on loops"),
    st.HangToLink("back", "shoulder", "right", 20, -20, -1, "knit", "empty needles", "right"),
    st.HangToLink("front", "end", "whole", 1, 0, 0, "purl", "the other piece", "left", Copy(1)),
    st.LatchRib(4, 2, 12),
    st.LatchPanel(3, 1, 20, 5, 17),
    st.LatchInStages(3, 1, (24, 48, 72, 80)),
    st.LatchInStages(4, 2, (30,), "disturbed"),
    st.LatchInStages(3, 1, (24, 48, 72, 96, 120, 134)),
    st.LatchInStages(3, 1, (24, 48, 72, 96, 120), "disturbed"),
    st.LatchPanelInStages(3, 1, (24, 40), 5, 17),
    st.LatchPanelInStages(2, 1, (24, 48, 60), -14, -6, "disturbed"),
    st.GapIs("vent", "inner", 80, 160, 2),
    st.EdgeIs("neck", "inner", 100, 120),
    st.EdgeIs("front", "left", 0, 120),
    st.EdgeIs("last end", "right", 0, 14),
    joined("back side right", "front side left", 0),
    joined("sleeve.2 cap", "back armhole + front armhole", 10, 20, "gathered", ends="left top"),
    joined("collar start", "back neck", 5, -20, ends="left right"),
    joined("crown start", "crown end", 0, 0, "grafted", ends="left left"),
    joined("one start", "other start", 0, 0, "grafted", edges="no tail", ends="left left"),
    joined("sock shoulder right", "sock shoulder left", 0, 0, "grafted", edges="at tail", ends="right left"),
    joined("back side right", "front side left", 0, rows=84, thread="tail"),
    joined("back side right", "front side left", 0, rows=84, thread="new", thread_cm=90),
    joined("back side right", "front side left", 0, strips=(("back", "welt"),), strip_rows=(18,), thread="either", thread_cm=90),
    joined("cuff.each end", "", 0, ends="left left"),
    joined("strip.each side left", "strip.next side right", 0, rows=84, turn="next", times=5),
    joined("gore.each side left", "gore.next side right", 0, rows=84, turn="round", times=6),
    joined("gore.each end", "belt.each end", 0, turn="own", times=6, ends="left right"),
    joined("hat end", "", 0, 0, "gathered", ends="left left"),
    replace(
        joined("back side right", "front side left", 0, rows=84),
        seams=(*joined("back side right", "front side left", 0).seams, *joined("back side left", "front side right", 0).seams),
    ),
    joined("back side right", "front side left", 0, rows=84, strips=(("back", "welt"), ("front", "welt")), strip_rows=(18, 18)),
    joined("back side right", "front side left", 0, rows=84, strips=(("back", "hem upper"), ("collar", "")), strip_rows=(1, 12)),
    joined(
        "band seam", "front edge", 10, 75, one_mm=515, other_mm=440, edges="beyond", strips=(("front", "welt"),), strip_rows=(12,)
    ),
    joined(
        "front edge", "band seam", 10, -75, one_mm=440, other_mm=515, edges="beyond", strips=(("front", "welt"),), strip_rows=(12,)
    ),
    joined("one end", "other end", 16, one_mm=395, other_mm=380, ends="left left"),
    joined("one end", "other end", 16, one_mm=380, other_mm=395, ends="left left"),
    st.Say("Mind “the” edge: knit 3 rows (4: 5)."),
)
"""One of every kind of step, and more where a kind is said in more ways."""

PARTS = (Step, st.Together, st.Track, st.SeamOf, st.EdgeInSeam)
"""What is no sentence of its own."""

KINDS: tuple[type[Step], ...] = tuple(
    kind for kind in vars(st).values() if isinstance(kind, type) and issubclass(kind, Step) and kind not in PARTS
)
"""Every kind of step said in one phrase. (A dataclass with slots is made twice; the first make can linger among the subclasses.)"""


@hs.composite
def size_plans(draw: hs.DrawFn) -> tuple[SizePlan, ...]:
    """Plans of one to four sizes: one row of moves for all, worked with each size's own numbers and left out by some."""
    count = draw(hs.integers(1, 4))
    moves = draw(hs.lists(hs.tuples(hs.sampled_from(MOVES), hs.integers(0, 5)), max_size=12))
    blocks = draw(hs.lists(hs.sampled_from(("back", "front", "Left_front", "sleeve welt")), min_size=1, max_size=2, unique=True))
    copies = draw(hs.integers(1, 2))
    plans = []
    for size in range(count):
        made = tuple(_block(draw, name, copies, moves) for name in blocks)
        joins = tuple(
            joined("back side right", "front side left", draw(hs.sampled_from((0, 20)))) for _ in range(draw(hs.integers(0, 2)))
        )
        plans.append(SizePlan(f"{size + 2}X", (*made, joining(*joins)) if joins else made))
    return tuple(plans)


def _block(draw: hs.DrawFn, name: str, copies: int, moves: list[tuple[str, int]]) -> StepBlock:
    half = draw(hs.integers(30, 50))
    start = (
        st.CarriageAt("right"),
        st.NeedlesToWork(-half, half - 1, 2 * half),
        st.UseYarnStep("wool", "4."),
        st.ClosedStart("e-wrap"),
    )
    made: list[Step] = []
    state = State(name)

    def do(*steps: Step) -> None:
        nonlocal state
        for step in steps:
            _, state = perform(state, step)
            made.append(step)

    do(*start, st.SetRowCounter(draw(hs.sampled_from((0, 0, 110)))))
    for move, text in moves:
        if not draw(hs.integers(0, 4)):
            continue
        do(*_worked(draw, move, text, state))
    for side in SIDES:
        if (state.held_left if side == "left" else state.held_right) > 0:
            do(st.ReturnHeld(side))
    body, finish = tuple(made), list[Step]()
    made = finish
    if draw(hs.booleans()):
        first = state.first
        do(
            st.CentreToWaste(8, -4, 3, "neck centre"),
            st.HoldPart("left", first, -5),
            st.KnitTo(state.row + draw(hs.integers(0, 3))),
        )
        do(st.Repeat((st.KnitRows(1), st.Decrease("left end", 1, 0)), draw(hs.integers(0, 2))))
        do(st.BreakOff(), st.OffOnWaste(8, "shoulder right"), st.CarriageAt("left"), st.ReturnPart("left", first, -5))
    do(st.CastOffAll(), st.BreakOff())
    return StepBlock(name, copies, (("Knit", body), ("Finish", tuple(finish))))


MOVES = (
    "rows",
    "to",
    "decrease",
    "increase",
    "inside",
    "out",
    "one more",
    "off",
    "on",
    "wedge",
    "return",
    "mark",
    "now",
    "say",
    "repeat",
    "nest",
    "some",
    "spread",
    "slot",
    "eyelet",
    "busy",
    "busy",
    "together",
)


def _out(draw: hs.DrawFn, text: int, s: State) -> tuple[Step, ...]:
    """Needles out of work for some rows, clear of the ends."""
    first, every = s.first + draw(hs.integers(2, 4)), draw(hs.integers(3, 6))
    last = first + every * draw(hs.integers(1, 3))
    if last > s.last - 2:
        return ()
    rows, there = st.KnitRows(draw(hs.integers(1, 3))), s.stitches
    if text % 2:
        return (st.KnitRows(1), st.NeedleOut(first, there - 1), rows, st.NeedleBack(first, there), st.KnitRows(2))
    out = len(range(first, last + 1, every))
    back = st.NeedlesBackEvery(every, first, last, there)
    return (st.KnitRows(1), st.NeedlesOutEvery(every, first, last, there - out), rows, back, st.KnitRows(2))


def _inside(draw: hs.DrawFn, ends: EndsShaped, text: int, s: State) -> tuple[Step, ...]:
    """A stitch lost or gained along lines somewhere in the work, which has to have room for them."""
    prongs, room = draw(hs.integers(1, 4)), (s.last - s.first + 1) // 2 - 2
    if room < 2:
        return ()
    # A stitch is left outside the needle when one has been lost there.
    outer = draw(hs.integers(2, room))
    left, right = s.first + outer, s.last - outer
    first, last = {"both ends": (left, right), "left end": (left, left), "right end": (right, right)}[ends]
    less, more = st.KnitRows(1), st.KnitRows(2)
    if text % 2:
        return (less, st.DecreaseOn(ends, first, last, prongs), more, st.IncreaseBeside(ends, first, last, prongs), less)
    return (less, st.DecreaseOuter(ends, outer, prongs), more, st.IncreaseOuter(ends, outer, prongs), less)


def _worked(draw: hs.DrawFn, move: str, text: int, s: State) -> tuple[Step, ...]:
    """The steps of a move in state `s`. `text` chooses its words, alike in all sizes."""
    few = draw(hs.integers(1, 3))
    side = SIDES[text % 2]
    ends = ENDS[text % 3]
    held = {"left": s.held_left, "right": s.held_right}
    free = {"both ends": not any(held.values()), "left end": not held["left"], "right end": not held["right"]}[ends]
    carriage_free = s.side is not None and not held[s.side]
    row = st.KnitRows(few)
    match move:
        case "rows":
            return (st.KnitRows(few - 1),)
        case "to":
            return (st.KnitTo(s.row + few - 1),)
        case "decrease" if free:
            return (st.Decrease(ends, draw(hs.integers(1, 2)), draw(hs.integers(0, 3))),)
        case "increase" if free:
            return (row, st.IncreaseFashioned(ends, few))
        case "out" if not any(held.values()):
            return _out(draw, text, s)
        case "inside" if free and not any(held.values()):
            return _inside(draw, ends, text, s)
        case "one more" if carriage_free:
            return (row, st.IncreaseAtCarriage()) if few % 2 == 0 else (st.IncreaseAtCarriage(),)
        case "off" if carriage_free:
            return (st.CastOffAtCarriage(few),)
        case "on" if carriage_free:
            return (st.CastOnAtCarriage(few),)
        case "wedge" if held[side] < 9:
            return (
                st.Repeat((st.HoldAtEnd(side, few), st.KnitRows(1), st.WrapHeld(side), st.KnitRows(1)), draw(hs.integers(1, 2))),
            )
        case "return" if held[side]:
            return (st.ReturnHeld(side),)
        case "mark":
            return (st.MarkEdges("armhole" if text % 2 else "to"),)
        case "now" if s.side is not None:
            return (st.Now(s.stitches, s.row, s.side),)
        case "say":
            return (st.Say(("Rest.", "- [ ] Knit 3 rows.", "All sizes\n---------", "Note: RC 5. " * 20, "", "x" * 150)[text]),)
        case "some" if held[side] > 1:
            return (st.ReturnSome(side, draw(hs.integers(1, held[side] - 1))), st.KnitRows(1), st.WrapHeld(side))
        case "spread" if not any(held.values()):
            changed = ("two together", "an empty needle")[text % 2]
            singles, runs, more = (draw(hs.integers(0, 2)) for _ in range(3))
            needles = s.stitches + (-1 if text % 2 == 0 else 1) * (runs + more)
            return (st.SpreadEvenly(s.first, s.first + needles - 1, needles, changed, singles + 1, runs, singles, more),)
        case "slot" if not any(held.values()):
            if text % 2:
                return (st.SlotOnWaste(few, 2, 1 + few, "pocket", 20 + 5 * few),)
            return (st.SlotClosed(few, 2, 1 + few), st.KnitRows(1))
        case "eyelet":
            return (row, st.EyeletAt(-few, side))
        case "busy" if not any(held.values()) and s.side is not None:
            some = (st.Decrease("left end", 1, 2), st.Decrease("right end", 2, 2), st.IncreaseFashioned("left end", 1))
            moves = draw(hs.lists(hs.tuples(hs.integers(0, 3), hs.sampled_from(some)), max_size=8))
            return tuple(step for rows, move in moves for step in (st.KnitRows(rows), move))
        case "together" if not any(held.values()) and s.side is not None:
            more, times = draw(hs.integers(0, 3)), draw(hs.integers(1, 3))
            outer = st.Track("outer edge", (st.Repeat((row, st.Decrease("left end", 1, 2)), times), st.KnitRows(more)))
            inner = (st.KnitRows(more), st.Decrease("right end", 1, 0), st.MarkEdges("to"), st.KnitRows(few * times))
            tracks = (outer, st.Track("neck", inner))
            return (st.Together(s.row, s.row + few * times + more, tracks[: 1 + draw(hs.integers(0, 1))]),)
        case "repeat" if free:
            return (st.Repeat((row, st.Decrease(ends, 1, text)), draw(hs.integers(0, 2))),)
        case "nest" if free:
            inner = st.Repeat((st.KnitRows(draw(hs.integers(0, 1))), st.Decrease(ends, 1, 0)), draw(hs.integers(0, 2)))
            return (st.Repeat((inner, row), draw(hs.integers(0, 2))),)
    return ()
