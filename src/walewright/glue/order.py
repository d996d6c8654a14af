"""The order of work: pieces, seams, bands and the author's steps as they are done.

Seams follow the author's order. A line is hung as soon as its neighbours meet; a seam that would close it to a ring waits until it
is knitted, as the second shoulder waits for a neckband.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from walewright.design.model import Design
from walewright.glue.joins import Glueing
from walewright.glue.lines import HungCopy, closed_by_itself
from walewright.glue.model import Task
from walewright.glue.rings import ALONG_ROWS
from walewright.glue.surface import Path, Surface
from walewright.record import record, replace


@record
class Ordered:
    """The tasks; for each line, by (owner, copy), the seams that it needs and those that wait for it; the lines that can never
    be hung, each with the seams that close it too soon."""

    tasks: tuple[Task, ...]
    needs: dict[tuple[str, int], tuple[int, ...]]
    spares: dict[tuple[str, int], tuple[int, ...]]
    shut: tuple[tuple[HungCopy, tuple[int, ...]], ...]


@dataclass(slots=True)
class _Working:
    design: Design
    surface: Surface
    glueings: Sequence[Glueing]
    lines: list[HungCopy]
    own: dict[tuple[str, int], int]
    """Line -> the number of its own glueing, which counts as made once it is hung."""
    made: set[int] = field(default_factory=set)
    tasks: list[Task] = field(default_factory=list)
    waiting: list[int] = field(default_factory=list)
    needs: dict[tuple[str, int], tuple[int, ...]] = field(default_factory=dict)
    spares: dict[tuple[str, int], list[int]] = field(default_factory=dict)
    ahead: list[int] = field(default_factory=list)
    """The seams up to the author's next step, in the author's order: these and no others may change places."""

    def key(self, line: HungCopy) -> tuple[str, int]:
        return line.hanging.owner, line.copy

    def neighbours(self, line: HungCopy) -> list[tuple[int, int]]:
        """Pairs of corners that have to have come together."""
        edges = self.surface.edges
        return [(edges[a].end, edges[b].begin) for a, b in pairwise(line.path)]

    def open(self, line: HungCopy, made: set[int]) -> bool:
        """Whether the line has two ends."""
        if closed_by_itself(self.surface, line.path):
            return True
        return self.surface.way(*self.ends(line), made) is None

    def ends(self, line: HungCopy) -> tuple[int, int]:
        """The corners where the line begins and ends."""
        return self.surface.edges[line.path[0]].begin, self.surface.edges[line.path[-1]].end

    def meeting(self, line: HungCopy, made: set[int]) -> bool:
        return all(self.surface.way(a, b, made) is not None for a, b in self.neighbours(line))

    # -------------------------------------------------------------- doing

    def hang_what_can_be(self) -> None:
        """Every owner all of whose copies can be hung."""
        for owner in dict.fromkeys(line.hanging.owner for line in self.lines):
            copies = [line for line in self.lines if line.hanging.owner == owner]
            if all(self._knitted(line) and self.meeting(line, self.made) and self.open(line, self.made) for line in copies):
                self._hang(owner, copies)
                self.hang_what_can_be()
                return

    def _knitted(self, line: HungCopy) -> bool:
        """Whether the pieces that the line lies on are there: one of them may be hung on others itself."""
        pending = {other.hanging.owner for other in self.lines}
        return not any(self.surface.edges[e].owner in pending for e in line.path)

    def _hang(self, owner: str, copies: Sequence[HungCopy]) -> None:
        everything = set(range(len(self.glueings))) | set(self.own.values())
        for line in copies:
            found = [self.surface.way(a, b, self.made) or () for a, b in self.neighbours(line)]
            self.needs[self.key(line)] = tuple(dict.fromkeys(n for way in found for n in way if n < len(self.glueings)))
            closed = self.surface.way(*self.ends(line), everything) if not closed_by_itself(self.surface, line.path) else None
            self.spares[self.key(line)] = [n for n in closed or () if n < len(self.glueings) and n not in self.made]
        self.lines = [line for line in self.lines if line.hanging.owner != owner]
        self.made |= {self.own[self.key(line)] for line in copies}
        self.tasks += _knit(self.design, owner)

    def seam(self, number: int) -> None:
        """The seam now, or, if it would close a line that can still be hung without it, after that line, and so if the line that is
        hung next does not need it. A seam along several edges waits for those that make them one line, and one of a piece that is
        still to be hung on others for that piece."""
        if self._waits(number):
            self.waiting.append(number)
            return
        self._make(number)
        self._what_waited()

    def _waits(self, number: int) -> bool:
        return not self._ready(number) or any(self._closes(number, line) for line in self.lines) or self._needless(number)

    def _needless(self, number: int) -> bool:
        """Whether a line is hung before the author's next step that this seam is nothing to. What would close a line comes when its
        author says."""
        needs = self._needs_of_next()
        return bool(needs) and number not in needs and not any(self._shuts(number, line) for line in self.lines)

    def _shuts(self, number: int, line: HungCopy) -> bool:
        others = set(range(len(self.glueings))) - {number} | set(self.own.values())
        known = self.made | (self._needed(line, others) or set())
        return self.open(line, known) and not self.open(line, known | {number})

    def _needs_of_next(self) -> set[int]:
        """The seams still to be made for the lines that are the first to be hung if the author's order is gone through; nothing
        where that is none before the author's next step."""
        todo = [n for n in self.ahead if n not in self.made]
        owners = dict.fromkeys(line.hanging.owner for line in self.lines)
        for known in range(1, len(todo) + 1):
            among = self.made | set(todo[:known])
            for owner in owners:
                needs = self._needs_among([line for line in self.lines if line.hanging.owner == owner], among)
                if needs is not None and not any(self._held_up(n, owner) for n in needs):
                    return needs
        return set()

    def _held_up(self, number: int, owner: str) -> bool:
        """Whether a seam waits for another owner than the one that needs it."""
        others = [line for line in self.lines if line.hanging.owner != owner]
        both = (*self.glueings[number].one, *self.glueings[number].other)
        of = {self.surface.edges[e].owner for e in both}
        return any(line.hanging.owner in of or self._closes(number, line) for line in others)

    def before_step(self) -> None:
        """What waits for nothing but its turn is done before the author's step."""
        self.ahead = []
        self._what_waited()

    def _needs_among(self, copies: Sequence[HungCopy], among: set[int]) -> set[int] | None:
        """Of these seams the ones without which no line of an owner can be hung, with those that make their edges one line; None
        where some is missing."""
        edges, needs = self.surface.edges, set[int]()
        ways = [self._needed(line, among) if self._knitted(line) else None for line in copies]
        left = [n for way in ways for n in way or ()]
        while left and None not in ways:
            number = left.pop()
            if number in needs or number in self.made:
                continue
            needs.add(number)
            paths = (self.glueings[number].one, self.glueings[number].other)
            for a, b in (pair for path in paths for pair in pairwise(path)):
                way = self.surface.way(edges[a].end, edges[b].begin, among - {number})
                ways.append(None if way is None else set(way))
                left += way or ()
        return None if None in ways or not all(self.open(line, self.made | needs) for line in copies) else needs

    def _make(self, number: int) -> None:
        self.made.add(number)
        self.tasks.append(Task("seam", number=number))
        self.hang_what_can_be()

    def _ready(self, number: int) -> bool:
        """Whether all its pieces are knitted, and the edges of each side follow each other."""
        edges, pending = self.surface.edges, {line.hanging.owner for line in self.lines}
        sides = [path for path in (self.glueings[number].one, self.glueings[number].other) if path]
        return not any(edges[e].owner in pending for path in sides for e in path) and all(
            self.surface.way(edges[a].end, edges[b].begin, self.made) is not None for path in sides for a, b in pairwise(path)
        )

    def _closes(self, number: int, line: HungCopy) -> bool:
        """Whether the line has to be hung before this seam, and may be."""
        others = set(range(len(self.glueings))) - {number} | set(self.own.values())
        needs = self._needed(line, others)
        if needs is None or not self.open(line, self.made | needs) or self.open(line, self.made | needs | {number}):
            return False
        later = {n for n in needs - self.made if n < len(self.glueings) and self.glueings[n].join > self.glueings[number].join}
        # The author's order holds, but that of two shoulders, or of two raglan lines, either may come first.
        return all(self._kind(number) == self._kind(n) for n in later)

    def _kind(self, number: int) -> frozenset[bool]:
        """Whether a seam lies along rows, stitches, or both."""
        both = (*self.glueings[number].one, *self.glueings[number].other)
        return frozenset(self.surface.edges[e].ring.state in ALONG_ROWS for e in both)

    def _needed(self, line: HungCopy, among: set[int]) -> set[int] | None:
        """Of these the seams that make the neighbours of a line meet; None where they do not."""
        ways = [self.surface.way(a, b, among) for a, b in self.neighbours(line)]
        return None if None in ways else {n for way in ways for n in way or ()}

    def _what_waited(self) -> None:
        for number in list(self.waiting):
            if number in self.waiting and not self._waits(number):
                self.waiting.remove(number)
                self._make(number)
                self._what_waited()


