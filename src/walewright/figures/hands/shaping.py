"""How-tos of shaping: at the edges, by holding, and by hanging back."""

from __future__ import annotations

from walewright.figures.hands.scene import HOOK, OUT, Scene
from walewright.figures.hands.starts import wrap
from walewright.figures.hands.technique import Technique


def _decrease(s: Scene) -> None:
    s.needles(back=(5,)).loops(0, 1, 2, 3)
    s.doubled(4)
    s.transfer_tool(4, 1)
    s.arrow((s.x(5) - 0.6, HOOK + 5.5), (s.x(4) + 1.6, HOOK + 5.5))


def _decrease_in(s: Scene) -> None:
    s.needles(back=(5,)).loops(0, 1, 2, 4)
    s.doubled(3)
    s.transfer_tool(3, 2)
    s.arrow((s.x(5) - 0.6, HOOK + 5.5), (s.x(4) + 1.6, HOOK + 5.5))


def _decrease_two_in(s: Scene) -> None:
    s.needles(back=(4, 5)).loops(0, 1)
    s.doubled(2).doubled(3)
    s.transfer_tool(2, 2)
    s.arrow((s.x(5) - 0.6, HOOK + 5.5), (s.x(3) + 1.6, HOOK + 5.5))


def _increase(s: Scene) -> None:
    s.needles().loops(0, 1, 2, 4, 5)
    s.transfer_tool(4, 2)
    s.yarn((s.x(2) + 1.4, 16.4), (s.x(3) - 0.8, 12.5), (s.x(3), HOOK - 1.4), (s.x(3) + 0.9, 12.5), (s.x(2) + 2.4, 17))
    s.arrow((s.x(2) + 2.8, 19), (s.x(3) + 0.3, 13.6), -1.2)


def _at_carriage(s: Scene) -> None:
    s.needles().loops(0, 1, 2, 3, 4)
    s.yarn((s.x(4) + 1.8, 16), (s.x(5) - 1.4, 11), (s.x(5), HOOK - 0.4), (s.width - 0.5, 7.2))
    s.arrow((s.x(5) + 2.4, 3.4), (s.x(5) + 2.4, 7.2))


def _cast_off(s: Scene) -> None:
    s.needles(back=(4, 5)).loops(0, 1, 2)
    s.loop(3)
    s.loop(3, 15, top=HOOK - 3.6)
    s.yarn((s.x(3) + 0.3, HOOK + 0.2), (s.x(4), 13.4), (s.width - 0.6, 13.8))
    s.latch_tool(s.x(3) - 0.4, HOOK + 1.6, -18, 11)
    s.arrow((s.x(4) + 1, 18.6), (s.x(3) + 1.6, 15.4), 1.0)


def _cast_on(s: Scene) -> None:
    s.needles(out=(3, 4, 5)).loops(0, 1, 2)
    wrap(s, range(3, 6), 10.5)
    s.arrow((s.x(3), 18.5), (s.x(5) + 1, 18.5))


def _held(s: Scene) -> None:
    s.needles(out=(3, 4, 5)).loops(0, 1, 2)
    s.loops(3, 4, 5, low=18.5, out=OUT)
    s.yarn((0.8, 8.4), (s.x(2), HOOK - 0.6), (s.x(3) - 1.5, 7.2), (s.width - 0.8, 6.4))
    s.word(s.x(4), 21.9, "held")


def _wrapped(s: Scene) -> None:
    s.needles(out=(3, 4, 5)).loops(0, 1, 2)
    s.loops(3, 4, 5, low=18.5, out=OUT)
    s.yarn(
        (0.8, 8.4),
        (s.x(2), HOOK - 0.6),
        (s.x(3) - 1.6, 9.4),
        (s.x(3) + 1.5, 8.4),
        (s.x(3) + 0.4, 6.2),
        (s.x(3) - 1.6, 7.4),
        (s.x(2), 5),
        (0.8, 4.6),
    )
    s.arrow((s.x(3) - 5, 19.5), (s.x(3) - 0.8, 10.2), -1.4)


def _returned(s: Scene) -> None:
    s.needles(out=(4, 5)).loops(0, 1, 2, 3)
    s.loops(4, 5, low=18.5, out=OUT)
    s.arrow((s.x(3) + 2.6, 14.5), (s.x(3) + 2.6, 9.0))


def _hung_back(s: Scene) -> None:
    s.needles().loops(0, 1, 3, 4)
    s.loop(1, 15.5, top=HOOK - 3.6)
    s.loop(4, 15.5, top=HOOK - 3.6)
    s.transfer_tool(5, 1)
    s.word(s.x(1), 21.6, "two on one")
    s.word(s.x(3) + 3.6, 21.6, "or one left empty")


