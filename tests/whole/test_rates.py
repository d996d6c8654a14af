"""Edges that move at a rate, drawn at random as sources and knitted: the bed made every move so many rows after the one before."""

from __future__ import annotations

import random
from itertools import pairwise

import pytest

from tests.whole.garment import SHIPPED
from walewright.bed import KnitFabric
from walewright.design import Changes
from walewright.pipeline import Outcome, compile
from walewright.report.english import in_english

SOURCE = """pattern "Rates"
sizes S M
    length 40 44 cm
machine standard
yarn wool "fine wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 9 g
piece one in plain
    levels hem 0 cm, low 6 cm, slit 20.5 cm, high 30 cm, top length
    start 120 stitches wide with e-wrap
{edges}
    end cast off
piece other in plain, mirror of one
"""

Way = tuple[str, int, str]
"""in or out, stitches, what stands behind it."""
WAYS: tuple[Way, ...] = (
    ("in", 1, ""),
    ("in", 1, ", fashioned 2 in"),
    ("in", 2, ", fashioned 2 in, two at once"),
    ("out", 1, ", fashioned 2 in"),
    ("out", 1, ""),
    ("in", 2, ""),
    ("out", 2, ""),
    ("in", 3, ""),
)
AT_CARRIAGE = WAYS[4:]
SHORT: tuple[tuple[Way, int], ...] = ((("out", 1, ""), 6), (("out", 1, ""), 8), (("in", 2, ""), 12), (("out", 2, ""), 12))


def compiled(edges: str) -> Outcome:
    return compile(SOURCE.format(edges="\n".join(f"    {line}" for line in edges.split("\n"))), "rates.wale", SHIPPED, Changes())


def drawn(draws: random.Random) -> tuple[Way, int]:
    way = draws.choice(WAYS)
    every = draws.randint(2, 6) * 2 if way in AT_CARRIAGE else draws.randint(3, 13)
    # So many rows that something is left of the piece: at most 150 lie above `low`.
    return way, max(every, 6 * way[1]) if way[0] == "in" else max(every, 8)


def written(which: str, way: Way, every: int, level: str = "top") -> str:
    return f"{which} {way[0]} {way[1]} stitches every {every} rows to {level}{way[2]}"


def steps(fabric: KnitFabric, side: str, after: int) -> list[tuple[int, int]]:
    """(rows knitted before it, stitches outwards) of each move of an edge above a row, as it was knitted."""
    at = "left" if side == "left" else "right"
    ends = {row: fabric.outer_end(row, at) for row in range(max(after, 1), fabric.rows + 1)}
    found = [(row, b - a) for (row, a), (_, b) in pairwise(ends.items()) if a is not None and b is not None and a != b]
    return [(row, -by if side == "left" else by) for row, by in found]


def fabrics(outcome: Outcome, name: str) -> list[KnitFabric]:
    return [next(f for f in result.fabrics if f.name == name) for result in outcome.results]


@pytest.mark.parametrize("number", range(16))
def test_every_move_of_both_edges_and_of_the_mirror_image_keeps_the_rate(number: int) -> None:
    draws = random.Random(f"rates {number}")
    alike = draws.random() < 0.5
    rates = dict.fromkeys(("left", "right"), drawn(draws)) if alike else {side: drawn(draws) for side in ("left", "right")}
    lines = [written("edges", *rates["left"])] if alike else [written(f"{side} edge", *rate) for side, rate in rates.items()]
    outcome = compiled("\n".join(["edges straight to low", *lines]))
    assert outcome.proven, [(d.code, in_english(d).message, in_english(d).notes) for d in outcome.diagnostics]
    assert outcome.counts is not None
    for name, sides in (("one", ("left", "right")), ("other", ("right", "left"))):
        for sized, fabric in zip((g.piece(name) for g in outcome.counts.sizes), fabrics(outcome, name), strict=True):
            low = sized.row("low")
            for side, (way, every) in zip(sides, rates.values(), strict=True):
                made = steps(fabric, side, low)
                assert {by for _, by in made} == {way[1] if way[0] == "out" else -way[1]}
                assert {b - a for (a, _), (b, _) in pairwise(made)} <= {every}
                rows = sized.rows - low
                assert rows // every - (every <= 2) <= len(made) <= rows // every


