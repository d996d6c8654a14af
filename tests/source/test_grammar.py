"""The grammar and what is told of it: every word has words, every example reads."""

from __future__ import annotations

import pytest

from walewright import source
from walewright.report.said import Said
from walewright.source import grammar, rules, syntax, words
from walewright.source.terminals import OPTIONS


def _states() -> list[frozenset[str]]:
    """The terminals that each state of the parser takes."""
    table = grammar.parser().parser.parser._parse_table
    terminals = {t.name for t in grammar.parser().terminals} | {"$END"}
    return [frozenset(actions) & terminals for actions in table.states.values()]


def test_there_are_states_to_walk() -> None:
    assert len(_states()) > 100


def test_every_terminal_of_every_state_has_words() -> None:
    for terminals in _states():
        assert words.wordless(terminals) == ()
        assert all(isinstance(told, Said) or not told.startswith("__") for told in words.in_words(terminals))


def test_a_terminal_without_words_is_found() -> None:
    assert words.wordless(["NAME", "CM", "NEW"]) == ("NEW",)


def test_words_in_groups_are_words_of_the_grammar() -> None:
    known = {*grammar.literals().values(), "$END", *(t.name for t in grammar.parser().terminals)}
    assert {member for _, members in words.GROUPS for member in members} <= known


def test_words_that_are_also_names_cannot_be_names_of_amounts() -> None:
    """Where a name and a word can both stand, the word wins; so no amount may have it for a name."""
    name_like = {"NAME", "SIZE", "TENSION", "WAY"}
    literals = grammar.literals()
    clashes = {
        literals[t] for terminals in _states() if terminals & name_like for t in terminals if literals.get(t, "").isidentifier()
    }
    taken = {*rules.AMOUNT_NAMES_TAKEN, *rules.EDGING_NAMES_TAKEN, *rules.EDGE_NAMES_TAKEN, *rules.SIZE_NAMES_TAKEN}
    # In a machine's block no name of the author's can stand.
    assert clashes == {*taken, *OPTIONS, "plates", "missing"}


@pytest.mark.parametrize("word", sorted(OPTIONS))
def test_a_word_of_an_option_is_a_name_before_anything_else(word: str) -> None:
    for depth, value in ((word, syntax.Name(word)), (f"{word} / 2", syntax.Binary("/", syntax.Name(word), syntax.Number(2)))):
        tree, told = source.read("", f"let {word} = 3 cm\nedging e in f, folded, {depth} deep")
        assert told == ()
        assert tree.statements[1] == syntax.EdgingLine("e", "f", value, kind="folded")


def test_every_line_of_every_block_has_an_example() -> None:
    for kind in grammar.KINDS:
        assert set(words.EXAMPLES) >= grammar.first_words(kind)
    assert set(words.EXAMPLES) == {w for k in grammar.KINDS for w in grammar.first_words(k)}


@pytest.mark.parametrize("kind", grammar.KINDS)
def test_the_examples_read(kind: str) -> None:
    examples = [words.example(kind, first) or "" for first in grammar.first_words(kind)]
    examples += [words.PLACE_EXAMPLES[kind]] if kind in words.PLACE_EXAMPLES else []
    assert examples
    for example in examples:
        assert grammar.parsed(kind, example) is not None, example


def test_an_example_of_its_own_place_is_needed_there() -> None:
    """What another example of the same word says could not stand there."""
    for (kind, first), own in words.OTHER_EXAMPLES.items():
        assert words.example(kind, first) == own
        assert grammar.parsed(kind, words.EXAMPLES[first]) is None


def test_every_rule_that_is_kept_is_built() -> None:
    named = {str(r.alias or r.origin.name) for r in grammar.parser().rules}
    inlined = {r for r in named if r.startswith(("_", "$root"))} | {*grammar.KINDS, "sum", "product", "sign", "atom"}
    expressions = {*rules.OPERATIONS, "negative", "name", "number", "stitch_number", "call", "round_call", "rounded", "regauged"}
    assert named - inlined == {*rules.RULES, *rules.TUPLES, *rules.WORDS, *expressions}


def test_every_header_opens_a_block() -> None:
    opened = {inner for headers in grammar.HEADERS.values() for word, inner in headers.items() if word != "for"}
    assert opened == {*grammar.KINDS} - {"in_file"}
    for kind, headers in grammar.HEADERS.items():
        assert set(headers) <= grammar.first_words(kind)


def test_an_alternative_has_lines_of_the_kind_that_it_stands_among() -> None:
    can = {kind for kind in grammar.KINDS if "for" in grammar.first_words(kind)}
    assert can == {"in_file", "in_pattern", "in_piece", "in_shape", "in_making_up"}
    assert {kind: grammar.HEADERS[kind]["for"] for kind in can} == {kind: kind for kind in can}


def test_a_long_source_is_read_line_by_line() -> None:
    lines = "".join(f"let a{n} = a{n + 1} * 2 + 3 cm\n" for n in range(4_999))
    tree, told = source.read("", lines)
    assert len(tree.statements) == 4_999
    assert told == ()
