"""The German of whole lines: a row of a table, and shapings that go on at the same time."""

from __future__ import annotations

LINES = {
    "together": "Gleichzeitig, von {RC} {from_row} bis {RC} {to_row}{@on_the_way}:",
    "track": "Dabei, {title}: {steps}.",
    "track/at": "Dabei, {title}: bei {RC} {rows} {steps}.",
    "for_some": "[{sizes}: {body}]",
    "at": "{RC} {row}",
    "at/side": "{at}, {carriage}",
    "at/run": "{RC} {row}, dann alle {every} {every|row} bis {RC} {last}",
    "stands": "{stitches} {stitches|st}",
    "again": "wie {section}, Schritte {first} bis {last}",
    "again/far": "wie {section}, ab Schritt {first} bis {RC} {row}{within}; dort anhalten, bevor bei diesem Stand etwas getan wird",
    "again/within": ", innerhalb von Schritt {step}",
    "again/link/far": "wie in {section}, ab Schritt {first} bis {RC} {row}{within};"
    " dort anhalten, bevor bei diesem Stand etwas getan wird",
    "again/mirrored": "gespiegelt wie Schritte {first} bis {last}",
    "again/before": "vor Schritt {last}: ",
    "again/on": "wie {section}, Schritte {first} bis {last}, aber an {piece}",
    "again/link": "wie in {section}, Schritte {first} bis {last}",
    "again/edges": "wie {section}, Schritte {first} bis {last}, aber entlang {edges}",
    "again/link/edges": "wie in {section}, Schritte {first} bis {last}, aber mit {edges}",
    "again/edge": "{@edge_told}",
    "again/then": ", dann ",
    "stands/held": "{working} {working|st} in Arbeit, {held} gehalten",
    "row/at": "{at}:",
    "row/steps": "{steps};",
    "row/stands": "{stands}.",
}
