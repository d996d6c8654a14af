"""Tracks of shaping: the changes of one edge, or of two alike, as groups of moves that can be printed as one phrase or,
when something else happens meanwhile, move by move."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import pairwise

from walewright.counted.model import SizedRun
from walewright.knit import steps as st
from walewright.knit.fold import fold
from walewright.knit.inside import shaped_inside
from walewright.knit.manners import EndsShaped
from walewright.knit.order import Group, Move, Rank
from walewright.record import record

BOTH: EndsShaped = "both ends"


def _wide(_: int) -> int:
    """Of what is nowhere too narrow for a tool."""
    return 1_000_000


@record
class ShapedEnds:
    """Which `ends` a run moves ("both ends", "left end", "right end"), and from which row on these are the ends of the part.
    `fewest` tells the fewest stitches that the part has about a row, before or after its moves."""

    ends: EndsShaped
    from_row: int = 0
    fewest: Callable[[int], int] = _wide
    prongs: int = 1
    """Of the widest tool at hand."""
    other: tuple[SizedRun, ...] = ()
    """Of both ends: the runs of the right one, where its lines within the piece lie."""
    early: int = 0
    """Rows before the scheduled one in which the carriage is at the end."""


def run_groups(track: str, run: SizedRun, number: int, ends: ShapedEnds, origin: str) -> Iterator[Group]:
    """The groups of run `number` of a row edge."""
    scheduled = at = run.from_row
    for index, phrase in enumerate(run.phrases):
        if phrase.times == 0 or run.across:
            continue
        rounds: list[tuple[int, list[Move], tuple[st.Step, ...]]] = []
        for _ in range(phrase.times):
            begin, moves, body = at, list[Move](), list[st.Step]()
            for gap, by in zip(phrase.gaps, phrase.by, strict=True):
                scheduled += gap
                room = scheduled - max(at, ends.from_row)
                for row, step in _changes(scheduled, by, run=run, number=number, at=ends, room=room, origin=origin):
                    if row > at:
                        body.append(st.KnitRows(row - at, origin=origin))
                    body.append(step)
                    moves.append(Move(row, Rank.SHAPE, step))
                    at = row
            # Gaps that are alike within a round are counted by themselves.
            rounds.append((begin, moves, fold(body) if len(phrase.gaps) > 2 else tuple(body)))
        # After a change worked first at one end, then at the other, the first round has a row less to knit: it stands alone.
        alone = 1 if len(rounds) > 1 and rounds[0][2] != rounds[1][2] else 0
        key = number * 100 + index * 2
        for part, some in ((0, rounds[:alone]), (1, rounds[alone:])):
            if some:
                moves = [m for _, made, _ in some for m in made]
                alike = all(body == some[0][2] for _, _, body in some)
                repeat = st.Repeat(some[0][2], len(some), origin=origin) if alike else None
                yield Group((track, key + part), some[0][0], moves[-1].row, tuple(moves), repeat)


def _changes(row: int, by: int, run: SizedRun, number: int, at: ShapedEnds, room: int, origin: str) -> list[tuple[int, st.Step]]:
    """When and how one change of the edge is made. Where hands need the carriage at the edge, two ends take two rows: the
    scheduled one and the one before, or, where there is no room before, the one after. Where there are fewer stitches than the
    tool has prongs, as at the tip of a part, a narrower one is taken."""
    ends = at.ends
    if run.way.inside:
        return [(row, step) for step in shaped_inside(by, run, at.other[number] if at.other else run, ends, at.prongs, origin)]
    fashioned = run.way.kind == "fashioned"
    inset = min(run.way.inset, at.fewest(row)) if fashioned else 0
    if by == -1 or by == -run.way.at_once:
        # One prong moved by two would leave the loop beside it on an idle needle: two stitches go one after the other then.
        return [(row, st.Decrease(ends, -by, inset if inset >= -by else 0, origin=origin))]
    if by == 1 and fashioned:
        # The gap is filled from the stitch beside those that are moved.
        return [(row, st.IncreaseFashioned(ends, max(1, min(run.way.inset, at.fewest(row) - 1)), origin=origin))]
    step: st.Step
    if by == 1:
        step = st.IncreaseAtCarriage(origin=origin)
    elif by < 0:
        step = st.CastOffAtCarriage(-by, origin=origin)
    else:
        step = st.CastOnAtCarriage(by, origin=origin)
    if ends != BOTH:
        return [(row - at.early, step)]
    return [(row - 1, step), (row, step)] if room >= 2 else [(row, step), (row + 1, step)]


def alike(left: SizedRun, right: SizedRun) -> bool:
    """Whether two edges' runs are the same work at the same rows wherever the carriage is, so that it is said once of both."""
    if (left.from_row, left.phrases, left.way, left.across) != (right.from_row, right.phrases, right.way, right.across):
        return False
    mirrored = [line.of for line in left.lines] == [line.of for line in right.lines]
    return mirrored and all(left.way.anywhere(by) for _, by in left.changes())


@record
class EdgeMark:
    """A place on the outer edges that nothing in the fabric shows: at `row` the edge `what` begins or, `end`, ends."""

    row: int
    what: str
    end: bool


def marks(runs: tuple[SizedRun, ...], met: frozenset[str], held: frozenset[int]) -> tuple[EdgeMark, ...]:
    """Where an edge that has to be found again (`met`: it is joined or picked up) begins above the start, or ends and no such
    edge begins, and nothing in the fabric shows it. From the rows `held` on the edge is held: it ends there by itself."""
    found: list[EdgeMark] = []
    edges = [run for run in runs if not run.across and run.to_row > run.from_row]
    for before, run in pairwise(edges):
        shown = any(p.gaps[0] == 0 and p.times for p in run.phrases)
        if run.name == before.name or shown or run.from_row == 0:
            continue
        if run.name in met:
            found.append(EdgeMark(run.from_row, run.name, end=False))
        elif before.name in met and run.from_row not in held:
            found.append(EdgeMark(run.from_row, before.name, end=True))
    return tuple(found)


def mark_groups(found: tuple[EdgeMark, ...], ends: EndsShaped, origin: str) -> Iterator[Group]:
    """A marker thread at `ends` of the row for each of them."""
    for number, mark in enumerate(found):
        move = Move(mark.row, Rank.MARK, st.MarkEdges(mark.what, ends, "end" if mark.end else "begin", origin=origin))
        yield Group((f"mark {ends}", number), mark.row, mark.row, (move,), None)
