"""What a source leaves to the knitter: its choices, the alternative taken of each, and the tree as that alternative has it.

A choice selects statements and nothing else: the lines of a `for` are there, in its place, where its alternative is taken. So every
later part of this stage sees a tree without choices.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import product
from math import prod
from typing import Any

from walewright.design.findings import Findings
from walewright.design.model.regrading import Choice
from walewright.design.reading.called import look_up
from walewright.design.reading.changes import Changes
from walewright.record import replace
from walewright.report.said import said
from walewright.source import syntax

MOST_CHOICES = 10
MOST_ALTERNATIVES = 10
MOST_COMBINATIONS = 36
"""All of them can be checked at once; three choices of three alternatives are 27."""

Chosen = Mapping[str, str]
"""Choice to the alternative of it that is taken."""


def choices(tree: syntax.Tree, changes: Changes, findings: Findings) -> tuple[Choice, ...] | None:
    """What the source offers, each with the alternative taken: the knitter's, else the first. Tells what is wrong with choices
    and with the blocks that belong to them; None where it cannot be known what belongs to what."""
    lines = [s for s in tree.statements if isinstance(s, syntax.ChoiceLine)]
    findings.once("choice", ((line.name, line.span) for line in lines))
    offered = {line.name: line for line in reversed(lines)}
    for line in lines:
        _sound(line, findings)
    _blocks(tree.statements, offered, {}, findings)
    if not findings.failed:
        _few(lines, findings)
    if not findings.failed:
        _told_apart(tree, lines, findings)
    if findings.failed:
        return None
    taken = _given(lines, changes, findings)
    return tuple(Choice(line.name, line.alternatives, taken[line.name]) for line in lines)


def selected(tree: syntax.Tree, taken: Chosen) -> syntax.Tree:
    """The tree with the lines of the alternatives taken in the places of their blocks, and without the others. Blocks of choices
    that `taken` does not name stay."""
    return replace(tree, statements=tuple(_selected(tree.statements, taken)))


def in_all(statements: Iterable[syntax.Statement]) -> Iterator[syntax.Statement]:
    """The statements with those of every alternative in the places of their blocks."""
    for statement in statements:
        if isinstance(statement, syntax.ForBlock):
            yield from in_all(statement.body)
        else:
            yield statement


def combinations(offered: Sequence[Choice]) -> tuple[Chosen, ...]:
    """Every way to choose, that of the source itself first."""
    each = product(*(choice.alternatives for choice in offered))
    return tuple(dict(zip((c.name for c in offered), taken, strict=True)) for taken in each)


def to_look_into(tree: syntax.Tree, offered: Sequence[Choice]) -> tuple[Chosen, ...]:
    """Ways to choose, other than the one taken and as near to it as can be, that together have every line of the source."""
    own = {choice.name: choice.alternative for choice in offered}
    each = [{choice.name: other} for choice in offered for other in choice.alternatives]
    ways = [{**own, **asked} for asked in (*each, *_asked(tree.statements, {}))]
    found = {tuple(way.items()): way for way in ways if way != own}
    return tuple(found.values())


def _selected(statements: Iterable[syntax.Statement], taken: Chosen) -> Iterator[syntax.Statement]:
    for statement in statements:
        if isinstance(statement, syntax.ForBlock) and statement.choice in taken:
            if statement.alternative == taken[statement.choice]:
                yield from _selected(statement.body, taken)
            continue
        block: Any = statement
        body = getattr(block, "body", ())
        within = tuple(_selected(body, taken))
        yield replace(block, body=within) if within != body else statement


def _asked(statements: Iterable[syntax.Statement], around: Chosen) -> Iterator[Chosen]:
    """What has to be taken for each block to be there."""
    for statement in statements:
        within = around
        if isinstance(statement, syntax.ForBlock):
            within = {**around, statement.choice: statement.alternative}
            yield within
        yield from _asked(getattr(statement, "body", ()), within)


def _sound(line: syntax.ChoiceLine, findings: Findings) -> None:
    findings.once("alternative", zip(line.alternatives, line.places, strict=True))
    if len(line.alternatives) == 1:
        findings.report("choice-of-one", (line.places[0], "alone"), helps=("another",), name=line.name, only=line.alternatives[0])


def _blocks(
    statements: Iterable[syntax.Statement],
    offered: Mapping[str, syntax.ChoiceLine],
    around: Mapping[str, syntax.ForBlock],
    findings: Findings,
) -> None:
    """Tells of blocks that belong to nothing, hold nothing or contradict a block around them."""
    for statement in statements:
        if isinstance(statement, syntax.ChoiceLine) and around:
            *_, outer = around.values()
            findings.report("impossible-statement/choice", (statement.span, "within"), (outer.span, "around"))
        within = around
        if isinstance(statement, syntax.ForBlock):
            _block(statement, offered, around, findings)
            within = {**around, statement.choice: statement}
        _blocks(getattr(statement, "body", ()), offered, within, findings)


def _block(
    block: syntax.ForBlock,
    offered: Mapping[str, syntax.ChoiceLine],
    around: Mapping[str, syntax.ForBlock],
    findings: Findings,
) -> None:
    line = offered.get(block.choice)
    if line is None:
        findings.unknown("choice", block.choice, block.span, offered)
        return
    if block.alternative not in line.alternatives:
        findings.unknown(said("alternative-of", choice=block.choice), block.alternative, block.span, line.alternatives)
        return
    facts = {"choice": block.choice, "alternative": block.alternative}
    outer = around.get(block.choice)
    if outer is not None:
        again = outer.alternative == block.alternative
        kind = "choice-within-itself/again" if again else "choice-within-itself/never"
        findings.report(
            kind, (block.span, "inner"), (outer.span, "outer"), helps=("take-out",), facts={**facts, "other": outer.alternative}
        )
    if not block.body:
        findings.report("choice-without-effect/empty", (block.span, "empty"), helps=("fill-or-delete",), facts=facts)


def _few(lines: Sequence[syntax.ChoiceLine], findings: Findings) -> None:
    """Tells of more choices, alternatives or ways to choose than can be checked."""
    for what, places, most in (
        ("choice", [line.span for line in lines], MOST_CHOICES),
        *(("alternative", list(line.places), MOST_ALTERNATIVES) for line in lines),
    ):
        if len(places) > most:
            findings.report(
                "too-many", (places[most], "from-here"), helps=("second-source",), count=len(places), what=what, most=most
            )
    counts = [len(line.alternatives) for line in lines]
    at = next((n for n in range(len(lines)) if prod(counts[: n + 1]) > MOST_COMBINATIONS), None)
    if at is not None:
        findings.report(
            "too-many",
            (lines[at].span, "from-here"),
            helps=("second-source",),
            count=prod(counts),
            what="way to choose",
            most=MOST_COMBINATIONS,
        )


def _told_apart(tree: syntax.Tree, lines: Sequence[syntax.ChoiceLine], findings: Findings) -> None:
    """Tells of alternatives between which nothing is another."""
    for line in lines:
        first: dict[int, str] = {}
        trees = [selected(tree, {line.name: alternative}).statements for alternative in line.alternatives]
        for n, (alternative, place) in enumerate(zip(line.alternatives, line.places, strict=True)):
            same = next((m for m in first if trees[m] == trees[n]), None)
            if same is None:
                first[n] = alternative
                continue
            findings.report(
                "choice-without-effect/alike",
                (place, "this"),
                (line.places[same], "that"),
                helps=("say-or-delete",),
                choice=line.name,
                one=first[same],
                other=alternative,
            )
            break


def _given(lines: Sequence[syntax.ChoiceLine], changes: Changes, findings: Findings) -> dict[str, str]:
    """What is taken of each choice."""
    taken = {line.name: line.alternatives[0] for line in lines}
    typed: dict[str, str] = {}
    for name, text in changes.chosen.items():
        given = ("choose", name)
        choice = look_up(name, dict.fromkeys(taken, ()), "choice", given, findings)
        if choice is None:
            continue
        alternatives = next(line.alternatives for line in lines if line.name == choice)
        found = look_up(text, dict.fromkeys(alternatives, ()), "alternative", given, findings)
        if choice in typed:
            findings.report("given-twice/texts", helps=("leave-one",), given=given, name=choice, one=typed[choice], other=text)
        elif found is not None:
            taken[choice], typed[choice] = found, text
    return taken
