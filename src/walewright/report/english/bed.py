"""Words for what the bed refuses: by the kind of a refusal, and the parts that they share."""

from __future__ import annotations

REFUSALS: dict[str, str] = {
    "bed/already-held": "needle {needle} is already in holding position",
    "bed/already-in-work/held": "needle {needle} is already held; only idle needles are brought into work",
    "bed/already-in-work/in-work": "needle {needle} is already in work; only idle needles are brought into work",
    "bed/already-in-work/on-cord": "needle {needle} is already on cord; only idle needles are brought into work",
    "bed/already-on-cord": "needle {needle} waits on cord already",
    "bed/bars-side-by-side": "needles {needle} and {other} are both empty and in work: the yarn makes no stitches there",
    "bed/beyond-bed": "needle {needle} is beyond the bed, which has {first} to {last}",
    "bed/block-named-twice": "there are two pieces called `{piece}`",
    "bed/block-uncrossed": "the {one} and the {other} are not crossed between needles {last} and {first}: a hole is left there",
    "bed/carriage-already-there": "the carriage is already on the {to:term}, so it cannot knit a row to the {to:term}",
    "bed/cast-off-away-from-carriage/not-placed": (
        "stitches {first} to {last} cannot be cast off from the {start:term}: the carriage is not placed, and a "
        "cast-off begins with the outermost stitch at the carriage's side, where the yarn is"
    ),
    "bed/cast-off-away-from-carriage/placed": (
        "stitches {first} to {last} cannot be cast off from the {start:term}: the carriage is on the {side:term}, "
        "and a cast-off begins with the outermost stitch at the carriage's side, where the yarn is"
    ),
    "bed/cast-off-empty": "needle {needle} carries no loop {purpose}",
    "bed/cast-on-away-from-carriage/side-known": (
        "stitches beside live ones are cast on next to the last one at the carriage's side ({side:term}), not at {first} to {last}"
    ),
    "bed/cast-on-away-from-carriage/side-unknown": (
        "stitches beside live ones are cast on next to the last one at the carriage's side (not known), not at {first} to {last}"
    ),
    "bed/cast-on-over-loops": "needle {needle} already carries a loop; it must be empty {purpose}",
    "bed/cast-on-way": "there is no cast-on called `{way}`; there are {ways:and}",
    "bed/check-differs": "what the step states does not hold: {differing:/; }",
    "bed/close-empty": "needle {needle} carries no loop {purpose}",
    "bed/close-without-neighbour/end-of-bed": (
        "{first} to {last} are chained off towards the {towards:term}, but the end of the bed has no stitch to hang the last on"
    ),
    "bed/close-without-neighbour/needle": (
        "{first} to {last} are chained off towards the {towards:term}, but {needle} has no stitch to hang the last on"
    ),
    "bed/comb-in-garment-yarn": "the comb makes an open edge, which would run down in {yarn}: use waste yarn",
    "bed/copies-differ/hung": (
        "the {piece} is knitted {copies} times and this {own} times: each copy of the one is hung on one of the other"
    ),
    "bed/copies-differ/joined": "one is knitted {fewest} times, another {most} times",
    "bed/cord-drawn-in-part": (
        "the cord is drawn out from needles {first} to {last}, and needle {needle} is still back on it: its stitch drops"
    ),
    "bed/cord-empty": "needle {needle} carries no loop for the cord to keep",
    "bed/cord-under-yarn": (
        "the {yarn} hangs from needle {needle}: break it off, or knit to the other side, before that needle waits on cord"
    ),
    "bed/crossing-drops": (
        "the carriage is taken to the {to:term} past loops in work, and how it passes them is not said: without yarn it drops "
        "them; "
        "this bed {bed}"
    ),
    "bed/crossing-not-there": "the carriage is to cross {way}; this bed {bed}",
    "bed/cross-empty": "needle {needle} carries no loop to cross",
    "bed/cross-of-one-group": "{first} to {last} are crossed, but not as two groups",
    "bed/cross-without-slack": (
        "{one} and {other} loops of {first} to {last} are crossed with stitches close beside them on both sides: "
        "let the wale beside them run down first, or leave an empty needle there"
    ),
    "bed/drop-through-join": (
        "the wale of needle {needle} joins or leaves another {found} rows down; it cannot run down {rows} rows"
    ),
    "bed/drop-too-deep": "the wale of needle {needle} is {found} rows deep; it cannot run down {rows} rows",
    "bed/edge-lies-otherwise": (
        "with its {facing:term} side to the knitter, `{edge}` of the {piece} hangs with its {at_left:term} at the "
        "left, and not its {left_end:term}"
    ),
    "bed/edge-named-twice/edge": "there is already an edge called `{edge}`",
    "bed/edge-named-twice/end": "the piece has an end already, so no more stitches are gathered to it",
    "bed/edge-named-twice/on-waste": "there are already stitches on waste yarn called `{edge}`",
    "bed/edge-sides-differ": "the edge `{edge}` has {left} rows on the left and {right} on the right",
    "bed/edge-taken/hung": "{edge} of the {piece} has been taken up already",
    "bed/edge-taken/joined": "the {edge} of the {piece} has been taken up already",
    "bed/edge-taken/own-start": "the first row of this block has been hung already",
    "bed/edge-unknown/to-hang": "the {piece} has no edge {edge}; it has {known:and}",
    "bed/edge-unknown/to-join": "the {piece} has no edge `{edge}` to join; it has {known:and}",
    "bed/edge-where": "`{where}` is no place for the edge `{edge}`; there are outer, inner, left and right",
    "bed/edge-without-rows/at-either-side": (
        "no row from RC {after} to RC {to} reaches the edge at either side to be called `{edge}`"
    ),
    "bed/edge-without-rows/none": "the edge `{edge}` from RC {after} to RC {to} has no rows",
    "bed/edge-without-rows/on-side": (
        "no row from RC {after} to RC {to} reaches the edge on the {side:term} to be called `{edge}`"
    ),
    "bed/edges-do-not-meet": "{one} and {other} hang side by side, and nothing joins them there",
    "bed/feet-open": "the {piece} was begun on waste yarn, and nothing takes up the {feet} feet of its first row",
    "bed/fill-over-loop": "needle {needle} already carries a loop; it must be empty {purpose}",
    "bed/fill-too-far": "a bar reaches only the next needle, not from {source} to {target}",
    "bed/float-at-edge": (
        "needle {needle} lies beyond the ends of the row, {first} to {last}: a float needs a stitch of the row at both its ends"
    ),
    "bed/fold-without-rows": "there is no first row below the stitches on the needles to fold up and hang",
    "bed/follows-from-earlier": "the piece `{piece}` came to a fault",
    "bed/gather-empty": "needle {needle} carries no loop {purpose}",
    "bed/gather-not-all": (
        "{first} to {last} are gathered, but {stitches} stitches are still {held:?held|left} on the bed, from {one} to {other}"
    ),
    "bed/gather-yarn-unbroken": "the {yarn} is not broken off, so there is no tail to thread through the stitches",
    "bed/grafted-not-open-loops/closed": "the {edge} of the {piece} is closed stitches, and only open loops can be grafted",
    "bed/grafted-not-open-loops/row-ends": "the {edge} of the {piece} is row ends, and only open loops can be grafted",
    "bed/hang-feet-count": "the first row has {feet} loops to hang, but {needles} needles are named to take one each",
    "bed/held-at-carriage": (
        "needles {first} to {last} are on the {side:term}, where the carriage is; more than one needle is held "
        "only opposite the carriage"
    ),
    "bed/held-edge-unwrapped": (
        "the yarn turned beside the held needle {needle} at RC {row} without a wrap; knitting on over {beside} and "
        "{needle} leaves a hole"
    ),
    "bed/held-left": "the block ends with {held} needles still held, from {first} to {last}",
    "bed/hem-knitted-on": "a hung hem would be knitted to the piece by {yarn}: knit a row of ravel cord between them",
    "bed/hold-empty": "needle {needle} carries no loop to hold",
    "bed/hung-apart": "between the {one} and the {other} needles are left empty",
    "bed/join-in-block": "pieces are joined when all are knitted, not while one is on the bed",
    "bed/join-not-in-line": "the edges {edges:/ + } do not follow each other from the {begin:term} of the first",
    "bed/join-told/length": "an edge is {long} long, where it says {stated}",
    "bed/join-told/no-length": "an edge is of no known length, where it says {stated}",
    "bed/join-told/no-strip": "{piece} has no {edging:?edging {edging}|ends} to sew on",
    "bed/join-told/strip": "{found} rows at the end of {piece} {edging}, where it says {rows}",
    "bed/join-told/chained": "{one} stitches cast off or on at once against {other}, where it says {says_one} and {says_other}",
    "bed/join-told/rows": "{one} rows against {other}, where it says {rows}",
    "bed/join-told/tail-elsewhere": "the tail of {piece} hangs elsewhere",
    "bed/join-told/thread": "the seam is {long} long, and the yarn for it {thread}",
    "bed/join-unequal/apart": "{one:.1f} against {other:.1f}; they are {apart} apart and {easing} can be eased in",
    "bed/join-unequal/longer": (
        "{one:.1f} against {other:.1f}; the first should be {wanted} longer, which is {apart} off and {easing} can be eased in"
    ),
    "bed/join-unequal/ratio": "{rows} rows against {stitches} stitches, where {of_rows} are to meet {to_stitches}",
    "bed/join-unequal/rows": "{one} rows against {other}",
    "bed/join-unequal/shorter": (
        "{one:.1f} against {other:.1f}; the first should be {wanted} shorter, which is {apart} off and {easing} can be eased in"
    ),
    "bed/join-unequal/stitches": "{one} stitches against {other}",
    "bed/join-way/closing": "one edge is sewn or gathered, not {way:term}",
    "bed/join-way/joining": "there is no join called `{way}`; there are {ways:and}",
    "bed/ladder-runs-on": (
        "the wale of needle {needle} was let run down {rows} rows to a stitch, and is not latched up: it runs on from there"
    ),
    "bed/latch-over-loop": "needle {needle} carries a loop again: its wale cannot come back to it",
    "bed/latch-through-join": "the wale of needle {needle} joins another {found} rows down; it cannot be dropped {rows} rows",
    "bed/latch-too-deep/run-down": "the wale of needle {needle} has run down {found} rows; not {rows} can be latched up",
    "bed/latch-too-deep/wale": "the wale of needle {needle} is {found} rows deep; {rows} rows cannot be latched up",
    "bed/latched-above-gap": (
        "the wale of needle {needle} is dropped {rows} rows, and the stitch below was not latched up before: a "
        "part of the wale would stay as it was knitted"
    ),
    "bed/latched-already": (
        "the wale of needle {needle} was latched up to {found} rows below; dropped {rows} rows it loses what was re-formed"
    ),
    "bed/lay-in-not-held": "needle {needle} is not in holding position, so no {yarn} can be laid in",
    "bed/lay-in-nowhere": "the {yarn} is laid in on no needle",
    "bed/lay-in-over-yarn": "the row's own yarn still lies over needle {needle}: lift it off first",
    "bed/length-too-short": (
        "a length of {length} of the {yarn} is too short to cast on with{width:?, and {first} to {last} are "
        "{width} wide}: it takes {widths} widths"
    ),
    "bed/length-unused": "a length of {length} is told for a cast-on with the yarn in use",
    "bed/line-is-a-ring": ("the two ends of what is hung, the {one} and the {other}, are joined already: it does not lie straight"),
    "bed/link-over-loops": "needle {needle} carries another loop than one of a piece just hung there",
    "bed/link-over-nothing": "needle {needle} carries no stitch of another piece to link with",
    "bed/link-unequal": (
        "{stitches} stitches of {edge} of the {piece} would be hung over {needles} others; loop is linked to loop"
    ),
    "bed/linked-face-to-back": (
        "the {beneath} and the {over} both have their {facing:term} side to the knitter: linked so, one is inside out"
    ),
    "bed/loop-dropped": "nothing holds the loop made on needle {needle} at RC {row}",
    "bed/loops-left": "the block ends with loops on {loaded} needles, from {first} to {last}",
    "bed/moved-nowhere": "the loop of needle {needle} is moved by no needle",
    "bed/needle-held": "needle {needle} is in holding position; return it to work first",
    "bed/needle-missing": "needle {needle} is missing from the bed",
    "bed/needle-on-cord": "needle {needle} waits on cord; draw that out first",
    "bed/needles-reversed/first-row": "the needles that the first row is hung on are named from left to right",
    "bed/needles-reversed/span": "needles are named from left to right, not {first} to {last}",
    "bed/needles-reversed/yarn": "the needles for the {yarn} are named from left to right",
    "bed/no-gauge": "without the gauge of their fabrics the edges have no length to compare",
    "bed/no-loop-to-move": "needle {needle} carries no loop to move",
    "bed/no-loops": "no needle in working position carries a loop, so the row knits nothing",
    "bed/no-needle-in-work": "no needle is in working position, so the row knits nothing",
    "bed/no-open-feet": "the {piece} was not begun on waste yarn, so no feet are open",
    "bed/no-such-copy/hung": "copy {copy} of the {piece} is to be taken up, which is knitted {copies:=once|{copies} times}",
    "bed/no-such-copy/joined": "copy {copy} of the {piece}, which is knitted {copies:=once|{copies} times}",
    "bed/no-such-plate": "there is no plate {plate}; there are {plates:and}",
    "bed/no-such-start/comb": "the bed has no comb to cast on over",
    "bed/no-such-start/hem": "the bed has no hem to hang on the needles",
    "bed/no-yarn/fastened": "the {yarn} is fastened off; thread it again for {wanted}",
    "bed/no-yarn/none": "no yarn is threaded for {wanted}",
    "bed/no-yarn/to-break": "there is no yarn to break off: none is threaded",
    "bed/not-held/to-return": "needle {needle} is not in holding position, so it cannot be returned",
    "bed/not-held/to-work": "needle {needle} is not in holding position, so no yarn lies there {purpose}",
    "bed/not-in-work": "needle {needle} is not in work, as it must be {purpose}",
    "bed/not-on-cord": "needle {needle} does not wait on cord",
    "bed/not-parted": "the piece is not in two parts from RC {after} to RC {to}, so it has no inner edges to call `{edge}`",
    "bed/nothing-below": "there is no stitch below that of needle {needle} to fill from",
    "bed/nothing-laid/to-work": "the last row has laid no yarn over needle {needle} {purpose}, or it is gone from there",
    "bed/nothing-laid/worked": "needle {needle} has been worked by hand since the last row, or was held only after it",
    "bed/only-waste-yarn/laid-in": "{yarn} yarn comes away; it cannot be laid in for stitches",
    "bed/only-waste-yarn/needle": "needle {needle} carries only waste yarn, no stitch of the piece",
    "bed/only-waste-yarn/needles": "{first} to {last} carry only waste yarn",
    "bed/onto-idle-needle": "the loop of needle {needle} would go on {other}, which is not in work",
    "bed/parts-meet-unevenly": ("the row would go over two parts of which one was knitted to RC {one} and the other to RC {other}"),
    "bed/pick-up-over-loops": "needle {needle} already carries a loop; it must be empty {purpose}",
    "bed/pick-up-too-many": (
        "{stitches} stitches cannot be picked up along {edge} of the {piece}: there are {places} places, and none "
        "gives more than one"
    ),
    "bed/picture-gap/block": (
        "the block of {yarn} goes from {first} to {last}, but it should begin at {wanted}, beside the one before it"
    ),
    "bed/picture-gap/out-of-work": "between needles {last} and {first} not all are in work: a picture row goes over all needles",
    "bed/picture-gap/too-short": "the blocks end at needle {reached}, and the needles in work at {last}",
    "bed/piece-unknown/to-hang": "no piece called `{piece}` has been knitted yet",
    "bed/piece-unknown/to-join": "there is no piece `{piece}` to join",
    "bed/rehang-count": (
        "the first row of the {piece} has {feet} feet, but there are {needles} needles, {first} to {last}, to take one each"
    ),
    "bed/rehang-over-loops": "needle {needle} already carries a loop; it must be empty {purpose}",
    "bed/returned-under-yarn": (
        "the yarn of the last row lies across needle {needle}; knit back before returning the needle to work"
    ),
    "bed/rows-ambiguous": (
        "the counter was set back over the same needles, so RC {after} to {to} of `{edge}` does not say which rows"
    ),
    "bed/rows-not-knitted": ("the edge `{edge}` runs from RC {after} to RC {to}, but row {row} was not knitted on the {side:term}"),
    "bed/sew-off-away-from-tail/elsewhere": (
        "{first} to {last} cannot be sewn off from the {start:term}: the tail of the {yarn} hangs at the "
        "{side:term}, at needle {needle}"
    ),
    "bed/sew-off-away-from-tail/loose": (
        "{first} to {last} cannot be sewn off from the {start:term}: the tail of the {yarn} hangs from no stitch"
    ),
    "bed/sew-off-empty": "needle {needle} carries no loop {purpose}",
    "bed/sew-off-not-all": "{first} to {last} are sewn off, but they are not all stitches in work",
    "bed/sew-off-without-tail": "no tail of a broken yarn is left to sew with",
    "bed/sew-off-yarn-unbroken": "the {yarn} is not broken off, so there is no tail to sew with",
    "bed/side-turned": "the {piece} would lie with its other side out than what it hangs together with already",
    "bed/spread-count": "{taken} stitches are taken off and {given} hung back",
    "bed/spread-crowded": "{stitches} stitches would go on needle {needle}; a needle knits {most} at most",
    "bed/spread-empty": "needle {needle} carries no loop to take off and hang back",
    "bed/spread-over-loops": "needle {needle} carries a loop already, so none can be hung on it",
    "bed/stitch-dropped": "needle {needle} carries a loop; out of work it would drop the stitch",
    "bed/ratio-told": "{stitches} stitches along `{edge}` of the {piece} with {places} places are not {per} for every {every}",
    "bed/stretch-not-there": "`{edge}` of the {piece} has nothing from {low} to {high}",
    "bed/stretch-of-many": "`{edge}` of the {piece} is several edges, and only one of them has stretches",
    "bed/tail-too-short/gathering": (
        "the tail of the {yarn} is {tail} long, and {first} to {last} are {width} wide: gathering takes {widths} widths"
    ),
    "bed/tail-too-short/negative": "a tail of {tail} of the {yarn} cannot be left",
    "bed/tail-too-short/sewing-off": (
        "the tail of the {yarn} is {tail} long, and {first} to {last} are {width} wide: sewing off takes {widths} widths"
    ),
    "bed/tool-too-narrow": "{loops} loops of {first} to {last} are lifted together, but the widest tool has {prongs} prongs",
    "bed/transfer-across-held": "loops cannot be moved across needle {needle}, which is held",
    "bed/tuck-side-by-side": "the yarn of one row lies over needles {needle} and {other}, side by side: it makes no two loops",
    "bed/tuck-too-long": "the yarn of {rows} rows lies over needle {needle}; a hook takes that of {most} at most",
    "bed/waste-empty/no-loop": "needle {needle} carries no loop {purpose}",
    "bed/waste-empty/waste-yarn": "needle {needle} carries only waste yarn, no stitch of the piece",
    "bed/waste-rows": "{rows} rows of waste yarn hold nothing",
    "bed/wrap-away-from-yarn": (
        "the yarn is not beside needle {needle}: a wrap goes on the innermost held needle that the last row ran over"
    ),
    "bed/wrap-not-held": "needle {needle} is not in holding position, so it cannot be wrapped",
    "bed/wrapped-already": "needle {needle} has been wrapped since the last row",
    "bed/yarn-at-other-side": (
        "the {yarn} hangs at the {hangs:term}, but the row starts at the {start:term}; it would lie across the whole row"
    ),
    "bed/yarn-float/from-needle": (
        "the {yarn} comes from needle {needle} and the row starts at needle {other}: it would float over {over} needles"
    ),
    "bed/yarn-float/out-of-work": "between needles {needle} and {other} the yarn would float over {over} needles out of work",
}

