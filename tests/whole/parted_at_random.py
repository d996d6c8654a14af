"""Pieces with several openings drawn at random: side by side in the same rows, beginning and ending while others are open."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations
from random import Random

from tests.whole.garments_at_random import Drawn, _head, _line, _start, _without

LEVELS = 6
"""Above the start, the top among them."""


@dataclass(frozen=True, slots=True)
class DrawnOpening:
    """From level number `low` to `high`, its middle at `place` thousandths of the width right of the centre; how its edges are led,
    and what takes them up."""

    name: str
    low: int
    high: int
    place: int
    wide: int
    body: tuple[str, ...]
    taken: str
    band: str

    def written(self, place: int) -> str:
        """Its lines in the source, with its middle there."""
        side = f", half * {abs(place) / 1000:g} {'right' if place > 0 else 'left'} of centre" if place else ""
        between = f"from {_level(self.low)} to {_level(self.high)}"
        return "\n".join((f"    opening {self.name} {self.wide} cm wide {between}{side}{self.taken}", *self.body))


def _level(number: int) -> str:
    return "top" if number == LEVELS else f"level_{number}"


def parted(seed: int) -> Drawn:
    """The piece of that number: openings in two to four columns."""
    dice = Random(seed)
    openings = _openings(dice)
    text = _piece(dice, openings)
    damages: dict[str, str] = {}
    beside = [(a, b) for a, b in combinations(openings, 2) if a.low < b.high and b.low < a.high]
    if beside:
        one, other = dice.choice(beside)
        damages["one across another"] = text.replace(one.written(one.place), one.written(other.place))
        damages["one across the edge"] = text.replace(one.written(one.place), one.written(700))
        top = [o for o in openings if o.high == LEVELS]
        if top and one not in top and not one.body:
            damages["two to the top"] = text.replace(
                one.written(one.place), one.written(one.place).replace(_level(one.high), "top")
            )
    bands = [o.band for o in openings if o.wide and not o.taken]
    if bands:
        damages["open loops forgotten"] = _without(text, bands[0])
    return Drawn("parted", text, damages).on_its_bed(seed)


def _openings(dice: Random) -> list[DrawnOpening]:
    columns = dice.choice((2, 2, 3, 3, 4))
    found: list[DrawnOpening] = []
    for column in range(columns):
        place = round(((column + 1) * 2 / (columns + 1) - 1) * 500)
        low = dice.randrange(1, 4)
        while low < LEVELS:
            high = dice.randrange(low + 1, LEVELS + 1)
            if high == LEVELS and any(o.high == LEVELS for o in found):
                high -= 1
            if high == low:
                break
            found.append(_opening(dice, "abcdefgh"[len(found)], low, high, place))
            low = high + dice.randrange(1, 4)
            if dice.random() < 0.6:
                break
    # Nothing begins in the row where another ends.
    ends = {o.high for o in found}
    return [o for o in found if o.low not in ends]


_LED = (
    ("edges slope by 1 cm at {to}",),
    ("edges slope to 0 cm wide at {to}",),
    ("edges steps 0.5 cm 2 times to {to}",),
    ("left edge curve by 1 cm at {to}", "right edge straight to {to}"),
    ("left edge straight to {to}", "right edge slope by 1.5 cm at {to}, fashioned 2 in"),
    ("edges cast off 0.8 cm then curve by 1.6 cm at {to}",),
    ("left edge slope by 0.5 cm at {to}", "right edge slope by -0.4 cm at {to}"),
)


def _opening(dice: Random, name: str, low: int, high: int, place: int) -> DrawnOpening:
    taken = dice.choice(("", ", cast off", ", cast off"))
    # A band takes up what is left open.
    wide = dice.choice((0, 1, 2)) if taken else dice.choice((0, 2))
    taken = taken if wide else ""
    led = dice.choice(_LED) if wide and dice.random() < 0.7 else ()
    band = f"band {name}_band with collar along front {name}{'_centre' if wide and dice.random() < 0.4 else ''}"
    band = band if (wide and not taken) or dice.random() < 0.5 else ""
    return DrawnOpening(name, low, high, place, wide, tuple("        " + e.format(to=_level(high)) for e in led), taken, band)


_EDGES = (
    "    edges straight to top called side",
    "    edges slope by -2 cm at top called side",
    "    left edge straight to top called side\n    right edge curve by -3 cm at top called side",
    "    edges steps 1 cm 2 times to level_3 called side\n    edges slope by -1 cm at top called side",
    "    edges in 1 stitch every 10 rows to level_2 called side\n    edges out 1 stitch every 12 rows to top called side",
)


def _piece(dice: Random, openings: list[DrawnOpening]) -> str:
    # A chained edging asks for no columns of ribs, on a band as short as it comes.
    head = _head("parted", dice).replace("edging collar in rib", "edging collar in plain")
    heights = [0]
    for _ in range(LEVELS):
        heights.append(heights[-1] + dice.randrange(5, 9))
    levels = ", ".join(f"{_level(n)} {heights[n]} cm" for n in range(1, LEVELS + 1))
    lines = [
        "piece front in plain",
        f"    levels hem 0 cm, {levels}",
        f"    start half wide {_start(dice)}",
        dice.choice(_EDGES),
        *(o.written(o.place) for o in openings),
        "    end cast off",
        *(o.band for o in openings if o.band),
    ]
    return head + "".join(map(_line, lines))
