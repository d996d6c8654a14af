"""Yarns, fabrics with their swatches, and edgings."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.changes import FEWEST_PER_CM, MOST_PER_CM
from walewright.design.findings import Findings, amount
from walewright.design.model import Edging, Fabric, Origin, Yarn
from walewright.design.places import POSITIVE, Place
from walewright.design.units import LENGTH, MASS, ROWS, STITCHES, Dimension
from walewright.design.values import Scope, literal
from walewright.source import syntax

STITCHES_KNOWN = ("stocking stitch", "latched rib")
WHEN_KNOWN = ("after", "first")
CAST_OFFS_KNOWN = ("chain",)


def yarn(node: syntax.Yarn, findings: Findings) -> Yarn | None:
    """A yarn with the weight and the length of its ball."""
    owner = f"yarn `{node.name}`"
    grams = measured(node.ball_weight, MASS, f"the ball of {owner}", findings)
    length = measured(node.ball_length, LENGTH, f"the ball of {owner}", findings)
    if grams is None or length is None:
        return None
    return Yarn(node.name, node.label, grams, length / 100, Origin(f"yarn {node.name}", node.span))


def measured(number: syntax.Number, wanted: Dimension, what: str, findings: Findings) -> float | None:
    """A literal that must be of one dimension and above zero."""
    read = literal(number, findings)
    if read is None:
        return None
    value, dimension = read
    if number.unit is None:
        findings.tell("no-unit", f"{what} needs a unit", (number.span, "a bare number"), helps=(f"write it in {wanted.unit}",))
    elif dimension != wanted:
        findings.tell("wrong-unit", f"{what}: this must be {wanted.kind}", (number.span, dimension.kind))
    elif value <= 0:
        findings.tell("not-positive", f"{what} must be more than zero", (number.span, amount(value, wanted.unit)))
    else:
        return value
    return None


def fabric(node: syntax.Fabric, yarns: Mapping[str, Yarn | None], findings: Findings) -> Fabric | None:
    """A fabric: its stitch in a yarn at a tension, and its swatch."""
    owner = f"fabric `{node.name}`"
    stitch = findings.one("stitch", (s for s in node.body if isinstance(s, syntax.Stitch)), owner)
    swatch = findings.one("swatch", (s for s in node.body if isinstance(s, syntax.Swatch)), owner)
    lacking = [w for w, s in (("stitch", stitch), ("swatch", swatch)) if s is None]
    if lacking and not any(isinstance(s, syntax.Broken) for s in node.body):
        findings.tell("missing-part", f"{owner} has no {' and no '.join(lacking)}", (node.span, "this fabric"))
    every = _stitch(stitch, yarns, findings) if stitch else None
    block = _swatch(swatch, owner, findings) if swatch else None
    if stitch is None or every is None or block is None:
        return None
    return Fabric(node.name, stitch.stitch, every, stitch.yarn, stitch.tension, *block, Origin(f"fabric {node.name}", node.span))


def _stitch(node: syntax.Stitch, yarns: Mapping[str, Yarn | None], findings: Findings) -> int | None:
    """Every how many needles the rib is latched, 0 for none."""
    known = findings.look_up("yarn", node.yarn, node.span, yarns)
    if node.stitch not in STITCHES_KNOWN:
        findings.unknown("stitch", node.stitch, node.span, STITCHES_KNOWN)
        return None
    every = node.every or 0
    if node.stitch == "latched rib" and every < 2:
        findings.tell("bad-rib", "a latched rib is every 2nd needle or wider apart", (node.span, f"every {every or 'needle'}"))
        return None
    return every if known else None


def _swatch(node: syntax.Swatch, owner: str, findings: Findings) -> tuple[float, float, float, float, float] | None:
    what = f"the swatch of {owner}"
    stitches = measured(node.stitches, STITCHES, what, findings)
    rows = measured(node.rows, ROWS, what, findings)
    width = measured(node.width, LENGTH, what, findings)
    height = measured(node.height, LENGTH, what, findings)
    grams = measured(node.weight, MASS, what, findings) if node.weight else 0.0
    if stitches is None or rows is None or width is None or height is None or grams is None:
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
    return stitches, rows, width, height, grams


def edging(node: syntax.Edging, fabrics: Mapping[str, Fabric | None], scope: Scope, findings: Findings) -> Edging | None:
    """An edging: a fabric, so and so deep, with its way of casting off."""
    cloth = findings.look_up("fabric", node.fabric, node.span, fabrics)
    depth = Place(scope, findings, cloth).up(node.depth, f"the depth of edging `{node.name}`", POSITIVE)
    sound = True
    for what, word, known in (("way of adding an edging", node.when, WHEN_KNOWN), ("cast-off", node.cast_off, CAST_OFFS_KNOWN)):
        if word not in known:
            findings.unknown(what, word, node.span, known)
            sound = False
    if cloth is None or depth is None or not sound:
        return None
    return Edging(node.name, node.fabric, depth, node.when, node.cast_off, Origin(f"edging {node.name}", node.span))
