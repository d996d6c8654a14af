"""Words for patterns that do not come out on the counted stitches, and for too little or too much knitting."""

from __future__ import annotations

from walewright.report.wording import Wording

_JOINED = {"joined-here": "joined here"}

WORDINGS: dict[str, Wording] = {
    "cannot-match/begins-elsewhere": Wording(
        (
            "{one} and {other} cannot be matched: `{fabric}` begins at `{here}` of the {piece} and at `{there}` of the "
            "{other_piece}, which lie otherwise to the beginnings of these edges"
        ),
        labels=_JOINED,
        helps={"mend": "let it begin at the same height in both pieces"},
    ),
    "cannot-match/borders": Wording(
        "{one} and {other} cannot be matched: the chart of `{fabric}` has borders, which would lie side by side",
        labels=_JOINED,
        helps={"mend": "leave the borders out of the chart"},
    ),
    "cannot-match/eased": Wording(
        "{one} and {other} cannot be matched: what is eased in moves the rows past each other",
        labels=_JOINED,
        helps={"mend": "leave the easing out: then both edges get equal rows"},
    ),
    "cannot-match/no-pattern": Wording(
        "{one} and {other} cannot be matched: neither edge is in a charted fabric or in stripes",
        labels=_JOINED,
        helps={"mend": "sew it without `matching`"},
    ),
    "cannot-match/no-repeat": Wording(
        "{one} and {other} cannot be matched: the chart of `{fabric}` has no repeat",
        labels=_JOINED,
        helps={"mend": "give the chart a repeat"},
    ),
    "cannot-match/not-along-rows": Wording(
        "{one} and {other} cannot be matched: only edges along rows can be matched row by row",
        labels=_JOINED,
        helps={"mend": "sew it without `matching`"},
    ),
    "cannot-match/other-fabrics": Wording(
        "{one} and {other} cannot be matched: along {one} lies {here:and}, along {other} {there:and}",
        labels=_JOINED,
        helps={"mend": "knit both in the same fabrics in the same order"},
    ),
    "cannot-match/repeat-cut": Wording(
        "{one} and {other} cannot be matched: `{fabric}` is {fit:term}: a repeat is cut at each edge",
        labels=_JOINED,
        helps={"mend": "knit `{fabric}` in whole repeats"},
    ),
    "cannot-match/rows-apart": Wording(
        "{one} and {other} cannot be matched: their rows do not meet",
        labels=_JOINED,
        helps={"mend": "give both pieces the same levels where the fabrics and the edges begin"},
    ),
    "steps-turn-back": Wording(
        "the steps to `{to_level}` do not all go one way",
        labels={"other-way": "goes another way, or nowhere", "first": "the first goes this way"},
        helps={"one-way": "let every step move the edge the same way, or lead it to a level of its own where it turns"},
    ),
    "rate-not-kept/where-it-parts": Wording(
        (
            "the edge of the {piece} to `{level}` cannot move every {rows} rows: one of its moves comes in the row where the "
            "piece parts or rejoins, and both ends cannot be moved there"
        ),
        labels={"rate": "every {rows} rows"},
        notes={"counter": "{size}: RC {row}"},
        helps={
            "write-rate": "write `every {rows} rows`",
            "end-at-the-level": "lead the edge to a level in that row, and on from there in a line of its own",
        },
    ),
    "repeats-on-a-slope/edge-on-its-way": Wording(
        "whole repeats of `{fabric}` begin at `{level}` of the {piece}, where its edge is on its way",
        labels={"begins-here": "begins here", "level": "`{level}`"},
        notes={"width-follows": "the width there follows from the slope and cannot be chosen for the repeats"},
        helps={
            "two-steps": "lead the edges to `{level}` and on from there in two steps (`edges ... at {level}`)",
            "or-centred": "or let `{fabric}` be centred",
        },
    ),
    "repeats-on-a-slope/no-one-width": Wording(
        "whole repeats of `{fabric}` begin at `{level}` of the {piece}, where no one width stands",
        labels={"begins-here": "begins here", "level": "`{level}`"},
        helps={
            "another-level": "let `{fabric}` begin at a level above or below",
            "or-centred": "or let `{fabric}` be centred",
        },
    ),
    "too-much-knitting/heights-in-all": Wording(
        "all sizes together have {amount:,} heights to find, and {most:,} are the most",
        labels={"of-them": "{of_piece:,} of them"},
        notes={"level-is-a-height": "a level is a height a size"},
        helps={
            "sizes-at-a-time": "build up to {able} of the {sizes} sizes at a time, each named with `--size`",
            "look-at-units": "look at the units, and at how many pieces there are",
        },
    ),
    "too-much-knitting/rows": Wording(
        "the {piece} has {rows:,} rows, and {most:,} are the most",
        labels={"top": "`{level}` is its top", "piece": "this piece"},
        notes={"rows": "{size}: {rows:,} rows"},
        helps={"look-at-rows": "look at the unit, at the rows of the swatch, and at how often rows are repeated"},
    ),
    "too-much-knitting/rows-in-all": Wording(
        "all sizes together have {amount:,} rows, and {most:,} are the most",
        labels={"of-them": "{of_piece:,} of them"},
        helps={
            "sizes-at-a-time": "build up to {able} of the {sizes} sizes at a time, each named with `--size`",
            "look-at-units": "look at the units, and at how many pieces there are",
        },
    ),
    "too-much-knitting/stitches-in-all": Wording(
        "all sizes together have {amount:,} stitches to work out, and {most:,} are the most",
        labels={"of-them": "{of_piece:,} of them"},
        notes={
            "stitches-count": "a plain stitch counts once, one {weights}, of a chart with yarns of its own {in_colours}",
        },
        helps={
            "sizes-at-a-time": "build up to {able} of the {sizes} sizes at a time, each named with `--size`",
            "look-at-units": "look at the units, and at how many pieces there are",
        },
    ),
    "too-small/rows": Wording(
        "the {piece} has {rows:.2g} {rows:=row|rows}, and fewer than {fewest} are no piece of knitting",
        labels={"top": "`{level}` is its top", "piece": "this piece"},
        notes={"high": "{size}: {height:.3g} are {rows:.2g} {rows:=row|rows}"},
        helps={"look-at-height": "look at the unit, and at what its height is reckoned from"},
    ),
    "too-small/stitches": Wording(
        "the {piece} is {stitches:.2g} {stitches:=stitch|stitches} wide, and fewer than {fewest} are no piece",
        labels={"widest": "as wide as it gets"},
        notes={"at-the-widest": "{size}: {stitches:.2g} {stitches:=stitch|stitches} at the widest"},
        helps={"look-at-width": "look at the unit; a cord is no piece, and is named with `cord`"},
    ),
}
