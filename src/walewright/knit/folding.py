"""The rows of an edging, by its kind: what is knitted before a fold, the fold, what is knitted behind it, the fold hung up, and the
looser row that knits both layers together.

`rows` are always those of the outside, which is seen.
"""

from __future__ import annotations

from collections.abc import Iterator

from walewright.counted.model import SizedSlot
from walewright.counted.ribs import rib_begin
from walewright.design.model import Edging, Fabric, MachineProfile
from walewright.glue.model import Face
from walewright.knit import steps as st
from walewright.knit.dial import HEM, Looser, looser
from walewright.knit.edging_hands import idle_slots
from walewright.knit.figures import start_stripes
from walewright.knit.manners import FoldOnto, FoldWay
from walewright.knit.operations import Side, other
from walewright.knit.ribbed import Ribbed
from walewright.knit.slots import slot_step
from walewright.knit.stages import stage_rows
from walewright.knit.steps import Step
from walewright.record import record, replace
from walewright.trade.edgings import EDGINGS


@record
class Leg:
    """Rows in one tension (empty: the fabric's); `picot`: a row of eyelets comes first; `outside`: what is seen; `joins`: the first
    row is hung up before, and this knits both layers together."""

    rows: int
    tension: str = ""
    picot: bool = False
    outside: bool = False
    joins: bool = False


def legs(edging: Edging, rows: int) -> tuple[Leg, ...]:
    """The rows of an edging in the order knitted."""
    fold = (Leg(1, edging.fold_tension),) if edging.fold_tension else ()
    outside = Leg(rows, outside=True)
    # What is cast off after the fold needs no row: the chain goes through both layers.
    joining = Leg(1, joins=True)
    match edging.kind:
        case "folded" | "mock rib":
            inside = Leg(rows, edging.inside_tension)
            return (inside, *fold, outside, joining) if edging.when == "first" else (outside, *fold, inside)
        case "picot":
            if edging.when == "first":
                return (Leg(rows, edging.inside_tension), Leg(rows, picot=True, outside=True), joining)
            return (outside, Leg(rows, edging.inside_tension, picot=True))
        case "facing":
            return (Leg(1, edging.fold_tension), outside)
        case "chained":
            return (Leg(max(rows, 1), outside=True),)
        case "plain" | "rolled":
            return (outside,)


def counted(edging: Edging, rows: int) -> int:
    """All the rows of an edging."""
    return sum(leg.rows for leg in legs(edging, rows))


def seen_rows(edging: Edging, rows: int) -> tuple[int, int]:
    """How many of its rows are knitted before the first that is seen, and up to the last of these."""
    before = 0
    for leg in legs(edging, rows):
        if leg.outside:
            return before, before + leg.rows
        before += leg.rows
    raise ValueError(f"nothing of {edging.name} is seen")


def end_rows(edging: Edging, rows: int) -> tuple[int, int]:
    """The rows at its ends that something is sewn to or hung on, as `seen_rows`: of a folded one both layers lie together there;
    of what is turned in as a whole, all."""
    return (0, counted(edging, rows)) if EDGINGS[edging.kind].turned_in else seen_rows(edging, rows)


def sewn_rows(edging: Edging, rows: int) -> int:
    """How many rows at its ends are sewn."""
    low, high = end_rows(edging, rows)
    return high - low


def in_work(edging: Edging, first: int, last: int) -> int:
    """Of the needles `first`..`last` those that an edging is knitted on."""
    return last - first + 1 - (len(idle_slots(first, last, edging.mock)) if EDGINGS[edging.kind].idle_needles else 0)


def set_aside(edging: Edging, first: int, last: int) -> tuple[Step, ...]:
    """A mock rib's needles out of work."""
    if not EDGINGS[edging.kind].idle_needles:
        return ()
    return (st.EveryOutOfWork(edging.mock, in_work(edging, first, last), origin=edging.origin.path),)


@record
class EdgingRows:
    """An edging on needles `first`..`last`, `rows` of it seen, its side `worn` outside; the counter runs on from `after`, the rows
    of the piece that it is knitted on to, if it is; or it is `hung` on loops. `holes` lie in the outside, those `behind` in the
    layer folded behind."""

    edging: Edging
    fabric: Fabric
    rows: int
    first: int
    last: int
    worn: Face
    holes: tuple[SizedSlot, ...] = ()
    behind: tuple[SizedSlot, ...] = ()
    after: int = 0
    hung: bool = False


