"""Every word of a source has an effect: each line taken out, each number changed, each option put where it does not stand.

Run on demand: `python -m tests.benchmarks.words_without_effect [SEED [SHARE]] [SOURCE...]`, for every change to every shipped
garment and to every whole source and example of the documentation, where nothing else is said; with a seed and a share (0 to 1),
for that share of the changes, drawn at random. A source is named by what its name begins with (`windrow`, `docs/techniques`).
Interrupted (`timeout -s INT 600 python …`), it tells how far it came, and what it found till then.

A change shows if what is told, what is knitted, the plain text, the plan document or the page is another. It is tried in the first
size (for a figure in the sizes: in the size it is of), and if nothing shows there, in all of them. What changes nothing is listed;
what is listed and does not stand in `EXPLAINED` is a word that is ignored.
"""

from __future__ import annotations

import random
import re
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cache

from tests.docs.blocks import blocks
from walewright import design, glue, knit, pages, pipeline, plan, solve, source
from walewright.cli.sources import shipped
from walewright.cli.text_copy import text_copy
from walewright.design import Changes
from walewright.pages.model import PageOptions
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity
from walewright.world import shipped_names, shipped_text

SHIPPED = shipped()
NUMBER = re.compile(r"(?<![\w./-])(?P<value>\d+(?:\.\d+)?)(?P<gap>\s*)(?P<unit>[a-z%]+\b)?")
TEXT = re.compile(r'"(?:\\.|[^"\\])*"')
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
    "piece": (", knit 2", ", centre stitch", ", as hood"),
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
    "finished": (", stretches", ", fits 90 cm"),
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
    "edges": (", called surplus", ", simple", ", fashioned 2 in", ", two at once"),
    "left": (", called surplus", ", simple", ", fashioned 2 in", ", two at once"),
    "right": (", called surplus", ", simple", ", fashioned 2 in", ", two at once"),
    "opening": (", on waste yarn", ", cast off", ", 1 cm left of centre"),
    "slot": (", on waste yarn", ", cast off", ", 1 cm left of centre"),
    "neck": (", on waste yarn", ", cast off", ", simple", ", fashioned 2 in", ", 3 cm flat"),
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
    """A source: `text`, of which the lines up to `frame` are not changed."""

    name: str
    text: str
    frame: int = 0

    @property
    def lines(self) -> list[str]:
        return self.text.split("\n")


def explained(change: Change, line: str) -> str:
    """Why such a change shows nowhere, or an empty text."""
    return next(
        (why for kind, pattern, why in EXPLAINED if kind in change.kind and re.search(pattern, f"{change.what}\n{line}")), ""
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
    ("number", r"\n.*\bbetween\b", "the end of a range that is not reached"),
    ("number", r"\njoin .*easing", "fullness that may be, and is not needed"),
    ("line number", r"\n(prongs|needles|waste rows|pitch)\b", "a fact of the bed that this garment does not come to"),
    (
        "option",
        r"added `, (two at once|fashioned 2 in)`.*\n.*\bsteps -?\(",
        "how many stitches such a step has depends on the tension",
    ),
)
"""(kind of change, what `what was done, newline, the line` has in it, why nothing shows)."""


def sources() -> Iterator[Written]:
    """Every shipped garment, every whole source of the documentation, every example below its frame."""
    for name in shipped_names("patterns", suffix=".wale"):
        yield Written(name, shipped_text("patterns", name))
    found = blocks("wale")
    (frame,) = (b.text for b in found if b.info == "wale frame")
    for block in found:
        if block.info == "wale example":
            yield Written(block.name, f"{frame}\n{block.text}", frame.count("\n") + 1)
        elif block.info == "wale":
            yield Written(block.name, block.text)


def changes(written: Written) -> Iterator[Change]:
    """All that is tried with a source."""
    lines = written.lines
    block = ""
    for at, line in enumerate(lines):
        bare = TEXT.sub(lambda m: "_" * len(m[0]), line)
        bare = bare.split(" #")[0]
        if not bare.strip() or bare.strip().startswith("#"):
            continue
        block = block if line.startswith(" ") else bare.split()[0]
        if at < written.frame:
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


Told = tuple[tuple[str, str, tuple[str, ...]], ...]


def _told(diagnostics: tuple[Diagnostic, ...]) -> Told:
    """What is told, without the places, which move when a line is taken out."""
    return tuple((d.code, in_english(d).message, in_english(d).labels) for d in diagnostics)


