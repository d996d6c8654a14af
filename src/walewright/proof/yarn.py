"""Yarn for one size: from the loops and floats that the bed knitted.

Three ways, fabric by fabric the best available is taken and named:

1. by weight: the swatch was weighed, so a stitch of that fabric weighs swatch grams / (stitches x rows), floats included. In a
   fabric of several yarns they share that weight by their loops' and floats' length and their own weight;
2. by measured length: the author says how much yarn is in a stitch;
3. estimated: from the density, by the relations of relaxed plain knit (`plain_knit`).

A long stitch takes twice the yarn of another, a float the width of the needles that it passes. Bands are knitted and counted, tails
are as long as they were asked for; for cast-offs, seams, ends and swatches see the constants.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from typing import get_args

from walewright.design.model import Design, Yarn
from walewright.design.model import Fabric as Knit
from walewright.proof.model import AsInFabric, FromLoops, LoopSource, OneLength, YarnUse
from walewright.proof.plain_knit import KS_WET, KW_WET, loop_length_cm
from walewright.proof.spent import Spent, Tally, grams_per_stitch
from walewright.record import record, replace
from walewright.trade.fabrics import STITCH_KINDS

__all__ = ["KS_WET", "SPARE", "loop_cm", "loop_length_cm", "yarn_uses"]

SPARE = 0.10
"""Share added for ends and the error of the swatch. Common practice: 5 to 10 %."""

SWATCH_STITCHES = 10
"""Knitted beside the block that is measured, 5 stitches at each side. The rows below and above it are of waste yarn about as thick,
as the page tells the knitter, and take none of the garment's (common practice, from memory)."""

CHAIN_LOOPS = 2
"""A chain of the cast-off takes as much yarn as so many stitches: 6 widths against 3 for a row, of a yarn shop's rule,
blacksquirrelberkeley.com/pages/yarn-chicken."""

SEAM_WIDTHS = 3
"""Yarn to sew a seam, in seam lengths (common practice, from memory)."""

RAVEL_ENDS_CM = 40
"""Of ravel cord beyond the row that it knits, to pull at: 20 cm at each end (common practice)."""

PART_WIDTHS = 3
"""Of ravel cord that a part waits on, in widths of the part on the bed (common practice)."""

WEIGHED, MEASURED, PLAIN, OTHER = 0.05, 0.08, 0.15, 0.25
"""How far off a yarn may be that was weighed, measured, estimated for plain knit, estimated for another stitch (from memory)."""


@record
class _Loop:
    """Yarn in a stitch, in cm, with the way it was come by and its error as a share."""

    cm: float
    way: LoopSource
    error: float


@record
class _YarnPart:
    """Grams of a yarn in one fabric: in the garment, and in the fabric's swatch."""

    garment: float
    swatch: float = 0.0

    @property
    def whole(self) -> float:
        return self.garment + self.swatch


SMALL_CM = 10
"""Of a block that is measured for something small: as wide and as high as what tensions are given to (common practice)."""


def small_block(knit: Knit) -> tuple[int, int]:
    """Stitches and rows of such a block, no more than the author's."""
    stitches, rows = (2 * math.ceil(SMALL_CM * of / 2) for of in (knit.stitches_per_cm, knit.rows_per_cm))
    return min(stitches, math.ceil(knit.swatch_stitches)), min(rows, math.ceil(knit.swatch_rows))


