"""A small garment with a name of every kind that the language has, and names that its printed words could be mistaken for."""

from __future__ import annotations

import re
from pathlib import Path

INSTRUCTIONS = Path(__file__).parents[2] / "grammar" / "english.lark"

SOUND = {
    "size": "S",
    "wider": "L",
    "measure": "length",
    "yarn": "wool",
    "other_yarn": "cotton",
    "fabric": "plain",
    "striped": "banded",
    "charted": "lace",
    "picture": "spots",
    "pictured": "spotted",
    "chart": "holes",
    "motif": "fish",
    "edging": "welt",
    "let": "across_all",
    "shape": "sides",
    "parameter": "until",
    "piece": "body",
    "sleeve": "tube",
    "pocket": "patch",
    "bottom": "hem",
    "low": "low",
    "high": "high",
    "top": "crown",
    "edge": "seam",
    "upper_edge": "arm",
    "opening": "slit",
    "slot": "thumb",
    "band": "trim",
    "finished": "wide_all",
    "tension": "6",
    "tight": "5",
}
"""Every kind of name in `SOURCE`, with one that nobody could mistake."""

SOURCE = """\
pattern "Names"
sizes {size} {wider}
    {measure} 12 13 cm
let {let} = 12 cm
machine standard
yarn {yarn} "wool", 100 g = 300 m
yarn {other_yarn} "cotton", 100 g = 300 m
chart {chart}
    key . knit
    key - purl
    | . . . - |
    | . . . - |
chart {motif}
    key . knit
    key o knit in {other_yarn}
    | . . o o . . |
    | . . o o . . |
    colours laid in blocks
chart {picture}
    key . knit
    key o hole
    key q two from left
    | . . . . |
    | . o q . |
fabric {fabric}
    stocking stitch in {yarn} at tension {tension}
    swatch 40 stitches by 60 rows = 20 cm by 21 cm, 10 g
fabric {striped}
    stripes of 4 rows {yarn}, 2 rows {other_yarn} at tension {tension}
    swatch 40 stitches by 60 rows = 20 cm by 21 cm, 10 g
fabric {charted}
    chart {chart} in {yarn} at tension {tension}, 1 edge stitch
    swatch 40 stitches by 60 rows = 20 cm by 21 cm, 10 g
fabric {pictured}
    chart {picture} in {yarn} at tension {tension}, 1 edge stitch
    swatch 40 stitches by 60 rows = 20 cm by 21 cm, 10 g
edging {edging} in {fabric}, 2 cm deep, rolled, added after, cast off chain
shape {shape}({parameter})
    edges straight to {parameter} called {edge}
piece {piece} in {fabric}
    levels {bottom} 0 cm, {low} 4 cm, {high} 8 cm, {top} {measure}
    start {let} wide on waste yarn, with {edging}
    use {shape}, {parameter} {low}
    edges straight to {high} called {edge}
    edges straight to {top} called {upper_edge}
    opening {opening} 3 cm wide from {high} to {top}, cast off
    motif {motif} at {low}
    end cast off
piece {sleeve} in {striped}, knit 2
    levels {bottom} 0 cm, {low} 3 cm, {top} 6 cm
    start 10 cm wide with e-wrap
    slot {slot} 3 cm wide at {low}, cast off
    edges straight to {top} called {edge}
    end cast off
piece {pocket} in {charted}
    levels {bottom} 0 cm, {low} 3 cm, {high} 5 cm, {top} 6 cm
    start 10 cm wide with e-wrap
    fabric {pictured} from {low} to {high}
    edges straight to {top} called {edge}
    end cast off
band {band} with {edging} along {piece} {upper_edge}_left
finished {finished} along {piece} {edge}
join {piece} {edge} to {piece} {edge}
join {sleeve} {edge} to {sleeve} {edge}
free {pocket} {edge}
making up
    step "Sew in all ends."
"""


def named(**names: str) -> str:
    """The garment with these names put for the sound ones of their kinds."""
    return SOURCE.format(**{**SOUND, **names})


def words() -> tuple[str, ...]:
    """Every word of the grammar of the printed words, as names could be spelt: alone, and whole phrases with `_` between."""
    text = re.sub(r"//.*", "", INSTRUCTIONS.read_text(encoding="utf-8"))
    phrases = re.findall(r'"([^"\n]*)"|(?<=[:|] )/((?:\\.|[^/\n])*)/', text)
    told = [re.sub(r"\(\?.*?\)|[^\w ]", " ", plain or pattern) for plain, pattern in phrases]
    alone = {word for phrase in told for word in phrase.split()}
    whole = {"_".join(phrase.split()) for phrase in told}
    return tuple(sorted(name for name in alone | whole if re.fullmatch(r"[^\W\d]\w{0,59}", name)))
