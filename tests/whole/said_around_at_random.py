"""What a source says around its pieces, drawn at random: front matter, materials, choices, shapes, what is required.

Nothing of it changes what is knitted, so a garment that is proven stays so.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from random import Random

from tests.whole.garments_at_random import Drawn, drawn

GERMAN = ', in german "auf Deutsch gesagt"'
_YARN = re.compile(r'^yarn wool ("[^"]*"), .*$', re.MULTILINE)
_STRAIGHT = re.compile(r"^    edges straight to (?P<level>[a-z]+) called (?P<edge>[a-z_]+)$", re.MULTILINE)
_HOLED = re.compile(r"^band buttonhole_band .*$", re.MULTILINE)
_SIDES = re.compile(r"^join back side to [a-z_]+ side$", re.MULTILINE)
_LEFT_FRONT = re.compile(r"^piece left_front in plain\n((?:    .*\n)+)", re.MULTILINE)
_MIRRORED = "piece right_front in plain, mirror of left_front\n"
_BY_SIDE = re.compile(r"\b(?:left|right)\b")
_TURNED_START = re.compile(r"start ([a-z0-9 /.]+) right to ([a-z0-9 /.]+) right of centre")
_SWATCH = re.compile(r"^    swatch .*$", re.MULTILINE)
_SLOPE = re.compile(r"^    edges slope to [a-z0-9 *-]+ wide at [a-z]+(?= called|$)", re.MULTILINE)
_PIECE = re.compile(r"^piece (\w+) ", re.MULTILINE)
_PATTERN = re.compile(r'^pattern "[^"]*"$', re.MULTILINE)
_NECKBAND = re.compile(r"^band neckband ", re.MULTILINE)
_LAST_SIZE = re.compile(r"^    wrist .*$", re.MULTILINE)


def said_around(seed: int) -> Drawn:
    """A garment of the common kinds with more said about it."""
    dice = Random(f"around {seed}")
    one = drawn(seed)
    changes = [change for change in _CHANGES if dice.random() < 0.5]
    text = one.text
    for change in changes:
        text = change(text, dice)
    return Drawn(one.kind, text, {"nothing of that name": text + 'needed "buttons", buttons_of_nobody\n'})


def _german(dice: Random) -> str:
    return dice.choice(("", GERMAN))


def _front_matter(text: str, dice: Random) -> str:
    lines = [f'{what} "{said}"{_german(dice)}' for what, said in _FRONT if dice.random() < 0.6]
    if dice.random() < 0.5:
        lines.append(f'note "Longer by a hand is long enough."{_german(dice)}, for {dice.choice(("S", "L", "S L"))}')
    block = "".join(f"\n    {line}" for line in lines)
    return _PATTERN.sub(lambda pattern: pattern[0] + dice.choice(("", GERMAN)) + block, text, count=1)


_FRONT = (
    ("summary", "A garment drawn at random."),
    ("difficulty", "for practised hands"),
    ("story", "Nobody has thought of it before."),
    ("designer", "The Dice Workshop"),
    ("copyright", "2026, The Dice Workshop"),
    ("edition", "First edition"),
    ("date", "November 2026"),
    ("note", "Wash the swatch before you measure it."),
)


def _yarn(text: str, dice: Random) -> str:
    amount = dice.choice(("50 g = 200 m", "500 g of 2/28 Nm", "250 g of 83 tex", "100 g of 8/2 Ne", "wool_one + wool_one together"))
    fibre = dice.choice(("", ", fibre wool", ", fibre wool + polyamide", ", fibre cotton"))
    shown = dice.choice(("", ', shown "#23395d"'))
    one = 'yarn wool_one "one strand", 50 g = 400 m\n' if "together" in amount else ""
    fibre = "" if one else fibre
    return _YARN.sub(lambda yarn: f"{one}yarn wool {yarn[1]}, {amount}{fibre}{shown}{_german(dice)}", text, count=1)


def _body(text: str, dice: Random) -> str:
    rows = dice.sample(("bust from women bust, S 90 cm, to fit", 'head 54 58 cm, to fit, "round the head"', "buttons 5 6"), 2)
    sized = _LAST_SIZE.sub(lambda row: row[0] + "".join(f"\n    {row}" for row in rows), text, count=1)
    told = {
        "bust": 'require bust >= 20 cm because "nobody is smaller"' + _german(dice),
        "head": "require head >= 20 cm",
        "buttons": f'needed "buttons, 15 mm"{_german(dice)}, buttons',
    }
    return sized + "".join(f"{told[row.split()[0]]}\n" for row in rows)


def _needed(text: str, dice: Random) -> str:
    lines = dice.sample(
        (
            'needed "pins"',
            'needed "a press stud", in german "ein Druckknopf"',
            'needed "elastic, 2 cm wide", 0.9 * chest',
            f"cord {_PIECE.search(text)[1]} 90 cm long",
        ),
        2,
    )
    return text + "".join(f"{line}\n" for line in lines)


def _passed_through(text: str, dice: Random) -> str:
    if not _NECKBAND.search(text):
        return text
    return text + dice.choice(
        (
            "through neckband passes head of 20 cm\n",
            "through neckband passes head of 20 cm, stretches to 150 %\n",
            "through neckband never passes head of 500 cm\n",
        )
    )


def _making_up(text: str, dice: Random) -> str:
    return text + f'making up\n    step "Sew in all ends."{_german(dice)}\n    step "Block the pieces."\n'


def _choice(text: str, _: Random) -> str:
    lines = 'choice trim plain, beaded\nfor trim beaded\n    needed "beads", 12\nfor trim plain\n    needed "a crochet hook"\n'
    return text + lines


def _shape(text: str, _: Random) -> str:
    """One straight run of a piece becomes a shape that the piece uses."""
    run = _STRAIGHT.search(text)
    if run is None:
        return text
    shape = "shape upright(upto, named)\n    edges straight to upto called named\n"
    return f"{text[: run.start()]}    use upright, upto {run['level']}, named {run['edge']}{text[run.end() :]}{shape}"


def _dyed(text: str, _: Random) -> str:
    """The sleeves in a yarn of their own, knitted as the other one."""
    if "piece sleeve in plain" not in text:
        return text
    dyed = 'yarn blue "the same in blue", 50 g = 200 m\nfabric navy like plain, in blue\n'
    return text.replace("piece sleeve in plain", "piece sleeve in navy") + dyed


def _measured(text: str, dice: Random) -> str:
    """What comes out finished, and what is measured along an edge."""
    piece = _PIECE.search(text)[1]
    fits = dice.choice(("", ", fits chest", ", fits chest, stretches"))
    return f'{text}finished across_all 2 * half{fits}\nneeded "tape"{_german(dice)}, along {piece} start\n'


def _swatch(text: str, dice: Random) -> str:
    return _SWATCH.sub(lambda swatch: swatch[0] + dice.choice((", 22 g", ", 2 cm to a stitch")), text, count=1)


def _simple(text: str, dice: Random) -> str:
    return _SLOPE.sub(lambda slope: slope[0] + dice.choice((", simple", "")), text)


def _lap(text: str, dice: Random) -> str:
    """A cardigan that is buttoned, and its buttons."""
    if "band button_band" not in text or "buttonholes" in text:
        return text
    buttoned = _HOLED.sub(lambda band: f"{band[0]}, buttonholes 4 over 2 stitches, 2 cm first, 2 cm last", text, count=1)
    wide = dice.choice(("", ", 1.5 cm wide"))
    return (
        f'{buttoned}lap buttonhole_band over button_band{wide}\nneeded "buttons, 15 mm", for each buttonhole of buttonhole_band\n'
    )


def _spelled_out(text: str, dice: Random) -> str:
    """What is meant when nothing is said, said."""
    return _SIDES.sub(lambda join: join[0] + dice.choice((", sewn", "")), text)


def _mirrored_out(text: str, _: Random) -> str:
    """The right front of a cardigan written out, in place of `mirror of`."""
    front = _LEFT_FRONT.search(text)
    if front is None or _MIRRORED not in text:
        return text
    turned = _BY_SIDE.sub(lambda side: "right" if side[0] == "left" else "left", front[1])
    return text.replace(
        _MIRRORED, "piece right_front in plain\n" + _TURNED_START.sub(r"start \2 right to \1 right of centre", turned)
    )


_CHANGES: tuple[Callable[[str, Random], str], ...] = (
    _front_matter,
    _yarn,
    _body,
    _needed,
    _passed_through,
    _choice,
    _shape,
    _dyed,
    _measured,
    _swatch,
    _simple,
    _lap,
    _spelled_out,
    _mirrored_out,
    _making_up,
)
