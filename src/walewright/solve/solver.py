"""The entry of this stage: a design counted, every stitch and row of every size."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache

from walewright.counted.in_size import in_size
from walewright.counted.model import SizedGarment, SizedPiece
from walewright.design.model import Design, DesignInSize, EdgeJoin
from walewright.glue.model import Glued, GluedSizes
from walewright.record import replace
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Said, said
from walewright.solve.algebra.coupling import Coupling, coupled
from walewright.solve.algebra.coupling import told as let_go
from walewright.solve.algebra.highs import Answer, feasible, solve_programme
from walewright.solve.algebra.programme import Draft, Programme, Rule, components
from walewright.solve.conflict.amounts import unfit_amounts
from walewright.solve.conflict.conflict import explain
from walewright.solve.conflict.flat import too_flat, too_steep
from walewright.solve.conflict.trying import helped
from walewright.solve.edges.bed_width import too_wide
from walewright.solve.edges.charts import motifs_outside, repeats_cut
from walewright.solve.edges.holes import holes_at_edges
from walewright.solve.edges.lengths import Garment
from walewright.solve.edges.multiples import repeats_on_a_slope
from walewright.solve.edges.panels import panels_crossed
from walewright.solve.edges.pieces import Heights, PieceTerms, image, piece_terms, with_settled_numbers
from walewright.solve.edges.ribbing import ribs_without_columns
from walewright.solve.edges.rules import piece_rules
from walewright.solve.joins.band_holes import crowded_holes
from walewright.solve.joins.band_parts import Glue, bands_of, bands_too_wide, parted, together_as_it_is
from walewright.solve.joins.bands import short_starts, start_pick_ups
from walewright.solve.joins.begun import begun_rules
from walewright.solve.joins.caps import unmet_cap
from walewright.solve.joins.joining import edge_by_edge, join_rules
from walewright.solve.joins.matched import cannot_match, matching_rules, unmatched
from walewright.solve.joins.matching import movers, pinned
from walewright.solve.joins.ratios import with_ratios
from walewright.solve.joins.seams import sides_told, sized_join, sized_seam, uneven_edges, unlike_joins, unmet_joins
from walewright.solve.joins.wholes import whole_wishes
from walewright.solve.model import Component, Counts, InParts
from walewright.solve.schedule.paced import rates_not_kept
from walewright.solve.sized.deviations import deviations
from walewright.solve.sized.garment import sized_pieces


def solve(design: Design, glued: GluedSizes, glue: Glue = together_as_it_is) -> tuple[Counts | None, tuple[Diagnostic, ...]]:
    """Count the design, which is put together as `glued` says. Bands wider than the bed are parted where `glue` can put the
    garment together so (`Counts.parted`). The counts are None where it cannot be done; the diagnostics say
    why. Never raises for a fault of the author's."""
    counts, told = attempt(design, glued, glue)
    if counts is not None:
        return counts, told

    def count(other: Design) -> tuple[Diagnostic, ...]:
        made, against = attempt(other, glued, glue)
        return () if made is not None else against

    return None, helped(design, told, count, _at_a_glance if _at_a_glance(design) else None)


def attempt(design: Design, glued: GluedSizes, glue: Glue = together_as_it_is) -> tuple[Counts | None, tuple[Diagnostic, ...]]:
    """The same, with changes for helps that nobody has tried yet. Sizes are coupled as closely as they can be: none is refused that
    could be counted by itself."""
    told = _at_a_glance(design)
    if told:
        return None, told
    counts, told, final = _attempted(design, glued, Coupling.GRADED, glue)
    if counts is not None or final or len(design.sizes) == 1:
        return counts, told
    alone = _attempted(design, glued, Coupling.ALONE, glue)
    if alone[0] is not None:
        # No size need be refused: they are coupled as closely as they can be.
        for coupling in (Coupling.WISHED, Coupling.APART):
            counts, told, _ = _attempted(design, glued, coupling, glue)
            if counts is not None:
                return counts, told
    return alone[:2]


def apart(design: Design, glued: GluedSizes, glue: Glue = together_as_it_is) -> tuple[Counts | None, tuple[Diagnostic, ...]]:
    """The same with every size scheduled by itself: for a garment that can be counted, and of which a size is refused later for the
    form of its curves, which it shares with the others."""
    return _attempted(design, glued, Coupling.APART, glue)[:2]


def among(design: Design, whole: Counts, glue: Glue = together_as_it_is) -> Counts | None:
    """Some of the sizes of a pattern, with the numbers that they have among all of them, in `whole`: bands in as many parts, too,
    though fewer might do for these sizes. None where they cannot be put together so."""
    by_size = {garment.size: (number, garment) for number, garment in enumerate(whole.sizes)}
    chosen = [by_size[size] for size in design.sizes]
    counts = replace(whole, sizes=tuple(garment for _, garment in chosen))
    if whole.parted is None:
        return counts
    parts = whole.parted.in_sizes(design, [number for number, _ in chosen])
    again = glue(parts)
    return None if again is None else replace(counts, parted=InParts(parts.bands, parts.cuts, parts.joins, parts.free, again))