def _of_join(glueings: Sequence[Glueing], join: int) -> list[int]:
    return [n for n, glueing in enumerate(glueings) if glueing.join == join]


def _knit(design: Design, owner: str) -> list[Task]:
    piece = next((p for p in design.pieces if p.name == owner), None)
    if piece is None:
        return [Task("band", owner)]
    edging = design.edging(piece.start_edging) if piece.start_edging else None
    return [Task("piece", owner), *([Task("edging", owner)] if edging is not None and edging.when == "after" else [])]


def ordered(
    design: Design,
    surface: Surface,
    glueings: Sequence[Glueing],
    lines: Sequence[HungCopy],
    own: dict[tuple[str, int], int],
) -> Ordered:
    """The whole work in one order. `own` numbers the glueing of each line, behind those of the seams."""
    work = _Working(design, surface, glueings, list(lines), own)
    hung = {line.hanging.owner for line in lines}
    for piece in design.pieces:
        if piece.name not in hung:
            work.tasks += _knit(design, piece.name)
    # What hangs on pieces alone is knitted with them: the author's first step may be of all that is knitted.
    work.hang_what_can_be()
    steps = _steps_before(design)
    work.tasks += [Task("step", number=step) for step in steps.get(0, ())]
    for number in range(len(design.joins)):
        if not number or steps.get(number):
            until = min((n for n in steps if n > number), default=len(design.joins))
            work.ahead = [n for join in range(number, until) for n in _of_join(glueings, join)]
        for seam in _first_needed(work, _of_join(glueings, number)):
            work.seam(seam)
        if steps.get(number + 1) or number + 1 == len(design.joins):
            work.before_step()
        work.tasks += [Task("step", number=step) for step in steps.get(number + 1, ())]
    shut = tuple((line, _closing(work, line)) for line in work.lines)
    for number in list(work.waiting):
        work.tasks.append(Task("seam", number=number))
    return Ordered(tuple(work.tasks), work.needs, {k: tuple(dict.fromkeys(v)) for k, v in work.spares.items()}, shut)


