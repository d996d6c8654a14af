"""Definitions moved into another file mean what they meant."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.design.dump import dump
from tests.design.shaped import SHIPPED
from tests.draws import draws
from tests.whole.shipped_once import GARMENTS
from tests.whole.shipped_once import source as shipped_source
from walewright import pipeline
from walewright.design import Changes, SharedFile, Shipped
from walewright.design.model import Design
from walewright.design.used.shared import SHARED
from walewright.source import read, tidy
from walewright.source import syntax as s


def meant(text: str, shipped: Shipped) -> tuple[list[str], list[str]]:
    """What a source means, in whatever order it is defined, and the codes of what is told."""
    outcome = pipeline.understood(text, "it.wale", shipped, Changes())
    design: Design | None = outcome.design
    assert design is not None, outcome.diagnostics
    return sorted(dump(design).splitlines()), sorted(d.code for d in outcome.diagnostics)


@given(st.data())
@settings(max_examples=draws(60), deadline=None)
def test_definitions_moved_into_other_files_mean_what_they_meant(data: st.DataObject) -> None:
    tree, _ = read("it.wale", shipped_source(data.draw(st.sampled_from(GARMENTS))))
    tree = replace(tree, comments=())
    first, second, own = [], [], []
    for statement in tree.statements:
        where = data.draw(st.integers(0, 2)) if isinstance(statement, SHARED) else 0
        (own, first, second)[where].append(statement)
    # A file may have more than is asked for: what is left behind in it is no part of the source.
    beside = s.Let("left_behind", s.Number(3.0, "cm"))
    # The second file is used by the first one alone: it is found by way of that.
    files = {
        "a.wale": SharedFile("a.wale", tidy(replace(tree, statements=(*_uses(second, "sub/b.wale"), *first, beside)))),
        "sub/b.wale": SharedFile("sub/b.wale", tidy(replace(tree, statements=tuple(second)))),
    }
    moved = tidy(replace(tree, statements=(*own, *_uses((*first, *second), "a.wale"))))
    known = replace(SHIPPED, measures="", files=files)
    assert meant(moved, known) == meant(tidy(tree), known)


def _uses(statements: list[s.Statement] | tuple[s.Statement, ...], file: str) -> list[s.Statement]:
    names = tuple(dict.fromkeys(str(getattr(statement, "name", "")) for statement in statements))
    return [s.UseFrom(names, file)] if names else []