def _at_a_glance(design: Design) -> tuple[Diagnostic, ...]:
    """What there is to say before anything is solved."""
    told: tuple[Diagnostic, ...] = (
        *unlike_joins(design),
        *cannot_match(design),
        *repeats_on_a_slope(design),
        *too_wide(design),
        *too_flat(design),
        *too_steep(design),
    )
    return told or tuple(unfit_amounts(design))


def _attempted(
    design: Design, glued: GluedSizes, coupling: Coupling, glue: Glue
) -> tuple[Counts | None, tuple[Diagnostic, ...], bool]:
    """The counts, or what stands against them, and whether it does so however the sizes are coupled."""
    joins, design = design.joins, replace(design, joins=edge_by_edge(design.joins, glued))
    matched = tuple(join for join in design.joins if movers(design, join))
    graded, terms = programme_of(design, matched, glued)
    programme = coupled(graded, coupling)
    answers, told, final = _answered(design, programme, terms, [])
    if told:
        return None, told, final
    if any(piece.parity == "either" for piece in design.pieces):
        design = with_settled_numbers(design, terms, _values(answers))
        graded, terms = programme_of(design, matched, glued)
        programme = coupled(graded, coupling)
        answers, told, final = _answered(design, programme, terms, [])
        if told:
            return None, told, final
    if matched:
        # What curves come to is only known when they are scheduled: with the levels found for them, all is counted again.
        chosen, unmet = pinned(design, programme, terms, _values(answers), coupling.together)
        faults = tuple(fault for trial, found in unmet if (fault := unmet_cap(trial, found)) is not None)
        if faults:
            return None, faults, False
        design = chosen
        graded, terms = programme_of(design, matched, glued)
        programme = coupled(graded, coupling)
        answers, told, _ = _answered(design, programme, terms, answers)
        if told:
            return None, told, False
    counts, told = _counted(
        replace(design, joins=joins), glued, programme, terms=terms, answers=answers, together=coupling.together, glue=glue
    )
    if counts is None:
        return None, told, False
    return counts, (*told, *let_go(design, graded, _values(answers), coupling)), True


def programme_of(
    design: Design, matched: Sequence[EdgeJoin] = (), glued: GluedSizes | None = None
) -> tuple[Programme, dict[str, tuple[PieceTerms, ...]]]:
    """The integer programme of a design, and each piece's numbers in it, per size; without the joins that are `matched` by
    free levels. What is wanted of several pieces together is wished for where it is known how they are `glued`."""
    draft = Draft()
    heights: Heights = {}
    terms: dict[str, tuple[PieceTerms, ...]] = {}
    for piece in design.pieces:
        if piece.mirror_of is None:
            terms[piece.name] = piece_terms(draft, design, piece, heights)
            piece_rules(draft, design, piece, terms[piece.name])
    for piece in design.pieces:
        terms.setdefault(piece.name, _image(design, piece.name, terms))
    join_rules(draft, design, terms, matched)
    matching_rules(draft, design, terms)
    begun_rules(draft, design, terms)
    if glued is not None:
        whole_wishes(draft, design, terms, glued)
    return draft.programme(), terms


def _image(design: Design, name: str, terms: Garment) -> tuple[PieceTerms, ...]:
    """The numbers of a mirror image are its model's, left and right exchanged."""
    model = design.piece(name).mirror_of
    if name in terms or model is None:
        return tuple(terms[name])
    return tuple(image(t) for t in _image(design, model, terms))


# ----------------------------------------------------------------- answers

Answers = list[tuple[Programme, Answer]]
"""The independent parts of a programme, each with its best numbers."""


def _answered(design: Design, programme: Programme, terms: Garment, known: Answers) -> tuple[Answers, tuple[Diagnostic, ...], bool]:
    """The best numbers of each part, or why there are none, and whether that is so for some size by itself. A part that is among
    the `known` is not solved again."""
    told: tuple[Diagnostic, ...] = ()
    found: Answers = []
    final = False
    parts = tuple(components(programme))
    for part in parts:
        answer = next((a for p, a in known if p == part), None) or best(part, len(design.sizes))
        if answer.status == "infeasible":
            why, by_itself = explain(design, part, _without(design, part, parts, terms))
            told, final = (*told, *why), final or by_itself
        elif answer.values is None or answer.status != "optimal":
            told += (_gave_up(design, part),)
        else:
            found.append((part, answer))
    return found, told, final


