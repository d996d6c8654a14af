"""Skirts, hats, socks and bags drawn at random, pieces from side to side and on others."""

from __future__ import annotations

from random import Random

from tests.whole.garments_at_random import Drawn, _head, _line, _lines, _start, _twice, _without


def _yoke(kind: str, dice: Random) -> Drawn:
    """A yoke begun along both halves of a body, and a collar begun on the yoke."""
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
    line, wrong = "right_body end + left_body end", "left_body end + right_body end"
    # With the purl side to the knitter the left half hangs at the left.
    good = text.replace(line, f"{line}, right side facing") if dice.random() < 0.5 else text.replace(line, wrong)
    damages = {
        "the other way round": _flipped(good, line, wrong),
        "seam forgotten": _without(good, "join left_body inner to right_body inner"),
    }
    damages["half of it left open"] = good.replace(line, "right_body end").replace(wrong, "left_body end")
    return Drawn(kind, good, damages)


def _flipped(text: str, one: str, other: str) -> str:
    return text.replace(one, "@").replace(other, one).replace("@", other)


def _gusset(kind: str, dice: Random) -> Drawn:
    """A tongue begun along a slot's lower edge and sewn to the upper one."""
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
"""
    damages = {
        "lining on the lip": text.replace("along bag mouth\n", "along bag mouth_upper\n"),
        "seam twice": _twice(text, "join bag side to bag side"),
        "slot forgotten": _without(text, "band lip with collar along bag mouth_upper").replace(
            "along bag mouth\n", "along bag mouth_upper\n"
        ),
        "begun on both": text.replace("along bag mouth\n", "along bag mouth + bag mouth_upper\n"),
    }
    return Drawn(kind, text, damages)


def _dolman(kind: str, dice: Random) -> Drawn:
    """From cuff to cuff, back and front apart; the neck is at one edge."""

    def body(name: str, edge: str, other: str) -> str:
        return f"""piece {name} in plain
    levels {levels}
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

    levels = "cuff 0 cm, underarm arm, neck arm + half / 2 - neck / 2, neck_end arm + half / 2 + neck / 2"
    levels += ", second arm + half, wrist 2 * arm + half"
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
