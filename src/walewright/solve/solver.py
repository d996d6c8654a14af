"""The entry of this stage: a design counted, every stitch and row of every size."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from walewright.design.model import Design, Piece
from walewright.report.model import Diagnostic, Label
from walewright.solve.bands import one_edge, sized_band
from walewright.solve.bed_width import bands_too_wide, too_wide
from walewright.solve.conflict import explain
from walewright.solve.deviations import deviations
from walewright.solve.garment import sized_pieces
from walewright.solve.highs import solve_programme
from walewright.solve.joining import join_rules
from walewright.solve.model import Component, Counts, SizedBand, SizedGarment
from walewright.solve.pieces import Heights, PieceTerms, piece_terms
from walewright.solve.programme import Draft, Programme, components
from walewright.solve.rules import piece_rules
from walewright.solve.seams import sized_join, unlike_joins, unmet_joins

Found = tuple[Diagnostic, ...]


def solve(design: Design) -> tuple[Counts | None, Found]:
    """Count the design. The counts are None where it cannot be done; the diagnostics say why. Never raises for a fault of
    the author's."""
    told = (*_band_faults(design), *unlike_joins(design), *too_wide(design))
    if told:
        return None, told
    programme, terms = programme_of(design)
    values: dict[int, int] = {}
    solved: list[Component] = []
    for part in components(programme):
        answer = solve_programme(part)
        if answer.status == "infeasible":
            told += explain(design, part)
        elif answer.values is None or answer.status != "optimal":
            told += (_gave_up(design, part),)
        else:
            values |= answer.values
            solved.append(Component(_pieces(part), answer.status, answer.objective, answer.bound))
    if told:
        return None, told
    return _counted(design, programme, terms, values, tuple(solved))


def programme_of(design: Design) -> tuple[Programme, dict[str, tuple[PieceTerms, ...]]]:
    """The integer programme of a design, and each piece's numbers in it, per size."""
    draft = Draft()
    heights: Heights = {}
    terms: dict[str, tuple[PieceTerms, ...]] = {}
    for piece in design.pieces:
        if piece.mirror_of is None:
            terms[piece.name] = piece_terms(draft, design, piece, heights)
            piece_rules(draft, design, piece, terms[piece.name])
    for piece in design.pieces:
        terms.setdefault(piece.name, _image(design, piece, terms))
    join_rules(draft, design, terms)
    return draft.programme(), terms


def _image(design: Design, piece: Piece, terms: dict[str, tuple[PieceTerms, ...]]) -> tuple[PieceTerms, ...]:
    """The numbers of a mirror image are its model's, left and right exchanged."""
    if piece.name in terms or piece.mirror_of is None:
        return terms[piece.name]
    model = _image(design, design.piece(piece.mirror_of), terms)
    return tuple(replace(t, left=t.right, right=t.left) for t in model)


def _band_faults(design: Design) -> Iterator[Diagnostic]:
    for band in design.bands:
        fault = one_edge(design, band)
        if fault is not None:
            yield fault


def _gave_up(design: Design, part: Programme) -> Diagnostic:
    names = _pieces(part)
    return Diagnostic(
        "no-proven-best",
        f"no best counts were found for {', '.join(names)} within the solver's limit",
        tuple(Label(design.piece(name).origin.span, f"the {name}") for name in names),
    )


def _pieces(part: Programme) -> tuple[str, ...]:
    used = {v for rule in part.rules for _, line in rule.constraints for v, _ in line.terms}
    return tuple(dict.fromkeys(part.variables[v].piece for v in sorted(used)))


def _counted(
    design: Design,
    programme: Programme,
    terms: dict[str, tuple[PieceTerms, ...]],
    values: dict[int, int],
    solved: tuple[Component, ...],
) -> tuple[Counts | None, Found]:
    exact = [values[number] for number in range(len(programme.variables))]
    broken = [rule.name for rule in programme.broken(exact)]
    assert not broken, f"the solver's numbers break {broken}"
    made = {piece.name: sized_pieces(design, piece, terms[piece.name], values) for piece in design.pieces}
    count = range(len(design.sizes))
    pieces = [tuple(made[p.name][i] for p in design.pieces) for i in count]
    bands: list[tuple[SizedBand, ...]] = [tuple(sized_band(design, b, i, pieces[i]) for b in design.bands) for i in count]
    told: list[Diagnostic] = [*unmet_joins(design, pieces), *bands_too_wide(design, bands)]
    if told:
        return None, tuple(told)
    garments = tuple(
        SizedGarment(
            design.sizes[i],
            pieces[i],
            bands[i],
            tuple(sized_join(design, join, i, pieces[i]) for join in design.joins),
            tuple(d for p, s in zip(design.pieces, pieces[i], strict=True) for d in deviations(design, p, s, i)),
        )
        for i in count
    )
    return Counts(garments, solved), ()
