"""What is joined, in the order of work: edges that meet under one number, and what is done there in words of the guide."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import Literal

from walewright.design.model import Design
from walewright.figures.measures import name_of
from walewright.glue.model import EndAt, Glued, Place, Task, runs_along
from walewright.guide.model import edge_said
from walewright.record import record, replace
from walewright.report.said import Fact, Said, said
from walewright.trade.edge_names import OWN_TOPS, is_top, part_of_edge
from walewright.trade.joins import JoinWay


@record
class JoinedEdge:
    """An edge of a join, walked from the end with the dot."""

    place: Place
    begins: EndAt
    dotted: bool = True


@record
class Joint:
    """Edges that meet: `label` is "4" or "4a"; `sides` are what is put together, each a chain of edges."""

    number: int
    label: str
    sides: tuple[tuple[JoinedEdge, ...], ...]


@record
class Numbered:
    """A number and what is done there, in words of the guide; `origin` is the path of the statement that says so. `sewn`: edges are
    put together there, and nothing is hung on them. `labels`: how it stands at edges, "7" or "7a" and "7b"."""

    number: int
    what: Said
    origin: str
    sewn: bool = True
    labels: tuple[str, ...] = ()

    @property
    def shown(self) -> str:
        """As it stands beside words."""
        return labels_shown(self.labels) or str(self.number)


FEW = 2
"""Labels that are all said; of more in a row, the first and the last one."""


def labels_shown(labels: Sequence[str]) -> str:
    """Labels of one number as a reader finds them."""
    return ", ".join(labels) if len(labels) <= FEW else f"{labels[0]}\u2013{labels[-1]}"


def joined(design: Design, glued: Glued) -> tuple[tuple[Joint, ...], tuple[Numbered, ...]]:
    """The joints in the order of work. Seams of one join that follow each other have one number; so have the copies of a line."""
    joints: list[Joint] = []
    numbers: list[Numbered] = []
    named: list[Said] = []
    doing = [task for task in glued.order if task.kind in ("seam", "band", "piece", "ends")]
    for key, tasks in groupby(doing, key=lambda task: _alike(design, glued, task)):
        found = [sides for task in tasks for sides in _sides(glued, task)]
        if not found:
            continue
        number = len(numbers) + 1
        numbers.append(Numbered(number, _told(design, glued, key, found), _origin(design, key), key[0] in ("seam", "ends")))
        named.append(_edges_told(design, key, found))
        for at, sides in enumerate(found):
            # Within one copy no other edge can be meant.
            told_apart = len(found) > 1 and len({(e.place.owner, e.place.copy) for side in sides for e in side}) > 1
            joints.append(Joint(number, f"{number}{_letter(at) if told_apart else ''}", sides))
        labels = tuple(dict.fromkeys(joint.label for joint in joints if joint.number == number))
        numbers[-1] = replace(numbers[-1], labels=labels)
    # What several say by their pieces alone says which edges it means.
    often = Counter(one.what for one in numbers)
    told = (replace(one, what=edges) if often[one.what] > 1 else one for one, edges in zip(numbers, named, strict=True))
    return tuple(joints), tuple(told)


_Sides = tuple[tuple[JoinedEdge, ...], ...]


def _alike(design: Design, glued: Glued, task: Task) -> tuple[str, str, int]:
    if task.kind == "seam":
        return task.kind, "", glued.seams[task.number].join
    if task.kind == "ends":
        return task.kind, glued.ends[task.number].origin(design).path, -1
    return task.kind, task.name, -1


def _letter(at: int) -> str:
    return chr(ord("a") + at % 26)


def _sides(glued: Glued, task: Task) -> Iterator[_Sides]:
    """What a task puts together: once a seam, once a copy of what is hung on edges."""
    if task.kind == "seam":
        seam = glued.seams[task.number]
        meets = bool(seam.other)
        chains = [(seam.one, seam.one_begins), (seam.other, seam.other_begins)]
        yield tuple(
            tuple(JoinedEdge(place, begin, meets and at == 0) for at, (place, begin) in enumerate(zip(*chain, strict=True)))
            for chain in chains
            if chain[0]
        )
    elif task.kind == "ends":
        ends = glued.ends[task.number]
        yield (JoinedEdge(ends.one, "bottom"),), (JoinedEdge(ends.other, "bottom"),)
    else:
        for line in glued.lines_of(task.name):
            hung = tuple(JoinedEdge(place, end) for place, end in zip(line.along, line.left_ends, strict=True))
            yield hung, (JoinedEdge(Place(line.owner, "start", line.copy, line.copies), "left"),)


def _origin(design: Design, key: tuple[str, str, int]) -> str:
    kind, name, join = key
    if kind == "seam":
        return design.joins[join].origin.path
    if kind == "ends":
        return name
    if kind == "piece":
        return design.piece(name).origin.path
    return next(band.origin.path for band in design.bands if band.name == name)


def _told(design: Design, glued: Glued, key: tuple[str, str, int], found: Sequence[_Sides]) -> Said:
    kind, name, join = key
    if kind == "seam":
        way = _way(design, join, found)
        one, other = ([name_of(n) for n in dict.fromkeys(e.place.owner for e in _of_side(found, at))] for at in (0, -1))
        if len(found[0]) < 2:
            return said(_closed(way), piece=tuple(one))
        if one == other:
            copies = {e.place.copy for side in found[0] for e in side}
            return said("joined/itself" if len(copies) == 1 else "joined/next", one=tuple(one), way=way)
        return said("joined/seam", one=tuple(one), other=tuple(other), way=way)
    band = design.band(name)
    if kind == "ends":
        owners = dict.fromkeys(e.place.owner for sides in found for side in sides for e in side)
        whole = dict.fromkeys(of.part_of or of.name if (of := design.band(owner)) is not None else owner for owner in owners)
        return said("joined/ends", piece=tuple(name_of(n) for n in whole))
    runs = runs_along(design, glued, band) if band is not None else None
    return said("joined/hung", piece=name_of(name), runs=_named(runs) if runs is not None else "")


def _closed(way: JoinWay | Literal["open"]) -> str:
    """How an edge is closed upon itself."""
    return "joined/drawn-up" if way == "gathered" else "joined/folded"


def _of_side(found: Sequence[_Sides], at: int) -> list[JoinedEdge]:
    """The edges of the first sides of all that has one number, or of their last ones."""
    return [edge for sides in found for edge in sides[at]]


def _way(design: Design, join: int, found: Sequence[_Sides]) -> JoinWay | Literal["open"]:
    """How the edges are put together: open loops are sewn by no seam."""
    way = design.joins[join].way
    places = [
        edge.place for sides in found for side in sides for edge in side if design.strip(edge.place.owner, edge.place.edge) is None
    ]
    all_open = all(is_top(p.edge) and design.band(p.owner) is None and design.piece(p.owner).end_way == "waste" for p in places)
    return "open" if way == "sewn" and all_open else way


def _edges_told(design: Design, key: tuple[str, str, int], found: Sequence[_Sides]) -> Said:
    """What is joined, by its edges; without ends of strips, which are sewn on with them."""
    itself = len({edge.place.owner for at in (0, -1) for edge in _of_side(found, at)}) == 1
    one, other = (_by_edge(design, _of_side(found, at), itself) for at in (0, -1))
    way: JoinWay | Literal["open"] = _way(design, key[2], found) if key[0] == "seam" else "sewn"
    if len(found[0]) < 2:
        return said(_closed(way), piece=one)
    return said("joined/edges", one=one, other=other, way=way)


def _by_edge(design: Design, edges: Sequence[JoinedEdge], itself: bool) -> tuple[Said, ...]:
    """ "back side" where both sides are meant, else "back side left"; `itself`: the edges meet edges of their own piece."""
    places = [e.place for e in edges if design.strip(e.place.owner, e.place.edge) is None] or [e.place for e in edges]
    parts: dict[tuple[str, str], dict[str, None]] = {}
    for place in places:
        edge = OWN_TOPS.get(place.edge, place.edge) if itself else place.edge
        parts.setdefault((place.owner, part_of_edge(edge).name), {})[edge] = None
    told = ((owner, edge_said(next(iter(of)) if len(of) == 1 else name)) for (owner, name), of in parts.items())
    return tuple(said("joined/edge", piece=name_of(owner), edge=edge) for owner, edge in told)


def _named(runs: Said) -> Said:
    """Where a part of a band runs, with names as a reader sees them, and the trade's own edges in the reader's language."""
    return Said(runs.key, tuple((key, _seen(key, fact)) for key, fact in runs.facts))


def _seen(key: str, fact: Fact) -> Fact:
    if isinstance(fact, Said):
        return _named(fact)
    return edge_said(str(fact)) if key == "edge" else name_of(str(fact))
