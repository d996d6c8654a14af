"""What `fit` found, in words: labels of girths and of ease, what passes through openings, where the buttons go."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Sequence
from typing import get_args

from walewright.design.model import PerSize
from walewright.figures.measures import name_of
from walewright.fit.model import Beside, Buttons, Ease, Fit, Girth, Passing, Reach, Role
from walewright.guide.model import Guide
from walewright.guide.numbers import graded, sentence

EaseRow = tuple[str, PerSize]
NONE = "–"
"""A size that has none of what is told."""


def finished(guide: Guide, fit: Fit) -> Iterator[EaseRow]:
    """Girths, reach and what the author states, in the order of the table."""
    own = next((g.over for g in fit.girths if g.body), ())
    alike: dict[Hashable, list[Girth]] = {}
    for number, girth in enumerate(fit.girths):
        # Two of a pair are one row; what lies over several pieces has its own.
        by_itself = girth.body or len(set(girth.over)) > 1
        key = number if by_itself else (girth.at, girth.closing, tuple(round(v, 3) for v in girth.values))
        alike.setdefault(key, []).append(girth)
    for some in alike.values():
        if len(some) == 1:
            yield girth_label(guide, some[0], set(some[0].over) == set(own)), some[0].values
        else:
            over = sentence(guide.listed([name_of(g.over[0]) for g in some]))
            what = guide.say("fit/girth-of-each", over=over, where=_where(guide, some[0]))
            yield guide.say(f"fit/{some[0].closing}", what=what), some[0].values
    for reach in fit.reaches:
        yield reach_label(guide, reach, len(fit.reaches) > 1), reach.values
    for ease in fit.eases:
        if ease.girth is None or not any(g.values == ease.finished for g in fit.girths):
            yield guide.say("fit/finished", name=sentence(name_of(ease.name))), ease.finished
    for name, values in fit.stated:
        yield sentence(name_of(name)), values


def girth_label(guide: Guide, girth: Girth, of_body: bool) -> str:
    """What goes round, and where: the pieces are named unless it is the body."""
    over = sentence(guide.listed([name_of(name) for name in dict.fromkeys(girth.over)]))
    where = _where(guide, girth)
    what = guide.say("fit/girth", where=where) if of_body else guide.say("fit/girth-of", over=over, where=where)
    return guide.say(f"fit/{girth.closing}", what=what)


def _where(guide: Guide, girth: Girth) -> str:
    return guide.say("fit/below-armholes") if girth.body else guide.say("fit/at", level=name_of(girth.at))


def reach_label(guide: Guide, reach: Reach, several: bool) -> str:
    """From where to where; `several` sleeves differ."""
    return guide.say("fit/reach-of", sleeve=name_of(reach.sleeve)) if several else guide.say("fit/reach")


def eases(guide: Guide, fit: Fit) -> Iterator[EaseRow]:
    """Finished less body."""
    for label, made, body in compared(guide, fit):
        yield label, tuple(a - b for a, b in zip(made, body, strict=True))


def compared(guide: Guide, fit: Fit) -> Iterator[tuple[str, PerSize, PerSize]]:
    """What is finished, and the body's: girths, and, where the body's is known, reach."""
    for ease in fit.eases:
        yield ease_label(guide, ease), ease.finished, ease.body
    for reach in fit.reaches:
        if reach.body:
            yield guide.say("fit/neck-to-wrist"), reach.values, reach.body


def ease_label(guide: Guide, ease: Ease) -> str:
    """The measure of the body, and what is held against it."""
    body = sentence(name_of(ease.fits))
    if ease.girth is None:
        # A measure held against the body's of its name needs it once.
        return body if ease.name == ease.fits else guide.say("fit/ease-as-finished", body=body, name=name_of(ease.name))
    return guide.say("fit/ease-round", body=body, where=_where(guide, ease.girth))


# ----------------------------------------------------------------- notes


def notes(guide: Guide, fit: Fit, units: str) -> Iterator[str]:
    """What passes through which opening."""
    good = [passing for passing in fit.passings if all(passing.good)]
    alike: dict[Hashable, list[Passing]] = {}
    for passing in good:
        same = passing.never, passing.part, passing.relaxed, passing.stretched, passing.figure
        alike.setdefault((passing.name, *same) if passing.name in get_args(Role) else (len(alike), *same), []).append(passing)
    for some in alike.values():
        yield passing_note(guide, some[0], units, some[1:])
    for beside in fit.beside:
        yield beside_note(guide, beside, units)


def buttons_notes(guide: Guide, fit: Fit | None, units: str) -> Iterator[str]:
    """Where buttons are sewn, each note once."""
    yield from dict.fromkeys(buttons_note(guide, buttons, units) for buttons in (fit.buttons if fit is not None else ()))


def whole_label(beside: Beside) -> str:
    """What is measured."""
    return sentence(name_of(beside.name))


def beside_note(guide: Guide, beside: Beside, units: str) -> str:
    """What is wanted and what is knitted."""
    return guide.say(
        "fit/beside", name=whole_label(beside), wanted=told(guide, beside.wanted, units), knitted=told(guide, beside.knitted, units)
    )


def passing_note(guide: Guide, passing: Passing, units: str, more: Sequence[Passing] = ()) -> str:
    """What goes through, and how far the opening has to stretch for it; so with `more` of that name."""
    return guide.say(
        "fit/never-passes" if passing.never else "fit/passes",
        opening=sentence(opening_label(guide, passing, more)),
        rest=told(guide, passing.relaxed, units),
        wide=told(guide, passing.stretched, units),
        part=passing.part,
        figure=told(guide, passing.figure, units),
    )


def opening_label(guide: Guide, passing: Passing, more: Sequence[Passing] = ()) -> str:
    """What an opening is for a wearer, with the bands and edgings that it goes round by the names of their headings, and those of
    `more` such openings; else these alone, or its edges."""
    if passing.name not in get_args(Role):
        around = _round_what(guide, passing)
        return guide.say("fit/all-round", what=around) if around else _opening(guide, passing.name)
    role = guide.say("fit/role", role=passing.name)
    whats = tuple(what for what in dict.fromkeys(_round_what(guide, one) for one in (passing, *more)) if what)
    return guide.say("fit/role-of", role=role, whats=whats) if whats else role


def _round_what(guide: Guide, passing: Passing) -> str:
    names = (
        guide.say("join/edge", piece=name_of(owner), edge=guide.edge(edge)) if edge else name_of(owner)
        for owner, edge in passing.around
    )
    return guide.listed(list(names)) if passing.around else ""


def _opening(guide: Guide, name: str) -> str:
    """What an opening is called by the piece, and by its edge where that is told."""
    owner, _, edge = name.partition(" ")
    return guide.say("join/edge", piece=name_of(owner), edge=guide.edge(edge)) if edge else name_of(owner)


def buttons_note(guide: Guide, buttons: Buttons, units: str) -> str:
    """How many buttons, and where."""
    by_size = [sum(p is not None for p in column) for column in zip(*buttons.places, strict=True)]
    over, under = _on(guide, buttons.over, buttons.over_on), _on(guide, buttons.under, buttons.under_on)
    overlap, across = (told(guide, cm, units) for cm in (buttons.overlap, buttons.across))
    end = guide.say(f"fit/buttons-from-{buttons.counted_from}")
    places = guide.say("fit/buttons-at", end=end, places=guide.listed([told(guide, p, units) for p in buttons.places]))
    if len(set(by_size)) == 1:
        count = by_size[0]
        return guide.say("fit/buttons", over=over, under=under, overlap=overlap, count=count, across=across, places=places)
    some = graded([str(n) for n in by_size])
    return guide.say("fit/buttons-by-size", over=over, under=under, overlap=overlap, count=some, across=across, places=places)


def _on(guide: Guide, owner: str, piece: str) -> str:
    """What has buttons or buttonholes; with the piece that it is on, where it is on others too."""
    return guide.say("fit/buttons-on", what=name_of(owner), piece=name_of(piece)) if piece else name_of(owner)


def told(guide: Guide, values: Sequence[float | None], units: str) -> str:
    """A length in all sizes, graded: "47 (51: 51) cm"; a dash where a size has none."""
    first, second = zip(*((NONE, NONE) if v is None else guide.length(v, units) for v in values), strict=True)
    shown = graded(list(first))
    return guide.say(f"told/{units}", cm=shown, inches=shown if units == "in" else graded(list(second)))
