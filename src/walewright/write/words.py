"""The words of steps: which template of the language says a step, and the parts that are put together by themselves.

A phrase is made of one column of the alignment (the same step in every size that works it), without capital or full stop;
`lines` puts phrases together. What is said must be readable: `readback` has a rule of the template's name for each.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence

from walewright.knit import steps as st
from walewright.knit.operations import Side
from walewright.knit.steps import Step
from walewright.write import joins, patterns, rounds
from walewright.write.filling import Part, Parts, copy_word, filled
from walewright.write.grading import Graded
from walewright.write.in_mind import PLAIN as IN_MIND
from walewright.write.in_mind import TO_HOLD, TO_KNIT, HoldInMind, UseLooserInMind, UseYarnInMind
from walewright.write.language import PrintedLanguage
from walewright.write.listed import PLAIN as LISTED
from walewright.write.listed import KnitRowsListed, KnitToListed, RepeatListed
from walewright.write.model import Abbreviation, Run
from walewright.write.on_the_way import and_on_the_way
from walewright.write.said import Phrase, StepSaid, between, plain, prose, together, worded


def phrase(said: StepSaid, language: PrintedLanguage) -> Phrase:
    """The words of one step. Raises KeyError for a kind of step without a template."""
    step = said.any
    if isinstance(step, st.Now):
        return check(said, language)
    key = _CHOICES[type(step)](said) if type(step) in _CHOICES else named(type(step))
    return worded(*filled(key, language, said, PARTS))


def named(kind: type[Step]) -> str:
    """The name of the template of a kind of step: that of its class in small letters."""
    return re.sub(r"(?<=.)(?=[A-Z])", "_", PLAIN.get(kind, kind).__name__).lower()


PLAIN: Mapping[type[Step], type[Step]] = {**IN_MIND, **LISTED}
"""What kinds of steps that are known here alone are in the plan."""


def kinds(said: StepSaid) -> tuple[str, ...]:
    """Class names of the steps that the phrase says, those inside a repeat after "Repeat", and after "RepeatInside" where some of
    them stand in brackets; with the numbers where hands do something else for each."""
    if not isinstance(said.any, st.Repeat):
        return tuple(dict.fromkeys(kind(step) for step in said.steps if step is not None))
    body = bodies(said)
    bracketed = ("RepeatInside",) if any(isinstance(inner.any, st.Repeat) for inner in body) else ()
    return ("Repeat", *bracketed, *(kind for inner in body for kind in kinds(inner)))


def kind(step: Step) -> str:
    """ "Decrease 2 in", "Decrease 1", "EveryOutOfWork 3", "StartStripes carried"; of any other step the class name."""
    match step:
        case st.WasteStart() if step.way != "comb":
            return f"WasteStart {step.way}"
        case st.CarriageAt() if step.way:
            return f"CarriageAt {step.way}"
        case st.Decrease():
            return f"Decrease {step.by} in" if step.inset else f"Decrease {step.by}"
        case st.EveryOutOfWork():
            return f"EveryOutOfWork {step.every}"
        case st.StartStripes() if step.carried:
            return "StartStripes carried"
    return PLAIN.get(type(step), type(step)).__name__


def has_number(step: Step, language: PrintedLanguage) -> bool:
    """Whether the step's phrase has a number that can be a dash for the sizes that skip it, and nothing beside it that they would
    read as theirs."""
    if isinstance(step, st.Repeat):
        return True
    if getattr(step, "carriage", 0):
        return False
    if named(type(step)) not in language.sentences or isinstance(step, st.Together):
        return False
    return any(run.kind != "word" for run in phrase(StepSaid((step,), (0,)), language))


# ----------------------------------------------------------------- repeats


def repeated(said: StepSaid, language: PrintedLanguage) -> Phrase:
    """The words of a repeat as a sentence of its own, without the square brackets of a repeat inside another."""
    body = worded(*between(language.sentences["between"], (phrase(inner, language) for inner in bodies(said))))
    times = said.graded("times")
    told = and_on_the_way(said, language) if isinstance(said.any, RepeatListed) else []
    if times.always(1) and all(said.steps[i] is not None for i in said.group):
        return worded(*body, *told)
    whole = any(isinstance(step, st.Repeat) for step in said.any.body)
    return worded(*filled("loop/whole" if whole else "loop", language, said, body=body), *told)


def bodies(said: StepSaid) -> tuple[StepSaid, ...]:
    """The steps inside a repeat that are worked at all. The dash of a size that skips the repeat stands with the times; the
    body's numbers are for those who work it. A size that works the rest without a row first knits 0 rows: a dash would bid it
    leave out what follows too."""
    columns = (tuple(s.body[i] if isinstance(s, st.Repeat) else None for s in said.steps) for i in range(len(said.any.body)))
    return tuple(
        StepSaid(tuple(s if isinstance(s, st.KnitRows) else s and worked(s) for s in column), said.working)
        for column in columns
        if any(s and worked(s) for s in column)
    )


def worked(step: Step) -> Step | None:
    """The step, or None where its numbers say that nothing is done."""
    if isinstance(step, st.KnitRows) and step.rows == 0:
        return None
    if isinstance(step, st.Repeat) and (step.times == 0 or not any(worked(s) for s in step.body)):
        return None
    return step


# ----------------------------------------------------------------- what must be true

_CARRIAGES: Mapping[Side, int] = {"left": 0, "right": 1}
_CARRIAGE_AT = (Abbreviation.COL, Abbreviation.COR)


def carriage(sides: Sequence[Side | None], working: tuple[int, ...], language: PrintedLanguage) -> Run:
    """On which side it stands for each of the sizes that are `working`."""
    at = Graded(tuple(None if side is None else _CARRIAGES[side] for side in sides), working)
    used = frozenset(_CARRIAGE_AT[v] for v in at.values if v is not None)
    return at.run(at.text(language, lambda side: language.short(_CARRIAGE_AT[side])), short=used)


def check(said: StepSaid, language: PrintedLanguage, counter: bool = True) -> Phrase:
    """What must be true; without the `counter` where the same line has just named its value."""
    # The stitches have the dash of who skips this; the carriage needs none where it is on one side for all others.
    at = carriage(tuple(s.side if isinstance(s, st.Now) else None for s in said.steps), said.working, language)
    held = any(getattr(step, "held", 0) for step in said.steps)
    key = f"{named(type(said.any))}{'_held' if held else ''}{'' if counter else '/short'}"
    parts = filled(key, language, said, counter=(_counter(said, language),), carriage=(at,))
    return (together("check", parts),)


def _counter(said: StepSaid, language: PrintedLanguage) -> Run:
    """The counter's value with its name, as one figure."""
    row = said.graded("row")
    run = together("number", filled("counter", language, said))
    return row.run(run.text, short=run.short)


