"""How much knitting a source asks for, reckoned before anything is solved: less than hands can knit, or more than a garment is.

Every stitch is knitted on the simulated bed twice, in every size, so that time and memory follow from these numbers; what is
refused here would have taken minutes, or would not have been readable on the page.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import pairwise

from walewright.design.model import Design, Fabric, Piece
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Amount, Said, only, said
from walewright.solve.edges.bed_width import widest
from walewright.solve.edges.gauge import highest, level_number, stages
from walewright.trade.fabrics import StitchKind

FEWEST_ROWS = 4
"""Fewer are a cast-on and a cast-off that touch (common practice)."""
FEWEST_STITCHES = 4
"""At its widest. Strips of two or three stitches curl to a cord, and are knitted as one (common practice)."""
MOST_ROWS = 5000
"""Of one piece, repeats counted as often as they are worked: twelve metres of the finest knitting. Counters have three drums, and
a number on the page up to four digits."""
MOST_STITCHES = 4_000_000
"""Of a garment in all its sizes: a loop takes 150 bytes (measured)."""
BY_HAND: Mapping[StitchKind, int] = {"stocking stitch": 1, "stripes": 1, "latched rib": 2, "chart": 3}
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
        self.needles = [widest(at, piece).needles for at in design.each_size]
        self.rows = [sum(rows for rows, _ in self._stages(size)) for size in sizes]
        self.work = [self.needles[size] * sum(rows * weight for rows, weight in self._stages(size)) for size in sizes]

    def _stages(self, size: int) -> Iterator[tuple[float, int]]:
        """(rows, how much a stitch of them counts) between every two levels."""
        piece = self.piece
        heights = [highest(level)[size] for level in piece.levels]
        for number, ((low, high), (_, _, fabric)) in enumerate(zip(pairwise(heights), stages(self.design, piece), strict=True)):
            again = [
                r.times[size]
                for r in piece.repeats
                if level_number(piece, r.from_level) <= number < level_number(piece, r.to_level)
            ]
            within = [self.design.fabric(z.fabric) for z in piece.zones]
            weight = max(_weight(self.design, f) for f in (fabric, *within))
            yield (high - low) * fabric.rows_per_cm * max(again, default=1), weight

    def faults(self) -> Iterator[Diagnostic]:
        piece, top = self.piece, self.piece.levels[-1]
        sizes = self.design.sizes
        flat = [i for i, rows in enumerate(self.rows) if rows < FEWEST_ROWS - 0.5]
        # How wide a piece is that takes its width from edges is not known before these are counted.
        by_edges = piece.start_by_edges
        thin = [i for i, needles in enumerate(self.needles) if needles < FEWEST_STITCHES - 0.5 and not by_edges]
        endless = [i for i, rows in enumerate(self.rows) if rows > MOST_ROWS]
        if flat:
            yield diagnosed(
                "too-small/rows",
                (top.origin.span, "top"),
                (piece.origin.span, "piece"),
                notes=tuple(said("high", size=sizes[i], height=Amount(top.height[i]), rows=_round(self.rows[i])) for i in flat),
                helps=("look-at-height",),
                sizes=only(self.design.sizes, flat),
                piece=piece.name,
                rows=_round(min(self.rows)),
                fewest=FEWEST_ROWS,
                level=top.name,
            )
        if thin:
            yield diagnosed(
                "too-small/stitches",
                (piece.start_origin.span if piece.start_origin else piece.origin.span, "widest"),
                notes=tuple(said("at-the-widest", size=sizes[i], stitches=_round(self.needles[i])) for i in thin),
                helps=("look-at-width",),
                sizes=only(self.design.sizes, thin),
                piece=piece.name,
                stitches=_round(min(self.needles)),
                fewest=FEWEST_STITCHES,
            )
        if endless:
            yield diagnosed(
                "too-much-knitting/rows",
                (top.origin.span, "top"),
                (piece.origin.span, "piece"),
                notes=tuple(said("rows", size=sizes[i], rows=_round(self.rows[i])) for i in endless),
                helps=("look-at-rows",),
                sizes=only(self.design.sizes, endless),
                piece=piece.name,
                rows=_round(max(self.rows)),
                most=MOST_ROWS,
                level=top.name,
            )


def _all_together(design: Design, made: list[_Sums]) -> Iterator[Diagnostic]:
    """What is too much of all pieces in all sizes: the first of the three sums that is."""
    sizes = range(len(design.sizes))
    own = [sums for sums in made if sums.piece.mirror_of is None]
    weights = tuple(said("weight-of", kind=kind, weight=weight) for kind, weight in BY_HAND.items() if weight > 1)
    counted = said("stitches-count", weights=weights, in_colours=IN_COLOURS)
    sums: tuple[tuple[str, list[list[float]], list[_Sums], int, tuple[Said, ...]], ...] = (
        ("stitches-in-all", [s.work for s in made], made, MOST_STITCHES, (counted,)),
        ("rows-in-all", [s.rows for s in made], made, MOST_ROWS_IN_ALL, ()),
        (
            "heights-in-all",
            [[float(len(s.piece.levels))] * len(sizes) for s in own],
            own,
            MOST_HEIGHTS,
            (said("level-is-a-height"),),
        ),
    )
    # As many as stay within all three limits, whichever sizes they are.
    able = min(
        int(limit // (max(sum(of_piece[i] for of_piece in amounts) for i in sizes) or 1)) for _, amounts, _, limit, _ in sums
    )
    for case, amounts, whose, limit, notes in sums:
        by_size = [sum(of_piece[i] for of_piece in amounts) for i in sizes]
        if sum(by_size) <= limit:
            continue
        most = max(range(len(whose)), key=lambda n: sum(amounts[n]))
        yield diagnosed(
            f"too-much-knitting/{case}",
            (whose[most].piece.origin.span, "of-them"),
            notes=notes,
            helps=(said("sizes-at-a-time", able=able, sizes=len(sizes)) if able else said("look-at-units"),),
            amount=_round(sum(by_size)),
            most=limit,
            of_piece=_round(sum(amounts[most])),
        )
        return


def _weight(design: Design, fabric: Fabric) -> int:
    if fabric.stitch == "chart" and any(y != fabric.yarn for y in design.chart(fabric.chart).yarns):
        return IN_COLOURS
    return BY_HAND[fabric.stitch]


def _round(number: float) -> float:
    """As it is told: a whole number, or one of few stitches or rows with two figures."""
    told = round(number) if number >= 10 else float(f"{number:.2g}")
    return int(told) if told == int(told) else told
