"""Sources of garments, damaged in every way in which a garment is written wrong."""

from __future__ import annotations

import pytest

from tests.whole.glued_garments import CARDIGAN, MITTENS, PANELS, PULLOVER, errors, made

NECK = "along back neck + front neck"
FRONTS = "right_front neckline + back neck + left_front neckline"
LEFT_ARM = "left_front armhole + back armhole_right"
RIGHT_ARM = "back armhole_left + right_front armhole"
SHOULDERS = "join back shoulder to right_front end + left_front end"

ON_SOURCE: tuple[tuple[str, str, str, str, str], ...] = (
    ("a shoulder left out", PULLOVER, "join back shoulder to", "join back shoulder_left to", "line-not-in-order"),
    ("shoulders left out", PULLOVER, "join back shoulder to front shoulder, linked\n", "", "line-not-in-order"),
    (
        "shoulders joined left to left",
        PULLOVER,
        "join back shoulder to front shoulder,",
        "join back shoulder_left to front shoulder_left,",
        "*",
    ),
    ("neckband left out", PULLOVER, f"band neckband with collar {NECK}\n", "", "loops-left-open"),
    ("one neck left out", PULLOVER, NECK, "along back neck", "loops-left-open"),
    ("a part of a neck left out", PULLOVER, NECK, "along back neck + front neck_left", "loops-left-open"),
    ("a neck twice in the band", PULLOVER, NECK, f"{NECK} + back neck", "line-not-in-order"),
    (
        "halves of a neck exchanged",
        PULLOVER,
        NECK,
        "along back neck_right + back neck_centre + back neck_left + front neck",
        "line-not-in-order",
    ),
    (
        "the neckband turned within one neck",
        PULLOVER,
        NECK,
        "along back neck + front neck_right + front neck_centre + front neck_left",
        "line-not-in-order",
    ),
    (
        "a second neckband",
        PULLOVER,
        "join back shoulder",
        "band second with collar along back neck\njoin back shoulder",
        "edge-used-twice",
    ),
    ("sleeves sewn in twice", PULLOVER, "join back side", "join sleeve end to back armhole\njoin back side", "*"),
    (
        "a sleeve on two armholes of one piece",
        PULLOVER,
        "to back armhole + front armhole,",
        "to back armhole_left + back armhole_right,",
        "*",
    ),
    ("sleeve seam to the body", PULLOVER, "join sleeve seam to sleeve seam", "join sleeve seam to front side", "edge-used-twice"),
    ("sides inside out", PULLOVER, "join back side to front side", "join back side_left to front side_left", "seam-twisted"),
    ("armhole joined to the side", PULLOVER, "join back side to front side", "join back side to front armhole", "*"),
    (
        "front linked to itself",
        PULLOVER,
        "join back shoulder to front shoulder",
        "join front shoulder_left to front shoulder_right",
        "*",
    ),
    (
        "fronts exchanged in the neckband",
        CARDIGAN,
        FRONTS,
        "left_front neckline + back neck + right_front neckline",
        "line-not-in-order",
    ),
    (
        "the neckband begins at the back",
        CARDIGAN,
        FRONTS,
        "back neck + right_front neckline + left_front neckline",
        "line-not-in-order",
    ),
    ("the neckband leaves the back out", CARDIGAN, FRONTS, "right_front neckline + left_front neckline", "line-not-in-order"),
    ("the neckband with the right side facing", CARDIGAN, FRONTS, f"{FRONTS}, right side facing", "line-not-in-order"),
    ("left armband the other way round", CARDIGAN, LEFT_ARM, "back armhole_right + left_front armhole", "line-closed"),
    ("right armband the other way round", CARDIGAN, RIGHT_ARM, "right_front armhole + back armhole_left", "line-closed"),
    ("left armband with the right side facing", CARDIGAN, LEFT_ARM, f"{LEFT_ARM}, right side facing", "line-closed"),
    ("armband on the wrong side of the back", CARDIGAN, LEFT_ARM, "left_front armhole + back armhole_left", "*"),
    ("armband on one piece's two armholes", CARDIGAN, RIGHT_ARM, "back armhole_left + back armhole_right", "*"),
    ("shoulders of the fronts left out", CARDIGAN, f"{SHOULDERS}\n", "", "line-not-in-order"),
    (
        "fronts exchanged at the shoulders",
        CARDIGAN,
        SHOULDERS,
        "join back shoulder_left to left_front end\njoin back shoulder_right to right_front end",
        "*",
    ),
    (
        "a front closed by a side",
        CARDIGAN,
        "join back side to left_front side",
        "join back side to left_front edge",
        "edge-used-twice",
    ),
    (
        "a side made twice",
        CARDIGAN,
        "join back side to left_front side",
        "join back side to left_front side\njoin back side to left_front side",
        "edge-used-twice",
    ),
    (
        "both sides to one front",
        CARDIGAN,
        "join back side to left_front side",
        "join back side to right_front side",
        "edge-used-twice",
    ),
    ("a front band left out and the other doubled", CARDIGAN, "along left_front edge", "along right_front edge", "edge-used-twice"),
    ("a front not mirrored", CARDIGAN, "piece right_front in plain, mirror of left_front\n", "", "unknown-name"),
    (
        "a thumb not mirrored",
        MITTENS,
        "along left_mitten thumb_upper + left_mitten thumb",
        "along left_mitten thumb + left_mitten thumb_upper",
        "line-not-mirrored",
    ),
    (
        "both thumbs on one mitten",
        MITTENS,
        "along left_mitten thumb_upper + left_mitten thumb",
        "along right_mitten thumb_upper + right_mitten thumb",
        "edge-used-twice",
    ),
    (
        "a thumb on half a slot",
        MITTENS,
        "along left_mitten thumb_upper + left_mitten thumb",
        "along left_mitten thumb_upper",
        "loops-left-open",
    ),
    (
        "a thumb sewn to the mitten",
        MITTENS,
        "join left_thumb seam to left_thumb seam",
        "join left_thumb seam to left_mitten seam",
        "*",
    ),
    ("a third sleeve", PULLOVER, "knit 2", "knit 3", "copies-left-over"),
    ("panels not joined below their band", PANELS, "join panel other to panel one, each to the next\n", "", "line-not-in-order"),
    (
        "a band over fewer panels than there are",
        PANELS,
        "along panel end + panel end + panel end",
        "along panel end + panel end",
        "loops-left-open",
    ),
    ("a band over more panels than there are", PANELS, "along panel end", "along panel end + panel end", "line-not-in-order"),
    ("panels joined to themselves", PANELS, ", each to the next", "", "*"),
)


