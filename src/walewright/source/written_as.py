"""How kinds are written in a source: the words of the language for each of them."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.trade.cells import CellKind
from walewright.trade.edgings import EdgingKind, EdgingWhen
from walewright.trade.ends import EndWay, OwnStart, Taken
from walewright.trade.fabrics import ChartFit, ColourWay
from walewright.trade.joins import NextCopy
from walewright.trade.parity import Parity
from walewright.trade.shaping import WedgeKind
from walewright.trade.sides import CentreSide, PlaceOf, WhichEdges

STARTS: Mapping[OwnStart, str] = {
    "waste": "on waste yarn",
    "hand waste": "on waste yarn by hand",
    "e-wrap": "with e-wrap",
    "chain": "with chain",
}
ENDS: Mapping[EndWay, str] = {"waste": "on waste yarn", "cast-off": "cast off", "sewn-off": "cast off sewn", "gathered": "gathered"}
TAKEN: Mapping[Taken, str] = {"waste": "on waste yarn", "cast-off": "cast off"}
WEDGE_EDGES: Mapping[WhichEdges, str] = {"both": "both edges", "left": "the left edge", "right": "the right edge"}
HOLDING: Mapping[WedgeKind, str] = {"in": "held in", "out": "let out", "both": "held in and let out"}
WHEN: Mapping[EdgingWhen, str] = {"after": "added after", "first": "knitted first"}
FITS: Mapping[ChartFit, str] = {"whole": "whole repeats", "centred": "centred", "balanced": "balanced"}
EDGINGS: Mapping[EdgingKind, str] = {
    "plain": "",
    "folded": "folded",
    "picot": "picot",
    "mock rib": "mock rib",
    "rolled": "rolled",
    "facing": "facing",
    "chained": "chained",
}
MOCK_RIBS = {0: "", 2: "1 by 1", 3: "2 by 1"}
CELLS: Mapping[CellKind, str] = {
    "knit": "knit",
    "hole": "hole",
    "from left": "from left",
    "from right": "from right",
    "two from left": "two from left",
    "two from right": "two from right",
    "three": "three together",
    "purl": "purl",
    "tuck": "tuck",
    "slip": "slip",
    "long": "long",
    "ladder": "ladder",
    "cross": "cross",
}
NEXT_COPIES: Mapping[NextCopy, str] = {
    "": "",
    "own": "each to its own",
    "next": "each to the next",
    "all round": "each to the next all round",
}
COLOUR_WAYS: Mapping[ColourWay, str] = {"blocks": "laid in blocks", "floats": "with floats"}
BESIDE: Mapping[CentreSide, str] = {"": "wide", "own": "from centre", "left": "left of centre", "right": "right of centre"}
PLACES: Mapping[PlaceOf, str] = {
    "own": "from centre",
    "left": "left of centre",
    "right": "right of centre",
    "edge": "from the edge",
}
WHICH: Mapping[WhichEdges, str] = {"both": "edges", "left": "left edge", "right": "right edge"}
PARITIES: Mapping[Parity, str] = {"even": "", "odd": "centre stitch", "either": "odd or even"}
ORDINAL_ENDINGS = {1: "st", 2: "nd", 3: "rd"}
