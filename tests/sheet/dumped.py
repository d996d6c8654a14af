"""What a sheet holds, line by line, as it is composed: everything that is printed but the house's own texts, which the guide's
tests read, and drawings, of which only the size and the title stand here."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from typing import Any

from walewright.figures.model import Drawing
from walewright.sheet.bench import BenchRow
from walewright.sheet.model import Fact, HowTo, Row
from walewright.sheet.stage import RowLine, StepLine
from walewright.write.model import Run

HOUSES = ("words", "swatch", "safety", "trouble", "version", "colophon")
"""Fields of a sheet that are the same in every one."""


def told(name: str, value: Any, depth: int = 0) -> Iterator[str]:
    """The lines of a value called `name`; what says nothing is left out."""
    pad = "  " * depth
    short = _short(value)
    if short is not None:
        if short:
            yield f"{pad}{name}: {short}"
    elif isinstance(value, tuple):
        texts = [_short(part) for part in value]
        if all(text is not None for text in texts) and sum(len(text or "") for text in texts) < 110:
            yield f"{pad}{name}: {' | '.join(text or '-' for text in texts)}"
            return
        for number, part in enumerate(value, 1):
            yield from told(f"{name} {number}", part, depth)
    else:
        yield f"{pad}{name}"
        for field in fields(value):
            if field.name not in HOUSES and getattr(value, field.name) not in (None, "", (), 0, False):
                yield from told(field.name, getattr(value, field.name), depth + 1)


def _short(value: Any) -> str | None:
    """In a few words, or None of what takes several lines."""
    match value:
        case str() | int() | float():
            return str(value)
        case None:
            return ""
        case Drawing():
            return f"drawing {value.width:g} by {value.height:g}, {value.title}"
        case HowTo():
            return f"{value.anchor}: {value.title}"
        case Row():
            cells = " ".join(f"{c.text}{f'({c.under})' if c.under else ''}" for c in value.cells)
            return f"{f'{value.key} ' if value.key else ''}{value.label}{f' [{value.note}]' if value.note else ''}: {cells}"
        case StepLine():
            return _step(value)
        case BenchRow():
            return _bench_row(value)
        case Fact():
            return f"{value.label}: {value.text}{f' {value.figures}' if value.figures else ''}"
        case RowLine():
            parts = " / ".join(runs(of) for of in (value.row, value.pieces, value.stitches))
            return f"{value.number}. {'x' * value.boxes} {parts}"
        case tuple() if value and all(isinstance(part, Run) for part in value):
            return runs(value)
        case tuple() if value and all(isinstance(part, int) for part in value):
            return " to ".join(map(str, value))
        case tuple() if len(value) == 2 and all(isinstance(part, str) for part in value):
            return f"{value[0]} = {value[1]}"
    return None if is_dataclass(value) or isinstance(value, tuple) else str(value)


def _step(line: StepLine) -> str:
    named = (
        ("number", line.number), ("boxes", line.boxes), ("checks", line.check), ("RC", line.row), ("at", line.side),
        ("for", line.sizes), ("below", line.below), ("refers to", line.refers), ("joint", line.joint), ("row", line.row_figures),
        ("beneath", line.below_figures),
    )  # fmt: skip
    beside = ", ".join(f"{name} {value}" for name, value in named if value)
    return f"[{beside}] {runs(line.pieces)}"


def _bench_row(row: BenchRow) -> str:
    named = (("boxes", row.boxes), ("rows", row.rows), ("RC", row.counter), ("at", row.side), ("again", row.again))
    beside = ", ".join(f"{name} {value}" for name, value in named if value)
    parts = " / ".join(" + ".join(map(runs, of)) for of in (row.charts, row.what))
    return f"[{beside}, {' '.join(row.counts)}] {parts}{runs(row.note)}"


def runs(pieces: tuple[Run, ...]) -> str:
    """A sentence with the kinds of its runs, and strokes where figures begin and end."""
    made = ""
    for run in pieces:
        text = run.text
        for begin, end in reversed(run.figures):
            text = f"{text[:begin]}\N{LEFT CEILING}{text[begin:end]}\N{RIGHT CEILING}{text[end:]}"
        made += text if run.kind == "word" else f"{{{run.kind} {text}}}"
    return made


LONG = 60
"""Letters of a sentence that are shown where its words are another stage's."""


def dumped(value: Any, name: str = "sheet", whole: bool = True) -> str:
    """Without the `whole` of sentences, of long ones their beginning, their end and how long they are."""
    lines = told(name, value)
    return "\n".join(lines if whole else map(_shortened, lines))


def _shortened(line: str) -> str:
    beside, bracket, sentence = line.partition("] ")
    head = beside + bracket if bracket else ""
    said = sentence if bracket else line
    if len(said) <= 2 * LONG + 10:
        return line
    return f"{head}{said[:LONG]} … {said[-LONG // 2 :]} ({len(said)})"
