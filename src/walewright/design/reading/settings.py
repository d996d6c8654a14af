"""Tensions as the bed sets them: by plates that it has, or on a dial. A number of a dial is no plate, nor the other way round: on a
bed of the other kind the knitter says which setting gives the tension."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

from walewright.design.findings import Findings
from walewright.design.model import Edging, Fabric, MachineProfile
from walewright.record import replace
from walewright.source import syntax

_NUMBER = re.compile(r"\d+")

SourceAndOwn = tuple[MachineProfile | None, MachineProfile | None]
"""The source's bed and the one that is knitted on."""


def set_on(
    fabrics: Mapping[str, Fabric | None],
    nodes: Iterable[syntax.FabricBlock],
    beds: SourceAndOwn,
    used: Iterable[str],
    findings: Findings,
) -> dict[str, Fabric | None]:
    """The fabrics as they can be knitted on the bed; those are told that no plate of it gives. `used`: those that something is made
    of."""
    of_source, bed = beds
    if of_source is None or bed is None:
        return dict(fabrics)
    lines = {node.name: next((s.span for s in node.body if isinstance(s, syntax.Stitch)), node.span) for node in nodes}
    others = bed.plates != of_source.plates
    foreign = []
    told: set[str] = set()
    for fabric in (f for f in fabrics.values() if f is not None):
        lacks = bool(bed.plates) and fabric.tension not in bed.plates
        if others and not fabric.own_dial:
            if fabric.name in used and (lacks or bool(bed.plates) != bool(of_source.plates)):
                foreign.append(fabric.name)
        elif lacks and fabric.own_dial:
            # What one number is given for can be several fabrics of one swatch.
            if fabric.tension not in told:
                findings.report(
                    "no-such-plate/given",
                    notes=("plates",),
                    helps=("one-of-these",),
                    given=("dial", fabric.name),
                    tension=fabric.tension,
                    fabric=fabric.name,
                    plates=bed.plates,
                )
            told.add(fabric.tension)
        elif lacks and fabric.name in used:
            findings.report(
                "no-such-plate/fabric",
                (lines[fabric.name], "at"),
                (bed.origin.span, "bed"),
                notes=("plates",),
                helps=("one-of-these",),
                tension=fabric.tension,
                fabric=fabric.name,
                plates=bed.plates,
            )
    if foreign:
        findings.report(
            "no-such-plate/other-bed" if bed.plates else "no-such-plate/dial",
            notes=("plates",) if bed.plates else (),
            helps=("give-plate" if bed.plates else "give-number",),
            given=("bed", ""),
            fabrics=tuple(foreign),
            first=foreign[0],
            plate=bed.plates[len(bed.plates) // 2] if bed.plates else "",
            plates=bed.plates,
        )
    if not others:
        return dict(fabrics)
    return {name: f if f is None or f.own_dial else replace(f, start_dial=True) for name, f in fabrics.items()}


def edgings_set_on(
    edgings: Mapping[str, Edging | None],
    nodes: Iterable[syntax.EdgingLine],
    source: Mapping[str, Fabric | None],
    fabrics: Mapping[str, Fabric | None],
    beds: SourceAndOwn,
    findings: Findings,
) -> dict[str, Edging | None]:
    """The edgings with their own tensions as plates of the bed. Beside a plate that the knitter has given, what is looser or
    tighter in the `source` is the next looser or tighter plate; on a dial it stays the source's, which the page says."""
    of_source, bed = beds
    if of_source is None or bed is None or not bed.plates:
        return dict(edgings)
    spans = {node.name: node.span for node in nodes}
    made = dict(edgings)
    for name, edging in edgings.items():
        was, now = (of.get(edging.fabric) if edging is not None else None for of in (source, fabrics))
        if edging is None or was is None or now is None:
            continue
        if bed.plates != of_source.plates or now.tension != was.tension:
            fold, inside = (_beside(t, was, now, of_source, bed) for t in (edging.fold_tension, edging.inside_tension))
            made[name] = replace(edging, fold_tension=fold, inside_tension=inside)
            continue
        for tension in (t for t in (edging.fold_tension, edging.inside_tension) if t and t not in bed.plates):
            findings.report(
                "no-such-plate/edging",
                (spans[name], "at"),
                (bed.origin.span, "bed"),
                notes=("plates",),
                helps=("one-of-these",),
                tension=tension,
                edging=name,
                plates=bed.plates,
            )
    return made


def _beside(tension: str, was: Fabric, now: Fabric, of_source: MachineProfile, bed: MachineProfile) -> str:
    """The plate beside that of the fabric, on the side on which the source's tension lies; at the end of the row the fabric's
    own."""
    if not tension or now.tension not in bed.plates:
        return tension and now.tension
    one, other = (_place(t, of_source) for t in (tension, was.tension))
    step = 0 if one is None or other is None else (one > other) - (one < other)
    at = bed.plates.index(now.tension) + step
    return bed.plates[min(max(at, 0), len(bed.plates) - 1)]


def _place(tension: str, bed: MachineProfile) -> float | None:
    """How loose a setting is among those of its bed."""
    if bed.plates:
        return bed.plates.index(tension) if tension in bed.plates else None
    found = _NUMBER.match(tension)
    # 4. and 4.. lie between 4 and 5.
    return int(found[0]) + len(tension[found.end() :]) / 10 if found is not None else None
