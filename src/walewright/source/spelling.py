"""How a name may be spelt: so that it can be printed, told from any other, and read back from the page.

On the page `_` is a space, so a name is words with single spaces between them. A letter that cannot be seen, or that stands for
others (a ligature, a full-width or raised letter), would be printed as something that a reader types otherwise.
"""

from __future__ import annotations

import re
import unicodedata

from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.said import Said, said

LONGEST = 60
"""Letters of a name; what a line of the page holds is less than twice as much."""

INVISIBLE = frozenset("\u115f\u1160\u17b4\u17b5\u3164\uffa0")
"""Letters by their category that leave no mark (Unicode, DerivedCoreProperties.txt, Default_Ignorable_Code_Point)."""


def misspelt(name: str) -> tuple[Said, str] | None:
    """What is wrong with a name, and a name that would do ("" where there is none to propose); None for a sound one."""
    unseen = next((c for c in name if c in INVISIBLE), None)
    if unseen is not None:
        return said("unseen", letter=ord(unseen)), "".join(c for c in name if c not in INVISIBLE)
    if len(name) > LONGEST:
        return said("too-long", count=len(name), most=LONGEST), ""
    plain = unicodedata.normalize("NFKC", name)
    if plain != name:
        return said("joined-letters", plain=plain), plain
    foreign = next((c for c in name if not (c.isalpha() or c in "0123456789_.-/")), None)
    if foreign is not None:
        digit = str(unicodedata.digit(foreign, ""))
        return said("foreign-letter", letter=foreign), name.replace(foreign, digit) if digit else ""
    spaced = re.sub("_+", "_", name).strip("_")
    if spaced != name:
        return said("unseen-spaces"), spaced
    return None


def name_fault(name: str, line: str, span: Span) -> Diagnostic | None:
    """The fault of a name that is given on a line, at the name; `span` is the whole line."""
    wrong = misspelt(name)
    if wrong is None:
        return None
    fault, better = wrong
    sound = better if better and misspelt(better) is None and not better[0].isdigit() else ""
    return diagnosed(
        "name-unreadable/name",
        (_place(name, line, span), "not-read-back"),
        helps=(said("call", sound=sound) if sound else said("letters"),),
        shown=_shown(name),
        fault=fault,
    )


def marked_name(content: str, at: int) -> tuple[int, str] | None:
    """The word of a line with a mark that goes with the letter before it (as of e and an accent, or a vowel sign), and where the
    word begins; None if there is no such mark `at` this place. A line stops reading at it: names have no such marks."""
    if at >= len(content) or not unicodedata.category(content[at]).startswith("M"):
        return None
    begin = end = at
    while begin > 0 and _of_a_word(content[begin - 1]):
        begin -= 1
    while end < len(content) and _of_a_word(content[end]):
        end += 1
    return (begin, content[begin:end]) if begin < at else None


def mark_fault(word: str, span: Span) -> Diagnostic:
    """The fault of a word with such a mark, which stands at `span`."""
    mark = next(c for c in word if unicodedata.category(c).startswith("M"))
    better = unicodedata.normalize("NFKC", word)
    sound = better if misspelt(better) is None else ""
    return diagnosed(
        "name-unreadable/mark",
        (span, "no-marks"),
        helps=(said("call", sound=sound) if sound else said("letters"),),
        shown=_shown(word),
        letter=ord(mark),
    )


def _of_a_word(letter: str) -> bool:
    return letter.isalnum() or letter == "_" or unicodedata.category(letter).startswith("M")


def tension_fault(tension: str, line: str, span: Span) -> Diagnostic | None:
    """The same for the setting of a tension: it stands on a dial, where no `_` is."""
    wrong = misspelt(tension)
    if wrong is None and "_" not in tension:
        return None
    fault = wrong[0] if wrong is not None else said("space-on-page")
    return diagnosed(
        "name-unreadable/tension",
        (_place(tension, line, span), "not-read-back"),
        helps=("as-dial",),
        shown=_shown(tension),
        fault=fault,
    )


def _place(name: str, line: str, span: Span) -> Span:
    """Where the name stands on its line."""
    found = re.search(rf"(?<!\w){re.escape(name)}(?!\w)", line)
    return Span(span.file, span.start + found.start(), span.start + found.end()) if found else span


def _shown(name: str) -> str:
    return name if len(name) <= LONGEST else f"{name[:20]}..."
