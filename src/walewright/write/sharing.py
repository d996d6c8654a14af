"""How much of a graded text all its sizes share."""

from __future__ import annotations

from walewright.write.model import Instructions


def shared(instructions: Instructions) -> float:
    """The share (0 to 1) of the text's phrases that every size works; 1 for a text without phrases.

    A knitter reads past what is only for others, so a text is the easier to work from the nearer this is to 1.
    """
    sentences = [s for section in instructions.sections for p in section.paragraphs for s in p.sentences]
    phrases = sum(len(s.kinds) for s in sentences)
    common = sum(len(s.kinds) for s in sentences if len(s.sizes) == len(instructions.sizes))
    return common / phrases if phrases else 1.0
