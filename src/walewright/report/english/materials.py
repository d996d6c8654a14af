"""Words for yarns, fabrics, edgings, beds and what is joined."""

from __future__ import annotations

from walewright.report.wording import Wording

_EDGE_STITCHES = Wording(
    "{edge} edge stitches", labels={"edge": "{edge} edge stitches"}, notes={"possible": "0 to {most} are possible"}
)
_STRIPE_ROWS = Wording("a stripe of {rows} rows", labels={"rows": "{rows} rows"}, notes={"possible": "1 to {most} are possible"})
WORDINGS: dict[str, Wording] = {
    "absurd-count/edge-stitches": _EDGE_STITCHES,
    "absurd-count/stripe-rows": _STRIPE_ROWS,
    "absurd-count/strands": Wording(
        "yarn `{yarn}` is {count} strands together",
        labels={"strands": "{count} strands"},
        notes={"possible": "2 to {most} are possible"},
        helps={"leave-some-out": "leave some of them out"},
    ),
    "absurd-swatch/density": Wording(
        "{what} has {density} to 10 cm",
        labels={"in": "{count} in {length}"},
        notes={"possible": "a bed knits {least} to {most} to 10 cm"},
        helps={"look": "look at the unit, and at which number is which"},
    ),
    "absurd-swatch/loop": Wording(
        "{what} has {loop} of yarn to a stitch",
        labels={"loop": "{loop} to a stitch"},
        notes={"possible": "a bed lays {least} to {most}"},
        helps={"look": "look at the unit: it is the length of one stitch, not of a row"},
    ),
    "bad-colour": Wording(
        "`{colour}` is no colour of {owner}",
        labels={"colour": "its colour"},
        helps={"write": "write six digits or letters a to f after a #, such as `#23395d`"},
    ),
    "fibre-of-strands": Wording(
        "`{name}` is several yarns together, and each has its own fibre",
        labels={"fibre": "said of all"},
        helps={"at-the-strands": "say the fibre at each yarn that is held"},
    ),
    "unknown-fibre": Wording(
        "`{name}` is no fibre that is known here",
        labels={"fibre": "its fibre"},
        helps={"one-of": "write one of {known:or}, or several with + between", "did-you-mean": "did you mean `{near}`?"},
    ),
    "bad-machine-fact": Wording(
        "`{key}` wants {wanted}", labels={"not-that": "not that"}, helps={"such-as": "write it as in `{example}`"}
    ),
    "bad-rib": Wording(
        "a latched rib is every 2nd needle or wider apart",
        labels={"every": "every {every}", "every-needle": "every needle"},
        helps={"wider": "write `every 2nd needle`, or a higher number"},
    ),
    "bad-stretch": Wording(
        "an edge stretches to a share of its length, 100 % or more",
        labels={"length": "a length", "less": "less than its own length"},
        helps={"write": "write it as `stretches to 140 %`"},
    ),
    "bad-yarn-count/out-of-range": Wording(
        "the count of {owner} comes to {tex:.4g} g to 1000 m",
        labels={"here": "{text} {system}"},
        notes={"possible": "{finest:g} to {coarsest:g} g to 1000 m can be meant"},
        helps={"look": "look at the system, and at which number is which"},
    ),
    "bad-yarn-count/unreadable": Wording(
        "`{text} {system}` is no count of {owner}",
        labels={"count": "this count"},
        notes={"plies": "the plies are a whole number from 1 to {most}"},
        helps={"write": "write the count, or the count and the plies with a stroke between, such as `2/28 Nm`"},
    ),
    "border-needs-whole": Wording(
        "chart `{chart}` has {borders:column|columns} beside its repeat, and repeats that are {fit:term} have no end to put "
        "them at",
        labels={"fit": "{fit:term}", "columns": "{before:column|columns} before the repeat, {after} after it"},
        helps={"whole": "write `whole repeats`, or make the repeat the whole chart"},
    ),
    "fabric-not-like/own-lines": Wording(
        "a fabric like `{model}` has nothing of its own but notes",
        labels={"own": "of its own", "like": "like `{model}`"},
        helps={"in-full": "write the fabric in full, with its stitch and a swatch of its own"},
    ),
    "fabric-not-like/ring": Wording(
        "`{ring:/` is like `}` is like itself in the end",
        labels={"like": "like `{model}`"},
        helps={"in-full": "write one of these fabrics in full"},
    ),
    "fabric-not-like/stripes": Wording(
        "`{model}` is in stripes, which name their own yarns",
        labels={"like": "in another yarn", "stripes": "the stripes"},
        helps={"in-full": "write the stripes in full, in their yarns"},
    ),
    "swatch-of-other-yarn": Wording(
        "`{fabric}` is in `{yarn}`, and its swatch in `{other}`, which is not as thick",
        labels={"in": "{tex:.0f} g to 1000 m", "swatched": "{its:.0f} g to 1000 m"},
        helps={"swatch": "write the fabric in full, with a swatch of its own"},
    ),
    "cord-on-child": Wording(
        "a cord is drawn through `{piece}`, and the garment is for children",
        labels={
            "cord": "a cord",
            "sizes-from": "sizes from the table `{table}`",
            "size-of-child": "`{size}` is a size for children",
        },
        helps={"leave-out": "leave the cord out: a button, a rib or elastic closes as well"},
    ),
    "cord-through-nothing": Wording(
        "a cord is drawn through `{name}`, which has nothing to draw it through",
        labels={"cord": "a cord", "folded-edging-hole": "no folded edging, no hole, no slot"},
        helps={"give-piece-folded": "give the piece a folded edging, buttonholes or a row of eyelets, or leave the cord out"},
    ),
    "edging-charted": Wording(
        "edging `{edging}` is in `{fabric}`, which is worked from a chart",
        labels={"in": "in `{fabric}`", "chart": "chart `{chart}`"},
        helps={"plain": "knit the edging in a plain fabric, a latched rib or stripes"},
    ),
    "along-later-piece/band": Wording(
        "band `{band}` lies along an end of `{model}`, which is not knitted before it",
        labels={"along": "along `{model} {edge}`", "band": "band `{model}`"},
        helps={"write-before": "write band `{model}` before band `{band}`"},
    ),
    "buttonholes-off-band": Wording(
        "buttonholes of band `{band}` lie along edges that it {twice:?has more than once|does not lie along so}",
        labels={"along": "along these"},
        notes={"band-along": "from its left end to its right one it lies along {along}"},
        helps={
            "stretch": "name one of these edges, or some that follow each other, in the same order",
            "twice": "name more of its edges, so that there is one such place",
        },
    ),
    "edging-first-in-band": Wording(
        "{band} is hung on edges that are there already, and edging `{edging}` is knitted first",
        labels={"with": "with {edging}", "knitted-first": "knitted first"},
        helps={"after": "give the band an edging that is added after"},
    ),
    "edging-first-at-end": Wording(
        "piece `{piece}` ends with edging `{edging}`, which is knitted first",
        labels={"with": "with {edging}", "knitted-first": "knitted first"},
        helps={"after": "end it with an edging that is added after: it is knitted on the stitches of the last row"},
    ),
    "edging-in-parts": Wording(
        "piece `{piece}` is to end with edging `{edging}`, and `{opening}` parts it to its top, so that it has no one last row",
        labels={"with": "with {edging}", "open": "open to `{top}`"},
        helps={
            "bands": "end it on waste yarn or cast off, and knit a band along `shoulder_left` and one along `shoulder_right`",
            "end-below": "let `{opening}` end at a level below",
        },
    ),
    "edging-latched": Wording(
        "edging `{edging}` is {made_as} and in a latched rib",
        labels={"made-as": "{made_as}", "latched-rib": "latched rib"},
        helps={"plain": "knit it in a plain fabric; a fabric of the same yarn at another tension will do"},
    ),
    "edging-left-open": Wording(
        "edging `{edging}` ends on waste yarn, and nothing takes up its loops at {place}",
        labels={"left": "left on waste yarn"},
        helps={"cast-off-or-graft": "cast it off chain or sewn, or graft {place} to another edge"},
    ),
    "edging-only-after": Wording(
        "edging `{edging}` is {made_as}, which is worked on loops that are there already",
        labels={"knitted-first": "knitted first"},
        helps={"after": "let it be added after"},
    ),
    "edging-only-first": Wording(
        "edging `{edging}` is {made_as}, which begins on needles out of work",
        labels={"added-after": "added after"},
        notes={"hanging": "loops that are there already hang on every needle, and leave none free"},
        helps={"first": "let it be knitted first, or knit a latched rib or a folded edging there"},
    ),
    "edging-without-fold/fold-row": Wording(
        "edging `{edging}` has a fold row, and it is not folded",
        labels={"here": "a fold row"},
        notes={"kinds": "edgings with a fold row: {kinds}"},
        helps={"leave-out": "leave that out, or make the edging one of these kinds"},
    ),
    "edging-without-fold/inside": Wording(
        "edging `{edging}` has a tension inside, and it has no inside",
        labels={"here": "a tension inside"},
        notes={"kinds": "edgings with a tension inside: {kinds}"},
        helps={"leave-out": "leave that out, or make the edging one of these kinds"},
    ),
    "edging-without-fold/picot": Wording(
        "edging `{edging}` has a fold row, and it folds along its eyelets",
        labels={"here": "a fold row"},
        notes={"kinds": "edgings with a fold row: {kinds}"},
        helps={"leave-out": "leave that out, or make the edging one of these kinds"},
    ),
    "hood-on-child": Wording(
        "`{piece}` is a hood, and the garment is for children",
        labels={
            "hood": "as hood",
            "sizes-from": "sizes from the table `{table}`",
            "size-of-child": "`{size}` is a size for children",
        },
        notes={"catches": "a hood can catch and hold a child by the neck"},
        helps={"draw-nothing": "let nothing be drawn through it, and let it be no larger than the head needs"},
    ),
    "join-needs-loops": Wording(
        "edges that are {way:term} have {closed_too:?stitches|open loops}, and `{piece} {edge}` has none",
        labels={"here": "{way:term} here", "piece": "piece `{piece}`"},
        helps={
            "begin-on-waste": "begin `{piece}` on waste yarn, or let the edges be sewn",
            "begin-without-edging": "begin `{piece}` on waste yarn, without an edging, or let the edges be sewn",
            "end-on-waste-or-cast-off": "end `{piece}` on waste yarn or cast off, or let the edges be sewn",
            "end-on-waste": "end `{piece}` on waste yarn, or let the edges be sewn",
            "sew": "let the edges be sewn",
        },
    ),
    "join-ratio/beside": Wording(
        "rows that are joined to stitches one by one are not measured, matched or drawn in as well",
        labels={"ratio": "so many rows to so many stitches", "beside": "and this"},
        helps={"leave-one": "leave one of the two out"},
    ),
    "join-ratio/numbers": Wording(
        "{rows} {rows:=row|rows} cannot be joined to {stitches} {stitches:=stitch|stitches}",
        labels={"ratio": "1 to {most} of each"},
        helps={"numbers": "write the ratio in small numbers, such as `4 rows to 3 stitches`"},
    ),
    "joined-to-itself": Wording(
        "{edges} is {way:term} to itself, loop by loop",
        labels={"twice": "one edge, named twice"},
        helps={"another": "name another edge on one side of the join, or let the edge be sewn: it is then folded in half"},
    ),
    "loops-do-not-ease": Wording(
        "edges that are {way:term} meet loop by loop: neither is longer than the other",
        labels={"easing": "with easing", "longer": "longer by"},
        helps={"leave-out": "leave that out, or let the edges be sewn"},
    ),
    "like-half-edge": Wording(
        "`{model}` gives the width of both edges at `{level}`, and one edge alone is written here",
        labels={"one": "one edge", "both": "both edges of `{model}`"},
        helps={"other-edge": "write the run of the other edge to `{level}` as well"},
    ),
    "like-ring": Wording(
        "piece `{piece}` is in the end like itself",
        labels={"like": "{ring:and`} are like each other"},
        helps={"in-full": "describe one of these pieces in full"},
    ),
    "mirror-other-fabric": Wording(
        "a mirror image is knitted in the fabric of its model, `{fabric}`",
        labels={"own": "in `{own_fabric}`", "model": "in `{fabric}`"},
        helps={"same-fabric": "write `in {fabric}`, or describe the piece in full"},
    ),
    "mirror-ring": Wording(
        "piece `{piece}` is in the end a mirror of itself",
        labels={"mirror": "mirror of `{piece}`"},
        helps={"in-full": "describe one of these pieces in full"},
    ),
    "missing-argument": Wording(
        "shape `{used}` needs {missing:and`}, and this use does not say it",
        labels={"lacking": "no {missing:/ and no }", "shape": "shape `{used}`"},
        helps={"say-it": "name it in this line, with its value behind it"},
    ),
    "missing-part/ball": Wording(
        "{owner} has neither a length nor a count",
        labels={"here": "this yarn"},
        helps={"write": "write what a ball weighs and how long it is, or its count"},
    ),
    "missing-part/buttonhole": Wording(
        "{band} does not say how far its {which:term} buttonhole is from the end",
        labels={"none": "no `{which}`"},
        helps={"add": "add it, such as `2 cm {which}`"},
    ),
    "missing-part/depth": Wording(
        "edging `{edging}` does not say how deep it is",
        labels={"none": "no depth"},
        helps={"add": "add it, such as `3 cm deep`; only a chained edging has none"},
    ),
    "missing-part/fabric": Wording("{owner} has no {lacking:term/ and no }", labels={"here": "this fabric"}),
    "missing-part/machine": Wording(
        "machine `{machine}` does not say its {lacking:and}",
        labels={"own-bed": "a bed of its own"},
        notes={"shipped": "shipped machines: {shipped}"},
    ),
    "missing-part/stripes": Wording("stripes need a yarn and rows at least", labels={"none": "no stripe"}),
    "next-of-one/knitted-once": Wording(
        "each is joined to {next:?the next|its own}, and piece `{piece}` is knitted once",
        labels={"next": "each to {next:?the next|its own}", "once": "knitted once"},
        helps={"leave-out-or-several": "leave that out, or knit the piece several times (`, knit 4`)"},
    ),
    "next-of-one/two-pieces": Wording(
        "each is joined to {next:?the next|its own}, and `{piece}` and `{other}` are not knitted equally often",
        labels={"next": "each to {next:?the next|its own}"},
        helps={"leave-out-or-several": "leave that out, or knit the piece several times (`, knit 4`)"},
    ),
    "no-such-edge/piece-alone": Wording(
        "`{measured}` names a piece and none of its edges",
        labels={"edge": "which edge?"},
        helps={"name-an-edge": "write one of its edges behind it, as in `{measured} start`"},
    ),
    "no-such-edge/turned-in": Wording(
        "`{piece} {edge}` lies behind the work: a facing is turned in as a whole",
        labels={"here": "picked up along here"},
        helps={"other-edging": "leave it out, or give it an edging that is not turned in"},
    ),
    "no-such-tool/prongs": Wording(
        "shaping {inset} in needs a transfer tool of {inset} prongs",
        labels={"fashioned": "fashioned {inset} in", "bed": "this bed"},
        notes={"at-hand": "the tools at hand have {prongs} prongs"},
        helps={"other-tool": "shape fewer stitches in, or write the tool into the bed if you have it"},
    ),
    "not-positive/edge-stitches": _EDGE_STITCHES,
    "not-positive/stripe-rows": _STRIPE_ROWS,
    "odd-needles": Wording(
        "a bed of {needles} needles has no centre mark between two needles",
        labels={"odd": "an odd number"},
        helps={"even": "write an even number, without the last needle"},
    ),
    "pick-up-ratio": Wording(
        "{band} cannot be picked up in {stitches} stitches to {rows} rows",
        labels={"ratio": "of each row one stitch at most"},
        helps={"fewer": "write a stitch or more to as many rows or more, {most} at most, such as `3 stitches to 4 rows`"},
    ),
    "reserved-name/yarn": Wording(
        "`{name}` is what the machine's own helping yarn is called on the page",
        labels={"own": "a yarn of the garment"},
        helps={"rename": "call it by another name, such as `{name}_yarn`"},
    ),
    "table-rows-disagree": Wording(
        "rows of the table `{table}` contradict each other in {among}",
        notes={
            "leaves": (
                "{size}: centre_back_neck_to_wrist {reach} less half of cross_back {back} less arm_length_to_underarm "
                "{seam} leaves {cap} for a cap, beside armhole_depth {depth}"
            ),
            "highest": "a cap is less than {highest:g} of the armhole's depth high, and grows with the sizes",
        },
        helps={"choose": "choose which of them counts and leave the others out, or give your own figures: `, {last} ... cm`"},
    ),
    "unlikely-swatch/loop": Wording(
        "the swatch of fabric `{fabric}` has {loop} of yarn to a stitch, where about {plain_loop} are to be expected",
        labels={"density": "{density} to 10 cm"},
        helps={"look": "look at the unit: it is the length of one stitch, not of a row"},
    ),
    "unlikely-swatch/weight": Wording(
        "the swatch of fabric `{fabric}` weighs {grams}, where about {expected} g are to be expected",
        labels={"loop": "{loop} of yarn to a stitch, {dense:.0f} g to the square metre"},
        notes={
            "plain": (
                "in `{yarn}` plain knitting of this density takes {plain_loop} to a stitch and weighs {usual:.0f} g to the "
                "square metre"
            )
        },
        helps={"look": "look at the weight and its unit, and at whether that block was weighed and no more"},
    ),
    "unlikely-yarn": Wording(
        "yarn `{yarn}`, {grams} = {metres}, is too {thick:?thick|thin} for the swatch of fabric `{fabric}`",
        labels={"ball": "{grams} = {metres}: {tex} g to 1000 m", "swatch": "`{fabric}` in it: {density} to 10 cm"},
        notes={
            "metres-usual": ("this many stitches and rows to 10 cm are knitted in yarns of about {least} to {most} to {grams}"),
            "tightness": ("its tightness factor would be {cover:.2g}; {usual_least} to {usual_most} is usual in plain knitting"),
        },
        helps={
            "metres": "write `{length:source}`, if the ball has metres where `{unit}` is written",
            "look": "look at what a ball weighs, at its length and unit, and at the swatch's stitches, rows and size",
        },
    ),
}
