"""Every garment that is shipped: proven in all sizes, in order, and, at tensions drawn at random, proven or truly told why not."""

from __future__ import annotations

import random
import re
from itertools import product

import pytest

from tests.draws import few_of
from tests.whole.shipped_once import GARMENTS, SHIPPED, compiled, design_of, source
from walewright.design import Changes
from walewright.pipeline import compile
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity
from walewright.solve.edges.multiples import slack
from walewright.source import read, tidy
from walewright.write import shared

SINGLE = frozenset({"ebb", "sandbar"})
"""Garments of one size by their nature: shawls."""

DRAWN = 4
"""Random tensions and bodies for each garment, one of them in every run; `tests/benchmarks/regrade_at_random.py` draws more."""

TOLD = frozenset(
    {
        "cap-cannot-meet",
        "counts-conflict",
        "free-level-without-room",
        "hole-at-edge",
        "join-does-not-meet",
        "rib-without-column",
        "slope-too-flat",
        "too-tight",
        "wedge-too-steep",
        "wider-than-bed",
    }
)


@pytest.mark.parametrize("name", GARMENTS)
def test_every_size_is_proven_and_reads_back(name: str) -> None:
    outcome = compiled(name)
    assert outcome.proven, [in_english(d).message for d in outcome.diagnostics]
    assert outcome.proof is not None
    assert all(size.read_back for size in outcome.proof.sizes)
    assert len(outcome.proof.sizes) == len(design_of(name).sizes)


@pytest.mark.parametrize("name", [name for name in GARMENTS if "\nchoice " in source(name)])
def test_a_garment_with_choices_is_proven_in_each_way(name: str) -> None:
    offered = design_of(name).choices
    assert offered
    for taken in product(*(choice.alternatives for choice in offered)):
        chosen = {choice.name: alternative for choice, alternative in zip(offered, taken, strict=True)}
        outcome = compile(source(name), f"{name}.wale", SHIPPED, Changes(chosen=chosen))
        assert outcome.proven, (chosen, [in_english(d).message for d in outcome.diagnostics])
        assert outcome.diagnostics == (), chosen


@pytest.mark.parametrize("name", GARMENTS)
def test_a_garment_says_what_it_is(name: str) -> None:
    design = design_of(name)
    keys = {key for key, _ in design.texts}
    assert {"summary", "difficulty", "story"} <= keys
    assert design.making_up
    assert design.yarns
    assert len(design.sizes) >= 5 or name in SINGLE


@pytest.mark.parametrize("name", GARMENTS)
def test_a_shipped_source_is_tidy(name: str) -> None:
    tree, told = read(f"{name}.wale", source(name))
    assert told == ()
    assert tidy(tree) == source(name)


@pytest.mark.parametrize("name", GARMENTS)
def test_widths_and_heights_are_as_wanted(name: str) -> None:
    proof, design = compiled(name).proof, design_of(name)
    assert proof is not None
    for size in proof.sizes:
        for piece in size.pieces:
            shaped = next((p for p in design.pieces if p.name == piece.name), None)
            runs = (*shaped.left, *shaped.right) if shaped else ()
            # Equal steps are a repeat: each may be half a stitch off. So are the four rows of a stitch held in and let out.
            across = 1 + max((times for run in runs for times in run.steps), default=0) / 2
            if shaped is not None:
                # Where a width has to be a multiple, it is the nearest one.
                across += max(slack(design, shaped, side, at) for side in ("left", "right") for at in range(len(shaped.levels)))
            for measure in piece.measures:
                up = 4 if measure.key.at == "wedge" else 2
                times = measure.key.times or 1
                most = times * (across if measure.unit == "st" else up)
                assert abs(measure.off) <= most + 1e-6, (size.size, piece.name, measure)


@pytest.mark.parametrize("name", GARMENTS)
def test_joined_edges_meet(name: str) -> None:
    proof = compiled(name).proof
    assert proof is not None
    for size in proof.sizes:
        for join in size.joins:
            if join.easing_cm == 0:
                assert join.one_rows == join.other_rows, join
            else:
                assert abs(join.one_cm - join.other_cm - join.longer_cm) <= join.easing_cm + 1e-6, join


def test_every_class_of_bed_is_there() -> None:
    beds = {design_of(name).machine.name for name in GARMENTS}
    assert beds == {"fine", "standard", "mid", "bulky"}
    assert len(GARMENTS) >= 14


def test_the_sizes_share_their_sentences() -> None:
    shares = {}
    for name in GARMENTS:
        instructions = compiled(name).instructions
        assert instructions is not None
        shares[name] = shared(instructions)
    assert min(shares.values()) > 0.75, shares
    assert sum(shares.values()) / len(shares) > 0.92, shares


# ----------------------------------------------------------------- at other tensions, for other bodies


def drawn(name: str, count: int) -> list[Changes]:
    """Tensions within 35 % of each fabric's own, rows and stitches apart, for two sizes, half of them with bodies of their own."""
    design = design_of(name)
    chance = random.Random(name)
    found: list[Changes] = []
    for _ in range(count):
        wider, taller = chance.uniform(0.65, 1.35), chance.uniform(0.65, 1.35)
        tensions = {
            f.name: f"{f.stitches_per_cm * 10 * wider:.3f} st {f.rows_per_cm * 10 * taller:.3f} rows" for f in design.fabrics
        }
        chosen = chance.sample(design.sizes, min(2, len(design.sizes)))
        bodies = {
            m.name: f"{chance.uniform(min(m.values), max(m.values)):.1f} cm"
            for m in design.measurements
            if m.to_fit and chance.random() < 0.5
        }
        found.append(Changes(tuple(s for s in design.sizes if s in chosen), tensions, bodies))
    return found


@pytest.mark.parametrize("draw", few_of(range(DRAWN), 1))
@pytest.mark.parametrize("name", GARMENTS)
def test_regraded_at_random(name: str, draw: int) -> None:
    changes = drawn(name, draw + 1)[draw]
    outcome = compile(source(name), f"{name}.wale", SHIPPED, changes)
    if outcome.proven:
        return
    errors = [d for d in outcome.diagnostics if d.severity is Severity.ERROR]
    assert errors, changes
    for error in errors:
        assert error.code in TOLD, (changes, error.code, in_english(error).message)
        assert in_english(error).helps, error
        assert_true(error)


def assert_true(told: Diagnostic) -> None:
    """What can be checked of a message by itself."""
    if told.code == "wider-than-bed":
        wanted, there = re.findall(r"(\d+) needles, and the bed has (\d+)", in_english(told).message)[0]
        assert int(wanted) > int(there), in_english(told).message
