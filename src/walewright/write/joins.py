"""What is put together by hand: the sides of seams, what lies against what, and how."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby

from walewright.knit.steps import Copy, EdgeInSeam, JoinEdges, SeamOf, Step
from walewright.record import replace
from walewright.write.filling import Part, copy_word, filled
from walewright.write.grading import Graded
from walewright.write.language import PrintedLanguage
from walewright.write.said import StepSaid, between

EACH = Copy(each=True)


def seams(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """Sides in the order of the seam: "the last row of the 1st sleeve from its left end to the right armhole of the back, then the
    left armhole of the front". Where each copy of a piece is sewn on by the same edges, these are told once for all of them."""
    told: Sequence[SeamOf] = said.any.seams
    copies, gathered = _copies(told), said.any.way == "gathered"
    if copies:
        others = (
            filled("seams/copy", language, copy=language.ordinal(copy), other=tuple(_side(seam.other, language)))
            for copy, seam in zip(copies, told, strict=True)
        )
        one = _side(_at(told[0].one, EACH), language)
        return list(filled("seams/copies", language, one=tuple(one), others=tuple(between("; ", others))))
    return list(between(language.sentences["and"], (_seam(seam, gathered, language) for seam in told)))


def _copies(told: Sequence[SeamOf]) -> tuple[int, ...]:
    """The number of the copy that each seam sews on, where all of them do so by the same edges; else nothing."""
    copies = tuple(seam.one[0].copy.number for seam in told)
    alike = len(told) > 1 and len(set(copies)) == len(told) and min(copies) > 0 and all(seam.other for seam in told)
    whole = all(edge.copy.number == copy for copy, seam in zip(copies, told, strict=True) for edge in seam.one)
    return copies if alike and whole and len({_at(seam.one, EACH) for seam in told}) == 1 else ()


def _at(side: Sequence[EdgeInSeam], copy: Copy) -> tuple[EdgeInSeam, ...]:
    return tuple(replace(edge, copy=copy) for edge in side)


def _seam(seam: SeamOf, gathered: bool, language: PrintedLanguage) -> Iterator[Part]:
    if not seam.other:
        return filled("seam/closed" if gathered else "seam/folded", language, one=tuple(_side(seam.one, language, begins=False)))
    one = tuple(_side(seam.one, language))
    if len({(edge.piece, edge.copy) for edge in (*seam.one, *seam.other)}) == 1 and len(seam.one) == len(seam.other) == 1:
        other, half = seam.other[0].edge, language.half_of_same_row(seam.one[0].edge, seam.other[0].edge)
        told = tuple(filled("same_row", language, half=half)) if half else (language.edge_of(other),)
        key = "seam/own_row" if half else "seam/own"
        return filled(key, language, one=one, other=tuple(_begun(told, seam.other, language)))
    return filled("seam", language, one=one, other=tuple(_side(seam.other, language, before=seam.one[-1].piece)))


def _side(edges: Sequence[EdgeInSeam], language: PrintedLanguage, begins: bool = True, before: str = "") -> Iterator[Part]:
    """A piece that has several edges there one after the other is named once, and is the next one where it is another copy of the
    piece named `before`. With where the first begins; nothing said: at the bottom of its rows."""
    runs = [tuple(run) for _, run in groupby(edges, key=lambda edge: (edge.piece, edge.copy))]
    told = [tuple(_run(run, before, language)) for run in runs]
    first = tuple(_begun(told[0], edges, language)) if begins else told[0]
    return between(language.sentences["then"], (first, *told[1:]))


def _begun(told: Iterable[Part], edges: Sequence[EdgeInSeam], language: PrintedLanguage) -> Iterator[Part]:
    begin = edges[0].begin
    return iter(told) if begin == "bottom" else filled("side", language, edges=tuple(told), begin=begin)


