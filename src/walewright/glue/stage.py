"""The entry of this stage: the pieces of a design put together."""

from __future__ import annotations

from collections.abc import Container, Sequence

from walewright.design.model import Design, DesignInSize
from walewright.glue import findings
from walewright.glue.chains import units
from walewright.glue.edged_starts import edged_starts
from walewright.glue.ends import parts_in_line, sewn_ends
from walewright.glue.groups import alike, merged, worked_otherwise
from walewright.glue.joins import Joining, overhanging, resolve
from walewright.glue.lines import Hanging, HungCopy, find, hangings, purl_out
from walewright.glue.model import EndsSewn, Face, Glued, GluedSizes, HangingLine, Seam, WornOpening, right_side
from walewright.glue.order import Ordered, ordered, with_ends
from walewright.glue.proposals import with_proposals
from walewright.glue.rings import rings, strip
from walewright.glue.surface import Path, Surface
from walewright.glue.unlike import unlike, with_lines_named
from walewright.glue.unresolved import unresolved
from walewright.report.model import Diagnostic


def glue(design: Design) -> tuple[GluedSizes | None, tuple[Diagnostic, ...]]:
    """The garment, put together as its joins, bands and starts along edges say, and what there is to say about it. None where
    something is left open, used twice or cannot be hung in some size. It is asked once for all sizes with the same copies."""
    sizes = alike(design)
    made, told = zip(*(_in_sizes_like(design.at(some[0])) for some in sizes), strict=True)
    found = tuple(glued for glued in made if glued is not None)
    said_of = merged(design, tuple(zip(sizes, told, strict=True)))
    if len(found) < len(made):
        return None, said_of
    apart = tuple(worked_otherwise(design, sizes, found))
    return (None if apart else GluedSizes(found, sizes)), (*said_of, *apart)


def _in_sizes_like(at: DesignInSize) -> tuple[Glued | None, tuple[Diagnostic, ...]]:
    made, told, surface, lines = _attempt(at)

    def attempt(other: Design) -> tuple[Diagnostic, ...]:
        return _attempt(other.at(at.number))[1]

    told = with_lines_named(at.design, told, surface, lines, attempt)
    return made, with_proposals(at.design, told, hangings(at), surface, attempt)


def _attempt(at: DesignInSize) -> tuple[Glued | None, tuple[Diagnostic, ...], Surface, tuple[HungCopy, ...]]:
    design, hung = at.design, hangings(at)
    surface = Surface()
    begun = {h.owner: h for h in hung}
    for piece in design.pieces:
        out = purl_out(begun[piece.name]) if piece.name in begun else right_side(design, piece.fabric) == "purl"
        surface.add(piece.name, rings(design, piece, out), at.of(piece.copies))
    joining = Joining(surface)
    lines: list[HungCopy] = []
    own: dict[tuple[str, int], int] = {}
    _put_together(design, joining, [h for h in hung if h.copies], lines, own)
    _hang_bands(design, joining, hung, lines, own)
    overhanging(design, joining)
    told = [*unresolved(design, joining, hung, lines), *findings.twisted_seams(design, joining)]
    told += findings.in_doubt(design, joining)
    told += unlike(surface, lines)
    told += edged_starts(design, hung)
    if told:
        return None, tuple(told), surface, tuple(lines)
    seams = len(joining.found)
    ends = sewn_ends(design, surface, lines, _meant_free(design, surface))
    work = ordered(design, surface, joining.found, lines, own)
    told += findings.shut_lines(design, joining, work)
    told += findings.left_open(design, surface)
    told += findings.left_over(at, joining)
    told += findings.mixed_copies(surface, lines)
    if not told and surface.handles():
        told += findings.crossed(design)
    if told:
        return None, tuple(told), surface, tuple(lines)
    named = (*findings.named_for_other_side(design, surface, lines), *findings.half_joined(design, joining))
    strips, late = _in_seams(design, joining, work, _zipped(surface, seams, _meant_free(design, surface)))
    before = len(ends)
    ends = (*ends, *(pair for pair, _ in late), *parts_in_line(design, surface, _meant_free(design, surface)))
    work = with_ends(design, surface, work, ends, {before + n: seam for n, (_, seam) in enumerate(late)})
    warned = (*findings.not_mirrored(design, surface, lines), *named)
    return _glued(design, joining, lines, work, strips, ends), warned, surface, tuple(lines)


