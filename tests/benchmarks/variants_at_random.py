"""Variants of the shipped and the documented sources, by hand: each either proven or refused at a line of its own.

    python -m tests.benchmarks.variants_at_random 600 [SEED] [FOLDER]

Numbers are changed, ways of starting, ending, shaping and holding exchanged, lines left out or written twice. What comes to a
refusal of the bed, to words that do not read back, or to an exception is a fault of the compiler: such sources are written to
FOLDER, and counted by what was told.
"""

from __future__ import annotations

import random
import re
import sys
from collections import Counter
from pathlib import Path

from tests.docs.blocks import SOUND, blocks
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.report.english import in_english

ROOT = Path(__file__).resolve().parents[2]
FAULTS = ("bed-refuses", "knitted-otherwise", "lace-unpaired", "words-")
NUMBER = re.compile(r"(?<![\w\".])\d+(?:\.\d+)?(?![\w\".])")
EXCHANGED = (
    ("on waste yarn by hand", "on waste yarn", "with e-wrap", "with chain"),
    ("end on waste yarn", "end cast off sewn", "end cast off", "end gathered"),
    ("fashioned 2 in, two at once", "fashioned 3 in", "fashioned 2 in", "simple"),
    (", beginning with a move", ", ending with a move", ""),
    (", larger steps first", ", larger steps last", ""),
    ("held in and let out", "held in", "let out"),
    ("left edge", "right edge", "edges"),
    ("at the left edge", "at the right edge", "at both edges"),
    ("left of centre", "right of centre"),
    (", centre stitch", ", odd or even", ""),
    (", knit 2", ""),
    ("slope", "curve", "arch"),
    (" round", " v", " square"),
    ("added after", "knitted first"),
    (", folded", ", picot", ", rolled", ", facing", ", mock rib 1 by 1"),
    (", grafted", ", linked", ", gathered", ", easing 2 cm", ""),
    (", cast off", ", on waste yarn", ""),
    ("cast off 3 cm then ", "cast off 2 cm then ", ""),
)


def variant(text: str, chance: random.Random) -> str:
    lines = text.splitlines()
    first = next((i for i, line in enumerate(lines) if line.startswith(("piece", "edging", "shape"))), 0)
    for _ in range(chance.choice((1, 1, 2, 3))):
        at = chance.randrange(first, len(lines))
        line = lines[at]
        kind = chance.random()
        if kind < 0.45:
            lines[at] = _renumbered(line, chance)
        elif kind < 0.85:
            lines[at] = _exchanged(line, chance)
        elif kind < 0.95 and line.startswith(" "):
            del lines[at]
        else:
            lines.insert(at, line)
    return "\n".join((*lines, ""))


def _renumbered(line: str, chance: random.Random) -> str:
    found = list(NUMBER.finditer(line))
    if not found:
        return line
    one = chance.choice(found)
    value = float(one[0]) * chance.choice((0, 0.1, 0.5, 0.8, 0.9, 1.1, 1.25, 2, 4)) + chance.choice((0, 0, 0, 1, -1))
    shown = f"{max(value, 0):.0f}" if "." not in one[0] else f"{max(value, 0):.1f}"
    return line[: one.start()] + shown + line[one.end() :]


def _exchanged(line: str, chance: random.Random) -> str:
    able = [(group, word) for group in EXCHANGED for word in group if word and word in line]
    if re.match(r" +(edges|left edge|right edge) (slope|curve|steps|straight)", line):
        able.append((("cast off 3 cm then ", "cast off 1 cm then "), ""))
    if not able:
        return line
    group, word = chance.choice(able)
    other = chance.choice([w for w in group if w != word])
    if not word:
        return re.sub(r"^( +(?:edges|left edge|right edge) )", lambda m: m[1] + other, line)
    return line.replace(word, other, 1)


def sources() -> list[tuple[str, str]]:
    """Every shipped garment, and every sound source of the documentation, whole with its frame."""
    found = [(p.stem, p.read_text()) for p in sorted((ROOT / "patterns").glob("*.wale"))]
    return found + [(b.name, b.source) for b in blocks("wale") if SOUND.fullmatch(b.info)]


def one_size(text: str, chance: random.Random) -> Changes:
    header = re.search(r"^sizes\s+(.*)$", text, re.MULTILINE)
    names = header[1].split("#")[0].split() if header else []
    return Changes((chance.choice(names),) if names else None)


def main() -> None:
    count, seed = int(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) > 2 else 1
    folder = Path(sys.argv[3]) if len(sys.argv) > 3 else None
    chance, data = random.Random(seed), shipped()
    every, told, proven = sources(), Counter[str](), 0
    for number in range(count):
        name, text = chance.choice(every)
        made = variant(text, chance)
        changes = one_size(made, chance)
        try:
            outcome = pipeline.compile(made, "variant.wale", data, changes)
            bad = [d for d in outcome.diagnostics if d.code.startswith(FAULTS)]
            faults = [f"{d.code}: {in_english(d).message} {in_english(d).notes[-1:]}" for d in bad]
            proven += outcome.proven
        except Exception as fault:
            faults = [f"exception {type(fault).__name__}: {fault}"]
        if faults:
            told[faults[0]] += 1
            sys.stdout.write(f"{number} {name} {changes.sizes}: {faults[0]}\n")
            sys.stdout.flush()
            if folder:
                folder.mkdir(exist_ok=True)
                (folder / f"{seed}_{number}.wale").write_text(f"# {name} {changes.sizes}: {faults[0]}\n{made}")
    sys.stdout.write(f"{count} variants, {proven} proven, {sum(told.values())} faults\n")


if __name__ == "__main__":
    main()