def _run(run: Sequence[EdgeInSeam], before: str, language: PrintedLanguage) -> Iterator[Part]:
    """Edges of one piece, or of one of its copies."""
    piece, copy = run[0].piece, run[0].copy
    edges = tuple(between(language.sentences["then"], (_edge(edge.edge, language) for edge in run)))
    if copy.each:
        key = "edges/each"
    elif copy.number < 0:
        key = "edges/next_one" if piece == before else "edges/next"
    else:
        key = "edges/copy" if copy else "edges"
    return filled(key, language, edges=edges, piece=piece, copy=copy_word(copy, language) if copy else "")


def _edge(edge: str, language: PrintedLanguage) -> Iterator[Part]:
    return filled("edge", language, edge=(language.edge_of(edge),))


def matched(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """What lies against what."""
    if said.any.ratio_rows:
        return list(filled("matched/ratio", language, said))
    if said.any.rows:
        return list(filled("matched/rows", language, said))
    return list(filled("matched/lengths", language, said)) if said.any.one_mm else []


def chained(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """What is cast off or on at once along the edges, and lies on each other."""
    if not said.any.chained:
        return []
    alike = said.graded("one_chain").values == said.graded("other_chain").values
    return list(filled("chained" if alike else "chained/unlike", language, said))


LEAST_MM = 10
"""Nothing is said of two sides that differ by less than this in every size: it goes into any seam (common practice)."""

NO_CARE_MM = 5
"""What differs by less than this in one size needs none there: about a stitch or a row (common practice)."""


def eased(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """What is done with the longer side; of what lies along strips they are told with them."""
    if said.any.edges == "beyond" and not said.graded("longer_mm").always(0):
        return []
    if not said.graded("longer_mm").always(0):
        folds = "eased/pleats" if said.any.way == "pleated" else "eased/by"
        return list(filled("eased/stretching" if said.any.longer_mm < 0 else folds, language, said))
    if not said.any.one_mm:
        easing = said.graded("easing_mm")
        return [] if easing.always(0) else list(filled("eased", language, easing=_up_to(easing, said, language)))
    told: list[Part] = []
    for key, sign in (("eased", 1), ("eased/second", -1)):
        longer = Graded(tuple(None if s is None else _longer(s, sign) for s in said.steps), said.group)
        if max((mm for mm in longer.values if mm), default=0) >= LEAST_MM:
            told += filled(f"{key}_too" if told else key, language, easing=_up_to(longer.unless_none, said, language))
    return told


def _up_to(easing: Graded, said: StepSaid, language: PrintedLanguage) -> tuple[Part, ...]:
    """How much is eased in; where that is nothing in some sizes, the others are named. A size without the seam has its dash."""
    if said.working != said.group or all(easing.values[size] for size in said.group):
        return tuple(filled("eased/all", language, easing=easing))
    of = {mm: tuple(size for size in easing.group if easing.values[size] == mm) for mm in (easing.values[i] for i in easing.group)}
    told = (
        filled("eased/sizes", language, easing=Graded((mm,), (0,)), sizes=language.named_sizes(sizes))
        for mm, sizes in of.items()
        if mm
    )
    return tuple(between(language.sentences["between"], told))


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
    first_row = any(edge.edge == "start" for seam in said.any.seams for edge in (*seam.one, *seam.other))
    return [*filled(key, language), *(filled("how/first_row", language) if first_row else ())] if key else []


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
    return filled("strip", language, rows=rows, name=_called(owner, edging, language))


def _called(owner: str, edging: str, language: PrintedLanguage) -> str:
    """ "back welt", or a band by its name."""
    return " ".join(filter(None, (owner, language.edge(edging))))


def thread(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """The yarn that it is sewn with, a length for each of several seams."""
    if said.any.tails:
        owners = (filled("tail_of", language, name=_called(owner, edging, language)) for owner, edging in said.any.tails)
        return list(filled("thread/tails", language, tails=tuple(between(language.sentences["and"], owners))))
    seams = said.any.seams
    several = len(seams) > 1 or said.any.turn or any(edge.copy.each for seam in seams for edge in seam.one)
    key = "thread/new_each" if said.any.thread == "new" and several else f"thread/{said.any.thread}"
    return list(filled(key, language, said)) if said.any.thread else []
