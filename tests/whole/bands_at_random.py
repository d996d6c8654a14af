"""Edgings, bands and strips drawn at random: every kind the language knows, on every edge that can have it, with buttonholes."""

from __future__ import annotations

import re
from dataclasses import dataclass
from random import Random

from tests.whole.beds_at_random import bed_facts, lacking

BEDS = {"fine": (3.6, 250), "standard": (4.5, 200), "mid": (6.5, 150), "bulky": (9.0, 110)}
"""Pitch in mm and needles, for swatches that the bed could have knitted."""


@dataclass(frozen=True, slots=True)
class Cloth:
    """What the swatches say."""

    machine: str
    per_cm: float
    text: str
    every: int


def cloth(dice: Random) -> Cloth:
    """A bed, and a plain fabric and a rib that could be knitted on it."""
    machine = dice.choice(sorted(BEDS))
    pitch, _ = BEDS[machine]
    # A stitch is knitted between two thirds and nine tenths of the pitch wide (from memory).
    wide = pitch * dice.uniform(0.66, 0.95) / 10
    high = wide * dice.uniform(0.6, 0.8)
    rib_wide, rib_high = wide * dice.uniform(0.85, 1.0), high * dice.uniform(0.85, 1.05)
    every = dice.choice((2, 2, 3, 3, 3, 4, 5, 6))
    right = "\n    right side purl" if dice.random() < 0.15 else ""
    facts = bed_facts(Random(f"{wide} {every}")) + lacking(Random(f"{every} {wide}"))
    text = f"""machine {machine}{facts}
yarn wool "a yarn", 100 g = {dice.choice((120, 200, 400))} m
fabric plain
    stocking stitch in wool at tension 6{right}
    swatch 40 stitches by 60 rows = {40 * wide:.1f} cm by {60 * high:.1f} cm
fabric rib
    latched rib every {every}{_th(every)} needle in wool at tension 4{right}
    swatch 40 stitches by 60 rows = {40 * rib_wide:.1f} cm by {60 * rib_high:.1f} cm
"""
    return Cloth(machine, 1 / wide, text, every)


def _th(number: int) -> str:
    return {2: "nd", 3: "rd"}.get(number, "th")


def sizes(dice: Random) -> str:
    """One to three of them; `long` and `wide` are measures of the piece."""
    count = dice.choice((1, 1, 2, 3))
    long, wide = dice.uniform(8, 50), dice.uniform(8, 34)
    longs = " ".join(f"{long + i * dice.choice((1, 2)):.1f}" for i in range(count))
    wides = " ".join(f"{wide + i * dice.choice((1, 2)):.1f}" for i in range(count))
    return f"sizes {' '.join('ABC'[:count])}\n    long {longs} cm\n    wide {wides} cm\n"


def drawn(seed: int) -> tuple[str, str]:
    """(kind, source)."""
    dice = Random(seed)
    kind = dice.choice(KINDS)
    return kind.__name__.strip("_"), kind(dice)


def _depth(dice: Random, least: float = 0.8) -> str:
    return dice.choice((f"{dice.uniform(least, 7):.1f} cm", f"{2 * dice.randint(2, 20)} rows"))


def _edging(dice: Random, when: str, name: str = "trim", closed: str = "") -> str:
    """An edging of any kind that can be had `when`: "after" or "first"."""
    kinds = ["rib", "rib", "rib", "plain", "folded", "picot", "rolled"]
    kinds += ["facing", "chained"] if when == "after" else ["mock rib 1 by 1", "mock rib 2 by 1"]
    kind = dice.choice(kinds)
    off = closed or dice.choice(("chain", "sewn"))
    off = f", cast off {off}" if when == "after" else ""
    order = "added after" if when == "after" else "knitted first"
    fold = dice.choice(("", ", fold row at tension 8"))
    inside = dice.choice(("", ", inside at tension 5"))
    depth = _depth(dice)
    if kind == "rib":
        return f"edging {name} in rib, {depth} deep, {order}{off}"
    if kind == "plain":
        return f"edging {name} in plain, {depth} deep, {order}{off}"
    if kind == "chained":
        return f"edging {name} in plain, chained, {order}{off}"
    if kind == "facing":
        return f"edging {name} in plain, {depth} deep, facing, fold row at tension 8, {order}{off}"
    if kind == "picot":
        return f"edging {name} in plain, {depth} deep, picot{inside}, {order}{off}"
    if kind == "rolled":
        return f"edging {name} in plain, {depth} deep, rolled, {order}{off}"
    return f"edging {name} in plain, {depth} deep, {kind}{fold}{inside}, {order}{off}"


