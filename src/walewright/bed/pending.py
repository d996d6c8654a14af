"""What hangs or waits between two rows: ends of yarn, tails, yarn just laid over held needles, wales let run down."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field

from walewright.bed.model import Crossed, Float
from walewright.knit.operations import Side
from walewright.record import record


@record
class Strand:
    """An unbroken end of `yarn`, hanging at needle index `at`, on that `side` of what was knitted with it last, when the counter
    read `counter`. `run` is the number of its courses."""

    yarn: str
    run: int
    side: Side
    at: int
    counter: int
    section: int


@record
class Tail:
    """What is left of a broken yarn: `cm` of it (0: as long as it happened), at needle index `at` on that `side`."""

    yarn: str
    tension: str
    run: int
    cm: int
    side: Side | None
    at: int


@dataclass(slots=True)
class Pending:
    """Kept apart from the machine, for plain rows need none of it."""

    strands: list[Strand] = field(default_factory=list)
    """Ends that hang, the one in the carriage not among them."""
    at_edge: Strand | None = None
    """Of a picture row, the end at the carriage's side, where that is not the one in use."""
    tail: Tail | None = None
    laid: dict[int, int] = field(default_factory=dict)
    """Needle -> the yarn that the last pass laid over it while it was held, as long as that lies there."""
    lifted: set[int] = field(default_factory=set)
    """Needles that the last pass's yarn was lifted off, and that nothing was laid in since."""
    tucks: dict[int, int] = field(default_factory=dict)
    """Needle -> how many rows' yarn lies over its loop."""
    dropped: dict[int, tuple[int, ...]] = field(default_factory=dict)
    """Needle -> the loops of its wale that run down since the last pass, from above."""


@dataclass(slots=True)
class Kept:
    """What is kept beside the loop graph for the finished fabric."""

    floats: list[Float] = field(default_factory=list)
    crossings: list[tuple[int, int]] = field(default_factory=list)
    crosses: list[Crossed] = field(default_factory=list)
    latched: list[tuple[int, int, int, int]] = field(default_factory=list)
    """(loops made before, counter, slot, rows) of each time that a wale was latched up."""
    corded: list[tuple[int, int, int, int]] = field(default_factory=list)
    """(loops made before, counter, first slot, last slot) of loops that waited on ravel cord."""
    tails: list[tuple[str, int]] = field(default_factory=list)
    """Every break of a yarn: (yarn, length asked for)."""
    helpers: Counter[str] = field(default_factory=Counter)
    """Loops of waste and ravel yarn that were knitted."""
