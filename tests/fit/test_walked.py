"""Loops walked from piece to piece: over a seam and back is the same place, up a wale and down again the same stitch, and what is
walked is as long as the pieces are wide."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.fit.tried_on import walkers
from tests.fit.wardrobe import CARDIGAN, DOLMAN, GORES, HAT, PULLOVER, RAGLAN, TUBE, VEST
from walewright.fit.cloth import SHOULDERS, RowEdge
from walewright.fit.loops import Exit, LoopEnd, Walker, WornLoop, key, rows_of
from walewright.glue.model import Place

GARMENTS = {"vest": VEST, "cardigan": CARDIGAN, "raglan": RAGLAN, "gores": GORES, "pullover": PULLOVER, "dolman": DOLMAN}
SHARES = (0.0, 0.125, 0.5, 0.75, 1.0)


def only(text: str) -> Walker:
    (found,) = walkers(text)
    return found


@pytest.mark.parametrize("name", GARMENTS)
def test_over_a_seam_and_back_is_the_same_place(name: str) -> None:
    """From each edge at each share; at a corner it may be the end of the edge beside it."""
    walker = only(GARMENTS[name])
    crossed = 0
    for edge, bond in walker.bonds.items():
        there = [walker._cross(bond, share) for share in SHARES]
        if bond.strip or None in there or any(not walker.cloth.length(p) for p in (*bond.own, *bond.across)):
            continue
        for share, at in zip(SHARES, there, strict=True):
            assert at is not None
            back = walker.bonds.get(at.edge)
            if back is None or key(back.across[0])[0] not in {p.owner for p in bond.own}:
                continue
            again = walker._cross(back, at.share)
            assert again is not None
            if 0 < share < 1:
                assert again.edge == edge
                assert again.share == pytest.approx(share, abs=1e-6)
            crossed += 1
    assert crossed > 10


@pytest.mark.parametrize("name", GARMENTS)
def test_what_is_crossed_to_lies_as_far_along_in_cm(name: str) -> None:
    """The same share of the whole seam, counted from its beginning on both sides."""
    walker = only(GARMENTS[name])
    for bond in walker.bonds.values():
        if bond.strip or any(not walker.cloth.length(p) for p in (*bond.own, *bond.across)):
            continue

        def way(chain: tuple[Place, ...], begins: tuple[str, ...], at: Exit) -> float:
            lengths = [walker.cloth.length(p) or 0.0 for p in chain]
            number = [key(p) for p in chain].index(at.edge)
            inside = at.share if begins[number] in ("bottom", "left") else 1 - at.share
            return (sum(lengths[:number]) + inside * lengths[number]) / sum(lengths)

        for share in SHARES:
            at = walker._cross(bond, share)
            assert at is not None
            here = way(bond.own, tuple(bond.begins), Exit(key(bond.own[bond.at]), share))
            assert way(bond.across, tuple(bond.across_begins), at) == pytest.approx(here, abs=1e-6)


@pytest.mark.parametrize("deep", [2, 8])
def test_up_a_wale_to_a_shoulder_or_the_neck_and_down_again(deep: int) -> None:
    """44 cm wide, the neck 20 cm: shoulders over the outer 12 cm on each side."""
    walker = only(VEST)
    owner = {2: "back", 8: "front"}[deep]
    for share in (0.0, 0.05, 0.2, 12 / 44 - 0.01):
        left, right = walker._top(owner, share), walker._top(owner, 1 - share)
        assert left == (SHOULDERS[0], pytest.approx(share * 44 / 12))
        assert right == (SHOULDERS[1], pytest.approx(1 - share * 44 / 12))
        assert left is not None
        assert right is not None
        assert walker._in_width(owner, *left) == pytest.approx(share)
        assert walker._in_width(owner, *right) == pytest.approx(1 - share)
    # Below the neck a wale comes to its opening, which no loop goes on from.
    assert walker._top(owner, 0.5) is None
    assert walker._top(owner, 12 / 44 + 0.01) is None
    assert walker._in_width(owner, "neck left", 0.5) is None
    # The wale below the neck is as much shorter; at the edges it is the whole height.
    assert walker.cloth.height(owner, 0.5) == pytest.approx(50 - deep)
    assert walker.cloth.height(owner, 0.1) == pytest.approx(50)
    assert walker.cloth.height(owner, 0.0) == pytest.approx(50)
    assert walker.cloth.height(owner, 1.0) == pytest.approx(50)


def test_a_whole_last_row_is_come_to_at_its_own_share() -> None:
    walker = only(TUBE)
    for share in SHARES:
        assert walker._top("front", share) == ("end", share)
        assert walker._in_width("front", "end", share) == walker._in_width("front", "start", share) == share


def test_between_two_openings_lies_a_part_of_the_top() -> None:
    """Two gaps of 2 cm, 10 cm left and right of the centre of 40 cm: parts of 9, 18 and 9 cm, and nothing above the gaps."""
    walker = only("""
