"""One source made into another by a few slips and some malice: what `mutated_sources.py` draws."""

from __future__ import annotations

import random
import re
from collections.abc import Callable, Sequence
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
GRAMMAR = (ROOT / "grammar" / "source.lark").read_text(encoding="utf-8")
WORDS = tuple(sorted(set(re.findall(r'"([A-Za-z][\w-]*)"', GRAMMAR))))
"""Every fixed word of the source's grammar."""

NUMBER = re.compile(r"(?<![\w\".])\d+(?:\.\d+)?(?![\w\".])")
MEASURED = re.compile(r"(?<=\d )(?:cm|mm|m|in|stitches|stitch|sts|st|rows|row|g|%)(?!\w)")
NAME = re.compile(r"[^\W\d]\w*")
TEXT = re.compile(r'"[^"\n]*"')
UNITS = ("cm", "mm", "m", "in", "stitches", "rows", "g", "%", "st", "row", "")
ODD = (
    "\u3164",  # a letter that cannot be seen
    "_",
    "__",
    "\u0430",  # a Cyrillic letter that looks like a
    "e\u0301",  # a letter and its accent apart
    "\u00e9",
    "\u202e",  # right to left
    "\u200b",
    "\u00a0",
    "\ufb01",  # a ligature
    "\u0131",
    "\U0001d41a",
    "\u0660",  # a digit
    "\U0001f9f6",
    "\0",
    "\t",
    "\r",
    "'",
    "\u2019",
    "-",
    '"',
    "\\",
    "`",
    "{",
    "[",
    "\u201c",
    "\u2028",
    "\ufeff",
    "\ud800",
)
FACTORS = (0, 0.01, 0.1, 0.5, 0.9, 1.1, 1.5, 2, 3, 10, 100, 1000)

Lines = list[str]
Mutation = Callable[[Lines, random.Random, Sequence[str]], None]


def mutated(text: str, others: Sequence[str], chance: random.Random) -> tuple[str, list[str]]:
    """`text` changed in one to four ways, and the names of these; lines may come from the `others`."""
    lines = text.split("\n")
    made: list[str] = []
    for _ in range(chance.choice((1, 1, 1, 1, 2, 3))):
        (mutation,) = chance.choices(list(MUTATIONS), weights=list(MUTATIONS.values()))
        before = list(lines)
        mutation(lines, chance, others)
        if not lines:
            lines[:] = [""]
        if lines != before:
            made.append(mutation.__name__)
    return "\n".join(lines), made


def _a_line(lines: Lines, chance: random.Random, pattern: re.Pattern[str] | None = None) -> int | None:
    able = [i for i, line in enumerate(lines) if line.strip() and (pattern is None or pattern.search(line))]
    return chance.choice(able) if able else None


def _replaced(lines: Lines, chance: random.Random, pattern: re.Pattern[str], make: Callable[[str], str]) -> None:
    at = _a_line(lines, chance, pattern)
    if at is not None:
        one = chance.choice(list(pattern.finditer(lines[at])))
        lines[at] = lines[at][: one.start()] + make(one[0]) + lines[at][one.end() :]


