"""Words for what the counts have to keep to: what each rule of the solver asks for, stated and denied, and what its figures are
called."""

from __future__ import annotations

CLAUSES: dict[str, tuple[str, str]] = {
    # ------------------------------------------------------------- what is wanted
    "begins-cast-off": (
        "the edge of the {opening:?{opening} of the }{piece} before `{level}` begins with {cm} cast off",
        "the edge of the {opening:?{opening} of the }{piece} before `{level}` cannot begin with {cm} cast off",
    ),
    "edge-moves": (
        "the edge of the {piece} moves by {cm} to `{level}`{side:? on the {side:term}}",
        "the edge of the {piece} cannot move by {cm} to `{level}`{side:? on the {side:term}}",
    ),
    "graded": (
        "{figure} is graded as it is wanted, never down where it should go up",
        "{figure} cannot be graded without going down where it should go up",
    ),
    "is-between": (
        "it is {cm} from `{low}` to `{high}` of the {piece}",
        "it cannot be {cm} from `{low}` to `{high}` of the {piece}",
    ),
    "is-deep": ("the {part} of the {piece} is {cm} deep", "the {part} of the {piece} cannot be {cm} deep"),
    "is-flat-middle": (
        "the {part} of the {piece} is {cm} flat at its middle",
        "the {part} of the {piece} cannot be {cm} flat at its middle",
    ),
    "is-flat-parting": (
        "the {part} of the {piece} is {cm} flat at its parting",
        "the {part} of the {piece} cannot be {cm} flat at its parting",
    ),
    "is-from-the-centre": (
        "the {piece} is {cm} from the centre at `{level}` on the {side:term}",
        "the {piece} cannot be {cm} from the centre at `{level}` on the {side:term}",
    ),
    "is-held-wide": (
        "{wedge} of the {piece} is {cm} wide",
        "{wedge} of the {piece} cannot be held so: it is {cm} wide",
    ),
    "is-high": ("{part} of the {piece} is {cm} high", "{part} of the {piece} cannot be {cm} high"),
    "is-off-centre": (
        "the {part} of the {piece} is {cm} {side:term} of the centre",
        "the {part} of the {piece} cannot be {cm} {side:term} of the centre",
    ),
    "is-up": ("`{level}` of the {piece} is {cm} up", "`{level}` of the {piece} cannot be {cm} up"),
    "is-wide": (
        "the {part} of the {piece} is {cm} wide{place:? at `{place}`}",
        "the {part} of the {piece} cannot be {cm} wide{place:? at `{place}`}",
    ),
    "is-wide-at": ("the {piece} is {cm} wide at `{level}`", "the {piece} cannot be {cm} wide at `{level}`"),
    "part-moves": (
        "the {side:term} edge of the {part} of the {piece} moves by {cm} to `{level}`",
        "the {side:term} edge of the {part} of the {piece} cannot move by {cm} to `{level}`",
    ),
    "rests": ("{wedge} of the {piece} rests {cm}", "{wedge} of the {piece} cannot be held so: it rests {cm}"),
    "step-moves": (
        (
            "the edge of the {opening:?{opening} of the }{piece} moves by {cm} in its step {number} to "
            "`{level}`{side:? on the {side:term}}"
        ),
        (
            "the edge of the {opening:?{opening} of the }{piece} cannot move by {cm} in its step {number} to "
            "`{level}`{side:? on the {side:term}}"
        ),
    ),
    "starts-wide": ("the {piece} starts {cm} wide", "the {piece} cannot start {cm} wide"),
    # ------------------------------------------------------------- what joins ask for
    "joined-eased": (
        "{one} and {other} are joined with {easing} eased in",
        "{one} and {other} cannot be joined with {easing} eased in",
    ),
    "joined-longer": (
        "{one} and {other} are joined, the one {longer} longer than the other",
        "{one} and {other} cannot be joined, the one {longer} longer than the other",
    ),
    "joined-loops": ("{one} and {other} are {way:term} loop to loop", "{one} and {other} cannot be {way:term} loop to loop"),
    "joined-ratio": (
        "{one} and {other} are joined {rows} {rows:=row|rows} to {stitches} {stitches:=stitch|stitches}",
        "{one} and {other} cannot be joined {rows} {rows:=row|rows} to {stitches} {stitches:=stitch|stitches}",
    ),
    "joined-rows": ("{one} and {other} are joined row for row", "{one} and {other} cannot be joined row for row"),
    "patterns-begin": (
        "the patterns of {one} and {other} begin in the same rows",
        "the patterns of {one} and {other} cannot begin in the same rows",
    ),
    # ------------------------------------------------------------- what the bed and the hands ask for
    "bed-has": ("the bed has {needles} needles", "the {piece} cannot hang on {needles} needles"),
    "buttonholes-apart": (
        "the {buttonholes} buttonholes of the {piece} are two rows apart at least",
        "the {buttonholes} buttonholes of the {piece} cannot be two rows apart",
    ),
    "edging-alike": (
        "the `{edging}` of the {piece} begins and ends alike: it is worked over {rest:stitch|stitches} and any number of {step}",
        (
            "it cannot be that the `{edging}` of the {piece} begins and ends alike: it is worked over {rest:stitch|stitches} "
            "and any number of {step}"
        ),
    ),
    "from-the-middle": (
        "the edges of the {piece} are counted from the middle of its start",
        "the edges of the {piece} cannot be counted from the middle of its start",
    ),
    "groups-held": (
        "each {rows:word} rows of {wedge} of the {piece} hold {stitches:a stitch|# stitches} at least",
        "there cannot be {stitches:a stitch|# stitches} for each {rows:word} rows of {wedge} of the {piece}",
    ),
    "held-in-and-out": (
        "{wedge} of the {piece} is held in and let out in as many rows",
        "{wedge} of the {piece} cannot be held in and let out in as many rows",
    ),
    "hung-across": (
        "the loops of the {piece} at `{level}` are hung two on a needle, or every second needle is left empty, at most",
        (
            "the loops of the {piece} at `{level}` cannot be hung back so: two go on a needle, or every second needle is left "
            "empty, at most"
        ),
    ),
    "keeps-stitches": (
        "the {piece} keeps {stitches:a stitch|# stitches} at the least",
        "the {piece} cannot keep {stitches:a stitch|# stitches} at all levels",
    ),
    "levels-rise": (
        "there are two rows or more between two levels of the {piece}",
        "there cannot be two rows or more between all levels of the {piece}",
    ),
    "lies-inside": ("the {slot} of the {piece} lies inside the piece", "the {slot} of the {piece} cannot lie inside the piece"),
    "moves-at-most": (
        "{edge} moves{stitches:? by {stitches:=one stitch|two stitches}} {rows:once a row|once in # rows} at most",
        (
            "{edge} cannot move so far in so few rows: it moves{stitches:? by {stitches:=one stitch|two stitches}} "
            "{rows:once a row|once in # rows} at most"
        ),
    ),
    "moves-at-rate": (
        "{edge} moves by {stitches:a stitch|# stitches} {rows:every row|every # rows}, once at least",
        (
            "{edge} cannot move by {stitches:a stitch|# stitches} {rows:every row|every # rows}: the rows below "
            "`{level}` and the width there do not allow it"
        ),
    ),
    "moves-one-way": (
        "{edge} moves one way{steps:? in equal steps}",
        "{edge} cannot move one way{steps:? in equal steps}",
    ),
    "odd-number": (
        "the {piece} has an odd number of stitches",
        "the {piece} cannot have an odd number of stitches",
    ),
    "opening-formed": (
        "the {opening} of the {piece} begins above the start and ends above its parting",
        "the {opening} of the {piece} cannot be formed",
    ),
    "shaping-takes": (
        "shaping {inset} in takes {stitches} stitches on each side",
        "the {piece} cannot be shaped {inset} in",
    ),
    "steps-have-stitches": (
        "{edge} moves by a stitch at least in each step",
        "{edge} has not a stitch for each step",
    ),
    "stays-in-work": (
        "some stitches stay in work beside {wedges:and} of the {piece}",
        "no stitches can stay in work beside {wedges:and} of the {piece}",
    ),
    "stitches-beside": (
        "{stitches:stitch or more is|stitches or more are} left on each side of the {opening} of the {piece}",
        "no stitches can be left on each side of the {opening} of the {piece}",
    ),
    "stitches-between": (
        "{stitches:stitch or more is|stitches or more are} left between the {one} and the {other} of the {piece}",
        "no stitches can be left between the {one} and the {other} of the {piece}",
    ),
    "openings-in-turn": (
        "the {one} and the {other} of the {piece} begin and end in the order of their heights",
        "the {one} and the {other} of the {piece} cannot begin and end in the order of their heights",
    ),
    "as-wide-as-edges": (
        "the start of the {piece} has as many stitches as are picked up along {edges}",
        "the start of the {piece} cannot have as many stitches as are picked up along {edges}",
    ),
    "place-for-each-stitch": (
        "each stitch of the start of the {piece} has a place along {edges}",
        "the stitches of the start of the {piece} cannot have a place each along {edges}",
    ),
    "whole-repeats": (
        (
            "the {piece} is {rest:stitch|stitches} and whole repeats of {repeat} wide at `{level}`: `{fabric}` is knitted in "
            "whole repeats"
        ),
        (
            "it cannot be that the {piece} is {rest:stitch|stitches} and whole repeats of {repeat} wide at `{level}`: "
            "`{fabric}` is knitted in whole repeats"
        ),
    ),
    "whole-rows-between": (
        "there are two rows or more between the end of the {lower} and the parting of the {upper} of the {piece}",
        "there cannot be two rows or more between the end of the {lower} and the parting of the {upper} of the {piece}",
    ),
}

