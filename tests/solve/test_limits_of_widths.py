"""Widths at their limits: even or odd, on the bed, what a piece keeps; against every whole number tried."""

from __future__ import annotations

import pytest

from tests.solve.tiny import Number, agrees, least, moves, off, tiny, width, width_at
from walewright.counted.model import SizedPiece

WIDTHS = (6.0, 7.0, 7.3, 8.9, 9.0, 11.0, 12.6, 13.0, 19.0)
"""The ties among them go to tens, then fours, whichever is the lower one."""


def plain(wide: float, high: float, more: str = "") -> str:
    begin = f"piece back in plain{more}\n    levels hem 0 cm, top {high:g} cm\n"
    return begin + f"    start {wide:g} cm wide with e-wrap\n    end cast off\n"


@pytest.mark.parametrize("wide", WIDTHS)
@pytest.mark.parametrize(("more", "rest"), [("", 0), (", centre stitch", 1)])
def test_a_width_is_the_nearest_that_is_even_or_has_a_centre_stitch(wide: float, more: str, rest: int) -> None:
    made = tiny(plain(wide, 9, more))
    # With a centre stitch the nudge to plainer numbers has no two halves to be weighed by: only its cost is left out.
    step = 2 if not rest else 1
    best = least({"start": width(wide, step=2, rest=rest), "top": Number(9)})
    assert best is not None
    nearest = {abs(c["start"] - wide) for c in best.choices}
    assert abs(made.piece.start - wide) in nearest
    assert made.piece.start % 2 == rest
    if step == 2:
        agrees(made, best, {"start": made.piece.start, "top": made.piece.rows})


def test_what_is_knitted_in_copies_costs_as_many_times_as_much() -> None:
    made = tiny(plain(9.5, 12.7, ", knit 3"))
    best = least({"start": width(9.5, share=3.0), "top": Number(12.7, share=3.0)})
    assert best is not None
    agrees(made, best, {"start": made.piece.start, "top": made.piece.rows})


# ----------------------------------------------------------------- on the bed


@pytest.mark.parametrize("more", ["", ", centre stitch"])
@pytest.mark.parametrize("wide", [18.0, 18.9, 19.1, 20.0, 21.0, 21.2, 22.0])
def test_a_piece_has_as_many_stitches_on_a_side_as_half_the_bed_at_the_most(wide: float, more: str) -> None:
    """A centre stitch lies right of the mark, in the mirror image too, which takes a needle of the other half."""
    made = tiny(plain(wide, 10, more), needles=20)
    room = 19 if more else 20
    if wide > 20 + 1:
        assert made.error.code == "wider-than-bed"
        assert made.line() == "piece back in plain" + more
        return
    best = least({"start": width(wide, rest=1 if more else 0)}, lambda c: c["start"] <= room)
    assert best is not None
    assert made.piece.start in {c["start"] for c in best.choices}


@pytest.mark.parametrize("wide", [19.0, 20.0, 21.0, 21.1])
def test_a_width_further_up_is_held_against_the_bed_too(wide: float) -> None:
    slope = f"    edges slope to {wide:g} cm wide at top\n"
    made = tiny(plain(14, 20).replace("    end", slope + "    end"), needles=20)
    if wide > 21:
        assert made.error.code == "wider-than-bed"
        assert made.line() == slope.strip()
        return
    best = least({"start": width(14), "wide": width(wide), "top": Number(20)}, lambda c: c["wide"] <= 20)
    assert best is not None
    agrees(made, best, {"start": 14, "wide": width_at(made.piece, "top"), "top": made.piece.rows})


def lopsided(start: float, by: float, other: float, way: str = "") -> str:
    edges = f"    left edge slope by {by:g} cm at top{way}\n    right edge slope by {other:g} cm at top\n"
    return plain(start, 30).replace("    end", edges.replace("slope by 0 cm at top", "straight to top") + "    end")


