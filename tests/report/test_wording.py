"""How facts are put into the sentences of a language."""

from __future__ import annotations

import pytest

from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.said import Amount, BySize, Fact, said
from walewright.report.wording import Language, Worded, Wording, worded

PHRASES = {
    "in-sizes": "in {sizes:and}",
    "as-typed": "{sizes:or`}, `--size {size}`",
    "of-all": "of {sizes} sizes",
    "slot": "slot `{slot}`",
    "value": "value of `{shape}`",
    "value/many": "values of `{shape}`",
    "by-option": "{message} (--{option})",
    "by-option-of": "{message} (--{option} {name})",
    "close": "`{meant}` is close",
}
TERMS = {"left": ("links", "linke"), "level": ("level", "levels")}


def filled(template: str, **facts: Fact) -> str:
    return words(Wording(template), diagnosed("it", **facts)).message


def words(wording: Wording, diagnostic: Diagnostic, **how: object) -> Worded:
    return worded(diagnostic, Language({"it": wording}, PHRASES, TERMS, **how))  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("template", "facts", "text"),
    [
        ("{a}", {"a": 1.50}, "1.5"),
        ("{a}", {"a": Amount(2.0, "cm")}, "2 cm"),
        ("{a}", {"a": Amount(-0.001, "")}, "0"),
        ("{a}", {"a": BySize(("S", "M"), (1.0, 2.25))}, "S 1 cm, M 2.25 cm"),
        ("{a}", {"a": BySize((), (1.0,), "rows")}, "1 rows"),
        ("{a} is out", {"a": said("slot", slot="thumb")}, "slot `thumb` is out"),
        ("{a:and}", {"a": ("x", "y", "z")}, "x, y and z"),
        ("{a:or`}", {"a": ("x", "y")}, "`x` or `y`"),
        ("{a:or`}", {"a": (said("slot", slot="b"), "cm")}, "slot `b` or `cm`"),
        ("{a:names`}", {"a": ("x",)}, "`x`"),
        ("{a:/ needs }", {"a": ("x", "y", "x")}, "x needs y needs x"),
        ("{a:`/ needs }", {"a": ("x", "y")}, "`x` needs `y`"),
        ("{a:term/ and no }", {"a": ("left", "level")}, "links and no level"),
        ("{a:term}", {"a": "left"}, "links"),
        ("two {a:terms}", {"a": "level"}, "two levels"),
        ("two {a:terms}", {"a": said("value", shape="yoke")}, "two values of `yoke`"),
        ("{a:row|rows}", {"a": 1}, "1 row"),
        ("{a:row|rows}", {"a": 0}, "0 rows"),
        ("every {a:row|# rows}", {"a": 1}, "every row"),
        ("every {a:row|# rows}", {"a": 3}, "every 3 rows"),
        ("{a:?above|below}", {"a": False}, "below"),
        ("it{a:? too}", {"a": True}, "it too"),
        ("{size}: {a}", {"size": "2_years", "a": "left_front"}, "2 years: left_front"),
        ("{a}", {"a": said("in-sizes", sizes=("2_years", "4_years"))}, "in 2 years and 4 years"),
        (
            "{a}",
            {"a": said("as-typed", sizes=("2_years", "4_years"), size="10_years")},
            "`2_years` or `4_years`, `--size 10_years`",
        ),
        ("{a}", {"a": said("of-all", sizes=3)}, "of 3 sizes"),
        ("{a}", {"a": BySize(("2_years",), (1.0,), "cm")}, "2 years 1 cm"),
        ("{a:,} of {b:04X}", {"a": 5000, "b": 0x41}, "5,000 of 0041"),
    ],
)
def test_a_fact_is_written_as_its_place_asks(template: str, facts: dict[str, Fact], text: str) -> None:
    assert filled(template, **facts) == text


def test_of_many_names_the_first_are_listed() -> None:
    text = filled("{a:names}", a=tuple(f"n{i}" for i in range(30)))
    assert text.endswith("n19 and 10 more")
    assert filled("{a:names}", a=tuple(f"n{i}" for i in range(21))).endswith("n19, n20")


def test_labels_notes_and_helps_have_the_facts_of_the_report_and_their_own() -> None:
    here = Span("a.wale", 0, 1)
    made = diagnosed("it", (here, "wide"), notes=("room",), helps=(said("close", meant="bust"), said("write", n=2)), room=5, wide=7)
    wording = Wording("no room", {"wide": "{wide} wide"}, {"room": "{room} are there"}, {"write": "write {n} of {room}"})
    said_so = words(wording, made)
    assert said_so == Worded("no room", ("7 wide",), ("5 are there",), ("`bust` is close", "write 2 of 5"))


def test_what_an_option_brought_in_is_reported_with_it() -> None:
    assert words(Wording("no bed"), diagnosed("it", given=("bed", ""))).message == "no bed (--bed)"
    assert words(Wording("no yarn"), diagnosed("it", given=("yarn", "wool"))).message == "no yarn (--yarn wool)"


def test_a_word_has_the_gender_of_its_language() -> None:
    genders = {"left": "m", "level": "f", "value": "n"}
    wording = Wording("{a:@kein|keine|kein neutrales} {a:term}")
    assert words(wording, diagnosed("it", a="left"), genders=genders).message == "kein links"
    assert words(wording, diagnosed("it", a="level"), genders=genders).message == "keine level"
    assert words(wording, diagnosed("it", a=said("value", shape="x")), genders=genders).message == "kein neutrales value of `x`"


def test_another_language_has_its_own_thousands() -> None:
    found = words(Wording("{a:,} {b:,} {c:,.1f}"), diagnosed("it", a=5000, b=12, c=1234.5), point=",", thousands=".")
    assert found.message == "5.000 12 1.234,5"


def test_what_an_author_writes_is_the_same_in_all_languages() -> None:
    facts: dict[str, Fact] = {"a": Amount(2.5, "rows"), "b": BySize(("S", "M"), (1.5, 2.0))}
    found = words(Wording("{a}: `{a:source}`, {b}: `{b:source}`"), diagnosed("it", **facts), point=",", units={"rows": "Reihen"})
    assert found.message == "2,5 Reihen: `2.5 rows`, S 1,5 cm, M 2 cm: `S 1.5 cm, M 2 cm`"


def test_a_unit_can_be_another_word_of_one() -> None:
    wording = Wording("{a}, {b:.1f}, {c}, {d}")
    facts: dict[str, Fact] = {
        "a": Amount(1, "rows"),
        "b": Amount(1, "rows"),
        "c": BySize(("S", "M"), (1.0, 2.5), "rows"),
        "d": Amount(1),
    }
    found = words(wording, diagnosed("it", **facts), units={"rows": "Reihe|Reihen"})
    assert found.message == "1 Reihe, 1.0 Reihen, S 1 Reihe, M 2.5 Reihen, 1 cm"


def test_another_language_has_its_own_point() -> None:
    assert words(Wording("{a} {b:.1f}"), diagnosed("it", a=Amount(2.5), b=1.25), point=",").message == "2,5 cm 1,2"


def test_a_sentence_without_its_fact_is_a_fault_of_the_table() -> None:
    with pytest.raises(KeyError):
        filled("{a} and {b}", a=1)
