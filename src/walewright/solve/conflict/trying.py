"""Helps are tried before they are printed: each is a change, as data, made to the design and counted like the design itself.

A change that does not do as it was reckoned is made larger, then halved back to the least that does. What has been found not to do
is not proposed; where nothing does, only what names no figure is left.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from math import ceil, floor

from walewright.design.model import Design
from walewright.report.model import Change, Diagnostic
from walewright.report.said import Fact, Said, grouped, said, tenths
from walewright.solve.conflict.changed import changed, figures

MOST_TRIED = 10
"""Designs counted for the helps of one run: a bound that is the same on every computer."""

FARTHER = (1.0, 1.5, 2.5)
"""Shares of a reckoned change that are tried, the least first."""

EXACTLY = ("needles", "stitches", "widest", "steps")
"""What is reckoned exactly, and gets no truer farther away: of the bed, and how often a step is made."""

OTHERWISE = ("wider-than-bed", "slope-too-flat")
"""Messages whose helps name another way as well, which is no figure, and which stays beside those that do."""

MOST_TOLD = 2
"""Changes of one message that are printed, the nearest first; of those `OTHERWISE` all."""

Count = Callable[[Design], tuple[Diagnostic, ...]]
"""What there is to say against a design; nothing where it can be counted."""


def helped(design: Design, told: tuple[Diagnostic, ...], count: Count) -> tuple[Diagnostic, ...]:
    """The messages with those of their changes, in words, that do."""
    tries = _Tries(design, told, count)
    made: list[Diagnostic] = []
    for diagnostic in told:
        most = len(diagnostic.changes) if diagnostic.code in OTHERWISE else MOST_TOLD
        found: list[tuple[Change, ...]] = []
        for changes in diagnostic.changes:
            if len(found) >= most:
                break
            # Several figures at once are only proposed where none by itself does.
            if len(changes) > 1 and found:
                continue
            done = tries.nearest(diagnostic, changes)
            if done is not None:
                found.append(done)
        words = tuple(proposed(design, changes) for changes in found)
        spare = () if found and diagnostic.code not in OTHERWISE else diagnostic.helps
        made.append(replace(diagnostic, helps=(*words, *spare), changes=tuple(found)))
    return tuple(made)


class _Tries:
    """What is left of the tries of one run."""

    def __init__(self, design: Design, told: tuple[Diagnostic, ...], count: Count) -> None:
        self.design, self.told, self.count = design, told, count
        self.left = MOST_TRIED

    def nearest(self, diagnostic: Diagnostic, changes: Sequence[Change]) -> tuple[Change, ...] | None:
        """The least of the change that does: as it was reckoned, or farther; None if it does not, or cannot be tried any more."""
        failed = 0.0
        for share in FARTHER:
            made = self._scaled(changes, share)
            if made is None or self.left <= 0:
                return None
            if self._does(diagnostic, made):
                halfway = self._scaled(changes, (failed + share) / 2) if failed else None
                return halfway if halfway is not None and self._does(diagnostic, halfway) else made
            failed = share
        return None

    def _does(self, diagnostic: Diagnostic, changes: Sequence[Change]) -> bool:
        design = changed(self.design, changes)
        if design is None or self.left <= 0:
            return False
        self.left -= 1
        before = [_key(d) for d in self.told]
        after = [_key(d) for d in self.count(design)]
        # One mistake at a time: what else is wrong may stay, and nothing new comes up.
        return _key(diagnostic) not in after and set(after) <= set(before)

    def _scaled(self, changes: Sequence[Change], share: float) -> tuple[Change, ...] | None:
        made: list[Change] = []
        for change in changes:
            now = figures(self.design, change)
            if now is None:
                return None
            values = tuple((size, _away(now[size], now[size] + share * (value - now[size]))) for size, value in change.values)
            if share > 1.0 and change.figure in EXACTLY:
                return None
            made.append(replace(change, values=values))
        return tuple(made)


def _key(diagnostic: Diagnostic) -> tuple[str, object]:
    return diagnostic.code, diagnostic.labels[0].span if diagnostic.labels else (diagnostic.case, diagnostic.facts)


def _away(now: float, value: float) -> float:
    """In tenths, away from what is written today, so that no rounding undoes it."""
    exact = round(10 * value, 6)
    return (ceil(exact) if value >= now else floor(exact)) / 10


# ----------------------------------------------------------------- words


def proposed(design: Design, changes: Sequence[Change]) -> Said:
    """A change as a help."""
    first = changes[0]
    values = _each(design, first)
    match first.figure:
        case "needles":
            return said("wider-bed", needles=max(v for _, v in first.values))
        case "stitches":
            return said("knit-looser", stitches=min(v for _, v in first.values))
        case "widest":
            return said("narrow-it", cm=tenths(min(v for _, v in first.values)))
        case "easing":
            return said("allow-easing", lengths=values)
        case "least" | "most":
            ends = [said("end-of", level=first.at, piece=first.owner, lengths=values)]
            ends += [said("end-too", level=c.at, lengths=_each(design, c)) for c in changes[1:]]
            return said("let-ends-be", ends=tuple(ends), least=first.figure == "least")
        case "steps" if first.name is not None:
            return first.name
        case "width" if first.name is None:
            return said("make-wide", piece=first.owner, lengths=values, level=first.at)
    return said("would-do", figures=tuple(said("figure-at", figure=c.name, lengths=_each(design, c)) for c in changes if c.name))


def _each(design: Design, change: Change) -> tuple[Fact, ...]:
    """ "38 cm", or "38 cm in M and 40 cm in L, XL"."""
    by_size = {size: tenths(value) for size, value in change.values}
    if len(by_size) == len(design.sizes) and len(set(by_size.values())) == 1:
        return tuple(by_size.values())[:1]
    return tuple(said("in-sizes", length=length, sizes=sizes) for length, sizes in grouped(by_size))
