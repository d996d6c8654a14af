"""Where a chart lies on the bed: per size the needles, the repeats, and what is at the centre mark."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator

from walewright.counted.model import SizedChart, SizedPiece
from walewright.counted.needles import last_row, meets_edge
from walewright.design.model import Chart, Design
from walewright.figures.chart_drawing import Centre
from walewright.figures.measures import name_of
from walewright.guide.model import Guide
from walewright.guide.numbers import sentence
from walewright.knit.operations import needle
from walewright.record import record
from walewright.sheet.model import Row, RowGroup, SizesTable, TableCell
from walewright.solve.model import Counts


@record
class ChartUse:
    """One place of a chart: piece by piece in every size, or None in a size that has it not."""

    piece: str
    sized: tuple[tuple[SizedPiece, SizedChart] | None, ...]


def uses(design: Design, counts: Counts, chart: Chart) -> tuple[ChartUse, ...]:
    """Every place where `chart` is worked, by piece, from the bottom up and from left to right."""
    made = []
    for piece in design.pieces:
        found = []
        for garment in counts.sizes:
            sized = garment.piece(piece.name)
            here = sorted((c for c in sized.charts if c.chart == chart.name), key=lambda c: (c.from_row, c.first))
            found.append([(sized, c) for c in here])
        for number in range(max((len(f) for f in found), default=0)):
            made.append(ChartUse(piece.name, tuple(f[number] if number < len(f) else None for f in found)))
    return tuple(made)


def column_right_of_centre(chart: Chart, sized: SizedChart) -> int:
    """The column (from 0) that lies on needle R 1, the first right of the centre mark; it may be none of a motif's."""
    before, repeat, after = chart.before, chart.repeat, chart.after
    if not repeat:
        return -sized.start
    if sized.first <= 0 < sized.first + before:
        return -sized.first
    if sized.last - after < 0 <= sized.last:
        return before + repeat - (sized.last - after + 1)
    return before + (-sized.start) % repeat


def centres(guide: Guide, chart: Chart, found: tuple[ChartUse, ...]) -> tuple[Centre, ...]:
    """The lines of the chart that lie on the bed's centre mark, in any size and piece; of a motif its own middle."""
    if not chart.repeat:
        return (Centre(chart.width / 2, guide.say("chart/middle")),)
    lines = {column_right_of_centre(chart, at[1]) for use in found for at in use.sized if at is not None}
    # Of several each wedge would want the same words: a fact beside the chart has them.
    word = guide.say("chart/centre-mark") if len(lines) == 1 else ""
    return tuple(Centre(column, word) for column in sorted(lines))


def fixed(chart: Chart, found: tuple[ChartUse, ...]) -> int | None:
    """The slot of the first column, where each column is knitted by one needle and by the same one everywhere; else None."""
    slots = {_first_slot(chart, at[1]) for use in found for at in use.sized if at is not None}
    return slots.pop() if len(slots) == 1 else None


def _first_slot(chart: Chart, sized: SizedChart) -> int | None:
    """In one place: None where columns lie there more than once, or begin in the midst of the repeat."""
    if not chart.repeat:
        return sized.start
    once = sized.repeats == 1 and sized.last - sized.first + 1 == chart.width and sized.start == sized.first + chart.before
    return sized.first if once else None


def mark(guide: Guide, chart: Chart, first: int) -> tuple[Centre, ...]:
    """The bed's centre mark on a chart whose first column is on slot `first`, if it lies on it at all."""
    return (Centre(-first, guide.say("chart/centre-mark")),) if 0 <= -first <= chart.width else ()


def places(guide: Guide, chart: Chart, found: tuple[ChartUse, ...], sizes: tuple[str, ...]) -> SizesTable | None:
    """The table, one group a place; pieces that are alike share one. None when the chart is not worked."""
    names = _names(guide, found)
    if len({tuple(_across(guide, chart, use)) for use in found}) == 1 and len({tuple(_up(guide, use)) for use in found}) > 1:
        # What is the same everywhere is said once.
        made = [
            *_groups(guide, names, [tuple(_up(guide, use)) for use in found]),
            RowGroup(guide.say("places/across"), tuple(_across(guide, chart, found[0]))),
        ]
    else:
        made = list(_groups(guide, names, [(*_up(guide, use), *_across(guide, chart, use)) for use in found]))
    return SizesTable(guide.say("places"), sizes, tuple(made), guide.say("places/heading")) if made else None


def _names(guide: Guide, found: tuple[ChartUse, ...]) -> list[str]:
    """The piece of each use, with a number where the piece works the chart more than once."""
    total, done = Counter(use.piece for use in found), Counter[str]()
    made = []
    for use in found:
        done[use.piece] += 1
        name, nth = name_of(use.piece), guide.ordinal(done[use.piece])
        made.append(guide.say("places/time", piece=name, ordinal=nth) if total[use.piece] > 1 else name)
    return made


def _groups(guide: Guide, names: list[str], rows: list[tuple[Row, ...]]) -> Iterator[RowGroup]:
    """One group for all whose rows are alike."""
    groups: dict[tuple[Row, ...], list[str]] = {}
    for name, of in zip(names, rows, strict=True):
        groups.setdefault(of, []).append(name)
    yield from (RowGroup(sentence(guide.listed(named)), of) for of, named in groups.items())


def _row(use: ChartUse, label: str, told: Callable[[SizedPiece, SizedChart], str], note: str = "") -> Row:
    return Row(label, tuple(TableCell(told(*at) if at is not None else "–") for at in use.sized), note=note)


def _up(guide: Guide, use: ChartUse) -> Iterator[Row]:
    yield _row(use, guide.say("places/from"), lambda p, c: str(p.counter(c.from_row)))
    yield _row(use, guide.say("places/to"), lambda p, c: str(p.counter(last_row(p, c.first, c.last, c.from_row, c.to_row))))


def _across(guide: Guide, chart: Chart, use: ChartUse) -> Iterator[Row]:
    def row(key: str, told: Callable[[SizedPiece, SizedChart], str], note: str = "") -> Row:
        return _row(use, guide.say(f"places/{key}"), told, note)

    yield row("first", lambda p, c: needle(c.first))
    yield row("last", lambda p, c: needle(c.last))
    if chart.repeat:
        panel = any(at is not None and at[1].area == "panel" for at in use.sized)
        if not panel or any(at is not None and meets_edge(*at) for at in use.sized):
            yield row("edge", lambda p, c: str(c.edge), guide.say("places/edge-note/panel" if panel else "places/edge-note"))
        yield row("start", lambda p, c: needle(c.start), guide.say("places/start-note", column=chart.before + 1))
        yield row("repeats", lambda p, c: str(c.repeats))
        yield row("centre", lambda p, c: _between(chart, column_right_of_centre(chart, c)), guide.say("places/centre-note"))
    else:
        yield row("middle", lambda p, c: _middle(c))


def _between(chart: Chart, right: int) -> str:
    """The numbers of the columns on L 1 and R 1."""
    left = right - 1
    if right == chart.before:
        left = chart.before + chart.repeat - 1
    return f"{left + 1} | {right + 1}"


def _middle(sized: SizedChart) -> str:
    middle = (sized.first + sized.last + 1) // 2
    if (sized.last - sized.first) % 2 == 0:
        return needle((sized.first + sized.last) // 2)
    return f"{needle(middle - 1)} | {needle(middle)}"
