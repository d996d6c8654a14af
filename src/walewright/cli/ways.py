"""Every way to choose among the alternatives of a source: what `check --every-choice` goes through."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product
from typing import TYPE_CHECKING

from walewright.cli.options import Wanted
from walewright.record import replace
from walewright.report.model import Diagnostic
from walewright.report.said import said

if TYPE_CHECKING:
    from walewright.design.model import Choice
    from walewright.pipeline import Outcome


def other_ways(first: Outcome, wanted: Wanted) -> Iterator[Wanted]:
    """What a knitter gives, with every other way to choose than that of the `first` outcome; what they chose themselves stays."""
    offered: tuple[Choice, ...] = first.design.choices if first.design is not None else ()
    typed = wanted.fields.get("chosen") or {}
    given = {choice.name for choice in offered if _typed(choice, typed)}
    each = product(*((c.alternative,) if c.name in given else _own_first(c) for c in offered))
    for taken in list(each)[1:]:
        chosen = dict(zip((c.name for c in offered), taken, strict=True))
        yield replace(wanted, fields={**wanted.fields, "chosen": chosen})


def _typed(choice: Choice, typed: object) -> bool:
    from walewright.design import meant

    return isinstance(typed, dict) and any(meant(name, {choice.name: ()}) for name in typed)


def _own_first(choice: Choice) -> tuple[str, ...]:
    return (choice.alternative, *(a for a in choice.alternatives if a != choice.alternative))


def what_is_told(outcome: Outcome) -> set[object]:
    """What `only_there` need not tell again."""
    return {_what(d) for d in outcome.diagnostics}


def only_there(outcome: Outcome, before: set[object]) -> tuple[Diagnostic, ...]:
    """What is reported of this way to choose and was not reported `before`, which is added to; each says of which it is."""
    own = outcome.design.choices if outcome.design is not None else ()
    way = said("with-alternatives", chosen=tuple(said("alternative-named", choice=c.name, alternative=c.alternative) for c in own))
    fresh = [d for d in outcome.diagnostics if _what(d) not in before]
    before |= {_what(d) for d in fresh}
    return tuple(replace(d, notes=(*d.notes, way)) if own else d for d in fresh)


def _what(diagnostic: Diagnostic) -> object:
    """What is told, and where, whatever else there is in that alternative."""
    return diagnostic.code, diagnostic.case, diagnostic.given, tuple(label.span for label in diagnostic.labels)
