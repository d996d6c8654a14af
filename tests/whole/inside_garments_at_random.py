"""Garments shaped inside their pieces, drawn at random: darts, a gusset in the palm, openings that close again; and such whose
authors say which moves and steps come first and last."""

from __future__ import annotations

from random import Random

from tests.whole.garments_at_random import Drawn, _head, _lines, _start, _without


def _darts(kind: str, dice: Random) -> Drawn:
    """A tube that is taken in and let out along one or two darts at each side, in front and behind."""
    near = dice.choice((f"half / 2 - {dice.randrange(7, 10)} cm from centre", f"{dice.randrange(7, 10)} cm from the edge"))
    also = dice.choice(("", f" and {dice.choice((0, 1))} cm from the edge"))
    # What several lines take is taken from between the two outermost.
    third = " and 3 cm from centre" if also and "from centre" in near and dice.random() < 0.5 else ""
    taken, let_out = dice.randrange(3, 6), dice.randrange(2, 6)
    body = f"""piece body_half in plain, knit 2
    levels hem 0 cm, hip 4 cm, low 19 cm, high 22 cm, top 40 cm
    start half wide {_start(dice)}
    edges straight to hip called side
    edges slope to half - {taken} cm wide at low called side, shaped {near}{also}{third}
    edges straight to high called side
    edges slope to half - {taken - let_out} cm wide at top called side, shaped {near}
    end cast off
"""
    join = "join body_half side to body_half side, each to the next all round\n"
    text = _head(kind, dice) + body + join
    shaped = f"shaped {near}{also}{third}"
    damages = {
        "a dart beyond the edge": text.replace(shaped, "shaped half / 2 from centre"),
        "darts across one another": text.replace(shaped, "shaped half - 2 cm from the edge"),
        "lines side by side": text.replace(shaped, "shaped 3 cm from centre and 3.1 cm from centre and 9 cm from centre"),
        "a dart in a rib": text.replace("    end cast off", "    fabric rib from hem to high\n    end cast off"),
        "taken in past the dart": text.replace(f"half - {taken} cm wide at low", "4 cm wide at low"),
    }
    return Drawn(kind, text, damages)


def _palm(kind: str, dice: Random) -> Drawn:
    """A flat palm with a gusset that grows out of its middle, sewn to a back of the same width."""
    centre = dice.choice(("", ", centre stitch"))
    wide = dice.randrange(3, 6)
    text = (
        _head(kind, dice)
        + f"""piece palm in plain{centre}
    levels cuff 0 cm, base 2 cm, full 10 cm, top 11 cm
    start wrist wide with e-wrap
    edges straight to base called seam
    edges slope to wrist + {wide} cm wide at full called seam, shaped {dice.choice((1, 2))} cm from centre
    edges straight to top called seam
    end cast off
piece back in plain
    levels cuff 0 cm, base 2 cm, full 10 cm, top 11 cm
    start wrist wide with e-wrap
    edges straight to top called seam
    end cast off
join palm seam to back seam
"""
    )
    damages = {
        "too many in too few rows": text.replace(f"wrist + {wide} cm", "wrist + 24 cm"),
        "a gusset that curves": text.replace("edges slope to", "edges curve to"),
        "a seam across": text.replace("join palm seam to back seam", "join palm seam_left to back seam_left"),
    }
    return Drawn(kind, text, damages)


def _closing(kind: str, dice: Random) -> Drawn:
    """A panel with an opening that narrows to nothing, and slots side by side above it."""
    where = dice.choice(("", f", {dice.randrange(2, 8)} cm left of centre", f", {dice.randrange(2, 8)} cm right of centre"))
    wide = dice.choice(("0 cm", "3 cm", "6 cm"))
    widens = f"        edges slope to 7 cm wide at middle{dice.choice(('', ', fashioned 2 in'))}\n" if wide == "0 cm" else ""
    closes = dice.choice(("slope", "slope", "arch"))
    taken = ", cast off" if wide != "0 cm" else ""
    gap = f"    opening keyhole {wide} wide from low to high{where}{taken}\n{widens}        edges {closes} to 0 cm wide at high\n"
    sides = (("one", "left"), ("two", "right"))
    slots = "".join(f"    slot {name} 4 cm wide at row, 8 cm {side} of centre, cast off\n" for name, side in sides)
    text = (
        _head(kind, dice)
        + f"""piece panel in plain
    levels hem 0 cm, low 6 cm, middle 16 cm, high 32 cm, row 36 cm, top 42 cm
    start half wide with e-wrap
{gap}{slots}    end cast off
"""
    )
    damages = {
        "past nothing": text.replace(f"{closes} to 0 cm wide at high", "slope by -9 cm at high"),
        "slots across one another": text.replace("8 cm left of centre, cast off", "7 cm right of centre, cast off"),
        "a slot in the gap": text.replace("wide at row", "wide at middle"),
        "two openings at once": text.replace("    slot one", f"    opening vent 0 cm wide from middle to row{where}\n    slot one"),
    }
    return Drawn(kind, text, damages)


