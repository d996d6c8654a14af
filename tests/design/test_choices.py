"""Choices: lines of the alternative taken mean what they mean without a choice, and each mistake is told at its line."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.design.dump import dump
from tests.design.shaped import HEAD, SHIPPED
from tests.draws import draws
from tests.whole.shipped_once import GARMENTS
from tests.whole.shipped_once import source as shipped_source
from walewright import pipeline
from walewright.design import Changes
from walewright.design.model import Design
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, has_errors
from walewright.source import read, tidy
from walewright.source import syntax as s

PIECE = """\
piece front in plain
    levels hem 0 cm, top length
    start 40 cm wide with e-wrap
    for neckline round
        neck 16 cm wide, 6 cm deep, round, cast off
    for neckline square
        neck 16 cm wide, 6 cm deep, square, cast off
    end cast off
"""
OFFERED = "choice neckline round, square\n"
PLAIN = PIECE.replace("    for neckline round\n", "").replace("    for neckline square\n", "").replace("        neck", "    neck")
ROUND = PLAIN.replace("    neck 16 cm wide, 6 cm deep, square, cast off\n", "")


def understood(text: str, **chosen: str) -> tuple[Design | None, tuple[Diagnostic, ...]]:
    outcome = pipeline.understood(text, "it.wale", SHIPPED, Changes(chosen=chosen))
    return outcome.design, outcome.diagnostics


def told(*parts: str, **chosen: str) -> list[tuple[str, str]]:
    """What is told, each with the line that it is told at."""
    text = HEAD + "".join(parts)
    design, diagnostics = understood(text, **chosen)
    assert (design is None) == has_errors(diagnostics)
    return [(d.code, _line(text, d)) for d in diagnostics if not (d.code == "unused-name" and _line(text, d) in HEAD)]


def _line(text: str, diagnostic: Diagnostic) -> str:
    if not diagnostic.labels:
        return ""
    start = diagnostic.labels[0].span.start
    return text[text.rfind("\n", 0, start) + 1 :].partition("\n")[0].strip()


def meant(design: Design | None) -> str:
    assert design is not None
    return dump(replace(design, choices=(), file=""))


def test_the_first_alternative_is_meant_where_nothing_is_chosen() -> None:
    design, _ = understood(HEAD + OFFERED + PIECE)
    assert design is not None
    assert [(c.name, c.alternatives, c.alternative, c.chosen) for c in design.choices] == [
        ("neckline", ("round", "square"), "round", False)
    ]
    assert [o.name for o in design.piece("front").openings] == ["neck"]


@pytest.mark.parametrize("shape", ["round", "square"])
def test_an_alternative_means_what_its_lines_mean_without_a_choice(shape: str) -> None:
    other = {"round": "square", "square": "round"}[shape]
    alone = "\n".join(line for line in PLAIN.split("\n") if f", {other}," not in line)
    assert meant(understood(HEAD + OFFERED + PIECE, neckline=shape)[0]) == meant(understood(HEAD + alone)[0])


def test_a_name_is_understood_as_a_page_has_it() -> None:
    assert told(OFFERED, PIECE, Neckline="SQUARE") == []


@pytest.mark.parametrize(
    ("chosen", "words"),
    [
        ({"neck": "round"}, "no choice is called `neck`"),
        ({"neckline": "boat"}, "no alternative is called `boat`"),
        ({"neckline": "round", "NECKLINE": "square"}, "given twice"),
    ],
)
def test_what_is_chosen_has_to_be_there(chosen: dict[str, str], words: str) -> None:
    design, diagnostics = understood(HEAD + OFFERED + PIECE, **chosen)
    assert design is None
    (found,) = (d for d in diagnostics if d.code != "unused-name")
    assert words in in_english(found).message or found.code == "given-twice"
    assert found.given is not None
    assert found.given[0] == "choose"


def within(alternative: str) -> str:
    """The piece with an alternative within that of the square neck."""
    line = f"        for neckline {alternative}\n            neck 16 cm wide, 6 cm deep, v"
    return PIECE.replace("        neck 16 cm wide, 6 cm deep, square", line)


@pytest.mark.parametrize(
    ("offered", "piece", "code", "line"),
    [
        ("choice neckline round\n", PIECE.replace("square", "round"), "choice-of-one", "choice neckline round"),
        ("choice neckline round, square, round\n", PIECE, "repeated-name", "choice neckline round, square, round"),
        (OFFERED + OFFERED, PIECE, "repeated-name", "choice neckline round, square"),
        (OFFERED, PIECE.replace("for neckline sq", "for neck sq"), "unknown-name", "for neck square"),
        (OFFERED, PIECE.replace("for neckline square", "for neckline sq"), "unknown-name", "for neckline sq"),
        (OFFERED, ROUND, "choice-without-effect", OFFERED.strip()),
        (OFFERED, PIECE.replace("deep, square", "deep, round"), "choice-without-effect", OFFERED.strip()),
        ("choice neckline round, square, v, boat\n", PIECE, "choice-without-effect", "choice neckline round, square, v, boat"),
        (OFFERED, PIECE + "    for neckline square\n", "choice-without-effect", "for neckline square"),
        (
            OFFERED,
            within("square"),
            "choice-within-itself",
            "for neckline square",
        ),
        (
            OFFERED,
            within("round"),
            "choice-within-itself",
            "for neckline round",
        ),
        (OFFERED, "for neckline square\n    choice hem rib, roll\n" + PIECE, "impossible-statement", "choice hem rib, roll"),
    ],
)  # fmt: skip
def test_a_mistake_is_told_at_its_line(offered: str, piece: str, code: str, line: str) -> None:
    assert told(offered, piece) == [(code, line)]


@pytest.mark.parametrize("taken", ["round", "square"])
def test_a_fault_in_one_alternative_is_told_whichever_is_made(taken: str) -> None:
    for fault, code in (("46 cm wide, 6 cm deep, square", "neck-too-wide"), ("16 cm wide, dip deep, square", "unknown-name")):
        broken = PIECE.replace("16 cm wide, 6 cm deep, square", fault)
        where = f"neck {fault}, cast off"
        assert told(OFFERED, broken, neckline=taken) == [(code, where)]
        (found,) = (d for d in understood(HEAD + OFFERED + broken, neckline=taken)[1] if d.code == code)
        assert any(n.key == "in-alternative" for n in found.notes) == (taken == "round")


def test_a_line_that_cannot_be_read_is_told_in_every_alternative() -> None:
    for taken in ("round", "square"):
        assert told(OFFERED, PIECE.replace("deep, square", "depth, square"), neckline=taken) == [
            ("unreadable-line", "neck 16 cm wide, 6 cm depth, square, cast off")
        ]


COLLARS = """\
band neckband with stand along front neck
for neckline square
    let deep = 4 cm
    let unused = 3 cm
    edging stand in rib, deep deep, added after
