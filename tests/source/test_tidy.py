"""The formatter: what it writes reads as the same tree, and once is enough."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings

from tests.draws import draws
from tests.source.source_trees import expressions, trees
from walewright import source
from walewright.source import syntax
from walewright.source.expressions import expression

PATTERNS = sorted((Path(__file__).resolve().parents[2] / "patterns").rglob("*.wale"))

few = settings(max_examples=draws(150), deadline=None, suppress_health_check=list(HealthCheck))


@few
@given(trees())
def test_a_tree_written_and_read_is_the_same_tree(tree: syntax.Tree) -> None:
    text = source.tidy(tree)
    again, told = source.read(tree.file, text)
    assert told == (), text
    assert again == tree, text


@few
@given(trees())
def test_tidying_twice_is_tidying_once(tree: syntax.Tree) -> None:
    once = source.tidy(tree)
    assert source.tidy(source.read("", once)[0]) == once


@few
@given(expressions)
def test_an_expression_has_no_bracket_too_many(value: syntax.Expr) -> None:
    """Leaving out any pair of brackets but those of a function changes what the expression means."""
    text = expression(value)
    pairs = [p for p in _pairs(text) if p[0] == 0 or not (text[p[0] - 1].isalnum() or text[p[0] - 1] == "_")]
    for opened, closed in pairs:
        without = text[:opened] + text[opened + 1 : closed] + text[closed + 1 :]
        tree, told = source.read("", f"let a = {without}")
        assert told or tree.statements[0] != syntax.Let("a", value), without


def _pairs(text: str) -> list[tuple[int, int]]:
    opened: list[int] = []
    pairs = []
    for at, letter in enumerate(text):
        if letter == "(":
            opened.append(at)
        elif letter == ")":
            pairs.append((opened.pop(), at))
    return pairs


@pytest.mark.parametrize("path", PATTERNS, ids=lambda p: p.stem)
def test_a_shipped_pattern_reads_the_same_after_tidying(path: Path) -> None:
    tree, told = source.read(path.name, path.read_text(encoding="utf-8"))
    assert told == ()
    text = source.tidy(tree)
    assert source.read(path.name, text) == (tree, ())
    assert text.endswith("\n")
    assert not text.endswith("\n\n")


UNTIDY = """# about the file
pattern "T" # beside
  # in the block
  summary "a # that is no comment"
  # at the end of the block
# before the sizes
sizes S M  2X
    bust from women bust , to fit
    length 56 58.50 160 cm
    hip 9 10
    # last words


let a=( (1 cm) )*2
let b = -(a + (b - c)) / (d / 2)   #
machine bulky
   # alone in a block
piece back in plain,knit 2
     edges   slope to 3 cm wide at top , fashioned 2 in called side
     neck round, 3 cm deep, 4 cm wide
     start 3 cm wide, with welt, on waste yarn
     opening  n 3 cm wide from slit to top, cast off, -3 cm right of centre
          # about it
          left edge out 1 st every 1 row to top
       # after it
     slot s 3 cm wide at slit,3 cm left of centre
#end"""

TIDY = """# about the file

pattern "T"  # beside
    # in the block
    summary "a # that is no comment"
    # at the end of the block

# before the sizes
sizes       S    M  2X
    bust from women bust, to fit
    length 56 58.5 160 cm
    hip 9 10
    # last words

let a = 1 cm * 2
let b = -(a + (b - c)) / (d / 2)  #

machine bulky
    # alone in a block

piece back in plain, knit 2
    edges slope to 3 cm wide at top called side, fashioned 2 in
    neck 4 cm wide, 3 cm deep, round
    start 3 cm wide on waste yarn, with welt
    opening n 3 cm wide from slit to top, 3 cm left of centre, cast off
        # about it
        left edge out 1 st every 1 row to top
    # after it
    slot s 3 cm wide at slit, 3 cm left of centre, on waste yarn

# end
"""


def test_the_layout() -> None:
    tree, told = source.read("", UNTIDY)
    assert told == ()
    assert source.tidy(tree) == TIDY


def test_lines_that_do_not_read_stay_as_they_are() -> None:
    text = "peice back in plain\n    levels hem 0 cm\n    what is this\n\npiece front in plain\n    blub 3\n    end cast off\n"
    tree, told = source.read("", text)
    assert len(told) == 3
    assert source.tidy(tree) == text
