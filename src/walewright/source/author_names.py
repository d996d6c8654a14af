"""What the author calls names of a source in printed languages: `name brim, in german "Krempe"`."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from walewright.report.model import Diagnostic, diagnosed
from walewright.report.near import near
from walewright.source import syntax
from walewright.source.renamed import KINDS, WORD, NameKind, Words

LONGEST = 60
"""Letters of a name on a page, as in a source."""


def with_authors(words: Words, lines: Iterable[syntax.NameLine], language: str) -> Words:
    """The `words` of a language, with those of the author's before them: whatever is called so, is called so in this source. An
    edge that the author calls as the language calls one of the trade's own has another name, that of the words."""
    own = {line.name: other.text for line in lines for other in line.others if other.language == language}
    if not own:
        return words
    made = {kind: {**own, **{name: word for name, word in words.get(kind, {}).items() if name not in own}} for kind in KINDS}
    shipped = words.get("edge", {})
    return {**made, "edge": {**made["edge"], **{name: shipped.get(word, word) for name, word in own.items()}}}


def unfit(lines: Sequence[syntax.NameLine], names: Mapping[NameKind, Iterable[str]]) -> tuple[Diagnostic, ...]:
    """What is wrong with the lines of a source that has these `names`."""
    known = {kind: tuple(found) for kind, found in names.items()}
    every = tuple(dict.fromkeys(name for found in known.values() for name in found))
    told: list[Diagnostic] = []
    first: dict[tuple[str, str], syntax.InLanguage] = {}
    words: dict[tuple[NameKind, str, str], syntax.InLanguage] = {}
    for line in lines:
        if line.name not in every:
            meant = near(line.name, every)
            help_ = "did-you-mean" if meant else "define-or-delete"
            place = (line.span, "called")
            told.append(diagnosed("name-in-language/unknown", place, helps=(help_,), name=line.name, near=meant or ""))
            continue
        for other in line.others:
            before = first.setdefault((line.name, other.language), other)
            if before is not other:
                places = (other.span, "again"), (before.span, "first")
                told.append(diagnosed("name-in-language/twice", *places, helps=("leave-one-out",), name=line.name))
            elif not WORD.fullmatch(other.text) or len(other.text) > LONGEST:
                told.append(
                    diagnosed("name-in-language/no-word", (other.span, "word"), helps=("letters",), word=other.text, most=LONGEST)
                )
            else:
                told += _taken(line.name, other, known, words)
    return tuple(told)


def _taken(
    name: str,
    other: syntax.InLanguage,
    known: Mapping[NameKind, tuple[str, ...]],
    words: dict[tuple[NameKind, str, str], syntax.InLanguage],
) -> tuple[Diagnostic, ...]:
    """Two things of a kind cannot be called alike. `words` are those that were given before."""
    printed = other.text.replace(" ", "_")
    for kind in (kind for kind, found in known.items() if name in found):
        before = words.setdefault((kind, other.language, printed), other)
        if before is not other or (printed != name and printed in known[kind]):
            also = ((before.span, "first"),) if before is not other else ()
            return (diagnosed("name-in-language/taken", (other.span, "again"), *also, helps=("another",), word=other.text),)
    return ()
