"""What yarns are spun of: read, refused where it is no fibre, and each once."""

from __future__ import annotations

import pytest

from tests.sheet.pullover import LANGUAGE
from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.design.model import Design
from walewright.pipeline import Outcome
from walewright.sheet.caring import care

SOURCE = """pattern "Panel"

sizes S
    length 40 cm

machine bulky

{yarns}

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

piece front in plain
    levels hem 0 cm, top length
    start 40 cm wide with e-wrap
    end cast off
"""


def _told(lines: str, **own: object) -> Outcome:
    return pipeline.understood(SOURCE.format(yarns=lines), "panel.wale", shipped(), Changes(**own))  # type: ignore[arg-type]


def _design(lines: str, **own: object) -> Design:
    outcome = _told(lines, **own)
    assert outcome.design is not None, outcome.diagnostics
    return outcome.design


@pytest.mark.parametrize(
    ("said", "fibres"),
    [
        ("", ()),
        (", fibre wool", ("wool",)),
        (", fibre linen", ("flax",)),
        (", fibre wool + nylon", ("wool", "polyamide")),
        (", fibre silk + silk", ("silk",)),
        (', fibre mohair, shown "#101010"', ("mohair",)),
    ],
)
def test_fibres_are_read(said: str, fibres: tuple[str, ...]) -> None:
    assert _design(f'yarn wool "yarn", 100 g = 120 m{said}').yarns[0].fibres == fibres


@pytest.mark.parametrize(("said", "near"), [("woll", "did-you-mean"), ("stone", None)])
def test_no_fibre_is_told(said: str, near: str | None) -> None:
    (found,) = _told(f'yarn wool "yarn", 100 g = 120 m, fibre {said}').diagnostics
    assert found.code == "unknown-fibre"
    assert any(h is not None and h.key.endswith("did-you-mean") for h in found.helps) == (near is not None)


def test_yarns_together_have_the_fibres_of_each() -> None:
    strands = 'yarn a "a", 50 g = 200 m, fibre wool\nyarn b "b", 50 g = 200 m, fibre acrylic\n'
    lines = care(LANGUAGE, _design(f'{strands}yarn wool "both", a + b together')).lines
    assert [("Wool" in line, "Acrylic" in line) for line in lines] == [(False, False), (True, False), (False, True)]
    (found,) = _told(f'{strands}yarn wool "both", a + b together, fibre wool').diagnostics
    assert found.code == "fibre-of-strands"


def test_a_knitters_own_yarn_is_not_said_to_be_of_the_sources_fibre() -> None:
    own = _design('yarn wool "yarn", 100 g = 120 m, fibre wool', yarns={"wool": "mine, 50 g = 70 m"})
    assert own.yarns[0].fibres == ()
    assert len(care(LANGUAGE, own).lines) == 1
