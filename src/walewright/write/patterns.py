"""What is listed of stripes: their yarns and rows, and what becomes of a yarn at the end of its stripe."""

from __future__ import annotations

from walewright.write.filling import Part, filled
from walewright.write.language import PrintedLanguage
from walewright.write.said import StepSaid, between


def stripes(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """The stripes from the first knitted on."""
    told = (filled("stripe", language, rows=rows, yarn=yarn) for yarn, rows in said.any.stripes)
    return list(between(language.sentences["between"], told))


def carrying(said: StepSaid, language: PrintedLanguage) -> list[Part]:
    """What becomes of the yarns in use at the end of their stripe."""
    carried = said.any.carried
    if not carried:
        return list(filled("carrying", language))
    listed = tuple(between(language.sentences["between"], ([yarn] for yarn in carried), language.sentences["and"]))
    others = {yarn for yarn, _ in said.any.stripes} - set(carried)
    return list(filled("carrying/some" if others else "carrying/all", language, yarns=listed))
