"""What a bed has beside its needles, and which of these are missing, drawn at random: lines of a `machine` block."""

from __future__ import annotations

import re
from random import Random

SETTINGS = ("", "dial", "plates 1, 2, 3, 4, 5, 6, 7, 8, 9, 10")
STARTS = ("", "starts with comb", "starts with hem", "starts by hand")
CROSSINGS = ("", "crosses on slip", "crosses lifted off", "crosses on hold")
PRONGS = ("", "", "prongs 1 2 3", "prongs 1 2 3 5", "prongs 1 2 3 4 7")
WASTE = ("", "", "waste rows 6", "waste rows 9", "waste rows 10")
WEIGHTS = ("", "", "edge guides", "without edge weights")

LONGEST = 400
"""Needles of the longest bed: on half of it a garment has room beside what is missing."""
MISSING = 1 / 5
"""Of so many garments the bed lacks needles."""
_RIB = re.compile(r"latched rib every \w+ needle")
_MACHINE = re.compile(r"^machine \w+$", re.MULTILINE)
_CHARTED = re.compile(r"^ +(?:chart|motif) |^ +latched rib", re.MULTILINE)
_LATCHED = re.compile(
    r"latched|linked|with chain|chained|cast off (?!sewn)|cast off$|cast off,|added after$|use armhole_|use head_", re.MULTILINE
)
_REJOINS = re.compile(r"^ +opening ", re.MULTILINE)


def bed_facts(dice: Random) -> str:
    """The lines below `machine NAME`, each in a line of its own; in a third of all draws none."""
    if dice.random() < 1 / 3:
        return ""
    drawn = (dice.choice(facts) for facts in (SETTINGS, STARTS, CROSSINGS, PRONGS, WASTE, WEIGHTS))
    return "".join(f"\n    {fact}" for fact in drawn if fact)


def lacking(dice: Random) -> str:
    """Lines of a bed from which needles are missing anywhere, or the latch tool: of few draws, for not all of them can be knitted
    there."""
    if dice.random() < 0.85:
        return ""
    needle = f"missing {dice.choice('LR')} {dice.randrange(1, 26)}"
    return f"\n    {dice.choice((needle, needle, needle, 'without latch tool'))}"


def as_it_stands(text: str, dice: Random) -> str:
    """The source on a bed that lacks something, or as it is.

    What is told from the centre mark cannot lie elsewhere. So where needles near the centre are missing the rib is knitted plain,
    and elsewhere only needles at the ends are missing, which nobody reaches. Where no latch tool is at hand edges are sewn off. A
    bed whose carriage passes no loop without knitting it is for garments without openings that rejoin."""
    facts: list[str] = []
    plain = _RIB.sub("stocking stitch", text)
    if dice.random() < MISSING:
        near = dice.random() < 0.7 and not _CHARTED.search(plain)
        facts = [f"needles {LONGEST}", f"missing {', '.join(_near(dice) if near else _far(dice))}"]
        if near:
            text = plain
        if near and dice.random() < 0.5 and not _LATCHED.search(_sewn(text)):
            text = _sewn(text)
            facts.append("without latch tool")
    elif dice.random() < 0.1 and not _REJOINS.search(text):
        text = re.sub(r"\n    crosses [a-z ]+$", "", text, flags=re.MULTILINE)
        facts = ["crosses only knitting"]
    return _MACHINE.sub(lambda bed: "".join((bed[0], *(f"\n    {fact}" for fact in facts))), text, count=1)


def _sewn(text: str) -> str:
    return re.sub(r"cast off chain|(?<=end )cast off$", "cast off sewn", text, flags=re.MULTILINE)


def _near(dice: Random) -> list[str]:
    """Needles within what a garment takes in the middle, at one side of the centre mark; the other side is whole."""
    side = dice.choice("LR")
    return [f"{side} {at}" for at in sorted(dice.sample(range(1, 40), dice.randrange(1, 4)))]


def _far(dice: Random) -> list[str]:
    half = LONGEST // 2
    return [f"{dice.choice('LR')} {dice.randrange(half - 20, half + 1)}" for _ in range(dice.randrange(1, 3))]