def with_ends(
    design: Design, surface: Surface, work: Ordered, ends: Sequence[Path], in_line: Mapping[int, int] | None = None
) -> Ordered:
    """The same work with each two `ends` of strips sewn together when both are knitted, those of one band after all its parts, and
    after the seam that they lie `in_line` with."""
    tasks = list(work.tasks)
    whole = {band.name: band.part_of or band.name for band in design.bands}
    for number in reversed(range(len(ends))):
        of = {whole.get(owner, owner) for owner in (surface.edges[e].owner for e in ends[number])}
        seam = Task("seam", number=(in_line or {}).get(number, -1))
        last = max(at for at, task in enumerate(tasks) if task == seam or (task.name and whole.get(task.name, task.name) in of))
        tasks.insert(last + 1, Task("ends", number=number))
    return replace(work, tasks=tuple(tasks))


def _steps_before(design: Design) -> dict[int, list[int]]:
    """Steps of the author's by how many joins come before them."""
    found: dict[int, list[int]] = {}
    for number in range(len(design.making_up)):
        before = design.joins_before[number] if number < len(design.joins_before) else len(design.joins)
        found.setdefault(before, []).append(number)
    return found


def _first_needed(work: _Working, seams: list[int]) -> list[int]:
    """The seams of one join, those that some line needs before those that it does not."""
    made = work.made | set(seams)
    needed: set[int] = set()
    for line in work.lines:
        for a, b in work.neighbours(line):
            needed |= set(work.surface.way(a, b, made) or ())
    return sorted(seams, key=lambda n: n not in needed)


def _closing(work: _Working, line: HungCopy) -> tuple[int, ...]:
    """The seams that bring the two ends of a line together."""
    way = work.surface.way(*work.ends(line), work.made | set(work.waiting))
    return tuple(n for n in way or () if n < len(work.glueings))
