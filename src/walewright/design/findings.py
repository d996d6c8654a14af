"""What `design` has to say: diagnostics gathered while a source is understood, one mistake one message.

A thing that could not be understood is None from then on, and whatever needs it is skipped without a word. A name that
stands in a line which could not be read counts as known but unusable, so that the line is reported once, by `source`.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Iterator, Mapping
from typing import TypeVar

from walewright.design.lookalikes import skeleton
from walewright.record import record, replace
from walewright.report.model import NOWHERE, Diagnostic, Label, Severity, Span, diagnosed, has_errors
from walewright.report.near import near
from walewright.report.said import Fact, Said, said
from walewright.source import syntax

T = TypeVar("T")

MOST_PROPOSED = 50
"""Unknown names that are compared with those that are known; a report shows fewer, and each takes time."""
MOST_SHOWN = 3
"""Letters by which two names differ that are listed."""
MOST_PLACES = 8
"""Places of one message; who has mended these finds the others."""


@record
class Used(Span):
    """The place of a `use`, standing for what a statement of the shape `name` says there; `shape` is that statement's place. Or the
    place of a piece's first line, standing for what a statement of the piece `model` says there, which the piece is like."""

    shape: Span = NOWHERE
    name: str = ""
    model: str = ""


def within(number: int | float, least: int, most: int) -> tuple[Said, ...]:
    """The help for a number that is out of its bounds: the nearest that is possible."""
    wrong, right = f"{number:g}", str(least if number < least else most)
    return (said("instead", wrong=wrong, right=right),)


class Findings:
    """A list of diagnostics being written. `broken` are the statements that `source` could not read."""

    def __init__(self, broken: Iterable[syntax.Broken] = ()) -> None:
        self._told: list[Diagnostic] = []
        self._unknown: dict[tuple[str | Said, str], int] = {}
        self._at: dict[tuple[str, tuple[Span, ...]], tuple[int, bool]] = {}
        self._alike: set[tuple[str | Said, str, str]] = set()
        self._lost = {word for b in broken for word in re.findall(r"\w+", b.text)}

    def report(
        self,
        kind: str,
        /,
        *labels: tuple[Span, str | Said],
        notes: Iterable[str | Said] = (),
        helps: Iterable[str | Said] = (),
        sizes: tuple[str, ...] = (),
        severity: Severity = Severity.ERROR,
        given: tuple[str, str] | None = None,
        facts: Mapping[str, Fact] | None = None,
        **more: Fact,
    ) -> None:
        """A diagnostic as by `diagnosed`; a place within a shape is shown with the place where the shape is used."""
        made = diagnosed(
            kind, *labels, notes=notes, helps=helps, severity=severity, sizes=sizes, facts={**(facts or {}), **more}, given=given
        )
        self._add(replace(made, labels=_places(made.labels)), kind, made.labels)

    def _add(self, made: Diagnostic, kind: str, labels: tuple[Label, ...]) -> None:
        """A diagnostic, but for one of a piece that is like another whose statement has the same fault: it has one message, the
        model's."""
        key = (kind, tuple(label.span.shape if isinstance(label.span, Used) else label.span for label in labels))
        copied = any(isinstance(label.span, Used) and label.span.model for label in labels)
        at = self._at.get(key)
        if at is None:
            self._at[key] = (len(self._told), copied)
            self._told.append(made)
        elif at[1] and not copied:
            self._at[key] = (at[0], False)
            self._told[at[0]] = made
        elif not copied:
            self._told.append(made)

    def take(self, others: Findings, option: str, name: str) -> None:
        """Everything that was found in a knitter's text, with the option and the name that it was given by, and without a place in
        the source."""
        self._told += (replace(d, labels=(), given=(option, name)) for d in others._told)

    def idle(self, node: syntax.Node, field: str, why: Said, help_: Said) -> None:
        """The option that fills this field of a node means nothing where it stands, for the reason `why`. Of a shape's statement
        nothing is reported: what is idle at one use of it means something at another."""
        place = node.place_of(field)
        if place is not None and not isinstance(place, Used):
            self.report("without-effect", (place, "here"), helps=(help_,), why=why)

    def lose(self, name: str) -> None:
        """From now on, nothing more is said of a name that is not known: why it is not has been told."""
        self._lost.add(name)

    def unknown(self, what: str | Said, name: str, span: Span, names: Iterable[str], code: str = "unknown-name") -> None:
        """`name` is none of the `names` of that kind."""
        if name in self._lost:
            return
        if (what, name) in self._unknown:
            # A name is mistyped, or its definition is missing, once; where else it stands is part of the same message.
            at = self._unknown[what, name]
            if span != NOWHERE and len(self._told[at].labels) < MOST_PLACES:
                labels = dict.fromkeys((*self._told[at].labels, *_places((Label(span, said("here-too")),))))
                self._told[at] = replace(self._told[at], labels=tuple(labels))
            return
        known = tuple(names) if len(self._unknown) < MOST_PROPOSED else None
        self.report(
            code,
            (span, "here"),
            notes=() if known is None else ("known",) if known else ("nothing",),
            helps=near_help(name, known or ()) or (("one-of-these",) if known else ()),
            what=what,
            name=name,
            known=known or (),
        )
        self._unknown[what, name] = len(self._told) - 1

    def look_up(self, what: str | Said, name: str, span: Span, known: Mapping[str, T | None]) -> T | None:
        """The thing called `name`, or None: not there (told now) or there but not understood (told before)."""
        if name not in known:
            self.unknown(what, name, span, known)
            return None
        return known[name]

    def once(self, what: str | Said, named: Iterable[tuple[str, Span]]) -> None:
        """Tells of every name that is given a second time, or that looks like another."""
        first: dict[str, Span] = {}
        given = tuple(named)
        self.alike(what, given)
        for name, span in given:
            if name in first:
                self.report("repeated-name", (span, "again"), (first[name], "first"), helps=("rename",), name=name, what=what)
            else:
                first[name] = span

    def alike(self, what: str | Said, named: Iterable[tuple[str, Span]]) -> None:
        """Tells of every name that looks like another one of its kind. A pair is told once, wherever it stands again."""
        first: dict[str, tuple[str, Span]] = {}
        for name, span in named:
            known, at = first.setdefault(skeleton(name), (name, span))
            if known == name or (what, known, name) in self._alike:
                continue
            self._alike.add((what, known, name))
            self.report(
                "names-look-alike",
                (span, "this"),
                (at, "that"),
                notes=_unlike(known, name),
                helps=("rename",),
                what=what,
                known=known,
                name=name,
            )

    def one(self, what: str, nodes: Iterable[T], owner: str | Said) -> T | None:
        """The first of the nodes, telling of every further one: a block that says a thing twice."""
        first: T | None = None
        for node in nodes:
            if first is None:
                first = node
            else:
                self.report(
                    "repeated-statement",
                    (_span(node), "again"),
                    (_span(first), "first"),
                    helps=("leave-one-out",),
                    owner=owner,
                    what=what,
                )
        return first

    @property
    def failed(self) -> bool:
        return has_errors(self._told)

    def all(self) -> tuple[Diagnostic, ...]:
        """Everything told, in the order of the source; what has no place comes first."""
        return tuple(sorted(self._told, key=lambda d: d.labels[0].span.start if d.labels else -1))


