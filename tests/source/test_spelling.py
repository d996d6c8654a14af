"""Names that could be printed and not read back are refused where they are given."""

from __future__ import annotations

import pytest

from walewright.report.english import in_english
from walewright.source import read
from walewright.source.spelling import LONGEST, misspelt


@pytest.mark.parametrize(
    ("line", "at", "proposed"),
    [
        ("piece _ in plain", "_", None),
        ("piece __ in plain", "__", None),
        ("piece front_ in plain", "front_", "front"),
        ("piece _front in plain", "_front", "front"),
        ("piece left__front in plain", "left__front", "left_front"),
        ("band b\u3164 with welt along front neck", "b\u3164", "b"),
        ('yarn ﬁne "wool", 100 g = 120 m', "ﬁne", "fine"),
        ("let ａ = 3 cm", "ａ", "a"),
        ("let a² = 3 cm", "a²", "a2"),
        ("let a٣ = 3 cm", "a٣", "a3"),
        ("sizes S M_ L", "M_", "M"),
        ("fabric plain_", "plain_", "plain"),
        ("chart _c", "_c", "c"),
        ("edging w_ in rib, 4 cm deep", "w_", "w"),
        ("shape waist(narrow, wide_)", "wide_", "wide"),
        ("machine mine_", "mine_", "mine"),
        (f"let {'a' * (LONGEST + 1)} = 3 cm", "a" * (LONGEST + 1), None),
    ],
)
def test_at_the_name(line: str, at: str, proposed: str | None) -> None:
    tree, (said,) = read("a.wale", line)
    assert said.code == "name-unreadable"
    place = said.labels[0].span
    assert line[place.start : place.end] == at
    assert (f"`{proposed}`" in in_english(said).helps[0]) == (proposed is not None)
    assert type(tree.statements[0]).__name__ == "Broken", "so that where the name is used nothing more is told"


@pytest.mark.parametrize(
    ("line", "at"),
    [
        ("    levels hem 0 cm, _ 3 cm", "_"),
        ("    edges straight to top called side_", "side_"),
        ("    opening o_ 3 cm wide from low to top", "o_"),
        ("    slot s__t 3 cm wide at low", "s__t"),
    ],
)
def test_in_a_piece(line: str, at: str) -> None:
    text = f"piece front in plain\n{line}"
    (said,) = read("a.wale", text)[1]
    assert said.code == "name-unreadable"
    assert text[said.labels[0].span.start : said.labels[0].span.end] == at


@pytest.mark.parametrize("tension", ["x_y", "4_", "_"])
def test_a_tension_is_as_a_dial_has_it(tension: str) -> None:
    (said,) = read("a.wale", f"fabric plain\n    stocking stitch in wool at tension {tension}")[1]
    assert (said.code, f"`{tension}`" in in_english(said).message) == ("name-unreadable", True)
    (said,) = read("a.wale", f"edging w in rib, 3 cm deep, folded, fold row at tension {tension}")[1]
    assert said.code == "name-unreadable"


@pytest.mark.parametrize("name", ["a", "left_front", "Ärmel", "перед", "2X", "3/4", "XS-S", "1.5", "日本", "a_1"])
def test_sound_names(name: str) -> None:
    assert misspelt(name) is None


def test_a_source_has_a_length() -> None:
    assert read("a.wale", "# a line\n" * 4000 + "making up\n")[1] == ()
    (said,) = read("a.wale", "# a line\n" * 5001)[1]
    assert said.code == "source-too-long"
    (said,) = read("a.wale", 'making up\n    step "' + "a" * 400_000 + '"')[1]
    assert said.code == "source-too-long"


@pytest.mark.parametrize(
    ("line", "at", "proposed"),
    [
        ("sizes S हिन्दी L", "हिन्दी", None),
        ("let cafe\u0301 = 3 cm", "cafe\u0301", "café"),
        ("piece b\u0304\u0323a in plain", "b\u0304\u0323a", None),
    ],
)
def test_a_mark_without_a_letter_of_its_own(line: str, at: str, proposed: str | None) -> None:
    (said,) = read("a.wale", line)[1]
    assert said.code == "name-unreadable"
    place = said.labels[0].span
    assert line[place.start : place.end] == at
    assert (f"`{proposed}`" in in_english(said).helps[0]) == (proposed is not None)


def test_a_name_is_told_once_wherever_it_is_used() -> None:
    text = "let हि = 3 cm\nlet b = हि + 1 cm\nlet c = हि + हि\n"
    assert [d.labels[0].span.start for d in read("a.wale", text)[1]] == [4]


def test_a_mark_alone_is_no_name() -> None:
    (said,) = read("a.wale", "let \u0301 = 3 cm")[1]
    assert said.code == "unreadable-line"


def test_a_reserved_word_is_told_where_it_is_given_and_not_where_it_is_used() -> None:
    text = "piece a in plain\n    edges straight to top called over\nfinished wide along a over\nfinished deep along a of\n"
    assert [d.code for d in read("a.wale", text)[1]] == ["reserved-word"]
    assert [d.code for d in read("a.wale", "finished wide along a over\n")[1]] == ["unreadable-line"]


def test_what_follows_a_reserved_word_in_a_sum_is_not_told_either() -> None:
    """Where a line can begin with the word of the language, reading stops behind it."""
    text = "sizes S\n    round 44 cm\npiece a in plain\n    start round / 2 wide with e-wrap\n    across to round / 4 wide at top\n"
    assert [d.code for d in read("a.wale", text)[1]] == ["reserved-word"]
    assert [d.code for d in read("a.wale", text.replace("round 44", "wide 44"))[1]] == ["unreadable-line", "unreadable-line"]
