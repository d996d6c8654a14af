"""The design: what the source means, everything in centimetres, per size, each datum with its origin.

`PerSize` tuples run in the order of `Design.sizes`. Nothing here knows a stitch count; the only stitch
numbers are those the author wrote (a rib's "every 3rd needle", a fashioned decrease "2 in").
Outline convention: a piece is seen as it hangs on the bed, knitter's left = `left`; heights rise from the start.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from walewright.report.model import NOWHERE, Span

PerSize = tuple[float, ...]


@dataclass(frozen=True, slots=True)
class Origin:
    """The statement a datum came from: a readable path ("piece back / neck") and its span."""

    path: str
    span: Span = field(default=NOWHERE, compare=False, repr=False)


@dataclass(frozen=True, slots=True)
class Measurement:
    """A row of the size table, in cm. `source` credits a shipped table, else empty."""

    name: str
    values: PerSize
    to_fit: bool
    source: str
    origin: Origin


@dataclass(frozen=True, slots=True)
class Machine:
    """A bed. `needles` is even; `pitch_mm` between needles; `prongs` of the transfer tools at hand."""

    name: str
    label: str
    needles: int
    pitch_mm: float
    prongs: tuple[int, ...]
    waste_rows: int
    edge_reminder: str
    """Printed when the edge needle moves (edge weights or guides), or empty."""
    origin: Origin


@dataclass(frozen=True, slots=True)
class Yarn:
    name: str
    label: str
    ball_grams: float
    ball_metres: float
    origin: Origin


@dataclass(frozen=True, slots=True)
class Fabric:
    """A stitch pattern in a yarn at a tension, with its own swatch.

    `stitches_per_cm`, `rows_per_cm` from the swatch; `grams_per_stitch` is 0 where no weight was given."""

    name: str
    stitch: str
    rib_every: int
    yarn: str
    tension: str
    swatch_stitches: float
    swatch_rows: float
    swatch_width_cm: float
    swatch_height_cm: float
    swatch_grams: float
    origin: Origin

    @property
    def stitches_per_cm(self) -> float:
        return self.swatch_stitches / self.swatch_width_cm

    @property
    def rows_per_cm(self) -> float:
        return self.swatch_rows / self.swatch_height_cm


@dataclass(frozen=True, slots=True)
class Edging:
    name: str
    fabric: str
    depth: PerSize
    when: str
    cast_off: str
    origin: Origin


@dataclass(frozen=True, slots=True)
class Level:
    name: str
    height: PerSize
    origin: Origin


@dataclass(frozen=True, slots=True)
class Way:
    """How an edge is shaped: "simple" or "fashioned" `inset` stitches in."""

    kind: str
    inset: int = 0


@dataclass(frozen=True, slots=True)
class EdgeRun:
    """One edge of a piece from the previous run's level up to `to_level`.

    `change` is this edge's move in cm, outwards positive, over the run; `cast_off` (>= 0 cm) of an inward
    move is cast off at once at the bottom of the run. `path`: straight | slope | curve | steps.
    `steps`: number of equal steps for path "steps", else 0."""

    name: str
    to_level: str
    path: str
    change: PerSize
    cast_off: PerSize
    steps: int
    way: Way
    origin: Origin


@dataclass(frozen=True, slots=True)
class Opening:
    """The width parts `depth` cm below the piece's top, round a centred gap; each half goes on alone to the top.

    `flat` cm of the gap are taken at once at the parting row; the rest of `width` by shaping. shape: round | v | square."""

    name: str
    width: PerSize
    depth: PerSize
    flat: PerSize
    shape: str
    way: Way
    origin: Origin


@dataclass(frozen=True, slots=True)
class Wedge:
    """Short rows by holding at an outer edge, from `from_level` to the piece's top, over all the stitches
    between that edge and the opening (or the centre when there is none)."""

    name: str
    edge: str
    """"both", "left" or "right"."""
    from_level: str
    origin: Origin


@dataclass(frozen=True, slots=True)
class Piece:
    name: str
    fabric: str
    copies: int
    mirror_of: str | None
    levels: tuple[Level, ...]
    start_width: PerSize
    start_way: str
    """"waste" | "e-wrap" | "chain"."""
    start_edging: str | None
    left: tuple[EdgeRun, ...]
    right: tuple[EdgeRun, ...]
    openings: tuple[Opening, ...]
    wedges: tuple[Wedge, ...]
    end_way: str
    """"waste" | "cast-off"."""
    origin: Origin

    @property
    def symmetric(self) -> bool:
        return self.left == self.right


@dataclass(frozen=True, slots=True)
class EdgeName:
    """A piece's edge. Names given by the author with `called`, and always: start, end, neck, shoulder."""

    piece: str
    edge: str


@dataclass(frozen=True, slots=True)
class Band:
    """An edging knitted on loops picked up along edges, in the order worked."""

    name: str
    edging: str
    along: tuple[EdgeName, ...]
    origin: Origin


@dataclass(frozen=True, slots=True)
class Join:
    """Edges sewn together; `easing` is the difference in length allowed, in cm (0: equal rows)."""

    one: tuple[EdgeName, ...]
    other: tuple[EdgeName, ...]
    easing: PerSize
    origin: Origin


@dataclass(frozen=True, slots=True)
class Requirement:
    """left relation right, in cm per size; already evaluated. Checked by `design`."""

    left: PerSize
    relation: str
    right: PerSize
    text: str
    because: str
    origin: Origin


@dataclass(frozen=True, slots=True)
class Design:
    file: str
    title: str
    texts: tuple[tuple[str, str], ...]
    """(key, text) of the pattern block: summary, story, difficulty, note."""
    sizes: tuple[str, ...]
    measurements: tuple[Measurement, ...]
    machine: Machine
    yarns: tuple[Yarn, ...]
    fabrics: tuple[Fabric, ...]
    edgings: tuple[Edging, ...]
    pieces: tuple[Piece, ...]
    bands: tuple[Band, ...]
    joins: tuple[Join, ...]
    requirements: tuple[Requirement, ...]
    making_up: tuple[str, ...]

    def fabric(self, name: str) -> Fabric:
        return next(f for f in self.fabrics if f.name == name)

    def edging(self, name: str) -> Edging:
        return next(e for e in self.edgings if e.name == name)

    def piece(self, name: str) -> Piece:
        return next(p for p in self.pieces if p.name == name)
