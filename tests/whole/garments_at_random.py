"""Garments drawn at random as source texts, put together as people do, and what makes each of them wrong.

Every draw is a garment somebody could knit: a tube, a vest, a pullover with dropped, square, raglan or saddle shoulders, a
cardigan, a hat, a pair of mittens. Its `damages` are edits of the text after which it is one no more: a band the other way round,
fronts exchanged, a seam left out or made twice, a thumb on the wrong corner.
"""

from __future__ import annotations

from dataclasses import dataclass
from random import Random

from tests.whole.beds_at_random import as_it_stands, bed_facts

MACHINES = {
    "standard": ("14.3 cm by 15 cm", "13.4 cm by 13.8 cm", "fingering-weight wool", "50 g = 200 m"),
    "mid": ("20 cm by 21.4 cm", "18.6 cm by 19.8 cm", "worsted wool", "100 g = 190 m"),
    "bulky": ("30.8 cm by 32.4 cm", "28.6 cm by 29.4 cm", "chunky wool", "100 g = 120 m"),
}


@dataclass(frozen=True, slots=True)
class Drawn:
    """A source, and its damages by what they are called: texts that must not be proven."""

    kind: str
    text: str
    damages: dict[str, str]

    def on_its_bed(self, seed: int) -> Drawn:
        """The garment and its damages on the bed of that number, as it stands. On a bed where the rib is knitted plain nothing is
        wrong with a piece that a damage puts into the rib."""

        def there(text: str) -> str:
            return as_it_stands(text, Random(f"bed {seed}"))

        def in_rib(text: str) -> bool:
            return "\n    fabric rib " in text

        text = there(self.text)
        plain = "latched rib" not in text
        put_there = {name for name, damaged in self.damages.items() if in_rib(damaged) and not in_rib(self.text)}
        kept = {name: there(damaged) for name, damaged in self.damages.items() if not (plain and name in put_there)}
        return Drawn(self.kind, text, kept)


def drawn(seed: int) -> Drawn:
    """The garment of that number."""
    dice = Random(seed)
    kind = dice.choice(("tube", "vest", "dropped", "square", "raglan", "saddle", "cardigan", "hat", "mittens", "panels"))
    made = {
        "tube": _tube,
        "vest": _vest,
        "dropped": _pullover,
        "square": _pullover,
        "raglan": _raglan,
        "saddle": _saddle,
        "cardigan": _cardigan,
        "hat": _hat,
        "mittens": _mittens,
        "panels": _panels,
    }[kind](kind, dice)
    return made.on_its_bed(seed)


def _head(kind: str, dice: Random) -> str:
    machine = dice.choice(list(MACHINES))
    plain, rib, label, ball = MACHINES[machine]
    chest = dice.randrange(60, 76, 2), dice.randrange(80, 90, 2)
    return f"""pattern "{kind.capitalize()}"
sizes S L
    chest {chest[0]} {chest[1]} cm
    body {dice.randrange(24, 30)} {dice.randrange(30, 36)} cm
    depth {dice.randrange(16, 18)} {dice.randrange(18, 21)} cm
    arm {dice.randrange(20, 28)} {dice.randrange(30, 40)} cm
    neck {dice.randrange(14, 17)} {dice.randrange(17, 19)} cm
    wrist {dice.randrange(15, 18)} {dice.randrange(18, 21)} cm
let half = chest / 2 + {dice.randrange(2, 5)} cm
machine {machine}{bed_facts(Random(f"{kind} {chest}"))}
yarn wool "{label}", {ball}
fabric plain
    stocking stitch in wool at tension 6
    swatch 40 stitches by 60 rows = {plain}
fabric rib
    latched rib every {dice.choice(("2nd", "3rd"))} needle in wool at tension 4
    swatch 40 stitches by 60 rows = {rib}
edging welt in rib, {dice.choice((2, 3, 4))} cm deep, added after, cast off {dice.choice(("chain", "sewn"))}
edging collar in rib, {dice.choice((1.5, 2, 2.5))} cm deep, added after, cast off {dice.choice(("chain", "sewn"))}
"""


