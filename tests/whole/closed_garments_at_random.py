"""Pullovers, tunics and ponchos drawn at random, with what makes each of them wrong."""

from __future__ import annotations

from random import Random

from tests.whole.garments_at_random import Drawn, _body, _head, _line, _lines, _start, _twice, _two_bodies, _without


def _sleeve(dice: Random) -> str:
    return f"""piece sleeve in plain, knit 2
    levels cuff 0 cm, wide arm - 3 cm, top arm
    start wrist wide {_start(dice)}
    edges slope to 2 * depth wide at wide called seam
    edges straight to top called seam
    end cast off
"""


def _exchanged(text: str, one: str, other: str) -> str:
    """Two edges of a sum exchanged."""
    assert f"{one} + {other}" in text
    return text.replace(f"{one} + {other}", f"{other} + {one}")


def _set_in(kind: str, dice: Random) -> Drawn:
    free = dice.random() < 0.7
    bend = "between arm + depth * 0.3 and arm + depth * 0.7" if free else "arm + depth * 0.55"
    head = "between arm + depth * 0.5 and arm + depth" if free else "arm + depth * 0.8"
    easing = 16

    def body(name: str, deep: int) -> str:
        return f"""piece {name} in plain
    levels hem 0 cm, underarm body, chest body + depth * 0.35, top body + depth
    start half wide {start}
    edges straight to underarm called side
    use armhole_set_in, chest chest, tip top, off 2.5 cm, across half - 9 cm
    neck neck wide, {deep} cm deep, round
    end on waste yarn
"""

    start = _start(dice)
    shoulder, sleeve = (
        "join back shoulder to front shoulder",
        f"join sleeve head + sleeve end to back armhole + front armhole, easing {easing} cm",
    )
    joins = [shoulder, sleeve, *dice.sample(["join back side to front side", "join sleeve seam to sleeve seam"], 2)]
    neckband = "band neckband with collar along back neck + front neck"
    text = f"""{_head(kind, dice)}{body("back", 2)}{body("front", 6)}piece sleeve in plain, knit 2
    levels cuff 0 cm, wide arm - 3 cm, underarm arm, first arm + 4 cm, bend {bend}, head {head}
    start wrist wide {start}
    edges slope to 2 * depth - 4 cm wide at wide called seam
    edges straight to underarm called seam
    use head_set_in, first first, bend bend, top head, off 2.5 cm, low 2 * depth - 13 cm, high depth, crown depth * 0.6
    end cast off
{neckband}
{_lines(joins)}"""
    damages = {
        "shoulder forgotten": _without(text, shoulder),
        "sleeves twice": _twice(text, sleeve),
        "sleeve to one armhole": text.replace("back armhole + front armhole", "back armhole_left + back armhole_right"),
        "shoulder to shoulder": text.replace(shoulder, "join back shoulder_left to front shoulder_left"),
    }
    return Drawn(kind, text, damages)


def _v_neck(kind: str, dice: Random) -> Drawn:
    front = _body("front", "8", dice)
    front = front.replace("wide, 8 cm deep, round", "wide, 8 cm deep, v").replace("wide, 8 cm deep, square", "wide, 8 cm deep, v")
    line = dice.choice(("back neck + front neck", "front neck + back neck"))
    neckband, shoulder = f"band neckband with collar along {line}", "join back shoulder to front shoulder"
    text = _head(kind, dice) + _body("back", "2", dice) + front + _sleeve(dice)
    held = {"shoulders held" in part for part in (text[text.index("piece back") : text.index("piece front")], front)}
    if len(held) > 1:
        text = text.replace(
            _body_of(text, "back"),
            _body_of(text, "front").replace("piece front", "piece back").replace("8 cm deep, v", "2 cm deep, round"),
        )
    sleeve = "join sleeve end to back armhole + front armhole, easing 4 cm"
    text += _line(neckband) + _lines([shoulder, sleeve, "join back side to front side", "join sleeve seam to sleeve seam"])
    damages = {
        "shoulder forgotten": _without(text, shoulder),
        "parts that do not meet": text.replace(line, "front neck_left + back neck"),
        "all round from the point": text.replace(line, "front neck_right + back neck + front neck_left"),
        "half a neck twice": text.replace(line, f"{line} + front neck_left"),
    }
    return Drawn(kind, text, damages)


