"""Names as a knitter reads them on the page: "12 months" for `12_months`, "back neck to wrist" for the row that holds it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

from walewright.design.findings import Findings, near_help
from walewright.report.near import near
from walewright.report.said import said


def folded(name: str) -> str:
    """The name without regard to capitals, and with blanks, hyphens and underscores as one."""
    return re.sub(r"[\s_\-]+", "_", name.strip()).casefold()


def meant(name: str, known: Mapping[str, Iterable[str]]) -> tuple[str, ...]:
    """Which of the `known` names (each with the other words that pages have for it) are meant: the exact one; else those whose
    own name reads alike, else those that a page calls so. More than one: it cannot be told which."""
    if name in known:
        return (name,)
    wanted = folded(name)
    return tuple(k for k in known if folded(k) == wanted) or tuple(
        k for k, others in known.items() if wanted in {folded(o) for o in others if o}
    )


def look_up(name: str, known: Mapping[str, Iterable[str]], what: str, given: tuple[str, str], findings: Findings) -> str | None:
    """The one that is meant; None for no such name, or for several, which is reported with the option it was `given` by."""
    found = meant(name, known)
    if len(found) == 1:
        return found[0]
    if found:
        findings.report("unknown-name/several", helps=("as-in-source",), given=given, name=name, meant=found)
        return None
    named = {other: k for k, others in known.items() for other in (k, *(o for o in others if o))}
    close = near(name, named)
    helps = near_help(name, known) or ((said("close-as", close=close, own=named[close]),) if close else ())
    findings.report(
        "unknown-name/given",
        notes=("here" if known else "none-here",),
        helps=helps or ("choices",),
        given=given,
        what=what,
        name=name,
        known=tuple(known),
    )
    return None
