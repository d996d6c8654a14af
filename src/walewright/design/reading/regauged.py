"""Fabrics as a knitter gives them: by a tension, by a swatch as measured, in another yarn, at another setting of the dial.

A tension that is given alone carries to the other fabrics of the same yarn: their stitches and rows change in the same ratio,
each for itself, and say that they were reckoned. A fabric of another yarn is left, and named in a warning.

The block that was measured keeps its stitches and rows; only what it measures changes. What it weighs follows from the length of
a loop, which is in inverse proportion to the root of the density: relaxed plain knitting has as many stitches to the area as a
constant over the loop's length squared (Munden 1959, Journal of the Textile Institute).
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping

from walewright.design.findings import Findings
from walewright.design.model import Fabric, Origin, Yarn
from walewright.design.model.fabrics import SwatchBasis
from walewright.design.reading.changes import Changes, by_own_name, tell_malformed
from walewright.design.reading.given import Ball, TensionCounts, read_dial, read_swatch, read_tension, read_yarn
from walewright.design.reading.materials import FEWEST_PER_CM, MOST_PER_CM, block, yarn
from walewright.record import replace
from walewright.report.model import NOWHERE, Severity
from walewright.report.said import Amount, said
from walewright.source import syntax

SWATCH_CM = 10.0
"""A tension is told as stitches and rows to 10 cm, as every yarn label does."""
SAME_YARN = 0.02
"""Yarns whose weight to the metre differs by no more than this share are one yarn in several colours."""


def changed_yarns(
    nodes: Iterable[syntax.YarnLine], yarns: Mapping[str, Yarn | None], changes: Changes, findings: Findings
) -> dict[str, Yarn | None]:
    """The yarns with the knitter's own label and ball; the colour stays the source's."""
    written = {n.name: n for n in reversed(tuple(nodes))}
    result = dict(yarns)
    labels = {name: (y.label,) if y is not None else () for name, y in yarns.items()}
    for name, (typed, text) in by_own_name("yarn", changes.yarns, labels, "yarn", findings).items():
        ball = read_yarn(text)
        if ball is None:
            tell_malformed("yarn", typed, text, findings)
            continue
        own = Findings()
        made = yarn(_with_ball(written[name], ball), own)
        findings.take(own, "yarn", typed)
        result[name] = made and replace(made, origin=Origin(f"own yarn {name}", NOWHERE))
    return result


def _with_ball(node: syntax.YarnLine, ball: Ball) -> syntax.YarnLine:
    label = node.label if ball.label is None else ball.label
    return replace(node, label=label, ball_weight=ball.weight, ball_length=ball.length, count=ball.count, fibres=(), span=NOWHERE)


def changed_fabrics(
    fabrics: Mapping[str, Fabric | None],
    yarns: Mapping[str, tuple[Yarn | None, Yarn | None]],
    changes: Changes,
    used: Iterable[str],
    findings: Findings,
) -> dict[str, Fabric | None]:
    """The fabrics with the knitter's tensions, swatches and dials, and those reckoned from them. `yarns`: the source's and the
    knitter's of each name; `used` are the fabrics that something is made of."""
    known: dict[str, tuple[str, ...]] = dict.fromkeys(fabrics, ())
    result = dict(fabrics)
    own: dict[str, tuple[str, str]] = {}
    tensions = by_own_name("tension", changes.tensions, known, "fabric", findings)
    swatches = by_own_name("swatch", changes.swatches, known, "fabric", findings)
    for name in [n for n in tensions if n in swatches]:
        findings.report("given-twice/tension-and-swatch", helps=("leave-one",), given=("swatch", swatches[name][0]), name=name)
    for kind, found in (("tension", tensions), ("swatch", swatches)):
        for name, (typed, text) in found.items():
            fabric = fabrics[name]
            read = _of_tension(fabric, typed, text, findings) if kind == "tension" else _of_swatch(fabric, typed, text, findings)
            if read is not None:
                result[name] = _in_yarn(read, yarns, swatch_weighed=kind == "swatch" and read.swatch_grams > 0)
                own[name] = (kind, typed)
    for name, fabric in fabrics.items():
        mate = next((n for n in own if _one_swatch(fabrics[n], fabric)), None) if name not in own else None
        if fabric is not None and mate is not None:
            # The swatch that was knitted is this fabric's too.
            result[name] = _as_mate(fabric, result[mate], yarns)
        elif fabric is not None and name not in own:
            result[name] = _in_yarn(_reckoned(fabric, fabrics, result, own, yarns), yarns, swatch_weighed=False)
    _tell_left(result, own, yarns, changes, frozenset(used), findings)
    for name, (typed, text) in by_own_name("dial", changes.dials, known, "fabric", findings).items():
        label, fabric = read_dial(text), result[name]
        if label is None:
            tell_malformed("dial", typed, text, findings)
        elif fabric is not None:
            dials = changes.dials
            for other in [n for n, f in result.items() if n == name or (_one_swatch(f, fabric) and n not in dials)]:
                of = result[other]
                result[other] = of and replace(of, tension=label, own_dial=True, start_dial=False)
    return _beside_dials(result, fabrics)