def _body_of(text: str, name: str) -> str:
    begin = text.index(f"piece {name} ")
    return text[begin : text.index("piece ", begin + 1)]


def _boat_neck(kind: str, dice: Random) -> Drawn:
    """Straight to the top; beside the neck the ends are joined as shoulders."""

    def body(name: str) -> str:
        return f"""piece {name} in plain
    levels hem 0 cm, underarm body, top body + depth
    start half wide {start}
    edges straight to underarm called side
    edges straight to top called armhole
    neck neck + 6 cm wide, {deep} cm deep, square
    end on waste yarn
"""

    start, deep = _start(dice), dice.choice((1, 2))
    way = dice.choice((", linked", ""))
    right, left = f"join back shoulder_right to front shoulder_left{way}", f"join back shoulder_left to front shoulder_right{way}"
    shoulders = dice.sample([right, left], 2)
    facing = dice.choice(("front neck + back neck", "back neck + front neck"))
    text = _head(kind, dice).replace("edging collar in rib", dice.choice(("edging collar in rib", "edging collar in plain")))
    band = f"band neckband with collar along {facing}"
    bands = ["band cuff_band with collar along back armhole_left + front armhole_right"]
    bands.append("band other_cuff_band with collar along front armhole_left + back armhole_right")
    text += body("back") + body("front") + _lines([band, *bands, *shoulders, "join back side to front side"])
    damages = {
        "a shoulder forgotten": _without(text, right),
        "shoulders both left": text.replace(right, f"join back shoulder_left to front shoulder_left{way}"),
        "neckband on one piece": text.replace(facing, "back neck"),
        "armband other way round": text.replace(
            "back armhole_left + front armhole_right", "front armhole_right + back armhole_left"
        ),
    }
    return Drawn(kind, text, damages)


def _purl_out(kind: str, dice: Random) -> Drawn:
    """The pieces are worn with their purl side out, and all that is hung on them lies the other way round."""
    text = _head(kind, dice).replace("in wool at tension 6\n", "in wool at tension 6\n    right side purl\n")
    both = dice.random() < 0.5
    if both:
        text = text.replace("in wool at tension 4\n", "in wool at tension 4\n    right side purl\n")
    shoulders = ["join back shoulder_right to front shoulder_left", "join back shoulder_left to front shoulder_right"]
    neckband = "band neckband with collar along back neck + front neck"
    bodies = _two_bodies(dice)
    # With the purl side to the knitter hung outside edges lie clockwise, with the knit side the other way round.
    arms = ["front armhole_left + back armhole_right", "back armhole_left + front armhole_right"]
    if not both:
        arms = [" + ".join(reversed(arm.split(" + "))) for arm in arms]
    bands = [f"band {n}_armband with collar along {a}" for n, a in zip(("one", "other"), arms, strict=True)]
    text += bodies + _lines([neckband, *bands, *shoulders, "join back side to front side"])
    damages = {
        "armband other way round": text.replace(arms[0], " + ".join(reversed(arms[0].split(" + ")))),
        "armband with the other side to the knitter": _turned(text, bands[0], both),
        "neckband forgotten": _without(text, neckband),
        "a shoulder twice": _twice(text, shoulders[1]),
    }
    return Drawn(kind, text, damages)


def _turned(text: str, band: str, wrong: bool) -> str:
    return text.replace(band, f"{band}, {'right' if not wrong else 'wrong'} side facing")


def _collar_begun(kind: str, dice: Random) -> Drawn:
    line = "back neck + front neck"
    shoulder = "join back shoulder to front shoulder"
    collar = f"""piece collar_piece in plain
    levels seam 0 cm, rim {dice.choice((5, 8, 12))} cm
    start neck + 8 cm wide along {line}
    edges straight to rim called fall
    end {dice.choice(("cast off", "cast off sewn"))}
"""
    closed = dice.random() < 0.5
    fall = "join collar_piece fall to collar_piece fall"
    text = _head(kind, dice) + _two_bodies(dice) + collar
    text += _lines([shoulder, "join back side to front side", *([fall] if closed else [])])
    damages = {
        "shoulder forgotten": _without(text, shoulder),
        "a neck left open": text.replace(line, "back neck"),
        "along a neck twice": text.replace(line, f"{line} + back neck"),
    }
    return Drawn(kind, text, damages)


