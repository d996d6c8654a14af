"""Whether a swatch, the yarn it is knitted in and what it weighs can be true together: checked against each other by the relations
of plain knitting, and told where they are too far apart to be a matter of stitch or hand."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping

from walewright.design.findings import Findings
from walewright.design.model import Fabric, Yarn
from walewright.record import record
from walewright.report.model import Severity
from walewright.report.said import Amount, Said, said
from walewright.source import syntax

KS = 21.6
"""Stitches to the square cm times the square of a stitch's yarn in cm: relaxed plain knitting, Munden 1959, Journal of the Textile
Institute, as quoted in lecture slides, fr.scribd.com/presentation/143644499."""

USUAL_COVER = (1.3, 1.5)
"""Tightness factor of plain knitting, the root of tex over the mm of yarn in a stitch: what is usual,
scribd.com/document/469140556."""

LEAST_COVER, MOST_COVER = 0.3, 2.0
"""The same text gives 0.3 as the least for ribs, the loosest there. Plain knitting jams where a stitch has 16.7 times the yarn's
thickness (2016, doi 10.1177/0040517516641358), with wool at about 1.5; a third more leaves room for other fibres."""

SHARES = {"chart": (0.5, 3.0)}
"""By stitch, between which shares of plain knitting the yarn to a stitch may lie: floats of another yarn weigh as much again, tucks
and cables half as much (common practice)."""
PLAIN_SHARES = (0.6, 1.7)
"""Of everything else. What is known of the relation's constants, dry to fully relaxed, moves the yarn by 6 % (19.0 to 23.1)."""


@record
class _Swatched:
    """A fabric in its yarn, with the line of its swatch. `plain_cm`: yarn to a stitch in plain knitting so dense; `cover`: the
    tightness factor that this makes of the yarn."""

    fabric: Fabric
    yarn: Yarn
    node: syntax.Swatch
    tex: float

    @property
    def plain_cm(self) -> float:
        return math.sqrt(KS / (self.fabric.stitches_per_cm * self.fabric.rows_per_cm))

    @property
    def cover(self) -> float:
        return math.sqrt(self.tex) / (10 * self.plain_cm)

    @property
    def likely(self) -> bool:
        return LEAST_COVER <= self.cover <= MOST_COVER

    @property
    def metres(self) -> tuple[float, float]:
        """Least and most metres to a ball of such a yarn that could be knitted so."""
        most, least = ((cover * 10 * self.plain_cm) ** 2 for cover in (MOST_COVER, LEAST_COVER))
        return self.yarn.ball_grams / most * 1000, self.yarn.ball_grams / least * 1000


def look_at_swatches(
    nodes: Iterable[syntax.FabricBlock],
    fabrics: Mapping[str, Fabric | None],
    yarns: Mapping[str, Yarn | None],
    yarn_nodes: Iterable[syntax.YarnLine],
    findings: Findings,
) -> None:
    """Tell of yarns that no such swatch is knitted in, and of swatches that weigh, or take, much more or less than they can.

    Where the yarn cannot be right nothing is said of the weight, which is judged by it."""
    swatched = list(_swatched(nodes, fabrics, yarns))
    for node in yarn_nodes:
        of = [one for one in swatched if one.yarn.name == node.name]
        unlikely = [one for one in of if not one.likely]
        if unlikely and not node.strands:
            _unlikely_yarn(node, unlikely, all_of_them=len(unlikely) == len(of), findings=findings)
    for one in swatched:
        if one.likely:
            _look_at_length(one, findings)


def _swatched(
    nodes: Iterable[syntax.FabricBlock], fabrics: Mapping[str, Fabric | None], yarns: Mapping[str, Yarn | None]
) -> Iterator[_Swatched]:
    for node in nodes:
        fabric = fabrics.get(node.name)
        swatch = next((s for s in node.body if isinstance(s, syntax.Swatch)), None)
        own = yarns.get(fabric.yarn) if fabric is not None else None
        if fabric is not None and own is not None and swatch is not None:
            yield _Swatched(fabric, own, swatch, _tex(fabric, own, yarns))


