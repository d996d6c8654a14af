"""Where each option of a line means something. What is said where it means nothing is an error there.

`MEANINGS` has every field that a part of a line can fill, by the statement it is a part of; a part of the grammar that is not
entered here fails the tests. An entry looks at the line and at what is written around it, and says why the option is idle there and
what to do. Options that mean something in most places but not at some values (nothing wide, nothing deep) are reported where the
values are known, by `Findings.idle`; their entry is `BY_VALUE`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from typing import Any

from walewright.design.findings import Findings
from walewright.record import record
from walewright.report.said import Said, said
from walewright.source import syntax


@record
class Idle:
    """Why an option is without effect where it stands, and what to do instead."""

    why: Said
    help: Said


@record
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


LEAVE_OUT = said("leave-out")


def _cast_off(node: syntax.EdgingLine, _: Around) -> Idle | None:
    if node.when != "first":
        return None
    return Idle(
        said("knitted-first", edging=node.name),
        said("leave-out-or-after"),
    )


def _parity(node: syntax.PieceBlock, _: Around) -> Idle | None:
    if node.mirror_of is None:
        return None
    return Idle(
        said("as-its-model", piece=node.name, model=node.mirror_of),
        said("leave-out-or-of-model", model=node.mirror_of),
    )


def _facing(node: syntax.Start, _: Around) -> Idle | None:
    if node.way == "along":
        return None
    return Idle(
        said("hangs-on-no-edge"),
        said("leave-out-or-along"),
    )


def _shaping(node: syntax.EdgeLine, _: Around) -> Idle | None:
    """A tool, or two stitches at once. How many stitches a step in cm has depends on the tension: of such a one nothing is told."""
    if node.path == "straight":
        return Idle(
            said("goes-straight", level=node.to_level),
            said("leave-out-or-slope"),
        )
    each = _stitches(node.by)
    if node.path not in ("rate", "steps") or each <= node.at_once or not (node.way == "fashioned" or node.at_once > 1):
        return None
    return Idle(
        said("moves-by-several", level=node.to_level, stitches=each),
        said("leave-out-or-one-at-a-time"),
    )


def _larger(node: syntax.EdgeLine, _: Around) -> Idle | None:
    """Which steps are the larger ones, where steps are equal but for a stitch."""
    if node.path != "steps":
        return Idle(said("goes-in-no-steps", level=node.to_level), said("leave-out-or-steps"))
    if node.in_turn:
        return Idle(said("steps-in-turn", level=node.to_level), said("leave-out"))
    return Idle(said("goes-in-one-step", level=node.to_level), said("leave-out")) if node.times == 1 else None


def _moves_first(node: syntax.EdgeLine, _: Around) -> Idle | None:
    """With a move in its first row, or its last one."""
    if node.path == "straight":
        return _shaping(node, _)
    if node.path in ("curve", "arch"):
        return Idle(said("follows-its-curve", level=node.to_level), said("leave-out-or-straight-slope"))
    return None


def _moves_last(node: syntax.EdgeLine, around: Around) -> Idle | None:
    if node.path == "rate" and node.begins_moving:
        return Idle(said("all-gaps-alike", level=node.to_level), said("leave-one-move-out"))
    return _moves_first(node, around)


def _neck_moves(node: syntax.Neck, _: Around) -> Idle | None:
    if node.shape == "v":
        return None
    return Idle(said("no-slope-beside-neck"), said("leave-out"))


def _stitches(by: syntax.Expr | None) -> int:
    """How many stitches an edge moves by, where that is written in stitches; else 0."""
    number = by.value if isinstance(by, syntax.Negative) else by
    return round(number.value) if isinstance(number, syntax.Number) and (number.unit or "").startswith("st") else 0


def _offset(node: syntax.ZoneLine, _: Around) -> Idle | None:
    if node.width is not None or node.repeats is not None:
        return None
    return Idle(
        said("whole-width", fabric=node.fabric),
        said("leave-out-or-width"),
    )


def _wide(node: syntax.ZoneLine, _: Around) -> Idle | None:
    if node.repeats is None:
        return None
    return Idle(
        said("repeats-wide", fabric=node.fabric, repeats=node.repeats if isinstance(node.repeats, int) else node.repeats.name),
        said("leave-one-width-out"),
    )


def _loop(node: syntax.Swatch, around: Around) -> Idle | None:
    if node.weight is None:
        return None
    return Idle(
        said("weighed"),
        said("leave-weight-or-loop-out"),
    )


def _stretches(node: syntax.FinishedLine, _: Around) -> Idle | None:
    if node.fits is not None:
        return None
    return Idle(
        said("compared-with-none", name=node.name),
        said("leave-out-or-fits"),
    )


def _wanted(node: syntax.FinishedLine, _: Around) -> Idle | None:
    if isinstance(node.amount, syntax.Round | syntax.Along):
        return None
    return Idle(said("not-measured", name=node.name), said("leave-out-or-measure"))


def _across(node: syntax.Stitch, around: Around) -> Idle | None:
    """How a chart lies across a whole width."""
    fabric = around.owner
    if not isinstance(fabric, syntax.FabricBlock) or fabric.name not in around.panels:
        return None
    return Idle(
        said("panels-only", fabric=fabric.name),
        said("leave-out-or-use-whole-width"),
    )


def _colours(node: syntax.ChartWay, around: Around) -> Idle | None:
    chart = around.owner
    if not isinstance(chart, syntax.ChartBlock) or any(isinstance(s, syntax.ChartKey) and s.yarn for s in chart.body):
        return None
    return Idle(
        said("one-yarn", chart=chart.name),
        said("leave-out-or-knit-in"),
    )


MEANINGS: Mapping[type[syntax.Node], Mapping[str, Meaning]] = {
    syntax.SizeRow: {"unit": EVERYWHERE, "table": EVERYWHERE, "table_row": EVERYWHERE, "to_fit": EVERYWHERE, "about": EVERYWHERE},
    syntax.TextLine: {"sizes": EVERYWHERE},
    syntax.YarnLine: {"count": EVERYWHERE, "colour": EVERYWHERE, "strands": EVERYWHERE, "fibres": EVERYWHERE},
    syntax.Swatch: {"weight": EVERYWHERE, "loop": _loop},
    syntax.Stitch: {"fit": _across, "edge": _across},
    syntax.ChartKey: {
        "kind": EVERYWHERE, "yarn": EVERYWHERE, "cross": EVERYWHERE, "over": EVERYWHERE, "hung_first": EVERYWHERE,
    },
    syntax.ChartRepeat: {"after": EVERYWHERE},
    syntax.ChartWay: {"way": _colours},
    syntax.EdgingLine: {
        "depth": EVERYWHERE, "when": EVERYWHERE, "cast_off": _cast_off, "kind": EVERYWHERE, "mock": EVERYWHERE,
        "fold_tension": EVERYWHERE, "inside_tension": EVERYWHERE,
    },
    syntax.PieceBlock: {
        "copies": EVERYWHERE, "mirror_of": EVERYWHERE, "parity": _parity, "purpose": EVERYWHERE,
        "fabric": EVERYWHERE,
    },
    syntax.Start: {
        "way": EVERYWHERE, "edging": EVERYWHERE, "along": EVERYWHERE, "facing": _facing, "from_place": EVERYWHERE,
        "to_place": EVERYWHERE,
    },
    syntax.Use: {"edge": BY_VALUE},
    syntax.EdgeLine: {
        "cast_off": EVERYWHERE, "path": EVERYWHERE, "to_level": EVERYWHERE, "width": EVERYWHERE, "width_most": EVERYWHERE,
        "by": EVERYWHERE, "times": EVERYWHERE, "every": EVERYWHERE, "called": EVERYWHERE, "way": _shaping, "inset": _shaping,
        "at_once": _shaping, "beside": EVERYWHERE, "places": _shaping, "in_turn": EVERYWHERE, "larger": _larger,
        "begins_moving": _moves_first, "ends_moving": _moves_last,
    },
    syntax.AcrossLine: {"half_gaps": EVERYWHERE},
    syntax.OpeningLine: {"offset": EVERYWHERE, "taken": BY_VALUE},
    syntax.SlotLine: {"offset": EVERYWHERE, "taken": EVERYWHERE},
    syntax.WedgeLine: {"edge": EVERYWHERE, "kind": EVERYWHERE, "rest": EVERYWHERE, "larger_last": EVERYWHERE},
    syntax.Shoulders: {"larger_last": EVERYWHERE},
    syntax.ZoneLine: {"width": _wide, "repeats": EVERYWHERE, "offset": _offset},
    syntax.MotifLine: {"offset": EVERYWHERE},
    syntax.NeedlesLine: {"every": EVERYWHERE, "places": EVERYWHERE, "worn": EVERYWHERE},
    syntax.Neck: {
        "width": EVERYWHERE, "depth": EVERYWHERE, "shape": EVERYWHERE, "flat": EVERYWHERE, "way": BY_VALUE, "inset": BY_VALUE,
        "taken": BY_VALUE, "begins_moving": _neck_moves, "ends_moving": _neck_moves,
    },
    syntax.BandLine: {
        "holes": EVERYWHERE, "hole_stitches": EVERYWHERE, "first": EVERYWHERE, "last": EVERYWHERE, "facing": EVERYWHERE,
        "picked": BY_VALUE, "of_rows": BY_VALUE,
        "hole_along": EVERYWHERE,
    },
    syntax.JoinLine: {
        "easing": EVERYWHERE, "longer": EVERYWHERE, "way": EVERYWHERE, "matching": EVERYWHERE, "next_copy": EVERYWHERE,
        "of_rows": EVERYWHERE, "to_stitches": EVERYWHERE,
    },
    syntax.NeededLine: {"amount": EVERYWHERE},
    syntax.FinishedLine: {"fits": EVERYWHERE, "stretches": _stretches, "wanted": _wanted},
    syntax.Through: {"never": EVERYWHERE, "part": EVERYWHERE, "figure": EVERYWHERE, "share": EVERYWHERE},
    syntax.LapLine: {"width": EVERYWHERE},
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
    zones = [s for p in expanded.statements if isinstance(p, syntax.PieceBlock) for s in p.body if isinstance(s, syntax.ZoneLine)]
    whole = {s.fabric for s in expanded.statements if isinstance(s, syntax.PieceBlock | syntax.EdgingLine)}
    whole |= {z.fabric for z in zones if z.width is None and z.repeats is None}
    return frozenset(z.fabric for z in zones) - whole


def _lines(statements: tuple[syntax.Statement, ...], owner: syntax.Node | None) -> Iterator[tuple[syntax.Node, syntax.Node | None]]:
    """Every statement with what its block belongs to."""
    for statement in statements:
        yield statement, owner
        yield from _lines(getattr(statement, "body", ()), statement)
