"""What stands beside a chart."""

from __future__ import annotations

CHARTS = {
    "chart": "Chart {chart}",
    "chart/sheet": "Sheet {sheet}: columns {left} to {right}, rows {low} to {high}",
    "chart/cut": "The chart is cut into {sheets} sheets. Grey rows and columns stand on two of them: lay them on each other.",
    "chart/seen": "Seen",
    "chart/as-you-sit": "as you sit before it: the purl side faces you, left is left on the bed, row 1 is knitted first, at "
    "the bottom",
    "chart/right-side": "Right side",
    "chart/right-side-knit": "the knit side, which faces away from you at the machine",
    "chart/right-side-purl": "the purl side, which faces you at the machine",
    "chart/rows": "{count:row|rows}",
    "chart/repeat": "Repeat",
    "chart/once-at": "{count} once at the {side:term}",
    "chart/repeated": "columns {first} to {last}, in the heavy box, repeated across; {rows}, repeated upwards{once:?; {once}}",
    "chart/repeated-upwards": "columns {first} to {last}, in the heavy box, once across; {rows}, repeated upwards{once:?; {once}}",
    "chart/size": "Size",
    "chart/worked-once": "{width} stitches by {rows}, worked once",
    "chart/wedges": "Wedges",
    "chart/wedges-point": "above and below point at the columns between which the centre mark lies in one size or another",
    "chart/yarns": "Yarns",
    "chart/in-colours": "each cell in the colour of its yarn, the lightest yarn bare, the others hatched: the key has them all",
    "chart/white-cells": "white cells: {yarn}, or the yarn in use; hatched cells: as the key says",
    "chart/slants": "Slants",
    "chart/slants-lean": "lean the way the loop is moved on the bed; on the knit side it is the other way round",
    "chart/knit-in": "knit in {yarn}",
    "chart/seen-purl": "The fabric from its right side, the purl side, as it hangs on the bed before you. Drawn loop by "
    "loop from the chart.",
    "chart/seen-knit": "The fabric from its right side, the knit side: turned round, so that what lies left on the bed is at "
    "the right; broken lines are yarn that runs behind. Drawn loop by loop from the chart.",
    "chart/of-fabric": "{fabric}. {seen}",
}
