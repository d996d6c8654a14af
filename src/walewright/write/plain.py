"""The steps as plain text: to work from on paper without the drawings, and to be read back.

A section is underlined with `=`, a small title with `-`; each line has a box to tick for every piece knitted alike, or a
hyphen where it only states something. Lines that are too long go on indented.
"""

from __future__ import annotations

import re
import textwrap
from collections.abc import Iterator

from walewright.write.grading import bracketed
from walewright.write.model import Instructions, Paragraph, Section, Sentence
from walewright.write.sections import heading

WIDTH = 92
_MOST_BOXES = 4
_GRADED = re.compile(r"(?:RC )?(?:\d+|CO[LR]|–)(?: \([^()]*\))?")
_COUNTED = re.compile(r"(?<=[\d)]) (?=(?:sts?|rows?|times?|loops?|mm)\b)|(?<=RC) ")
_KEPT = "\N{NO-BREAK SPACE}"


def plain_text(instructions: Instructions) -> str:
    """The instructions' text, ending with the joining section. Lines have up to 92 characters, as far as words allow."""
    made = [f"Sizes {bracketed(instructions.sizes)}", ""]
    for section in instructions.sections:
        made += _section(section, heading(section.name, section.copies))
    made += _section(instructions.joining, instructions.joining.title)
    return "\n".join(made).rstrip("\n") + "\n"


def _section(section: Section, title: str) -> Iterator[str]:
    yield from (title, "=" * len(title), "")
    for paragraph in section.paragraphs:
        yield from _paragraph(paragraph, section.copies)


def _paragraph(paragraph: Paragraph, copies: int) -> Iterator[str]:
    if paragraph.title:
        yield from (paragraph.title, "-" * len(paragraph.title))
    if paragraph.only:
        yield from (paragraph.only, "")
    for sentence in paragraph.sentences:
        yield from _bullet(sentence, copies)
    yield ""


def _bullet(sentence: Sentence, copies: int) -> list[str]:
    mark = "-   " if sentence.check else "[ ] " * min(copies, _MOST_BOXES)
    return [
        line.replace(_KEPT, " ")
        for line in textwrap.wrap(
            _unbroken(sentence),
            WIDTH,
            initial_indent=mark,
            subsequent_indent=" " * len(mark),
            break_long_words=False,
            break_on_hyphens=False,
        )
    ]


def _unbroken(sentence: Sentence) -> str:
    """The text with graded numbers, and what they count, kept on one line."""
    if sentence.runs[0].text.startswith("Note: "):
        return sentence.text
    kept = "".join(
        run.text.replace(" ", _KEPT)
        if run.kind in ("number", "needle")
        else _GRADED.sub(lambda m: m[0].replace(" ", _KEPT), run.text)
        if run.kind == "check"
        else run.text
        for run in sentence.runs
    )
    return _COUNTED.sub(_KEPT, kept)
