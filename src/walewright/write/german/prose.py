"""German titles and notes: sentences without graded numbers."""

from __future__ import annotations

TITLES = {
    "cast-on": "Anschlagen",
    "hang-on": "Einhängen",
    "knit": "Stricken",
    "knit-and-shape": "Stricken und formen",
    "whole-width": "Über die ganze Breite",
    "part-for": "Teilen für {opening}",
    "part-for/several": "Teilen für {openings:/ und }",
    "left-half": "Linke Hälfte",
    "right-half": "Rechte Hälfte",
    "left-part": "Linker Teil",
    "right-part": "Rechter Teil",
    "middle-part": "Mittlerer Teil",
    "nth-part": "Teil {number} von links",
    "return-to-half": "Zurück zur {side:terms} Hälfte",
    "return-to-part": "Zurück zum {side:terms} Teil",
    "return-to-nth": "Zurück zu Teil {number} von links",
    "close": "Schließen: {opening}",
    "close/several": "Schließen: {openings:/ und }",
    "knit-on": "Die Blende anstricken",
    "finish": "Beenden",
    "edges": "Kanten für die Ausarbeitung",
    "all-sizes": "Alle Größen",
    "at-once": "Gleichzeitig",
    "by-rows": "Reihe für Reihe",
    "afterwards": "Danach",
    "making-up": "Ausarbeitung",
    "before-joining": "Vor dem Verbinden",
    "before": "Vor: {what}",
    "several": "{name} ({copies}-mal stricken)",
    "as-written": "„{name}“",
    "before-link": "Vor dem Verbinden: {what}",
    "link": "Verbinden: {what}",
    "link-edge": "{edge} von {owner}, auf dem Nadelbett",
    "link-edge-of-copy": "{edge} von {owner}, {copy} Teil, auf dem Nadelbett",
    "link-part": "{edge} {part:term}",
    "link-part/whole": "{edge}",
}

TRACKS = {
    "edge-at": "Rand {side:term}",
    "outer-edge": "Außenrand",
    "short-rows": "verkürzte Reihen {side:term}",
    "stitch-pattern": "Muster",
    "stripes": "Streifen",
    "marker-thread": "Markierungsfaden",
    "yarn": "Garn",
    "rib": "Rippen",
    "spread-loops": "Verteilen der Maschen",
    "slots": "Öffnungen",
    "buttonholes": "Knopflöcher",
    "other-work": "Sonstiges",
}

HEADS = {
    "sizes": "Größen {sizes}",
    "only": "Nur {sizes}",
    "note": "Hinweis: {text}",
    "key": "Zeichen: {symbol}  {words}.",
    "step": "{first}",
    "steps": "{first} bis {last}",
    "strip": "Spalten {first} bis {last} von {width}:",
    "strip/again": "Spalten {first} bis {last} von {width}, Spalten {first} bis {before} wie zuvor:",
}