def _ratio(dice: Random) -> str:
    return dice.choice(("", "", ", 3 stitches to 4 rows", ", 2 stitches to 3 rows", ", 1 stitch to 1 row"))


def _holes(dice: Random) -> str:
    if dice.random() < 0.15:
        return ""
    count, over = dice.choice((1, 2, 3, 4, 5, 6, 7, 8, 12)), dice.choice((1, 1, 2, 2, 3, 4, 5))
    first, last = dice.uniform(0.4, 3.5), dice.uniform(0.4, 3.5)
    return f", buttonholes {count} over {over} {'stitch' if over == 1 else 'stitches'}, {first:.1f} cm first, {last:.1f} cm last"


def _head(dice: Random) -> tuple[str, Cloth]:
    made = cloth(dice)
    return f'pattern "Drawn"\n{sizes(dice)}{made.text}', made


def _over(count: int) -> str:
    return f"{count} {'stitch' if count == 1 else 'stitches'}"


def strip(dice: Random) -> str:
    """A band knitted lengthways, its columns along its length, with buttonholes."""
    head, made = _head(dice)
    over = dice.choice((1, 1, 2, 2, 3, 4))
    width = (over + dice.randint(1, 14)) / made.per_cm
    distance = dice.uniform(0, max(width - over / made.per_cm, 0.1))
    low, high = dice.uniform(0.5, 4), dice.uniform(0.5, 4)
    cast = dice.choice(("with e-wrap", "with chain", "on waste yarn"))
    off = dice.choice(("cast off", "cast off sewn", "on waste yarn"))
    fabric = dice.choice(("rib", "rib", "rib", "plain"))
    edges = "edges straight to top called side"
    if dice.random() < 0.25:
        way = dice.choice(("", ", fashioned 2 in", ", fashioned 3 in"))
        slope = f"edges slope to {width * dice.uniform(0.5, 1.5):.2f} cm wide at top called side{way}"
        edges = f"edges straight to first called foot\n    {slope}"
    zone = "    fabric rib from first to top\n" if fabric == "plain" and dice.random() < 0.6 else ""
    where = f"from first to last, {distance:.2f} cm from the {dice.choice(('left', 'right'))} edge"
    holes = f"    buttonholes {dice.choice((1, 1, 2, 3, 5, 8))} over {_over(over)} {where}\n" if dice.random() < 0.85 else ""
    text = f"""{head}piece strip in {fabric}
    levels bottom 0 cm, first {low:.1f} cm, last long - {high:.1f} cm, top long
    start {width:.2f} cm wide {cast}
    {edges}
{zone}{holes}    end {off}
"""
    loose = [f"strip {edge}" for edge, way in (("start", cast), ("end", off)) if "waste" in way]
    if loose:
        text += "edging rim in plain, chained, added after, cast off chain\n"
        text += "".join(f"band rim_{n} with rim along {edge}\n" for n, edge in enumerate(loose))
    return text


def picked_up(dice: Random) -> str:
    """A band along a row edge, straight or shaped."""
    head, _ = _head(dice)
    shape = dice.choice(("straight", "straight", "slope by -3 cm", "curve by -4 cm", "arch by 3 cm"))
    line = f"right edge {shape} {'to' if shape == 'straight' else 'at'} top called edge"
    return f"""{head}{_edging(dice, "after")}
piece front in plain
    levels hem 0 cm, top long
    start wide wide with e-wrap
    left edge straight to top called side
    {line}
    end cast off
band trim_band with trim along front edge{_holes(dice)}{_ratio(dice)}
"""


