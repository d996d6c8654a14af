"""A printed language as its reader has it: a grammar of its sentences, how a page of it is laid out, and its few single words.

What a sentence says is the same data in each language: the rules and terminals of the grammars have the same names, and
`readback.sentences` makes the same phrases of them. A language is a folder of this package with a `LANGUAGE`.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field

from walewright.record import record


@record
class PageLayout:
    """What lines of a page look like; numbers and names are groups."""

    sizes: re.Pattern[str]
    """`first`, and the `others` with colons between them."""
    several: re.Pattern[str]
    """A heading's `name` and its `copies`, one number or one for each size."""
    part: re.Pattern[str]
    """A heading's `name` with what stands behind it of where a part runs."""
    only: re.Pattern[str]
    """A head over lines that are for some `sizes`, which it names."""
    chart: re.Pattern[str]
    """The heading of a chart, its `name`."""
    joining: re.Pattern[str]
    """The heading over what is put together off the bed. With plain spaces: those in the name of a piece are no-break spaces."""
    link: re.Pattern[str]
    """The heading over a link: the piece's name as `owner`, the `edge` and which `part` of it, and the copy's `number` if one is
    named."""
    note: re.Pattern[str]
    """What the author's own words begin with."""
    told: re.Pattern[str]
    """What a line beside a chart begins with that goes on indented."""
    key: re.Pattern[str]
    """What a line of a chart's key begins with, its `symbol`."""
    numbered: re.Pattern[str]
    """What stands between a step's box and its words: its number as `first`, or the `first` and `last` of those it stands for."""
    strip: re.Pattern[str]
    """The line above a strip of a chart: columns `first` to `last` of `width`, and of those `again` to `before` stood before."""


PARTS = ("left", "centre", "right", "upper")
"""Which part of an edge is meant, as all stages have it."""


@dataclass(frozen=True, slots=True, eq=False)
class ReadLanguage:
    """`grammar`: grammar/NAME.lark, or the grammar's own `text`. Needles are told by `left` or `right` and a number, `carriage` is
    how its two sides are told. `edges`: its words for edges without a name of their author's, and for parts of edges; those that
    are not there are as all stages have them. `order`: of phrases whose words come in another order than the arguments of the
    hands' method, where each argument stands; one that may be missing is the last. `quotes` stand before and behind a name of
    several words, `point` before decimals."""

    name: str
    grammar: str
    layout: PageLayout
    left: str
    right: str
    carriage: tuple[str, str]
    edges: Mapping[str, str] = field(default_factory=dict)
    order: Mapping[str, tuple[int, ...]] = field(default_factory=dict)
    dash: str = "–"
    opening: str = " ("
    between: str = ": "
    closing: str = ")"
    quotes: tuple[str, str] = ("“", "”")
    point: str = "."
    text: str = ""
    small: re.Pattern[str] | None = None
    """First words that have a capital only because a heading begins with them, where nouns have one of their own; None where every
    word is such a one."""

    def edge(self, words: str) -> str:
        """An edge as all stages have it. Its name comes first: two words of the language's own ("first row"), or one, which
        may be its author's; behind it stands which part is meant."""
        told = words.split(" ")
        # A part's word is no name of the language's own: there it is an author's.
        many = 2 if " ".join(told[:2]) in self.edges else 1
        name = " ".join(told[:many])
        of = self.edges.get(name, name)
        return " ".join((name if of in PARTS else of, *(self.edges.get(part, part) for part in told[many:])))
