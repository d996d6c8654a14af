"""German as it is printed: a few whole texts, kept as they were read through by a reader of German."""

from __future__ import annotations

import re

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.whole.shipped_once import compiled
from walewright.languages import printed
from walewright.sheet import PageOptions, ProvenPattern, compose
from walewright.sheet.text_copy import text_copy
from walewright.write import plain_text, write


@pytest.mark.parametrize("name", ["bollard", "barnacle", "mooring"])
def test_a_whole_text(name: str, snapshot: SnapshotAssertion) -> None:
    """A hat with a mock rib, every cell of charts, and a picture for a child."""
    outcome, german = compiled(name), printed("german")
    design, counts, _, proof = outcome.result()
    instructions = write(outcome.plans, german.writing, design.sizes, design.charts)
    pattern = ProvenPattern(design, counts, instructions, proof, outcome.fit)
    sheet = compose(german.guide, pattern, PageOptions())
    steps = plain_text(instructions, german.writing)
    *text, _ = text_copy(german.guide, sheet, pattern, steps, "cm").splitlines()
    # Grams are the proof's, and change with it.
    assert re.sub(r"[0-9]+(?: \([0-9: ]+\))? g\b", "# g", "\n".join(text)) == snapshot
