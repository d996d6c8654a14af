"""Every text of an author's, any number of notes among them, is on the page, in the text copy and in the plan document."""

from __future__ import annotations

import html
import json
import re

import pytest

from walewright import pipeline, plan, sheet
from walewright.cli.formats.format import Pattern
from walewright.cli.formats.text import text
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.sheet.model import PageOptions

SOURCE = """\
pattern "Mat"
    summary "Said summary, for the mat."
    difficulty "Said difficulty"
    story "Said story, of a mat that was knitted on a rainy day and then left at the door for as long as anybody knew."
    note "Said first note."
    note "Said second note."
sizes one
    length 20 cm
machine bulky
yarn wool "wool", 100 g = 120 m
note "Said loose note."
fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm
    note "Said fabric note."
piece mat in plain
    levels bottom 0 cm, top length
    start 20 cm wide with e-wrap
    note "Said piece note."
    note "Said other piece note."
    end cast off
making up
    step "Said first step."
    step "Said second step."
"""
SAID = re.findall(r'"(Said [^"]*)"', SOURCE)


@pytest.fixture(scope="module")
def printed() -> dict[str, str]:
    """The three results, blanks and entities evened."""
    outcome = pipeline.compile(SOURCE, "mat.wale", shipped(), Changes())
    assert outcome.proven
    made = sheet.compose(LANGUAGE, sheet.ProvenPattern(*outcome.result(), outcome.fit), PageOptions(date="today"))
    results = {
        "page": html.unescape(re.sub(r"<[^>]*>", "", sheet.html(made))),
        "text": text(Pattern(outcome, LANGUAGE, "a4", "cm", "0", "")),
        "plan": plan.plan_bytes(outcome).decode(),
    }
    return {name: " ".join(text.replace("\N{NO-BREAK SPACE}", " ").split()) for name, text in results.items()}


@pytest.mark.parametrize("result", ["page", "text", "plan"])
def test_every_text_is_there(printed: dict[str, str], result: str) -> None:
    assert len(SAID) == len(set(SAID)) == 11
    assert [said for said in SAID if said not in printed[result]] == []


def test_the_plan_has_the_texts_in_their_order(printed: dict[str, str]) -> None:
    texts = json.loads(printed["plan"])["texts"]
    assert [t["text"].removeprefix("plain: ").removeprefix("mat: ") for t in texts] == SAID[:9]
    assert [t["key"] for t in texts] == ["summary", "difficulty", "story"] + ["note"] * 6
