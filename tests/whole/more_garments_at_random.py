"""More garments drawn at random with what makes each wrong: turned, begun along edges, sideways, in many copies, with bands on mirror
images. The draws of `garments_at_random` are the common ones."""

from __future__ import annotations

from random import Random

from garments_at_random import Drawn, _body, _head, _line, _lines, _start, _twice, _two_bodies, _without

KINDS = (
    "set in",
    "banded cardigan",
    "turned collar",
    "v neck",
    "boat neck",
    "dolman",
    "buttoned",
    "wedges",
    "socks",
    "hems",
    "purl out",
    "yoke",
    "collar begun",
    "gusset",
    "vented",
    "slit",
    "banded panels",
    "mirrored bands",
    "hood",
    "centre seam",
)


def more(seed: int) -> Drawn:
    """The garment of that number."""
    dice = Random(seed)
    kind = dice.choice(KINDS)
    return globals()[f"_{kind.replace(' ', '_')}"](kind, dice)  # type: ignore[no-any-return]


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


# ----------------------------------------------------------------- pullovers


def _set_in(kind: str, dice: Random) -> Drawn:
    free = dice.random() < 0.7
    bend = "between arm + depth * 0.3 and arm + depth * 0.7" if free else "arm + depth * 0.55"
    head = "between arm + depth * 0.5 and arm + depth" if free else "arm + depth * 0.8"
    easing = 12

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


def _yoke(kind: str, dice: Random) -> Drawn:
    """A yoke begun along both halves of a body, and a collar begun on the yoke."""
    line = "body first + body second"
    end = dice.choice(("cast off", "on waste yarn"))
    band = "band top_band with collar along yoke end"
    text = f"""{_head(kind, dice)}piece left_body in plain
    levels hem 0 cm, top body
    start half / 2 wide {_start(dice)}
    left edge straight to top called outer
    right edge straight to top called inner
    end on waste yarn
piece right_body in plain, mirror of left_body
piece yoke in plain
    levels seam 0 cm, top 8 cm
    start half - 6 cm wide along right_body end + left_body end
    edges slope to half / 2 wide at top called side
    end {end}
{_line(band) if end != "cast off" else ""}join left_body inner to right_body inner
"""
    line = "right_body end + left_body end"
    wrong = "left_body end + right_body end"
    good = text
    # The pieces' inner edges: the left one's at its right, the right one's at its left. From the left needle: left piece, right piece.
    if dice.random() < 0.5:
        good = text.replace(line, f"{wrong}, right side facing").replace(f"{wrong}, right", f"{line}, right")
    else:
        good = text.replace(line, wrong)
    damages = {
        "the other way round": _flipped(good, line, wrong),
        "seam forgotten": _without(good, "join left_body inner to right_body inner"),
    }
    damages["half of it left open"] = good.replace(line, "right_body end").replace(wrong, "left_body end")
    return Drawn(kind, good, damages)


def _flipped(text: str, one: str, other: str) -> str:
    return text.replace(one, "@").replace(other, one).replace("@", other)


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