# ----------------------------------------------------------------- which template

_MORE: Mapping[int | None, str] = {0: "", 1: "/more"}
"""What is held: the first there, or beside others; else the next, which is both."""

_CHOICES: Mapping[type[Step], Callable[[StepSaid], str]] = {
    st.CarriageAt: lambda s: f"carriage_at/{s.any.way}" if s.any.way else "carriage_at",
    st.WasteStart: lambda s: "waste_start/hem" if s.any.way == "hem" else "waste_start",
    st.UseLooser: lambda s: "use_looser" if s.any.tension else "use_looser/next",
    UseLooserInMind: lambda s: f"use_looser{'/same' if _threaded(s) else ''}{'' if s.any.tension else '/next'}",
    UseYarnInMind: lambda s: f"use_yarn_step{'/same' if _threaded(s) else ''}",
    KnitToListed: lambda s: "knit_to/listed",
    KnitRowsListed: lambda s: "knit_rows/listed",
    HoldInMind: lambda s: f"hold_at_end{_MORE.get(s.graded('more').only, '/next')}",
    st.FoldUp: lambda s: _fold_up(s.any),
    st.PickUpAlong: lambda s: f"pick_up_along/{s.any.loops.replace(' ', '_')}" if s.any.loops else "pick_up_along",
    st.LatchPanel: lambda s: "latch_panel" if rounds.few_wales(s) else "latch_panel/every",
    st.LatchPanelInStages: lambda s: "latch_panel_in_stages" if rounds.few_wales(s) else "latch_panel_in_stages/every",
    st.EdgeIs: lambda s: "edge_is/one" if s.any.where in ("left", "right") else "edge_is",
}
"""Of the kinds of steps that have several."""


def _fold_up(step: st.FoldUp) -> str:
    if step.row:
        return "fold_up/row"
    return "fold_up/all" if step.onto == "all needles" else "fold_up/hung" if step.begun == "on loops" else "fold_up"


def _threaded(said: StepSaid) -> bool:
    """Whether it is the yarn that is threaded, in all sizes."""
    return said.graded("threaded").always(1)


def _part(key: str, when: Callable[[StepSaid], bool] = lambda said: True) -> Callable[[StepSaid, PrintedLanguage], list[Part]]:
    """A part that stands there `when` it is so."""
    return lambda said, language: list(filled(key, language, said, PARTS)) if when(said) else []


def _chosen(choose: Callable[[StepSaid], str]) -> Callable[[StepSaid, PrintedLanguage], list[Part]]:
    """A part that has several templates."""
    return lambda said, language: list(filled(choose(said), language, said, PARTS))


