"""Garments drawn at random: each is proven, and none of its damages is; a line proposed another way leads to a proven garment.

Thousands are drawn by hand, in `tests/benchmarks/garments_at_random.py`.
"""

from __future__ import annotations

import re

import pytest

from tests.draws import few_of
from tests.whole.garments_at_random import Drawn, drawn
from tests.whole.more_garments_at_random import KINDS, more
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.pipeline import Outcome, compile
from walewright.report.model import Diagnostic, Severity

SHIPPED = shipped()
COMMON = 16
"""Draws of the common garments; of the others, one of each kind."""
FAULTS = {"bed-refuses", "knitted-otherwise", "words-knit-otherwise", "words-contradict", "words-unreadable", "lace-unpaired"}
PROPOSED = re.compile(r"`(along [^`]*)`")
WRITTEN = re.compile(r"along [^,\n]*(, (?:right|wrong) side facing)?")


def outcome_of(text: str) -> Outcome:
    return compile(text, "drawn.wale", SHIPPED, Changes())


def errors(outcome: Outcome) -> tuple[Diagnostic, ...]:
    return tuple(d for d in outcome.diagnostics if d.severity is Severity.ERROR)


def followed(text: str, told: tuple[Diagnostic, ...]) -> str | None:
    """The source with every line written as it is proposed; None where nothing is."""
    edits = [(d.labels[0].span, found[1]) for d in told for h in d.helps[:1] if (found := PROPOSED.search(h))]
    for span, proposed in sorted(edits, key=lambda edit: -edit[0].start):
        statement = text[span.start : span.end]
        written = WRITTEN.search(statement)
        assert written is not None, f"the line is not where it is reported: {statement}"
        said = "" if "side facing" in proposed else written[1] or ""
        text = text[: span.start] + statement.replace(written[0], proposed + said) + text[span.end :]
    return text if edits else None


def looked_at(one: Drawn) -> dict[str, str]:
    """Assert that it is proven and its damages are not; what was told of each damage."""
    good = outcome_of(one.text)
    assert good.proven, (one.kind, errors(good), one.text)
    found: dict[str, str] = {}
    for name, text in one.damages.items():
        assert text != one.text, (one.kind, name)
        bad = outcome_of(text)
        told = errors(bad)
        codes = {d.code for d in told}
        assert not bad.proven, f"{one.kind}: {name} is proven\n{text}"
        assert told, f"{one.kind}: {name} is refused without a word"
        assert not codes & FAULTS, f"{one.kind}: {name}: {told}\n{text}"
        assert all(d.labels and d.helps for d in told), told
        found[name] = " ".join(sorted(codes))
        mended = followed(text, told)
        if mended is not None:
            found[name] += ", proposed"
            assert outcome_of(mended).proven, f"{one.kind}: {name}: what is proposed is not proven\n{mended}"
    return found


@pytest.mark.parametrize("seed", few_of(range(COMMON), 5))
def test_common_garments(seed: int) -> None:
    looked_at(drawn(seed))


def _one_of_each() -> list[int]:
    seeds: dict[str, int] = {}
    for seed in range(400):
        seeds.setdefault(more(seed).kind, seed)
    return sorted(seeds.values())


@pytest.mark.parametrize("seed", _one_of_each())
def test_other_garments(seed: int) -> None:
    looked_at(more(seed))


def test_every_kind_is_drawn() -> None:
    assert {more(seed).kind for seed in _one_of_each()} == set(KINDS)
