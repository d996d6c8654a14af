"""Counts held against fabrics made by hand: what agrees is silent, and any number of either that is moved is told."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from tests.bed.by_hand import BED, Ops, again, apart_and_together, rows
from tests.proof import charted_by_hand as by_chart
from walewright.bed import KnitFabric, knit
from walewright.counted import CountedPiece, counted_piece
from walewright.counted.model import (
    ShapingPhrase,
    SizedOpening,
    SizedPiece,
    SizedRepeat,
    SizedRun,
    SizedSlot,
    SizedWedge,
    SizedZone,
)
from walewright.design.model import (
    Design,
    EdgeRun,
    Edging,
    Level,
    MachineProfile,
    Opening,
    Origin,
    Piece,
    ShapingWay,
    Slot,
    Wedge,
    Yarn,
)
from walewright.design.model import Fabric as Knit
from walewright.guide.english import LANGUAGE
from walewright.knit.operations import (
    Block,
    CastOff,
    CastOn,
    Close,
    Hold,
    IntoWork,
    LatchUp,
    LiftOff,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    OutOfWork,
    Pass,
    Release,
    SetCounter,
    Spread,
    Transfer,
    UseYarn,
    Work,
    Wrap,
)
from walewright.proof.counted import as_counted
from walewright.proof.measures import measures
from walewright.proof.model import Measure
from walewright.report.said import said
from walewright.solve.sized.deviations import deviations

HERE = Origin("by hand")
SIMPLE = ShapingWay("simple")
PLAIN = Knit("plain", "stocking stitch", 0, "wool", "4", 13, 18.5, 10.0, 10.0, 20.0, HERE)
RIB = Knit("rib", "latched rib", 3, "wool", "2", 14, 20, 10.0, 10.0, 20.0, HERE)


def run(name: str, from_row: int, to_row: int, *phrases: ShapingPhrase, across: bool = False) -> SizedRun:
    return SizedRun(name, from_row, to_row, phrases, SIMPLE, HERE, across)


# ----------------------------------------------------------------- a piece with everything inside its outline


def bag() -> Ops:
    """A rib first; a wedge at the right edge, a slot, a buttonhole, a gap off the centre, and half the needles at last."""
    return [
        MoveCarriage("right"),
        IntoWork(-8, 7),
        UseYarn("wool", "2"),
        CastOn("e-wrap", -8, 7),
        *rows(4, "left"),
        UseYarn("wool", "4"),
        SetCounter(0),
        *rows(5, "left"),
        Hold(6, 7),
        Pass("right"),
        Wrap(6),
        Pass("left"),
        Release(6, 7),
        *rows(7, "right"),
        OntoWaste(-4, -1, 8, "thumb"),
        *again(-4, -1),
        *rows(2, "left"),
        Close(2, 3, "right"),
        *again(2, 3),
        *rows(2, "left"),
        *apart_and_together(),
        *rows(2, "left"),
        Spread(-8, 7, -4, (2,) * 8),
        *rows(2, "left"),
        CastOff(-4, 3, "right"),
        NameEdge("gap", "inner", 18, 24),
    ]


IN = ShapingPhrase((2,), (-1,), 1)
HALF = ShapingPhrase((0,), (-4,), 1)
OUTER = (run("side", 0, 26), run("", 26, 26, HALF, across=True), run("", 26, 28))
GAP = SizedOpening(
    "gap", 18, 2, 4, run("gap", 18, 24, IN), HERE, 24, 1, "waste", True, (run("gap", 18, 24, IN),), (run("gap", 18, 24, IN),)
)
BAG = SizedPiece(
    name="bag",
    start=16,
    levels=(("cuff", 0), ("dart", 4), ("dart_top", 8), ("palm", 14), ("split", 18), ("rejoin", 24), ("crown", 26), ("top", 28)),
    rows=28,
    left=OUTER,
    right=OUTER,
    openings=(GAP,),
    wedges=(SizedWedge("dart", "right", 4, (2, 3), HERE),),
    edging_rows=4,
    widest=16,
    slots=(SizedSlot("thumb", 14, -4, -1, "waste", HERE), SizedSlot("buttonhole 1", 16, 2, 3, "cast-off", HERE)),
)


# ----------------------------------------------------------------- a piece with zones, eyelets and a stretch worked again


def hat() -> Ops:
    gore = [Hold(-5, -4), *rows(2, "left")[:1], Wrap(-4), Pass("right"), Release(-5, -4), *rows(4, "left")]
    return [
        MoveCarriage("right"),
        IntoWork(-5, 5),
        UseYarn("wool", "4"),
        CastOn("chain", -5, 5),
        *rows(2, "left"),
        UseYarn("wool", "2"),
        *rows(4, "left"),
        *(LatchUp(slot, 4) for slot in (-5 + 3, 1, 4)),
        UseYarn("wool", "4"),
        *rows(2, "left"),
        Transfer(2, 2, -1),
        *rows(2, "left"),
        *(gore * 3),
        *rows(2, "left"),
        OntoWaste(-5, 5, 8, "end"),
    ]


HAT = SizedPiece(
    name="hat",
    start=11,
    levels=(("brim", 0), ("low", 2), ("high", 6), ("base", 10), ("gore", 16), ("top", 18)),
    rows=18,
    left=(run("", 0, 18),),
    right=(run("", 0, 18),),
    openings=(),
    wedges=(SizedWedge("gore", "left", 10, (2, 2), HERE),),
    edging_rows=0,
    widest=11,
    slots=(SizedSlot("buttonhole 1", 8, 2, 2, "eyelet", HERE),),
    zones=(SizedZone("rib", 2, 6, 0, -1, HERE),),
    repeats=(SizedRepeat(10, 16, 3, HERE),),
)


def edge_run(to: str, change: float = 0.0, path: str = "straight", most: float | None = None) -> EdgeRun:
    return EdgeRun("", to, path, (change,), (0.0,), (), SIMPLE, HERE, None if most is None else (most,))


def piece(sized: SizedPiece, **more: object) -> Piece:
    heights = {"bag": 1.85, "hat": 1.85}[sized.name]
    levels = tuple(Level(name, (row / heights,), HERE) for name, row in sized.levels)
    edges = (edge_run("top"),)
    made = Piece(sized.name, "plain", (1,), None, levels, (12.0,), "e-wrap", None, edges, edges, (), (), "cast-off", HERE)
    return replace(made, **more)


WIDER = (edge_run("rejoin", 0.75),)
DESIGNED = {
    "bag": piece(
        BAG,
        left=(edge_run("crown"), edge_run("crown", -3.0, "across"), edge_run("top")),
        right=(edge_run("crown"), edge_run("crown", -3.0, "across"), edge_run("top")),
        openings=(
            Opening("gap", (3.0,), (0.0,), (1.5,), "edges", SIMPLE, HERE, "split", "rejoin", (0.4,), left=WIDER, right=WIDER),
        ),
        slots=(Slot("thumb", "palm", (3.0,), (-1.0,), "waste", HERE),),
        wedges=(Wedge("dart", "right", "dart", HERE, "dart_top", (4.0,)),),
    ),
    "hat": piece(HAT, parity="odd", wedges=(Wedge("gore", "left", "low", HERE, "high", (4.0,)),)),
}
DESIGN = Design(
    file="by hand",
    title="by hand",
    texts=(),
    sizes=("one",),
    measurements=(),
    machine=MachineProfile("bulky", "bulky", 40, 9.0, (1, 2, 3), 8, "", HERE),
    yarns=(Yarn("wool", "wool", 100.0, 120.0, HERE),),
    fabrics=(PLAIN, RIB),
    edgings=(Edging("cuff", "rib", (2.0,), "first", "chain", HERE),),
    pieces=tuple(DESIGNED.values()),
    bands=(),
    joins=(),
    requirements=(),
    making_up=(),
)
MADE = {"bag": (BAG, bag), "hat": (HAT, hat)}


def knitted(name: str, ops: Ops) -> KnitFabric:
    result = knit(Work("one", (Block(name, tuple(ops)),)), BED)
    assert result.faults == ()
    return result.fabrics[0]


def differences(sized: SizedPiece, fabric: KnitFabric) -> list[tuple[str, int, int]]:
    return [told for told in as_counted(counted_piece(DESIGN, sized), fabric) if told[1] != told[2]]


@pytest.mark.parametrize("name", MADE)
def test_what_was_knitted_as_counted_is_silent(name: str) -> None:
    sized, make = MADE[name]
    assert differences(sized, knitted(name, make())) == []


# ----------------------------------------------------------------- counts that were not knitted


def gap(**changed: object) -> SizedPiece:
    return replace(BAG, openings=(replace(GAP, **changed),))


def first_of(sized: SizedPiece, field: str, **changed: object) -> SizedPiece:
    first, *rest = getattr(sized, field)
    return replace(sized, **{field: (replace(first, **changed), *rest)})


LATE = (run("side", 0, 28), run("", 28, 28, HALF, across=True))
EARLY = (run("side", 0, 25), run("", 25, 25, HALF, across=True), run("", 25, 28))
LATER = ShapingPhrase((4,), (-1,), 1)
MISCOUNTED: dict[str, SizedPiece] = {
    "start": replace(BAG, start=18),
    "one row more": replace(BAG, rows=29),
    "an increase never made": replace(BAG, left=(run("side", 0, 26, ShapingPhrase((8,), (1,), 1)), *OUTER[1:])),
    "moves that cancel out": replace(BAG, right=(run("side", 0, 26, ShapingPhrase((8, 8), (1, -1), 1)), *OUTER[1:])),
    "hung back on more needles": replace(
        BAG, left=(OUTER[0], run("", 26, 26, ShapingPhrase((0,), (-3,), 1), across=True), OUTER[2])
    ),
    "hung back two rows later": replace(BAG, left=LATE, right=LATE),
    "hung back one row earlier": replace(BAG, left=EARLY),
    "parting two rows later": gap(row=20),
    "parts rejoin two rows later": gap(to_row=26),
    "gap one to the right": gap(first=2),
    "a wider foot": gap(flat=3),
    "a wider gap": gap(width=5),
    "the foot closed instead of left on waste": gap(taken="cast-off"),
    "the gap's left edge never moved": gap(left=(run("gap", 18, 24),)),
    "the gap's right edge moved later": gap(right=(run("gap", 18, 24, LATER),)),
    "wedge one row pair longer": first_of(BAG, "wedges", groups=(2, 3, 1)),
    "wedge with a smaller group": first_of(BAG, "wedges", groups=(1, 4)),
    "wedge with a rest": first_of(BAG, "wedges", rest=2),
    "wedge of another kind": first_of(BAG, "wedges", kind="both"),
    "wedge at the other edge": first_of(BAG, "wedges", edge="left"),
    "wedge at both edges": first_of(BAG, "wedges", edge="both"),
    "wedge two rows earlier": first_of(BAG, "wedges", from_row=2),
    "slot one to the left": first_of(BAG, "slots", first=-5, last=-2),
    "slot wider": first_of(BAG, "slots", last=0),
    "slot two rows later": first_of(BAG, "slots", row=16),
    "slot closed": first_of(BAG, "slots", taken="cast-off"),
    "buttonhole left on waste": replace(BAG, slots=(BAG.slots[0], replace(BAG.slots[1], taken="waste"))),
    "an eyelet that is a buttonhole": replace(BAG, slots=(BAG.slots[0], replace(BAG.slots[1], taken="eyelet"))),
    "a zone never knitted": replace(BAG, zones=(SizedZone("rib", 2, 4, 0, -1, HERE),)),
    "zone from a row later": first_of(HAT, "zones", from_row=3),
    "zone to a row later": first_of(HAT, "zones", to_row=7),
    "no zone": replace(HAT, zones=()),
    "a panel instead": first_of(HAT, "zones", first=-2, last=1),
    "worked once more": first_of(HAT, "repeats", times=4),
    "worked once less": first_of(HAT, "repeats", times=2),
    "eyelet a needle on": first_of(HAT, "slots", first=3, last=3),
    "eyelet two rows later": first_of(HAT, "slots", row=10),
    "an even number": replace(HAT, start=10),
    "gore with a wider group": first_of(HAT, "wedges", groups=(3, 1)),
}


@pytest.mark.parametrize("what", MISCOUNTED)
def test_counts_that_were_not_knitted_are_told(what: str) -> None:
    sized = MISCOUNTED[what]
    assert differences(sized, knitted(sized.name, MADE[sized.name][1]()))


# ----------------------------------------------------------------- knitting that was not counted


def swapped(ops: Ops, old: Ops, new: Ops, nth: int = 0) -> Ops:
    at = [i for i in range(len(ops)) if ops[i : i + len(old)] == old][nth]
    return [*ops[:at], *new, *ops[at + len(old) :]]


def narrow_wedge(ops: Ops) -> Ops:
    return swapped(swapped(swapped(ops, [Hold(6, 7)], [Hold(7, 7)]), [Wrap(6)], [Wrap(7)]), [Release(6, 7)], [Release(7, 7)])


def slot_elsewhere(ops: Ops) -> Ops:
    again = [IntoWork(-5, -2), CastOn("e-wrap", -5, -2, own_length=True)]
    at = ops.index(OntoWaste(-4, -1, 8, "thumb"))
    return [*ops[:at], OntoWaste(-5, -2, 8, "thumb"), *again, *ops[at + 3 :]]


MISKNITTED: dict[str, tuple[str, Callable[[Ops], Ops]]] = {
    "a narrower wedge": ("bag", narrow_wedge),
    "a slot one to the left": ("bag", slot_elsewhere),
    "a ladder instead of an eyelet": (
        "hat",
        lambda ops: swapped(
            swapped(ops, [Transfer(2, 2, -1)], [Transfer(2, 2, -1), OutOfWork(2, 2)]),
            [OntoWaste(-5, 5, 8, "end")],
            [OntoWaste(3, 5, 8, "end right"), OntoWaste(-5, 1, 8, "end left")],
        ),
    ),
    "a ladder where nothing is taken": (
        "hat",
        lambda ops: swapped(
            ops,
            [*rows(2, "left"), OntoWaste(-5, 5, 8, "end")],
            [
                *(Transfer(0, 0, 1), OutOfWork(0, 0), *rows(2, "left")),
                *(OntoWaste(1, 5, 8, "end right"), OntoWaste(-5, -1, 8, "end left")),
            ],
        ),
    ),
    "a row in the wrong yarn": ("bag", lambda ops: [*ops[:11], UseYarn("wool", "2"), ops[11], UseYarn("wool", "4"), *ops[12:]]),
    "the left part's decrease two rows later": (
        "bag",
        lambda ops: swapped(
            ops,
            [Transfer(0, 0, -1), OutOfWork(0, 0), *rows(4, "right")],
            [*rows(2, "right"), Transfer(0, 0, -1), OutOfWork(0, 0), *rows(2, "right")],
        ),
    ),
    "hung back one needle further left": (
        "bag",
        lambda ops: swapped(
            swapped(ops, [Spread(-8, 7, -4, (2,) * 8)], [Spread(-8, 7, -5, (2,) * 8)]),
            [CastOff(-4, 3, "right")],
            [CastOff(-5, 2, "right")],
        ),
    ),
    "a wale not latched": ("hat", lambda ops: swapped(ops, [LatchUp(1, 4)], [])),
    "another wale latched": ("hat", lambda ops: swapped(ops, [LatchUp(1, 4)], [LatchUp(0, 4)])),
    "the eyelet closed": ("hat", lambda ops: swapped(ops, [Transfer(2, 2, -1)], [Transfer(2, 2, -1), Transfer(1, 1, 1)])),
    "a gore unlike the others": (
        "hat",
        lambda ops: swapped(
            ops,
            [Hold(-5, -4), Pass("left"), Wrap(-4), Pass("right"), Release(-5, -4)],
            [Hold(-5, -5), Pass("left"), Wrap(-5), Pass("right"), Release(-5, -5)],
            nth=2,
        ),
    ),
}


@pytest.mark.parametrize("what", MISKNITTED)
def test_knitting_that_was_not_counted_is_told(what: str) -> None:
    name, edit = MISKNITTED[what]
    sized, make = MADE[name]
    made = make()
    other_ops = edit(made)
    assert other_ops != made
    assert differences(sized, knitted(name, other_ops))


# ----------------------------------------------------------------- measures


def measured(of: CountedPiece, fabric: KnitFabric) -> tuple[Measure, ...]:
    return measures(DESIGN.at(0), of, fabric, tuple(deviations(DESIGN.at(0), of)))


def test_everything_of_the_bag_is_measured() -> None:
    found = {LANGUAGE.measure(m.key): m for m in measured(counted_piece(DESIGN, BAG), knitted("bag", bag()))}
    assert {what: (round(m.knitted_cm, 2), m.unit) for what, m in found.items()} == {
        "width at start": (12.31, "st"),
        "width at crown across": (6.15, "st"),
        "height of dart": (2.16, "rows"),
        "height of dart_top": (4.32, "rows"),
        "height of palm": (7.57, "rows"),
        "height of split": (9.73, "rows"),
        "height of rejoin": (12.97, "rows"),
        "height of crown": (14.05, "rows"),
        "height of top": (15.14, "rows"),
        "width of gap": (3.08, "st"),
        "depth of gap": (3.24, "rows"),
        "width of thumb": (3.08, "st"),
        "height of right wedge at dart inside": (2.16, "rows"),
    }
    assert found["width at crown across"].wanted_cm == 6.0
    assert found["width of gap"].off == pytest.approx(4 - 3.0 * 1.3)
    assert found["height of top"].off == pytest.approx(0, abs=1e-3)


def test_a_repeat_counts_once_and_a_zone_at_its_own_gauge() -> None:
    found = {LANGUAGE.measure(m.key): m for m in measured(counted_piece(DESIGN, HAT), knitted("hat", hat()))}
    assert found["height of high"].knitted_cm == pytest.approx(2 / 1.85 + 4 / 2.0)
    assert found["height of top"].knitted_cm == pytest.approx(14 / 1.85 + 4 / 2.0)
    assert found["height of top"].off == pytest.approx((4 / 2.0 - 4 / 1.85) * 1.85, abs=1e-3)


def test_what_was_chosen_from_a_range_is_what_was_wanted() -> None:
    of = counted_piece(DESIGN, BAG)
    start, *others = deviations(DESIGN.at(0), of)
    chosen = (replace(start, piece="hat", wanted_cm=50.0), replace(start, wanted_cm=12.3), *others)
    found = {LANGUAGE.measure(m.key): m for m in measures(DESIGN.at(0), of, knitted("bag", bag()), chosen)}
    assert found["width at start"].wanted_cm == 12.3
    assert found["width at start"].off == pytest.approx(16 - 12.3 * 1.3)
    assert found["height of palm"].wanted_cm == pytest.approx(14 / 1.85)


# ----------------------------------------------------------------- charts, stripes and panels


def charted(sized: SizedPiece, design: Design, ops: Ops) -> list[tuple[str, int, int]]:
    made = by_chart.knitted(ops)
    return [told for told in as_counted(counted_piece(design, sized), made) if told[1] != told[2]]


def in_wool(*moves: object, stripes: tuple[tuple[str, int], ...] = ()) -> list[tuple[str, int, int]]:
    """A piece of 10 rows whose rows 3 to 8 are charted, or which is striped from its start on."""
    knit_in = replace(by_chart.PLAIN, name="bands", stitch="stripes", stripes=stripes) if stripes else by_chart.PLAIN
    design = replace(by_chart.DESIGN, fabrics=(knit_in, by_chart.LACE))
    design = replace(design, pieces=(replace(design.pieces[0], fabric=knit_in.name),))
    sized = replace(by_chart.SIZED, charts=()) if stripes else by_chart.SIZED
    return charted(sized, design, [*by_chart.BEGIN, *moves, *by_chart.END])  # type: ignore[list-item]


def slipped(row: int) -> list[tuple[str, int, int]]:
    """One needle slipped in that row, of an odd number."""
    slip = (Hold(0, 0), Pass("left"), LiftOff(0, 0), Release(0, 0), *rows(10 - row, "right"))
    return in_wool(*rows(row - 1, "left"), *slip)


def test_a_needle_held_for_a_row_is_a_gap_only_outside_charts() -> None:
    assert slipped(3) == []
    assert slipped(7) == []
    assert slipped(1) == [(said("at/within-row", row=1), 12, 11)]


def striped(*ends: str) -> list[tuple[str, int, int]]:
    """Rows in stripes of two, in the yarns that are said."""
    moves = [m for yarn in ends for m in (UseYarn(yarn, "4"), *rows(2, "left"))]
    return in_wool(*moves, stripes=(("wool", 2), ("navy", 2)))


def test_each_row_of_stripes_is_in_its_yarn() -> None:
    assert striped("wool", "navy", "wool", "navy", "wool") == []
    wrong = (said("at/other-yarn"), 0, 2)
    assert striped("wool", "navy", "navy", "navy", "wool") == [wrong]


def test_a_chart_that_was_begun_elsewhere_is_told() -> None:
    moved = replace(by_chart.SIZED, charts=(replace(by_chart.PLACED, first=-4),))
    assert charted(moved, by_chart.DESIGN, by_chart.lace())


def test_a_width_with_a_panel_is_in_both_gauges() -> None:
    """12 stitches, 4 of them in a panel of 16 stitches to 10 cm: 8 / 1.3 + 4 / 1.6 cm."""
    cable = replace(by_chart.PLAIN, name="cable", swatch_stitches=16)
    design = replace(by_chart.DESIGN, fabrics=(by_chart.PLAIN, cable))
    sized = replace(by_chart.SIZED, charts=(), zones=(SizedZone("cable", 0, 10, -2, 1, HERE),))
    (start, *_) = measured(counted_piece(design, sized), by_chart.knitted(by_chart.lace()))
    assert LANGUAGE.measure(start.key) == "width at start"
    assert start.knitted_cm == pytest.approx(8 / 1.3 + 4 / 1.6)
    assert start.off == pytest.approx((start.knitted_cm - 9.2) * 1.3, abs=1e-3)
