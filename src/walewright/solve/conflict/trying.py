"""Helps are tried before they are printed: each is a change, as data, made to the design and counted like the design itself.

A change that does not do as it was reckoned is made larger, then halved back to the least that does. Of several mistakes each is
mended by itself first; a change is proposed if the design is counted with it and with one for every other mistake. Where nothing
does, only what names no figure is left.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import chain, islice, product
from math import ceil, floor

from walewright.design.model import Design
from walewright.record import replace
from walewright.report.model import Change, Diagnostic
from walewright.report.said import Fact, Said, each_size, said, tenths
from walewright.solve.conflict.changed import changed, figures

MOST_TRIED = 10
"""Designs counted for the helps of one run: a bound that is the same on every computer."""

MOST_TOGETHER = 5
"""Choices of a change for each mistake that are tried at once."""

FARTHER = (1.0, 1.5, 2.5)
"""Shares of a reckoned change that are tried, the least first."""

MOST_TOLD = 2
"""Changes of one message that are printed, the nearest first; of one with other ways beside them all."""

Instead = tuple[Change, ...]
"""Figures to write instead, all at once."""

Count = Callable[[Design], tuple[Diagnostic, ...]]
"""What there is to say against a design; nothing where it can be counted."""


def helped(design: Design, told: tuple[Diagnostic, ...], count: Count, glance: Count | None = None) -> tuple[Diagnostic, ...]:
    """The messages with those of their changes, in words, that do. `glance`: what is seen before anything is counted, where that
    is what was told: of several mistakes each is looked at so."""
    tries = _Tries(design, told, count, glance if len(told) > 1 else None)
    found = [tries.found(diagnostic) for diagnostic in told]
    if len(told) > 1:
        found = tries.together(found)
    return tuple(_proposing(design, diagnostic, ways) for diagnostic, ways in zip(told, found, strict=True))


def _proposing(design: Design, diagnostic: Diagnostic, ways: Sequence[Instead]) -> Diagnostic:
    words = tuple(proposed(design, changes) for changes in ways)
    spare = () if ways and not diagnostic.other_ways else diagnostic.helps
    return replace(diagnostic, helps=(*words, *spare), changes=tuple(ways))


class _Tries:
    """What is left of the tries of one run."""

    def __init__(self, design: Design, told: tuple[Diagnostic, ...], count: Count, glance: Count | None) -> None:
        self.design, self.told, self.count, self.glance = design, told, count, glance
        self.left = MOST_TRIED

    def found(self, diagnostic: Diagnostic) -> list[Instead]:
        """Instead that mend one mistake and bring no other."""
        most = len(diagnostic.changes) if diagnostic.other_ways else MOST_TOLD
        found: list[Instead] = []
        for changes in diagnostic.changes:
            if len(found) >= most:
                break
            # Several figures at once are only proposed where none by itself does.
            if len(changes) > 1 and found:
                continue
            done = self._nearest(diagnostic, changes)
            if done is not None:
                found.append(done)
        return found

    def together(self, found: Sequence[Sequence[Instead]]) -> list[list[Instead]]:
        """Of the changes for each mistake those with which, and with one for each other, the design is counted; those first that
        go together."""
        alike = ([ways[min(n, len(ways) - 1)] for ways in found] for n in range(max(map(len, found)) if all(found) else 0))
        choices = islice(chain(alike, map(list, product(*found))), MOST_TOGETHER)
        whole = next((choice for choice in choices if self._counted(choice)), None)
        if whole is None:
            return [[] for _ in found]
        return [
            [way, *(w for w in ways if w != way and self._counted([*whole[:n], w, *whole[n + 1 :]]))]
            for n, (way, ways) in enumerate(zip(whole, found, strict=True))
        ]

    def _counted(self, choice: Sequence[Instead]) -> bool:
        against = self._against([change for changes in choice for change in changes], self.count)
        return against is not None and not against

    def _nearest(self, diagnostic: Diagnostic, changes: Instead) -> Instead | None:
        """The least of the change that does: as it was reckoned, or farther; None if it does not, or cannot be tried any more."""
        failed = 0.0
        for share in FARTHER:
            made = self._scaled(changes, share)
            if made is None:
                return None
            if self._does(diagnostic, made):
                halfway = self._scaled(changes, (failed + share) / 2) if failed else None
                return halfway if halfway is not None and self._does(diagnostic, halfway) else made
            failed = share
        return None

    def _does(self, diagnostic: Diagnostic, changes: Instead) -> bool:
        against = self._against(changes, self.glance or self.count)
        if against is None:
            return False
        before, after = [_key(d) for d in self.told], [_key(d) for d in against]
        # What else is wrong may stay for now, and nothing new comes up.
        return _key(diagnostic) not in after and set(after) <= set(before)

    def _against(self, changes: Sequence[Change], count: Count) -> tuple[Diagnostic, ...] | None:
        """What there is to say against the design with the changes; None where it would be none, or where no more may be tried."""
        design = changed(self.design, changes)
        if design is None or (count is self.count and self.left <= 0):
            return None
        self.left -= count is self.count
        return count(design)

    def _scaled(self, changes: Instead, share: float) -> Instead | None:
        made: list[Change] = []
        for change in changes:
            now = figures(self.design, change)
            if now is None or (share > 1.0 and change.exact):
                return None
            values = tuple((size, _away(now[size], now[size] + share * (value - now[size]))) for size, value in change.values)
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
    return each_size("in-sizes", {size: tenths(value) for size, value in change.values}, len(design.sizes))