def _without(design: Design, part: Programme, parts: Sequence[Programme], terms: Garment) -> Callable[[Rule, int], Said | None]:
    """What the sides of a join come to where its rule is left out."""

    @cache
    def elsewhere() -> dict[int, int] | None:
        """The numbers that this part leaves alone: a join of rows says nothing of widths."""
        answers = [(other, best(other, len(design.sizes))) for other in parts if other is not part]
        return _values(answers) if all(answer.values is not None for _, answer in answers) else None

    def sides(rule: Rule, size: int) -> Said | None:
        answer = solve_programme(replace(part, rules=tuple(r for r in part.rules if r.name != rule.name)))
        join = next((j for j in design.joins if j.origin in rule.origins), None)
        others = elsewhere()
        if answer.values is None or others is None or join is None:
            return None
        names = dict.fromkeys(e.piece for e in (*join.one, *join.other) if design.band(e.piece) is None)
        values = {**others, **answer.values}
        made = [sized_pieces(design, design.piece(n), terms[n], values, together=False)[size] for n in names]
        return sides_told(in_size(design.at(size), made), join)

    return sides


def best(part: Programme, sizes: int) -> Answer:
    """The best numbers with every finished width within a stitch; where some size cannot have that, with its own farther off."""
    answer = solve_programme(part.nearer(range(sizes)))
    if answer.status != "infeasible":
        return answer
    able = [i for i in range(sizes) if feasible([line for r in part.nearer([i]).rules for at, line in r.constraints if at == i])]
    answer = solve_programme(part.nearer(able))
    return answer if answer.status != "infeasible" else solve_programme(part)


def _values(answers: Answers) -> dict[int, int]:
    return {number: value for _, answer in answers for number, value in (answer.values or {}).items()}


def _gave_up(design: Design, part: Programme) -> Diagnostic:
    names = _pieces(part)
    return diagnosed(
        "no-proven-best",
        *((design.piece(name).origin.span, said("the", name=name)) for name in names),
        helps=("differ-less",),
        pieces=names,
    )


def _pieces(part: Programme) -> tuple[str, ...]:
    used = {v for rule in part.rules for _, line in rule.constraints for v, _ in line.terms}
    return tuple(dict.fromkeys(part.variables[v].piece for v in sorted(used)))


# ----------------------------------------------------------------- the garment


def _counted(
    design: Design,
    glued: GluedSizes,
    programme: Programme,
    terms: dict[str, tuple[PieceTerms, ...]],
    answers: Answers,
    together: bool,
    glue: Glue,
) -> tuple[Counts | None, tuple[Diagnostic, ...]]:
    values = _values(answers)
    exact = [values[number] for number in range(len(programme.variables))]
    broken = [rule.name for rule in programme.broken(exact)]
    assert not broken, f"the solver's numbers break {broken}"
    made = {piece.name: sized_pieces(design, piece, terms[piece.name], values, together) for piece in design.pieces}
    pieces = [_hung(at, glued.in_size(at.number), tuple(at.of(made[p.name]) for p in design.pieces)) for at in design.each_size]
    solved = tuple(Component(_pieces(part), answer.status, answer.objective, answer.bound) for part, answer in answers)
    return _with_bands(design, glued, pieces, solved, glue)


def _with_bands(
    design: Design, glued: GluedSizes, pieces: list[tuple[SizedPiece, ...]], solved: tuple[Component, ...], glue: Glue
) -> tuple[Counts | None, tuple[Diagnostic, ...]]:
    """The counts of a design whose pieces are counted, by size."""
    design, again, in_parts = parted(design, glued, pieces, glue)
    bands = with_ratios(bands_of(design, again, pieces))
    views = [in_size(at, at.of(pieces)) for at in design.each_size]
    told = (
        *uneven_edges(design, views),
        *unmet_joins(design, again, views),
        *short_starts(design, pieces),
        *rates_not_kept(design, pieces),
        *panels_crossed(design, pieces),
        *motifs_outside(design, pieces),
        *repeats_cut(design, pieces),
        *unmatched(design, pieces),
        *bands_too_wide(design, again, pieces, bands),
        *crowded_holes(design, bands),
        *holes_at_edges(design, pieces),
        *ribs_without_columns(design, pieces, bands),
    )
    if told:
        return None, told
    garments = tuple(
        SizedGarment(
            size=of.at.size,
            pieces=of.at.of(pieces),
            bands=of.at.of(bands),
            joins=tuple(sized_join(of, join) for join in design.joins),
            deviations=tuple(d for piece in of.pieces.values() for d in deviations(of.at, piece)),
            seams=tuple(sized_seam(of, seam) for seam in again.in_size(of.at.number).seams),
        )
        for of in views
    )
    parts = InParts(design.bands, design.cuts, design.joins, design.free, again) if in_parts else None
    return Counts(garments, solved, parts), in_parts


def _hung(at: DesignInSize, glued: Glued, pieces: tuple[SizedPiece, ...]) -> tuple[SizedPiece, ...]:
    """The pieces of one size, those begun along edges with what they are hung on."""
    return tuple(
        replace(sized, start_pick_ups=start_pick_ups(at, piece, sized, pieces, glued.lines_of(piece.name)[0]))
        if piece.start_way == "along"
        else sized
        for piece, sized in zip(at.design.pieces, pieces, strict=True)
    )
