"""Words for what the proof finds, and for printed words that do not read."""

from __future__ import annotations

from walewright.report.wording import Wording

_PLAN = {"fault-of-the-plan": "this is a fault of the plan, not of the source: please report it with the source"}
_WORDS = {"fault-of-the-words": "this is a fault of the words, not of the source: please report it with the source"}

WORDINGS: dict[str, Wording] = {
    "bed-refuses": Wording(
        "{block} cannot be knitted as planned: {refusal}",
        notes={"stopped": "the bed stopped at move {move} of {block} ({fault})"},
        helps=_PLAN,
    ),
    "knitted-otherwise/counts": Wording("the {name} was counted with {counted} at {where} and knitted with {knitted}", helps=_PLAN),
    "knitted-otherwise/garment": Wording("{otherwise}", helps=_PLAN),
    "knitted-otherwise/pattern": Wording(
        "at {where} {counted} was counted and {knitted} knitted", labels={"joined-here": "joined here"}, helps=_PLAN
    ),
    "knitted-otherwise/seam": Wording(
        "the seam along {side:/ + } was counted with {counted} rows and knitted with {knitted}",
        labels={"joined-here": "joined here"},
        helps=_PLAN,
    ),
    "lace-unpaired/decrease": Wording("the {piece} has a decrease at needle {needle} in row {row} and no hole to it", helps=_PLAN),
    "lace-unpaired/hole": Wording(
        "the {piece} has a hole at needle {needle} in row {row} and no stitch drawn through two loops to it", helps=_PLAN
    ),
    "needle-missing/no-row": Wording(
        "the {block} takes {needed} needles side by side, and with {missing:and} missing the bed has no more than {room}",
        labels={"this-bed": "this bed"},
        helps={
            "narrower": "make it narrower, or knit it in panels of {room} needles and less",
            "replace-needles": "put new needles in place of {missing:and}, or take them from the end of the bed",
        },
    ),
    "needle-missing/from-centre": Wording(
        "the {block} needs {missing:and}, and cannot lie beside: its ribs and charts are told from the centre mark",
        labels={"this-bed": "this bed"},
        helps={"replace-needles": "put new needles in place of {missing:and}, or take them from the end of the bed"},
    ),
    "long-float": Wording(
        "{yarn} floats over {needles} needles ({length:.1f}) in {within}",
        labels={"knitted-here": "knitted here"},
        notes={
            "catches": "more than {most_stitches} stitches or {most} of loose yarn catches on fingers and buttons",
            "floats": "{size}: {pieces:/; }",
        },
        helps={
            "lift-it": (
                "catch it: when such a row is knitted, lift the float of {yarn} with a transfer tool on to the needle at "
                "its middle, above that needle's stitch: the next row knits both as one; or draw a stitch of the yarn "
                "between"
            ),
        },
    ),
    "words-contradict/chart": Wording("chart {chart}: {fault}"),
    "words-contradict/chart-twice": Wording("there are two charts {chart}"),
    "words-contradict/step": Wording("{section}: this is step {number}, not {printed}"),
    "words-contradict/ticks": Wording("{section}: what is ticked off below step {number} is not what that step says"),
    "words-contradict/section": Wording("{section}: {fault}"),
    "words-knit-otherwise/fabric": Wording(
        "the printed words for {name} knit another fabric than the plan",
        notes={"reading-back": "reading them back: {block}: {refusal}"},
        helps=_WORDS,
    ),
    "words-knit-otherwise/left-free": Wording("the printed words leave the {edge} of the {piece} free", helps=_WORDS),
    "words-knit-otherwise/order": Wording("the printed words say {printed} where {planned} was planned", helps=_WORDS),
    "words-knit-otherwise/stop": Wording("the printed words stop at {block}: {refusal}"),
    "words-knit-otherwise/taken-up": Wording("the printed words take up the {edge} of the {piece}", helps=_WORDS),
    "words-no-sizes": Wording("the text does not begin with its sizes"),
    "words-no-such-size": Wording("there is no size number {number}; the text is for {sizes_known}"),
    "words-size-count/readings": Wording("a number has {readings} readings and the text {sizes_known} sizes"),
    "words-size-count/size": Wording("this is for size {size}, and the text has {known:and}"),
    "words-unreadable/chart": Wording("chart {chart}: {fault}"),
    "words-unreadable/line": Wording("this line is no heading, no step and no note"),
    "words-unreadable/no-sections": Wording("the text has no sections"),
    "words-unreadable/sentence": Wording(
        "this is not a printed sentence", notes={"from-there": "it is not understood from: {rest}"}
    ),
}

