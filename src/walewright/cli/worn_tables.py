"""Tables of the garment as it is worn: what goes round, ease, reach and openings."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from walewright.cli.tables import table, written
from walewright.report.said import Said, said

if TYPE_CHECKING:
    from rich.table import Table

    from walewright.fit import Fit
    from walewright.fit.model import Ring
    from walewright.guide.model import Guide

Figures = Sequence[float | tuple[float, float]]
"""A figure a size, or two."""

MOST_SHOWN = 4
"""Edges of an opening that are named."""


def as_worn(guide: Guide, fit: Fit, sizes: Sequence[str]) -> Table:
    """Girths, reach and what the author states; then the ease."""
    from walewright.sheet import fitting

    rows: list[tuple[str, str, Figures]] = [(label, "check/cm", values) for label, values in fitting.finished(guide, fit)]
    for beside in fit.beside:
        pairs = tuple(zip(beside.wanted, beside.knitted, strict=True))
        rows.append((guide.say("fit/whole", name=fitting.whole_label(beside)), "check/wanted-and-knitted", pairs))
    for label, values in fitting.eases(guide, fit):
        rows.append((guide.say("check/ease", label=guide.within(label)), "check/cm", values))
    return _table(guide, "check/as-worn", sizes, rows)


def openings(guide: Guide, fit: Fit, sizes: Sequence[str]) -> Table:
    """Every opening, at rest and, where something passes it, stretched."""
    return _table(guide, "check/openings", sizes, list(_openings(guide, fit)))


def passages(guide: Guide, fit: Fit, sizes: Sequence[str]) -> Table:
    """What passes which opening, or never does."""
    rows: list[tuple[str, str, Figures]] = []
    for p in fit.passings:
        opening = guide.say("fit/role", role=p.name) if p.name in _roles() else p.name
        what = guide.say("check/never-passes" if p.never else "check/passes", opening=opening, part=p.part)
        rows.append((what, "check/stretched-and-needed", tuple(zip(p.stretched, p.needed, strict=True))))
    return _table(guide, "check/passages", sizes, rows)


def _roles() -> tuple[str, ...]:
    from typing import get_args

    from walewright.fit.model import Role

    return tuple(role for role in get_args(Role) if role)


def _openings(guide: Guide, fit: Fit) -> Iterator[tuple[str, str, Figures]]:
    for ring in fit.rings:
        # What opens in front, and a flat piece all round, is not stretched by anything that passes.
        if ring.role:
            both = tuple(zip(ring.relaxed, ring.stretched, strict=True))
            yield _name(guide, ring), "check/at-rest-and-stretched", both
        else:
            yield _name(guide, ring), "check/at-rest" if ring.relaxed else "check/unmeasured", ring.relaxed


def _name(guide: Guide, ring: Ring) -> str:
    """The role, if it is known, and the edges, each once: "neck: neckband"."""
    from walewright.guide.numbers import graded

    edges = tuple(dict.fromkeys(_edge(p.owner, p.edge) for p in ring.edges))
    return guide.say(
        "check/opening",
        copies=graded([str(n) for n in ring.copies]) if max(ring.copies) > 1 else "",
        role=guide.say("fit/role", role=ring.role) if ring.role else "",
        edges=edges[:MOST_SHOWN],
        more=len(edges) > MOST_SHOWN,
    )


def _edge(piece: str, edge: str) -> Said:
    return said("check/rim", piece=piece) if edge == "rim" or not edge else written(piece, edge)


def _table(guide: Guide, title: str, sizes: Sequence[str], rows: Sequence[tuple[str, str, Figures]]) -> Table:
    made = table(guide.say(title), sizes)
    for name, unit, values in rows:
        figures = (guide.decimal(f"{v:.1f}" if isinstance(v, float) else f"{v[0]:.1f}/{v[1]:.1f}") for v in values)
        made.add_row(name, guide.say(unit), *figures)
    return made
