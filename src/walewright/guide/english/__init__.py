"""english: the guide in English."""

from __future__ import annotations

from walewright.guide.english import advice, charts, commands, drawings, facts, hand_tools, page, serve, shelf, tables, text_copy
from walewright.guide.english.howto import HOW_TO
from walewright.guide.model import Guide
from walewright.report.english.garment import CAUTIONS
from walewright.report.wording import Language

__all__ = ["LANGUAGE"]


def _ordinal(number: int) -> str:
    if number % 100 in (11, 12, 13):
        return f"{number}th"
    return f"{number}{ {1: 'st', 2: 'nd', 3: 'rd'}.get(number % 10, 'th') }"


PHRASES = (
    advice.LINES,
    CAUTIONS,
    commands.COMMANDS,
    charts.CHARTS,
    drawings.DRAWINGS,
    facts.FACTS,
    page.PAGE,
    serve.SERVE,
    shelf.SHELF,
    tables.TABLES,
    text_copy.TEXT_COPY,
    hand_tools.TOOLS,
)

TERMS = {
    "left": ("left", "left"),
    "right": ("right", "right"),
    "knit": ("knit", "knit"),
    "purl": ("purl", "purl"),
    "width": ("width", "widths"),
    "height": ("height", "heights"),
    "depth": ("depth", "depths"),
    "sewn": ("sewn", "sewn"),
    "grafted": ("grafted", "grafted"),
    "linked": ("joined on the bed", "joined on the bed"),
    "open": ("joined loop for loop", "joined loop for loop"),
    "gathered": ("sewn, the fullness drawn in", "sewn, the fullness drawn in"),
    "pleated": ("sewn, laid in pleats", "sewn, laid in pleats"),
    "neck": ("neck", "necks"),
    "cuff": ("cuff", "cuffs"),
    "waist": ("waist", "waists"),
    "leg": ("leg", "legs"),
    "head": ("head", "heads"),
    "hand": ("hand", "hands"),
    "foot": ("foot", "feet"),
    "hips": ("hips", "hips"),
    "calf": ("calf", "calves"),
}

LANGUAGE = Guide(
    code="en",
    words=Language({}, {key: text for phrases in PHRASES for key, text in phrases.items()}, TERMS),
    advice=advice.ADVICE,
    how_to=HOW_TO,
    ordinal=_ordinal,
)
