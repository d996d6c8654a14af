"""The shipped garments, each compiled once for all tests."""

from __future__ import annotations

from functools import cache

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.model import Design
from walewright.pipeline import Outcome, compile
from walewright.world import shipped_names, shipped_text

SHIPPED = shipped()
GARMENTS = tuple(name.removesuffix(".wale") for name in shipped_names("patterns", suffix=".wale"))


def source(name: str) -> str:
    return shipped_text("patterns", f"{name}.wale")


@cache
def compiled(name: str) -> Outcome:
    return compile(source(name), f"{name}.wale", SHIPPED, Changes())


def design_of(name: str) -> Design:
    design = compiled(name).design
    assert design is not None
    return design
