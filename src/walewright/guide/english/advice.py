"""The house's own words to the knitter: how to read the pages, what to do when things go wrong, safety.

Trade advice is common practice where no source is named.
"""

from __future__ import annotations

from walewright.guide.model import Advice

LINES = {
    "reading": "How to read the pattern",
    "reading/order-of-sizes": "Figures for the sizes always stand in the same order, the smallest first and the others in "
    "brackets. A figure alone is for every size, and the letter of a needle, L or R, goes for those behind it too. Mark yours "
    "throughout before you begin.",
    "reading/dashes": "A dash in the brackets, or a heading that names sizes, means that the others leave this out.",
    "reading/counter": "RC is the row counter. “RC 84” means that 84 rows are counted: what is written there is done after row "
    "84 and before the next row.",
    "reading/tick": "Tick each line off when it is done.",
    "reading/tick/text": "Before each step stands a pair of brackets to tick it off: square ones where hands or carriage work at "
    "the stitches, round ones before what else is done by hand, and as many pairs as the piece is knitted times.",
    "reading/again": "The steps are numbered within each piece. “As the back, steps 1 to 6”: work those steps of the back here, "
    "with the figures of your size, and tick them off here. What the bar beside them says must be true after the last.",
    "reading/again/text": "The steps are numbered within each piece. “As the back, steps 1 to 6”: work those steps of the back "
    "here, with the figures of your size, and tick them off here. What stands behind them must be true after the last.",
    "reading/mirrored": "“As steps 10 to 14, mirrored”: work those steps once more, left for right, right for left and COL for "
    "COR; nothing need wait this time.",
    "reading/bar": "Lines with a bar are checks: they say what must now be true. If it is not, stop and look for the reason.",
    "reading/bar/text": "Stitches, RC and carriage without a verb, such as “84 sts, RC 92, COR”, are a check: they say what must "
    "now be true. If it is not, stop and look for the reason.",
    "reading/left-and-right": "Left and right are those of the machine as you sit before it. Needles are counted outwards from "
    "the centre mark: L 1, L 2 to the left, R 1, R 2 to the right.",
    "reading/purl-side": "The purl side faces you; the knit side hangs away from you.",
    "reading/edges": "Left and right of a piece, of its edges, shoulders and armholes, are those that it had on the bed, not the "
    "wearer’s; the name of a whole piece, as of a left front, is the wearer’s. Worn with the knit side out, a front has its left "
    "edge at the wearer’s left and a back has it at the wearer’s right: so the left edge of a back meets the right edge of a "
    "front, and the right shoulder of a back is the wearer’s left one.",
    "reading/edges/pieces": "Left and right of a piece and of its edges are those that it had on the bed, not the wearer’s; left "
    "or right in the name of a whole piece is the wearer’s.",
    "reading/edges/one-piece": "Left and right of the piece and of its edges are those that it had on the bed, not the wearer’s.",
    "reading/without-knitting": "“Without knitting”: take the yarn out of the feeder first. Then set the carriage to slip, if it "
    "can; or lift it off and put it on at the other side, if the bed allows; or pull every needle with a loop right out and set "
    "it to hold. With no loop in work it can simply cross, set to hold if any are held. Set to knit without yarn it drops "
    "the piece. What the row counter has "
    "counted by it, set back.",
    "reading/without-knitting/slip": "“Without knitting”: take the yarn out of the feeder first. With no loop in work the "
    "carriage can "
    "simply cross, set to hold if any are held; past loops in work it is set to slip, and afterwards as it was. Set to knit "
    "without yarn it drops the piece. What the row counter has "
    "counted by it, set back.",
    "reading/without-knitting/lift": "“Without knitting”: take the yarn out of the feeder first. With no loop in work the "
    "carriage can "
    "simply cross, set to hold if any are held; past loops in work it is lifted off and put on at the other side. Set to "
    "knit without yarn it drops the piece. "
    "What the row counter has counted by it, set back.",
    "reading/without-knitting/hold": "“Without knitting”: take the yarn out of the feeder first. With no loop in work the "
    "carriage can "
    "simply cross, set to hold if any are held; past loops in work it is set to hold, every needle with a loop right out, "
    "and those that were in work go back "
    "afterwards, their loops in the hooks. Set to knit without yarn it drops the piece. What the row counter has counted by it, "
    "set back.",
    "reading/without-knitting/none": "“Without knitting”: take the yarn out of the feeder first, and see that no needle with a "
    "loop is "
    "in work: the carriage knits whatever is, and without yarn it drops the piece. What the row counter has counted by it, set "
    "back.",
    "reading/brackets": "Words in square brackets are one round of work: do it as often as is said behind it, then go on.",
    "reading/together": "“At the same time”: the lines that follow, one for each edge, all begin at the same row. Knit each "
    "row once; after each row do what any of the lines asks for there: first wraps, then what returns to work, then what "
    "goes into hold, then the rest, each in the order of the lines. Words in square brackets are one round of work. For each "
    "line write the rows of your size into the margin first, and tick them off as you come to them.",
    # Care: common practice where nothing is on the ball.
    "care": "Care",
    "care/label": "Wash the swatch first, as the label on the ball says; where it says nothing, as is said here (common practice).",
    "care/hair": "{fibres:and}: by hand in lukewarm water, at most 30 °C, with a mild soap for wool. Do not rub, wring or hang: "
    "it felts and grows. Press the water out in a towel and dry flat, away from heat and sun.",
    "care/regenerated": "{fibres:and}: weak while wet. Wash at most at 30 °C, lift it with both hands, press the water out in a "
    "towel and dry flat.",
    "care/plastic": "{fibres:and}: wash at 30 °C and dry flat. No iron and no steam, while blocking as well: heat flattens it for "
    "good.",
    "care/plant": "{fibres:and}: wash at most at 40 °C, pull it into shape and dry flat. It may shrink in its first wash, and the "
    "swatch shows by how much.",
    # Words of the trade, as they are used here.
    "word/in-work": "in work",
    "meaning/in-work": "needles forward enough that the carriage knits them; all others are out of work",
    "word/waste-yarn": "waste yarn",
    "meaning/waste-yarn": "yarn that holds open loops for a while, knitted for a few rows and unravelled afterwards",
    "word/held": "held",
    "meaning/held": "needles pushed right out, which the carriage passes without knitting; their loops stay",
    "word/waiting": "waiting",
    "meaning/waiting": "a part whose stitches stay on needles until its turn, held or on ravel cord; not those on waste yarn",
    "word/wrap": "wrap",
    "meaning/wrap": "lay the yarn under a held needle, so that no hole is left where a row turns",
    "word/carriage-side": "carriage side",
    "meaning/carriage-side": "the end of the row where the carriage and its yarn are",
    "word/marker": "marker thread",
    "meaning/marker": "a short end in another colour through the edge stitch, to find the place again",
    "word/tail": "tail",
    "meaning/tail": "the end of yarn that is left long, to sew or cast off with",
    "word/link": "link",
    "meaning/link": "hang two edges on the same needles, knit them together and cast off",
    "word/times": "times in all",
    "meaning/times": "how often the words before it are worked, the first time counted too",
    # For children: figures as read in the sources named in each line; "common practice" where there is none.
    # What is measured is the rib itself.
    "swatch/rib": "A latched rib: now drop its columns and latch them up.",
    "swatch/rib-in-stages": "A latched rib: at each {most} rows of the block, and after its last one, drop its columns and latch "
    "them up, only as deep as they are not latched yet: dropped all at once they would hang below comb and weights.",
    "swatch/chart": "A fabric with a chart: work the chart over the whole block, from its first row up, repeat beside repeat.",
    "children": "If a child wears it",
    "children/small-parts": "For children of under 3 years: buttons, beads and all that can come off are small parts that can "
    "choke. In the United States, articles for them may not have parts, nor lose parts in use, that fit wholly into the test "
    "cylinder of 16 CFR 1501. Sew what you must use through and through with strong thread, pull at it, and look again after "
    "each wash.",
    "children/no-cords": "No cords or drawstrings at the hood, head or neck of anything for a child up to 7 years or 134 cm, "
    "and none that are tied behind the neck (EN 14682, as told by the Finnish Safety and Chemicals Agency); from 7 to 14 "
    "years none with free ends there. In the United States none at hood and neck of outerwear in sizes 2T to 12 (CPSC; ASTM "
    "F1816-97; 16 CFR 1120.3).",
    # The scope of EN 14682:2014, standards.iteh.ai/catalog/standards/cen/71dcd208-3fb7-48ef-aa21-ad8abdbd6d94/en-14682-2014, and
    # that of its draft of 2023, din.de/en/getting-involved/standards-committees/textilnorm/projects/wdc-proj:din21:306662593.
    "children/apart": "Hats, gloves and scarves are outside the rules of EN 14682 on cords, and its draft of 2023 asks "
    "that they be judged by the same principles: no cord that ties them on or goes round the neck, none from one of a pair "
    "to the other, and no end that can catch (common practice).",
    # Health Service Executive, Ireland, "Child Safety - Safe Sleep for your Baby" (hse.ie); NHS, "Safer sleep"
    # (suttonhealthandcare.nhs.uk/safer-sleep).
    "children/asleep": "Where a baby sleeps, face and head stay uncovered and nothing loose or fluffy lies in the cot; a thin "
    "blanket is tucked in firmly, no higher than the shoulders (Health Service Executive of Ireland; NHS). Ask your nurse or "
    "doctor.",
    "children/drawstrings": "At waist and hem, of outerwear in sizes 2T to 16, no more than 3 in (7.6 cm) of a drawstring "
    "outside its channel with the garment at its full width, no toggles or knots at free ends, and a string in one piece "
    "sewn fast (CPSC).",
    "children/loose-threads": "No loose threads, long floats or open loops inside: they can go tight round fingers and toes. "
    "Turn the garment out and look before it is worn first, and after each wash (common practice).",
    "children/nightwear": "Nightwear for children has rules of its own on burning: in the United States 16 CFR 1615 and 1616, "
    "with garments for 9 months or less and tight-fitting ones left out.",
    "children/rules-differ": "Rules differ from place to place and change. Those of the place where you give or sell the "
    "garment come before anything said here.",
    "children/hood": "This garment has a hood: draw nothing through its edge, and see that nothing of it can catch.",
    "children/cord": "This garment has a cord: see that it is allowed where and for whom it is made, and leave it out where it "
    "is not.",
}

