"""Messages for who gives measurements: of the body, the bed and the yarn, and not of the lines of a source."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

from walewright.figures.measures import name_of
from walewright.guide.numbers import sentence
from walewright.record import replace
from walewright.report.model import Diagnostic, Severity
from walewright.report.places import source
from walewright.report.said import Fact, Said
from walewright.report.wording import MESSAGE, phrased, worded
from walewright.serve.model import Offer, PageResult, ServedGarment, ToldMistake

if TYPE_CHECKING:
    from walewright.guide.model import Guide
    from walewright.report.wording import Language
    from walewright.source.renamed import Renaming

MOST_TOLD = 12
"""Messages that are shown."""

WHY = {
    f"{MESSAGE}wider-than-bed/piece": "too-wide",
    f"{MESSAGE}levels-fall": "no-height",
    f"{MESSAGE}no-width-left/piece": "no-width",
}
"""What a pattern says of itself most often when something given does not go."""


def called(words: Language, by: Renaming | None) -> Language:
    """The words with the names that are printed, for who sees no source."""
    if by is None:
        return words
    return replace(words, names={written: name_of(printed) for printed, written in by.before().items()})


def refused(told: Iterable[Diagnostic], words: Language, guide: Guide, offer: Offer) -> PageResult:
    """Of figures that do not read."""
    return PageResult("refused", tuple(told_of(d, words, guide, offer) for d in told))


def unreadable(told: Iterable[Diagnostic], words: Language, guide: Guide, garment: ServedGarment) -> PageResult:
    """Of a source that somebody gave, with the lines that are at fault."""
    errors = [d for d in told if d.severity is Severity.ERROR][:MOST_TOLD]
    if not errors:
        return PageResult("refused", (ToldMistake(True, guide.say("serve/only-defines")),))
    return PageResult("refused", tuple(_in_source(d, words, guide, garment) for d in errors))


def _in_source(diagnostic: Diagnostic, words: Language, guide: Guide, garment: ServedGarment) -> ToldMistake:
    found = worded(diagnostic, words)
    at = next((label.span.start for label in diagnostic.labels if label.span.file == garment.file), None)
    where = (guide.say("serve/in-line", line=source(garment.text).place(at).line),) if at is not None else ()
    return ToldMistake(True, found.message, (*where, *found.notes), found.helps)


def told_of(diagnostic: Diagnostic, words: Language, guide: Guide, offer: Offer) -> ToldMistake:
    """A message without the option and the lines of source that it comes of. Only what is said of something given proposes a
    change, for the source is not the knitter's."""
    error = diagnostic.severity is Severity.ERROR
    found = worded(replace(diagnostic, given=None, labels=()), words)
    if diagnostic.given is None:
        return ToldMistake(error, found.message, found.notes)
    helps = tuple(_help(one, diagnostic, words, offer, text) for one, text in zip(diagnostic.helps, found.helps, strict=False))
    if diagnostic.code != "given-too-far" or not diagnostic.notes:
        return ToldMistake(error, found.message, found.notes, helps if error else ())
    first, *others = (_why(note, words, guide) for note in diagnostic.notes)
    message = guide.say("serve/cannot-be", given=_given(diagnostic, guide, offer), why=first)
    return ToldMistake(error, message, tuple(guide.say("serve/also-not", why=why) for why in others), helps)


def _given(diagnostic: Diagnostic, guide: Guide, offer: Offer) -> str:
    """What was given, as a beginning of a sentence."""
    kind, _ = diagnostic.given or ("bed", "")
    name = _name(diagnostic)
    if kind == "measure":
        return guide.say("serve/given-measure", label=guide.within(_label(name, offer)), text=str(dict(diagnostic.facts)["text"]))
    if kind in ("swatch", "tension"):
        return guide.say("serve/given-swatch", label=name_of(name))
    return guide.say("serve/given-yarn" if kind == "yarn" else "serve/given-bed")


def _name(diagnostic: Diagnostic) -> str:
    what = dict(diagnostic.facts)["what"]
    return str(dict(what.facts).get("name", "")) if isinstance(what, Said) else ""


def _label(name: str, offer: Offer) -> str:
    """What the form calls it."""
    known = {one.name: one.label for these in (offer.yarns, offer.fabrics, offer.rows) for one in these}
    return known.get(name, sentence(name))


def _why(note: Said, words: Language, guide: Guide) -> str:
    """The pattern's own message: of body and bed, where there are words for that."""
    message = dict(note.facts)["message"]
    assert isinstance(message, Said)
    facts = _readable(dict(message.facts), words)
    match WHY.get(message.key):
        case "too-wide":
            return guide.say("serve/too-wide", piece=facts["piece"], takes=facts["takes"], needles=facts["needles"])
        case "no-height":
            return guide.say("serve/no-height", piece=facts["piece"], lower=facts["lower"], upper=facts["upper"])
        case "no-width":
            return guide.say("serve/no-width", piece=facts["piece"], level=facts["level"])
    return guide.say("serve/unmade", message=phrased(message, words))


def _readable(facts: Mapping[str, Fact], words: Language) -> dict[str, Fact]:
    """Names of a source as they are read."""
    return {key: words.names.get(fact, name_of(fact)) if isinstance(fact, str) else fact for key, fact in facts.items()}


def _help(help_: Said, diagnostic: Diagnostic, words: Language, offer: Offer, text: str) -> str:
    """The help as it is; where it says how far something may go, by the form's name for it and without the option."""
    if help_.key != "may-be":
        return text
    what = dict(diagnostic.facts)["what"]
    if isinstance(what, Said) and _name(diagnostic):
        what = Said(what.key, (("name", _label(_name(diagnostic), offer)),))
    return phrased(Said("may-be-here", (("what", what), *help_.facts)), words)