for neckline round
    edging stand in rib, 2 cm deep, added after
    let unused = 5 cm
let never = 1 cm
"""


@pytest.mark.parametrize("taken", ["round", "square"])
def test_what_an_alternative_uses_is_used(taken: str) -> None:
    assert sorted(told(OFFERED, PIECE.replace(", cast off", ""), COLLARS, neckline=taken)) == [
        ("unused-name", "let never = 1 cm"),
        ("unused-name", "let unused = 3 cm"),
        ("unused-name", "let unused = 5 cm"),
    ]


def test_what_only_another_alternative_uses_is_not_printed() -> None:
    text = HEAD + OFFERED + PIECE.replace(", cast off", "") + COLLARS.replace("deep deep", "length / 10 deep")
    design, _ = understood(
        text + "piece scrap in plain\n    levels hem 0 cm, top 20 cm\n    start 20 cm wide with e-wrap\n    end cast off\n"
    )
    assert design is not None
    assert "rib" in [f.name for f in design.fabrics]
    assert "dense" not in [f.name for f in design.fabrics]


def test_an_alternative_within_another_choice_belongs_to_both() -> None:
    both = PIECE.replace(
        "        neck 16 cm wide, 6 cm deep, square, cast off\n",
        "        for depth low\n            neck 16 cm wide, 9 cm deep, square, cast off\n"
        "        for depth high\n            neck 16 cm wide, 4 cm deep, square, cast off\n",
    )
    text = HEAD + OFFERED + "choice depth low, high\n" + both
    for shape, depth, line in (("round", "low", 0), ("round", "high", 0), ("square", "low", 9), ("square", "high", 4)):
        neck = f"16 cm wide, {line} cm deep, square" if line else "16 cm wide, 6 cm deep, round"
        alone = HEAD + ROUND.replace("16 cm wide, 6 cm deep, round", neck)
        assert meant(understood(text, neckline=shape, depth=depth)[0]) == meant(understood(alone)[0]), (shape, depth)


def test_there_are_no_more_ways_than_can_be_checked() -> None:
    names = "abcdefgh"
    offered = "".join(f'choice {n} one, two\nfor {n} two\n    note "{n}"\n' for n in names[:6])
    found = told(offered, ROUND)
    assert found == [("too-many", "choice f one, two")]


@given(st.data())
@settings(max_examples=draws(60), deadline=None)
def test_lines_of_the_alternative_taken_mean_what_they_meant(data: st.DataObject) -> None:
    """Statements of a shipped garment, put below an alternative; others, or none, below the other one."""
    name = data.draw(st.sampled_from(GARMENTS))
    tree, _ = read("it.wale", shipped_source(name))
    statements = _offered(tree.statements, data)
    offered = s.ChoiceLine("variant", ("this", "that"))
    text = tidy(replace(tree, statements=(offered, *statements), comments=()))
    again = tidy(read("it.wale", text)[0])
    assert again == text
    found, diagnostics = _alone(text, "this")
    if any(d.code == "choice-without-effect" for d in diagnostics):
        return
    known, before = _alone(tidy(replace(tree, comments=())), None)
    assert [d.code for d in diagnostics] == [d.code for d in before]
    assert meant(found) == meant(known)


def _alone(text: str, taken: str | None) -> tuple[Design | None, tuple[Diagnostic, ...]]:
    changes = Changes(chosen={"variant": taken}) if taken else Changes()
    outcome = pipeline._understand(pipeline.Outcome("it.wale", text), SHIPPED, changes, alone=True)
    return outcome.design, outcome.diagnostics


def _offered(statements: tuple[s.Statement, ...], data: st.DataObject) -> tuple[s.Statement, ...]:
    found: list[s.Statement] = []
    for statement in statements:
        kind = data.draw(st.integers(0, 9))
        block: Any = statement
        if isinstance(statement, s.PieceBlock | s.MakingUp | s.PatternBlock) and kind > 3:
            block = replace(statement, body=_offered(statement.body, data))
        found += [s.ForBlock("variant", "this", (block,))] if kind < 3 else [block]
        if kind == 0:
            found.append(s.ForBlock("variant", "that", (statement,)))
        elif kind == 5 and not isinstance(statement, s.OpeningLine):
            found.append(s.ForBlock("variant", "that", (statement, statement)))
    return tuple(found)
