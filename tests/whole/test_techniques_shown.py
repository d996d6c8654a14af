"""Every family of technique that the language has is shown by a shipped garment: read from what is designed and planned."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest

from tests.whole.shipped_once import GARMENTS, compiled, design_of
from walewright.design.model import Cell, Chart, Design, Edging
from walewright.knit import steps as st
from walewright.knit.steps import Repeat, Step, Together

# ----------------------------------------------------------------- what a garment has


def charts(design: Design) -> tuple[Chart, ...]:
    """Those that are really worked."""
    fabrics = {design.fabric(f) for p in design.pieces for f in (p.fabric, *(z.fabric for z in p.zones))}
    names = {f.chart for f in fabrics if f.chart} | {m.chart for p in design.pieces for m in p.motifs}
    return tuple(c for c in design.charts if c.name in names)


def rows(design: Design) -> Iterator[tuple[Cell, ...]]:
    """Rows of charts, those laid in blocks apart."""
    for chart in charts(design):
        if not chart.picture:
            yield from (tuple(chart.cell(y, x) for x in range(chart.width)) for y in range(len(chart.rows)))


def kinds(design: Design) -> set[str]:
    return {cell.kind for row in rows(design) for cell in row}


def edgings(design: Design) -> tuple[Edging, ...]:
    """Those that are really knitted: along starts and as bands."""
    names = {p.start_edging for p in design.pieces} | {b.edging for b in design.bands}
    return tuple(e for e in design.edgings if e.name in names)


def kinds_of_edging(design: Design) -> set[str]:
    return {e.kind + (f" {e.mock}" if e.mock else "") for e in edgings(design)}


def latched(design: Design, when: str) -> bool:
    return any(e.kind == "plain" and e.when == when and design.fabric(e.fabric).rib_every for e in edgings(design))


def casts_off(design: Design) -> set[str]:
    return {p.end_way for p in design.pieces} | {f"edging {e.cast_off}" for e in edgings(design) if e.when == "after"}


def columns(design: Design) -> bool:
    """Columns re-formed as far as they go: a rib in a piece, or purl over purl in a chart."""
    ribs = any(design.fabric(z.fabric).rib_every for p in design.pieces for z in p.zones)
    over = any(
        chart.cell(y, x).kind == chart.cell(y - 1, x).kind == "purl"
        for chart in charts(design)
        for y in range(1, len(chart.rows))
        for x in range(chart.width)
    )
    return ribs or over


def cable_with_columns(design: Design) -> bool:
    return any(
        row[x].kind == "cross" and "purl" in (row[x - 1].kind, row[(x + 1) % len(row)].kind)
        for row in rows(design)
        for x in range(len(row))
    )


def plans_of(name: str) -> Iterator[Step]:
    """All sentences of a garment, in all sizes."""

    def each(steps: tuple[Step, ...]) -> Iterator[Step]:
        for step in steps:
            yield step
            if isinstance(step, Repeat):
                yield from each(step.body)
            elif isinstance(step, Together):
                for track in step.tracks:
                    yield from each(track.steps)

    for plan in compiled(name).plans:
        for block in plan.blocks:
            for _, steps in block.paragraphs:
                yield from each(steps)


def stripes(name: str) -> Iterator[tuple[set[str], set[str]]]:
    """(yarns, those that are carried up) of each start of stripes."""
    for step in plans_of(name):
        if isinstance(step, st.StartStripes):
            yield {yarn for yarn, _ in step.stripes}, set(step.carried)


def band_on(design: Design, edge: str) -> bool:
    """Whether a band runs along an edge of a kind: "rows" going straight up, a "slope", or what was "cast-off"."""
    for band in design.bands:
        for named in band.along:
            piece = next((p for p in design.pieces if p.name == named.piece), None)
            if piece is None:
                continue
            if edge == "cast-off":
                opening = next((o for o in piece.openings if o.name == named.edge), None)
                if (named.edge == "end" and piece.end_way == "cast-off") or (opening is not None and opening.taken == "cast-off"):
                    return True
                continue
            for run in (*piece.left, *piece.right):
                moves = any(run.change)
                if run.name and run.name in (named.edge, named.edge.rpartition("_")[0]) and moves == (edge == "slope"):
                    return True
    return False


Shown = Callable[[str, Design], bool]

FAMILIES: dict[str, Shown] = {
    "lace by one prong": lambda name, d: any(
        {"two from left", "two from right"} & {c.kind for c in row} and not {"from left", "from right"} & {c.kind for c in row}
        for row in rows(d)
    ),
    "lace by more prongs": lambda name, d: bool({"from left", "from right"} & kinds(d)),
    "tuck": lambda name, d: "tuck" in kinds(d),
    "slip": lambda name, d: "slip" in kinds(d),
    "elongated": lambda name, d: "long" in kinds(d),
    "ladder": lambda name, d: "ladder" in kinds(d),
    "colour floats": lambda name, d: any(cell.yarn for row in rows(d) for cell in row),
    "picture": lambda name, d: any(c.picture for c in charts(d)),
    "cable with purl columns": lambda name, d: cable_with_columns(d),
    "latched columns": lambda name, d: columns(d),
    "garter ridges": lambda name, d: any(all(cell.kind == "purl" for cell in row) for row in rows(d)),
    "stripes carried": lambda name, d: any(carried for _, carried in stripes(name)),
    "stripes broken off": lambda name, d: any(yarns - carried for yarns, carried in stripes(name)),
    "a panel": lambda name, d: any(z.width is not None for p in d.pieces for z in p.zones),
    "a motif": lambda name, d: any(p.motifs for p in d.pieces),
    "another fabric from a level": lambda name, d: any(z.width is None for p in d.pieces for z in p.zones),
    "a matching join": lambda name, d: any(j.matching for j in d.joins),
    "cast on with waste yarn and comb": lambda name, d: any(p.start_way == "waste" for p in d.pieces),
    "cast on with waste yarn by hand": lambda name, d: any(p.start_way == "hand waste" for p in d.pieces),
    "cast on by e-wrap": lambda name, d: any(p.start_way == "e-wrap" for p in d.pieces),
    "cast on by chain": lambda name, d: any(p.start_way == "chain" for p in d.pieces),
    "latched rib knitted first": lambda name, d: latched(d, "first"),
    "latched rib added after": lambda name, d: latched(d, "after"),
    "mock rib 1 by 1": lambda name, d: "mock rib 2" in kinds_of_edging(d),
    "mock rib 2 by 1": lambda name, d: "mock rib 3" in kinds_of_edging(d),
    "folded hem": lambda name, d: "folded" in kinds_of_edging(d),
    "picot": lambda name, d: "picot" in kinds_of_edging(d),
    "rolled": lambda name, d: "rolled" in kinds_of_edging(d),
    "facing": lambda name, d: "facing" in kinds_of_edging(d),
    "chained edge": lambda name, d: "chained" in kinds_of_edging(d),
    "a band along rows": lambda name, d: band_on(d, "rows"),
    "a band along a slope": lambda name, d: band_on(d, "slope"),
    "a band along what was cast off": lambda name, d: band_on(d, "cast-off"),
    "cast off by chain": lambda name, d: bool({"cast-off", "edging chain"} & casts_off(d)),
    "sewn off": lambda name, d: bool({"sewn-off", "edging sewn"} & casts_off(d)),
    "off on waste yarn": lambda name, d: bool({"waste", "edging waste"} & casts_off(d)),
    "linked": lambda name, d: any(j.way == "linked" for j in d.joins),
    "grafted": lambda name, d: any(j.way == "grafted" for j in d.joins),
}

PATTERNED = (
    "lace by one prong", "lace by more prongs", "tuck", "slip", "elongated", "ladder", "colour floats", "picture",
    "cable with purl columns", "garter ridges", "stripes carried", "stripes broken off", "a panel", "a motif",
    "another fabric from a level", "a matching join", "mock rib 1 by 1", "mock rib 2 by 1", "folded hem", "picot", "rolled",
    "facing", "chained edge", "sewn off", "linked",
)  # fmt: skip
"""Those beyond plain knitting with latched ribs."""


def showing(family: str) -> set[str]:
    return {name for name in GARMENTS if FAMILIES[family](name, design_of(name))}


@pytest.mark.parametrize("family", FAMILIES)
def test_a_family_is_shown(family: str) -> None:
    assert showing(family)


def test_they_are_shown_by_many_garments_on_several_beds() -> None:
    garments = {name for family in PATTERNED for name in showing(family)}
    assert len(garments) >= 8, garments
    assert len({design_of(name).machine.name for name in garments}) >= 3


def test_a_plain_garment_shows_none_of_the_patterns() -> None:
    """The predicates say no, too."""
    assert {family for family in PATTERNED if FAMILIES[family]("tidewrack", design_of("tidewrack"))} == {"linked"}
