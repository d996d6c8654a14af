"""The surface that the pieces make as they are put together: edges of all copies, their corners, and what is glued to what.

Mutable, and only used within this stage. Corners that have come together are one in a union-find; the links of which it is made
are kept, so that it can be asked which seams make two corners meet.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Container, Sequence
from dataclasses import dataclass, field

from walewright.glue.model import Chain, EndAt, Place
from walewright.glue.rings import RingEdge
from walewright.record import record

Path = tuple[int, ...]
"""Numbers of edges, one after the other in the clockwise direction."""


@record
class SurfaceEdge:
    """An edge of one copy: from corner `begin` to corner `end`, the edge after it in its ring being number `after`."""

    ring: RingEdge
    owner: str
    copy: int
    copies: int
    begin: int
    end: int
    after: int

    @property
    def place(self) -> Place:
        return Place(self.owner, self.ring.edge, self.copy, self.copies, self.ring.cut)


@dataclass(slots=True)
class Surface:
    edges: list[SurfaceEdge] = field(default_factory=list)
    glued: dict[int, tuple[Path, Path, int]] = field(default_factory=dict)
    """Edge -> (its own chain, the chain it is glued to, number of the glueing)."""
    folded: set[int] = field(default_factory=set)
    """Edges that are closed upon themselves."""
    rings: list[tuple[str, int, int]] = field(default_factory=list)
    """(owner, copy, number of its first edge) of each ring; the first of a copy is its outer one."""
    _same: list[int] = field(default_factory=list)
    _links: dict[int, list[tuple[int, int]]] = field(default_factory=dict)
    """Corner -> (corner that it is glued to, number of the glueing)."""

    # -------------------------------------------------------------- building

    def add(self, owner: str, rings: Sequence[Sequence[RingEdge]], copies: int) -> None:
        """Puts all copies of a piece, or of a strip, on the table."""
        for copy in range(1, copies + 1):
            for ring in rings:
                first, corner = len(self.edges), len(self._same)
                count = len(ring)
                self._same += range(corner, corner + count)
                self.rings.append((owner, copy, first))
                for i, edge in enumerate(ring):
                    ends = corner + i, corner + (i + 1) % count
                    self.edges.append(SurfaceEdge(edge, owner, copy, copies, *ends, first + (i + 1) % count))
                    if edge.state == "drawn":
                        self.union(*ends, -1)

    def union(self, one: int, other: int, glueing: int) -> None:
        self._links.setdefault(one, []).append((other, glueing))
        self._links.setdefault(other, []).append((one, glueing))
        a, b = self.corner(one), self.corner(other)
        if a != b:
            self._same[max(a, b)] = min(a, b)

    def corner(self, number: int) -> int:
        """The one number for all corners that have come together with this one."""
        while self._same[number] != number:
            self._same[number] = self._same[self._same[number]]
            number = self._same[number]
        return number

    def glue(self, one: Path, other: Path, number: int) -> None:
        """Puts two chains together, both given clockwise: the beginning of the one meets the end of the other."""
        for own, across in ((one, other), (other, one)):
            for edge in own:
                self.glued[edge] = (own, across, number)
        self.union(self.edges[one[0]].begin, self.edges[other[-1]].end, number)
        self.union(self.edges[one[-1]].end, self.edges[other[0]].begin, number)

    def fold(self, edge: int, number: int) -> None:
        """Closes an edge upon itself: its two halves, or all of it drawn up. Its corners come together."""
        self.folded.add(edge)
        self.union(self.edges[edge].begin, self.edges[edge].end, number)

    # -------------------------------------------------------------- asking

    def meets(self, one: int, other: int) -> bool:
        """Whether edge `one` ends where edge `other` begins."""
        return self.corner(self.edges[one].end) == self.corner(self.edges[other].begin)

    def free(self, edge: int) -> bool:
        return edge not in self.glued and edge not in self.folded and self.edges[edge].ring.state != "drawn"

    def way(self, one: int, other: int, made: Container[int]) -> tuple[int, ...] | None:
        """The fewest of the glueings `made` that bring two corners together; None where they do not."""
        queue: deque[tuple[int, tuple[int, ...]]] = deque([(one, ())])
        seen = {one}
        while queue:
            at, by = queue.popleft()
            if at == other:
                return by
            for to, number in self._links.get(at, ()):
                if to not in seen and (number < 0 or number in made):
                    seen.add(to)
                    queue.append((to, (*by, number) if number >= 0 else by))
        return None

    # -------------------------------------------------------------- what is left

    def openings(self) -> list[Path]:
        """The rings into which the edges fall that are glued to nothing."""
        todo = dict.fromkeys(e for e in range(len(self.edges)) if self.free(e))
        found: list[Path] = []
        while todo:
            first = next(iter(todo))
            ring = [first]
            del todo[first]
            at = self._next_free(first)
            while at != first and at in todo:
                ring.append(at)
                del todo[at]
                at = self._next_free(at)
            found.append(tuple(ring))
        return found

    def next_free(self) -> dict[int, int]:
        """For each free edge the one that goes on where it ends."""
        return {e: self._next_free(e) for e in range(len(self.edges)) if self.free(e)}

    def free_between(self, one: int, other: int, most: int) -> Path | None:
        """The free edges that are walked from the end of one edge to the beginning of another; None where there are more than
        `most`, or one without a name."""
        found: list[int] = []
        at = self._next_free(one)
        while at != other and len(found) < most and self.edges[at].ring.edge:
            found.append(at)
            at = self._next_free(at)
        return tuple(found) if at == other else None

    def _next_free(self, edge: int) -> int:
        """The free edge that goes on where this one ends: round the corner, across every seam that comes together there."""
        at = self.edges[edge].after
        for _ in range(4 * len(self.edges)):
            if self.free(at):
                return at
            if at not in self.glued:
                at = self.edges[at].after
                continue
            own, across, _number = self.glued[at]
            place = own.index(at)
            # At the beginning of a chain the other one ends; inside it, its own edge before does.
            before = own[place - 1] if place else across[-1]
            at = self.edges[before].after
        raise AssertionError(f"no way round the corner behind {self.edges[edge].place.text}")

    def parts(self) -> int:
        """In how many parts the surface falls."""
        return len(self._components())

    def handles(self) -> int:
        """Handles of the surface: 0 for what can be laid out as a sphere with holes. Seams that cross make some."""
        corners = {self.corner(c) for e in self.edges for c in (e.begin, e.end)}
        chains = {tuple(sorted((own, across))) for own, across, _ in self.glued.values()}
        seams = sum(len(a) + len(b) - 1 for a, b in chains)
        free = sum(1 for e in range(len(self.edges)) if self.free(e))
        outer = len({(owner, copy) for owner, copy, _ in self.rings})
        faces = 2 * outer - len(self.rings)
        chi = len(corners) - (free + seams) + faces
        return (2 * self.parts() - len(self.openings()) - chi) // 2

    def _components(self) -> list[set[tuple[str, int]]]:
        joined: dict[tuple[str, int], set[tuple[str, int]]] = {(o, c): {(o, c)} for o, c, _ in self.rings}
        for own, across, _ in self.glued.values():
            one, other = (self._disc(path[0]) for path in (own, across))
            for disc in [self._disc(e) for e in (*own, *across)]:
                if joined[disc] is not joined[one]:
                    joined[one] |= joined[disc]
                    for member in joined[one]:
                        joined[member] = joined[one]
            assert joined[other] is joined[one]
        return list({id(s): s for s in joined.values()}.values())

    def _disc(self, edge: int) -> tuple[str, int]:
        return self.edges[edge].owner, self.edges[edge].copy

    def chain(self, path: Path) -> Chain:
        return tuple(self.edges[e].place for e in path)

    def first_end(self, edge: int) -> EndAt:
        return self.edges[edge].ring.first

    def last_end(self, edge: int) -> EndAt:
        return self.edges[edge].ring.last
