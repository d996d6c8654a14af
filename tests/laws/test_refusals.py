"""The law of what the bed refuses: it says no word of it. Each refusal is a kind with its facts, which has its words among the
report's with a place for each fact and no other; and no words stand there that nothing is refused by. The code is read, not run."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path
from string import Formatter
from typing import get_args

import pytest

from tests.laws.code_tree import nodes, tree
from tests.laws.reported import called, fields_of, literals, of_package
from walewright.bed.model import BedCrossing
from walewright.bed.refusals import Empty, OverLoops, Purpose, YarnFor
from walewright.knit.operations import CrossingWay, HungPart
from walewright.report.english.bed import PARTS, REFUSALS

REFUSING = ("refuse", "refused")
WORKED_OUT = {
    "code": (*get_args(OverLoops), *get_args(Empty)),
    "state.get(m.position[i], 'already-in-work/in-work')": tuple(f"already-in-work/{s}" for s in ("held", "on-cord", "in-work")),
}
"""Kinds that are given to a function, or looked up, by how the call has them: those that they can be."""

FILES = of_package("bed")


def refusals(module: ast.Module) -> Iterator[tuple[int, tuple[str, ...], frozenset[str]]]:
    """(line, the kinds it can be, names of its facts) of each call that refuses."""
    for node in nodes(module):
        if isinstance(node, ast.Call) and called(node) in REFUSING and node.args:
            first = node.args[0]
            if isinstance(first, ast.Name) and first.id == "kind":
                continue
            kinds = (str(first.value),) if isinstance(first, ast.Constant) else WORKED_OUT[ast.unparse(first)]
            yield node.lineno, kinds, facts_of(node)


def facts_of(call: ast.Call) -> frozenset[str]:
    """The names of its facts; of `**lengths`, those of the dictionary are `one` and `other`."""
    return frozenset(name for k in call.keywords for name in ((k.arg,) if k.arg else ("one", "other")))


def wanting(module: ast.Module) -> list[str]:
    """Refusals without words, or with other facts than their words have places for."""
    found = []
    for line, kinds, facts in refusals(module):
        for kind in kinds:
            words = REFUSALS.get(f"bed/{kind}")
            if words is None:
                found.append(f"line {line}: no words for {kind}")
            elif facts != fields(words):
                found.append(f"line {line}: {kind} is given {sorted(facts)} and says {sorted(fields(words))}")
    return found


def fields(words: str) -> frozenset[str]:
    """The facts of a sentence, those within another's choice too."""
    own = fields_of(words)
    return own | frozenset(n for spec in specs(words) for n in fields_of(spec))


def specs(words: str) -> Iterator[str]:
    yield from (spec for _, _, spec, _ in Formatter().parse(words) if spec)


@pytest.mark.parametrize("path", FILES, ids=lambda p: p.name)
def test_every_refusal_has_words_that_take_its_facts(path: Path) -> None:
    assert wanting(tree(path)) == []


def test_every_words_of_a_refusal_are_said() -> None:
    made = {f"bed/{kind}" for path in FILES for _, kinds, _ in refusals(tree(path)) for kind in kinds}
    assert set(REFUSALS) - made == set()


def test_every_part_is_said() -> None:
    kinds = {"to": Purpose, "for": YarnFor, "edge": HungPart, "crossing": CrossingWay, "crosses": BedCrossing}
    # A way that is not said, and a bed that crosses in any way, are in no refusal.
    worked_out = {f"bed/{part}/{one}" for part, kind in kinds.items() for one in get_args(kind) if one not in ("", "any")}
    written = frozenset().union(*(literals(path) for path in FILES))
    assert set(PARTS) - worked_out - written == set()
    assert worked_out - set(PARTS) == set()


@pytest.mark.parametrize(
    "text",
    [
        'm.refuse("no-such-kind")',
        'm.refuse("already-held", yarn="wool")',
        'm.refuse("already-held")',
        'refused("drop-too-deep", needle=m.at(i), rows=2)',
    ],
)
def test_the_law_sees_a_refusal_without_its_words(text: str) -> None:
    assert len(wanting(ast.parse(text))) == 1


def test_the_law_sees_the_bed() -> None:
    assert sum(len(list(refusals(tree(path)))) for path in FILES) > 120
