"""What is worked in another process: a form, a result, a file to take away, a cover. Each takes and gives plain values."""

from __future__ import annotations

import pickle
from typing import TYPE_CHECKING, Any

from walewright import __version__
from walewright.cli import remembered
from walewright.cli.formats import format_named
from walewright.cli.formats.format import Pattern
from walewright.cli.options import Wanted
from walewright.languages import telling
from walewright.record import replace
from walewright.serve.given import chosen, fields, parted
from walewright.serve.kept import KeptAnswer
from walewright.serve.model import Offer, PageAnswer, PageResult, Posted, ServedGarment, TakenFile
from walewright.serve.progress import told_to
from walewright.serve.sourced import compiled, counted, slim, understood, with_fabric

if TYPE_CHECKING:
    from walewright.pipeline import Outcome


def form(garment: ServedGarment, posted: Posted, language: str, offer: Offer | None) -> PageAnswer:
    """The form with what was filled in, and no result. `offer`: as it was made before, if it was."""
    from walewright.serve.offering import offered
    from walewright.serve.resulting import hints
    from walewright.serve.telling import unreadable

    guide = _wanted({}, language).guide
    if offer is None:
        offer, told = offered(garment, chosen(posted), posted.get("size", ""), language)
        if offer is None:
            why = unreadable(told, telling(language), guide, garment) if garment.text else PageResult("refused")
            return PageAnswer(None, {}, posted, why)
    values, stray = parted(offer, posted)
    return PageAnswer(offer, values, stray, None, hints(guide, offer, values, None))


def worked(garment: ServedGarment, posted: Posted, language: str, offer: Offer | None) -> KeptAnswer:
    """The form with what was filled in, and what came of it."""
    answer = form(garment, posted, language, offer)
    if answer.offer is None:
        return KeptAnswer(answer)
    found, outcome = _result(garment, answer, answer.offer, language)
    # Packed by the process that made it: the serving one never looks inside, and it never lies in a file.
    return KeptAnswer(found, pickle.dumps(slim(outcome), pickle.HIGHEST_PROTOCOL) if outcome is not None else b"")


def printed(garment: ServedGarment, kept: KeptAnswer, language: str, today: str, form: str, ticket: str) -> TakenFile | PageAnswer:
    """The pattern of an answer in one of the formats."""
    wanted = _wanted({}, language)
    outcome: Outcome = replace(pickle.loads(kept.packed), language=wanted.printed)
    outcome = with_fabric(outcome) if form == "bench" else outcome
    pattern = Pattern(outcome, wanted.guide, "a4", "cm", __version__, today)
    kind = format_named(form)
    faults = kind.refused(pattern)
    if faults:
        from walewright.serve.telling import refused

        answer = kept.answer
        assert answer.offer is not None
        told = refused(faults, telling(language), pattern.guide, answer.offer)
        return PageAnswer(answer.offer, answer.values, answer.stray, told, answer.hints)
    with told_to(ticket):
        data = kind.make(pattern).data
    return TakenFile(f"{garment.name}{kind.suffix}", data)


def kept(garment: ServedGarment, posted: Posted, language: str, offer: Offer | None) -> TakenFile | PageAnswer:
    """A file that remembers what was filled in."""
    answer = form(garment, posted, language, offer)
    if answer.offer is None:
        return answer
    text = remembered.written(garment.name, fields(answer.offer, answer.values))
    if not isinstance(remembered.read(text), remembered.Remembered):
        # What no file remembers is no figure either, and why is told.
        return _result(garment, answer, answer.offer, language)[0]
    return TakenFile(f"{garment.name}{remembered.SUFFIX}", text.encode())


def cover(garment: ServedGarment, language: str) -> str:
    """The garment drawn, as SVG; empty where it cannot be counted."""
    wanted = Wanted({}, (), language=language)
    meant = understood(garment, wanted)
    design = meant.design
    if design is None:
        return ""
    middle = design.sizes[len(design.sizes) // 2]
    # It is counted by the names of the source.
    middle = meant.renamed.back("size").get(middle, middle) if meant.renamed is not None else middle
    outcome = counted(garment, Wanted({"sizes": (middle,)}, (), language=language))
    if outcome.design is None or outcome.counts is None:
        return ""
    from walewright.figures.garment import cover as drawn
    from walewright.figures.measures import measured
    from walewright.sheet.render import picture

    pieces = tuple(measured(outcome.design, outcome.counts, piece.name) for piece in outcome.design.pieces)
    return picture(drawn(wanted.guide, outcome.design, outcome.counts, pieces, outcome.glued))


def face(kind: str) -> str:
    """Where a typeface of our paper lies; empty where it is not installed."""
    from walewright.sheet.fonts import face_path

    return face_path(kind)


def _result(garment: ServedGarment, answer: PageAnswer, offer: Offer, language: str) -> tuple[PageAnswer, Outcome | None]:
    """The answer with its result, and the outcome, if it is proven."""
    from walewright.design import malformed
    from walewright.serve.resulting import hints, result
    from walewright.serve.telling import refused

    wanted = _wanted(fields(offer, answer.values), language)
    unread = malformed(wanted.changes)
    if unread:
        found = refused(unread, telling(language), wanted.guide, offer)
        return PageAnswer(offer, answer.values, answer.stray, found, answer.hints), None
    outcome = compiled(garment, wanted)
    found = result(outcome, wanted.guide, telling(language), offer)
    told = hints(wanted.guide, offer, answer.values, found)
    return PageAnswer(offer, answer.values, answer.stray, found, told), outcome if outcome.proven else None


def _wanted(given: dict[str, Any], language: str) -> Wanted:
    return Wanted(given, (), language=language)
