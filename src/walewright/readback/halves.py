"""Steps that are read mirrored: left and right change places, and what waits is what waits then."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.readback.hands import Contradiction
from walewright.readback.phrases import Argument, ReadGraded, ReadPhrase, ReadRows

_OTHER: Mapping[str, str] = {
    **{"left": "right", "right": "left"},
    **{"left end": "right end", "right end": "left end", "both ends": "both ends"},
}

_ALIKE = frozenset(
    (
        *(
            "knit_rows",
            "knit_to",
            "stands",
            "cast_off_at_carriage",
            "cast_on_at_carriage",
            "increase_at_carriage",
        ),
        *("cast_off_all", "break_off", "carriage_to_hold", "carriage_to_knit"),
    )
)
"""Phrases that say the same of either half: where something is done, the carriage tells."""

_SIDED = frozenset(
    ("decrease", "increase_fashioned", "hold_at_end", "wrap_held", "return_held", "return_some", "mark_edges", "off_on_waste")
)
"""Phrases that name a side or an edge."""

_CHECKS: Mapping[str, tuple[int, ...]] = {"now": (0,), "now_held": (0, 1), "now_in_half": (0,), "now_in_half_held": (0, 1)}
"""Phrases that say what must be true, and which of their numbers are those of the part being worked."""


def mirrored(phrase: ReadPhrase) -> ReadPhrase:
    """The phrase said of the other half. Raises `Contradiction` where that cannot be."""
    if phrase.kind in _ALIKE:
        return phrase
    if phrase.kind in _SIDED:
        return ReadPhrase(phrase.kind, tuple(_other(argument) for argument in phrase.arguments))
    if phrase.kind in _CHECKS:
        return _check(phrase)
    if phrase.kind == "on_the_way":
        events, *needles = phrase.arguments
        return ReadPhrase("on_the_way", (events, *(_opposite(one) for one in needles)))
    if phrase.kind == "at":
        row, *side = phrase.arguments
        return ReadPhrase("at", (row, *(_flipped(one) for one in side)))
    raise Contradiction("contradiction/no-other-half")


def _check(phrase: ReadPhrase) -> ReadPhrase:
    """Stitches of the part, held ones apart, the counter if it is named, and the other side."""
    own = _CHECKS[phrase.kind]
    stitches = tuple(phrase.arguments[number] for number in own)
    beside = len(own) + phrase.kind.startswith("now_in_half")
    *row, side = phrase.arguments[beside:]
    return ReadPhrase("now_held_in_part" if len(own) > 1 else "now_in_part", (*stitches, *row, _flipped(side)))


def _opposite(needles: Argument) -> ReadRows:
    """Needles of the other half of the bed."""
    assert isinstance(needles, ReadRows)
    return ReadRows(tuple(ReadGraded(tuple(None if r is None else -1 - r for r in n.readings)) for n in needles.numbers))


def _flipped(side: Argument) -> ReadGraded:
    """The carriage on the other side."""
    assert isinstance(side, ReadGraded)
    return ReadGraded(tuple(None if reading is None else 1 - reading for reading in side.readings))


def _other(argument: Argument) -> Argument:
    """A side, or an edge that is named for one."""
    if not isinstance(argument, str):
        return argument
    name, _, part = argument.rpartition(" ")
    if argument in _OTHER:
        return _OTHER[argument]
    return f"{name} {_OTHER[part]}" if name and part in ("left", "right") else argument