def _pleats(kind: str, dice: Random) -> Drawn:
    """A skirt of panels with fold lines above a hem, taken in above them."""
    every = dice.randrange(5, 13)
    which = dice.choice((f"every {every}th", f"at {dice.randrange(3, 7)} cm from centre and 4 cm from the edge"))
    start = dice.choice(("with e-wrap", "on waste yarn, with welt", "with chain"))
    low = dice.choice(("line", "line", "hem")) if start != "on waste yarn, with welt" else "line"
    high = dice.choice(("band", "band", "top"))
    worn = dice.choice(("", ", worn half / 3 wide"))
    out = f"    needles out {which} from {low} to {high}{worn}\n"
    # What is out to the top is not taken in above the band.
    taken = "edges slope to half - 2 cm wide at top" if high == "band" else "edges straight to top"
    text = (
        _head(kind, dice)
        + f"""piece panel in plain, knit 2
    levels hem 0 cm, line 1 cm, band 24 cm, top 27 cm
    start half wide {start}
    edges straight to band called side
{out}    {taken} called side
    end {dice.choice(("cast off", "cast off sewn", "gathered"))}
join panel side to panel side, each to the next all round
"""
    )
    damages = {
        "from the start of an edging": text.replace(start, "on waste yarn, with welt").replace(f"from {low} to", "from hem to"),
        "into the shaping": text.replace(taken, "edges slope to half - 2 cm wide at top").replace(f"to {high}{worn}\n", "to top\n"),
        "worn wider than it is": text.replace(f"to {high}{worn}\n", f"to {high}, worn half + 1 cm wide\n"),
        "side by side": text.replace(which, "every 1st"),
        "taken in below the band": text.replace("edges straight to band called", "edges slope by -2 cm at band called"),
        "a slot among them": text.replace(out, out + "    slot pocket 3 cm wide at band, cast off\n"),
    }
    return Drawn(kind, text, damages)


def _exact(kind: str, dice: Random) -> Drawn:
    """A sleeveless top whose armholes begin or end with a move, with a boat neck between shoulders in steps that differ."""
    moves = dice.choice(("", ", beginning with a move", ", ending with a move", ", beginning with a move, ending with a move"))
    armhole = dice.choice(("slope to across wide at tip", "slope to across wide at tip, fashioned 2 in"))
    steps = dice.choice(
        (
            "-step then -0.9 * step then -0.8 * step",
            "-1.1 * step 2 times then -0.5 * step",
            "-0.9 * step 3 times",
            "-0.6 * step, stairs times",
        )
    )
    larger = f", larger steps {dice.choice(('first', 'last'))}" if " then " not in steps else ""
    joins = dice.sample(
        [
            "join back side to front side",
            "join back stairs_left to front stairs_right",
            "join back stairs_right to front stairs_left",
        ],
        3,
    )
    band = "band top_band with collar along back end + front end"
    text = (
        _head(kind, dice).replace("sizes S L\n", "sizes S L\n    stairs 3 4\n" if "stairs" in steps else "sizes S L\n")
        + "let across = half - 4 cm\nlet step = (across - neck) / 6\n"
        + f"""piece back in plain
    levels hem 0 cm, underarm body, tip body + depth, top body + depth + 5 cm
    start half wide {_start(dice)}
    edges straight to underarm called side
    edges {armhole}{moves}
    edges steps {steps} to top{larger} called stairs
    end on waste yarn
piece front like back
{band}
{_lines(joins)}"""
    )
    damages = {
        "steps that turn back": text.replace(f"steps {steps}", "steps -step then step"),
        "ends in a curve": text.replace(f"{armhole}{moves}", "curve to across wide at tip, ending with a move"),
        "larger steps of a slope": text.replace(f"steps {steps} to top{larger}", "slope by -2 * step at top, larger steps last"),
        "neckband forgotten": _without(text, band),
        "more steps than stitches": text.replace(f"steps {steps}", "steps -0.1 cm 40 times"),
    }
    return Drawn(kind, text, damages)