SHOULDERS = "    shoulders held from tip\n"
SHOULDER = "    left shoulder held from tip\n"


def _line(text: str) -> str:
    return f"{text}\n"


def _lines(texts: list[str]) -> str:
    return "".join(map(_line, texts))


def _start(dice: Random) -> str:
    return dice.choice(("on waste yarn, with welt", "with e-wrap", "with chain"))


def _shuffled(dice: Random, lines: list[str]) -> str:
    return _lines(dice.sample(lines, len(lines)))


def _without(text: str, line: str) -> str:
    assert line in text, line
    return text.replace(f"{line}\n", "", 1)


def _twice(text: str, line: str) -> str:
    assert line in text, line
    return text.replace(f"{line}\n", f"{line}\n{line}\n", 1)


def _tube(kind: str, dice: Random) -> Drawn:
    banded = dice.random() < 0.6
    end = "on waste yarn" if banded else dice.choice(("cast off", "cast off sewn", "with collar"))
    band = "band top_band with collar along tube end"
    seam = "join tube side to tube side"
    text = f"""{_head(kind, dice)}piece tube in plain
    levels hem 0 cm, top body
    start half wide {_start(dice)}
    edges straight to top called side
    end {end}
{_line(band) if banded else ""}{seam}
"""
    damages = {"seam twice": _twice(text, seam)}
    if banded:
        damages |= {"band forgotten": _without(text, band), "band twice": text + band.replace("top_band", "second_band") + "\n"}
    return Drawn(kind, text, damages)


def _body(name: str, deep: str, dice: Random) -> str:
    held = dice.random() < 0.5
    levels = "tip body + depth, top body + depth + 2 cm" if held else "top body + depth"
    to = "tip" if held else "top"
    shoulders = dice.choice((SHOULDERS, SHOULDERS.replace("tip", "tip, larger steps last"))) if held else ""
    wide = dice.choice(("half", "half", "half + 2 stitches", "round_up(half to 4 stitches)"))
    return f"""piece {name} in plain
    levels hem 0 cm, underarm body, {levels}
    start {wide} wide {_start(dice)}
    edges straight to underarm called side
    edges straight to {to} called armhole
    neck neck wide, {deep} cm deep, {dice.choice(("round", "square"))}
{shoulders}    end on waste yarn
"""


def _two_bodies(dice: Random) -> str:
    """A back, and a front like it with a deeper neck."""
    back = _body("back", "2", dice)
    return back + back.replace("piece back", "piece front").replace("wide, 2 cm deep", f"wide, {dice.randrange(5, 8)} cm deep")


def _shoulders(dice: Random) -> list[str]:
    way = dice.choice((", linked", ""))
    if dice.random() < 0.5:
        return [f"join back shoulder to front shoulder{way}"]
    apart = [f"join back shoulder_right to front shoulder_left{way}", f"join back shoulder_left to front shoulder_right{way}"]
    return dice.sample(apart, 2)


def _neckband(dice: Random) -> str:
    return f"band neckband with collar along {dice.choice(('back neck + front neck', 'front neck + back neck'))}"


def _neck_damages(text: str, shoulders: list[str], neckband: str) -> dict[str, str]:
    return {
        "neckband forgotten": _without(text, neckband),
        "shoulder forgotten": _without(text, shoulders[0]),
        "shoulder twice": _twice(text, shoulders[0]),
        "a neck twice": text.replace(neckband, f"{neckband} + back neck"),
        "half a neck": text.replace(neckband, neckband.replace("front neck", "front neck_left")),
    }


