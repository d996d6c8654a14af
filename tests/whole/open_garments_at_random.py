"""Garments that open, drawn at random: fronts that are mirror images, bands, collars, hoods."""

from __future__ import annotations

from random import Random

from tests.whole.closed_garments_at_random import _exchanged, _sleeve
from tests.whole.garments_at_random import Drawn, _head, _line, _lines, _start, _twice, _without


def _turned_collar(kind: str, dice: Random) -> Drawn:
    """A collar that is turned over is hung with the right side of the garment to the knitter: its line lies the other way round."""
    front = f"""piece left_front in plain
    levels hem 0 cm, underarm body, throat body + depth - 9 cm, top body + depth
    start half / 2 - 1 cm wide {_start(dice)}
    left edge straight to underarm called side
    left edge straight to top called armhole
    right edge straight to throat called edge
    right edge cast off 2 cm then curve by -(neck / 2 - 1 cm) at top called neckline
    end cast off
piece right_front in plain, mirror of left_front
"""
    back = f"""piece back in plain
    levels hem 0 cm, underarm body, top body + depth
    start half wide {_start(dice)}
    edges straight to underarm called side
    edges straight to top called armhole
    neck neck wide, 2 cm deep, round
    end cast off
"""
    line = "left_front neckline + back neck + right_front neckline"
    shoulder = "join back shoulder to right_front end + left_front end"
    begun = dice.random() < 0.4
    collar = f"band collar_band with collar along {line}, right side facing"
    if begun:
        collar = f"""piece collar_piece in plain
    levels seam 0 cm, rim 8 cm
    start neck + 6 cm wide along {line}, right side facing
    edges straight to rim
    end cast off"""
    side = dice.sample(["join back side to right_front side", "join back side to left_front side"], 2)
    text = _head(kind, dice) + back + front + _line(collar) + _lines([shoulder, *side])
    damages = {
        "fronts exchanged": text.replace(line, "right_front neckline + back neck + left_front neckline"),
        "hung wrong side facing": text.replace(", right side facing", ", wrong side facing"),
        "shoulders forgotten": _without(text, shoulder),
        "begun at the back": text.replace(line, "back neck + right_front neckline + left_front neckline"),
    }
    return Drawn(kind, text, damages)


def _cardigan_pieces(dice: Random, back_end: str = "on waste yarn") -> str:
    return f"""piece back in plain
    levels hem 0 cm, underarm body, top body + depth
    start half wide {_start(dice)}
    edges straight to underarm called side
    edges straight to top called armhole
    neck neck wide, 2 cm deep, round
    end {back_end}
piece left_front in plain
    levels hem 0 cm, underarm body, throat body + depth - 9 cm, top body + depth
    start half / 2 - 1 cm wide {_start(dice)}
    left edge straight to underarm called side
    left edge straight to top called armhole
    right edge straight to throat called edge
    right edge slope by -(neck / 2 - 1 cm) at top called neckline
    end {back_end}
piece right_front in plain, mirror of left_front
"""


def _banded_cardigan(kind: str, dice: Random) -> Drawn:
    """Bands up the fronts and round the neck, or three apart; sleeves set in before or after the sides."""
    shoulder = "join back shoulder to right_front end + left_front end"
    line = "right_front edge + right_front neckline"
    bands = [f"band right_band with collar along {line}", "band neckband with collar along back neck"]
    bands.append("band left_band with collar along left_front neckline + left_front edge")
    if dice.random() < 0.5:
        line = "right_front neckline + back neck + left_front neckline"
        bands = [f"band neckband with collar along {line}"]
        bands += [
            "band left_band with collar along left_front edge",
            "band right_band with collar along right_front edge, buttonholes 5 over 1 stitch, 2 cm first, 2 cm last",
        ]
    sleeves = ["join sleeve end to back armhole + right_front armhole, easing 4 cm"]
    sleeves += ["join sleeve end to left_front armhole + back armhole, easing 4 cm"]
    sides = dice.sample(["join back side to right_front side", "join back side to left_front side"], 2)
    joins = [shoulder, *dice.choice(([*sleeves, *sides], [*sides, *sleeves])), "join sleeve seam to sleeve seam"]
    text = _head(kind, dice) + _cardigan_pieces(dice) + _sleeve(dice) + _lines(dice.sample(bands, len(bands))) + _lines(joins)
    back = " + ".join(reversed(line.split(" + ")))
    damages = {
        "band the other way round": text.replace(line, back),
        "shoulder forgotten": _without(text, shoulder),
        "side joined to the front's edge": text.replace("join back side to left_front side", "join back side to left_front edge"),
        "both sleeves to the right": text.replace("left_front armhole + back armhole", "right_front armhole + back armhole"),
        "right side facing": text.replace(line, f"{line}, right side facing"),
        "fronts exchanged at the shoulder": text.replace(
            shoulder, "join back shoulder_left to left_front end\njoin back shoulder_right to right_front end"
        ),
    }
    return Drawn(kind, text, damages)


