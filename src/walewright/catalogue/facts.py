"""What a catalogue says about a garment: sizes, whom they fit, girths, bed, yarn, techniques, and how it was proven."""

from __future__ import annotations

from typing import TYPE_CHECKING

from walewright.catalogue.model import JsonObject
from walewright.figures.measures import name_of

if TYPE_CHECKING:
    from walewright.design.model import Design, PerSize
    from walewright.fit.model import Fit
    from walewright.pipeline import Outcome
    from walewright.proof.model import Proof
    from walewright.sheet.model import Sheet


def garment_facts(outcome: Outcome, sheet: Sheet) -> JsonObject:
    """The facts of a proven garment, with the `sheet` that is printed of it, as JSON has them. Lengths are centimetres."""
    design, _, _, proof = outcome.result()
    return {
        "title": design.title,
        "summary": sheet.summary,
        "designer": sheet.author,
        "code": sheet.language,
        "sizes": [name_of(size) for size in design.sizes],
        "for_children": design.for_children,
        "bed": {
            "name": design.machine.name,
            "label": design.machine.called,
            "needles": design.machine.needles,
            "pitch_mm": design.machine.pitch_mm,
        },
        "chosen": {name_of(choice.name): name_of(choice.alternative) for choice in design.choices},
        "fits": _fits(design, outcome.fit),
        "girths": _girths(design, outcome.fit),
        "yarn": _yarn(design, proof),
        "techniques": [{"key": one.anchor.removeprefix("how-"), "title": one.title} for one in sheet.handwork],
        "proof": [
            {"size": name_of(size.size), "operations": size.operations, "loops": size.loops, "read_back": size.read_back}
            for size in proof.sizes
        ],
    }


def _by_size(design: Design, values: PerSize) -> JsonObject:
    return {name_of(size): round(value, 1) for size, value in zip(design.sizes, values, strict=True)}


def _fits(design: Design, fit: Fit | None) -> list[JsonObject]:
    """The measures of the body that sizes are for: those that the source says, and those that a garment was held against."""
    found = {name_of(m.name): m.values for m in design.measurements if m.to_fit}
    for ease in fit.eases if fit is not None else ():
        found.setdefault(name_of(ease.fits), ease.body)
    return [{"measure": name, "cm": _by_size(design, values)} for name, values in found.items()]


def _girths(design: Design, fit: Fit | None) -> list[JsonObject]:
    if fit is None:
        return []
    return [
        {
            "piece": name_of(girth.piece),
            "at": name_of(girth.at),
            "closing": girth.closing,
            "body": girth.body,
            "cm": _by_size(design, girth.values),
        }
        for girth in fit.girths
    ]


def _yarn(design: Design, proof: Proof) -> list[JsonObject]:
    """Grams and whole balls of what the garment takes, with swatches and a reserve."""
    tex = {yarn.name: yarn.tex for yarn in design.yarns}
    found = []
    for at, use in enumerate(proof.sizes[0].yarn):
        if use.kind != "yarn":
            continue
        uses = [(name_of(size.size), size.yarn[at]) for size in proof.sizes]
        found.append(
            {
                "label": use.label,
                "tex": round(tex[use.yarn], 1) if use.yarn in tex else None,
                "grams": {size: round(one.grams) for size, one in uses},
                "balls": {size: one.balls for size, one in uses},
            }
        )
    return found
