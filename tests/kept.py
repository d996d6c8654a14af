"""What stages make of many sources, kept as digests: a snapshot that says of which garment, and of which part of it, anything is
otherwise than it was. `brief.py` shows a few garments in full; here every shipped one and one of each kind that is drawn is looked
at, every field of every value (but the texts of the shipped ones, which their author may word anew), and what the programme of the
counts says line by line.

To see what is otherwise, write it out whole before and after a change, and compare:

    python -m tests.kept design|glued|programme|counts marram
    python -m tests.kept programme "more 7012"
"""

from __future__ import annotations

import hashlib
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import fields, is_dataclass
from enum import Enum
from functools import cache
from typing import Any

from tests.made_of import DRAWERS, one_of_each_kind
from tests.whole.shipped_once import GARMENTS, SHIPPED, source
from walewright.design import Changes
from walewright.design.model import Origin
from walewright.pipeline import Outcome, _count, _put_together, understood
from walewright.report.model import Span
from walewright.solve.algebra.programme import Programme
from walewright.solve.algebra.sums import Linear, Terms
from walewright.solve.solver import programme_of

Parts = Mapping[str, Sequence[str]]
"""Of what a stage makes: its parts by their names, each as lines of text."""

KEPT = (*GARMENTS, *(f"{drawer} {seed}" for drawer, seed in one_of_each_kind()))
"""Shipped garments by their names, drawn ones by who draws them and their numbers."""


def digests(parts: Parts) -> str:
    """A line a part: its name, of how many lines it is, and their digest."""
    return "\n".join(f"{name}: {len(lines)}, {_digest(lines)}" for name, lines in parts.items()) + "\n"


def _digest(lines: Sequence[str]) -> str:
    return hashlib.blake2s("\n".join(lines).encode(), digest_size=5).hexdigest()


@cache
def together(name: str) -> Outcome:
    """A garment put together, in all its sizes."""
    drawer, _, seed = name.partition(" ")
    text = DRAWERS[drawer](int(seed)).text if seed else source(name)
    return _put_together(understood(text, "kept.wale", SHIPPED, Changes()))


# ----------------------------------------------------------------- values


def fields_of(value: Any) -> Parts:
    """A dataclass by its fields, those that are lists of things with a line for each."""
    return {field.name: _lines(getattr(value, field.name)) for field in fields(value)}


def _lines(value: Any) -> Sequence[str]:
    many = isinstance(value, tuple) and any(is_dataclass(one) for one in value)
    return [written(one) for one in value] if many else [written(value)]


def written(value: Any, *, places: bool = False) -> str:
    """A value with all its fields. Of a place in the source it is said what it is of; with `places`, too, where in the text that
    stands."""

    def each(one: Any) -> str:
        return written(one, places=places)

    if isinstance(value, Origin):
        return f"{value.path}@{each(value.span)}" if places else value.path
    if isinstance(value, Span):
        return f"{value.file}:{value.start}-{value.end}" if places else "~"
    if isinstance(value, type):
        return value.__name__
    if is_dataclass(value):
        return f"{type(value).__name__}({' '.join(f'{f.name}={each(getattr(value, f.name))}' for f in fields(value))})"
    if isinstance(value, Mapping):
        return f"{{{', '.join(f'{each(key)}: {each(one)}' for key, one in value.items())}}}"
    if isinstance(value, tuple | list):
        return f"[{' '.join(map(each, value))}]"
    if isinstance(value, frozenset | set):
        return f"<{' '.join(sorted(map(each, value)))}>"
    if isinstance(value, Enum):
        return value.name
    # Sums of floats may differ in their last digit from one machine to another.
    return f"{round(value, 6) + 0.0:g}" if isinstance(value, float) else repr(value)


# ----------------------------------------------------------------- programmes


def programme_parts(programme: Programme) -> Parts:
    """What a programme asks and wishes for, its numbers called by their names: rules by what they say, wishes by their pieces."""

    def called(number: int) -> str:
        variable = programme.variables[number]
        return f"{variable.piece}/{variable.name}/{variable.size}"

    def summed(terms: Terms) -> str:
        return " ".join(f"{by:+d}*{called(number)}" for number, by in sorted(terms.of))

    def bounded(line: Linear) -> str:
        return f"{line.low} <= {summed(line.terms)} <= {line.high}"

    found: dict[str, list[str]] = {"numbers": [called(number) for number in range(len(programme.variables))]}
    for rule in programme.rules:
        lines = found.setdefault(f"rules {rule.name.key}", [])
        more = (rule.kind, rule.origins, rule.cm_per_unit, rule.otherwise, rule.ranged, rule.figure)
        lines += [written(rule.name), *map(written, rule.says), *map(written, more)]
        lines += [f"{size}: {bounded(line)}" for size, line in rule.constraints]
        lines += [f"near {size}: {bounded(line)}" for size, line in rule.near]
    for wish in programme.wishes:
        of = programme.variables[wish.terms.of[0][0]].piece if wish.terms.of else ""
        told = f"{summed(wish.terms)} {wish.terms.more:+d} at {written(wish.wanted)}"
        found.setdefault(f"wishes {of}", []).append(f"{told}: {written((wish.weight, wish.beyond, wish.free))}")
    nudges = [f"{called(number)}: {cost:.9g}" for number, cost in programme.nudges]
    return {**found, "nudges": nudges} if nudges else found


def _design(name: str) -> Parts:
    made = together(name)
    assert made.design is not None, made.diagnostics
    parts = {part: lines for part, lines in fields_of(made.design).items() if part != "texts" or name not in GARMENTS}
    return parts | {"reported": list(map(written, made.diagnostics))}


def _glued(name: str) -> Parts:
    made = together(name)
    assert made.glued is not None, made.diagnostics
    groups = [fields_of(group) for group in made.glued.groups]
    many = {f"{n} {part}": lines for n, group in enumerate(groups, 1) for part, lines in group.items()}
    return {"sizes": _lines(made.glued.sizes), **(many if len(groups) > 1 else groups[0])}


def _programme(name: str) -> Parts:
    made = together(name)
    assert made.design is not None, made.diagnostics
    return programme_parts(programme_of(made.design, (), made.glued)[0])


def _counts(name: str) -> Parts:
    made = _count(together(name), helps=False).counts
    assert made is not None
    return {garment.size: [line for lines in fields_of(garment).values() for line in lines] for garment in made.sizes}


STAGES: Mapping[str, Callable[[str], Parts]] = {
    "design": _design,
    "glued": _glued,
    "programme": _programme,
    "counts": _counts,
}


def kept(stage: str, name: str) -> str:
    """The digests of what a stage makes of a garment."""
    return digests(STAGES[stage](name))


def _whole(parts: Parts) -> Iterator[str]:
    for name, lines in parts.items():
        yield from (f"{name}: {line}" for line in lines)


if __name__ == "__main__":
    print("\n".join(_whole(STAGES[sys.argv[1]](sys.argv[2]))))
