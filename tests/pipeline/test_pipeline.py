"""The stages in order: how far a source goes, what is kept of the way, and what the bed is told of the yarn on it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from walewright import bed
from walewright.bed import Bed
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.knit.operations import Work
from walewright.pipeline import Outcome, compile, counted, from_design, understood
from walewright.report.model import Diagnostic, Severity, has_errors

SHIPPED = shipped()
TEXT = """\
pattern "Cushion"

sizes S M
    length 20 24 cm
    wide 20 22 cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m
fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

piece front in plain
    levels hem 0 cm, top length
    start wide wide with e-wrap
    edges straight to top
    end cast off
"""
STRIPED = """\
yarn cotton "cotton", 50 g = 120 m

fabric striped
    stripes of 4 rows wool, 2 rows cotton at tension 4
    swatch 40 stitches by 60 rows = 40 cm by 40 cm, 62 g

"""
HEMMED = """\
edging hem in plain, 3 cm deep, folded, fold row at tension 8, inside at tension 2, knitted first

"""


def through(text: str, shipped_too: dict[str, str] | None = None) -> Outcome:
    given = replace(SHIPPED, shapes={**SHIPPED.shapes, **(shipped_too or {})})
    return compile(text, "cushion.wale", given, Changes())


def codes(outcome: Outcome) -> list[str]:
    return [d.code for d in outcome.diagnostics]


def test_a_source_goes_as_far_as_it_is_asked_to() -> None:
    known = understood(TEXT, "cushion.wale", SHIPPED, Changes())
    assert known.tree is not None
    assert known.design is not None
    assert known.glued is known.counts is None
    stitches = counted(TEXT, "cushion.wale", SHIPPED, Changes())
    assert stitches.design == known.design
    assert stitches.counts is not None
    assert stitches.plans == stitches.works == stitches.results == ()
    whole = through(TEXT)
    assert (whole.file, whole.text, whole.diagnostics) == ("cushion.wale", TEXT, ())
    assert whole.counts == stitches.counts
    assert len(whole.plans) == len(whole.works) == len(whole.results) == 2
    assert whole.fit is not None
    assert whole.plain_text
    assert whole.proof is not None
    assert [s.size for s in whole.proof.sizes] == ["S", "M"]
    assert from_design(known) == whole


def test_what_is_proven_may_be_printed() -> None:
    whole = through(TEXT)
    assert whole.proven
    assert whole.result() == (whole.design, whole.counts, whole.instructions, whole.proof)
    refused = Diagnostic("row-falls", severity=Severity.ERROR)
    warned = replace(refused, severity=Severity.WARNING)
    assert has_errors((warned, refused))
    assert not has_errors((warned, warned))
    assert not has_errors(())
    assert replace(whole, diagnostics=(warned,)).proven
    for unproven in (
        replace(whole, diagnostics=(warned, refused)),
        replace(whole, proof=None),
        replace(whole, design=None),
        replace(whole, counts=None),
        replace(whole, instructions=None),
    ):
        with pytest.raises(ValueError, match=r"cushion\.wale is not proven"):
            unproven.result()


def test_every_mistake_is_reported_at_once_and_no_stage_follows() -> None:
    outcome = through(TEXT.replace("machine bulky", "machine bulkyy").replace("    end cast off", "    end cast @"))
    assert codes(outcome) == ["unreadable-line", "unknown-name"]
    assert outcome.tree is not None
    assert outcome.glued is outcome.counts is outcome.proof is None


def test_what_cannot_be_counted_is_not_knitted() -> None:
    outcome = through(TEXT.replace("wide 20 22 cm", "wide 20 400 cm"))
    assert has_errors(outcome.diagnostics)
    assert outcome.glued is not None
    assert outcome.plans == ()
    assert not outcome.plain_text
    assert not outcome.proven


SHAPED = TEXT.replace("    edges straight to top\n", "    use {}, tip top\n")


def test_the_shapes_that_a_source_uses_are_read_and_no_others() -> None:
    inner = "shape inner(tip)\n    edges straight to tip\n"
    outer = "shape outer(tip)\n    use inner, tip tip\n"
    broken = "shape broken(tip)\n    edges crooked to tip\n"
    own = {"inner": inner, "outer": outer, "broken": broken}
    assert through(SHAPED.format("outer"), own).proven
    assert through(SHAPED.format("inner"), own).proven
    unread = through(SHAPED.format("broken"), own)
    assert [d.labels[0].span.file for d in unread.diagnostics][:1] == ["patterns/shapes/broken.wale"]
    assert not unread.proven
    missing = through(SHAPED.format("other"), own)
    assert len(missing.diagnostics) == 1
    assert missing.diagnostics[0].labels[0].span.file == "cushion.wale"


def beds(monkeypatch: pytest.MonkeyPatch, text: str) -> list[Bed]:
    """The beds that a source is knitted on: each size from its plan, and from its words as if these said something else."""
    seen: list[Bed] = []
    knit = bed.knit

    def watched(work, machine):  # type: ignore[no-untyped-def]
        seen.append(machine)
        return knit(work, machine)

    monkeypatch.setattr(bed, "knit", watched)
    monkeypatch.setattr(Work, "__eq__", lambda one, other: False)
    outcome = through(text)
    assert outcome.proven, outcome.diagnostics
    assert len(seen) == 2 * len(outcome.results)
    return seen


def test_plan_and_words_are_knitted_on_the_authors_bed(monkeypatch: pytest.MonkeyPatch) -> None:
    first, *others = beds(monkeypatch, TEXT)
    assert all(other == first for other in others)
    assert (first.needles, first.prongs) == (100, (1, 2, 3))
    gauge = first.gauges["wool", "4"]
    assert (gauge.stitches_per_cm, gauge.rows_per_cm) == (pytest.approx(40 / 30.8), pytest.approx(60 / 32.4))
    # A row that joins a hem, and one that links two pieces, are looser and as wide.
    assert first.gauges == {("wool", "4"): gauge, ("wool", "6"): gauge}
    assert first.fabrics == {"plain": gauge}


def test_a_yarn_at_a_tension_is_as_dense_as_it_is_plain(monkeypatch: pytest.MonkeyPatch) -> None:
    striped = TEXT.replace("piece front in plain", STRIPED + "piece front in plain") + (
        "\npiece back in striped\n    levels hem 0 cm, top length\n    start wide wide with e-wrap\n"
        "    edges straight to top\n    end cast off\n"
    )
    for text in (striped, striped.replace("in plain\n    levels", "in striped\n    levels")):
        made = beds(monkeypatch, text)[0]
        both_used = text is striped
        assert made.gauges["wool", "4"] == made.fabrics["plain" if both_used else "striped"]


def test_rows_of_an_edging_at_tensions_of_their_own_are_as_wide_as_its_fabric(monkeypatch: pytest.MonkeyPatch) -> None:
    text = TEXT.replace("piece front", HEMMED + "piece front").replace("with e-wrap", "on waste yarn, with hem")
    made = beds(monkeypatch, text)[0]
    assert set(made.gauges) == {("wool", t) for t in ("4", "6", "8", "2")}
    assert set(made.gauges.values()) == {made.fabrics["plain"]}


def test_a_band_wider_than_the_bed_goes_on_in_its_parts() -> None:
    edging = "edging trim in plain, 3 cm deep, added after\n\n"
    text = TEXT.replace("length 20 24 cm", "length 50 54 cm").replace("piece front", edging + "piece front")
    text = text.replace("straight to top", "straight to top called side")
    piece = text[text.index("piece front") :]
    ends = "\njoin front end to back start\nband border with trim along front side_left + back side_left\n"
    outcome = through(text + "\n" + piece.replace("piece front", "piece back") + ends)
    assert outcome.proven, outcome.diagnostics
    assert outcome.design is not None
    assert outcome.glued is not None
    names = [band.name for band in outcome.design.bands]
    assert len(names) == 2
    assert {line.owner for line in outcome.glued.groups[0].lines} == set(names)
    assert sorted(task.name for task in outcome.glued.groups[0].order if task.kind == "band") == sorted(names)
