"""Garments with patterned fabrics drawn at random: knitted, read back and lying as the language says, or truly refused.

`tests/benchmarks/charted_at_random.py` draws more of them.
"""

from __future__ import annotations

from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from tests.draws import draws
from tests.whole.charted_at_random import Charted, charted
from tests.whole.charts_at_random import FAMILIES, MEANINGS, Drawing
from tests.whole.garment import SHIPPED
from walewright.bed import Course, KnitFabric
from walewright.bed.loops import LoopKind
from walewright.design import Changes
from walewright.pipeline import Outcome, compile
from walewright.report.english import in_english
from walewright.report.model import NOWHERE, Severity

HONEST = frozenset(
    {
        "beyond-the-edge",
        "border-needs-whole",
        "cannot-match",
        "chart-begins-open",
        "counts-conflict",
        "edge-stitches-too-few",
        "join-does-not-meet",
        "motif-outside",
        "motif-past-top",
        "motif-too-high",
        "neck-too-wide",
        "needle-missing",
        "no-such-tool",
        "patterns-clash",
        "repeat-parity",
        "repeat-wider-than-piece",
        "repeats-on-a-slope",
        "wedge-too-steep",
        "wider-than-bed",
    }
)
"""Refusals that a drawn garment can deserve."""

EXAMPLES = 40
FIXED = 60
"""Draws that are the same in every run: enough of them for each family to be among the proven."""


@settings(max_examples=draws(EXAMPLES))
@given(st.integers(min_value=0, max_value=2**32))
def test_drawn_garments_are_proven_or_truly_refused(seed: int) -> None:
    drawn = charted(Random(seed))
    came_to(drawn, compile(drawn.text, "drawn.wale", SHIPPED, Changes()))


def test_most_draws_are_proven_and_every_family_is_among_them() -> None:
    proven = [drawn for drawn, outcome in map(compiled, range(FIXED)) if outcome.proven]
    assert len(proven) >= FIXED / 2
    assert {drawn.family for drawn in proven} == set(FAMILIES)
    assert {drawn.area for drawn in proven} == {"all", "zone", "panel", "motif"}
    assert {drawn.fit for drawn in proven} == {"whole", "centred", "balanced"}


def compiled(seed: int) -> tuple[Charted, Outcome]:
    drawn = charted(Random(seed))
    return drawn, compile(drawn.text, "drawn.wale", SHIPPED, Changes())


def came_to(drawn: Charted, outcome: Outcome) -> str:
    """ "proven", or the codes of the refusals, once all that has to be true of it has been asserted."""
    if outcome.proven:
        for result in outcome.results:
            assert not result.faults
            for fabric in result.fabrics:
                if fabric.name in ("back", "front"):
                    lies_as_said(drawn, fabric)
        return "proven"
    errors = [d for d in outcome.diagnostics if d.severity is Severity.ERROR]
    assert errors, drawn.text
    for error in errors:
        assert error.code in HONEST, f"{error.code}: {in_english(error).message}\n\n{drawn.text}"
        assert in_english(error).helps, error
        assert error.labels, error
        assert all(x.span != NOWHERE and drawn.text[x.span.start : x.span.end].strip() for x in error.labels), error
    return " ".join(sorted({d.code for d in errors}))


# ----------------------------------------------------------------- where a chart lies, by the bed alone


def lies_as_said(drawn: Charted, fabric: KnitFabric) -> None:
    """What the language says of repeats, against the rows that the bed knitted; nothing that counted them is asked."""
    chart = drawn.chart
    if chart is None or drawn.area == "motif":
        return
    rows = fabric.passes()
    first = next((c for c in rows if _patterned(c)), None)
    assert first is not None, "the chart was never begun"
    if drawn.area == "panel":
        (_, low, high) = next(panel for panel in first.panels if panel[0] == "patterned")
        assert (high - low + 1 - chart.before - chart.after) % chart.repeat == 0
        # The centre of the piece is the centre mark, or its middle stitch; to the nearest place that the repeats can have.
        middle = (low + high + 1) / 2 - (0.5 if drawn.odd else 0)
        assert abs(middle - (-1 if drawn.mirrored and fabric.name == "front" else 1) * drawn.offset_cm * drawn.per_cm) <= 1
        begins = low + chart.before
    else:
        # Of a parted row each end is that of its own part: another part may be narrower by the time it comes to the row.
        row = [c for c in rows if c.counter == first.counter]
        low, high = min(row, key=lambda c: c.first).live_first, max(row, key=lambda c: c.last).live_last
        begins = _begins(drawn, chart, low, high)
    _first_rows_are_drawn(drawn, chart, fabric, rows[rows.index(first) :], begins)


