"""What `fit` found, in words: labels of girths and of ease, what passes through openings, where the buttons go."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from walewright.design.model import PerSize
from walewright.figures.measures import name_of
from walewright.fit.model import Buttons, Closing, Ease, Fit, Girth, Passing, Reach
from walewright.guide.numbers import graded, length, listed, sentence

EaseRow = tuple[str, PerSize]

_CLOSING: Mapping[Closing, str] = {"closed": "", "lapped": ", buttoned", "edge to edge": ", edges meeting"}


def finished(fit: Fit) -> Iterator[EaseRow]:
    """Girths, reach and what the author states, in the order of the table."""
    own = next((g.over for g in fit.girths if g.body), ())
    for girth in fit.girths:
        yield girth_label(girth, set(girth.over) == set(own)), girth.values
    for reach in fit.reaches:
        yield reach_label(reach, len(fit.reaches) > 1), reach.values
    for ease in fit.eases:
        if ease.girth is None or not any(g.values == ease.finished for g in fit.girths):
            yield f"{sentence(name_of(ease.name))}, finished", ease.finished
    for name, values in fit.stated:
        yield sentence(name_of(name)), values


def girth_label(girth: Girth, of_body: bool) -> str:
    """What goes round, and where: the pieces are named unless it is the body."""
    where = "below the armholes" if girth.body else f"at {name_of(girth.at)}"
    over = listed([name_of(name) for name in dict.fromkeys(girth.over)])
    what = "All round" if of_body else f"{sentence(over)}: all round"
    return f"{what}, {where}{_CLOSING[girth.closing]}"


def reach_label(reach: Reach, several: bool) -> str:
    """From where to where; `several` sleeves differ."""
    end = name_of(reach.sleeve) if several else "sleeve"
    return f"Middle of the back neck to the end of the {end}"


def eases(fit: Fit) -> Iterator[EaseRow]:
    """Finished less body: girths, and, where the body's is known, reach."""
    for ease in fit.eases:
        yield ease_label(ease), ease.ease
    for reach in fit.reaches:
        if reach.body:
            values = tuple(a - b for a, b in zip(reach.values, reach.body, strict=True))
            yield "Back neck to wrist", values


def ease_label(ease: Ease) -> str:
    """The measure of the body, and what is held against it."""
    at = ease.girth
    if at is None:
        return f"{sentence(name_of(ease.fits))}: {name_of(ease.name)} as finished"
    where = "below the armholes" if at.body else f"at {name_of(at.at)}"
    return f"{sentence(name_of(ease.fits))}: all round {where}"


# ----------------------------------------------------------------- notes


def notes(fit: Fit, units: str) -> Iterator[str]:
    """What passes through which opening, and where buttons are sewn."""
    for passing in fit.passings:
        if not passing.never and all(passing.good):
            yield passing_note(passing, units)
    for buttons in fit.buttons:
        yield buttons_note(buttons, units)


def passing_note(passing: Passing, units: str) -> str:
    """What goes through, and how far the opening has to stretch for it."""
    rest, wide = told(passing.relaxed, units), told(passing.stretched, units)
    more = f"; it was reckoned with {told(passing.figure, units)} for the {passing.part}"
    return (
        f"{sentence(name_of(passing.name))}: {rest} at rest, stretched about {wide}, so that the {passing.part} goes through{more}."
    )


def buttons_note(buttons: Buttons, units: str) -> str:
    """How many buttons, and where."""
    count = len(buttons.places)
    places = listed([told(p, units) for p in buttons.places])
    many = "1 button" if count == 1 else f"{count} buttons"
    return (
        f"The {name_of(buttons.over)} laps over the {name_of(buttons.under)} by {told(buttons.overlap, units)}. Sew {many} on the "
        f"{name_of(buttons.under)}, {told(buttons.across, units)} in from its outer edge, below the buttonholes: from the lower "
        f"end, at {places}."
    )


def told(values: PerSize, units: str) -> str:
    """A length in all sizes, graded: "47 (51: 51) cm"."""
    first, second = zip(*(length(v, units) for v in values), strict=True)
    if units != "both":
        return f"{graded(list(first))} {units}"
    return f"{graded(list(first))} cm ({graded(list(second))} in)"
