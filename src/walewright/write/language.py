"""A printed language: all that is to be known of it, as one value that is handed on to whatever prints words.

A sentence is a template with places in braces; `write.filling` says how they are filled in. Each kind of step has a template of
its name in small letters (`needles_to_work`), and some have several, told apart behind a stroke (`use_looser/next`). A language
is a folder of this package with a `LANGUAGE`.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass

from walewright.record import record, replace
from walewright.report import wording
from walewright.trade.edge_names import part_of_edge, worded_edge
from walewright.write.model import Abbreviation

PLATE = "/plate"

OF_ROWS = ("start", "end")
"""Edges that are called rows."""


@record
class Marks:
    """How the numbers of several sizes stand together: `78 (84: 90: 96)`, and the dash of a size that skips what is counted.
    `quotes` stand before and behind what an author wrote, `instead` for the second of them within; `point` is before decimals."""

    dash: str = "–"
    opening: str = " ("
    between: str = ": "
    closing: str = ")"
    quotes: tuple[str, str] = ("“", "”")
    instead: str = "’"
    point: str = "."


ENGLISH_MARKS = Marks()


@record
class Noun:
    """What is counted: one of it, and several; `short` where the words are an abbreviation."""

    one: str
    many: str
    short: frozenset[Abbreviation] = frozenset()


@dataclass(frozen=True, slots=True, eq=False)
class PrintedLanguage:
    """`sentences`: templates by their keys. `terms`: the words for the values of a field that has a few, by the field's name, or by
    the template's and the field's (`fold_up.way`), where two steps have a field of one name. `nouns`: what numbers count.
    `abbreviations`: as printed, with their meanings, in the order in which they are explained."""

    name: str
    sentences: Mapping[str, str]
    terms: Mapping[str, Mapping[str, str]]
    nouns: Mapping[str, Noun]
    abbreviations: Mapping[Abbreviation, tuple[str, str]]
    prose: wording.Language
    """Titles, notes, and what a chart's symbols mean: sentences in which nothing is graded."""
    ordinal: Callable[[int], str]
    edges: Mapping[str, str]
    """Edges that have no name of their author's, and what tells the parts of an edge apart."""
    marks: Marks = ENGLISH_MARKS
    unbroken: re.Pattern[str] = re.compile(r"(?!)")
    """Spaces where no line is broken, beside those within numbers."""
    small: re.Pattern[str] | None = None
    """The first words of names that are written small, where nouns have a capital; None where all names begin small."""
    sizes: tuple[str, ...] = ()
    """The names of the sizes that are written for, as they are printed, in their order."""

    def for_sizes(self, names: Iterable[str]) -> PrintedLanguage:
        """The same for a text of these sizes."""
        return replace(self, sizes=tuple(names))

    def named_sizes(self, numbers: Iterable[int]) -> str:
        """The names of the sizes of these numbers (from 0), one after the other."""
        return ", ".join(self.sizes[number] for number in numbers)

    def on_plates(self) -> PrintedLanguage:
        """The same where plates set the tension: of a sentence that has one for them (`use_yarn_step/plate`), that one."""
        of_plates = {key.removesuffix(PLATE): text for key, text in self.sentences.items() if key.endswith(PLATE)}
        return replace(self, sentences={**self.sentences, **of_plates})

    def short(self, what: Abbreviation) -> str:
        """An abbreviation as it is printed."""
        return self.abbreviations[what][0]

    def needle(self, slot: int) -> str:
        """A needle by its side and its number from the centre mark."""
        return " ".join(self.needle_parts(slot))

    def needle_parts(self, slot: int) -> tuple[str, str]:
        """The side and the number of a needle."""
        return (self.short(Abbreviation.RIGHT), str(slot + 1)) if slot >= 0 else (self.short(Abbreviation.LEFT), str(-slot))

    def bracketed(self, texts: tuple[str, ...]) -> str:
        """The first size's text, then the others' behind it: "XS (S: M: L)"."""
        first, *rest = texts
        marks = self.marks
        return f"{first}{marks.opening}{marks.between.join(rest)}{marks.closing}" if rest else first

    def edge(self, name: str) -> str:
        """An edge's name as words: the name that its author gave it, or the language's own, and which part of it."""
        return worded_edge(name, self.edges)

    def edge_of(self, name: str) -> str:
        """The same with the part at its place in a sentence: "left armhole"."""
        of = part_of_edge(name)
        part = "upper" if of.upper else of.part
        if part == "whole":
            return self.edge(name)
        key = "edge_part/row" if of.name in OF_ROWS else "edge_part"
        return self.sentences[key].format(edge=self.edge_of(of.name), half=self.edges[part])

    def half_of_same_row(self, one: str, other: str) -> str:
        """Which part `other` is of the row that `one` is a part of too; nothing where they are not parts of one row."""
        first, second = part_of_edge(one), part_of_edge(other)
        parts = first.name == second.name in OF_ROWS and "whole" not in (first.part, second.part)
        return self.edges[second.part] if parts and not (first.upper or second.upper) else ""
