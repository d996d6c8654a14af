"""One block of a plan document followed on paper: needles, loops, yarn, counter. Written from docs/plan.md and from nothing else.

It imports nothing of the compiler, so that it cannot share a mistake with it. What the document says must be true is looked at
before each operation; the first thing that is not so raises `Differs`.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

HELPERS = ("waste", "ravel")
COMES_AWAY = -1
"""In place of a loop: waste yarn or ravel cord."""
NEAR, LONG_AGO, MOST_TOGETHER = 5, 8, 2

Op = dict[str, Any]


class Differs(Exception):
    """What the document says and what came of it on paper are not the same."""


@dataclass
class Hanging:
    """An end of yarn at a side and a needle; `counter` and `part` as they were then."""

    yarn: str
    side: str
    at: int
    counter: int
    part: int


@dataclass
class Row:
    """A row of garment yarn: what the counter read afterwards, its ends, and the outermost needles not out of work."""

    counter: int
    first: int
    last: int
    outer_first: int
    outer_last: int


@dataclass
class Paper:
    """The bed while one block is knitted. `where` has the needles that are not out of work; `on` what they carry."""

    name: str
    needles: int
    prongs: int
    looked: int = 0
    """How many things were looked at."""
    where: dict[int, str] = field(default_factory=dict)
    on: dict[int, list[int]] = field(default_factory=dict)
    counter: int = 0
    side: str = ""
    yarn: str = ""
    fastened: bool = False
    hangs: tuple[str, int] | None = None
    left: list[Hanging] = field(default_factory=list)
    part: int = 0
    parted_at: int | None = None
    below: list[tuple[int, ...]] = field(default_factory=list)
    """Of each loop those that it is drawn through."""
    slot: list[int] = field(default_factory=list)
    held: bytearray = field(default_factory=bytearray)
    """Of each loop whether something holds it."""
    count: int = 0
    """Loops of garment yarn."""
    laid: dict[int, int] = field(default_factory=dict)
    lifted: set[int] = field(default_factory=set)
    dropped: dict[int, list[int]] = field(default_factory=dict)
    turned: set[int] = field(default_factory=set)
    """Loops re-formed on the other face."""
    over: int | None = None
    """The innermost held needle that the last row ran out over."""
    held_at_carriage: int | None = None
    waiting_chain: tuple[int, int] | None = None
    widest: int = 0
    least: int | None = None
    most: int | None = None
    rows: list[Row] = field(default_factory=list)
    main_from: int = 0
    """The number of the row with which the piece itself begins."""
    first_rows: list[int] = field(default_factory=list)
    """Loops with which it began: cast on, picked up, rehung."""
    first_kind: str = ""
    picked: list[int] = field(default_factory=list)
    """How many were picked up of each edge, one after the other."""
    feet: list[int] = field(default_factory=list)
    feet_hung: bool = False
    edges: dict[str, int | None] = field(default_factory=dict)
    """Name -> number of loops, where it is one of stitches."""
    cast_off_at: set[int] = field(default_factory=set)
    """What the counter read when stitches were cast off or closed."""
    waste_edges: set[str] = field(default_factory=set)
    named: list[Op] = field(default_factory=list)
    ends_begun: int = 0
    """Ends of yarn that begin in picture rows."""

    # ------------------------------------------------------------- looking

    def must(self, true: bool, what: str) -> None:
        self.looked += 1
        if not true:
            raise Differs(f"{self.name}, at {self.counter}: {what}")

    def span(self, op: Op) -> range:
        first, last = op["first"], op["last"]
        self.must(first <= last, f"needles {first} to {last} run from right to left")
        return self.on_bed(range(first, last + 1))

    def coming_off(self, op: Op) -> list[int]:
        """The needles of a range without single ones out of work between two that carry loops."""
        slots = self.span(op)

        def passed(s: int) -> bool:
            return slots[0] < s < slots[-1] and s not in self.where and bool(self.on.get(s - 1)) and bool(self.on.get(s + 1))

        return [s for s in slots if not passed(s)]

    def on_bed(self, slots: range) -> range:
        half = self.needles // 2
        self.must(-half <= slots[0] and slots[-1] < half, f"{slots} is not all on the bed")
        return slots

    def all_are(self, slots: Any, where: str, loaded: bool | None = None) -> None:
        for s in slots:
            self.must(self.where.get(s, "out") == where, f"needle {s} is {self.where.get(s, 'out')}, not {where}")
            if loaded is not None:
                self.must(bool(self.on.get(s)) is loaded, f"needle {s} {'carries nothing' if loaded else 'is not empty'}")

    def working(self) -> list[int]:
        return sorted(s for s, where in self.where.items() if where == "work")

    def outermost(self) -> tuple[int, int] | None:
        loaded = [s for s, where in self.where.items() if where == "work" and self.on.get(s)]
        return (min(loaded), max(loaded)) if loaded else None

    def helper(self) -> bool:
        return self.yarn in HELPERS

    def beyond(self, side: str) -> int | None:
        """The innermost held needle beyond those in work."""
        work, held = self.working(), [s for s, where in self.where.items() if where == "held"]
        if not work:
            return None
        out = [s for s in held if (s > work[-1] if side == "right" else s < work[0])]
        return (min(out) if side == "right" else max(out)) if out else None

    # ------------------------------------------------------------- loops

    def loop(self, slot: int, through: tuple[int, ...] = (), counts: bool = True) -> int:
        """A new loop, drawn through those; `counts`: it is of new garment yarn."""
        made = len(self.below)
        self.below.append(through)
        self.slot.append(slot)
        self.held.append(0)
        for one in through:
            if one >= 0:
                self.held[one] = 1
        if COMES_AWAY in through:
            self.feet.append(made)
        self.count += counts
        if self.least is None or slot < self.least:
            self.least = slot
        if self.most is None or slot > self.most:
            self.most = slot
        return made

    def hang(self, slot: int, loop: int) -> None:
        self.on.setdefault(slot, []).append(loop)

    def lift(self, slot: int) -> tuple[int, ...]:
        return tuple(self.on.pop(slot, ()))

    def measured(self) -> None:
        """Loops were made: how wide does it lie?"""
        self.widest = max(self.widest, max(self.where) - min(self.where) + 1)

    def gone(self, slots: Any) -> None:
        for s in slots:
            self.where.pop(s, None)

    def begun_with(self, kind: str, loops: list[int]) -> None:
        if not self.rows and self.first_kind in ("", kind):
            self.first_kind = kind
            self.first_rows += loops

    def settle_chain(self, goes_on: bool) -> None:
        if self.waiting_chain is None:
            return
        chain, slot = self.waiting_chain
        self.waiting_chain = None
        if goes_on and slot in self.where:
            self.hang(slot, chain)
        else:
            self.held[chain] = 1
            self.fastened = True

    # ------------------------------------------------------------- yarn

    def yarn_in_use(self) -> None:
        self.must(bool(self.yarn) and not self.fastened, "no yarn is in use")

    def ends_within_reach(self, yarn: str, side: str, at: int) -> list[Hanging]:
        def same_part(end: Hanging) -> bool:
            return end.part == self.part or self.parted_at is None or end.counter <= self.parted_at

        return [
            e
            for e in self.left
            if (e.yarn, e.side) == (yarn, side)
            and abs(e.at - at) <= NEAR
            and 0 <= self.counter - e.counter <= LONG_AGO
            and same_part(e)
        ]

    def leave_hanging(self) -> None:
        if self.yarn and not self.fastened and self.hangs and not self.helper():
            self.left.append(Hanging(self.yarn, *self.hangs, self.counter, self.part))

    # ------------------------------------------------------------- a row

    def before_a_row(self, to: str) -> None:
        """What holds of every row, whatever yarn is in it."""
        self.must(self.side != to, f"the carriage is at the {to} already")
        work = self.working()
        self.must(bool(work), "no needle is in work")
        self.must(any(self.on.get(s) for s in work), "no needle in work carries a loop")
        empty = {s for s in work if not self.on.get(s)}
        self.must(not any(s + 1 in empty for s in empty), "two empty needles lie side by side in work")
        for wale in self.dropped.values():
            for one in wale:
                # What runs down and is not latched up stays a ladder: its bars need nothing to hold them.
                self.held[one] = 1
        self.dropped = {}

    def wrapped_by_the_way(self, start: str) -> None:
        """A needle held at the carriage's side is wrapped by the yarn that comes back over it."""
        slot = self.held_at_carriage
        if slot is not None and self.hangs and self.hangs[0] == start and self.beyond(start) == slot:
            self.wrapped(slot)

    def wrapped(self, slot: int) -> None:
        if self.helper():
            self.hang(slot, COMES_AWAY)
            return
        self.hang(slot, self.loop(slot))
        self.measured()

    def knitted(self, slot: int) -> None:
        self.on[slot] = [COMES_AWAY if self.helper() else self.loop(slot, self.lift(slot))]

    def row_done(self, to: str, work: list[int]) -> None:
        self.counter += 1
        self.side = to
        self.over = self.beyond(to)
        self.held_at_carriage = None
        self.lifted = set()
        if not self.helper():
            self.measured()
            self.rows.append(Row(self.counter, work[0], work[-1], min(self.where), max(self.where)))

    # ------------------------------------------------------------- the end

    def finish(self) -> None:
        """An empty bed, and every loop held."""
        self.settle_chain(goes_on=False)
        carried = sorted(s for s, loops in self.on.items() if loops)
        self.must(not carried, f"needles {carried[:5]} still carry loops")
        for wale in self.dropped.values():
            self.must(False, f"loops {wale} run down and nothing holds them")
        loose = [i for i, flag in enumerate(self.held) if not flag]
        self.looked += len(self.held)
        self.must(not loose, f"nothing holds {len(loose)} loops, the first on needle {self.slot[loose[0]] if loose else 0}")

    def counted_rows(self) -> int:
        return len({row.counter for row in self.rows[self.main_from :]})