def _vest(kind: str, dice: Random) -> Drawn:
    shoulders, neckband = _shoulders(dice), _neckband(dice)
    arm = ["band one_armband with collar along front armhole_left + back armhole_right"]
    arm.append("band other_armband with collar along back armhole_left + front armhole_right")
    bands = _shuffled(dice, [neckband, *arm])
    joins = _lines([*shoulders, "join back side to front side"])
    text = _head(kind, dice) + _two_bodies(dice) + bands + joins
    damages = _neck_damages(text, shoulders, neckband)
    for name, line in zip(("one armband", "other armband"), arm, strict=True):
        one, other = line.partition("along ")[2].split(" + ")
        damages[f"{name} the other way round"] = text.replace(f"{one} + {other}", f"{other} + {one}")
    damages["armbands crossed"] = text.replace("front armhole_left + back armhole_right", "front armhole_left + back armhole_left")
    damages["sides inside out"] = text.replace("join back side to front side", "join back side_left to front side_left")
    return Drawn(kind, text, damages)


def _pullover(kind: str, dice: Random) -> Drawn:
    shoulders, neckband = _shoulders(dice), _neckband(dice)
    order = dice.choice(("back armhole + front armhole", "front armhole + back armhole"))
    sleeve = f"join sleeve end to {order}, easing 4 cm"
    sides = dice.sample(["join back side to front side", "join sleeve seam to sleeve seam"], 2)
    joins = [*shoulders, sleeve, *sides] if dice.random() < 0.6 else [*shoulders, *sides, sleeve]
    text = f"""{_head(kind, dice)}{_two_bodies(dice)}piece sleeve in plain, knit 2
    levels cuff 0 cm, wide arm - 3 cm, top arm
    start wrist wide {_start(dice)}
    edges slope to 2 * depth wide at wide called seam
    edges straight to top called seam
    end cast off
{neckband}
{_lines(joins)}"""
    damages = _neck_damages(text, shoulders, neckband)
    damages |= {
        "sleeves twice": _twice(text, sleeve),
        "a sleeve on one piece's two armholes": text.replace(order, "back armhole_left + back armhole_right"),
        "sleeve seam to the body": text.replace("join sleeve seam to sleeve seam", "join sleeve seam to back side"),
        "sides inside out": text.replace("join back side to front side", "join back side_left to front side_left"),
    }
    return Drawn(kind, text, damages)


def _raglan(kind: str, dice: Random) -> Drawn:
    around = ["back end", "sleeve end", "front end", "sleeve end"]
    turn = dice.randrange(4)
    line = " + ".join(around[turn:] + around[:turn])
    neckband = f"band neckband with collar along {line}"
    joins = dice.sample(["join front raglan to sleeve raglan", "join back raglan to sleeve raglan"], 2)
    joins += dice.sample(["join back side to front side", "join sleeve seam to sleeve seam"], 2)

    def body(name: str) -> str:
        return f"""piece {name} in plain
    levels hem 0 cm, underarm body, top body + depth
    start half wide {_start(dice)}
    edges straight to underarm called side
    edges slope to neck wide at top called raglan
    end on waste yarn
"""

    text = f"""{_head(kind, dice)}{body("back")}{body("front")}piece sleeve in plain, knit 2
    levels cuff 0 cm, wide arm - 3 cm, underarm arm, top arm + depth
    start wrist wide {_start(dice)}
    edges slope to 28 cm wide at wide called seam
    edges straight to underarm called seam
    edges slope to 6 cm wide at top called raglan
    end on waste yarn
{neckband}
{_lines(joins)}"""
    damages = {
        "a sleeve left out of the band": text.replace(line, "back end + sleeve end + front end"),
        "body beside body": text.replace(line, "back end + front end + sleeve end + sleeve end"),
        "neckband forgotten": _without(text, neckband),
        "a raglan forgotten": _without(text, joins[0]),
        "a raglan twice": _twice(text, joins[0]),
    }
    return Drawn(kind, text, damages)


