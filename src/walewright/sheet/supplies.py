"""What the knitter needs: yarn a size, tension, machine. Tools are in `tools`."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator

from walewright.counted.model import SizedGarment
from walewright.design.model import Design, Fabric
from walewright.figures.measures import name_of
from walewright.guide.model import Guide
from walewright.guide.numbers import CM_PER_INCH, SizedFigure, figure, metres, sentence, unmarked, yarn_grams
from walewright.knit.operations import needle
from walewright.proof.model import Proof, YarnKind, YarnUse
from walewright.sheet.model import Fact, Row, RowGroup, SizesTable, TableCell, Tension
from walewright.sheet.reckoned import reckoned
from walewright.solve.model import Counts
from walewright.trade.ends import STARTS


def yarn_table(guide: Guide, design: Design, proof: Proof) -> SizesTable:
    """Balls, metres and grams of each yarn a size, and what the grams are for."""
    groups = []
    for yarn in design.bought():
        uses = [next((u for u in size.yarn if (u.yarn, u.kind) == (yarn.name, "yarn")), None) for size in proof.sizes]
        parts = [yarn_grams(u.garment_grams, u.swatch_grams, u.reserve_grams) if u else None for u in uses]
        rows = (
            Row(guide.say("yarn/balls"), tuple(TableCell(str(u.balls) if u else "–") for u in uses)),
            Row(guide.say("yarn/metres"), tuple(TableCell(str(math.ceil(u.metres - 1e-9)) if u else "–") for u in uses)),
            Row(guide.say("yarn/grams"), tuple(TableCell(str(part[-1]) if part else "–") for part in parts)),
            *(
                Row(guide.say(f"yarn/{what}"), tuple(TableCell(str(part[at]) if part else "–") for part in parts))
                for at, what in enumerate(("garment", "swatches", "reserve"))
            ),
        )
        grams, metres_ = _plain(guide, yarn.ball_grams), _plain(guide, yarn.ball_metres)
        groups.append(RowGroup(guide.say("yarn/ball", yarn=sentence(yarn.label), grams=grams, metres=metres_), rows))
    away = tuple(_comes_away(guide, proof))
    if away:
        groups.append(RowGroup(guide.say("yarn/away"), away))
    return SizesTable(guide.say("yarn"), design.sizes, tuple(groups))


def _comes_away(guide: Guide, proof: Proof) -> Iterator[Row]:
    """Waste yarn and ravel cord."""
    for kind in ("waste", "ravel"):
        uses = [sum(u.metres for u in size.yarn if u.kind == kind) for size in proof.sizes]
        if any(uses):
            # Cord is cut once, to the length that the note below names.
            figures = (metres(m) if kind == "waste" else guide.decimal(f"{m:g}") for m in uses)
            yield Row(guide.say(f"yarn/{kind}"), tuple(map(TableCell, figures)))


def yarn_notes(guide: Guide, design: Design, proof: Proof) -> tuple[str, ...]:
    """How the yarn was reckoned and how far off it may be, each way once; what differs from size to size only by its figures is
    one sentence with all of them."""
    uses: dict[tuple[str, YarnKind], list[YarnUse]] = {}
    for use in (u for size in proof.sizes for u in size.yarn):
        uses.setdefault((use.label, use.kind), []).append(use)
    labels: dict[str, dict[str, None]] = {}
    for (label, kind), of in uses.items():
        for way in reckoned(guide, of):
            labels.setdefault(way, {})[label or guide.say(f"yarn/{kind}")] = None
    told = (guide.say("yarn/way", yarns=sentence(guide.listed(list(names))), way=way) for way, names in labels.items())
    return (*together(guide, design), *told, guide.say("yarn/other"))


def together(guide: Guide, design: Design) -> Iterator[str]:
    """What the steps call by one name, and is several yarns."""
    labels = {y.name: y.label for y in design.yarns}
    for yarn in (y for y in design.yarns if y.strands):
        counts = Counter(yarn.strands)
        strands = (guide.say("yarn/strands", yarn=labels[n], count=k) if k > 1 else labels[n] for n, k in counts.items())
        yield guide.say("yarn/together", yarn=sentence(yarn.name.replace("_", " ")), strands=tuple(strands))


Blocks = tuple[tuple[str, int, int], ...]
"""Fabrics of which a small swatch is enough, with its stitches and rows."""


def tensions(guide: Guide, design: Design, units: str, small: Blocks = ()) -> tuple[Tension, ...]:
    """Every fabric's tension."""
    return tuple(_tension(guide, design, fabric, units, small) for fabric in design.fabrics)


def small_words(guide: Guide, fabric: Fabric, units: str, small: Blocks) -> str:
    """How many stitches and rows are enough to measure, and what they measure; empty where they are the author's."""
    found = next(((stitches, rows) for name, stitches, rows in small if name == fabric.name), None)
    if found is None or found == (fabric.swatch_stitches, fabric.swatch_rows):
        return ""
    stitches, rows = found
    width, height = guide.length(stitches / fabric.stitches_per_cm, units), guide.length(rows / fabric.rows_per_cm, units)
    sizes = (guide.say(f"told/{units}", cm=of[0], inches=of[0] if units == "in" else of[1]) for of in (width, height))
    return guide.say("tension/small", stitches=stitches, rows=rows, width=next(sizes), height=next(sizes))


