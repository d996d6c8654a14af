"""Tables of the garment as it is worn: what goes round, ease, reach and openings."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from rich.table import Table

    from walewright.fit import Fit
    from walewright.fit.model import Ring


def worn_tables(fit: Fit, sizes: Sequence[str]) -> list[Table]:
    """Those that have something to show."""
    from walewright.sheet import fitting

    finished = [(label, "cm", values) for label, values in fitting.finished(fit)]
    finished += [(f"ease, {label[:1].lower()}{label[1:]}", "cm", values) for label, values in fitting.eases(fit)]
    tables = [_table("as worn", sizes, finished), _table("openings", sizes, _openings(fit))]
    passes = [
        (
            f"{p.name}: {p.part}" + (" never passes" if p.never else " passes"),
            "cm stretched/needed",
            tuple(zip(p.stretched, p.needed, strict=True)),
        )
        for p in fit.passings
    ]
    tables.append(_table("what passes what", sizes, passes))
    return [t for t in tables if t.row_count]


def _openings(fit: Fit) -> list[tuple[str, str, tuple[float | tuple[float, float], ...]]]:
    found: list[tuple[str, str, tuple[float | tuple[float, float], ...]]] = []
    for ring in fit.rings:
        # What opens in front, and a flat piece all round, is not stretched by anything that passes.
        if ring.role:
            found.append((_name(ring), "cm at rest/stretched", tuple(zip(ring.relaxed, ring.stretched, strict=True))))
        else:
            found.append((_name(ring), "cm at rest" if ring.relaxed else "cannot be measured", ring.relaxed))
    return found


def _name(ring: Ring) -> str:
    """The role, if it is known, and the edges, each once: "neck: neckband"."""
    edges = dict.fromkeys(p.owner if p.edge == "rim" else f"{p.owner} {p.edge.replace(' ', '_')}".rstrip() for p in ring.edges)
    shown = list(edges) if len(edges) <= MOST_SHOWN else [*list(edges)[:MOST_SHOWN], "..."]
    times = f"{ring.copies} times " if ring.copies > 1 else ""
    return f"{times}{ring.role}: {' + '.join(shown)}" if ring.role else f"{times}{' + '.join(shown)}"


MOST_SHOWN = 4


def _table(title: str, sizes: Sequence[str], rows: Sequence[tuple[str, str, Sequence[float | tuple[float, float]]]]) -> Table:
    from rich.table import Table

    table = Table(title=title, title_justify="left", title_style="", box=None, pad_edge=False)
    for heading in ("", ""):
        table.add_column(heading)
    for size in sizes:
        table.add_column(size, justify="right")
    for name, unit, values in rows:
        table.add_row(name, unit, *(f"{v:.1f}" if isinstance(v, float) else f"{v[0]:.1f}/{v[1]:.1f}" for v in values))
    return table
