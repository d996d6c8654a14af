"""Charts and stripes in a piece's sentences: where they begin and end, and what becomes of them where the width parts."""

from __future__ import annotations

from typing import Any

import pytest

from walewright.counted.model import ShapingPhrase, SizedChart, SizedOpening, SizedRepeat, SizedZone
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.figures import carried


def sized_chart(room: Any, name: str, from_row: int, to_row: int, first: int, last: int, **fields: Any) -> SizedChart:
    given = {"fabric": "figured", "area": "whole", "edge": 1, "start": first, "repeats": 1, **fields}
    return SizedChart(chart=name, from_row=from_row, to_row=to_row, first=first, last=last, origin=room.here, **given)


def parting(room: Any, row: int, to_row: int, rejoins: bool = False) -> SizedOpening:
    runs = ((room.run(row, to_row),), (room.run(row, to_row),))
    return SizedOpening("slit", row, 0, 0, runs[0][0], room.here, to_row, 0, "waste", rejoins, *runs)


def said(steps: Any) -> list[Any]:
    """Of the sentences those of charts, stripes, yarn and the counter."""
    kinds = (st.StartChart, st.StopChart, st.StartStripes, st.StopStripes, st.UseYarnStep, st.KnitTo, st.SetRowCounter)
    return [s for s in steps if isinstance(s, kinds)]


def in_rows(operations: Any) -> list[tuple[int, op.Transfer]]:
    """(counter, move) of each move of a loop."""
    found, counter = [], 0
    for one in operations:
        if isinstance(one, op.SetCounter):
            counter = one.rows
        elif isinstance(one, op.Pass):
            counter += 1
        elif isinstance(one, op.Transfer):
            found.append((counter, one))
    return found


def test_a_whole_piece_from_a_chart_starts_it_once_and_never_stops(room: Any) -> None:
    chart = sized_chart(room, "lace", 0, 20, -7, 6, start=-7)
    made = room.knit((room.piece("back", 16, 20, fabric="figured", charts=(chart,)),))
    start = st.StartChart("lace", "figured", "whole", -7, 6, 1, -7)
    assert said(made.paragraph("Knit"))[0] == start
    assert [s for s in made.steps() if isinstance(s, st.StartChart | st.StopChart)] == [start]
    rows = in_rows(made.works[0].blocks[0].operations)
    # Every other row, hole at the repeat's first needle; the last repeat is cut by the edge: 2 of its 4 needles are there.
    assert rows[:4] == [
        (0, op.Transfer(-7, -7, 1)),
        (0, op.Transfer(-3, -3, 1)),
        (0, op.Transfer(1, 1, 1)),
        (0, op.Transfer(5, 5, 1)),
    ]
    assert {counter for counter, _ in rows} == set(range(0, 20, 2))


def test_a_zone_has_its_yarn_then_its_chart_and_the_other_way_round(room: Any) -> None:
    zone = SizedZone("lacy", 10, 18, 0, -1, room.here)
    chart = sized_chart(room, "lace", 10, 18, -7, 6, fabric="lacy")
    made = room.knit((room.piece("back", 16, 30, zones=(zone,), charts=(chart,)),))
    assert said(made.paragraph("Knit and shape")) == [
        st.KnitTo(10),
        st.UseYarnStep("wool", "5"),
        st.StartChart("lace", "lacy", "whole", -7, 6, 1, -7),
        st.KnitTo(18),
        st.StopChart("lace"),
        st.UseYarnStep("wool", "4"),
        st.KnitTo(30),
    ]
    steps = made.paragraph("Knit and shape")
    # The counter is named, and what must be true, before a chart begins or ends.
    for number, step in enumerate(steps):
        if isinstance(step, st.StopChart):
            assert isinstance(steps[number - 1], st.Now)


def test_a_chart_in_the_same_yarn_and_tension_needs_no_yarn(room: Any) -> None:
    zone = SizedZone("figured", 10, 18, 0, -1, room.here)
    chart = sized_chart(room, "lace", 10, 18, -7, 6)
    made = room.knit((room.piece("back", 16, 30, zones=(zone,), charts=(chart,)),))
    assert not [s for s in made.paragraph("Knit") if isinstance(s, st.UseYarnStep)]


