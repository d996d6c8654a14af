"""A source taken as far as the bed, and looked at as it is worn."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from tests.fit.wardrobe import HEAD
from walewright import fit, pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.model import Design
from walewright.fit import Fit
from walewright.fit.cloth import cloth
from walewright.fit.loops import Walker, walker
from walewright.glue.model import GluedSizes
from walewright.pipeline import Outcome
from walewright.report.model import Diagnostic
from walewright.solve.model import Counts


@dataclass(frozen=True, slots=True)
class Worn:
    fit: Fit
    told: tuple[Diagnostic, ...]

    def codes(self) -> list[str]:
        return [d.code for d in self.told]


def knitted(text: str, head: str = HEAD, sizes: tuple[str, ...] | None = None) -> Outcome:
    """Raises for a source that does not come to the bed: a fault of the test's."""
    outcome = pipeline._understand(Outcome("small.wale", head + text), shipped(), Changes(sizes))
    assert outcome.design is not None, outcome.diagnostics
    counted = pipeline._count(pipeline._put_together(outcome), helps=False)
    assert counted.counts is not None, counted.diagnostics
    made = pipeline._knit_and_write(counted)
    assert all(r.fabrics for r in made.results), [r.faults for r in made.results]
    return made


def parts(made: Outcome) -> tuple[Design, GluedSizes, Counts]:
    """What there is to be worn of what was knitted."""
    assert made.design is not None
    assert made.glued is not None
    assert made.counts is not None
    return made.design, made.glued, made.counts


def worn(text: str, head: str = HEAD, sizes: tuple[str, ...] | None = None) -> Worn:
    made = knitted(text, head, sizes)
    found, told = fit.fit(*parts(made), made.results)
    return Worn(found, told)


@cache
def walkers(text: str, head: str = HEAD) -> tuple[Walker, ...]:
    """Who follows loops round the garment, in each size."""
    made = knitted(text, head)
    design, glued, counts = parts(made)
    sized = zip(counts.sizes, made.results, strict=True)
    return tuple(walker(design, glued.in_size(n), cloth(design.at(n), g, r.fabrics)) for n, (g, r) in enumerate(sized))
