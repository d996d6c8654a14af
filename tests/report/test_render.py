"""How diagnostics look: every shape as a snapshot, and the rules that hold for all."""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import replace

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.report.bare import bare, bare_label, terminal
from walewright.report.german import GERMAN
from walewright.report.model import COMMAND_LINE, NOWHERE, Diagnostic, Severity, Span, diagnosed
from walewright.report.render import MOST_PER_FILE
from walewright.report.render import terminal as rendered

Make = Callable[..., Diagnostic]
FILE = "shawl.wale"

TEXT = """pattern "Shawl"

let half = bust / 2 + 4 cm
let rows_up = 12 rows
let both = half + rows_up

piece back in plain
    start half wide on waste yarn
"""

WIDE = 'pattern "編み物の本"  # é\n\tnote "Maße: ½"\n    note "e\u0301tude" and more\n'


def test_one_label(told: Make, snapshot: SnapshotAssertion) -> None:
    found = told(TEXT, ("12 rows", "a number of rows"), notes=("rows run up the work",), helps=("write a length",))
    assert terminal([found], {FILE: TEXT}) == snapshot


def test_two_labels_on_one_line(told: Make, snapshot: SnapshotAssertion) -> None:
    found = told(TEXT, ("half + ", "a length"), ("both", "this"))
    assert terminal([found], {FILE: TEXT}) == snapshot


def test_labels_on_several_lines(told: Make, snapshot: SnapshotAssertion) -> None:
    found = told(TEXT, ("start half", "here"), ("let half", "a length"), ("let rows_up", "rows"), sizes=("S", "2X"))
    assert terminal([found], {FILE: TEXT}) == snapshot


def test_a_label_over_several_lines(told: Make, snapshot: SnapshotAssertion) -> None:
    found = told(TEXT, ("let half = bust / 2 + 4 cm\nlet rows_up = 12", "these"))
    assert terminal([found], {FILE: TEXT}) == snapshot


@pytest.mark.parametrize("mark", ["本", "½", "and", "é"])
def test_wide_letters_and_tabs(told: Make, snapshot: SnapshotAssertion, mark: str) -> None:
    assert terminal([told(WIDE, (mark, "this"))], {FILE: WIDE}) == snapshot


@pytest.mark.parametrize("text", ["let a =", "let a =\n", "let a =\r\n", "\n", "x\n\n\n"])
def test_the_end_of_the_file(snapshot: SnapshotAssertion, text: str) -> None:
    end = bare("unreadable-line", "the line ends too soon", (bare_label(Span(FILE, len(text), len(text)), "ends"),))
    assert terminal([end], {FILE: text}) == snapshot


def test_a_long_line_is_cut_around_its_mark(told: Make, snapshot: SnapshotAssertion) -> None:
    text = 'story "' + "weed and sand, " * 20 + "TIDE " + "foam and salt, " * 20 + '"'
    shown = terminal([told(text, ("TIDE", "here"))], {FILE: text})
    assert shown == snapshot
    assert max(map(len, shown.splitlines())) < 120


def test_two_files_and_a_source_that_is_not_at_hand(told: Make, snapshot: SnapshotAssertion) -> None:
    found = told(TEXT, ("12 rows", "rows"))
    other = bare_label(Span("command line", 11, 20), "--measure")
    away = bare_label(Span("other.wale", 3, 5), "in a file that is not shown")
    assert (
        terminal([replace(found, labels=(*found.labels, other, away))], {FILE: TEXT, "command line": "walewright --measure"})
        == snapshot
    )


def test_no_place_at_all(snapshot: SnapshotAssertion) -> None:
    found = bare("unknown-size", "the pattern has no size `XXL`", (bare_label(NOWHERE, ""),), severity=Severity.WARNING)
    assert terminal([found], {}) == snapshot


def test_nothing_to_tell() -> None:
    assert terminal([], {}) == ""


def test_at_most_so_many_of_a_file_and_errors_first(told: Make, snapshot: SnapshotAssertion) -> None:
    warnings = [told(TEXT, ("12 rows", f"w{n}"), code="row-falls", severity=Severity.WARNING) for n in range(8)]
    errors = [told(TEXT, ("let half", f"e{n}")) for n in range(MOST_PER_FILE - 2)]
    shown = terminal([*warnings, *errors], {FILE: TEXT})
    assert shown.count("error[") == MOST_PER_FILE - 2
    assert shown.count("warning[") == 2
    assert shown.splitlines()[-3:] == ["shawl.wale: 6 warnings more not shown", "", "8 errors, 8 warnings"]
    elsewhere = bare("source-missing", "there is no such file", (bare_label(Span("b.wale", 0, 0)),))
    assert "there is no such file" in terminal([*warnings, *errors, elsewhere], {FILE: TEXT})


def test_every_diagnostic_once(told: Make) -> None:
    one = told(TEXT, ("12 rows", "rows"))
    assert terminal([one, one], {FILE: TEXT}) == terminal([one], {FILE: TEXT})


def test_each_file_has_its_share_of_what_is_shown(told: Make) -> None:
    """The file of a diagnostic is that of its first label, wherever its others are."""
    one = told(TEXT, ("12 rows", "rows"), ("let half", "a length"))
    away = replace(one, labels=(bare_label(Span("b.wale", 0, 0)), *one.labels))
    many = [replace(one, facts=(("message", f"m{n}"),)) for n in range(MOST_PER_FILE)]
    assert "not shown" not in terminal([*many, away], {FILE: TEXT})
    assert "shawl.wale: 1 error more not shown" in terminal([*many, replace(one, facts=(("message", "last"),))], {FILE: TEXT})


def test_nowhere_is_no_place() -> None:
    assert (NOWHERE.file, NOWHERE.start, NOWHERE.end) == ("", 0, 0)


def test_a_span_to_another_covers_both() -> None:
    first, second = Span(FILE, 4, 9), Span(FILE, 6, 20)
    assert first.to(second) == second.to(first) == Span(FILE, 4, 20)
    assert Span(FILE, 2, 30).to(first) == Span(FILE, 2, 30)


def test_nothing_in_a_source_takes_effect_in_a_terminal() -> None:
    text = "note \x1b[2J\x07\u202e\x85\u2028\ud800 end"
    found = bare("control-character", f"read {text}", (bare_label(Span(FILE, 5, 6), text),), (text,), (text,), sizes=(text,))
    for shown in (terminal([found], {FILE: text}), terminal([found], {})):
        assert all(c.isprintable() or c == "\n" for c in shown)
        shown.encode()


def test_markup_says_the_same_and_nothing_of_the_source_is_a_tag(told: Make) -> None:
    from rich.console import Console

    text = "note [bold]x[/bold] [red] \\[a]\n"
    found = told(text, ("[red]", "[green] label"), message="[b]what[/b]", notes=("[i]",), helps=("\\",))
    console = Console(file=io.StringIO(), width=200, color_system=None, highlight=False)
    with console.capture() as printed:
        console.print(terminal([found], {FILE: text}, markup=True), soft_wrap=True)
    assert printed.get().rstrip("\n") == terminal([found], {FILE: text})


def test_what_is_typed_is_called_in_the_language() -> None:
    found = diagnosed("unknown-size/several", (Span(COMMAND_LINE, 0, 4), ""), notes=("it-has",), size="x", names=("a", "b"))
    assert "in command line, line 1" in rendered([found], {COMMAND_LINE: "wale"})
    assert "in Befehlszeile, Zeile 1" in rendered([found], {COMMAND_LINE: "wale"}, language=GERMAN)
