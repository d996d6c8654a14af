"""The first garment of the pattern library, from its text to its design."""

from __future__ import annotations

from pathlib import Path

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.design.dump import dump
from walewright.design import Changes, Shipped, understand
from walewright.design.model import Design
from walewright.source import read

SOURCE = Path(__file__).parents[2] / "patterns" / "tidewrack.wale"


def design(shipped: Shipped, changes: Changes | None = None) -> Design:
    tree, unread = read("tidewrack.wale", SOURCE.read_text())
    assert unread == ()
    meant, told = understand(tree, shipped, changes or Changes())
    assert told == ()
    assert meant is not None
    return meant


def test_it_is_understood_as_ever(shipped: Shipped, snapshot: SnapshotAssertion) -> None:
    assert dump(design(shipped)) == snapshot


def test_its_measurements_are_worked_out_for_every_size(shipped: Shipped) -> None:
    # Reckoned by hand for M: bust 91.5 to 96.5 cm, upper arm 28 cm, neck to wrist 71 to 72.5 cm (www.YarnStandards.com).
    made = design(shipped)
    m = made.sizes.index("M")
    back, sleeve = made.piece("back"), made.piece("sleeve")
    assert back.start_width[m] == pytest.approx(94 / 2 + 4)
    armhole = 28 / 2 + 6
    assert [level.height[m] for level in back.levels] == pytest.approx([0, 54 - armhole - 2.5, 51.5, 54])
    assert back.openings[0].width[m] == 18
    assert back.openings[0].flat[m] == pytest.approx(12.6)
    arm = 71.75 - 51 / 2 - 6
    assert [level.height[m] for level in sleeve.levels] == pytest.approx([0, arm - 3, arm])
    assert sleeve.left[0].change[m] == pytest.approx((2 * armhole - 24) / 2)
    assert set(sleeve.copies) == {2}


def test_back_and_front_share_the_levels_of_their_sides(shipped: Shipped) -> None:
    made = design(shipped)
    heights = [{level.name: level.height for level in made.piece(p).levels} for p in ("back", "front")]
    assert heights[0] == heights[1]


def test_the_published_figures_are_credited(shipped: Shipped) -> None:
    credited = {
        m.name for m in design(shipped).measurements if m.credit is not None and "www.YarnStandards.com" in str(m.credit.published)
    }
    assert credited == {"bust", "biceps", "reach"}


def test_a_knitter_makes_it_their_own(shipped: Shipped) -> None:
    own = design(shipped, Changes(("L",), {"plain": "13 st 19 rows"}, {"bust": "100 cm", "biceps": "32 cm"}))
    assert own.sizes == ("L",)
    assert own.piece("back").start_width == (54.0,)
    assert own.fabric("plain").rows_per_cm == 1.9
    assert own.piece("sleeve").left[0].change == pytest.approx(((44 - 25) / 2,))


def test_many_slips_in_one_run_are_each_told_once(shipped: Shipped) -> None:
    text = SOURCE.read_text()
    for right, wrong in (
        ("56 58 60 62 63 64 65 66 cm", "56 58 60 62 63 64 65 cm"),
        ("edging collar in rib", "edging collar in ribb"),
        ("start cuff wide", "start cufff wide"),
        ("join back side to front side", "join back side to front sied"),
        ("machine bulky", "machine bulkie"),
        ("let armhole = biceps / 2 + 6 cm", "let armhole = biceps / 2 + 6"),
    ):
        assert right in text
        text = text.replace(right, wrong, 1)
    tree, unread = read("tidewrack.wale", text)
    assert unread == ()
    meant, told = understand(tree, shipped, Changes())
    assert meant is None
    assert [d.code for d in told] == ["ragged-row", "mixed-units", "unknown-name", "unknown-name", "unknown-name", "no-such-edge"]


def test_a_broken_line_costs_one_message(shipped: Shipped) -> None:
    tree, unread = read("tidewrack.wale", SOURCE.read_text().replace("let half = bust / 2 + 4 cm", "let half = bust / / 2"))
    assert len(unread) == 1
    assert understand(tree, shipped, Changes()) == (None, ())
