"""Designs made by hand: any of their parts can be replaced. Spans tell the parts apart in messages."""

from __future__ import annotations

from dataclasses import replace

from walewright import solve as stage
from walewright.design.model import (
    Band,
    Cell,
    CellKey,
    Chart,
    CountPerSize,
    Design,
    EdgeJoin,
    EdgeName,
    EdgeRun,
    Edging,
    Fabric,
    Level,
    MachineProfile,
    Opening,
    Origin,
    PerSize,
    Piece,
    ShapingWay,
    Wedge,
    Yarn,
)
from walewright.glue import glue
from walewright.glue.model import Glued, GluedSizes, Task
from walewright.report.model import Diagnostic, Span
from walewright.solve.model import Counts

SIMPLE = ShapingWay("simple")


def origin(path: str) -> Origin:
    """A place of its own for each path."""
    start = 10 * (sum(ord(c) * (i + 1) for i, c in enumerate(path)) % 9973)
    return Origin(path, Span("hand.wale", start, start + 5))


class Workshop:
    """Builds designs in `sizes`, with a plain fabric of `across` stitches and `up` rows to the cm on `needles` needles."""

    def __init__(self, sizes: str = "S M L", across: float = 2.0, up: float = 3.0, needles: int = 200) -> None:
        self.sizes = tuple(sizes.split())
        self.needles = needles
        self.plain = self.fabric("plain", across, up)

    def fabric(self, name: str, across: float, up: float, rib_every: int = 0) -> Fabric:
        stitch = "latched rib" if rib_every else "stocking stitch"
        return Fabric(name, stitch, rib_every, "wool", "4", across * 10, up * 10, 10, 10, 30, origin(f"fabric {name}"))

    def chart(self, name: str, across: int, up: int, before: int = 0, after: int = 0, motif: bool = False) -> Chart:
        """A chart of `across` columns a repeat and `up` rows, plain but for its symbols; a `motif` has no repeat."""
        place = origin(f"chart {name}")
        rows = ("." * (before + across + after),) * up
        return Chart(name, rows, (CellKey(".", Cell("knit"), place),), before, 0 if motif else across, after, False, place)

    def charted(self, chart: Chart, across: float, up: float, fit: str = "whole", edge: int = 0) -> Fabric:
        """A fabric in a chart, of the chart's name."""
        made = self.fabric(chart.name, across, up)
        return replace(made, stitch="chart", chart=chart.name, fit=fit, edge=edge)

    def striped(self, name: str, *rows: int) -> Fabric:
        """Stripes in the plain fabric's gauge."""
        made = self.fabric(name, self.plain.stitches_per_cm, self.plain.rows_per_cm)
        return replace(made, stitch="stripes", stripes=tuple((f"wool {n}", r) for n, r in enumerate(rows)))

    def each(self, value: float | PerSize) -> PerSize:
        return value if isinstance(value, tuple) else (float(value),) * len(self.sizes)

    def counts(self, number: int) -> CountPerSize:
        """The same number in all sizes."""
        return (number,) * len(self.sizes)

    def levels(self, piece: str, **heights: float | PerSize) -> tuple[Level, ...]:
        return tuple(Level(n, self.each(h), origin(f"piece {piece} / level {n}")) for n, h in heights.items())

    def run(
        self,
        to: str,
        change: float | PerSize = 0.0,
        path: str = "slope",
        *,
        name: str = "",
        cast_off: float | PerSize = 0.0,
        steps: int = 0,
        way: ShapingWay = SIMPLE,
    ) -> EdgeRun:
        changes = self.each(change)
        path = path if any(changes) else "straight"
        return EdgeRun(
            name,
            to,
            path,
            changes,
            self.each(cast_off),
            (steps,) * len(changes) if steps else (),
            way,
            origin(f"edge {name} {path} to {to} {changes}"),
        )

    def piece(
        self,
        name: str,
        width: float | PerSize,
        levels: tuple[Level, ...],
        left: tuple[EdgeRun, ...],
        right: tuple[EdgeRun, ...] | None = None,
        *,
        neck: Opening | None = None,
        held_from: str = "",
        odd: bool = False,
        **more: object,
    ) -> Piece:
        wedges = (Wedge("shoulders", "both", held_from, origin(f"piece {name} / shoulders")),) if held_from else ()
        made = Piece(
            name=name,
            fabric="plain",
            copies=self.counts(1),
            mirror_of=None,
            levels=levels,
            start_width=self.each(width),
            start_way="waste",
            start_edging=None,
            left=left,
            right=left if right is None else right,
            openings=(neck,) if neck else (),
            parity="odd" if odd else "even",
            wedges=wedges,
            end_way="waste",
            origin=origin(f"piece {name}"),
        )
        return replace(made, **more)  # type: ignore[arg-type]

    def neck(
        self,
        piece: str,
        width: float | PerSize,
        depth: float | PerSize,
        flat: float | PerSize = 0.0,
        shape: str = "round",
        way: ShapingWay = SIMPLE,
        to: str = "top",
    ) -> Opening:
        """A neck up to the level `to`, with the edges that `design` gives it."""
        place = origin(f"piece {piece} / neck")
        wide, flats = self.each(width), self.each(flat)
        half = tuple((w - f) / 2 for w, f in zip(wide, flats, strict=True))
        path = {"round": "curve", "v": "slope", "square": "straight"}[shape] if any(half) else "straight"
        runs = (EdgeRun("", to, path, half, self.each(0), (), way, place),)
        centre = self.each(0)
        return Opening("neck", wide, self.each(depth), flats, shape, way, place, to_level=to, centre=centre, left=runs, right=runs)

    def join(self, one: str, other: str, easing: float = 0.0) -> EdgeJoin:
        """Sides as "back side + front side"."""
        return EdgeJoin(edges(one), edges(other), self.each(easing), origin(f"join {one} to {other}"))

    def band(self, name: str, along: str) -> Band:
        return Band(name, "collar", edges(along), origin(f"band {name}"))

    def design(
        self,
        *pieces: Piece,
        joins: tuple[EdgeJoin, ...] = (),
        bands: tuple[Band, ...] = (),
        rib: Fabric | None = None,
        charts: tuple[Chart, ...] = (),
        fabrics: tuple[Fabric, ...] = (),
        edgings: tuple[Edging, ...] = (),
    ) -> Design:
        ribbed = rib or self.fabric("rib", self.plain.stitches_per_cm, self.plain.rows_per_cm, 3)
        return Design(
            file="hand.wale",
            title="By hand",
            texts=(),
            sizes=self.sizes,
            measurements=(),
            machine=MachineProfile("own", "a bed", self.needles, 8.0, (1, 2, 3), 8, "", origin("machine own")),
            yarns=(Yarn("wool", "wool", 100, 120, origin("yarn wool")),),
            fabrics=(self.plain, replace(ribbed, name="rib"), *fabrics),
            edgings=(Edging("collar", "rib", self.each(2.5), "after", "chain", origin("edging collar")), *edgings),
            pieces=pieces,
            bands=bands,
            joins=joins,
            requirements=(),
            making_up=(),
            charts=charts,
        )


