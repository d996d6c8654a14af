"""What the author calls names in printed languages: it comes before the words of the language, and has to be a name."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from walewright import source
from walewright.report.english import in_english
from walewright.report.german import LANGUAGE as GERMAN
from walewright.report.wording import worded
from walewright.source import syntax

SOURCE = """\
sizes small M
    length 40 50 cm
yarn wool "wool", 100 g = 120 m
fabric plain
    stocking stitch in wool at tension 4
piece brim in plain
    levels hem 0 cm, tip length
    start 20 cm wide on waste yarn
    end cast off
piece crown like brim
"""
NAMES = {"german": '[piece]\ncrown = "Kopfteil"\nbrim = "Rand"\n[level]\ntip = "Spitze"\n'}


def spoken(lines: str, language: str = "german", used: str = "") -> tuple[str, list[str]]:
    """The source with these lines as the language has it, and what is wrong with them: the case and what stands there."""
    text = lines + SOURCE
    tree, faults = source.read("brim.wale", text)
    assert faults == ()
    other, faults = source.read("other.wale", used or "let a = 1 cm\n")
    assert faults == ()
    made, _, _, wrong = source.in_language(tree, (), language, NAMES, (other,))
    kinds = []
    for fault in wrong:
        span = fault.labels[0].span
        assert span.file == "brim.wale"
        assert fault.helps
        in_english(fault)
        worded(fault, GERMAN)
        kinds.append(f"{fault.case}: {text[span.start : span.end]}")
    kept = tuple(s for s in made.statements if not isinstance(s, syntax.NameLine))
    # Without the blanks that put its columns under each other.
    return re.sub(r"(?<=\S) +", " ", source.tidy(replace(made, statements=kept))), kinds


def test_the_authors_word_comes_before_that_of_the_language() -> None:
    told, wrong = spoken('name brim, in german "Krempe"\nname tip, in german "Zipfel"\n')
    assert wrong == []
    for line in ("piece Krempe in plain", "piece Kopfteil like Krempe", "Zipfel length"):
        assert line in told
    assert "Rand" not in told


def test_a_name_has_blanks_and_is_of_its_language_alone() -> None:
    lines = 'name brim, in german "breite Krempe", in english "wide brim"\nname small, in german "klein"\n'
    assert "piece breite_Krempe in plain" in spoken(lines)[0]
    assert "sizes klein M" in spoken(lines)[0]
    told, wrong = spoken(lines, "english")
    assert "piece wide_brim in plain" in told
    assert "sizes small M" in told
    assert wrong == []


def test_what_a_used_file_says_holds_unless_the_source_says_otherwise() -> None:
    used = 'name brim, in german "Krempe"\nname crown, in german "Haube"\nname unknown_here, in german "nichts"\n'
    told, wrong = spoken('name crown, in german "Kopf"\n', used=used)
    assert wrong == []
    assert "piece Krempe in plain" in told
    assert "piece Kopf like Krempe" in told


def test_a_word_of_the_language_gives_way_to_the_authors() -> None:
    told, wrong = spoken('name brim, in german "Kopfteil"\n')
    assert wrong == []
    assert "piece crown like Kopfteil" in told


@pytest.mark.parametrize(
    ("lines", "wrong"),
    [
        ('name brm, in german "Krempe"\n', ['unknown: name brm, in german "Krempe"']),
        ('name brim, in german "Krempe", in german "Rand"\n', ['twice: in german "Rand"']),
        ('name brim, in german "Krempe"\nname brim, in german "Rand"\n', ['twice: in german "Rand"']),
        ('name brim, in german "Krempe!"\n', ['no-word: in german "Krempe!"']),
        ('name brim, in german " Krempe"\n', ['no-word: in german " Krempe"']),
        ('name brim, in german "die  Krempe"\n', ['no-word: in german "die  Krempe"']),
        ('name brim, in german "ein_Rand"\n', ['no-word: in german "ein_Rand"']),
        (f'name brim, in german "{"K" * 61}"\n', [f'no-word: in german "{"K" * 61}"']),
        ('name brim, in german "crown"\n', ['taken: in german "crown"']),
        ('name brim, in german "Hut"\nname crown, in german "Hut"\n', ['taken: in german "Hut"']),
        # Of other kinds, or in other languages, the same word harms nobody.
        ('name brim, in german "Hut"\nname tip, in german "Hut"\n', []),
        ('name brim, in german "Hut"\nname crown, in english "Hut"\n', []),
        ('name brim, in german "brim"\n', []),
    ],
)
def test_what_can_be_no_name_is_told_at_its_place(lines: str, wrong: list[str]) -> None:
    for language in ("german", "english"):
        assert spoken(lines, language)[1] == wrong
