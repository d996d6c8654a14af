"""Which side faces the knitter when an edge is hung: so that the right side of what is knitted on comes outside, or as the author
says."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.model import Design, EdgeName
from walewright.glue.model import Face

_OTHER: dict[Face, Face] = {"purl": "knit", "knit": "purl"}


def right_side(design: Design, fabric: str) -> Face:
    """The side of a fabric that is worn outside."""
    return "purl" if design.fabric(fabric).right_side == "purl" else "knit"


def facing(design: Design, worn: Face, fabric: str, said: str = "") -> Face:
    """The side of a piece, worn with its side `worn` out, that is to the knitter while `fabric` is knitted on. What is knitted
    always has its purl side to the knitter. `said`: "right" or "wrong" side facing, in the author's words."""
    if said:
        return worn if said == "right" else _OTHER[worn]
    return worn if right_side(design, fabric) == "purl" else _OTHER[worn]


def worn_of(design: Design, edges: tuple[EdgeName, ...], out: Mapping[str, Face]) -> Face:
    """The side out of the pieces that these edges belong to; `out`: of those that were hung on others."""
    piece = design.piece(edges[0].piece)
    return out.get(piece.name) or right_side(design, piece.fabric)


def start_facing(design: Design, piece: str) -> Face:
    """The side of a piece to the knitter while its first row is rehung for the edging at its start."""
    own = design.piece(piece)
    assert own.start_edging is not None
    return facing(design, right_side(design, own.fabric), design.edging(own.start_edging).fabric)