def _put_together(
    design: Design, joining: Joining, begun: Sequence[Hanging], lines: list[HungCopy], own: dict[tuple[str, int], int]
) -> None:
    """Joins and pieces begun along edges, until nothing more can be done: each may be what another waits for."""
    shared = False
    while True:
        moved = resolve(design, joining, shared)
        for hanging in begun:
            moved = _hang_pieces(joining, hanging, lines, own) or moved
        if not moved and shared:
            return
        shared = not moved


def _hang_pieces(joining: Joining, hanging: Hanging, lines: list[HungCopy], own: dict[tuple[str, int], int]) -> bool:
    surface, moved = joining.surface, False
    for copy in range(1, hanging.copies + 1):
        if (hanging.owner, copy) in own:
            continue
        path = find(surface, hanging.along, hanging.inside)
        if path is None:
            continue
        _hang(joining, HungCopy(hanging, copy, path), lines, own)
        moved = True
    return moved


def _hang_bands(
    design: Design, joining: Joining, hung: Sequence[Hanging], lines: list[HungCopy], own: dict[tuple[str, int], int]
) -> None:
    """Each band on as many lines as there are: one for each copy of its pieces; and then the joins that name its ends."""
    surface = joining.surface
    for hanging in (h for h in hung if not h.copies):
        paths: list[Path] = []
        while (path := find(surface, hanging.along, hanging.inside, {e for p in paths for e in p})) is not None:
            paths.append(path)
        surface.add(hanging.owner, strip(purl_out(hanging)), len(paths))
        for copy, path in enumerate(paths, 1):
            _hang(joining, HungCopy(hanging, copy, path), lines, own)
        _put_together(design, joining, [h for h in hung if h.copies], lines, own)


def _hang(joining: Joining, line: HungCopy, lines: list[HungCopy], own: dict[tuple[str, int], int]) -> None:
    key = line.hanging.owner, line.copy
    start = next(e for e, x in enumerate(joining.surface.edges) if (x.owner, x.copy) == key and x.ring.edge == "start")
    own[key] = _LINES + len(lines)
    joining.surface.glue(line.path, (start,), own[key])
    lines.append(line)


_LINES = 1_000_000
"""Glueings of lines are numbered from here on, those of joins from 0."""


Zips = dict[int, dict[int, Path]]
"""Seam -> corner at its end -> the ends of two strips that lie in line with it there."""


def _meant_free(design: Design, surface: Surface) -> frozenset[int]:
    """The edges that the author means to stay free."""
    return frozenset(e for name in design.free for unit in units(surface, name, used=True) for e in unit.path)


def _zipped(surface: Surface, seams: int, free: Container[int]) -> Zips:
    """The ends of strips that lie in line with a seam are sewn together in it, unless they are meant to stay `free`."""
    found: Zips = {}
    moved = True
    while moved:
        moved = False
        for ring in surface.openings():
            for one, other in zip(ring, (*ring[1:], ring[0]), strict=True):
                if one == other or {surface.edges[e].ring.state for e in (one, other)} != {"strip"}:
                    continue
                if one in free or other in free:
                    continue
                at = surface.corner(surface.edges[one].end)
                number = next((n for n in _ending_at(surface, at) if n < seams), None)
                if number is None:
                    continue
                found.setdefault(number, {})[at] = (one, other)
                surface.glue((one,), (other,), _ZIPS)
                moved = True
                break
            if moved:
                break
    return found


_ZIPS = 2_000_000