class Compiled:
    """One text in some sizes, taken only as far as it is asked for."""

    def __init__(self, text: str, sizes: tuple[str, ...] | None) -> None:
        self.text = text
        self.changes = Changes(sizes=sizes)

    @cache  # noqa: B019 - the object lives as long as its answers are wanted
    def understood(self) -> tuple[design.understand.__class__, ...] | tuple[object, Told]:
        tree, unread = source.read("it.wale", self.text)
        shapes, unshaped = pipeline._shapes(tree, SHIPPED)
        meant, unclear = design.understand(tree, SHIPPED, self.changes, shapes)
        return meant, _told((*unread, *unshaped, *unclear)), _failed((*unread, *unshaped, *unclear))

    @cache  # noqa: B019
    def planned(self) -> tuple[object, Told]:
        """The steps of every size, and what was told on the way."""
        meant, told, failed = self.understood()
        if meant is None or failed:
            return None, told
        glued, apart = glue.glue(meant)
        if glued is None or _failed(apart):
            return None, (*told, *_told(apart))
        counts, impossible = solve.solve(meant, glued)
        told = (*told, *_told(apart), *_told(impossible))
        if counts is None or _failed(impossible):
            return None, told
        return knit.plan(meant, glued, counts), told

    @cache  # noqa: B019
    def printed(self) -> tuple[object, ...]:
        """All that a knitter and another program get."""
        outcome = pipeline.compile(self.text, "it.wale", SHIPPED, self.changes)
        told = _told(outcome.diagnostics)
        if not outcome.proven:
            return (told,)
        meant, counts, words, proof = outcome.result()
        sheet = pages.compose(meant, counts, words, proof, PageOptions(date="today"), outcome.fit)
        return told, text_copy(outcome, "cm"), pages.html(sheet), plan.plan_bytes(outcome)


def _failed(diagnostics: tuple[Diagnostic, ...]) -> bool:
    return any(d.severity is Severity.ERROR for d in diagnostics)


def shows(was: Compiled, now: Compiled) -> str:
    """The first stage at which two texts differ, or an empty text."""
    if was.understood()[1] != now.understood()[1]:
        return "told"
    if _same_design(was.understood()[0], now.understood()[0]):
        return ""
    if was.planned()[1] != now.planned()[1]:
        return "told later"
    if repr(was.planned()[0]) != repr(now.planned()[0]):
        return "knitted"
    for stage, one, other in zip(("told later", "text", "page", "plan"), was.printed(), now.printed(), strict=False):
        if one != other:
            return stage
    return ""


def _same_design(one: object, other: object) -> bool:
    from walewright.design.dump import dump

    return one is other or (one is not None and other is not None and dump(one) == dump(other))


def tried(written: Written, keep: Callable[[], bool]) -> Iterator[tuple[Change, str]]:
    """Each change to a source, and where it shows."""
    names = next((s.names for s in source.read("", written.text)[0].statements if isinstance(s, source.syntax.Sizes)), ())
    originals: dict[tuple[str, ...] | None, Compiled] = {}

    def stage(change: Change, sizes: tuple[str, ...] | None) -> str:
        was = originals.setdefault(sizes, Compiled(written.text, sizes))
        return shows(was, Compiled(change.text, sizes))

    for change in changes(written):
        if not keep():
            continue
        size = names[min(change.size, len(names) - 1)] if names else None
        at = stage(change, (size,) if size else None)
        if not at and len(names) > 1:
            at = stage(change, None)
        yield change, at


def main() -> None:
    """Change, compile and list."""
    said = sys.argv[1:]
    seed = int(said.pop(0)) if said and said[0].isdigit() else 0
    share = float(said.pop(0)) if said and re.fullmatch(r"[\d.]+", said[0]) else 1.0
    draw = random.Random(seed)
    found: Counter[str] = Counter()
    lost: list[str] = []
    began = time.monotonic()
    at = ""
    try:
        for written in sources():
            if said and not any(written.name.startswith(name) for name in said):
                continue
            at = written.name
            _try(written, lambda: draw.random() < share, found, lost)
        at = ""
    except KeyboardInterrupt:
        print(f"stopped at {at}")
    print(f"{sum(found.values())} changes in {time.monotonic() - began:.0f} s; unexplained {len(lost)}")
    for what, count in sorted(found.items()):
        print(f"    {what} {count}")


def _try(written: Written, keep: Callable[[], bool], found: Counter[str], lost: list[str]) -> None:
    """Counts what becomes of the changes to one source, and lists those that show nowhere and are not explained."""
    if len(Compiled(written.text, None).printed()) == 1:
        # A page of a code shows a source that stops there or at its open loops: nothing of it is printed, to be compared.
        return
    for change, stage in tried(written, keep):
        found[f"{change.kind}: {stage or 'nowhere'}"] += 1
        line = written.lines[change.line].strip()
        if stage in ("", "plan") and not explained(change, line):
            if not stage:
                lost.append(line)
            where = "only in the plan document: " if stage else ""
            print(f"{written.name}:{change.line + 1}: {where}{change.kind} {change.what}: {line}", flush=True)


if __name__ == "__main__":
    main()
