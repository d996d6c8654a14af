"""Some lines of a source and the frame that they stand in: how the two make a whole source.

The lines come first, so that the line numbers of a message are those of the lines shown. Below them stands the frame, without
what the lines say instead: a block of the same first two words (`piece front`, `fabric plain`), or any of a kind that a source
has once. The joins of a source belong together, so that the frame's go as soon as the lines have one.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

TOGETHER = ("pattern", "sizes", "machine", "join")
"""Kinds of which all that the frame has is replaced."""
HEAD = re.compile(r"[\w-]+")


@dataclass(frozen=True, slots=True)
class Part:
    """A line at the left margin with what is indented below it, and what it is the only one of."""

    key: str
    text: str


def parts(text: str) -> tuple[Part, ...]:
    found: list[list[str]] = []
    for line in text.split("\n"):
        if not found or (line.strip() and not line[0].isspace()):
            found.append([])
        found[-1].append(line)
    texts = ("\n".join(lines).rstrip(" \n") for lines in found)
    return tuple(Part(_key(text), text) for text in texts if text.strip(" \n"))


def _key(text: str) -> str:
    words = HEAD.findall(text.split("\n")[0])[:2]
    return words[0] if words and words[0] in TOGETHER else " ".join(words)


def above(text: str, frame: str) -> str:
    """`text`, and below it what is left of the frame."""
    own = {part.key for part in parts(text)}
    left = [part.text for part in parts(frame) if part.key not in own]
    return "\n\n".join([text.strip("\n"), *left]) + "\n"


def within(text: str, whole: str) -> str:
    """`whole` with the blocks of `text` in the places of those of the same name; what it has none of stands below."""
    own = parts(text)
    left = {part.key: [p.text for p in own if p.key == part.key] for part in own}
    made: list[str] = []
    for part in parts(whole):
        if any(part.key == p.key for p in own):
            made += left.pop(part.key, [])
        else:
            made.append(part.text)
    return "\n\n".join([*made, *(text for texts in left.values() for text in texts)]) + "\n"


def exchanged(lines: str, text: str) -> str:
    """`text` with lines in place of those that begin with the same word, indented as they were."""
    whole = text.split("\n")
    for line in lines.rstrip("\n").split("\n"):
        word = line.split()[0]
        places = [i for i, old in enumerate(whole) if old.split()[:1] == [word]]
        if len(places) != 1:
            raise ValueError(f"{len(places)} lines begin with {word!r}, and not one: show the whole block")
        old = whole[places[0]]
        whole[places[0]] = old[: len(old) - len(old.lstrip())] + line.strip()
    return "\n".join(whole)
