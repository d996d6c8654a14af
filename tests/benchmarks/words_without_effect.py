"""Every word of a source has an effect: each line taken out, each number changed, each option put where it does not stand.

Run on demand: `python -m tests.benchmarks.words_without_effect RESULTS [SEED [SHARE]] [SOURCE...]`, for every change to every
shipped garment and to every whole source and example of the documentation, where nothing else is said; with a seed and a share (0
to 1), for that share of the changes, drawn at random. A source is named by what its name begins with (`windrow`,
`docs/techniques`). Each change writes a line into the file RESULTS; what is there already is not tried again, so a run that was
stopped (`timeout -s INT 600 python ...`) is taken up where it was, and runs with other seeds add up. At the end the sum of the
whole file is printed, and what is not explained.

A change in an alternative of a choice is tried where it is taken. A change shows if what is told, what is knitted, the plain
text, the plan document or the page is another (`stage_by_stage`). It is tried in the first size (for a figure in the sizes: in
the size it is of), and if nothing shows there, in each of the others whose design is another, and in all of them at once. What
changes nothing is listed; what is listed and does not stand in `EXPLAINED` is a word that is ignored. One that is explained is
tried in one size only.
"""

from __future__ import annotations

import json
import random
import re
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache
from itertools import product
from pathlib import Path
from typing import Any

from tests.benchmarks.stage_by_stage import Compiled, shows, told
from tests.docs.blocks import SOUND, blocks
from walewright import source
from walewright.world import shipped_names, shipped_text

NUMBER = re.compile(r"(?<![\w./-])(?P<value>\d+(?:\.\d+)?)(?P<gap>\s*)(?P<unit>[a-z%]+\b)?")
TEXT = re.compile(r'"(?:\\.|[^"\\])*"')
EDGE_OPTIONS = (
    ", called surplus",
    ", simple",
    ", fashioned 2 in",
    ", two at once",
    ", beginning with a move",
    ", ending with a move",
    ", larger steps first",
    ", larger steps last",
)
OPTIONS: dict[str, tuple[str, ...]] = {
    "yarn": (', shown "#336699"',),
    "edging": (
        ", added after",
        ", knitted first",
        ", cast off chain",
        ", cast off sewn",
        ", cast off waste",
        ", folded",
        ", picot",
        ", mock rib 1 by 1",
        ", mock rib 2 by 1",
        ", rolled",
        ", facing",
        ", chained",
        ", fold row at tension 9",
        ", inside at tension 1",
    ),
    "piece": (", knit 2", ", centre stitch", ", odd or even", ", as hood"),
    "band": (", right side facing", ", wrong side facing", ", buttonholes 3 over 2 stitches, 2 cm first, 2 cm last"),
    "join": (
        ", easing 3 cm",
        ", longer by 3 cm",
        ", sewn",
        ", grafted",
        ", linked",
        ", gathered",
        ", matching",
        ", each to the next",
        ", each to the next all round",
    ),
    "finished": (", stretches", ", fits 90 cm", ", wanted 90 cm"),
    "through": (", stretches to 150 %", " of 30 cm"),
    "lap": (", 3 cm wide",),
    "require": (' because "it has to"',),
    "stocking": (),
    "chart": (", whole repeats", ", centred", ", balanced", ", 1 edge stitch", ", 2 edge stitches"),
    "repeat": (", after 1 stitch",),
    "swatch": (", 30 g", ", 15 mm to a stitch"),
    "start": (
        ", on waste yarn",
        ", on waste yarn by hand",
        ", with e-wrap",
        ", with chain",
        ", right side facing",
        ", wrong side facing",
        ", with {edging}",
    ),
    "edges": EDGE_OPTIONS,
    "left": EDGE_OPTIONS,
    "right": EDGE_OPTIONS,
    "opening": (", on waste yarn", ", cast off", ", 1 cm left of centre"),
    "slot": (", on waste yarn", ", cast off", ", 1 cm left of centre"),
    "neck": (", on waste yarn", ", cast off", ", simple", ", fashioned 2 in", ", 3 cm flat", ", ending with a move"),
    "wedge": (", resting 3 cm",),
    "fabric": (", 6 cm wide", ", 1 repeats wide", ", 3 cm left of centre"),
    "motif": (", 3 cm left of centre",),
    "size": (", to fit",),
}
"""First word of a line to the options that its kind can have ("size": a row of the sizes)."""
IN_FRONT = {"edges": "cast off 1 cm then ", "left": "cast off 1 cm then ", "right": "cast off 1 cm then "}
"""The same for what stands before the rest of the line: behind `edges`, `left edge`, `right edge`."""


