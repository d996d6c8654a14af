"""Tiny garments from short sources, and the counts that they must have, found by trying every whole number.

`tiny` takes a source through reading, understanding and putting together to its counts. `least` knows nothing of the solver: it
tries all numbers near what is wanted, keeps those that the rules of `docs/solver.md` allow, and takes what costs least.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import pairwise, product
from math import ceil, floor

import pytest

from walewright import pipeline
from walewright.counted.model import SizedGarment, SizedPiece, SizedRun
from walewright.design import Changes, Shipped
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity
from walewright.solve.model import Counts

HEAD = """\
pattern "Tiny"
{sizes}
machine own
    needles {needles}
    pitch 9 mm
    prongs 1 2 3
yarn rope "rope", 1000 g = 60 m
fabric plain
    stocking stitch in rope at tension 4
    swatch 100 stitches by 100 rows = {across:g} cm by {up:g} cm
"""


@dataclass(frozen=True)
class Tiny:
    """What came of a source."""

    text: str
    counts: Counts | None
    errors: tuple[Diagnostic, ...]
    warnings: tuple[Diagnostic, ...]

    @property
    def garments(self) -> tuple[SizedGarment, ...]:
        assert self.counts is not None, [(d.code, in_english(d).message, in_english(d).notes) for d in self.errors]
        return self.counts.sizes

    @property
    def piece(self) -> SizedPiece:
        """The first piece of the first size."""
        return self.garments[0].pieces[0]

    @property
    def cost(self) -> float:
        """What the counts cost, all parts of the programme together."""
        assert self.counts is not None
        assert all(part.status == "optimal" and part.objective == pytest.approx(part.bound) for part in self.counts.components)
        return sum(part.objective for part in self.counts.components)

    @property
    def error(self) -> Diagnostic:
        """The only error."""
        assert self.counts is None
        (found,) = self.errors
        return found

    def line(self, label: int = 0) -> str:
        """The line of the source that a label of the error is at; 0 is what fails."""
        begin = self.text.rfind("\n", 0, self.error.labels[label].span.start) + 1
        return self.text[begin : self.text.find("\n", begin)].strip()

    @property
    def blamed(self) -> set[str]:
        """The lines that the error names, all of them."""
        return {self.line(n) for n in range(len(self.error.labels))}


def tiny(body: str, *, sizes: str = "M", needles: int = 60, across: float = 1.0, up: float = 1.0) -> Tiny:
    """A source counted: `body` below a bed of so many needles and a fabric `plain` of `across` stitches and `up` rows to the cm."""
    # A source that grades its figures has its sizes itself.
    text = (
        HEAD.format(sizes="" if "\nsizes " in "\n" + body else f"sizes {sizes}", needles=needles, across=100 / across, up=100 / up)
        + body
    )
    made = pipeline.counted(text, "tiny.wale", Shipped({}, {}), Changes())
    if made.counts is None:
        # What would do is tried for what cannot be counted.
        made = pipeline.compile(text, "tiny.wale", Shipped({}, {}), Changes())
    errors = tuple(d for d in made.diagnostics if d.severity is Severity.ERROR)
    return Tiny(text, made.counts, errors, tuple(d for d in made.diagnostics if d.severity is not Severity.ERROR))


# ----------------------------------------------------------------- every whole number


@dataclass(frozen=True)
class Number:
    """A count as it is wanted: a multiple of `step` and `rest` more, at most `within` off, and at most `near` where that can be."""

    wanted: float
    step: int = 2
    within: float = 2.0
    share: float = 1.0
    rest: int = 0
    near: float | None = None

    def counts(self, within: float) -> Iterator[int]:
        low, high = max(0, ceil(self.wanted - within - 1e-9)), floor(self.wanted + within + 1e-9)
        return (n for n in range(low, high + 1) if n % self.step == self.rest % self.step)

    def cost(self, count: int) -> float:
        return off(count, self.wanted, self.share) + plainness(count, self.wanted, self.step)


def width(wanted: float, **more: float) -> Number:
    """A finished width: a stitch off where that can be, else two."""
    return Number(wanted, near=1.0, **more)  # type: ignore[arg-type]


def off(count: float, wanted: float, share: float = 1.0) -> float:
    """1 for each stitch or row off what is wanted, and 30 more for each above the first."""
    far = abs(count - wanted)
    return share * (far + 30 * max(0.0, far - 1))


def plainness(count: int, wanted: float, step: int) -> float:
    """Of two numbers equally near, what the less plain one costs more: tens before fours, fours before the rest."""
    low = floor(wanted / step) * step
    if abs((low + step - wanted) - (wanted - low)) > 1e-6:
        return 0.0
    lower, higher = (2 * (n % 10 == 0) + (n % 4 == 0) for n in (low, low + step))
    return 0.0001 * (count if lower >= higher else -count)


@dataclass(frozen=True)
class Best:
    """The least cost, and all choices that have it."""

    cost: float
    choices: list[dict[str, int]]


Rule = Callable[[dict[str, int]], bool]
Cost = Callable[[dict[str, int]], float]


def least(numbers: dict[str, Number], rule: Rule = lambda _: True, more: Cost = lambda _: 0.0) -> Best | None:
    """The choice of counts that costs least of all that keep `rule`; `more` is what costs besides each number by itself. None
    where no choice does."""
    for close in (True, False):
        ranges = [n.counts(n.near if close and n.near is not None else n.within) for n in numbers.values()]
        found = [dict(zip(numbers, chosen, strict=True)) for chosen in product(*ranges)]
        costs = [(sum(numbers[k].cost(n) for k, n in c.items()) + more(c), c) for c in found if rule(c)]
        if costs:
            best = min(cost for cost, _ in costs)
            return Best(best, [c for cost, c in costs if cost <= best + 1e-7])
    return None


def agrees(made: Tiny, best: Best, counted: dict[str, int]) -> None:
    """The counts are the best ones, and cost what these cost."""
    assert counted in best.choices, (counted, best)
    assert made.cost == pytest.approx(best.cost, abs=2e-6)


# ----------------------------------------------------------------- on which rows


def moves(runs: tuple[SizedRun, ...]) -> list[tuple[int, int]]:
    """(row, stitches outwards) of every move."""
    return [move for run in runs for move in run.changes()]


def width_at(piece: SizedPiece, level: str) -> int:
    """Stitches where both edges have come to a level."""
    row = piece.row(level)
    return piece.start + sum(by for run in (*piece.left, *piece.right) for _, by in run.changes() if run.to_row <= row)


def gaps(rows: list[int]) -> list[int]:
    """Rows from each move to the next."""
    return [b - a for a, b in pairwise(rows)]
