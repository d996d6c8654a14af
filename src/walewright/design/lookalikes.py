"""Names that a reader would take for one another.

Each name is reduced to what it looks like (a skeleton): letters of other scripts to the Latin letter of the same form, capitals to
small letters, and the digits 0 and 1 to the letters they resemble. Names of one kind whose skeletons agree cannot be told apart
on paper, or, where only capitals differ, not when they are spoken.

The method is that of Unicode Technical Standard #39, Unicode Security Mechanisms, section 4, Confusable Detection. The table is a
small part of its data, the letters of alphabets that a keyboard is likely to have, written down from memory and not compared with
the published file.
"""

from __future__ import annotations

import unicodedata

_ALIKE = {
    # Cyrillic
    "АВЕЅІЈКМНОРСТУХҮԌԚԜ": "ABESIJKMHOPCTYXYGQW",
    "аеѕіјорсухһԁԛԝүґ": "aesijopcyxhdqwyr",
    # Greek
    "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧϹ": "ABEZHIKMNOPTYXC",
    "αγικνορσυϲϳ": "ayikvopoucj",
    # Armenian
    "օոսցզհյ": "onugqhj",
    # Latin
    "ıɑɡɩƖ": "iagil",
    # Bars and rings of several scripts
    "Ӏӏǀ": "lll",
}

CONFUSABLE = {ord(one): other for ones, others in _ALIKE.items() for one, other in zip(ones, others, strict=True)}
"""Letter of another script (or of no alphabet) to the Latin letter that it looks like."""

_STROKES = str.maketrans({"0": "o", "1": "l", "I": "l"})
"""What cannot be told from a letter in many typefaces, before capitals become small letters."""


def skeleton(name: str) -> str:
    """What a name looks like; two names with one skeleton look alike."""
    letters = unicodedata.normalize("NFKC", name).translate(CONFUSABLE).translate(_STROKES).casefold()
    return unicodedata.normalize("NFC", letters)
