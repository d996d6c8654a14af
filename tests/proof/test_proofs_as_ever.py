"""What the proof of a garment says as ever: measures beside what was wanted, seams, yarn, bobbins, floats, the windows of pictures;
and how many numbers of each kind are compared, so that none is left out."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.brief import brief
from tests.made_of import FEW, from_text, made
from tests.whole.test_joined_ends import WELTS, skirt, strapped
from walewright import proof
from walewright.counted import counted_piece
from walewright.design import Changes
from walewright.pipeline import Outcome
from walewright.proof.banded import band_as_counted
from walewright.proof.counted import as_counted
from walewright.proof.latched import deepest
from walewright.proof.strips import band_ends_as_counted, strips_as_counted


def compared(outcome: Outcome) -> Iterator[tuple[str, bool]]:
    """(what is compared, whether it is the same) of each number, in every size."""
    design, glued, counts = outcome.design, outcome.glued, outcome.counts
    assert design is not None
    assert glued is not None
    assert counts is not None
    for number, (garment, result) in enumerate(zip(counts.sizes, outcome.results, strict=True)):
        fabrics = {fabric.name: fabric for fabric in result.fabrics}
        for piece in garment.pieces:
            yield from ((where.key, a == b) for where, a, b in as_counted(counted_piece(design, piece), fabrics[piece.name]))
        for band in garment.bands:
            yield from ((where.key, a == b) for where, a, b in band_as_counted(design, band, fabrics[band.name]))
        for fabric in fabrics.values():
            yield from ((where.key, a == b) for where, a, b in deepest(design, fabric))
        ends = (
            *strips_as_counted(design, garment, fabrics),
            *band_ends_as_counted(design, glued.in_size(number), garment, fabrics),
        )
        yield from ((where.key, a == b) for _, (where, a, b) in ends)


def told(outcome: Outcome) -> str:
    design, glued, counts = outcome.design, outcome.glued, outcome.counts
    assert design is not None
    assert glued is not None
    assert counts is not None
    found, faults = proof.prove(design, glued, counts, outcome.works, outcome.results, outcome.results)
    assert found is not None, faults
    numbers = Counter(key for key, same in compared(outcome) if same)
    return brief("proof", found) + brief("compared", dict(sorted(numbers.items()))) + brief("said", tuple(d.code for d in faults))


@pytest.mark.parametrize("name", [name for name in FEW if name not in ("saltmarsh", "shoal")])
def test_a_garment_is_proven_as_ever(name: str, snapshot: SnapshotAssertion) -> None:
    """Of pictures in many colours every loop is listed: they have tests of their own."""
    assert told(made(name, sizes=FEW[name][:1])) == snapshot


@pytest.mark.parametrize("welt", WELTS)
def test_ends_that_are_sewn_are_proven_as_ever(welt: str, snapshot: SnapshotAssertion) -> None:
    assert told(from_text(skirt(welt), changes=Changes(("S",)))) == snapshot


def test_a_seam_along_a_bands_end_is_proven_as_ever(snapshot: SnapshotAssertion) -> None:
    assert told(from_text(strapped(), changes=Changes(("S",)))) == snapshot
