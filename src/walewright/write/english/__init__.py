"""Printed English: its sentences, the words of their places, titles and notes, and what is abbreviated."""

from __future__ import annotations

import re

from walewright.report import wording
from walewright.write.english.bench import BENCH
from walewright.write.english.charts import CHARTS
from walewright.write.english.lines import LINES
from walewright.write.english.prose import PROSE
from walewright.write.english.sentences import SENTENCES
from walewright.write.language import Noun, PrintedLanguage
from walewright.write.model import Abbreviation

ABBREVIATIONS = {
    Abbreviation.COL: ("COL", "carriage on the left"),
    Abbreviation.COR: ("COR", "carriage on the right"),
    Abbreviation.LEFT: ("L", "needle left of the centre mark: L 1 is the first"),
    Abbreviation.RIGHT: ("R", "needle right of the centre mark: R 1 is the first"),
    Abbreviation.RC: ("RC", "row counter: RC 20 is when 20 rows are counted, before row 21"),
    Abbreviation.STITCH: ("st(s)", "stitch(es)"),
    Abbreviation.SKIPPED: ("–", "your size skips this"),
}
"""Alphabetically; the dash goes last."""

NOUNS = {
    "st": Noun("st", "sts", frozenset({Abbreviation.STITCH})),
    "row": Noun("row", "rows"),
    "time": Noun("time", "times"),
    "loop": Noun("loop", "loops"),
    "open_loop": Noun("open loop", "open loops"),
    "its": Noun("its", "their"),
    "needle": Noun("needle", "needles"),
    "number": Noun("number", "numbers"),
    "seam": Noun("seam", "seams"),
}

_OUTSIDE = {"both ends": "outside", "left end": "to its left", "right end": "to its right"}

TERMS = {
    "row": {"start": "first row", "end": "last row"},
    "side": {"left": "left", "middle": "middle", "right": "right"},
    "ends": {"both ends": "both ends", "left end": "the left end", "right end": "the right end"},
    "decrease_on.ends": _OUTSIDE,
    "increase_beside.ends": _OUTSIDE,
    "where": {"outer": "outer", "inner": "inner", "left": "left", "right": "right"},
    "part": {"whole": "", "left": "left side of the ", "centre": "centre of the ", "right": "right side of the "},
    "changed": {"two together": "2 loops", "an empty needle": "no loop"},
    "facing": {"purl": "purl side facing", "knit": "knit side facing"},
    "left_end": {
        "left": "from its left end to its right end",
        "right": "from its right end to its left end",
        "bottom": "from bottom to top",
        "top": "from top to bottom",
    },
    "copy": {"each": "each", "next": "next"},
    "waste_start.way": {"comb": "with the comb", "by hand": "by e-wrap"},
    "closed_start.way": {"e-wrap": "e-wrap", "chain": "latch-tool chain"},
    "fold_up.way": {
        "in front": "in front, towards you, purl sides together,",
        "behind": "behind, away from you, knit sides together,",
    },
    "chained": {"off": "cast off", "on": "cast on", "mixed": "cast off or on"},
    "join_edges.way": {"sewn": "join", "gathered": "gather", "pleated": "pleat", "grafted": "graft"},
    "side.begin": {"left": "left end", "right": "right end", "top": "top"},
}

EDGES = {
    "start": "first row",
    "end": "last row",
    "first end": "left end",
    "last end": "right end",
    "shoulder": "shoulder",
    "neck": "neck",
    "left": "left",
    "right": "right",
    "centre": "centre",
    "upper": "upper",
}


def ordinal(number: int) -> str:
    """1st, 2nd, 3rd, 4th ... 11th, 12th, 13th ... 21st."""
    tail = "th" if number % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(number % 10, "th")
    return f"{number}{tail}"


LANGUAGE = PrintedLanguage(
    name="english",
    sentences={**SENTENCES, **LINES, **BENCH},
    terms=TERMS,
    nouns=NOUNS,
    abbreviations=ABBREVIATIONS,
    prose=wording.Language(
        wordings={},
        phrases={**PROSE, **CHARTS},
        terms={word: (word, word) for word in ("left", "middle", "right", "centre", "upper")},
    ),
    ordinal=ordinal,
    edges=EDGES,
    unbroken=re.compile(
        r"(?<=[\d)]) (?=(?:sts?|rows?|times?|loops?|seams?|cm)\b)"
        r"|(?<=RC) |(?<=st) (?=in\b)|(?<=sts) (?=in\b)|(?<=,) (?=CO[LR]\b)"
    ),
)
