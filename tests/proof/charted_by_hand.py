"""A small charted piece made by hand: 12 needles of lace, one edge stitch at each end, and the counts of it."""

from __future__ import annotations

from dataclasses import replace

from tests.bed.by_hand import BED, Ops, rows
from walewright.bed import KnitFabric, knit
from walewright.counted.model import SizedChart, SizedGarment, SizedPiece, SizedRun
from walewright.design.model import (
    Cell,
    CellKey,
    Chart,
    Design,
    EdgeRun,
    Level,
    MachineProfile,
    Motif,
    Origin,
    Piece,
    ShapingWay,
    Yarn,
)
from walewright.design.model import Fabric as Knit
from walewright.knit.operations import Block, CastOff, CastOn, IntoWork, MoveCarriage, SetCounter, Transfer, UseYarn, Work

HERE = Origin("by hand")
LACE_PLACE = Origin("fabric lace")
MOTIF_PLACE = Origin("motif of the piece")
PLAIN = Knit("plain", "stocking stitch", 0, "wool", "4", 13, 18.5, 10.0, 10.0, 20.0, HERE)
LACE = replace(PLAIN, name="lace", stitch="chart", chart="eyelets", edge=1, swatch_grams=24.0, origin=LACE_PLACE)


def key(symbol: str, kind: str, **more: object) -> CellKey:
    return CellKey(symbol, replace(Cell(kind), **more), HERE)


EYELETS = Chart(
    "eyelets",
    (".O>..", "....."),
    (key(".", "knit"), key("O", "hole"), key(">", "two from left")),
    0,
    5,
    0,
    False,
    HERE,
)
"""A hole on the second column of five and its decrease on the third, then a plain row."""

PLACED = SizedChart("eyelets", "lace", "whole", 2, 8, -5, 4, 1, -5, 2, HERE)
SIZED = SizedPiece(
    name="cloth",
    start=12,
    levels=(("hem", 0), ("top", 10)),
    rows=10,
    left=(SizedRun("", 0, 10, (), ShapingWay("simple"), HERE),),
    right=(SizedRun("", 0, 10, (), ShapingWay("simple"), HERE),),
    openings=(),
    wedges=(),
    edging_rows=0,
    widest=12,
    charts=(PLACED,),
)
_EDGE = (EdgeRun("", "top", "straight", (0.0,), (0.0,), (), ShapingWay("simple"), HERE),)
DESIGN = Design(
    file="by hand",
    title="by hand",
    texts=(),
    sizes=("one",),
    measurements=(),
    machine=MachineProfile("bulky", "bulky", 40, 9.0, (1, 2, 3), 8, "", HERE),
    yarns=(Yarn("wool", "wool", 100.0, 120.0, HERE), Yarn("navy", "navy wool", 100.0, 120.0, HERE)),
    fabrics=(PLAIN, LACE),
    edgings=(),
    pieces=(
        Piece(
            "cloth",
            "plain",
            (1,),
            None,
            (Level("hem", (0.0,), HERE), Level("top", (5.4,), HERE)),
            (9.2,),
            "e-wrap",
            None,
            _EDGE,
            _EDGE,
            (),
            (),
            "cast-off",
            HERE,
            motifs=(Motif("spot", "hem", (0.0,), MOTIF_PLACE),),
        ),
    ),
    bands=(),
    joins=(),
    requirements=(),
    making_up=(),
    charts=(EYELETS,),
)
BEGIN: Ops = [MoveCarriage("right"), IntoWork(-6, 5), UseYarn("wool", "4"), CastOn("e-wrap", -6, 5), SetCounter(0)]
END: Ops = [CastOff(-6, 5, "right")]
HOLES: Ops = [Transfer(-4, -4, 1), Transfer(1, 1, 1), *rows(2, "left")]


def lace() -> Ops:
    return [*BEGIN, *rows(2, "left"), *(HOLES * 3), *rows(2, "left"), *END]


def garment(sized: SizedPiece = SIZED) -> SizedGarment:
    return SizedGarment("one", (sized,), (), (), ())


def knitted(ops: Ops, name: str = "cloth") -> KnitFabric:
    result = knit(Work("one", (Block(name, tuple(ops)),)), BED)
    assert result.faults == ()
    return result.fabrics[0]