def _tension(guide: Guide, design: Design, fabric: Fabric, units: str, small: Blocks) -> Tension:
    per = 4 * CM_PER_INCH if units == "in" else 10.0
    yarn = next(y for y in design.yarns if y.name == fabric.yarn)
    if units == "in":
        width, height = (f"{of / CM_PER_INCH:.2f}" for of in (fabric.swatch_width_cm, fabric.swatch_height_cm))
        size = guide.decimal(width), guide.decimal(height)
    else:
        size = (guide.cm(fabric.swatch_width_cm, 0.1), guide.cm(fabric.swatch_height_cm, 0.1))
    # What an author weighed is told as it was written; what follows at another tension is no finer than a kitchen scale.
    grams = f"{fabric.swatch_grams:.0f}" if fabric.as_written else _plain(guide, fabric.swatch_grams)
    swatch = guide.say(
        "tension/swatch-in" if units == "in" else "tension/swatch-cm",
        yarn=yarn.label,
        stitches=_plain(guide, fabric.swatch_stitches),
        rows=_plain(guide, fabric.swatch_rows),
        width=size[0],
        height=size[1],
        grams=grams if fabric.swatch_grams >= 0.5 else "",
        purl=fabric.right_side != "knit",
    )
    if fabric.swatch_of:
        swatch = guide.say("tension/swatch-of", fabric=name_of(fabric.swatch_of), yarn=yarn.label)
    enough = small_words(guide, fabric, units, small)
    title = guide.say("tension/title", stitch=sentence(stitch_words(guide, fabric)), dial=dial_words(guide, fabric))
    counts = (SizedFigure(guide.decimal(f"{of * per:.1f}"), whole=True) for of in (fabric.stitches_per_cm, fabric.rows_per_cm))
    density, strong = guide.figured("tension/density", stitches=next(counts), rows=next(counts), per=guide.say(f"tension/{units}"))
    return Tension(title, density, strong, " ".join(filter(None, (swatch, enough, *_own(guide, design, fabric)))))


def _own(guide: Guide, design: Design, fabric: Fabric) -> Iterator[str]:
    """Whose figures these are, in a copy that was regraded, and what its dial number is worth."""
    yield basis_words(guide, fabric, bool(design.given))
    if fabric.start_dial:
        yield guide.say("tension/dial-is-a-start", dial=fabric.tension)
    was = next((f.tension for f in design.edition.fabrics if f.name == fabric.name), "") if design.edition else ""
    others = _other_dials(design, fabric)
    if fabric.own_dial and fabric.tension != was and others:
        yield guide.say("tension/dial-is-yours", others=others, was=was)


def _other_dials(design: Design, fabric: Fabric) -> tuple[str, ...]:
    """The settings of fold rows and inner rows of the edgings in a fabric."""
    edgings = [e for e in design.edgings if e.fabric == fabric.name]
    found = (t for e in edgings for t in (e.fold_tension, e.inside_tension) if t and t != fabric.tension)
    return tuple(dict.fromkeys(found))


def stitch_words(guide: Guide, fabric: Fabric) -> str:
    """The stitch with its "every 3rd needle"."""
    if fabric.chart:
        return guide.say("stitch/chart", chart=name_of(fabric.chart))
    stitch = guide.say(f"stitch/{fabric.stitch}")
    return guide.say("stitch/every", stitch=stitch, nth=guide.ordinal(fabric.rib_every)) if fabric.rib_every else stitch


def basis_words(guide: Guide, fabric: Fabric, regraded_copy: bool) -> str:
    """Whose tension it is, in a sentence; empty in the source's own edition."""
    if fabric.basis.startswith("given"):
        return guide.say("basis/given", weighed=fabric.basis != "given, not weighed")
    if fabric.basis == "reckoned":
        return guide.say("basis/reckoned", fabric=name_of(fabric.reckoned_from))
    return guide.say("basis/source") if regraded_copy else ""


def dial_words(guide: Guide, fabric: Fabric) -> str:
    """ "tension 4", or where the number is not known to give this tension: "tension 4 to start with"."""
    return guide.say("tension/start-dial" if fabric.start_dial else "tension/dial", dial=fabric.tension)


def machine(guide: Guide, design: Design, counts: Counts) -> tuple[Fact, ...]:
    """The bed that is wanted, and how much of it each size takes."""
    bed = design.machine
    widest = [str(_widest(garment)) for garment in counts.sizes]
    facts = [
        Fact(guide.say("machine"), guide.say("machine/single-bed", machine=sentence(bed.called))),
        Fact(guide.say("machine/needles"), guide.say("machine/apart", needles=bed.needles, pitch=_plain(guide, bed.pitch_mm))),
        Fact(guide.say("machine/in-use"), *unmarked(figure(widest).marked)),
    ]
    if bed.plates:
        facts.append(Fact(guide.say("machine/plates"), guide.say("machine/plates-are", plates=bed.plates)))
    if bed.start != "comb" and any(STARTS[p.start_way].open for p in design.pieces):
        begins = "machine/starts-hem" if bed.start == "hem" else "machine/starts-by-hand"
        facts.append(Fact(guide.say("machine/starts"), guide.say(begins)))
    if bed.missing:
        facts.append(Fact(guide.say("machine/missing"), guide.say("machine/missing-are", needles=tuple(map(needle, bed.missing)))))
    if bed.edge_guides:
        facts.append(Fact(guide.say("machine/edges"), guide.say("machine/edge-guides")))
    return tuple(facts)


def _widest(garment: SizedGarment) -> int:
    found = [p.widest for p in garment.pieces] + [b.stitches for b in garment.bands]
    return max(found, default=0)


def _plain(guide: Guide, value: float) -> str:
    return guide.decimal(f"{value:g}")
