"""Yarns, and fabrics with their swatches."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from walewright.design.counts import tex
from walewright.design.findings import Findings, amount
from walewright.design.model import Chart, Fabric, Origin, Yarn
from walewright.design.units import LENGTH, MASS, ROWS, STITCHES
from walewright.design.values import measured
from walewright.source import syntax

STITCHES_KNOWN = ("stocking stitch", "latched rib", "chart", "stripes")
FITS_KNOWN = ("whole", "centred", "balanced")
FACES_KNOWN = ("knit", "purl")
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


def yarn(node: syntax.Yarn, findings: Findings) -> Yarn | None:
    """A yarn with the weight of its ball, and the length that is said or that follows from its count."""
    owner = f"yarn `{node.name}`"
    if node.name in HELPERS:
        findings.tell(
            "reserved-name",
            f"`{node.name}` is what the machine's own helping yarn is called on the page",
            (node.span, "a yarn of the garment"),
            helps=(f"call it by another name, such as `{node.name}_yarn`",),
        )
        findings.lose(node.name)
        return None
    grams = measured(node.ball_weight, MASS, f"the ball of {owner}", findings)
    metres = _metres(node, owner, grams, findings)
    if node.colour is not None and not COLOUR.fullmatch(node.colour):
        findings.tell(
            "bad-colour",
            f"`{node.colour}` is no colour of {owner}",
            (node.span, "its colour"),
            helps=("write six digits or letters a to f after a #, such as `#23395d`",),
        )
        return None
    if grams is None or metres is None:
        return None
    return Yarn(node.name, node.label, grams, metres, Origin(f"yarn {node.name}", node.span), node.colour or "")


def _metres(node: syntax.Yarn, owner: str, grams: float | None, findings: Findings) -> float | None:
    """Metres in a ball."""
    if node.ball_length is not None:
        length = measured(node.ball_length, LENGTH, f"the ball of {owner}", findings)
        return length / 100 if length is not None else None
    if node.count is None:
        findings.tell(
            "missing-part",
            f"{owner} has neither a length nor a count",
            (node.span, "this yarn"),
            helps=("write what a ball weighs and how long it is, or its count",),
        )
        return None
    weight = tex(node.count, owner, node.count.span, findings)
    return grams / weight * 1000 if grams is not None and weight is not None else None


def fabric(
    node: syntax.Fabric, yarns: Mapping[str, Yarn | None], charts: Mapping[str, Chart | None], findings: Findings
) -> Fabric | None:
    """A fabric: its stitch in a yarn (or stripes of several) at a tension, and its swatch."""
    owner = f"fabric `{node.name}`"
    stitch = findings.one("stitch", (s for s in node.body if isinstance(s, syntax.Stitch)), owner)
    swatch = findings.one("swatch", (s for s in node.body if isinstance(s, syntax.Swatch)), owner)
    face = findings.one("right side", (s for s in node.body if isinstance(s, syntax.RightSide)), owner)
    lacking = [w for w, s in (("stitch", stitch), ("swatch", swatch)) if s is None]
    if lacking and not any(isinstance(s, syntax.Broken) for s in node.body):
        findings.tell("missing-part", f"{owner} has no {' and no '.join(lacking)}", (node.span, "this fabric"))
    if face is not None and face.face not in FACES_KNOWN:
        findings.unknown("side of a fabric", face.face, face.span, FACES_KNOWN)
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
    )


def _stitch(node: syntax.Stitch, yarns: Mapping[str, Yarn | None], charts: Mapping[str, Chart | None], findings: Findings) -> bool:
    """Whether a stitch can be worked as it says."""
    if node.stitch not in STITCHES_KNOWN:
        findings.unknown("stitch", node.stitch, node.span, STITCHES_KNOWN)
        return False
    if node.stitch == "stripes":
        return _stripes(node, yarns, findings)
    sound = findings.look_up("yarn", node.yarn, node.span, yarns) is not None
    if node.stitch == "latched rib" and (node.every or 0) < 2:
        findings.tell("bad-rib", "a latched rib is every 2nd needle or wider apart", (node.span, f"every {node.every or 'needle'}"))
        return False
    return (node.stitch != "chart" or _charted(node, charts, findings)) and sound


def _stripes(node: syntax.Stitch, yarns: Mapping[str, Yarn | None], findings: Findings) -> bool:
    if not node.stripes:
        findings.tell("missing-part", "stripes need a yarn and rows at least", (node.span, "no stripe"))
        return False
    sound = True
    for stripe in node.stripes:
        sound = findings.look_up("yarn", stripe.yarn, stripe.span, yarns) is not None and sound
        if not 1 <= stripe.rows <= MOST_STRIPE_ROWS:
            findings.tell(
                "not-positive" if stripe.rows < 1 else "absurd-count",
                f"a stripe of {stripe.rows} rows",
                (stripe.span, f"{stripe.rows} rows"),
                notes=(f"1 to {MOST_STRIPE_ROWS} are possible",),
            )
            sound = False
    return sound


def _charted(node: syntax.Stitch, charts: Mapping[str, Chart | None], findings: Findings) -> bool:
    """Whether the chart is there and can lie in the fabric as it says."""
    chart = findings.look_up("chart", node.chart or "", node.span, charts)
    fit = node.fit or "whole"
    if fit not in FITS_KNOWN:
        findings.unknown("way to lie on the needles", fit, node.span, FITS_KNOWN)
        return False
    edge = node.edge or 0
    if not 0 <= edge <= MOST_EDGE:
        findings.tell(
            "not-positive" if edge < 0 else "absurd-count",
            f"{edge} edge stitches",
            (node.span, f"{edge} edge stitches"),
            notes=(f"0 to {MOST_EDGE} are possible",),
        )
        return False
    if chart is None:
        return False
    borders = chart.before + chart.after
    if fit != "whole" and borders:
        findings.tell(
            "border-needs-whole",
            f"chart `{chart.name}` has {borders} column{'' if borders == 1 else 's'} beside its repeat, and repeats that are {fit} "
            "have no end to put them at",
            (node.span, fit),
            (chart.origin.span, f"{chart.before} columns before the repeat, {chart.after} after it"),
            helps=("write `whole repeats`, or make the repeat the whole chart",),
        )
        return False
    main = next((k for k in chart.key if k.cell.yarn == node.yarn), None)
    if main is not None and not chart.picture:
        findings.tell(
            "chart-in-own-yarn",
            f"`{main.symbol}` of chart `{chart.name}` is knit in `{node.yarn}`, which is the yarn of the fabric itself",
            (node.span, f"in `{node.yarn}`"),
            (main.origin.span, f"`{main.symbol}`"),
            helps=("let that symbol mean `knit`: these stitches keep the yarn of the fabric",),
        )
        return False
    return True


@dataclass(frozen=True, slots=True)
class Block:
    """A swatch in numbers; cm and g, what was not said 0."""

    stitches: float
    rows: float
    width: float
    height: float
    grams: float
    loop: float


def block(node: syntax.Swatch, owner: str, findings: Findings) -> Block | None:
    """What a swatch says, in numbers; None when told why not."""
    what = f"the swatch of {owner}"
    stitches = measured(node.stitches, STITCHES, what, findings)
    rows = measured(node.rows, ROWS, what, findings)
    width = measured(node.width, LENGTH, what, findings)
    height = measured(node.height, LENGTH, what, findings)
    grams = measured(node.weight, MASS, what, findings) if node.weight else 0.0
    loop = measured(node.loop, LENGTH, f"the yarn to a stitch of {owner}", findings) if node.loop else 0.0
    if stitches is None or rows is None or width is None or height is None or grams is None or loop is None:
        return None
    for count, length, unit in ((stitches, width, "stitches"), (rows, height, "rows")):
        density = count / length
        if not FEWEST_PER_CM <= density <= MOST_PER_CM:
            findings.tell(
                "absurd-swatch",
                f"{what} has {amount(density * 10, unit)} to 10 cm",
                (node.span, f"{amount(count, unit)} in {amount(length)}"),
                notes=(f"a bed knits {amount(FEWEST_PER_CM * 10, '')} to {amount(MOST_PER_CM * 10, unit)} to 10 cm",),
                helps=("look at the unit, and at which number is which",),
            )
            return None
    if loop and not SHORTEST_LOOP_CM <= loop <= LONGEST_LOOP_CM:
        findings.tell(
            "absurd-swatch",
            f"{what} has {amount(loop)} of yarn to a stitch",
            (node.span, f"{amount(loop)} to a stitch"),
            notes=(f"a bed lays {amount(SHORTEST_LOOP_CM)} to {amount(LONGEST_LOOP_CM)}",),
            helps=("look at the unit: it is the length of one stitch, not of a row",),
        )
        return None
    return Block(stitches, rows, width, height, grams, loop)
