"""The text copy: what has to be known before knitting, then the printed steps as plain text.

What the page has as words it takes from the same sheet; measurements are finer here than there, since nobody reads them in columns.
"""

from __future__ import annotations

import textwrap
from collections.abc import Iterable, Iterator, Sequence

from walewright.design.model import Design, Fabric
from walewright.figures.measures import name_of
from walewright.fit.model import Fit
from walewright.guide.model import Advice, Guide
from walewright.guide.numbers import CM_PER_INCH, graded, yarn_grams
from walewright.proof.model import Proof
from walewright.record import replace
from walewright.sheet import fitting
from walewright.sheet.composing import reading
from walewright.sheet.finished import credit_words, seam_note
from walewright.sheet.lengths import bobbins, floats
from walewright.sheet.model import ListTable, Sheet
from walewright.sheet.proven import ProvenPattern
from walewright.sheet.reckoned import reckoned
from walewright.sheet.regrading import source_of
from walewright.sheet.supplies import basis_words, dial_words, small_words, stitch_words, together

WIDE, HANGING = 96, 94
"""Characters of a line, and of one of several that hang below the first."""


def text_copy(guide: Guide, sheet: Sheet, pattern: ProvenPattern, steps: str, units: str) -> str:
    """The whole pattern as plain text: `steps` are the instructions, `sheet` is composed of the same pattern in the same language
    and `units`, cm | in | both."""
    design, proof, fit = pattern.design, pattern.proof, pattern.fit
    guide = guide.on_plates() if design.machine.plates else guide
    design = replace(design, sizes=tuple(map(name_of, design.sizes)))
    long = floats(guide, design, proof)
    parts = (
        _title(sheet, design),
        _choices(guide, sheet),
        _regraded(guide, sheet),
        _section(guide.say("text/sizes"), (graded(design.sizes), *_measurements(guide, design, units))),
        _section(guide.say("text/finished"), (*_finished(guide, proof, units), *_worn(guide, design, fit, units))),
        _section(guide.say("text/tension"), _tensions(guide, design, proof, units)),
        _section(guide.say("text/materials"), _materials(guide, sheet, design, proof)),
        *(_table(guide, table) for table in (*bobbins(guide, design, proof), *((long,) if long else ()))),
        _notes(guide, sheet),
        *map(_advice, (sheet.swatch, sheet.care, reading(guide, design, fit, pattern.instructions, text=True))),
        _section(guide.say("page/abbreviations"), (f"{short}: {meaning}" for short, meaning in sheet.abbreviations)),
        _advice(sheet.safety),
        _advice(sheet.children) if sheet.children is not None else "",
        _steps(steps, len(design.sizes)),
        _by_hand(guide, sheet),
        *map(_advice, sheet.trouble),
        _to_regrade(guide, sheet, design, units),
        guide.say("text/proven", version=sheet.version),
    )
    return "\n\n".join(part for part in parts if part) + "\n"


def _title(sheet: Sheet, design: Design) -> str:
    texts = [text for key, text in design.texts if key in ("summary", "difficulty", "story")]
    return "\n".join((design.title, "=" * len(design.title), *(textwrap.fill(text, WIDE) for text in (*texts, *sheet.credits))))


def _notes(guide: Guide, sheet: Sheet) -> str:
    """The author's remarks, each with a hanging indent; empty where there is none."""
    notes = [textwrap.fill(text, HANGING, subsequent_indent="    ") for text in sheet.notes]
    return _section(guide.say("page/notes"), notes) if notes else ""


def _choices(guide: Guide, sheet: Sheet) -> str:
    """What was chosen, and what else there is; empty where nothing is to be chosen."""
    rows = (guide.say("text/choice", what=fact.label, chosen=fact.text) for fact in sheet.choices)
    return _section(guide.say("text/choices"), rows) if sheet.choices else ""


def _regraded(guide: Guide, sheet: Sheet) -> str:
    """What this copy was regraded from; empty for the source's own edition."""
    if sheet.regraded is None:
        return ""
    rows = (guide.say("text/regraded", what=what, own=own, source=of) for what, own, of in sheet.regraded.rows)
    return _section(sheet.regraded.caption, (row.strip() for row in rows))


