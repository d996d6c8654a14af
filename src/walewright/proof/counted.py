"""What the counts say beside what the bed knitted, number by number: equal, if the plan did what the counts say.

Every width is compared at every row, edge by edge from the centre mark, so that what was shaped at the wrong edge, in the wrong row
or in the wrong part is found though the sums are right. A move may come one row before or after its scheduled row: at the
carriage's side and at the other it has to (see `SizedRun`).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.bed import Course, KnitFabric
from walewright.bed.refusals import slot_of
from walewright.counted import CountedPiece
from walewright.counted.model import SizedOpening, SizedPiece, SizedRun, SizedSlot, SizedWedge
from walewright.counted.needles import ends, moves
from walewright.counted.parts import open_at
from walewright.counted.ribs import LatchedRib, ribs
from walewright.knit.operations import Side
from walewright.proof.charted import charts
from walewright.proof.inside import lines
from walewright.proof.latched import columns, latched
from walewright.proof.told import Told
from walewright.report.said import Fact, Said, said
from walewright.trade.edgings import EDGINGS

SIDES: tuple[Side, Side] = ("left", "right")


def as_counted(of: CountedPiece, fabric: KnitFabric) -> Told:
    """(where, counted, knitted) for every width and row of the counts, and all that lies within them."""
    sized = of.sized
    yield said("at/start"), sized.start - len(sized.out(0)), fabric.stitches_at(0)
    yield said("at/rows"), sized.counter(sized.rows) + _end_rows(of), fabric.rows
    yield from _knitted_on(of, fabric)
    yield from _outer_edges(sized, fabric)
    yield from _no_gaps(sized, fabric)
    for opening in sized.openings:
        yield from _opening(sized, opening, fabric)
    for slot in sized.slots:
        yield from _slot(sized, slot, fabric)
    for wedge in sized.wedges:
        called = next(own.called for own in of.piece.wedges if own.name == wedge.name)
        yield from _wedge(sized, wedge, called, fabric)
    yield from lines(sized, fabric)
    yield from _out(sized, fabric)
    yield from _fabrics(of, fabric)
    yield from latched(of, fabric)
    yield from charts(of.design, sized, fabric)


def _end_rows(of: CountedPiece) -> int:
    """All rows of the edging at the end: of one that is folded those of both its layers."""
    if of.piece.end_edging is None:
        return 0
    facts = EDGINGS[of.design.edging(of.piece.end_edging).kind]
    edging = of.design.edging(of.piece.end_edging)
    fold = 1 if facts.turned_in or (facts.folded and edging.fold_tension) else 0
    return of.sized.end_rows * (2 if facts.folded else 1) + fold


def _knitted_on(of: CountedPiece, fabric: KnitFabric) -> Told:
    """The edging at the end: on all stitches of the last row, as wide from its first row to its last, its rib latched up."""
    cloth = of.end_edging
    if cloth is None:
        return
    first, last = ends(of.sized, of.sized.rows)
    begun = of.sized.counter(of.sized.rows)
    for row in (begun + 1, fabric.rows):
        for side, slot in zip(SIDES, (first, last), strict=True):
            end = fabric.outer_end(row, side)
            yield said("at/of-centre", row=row, side=side), _reach(side, slot), _reach(side, end) if end is not None else 0
    # A pattern of the piece ends below it: each of its rows is knitted on all needles, in its own yarn.
    stitches, yarns = last - first + 1, {cloth.yarn, *(yarn for yarn, _ in cloth.stripes)}
    rows_of = [fabric.passes(row) for row in range(begun + 1, fabric.rows + 1)]
    sound = sum(sum(c.count for c in row) == stitches and all(c.yarn in yarns for c in row) for row in rows_of)
    yield said("at/edging-rows"), len(rows_of), sound
    facts = EDGINGS[of.design.edging(of.piece.end_edging or "").kind]
    if facts.folded:
        first_row = {x for course in fabric.passes(begun + 1) for x in _of_row(course)}
        yield said("at/fold", row=begun + 1), len(first_row), len(first_row & set(_hung_up(fabric)))
    turned = 1 if facts.turned_in else 0
    rib = LatchedRib(cloth, of.sized.rows, of.sized.rows, (first, last))
    if cloth.rib_every and rib.begin is not None:
        rows = range(begun + turned + 1, begun + turned + of.sized.end_rows + 1)
        yield said("at/latched-rows", first=rows[0], last=rows[-1], fabric=cloth.name), *columns(fabric, rows, rib)


def _hung_up(fabric: KnitFabric) -> Iterator[int]:
    """The loops that were hung again at the last fold."""
    course = next((c for c in reversed(fabric.courses) if c.kind == "hang feet"), None)
    for x in _of_row(course) if course is not None else ():
        yield from fabric.parents_of(x)


# ----------------------------------------------------------------- edges


def rows_once(sized: SizedPiece) -> dict[int, int]:
    """Row of the counts -> what the counter read, row after row, those of a repeat once."""
    return {row: sized.counter(row) for row in range(1, sized.rows + 1)}


def _reach(side: Side, slot: int) -> int:
    """Needles from the centre mark to that slot at one side of it."""
    return -slot if side == "left" else slot + 1


def _positions(runs: Sequence[SizedRun], rows: int) -> list[int]:
    """By how much the edge has moved when row n is knitted, n = 0 .. rows + 1."""
    at = moves(runs)
    found = [0]
    for row in range(rows + 1):
        found.append(found[-1] + at[row])
    return found


def _outer_edges(sized: SizedPiece, fabric: KnitFabric) -> Told:
    begins = sized.start_left, sized.start - sized.start_left
    for side, begin, runs in (("left", begins[0], sized.left), ("right", begins[1], sized.right)):
        at: Side = "left" if side == "left" else "right"
        positions = _positions(runs, sized.rows)
        for row, counter in rows_once(sized).items():
            end = fabric.outer_end(counter, at)
            if end is None:
                yield said("at/edge-rows", row=counter, side=side), 1, 0
            else:
                knitted = _reach(at, end)
                yield said("at/of-centre", row=counter, side=side), begin + _near(positions, row, knitted - begin), knitted
        for number, run in enumerate(runs):
            counter = sized.counter(run.to_row)
            end = fabric.outer_end(counter, at)
            if run.across:
                if not _stitches_across(sized, number):
                    # As many needles as before: nothing is taken off.
                    continue
                hung = fabric.hung_back(counter)
                reached = 0 if hung is None else _reach(at, hung.new[0] if at == "left" else hung.new[1])
                yield said("at/hung-back", row=counter, side=side), begin + positions[run.to_row + 1], reached
            elif end is not None:
                # At the end of a run all its moves are made, and the next run's are still to come.
                yield said("at/of-centre", row=counter, side=side), begin + positions[run.to_row], _reach(at, end)


def _stitches_across(sized: SizedPiece, number: int) -> int:
    """By how many stitches the width changes where loops are hung back across it."""
    return sum(by for runs in (sized.left, sized.right) for _, by in runs[number].changes())


def _near(positions: list[int], row: int, knitted: int) -> int:
    """The position counted at that row, or one row before or after it, if that is what was knitted."""
    return knitted if knitted in positions[max(row - 1, 0) : row + 2] else positions[row]


def _no_gaps(sized: SizedPiece, fabric: KnitFabric) -> Told:
    """A needle without a stitch between the ends of a row, but where it is out of work, or a chart has it held for that row."""
    rests = {sized.counter(row) + 1: sized.out(row) for out in sized.needles_out for row in range(out.from_row, out.to_row)}
    for course in fabric.passes():
        charted = any(sized.within(c.from_row, c.to_row, course.counter) for c in sized.charts)
        made = fabric.stitches_in(course) if charted else course.count
        wide = course.last - course.first + 1 - len(rests.get(course.counter, ()))
        if made != wide:
            yield said("at/within-row", row=course.counter), wide, made


def _out(sized: SizedPiece, fabric: KnitFabric) -> Told:
    """Needles that are out of work: no stitch of any row is on them meanwhile, and one of every row after they have come back."""
    for out in sized.needles_out:
        rows = range(sized.counter(out.from_row) + 1, sized.counter(out.to_row) + 1)
        on = sum(fabric.slots[x] in out.slots for row in rows for c in fabric.passes(row) for x in _of_row(c))
        yield said("at/needles-out", first=rows.start, last=rows.stop - 1), 0, on
        if out.to_row == sized.rows:
            continue
        back = sum(fabric.slots[x] in out.slots for c in fabric.passes(rows.stop) for x in _of_row(c))
        yield said("at/needles-back", row=rows.stop), len(out.slots), back


def _of_row(course: Course) -> range:
    return range(course.first_loop, course.first_loop + course.count)


# ----------------------------------------------------------------- openings and slots


def gap_at(sized: SizedPiece, opening: SizedOpening, row: int, fabric: KnitFabric) -> int | None:
    """Needles between the two parts beside an opening at that row, None where there are not two parts."""
    left, right = (_beside(sized, opening, row, fabric, side) for side in SIDES)
    return None if left is None or right is None else right - left - 1


def _beside(sized: SizedPiece, opening: SizedOpening, row: int, fabric: KnitFabric, side: Side) -> int | None:
    """Where the part at that side of an opening ends beside it in row `row`."""
    number = next(n for n, gap in enumerate(open_at(sized, row - 1)) if gap.name == opening.name)
    return fabric.inner_end(sized.counter(row), side, number)


def _opening(sized: SizedPiece, opening: SizedOpening, fabric: KnitFabric) -> Told:
    to_row = opening.to_row
    for part, begin in (("left", opening.first - 1), ("right", opening.first + opening.flat)):
        side: Side = "left" if part == "left" else "right"
        away = 1 if part == "left" else -1
        positions = _positions(opening.edge(side), to_row)
        for row in range(opening.row + 1, to_row + 1):
            end = _beside(sized, opening, row, fabric, side)
            where: dict[str, Fact] = {"opening": opening.name, "part": part, "row": sized.counter(row)}
            if end is None:
                yield said("at/part-rows", **where), 1, 0
                continue
            moved = (end - begin) * away
            exact = row == to_row
            near = positions[row] if exact else _near(positions, row, moved)
            yield said("at/part-last", **where), begin + away * near, end
    for row in (opening.row, to_row + 1):
        parts = len(open_at(sized, row - 1)) + 1
        yield said("at/parts", opening=opening.name, row=sized.counter(row)), parts, fabric.parts_at(sized.counter(row))
    gap = gap_at(sized, opening, to_row, fabric)
    yield said("at/opening", opening=opening.name), opening.width, -1 if gap is None else gap
    centre = sum(e.count for e in fabric.edge(f"{opening.name} centre") if e.live == (opening.taken == "waste"))
    yield said("at/opening-start", opening=opening.name), opening.flat, centre
    if opening.rejoins:
        above = sum(edge.count for edge in fabric.edge(f"{opening.name} upper"))
        yield said("at/opening-above", opening=opening.name), opening.width, above


def _slot(sized: SizedPiece, slot: SizedSlot, fabric: KnitFabric) -> Told:
    yield from hole(slot, sized.counter(slot.row), fabric)


def hole(slot: SizedSlot, counter: int, fabric: KnitFabric) -> Told:
    """Of a slot, a buttonhole or an eyelet that is made when the counter reads so."""
    needles = slot.stitches
    where: dict[str, Fact] = {"slot": slot.name, "first": slot_of(slot.first), "last": slot_of(slot.last), "row": counter}
    if slot.taken == "eyelet":
        bars = sum(1 for bar in fabric.bars if (bar.counter, bar.slot) == (counter + 1, slot.first))
        yield said("at/slot-empty", **where), 1, bars
        return
    yield said("at/slot-cast-on", **where), needles, _cast_on_again(fabric, counter, slot)
    if slot.taken == "waste":
        lower = [fabric.slots[point[0]] for edge in fabric.edge(slot.name) if edge.live for point in edge.points]
        placed = sum(1 for at, wanted in zip(lower, range(slot.first, slot.last + 1), strict=False) if at == wanted)
        yield said("at/slot-on-waste", **where), needles, placed if len(lower) == needles else len(lower)
        rows = {fabric.course_of(point[0]).counter for edge in fabric.edge(slot.name) for point in edge.points}
        yield said("at/slot-row", **where), counter, max(rows, default=-1)
    else:
        closed = sum(course.count for course in _worked(fabric, counter, slot) if course.kind == "close")
        yield said("at/slot-closed", **where), needles, closed


def cast_on_again(sized: SizedPiece, slot: SizedSlot, fabric: KnitFabric) -> int:
    """Stitches cast on with a length of yarn of their own on a slot's needles, in its row."""
    return _cast_on_again(fabric, sized.counter(slot.row), slot)


