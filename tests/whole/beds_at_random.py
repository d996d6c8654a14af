"""What a bed has beside its needles, drawn at random: lines of a `machine` block."""

from __future__ import annotations

from random import Random

SETTINGS = ("", "dial", "plates 1, 2, 3, 4, 5, 6, 7, 8, 9, 10")
STARTS = ("", "starts with comb", "starts with hem", "starts by hand")
CROSSINGS = ("", "crosses on slip", "crosses lifted off", "crosses on hold")


def bed_facts(dice: Random) -> str:
    """The lines below `machine NAME`, each in a line of its own; in a third of all draws none."""
    if dice.random() < 1 / 3:
        return ""
    drawn = (dice.choice(facts) for facts in (SETTINGS, STARTS, CROSSINGS))
    return "".join(f"\n    {fact}" for fact in drawn if fact)