def _in_seams(design: Design, joining: Joining, work: Ordered, zips: Zips) -> tuple[Zips, tuple[tuple[Path, int], ...]]:
    """The strips whose ends are sewn on in a seam, and, with the seam, those that are sewn by themselves: where one of them is
    knitted after it, or it is made on the bed."""
    there: Zips = {}
    late: list[tuple[Path, int]] = []
    for seam, ends in zips.items():
        linked = design.joins[joining.found[seam].join].way == "linked"
        for corner, pair in ends.items():
            if not linked and _all_there(work, joining.surface, seam, pair):
                there.setdefault(seam, {})[corner] = pair
            else:
                late.append((pair, seam))
    return there, tuple(late)


def _ending_at(surface: Surface, corner: int) -> list[int]:
    """Seams that have an end at a corner, in their order."""
    ends = [
        number
        for own, _, number in surface.glued.values()
        if own
        and number >= 0
        and corner in (surface.corner(surface.edges[own[0]].begin), surface.corner(surface.edges[own[-1]].end))
    ]
    return sorted(set(ends))


# ----------------------------------------------------------------- the result


def _glued(
    design: Design,
    joining: Joining,
    lines: Sequence[HungCopy],
    work: Ordered,
    strips: Zips,
    ends: Sequence[Path],
) -> Glued:
    surface = joining.surface
    seams: list[Seam] = []
    for number, g in enumerate(joining.found):
        across = g.other[::-1]
        corners = surface.corner(surface.edges[g.one[0]].begin), surface.corner(surface.edges[g.one[-1]].end)
        over = [strips.get(number, {}).get(corner, ()) for corner in corners]
        one, other = (tuple(e for e in path if e not in g.beyond) for path in (g.one, across))
        beyond = [tuple(e for e in ends if e in g.beyond) for ends in ((*g.one[:1], *across[:1]), (*g.one[-1:], *across[-1:]))]
        seams.append(
            Seam(
                join=g.join,
                one=surface.chain(one),
                other=surface.chain(other),
                one_begins=tuple(surface.first_end(e) for e in one),
                other_begins=tuple(surface.last_end(e) for e in other),
                origin=design.joins[g.join].origin,
                over=(surface.chain((*beyond[0], *over[0])), surface.chain((*beyond[1], *over[1]))),
                beyond=any(beyond),
            )
        )
    openings = tuple(WornOpening(surface.chain(ring)) for ring in surface.openings())
    made = tuple(_line(surface, line, lines, work) for line in lines)
    sewn = tuple(EndsSewn(*surface.chain(pair)) for pair in ends)
    return Glued(tuple(seams), made, openings, order=work.tasks, parts=surface.parts(), worn=_worn(design, lines), ends=sewn)


def _all_there(work: Ordered, surface: Surface, seam: int, strips: Path) -> bool:
    """Whether the strips are knitted before the seam is made, so that it can go on along their ends."""
    made = next((at for at, task in enumerate(work.tasks) if task.kind == "seam" and task.number == seam), len(work.tasks))
    later = {task.name for task in work.tasks[made:] if task.kind != "seam"}
    return not any(surface.edges[e].owner in later for e in strips)


def _worn(design: Design, lines: Sequence[HungCopy]) -> tuple[tuple[str, Face], ...]:
    hung: dict[str, Face] = {line.hanging.owner: "purl" if purl_out(line.hanging) else "knit" for line in lines}
    return tuple({**{p.name: right_side(design, p.fabric) for p in design.pieces}, **hung}.items())


def _line(surface: Surface, line: HungCopy, lines: Sequence[HungCopy], work: Ordered) -> HangingLine:
    key = line.hanging.owner, line.copy
    ends = [surface.first_end(e) if line.hanging.inside else surface.last_end(e) for e in line.from_left]
    return HangingLine(
        owner=line.hanging.owner,
        copy=line.copy,
        copies=sum(1 for other in lines if other.hanging.owner == line.hanging.owner),
        along=surface.chain(line.from_left),
        left_ends=tuple(ends),
        facing=line.hanging.face,
        origin=line.hanging.origin,
        needs=work.needs.get(key, ()),
        spares=work.spares.get(key, ()),
    )
