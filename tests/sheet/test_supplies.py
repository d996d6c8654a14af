"""The list of tools is that of what the source makes hands do."""

from __future__ import annotations

import pytest

from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.pipeline import compile
from walewright.report.english import in_english
from walewright.sheet.hand_tools import tools
from walewright.sheet.supplies import tensions

SOURCE = """pattern "Cushion"

sizes S
    length 40 cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

piece front in plain
    levels hem 0 cm, low 20 cm, top length
    start 40 cm wide with chain
    {line}
    end cast off
"""

GAP = """opening vent 4 cm wide from low to top, cast off
        left edge straight to top
        right edge slope by 3 cm at top, fashioned 2 in"""


BORDER = "\nedging trim in plain, 2 cm deep, added after\nband border with trim along front pocket\n"
"""Takes the loops of the slot up."""


def listed(line: str) -> str:
    more = BORDER if line.endswith("on waste yarn") else ""
    outcome = compile(SOURCE.format(line=line) + more, "cushion.wale", shipped(), Changes())
    assert outcome.design is not None, [in_english(d).message for d in outcome.diagnostics]
    assert outcome.instructions is not None
    return " / ".join(tools(LANGUAGE, outcome.design, outcome.instructions))


@pytest.mark.parametrize(
    ("line", "prongs", "waste"),
    [
        ("edges straight to top", "with 1 prong", False),
        ("edges slope to 34 cm wide at top, fashioned 3 in", "with 1 and 3 prongs", False),
        (GAP, "with 1 and 2 prongs", False),
        ("slot pocket 8 cm wide at low, on waste yarn", "with 1 prong", True),
        ("slot pocket 8 cm wide at low, cast off", "with 1 prong", False),
    ],
)
def test_tools(line: str, prongs: str, waste: bool) -> None:
    found = listed(line)
    assert prongs in found
    assert ("Waste yarn:" in found) == waste


FOLDED = """\
pattern "Bag"
sizes S
    length 20 cm
machine standard
yarn wool "wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 6
    swatch 40 stitches by 60 rows = 14 cm by 14.6 cm, 10 g
fabric rib
    latched rib every 3rd needle in wool at tension 4
    swatch 40 stitches by 60 rows = 13 cm by 13.6 cm, 10 g
edging hem in plain, 2 cm deep, folded, fold row at tension 8, inside at tension 5, knitted first
edging top in rib, 3 cm deep, added after, cast off chain
piece bag in plain, knit 2
    levels base 0 cm, brim length
    start 30 cm wide on waste yarn, with hem
    edges straight to brim called side
    end on waste yarn
band rim with top along bag end
join bag side to bag side, each to the next all round
"""


@pytest.mark.parametrize(("dial", "moved"), [("7", True), ("6", False)])
def test_a_dial_of_ones_own_moves_no_other_number_and_the_page_says_so(dial: str, moved: bool) -> None:
    outcome = compile(FOLDED, "bag.wale", shipped(), Changes(dials={"plain": dial}))
    assert outcome.proven, outcome.diagnostics
    assert outcome.design is not None
    plain, rib = (tension.text for tension in tensions(LANGUAGE, outcome.design, "cm"))
    said = "The steps of its edgings say 8 and 5 as well: numbers of the source, beside its 6; set yours as much looser or tighter."
    assert (said in plain) == moved
    assert ("The dial is a start: where the steps say 4" in rib) == moved
    assert "The dial" not in " ".join(
        t.text for t in tensions(LANGUAGE, compile(FOLDED, "bag.wale", shipped(), Changes()).result()[0], "cm")
    )