def _tex(fabric: Fabric, own: Yarn, yarns: Mapping[str, Yarn | None]) -> float:
    """Of stripes, what their yarns weigh on average."""
    rows = [(found.tex, rows) for name, rows in fabric.stripes if (found := yarns.get(name)) is not None]
    return sum(tex * count for tex, count in rows) / sum(count for _, count in rows) if rows else own.tex


def _unlikely_yarn(node: syntax.YarnLine, unlikely: list[_Swatched], all_of_them: bool, findings: Findings) -> None:
    first = unlikely[0]
    yarn, knit = first.yarn, first.fabric
    thick = first.cover > MOST_COVER
    least, most = (round(metres) if metres >= 10 else round(metres, 1) for metres in first.metres)
    yarn_label = (node.span, said("ball", tex=round(yarn.tex)))
    swatch_labels = [(one.node.span, said("swatch", fabric=one.fabric.name, density=_density(one.fabric))) for one in unlikely[:3]]
    helps = tuple(
        said("metres", length=Amount(yarn.ball_metres * factor, "m"), unit=unit)
        for unit, factor in (("mm", 1000), ("cm", 100))
        if node.ball_length is not None and node.ball_length.unit == unit and least <= yarn.ball_metres * factor <= most
    )
    findings.report(
        "unlikely-yarn",
        *(yarn_label, *swatch_labels) if all_of_them else (*swatch_labels, yarn_label),
        notes=("metres-usual", "tightness"),
        helps=helps or ("look",),
        severity=Severity.WARNING,
        yarn=yarn.name,
        grams=Amount(yarn.ball_grams, "g"),
        metres=Amount(yarn.ball_metres, "m"),
        thick=thick,
        fabric=knit.name,
        least=Amount(least, "m"),
        most=Amount(most, "m"),
        cover=first.cover,
        usual_least=USUAL_COVER[0],
        usual_most=USUAL_COVER[1],
    )


def _look_at_length(one: _Swatched, findings: Findings) -> None:
    """Yarn to a stitch, by the swatch's weight or as measured, beside that of plain knitting."""
    knit = one.fabric
    stitches = knit.swatch_stitches * knit.swatch_rows
    least, most = SHARES.get(knit.stitch, PLAIN_SHARES)
    usual = stitches * one.plain_cm * one.tex / 1e5
    if knit.swatch_grams and not least <= knit.swatch_grams / usual <= most:
        loop = knit.swatch_grams / stitches / one.tex * 1e5
        area = knit.swatch_width_cm * knit.swatch_height_cm
        findings.report(
            "unlikely-swatch/weight",
            (one.node.span, "loop"),
            notes=("plain",),
            helps=("look",),
            severity=Severity.WARNING,
            fabric=knit.name,
            grams=Amount(knit.swatch_grams, "g"),
            expected=round(usual) if usual >= 10 else round(usual, 1),
            loop=Amount(loop),
            dense=knit.swatch_grams / area * 1e4,
            yarn=one.yarn.name,
            plain_loop=Amount(one.plain_cm),
            usual=usual / area * 1e4,
        )
    if knit.loop_cm and not least <= knit.loop_cm / one.plain_cm <= most:
        findings.report(
            "unlikely-swatch/loop",
            (one.node.span, "density"),
            helps=("look",),
            severity=Severity.WARNING,
            fabric=knit.name,
            loop=Amount(knit.loop_cm),
            plain_loop=Amount(one.plain_cm),
            density=_density(knit),
        )


def _density(fabric: Fabric) -> Said:
    stitches, rows = (
        Amount(round(10 * per_cm, 1), unit) for per_cm, unit in ((fabric.stitches_per_cm, "stitches"), (fabric.rows_per_cm, "rows"))
    )
    return said("stitches-and-rows", stitches=stitches, rows=rows)