def test_a_chart_goes_on_over_shaping(room: Any) -> None:
    runs = (room.run(0, 20, ShapingPhrase((4,), (-1,), 3)),)
    chart = sized_chart(room, "lace", 0, 20, -7, 6)
    made = room.knit((room.piece("back", 16, 20, fabric="figured", charts=(chart,), left=runs),))
    rows = in_rows(made.works[0].blocks[0].operations)
    figured = {c: [m.first for m in (m for k, m in rows if k == c) if m.first == m.last and m.by == 1] for c in (0, 6, 10)}
    assert figured[0] == [-7, -3, 1, 5]
    # After one decrease needle -7 is the edge stitch: its pair is gone; the right end has come in to 6, pair 5-6 lost its half.
    assert figured[6] == [-3, 1]
    assert figured[10] == [-3, 1]


def test_parts_go_on_with_a_chart_begun_below(room: Any) -> None:
    chart = sized_chart(room, "lace", 0, 30, -8, 7, edge=0)
    made = room.knit((room.piece("front", 16, 30, fabric="figured", charts=(chart,), openings=(parting(room, 20, 30),)),))
    assert len([s for s in made.steps() if isinstance(s, st.StartChart)]) == 1
    rows = [(c, m.first) for c, m in in_rows(made.works[0].blocks[0].operations) if c >= 20]
    right = [(c, slot) for c in range(20, 30, 2) for slot in (0, 4)]
    left = [(c, slot) for c in range(20, 30, 2) for slot in (-8, -4)]
    assert rows == right + left


@pytest.mark.parametrize("rejoins", [False, True])
def test_a_chart_begun_at_the_parting_is_begun_in_the_first_part_only(room: Any, rejoins: bool) -> None:
    zone = SizedZone("figured", 20, 40, 0, -1, room.here)
    chart = sized_chart(room, "lace", 20, 40, -8, 7, edge=0)
    piece = room.piece(
        "front", 16, 40, zones=(zone,), charts=(chart,), openings=(parting(room, 20, 30 if rejoins else 40, rejoins),)
    )
    made = room.knit((piece,))
    first, second = ("Left part", "Right part") if rejoins else ("Right half", "Left half")
    assert [s for s in made.paragraph(first) if isinstance(s, st.StartChart)] == [
        st.StartChart("lace", "figured", "whole", -8, 7, 0, -8)
    ]
    assert not [s for s in made.paragraph(second) if isinstance(s, st.StartChart)]
    rows = {(c, m.first) for c, m in in_rows(made.works[0].blocks[0].operations)}
    assert rows == {(c, slot) for c in range(20, 40, 2) for slot in (-8, -4, 0, 4)}


def test_a_chart_begun_above_the_parting_is_begun_in_each_part(room: Any) -> None:
    zone = SizedZone("figured", 24, 40, 0, -1, room.here)
    chart = sized_chart(room, "lace", 24, 40, -8, 7, edge=0)
    made = room.knit((room.piece("front", 16, 40, zones=(zone,), charts=(chart,), openings=(parting(room, 20, 40),)),))
    # The counter is set back for the second part, to rows in which it is not worked yet: it ends with the first one.
    for half, more in (("Right half", ["StopChart"]), ("Left half", [])):
        assert [type(s).__name__ for s in said(made.paragraph(half))] == ["KnitTo", "StartChart", "KnitTo", *more]
    rows = [c for c, _ in in_rows(made.works[0].blocks[0].operations)]
    assert min(rows) == 24


def test_a_chart_that_ends_above_the_parting_is_taken_up_in_the_second_part_where_it_stood(room: Any) -> None:
    # The rows of the ridge are 4, and the parting comes after 2 of them.
    zone = SizedZone("figured", 18, 26, 0, -1, room.here)
    chart = sized_chart(room, "ridge", 18, 26, -8, 7, edge=0)
    made = room.knit((room.piece("front", 16, 40, zones=(zone,), charts=(chart,), openings=(parting(room, 20, 40),)),))
    turn = said(made.paragraph("Return to the left half"))
    assert [type(s).__name__ for s in turn] == ["SetRowCounter", "UseYarnStep", "SetRowCounter", "StartChart", "SetRowCounter"]
    assert [s.rows for s in turn if isinstance(s, st.SetRowCounter)] == [20, 18, 20]
    for half in ("Right half", "Left half"):
        assert [type(s).__name__ for s in said(made.paragraph(half))] == ["KnitTo", "StopChart", "KnitTo"]
    latched = [(m.slot, m.rows) for m in made.works[0].blocks[0].operations if isinstance(m, op.LatchUp)]
    # A column that waits is latched up whole when it has gone on, although its chart had ended meanwhile.
    assert latched == [(slot, 3) for half in ((0, 2, 4, 6), (-8, -6, -4, -2)) for _ in range(2) for slot in half]


