"""What is put together by hand: the sides of seams, what lies against what, and how."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.knit.steps import EdgeInSeam, JoinEdges, SeamOf, Step
from walewright.write.filling import Part, copy_word, filled
from walewright.write.grading import Graded
from walewright.write.language import PrintedLanguage
from walewright.write.said import StepSaid, between


def seams(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """Sides in the order of the seam: "back armhole left, then front armhole right to sleeve end (1st), from its right end"."""
    return list(between(language.sentences["and"], (_seam(seam, language) for seam in said.any.seams)))


def _seam(seam: SeamOf, language: PrintedLanguage) -> Iterator[Part]:
    if not seam.other:
        return filled("seam/closed", language, one=tuple(_edges(seam.one, language)))
    return filled("seam", language, one=tuple(_side(seam.one, language)), other=tuple(_side(seam.other, language)))


def _side(edges: Sequence[EdgeInSeam], language: PrintedLanguage) -> Iterator[Part]:
    """With where it begins; nothing said: at the bottom of its rows."""
    begin = edges[0].begin
    told = tuple(_edges(edges, language))
    return iter(told) if begin == "bottom" else filled("side", language, edges=told, begin=begin)


def _edges(edges: Sequence[EdgeInSeam], language: PrintedLanguage) -> Iterator[Part]:
    """A piece that has several edges there one after the other is named once."""
    before = (None, *edges)
    return between(language.sentences["then"], (_edge(edge, other, language) for edge, other in zip(edges, before, strict=False)))


def _edge(edge: EdgeInSeam, before: EdgeInSeam | None, language: PrintedLanguage) -> Iterator[Part]:
    if before is not None and (before.piece, before.copy) == (edge.piece, edge.copy):
        return filled("edge/same", language, edge=edge.edge)
    copy = tuple(filled("of_copy", language, copy=copy_word(edge.copy, language))) if edge.copy else ()
    return filled("edge", language, piece=edge.piece, copy=copy, edge=edge.edge)


def matched(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """What lies against what."""
    if said.any.ratio_rows:
        return list(filled("matched/ratio", language, said))
    if said.any.rows:
        return list(filled("matched/rows", language, said))
    return list(filled("matched/lengths", language, said)) if said.any.one_mm else []


LEAST_MM = 10
"""Nothing is said of two sides that differ by less than this in every size: it goes into any seam (common practice)."""

NO_CARE_MM = 5
"""What differs by less than this in one size needs none there: about a stitch or a row (common practice)."""


def eased(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """What is done with the longer side; of what lies along strips they are told with them."""
    if said.any.edges == "beyond" and not said.graded("longer_mm").always(0):
        return []
    if not said.graded("longer_mm").always(0):
        return list(filled("eased/stretching" if said.any.longer_mm < 0 else "eased/by", language, said))
    if not said.any.one_mm:
        easing = said.graded("easing_mm")
        return [] if easing.always(0) else list(filled("eased", language, easing=easing))
    told: list[Part] = []
    for key, sign in (("eased", 1), ("eased/second", -1)):
        longer = Graded(tuple(None if s is None else _longer(s, sign) for s in said.steps), said.group)
        if max((mm for mm in longer.values if mm), default=0) >= LEAST_MM:
            told += filled(f"{key}_too" if told else key, language, easing=longer.unless_none)
    return told


def _longer(step: Step, sign: int) -> int:
    """By how much one side is told longer, the first (`sign` 1) or the second (-1); 0 where it needs no care."""
    assert isinstance(step, JoinEdges)
    longer = sign * (step.one_mm - step.other_mm)
    return longer if longer >= NO_CARE_MM else 0


def how(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """Loop for loop, where both sides are open."""
    key = {"open": "how/open", "no tail": "how/no_tail", "at tail": "how/at_tail", "grafted": "how/grafted"}.get(
        said.any.edges or said.any.way
    )
    return list(filled(key, language)) if key else []


def strips(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """What is sewn on in the seam beyond the edges, so many rows of each."""
    if not said.any.strips:
        return []
    told = (_strip(said, language, number) for number in range(len(said.any.strips)))
    along = list(filled("strips", language, strips=tuple(between(language.sentences["and"], told))))
    beyond = said.any.edges == "beyond" and not said.graded("longer_mm").always(0)
    return [*along, *filled("strips/beyond", language, said)] if beyond else along


def _strip(said: StepSaid, language: PrintedLanguage, number: int) -> Iterator[Part]:
    owner, edging = said.any.strips[number]
    rows = Graded(tuple(None if s is None else s.strip_rows[number] for s in said.steps), said.group)  # type: ignore[attr-defined]
    return filled("strip", language, rows=rows, name=" ".join(filter(None, (owner, language.edge(edging)))))


def thread(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """The yarn that it is sewn with."""
    return list(filled(f"thread/{said.any.thread}", language, said)) if said.any.thread else []
