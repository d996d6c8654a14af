"""Words for stitches and rows that cannot be."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "band-parted": Wording(
        (
            "band `{band}` takes up to {stitches} needles, and the bed has {needles}{missing:? side by side}: it is knitted in "
            "{parts} parts"
        ),
        labels={"picked-up-here": "picked up here"},
        notes={
            "part": "`{part}`: along {along}",
            "cut-rows": "within `{edge}` it is parted {far} above the lower end",
            "cut-stitches": "within `{edge}` it is parted {far} from the left end",
            "ends-sewn": "their ends are sewn together where they meet, a stitch of each",
        },
        helps={"bands-of-their-own": "write them as bands of their own to part it elsewhere"},
    ),
    "buttonholes-crowded": Wording(
        "the {buttonholes} buttonholes of band `{band}` do not fit on it",
        labels={"buttonholes-here": "buttonholes here"},
        notes={"band-has": "{size}: {stitches:stitch|stitches} and {rows:row|rows}{part:? in the part that has them}"},
        helps={
            "deeper": (
                "{chained:?give the band an edging that has a depth|make the band deeper}: a buttonhole needs two rows below it "
                "and two above"
            ),
            "fewer": "work {room:buttonhole|buttonholes} at the most",
            "nearer-ends": "let the first and the last lie nearer the ends",
        },
    ),
    "called-edges-differ": Wording(
        "`{edge}` of the {piece} has more rows on one side than on the other",
        labels={"called": "called `{edge}`"},
        notes={"rows": "{size}: {left} rows on the left, {right} on the right"},
        helps={"call-each": "call each edge by a name of its own (`left edge ... called`, `right edge ... called`)"},
    ),
    "cap-cannot-meet": Wording(
        "however far up the free levels of the {piece} are, {one} cannot meet {other}",
        labels={"joined-here": "joined here", "free": "`{level}` is free", "piece": "the {piece}"},
        helps={"change-widths": "change the widths that these edges come from, or allow more easing"},
    ),
    "counts-conflict/alone": Wording("{failing:cannot}"),
    "counts-conflict/because": Wording("because {because:and}, {failing:cannot}"),
    "free-level-without-room": Wording(
        "wherever the free levels of the {piece} are, {failing:cannot}",
        labels={"free": "`{level}` is free"},
        helps={
            "go-farther": "let `{level}` of the {piece} go farther, or let the edges between these levels move in less",
        },
    ),
    "hole-at-edge/buttonhole": Wording(
        "a buttonhole of the {piece} reaches an edge, or stitches that are just moved",
        labels={"here": "here"},
        notes={"needs": "a hole needs a stitch on each side that is not moved in the rows about it"},
        helps={
            "move-them": "put them {cm} {inwards:?further from|nearer to} the {edge:term} edge",
            "room": "make the piece wider there, or the buttonholes over fewer stitches",
        },
    ),
    "hole-at-edge/slot": Wording(
        "the slot `{slot}` of the {piece} reaches an edge, or stitches that are just moved",
        labels={"here": "here"},
        notes={"needs": "a hole needs a stitch on each side that is not moved in the rows about it"},
        helps={
            "further": "let it lie {cm} further to the {side:term} on the bed",
            "narrower": "make it narrower, or put `{level}` where the edges go straight on and the piece is not parted",
        },
    ),
    "join-does-not-meet": Wording(
        "{one} and {other} do not meet",
        labels={"joined-here": "joined here"},
        notes={"runs-along": "{one} runs along {one_kinds:and}, {other} along {other_kinds:and}"},
        helps={
            "change-levels": "change the levels or widths that these edges come from, or allow more easing",
            "rows-to-stitches": "let one side run along rows and the other along stitches, or sew them by length, with `easing`",
            "sew-it": "sew it: only loops to loops can be {way:term}",
            "some-easing": "allow some easing: then their lengths are compared",
        },
    ),
    "motif-outside/edge": Wording(
        "`{motif}` on the {piece} reaches to the edge of the piece or beyond",
        labels={"begun-here": "begun here", "as-large": "{stitches:stitch|stitches} wide"},
        helps={
            "towards-the-middle": (
                "move it to the middle, or begin it where the piece is wider: a stitch has to be left on each side"
            ),
        },
    ),
    "motif-outside/opening": Wording(
        "`{motif}` on the {piece} reaches into an opening",
        labels={"begun-here": "begun here", "as-large": "{stitches:stitch|stitches} wide, {rows:row|rows} high"},
        helps={
            "away-from-the-opening": "begin it lower, or move it away from the opening: a stitch has to be left beside it",
        },
    ),
    "motif-too-high": Wording(
        "`{motif}` on the {piece} is higher than its fabric goes on there",
        labels={"begun-here": "begun here", "as-large": "{rows:row|rows} high"},
        helps={"lower": "begin it at a lower level"},
    ),
    "no-proven-best": Wording(
        "no best counts were found for {pieces:and} within the solver's limit",
        helps={"differ-less": "give figures that differ less from each other between the sizes, or fewer sizes"},
    ),
    "panel-crossed": Wording(
        "the panel of {fabric} in the {piece} is crossed",
        labels={"panel": "this panel"},
        helps={"narrower": "make the panel narrower, end it below, or move it or what crosses it to the side"},
    ),
    "rib-without-column": Wording(
        "{rib} has no stitch that its rib could be latched up on",
        labels={"too-narrow": "too narrow for a rib", "rib": "latched rib"},
        notes={"end-needles": "the two end needles are never latched up: the edge would run"},
        helps={
            "inwards": "move the panel inwards",
            "wider": "make it {stitches:stitch|stitches} wide or more ({cm})",
            "no-rib": "or knit it in a fabric that is no rib",
        },
    ),
    "sizes-not-graded": Wording(
        "the sizes cannot be graded as evenly as they are wanted: each can be made by itself, but not all together",
        labels={"let-go": "let go here", "first-piece": "the first piece"},
        notes={
            "goes-down": "{figure} goes down from one size to the next where it should not",
            "rows-of-its-own": "where shaping differs from size to size, each has rows of its own",
        },
        helps={
            "differ-more": "give figures that differ by more from size to size, or knit the sizes from separate patterns",
        },
    ),
    "slope-too-flat": Wording(
        "the edge to `{level}` moves by more stitches than its rows allow",
        labels={"over": "by {change} over {rows}"},
        notes={"too-much": "it moves by {wide} too much, or its end is {tall} too low"},
        helps={
            "fashioned": "write `fashioned 1 in` behind it: with a transfer tool a stitch is gained in every row",
            "two-at-once": "write `two at once` behind it: every decrease then takes two stitches",
            "hold": "let the stitches stay and hold them in short rows: a `wedge`, and at the top `shoulders`",
        },
    ),
    "start-longer-than-edges": Wording(
        "the {piece} starts on more stitches than can be picked up along {along}",
        labels={"begun-here": "begun here"},
        notes={"places": "{size}: {stitches:stitch|stitches}, and {places:place|places}"},
        helps={
            "narrower": "start it {widest} wide at the most",
            "more-edges": "or begin it along more edges",
        },
    ),
    "wedge-too-steep": Wording(
        "{wedge} has fewer stitches than steps: a step takes {rows_a_step} rows and a stitch at least",
        labels={"in": "{stitches} in {rows}"},
        helps={"wider-or-lower": "make the wedge wider, or end it lower"},
    ),
    "wider-than-bed/band": Wording(
        "band `{band}` takes up to {stitches} needles, and the bed has {needles}",
        labels={"picked-up-here": "picked up here"},
        helps={
            "several-bands": "knit it as {bands:word} bands: {each:/; }",
            "lengthways": ("knit it lengthways, as a piece that is joined to `{edge}`, which takes {takes} needles by itself"),
        },
    ),
    "wider-than-bed/piece": Wording(
        "the {piece} takes up to {takes} needles, and the bed has {needles}",
        labels={"widest": "widest {where}{by_side:?, reckoned by its {by_side:term} side}"},
        notes={
            "takes": "{size}: {cm} {where}{by_side:?, reckoned by its {by_side:term} side,} take {takes} needles",
            "needles-make": "at {tension:.1f} stitches to 10 cm, {needles} needles make {room}",
        },
        helps={
            "panels": ("knit it as {panels:word} pieces (panels) of {each} needles each, joined by {seams:=a seam|seams}"),
        },
    ),
}