def test_stripes_begun_above_the_parting_end_with_the_first_part(room: Any) -> None:
    zone = SizedZone("striped", 24, 40, 0, -1, room.here)
    made = room.knit((room.piece("front", 16, 40, zones=(zone,), openings=(parting(room, 20, 40),)),))
    kinds = [type(s).__name__ for s in said(made.paragraph("Right half"))]
    assert kinds[-1] == "StopStripes"
    assert "StopStripes" not in [type(s).__name__ for s in said(made.paragraph("Left half"))]


def test_a_chart_begun_in_parts_that_rejoin_goes_on_over_both(room: Any) -> None:
    zone = SizedZone("figured", 24, 40, 0, -1, room.here)
    chart = sized_chart(room, "lace", 24, 40, -8, 7, edge=0)
    made = room.knit((room.piece("front", 16, 40, zones=(zone,), charts=(chart,), openings=(parting(room, 20, 30, True),)),))
    rows = {(c, m.first) for c, m in in_rows(made.works[0].blocks[0].operations)}
    assert rows == {(c, slot) for c in range(24, 40, 2) for slot in (-8, -4, 0, 4)}


def test_a_panel_stays_over_a_chart_that_is_taken_up_in_the_second_part(room: Any) -> None:
    zone = SizedZone("figured", 8, 26, 0, -1, room.here)
    base = sized_chart(room, "lace", 8, 26, -8, 7, edge=0)
    panel = sized_chart(room, "ridge", 12, 40, -8, -5, area="panel", edge=0)
    made = room.knit((room.piece("front", 16, 40, zones=(zone,), charts=(base, panel), openings=(parting(room, 20, 40),)),))
    turn = [s.chart for s in made.paragraph("Return to the left half") if isinstance(s, st.StartChart)]
    assert turn == ["lace"]
    # Above its first row no loop of the panel's needles is moved by the lace, in the second part neither.
    assert {m.first for c, m in in_rows(made.works[0].blocks[0].operations) if c >= 12} == {-4, 0, 4}


def test_one_chart_on_several_needles_is_ended_where_it_ends(room: Any) -> None:
    leaf = {"fabric": "", "area": "panel"}
    one, other = sized_chart(room, "leaf", 8, 12, -6, -5, **leaf), sized_chart(room, "leaf", 10, 14, 2, 3, **leaf)
    made = room.knit((room.piece("front", 16, 40, charts=(one, other)),))
    stops = [s for s in made.steps() if isinstance(s, st.StopChartOn)]
    assert [(s.chart, s.first, s.last) for s in stops] == [("leaf", -6, -5), ("leaf", 2, 3)]
    rows = [(c, m.first) for c, m in in_rows(made.works[0].blocks[0].operations)]
    assert sorted(rows) == [(8, -6), (10, -6), (10, 2), (12, 2)]


def test_a_motif_of_one_part_is_told_in_that_part_alone(room: Any) -> None:
    leaf = {"fabric": "", "area": "panel"}
    low = sized_chart(room, "leaf", 22, 26, -6, -5, **leaf)
    high = sized_chart(room, "lace", 30, 34, 2, 5, **leaf)
    made = room.knit((room.piece("front", 16, 40, charts=(low, high), openings=(parting(room, 20, 40),)),))
    assert [type(s).__name__ for s in said(made.paragraph("Right half"))] == [
        "KnitTo",
        "StartChart",
        "KnitTo",
        "StopChart",
        "KnitTo",
    ]
    assert [s.chart for s in said(made.paragraph("Right half")) if isinstance(s, st.StartChart)] == ["lace"]
    assert [s.chart for s in said(made.paragraph("Left half")) if isinstance(s, st.StartChart)] == ["leaf"]


