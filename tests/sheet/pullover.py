"""A small pullover built by hand: design, counts, instructions and proof that belong together, in any number of sizes."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache

import pytest

from walewright.counted import model as s
from walewright.counted.model import MeasureKey
from walewright.design import model as d
from walewright.fit.model import Fit, Girth
from walewright.guide.english import LANGUAGE
from walewright.proof import model as p
from walewright.sheet import PageOptions, ProvenPattern, Sheet, compose, html, pdf
from walewright.solve.model import Counts
from walewright.write import model as w

ORIGIN = d.Origin("by hand")
SIMPLE = d.ShapingWay("simple")
NAMES = ("XS", "S", "M", "L", "XL", "2X", "3X", "4X")


@dataclass(frozen=True)
class Pattern:
    design: d.Design
    counts: Counts
    instructions: w.Instructions
    proof: p.Proof
    fit: Fit | None = None

    def sheet(self, **options: str | bool) -> Sheet:
        chosen = {"version": "0.1.0", "date": "2025-11-25", **options}
        made = self.design, self.counts, self.instructions, self.proof
        return compose(LANGUAGE, ProvenPattern(*made, self.fit), PageOptions(**chosen))  # type: ignore[arg-type]


STEPS = (
    "Block the pieces to the measurements of the schematics and leave them to dry flat.",
    "Sew the sleeve seams and the side seams. Sew in all ends.",
)


def per(count: int, first: float, step: float) -> tuple[float, ...]:
    return tuple(first + step * i for i in range(count))


def run(name: str, to_level: str, zeros: tuple[float, ...]) -> d.EdgeRun:
    return d.EdgeRun(name, to_level, "straight", zeros, zeros, (), SIMPLE, ORIGIN)


def body_piece(name: str, count: int, depth: float) -> d.Piece:
    zeros = per(count, 0, 0)
    edges = (run("side", "underarm", zeros), run("armhole", "tip", zeros))
    return d.Piece(
        name=name,
        fabric="plain",
        copies=(1,) * count,
        mirror_of=None,
        levels=(
            d.Level("hem", zeros, ORIGIN),
            d.Level("underarm", per(count, 28, 0.4), ORIGIN),
            d.Level("tip", per(count, 48, 1), ORIGIN),
            d.Level("top", per(count, 50.5, 1), ORIGIN),
        ),
        start_width=per(count, 44, 5),
        start_way="waste",
        start_edging="welt",
        left=edges,
        right=edges,
        openings=(d.Opening("neck", per(count, 17, 0.5), per(count, depth, 0), per(count, 12, 0.3), "round", SIMPLE, ORIGIN),),
        wedges=(d.Wedge("shoulders", "both", "tip", ORIGIN),),
        end_way="waste",
        origin=ORIGIN,
    )


def sleeve_piece(count: int) -> d.Piece:
    zeros = per(count, 0, 0)
    way = d.ShapingWay("fashioned", 2)
    edges = (
        d.EdgeRun("side", "widest", "slope", per(count, 9, 0.5), zeros, (), way, ORIGIN),
        run("head", "top", zeros),
    )
    return d.Piece(
        name="sleeve",
        fabric="plain",
        copies=(2,) * count,
        mirror_of=None,
        levels=(
            d.Level("cuff", zeros, ORIGIN),
            d.Level("widest", per(count, 33, 0.5), ORIGIN),
            d.Level("top", per(count, 36, 0.5), ORIGIN),
        ),
        start_width=per(count, 22, 1),
        start_way="waste",
        start_edging="welt",
        left=edges,
        right=edges,
        openings=(),
        wedges=(),
        end_way="cast-off",
        origin=ORIGIN,
    )


def make_design(count: int, title: str, story: str) -> d.Design:
    def edge(piece: str, name: str) -> d.EdgeName:
        return d.EdgeName(piece, name)

    zeros = per(count, 0, 0)
    return d.Design(
        file="by-hand.wale",
        title=title,
        texts=(
            ("summary", "Drop-shoulder pullover with a round neck, in plain knitting on a bulky bed."),
            ("difficulty", "First garment"),
            ("story", story),
            ("note", "The welts are knitted downwards, after the pieces, on loops hung back on the needles."),
        ),
        sizes=NAMES[:count],
        measurements=(
            d.Measurement("bust", per(count, 76, 10), True, d.Credit(("published chart of women's sizes, read 2025",)), ORIGIN),
            d.Measurement(
                "upper_arm", per(count, 25, 1.5), True, d.Credit(("published chart of women's sizes, read 2025",)), ORIGIN
            ),
            d.Measurement("length", per(count, 56, 1), False, None, ORIGIN),
        ),
        machine=d.MachineProfile("bulky", "bulky bed", 114, 9.0, (1, 2, 3), 10, "move the edge weights up every 20 rows", ORIGIN),
        yarns=(d.Yarn("wool", "chunky wool", 100, 120, ORIGIN),),
        fabrics=(
            d.Fabric("plain", "stocking stitch", 0, "wool", "4", 40, 60, 30.8, 32.4, 62, ORIGIN),
            d.Fabric("rib", "latched rib", 3, "wool", "2", 40, 60, 28.6, 29.4, 56, ORIGIN),
        ),
        edgings=(
            d.Edging("welt", "rib", per(count, 6, 0), "after", "chain", ORIGIN),
            d.Edging("collar", "rib", per(count, 2.5, 0), "after", "chain", ORIGIN),
        ),
        pieces=(body_piece("back", count, 2.5), body_piece("front", count, 8), sleeve_piece(count)),
        bands=(d.Band("neckband", "collar", (edge("back", "neck"), edge("front", "neck")), ORIGIN),),
        joins=(
            d.EdgeJoin((edge("back", "shoulder"),), (edge("front", "shoulder"),), zeros, ORIGIN),
            d.EdgeJoin((edge("back", "side"),), (edge("front", "side"),), zeros, ORIGIN),
            d.EdgeJoin((edge("sleeve", "end"),), (edge("back", "armhole"), edge("front", "armhole")), per(count, 2, 0), ORIGIN),
        ),
        requirements=(),
        making_up=STEPS,
    )


def body_counts(name: str, i: int, front: bool) -> s.SizedPiece:
    start, tip, top = 58 + 6 * i, 88 + 2 * i, 94 + 2 * i
    flat, width = (8, 22 + 2 * (i // 2)) if front else (14, 22 + 2 * (i // 2))
    row = top - (16 if front else 4)
    shaping = (width - flat) // 2
    by = [3, 2, *[1] * (shaping - 5)] if front else [shaping - 2, 2]
    gaps = [1, *[2] * (len(by) - 1)]
    phrases = tuple(s.ShapingPhrase((g,), (-b,), 1) for g, b in zip(gaps, by, strict=True))
    shoulder = (start - width) // 2
    groups = tuple(shoulder // 3 + (1 if k < shoulder % 3 else 0) for k in range(3))
    edges = (
        s.SizedRun("side", 0, 54, (), SIMPLE, ORIGIN),
        s.SizedRun("armhole", 54, tip, (), SIMPLE, ORIGIN),
    )
    return s.SizedPiece(
        name,
        start,
        (("hem", 0), ("underarm", 54), ("tip", tip), ("top", top)),
        top,
        edges,
        edges,
        (
            s.SizedOpening(
                "neck", row, flat, width, s.SizedRun("neck", row, top, phrases, SIMPLE, ORIGIN), ORIGIN, top, -(flat // 2)
            ),
        ),
        (s.SizedWedge("shoulders", "both", tip, groups, ORIGIN),),
        12,
        start,
    )


def sleeve_counts(i: int) -> s.SizedPiece:
    start, times = 28 + 2 * i, 12 + i // 2
    widest, top = 62 + 2 * i, 68 + 2 * i
    edges = (
        s.SizedRun("side", 0, widest, (s.ShapingPhrase((4,), (1,), times),), d.ShapingWay("fashioned", 2), ORIGIN),
        s.SizedRun("head", widest, top, (), SIMPLE, ORIGIN),
    )
    levels = (("cuff", 0), ("widest", widest), ("top", top))
    return s.SizedPiece("sleeve", start, levels, top, edges, edges, (), (), 12, start + 2 * times, copies=2)


def make_counts(count: int) -> Counts:
    def edge(piece: str, name: str) -> d.EdgeName:
        return d.EdgeName(piece, name)

    garments = []
    for i in range(count):
        pick_ups = (s.PickUp(edge("front", "neck"), "whole", 40 + 2 * i, 44 + 2 * i, 30),)
        join = s.SizedJoin((edge("back", "side"),), (edge("front", "side"),), 54, 54, 29.2, 29.2, 0, ORIGIN)
        garments.append(
            s.SizedGarment(
                NAMES[i],
                (body_counts("back", i, False), body_counts("front", i, True), sleeve_counts(i)),
                (s.SizedBand("neckband", 70 + 4 * i, 6, pick_ups, ORIGIN),),
                (join,),
                (),
            )
        )
    return Counts(tuple(garments), ())


def grade(values: list[int]) -> str:
    return str(values[0]) if len(set(values)) == 1 else f"{values[0]} ({': '.join(str(v) for v in values[1:])})"


KINDS = {
    "with the comb": "WasteStart",
    "marker thread": "MarkEdges",
    "off on waste": "CentreToWaste",
    "into hold": "HoldAtEnd",
    "wrap": "WrapHeld",
    "Decrease": "Decrease",
    "Increase": "IncreaseFashioned",
    "Cast off": "CastOffAll",
    "hang the": "RehangStart",
    "latch it up": "LatchRib",
    "Pick up": "PickUpAlong",
    "Join ": "JoinEdges",
}
"""Words of the sentences below, and the steps that they say."""


def say(text: str, sizes: tuple[int, ...], row: str = "", side: str = "", check: bool = False) -> w.Sentence:
    """`text` with *numbers*, _needles_ and =checks= marked."""
    said = tuple(kind for words, kind in KINDS.items() if words in text)
    kinds = {"*": "number", "_": "needle", "=": "check"}
    runs: list[w.Run] = []
    kind, run_text = "word", ""
    for letter in text:
        if letter in kinds:
            if run_text:
                runs.append(run_of(run_text, kind))
            kind, run_text = ("word" if kind == kinds[letter] else kinds[letter]), ""
        else:
            run_text += letter
    if run_text:
        runs.append(run_of(run_text, kind))
    return w.Sentence(tuple(runs), sizes, row, side, "by hand", check, said, row_graded=":" in row)


FIGURES = re.compile(r"(?:\b(?:[LR]|RC) )?[^\s()]+ \([^()]*:[^()]*\),?")


def run_of(text: str, kind: str) -> w.Run:
    return w.Run(text, kind, figures=tuple(found.span() for found in FIGURES.finditer(text)))


def make_instructions(count: int, counts: Counts) -> w.Instructions:
    every = tuple(range(count))
    sections = []
    for name in ("back", "front"):
        pieces = [g.piece(name) for g in counts.sizes]
        start = grade([q.start for q in pieces])
        half = grade([q.start // 2 for q in pieces])
        tip = grade([q.row("tip") for q in pieces])
        part = grade([q.openings[0].row for q in pieces])
        flat = grade([q.openings[0].flat for q in pieces])
        held = grade([q.wedges[0].groups[0] for q in pieces])
        sections.append(
            w.Section(
                name,
                name.capitalize(),
                (1,) * count,
                (
                    w.Paragraph(
                        "Cast on",
                        "",
                        (
                            say("Carriage at left.", every, side="left"),
                            say(f"Bring needles _L {half}_ to _R {half}_ to WP: *{start}* sts.", every),
                            say(
                                "With waste yarn cast on with the comb and knit *11* rows, then 1 row with ravel cord.",
                                every,
                                "",
                                "right",
                            ),
                            say("With wool at tension 4.", every),
                            say("Set RC to *000*.", every, "000", "right"),
                            say(f"=RC 000, carriage right, {start} sts.=", every, "000", "right", True),
                        ),
                    ),
                    w.Paragraph(
                        "Knit",
                        "",
                        (
                            say(
                                "Knit to RC *54*. Tie a marker thread to both ends of the row: the armhole begins here.",
                                every,
                                "54",
                                "right",
                            ),
                            say(f"Knit to RC *{tip}*.", every, tip, "right"),
                        ),
                    ),
                    w.Paragraph(
                        "Part for the neck",
                        "",
                        (
                            say(f"Take the *{flat}* centre sts off on waste yarn.", every, part, "right"),
                            say(
                                f"Put all needles to the left of the centre, _L {half}_ to _L 8_, into hold.", every, part, "right"
                            ),
                            say(f"=RC {part}, carriage right, {start} sts on the bed.=", every, part, "right", True),
                        ),
                    ),
                    w.Paragraph(
                        "Right half",
                        "XS, S only" if count > 2 else "",
                        (
                            say(
                                f"Put *{held}* needles at the right end into hold, knit *1* row, wrap, knit *1* row.",
                                (0, 1) if count > 2 else every,
                            ),
                        ),
                    ),
                    w.Paragraph(
                        "",
                        "",
                        (
                            say(
                                "Decrease *1* stitch at left end, then knit *2* rows: work this *5* times in all.",
                                every,
                                part,
                                "right",
                            ),
                            say("Off on waste yarn, *11* rows.", every),
                        ),
                    ),
                ),
            )
        )
        sections.append(
            w.Section(
                f"{name} welt",
                f"{name.capitalize()} welt",
                (1,) * count,
                (
                    w.Paragraph(
                        "",
                        "",
                        (
                            say(
                                f"Bring needles _L {half}_ to _R {half}_ to WP. Wrong side facing, hang the {name} on them.",
                                every,
                            ),
                            say("With wool at tension 2, RC *000*, knit to RC *12*.", every, "12", "right"),
                            say(
                                "Drop every *3rd* stitch, from _L 2_ and _R 2_ outwards, and latch it up, *12* rows deep.",
                                every,
                            ),
                            say("Cast off.", every),
                        ),
                    ),
                ),
            )
        )
    sleeves = [g.piece("sleeve") for g in counts.sizes]
    widest = grade([q.row("widest") for q in sleeves])
    sections.append(
        w.Section(
            "sleeve",
            "Sleeves (knit 2)",
            (2,) * count,
            (
                w.Paragraph(
                    "Knit and shape",
                    "",
                    (
                        say(
                            "Increase *1* at both ends, *2* stitches in: knit *4* rows and increase, *12* times in all.",
                            every,
                            widest,
                            "right",
                        ),
                        say(
                            f"=RC {widest}, carriage right, {grade([q.widest for q in sleeves])} sts.=",
                            every,
                            widest,
                            "right",
                            True,
                        ),
                        say("Cast off loosely.", every),
                    ),
                ),
            ),
        )
    )
    sections.append(
        w.Section(
            "neckband", "Neckband", (1,) * count, (w.Paragraph("", "", (say("Pick up *20* sts along the back neck.", every),)),)
        )
    )
    joins = (
        "back shoulder to front shoulder",
        "back side to front side",
        "sleeve end to back armhole + front armhole, easing 2 cm",
    )
    steps = tuple(say(f"By hand: {text}", every) for text in STEPS)
    joined = tuple(say(f"Join {j}.", every) for j in joins)
    sections.append(w.Section("joining 1", "Making up", (1,) * count, (w.Paragraph("", "", (*steps, *joined)),), joining=True))
    return w.Instructions(
        NAMES[:count],
        tuple(sections),
        (("RC", "row counter"), ("st, sts", "stitch, stitches"), ("WP", "working position")),
    )


def make_proof(count: int) -> p.Proof:
    sizes = []
    for i in range(count):
        pieces = tuple(
            p.PieceProof(
                name,
                1,
                f"L {29 + 3 * i}",
                f"R {29 + 3 * i}",
                58 + 6 * i,
                94 + 2 * i,
                5000 + 700 * i,
                (
                    p.Measure(MeasureKey("width", "level", "hem"), 44 + 5 * i, 44.66 + 4.6 * i, 0.4, "st"),
                    p.Measure(MeasureKey("height", "level", "underarm"), 28.4, 29.16, 0, "rows"),
                    p.Measure(MeasureKey("width", "opening", "neck"), 17 + 0.5 * i, 16.94, -0.2, "st"),
                ),
            )
            for name in ("back", "front", "sleeve")
        )
        joins = (
            p.JoinProof((p.SewnEdge("back", "side"),), (p.SewnEdge("front", "side"),), 54, 54, 29.2, 29.2, 0),
            p.JoinProof(
                (p.SewnEdge("sleeve", "end"),),
                (p.SewnEdge("back", "armhole"), p.SewnEdge("front", "armhole")),
                None,
                None,
                40.1,
                41.3,
                2,
            ),
        )
        yarn = (
            p.YarnUse(
                "wool",
                "chunky wool",
                700 + 40.0 * i,
                580 + 35.0 * i,
                6 + i // 3,
                p.FromLoops((("weighed", ()),), 0.08),
                0.05,
                "yarn",
                480 + 30.0 * i,
                60.0,
                40 + 5.0 * i,
            ),
        )
        sizes.append(p.SizeProof(NAMES[i], pieces, joins, yarn, 1234 + i, 16012 + 900 * i, True))
    return p.Proof(tuple(sizes))


def make_pattern(
    count: int = 3, title: str = "Tidewrack", story: str = "Named for the line of weed that the tide leaves."
) -> Pattern:
    counts = make_counts(count)
    girth = Girth("back", "underarm", ("back", "front"), "closed", tuple(90.0 + 10 * i for i in range(count)), body=True)
    fit = Fit((girth,), (), (), (), (), (), (), ())
    return Pattern(make_design(count, title, story), counts, make_instructions(count, counts), make_proof(count), fit)


@pytest.fixture(scope="session")
def pattern() -> Callable[..., Pattern]:
    return make_pattern


@cache
def printed(count: int = 8, paper: str = "a4", units: str = "cm") -> tuple[bytes, tuple[str, ...]]:
    """The pullover in so many sizes as PDF, and what the renderer complained of: set once for all tests that ask it something."""
    sheet = make_pattern(count).sheet(paper=paper, units=units)
    return pdf(html(sheet), sheet)
