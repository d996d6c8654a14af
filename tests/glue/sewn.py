"""Garments as their pieces, put together: sources below one head, glued, with what is said of them."""

from __future__ import annotations

from walewright.cli.sources import shipped
from walewright.design import Changes, understand
from walewright.design.model import Design
from walewright.glue import Glued, glue
from walewright.report.english import in_english
from walewright.report.model import Diagnostic
from walewright.source import read

HEAD = """\
pattern "Sewn"

sizes one
    length 50 cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

fabric knobs
    stocking stitch in wool at tension 4
    right side purl
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

edging welt in plain, 4 cm deep, added after
edging collar in plain, 2.5 cm deep, added after

"""
SHIPPED = shipped()


def body(
    name: str, neck: str = "2.5 cm deep, round, 14 cm flat, cast off", start: str = "with e-wrap", end: str = "cast off"
) -> str:
    """A front or back with sides, armholes and a neck."""
    return f"""\
piece {name} in plain
    levels hem 0 cm, underarm 28 cm, top length
    start 44 cm wide {start}
    edges straight to underarm called side
    edges straight to top called armhole
    neck 20 cm wide, {neck}
    end {end}
"""


def panel(name: str, start: str = "with e-wrap", end: str = "cast off", copies: int = 1) -> str:
    """A straight piece with two sides."""
    times = f", knit {copies}" if copies > 1 else ""
    return f"""\
piece {name} in plain{times}
    levels hem 0 cm, top length
    start 30 cm wide {start}
    edges straight to top called side
    end {end}
"""


def fronts(open_edge: str = "left", to: str = "top") -> str:
    """A right front, worn at the right where its opening is at the `left` as it hung, and the left one as its mirror image."""
    closed = "right" if open_edge == "left" else "left"
    return f"""\
piece right_front in plain
    levels hem 0 cm, throat length - 8 cm, top length
    start 22 cm wide with e-wrap
    {closed} edge straight to top called side
    {open_edge} edge straight to throat called front
    {open_edge} edge cast off 3 cm then curve by -10 cm at {to} called neckline
    end cast off

piece left_front in plain, mirror of right_front
"""


SLEEVE = """\
piece sleeve in plain, knit 2
    levels cuff 0 cm, top 40 cm
    start 28 cm wide with e-wrap
    edges slope to 44 cm wide at top called seam
    end cast off
"""
STRIP = """\
piece strip in plain
    levels foot 0 cm, head {high}
    start 4 cm wide with e-wrap
    right edge straight to head called seam
    end cast off
"""
FRONT_NECK = "9 cm deep, round, cast off"
SHOULDERS = "join back shoulder to front shoulder\n"
SIDES = "join back side to front side\n"
SLEEVES = "join sleeve end to back armhole + front armhole, easing 9 cm\njoin sleeve seam to sleeve seam\n"
NECKBAND = "band neckband with collar along back neck + front neck\n"
VEST = body("back") + body("front", FRONT_NECK)
PULLOVER = VEST + SLEEVE + NECKBAND + SHOULDERS + SLEEVES + SIDES
JACKET = (
    body("back").replace("to underarm called side\n    edges straight to top called armhole", "to top called side")
    + fronts()
    + "band neckband with collar along right_front neckline + back neck + left_front neckline\n"
    + "join back shoulder to right_front end + left_front end\n"
    + "join back side to right_front side\njoin back side to left_front side\n"
)
MITTENS = """\
piece right_mitten in plain
    levels cuff 0 cm, palm 10 cm, top 22 cm
    start 22 cm wide with e-wrap
    edges straight to top called side
    slot thumb 6 cm wide at palm, 4 cm right of centre
    end gathered

piece left_mitten in plain, mirror of right_mitten

piece right_thumb in plain
    levels root 0 cm, tip 6 cm
    start 12 cm wide along right_mitten thumb + right_mitten thumb_upper
    edges straight to tip called side
    end gathered

piece left_thumb in plain
    levels root 0 cm, tip 6 cm
    start 12 cm wide along left_mitten thumb_upper + left_mitten thumb
    edges straight to tip called side
    end gathered

join right_mitten side to right_mitten side
join left_mitten side to left_mitten side
join right_thumb side to right_thumb side
join left_thumb side to left_thumb side
"""


def understood(text: str) -> Design:
    """The design of the pieces in `text`."""
    tree, unread = read("sewn.wale", HEAD + text)
    assert unread == ()
    design, told = understand(tree, SHIPPED, Changes())
    assert design is not None, told
    return design


def sewn(text: str) -> Glued:
    """The garment, put together; there is nothing to say about it."""
    glued, told = glue(understood(text))
    assert glued is not None, [(d.code, in_english(d).message) for d in told]
    assert told == ()
    (alike,) = glued.groups
    return alike


def told(text: str) -> list[Diagnostic]:
    """What is said of a garment."""
    return list(glue(understood(text))[1])


def codes(text: str) -> list[str]:
    return [d.code for d in told(text)]


def seams(glued: Glued) -> list[str]:
    """Each as "back side left ~ front side right", the copy of a piece knitted several times behind its name."""

    def side(chain: tuple[object, ...]) -> str:
        return " + ".join(f"{p.owner}{f' {p.copy}' if p.copies > 1 else ''} {p.edge}" for p in chain)  # type: ignore[attr-defined]

    return [f"{side(s.one)} ~ {side(s.other)}" for s in glued.seams]


def lines(glued: Glued) -> dict[str, list[str]]:
    """What hangs on what, from the left needle to the right."""
    found: dict[str, list[str]] = {}
    for line in glued.lines:
        said = " + ".join(f"{p.owner}{f' {p.copy}' if p.copies > 1 else ''} {p.edge}" for p in line.along)
        found.setdefault(line.owner, []).append(said)
    return found


def work(glued: Glued) -> list[str]:
    """The tasks in their order."""
    made = seams(glued)
    return [task.name or (made[task.number] if task.kind == "seam" else f"step {task.number}") for task in glued.order]
