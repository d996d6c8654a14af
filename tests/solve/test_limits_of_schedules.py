"""Phrases at their limits: the plainest structure that suits all sizes, and rows about a parting; against all schedules tried."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations, pairwise

import pytest

from tests.solve.tiny import Number, agrees, least, moves, off, plainness, tiny, width, width_at

PLAINEST = ((1,), (1, 1), (2,), (2, 1), (1, 2), (1, 1, 1))
"""How many gaps each phrase has, the plainest first."""


def astray(rows: tuple[int, ...], high: int) -> float:
    return max(abs(sum(at < row for at in rows) - len(rows) * (row - 0.5) / high) for row in range(1, high + 1))


def within(count: int, high: int) -> list[tuple[int, ...]]:
    """All schedules of so many single decreases that are half a stitch worse than the best at the most."""
    ways = list(combinations(range(1, high), count))
    best = min(astray(way, high) for way in ways)
    return [way for way in ways if astray(way, high) <= best + 0.5 + 1e-9]


def written(gaps: tuple[int, ...], structure: tuple[int, ...], whole: bool) -> bool:
    """Whether gaps can be read as those phrases: one gap, or two in turn that differ by two rows at most, some number of times;
    once at least where it is `whole`."""
    if not structure:
        return not gaps
    length = structure[0]
    if not whole and written(gaps, structure[1:], whole):
        return True
    motif = gaps[:length]
    if len(motif) < length or (length == 2 and not 0 < abs(motif[0] - motif[1]) <= 2):
        return False
    times = 1
    while gaps[: length * times] == motif * times and length * times <= len(gaps):
        if written(gaps[length * times :], structure[1:], whole):
            return True
        times += 1
    return False


def suiting(sizes: list[tuple[int, int]], whole: bool) -> Iterator[tuple[int, ...]]:
    """The structures that some allowed schedule of every size can be written in."""
    for structure in PLAINEST:
        if all(
            any(written(tuple(b - a for a, b in pairwise((0, *way))), structure, whole) for way in within(count, high))
            for count, high in sizes
        ):
            yield structure


@pytest.mark.parametrize(
    "sizes",
    [[(4, 14)], [(5, 14)], [(6, 14)], [(7, 16)], [(3, 10), (4, 10)], [(4, 10), (5, 14)], [(2, 8), (7, 12)], [(4, 8), (5, 16)]],
)
def test_the_plainest_structure_that_suits_all_sizes_is_taken(sizes: list[tuple[int, int]]) -> None:
    """A phrase more is rather taken than that some size leaves one out."""
    names = " ".join("SML"[: len(sizes)])
    wide, high = (" ".join(str(x) for x in some) for some in ([20 - 2 * n for n, _ in sizes], [h for _, h in sizes]))
    text = f"""\
sizes {names}
    wide {wide} cm
    high {high} cm
piece back in plain
    levels hem 0 cm, top high
    start 20 cm wide with e-wrap
    edges slope to wide wide at top
    end cast off
"""
    made = tiny(text)
    found = set[tuple[int, ...]]()
    for (count, rows), garment in zip(sizes, made.garments, strict=True):
        (run,) = garment.pieces[0].left
        used = tuple(row for row, _ in run.changes())
        assert used in within(count, rows)
        found.add(tuple(len(phrase.gaps) for phrase in run.phrases))
        # Of that structure none deviates less.
        (structure,) = {tuple(len(phrase.gaps) for phrase in run.phrases)}
        whole = all(phrase.times for phrase in run.phrases)
        alike = [w for w in within(count, rows) if written(tuple(b - a for a, b in pairwise((0, *w))), structure, whole)]
        assert astray(used, rows) == pytest.approx(min(astray(w, rows) for w in alike))
    plainest = next(suiting(sizes, False))
    whole_one = next((s for s in suiting(sizes, True) if len(s) <= len(plainest) + 1), plainest)
    assert found == {whole_one}


@pytest.mark.parametrize("high", [15.2, 16, 18, 20, 22])
def test_no_move_at_the_carriage_is_made_in_the_row_of_a_parting_or_where_the_parts_meet(high: float) -> None:
    """Each of the two rows takes two away from those of the moves."""
    made = tiny(f"""\
piece back in plain
    levels hem 0 cm, a 6 cm, slit 10 cm, shut 13 cm, b {high} cm, top 40 cm
    start 12 cm wide with e-wrap
    edges straight to a
    edges slope to 20 cm wide at b
    opening gap 2 cm wide from slit to shut, cast off
    end cast off
""")

    def cost(c: dict[str, int]) -> float:
        spans = (("a", "slit", 4.0), ("slit", "shut", 3.0), ("shut", "b", high - 13), ("b", "top", 40 - high))
        total = 0.0
        for below, above, wanted in spans:
            rows = c[above] - c[below]
            total += off(rows, wanted) + plainness(rows, wanted, 2) if abs(rows - wanted) <= 3 else 1e6
        return total

    best = least(
        {
            "start": width(12),
            "wide": width(20),
            "a": Number(6),
            "slit": Number(10),
            "shut": Number(13),
            "b": Number(high),
            "top": Number(40),
        },
        lambda c: (
            c["b"] - c["a"] >= c["wide"] - c["start"] + 2 + 4
            and c["a"] < c["slit"] < c["shut"] < c["b"] < c["top"]
            and c["wide"] >= c["start"]
        ),
        cost,
    )
    if best is None or best.cost > 1e5:
        assert made.error.code == "counts-conflict"
        assert made.line() == "edges slope to 20 cm wide at b"
        return
    piece = made.piece
    levels = {k: r for k, r in piece.levels if k != "hem"}
    agrees(made, best, {"start": piece.start, "wide": width_at(piece, "b"), **levels})
    assert not {row for row, _ in moves(piece.left)} & {piece.row("slit"), piece.row("shut")}


def test_edges_of_their_own_beside_a_centre_stitch_are_counted_from_the_mark() -> None:
    """Nine stitches are four left of the mark and five right of it."""
    made = tiny("""\
piece back in plain, centre stitch
    levels hem 0 cm, top 30 cm
    start 9 cm wide with e-wrap
    left edge slope by 3 cm at top
    right edge slope by 2 cm at top
    end cast off
""")
    assert (made.piece.start, made.piece.start_left) == (9, 4)
    assert sum(by for _, by in moves(made.piece.left)) == 3
    assert sum(by for _, by in moves(made.piece.right)) == 2
    assert made.cost == pytest.approx(0.0, abs=1e-6)


@pytest.mark.parametrize("side", ["left", "right"])
def test_buttonholes_keep_their_distance_from_an_edge_that_moves(side: str) -> None:
    """What is moved at the very row of a buttonhole is not yet counted."""
    edge = f"{side} edge slope by 4 cm at top"
    made = tiny(f"""\
piece back in plain
    levels hem 0 cm, low 8 cm, high 32 cm, top 40 cm
    start 20 cm wide with e-wrap
    {edge}
    buttonholes 4 over 1 stitch from low to high, 4.4 cm from the {side} edge
    end cast off
""")
    piece = made.piece
    runs = piece.left if side == "left" else piece.right
    assert len(piece.slots) == 4
    for slot in piece.slots:
        out = 10 + sum(by for row, by in moves(runs) if row < slot.row)
        assert slot.first == (4 - out if side == "left" else out - 4 - 1)
