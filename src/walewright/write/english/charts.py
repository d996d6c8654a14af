"""English words beside charts: what each mark asks for, what is repeated, and the notes."""

from __future__ import annotations

MARKS = {
    "mark/knit": "knit plain",
    "mark/by-hand": "hold the needle for this row, then lift the yarn off it and knit it by hand with {yarn}",
    "mark/lay": "lay {yarn}",
    "mark/lay-in-use": "lay the yarn in use",
    "mark/hole": "leave the needle empty in work; its st goes one needle to the side that the marks beside it show",
    "mark/from left": "the st of the needle on the left comes here; the needle’s own goes one needle to the right",
    "mark/from right": "the st of the needle on the right comes here; the needle’s own goes one needle to the left",
    "mark/two from left": "the st of the needle on the left comes here, on top of the needle’s own",
    "mark/two from right": "the st of the needle on the right comes here, on top of the needle’s own",
    "mark/three": "the sts of the needles on the left and on the right come here, on top of the needle’s own, the left one first",
    "mark/purl": "knit; where no such mark follows above, drop the column of these marks and latch it up on the other face",
    "mark/purl-in-stages": "knit; at the RC that the steps name, drop the column down to where it was last latched up and"
    " latch it up on the other face: when {rows} or more such marks of it wait and no cross is next to it in the row above, and at"
    " the last of them",
    "mark/tuck": "hold the needle, so that the yarn lies over it, until another mark stands above",
    "mark/slip": "hold the needle for this row, then lift the yarn off it to float past on your side",
    "mark/long": "hold the needle for this row, then draw the yarn through by hand to twice the length of a st",
    "mark/ladder": "knit, having moved the st one needle to the right before the column’s first row; before the next row without"
    " such a mark, drop the column of these marks",
    "mark/cross": "of every {marks} such marks side by side exchange the left {half} and the right {half}, hanging the"
    " {first:term} first",
}

REPEATED = {
    "repeat": "Repeat: {columns} across{left}{right}; {rows} upwards.",
    "repeat/none": "Repeat: none; the {columns:column|columns} and {rows:row|rows} are worked once.",
    "repeat/left": ", {columns} once at the left",
    "repeat/right": ", {columns} once at the right",
    "columns": "columns {first} to {last}",
    "columns/one": "column {first}",
    "rows": "rows {first} to {last}",
    "rows/one": "row {first}",
}

NOTES = {
    "chart": "Chart {chart}",
    "chart/side": "The purl side faces you; left and right are the bed’s. Row 1 is the lowest and is knitted first.",
    "chart/before-the-row": "Moves and crosses are made before the row is knitted.",
    "chart/plain": "Where a needle of a move or a cross is missing, held or an edge st, knit all sts of that move or cross plain.",
    "chart/slack": "A column of purl marks next to a cross is dropped before it, down to where it was last latched up, and"
    " latched up after it; one between two crosses is latched up after both.",
    "chart/tight": "A cross of 3 over 3 or wider without such a column beside it is knit plain.",
    "chart/columns": "Purl marks: latch each column up after the last of them, and sooner where the chart ends or where its needle"
    " is about to be decreased, cast off, held, taken off or hung with a further st. In a part that waits its turn the columns"
    " wait too.",
    "chart/in-stages": "Deep columns are latched up in stages, the first from the foot of the column; the steps name the values of"
    " the counter.",
    "chart/returned": "Where the chart ends, or an end of the work comes near, tucked needles return to work.",
    "chart/ladders": "Ladders: drop each before the row above its last mark and leave the needle in work; one that the chart’s end"
    " or shaping reaches stays knitted.",
    "chart/one-row": "The one row is worked every time.",
    "chart/next-row": "Row 1 comes again every {rows} rows, counted from where the chart began; where the counter is set back, the"
    " chart goes back with it.",
    "chart/by-blocks": "Way: by hand, over the whole width, beginning at the carriage’s side, where the yarns hang, lay each"
    " block’s yarn into the open hooks, those of other charts too, crossing neighbouring yarns where they meet; then take the"
    " carriage across without yarn.",
}

CHARTS = {**MARKS, **REPEATED, **NOTES}
