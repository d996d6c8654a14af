"""An outcome made by hand in which every datum has a value of its own, and the document that docs/plan.md says is made of it."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from walewright.counted import model as s
from walewright.design import model as d
from walewright.fit import model as f
from walewright.glue.model import Place
from walewright.knit.operations import Block, Join, Pass, SetCounter, Work
from walewright.pipeline import Outcome
from walewright.proof import model as p
from walewright.solve.model import Counts
from walewright.write.model import Instructions

AT = d.Origin("by hand")
SIZES = ("S", "L")

# ----------------------------------------------------------------- design

MACHINE = d.MachineProfile("mid", "mid-gauge bed, old", 160, 6.5, (1, 2, 3), 9, True, AT)
YARNS = (
    d.Yarn("wool", "aran wool", 50.00049, 83.3333, AT, "#102030", (), ("wool", "silk")),
    d.Yarn("marl", "two of them", 100, 160, AT, "", ("wool", "wool")),
)
FABRICS = (
    d.Fabric("plain", "stocking stitch", 0, "wool", "4.", 40, 60, 21.0, 19.0, 30, AT, loop_cm=1.23456, start_dial=True),
    d.Fabric("lace", "chart", 0, "marl", "5", 30, 50, 20, 20, 30, AT, chart="holes", edge=2, fit="balanced", right_side="purl"),
    d.Fabric("bands", "stripes", 0, "wool", "6", 30, 50, 15, 25, 30, AT, stripes=(("wool", 4), ("marl", 2)), basis="reckoned",
             reckoned_from="plain", swatch_of="lace"),
)  # fmt: skip
CHARTS = (
    d.Chart("holes", ("XX.", "O.."), (
        d.CellKey("X", d.Cell("cross", "", 1, "left"), AT), d.CellKey("O", d.Cell("hole"), AT),
        d.CellKey(".", d.Cell("knit", "marl"), AT),
    ), 1, 2, 3, True, AT, (), 12),
)  # fmt: skip
MEASURES = (
    d.Measurement("bust", (80.12345, 90.0), True, d.Credit(("a table", "a survey"), True, ("L",)), AT, about="round the body"),
    d.Measurement("length", (56.0, 58.5), False, None, AT),
)
NOUGHT = (0.0, 0.0)
PIECE = d.Piece(
    "front", "plain", (2, 2), "back", (), NOUGHT, "along", None, (), (), (), (), "gathered", AT, purpose="hood",
    start_along=(d.EdgeName("back", "neck"), d.EdgeName("back", "end")),
)  # fmt: skip
JOINS = (
    d.EdgeJoin((d.EdgeName("front", "end"),), (), NOUGHT, AT),
    d.EdgeJoin((d.EdgeName("front", "side"),), (d.EdgeName("front", "end"),), NOUGHT, AT, matching=True),
)
DESIGN = d.Design(
    "by-hand.wale", "By hand", (("summary", "Short."), ("note", "Long.")), SIZES, MEASURES, MACHINE, YARNS, FABRICS, (), (PIECE,),
    (), JOINS, (), ("Block it.", "Sew it."), (d.Cord("front", (90.0, 95.00049), AT),), True, charts=CHARTS,
    choices=(d.Choice("sleeves", ("long", "short"), "short"), d.Choice("neck", ("round", "v"), "round")),
    given=(
        d.Given("measure", "bust", "", "", 88.88888, (80.0, 90.00049)),
        d.Given("tension", "plain", "20 to 10", "19 to 10"),
        d.Given("measure", "length", "longer", "short", 5.0),
    ),
    needed=(d.Needed("buttons", "count", AT, (5.0, 6.0)), d.Needed("elastic", "length", AT, (70.5, 80.00049)),
            d.Needed("a zip", "", AT)),
    photograph=d.Photograph("a.jpg", "a jumper", AT),
)  # fmt: skip

# ----------------------------------------------------------------- counts

FASHIONED = d.ShapingWay("fashioned", 3, 2)
INSIDE = d.ShapingWay("inside", 0, 2)
RUN = s.SizedRun("side", 4, 20, (s.ShapingPhrase((3, 2), (-1, -2), 2),), FASHIONED, AT)
TOLD_RUN = {
    "name": "side", "from_row": 4, "to_row": 20, "across": False, "way": {"kind": "fashioned", "inset": 3, "at_once": 2},
    "phrases": [{"gaps": [3, 2], "by": [-1, -2], "times": 2}],
    "changes": [{"row": 7, "by": -1}, {"row": 9, "by": -2}, {"row": 12, "by": -1}, {"row": 14, "by": -2}],
}  # fmt: skip
LINED = s.SizedRun("dart", 20, 30, (), INSIDE, AT, lines=(s.SizedLine("needle", 8), s.SizedLine("count", 5)))
TOLD_LINED = {
    "name": "dart", "from_row": 20, "to_row": 30, "across": False,
    "way": {"kind": "inside", "inset": 0, "at_once": 2, "lines": [{"of": "needle", "at": 8}, {"of": "count", "at": 5}]},
    "phrases": [], "changes": [],
}  # fmt: skip
ACROSS = s.SizedRun("", 30, 30, (s.ShapingPhrase((0,), (-6,), 1),), d.ShapingWay("simple"), AT, across=True)
TOLD_ACROSS = {
    "name": "", "from_row": 30, "to_row": 30, "across": True, "way": {"kind": "simple", "inset": 0, "at_once": 1},
    "phrases": [{"gaps": [0], "by": [-6], "times": 1}], "changes": [{"row": 30, "by": -6}],
}  # fmt: skip
SLOT = s.SizedSlot("thumb", 15, -4, 3, "waste", AT)
TOLD_SLOT = {"name": "thumb", "row": 15, "first": -4, "last": 3, "taken": "waste"}
PICK_UP = s.PickUp(d.EdgeName("back", "neck"), "left", 21, 22, 23.45678, between=(2, 9))
TOLD_PICK_UP = {
    "piece": "back", "edge": "neck", "part": "left", "stitches": 21, "points": 22, "cm": 23.457, "between": [2, 9]
}  # fmt: skip
OPENING = s.SizedOpening("neck", 40, 6, 14, RUN, AT, 60, -3, "cast-off", True, (LINED,), (ACROSS, RUN))
WEDGES = (s.SizedWedge("dart", "left", 10, (5, 4), AT, "in", 3), s.SizedWedge("heel", "both", 24, (2,), AT, "both"))
CHART = s.SizedChart("holes", "lace", "panel", 11, 22, -7, 8, 2, 1, 5, AT)
SIZED = s.SizedPiece(
    "front", 50, (("hem", 0), ("top", 70)), 70, (RUN, LINED), (ACROSS,), (OPENING,), WEDGES, 9, 52, (SLOT,),
    (s.SizedZone("lace", 1, 5, -2, 2, AT), s.SizedZone("bands", 6, 7, 0, -1, AT)), (s.SizedRepeat(2, 6, 3, AT),),
    (PICK_UP, replace(PICK_UP, between=None)), (CHART,), lean=4,
)  # fmt: skip
TOLD_COUNTS = {
    "start_stitches": 50, "start_left": 29, "widest_stitches": 52, "rows": 70, "counter": 78, "edging_rows": 9,
    "levels": [{"name": "hem", "row": 0}, {"name": "top", "row": 70}],
    "left": [TOLD_RUN, TOLD_LINED], "right": [TOLD_ACROSS],
    "openings": [{
        "name": "neck", "row": 40, "to_row": 60, "first": -3, "flat": 6, "width": 14, "taken": "cast-off", "rejoins": True,
        "edge": TOLD_RUN, "left": [TOLD_LINED], "right": [TOLD_ACROSS, TOLD_RUN],
    }],
    "wedges": [
        {"name": "dart", "edge": "left", "kind": "in", "from_row": 10, "to_row": 14, "groups": [5, 4], "rest": 3},
        {"name": "heel", "edge": "both", "kind": "both", "from_row": 24, "to_row": 28, "groups": [2], "rest": 0},
    ],
    "slots": [TOLD_SLOT],
    "zones": [
        {"fabric": "lace", "from_row": 1, "to_row": 5, "first": -2, "last": 2},
        {"fabric": "bands", "from_row": 6, "to_row": 7, "first": None, "last": None},
    ],
    "charts": [{
        "chart": "holes", "fabric": "lace", "area": "panel", "from_row": 11, "to_row": 22, "first": -7, "last": 8, "edge": 2,
        "start": 1, "repeats": 5,
    }],
    "repeats": [{"from_row": 2, "to_row": 6, "times": 3}],
}  # fmt: skip
BAND = s.SizedBand("collar", 80, 12, (PICK_UP,), AT, (SLOT,), 2, (1, 2), (replace(SLOT, row=18),))
DEVIATIONS = (
    s.Deviation("front", s.MeasureKey("width", "level", "hem"), 44.44444, 57.77777, 58, 44.66666, "st"),
    s.Deviation("front", s.MeasureKey("height", "level", "top"), 30.0, 60.0, 61, 30.5, "rows"),
)

# ----------------------------------------------------------------- work and proof

SEAM = Join(
    (("front", "side", 1), ("front", "end", 2)), (("back", "side", 0),), ("bottom", "left"), 20, 15, "gathered", 31, 410, 420
)
RATIO = Join((("front", "end", 0),), (), ("right", "top"), 0, way="grafted", ratio=(3, 4))
WORK = Work("S", (Block("front", (SetCounter(0), Pass("left")), 2), SEAM, RATIO))
MEASURE = p.Measure(s.MeasureKey("depth", "opening", "neck"), 8.11111, 8.22222, 0.33333, "rows")
PIECE_PROOF = p.PieceProof("front", 2, "L 29", "R 23", 52, 78, 4321, (MEASURE,), (5,))
JOIN_PROOFS = (
    p.JoinProof((p.SewnEdge("front", "side", 2),), (p.SewnEdge("back", "side"),), 54, 55, 29.11111, 29.22222, 1.11111, 2.22222,
                "grafted", 1, 3),
    p.JoinProof((p.SewnEdge("front", "end"),), (), None, None, 9.0, 8.0, 0.0),
)  # fmt: skip
USES = (
    p.YarnUse("wool", "aran wool", 700.12345, 580.12345, 6,
              p.FromLoops((("weighed", ("plain", "lace")), ("estimated", ())), 0.08), 0.05, "yarn", 480.12345, 60.12345, 40.12345),
    p.YarnUse("waste", "", 31.0, 20.0, 0, p.AsInFabric("plain", "aran wool"), 0.1, "waste"),
    p.YarnUse("ravel", "", 2.5, 0.0, 0, p.OneLength(150, 20, 3), 0.15, "ravel"),
)  # fmt: skip
BOBBIN = p.BobbinUse("front", "holes", "marl", 4, "L 3", 12, 1.23456, "R 2", 30, ((14, 16), (18, 20)))
FLOAT = p.FloatFound("front", "marl", 17, "L 9", "L 1", 8, 4.44444)
SIZE_PROOF = p.SizeProof("S", (PIECE_PROOF,), JOIN_PROOFS, USES, 1234, 16012, True, (BOBBIN,), (FLOAT,))

# ----------------------------------------------------------------- as it is worn

GIRTH = f.Girth("front", "hem", ("front", "front"), "lapped", (90.12345, 100.0), True)
FIT = f.Fit(
    (GIRTH,),
    (f.Ease("chest", (90.5, 100.5), "bust", (80.0, 91.00049)),),
    (("chest", (90.5, 100.55555)),),
    (f.Reach("sleeve", "from the neck", (70.0, 72.0), (68.5, 69.5)), f.Reach("other", "half the span", (1.0, 2.0))),
    (f.Ring(((Place("collar", "rim", 2), Place("front", "neck")),) * 2, (40.0, 42.0), (60.0, 63.0), (3, 3), "neck"),),
    (f.Passing("collar", "head", True, (40.0, 42.0), (60.0, 63.0), (55.0, 56.0), (55.5, 56.5), None, AT),),
    (f.Buttons("band", "strip", (2.5, 2.6), ((1.0, 1.1), (5.0, 5.1)), (1.25, 1.35)),),
    (),
    ((7.0, 8.0), (71.5, 81.5), ()),
)  # fmt: skip


def outcome(**more: Any) -> Outcome:
    garments = tuple(s.SizedGarment(size, (SIZED,), (BAND,), (), DEVIATIONS if size == "S" else ()) for size in SIZES)
    made = Outcome(
        "by-hand.wale", "", design=DESIGN, counts=Counts(garments, ()), works=(WORK, Work("L", ())), fit=FIT,
        instructions=Instructions(SIZES, (), (("RC", "row counter"),)),
        proof=p.Proof((SIZE_PROOF, p.SizeProof("L", (PIECE_PROOF,), (), (), 7, 8, False))), files=("a.wale", "b/c.wale"),
    )  # fmt: skip
    return replace(made, **more)
