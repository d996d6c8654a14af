"""How the garment is washed and dried, by what its yarns are spun of."""

from __future__ import annotations

from typing import get_args

from walewright.design.model import Design
from walewright.guide.model import Advice, Guide
from walewright.guide.numbers import sentence
from walewright.trade.fibres import FIBRES, FibreCare


def care(guide: Guide, design: Design) -> Advice:
    """What the label says comes first; then each kind of fibre that the source names, those that ask for most care first."""
    fibres = dict.fromkeys(f for yarn in design.bought() for f in yarn.fibres)
    lines = [guide.say("care/label")]
    for kind in get_args(FibreCare):
        named = tuple(f for f in fibres if FIBRES[f] == kind)
        if named:
            lines.append(sentence(guide.say(f"care/{kind}", fibres=tuple(guide.say(f"fibre/{f}") for f in named))))
    return Advice(guide.say("care"), tuple(lines))
