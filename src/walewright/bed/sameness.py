"""When two fabrics are the same: everything that a knitter could see or feel, and nothing of how hands got there."""

from __future__ import annotations

import hashlib
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from walewright.bed.fabric import KnitFabric


def same(one: KnitFabric, other: KnitFabric) -> bool:
    """Whether all that makes a fabric is the same of both."""
    return one is other or (_loops(one) == _loops(other) and _around(one) == _around(other))


def digest(fabric: KnitFabric) -> str:
    """The same text for the same fabric, and, as far as anybody will see, for no other."""
    found = hashlib.sha256(repr(_around(fabric)).encode())
    for flat in _loops(fabric):
        found.update(flat)
    return found.hexdigest()


def _loops(fabric: KnitFabric) -> tuple[bytes, ...]:
    return (fabric.slots.tobytes(), fabric.parents.tobytes(), fabric.kinds, fabric.faces)


def _around(fabric: KnitFabric) -> tuple[object, ...]:
    """What there is beside the loops: yarns, tensions, wraps, floats, crossings, tails, edges, what it hangs on (of which copy,
    which side to the knitter), and what was said to be knitted; not what the counter read.

    The rows of waste yarn are in it too: they come away, but to knit them otherwise than told is not to knit the same.
    """
    runs: dict[int, int] = {}
    courses = [
        (
            *(c.kind, c.to, c.yarn, c.tension, runs.setdefault(c.run, len(runs))),
            *(c.first, c.last, c.count, c.first_loop, c.fabric, c.panels, c.cast_on, c.apart),
        )
        for c in fabric.courses
    ]
    ends = [(e.name, e.part, e.along, e.count, e.points, e.live) for e in fabric.edges]
    links = [(link.loop, link.piece, link.loops) for link in fabric.links]
    by_hand = (
        [(f.yarn, f.first, f.last) for f in fabric.floats],
        [slot for _, slot in fabric.crossings],
        [(c.before, c.first, c.last, c.left, c.front) for c in fabric.crosses],
        [(yarn, cm) for yarn, cm in fabric.tails if cm],
        fabric.folded,
        fabric.folded_above,
        [(before, slot, rows) for before, _, slot, rows in fabric.latched],
        [(before, first, last) for before, _, first, last in fabric.corded],
    )
    hung = [
        [(h.piece, h.edge, h.part, h.copy, h.first, h.last, h.facing) for h in line] for line in (fabric.hung, fabric.hung_over)
    ]
    return (fabric.name, fabric.copies, courses, sorted(fabric.more_parents.items()), ends, links, hung, fabric.waste, by_hand)
