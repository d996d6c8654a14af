"""The name most like a mistyped one."""

from __future__ import annotations

from collections.abc import Iterable


def near(name: str, names: Iterable[str]) -> str | None:
    """The one of `names` that differs from `name` by the fewest slips, if it is near enough to be meant.

    A slip is a letter too many, too few, wrong, or two neighbours exchanged; capitals do not count. One slip is allowed,
    and one more for every three letters beyond the third. Of equally near names the first in order of the alphabet.
    """
    wanted = name.casefold()
    allowed = max(1, len(wanted) // 3)
    found: tuple[int, str] | None = None
    for candidate in sorted(set(names)):
        known = candidate.casefold()
        # A single letter is within one slip of every other: it suggests nothing.
        if abs(len(known) - len(wanted)) > allowed or min(len(known), len(wanted)) < 2:
            continue
        slips = distance(wanted, known)
        if slips <= allowed and (found is None or slips < found[0]):
            found = (slips, candidate)
    return found[1] if found else None


def distance(one: str, other: str) -> int:
    """Slips between two words: insertions, deletions, exchanges of a letter or of two neighbours (each part once)."""
    before: list[int] = []
    row = list(range(len(other) + 1))
    for i, letter in enumerate(one, 1):
        after = [i]
        for j, meant in enumerate(other, 1):
            cost = min(row[j] + 1, after[j - 1] + 1, row[j - 1] + (letter != meant))
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == meant:
                cost = min(cost, before[j - 2] + 1)
            after.append(cost)
        before, row = row, after
    return row[-1]
