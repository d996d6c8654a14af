"""The shipped parse tables. `python -m tests.laws.parse_tables` writes them anew, after a change to a grammar or to the code that
edits its terminals."""

from __future__ import annotations

from pathlib import Path

from walewright.languages import known, printed
from walewright.readback import sentences
from walewright.source import grammar
from walewright.world.tables import Grammar, tables

FOLDER = Path(__file__).resolve().parents[2] / "grammar"
GRAMMARS = (grammar.GRAMMAR, *(sentences.grammar(printed(name).reading) for name in known()))


def file(of: Grammar) -> Path:
    return FOLDER / f"{of.name}.tables"


if __name__ == "__main__":
    for one in GRAMMARS:
        file(one).write_text(tables(one), encoding="utf-8")
