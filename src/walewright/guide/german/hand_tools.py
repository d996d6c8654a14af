"""What hands need beside yarn and machine, and what is said of fabrics, their tension and the machine, in German."""

from __future__ import annotations

TOOLS = {
    "tool/waste-yarn": "Hilfsgarn: glatt, etwa gleich dick und in einer Kontrastfarbe",
    "tool/waste-yarn-swatch": "Hilfsgarn, nur für die Maschenproben: glatt, etwa gleich dick und in einer Kontrastfarbe",
    "tool/cord-both": "Trennfaden: zwei starke, rutschige Stücke, eines für den Anschlag und eines für einen Teil, der wartet"
    ", so lang, wie es beim Garn steht",
    "tool/cord-start": "Trennfaden: ein starkes, rutschiges Stück, so lang, wie es beim Garn steht",
    "tool/cord-part": "Trennfaden: ein starkes, rutschiges Stück für einen Teil, der wartet, so lang, wie es beim Garn steht",
    "tool/comb-and-weights": "Anschlagkamm, und Gewichte für die Breite in Arbeit",
    "tool/weights": "Gewichte für die Breite in Arbeit",
    "tool/cord-hem": "Trennfaden: zwei starke, rutschige Stücke, so lang, wie es beim Garn steht",
    "tool/cord-hem-both": "Trennfaden: drei starke, rutschige Stücke, zwei für den Anschlag und eines für einen Teil, der wartet"
    ", so lang, wie es beim Garn steht",
    "tool/hem": "Anschlagstreifen, mindestens so breit wie das, was daran begonnen wird, und Gewichte für die Breite in Arbeit",
    "tool/edge-weights": "Kleine Gewichte für die Ränder",
    "tool/transfer": "Decker mit {prongs:and} {most:=Zinke|Zinken}",
    "tool/for-crosses": "Für die Verkreuzungen {tools:and}",
    "tool/prongs": "zwei {prongs}er-Decker",
    "tool/latch": "Repassiernadel (Häkelnadel mit Zunge)",
    "tool/card": "Ein Streifen Pappe oder ein dünner Stab, um lange Maschen danach zu messen",
    "tool/bobbins": "Spulen für das Intarsienmuster, eine für jede Fläche der Reihe, die die meisten hat",
    "tool/thread": "Kurze Fäden in einer Kontrastfarbe, um Kanten zu markieren",
    "tool/cord": "Kordel oder Band für {piece}: {cm} cm",
    "tool/last": "Stumpfe Wollnadel, nicht rostende Stecknadeln, Maßband, Schere mit geschützten Spitzen",
    # What the author lists.
    "needed/count": "{count} {what}",
    "needed/length": "{what}: {length}",
    # Fabrics.
    "stitch/chart": "Strickschrift {chart}",
    "stitch/stocking stitch": "glatt rechts",
    "stitch/latched rib": "hochgehäkelte Rippen",
    "stitch/stripes": "Streifen",
    "stitch/every": "{stitch}, jede {nth} Nadel",
    "basis/given": "Wie Sie gemessen haben{weighed:?|; das Gewicht ist aus dem der Maschenprobe der Quelle gerechnet}.",
    "basis/reckoned": "Aus Ihrer Maschenprobe von {fabric} gerechnet: auch davon eine stricken.",
    "basis/source": "Wie für die Quelle gemessen.",
    "tension/dial": "Maschenweite {dial}",
    "tension/start-dial": "Maschenweite {dial} als Anfang",
    "tension/dial/plate": "Platte {dial}",
    "tension/start-dial/plate": "Platte {dial} als Anfang",
    "tension/dial-is-a-start/plate": "Die Platte ist nur ein Anfang: wo die Schritte {dial} sagen, die einsetzen, mit der Ihre"
    " eigene Maschenprobe so ausfällt, und sie hier notieren: ______",
    "tension/dial-is-yours/plate": "Die Platte ist Ihre. Die Schritte der Kanten daran nennen auch {others:/ und }: die nächste"
    " daran, lockerer oder fester wie diese in der Quelle.",
    "tension/title": "{stitch}, {dial}",
    "tension/cm": "10 cm",
    "tension/in": "4 Zoll",
    "tension/both": "10 cm (4 Zoll)",
    "tension/density": "{stitches} Maschen und {rows} Reihen auf {per}",
    "tension/small": "Für etwas so Kleines genügen {stitches} Maschen mal {rows} Reihen zum Messen, etwa {width} mal {height};"
    " damit ist das Garn gerechnet.",
    "tension/swatch-of": "In {yarn}; die Maschenprobe von {fabric} gilt auch hierfür.",
    "tension/swatch-cm": "In {yarn}. {stitches} Maschen und {rows} Reihen messen {width} cm in der Breite und {height} cm in der"
    " Höhe{grams:? und wiegen {grams} g}.{purl:? Außen ist die linke Maschenseite.}",
    "tension/swatch-in": "In {yarn}. {stitches} Maschen und {rows} Reihen messen {width} Zoll in der Breite und {height} Zoll"
    " in der Höhe{grams:? und wiegen {grams} g}.{purl:? Außen ist die linke Maschenseite.}",
    "tension/dial-is-a-start": "Die Maschenweite ist nur ein Anfang: wo die Schritte {dial} sagen, die Zahl einstellen, bei der"
    " Ihre eigene Maschenprobe so ausfällt, und sie hier notieren: ______",
    "tension/dial-is-yours": "Die Maschenweite ist Ihre. Die Schritte der Kanten daran nennen auch {others:/ und }: Zahlen der"
    " Quelle neben deren {was}; die Ihren um ebenso viel lockerer oder fester einstellen.",
    # The machine.
    "machine": "Maschine",
    "machine/single-bed": "{machine}, einbettig",
    "machine/needles": "Nadeln",
    "machine/apart": "{needles}, Teilung {pitch} mm",
    "machine/in-use": "In Gebrauch, höchstens",
    "machine/plates": "Platten",
    "machine/plates-are": "{plates:and}, die festeste zuerst",
    "machine/starts": "Anschlag",
    "machine/starts-hem": "Mit eingehängtem Anschlagstreifen und Trennfaden",
    "machine/starts-by-hand": "Von Hand: ein Kamm ist nicht nötig",
    "machine/missing": "Fehlend",
    "machine/missing-are": "{needles:and}: die Teile liegen daneben",
    "machine/edges": "Ränder",
    "machine/edge-guides": "Randführungen an den äußersten Nadeln, bei jeder Änderung der Breite zu versetzen",
}
