"""What the plain text says in German besides the steps."""

from __future__ import annotations

TEXT_COPY = {
    "text/sizes": "Größen",
    "text/finished": "Fertigmaße",
    "text/tension": "Maschenprobe",
    "text/materials": "Material",
    "text/choice": "{what}: {chosen}",
    "text/choices": "Wahl",
    "text/regraded": "{what}: {own} (in der Quelle {source}) ",
    "text/measurement": "{name}{to_fit:? (Körpermaß)}: {lengths}{credit:? ({credit})}",
    "text/ease": "Weitenzugabe, {what}: {lengths}",
    "text/to-10-cm": "{stitches} Maschen und {rows} Reihen auf 10 cm",
    "text/to-1-in": "{stitches} Maschen und {rows} Reihen auf 1 Zoll",
    "text/fabric": "{fabric}: {density}, {stitch}, {yarn} mit {dial}{basis}",
    "text/machine": "Maschine: {bed}, {needles} Nadeln, Teilung {pitch} mm",
    "text/yarn": "{yarn}: {balls} Knäuel zu {ball_grams} g = {ball_metres} m kaufen; etwa {grams} g: Kleidungsstück {garment} g,"
    " Maschenproben {swatches} g, Vorrat {reserve} g",
    "text/reckoned": "gerechnet {way}",
    "text/cm": "{cm} cm",
    "text/in": "{inches} Zoll",
    "text/both": "{cm} cm / {inches} Zoll",
    "text/proven": "Bewiesen: jede Größe wurde auf dem simulierten Nadelbett gestrickt, von walewright {version}, und aus"
    " diesen Wörtern zurückgelesen.",
}
