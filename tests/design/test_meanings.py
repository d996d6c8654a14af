"""Every option of the language is entered with where it means something, and is an error where it means nothing."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields

import pytest

from tests.design.shaped import HEAD, piece, understood
from walewright.design.findings import Findings
from walewright.design.reading.meanings import MEANINGS, tell_idle
from walewright.source import read
from walewright.source.grammar import parser
from walewright.source.rules import RULES

SPARE = (
    'yarn spare_wool "wool", 100 g = 120 m\n'
    "fabric spare\n    stocking stitch in spare_wool at tension 4\n    swatch 40 stitches by 60 rows = 20 cm by 15 cm, 60 g{}\n"
)


def within(rule: str, expansions: dict[str, set[str]], seen: set[str]) -> Iterator[str]:
    """The parts that a rule of the grammar can have in it."""
    for name in expansions.get(rule, ()):
        if name in seen:
            continue
        seen.add(name)
        made = RULES.get(name)
        if made is not None and made.node is None:
            yield name
        if made is None or made.node is None:
            yield from within(name, expansions, seen)


def options() -> set[tuple[type, str]]:
    """Every field of a statement that a part of a line can fill, read off the grammar."""
    expansions: dict[str, set[str]] = {}
    for rule in parser().rules:
        name = rule.alias or rule.origin.name
        expansions.setdefault(str(name), set()).update(str(s.name) for s in rule.expansion if not s.is_term)
    return {
        (made.node, field)
        for rule, made in RULES.items()
        if made.node is not None
        for part in within(rule, expansions, set())
        for field in (*RULES[part].fields, *RULES[part].fixed, RULES[part].many)
        # What a text is in other languages says nothing else.
        if field not in ("", "others")
    }


def test_every_option_of_the_grammar_is_entered() -> None:
    entered = {(node, field) for node, options_ in MEANINGS.items() for field in options_}
    assert options() - entered == set()
    assert entered - options() == set()
    assert all(field in {f.name for f in fields(node)} for node, field in entered)


def marked(text: str) -> list[str]:
    """The words of a source that are told to be without effect."""
    _, told = understood(text)
    whole = "\n".join((HEAD, text))
    return [whole[d.labels[0].span.start : d.labels[0].span.end] for d in told if d.code == "without-effect"]


@pytest.mark.parametrize(
    ("idle", "meant", "word"),
    [
        ("fabric rib from low to high, 4 cm left of centre", "fabric rib from low to high", "4 cm left of centre"),
        ("edges straight to low, fashioned 2 in", "edges slope to 36 cm wide at low, fashioned 2 in", "fashioned 2 in"),
        ("edges straight to low, two at once", "edges slope to 36 cm wide at low, two at once", "two at once"),
        (
            "edges in 3 stitches every 8 rows to top, two at once",
            "edges in 2 stitches every 8 rows to top, two at once",
            "two at once",
        ),
        (
            "edges in 2 stitches every 8 rows to top, fashioned 2 in",
            "edges in 1 stitch every 8 rows to top, fashioned 2 in",
            "fashioned 2 in",
        ),
        (
            "edges steps -3 stitches 2 times to top, fashioned 2 in",
            "edges steps -1 stitch 2 times to top, fashioned 2 in",
            "fashioned 2 in",
        ),
        (
            "edges straight to low, ending with a move",
            "edges slope to 36 cm wide at low, ending with a move",
            "ending with a move",
        ),
        (
            "edges curve to 36 cm wide at low, beginning with a move",
            "edges steps -1 cm 2 times to low, beginning with a move",
            "beginning with a move",
        ),
        (
            "edges in 1 stitch every 9 rows to low, beginning with a move, ending with a move",
            "edges in 1 stitch every 9 rows to low, ending with a move",
            "ending with a move",
        ),
        (
            "edges slope to 36 cm wide at low, larger steps first",
            "edges steps -1 cm 2 times to low, larger steps first",
            "larger steps first",
        ),
        (
            "edges steps -1 cm then -2 cm to low, larger steps last",
            "edges steps -1 cm 3 times to low, larger steps last",
            "larger steps last",
        ),
        ("edges steps -1 cm 1 times to low, larger steps last", "edges steps -1 cm 1 times to low", "larger steps last"),
        (
            "neck 18 cm wide, 8 cm deep, round, ending with a move",
            "neck 18 cm wide, 8 cm deep, v, ending with a move",
            "ending with a move",
        ),
        (
            "neck 18 cm wide, 8 cm deep, v, 18 cm flat, beginning with a move",
            "neck 18 cm wide, 8 cm deep, v, 2 cm flat, beginning with a move",
            "beginning with a move",
        ),
        ("opening slit 0 cm wide from low to high, cast off", "opening slit 2 cm wide from low to high, cast off", "cast off"),
        ("neck 18 cm wide, 8 cm deep, v, cast off", "neck 18 cm wide, 8 cm deep, v, 2 cm flat, cast off", "cast off"),
        (
            "neck 18 cm wide, 8 cm deep, square, fashioned 2 in",
            "neck 18 cm wide, 8 cm deep, round, fashioned 2 in",
            "fashioned 2 in",
        ),
    ],
)
def test_an_idle_option_of_a_piece_is_an_error_at_its_word(idle: str, meant: str, word: str) -> None:
    assert marked(piece(idle)) == [word]
    assert marked(piece(meant)) == []


@pytest.mark.parametrize(
    ("idle", "meant", "word"),
    [
        (piece(start="40 cm wide with e-wrap, right side facing"), piece(start="40 cm wide with e-wrap"), "right side facing"),
        (piece() + "piece two in plain, mirror of front, centre stitch\n", piece(more=", centre stitch"), "centre stitch"),
        (piece() + "piece two in plain, mirror of front, odd or even\n", piece(more=", odd or even"), "odd or even"),
        (
            piece() + "edging hem in plain, 3 cm deep, knitted first, cast off sewn\n",
            piece() + "edging hem in plain, 3 cm deep, cast off sewn\n",
            "cast off sewn",
        ),
        (piece() + SPARE.format(", 14 mm to a stitch"), piece() + SPARE.format(""), "14 mm to a stitch"),
        (piece() + "finished x 80 cm, wanted 81 cm\n", piece() + "finished x across front top, wanted 81 cm\n", "wanted 81 cm"),
        (piece() + "finished x 80 cm, stretches\n", piece() + "finished x 80 cm, fits 90 cm, stretches\n", "stretches"),
        (
            piece() + "chart c\n    key . knit\n    | . . |\n    colours with floats\n",
            piece() + "chart c\n    key . knit\n    | . . |\n",
            "with floats",
        ),
        (
            "chart c\n    key . knit\n    key - purl\n    | . - |\nfabric p\n    chart c in wool at tension 4, 2 edge stitches\n"
            "    swatch 40 stitches by 60 rows = 20 cm by 15 cm\n" + piece("fabric p from low to high, 3 repeats wide"),
            "chart c\n    key . knit\n    key - purl\n    | . - |\nfabric p\n    chart c in wool at tension 4, 2 edge stitches\n"
            "    swatch 40 stitches by 60 rows = 20 cm by 15 cm\n" + piece("fabric p from low to high"),
            "2 edge stitches",
        ),
        (
            "chart c\n    key . knit\n    key - purl\n    | . - |\nfabric p\n    chart c in wool at tension 4\n"
            "    swatch 40 stitches by 60 rows = 20 cm by 15 cm\n" + piece("fabric p from low to high, 3 repeats wide, 6 cm wide"),
            "chart c\n    key . knit\n    key - purl\n    | . - |\nfabric p\n    chart c in wool at tension 4\n"
            "    swatch 40 stitches by 60 rows = 20 cm by 15 cm\n" + piece("fabric p from low to high, 3 repeats wide"),
            "6 cm wide",
        ),
    ],
)
def test_an_idle_option_elsewhere_is_an_error_at_its_word(idle: str, meant: str, word: str) -> None:
    assert marked(idle) == [word]
    assert marked(meant) == []


def test_an_option_of_a_shape_is_looked_at_in_the_shape() -> None:
    shape = "shape plain_side(to)\n    edges straight to to, fashioned 2 in\n"
    assert marked(shape + piece("use plain_side, to top")) == ["fashioned 2 in"]
    assert marked(shape + piece()) == ["fashioned 2 in"]
    # What is nothing at one use is something at another.
    parted = "shape parted(wide)\n    opening slit wide wide from low to high, cast off\n"
    assert marked(parted + piece("use parted, wide 0 cm")) == []


def test_nothing_is_told_beside_a_line_that_does_not_read() -> None:
    chart = "chart dots\n    key . knit\n    key o {}\n    | . . o . |\n    colours laid in blocks\n"

    def told(key: str) -> list[str]:
        tree, _ = read("a.wale", chart.format(key))
        findings = Findings()
        tell_idle(tree, tree, findings)
        return [d.code for d in findings.all()]

    assert told("purl") == ["without-effect"]
    assert told("knit in __") == []