def solve(design: Design) -> tuple[Counts | None, tuple[Diagnostic, ...]]:
    """Counts a design put together as its joins and bands say. What is left open is no matter here: all loops are closed first."""
    return stage.solve(design, put_together(design))


def put_together(design: Design) -> GluedSizes:
    """The design glued with every loop closed that nothing is begun on; nothing hangs together where `glue` has something to say
    of it."""
    begun = {(edge.piece, edge.edge.removesuffix(" upper")) for piece in design.pieces for edge in piece.start_along}
    closed = tuple(
        replace(
            piece,
            start_way="e-wrap" if piece.start_way in ("waste", "hand waste") else piece.start_way,
            end_way="cast-off" if piece.end_way == "waste" else piece.end_way,
            openings=tuple(replace(opening, taken="cast-off") for opening in piece.openings),
            slots=tuple(s if (piece.name, s.name) in begun else replace(s, taken="cast-off") for s in piece.slots),
        )
        for piece in design.pieces
    )
    glued, _ = glue(replace(design, pieces=closed))
    apart = Glued((), (), (), tuple(Task("piece", piece.name) for piece in design.pieces), len(closed), ())
    return glued or GluedSizes((apart,), (tuple(range(len(design.sizes))),))


def edges(text: str) -> tuple[EdgeName, ...]:
    pairs = (part.split() for part in text.split(" + "))
    return tuple(EdgeName(piece, edge) for piece, edge in pairs)
