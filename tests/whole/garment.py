"""The shipped garment, compiled with another tension, bed or body, and what has to be true of the outcome."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import Outcome, compile
from walewright.report.english import in_english
from walewright.report.model import Severity
from walewright.world import shipped_text

SHIPPED = shipped()
BEDS = {"fine": 250, "standard": 200, "mid": 150, "bulky": 100}
RIB_DENSER = 1.08
"""A band is usually knitted tighter than the piece (common practice); the tests take 8 %."""


def tidewrack(bed: str = "bulky") -> str:
    return shipped_text("patterns", "tidewrack.wale").replace("machine bulky", f"machine {bed}")


def regraded(
    stitches: float,
    rows: float,
    bed: str = "bulky",
    measures: Mapping[str, str] | None = None,
    sizes: tuple[str, ...] | None = None,
) -> Outcome:
    """The pullover at `stitches` and `rows` to 10 cm, in all sizes or those named."""
    tensions = {
        "plain": f"{stitches:g} st {rows:g} rows",
        "rib": f"{stitches * RIB_DENSER:g} st {rows * RIB_DENSER:g} rows",
    }
    return compile(
        tidewrack(bed), "tidewrack.wale", SHIPPED, Changes(sizes=sizes, tensions=tensions, measures=dict(measures or {}))
    )


def proven_or_true(outcome: Outcome, stitches: float, rows: float, bed: str) -> str:
    """Assert that the outcome is a proven pattern as near as whole stitches and rows allow, or a diagnostic that is true.
    Returns "proven" or the codes told."""
    if outcome.proven:
        _near(outcome)
        return "proven"
    errors = [d for d in outcome.diagnostics if d.severity is Severity.ERROR]
    assert errors, "neither proven nor told why"
    codes = sorted({d.code for d in errors})
    assert set(codes) <= TRUE_WHEN.keys(), f"{codes}: {[in_english(d).message for d in errors]}"
    for diagnostic in errors:
        assert in_english(diagnostic).helps, f"{diagnostic.code} does not say how to mend it"
        TRUE_WHEN[diagnostic.code](outcome, stitches, rows, bed)
    return " ".join(codes)


def _near(outcome: Outcome) -> None:
    assert outcome.proof is not None
    for size in outcome.proof.sizes:
        assert size.read_back
        for piece in size.pieces:
            for measure in piece.measures:
                # A slope takes the same even number of rows in all sizes, so the level where it begins may be two rows off.
                allowed = 2.0 if measure.key.extent == "height" and measure.key.at != "stretch" else 1.0
                assert abs(measure.off) <= allowed + 1e-6, f"{size.size} {piece.name} {measure}"
        for join in size.joins:
            assert abs(join.one_cm - join.other_cm) <= join.easing_cm + 0.05 + (0 if join.easing_cm else 0.5)


def _too_wide(outcome: Outcome, stitches: float, rows: float, bed: str) -> None:
    """Some piece, or the band round the neck, really asks for more needles than there are."""
    assert outcome.design is not None
    per_cm = stitches / 10
    needles = BEDS[bed]
    widths = [w for p in outcome.design.pieces for w in p.start_width]
    widths += [
        start + sum(r.change[i] for runs in (p.left, p.right) for r in runs)
        for p in outcome.design.pieces
        for i, start in enumerate(p.start_width)
    ]
    # Round the neck: twice its width and twice the front's depth are more than any neckline here takes.
    around = max(2 * (f.width[i] + f.depth[i]) for p in outcome.design.pieces for f in p.openings for i in range(len(f.width)))
    assert max(*(w * per_cm for w in widths), around * per_cm * RIB_DENSER) > needles - 2


TRUE_WHEN = {"wider-than-bed": _too_wide}
