"""The entry of this stage: the garment as it is worn, size by size, and what there is to say about it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.bed import BedResult
from walewright.design.model import Design, Measured, PerSize, Requirement
from walewright.fit.begun import drawn_in
from walewright.fit.buttons import buttons
from walewright.fit.cloth import cloth
from walewright.fit.girths import girths, lap_of, measured, tubes
from walewright.fit.loops import Walker, walker
from walewright.fit.model import Ease, Fit, Girth, Reach
from walewright.fit.passing import passings
from walewright.fit.reach import reaches
from walewright.fit.rings import free_row_edges, rings
from walewright.fit.roles import with_roles
from walewright.glue.model import Glued, Place
from walewright.report.model import Diagnostic, Label, Severity, Span, diagnosed
from walewright.report.said import said
from walewright.solve.model import Counts

CHEST = ("bust", "chest")
"""What of the body a girth below the armholes is held against."""
OTHERWISE = 3.0
"""cm by which a stated measurement may differ from what the pieces come to: seams, steps of the counts (common practice)."""
SHORT = 3.0
"""cm. A sleeve that ends further from the wrist is a fault (from memory)."""


def fit(design: Design, glued: Glued, counts: Counts, results: Sequence[BedResult]) -> tuple[Fit, tuple[Diagnostic, ...]]:
    """Never fails: what cannot be told is not there. `results` are what the bed knitted, in the order of the sizes."""
    made = zip(counts.sizes, results, strict=True)
    walkers = [walker(design, glued, cloth(design, n, g, r.fabrics)) for n, (g, r) in enumerate(made)]
    all_tubes = tubes(design, walkers[0])
    found = with_roles(design, glued, walkers[0], all_tubes, rings(design, glued, walkers, all_tubes))
    passing, told = passings(design, glued, walkers, found)
    all_girths = girths(design, walkers)
    stated, eases, unstated = _stated(design, walkers)
    reach = reaches(design, glued, walkers, all_tubes, found)
    eases += _told_by_pieces(design, all_girths, known=eases)
    whole = Fit(
        all_girths,
        tuple(eases),
        tuple(stated),
        reach,
        found,
        passing,
        buttons(design, glued, [w.cloth for w in walkers]),
        free_row_edges(design, walkers[0]),
    )
    findings = [*told, *unstated, *_otherwise(design, whole), *_small(design, whole), *_short(design, reach)]
    findings += [*_required(design, walkers), *_laps(design, walkers[0])]
    findings += drawn_in(design, glued, [w.cloth for w in walkers])
    return whole, tuple(findings)


# ----------------------------------------------------------------- finished measurements


def _stated(design: Design, walkers: Sequence[Walker]) -> tuple[list[tuple[str, PerSize]], list[Ease], list[Diagnostic]]:
    """What the author states: with ease where it fits something, by itself else."""
    plain: list[tuple[str, PerSize]] = []
    eases: list[Ease] = []
    told: list[Diagnostic] = []
    for said in design.finished:
        girth = measured(design, walkers, said.measured) if said.measured and said.measured.kind == "round" else None
        values = said.values or (girth.values if girth else ()) or _along(walkers, said.measured)
        if not values:
            told.append(_nothing(said.measured, said.origin.span))
        elif said.body:
            eases.append(Ease(said.name, values, said.fits, said.body, girth))
        else:
            plain.append((said.name, values))
    return plain, eases, told


def _along(walkers: Sequence[Walker], what: Measured | None) -> PerSize:
    """The length of a band's last edge or of an edge of a piece: of both sides of a piece that has it on both, once."""
    if what is None or what.kind != "along":
        return ()
    lengths = [w.cloth.length(Place(what.owner, what.at or "rim")) for w in walkers]
    known = tuple(length for length in lengths if length is not None)
    return known if len(known) == len(lengths) else ()


def _nothing(what: Measured | None, span: Span) -> Diagnostic:
    round_it = what is not None and what.kind == "round"
    return Diagnostic(
        "nothing-to-measure",
        "nothing goes all round there: the edges of the pieces are not joined to a ring" if round_it else "there is no such length",
        (Label(span, "measured here"),),
        helps=("join the pieces, or say what laps over what: `lap right_front edge over left_front edge, 8 cm wide`",)
        if round_it
        else (),
    )


def _told_by_pieces(design: Design, all_girths: Sequence[Girth], known: Sequence[Ease]) -> list[Ease]:
    """Bust or chest below the armholes, where the source has one and says nothing more."""
    found: list[Ease] = []
    fitted = {e.fits for e in known}
    chest = next((m for m in design.measurements if m.to_fit and m.body in CHEST), None)
    at = next((g for g in all_girths if g.body), None)
    if chest is not None and at is not None and chest.name not in fitted:
        found.append(Ease(chest.name, at.values, chest.name, chest.values, at))
    return found


