"""The text copy: what has to be known before knitting, then the printed steps as plain text."""

from __future__ import annotations

import textwrap
from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from walewright import __version__

if TYPE_CHECKING:
    from walewright.design.model import Design, Fabric
    from walewright.pipeline import Outcome
    from walewright.proof.model import Proof
    from walewright.sheet.model import ListTable
    from walewright.write.model import Instructions

CM_PER_INCH = 2.54
"""Exact by the international agreement on the yard, 1959."""


def text_copy(outcome: Outcome, units: str) -> str:
    """The whole pattern as plain text; lengths in `units` cm | in | both. Only for a proven outcome."""
    from walewright.sheet.lengths import bobbins, floats

    design, _, instructions, proof = outcome.result()
    long = floats(design, proof)
    parts = (
        _title(design),
        _regraded(design, units),
        _section("Sizes", (_graded(design.sizes), *_measurements(design, units))),
        _section("Finished", (*_finished(proof, units), *_ease(outcome, units))),
        _section("Tension", (_tension(design, fabric, units) for fabric in design.fabrics)),
        _section("Materials", _materials(design, instructions, proof)),
        *(_table(table) for table in (*bobbins(design, proof), *((long,) if long else ()))),
        _notes(design),
        _section("Abbreviations", (f"{short}: {meaning}" for short, meaning in instructions.abbreviations)),
        _steps(outcome.plain_text, len(design.sizes)),
        _cautions(design),
        _to_regrade(design, units),
        f"Proven: every size was knitted on the simulated bed by walewright {__version__}, and read back from these words.",
    )
    return "\n\n".join(part for part in parts if part) + "\n"


def _title(design: Design) -> str:
    texts = [text for key, text in design.texts if key != "note"]
    return "\n".join((design.title, "=" * len(design.title), *(textwrap.fill(text, 96) for text in texts)))


def _notes(design: Design) -> str:
    """The author's remarks, each with a hanging indent; empty where there is none."""
    notes = [textwrap.fill(text, 94, subsequent_indent="    ") for key, text in design.texts if key == "note"]
    return _section("Notes", notes) if notes else ""


def _regraded(design: Design, units: str) -> str:
    """What this copy was regraded from; empty for the source's own edition."""
    from walewright.sheet.regrading import regraded

    table = regraded(design, units)
    return (
        ""
        if table is None
        else _section("Regraded", (f"{what}: {own} (in the source {of}) ".strip() for what, own, of in table.rows))
    )


def _to_regrade(design: Design, units: str) -> str:
    """What can be given, with the source's own figures."""
    from walewright.sheet.regrading import source_of, to_regrade

    found = to_regrade(design, units)
    rows = [
        f"{m.name.replace('_', ' ')}: {_lengths(m.values, units)}{f', {m.about}' if m.about else ''} (--measure)"
        for m in source_of(design).measurements
    ]
    rows += [f"{what[:1].lower()}{what[1:]}: {value} ({option})" for what, option, value in found.others.rows]
    lines = (*found.lines, *rows)
    return _section("To regrade", (textwrap.fill(line, 94, subsequent_indent="    ") for line in lines))


def _section(title: str, lines: Iterable[str]) -> str:
    return "\n".join((title, "-" * len(title), *lines))


def _steps(printed: str, sizes: int) -> str:
    """The printed steps. Their first line, by which they are read back, says which sizes the figures are for: in a copy for one
    size it says nothing that the head of the copy has not said."""
    head, _, steps = printed.strip().partition("\n")
    return steps.strip() if sizes == 1 else f"{head}\n{steps}"


def _words(name: str) -> str:
    return name.replace("_", " ")


def _table(table: ListTable) -> str:
    """A table line by line, each with its heads: there is no room for columns beside graded figures."""
    head, *heads = table.heads
    lines = []
    for first, *cells in table.rows:
        told = "; ".join(f"{name[:1].lower()}{name[1:]}: {cell}" for name, cell in zip(heads, cells, strict=True))
        line = f"{head.lower()} {first}: {told}"
        lines.append(textwrap.fill(line, 92, subsequent_indent="    ", break_long_words=False, break_on_hyphens=False))
    title = textwrap.wrap(table.caption, 92)
    return _section(table.caption, lines) if len(title) == 1 else "\n".join((*title, "-" * len(title[-1]), *lines))


def _measurements(design: Design, units: str) -> list[str]:
    return [
        f"{_words(m.name)}{' (to fit)' if m.to_fit else ''}: {_lengths(m.values, units)}" + (f" ({m.source})" if m.source else "")
        for m in design.measurements
    ]


