"""Lengths that the simulated bed measured: bobbins of picture knitting, and floats that are too long."""

from __future__ import annotations

from walewright.design.model import Design
from walewright.pages.figures import graded, listed, sentence
from walewright.pages.measures import name_of
from walewright.pages.model import ListTable
from walewright.pages.yarns import yarn_named
from walewright.proof.model import BobbinUse, FloatFound, Proof


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
        begins = _begins(uses)
        lengths = (f"{u.metres:.1f}" if u is not None else "–" for u in uses)
        made.append((str(number), sentence(yarn_named(design, some.yarn).label), begins, *lengths))
    heads = ("Bobbin", "Yarn", "Begins at", *(f"{size}, m" for size in design.sizes))
    return ListTable(f"Bobbins for the {name_of(piece)}: what to wind on each, tails included", heads, tuple(made))


def _begins(uses: list[BobbinUse | None]) -> str:
    """The counter's reading and the needle where an end begins, in the order of the sizes, what is alike said once."""
    rows = [str(u.row) if u is not None else "–" for u in uses]
    needles = [u.first if u is not None else "–" for u in uses]
    return f"RC {_said(rows)}, {_said(needles)}"


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
        at = sorted({one.row for one, _ in ones})
        shown = ", ".join(str(r) for r in at[:8]) + (f" and {len(at) - 8} more" if len(at) > 8 else "")
        where = f"{sentence(name_of(piece))}{f' ({listed(told)})' if told else ''}"
        across = f"{first} to {last}: {stitches} stitches, {cm:.1f} cm"
        rows.append((where, sentence(yarn_named(design, yarn).label), shown, across))
    if not rows:
        return None
    return ListTable("Long floats: catch them on the purl side, fingers do", ("Piece", "Yarn", "RC", "Needles"), tuple(rows))
