"""Words for charts, panels and motifs."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "chart-empty": Wording(
        "{owner} has no row",
        labels={
            "nothing-drawn": "nothing drawn",
        },
        helps={
            "draw-rows-between": "draw its rows between strokes, `| . . |`, the last one knitted first",
        },
    ),
    "chart-in-own-yarn/chart-knit-yarn-2": Wording(
        "`{symbol}` of chart `{name}` is knit in `{yarn}`, which is the yarn around the motif",
        labels={
            "in": "in `{yarn}`",
            "here": "`{symbol}`",
        },
        helps={
            "let-symbol-mean": "let that symbol mean `knit`: these stitches keep the yarn of the fabric",
        },
    ),
    "chart-in-two-ways": Wording(
        "chart `{name}` is the chart of a fabric and of a motif: the one repeats it all over, the other works it once",
        labels={
            "chart": "one chart",
            "repeated-fabric": "repeated in a fabric",
            "worked-once-motif": "worked once as a motif",
        },
        helps={
            "draw-chart-own": "draw a chart of its own for the motif",
        },
    ),
    "chart-key-unused": Wording(
        "`{symbol}` is in the key of chart `{name}` and nowhere in its rows",
        labels={
            "drawn": "not drawn",
        },
        helps={
            "leave-out": "leave it out",
        },
    ),
    "chart-ragged": Wording(
        "row {number} of chart `{chart}` has {cells}, and row {model} has {wide}",
        labels={
            "label": "{label}",
            "here": "{cells_2}",
        },
        helps={
            "draw-every-row": "draw every row with as many symbols",
        },
    ),
    "chart-repeat-too-wide": Wording(
        "the repeat of chart `{name}` is {stitches} stitches{beside}, and its rows have {cells}",
        labels={
            "columns": "{stitches_2} columns",
            "cells": "{cells}",
        },
        helps={
            "write-most-stitches": "write at most {wide} stitches, or draw the rows wider",
        },
    ),
    "chart-unknown-symbol": Wording(
        "row {first}, column {column} of chart `{name}`: no key says what `{symbol}` means",
        labels={
            "key": "not in the key",
        },
        notes={
            "symbols-key": "symbols in the key: {join}",
            "chart-key": "the chart has no key",
        },
        helps={
            "close": "`{meant}` is close",
            "add-line-such": "add a line for it, such as `key {symbol} knit`",
        },
    ),
    "cross-uneven": Wording(
        "`{symbol}` crosses {over} over {over_2}",
        labels={
            "cross": "this cross",
        },
        notes={
            "two-groups-many": "two groups of as many stitches are exchanged",
        },
        helps={
            "write-many-both": "write as many on both sides of `over`, 1 to {MOST_CROSS}",
        },
    ),
    "edge-stitches-too-few": Wording(
        "fabric `{name}` of piece `{name_2}` needs {need} edge {if_need:?stitch|stitches}, and has {edge}",
        labels={
            "edge": "{edge_2} edge {if_edge:?stitch|stitches}",
            "label": "{label}",
        },
        notes={
            "why": "{why}",
        },
        helps={
            "write-behind-tension": "write `{need} edge {if_need:?stitch|stitches}` behind its tension",
        },
    ),
    "in-repeat": Wording(
        "{what} of piece `{piece}` is in rows that are repeated",
        labels={
            "what": "{what}",
            "repeated-here": "repeated here",
        },
        helps={
            "let-done-before": "let it be done before or after these rows",
        },
    ),
    "missing-part/does-say-group": Wording(
        "`{symbol}` does not say which group of the cross is hung first",
        labels={
            "cross": "this cross",
        },
        helps={
            "add-group-lies": "add `left first` or `right first`: that group lies in front on the right side",
        },
    ),
    "motif-past-top": Wording(
        "{what} has {rows} rows, and the piece has fewer above `{level}`",
        labels={
            "above": "{rows_2} above",
            "rows": "{rows} rows",
        },
        helps={
            "begin-lower": "begin it lower",
        },
    ),
    "motif-with-repeat": Wording(
        "{what} is worked once, and its chart has a repeat",
        labels={
            "motif": "as a motif",
            "repeat-columns": "repeat of {repeat} columns",
        },
        helps={
            "leave-out-chart": "leave the `repeat` out of the chart, or make a fabric of it",
        },
    ),
    "not-positive/repeat-chart-stitch": Wording(
        "the repeat of chart `{name}` is one stitch or wider",
        labels={
            "stitches": "{stitches} stitches",
        },
    ),
    "patterns-clash": Wording(
        "{one} and {other} of piece `{name}` cannot be worked in the same rows",
        labels={
            "one": "{one}",
            "other": "{other}",
        },
        helps={
            "proposal": "{proposal}",
        },
    ),
    "repeat-parity": Wording(
        "piece `{name}` has {is_odd} number of stitches, and whole repeats of chart `{name_2}` never come to one",
        labels={
            "number-stitches": "{is_odd} number of stitches",
            "repeat-stitches-beside": "repeat of {repeat} stitches, {beside} beside it",
        },
        helps={
            "leave-out-piece": "leave `centre stitch` out of the piece",
            "let-piece": "let the piece have a `centre stitch`",
            "draw-column-more": "or draw one column more or less beside the repeat",
        },
    ),
    "repeat-wider-than-piece": Wording(
        "one repeat of chart `{name}` takes {need} stitches, and {what} of piece `{name_2}` is narrower",
        labels={
            "wide": "{stitches} wide",
            "join": "{join}",
        },
        helps={
            "make-wide-least": "make it {width} wide at least",
        },
    ),
    "stretches-overlap/piece-share-rows": Wording(
        "{what} and {what_2} of piece `{piece}` share rows",
        labels={
            "what-2": "{what_2}",
            "what": "{what}",
        },
        helps={
            "proposal": "{proposal}",
        },
    ),
    "while-held/piece-rows-stitches": Wording(
        "{what} of piece `{piece}` is in rows where stitches are held",
        labels={
            "what": "{what}",
            "held-here": "held here",
        },
        helps={
            "let-done-before": "let it be done before they are held or after they are back in work",
        },
    ),
    "while-held/piece-rows-stitches-2": Wording(
        "piece `{name}` {word} at `{name_2}` in rows where stitches are held",
        labels={
            "at": "{word} at {at}",
            "held-here": "held here",
        },
        helps={
            "let-wedge-end": "let the wedge end before that row or begin after it",
        },
    ),
    "while-parted": Wording(
        "{what} of piece `{piece}` needs the whole width, and the piece is parted there",
        labels={
            "what": "{what}",
            "open": "open from {low} to {high}",
        },
        helps={
            "let-done-before": "let it be done before the parting or after the parts have rejoined",
        },
    ),
}
