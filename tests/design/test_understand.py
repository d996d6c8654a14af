"""The whole stage over hand-built trees: missing parts, names, joins, requirements, silence after what was told before."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from tests.design.dump import dump
from walewright.design import Changes, Shipped, understand
from walewright.report.english import in_english
from walewright.report.model import Severity, Span
from walewright.source.syntax import (
    BandLine,
    Binary,
    Broken,
    EdgeLine,
    EdgeRef,
    EdgingLine,
    FabricBlock,
    JoinLine,
    Let,
    MakingUp,
    Name,
    Number,
    PatternBlock,
    PieceBlock,
    Require,
    SizeRow,
    Sizes,
    Start,
    Stitch,
    Swatch,
    TextLine,
    Tree,
    YarnLine,
)

Read = Callable[..., Any]


def at(line: int) -> Span:
    return Span("more.wale", line * 100, line * 100 + 10)


def codes(understood: tuple[Any, Any]) -> list[str]:
    return [d.code for d in understood[1]]


def test_a_sound_garment(read: Read) -> None:
    design, told = read(MakingUp((TextLine("step", "Sew."), TextLine("step", "Block."))))
    assert told == ()
    assert design.title == "Vest"
    assert design.sizes == ("S", "M")
    assert design.texts == (("summary", "A vest."),)
    assert design.making_up == ("Sew.", "Block.")
    assert design.yarns[0].ball_metres == 120.0
    assert design.fabrics[0].stitches_per_cm == 2.0
    assert design.joins[0].easing == (2.0, 2.0)
    assert design.bands[0].along[0].edge == "neck"


def test_joins_in_the_making_up_come_where_they_stand(read: Read) -> None:
    seam = JoinLine((EdgeRef("back", "start"),), (EdgeRef("back", "neck"),), Number(60, "cm"))
    design, told = read(MakingUp((TextLine("step", "Block."), seam, TextLine("step", "Sew in ends."))))
    assert told == ()
    assert [join.origin.path for join in design.joins][-1] == "join back start to back neck"
    assert design.making_up == ("Block.", "Sew in ends.")
    assert design.joins_before == (len(design.joins) - 1, len(design.joins))


def test_the_dump_is_one_text_for_one_meaning(read: Read) -> None:
    same, _ = read()
    again, _ = read()
    other, _ = read(let=Let("half", Number(50, "cm")))
    assert dump(same) == dump(again)
    assert dump(same) != dump(other)
    assert "values: 83.5 | 94\n" in dump(same)


def test_a_source_of_one_definition_lacks_the_rest_in_one_message() -> None:
    tree = Tree("e.wale", (Let("ease", Number(4.0, "cm")),))
    design, (said,) = understand(tree, Shipped({}, {}), Changes())
    assert design is None
    assert said.code == "missing-part"
    for part in ("pattern title", "sizes", "machine", "piece"):
        assert part in in_english(said).message


@pytest.mark.parametrize("part", ["pattern", "sizes", "machine"])
def test_one_missing_part(read: Read, part: str) -> None:
    assert codes(read(**{part: None})) == ["missing-part"]


def test_a_lost_line_is_not_told_of_again(read: Read) -> None:
    design, told = read(Broken("machine bulky on the table"), machine=None)
    assert design is None
    assert told == ()


def test_a_name_in_a_lost_line_is_not_unknown(read: Read) -> None:
    assert codes(read(Broken("let half = = 4 cm"), let=None)) == []
    assert codes(read(Broken("let hafl = = 4 cm"), let=None)) == ["unknown-name"]


def test_a_name_that_is_not_there_is_told_once_with_all_its_places(read: Read) -> None:
    lets = (Let("a", Name("waist", span=at(1))), Let("b", Binary("+", Name("waist", span=at(2)), Name("waist", span=at(3)))))
    _, (said,) = read(*lets)
    assert said.code == "unknown-name"
    assert [label.span for label in said.labels] == [at(1), at(2), at(3)]


def test_what_needs_a_failed_thing_says_nothing(read: Read) -> None:
    assert codes(read(yarn=YarnLine("wool", "w", Number(100, "cm"), Number(120, "m")))) == ["wrong-unit"]
    assert codes(read(let=Let("half", Binary("+", Number(4, "cm"), Number(4))))) == ["mixed-units"]
    row = SizeRow("length", (1.0,), "cm")
    assert codes(read(sizes=Sizes(("S", "M"), (row,)), let=Let("half", Name("length")))) == ["ragged-row"]


def test_several_faults_are_told_in_the_order_of_the_source(read: Read) -> None:
    told = read(
        Require(Number(1, "cm", span=at(2)), ">=", Number(2, "cm", span=at(2)), span=at(2)),
        JoinLine((EdgeRef("back", "sied", span=at(1)),), (EdgeRef("frunt", "side", span=at(3)),), span=at(1)),
    )[1]
    assert [d.code for d in told] == ["no-such-edge", "require-fails", "unknown-name"]


@pytest.mark.parametrize("kind", ["yarn", "fabric", "edging", "let", "piece", "pattern", "sizes", "machine"])
def test_what_is_said_twice_shows_both_places(read: Read, kind: str, vest_nodes: dict[str, Any]) -> None:
    first = vest_nodes[kind]
    _, (said,) = read(replace(first, span=at(1)))
    assert said.code in ("repeated-name", "repeated-statement")
    assert [label.span for label in said.labels] == [at(1), first.span]


def test_a_piece_and_a_band_share_their_names(read: Read) -> None:
    assert codes(read(BandLine("back", "welt", (EdgeRef("back", "neck"),)))) == ["repeated-name"]


def test_a_row_and_a_let_share_their_names(read: Read) -> None:
    assert codes(read(Let("bust", Number(4, "cm")))) == ["repeated-name"]


@pytest.mark.parametrize(
    ("edge", "code"),
    [("start", None), ("neck", None), ("shoulder", None), ("side", None), ("armhole", None), ("end", "no-such-edge")],
)
def test_edges_of_a_piece_with_a_neck(read: Read, edge: str, code: str | None) -> None:
    ref = EdgeRef("back", edge)
    assert codes(read(JoinLine((ref,), (EdgeRef("back", "start"),)))) == ([code] if code else [])


def test_a_piece_without_a_neck_has_an_end(read: Read, cut: Read, vest_nodes: dict[str, Any]) -> None:
    plain = tuple(s for s in vest_nodes["piece"].body if type(s).__name__ not in ("Neck", "Shoulders"))
    panel = PieceBlock("panel", "plain", body=plain)
    assert codes(read(panel, JoinLine((EdgeRef("panel", "end"),), (EdgeRef("back", "start"),)))) == []
    _, (said,) = read(panel, JoinLine((EdgeRef("panel", "shoulder"),), (EdgeRef("back", "start"),)))
    assert said.code == "no-such-edge"
    assert "end" in in_english(said).notes[0]


def test_a_requirement_that_fails_names_sizes_values_and_reason(read: Read) -> None:
    _, (said,) = read(Require(Name("length"), ">=", Number(53, "cm"), "long enough to tuck in"))
    assert said.code == "require-fails"
    assert in_english(said).message == "it is required that length >= 53 cm, and it is not so: long enough to tuck in"
    assert said.sizes == ("S",)
    assert in_english(said).notes == ("S: 52 cm against 53 cm",)


@pytest.mark.parametrize(("relation", "holds"), [("<=", True), (">=", True), ("=", True), ("<", False), (">", False), ("~", None)])
def test_relations_allow_for_binary_fractions(read: Read, relation: str, holds: bool | None) -> None:
    tenths = Binary("+", Number(0.1, "cm"), Number(0.2, "cm"))
    told = codes(read(Require(tenths, relation, Number(0.3, "cm"))))
    assert told == ([] if holds else ["unknown-name"] if holds is None else ["require-fails"])


def test_a_requirement_keeps_both_sides(read: Read) -> None:
    design, _ = read(Require(Name("length"), ">", Name("half")))
    (required,) = design.requirements
    assert (required.left, required.relation, required.right) == ((52.0, 54.0), ">", (48.0, 48.0))
    assert required.text == "length > half"


def test_a_requirement_compares_like_with_like(read: Read) -> None:
    assert codes(read(Require(Name("length"), ">", Number(4, "rows")))) == ["mixed-units"]


@pytest.mark.parametrize(
    ("block", "code"),
    [
        (FabricBlock("lace", (Stitch("stocking stitch", "wool", "4"),)), "missing-part"),
        (FabricBlock("lace", (Stitch("stocking stitch", "silk", "4"), "swatch")), "unknown-name"),
        (FabricBlock("lace", (Stitch("cable", "wool", "4"), "swatch")), "unknown-name"),
        (FabricBlock("lace", (Stitch("latched rib", "wool", "4", 1), "swatch")), "bad-rib"),
        (FabricBlock("lace", (Stitch("latched rib", "wool", "4"), "swatch")), "bad-rib"),
        (EdgingLine("hem", "lace", Number(6, "cm")), "unknown-name"),
        (EdgingLine("hem", "plain", Number(0, "cm")), "not-positive"),
        (EdgingLine("hem", "plain", Number(6, "stitches")), "stitches-up"),
        (EdgingLine("hem", "plain", Number(6, "cm"), when="later"), "unknown-name"),
        (EdgingLine("hem", "plain", Number(6, "cm"), cast_off="knots"), "unknown-name"),
        (YarnLine("silk", "s", Number(0, "g"), Number(120, "m")), "not-positive"),
        (YarnLine("silk", "s", Number(50, "g"), Number(120)), "no-unit"),
        (YarnLine("silk", "s", Number(50, "ell"), Number(120, "m")), "unknown-name"),
        (BandLine("cuff", "hem", (EdgeRef("back", "neck"),)), "unknown-name"),
        (Start(Number(6, "cm")), "impossible-statement"),
        (EdgeLine("both", "straight", "top"), "impossible-statement"),
    ],
)
def test_faulty_materials_and_places(read: Read, vest_nodes: dict[str, Any], block: Any, code: str) -> None:
    if isinstance(block, FabricBlock):
        real = next(s for s in vest_nodes["fabric"].body if isinstance(s, Swatch))
        block = replace(block, body=tuple(real if s == "swatch" else s for s in block.body))
    assert codes(read(block)) == [code]


@pytest.mark.parametrize(
    ("change", "code"),
    [
        ({"width": Number(0, "cm")}, "not-positive"),
        ({"width": Number(20, "mm")}, "absurd-swatch"),
        ({"height": Number(15, "m")}, "absurd-swatch"),
        ({"stitches": Number(40, "rows")}, "wrong-unit"),
        ({"rows": Number(60)}, "no-unit"),
        ({"weight": Number(-3, "g")}, "not-positive"),
        ({"weight": None}, None),
    ],
)
def test_swatches(read: Read, vest_nodes: dict[str, Any], change: dict[str, Any], code: str | None) -> None:
    fabric = vest_nodes["fabric"]
    body = tuple(replace(s, **change) if isinstance(s, Swatch) else s for s in fabric.body)
    assert codes(read(fabric=replace(fabric, body=body))) == ([code] if code else [])


def test_warnings_do_not_stop_a_design(read: Read) -> None:
    row = SizeRow("length", (54.0, 52.0), "cm")
    design, (said,) = (
        read(sizes=Sizes(("S", "M"), (row,)), piece=None, band=None, join=None)[0],
        read(sizes=Sizes(("S", "M"), (row,)))[1],
    )
    assert design is None
    assert said.severity is Severity.WARNING
    assert read(sizes=Sizes(("S", "M"), (row,)))[0] is not None


def test_a_text_of_which_there_is_one_is_told_when_twice(read: Read) -> None:
    twice = PatternBlock(
        "Vest", (TextLine("summary", "One."), TextLine("summary", "Two."), TextLine("note", "a"), TextLine("note", "b"))
    )
    assert codes(read(pattern=twice)) == ["repeated-statement"]


def test_notes_outside_the_pattern_block_are_kept(read: Read, vest_nodes: dict[str, Any]) -> None:
    fabric = vest_nodes["fabric"]
    design, _ = read(TextLine("note", "Read first."), fabric=replace(fabric, body=(*fabric.body, TextLine("note", "Rest it."))))
    assert design.texts == (("summary", "A vest."), ("note", "Read first."), ("note", "plain: Rest it."))
