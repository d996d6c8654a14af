"""How-tos of more than one yarn."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "colour-in-the-row-by-hand": HowToText(
        "Colour in the row by hand",
        "Pull the needles of the second colour right out; the carriage knits the others and leaves its yarn lying over these. "
        "Lift that yarn off in front, so that it floats on the purl side. Lay the second yarn in their hooks by hand, in the "
        "direction in which the carriage has gone, push each back through its stitch, and leave the yarn loose between: "
        "pulled tight it draws the fabric in. Wind the two yarns once round each other at the edge.",
        "three needles pulled out; a second yarn laid in their hooks, floating past the others",
    ),
    "picture-knitting": HowToText(
        "Picture knitting",
        "Wind each block’s yarn on a bobbin of its own; a block of the ground that the table of bobbins does not list is knitted "
        "from the ball, whose end goes on in the plain rows. Take the yarn out of the carriage. All needles stand forward, "
        "latches open. Begin at the side where the yarns hang, the carriage’s, and lay each yarn in the hooks of its block; "
        "where two meet, bring the new one up from under the old, so that they hold each other and no slit is left. Check "
        "every hook: one without yarn, or with its latch closed, drops its stitch. Then take the empty carriage across. A "
        "block that ends leaves its bobbin hanging until it is wanted again within a few rows. A row of one colour can be "
        "knitted by the carriage.",
        "two yarns laid side by side in the hooks, crossed where they meet, each on its bobbin",
    ),
    "stripes-carried-up-the-side": HowToText(
        "Stripes carried up the side",
        "The yarn that rests is not broken: it hangs at the edge. Before it is taken up again wind it once round the other, "
        "and leave it so loose that the edge is not drawn in. It is always at the side where its stripe ended.",
        "the resting yarn led up the side of the fabric to its next stripe",
    ),
}