def _to_regrade(guide: Guide, sheet: Sheet, design: Design, units: str) -> str:
    """What can be given, with the source's own figures."""
    assert sheet.regrade is not None
    rows = [
        f"{m.name.replace('_', ' ')}: {_lengths(guide, m.values, units)}{f', {m.about}' if m.about else ''}"
        for m in source_of(design).measurements
    ]
    rows += [f"{guide.within(what)}: {value}" for what, value in sheet.regrade.others.rows]
    lines = (*sheet.regrade.lines, *rows)
    return _section(guide.say("page/regrade"), (textwrap.fill(line, HANGING, subsequent_indent="    ") for line in lines))


def _section(title: str, lines: Iterable[str]) -> str:
    return "\n".join((title, "-" * len(title), *lines))


def _steps(printed: str, sizes: int) -> str:
    """The printed steps. Their first line, by which they are read back, says which sizes the figures are for: in a copy for one
    size it says nothing that the head of the copy has not said."""
    head, _, steps = printed.strip().partition("\n")
    return steps.strip() if sizes == 1 else f"{head}\n{steps}"


def _table(guide: Guide, table: ListTable) -> str:
    """A table line by line, each with its heads: there is no room for columns beside graded figures."""
    head, *heads = table.heads
    lines = []
    for first, *cells in table.rows:
        told = "; ".join(f"{guide.within(name)}: {cell}" for name, cell in zip(heads, cells, strict=True))
        line = f"{guide.within(head)} {first}: {told}"
        lines.append(textwrap.fill(line, 92, subsequent_indent="    ", break_long_words=False, break_on_hyphens=False))
    title = textwrap.wrap(table.caption, 92)
    return _section(table.caption, lines) if len(title) == 1 else "\n".join((*title, "-" * len(title[-1]), *lines))


def _measurements(guide: Guide, design: Design, units: str) -> list[str]:
    return [
        guide.say(
            "text/measurement",
            name=name_of(m.name),
            to_fit=m.to_fit,
            lengths=_lengths(guide, m.values, units),
            credit=credit_words(guide, m.credit) if m.credit is not None else "",
        )
        for m in design.measurements
    ]


def _finished(guide: Guide, proof: Proof, units: str) -> list[str]:
    """Every width and height of each piece as knitted, without its edgings."""
    lines: list[str] = []
    by_name = [{piece.name: piece for piece in size.pieces} for size in proof.sizes]
    for piece in proof.sizes[0].pieces:
        for number, measure in enumerate(piece.measures):
            values = [of[piece.name].measures[number].knitted_cm for of in by_name]
            lines.append(f"{piece.name}, {guide.measure(measure.key)}: {_lengths(guide, values, units)}".replace("_", " "))
    return lines


def _worn(guide: Guide, design: Design, fit: Fit | None, units: str) -> list[str]:
    """Ease where a body measurement is known, and what the finished measurements are."""
    said, lines = [seam_note(guide, design, fit, units)], list(_folded(guide, design, units))
    if fit is not None:
        lines += [f"{guide.within(label)}: {_lengths(guide, values, units)}" for label, values in fitting.finished(guide, fit)]
        eases = ((guide.within(label), _lengths(guide, values, units)) for label, values in fitting.eases(guide, fit))
        lines += [guide.say("text/ease", what=label, lengths=lengths) for label, lengths in eases]
        # Two openings of a pair say the same.
        said += dict.fromkeys((*fitting.notes(guide, fit, units), *fitting.buttons_notes(guide, fit, units)))
    return [*lines, *(textwrap.fill(line, WIDE) for line in said)]


def _folded(guide: Guide, design: Design, units: str) -> Iterator[str]:
    """Widths that are worn folded, along needles that were out of work."""
    for piece in design.pieces:
        for out in piece.needles_out:
            if out.worn is not None:
                what = guide.say("measure/worn", lower=name_of(out.from_level), upper=name_of(out.to_level))
                yield f"{name_of(piece.name)}, {what}: {_lengths(guide, out.worn, units)}"


