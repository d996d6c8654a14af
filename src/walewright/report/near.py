"""The name most like a mistyped one."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import islice

MOST_COMPARED = 400
"""Names that a mistyped one is held against. A garment has fewer; of more, no proposal is worth the time."""

LONGEST = 60
"""Letters of a name that can be mistyped; what is longer is no slip of a finger."""


def near(name: str, names: Iterable[str]) -> str | None:
    """The one of `names` that differs from `name` by the fewest slips, if it is near enough to be meant.

    A slip is a letter too many, too few, wrong, or two neighbours exchanged; capitals do not count. One slip is allowed,
    and one more for every three letters beyond the third. Of equally near names the first in order of the alphabet. None
    also for more names, or a longer one, than a person would have to choose from: the work has a bound.
    """
    wanted = name.casefold()
    if not 2 <= len(wanted) <= LONGEST:
        # A single letter is within one slip of every other: it suggests nothing.
        return None
    limit = max(1, len(wanted) // 3)
    found: str | None = None
    known = set(islice(names, MOST_COMPARED + 1))
    for candidate in sorted(known) if len(known) <= MOST_COMPARED else ():
        meant = candidate.casefold()
        if abs(len(meant) - len(wanted)) > limit or len(meant) < 2:
            continue
        slips = distance(wanted, meant, limit)
        if slips <= limit:
            # The next has to be nearer still.
            found, limit = candidate, slips - 1
        if limit < 0:
            break
    return found


def distance(one: str, other: str, most: int | None = None) -> int:
    """Slips between two words: insertions, deletions, exchanges of a letter or of two neighbours (each part once). Where `most`
    is given, the answer may be anything above it as soon as there are more."""
    before: list[int] = []
    row = list(range(len(other) + 1))
    for i, letter in enumerate(one, 1):
        after = [i]
        for j, meant in enumerate(other, 1):
            cost = min(row[j] + 1, after[j - 1] + 1, row[j - 1] + (letter != meant))
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == meant:
                cost = min(cost, before[j - 2] + 1)
            after.append(cost)
        if most is not None and min(*after, *row) > most:
            return most + 1
        before, row = row, after
    return row[-1]
