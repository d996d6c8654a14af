"""How-tos of shaping: at the edges, by holding, and by hanging back."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "a-decrease-at-the-edge": HowToText(
        "A decrease at the edge",
        "Move the end loop on to its neighbour and push the emptied needle out of work. Where the line says 2 stitches, do it "
        "twice: then three loops share the end needle. Move the edge weight each time.",
        "the end loop set on its neighbour, its own needle pushed out of work",
    ),
    "a-decrease-some-stitches-in": HowToText(
        "A decrease some stitches in",
        "Take the tool with as many prongs as the line says stitches in, lift the end loops together and set them one needle "
        "inwards: two loops then share the innermost of these needles. Push the emptied end needle out of work and move the "
        "edge weight.",
        "a tool with two prongs setting the two end loops one needle inwards",
    ),
    "two-decreased-at-once-some-stitches-in": HowToText(
        "Two decreased at once, some stitches in",
        "Take the tool with as many prongs as the line says stitches in, lift the end loops together and set them two needles "
        "inwards: two loops then share each of the two innermost of these needles. Push the two emptied end needles out of "
        "work and move the edge weight.",
        "a tool with two prongs setting the two end loops two needles inwards",
    ),
    "an-increase-some-stitches-in": HowToText(
        "An increase some stitches in",
        "With the tool of as many prongs, lift the end loops together and set them one needle outwards. On the needle left "
        "empty hang the loop below the next stitch inwards, so that no hole is left.",
        "the end loops set outwards, and the loop of the row below being hung on the needle left empty",
    ),
    "a-decrease-on-a-line-inside": HowToText(
        "A decrease on a line inside the work",
        "No needle may stand empty in the middle, or a ladder runs down from it. So lift the loops next to the line, as many as "
        "the tool has prongs, and set them one needle towards it: the first of them shares the needle on the line. Set the loops "
        "beside them on the needles that are empty now, and go on so to the edge. Push the emptied end needle out of work and "
        "move the edge weight.",
        "a tool with three prongs setting three loops one needle inwards, the first of them on the needle of the line",
    ),
    "an-increase-beside-a-line-inside": HowToText(
        "An increase beside a line inside the work",
        "Bring the next empty needle at the edge to work. Lift the end loops, as many as the tool has prongs, and set them one "
        "needle outwards, then those beside them, and go on so to the line. On the needle left empty there hang the loop below "
        "the stitch on the line, so that no hole is left. Move the edge weight.",
        "three loops set one needle outwards, and the loop of the row below being hung on the needle left empty",
    ),
    "a-needle-out-of-work": HowToText(
        "A needle out of work",
        "Set its loop on the needle at its right and push it right back, out of work. The rows that follow lay a bar across the "
        "gap there: a ladder, along which the fabric folds either way. Look now and then that the needle has not come forward.",
        "a loop set on the needle at the right of its own, which is pushed out of work",
    ),
    "a-needle-left-out": HowToText(
        "A needle left out",
        "Push it right back before anything is cast on. The cast on passes over it, and so does whatever takes the last row off "
        "where needles are out up to the top. The rows lay a bar across the gap: a ladder, along which the fabric folds either "
        "way. Look now and then that the needle has not come forward.",
        "loops on the needles of a row but one, which is pushed right back, and the yarn going past it",
    ),
    "a-needle-back-to-work": HowToText(
        "A needle back to work",
        "Bring it to working position, empty: the next row lays the yarn in its hook, and the row after makes a stitch of it. The "
        "ladder ends there.",
        "an empty needle among the others, the yarn of the next row laid in its hook",
    ),
    "an-increase-at-the-carriage": HowToText(
        "An increase at the carriage",
        "Bring the next empty needle to work on the side where the carriage stands: the next row lays a loop in its hook. See "
        "that the loop is caught, and that it knits in the row after.",
        "an empty needle brought to work beside the last stitch",
    ),
    "casting-off": HowToText(
        "Casting off",
        "At the carriage side, set the end loop on the next needle, lay the yarn in that hook, pull a loose loop through both, "
        "and go on. Make the loops as long as two stitches, so that the edge stretches. Push the emptied needles out of work.",
        "two loops on one needle and the latch tool drawing the yarn through both",
    ),
    "casting-on-beside-the-work": HowToText(
        "Casting on beside the work",
        "On the carriage side, bring the empty needles right out and lead the yarn round each from the work outwards, a loop "
        "on each shank, not tight. Hang a weight below the new loops before the next row.",
        "empty needles beside the work, the yarn wound round them outwards",
    ),
    "holding": HowToText(
        "Holding",
        "Pull the needles right out and set the carriage so that it does not knit them. What is taken back to work is pushed "
        "by hand until the latch lies behind the loop; a part that still waits stays out. Take weights away from held "
        "stitches, and set the carriage back to knit all when none is held any more.",
        "three needles pulled right out with their stitches; the yarn passes them by",
    ),
    "wrapping": HowToText(
        "Wrapping",
        "Before the carriage goes back, lay the yarn under and over the held needle next to the knitting. Without it there is "
        "a hole.",
        "the yarn laid round the innermost needle that is held",
    ),
    "returning-needles-in-steps": HowToText(
        "Returning needles in steps",
        "Push back only the needles that the line names, those next to the knitting, to the place where the latch lies behind "
        "the loop; the others stay held. Knit towards them, wrap the first that is still held, and knit back. Move the "
        "weights to where rows are being added: held stitches with a weight below them stretch.",
        "the needle next to the knitting pushed back while others stay held",
    ),
    "hanging-stitches-back-evenly": HowToText(
        "Hanging stitches back evenly",
        "Leave the counter, the carriage and the garment yarn as they are: lift the loops off on to combs or a thread, or knit "
        "some rows of waste yarn by hand and take the work off. Push the emptied needles out of work. Bring the needles that "
        "the line names to work. With the purl side facing, hang the loops back from left to right in the order given, "
        "through the garment yarn and not the waste; where two share a needle put both in one hook, where a needle stays "
        "empty leave it in work: the next row gives it a loop. Count before the waste is drawn out, and knit the first row "
        "slowly.",
        "loops hung back, two on some of the needles",
    ),
}