def _beside_dials(now: Mapping[str, Fabric | None], before: Mapping[str, Fabric | None]) -> dict[str, Fabric | None]:
    """A dial that is given as another number than the source's is another bed's, or another hand's: no number of the source is more
    than a start beside it. None is reckoned, for the numbers of a dial are no measure."""
    pairs = [(f, before[name]) for name, f in now.items() if f is not None and f.own_dial]
    if all(was is not None and was.tension == f.tension for f, was in pairs):
        return dict(now)
    return {name: f if f is None or f.own_dial else replace(f, start_dial=True) for name, f in now.items()}


def in_place_of(
    yarns: Mapping[str, Yarn | None], source: Mapping[str, Yarn | None], fabrics: Iterable[Fabric | None]
) -> dict[str, Yarn | None]:
    """The yarns as they are called: one that the knitter has not named, at a tension that is not its own in the source, may be
    another, and is not to be bought by its label alone."""
    elsewhere = {f.yarn for f in fabrics if f is not None and f.basis != "source"}
    elsewhere |= {strand for name in elsewhere if (held := yarns.get(name)) is not None for strand in held.strands}
    return {
        name: replace(y, label=f"yarn like {y.label}") if y is not None and name in elsewhere and y == source[name] else y
        for name, y in yarns.items()
    }


def _of_tension(fabric: Fabric | None, typed: str, text: str, findings: Findings) -> Fabric | None:
    counts = read_tension(text)
    if counts is None:
        tell_malformed("tension", typed, text, findings)
        return None
    for number, unit in ((counts.stitches, "stitches"), (counts.rows, "rows")):
        if not FEWEST_PER_CM <= number / SWATCH_CM <= MOST_PER_CM:
            findings.report(
                "bad-tension/out-of-range",
                notes=("possible",),
                helps=("look",),
                given=("tension", typed),
                count=Amount(number, unit),
                width=Amount(SWATCH_CM),
                least=Amount(FEWEST_PER_CM * SWATCH_CM, ""),
                most=Amount(MOST_PER_CM * SWATCH_CM, unit),
            )
            return None
    return fabric and _at(fabric, counts, basis="given, not weighed" if fabric.swatch_grams else "given")


def _at(fabric: Fabric, counts: TensionCounts, basis: SwatchBasis, reckoned_from: str = "") -> Fabric:
    """The fabric at so many stitches and rows to 10 cm, its block as many of both as before."""
    width = fabric.swatch_stitches / counts.stitches * SWATCH_CM
    height = fabric.swatch_rows / counts.rows * SWATCH_CM
    size = math.sqrt(width * height / (fabric.swatch_width_cm * fabric.swatch_height_cm))
    return replace(
        fabric,
        swatch_width_cm=width,
        swatch_height_cm=height,
        swatch_grams=fabric.swatch_grams * size,
        loop_cm=fabric.loop_cm * size,
        origin=Origin(f"tension {fabric.name}", NOWHERE),
        as_written=fabric,
        basis=basis,
        reckoned_from=reckoned_from,
        start_dial=True,
    )


def _of_swatch(fabric: Fabric | None, typed: str, text: str, findings: Findings) -> Fabric | None:
    node = read_swatch(text)
    if node is None:
        tell_malformed("swatch", typed, text, findings)
        return None
    own = Findings()
    found = block(node, said("fabric", fabric=fabric.name if fabric else typed), own)
    findings.take(own, "swatch", typed)
    if found is None or fabric is None:
        return None
    counts = TensionCounts(found.stitches / found.width * SWATCH_CM, found.rows / found.height * SWATCH_CM)
    as_before = _at(fabric, counts, basis="given")
    stitch = as_before.swatch_grams / (as_before.swatch_stitches * as_before.swatch_rows)
    return replace(
        as_before,
        swatch_stitches=found.stitches,
        swatch_rows=found.rows,
        swatch_width_cm=found.width,
        swatch_height_cm=found.height,
        swatch_grams=found.grams or stitch * found.stitches * found.rows,
        origin=Origin(f"swatch {fabric.name}", NOWHERE),
        as_written=None,
        basis="given" if found.grams or not fabric.swatch_grams else "given, not weighed",
    )


def _in_yarn(fabric: Fabric, yarns: Mapping[str, tuple[Yarn | None, Yarn | None]], *, swatch_weighed: bool) -> Fabric:
    """The fabric in the knitter's yarn: a loop of the same length weighs as the yarn does."""
    before, now = yarns.get(fabric.yarn, (None, None))
    if before is None or now is None or now == before:
        return fabric
    weighed = fabric.basis == "given" and swatch_weighed
    grams = fabric.swatch_grams if weighed else fabric.swatch_grams * now.tex / before.tex
    written = fabric.as_written and replace(fabric.as_written, swatch_grams=fabric.as_written.swatch_grams * now.tex / before.tex)
    return replace(fabric, swatch_grams=grams, as_written=written, start_dial=True)


