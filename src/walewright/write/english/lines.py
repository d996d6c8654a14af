"""The English of whole lines: a row of a table, and shapings that go on at the same time."""

from __future__ import annotations

LINES = {
    "together": "At the same time, from {RC} {from_row} to {RC} {to_row}{@on_the_way}:",
    "track": "For the {title}: {steps}.",
    "track/at": "For the {title}: at {RC} {rows} {steps}.",
    "for_some": "[{sizes}: {body}]",
    "at": "{RC} {row}",
    "at/side": "{at}, {carriage}",
    "at/run": "{RC} {row}, then every {every} {every|row} to {RC} {last}",
    "stands": "{stitches} {stitches|st}",
    "again": "as the {section}, steps {first} to {last}",
    "again/far": "as the {section}, from step {first} on to {RC} {row}{within}; stop there, before anything is done at that RC",
    "again/within": ", within step {step}",
    "again/link/far": "as in {section}, from step {first} on to {RC} {row}{within}; stop there, before anything is done at that RC",
    "again/mirrored": "as steps {first} to {last}, mirrored",
    "again/before": "before step {last}: ",
    "again/on": "as the {section}, steps {first} to {last}, but on the {piece}",
    "again/link": "as in {section}, steps {first} to {last}",
    "again/edges": "as the {section}, steps {first} to {last}, but along {edges}",
    "again/link/edges": "as in {section}, steps {first} to {last}, but with {edges}",
    "again/edge": "the {@edge_told}",
    "again/then": ", then ",
    "stands/held": "{working} {working|st} in work, {held} held",
    "row/at": "{at}:",
    "row/steps": "{steps};",
    "row/stands": "{stands}.",
}
