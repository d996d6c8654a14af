"""The end of `walewright check`: what an author looks at last."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from walewright.report.model import Diagnostic

if TYPE_CHECKING:
    from walewright.pipeline import Outcome
    from walewright.proof.model import Measure

MARK = "!"
"""Behind what is further off than its stitch or row: it reads without colour."""
OFF = 1.0
"""A width or a height may be a stitch or a row off what is wanted, by docs/solver.md; what is more is marked."""
MANY = 3
"""Words that are listed with commas."""


def is_off(measure: Measure) -> bool:
    """Whether what is knitted is more than a stitch or a row off what is wanted."""
    return abs(measure.off) > OFF + 1e-6


def left_over(outcome: Outcome) -> str:
    """Unused names, edges that nothing joins and every figure that is marked, a line each; then of what there is nothing."""
    free = outcome.fit.free if outcome.fit is not None else ()
    # An edge that nothing is joined to and no statement names is unused and unsewn; it stands here once.
    unjoined = {(piece, edge.partition(" ")[0]) for piece, edge in free}
    named = [d for d in outcome.diagnostics if d.code == "unused-name" and not (d.case == "edge" and _edge(d) in unjoined)]
    unused = [f"unused: {_message(d)}" for d in named]
    unsewn = [f"unsewn: nothing is joined to {piece} {edge.replace(' ', '_')}" for piece, edge in free]
    off = list(_off(outcome))
    kinds = (("unused", unused), ("unsewn", unsewn), ("off by more than a stitch or a row", off))
    missing = [word for word, found in kinds if not found]
    last = f"nothing is {_either(missing)}; no loop is open" if missing else "no loop is open"
    return "\n".join((*unused, *unsewn, *off, last))


def _message(diagnostic: Diagnostic) -> str:
    from walewright.report.english import in_english

    return in_english(diagnostic).message


def _edge(diagnostic: Diagnostic) -> tuple[object, object]:
    """The piece and the name of the edge that a diagnostic is of."""
    facts = dict(diagnostic.facts)
    return facts["piece"], facts["edge"]


def _off(outcome: Outcome) -> Iterator[str]:
    from walewright.guide.english.measure_words import measure_words

    _, _, _, proof = outcome.result()
    for size in proof.sizes:
        for piece in size.pieces:
            for measure in filter(is_off, piece.measures):
                way = "much" if measure.off > 0 else "little"
                where = f"{piece.name}, {measure_words(measure.key)}, {size.size}"
                yield f"off: {where}: {abs(measure.off):.1f} {measure.unit} too {way} ({MARK})"


def _either(words: list[str]) -> str:
    return " or ".join(words) if len(words) < MANY else f"{', '.join(words[:-1])} or {words[-1]}"
