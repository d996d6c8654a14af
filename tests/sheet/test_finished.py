"""Finished measurements, what seams take, and ease."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as hs

from tests.figures import gallery
from tests.whole.shipped_once import compiled
from walewright.design import model as d
from walewright.figures.garment import cover
from walewright.figures.measures import measured
from walewright.fit import model as fit
from walewright.guide.english import LANGUAGE
from walewright.guide.numbers import cm, difference, length
from walewright.sheet import fitting
from walewright.sheet.finished import size_notes, size_table
from walewright.sheet.fitting import ease_label, finished

Make = Callable[..., Any]
ORIGIN = d.Origin("by hand")


def pieces(made: Any) -> tuple[Any, ...]:
    return tuple(measured(made.design, made.counts, p.name) for p in made.design.pieces)


BODY = fit.Girth("back", "underarm", ("back", "front"), "closed", (89.5, 98.5), True)
SLEEVE = fit.Girth("sleeve", "cuff", ("sleeve",), "closed", (20.0, 22.0))
REACH = fit.Reach("sleeve", "over the shoulder", (70.0, 72.0), (71.0, 73.0), "reach")
BUST = fit.Ease("bust", BODY.values, "bust", (76.0, 86.0), BODY)
NECK = fit.Passing("neck", "head", False, (47.0, 50.0), (61.0, 65.0), (56.0, 56.0), (59.0, 59.0), None, ORIGIN)
BUTTONS = fit.Buttons("buttonhole_band", "button_band", (2.0, 2.0), ((1.5, 1.5), (40.0, 42.0)), (1.0, 1.0))
WORN = fit.Fit((BODY, SLEEVE), (BUST,), (("collar", (60.0, 61.0)),), (REACH,), (), (NECK,), (BUTTONS,), ())


def rows(made: Any, worn: fit.Fit | None) -> dict[str, dict[str, list[str]]]:
    table = size_table(LANGUAGE, made.design, made.counts, pieces(made), worn, "cm")
    return {g.title: {r.label: [c.text for c in r.cells] for r in g.rows} for g in table.groups}


def test_ease_is_finished_less_body(pattern: Make) -> None:
    told = rows(pattern(2), WORN)
    assert told["Ease: finished less body"] == {
        "Bust: all round below the armholes": ["13.5", "12.5"],
        "Back neck to wrist": ["−1", "−1"],
    }


@pytest.mark.parametrize("units", ["cm", "both", "in"])
@given(made=hs.floats(20, 150), body=hs.floats(20, 150))
def test_ease_is_what_the_printed_figures_differ_by(units: str, made: float, body: float) -> None:
    def read(text: str) -> float:
        return float(re.sub("[¼½¾]", lambda m: {"¼": ".25", "½": ".5", "¾": ".75"}[m[0]], text.replace("−", "-")))

    figures = zip(difference(made, body, units), length(made, units), length(body, units), strict=True)
    assert all(not told or read(told) == read(one) - read(other) for told, one, other in figures)


def test_two_alike_are_one_row_and_one_note(pattern: Make) -> None:
    other = replace(SLEEVE, piece="other", over=("other",))
    unlike = replace(SLEEVE, piece="third", over=("third",), values=(21.0, 23.0))
    cuffs = tuple(replace(NECK, name=f"cuff_{side}", relaxed=(20.0, 22.0)) for side in ("left", "right"))
    worn = replace(WORN, girths=(BODY, SLEEVE, other, unlike), passings=(NECK, NECK, *cuffs))
    told = rows(pattern(2), worn)["Finished"]
    assert told["Sleeve and other, each: all round, at cuff"] == ["20", "22"]
    assert told["Third: all round, at cuff"] == ["21", "23"]
    notes = [note for note in size_notes(LANGUAGE, pattern(2).design, worn, "cm") if "can pass" in note]
    assert [note.split(":")[0] for note in notes] == ["Neck", "Cuff left", "Cuff right"]


@pytest.mark.parametrize(
    ("name", "told", "values"),
    [
        # A scarf has its hem at both ends, each as deep.
        ("avocet", "Scarf: length, with hem at both ends", lambda p, i: p.laid[i].full_height + p.laid[i].of.edging_cm),
        # What is knitted from side to side is as long as its rows are wide.
        ("windrow", "Skirt: length as it is worn, without casing", lambda p, i: p.measures[0].values[i]),
        ("kittiwake", "Back and front: length as it is worn", lambda p, i: max(w for _, w in _widths_of(p, i))),
    ],
)
def test_lengths_are_those_of_what_is_worn(name: str, told: str, values: Callable[[Any, int], float]) -> None:
    made = compiled(name)
    found = rows(made, made.fit)["Finished"]
    piece = pieces(made)[0]
    assert found[told] == [cm(values(piece, size)) for size in range(len(found[told]))]
    assert not [label for label in found if "repeats" in label or (label != told and ": length" in label)]


def _widths_of(piece: Any, size: int) -> list[tuple[str, float]]:
    return [(m.place, m.values[size]) for m in piece.measures if m.place in ("start", "across")]


def test_finished_is_what_goes_round_and_reaches(pattern: Make) -> None:
    told = rows(pattern(2), WORN)["Finished"]
    assert told["All round, below the armholes"] == ["89.5", "98.5"]
    assert told["Sleeve: all round, at cuff"] == ["20", "22"]
    assert told["Middle of the back neck to the end of the sleeve"] == ["70", "72"]
    assert told["Collar"] == ["60", "61"]


def test_what_cannot_be_told_is_not_printed(pattern: Make) -> None:
    told = rows(pattern(2), fit.Fit((), (), (), (), (), (), (), ()))
    assert "Ease: finished less body" not in told
    assert not [label for label in told["Finished"] if "round" in label or "neck to" in label.lower()]


def test_laps_are_told(pattern: Make) -> None:
    lapped = replace(BODY, closing="lapped")
    told = rows(pattern(2), replace(WORN, girths=(lapped,)))["Finished"]
    assert "All round, below the armholes, closed" in told


def test_notes_say_what_passes_and_where_buttons_are_sewn(pattern: Make) -> None:
    design = pattern(2).design
    notes = size_notes(LANGUAGE, design, WORN, "cm")
    (neck,) = [note for note in notes if note.startswith("Neck")]
    assert neck.startswith("Neck: 47 (50) cm at rest, stretched about 61 (65) cm, so that the head can pass; ")
    assert neck.endswith("it was reckoned with 56 cm for the head.")
    assert not [note for note in notes if "button" in note], "these stand at making up"
    (buttons,) = fitting.buttons_notes(LANGUAGE, WORN, "cm")
    assert "Sew 2 buttons on the button band, 1 cm in from its outer edge" in buttons
    assert "from the lower end, at 1.5 cm and 40 (42) cm" in buttons
    # What does not pass is no promise.
    tight = replace(WORN, passings=(replace(NECK, stretched=(50.0, 65.0)),))
    assert not [n for n in size_notes(LANGUAGE, design, tight, "cm") if n.startswith("Neck")]


def test_notes_say_what_is_measured_and_what_a_seam_takes(pattern: Make) -> None:
    design = pattern(2).design
    assert "before seaming" in size_notes(LANGUAGE, design, None, "cm")[1]
    # Two stitches of 0.77 cm.
    assert "one stitch of each side into it: about 1.5 cm in all" in size_notes(LANGUAGE, design, None, "cm")[1]
    assert "about ½ in in all" in size_notes(LANGUAGE, design, None, "in")[1]
    assert "seam takes" not in size_notes(LANGUAGE, replace(design, joins=()), None, "cm")[1]


def test_a_size_is_chosen_by_what_is_finished(pattern: Make) -> None:
    choosing = size_notes(LANGUAGE, pattern(2).design, None, "cm")[0]
    assert choosing.startswith("To choose a size")
    assert "bust" not in choosing
    assert size_notes(LANGUAGE, pattern(1).design, None, "cm")[0] == ""


def cardigan() -> tuple[d.Design, Any, tuple[Any, ...]]:
    """A back and the gallery's fronts, the sides joined."""
    one, other, back = gallery.front(), gallery.mirror(), gallery.tail()
    names = {"front_left": one, "front_right": other, "back": back}
    counts_of, design_pieces = [], []
    for name, made in names.items():
        runs = back.sized[0].left if name == "back" else ()
        sized = tuple(replace(p, name=name) for p in made.sized)
        if runs:
            named = tuple(replace(r, name="side") if i == 0 else r for i, r in enumerate(runs))
            sized = tuple(replace(p, left=named, right=named) for p in sized)
        counts_of.append(sized)
        edges = {
            side: tuple(
                d.EdgeRun(r.name, made.piece.levels[1].name, "straight", (0.0,), (0.0,), (), r.way, ORIGIN) for r in of if r.name
            )
            for side, of in (("left", sized[0].left), ("right", sized[0].right))
        }
        mirror_of = "front_left" if name == "front_right" else None
        design_pieces.append(replace(made.piece, name=name, mirror_of=mirror_of, left=edges["left"], right=edges["right"]))
    counts = gallery.Counts(
        tuple(gallery.s.SizedGarment(size, tuple(p[i] for p in counts_of), (), (), ()) for i, size in enumerate(gallery.SIZES)), ()
    )
    sides = tuple(
        d.EdgeJoin((d.EdgeName("back", "side"),), (d.EdgeName(f, "side"),), (0.0, 0.0), ORIGIN)
        for f in ("front_left", "front_right")
    )
    design = replace(one.design(), pieces=tuple(design_pieces), joins=sides, title="Cardigan")
    return design, counts, tuple(measured(design, counts, p.name) for p in design.pieces)