def _advice(advice: Advice) -> str:
    """The house's words, as they stand on the page; numbered where their order matters."""
    marks = [f"{number}. " if advice.ordered else "- " for number in range(1, len(advice.lines) + 1)]
    lines = (
        textwrap.fill(line, HANGING, initial_indent=mark, subsequent_indent=" " * len(mark))
        for mark, line in zip(marks, advice.lines, strict=True)
    )
    return _section(advice.title, lines)


def _by_hand(guide: Guide, sheet: Sheet) -> str:
    """The boxes of the page, each under its own heading: who has the text read aloud sees no drawing of it."""
    told = (_section(how.title, (textwrap.fill(line, WIDE) for line in how.lines)) for how in sheet.handwork)
    title = guide.say("page/work-by-hand")
    return "\n\n".join(("\n".join((title, "=" * len(title))), *told)) if sheet.handwork else ""


def _tensions(guide: Guide, design: Design, proof: Proof, units: str) -> Iterator[str]:
    """Every fabric's, with how small a swatch may be."""
    for fabric in design.fabrics:
        yield _tension(guide, design, fabric, units)
        if enough := small_words(guide, fabric, units, proof.small_swatches):
            yield textwrap.fill(enough, HANGING, initial_indent="    ", subsequent_indent="    ")


def _tension(guide: Guide, design: Design, fabric: Fabric, units: str) -> str:
    per_cm = fabric.stitches_per_cm, fabric.rows_per_cm
    in_cm = guide.say("text/to-10-cm", stitches=guide.decimal(f"{per_cm[0] * 10:.1f}"), rows=guide.decimal(f"{per_cm[1] * 10:.1f}"))
    inch = [guide.decimal(f"{of * CM_PER_INCH:.2f}") for of in per_cm]
    in_inches = guide.say("text/to-1-in", stitches=inch[0], rows=inch[1])
    basis = basis_words(guide, fabric, bool(design.given)).removesuffix(".")
    return guide.say(
        "text/fabric",
        fabric=name_of(fabric.name),
        density={"cm": in_cm, "in": in_inches, "both": f"{in_cm} ({in_inches})"}[units],
        stitch=stitch_words(guide, fabric),
        yarn=name_of(fabric.yarn),
        dial=dial_words(guide, fabric),
        basis=f" ({guide.within(basis)})" if basis else "",
    )


def _materials(guide: Guide, sheet: Sheet, design: Design, proof: Proof) -> list[str]:
    machine = design.machine
    lines = [guide.say("text/machine", bed=machine.called, needles=machine.needles, pitch=guide.decimal(f"{machine.pitch_mm:g}"))]
    for at, yarn in enumerate(design.bought()):
        uses = [size.yarn[at] for size in proof.sizes]
        parts = zip(*(yarn_grams(use.garment_grams, use.swatch_grams, use.reserve_grams) for use in uses), strict=True)
        garment, swatches, reserve, grams = (graded([str(part) for part in of]) for of in parts)
        lines.append(
            guide.say(
                "text/yarn",
                yarn=yarn.label or name_of(yarn.name),
                balls=graded([str(use.balls) for use in uses]),
                one=all(use.balls == 1 for use in uses),
                ball_grams=guide.decimal(f"{yarn.ball_grams:g}"),
                ball_metres=guide.decimal(f"{yarn.ball_metres:g}"),
                grams=grams,
                garment=garment,
                swatches=swatches,
                reserve=reserve,
            )
        )
        lines.extend(f"    {guide.say('text/reckoned', way=way)}" for way in reckoned(guide, uses))
    lines += (textwrap.fill(line, 92, subsequent_indent="    ") for line in together(guide, design))
    return [*lines, *(textwrap.fill(guide.within(tool), 92, subsequent_indent="    ") for tool in sheet.tools)]


def _lengths(guide: Guide, values_cm: Sequence[float], units: str) -> str:
    in_cm, in_inches = graded([f"{v:.1f}".removesuffix(".0") for v in values_cm]), graded([_inches(v) for v in values_cm])
    return guide.say(f"text/{units}", cm=guide.decimal(in_cm), inches=guide.decimal(in_inches))


def _inches(cm: float) -> str:
    # A quarter of an inch is as fine as a tape is read in this trade (common practice).
    return f"{round(cm / CM_PER_INCH * 4) / 4:g}"