piece one in plain
    levels hem 0 cm, low 20 cm, top 40 cm
    start 40 cm wide with e-wrap
    edges straight to top called side
    opening west 2 cm wide from low to top, 10 cm left of centre, cast off
    opening east 2 cm wide from low to top, 10 cm right of centre, cast off
    end cast off
free one side + one west + one east
""")
    parts = {SHOULDERS[0]: (0.0, 9 / 40), "shoulder 2": (11 / 40, 29 / 40), SHOULDERS[1]: (31 / 40, 1.0)}
    for name, (low, high) in parts.items():
        for inside in (0.001, 0.3, 0.999):
            at = low + inside * (high - low)
            found = walker._top("one", at)
            assert found == (name, pytest.approx(inside))
            assert found is not None
            assert walker._in_width("one", *found) == pytest.approx(at)
    assert [walker._top("one", at) for at in (0.24, 0.26, 0.74, 0.76)] == [None] * 4
    assert [walker.cloth.height("one", at) for at in (0.1, 0.25, 0.5, 0.75)] == [pytest.approx(cm) for cm in (40, 20, 40, 20)]


def loop(walker: Walker, piece: str, row: int) -> WornLoop:
    found = walker.across(piece, 1, row)
    assert found is not None
    return found


@given(st.integers(1, 89))
def test_all_round_a_vest_is_twice_its_width_less_the_seams(row: int) -> None:
    """From 0 to 30 cm, 90 rows: two pieces of 44 cm, two seams that take a stitch of half a centimetre on each side."""
    found = loop(only(VEST), "back", row)
    assert (found.cm, found.ends) == (pytest.approx(86.0), None)
    assert found.discs == {("back", 1), ("front", 1)}
    assert found.taken == pytest.approx(2.0)


@pytest.mark.parametrize("row", [1, 40, 90])
def test_a_cardigan_is_walked_from_band_to_band(row: int) -> None:
    for piece, chords in (("back", 5), ("left_front", 5), ("right_front", 5)):
        found = loop(only(CARDIGAN), piece, row)
        assert len(found.chords) == chords
        assert [c.kind for c in (found.chords[0], found.chords[-1])] == ["strip", "strip"]
        assert found.cm == pytest.approx(44 + 21 + 21 + 2 + 2 - 2)
        assert found.ends is not None
        assert {end.edge[:2] for end in found.ends} == {("buttonhole_band", "rim"), ("button_band", "rim")}
        assert {end.beneath[:2] for end in found.ends} == {("right_front", "edge"), ("left_front", "edge")}


def test_above_the_underarm_a_vest_ends_at_its_armholes() -> None:
    found = loop(only(VEST), "back", 100)
    assert (found.cm, found.taken) == (pytest.approx(44.0), 0.0)
    assert found.ends == tuple(LoopEnd(edge, edge) for edge in (("back", "armhole left", 1), ("back", "armhole right", 1)))
    # Through the neck's gap nothing is walked.
    assert only(VEST).across("front", 1, 130) is None


def test_a_sleeve_closes_on_itself() -> None:
    found = loop(only(PULLOVER), "sleeve", 1)
    assert [c.owner for c in found.chords] == ["sleeve"]
    assert (found.ends, found.cm) == (None, pytest.approx(20 - 1))
    # Set in, it goes round the armhole no more.
    assert loop(only(HAT), "hat", 30).discs == {("hat", 1)}


def test_gores_are_walked_along_their_edges() -> None:
    walker = only(GORES)
    (waist, hem) = walker.cloth.row_edges["gore"]
    for edge in (waist, hem):
        found = walker.along("gore", 1, edge)
        assert found is not None
        assert [c.kind for c in found.chords] == ["up"] * 4
        assert found.cm == pytest.approx(80 - 8 / 3)


# ------------------------------------------------------------------------------------------------------ edges by rows


@given(st.integers(0, 300), st.integers(1, 300), st.floats(0, 1))
def test_a_share_of_an_edge_is_one_of_its_rows(low: int, rows: int, share: float) -> None:
    edge = RowEdge("side", "left", low, low + rows)
    for row in range(low + 1, low + rows + 1):
        assert edge.row(edge.share(row)) == row
    assert low < edge.row(share) <= low + rows
    assert (edge.share(low), edge.share(low + rows)) == (0.0, 1.0)
    assert RowEdge("side", "left", low, low).share(low) == 1.0


CUT = """
piece one in plain
    levels hem 0 cm, a 10 cm, b 18 cm, c 30 cm, top 40 cm
    start 41 cm wide with e-wrap
    left edge straight to a called {}
    left edge slope by -2 cm at b called {}
    left edge straight to c called {}
    left edge slope by 3 cm at top called {}
    right edge straight to top
    end cast off
