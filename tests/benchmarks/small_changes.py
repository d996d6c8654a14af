"""One source made into another that most likely still reads: what `mutated_sources.py` draws most often.

Numbers change a little, options are exchanged for others that the grammar has at the same place, put in or left out, and statements
go from one piece to another. Most of what comes of it reaches the solver; much of it the bed.
"""

from __future__ import annotations

import random
import re
from collections.abc import Callable, Mapping, Sequence

from tests.benchmarks.mutating import GRAMMAR, NUMBER, TEXT

Lines = list[str]
Change = Callable[[Lines, random.Random, Sequence[str]], None]

RULE = re.compile(r"^[?!]?(\w+): (.*(?:\n +\|.*)*)", re.MULTILINE)
SPELLINGS = frozenset({"unit", "stitch_unit", "_stitches", "_rows", "_stripe_rows", "_repeats"})
"""Rules whose alternatives mean the same."""
LENGTHS = ("cm", "mm", "in", "stitches", "rows")


def _rules() -> Mapping[str, str]:
    return {name: re.sub(r"\s+", " ", body) for name, body in RULE.findall(GRAMMAR)}


def _alternatives() -> dict[str, tuple[str, ...]]:
    """Rule to the phrases of fixed words that can stand for it; those with two or more."""
    rules = _rules()
    fixed = {name: " ".join(re.findall(r'"([^"]+)"', body)) for name, body in rules.items() if re.fullmatch(r'("[^"]+" ?)+', body)}
    found = {}
    for name, body in rules.items():
        phrases = [
            fixed.get(part.strip(), part.strip().strip('"') if part.strip().startswith('"') else "") for part in body.split("|")
        ]
        sound = tuple(p for p in phrases if re.fullmatch(r"[a-z][\w -]*", p))
        if len(sound) > 1 and name not in SPELLINGS:
            found[name] = sound
    return found


ALTERNATIVES = _alternatives()
PARTS = {
    body.split('"')[1]: ALTERNATIVES[part]
    for body in _rules().values()
    if body.startswith('"')
    for part in re.findall(r"_\w+_part", body)
    if part in ALTERNATIVES
}
"""First word of a statement to the options of fixed words that may follow it after commas."""


def changed(text: str, others: Sequence[str], chance: random.Random) -> tuple[str, list[str]]:
    """`text` with one to four small changes, and the names of these."""
    lines = text.split("\n")
    made = []
    for _ in range(chance.choice((1, 1, 2, 2, 3, 4))):
        (change,) = chance.choices(list(CHANGES), weights=list(CHANGES.values()))
        change(lines, chance, others)
        made.append(change.__name__)
    return "\n".join(lines), made


def _able(lines: Lines, chance: random.Random, able: Callable[[str], bool]) -> int | None:
    found = [i for i, line in enumerate(lines) if line.strip() and not line.lstrip().startswith(("#", "|")) and able(_bare(line))]
    return chance.choice(found) if found else None


def _bare(line: str) -> str:
    """The line with its texts blanked, letter for letter."""
    return TEXT.sub(lambda one: " " * len(one[0]), line)