def test_a_cardigans_fronts_lie_side_by_side_on_the_cover() -> None:
    design, counts, made = cardigan()
    drawing = cover(LANGUAGE, design, counts, made)
    assert "seen from the front" in drawing.title
    assert [s.kind for s in drawing.strokes].count("inside") == 1
    # One may have a level more than the other, such as that of a pocket.
    extra = replace(design.pieces[1], mirror_of=None, levels=design.pieces[1].levels[:-1])
    apart = replace(made[1], piece=extra)
    other = replace(design, pieces=(design.pieces[0], extra, design.pieces[2]))
    assert "seen from the front" in cover(LANGUAGE, other, counts, (made[0], apart, made[2])).title
    without = replace(design, joins=())
    assert "The pieces of Cardigan" in cover(LANGUAGE, without, counts, made).title


def test_what_is_no_body_is_laid_out_as_a_group() -> None:
    for make in (gallery.thumb, gallery.shawl, gallery.scarf, gallery.skirt):
        made = make()
        design, counts = made.design(), made.counts()
        drawing = cover(LANGUAGE, design, counts, (measured(design, counts, made.name),))
        assert drawing.title == "The pieces of P in size S, to one scale"
        assert drawing.height < 120
        assert {"cloth"} <= {s.kind for s in drawing.strokes}