def _places(labels: Iterable[Label]) -> tuple[Label, ...]:
    """What is shown: for a statement of a shape, the `use` that brought it in first, then the statement in its shape."""
    shown: dict[Label, None] = {}
    for label in labels:
        span = label.span
        if isinstance(span, Used):
            by = said("by-model", model=span.model) if span.model else said("by-shape", shape=span.name)
            shown[Label(Span(span.file, span.start, span.end), by)] = None
            shown[Label(span.shape, label.said)] = None
        elif span != NOWHERE:
            shown[label] = None
    return tuple(shown)


def _unlike(one: str, other: str) -> tuple[Said, ...]:
    """Which letters differ, by their numbers and Unicode names, since they cannot be seen to."""
    pairs = [(a, b) for a, b in zip(one, other, strict=False) if a != b]
    return tuple(
        said("letters", one=a, other=b, named=_letter(a), other_named=_letter(b)) for a, b in dict.fromkeys(pairs[:MOST_SHOWN])
    )


def _letter(letter: str) -> str:
    return f"U+{ord(letter):04X} {unicodedata.name(letter, '').lower()}".strip()


def near_help(name: str, known: Iterable[str]) -> tuple[Said, ...]:
    """A proposal of the name that may have been meant, if one is near."""
    meant = near(name, known)
    return (said("close", meant=meant),) if meant else ()


def broken(statements: Iterable[syntax.Statement]) -> Iterator[syntax.Broken]:
    """Every unreadable line of the statements and their blocks."""
    for statement in statements:
        if isinstance(statement, syntax.Broken):
            yield statement
        yield from broken(getattr(statement, "body", ()))


def _span(node: object) -> Span:
    return node.span if isinstance(node, syntax.Node) else NOWHERE
