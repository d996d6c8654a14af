"""What a knitter gave in place of the source's own figures, and those figures: kept side by side, so that every copy can say from
what it was regraded."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from walewright.design.fabrics import Fabric, Yarn
from walewright.design.origin import PerSize

if TYPE_CHECKING:
    from walewright.design.model import Machine, Measurement


@dataclass(frozen=True, slots=True)
class Given:
    """One thing given. `kind`: "measure", "tension", "swatch", "dial", "yarn" or "bed"; `name` that of the row, fabric or yarn,
    empty for the bed. `own` and `source` say both in words; a measure has no words, but its length in `own_cm` and, per size,
    in `source_cm`."""

    kind: str
    name: str
    own: str = ""
    source: str = ""
    own_cm: float = 0.0
    source_cm: PerSize = ()


@dataclass(frozen=True, slots=True)
class Edition:
    """What the source itself says, for the sizes made: `measurements` in cm, `fabrics`, `yarns`, its bed; `sizes` are all that it
    has. Nothing that is used nowhere."""

    sizes: tuple[str, ...]
    measurements: tuple[Measurement, ...]
    fabrics: tuple[Fabric, ...]
    yarns: tuple[Yarn, ...]
    machine: Machine


def tension_words(fabric: Fabric) -> str:
    """ "17 st 24 rows": to 10 cm, as the option takes it; what was measured is told to a tenth."""
    digits = 2 if fabric.basis.startswith("given") else 1
    return f"{_figure(fabric.stitches_per_cm * 10, digits)} st {_figure(fabric.rows_per_cm * 10, digits)} rows"


def swatch_words(fabric: Fabric) -> str:
    """ "40 st 60 rows 23.5 cm 21 cm 28 g", as the option takes it."""
    block = f"{_figure(fabric.swatch_stitches)} st {_figure(fabric.swatch_rows)} rows"
    weight = f" {_figure(fabric.swatch_grams)} g" if fabric.swatch_grams and fabric.basis != "given, not weighed" else ""
    return f"{block} {_figure(fabric.swatch_width_cm)} cm {_figure(fabric.swatch_height_cm)} cm{weight}"


def ball_words(yarn: Yarn) -> str:
    """ "50 g = 120 m", as the option takes it."""
    return f"{_figure(yarn.ball_grams)} g = {_figure(yarn.ball_metres)} m"


def yarn_words(yarn: Yarn) -> str:
    """ "my wool, 50 g = 120 m", as the option takes it."""
    return f"{yarn.label}, {ball_words(yarn)}" if yarn.label else ball_words(yarn)


def bed_words(machine: Machine) -> str:
    """ "180 needles, 4.5 mm apart"."""
    return f"{machine.needles} needles, {_figure(machine.pitch_mm)} mm apart"


def _figure(value: float, digits: int = 2) -> str:
    return f"{value:.{digits}f}".rstrip("0").rstrip(".")
