"""The author's texts in the language that is printed, and trees compared by what they mean."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from typing import Any

import pytest

from walewright import source
from walewright.report.model import Span
from walewright.source import syntax as s
from walewright.source.chosen import BLOCKS, TEXTS, in_language

SAID = """\
pattern "Cowl", in german "Halsling"
    summary "soft", in german "weich"
    photograph "a.jpg", showing "it", in german "er"
choice collar high, low
sizes S
    neck 30 cm, "round the neck", in german "um den Hals"
yarn wool "wool", 50 g = 100 m, in german "Wolle"
fabric plain
    note "lift it", in german "heben"
piece cowl in plain
    note "steam it", in german "dämpfen"
shape half(a)
    note "press it", in german "bügeln"
for collar high
    note "fold it", in german "falten"
needed "a pin", in german "eine Nadel"
require neck >= 20 cm because "it is drawn over", in german "er wird übergezogen"
making up
    step "sew it", in german "nähen"
"""


def own(statement: s.Statement) -> Iterator[str]:
    """The texts of a statement and of its block."""
    field = TEXTS.get(type(statement))
    if field is not None:
        yield getattr(statement, field)
    for inner in getattr(statement, "body", ()):
        yield from own(inner)


def test_every_text_takes_the_place_of_the_source_s_own() -> None:
    tree, told = source.read("cowl.wale", SAID)
    assert told == ()
    texts = [text for statement in tree.statements for text in own(statement)]
    assert texts == [
        "Cowl", "soft", "it", "round the neck", "wool", "lift it", "steam it", "press it", "fold it", "a pin", "it is drawn over",
        "sew it",
    ]  # fmt: skip
    german = [text for statement in in_language(tree, (), "german", {})[0].statements for text in own(statement)]
    assert german == [
        "Halsling", "weich", "er", "um den Hals", "Wolle", "heben", "dämpfen", "bügeln", "falten", "eine Nadel",
        "er wird übergezogen", "nähen",
    ]  # fmt: skip
    assert in_language(tree, (), "french", {})[0] == tree


def test_all_statements_with_texts_and_blocks_are_known() -> None:
    kinds = [kind for kind in vars(s).values() if isinstance(kind, type) and is_dataclass(kind) and issubclass(kind, s.Node)]
    # A name is no text: it becomes another wherever it stands.
    assert {k for k in kinds if "others" in names(k)} == {*TEXTS, s.NameLine}
    assert all(TEXTS[kind] in names(kind) for kind in TEXTS)
    blocks = {k for k in kinds if "body" in names(k)}
    # Beds and charts have no texts in their blocks, and an opening has edges alone.
    assert blocks - set(BLOCKS) == {s.MachineBlock, s.ChartBlock, s.OpeningLine}


def names(kind: type) -> set[str]:
    return {field.name for field in fields(kind)}  # type: ignore[arg-type]


def spans(node: Any) -> Iterator[Span]:
    """Every place that a tree names."""
    if isinstance(node, Span):
        yield node
    elif isinstance(node, tuple):
        for part in node:
            yield from spans(part)
    elif is_dataclass(node):
        for field in fields(node):
            yield from spans(getattr(node, field.name))


CHARTED = """\
chart dots
    key . knit
    key - purl
    | . - |
    | - . |
choice collar high, low
"""


@pytest.mark.parametrize("text", [SAID, CHARTED])
def test_trees_are_compared_by_what_they_mean_and_not_by_where_it_stands(text: str) -> None:
    tree, _ = source.read("cowl.wale", text)
    moved, _ = source.read("cowl.wale", "\n\n" + text)
    assert moved == tree
    assert hash(moved) == hash(tree)
    assert repr(moved) == repr(tree)
    assert {span.start for span in spans(moved)} == {span.start + 2 for span in spans(tree)}
