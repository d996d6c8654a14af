"""A room with a small machine: pieces counted by hand, planned, worked by hands and knitted by the bed."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

import pytest

from tests import in_english
from tests.knit.put_together import glued, sized_seams
from walewright.bed import Bed, BedResult, Gauge, knit
from walewright.counted.model import ShapingPhrase, SizedBand, SizedGarment, SizedJoin, SizedPiece, SizedRun
from walewright.design.model import (
    Band,
    Cell,
    CellKey,
    Chart,
    Design,
    EdgeJoin,
    EdgeRun,
    Edging,
    Fabric,
    MachineProfile,
    Origin,
    Piece,
    ShapingWay,
    Yarn,
)
from walewright.glue.model import GluedSizes
from walewright.knit import expand, plan
from walewright.knit import steps as st
from walewright.knit.operations import Work
from walewright.solve.model import Counts

HERE = Origin("here")
SIMPLE = ShapingWay("simple")
PRONGS = (1, 2, 3)

FABRICS = (
    Fabric("plain", "stocking stitch", 0, "wool", "4", 20, 30, 10, 10, 0, HERE),
    Fabric("dense", "stocking stitch", 0, "wool", "2", 24, 36, 10, 10, 0, HERE),
    Fabric("rib", "latched rib", 3, "wool", "2", 24, 36, 10, 10, 0, HERE),
    Fabric("lacy", "chart", 0, "wool", "5", 18, 30, 10, 10, 0, HERE, chart="lace"),
    Fabric("figured", "chart", 0, "wool", "4", 18, 30, 10, 10, 0, HERE, chart="lace"),
    Fabric("striped", "stripes", 0, "wool", "4", 20, 30, 10, 10, 0, HERE, stripes=(("wool", 4), ("navy", 2))),
    Fabric("lined", "stripes", 0, "wool", "4", 20, 30, 10, 10, 0, HERE, stripes=(("wool", 1), ("navy", 1))),
)
EDGINGS = (
    Edging("welt", "rib", (3.0,), "after", "chain", HERE),
    Edging("hem", "rib", (3.0,), "first", "chain", HERE),
    Edging("fold", "plain", (3.0,), "first", "chain", HERE, kind="folded", fold_tension="7", inside_tension="3"),
    Edging("points", "plain", (3.0,), "first", "chain", HERE, kind="picot"),
    Edging("mock", "plain", (3.0,), "first", "chain", HERE, kind="mock rib", mock=2),
    Edging("roll", "plain", (3.0,), "first", "chain", HERE, kind="rolled"),
    Edging("bars", "lined", (3.0,), "first", "chain", HERE, kind="rolled"),
    Edging("folded band", "plain", (3.0,), "after", "sewn", HERE, kind="folded", fold_tension="7", inside_tension="3"),
    Edging("picot band", "plain", (3.0,), "after", "chain", HERE, kind="picot"),
    Edging("mock band", "plain", (3.0,), "after", "chain", HERE, kind="mock rib", mock=3),
    Edging("turning", "plain", (3.0,), "after", "chain", HERE, kind="facing", fold_tension="7"),
    Edging("chain edge", "plain", (0.0,), "after", "chain", HERE, kind="chained"),
    Edging("open band", "plain", (3.0,), "after", "waste", HERE),
)
KEY = (
    CellKey(".", Cell("knit"), HERE),
    CellKey("O", Cell("hole"), HERE),
    CellKey("R", Cell("two from left"), HERE),
    CellKey("-", Cell("purl"), HERE),
)
CHARTS = (
    Chart("lace", ("OR..", "...."), KEY, 0, 4, 0, False, HERE),
    Chart("ridge", ("-.", "-.", "-.", ".."), KEY, 0, 2, 0, False, HERE),
    Chart("leaf", ("OR", "..", "OR", ".."), KEY, 0, 0, 0, False, HERE),
)


@dataclass(frozen=True)
class Done:
    """What came of it: plans, works and the fabrics of every size."""

    plans: tuple[st.SizePlan, ...]
    works: tuple[Work, ...]
    results: tuple[BedResult, ...]

    def steps(self, size: int = 0, block: int = 0) -> tuple[st.Step, ...]:
        return tuple(s for _, steps in self.plans[size].blocks[block].paragraphs for s in steps)

    def paragraph(self, title: str, size: int = 0, block: int = 0) -> tuple[st.Step, ...]:
        return next(steps for name, steps in self.plans[size].blocks[block].paragraphs if in_english.title(name) == title)

    def titles(self, block: int = 0) -> list[str]:
        return [in_english.title(title) for title, _ in self.plans[0].blocks[block].paragraphs]

    def edge(self, piece: str, label: str, size: int = 0) -> tuple[int, ...]:
        """How many rows or stitches there are along each edge of that name."""
        fabric = next(f for f in self.results[size].fabrics if f.name == piece)
        return tuple(e.count for e in fabric.edge(label))


class Room:
    """Makes pieces, plans and knits them."""

    here = HERE

    def run(
        self, from_row: int, to_row: int, *phrases: ShapingPhrase, name: str = "", way: ShapingWay = SIMPLE, across: bool = False
    ) -> SizedRun:
        return SizedRun(name, from_row, to_row, phrases, way, HERE, across)

    def piece(self, name: str, start: int, rows: int, **fields: Any) -> tuple[Piece, SizedPiece]:
        """A piece of `start` stitches and `rows` rows with straight edges, but for what `fields` (of either model) say."""
        own = {k: fields.pop(k) for k in ("start_way", "end_way", "start_edging", "parity", "start_along") if k in fields}
        copies = fields.pop("copies", 1)
        straight = (self.run(0, rows),)
        left, right = fields.pop("left", straight), fields.pop("right", None)
        right = left if right is None else right
        apart = () if left == right else (EdgeRun("", "top", "straight", (0.0,), (0.0,), (), SIMPLE, HERE),)
        piece = Piece(
            name=name,
            fabric=fields.pop("fabric", "plain"),
            copies=(copies,),
            mirror_of=None,
            levels=(),
            start_width=(20.0,),
            start_way=own.pop("start_way", "e-wrap"),
            start_edging=own.pop("start_edging", None),
            left=(),
            right=apart,
            openings=(),
            wedges=(),
            end_way=own.pop("end_way", "cast-off"),
            origin=HERE,
            **own,
        )
        given = {"openings": (), "wedges": (), "edging_rows": 0, "widest": start, "copies": copies, **fields}
        return piece, SizedPiece(name, start, (), rows, left, right, **given)

    def plan(
        self,
        *sizes: tuple[tuple[Piece, SizedPiece], ...],
        bands: tuple[tuple[Band, SizedBand], ...] = (),
        joins: tuple[tuple[EdgeJoin, SizedJoin], ...] = (),
        order: tuple[str, ...] = (),
    ) -> Done:
        """Each size's pieces as sentences and as operations, not knitted."""
        design = self._design(sizes, bands, joins)
        garments = tuple(
            SizedGarment(name, tuple(p for _, p in pieces), tuple(b for _, b in bands), tuple(j for _, j in joins), ())
            for name, pieces in zip(design.sizes, sizes, strict=True)
        )
        together = glued(design, garments[0].pieces, order)
        garments = tuple(replace(garment, seams=sized_seams(design, garment, together)) for garment in garments)
        plans = plan(design, GluedSizes((together,), (tuple(range(len(sizes))),)), Counts(garments, ()))
        return Done(plans, tuple(expand(p, design.charts) for p in plans), ())

    def knit(
        self,
        *sizes: tuple[tuple[Piece, SizedPiece], ...],
        bands: tuple[tuple[Band, SizedBand], ...] = (),
        joins: tuple[tuple[EdgeJoin, SizedJoin], ...] = (),
        order: tuple[str, ...] = (),
    ) -> Done:
        """Each size's pieces, knitted; the bed has to find no fault."""
        done = self.plan(*sizes, bands=bands, joins=joins, order=order)
        gauges = {(f.yarn, f.tension): Gauge(f.stitches_per_cm, f.rows_per_cm) for f in FABRICS}
        results = tuple(knit(work, Bed(100, PRONGS, gauges)) for work in done.works)
        for result in results:
            assert result.faults == ()
        return Done(done.plans, done.works, results)

    def _design(
        self,
        sizes: tuple[tuple[tuple[Piece, SizedPiece], ...], ...],
        bands: tuple[tuple[Band, SizedBand], ...],
        joins: tuple[tuple[EdgeJoin, SizedJoin], ...],
    ) -> Design:
        return Design(
            file="hand.wale",
            title="By hand",
            texts=(),
            sizes=tuple(f"size {i}" for i in range(len(sizes))),
            measurements=(),
            machine=MachineProfile("small", "small", 100, 9.0, PRONGS, 8, "", HERE),
            yarns=(Yarn("wool", "wool", 50, 100, HERE), Yarn("navy", "navy", 50, 100, HERE)),
            fabrics=FABRICS,
            edgings=EDGINGS,
            pieces=tuple(piece for piece, _ in sizes[0]),
            bands=tuple(band for band, _ in bands),
            joins=tuple(join for join, _ in joins),
            requirements=(),
            making_up=(),
            charts=CHARTS,
        )


@pytest.fixture
def room() -> Room:
    return Room()
