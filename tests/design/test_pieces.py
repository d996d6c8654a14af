"""Pieces: levels, edges, necks, shoulders, mirror images, and what makes a piece impossible."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from walewright.design.model import Design, Piece, ShapingWay
from walewright.report.english import in_english
from walewright.report.model import Span
from walewright.source.syntax import Binary, EdgeLine, End, LevelDef, Levels, Name, Neck, Number, Shoulders, Start
from walewright.source.syntax import PieceBlock as PieceNode

Cut = Callable[..., Any]


def cm(value: float) -> Number:
    return Number(value, "cm")


def back(understood: tuple[Design | None, Any]) -> Piece:
    design, told = understood
    assert told == ()
    assert design is not None
    return design.piece("back")


def codes(understood: tuple[Design | None, Any]) -> list[str]:
    return [d.code for d in understood[1]]


def stack(*heights: float) -> Levels:
    names = ("hem", "underarm", "tip", "top")
    return Levels(tuple(LevelDef(n, cm(h)) for n, h in zip(names, heights, strict=True)))


def test_each_edge_moves_half_of_the_width(cut: Cut) -> None:
    piece = back(cut())
    assert [r.change for r in piece.left] == [(0.0, 0.0), (-4.0, -4.0), (0.0, 0.0)]
    assert piece.symmetric
    assert piece.left[1].way == ShapingWay("fashioned", 2)


def test_an_edge_not_led_to_the_top_goes_straight_there_without_a_name(cut: Cut) -> None:
    piece = back(cut())
    assert [(r.name, r.path, r.to_level) for r in piece.right][-1] == ("", "straight", "top")


def test_stitches_across_and_rows_up_are_lengths_by_the_swatch(cut: Cut) -> None:
    # The swatch has 2 stitches and 4 rows to the centimetre.
    neck = Neck(Number(40, "stitches"), Number(32, "rows"), "round", flat=Number(10, "stitches"))
    (opening,) = back(cut(neck)).openings
    assert opening.width == (20.0, 20.0)
    assert opening.depth == (8.0, 8.0)
    assert opening.flat == (5.0, 5.0)


@pytest.mark.parametrize(("shape", "flat"), [("round", 9.0), ("v", 0.0), ("square", 18.0)])
def test_the_flat_part_of_a_neck_follows_its_shape(cut: Cut, shape: str, flat: float) -> None:
    (opening,) = back(cut(Neck(cm(18), cm(8), shape))).openings
    assert opening.flat == (flat, flat)


def test_edges_apart_then_a_piece_is_not_symmetric(cut: Cut) -> None:
    edges = (EdgeLine("left", "slope", "tip", by=cm(-2)), EdgeLine("right", "straight", "top"))
    piece = back(cut(without=(EdgeLine,), add=edges, name="back"))
    assert not piece.symmetric
    assert [(r.to_level, r.change[0]) for r in piece.left] == [("tip", -2.0), ("top", 0.0)]
    assert [(r.to_level, r.change[0]) for r in piece.right] == [("top", 0.0)]


def test_edges_written_apart_but_alike_are_symmetric(cut: Cut) -> None:
    edges = tuple(EdgeLine(which, "slope", "tip", by=cm(-2)) for which in ("left", "right"))
    assert back(cut(without=(EdgeLine,), add=edges)).symmetric


UP = EdgeLine("both", "straight", "underarm")
"""A few rows before anything is cast off."""


def test_steps_and_cast_off_first(cut: Cut) -> None:
    edges = (
        EdgeLine("both", "straight", "underarm"),
        EdgeLine("both", "curve", "tip", width=cm(40), cast_off=cm(3)),
        EdgeLine("both", "steps", "top", by=cm(-2), times=3),
    )
    piece = back(cut(Neck(cm(10), cm(8), "round"), without=(EdgeLine, Shoulders), add=edges))
    assert piece.left[1].cast_off == (3.0, 3.0)
    assert piece.left[1].change == (-4.0, -4.0)
    assert piece.left[2].change == (-6.0, -6.0)
    assert piece.left[2].steps == (3, 3)


def side(piece: Piece, which: str) -> list[tuple[str, str, float]]:
    return [(r.name, r.to_level, r.change[0]) for r in getattr(piece, which)]


def test_a_mirror_image_changes_sides(read: Cut, cut: Cut) -> None:
    edges = (EdgeLine("left", "slope", "tip", by=cm(-2)), EdgeLine("right", "straight", "top"))
    design, told = cut(without=(EdgeLine,), add=edges)
    assert design is not None
    node = PieceNode("right", "plain", mirror_of="left")
    body = (stack(0, 30, 50, 52), Start(cm(40)), *edges, End("waste"))
    design, told = read(PieceNode("left", "plain", copies=1, body=body), node, join=None)
    assert told == ()
    assert design is not None
    left, right = design.piece("left"), design.piece("right")
    assert side(right, "left") == side(left, "right")
    assert side(right, "right") == side(left, "left")
    assert right.mirror_of == "left"
    assert all(r.origin.path.startswith("piece right /") for r in (*right.left, *right.right))


@pytest.mark.parametrize(
    ("node", "codes_wanted"),
    [
        (PieceNode("right", "plain", mirror_of="bakc"), ["unknown-name"]),
        (PieceNode("right", "plain", mirror_of="right"), ["mirror-ring"]),
        (PieceNode("right", "plain", mirror_of="back", body=(End("waste"),)), ["same-as-model"]),
        (PieceNode("right", like="bakc"), ["unknown-name"]),
        (PieceNode("right", like="right"), ["like-ring"]),
        (PieceNode("right", "plian", mirror_of="back"), ["mirror-other-fabric"]),
    ],
)
def test_faulty_mirrors(read: Cut, node: PieceNode, codes_wanted: list[str]) -> None:
    assert codes(read(node)) == codes_wanted


def test_a_mirror_of_a_mirror_is_as_its_model(read: Cut, cut: Cut) -> None:
    edges = (EdgeLine("left", "slope", "tip", by=cm(-2)), EdgeLine("right", "straight", "top"))
    body = (stack(0, 30, 50, 52), Start(cm(40)), *edges, End("waste"))
    chain = [PieceNode(f"p{n}", "plain", mirror_of=f"p{n - 1}") for n in range(58, 0, -1)]
    design, told = read(*chain, PieceNode("p0", "plain", body=body))
    assert told == ()
    assert side(design.piece("p58"), "left") == side(design.piece("p0"), "left")
    assert side(design.piece("p57"), "right") == side(design.piece("p0"), "left")


def test_two_mirrors_of_each_other(read: Cut) -> None:
    assert codes(read(PieceNode("a", "plain", mirror_of="b"), PieceNode("b", "plain", mirror_of="a"))) == ["mirror-ring"]


@pytest.mark.parametrize(
    ("node", "code"),
    [
        (stack(0, 30, 30, 52), "levels-fall"),
        (stack(5, 30, 50, 52), "first-level"),
        (stack(0, 30, 50, 1052), "absurd-length"),
        (Levels((LevelDef("hem", cm(0)), LevelDef("underarm", Number(10, "stitches")))), "stitches-up"),
        (Levels((LevelDef("hem", cm(0)),)), "missing-part"),
        (Start(Number(60)), "no-unit"),
        (Start(Number(60, "g")), "wrong-unit"),
        (Start(Number(60, "rows")), "rows-across"),
        (Start(cm(0)), "not-positive"),
        (Start(cm(-4)), "not-positive"),
        (Start(cm(1200)), "absurd-length"),
        (Start(cm(40), "glue"), "unknown-name"),
        (Start(cm(40), "waste", "hem"), "unknown-name"),
        (Start(cm(40), "chain", "welt"), "edging-needs-loops"),
        (Neck(cm(40), cm(8), "round"), "neck-too-wide"),
        (Neck(cm(18), cm(52), "round"), "neck-too-deep"),
        (Neck(cm(18), cm(8), "round", flat=cm(19)), "neck-flat"),
        (Neck(cm(18), cm(8), "square", flat=cm(9)), "neck-flat"),
        (Neck(cm(18), cm(8), "oval"), "unknown-name"),
        (Neck(cm(18), cm(8), "v", way="fashioned", inset=4), "no-such-tool"),
        (Shoulders("shoulder"), "unknown-name"),
        (Shoulders("top"), "shoulders-at-top"),
        (End("glue"), "unknown-name"),
    ],
)
def test_one_fault_of_a_piece_is_one_message(cut: Cut, node: Any, code: str) -> None:
    design, _ = understood = cut(node)
    assert design is None
    assert codes(understood) == [code]


@pytest.mark.parametrize(
    ("edges", "code"),
    [
        ((EdgeLine("both", "straight", "armpit"),), "unknown-name"),
        ((EdgeLine("both", "zigzag", "tip"),), "unknown-name"),
        ((EdgeLine("both", "straight", "tip"), EdgeLine("both", "straight", "underarm")), "edge-goes-down"),
        ((EdgeLine("both", "straight", "tip"), EdgeLine("both", "straight", "tip")), "edge-goes-down"),
        ((EdgeLine("left", "straight", "tip"), EdgeLine("both", "straight", "top")), "edges-apart"),
        ((EdgeLine("left", "slope", "tip", width=cm(40)),), "width-of-one-edge"),
        ((EdgeLine("both", "slope", "tip"),), "missing-part"),
        ((EdgeLine("both", "slope", "tip", width=cm(-1)),), "not-positive"),
        ((EdgeLine("both", "slope", "tip", by=cm(-24)),), "no-width-left"),
        ((UP, EdgeLine("both", "curve", "tip", width=cm(40), cast_off=cm(5))), "cast-off-too-wide"),
        ((UP, EdgeLine("both", "curve", "tip", width=cm(60), cast_off=cm(5))), "cast-off-too-wide"),
        ((UP, EdgeLine("both", "curve", "tip", width=cm(40), cast_off=cm(-1))), "not-positive"),
        ((EdgeLine("both", "curve", "tip", width=cm(40), cast_off=cm(3)),), "cast-off-at-start"),
        ((EdgeLine("both", "steps", "tip", by=cm(-2), times=0),), "not-positive"),
        ((EdgeLine("both", "steps", "tip", by=cm(-2), times=500),), "absurd-count"),
        ((EdgeLine("both", "steps", "tip", by=cm(900), times=2),), "absurd-length"),
        ((EdgeLine("both", "slope", "tip", by=cm(-2), way="fashioned", inset=5),), "no-such-tool"),
        ((EdgeLine("both", "slope", "tip", by=Number(-4, "rows")),), "rows-across"),
        ((EdgeLine("both", "straight", "tip", called="neck"),), "reserved-name"),
        (
            (
                EdgeLine("both", "straight", "underarm", called="a"),
                EdgeLine("both", "straight", "tip", called="b"),
                EdgeLine("both", "straight", "top", called="a"),
            ),
            "repeated-name",
        ),
        (
            (
                EdgeLine("left", "straight", "underarm", called="a"),
                EdgeLine("left", "straight", "tip", called="b"),
                EdgeLine("left", "straight", "top", called="a"),
            ),
            "repeated-name",
        ),
        (
            (
                EdgeLine("both", "straight", "underarm", called="a"),
                EdgeLine("both", "straight", "tip", called="b"),
                EdgeLine("right", "straight", "top", called="a"),
            ),
            "repeated-name",
        ),
    ],
)
def test_one_fault_of_an_edge_is_one_message(read: Cut, cut: Cut, edges: tuple[EdgeLine, ...], code: str) -> None:
    body = (stack(0, 30, 50, 52), Start(cm(48)), *edges, End("waste"))
    _, told = read(PieceNode("flap", "plain", body=body))
    assert [d.code for d in told] == [code]


def test_levels_that_fall_in_one_size_name_it_with_its_numbers(cut: Cut) -> None:
    levels = Levels(
        (
            LevelDef("hem", cm(0)),
            LevelDef("underarm", cm(30)),
            LevelDef("tip", Binary("-", Name("length"), cm(22.5))),
            LevelDef("top", cm(60)),
        )
    )
    _, (said,) = cut(levels)
    assert said.code == "levels-fall"
    assert said.sizes == ("S",)
    assert in_english(said).notes == ("S: 30 cm, then 29.5 cm",)


def test_a_neck_too_wide_gives_the_numbers_of_each_size(cut: Cut) -> None:
    _, (said,) = cut(Neck(Binary("-", Name("length"), cm(13)), cm(8), "round", span=Span("p.wale", 5, 9)))
    assert said.code == "neck-too-wide"
    assert said.sizes == ("M",)
    assert in_english(said).labels[0] == "S 39 cm, M 41 cm wide"
    assert in_english(said).notes == ("the piece at its top is 40 cm wide",)


def test_the_narrower_side_of_a_lopsided_piece_bounds_its_neck(cut: Cut) -> None:
    # 24 cm on either side of the centre, less 12 cm at the left: 24 cm are left for a centred neck, of 36 cm in all.
    edges = (EdgeLine("left", "slope", "tip", by=cm(-12)),)
    assert codes(cut(Neck(cm(23), cm(2), "square"), without=(EdgeLine,), add=edges)) == []
    assert codes(cut(Neck(cm(25), cm(2), "square"), without=(EdgeLine,), add=edges)) == ["neck-too-wide"]


@pytest.mark.parametrize("lacking", [Start, Levels, End])
def test_a_piece_without_a_part(cut: Cut, lacking: type) -> None:
    _, (said,) = cut(without=(lacking,))
    assert said.code == "missing-part"
    assert lacking.__name__.lower() in in_english(said).message


def test_a_statement_twice(cut: Cut) -> None:
    _, (said,) = cut(add=(End("cast-off"),))
    assert said.code == "repeated-statement"


@pytest.mark.parametrize(("copies", "code"), [(0, "not-positive"), (1000, "absurd-count")])
def test_copies(cut: Cut, copies: int, code: str) -> None:
    assert codes(cut(copies=copies)) == [code]


def test_runs_that_follow_one_another_under_one_name_are_one_edge(cut: Cut) -> None:
    edges = (EdgeLine("both", "straight", "underarm", called="a"), EdgeLine("both", "straight", "tip", called="a"))
    assert [r.name for r in back(cut(without=(EdgeLine,), add=edges)).left[:2]] == ["a", "a"]
