"""The entry of this stage: the garment as it is worn, size by size, and what there is to say about it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.bed import BedResult
from walewright.design.model import Design, PerSize, Requirement
from walewright.fit.begun import drawn_in
from walewright.fit.buttons import buttons
from walewright.fit.cloth import cloth
from walewright.fit.girths import band_on, girths, lap_of, tubes
from walewright.fit.loops import Walker, walker
from walewright.fit.measuring import lengths_of, nothing
from walewright.fit.model import Ease, Fit, Girth, Reach
from walewright.fit.needed import needed
from walewright.fit.passing import passings
from walewright.fit.reach import reaches
from walewright.fit.rings import free_row_edges, rings
from walewright.fit.roles import with_roles
from walewright.fit.wholes import wholes, wholes_off
from walewright.glue.model import GluedSizes
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import Amount, Said, only, said
from walewright.solve.model import Counts

CHEST = ("bust", "chest")
"""What of the body a girth below the armholes is held against."""
OTHERWISE = 3.0
"""cm by which a stated measurement may differ from what the pieces come to: seams, steps of the counts (common practice)."""
SHORT = 3.0
"""cm. A sleeve that ends further from the wrist is a fault (from memory)."""


def fit(design: Design, glued: GluedSizes, counts: Counts, results: Sequence[BedResult]) -> tuple[Fit, tuple[Diagnostic, ...]]:
    """Never fails: what cannot be told is not there. `results` are what the bed knitted, in the order of the sizes."""
    made = zip(design.each_size, counts.sizes, results, strict=True)
    walkers = [walker(design, glued.in_size(at.number), cloth(at, g, r.fabrics)) for at, g, r in made]
    all_tubes = tubes(design, walkers[0])
    found = with_roles(design, walkers[0], all_tubes, rings(design, walkers, all_tubes))
    passing, told = passings(design, walkers, found)
    all_girths = girths(design, walkers)
    stated, eases, unstated = _stated(design, walkers)
    needs, unmeasured = needed(design, walkers)
    reach = reaches(design, walkers, all_tubes, found)
    eases += _told_by_pieces(design, all_girths, known=eases)
    whole = Fit(
        girths=all_girths,
        eases=tuple(eases),
        stated=tuple(stated),
        reaches=reach,
        rings=found,
        passings=passing,
        buttons=buttons(design, walkers, all_tubes),
        free=free_row_edges(design, walkers[0]),
        needed=needs,
        beside=tuple(wholes(design, walkers)),
    )
    findings = [*told, *unstated, *unmeasured, *_otherwise(design, whole), *_small(design, whole), *_short(design, reach)]
    findings += [*_required(design, walkers), *_laps(design, walkers[0]), *wholes_off(design, walkers[0], whole.beside)]
    findings += drawn_in(design, walkers)
    return whole, tuple(findings)


# ----------------------------------------------------------------- finished measurements


def _stated(design: Design, walkers: Sequence[Walker]) -> tuple[list[tuple[str, PerSize]], list[Ease], list[Diagnostic]]:
    """What the author states: with ease where it fits something, by itself else."""
    plain: list[tuple[str, PerSize]] = []
    eases: list[Ease] = []
    told: list[Diagnostic] = []
    for one in design.finished:
        girth, values = lengths_of(design, walkers, one.measured)
        values = one.values or values
        if not values:
            told.append(nothing(one.measured, one.origin.span))
        elif one.body:
            eases.append(Ease(one.name, values, one.fits, one.body, girth))
        else:
            plain.append((one.name, values))
    return plain, eases, told


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
    for one in design.finished:
        if at is None or not one.values or one.fits not in chest:
            continue
        pairs = zip(design.sizes, one.values, at.values, strict=True)
        off = {size: (stated, knitted) for size, stated, knitted in pairs if abs(stated - knitted) > OTHERWISE}
        if off:
            yield diagnosed(
                "finished-otherwise",
                (one.origin.span, "stated"),
                notes=tuple(said("knitted", size=s, stated=Amount(a), knitted=Amount(b)) for s, (a, b) in off.items()),
                helps=("measure-it",),
                severity=Severity.WARNING,
                sizes=only(design.sizes, off),
                measurement=one.name,
                piece=at.piece,
                at=at.at,
                fits=one.fits,
            )


def _small(design: Design, whole: Fit) -> Iterator[Diagnostic]:
    """Finished smaller than the body, where the source does not say that it stretches."""
    stretching = {f.name for f in design.finished if f.stretches}
    for ease in whole.eases:
        bad = [at for at in design.each_size if at.of(ease.ease) < -0.05]
        if not bad or ease.name in stretching:
            continue
        stated = next((f.origin for f in design.finished if f.name == ease.name), None)
        body = next((m.origin for m in design.measurements if m.name == ease.fits), None)
        origin = stated or body
        lengths = [(at.size, Amount(at.of(ease.finished)), Amount(at.of(ease.body))) for at in bad]
        yield diagnosed(
            "smaller-than-body",
            *((origin.span, "to-fit"),) if origin is not None else (),
            notes=tuple(said("beside-body", size=size, finished=finished, body=own) for size, finished, own in lengths),
            helps=("it-stretches",),
            severity=Severity.WARNING,
            sizes=only(design.sizes, [at.number for at in bad]),
            fits=ease.fits,
            measurement=ease.name,
            round=said("place-of-piece", piece=ease.girth.piece, at=ease.girth.at) if ease.girth and not stated else "",
        )


def _short(design: Design, reach: Sequence[Reach]) -> Iterator[Diagnostic]:
    for one in reach:
        pairs = zip(design.sizes, one.values, one.body or one.values, strict=True)
        bad = [(size, found, body) for size, found, body in pairs if body - found >= SHORT]
        if bad:
            yield diagnosed(
                "reach-too-short",
                (design.piece(one.sleeve).origin.span, "way"),
                notes=tuple(said("reach", size=size, reach=Amount(found), body=Amount(body)) for size, found, body in bad),
                helps=("longer",),
                severity=Severity.WARNING,
                sizes=only(design.sizes, [size for size, _, _ in bad]),
                sleeve=one.sleeve,
                short=Amount(SHORT),
                way=one.way,
            )


def _required(design: Design, walkers: Sequence[Walker]) -> Iterator[Diagnostic]:
    """Requirements of what is measured on the garment."""
    for required in design.requirements:
        if required.measured is None:
            continue
        _, values = lengths_of(design, walkers, required.measured)
        if not values:
            yield nothing(required.measured, required.origin.span)
            continue
        bad = [at for at in design.each_size if not _holds(at.of(values), required, at.of(required.right))]
        if bad:
            lengths = [(at.size, Amount(at.of(values)), Amount(at.of(required.right))) for at in bad]
            yield diagnosed(
                "require-fails/on-the-garment",
                (required.origin.span, said("fails", sizes=tuple(size for size, _, _ in lengths))),
                notes=tuple(said("against", size=size, found=found, wanted=wanted) for size, found, wanted in lengths),
                helps=(_mend([at.of(values) - at.of(required.right) for at in bad]),),
                sizes=only(design.sizes, [at.number for at in bad]),
                required=required.text,
                because=required.because,
            )


def _mend(over: list[float]) -> Said:
    furthest = max(over, key=abs)
    return said("less-by", by=Amount(furthest)) if furthest > 0 else said("more-by", by=Amount(-furthest))


def _holds(left: float, required: Requirement, right: float) -> bool:
    over = left - right
    return {"<=": over <= 1e-6, ">=": over >= -1e-6, "=": abs(over) <= 0.5, "<": over < 0, ">": over > 0}[required.relation]


def _laps(design: Design, first: Walker) -> Iterator[Diagnostic]:
    """A lap of what does not lie at one opening."""
    for lap in design.laps:
        ends = [_rings_at(design, first, place) for place in (lap.over, lap.under)]
        if not ends[0] & ends[1]:
            place = (lap.origin.span, "lapped-here")
            yield diagnosed("lap-apart", place, helps=("name-two",), over=lap.over[0], under=lap.under[0])


def _rings_at(design: Design, first: Walker, place: tuple[str, str]) -> set[int]:
    """The openings that an edge lies at, or the band that is hung on it."""
    band = band_on(design, place)
    at = place if band == place[0] else (band, "rim")
    return {number for (owner, edge, _), number in first.ring.items() if owner == at[0] and at[1] in ("", edge)}


__all__ = ["fit", "lap_of"]