def reached(piece: SizedPiece, middle: int = 0) -> dict[str, int]:
    """Where both edges come to, counted from the middle of the start, and `middle` more so that no number is less than none."""
    left, right = (piece.start // 2 + sum(b for run in runs for _, b in run.changes()) for runs in (piece.left, piece.right))
    return {"start": piece.start, "left": left + middle, "right": right + middle}


@pytest.mark.parametrize(
    ("by", "other"),
    [(2, 0), (3, 0), (3, 1), (5, 0), (6, 0), (6, 1), (6, -1), (6, -2), (-1, 6), (8, -4), (7, 0), (3, 4), (8, 0), (0, 8), (-4, 8)],
)
def test_edges_of_their_own_have_room_on_the_bed_together(by: int, other: int) -> None:
    """Twenty needles, 14 stitches at the start: both edges as far out as they ever are, together, with as much room each."""
    made = tiny(lopsided(14, by, other), needles=20)
    if 14 + max(by, 0) + max(other, 0) > 20 + 1:
        assert made.error.code == "wider-than-bed"
        side, most = ("left", by) if by >= other else ("right", other)
        assert made.line() == f"{side} edge slope by {most} cm at top"
        return

    def fits(c: dict[str, int]) -> bool:
        return max(c["start"] // 2, c["left"]) + max(c["start"] // 2, c["right"]) <= 20

    wanted = {"start": width(14), "left": Number(7 + by, step=1, within=1), "right": Number(7 + other, step=1, within=1)}
    if not other:
        del wanted["right"]
    best = least(wanted, lambda c: fits({"right": c["start"] // 2, **c}), lambda c: _sum(c, 14 + by + other))
    assert best is not None
    piece = made.piece
    ends = reached(piece)
    assert {name: ends[name] for name in wanted} in best.choices
    out = [max(piece.start // 2, ends[side]) for side in ("left", "right")]
    assert piece.lean == (0 if max(out) <= 10 else (out[1] - out[0]) // 2)
    assert piece.start_left - piece.start // 2 + out[0] <= 10
    assert piece.start // 2 - piece.start_left + out[1] <= 10


def _sum(c: dict[str, int], wanted: float, middle: int = 0) -> float:
    return off(c["left"] + c.get("right", c["start"] // 2 + middle) - 2 * middle, wanted)


@pytest.mark.parametrize(("by", "other"), [(3.5, 2.5), (3.4, 2.4), (3.3, -2.8), (1.6, 1.4)])
def test_one_edge_is_a_stitch_off_at_the_most_and_the_width_between_two_counts_too(by: float, other: float) -> None:
    """Two edges, each as near as it can be, may be a stitch off together."""
    made = tiny(lopsided(8, by, other))
    best = least(
        {
            "start": width(8),
            "left": Number(14 + by, step=1, within=1),
            "right": Number(14 + other, step=1, within=1),
            "top": Number(30),
        },
        more=lambda c: _sum(c, 8 + by + other, 10),
    )
    assert best is not None
    ends = {**reached(made.piece, 10), "top": made.piece.rows}
    assert ends in best.choices
    # What is as near is decided by less than this.
    assert made.cost == pytest.approx(best.cost, abs=0.01)


# ----------------------------------------------------------------- what a piece keeps


@pytest.mark.parametrize("way", ["", ", fashioned 2 in", ", fashioned 3 in"])
@pytest.mark.parametrize("more", ["", ", centre stitch"])
@pytest.mark.parametrize("wide", [1.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0])
def test_a_piece_keeps_a_stitch_on_each_side_or_those_that_are_moved_and_one_more(wide: float, more: str, way: str) -> None:
    """A centre stitch counts on the right side; the left one has to have as many by itself where a tool moves them."""
    slope = f"    edges slope to {wide:g} cm wide at top{way}\n"
    odd = 1 if more else 0
    made = tiny(plain(14 + odd, 40, more).replace("    end", slope + "    end"))
    inset = int(way.split()[2]) if way else 0
    fewest = 2 * (inset + 1) + odd if way else 1 if odd else 2
    best = least({"start": width(14 + odd, rest=odd), "wide": width(wide, rest=odd)}, lambda c: c["wide"] >= fewest)
    if best is None:
        assert made.error.code == "counts-conflict"
        assert slope.strip() in made.blamed
        return
    assert width_at(made.piece, "top") in {c["wide"] for c in best.choices}


@pytest.mark.parametrize(
    ("start", "by", "way"),
    [
        (6, -3, ""),
        (6, -5, ""),
        (6, -3, ", fashioned 3 in"),
        (8, -5, ", fashioned 3 in"),
        (8, -6, ", fashioned 3 in"),
        (8, -7, ", fashioned 3 in"),
        (8, -8, ""),
    ],
)
def test_edges_of_their_own_together_keep_a_stitch_or_those_of_the_tool_and_one_more(start: int, by: float, way: str) -> None:
    """The left edge may be drawn past the middle of the start."""
    made = tiny(lopsided(start, by, 1, way))
    fewest = 4 if way else 1
    best = least(
        {
            "start": width(start),
            "left": Number(10 + start / 2 + by, step=1, within=1),
            "right": Number(10 + start / 2 + 1, step=1, within=1),
        },
        lambda c: c["left"] + c["right"] - 20 >= fewest and c["right"] >= c["start"] // 2 + 10,
        lambda c: _sum(c, start + by + 1, 10),
    )
    if best is None:
        assert made.error.code == "counts-conflict"
        return
    assert reached(made.piece, 10) in best.choices
    # What is as near is decided by less than this.
    assert made.cost == pytest.approx(best.cost, abs=0.02)


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("by", [3.0, 4.0, 5.0, 6.0])
def test_a_mirror_image_has_room_for_the_centre_stitch_too(by: float, side: str) -> None:
    """A piece with an opening does not lean. Its middle stitch lies right of the mark in its image as well, so that an edge of
    either side has half the bed less that stitch, if it is one that turns left."""
    made = tiny(
        f"""\
piece back in plain, centre stitch
    levels hem 0 cm, slit 6 cm, shut 10 cm, top 30 cm
    start 9 cm wide with e-wrap
    {side} edge slope by {by:g} cm at top
    opening gap 3 cm wide from slit to shut, cast off
    end cast off
""",
        needles=20,
    )
    if made.counts is None:
        assert made.error.code == "wider-than-bed"
        assert by == 6.0
        return
    reach = (4 if side == "left" else 5) + by
    ends = made.piece.start // 2 + sum(b for _, b in moves(made.piece.left if side == "left" else made.piece.right))
    assert ends + (side == "right") == min(reach, 9 if side == "left" else 10)
