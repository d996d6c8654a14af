"""Lines of edges hung on the bed side by side: of bands, and of pieces begun along edges.

From the left needle to the right, with the side to the knitter that is worn inside, every edge is walked clockwise; with the other
side, the other way round. Neighbours in a line are edges that a seam has made meet.
"""

from __future__ import annotations

from collections.abc import Container, Sequence
from itertools import pairwise

from walewright.design.model import DesignInSize, EdgeName, Origin
from walewright.glue.chains import Unit, clockwise, units
from walewright.glue.model import Face, facing, worn_of
from walewright.glue.surface import Path, Surface
from walewright.record import record


@record
class Hanging:
    """A band, or a piece begun along edges: what it is hung on, as the author wrote it, and which side faces the knitter."""

    owner: str
    along: tuple[EdgeName, ...]
    face: Face
    inside: bool
    """Whether that side is the one worn inside."""
    copies: int
    """0: as many as there are lines."""
    origin: Origin


@record
class HungCopy:
    """One copy of a hanging on its edges, clockwise."""

    hanging: Hanging
    copy: int
    path: Path

    @property
    def from_left(self) -> Path:
        """The edges from the left needle to the right."""
        return self.path if self.hanging.inside else self.path[::-1]


def hangings(at: DesignInSize) -> tuple[Hanging, ...]:
    """Pieces begun along edges, as often as in that size, then bands, in the order of the source."""
    found: list[Hanging] = []
    out: dict[str, Face] = {}
    """The side out of pieces begun along edges and of bands, which may be turned and have others hung on them."""
    for piece in at.design.pieces:
        if piece.start_along:
            worn = worn_of(at.design, piece.start_along, out)
            face = facing(at.design, worn, piece.fabric, piece.start_facing)
            copies, origin = at.of(piece.copies), piece.start_origin or piece.origin
            found.append(Hanging(piece.name, piece.start_along, face, face != worn, copies, origin))
            out[piece.name] = "purl" if purl_out(found[-1]) else "knit"
    for band in at.design.bands:
        worn = worn_of(at.design, band.along, out)
        face = facing(at.design, worn, at.design.edging(band.edging).fabric, band.facing)
        found.append(Hanging(band.name, band.along, face, face != worn, 0, band.origin))
        out[band.name] = "purl" if purl_out(found[-1]) else "knit"
    return tuple(found)


def purl_out(hanging: Hanging) -> bool:
    """Whether what is knitted on comes to be worn with its purl side out."""
    return not hanging.inside


def find(surface: Surface, along: Sequence[EdgeName], inside: bool, without: Container[int] = ()) -> Path | None:
    """The edges of a line, clockwise: the first copies that are free (and not among `without`) and follow each other; None where
    there are no such edges."""
    names = tuple(along) if inside else tuple(reversed(along))
    choices = [[u for u in units(surface, name) if not any(e in without for e in u.path)] for name in names]
    found = _following(surface, choices, ())
    return None if found is None else tuple(e for unit in found for e in clockwise(surface, unit))


def _following(surface: Surface, choices: Sequence[Sequence[Unit]], so_far: tuple[Unit, ...]) -> tuple[Unit, ...] | None:
    if len(so_far) == len(choices):
        return so_far
    taken = {e for unit in so_far for e in unit.path}
    for unit in choices[len(so_far)]:
        way = clockwise(surface, unit)
        if taken & set(way) or (so_far and not surface.meets(clockwise(surface, so_far[-1])[-1], way[0])):
            continue
        found = _following(surface, choices, (*so_far, unit))
        if found is not None:
            return found
    return None


def apart(surface: Surface, along: tuple[EdgeName, ...], inside: bool) -> tuple[EdgeName, EdgeName] | None:
    """The first two neighbours that do not meet, whichever copies are taken."""
    names = along if inside else tuple(reversed(along))
    for one, other in pairwise(names):
        here, there = (units(surface, n, used=True) for n in (one, other))
        ways = [(clockwise(surface, a), clockwise(surface, b)) for a in here for b in there]
        if not any(surface.meets(a[-1], b[0]) for a, b in ways if not set(a) & set(b)):
            return (one, other) if inside else (other, one)
    return None


def closed_by_itself(surface: Surface, path: Path) -> bool:
    """Whether the line is the whole ring of an opening or a slot within one piece: it can be hung all round, for the piece folds
    there."""
    first, last = surface.edges[path[0]], surface.edges[path[-1]]
    one_copy = len({(surface.edges[e].owner, surface.edges[e].copy) for e in path}) == 1
    return one_copy and first.begin == last.end
