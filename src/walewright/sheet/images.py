"""Mirror images, in the order in which they are printed: what of one holds for another is told where it stands first."""

from __future__ import annotations

from collections.abc import Sequence

from walewright.design.model import Piece
from walewright.write.model import Section


def images(pieces: Sequence[Piece], sections: Sequence[Section]) -> dict[str, str]:
    """The pieces that come after one whose mirror images they are, each with the name of the first of those. The source may have
    described the later one: pages stand in the order of work."""
    order = [section.name for section in sections]
    printed = sorted((p for p in pieces if p.name in order), key=lambda p: order.index(p.name))
    found: dict[str, str] = {}
    for number, piece in enumerate(printed):
        turned = [p.name for p in printed[:number] if piece.mirror_of == p.name or p.mirror_of == piece.name]
        if turned:
            found[piece.name] = turned[0]
    return found
