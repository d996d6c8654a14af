"""Shipped garments at tensions and for bodies drawn at random.

Run on demand: `python tests/benchmarks/regrade_at_random.py [N] [GARMENT...]`, for 50 draws each of all garments, where nothing
else is said. For each garment: how many of the draws came to a proven pattern, and which codes told why the others did not. The
draws are those of `tests/whole/test_shipped.py`, more of them; anything that is neither proven nor truly told stops the run.
"""

from __future__ import annotations

import sys
from collections import Counter
from pathlib import Path

from walewright.design import Changes
from walewright.pipeline import Outcome, compile
from walewright.report.model import Severity

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "whole"))

from shipped_once import GARMENTS, SHIPPED, source
from test_shipped import TOLD, assert_true, drawn


def came_to(outcome: Outcome, changes: Changes) -> str:
    """ "proven", or the codes told, which have to be true."""
    if outcome.proven:
        return "proven"
    errors = [d for d in outcome.diagnostics if d.severity is Severity.ERROR]
    assert errors, changes
    for error in errors:
        assert error.code in TOLD, (changes, error.code, error.message)
        assert error.helps, error
        assert_true(error)
    return " ".join(sorted({d.code for d in errors}))


def main() -> None:
    """Draw, compile and count."""
    said = sys.argv[1:]
    count = int(said.pop(0)) if said and said[0].isdigit() else 50
    for name in said or GARMENTS:
        found = Counter(came_to(compile(source(name), f"{name}.wale", SHIPPED, changes), changes) for changes in drawn(name, count))
        print(f"{name:12}", ", ".join(f"{what} {n}" for what, n in found.most_common()), flush=True)


if __name__ == "__main__":
    main()
