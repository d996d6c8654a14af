"""Pages as HTML, in the language of a guide. The templates have no word of their own."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup

from walewright import world
from walewright.guide.model import Guide
from walewright.serve.model import PageAnswer, PageResult, Posted, ServedGarment

WORDS = (
    "as-in-pattern",
    "ball-grams",
    "ball-metres",
    "bed",
    "bed-needles",
    "bed-own",
    "bed-pitch",
    "body",
    "busy",
    "busy-help",
    "changed-since",
    "choices",
    "choose-garment",
    "choose-garment-help",
    "commas",
    "cm",
    "dial",
    "downloads",
    "downloads-help",
    "failed",
    "failed-help",
    "figures-file",
    "figures-help",
    "figures-lost",
    "figures-paste",
    "for-garment",
    "form-help",
    "get-bench",
    "get-html",
    "get-pdf",
    "get-plan",
    "get-text",
    "grams",
    "keep",
    "lost",
    "memory",
    "memory-help",
    "mistake",
    "no-garments",
    "other-garment",
    "proven",
    "proven-help",
    "recall",
    "refused",
    "refused-help",
    "result",
    "result-none",
    "rows",
    "size",
    "size-help",
    "skip",
    "source-broken",
    "stitches",
    "stopped",
    "stopped-help",
    "swatch",
    "swatch-help",
    "swatch-measured",
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
)
"""By these names the templates ask for them."""

FORMATS = ("pdf", "bench", "html", "text", "plan")


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
        return Environment(
            loader=FileSystemLoader(str(world.package_path("serve/templates"))),
            autoescape=True,
            undefined=StrictUndefined,
            trim_blocks=True,
            lstrip_blocks=True,
        )

    def gallery(self, garments: Sequence[ServedGarment], pasted: str = "", unfit: str | None = None) -> str:
        """Every garment by its picture. `pasted`: what was to be remembered, and `unfit` where in it that failed."""
        return self._filled("gallery.html", garments=garments, pasted=pasted, unfit=unfit)

    def garment(self, garment: ServedGarment, answer: PageAnswer) -> str:
        """The form of a garment, and the result beside it."""
        result = answer.result
        drawings = [Markup(drawn.svg) for drawn in result.drawings] if result is not None else []
        return self._filled("garment.html", garment=garment, answer=answer, drawings=drawings, formats=FORMATS)

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