def _patterned(row: Course) -> bool:
    return "patterned" in (row.fabric, *(name for name, _, _ in row.panels))


def _begins(drawn: Charted, chart: Drawing, low: int, high: int) -> int:
    """Where a repeat begins on needles `low`..`high`."""
    if drawn.fit == "whole":
        charted_stitches = high - low + 1 - 2 * drawn.edge - chart.before - chart.after
        assert charted_stitches > 0
        assert charted_stitches % chart.repeat == 0
        return low + drawn.edge + chart.before
    # The centre mark is between needle -1 and needle 0; an odd repeat has its middle on the needle right of it.
    return 0 if drawn.fit == "balanced" else -(chart.repeat // 2)


def _first_rows_are_drawn(drawn: Charted, chart: Drawing, fabric: KnitFabric, rows: tuple[Course, ...], begins: int) -> None:
    """Well inside the piece, every cell of the first rows has made the loop it means, as far as no end has moved."""
    ends = rows[0].live_first, rows[0].live_last
    reach = max(chart.repeat, 8)
    begun = rows[0].first_loop
    bars = {(bar.counter, bar.slot) for bar in fabric.bars if bar.loop >= begun}
    floats = {(f.counter, slot) for f in fabric.floats for slot in range(f.first, f.last + 1)}
    for y, row in enumerate(rows[: len(chart.rows)]):
        if not _patterned(row):
            return
        if (row.live_first, row.live_last) != ends or row.count + len(fabric.held_in(row)) != ends[1] - ends[0] + 1:
            return
        inside = range(ends[0] + reach, ends[1] - reach + 1)
        if drawn.area == "panel":
            low, high = next((a, z) for name, a, z in row.panels if name == "patterned")
            inside = range(max(inside.start, low + chart.before + reach), min(inside.stop, high - chart.after - reach))
        loops = _loops(fabric, row.counter, begun)
        for slot in inside:
            column = chart.before + (slot - begins) % chart.repeat
            symbol, below = chart.rows[y][column], chart.rows[y - 1][column] if y else "."
            # A ladder begins and ends on yarn laid in an empty hook.
            assert ((row.counter, slot) in bars) == (symbol == "O" or (symbol == "H") != (below == "H")), (
                symbol,
                row.counter,
                slot,
            )
            _is_made(symbol, (row.counter, slot), loops, floats, fabric)


def _loops(fabric: KnitFabric, counter: int, begun: int) -> dict[int, tuple[int, str]]:
    """Slot to the loop made there in that row, from the loop `begun` on, and its yarn; of two, the later."""
    return {
        fabric.slots[loop]: (loop, course.yarn)
        for course in fabric.courses
        if course.counter == counter and course.first_loop >= begun and course.kind in ("knit", "laid", "by hand")
        for loop in range(course.first_loop, course.first_loop + course.count)
    }


def _is_made(
    symbol: str,
    at: tuple[int, int],
    loops: dict[int, tuple[int, str]],
    floats: set[tuple[int, int]],
    fabric: KnitFabric,
) -> None:
    meaning = MEANINGS[symbol]
    loop, yarn = loops.get(at[1], (-1, ""))
    if meaning.startswith("knit") or symbol in "<>()^O":
        assert yarn == (meaning.removeprefix("knit in ") if symbol in "nr" else "wool"), (symbol, at)
    if symbol == "-":
        assert fabric.faces[loop] == 1, at
    if symbol in ".nr<>()^1234":
        assert fabric.faces[loop] == 0, at
    if symbol == "i":
        assert fabric.kinds[loop] == LoopKind.LONG, at
    if symbol == "v":
        assert at in floats, at
