"""The English words of diagnostics: one entry for each message of each code."""

from __future__ import annotations

from walewright.report.english.bed import PHRASES as BED
from walewright.report.english.catalogues import PHRASES as PUBLISHED
from walewright.report.english.catalogues import WORDINGS as CATALOGUES
from walewright.report.english.charts import WORDINGS as CHARTS
from walewright.report.english.choices import WORDINGS as CHOICES
from walewright.report.english.commands import PHRASES as OUTSIDE
from walewright.report.english.commands import WORDINGS as COMMANDS
from walewright.report.english.contradictions import PHRASES as CONTRADICTIONS
from walewright.report.english.counted import PHRASES as COUNTED
from walewright.report.english.counts import WORDINGS as COUNTS
from walewright.report.english.garment import CAUTIONS
from walewright.report.english.garment import WORDINGS as GARMENT
from walewright.report.english.lines import WORDINGS as LINES
from walewright.report.english.materials import WORDINGS as MATERIALS
from walewright.report.english.openings import WORDINGS as OPENINGS
from walewright.report.english.patterned import WORDINGS as PATTERNED
from walewright.report.english.phrases import PHRASES, TERMS
from walewright.report.english.proven import PHRASES as PROVEN
from walewright.report.english.proven import WORDINGS as PROOF
from walewright.report.english.rules import CLAUSES, EDGES, FIGURES
from walewright.report.english.shapes import WORDINGS as SHAPES
from walewright.report.english.themes import WORDINGS as THEMES
from walewright.report.english.values import WORDINGS as VALUES
from walewright.report.model import Diagnostic
from walewright.report.wording import Language, Worded, worded

ENGLISH = Language(
    wordings={
        **LINES,
        **VALUES,
        **CHOICES,
        **CHOICES,
        **MATERIALS,
        **SHAPES,
        **OPENINGS,
        **CHARTS,
        **GARMENT,
        **COUNTS,
        **PATTERNED,
        **PROOF,
        **COMMANDS,
        **THEMES,
        **CATALOGUES,
    },
    phrases={**PHRASES, **COUNTED, **FIGURES, **EDGES, **PROVEN, **BED, **CAUTIONS, **CONTRADICTIONS, **OUTSIDE, **PUBLISHED},
    terms=TERMS,
    clauses=CLAUSES,
    units={unit: unit for unit in ("stitches", "rows", "needles", "st")},
    words=("nought", "one", "two", "three", "four", "five", "six"),
)

LANGUAGE = ENGLISH


def in_english(diagnostic: Diagnostic) -> Worded:
    """A diagnostic's message, labels, notes and helps in English."""
    return worded(diagnostic, ENGLISH)