def _reckoned(
    fabric: Fabric,
    before: Mapping[str, Fabric | None],
    now: Mapping[str, Fabric | None],
    own: Iterable[str],
    yarns: Mapping[str, tuple[Yarn | None, Yarn | None]],
) -> Fabric:
    """The fabric at the ratio of one of the `own` in its yarn: of the same stitch if there is such a one, else the first."""
    alike = [name for name in own if _same_yarn(before[name], fabric, yarns)]
    model = next((n for n in alike if _stitch(before[n]) == _stitch(fabric)), next(iter(alike), None))
    old, new = (before[model], now[model]) if model is not None else (None, None)
    if model is None or old is None or new is None:
        return fabric
    stitches = fabric.stitches_per_cm * new.stitches_per_cm / old.stitches_per_cm
    rows = fabric.rows_per_cm * new.rows_per_cm / old.rows_per_cm
    if not all(FEWEST_PER_CM <= density <= MOST_PER_CM for density in (stitches, rows)):
        return fabric
    return _at(fabric, TensionCounts(stitches * SWATCH_CM, rows * SWATCH_CM), "reckoned", model)


def _one_swatch(one: Fabric | None, other: Fabric | None) -> bool:
    """Whether two fabrics have one swatch."""
    return one is not None and other is not None and (one.swatch_of or one.name) == (other.swatch_of or other.name)


def _as_mate(fabric: Fabric, mate: Fabric | None, yarns: Mapping[str, tuple[Yarn | None, Yarn | None]]) -> Fabric:
    """The fabric by the swatch that was given for another in another yarn: as heavy as its own yarn makes it."""
    own, its = yarns.get(fabric.yarn, (None, None))[1], yarns.get(mate.yarn, (None, None))[1] if mate is not None else None
    if mate is None or own is None or its is None:
        return fabric
    share = own.tex / its.tex
    written = mate.as_written and replace(
        mate.as_written, name=fabric.name, yarn=fabric.yarn, swatch_grams=mate.as_written.swatch_grams * share
    )
    return replace(
        mate,
        name=fabric.name,
        yarn=fabric.yarn,
        swatch_grams=mate.swatch_grams * share,
        swatch_of=fabric.swatch_of,
        origin=replace(mate.origin, path=f"{mate.origin.path.partition(' ')[0]} {fabric.name}"),
        as_written=written,
    )


def _stitch(fabric: Fabric | None) -> tuple[str, int, str]:
    return (fabric.stitch, fabric.rib_every, fabric.chart) if fabric is not None else ("", 0, "")


def _same_yarn(one: Fabric | None, other: Fabric, yarns: Mapping[str, tuple[Yarn | None, Yarn | None]]) -> bool:
    """Whether both are in one yarn, perhaps in two colours: as thick as each other in the source and now."""
    if one is None:
        return False
    if one.yarn == other.yarn:
        return True
    of_one, of_other = yarns.get(one.yarn, (None, None)), yarns.get(other.yarn, (None, None))
    pairs = [(a, b) for a, b in zip(of_one, of_other, strict=True) if a is not None and b is not None]
    return len(pairs) == 2 and all(abs(a.tex - b.tex) <= SAME_YARN * max(a.tex, b.tex) for a, b in pairs)


def _tell_left(
    now: Mapping[str, Fabric | None],
    own: Mapping[str, tuple[str, str]],
    yarns: Mapping[str, tuple[Yarn | None, Yarn | None]],
    changes: Changes,
    used: frozenset[str],
    findings: Findings,
) -> None:
    """Warns of fabrics that keep the source's tension though the knitter's differ from the source in yarn or tension."""
    left = [f for f in now.values() if f is not None and f.basis == "source" and f.name in used]
    other_yarn = [f for f in left if (pair := yarns.get(f.yarn)) and pair[0] != pair[1] and _thicker(*pair)]
    for fabric in other_yarn:
        typed = next((t for t in changes.yarns if t == fabric.yarn), next(iter(changes.yarns), ""))
        findings.report(
            "tension-not-yours/other-yarn",
            notes=("measured-in",),
            helps=("swatch",),
            severity=Severity.WARNING,
            given=("yarn", typed),
            fabric=fabric.name,
            stitches=Amount(fabric.stitches_per_cm * 10, "stitches"),
            rows=Amount(fabric.rows_per_cm * 10, "rows"),
        )
    rest = [f for f in left if f not in other_yarn]
    if own and rest:
        first, came_by = next(iter(own.items()))
        findings.report(
            "tension-not-yours/beside-own",
            notes=tuple(said("not-reckoned", fabric=f.name, yarn=f.yarn) for f in rest),
            helps=tuple(said("swatch", fabric=f.name) for f in rest),
            severity=Severity.WARNING,
            given=came_by,
            fabrics=tuple(f.name for f in rest),
            single=len(rest) == 1,
            own=first,
        )


def _thicker(before: Yarn | None, now: Yarn | None) -> bool:
    """Whether the yarn is another in more than its name."""
    return before is not None and now is not None and abs(before.tex - now.tex) > SAME_YARN * before.tex