@dataclass(frozen=True, slots=True)
class Change:
    """One change to a source: which `kind` ("line", "number", "option"), in which `line` (from 0), `what` was done, the `text`
    after it, and in which of the sizes (by number) it would show."""

    kind: str
    line: int
    what: str
    text: str
    size: int = 0


@dataclass(frozen=True, slots=True)
class Written:
    """A source: `text`, of which only the lines of `own` are changed, or all."""

    name: str
    text: str
    own: str = ""

    @property
    def lines(self) -> list[str]:
        return self.text.split("\n")


def explained(change: Change, line: str) -> str:
    """Why such a change shows nowhere, or an empty text."""
    return next(
        (why for kinds, pattern, why in EXPLAINED if change.kind in kinds.split() and re.search(pattern, f"{change.what}\n{line}")),
        "",
    )


EXPLAINED: tuple[tuple[str, str, str], ...] = (
    (
        "option",
        r"added `, (on waste yarn|simple|sewn|wrong side facing|right side facing|whole repeats|added after|cast off chain)`",
        "says what is meant anyway; where it would mean nothing it is an error",
    ),
    ("line", r"\n(edges|left edge|right edge) straight to \w+$", "an edge that no statement leads to the top goes straight on"),
    ("line", r"\n(fit|colours with floats|right side knit)", "says what is meant anyway"),
    ("line", r"\nrepeat \d+ stitches$", "of a chart that is one repeat wide; a narrower one is another pattern, and shows"),
    ("line", r"\nfree ", "what is said to be free is left out of what `check` lists, and is nothing in the garment"),
    ("number line option", r"\nrequire ", "a promise that holds is silent: it is told where it does not hold"),
    ("number line option", r"\nfinished .*stretches", "a permission to be smaller than the body, which no size needs"),
    ("option", r"added `, stretches", "a permission: of a measurement for nothing that has to stretch"),
    ("number", r"\n.*\b(min|max|round)\(", "the other of two amounts is taken, or the rounded one is the same"),
    ("option", r"added `, as hood`\n.*mirror of", "a mirror image is what its model is"),
    ("number", r"\nneck .*\b\d stitch(es)? flat", "a stitch more or less, as the width of the neck is even or odd"),
    ("number", r"\n.*\bbetween\b", "the end of a range that is not reached"),
    ("number", r"\njoin .*easing", "fullness that may be, and is not needed"),
    ("line number", r"\n(prongs|needles|waste rows|pitch)\b", "a fact of the bed that this garment does not come to"),
    (
        "option",
        r"added `, (two at once|fashioned 2 in)`.*\n.*\bsteps -?\(",
        "how many stitches such a step has depends on the tension",
    ),
    ("option", r"added `, larger steps (first|last)`", "steps that come out equal at this tension"),
    ("option", r"added `, (beginning|ending) with a move`", "where so many moves leave no other row"),
)
"""(kind of change, what `what was done, newline, the line` has in it, why nothing shows)."""


def sources() -> Iterator[Written]:
    """Every shipped garment, and every sound source of the documentation, whole with its frame."""
    for name in shipped_names("patterns", suffix=".wale"):
        yield Written(name, shipped_text("patterns", name))
    for block in blocks("wale"):
        if SOUND.fullmatch(block.info):
            yield Written(block.name, block.source, block.text)


def _own_lines(written: Written) -> set[int]:
    """The numbers of the lines that are changed. Each of the block's own is where its text stands last: a frame's lines may read
    alike."""
    lines = [line.strip() for line in written.lines]
    if not written.own:
        return set(range(len(lines)))
    found: set[int] = set()
    for text in reversed([line.strip() for line in written.own.split("\n")]):
        at = next((n for n in range(len(lines) - 1, -1, -1) if n not in found and lines[n] == text), None)
        found |= {at} if at is not None else set()
    return found