NOTES = {
    "at-once/note": "Hinweis: gleichzeitig {what:and}. Bei jedem RZ tun, was dort steht; danach werden die M gezählt.",
    "by-rows/note": "Hinweis: {what:and} in der Folge der Reihen. Bei jedem RZ tun, was dort steht; danach werden die M gezählt.",
    "at-once/in-row-order": "Hinweis: {what:and} gehen gleichzeitig weiter, hier in der Folge der Reihen. Bei jedem RZ tun, was"
    " dort steht; danach werden die M gezählt.",
    "part-of-band": "Stück {number} von {parts} von {whole}: von {first} bis {last}.",
    "part-of-band/along": "Stück {number} von {parts} von {whole}: entlang {edge}.",
    "part-of-band/within": "Stück {number} von {parts} von {whole}: entlang einem Abschnitt von {edge}.",
    "edge-guides": "Hier ändert sich die Breite. Jedes Mal die Randführungen zu den Nadeln schieben, die dann die äußersten in"
    " Arbeit sind.",
    "goes-on-as-it-stood": "Was im anderen Teil endete, geht hier weiter, wie es stand: der Reihenzähler gilt erst von dort an,"
    " wo er begann.",
    "rows-of-shoulder": "{edge} endet, wo die Schulter beginnt. Die {rows} Reihen, die danach am äußeren Ende der Schulter"
    " gestrickt werden, kommen in die Schulternaht: sie dort einhalten.",
    "rows-of-shoulder/ends": "{edge} endet, wo die Schulter beginnt. Von den Reihen danach werden die erste und die letzte auch am"
    " äußeren Ende der Schulter gestrickt: diese {rows} Reihen kommen in die Schulternaht, sie dort einhalten.",
    "rows-of-shoulder/ends-more": "{edge} endet, wo die Schulter beginnt. Von den Reihen danach werden die erste und die letzten"
    " {last} auch am äußeren Ende der Schulter gestrickt: diese {rows} Reihen kommen in die Schulternaht, sie dort einhalten.",
    "rows-of-shoulder/last": "{edge} endet, wo die Schulter beginnt. Von den Reihen danach werden nur die letzten {rows} am"
    " äußeren Ende der Schulter gestrickt: sie kommen in die Schulternaht, dort einhalten.",
    "oversew-buttonholes": "Die zwei Lagen jedes Knopflochs zusammen umstechen.",
    "through-both": "Was gefaltet ist, wird durch beide Lagen aufgefasst, Reihe auf Reihe: {edges:and}.",
    "joined-already": "Schon verbunden, so dass die Kanten eine Linie bilden: {joined:/; }.",
    "joined-and-open": "Schon verbunden, so dass die Kanten eine Linie bilden: {joined:/; }. Offen lassen, bis dies gestrickt ist:"
    " {still:/; }.",
    "seam": "{one:and} mit {other:and}",
    "seam-itself": "{one:and}, auf die Hälfte gefaltet und zusammengenäht",
    "edge": "{piece} {edge}",
    "runs": "{name}: {where}",
    "runs/to": "{first} bis {last}",
    "runs/edge": "{piece} {edge}",
    "runs/piece": "{piece}",
    "runs/centre": "Mitte {piece}",
    "runs/within": "innerhalb {piece} {edge}",
}

CORNERS = {
    "inner-corner": "An der Innenecke von {where} ist die letzte Reihe um {stitches} M länger als die Linie, auf der sie zu liegen"
    " kommt.",
    "inner-corners": "An jeder der {corners} Innenecken von {where} ist die letzte Reihe um {stitches} M länger als die Linie,"
    " auf der sie zu liegen kommt.",
    "corner-too-long": "{begun} Das ist mehr, als eingehalten werden kann: die beiden Seiten der Blende dort übereinander legen"
    " oder sie als zwei Blenden stricken.",
    "corner-even": "{begun} Dies beim Abketten einhalten: neben der Ecke 2 M zusammen, {before}-mal auf jeder Seite davon.",
    "corner-uneven": "{begun} Dies beim Abketten einhalten: neben der Ecke 2 M zusammen, {before}-mal davor und {after}-mal"
    " danach.",
}

ANNOUNCED = {
    "decrease at both ends": "beidseitig abnehmen",
    "decrease at left end": "am linken Rand abnehmen",
    "decrease at right end": "am rechten Rand abnehmen",
    "increase at both ends": "beidseitig zunehmen",
    "increase at left end": "am linken Rand zunehmen",
    "increase at right end": "am rechten Rand zunehmen",
    "increase at carriage": "auf der Schlittenseite zunehmen",
    "cast off at carriage": "auf der Schlittenseite abketten",
    "cast on at carriage": "auf der Schlittenseite anschlagen",
    "hold at left": "links Nadeln in Haltestellung bringen",
    "hold at right": "rechts Nadeln in Haltestellung bringen",
}

PROSE = {**TITLES, **TRACKS, **HEADS, **NOTES, **CORNERS, **ANNOUNCED}
