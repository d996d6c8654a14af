"""Messages for programs: an object of JSON on a line of its own for each diagnostic."""

from __future__ import annotations

import json
from dataclasses import replace
from typing import Any

from walewright.report.as_json import Edit, as_json
from walewright.report.model import Change, Diagnostic, Severity, Span, diagnosed
from walewright.report.said import Amount, by_size, said

FILE = "shawl.wale"
TEXT = 'pattern "編み物の本"\n\nlet half = 20 cm\n'
HALF = Span(FILE, TEXT.index("half"), TEXT.index("half") + 4)


def told(*diagnostics: Diagnostic) -> list[dict[str, Any]]:
    return [json.loads(line) for line in as_json(diagnostics, {FILE: TEXT}).splitlines()]


def unknown(**more: Any) -> Diagnostic:
    fields: dict[str, Any] = {"severity": Severity.WARNING, "sizes": ("S",), **more}
    return diagnosed("option-unknown", (HALF, "not-known"), helps=("help-lists-options",), option="\x1b--é", near=(), **fields)


def test_a_line_a_diagnostic_each_once_and_nothing_for_none() -> None:
    assert as_json([], {}) == ""
    assert len(told(unknown(), unknown(), unknown(sizes=()))) == 2


def test_a_place_has_offsets_lines_and_columns() -> None:
    (found,) = told(unknown())
    place = {"file": FILE, "start": 21, "end": 25, "start_line": 3, "start_column": 5, "end_line": 3, "end_column": 9}
    assert found["span"] == place
    assert found["labels"] == [{**place, "key": "not-known", "text": "not known", "facts": {}}]
    (elsewhere,) = [json.loads(as_json([unknown()], {}))]
    assert elsewhere["span"] == {"file": FILE, "start": 21, "end": 25}


def test_what_is_said_is_there_as_data_and_in_words() -> None:
    (found,) = told(unknown())
    assert (found["code"], found["case"], found["severity"], found["sizes"]) == ("option-unknown", None, "warning", ["S"])
    assert found["message"] == "there is no option \x1b--é"
    assert found["facts"] == {"option": "\x1b--é", "near": []}
    words = "`walewright --help` lists the options"
    assert found["helps"] == [{"key": "help-lists-options", "text": words, "facts": {}, "edits": []}]
    assert as_json([unknown()], {}).isascii()


def test_notes_are_there_as_data_and_in_words() -> None:
    note = said("close", meant="front")
    (found,) = told(unknown(notes=(note,)))
    assert found["notes"] == [{"key": "close", "text": "`front` is close", "facts": {"meant": "front"}}]


def test_columns_count_code_points_and_lines_go_on() -> None:
    letters, begin = TEXT.index("の本"), TEXT.index("物")
    labels = [Span(FILE, letters, letters + 2), Span(FILE, begin, HALF.end)]
    (found,) = told(diagnosed("option-unknown", *((span, "not-known") for span in labels), option="x", near=()))
    keys = ("start_line", "start_column", "end_line", "end_column")
    assert [[label[key] for key in keys] for label in found["labels"]] == [[1, 13, 1, 15], [1, 12, 3, 9]]


def test_facts_keep_their_units_and_sizes() -> None:
    deep = said("is-deep", part="neck", piece="back", cm=Amount(3.5))
    lengths = by_size(("S", "M"), (1.0, 2.0))
    (found,) = told(diagnosed("counts-conflict/alone", failing=deep, lengths=lengths, alike=by_size(("S", "M"), (1.0, 1.0))))
    assert found["span"] is None
    assert found["facts"]["failing"] == {
        "key": "is-deep",
        "text": "the neck of the back is 3.5 cm deep",
        "facts": {"part": "neck", "piece": "back", "cm": {"value": 3.5, "unit": "cm"}},
    }
    assert found["facts"]["lengths"] == {"by_size": {"S": 1.0, "M": 2.0}, "unit": "cm"}
    assert found["facts"]["alike"] == {"value": 1.0, "unit": "cm"}


def test_changes_and_edits_stand_by_the_helps_that_they_are_of() -> None:
    change = Change("height", "back", "up", (("M", 34.0),), said("height", level="up", piece="back"))
    one = diagnosed("join-does-not-meet", helps=("change-levels", "some-easing"), one="a", other="b")
    one = replace(one, changes=((change,),))
    (found,) = [json.loads(as_json([one], {}, lambda _, n: (Edit(HALF, "whole"),) if n == 1 else ()))]
    assert found["changes"] == [
        [{"what": "height", "owner": "back", "at": "up", "name": "the height of `up` of the back", "values": {"M": 34.0}}]
    ]
    assert [h["edits"] for h in found["helps"]] == [[], [{"file": FILE, "start": 21, "end": 25, "text": "whole"}]]


def test_what_was_given_is_named() -> None:
    (found,) = told(diagnosed("given-too-far", given=("measure", "bust"), what="", text="1 cm"))
    assert found["given"] == {"option": "--measure", "name": "bust"}
