"""Tables on a terminal."""

from __future__ import annotations

from io import StringIO
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from rich.table import Table


def plain(table: Table) -> str:
    """The table as text, each row a line."""
    from rich.console import Console

    # A table is wider than most terminals with eight sizes; the terminal's own wrapping is better than cut cells.
    printed = StringIO()
    Console(file=printed, width=1000, no_color=True, highlight=False, markup=False).print(table)
    return "\n".join(row.rstrip() for row in printed.getvalue().splitlines())
