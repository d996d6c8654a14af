"""Garments drawn at random whose joins name the ends of welts, hems and bands, or leave them free."""

from __future__ import annotations

from random import Random

from tests.whole.bands_at_random import _edging, _head


def joined_ends(seed: int) -> str:
    """The source of that number."""
    dice = Random(f"joined ends {seed}")
    return dice.choice((_sides, _sides, _round, _ring, _mitre, _strip_on))(dice)


def _start(dice: Random, hem: str) -> str:
    open_start = "added after" in hem or any(f", {kind}" in hem for kind in ("folded", "picot", "mock rib"))
    return dice.choice(("on waste yarn", "on waste yarn by hand") if open_start else ("with e-wrap", "with chain"))


def _hem(dice: Random) -> str:
    """An edging whose ends are seen: what is turned in whole has none."""
    return _seen(dice, dice.choice(("after", "first")), "hem")


def _seen(dice: Random, when: str, name: str) -> str:
    while ", facing" in (edging := _edging(dice, when, name)):
        pass
    return edging


def _body(name: str, start: str, copies: str = "", more: str = "") -> str:
    return f"""piece {name} in plain{copies}
    levels bottom 0 cm, top long
    start wide wide {start}, with hem
    edges straight to top called side
{more}    end cast off
"""


def _sides(dice: Random) -> str:
    """Two pieces: seams with their welts, of the welts alone, or with vents."""
    head, _ = _head(dice)
    hem = _hem(dice)
    start = _start(dice, hem)
    joins = dice.choice(
        (
            "join back hem + back side to front hem + front side",
            "join back side + back hem to front side + front hem",
            "join back hem_left + back side_left to front hem_right + front side_right",
            "join back hem to front hem\nfree back side + front side",
            "join back hem to front hem\njoin back side to front side",
            "join back side to front side\nfree back hem + front hem",
            "join back side to front side\nfree back hem_left",
            "join back side to front side",
        )
    )
    return f"{head}{hem}\n{_body('back', start)}{_body('front', start)}{joins}\n"


def _round(dice: Random) -> str:
    """One piece, or two socks, closed with its welts, with an edging at its end too."""
    head, _ = _head(dice)
    hem = _hem(dice)
    end = dice.choice(("cast off", "with hem", "with cuff"))
    cuff = f"{_edging(dice, 'after', 'cuff')}\n" if end == "with cuff" else ""
    if end == "with hem" and "added after" not in hem:
        end = "cast off"
    turned = ", facing" in cuff or end == "cast off"
    own = "" if turned else " + leg hem_upper{0}" if end == "with hem" else " + leg cuff{0}"
    low = dice.choice(("leg hem{0} + ", "leg hem{0} + ", ""))
    sides = [f"{low}leg side{{0}}{own if dice.random() < 0.7 else ''}".format(side) for side in ("_left", "_right")]
    piece = _body("leg", _start(dice, hem), dice.choice(("", ", knit 2"))).replace("end cast off", f"end {end}")
    return f"{head}{hem}\n{cuff}{piece}join {sides[0]} to {sides[1]}\n"


def _ring(dice: Random) -> str:
    """A band closed to a ring, before or after the piece that it lies on, once or at each copy."""
    head, _ = _head(dice)
    hem = _hem(dice)
    joins = ["join leg side_left to leg side_right", "join rim first_end to rim last_end"]
    dice.shuffle(joins)
    piece = _body("leg", _start(dice, hem), dice.choice(("", ", knit 2")))
    lines = "\n".join(joins[: dice.choice((1, 2, 2))])
    trim = _seen(dice, "after", "trim")
    return f"{head}{hem}\n{trim}\n{piece}band rim with trim along leg end\n{lines}\n"


def _mitre(dice: Random) -> str:
    """Bands along two edges of a piece, sewn end to end at the corner."""
    head, _ = _head(dice)
    hem = _hem(dice)
    trim = _seen(dice, "after", "trim")
    join = dice.choice(
        ("join up last_end to over first_end", "join over first_end to up last_end", "join up first_end to over last_end")
    )
    bands = dice.choice(("cloth side_left", "cloth hem_left + cloth side_left"))
    return (
        f"{head}{hem}\n{trim}\n{_body('cloth', _start(dice, hem))}band up with trim along {bands}\n"
        f"band over with trim along cloth end\n{join}\n"
    )


def _strip_on(dice: Random) -> str:
    """A strip sewn along an edge and the end of a band or a welt beside it."""
    head, _ = _head(dice)
    hem = _hem(dice)
    trim = _seen(dice, "after", "trim")
    edge = dice.choice(
        (
            "cloth hem_right + cloth side_right",
            "cloth side_right + rim last_end",
            "cloth hem_right + cloth side_right + rim last_end",
        )
    )
    more = dice.choice(("", ", easing 3 cm", ", easing 1 cm"))
    return f"""{head}{hem}
{trim}
{_body("cloth", _start(dice, hem))}piece strap in plain
    levels foot 0 cm, head between long and long + 20 cm
    start 4 cm wide with e-wrap
    left edge straight to head called seam
    end cast off
band rim with trim along cloth end
join {edge} to strap seam{more}
"""