def welt(dice: Random) -> str:
    """An edging at the start, first or after, and a band at the end."""
    head, _ = _head(dice)
    start = "on waste yarn" + dice.choice(("", " by hand"))
    shape = dice.choice(("straight to top", "slope to wide * 0.7 wide at top", "slope to wide * 1.2 wide at top"))
    return f"""{head}{_edging(dice, dice.choice(("after", "first")), "hem")}
{_edging(dice, "after")}
piece front in plain
    levels hem 0 cm, top long
    start wide wide {start}, with hem
    edges {shape} called side
    end {dice.choice(("on waste yarn", "cast off"))}
band trim_band with trim along front end{_holes(dice)}
"""


def knitted_on(dice: Random) -> str:
    """An edging knitted on at the end of a piece, with or without one at its start, over a slope or above a rib."""
    head, _ = _head(dice)
    start = dice.choice(("with e-wrap", "on waste yarn, with hem", "on waste yarn, with trim"))
    shape = dice.choice(("straight to top", "slope to wide * 0.7 wide at top", "slope to wide * 1.2 wide at top"))
    patch = dice.choice(("", "    fabric rib from mid to top\n"))
    copies = dice.choice(("", ", knit 2", ", centre stitch"))
    hem = f"{_edging(dice, 'after', 'hem')}\n" if "hem" in start else ""
    return f"""{head}{_edging(dice, "after")}
{hem}piece front in plain{copies}
    levels bottom 0 cm, mid long / 2, top long
    start wide wide {start}
    edges {shape} called side
{patch if "straight" in shape else ""}    end with trim
{dice.choice(("", "join front side to front side"))}
"""


def neck(dice: Random) -> str:
    """A band round a neck, over two joined pieces or up one front."""
    head, _ = _head(dice)
    taken = dice.choice(("", ", cast off"))
    end = dice.choice(("on waste yarn", "cast off"))
    shape = dice.choice(("round", "v", "square"))
    text = f"""{head}{_edging(dice, "after")}
piece body in plain, knit 2
    levels hem 0 cm, top long + 6 cm
    start wide + 12 cm wide with e-wrap
    edges straight to top called side
    neck wide * 0.6 wide, {dice.uniform(1.5, 6):.1f} cm deep, {shape}{taken}
    end {end}
"""
    if dice.random() < 0.5:
        join = "join body shoulder to body shoulder, each to the next all round"
        return f"{text}{join}\nband trim_band with trim along body neck + body neck{_holes(dice)}{_ratio(dice)}\n"
    if end == "on waste yarn":
        text += "edging rim in plain, chained, added after, cast off chain\n"
        text += "".join(f"band rim_{s} with rim along body shoulder_{s}\n" for s in ("left", "right"))
    return f"{text}band trim_band with trim along body neck{_holes(dice)}{_ratio(dice)}\n"


def all_round(dice: Random) -> str:
    """One band up a front, round the neck and down the other front: often wider than the bed."""
    head, _ = _head(dice)
    where = dice.choice(("", " along right_front edge", " along left_front neckline + left_front edge", " along back neck"))
    holes = re.sub(r"(over \d stitch(es)?)", rf"\1{where}", _holes(dice))
    facing = dice.choice(("", "", ", wrong side facing"))
    return f"""{head}{_edging(dice, "after")}
piece back in plain
    levels hem 0 cm, underarm long, top long + 20 cm
    start wide + 14 cm wide with e-wrap
    edges straight to underarm called side
    edges straight to top called armhole
    neck wide / 2 + 2 cm wide, 2 cm deep, round
    end on waste yarn
piece left_front in plain
    levels hem 0 cm, underarm long, throat long + {dice.uniform(2, 12):.1f} cm, top long + 20 cm
    start wide / 2 + 6 cm wide with e-wrap
    left edge straight to underarm called side
    left edge straight to top called armhole
    right edge straight to throat called edge
    right edge slope by -wide / 4 at top called neckline
    end on waste yarn
piece right_front in plain, mirror of left_front
join back shoulder to right_front end + left_front end
join back side to right_front side
join back side to left_front side
band trim_band with trim along right_front edge + right_front neckline + back neck + left_front neckline + left_front edge{holes}{
        facing
    }
"""


