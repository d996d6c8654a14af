"""The bench copy: each shipped garment's lines lead to its fabric by their words alone, and a line that is broken does not."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from functools import cache

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.whole.shipped_once import GARMENTS, SHIPPED, compiled
from tests.whole.turned import language
from walewright.bench_copies import BenchCopy, bench_copy, proven_bench
from walewright.design import Changes
from walewright.pipeline import Outcome, compile
from walewright.report.model import has_errors
from walewright.write.model import BenchCells

TOLD_LATER = {
    *("Repeat", "Together", "KnitRows", "KnitTo", "Now", "NowInHalf"),
    *("StartChart", "StopChart", "StopChartOn", "StartStripes", "StopStripes"),
    *("LatchInStages", "LatchPanelInStages"),
}
"""Steps that are no work of one moment: a bench copy has none of them."""


def copy_of(outcome: Outcome, size: int) -> BenchCopy:
    copy, faults = bench_copy(outcome, size)
    assert faults == ()
    assert copy is not None
    return copy


def middle(outcome: Outcome) -> int:
    assert outcome.design is not None
    return len(outcome.design.sizes) // 2


@cache
def shipped_copy(name: str) -> BenchCopy:
    """A shipped garment's, in its middle size."""
    return copy_of(compiled(name), middle(compiled(name)))


def rows_of(copy: BenchCopy) -> Iterator[BenchCells]:
    for section in copy.instructions.sections:
        for paragraph in section.paragraphs:
            yield from (s.bench for s in paragraph.sentences if s.bench is not None)


@pytest.mark.parametrize("name", GARMENTS)
def test_the_lines_of_a_shipped_garment_knit_it(name: str) -> None:
    copy = shipped_copy(name)
    kinds = {k for sec in copy.instructions.sections for p in sec.paragraphs for s in p.sentences for k in s.kinds}
    assert not kinds & TOLD_LATER
    assert all(0 <= cells.rows < 200 for cells in rows_of(copy))


@pytest.mark.campaign
@pytest.mark.parametrize("name", GARMENTS)
def test_so_they_do_in_every_size(name: str) -> None:
    outcome = compiled(name)
    assert outcome.design is not None
    for size in range(len(outcome.design.sizes)):
        copy_of(outcome, size)


@pytest.mark.parametrize("name", ["hawser", "marram", "shoal", "mooring"])
def test_so_they_do_in_another_language(name: str) -> None:
    outcome = compiled(name)
    told = replace(outcome, language=language())
    here, there = shipped_copy(name), copy_of(told, middle(told))
    assert here.plain_text != there.plain_text
    assert list(map(where, rows_of(here))) == list(map(where, rows_of(there)))


def where(cells: BenchCells) -> tuple[object, ...]:
    return cells.rows, cells.row, cells.side, cells.in_work, cells.held, cells.waiting


def test_the_counter_goes_by_the_rows_of_the_lines() -> None:
    for section in shipped_copy("tidewrack").instructions.sections:
        at = 0
        for sentence in (s for p in section.paragraphs for s in p.sentences):
            cells = sentence.bench
            if cells is None or cells.row is None:
                continue
            assert "SetRowCounter" in sentence.kinds or cells.row == at + cells.rows
            at = cells.row


@pytest.mark.parametrize("name", ["bollard", "mooring"])
def test_a_whole_copy(name: str, snapshot: SnapshotAssertion) -> None:
    assert shipped_copy(name).plain_text == snapshot


# ----------------------------------------------------------------- broken lines


def broken(name: str, pattern: str, instead: str | Callable[[re.Match[str]], str], at: int = 0) -> bool:
    """Whether a copy is refused whose text has something else where the pattern is found for the time number `at` (from 0)."""
    outcome, copy = compiled(name), shipped_copy(name)
    # Sentences go over the ends of lines.
    text = re.sub(r"\n {4,}(?=\S)(?!\d+ \|)", " ", copy.plain_text)
    found = list(re.finditer(pattern, text))
    assert len(found) > at, pattern
    one = found[at]
    changed = text[: one.start()] + (one.expand(instead) if isinstance(instead, str) else instead(one)) + text[one.end() :]
    assert changed != text
    made, faults = proven_bench(outcome, middle(outcome), replace(copy, plain_text=changed))
    assert (made is None) == has_errors(faults)
    return made is None


