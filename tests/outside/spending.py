"""Yarn that pieces of known size take, from the proof of a compiled source."""

from __future__ import annotations

from dataclasses import dataclass

from tests.outside.worked import SHIPPED, WIDE
from walewright.design import Changes
from walewright.pipeline import compile

SPARE = 1.10
"""What is asked for is a tenth more than what is used (common practice)."""


@dataclass(frozen=True, slots=True)
class Panel:
    """A plain piece, in cm, at so many stitches and rows to 10 cm; `copies` of it. `swatch` is what stands behind the swatch's
    size: its weight, or the yarn in a stitch."""

    wide: float
    high: float
    stitches: float = 28
    rows: float = 40
    swatch: str = ""
    yarn: str = "100 g = 200 m"
    copies: int = 1
    counted: bool = False
    """`wide` and `high` are stitches and rows."""


@dataclass(frozen=True, slots=True)
class Used:
    """Yarn without what is spare."""

    metres: float
    grams: float
    loops: int


def used(panel: Panel) -> Used:
    across, up = ("stitches", "rows") if panel.counted else ("cm", "cm")
    text = f"""pattern "Panel"

sizes one
    figure 10 cm

machine {WIDE}

yarn wool "wool", {panel.yarn}

fabric plain
    stocking stitch in wool at tension 5
    swatch {panel.stitches:g} stitches by {panel.rows:g} rows = 10 cm by 10 cm{panel.swatch}

piece panel in plain, knit {panel.copies}
    levels hem 0 cm, top {panel.high:g} {up}
    start {panel.wide:g} {across} wide with e-wrap
    end cast off
"""
    outcome = compile(text, "panel.wale", SHIPPED, Changes())
    assert outcome.proof is not None, [(d.code, d.message) for d in outcome.diagnostics]
    (use,) = [use for use in outcome.proof.sizes[0].yarn if use.kind == "yarn"]
    return Used(use.metres / SPARE, use.grams / SPARE, sum(p.loops * p.copies for p in outcome.proof.sizes[0].pieces))


def more(one: Panel, other: Panel) -> Used:
    """What the other takes more: the swatch and whatever both have alike fall out."""
    less, much = used(one), used(other)
    return Used(much.metres - less.metres, much.grams - less.grams, much.loops - less.loops)
