"""Damaged pullovers: each is refused, with the right code, at the right place, naming what a knitter can look at."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from tests.bed.by_hand import seam_of, with_blocks
from tests.bed.words import told
from walewright.bed import Bed, BedResult, knit
from walewright.knit.operations import (
    Block,
    BreakYarn,
    CastOff,
    CastOn,
    Check,
    Close,
    FillFromBelow,
    Gather,
    Hold,
    IntoWork,
    LatchUp,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    Operation,
    OutOfWork,
    Pass,
    PickUpEdge,
    Rehang,
    Release,
    SetCounter,
    Spread,
    Transfer,
    UseYarn,
    Work,
    Wrap,
)
from walewright.report.said import said

Ops = list[Operation]
Edit = Callable[[Ops], None]


def drop(op: Operation, nth: int = 0) -> Edit:
    def edit(ops: Ops) -> None:
        del ops[place(ops, op, nth)]

    return edit


def swap(op: Operation, by: Operation, nth: int = 0) -> Edit:
    def edit(ops: Ops) -> None:
        ops[place(ops, op, nth)] = by

    return edit


def before(op: Operation, *new: Operation, nth: int = 0) -> Edit:
    def edit(ops: Ops) -> None:
        at = place(ops, op, nth)
        ops[at:at] = new

    return edit


def after(op: Operation, *new: Operation, nth: int = 0) -> Edit:
    def edit(ops: Ops) -> None:
        at = place(ops, op, nth) + 1
        ops[at:at] = new

    return edit


def at_end(*new: Operation) -> Edit:
    def edit(ops: Ops) -> None:
        ops += new

    return edit


def both(one: Edit, other: Edit) -> Edit:
    def edit(ops: Ops) -> None:
        one(ops)
        other(ops)

    return edit


def cut(op: Operation, nth: int = 0) -> Edit:
    """Stop before an operation."""

    def edit(ops: Ops) -> None:
        del ops[place(ops, op, nth) :]

    return edit


def place(ops: Ops, op: Operation, nth: int) -> int:
    return [i for i, known in enumerate(ops) if known == op][nth]


def damaged(work: Work, name: str, edit: Edit) -> Work:
    blocks: list[Block] = []
    for block in work.blocks:
        ops = list(block.operations)
        if block.name == name:
            edit(ops)
        blocks.append(replace(block, operations=tuple(ops)))
    return with_blocks(work, blocks)


WOOL = UseYarn("wool", "4")
BODY = Check(20, 20, "right")
RIGHT_HALF = Check(14, 26, "right")
CENTRE = OntoWaste(-2, 1, 8, "neck centre")
SHOULDER = OntoWaste(4, 9, 8, "shoulder right")

DAMAGES: dict[str, tuple[str, Edit, str, tuple[str, ...]]] = {
    "piece wider than the bed": (
        "sleeve",
        before(Check(12, 12, "right"), IntoWork(6, 20)),
        "beyond-bed",
        ("R 21", "R 20", "RC 12"),
    ),
    "needles named backwards": ("sleeve", before(Check(12, 12, "right"), IntoWork(9, 6)), "needles-reversed", ("R 10", "R 7")),
    "cast on over stitches": ("back", before(BODY, CastOn("e-wrap", 9, 9)), "cast-on-over-loops", ("R 10", "RC 20")),
    "comb in garment yarn": ("back", swap(UseYarn("waste", "waste"), WOOL), "comb-in-garment-yarn", ("wool",)),
    "unknown cast-on": ("back", swap(CastOn("comb", -10, 9), CastOn("knot", -10, 9)), "cast-on-way", ("knot",)),
    "cast on at the far side": (
        "back",
        before(BODY, IntoWork(-12, -11), CastOn("e-wrap", -12, -11)),
        "cast-on-away-from-carriage",
        ("L 12", "right"),
    ),
    "carriage already there": (
        "back",
        before(BODY, Pass("right")),
        "carriage-already-there",
        ("already on the right", "RC 20"),
    ),
    "a row missing": ("back", drop(Pass("left"), 12), "carriage-already-there", ("right",)),
    "row without yarn": ("back", before(BODY, BreakYarn(), Pass("left")), "no-yarn", ("RC 20",)),
    "row after fastening off": ("sleeve", at_end(IntoWork(0, 0), Pass("left")), "no-yarn", ("fastened off",)),
    "breaking no yarn": ("back", after(BreakYarn(), BreakYarn()), "no-yarn", ("break",)),
    "all needles held": ("back", before(BODY, Hold(-10, 9), Pass("left")), "no-needle-in-work", ("working position",)),
    "nothing on the needles": ("back", drop(CastOn("comb", -10, 9)), "no-loops", ("no needle",)),
    "working needle brought into work": ("back", before(BODY, IntoWork(9, 10)), "already-in-work", ("R 10",)),
    "stitch dropped": ("back", before(BODY, OutOfWork(9, 9)), "stitch-dropped", ("R 10", "RC 20")),
    "idle needle pushed back": ("back", before(BODY, OutOfWork(10, 10)), "not-in-work", ("R 11",)),
    "moving from an empty needle": ("sleeve", swap(Transfer(2, 3, 1), Transfer(3, 4, 1)), "no-loop-to-move", ("R 5", "RC 4")),
    "moving on to an idle needle": ("sleeve", drop(IntoWork(4, 4)), "onto-idle-needle", ("R 4", "R 5")),
    "moving off the bed": ("back", before(BODY, Transfer(9, 9, 11)), "beyond-bed", ("R 21",)),
    "moving more than the tool takes": (
        "back",
        before(BODY, Transfer(6, 9, -1)),
        "tool-too-narrow",
        ("R 7", "R 10", "3 prongs"),
    ),
    "moving nowhere": ("back", before(BODY, Transfer(9, 9, 0)), "moved-nowhere", ("R 10",)),
    "moving across held needles": ("back", after(Hold(7, 9), Transfer(6, 6, 1)), "transfer-across-held", ("R 8", "RC 23")),
    "increase by two at once": ("back", after(Pass("left"), IntoWork(-12, -11), nth=6), "bars-side-by-side", ("L 12", "L 11")),
    "filling over a loop": ("sleeve", drop(Transfer(-4, -3, -1)), "fill-over-loop", ("L 3",)),
    "filling from too far": ("sleeve", swap(FillFromBelow(-3, -2), FillFromBelow(-3, 0)), "fill-too-far", ("R 1", "L 3")),
    "filling from below the first row": (
        "sleeve",
        after(Pass("left"), IntoWork(4, 4), Transfer(3, 3, 1), FillFromBelow(3, 2), nth=4),
        "nothing-below",
        ("R 3", "RC 1"),
    ),
    "holding an empty needle": ("back", before(Hold(7, 9), IntoWork(10, 10), Hold(10, 10)), "hold-empty", ("R 11",)),
    "holding twice": ("back", after(Hold(7, 9), Hold(7, 9)), "already-held", ("R 8", "RC 23")),
    "holding at the carriage": ("back", before(BODY, Hold(8, 9)), "held-at-carriage", ("R 9", "R 10", "right")),
    "holding at the carriage one by one": ("back", before(BODY, Hold(9, 9), Hold(8, 8)), "held-at-carriage", ("R 9",)),
    "returning what is not held": ("back", before(BODY, Release(3, 5)), "not-held", ("R 4",)),
    "returning under the yarn": ("back", before(Wrap(7), Release(7, 9)), "returned-under-yarn", ("R 8", "RC 24")),
    "no wrap": ("back", drop(Wrap(7)), "held-edge-unwrapped", ("R 8", "R 7", "RC 24")),
    "no wrap on the other half": ("front", drop(Wrap(-8)), "held-edge-unwrapped", ("L 8", "L 7", "RC 24")),
    "no wrap, then straight on to waste": (
        "back",
        both(both(drop(Wrap(7)), drop(RIGHT_HALF)), drop(Pass("right"), 17)),
        "held-edge-unwrapped",
        ("R 8", "RC 24"),
    ),
    "wrapping a working needle": ("back", swap(Wrap(7), Wrap(6)), "wrap-not-held", ("R 7",)),
    "wrapping away from the yarn": ("back", swap(Wrap(7), Wrap(9)), "wrap-away-from-yarn", ("R 10", "RC 24")),
    "wrapping twice": ("back", after(Wrap(7), Wrap(7)), "wrapped-already", ("R 8",)),
    "cast off at the far side": (
        "back",
        swap(CastOff(2, 3, "left"), CastOff(8, 9, "right")),
        "cast-off-away-from-carriage",
        ("R 9", "left"),
    ),
    "cast off inside the row": (
        "back",
        swap(CastOff(2, 3, "left"), CastOff(3, 4, "left")),
        "cast-off-away-from-carriage",
        ("R 4",),
    ),
    "cast off nothing": ("sleeve", swap(CastOff(-6, 5, "right"), CastOff(-6, 6, "right")), "cast-off-empty", ("R 7",)),
    "cast off held needles": ("back", swap(SHOULDER, CastOff(-10, -3, "left")), "needle-held", ("L 10",)),
    "waste yarn over empty needles": ("back", swap(SHOULDER, OntoWaste(3, 9, 8, "shoulder right")), "waste-empty", ("R 4",)),
    "no rows of waste yarn": ("back", swap(SHOULDER, OntoWaste(4, 9, 0, "shoulder right")), "waste-rows", ("0 rows",)),
    "two edges of one name": ("back", swap(SHOULDER, OntoWaste(4, 9, 8, "neck centre")), "edge-named-twice", ("neck centre",)),
    "yarn left at the other side": (
        "back",
        both(drop(BreakYarn()), drop(WOOL, 1)),
        "yarn-at-other-side",
        ("wool", "right"),
    ),
    "yarn floating over a gap": (
        "back",
        after(BODY, OntoWaste(4, 9, 8, "end right"), Pass("left")),
        "yarn-float",
        ("R 10", "R 4", "6 needles"),
    ),
    "latching deeper than the welt": (
        "back welt",
        swap(LatchUp(0, 6), LatchUp(0, 7)),
        "latch-too-deep",
        ("R 1", "6 rows deep"),
    ),
    "latching an empty needle": ("back welt", before(LatchUp(0, 6), LatchUp(15, 6)), "not-in-work", ("R 16",)),
    "rehanging on too few needles": (
        "back welt",
        swap(Rehang("back", -10, 9), Rehang("back", -10, 8)),
        "rehang-count",
        ("20 feet", "19 needles"),
    ),
    "rehanging twice": ("front welt", swap(Rehang("front", -10, 9), Rehang("back", -10, 9)), "edge-taken", ("back",)),
    "rehanging an unknown piece": (
        "back welt",
        swap(Rehang("back", -10, 9), Rehang("hood", -10, 9)),
        "piece-unknown",
        ("hood",),
    ),
    "rehanging a closed edge": (
        "back welt",
        swap(Rehang("back", -10, 9), Rehang("front welt", -10, 9)),
        "piece-unknown",
        ("front welt",),
    ),
    "rehanging over stitches": (
        "back welt",
        after(Rehang("back", -10, 9), Rehang("front", -10, 9)),
        "rehang-over-loops",
        ("L 10",),
    ),
    "picking up over stitches": (
        "neckband",
        before(UseYarn("wool", "2"), PickUpEdge("back", "neck", "left", 15, 15, left_end="top")),
        "pick-up-over-loops",
        ("R 16",),
    ),
    "rehanging on idle needles": ("back welt", drop(IntoWork(-10, 9)), "not-in-work", ("L 10",)),
    "picking up an unknown edge": (
        "neckband",
        swap(PickUpEdge("back", "neck", "left", -16, -11, left_end="top"), PickUpEdge("back", "yoke", "left", -16, -11)),
        "edge-unknown",
        ("yoke", "neck centre"),
    ),
    "picking up more than there is": (
        "neckband",
        swap(
            PickUpEdge("back", "neck", "centre", -10, -7, left_end="left"),
            PickUpEdge("back", "neck", "centre", -10, -6, left_end="left"),
        ),
        "pick-up-too-many",
        ("5 stitches", "4 places"),
    ),
    "picking up twice": (
        "neckband",
        swap(
            PickUpEdge("front", "neck", "centre", 6, 9, left_end="left"),
            PickUpEdge("back", "neck", "centre", 6, 9, left_end="left"),
        ),
        "edge-taken",
        ("neck centre", "back"),
    ),
    "picking up an edge that is two": (
        "neckband",
        swap(PickUpEdge("back", "neck", "left", -16, -11, left_end="top"), PickUpEdge("back", "side", "whole", -16, -11)),
        "edge-unknown",
        ("side",),
    ),
    "wrong stitches stated": ("back", swap(BODY, Check(18, 20, "right")), "check-differs", ("18 stated, 20 found",)),
    "wrong row stated": ("back", swap(BODY, Check(20, 22, "right")), "check-differs", ("22 stated, 20 found",)),
    "wrong side stated": ("back", swap(BODY, Check(20, 20, "left")), "check-differs", ("left stated, right found",)),
    "a centre stitch too few off": (
        "back",
        swap(CENTRE, OntoWaste(-2, 0, 8, "neck centre")),
        "cast-off-away-from-carriage",
        ("R 3", "R 4"),
    ),
    "stitches left on the bed": ("sleeve", drop(CastOff(-6, 5, "right")), "loops-left", ("12 needles", "L 6", "R 6")),
    "needles left held": (
        "back",
        cut(MoveCarriage("left"), 1),
        "held-left",
        ("8 needles", "L 10", "L 3"),
    ),
    "edge over rows not knitted": (
        "back",
        swap(NameEdge("side", "outer", 0, 14), NameEdge("side", "outer", 0, 30)),
        "rows-not-knitted",
        ("RC 30", "row 27"),
    ),
    "edge without rows": (
        "back",
        swap(NameEdge("side", "outer", 0, 14), NameEdge("side", "outer", 14, 14)),
        "edge-without-rows",
        ("side", "RC 14"),
    ),
    "inner edge before the parting": (
        "back",
        swap(NameEdge("neck", "inner", 20, 26), NameEdge("neck", "inner", 18, 26)),
        "not-parted",
        ("neck", "RC 18"),
    ),
    "inner edge of an unparted piece": ("sleeve", at_end(NameEdge("slit", "inner", 4, 8)), "not-parted", ("slit",)),
    "edge named twice": ("sleeve", at_end(NameEdge("side", "outer", 0, 4)), "edge-named-twice", ("side",)),
    "counter not set back": ("back", drop(SetCounter(20)), "check-differs", ("26 stated, 32 found",)),
    "counter set back in mid-piece": (
        "sleeve",
        before(Pass("left"), SetCounter(2), nth=9),
        "check-differs",
        ("row",),
    ),
    "join on the bed": (
        "sleeve",
        at_end(seam_of("back side left", "front side right", ("bottom", "bottom"))),
        "join-in-block",
        ("joined",),
    ),
}


THUMB_UPPER = PickUpEdge("mitten", "thumb upper", "whole", 0, 3)
SLOT = CastOn("e-wrap", -4, -1, own_length=True)
GAP = CastOn("e-wrap", 0, 3, own_length=True)
DRAWN_TOGETHER = Spread(-8, 7, -4, (2,) * 8)

PAIR_DAMAGES: dict[str, tuple[str, Edit, str, tuple[str, ...]]] = {
    "no wrap after the first hold": ("mitten", drop(Wrap(6)), "held-edge-unwrapped", ("R 7", "RC 6")),
    "no wrap after a partial return": ("mitten", drop(Wrap(6), 1), "held-edge-unwrapped", ("R 7", "RC 10")),
    "a partial return too much": (
        "mitten",
        swap(Release(4, 5), Release(4, 6)),
        "wrap-not-held",
        ("R 7", "RC 10"),
    ),
    "returned outermost first": ("mitten", swap(Release(4, 5), Release(6, 7)), "wrap-not-held", ("R 7", "RC 10")),
    "a row too few in a wedge": ("mitten", drop(Pass("right"), 5), "wrap-away-from-yarn", ("R 5", "RC 7")),
    "slot not cast on again": ("mitten", drop(SLOT), "bars-side-by-side", ("L 4", "L 3", "RC 14")),
    "slot's needles left idle": (
        "mitten",
        both(drop(SLOT), drop(IntoWork(-4, -1))),
        "check-differs",
        ("16 stated, 12 found",),
    ),
    "slot a stitch too narrow": (
        "mitten",
        both(swap(SLOT, CastOn("e-wrap", -4, -2, own_length=True)), swap(IntoWork(-4, -1), IntoWork(-4, -2))),
        "check-differs",
        ("16 stated, 15 found",),
    ),
    "slot cast on with the yarn in use": (
        "mitten",
        swap(SLOT, CastOn("e-wrap", -4, -1)),
        "cast-on-away-from-carriage",
        ("L 4", "L 1"),
    ),
    "buttonhole closed without a neighbour": (
        "mitten",
        swap(Close(2, 3, "right"), Close(6, 7, "right")),
        "close-without-neighbour",
        ("R 7", "R 9"),
    ),
    "buttonhole closed the whole row": (
        "mitten",
        swap(Close(2, 3, "right"), Close(-8, 7, "left")),
        "close-without-neighbour",
        ("L 9",),
    ),
    "centre not taken": ("mitten", drop(OntoWaste(1, 2, 8, "gap centre")), "held-at-carriage", ("L 8", "RC 24")),
    "the part that waits not held": ("mitten", drop(Hold(3, 7)), "held-at-carriage", ("L 8", "RC 24")),
    "parts held at the carriage with the yarn on": ("mitten", drop(BreakYarn()), "held-at-carriage", ("R 4", "R 8")),
    "part rejoined two rows too early": (
        "mitten",
        both(both(drop(Check(16, 24, "right")), drop(Pass("left"), 16)), drop(Pass("right"), 16)),
        "parts-meet-unevenly",
        ("RC 24", "RC 22"),
    ),
    "counter not set back for the second part": ("mitten", drop(SetCounter(18)), "check-differs", ("24 stated, 30 found",)),
    "gap not cast on again": ("mitten", drop(GAP), "bars-side-by-side", ("R 1", "R 2")),
    "first part not returned": ("mitten", drop(Release(-8, -1)), "needle-held", ("L 8",)),
    "a stitch dropped in hanging back": (
        "mitten",
        swap(DRAWN_TOGETHER, Spread(-8, 7, -4, (2, 2, 2, 2, 1, 2, 2, 2))),
        "spread-count",
        ("16 stitches", "15 hung back"),
    ),
    "three stitches on one needle": (
        "mitten",
        swap(DRAWN_TOGETHER, Spread(-8, 7, -4, (2, 2, 2, 3, 1, 2, 2, 2))),
        "spread-crowded",
        ("L 1",),
    ),
    "stitches not hung back": ("mitten", drop(DRAWN_TOGETHER), "check-differs", ("8 stated, 16 found",)),
    "a stitch not gathered": ("mitten", swap(Gather(-4, 3), Gather(-4, 2)), "gather-not-all", ("R 4",)),
    "gathered with the yarn on": ("mitten", drop(BreakYarn(), 2), "gather-yarn-unbroken", ("wool",)),
    "never gathered": ("mitten", drop(Gather(-4, 3)), "loops-left", ("8 needles",)),
    "one-sided edge over rows not knitted": (
        "mitten",
        swap(NameEdge("back", "right", 0, 14), NameEdge("back", "right", 0, 30)),
        "rows-not-knitted",
        ("row 29", "right"),
    ),
    "edge called on both sides where only one has the rows": (
        "mitten",
        swap(NameEdge("palm", "left", 0, 14), NameEdge("palm", "outer", 0, 14)),
        "edge-sides-differ",
        ("14 rows on the left and 8 on the right",),
    ),
    "inner edge above where the parts meet": (
        "mitten",
        swap(NameEdge("gap", "inner", 18, 24), NameEdge("gap", "inner", 18, 26)),
        "not-parted",
        ("gap", "RC 18"),
    ),
    "thumb with a stitch too few": (
        "thumb",
        both(swap(THUMB_UPPER, PickUpEdge("mitten", "thumb upper", "whole", 0, 2)), swap(IntoWork(-4, 3), IntoWork(-4, 2))),
        "check-differs",
        ("8 stated, 7 found",),
    ),
    "thumb with a stitch too many": (
        "thumb",
        swap(THUMB_UPPER, PickUpEdge("mitten", "thumb upper", "whole", 0, 4)),
        "not-in-work",
        ("R 5",),
    ),
    "thumb hung twice on the waiting stitches": (
        "thumb",
        swap(THUMB_UPPER, PickUpEdge("mitten", "thumb", "whole", 0, 3)),
        "edge-taken",
        ("thumb", "mitten"),
    ),
    "thumb hung on an unknown edge": (
        "thumb",
        swap(THUMB_UPPER, PickUpEdge("mitten", "pocket upper", "whole", 0, 3)),
        "edge-unknown",
        ("thumb upper", "gap upper"),
    ),
}


@pytest.mark.parametrize("what", PAIR_DAMAGES)
def test_damage_to_the_mittens_is_refused(what: str, pair: Work, bed: Bed) -> None:
    refused(*PAIR_DAMAGES[what], pair, bed)


@pytest.mark.parametrize("what", DAMAGES)
def test_damage_is_refused(what: str, work: Work, bed: Bed) -> None:
    refused(*DAMAGES[what], work, bed)


def refused(name: str, edit: Edit, code: str, words: tuple[str, ...], work: Work, bed: Bed) -> None:
    result = knit(damaged(work, name, edit), bed)
    (first, *_) = result.faults
    assert (first.block, first.code) == (name, code), told(first)
    for word in words:
        assert word in told(first)
    assert told(first).startswith(name)
    assert name not in {fabric.name for fabric in result.fabrics}


def test_the_whole_pullover_is_sound(result: BedResult) -> None:
    assert result.faults == ()
    assert [fabric.name for fabric in result.fabrics] == [
        "back",
        "front",
        "sleeve",
        "back welt",
        "front welt",
        "sleeve welt",
        "neckband",
    ]
    assert result.open_edges == ()


def test_a_fault_names_its_operation(work: Work, bed: Bed) -> None:
    broken = damaged(work, "back", drop(Wrap(7)))
    (fault,) = knit(broken, bed).faults
    ops = broken.blocks[0].operations
    assert ops[fault.index] == Pass("right")
    assert ops[fault.index - 1] == Release(7, 9)
    assert ("needle", said("bed/needle/right", number=8)) in fault.facts
    assert ("row", 24) in fault.facts


def test_what_follows_from_a_fault_is_not_reported_again(work: Work, bed: Bed) -> None:
    result = knit(damaged(work, "back", drop(Wrap(7))), bed)
    assert len(result.faults) == 1
    assert [fabric.name for fabric in result.fabrics] == ["front", "sleeve", "front welt", "sleeve welt"]


def test_loops_that_only_waste_passes_hold_are_dropped(bed: Bed) -> None:
    ops: Ops = [
        MoveCarriage("right"),
        IntoWork(0, 2),
        WOOL,
        CastOn("e-wrap", 0, 2),
        Pass("left"),
        UseYarn("waste", "waste"),
        Pass("right"),
        CastOff(0, 2, "right"),
    ]
    (fault,) = knit(Work("S", (Block("swatch", tuple(ops)),)), bed).faults
    assert fault.code == "loop-dropped"
    assert "R 1 at RC 1" in told(fault)


def without(work: Work, *names: str) -> Work:
    return replace(work, tasks=tuple(task for task in work.tasks if not (isinstance(task, Block) and task.name in names)))


def test_feet_that_nothing_takes_up(work: Work, bed: Bed) -> None:
    (fault,) = knit(without(work, "back welt"), bed).faults
    assert (fault.code, fault.block, fault.index) == ("feet-open", "back", -1)
    assert "20 feet" in told(fault)


def test_a_welt_for_one_sleeve_of_two(work: Work, bed: Bed) -> None:
    blocks = tuple(replace(block, copies=1) if block.name == "sleeve welt" else block for block in work.blocks)
    (fault,) = knit(with_blocks(work, blocks), bed).faults
    assert (fault.code, fault.block) == ("copies-differ", "sleeve welt")


def test_two_pieces_of_one_name(work: Work, bed: Bed) -> None:
    result = knit(replace(work, tasks=(*work.tasks, work.blocks[2])), bed)
    assert [fault.code for fault in result.faults] == ["block-named-twice"]


def test_a_rehang_needs_open_feet(bed: Bed) -> None:
    closed: Ops = [MoveCarriage("right"), IntoWork(0, 2), WOOL, CastOn("e-wrap", 0, 2), Pass("left"), OntoWaste(0, 2, 8, "end")]
    welt: Ops = [IntoWork(0, 2), Rehang("piece", 0, 2)]
    (fault,) = knit(Work("S", (Block("piece", tuple(closed)), Block("welt", tuple(welt)))), bed).faults
    assert (fault.code, fault.block) == ("no-open-feet", "welt")


def test_a_wale_cannot_be_dropped_through_a_decrease(bed: Bed) -> None:
    ops: Ops = [
        MoveCarriage("right"),
        IntoWork(0, 3),
        WOOL,
        CastOn("e-wrap", 0, 3),
        Pass("left"),
        Pass("right"),
        Transfer(3, 3, -1),
        OutOfWork(3, 3),
        Pass("left"),
        LatchUp(2, 2),
    ]
    (fault,) = knit(Work("S", (Block("swatch", tuple(ops)),)), bed).faults
    assert fault.code == "latch-through-join"
    assert "R 3" in told(fault)
