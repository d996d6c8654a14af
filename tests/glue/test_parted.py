"""Bands knitted in parts: edges cut within a piece lie in stretches, and the ends that meet where no seam is are sewn together."""

from __future__ import annotations

import pytest

from tests.fit.test_needed import LONG
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.glue import Glued


def parted(copies: str, edge: str, worn: str = "") -> Glued:
    """A scarf, its band in two parts along one edge."""
    left = "other" if edge == "one" else "one"
    text = LONG.format(copies=copies).replace("along scarf one", f"along scarf {edge}")
    text = text.replace("scarf other +", f"scarf {left} +").replace("at tension 7\n", f"at tension 7\n{worn}")
    made = pipeline.counted(text, "long.wale", shipped(), Changes())
    assert [d.code for d in made.diagnostics] == ["band-parted"]
    assert made.glued is not None
    return made.glued.groups[0]


@pytest.mark.parametrize(("copies", "times"), [("", 1), (", knit 2", 2), (", knit 3", 3)])
@pytest.mark.parametrize("worn", ["", "    right side purl\n"])
@pytest.mark.parametrize(("edge", "left_end"), [("one", "bottom"), ("other", "top")])
def test_parts_of_one_edge_follow_each_other_and_their_ends_are_sewn(
    copies: str, times: int, edge: str, left_end: str, worn: str
) -> None:
    """The left edge hangs with its bottom at the left, purl side to the knitter; the right one with its top. Stretches are counted
    from the bottom up. Where piece and band are both worn with the purl side out only the order of the two ends is
    another, for they are walked the other way round."""
    glued = parted(copies, edge, worn)
    parts = ("long_band_1", "long_band_2")
    found = [(line.owner, line.copy, [(p.edge, p.cut) for p in line.along], line.left_ends) for line in glued.lines]
    cuts = (1, 2) if left_end == "bottom" else (2, 1)
    assert found == [
        (part, n, [(edge, cut)], (left_end,)) for part, cut in zip(parts, cuts, strict=True) for n in range(1, times + 1)
    ]
    sewn = [((e.one.owner, e.one.edge, e.one.copy), (e.other.owner, e.other.edge, e.other.copy)) for e in glued.ends]
    pairs = [((parts[0], "last end", n), (parts[1], "first end", n)) for n in range(1, times + 1)]
    assert sewn == [pair[::-1] if worn else pair for pair in pairs]
    order = [(task.kind, task.name or task.number) for task in glued.order]
    # The ends are sewn one after the other once both parts are knitted.
    assert order == [("piece", "scarf"), ("band", parts[0]), ("band", parts[1]), *(("ends", n) for n in range(times))]


def test_no_band_in_parts_has_no_ends_to_sew() -> None:
    text = LONG.format(copies="").replace("length 100 cm", "length 50 cm")
    made = pipeline.counted(text, "long.wale", shipped(), Changes())
    assert made.glued is not None
    assert made.glued.groups[0].ends == ()
    assert [p.cut for line in made.glued.groups[0].lines for p in line.along] == [0]


HUNG = """\
pattern "Hung"
sizes one
    length 55 cm
machine standard
yarn wool "wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14 cm by 15 cm
edging border in plain, 2 cm deep, added after, cast off chain
piece cape in plain
    levels hem 0 cm, top length
    start 20 cm wide with e-wrap
    left edge straight to top called one
    right edge straight to top called other
    end on waste yarn
piece hood in plain
    levels neck 0 cm, crown 30 cm
    start along cape end
    left edge straight to crown called face
    right edge straight to crown called nape
    end cast off
band long_band with border along {along}
free {free}
"""


@pytest.mark.parametrize("meant", ["", " + long_band first_end"])
def test_parts_that_meet_where_one_piece_is_hung_on_another_are_sewn_together(meant: str) -> None:
    text = HUNG.format(along="cape one + hood face", free=f"cape start + cape other + hood nape + hood end{meant}")
    made = pipeline.counted(text, "hung.wale", shipped(), Changes())
    assert [d.code for d in made.diagnostics] == ["band-parted"]
    assert made.glued is not None
    (glued,) = made.glued.groups
    assert [{ends.one.owner, ends.other.owner} for ends in glued.ends] == [{"long_band_1", "long_band_2"}]
    assert {ends.one.edge for ends in glued.ends} | {ends.other.edge for ends in glued.ends} == {"first end", "last end"}
    assert glued.order[-1].kind == "ends"


def test_bands_of_their_own_that_meet_there_are_not() -> None:
    text = HUNG.format(along="cape one", free="cape start + cape other + hood nape + hood end")
    text = text.replace("free", "band other_band with border along hood face\nfree")
    made = pipeline.counted(text, "hung.wale", shipped(), Changes())
    assert made.glued is not None, made.diagnostics
    assert made.glued.groups[0].ends == ()