@pytest.mark.parametrize(
    ("name", "pattern", "instead"),
    [
        ("tidewrack", r"(\d+) rows to RC", "9 rows to RC"),
        ("tidewrack", r"rows to RC \d+", "rows to RC 999"),
        ("tidewrack", r"RC 0, COR:", "RC 0, COL:"),
        ("tidewrack", r"\d+ in work", "1 in work"),
        ("tidewrack", r"0 held", "2 held"),
        ("tidewrack", r"[1-9]\d* waiting", "0 waiting"),
        ("tidewrack", r"Decrease 1 st at the left end", "Decrease 1 st at the right end"),
        ("tidewrack", r"hold (\d+) sts", "hold 1 st"),
        ("tidewrack", r"\[ \] [^\n]*Wrap the innermost[^\n]*\n", ""),
        ("tidewrack", r"tension 4", "tension 5"),
        ("hawser", r"hang the left", "hang the right"),
        ("hawser", r"Cross L (\d+)", r"Cross L 1\1"),
        ("hawser", r"Drop (\d+) rows", "Drop 1 row"),
        ("hawser", r"Latch up (\d+) rows", "Latch up 1 row"),
        ("hawser", r"Before row (\d+) of the chart", "Before row 1 of the chart"),
        ("shoal", r"Row (\d+) of the chart", "Row 1 of the chart"),
        ("hawser", r"(on L 9), R 9\. Latch up 3 rows", r"\1, R 8. Latch up 3 rows"),
        ("hawser", r"(on L 9, R 9)\. Latch up 3 rows", r"\1. Latch up 2 rows"),
        ("hawser", r" Set the carriage to hold\.", ""),
        ("hawser", r" Set the carriage to knit all\.", ""),
        ("hawser", r"Set the carriage to knit all", "Set the carriage to hold"),
        ("driftline", r" Set the carriage to hold\.", ""),
        ("skerry", r"(?s)(.*) Set the carriage to hold\.", r"\1"),
        ("skerry", r"(?s)(.*) Set the carriage to knit all\.", r"\1"),
        ("skerry", r"( Set the carriage to knit all\.)(?s:(.*?)) Set the carriage to hold\.", r"\2"),
        ("fairlead", r"(Return the waiting [^.]*\.) Set the carriage to knit all\.", r"\1"),
        ("tidewrack", r"(into hold until its turn\.) Set the carriage to hold\.", r"\1"),
        ("tidewrack", r", and take out their waste yarn\.", "."),
        ("tidewrack", r"the (\d+) between its sts", "the 12 between its sts"),
        ("tidewrack", r", the \d+ between its sts and the one at its edge, and pull out the ravel cord", ""),
        ("hawser", r"\[ \] [^\n]*Cross[^\n]*\n", ""),
        ("avocet", r"every 10th needle from L", "every 9th needle from L"),
        ("barnacle", r"Draw the yarn by hand through the loops of", "Lift the yarn off"),
        ("barnacle", r" back to work", " into hold"),
        ("saltmarsh", r"by hand with white", "by hand with blue"),
        ("saltmarsh", r"(\d) in every 8 needles", "2 in every 8 needles"),
        ("shoal", r"Lay coral in the hooks of L 4 to R 2", "Lay coral in the hooks of L 4 to R 3"),
        ("shoal", r"Take up the end of blue", "Take up the end of sand"),
        ("marram", r"since the last latching", "since the first latching"),
        ("fulmar", r"Latch up the (\d+) rows", "Latch up the 2 rows"),
    ],
)
def test_a_broken_line_is_refused(name: str, pattern: str, instead: str) -> None:
    assert broken(name, pattern, instead)


OTHER_SIDE = {"left": "right", "right": "left"}


@pytest.mark.parametrize("at", [0, 3, 7])
def test_a_stitch_moved_to_the_wrong_side_is_refused(at: int) -> None:
    assert broken("avocet", r"(?<=one needle to the )(?:left|right)", lambda found: OTHER_SIDE[found[0]], at)


def test_what_cannot_be_read_is_refused_with_its_place() -> None:
    outcome = compiled("tidewrack")
    copy = copy_of(outcome, 0)
    made, faults = proven_bench(outcome, 0, replace(copy, plain_text=copy.plain_text.replace("Wrap", "Warp", 1)))
    assert made is None
    assert [fault.code for fault in faults] == ["words-unreadable"]


def test_it_is_made_of_a_proven_outcome_only() -> None:
    outcome = compile("pattern", "nothing.wale", SHIPPED, Changes())
    with pytest.raises(ValueError, match="not proven"):
        bench_copy(outcome)
