"""The house's own words to the knitter, those that a pattern needs: how to read the pages, what to do when things go wrong,
cautions."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from walewright.design.model import Design
from walewright.design.model.design import Caution
from walewright.fit.model import Fit
from walewright.guide.model import Advice, Guide
from walewright.record import replace
from walewright.trade.beds import EmptyCrossing

CARRIED = frozenset({"CarriageAt", "CarriageAt slip", "CarriageAt lift", "CarriageAt hold", "CarriageAt held"})
"""The carriage crosses without knitting."""
WITHOUT_KNITTING: Mapping[EmptyCrossing, str] = {
    "": "without-knitting",
    "slip": "without-knitting/slip",
    "lift": "without-knitting/lift",
    "hold": "without-knitting/hold",
    "none": "without-knitting/none",
}


def reading(
    guide: Guide,
    sizes: tuple[str, ...],
    some_sizes_only: bool,
    kinds: frozenset[str] = frozenset(),
    crossing: EmptyCrossing = "",
    edges: str = "edges",
    text: bool = False,
) -> Advice:
    """How to read the pattern. `some_sizes_only`: it has lines that not all sizes work. `kinds` of steps that it has. `crossing`:
    how the carriage of its bed passes loops without knitting them. `edges`: how left and right of edges are explained.
    `text`: of the plain text, which has brackets for boxes and no bars."""
    keys = []
    if len(sizes) > 1:
        keys += ["order-of-sizes", *(["dashes"] if some_sizes_only else [])]
    also = [key for key, kind in (("again", "Again"), ("mirrored", "Mirrored"), ("together", "Together")) if kind in kinds]
    # What is done at the same time stands in brackets too, and its line says so.
    also += ["brackets"] if "RepeatInside" in kinds and "Together" not in kinds else []
    keys += ["counter", "tick", *also, "bar", "left-and-right", "purl-side", edges]
    keys += [WITHOUT_KNITTING[crossing]] if kinds & CARRIED else []
    lines = (guide.say(f"reading/{key}/text") if text and key in OF_TEXT else guide.say(f"reading/{key}") for key in keys)
    return Advice(guide.say("reading"), tuple(lines))


OF_TEXT = frozenset({"tick", "again", "bar"})
"""What the plain text says otherwise than the page."""


EXPLAINED = {
    "in-work": {"NeedlesToWork"},
    "waste-yarn": {"WasteStart", "WasteStart hem", "WasteStart by hand", "OffOnWaste", "CentreToWaste", "SlotOnWaste"},
    "held": {"HoldAtEnd", "HoldPart"},
    "waiting": {"HoldPart", "PartOnCord"},
    "wrap": {"WrapHeld"},
    "carriage-side": {"CastOffAtCarriage", "IncreaseAtCarriage", "CastOnAtCarriage"},
    "marker": {"MarkEdges"},
    "tail": {"BreakOff"},
    "link": {"HangToLink"},
    "times": {"Repeat"},
}
"""Words of the trade that are explained, and the kinds of steps that use them."""


COUNTED = frozenset({"in-work", "held", "waiting"})
"""What each line of a bench copy counts."""


def glossary(guide: Guide, kinds: frozenset[str], counted: bool = False) -> tuple[tuple[str, str], ...]:
    """The words of the trade that the steps of those kinds use, each with what it means; `counted`: also what lines count."""
    used = (word for word, where in EXPLAINED.items() if kinds & where or (counted and word in COUNTED))
    return tuple((guide.say(f"word/{word}"), guide.say(f"meaning/{word}")) for word in used)


TROUBLE = ("jam", "dropped", "row-count", "length")


def trouble(guide: Guide) -> tuple[Advice, ...]:
    """When things go wrong."""
    return tuple(guide.advice[key] for key in TROUBLE)


def swatch_first(guide: Guide, design: Design) -> Advice:
    """How a swatch is knitted and measured; one of a latched rib is latched up on the bed, a deep one in stages, and one with a
    chart is worked by it."""
    advice = guide.advice["swatch"]
    own = [fabric for fabric in design.fabrics if not fabric.swatch_of]
    ribs = [fabric for fabric in own if fabric.rib_every]
    most = design.machine.stage[1]
    in_stages = any(fabric.swatch_rows > most for fabric in ribs)
    cast_on, knit, *rest = advice.lines
    before = [guide.say("swatch/chart")] if any(fabric.stitch == "chart" for fabric in own) else []
    before += [guide.say("swatch/rib-in-stages", most=most)] if in_stages else []
    after = [guide.say("swatch/rib")] if ribs and not in_stages else []
    return replace(advice, lines=(cast_on, *before, knit, *after, *rest))


WornOn = Literal["body", "waist", "apart", "cloth", "feet"]
"""Where a garment is worn, as rules for children's clothes part the body: about chest and neck, and whatever may be worn there |
from the waist down | on head or hands | as a cloth, which nothing closes to a tube | on the feet."""

MEASURED: tuple[tuple[WornOn, frozenset[str]], ...] = (
    ("body", frozenset({"chest", "bust", "centre_back_neck_to_wrist", "cross_back", "arm_length_to_underarm", "upper_arm"})),
    ("waist", frozenset({"waist", "hips"})),
    ("feet", frozenset({"foot", "foot_circumference", "total_foot_length", "calf"})),
    ("apart", frozenset({"head", "hand"})),
)
"""Measures of the body, the first that a garment has says where it is worn."""

OF_CHILDREN: Mapping[WornOn, tuple[str, ...]] = {
    "body": ("no-cords", "drawstrings", "loose-threads", "nightwear"),
    "waist": ("drawstrings", "loose-threads"),
    "apart": ("apart", "loose-threads"),
    "cloth": ("asleep", "apart", "loose-threads"),
    "feet": ("loose-threads",),
}
"""What can apply to it. Hats, gloves and scarves are outside EN 14682, and nightwear in 16 CFR 1615 and 1616 is nightgowns, pyjamas
and the like."""


def worn_on(design: Design, fit: Fit | None) -> WornOn:
    """Where a garment is worn; "body", to which everything applies, where its measures do not say."""
    known = {m.body for m in design.measurements}
    found = next((place for place, measures in MEASURED if known & measures), None)
    if found is None:
        flat = fit is not None and not fit.girths and len(fit.rings) == 1
        return "cloth" if flat and not design.cords else "body"
    hood = any(p.purpose == "hood" for p in design.pieces)
    about = hood or design.cords or (fit is not None and any(g.body for g in fit.girths))
    return "body" if about else found


def about_edges(design: Design, fit: Fit | None) -> str:
    """How left and right of edges are explained: with shoulders where a garment may have some, and with what left and right in the
    name of a piece mean where there are several."""
    if worn_on(design, fit) == "body":
        return "edges"
    return "edges/pieces" if len(design.pieces) > 1 else "edges/one-piece"


def cautions(guide: Guide, design: Design, fit: Fit | None) -> Advice | None:
    """Cautions for a garment that is for children, or has a hood and may be made for one; else None. Of cords and drawstrings only
    where it has one, or what one can be drawn through: a hood, a folded edging."""
    hood = any(p.purpose == "hood" for p in design.pieces)
    if design.for_children:
        casing = any(edging.kind == "folded" for edging in design.edgings)
        lacking = {*(() if hood or design.cords else ("no-cords",)), *(() if casing or design.cords else ("drawstrings",))}
        told = tuple(key for key in OF_CHILDREN[worn_on(design, fit)] if key not in lacking)
        return children(guide, told, bool(design.cords), hood, design.cautions)
    return guide.advice["hood"] if hood else None


def children(guide: Guide, told: tuple[str, ...], cords: bool, hoods: bool, own: tuple[Caution, ...]) -> Advice:
    """Cautions for a child's garment: those `told` of what is worn there; `cords` and `hoods`: it has them; `own` are the design's
    own cautions."""
    of_this = [*(["cord"] if cords else []), *(["hood"] if hoods else [])]
    about_cords = [key for key in told if key == "no-cords"]
    keys = ["small-parts", *about_cords, *of_this, *(key for key in told if key not in about_cords)]
    lines = [guide.say(f"children/{key}") for key in keys]
    return Advice(
        guide.say("children"), (*lines, *(guide.say(f"caution/{caution}") for caution in own), guide.say("children/rules-differ"))
    )
