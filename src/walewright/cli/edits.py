"""Helps as edits of the source: where a help is a change of the text, the change itself.

Only what does exactly as the help says is an edit: each is made and the text understood again. A misspelt name has to be known
then; a figure has to mean the very design that the solver tried.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import fields, is_dataclass
from itertools import islice, product
from typing import TYPE_CHECKING

from walewright.record import replace
from walewright.report.as_json import Edit
from walewright.report.model import Change, Diagnostic, Span
from walewright.report.said import Fact

if TYPE_CHECKING:
    from walewright.design.model import Design
    from walewright.pipeline import Outcome
    from walewright.source.quantities import Number

NEAR = "close"
"""Key of the help that names what is nearly spelt so."""
INSTEAD = "instead"
"""Key of the help that names what is to be written in place of something else."""
MOST_TRIED = 24
"""Texts that are understood for one help."""
ALIKE = 1e-6
"""cm by which a number in the text and the figure of the design may differ and still be the same."""

Again = Callable[[str], "Outcome"]
"""Understands another text in place of the outcome's."""


def edits_of(outcome: Outcome, again: Again, diagnostic: Diagnostic, number: int) -> tuple[Edit, ...]:
    """What help `number` of a diagnostic changes in the outcome's source; nothing where it is no change of the text."""
    help_ = diagnostic.helps[number]
    if help_.key == NEAR:
        return _renamed(outcome, again, diagnostic, str(dict(help_.facts)["meant"]))
    if help_.key == INSTEAD:
        return _written_instead(outcome, again, diagnostic, dict(help_.facts))
    if number < len(diagnostic.changes):
        return _with_figures(outcome, again, diagnostic.changes[number])
    return ()


def applied(text: str, edits: Sequence[Edit]) -> str:
    """The text with the edits made."""
    for edit in sorted(edits, key=lambda e: e.span.start, reverse=True):
        text = text[: edit.span.start] + edit.text + text[edit.span.end :]
    return text


# ----------------------------------------------------------------- names


def _renamed(outcome: Outcome, again: Again, diagnostic: Diagnostic, meant: str) -> tuple[Edit, ...]:
    """The name at the first place, and wherever the same message points at the same name."""
    spans = dict.fromkeys(label.span for label in diagnostic.labels if label.span.file == outcome.file)
    first = diagnostic.labels[0].span if diagnostic.labels else None
    if first not in spans:
        return ()
    # A place is the name itself, or the line that it stands on.
    wrong = str(dict(diagnostic.facts).get("name", outcome.text[first.start : first.end]))
    found = [_word(outcome.text, wrong, span) for span in spans]
    edits = tuple(Edit(span, meant) for span in dict.fromkeys(span for span in found if span is not None))
    if found[0] is None or wrong == meant:
        return ()
    after = again(applied(outcome.text, edits)).diagnostics
    gone = not any(d.code == diagnostic.code and d.labels and d.labels[0].span.start == first.start for d in after)
    return edits if gone else ()


def _written_instead(outcome: Outcome, again: Again, diagnostic: Diagnostic, facts: Mapping[str, Fact]) -> tuple[Edit, ...]:
    """What stands there, once, written otherwise, if that is not told again."""
    first = diagnostic.labels[0].span if diagnostic.labels else None
    if first is None or first.file != outcome.file:
        return ()
    wrong, right = str(facts["wrong"]), str(facts["right"])
    whole = re.compile(rf"(?<![\w./-]){re.escape(wrong)}(?![\w./])")
    found = [m.start() for m in whole.finditer(outcome.text, first.start, first.end)]
    if len(found) != 1:
        return ()
    edit = Edit(Span(first.file, found[0], found[0] + len(wrong)), right)
    after = again(applied(outcome.text, (edit,))).diagnostics
    return () if any(d.code == diagnostic.code and d.labels and d.labels[0].span.start == first.start for d in after) else (edit,)


def _word(text: str, word: str, within: Span) -> Span | None:
    """Where a word stands within a stretch of the text; None where it is not there, or not there alone."""
    whole = re.compile(rf"(?<![\w./-]){re.escape(word)}(?![\w./-])")
    found = [m.start() for m in whole.finditer(text, within.start, within.end)]
    alone = len(found) == 1 and any(c.isalnum() for c in word) and not any(c.isspace() for c in word)
    return Span(within.file, found[0], found[0] + len(word)) if alone else None


# ----------------------------------------------------------------- figures


def _with_figures(outcome: Outcome, again: Again, changes: Sequence[Change]) -> tuple[Edit, ...]:
    """The numbers of the text that these figures come from, each by itself or all that are alike, if the text with other numbers
    means the design that was tried."""
    from walewright.solve.conflict.changed import changed

    design = outcome.design
    wanted = changed(design, changes) if design is not None else None
    if design is None or wanted is None:
        return ()
    ways = [list(_ways(outcome, design, change)) for change in changes]
    for some in islice(product(*ways), MOST_TRIED):
        edits = tuple(edit for each in some for edit in each)
        if len({edit.span for edit in edits}) < len(edits):
            continue
        made = again(applied(outcome.text, edits)).design
        if made is not None and _meaning(replace(made, edition=None)) == _meaning(replace(wanted, edition=None)):
            return edits
    return ()


def _ways(outcome: Outcome, design: Design, change: Change) -> Iterator[tuple[Edit, ...]]:
    """Edits that may write a figure otherwise: it is one number now, and to be one number, in all sizes."""
    from walewright.solve.conflict.changed import figures

    now, values = set((figures(design, change) or {}).values()), {value for _, value in change.values}
    if len(now) != 1 or len(values) != 1 or len(change.values) < len(design.sizes):
        return
    (old,), (new,) = now, values
    numbers = [number for number in _numbers(outcome) if abs(_worth(number) - old) < ALIKE]
    edits = [Edit(number.span, _written(number, new)) for number in numbers]
    yield from ((edit,) for edit in edits)
    if len(edits) > 1:
        yield tuple(edits)


def _numbers(outcome: Outcome) -> Iterator[Number]:
    """Every number of the source, in its order."""
    from walewright.source.quantities import Node, Number

    left: list[object] = list(reversed(outcome.tree.statements)) if outcome.tree is not None else []
    while left:
        node = left.pop()
        if isinstance(node, Number):
            yield node
        elif isinstance(node, tuple):
            left += reversed(node)
        elif isinstance(node, Node):
            left += reversed([getattr(node, f.name) for f in fields(node)])


def _worth(number: Number) -> float:
    """In cm; what is no length as it is."""
    from walewright.design.reading.units import LENGTH, convert

    read = convert(number.value, number.unit) if number.unit is not None else None
    return read[0] if read is not None and read[1] == LENGTH else number.value


def _written(number: Number, value: float) -> str:
    """A figure of the design as the text has it, in centimetres."""
    return f"{value:g}" if number.unit is None else f"{value:g} cm"


def _meaning(value: object) -> object:
    """A design without its places in the text."""
    from walewright.design.model import Origin

    if isinstance(value, Origin | Span):
        return None
    if isinstance(value, float):
        return round(value, 6)
    if isinstance(value, tuple | list):
        return tuple(_meaning(part) for part in value)
    if isinstance(value, dict):
        return tuple((key, _meaning(part)) for key, part in value.items())
    if is_dataclass(value):
        return type(value).__name__, *(_meaning(getattr(value, f.name)) for f in fields(value))
    return value
