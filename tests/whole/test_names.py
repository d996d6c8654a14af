"""Names of every kind, drawn from the words of the printed sentences: refused where they are given, or proven, never misread."""

from __future__ import annotations

import random

import pytest

from tests.draws import few_of
from tests.whole.odd_names import SOUND, named, words
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.languages import ENGLISH, known, printed
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity

SHIPPED = shipped()
AT_THE_NAME = frozenset({"name-unreadable", "names-look-alike", "repeated-name", "reserved-name", "reserved-word"})
STRANGE = (
    *("RC", "CO", "COL", "L", "R", "L_5", "St", "STS", "K_1", "a_1", "x" * 60, "a_" * 29 + "a", "S_M", "row_1", "next_to"),
    *("then_body_seam", "a_and_b", "upper_left", "seam_left", "both_ends_for_the", "end_of_the", "mm_to_5_mm", "each_2nd"),
    *("日本", "перед", "Ärmel", "משי", "مقاس", "ไทย", "ᚠ", "ß", "ı", "İ", "ǆ", "हिन्दी", "e\u0301", "a٣", "_a", "a__b", "ﬁ"),
)
"""Names that say something on the page already, that are long, or that are of other scripts; the last few are refused."""


def outcome(language: str = ENGLISH, **names: str) -> tuple[bool, list[Diagnostic]]:
    made = pipeline.compile(named(**names), "names.wale", SHIPPED, Changes(), printed(language))
    return made.proven, [d for d in made.diagnostics if d.severity is Severity.ERROR]


def right(names: dict[str, str]) -> str:
    """Assert what has to be true of the garment with these names; "proven" or the codes told."""
    proven, errors = outcome(**names)
    if proven:
        return "proven"
    assert errors, names
    for told in errors:
        assert told.code in AT_THE_NAME, (names, told.code, in_english(told).message)
        place = told.labels[0].span
        said = named(**names)[place.start : place.end]
        assert any(name in said for name in names.values()), (names, in_english(told).message)
    return " ".join(sorted({d.code for d in errors}))


def test_the_garment_itself_is_proven() -> None:
    assert outcome() == (True, [])


def test_the_words_are_those_of_the_sentences() -> None:
    found = words()
    assert {"to", "then", "and", "left", "right", "upper", "row", "st", "RC", "each", "cast_off", "break_off_the_yarn"} <= set(
        found
    )


@pytest.mark.parametrize("seed", few_of(range(24), 6))
def test_names_of_every_kind_at_once(seed: int) -> None:
    chance = random.Random(seed)
    # A tension is no name: it has no `_`, and stands on a dial.
    kinds = [kind for kind in SOUND if kind not in ("tension", "tight")]
    drawn = chance.sample(words(), len(kinds))
    assert right(dict(zip(kinds, (chance.choice((n, n, n.capitalize())) for n in drawn), strict=True)))


EDGE_WORDS = sorted({word for name in known() for pair in printed(name).writing.edges.items() for word in pair})
"""What edges of the trade and parts of edges are called, in all languages together."""


@pytest.mark.parametrize("language", known())
@pytest.mark.parametrize("word", EDGE_WORDS)
def test_words_of_edges_and_of_their_parts_in_each_language(word: str, language: str) -> None:
    """Drawn for one kind of name each: a name that the source's own language has not taken is proven in all."""
    name = word.replace(" ", "_")
    for kind in random.Random(word).sample(("edge", "upper_edge", "opening", "slot", "band", "edging", "low", "bottom"), 2):
        proven, errors = outcome(language, **{kind: name})
        assert proven or {told.code for told in errors} == {"reserved-name"}
        assert proven == outcome(**{kind: name})[0]


@pytest.mark.parametrize("word", ["Schulter", "Halsausschnitt", "oben", "links", "upper"])
def test_words_of_edges_that_an_author_gives(word: str) -> None:
    source = named() + f'name {SOUND["edge"]}, in german "{word}"\n'
    assert pipeline.compile(source, "names.wale", SHIPPED, Changes(), printed("german")).proven


@pytest.mark.parametrize("name", STRANGE)
def test_strange_names(name: str) -> None:
    kinds = random.Random(name).sample(sorted(set(SOUND) - {"tension", "tight"}), 4)
    for kind in kinds[:2]:
        assert right({kind: name})


@pytest.mark.parametrize(
    "name", ["to", "then", "row", "left", "st", "RC", "4.5", "L", "4..", "0", "ten", "looser", "numbers_to", "6."]
)
def test_settings_of_a_dial(name: str) -> None:
    assert right({"tension": name})


@pytest.mark.parametrize("kind", [k for k in SOUND if k not in ("tension", "tight")])
def test_each_kind_refuses_what_cannot_be_read_back(kind: str) -> None:
    for name in ("हिन्दी", "a__b"):
        assert right({kind: name}) == "name-unreadable"