FIGURES: dict[str, str] = {
    "begun-cast-off": "the cast-off of the {opening:?{opening} of the }{piece} before `{level}`",
    "edge-at": "the edge of the {piece} at `{level}` on the {side:term}",
    "edge-move": "the move of the edge of the {piece} to `{level}`{side:? on the {side:term}}",
    "flat-part": "the flat part of the {part} of the {piece}{place:? at `{place}`}",
    "height": "the height of `{level}` of the {piece}",
    "held-rest": "the rest of {wedge} of the {piece} at {both:?both edges|the {edge} edge} from `{level}`",
    "held-width": "the width of {wedge} of the {piece} at {both:?both edges|the {edge} edge} from `{level}`",
    "part-depth": "the depth of the {part} of the {piece}",
    "part-move": "the move of the {side:term} edge of the {part} of the {piece} to `{level}`",
    "part-place": "the place of the {part} of the {piece}",
    "part-width": "the width of the {part} of the {piece}{place:? at `{place}`}",
    "rows-between": "the rows from `{low}` to `{high}` of the {piece}",
    "rows-held": "the rows of {wedge} of the {piece}",
    "start": "the start of the {piece}",
    "step-move": ("step {number} of the edge of the {opening:?{opening} of the }{piece} to `{level}`{side:? on the {side:term}}"),
    "width-of-the": "the width of {part} of the {piece}",
    "width-wanted": "the width of the {piece} at `{level}`",
}
"""What a message calls a wanted number."""

EDGES: dict[str, str] = {
    "outer-edge": "the edge of the {piece}",
    "edge-of-opening": "the edge of the {opening} of the {piece}",
    "edge-to": "{edge} to `{level}`",
}
