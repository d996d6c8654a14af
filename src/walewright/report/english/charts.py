"""Words for charts, panels and motifs."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "chart-begins-open": Wording(
        (
            "row 1, column {column} of chart `{chart}`, with which piece `{piece}` begins: before it the needles "
            "carry waste yarn, no stitch of the piece"
        ),
        labels={"begins": "begins with the piece"},
        notes={"plain": "the first row on waste yarn is knitted plain, so that it hangs free to be rehung or joined"},
        helps={"draw-knit": "draw a row of knit below it, or let the chart begin at a level above the start"},
    ),
    "chart-empty": Wording(
        "chart `{chart}` has no row",
        labels={"nothing": "nothing drawn"},
        helps={"draw": "draw its rows between strokes, `| . . |`, the last one knitted first"},
    ),
    "chart-in-own-yarn/fabric": Wording(
        "`{symbol}` of chart `{chart}` is knit in `{yarn}`, which is the yarn of the fabric itself",
        labels={"in": "in `{yarn}`", "symbol": "`{symbol}`"},
        helps={"knit": "let that symbol mean `knit`: these stitches keep the yarn of the fabric"},
    ),
    "chart-in-own-yarn/motif": Wording(
        "`{symbol}` of chart `{chart}` is knit in `{yarn}`, which is the yarn around the motif",
        labels={"in": "in `{yarn}`", "symbol": "`{symbol}`"},
        helps={"knit": "let that symbol mean `knit`: these stitches keep the yarn of the fabric"},
    ),
    "chart-in-two-ways": Wording(
        ("chart `{chart}` is the chart of a fabric and of a motif: the one repeats it all over, the other works it once"),
        labels={"chart": "one chart", "fabric": "repeated in a fabric", "motif": "worked once as a motif"},
        helps={"own-chart": "draw a chart of its own for the motif"},
    ),
    "chart-key-unused": Wording(
        "`{symbol}` is in the key of chart `{chart}` and nowhere in its rows",
        labels={"not-drawn": "not drawn"},
        helps={"leave-out": "leave it out"},
    ),
    "chart-ragged": Wording(
        "row {row} of chart `{chart}` has {cells:cell|cells}, and row {model} has {wide}",
        labels={
            "too-many": "{difference:cell|cells} too many from here",
            "too-few": "{difference:cell|cells} too few",
            "model": "{wide:cell|cells}",
        },
        helps={"draw-alike": "draw every row with as many symbols"},
    ),
    "chart-repeat-too-wide/after": Wording(
        ("the repeat of chart `{chart}` is {stitches} stitches after {after} at the left, and its rows have {cells:cell|cells}"),
        labels={"columns": "{columns} columns", "cells": "{cells:cell|cells}"},
        helps={"fewer": "write at most {most} stitches, or draw the rows wider"},
    ),
    "chart-repeat-too-wide/alone": Wording(
        "the repeat of chart `{chart}` is {stitches} stitches, and its rows have {cells:cell|cells}",
        labels={"columns": "{columns} columns", "cells": "{cells:cell|cells}"},
        helps={"fewer": "write at most {most} stitches, or draw the rows wider"},
    ),
    "chart-unknown-symbol": Wording(
        "row {row}, column {column} of chart `{chart}`: no key says what `{symbol}` means",
        labels={"no-key": "not in the key"},
        notes={"symbols": "symbols in the key: {symbols:/ }", "no-key": "the chart has no key"},
        helps={"add": "add a line for it, such as `key {symbol} knit`"},
    ),
    "cross-beyond-tools": Wording(
        "{cell}: a cross of {over} over {over} needs two transfer tools of {over} prongs",
        labels={"over": "{over} over {over}", "meant": "meant here"},
        notes={"largest": "the largest tool at hand has {prongs} prongs"},
        helps={"cross-fewer": "cross {prongs} over {prongs} at most"},
    ),
    "cross-cut": Wording(
        "{cell}: a cross of {over} over {over} takes {needles} neighbouring needles, and {here} are drawn here",
        labels={"part": "part of a cross"},
        helps={"draw-all": "draw {needles} cells for each cross, side by side"},
    ),
    "cross-too-soon": Wording(
        "{cell}: the same needles are crossed again {rows:row|rows} after row {row}",
        labels={"again": "crossed again", "before": "crossed before"},
        notes={"usual": "{over} over {over} every {usual} rows is common practice; sooner the fabric gets stiff"},
        helps={"later": "cross them again after {usual} rows or more"},
    ),
    "cross-uneven": Wording(
        "`{symbol}` crosses {over} over {under}",
        labels={"cross": "this cross"},
        notes={"alike": "two groups of as many stitches are exchanged"},
        helps={"write": "write as many on both sides of `over`, 1 to {most}"},
    ),
    "cross-without-slack": Wording(
        ("{cell}: a cross of {over} over {over} has no purl column directly beside it that has {needed} rows below the cross"),
        labels={"tight": "drawn too tight"},
        notes={
            "dropped": "such a column is dropped before the cross, which gives it slack, and latched up after it",
            "rows-below": "the chart has {below} rows below this one",
        },
        helps={
            "cross-higher": "cross in row {least} or above",
            "draw-purl": "draw purl beside it in its row and the {needed} rows below",
        },
    ),
    "edge-stitches-too-few/none": Wording(
        "fabric `{fabric}` of piece `{piece}` needs {needed:edge stitch|edge stitches}, and has none",
        labels={
            "edge": "{edge:edge stitch|edge stitches}",
            "no-edge": "no edge stitches",
            "fashioned": "fashioned {inset} in",
            "at-last-stitch": "shaped at its last stitch",
            "symbol-is": "`{symbol}` is {kind:term}",
            "symbol-knit-in": "`{symbol}` is knit in {yarn}",
        },
        notes={
            "end-needle": "the end needle of a row has to knit",
            "own-yarn": "the yarn of the fabric has to come to the end of a row, or it would float past the edge",
            "moved-stitches": "the stitches that shaping moves, and the one they are laid on, lie outside the chart",
        },
        helps={"write": "write `{needed:edge stitch|edge stitches}` behind its tension"},
    ),
    "edge-stitches-too-few/some": Wording(
        "fabric `{fabric}` of piece `{piece}` needs {needed:edge stitch|edge stitches}, and has {edge}",
        labels={
            "edge": "{edge:edge stitch|edge stitches}",
            "no-edge": "no edge stitches",
            "fashioned": "fashioned {inset} in",
            "at-last-stitch": "shaped at its last stitch",
            "symbol-is": "`{symbol}` is {kind:term}",
            "symbol-knit-in": "`{symbol}` is knit in {yarn}",
        },
        notes={
            "end-needle": "the end needle of a row has to knit",
            "own-yarn": "the yarn of the fabric has to come to the end of a row, or it would float past the edge",
            "moved-stitches": "the stitches that shaping moves, and the one they are laid on, lie outside the chart",
        },
        helps={"write": "write `{needed:edge stitch|edge stitches}` behind its tension"},
    ),
    "hole-unasked": Wording(
        ("{cell}: its loop is moved to the {side:term}, and the needle that this leaves empty is drawn as {stitch:term}"),
        labels={"empty": "empty, and not drawn so", "loop": "the loop lies here"},
        helps={"draw-hole": "draw it as {hole}, or leave the move out"},
    ),
    "hole-without-move/gone": Wording(
        "{cell}: its own loop has gone to the {side:term}, and lies on no needle there",
        labels={"nowhere": "its loop lies nowhere"},
        helps={"draw-taker": "draw its {side:term} neighbour as {taker}"},
    ),
    "hole-without-move/taken-by-none": Wording(
        "{cell}: the needle is empty, and its loop lies on neither neighbour",
        labels={"nowhere": "its loop lies nowhere"},
        helps={"draw-taker": "draw a neighbour as {takers:or}"},
    ),
    "holes-meet/row-by-row": Wording(
        "{cell}: the needle was empty in the row before, and has a bar but no stitch yet that could be moved",
        labels={"twice": "empty twice in a row", "before": "empty in the row before"},
        helps={"work-row": "work a row between the two holes"},
    ),
    "holes-meet/side-by-side": Wording(
        "{cell}: its left neighbour is empty in the same row, and yarn laid over two empty needles makes no stitches",
        labels={"beside-empty": "empty beside an empty needle", "empty-too": "empty too"},
        helps={"leave-one": "leave a needle with a loop between them"},
    ),
    "ladder-needs-knit/no-row-above": Wording(
        "{cell}: the row above a ladder drops it, and the chart has no further row",
        labels={"last-row": "the ladder's last row"},
        helps={"draw-knit": "draw a row of knit above it"},
    ),
    "ladder-needs-knit/right-neighbour": Wording(
        "{cell}: the stitch that a ladder begins with is hung on its right neighbour, which has to knit",
        labels={"begins": "the ladder begins here", "nothing-right": "nothing right of it", "not-knit": "not knit"},
        helps={"knit-right": "let its right neighbour be knit in this row", "draw-column": "draw another column on the right"},
    ),
    "ladder-needs-knit/row-above": Wording(
        "{cell}: the ladder below it is dropped, and the row above a ladder lays a new loop there",
        labels={"row-above": "the row above a ladder", "ladder": "the ladder"},
        helps={"knit": "let it be knit"},
    ),
    "ladder-never-dropped": Wording(
        "{cell}: every row of this column is a ladder, so no row above drops it, and it stays knitted",
        labels={"never": "never dropped"},
        helps={
            "drop": (
                "draw a row that knits here above as many rows as the ladder shall be high ({least} or more): that row drops it"
            )
        },
    ),
    "ladder-too-short": Wording(
        "{cell}: a ladder of one row: its one bar is hidden between its neighbours",
        labels={"one-row": "one row"},
        helps={"draw-more": "draw {least} rows of it at least, or {hole}"},
    ),
    "missing-part/hung-first": Wording(
        "`{symbol}` does not say which group of the cross is hung first",
        labels={"cross": "this cross"},
        helps={"add": "add `left first` or `right first`: that group lies in front on the right side"},
    ),
    "motif-past-top": Wording(
        "{what} has {chart_rows} rows, and the piece has fewer above `{level}`",
        labels={"above": "{rows} above", "rows": "{chart_rows} rows"},
        helps={"lower": "begin it lower"},
    ),
    "motif-with-repeat": Wording(
        "{what} is worked once, and its chart has a repeat",
        labels={"motif": "as a motif", "repeat": "repeat of {repeat} columns"},
        helps={"leave-out": "leave the `repeat` out of the chart, or make a fabric of it"},
    ),
    "move-beyond-tools": Wording(
        "{cell}: {loops} loops are moved together to the {side:term}",
        labels={"from-here": "{loops} loops from here", "to-here": "to here"},
        notes={"largest": "the largest transfer tool at hand has {prongs} prongs"},
        helps={"nearer": "bring the hole nearer to where two loops lie together"},
    ),
    "move-without-hole/loop-gone": Wording(
        "{cell}: the loop of its {side:term} neighbour lies on it, and that loop has gone to the {gone:term}",
        labels={"again": "the same loop again"},
        helps={"two-holes": "two moves leave two holes: draw one for each"},
    ),
    "move-without-hole/loop-kept": Wording(
        ("{cell}: the loop of its {side:term} neighbour lies on it, and the neighbour is drawn with a loop that does not go there"),
        labels={"kept": "`{symbol}` does not give its loop"},
        helps={"drawn-as": "a loop that goes on to the {onward:term} is drawn as {passing}"},
    ),
    "move-without-hole/no-beginning": Wording(
        "{cell}: its row of moves begins at no empty needle", labels={"no-hole": "no hole before it"}
    ),
    "move-without-hole/outside": Wording(
        "{cell}: the loop of its {side:term} neighbour lies on it, and that needle is not in the chart",
        labels={"from-outside": "takes a loop from outside"},
        helps={"draw-column": "draw another column on the {side:term}, with {hole} here"},
    ),
    "not-positive/chart-repeat": Wording(
        "the repeat of chart `{chart}` is one stitch or wider",
        labels={"stitches": "{stitches} stitches"},
        helps={"a-stitch": "write how many columns are one repeat, 1 or more"},
    ),
    "patterns-clash": Wording(
        "{one} and {other} of piece `{piece}` cannot be worked in the same rows",
        labels={"one": "{one}", "other": "{other}"},
        helps={
            "plain-or-drawn": "work the chart in a plain fabric, or draw the stripes' rows in the chart",
            "end-or-move": "let one end before the other begins, or move one beside the other",
            "end-before-picture": ("let one end before the other begins: {picture} lays its yarns over all needles of a row"),
            "same-yarn": "let them use the same other yarn, or let one end before the other begins",
            "within": "let {local} begin and end within {whole}",
            "after": "let {local} begin after {panel}",
            "move-or-end": "move one beside the other, or let one end before the other begins",
            "plain-or-drawn-often": ("let the rows that are repeated be in a plain fabric, or draw them as often in the chart"),
            "plain": "let the rows that are repeated be in a plain fabric",
            "end-or-begin": "let the chart end before that level or begin at it",
            "elsewhere": "work it in rows where the chart is not",
            "elsewhere-or-beside": "work it in rows where the chart is not, or beside it",
        },
    ),
    "picture-other-stitch": Wording(
        "{cell}: colours laid in blocks are laid by hand over all needles, and `{symbol}` is {stitch:term}",
        labels={"stitch": "{stitch:term}"},
        helps={"keep-to-knit": "keep to knit stitches, or let the colours float"},
    ),
    "repeat-parity": Wording(
        ("piece `{piece}` has {odd:?an odd|an even} number of stitches, and whole repeats of chart `{chart}` never come to one"),
        labels={"number": "{odd:?an odd|an even} number of stitches", "repeat": "repeat of {repeat} stitches, {beside} beside it"},
        helps={
            "no-centre-stitch": "leave `centre stitch` out of the piece",
            "centre-stitch": "let the piece have a `centre stitch`",
            "draw-column": "or draw one column more or less beside the repeat",
        },
    ),
    "repeat-wider-than-piece": Wording(
        "one repeat of chart `{chart}` takes {needed} stitches, and {what} of piece `{piece}` is narrower",
        labels={"wide": "{stitches} wide", "takes": "{takes}"},
        helps={"widen": "make it {width} wide at least"},
    ),
    "row-without-main": Wording(
        "{cell}: no stitch of the repeat keeps the yarn of the fabric in this row",
        labels={"whole-repeat": "the whole repeat in other yarns"},
        helps={"leave-one": "leave a stitch in the yarn of the fabric, or knit such rows as stripes"},
    ),
    "slip-too-long/for-ever": Wording(
        "{cell}: the stitch is slipped and never knitted",
        labels={"too-long": "slipped too long", "from-here": "slipped from here"},
        notes={"pulls": "a stitch slipped over more than {most} rows pulls the fabric together (common practice)"},
        helps={"knit-before": "let it knit after {most} rows at most: draw a row that knits there above these"},
    ),
    "slip-too-long/rows": Wording(
        "{cell}: the stitch is slipped over {rows} rows",
        labels={"too-long": "slipped too long", "from-here": "slipped from here"},
        notes={"pulls": "a stitch slipped over more than {most} rows pulls the fabric together (common practice)"},
        helps={"knit-before": "let it knit after {most} rows at most: draw a row that knits there above these"},
    ),
    "three-colours-in-row": Wording(
        "{cell}: the row has `{one}` and `{other}` beside the yarn of the fabric",
        labels={"one": "`{one}`", "other": "`{other}`"},
        helps={"keep-to-one": "keep to one other yarn in a row, or lay the colours in blocks"},
    ),
    "tuck-side-by-side": Wording(
        "{cell}: its left neighbour is held in the same row, and bars over two needles do not knit off",
        labels={"beside-held": "held beside a held needle", "held-too": "held too"},
        helps={"knit-one": "let one of the two knit"},
    ),
    "tuck-too-long/for-ever": Wording(
        "{cell}: the needle is held for ever, and a stitch with more than {most} bars does not knit off",
        labels={"too-long": "held too long", "from-here": "held from here"},
        helps={"knit-before": "let it knit after {most} rows at most; 2 are usual"},
    ),
    "tuck-too-long/rows": Wording(
        "{cell}: the needle is held for {rows} rows, and a stitch with more than {most} bars does not knit off",
        labels={"too-long": "held too long", "from-here": "held from here"},
        helps={"knit-before": "let it knit after {most} rows at most; 2 are usual"},
    ),
}
