"""How much is drawn at random: a few draws in every run, many in a campaign (`pytest -m campaign`).

A campaign is not for every change. What stays in the default run is the same property on fewer draws, so that it is still
seen to hold.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import pytest
from hypothesis import settings

PROFILES = {"steady": 20, "campaign": 100, "explore": 500}
"""Examples of a property test that names no number of its own: of another number, as many in a hundred."""


def draws(many: int) -> int:
    """Examples for a property test that asks for `many` in a campaign."""
    return max(many * settings().max_examples // PROFILES["campaign"], 1)


def few_of(values: Iterable[Any], few: int) -> list[Any]:
    """Parameters of a test: the first `few` of them for every run, the others for a campaign."""
    return [v if at < few else pytest.param(v, marks=pytest.mark.campaign) for at, v in enumerate(values)]
