"""Words for the shape of a piece: levels, edges, wedges, openings."""

from __future__ import annotations

from walewright.report.wording import Wording

_COPIES = Wording(
    "piece `{piece}` is knitted {copies} times", labels={"knit": "knit {copies}"}, notes={"possible": "1 to {most} are possible"}
)
_EVERY = Wording("an edge moves every row to every {most} rows", labels={"every": "every {every} rows"})
_NUMBER = Wording(
    "{what}: {number} {unit:terms}", labels={"here": "{number} {unit:terms}"}, notes={"possible": "1 to {most} are possible"}
)
_REPEATS = Wording(
    "{what} is {repeats} repeats wide", labels={"repeats": "{repeats} repeats"}, notes={"possible": "1 to {most} are possible"}
)
_TIMES = Wording(
    "{what} is worked {times} times", labels={"times": "repeat {times} times"}, notes={"possible": "2 to {most} are possible"}
)
WORDINGS: dict[str, Wording] = {
    "absurd-count/at-once": Wording("one stitch or two are moved at once", labels={"once": "{at_once} at once"}),
    "absurd-count/copies": _COPIES,
    "absurd-count/edge-steps": Wording("an edge in steps has at most {most} of them", labels={"steps": "{times} steps"}),
    "absurd-count/every": _EVERY,
    "absurd-count/needed": Wording(
        "{what} is more than {longest}", labels={"amounts": "{amounts}"}, helps={"look": "look at the number"}
    ),
    "absurd-count/number": _NUMBER,
    "absurd-count/repeats": _REPEATS,
    "absurd-count/times": _TIMES,
    "absurd-length/piece": Wording("piece `{piece}` is more than {longest} wide at `{level}`", labels={"width": "{width}"}),
    "absurd-length/value": Wording(
        "{what} is more than {longest}", labels={"amounts": "{amounts}"}, helps={"look": "look at the unit"}
    ),
    "across-elsewhere": Wording(
        "the edges have come to `{reached}`, and the width is changed across at `{level}`",
        labels={"at": "at `{level}`"},
        helps={
            "lead-there": "lead both edges to `{level}` before it",
            "write-before": "write it before the run that passes `{level}`",
        },
    ),
    "across-too-far": Wording(
        "the width of piece `{piece}` is {more:?more than doubled|less than halved} across at `{level}`",
        labels={"to": "to {width}"},
        notes={
            "below": "the piece is {least} wide below",
            "loops": "two loops go on a needle at most, and every second needle is left empty at most",
        },
        helps={"write": "write {more:?at most|at least} {bound}"},
    ),
    "along-later-piece/piece": Wording(
        "piece `{piece}` is begun on `{model}`, which is not knitted before it",
        labels={"along": "along `{model} {edge}`", "piece": "piece `{model}`"},
        helps={"write-before": "write piece `{model}` before piece `{piece}`"},
    ),
    "cast-off-at-start": Wording(
        "stitches of {what} are cast off at `{first}`, where no row is knitted yet",
        labels={"at-start": "cast off at the start"},
        helps={
            "narrower": "start the piece that much narrower",
            "straight-first": "or lead the edge straight to a level above the start first",
        },
    ),
    "cast-off-too-wide/more-than-edge": Wording(
        "more is cast off than the edge moves in to `{to_level}`",
        labels={"cast-off": "cast off {cast_off}"},
        notes={"moves": "the edge moves in by {inwards}"},
        helps={
            "less": "cast off {excess} less",
            "leave-out": "leave out what is cast off",
            "go-in": "or let the edge go in by as much and more: `cast off 4 cm then curve to 30 cm wide`",
        },
    ),
    "cast-off-too-wide/rate-outwards": Wording(
        "stitches are cast off, and the edge moves out to `{to_level}`",
        labels={"then-out": "cast off, and then out"},
        helps={"leave-out": "leave out what is cast off"},
    ),
    "cast-off-too-wide/wrong-way": Wording(
        "stitches are cast off, and then the edge {gap:?narrows the gap|moves out} to `{to_level}`",
        labels={"other-way": "cast off, and then the other way"},
        notes={"moves": "the edge {gap:?narrows the gap|moves out} by {change}"},
        helps={
            "leave-out": "leave out what is cast off",
            "without-minus": "write the move without its minus: a gap widens outwards",
            "minus": "write a minus before the move: it goes in",
            "wider": "write a width above the one below",
            "narrower": "write a width below the one that the edges come from",
        },
    ),
    "edge-goes-down": Wording(
        "the edge has already come to `{reached}`, which is not below `{to_level}`",
        labels={"to": "to `{to_level}`"},
        notes={"levels": "levels of piece `{piece}` from the start up: {levels}"},
        helps={"another-level": "name a level above `{reached}`"},
    ),
    "edge-moves-in-wedge": Wording(
        "the {side:term} edge of piece `{piece}` is held from `{from_level}` on and moves there",
        labels={"moves": "moves here", "held": "held from `{from_level}`"},
        helps={"straight": "lead this edge straight from `{from_level}` to `{to_level}`"},
    ),
    "edge-past-shoulder": Wording(
        "an edge of piece `{piece}` goes on to `{to_level}` while the shoulders are held from `{from_level}`",
        labels={"up": "up to `{to_level}`", "held": "held from `{from_level}`"},
        helps={"end-or-hold": "end this edge at `{from_level}`, or hold the shoulders from a higher level"},
    ),
    "edges-apart": Wording(
        "this moves both edges, and they have come to different levels",
        labels={"both": "both edges from here"},
        notes={"reached": "the {side:term} edge has come to `{level}`"},
        helps={"write-apart": "write `left edge` and `right edge` apart"},
    ),
    "edging-needs-closed-start": Wording(
        "edging `{edging}` is knitted first, and its edge has to be closed",
        labels={
            "on-waste": "started on waste yarn",
            "along": "started along other pieces",
            "with": "started with {way}",
            "knitted-first": "knitted first",
        },
        helps={"closed": "start with e-wrap or with chain, or let the edging be added after"},
    ),
    "edging-needs-loops": Wording(
        "edging `{edging}` is hung on the first row, and this start leaves no loops there",
        labels={"along": "started along other pieces", "with": "started with {way}", "added-after": "added after"},
        helps={"on-waste": "start on waste yarn"},
    ),
    "edging-needs-waste-start": Wording(
        "the first row of edging `{edging}` is hung up to close its fold, and this start leaves no loops there",
        labels={"along": "started along other pieces", "with": "started with {way}", "kind-first": "{made_as:term}, knitted first"},
        helps={"on-waste": "start on waste yarn"},
    ),
    "first-level": Wording(
        "the first level of piece `{piece}` is its start, at 0 cm",
        labels={"at": "at {heights}", "in-range": "anywhere in a range"},
        helps={"begin-at-0": "write it at 0 cm, and what is higher as a level above it"},
    ),
    "gathered-in-parts": Wording(
        "the last loops of piece `{piece}` are to be gathered, and `{opening}` parts it to its top",
        labels={"gathered": "gathered", "open": "open to `{top}`"},
        helps={"end-below": "let `{opening}` end at a level below, or end on waste yarn or cast off"},
    ),
    "in-repeat": Wording(
        "{what} of piece `{piece}` is in rows that are repeated",
        labels={"this": "{what}", "repeated": "repeated here"},
        helps={"before-or-after": "let it be done before or after these rows"},
    ),
    "levels-fall": Wording(
        "`{upper}` is not above `{lower}`{highest:? at its highest} in piece `{piece}`",
        labels={"upper": "`{upper}`", "lower": "`{lower}`"},
        notes={"then": "{size}: {low}, then {high}"},
        helps={"apart": "put `{upper}` higher, or `{lower}` lower"},
    ),
    "missing-part/along": Wording("the start of piece `{piece}` is along no edge", labels={"none": "no edge"}),
    "missing-part/how-far": Wording("the {path} to `{to_level}` does not say how far", labels={"neither": "no width and no `by`"}),
    "missing-part/piece": Wording(
        "piece `{piece}` has no {lacking:term/ and no }",
        labels={"here": "this piece"},
        helps={"add-lines": "add a line that begins with {lacking:and`}"},
    ),
    "missing-part/two-levels": Wording(
        "piece `{piece}` needs two levels or more",
        labels={"least": "start and top at least"},
        helps={"second-level": "add a level above the start, such as `top 60 cm`"},
    ),
    "no-unit/length": Wording(
        "{what} needs a unit",
        labels={"bare": "a bare number", "row": "this row has no unit"},
        helps={
            "row-unit": "end the row with a unit, such as cm",
            "or-count": "write it in cm, mm, in or {count}",
            "length": "write it in cm, mm or in",
        },
    ),
    "no-width-left/piece": Wording(
        "piece `{piece}` has no width left at `{level}`",
        labels={"width": "{width}"},
        helps={
            "less-in": "move the two edges in by less, together by more than {lacking}",
            "leave-some": "leave some width there: a point is a stitch or two, cast off or gathered",
        },
    ),
    "not-positive/copies": _COPIES,
    "not-positive/edge-steps": Wording("an edge in steps needs at least one step", labels={"steps": "{times} steps"}),
    "not-positive/every": _EVERY,
    "not-positive/length": Wording(
        "{what} must be {above:?more than zero|zero or more}",
        labels={"amounts": "{amounts}"},
        helps={"above-nothing": "write what is measured, {above:?above zero|zero or more}"},
    ),
    "count-not-whole": Wording(
        "{what}: `{name}` is not a whole number",
        labels={"here": "{values}"},
        helps={"round": "round it, as in `let whole = round({name} to 1)`"},
    ),
    "not-positive/number": _NUMBER,
    "not-positive/rate": Wording(
        "an edge that moves at a rate moves by a stitch at least",
        labels={"none": "by no stitch"},
        helps={"a-stitch-or-straight": "write `by 1 stitch`, or `straight` where it does not move"},
    ),
    "not-positive/repeats": _REPEATS,
    "not-positive/times": _TIMES,
    "panel-fabric": Wording(
        "{what} cannot be knitted as a panel in the rows of `{around}`",
        labels={
            "part": "over a part of the width",
            "fabric": "{stitch:term} in {yarn} at tension {tension}",
            "around": "{around_stitch:term} in {around_yarn} at tension {around_tension}",
        },
        helps={
            "same-yarn": "a panel is a latched rib or a charted fabric in the same yarn at the same tension",
            "whole-width": "or let the fabric go over the whole width",
        },
    ),
    "range-falls": Wording(
        "{what} may be from its second number down to its first",
        labels={"from-to": "from {low} to {high}"},
        helps={"lesser-first": "write the lesser number first, or one number alone"},
    ),
    "rate-not-kept/increase-at-carriage": Wording(
        (
            "the edge to `{to_level}` cannot move every {rows:row|# rows}: a simple increase is made where the "
            "carriage is, and that comes back every second row"
        ),
        labels={"every": "every {rows:row|# rows}"},
        helps={"even": "write `every {even} rows`", "fashioned": "or write `fashioned {prongs} in` behind it"},
    ),
    "rate-not-kept/several-at-carriage": Wording(
        (
            "the edge to `{to_level}` cannot move every {rows:row|# rows}: {stitches} stitches at once are cast off "
            "or on where the carriage is, and that comes back every second row"
        ),
        labels={"every": "every {rows:row|# rows}"},
        helps={"even": "write `every {even} rows`", "fashioned": "or write `fashioned {prongs} in` behind it"},
    ),
    "rate-not-kept/too-few-rows": Wording(
        "from `{low}` to `{to_level}` there are fewer rows than the edge moves once in",
        labels={"every": "every {every} rows"},
        notes={"there": "the rows there are {rows}"},
        helps={"straight": "lead the edge straight to `{to_level}`", "fewer": "or write fewer rows"},
    ),
    "rate-not-kept/two-at-once": Wording(
        ("the edge to `{to_level}` moves by {stitches:a stitch|# stitches} at a time, and with two at once it moves by two"),
        labels={"two": "two at once"},
        helps={"write": "write `in 2 stitches every {every} rows`"},
    ),
    "repeat-changes-width": Wording(
        "the {side:term} edge of piece `{piece}` ends elsewhere than it begins in the rows that are repeated",
        labels={"from-to": "from `{from_level}` to `{to_level}`"},
        notes={"centre": "{before} from the centre at `{from_level}`, {after} at `{to_level}`"},
        helps={"straight": "lead the edges straight through them, or back to where they began"},
    ),
    "repeated-statement/across": Wording(
        "the width of piece `{piece}` is changed across at `{level}` twice",
        labels={"again": "here again", "first": "first here"},
        helps={"leave-one-out": "leave one of the two out"},
    ),
    "repeats-without-chart": Wording(
        "{what} is {repeats} repeats wide, and has no chart that repeats",
        labels={"repeats": "{repeats} repeats", "stitch": "{stitch:term}"},
        helps={"give-width": "give its width in cm or stitches"},
    ),
    "reserved-name/called-edge": Wording(
        "every piece has an edge `{name}` already",
        labels={"here": "called so here"},
        notes={"kept": "kept names: {kept}"},
        helps={"rename": "call it by another name"},
    ),
    "rows-across": Wording(
        "{what} runs across the work, and rows run up", labels={"rows": "rows"}, helps={"width": "write a length or stitches"}
    ),
    "shape-ring": Wording(
        "{ring:`/ uses }: this has no end",
        labels={"again": "uses `{again}` again"},
        helps={"without": "write one of these shapes without the others"},
    ),
    "shoulders-at-top": Wording(
        "the shoulders are held from `{from_level}`, the top of piece `{piece}`: no rows are left for them",
        labels={"top": "from the top"},
        notes={"levels": "levels from the start up: {levels}"},
        helps={"lower": "name a level below the top"},
    ),
    "stitches-up": Wording(
        "{what} runs up the work, and stitches run across",
        labels={"stitches": "stitches"},
        helps={"height": "write a length or rows"},
    ),
    "stretch-falls": Wording(
        "{what} goes from `{from_level}` to `{to_level}`, which is not above it",
        labels={"from-to": "from `{from_level}` to `{to_level}`"},
        notes={"levels": "levels of piece `{piece}` from the start up: {levels}"},
        helps={"higher": "name a level above `{from_level}` behind `to`"},
    ),
    "stretches-overlap/two-things": Wording(
        "{one} and {other} of piece `{piece}` share rows",
        labels={"one": "{one}", "other": "{other}"},
        helps={
            "end-before": "let one end before the other begins",
            "within-or-outside": "let it begin and end within the rows that are repeated, or outside them",
        },
    ),
    "stretches-overlap/wedges": Wording(
        "two wedges of piece `{piece}` share rows",
        labels={"this": "this one", "that": "and this one"},
        helps={"same-time": "wedges worked at the same time are one at each edge, between the same two levels"},
    ),
    "two-at-once-outwards": Wording(
        "the edge to `{to_level}` moves outwards, and two stitches at once can only be taken in",
        labels={"two": "two at once"},
        helps={"one-at-a-time": "leave out `two at once`"},
    ),
    "wedge-too-wide/both": Wording(
        "the wedges at both edges are together wider than piece `{piece}`",
        labels={"other": "{other_held} held", "one": "{one_held} held"},
        notes={"room": "the piece is {room} wide there"},
        helps={"narrower": "make them {by} narrower in all"},
    ),
    "wedge-too-wide/one": Wording(
        "{wedge} is wider than piece `{piece}` has room for{each:? at each edge}",
        labels={"held": "{held} held"},
        notes={"room": "there are {room}{each:? at each edge}"},
        helps={"narrower": "make it {over} narrower, or the piece as much wider there{each:? at each edge}"},
    ),
    "while-held/parting": Wording(
        "piece `{piece}` {rejoins:?rejoins|parts} at `{opening}` in rows where stitches are held",
        labels={"at": "{rejoins:?rejoins|parts} at {at}", "held": "held here"},
        helps={"end-or-begin": "let the wedge end before that row or begin after it"},
    ),
    "while-held/whole-width": Wording(
        "{what} of piece `{piece}` is in rows where stitches are held",
        labels={"this": "{what}", "held": "held here"},
        helps={"before-or-after": "let it be done before they are held or after they are back in work"},
    ),
    "while-parted": Wording(
        "{what} of piece `{piece}` needs the whole width, and the piece is parted there",
        labels={"this": "{what}", "open": "open from {low} to {high}"},
        helps={"before-or-after": "let it be done before the parting or after the parts have rejoined"},
    ),
    "width-of-one-edge": Wording(
        "a width belongs to both edges; one edge alone is led to a place, or moves by a length",
        labels={"one-edge": "only the {side:term} edge"},
        helps={
            "write-place": "write how far it comes to lie from the centre line, such as `to 9 cm from centre`",
            "write-by": "or write `by` and how far the {side:term} edge moves",
        },
    ),
    "line-inside/opening": Wording(
        "the edge of an opening cannot be shaped along a line in the part beside it",
        labels={"shaped": "in an opening"},
        helps={"opening": "shape the outer edge, below the opening"},
    ),
    "line-inside/slope": Wording(
        "along a line inside a piece stitches are lost and gained evenly, one by one",
        labels={"shaped": "to `{to_level}`"},
        helps={"slope": "write a `slope`, without a cast-off"},
    ),
    "line-inside/fabric": Wording(
        "{fabric:?fabric `{fabric}`|a motif} is worked by needles, and where a piece is shaped inside stitches go over to others",
        labels={"shaped": "to `{to_level}`"},
        helps={"fabric": "shape in plain knitting, below or above it, or at the edge"},
    ),
    "line-inside/one-place": Wording(
        "both edges are shaped along one line",
        labels={"shaped": "both edges"},
        helps={"one-place": "write the `left edge` and the `right edge` one by one, or count from the edge"},
    ),
    "line-inside/no-room": Wording(
        "there are too few stitches beside a line along which the edge to `{to_level}` is shaped",
        labels={"shaped": "no room"},
        notes={
            "between-outermost": "what all its lines take is taken from between the two outermost",
            "other-edge": "the line of the other edge in the same rows crosses it, or is led less than 2 stitches from it",
        },
        helps={
            "no-room": "a few stitches have to lie between the line and the edge, and between it and the next: place it elsewhere"
        },
    ),
    "many-stitches-moved": Wording(
        "{stitches} stitches are moved by hand for each stitch that the edge to `{to_level}` loses or gains inside",
        labels={"shaped": "outside the line"},
        helps={
            "seam": "knit the piece in panels, so that a seam is the dart, or shape at the edge",
            "nearer": "or place the line nearer the edge: with a tool of {prongs:one prong|# prongs}, {most} stitches can be moved",
        },
    ),
    "edges-to-one-place": Wording(
        "two edges are led to one place",
        labels={"both": "both edges"},
        helps={"one-by-one": "lead the `left edge` and the `right edge` one by one, or say how wide the piece is there"},
    ),
    "wrong-unit/length": Wording(
        "{what} is a length", labels={"dimension": "{dimension}"}, helps={"a-length": "write a length, such as `40 cm`"}
    ),
}