PLACES: dict[str, str] = {
    "at/chart-first": "row {row}, under the chart {chart}: its first needle by number",
    "at/chart-in-work": "row {row}, under the chart {chart}: needles in work",
    "at/chart-last": "row {row}, under the chart {chart}: its last needle by number",
    "at/chart-needles": "row {row}, under the chart {chart}: needles",
    "at/chart-rows": "row {row}, under the chart {chart}: rows",
    "at/chart-stitches": "row {row}, under the chart {chart}: stitches",
    "at/stretch-begins": "where the stretch of the {piece} {edge} begins",
    "at/stretch-ends": "where the stretch of the {piece} {edge} ends",
    "at/gained": "row {row}, stitch gained at needle {needle}",
    "at/lost": "row {row}, stitch lost at needle {needle}",
    "at/edge-rows": "row {row}, {side:term} edge: rows",
    "at/first-row": "the first row",
    "at/hung-back": "row {row}, hung back {side:term} of the centre",
    "at/latched-at-once": "rows of a column latched up at once",
    "at/latched-rows": "rows {first} to {last}, stitches latched up for the {fabric}",
    "at/latched-wales": "row {row}, wales latched up for the {fabric}",
    "at/edging-rows": "rows of the edging at the end, on all its stitches in its own yarn",
    "at/fold": "row {row}, its loops hung up at the fold",
    "at/needles-back": "row {row}, stitches on needles that have come back",
    "at/needles-out": "rows {first} to {last}, stitches on needles out of work",
    "at/of-centre": "row {row}, {side:term} of the centre",
    "at/opening": "the {opening}",
    "at/opening-above": "the {opening}, stitches cast on above it",
    "at/opening-start": "the {opening}, stitches taken at its start",
    "at/other-yarn": "rows in another yarn or tension than their fabric's",
    "at/part-last": "{opening}, {part:term} part, row {row}: last needle by number",
    "at/part-rows": "{opening}, {part:term} part, row {row}: rows",
    "at/parts": "{opening}, row {row}: parts",
    "at/end-rows": "rows at {end}",
    "at/end-first-row": "the first row at {end}",
    "at/end-layers": "row ends at {end}, those of both layers of a fold together",
    "at/edging-end": "the {side:term} end of {edging} of {piece}",
    "at/band-end": "the {end} of {band}",
    "at/rib-of-band": "the rows of its rib, stitches latched up",
    "at/rows": "the rows",
    "at/seam-charts": "the seam of {one} {one_edge} and {other} {other_edge}: charts along it",
    "at/seam-column": "the seam of {one} {one_edge} and {other} {other_edge}: column of {chart} left of {piece}",
    "at/seam-first-row": "the seam of {one} {one_edge} and {other} {other_edge}: first row of {chart}",
    "at/seam-rows": "the seam of {one} {one_edge} and {other} {other_edge}: rows of {chart}",
    "at/slot-cast-on": "the {slot}, needles {first} to {last} at row {row}: stitches cast on again",
    "at/slot-closed": "the {slot}, needles {first} to {last} at row {row}: stitches closed",
    "at/slot-empty": "the {slot}, needles {first} to {last} at row {row}: empty needles",
    "at/slot-on-waste": "the {slot}, needles {first} to {last} at row {row}: stitches on waste yarn",
    "at/slot-row": "the {slot}, needles {first} to {last} at row {row}: row",
    "at/start": "the start",
    "at/wedge-fewest": "{wedge}, {side:term} edge, rows {first} to {last}: fewest rows of those stitches",
    "at/wedge-group": "{wedge}, {side:term} edge, rows {first} to {last}: rows of the {stitches} stitches from needle {needle}",
    "at/wedge-reach": "{wedge}, {side:term} edge, rows {first} to {last}: rows that reach the edge",
    "at/within-row": "row {row}, from its first to its last stitch",
}
"""Where what was knitted is compared with what was counted."""

PHRASES: dict[str, str] = {
    **PLACES,
    "described-here": "{name} is described here",
    "edge-and-copy": "{piece} {edge}{copy:? ({copy})}",
    "edge-free": "the {edge} of the {piece} stays free {glued:?glued and not on the bed|on the bed and not as glued}",
    "falls-apart": "on the bed the garment falls into {parts:part|parts}, and as glued into {glued}",
    "float-at": "at RC {counter}, before row {row}, past needles {needles}{more:? and {more} more}",
    "float-of": "{piece}, {at}",
    "floats-of": "{piece}, {floats} floats: the first {at}; the last at RC {last}",
    "not-folded": "the first row of the edging of {fabric} is not hung up, so that it is not folded",
    "ends-not-sewn": "in {one} to {other} the ends of the {piece}{edging:? {edging}} were not sewn on",
    "ends-sewn-otherwise": "in {one} to {other} the ends of the {piece}{edging:? {edging}} were sewn on, and lie elsewhere",
    "folded": "the {fabric} is folded {front:?front|behind}, where its inside would show",
    "hangs-elsewhere": "the {hung} does not hang on what it is glued to",
    "hangs-on-nothing-glued": "the {hung} hangs on what nothing is glued to",
    "join-done": "`{way} {one:/ then } from its {one_end} to {other:/ then } from its {other_end}`",
    "joined-otherwise": "{one} {other:?to {other}|upon itself} was joined otherwise than it is glued",
    "linked-wrong-sides": "the {piece} and the {other_piece} are linked with their wrong sides together",
    "loops-open": "the open loops of {edge} of the {piece} were taken up by nothing",
    "not-joined": "{one} {other:?to {other}|upon itself} was not joined as it is glued",
    "nothing-more": "nothing more",
    "right-side-in": "of what hangs together with the {piece} some lies with its right side in",
}
