"""What stands beside a chart, in German."""

from __future__ import annotations

CHARTS = {
    "chart": "Strickschrift {chart}",
    "chart/sheet": "Blatt {sheet}: Spalten {left} bis {right}, Reihen {low} bis {high}",
    "chart/cut": "Die Strickschrift ist in {sheets} Blätter geteilt. Graue Reihen und Spalten stehen auf zweien davon: diese"
    " aufeinander legen.",
    "chart/seen": "Gesehen",
    "chart/as-you-sit": "wie Sie davor sitzen: die linke Maschenseite ist Ihnen zugewandt, links ist links auf dem Nadelbett,"
    " Reihe 1 wird zuerst gestrickt, unten",
    "chart/right-side": "Außenseite",
    "chart/right-side-knit": "die rechte Maschenseite, an der Maschine von Ihnen abgewandt",
    "chart/right-side-purl": "die linke Maschenseite, an der Maschine Ihnen zugewandt",
    "chart/rows": "{count:Reihe|Reihen}",
    "chart/repeat": "Rapport",
    "chart/once-at": "{count} einmal {side:term}",
    "chart/repeated": "Spalten {first} bis {last}, im dick umrandeten Feld, in der Breite immer wieder; {rows}, in der Höhe immer"
    " wieder{once:?; {once}}",
    "chart/repeated-upwards": "Spalten {first} bis {last}, im dick umrandeten Feld, in der Breite einmal; {rows}, in der Höhe immer"
    " wieder{once:?; {once}}",
    "chart/size": "Größe",
    "chart/worked-once": "{width} Maschen und {rows}, einmal gearbeitet",
    "chart/wedges": "Keile",
    "chart/wedges-point": "oben und unten zeigen auf die Spalten, zwischen denen in der einen oder anderen Größe die"
    " Mittelmarkierung liegt",
    "chart/yarns": "Garne",
    "chart/in-colours": "jedes Kästchen in der Farbe seines Garns, das hellste ohne Schraffur, die anderen schraffiert: die"
    " Zeichenerklärung hat sie alle",
    "chart/white-cells": "weiße Kästchen: {yarn}, oder das Garn in Gebrauch; schraffierte Kästchen: wie die Zeichenerklärung sagt",
    "chart/slants": "Schrägen",
    "chart/slants-lean": "neigen sich so, wie die Masche auf dem Nadelbett umgehängt wird; auf der rechten Maschenseite ist es"
    " umgekehrt",
    "chart/knit-in": "mit {yarn} stricken",
    "chart/seen-purl": "Das Gestrick von seiner Außenseite, der linken Maschenseite, wie es vor Ihnen auf dem Nadelbett hängt."
    " Masche für Masche nach der Strickschrift gezeichnet.",
    "chart/seen-knit": "Das Gestrick von seiner Außenseite, der rechten Maschenseite: umgedreht, so dass rechts ist, was auf"
    " dem Nadelbett links liegt; gestrichelte Linien sind Fäden, die dahinter laufen. Masche für Masche nach"
    " der Strickschrift gezeichnet.",
    "chart/of-fabric": "{fabric}. {seen}",
}
