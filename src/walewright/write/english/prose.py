"""English titles and notes: sentences without graded numbers."""

from __future__ import annotations

TITLES = {
    "cast-on": "Cast on",
    "hang-on": "Hang on",
    "knit": "Knit",
    "knit-and-shape": "Knit and shape",
    "whole-width": "Over the whole width",
    "part-for": "Part for the {opening}",
    "part-for/several": "Part for the {openings:/ and the }",
    "left-half": "Left half",
    "right-half": "Right half",
    "left-part": "Left part",
    "right-part": "Right part",
    "middle-part": "Middle part",
    "nth-part": "Part {number} from the left",
    "return-to-half": "Return to the {side:term} half",
    "return-to-part": "Return to the {side:term} part",
    "return-to-nth": "Return to part {number} from the left",
    "close": "Close the {opening}",
    "close/several": "Close the {openings:/ and the }",
    "knit-on": "Knit on the edging",
    "finish": "Finish",
    "edges": "Edges for making up",
    "all-sizes": "All sizes",
    "at-once": "At the same time",
    "by-rows": "Row by row",
    "afterwards": "After that",
    "making-up": "Making up",
    "before-joining": "Before joining",
    "before": "Before the {what}",
    "several": "{name} (knit {copies})",
    "as-written": "“{name}”",
    "before-link": "Before joining {what}",
    "link": "Join {what}",
    "link-edge": "the {edge} of the {owner} on the bed",
    "link-edge-of-copy": "the {edge} of the {copy} {owner} on the bed",
    "link-part": "{part:term} {edge}",
    "link-part/whole": "{edge}",
}

TRACKS = {
    "edge-at": "{side:term} edge",
    "outer-edge": "outer edge",
    "short-rows": "short rows at the {side:term}",
    "stitch-pattern": "stitch pattern",
    "stripes": "stripes",
    "marker-thread": "marker thread",
    "yarn": "yarn",
    "rib": "rib",
    "spread-loops": "spread loops",
    "slots": "openings",
    "buttonholes": "buttonholes",
    "other-work": "other work",
}

HEADS = {
    "sizes": "Sizes {sizes}",
    "only": "{sizes} only",
    "note": "Note: {text}",
    "key": "Key: {symbol}  {words}.",
    "step": "{first}",
    "steps": "{first} to {last}",
    "strip": "Columns {first} to {last} of {width}:",
    "strip/again": "Columns {first} to {last} of {width}, columns {first} to {before} as before:",
}

NOTES = {
    "at-once/note": "Note: at the same time {what:and}. At each RC do what stands there; the sts are counted after it.",
    "by-rows/note": "Note: {what:and} in the order of the rows. At each RC do what stands there; the sts are counted after it.",
    "at-once/in-row-order": "Note: {what:and} go on at the same time, here in the order of the rows. At each RC do what stands"
    " there; the sts are counted after it.",
    "part-of-band": "Part {number} of {parts} of the {whole}: from the {first} to the {last}.",
    "part-of-band/along": "Part {number} of {parts} of the {whole}: along the {edge}.",
    "part-of-band/within": "Part {number} of {parts} of the {whole}: along one stretch of the {edge}.",
    "edge-guides": "The width changes here. Each time, move the edge guides to the needles that are then the outermost in work.",
    "goes-on-as-it-stood": "What ended in the other part goes on here as it stood: the counter only goes by where it began.",
    "rows-of-shoulder": "The {edge} ends where the shoulder begins. The {rows} rows that are knitted at the outer end of the"
    " shoulder after that go into its seam: ease them in there.",
    "rows-of-shoulder/ends": "The {edge} ends where the shoulder begins. Of the rows after that the first and the last are knitted"
    " at the outer end of the shoulder too: ease these {rows} rows into its seam.",
    "rows-of-shoulder/ends-more": "The {edge} ends where the shoulder begins. Of the rows after that the first and the last {last}"
    " are knitted at the outer end of the shoulder too: ease these {rows} rows into its seam.",
    "rows-of-shoulder/last": "The {edge} ends where the shoulder begins. Of the rows after that only the last {rows} are knitted at"
    " the outer end of the shoulder: ease them into its seam.",
    "oversew-buttonholes": "Oversew the two layers of each buttonhole together.",
    "through-both": "What is folded is picked up through both layers, row upon row: {edges:and}.",
    "joined-already": "These are joined already, so that the edges make one line: {joined:/; }.",
    "joined-and-open": "These are joined already, so that the edges make one line: {joined:/; }. Leave open until this is knitted:"
    " {still:/; }.",
    "seam": "{one:and} to {other:and}",
    "seam-itself": "{one:and}, folded in half and sewn together",
    "edge": "{edge} of the {piece}",
    "runs": "{name}: {where}",
    "runs/to": "{first} to {last}",
    "runs/edge": "{piece} {edge}",
    "runs/piece": "{piece}",
    "runs/centre": "centre {piece}",
    "runs/within": "within the {piece} {edge}",
}

CORNERS = {
    "inner-corner": "At the inner corner of the {where} the last row is {stitches} sts longer than the line it comes to lie on.",
    "inner-corners": "At each of the {corners} inner corners of the {where} the last row is {stitches} sts longer than the line it"
    " comes to lie on.",
    "corner-too-long": "{begun} That is more than can be drawn in: let the two sides of the band cross there, or knit it as two"
    " bands.",
    "corner-even": "{begun} Take that in as you cast off: beside the corner 2 sts together, {before} times on each side of it.",
    "corner-uneven": "{begun} Take that in as you cast off: beside the corner 2 sts together, {before} times before and {after}"
    " times after it.",
}

ANNOUNCED = {
    "decrease at both ends": "decrease at both ends",
    "decrease at left end": "decrease at the left end",
    "decrease at right end": "decrease at the right end",
    "increase at both ends": "increase at both ends",
    "increase at left end": "increase at the left end",
    "increase at right end": "increase at the right end",
    "increase at carriage": "increase at the carriage side",
    "cast off at carriage": "cast off at the carriage side",
    "cast on at carriage": "cast on at the carriage side",
    "hold at left": "hold needles at the left",
    "hold at right": "hold needles at the right",
}

PROSE = {**TITLES, **TRACKS, **HEADS, **NOTES, **CORNERS, **ANNOUNCED}
