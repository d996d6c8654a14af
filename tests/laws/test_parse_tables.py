"""The shipped parse tables are those of the grammars; where they do not hold, the parser is made without them."""

from __future__ import annotations

import json
from collections import deque
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from lark import Lark

from tests.laws.parse_tables import GRAMMARS, file, tables
from walewright.world import shipped
from walewright.world import tables as kept
from walewright.world.tables import Grammar, made, worked_out


@pytest.fixture
def from_grammar(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The grammars that are worked out from here on."""
    names: list[str] = []

    def noted(grammar: Grammar) -> Lark:
        names.append(grammar.name)
        return worked_out(grammar)

    monkeypatch.setattr(kept, "worked_out", noted)
    return names


def _terminals(parser: Lark) -> list[tuple[object, ...]]:
    return sorted((t.name, t.pattern.to_regexp(), t.pattern.raw, t.pattern.type, t.priority) for t in parser.terminals)


def _rules(parser: Lark) -> list[str]:
    return sorted(_rule(r) for r in parser.rules)


def _rule(rule: Any) -> str:
    # JSON has no tuples.
    options = {**vars(rule.options), "empty_indices": tuple(rule.options.empty_indices)}
    symbols = [(type(s).__name__, str(s.name)) for s in (rule.origin, *rule.expansion)]
    return f"{symbols} {rule.alias} {options}"


def _same_states(one: Lark, other: Lark) -> int:
    """How many states there are, all with the same actions; states have other numbers in each run."""
    here, there = (p.parser.parser._parse_table for p in (one, other))
    pairs = {here.start_states[s]: there.start_states[s] for s in here.start_states}
    assert here.start_states.keys() == there.start_states.keys()
    waiting = deque(pairs.items())
    while waiting:
        a, b = waiting.popleft()
        assert here.states[a].keys() == there.states[b].keys()
        for symbol, (action, argument) in here.states[a].items():
            otherwise, found = there.states[b][symbol]
            assert str(action) == str(otherwise)
            if isinstance(argument, int):
                if argument not in pairs:
                    waiting.append((argument, found))
                assert pairs.setdefault(argument, found) == found
            else:
                assert _rule(argument) == _rule(found)
    return len(pairs)


@pytest.mark.parametrize("grammar", GRAMMARS, ids=lambda g: g.name)
def test_the_shipped_tables_are_those_of_the_grammar(grammar: Grammar, from_grammar: list[str]) -> None:
    parser = made(grammar)
    assert from_grammar == [], "the tables are of another grammar: python -m tests.laws.parse_tables"
    fresh = worked_out(grammar)
    assert _terminals(parser) == _terminals(fresh)
    assert _rules(parser) == _rules(fresh)
    assert _same_states(parser, fresh) > 100
    assert (parser.lexer_conf.ignore, parser.options.start) == (fresh.lexer_conf.ignore, fresh.options.start)


@pytest.mark.parametrize("grammar", GRAMMARS, ids=lambda g: g.name)
def test_a_grammar_has_the_same_tables_each_time(grammar: Grammar) -> None:
    assert tables(grammar) == tables(grammar)


def _shipped_otherwise(monkeypatch: pytest.MonkeyPatch, grammar: Grammar, text: str | None) -> None:
    honest = shipped.shipped_text

    def other(kind: shipped.ShippedKind, relative: str) -> str:
        if relative != f"{grammar.name}.tables":
            return honest(kind, relative)
        if text is None:
            raise FileNotFoundError(relative)
        return text

    monkeypatch.setattr(kept, "shipped_text", other)


def _one_number_changed(text: str) -> str:
    head, body = text.split("\n", 1)
    found = json.loads(body)
    states = found["data"]["parser"]["parser"]["states"]
    shift = next(action for actions in states.values() for action in actions.values() if isinstance(action[1], int))
    shift[1] += 1
    return f"{head}\n{json.dumps(found)}"


DAMAGES = {
    "no file": lambda text: None,
    "empty": lambda text: "",
    "cut off": lambda text: text[: len(text) // 2],
    "no JSON": lambda text: text.split("\n", 1)[0] + "\n{",
    "one number": _one_number_changed,
    "of something else": lambda text: "0" * 64 + "\n" + text.split("\n", 1)[1],
}


@pytest.mark.parametrize("damage", DAMAGES)
def test_damaged_tables_are_not_used(damage: str, from_grammar: list[str], monkeypatch: pytest.MonkeyPatch) -> None:
    grammar = GRAMMARS[0]
    _shipped_otherwise(monkeypatch, grammar, DAMAGES[damage](file(grammar).read_text(encoding="utf-8")))
    assert made(grammar).parse("sizes S M", start="in_file").data == "sizes"
    assert from_grammar == ["source"]


def test_tables_that_no_parser_can_be_made_of_are_not_used(from_grammar: list[str], monkeypatch: pytest.MonkeyPatch) -> None:
    grammar = GRAMMARS[0]
    body = '{"data": {}}\n'
    _shipped_otherwise(monkeypatch, grammar, f"{kept._head(grammar, body)}\n{body}")
    assert made(grammar).parse("sizes S M", start="in_file").data == "sizes"
    assert from_grammar == ["source"]


@pytest.mark.parametrize("change", [{"start": GRAMMARS[0].start[::-1]}, {"module": "source/build.py"}])
def test_tables_of_another_parser_are_not_used(change: dict[str, Any], from_grammar: list[str]) -> None:
    made(replace(GRAMMARS[0], **change))
    assert from_grammar == ["source"]


def test_asking_for_a_parser_writes_nothing() -> None:
    before = {p: p.stat().st_mtime_ns for p in Path(file(GRAMMARS[0])).parent.iterdir()}
    made(GRAMMARS[0])
    assert {p: p.stat().st_mtime_ns for p in Path(file(GRAMMARS[0])).parent.iterdir()} == before


def test_they_are_written_as_they_are_read(tmp_path: Path) -> None:
    text = tables(GRAMMARS[1])
    head, body = text.split("\n", 1)
    assert kept._head(GRAMMARS[1], body) == head