def _finished(proof: Proof, units: str) -> list[str]:
    """Every width and height of each piece as knitted, without its edgings."""
    from walewright.guide.english.measure_words import measure_words

    lines: list[str] = []
    for at, piece in enumerate(proof.sizes[0].pieces):
        for number, measure in enumerate(piece.measures):
            values = [size.pieces[at].measures[number].knitted_cm for size in proof.sizes]
            lines.append(f"{piece.name}, {measure_words(measure.key)}: {_lengths(values, units)}".replace("_", " "))
    return lines


def _ease(outcome: Outcome, units: str) -> list[str]:
    """Ease where a body measurement is known, and what the finished measurements are."""
    from walewright.sheet import fitting
    from walewright.sheet.finished import seam_note

    design, _, _, _ = outcome.result()
    said, lines = [seam_note(design, units)], []
    if outcome.fit is not None:
        lines = [f"{label.lower()}: {_lengths(values, units)}" for label, values in fitting.finished(outcome.fit)]
        lines += [f"ease, {label.lower()}: {_lengths(values, units)}" for label, values in fitting.eases(outcome.fit)]
        said += fitting.notes(outcome.fit, units)
    return [*lines, *(textwrap.fill(line, 96) for line in said)]


def _cautions(design: Design) -> str:
    from walewright.guide.english.advice import cautions

    said = cautions(design)
    if said is None:
        return ""
    lines = (textwrap.fill(line, 94, initial_indent="- ", subsequent_indent="  ") for line in said.lines)
    return _section(said.title, lines)


def _tension(design: Design, fabric: Fabric, units: str) -> str:
    from walewright.guide.english.fabric_words import basis_words, dial_words
    from walewright.sheet.supplies import stitch_words

    stitches, rows = fabric.stitches_per_cm, fabric.rows_per_cm
    in_cm = f"{stitches * 10:.1f} stitches and {rows * 10:.1f} rows to 10 cm"
    in_inches = f"{stitches * CM_PER_INCH:.2f} stitches and {rows * CM_PER_INCH:.2f} rows to 1 in"
    basis = basis_words(fabric, bool(design.given)).removesuffix(".")
    told = f"{_words(fabric.yarn)} at {dial_words(fabric)}" + (f" ({basis[:1].lower()}{basis[1:]})" if basis else "")
    density = {"cm": in_cm, "in": in_inches, "both": f"{in_cm} ({in_inches})"}[units]
    return f"{_words(fabric.name)}: {density} in {stitch_words(fabric)}, {told}"


def _materials(design: Design, instructions: Instructions, proof: Proof) -> list[str]:
    from walewright.guide.numbers import whole_grams
    from walewright.sheet.hand_tools import tools

    machine = design.machine
    lines = [f"machine: {machine.called}, {machine.needles} needles {machine.pitch_mm:g} mm apart"]
    for at, yarn in enumerate(design.yarns):
        uses = [size.yarn[at] for size in proof.sizes]
        balls = _graded([str(use.balls) for use in uses])
        ball = "ball" if all(use.balls == 1 for use in uses) else "balls"
        parts = zip(*(whole_grams(use.garment_grams, use.swatch_grams, use.reserve_grams) for use in uses), strict=True)
        garment, swatches, reserve, grams = (_graded([str(part) for part in of]) for of in parts)
        lines.append(
            f"{yarn.label or _words(yarn.name)}: buy {balls} {ball} of {yarn.ball_grams:g} g = {yarn.ball_metres:g} m; "
            f"about {grams} g: garment {garment} g, swatches {swatches} g, reserve {reserve} g"
        )
        lines.extend(f"    reckoned {way}" for way in sorted({use.way for use in uses}))
    others = tools(design, instructions)
    return [*lines, *(textwrap.fill(tool[:1].lower() + tool[1:], 92, subsequent_indent="    ") for tool in others)]


def _lengths(values_cm: Sequence[float], units: str) -> str:
    in_cm = f"{_graded([f'{v:.1f}'.removesuffix('.0') for v in values_cm])} cm"
    in_inches = f"{_graded([_inches(v) for v in values_cm])} in"
    return {"cm": in_cm, "in": in_inches, "both": f"{in_cm} / {in_inches}"}[units]


def _inches(cm: float) -> str:
    # A quarter of an inch is as fine as a tape is read in this trade (common practice).
    return f"{round(cm / CM_PER_INCH * 4) / 4:g}"


def _graded(values: Sequence[str]) -> str:
    """The first size, then the larger ones in brackets; one value where all sizes have the same."""
    if len(set(values)) == 1:
        return values[0]
    return f"{values[0]} ({': '.join(values[1:])})"
