"""Rules of the bed by themselves, at their limits and one beyond: sides of a join against each other, what a needle is knitted in,
which block has an edge, stretches and copies that are not there."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from types import SimpleNamespace
from typing import Any

import pytest

from tests.bed.by_hand import refusal
from tests.bed.test_edge_stretches import ROWS, band, codes, done, panel
from tests.bed.words import told
from walewright.bed import Bed, BedResult, Gauge, knit
from walewright.bed.density import Density, fabric_at
from walewright.bed.refusals import Refusal
from walewright.bed.seams import SewnSeam, _eased, _equal, _in_ratio, _told
from walewright.bed.strips import having, holder
from walewright.knit.operations import (
    Block,
    CastOn,
    IntoWork,
    Join,
    MoveCarriage,
    OntoWaste,
    Pass,
    PickUpEdge,
    PictureRow,
    UseYarn,
    Work,
)

One = Callable[..., BedResult]
SEWN = Join((("one", "side", 0),), (("other", "side", 0),), ("bottom", "bottom"), 0)


def case(found: Refusal | None) -> str:
    return "" if found is None else found.case


def seam(rows_of: int = 0, stitches: int = 0, cm: float | None = None, loose: float = 0.0) -> SewnSeam:
    return SewnSeam(rows_of, stitches, cm, loose)


# ----------------------------------------------------------------- one side against the other


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize(
    ("ratio", "rows_of", "stitches", "fits"),
    [
        # 2 rows to 3 stitches: 10 to 15; a row over or missing is 1.5 stitches.
        ((2, 3), 10, 15, True),
        ((2, 3), 10, 14, True),
        ((2, 3), 10, 16, True),
        ((2, 3), 10, 13, False),
        ((2, 3), 10, 17, False),
        ((1, 1), 10, 9, True),
        ((1, 1), 10, 8, False),
        ((1, 1), 10, 11, True),
        ((1, 1), 10, 12, False),
        ((3, 1), 10, 3, True),
        ((3, 1), 11, 3, False),
        ((3, 1), 8, 3, True),
        ((3, 1), 7, 3, False),
    ],
)
def test_rows_to_stitches_in_a_ratio(ratio: tuple[int, int], rows_of: int, stitches: int, fits: bool, turned: bool) -> None:
    sides = (seam(rows_of), seam(0, stitches))
    found = _in_ratio(replace(SEWN, ratio=ratio), *(sides[::-1] if turned else sides))
    assert case(found) == ("" if fits else "ratio")
    if found is not None:
        assert dict(found.facts) == {"rows": rows_of, "stitches": stitches, "of_rows": ratio[0], "to_stitches": ratio[1]}
    # A side of both is in no ratio.
    assert case(_in_ratio(replace(SEWN, ratio=ratio), seam(rows_of, 1), seam(0, stitches))) == "ratio"
    assert case(_in_ratio(replace(SEWN, ratio=ratio), seam(rows_of), seam(2, stitches))) == "ratio"


@pytest.mark.parametrize(
    ("one", "other", "why"),
    [
        ((4, 0), (4, 0), ""),
        ((4, 0), (5, 0), "rows"),
        ((0, 4), (0, 5), "stitches"),
        ((4, 2), (4, 2), ""),
        ((4, 2), (4, 1), "stitches"),
    ],
)
def test_row_for_row_and_stitch_for_stitch(one: tuple[int, int], other: tuple[int, int], why: str) -> None:
    found = _equal(seam(*one), seam(*other))
    assert case(found) == why
    if found is not None:
        at = 0 if why == "rows" else 1
        assert dict(found.facts) == {"one": one[at], "other": other[at]}


@pytest.mark.parametrize(
    ("one", "other", "easing", "longer", "loose", "why"),
    [
        (10.0, 9.5, 5, 0, 0.0, ""),
        (10.0, 9.5, 4, 0, 0.0, "apart"),
        (9.5, 10.0, 5, 0, 0.0, ""),
        (9.5, 10.0, 4, 0, 0.0, "apart"),
        (9.5, 10.0, 4, 0, 1.0, ""),
        (10.0, 9.5, 0, 5, 0.0, ""),
        (10.0, 9.5, 0, 6, 0.0, "longer"),
        (10.0, 9.5, 1, 6, 0.0, ""),
        (10.0, 9.5, 0, -5, 0.0, "shorter"),
        (9.5, 10.0, 0, -5, 0.0, ""),
        (9.5, 10.0, 0, -7, 0.0, "shorter"),
    ],
)
def test_lengths_against_each_other(one: float, other: float, easing: int, longer: int, loose: float, why: str) -> None:
    op = replace(SEWN, easing_mm=easing, longer_mm=longer)
    assert case(_eased(op, seam(cm=one, loose=loose), seam(cm=other))) == why
    assert case(_eased(op, seam(cm=one), seam(cm=other, loose=loose))) == why
    for none in ((seam(), seam(cm=other)), (seam(cm=one), seam())):
        missing = _eased(op, *none)
        assert missing is not None
        assert missing.code == "no-gauge"


@pytest.mark.parametrize(
    ("stated", "one", "other", "why"),
    [
        ({"rows": 4}, seam(4), seam(4), ""),
        ({"rows": 4}, seam(4), seam(5), "rows"),
        ({"rows": 4}, seam(5), seam(4), "rows"),
        ({"one_mm": 100}, seam(cm=10.0), seam(cm=4.0), ""),
        ({"one_mm": 100}, seam(cm=10.3), seam(cm=4.0), "length"),
        ({"other_mm": 40}, seam(cm=10.0), seam(cm=4.0), ""),
        ({"other_mm": 40}, seam(cm=10.0), seam(cm=3.7), "length"),
        ({"other_mm": 40}, seam(cm=10.0), seam(cm=3.7, loose=3.0), ""),
        ({"one_mm": 100}, seam(), seam(cm=4.0), "no-length"),
        ({"other_mm": 100}, seam(), seam(cm=10.0), ""),
    ],
)
def test_what_a_join_says_of_its_edges_is_so(stated: dict[str, int], one: SewnSeam, other: SewnSeam, why: str) -> None:
    assert case(_told(replace(SEWN, **stated), one, other)) == why  # type: ignore[arg-type]


def test_strips_that_are_sewn_on_over_are_there_with_their_rows() -> None:
    parts = band("low", ("inside", 0, 8), ends=True), band("high", ("inside", 8, ROWS), ends=True)
    sewn = Join((("low", "last end", 0),), (("high", "first end", 0),), ("bottom", "bottom"), 0, rows=2)
    for over, words in (
        ((("low", "", 2),), ""),
        ((("low", "", 3),), "3"),
        ((("low", "welt", 2),), "welt"),
        ((("nobody", "", 2),), "nobody"),
    ):
        made = done(*parts, replace(sewn, over=over))
        assert codes(made) == (["join-told"] if words else [])
        assert all(words in told(fault) for fault in made.faults)


# ----------------------------------------------------------------- what a needle is knitted in


def course(*panels: tuple[str, int, int]) -> Any:
    return SimpleNamespace(panels=panels, fabric="own", yarn="wool", tension="4")


@pytest.mark.parametrize(
    ("slot", "name"), [(1, "own"), (2, "wide"), (3, "wide"), (4, "late"), (6, "late"), (7, "wide"), (9, "wide"), (10, "own")]
)
def test_of_panels_that_overlap_the_later_one_counts(slot: int, name: str) -> None:
    assert fabric_at(course(("wide", 2, 9), ("late", 4, 6)), slot) == name


def test_a_row_is_as_wide_as_the_stitches_of_its_panels() -> None:
    own, lace = Gauge(2.0, 3.0), Gauge(4.0, 3.0)
    density = Density({("wool", "4"): own}, {"lace": lace})
    assert density.width_cm(course(), range(6), 6) == pytest.approx(3.0)
    assert density.width_cm(course(("lace", 2, 3)), range(6), 6) == pytest.approx(4 / 2 + 2 / 4)
    unknown = Density({}, {"lace": lace})
    assert unknown.width_cm(course(), range(6), 6) is None
    assert unknown.width_cm(course(("lace", 2, 3)), range(6), 6) is None
    assert unknown.width_cm(course(("lace", 0, 5)), range(6), 6) == pytest.approx(6 / 4)


# ----------------------------------------------------------------- which block has an edge


def knitted(*names: str, below: str = "") -> Any:
    return SimpleNamespace(edge=lambda asked: [asked] if asked in names else [], below=below)


def test_an_edge_is_its_own_blocks_or_that_of_one_hung_from_it() -> None:
    fabrics = {"back": knitted("side"), "other": knitted("rim"), "welt": knitted("rim", below="back")}
    found = {edge: having(fabrics, "back", edge) for edge in ("side", "rim", "nothing")}
    assert {edge: one[0] for edge, one in found.items() if one} == {"side": "back", "rim": "welt", "nothing": "back"}
    assert having(fabrics, "hood", "side") is None
    pieces: Any = {name: SimpleNamespace(fabric=own) for name, own in fabrics.items()} | {"begun": SimpleNamespace(fabric=None)}
    for edge, block in (("side", "back"), ("rim", "welt"), ("nothing", "back")):
        assert holder(pieces, "back", edge) == (block, pieces[block])
    assert holder(pieces, "begun", "side") == ("begun", pieces["begun"])
    assert holder(pieces, "hood", "side") is None


# ----------------------------------------------------------------- refused

START = (MoveCarriage("right"), IntoWork(0, 5), UseYarn("wool", "4"), CastOn("e-wrap", 0, 5))


@pytest.mark.parametrize(("blocks", "crossed"), [(1, True), (2, False), (3, False)])
def test_blocks_side_by_side_are_crossed(one: One, blocks: int, crossed: bool) -> None:
    """One alone has nothing to be crossed with."""
    ends = {1: ((0, 5),), 2: ((0, 2), (3, 5)), 3: ((0, 1), (2, 3), (4, 5))}[blocks]
    row = PictureRow("left", "4", tuple((("wool", "navy")[n % 2], *end) for n, end in enumerate(ends)), crossed=False)
    made = one(*START, row, OntoWaste(0, 5, 8, "end"))
    assert (made.faults == ()) == crossed
    if not crossed:
        assert refusal(made) == "block-uncrossed"


def test_stretches_of_several_edges_and_copies_that_are_not_there() -> None:
    bed = Bed(60, (1, 2, 3), {("wool", "4"): Gauge(1.3, 1.85)})

    def hung(copies: int, **asked: Any) -> list[str]:
        picked = PickUpEdge("panel", "inside", "whole", 0, ROWS - 1, **asked)
        strip = Block(
            "strip",
            (
                MoveCarriage("right"),
                IntoWork(0, ROWS - 1),
                picked,
                UseYarn("wool", "4"),
                Pass("left"),
                OntoWaste(0, ROWS - 1, 8, "end"),
            ),
        )
        return [f.code for f in knit(Work("M", (replace(panel(), copies=copies), strip)), bed).faults]

    assert hung(1) == []
    assert hung(2, copy=1) == []
    assert hung(2, copy=2) == []
    assert hung(2, copy=3) == ["no-such-copy"]
    assert hung(1, copy=1) == ["no-such-copy"]
    assert hung(2) == ["copies-differ"]
