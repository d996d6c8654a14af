"""What is worked in another process: a form, a result, a file to take away, a cover. Each takes and gives plain values."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from walewright import __version__
from walewright.cli import remembered, sources
from walewright.cli.formats import format_named
from walewright.cli.formats.format import Pattern
from walewright.cli.options import Wanted
from walewright.languages import telling
from walewright.serve.given import chosen, fields, filled, parted
from walewright.serve.model import Offer, PageAnswer, PageResult, Posted, ServedGarment, TakenFile

if TYPE_CHECKING:
    from walewright.design.model import Design


def form(garment: ServedGarment, posted: Posted, language: str) -> PageAnswer:
    """The form with what was filled in, and no result."""
    return _understood(garment, posted, language)[0]


def worked(garment: ServedGarment, posted: Posted, language: str, today: str) -> PageAnswer:
    """The form with what was filled in, and what came of it."""
    answer, design = _understood(garment, posted, language)
    if answer.offer is None or design is None:
        return PageAnswer(None, {}, posted, PageResult("refused"))
    return _result(garment, answer, answer.offer, design, language, today)[0]


def made(garment: ServedGarment, posted: Posted, language: str, today: str, form: str) -> TakenFile | PageAnswer:
    """The pattern in one of the formats; where it is not proven, as `worked`."""
    answer, design = _understood(garment, posted, language)
    if answer.offer is None or design is None:
        return PageAnswer(None, {}, posted, PageResult("refused"))
    answer, pattern = _result(garment, answer, answer.offer, design, language, today)
    if pattern is None:
        return answer
    kind = format_named(form)
    faults = kind.refused(pattern)
    if faults:
        from walewright.serve.resulting import refused

        told = refused(faults, telling(language))
        return PageAnswer(answer.offer, answer.values, answer.stray, told)
    data = kind.make(pattern).data
    return TakenFile(f"{garment.name}{kind.suffix}", data)


def kept(garment: ServedGarment, posted: Posted, language: str) -> TakenFile | PageAnswer:
    """A file that remembers what was filled in."""
    answer, _ = _understood(garment, posted, language)
    if answer.offer is None:
        return PageAnswer(None, {}, posted, PageResult("refused"))
    text = remembered.written(garment.name, fields(answer.offer, answer.values))
    return TakenFile(f"{garment.name}{remembered.SUFFIX}", text.encode())


def recalled(garment: ServedGarment, given: dict[str, Any], language: str, today: str) -> PageAnswer:
    """As `worked`, of what a file remembers."""
    return worked(garment, filled(given), language, today)


def cover(garment: ServedGarment, language: str) -> str:
    """The garment drawn, as SVG; empty where it cannot be counted."""
    wanted = Wanted({}, (), language=language)
    design = sources.understand_file(garment.file, wanted).design
    if design is None:
        return ""
    middle = design.sizes[len(design.sizes) // 2]
    outcome = sources.count_file(garment.file, Wanted({"sizes": (middle,)}, (), language=language))
    if outcome.design is None or outcome.counts is None:
        return ""
    from walewright.figures.garment import cover as drawn
    from walewright.figures.measures import measured
    from walewright.sheet.render import picture

    pieces = tuple(measured(outcome.design, outcome.counts, piece.name) for piece in outcome.design.pieces)
    return picture(drawn(wanted.guide, outcome.design, outcome.counts, pieces, outcome.glued))


def _understood(garment: ServedGarment, posted: Posted, language: str) -> tuple[PageAnswer, Design | None]:
    from walewright.serve.offering import offered

    offer, design = offered(garment.file, chosen(posted), posted.get("size", ""), language)
    if offer is None:
        return PageAnswer(None, {}, posted), None
    values, stray = parted(offer, posted)
    return PageAnswer(offer, values, stray), design


def _result(
    garment: ServedGarment, answer: PageAnswer, offer: Offer, design: Design, language: str, today: str
) -> tuple[PageAnswer, Pattern | None]:
    """The answer with its result, and the pattern, if it is proven."""
    from walewright.design import malformed
    from walewright.serve.resulting import refused, result

    given = fields(offer, answer.values)
    wanted = _wanted(given, language)
    unread = malformed(wanted.changes)
    if unread:
        return PageAnswer(offer, answer.values, answer.stray, refused(unread, telling(language))), None
    outcome = sources.compile_file(garment.file, wanted)
    pattern = Pattern(outcome, wanted.guide, "a4", "cm", __version__, today)
    found = result(pattern, telling(language), design, given)
    return PageAnswer(offer, answer.values, answer.stray, found), pattern if outcome.proven else None


def _wanted(given: dict[str, Any], language: str) -> Wanted:
    return Wanted(given, (), language=language)
