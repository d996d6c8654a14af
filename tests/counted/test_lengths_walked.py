"""Lengths of edges and outlines of pieces of any shape, held against a string drawn along the stitches at the ends of the rows."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from math import hypot

import pytest
from hypothesis import given, settings

from tests.counted.test_needles import GAP
from tests.counted.test_piece import asked, zone
from tests.counted.walked import MIDDLE, ROWS, Move, beds, expanded, pieces
from tests.draws import draws
from tests.solve.workshop import SIMPLE, origin
from walewright.counted import CountedPiece
from walewright.counted.edges import above, called_on_both, edge_length, edge_rows, split_part, stretch_between, stretches
from walewright.counted.in_size import InSize, in_size
from walewright.counted.model import SizedNeedlesOut, SizedOpening, SizedRun, SizedSlot
from walewright.counted.outline import outline
from walewright.counted.stretches import NOTHING, EdgeLength

ACROSS, UP = 1 / 2.0, 1 / 3.0


def turning(runs: tuple[SizedRun, ...]) -> set[int]:
    """Rows at which the string may turn: at the first and the last move of each rate, and where runs begin and end."""
    found: set[int] = set()
    for run in runs:
        row = run.from_row
        found |= {row, run.to_row}
        for phrase in run.phrases:
            # The first move, and the first one above what is cast off in the row in which the run begins.
            if row == run.from_row:
                found.add(row + phrase.gaps[0])
            row += sum(phrase.gaps) * phrase.times
            found.add(row)
    return found


def string(runs: tuple[SizedRun, ...], low: int, high: int) -> float:
    """Its length in cm from row `low` to row `high`: through the middle of each stitch where it turns, and across what is cast
    off or on at once within the row above it."""
    at_row: dict[int, list[Move]] = {}
    for move in expanded(runs):
        at_row.setdefault(move.row, []).append(move)
    line, x = [(0.0, 0.0)], 0
    for row in range(low, high):
        by = sum(move.by for move in at_row.get(row, ()))
        if any(abs(move.by) > 1 for move in at_row.get(row, ())):
            line += [(x, row - low), (x + by, row - low + 1)]
        elif by and row in turning(runs):
            line.append((x + by / 2, row - low))
        elif not by and row == MIDDLE:
            # Between runs it turns only where it comes back.
            below = next((m for m in reversed(expanded(runs)) if m.row < row), None)
            beyond = next((m for m in expanded(runs) if m.row > row), None)
            if below and beyond and max(abs(below.by), abs(beyond.by)) == 1 and below.by == -beyond.by:
                line.append((x, 0.0 + row - low))
        x += by
    line.append((x, high - low))
    return sum(hypot((b[0] - a[0]) * ACROSS, (b[1] - a[1]) * UP) for a, b in pairwise(line))


def named_apart(of: CountedPiece) -> CountedPiece:
    """With a name of its own for each run of the right edge."""
    right = tuple(replace(run, name=f"right_{run.name}") for run in of.sized.right)
    return replace(of, sized=replace(of.sized, right=right), measured={})


@given(pieces())
@settings(max_examples=draws(200))
def test_an_edge_is_as_long_as_a_string_along_it(of: CountedPiece) -> None:
    of = named_apart(of)
    for runs in (of.sized.left, of.sized.right):
        for run in runs:
            (found,) = stretches(of, run.name)
            moves = [m for m in expanded(runs) if run.from_row <= m.row < run.to_row]
            rows = run.to_row - run.from_row
            assert found.length.rows == rows
            assert found.length.stitches == 0
            assert found.length.cm == pytest.approx(string(runs, run.from_row, run.to_row))
            assert found.points == rows + sum(abs(m.by) for m in moves if abs(m.by) > 1)


@given(pieces())
@settings(max_examples=draws(100))
def test_an_outline_goes_through_the_end_of_every_row_that_is_shaped(of: CountedPiece) -> None:
    """And lies between two such ends elsewhere; what it encloses is as much as the rows between its edges."""
    shape, seen = outline(of), beds(of)
    middle = of.sized.start / 2 - of.sized.start_left
    for side, runs, sign in (("left", of.sized.left, -1), ("right", of.sized.right, 1)):

        def end(row: int, sign: int = sign) -> float:
            bed = seen[row]
            return ((max(bed) + 1 if sign > 0 else min(bed)) - middle) * ACROSS

        anchors = sorted({0, MIDDLE, ROWS} | {m.row for m in expanded(runs)})
        for low, high in pairwise(anchors):
            # A run that begins with a move has both the place before it and the one after it.
            begins = [m for m in expanded(runs) if m.row == low == m.low]
            for row in range(low + 1, high):
                ends = end(low), end(high - 1) if high == MIDDLE else end(high)
                share = (row - low) / (high - low)
                if not begins and high != MIDDLE:
                    assert shape.edge_x(row * UP, side) == pytest.approx(ends[0] + (ends[1] - ends[0]) * share)  # type: ignore[arg-type]
                across = sorted((end(low), end(high), end(high - 1)))
                assert across[0] - 1e-9 <= shape.edge_x(row * UP, side) <= across[-1] + 1e-9  # type: ignore[arg-type]
    polygon = shape.polygon
    assert len(set(polygon)) == len(polygon)
    twice = sum(a[0] * b[1] - b[0] * a[1] for a, b in pairwise((*polygon, polygon[0])))
    assert twice > 0, "it goes round against the clock"
    assert shape.height == pytest.approx(ROWS * UP)
    assert shape.start_width == pytest.approx(of.sized.start * ACROSS)
    xs = [x for x, _ in polygon]
    assert (shape.polygon_left, shape.polygon_right, shape.width) == (min(xs), max(xs), max(xs) - min(xs))
    widths = [shape.edge_x(row * UP, "right") - shape.edge_x(row * UP, "left") for row in range(ROWS + 1)]
    rows = sum((low + high) / 2 * UP for low, high in pairwise(widths))
    steps = [m for runs in (of.sized.left, of.sized.right) for m in expanded(runs) if m.row == m.low]
    if not steps:
        assert twice / 2 == pytest.approx(rows)


# ----------------------------------------------------------------- parts and names of edges


def test_names_and_parts() -> None:
    assert split_part("neck centre") == ("neck", "centre")
    assert split_part("side left") == ("side", "left")
    for whole in ("left", "centre", "side upper", "side_left"):
        assert split_part(whole) == (whole, "")
    assert (above("slit upper"), above("slit"), above("upper")) == ("slit", None, None)
    assert called_on_both(asked().piece) == frozenset()


def sides(of: CountedPiece, name: str) -> CountedPiece:
    """Both edges called so."""
    run = SizedRun(name, 0, 60, (), SIMPLE, origin(name))
    return replace(of, sized=replace(of.sized, left=(run,), right=(run,)))


def test_a_name_on_both_sides_is_either_of_them() -> None:
    of = sides(asked(), "side")
    assert [s.part for s in stretches(of, "side")] == ["left", "right"]
    assert [s.part for s in stretches(of, "side right")] == ["right"]
    assert edge_rows(of, "side") == ("left", of.sized.left, (0, 60))
    assert edge_rows(of, "side right")[0] == "right"
    with pytest.raises(ValueError, match="no edge"):
        edge_rows(of, "armhole")
    with pytest.raises(ValueError, match="no edge"):
        edge_rows(of, "side centre")


GAPPED = SizedOpening("neck", 40, 4, 7, GAP, origin("neck"), 60, -2, left=(GAP,), right=(replace(GAP, phrases=()),))


def test_edges_of_a_gap_by_their_sides() -> None:
    of = asked(openings=(GAPPED,))
    assert edge_rows(of, "neck left") == ("left", (GAP,), (40, 60))
    assert edge_rows(of, "neck right") == ("right", GAPPED.right, (40, 60))
    with pytest.raises(ValueError, match="no edge"):
        edge_rows(of, "neck centre")
    assert [s.part for s in stretches(of, "neck")] == ["left", "centre", "right"]
    assert [s.length.stitches for s in stretches(of, "end")] == [20 - 2 - 3, 18]
    assert edge_length(of, "shoulder left").stitches == 15
    assert edge_length(of, "neck") == sum((s.length for s in stretches(of, "neck")), NOTHING)
    slit = asked(openings=(replace(GAPPED, flat=0),))
    assert [s.part for s in stretches(slit, "neck")] == ["left", "right"]


def test_a_stretch_of_an_edge() -> None:
    of = sides(asked(openings=(GAPPED,)), "side")
    found = stretch_between(of, "side right", 6, 18)
    assert (found.part, found.length, found.points) == ("right", EdgeLength(12, 0, pytest.approx(4)), 12)
    centre = stretch_between(of, "neck centre", 1, 3)
    assert (centre.part, centre.length, centre.points) == ("centre", EdgeLength(0, 2, pytest.approx(1)), 2)
    straight = stretch_between(of, "neck right", 3, 9)
    assert (straight.part, straight.length) == ("right", EdgeLength(6, 0, pytest.approx(2)))
    # From row 43 to row 49: of the moves at 42, 44 and 46 the last two.
    sloped = stretch_between(of, "neck left", 3, 9)
    assert sloped.length.rows == 6
    assert sloped.length.cm == pytest.approx(string((GAP,), 43, 49))


def test_stitches_in_a_row_with_its_panels_and_without_needles_out_of_work() -> None:
    """40 stitches of half a cm. A latched rib is measured as what it was knitted in, needles out of work as the gaps they leave."""
    assert edge_length(asked(), "start") == EdgeLength(0, 40, pytest.approx(20))
    assert edge_length(asked(zone("cable", 0, 60, -4, 5)), "end") == EdgeLength(0, 40, pytest.approx(20))
    charted = asked(zone("cable", 0, 60, -4, 5))
    cable = replace(charted.panels[0].fabric, stitch="chart")
    charted = replace(charted, panels=(replace(charted.panels[0], fabric=cable),))
    assert edge_length(charted, "end").cm == pytest.approx(30 / 2 + 10 / 5)
    assert edge_length(charted, "start").cm == pytest.approx(30 / 2 + 10 / 5)
    ended = replace(charted, panels=(replace(charted.panels[0], high=59),), measured={})
    assert edge_length(ended, "end").cm == pytest.approx(20)
    outs = SizedNeedlesOut(0, 60, (-20, -3, 3, 19, 20), 0, origin("out"))
    assert edge_length(asked(needles_out=(outs,)), "start") == EdgeLength(0, 36, pytest.approx(20))
    assert edge_length(asked(needles_out=(replace(outs, to_row=59),)), "end").stitches == 40


def test_slots_have_edges_unless_they_are_eyelets() -> None:
    slots = (SizedSlot("pocket", 20, -6, 5, "waste", origin("pocket")), SizedSlot("hole", 20, 8, 8, "eyelet", origin("hole")))
    of = asked(zone("cable", 20, 60), slots=slots)
    # The loops lie in the row below it, what is cast on in the row above it.
    assert edge_length(of, "pocket") == EdgeLength(0, 12, pytest.approx(6))
    assert edge_length(of, "pocket upper") == EdgeLength(0, 12, pytest.approx(12 / 5))
    assert stretches(of, "hole") == ()
    assert stretches(of, "nothing") == ()


def test_what_is_cast_on_where_a_gap_rejoins() -> None:
    gap = SizedOpening("gap", 20, 4, 10, GAP, origin("gap"), 40, -2, rejoins=True, left=(GAP,), right=(GAP,))
    of = asked(zone("cable", 40, 60), openings=(gap,))
    assert edge_length(of, "gap upper") == EdgeLength(0, 10, pytest.approx(2))
    assert [s.length.stitches for s in stretches(of, "end")] == [40], "it is whole again"
    assert stretches(asked(openings=(replace(gap, rejoins=False),)), "gap upper") == ()


def test_edges_of_several_pieces_one_after_the_other() -> None:
    one, other = sides(asked(), "side"), sides(asked(zone("rib", 0, 30)), "side")
    both = replace(one.piece, left=one.piece.left, right=one.piece.left)
    called = tuple(replace(run, name="side") for run in one.piece.left)
    one, other = (replace(of, piece=replace(both, left=called, right=called), measured={}) for of in (one, other))
    of = InSize(one.design.at(0), {"one": one, "other": other})
    assert of.length([]) == NOTHING
    assert of.length([("one", "side"), ("other", "end")]) == EdgeLength(60, 40, pytest.approx(20 + 20))
    assert of.length([("one", "side"), ("other", "side")]) == EdgeLength(120, 0, pytest.approx(20 + 5 + 10))
    assert of.length([("one", "side"), ("other", "side")], ["other"]) == EdgeLength(180, 0, pytest.approx(20 + 30))


def test_a_size_has_its_pieces_by_their_names() -> None:
    of = asked()
    made = in_size(of.design.at(0), [of.sized])
    assert made.pieces == {"back": of}
    assert (made.design, made.at.number, made.at.size) == (of.design, 0, of.design.sizes[0])


@given(pieces())
@settings(max_examples=draws(60))
def test_runs_of_one_name_are_one_edge(of: CountedPiece) -> None:
    left = tuple(replace(run, name="side") for run in of.sized.left)
    of = replace(of, sized=replace(of.sized, left=left), measured={})
    assert edge_rows(of, "side left") == ("left", left, (0, ROWS))
    (found,) = stretches(of, "side")
    assert found.length.rows == ROWS
    assert found.length.cm == pytest.approx(string(left, 0, ROWS))


def test_a_panel_lies_in_its_own_rows_only() -> None:
    """A point on its last row is measured in it from below, and in what is beside it from above."""
    of = asked(zone("cable", 12, 30, 0, 9))
    for row, below, above_it in ((11, 5.0, 5.0), (12, 5.0, 2.0), (13, 2.0, 2.0), (30, 2.0, 5.0), (31, 5.0, 5.0), (45, 5.0, 5.0)):
        assert of.point(10, row)[0] == pytest.approx(below), row
        assert of.point(10, row, above=True)[0] == pytest.approx(above_it), row
