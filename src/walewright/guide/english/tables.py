"""Heads, captions and labels of tables, and the notes beneath them."""

from __future__ import annotations

TABLES = {
    "listed": "{names:and}",
    "span": "{low} to {high}",
    "from-to": "{first} to {last}",
    "rc": "RC",
    "unit/cm": "centimetres",
    "unit/in": "inches",
    "unit/both": "centimetres and inches",
    "told/cm": "{cm} cm",
    "told/in": "{inches} in",
    "told/both": "{cm} cm ({inches} in)",
    # The figures of a schematic's letters.
    "legend": "Measurements of the {piece} in {unit}",
    # Sizes, and what they are held against.
    "sizes": "Sizes in {unit}",
    "sizes/cm": "cm",
    "sizes/in": "inches",
    "sizes/both": "cm, with inches in small type",
    "sizes/to-fit": "To fit",
    "sizes/finished": "Finished",
    "sizes/ease": "Ease: finished less body",
    "sizes/of-pieces": "{pieces}: {what}",
    "sizes/as-knitted": "Finished measurements are those of the pieces as knitted and blocked, before seaming; what is all "
    "round is seamed.",
    "sizes/seamed": "{note} A sewn seam takes one stitch of each side into it: about {told} in all.",
    "sizes/bust": "bust",
    "sizes/chest": "chest",
    "sizes/choose": "To choose a size, measure a garment that fits as you like it, laid flat, and take the size whose finished "
    "measurements come nearest.{worn:? Round the {worn}, a garment as wide as the body is a close fit, {classic} more a classic "
    "one, {loose} more a loose one (Source: Craft Yarn Council, fit and ease).}",
    # The garment as it is worn.
    "fit/finished": "{name}, finished",
    "fit/whole": "{name}, in all",
    "fit/beside": "{name}: {wanted} wanted in all, {knitted} knitted.",
    "fit/girth": "All round, {where}",
    "fit/girth-of": "{over}: all round, {where}",
    "fit/girth-of-each": "{over}, each: all round, {where}",
    "fit/closed": "{what}",
    "fit/lapped": "{what}, buttoned",
    "fit/edge to edge": "{what}, edges meeting",
    "fit/below-armholes": "below the armholes",
    "fit/at": "at {level}",
    "fit/reach": "Middle of the back neck to the end of the sleeve",
    "fit/reach-of": "Middle of the back neck to the end of the {sleeve}",
    "fit/neck-to-wrist": "Back neck to wrist",
    "fit/ease-as-finished": "{body}: {name} as finished",
    "fit/ease-round": "{body}: all round {where}",
    "fit/role": "{role:term}",
    "fit/passes": "{opening}: {rest} at rest, stretched about {wide}, so that the {part:term} can pass; it was reckoned with "
    "{figure} for the {part:term}.",
    "fit/buttons": "The {over} laps over the {under} by {overlap}. Sew {count:button|buttons} on the {under}, {across} in from "
    "its outer edge, below the buttonholes: from the lower end, at {places}.",
    "fit/buttons-by-size": "The {over} laps over the {under} by {overlap}. Sew {count} buttons on the {under}, {across} in from "
    "its outer edge, below the buttonholes: from the lower end, at {places}.",
    # Bobbins and floats.
    "bobbins": "Bobbins for the {piece}: what to wind on each, tails included",
    "bobbins/bobbin": "Bobbin",
    "bobbins/yarn": "Yarn",
    "bobbins/begins-on": "Its block begins on",
    "bobbins/counter": "Counter before its first row",
    "bobbins/last-row": "Last row",
    "bobbins/metres": "{size}, m",
    "bobbins/begins": "RC {row}",
    "bobbins/ends": "to RC {row}",
    "bobbins/hangs": "{ends}; it hangs from {hangs} and is taken up again",
    "bobbins/stretch": "RC {first} to {last}",
    "floats": "Long floats, on which fingers catch: catch each at its middle. When the next row is to be knitted, lift the "
    "float with a transfer tool on to the needle at the middle of those that it passes, above its stitch; both are knitted "
    "as one",
    "floats/piece": "Piece",
    "floats/yarn": "Yarn",
    "floats/row": "RC before the row",
    "floats/needles": "Needles that it passes",
    "floats/more": "{shown} and {count} more",
    "floats/across": "{first} to {last}: {stitches} stitches, {cm} cm",
    # Where a chart lies.
    "places": "Where the chart lies",
    "places/heading": "On the bed",
    "places/across": "Across, each time",
    "places/time": "{piece}, {ordinal} time",
    "places/from": "From RC",
    "places/to": "To RC",
    "places/first": "First needle",
    "places/last": "Last needle",
    "places/edge": "Plain edge stitches",
    "places/edge-note": "at each end",
    "places/start": "Repeat’s first column",
    "places/start-note": "column {column}",
    "places/repeats": "Whole repeats",
    "places/centre": "At the centre mark",
    "places/centre-note": "columns left, right",
    "places/middle": "Middle at",
    # Yarn.
    "yarn": "Yarn for each size",
    "yarn/balls": "Balls to buy",
    "yarn/metres": "Metres",
    "yarn/grams": "Grams in all",
    "yarn/garment": "Grams for the garment",
    "yarn/swatches": "Grams for swatches",
    "yarn/reserve": "Grams in reserve",
    "yarn/ball": "{yarn}, {grams} g = {metres} m a ball",
    "yarn/away": "Waste yarn and ravel cord (removed), metres",
    "yarn/waste": "Waste yarn",
    "yarn/ravel": "Ravel cord",
    "yarn/together": "{yarn}: {strands:and} held together.",
    "yarn/strands": "{yarn}, {count} strands",
    # How it was reckoned.
    "way/from-loops": "{known:/; }; swatches, seams and tails included, with {spare} % for ends; accurate to about {error} %"
    "{estimated:?: weigh a swatch to know better}",
    "way/none": "none is knitted",
    "way/of-fabrics": "{fabrics:and} {way}",
    "way/weighed": "from the weight of the swatch",
    "way/measured": "from the measured length of yarn in a stitch",
    "way/estimated": "estimated from the density by the relations of plain knitting",
    "way/as-in-fabric": "in loops as long as those of {fabric}; the weight is that of a yarn as thick as {yarn}; "
    "accurate to about {error} %",
    "way/one-length": "one length of {cm} cm, enough for the longest row and {ends} cm at each end{times:?; it is used {times} "
    "times, or so many lengths if pieces wait with theirs in}; accurate to about {error} %",
    "way/lengths": "{lengths} lengths of {cm} cm, enough for the longest row and {ends} cm at each end{times:?; they are used "
    "{times} "
    "times, or so many pairs if pieces wait with theirs in}; accurate to about {error} %",
    # Where figures are from.
    "credit": "Source: {published:/; }{recalled:? (from memory, not seen)}{own:?, but {own} the author's own}",
    "credit/shared": "{first}; {unit:?{unit} }{rest:/, }",
    "credit/of": "{rows}. {credit}.",
    # Edges and joins.
    "edge/start": "first row",
    "edge/end": "last row",
    "edge/shoulder": "shoulder",
    "edge/neck": "neck",
    "edge/of-left": "{edge} left",
    "edge/of-centre": "{edge} centre",
    "edge/of-right": "{edge} right",
    "edge/of-upper": "{edge} upper",
    "edge/cast-on": "{edge} (cast-on edge)",
    "join/of-two": "{one:/ + } to {other:/ + }",
    "join/upon-itself": "{one:/ + } upon itself",
    "join/edge": "{piece} {edge}",
    "join/edge-of-copy": "{piece} {copy} {edge}",
    "yarn/way": "{yarns}: {way}.",
    "yarn/other": "Another yarn does as well if its swatch comes out the same and feels as you like it. Buy it by the metres: a "
    "ball of the same weight may be shorter.",
    # How the pattern was checked.
    "checked/one": "Before these pages were printed, the garment was knitted in the computer, loop by loop on a needle bed: "
    "{loops} loops in {moves} moves of hand and carriage, none that the machine cannot make, and no loop left that nothing holds.",
    "checked/each": "Before these pages were printed, each of the {sizes} sizes was knitted in the computer, loop by loop on a "
    "needle bed: {loops} loops in {moves} moves of hand and carriage, none that the machine cannot make, and no loop left that "
    "nothing holds.",
    "checked/read": "The printed words were then read back by a second reader that knows nothing of the first: what they tell a "
    "knitter to do is what was knitted, move for move, or was knitted in its turn and made the same fabric.",
    "checked/unread": "The printed words were not read back for: {sizes}.",
    "checked/figures": "Stitches and rows are whole, so a measurement comes out to the nearest one; what was wanted and what was "
    "knitted stand side by side in the plan document of the pattern.",
    # What a copy was regraded from, and what can be given.
    "regraded": "Regraded",
    "regraded/chosen": "Chosen",
    "regraded/what": "What",
    "regraded/own": "In this copy",
    "regraded/source": "In the source",
    "regraded/line": "Regraded: {told}.",
    "regraded/measure": "{name}",
    "regraded/tension": "Tension of {name}, to 10 cm",
    "regraded/swatch": "Swatch of {name}",
    "regraded/dial": "Dial for {name}",
    "regraded/dial/plate": "Plate for {name}",
    "regraded/yarn": "Yarn: {name}",
    "regraded/bed": "Bed",
    "regrade/measures": "Measurements of this pattern, {unit}",
    "regrade/others": "Everything else",
    "regrade/cm": "cm",
    "regrade/in": "inches",
    "regrade/both": "cm and inches",
    "regrade/to-fit": "to fit",
    "regrade/about-to-fit": "{about}, to fit",
    "regrade/choice": "{own}, or {others:or}",
    "regrade/count": "{values}{about:?, {about}}",
    "regrade/size": "Size",
    "regrade/tension-or-swatch": "--tension or --swatch",
    "regrade/to-10-cm": "{tension} to 10 cm, in {fabric}",
    "regrade/dial": "{fabric}: tension dial",
    "regrade/plates": "{fabric}: plate",
    "regrade/bed": "{bed}: {needles} needles, {pitch} mm apart",
    "regrade/fabric": "{stitch} in {yarn}",
    "regrade/how": "The pattern can be worked out anew for your own figures. Tell whoever you have it from which of the lines "
    "below shall change, and to what; all the rest stays as it is. A measurement that is not in the list follows from those "
    "that are.",
    "regrade/such-as": "Such as: {command}",
}
