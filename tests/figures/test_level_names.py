"""What levels are called on a page where the trade has a word for what the piece does there."""

from __future__ import annotations

from tests.figures.test_fastened import garment_of
from tests.whole.shipped_once import compiled
from walewright.figures.measures import measured
from walewright.guide.english import LANGUAGE
from walewright.guide.german import LANGUAGE as GERMAN


def labels(name: str, piece: str) -> tuple[list[str], list[str]]:
    design, counts, _, _ = compiled(name).result()
    measures = measured(design, counts, piece).measures
    return [m.label(LANGUAGE) for m in measures], [m.label(GERMAN) for m in measures]


def test_where_a_shoulder_is_held_is_the_shoulder_point() -> None:
    english, german = labels("tidewrack", "back")
    assert "Underarm to shoulder point" in english
    assert "Shoulder point to top" in english
    assert any(label.endswith("bis Schulterpunkt") for label in german)
    assert not any("tip" in label.lower().split() for label in english)


def test_a_length_says_that_only_one_of_two_hems_is_in_it() -> None:
    """The second one is hung on the last row afterwards: page 1 has the length with both."""
    for name, piece, edging in (("avocet", "scarf", "hem"), ("kittiwake", "back", "wristband")):
        told = labels(name, piece)
        assert f"Whole length, with {edging} at one end" in told[0]
        assert [label for label in told[1] if label.startswith("Ganze Länge") and label.endswith(" an einem Ende")]
    assert "Whole length, with welt" in labels("tidewrack", "back")[0]


def test_a_tip_that_is_no_shoulder_keeps_its_name() -> None:
    assert garment_of("dotterel").piece("right_thumb").piece.wedges == ()
    assert "Base to tip" in labels("dotterel", "right_thumb")[0]