# ----------------------------------------------------------------- what there is to say


def _otherwise(design: Design, whole: Fit) -> Iterator[Diagnostic]:
    """A stated girth of the body beside what the pieces come to."""
    at = next((g for g in whole.girths if g.body), None)
    chest = {m.name for m in design.measurements if m.to_fit and m.body in CHEST}
    for said in design.finished:
        if at is None or not said.values or said.fits not in chest:
            continue
        bad = [i for i, (a, b) in enumerate(zip(said.values, at.values, strict=True)) if abs(a - b) > OTHERWISE]
        if bad:
            yield diagnosed(
                "finished-otherwise",
                (said.origin.span, "stated"),
                notes=tuple(
                    said("stated-cm-knitted", among=design.sizes[i], values=said.values[i], values_2=at.values[i]) for i in bad
                ),
                helps=("write-measured",),
                severity=Severity.WARNING,
                sizes=_only(design, bad),
                name=said.name,
                piece=at.piece,
                at=at.at,
                fits=said.fits,
            )


def _small(design: Design, whole: Fit) -> Iterator[Diagnostic]:
    """Finished smaller than the body, where the source does not say that it stretches."""
    stretching = {f.name for f in design.finished if f.stretches}
    for ease in whole.eases:
        bad = [i for i, e in enumerate(ease.ease) if e < -0.05]
        if not bad or ease.name in stretching:
            continue
        said = next((f.origin for f in design.finished if f.name == ease.name), None)
        body = next((m.origin for m in design.measurements if m.name == ease.fits), None)
        origin = said or body
        wording = (
            f"finished {ease.name} round {ease.girth.piece} {ease.girth.at}"
            if ease.girth and not said
            else f"finished {ease.name} ..."
        )
        yield diagnosed(
            "smaller-than-body",
            *(Label(origin.span, "to fit"),) if origin is not None else (),
            notes=tuple(said("finished-cm-body", among=design.sizes[i], finished=ease.finished[i], body=ease.body[i]) for i in bad),
            helps=("if-worn-stretched",),
            severity=Severity.WARNING,
            sizes=_only(design, bad),
            fits=ease.fits,
            wording=wording,
        )


def _short(design: Design, reach: Sequence[Reach]) -> Iterator[Diagnostic]:
    for one in reach:
        bad = [i for i, (a, b) in enumerate(zip(one.values, one.body or one.values, strict=True)) if b - a >= SHORT]
        if bad:
            yield diagnosed(
                "reach-too-short",
                (design.piece(one.sleeve).origin.span, "way"),
                notes=tuple(said("middle-back-neck", among=design.sizes[i], values=one.values[i], body=one.body[i]) for i in bad),
                helps=("make-sleeve-longer",),
                severity=Severity.WARNING,
                sizes=_only(design, bad),
                sleeve=one.sleeve,
                SHORT=SHORT,
                way=one.way,
            )


def _required(design: Design, walkers: Sequence[Walker]) -> Iterator[Diagnostic]:
    """Requirements of what is measured on the garment."""
    for required in design.requirements:
        if required.measured is None:
            continue
        girth = measured(design, walkers, required.measured) if required.measured.kind == "round" else None
        values = girth.values if girth is not None else _along(walkers, required.measured)
        if not values:
            yield _nothing(required.measured, required.origin.span)
            continue
        bad = [i for i, (a, b) in enumerate(zip(values, required.right, strict=True)) if not _holds(a, required, b)]
        if bad:
            yield Diagnostic(
                "require-fails",
                f"it is required that {required.text}, and it is not so" + (f": {required.because}" if required.because else ""),
                (Label(required.origin.span, f"fails in {', '.join(design.sizes[i] for i in bad)}"),),
                tuple(f"{design.sizes[i]}: {values[i]:.1f} cm against {required.right[i]:.1f} cm" for i in bad),
                sizes=_only(design, bad),
            )


def _holds(left: float, required: Requirement, right: float) -> bool:
    over = left - right
    return {"<=": over <= 1e-6, ">=": over >= -1e-6, "=": abs(over) <= 0.5, "<": over < 0, ">": over > 0}[required.relation]


def _laps(design: Design, first: Walker) -> Iterator[Diagnostic]:
    """A lap of what does not lie at one opening."""
    for lap in design.laps:
        ends = [{n for k, n in first.ring.items() if k[0] == owner and edge in ("", k[1])} for owner, edge in (lap.over, lap.under)]
        if not ends[0] & ends[1]:
            yield diagnosed(
                "lap-apart", (lap.origin.span, "lapped-here"), helps=("name-two-bands",), over=lap.over[0], under=lap.under[0]
            )


def _only(design: Design, bad: Sequence[int]) -> tuple[str, ...]:
    return () if len(bad) == len(design.sizes) else tuple(design.sizes[i] for i in bad)


__all__ = ["fit", "lap_of"]
