"""Where each option of a line means something. What is said where it means nothing is an error there.

`MEANINGS` has every field that a part of a line can fill, by the statement it is a part of; a part of the grammar that is not
entered here fails the tests. An entry looks at the line and at what is written around it, and says why the option is idle there and
what to do. Options that mean something in most places but not at some values (nothing wide, nothing deep) are reported where the
values are known, by `Findings.idle`; their entry is `BY_VALUE`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from walewright.design.findings import Findings
from walewright.source import syntax


@dataclass(frozen=True, slots=True)
class Idle:
    """Why an option is without effect where it stands, as a sentence without its full stop, and what to do instead."""

    why: str
    help: str


@dataclass(frozen=True, slots=True)
class Around:
    """What a line stands in (`owner`, the statement that its block belongs to) and what else is written in the source."""

    owner: syntax.Node | None
    panels: frozenset[str]
    """Fabrics that are used, and only for panels."""


Meaning = Callable[[Any, Around], Idle | None]


def EVERYWHERE(_: object, __: Around) -> Idle | None:
    """Means something wherever it can stand."""
    return None


def BY_VALUE(_: object, __: Around) -> Idle | None:
    """Means something at most values; where it does not is told when the values are worked out."""
    return None


LEAVE_OUT = "leave that out"


def _cast_off(node: syntax.Edging, _: Around) -> Idle | None:
    if node.when != "first":
        return None
    return Idle(
        f"edging `{node.name}` is knitted first, and the piece goes on from its stitches: nothing of it is cast off",
        f"{LEAVE_OUT}, or let the edging be added after",
    )


def _centre_stitch(node: syntax.Piece, _: Around) -> Idle | None:
    if node.mirror_of is None:
        return None
    return Idle(
        f"piece `{node.name}` has a centre stitch if `{node.mirror_of}`, whose mirror image it is, has one",
        f"{LEAVE_OUT}, or say it of `{node.mirror_of}`",
    )


def _facing(node: syntax.Start, _: Around) -> Idle | None:
    if node.way == "along":
        return None
    return Idle(
        "this start hangs on no edge of another piece, so no side of one faces anybody",
        f"{LEAVE_OUT}, or begin the piece `along` an edge",
    )


def _shaping(node: syntax.Edge, _: Around) -> Idle | None:
    """A tool, or two stitches at once. How many stitches a step in cm has depends on the tension: of such a one nothing is told."""
    if node.path == "straight":
        return Idle(
            f"the edge goes straight to `{node.to_level}`, and nothing is shaped there",
            f"{LEAVE_OUT}, or let the edge slope or curve",
        )
    each = _stitches(node.by)
    if node.path not in ("rate", "steps") or each <= node.at_once or not (node.way == "fashioned" or node.at_once > 1):
        return None
    return Idle(
        f"the edge to `{node.to_level}` moves by {each} stitches at a time, which are cast off or cast on",
        f"{LEAVE_OUT}, or move one stitch at a time, or take two in with `two at once`",
    )


def _stitches(by: syntax.Expr | None) -> int:
    """How many stitches an edge moves by, where that is written in stitches; else 0."""
    number = by.value if isinstance(by, syntax.Negative) else by
    return round(number.value) if isinstance(number, syntax.Number) and (number.unit or "").startswith("st") else 0


def _offset(node: syntax.Zone, _: Around) -> Idle | None:
    if node.width is not None or node.repeats is not None:
        return None
    return Idle(
        f"fabric `{node.fabric}` goes over the whole width here, and lies neither left nor right of the centre",
        f"{LEAVE_OUT}, or say how wide a panel it is, such as `8 cm wide`",
    )


def _wide(node: syntax.Zone, _: Around) -> Idle | None:
    if node.repeats is None:
        return None
    return Idle(
        f"the panel of `{node.fabric}` is {node.repeats} repeats wide, and its width follows from that",
        "leave one of the two widths out",
    )


def _loop(node: syntax.Swatch, around: Around) -> Idle | None:
    if node.weight is None:
        return None
    return Idle(
        "this swatch was weighed, so the yarn is reckoned from its weight and not from what was unravelled",
        "leave one of the two out: the weight, if the yarn to a stitch was measured with more care",
    )


def _stretches(node: syntax.Finished, _: Around) -> Idle | None:
    if node.fits is not None:
        return None
    return Idle(
        f"`{node.name}` is compared with no measure of the body, so it is smaller than none",
        f"{LEAVE_OUT}, or say which it fits, such as `, fits bust`",
    )


def _across(node: syntax.Stitch, around: Around) -> Idle | None:
    """How a chart lies across a whole width."""
    fabric = around.owner
    if not isinstance(fabric, syntax.Fabric) or fabric.name not in around.panels:
        return None
    return Idle(
        f"fabric `{fabric.name}` is used for panels only, and a panel is whole repeats without edge stitches",
        f"{LEAVE_OUT}, or use the fabric over a whole width too",
    )


def _colours(node: syntax.ChartWay, around: Around) -> Idle | None:
    chart = around.owner
    if not isinstance(chart, syntax.Chart) or any(isinstance(s, syntax.ChartKey) and s.yarn for s in chart.body):
        return None
    return Idle(
        f"chart `{chart.name}` is in one yarn, so no colours meet in its rows",
        f"{LEAVE_OUT}, or let a symbol be `knit in` another yarn",
    )


MEANINGS: Mapping[type[syntax.Node], Mapping[str, Meaning]] = {
    syntax.SizeRow: {"unit": EVERYWHERE, "table": EVERYWHERE, "table_row": EVERYWHERE, "to_fit": EVERYWHERE, "about": EVERYWHERE},
    syntax.Yarn: {"count": EVERYWHERE, "colour": EVERYWHERE},
    syntax.Swatch: {"weight": EVERYWHERE, "loop": _loop},
    syntax.Stitch: {"fit": _across, "edge": _across},
    syntax.ChartKey: {
        "kind": EVERYWHERE, "yarn": EVERYWHERE, "cross": EVERYWHERE, "over": EVERYWHERE, "hung_first": EVERYWHERE,
    },
    syntax.ChartRepeat: {"after": EVERYWHERE},
    syntax.ChartWay: {"way": _colours},
    syntax.Edging: {
        "depth": EVERYWHERE, "when": EVERYWHERE, "cast_off": _cast_off, "kind": EVERYWHERE, "mock": EVERYWHERE,
        "fold_tension": EVERYWHERE, "inside_tension": EVERYWHERE,
    },
    syntax.Piece: {
        "copies": EVERYWHERE, "mirror_of": EVERYWHERE, "centre_stitch": _centre_stitch, "purpose": EVERYWHERE,
    },
    syntax.Start: {"way": EVERYWHERE, "edging": EVERYWHERE, "along": EVERYWHERE, "facing": _facing},
    syntax.Edge: {
        "cast_off": EVERYWHERE, "path": EVERYWHERE, "to_level": EVERYWHERE, "width": EVERYWHERE, "width_most": EVERYWHERE,
        "by": EVERYWHERE, "times": EVERYWHERE, "every": EVERYWHERE, "called": EVERYWHERE, "way": _shaping, "inset": _shaping,
        "at_once": _shaping,
    },
    syntax.Opening: {"offset": EVERYWHERE, "taken": BY_VALUE},
    syntax.Slot: {"offset": EVERYWHERE, "taken": EVERYWHERE},
    syntax.Wedge: {"edge": EVERYWHERE, "kind": EVERYWHERE, "rest": EVERYWHERE},
    syntax.Zone: {"width": _wide, "repeats": EVERYWHERE, "offset": _offset},
    syntax.Motif: {"offset": EVERYWHERE},
    syntax.Neck: {
        "width": EVERYWHERE, "depth": EVERYWHERE, "shape": EVERYWHERE, "flat": EVERYWHERE, "way": BY_VALUE, "inset": BY_VALUE,
        "taken": BY_VALUE,
    },
    syntax.Band: {
        "holes": EVERYWHERE, "hole_stitches": EVERYWHERE, "first": EVERYWHERE, "last": EVERYWHERE, "facing": EVERYWHERE,
    },
    syntax.Join: {
        "easing": EVERYWHERE, "longer": EVERYWHERE, "way": EVERYWHERE, "matching": EVERYWHERE, "next_copy": EVERYWHERE,
    },
    syntax.Finished: {"fits": EVERYWHERE, "stretches": _stretches},
    syntax.Through: {"never": EVERYWHERE, "part": EVERYWHERE, "figure": EVERYWHERE, "share": EVERYWHERE},
    syntax.Lap: {"width": EVERYWHERE},
    syntax.Require: {"because": EVERYWHERE},
}  # fmt: skip


def tell_idle(written: syntax.Tree, expanded: syntax.Tree, findings: Findings) -> None:
    """Reports every option of the source, as it is `written`, that means nothing where it stands. Options of a shape are looked at
    in the shape, whether it is used or not; where fabrics go is seen with the shapes `expanded`. What a line that cannot be read
    would have said of it nobody knows: nothing is reported of its neighbours."""
    lines = list(_lines(written.statements, None))
    broken = [owner for node, owner in lines if isinstance(node, syntax.Broken)]
    panels = frozenset[str]() if broken else _panels(expanded)
    for node, owner in lines:
        if owner is not None and any(owner is other for other in broken):
            continue
        found: dict[Idle, str] = {}
        for name, _ in node.said:
            idle = MEANINGS.get(type(node), {}).get(name, EVERYWHERE)(node, Around(owner, panels))
            if idle is not None:
                found.setdefault(idle, name)
        for idle, name in found.items():
            findings.idle(node, name, idle.why, idle.help)


def _panels(expanded: syntax.Tree) -> frozenset[str]:
    """Fabrics that are used, and never over a whole width."""
    zones = [s for p in expanded.statements if isinstance(p, syntax.Piece) for s in p.body if isinstance(s, syntax.Zone)]
    whole = {s.fabric for s in expanded.statements if isinstance(s, syntax.Piece | syntax.Edging)}
    whole |= {z.fabric for z in zones if z.width is None and z.repeats is None}
    return frozenset(z.fabric for z in zones) - whole


def _lines(statements: tuple[syntax.Statement, ...], owner: syntax.Node | None) -> Iterator[tuple[syntax.Node, syntax.Node | None]]:
    """Every statement with what its block belongs to."""
    for statement in statements:
        yield statement, owner
        yield from _lines(getattr(statement, "body", ()), statement)
