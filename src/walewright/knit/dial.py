"""Settings of the tension: on a dial the label that stands so many numbers further, where labels are numbers; of plates the
next."""

from __future__ import annotations

import re

from walewright.record import record

LINKING = (2, 3)
"""How many numbers looser than the pieces the row is that links them: two layers are knitted through each other (common practice;
thick yarn takes the more)."""
HEM = (2, 2)
"""How many numbers looser than the hem the row is that joins it: "joining row two numbers above the hem setting"
(clearwaterknits.com/hems; there a hem at 4, its joining row at 6)."""
LOOSEST = 10
"""The last whole number of most dials (common practice). A label beyond it shows that the dial at hand has more."""

_NUMBER = re.compile(r"(\d+)(\.\d+|\.*)")
"""4, 4.5, or with a dot for each third between two numbers: 4. and 4.. ."""


@record
class Looser:
    """A setting looser than `than`: `label`, `by` how many numbers that is, least and most; both are empty where `than` is no
    number, or the dial's last, and only the dial itself shows what comes next. Of plates `label` says which, and that alone."""

    than: str
    label: str = ""
    by: tuple[int, ...] = ()
    loosest: bool = False
    """Whether `than` is the loosest plate, which is taken as it is."""

    @property
    def setting(self) -> str:
        """The tension of what is knitted so."""
        return self.label or f"looser than {self.than}"


def looser(than: str, by: tuple[int, int], plates: tuple[str, ...] = ()) -> Looser:
    """The setting `by` (least, most) numbers looser than `than`. Of `plates`, the tightest first, the next one: they lie further
    apart than the numbers of a dial (common practice). The loosest has none behind it, and is taken as it is."""
    if plates:
        at = plates.index(than)
        return Looser(than, plates[min(at + 1, len(plates) - 1)], loosest=at == len(plates) - 1)
    found = _NUMBER.fullmatch(than)
    if found is None or int(found[1]) == LOOSEST:
        return Looser(than)
    whole, part = int(found[1]), found[2]
    least, most = by if whole > LOOSEST else (min(n, LOOSEST - whole) for n in by)
    # The last number of a dial has no dots behind it.
    label = f"{whole + least}{part if whole > LOOSEST or whole + least < LOOSEST else ''}"
    if least < by[0]:
        most = least
    return Looser(than, label, (least, most) if most > least else (least,))
