"""Tables on a terminal."""

from __future__ import annotations

from collections.abc import Sequence
from io import StringIO
from typing import TYPE_CHECKING

from walewright.report.said import Said, said, size_as_said

if TYPE_CHECKING:
    from rich.table import Table


def table(title: str, sizes: Sequence[str]) -> Table:
    """A table with a column for what a row is of, one for its unit, and one for each size."""
    from rich.table import Table

    made = Table(title=title, title_justify="left", title_style="", box=None, pad_edge=False)
    for heading in ("", ""):
        made.add_column(heading)
    for size in sizes:
        made.add_column(size_as_said(size), justify="right")
    return made


def written(piece: str, edge: str, copy: int = 0) -> Said:
    """An edge as its author writes it: "back side_left"."""
    name = edge.replace(" ", "_")
    return said("join/edge-of-copy", piece=piece, edge=name, copy=copy) if copy else said("join/edge", piece=piece, edge=name)


def plain(made: Table) -> str:
    """The table as text, each row a line."""
    from rich.console import Console

    # A table is wider than most terminals with eight sizes; the terminal's own wrapping is better than cut cells.
    printed = StringIO()
    Console(file=printed, width=1000, no_color=True, highlight=False, markup=False).print(made)
    return "\n".join(row.rstrip() for row in printed.getvalue().splitlines())