def changes(written: Written) -> Iterator[Change]:
    """All that is tried with a source."""
    lines = written.lines
    own = _own_lines(written)
    block = ""
    for at, line in enumerate(lines):
        bare = TEXT.sub(lambda m: "_" * len(m[0]), line)
        bare = bare.split(" #")[0]
        if not bare.strip() or bare.strip().startswith("#"):
            continue
        block = block if line.startswith(" ") else bare.split()[0]
        if at not in own:
            continue
        last = at + 1
        while last < len(lines) and lines[last].strip() and _indent(lines[last]) > _indent(line):
            last += 1
        yield Change("line", at, "deleted", "\n".join(lines[:at] + lines[last:]))
        in_sizes = block == "sizes" and line.startswith(" ")
        if not bare.strip().startswith("|"):
            for n, found in enumerate(NUMBER.finditer(bare)):
                for value in _others(written, found, bare):
                    changed = line[: found.start("value")] + value + line[found.end("value") :]
                    text = "\n".join([*lines[:at], changed, *lines[at + 1 :]])
                    yield Change("number", at, f"{found[0].strip()} -> {value}", text, n if in_sizes else 0)
        for what, changed in _with_options(written, line, bare.rstrip(), "size" if in_sizes else bare.split()[0]):
            yield Change("option", at, what, "\n".join([*lines[:at], changed, *lines[at + 1 :]]))


def _others(written: Written, found: re.Match[str], line: str) -> tuple[str, ...]:
    """What a number is changed to: by one, or so much that it has to show."""
    value, unit = float(found["value"]), found["unit"] or ""
    if re.match(r"^\s*(yarn|swatch|pitch)\b", line) or unit in ("g", "%", "m"):
        more = (value * 1.4, value * 0.7)
    elif unit in ("cm", "mm", "in"):
        step = 2.2 * _coarsest(written.text) * {"cm": 1.0, "mm": 10.0, "in": 1 / 2.54}[unit]
        more = (value + step, value - step)
    elif not unit and "." in found["value"]:
        more = (value * 1.3, value * 0.7)
    elif not unit and re.match(r"^\s+\w+( -?[\d.]+)+ cm", line):
        more = (value + 2.2 * _coarsest(written.text), value - 2.2 * _coarsest(written.text))
    elif re.match(r"^\s*needles\b", line):
        more = (value + 2, value - 2)
    else:
        more = (value + 1, value - 1)
    return tuple(f"{v:.4f}".rstrip("0").rstrip(".") for v in more if v > 0)


@cache
def _coarsest(text: str) -> float:
    """The widest stitch and highest row of a source's swatches, in cm."""
    found = re.findall(r"swatch (\d+) stitches by (\d+) rows = ([\d.]+) cm by ([\d.]+) cm", text)
    return max((max(float(w) / int(s), float(h) / int(r)) for s, r, w, h in found), default=0.8)


def _with_options(written: Written, line: str, bare: str, first: str) -> Iterator[tuple[str, str]]:
    content, rest = line[: len(bare)], line[len(bare) :]
    edging = re.search(r"^edging (\w+)", written.text, re.M)
    for option in OPTIONS.get(first, ()):
        said = option.replace("{edging}", edging[1] if edging else "nothing")
        yield f"added `{said}`", content + said + rest
    if first in IN_FRONT:
        head = re.match(r"\s*(edges|left edge|right edge) ", content)
        if head is not None:
            yield f"added `{IN_FRONT[first]}`", head[0] + IN_FRONT[first] + content[head.end() :] + rest


def _indent(line: str) -> int:
    return len(line) - len(line.lstrip(" "))


Sizes = tuple[str, ...] | None
Chosen = tuple[tuple[str, str], ...]
Key = tuple[str, int, str, str, str]


