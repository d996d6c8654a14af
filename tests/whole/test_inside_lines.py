"""Pieces shaped along lines within them, from source to paper: drawn at random, and looked at stitch by stitch."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from random import Random

import pytest

from tests.draws import few_of
from tests.whole.garment import SHIPPED
from walewright.bed.loops import LoopKind
from walewright.counted import inside
from walewright.counted.model import SizedRun
from walewright.design import Changes
from walewright.knit import operations as op
from walewright.pipeline import Outcome, compile
from walewright.proof.inside import lines as told_lines
from walewright.report.model import Severity
from walewright.trade.shaping import rows_inside

HEAD = """pattern "Darts"
sizes S M L
    half 44 48 53 cm
machine fine
    prongs 1 2 {prongs}
yarn wool "wool", 50 g = 150 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = {width:g} cm by {height:g} cm, 9 g
"""


def proven(text: str) -> Outcome:
    """The outcome of a source that is proven and read back in every size."""
    made = compile(text, "darts.wale", SHIPPED, Changes())
    assert [d for d in made.diagnostics if d.severity is Severity.ERROR] == []
    assert made.proof is not None
    return made


def drawn(seed: int) -> str:
    """A piece that is taken in and let out along lines, at both edges or at one."""
    dice = Random(seed)
    head = HEAD.format(prongs=dice.choice((3, 5, 7, 10)), width=dice.uniform(13, 24), height=dice.uniform(13, 20))
    odd = ", centre stitch" if dice.random() < 0.3 else ""
    start = dice.choice(("half wide", "half / 2 left to half / 2 right of centre", "half * 0.7 left to half * 0.3 right of centre"))
    if odd or dice.random() < 0.5:
        start = "half wide"
    body = [f"piece front in plain{odd}", "levels hem 0 cm, hip 5 cm, low 22 cm, high 25 cm, full 45 cm, top 50 cm"]
    body.append(f"start {start} {dice.choice(('with e-wrap', 'on waste yarn'))}")
    by, back = dice.uniform(1, 4), dice.uniform(1, 4)
    # Both edges have their lines on their own sides of the centre line, also where the start does not lie about it.
    aside = start == "half * 0.7 left to half * 0.3 right of centre" and dice.random() < 0.5
    for edge in ("edges",) if aside or (start == "half wide" and dice.random() < 0.6) else ("left edge", "right edge"):
        inner = dice.uniform(0.1, 0.2) if start == "half wide" else 0.0
        near = dice.choice((f"half * {inner:.2f} from centre", f"half * {0.45 - inner:.2f} from the edge"))
        if start != "half wide":
            near = f"{dice.uniform(0.12, 0.2):.2f} * half from the edge"
        also = dice.choice(("", f" and {dice.uniform(0, 2):.1f} cm from the edge"))
        if also and "from the edge" not in near and dice.random() < 0.5:
            also += f" and half * {inner / 2:.2f} from centre"
        if aside:
            near, also = f"half * {dice.uniform(0.02, 0.12):.2f} from centre", ""
        body += [
            f"{edge} straight to hip",
            f"{edge} slope by -{by:.1f} cm at low, shaped {near}{also}",
            f"{edge} straight to high",
            f"{edge} slope by {back:.1f} cm at full, shaped {near}",
        ]
    body.append(f"end {dice.choice(('cast off', 'cast off sewn'))}")
    text = body[0] + "\n" + "".join(f"    {line}\n" for line in body[1:])
    return head + text.replace("on waste yarn", "with chain")


@pytest.mark.parametrize("seed", few_of(range(120), 4))
def test_a_piece_shaped_inside_is_proven_and_read_back(seed: int) -> None:
    made = proven(drawn(seed))
    assert made.counts is not None
    for garment in made.counts.sizes:
        sized = garment.piece("front")
        moves = list(inside.moves(sized))
        assert moves
        for side in ("left", "right"):
            for by in (-1, 1):
                rows = sorted({m.row for m in moves if (m.side, m.by) == (side, by)})
                assert all(later - row >= rows_inside(by < 0) for row, later in pairwise(rows))


SOURCE = (
    HEAD.format(prongs=3, width=14.3, height=15)
    + """piece front in plain
    levels hem 0 cm, hip 4 cm, waist 18 cm, top 30 cm
    start half wide with e-wrap
    edges straight to hip
    edges slope to half - 6 cm wide at waist, shaped half / 2 - 6 cm from centre
    edges slope to half wide at top, shaped half / 2 - 6 cm from centre
    end cast off
