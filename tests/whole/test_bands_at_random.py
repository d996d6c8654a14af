"""Edgings, bands and strips: each is proven or truly told, whatever its fabric, its width and where its buttonholes lie.

Thousands are drawn by hand, in `tests/benchmarks/bands_at_random.py`.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws, few_of
from tests.whole.bands_at_random import BEDS, KINDS, drawn
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.knit import operations as op
from walewright.pipeline import Outcome, compile
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity

SHIPPED = shipped()
SHIPPED_SOURCES = Path(__file__).resolve().parents[2] / "patterns"
FAULTS = {"bed-refuses", "knitted-otherwise", "lace-unpaired"}


def outcome_of(text: str, **changes: object) -> Outcome:
    return compile(text, "drawn.wale", SHIPPED, Changes(**changes))  # type: ignore[arg-type]


def errors(outcome: Outcome) -> tuple[Diagnostic, ...]:
    return tuple(d for d in outcome.diagnostics if d.severity is Severity.ERROR)


def proven_or_told(text: str) -> tuple[Diagnostic, ...]:
    """Assert that it is one of the two; what was told."""
    outcome = outcome_of(text)
    told = errors(outcome)
    codes = {d.code for d in told}
    assert not codes & FAULTS, f"{told}\n{text}"
    assert not any(code.startswith("words-") for code in codes), f"{told}\n{text}"
    assert outcome.proven or told
    assert all(d.labels and in_english(d).helps for d in told), told
    return told


@pytest.mark.parametrize("kind", sorted({kind.__name__ for kind in KINDS}))
@pytest.mark.parametrize("draw", few_of(range(3), 1))
def test_drawn(kind: str, draw: int) -> None:
    seeds = (seed for seed in range(1_000) if drawn(seed)[0] == kind)
    proven_or_told(drawn([next(seeds) for _ in range(draw + 1)][-1])[1])


def test_a_draw_is_the_same_again() -> None:
    assert drawn(7) == drawn(7)
    assert len({drawn(seed)[1] for seed in range(20)}) == 20


def test_fronts_whose_slope_has_more_phrases_in_one_size_than_in_another() -> None:
    text = cardigan(20, ", wrong side facing").replace(
        "sizes one\n    length 20.0 cm", "sizes A B C\n    length 9.7 10.7 13.7 cm\n    wide 33.2 35.2 37.2 cm"
    )
    text = text.replace("machine standard", "machine fine").replace("14.3 cm by 15 cm, 9 g", "11.7 cm by 13.1 cm, 9 g")
    text = (
        text.replace("start 48 cm", "start wide + 14 cm")
        .replace("neck 18 cm", "neck wide / 2 + 2 cm")
        .replace("start 23 cm", "start wide / 2 + 6 cm")
    )
    text = text.replace("length + 12 cm", "length + 11.4 cm").replace("slope by -8 cm", "slope by -wide / 4")
    proven_or_told(text)


# ----------------------------------------------------------------- buttonholes in a rib

CLOTH = """pattern "Band"
sizes one
    length {length:.1f} cm
machine standard
yarn wool "fingering-weight wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 9 g
fabric rib
    latched rib every {every} needle in wool at tension 5
    swatch 40 stitches by 60 rows = 13.4 cm by 13.8 cm, 8.5 g
"""
STITCH = 13.4 / 40
EVERY = {2: "2nd", 3: "3rd", 4: "4th", 5: "5th", 6: "6th"}


def strip(every: int, wide: int, over: int, holes: int, distance: float, side: str, length: float) -> str:
    return (
        CLOTH.format(length=length, every=EVERY[every])
        + f"""piece band in rib
    levels bottom 0 cm, first 1.5 cm, last length - 1.5 cm, top length
    start {wide} stitches wide with e-wrap
    edges straight to top called edge
    buttonholes {holes} over {over} {"stitch" if over == 1 else "stitches"} from first to last, {distance:.2f} cm from the {side} \
edge
    end cast off