def _saddle(kind: str, dice: Random) -> Drawn:
    def body(name: str, deep: int) -> str:
        return f"""piece {name} in plain
    levels hem 0 cm, underarm body, top body + depth
    start half wide {_start(dice)}
    edges straight to underarm called side
    edges straight to top called armhole
    neck neck wide, {deep} cm deep, round
    end cast off
"""

    line = "back neck + sleeve end + front neck + sleeve end"
    neckband = f"band neckband with collar along {line}"
    joins = [
        "join sleeve head to back armhole, easing 6 cm",
        "join sleeve head to front armhole, easing 6 cm",
        "join sleeve strap + sleeve strap to back shoulder, easing 4 cm",
        "join sleeve strap + sleeve strap to front shoulder, easing 4 cm",
        *dice.sample(["join back side to front side", "join sleeve seam to sleeve seam"], 2),
    ]
    text = f"""{_head(kind, dice)}{body("back", 1)}{body("front", 5)}piece sleeve in plain, knit 2
    levels cuff 0 cm, wide arm - 3 cm, underarm arm, tip arm + 2 cm, neck arm + 2 cm + (half - neck) / 2
    start wrist wide {_start(dice)}
    edges slope to 2 * depth wide at wide called seam
    edges straight to underarm called seam
    edges cast off depth - 4 cm then slope to 6 cm wide at tip called head
    edges straight to neck called strap
    end on waste yarn
{neckband}
{_lines(joins)}"""
    damages = {
        "straps left out of the band": text.replace(line, "back neck + front neck"),
        "neckband forgotten": _without(text, neckband),
        "a strap forgotten": _without(text, joins[2]),
    }
    return Drawn(kind, text, damages)


def _cardigan(kind: str, dice: Random) -> Drawn:
    back = _body("back", "2", dice)
    held = "shoulders held" in back
    top = "tip body + depth, top body + depth + 2 cm" if held else "top body + depth"
    to = "tip" if held else "top"
    shape = dice.choice(("cast off 2 cm then curve", "slope"))
    # The same front, its places counted from the middle of its start or from the garment's centre line.
    wide, reach = dice.choice(
        (("half / 2 - 1 cm wide", "by -(neck / 2 - 1 cm)"), ("half / 2 left to 1 cm left of centre", "to neck / 2 from centre"))
    )
    front = f"""piece left_front in plain
    levels hem 0 cm, underarm body, throat body + depth - 9 cm, {top}
    start {wide} {_start(dice)}
    left edge straight to underarm called side
    left edge straight to {to} called armhole
    right edge straight to throat called edge
    right edge {shape} {reach} at {to} called neckline
{_line("    right edge straight to top called neckline") if held else ""}{SHOULDER if held else ""}    end on waste yarn
piece right_front in plain, mirror of left_front
"""
    sleeves = dice.random() < 0.5
    sleeve = f"""piece sleeve in plain, knit 2
    levels cuff 0 cm, wide arm - 3 cm, top arm
    start wrist wide {_start(dice)}
    edges slope to 2 * depth wide at wide called seam
    edges straight to top called seam
    end cast off
"""
    line = "right_front neckline + back neck + left_front neckline"
    bands = [f"band neckband with collar along {line}", "band button_band with collar along left_front edge"]
    bands.append("band buttonhole_band with collar along right_front edge")
    shoulders = "join back shoulder to right_front end + left_front end"
    joins = [shoulders]
    if sleeves:
        joins += ["join sleeve end to back armhole + right_front armhole, easing 4 cm"]
        joins += ["join sleeve end to back armhole + left_front armhole, easing 4 cm", "join sleeve seam to sleeve seam"]
    else:
        bands += ["band one_armband with collar along left_front armhole + back armhole_right"]
        bands += ["band other_armband with collar along back armhole_left + right_front armhole"]
    joins += dice.sample(["join back side to right_front side", "join back side to left_front side"], 2)
    made = _shuffled(dice, bands) + _lines(joins)
    text = _head(kind, dice) + back + front + (sleeve if sleeves else "") + made
    damages = {
        "fronts exchanged in the neckband": text.replace(line, "left_front neckline + back neck + right_front neckline"),
        "neckband begins at the back": text.replace(line, "back neck + right_front neckline + left_front neckline"),
        "a front left out": text.replace(line, "right_front neckline + left_front neckline"),
        "neckband hung right side facing": text.replace(line, f"{line}, right side facing"),
        "shoulders forgotten": _without(text, shoulders),
        "front's edge to the side": text.replace("join back side to left_front side", "join back side_left to left_front side"),
        "a band twice": text + "band third_band with collar along left_front edge\n",
    }
    if not sleeves:
        one = "left_front armhole + back armhole_right"
        damages["armband the other way round"] = text.replace(one, "back armhole_right + left_front armhole")
    return Drawn(kind, text, damages)