free one {}
"""


@pytest.mark.parametrize("names", ["aaaa", "aaab", "aabb", "abbb", "abcc", "aabc", "abbc", "abcd"])
def test_stretches_of_one_name_are_one_edge(names: str) -> None:
    """Against cutting the heights wherever the name changes."""
    text = CUT.format(*(f"edge_{n}" for n in names), " + one ".join(f"edge_{n}" for n in dict.fromkeys(names)))
    cloth = only(text).cloth
    rows = (0, 30, 54, 90, 120)
    cuts = [0, *(i for i in range(1, 4) if names[i] != names[i - 1]), 4]
    wanted = [RowEdge(f"edge_{names[i]}", "left", rows[i], rows[j]) for i, j in pairwise(cuts)]
    assert list(cloth.row_edges["one"]) == [*wanted, RowEdge("", "right", 0, 120)]


def test_an_edge_without_a_name_is_measured_from_corner_to_corner() -> None:
    """Sloping in by 15 cm over 20 cm it is 25 cm long, on either side, and up the left side or the right one it is that high."""
    text = """
piece one in plain
    levels hem 0 cm, top 20 cm
    start 40 cm wide with e-wrap
    left edge slope by -15 cm at top
    right edge {} at top
    end cast off
"""
    for said, long in (("slope by -15 cm", 25.0), ("slope by -5 cm", (20**2 + 5**2) ** 0.5)):
        cloth = only(text.format(said)).cloth
        left, right = cloth.row_edges["one"]
        assert cloth.row_edge("one", left) == pytest.approx(25.0, abs=0.6)
        assert cloth.row_edge("one", right) == pytest.approx(long, abs=0.6)
        assert cloth.height("one", 0.0) == pytest.approx(25.0, abs=0.6)
        assert cloth.height("one", 1.0) == pytest.approx(long, abs=0.6)


def test_levels_are_looked_at_by_their_rows_from_below() -> None:
    """The start's first row stands for its level, one row has one level, and none lies above the top."""
    cloth = only(VEST).cloth
    assert list(rows_of(cloth, "back")) == [("hem", 1), ("under", 90), ("top", 150)]
