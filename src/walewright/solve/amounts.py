"""How much knitting a source asks for, reckoned before anything is solved: less than hands can knit, or more than a garment is.

Every stitch is knitted on the simulated bed twice, in every size, so that time and memory follow from these numbers; what is
refused here would have taken minutes, or would not have been readable on the page.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import pairwise

from walewright.design.model import Design, Fabric, Piece
from walewright.report.model import Diagnostic, Label
from walewright.solve.bed_width import only, widest
from walewright.solve.gauge import highest, level_number, stages

FEWEST_ROWS = 4
"""Fewer are a cast-on and a cast-off that touch (common practice)."""
FEWEST_STITCHES = 4
"""At its widest. Strips of two or three stitches curl to a cord, and are knitted as one (common practice)."""
MOST_ROWS = 5000
"""Of one piece, repeats counted as often as they are worked: twelve metres of the finest knitting. Counters have three drums, and
a number on the page up to four digits."""
MOST_STITCHES = 4_000_000
"""Of a garment in all its sizes: a loop takes 150 bytes (measured)."""
BY_HAND = {"latched rib": 2, "chart": 3}
"""As many plain stitches take as long to work out as one of these (measured)."""
IN_COLOURS = 5
"""The same for a chart with yarns of its own."""
MOST_ROWS_IN_ALL = 60_000
"""Of all pieces in all sizes: forty sizes of a cardigan with welts and bands are fewer."""
MOST_HEIGHTS = 2000
"""Levels of all pieces times sizes: each is a few whole numbers that have to be found. Forty sizes of a cardigan are 1,000."""


def unfit_amounts(design: Design) -> Iterator[Diagnostic]:
    """What is wrong with how much is to be knitted: each piece by itself, or, if none is, all of them together."""
    made = [_Sums(design, piece) for piece in design.pieces]
    told = [fault for sums in made if sums.piece.mirror_of is None for fault in sums.faults()]
    yield from told or _all_together(design, made)


class _Sums:
    """Rows and stitches of one piece at the most, per size."""

    def __init__(self, design: Design, piece: Piece) -> None:
        self.design = design
        self.piece = piece
        sizes = range(len(design.sizes))
        self.needles = [widest(design, piece, size).needles for size in sizes]
        self.rows = [sum(rows for rows, _ in self._stages(size)) for size in sizes]
        self.work = [self.needles[size] * sum(rows * weight for rows, weight in self._stages(size)) for size in sizes]

    def _stages(self, size: int) -> Iterator[tuple[float, int]]:
        """(rows, how much a stitch of them counts) between every two levels."""
        piece = self.piece
        heights = [highest(level)[size] for level in piece.levels]
        for number, ((low, high), (_, _, fabric)) in enumerate(zip(pairwise(heights), stages(self.design, piece), strict=True)):
            again = [
                r.times for r in piece.repeats if level_number(piece, r.from_level) <= number < level_number(piece, r.to_level)
            ]
            within = [self.design.fabric(z.fabric) for z in piece.zones]
            weight = max(_weight(self.design, f) for f in (fabric, *within))
            yield (high - low) * fabric.rows_per_cm * max(again, default=1), weight

    def faults(self) -> Iterator[Diagnostic]:
        piece, top = self.piece, self.piece.levels[-1]
        high = (Label(top.origin.span, f"`{top.name}` is its top"), Label(piece.origin.span, "this piece"))
        wide = (Label(piece.start_origin.span if piece.start_origin else piece.origin.span, "as wide as it gets"),)
        flat = [i for i, rows in enumerate(self.rows) if rows < FEWEST_ROWS - 0.5]
        thin = [i for i, needles in enumerate(self.needles) if needles < FEWEST_STITCHES - 0.5]
        endless = [i for i, rows in enumerate(self.rows) if rows > MOST_ROWS]
        if flat:
            yield self._fault(
                "too-small",
                f"has {_amount(min(self.rows))} rows, and fewer than {FEWEST_ROWS} are no piece of knitting",
                high,
                {i: f"{top.height[i]:.3g} cm are {_amount(self.rows[i])} rows" for i in flat},
                "look at the unit, and at what its height is reckoned from",
            )
        if thin:
            yield self._fault(
                "too-small",
                f"is {_amount(min(self.needles))} stitches wide, and fewer than {FEWEST_STITCHES} are no piece",
                wide,
                {i: f"{_amount(self.needles[i])} stitches at the widest" for i in thin},
                "look at the unit; a cord is no piece, and is named with `cord`",
            )
        if endless:
            yield self._fault(
                "too-much-knitting",
                f"has {_amount(max(self.rows))} rows, and {MOST_ROWS:,} are the most",
                high,
                {i: f"{_amount(self.rows[i])} rows" for i in endless},
                "look at the unit, at the rows of the swatch, and at how often rows are repeated",
            )

    def _fault(self, code: str, says: str, labels: tuple[Label, ...], by_size: Mapping[int, str], proposed: str) -> Diagnostic:
        """What the piece `says` of itself; `by_size`: how much it is in each size that is at fault."""
        notes = tuple(f"{self.design.sizes[i]}: {note}" for i, note in by_size.items())
        return Diagnostic(code, f"the {self.piece.name} {says}", labels, notes, (proposed,), sizes=only(self.design, list(by_size)))


def _all_together(design: Design, made: list[_Sums]) -> Iterator[Diagnostic]:
    """What is too much of all pieces in all sizes: the first of the three sums that is."""
    sizes = range(len(design.sizes))
    own = [sums for sums in made if sums.piece.mirror_of is None]
    weights = ", ".join(f"of a {kind} {weight}" for kind, weight in BY_HAND.items())
    counted = f"a plain stitch counts once, one {weights}, of a chart with yarns of its own {IN_COLOURS}"
    sums: tuple[tuple[str, list[list[float]], list[_Sums], int, str], ...] = (
        ("stitches to work out", [s.work for s in made], made, MOST_STITCHES, counted),
        ("rows", [s.rows for s in made], made, MOST_ROWS_IN_ALL, ""),
        (
            "heights to find",
            [[float(len(s.piece.levels))] * len(sizes) for s in own],
            own,
            MOST_HEIGHTS,
            "a level is a height a size",
        ),
    )
    # As many as stay within all three limits, whichever sizes they are.
    able = min(
        int(limit // (max(sum(of_piece[i] for of_piece in amounts) for i in sizes) or 1)) for _, amounts, _, limit, _ in sums
    )
    for what, amounts, whose, limit, note in sums:
        by_size = [sum(of_piece[i] for of_piece in amounts) for i in sizes]
        if sum(by_size) <= limit:
            continue
        most = max(range(len(whose)), key=lambda n: sum(amounts[n]))
        some = f"build up to {able} of the {len(sizes)} sizes at a time, each named with `--size`"
        yield Diagnostic(
            "too-much-knitting",
            f"all sizes together have {_amount(sum(by_size))} {what}, and {limit:,} are the most",
            (Label(whose[most].piece.origin.span, f"{_amount(sum(amounts[most]))} of them"),),
            (note,) if note else (),
            (some if able else "look at the units, and at how many pieces there are",),
        )
        return


def _weight(design: Design, fabric: Fabric) -> int:
    if fabric.stitch == "chart" and any(y != fabric.yarn for y in design.chart(fabric.chart).yarns):
        return IN_COLOURS
    return BY_HAND.get(fabric.stitch, 1)


def _amount(number: float) -> str:
    return f"{number:,.0f}" if number >= 10 else f"{number:.2g}"
