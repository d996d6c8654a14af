"""What can be given for a garment, from its design: the form."""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from walewright.cli.options import Wanted
from walewright.cli.sources import shipped
from walewright.design.model import Edition
from walewright.figures.bodies import taken
from walewright.figures.measures import name_of
from walewright.guide.model import Guide
from walewright.guide.numbers import cm, sentence
from walewright.record import replace
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
    from walewright.design.model import Design, Fabric, Yarn
    from walewright.report.model import Diagnostic
    from walewright.source.renamed import NameKind, Renaming


def offered(garment: ServedGarment, chosen: Posted, size: str, language: str) -> tuple[Offer | None, tuple[Diagnostic, ...]]:
    """The form of the garment under the alternatives `chosen`, with the figures of `size`; where these are not of the source, of
    the source's own. Without a form: why the source cannot be understood."""
    told: tuple[Diagnostic, ...] = ()
    for taken_now in (chosen, {}):
        wanted = Wanted({"chosen": dict(taken_now)} if taken_now else {}, (), language=language)
        outcome = understood(garment, wanted)
        if outcome.design is not None:
            return _offer(wanted.guide, outcome.design, size, outcome.renamed), ()
        told = outcome.diagnostics
    return None, told


def _offer(guide: Guide, design: Design, size: str, by: Renaming | None) -> Offer:
    """Labels are in the language that is printed, names are those of the source: by these the page's fields are called, and what is
    kept of them, so that both are the same in every language."""
    source, named = source_of(design), _in_source(by)
    sizes = tuple(named("size", name) for name in source.sizes)
    at = sizes.index(size) if size in sizes else len(sizes) // 2
    return Offer(
        title=design.title,
        summary=" ".join(text for key, text in design.texts if key == "summary"),
        sizes=tuple(Alternative(name, name_of(printed)) for name, printed in zip(sizes, source.sizes, strict=True)),
        size=sizes[at],
        choices=tuple(
            OfferedChoice(
                named("choice", c.name),
                sentence(c.name),
                tuple(Alternative(named("choice", a), name_of(a)) for a in c.alternatives),
            )
            for c in design.choices
        ),
        rows=tuple(replace(row, name=named("value", row.name)) for row in _rows(guide, source, at)),
        fabrics=tuple(_fabric(guide, f, named("fabric", f.name)) for f in source.fabrics),
        yarns=tuple(_yarn(y, named("yarn", y.name)) for y in source.yarns if not y.strands),
        bed=guide.say(
            "regrade/bed", bed=source.machine.called, needles=source.machine.needles, pitch=f"{source.machine.pitch_mm:g}"
        ),
        beds=tuple(_beds()),
    )


def _in_source(by: Renaming | None) -> Callable[[NameKind, str], str]:
    """What the source calls what is printed otherwise."""

    def named(kind: NameKind, printed: str) -> str:
        return by.back(kind).get(printed, printed) if by is not None else printed

    return named


def _fabric(guide: Guide, fabric: Fabric, name: str) -> OfferedFabric:
    return OfferedFabric(name, sentence(fabric.name), fabric_words(guide, fabric), fabric.tension_words, fabric.tension)


def _yarn(yarn: Yarn, name: str) -> OfferedYarn:
    ball = f"{yarn.ball_grams:g}", f"{round(yarn.ball_metres, 2):g}"
    return OfferedYarn(name, sentence(yarn.name), yarn.label or yarn.words, *ball)


def _rows(guide: Guide, source: Edition, at: int) -> Iterator[OfferedRow]:
    for row in sorted(source.measurements, key=lambda m: not m.to_fit):
        label = sentence(row.printed or row.name)
        drawn = taken(guide, row.body, label)
        of_body = row.to_fit or drawn is not None
        yield OfferedRow(
            name=row.name,
            label=label,
            about=row.about,
            value=guide.decimal(cm(row.values[at])),
            of_body=of_body,
            counts=False,
            values=row.values,
            picture=picture(drawn) if drawn else "",
        )
    for count in source.counts:
        yield OfferedRow(count.name, sentence(count.name), count.about, count.words(count.values[at]), False, True)


def _beds() -> Iterator[Alternative]:
    """The shipped beds, by what their files say of them."""
    for name, text in sorted(shipped().machines.items()):
        yield Alternative(name, str(tomllib.loads(text).get("label", name)))
