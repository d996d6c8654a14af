"""The table of words against the code that reports: each call has its entry with all that its sentences need, and each entry its
call.

The code is read, not run: keys are found as they are written, so a key that is put together has to be so in an f-string whose
parts can be seen. A call that takes its facts from elsewhere (`**facts`, `facts=facts`) is looked at for its keys only; what its
sentences need is seen where a test words it, for a fact that is missing there raises KeyError.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from string import Formatter

import pytest

from tests.laws.code_tree import in_a_language, nodes, tree
from tests.laws.reported import called
from walewright.report.codes import CODES
from walewright.report.english import ENGLISH
from walewright.report.wording import Wording

PACKAGE = Path(__file__).parents[2] / "src" / "walewright"
OTHERS = ("report", "py", "bed")
"""What reports nothing: the bed's refusals come to an author by the proof, see `test_refusals.py`."""
STAGES = sorted(p.name for p in PACKAGE.iterdir() if p.is_dir() and p.name not in OTHERS and not p.name.startswith("_"))
BED = "bed/"
"""What the keys of the bed's words begin with: `test_refusals.py` holds those."""
MAKERS = ("diagnosed", "report", "refusal", "fault", "_fault")
"""What makes a diagnostic: a function, or a method of that name."""
PARAMETERS = {"fault": {"at", "label", "notes"}, "_fault": {"sizes"}, "refusal": {"notes"}}
"""Their parameters that are no facts, where these are others than of `diagnosed`."""
ANYTHING = "[a-z0-9-]+"
"""Of a key, what is put in where the code runs."""
OF_ALL = {"notes", "helps", "severity", "sizes", "changes", "facts", "given"}


@dataclass(frozen=True)
class Call:
    place: str
    node: ast.Call
    kinds: tuple[str, ...]
    """Patterns of its code and case."""

    @property
    def facts(self) -> set[str] | None:
        """The names of its facts; None where they cannot be seen."""
        if any(k.arg is None or k.arg == "facts" for k in self.node.keywords):
            return None
        return {k.arg for k in self.node.keywords if k.arg} - PARAMETERS.get(self.maker, OF_ALL)

    @property
    def maker(self) -> str:
        return called(self.node)

    @property
    def open(self) -> bool:
        """Whether its case is put together."""
        return any(ANYTHING in kind for kind in self.kinds)


@cache
def files(stage: str) -> tuple[Path, ...]:
    return tuple(sorted((PACKAGE / stage).rglob("*.py")))


def strings(node: ast.AST) -> Iterator[str]:
    """Regular expressions of what a node may be, where it is a string: itself, either of two, an f-string with anything in its
    places."""
    match node:
        case ast.Constant(value=str(text)):
            yield re.escape(text)
        case ast.IfExp():
            yield from strings(node.body)
            yield from strings(node.orelse)
        case ast.JoinedStr():
            parts = (re.escape(str(p.value)) if isinstance(p, ast.Constant) else ANYTHING for p in node.values)
            yield "".join(parts)


@cache
def calls(stage: str) -> tuple[Call, ...]:
    return tuple(_calls(stage))


def _calls(stage: str) -> Iterator[Call]:
    for path in files(stage):
        for node in nodes(tree(path)):
            if isinstance(node, ast.Call) and called(node) in MAKERS:
                first = node.args[1:2] if ast.unparse(node.func) == "refusal" else node.args[:1]
                kinds = tuple(kind for arg in first for kind in strings(arg))
                if kinds:
                    yield Call(f"{path.name}:{node.lineno}", node, kinds)


def entries(call: Call) -> Iterator[tuple[str, Wording]]:
    """Those that a call may mean; where its case is put together, none that another call names in full."""
    for kind in call.kinds:
        for key, wording in ENGLISH.wordings.items():
            if re.fullmatch(kind, key) and not (call.open and re.escape(key) in closed()):
                yield key, wording


@cache
def closed() -> frozenset[str]:
    """The kinds that calls name in full."""
    return frozenset(kind for stage in STAGES for call in calls(stage) if not call.open for kind in call.kinds)


@cache
def fields(template: str) -> frozenset[str]:
    found: set[str] = set()
    for _, name, spec, _ in Formatter().parse(template):
        if name:
            found |= {name, *fields(spec or "")}
    return frozenset(found)