"""
)


def test_no_needle_stands_empty_and_the_dart_lies_on_one_wale() -> None:
    made = proven(SOURCE)
    for size, result in enumerate(made.results):
        fabric = next(f for f in result.fabrics if f.name == "front")
        assert all(course.count == course.last - course.first + 1 for course in fabric.passes())
        sized = made.counts.sizes[size].piece("front") if made.counts else None
        assert sized is not None
        # 6 cm in from the edge, counted from the middle.
        at = next(-m.slot for m in inside.moves(sized) if m.side == "left" and m.by < 0)
        assert at == pytest.approx(sized.start / 2 - 6 * 40 / 14.3, abs=1)
        rows = [range(course.first_loop, course.first_loop + course.count) for course in fabric.passes()]
        assert {fabric.slots[loop] for loop in fabric.more_parents if any(loop in row for row in rows)} == {-at, at - 1}
        filled = [loop for loop in range(len(fabric.slots)) if fabric.kinds[loop] == LoopKind.FILL]
        assert len(filled) == sum(1 for m in inside.moves(sized) if m.by > 0)


def test_hands_lift_no_more_than_the_tool_has_prongs() -> None:
    made = proven(SOURCE)
    lifted = [
        o.last - o.first + 1 for plan in made.works for block in plan.blocks for o in block.operations if isinstance(o, op.Transfer)
    ]
    assert max(lifted) == 3


def test_a_stitch_lost_beside_the_line_is_told() -> None:
    made = proven(SOURCE)
    assert made.counts is not None
    sized = made.counts.sizes[0].piece("front")
    fabric = next(f for f in made.results[0].fabrics if f.name == "front")
    assert [(counted, knitted) for _, counted, knitted in told_lines(sized, fabric) if counted != knitted] == []

    def beside(run: SizedRun) -> SizedRun:
        return replace(run, lines=tuple(replace(line, at=line.at + 1) for line in run.lines))

    other = replace(sized, left=tuple(beside(run) for run in sized.left))
    wrong = [where for where, counted, knitted in told_lines(other, fabric) if counted != knitted]
    assert len(wrong) == sum(1 for move in inside.moves(sized) if move.side == "left")


def test_an_odd_piece_is_shaped_alike_on_both_sides_of_its_middle_stitch() -> None:
    made = proven(SOURCE.replace("piece front in plain", "piece front in plain, centre stitch"))
    assert made.counts is not None
    for garment in made.counts.sizes:
        slots = {m.slot for m in inside.moves(garment.piece("front")) if m.by < 0}
        assert sum(slots) == 0


CLOSING = (
    HEAD.format(prongs=3, width=14.3, height=15)
    + """piece front in plain{odd}
    levels hem 0 cm, low 10 cm, wide 18 cm, shut 30 cm, top 40 cm
    start half wide with e-wrap
    opening keyhole {begins} wide from low to shut{where}
        edges slope to 5 cm wide at wide{way}
        edges {path} to 0 cm wide at shut{way}
    end cast off
"""
)


@pytest.mark.parametrize("odd", ["", ", centre stitch"])
@pytest.mark.parametrize("where", ["", ", 6 cm left of centre", ", 9.3 cm right of centre"])
@pytest.mark.parametrize(
    ("begins", "way", "path"),
    [("0 cm", "", "slope"), ("3 cm", ", fashioned 2 in", "slope"), ("2 cm", "", "arch")],
)
def test_an_opening_that_narrows_to_nothing_closes(odd: str, where: str, begins: str, way: str, path: str) -> None:
    taken = ", cast off" if begins != "0 cm" else ""
    made = proven(CLOSING.format(odd=odd, where=where + taken, begins=begins, way=way if path == "slope" else "", path=path))
    assert made.counts is not None
    for garment, result in zip(made.counts.sizes, made.results, strict=True):
        sized = garment.piece("front")
        opening = sized.openings[0]
        assert opening.width == 0
        fabric = next(f for f in result.fabrics if f.name == "front")
        assert fabric.stitches_at(sized.counter(opening.to_row) + 1) == sized.start
        # No stitch is cast on where the parts meet.
        assert not fabric.edge("keyhole upper")


def test_a_gap_narrower_than_a_stitch_is_closed_with_one() -> None:
    made = proven(CLOSING.format(odd="", where="", begins="0 cm", way="", path="slope").replace("to 0 cm wide", "to 0.1 cm wide"))
    assert made.counts is not None
    assert {garment.piece("front").openings[0].width for garment in made.counts.sizes} == {2}


MANY = (
    HEAD.format(prongs=7, width=14.3, height=15)
    + """piece front in plain{odd}
    levels hem 0 cm, hip 4 cm, waist 22 cm, top 26 cm
    start {start} with e-wrap
    edges straight to hip
    edges slope by {by} cm at waist, shaped {lines}
    edges straight to top
    end cast off
