"""The plan, for programs: docs/plan.md."""

from __future__ import annotations

from walewright.cli.formats.format import Format, Made, Pattern


def _make(pattern: Pattern) -> Made:
    from walewright.plan import plan_bytes

    return Made(plan_bytes(pattern.outcome))


FORMAT = Format(".plan.json", _make, varies_with=frozenset())
