"""What the knitter needs: yarn a size, tension, machine. Tools are in `tools`."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator

from walewright.counted.model import SizedGarment
from walewright.design.model import Design, Fabric
from walewright.guide.english.fabric_words import basis_words, dial_words
from walewright.guide.model import Advice
from walewright.guide.numbers import CM_PER_INCH, cm, figure, graded, listed, metres, ordinal, sentence, whole_grams, words
from walewright.proof.model import Proof
from walewright.sheet.model import Fact, Row, RowGroup, SizesTable, TableCell, Tension
from walewright.solve.model import Counts


def yarn_table(design: Design, proof: Proof) -> SizesTable:
    """Balls, metres and grams of each yarn a size, and what the grams are for."""
    groups = []
    for yarn in design.yarns:
        uses = [next((u for u in size.yarn if (u.yarn, u.kind) == (yarn.name, "yarn")), None) for size in proof.sizes]
        parts = [whole_grams(u.garment_grams, u.swatch_grams, u.reserve_grams) if u else None for u in uses]
        rows = (
            Row("Balls to buy", tuple(TableCell(str(u.balls) if u else "–") for u in uses)),
            Row("Metres", tuple(TableCell(str(math.ceil(u.metres - 1e-9)) if u else "–") for u in uses)),
            Row("Grams in all", tuple(TableCell(str(part[-1]) if part else "–") for part in parts)),
            *(
                Row(f"Grams {what}", tuple(TableCell(str(part[at]) if part else "–") for part in parts))
                for at, what in enumerate(("for the garment", "for swatches", "in reserve"))
            ),
        )
        ball = f"{_plain(yarn.ball_grams)} g = {_plain(yarn.ball_metres)} m a ball"
        groups.append(RowGroup(f"{sentence(yarn.label)}, {ball}", rows))
    helpers = tuple(_helpers(proof))
    if helpers:
        groups.append(RowGroup("That comes away again, metres", helpers))
    return SizesTable("Yarn for each size", design.sizes, tuple(groups))


def _helpers(proof: Proof) -> Iterator[Row]:
    """Waste yarn and ravel cord."""
    for kind, label in (("waste", "Waste yarn"), ("ravel", "Ravel cord")):
        uses = [sum(u.metres for u in size.yarn if u.kind == kind) for size in proof.sizes]
        if any(uses):
            yield Row(label, tuple(TableCell(metres(m)) for m in uses))


def yarn_notes(proof: Proof) -> tuple[str, ...]:
    """How the yarn was reckoned and how far off it may be, each way once; what differs from size to size only by its figures is
    one sentence with all of them."""
    ways: dict[str, list[str]] = {}
    for use in (u for size in proof.sizes for u in size.yarn):
        share = f"{round(use.error * 100)} %"
        added = use.error > 0 and not use.error_told
        ways.setdefault(use.label, []).append(f"{use.way}; right to about {share}" if added else use.way)
    labels: dict[str, dict[str, None]] = {}
    for label, told in ways.items():
        for way in _with_figures(told):
            labels.setdefault(way, {})[label] = None
    return tuple(f"{sentence(listed(list(names)))}: {way}." for way, names in labels.items())


_FIGURE = re.compile(r"\d+(?:\.\d+)?")


def _with_figures(told: list[str]) -> list[str]:
    """The sentences of one yarn, one a size, as few as they can be."""
    words = [_FIGURE.split(way) for way in told]
    if any(w != words[0] for w in words):
        return list(dict.fromkeys(told))
    figures = zip(*(_FIGURE.findall(way) for way in told), strict=True)
    between = [graded(found) for found in figures]
    return ["".join(a + b for a, b in zip(words[0], [*between, ""], strict=True))]


def tensions(design: Design, units: str) -> tuple[Tension, ...]:
    """Every fabric's tension."""
    return tuple(_tension(design, fabric, units) for fabric in design.fabrics)


