"""A fabric like another in another yarn: what it means written out, by one swatch, whoever measured it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.design.shaped import HEAD, SHIPPED
from walewright import pipeline
from walewright.design import Changes
from walewright.design.model import Design, Fabric
from walewright.report.model import Diagnostic

BLUE = 'yarn blue "blue wool", 50 g = 150 m\n'
THICK = 'yarn thick "thick wool", 100 g = 120 m\n'
LIKE = "fabric navy like plain, in blue\n"
PIECE = """\
piece front in plain
    levels hem 0 cm, middle 20 cm, top length
    start 40 cm wide with e-wrap
    fabric navy from middle to top
    end cast off
"""


def understood(*parts: str, **given: object) -> tuple[Design | None, list[Diagnostic]]:
    outcome = pipeline.understood(HEAD + "".join(parts), "it.wale", SHIPPED, Changes(**given))  # type: ignore[arg-type]
    return outcome.design, [d for d in outcome.diagnostics if not (d.code == "unused-name" and d.labels[0].span.end < len(HEAD))]


def fabrics(*parts: str, **given: object) -> dict[str, Fabric]:
    design, told = understood(*parts, **given)
    assert design is not None, told
    assert told == []
    return {f.name: f for f in design.fabrics}


def bare(fabric: Fabric) -> Fabric:
    written = fabric.as_written and bare(fabric.as_written)
    return replace(fabric, origin=None, swatch_of="", name="", yarn="", as_written=written)  # type: ignore[arg-type]


def test_it_is_the_other_fabric_in_its_own_yarn() -> None:
    found = fabrics(BLUE, LIKE, PIECE)
    assert bare(found["navy"]) == bare(found["plain"])
    assert (found["navy"].yarn, found["navy"].swatch_of, found["plain"].swatch_of) == ("blue", "plain", "")


def test_the_swatch_of_a_fabric_that_nothing_is_knitted_in_is_asked_for() -> None:
    found = fabrics(
        BLUE,
        LIKE,
        PIECE.replace("in plain", "in navy").replace("    fabric navy from middle to top\n", "").replace("middle 20 cm, ", ""),
    )
    assert set(found) == {"navy", "plain"}


def test_a_fabric_like_one_that_is_like_another_has_the_swatch_of_the_last() -> None:
    found = fabrics(BLUE, LIKE, "fabric dark like navy, in wool\n", PIECE.replace("in plain", "in dark"))
    assert (found["dark"].yarn, found["dark"].swatch_of) == ("wool", "plain")


@pytest.mark.parametrize(
    "given",
    [
        {"tensions": {"plain": "18 st 36 rows"}},
        {"tensions": {"navy": "18 st 36 rows"}},
        {"swatches": {"plain": "40 st 60 rows 21 cm 16 cm 20 g"}},
        {"swatches": {"navy": "40 st 60 rows 21 cm 16 cm 20 g"}},
        {"dials": {"plain": "6"}},
        {"dials": {"navy": "6"}},
    ],
)
def test_what_is_given_for_one_is_given_for_both(given: dict[str, object]) -> None:
    found = fabrics(BLUE, LIKE, PIECE, **given)
    before = fabrics(BLUE, LIKE, PIECE)
    assert bare(found["navy"]) == bare(found["plain"])
    assert bare(found["navy"]) != bare(before["navy"])
    assert found["navy"].yarn == "blue"


def test_one_that_is_given_too_keeps_what_is_given_for_it() -> None:
    found = fabrics(BLUE, LIKE, PIECE, tensions={"plain": "18 st 36 rows", "navy": "19 st 38 rows"})
    assert [round(found[n].stitches_per_cm * 10) for n in ("plain", "navy")] == [18, 19]


def test_a_yarn_of_another_thickness_is_warned_of_and_goes_with_the_swatch_all_the_same() -> None:
    parts = THICK, LIKE.replace("blue", "thick"), PIECE
    design, told = understood(*parts)
    assert design is not None
    assert [d.code for d in told] == ["swatch-of-other-yarn"]
    design, told = understood(*parts, tensions={"plain": "18 st 36 rows"})
    assert design is not None
    assert [d.code for d in told] == ["swatch-of-other-yarn"], "no tension is left to be measured"
    assert design.fabric("navy").gauge == design.fabric("plain").gauge


@pytest.mark.parametrize(
    ("lines", "code", "case"),
    [
        ("fabric navy like plan, in blue\n", "unknown-name", ""),
        ("fabric navy like plain, in blew\n", "unknown-name", ""),
        ("fabric navy like plain, in blue\n    right side purl\n", "fabric-not-like", "own-lines"),
        ("fabric navy like navy, in blue\n", "fabric-not-like", "ring"),
        ("fabric navy like dark, in blue\nfabric dark like navy, in wool\n", "fabric-not-like", "ring"),
        (
            "fabric striped\n    stripes of 2 rows wool, 2 rows blue at tension 4\n"
            "    swatch 40 stitches by 60 rows = 20 cm by 15 cm\n"
            "fabric navy like striped, in blue\n",
            "fabric-not-like",
            "stripes",
        ),
    ],
)
def test_what_cannot_be_is_told_once(lines: str, code: str, case: str) -> None:
    design, told = understood(BLUE, lines, PIECE)
    assert design is None
    assert [(d.code, d.case) for d in told] == [(code, case)]


def test_a_fault_of_the_other_is_told_once_at_its_own_line() -> None:
    wrong = (
        "fabric mesh\n    latched rib every 1st needle in wool at tension 4\n    swatch 40 stitches by 60 rows = 20 cm by 15 cm\n"
    )
    design, told = understood(BLUE, wrong, LIKE.replace("plain", "mesh"), PIECE)
    assert design is None
    assert [d.code for d in told] == ["bad-rib"]


def test_the_swatch_is_reckoned_once() -> None:
    outcome = pipeline.compile(HEAD + BLUE + LIKE + PIECE, "it.wale", SHIPPED, Changes(sizes=("S",)))
    assert outcome.proof is not None
    swatches = {use.yarn: use.swatch_grams for use in outcome.proof.sizes[0].yarn if use.kind == "yarn"}
    assert swatches["wool"] > 0
    assert swatches["blue"] == 0