def _cast_on_again(fabric: KnitFabric, counter: int, slot: SizedSlot) -> int:
    return sum(course.count for course in _worked(fabric, counter, slot) if course.apart and course.cast_on == "e-wrap")


def _worked(fabric: KnitFabric, counter: int, slot: SizedSlot) -> Iterator[Course]:
    """What was made on exactly those needles when the counter read so."""
    return (c for c in fabric.courses if (c.counter, c.first, c.last) == (counter, slot.first, slot.last))


# ----------------------------------------------------------------- wedges


def rows_by_group(wedge: SizedWedge) -> tuple[int, ...]:
    """Rows that the stitches of each group knit between the wedge's rows, from the outermost group inwards. Beside a group held in
    and let out again there are 4 more rows than in the group outside it, else 2."""
    return tuple((4 * i + 2) if wedge.kind == "both" else 2 * (i + 1) for i in range(len(wedge.groups)))


def _wedge(sized: SizedPiece, wedge: SizedWedge, called: Said, fabric: KnitFabric) -> Told:
    span = wedge.to_row - wedge.from_row
    again = next((r for r in sized.repeats if r.from_row <= wedge.from_row and wedge.to_row <= r.to_row), None)
    for time in range(1 if again is None else again.times):
        after = sized.counter(wedge.from_row) + (0 if again is None else time * (again.to_row - again.from_row))
        for side in SIDES:
            if wedge.edge in ("both", side):
                yield from _held(wedge, called, fabric, side, after=after, to=after + span, late_groups=_late(sized, wedge, side))


