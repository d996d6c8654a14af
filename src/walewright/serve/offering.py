"""What can be given for a garment, from its design: the form."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from typing import TYPE_CHECKING

from walewright.cli.options import Wanted
from walewright.cli.sources import shipped
from walewright.design.model import Edition
from walewright.figures.bodies import taken
from walewright.figures.measures import name_of
from walewright.guide.model import Guide
from walewright.guide.numbers import cm, sentence
from walewright.serve.model import (
    Alternative,
    Offer,
    OfferedChoice,
    OfferedFabric,
    OfferedRow,
    OfferedYarn,
    Posted,
    ServedGarment,
)
from walewright.serve.sourced import understood
from walewright.sheet.regrading import fabric_words, source_of
from walewright.sheet.render import picture

if TYPE_CHECKING:
    from walewright.design.model import Design
    from walewright.report.model import Diagnostic


def offered(garment: ServedGarment, chosen: Posted, size: str, language: str) -> tuple[Offer | None, tuple[Diagnostic, ...]]:
    """The form of the garment under the alternatives `chosen`, with the figures of `size`; where these are not of the source, of
    the source's own. Without a form: why the source cannot be understood."""
    told: tuple[Diagnostic, ...] = ()
    for taken_now in (chosen, {}):
        wanted = Wanted({"chosen": dict(taken_now)} if taken_now else {}, (), language=language)
        outcome = understood(garment, wanted)
        if outcome.design is not None:
            return _offer(wanted.guide, outcome.design, size), ()
        told = outcome.diagnostics
    return None, told


def _offer(guide: Guide, design: Design, size: str) -> Offer:
    source = source_of(design)
    at = source.sizes.index(size) if size in source.sizes else len(source.sizes) // 2
    return Offer(
        title=design.title,
        summary=" ".join(text for key, text in design.texts if key == "summary"),
        sizes=tuple(Alternative(name, name_of(name)) for name in source.sizes),
        size=source.sizes[at],
        choices=tuple(
            OfferedChoice(c.name, sentence(c.name), tuple(Alternative(a, name_of(a)) for a in c.alternatives))
            for c in design.choices
        ),
        rows=tuple(_rows(guide, source, at)),
        fabrics=tuple(
            OfferedFabric(f.name, sentence(f.name), fabric_words(guide, f), f.tension_words, f.tension) for f in source.fabrics
        ),
        yarns=tuple(
            OfferedYarn(y.name, sentence(y.name), y.label or y.words, f"{y.ball_grams:g}", f"{round(y.ball_metres, 2):g}")
            for y in source.yarns
            if not y.strands
        ),
        bed=guide.say(
            "regrade/bed", bed=source.machine.called, needles=source.machine.needles, pitch=f"{source.machine.pitch_mm:g}"
        ),
        beds=tuple(_beds()),
    )


def _rows(guide: Guide, source: Edition, at: int) -> Iterator[OfferedRow]:
    for row in sorted(source.measurements, key=lambda m: not m.to_fit):
        label = sentence(row.printed or row.name)
        drawn = taken(guide, row.body, label)
        of_body = row.to_fit or drawn is not None
        yield OfferedRow(
            row.name,
            label,
            row.about,
            guide.decimal(cm(row.values[at])),
            of_body,
            False,
            row.values,
            picture(drawn) if drawn else "",
        )
    for count in source.counts:
        yield OfferedRow(count.name, sentence(count.name), count.about, count.words(count.values[at]), False, True)


def _beds() -> Iterator[Alternative]:
    """The shipped beds, by what their files say of them."""
    for name, text in sorted(shipped().machines.items()):
        yield Alternative(name, str(tomllib.loads(text).get("label", name)))
