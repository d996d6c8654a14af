"""Laws of what is reported and of the table of words: each report has its sentence, each sentence its report and its facts.

The code is read, not run: a report that no test comes to is held to them as well. `reported.py` says what is read. That every
entry, key and phrase of the table is used by some report is held by `test_table_of_words.py`.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path

from tests.laws.code_tree import PACKAGE, breaches, dotted, each_stage, nodes, stage, tree
from tests.laws.reported import (
    GROUPS,
    Report,
    called,
    fields_of,
    handed_on,
    literals,
    named_kinds,
    of_package,
    phrases,
    reports,
    sources,
    wordy,
)
from walewright.guide.english import PHRASES
from walewright.report.english import ENGLISH
from walewright.report.wording import Wording

TERMS = frozenset(ENGLISH.terms)
PRINTED = frozenset({"knit", "write"})
"""Packages that name what is printed, not what is reported: `test_printed_words.py` holds them."""

GUIDE = frozenset(key for table in PHRASES for key in table)
"""Keys of the guide's sentences."""

HELD = tuple(path for path in sources() if stage(path) not in PRINTED)

FIGURE = frozenset({"cm"})
"""What a rule's name lacks of its clause: its figure is put in where it is told. Facts that no sentence has tell rules apart."""

NEVER_SAID = {
    "free-ways": "a rule of a programme that is solved or not, and explained in neither case",
    "join": "a rule of a join, which `cannot-meet` explains in place of its name",
}
"""Names of the solver's rules that come into no sentence."""


@cache
def everywhere() -> frozenset[str]:
    return frozenset().union(*(literals(p) for p in sources()))


@cache
def direct() -> frozenset[str]:
    """The kinds that are written in the call that reports them."""
    return frozenset(kind for path in sources() for report in reports(path) if not report.put_together for kind in report.kinds)


def meant(report: Report) -> Iterator[str]:
    """The kinds of a report; of a kind put together, those that no call names in full."""
    yield from (kind for kind in report.kinds if not (report.put_together and kind in direct()))


def template(entry: Wording, group: str, key: str) -> str | None:
    """The words of a part of a report: the entry's own, or a phrase's."""
    own: str | None = getattr(entry, group).get(key)
    return own if own is not None else shared(key)


def shared(key: str) -> str | None:
    """The words of a phrase, or of a clause as it is stated; none in which a fact has its place only where it is denied."""
    clause = ENGLISH.clauses.get(key)
    return ENGLISH.phrases.get(key) if clause is None else "".join(clause)


def as_case(package: str, key: str, facts: frozenset[str]) -> bool:
    """Whether a phrase becomes the case of a code in its package, with all that the message needs."""
    entries = ((ENGLISH.wordings.get(f"{code}/{key}"), beside) for code, beside in handed_on(package))
    return any(entry is not None and ("facts" in beside or fields_of(entry.message) <= facts | beside) for entry, beside in entries)


def lacking(report: Report, kind: str) -> Iterator[str]:
    """What a report of a kind lacks: the entry, words for a key, or facts that its sentences need."""
    entry = ENGLISH.wordings.get(kind)
    if entry is None:
        yield f"no entry {kind}"
        return
    if not report.any_facts:
        yield from (f"{kind}: no fact {name}" for name in sorted(fields_of(entry.message) - report.facts))
    for group in GROUPS:
        for key in sorted(report.keys[group]):
            if not any(template(ENGLISH.wordings[k], group, key) for k in {kind, *report.kinds} & set(ENGLISH.wordings)):
                yield f"{kind}: no {group} {key}"
        wanted = report.keys[group] if group in report.whole else report.keys[group] | set(getattr(entry, group))
        for key in sorted(wanted):
            words = template(entry, group, key)
            needed = fields_of(words or "") - report.facts
            if (
                needed
                and not report.any_facts
                and not any("facts" in given or needed <= given for given in said_facts(report.package, key))
            ):
                yield f"{kind}: no facts {sorted(needed)} for {group} {key}"


@cache
def said_facts(package: str, key: str) -> tuple[frozenset[str], ...]:
    """What is given with a phrase of this key, wherever a package makes one; "facts" among them where some are handed on."""
    made = [phrase for path in of_package(package) for phrase in phrases(path) if phrase.key == key]
    return tuple(phrase.facts | ({"facts"} if phrase.any_facts else set()) for phrase in made if phrase.key == key)


def wordless(path: Path) -> list[str]:
    return [f"line {r.line}: {fault}" for r in reports(path) for kind in meant(r) for fault in lacking(r, kind)]


