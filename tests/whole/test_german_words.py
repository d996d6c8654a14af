"""German pages of the shipped garments: no English word but what is cited or typed, and a German one for every name and text."""

from __future__ import annotations

import html
import re
from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass
from functools import cache
from typing import Any

import pytest

from tests.draws import few_of
from tests.whole.shipped_once import GARMENTS, SHIPPED, source
from walewright import source as sources
from walewright.design import Changes
from walewright.languages import printed
from walewright.pipeline import compile, understood
from walewright.sheet import PageOptions, ProvenPattern, compose
from walewright.sheet import html as page_html
from walewright.sheet.text_copy import text_copy
from walewright.source import syntax
from walewright.source.chosen import TEXTS
from walewright.source.quantities import Node
from walewright.source.renamed import FIELDS, KINDS
from walewright.source.syntax import PatternBlock
from walewright.trade.edge_names import OWN_EDGES

WORD = re.compile(r"[A-Za-zÄÖÜäöüß]{3,}")
TYPED = frozenset(
    {*("build", "choose", "dial", "measure", "size", "swatch", "tension", "yarn", "bed"), *("rows", "standard", "mid", "fine")}
)
"""Commands and options, and their values."""
UNSEEN = re.compile(r"<(style|script|title)\b.*?</\1>|<[^>]*>|Quelle: [^<\n]*|ISO [0-9]+", re.DOTALL)
"""What is not read on a page; and sources and standards, which are cited as they are called."""


def words_of(value: Any) -> Iterator[str]:
    """All words in the texts of a language, places left out."""
    if isinstance(value, str):
        yield from (word.lower() for word in WORD.findall(re.sub(r"\{[^}]*\}", " ", value)))
    elif isinstance(value, Mapping):
        yield from words_of(tuple(value.values()))
    elif isinstance(value, tuple | list):
        for one in value:
            yield from words_of(one)
    elif is_dataclass(value):
        yield from words_of(tuple(getattr(value, field.name) for field in fields(value)))


@cache
def english() -> frozenset[str]:
    """Words that English pages have and German ones have not."""
    of = {name: {*words_of(printed(name).guide), *words_of(printed(name).writing)} for name in ("english", "german")}
    assert len(of["english"] - of["german"]) > 500
    return frozenset(of["english"] - of["german"] - TYPED)


@pytest.mark.parametrize("name", few_of(GARMENTS[::-1], 3))
def test_no_english_word_is_on_a_page(name: str) -> None:
    german = printed("german")
    outcome = compile(source(name), f"{name}.wale", SHIPPED, Changes(), german)
    design, counts, instructions, proof = outcome.result()
    pattern = ProvenPattern(design, counts, instructions, proof, outcome.fit, glued=outcome.glued)
    made = compose(german.guide, pattern, PageOptions())
    told = text_copy(german.guide, made, pattern, outcome.plain_text, "cm")
    # What is a word in German as well, as its author wrote it.
    own = {word.lower() for other in _german_texts(name) for word in WORD.findall(other)} | {name}
    left = {word for text in (told, page_html(made)) for word in WORD.findall(html.unescape(UNSEEN.sub(" ", text)))}
    assert sorted(word for word in left if word.lower() in english() - own) == []


def _nodes(value: Any) -> Iterator[Node]:
    if isinstance(value, tuple):
        for one in value:
            yield from _nodes(one)
    elif isinstance(value, Node):
        yield value
        for field in fields(value):
            if field.name not in ("span", "said"):
                yield from _nodes(getattr(value, field.name))


def _german_texts(name: str) -> Iterator[str]:
    for node in _nodes(sources.read(name, source(name))[0].statements):
        yield from (other.text for other in getattr(node, "others", ()))


@pytest.mark.parametrize("name", GARMENTS)
def test_every_name_and_text_has_a_german_one(name: str) -> None:
    tree, _ = sources.read(name, source(name))
    _, _, by, _ = sources.in_language(tree, (), "german", SHIPPED.names)
    left = []
    for node in _nodes(tree.statements):
        field = TEXTS.get(type(node))
        if field and getattr(node, field) and not isinstance(node, PatternBlock) and not getattr(node, "others", ()):
            left.append(getattr(node, field))
        for name_field in GIVES.get(type(node), ()):
            kind, value = FIELDS[type(node)][name_field], getattr(node, name_field)
            for one in value if isinstance(value, tuple) else (value,):
                if isinstance(one, str) and by.of(kind, one) == one and not _is_no_word(one):
                    left.append(f"{kind} {one}")
    assert left == []


def _is_no_word(name: str) -> bool:
    """Letters of a size, and what the trade calls an edge, which the language has words for."""
    return not name or name.upper() == name or name in OWN_EDGES


GIVES: Mapping[type[Node], tuple[str, ...]] = {
    syntax.BandLine: ("name",),
    syntax.ChartBlock: ("name",),
    syntax.ChoiceLine: ("name", "alternatives"),
    syntax.EdgeLine: ("called",),
    syntax.EdgingLine: ("name",),
    syntax.FabricBlock: ("name",),
    syntax.FinishedLine: ("name",),
    syntax.LevelDef: ("name",),
    syntax.OpeningLine: ("name",),
    syntax.PieceBlock: ("name",),
    syntax.SizeRow: ("name",),
    syntax.Sizes: ("names",),
    syntax.SlotLine: ("name",),
    syntax.YarnLine: ("name",),
}
"""Where names are given that are printed: those that are only reckoned with are not."""


def test_every_word_is_one_that_can_be_a_name() -> None:
    import tomllib

    words = tomllib.loads(SHIPPED.names["german"])
    assert set(words) <= set(KINDS)
    reserved = set(printed("german").writing.edges.values())
    for kind, named in words.items():
        for name, word in named.items():
            assert re.fullmatch(r"[^\W_]+(?: [^\W_]+)*", word), (kind, name)
            assert kind != "edge" or not reserved & set(word.split(" ")), (kind, name)


def test_a_figure_is_given_by_either_name_and_messages_have_the_source_s() -> None:
    german = printed("german")
    given = [Changes(sizes=sizes, measures={name: "61 cm"}) for sizes, name in ((("M",), "length"), (("M",), "Länge"))]
    own, other = (understood(source("tidewrack"), "tidewrack.wale", SHIPPED, changes, german) for changes in given)
    assert own.design == other.design
    assert own.design is not None
    assert [m.values for m in own.design.measurements if m.name == "Länge"] == [(61.0,)]
    text = source("tidewrack").replace("join back side to", "join back seite to")
    told = understood(text, "tidewrack.wale", SHIPPED, Changes(), german).diagnostics
    (fault,) = (one for one in told if one.code == "no-such-edge")
    assert "'armhole'" in str(fault)
    assert "Armausschnitt" not in str(fault)
