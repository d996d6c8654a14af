"""Nothing is put together that no printed instruction puts together, and nothing is told that is not glued."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.draws import few_of
from tests.whole.bands_at_random import drawn
from tests.whole.glued_garments import PULLOVER, made
from tests.whole.sewn_and_told import put_together, told
from tests.whole.shipped_once import GARMENTS, compiled
from walewright.knit.operations import Join
from walewright.pipeline import Outcome

KINDS = ("over_ends", "parted", "all_round", "neck", "welt", "knitted_on", "begun")


def differences(outcome: Outcome) -> set[tuple[str, str]]:
    """Edges that are glued and not told, or told and not glued, in some size."""
    design, glued = outcome.result()[0], outcome.glued
    assert glued is not None
    found: set[tuple[str, str]] = set()
    for size, work in enumerate(outcome.works):
        wanted = put_together(design, glued.in_size(size), size)
        named, over = told(design, work)
        # A neck without a flat part has no centre in that size.
        lacking = {(o, e) for o, e in wanted - named - over if not e.endswith(" centre")}
        found |= lacking | (named - wanted)
    return found


@pytest.mark.parametrize("name", GARMENTS)
def test_of_a_shipped_garment(name: str) -> None:
    assert differences(compiled(name)) == set()


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("draw", few_of(range(12), 2))
def test_of_drawn_ones(kind: str, draw: int) -> None:
    seeds = (seed for seed in range(100_000) if drawn(seed)[0] == kind)
    proven = (outcome for seed in seeds if (outcome := made(drawn(seed)[1])).proven)
    outcome = next(o for number, o in enumerate(proven) if number == draw)
    assert differences(outcome) == set()


def test_a_sewing_that_is_not_told_is_found() -> None:
    outcome = made(PULLOVER)
    (work,) = outcome.works
    ends = {("neckband", "first end"), ("neckband", "last end")}
    without = tuple(t for t in work.tasks if not (isinstance(t, Join) and t.one[0][0] == "neckband"))
    assert differences(replace(outcome, works=(replace(work, tasks=without),))) == ends
    bare = tuple(replace(t, over=()) if isinstance(t, Join) else t for t in work.tasks)
    assert ("back", "welt left") in differences(replace(outcome, works=(replace(work, tasks=bare),)))
