"""Faulty sources: one mistake is one message, at its place, and the rest still reads."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from walewright import source
from walewright.report.codes import SOURCE
from walewright.report.english import in_english
from walewright.report.model import Diagnostic
from walewright.source import syntax as s
from walewright.source.grammar import literals
from walewright.source.limits import DEEPEST


def told(text: str) -> tuple[Diagnostic, ...]:
    return source.read("f.wale", text)[1]


def only(text: str) -> Diagnostic:
    found = told(text)
    assert len(found) == 1, [in_english(d).message for d in found]
    return found[0]


def marked(text: str) -> list[tuple[str, str]]:
    """Codes with what their first label marks."""
    return [(d.code, text[d.labels[0].span.start : d.labels[0].span.end]) for d in told(text)]


PIECE = "piece a in b\n    "
CHART = "chart c\n    "
FABRIC = "fabric f\n    "
EDGING = "edging e in f, 3 cm deep, "
OPENING = PIECE + "opening n 3 cm wide from slit to top\n        "


@pytest.mark.parametrize(
    ("text", "code", "mark"),
    [
        ("", "empty-source", ""),
        ("\n  # only this\n", "empty-source", ""),
        ('pattern "x', "unclosed-text", '"x'),
        ('pattern "x\\"  ', "unclosed-text", '"x\\"'),
        ('pattern "a\\tb"', "unknown-escape", "\\t"),
        ("let a\x00 = 3", "control-character", "\x00"),
        ('pattern ""', "empty-text", '""'),
        ('pattern "x", in german " \\n\u2003 "', "empty-text", '" \\n\u2003 "'),
        ('note "\x1b[31m"', "control-character", "\x1b"),
        ('note "\u202eabc"', "control-character", "\u202e"),
        ("let a = 3 # \ud800", "control-character", "\ud800"),
        ("\x0clet a = 3", "control-character", "\x0c"),
        ("let a = 3\rlet b = 4", "control-character", "\r"),
        ("sizes " + "S " * 500, "line-too-long", "s"),
        ("let a = " + "-" * 5000 + "1", "line-too-long", "l"),
        ("x" * 300_000, "line-too-long", "x"),
        ("x" * 1_000_000, "source-too-long", ""),
        ("let a = 3 cmm", "unreadable-line", "cmm"),
        ("let a = 12cmx", "unreadable-line", "cmx"),
        ("let a = 1.2.3", "unreadable-line", "."),
        ("let a = 3 4", "unreadable-line", "4"),
        ("let a = (3", "unreadable-line", ""),
        ("let a = 3)", "unreadable-line", ")"),
        ("let a =", "unreadable-line", ""),
        ("piece a im b", "unreadable-line", "im"),
        ("piecea in b", "unreadable-line", "piecea"),
        ("@", "unreadable-line", "@"),
        ("levels hem 0 cm", "misplaced-line", "levels"),
        ("fabric f\n    levels hem 0 cm", "misplaced-line", "levels"),
        (PIECE + "neck 3 cm wide, 3 cm deep", "incomplete-statement", "neck 3 cm wide, 3 cm deep"),
        (PIECE + "start 3 cm wide", "incomplete-statement", "start 3 cm wide"),
        (PIECE + "neck v, 3 cm wide, 3 cm deep, round", "repeated-option", "round"),
        (PIECE + "start 3 cm wide on waste yarn with chain", "repeated-option", "with chain"),
        (PIECE + "edges straight to top, simple, fashioned 2 in", "repeated-option", "fashioned 2 in"),
        ("piece a in b, knit 1.5", "not-whole-number", "1.5"),
        ("let a = 1234567890", "number-too-long", "1234567890"),
        ("let a = 0.1234567890123456", "number-too-long", "0.1234567890123456"),
        ("let a = " + "9" * 900, "number-too-long", "9" * 900),
        ("let round = 3 cm", "reserved-word", "let round = 3 cm"),
        ("sizes S\n    v 3 cm", "reserved-word", "v 3 cm"),
        ("edging chain in b, 3 cm deep", "reserved-word", "edging chain in b, 3 cm deep"),
        ("    let a = 3", "wrong-indent", " "),
        ("let a = 3\n  let b = 3", "wrong-indent", " "),
        (PIECE + "end cast off\n  shoulders held from tip", "wrong-indent", " "),
        (PIECE + "end cast off\n        shoulders held from tip", "wrong-indent", " "),
        ("piece a in b\nend cast off", "wrong-indent", "end cast off"),
        ("piece a in b\n\tend cast off\n\tshoulders held from tip", "tab-indent", "\t"),
        (PIECE + "levels hem 0 cm, top between 3 cm or 4 cm", "unreadable-line", "or"),
        (PIECE + "edges in 3 cm every 2 rows to top", "unreadable-line", "cm"),
        (PIECE + "edges in 1.5 stitches every 2 rows to top", "not-whole-number", "1.5"),
        (PIECE + "edges in 1 stitch every 2.5 rows to top", "not-whole-number", "2.5"),
        (PIECE + "edges straight to top, two at once, two at once", "repeated-option", "two at once"),
        (PIECE + "start 3 cm wide along a b, on waste yarn", "repeated-option", "on waste yarn"),
        (PIECE + "wedge 3 cm wide at both edges from a to b", "incomplete-statement", "wedge 3 cm wide at both edges from a to b"),
        (PIECE + "wedge 3 cm wide at both edges from a to b, held in, let out", "repeated-option", "let out"),
        (PIECE + "wedge 3 cm wide from a to b, held in", "unreadable-line", "from"),
        (PIECE + "slot s 3 cm wide at a, 3 cm left of centre, 3 cm right of centre", "repeated-option", "3 cm right of centre"),
        (PIECE + "slot s 3 cm wide at a, 3 cm left", "unreadable-line", ""),
        (PIECE + "buttonholes 2.5 over 2 stitches from a to b, 3 cm from the left edge", "not-whole-number", "2.5"),
        (PIECE + "buttonholes 2 over 2 rows from a to b, 3 cm from the left edge", "unreadable-line", "rows"),
        (PIECE + "repeat 2 from a to b", "unreadable-line", "from"),
        (PIECE + "fabric rib", "unreadable-line", ""),
        (PIECE + "use s, 3 cm", "unreadable-line", "3"),
        (PIECE + "end gatherd", "unreadable-line", "gatherd"),
        (PIECE + "let a = 3 cm", "misplaced-line", "let"),
        (OPENING + "end cast off", "misplaced-line", "end"),
        (OPENING + "neck 3 cm wide, 3 cm deep, v", "misplaced-line", "neck"),
        (OPENING + "left edge strait to top", "unreadable-line", "strait"),
        (OPENING + "left edge straight to top\n      end cast off", "wrong-indent", " "),
        (OPENING + "left edge straight to top\n          right edge straight to top", "wrong-indent", " "),
        (OPENING + "left edge straight to top\nright edge straight to top", "wrong-indent", "right edge straight to top"),
        ("piece a in b\n    end cast off\nfabric rib from a to b", "wrong-indent", "fabric rib from a to b"),
        ("piece a in b, as hat", "unreadable-line", "hat"),
        ("band a with b along c d, buttonholes 6 over 2 stitches", "unreadable-line", ""),
        ("band a with b along c d, buttonholes 6 over 2.5 stitches, 3 cm first, 3 cm last", "not-whole-number", "2.5"),
        ("join a b to c d, grafted, linked", "repeated-option", "linked"),
        ("edging e in rib, 3 cm deep, knitted first, added after", "repeated-option", "added after"),
        ("cord hood 3 cm", "unreadable-line", ""),
        ("shape s(a b)", "unreadable-line", "b"),
        ("shape s(a, on)", "reserved-word", "shape s(a, on)"),
        ("let between = 3 cm", "reserved-word", "let between = 3 cm"),
        ("use s", "unreadable-line", ""),
        ("without s", "misplaced-line", "without"),
        (CHART + "key knit knit", "unreadable-line", "knit"),
        (CHART + "key O", "unreadable-line", ""),
        (CHART + "key hole", "unreadable-line", "hole"),
        (CHART + "key | hole", "unreadable-line", "|"),
        (CHART + "key O hol", "unreadable-line", "hol"),
        (CHART + "key A four from left", "unreadable-line", "four"),
        (CHART + "key N knit navy", "unreadable-line", "navy"),
        (CHART + "key O hole in navy", "unreadable-line", "in"),
        (CHART + "key C cross 2 over 2", "unreadable-line", ""),
        (CHART + "key C cross 2 over 2, both first", "unreadable-line", "both"),
        (CHART + "key C cross 1.5 over 2, left first", "not-whole-number", "1.5"),
        (CHART + "key \u0301 hole", "invisible-symbol", "\u0301"),
        (CHART + "| . O", "unreadable-line", ""),
        (CHART + ". O |", "unreadable-line", "."),
        (CHART + "| . | O |", "unreadable-line", "O"),
        (CHART + "| |", "unreadable-line", "|"),
        (CHART + "| . O\u0301 . |", "invisible-symbol", "\u0301"),
        (CHART + "| . \u200b . |", "invisible-symbol", "\u200b"),
        (CHART + '| . " . |', "unclosed-text", '" . |'),
        (CHART + "| " + "." * 1000 + "|", "line-too-long", "|"),
        (CHART + "repeat 6 rows", "unreadable-line", "rows"),
        (CHART + "repeat 6.5 stitches", "not-whole-number", "6.5"),
        (CHART + "repeat 6 times from a to b", "unreadable-line", "times"),
        (CHART + "colours in blocks", "unreadable-line", "in"),
        (CHART + 'note "n"', "misplaced-line", "note"),
        (CHART + "stripes of 2 rows wool at tension 4", "misplaced-line", "stripes"),
        ("| . O |", "misplaced-line", "|"),
        ("key O hole", "misplaced-line", "key"),
        (PIECE + "|.O|", "misplaced-line", "|"),
        (FABRIC + "chart c in wool, centred", "unreadable-line", ","),
        (FABRIC + "chart c in wool at tension 5, centred, balanced", "repeated-option", "balanced"),
        (FABRIC + "chart c in wool at tension 5, 1.5 edge stitches", "not-whole-number", "1.5"),
        (FABRIC + "stripes of 4 rows wool, navy at tension 5", "unreadable-line", "navy"),
        (FABRIC + "stripes of 4.5 rows wool at tension 5", "not-whole-number", "4.5"),
        (FABRIC + "right edge straight to top", "unreadable-line", "edge"),
        (FABRIC + "swatch 4 st by 4 rows = 3 cm by 3 cm, 14 mm to a row", "unreadable-line", "row"),
        (FABRIC + "swatch 4 st by 4 rows = 3 cm by 3 cm, 6 g, 6 g", "repeated-option", "6 g"),
        ('yarn f "w", 50 g', "unreadable-line", ""),
        ('yarn f "w", 50 g of 2/28', "unreadable-line", ""),
        ('yarn f "w", 50 g of 2/28 nm', "unreadable-line", "nm"),
        ('yarn f "w", 50 g of wool', "unreadable-line", "wool"),
        ('yarn f "w", 50 g of 1/1234567890 Nm', "number-too-long", "1/1234567890"),
        ('yarn f "w", 50 g = 82 m of 2/28 Nm', "unreadable-line", "of"),
        ('yarn f "w", 50 g = 82 m, shown blue', "unreadable-line", "blue"),
        ("edging e in f, folded", "incomplete-statement", "edging e in f, folded"),
        ("edging e in f, chained, 3 cm deep", "chained-depth", "3 cm"),
        (EDGING + "folded, picot", "repeated-option", "picot"),
        (EDGING + "mock rib 3 by 1", "unreadable-line", "3"),
        (EDGING + "mock rib 2 by 2", "unreadable-line", "2"),
        (EDGING + "fold row at 8", "unreadable-line", "8"),
        (EDGING + "inside at tension 3, inside at tension 4", "repeated-option", "inside at tension 4"),
        (PIECE + "start 3 cm wide on waste yarn by hand, on waste yarn", "repeated-option", "on waste yarn"),
        (PIECE + "motif anchor, 3 cm left of centre", "unreadable-line", ","),
        (PIECE + "motif anchor at yoke, 3 cm wide", "unreadable-line", "wide"),
        (PIECE + "fabric rib from a to b, 2.5 repeats wide", "not-whole-number", "2.5"),
        (PIECE + "end cast off chain", "unreadable-line", "chain"),
        ("join a b to c d, matching, matching", "repeated-option", "matching"),
        ("let a = " + "(" * 5000 + "1" + ")" * 5000, "too-deep", "("),
        ("let a = " + "-" * 500 + "1", "too-deep", "-" * (499 - DEEPEST) + "1"),
    ],
)  # fmt: skip
def test_one_mistake_is_one_message(text: str, code: str, mark: str) -> None:
    assert marked(text) == [(code, mark)]


def test_a_long_sum_is_too_deep_and_a_short_one_is_not() -> None:
    assert only("let a = 1" + " + 1" * 200).code == "too-deep"
    assert told("let a = 1" + " + 1" * DEEPEST) == ()
    assert only("let a = 1" + " + 1" * (DEEPEST + 1)).code == "too-deep"
    assert only("let a = " + "(" * (DEEPEST + 1) + "1" + ")" * (DEEPEST + 1)).code == "too-deep"
    assert told("let a = " + "(" * DEEPEST + "1" + ")" * DEEPEST) == ()


def test_a_text_may_be_long() -> None:
    assert told(f'note "{"weed " * 5000}"') == ()


def test_brackets_in_a_text_are_no_brackets() -> None:
    assert told(f'note "{"(" * 5000}"') == ()


def test_a_bad_header_opens_its_block() -> None:
    text = "peice back in plain\n    levels hem 0 cm\n    levles top 3 cm\nlet a = 3\n"
    tree, found = source.read("", text)
    assert [d.labels[0].span.start for d in found] == [text.index("peice"), text.index("levles")]
    assert [type(x) for x in tree.statements] == [s.Broken, s.Broken, s.Broken, s.Let]


def test_a_block_that_nobody_can_guess_is_lost_with_one_message() -> None:
    tree, found = source.read("", "sleeve back in plain\n    levels hem 0 cm\n    anything\nlet a = 3\n")
    assert [d.code for d in found] == ["unreadable-line"]
    assert isinstance(tree.statements[-1], s.Let)


def test_a_line_in_a_block_is_broken_alone() -> None:
    tree, found = source.read("", "piece a in b\n    levels hem 0 cm\n    bogus\n    end cast off\n")
    assert len(found) == 1
    piece = tree.statements[0]
    assert isinstance(piece, s.PieceBlock)
    assert [type(x) for x in piece.body] == [s.Levels, s.Broken, s.End]


def test_reading_goes_on_after_a_bad_block_within_a_block() -> None:
    text = (
        "piece a in b\n    opening n 3 cm wide at slit\n        left edge straight to top\n        bogus\n"
        "    end cast off\nlet a = 3\n"
    )
    tree, found = source.read("", text)
    assert [text[d.labels[0].span.start : d.labels[0].span.end] for d in found] == ["at", "bogus"]
    piece = tree.statements[0]
    assert isinstance(piece, s.PieceBlock)
    assert [type(x) for x in piece.body] == [s.Broken, s.Broken, s.Broken, s.End]
    assert source.tidy(tree).startswith(text.split("let")[0])


def test_a_block_within_a_block_that_nobody_can_guess_is_lost_with_one_message() -> None:
    text = "piece a in b\n    gap n 3 cm wide\n        left edge straight to top\n      anything\n    end cast off\n"
    tree, found = source.read("", text)
    assert [d.code for d in found] == ["unreadable-line"]
    piece = tree.statements[0]
    assert isinstance(piece, s.PieceBlock)
    assert [type(x) for x in piece.body] == [s.Broken, s.Broken, s.Broken, s.End]


def test_after_a_line_that_joins_the_outer_block_the_inner_one_is_closed() -> None:
    text = OPENING + "left edge straight to top\nend cast off\n    edges straight to top\n"
    tree, found = source.read("", text)
    assert [d.code for d in found] == ["wrong-indent"]
    piece = tree.statements[0]
    assert isinstance(piece, s.PieceBlock)
    assert [type(x) for x in piece.body] == [s.OpeningLine, s.End, s.EdgeLine]


def test_tabs_make_blocks_within_blocks() -> None:
    text = "piece a in b\n\topening n 3 cm wide from slit to top\n\t\tleft edge straight to top\n\tend cast off\n"
    tree, found = source.read("", text)
    assert [d.code for d in found] == ["tab-indent"]
    assert tree == source.read("", text.replace("\t", "  "))[0]


def test_a_tab_among_spaces_is_no_fault_of_theirs() -> None:
    text = "piece a in b\n\tedges straight to top\n  shoulders held from tip\n  end cast off\n"
    tree, found = source.read("", text)
    assert [d.code for d in found] == ["tab-indent"]
    piece = tree.statements[0]
    assert isinstance(piece, s.PieceBlock)
    assert [type(x) for x in piece.body] == [s.EdgeLine, s.Shoulders, s.End]


def test_a_line_at_the_margin_that_belongs_to_the_block_joins_it() -> None:
    tree, found = source.read("", "piece a in b\n    levels hem 0 cm\nend cast off\nlet a = 3\n")
    assert [d.code for d in found] == ["wrong-indent"]
    assert tree.statements == (
        s.PieceBlock("a", "b", body=(s.Levels((s.LevelDef("hem", s.Number(0, "cm")),)), s.End("cast-off"))),
        s.Let("a", s.Number(3)),
    )


def test_an_indented_header_begins_a_block_of_its_own() -> None:
    tree, found = source.read("", "piece a in b\n    end cast off\n  piece c in d\n    end cast off\n")
    assert [d.code for d in found] == ["wrong-indent"]
    assert [type(x) for x in tree.statements] == [s.PieceBlock, s.PieceBlock]


def test_tabs_are_one_message_with_a_count() -> None:
    found = only("piece a in b\n\tend cast off\n\tshoulders held from tip\n\tneck 3 cm wide, 3 cm deep, v")
    assert in_english(found).notes == ("so are 2 further lines",)


@pytest.mark.parametrize(
    ("text", "helps"),
    [
        ("peice a in b", "`piece` is close"),
        ("piece a on b", "`in` is close"),
        ("let a = 3 cn", "`cm` is close"),
        (PIECE + "start 3 cm wied with chain", "`wide` is close"),
        (PIECE + "shoulder held from tip", "`shoulders` is close"),
        ("let a = 2,5 cm", "a decimal fraction is written with a point, such as `2.5`"),
        (PIECE + "neck 2,5 cm wide, 3 cm deep, v", "a decimal fraction is written with a point, such as `2.5`"),
        ("chrat lozenge", "`chart` is close"),
        (CHART + "key O hle", "`hole` is close"),
        (CHART + "kye O hole", "such a line reads `key O hole`"),
        (CHART + "| . O", "such a line reads `| . . O / . |`"),
        (CHART + "|.O", "such a line reads `| . . O / . |`"),
        (CHART + "repeat 6 rows", "such a line reads `repeat 6 stitches, after 1 stitch`"),
        (FABRIC + "right sid purl", "such a line reads `right side purl`"),
        (FABRIC + "chart c on wool", "such a line reads `chart lozenge in wool at tension 4, centred, 2 edge stitches`"),
        (EDGING + "foldet", "`folded` is close"),
        (EDGING + "foldet, knitted first", "`folded` is close"),
        (PIECE + "openning n 3 cm wide from a to b", "`opening` is close"),
        (PIECE + "fabric rib form a to b", "such a line reads `fabric rib from waist to hip`"),
        (PIECE + "wedge 3 cm wide at both edges from a to b", "add one of `held in`, `let out`, `held in and let out`"),
        ("pattern “Tidewrack”", 'texts stand in straight quotes, `"`'),
        ("let a", "such a line reads `let half = bust / 2 + 4 cm`"),
        ("sizes S\n    3 cm", "such a line reads `length 54 56 58 cm`"),
    ],
)
def test_what_was_meant_is_proposed(text: str, helps: str) -> None:
    assert helps in in_english(only(text)).helps


def test_what_can_stand_is_told_in_words() -> None:
    units = "a unit (cm, mm, m, in, stitches, rows, g, %)"
    assert in_english(only("let a = 3 )")).notes == (f"here can stand: {units}, a sum (+ - * /) or the end of the line",)
    assert in_english(only(CHART + "key knit knit")).notes == ("here can stand: a symbol of one character",)
    assert in_english(only(CHART + "| . O")).notes == ("here can stand: a symbol of one character or `|`",)
    assert in_english(only('yarn f "w", 50 g of 2/28')).notes == (
        "here can stand: a system of counts (tex, dtex, denier, Nm, Ne, NeK, lea)",
    )
    assert in_english(only("fabric f\n    zigzag")).notes == (
        "lines there begin with: `chart`, `latched rib`, `note`, `right side`, `stocking stitch`, `stripes`, `swatch`",
    )
    assert in_english(only("require a b")).notes == ("here can stand: a sum (+ - * /), brackets or a comparison (<= >= = < >)",)


def test_a_word_taken_for_an_amount_is_where_reading_stops() -> None:
    said = only(PIECE + "neck 18 cm wide, 8 cm deep, round, with 3")
    assert in_english(said).message.startswith("`with` cannot follow")
    assert "a sum" not in in_english(said).notes[0]


def test_lines_known_by_their_second_word_are_told_of() -> None:
    assert in_english(only(PIECE + "left shoulder held at top")).helps == ("such a line reads `left shoulder held from tip`",)
    begun = in_english(only(PIECE + "zigzag")).notes[0]
    assert all(f"`{side} {what}`" in begun for side in ("left", "right") for what in ("edge", "shoulder"))
    assert "shoulder" not in in_english(only(PIECE + "opening slit 2 cm wide from a to b\n        zigzag")).notes[0]


# Lines of words of the language in any order, with signs and slips: the likeliest rubbish there is.
slips = ("a", "3", "2/28", "chart c\n    |", "|.O|", "\u0301", '"', "#", "\t", "    ", "“", "é", "\x00")
rubbish = st.lists(
    st.one_of(
        st.lists(st.sampled_from([*sorted(literals().values()), *slips]), max_size=8).map(" ".join),
        st.text(max_size=12),
    ),
    max_size=8,
).map("\n".join)


@settings(max_examples=draws(300), deadline=None)
@given(rubbish)
def test_any_text_has_a_tree_and_known_codes(text: str) -> None:
    tree, found = source.read("f.wale", text)
    assert {d.code for d in found} <= set(SOURCE)
    for diagnostic in found:
        assert all(0 <= x.span.start <= x.span.end <= len(text) for x in diagnostic.labels)
    if not found:
        again = source.tidy(tree)
        assert source.read("f.wale", again) == (tree, ())
    else:
        source.tidy(tree)
