"""What can stand at a place, in the author's words, and an example of every line."""

from __future__ import annotations

from collections.abc import Iterable

from walewright.report.said import Said, said
from walewright.source.grammar import KINDS, expected, first_words, literals

UNITS = "a-unit"
COMPARISONS = "a-comparison"
SUMS = "a-sum"

GROUPS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("a-name", ("NAME",)),
    ("a-number", ("NUMBER", "VALUE")),
    ("a-size", ("SIZE",)),
    ("a-text", ("TEXT",)),
    ("which-needle", ("ORDINAL",)),
    ("a-tension", ("TENSION",)),
    ("a-cast-off", ("WAY",)),
    ("a-count", ("COUNT",)),
    ("a-count-system", ("tex", "dtex", "denier", "Nm", "Ne", "NeK", "lea")),
    ("a-symbol", ("SYMBOL", "CELL")),
    (
        UNITS,
        ("cm", "mm", "m", "in", "stitches", "stitch", "sts", "st", "rows", "row", "g", "%"),
    ),
    (SUMS, ("+", "-", "*", "/")),
    ("brackets", ("(",)),
    (COMPARISONS, ("<=", ">=", "=", "<", ">")),
    ("round-to", ("round",)),
    ("line-end", ("$END",)),
)
"""The key of a phrase, and the terminals that it names together in a message. A word in no group is shown as written."""

WHOLE_GROUPS_ONLY = (UNITS, COMPARISONS, SUMS)
"""Groups whose words stand on their own where not all of them can stand."""

ONE_WORD_SAYS_NOTHING = ("making", "left", "right", "stocking", "latched")
"""First words that say nothing without their second; which that can be, the grammar says."""

BLOCK_KINDS = {
    "in_pattern": "pattern",
    "in_sizes": "sizes",
    "in_machine": "machine",
    "in_fabric": "fabric",
    "in_chart": "chart",
    "in_piece": "piece",
    "in_shape": "shape",
    "in_making_up": "making up",
}
"""The block that lines of each kind stand in, as its first line calls it."""

PLACES = {
    "in_file": said("at-margin"),
    **{kind: said("in-block", block=block) for kind, block in BLOCK_KINDS.items()},
    "in_opening": said("in-opening-block"),
}
"""Where a line of each kind stands."""

EXAMPLES = {
    "choice": "choice sleeves long, short",
    "for": "for sleeves short",
    "pattern": 'pattern "Tidewrack"',
    "sizes": "sizes S M L",
    "let": "let half = bust / 2 + 4 cm",
    "name": 'name brim, in german "Krempe"',
    "machine": "machine bulky",
    "plates": "plates 1, 2, 3, 4",
    "missing": "missing L 12, R 40",
    "yarn": 'yarn wool "chunky wool", 100 g = 120 m',
    "fabric": "fabric plain",
    "chart": "chart lozenge",
    "edging": "edging welt in rib, 6 cm deep, added after, cast off chain",
    "piece": "piece sleeve in plain, knit 2",
    "shape": "shape set_in(armhole, chest, top, across)",
    "band": "band neckband with collar along back neck + front neck",
    "join": "join sleeve end to back armhole + front armhole, easing 2 cm",
    "free": "free scarf side",
    "cord": "cord hood 90 cm long",
    "finished": "finished chest round back underarm, fits bust",
    "through": "through neckband passes head",
    "lap": "lap buttonhole_band over button_band",
    "require": 'require armhole >= 16 cm because "the arm has to move"',
    "making": "making up",
    "summary": 'summary "Drop-shoulder pullover with a round neck."',
    "difficulty": 'difficulty "First garment"',
    "story": 'story "Named for the weed that the tide leaves."',
    "designer": 'designer "The Windrow Workshop"',
    "copyright": 'copyright "2026, The Windrow Workshop"',
    "edition": 'edition "Second edition, sleeves lengthened"',
    "date": 'date "November 2026"',
    "photograph": 'photograph "tidewrack.jpg", showing "A grey pullover, laid flat"',
    "needed": 'needed "buttons, 15 mm", 6',
    "note": 'note "Wash the swatch before you measure it."',
    "step": 'step "Block the pieces to the measurements."',
    "stocking": "stocking stitch in wool at tension 4",
    "latched": "latched rib every 3rd needle in wool at tension 2",
    "stripes": "stripes of 4 rows wool, 2 rows navy at tension 4",
    "key": "key O hole",
    "|": "| . . O / . |",
    "colours": "colours with floats",
    "swatch": "swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g",
    "levels": "levels hem 0 cm, underarm 40 cm, top length",
    "start": "start half wide on waste yarn, with welt",
    "edges": "edges slope to 44 cm wide at underarm, fashioned 2 in",
    "left": "left edge slope by 3 cm at tip",
    "right": "right edge straight to tip called armhole",
    "across": "across to 40 cm wide at yoke",
    "opening": "opening neck 4 cm wide from slit to top, cast off",
    "slot": "slot thumb 6 cm wide at palm, 4 cm right of centre, on waste yarn",
    "buttonholes": "buttonholes 6 over 2 stitches from hem to top, 1.5 cm from the right edge",
    "wedge": "wedge 9 cm wide at both edges from dart to dart_top, held in",
    "needles": "needles out every 12th needle from line to band",
    "motif": "motif anchor at yoke, 4 cm left of centre",
    "repeat": "repeat 8 times from base to gore",
    "without": "without pocket",
    "use": "use armhole_set_in, chest chest, tip tip, off 3 cm, across 36 cm",
    "neck": "neck 18 cm wide, 8 cm deep, round",
    "shoulders": "shoulders held from tip",
    "end": "end on waste yarn",
}
"""First word of a line to a line that reads."""

