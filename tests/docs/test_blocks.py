"""What the documentation shows is true: its sources compile, its wrong sources fail as said, its links lead somewhere.

A ```wale block is a whole source; ```wale part is some lines of one; ```wale example is a whole source below the one
```wale frame. The other kinds stand on the pages of codes, see `error_pages.py`; `test_codes.py` tests them.
"""

from __future__ import annotations

import re
import textwrap
from pathlib import Path

import pytest

from tests.docs.blocks import ROOT, Block, blocks, pages
from tests.whole.handwork_told import untold
from walewright import pipeline, source
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.reading.choices import combinations
from walewright.pipeline import Outcome
from walewright.report.model import Severity

WALE = blocks("wale")
WHOLE = [b for b in WALE if b.info == "wale" and not b.page.startswith("docs/errors/")]
PARTS = [b for b in WALE if b.info == "wale part"]
FRAMES = [b for b in WALE if b.info == "wale frame"]
EXAMPLES = [b for b in WALE if b.info == "wale example"]
WRONG = [b for b in WALE if b.info.startswith("wale error: ")]
OF_CODES = [b for b in WALE if b.page.startswith("docs/errors/")]


def compiled(block: Block) -> Outcome:
    return pipeline.compile(block.source, block.name, shipped(), Changes())


def test_every_block_is_of_a_kind_that_is_tested() -> None:
    assert set(WALE) == {*WHOLE, *PARTS, *FRAMES, *EXAMPLES, *WRONG, *OF_CODES}
    assert WHOLE
    assert PARTS
    assert EXAMPLES
    assert WRONG
    assert len(FRAMES) == 1


KINDS_OF_CODES = re.compile(r"wale( wrong| mended)?( in \w+)?|wale frame \w+")


def test_every_block_on_a_page_of_codes_is_of_a_kind_that_is_tested() -> None:
    assert [b.name for b in OF_CODES if not KINDS_OF_CODES.fullmatch(b.info)] == []


@pytest.mark.parametrize("block", WHOLE, ids=lambda b: b.name)
def test_a_whole_source_is_proven(block: Block) -> None:
    outcome = compiled(block)
    assert [d for d in outcome.diagnostics if d.severity is Severity.ERROR] == []
    assert outcome.proven
    assert untold(outcome) == set()


@pytest.mark.parametrize("block", [b for b in (*WHOLE, *EXAMPLES) if "\nchoice " in b.source], ids=lambda b: b.name)
def test_every_way_to_choose_is_proven(block: Block) -> None:
    design = compiled(block).design
    assert design is not None
    ways = combinations(design.choices)
    assert len(ways) > 1
    for chosen in ways:
        outcome = pipeline.compile(block.source, block.name, shipped(), Changes(chosen=chosen))
        assert outcome.proven, chosen
        assert untold(outcome) == set()


@pytest.mark.parametrize("block", EXAMPLES, ids=lambda b: b.name)
def test_an_example_is_proven_below_the_frame(block: Block) -> None:
    outcome = compiled(block)
    # What the frame has for other examples is not used in this one.
    assert [d for d in outcome.diagnostics if d.severity is Severity.ERROR] == []
    assert outcome.proven
    assert untold(outcome) == set()


@pytest.mark.parametrize("block", EXAMPLES, ids=lambda b: b.name)
def test_an_example_is_tidy(block: Block) -> None:
    tree, _ = source.read(block.name, block.source)
    assert source.tidy(tree) == block.source


@pytest.mark.parametrize("block", WRONG, ids=lambda b: b.name)
def test_a_wrong_source_fails_as_it_says(block: Block) -> None:
    codes = [d.code for d in compiled(block).diagnostics if d.severity is Severity.ERROR]
    assert codes == [block.info.removeprefix("wale error: ")]


@pytest.mark.parametrize("block", PARTS, ids=lambda b: b.name)
def test_a_part_can_be_read(block: Block) -> None:
    as_it_stands = source.read(block.name, block.text)[1]
    within_a_piece = source.read(block.name, "piece shown in plain\n" + textwrap.indent(block.text, "    "))[1]
    assert not as_it_stands or not within_a_piece, as_it_stands


@pytest.mark.parametrize("block", WHOLE, ids=lambda b: b.name)
def test_a_shown_source_is_tidy(block: Block) -> None:
    tree, _ = source.read(block.name, block.text)
    assert source.tidy(tree) == block.text


LINK = re.compile(r"\]\((?!https?:)([^)#\s]+)(#[^)\s]*)?\)")


@pytest.mark.parametrize("page", pages(), ids=lambda p: p.relative_to(ROOT).as_posix())
def test_links_lead_somewhere(page: Path) -> None:
    dead = [link for link, _ in LINK.findall(page.read_text(encoding="utf-8")) if not (page.parent / link).exists()]
    assert dead == []
