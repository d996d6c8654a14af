"""A source taken as far as the bed, and looked at as it is worn."""

from __future__ import annotations

from dataclasses import dataclass

from tests.fit.wardrobe import HEAD
from walewright import fit, pipeline
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


def worn(text: str, head: str = HEAD, sizes: tuple[str, ...] | None = None) -> Worn:
    """Raises for a source that does not come to the bed: a fault of the test's."""
    outcome = pipeline._understand(Outcome("small.wale", head + text), shipped(), Changes(sizes))
    assert outcome.design is not None, outcome.diagnostics
    counted = pipeline._count(pipeline._put_together(outcome), helps=False)
    assert counted.counts is not None, counted.diagnostics
    knitted = pipeline._knit_and_write(counted)
    assert all(r.fabrics for r in knitted.results), [r.faults for r in knitted.results]
    design, glued, counts = knitted.design, knitted.glued, knitted.counts
    assert design is not None
    assert glued is not None
    assert counts is not None
    found, told = fit.fit(design, glued, counts, knitted.results)
    return Worn(found, told)
