"""Printed German: its sentences, the words of their places, titles and notes, and what is abbreviated.

Its words are common practice of German patterns and manuals, or from memory where `glossary.py` says so.
"""

from __future__ import annotations

import re

from walewright.report import wording
from walewright.write.german.bench import BENCH
from walewright.write.german.charts import CHARTS
from walewright.write.german.lines import LINES
from walewright.write.german.prose import PROSE
from walewright.write.german.sentences import SENTENCES
from walewright.write.language import Marks, Noun, PrintedLanguage
from walewright.write.model import Abbreviation

ABBREVIATIONS = {
    Abbreviation.LEFT: ("L", "Nadel links der Mittelmarkierung: L 1 ist die erste"),
    Abbreviation.STITCH: ("M", "Masche(n)"),
    Abbreviation.RIGHT: ("R", "Nadel rechts der Mittelmarkierung: R 1 ist die erste"),
    Abbreviation.RC: ("RZ", "Reihenzähler: RZ 20 ist, wenn 20 Reihen gezählt sind, vor der 21. Reihe"),
    Abbreviation.COL: ("SL", "Schlitten links"),
    Abbreviation.COR: ("SR", "Schlitten rechts"),
    Abbreviation.SKIPPED: ("–", "diese Größe lässt dies aus"),
}
"""Alphabetically; the dash goes last."""

NOUNS = {
    "st": Noun("M", "M", frozenset({Abbreviation.STITCH})),
    "row": Noun("Reihe", "Reihen"),
    "time": Noun("Mal", "Mal"),
    "loop": Noun("Masche", "Maschen"),
    "open_loop": Noun("offene Masche", "offenen Maschen"),
    "its": Noun("ihr", "ihr"),
    "needle": Noun("Nadel", "Nadeln"),
    "number": Noun("Zahl", "Zahlen"),
    "seam": Noun("Naht", "Nähte"),
}

_OBLIQUE = {"left": "linken", "middle": "mittleren", "right": "rechten"}

_OUTSIDE = {"both ends": "außerhalb", "left end": "links davon", "right end": "rechts davon"}

TERMS = {
    "side": {"left": "links", "middle": "Mitte", "right": "rechts"},
    "which_part.side": _OBLIQUE,
    "row": {"start": "erste Reihe", "end": "letzte Reihe"},
    "edge_told.row": {"start": "der ersten Reihe", "end": "der letzten Reihe"},
    "edge_told.side": _OBLIQUE,
    "cross_stitches.side": _OBLIQUE,
    "ends": {"both ends": "beidseitig je", "left end": "am linken Rand", "right end": "am rechten Rand"},
    "decrease_on.ends": _OUTSIDE,
    "increase_beside.ends": _OUTSIDE,
    "where": {"outer": "äußeren", "inner": "inneren", "left": "linke", "right": "rechte"},
    "part": {"whole": "", "left": "der linken Seite von ", "centre": "der Mitte von ", "right": "der rechten Seite von "},
    "changed": {"two together": "2 Maschen", "an empty needle": "keine Masche"},
    "facing": {"purl": "linke Maschenseite zu Ihnen", "knit": "rechte Maschenseite zu Ihnen"},
    "left_end": {
        "left": "vom linken zum rechten Ende",
        "right": "vom rechten zum linken Ende",
        "bottom": "von unten nach oben",
        "top": "von oben nach unten",
    },
    "copy": {"each": "jedes Teil", "next": "nächstes Teil"},
    "waste_start.way": {"comb": "über den Anschlagkamm", "by hand": "im Wickelanschlag"},
    "closed_start.way": {"e-wrap": "mit Wickelanschlag", "chain": "mit gehäkeltem Anschlag"},
    "fold_up.way": {
        "in front": "nach vorn, zu Ihnen hin, linke Maschenseiten aufeinander,",
        "behind": "nach hinten, von Ihnen weg, rechte Maschenseiten aufeinander,",
    },
    "chained": {"off": "abgeketteten", "on": "angeschlagenen", "mixed": "ab- oder angeketteten"},
    "join_edges.way": {
        "sewn": "zusammennähen",
        "gathered": "eingereiht zusammennähen",
        "pleated": "in Falten gelegt zusammennähen",
        "grafted": "im Maschenstich verbinden",
    },
    "side.begin": {"left": "vom linken Ende aus", "right": "vom rechten Ende aus", "top": "von oben aus"},
}

EDGES = {
    "start": "erste Reihe",
    "end": "letzte Reihe",
    "first end": "linkes Ende",
    "last end": "rechtes Ende",
    "shoulder": "Schulter",
    "neck": "Halsausschnitt",
    "left": "links",
    "right": "rechts",
    "centre": "Mitte",
    "upper": "oben",
}

LANGUAGE = PrintedLanguage(
    name="german",
    sentences={**SENTENCES, **LINES, **BENCH},
    terms=TERMS,
    nouns=NOUNS,
    abbreviations=ABBREVIATIONS,
    prose=wording.Language(
        wordings={},
        phrases={**PROSE, **CHARTS},
        # The word by itself, and as it stands before a noun.
        terms={
            "left": ("links", "linken"),
            "middle": ("Mitte", "mittleren"),
            "right": ("rechts", "rechten"),
            "centre": ("Mitte", "mittleren"),
            "upper": ("oben", "oberen"),
        },
        joined=(" und ", " oder "),
        more="und {count} weitere",
        point=",",
    ),
    ordinal=lambda number: f"{number}.",
    edges=EDGES,
    marks=Marks(quotes=("„", "“"), instead="‘", point=","),
    small=re.compile(
        r"(?:link|recht|vorder|hinter|ober|unter|mittler|inner|äußer|erst|zweit|dritt|viert|letzt|ander|klein|groß|lang|kurz)e[rs]?"
    ),
    unbroken=re.compile(r"(?<=[\d)]) (?=(?:M|Reihen?|Mal|Maschen?|Naht|Nähte|cm)\b)|(?<=RZ) |(?<=M) (?=vom\b)|(?<=,) (?=S[LR]\b)"),
)