def knitted(of: EdgingRows, ends: Side, bed: MachineProfile, said: str = "") -> tuple[Step, ...]:
    """From the first row of an edging, its yarn (`first_use`) threaded, to the last one, hung up if it is folded; the carriage is
    at `ends` at last. A deep rib is latched up in the stages of the `bed`. `said` is the fabric's name, where it was said with
    its yarn."""
    edging, fabric, rows, first, last, after = of.edging, of.fabric, of.rows, of.first, of.last, of.after
    origin = edging.origin.path
    total = after + counted(edging, rows)
    loops = in_work(edging, first, last)
    own = legs(edging, rows)
    begin = fabric.tension if fabric.stripes else own[0].tension or fabric.tension
    made: list[Step] = [start_stripes(fabric, origin)] if fabric.stripes else []
    at, in_use = after, begin
    for leg in own:
        if leg.joins:
            made += _hung_up(of)
            loops = _after_fold(edging, first, last)
            joined = (st.KnitTo(total, origin=origin), st.Now(loops, total, ends, origin=origin))
            made += [*_joining(fabric, bed.plates, in_use, origin), *joined]
            continue
        # Stripes are all in one tension.
        tension = fabric.tension if fabric.stripes else leg.tension or fabric.tension
        if leg.picot:
            made.append(st.PicotRow(origin=origin))
        if tension != in_use:
            made.append(st.UseYarnStep(_first_yarn(fabric), tension, fabric=said, origin=origin))
            in_use = tension
        begun, end = at, at + leg.rows
        cuts = (
            [replace(hole, row=begun + hole.row) for hole in of.holes]
            if leg.outside
            else [h for h in of.behind if begun < h.row < end]
        )
        rows_of = {hole.row for hole in cuts}
        rib = _rib(fabric, first, last, begun, end, origin) if leg.outside else None
        stages = stage_rows(begun, (end, *rows_of), *bed.stage)
        deep = rib is not None and len(stages) > len({end, *rows_of})
        if rib is not None and deep:
            made.append(rib.stages(stages, "disturbed" if cuts else ""))
        for row in sorted({end, *rows_of}):
            side = ends if (total - row) % 2 == 0 else other(ends)
            made += [st.KnitTo(row, origin=origin), st.Now(loops, row, side, origin=origin)]
            if rib is not None and not deep:
                # A rib is latched up below and above a row of holes for itself: a hole's stitches are not those below it.
                made.append(rib.step(row - at))
            made += [slot_step(hole, fabric) for hole in cuts if hole.row == row]
            at = row
    if not own[-1].joins:
        made += _hung_up(of)
    return tuple(made)


def _rib(fabric: Fabric, first: int, last: int, from_row: int, to_row: int, origin: str) -> Ribbed | None:
    """The latched rib of an edging's outside."""
    begin = rib_begin(fabric.rib_every, first, last) if fabric.rib_every else None
    return None if begin is None else Ribbed(fabric.rib_every, begin, from_row, to_row, None, origin)


def _hung_up(of: EdgingRows) -> Iterator[Step]:
    """What ends the rows of an edging: its stripes, and its first row hung up if it is folded: of one knitted on to `after` rows
    of a piece, the row above these."""
    edging, origin = of.edging, of.edging.origin.path
    if of.fabric.stripes:
        yield st.StopStripes(of.fabric.name, origin=origin)
    if EDGINGS[edging.kind].folded:
        onto: FoldOnto = "all needles" if _filled(edging) else "the same needles"
        # What is hidden lies at the side that is worn inside.
        way: FoldWay = "in front" if of.worn == "knit" else "behind"
        row = of.after + 1 if of.after else 0
        before, then = (count(edging, of.first, of.last) for count in (in_work, _after_fold))
        yield st.FoldUp(before, onto, then, way, row, "on loops" if of.hung else "on ravel cord", origin=origin)


def _filled(edging: Edging) -> bool:
    """Whether the needles of a mock rib that were out of work come back for what follows."""
    return EDGINGS[edging.kind].idle_needles and edging.when == "first"


def _after_fold(edging: Edging, first: int, last: int) -> int:
    """Stitches in work when the fold is hung up."""
    return last - first + 1 if _filled(edging) else in_work(edging, first, last)


def _joining(fabric: Fabric, plates: tuple[str, ...], in_use: str, origin: str) -> tuple[Step, ...]:
    """The tension of the row that knits the fold together; nothing where the loosest plate is in already."""
    row = looser(fabric.tension, HEM, plates)
    if row.loosest and in_use == fabric.tension and not fabric.stripes:
        return ()
    return (use_looser(_first_yarn(fabric), row, origin),)


def use_looser(yarn: str, row: Looser, origin: str) -> Step:
    """The yarn for a row that knits two layers together; at the loosest plate it is no looser."""
    if row.loosest:
        return st.UseYarnStep(yarn, row.label, origin=origin)
    return st.UseLooser(yarn, row.label, row.than, row.by, origin=origin)


def first_use(edging: Edging, fabric: Fabric, rows: int, said: str = "") -> st.UseYarnStep:
    """The yarn and tension of an edging's first row."""
    own = "" if fabric.stripes else legs(edging, rows)[0].tension
    return st.UseYarnStep(_first_yarn(fabric), own or fabric.tension, fabric=said, origin=edging.origin.path)


def _first_yarn(fabric: Fabric) -> str:
    return fabric.stripes[0][0] if fabric.stripes else fabric.yarn