"""
    )


@settings(max_examples=draws(40), deadline=None)
@given(
    st.sampled_from(sorted(EVERY)),
    st.integers(1, 4),
    st.integers(1, 7),
    st.integers(1, 6),
    st.floats(0, 1),
    st.sampled_from(["left", "right"]),
    st.floats(8, 45),
)
def test_buttonholes_in_a_strip_of_rib(
    every: int, over: int, more: int, holes: int, place: float, side: str, length: float
) -> None:
    """Wherever a stitch stands on each side of it, a hole is worked."""
    wide = 2 * ((over + 2 * more + 1) // 2)
    room = (wide - over) * STITCH
    distance = STITCH + place * max(room - 2 * STITCH, 0)
    told = proven_or_told(strip(every, wide, over, holes, distance, side, length))
    assert {d.code for d in told} <= {"buttonholes-too-close"}, told


@settings(max_examples=draws(30), deadline=None)
@given(
    st.sampled_from(sorted(EVERY)),
    st.integers(1, 4),
    st.integers(1, 8),
    st.floats(0.7, 3),
    st.floats(0.7, 3),
    st.floats(1.5, 14),
    st.floats(20, 45),
)
def test_buttonholes_in_a_band_of_rib(
    every: int, over: int, holes: int, first: float, last: float, deep: float, length: float
) -> None:
    text = (
        CLOTH.format(length=length, every=EVERY[every])
        + f"""edging trim in rib, {deep:.1f} cm deep, added after, cast off chain
piece front in plain
    levels hem 0 cm, top length
    start 20 cm wide with e-wrap
    left edge straight to top called side
    right edge straight to top called edge
    end cast off
band button_band with trim along front edge, buttonholes {holes} over {over} {"stitch" if over == 1 else "stitches"}, \
{first:.1f} cm first, {last:.1f} cm last
"""
    )
    assert proven_or_told(text) == ()


@pytest.mark.parametrize(("distance", "side"), [(0.0, "left"), (0.0, "right"), (2.0, "left"), (2.0, "right"), (1.68, "left")])
def test_a_hole_at_the_edge_is_moved_a_stitch_or_told(distance: float, side: str) -> None:
    proven_or_told(strip(3, 8, 2, 3, distance, side, 30))


def test_what_is_proposed_for_a_hole_where_the_edge_is_shaped_works() -> None:
    text = strip(3, 20, 2, 1, 0.3, "left", 30).replace(
        "edges straight to top called edge", "edges slope to 8 stitches wide at top called edge, fashioned 3 in"
    )
    text = text.replace("first 1.5 cm", "first 4.6 cm")
    for _ in range(40):
        told = proven_or_told(text)
        if told:
            break
        text = re.sub(r"first (\d+\.\d) cm, last", lambda m: f"first {float(m[1]) + 0.5:.1f} cm, last", text)
    assert [d.code for d in told] == ["hole-at-edge"]
    moved = re.search(r"put them ([\d.]+) cm further from the left edge", in_english(told[0]).helps[0])
    assert moved is not None
    assert proven_or_told(text.replace("0.30 cm from", f"{0.3 + float(moved[1]):.2f} cm from")) == ()


# ----------------------------------------------------------------- few stitches


def latched(outcome: Outcome, block: str) -> set[int]:
    return {o.slot for b in outcome.works[0].blocks if b.name == block for o in b.operations if isinstance(o, op.LatchUp)}


@pytest.mark.parametrize("every", sorted(EVERY))
@pytest.mark.parametrize("wide", range(1, 13))
def test_a_rib_on_few_stitches_has_a_column_or_it_is_told(every: int, wide: int) -> None:
    text = strip(every, 2, 1, 1, 0.3, "left", 12).replace(
        "start 2 stitches", f"start {wide} {'stitch' if wide == 1 else 'stitches'}"
    )
    text = re.sub(r"    buttonholes.*\n", "", text)
    told = proven_or_told(text)
    if told:
        assert {d.code for d in told} <= {"rib-without-column", "counts-conflict", "absurd-count", "too-small"}
        assert wide <= 3
    else:
        outcome = outcome_of(text)
        stitches = outcome.counts.sizes[0].piece("band").start  # type: ignore[union-attr]
        slots = latched(outcome, "band")
        assert slots
        assert all(-(stitches // 2) < slot < stitches - stitches // 2 - 1 for slot in slots)


@pytest.mark.parametrize("tension", ["9 st 14 rows", "11 st 16 rows", "13 st 18 rows"])
@pytest.mark.parametrize("name", ["fulmar", "marram"])
def test_sewn_on_bands_stay_ribs_at_any_tension(name: str, tension: str) -> None:
    text = (SHIPPED_SOURCES / f"{name}.wale").read_text(encoding="utf-8")
    outcome = outcome_of(text, tensions={"rib": tension}, sizes=("M",))
    assert not {d.code for d in errors(outcome)} & FAULTS, errors(outcome)
    for block in ("left_band", "right_band", "button_band", "buttonhole_band"):
        if outcome.works and any(b.name == block for b in outcome.works[0].blocks):
            assert latched(outcome, block)


def test_an_end_needle_that_comes_inside_is_not_dropped_deeper_than_the_others() -> None:
    text = strip(3, 4, 1, 1, 0.3, "left", 40)
    text = re.sub(r"    buttonholes.*\n", "", text).replace("edges straight", "edges out 1 stitch every 30 rows")
    assert proven_or_told(text) == ()


# ----------------------------------------------------------------- tips narrower than the tool


@pytest.mark.parametrize("tension", ["18 st 25.5 rows", "16 st 23 rows", "22 st 30 rows", "25 st 36 rows", "30 st 44 rows"])
@pytest.mark.parametrize("size", ["2_years", "6_years", "12_years"])
def test_raglan_tops_beside_a_neck(size: str, tension: str) -> None:
    text = (SHIPPED_SOURCES / "spindrift.wale").read_text(encoding="utf-8")
    told = errors(outcome_of(text, tensions={"plain": tension}, sizes=(size,)))
    assert not {d.code for d in told} & FAULTS, told


def test_the_regraded_raglan_is_proven() -> None:
    text = (SHIPPED_SOURCES / "spindrift.wale").read_text(encoding="utf-8")
    assert outcome_of(text, tensions={"plain": "18 st 25.5 rows", "rib": "21 st 27 rows"}, sizes=("12_years",)).proven


# ----------------------------------------------------------------- through both layers of a fold

FOLDED = """edging trim in plain, 2 cm deep, {kind}, added after, cast off chain
piece front in plain
    levels hem 0 cm, top length
    start 20 cm wide with e-wrap
    left edge straight to top called side
    right edge straight to top called edge
    end cast off