def a_little(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """A number a tenth larger or smaller, or by one."""
    at = _able(lines, chance, lambda line: NUMBER.search(line) is not None)
    if at is None:
        return
    one = chance.choice(list(NUMBER.finditer(_bare(lines[at]))))
    value = float(one[0])
    if "." in one[0] or (value > 12 and chance.random() < 0.7):
        value *= chance.uniform(0.85, 1.18)
    else:
        value += chance.choice((-1, 1, 1, 2))
    shown = f"{max(value, 0):.1f}" if "." in one[0] else f"{max(value, 0):.0f}"
    lines[at] = lines[at][: one.start()] + shown + lines[at][one.end() :]


def another_length(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """A length in another unit, about as long."""
    at = _able(lines, chance, lambda line: re.search(r"\d cm(?!\w)", line) is not None)
    if at is None:
        return
    one = chance.choice(list(re.finditer(r"(\d+(?:\.\d+)?) cm(?!\w)", _bare(lines[at]))))
    unit = chance.choice(LENGTHS)
    shown = float(one[1]) * {"cm": 1, "mm": 10, "in": 0.4, "stitches": 2.5, "rows": 4}[unit]
    lines[at] = f"{lines[at][: one.start()]}{shown:.{0 if unit in ('stitches', 'rows') else 1}f} {unit}{lines[at][one.end() :]}"


def other_word(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """An option exchanged for another that may stand where it stands."""

    def swaps(line: str) -> list[tuple[re.Match[str], tuple[str, ...]]]:
        head = re.match(r"\s*\w+", line)
        first = head.end() if head else 0
        return [
            (one, phrases)
            for phrases in ALTERNATIVES.values()
            for phrase in phrases
            for one in re.finditer(rf"(?<![\w-]){re.escape(phrase)}(?![\w-])", line)
            if one.start() >= first
        ]

    at = _able(lines, chance, lambda line: bool(swaps(line)))
    if at is not None:
        one, phrases = chance.choice(swaps(_bare(lines[at])))
        lines[at] = lines[at][: one.start()] + chance.choice(phrases) + lines[at][one.end() :]


def one_more(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """An option put at the end of a statement that may have it."""

    def options(line: str) -> tuple[str, ...]:
        words = [w for w in line.split()[:2] if w in PARTS]
        return PARTS[words[-1]] if words else ()

    at = _able(lines, chance, lambda line: bool(options(line)))
    if at is not None:
        lines[at] += f", {chance.choice(options(_bare(lines[at])))}"


def one_less(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """An option left out."""
    at = _able(lines, chance, lambda line: "," in line and not line.lstrip().startswith("levels"))
    if at is not None:
        parts = lines[at].split(",")
        del parts[chance.randrange(1, len(parts))]
        lines[at] = ",".join(parts)


def to_another_piece(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """A statement of a piece put for the one of its kind in another, or put in there."""
    blocks = _pieces(lines)
    if len(blocks) < 2:
        return
    theirs, ours = chance.sample(blocks, 2)
    taken = lines[chance.choice(theirs)]
    same = [i for i in ours if lines[i].split()[:1] == taken.split()[:1]]
    if same:
        lines[chance.choice(same)] = taken
    else:
        lines.insert(ours[-1], taken)


def _pieces(lines: Lines) -> list[list[int]]:
    """Numbers of the lines within each piece that has any."""
    found: list[list[int]] = []
    for i, line in enumerate(lines):
        if line.startswith("piece "):
            found.append([])
        elif found and line.startswith("    ") and not line.lstrip().startswith("#") and found[-1][-1:] in ([], [i - 1]):
            found[-1].append(i)
    return [block for block in found if block]


def other_order(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """Two statements of one piece exchanged, or two joins."""
    blocks = [*_pieces(lines), [i for i, line in enumerate(lines) if line.lstrip().startswith(("join ", "band ", "free "))]]
    able = [block for block in blocks if len(block) > 1]
    if able:
        one, other = chance.sample(chance.choice(able), 2)
        lines[one], lines[other] = lines[other], lines[one]


def other_bed(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    for i, line in enumerate(lines):
        if re.fullmatch(r"machine (fine|standard|mid|bulky)", line):
            lines[i] = "machine " + chance.choice(("fine", "standard", "mid", "bulky"))


def other_swatch(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """All swatches by the same share wider and higher, as another tension makes them."""
    wide, high = chance.uniform(0.75, 1.3), chance.uniform(0.75, 1.3)
    for i, line in enumerate(lines):
        one = re.match(r"( +swatch .* = )([\d.]+) cm by ([\d.]+) cm(.*)", line)
        if one:
            lines[i] = f"{one[1]}{float(one[2]) * wide:.1f} cm by {float(one[3]) * high:.1f} cm{one[4]}"


def offered(lines: Lines, chance: random.Random, _: Sequence[str]) -> None:
    """A statement with its block put below an alternative of a choice, and something like it below the other one."""
    heads = [i for i, line in enumerate(lines) if line.strip() and not line.lstrip().startswith(("#", "|"))]
    if not heads:
        return
    at = chance.choice(heads)
    depth = len(lines[at]) - len(lines[at].lstrip())
    end = at + 1
    while end < len(lines) and (not lines[end].strip() or len(lines[end]) - len(lines[end].lstrip()) > depth):
        end += 1
    block = lines[at:end]
    like = list(block)
    a_little(like, chance, ())
    if not any(line.startswith("choice variant") for line in lines):
        lines.insert(0, "choice variant this, that")
        at, end = at + 1, end + 1
    space = " " * depth
    under = [[f"{space}for variant {name}", *(f"    {line}" for line in body)] for name, body in (("this", block), ("that", like))]
    lines[at:end] = [line for part in under[: chance.choice((1, 2, 2))] for line in part]


CHANGES: dict[Change, int] = {
    a_little: 50,
    another_length: 6,
    other_word: 18,
    one_more: 6,
    one_less: 5,
    to_another_piece: 8,
    other_order: 4,
    other_bed: 2,
    other_swatch: 5,
    offered: 4,
}
"""Kinds of change, and how often each is drawn."""
