"""Printed English as its reader has it: `grammar/english.lark`, and the layout of a page."""

from __future__ import annotations

import re

from walewright.readback.language import PageLayout, ReadLanguage

LAYOUT = PageLayout(
    sizes=re.compile(r"Sizes (?P<first>[^ ]+)(?: \((?P<others>[^ ].*)\))?"),
    several=re.compile(r"(?P<name>.+) \(knit (?P<copies>[0-9]{1,3}(?: \([0-9]{1,3}(?:: [0-9]{1,3})*\))?)\)"),
    part=re.compile(r"(?P<name>[^ ]+): .+"),
    only=re.compile(r"(?P<sizes>[^ ,]+(?:, [^ ,]+)*) only"),
    chart=re.compile(r"Chart (?P<name>[^\W\d][\w\u00a0]*)"),
    joining=re.compile(r"Making up|Before the [^ ]+|Before joining(?: .+ on the bed)?"),
    link=re.compile(
        r"Join the (?:(?P<part>(?:left|right)(?! end of )|centre|upper) )?(?P<edge>[^ ]+(?: [^ ]+)?)"
        r" of the (?:(?P<number>[0-9]{1,3})(?:st|nd|rd|th) )?(?P<owner>[^ ]+) on the bed"
    ),
    note=re.compile(r"Note:(?: |$)"),
    told=re.compile(r"(?:Repeat|Way|Key):"),
    key=re.compile(r"Key: (?P<symbol>\S)  (?=\S)"),
    numbered=re.compile(r" *(?P<first>[0-9]{1,4})(?: to (?P<last>[0-9]{1,4}))?\. "),
    strip=re.compile(
        r"Columns (?P<first>[0-9]{1,4}) to (?P<last>[0-9]{1,4}) of (?P<width>[0-9]{1,4})"
        r"(?:, columns (?P<again>[0-9]{1,4}) to (?P<before>[0-9]{1,4}) as before)?:"
    ),
)

EDGES = {"first row": "start", "last row": "end", "left end": "first end", "right end": "last end"}

LANGUAGE = ReadLanguage("english", "english", LAYOUT, left="L", right="R", carriage=("COL", "COR"), edges=EDGES)
