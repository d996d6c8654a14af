"""Pages as HTML, in the language of a guide. The templates have no word of their own."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from urllib.parse import quote

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup, escape

from walewright import world
from walewright.guide.model import Guide
from walewright.serve.model import PageAnswer, PageResult, Posted, ServedGarment

WORDS = (
    "ball-grams",
    "ball-metres",
    "bed",
    "bed-and-yarn",
    "bed-needles",
    "bed-own",
    "bed-pitch",
    "body",
    "busy",
    "busy-help",
    "cancelled",
    "cancelled-help",
    "changed-since",
    "choices",
    "choose-garment",
    "choose-garment-help",
    "cm",
    "commas",
    "dial",
    "downloads",
    "drawn",
    "failed",
    "failed-help",
    "figures-file",
    "figures-help",
    "figures-lost",
    "figures-paste",
    "figures-title",
    "form-help",
    "get-bench",
    "get-html",
    "get-pdf",
    "get-plan",
    "get-text",
    "grams",
    "keep",
    "laying-out",
    "lost",
    "lost-page",
    "memory",
    "memory-help",
    "mistake",
    "more-measures",
    "no-garments",
    "other-garment",
    "page-set",
    "pattern-value",
    "proven",
    "proven-help",
    "recall",
    "refused",
    "refused-help",
    "result",
    "result-none",
    "rows",
    "saved",
    "size",
    "size-help",
    "skip",
    "source-broken",
    "stitches",
    "stop",
    "stopped",
    "stopped-help",
    "swatch",
    "swatch-help",
    "swatch-tall",
    "swatch-wide",
    "tension",
    "title",
    "unread",
    "unread-help",
    "warning",
    "work-out",
    "working",
    "yarn",
    "yarn-label",
    "yours",
    "yours-file",
    "yours-help",
    "yours-paste",
    "yours-show",
    "yours-unread",
)
"""By these names the templates ask for them."""

FORMATS = ("pdf", "bench", "html", "text", "plan")
MOST_STRAY = 8
"""Names for everything that the form has no place for."""
PRINTED = frozenset({"pdf", "bench"})
"""Those that are set page by page, which takes a while."""


@dataclass(frozen=True)
class Pages:
    """The pages of one language; `root` is the address that all others lie below."""

    guide: Guide
    root: str

    @cached_property
    def _words(self) -> dict[str, str]:
        return {word: self.guide.say(f"serve/{word}") for word in WORDS}

    @cached_property
    def _templates(self) -> Environment:
        made = Environment(
            loader=FileSystemLoader(str(world.package_path("serve/templates"))),
            autoescape=True,
            undefined=StrictUndefined,
            trim_blocks=True,
            lstrip_blocks=True,
        )
        made.filters["quoted"] = _quoted
        return made

    def gallery(
        self,
        garments: Sequence[ServedGarment],
        pasted: str = "",
        unfit: str | None = None,
        source: str = "",
        unread: bool = False,
    ) -> str:
        """Every garment by its picture. `pasted`: what was to be remembered, and `unfit` where in it that failed; `source`: a text
        that was given for a pattern, and `unread` that it is none."""
        return self._filled("gallery.html", garments=garments, pasted=pasted, unfit=unfit, given_source=source, unread=unread)

    def garment(self, garment: ServedGarment, answer: PageAnswer) -> str:
        """The form of a garment, and the result beside it."""
        result = answer.result
        drawings = [Markup(drawn.svg) for drawn in result.drawings] if result is not None else []
        pictures = {row.name: Markup(row.picture) for row in answer.offer.rows} if answer.offer is not None else {}
        place = f"{self.root}/yours" if garment.text else f"{self.root}/garment/{quote(garment.name, safe='')}"
        of = {"garment": garment, "place": place, "answer": answer, "drawings": drawings, "pictures": pictures}
        of["stray"] = self._stray(answer) if answer.offer is not None else ""
        return self._filled("garment.html", **of, formats=FORMATS, printed=PRINTED)

    def _stray(self, answer: PageAnswer) -> str:
        """What was filled in, or remembered, that the form has no place for."""
        names = tuple(dict.fromkeys(self._named(name.partition(":")[2] or name) for name in answer.stray))
        more = ("…",) if len(names) > MOST_STRAY else ()
        return self.guide.say("serve/stray", names=", ".join((*names[:MOST_STRAY], *more))) if names else ""

    def unfinished(self, garment: ServedGarment, posted: Posted, result: PageResult) -> str:
        """Where not even the form could be made: what was filled in is kept for another try."""
        return self.garment(garment, PageAnswer(None, {}, posted, result))

    def unread(self) -> str:
        """A request that cannot be understood, or nothing that is there."""
        return self._filled("unread.html")

    def _filled(self, template: str, **what: object) -> str:
        made = {"words": self._words, "root": self.root, "language": self.guide.code, "named": self._named, **what}
        return self._templates.get_template(template).render(made)

    def _named(self, name: str) -> str:
        """A garment's name as it is read: that of its file."""
        return name[:1].upper() + name[1:].replace("_", " ").replace("-", " ")


def _quoted(text: str) -> Markup:
    """A message with the names in it, which stand between grave accents, told apart by their type."""
    parts = text.split("`")
    if len(parts) % 2 == 0:
        return escape(text)
    inside = Markup("<b>{}</b>")
    return Markup("").join(inside.format(part.replace("_", " ")) if at % 2 else escape(part) for at, part in enumerate(parts))
