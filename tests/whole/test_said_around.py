"""Garments with more said around their pieces; and that the garments drawn at random have every rule of the language in them."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cache
from pathlib import Path
from random import Random

import pytest
from lark import Token, Tree

from tests.draws import few_of
from tests.whole.bands_at_random import drawn as banded
from tests.whole.charted_at_random import charted
from tests.whole.copies_at_random import copied
from tests.whole.garments_at_random import drawn
from tests.whole.joined_ends_at_random import joined_ends
from tests.whole.more_garments_at_random import more
from tests.whole.parted_at_random import parted
from tests.whole.said_around_at_random import said_around
from tests.whole.test_garments_at_random import looked_at
from walewright.source import reading
from walewright.source.grammar import parsed
from walewright.source.rules import RULES

DRAWS = 200
TESTS = Path(__file__).parent.parent

DRAWERS: Mapping[str, Callable[[int], str]] = {
    "common": lambda seed: drawn(seed).text,
    "other": lambda seed: more(seed).text,
    "parted": lambda seed: parted(seed).text,
    "copies": lambda seed: copied(seed).drawn.text,
    "around": lambda seed: said_around(seed).text,
    "ends": joined_ends,
    "bands": lambda seed: banded(seed)[1],
    "charts": lambda seed: charted(Random(seed)).text,
}

ELSEWHERE: Mapping[str, tuple[str, str]] = {
    "across": ("solve/test_limits_of_edges.py", "across to"),
    "half_gaps": ("whole/test_exact_edges.py", "half a gap"),
    "at_both_edges": ("whole/test_inside_lines.py", "both edges"),
    "inside_left": ("whole/test_inside_lines.py", "left of centre"),
    "inside_right": ("whole/test_inside_lines.py", "right of centre"),
    "left_from_centre": ("whole/test_needles_out.py", "left of centre"),
    "right_from_centre": ("whole/test_needles_out.py", "right of centre"),
    "let_out": ("whole/test_inside_lines.py", "let out"),
    "flat": ("solve/test_limits_of_wedges.py", "cm flat"),
    "in_ratio": ("whole/test_in_ratio.py", "rows to"),
    "knitted_in": ("whole/test_stripes_and_fabrics.py", ", in "),
    "longer": ("solve/test_limits_of_joins.py", "longer by"),
    "odd_or_even": ("whole/test_odd_or_even.py", "odd or even"),
    "two_at_once": ("whole/test_rates.py", "two at once"),
    "with_floats": ("design/test_meanings.py", "with floats"),
    "without": ("design/test_alike.py", "without "),
    "photograph": ("design/test_needed.py", "photograph"),
    "use_from": ("cli/test_shared_files.py", "use "),
    "naming": ("cli/test_author_names.py", "in german"),
    "pleated": ("readback/test_hands.py", "pleated"),
    "to_its_own": ("whole/test_copies.py", "each to its own"),
}
"""Rules that no drawer of whole garments has, with the test that tries them and what is in it: what asks for an exact number or a
file of its own does not go with widths at random."""


@pytest.mark.parametrize("seed", few_of(range(DRAWS), 6))
def test_garments_with_more_said_around_them(seed: int) -> None:
    looked_at(said_around(seed))


@cache
def rules_drawn() -> frozenset[str]:
    """Names of the rules that lines of drawn garments are made of."""
    found: set[str] = set()

    def recorded(kind: str, content: str) -> Tree[Token] | None:
        tree = parsed(kind, content)
        if tree is not None:
            found.update(str(rule.data) for rule in tree.iter_subtrees())
        return tree

    with pytest.MonkeyPatch.context() as patched:
        patched.setattr(reading, "parsed", recorded)
        for drawer in DRAWERS.values():
            for seed in range(DRAWS):
                reading.read("drawn.wale", drawer(seed))
    return frozenset(found)


def test_every_rule_of_the_language_is_drawn_or_tried_elsewhere() -> None:
    assert set(RULES) - rules_drawn() == set(ELSEWHERE)


@pytest.mark.parametrize("rule", sorted(ELSEWHERE))
def test_what_is_tried_elsewhere_is_there(rule: str) -> None:
    file, words = ELSEWHERE[rule]
    assert words in (TESTS / file).read_text(encoding="utf-8"), (rule, file)
