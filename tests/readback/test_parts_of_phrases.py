"""What a phrase has, size by size: lists with dashes, rows told by how often they come, strips; every number of it is known, and so
a wrong number of sizes is; and which wales a move disturbs."""

from __future__ import annotations

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.made_of import made
from walewright import readback
from walewright.knit import operations as op
from walewright.languages import printed
from walewright.readback.phrases import (
    ReadCounts,
    ReadEvents,
    ReadForSome,
    ReadGraded,
    ReadPhrase,
    ReadRepeat,
    ReadRows,
    ReadStrips,
    ReadTrack,
)
from walewright.readback.reading import _numbers
from walewright.readback.ribs import _touched

GRADED = st.one_of(
    st.integers(0, 99).map(lambda n: ReadGraded((n,))),
    st.lists(st.one_of(st.none(), st.integers(0, 99)), min_size=3, max_size=3).map(lambda some: ReadGraded(tuple(some))),
)


def of(graded: ReadGraded, size: int) -> int | None:
    return graded.readings[size if len(graded.readings) == 3 else 0]


@given(st.lists(GRADED, max_size=5).map(tuple), st.integers(0, 2))
def test_a_dash_is_left_out_of_rows_and_nought_among_counts(numbers: tuple[ReadGraded, ...], size: int) -> None:
    readings = [of(n, size) for n in numbers]
    assert ReadRows(numbers).of(size) == tuple(r for r in readings if r is not None)
    assert ReadCounts(numbers).of(size) == tuple(r or 0 for r in readings)
    names = tuple((f"piece{i}", "border") for i in range(len(numbers)))
    assert ReadStrips(names, numbers).of(size) == tuple((*name, r or 0) for name, r in zip(names, readings, strict=True))


EVERY = st.tuples(st.integers(0, 6), GRADED, GRADED)


@given(
    st.lists(st.one_of(EVERY, st.lists(GRADED, max_size=3).map(lambda some: ReadRows(tuple(some)))), max_size=3).map(tuple),
    st.integers(0, 2),
)
def test_rows_that_come_again_and_again_are_counted_through(
    rows: tuple[ReadRows | tuple[int, ReadGraded, ReadGraded], ...], size: int
) -> None:
    events = ReadEvents("moved", rows)
    wanted: list[int] = []
    for told in rows:
        if isinstance(told, ReadRows):
            wanted += told.of(size)
            continue
        first, last = of(told[1], size), of(told[2], size)
        at = first
        while at is not None and last is not None and at <= last:
            wanted.append(at)
            at += max(told[0], 1)
    assert events.of(size) == ("moved", tuple(sorted(wanted)) if rows else None)
    inner = [n for told in rows for n in (told.numbers if isinstance(told, ReadRows) else (told[1], told[2]))]
    assert list(events.numbers) == inner
    # Wherever in a line it stands, a reading too many is found by these.
    phrase = ReadPhrase("knit_to", (ReadGraded((7,)), events, ReadPhrase("inner", (ReadGraded((8,)), "wool"))))
    for line in (
        phrase,
        ReadRepeat((phrase,), ReadGraded((9,))),
        ReadForSome((phrase,), frozenset({"M"})),
        ReadTrack("neck", (phrase,)),
    ):
        found = list(_numbers((line,)))
        own = [ReadGraded((9,))] if isinstance(line, ReadRepeat) else []
        assert found == [*own, ReadGraded((7,)), *inner, ReadGraded((8,))]


@pytest.mark.parametrize("language", ["english", "german"])
@pytest.mark.parametrize("name", ["mooring", "dunlin", "curlew", "driftline", "turnstone"])
def test_a_figure_for_one_size_too_many_is_told_wherever_it_stands(name: str, language: str) -> None:
    """Each graded figure of a page in turn, up to a dozen of them."""
    sizes = {"turnstone": ("XS", "2X")}.get(name)
    outcome = made(name, language, sizes)
    reading = printed(language).reading
    text = outcome.plain_text
    body = text.index("\n\n")
    found = [
        m for m in re.finditer(r"(?<=[ (])\d+ \(\d+\)", text) if m.start() > body and "knit" not in text[m.start() - 8 : m.start()]
    ]
    for at in found[:: max(len(found) // 12, 1)]:
        wrong = f"{text[: at.end() - 1]}: 3{text[at.end() - 1 :]}"
        works, faults = readback.read_back_all(wrong, reading)
        assert works is None
        assert faults


# ------------------------------------------------------------------------------------------------------------ wales disturbed


@pytest.mark.parametrize(
    ("move", "needles"),
    [
        (op.Transfer(3, 5, 1), {3, 4, 5, 6}),
        (op.Transfer(3, 4, -2), {1, 2, 3, 4}),
        (op.FillFromBelow(4, 5), {5}),
        # What is cast off or closed is drawn through the next stitch.
        (op.CastOff(3, 5, "left"), {3, 4, 5, 6}),
        (op.CastOff(3, 5, "right"), {2, 3, 4, 5}),
        (op.Close(3, 5, "right"), {3, 4, 5, 6}),
        (op.Close(3, 5, "left"), {2, 3, 4, 5}),
        (op.OntoWaste(3, 5, 8, "end"), {3, 4, 5}),
        (op.Gather(3, 5), {3, 4, 5}),
        (op.SewOff(3, 5, "left"), {3, 4, 5}),
        (op.Hold(3, 5), {3, 4, 5}),
        (op.Spread(3, 5, 3, (1, 1, 1)), {3, 4, 5}),
        (op.Pass("left"), set()),
        (op.Release(3, 5), set()),
    ],
)
def test_a_move_disturbs_the_needles_that_it_takes_from(move: op.Operation, needles: set[int]) -> None:
    assert set(_touched(move)) == needles
