"""What hands do with loops on paper: moved, taken off, hung up, run down, laid in. See `moves_on_paper`."""

from __future__ import annotations

from tests.plan.needles_on_paper import COMES_AWAY, HELPERS, MOST_TOGETHER, Op, Paper


def transfer(p: Paper, op: Op) -> None:
    slots, by = p.span(op), op["by"]
    p.must(len(slots) <= p.prongs, f"{len(slots)} loops are lifted together")
    p.must(by != 0, "moved by no needle")
    to = p.on_bed(range(slots[0] + by, slots[-1] + by + 1))
    for s in range(min(slots[0], to[0]), max(slots[-1], to[-1]) + 1):
        p.must(p.where.get(s) not in ("held", "cord"), f"needle {s} on the way is {p.where.get(s)}")
    for s in slots:
        p.must(bool(p.on.get(s)), f"needle {s} carries nothing to move")
    p.all_are(to, "work")
    lifted = [p.lift(s) for s in slots]
    for s, loops in zip(to, lifted, strict=True):
        for loop in loops:
            p.hang(s, loop)


def fill_from_below(p: Paper, op: Op) -> None:
    target, source = op["target"], op["source"]
    p.all_are([target], "work", loaded=False)
    p.must(abs(target - source) == 1 and bool(p.on.get(source)), f"no stitch beside needle {target}")
    loop = p.on[source][0]
    below = p.below[loop] if loop >= 0 else ()
    p.must(bool(below) and below[0] >= 0, f"there is no stitch below that of needle {source}")
    p.hang(target, p.loop(target, below[:1], counts=False))
    p.measured()


def close(p: Paper, op: Op) -> None:
    slots = p.coming_off(op)
    beyond = slots[-1] + 1 if op["towards"] == "right" else slots[0] - 1
    if p.waiting_chain is not None and slots[0] - 1 <= p.waiting_chain[1] <= slots[-1] + 1:
        p.settle_chain(goes_on=True)
    p.all_are(slots, "work", loaded=True)
    p.must(bool(p.on.get(beyond)), f"needle {beyond} has no loop to hang the last on")
    drawn: tuple[int, ...] = ()
    for s in slots if op["towards"] == "right" else reversed(slots):
        drawn = (p.loop(s, (*p.lift(s), *drawn), counts=False),)
    p.hang(beyond, drawn[0])
    p.gone(slots)
    p.cast_off_at.add(p.counter)


def gather(p: Paper, op: Op) -> None:
    _tail_takes(p, op, everything=True)


def sew_off(p: Paper, op: Op) -> None:
    _tail_takes(p, op, everything=False)


def _tail_takes(p: Paper, op: Op, everything: bool) -> None:
    slots = p.coming_off(op)
    p.must(not p.yarn or p.fastened, f"the {p.yarn} is not broken off")
    p.all_are(slots, "work", loaded=True)
    left = [s for s, loops in p.on.items() if loops and s not in slots and (everything or p.where.get(s) == "work")]
    p.must(not left, f"needles {left[:5]} carry loops too")
    for s in slots:
        for loop in p.lift(s):
            p.must(loop >= 0, f"needle {s} carries waste yarn")
            p.held[loop] = 1
    p.gone(slots)
    p.edges["end"] = len(slots)


def spread(p: Paper, op: Op) -> None:
    slots, counts = p.span(op), op["counts"]
    p.all_are(slots, "work", loaded=True)
    if p.waiting_chain is not None:
        p.settle_chain(goes_on=True)
    p.must(sum(counts) == len(slots), f"{len(slots)} stitches are taken off and {sum(counts)} hung back")
    p.must(max(counts) <= MOST_TOGETHER, f"{max(counts)} stitches on one needle")
    to = p.on_bed(range(op["to_first"], op["to_first"] + len(counts)))
    lifted = iter([p.lift(s) for s in slots])
    p.gone(slots)
    for s, count in zip(to, counts, strict=True):
        p.must(not p.on.get(s), f"needle {s} is not empty")
        p.where[s] = "work"
        for _ in range(count):
            for loop in next(lifted):
                p.hang(s, loop)
    if p.hangs and p.hangs[1] in (slots[0], slots[-1]):
        p.hangs = p.hangs[0], to[0] if p.hangs[1] == slots[0] else to[-1]
    p.held_at_carriage = None


def onto_waste(p: Paper, op: Op) -> None:
    slots = p.coming_off(op)
    if p.waiting_chain is not None and p.waiting_chain[1] in slots:
        p.settle_chain(goes_on=True)
    p.all_are(slots, "work", loaded=True)
    p.must(op["rows"] > 0, "no row of waste yarn")
    p.must(op["edge"] not in p.waste_edges, f"two edges are called {op['edge']}")
    for s in slots:
        for loop in p.lift(s):
            p.must(loop >= 0, f"needle {s} carries waste yarn")
            p.held[loop] = 1
    p.gone(slots)
    p.edges[op["edge"]] = len(slots)
    p.waste_edges.add(op["edge"])


