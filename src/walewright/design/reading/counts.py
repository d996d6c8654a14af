"""Yarn counts: what the number on a cone says, as grams to 1000 m (tex, ISO 1144).

Direct systems weigh a length, indirect ones measure a weight. Definitions as ISO 1144 and ISO 2947 have them; the constants of
the hank systems follow from the yard and the pound (0.9144 m, 453.59237 g) and are those of published conversion tables
(590.5, 885.8, 1653.5). Folded yarns are written with a stroke, plies first in metric and worsted practice, count first in
cotton's (ISO 2 and ISO 1139 tell the two apart by other signs): the smaller number is the plies, the other the count of one.
"""

from __future__ import annotations

import re

from walewright.design.findings import Findings
from walewright.report.model import Span
from walewright.report.said import Said
from walewright.source import syntax

DIRECT = {"tex": 1.0, "dtex": 10.0, "denier": 9.0}
"""Count over this is tex."""
INDIRECT = {"Nm": 1000.0, "Ne": 590.5, "NeK": 885.8, "lea": 1653.5}
"""This over the count is tex."""
SYSTEMS = (*DIRECT, *INDIRECT)

FINEST_TEX, COARSEST_TEX = 2.0, 20_000.0
"""Far beyond the threads and ropes that hook needles take: a count outside is a slip."""
MOST_PLIES = 24

COUNT = re.compile(r"(\d+(?:\.\d+)?)(?:/(\d+(?:\.\d+)?))?")


def tex(count: syntax.YarnCount, owner: Said, span: Span, findings: Findings) -> float | None:
    """Grams to 1000 m of the whole yarn, its plies together; None when told why not."""
    system = next((s for s in SYSTEMS if s.casefold() == count.system.casefold()), None)
    if system is None:
        findings.unknown("yarn count system", count.system, span, SYSTEMS)
        return None
    found = COUNT.fullmatch(count.text.strip())
    parts = found and _parts(found)
    if parts is None or parts[0] <= 0:
        findings.report(
            "bad-yarn-count/unreadable",
            (span, "count"),
            notes=("plies",),
            helps=("write",),
            text=count.text,
            system=count.system,
            owner=owner,
            most=MOST_PLIES,
        )
        return None
    single, plies = parts
    whole = plies * (single / DIRECT[system] if system in DIRECT else INDIRECT[system] / single)
    if not FINEST_TEX <= whole <= COARSEST_TEX:
        findings.report(
            "bad-yarn-count/out-of-range",
            (span, "here"),
            notes=("possible",),
            helps=("look",),
            owner=owner,
            tex=whole,
            text=count.text,
            system=count.system,
            finest=FINEST_TEX,
            coarsest=COARSEST_TEX,
        )
        return None
    return whole


def _parts(found: re.Match[str]) -> tuple[float, int] | None:
    """(count of one ply, plies); None when neither number can be that of the plies."""
    one, other = float(found[1]), float(found[2] or 1)
    count, plies = max(one, other), min(one, other)
    if found[2] is None:
        return one, 1
    return (count, int(plies)) if plies == int(plies) and 1 <= plies <= MOST_PLIES else None