def left_out(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    del lines[chance.randrange(len(lines))]


def doubled(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    at = chance.randrange(len(lines))
    lines[at:at] = [lines[at]] * chance.choice((1, 1, 1, 2, 30))


def exchanged(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    one = chance.randrange(len(lines))
    other = min(len(lines) - 1, one + 1) if chance.random() < 0.6 else chance.randrange(len(lines))
    lines[one], lines[other] = lines[other], lines[one]


def a_number(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    def other(number: str) -> str:
        if chance.random() < 0.15:
            return chance.choice(("0", "1", "2", "7", "0.001", "99999", "123456789", "0.5", "400", "-3", "1000000000000"))
        value = float(number) * chance.choice(FACTORS) + chance.choice((0, 0, 0, 1, -1))
        return f"{max(value, 0):.0f}" if "." not in number else f"{max(value, 0):.2f}"

    _replaced(lines, chance, NUMBER, other)


def a_unit(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    _replaced(lines, chance, MEASURED, lambda _: chance.choice(UNITS))


def a_name(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """A name, or a word, put where another stands."""
    names = NAME.findall(TEXT.sub("", "\n".join(lines))) or ["a"]
    _replaced(lines, chance, NAME, lambda _: chance.choice(names))


def everywhere(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """One name renamed wherever it stands, at times to one that nobody would choose."""
    names = sorted(set(NAME.findall(TEXT.sub("", "\n".join(lines)))) - set(WORDS))
    if names:
        name = chance.choice(names)
        other = chance.choice(
            (
                name + chance.choice(ODD),
                chance.choice(ODD) + name,
                chance.choice(WORDS).replace("-", "_"),
                name.upper(),
                name[0],
                name * 30,
                name + "_left",
                f"each_{name}",
                name + "_2nd",
                chance.choice(names),
            )
        )
        lines[:] = [re.sub(rf"(?<!\w){re.escape(name)}(?!\w)", lambda _: other, line) for line in lines]


def a_word(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """A word of the grammar put in, or put for another."""
    at = _a_line(lines, chance)
    if at is not None:
        words = lines[at].split(" ")
        spot = chance.randrange(len(words))
        words[spot : spot + chance.choice((0, 1))] = [chance.choice(WORDS)]
        lines[at] = " ".join(words)


def a_word_less(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    _replaced(lines, chance, re.compile(r"\S+ ?"), lambda _: "")


def a_part(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """A part between commas left out, or moved to another line."""
    at = _a_line(lines, chance, re.compile(","))
    if at is not None:
        parts = lines[at].split(",")
        part = parts.pop(chance.randrange(1, len(parts)))
        lines[at] = ",".join(parts)
        if chance.random() < 0.5:
            lines[chance.randrange(len(lines))] += "," + part


def a_text(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    odd = "".join(chance.choice(ODD) for _ in range(3))
    _replaced(lines, chance, TEXT, lambda text: chance.choice((text[:-1], '""', text[1:], f'"{odd}"', text[:1] + text * 50)))


def odd_letter(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    at = _a_line(lines, chance)
    if at is not None:
        spot = chance.randrange(len(lines[at]) + 1)
        lines[at] = lines[at][:spot] + chance.choice(ODD) + lines[at][spot:]


def nested(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    deep = chance.choice((3, 30, 90, 101, 400))
    sign = chance.choice(("(", "-", "max(1 cm, "))
    closing = "" if sign == "-" or chance.random() < 0.2 else ")" * deep
    _replaced(lines, chance, NUMBER, lambda number: sign * deep + number + " cm" + closing)


def indented(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    at = chance.randrange(len(lines))
    lines[at] = " " * chance.choice((0, 1, 4, 8, 40)) + lines[at].lstrip()


def cut_off(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    text = "\n".join(lines)
    lines[:] = text[: chance.randrange(len(text) + 1)].split("\n")


def grafted(lines: Lines, chance: random.Random, others: Sequence[str]) -> None:
    """A few lines of another source put in."""
    theirs = chance.choice(others).split("\n")
    begin = chance.randrange(len(theirs))
    at = chance.randrange(len(lines) + 1)
    lines[at:at] = theirs[begin : begin + chance.choice((1, 1, 2, 5, 20))]


MUTATIONS: dict[Mutation, int] = {
    left_out: 10,
    doubled: 6,
    exchanged: 8,
    a_number: 40,
    a_unit: 6,
    a_name: 8,
    everywhere: 12,
    a_word: 4,
    a_word_less: 4,
    a_part: 12,
    a_text: 3,
    odd_letter: 2,
    nested: 1,
    indented: 1,
    cut_off: 1,
    grafted: 6,
}
"""Kinds of change, and how often each is drawn."""
