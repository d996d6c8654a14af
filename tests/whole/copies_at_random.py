"""Garments drawn at random whose pieces are knitted more often in one size than in another: rings and rows of one piece, pieces
sewn to pieces of the same number, bands on each copy, single pieces that close a row."""

from __future__ import annotations

from dataclasses import dataclass
from random import Random

from tests.whole.beds_at_random import bed_facts
from tests.whole.garments_at_random import MACHINES, Drawn

SIZES = ("S", "M", "L")


@dataclass(frozen=True, slots=True)
class ManyCopies:
    """A source, how many copies each size has, and whether they make a ring or a row."""

    drawn: Drawn
    copies: tuple[int, ...]
    ring: bool


def copied(seed: int) -> ManyCopies:
    """The garment of that number."""
    dice = Random(seed)
    ring, tapered, sewn_on, edged, banded = (dice.random() < 0.5 for _ in range(5))
    first = dice.randrange(1 if ring else 2, 5)
    copies = first, first + dice.choice((0, 1)), first + dice.choice((1, 2, 4))
    shuffled = tuple(dice.sample(copies, 3))
    closed = not ring and dice.random() < 0.4
    text = _source(dice, shuffled, tapered, edged)
    seam = f"join gore side_left to gore side_right, each to the next{' all round' if ring else ''}"
    joins = [seam]
    if sewn_on and not tapered:
        text += """piece cap in plain, knit gores
    levels foot 0 cm, top 4 cm
    start wide wide with e-wrap
    edges straight to top called end_edge
    end cast off
"""
        joins.insert(0, "join gore end to cap start")
        joins.append(f"join cap end_edge_left to cap end_edge_right, each to the next{' all round' if ring else ''}")
    elif banded:
        text += "band rim with collar along gore end\n"
    if closed:
        text += """piece gusset in plain
    levels hem 0 cm, top length
    start 8 cm wide with e-wrap
    left edge straight to top called one
    right edge straight to top called other
    end cast off
"""
        joins += ["join gore side_left to gusset other", "join gore side_right to gusset one"]
    text += "".join(f"{join}\n" for join in joins)
    damages = {
        "left out": text.replace(f"{seam}\n", ""),
        "sewn twice": text + f"{seam}\n",
        "no number": text.replace("knit gores", "knit gors"),
    }
    if not closed or (sewn_on and not tapered):
        # Copies that nothing joins are garments by themselves.
        del damages["left out"]
    return ManyCopies(Drawn("copies", text, damages), shuffled, ring)


def _source(dice: Random, copies: tuple[int, ...], tapered: bool, edged: bool) -> str:
    machine = dice.choice(list(MACHINES))
    plain, _, label, ball = MACHINES[machine]
    lengths = [dice.randrange(20 + 6 * n, 26 + 6 * n) for n in range(3)]
    top = "slope to 6 cm wide at top" if tapered else "straight to top"
    start = "on waste yarn, with hem" if edged else "with e-wrap"
    return f"""pattern "Copies"
sizes {" ".join(SIZES)}
    length {" ".join(map(str, lengths))} cm
    gores {" ".join(map(str, copies))}
let wide = {dice.randrange(10, 15)} cm
machine {machine}{bed_facts(Random(f"copies {lengths}"))}
yarn wool "{label}", {ball}
fabric plain
    stocking stitch in wool at tension 6
    swatch 40 stitches by 60 rows = {plain}
edging hem in plain, 2 cm deep, folded, knitted first
edging collar in plain, 1.5 cm deep, folded, added after
piece gore in plain, knit gores
    levels hem 0 cm, top length
    start wide wide {start}
    edges {top} called side
    end cast off
"""