ADVICE = {
    # When things go wrong: common practice in words of our own.
    "jam": Advice(
        "The carriage jams",
        (
            "Do not force it. Free it as the machine’s manual says and take it back to the side where the row began.",
            "Undo what was knitted of that row and see that every loop lies in its hook, or behind an open latch.",
            "Set the row counter back by the row, and knit it again. Look for the cause: a bent needle, a closed latch, yarn "
            "caught at the mast, too little weight at the edge.",
        ),
        ordered=True,
    ),
    "dropped": Advice(
        "A stitch is dropped",
        (
            "Catch the loop with the latch tool at once; hang a weight below it so that it runs no further.",
            "Work it up again through the bar of each row that it missed, from the purl side, and hang it on its needle.",
            "Count the needles with loops against the next line that says how many there must be.",
        ),
        ordered=True,
    ),
    "row-count": Advice(
        "The row count is in doubt",
        (
            "Do not trust the counter after a jam or an interruption: it counts crossings, not rows.",
            "Count the rows from the last marked row on the purl side, and set the counter to what you have counted.",
            "Compare the carriage’s side with the next line that gives row and side. An even number of rows after such a line it "
            "is at the side that the line names; after an odd number opposite. A half that was begun with the counter set back has "
            "lines of its own.",
        ),
    ),
    "length": Advice(
        "The piece is too long or too short",
        (
            "Fabric on the machine is stretched by the weights: measure it only after it has rested.",
            "Keep to the rows. If the tension is right, so are they; seams match because both pieces have the same rows.",
        ),
    ),
    # Cautions, restated from the health and safety page of
    # https://kcguild.org.uk/sharing-knowledge/machine-knitting/using-your-knitting-machine/health-and-safety-machine-knit/;
    # covered scissors from https://lib.zlibraries.com/text/mr5xoo1p3p4k/machine-knitting-designing-with-colour/10;
    # rest and cleaning are common practice.
    "safety": Advice(
        "Working safely",
        (
            "Before each session see that the clamps are firm: they loosen as you knit. Lift a bed with care, and let nobody "
            "walk behind it.",
            "Tie back hair, and keep sleeves, cords and jewellery away from the carriage.",
            "Hooks and posts are sharp and hard: mind fingers and face when you bend over the bed. The wires of a yarn mast "
            "spring back when yarn runs out or breaks.",
            "Weights are heavy and fall on feet. Keep scissors at the machine with their points covered, and yarn and cables "
            "off the floor where you walk.",
            "Do not leave children alone with the machine.",
            "Rest wrists and shoulders. Clean with spirit only away from flames and with a window open.",
            "The machine’s manual and the rules of the place where you work or sell come before anything said here.",
        ),
    ),
    # For a small size of a garment that no table of children stands behind; sources as for children.
    "hood": Advice(
        "If a child wears it",
        (
            "This garment has a hood and is sized for grown people. If you make it for a child: no cord or drawstring at "
            "hood, head or neck up to 7 years or 134 cm, and from 7 to 14 years none with free ends there (EN 14682, as told "
            "by the Finnish Safety and Chemicals Agency); in the United States none at hood and neck of outerwear in sizes "
            "2T to 12 (16 CFR 1120.3).",
            "For a child, draw nothing through the edge of the hood, and see that nothing of it can catch.",
        ),
    ),
    # Common practice; block sizes and the mean of three measurements as in published how-to pages of the trade.
    "swatch": Advice(
        "Knit the swatch first",
        (
            "Cast on at least 10 stitches more than the block that is measured, and knit about 15 rows of waste yarn as thick as "
            "the yarn and in another colour.",
            "Knit the rows of the block in the yarn. Mark the block’s sides with threads on the needles just outside it.",
            "Knit 15 rows of the waste yarn and take it all off the bed. Let it rest overnight, and wash it as the garment will "
            "be washed.",
            "Lay it flat without pulling. Measure between the marks three times each way and take the mean.",
            "Too many stitches or rows: loosen the tension and knit another. Too few: tighten it. The number on the dial is only "
            "a start. Do not begin the garment before both figures agree.",
        ),
        ordered=True,
    ),
    "swatch/plate": Advice(
        "Knit the swatch first",
        (
            "Cast on at least 10 stitches more than the block that is measured, and knit about 15 rows of waste yarn as thick as "
            "the yarn and in another colour.",
            "Knit the rows of the block in the yarn. Mark the block’s sides with threads on the needles just outside it.",
            "Knit 15 rows of the waste yarn and take it all off the bed. Let it rest overnight, and wash it as the garment will "
            "be washed.",
            "Lay it flat without pulling. Measure between the marks three times each way and take the mean.",
            "Too many stitches or rows: knit another with a looser plate. Too few: with a tighter one. The plate named here is "
            "only "
            "a start. Where one plate is too tight and the next too loose, another yarn helps, or the pattern made for your "
            "swatch. "
            "Do not begin the garment before both figures agree.",
        ),
        ordered=True,
    ),
}