def over_ends(dice: Random) -> str:
    """Bands over the ends of welts, and one band over the ends of others, in every order."""
    head, _ = _head(dice)
    hem = _edging(dice, dice.choice(("after", "first")), "hem")
    open_start = "added after" in hem or any(f", {kind}" in hem for kind in ("folded", "picot", "mock rib"))
    start = dice.choice(("on waste yarn", "on waste yarn by hand") if open_start else ("with e-wrap", "with chain"))
    neck = "right_front neckline + back neck + left_front neckline"
    up, down = "right_front hem_left + right_front edge", "left_front edge + left_front hem_right"
    holes = re.sub(r"(over \d stitch(es)?)", r"\1 along right_front edge", _holes(dice)) if dice.random() < 0.5 else ""
    bands = dice.choice(
        (
            [("all_round", "trim", f"{up} + {neck} + {down}{holes}")],
            [
                ("neckband", "collar", neck),
                ("right_band", "trim", f"{up} + neckband first_end{holes}"),
                ("left_band", "trim", f"neckband last_end + {down}"),
            ],
            [
                ("right_band", "trim", f"{up}{holes}"),
                ("left_band", "trim", down),
                ("neckband", "collar", f"right_band last_end + {neck} + left_band first_end"),
            ],
        )
    )
    told = "".join(f"band {name} with {edging} along {along}\n" for name, edging, along in bands)
    collar = f"{_edging(dice, 'after', 'collar')}\n" if "collar" in told else ""
    return f"""{head}{_edging(dice, "after")}
{collar}{hem}
piece back in plain
    levels bottom 0 cm, top long + 20 cm
    start wide + 14 cm wide {start}, with hem
    edges straight to top called side
    neck wide / 2 + 2 cm wide, 2 cm deep, round
    end on waste yarn
piece left_front in plain
    levels bottom 0 cm, throat long + {dice.uniform(2, 12):.1f} cm, top long + 20 cm
    start wide / 2 + 6 cm wide {start}, with hem
    left edge straight to top called side
    right edge straight to throat called edge
    right edge slope by -wide / 4 at top called neckline
    end on waste yarn
piece right_front in plain, mirror of left_front
join back shoulder to right_front end + left_front end
join back side to right_front side
join back side to left_front side
{told}"""


def parted(dice: Random) -> str:
    """A band that the bed has no room for: over two fronts and the neck, or up the long edge of a piece, or of two."""
    if dice.random() < 0.6:
        return _on_a_narrow_bed(dice, all_round(dice), 14)
    head, _ = _head(dice)
    shape = dice.choice(("straight to", "straight to", "slope by -6 cm at", "curve by -4 cm at", "arch by 3 cm at"))
    copies = dice.choice(("", "", ", knit 2"))
    cut = dice.choice(("", "    neck 4 cm wide, long / 3 deep, v\n"))
    text = f"""{head}{_edging(dice, "after")}
piece front in plain{copies}
    levels hem 0 cm, mid long, top 2 * long + 20 cm
    start wide + 6 cm wide with e-wrap
    left edge straight to top called side
    right edge straight to mid called {dice.choice(("edge", "below"))}
    right edge {shape} top called edge
{cut}    end cast off
"""
    along = "front edge + front below" if "called below" in text else "front edge"
    along = "front neck" if cut and dice.random() < 0.5 else along
    return _on_a_narrow_bed(dice, f"{text}band trim_band with trim along {along}{_holes(dice)}\n", 16)


def _on_a_narrow_bed(dice: Random, text: str, more_cm: int) -> str:
    """The same on a bed that its widest piece just finds room on."""
    wide = max(float(n) for n in re.findall(r"[\d.]+", re.findall(r"^    wide (.*)", text, re.M)[0])) + more_cm
    stitches, cm = re.findall(r"swatch (\d+) stitches by \d+ rows = ([\d.]+) cm", text)[0]
    needles = 2 * int(wide * int(stitches) / float(cm) / 2) + dice.choice((6, 12, 30))
    pitch, _ = BEDS[re.findall(r"^machine (\w+)", text, re.M)[0]]
    return re.sub(r"^machine \w+", f"machine mine\n    needles {needles}\n    pitch {pitch} mm", text, flags=re.M)