band button_band with trim along front edge, buttonholes 5 over {over}, 2 cm first, 2 cm last
"""


@pytest.mark.parametrize("over", ["1 stitch", "2 stitches", "3 stitches"])
@pytest.mark.parametrize("kind", ["folded", "folded, fold row at tension 9", "folded, inside at tension 6", "picot"])
def test_a_buttonhole_goes_through_both_layers(kind: str, over: str) -> None:
    text = CLOTH.split("fabric rib", maxsplit=1)[0].format(length=40) + FOLDED.format(kind=kind, over=over)
    outcome = outcome_of(text)
    assert errors(outcome) == ()
    assert outcome.counts is not None
    made = outcome.counts.sizes[0].bands[0]
    fabric = next(f for f in outcome.results[0].fabrics if f.name == "button_band")
    # The middle of the fold: half way between the first rows, which are hung up, and the last.
    last = max(course.counter for course in fabric.passes())
    if over == "1 stitch":
        picot = made.rows + 1 if kind == "picot" else -1
        rows = sorted({bar.counter for bar in fabric.bars} - {picot})
        assert len([bar for bar in fabric.bars if bar.counter != picot]) == 10
        assert rows[0] + rows[1] == last + 1 + (kind == "picot")
    else:
        rows = sorted(course.counter for course in fabric.courses if course.kind == "close")
        assert rows[:5] == [rows[0]] * 5
        assert rows[5:] == [rows[5]] * 5
        assert rows[0] + rows[5] == last + (kind == "picot")
        assert len({(c.first, c.last) for c in fabric.courses if c.kind == "close"}) == 5
    assert "Oversew the two layers of each buttonhole together." in " ".join(outcome.plain_text.split())


def test_a_hole_in_one_layer_only_is_not_proven() -> None:
    from dataclasses import replace

    from walewright.proof.banded import band_as_counted

    text = CLOTH.split("fabric rib", maxsplit=1)[0].format(length=40) + FOLDED.format(kind="folded", over="2 stitches")
    outcome = outcome_of(text)
    assert outcome.design is not None
    assert outcome.counts is not None
    made = outcome.counts.sizes[0].bands[0]
    fabric = next(f for f in outcome.results[0].fabrics if f.name == "button_band")
    assert all(counted == knitted for _, counted, knitted in band_as_counted(outcome.design, made, fabric))
    other = replace(made, behind=tuple(replace(hole, row=hole.row + 2) for hole in made.behind))
    assert any(counted != knitted for _, counted, knitted in band_as_counted(outcome.design, other, fabric))


# ----------------------------------------------------------------- wider than the bed

CARDIGAN = """piece back in plain
    levels hem 0 cm, underarm length, top length + 20 cm
    start 48 cm wide with e-wrap
    edges straight to underarm called side
    edges straight to top called armhole
    neck 18 cm wide, 2 cm deep, round
    end on waste yarn
piece left_front in plain
    levels hem 0 cm, underarm length, throat length + 12 cm, top length + 20 cm
    start 23 cm wide with e-wrap
    left edge straight to underarm called side
    left edge straight to top called armhole
    right edge straight to throat called edge
    right edge slope by -8 cm at top called neckline
    end on waste yarn