class Tried:
    """The changes to one source, one after the other, beside the source as it is."""

    def __init__(self, written: Written) -> None:
        self.written = written
        statements = source.read("", written.text)[0].statements
        self.names = next((s.names for s in statements if isinstance(s, source.syntax.Sizes)), ())
        self.originals: dict[tuple[Sizes, Chosen], Compiled] = {}
        design = Compiled(written.text, None).understood.design
        offered = design.choices if design is not None else ()
        self.ways: list[Chosen] = list(product(*([(c.name, a) for a in c.alternatives] for c in offered)))
        """All ways to choose, the source's own first."""

    def original(self, sizes: Sizes, chosen: Chosen = ()) -> Compiled:
        return self.originals.setdefault((sizes, chosen), Compiled(self.written.text, sizes, dict(chosen)))

    def first(self, number: int) -> Sizes:
        return (self.names[min(number, len(self.names) - 1)],) if self.names else None

    @property
    def comparable(self) -> bool:
        """A page of a code shows a source that stops there or at its open loops: nothing of it is printed, to be compared."""
        return self.original(self.first(0)).proven is not None

    def stage(self, change: Change) -> str:
        """Where the change shows, or an empty text."""
        first = self.first(change.size)
        at = next((at for way in self.ways if (at := self._shows(change, first, way))), "")
        if at or len(self.names) < 2 or explained(change, self.written.lines[change.line].strip()):
            return at
        every = Compiled(change.text, None)
        if _alike(self.original(None), every):
            return ""
        alone: list[Sizes] = [(name,) for name in self.names if (name,) != first]
        return next((at for sizes in (*alone, None) if (at := self._shows(change, sizes))), "")

    def _shows(self, change: Change, sizes: Sizes, chosen: Chosen = ()) -> str:
        return shows(self.original(sizes, chosen), Compiled(change.text, sizes, dict(chosen)))


def _alike(one: Compiled, other: Compiled) -> bool:
    """Whether two texts mean the same, and the same is told of them."""
    return told(one.understood.diagnostics) == told(other.understood.diagnostics) and one.meant == other.meant


def key_of(written: Written, change: Change) -> Key:
    return written.name, change.line + 1, change.kind, change.what, written.lines[change.line].strip()


def tried(known: set[Key], keep: Callable[[], bool], among: tuple[str, ...]) -> Iterator[dict[str, object]]:
    """A line of the results for each change that is kept and not known yet."""
    for written in sources():
        if among and not written.name.startswith(among):
            continue
        todo = [change for change in changes(written) if keep() and key_of(written, change) not in known]
        if not todo:
            continue
        beside = Tried(written)
        if not beside.comparable:
            continue
        for change in todo:
            began = time.process_time()
            stage = beside.stage(change)
            why = explained(change, written.lines[change.line].strip()) if stage in ("", "plan") else ""
            seconds = round(time.process_time() - began, 2)
            yield {"change": key_of(written, change), "stage": stage, "explained": why, "seconds": seconds}


def summed(lines: list[dict[str, Any]]) -> None:
    """Prints what all changes came to, and what is ignored."""
    found = Counter(f"{line['change'][2]}: {line['stage'] or 'nowhere'}" for line in lines)
    lost = [line for line in lines if line["stage"] in ("", "plan") and not line["explained"]]
    of = len({line["change"][0] for line in lines})
    seconds = sum(line["seconds"] for line in lines)
    print(f"{len(lines)} changes to {of} sources in {seconds:.0f} s of one core; unexplained {len(lost)}")
    for what, count in sorted(found.items()):
        print(f"    {what} {count}")
    for line in lost:
        name, number, kind, what, text = line["change"]
        print(f"{name}:{number}: {'only in the plan document: ' if line['stage'] else ''}{kind} {what}: {text}")


def main() -> None:
    """Change, compile and list."""
    results, said = Path(sys.argv[1]), sys.argv[2:]
    seed = int(said.pop(0)) if said and said[0].isdigit() else 0
    share = float(said.pop(0)) if said and re.fullmatch(r"[\d.]+", said[0]) else 1.0
    draw = random.Random(seed)
    lines = [json.loads(text) for text in results.read_text(encoding="utf-8").splitlines()] if results.exists() else []
    known: set[Key] = {tuple(line["change"]) for line in lines}  # type: ignore[misc]
    with results.open("a", encoding="utf-8") as file:
        try:
            for line in tried(known, lambda: draw.random() < share, tuple(said)):
                file.write(json.dumps(line) + "\n")
                file.flush()
                lines.append(line)
        except KeyboardInterrupt:
            print("stopped")
    summed(lines)


if __name__ == "__main__":
    main()
