"""Slots and buttonholes of pieces among the counted stitches: a stitch stands on each side of them, and no shaping reaches them.

What was wanted in centimetres may come to lie on an end needle by its rounding, or where an edge is just shaped. A buttonhole is
moved by a stitch for it; what would have to go further is told.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil

from walewright.counted.model import SizedPiece, SizedRun, SizedSlot
from walewright.counted.needles import InWork
from walewright.counted.parts import parts_at
from walewright.design.model import Buttonholes, Design, Piece, Slot
from walewright.record import replace
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Amount, Said, only, said
from walewright.solve.edges.gauge import fabric_below

_A_STITCH = 1
"""A buttonhole may lie a stitch off: by so much widths are rounded too."""


def settled(sized: SizedPiece, slots: Sequence[SizedSlot], own: frozenset[str]) -> tuple[SizedSlot, ...]:
    """The slots, those from the statements `own` (the paths of buttonholes) moved by a stitch where they find room so."""
    found: list[SizedSlot] = []
    for slot in slots:
        off = _off(sized, slot)
        if slot.origin.path in own and off is not None and 0 < abs(off) <= _A_STITCH:
            moved = replace(slot, first=slot.first + off, last=slot.last + off)
            slot = moved if _off(sized, moved) == 0 else slot
        found.append(slot)
    return tuple(found)


def holes_at_edges(design: Design, garments: Sequence[Sequence[SizedPiece]]) -> Iterator[Diagnostic]:
    """A message for each slot and each row of buttonholes that is no hole within the piece in some size; `garments[i]` are the
    pieces of size i."""
    for number, piece in enumerate(design.pieces):
        cuts: tuple[Slot | Buttonholes, ...] = (*piece.slots, *piece.buttonholes)
        for cut in cuts:
            notes: dict[str, Said] = {}
            shifts: list[int | None] = []
            for size, pieces in enumerate(garments):
                sized = pieces[number]
                for slot in (s for s in sized.slots if s.origin.path == cut.origin.path and _is_of(cut, s)):
                    off = _off(sized, slot)
                    if off != 0:
                        shifts.append(off)
                        notes.setdefault(design.sizes[size], _note(sized, slot))
            if notes:
                yield diagnosed(
                    "hole-at-edge/slot" if isinstance(cut, Slot) else "hole-at-edge/buttonhole",
                    (cut.origin.span, "here"),
                    notes=(*(said("in-size", size=size, note=note) for size, note in notes.items()), "needs"),
                    helps=tuple(_ways_out(design, piece, cut, shifts)),
                    sizes=only(design.sizes, notes),
                    slot=cut.name if isinstance(cut, Slot) else "",
                    piece=piece.name,
                )


def _is_of(cut: Slot | Buttonholes, slot: SizedSlot) -> bool:
    return isinstance(cut, Buttonholes) or cut.name == slot.name


def _note(sized: SizedPiece, slot: SizedSlot) -> Said:
    works = [last - first + 1 for first, last in (part.about(slot.row) for part in parts_at(sized, slot.row))]
    return said(
        "hole-wide",
        hole=slot.name,
        stitches=slot.stitches,
        parts=any(w.row == slot.row for w in sized.openings),
        row=sized.counter(slot.row),
        works=tuple(said("in-work-there", stitches=work) for work in works),
    )


def _ways_out(design: Design, piece: Piece, cut: Slot | Buttonholes, shifts: Sequence[int | None]) -> Iterator[Said]:
    known = [shift for shift in shifts if shift is not None]
    level = cut.to_level if isinstance(cut, Buttonholes) else cut.level
    per_cm = fabric_below(design, piece, level).stitches_per_cm
    lacks_room = len(known) < len(shifts) or (min(known) < 0 < max(known))
    if isinstance(cut, Slot):
        if not lacks_room:
            most = max(known, key=abs)
            yield said("further", cm=_cm(abs(most) / per_cm), side="right" if most > 0 else "left")
        yield said("narrower", level=cut.level)
        return
    if not lacks_room:
        most = max(known, key=abs)
        inwards = most if cut.edge == "left" else -most
        # Rounding may take another half stitch.
        far = (abs(most) + 0.5) / per_cm
        yield said("move-them", cm=_cm(far), inwards=inwards > 0, edge=cut.edge)
    else:
        yield said("room")


def _cm(value: float) -> Amount:
    return Amount(ceil(value * 10 - 1e-9) / 10)


# ----------------------------------------------------------------- room


def _off(sized: SizedPiece, slot: SizedSlot) -> int | None:
    """By how many stitches the slot has to move to the right (negative: left) to lie within what is knitted about its row; None
    where it has no room, or would have to go across an opening."""
    found: list[int] = []
    for part in parts_at(sized, slot.row):
        low, high = _room(part, slot.row)
        if slot.last - slot.first <= high - low:
            found.append(max(low - slot.first, 0) + min(high - slot.last, 0))
    return min(found, key=abs, default=None)


def _room(part: InWork, row: int) -> tuple[int, int]:
    """The slots that a hole at that row may take."""
    first, last = part.about(row)
    left = part.sized.left if part.left is None else part.left.edge("right")
    right = part.sized.right if part.right is None else part.right.edge("left")
    return first + 1 + _reached(left, row), last - 1 - _reached(right, row)


def _reached(runs: Sequence[SizedRun], row: int) -> int:
    """Stitches inside the end stitch that are moved or filled from about a row."""
    about = (run for run in runs if run.way.kind == "fashioned" and any(row - 1 <= at <= row + 1 for at, by in run.changes() if by))
    return max((run.way.inset for run in about), default=0)
