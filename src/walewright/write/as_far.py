"""As far as an earlier section goes the same way: what a section does up to a reading of the counter, where an earlier one does the
same up to there, however its steps are cut. A front is the back up to its neck, though the back's runs of shaping end elsewhere.
"""

from __future__ import annotations

from collections.abc import Sequence

from walewright.knit import steps as st
from walewright.knit.merging import one_by_one
from walewright.knit.steps import Now, Step, StepBlock
from walewright.record import record, replace
from walewright.write.align import Column
from walewright.write.model import Paragraph, Section, Sentence
from walewright.write.row_by_row import SHAPING
from walewright.write.tally import RowTally, counted
from walewright.write.units import SaidUnit, numbered, units_of

FEWEST = 3
"""Steps from which on it is easier to look them up than to read them again."""

_SAME_WAY = frozenset(kind.__name__ for kind in (*SHAPING, st.KnitRows, st.KnitTo, st.Now, st.Repeat, st.MarkEdges, st.Together))
"""Kinds of steps of which it can be said; what a line says besides would be lost."""


@record
class AsFar:
    """Units `begin` to before `end` of a section do what section number `of` does from its unit `since` on, step number `first`,
    to within its units before `until`; `within` which step that is in each size, empty where no one step can be named."""

    begin: int
    end: int
    of: int
    since: int
    until: int
    first: int
    within: tuple[int | None, ...] = ()


@record
class _Move:
    """What is done when the counter reads `row`; None before it is set."""

    row: int | None
    step: Step


@record
class _Way:
    """What a size does in a section: all moves, and what is true on the way, each with the number of moves before it."""

    moves: tuple[_Move, ...]
    stands: tuple[tuple[Now, int], ...]


def as_far(columns: Sequence[Column[StepBlock]], sections: Sequence[Section]) -> tuple[tuple[AsFar, ...], ...]:
    """For each section, how far each earlier one goes the same way."""
    if len(sections) < 2:
        return ((),) * len(sections)
    ways = [tuple(None if block is None else _way(block) for block in column) for column in columns]
    units = [tuple(units_of(numbered(section))) for section in sections]
    done = [_moves_done(own, way) for own, way in zip(units, ways, strict=True)]
    found: list[tuple[AsFar, ...]] = []
    for here in range(len(sections)):
        earlier = range(0 if sections[here].joining else here)
        there = (_alike(of, ways, units, done, here) for of in earlier if not sections[of].joining)
        found.append(tuple(one for one in there if one is not None))
    return tuple(found)


def _way(block: StepBlock) -> _Way:
    tally = RowTally()
    moves: list[_Move] = []
    stands: list[tuple[Now, int]] = []
    for step in one_by_one([step for _, steps in block.paragraphs for step in steps]):
        if isinstance(step, st.Now):
            stands.append((step, len(moves)))
        elif not isinstance(step, st.KnitRows | st.KnitTo | st.Say | st.EdgeIs):
            moves.append(_Move(tally.row, step))
        tally = counted(tally, step)
    return _Way(tuple(moves), tuple(stands))


MovesDone = tuple[int | None, ...]
"""How many moves each size has done; None in a size that does not work the section."""


def _moves_done(units: Sequence[SaidUnit], ways: Sequence[_Way | None]) -> dict[int, MovesDone]:
    """Of units that say what is true then, in all sizes: how many moves are done after each."""
    passed = [0] * len(ways)
    found: dict[int, MovesDone] = {}
    for at, unit in enumerate(units):
        state = unit.sentences[-1].state
        if not state:
            continue
        done: list[int | None] = []
        for size, (now, way) in enumerate(zip(state, ways, strict=True)):
            stands = () if now is None or way is None else way.stands
            where = next((n for n in range(passed[size], len(stands)) if _same(stands[n][0], now)), None)
            if where is not None:
                passed[size] = where
            done.append(None if where is None else stands[where][1])
        if all((count is None) == (way is None) for count, way in zip(done, ways, strict=True)):
            found[at] = tuple(done)
    return found


def _same(one: Now, other: Now | None) -> bool:
    return other is not None and (one.stitches, one.row, one.side) == (other.stitches, other.row, other.side)