PARTS: dict[str, str] = {
    "bed/crosses/hold": "crosses without knitting past needles that are all right out",
    "bed/crosses/lift": "has a carriage that is lifted off and put on at the other side",
    "bed/crosses/none": "cannot cross without knitting",
    "bed/crosses/slip": "has a carriage that is set to slip",
    "bed/crossing/hold": "past needles that are right out",
    "bed/crossing/lift": "lifted off",
    "bed/crossing/slip": "set to slip",
    "bed/differs/no-side": "side: {stated:term} stated, nowhere yet found",
    "bed/differs/row": "row: {stated} stated, {found} found",
    "bed/differs/side": "side: {stated:term} stated, {found:term} found",
    "bed/differs/stitches": "stitches: {stated} stated, {found} found",
    "bed/seam-edge": "{piece} {edge}",
    "bed/piece-edge": "the {edge} of the {piece}",
    "bed/edge/centre": "{edge} centre",
    "bed/edge/left": "{edge} left",
    "bed/edge/right": "{edge} right",
    "bed/edge/whole": "{edge}",
    "bed/for/cast-off": "the cast-off",
    "bed/for/cast-on": "the cast-on",
    "bed/for/row": "this row",
    "bed/for/wrap": "a wrap",
    "bed/in-block": "{block}, at RC {counter}: {why}",
    "bed/in-join": "{other:?joining|closing} {one:/ + } {other:?to {other:/ + }|upon itself}: {why}",
    "bed/needle/left": "L {number}",
    "bed/needle/right": "R {number}",
    "bed/to/be-cast-off": "to be cast off",
    "bed/to/be-cast-on": "to be cast on",
    "bed/to/be-chained-off": "to be chained off",
    "bed/to/be-crossed": "to be crossed",
    "bed/to/be-drawn-through": "to be drawn through",
    "bed/to/be-filled": "to be filled from below",
    "bed/to/be-gathered": "to be gathered",
    "bed/to/be-held": "to be held",
    "bed/to/be-hung-back": "to have its loop taken off and hung back",
    "bed/to/be-knitted-off": "to be knitted off on waste yarn",
    "bed/to/be-latched-up": "to be latched up",
    "bed/to/be-lifted-off": "to be lifted off",
    "bed/to/be-moved-over": "to have loops moved over it",
    "bed/to/be-pushed-back": "to be pushed back",
    "bed/to/be-sewn-off": "to be sewn off",
    "bed/to/pick-up": "to pick up a stitch",
    "bed/to/run-down": "to let its wale run down",
    "bed/to/take-a-foot": "to take a foot",
    "bed/to/take-a-linked-stitch": "to take a stitch to be linked",
    "bed/to/take-a-loop": "to take a loop of the first row",
    "bed/to/wait-on-cord": "to wait on cord",
}

PHRASES = {**REFUSALS, **PARTS}