@each_stage(HELD)
def test_every_report_has_its_words_and_every_place_in_them_its_fact(paths: list[Path]) -> None:
    assert breaches(wordless, paths) == {}


def untold(path: Path) -> list[str]:
    """Facts of reports that go into no words."""
    found = []
    for report in reports(path):
        entries = [ENGLISH.wordings[kind] for kind in report.kinds if kind in ENGLISH.wordings]
        used = {
            name
            for entry in entries
            for words in (
                entry.message,
                *(w for group in GROUPS for w in getattr(entry, group).values()),
                *(ENGLISH.phrases.get(key, "") for group in GROUPS for key in report.keys[group]),
            )
            for name in fields_of(words)
        }
        if entries and report.facts - used:
            found.append(f"line {report.line}: {sorted(report.facts - used)} in no sentence of {report.kinds[0]}")
    return found


@each_stage(HELD)
def test_every_fact_goes_into_the_words(paths: list[Path]) -> None:
    assert breaches(untold, paths) == {}


def factless(path: Path) -> list[str]:
    """Kinds that no report of the package that takes its kind gives all they need."""
    package = stage(path)
    taking = [r for p in of_package(package) for r in reports(p) if not r.kinds and not r.passes_on]
    found = []
    for kind in sorted(literals(path) & set(ENGLISH.wordings) - direct()):
        if not any(not list(lacking(report, kind)) for report in taking):
            found.append(kind)
    return found


@each_stage(HELD)
def test_a_kind_that_is_worked_out_elsewhere_has_its_facts(paths: list[Path]) -> None:
    """A kind written in one place and reported in another."""
    assert breaches(factless, paths) == {}


@cache
def keys_of_entries() -> frozenset[str]:
    return frozenset(key for entry in ENGLISH.wordings.values() for group in GROUPS for key in getattr(entry, group))


def lacking_phrases(path: Path) -> list[str]:
    """Phrases that have no words, or not the facts that these have places for."""
    known = keys_of_entries()
    found = []
    for phrase in phrases(path):
        if not phrase.key:
            continue
        words, clause = shared(phrase.key), phrase.key in ENGLISH.clauses
        # `test_guide` looks at what the guide says.
        if phrase.key in NEVER_SAID or phrase.key in GUIDE:
            continue
        lack = fields_of(words or "") - phrase.facts
        if words is None and phrase.key not in known:
            if not as_case(stage(path), phrase.key, phrase.facts):
                found.append(f"line {phrase.line}: no words for {phrase.key}")
        elif phrase.any_facts or phrase.within_report or phrase.key in known:
            continue
        elif words is not None and not (lack <= FIGURE if clause else phrase.facts == fields_of(words)):
            found.append(f"line {phrase.line}: {phrase.key} takes {sorted(fields_of(words))}")
    return found


@each_stage(HELD)
def test_every_phrase_has_its_words_and_its_facts(paths: list[Path]) -> None:
    assert breaches(lacking_phrases, paths) == {}


@each_stage(HELD)
def test_no_stage_holds_words(paths: list[Path]) -> None:
    assert breaches(lambda path: list(wordy(path, TERMS)), paths) == {}


def told_as_such(path: Path) -> list[str]:
    """Words given as such: `tell`, and diagnostics that are made by hand."""
    if stage(path) == "report" or dotted(path) == "walewright.design.findings":
        return []
    calls = (n for n in nodes(tree(path)) if isinstance(n, ast.Call))
    return [f"line {n.lineno}: {ast.unparse(n.func)}" for n in calls if called(n) in ("tell", "Diagnostic")]


@each_stage(HELD)
def test_the_old_ways_to_report_are_not_used(paths: list[Path]) -> None:
    assert breaches(told_as_such, paths) == {}


@each_stage(HELD)
def test_kinds_of_named_things_are_terms(paths: list[Path]) -> None:
    assert breaches(lambda path: [(line, kind) for line, kind in named_kinds(path) if kind not in TERMS], paths) == {}


def test_every_term_is_used() -> None:
    assert sorted(TERMS - everywhere()) == []


def test_a_code_has_either_one_message_or_cases() -> None:
    """But for what several stages report, which share the code of one thing."""
    cased = {kind.partition("/")[0] for kind in ENGLISH.wordings if "/" in kind}
    shared = {"unknown-name", "unknown-size", "no-such-edge", "repeated-statement"}
    assert sorted(cased & set(ENGLISH.wordings) - shared) == []


def test_the_law_sees_the_compiler() -> None:
    assert PACKAGE.is_dir()
    assert sum(len(reports(path)) for path in HELD) > 100
