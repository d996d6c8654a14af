"""The author's words: all of them, in order, headed by what they are about; of what is unused none."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.design.shaped import HEAD, SHIPPED, piece
from walewright.design import Changes, understand
from walewright.design.used.texts import ELSEWHERE, IN_MAKING_UP, OF_THE_PATTERN
from walewright.report.english import in_english
from walewright.report.model import Severity
from walewright.source import read, syntax
from walewright.source.grammar import parser
from walewright.source.rules import RULES

FRONT = piece(levels="hem 0 cm, top length")


def tree(*parts: str, head: str = HEAD) -> syntax.Tree:
    made, unread = read("trial.wale", "\n".join((head, *parts)))
    assert unread == ()
    return made


def texts(*parts: str, head: str = HEAD) -> tuple[tuple[str, str], ...]:
    design, found = understand(tree(*parts, head=head), SHIPPED, Changes())
    assert [d for d in found if d.severity is Severity.ERROR] == []
    assert design is not None
    return design.texts


def test_as_many_notes_as_there_are() -> None:
    head = HEAD.replace('pattern "Trial"\n', 'pattern "Trial"\n    note "One."\n    summary "A trial."\n    note "Two."\n')
    assert texts(FRONT, 'note "Three."', head=head) == (
        ("note", "One."),
        ("summary", "A trial."),
        ("note", "Two."),
        ("note", "Three."),
    )


def test_a_note_of_a_fabric_is_printed_if_the_fabric_is_used() -> None:
    noted = HEAD.replace("fabric dense\n", 'fabric dense\n    note "Pull it."\n')
    levels = "hem 0 cm, low 10 cm, top length"
    assert texts(FRONT, head=noted) == ()
    assert texts(piece("fabric dense from low to top", levels=levels), head=noted) == (("note", "dense: Pull it."),)


def test_a_note_of_a_shape_is_headed_by_it_and_printed_once() -> None:
    shape = 'shape side(to)\n    edges straight to to\n    note "Keep it even."\n'
    used = piece("use side, to top", levels="hem 0 cm, top length")
    outer = "shape outer(to)\n    use side, to to\n"
    assert texts(shape, FRONT) == ()
    assert texts(shape, used, used.replace("piece front", "piece back")) == (("note", "side: Keep it even."),)
    assert texts(shape, outer, used.replace("use side", "use outer")) == (("note", "side: Keep it even."),)


KINDS = {"summary", "difficulty", "story", "designer", "copyright", "edition", "date", "note", "step"}


def test_every_key_of_the_grammar_is_printed_where_it_can_stand() -> None:
    assert {made.fixed["key"] for made in RULES.values() if made.node is syntax.TextLine} == KINDS
    assert {*OF_THE_PATTERN, *ELSEWHERE, *IN_MAKING_UP} == KINDS
    stands: dict[str, set[str]] = {}
    for rule in parser().rules:
        stands.setdefault(str(rule.origin.name), set()).update(str(s.name) for s in rule.expansion if not s.is_term)
    assert stands["in_pattern"] & KINDS == set(OF_THE_PATTERN)
    assert stands["in_making_up"] & KINDS == set(IN_MAKING_UP)
    for block in ("in_file", "in_fabric", "in_piece"):
        assert stands[block] & KINDS == set(ELSEWHERE)
    assert not any(stands[block] & KINDS for block in ("in_sizes", "in_machine", "in_chart", "in_opening"))


@pytest.mark.parametrize("where", ["pattern", "margin", "piece", "making up"])
def test_a_text_that_nothing_prints_is_refused(where: str) -> None:
    made = tree(FRONT, 'note "Here."', 'making up\n    step "Sew in the tails."')
    lost = syntax.TextLine("moral", "Lost.")
    kinds = {"pattern": syntax.PatternBlock, "margin": syntax.TextLine, "piece": syntax.PieceBlock, "making up": syntax.MakingUp}
    statements = tuple(
        s if not isinstance(s, kinds[where]) else lost if isinstance(s, syntax.TextLine) else replace(s, body=(*s.body, lost))  # type: ignore[attr-defined]
        for s in made.statements
    )
    _, found = understand(replace(made, statements=statements), SHIPPED, Changes())
    assert [(d.code, in_english(d).message) for d in found if d.severity is Severity.ERROR] == [
        ("impossible-statement", "nothing prints a text `moral` here")
    ]