piece right_front in plain, mirror of left_front
join back shoulder to right_front end + left_front end
join back side to right_front side
join back side to left_front side
edging trim in rib, 3 cm deep, added after, cast off chain
"""
ROUND = "along right_front edge + right_front neckline + back neck + left_front neckline + left_front edge"


def cardigan(length: float, more: str = "", after: str = "") -> str:
    return f"{CLOTH.format(length=length, every='3rd')}{CARDIGAN}band all_round with trim {ROUND}{more}\n{after}"


def test_a_band_wider_than_the_bed_is_knitted_in_parts() -> None:
    outcome = outcome_of(cardigan(40))
    assert outcome.proven, errors(outcome)
    parted = [d for d in outcome.diagnostics if d.code == "band-parted"]
    assert len(parted) == 1
    assert outcome.counts is not None
    bands = outcome.counts.sizes[0].bands
    assert [b.name for b in bands] == ["all_round_1", "all_round_2", "all_round_3"]
    assert all(b.stitches <= BEDS["standard"][1] for b in bands)
    words = " ".join(outcome.plain_text.replace("\N{NO-BREAK SPACE}", " ").split())
    # Each shoulder passes the two parts that meet there.
    passed = re.findall(r"on along the ends of ([^,.]*all round[^,.]*)", words.partition("Making up")[2])
    assert passed == [f"14 rows of all round {one} and 14 rows of all round {one + 1}" for one in (1, 2)]


def test_buttonholes_lie_where_they_lay_before_it_was_parted() -> None:
    outcome = outcome_of(cardigan(40, ", buttonholes 5 over 2 stitches, 2 cm first, 95 cm last"))
    assert outcome.proven, errors(outcome)
    assert outcome.counts is not None
    first, *others = outcome.counts.sizes[0].bands
    assert len(first.holes) == 5
    assert not any(band.holes for band in others)
    assert first.holes[0].first + first.stitches // 2 == round(2 / STITCH)


def help_lines(told: tuple[Diagnostic, ...], start: str) -> list[str]:
    return [h for d in told for h in in_english(d).helps if h.startswith(start)]


def test_bands_proposed_for_one_that_has_to_stay_one_can_be_knitted() -> None:
    text = cardigan(40, after="finished rim along all_round\n")
    told = proven_or_told(text)
    assert [d.code for d in told] == ["wider-than-bed"]
    proposed = help_lines(told, "knit it as")[0].partition("bands: ")[2].split("; ")
    lines = "\n".join(f"band part_{n} with trim {along}" for n, along in enumerate(proposed))
    mended = text.replace(f"band all_round with trim {ROUND}", lines).replace("finished rim along all_round\n", "")
    assert proven_or_told(mended) == ()
    assert not any(d.code == "band-parted" for d in outcome_of(mended).diagnostics)


@pytest.mark.parametrize("edge", ["right edge straight to top called edge", "right edge slope by 4 cm at top called edge"])
def test_a_tension_proposed_for_a_band_works(edge: str) -> None:
    text = CLOTH.format(length=75, every="3rd") + FOLDED.replace(", {kind}", "").replace(", buttonholes 5 over {over}", "").replace(
        ", 2 cm first, 2 cm last", ""
    ).replace("in plain, 2 cm", "in rib, 2 cm").replace("right edge straight to top called edge", edge)
    # What is measured along it has to stay one.
    text += "finished rim along button_band\n"
    told = proven_or_told(text)
    assert [d.code for d in told] == ["wider-than-bed"]
    assert help_lines(told, "knit it lengthways")
    per_10_cm = help_lines(told, "knit it at")[0].split()[3]
    assert outcome_of(text, tensions={"rib": f"{per_10_cm} st 40 rows"}).proven
    needles = help_lines(told, "knit it on a bed of")[0].split()[6]
    assert outcome_of(text.replace("machine standard", f"machine mine\n    needles {needles}\n    pitch 4.5 mm")).proven


def test_no_tension_is_proposed_where_loops_are_taken_one_for_one() -> None:
    """Round the lower edge of two pieces side by side each loop goes on a needle, whatever the rib's tension."""
    text = cardigan(20).replace(f"band all_round with trim {ROUND}", "band hem with trim along left_front start + back start")
    text = text.replace("with e-wrap", "on waste yarn").replace("join back side to right_front side", "")
    told = errors(outcome_of(text))
    wide = [d for d in told if d.code == "wider-than-bed"]
    assert not help_lines(tuple(wide), "knit it at")