TECHNIQUES = (
    Technique(
        "A decrease at the edge",
        ("Decrease 1", "Decrease 2"),
        "Move the end loop on to its neighbour and push the emptied needle out of work. Where the line says 2 stitches, do it "
        "twice: then three loops share the end needle. Move the edge weight each time.",
        "the end loop set on its neighbour, its own needle pushed out of work",
        _decrease,
    ),
    Technique(
        "A decrease some stitches in",
        ("Decrease 1 in",),
        "Take the tool with as many prongs as the line says stitches in, lift the end loops together and set them one needle "
        "inwards: two loops then share the innermost of these needles. Push the emptied end needle out of work and move the edge "
        "weight.",
        "a tool with two prongs setting the two end loops one needle inwards",
        _decrease_in,
    ),
    Technique(
        "Two decreased at once, some stitches in",
        ("Decrease 2 in",),
        "Take the tool with as many prongs as the line says stitches in, lift the end loops together and set them two needles "
        "inwards: two loops then share each of the two innermost of these needles. Push the two emptied end needles out of work "
        "and move the edge weight.",
        "a tool with two prongs setting the two end loops two needles inwards",
        _decrease_two_in,
    ),
    Technique(
        "An increase some stitches in",
        ("IncreaseFashioned",),
        "With the tool of as many prongs, lift the end loops together and set them one needle outwards. On the needle left "
        "empty hang the loop below the next stitch inwards, so that no hole is left.",
        "the end loops set outwards, and the loop of the row below being hung on the needle left empty",
        _increase,
    ),
    Technique(
        "An increase at the carriage",
        ("IncreaseAtCarriage",),
        "Bring the next empty needle to work on the side where the carriage stands: the next row lays a loop in its hook. "
        "See that the loop is caught, and that it knits in the row after.",
        "an empty needle brought to work beside the last stitch",
        _at_carriage,
    ),
    Technique(
        "Casting off",
        ("CastOffAtCarriage", "CastOffAll"),
        "At the carriage side, set the end loop on the next needle, lay the yarn in that hook, pull a loose loop through "
        "both, and go on. Make the loops as long as two stitches, so that the edge stretches. "
        "Push the emptied needles out of work.",
        "two loops on one needle and the latch tool drawing the yarn through both",
        _cast_off,
    ),
    Technique(
        "Casting on beside the work",
        ("CastOnAtCarriage",),
        "On the carriage side, bring the empty needles right out and lead the yarn round each from the work outwards, a "
        "loop on each shank, not tight. Hang a weight below the new loops before the next row.",
        "empty needles beside the work, the yarn wound round them outwards",
        _cast_on,
    ),
    Technique(
        "Holding",
        ("HoldAtEnd", "HoldPart", "ReturnHeld", "ReturnPart", "ReturnSome"),
        "Pull the needles right out and set the carriage so that it does not knit them. What is taken back to work is "
        "pushed by hand until the latch lies behind the loop; a part that still waits stays out. Take weights away from held "
        "stitches, and set the carriage back to knit all when none is held any more.",
        "three needles pulled right out with their stitches; the yarn passes them by",
        _held,
    ),
    Technique(
        "Wrapping",
        ("WrapHeld",),
        "Before the carriage goes back, lay the yarn under and over the held needle next to the knitting. Without it there "
        "is a hole.",
        "the yarn laid round the innermost needle that is held",
        _wrapped,
    ),
    Technique(
        "Returning needles in steps",
        ("ReturnSome",),
        "Push back only the needles that the line names, those next to the knitting, to the place where the latch lies "
        "behind the loop; the others stay held. Knit towards them, wrap the first that is still held, and knit back. Move "
        "the weights to where rows are being added: held stitches with a weight below them stretch.",
        "the needle next to the knitting pushed back while others stay held",
        _returned,
    ),
    Technique(
        "Hanging stitches back evenly",
        ("SpreadEvenly",),
        "Leave the counter, the carriage and the garment yarn as they are: lift the loops off on to combs or a thread, or knit "
        "some rows of waste yarn by hand and take the work off. Push the emptied needles out of work. Bring the needles that "
        "the line names to work. With the purl side facing, hang the loops back from left to right in the order given, through "
        "the garment yarn and not the waste; where two share a needle put both in one hook, where a needle stays empty leave it "
        "in work: the next row gives it a loop. Count before the waste is drawn out, and knit the first row slowly.",
        "loops hung back, two on some of the needles",
        _hung_back,
    ),
)
