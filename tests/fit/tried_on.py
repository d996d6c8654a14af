"""A source taken as far as the bed, and looked at as it is worn."""

from __future__ import annotations

from dataclasses import dataclass

from tests.fit.wardrobe import HEAD
from walewright import bed, fit, glue, knit, pipeline, solve
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.fit import Fit
from walewright.pipeline import Outcome
from walewright.report.model import Diagnostic


@dataclass(frozen=True, slots=True)
class Worn:
    fit: Fit
    told: tuple[Diagnostic, ...]

    def codes(self) -> list[str]:
        return [d.code for d in self.told]


def worn(text: str, head: str = HEAD) -> Worn:
    """Raises for a source that does not come to the bed: a fault of the test's."""
    outcome = pipeline._understand(Outcome("small.wale", head + text), shipped(), Changes())
    assert outcome.design is not None, outcome.diagnostics
    glued, apart = glue.glue(outcome.design)
    assert glued is not None, apart
    counts, impossible = solve.solve(outcome.design, glued)
    assert counts is not None, impossible
    plans = knit.plan(outcome.design, glued, counts)
    works = [knit.expand(p, outcome.design.charts) for p in plans]
    machine = pipeline.bed_of(outcome.design)
    results = [bed.knit(w, machine) for w in works]
    assert all(r.fabrics for r in results), [r.faults for r in results]
    found, told = fit.fit(outcome.design, glued, counts, results)
    return Worn(found, told)
