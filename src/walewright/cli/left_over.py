"""The end of `walewright check`: what an author looks at last."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from walewright.cli.tables import written
from walewright.report.model import Diagnostic
from walewright.report.said import said, size_as_said
from walewright.report.wording import Language, worded

if TYPE_CHECKING:
    from walewright.guide.model import Guide
    from walewright.pipeline import Outcome
    from walewright.proof.model import Measure

MARK = "!"
"""Behind what is further off than its stitch or row: it reads without colour."""
OFF = 1.0
"""A width or a height may be a stitch or a row off what is wanted, by docs/solver.md; what is more is marked."""


def is_off(measure: Measure) -> bool:
    """Whether what is knitted is more than a stitch or a row off what is wanted."""
    return abs(measure.off) > OFF + 1e-6


def left_over(outcome: Outcome, guide: Guide, words: Language) -> str:
    """Unused names, edges that nothing joins and every figure that is marked, a line each; then of what there is nothing."""
    from walewright.trade.edge_names import part_of_edge

    free = outcome.fit.free if outcome.fit is not None else ()
    # An edge that nothing is joined to and no statement names is unused and unsewn; it stands here once.
    unjoined = {(piece, part_of_edge(edge).name) for piece, edge in free}
    named = [d for d in outcome.diagnostics if d.code == "unused-name" and not (d.case == "edge" and _edge(d) in unjoined)]
    unused = [guide.say("check/unused", told=worded(d, words).message) for d in named]
    unsewn = [guide.say("check/unsewn", edge=written(piece, edge)) for piece, edge in free]
    off = list(_off(outcome, guide))
    kinds = (("check/no-unused", unused), ("check/no-unsewn", unsewn), ("check/no-off", off))
    missing = tuple(said(key) for key, found in kinds if not found)
    last = guide.say("check/nothing", kinds=missing) if missing else guide.say("check/no-loop")
    return "\n".join((*unused, *unsewn, *off, last))


def _edge(diagnostic: Diagnostic) -> tuple[object, object]:
    """The piece and the name of the edge that a diagnostic is of."""
    facts = dict(diagnostic.facts)
    return facts["piece"], facts["edge"]


def _off(outcome: Outcome, guide: Guide) -> Iterator[str]:
    _, _, _, proof = outcome.result()
    for size in proof.sizes:
        for piece in size.pieces:
            for measure in filter(is_off, piece.measures):
                where = ", ".join((piece.name, guide.measure(measure.key), size_as_said(size.size)))
                off, wide = abs(measure.off), measure.off > 0
                yield guide.say(f"check/off-{measure.unit}", where=where, off=off, wide=wide, mark=f"({MARK})")
