"""Words for yarns, fabrics, edgings, beds and what is joined."""

from __future__ import annotations

from walewright.report.wording import Wording

_EDGE_STITCHES = Wording(
    "{edge} edge stitches",
    labels={
        "edge-stitches": "{edge} edge stitches",
    },
    notes={
        "possible": "0 to {MOST_EDGE} are possible",
    },
)
_STRIPE_ROWS = Wording(
    "a stripe of {rows} rows",
    labels={
        "rows": "{rows} rows",
    },
    notes={
        "possible": "1 to {MOST_STRIPE_ROWS} are possible",
    },
)
WORDINGS: dict[str, Wording] = {
    "absurd-count/edge-stitches": _EDGE_STITCHES,
    "absurd-count/stripe-rows": _STRIPE_ROWS,
    "absurd-swatch/cm": Wording(
        "{what} has {density} to 10 cm",
        labels={
            "in": "{count} in {length}",
        },
        notes={
            "bed-knits-cm": "a bed knits {FEWEST_PER_CM} to {MOST_PER_CM} to 10 cm",
        },
        helps={
            "look-unit-number": "look at the unit, and at which number is which",
        },
    ),
    "absurd-swatch/yarn-stitch": Wording(
        "{what} has {loop} of yarn to a stitch",
        labels={
            "stitch": "{loop} to a stitch",
        },
        notes={
            "bed-lays": "a bed lays {SHORTEST_LOOP_CM} to {LONGEST_LOOP_CM}",
        },
        helps={
            "look-unit-length": "look at the unit: it is the length of one stitch, not of a row",
        },
    ),
    "bad-colour": Wording(
        "`{colour}` is no colour of {owner}",
        labels={
            "colour": "its colour",
        },
        helps={
            "write-six-digits": "write six digits or letters a to f after a #, such as `#23395d`",
        },
    ),
    "bad-machine-fact": Wording(
        "`{key}` wants {wanted}",
        labels={
            "not-that": "not that",
        },
    ),
    "bad-rib": Wording(
        "a latched rib is every 2nd needle or wider apart",
        labels={
            "every": "every {every}",
        },
    ),
    "bad-stretch": Wording(
        "an edge stretches to a share of its length, 100 % or more",
        labels={
            "sort": "{sort}",
        },
        helps={
            "write": "write it as `stretches to 140 %`",
        },
    ),
    "bad-yarn-count/count": Wording(
        "`{text} {system}` is no count of {owner}",
        labels={
            "count": "this count",
        },
        notes={
            "plies-whole-number": "the plies are a whole number from 1 to {MOST_PLIES}",
        },
        helps={
            "write-count-count": "write the count, or the count and the plies with a stroke between, such as `2/28 Nm`",
        },
    ),
    "bad-yarn-count/count-comes-g": Wording(
        "the count of {owner} comes to {whole:.4g} g to 1000 m",
        labels={
            "here": "{text} {system}",
        },
        notes={
            "g-m-can": "{FINEST_TEX:g} to {COARSEST_TEX:g} g to 1000 m can be meant",
        },
        helps={
            "look-system-number": "look at the system, and at which number is which",
        },
    ),
    "border-needs-whole": Wording(
        ("chart `{name}` has {borders} columns beside its repeat, and repeats that are {fit} have no end to put them at"),
        labels={
            "fit": "{fit}",
            "columns-before-repeat": "{before} columns before the repeat, {after} after it",
        },
        helps={
            "write-make-repeat": "write `whole repeats`, or make the repeat the whole chart",
        },
    ),
    "chart-in-own-yarn/chart-knit-yarn": Wording(
        "`{symbol}` of chart `{name}` is knit in `{yarn}`, which is the yarn of the fabric itself",
        labels={
            "in": "in `{yarn}`",
            "here": "`{symbol}`",
        },
        helps={
            "let-symbol-mean": "let that symbol mean `knit`: these stitches keep the yarn of the fabric",
        },
    ),
    "cord-on-child": Wording(
        "a cord is drawn through `{piece}`, and the garment is for children",
        labels={
            "cord": "a cord",
        },
        helps={
            "leave-cord-out": "leave the cord out: a button, a rib or elastic closes as well",
        },
    ),
    "cord-through-nothing": Wording(
        "a cord is drawn through `{name}`, which has nothing to draw it through",
        labels={
            "cord": "a cord",
            "folded-edging-hole": "no folded edging, no hole, no slot",
        },
        helps={
            "give-piece-folded": "give the piece a folded edging, buttonholes or a row of eyelets, or leave the cord out",
        },
    ),
    "edging-charted": Wording(
        "edging `{name}` is in `{name_2}`, which is worked from a chart",
        labels={
            "in": "in `{name_2}`",
            "chart": "chart `{chart}`",
        },
        helps={
            "knit-edging-plain": "knit the edging in a plain fabric, a latched rib or stripes",
        },
    ),
    "edging-first-in-band": Wording(
        "{what} is hung on edges that are there already, and edging `{name}` is knitted first",
        labels={
            "with": "with {name}",
            "knitted-first": "knitted first",
        },
        helps={
            "give-band-edging": "give the band an edging that is added after",
        },
    ),
    "edging-latched": Wording(
        "edging `{name}` is {words} and in a latched rib",
        labels={
            "words": "{words}",
            "latched-rib": "latched rib",
        },
        helps={
            "knit-plain-fabric": "knit it in a plain fabric; a fabric of the same yarn at another tension will do",
        },
    ),
    "edging-only-after": Wording(
        "edging `{name}` is {words}, which is worked on loops that are there already",
        labels={
            "knitted-first": "knitted first",
        },
        helps={
            "let-added-after": "let it be added after",
        },
    ),
    "edging-only-first": Wording(
        "edging `{name}` is {words}, which begins on needles out of work",
        labels={
            "added-after": "added after",
        },
        notes={
            "loops-already-hang": "loops that are there already hang on every needle, and leave none free",
        },
        helps={
            "let-knitted-first": "let it be knitted first, or knit a latched rib or a folded edging there",
        },
    ),
    "edging-without-fold": Wording(
        "edging `{name}` has {said}, and {why}",
        labels={
            "said": "{said}",
        },
        notes={
            "edgings": "edgings with {said}: {kinds}",
        },
        helps={
            "leave-out-make": "leave that out, or make the edging one of these kinds",
        },
    ),
    "hood-on-child": Wording(
        "`{name}` is a hood, and the garment is for children",
        labels={
            "hood": "as hood",
        },
        notes={
            "hood-can-catch": "a hood can catch and hold a child by the neck",
        },
        helps={
            "let-nothing-drawn": "let nothing be drawn through it, and let it be no larger than the head needs",
        },
    ),
    "join-needs-loops": Wording(
        "edges that are {way} have {what}, and `{piece} {edge}` has none",
        labels={
            "here": "{way} here",
            "piece": "piece `{name}`",
        },
        helps={
            "loops-by": "{loops_by}",
        },
    ),
    "joined-to-itself": Wording(
        "{words} is {way} to itself, loop by loop",
        labels={
            "edge-named-twice": "one edge, named twice",
        },
        helps={
            "name-another-edge": ("name another edge on one side of the join, or let the edge be sewn: it is then folded in half"),
        },
    ),
    "loops-do-not-ease": Wording(
        "edges that are {way} meet loop by loop: neither is longer than the other",
        labels={
            "easing": "with easing",
            "longer": "longer by",
        },
        helps={
            "leave-out-let": "leave that out, or let the edges be sewn",
        },
    ),
    "mirror-other-fabric": Wording(
        "a mirror image is knitted in the fabric of its model, `{fabric}`",
        labels={
            "in": "in `{fabric_2}`",
            "in-2": "in `{fabric}`",
        },
    ),
    "mirror-ring": Wording(
        "piece `{of}` is in the end a mirror of itself",
        labels={
            "mirror": "mirror of `{of}`",
        },
    ),
    "mirror-with-shape": Wording(
        "piece `{name}` is the mirror of `{of}` and has a shape of its own",
        labels={
            "own": "its own",
            "mirror": "mirror of `{of}`",
        },
    ),
    "missing-argument": Wording(
        "shape `{name}` needs {missing:and}, and this use does not say it",
        labels={
            "no": "no {join}",
            "shape": "shape `{name}`",
        },
    ),
    "missing-part/does-say-how": Wording(
        "{what} does not say how far its {word} buttonhole is from the end",
        labels={
            "no": "no `{word}`",
        },
        helps={
            "add-such": "add it, such as `2 cm {word}`",
        },
    ),
    "missing-part/edging-does-say": Wording(
        "edging `{name}` does not say how deep it is",
        labels={
            "depth": "no depth",
        },
        helps={
            "add-such-only": "add it, such as `3 cm deep`; only a chained edging has none",
        },
    ),
    "missing-part/has-no": Wording(
        "{owner} has no {join}",
        labels={
            "fabric": "this fabric",
        },
    ),
    "missing-part/machine-does-say": Wording(
        "machine `{name}` does not say its {lacking:and}",
        labels={
            "bed-own": "a bed of its own",
        },
        notes={
            "shipped-machines": "shipped machines: {profiles}",
        },
    ),
    "missing-part/neither-length-nor": Wording(
        "{owner} has neither a length nor a count",
        labels={
            "yarn": "this yarn",
        },
        helps={
            "write-what-ball": "write what a ball weighs and how long it is, or its count",
        },
    ),
    "missing-part/stripes-need-yarn": Wording(
        "stripes need a yarn and rows at least",
        labels={
            "stripe": "no stripe",
        },
    ),
    "no-such-edge": Wording(
        "`{amount}` names a piece and none of its edges",
        labels={
            "edge": "which edge?",
        },
    ),
    "no-such-tool": Wording(
        "shaping {depth} in needs a transfer tool of {depth} prongs",
        labels={
            "fashioned": "fashioned {depth} in",
            "bed": "this bed",
        },
        notes={
            "tools-hand-prongs": "the tools at hand have {prongs} prongs",
        },
    ),
    "not-positive/edge-stitches": _EDGE_STITCHES,
    "not-positive/stripe-rows": _STRIPE_ROWS,
    "odd-needles": Wording(
        "a bed of {numbers} needles has no centre mark between two needles",
        labels={
            "odd-number": "an odd number",
        },
    ),
    "reserved-name/what-machine-s": Wording(
        "`{name}` is what the machine's own helping yarn is called on the page",
        labels={
            "yarn-garment": "a yarn of the garment",
        },
        helps={
            "call-another-name": "call it by another name, such as `{name}_yarn`",
        },
    ),
    "table-rows-disagree": Wording(
        "rows of the table `{table}` contradict each other in {among}",
        notes={
            "cap-less-armhole": "a cap is less than {HIGHEST_CAP:g} of the armhole's depth high, and grows with the sizes",
        },
        helps={
            "choose-them-counts": (
                "choose which of them counts and leave the others out, or give your own figures: `, {among_2} ... cm`"
            ),
        },
    ),
    "unlikely-swatch/swatch-fabric-weighs": Wording(
        "the swatch of fabric `{name}` weighs {swatch_grams}, where about {about} g are to be expected",
        labels={
            "yarn-stitch-g": "{loop} of yarn to a stitch, {swatch_grams_2:.0f} g to the square metre",
        },
        notes={
            "plain-knitting-dense": (
                "in `{name_2}` plain knitting so dense takes {plain_cm} to a stitch and weighs {usual:.0f} g to the square metre"
            ),
        },
        helps={
            "look-weight-unit": "look at the weight and its unit, and at whether that block was weighed and no more",
        },
    ),
    "unlikely-swatch/swatch-fabric-yarn": Wording(
        "the swatch of fabric `{name}` has {loop_cm} of yarn to a stitch, where about {plain_cm} are to be expected",
        labels={
            "cm": "{density} to 10 cm",
        },
        helps={
            "look-unit-length": "look at the unit: it is the length of one stitch, not of a row",
        },
    ),
    "unlikely-yarn": Wording(
        "yarn `{name}`, {ball}, is too {thick:?thick|thin} for the swatch of fabric `{name_2}`",
        notes={
            "many-stitches-rows": (
                "so many stitches and rows to 10 cm are knitted in yarns of about {least} to {most} to {ball_grams}"
            ),
            "tightness-factor-would": (
                "its tightness factor would be {cover:.2g}; {USUAL_COVER} to {USUAL_COVER_2} is usual in plain knitting"
            ),
        },
        helps={
            "look-what-ball": ("look at what a ball weighs, at its length and unit, and at the swatch's stitches, rows and size"),
        },
    ),
}
