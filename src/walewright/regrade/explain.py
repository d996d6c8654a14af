"""Which of the things given it was, and how far it may go.

A source that compiles by itself and not with what was given fails for something given. What it was is found by leaving things out:
that without which the rest passes; else each that fails by itself. How far that may go is found by halving the way between the
source's own value and the given one, with all else as it is; the value that is told was compiled to the end, and works.

The trials are bounded by the work that is in them (`trials`), so that a garment that takes long to count is explained with what is
known by then.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from walewright.design.model.regrading import GivenKind
from walewright.record import record, replace
from walewright.regrade.line import TrialLine, lines
from walewright.regrade.trials import Trials
from walewright.report.model import Diagnostic, Severity, diagnosed, has_errors
from walewright.report.said import said
from walewright.report.wording import message_of

if TYPE_CHECKING:
    from walewright.design import Changes
    from walewright.design.model import Edition
    from walewright.pipeline import Outcome

MOST_NOTES = 3
"""Errors of the pattern that are repeated below what caused them."""
MOST_CAUSES = 4
"""Things given whose limits are looked for."""


@record
class Cause:
    """One thing given that does not go: `kept` are the changes among which it does not. `name` is the source's, `typed` the
    knitter's."""

    kind: GivenKind
    name: str
    typed: str
    text: str
    kept: Changes


def explained(outcome: Outcome, changes: Changes, trials: Trials) -> Outcome:
    """The outcome with its errors told as what they come of, where something given causes them; else as it is."""
    told = [d for d in outcome.diagnostics if d.severity is Severity.ERROR]
    if not told or not changes.regrade or any(_in_itself(d, changes) for d in told):
        return outcome
    # What fails only when it is knitted and worn has to be knitted to be seen.
    trials = replace(trials, count=trials.whole) if outcome.plans else trials
    alone = trials.counted(changes.only(()))
    source = alone.design.edition if alone.design is not None else None
    if source is None or has_errors(alone.diagnostics):
        return outcome
    found = [_told(cause, source, trials, told) for cause in _causes(changes, source, trials)]
    rest = tuple(d for d in outcome.diagnostics if d.severity is not Severity.ERROR)
    return replace(outcome, diagnostics=(*found, *rest)) if found else outcome


def _in_itself(diagnostic: Diagnostic, changes: Changes) -> bool:
    """Whether it tells what is wrong with something given by itself: with its option, or in the file of a bed."""
    own = changes.own_bed.span.file if changes.own_bed is not None else None
    return diagnostic.given is not None or any(label.span.file == own for label in diagnostic.labels)


def _causes(changes: Changes, source: Edition, trials: Trials) -> list[Cause]:
    given = [(kind, typed, text) for kind, typed, text in changes.texts() if kind != "dial"]
    if changes.own_bed is not None:
        given.append(("bed", "", ""))
    every = [(kind, typed) for kind, typed, _ in given]
    found = []
    for kind, typed, text in given:
        if len(given) == 1:
            return [Cause(kind, _named(kind, typed, source), typed, text, changes)]
        others = changes.only(k for k in every if k != (kind, typed))
        if trials.more and not has_errors(trials.counted(others).diagnostics):
            found.append(Cause(kind, _named(kind, typed, source), typed, text, changes))
    if found:
        return found[:MOST_CAUSES]
    for kind, typed, text in given:
        only = changes.only([(kind, typed)])
        if trials.more and has_errors(trials.counted(only).diagnostics):
            found.append(Cause(kind, _named(kind, typed, source), typed, text, only))
    return found[:MOST_CAUSES]


def _named(kind: str, typed: str, source: Edition) -> str:
    """The source's name of what was typed as a page prints it."""
    from walewright.design.reading.called import meant

    known: dict[str, tuple[str, ...]] = {
        "measure": {m.name: (m.published, m.printed) for m in source.measurements} | {c.name: () for c in source.counts},
        "yarn": {y.name: (y.label,) for y in source.yarns},
    }.get(kind, {f.name: () for f in source.fabrics})  # type: ignore[assignment]
    return next(iter(meant(typed, known)), typed)


def _told(cause: Cause, source: Edition, trials: Trials, told: list[Diagnostic]) -> Diagnostic:
    """The cause with its limit, and what the pattern says of it."""
    limit = _limit(cause, source, trials)
    if limit is None:
        help_ = said("without-it", own=_own(cause, source))
    else:
        line, works, fails = limit
        option = f'--{line.kind} "{cause.typed or line.name}={works}"' if line.name else f'--bed "{works}"'
        help_ = said("may-be", rises=line.rises, works=works, option=option, fails=fails)
    return diagnosed(
        "given-too-far",
        notes=tuple(dict.fromkeys(said("the-pattern", message=message_of(d), sizes=d.sizes) for d in told))[:MOST_NOTES],
        helps=(help_,),
        given=(cause.kind, cause.typed),
        what=said("quoted", name=cause.name) if cause.name else said("bed-given"),
        text=cause.text,
    )


def _own(cause: Cause, source: Edition) -> str:
    """The source's own value, as it is written there."""
    for row in source.measurements:
        if cause.kind == "measure" and row.name == cause.name:
            values = dict.fromkeys(f"{v:g}" for v in row.values)
            return f"{', '.join(values)} cm"
    for count in source.counts:
        if cause.kind == "measure" and count.name == cause.name:
            return ", ".join(dict.fromkeys(map(count.words, count.values)))
    for fabric in source.fabrics:
        if fabric.name == cause.name and cause.kind != "yarn":
            return f"{fabric.tension_words} to 10 cm"
    for yarn in source.yarns:
        if cause.kind == "yarn" and yarn.name == cause.name:
            return yarn.words
    return source.machine.words


def _limit(cause: Cause, source: Edition, trials: Trials) -> tuple[TrialLine, str, str] | None:
    """(line, the last text that works, the next one, which does not); None where none is found with the work that is left."""
    for line in lines(cause.kind, cause.name, cause.text, source):
        good, bad = 0, line.last

        def tried(at: int, line: TrialLine = line) -> Changes:
            return _with(cause, line, line.texts[at])

        if not trials.more:
            return None
        if has_errors(trials.counted(tried(good)).diagnostics):
            continue
        while bad - good > 1:
            if not trials.more:
                return None
            middle = (good + bad) // 2
            if has_errors(trials.counted(tried(middle)).diagnostics):
                bad = middle
            else:
                good = middle
        # What counts may still not be proven: the proof has the last word, a step or two nearer to the source.
        while good >= 0 and trials.more:
            if not has_errors(trials.proven(tried(good)).diagnostics):
                return line, line.texts[good], line.texts[bad]
            good, bad = good - max(1, good // 4), good
        return None
    return None


def _with(cause: Cause, line: TrialLine, text: str) -> Changes:
    """The changes with another text in place of the cause's: a swatch is tried as the tension that it says."""
    if line.kind == cause.kind:
        return cause.kept.with_text(cause.kind, cause.typed, text)
    others = [(kind, typed) for kind, typed, _ in cause.kept.texts() if (kind, typed) != (cause.kind, cause.typed)]
    if cause.kept.own_bed is not None:
        others.append(("bed", ""))
    return cause.kept.only(others).with_text(line.kind, cause.typed, text)
