"""Panels: whether the wales of a panel run undisturbed from its first row to its last.

A panel of latched rib is dropped and re-formed wale by wale over all its rows, so no slot, buttonhole or shaping may move or end a
stitch of it, or hang one on it, in those rows, and no wale may belong to two panels. A charted panel is worked as it goes up:
shaping that reaches it leaves the stitch groups that it cuts plain, only what is cut into it spoils it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import chain

from walewright.counted.model import SizedPiece, SizedRun, SizedZone
from walewright.design.model import Design, Piece
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Said, only, said


def panels_crossed(design: Design, garments: Sequence[Sequence[SizedPiece]]) -> Iterator[Diagnostic]:
    """A message for each panel that something crosses in some size; `garments[i]` are the pieces of size i."""
    for number, piece in enumerate(design.pieces):
        for index, zone in enumerate(z for z in piece.zones if z.width is not None):
            notes: dict[str, Said] = {}
            for size, pieces in enumerate(garments):
                sized = pieces[number]
                panels = [z for z in sized.zones if z.panel is not None]
                panel, latched = panels[index], _latched(design, zone.fabric)
                others = [z for z in panels[:index] if latched or _latched(design, z.fabric)]
                found = next(chain(_crossing(piece, sized, panel, latched), _sharing(piece, panel, others)), None)
                if found is not None:
                    notes[design.sizes[size]] = found
            if notes:
                yield diagnosed(
                    "panel-crossed",
                    (zone.origin.span, "panel"),
                    notes=tuple(said("in-size", size=size, note=note) for size, note in notes.items()),
                    helps=("narrower",),
                    sizes=only(design.sizes, notes),
                    fabric=zone.fabric,
                    piece=piece.name,
                )


def _latched(design: Design, fabric: str) -> bool:
    return design.fabric(fabric).stitch != "chart"


def _sharing(piece: Piece, panel: SizedZone, others: Sequence[SizedZone]) -> Iterator[Said]:
    """The panels written before it that have needles and rows of it."""
    for other in others:
        beside = other.last < panel.first or panel.last < other.first
        if not beside and other.from_row < panel.to_row and panel.from_row < other.to_row:
            yield said("panel-of", fabric=other.fabric, piece=piece.name)


def _crossing(piece: Piece, sized: SizedPiece, panel: SizedZone, latched: bool) -> Iterator[Said]:
    for slot in sized.slots:
        # An eyelet's stitch is hung on its neighbour; a closed slot's last one too.
        beside = slot.first - 1 <= panel.last and slot.last + 1 >= panel.first
        if panel.from_row < slot.row < panel.to_row and beside:
            yield said("slot-at", slot=slot.name, row=slot.row)
    if not latched:
        return
    for side, begin, runs in (
        ("left", sized.start_left, sized.left),
        ("right", sized.start - sized.start_left, sized.right),
    ):
        reach = -panel.first if side == "left" else panel.last + 1
        for row, place, kept in _moves(begin, runs):
            if panel.from_row < row < panel.to_row and place - kept < reach:
                yield said("edge-at-row", side=side, piece=piece.name, row=row)
                break


def _moves(begin: int, runs: Sequence[SizedRun]) -> Iterator[tuple[int, int, int]]:
    """(row, stitches outside the centre mark after it, stitches inside the edge that are moved or hung on) of each move."""
    place = begin
    for run in runs:
        for row, by in run.changes():
            place += by
            yield row, place, run.way.inset if run.way.kind == "fashioned" else 1
