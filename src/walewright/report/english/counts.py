"""Words for stitches and rows that cannot be."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "buttonholes-crowded": Wording(
        "the {holes} buttonholes of band `{name}` do not fit on it",
        labels={"buttonholes-here": "buttonholes here"},
        notes={"stitches-rows": "{among}: {stitches} stitches and {rows} rows"},
        helps={"buttonhole-needs-two": "{deeper}: a buttonhole needs two rows below it and two above"},
    ),
    "called-edges-differ": Wording(
        "`{name}` of the {name_2} has more rows on one side than on the other",
        notes={"rows-left-right": "{among}: {rows} rows on the left, {rows_2} on the right"},
        helps={"call-each-edge": "call each edge by a name of its own (`left edge ... called`, `right edge ... called`)"},
    ),
    "cannot-match": Wording(
        "{one} and {other} cannot be matched: {fault}",
        labels={"joined-here": "joined here"},
        notes={"here": "{size}: {note}"},
        helps={"fault-2": "{fault_2}"},
    ),
    "cap-cannot-meet": Wording(
        "however far up the free levels of the {name} are, {one} cannot meet {other}",
        labels={"joined-here": "joined here", "free": "`{name_2}` is free", "the": "the {name}"},
        notes={"here": "{among}: {sides_told}"},
        helps={"change-widths-these": "change the widths that these edges come from, or allow more easing"},
    ),
    "free-level-without-room": Wording(
        "wherever the free levels of the {name} are, {fails}",
        labels={"free": "`{level}` is free"},
        notes={"here": "{among}: {says}"},
        helps={
            "let-go-farther": "let `{level}` of the {name} go farther, or let the edges between these levels move in less",
        },
    ),
    "join-does-not-meet": Wording(
        "{one} and {other} do not meet",
        labels={"joined-here": "joined here"},
    ),
    "motif-outside/reaches-edge-piece": Wording(
        "{what} reaches to the edge of the piece or beyond",
        helps={
            "move-middle-begin": "move it to the middle, or begin it where the piece is wider: a stitch has to be left on each side",
        },
    ),
    "motif-outside/reaches-into-opening": Wording(
        "{what} reaches into an opening",
        helps={"begin-lower-move": "begin it lower, or move it away from the opening: a stitch has to be left beside it"},
    ),
    "motif-too-high": Wording(
        "{what} is higher than its fabric goes on there",
        helps={"begin-lower-level": "begin it at a lower level"},
    ),
    "no-proven-best": Wording(
        "no best counts were found for {names} within the solver's limit",
        helps={"give-figures-differ": "give figures that differ less from each other between the sizes, or fewer sizes"},
    ),
    "panel-crossed": Wording(
        "the panel of {fabric} in the {name} is crossed",
        labels={"panel": "this panel"},
        notes={"here": "{size}: {note}"},
        helps={"make-panel-narrower": "make the panel narrower, end it below, or move it or what crosses it to the side"},
    ),
    "repeats-on-a-slope/whole-repeats-begin": Wording(
        "whole repeats of `{name}` begin at `{name_2}` of the {name_3}, where no one width stands",
        labels={"begins-here": "begins here", "here": "`{name_2}`"},
        helps={
            "let-begin-level": "let `{name}` begin at a level above or below",
            "let-centred": "or let `{name}` be centred",
        },
    ),
    "repeats-on-a-slope/whole-repeats-begin-2": Wording(
        "whole repeats of `{name}` begin at `{name_2}` of the {name_3}, where its edge is on its way",
        labels={"begins-here": "begins here", "here": "`{name_2}`"},
        notes={"width-follows-slope": "the width there follows from the slope and cannot be chosen for the repeats"},
        helps={
            "lead-edges-two": "lead the edges to `{name_2}` and on from there in two steps (`edges ... at {name_2}`)",
            "let-centred": "or let `{name}` be centred",
        },
    ),
    "rib-without-column": Wording(
        "{what} has no stitch that its rib could be latched up on",
        labels={"too-narrow-rib": "too narrow for a rib", "latched-rib": "latched rib"},
        notes={"two-end-needles": "the two end needles are never latched up: the edge would run"},
    ),
    "sizes-not-graded": Wording(
        "the sizes cannot be graded as evenly as they are wanted: each by itself could be counted, but not all together",
        helps={
            "give-figures-differ": "give figures that differ by more from size to size, or knit the sizes from separate patterns",
        },
    ),
    "start-longer-than-edges": Wording(
        "the {name} starts on more stitches than can be picked up along {along}",
        labels={"begun-here": "begun here"},
        notes={"stitches-places": "{among}: {made} stitches, and {made_2} places"},
        helps={
            "start-cm-wide": "start it {floor:g} cm wide at the most",
            "begin-along-more": "or begin it along more edges",
        },
    ),
    "too-much-knitting/all-sizes-together": Wording(
        "all sizes together have {amount} {what}, and {limit:,} are the most",
        labels={"them": "{amount_2} of them"},
        notes={"shown": "{shown}"},
        helps={"shown": "{shown}", "look-units-how": "look at the units, and at how many pieces there are"},
    ),
    "too-much-knitting/rows-most": Wording(
        "the {name} has {amount} rows, and {MOST_ROWS:,} are the most",
        labels={"top": "`{name_2}` is its top", "piece": "this piece"},
        notes={"rows": "{among}: {amount} rows"},
        helps={"look-unit-rows": "look at the unit, at the rows of the swatch, and at how often rows are repeated"},
    ),
    "too-small/rows-fewer-piece": Wording(
        "the {name} has {amount} rows, and fewer than {FEWEST_ROWS} are no piece of knitting",
        labels={"top": "`{name_2}` is its top", "piece": "this piece"},
        notes={"cm-rows": "{among}: {height:.3g} cm are {amount} rows"},
        helps={"look-unit-what": "look at the unit, and at what its height is reckoned from"},
    ),
    "too-small/stitches-wide-fewer": Wording(
        "the {name} is {amount} stitches wide, and fewer than {FEWEST_STITCHES} are no piece",
        labels={"wide-gets": "as wide as it gets"},
        notes={"stitches-widest": "{among}: {amount} stitches at the widest"},
        helps={"look-unit-cord": "look at the unit; a cord is no piece, and is named with `cord`"},
    ),
    "wider-than-bed/band-takes-up": Wording(
        "band `{name}` takes up to {stitches} needles, and the bed has {needles}",
        labels={"picked-up-here": "picked up here"},
        notes={"stitches": "{among}: {stitches} stitches"},
    ),
    "wider-than-bed/takes-up-needles": Wording(
        "the {name} takes up to {even} needles, and the bed has {needles}",
        labels={"rstrip": "{rstrip}"},
        notes={"stitches-cm-needles": "at {per_cm:.1f} stitches to 10 cm, {needles} needles make {length}"},
    ),
}