def _hat(kind: str, dice: Random) -> Drawn:
    end = dice.choice(("gathered", "cast off"))
    seam = "join hat side to hat side"
    flat = "" if end == "gathered" else "join hat end to hat end\n"
    text = f"""{_head(kind, dice)}piece hat in plain
    levels brim 0 cm, top depth
    start half wide {_start(dice)}
    edges straight to top called side
    end {end}
{seam}
{flat}"""
    damages = {"seam twice": _twice(text, seam)}
    if flat:
        damages["closed twice"] = text + flat
    return Drawn(kind, text, damages)


def _mittens(kind: str, dice: Random) -> Drawn:
    def thumb(side: str, along: str) -> str:
        return f"""piece {side}_thumb in plain
    levels base 0 cm, tip 5 cm
    start 8 cm wide along {along}
    edges straight to tip called seam
    end gathered
"""

    right = "right_mitten thumb + right_mitten thumb_upper"
    left = "left_mitten thumb_upper + left_mitten thumb"
    text = f"""{_head(kind, dice)}piece right_mitten in plain
    levels wrist 0 cm, palm 8 cm, top 18 cm
    start 22 cm wide {_start(dice)}
    edges straight to top called seam
    slot thumb 4 cm wide at palm, {dice.choice((3, 4, 5))} cm right of centre, on waste yarn
    end gathered
piece left_mitten in plain, mirror of right_mitten
{thumb("right", right)}{thumb("left", left)}join right_thumb seam to right_thumb seam
join left_thumb seam to left_thumb seam
join right_mitten seam to right_mitten seam
join left_mitten seam to left_mitten seam
"""
    damages = {
        "thumb not mirrored": text.replace(left, "left_mitten thumb + left_mitten thumb_upper"),
        "both thumbs on one mitten": text.replace(left, right),
        "a thumb on half a slot": text.replace(left, "left_mitten thumb_upper"),
    }
    return Drawn(kind, text, damages)


def _panels(kind: str, dice: Random) -> Drawn:
    number = dice.randrange(2, 6)
    way = dice.choice(("each to the next", "each to the next all round"))
    seam = f"join panel one to panel other, {way}"
    end = dice.choice(("cast off", "on waste yarn"))
    band = "band edge with collar along panel end\n" if end != "cast off" else ""
    around, wide = ("round", "across") if "round" in way else ("across", "round")
    start = dice.choice(("20 cm wide", "between 18 cm and 22 cm wide"))
    whole = f"finished whole {around} panel top, wanted {number} * 19.5 cm"
    text = f"""{_head(kind, dice)}piece panel in plain, knit {number}
    levels hem 0 cm, top body
    start {start} {_start(dice)}
    left edge straight to top called one
    right edge straight to top called other
    end {end}
{band}{seam}
{whole}
"""
    damages = {"seams twice": _twice(text, seam), "of one": text.replace(f"knit {number}", "knit 1")}
    damages["measured the other way"] = text.replace(f"whole {around}", f"whole {wide}")
    if band:
        damages["bands forgotten"] = _without(text, band.strip())
    return Drawn(kind, text, damages)
