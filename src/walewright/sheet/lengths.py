"""Lengths that the simulated bed measured: bobbins of picture knitting, and floats that are too long."""

from __future__ import annotations

from walewright.design.model import Design
from walewright.figures.measures import name_of
from walewright.figures.yarns import yarn_named
from walewright.guide.numbers import graded, listed, sentence
from walewright.proof.model import BobbinUse, FloatFound, Proof
from walewright.sheet.model import ListTable

LONG_FLOATS = (
    "Long floats, on which fingers catch: catch each at its middle. When the next row is to be knitted, lift the float with a "
    "transfer tool on to the needle at the middle of those that it passes, above its stitch; both are knitted as one"
)

NARROW = "\N{NO-BREAK SPACE}"
"""Keeps the name of a size in one line of a narrow column."""


def bobbins(design: Design, proof: Proof) -> tuple[ListTable, ...]:
    """A table for each piece with picture knitting: one line an end of yarn, its length a size."""
    found: dict[str, dict[int, list[BobbinUse | None]]] = {}
    for place, size in enumerate(proof.sizes):
        for use in size.bobbins:
            rows = found.setdefault(use.piece, {})
            rows.setdefault(use.number, [None] * len(proof.sizes))[place] = use
    return tuple(_bobbins(design, piece, rows) for piece, rows in found.items())


def _bobbins(design: Design, piece: str, rows: dict[int, list[BobbinUse | None]]) -> ListTable:
    made = []
    for number, uses in sorted(rows.items()):
        some = next(u for u in uses if u is not None)
        places = (_block(uses), _begins(uses), _ends(uses))
        lengths = (f"{u.metres:.1f}" if u is not None else "–" for u in uses)
        made.append((str(number), sentence(yarn_named(design, some.yarn).label), *places, *lengths))
    heads = (
        "Bobbin",
        "Yarn",
        "Its block begins on",
        "Counter before its first row",
        "Last row",
        *(f"{s.replace(' ', NARROW)}, m" for s in design.sizes),
    )
    return ListTable(f"Bobbins for the {name_of(piece)}: what to wind on each, tails included", heads, tuple(made))


def _block(uses: list[BobbinUse | None]) -> str:
    """The needles of a block's first row, in the order of the sizes, what is alike said once."""
    first, last = (_said([str(getattr(u, end)) if u is not None else "–" for u in uses]) for end in ("first", "last"))
    return first if first == last else f"{first} to {last}"


def _begins(uses: list[BobbinUse | None]) -> str:
    """What the counter reads when the first row with the end is about to be knitted."""
    return f"RC {_said([str(u.row - 1) if u is not None else '–' for u in uses])}"


def _ends(uses: list[BobbinUse | None]) -> str:
    """What the counter reads after the last row with the end, and whether it hangs in between, to be taken up again."""
    ends = f"to RC {_said([str(u.last_row) if u is not None else '–' for u in uses])}"
    rests = [u.rests for u in uses if u is not None]
    if not any(rests):
        return ends
    hangs = [listed([f"RC {a - 1} to {z}" for a, z in stretches]) if stretches else "–" for stretches in rests]
    return f"{ends}; it hangs from {_said(hangs)} and is taken up again"


def _said(found: list[str]) -> str:
    """One figure where all sizes that have it agree: the lengths beside it show which have it not."""
    there = set(found) - {"–"}
    return there.pop() if len(there) == 1 else graded(found)


def floats(design: Design, proof: Proof) -> ListTable | None:
    """The long floats of all sizes, alike ones of several rows or sizes in one line; None without any."""
    found: dict[tuple[str, str, str, str, int], list[tuple[FloatFound, str]]] = {}
    for size, name in zip(proof.sizes, design.sizes, strict=True):
        for one in size.floats:
            found.setdefault((one.piece, one.yarn, one.first, one.last, one.stitches), []).append((one, name))
    rows = []
    for (piece, yarn, first, last, stitches), ones in found.items():
        cm = max(one.cm for one, _ in ones)
        names = list(dict.fromkeys(name for _, name in ones))
        told = [] if len(names) == len(design.sizes) else names
        # A row is found by what the counter reads before it, as everywhere on the sheet.
        at = sorted({one.row - 1 for one, _ in ones})
        shown = ", ".join(str(r) for r in at[:8]) + (f" and {len(at) - 8} more" if len(at) > 8 else "")
        where = f"{sentence(name_of(piece))}{f' ({listed(told)})' if told else ''}"
        across = f"{first} to {last}: {stitches} stitches, {cm:.1f} cm"
        rows.append((where, sentence(yarn_named(design, yarn).label), shown, across))
    if not rows:
        return None
    return ListTable(LONG_FLOATS, ("Piece", "Yarn", "RC before the row", "Needles that it passes"), tuple(rows))
