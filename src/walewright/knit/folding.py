"""The rows of an edging, by its kind: what is knitted before a fold, the fold, what is knitted behind it, and the fold hung up.

`rows` are always those of the outside, which is seen.
"""

from __future__ import annotations

from dataclasses import dataclass

from walewright.design.model import Edging, Fabric
from walewright.knit import steps as st
from walewright.knit.edging_hands import idle_slots
from walewright.knit.figures import start_stripes
from walewright.knit.operations import Side, other
from walewright.knit.slots import slot_step
from walewright.knit.steps import Step
from walewright.solve.model import SizedSlot

FOLDED = ("folded", "picot", "mock rib")
"""Kinds whose first row is hung up again."""


@dataclass(frozen=True, slots=True)
class Leg:
    """Rows in one tension (empty: the fabric's); `picot`: a row of eyelets comes first; `outside`: what is seen."""

    rows: int
    tension: str = ""
    picot: bool = False
    outside: bool = False


def legs(edging: Edging, rows: int) -> tuple[Leg, ...]:
    """The rows of an edging in the order knitted."""
    fold = (Leg(1, edging.fold_tension),) if edging.fold_tension else ()
    outside = Leg(rows, outside=True)
    match edging.kind:
        case "folded" | "mock rib":
            inside = Leg(rows, edging.inside_tension)
            return (inside, *fold, outside) if edging.when == "first" else (outside, *fold, inside)
        case "picot":
            if edging.when == "first":
                return (Leg(rows, edging.inside_tension), Leg(rows, picot=True, outside=True))
            return (outside, Leg(rows, edging.inside_tension, picot=True))
        case "facing":
            return (Leg(1, edging.fold_tension), outside)
        case "chained":
            return (Leg(max(rows, 1), outside=True),)
    return (outside,)


def counted(edging: Edging, rows: int) -> int:
    """All the rows of an edging."""
    return sum(leg.rows for leg in legs(edging, rows))


def in_work(edging: Edging, first: int, last: int) -> int:
    """Of the needles `first`..`last` those that an edging is knitted on."""
    return last - first + 1 - (len(idle_slots(first, last, edging.mock)) if edging.kind == "mock rib" else 0)


def set_aside(edging: Edging, first: int, last: int) -> tuple[Step, ...]:
    """A mock rib's needles out of work."""
    if edging.kind != "mock rib":
        return ()
    return (st.EveryOutOfWork(edging.mock, in_work(edging, first, last), origin=edging.origin.path),)


def knitted(
    edging: Edging, fabric: Fabric, rows: int, first: int, last: int, ends: Side, holes: tuple[SizedSlot, ...] = ()
) -> tuple[Step, ...]:
    """From the first row of an edging, its yarn (`first_use`) threaded, to the last one, hung up if it is folded; the counter runs
    from 0 on, the carriage is at `ends` at last. Holes lie in the outside."""
    origin = edging.origin.path
    total = counted(edging, rows)
    loops = in_work(edging, first, last)
    own = legs(edging, rows)
    begin = fabric.tension if fabric.stripes else own[0].tension or fabric.tension
    made: list[Step] = [start_stripes(fabric, origin)] if fabric.stripes else []
    at, in_use = 0, begin
    for leg in own:
        # Stripes are all in one tension.
        tension = fabric.tension if fabric.stripes else leg.tension or fabric.tension
        if leg.picot:
            made.append(st.PicotRow(origin=origin))
        if tension != in_use:
            made.append(st.UseYarnStep(_first_yarn(fabric), tension, origin=origin))
            in_use = tension
        begun, end = at, at + leg.rows
        inside = [hole for hole in holes if leg.outside]
        for row in sorted({end, *(begun + hole.row for hole in inside)}):
            side = ends if (total - row) % 2 == 0 else other(ends)
            made += [st.KnitTo(row, origin=origin), st.Now(loops, row, side, origin=origin)]
            if fabric.rib_every and leg.outside:
                # A rib is latched up below and above a row of holes for itself: a hole's stitches are not those below it.
                made.append(st.LatchRib(fabric.rib_every, row - at, origin=origin))
            made += [slot_step(hole, fabric) for hole in inside if begun + hole.row == row]
            at = row
    if fabric.stripes:
        made.append(st.StopStripes(fabric.name, origin=origin))
    if edging.kind in FOLDED:
        onto = "all needles" if edging.kind == "mock rib" and edging.when == "first" else "the same needles"
        after = last - first + 1 if onto == "all needles" else loops
        # What is hidden lies at the side that is worn inside.
        way = "in front" if fabric.right_side == "knit" else "behind"
        made.append(st.FoldUp(loops, onto, after, way, origin=origin))
    return tuple(made)


def first_use(edging: Edging, fabric: Fabric, rows: int) -> st.UseYarnStep:
    """The yarn and tension of an edging's first row."""
    own = "" if fabric.stripes else legs(edging, rows)[0].tension
    return st.UseYarnStep(_first_yarn(fabric), own or fabric.tension, origin=edging.origin.path)


def _first_yarn(fabric: Fabric) -> str:
    return fabric.stripes[0][0] if fabric.stripes else fabric.yarn
