"""Printed German as its reader has it: `grammar/german.lark`, and the layout of a page."""

from __future__ import annotations

import re

from walewright.readback.language import PageLayout, ReadLanguage

LAYOUT = PageLayout(
    sizes=re.compile(r"Größen (?P<first>[^ ]+)(?: \((?P<others>[^ ].*)\))?"),
    several=re.compile(r"(?P<name>.+) \((?P<copies>[0-9]{1,3}(?: \([0-9]{1,3}(?:: [0-9]{1,3})*\))?)-mal stricken\)"),
    part=re.compile(r"(?P<name>[^ ]+): .+"),
    only=re.compile(r"Nur (?P<sizes>[^ ,]+(?:, [^ ,]+)*)"),
    chart=re.compile(r"Strickschrift (?P<name>[^\W\d][\w\u00a0]*)"),
    joining=re.compile(r"Ausarbeitung|Vor: [^ ]+|Vor dem Verbinden(?:: .+, auf dem Nadelbett)?"),
    link=re.compile(
        r"Verbinden: (?P<edge>[^ ]+(?: [^ ]+)??)(?: (?P<part>links|rechts|Mitte|oben))?"
        r" von (?P<owner>[^ ]+),(?: (?P<number>[0-9]{1,3})\. Teil,)? auf dem Nadelbett"
    ),
    note=re.compile(r"Hinweis:(?: |$)"),
    told=re.compile(r"(?:Rapport|Weise|Zeichen):"),
    key=re.compile(r"Zeichen: (?P<symbol>\S)  (?=\S)"),
    numbered=re.compile(r" *(?P<first>[0-9]{1,4})(?: bis (?P<last>[0-9]{1,4}))?\. "),
    strip=re.compile(
        r"Spalten (?P<first>[0-9]{1,4}) bis (?P<last>[0-9]{1,4}) von (?P<width>[0-9]{1,4})"
        r"(?:, Spalten (?P<again>[0-9]{1,4}) bis (?P<before>[0-9]{1,4}) wie zuvor)?:"
    ),
)

EDGES = {
    "erste Reihe": "start",
    "letzte Reihe": "end",
    "linkes Ende": "first end",
    "rechtes Ende": "last end",
    "Schulter": "shoulder",
    "Halsausschnitt": "neck",
    "links": "left",
    "rechts": "right",
    "Mitte": "centre",
    "oben": "upper",
}

LANGUAGE = ReadLanguage(
    "german",
    "german",
    LAYOUT,
    left="L",
    right="R",
    carriage=("SL", "SR"),
    edges=EDGES,
    order={
        **dict.fromkeys(("decrease", "increase_fashioned"), (1, 0, 2)),
        **dict.fromkeys(("decrease_outer", "increase_outer"), (1, 0, 2, 3)),
    },
    quotes=("„", "“"),
    point=",",
    # Adjectives; what else a name begins with is a noun.
    small=re.compile(
        r"(?:erst|zweit|dritt|viert|letzt|ander|link|recht|vorder|hinter|ober|mittler|unter|äußer|inner|groß|klein|kurz|lang)e[rs]?"
    ),
)
