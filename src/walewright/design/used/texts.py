"""The author's words: which texts a source has, in the order in which they are printed, and what each is about.

Each reaches the page, the plain text and the plan document. A key that nothing prints is refused.
"""

from __future__ import annotations

from collections.abc import Iterator

from walewright.design.findings import Findings, Used
from walewright.design.used.uses import Uses
from walewright.record import record
from walewright.report.said import said
from walewright.source import syntax

FRONT = ("designer", "copyright", "edition", "date")
"""Whose pattern it is, and of when."""
OF_THE_PATTERN = ("summary", "difficulty", "story", *FRONT, "note")
"""Keys that the block of `pattern` can have, in the order of the page."""
ONCE = ("summary", "difficulty", "story", *FRONT)
ELSEWHERE = ("note",)
"""Keys that can stand at the left margin and in blocks."""
IN_MAKING_UP = ("step",)

Texts = tuple[tuple[str, str], ...]
"""(key, text), in the order in which they are printed."""


def texts(
    title: syntax.PatternBlock, whole: syntax.Tree, found: Uses, sizes: tuple[tuple[str, ...], tuple[str, ...]], findings: Findings
) -> Texts:
    """The texts of the pattern's block, then notes that stand elsewhere, headed by what they are about.

    Of a definition that nothing uses no note is printed. A note of a shape is headed by the shape, and stands once however often
    the shape is used; `whole` has the shapes expanded. `sizes`: all that the source has, and those that are made."""
    _each_once(title, findings)
    for statement in whole.statements:
        for line in statement.body if isinstance(statement, syntax.Sizes) else (statement,):
            if isinstance(line, syntax.YarnLine | syntax.SizeRow | syntax.Require):
                _each_once(line, findings)
    own = [t for t in title.body if isinstance(t, syntax.TextLine)]
    for key in ONCE:
        findings.one(key, (t for t in own if t.key == key), said("the-pattern"))
    _known(own, OF_THE_PATTERN, findings)
    loose = [s for s in whole.statements if isinstance(s, syntax.TextLine)]
    _known(loose, ELSEWHERE, findings)
    for_size = _ForSizes(*sizes, findings)
    printed = [(t.key, for_size.text(t)) for t in (*own, *loose) if for_size.made(t)]
    for name, body in _blocks(whole, found):
        lines = [s for s in body if isinstance(s, syntax.TextLine)]
        _known(lines, ELSEWHERE, findings)
        noted = [t for t in lines if for_size.made(t)]
        printed += [(t.key, f"{name}: {for_size.text(t)}") for t in noted if not isinstance(t.span, Used)]
        of_shapes = dict.fromkeys((t.key, f"{t.span.name}: {for_size.text(t)}") for t in noted if isinstance(t.span, Used))
        printed += [text for text in of_shapes if text not in printed]
    for block in (s for s in whole.statements if isinstance(s, syntax.MakingUp)):
        _known([s for s in block.body if isinstance(s, syntax.TextLine)], IN_MAKING_UP, findings)
    return tuple(printed)


@record
class _ForSizes:
    """Notes for some of the sizes: `all` that the source has, and those that are `chosen`."""

    all: tuple[str, ...]
    chosen: tuple[str, ...]
    findings: Findings

    def made(self, text: syntax.TextLine) -> bool:
        """Whether one of its sizes is made; reported for sizes that do not exist."""
        place = text.place_of("sizes") or text.span
        for size in text.sizes:
            if size not in self.all:
                self.findings.unknown("size", size, place, self.all, code="unknown-size")
        return not text.sizes or any(size in self.chosen for size in text.sizes)

    def text(self, text: syntax.TextLine) -> str:
        """The text, headed by its sizes where not all that are made are among them."""
        if not text.sizes or all(size in text.sizes for size in self.chosen):
            return text.text
        named = (size.replace("_", " ") for size in self.chosen if size in text.sizes)
        return f"{', '.join(named)}: {text.text}"


def _blocks(whole: syntax.Tree, found: Uses) -> Iterator[tuple[str, tuple[syntax.Statement, ...]]]:
    """What is about one thing: fabrics that are used, then pieces."""
    for kind, named in ((syntax.FabricBlock, "fabric"), (syntax.PieceBlock, "")):
        for block in (s for s in whole.statements if isinstance(s, kind)):
            if not named or found.has(named, block.name):
                yield block.name, block.body


AuthorsText = (
    syntax.TextLine
    | syntax.PatternBlock
    | syntax.NeededLine
    | syntax.PhotographLine
    | syntax.YarnLine
    | syntax.SizeRow
    | syntax.Require
)
"""What can be there in other languages."""


def _each_once(text: AuthorsText, findings: Findings) -> None:
    """A text is there once in each language."""
    first: dict[str, syntax.InLanguage] = {}
    for other in text.others:
        before = first.setdefault(other.language, other)
        if before is not other:
            findings.report(
                "language-twice", (other.span, "again"), (before.span, "first"), helps=("leave-one-out",), language=other.language
            )


def _known(written: list[syntax.TextLine], keys: tuple[str, ...], findings: Findings) -> None:
    for text in written:
        _each_once(text, findings)
        if text.key not in keys:
            findings.report(
                "impossible-statement/text",
                (text.span, "can-stand"),
                key=text.key,
                keys=keys,
            )
