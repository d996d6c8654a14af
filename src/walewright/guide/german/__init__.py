"""german: the guide in German.

Its words are common practice of German patterns and manuals, or from memory where `glossary.py` says so.
"""

from __future__ import annotations

from walewright.guide.german import advice, charts, commands, drawings, facts, hand_tools, page, serve, shelf, tables, text_copy
from walewright.guide.german.howto import HOW_TO
from walewright.guide.model import Guide
from walewright.report.german.garment import CAUTIONS
from walewright.report.wording import Language

__all__ = ["LANGUAGE"]

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
    # By themselves, and before a noun.
    "left": ("links", "linken"),
    "right": ("rechts", "rechten"),
    "knit": ("rechts", "rechten"),
    "purl": ("links", "linken"),
    "width": ("Breite", "Breiten"),
    "height": ("Höhe", "Höhen"),
    "depth": ("Tiefe", "Tiefen"),
    "sewn": ("genäht", "genäht"),
    "grafted": ("im Maschenstich verbunden", "im Maschenstich verbunden"),
    "linked": ("auf dem Nadelbett verbunden", "auf dem Nadelbett verbunden"),
    "open": ("Masche für Masche verbunden", "Masche für Masche verbunden"),
    "gathered": ("genäht, die Mehrweite eingereiht", "genäht, die Mehrweite eingereiht"),
    "pleated": ("genäht, in Falten gelegt", "genäht, in Falten gelegt"),
    "neck": ("Hals", "Hälse"),
    "cuff": ("Bündchen", "Bündchen"),
    "waist": ("Taille", "Taillen"),
    "leg": ("Bein", "Beine"),
    "head": ("Kopf", "Köpfe"),
    "hand": ("Hand", "Hände"),
    "foot": ("Fuß", "Füße"),
    "hips": ("Hüfte", "Hüften"),
    "calf": ("Wade", "Waden"),
}

LANGUAGE = Guide(
    code="de",
    words=Language(
        {},
        {key: text for phrases in PHRASES for key, text in phrases.items()},
        TERMS,
        joined=(" und ", " oder "),
        more="und {count} weitere",
        point=",",
    ),
    advice=advice.ADVICE,
    how_to=HOW_TO,
    ordinal=lambda number: f"{number}.",
    small=False,
    months=(
        *("Januar", "Februar", "März", "April", "Mai", "Juni"),
        *("Juli", "August", "September", "Oktober", "November", "Dezember"),
    ),
)
