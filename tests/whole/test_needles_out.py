"""Pieces with needles out of work for a while, from source to paper: drawn at random, and looked at loop by loop."""

from __future__ import annotations

from itertools import pairwise
from random import Random

import pytest

from tests.draws import few_of
from tests.whole.test_inside_lines import HEAD, proven


def drawn(seed: int) -> str:
    """A piece with ladders, in one stretch of rows or two, between shaping and shaping, from the start or up to the top."""
    dice = Random(seed)
    head = HEAD.format(prongs=3, width=dice.uniform(13, 24), height=dice.uniform(13, 20))
    odd = ", centre stitch" if dice.random() < 0.4 else ""
    start = dice.choice(("half wide", "half / 2 left to half / 3 right of centre"))
    places = " and ".join(
        dice.sample(
            ("4 cm from centre", "9.3 cm right of centre", "3 cm from the edge", "7 cm left of centre"), dice.randrange(1, 4)
        )
    )
    which = [f"every {dice.randrange(4, 15)}th", f"at {places}"]
    if start != "half wide":
        which[1] = "at 3 cm from the edge"
    dice.shuffle(which)
    low, high = dice.choice(("line", "hem")), dice.choice(("band", "top"))
    lines = [
        "levels hem 0 cm, line 3 cm, rest 16 cm, again 18 cm, band 34 cm, top 40 cm",
        f"start {start if not odd else 'half wide'} {dice.choice(('with e-wrap', 'with chain'))}",
        "edges straight to line" if low == "hem" else f"edges slope by {dice.choice(('1', '-1'))} cm at line",
        "edges straight to band",
        "edges straight to top" if high == "top" else f"edges slope by {dice.choice(('2', '-2'))} cm at top",
        f"needles out {which[0]} from {low} to rest",
        *([f"needles out {which[1]} from again to {high}"] if high == "top" or dice.random() < 0.6 else []),
        f"end {dice.choice(('cast off', 'cast off sewn', 'gathered'))}",
    ]
    return head + f"piece front in plain{odd}\n" + "".join(f"    {line}\n" for line in lines)


@pytest.mark.parametrize("seed", few_of(range(100), 5))
def test_a_piece_with_needles_out_is_proven_and_read_back(seed: int) -> None:
    made = proven(drawn(seed))
    assert made.counts is not None
    for garment, result in zip(made.counts.sizes, made.results, strict=True):
        sized = garment.piece("front")
        fabric = next(f for f in result.fabrics if f.name == "front")
        for out in sized.needles_out:
            assert out.slots
            for row in range(sized.counter(out.from_row) + 1, sized.counter(out.to_row) + 1):
                (course,) = fabric.passes(row)
                knitted = {fabric.slots[loop] for loop in range(course.first_loop, course.first_loop + course.count)}
                assert not knitted & set(out.slots)
                assert knitted | set(out.slots) == set(range(course.first, course.last + 1))


PLEATS = (
    HEAD.format(prongs=3, width=14.3, height=15)
    + """piece front in plain
    levels hem 0 cm, line 1 cm, band 20 cm, top 22 cm
    start half wide with e-wrap
    needles out every {every}th from line to band
    end cast off
piece back in plain, mirror of front
join front end to back end
"""
)


@pytest.mark.parametrize("every", [4, 7, 12])
def test_they_lie_so_many_apart_and_a_mirror_image_has_them_mirrored(every: int) -> None:
    made = proven(PLEATS.format(every=every))
    assert made.counts is not None
    for garment in made.counts.sizes:
        slots = garment.piece("front").needles_out[0].slots
        assert {b - a for a, b in pairwise(slots)} == {every}
        assert sorted(-1 - s for s in slots) == list(garment.piece("back").needles_out[0].slots)


FOLDED = (
    HEAD.format(prongs=3, width=14.3, height=15)
    + """piece panel in plain, knit 2
    levels hem 0 cm, fold 1 cm, band 20 cm, top 22 cm
    start half wide with e-wrap
    edges straight to top called side
    needles out every 12th from {low} to {high}, worn half / 3 wide
    end cast off
join panel side to panel side, each to the next all round
finished hem round panel hem
finished waist round panel band
"""
)


@pytest.mark.parametrize(("low", "high", "folded"), [("fold", "band", (False, True)), ("hem", "top", (True, True))])
def test_what_goes_round_is_as_wide_as_it_is_worn(low: str, high: str, folded: tuple[bool, bool]) -> None:
    made = proven(FOLDED.format(low=low, high=high))
    assert made.fit is not None
    sizes = (44, 48, 53)
    for name, narrow in zip(("hem", "waist"), folded, strict=True):
        for value, half in zip(dict(made.fit.stated)[name], sizes, strict=True):
            # Each of two seams takes two stitches.
            assert value == pytest.approx(2 * half / (3 if narrow else 1) - 4 * 14.3 / 40, abs=0.8 if not narrow else 1e-6)


@pytest.mark.parametrize(
    ("start", "low", "high", "end"), [("with chain", "hem", "line", "cast off"), ("with e-wrap", "line", "top", "cast off sewn")]
)
def test_the_start_and_the_end_have_so_many_loops_less(start: str, low: str, high: str, end: str) -> None:
    text = PLEATS.format(every=7).replace("with e-wrap", start).replace("from line to band", f"from {low} to {high}")
    made = proven(text.replace("end cast off", f"end {end}"))
    assert made.counts is not None
    for garment, result in zip(made.counts.sizes, made.results, strict=True):
        sized = garment.piece("front")
        fabric = next(f for f in result.fabrics if f.name == "front")
        (out,) = sized.needles_out
        at_start, at_end = (sum(edge.count for edge in fabric.edge(name)) for name in ("start", "end"))
        assert at_start == sized.start - (len(out.slots) if low == "hem" else 0)
        assert at_end == sized.start - (len(out.slots) if high == "top" else 0)
        # The ladder is as wide as a stitch, so the edge is no shorter.
        assert all(
            edge.length_cm == pytest.approx(sized.start * 14.3 / 40) for name in ("start", "end") for edge in fabric.edge(name)
        )