def _tension(design: Design, fabric: Fabric, units: str) -> Tension:
    per, name = (4 * CM_PER_INCH, "4 in") if units == "in" else (10.0, "10 cm" if units == "cm" else "10 cm (4 in)")
    yarn = next(y for y in design.yarns if y.name == fabric.yarn)
    swatch = f"{_plain(fabric.swatch_stitches)} stitches by {_plain(fabric.swatch_rows)} rows"
    if units == "in":
        size = f"{fabric.swatch_width_cm / CM_PER_INCH:.2f} in by {fabric.swatch_height_cm / CM_PER_INCH:.2f} in"
    else:
        size = f"{cm(fabric.swatch_width_cm, 0.1)} cm by {cm(fabric.swatch_height_cm, 0.1)} cm"
    side = "" if fabric.right_side == "knit" else " Its right side is the purl side."
    # What an author weighed is told as it was written; what follows at another tension is no finer than a kitchen scale.
    grams = f"{fabric.swatch_grams:.0f}" if fabric.as_written else _plain(fabric.swatch_grams)
    weight = f" and weigh {grams} g" if fabric.swatch_grams >= 0.5 else ""
    return Tension(
        title=f"{sentence(stitch_words(fabric))}, {dial_words(fabric)}",
        stitches=f"{fabric.stitches_per_cm * per:.1f}",
        rows=f"{fabric.rows_per_cm * per:.1f}",
        per=name,
        text=" ".join(filter(None, (f"In {yarn.label}. {swatch} measure {size}{weight}.{side}", *_own(design, fabric)))),
    )


def _own(design: Design, fabric: Fabric) -> Iterator[str]:
    """Whose figures these are, in a copy that was regraded, and what its dial number is worth."""
    yield basis_words(fabric, bool(design.given))
    if fabric.start_dial:
        yield (
            f"The dial is a start: where the steps say {fabric.tension}, set the number at which your own swatch comes out so, "
            "and note it here: ______"
        )
    was = next((f.tension for f in design.edition.fabrics if f.name == fabric.name), "") if design.edition else ""
    others = _other_dials(design, fabric)
    if fabric.own_dial and fabric.tension != was and others:
        yield (
            f"The dial is yours. The steps of its edgings say {' and '.join(others)} as well: numbers of the source, beside its "
            f"{was}; set yours as much looser or tighter."
        )


def _other_dials(design: Design, fabric: Fabric) -> tuple[str, ...]:
    """The settings of fold rows and inner rows of the edgings in a fabric."""
    edgings = [e for e in design.edgings if e.fabric == fabric.name]
    found = (t for e in edgings for t in (e.fold_tension, e.inside_tension) if t and t != fabric.tension)
    return tuple(dict.fromkeys(found))


def stitch_words(fabric: Fabric) -> str:
    """The stitch with its "every 3rd needle"."""
    if fabric.chart:
        return f"chart {fabric.chart.replace('_', ' ')}"
    return f"{fabric.stitch}, every {ordinal(fabric.rib_every)} needle" if fabric.rib_every else fabric.stitch


def machine(design: Design, counts: Counts) -> tuple[Fact, ...]:
    """The bed that is wanted, and how much of it each size takes."""
    bed = design.machine
    widest = [str(_widest(garment)) for garment in counts.sizes]
    facts = [
        Fact("Machine", f"{sentence(bed.called)}, single bed"),
        Fact("Needles", f"{bed.needles}, {_plain(bed.pitch_mm)} mm apart"),
        Fact("In use, at most", *words(figure(widest))),
    ]
    if bed.edge_reminder:
        facts.append(Fact("Edges", sentence(bed.edge_reminder)))
    return tuple(facts)


def _widest(garment: SizedGarment) -> int:
    found = [p.widest for p in garment.pieces] + [b.stitches for b in garment.bands]
    return max(found, default=0)


def swatch_advice() -> Advice:
    """How to knit and measure a tension swatch. Common practice; block sizes and the mean of three measurements as in the
    published how-to pages named in the project's trade notes."""
    return Advice(
        "Knit the swatch first",
        (
            "Cast on at least 10 stitches more than the block that is measured, and knit a few rows of waste yarn.",
            "Knit about 15 rows, two rows in a contrasting colour, the rows of the block, two contrasting rows, and 15 rows more. "
            "Mark the block's sides with threads on the needles just outside it.",
            "Take it off on waste yarn. Let it rest overnight, and wash it as the garment will be washed.",
            "Lay it flat without pulling. Measure between the marks three times each way and take the mean.",
            "Too many stitches or rows: loosen the tension and knit another. Too few: tighten it. "
            "Do not begin the garment before both figures agree.",
        ),
        ordered=True,
    )


def _plain(value: float) -> str:
    return f"{value:g}"