def drop(p: Paper, op: Op) -> None:
    slot = op["slot"]
    p.all_are([slot], "work", loaded=True)
    wale = _wale(p, slot, op["rows"])
    p.must(len(p.on[slot]) == 1, f"the wale of needle {slot} joins another")
    p.lift(slot)
    p.dropped[slot] = wale


def _wale(p: Paper, slot: int, rows: int) -> list[int]:
    """The uppermost loops of a needle's wale."""
    loop = p.on[slot][0]
    wale: list[int] = []
    while len(wale) < rows and loop >= 0:
        wale.append(loop)
        loop = p.below[loop][0] if p.below[loop] else COMES_AWAY
    p.must(len(wale) == rows > 0, f"the wale of needle {slot} is {len(wale)} rows deep, not {rows}")
    return wale


def latch_up(p: Paper, op: Op) -> None:
    slot = op["slot"]
    p.all_are([slot], "work")
    if slot in p.dropped:
        wale = p.dropped.pop(slot)
        p.must(not p.on.get(slot), f"needle {slot} carries a loop again")
        p.must(len(wale) == op["rows"], f"{len(wale)} stitches of needle {slot} run down, {op['rows']} are latched up")
        p.hang(slot, wale[0])
    else:
        p.must(len(p.on.get(slot, ())) == 1, f"needle {slot} does not carry one loop")
        wale = _wale(p, slot, op["rows"])
    p.must(not p.turned & set(wale), f"of the wale of needle {slot} some were re-formed before")
    below = p.below[wale[-1]]
    p.must(not op["goes_on"] or (bool(below) and below[0] in p.turned), f"below the wale of needle {slot} nothing was re-formed")
    p.turned |= set(wale)


def cross(p: Paper, op: Op) -> None:
    slots, left = p.span(op), op["left"]
    p.all_are(slots, "work", loaded=True)
    p.must(0 < left < len(slots), "there are no two groups")
    lifted = [p.lift(s) for s in slots]
    for s, loops in zip(slots, (*lifted[left:], *lifted[:left]), strict=True):
        p.on[s] = list(loops)


def lift_off(p: Paper, op: Op) -> None:
    for s in p.span(op):
        p.all_are([s], "held")
        p.must(s in p.laid, f"no yarn of the last row lies over needle {s}")
        loop = p.laid.pop(s)
        p.on[s].remove(loop)
        p.lifted.add(s)
        if loop >= 0:
            p.held[loop] = 1
            p.count -= 1


def draw_long(p: Paper, op: Op) -> None:
    slot = op["slot"]
    p.all_are([slot], "held")
    p.must(slot in p.laid, f"no yarn of the last row lies over needle {slot}")
    loop = p.laid.pop(slot)
    p.on[slot].remove(loop)
    through = p.lift(slot)
    p.below[loop] = through
    for one in through:
        if one >= 0:
            p.held[one] = 1
    p.on[slot] = [loop]


def lay_in(p: Paper, op: Op) -> None:
    p.must(op["needles"] == sorted(set(op["needles"])), "needles are not named from left to right")
    p.must(op["yarn"] not in HELPERS, "waste yarn is laid in")
    for s in op["needles"]:
        p.all_are([s], "held")
        p.must(s in p.lifted, f"the row's own yarn was not lifted off needle {s}")
        p.lifted.discard(s)
        p.on[s] = [p.loop(s, p.lift(s))]


def hang_feet(p: Paper, op: Op) -> None:
    onto = op["onto"]
    above = "row" in op
    p.must(above or not p.feet_hung, "the first row was hung already")
    feet = p.loops_of_row(op["row"]) if above else p.feet
    if not feet:
        feet = (
            p.first_rows if p.first_kind == "cast on" else [i for i, below in enumerate(p.below) if set(below) & set(p.first_rows)]
        )
    feet = sorted(feet, key=lambda loop: p.slot[loop])
    p.must(len(onto) == len(feet), f"the first row has {len(feet)} loops and {len(onto)} needles take them")
    p.all_are(onto, "work")
    for s, foot in zip(onto, feet, strict=True):
        p.hang(s, p.loop(s, (foot,), counts=False))
    p.measured()
    p.feet_hung = p.feet_hung or not above


def rehang(p: Paper, op: Op) -> None:
    _take_on(p, op, "rehung")


def pick_up_edge(p: Paper, op: Op) -> None:
    if not op["over"]:
        _take_on(p, op, "picked up")
        return
    slots = p.span(op)
    p.all_are(slots, "work", loaded=True)
    for s in slots:
        p.must(len(p.on[s]) == 1 and p.on[s][0] in p.first_rows, f"needle {s} carries another loop than one picked up")
        p.hang(s, p.loop(s, counts=False))


def _take_on(p: Paper, op: Op, kind: str) -> None:
    slots = p.span(op)
    p.all_are(slots, "work", loaded=False)
    made = [p.loop(s, counts=False) for s in slots]
    for s, loop in zip(slots, made, strict=True):
        p.hang(s, loop)
    p.measured()
    p.begun_with("taken on", made)
    p.picked.append(len(slots))