def _alike(
    of: int,
    ways: Sequence[tuple[_Way | None, ...]],
    units: Sequence[tuple[SaidUnit, ...]],
    done: Sequence[dict[int, MovesDone]],
    here: int,
) -> AsFar | None:
    """The longest stretch of a section that section number `of` has the same, from where both say what is true."""
    both = tuple(zip(ways[here], ways[of], strict=True))
    if any(one is not None and other is None for one, other in both):
        return None
    ends = [at for at in done[here] if _stops(units[here][at]) and _same_to(units[here][at], done[here][at], both)]
    for end in reversed(ends):
        # Where both say last that the same is true: what stands before that may be the same line for line.
        begin, since = next(
            (
                (at + 1, there + 1)
                for at in reversed(done[here])
                if at < end
                for there in done[of]
                if done[of][there] == done[here][at]
            ),
            (end, 0),
        )
        while begin < end and since < len(units[of]) and units[here][begin].key == units[of][since].key:
            begin, since = begin + 1, since + 1
        told = units[here][begin : end + 1]
        first = next((s.numbers[0] for unit in units[of][since:] for s in unit.sentences if s.numbers), 0)
        if first and sum(unit.steps for unit in told) >= FEWEST and all(map(_sayable, told)):
            until = _reaching(units[of], units[here][end], since)
            within = _within(units[of][since:until], units[here][end])
            return AsFar(begin, end + 1, of, since=since, until=until, first=first, within=within)
    return None


def _reaching(units: Sequence[SaidUnit], end: SaidUnit, since: int) -> int:
    """Behind the unit with which every size has come as far as the unit `end` says."""
    left = {size: now.row for size, now in enumerate(end.sentences[-1].state) if now is not None}
    for at in range(since, len(units)):
        # A size that skips the unit has not come farther by it.
        for size, now in enumerate(units[at].sentences[-1].state):
            if now is not None and now.row >= left.get(size, now.row):
                left.pop(size, None)
        if not left:
            return at + 1
    return len(units)


def _within(units: Sequence[SaidUnit], end: SaidUnit) -> tuple[int | None, ...]:
    """In which step each size comes as far as the unit `end` says; empty where that is one of several for a size."""
    found: list[int | None] = []
    for size, now in enumerate(end.sentences[-1].state):
        steps = () if now is None else _steps_to(units, size, now.row)
        if now is not None and len(steps) != 1:
            return ()
        found.append(steps[0] if steps else None)
    return tuple(found)


def _steps_to(units: Sequence[SaidUnit], size: int, row: int) -> tuple[int, ...]:
    """The steps of a size after the last one that says that the counter is not as far yet, up to the first one that says it is."""
    steps: list[int] = []
    for sentence in (s for unit in units for s in unit.sentences if size in s.sizes):
        steps += sentence.numbers
        now = sentence.state[size] if sentence.state else None
        if now is not None and now.row >= row:
            return tuple(steps)
        if now is not None:
            steps.clear()
    return ()


def _stops(unit: SaidUnit) -> bool:
    """Whether it knits plain rows to a reading of the counter in every size, and says what is true there."""
    (*_, last) = unit.sentences
    return len(unit.sentences) == 1 and last.kinds == ("KnitTo", "Now")


def _same_to(unit: SaidUnit, done: MovesDone, both: Sequence[tuple[_Way | None, _Way | None]]) -> bool:
    """Whether all that is done before the unit's reading is the same, and nothing else is done before it there."""
    for now, count, (one, other) in zip(unit.sentences[-1].state, done, both, strict=True):
        if one is None or other is None or now is None or count is None:
            continue
        if one.moves[:count] != other.moves[:count]:
            return False
        if count < len(other.moves) and (other.moves[count].row or 0) < now.row:
            return False
    return True


def _sayable(unit: SaidUnit) -> bool:
    return all({kind.partition(" ")[0] for kind in s.kinds} <= _SAME_WAY for s in unit.sentences)


def cut(section: Section, far: AsFar, line: Sentence) -> Section:
    """The section with the `line` in the place of what it says."""
    units = tuple(units_of(section))
    made: list[Paragraph] = []
    opened = -1
    for at, unit in enumerate(units):
        own = section.paragraphs[unit.paragraph]
        if far.begin < at < far.end:
            continue
        goes_on = at == far.end and unit.paragraph == units[at - 1].paragraph and not own.only
        told = (line,) if at == far.begin else unit.sentences
        if at == far.begin and opened != unit.paragraph and made and not made[-1].only and not own.title:
            goes_on = True
        if not goes_on and (opened != unit.paragraph or (at == far.begin and own.only)):
            made.append(replace(own, sentences=()) if at != far.begin else Paragraph(own.title, "", ()))
        opened = unit.paragraph
        made[-1] = replace(made[-1], sentences=(*made[-1].sentences, *told))
        if at == far.begin and units[far.end - 1].paragraph != unit.paragraph:
            opened = -1
    return replace(section, paragraphs=tuple(replace(p, table=any(s.cells for s in p.sentences)) for p in made))
