"""The German words of diagnostics: one entry for each message of each code, as in English."""

from __future__ import annotations

from walewright.report.german.bed import PHRASES as BED
from walewright.report.german.catalogues import PHRASES as PUBLISHED
from walewright.report.german.catalogues import WORDINGS as CATALOGUES
from walewright.report.german.charts import WORDINGS as CHARTS
from walewright.report.german.choices import WORDINGS as CHOICES
from walewright.report.german.commands import PHRASES as OUTSIDE
from walewright.report.german.commands import WORDINGS as COMMANDS
from walewright.report.german.contradictions import PHRASES as CONTRADICTIONS
from walewright.report.german.counted import PHRASES as COUNTED
from walewright.report.german.counts import WORDINGS as COUNTS
from walewright.report.german.garment import CAUTIONS
from walewright.report.german.garment import WORDINGS as GARMENT
from walewright.report.german.lines import WORDINGS as LINES
from walewright.report.german.materials import WORDINGS as MATERIALS
from walewright.report.german.openings import WORDINGS as OPENINGS
from walewright.report.german.patterned import WORDINGS as PATTERNED
from walewright.report.german.phrases import GENDERS, PHRASES, TERMS
from walewright.report.german.proven import PHRASES as PROVEN
from walewright.report.german.proven import WORDINGS as PROOF
from walewright.report.german.rules import CLAUSES, EDGES, FIGURES
from walewright.report.german.shapes import WORDINGS as SHAPES
from walewright.report.german.themes import WORDINGS as THEMES
from walewright.report.german.values import WORDINGS as VALUES
from walewright.report.wording import Language

GERMAN = Language(
    wordings={
        **LINES,
        **VALUES,
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
    units={"stitches": "Masche|Maschen", "rows": "Reihe|Reihen", "needles": "Nadel|Nadeln", "st": "Masche|Maschen"},
    words=("null", "eine", "zwei", "drei", "vier", "fünf", "sechs"),
    joined=(" und ", " oder "),
    more="und {count} weitere",
    point=",",
    thousands="\u00a0",
    genders=GENDERS,
)

LANGUAGE = GERMAN
