"""What is reported of a source that can be knitted in several ways: of the way taken all, and of the others what only they have.

What is unused in one alternative may be used in another: it is told where no alternative that has it uses it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from walewright.design.reading.choices import Chosen
from walewright.record import record, replace
from walewright.report.model import Diagnostic, Span, has_errors
from walewright.report.said import Said, said
from walewright.source import syntax

UNUSED = "unused-name"


@record
class OneWay:
    """One way to choose, and what was reported of the tree that it makes."""

    chosen: Chosen
    told: tuple[Diagnostic, ...]

    @property
    def whole(self) -> bool:
        """Whether it was understood, so that what is unused in it is known."""
        return not has_errors(self.told)


@record
class _Stretch:
    """Where a block of an alternative stands."""

    span: Span
    choice: str
    alternative: str

    def has(self, place: Span) -> bool:
        return self.span.file == place.file and self.span.start <= place.start <= self.span.end


def told_of_all(tree: syntax.Tree, own: OneWay, written: OneWay, others: Sequence[OneWay]) -> tuple[Diagnostic, ...]:
    """What there is to say of the way taken, and then of the `others`, each with a note that says which it is. `written` is the way
    taken without anything that a knitter gave, as the others are."""
    stretches = tuple(_stretches(tree.statements))
    known = {_what(d) for d in (*own.told, *written.told)}
    told = [d for d in own.told if d.code != UNUSED or _nowhere(d, others, stretches)]
    for way in others:
        for diagnostic in way.told:
            if _what(diagnostic) in known:
                continue
            known.add(_what(diagnostic))
            if diagnostic.code != UNUSED or _nowhere(diagnostic, (written, *others), stretches):
                told.append(replace(diagnostic, notes=(*diagnostic.notes, _where(own, way))))
    return tuple(told)


def _nowhere(diagnostic: Diagnostic, ways: Iterable[OneWay], stretches: Sequence[_Stretch]) -> bool:
    """Whether each of the ways that has the place, and could be understood, tells the same."""
    place = diagnostic.labels[0].span
    around = [s for s in stretches if s.has(place)]
    there = [w for w in ways if w.whole and all(w.chosen[s.choice] == s.alternative for s in around)]
    return all(_what(diagnostic) in {_what(d) for d in way.told} for way in there)


def _where(own: OneWay, way: OneWay) -> Said:
    """Which alternatives a message is of."""
    others = [(c, a) for c, a in way.chosen.items() if own.chosen[c] != a]
    return said("in-alternative", chosen=tuple(said("alternative-named", choice=c, alternative=a) for c, a in others))


def _what(diagnostic: Diagnostic) -> tuple[object, ...]:
    """What is told, and where, whatever else is known in that alternative."""
    return diagnostic.code, diagnostic.case, diagnostic.given, tuple(label.span for label in diagnostic.labels)


def _stretches(statements: Iterable[syntax.Statement]) -> Iterator[_Stretch]:
    for statement in statements:
        body = getattr(statement, "body", ())
        if isinstance(statement, syntax.ForBlock):
            yield _Stretch(statement.span.to(_last(statement)), statement.choice, statement.alternative)
        yield from _stretches(body)


def _last(statement: syntax.Statement) -> Span:
    body = getattr(statement, "body", ())
    return _last(body[-1]) if body else statement.span
