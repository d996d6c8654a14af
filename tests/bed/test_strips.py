"""The ends of edgings on the bed: named before the piece begins, or in the block that hangs from its first row."""

from __future__ import annotations

import pytest

from tests.bed.by_hand import BED, Ops, fabric, refusal, rows
from tests.bed.test_techniques_of_edges import on_waste
from walewright.bed import BedResult, KnitFabric, knit
from walewright.knit.operations import (
    Block,
    CastOff,
    HangFeet,
    IntoWork,
    MoveCarriage,
    NameEdge,
    PickUpEdge,
    Rehang,
    SetCounter,
    UseYarn,
    Work,
)

ALL = tuple(range(8))
OFF = CastOff(0, 7, "right")


def hem(*named: NameEdge, folded: bool = True, after: int = 6) -> Block:
    """Two rows, a fold row, two rows, hung up, a joining row; then the piece."""
    first: Ops = [*on_waste(), *rows(5, "left"), *([HangFeet(ALL)] if folded else []), *rows(1, "right")]
    return Block("cloth", (*first, *named, SetCounter(0), *rows(after, "left"), OFF, NameEdge("side", "outer", 0, after)))


def hanging(facing: str, *named: NameEdge, of: str = "cloth") -> Block:
    begun: Ops = [MoveCarriage("right"), IntoWork(0, 7), Rehang(of, 0, 7, facing)]  # type: ignore[arg-type]
    return Block(f"{of} welt", (*begun, UseYarn("wool", "2"), SetCounter(0), *rows(4, "left"), OFF, *named))


def cloth() -> Block:
    return Block("cloth", (*on_waste(), *rows(6, "left"), OFF, NameEdge("side", "outer", 0, 6)))


def picked(*ups: PickUpEdge) -> Block:
    begun: Ops = [MoveCarriage("right"), IntoWork(0, 9), *ups, UseYarn("wool", "2"), SetCounter(0), *rows(2, "left")]
    return Block("band", (*begun, CastOff(0, 9, "right")))


def up(edge: str, part: str, first: int, last: int, left_end: str, facing: str = "purl") -> PickUpEdge:
    return PickUpEdge("cloth", edge, part, first, last, facing=facing, left_end=left_end)  # type: ignore[arg-type]


def work(*blocks: Block) -> BedResult:
    return knit(Work("S", blocks), BED)


def loops_of(made: KnitFabric, edge: str) -> tuple[tuple[int, ...], ...]:
    (found,) = made.edge(edge)
    return found.points


def test_rows_before_the_piece_are_an_edge_of_their_own() -> None:
    (made,) = work(hem(NameEdge("hem", "outer", 0, 6), folded=False)).fabrics
    first = made.courses[0].first_loop
    assert loops_of(made, "hem left") == tuple((first + 8 * n,) for n in range(6))
    assert loops_of(made, "hem right") == tuple((first + 8 * n + 7,) for n in range(6))
    # The piece's own rows are counted from its beginning.
    assert made.edge("side left")[0].count == 6
    assert made.corners["hem", "left"][1] == made.corners["start", "whole"][0] == made.corners["side", "left"][0]
    assert made.corners["hem", "right"][1] == made.corners["start", "whole"][1]


def test_a_fold_lays_two_row_ends_upon_each_other() -> None:
    made = fabric(work(hem(NameEdge("hem", "left", 3, 5))))
    places = loops_of(made, "hem left")
    assert [[made.course_of(x).counter for x in place] for place in places] == [[4, 2], [5, 1]]
    # All of its rows are that many places: nothing lies twice upon itself.
    flat = fabric(work(hem(NameEdge("hem", "left", 0, 5))))
    assert [len(place) for place in loops_of(flat, "hem left")] == [1] * 5


@pytest.mark.parametrize(("facing", "at"), [("purl", 7), ("knit", 0)])
def test_what_hangs_from_a_first_row_is_named_as_it_hangs(facing: str, at: int) -> None:
    result = work(cloth(), hanging(facing, NameEdge("welt", "outer", 0, 4)))
    assert result.faults == ()
    made = result.fabrics[1]
    assert made.below == "cloth"
    places = loops_of(made, "welt left")
    assert [made.course_of(place[0]).counter for place in places] == [4, 3, 2, 1], "its last row is at the bottom"
    assert [made.slots[place[0]] for place in places] == [at] * 4
    assert made.corners["welt", "left"][1] == result.fabrics[0].corners["start", "whole"][0]


@pytest.mark.parametrize("facing", ["purl", "knit"])
def test_it_is_picked_up_as_an_edge_of_the_piece(facing: str) -> None:
    blocks = cloth(), hanging(facing, NameEdge("welt", "outer", 0, 4))
    result = work(*blocks, picked(up("welt", "left", 0, 3, "bottom"), up("side", "left", 4, 9, "bottom")))
    assert result.faults == ()
    links = result.fabrics[2].links
    assert [link.piece for link in links] == ["cloth welt"] * 4 + ["cloth"] * 6
    assert ("cloth", "side left", 1) not in result.free_edges
    assert ("cloth welt", "welt left", 1) not in result.free_edges
    assert ("cloth welt", "welt right", 1) in result.free_edges


@pytest.mark.parametrize(
    ("ups", "code"),
    [
        ((up("welt", "left", 0, 3, "top"), up("side", "left", 4, 9, "bottom")), "edge-lies-otherwise"),
        ((up("side", "left", 0, 5, "bottom"), up("welt", "left", 6, 9, "bottom")), "edges-do-not-meet"),
        ((up("welt", "right", 0, 3, "top"), up("side", "left", 4, 9, "bottom")), "edges-do-not-meet"),
        ((up("welt", "left", 0, 4, "bottom"), up("side", "left", 5, 9, "bottom")), "pick-up-too-many"),
        ((up("well", "left", 0, 3, "bottom"), up("side", "left", 4, 9, "bottom")), "edge-unknown"),
    ],
)
def test_where_it_cannot_be_taken_up(ups: tuple[PickUpEdge, ...], code: str) -> None:
    assert refusal(work(cloth(), hanging("purl", NameEdge("welt", "outer", 0, 4)), picked(*ups))) == code


def test_it_is_taken_up_once() -> None:
    band = picked(up("welt", "left", 0, 3, "bottom"), up("side", "left", 4, 9, "bottom"))
    begun: Ops = [MoveCarriage("right"), IntoWork(0, 3), up("welt", "left", 0, 3, "bottom"), UseYarn("wool", "2"), *rows(2, "left")]
    other = Block("other", (*begun, CastOff(0, 3, "right")))
    assert refusal(work(cloth(), hanging("purl", NameEdge("welt", "outer", 0, 4)), band, other)) == "edge-taken"


def test_rows_that_were_not_knitted_make_no_end() -> None:
    assert refusal(work(hem(NameEdge("hem", "outer", 0, 8)))) == "rows-not-knitted"
    assert refusal(work(cloth(), hanging("purl", NameEdge("welt", "outer", 0, 5)))) == "rows-not-knitted"
    assert refusal(work(hem(NameEdge("hem", "outer", 0, 2), NameEdge("hem", "outer", 0, 2)))) == "edge-named-twice"
