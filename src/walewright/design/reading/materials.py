"""Yarns, and fabrics with their swatches."""

from __future__ import annotations

import re
from collections.abc import Mapping

from walewright.design.findings import Findings, within
from walewright.design.model import Chart, Fabric, Origin, Yarn
from walewright.design.reading.counts import tex
from walewright.design.reading.units import LENGTH, MASS, ROWS, STITCHES
from walewright.design.reading.values import measured
from walewright.record import record
from walewright.report.near import near
from walewright.report.said import Amount, Said, said
from walewright.source import syntax
from walewright.trade.fabrics import FABRIC_SIDES, FITS, STITCH_KINDS
from walewright.trade.fibres import FIBRES, OTHER_NAMES, FibreKind

COLOUR = re.compile(r"#[0-9a-fA-F]{6}")

SHORTEST_LOOP_CM, LONGEST_LOOP_CM = 0.2, 10.0
"""Yarn to a stitch: the finest beds lay about 0.5 cm, the coarsest about 3."""
MOST_EDGE = 50
MOST_STRIPE_ROWS = 1000


FEWEST_PER_CM = 0.3
MOST_PER_CM = 10.0
"""Stitches or rows to the centimetre: the finest beds reach about 4 stitches and 6 rows, the coarsest hardly 1."""

HELPERS = ("waste", "ravel")
"""Yarns that hold loops for a while and come away again."""


def yarn(node: syntax.YarnLine, findings: Findings) -> Yarn | None:
    """A yarn with the weight of its ball, and the length that is said or that follows from its count."""
    owner = said("yarn", yarn=node.name)
    if node.ball_weight is None or reserved(node, findings):
        return None
    grams = measured(node.ball_weight, MASS, said("ball-of", of=owner), findings)
    metres = _metres(node, owner, grams, findings)
    fibres = fibres_of(node, findings)
    if not colour_of(node, findings) or grams is None or metres is None or fibres is None:
        return None
    return Yarn(
        node.name, node.label, grams, metres, Origin(f"yarn {node.name}", node.span), node.colour or "", strands=(), fibres=fibres
    )


def fibres_of(node: syntax.YarnLine, findings: Findings) -> tuple[FibreKind, ...] | None:
    """What a yarn is spun of, each once; None where that is told to be no fibre."""
    known: dict[str, FibreKind] = {**{kind: kind for kind in FIBRES}, **OTHER_NAMES}
    place = node.place_of("fibres") or node.span
    wrong = [name for name in node.fibres if name not in known]
    for name in wrong:
        meant = near(name, known) or ""
        helps = ("did-you-mean", "one-of") if meant else ("one-of",)
        findings.report(
            "unknown-fibre",
            (place, "fibre"),
            helps=helps,
            name=name,
            near=meant,
            known=tuple(said("fibre", fibre=one) for one in sorted(known)),
        )
    return None if wrong else tuple(dict.fromkeys(known[name] for name in node.fibres))


def reserved(node: syntax.YarnLine, findings: Findings) -> bool:
    """Whether it has the name of a helping yarn; told."""
    if node.name in HELPERS:
        findings.report("reserved-name/yarn", (node.span, "own"), helps=("rename",), name=node.name)
        findings.lose(node.name)
    return node.name in HELPERS


def colour_of(node: syntax.YarnLine, findings: Findings) -> bool:
    """Whether the colour of a yarn, if it has one, can be read; told where not."""
    if node.colour is None or COLOUR.fullmatch(node.colour):
        return True
    owner = said("yarn", yarn=node.name)
    findings.report(
        "bad-colour", (node.place_of("colour") or node.span, "colour"), helps=("write",), colour=node.colour, owner=owner
    )
    return False


def _metres(node: syntax.YarnLine, owner: Said, grams: float | None, findings: Findings) -> float | None:
    """Metres in a ball."""
    if node.ball_length is not None:
        length = measured(node.ball_length, LENGTH, said("ball-of", of=owner), findings)
        return length / 100 if length is not None else None
    if node.count is None:
        findings.report("missing-part/ball", (node.span, "here"), helps=("write",), owner=owner)
        return None
    weight = tex(node.count, owner, node.count.span, findings)
    return grams / weight * 1000 if grams is not None and weight is not None else None


def fabric(
    node: syntax.FabricBlock, yarns: Mapping[str, Yarn | None], charts: Mapping[str, Chart | None], findings: Findings
) -> Fabric | None:
    """A fabric: its stitch in a yarn (or stripes of several) at a tension, and its swatch."""
    owner = said("fabric", fabric=node.name)
    stitch = findings.one("stitch", (s for s in node.body if isinstance(s, syntax.Stitch)), owner)
    swatch = findings.one("swatch", (s for s in node.body if isinstance(s, syntax.Swatch)), owner)
    face = findings.one("right side", (s for s in node.body if isinstance(s, syntax.RightSide)), owner)
    lacking = [w for w, s in (("stitch", stitch), ("swatch", swatch)) if s is None]
    if lacking and not any(isinstance(s, syntax.Broken) for s in node.body):
        findings.report("missing-part/fabric", (node.span, "here"), owner=owner, lacking=tuple(lacking))
    if face is not None and face.face not in FABRIC_SIDES:
        findings.unknown("side of a fabric", face.face, face.span, FABRIC_SIDES)
        return None
    worked = _stitch(stitch, yarns, charts, findings) if stitch else False
    measures = block(swatch, owner, findings) if swatch else None
    if stitch is None or not worked or measures is None:
        return None
    return Fabric(
        name=node.name,
        stitch=stitch.stitch,
        rib_every=stitch.every or 0,
        yarn=stitch.stripes[0].yarn if stitch.stripes else stitch.yarn,
        tension=stitch.tension,
        swatch_stitches=measures.stitches,
        swatch_rows=measures.rows,
        swatch_width_cm=measures.width,
        swatch_height_cm=measures.height,
        swatch_grams=measures.grams,
        origin=Origin(f"fabric {node.name}", node.span),
        loop_cm=measures.loop,
        chart=stitch.chart or "",
        edge=stitch.edge or 0,
        fit=stitch.fit or "whole",
        stripes=tuple((s.yarn, s.rows) for s in stitch.stripes),
        right_side=face.face if face is not None else "knit",
        swatch_of=node.like,
    )