def test_what_an_author_states_has_its_row_unless_a_girth_says_the_same() -> None:
    """A girth that was measured stands among the girths; one that was stated, or comes to another figure, by its name."""
    stated = fit.Ease("snug_waist", (61.0, 62.0), "waist", (70.0, 72.0))
    other = fit.Ease("chest", (95.0, 105.0), "bust", (76.0, 86.0), BODY)
    alike = fit.Ease("all_round", BODY.values, "bust", (76.0, 86.0))
    found = [label for label, _ in finished(LANGUAGE, replace(WORN, eases=(BUST, stated, other, alike)))]
    assert "Snug waist, finished" in found
    assert "Chest, finished" in found
    assert "All round, finished" in found
    assert "Bust, finished" not in found


def test_a_measure_of_the_bodys_name_is_named_once() -> None:
    stated = fit.Ease("bust", (90.0,), "bust", (82.0,))
    assert ease_label(LANGUAGE, stated) == "Bust"
    assert ease_label(LANGUAGE, replace(stated, name="hem")) == "Bust: hem as finished"


def test_where_buttons_go_stands_where_they_are_sewn_on(pattern: Make) -> None:
    """With the last of making up, in all sizes and in the one that is picked, and nowhere else; with the sizes where nothing is
    joined."""
    sheet = replace(pattern(2), fit=WORN).sheet(units="cm")
    notes = tuple(fitting.buttons_notes(LANGUAGE, WORN, "cm"))
    assert len(notes) == 1
    assert not set(notes) & set(sheet.size_notes)
    design = replace(pattern(2).design, joins=())
    assert set(notes) < set(size_notes(LANGUAGE, design, WORN, "cm"))
    assert [part.buttons for part in sheet.parts if part.buttons] == [notes]
    assert sheet.parts[-1].buttons == notes


def test_openings_are_called_by_what_goes_round_them() -> None:
    """A band by the name of its heading, and alike ones of one name together."""
    one = replace(NECK, name="cuff", around=(("sleeve", "welt"),))
    other = replace(one, around=(("left_thumb", "border"),))
    tube = replace(NECK, name="back start", around=(("back", "wristband"), ("front", "wristband")))
    worn = replace(WORN, passings=(one, other, replace(other, relaxed=(30.0, 31.0)), tube, NECK))
    notes = [note.partition(":")[0] for note in fitting.notes(LANGUAGE, worn, "cm")]
    assert notes[:4] == [
        "Cuff (sleeve welt; left thumb border)",
        "Cuff (left thumb border)",
        "Back wristband and front wristband, all round",
        "Neck",
    ]
