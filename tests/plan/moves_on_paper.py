"""What each operation of docs/plan.md does to a block on paper, and what has to be true before it: one function an operation."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from tests.plan.hands_on_paper import (
    close,
    cross,
    draw_long,
    drop,
    fill_from_below,
    gather,
    hang_feet,
    latch_up,
    lay_in,
    lift_off,
    onto_waste,
    pick_up_edge,
    rehang,
    sew_off,
    spread,
    transfer,
)
from tests.plan.needles_on_paper import COMES_AWAY, NEAR, Hanging, Op, Paper

OTHER = {"left": "right", "right": "left"}


def use_yarn(p: Paper, op: Op) -> None:
    if op["yarn"] == p.yarn and not p.fastened:
        return
    p.settle_chain(goes_on=False)
    if op["carried"]:
        p.leave_hanging()
    p.yarn, p.fastened, p.hangs, p.over = op["yarn"], False, None, None
    ends = p.outermost()
    if op["carried"] and ends and p.side:
        at = ends[1] if p.side == "right" else ends[0]
        near = p.ends_within_reach(p.yarn, p.side, at)
        if near:
            end = min(near, key=lambda e: abs(e.at - at))
            p.left.remove(end)
            p.hangs = end.side, end.at


def break_yarn(p: Paper, op: Op) -> None:
    p.must(bool(p.yarn), "no yarn is threaded")
    p.settle_chain(goes_on=False)
    p.yarn, p.fastened, p.hangs, p.over = "", False, None, None


def pass_(p: Paper, op: Op) -> None:
    to = op["to"]
    p.settle_chain(goes_on=True)
    p.yarn_in_use()
    p.before_a_row(to)
    start, work = OTHER[to], p.working()
    if p.hangs:
        first = work[0] if start == "left" else work[-1]
        p.must(p.hangs[0] == start, f"the {p.yarn} hangs at the {p.hangs[0]}")
        p.must(abs(p.hangs[1] - first) <= NEAR, f"the {p.yarn} hangs at needle {p.hangs[1]}, the row starts at {first}")
    p.wrapped_by_the_way(start)
    inside = [s for s, where in p.where.items() if where == "held" and work[0] < s < work[-1]]
    for s in work:
        p.knitted(s)
    p.laid = {}
    for s in sorted(inside):
        laid = COMES_AWAY if p.helper() else p.loop(s)
        p.hang(s, laid)
        p.laid[s] = laid
    p.row_done(to, work)
    p.hangs = to, work[-1] if to == "right" else work[0]


def picture_row(p: Paper, op: Op) -> None:
    to, blocks = op["to"], op["blocks"]
    p.settle_chain(goes_on=True)
    p.before_a_row(to)
    start, work = OTHER[to], p.working()
    p.must(work == list(range(blocks[0][1], blocks[-1][2] + 1)), "the blocks do not cover the needles in work")
    p.must(all(b[1] == a[2] + 1 for a, b in pairwise(blocks)), "the blocks do not lie one beside the other")
    p.must(op["crossed"] or len(blocks) == 1, "neighbouring yarns are not crossed")
    p.leave_hanging()
    if p.held_at_carriage is not None and p.beyond(start) == p.held_at_carriage:
        p.wrapped(p.held_at_carriage)
    # Each end goes on with the nearest block of its yarn: the nearest pairs first.
    begins = [first if to == "right" else last for _, first, last in blocks]
    pairs = sorted(
        (abs(end.at - at), i, p.left.index(end))
        for i, (at, (yarn, _, _)) in enumerate(zip(begins, blocks, strict=True))
        for end in p.ends_within_reach(yarn, start, at)
    )
    found: dict[int, int] = {}
    for _, i, j in pairs:
        if i not in found and j not in found.values():
            found[i] = j
    p.ends_begun += len(blocks) - len(found)
    p.left = [end for j, end in enumerate(p.left) if j not in found.values()]
    for s in work:
        p.on[s] = [p.loop(s, p.lift(s))]
    own, p.yarn = p.yarn, blocks[0][0]
    p.row_done(to, work)
    p.left += [Hanging(yarn, to, last if to == "right" else first, p.counter, p.part) for yarn, first, last in blocks]
    p.yarn, p.fastened, p.hangs = own, False, None
    near = p.ends_within_reach(own, to, work[-1] if to == "right" else work[0])
    if near:
        end = min(near, key=lambda e: abs(e.at - (work[-1] if to == "right" else work[0])))
        p.left.remove(end)
        p.hangs = end.side, end.at


def move_carriage(p: Paper, op: Op) -> None:
    p.side = op["to"]
    p.held_at_carriage = None


def set_counter(p: Paper, op: Op) -> None:
    rows = op["rows"]
    waits = any(where in ("held", "cord") for where in p.where.values())
    parting = False
    if rows < p.counter and p.rows:
        p.part += 1
        if rows == 0 and not waits:
            p.main_from = len(p.rows)
        else:
            parting = waits
            p.parted_at = rows if waits else None
    if not parting:
        for end in p.left:
            end.counter += rows - p.counter
    p.counter = rows


def into_work(p: Paper, op: Op) -> None:
    slots = p.span(op)
    p.all_are(slots, "out")
    p.where.update(dict.fromkeys(slots, "work"))


def out_of_work(p: Paper, op: Op) -> None:
    slots = p.span(op)
    p.all_are(slots, "work", loaded=False)
    p.gone(slots)


def cast_on(p: Paper, op: Op) -> None:
    own = op["own_length"]
    if not own:
        p.settle_chain(goes_on=True)
    p.yarn_in_use()
    p.must(op["way"] != "comb" or p.helper(), "the comb in garment yarn")
    ends = p.outermost()
    slots = list(p.span(op))
    if ends is None and not own:
        slots = [s for s in slots if s in p.where or s in (slots[0], slots[-1])]
    elif not own and ends is not None:
        beside = ends[1] + 1 == slots[0] if p.side == "right" else slots[-1] == ends[0] - 1
        p.must(beside, f"cast on at {slots[0]}, not beside the outermost stitch at the {p.side}")
    p.all_are(slots, "work", loaded=False)
    made = [COMES_AWAY if p.helper() else p.loop(s) for s in slots]
    for s, loop in zip(slots, made, strict=True):
        p.hang(s, loop)
    if not p.helper():
        p.measured()
        p.begun_with("cast on", made)
    if not own:
        p.over = None
        if p.side:
            p.hangs = p.side, slots[-1] if p.side == "right" else slots[0]


def hold(p: Paper, op: Op) -> None:
    slots = p.span(op)
    p.all_are(slots, "work", loaded=True)
    ends = p.outermost()
    here = ends is not None and ((slots[-1] == ends[1]) if p.side == "right" else (slots[0] == ends[0]))
    if here and p.side and p.hangs and (slots[0], slots[-1]) != ends:
        p.must(len(slots) == 1 and p.held_at_carriage is None, "more than one needle held at the carriage's side")
        p.held_at_carriage = slots[0]
    p.where.update(dict.fromkeys(slots, "held"))


def release(p: Paper, op: Op) -> None:
    slots = p.span(op)
    p.all_are(slots, "held")
    p.where.update(dict.fromkeys(slots, "work"))
    if p.held_at_carriage in slots:
        p.held_at_carriage = None


def wrap(p: Paper, op: Op) -> None:
    p.settle_chain(goes_on=True)
    p.yarn_in_use()
    p.all_are([op["slot"]], "held")
    p.must(p.over == op["slot"], f"the last row did not run out over needle {op['slot']}, the innermost held one")
    p.wrapped(op["slot"])


def lay_cord(p: Paper, op: Op) -> None:
    slots = p.span(op)
    for s in slots:
        p.must(p.where.get(s) in ("work", "held"), f"needle {s} is not in work")
        p.must(bool(p.on.get(s)) and p.on[s][0] >= 0, f"needle {s} carries no loop of garment yarn")
    p.must(not (p.yarn and p.hangs and p.hangs[1] in slots), f"the {p.yarn} hangs from needles that wait on cord")
    p.where.update(dict.fromkeys(slots, "cord"))


def draw_cord(p: Paper, op: Op) -> None:
    slots = p.span(op)
    p.all_are(slots, "cord")
    p.where.update(dict.fromkeys(slots, "held"))


def cast_off(p: Paper, op: Op) -> None:
    p.settle_chain(goes_on=True)
    p.yarn_in_use()
    slots, start = p.coming_off(op), op["start"]
    p.all_are(slots, "work", loaded=True)
    ends = p.outermost()
    assert ends is not None
    p.must(p.side in ("", start), f"cast off from the {start}, and the carriage is at the {p.side}")
    p.must((slots[-1] == ends[1]) if start == "right" else (slots[0] == ends[0]), "not begun with the outermost in work")
    chain: tuple[int, ...] = ()
    for s in reversed(slots) if start == "right" else slots:
        through = (*p.lift(s), *chain)
        chain = () if p.helper() else (p.loop(s, through),)
    p.gone(slots)
    p.cast_off_at.add(p.counter)
    beyond = slots[0] - 1 if start == "right" else slots[-1] + 1
    p.side, p.over, p.hangs = start, None, (start, beyond)
    if p.on.get(beyond) and p.where.get(beyond) == "work":
        p.hang(beyond, chain[0] if chain else COMES_AWAY)
    elif chain and p.on.get(beyond) and p.where.get(beyond) == "held":
        p.waiting_chain = chain[0], beyond
    else:
        p.fastened = True
        for loop in chain:
            p.held[loop] = 1
    if p.outermost() is None:
        p.edges["end"] = p.edges["shoulder"] = None


def name_edge(p: Paper, op: Op) -> None:
    p.must(op["from_row"] < op["to_row"], f"the edge {op['edge']} has no rows")
    p.named.append(op)


def check(p: Paper, op: Op) -> None:
    p.must(op["row"] == p.counter, f"the counter reads {p.counter}, not {op['row']}")
    p.must(op["side"] == p.side, f"the carriage is at the {p.side or 'side not known'}, not at the {op['side']}")
    p.must(op["stitches"] == len(p.where), f"{len(p.where)} needles are in work, not {op['stitches']}")


def in_fabric(p: Paper, op: Op) -> None:
    if op["first"] <= op["last"]:
        p.span(op)


DONE: dict[str, Callable[[Paper, Op], None]] = {
    "use-yarn": use_yarn,
    "break-yarn": break_yarn,
    "pass": pass_,
    "picture-row": picture_row,
    "move-carriage": move_carriage,
    "set-counter": set_counter,
    "into-work": into_work,
    "out-of-work": out_of_work,
    "cast-on": cast_on,
    "transfer": transfer,
    "fill-from-below": fill_from_below,
    "hold": hold,
    "release": release,
    "wrap": wrap,
    "lay-cord": lay_cord,
    "draw-cord": draw_cord,
    "cast-off": cast_off,
    "close": close,
    "gather": gather,
    "sew-off": sew_off,
    "spread": spread,
    "onto-waste": onto_waste,
    "drop": drop,
    "latch-up": latch_up,
    "cross": cross,
    "lift-off": lift_off,
    "draw-long": draw_long,
    "lay-in": lay_in,
    "hang-feet": hang_feet,
    "rehang": rehang,
    "pick-up-edge": pick_up_edge,
    "in-fabric": in_fabric,
    "name-edge": name_edge,
    "name-gap": name_edge,
    "check": check,
}