@pytest.mark.parametrize("number", range(14))
def test_where_a_piece_parts_a_rate_is_kept_or_refused(number: int) -> None:
    draws = random.Random(f"parted {number}")
    alike = draws.random() < 0.6
    way, every = draws.choice((*SHORT, drawn(draws)))
    to = draws.choice(("high", "top"))
    gap = f"opening neck 6 stitches wide from slit to {to}, cast off\n    edges out 1 stitch every 8 rows to {to}"
    # Edges that are not alike have the carriage at different rows.
    which = ["edges"] if alike else ["left edge", "right edge straight to low\nright edge"]
    outcome = compiled("\n".join([*(written(w, way, every) for w in which), gap]))
    if not outcome.proven:
        (told,) = [d for d in outcome.diagnostics if d.severity.value == "error"]
        assert told.code == "rate-not-kept"
        assert way in AT_CARRIAGE
        # What the help says is a way out.
        for rate in (int(h.split()[2]) for h in in_english(told).helps if h.startswith("write `every")):
            again = compiled("\n".join([*(written(w, way, rate) for w in which), gap]))
            assert again.proven, [(d.code, in_english(d).message) for d in again.diagnostics]
        return
    assert outcome.counts is not None
    for fabric in fabrics(outcome, "one"):
        for side in ("left", "right"):
            gaps = [b - a for (a, _), (b, _) in pairwise(steps(fabric, side, 1))]
            # Over the parting a left edge at the carriage is a row late.
            assert set(gaps) <= {every - 1, every, every + 1}
            assert sum(g != every for g in gaps) <= (2 if way in AT_CARRIAGE else 0)


def test_a_rate_that_meets_the_parting_can_be_written_in_two_lines() -> None:
    gap = "opening neck 6 stitches wide from slit to top, cast off"
    one = compiled(f"edges out 1 stitch every 4 rows to high\n{gap}")
    (told,) = [d for d in one.diagnostics if d.severity.value == "error"]
    assert told.code == "rate-not-kept"
    two = compiled(f"edges out 1 stitch every 4 rows to slit\nedges out 1 stitch every 4 rows to high\n{gap}")
    assert two.proven, [(d.code, in_english(d).message) for d in two.diagnostics]


@pytest.mark.parametrize(
    ("line", "helps", "mended"),
    [
        (
            "edges out 1 stitch every 7 rows to top",
            ("write `every 8 rows`", "or write `fashioned 1 in` behind it"),
            ("edges out 1 stitch every 8 rows to top", "edges out 1 stitch every 7 rows to top, fashioned 1 in"),
        ),
        ("edges in 3 stitches every 21 rows to top", ("write `every 22 rows`",), ("edges in 3 stitches every 22 rows to top",)),
        (
            "edges in 1 stitch every 9 rows to top, two at once",
            ("write `in 2 stitches every 18 rows`",),
            ("edges in 2 stitches every 18 rows to top, two at once",),
        ),
    ],
)
def test_a_rate_that_hands_cannot_keep_is_refused_with_what_can_be_kept(
    line: str, helps: tuple[str, ...], mended: tuple[str, ...]
) -> None:
    (told,) = [d for d in compiled(line).diagnostics if d.severity.value == "error"]
    assert (told.code, in_english(told).helps) == ("rate-not-kept", helps)
    for way_out in mended:
        assert compiled(way_out).proven


def test_more_than_two_stitches_are_cast_off_and_not_taken_two_at_once() -> None:
    (told,) = [
        d for d in compiled("edges in 4 stitches every 30 rows to top, two at once").diagnostics if d.severity.value == "error"
    ]
    assert told.code == "without-effect"
    assert in_english(told).helps[0].startswith("leave that out")
    assert compiled("edges in 4 stitches every 30 rows to top").proven


def test_fewer_rows_than_the_edge_moves_once_in() -> None:
    (told,) = [d for d in compiled("edges straight to high\nedges in 1 stitch every 90 rows to top").diagnostics if d.labels]
    assert told.code == "rate-not-kept"
    assert compiled("edges straight to top").proven


def test_what_is_written_above_a_rate_is_reckoned_from_where_it_comes_to() -> None:
    lines = ("edges out 1 stitch every 8 rows to slit, fashioned 2 in", "edges slope by -5 stitches at high")
    outcome = compiled("\n".join((*lines, "edges slope to 100 stitches wide at top")))
    assert outcome.proven, [(d.code, in_english(d).message) for d in outcome.diagnostics]
    assert outcome.counts is not None
    for garment in outcome.counts.sizes:
        sized = garment.piece("one")
        moved = [sum(by for _, by in run.changes()) for run in sized.left]
        assert moved[0] == sized.row("slit") // 8
        assert moved[1] == -5
        assert sized.start + 2 * sum(moved) == 100
