"""Shipped garments with their joins, bands and starts told in another order, one at a time left out, or the other way round: put
together, or refused, as ever. What a few garments have in one order others have in another, and most mistakes are one of these."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.as_ever import digest
from tests.glue.sewn import FRONT_NECK, SHOULDERS, SIDES, body, codes, panel, told
from tests.kept import fields_of, together, written
from walewright.design.model import Design
from walewright.glue import glue
from walewright.report.english import in_english

NOT_WATCHED = True
TOLD = ("whimbrel", "marram", "spindrift", "mooring", "limpet", "driftline", "dunlin", "windrow", "breakwater", "kittiwake")
"""Bands over welts, bands that close a ring, raglans, what is begun on slots, gathered ends, slits, gores, panels with borders."""


def otherwise(design: Design) -> Iterator[tuple[str, Design]]:
    """(what is otherwise, the design so)."""
    yield "joins backwards", replace(design, joins=design.joins[::-1])
    yield "bands backwards", replace(design, bands=design.bands[::-1])
    yield "pieces backwards", replace(design, pieces=design.pieces[::-1])
    for n, join in enumerate(design.joins):
        before, after = design.joins[:n], design.joins[n + 1 :]
        yield f"without join {n}", replace(design, joins=(*before, *after))
        yield f"join {n} twice", replace(design, joins=(*before, join, join, *after))
        yield (
            f"join {n} from its other side",
            replace(design, joins=(*before, replace(join, one=join.other, other=join.one), *after)),
        )
        if len(join.one) > 1 or len(join.other) > 1:
            turned = replace(join, one=join.one[::-1])
            yield f"join {n}, one side backwards", replace(design, joins=(*before, turned, *after))
            less = replace(join, one=join.one[1:] or join.one, other=join.other[:-1] or join.other)
            yield f"join {n}, without an edge", replace(design, joins=(*before, less, *after))
    for n, band in enumerate(design.bands):
        before_it, after_it = design.bands[:n], design.bands[n + 1 :]
        ways = {
            "backwards": band.along[::-1],
            "from its second edge": (*band.along[1:], band.along[0]),
            "cut short": band.along[:-1],
        }
        for way, along in ways.items():
            if along and along != band.along:
                yield f"{band.name} {way}", replace(design, bands=(*before_it, replace(band, along=along), *after_it))
        yield f"without {band.name}", replace(design, bands=(*before_it, *after_it))
    for n, piece in enumerate(design.pieces):
        if len(piece.start_along) > 1:
            turned_piece = replace(piece, start_along=piece.start_along[::-1])
            yield f"{piece.name} backwards", replace(design, pieces=(*design.pieces[:n], turned_piece, *design.pieces[n + 1 :]))


@pytest.mark.parametrize("name", TOLD)
def test_a_garment_told_otherwise_is_put_together_or_refused_as_ever(name: str, snapshot: SnapshotAssertion) -> None:
    design = together(name).design
    assert design is not None
    lines: list[str] = []
    found: Counter[str] = Counter()
    for what, changed in otherwise(design):
        glued, faults = glue(changed)
        # A design without a sound garment says why.
        assert glued is not None or faults, what
        lines += [what, *(written(f) for f in faults)]
        lines += [line for group in glued.groups for of in fields_of(group).values() for line in of] if glued else []
        found.update([d.code for d in faults] or ["together"])
    assert f"{', '.join(f'{many} {code}' for code, many in sorted(found.items()))}: {digest(lines)}" == snapshot


# ----------------------------------------------------------------- mistakes of their own

WELTED = body("back", start="on waste yarn, with welt") + body("front", FRONT_NECK, start="on waste yarn, with welt")


def test_a_start_whose_edging_is_added_after_is_taken_up_whole() -> None:
    whole = WELTED + SHOULDERS + SIDES
    assert "edge-used-twice" not in codes(whole)
    for more in ("join back start to front start\n", "band hem with collar along front start\n"):
        found = next(d for d in told(whole + more) if d.code == "edge-used-twice")
        assert found.case == "edged"
        facts = dict(found.facts)
        assert facts["piece"] == ("back" if "join" in more else "front")
        assert facts["edging"] == "welt"
        assert len(found.labels) == 2
    # One that was cast on has its edge for whoever wants it.
    plain = body("back") + body("front", FRONT_NECK) + SHOULDERS + SIDES
    assert "edge-used-twice" not in codes(plain + "band hem with collar along front start\n")


TWO_WAYS = """\
piece panel in plain
    levels hem 0 cm, low 20 cm, top length
    start 30 cm wide with e-wrap
    edges straight to low called side
    edges straight to top called arm
    end cast off
"""


def test_of_two_ways_between_two_edges_the_shorter_one_is_named() -> None:
    """Both edges of the panel are called alike: from one of them there is one edge on the way, from the other there are three."""
    found = [d for d in told(TWO_WAYS + "band trim with collar along panel side + panel end\n") if d.code == "line-not-in-order"]
    notes = [note for d in found for note in in_english(d).notes if note.startswith("between them")]
    assert len(notes) == 1
    assert notes[0].count("+") == 0
    assert "panel arm" in notes[0]


def test_panels_are_as_many_as_they_are() -> None:
    assert "edge-used-twice" not in codes(panel("one", copies=2) + "join one side to one side\n")
