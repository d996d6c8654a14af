"""Nothing is put together that no printed instruction puts together, and nothing is told that is not glued."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.draws import few_of
from tests.whole.bands_at_random import drawn
from tests.whole.glued_garments import MITTENS, PULLOVER, made
from tests.whole.sewn_and_told import put_together, told
from tests.whole.shipped_once import GARMENTS, compiled
from walewright.knit.operations import CastOn, Join, PickUpEdge, Work
from walewright.pipeline import Outcome

KINDS = ("over_ends", "parted", "all_round", "neck", "welt", "knitted_on", "begun")


def differences(outcome: Outcome) -> set[tuple[str, str]]:
    """Edges that are glued and not told, or told and not glued, in some size."""
    design, counts, _, _ = outcome.result()
    glued = outcome.glued
    assert glued is not None
    found: set[tuple[str, str]] = set()
    for size, work in enumerate(outcome.works):
        wanted = put_together(design, glued.in_size(size), size)
        named, over = told(design, work)
        # A gap that begins without a flat part in that size has no centre, and its edge above none where it closes again.
        pieces = [(piece.name, opening) for piece in counts.sizes[size].pieces for opening in piece.openings]
        none = {(piece, f"{o.name} centre") for piece, o in pieces if not o.flat} | {
            (piece, f"{o.name} upper") for piece, o in pieces if o.rejoins and not o.width
        }
        lacking = wanted - named - over - none
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


def _not_picked_up(work: Work, name: str) -> Work:
    """The block of that name cast on by itself."""
    block = next(b for b in work.blocks if b.name == name)
    first = next(op for op in block.operations if isinstance(op, PickUpEdge))
    rest = tuple(op for op in block.operations if not isinstance(op, PickUpEdge))
    bare = replace(block, operations=(CastOn("e-wrap", first.first, first.last), *rest))
    return replace(work, tasks=tuple(bare if task is block else task for task in work.tasks))


@pytest.mark.parametrize(
    ("text", "name", "along"),
    [
        (MITTENS, "left_thumb", {("left_mitten", "thumb"), ("left_mitten", "thumb upper")}),
        (PULLOVER, "neckband", {(body, f"neck {part}") for body in ("back", "front") for part in ("left", "centre", "right")}),
    ],
)
def test_a_start_that_is_not_picked_up_is_found(text: str, name: str, along: set[tuple[str, str]]) -> None:
    outcome = made(text)
    (work,) = outcome.works
    assert differences(outcome) == set()
    assert differences(replace(outcome, works=(_not_picked_up(work, name),))) == {(name, "start"), *along}


def test_a_cast_on_start_told_along_an_edge_is_found() -> None:
    outcome = made(PULLOVER)
    (work,) = outcome.works
    picked = next(op for b in work.blocks for op in b.operations if isinstance(op, PickUpEdge) and b.name == "neckband")
    tasks = tuple(replace(t, operations=(picked, *t.operations)) if t.name == "sleeve" else t for t in work.blocks)
    assert ("sleeve", "start") in differences(replace(outcome, works=(replace(work, tasks=tasks),)))