@cache
def every_string() -> tuple[frozenset[str], tuple[re.Pattern[str], ...]]:
    """Regular expressions of all strings of the code outside the table: those that say one string, and those put together."""
    paths = (path for stage in (*STAGES, "report") for path in files(stage) if not in_a_language(path))
    found = {text for path in (*paths, PACKAGE / "pipeline.py") for node in nodes(tree(path)) for text in strings(node)}
    made = (text for text in sorted(found) if ANYTHING in text and re.search("[a-z]{3}", text.replace(ANYTHING, "")))
    return frozenset(text for text in found if ANYTHING not in text), tuple(map(re.compile, made))


@cache
def written(key: str) -> bool:
    plain, made = every_string()
    return re.escape(key) in plain or any(pattern.fullmatch(key) for pattern in made)


# ----------------------------------------------------------------- each call has its entry


@pytest.mark.parametrize("stage", STAGES)
def test_a_call_has_an_entry(stage: str) -> None:
    assert [c.place for c in calls(stage) for kind in c.kinds if not any(re.fullmatch(kind, k) for k in ENGLISH.wordings)] == []


@pytest.mark.parametrize("stage", STAGES)
def test_a_call_has_what_its_message_needs(stage: str) -> None:
    lacks = [
        (call.place, key, sorted(fields(wording.message) - call.facts))
        for call in calls(stage)
        if call.facts is not None
        for key, wording in entries(call)
        if fields(wording.message) - call.facts
    ]
    assert lacks == []


SHARED = {**ENGLISH.phrases, **{key: states for key, (states, _) in ENGLISH.clauses.items()}}


def keyed(call: Call) -> Iterator[tuple[str, set[str] | None]]:
    """(key, names of its own facts) of the labels, notes and helps that can be seen in a call."""
    for argument in (
        *call.node.args[2 if call.maker == "refusal" else 1 :],
        *(k.value for k in call.node.keywords if k.arg in ("notes", "helps", "label")),
    ):
        for node in ast.walk(argument):
            if isinstance(node, ast.Call) and ast.unparse(node.func) == "said":
                own = {k.arg for k in node.keywords if k.arg}
                shown = None if any(k.arg is None for k in node.keywords) else own
                yield from ((key, shown) for key in strings(node.args[0]))
        parts = argument.elts if isinstance(argument, ast.Tuple) else [argument]
        yield from ((key, set()) for part in parts for key in strings(part) if key)


@pytest.mark.parametrize("stage", STAGES)
def test_a_label_a_note_and_a_help_have_words_and_what_these_need(stage: str) -> None:
    wrong = []
    for call in calls(stage):
        for key, own in keyed(call):
            own_words = [(k, t) for _, w in entries(call) for table in (w.labels, w.notes, w.helps) for k, t in table.items()]
            found = [t for k, t in own_words if re.fullmatch(key, k)]
            shared = [t for k, t in SHARED.items() if re.fullmatch(key, k)]
            if not found and not shared:
                wrong.append((call.place, key, "no words"))
            for template in found or shared[:1]:
                known = None if own is None or call.facts is None else own | (call.facts if found else set())
                if known is not None and not fields(template) <= known:
                    wrong.append((call.place, key, f"needs {fields(template) - known}"))
    assert wrong == []


# ----------------------------------------------------------------- each entry has its call


def test_every_code_of_the_table_is_registered_and_every_registered_one_has_words() -> None:
    assert {key.partition("/")[0] for key in ENGLISH.wordings} == set(CODES)


def test_every_entry_is_used() -> None:
    used = {key for stage in STAGES for call in calls(stage) for key, _ in entries(call)}
    assert sorted(key for key in set(ENGLISH.wordings) - used if not written(key)) == []


def test_every_label_note_and_help_of_an_entry_is_used() -> None:
    parts = ((key, part) for key, entry in ENGLISH.wordings.items() for part in (*entry.labels, *entry.notes, *entry.helps))
    assert [(key, part) for key, part in parts if not written(part)] == []


def test_every_phrase_and_every_clause_is_used() -> None:
    assert sorted(key for key in (*ENGLISH.phrases, *ENGLISH.clauses) if not key.startswith(BED) and not written(key)) == []


def test_what_stands_in_two_parts_of_the_table_stands_there_once() -> None:
    shared = [*ENGLISH.phrases, *ENGLISH.clauses]
    assert sorted({key for key in shared if shared.count(key) > 1}) == []
