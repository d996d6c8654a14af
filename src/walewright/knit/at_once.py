"""At once: shapings that overlap in some size, told in every size each by itself, as rows that a knitter ticks off side by side.

What overlaps is found for all sizes together, so that their texts keep one structure.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations

from walewright.knit import steps as st
from walewright.knit.fold import fold
from walewright.knit.merging import merged, rows_of
from walewright.knit.order import Group, GroupKey, Move, RowStretch
from walewright.knit.steps import Step
from walewright.report.said import said

IN_TURN = 24
"""Steps, repeats counted as one. Short rows of more are told end by end, for then their ends have nothing to do with each other."""

Crowd = frozenset[GroupKey]
"""Keys of the groups that are told together."""


def crowds(sizes: Sequence[RowStretch]) -> tuple[Crowd, ...]:
    """What goes on together in one stretch, `sizes` being the same stretch of each size: groups that overlap in one of them,
    and whatever falls between. Stretches worked several times are not counted by rows and have none."""
    found: list[set[GroupKey]] = []
    for rows in sizes:
        if rows.times == 1:
            found += [{a.key, b.key} for a, b in combinations(rows.groups, 2) if a.key != b.key and a.meets(b)]
    while _grown(found, sizes):
        pass
    crowded = (frozenset(keys) for keys in found if any(_several(rows, keys) for rows in sizes))
    return tuple(crowd for crowd in crowded if not all(_in_turn(rows, crowd) for rows in sizes))


def _in_turn(rows: RowStretch, crowd: Crowd) -> bool:
    """Whether it is only short rows, at both ends in turn, and short enough to be told in one order."""
    if not all(key[0].startswith("wedge ") for key in crowd):
        return False
    shapings = told(rows, crowd)
    return shapings is None or len(fold(tuple(merged(shapings)))) <= IN_TURN


def _grown(found: list[set[GroupKey]], sizes: Sequence[RowStretch]) -> bool:
    """Whether crowds had to be joined or to take in what falls between."""
    for one, other in combinations(found, 2):
        if one & other:
            one |= other
            found.remove(other)
            return True
    for keys in found:
        for rows in sizes:
            own = [g for g in rows.groups if g.key in keys]
            if not own:
                continue
            begin, end = min(g.start for g in own), max(g.last for g in own)
            wedges = {name for name, _ in keys if name.startswith("wedge ")}
            # Short rows are told whole, from the first hold to the return.
            more = {g.key for g in rows.groups if (g.start < end and begin < g.last) or g.key[0] in wedges} - keys
            if more:
                keys |= more
                return True
    return False


def _several(rows: RowStretch, keys: set[GroupKey]) -> bool:
    return len({_title(g.key) for g in rows.groups if g.key in keys}) > 1


# ----------------------------------------------------------------- one size's tracks


def told(rows: RowStretch, crowd: Crowd) -> st.Together | None:
    """The groups of `crowd` that move in the stretch, by tracks; None where there are none."""
    by_title: dict[st.Words, list[Group]] = {}
    for group in rows.groups:
        if group.key in crowd and any(rows.has(m) for m in group.moves):
            by_title.setdefault(_title(group.key), []).append(group)
    if not by_title:
        return None
    begin = max(rows.first_row, min(g.start for groups in by_title.values() for g in groups))
    made = {title: _steps(rows, groups, begin) for title, groups in by_title.items()}
    end = max(at for _, at in made.values())
    tracks = tuple(st.Track(title, (*steps, st.KnitRows(end - at)), origin=steps[-1].origin) for title, (steps, at) in made.items())
    return st.Together(begin, end, tracks, origin=tracks[0].origin)


def _steps(rows: RowStretch, groups: list[Group], begin: int) -> tuple[list[Step], int]:
    """A track's sentences from row `begin`, and the row where they end."""
    made: list[Step] = []
    at = begin
    for phrase, moves, group in _phrases(rows, groups, begin):
        if phrase is not None:
            start, repeat = phrase
            made += [st.KnitRows(start - at, origin=repeat.origin)] if start > at else []
            made.append(repeat)
            at = start + rows_of(repeat)
            continue
        rounds = _rounds(group, moves, at)
        if rounds:
            made += rounds
            at = moves[-1].row
            continue
        apart: list[Step] = []
        for move in moves:
            apart += [st.KnitRows(move.row - at, origin=move.step.origin)] if move.row > at else []
            apart.append(move.step)
            at = move.row
        made += fold(apart)
    return made, at


_Phrase = tuple[int, Step]
"""A repeat and the row where its first gap begins."""


def _phrases(rows: RowStretch, groups: list[Group], begin: int) -> Iterator[tuple[_Phrase | None, list[Move], Group | None]]:
    """Each group as its phrase, if it can be, or else as moves; all as moves where they overlap among themselves."""
    ordered = sorted(groups, key=lambda g: (g.start, g.last))
    if any(a.meets(b) for a, b in combinations(ordered, 2)):
        moves = [m for g in ordered for m in g.moves if rows.has(m)]
        yield None, sorted(moves, key=lambda m: (m.row, m.rank)), None
        return
    for group in ordered:
        own = [m for m in group.moves if rows.has(m)]
        repeat = group.repeat
        whole = len(own) == len(group.moves) and group.start >= begin
        if repeat is not None and whole and group.start + rows_of(repeat) <= rows.last_row:
            yield (group.start, repeat), [], group
        else:
            yield None, own, group


def _rounds(group: Group | None, moves: list[Move], at: int) -> list[Step]:
    """The last moves of a group that began before the stretch: those that are no full round, or have other rows before them,
    each as a round of its own, and then the full rounds; nothing where that cannot be said of them."""
    repeat = group.repeat if group is not None else None
    if group is None or not isinstance(repeat, st.Repeat) or tuple(moves) != group.moves[-len(moves) :]:
        return []
    body = repeat.body
    kinds = [isinstance(s, st.KnitRows) for s in body]
    if kinds != [True, False] * (len(body) // 2):
        return []
    each = len(body) // 2
    single = len(moves) % each
    first, begin = body[0], moves[single - 1].row if single else at
    if single < len(moves) and isinstance(first, st.KnitRows) and moves[single].row - begin != first.rows:
        single += each
    made: list[Step] = []
    for move in moves[:single]:
        made.append(st.Repeat((st.KnitRows(move.row - at, origin=move.step.origin), move.step), 1, origin=move.step.origin))
        at = move.row
    full = (len(moves) - single) // each
    return [*made, st.Repeat(body, full, origin=repeat.origin)] if full else made


def _title(key: GroupKey) -> st.Words:
    """What the knitter calls the track of a key."""
    name, _, rest = key[0].partition(" ")
    match name:
        case "gap":
            return rest.partition(" ")[2]
        case "outer":
            return said("edge-at", side=rest) if rest else said("outer-edge")
        case "wedge":
            return said("short-rows", side=rest.split()[-1])
    return said(_OTHERS.get(name, "other-work"))


_OTHERS = {
    "chart": "stitch-pattern",
    "stripes": "stripes",
    "mark": "marker-thread",
    "yarn": "yarn",
    "latch": "rib",
    "spread": "spread-loops",
    "slot": "slots",
}