def yarn_of_sizes(
    design: Design, taken: Sequence[tuple[Spent, Mapping[str, float]]]
) -> tuple[tuple[tuple[YarnUse, ...], ...], tuple[tuple[str, int, int], ...]]:
    """What each size takes, and the fabrics of which a small swatch is enough: where whole ones are heavier than the garment in its
    middle size, nobody would buy so much."""
    whole = tuple(yarn_uses(design, spent, seams) for spent, seams in taken)
    middle = whole[(len(whole) - 1) // 2]
    if sum(use.swatch_grams for use in middle) <= sum(use.garment_grams for use in middle):
        return whole, ()
    blocks = tuple((f.name, *small_block(f)) for f in design.fabrics if not f.swatch_of)
    return tuple(yarn_uses(design, spent, seams, small=True) for spent, seams in taken), blocks


def yarn_uses(
    design: Design, spent: Spent, seams_cm: Mapping[str, float] | None = None, small: bool = False
) -> tuple[YarnUse, ...]:
    """What one size takes: each yarn of the design in its order, whole balls rounded up, then waste yarn and ravel cord, if any.

    The swatches of all fabrics are included, of `small` blocks or of the author's. `seams_cm` is the length sewn with each yarn."""
    tex = {yarn.name: yarn.tex for yarn in design.yarns}
    grams: dict[str, dict[str, _YarnPart]] = {yarn.name: {} for yarn in design.yarns}
    for knit in design.fabrics:
        own = {yarn: t for (name, yarn), t in spent.tallies.items() if name == knit.name and yarn in tex}
        for name, part in _of_fabric(knit, own, tex, small).items():
            grams[name][knit.name] = part
    cut = {y.name: spent.tails_cm.get(y.name, 0) + SEAM_WIDTHS * (seams_cm or {}).get(y.name, 0.0) for y in design.yarns}
    found = []
    for yarn in design.bought():
        lengths = [(y, 1 if y == yarn else y.strands.count(yarn.name)) for y in design.yarns]
        parts = _of_strand(yarn, [(y, times, grams[y.name]) for y, times in lengths if times])
        found.append(_use(design, yarn, parts, sum(times * cut[y.name] for y, times in lengths) * yarn.tex / 1e5))
    return (*found, *_helpers(design, spent))


def _of_strand(yarn: Yarn, held: Iterable[tuple[Yarn, int, Mapping[str, _YarnPart]]]) -> dict[str, _YarnPart]:
    """Grams of a yarn in each fabric, by itself and held together with others. `held`: each yarn that it is, or is so many strands
    of, with its own grams: strands lie side by side, as long as each other, and so share them by their thickness."""
    found: dict[str, _YarnPart] = {}
    for whole, times, parts in held:
        share = times * yarn.tex / whole.tex
        for fabric, part in parts.items():
            own = found.get(fabric, _YarnPart(0.0))
            found[fabric] = _YarnPart(own.garment + part.garment * share, own.swatch + part.swatch * share)
    return found


def loop_cm(design: Design, knit: Knit) -> float:
    """Yarn in one stitch of a fabric, in cm, by the best way there is; where floats are weighed with the stitches, theirs too."""
    return _loop(knit, next((y.tex for y in design.yarns if y.name == knit.yarn), 0.0)).cm


def _loop(knit: Knit, tex: float) -> _Loop:
    if knit.swatch_grams > 0 and tex > 0:
        return _Loop(grams_per_stitch(knit) / tex * 1e5, "weighed", WEIGHED)
    if knit.loop_cm > 0:
        return _Loop(knit.loop_cm, "measured", MEASURED)
    error = PLAIN if STITCH_KINDS[knit.stitch].plain else OTHER
    return _Loop(loop_length_cm(knit.stitches_per_cm, knit.rows_per_cm), "estimated", error)


def _of_fabric(knit: Knit, own: Mapping[str, Tally], tex: Mapping[str, float], small: bool) -> dict[str, _YarnPart]:
    """Grams of each yarn in the garment's share of a fabric and in its swatch; they share both alike."""
    loop = _loop(knit, tex.get(knit.yarn, 0.0))
    swatch = _swatch(knit, tex.get(knit.yarn, 0.0), small) if not knit.swatch_of else 0.0
    cells = sum(t.loops + t.empty for t in own.values())
    if not cells:
        # Not knitted in this size but as a cast-off, or not at all: the swatch is its own yarn's.
        found = {yarn: _YarnPart(_chains(t, loop.cm, tex[yarn])) for yarn, t in own.items()}
        if knit.yarn in tex:
            found[knit.yarn] = _YarnPart(found[knit.yarn].garment if knit.yarn in found else 0.0, swatch)
        return found
    if loop.way == "weighed":
        each = grams_per_stitch(knit)
        lengths = {yarn: (t.loops + t.longs + t.passed / KW_WET) * tex[yarn] for yarn, t in own.items()}
        whole = sum(lengths.values())
        return {
            yarn: _YarnPart(
                each * cells * lengths[yarn] / whole + CHAIN_LOOPS * t.chains * each * tex[yarn] / tex[knit.yarn],
                swatch * lengths[yarn] / whole,
            )
            for yarn, t in own.items()
        }
    result = {}
    # The swatch has as much of each yarn as so many cells of the garment, in the author's size.
    swatch_cells = swatch / (loop.cm * tex[knit.yarn] / 1e5)
    for yarn, t in own.items():
        garment = ((t.loops + t.longs) * loop.cm + t.passed / knit.stitches_per_cm) * tex[yarn] / 1e5
        result[yarn] = _YarnPart(garment + _chains(t, loop.cm, tex[yarn]), garment * swatch_cells / cells)
    return result


def _swatch(knit: Knit, tex: float, small: bool) -> float:
    """Grams of a swatch in the fabric's own yarn, with what is knitted beside the block. At another tension it is a piece of fabric
    of the same size as the author's, and takes as much."""
    block = knit.as_written or knit
    stitches, rows = small_block(block) if small else (block.swatch_stitches, block.swatch_rows)
    return (stitches + SWATCH_STITCHES) * rows * _loop(block, tex).cm * tex / 1e5


def _chains(tally: Tally, cm: float, tex: float) -> float:
    return CHAIN_LOOPS * tally.chains * cm * tex / 1e5


def _use(design: Design, yarn: Yarn, by_fabric: Mapping[str, _YarnPart], sewn: float) -> YarnUse:
    garment = sum(part.garment for part in by_fabric.values()) + sewn
    swatches = sum(part.swatch for part in by_fabric.values())
    reserve = (garment + swatches) * SPARE
    grams = garment + swatches + reserve
    balls = math.ceil(grams / yarn.ball_grams - 1e-9)
    way, error = _way(design, yarn, {name: part.whole for name, part in by_fabric.items()})
    metres = grams / yarn.tex * 1000
    used = YarnUse(yarn.name, yarn.label, metres, grams, balls, way, error=error)
    return replace(used, garment_grams=garment, swatch_grams=swatches, reserve_grams=reserve)


def _way(design: Design, yarn: Yarn, by_fabric: Mapping[str, float]) -> tuple[FromLoops, float]:
    """And the error: the mean of the fabrics' errors by what each takes, for at worst they all lie to one side."""
    loops = {f.name: _loop(f, yarn.tex) for f in design.fabrics if by_fabric.get(f.name)}
    whole = sum(by_fabric.values())
    error = sum(by_fabric[name] * loop.error for name, loop in loops.items()) / whole if whole else 0.0
    by_source = {source: tuple(name for name, loop in loops.items() if loop.way == source) for source in get_args(LoopSource)}
    known = tuple((source, () if len(names) == len(loops) else names) for source, names in by_source.items() if names)
    return FromLoops(known, SPARE), error


# ----------------------------------------------------------------- waste yarn and ravel cord


def _helpers(design: Design, spent: Spent) -> tuple[YarnUse, ...]:
    """They come away and are no part of the garment; a waste yarn of the thickness of the main yarn is supposed."""
    main = design.fabric(design.pieces[0].fabric) if design.pieces else design.fabrics[0]
    yarn = next(y for y in design.yarns if y.name == main.yarn)
    cm = loop_cm(design, main)
    found = []
    if spent.waste:
        metres = spent.waste * cm / 100
        grams = metres * yarn.tex / 1000
        found.append(
            YarnUse(
                "waste", "", metres, grams, balls=0, way=AsInFabric(main.name, yarn.label or yarn.name), error=OTHER, kind="waste"
            )
        )
    if spent.ravel or spent.parts:
        length = math.ceil((max(spent.ravel) * cm + RAVEL_ENDS_CM) / 5) * 5 if spent.ravel else 0
        part = math.ceil(PART_WIDTHS * max(spent.parts) * design.machine.pitch_mm / 50) * 5 if spent.parts else 0
        way = OneLength(length, RAVEL_ENDS_CM // 2, len(spent.ravel) // spent.cords, spent.cords, part)
        metres = (spent.cords * length + part) / 100
        found.append(YarnUse("ravel", "", metres, grams=0.0, balls=0, way=way, error=OTHER, kind="ravel"))
    return tuple(found)