SECOND_EXAMPLES = {
    ("left", "shoulder"): "left shoulder held from tip",
    ("right", "shoulder"): "right shoulder held from tip",
}
"""The same for lines that are known by their second word."""

OTHER_EXAMPLES = {
    ("in_file", "use"): 'use lozenge, welt from "stitches.wale"',
    ("in_fabric", "chart"): "chart lozenge in wool at tension 4, centred, 2 edge stitches",
    ("in_fabric", "right"): "right side purl",
    ("in_chart", "repeat"): "repeat 6 stitches, after 1 stitch",
    ("in_piece", "fabric"): "fabric rib from waist to hip",
    ("in_shape", "fabric"): "fabric rib from waist to hip",
}
"""The same for words that begin another line in that kind of block."""

PLACE_EXAMPLES = {
    "in_sizes": "length 54 56 58 cm",
    "in_machine": "pitch 9 mm",
}
"""A line that reads, in blocks whose lines begin with any name."""


def in_words(terminals: Iterable[str]) -> tuple[str | Said, ...]:
    """The terminals as an author knows them: groups first, then words in the order of the alphabet."""
    known = literals()
    open_words = {known.get(t, t) for t in terminals}
    told: list[str | Said] = []
    for words, members in GROUPS:
        there = open_words & set(members)
        if not there or (words in WHOLE_GROUPS_ONLY and len(there) < len(members)):
            continue
        open_words -= there
        told.append(said(words))
    commas = [said("a-comma")] if "," in open_words else []
    return (*told, *sorted(open_words - {","}), *commas)


SUM_BEGINS = frozenset({"NAME", "NUMBER", "(", "-", "round"})
"""How a sum can begin."""


def after(kind: str, read: tuple[str, ...]) -> tuple[str | Said, ...]:
    """What can stand behind the terminals `read`. A sum behind a comma begins a part of the line that its last word names: the
    parts that are not there yet are told by that."""
    open_here, known = expected(kind, read), literals()
    sums = frozenset(t for t in open_here if known.get(t, t) in SUM_BEGINS)
    others = open_here - sums
    if known.get(read[-1]) != "," or len(sums) < len(SUM_BEGINS) or not others:
        return in_words(open_here)
    units = next(members for words, members in GROUPS if words == UNITS)
    last = {known.get(t, t) for t in expected(kind, (*read, "NUMBER"))} - set(units) - {known.get(t, t) for t in read}
    parts = tuple(sorted(word for word in last if word.isalpha() and word.islower()))
    # `round` begins a sum, and is a part by itself of a line that may end behind it.
    whole = tuple(known[t] for t in sums if t in known and "$END" in expected(kind, (*read, t)))
    return (*((said("an-amount", parts=parts),) if parts else ()), *in_words(others), *whole)


def wordless(terminals: Iterable[str]) -> tuple[str, ...]:
    """Terminals that a message could only call by their name in the grammar."""
    named = {member for _, members in GROUPS for member in members}
    return tuple(sorted(t for t in terminals if t not in named and t not in literals()))


def beginnings(kind: str, first: str) -> tuple[str, ...]:
    """How lines of that kind with that first word begin, as far as it says something."""
    if first not in ONE_WORD_SAYS_NOTHING:
        return (first,)
    (terminal,) = (t for t in expected(kind, ()) if literals().get(t) == first)
    return tuple(f"{first} {second}" for second in sorted(literals()[t] for t in expected(kind, (terminal,))))


def example(kind: str, first: str, second: str = "") -> str | None:
    """A line that reads: one with that first word (and, where that makes another line of it, that second), or one of that kind of
    block."""
    if (first, second) in SECOND_EXAMPLES:
        return SECOND_EXAMPLES[first, second]
    if first in first_words(kind):
        return OTHER_EXAMPLES.get((kind, first), EXAMPLES[first])
    return PLACE_EXAMPLES.get(kind)


def places_of(first: str) -> tuple[Said, ...]:
    """Where a line with that first word can stand."""
    return tuple(PLACES[kind] for kind in KINDS if first in first_words(kind))