piece back in plain, mirror of front
join front end to back end
"""
)


@pytest.mark.parametrize("odd", ["", ", centre stitch", ", odd or even"])
@pytest.mark.parametrize("by", ["-3", "3"])
@pytest.mark.parametrize(
    ("start", "lines", "each"),
    [
        ("half wide", "4 cm from centre and 8 cm from centre and 3 cm from the edge", 3),
        ("half wide", "3 cm from centre and 5 cm from centre and 8 cm from centre and 3 cm from the edge", 4),
        ("half * 0.6 left to half * 0.4 right of centre", "6 cm from centre", 1),
        ("half * 0.55 left to half * 0.45 right of centre", "3 cm from centre and 6 cm from centre and 2 cm from the edge", 3),
    ],
)
def test_lines_keep_their_needles_but_for_the_outermost(odd: str, by: str, start: str, lines: str, each: int) -> None:
    made = proven(MANY.format(odd=odd if start == "half wide" else "", start=start, by=by, lines=lines))
    assert made.counts is not None
    for garment in made.counts.sizes:
        front, back = garment.piece("front"), garment.piece("back")
        for side in ("left", "right"):
            moved = [m for m in inside.moves(front) if m.side == side]
            assert {m.line for m in moved} == set(range(each))
            for line in range(max(each - 1, 1)):
                # Told on one needle each time; where lines within it move it, it is found so much further on.
                assert len({m.slot for m in moved if m.line == line}) == 1
        if front.start % 2 == 0:
            turned = {(m.side, -1 - m.slot) for m in inside.moves(front)}
            assert turned == {("right" if m.side == "left" else "left", m.slot) for m in inside.moves(back)}


@pytest.mark.parametrize("odd", ["", ", centre stitch"])
@pytest.mark.parametrize("at", [0.0, 0.2, 0.4, 1.0])
@pytest.mark.parametrize("by", ["-", ""])
def test_lines_at_the_centre_each_have_their_own_needle(at: float, odd: str, by: str) -> None:
    head = HEAD.format(prongs=10, width=20.0, height=15.0)
    body = [f"piece front in plain{odd}", "levels hem 0 cm, low 5 cm, high 25 cm, top 30 cm", "start half / 2 wide with e-wrap"]
    body += ["edges straight to low", f"edges slope by {by}3 cm at high, shaped {at} cm from centre", "edges straight to top"]
    made = proven(head + "\n    ".join([*body, "end cast off"]))
    assert made.counts is not None
    for garment in made.counts.sizes:
        sized = garment.pieces[0]
        left, right = sized.left[1].lines[0].at, sized.right[1].lines[0].at
        assert left + right >= 2
        assert min(left, right) == max(1, round(2 * at)) or odd or abs(2 * at % 1 - 0.5) < 0.1


def test_lines_that_meet_away_from_the_centre_are_put_apart() -> None:
    head = HEAD.format(prongs=10, width=20.0, height=15.0)
    body = ["piece front in plain", "levels hem 0 cm, low 5 cm, high 25 cm, top 30 cm", "start half / 2 wide with e-wrap"]
    body += [
        "left edge straight to low",
        "left edge slope by 2 cm at high, shaped 3 cm right of centre",
        "left edge straight to top",
    ]
    body += ["right edge slope by -2 cm at high, shaped 3.1 cm right of centre", "right edge straight to top"]
    made = proven(head + "\n    ".join([*body, "end cast off"]))
    assert made.counts is not None
    for garment in made.counts.sizes:
        sized = garment.pieces[0]
        assert sized.left[1].lines[0].at + sized.right[0].lines[0].at == 2