def _carriage_set(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """What the carriage is set to; where it stays as it is in some sizes only, words that hold in those too."""
    to = {getattr(step, "carriage", 0) for step in said.steps if step is not None}
    if to == {0}:
        return []
    key = "to_hold" if TO_HOLD in to else "to_knit" if to == {TO_KNIT} else "to_knit/if_free"
    return list(filled(f"carriage_set/{key}", language, said))


def _one_needle(said: StepSaid) -> bool:
    return said.graded("first").values == said.graded("last").values


def _middle(said: StepSaid) -> str:
    """The stitches where a piece parts: in the middle of the bed, as a rule."""
    parting = (step for step in said.steps if isinstance(step, st.CentreToWaste | st.CloseCentre))
    return "gap/centre" if all(step.first + step.last in (-1, 0) for step in parting) else "gap/between"


def _copy(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    copy = said.any.copy
    return list(filled("of_copy", language, copy=copy_word(copy, language))) if copy else []


def _edge_told(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """The edge of a piece, or a part of it; shoulders, and what is cast on above a slot, by what they are."""
    edge, part = said.any.edge, said.any.part
    if edge == "shoulder" and part in ("left", "right"):
        return list(filled("edge_told/shoulder", language, said, PARTS, side=part))
    if edge in ("start", "end") and part == "whole":
        return list(filled("edge_told/row", language, said, PARTS, row=edge))
    opening, _, upper = edge.rpartition(" ")
    if upper == "upper" and opening and part == "whole":
        return list(filled("edge_told/upper", language, said, PARTS, opening=language.edge(opening)))
    return list(filled("edge_told", language, said, PARTS))


def edges_hung(edges: Iterable[st.PickUpAlong], language: PrintedLanguage) -> Iterator[Part]:
    """The edges along which something is hung, one after the other."""
    told = (filled("again/edge", language, StepSaid((edge,), (0,)), PARTS) for edge in edges)
    return between(language.sentences["again/then"], told)


def _text(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    marks = language.marks
    return [plain(prose(said.any.text, language)).replace(marks.quotes[1], marks.instead)]


PARTS: Parts = {
    "repeated": lambda said, language: repeated(said, language),
    "text": _text,
    "span": _part("span"),
    "needles": _chosen(lambda s: "one_needle" if _one_needle(s) else "span"),
    "on_needles": _chosen(lambda s: "on_needles/one" if _one_needle(s) else "on_needles"),
    "which_part": _chosen(lambda s: "which_part/nth" if s.any.side == "nth" else "which_part"),
    "carriage_set": _carriage_set,
    "lines": _chosen(lambda s: "lines/both" if s.any.ends == "both ends" else "lines"),
    "inset": _part("inset", lambda s: not s.graded("inset").always(0)),
    "said_for": _part("said_for", lambda s: bool(s.any.fabric)),
    "left_hanging": _part("left_hanging", lambda s: s.any.before == "carried"),
    "begins_or_ends": _chosen(lambda s: "ends" if s.any.at == "end" else "begins"),
    "edge_called": lambda said, language: (language.edge_of(said.any.edge),),
    "length": _chosen(lambda s: "length" if s.graded("length_cm").always(0) else "length/least"),
    "tail": _part("tail", lambda s: not s.graded("tail_cm").always(0)),
    "gap": _chosen(_middle),
    "copy": _copy,
    "edge_told": _edge_told,
    "ratio": _part("ratio", lambda s: bool(s.any.per and s.any.every)),
    "stretch": lambda said, language: list(filled(f"stretch/{said.any.stretch}", language, said)) if said.any.stretch else [],
    "over": _part("over", lambda s: s.any.over == "the other piece"),
    "sooner": _part("sooner", lambda s: s.any.sooner == "disturbed"),
    "at_rows": _part("at_rows"),
    "middle": _part("middle", rounds.uneven_middle),
    "rows_listed": rounds.rows_listed,
    "rounds": rounds.rounds,
    "wales": rounds.wales,
    "needles_named": rounds.needles_named,
    "on_the_way": and_on_the_way,
    "looser": rounds.looser,
    "fabric_by": _part("fabric_by", lambda s: bool(s.any.fabric)),
    "area": _chosen(lambda s: "area/whole" if s.any.area == "whole" else "area/one" if _one_needle(s) else "area/panel"),
    "plain_ends": _part("plain_ends", lambda s: not s.graded("edge").always(0)),
    "but_ends": _part("but_ends", lambda s: not s.graded("edge").always(0)),
    "first_column": _chosen(lambda s: "first_column/repeat" if s.any.fabric else "first_column"),
    "stripes": patterns.stripes,
    "carrying": patterns.carrying,
    "seams": joins.seams,
    "turn": lambda said, language: list(filled(f"turn/{said.any.turn}", language, said)) if said.any.turn else [],
    "matched": joins.matched,
    "chained": joins.chained,
    "eased": joins.eased,
    "how": joins.how,
    "strips": joins.strips,
    "thread": joins.thread,
}
"""Parts of sentences that are put together by themselves."""