def _stitch(node: syntax.Stitch, yarns: Mapping[str, Yarn | None], charts: Mapping[str, Chart | None], findings: Findings) -> bool:
    """Whether a stitch can be worked as it says."""
    if node.stitch not in STITCH_KINDS:
        findings.unknown("stitch", node.stitch, node.span, STITCH_KINDS)
        return False
    if node.stitch == "stripes":
        return _stripes(node, yarns, findings)
    sound = findings.look_up("yarn", node.yarn, node.span, yarns) is not None
    if node.stitch == "latched rib" and (node.every or 0) < 2:
        findings.report("bad-rib", (node.span, "every" if node.every else "every-needle"), helps=("wider",), every=node.every or 0)
        return False
    return (node.stitch != "chart" or _charted(node, charts, findings)) and sound


def _stripes(node: syntax.Stitch, yarns: Mapping[str, Yarn | None], findings: Findings) -> bool:
    if not node.stripes:
        findings.report("missing-part/stripes", (node.span, "none"))
        return False
    sound = True
    for stripe in node.stripes:
        sound = findings.look_up("yarn", stripe.yarn, stripe.span, yarns) is not None and sound
        if not 1 <= stripe.rows <= MOST_STRIPE_ROWS:
            findings.report(
                "not-positive/stripe-rows" if stripe.rows < 1 else "absurd-count/stripe-rows",
                (stripe.span, "rows"),
                notes=("possible",),
                helps=within(stripe.rows, 1, MOST_STRIPE_ROWS),
                rows=stripe.rows,
                most=MOST_STRIPE_ROWS,
            )
            sound = False
    return sound


def _charted(node: syntax.Stitch, charts: Mapping[str, Chart | None], findings: Findings) -> bool:
    """Whether the chart is there and can lie in the fabric as it says."""
    chart = findings.look_up("chart", node.chart or "", node.span, charts)
    fit = node.fit or "whole"
    if fit not in FITS:
        findings.unknown("way to lie on the needles", fit, node.span, FITS)
        return False
    edge = node.edge or 0
    if not 0 <= edge <= MOST_EDGE:
        findings.report(
            "not-positive/edge-stitches" if edge < 0 else "absurd-count/edge-stitches",
            (node.span, "edge"),
            notes=("possible",),
            helps=within(edge, 0, MOST_EDGE),
            edge=edge,
            most=MOST_EDGE,
        )
        return False
    if chart is None:
        return False
    borders = chart.before + chart.after
    if fit != "whole" and borders:
        findings.report(
            "border-needs-whole",
            (node.span, "fit"),
            (chart.origin.span, "columns"),
            helps=("whole",),
            chart=chart.name,
            borders=borders,
            fit=fit,
            before=chart.before,
            after=chart.after,
        )
        return False
    main = next((k for k in chart.key if k.cell.yarn == node.yarn), None)
    if main is not None and not chart.picture:
        findings.report(
            "chart-in-own-yarn/fabric",
            (node.span, "in"),
            (main.origin.span, "symbol"),
            helps=("knit",),
            symbol=main.symbol,
            chart=chart.name,
            yarn=node.yarn,
        )
        return False
    return True


@record
class SwatchBlock:
    """A swatch in numbers; cm and g, what was not said 0."""

    stitches: float
    rows: float
    width: float
    height: float
    grams: float
    loop: float


def block(node: syntax.Swatch, owner: Said, findings: Findings) -> SwatchBlock | None:
    """What a swatch says, in numbers; None when told why not."""
    what = said("swatch-of", of=owner)
    stitches = measured(node.stitches, STITCHES, what, findings)
    rows = measured(node.rows, ROWS, what, findings)
    width = measured(node.width, LENGTH, what, findings)
    height = measured(node.height, LENGTH, what, findings)
    grams = measured(node.weight, MASS, what, findings) if node.weight else 0.0
    loop = measured(node.loop, LENGTH, said("loop-of", of=owner), findings) if node.loop else 0.0
    if stitches is None or rows is None or width is None or height is None or grams is None or loop is None:
        return None
    for count, length, unit in ((stitches, width, "stitches"), (rows, height, "rows")):
        density = count / length
        if not FEWEST_PER_CM <= density <= MOST_PER_CM:
            findings.report(
                "absurd-swatch/density",
                (node.span, "in"),
                notes=("possible",),
                helps=("look",),
                what=what,
                density=Amount(density * 10, unit),
                count=Amount(count, unit),
                length=Amount(length),
                least=Amount(FEWEST_PER_CM * 10, ""),
                most=Amount(MOST_PER_CM * 10, unit),
            )
            return None
    if loop and not SHORTEST_LOOP_CM <= loop <= LONGEST_LOOP_CM:
        findings.report(
            "absurd-swatch/loop",
            (node.span, "loop"),
            notes=("possible",),
            helps=("look",),
            what=what,
            loop=Amount(loop),
            least=Amount(SHORTEST_LOOP_CM),
            most=Amount(LONGEST_LOOP_CM),
        )
        return None
    return SwatchBlock(stitches, rows, width, height, grams, loop)
