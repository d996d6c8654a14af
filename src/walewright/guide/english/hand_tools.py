"""What hands need beside yarn and machine, and what is said of fabrics, their tension and the machine."""

from __future__ import annotations

TOOLS = {
    "tool/waste-yarn": "Waste yarn: smooth, of about the same thickness and in a contrasting colour",
    "tool/waste-yarn-swatch": "Waste yarn, for the swatches only: smooth, of about the same thickness and in a contrasting colour",
    "tool/cord-both": "Ravel cord: two strong, slippery lengths, one for the start and one for a part that waits"
    ", as long as the note on it says",
    "tool/cord-start": "Ravel cord: one strong, slippery length, as long as the note on it says",
    "tool/cord-part": "Ravel cord: one strong, slippery length for a part that waits, as long as the note on it says",
    "tool/cord-hem": "Ravel cord: two strong, slippery lengths, as long as the note on it says",
    "tool/cord-hem-both": "Ravel cord: three strong, slippery lengths, two for the start and one for a part that waits"
    ", as long as the note on it says",
    "tool/hem": "Cast-on hem, at least as wide as what is begun on it, and weights for the width in work",
    "tool/edge-weights": "Small weights for the edges",
    "tool/comb-and-weights": "Cast-on comb, and weights for the width in work",
    "tool/weights": "Weights for the width in work",
    "tool/transfer": "Transfer {tools:=tool|tools} with {prongs:and} {most:=prong|prongs}",
    "tool/for-crosses": "For the crosses, {tools:and}",
    "tool/prongs": "two {prongs}-prong transfer tools",
    "tool/latch": "Latch tool",
    "tool/card": "A strip of card or a thin rod to measure long stitches by",
    "tool/bobbins": "Bobbins for picture knitting, one for each block of the row that has most",
    "tool/thread": "Short lengths of contrasting thread to mark edges",
    "tool/cord": "Cord or ribbon for the {piece}: {cm} cm",
    "tool/last": "Blunt sewing needle, pins that do not rust, tape measure, scissors with covered points",
    # What the author lists.
    "needed/count": "{count} {what}",
    "needed/length": "{what}: {length}",
    # Fabrics.
    "stitch/chart": "chart {chart}",
    "stitch/stocking stitch": "stocking stitch",
    "stitch/latched rib": "latched rib",
    "stitch/stripes": "stripes",
    "stitch/every": "{stitch}, every {nth} needle",
    "basis/given": "As you measured it{weighed:?|; its weight is reckoned from that of the source’s swatch}.",
    "basis/reckoned": "Reckoned from your {fabric}: knit a swatch of it too.",
    "basis/source": "As measured for the source.",
    "tension/dial": "tension {dial}",
    "tension/dial/plate": "plate {dial}",
    "tension/start-dial": "tension {dial} to start with",
    "tension/start-dial/plate": "plate {dial} to start with",
    "tension/title": "{stitch}, {dial}",
    "tension/cm": "10 cm",
    "tension/in": "4 in",
    "tension/both": "10 cm (4 in)",
    "tension/density": "{stitches} stitches and {rows} rows to {per}",
    "tension/small": "For something so small {stitches} stitches by {rows} rows are enough to measure, about {width} by {height}, "
    "and the yarn is reckoned with those.",
    "tension/swatch-of": "In {yarn}; the swatch of {fabric} counts for it.",
    "tension/swatch-cm": "In {yarn}. {stitches} stitches by {rows} rows measure {width} cm by {height} cm{grams:? and weigh "
    "{grams} g}.{purl:? Its right side is the purl side.}",
    "tension/swatch-in": "In {yarn}. {stitches} stitches by {rows} rows measure {width} in by {height} in{grams:? and weigh "
    "{grams} g}.{purl:? Its right side is the purl side.}",
    "tension/dial-is-a-start": "The dial is a start: where the steps say {dial}, set the number at which your own swatch comes "
    "out so, and note it here: ______",
    "tension/dial-is-yours": "The dial is yours. The steps of its edgings say {others:/ and } as well: numbers of the source, "
    "beside its {was}; set yours as much looser or tighter.",
    "tension/dial-is-a-start/plate": "The plate is a start: where the steps say {dial}, put in the one with which your own swatch "
    "comes out so, and note it here: ______",
    "tension/dial-is-yours/plate": "The plate is yours. The steps of its edgings say {others:/ and } as well: the next one to it, "
    "as "
    "in the source these are looser or tighter.",
    # The machine.
    "machine": "Machine",
    "machine/single-bed": "{machine}, single bed",
    "machine/needles": "Needles",
    "machine/apart": "{needles}, {pitch} mm apart",
    "machine/in-use": "In use, at most",
    "machine/plates": "Plates",
    "machine/plates-are": "{plates:and}, the tightest first",
    "machine/starts": "Begins",
    "machine/starts-hem": "With a hung hem and ravel cord",
    "machine/starts-by-hand": "By hand: no comb is needed",
    "machine/missing": "Missing",
    "machine/missing-are": "{needles:and}: the pieces lie beside them",
    "machine/edges": "Edges",
    "machine/edge-guides": "Guides at the outermost needles, moved with every change of the width",
}