def test_a_chart_that_ends_as_parts_rejoin_ends_over_both(room: Any) -> None:
    zone = SizedZone("figured", 10, 30, 0, -1, room.here)
    chart = sized_chart(room, "lace", 10, 30, -8, 7, edge=0)
    made = room.knit((room.piece("front", 16, 40, zones=(zone,), charts=(chart,), openings=(parting(room, 20, 30, True),)),))
    assert [title for title in made.titles() for s in made.paragraph(title) if isinstance(s, st.StopChart)] == [
        "Over the whole width"
    ]
    rows = {(c, m.first) for c, m in in_rows(made.works[0].blocks[0].operations)}
    assert rows == {(c, slot) for c in range(10, 30, 2) for slot in (-8, -4, 0, 4)}


def test_rows_worked_several_times_count_for_the_chart(room: Any) -> None:
    chart = sized_chart(room, "lace", 0, 20, -8, 7, edge=0)
    piece = room.piece("back", 16, 20, fabric="figured", charts=(chart,), repeats=(SizedRepeat(8, 12, 3, room.here),))
    made = room.knit((piece,))
    assert {c for c, _ in in_rows(made.works[0].blocks[0].operations)} == set(range(0, 28, 2))


# ----------------------------------------------------------------- stripes


def test_a_striped_piece_says_its_stripes_once(room: Any) -> None:
    made = room.knit((room.piece("back", 16, 12, fabric="striped"),))
    start = st.StartStripes("striped", (("wool", 4), ("navy", 2)), "4", ("wool", "navy"))
    assert [s for s in made.steps() if isinstance(s, st.StartStripes | st.StopStripes)] == [start]
    yarns = [m for m in made.works[0].blocks[0].operations if isinstance(m, op.UseYarn | op.BreakYarn)]
    assert yarns == [
        op.UseYarn("wool", "4"),
        *(op.UseYarn(yarn, "4", carried=True) for yarn in ("navy", "wool", "navy")),
        op.BreakYarn(20),
    ]


@pytest.mark.parametrize("end", [20, 22])
def test_a_striped_zone_ends_and_the_yarn_is_named_again_whichever_came_last(room: Any, end: int) -> None:
    zone = SizedZone("striped", 10, end, 0, -1, room.here)
    made = room.knit((room.piece("back", 16, 30, zones=(zone,)),))
    assert said(made.paragraph("Knit and shape")) == [
        st.KnitTo(10),
        st.StartStripes("striped", (("wool", 4), ("navy", 2)), "4", ("wool", "navy")),
        st.KnitTo(end),
        st.StopStripes("striped"),
        st.UseYarnStep("wool", "4"),
        st.KnitTo(30),
    ]


def test_the_second_part_is_threaded_with_the_yarn_of_its_row(room: Any) -> None:
    made = room.knit((room.piece("front", 16, 30, fabric="striped", openings=(parting(room, 22, 30),)),))
    # Row 23 is the fifth of the fourth round of 6.
    assert [s for s in made.paragraph("Return to the left half") if isinstance(s, st.UseYarnStep)] == [st.UseYarnStep("navy", "4")]
    assert not [s for s in made.paragraph("Right half") if isinstance(s, st.UseYarnStep)]


@pytest.mark.parametrize(
    ("rows", "names"),
    [
        ((("wool", 4), ("navy", 2)), ("wool", "navy")),
        ((("wool", 6), ("navy", 2)), ("wool",)),
        ((("wool", 6), ("navy", 6)), ()),
        ((("wool", 3), ("navy", 1)), ()),
        # Navy comes again after 2 and after 4 rows; wool waits for 4, red for 6.
        ((("wool", 2), ("navy", 2), ("red", 2), ("navy", 2)), ("navy",)),
        ((("wool", 2), ("navy", 2), ("red", 2)), ("wool", "navy", "red")),
    ],
)
def test_yarns_are_carried_past_few_rows_and_an_even_number(rows: Any, names: tuple[str, ...]) -> None:
    assert carried(rows) == names