def _vented(kind: str, dice: Random) -> Drawn:
    """Vents at the sides: only the upper part of each is joined."""

    def body(name: str) -> str:
        return f"""piece {name} in plain
    levels hem 0 cm, vent 6 cm, underarm body, top body + depth
    start half wide {start}
    edges straight to vent called vent
    edges straight to underarm called side
    edges straight to top called armhole
    neck neck wide, 3 cm deep, round
    end on waste yarn
"""

    start = _start(dice)
    neckband = "band neckband with collar along front neck + back neck"
    shoulder, side = "join back shoulder to front shoulder", "join back side to front side"
    bands = ["back vent_left", "back vent_right", "front vent_left", "front vent_right"]
    some = dice.sample(bands, dice.randrange(0, 5))
    made = [f"band band_{i} with collar along {edge}" for i, edge in enumerate(some)]
    text = _head(kind, dice) + body("back") + body("front") + _lines([neckband, *made, shoulder, side])
    damages = {
        "vent to side": text.replace(side, "join back side_left to front vent_right"),
        "shoulder forgotten": _without(text, shoulder),
        "sides inside out": text.replace(side, "join back side_left to front side_left"),
    }
    if some:
        damages["a vent joined too"] = text + "join back vent to front vent\n"
    return Drawn(kind, text, damages)


def _slit(kind: str, dice: Random) -> Drawn:
    """An opening that rejoins, with a band round it or along each side."""
    wide = dice.choice((0, 0, 4))
    text = f"""{_head(kind, dice)}piece poncho in plain
    levels hem 0 cm, slit 20 cm, close 42 cm, top 62 cm
    start 60 cm wide {_start(dice)}
    edges straight to top called edge
    opening gap {wide} cm wide from slit to close{", cast off" if wide else ""}
        edges straight to close
    end cast off
"""
    if wide:
        lines = ["poncho gap_left + poncho gap_centre + poncho gap_right + poncho gap_upper"]
        turn = dice.randrange(4)
        parts = lines[0].split(" + ")
        lines = [" + ".join(parts[turn:] + parts[:turn])]
    else:
        lines = dice.choice((["poncho gap_left", "poncho gap_right"], ["poncho gap_left + poncho gap_right"]))
    bands = [f"band band_{i} with collar along {line}" for i, line in enumerate(lines)]
    text += _lines(bands)
    damages = {"band twice": text + bands[0].replace("band_0", "band_9") + "\n"}
    if wide:
        damages["the other way round"] = text.replace(lines[0], " + ".join(reversed(lines[0].split(" + "))))
        short = lines[0].split(" + ")
        damages["corners left out"] = text.replace(lines[0], f"{short[0]} + {short[2]}")
    return Drawn(kind, text, damages)


def _twin_bodies(kind: str, dice: Random) -> Drawn:
    """Back and front are two copies of one piece; each armband lies on one side of the one and on the other side of the next."""
    way = dice.choice(("", ", linked"))
    shoulder = f"join body shoulder to body shoulder, each to the next all round{way}"
    side = "join body side to body side, each to the next all round"
    arms = "band armband with collar along body armhole_left + body armhole_right"
    neckband = "band neckband with collar along body neck + body neck"
    body = _body("body", "4", dice).replace("piece body in plain", "piece body in plain, knit 2")
    text = _head(kind, dice) + body + _lines([*dice.sample([arms, neckband], 2), shoulder, side])
    damages = {
        "shoulders forgotten": _without(text, shoulder),
        "armbands of one side": text.replace("body armhole_left + body armhole_right", "body armhole_left + body armhole_left"),
        "sides twice": _twice(text, side),
    }
    return Drawn(kind, text, damages)
