"""What `walewright check` prints of a proven garment: tables of what came out, and what is left over."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from walewright.cli.left_over import MARK, is_off, left_over
from walewright.cli.tables import plain, table, written
from walewright.cli.worn_tables import as_worn, openings, passages
from walewright.report.columns import named
from walewright.report.said import said

if TYPE_CHECKING:
    from rich.table import Table

    from walewright.guide.model import Guide
    from walewright.pipeline import Outcome
    from walewright.report.wording import Language


def summary(outcome: Outcome, guide: Guide, words: Language, everything: bool) -> str:
    """Yarn, and what goes round a body with its ease; last what is unused, unsewn and further off than a stitch or a row.

    With `everything`, before that what opens and what passes there, and a table a piece: per size the stitches and rows counted,
    and the centimetres wanted and knitted, marked where they are further apart than a stitch or a row; and the joins."""
    design, _, _, proof = outcome.result()
    chosen = tuple(said("check/choice", choice=c.name, alternative=c.alternative) for c in design.choices)
    head = guide.say("check/head", file=named(outcome.file), title=design.title, chosen=chosen, sizes=len(proof.sizes))
    tables = list(_tables(outcome, guide, everything)) if proof.sizes else []
    shown = (plain(one) for one in tables if one.row_count)
    last = left_over(outcome, guide, words)
    return "\n\n".join((head, *shown, last if everything else f"{last}\n{guide.say('check/all')}"))


def _tables(outcome: Outcome, guide: Guide, everything: bool) -> Iterator[Table]:
    design, _, _, proof = outcome.result()
    yield _yarn_table(outcome, guide)
    if outcome.fit is not None:
        yield as_worn(guide, outcome.fit, design.sizes)
    if not everything:
        return
    if outcome.fit is not None:
        yield openings(guide, outcome.fit, design.sizes)
        yield passages(guide, outcome.fit, design.sizes)
    for name in dict.fromkeys(piece.name for size in proof.sizes for piece in size.pieces):
        yield _piece_table(outcome, guide, name)
    yield _join_table(outcome, guide)


def _yarn_table(outcome: Outcome, guide: Guide) -> Table:
    """Grams and whole balls of every yarn of the garment, swatches and reserve included."""
    sizes = outcome.result()[3].sizes
    made = table(guide.say("check/yarn"), [size.size for size in sizes])
    for at, yarn in enumerate(sizes[0].yarn):
        if yarn.kind == "yarn":
            uses = [size.yarn[at] for size in sizes]
            made.add_row(yarn.label, guide.say("check/grams-and-balls"), *(f"{use.grams:.0f}/{use.balls}" for use in uses))
    return made


def _piece_table(outcome: Outcome, guide: Guide, name: str) -> Table:
    """Of a piece, or of a link that is made in some sizes only."""
    _, counts, _, proof = outcome.result()
    sizes = proof.sizes
    of_size = [next((piece for piece in size.pieces if piece.name == name), None) for size in sizes]
    pieces = [piece for piece in of_size if piece is not None]
    solved = [{(d.piece, d.key): d.solved for d in garment.deviations} for garment in counts.sizes]
    made = table(name, [size.size for size in sizes])
    for at, measure in enumerate(pieces[0].measures):
        counted = [found.get((name, measure.key)) for found in solved]
        unit = guide.say(f"check/{measure.unit}")
        made.add_row(guide.measure(measure.key), unit, *("" if count is None else str(count) for count in counted))
        both = (piece.measures[at] for piece in pieces)
        compared = (guide.decimal(f"{m.wanted_cm:.1f}/{m.knitted_cm:.1f}") + (MARK if is_off(m) else "") for m in both)
        made.add_row("", guide.say("check/wanted-and-knitted"), *compared)
    made.add_row(guide.say("check/rows"), "", *("" if p is None else str(p.rows) for p in of_size))
    ends = ("" if p is None else f"{p.first_needle}-{p.last_needle}".replace(" ", "") for p in of_size)
    made.add_row(guide.say("check/needles"), "", *ends)
    return made


def _join_table(outcome: Outcome, guide: Guide) -> Table:
    """Both sides of every join: rows where both have them, else centimetres, and what was asked for."""
    sizes = outcome.result()[3].sizes
    made = table(guide.say("check/joins"), [size.size for size in sizes])
    named = [{(join.join, join.one, join.other): join for join in size.joins} for size in sizes]
    order = list(dict.fromkeys(join.join for size in sizes for join in size.joins))
    for key in sorted(dict.fromkeys(key for of in named for key in of), key=lambda key: order.index(key[0])):
        of_size = [of.get(key) for of in named]
        found = [join for join in of_size if join is not None]
        one, other = (tuple(written(e.piece, e.edge, e.copy) for e in side) for side in key[1:])
        text = guide.say("join/of-two", one=one, other=other) if other else guide.say("join/upon-itself", one=one)
        if all(j.one_rows is not None and j.other_rows is not None for j in found):
            made.add_row(text, guide.say("check/rows"), *("" if j is None else f"{j.one_rows}/{j.other_rows}" for j in of_size))
        else:
            both = ("" if j is None else guide.decimal(f"{j.one_cm:.1f}/{j.other_cm:.1f}") for j in of_size)
            made.add_row(text, guide.say("check/cm"), *both)
        if found[0].over:
            strips = tuple(dict.fromkeys(said("check/strip", piece=o.piece, edging=o.edging) for o in found[0].over))
            on = [[] if j is None else list({(o.piece, o.edging): o for o in j.over}.values()) for j in of_size]
            made.add_row(
                guide.say("check/over", strips=strips), guide.say("check/rows"), *("/".join(str(o.rows) for o in j) for j in on)
            )
            lengths = ("/".join(f"{o.cm:.1f}" for o in j) for j in on)
            made.add_row("", guide.say("check/cm"), *(guide.decimal(text) for text in lengths))
        if any(j.longer_cm for j in found):
            longer = ("" if j is None else guide.decimal(f"{j.longer_cm:.1f}/{j.one_cm - j.other_cm:.1f}") for j in of_size)
            made.add_row("", guide.say("check/longer"), *longer)
    return made
