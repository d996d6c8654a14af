"""Names of a source in the language that is printed: what a knitter gives by the one is taken by the other, and messages, which
show lines of the source, have the names that stand there."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import fields, is_dataclass
from functools import partial
from typing import TYPE_CHECKING, Any

from walewright.record import replace

if TYPE_CHECKING:
    from walewright.design import Changes
    from walewright.report.model import Diagnostic
    from walewright.source.renamed import NameKind, Renaming


def called(changes: Changes, by: Renaming) -> Changes:
    """What a knitter gives, by the names that are printed; it may be given by those of the source too."""
    return _with_names(changes, by.of) if by.any else changes


def as_in_source(changes: Changes, by: Renaming | None) -> Changes:
    """The same by the names of the source, whichever it was given by."""
    if by is None or not by.any:
        return changes
    back = {kind: by.back(kind) for kind in ("size", "choice", *KINDS_GIVEN)}
    # On a page a name has blanks, and may be given so.
    return _with_names(changes, lambda kind, name: back[kind].get(name.replace(" ", "_"), name))


def _with_names(changes: Changes, named: Callable[[NameKind, str], str]) -> Changes:
    fabric, value, yarn = (partial(_by_name, named, kind) for kind in KINDS_GIVEN)
    return replace(
        changes,
        sizes=None if changes.sizes is None else tuple(named("size", name) for name in changes.sizes),
        tensions=fabric(changes.tensions),
        swatches=fabric(changes.swatches),
        dials=fabric(changes.dials),
        measures=value(changes.measures),
        yarns=yarn(changes.yarns),
        chosen={named("choice", choice): named("choice", taken) for choice, taken in changes.chosen.items()},
    )


KINDS_GIVEN: tuple[NameKind, NameKind, NameKind] = ("fabric", "value", "yarn")
"""Of what a knitter gives a figure, beside sizes and choices."""


def _by_name(named: Callable[[NameKind, str], str], kind: NameKind, given: Mapping[str, str]) -> dict[str, str]:
    return {named(kind, name): text for name, text in given.items()}


def as_written(diagnostics: tuple[Diagnostic, ...], by: Renaming | None) -> tuple[Diagnostic, ...]:
    """The same with the names that the source has."""
    if by is None or not by.any:
        return diagnostics
    before = by.before()
    return tuple(_written(one, before) for one in diagnostics)


def _written(value: Any, before: Mapping[str, str]) -> Any:
    if isinstance(value, str):
        return before.get(value, value)
    if isinstance(value, tuple):
        return tuple(_written(one, before) for one in value)
    if is_dataclass(value) and not isinstance(value, type):
        return replace(value, **{f.name: _written(getattr(value, f.name), before) for f in fields(value) if f.init})
    return value