def _gusset(kind: str, dice: Random) -> Drawn:
    """A tongue begun along a slot's lower edge and sewn to the upper one."""
    upper = "join flap end to bag mouth_upper, grafted" if dice.random() < 0.0 else ""
    text = f"""{_head(kind, dice)}piece bag in plain
    levels base 0 cm, mouth 12 cm, top 26 cm
    start 30 cm wide {_start(dice)}
    edges straight to top called side
    slot mouth 14 cm wide at mouth, on waste yarn
    end cast off
piece lining in plain
    levels rim 0 cm, foot 10 cm
    start 14 cm wide along bag mouth
    edges straight to foot called side
    end cast off
band lip with collar along bag mouth_upper
join bag side to bag side
{upper}"""
    damages = {
        "lining on the lip": text.replace("along bag mouth\n", "along bag mouth_upper\n"),
        "seam twice": _twice(text, "join bag side to bag side"),
        "slot forgotten": _without(text, "band lip with collar along bag mouth_upper").replace(
            "along bag mouth\n", "along bag mouth_upper\n"
        ),
        "begun on both": text.replace("along bag mouth\n", "along bag mouth + bag mouth_upper\n"),
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


# ----------------------------------------------------------------- fronts that open


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
    bands += ["band left_band with collar along left_front edge + left_front neckline"] if False else []
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
    line = "back neck + front neck" if dice.random() < 0.0 else ""
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
    # The neck begins at the open shoulder, which is the back's right one: from there along the back to the closed one, and the front.
    text = text.replace(line, _open_neck())
    damages = {
        "neckband from the closed shoulder": text.replace(_open_neck(), " + ".join(reversed(_open_neck().split(" + ")))),
        "a shoulder left open": _without(text, bands[0]),
        "a shoulder joined and banded": text + f"join {front_end} to front shoulder_left\n",
    }
    return Drawn(kind, text, damages)


def _open_neck() -> str:
    return "front neck + back neck"


# ----------------------------------------------------------------- other things


def _dolman(kind: str, dice: Random) -> Drawn:
    """From cuff to cuff, back and front apart; the neck is at one edge."""

    def body(name: str, edge: str, other: str) -> str:
        return f"""piece {name} in plain
    levels cuff 0 cm, underarm arm, neck arm + half / 2 - neck / 2, neck_end arm + half / 2 + neck / 2, second arm + half, wrist 2 * arm + half
    start depth wide {start}
    {edge} edge straight to underarm called underarm
    {edge} edge out {dice_step} to neck called hem
    {edge} edge straight to neck_end called hem
    {edge} edge straight to second called hem
    {edge} edge straight to wrist called second_underarm
    {other} edge straight to neck called shoulder_line
    {other} edge straight to neck_end called neckline
    {other} edge straight to wrist called second_shoulder
    end cast off
"""

    start, dice_step = dice.choice(("with e-wrap", "with chain")), "1 stitch every 10 rows"
    seams = ["join back shoulder_line to front shoulder_line", "join back second_shoulder to front second_shoulder"]
    seams += ["join back underarm to front underarm", "join back second_underarm to front second_underarm"]
    bands = ["band back_hem with collar along back hem", "band front_hem with collar along front hem"]
    neck = dice.random() < 0.7
    line = dice.choice(("back neckline + front neckline", "front neckline + back neckline"))
    neckband = [f"band neckband with collar along {line}"] if neck else []
    text = _head(kind, dice) + body("back", "left", "right") + body("front", "right", "left")
    text += _lines(dice.sample([*bands, *neckband], len(bands) + len(neckband)) + dice.sample(seams, 4))
    damages = {
        "sleeve upside down": text.replace("join back underarm to front underarm", "join back underarm to front second_underarm"),
        "a seam twice": _twice(text, seams[0]),
        "hem banded twice": text + bands[0].replace("back_hem", "third_hem") + "\n",
        "neckline joined to hem": text + "join back neckline to front hem\n",
    }
    if neck:
        damages["neckband with a shoulder not joined"] = _without(_without(text, seams[0]), seams[1])
    return Drawn(kind, text, damages)


def _wedges(kind: str, dice: Random) -> Drawn:
    times = dice.choice((6, 8))
    seam = "join hat start to hat end, grafted"
    rim = dice.random() < 0.5
    band = "band brim with collar along hat rim"
    text = f"""{_head(kind, dice)}let gore = 52 cm / {times}
piece hat in plain
    levels begin 0 cm, close gore
    start 16 cm wide on waste yarn
    wedge 9 cm wide at the right edge from begin to close, held in
    left edge straight to close called rim
    right edge straight to close called crown
    repeat {times} times from begin to close
    end on waste yarn
{_line(band) if rim else ""}{seam}
join hat crown to hat crown, gathered
"""
    damages = {
        "not closed": _without(text, seam),
        "closed twice": text + seam.replace(", grafted", "") + "\n",
        "drawn up and banded": text + "band top with collar along hat crown\n",
        "crown to rim": text.replace("join hat crown to hat crown, gathered", "join hat crown to hat rim, easing 40 cm"),
    }
    if not rim:
        del damages["crown to rim"]
    return Drawn(kind, text, damages)


def _socks(kind: str, dice: Random) -> Drawn:
    copies = dice.choice(("", ", knit 2"))
    graft, seam = "join sock shoulder_right to sock shoulder_left, grafted", "join sock one_edge to sock other_edge"
    text = f"""{_head(kind, dice)}let girth = 20 cm
let turn = girth / 6
piece sock in plain{copies}
    levels ankle 0 cm, heel 8 cm, foot 8 cm + turn * 2, toe 20 cm + turn * 2, close 20 cm + turn * 4, top 20.5 cm + turn * 4
    start girth wide {_start(dice)}
    left edge straight to top called one_edge
    right edge straight to top called other_edge
    wedge turn wide at the right edge from heel to foot, held in and let out
    wedge turn wide at the left edge from heel to foot, held in and let out, resting girth / 2
    wedge turn wide at the right edge from toe to close, held in and let out
    wedge turn wide at the left edge from toe to close, held in and let out, resting girth / 2
    opening toe 0 cm wide from close to top
        edges straight to top
    end on waste yarn
{graft}
{seam}
"""
    damages = {
        "toe open": _without(text, graft),
        "seam twice": _twice(text, seam),
        "edge to toe": text.replace(seam, "join sock one_edge to sock toe_left, easing 80 cm"),
    }
    return Drawn(kind, text, damages)


def _hems(kind: str, dice: Random) -> Drawn:
    """Hems folded before or after, of fabrics worn on either side."""
    head = _head(kind, dice)
    first = dice.random() < 0.5
    fold = dice.choice(("folded", "picot", "mock rib 1 by 1") if first else ("folded", "picot", "facing"))
    off = ", cast off sewn" if fold == "facing" else ""
    head = head.replace(
        "edging collar",
        f"edging hem in plain, 3 cm deep, {fold}, {'knitted first' if first else f'added after{off}'}\nedging collar",
    )
    if dice.random() < 0.5:
        head = head.replace("in wool at tension 6\n", "in wool at tension 6\n    right side purl\n")
    seam = "join skirt side to skirt side"
    text = f"""{head}piece skirt in plain
    levels hem 0 cm, top body
    start half wide on waste yarn, with hem
    edges straight to top called side
    end on waste yarn
band waist with {"collar" if first else "hem"} along skirt end
{seam}
"""
    band = f"band waist with {'collar' if first else 'hem'} along skirt end"
    damages = {
        "waistband twice": text + band.replace("band waist", "band second") + "\n",
        "waistband forgotten": _without(text, band),
        "seam twice": _twice(text, seam),
        "hem banded too": text + "band edge with collar along skirt start\nband edge_again with collar along skirt start\n",
    }
    return Drawn(kind, text, damages)


def _banded_panels(kind: str, dice: Random) -> Drawn:
    """Panels sewn side by side with one band along all of them, or one on each."""
    number = dice.randrange(2, 5)
    each = dice.random() < 0.5
    way = "each to the next" if each or dice.random() < 0.7 else "each to the next all round"
    seam = f"join panel one to panel other, {way}"
    line = "panel end" if each else " + ".join(["panel end"] * number)
    band = f"band top with collar along {line}"
    text = f"""{_head(kind, dice)}piece panel in plain, knit {number}
    levels hem 0 cm, top body
    start 12 cm wide {_start(dice)}
    left edge straight to top called other
    right edge straight to top called one
    end {dice.choice(("cast off", "on waste yarn"))}
{band}
{seam}
"""
    damages = {
        "one too many": text.replace(band, f"{band} + panel end" + (" + panel end" * number if each else "")),
        "band twice": text + band.replace("band top", "band top_again") + "\n",
        "sewn twice": _twice(text, seam),
    }
    return Drawn(kind, text, damages)


def _hood(kind: str, dice: Random) -> Drawn:
    shoulder = "join back shoulder to right_front end + left_front end"
    crown = "join right_hood middle + right_hood end to left_hood middle + left_hood end"
    neck = "join right_hood start + left_hood start to back neck + right_front neckline + left_front neckline, easing 9 cm"
    face = "band face_band with collar along right_hood face + left_hood face" if dice.random() < 0.0 else ""
    text = f"""{_head(kind, dice)}{_cardigan_pieces(dice, "cast off").replace("neck neck wide, 2 cm deep, round", "neck neck wide, 2 cm deep, round, cast off")}piece left_hood in plain, as hood
    levels seam 0 cm, brow 20 cm, crown 28 cm
    start neck / 2 + 10 cm wide with e-wrap
    right edge straight to crown called face
    left edge straight to brow called middle
    left edge arch by -9 cm at crown called middle
    end cast off
piece right_hood in plain, mirror of left_hood
{_line(face) if face else ""}{_lines([shoulder, crown, neck, "join back side to right_front side", "join back side to left_front side"])}"""
    damages = {
        "shoulder forgotten": _without(text, shoulder),
        "hood sewn on twice": _twice(text, neck),
        "halves face to middle": text.replace(crown, "join right_hood face to left_hood face"),
        "one front left out": text.replace(
            "back neck + right_front neckline + left_front neckline", "right_front neckline + left_front neckline"
        ),
    }
    damages.pop("halves face to middle")
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
