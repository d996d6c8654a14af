"""Pages that speak of something countable speak of all of it."""

from __future__ import annotations

import json
import re
import typing

from tests.docs.blocks import ROOT
from walewright.knit import operations
from walewright.plan import moves, schema


def page(name: str) -> str:
    return (ROOT / "docs" / name).read_text(encoding="utf-8")


def test_the_plan_page_names_every_operation() -> None:
    told = set(re.findall(r"`([a-z-]+)`", page("plan.md").split("## A block")[1]))
    kinds = {moves.kind(operation) for operation in typing.get_args(operations.Operation)}
    # Joins are listed on their own in the document.
    assert kinds - {"join"} - told == set()


def test_the_plan_page_names_every_key_of_the_document_and_of_a_size() -> None:
    text = page("plan.md")
    shape = schema()
    keys = {*shape["properties"], *shape["$defs"]["size"]["properties"], *shape["$defs"]["piece"]["properties"]}
    told = set(re.findall(r"`([a-z_]+)`", text))
    assert keys - told - {"name"} == set()
    assert json.dumps(shape["properties"]["format"]) == '{"const": 1}'


def test_the_language_page_has_every_statement() -> None:
    grammar = (ROOT / "grammar" / "source.lark").read_text(encoding="utf-8")
    starts = re.findall(r"^\?in_\w+: (.*(?:\n +\|.*)*)$", grammar, re.MULTILINE)
    # A block whose lines are those of another names its start symbol.
    rules = {rule for start in starts for rule in re.findall(r"\w+", start) if not rule.startswith("in_")}
    assert {"pattern", "making_up", "wedge", "let"} <= rules
    headings = re.findall(r"^###+ (.+)$", page("language.md").split("## Statements")[1], re.MULTILINE)
    assert {_heading(rule) for rule in rules} == set(headings)


def test_the_language_page_has_every_word_of_the_grammar() -> None:
    """Each run of words that a rule has, in code: so an option that is added to a statement is written about too."""
    rules = [
        line for line in (ROOT / "grammar" / "source.lark").read_text(encoding="utf-8").splitlines() if not line.startswith("//")
    ]
    runs = {" ".join(re.findall(r'"([a-z]+)"', run)) for line in rules for run in re.findall(r'(?:"[a-z]+" ?)+', line)}
    assert {"each to its own", "all round", "wide"} & runs
    text = page("language.md")
    code = " ".join([*re.findall(r"```wale.*?\n(.*?)```", text, re.DOTALL), *re.findall(r"`([^`\n]+)`", text)])
    assert {run for run in runs if not re.search(rf"(?<!\w){run}(?!\w)", code)} == set()


def _heading(rule: str) -> str:
    """The heading under which a rule of the grammar is described."""
    together = {
        "for_choice": "for",
        "use_from": "use from",
        "naming": "name",
        "size_row": "row",
        "piece_like": "like",
        "fabric_like": "fabric",
        "machine_fact": "fact",
        "plates": "fact",
        "missing": "fact",
        "stocking_stitch": "stitch",
        "latched_rib": "stitch",
        "charted": "stitch",
        "striped": "stitch",
        "both_edges": "edges",
        "left_edge": "edges",
        "right_edge": "edges",
        "left_shoulder": "shoulders",
        "right_shoulder": "shoulders",
        "end_on_waste": "end",
        "end_cast_off": "end",
        "end_sewn": "end",
        "end_gathered": "end",
        "end_with": "end",
        "zone": "fabric within a piece",
    }
    return together.get(rule, rule.replace("_", " "))


def test_the_index_lists_every_page() -> None:
    listed = set(re.findall(r"\]\(([a-z]+\.md)\)", page("README.md")))
    there = {p.name for p in (ROOT / "docs").glob("*.md")} - {"README.md"}
    assert listed == there