def begun(dice: Random) -> str:
    """A piece begun along an edge, in rib or plain, with buttonholes or a rib over a part of it."""
    head, _ = _head(dice)
    fabric = dice.choice(("rib", "rib", "plain"))
    deep = dice.uniform(2, 14)
    zone = "    fabric rib from mid to top\n" if fabric == "plain" else ""
    where = f"from mid to top, {dice.uniform(0, 4):.1f} cm from the left edge"
    holes = f"    buttonholes 1 over {_over(dice.choice((1, 2, 3)))} {where}\n"
    along, end = dice.choice((("end", "on waste yarn"), ("end", "cast off"), ("edge", "cast off")))
    return f"""{head}piece front in plain
    levels hem 0 cm, top long
    start wide wide with e-wrap
    left edge straight to top called side
    right edge straight to top called edge
    end {end}
piece collar in {fabric}
    levels seam 0 cm, mid {deep / 2:.1f} cm, top {deep:.1f} cm
    start {dice.choice((f"wide * {dice.uniform(0.9, 1.0):.2f} wide ", ""))}along front {along}
    edges {dice.choice(("straight to top", "slope to wide * 0.6 wide at top", "slope to wide * 0.6 wide at top, fashioned 3 in"))}
{zone}{holes if dice.random() < 0.7 else ""}    end cast off
"""


def in_one(dice: Random) -> str:
    """A rib over a part of a piece, the whole width or a panel, with slots, buttonholes and a neck about it."""
    head, made = _head(dice)
    wide = dice.uniform(5, 16)
    far = dice.uniform(0, wide / 2)
    panel = f"{dice.choice((1, 2, 3, 4, 8))} stitches wide, {far:.1f} cm {dice.choice(('left', 'right'))} of centre"
    zone = dice.choice(("    fabric rib from mid to last\n", f"    fabric panel from mid to last, {panel}\n", ""))
    slot = dice.choice(
        (
            f"    slot pocket {dice.uniform(1, 4):.1f} cm wide at last, cast off\n",
            f"    slot pocket {dice.uniform(1, 4):.1f} cm wide at mid, cast off\n",
            f"    buttonholes 3 over {_over(dice.randint(1, 3))} from first to last, 1.5 cm from the left edge\n",
            "",
        )
    )
    neck = f"    neck {wide / 3:.1f} cm wide, {dice.uniform(1, 5):.1f} cm deep, round, cast off\n"
    edges = dice.choice(("straight to top", f"slope to {wide * 0.7:.1f} cm wide at top", "out 1 stitch every 6 rows to top"))
    columns = made.text[made.text.index("fabric plain") :].split("fabric rib")[0].replace("fabric plain", "fabric panel")
    columns = columns.replace("stocking stitch", f"latched rib every {made.every}{_th(made.every)} needle")
    return f"""{head}{columns}piece front in plain
    levels hem 0 cm, first 2 cm, mid long / 2, last long - 1.5 cm, top long
    start {wide:.1f} cm wide with e-wrap
    edges {edges} called side
{zone}{slot}{dice.choice(("", neck))}    end cast off
"""


def tip(dice: Random) -> str:
    """A piece or the parts beside its neck led to few stitches with a transfer tool."""
    head, made = _head(dice)
    left = dice.randint(1, 6)
    wide = dice.uniform(8, 30)
    tool = dice.choice((2, 2, 3))
    way = f"fashioned {tool} in"
    neck = wide / 2 + dice.uniform(-1, 1)
    parted = dice.random() < 0.7
    top = neck + 2 * left / made.per_cm if parted else left / made.per_cm
    cut = f"    neck {neck:.2f} cm wide, {dice.uniform(1, 6):.1f} cm deep, {dice.choice(('round', 'v'))}, {way}\n" if parted else ""
    rest = "" if not parted or dice.random() < 0.3 else "edging rim in plain, chained, added after, cast off chain\n"
    cut = cut.rstrip("\n") + ("" if rest or not cut else ", cast off") + ("\n" if cut else "")
    band = "band rim_band with rim along front neck\n" if rest else ""
    return f"""{head}{rest}piece front in plain
    levels hem 0 cm, chest long / 2, top long
    start {wide:.1f} cm wide with e-wrap
    edges straight to chest
    edges {dice.choice(("slope", "curve"))} to {top:.2f} cm wide at top called side, {way}
{cut}    end cast off
{band}"""


KINDS = (
    strip,
    strip,
    picked_up,
    picked_up,
    welt,
    knitted_on,
    neck,
    all_round,
    over_ends,
    over_ends,
    parted,
    parted,
    begun,
    in_one,
    tip,
)
