"""The page on the printed words shows sentences that are printed so and read so."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from tests.in_english import chart_line, key_meaning, rules, said
from walewright.readback.phrases import ReadPhrase, ReadRepeat
from walewright.readback.sentences import Unreadable

PAGE = (Path(__file__).parents[2] / "docs" / "words.md").read_text(encoding="utf-8")
ROWS = [
    row.split("|")[1].strip() for row in PAGE.split("\n") if row.startswith("| ") and row.split("|")[1].strip().endswith((".", ":"))
]
OF_CHARTS = [words for words in ROWS if words.startswith(("Repeat: ", "Way: ", "Key: "))]
CELLS = [words for words in ROWS if words not in OF_CHARTS]
CHART_LINES = [line for words in OF_CHARTS for line in re.split(r"(?<=\.) (?=Key: )", words)]


def read(line: str) -> ReadPhrase | Unreadable:
    """A line beside a chart; of one of the key what stands behind the symbol."""
    key = re.match(r"Key: \S  ", line)
    return key_meaning(line[key.end() :]) if key else chart_line(line)


@pytest.mark.parametrize("words", CELLS)
def test_sentences_of_the_page_are_read(words: str) -> None:
    assert not isinstance(said(words), Unreadable)


@pytest.mark.parametrize("words", CHART_LINES)
def test_chart_lines_of_the_page_are_read(words: str) -> None:
    assert not isinstance(read(words), Unreadable)


def test_the_page_has_every_sentence() -> None:
    shown: set[str] = {"loop", "repeat", "now", "say", "track"}
    for words in CHART_LINES:
        line = read(words)
        assert isinstance(line, ReadPhrase)
        shown |= {line.kind, *(p.kind for p in line.arguments if isinstance(p, ReadPhrase))}
    for words in CELLS:
        told = said(words)
        assert not isinstance(told, Unreadable)
        for one in told:
            shown |= {one.kind} if isinstance(one, ReadPhrase) else {p.kind for p in one.body if not isinstance(p, ReadRepeat)}
    named = {name for name, _ in rules() if not name.startswith("_")}
    parts = {
        "edges",
        "edge",
        "edge_name",
        "edge_told",
        "on_all",
        "on_panel",
        "on_needles",
        "for_some",
        "crossing",
        "dropping",
        "columns_latched",
        "again_from_row_1",
        "moving",
        "holding",
        "latching",
        "changing",
        "at_run",
        "every",
        "stage_rows",
        "stretch_of_rows",
        "stretch_of_stitches",
        "ratio",
        "eased",
        "round",
        "span",
        "stretched",
        "row",
        "stripe",
        "carried",
        "columns",
        "rows",
    }
    parts |= {"row_for_row", "lengths", "in_ratio", "seam", "side", "strips", "strip", "closed_seam", "kept", "turn"}
    parts |= {"first_eased", "second_eased", "second_too", "reached", "chained", "tail_of"}
    parts |= {"thread", "before_last", "within", "same_piece", "own_seam", "seams_of_copies", "copy_seam", "edge_words", "owner"}
    parts |= {"needle_run", "needle_every", "needle_groups", "laid", "crossed"}
    of_bench = {"bench_row", "bench_rows", "bench_counter", "bench_side", "bench_counts"} | MOVES
    # That is what the rules of the ways become.
    assert named - parts - {"start", "chart_line", "meaning"} - of_bench == shown - {"on_the_way"}


MOVES = {made[0] for name, made in rules() if name == "_move"}
BENCH = (Path(__file__).parents[2] / "docs" / "bench.md").read_text(encoding="utf-8")
BENCH_ROWS = [
    row.split("|")[1].strip() for row in BENCH.split("\n") if row.startswith("| ") and row.split("|")[1].strip().endswith(".")
]


@pytest.mark.parametrize("words", BENCH_ROWS)
def test_sentences_of_a_bench_copy_are_read(words: str) -> None:
    assert not isinstance(said(in_line(words)), Unreadable)


def in_line(words: str) -> str:
    return f"3 rows to RC 12, COR: {words} 80 in work, 0 held, 0 waiting."


def test_the_page_of_the_bench_copy_has_every_sentence() -> None:
    shown: set[str] = set()
    for words in BENCH_ROWS:
        told = said(in_line(words))
        assert not isinstance(told, Unreadable)
        arguments: list[object] = [argument for row in told if isinstance(row, ReadPhrase) for argument in row.arguments]
        shown |= {one.kind for one in arguments if isinstance(one, ReadPhrase)}
    assert {kind for kind in shown if not kind.startswith("bench_")} == MOVES
