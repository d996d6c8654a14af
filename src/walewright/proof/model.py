"""The proof of a build: what the bed really knitted, beside what was wanted, per size and piece."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Measure:
    """`what` such as "width at hem" or "height of underarm": wanted and knitted, in cm; `off` is knitted minus wanted,
    in `unit` ("st" | "rows")."""

    what: str
    wanted_cm: float
    knitted_cm: float
    off: float
    unit: str


@dataclass(frozen=True, slots=True)
class PieceProof:
    name: str
    copies: int
    first_needle: str
    last_needle: str
    most_stitches: int
    rows: int
    loops: int
    measures: tuple[Measure, ...]


@dataclass(frozen=True, slots=True)
class JoinProof:
    """`text` "back side to front side"; rows are None where the edge does not run along rows. `longer_cm` and `way`: as asked."""

    text: str
    one_rows: int | None
    other_rows: int | None
    one_cm: float
    other_cm: float
    easing_cm: float
    longer_cm: float = 0.0
    way: str = "sewn"


@dataclass(frozen=True, slots=True)
class YarnUse:
    """Yarn for one size, swatch and margin included; `way` says how it was reckoned and how far to trust it."""

    yarn: str
    label: str
    metres: float
    grams: float
    balls: int
    way: str


@dataclass(frozen=True, slots=True)
class SizeProof:
    size: str
    pieces: tuple[PieceProof, ...]
    joins: tuple[JoinProof, ...]
    yarn: tuple[YarnUse, ...]
    operations: int
    loops: int
    read_back: bool
    """True when the printed words, read back, knitted the same fabric."""


@dataclass(frozen=True, slots=True)
class Proof:
    sizes: tuple[SizeProof, ...]
