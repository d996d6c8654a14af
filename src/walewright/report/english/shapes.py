"""Words for the shape of a piece: levels, edges, wedges, openings."""

from __future__ import annotations

from walewright.report.wording import Wording

_HERE = Wording(
    "{what}: {number} {unit}",
    labels={
        "here": "{number} {unit}",
    },
    notes={
        "possible": "1 to {most} are possible",
    },
)
_PIECE_KNITTED_TIMES = Wording(
    "piece `{name}` is knitted {copies} times",
    labels={
        "knit": "knit {copies}",
    },
    notes={
        "possible": "1 to {MOST_COPIES} are possible",
    },
)
_REPEATS_WIDE = Wording(
    "{what} is {repeats} repeats wide",
    labels={
        "repeats": "{repeats} repeats",
    },
    notes={
        "possible": "1 to {MOST_REPEATS} are possible",
    },
)
_WORKED_TIMES = Wording(
    "{what} is worked {times} times",
    labels={
        "repeat-times": "repeat {times} times",
    },
    notes={
        "possible": "2 to {MOST_TIMES} are possible",
    },
)
_BEYOND_THE_EDGE = Wording(
    "{what} leaves nothing of the piece beside it",
    labels={
        "wide": "{taken} wide",
    },
    helps={
        "make-narrower-least": "make it {by} narrower at least, or the piece as much wider there",
        "make-narrower-least-2": "make it {by} narrower at least on that side, or move it as far towards the centre",
    },
)
WORDINGS: dict[str, Wording] = {
    "absurd-count/edge-steps-most": Wording(
        "an edge in steps has at most {MOST_STEPS} of them",
        labels={
            "steps": "{times} steps",
        },
    ),
    "absurd-count/here": _HERE,
    "absurd-count/piece-knitted-times": _PIECE_KNITTED_TIMES,
    "absurd-count/repeats-wide": _REPEATS_WIDE,
    "absurd-count/stitch-two-moved": Wording(
        "one stitch or two are moved at once",
        labels={
            "once": "{at_once} at once",
        },
    ),
    "absurd-count/worked-times": _WORKED_TIMES,
    "absurd-length": Wording(
        "{what} is more than {LONGEST_CM}",
        labels={
            "amounts": "{amounts}",
        },
        helps={
            "look-unit": "look at the unit",
        },
    ),
    "across-elsewhere": Wording(
        "the edges have come to `{names}`, and the width is changed across at `{level}`",
        labels={
            "at": "at `{level}`",
        },
        helps={
            "proposal": "{proposal}",
        },
    ),
    "across-too-far": Wording(
        "the width of piece `{piece}` is {more:?more than doubled|less than halved} across at `{level}`",
        labels={
            "to": "to {width}",
        },
        notes={
            "piece-wide-below": "the piece is {least} wide below",
            "two-loops-go": "two loops go on a needle at most, and every second needle is left empty at most",
        },
        helps={
            "write": "write {more:?at most|at least} {bound}",
        },
    ),
    "along-later-piece": Wording(
        "piece `{name}` is begun on `{piece}`, which is not knitted before it",
        labels={
            "along": "along `{piece} {edge}`",
            "piece": "piece `{piece}`",
        },
        helps={
            "write-piece-before": "write piece `{piece}` before piece `{name}`",
        },
    ),
    "beyond-the-edge": _BEYOND_THE_EDGE,
    "buttonholes-too-close": Wording(
        "{count} buttonholes need {need} rows from the first to the last",
        labels={
            "here": "{rows} here",
        },
        helps={
            "bring-their-ends": "bring their ends {lacking} further apart, or make fewer of them",
        },
    ),
    "cast-off-at-start": Wording(
        "stitches of {what} are cast off at `{first}`, where no row is knitted yet",
        labels={
            "cast-off-start": "cast off at the start",
        },
        helps={
            "start-piece-much": "start the piece that much narrower",
            "lead-edge-straight": "or lead the edge straight to a level above the start first",
        },
    ),
    "cast-off-too-wide/more-cast-off": Wording(
        "more is cast off than the edge moves in to `{to_level}`",
        labels={
            "cast-off": "cast off {cast_off}",
        },
        notes={
            "edge-moves": "the edge moves in by {inwards}",
        },
        helps={
            "cast-off-less": "cast off {excess} less",
        },
    ),
    "cast-off-too-wide/stitches-cast-off": Wording(
        "stitches are cast off, and the edge moves out to `{to_level}`",
        labels={
            "cast-off-then": "cast off, and then out",
        },
        helps={
            "leave-out-what": "leave out what is cast off",
        },
    ),
    "cast-off-too-wide/stitches-cast-off-2": Wording(
        "stitches are cast off, and then the edge {moves} to `{to_level}`",
        labels={
            "cast-off-then": "cast off, and then the other way",
        },
        notes={
            "edge": "the edge {moves} by {change}",
        },
    ),
    "edge-moves-in-wedge": Wording(
        "the {side} edge of piece `{piece}` is held from `{from_level}` on and moves there",
        labels={
            "moves-here": "moves here",
            "held": "held from `{from_level}`",
        },
        helps={
            "lead-edge-straight": "lead this edge straight from `{from_level}` to `{to_level}`",
        },
    ),
    "edge-past-shoulder": Wording(
        "an edge of piece `{piece}` goes on to `{to_level}` while the shoulders are held from `{from_level}`",
        labels={
            "up": "up to `{to_level}`",
            "held": "held from `{from_level}`",
        },
        helps={
            "end-edge-hold": "end this edge at `{from_level}`, or hold the shoulders from a higher level",
        },
    ),
    "edges-apart": Wording(
        "this moves both edges, and they have come to different levels",
        labels={
            "both-edges-here": "both edges from here",
        },
        notes={
            "edge-come": "the {side} edge has come to `{names}`",
        },
        helps={
            "write-apart": "write `left edge` and `right edge` apart",
        },
    ),
    "edging-needs-closed-start": Wording(
        "edging `{name}` is knitted first, and its edge has to be closed",
        labels={
            "how": "{how}",
            "knitted-first": "knitted first",
        },
        helps={
            "start-e-wrap": "start with e-wrap or with chain, or let the edging be added after",
        },
    ),
    "edging-needs-loops": Wording(
        "edging `{name}` is hung on the first row, and this start leaves no loops there",
        labels={
            "how": "{how}",
            "added-after": "added after",
        },
        helps={
            "start-waste-yarn": "start on waste yarn",
        },
    ),
    "edging-needs-waste-start": Wording(
        "the first row of edging `{name}` is hung up to close its fold, and this start leaves no loops there",
        labels={
            "how": "{how}",
            "knitted-first": "{sort}, knitted first",
        },
        helps={
            "start-waste-yarn": "start on waste yarn",
        },
    ),
    "first-level": Wording(
        "the first level of piece `{piece}` is its start, at 0 cm",
        labels={
            "at": "at {heights}",
        },
    ),
    "gathered-in-parts": Wording(
        "the last loops of piece `{name}` are to be gathered, and `{name_2}` parts it to its top",
        labels={
            "gathered": "gathered",
            "open": "open to `{top}`",
        },
        helps={
            "let-end-level": "let `{name_2}` end at a level below, or end on waste yarn or cast off",
        },
    ),
    "levels-fall": Wording(
        "`{name}` is not above `{name_2}`{at_most} in piece `{piece}`",
        labels={
            "here": "`{name}`",
            "here-2": "`{name_2}`",
        },
        notes={
            "then": "{among}: {lower}, then {upper}",
        },
    ),
    "missing-part/does-say-how-2": Wording(
        "the {path} to `{to_level}` does not say how far",
        labels={
            "width": "no width and no `by`",
        },
    ),
    "missing-part/piece": Wording(
        "piece `{name}` has no {join}",
        labels={
            "piece": "this piece",
        },
    ),
    "missing-part/piece-needs-two": Wording(
        "piece `{piece}` needs two levels or more",
        labels={
            "start-top-least": "start and top at least",
        },
    ),
    "missing-part/start-piece-along": Wording(
        "the start of piece `{name}` is along no edge",
        labels={
            "edge": "no edge",
        },
    ),
    "named-in-opening": Wording(
        "the edges of {what} go by its own name",
        labels={
            "called": "called `{called}`",
        },
    ),
    "neck-flat": Wording(
        "the flat part of {what} is {wider:?wider than the neck|less than the whole of a square neck}",
        labels={
            "flat": "flat {flat}",
            "neck": "neck {width}",
        },
    ),
    "neck-too-deep": Wording(
        "{what} is as deep as the piece is high, or deeper",
        labels={
            "deep": "{depth} deep",
            "at": "`{name}` at {height}",
        },
        helps={
            "make-more-less": "make it more than {over} less deep",
        },
    ),
    "neck-too-wide": _BEYOND_THE_EDGE,
    "no-unit/needs-unit": Wording(
        "{what} needs a unit",
        labels={
            "bare-number": "a bare number",
        },
        helps={
            "help": "{help}",
            "write": "write it in {unit}",
        },
    ),
    "no-width-left": Wording(
        "{what} has no width left at `{name}`",
        labels={
            "wide": "{zip} wide",
        },
        helps={
            "bring-edges-less": "bring its edges {short} less together",
        },
    ),
    "not-positive/edge-moves-rate": Wording(
        "an edge that moves at a rate moves by a stitch at least",
        labels={
            "stitch": "by no stitch",
        },
    ),
    "not-positive/edge-steps-needs": Wording(
        "an edge in steps needs at least one step",
        labels={
            "steps": "{times} steps",
        },
    ),
    "not-positive/here": _HERE,
    "not-positive/must": Wording(
        "{what} must be {if_least:?more than zero|zero or more}",
        labels={
            "amounts": "{amounts}",
        },
    ),
    "not-positive/piece-knitted-times": _PIECE_KNITTED_TIMES,
    "not-positive/repeats-wide": _REPEATS_WIDE,
    "not-positive/worked-times": _WORKED_TIMES,
    "opening-at-start": Wording(
        "{what} begins at the start, where no row is knitted yet",
        labels={
            "from": "from `{from_level}`",
        },
        helps={
            "give-level-own": "give it a level of its own, two rows up or more",
        },
    ),
    "openings-overlap": Wording(
        "`{name}` and `{name_2}` of piece `{piece}` are open in the same rows",
        labels={
            "from-to": "from {low} to {high}",
            "from-to-2": "from {low_2} to {high_2}",
        },
        helps={
            "let-end-before": "let one end before the other begins: they share {over}",
        },
    ),
    "openings-touch": Wording(
        "`{name}` of piece `{piece}` begins in the row where `{name_2}` ends",
        labels={
            "from": "from {low}",
            "to": "to {high}",
        },
        notes={
            "rows-over-whole": "rows over the whole width join the parts of one before the piece parts for the other",
        },
        helps={
            "let-begin-level": "let `{name}` begin at a level of its own, two rows up or more",
        },
    ),
    "panel-fabric": Wording(
        "{what} cannot be knitted as a panel in the rows of `{name}`",
        labels={
            "over-part-width": "over a part of the width",
            "tension": "{stitch} in {yarn} at tension {tension}",
            "tension-2": "{stitch_2} in {yarn_2} at tension {tension_2}",
        },
        helps={
            "panel-latched-rib": "a panel is a latched rib or a charted fabric in the same yarn at the same tension",
            "let-fabric-go": "or let the fabric go over the whole width",
        },
    ),
    "range-falls": Wording(
        "{what} may be from its second number down to its first",
        labels={
            "from-to": "from {low} to {high}",
        },
        helps={
            "write-lesser-number": "write the lesser number first, or one number alone",
        },
    ),
    "rate-not-kept/edge-cannot-move": Wording(
        ("the edge to `{to_level}` cannot move every {rows}: {what} where the carriage is, and that comes back every second row"),
        labels={
            "every": "every {rows}",
        },
    ),
    "rate-not-kept/edge-moves-time": Wording(
        "the edge to `{to_level}` moves by {count} at a time, and with two at once it moves by two",
        labels={
            "two-once": "two at once",
        },
        helps={
            "write": "write `in 2 stitches every {every} rows`",
        },
    ),
    "rate-not-kept/fewer-rows-edge": Wording(
        "from `{low}` to `{to_level}` there are fewer rows than the edge moves once in",
        labels={
            "every-rows": "every {rows} rows",
        },
        notes={
            "rows": "the rows there are {rows_2}",
        },
        helps={
            "lead-edge-straight": "lead the edge straight to `{to_level}`",
            "write-fewer-rows": "or write fewer rows",
        },
    ),
    "repeat-changes-width": Wording(
        "the {side} edge of piece `{piece}` ends elsewhere than it begins in the rows that are repeated",
        labels={
            "from-to": "from `{from_level}` to `{to_level}`",
        },
        notes={
            "centre": "{before} from the centre at `{from_level}`, {after} at `{to_level}`",
        },
        helps={
            "lead-edges-straight": "lead the edges straight through them, or back to where they began",
        },
    ),
    "repeated-statement/width-piece-changed": Wording(
        "the width of piece `{piece}` is changed across at `{level}` twice",
        labels={
            "here-again": "here again",
            "first-here": "first here",
        },
    ),
    "repeats-without-chart": Wording(
        "{what} is {repeats} repeats wide, and has no chart that repeats",
        labels={
            "many-repeats": "so many repeats",
            "stitch": "{stitch}",
        },
        helps={
            "give-width-cm": "give its width in cm or stitches",
        },
    ),
    "reserved-name/every-piece-edge": Wording(
        "every piece has an edge `{called}` already",
        labels={
            "called-here": "called so here",
        },
        notes={
            "kept-names": "kept names: {NAMED_ALWAYS}",
        },
    ),
    "reserved-name/every-piece-edge-2": Wording(
        "every piece has an edge `{name}` already",
        labels={
            "opening-called": "an opening called so",
            "slot-called": "a slot called so",
        },
        notes={
            "kept-names": "kept names: {NAMED_ALWAYS}",
        },
    ),
    "rows-across": Wording(
        "{what} runs across the work, and rows run up",
        labels={
            "rows": "rows",
        },
    ),
    "shoulders-at-top": Wording(
        "the shoulders are held from `{from_level}`, the top of piece `{piece}`: no rows are left for them",
        labels={
            "top": "from the top",
        },
        notes={
            "levels-start-up": "levels from the start up: {levels}",
        },
    ),
    "slope-too-flat": Wording(
        "the edge to `{to_level}` moves by more stitches than its rows allow",
        labels={
            "over": "by {change} over {rows}",
        },
        helps={
            "move-less": "move it {wide} less",
            "set-higher": "or set `{to_level}` {tall} higher",
        },
    ),
    "slot-at-edge": Wording(
        "{what} is at `{level}`, where there are no rows {if_at:?below|above} it",
        labels={
            "at": "at `{level}`",
        },
        helps={
            "give-level-own": "give it a level of its own {if_at:?above the start|below the top}",
        },
    ),
    "stitches-up": Wording(
        "{what} runs up the work, and stitches run across",
        labels={
            "stitches": "stitches",
        },
    ),
    "stretch-falls": Wording(
        "{what} goes from `{from_level}` to `{to_level}`, which is not above it",
        labels={
            "from-to": "from `{from_level}` to `{to_level}`",
        },
        notes={
            "levels-piece-start": "levels of piece `{piece}` from the start up: {levels}",
        },
    ),
    "stretches-overlap/two-wedges-piece": Wording(
        "two wedges of piece `{piece}` share rows",
        labels={
            "this-one": "this one",
            "and-this-one": "and this one",
        },
        helps={
            "wedges-worked-same": "wedges worked at the same time are one at each edge, between the same two levels",
        },
    ),
    "two-at-once-outwards": Wording(
        "the edge to `{to_level}` moves outwards, and two stitches at once can only be taken in",
        labels={
            "two-once": "two at once",
        },
    ),
    "wedge-too-steep": Wording(
        "the {name} has fewer stitches than steps: a step takes {ROWS_A_STEP} rows and a stitch at least",
        labels={
            "in": "{stitches} in {rows}",
        },
        helps={
            "make-wider": "make it {wider} wider",
            "end-lower": "or end it {lower} lower",
        },
    ),
    "wedge-too-wide/wedges-both-edges": Wording(
        "the wedges at both edges are together wider than piece `{piece}`",
        labels={
            "held": "{held} held",
            "held-2": "{held_2} held",
        },
        notes={
            "piece-wide": "the piece is {room} wide there",
        },
        helps={
            "make-them-narrower": "make them {over} narrower in all",
        },
    ),
    "wedge-too-wide/wider-piece-room": Wording(
        "the {name} is wider than piece `{piece}` has room for{each}",
        labels={
            "held": "{held} held",
        },
        notes={
            "there-are": "there are {room}{each}",
        },
        helps={
            "make-narrower-piece": "make it {over} narrower, or the piece as much wider there{each}",
        },
    ),
    "width-of-one-edge": Wording(
        "a width belongs to both edges; one edge alone moves by a length",
        labels={
            "only-edge": "only the {which} edge",
        },
        helps={
            "write-how-far": "write `by` and how far the {which} edge moves",
        },
    ),
    "wrong-unit/length": Wording(
        "{what} is a length",
        labels={
            "sort": "{sort}",
        },
    ),
}