def _late(sized: SizedPiece, wedge: SizedWedge, side: Side) -> int:
    """Groups of a left edge that are held over the whole width, with the carriage far from it, and come back in a part
    that begins with the carriage beside it: they miss a row."""
    partings = [o.row for o in sized.openings if wedge.from_row < o.row < wedge.to_row and not open_at(sized, o.row - 1)]
    if side != "left" or not partings:
        return 0
    return (partings[0] - wedge.from_row) // 2


def _held(wedge: SizedWedge, called: Said, fabric: KnitFabric, side: Side, after: int, to: int, late_groups: int) -> Told:
    where: dict[str, Fact] = {"wedge": called, "side": side, "first": after + 1, "last": to}
    yield said("at/wedge-reach", **where), 1 if late_groups else 2, fabric.edge_rows(side, after, to)
    at = fabric.outer_end(after + 1, side)
    if at is None or at != fabric.outer_end(to, side):
        return
    inwards = 1 if side == "left" else -1
    knits = zip((wedge.rest, *wedge.groups), (2, *rows_by_group(wedge)), strict=True)
    for number, (group, usual) in enumerate(knits):
        rows = usual - (number <= late_groups and late_groups > 0)
        knitted = [fabric.rows_in_wale(at + inwards * i, after, to) for i in range(group)]
        yield said("at/wedge-group", **where, stitches=group, needle=slot_of(at)), rows * group, sum(knitted)
        if knitted and min(knitted) != max(knitted):
            yield said("at/wedge-fewest", **where), rows, min(knitted)
        at += inwards * group


# ----------------------------------------------------------------- fabrics


def _fabrics(of: CountedPiece, fabric: KnitFabric) -> Told:
    """Yarn and tension of every row, and of a latched zone its wales."""
    wrong = 0
    for row, counter in rows_once(of.sized).items():
        yarns, tension = of.yarns(row), of.fabric(row).tension
        wrong += any(c.yarn not in yarns or c.tension != tension for c in fabric.passes(counter))
    yield said("at/other-yarn"), 0, wrong
    for rib in ribs(of):
        for course in fabric.passes(of.sized.counter(rib.high)) if rib.zone is not None else ():
            wales = {slot for slot in range(course.first + 1, course.last) if rib.has(slot)}
            latched_up = {
                fabric.slots[loop]
                for loop in range(course.first_loop, course.first_loop + course.count)
                if fabric.faces[loop] and rib.over(fabric.slots[loop])
            }
            where = said("at/latched-wales", row=course.counter, fabric=rib.fabric.name)
            yield where, len(wales), len(wales & latched_up) - len(latched_up - wales)