@pytest.mark.parametrize(("name", "text", "old", "new", "code"), ON_SOURCE, ids=[row[0] for row in ON_SOURCE])
def test_on_the_source(name: str, text: str, old: str, new: str, code: str) -> None:
    assert old in text
    told = errors(made(text.replace(old, new, 1)))
    assert told, f"{name}: not caught"
    assert code in told or code == "*", told
    assert not told & {"bed-refuses", "knitted-otherwise", "words-knit-otherwise", "words-contradict"}, told


@pytest.mark.parametrize(
    ("text", "old", "new", "edge"),
    [
        (PULLOVER, "piece sleeve in plain, knit 2", "piece sleeve in plain", "`back armhole_right`"),
        (CARDIGAN, "join back side to left_front side\n", "", "`back side_right`"),
    ],
    ids=["one sleeve for two armholes", "a side of the back not joined"],
)
def test_what_can_be_meant_is_warned_of(text: str, old: str, new: str, edge: str) -> None:
    """A garment may have one sleeve, and be open at a side."""
    assert old in text
    outcome = made(text.replace(old, new, 1))
    told = [d for d in outcome.diagnostics if d.code == "edge-half-joined"]
    assert outcome.proven
    assert [edge in d.message for d in told] == [True]
    assert not [d for d in made(text).diagnostics if d.code == "edge-half-joined"]