def _mirrored_bands(kind: str, dice: Random) -> Drawn:
    """Vest fronts that are mirror images with bands on all their edges, hems on theirs."""
    shoulder = "join back shoulder to right_front end + left_front end"
    bands = ["band left_armband with collar along left_front armhole + back armhole_right"]
    bands += ["band right_armband with collar along back armhole_left + right_front armhole"]
    line = "right_front neckline + back neck + left_front neckline"
    bands += [
        f"band neckband with collar along {line}",
        "band left_band with collar along left_front edge",
        "band right_band with collar along right_front edge",
    ]
    sides = ["join back side to right_front side", "join back side to left_front side"]
    text = _head(kind, dice) + _cardigan_pieces(dice) + _lines(dice.sample(bands, len(bands))) + _lines([shoulder, *sides])
    damages = {
        "left armband other way round": _exchanged(text, "left_front armhole", "back armhole_right"),
        "right armband other way round": _exchanged(text, "back armhole_left", "right_front armhole"),
        "armbands on the wrong fronts": text.replace(
            "left_front armhole + back armhole_right", "left_front armhole + back armhole_left"
        ),
        "neckline and edge exchanged": text.replace("along left_front edge", "along left_front neckline"),
        "shoulder forgotten": _without(text, shoulder),
    }
    return Drawn(kind, text, damages)


def _buttoned(kind: str, dice: Random) -> Drawn:
    """A vest open on one shoulder, where bands along the open ends take buttons."""
    front_end = "back shoulder_right"
    joined = "join back shoulder_left to front shoulder_right"
    bands = ["band under_band with collar along back shoulder_right"]
    bands += ["band over_band with collar along front shoulder_left, buttonholes 2 over 1 stitch, 1.5 cm first, 1.5 cm last"]
    start = _start(dice)

    def body(name: str, deep: int) -> str:
        return f"""piece {name} in plain
    levels hem 0 cm, underarm body, top body + depth
    start half wide {start}
    edges straight to underarm called side
    edges straight to top called armhole
    neck neck wide, {deep} cm deep, round
    end on waste yarn
"""

    line = "front neck + back neck"
    neckband = f"band neckband with collar along {line}"
    sides = "join back side to front side"
    text = _head(kind, dice) + body("back", 2) + body("front", 6) + _lines([*bands, neckband, joined, sides])
    # It begins at the open shoulder, the back's right one.
    damages = {
        "neckband from the closed shoulder": text.replace(line, "back neck + front neck"),
        "a shoulder left open": _without(text, bands[0]),
        "a shoulder joined and banded": text + f"join {front_end} to front shoulder_left\n",
    }
    return Drawn(kind, text, damages)


def _hood(kind: str, dice: Random) -> Drawn:
    shoulder = "join back shoulder to right_front end + left_front end"
    crown = "join right_hood middle + right_hood end to left_hood middle + left_hood end"
    neck = "join right_hood start + left_hood start to back neck + right_front neckline + left_front neckline, easing 9 cm"
    body = _cardigan_pieces(dice, "cast off").replace("2 cm deep, round", "2 cm deep, round, cast off")
    text = f"""{_head(kind, dice)}{body}piece left_hood in plain, as hood
    levels seam 0 cm, brow 20 cm, crown 28 cm
    start neck / 2 + 10 cm wide with e-wrap
    right edge straight to crown called face
    left edge straight to brow called middle
    left edge arch by -9 cm at crown called middle
    end cast off
piece right_hood in plain, mirror of left_hood
{_lines([shoulder, crown, neck, "join back side to right_front side", "join back side to left_front side"])}"""
    damages = {
        "shoulder forgotten": _without(text, shoulder),
        "hood sewn on twice": _twice(text, neck),
        "one front left out": text.replace(
            "back neck + right_front neckline + left_front neckline", "right_front neckline + left_front neckline"
        ),
    }
    return Drawn(kind, text, damages)


def _centre_seam(kind: str, dice: Random) -> Drawn:
    """A back in two halves with a seam, and a band across both."""
    line = "left_half end + right_half end"
    spine = "join left_half spine to right_half spine"
    text = f"""{_head(kind, dice)}piece left_half in plain
    levels hem 0 cm, top body
    start half / 2 wide {_start(dice)}
    left edge straight to top called side
    right edge straight to top called spine
    end on waste yarn
piece right_half in plain, mirror of left_half
piece front in plain
    levels hem 0 cm, top body
    start half wide {_start(dice)}
    edges straight to top called side
    end on waste yarn
band back_band with collar along {line}
band front_band with collar along front end
{_lines([spine, *dice.sample(["join left_half side to front side", "join right_half side to front side"], 2)])}"""
    damages = {
        "halves exchanged": _exchanged(text, "left_half end", "right_half end"),
        "spine forgotten": _without(text, spine),
        "spine to side": text.replace(spine, "join left_half spine to right_half side"),
        "band on a half": text.replace(line, "left_half end"),
    }
    return Drawn(kind, text, damages)
