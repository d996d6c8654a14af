"""Words for sizes, values and what is given in their place."""

from __future__ import annotations

from walewright.report.wording import Wording

_NO_SUCH_EDGE = Wording(
    "no {what:term} is called `{name}`",
    labels={"here": "not known"},
    notes={"known": "known here: {known:names}", "nothing": "there is no {what:term} here"},
)
WORDINGS: dict[str, Wording] = {
    "absurd-measurement": Wording(
        "`{row}` is more than {longest}", labels={"values": "{values}"}, helps={"look": "look at the unit"}
    ),
    "bad-ball": Wording(
        "`{text}` is no yarn and ball", helps={"ball-example": "write a label, grams and metres, such as `my wool, 50 g = 120 m`"}
    ),
    "bad-bed": Wording(
        "`{text}` is no bed",
        helps={"bed-example": "write a shipped bed, or facts, such as `standard` or `needles=180, pitch=4.5 mm`"},
    ),
    "bad-dial": Wording(
        "`{text}` is no setting of a dial", helps={"dial-example": "write the number that the dial shows, such as `6` or `4.5`"}
    ),
    "bad-measure/count-out-of-range": Wording(
        "`{name}` cannot be {count}", helps={"count-range": "it must be {whole:?a whole number }above 0 and at most {most}"}
    ),
    "bad-measure/other-count": Wording(
        "`{text}` is no number of {unit:?{unit}, which|what} `{name}` counts{unit:? in}",
        helps={"count-example": "write {unit:?so many {unit}|a number without a unit}, such as `{example}`"},
    ),
    "bad-measure/out-of-range": Wording(
        "`{name}` cannot be {length}", helps={"range": "it must be more than 0 and at most {longest}"}
    ),
    "bad-measure/unreadable": Wording(
        "`{text}` is no length",
        helps={"measure-example": "write a number and its unit, such as `104 cm`; a number alone for a row that counts"},
    ),
    "bad-swatch": Wording(
        "`{text}` is no swatch",
        helps={"swatch-example": "write stitches, rows, width, height and weight, such as `40 st 60 rows 23.5 cm 21 cm 28 g`"},
    ),
    "bad-tension/out-of-range": Wording(
        "no bed knits {count} to {width}",
        notes={"possible": "a bed knits {least} to {most} to {width}"},
        helps={"look": "look at which number is which, and that both are to 10 cm"},
    ),
    "bad-tension/unreadable": Wording(
        "`{text}` is no tension", helps={"tension-example": "write stitches and rows to 10 cm, such as `17 st 24 rows`"}
    ),
    "cyclic-let": Wording(
        "{ring:`/ needs }: this has no end",
        labels={"named-here": "`{name}`"},
        helps={"own-value": "give one of them a value that needs none of the others"},
    ),
    "division-by-zero": Wording(
        "this divides by zero", labels={"zero": "zero"}, helps={"not-zero": "write it so that this is zero in no size"}
    ),
    "given-for-nothing": Wording(
        "no stitch of the garment follows from `{name}`",
        notes={"finished": "the page holds the finished garment against it, no more"},
        helps={"choices": "`walewright choices` lists what can be given"},
    ),
    "given-twice/tension-and-swatch": Wording(
        "`{name}` is given a tension and a swatch", helps={"leave-one": "leave one of them out: a swatch says the tension too"}
    ),
    "given-twice/texts": Wording("`{name}` is given twice, as {one} and as {other}", helps={"leave-one": "leave one of them out"}),
    "impossible-statement/at-margin": Wording("this statement belongs inside a block", labels={"alone": "on its own here"}),
    "impossible-statement/choice": Wording(
        "a choice cannot belong to an alternative of another",
        labels={"within": "offered here", "around": "within this alternative"},
    ),
    "impossible-statement/use-from": Wording(
        "what is used of another file cannot belong to an alternative",
        labels={"within": "used here", "around": "within this alternative"},
    ),
    "impossible-statement/in-shape": Wording("this statement cannot stand in a shape", labels={"shape": "in a shape"}),
    "impossible-statement/no-value": Wording("`{function}` takes at least one value", labels={"given": "{count} given"}),
    "impossible-statement/round": Wording("`{function}` takes a value and what to round it to", labels={"given": "{count} given"}),
    "impossible-statement/text": Wording("nothing prints a text `{key}` here", labels={"can-stand": "{keys:or`} can stand here"}),
    "missing-part/source": Wording("the source has no {lacking:term/ and no }"),
    "mixed-units": Wording(
        "{one} and {other} do not mix",
        labels={"one": "{one}", "other": "{other}"},
        helps={
            "write-unit": "write the bare number with its unit",
            "alike": "write both in the same kind of unit",
            "in-its-place": "write the sum where the width or the height is: there stitches and rows of the fabric are lengths",
        },
    ),
    "name-expected": Wording(
        "`{parameter}` of shape `{shape}` is a {what:term}, and a quantity is given",
        labels={"quantity": "a quantity", "named": "`{parameter}` names a {what:term} here"},
        helps={"name-one": "write the name of a {what:term} there"},
    ),
    "names-look-alike": Wording(
        "the {what:terms} `{known}` and `{name}` look alike, and are two",
        labels={"this": "`{name}`", "that": "`{known}`"},
        notes={"letters": "`{one}` is {named}, `{other}` is {other_named}"},
        helps={"rename": "give one of them another name, or write the same name in the same letters"},
    ),
    "negative-measurement": Wording(
        "`{row}` is less than nothing",
        labels={"values": "{values}"},
        helps={"no-minus": "write what is measured, without the minus"},
    ),
    "no-such-edge": _NO_SUCH_EDGE,
    "no-unit/amount": Wording("{what} needs a unit", labels={"bare": "a bare number"}, helps={"write": "write it in {unit}"}),
    "no-unit/row": Wording("`{row}` has no unit", labels={"bare": "bare numbers"}, helps={"cm": "end the row with cm"}),
    "not-positive/amount": Wording(
        "{what} must be more than zero", labels={"value": "{value}"}, helps={"above-nothing": "write what is measured, above zero"}
    ),
    "not-positive/step": Wording(
        "rounding needs a step above zero",
        labels={"step": "{step}"},
        helps={"a-step": "write what it is rounded to a multiple of, as in `round(length / 3 to 1 cm)`"},
    ),
    "number-too-large": Wording(
        "this comes to more than any garment has",
        labels={"too-large": "too large"},
        helps={"check-units": "look at the figures and their units"},
    ),
    "ragged-row": Wording(
        "`{row}` has {values:value|values} for {wanted:size|sizes}",
        labels={"values": "{values:value|values}", "sizes": "{wanted:size|sizes}"},
        notes={"lacking": "no value for {lacking}"},
        helps={"a-value-each": "write {wanted:one value|# values}, in the order of the sizes"},
    ),
    "repeated-name": Wording(
        "`{name}` is the name of two {what:terms}",
        labels={"again": "here again", "first": "first here"},
        helps={"rename": "give one of them another name"},
    ),
    "repeated-statement": Wording(
        "{owner} has two `{what}` statements",
        labels={"again": "here again", "first": "first here"},
        helps={"leave-one-out": "leave one of the two out"},
    ),
    "language-twice": Wording(
        "the text is there twice in {language}",
        labels={"again": "here again", "first": "first here"},
        helps={"leave-one-out": "leave one of them out"},
    ),
    "require-fails/bare": Wording(
        "it is required that {requirement}, and it is not so",
        labels={"fails": "fails in {failing}"},
        notes={"against": "{size}: {left} against {right}"},
        helps={
            "larger": "make `{left}` larger, by {by} where it lacks most, or ask for less",
            "smaller": "make `{left}` smaller, by {by} where it is most too large, or ask for more",
        },
    ),
    "require-fails/because": Wording(
        "it is required that {requirement}, and it is not so: {because}",
        labels={"fails": "fails in {failing}"},
        notes={"against": "{size}: {left} against {right}"},
        helps={
            "larger": "make `{left}` larger, by {by} where it lacks most, or ask for less",
            "smaller": "make `{left}` smaller, by {by} where it is most too large, or ask for more",
        },
    ),
    "row-falls": Wording(
        "`{row}` gets smaller from {one} to {next}",
        labels={"then": "{value}, then {next_value}"},
        helps={"check-order": "look at the order of the values; if it is meant so, leave it"},
    ),
    "shape-too-large/deep": Wording(
        "shapes are used within shapes more than {deepest} deep",
        labels={"deep": "`{used}` goes {deep} deep"},
        helps={"less-deep": "write the lines of the innermost shapes where they are used"},
    ),
    "shape-too-large/piece": Wording(
        "shapes give this piece {lines:,} lines, and {most:,} are the most",
        labels={"comes": "`{used}` comes to {own_lines:,}"},
        helps={"fewer": "let shapes use fewer shapes, or write what is repeated as a stretch with `repeat`"},
    ),
    "shape-too-large/source": Wording(
        "shapes give the pieces of this source more than {most:,} lines together",
        labels={"more": "{lines:,} more by the shapes of this piece"},
        helps={"fewer": "write fewer pieces with these shapes, or two sources"},
    ),
    "table-from-memory": Wording(
        "`{measurement}` in the table `{table}` is from memory",
        labels={"not-seen": "not seen in a published table"},
        notes={"memory": "from memory: {recalled}"},
        helps={"check": "check the figures, or write them out"},
    ),
    "table-slip": Wording(
        "`{measurement}` in the table `{table}` is likely misprinted in its source: {figures}",
        labels={"here": "used here"},
        notes={"doubt": "{size}: {note}"},
        helps={"own": "give your own figures here: `{with_own}`"},
    ),
    "tension-not-yours/beside-own": Wording(
        "{fabrics:names`} keep{single:?s} the tension of the source, beside your own of `{own}`",
        notes={"not-reckoned": "`{fabric}` is in another yarn, `{yarn}`: it cannot be reckoned from `{own}`"},
        helps={"swatch": 'knit a swatch, and give what it measures: `--tension "{fabric}=... st ... rows"`'},
    ),
    "tension-not-yours/other-yarn": Wording(
        "`{fabric}` keeps the tension of the source, in another yarn",
        notes={"measured-in": "the source's {stitches} and {rows} to 10 cm were measured in its own yarn"},
        helps={"swatch": 'knit a swatch, and give what it measures: `--tension "{fabric}=... st ... rows"`'},
    ),
    "too-many": Wording(
        "there are {count} {what:terms}, and {most} are the most",
        labels={"from-here": "one too many from here on"},
        helps={"second-source": "write a second source, or leave out what no garment needs"},
    ),
    "unknown-argument": _NO_SUCH_EDGE,
    "unknown-name": _NO_SUCH_EDGE,
    "unknown-name/given": Wording(
        "no {what:term} is called `{name}`",
        notes={"here": "{what:terms} here: {known:names}", "none-here": "there is no {what:term} here"},
        helps={
            "close-as": "`{close}` is close: it is `{own}`",
            "choices": "`walewright choices` lists what can be given, with its names",
        },
    ),
    "unknown-name/several": Wording("`{name}` may be {meant:or`}", helps={"as-in-source": "write it as the source does"}),
    "unknown-size": _NO_SUCH_EDGE,
    "unknown-size/given": Wording("the pattern has no size `{size}`", notes={"it-has": "it has {names}"}),
    "unknown-size/no-name": Wording("no size is named", notes={"pattern-has": "the pattern has {names}"}),
    "unknown-size/several": Wording("`{size}` is several sizes", notes={"it-has": "it has {names}"}),
    "unknown-table": _NO_SUCH_EDGE,
    "unknown-table-row": Wording(
        "the table `{table}` has no measurement `{measurement}`",
        labels={"table": "not in the table"},
        notes={"it-has": "it has {measurements}"},
    ),
    "unknown-table-size": Wording(
        "the table `{table}` has no `{measurement}` for {absent}",
        labels={"table": "not in the table", "sizes": "sizes of this pattern"},
        notes={"it-has": "it has {known}"},
        helps={"own": "give them here: `{with_own}`, with your own figures"},
    ),
    "unused-name/definition": Wording(
        "nothing that is made uses the {kind:term} `{name}`",
        labels={"by-unused": "used only by what is itself unused", "nowhere": "used nowhere"},
        notes={"by": "named by {by}"},
        helps={
            "delete-or-use": "delete it, or use it",
            "or-to-fit": "delete it, use it, or end it with `to fit` if it is a measure of the body to choose a size by",
        },
    ),
    "unused-name/edge": Wording(
        "nothing is joined to the edge `{edge}` of piece `{piece}`, and no statement names it",
        labels={"only-here": "named here only"},
        helps={
            "leave-out-or-free": (
                "leave `called {edge}` out, or write what is joined to it; if nothing is to be, write `free {piece} {edge}`"
            )
        },
    ),
    "same-as-model": Wording(
        "this line changes nothing: `{model}` says the same",
        labels={"again": "as in `{model}`"},
        helps={"leave-out": "leave it out"},
    ),
    "unused-name/in-shape": Wording(
        "nothing in shape `{shape}` uses its {kind:term} `{name}`",
        labels={"nowhere": "`{name}` is used nowhere in it"},
        helps={"delete-in-uses": "delete it here and in every `use`, or use it", "delete-or-use": "delete it, or use it"},
    ),
    "unused-name/level": Wording(
        "nothing goes to the level `{level}` of piece `{piece}` or stands at it",
        labels={"unnamed": "no line of the piece names it"},
        helps={"delete-or-use": "delete it, or let an edge, an opening or a fabric begin or end there"},
    ),
    "without-effect": Wording(
        "this changes nothing: {why}",
        labels={"here": "without effect"},
        helps={
            "leave-out": "leave that out",
            "leave-out-or-after": "leave that out, or let the edging be added after",
            "leave-out-or-of-model": "leave that out, or say it of `{model}`",
            "leave-out-or-along": "leave that out, or begin the piece `along` an edge",
            "leave-out-or-slope": "leave that out, or let the edge slope or curve",
            "leave-out-or-steps": "leave that out, or let the edge go in steps",
            "leave-out-or-straight-slope": "leave that out, or let the edge slope",
            "leave-one-move-out": "leave one of the two out",
            "leave-out-or-one-at-a-time": ("leave that out, or move one stitch at a time, or take two in with `two at once`"),
            "leave-out-or-width": "leave that out, or say how wide a panel it is, such as `8 cm wide`",
            "leave-one-width-out": "leave one of the two widths out",
            "leave-weight-or-loop-out": (
                "leave one of the two out: the weight, if the yarn to a stitch was measured with more care"
            ),
            "leave-out-or-measure": "leave that out, or let it be measured, `round` or `across` a piece at a level",
            "leave-out-or-fits": "leave that out, or say which it fits, such as `, fits bust`",
            "leave-out-or-use-whole-width": "leave that out, or use the fabric over a whole width too",
            "leave-out-or-knit-in": "leave that out, or let a symbol be `knit in` another yarn",
            "leave-out-or-wider": "leave that out, or let it begin some stitches wide",
        },
    ),
    "without-model": Wording(
        "`without` leaves out what a piece has from another one that it is like, or whose mirror image it is",
        labels={"no-model": "this piece has all its lines itself"},
        helps={"delete": "delete this line, and what is not wanted"},
    ),
    "worked-out-measure": Wording(
        "`{name}` is worked out by the pattern and cannot be given",
        notes={"follows": "it follows from {rows:names`}", "same": "it is the same for every body"},
        helps={
            "leave-out": "leave it out",
            "give-one": 'give one of these, such as `--measure "{first}=... cm"`',
            "give-it": 'give `{first}`, such as `--measure "{first}=... cm"`',
        },
    ),
    "wrong-unit/amount": Wording("{what}: this must be {wanted}", labels={"dimension": "{dimension}"}),
    "wrong-unit/compared": Wording(
        "`{measured}` is a length",
        labels={"dimension": "{dimension}"},
        helps={"a-length": "compare it with a length, such as `40 cm`"},
    ),
    "wrong-unit/count": Wording(
        "{what} are counted, and `{name}` is {dimension}",
        labels={"here": "{dimension}"},
        helps={"no-unit": "write the row or the sum without a unit"},
    ),
    "wrong-unit/needed": Wording(
        "what is needed is counted or has a length, and this is {dimension}",
        labels={"dimension": "{dimension}"},
        helps={"count-or-length": "write a number without a unit, such as `6`, or a length, such as `60 cm`"},
    ),
    "wrong-unit/regauged": Wording(
        "`{function}` takes a width, as a length",
        labels={"dimension": "{dimension}"},
        helps={"a-length": "write a width, such as `40 cm`"},
    ),
    "wrong-unit/row": Wording(
        "`{row}` must be a length", labels={"dimension": "{dimension}"}, helps={"a-length": "write lengths, such as `40 cm`"}
    ),
}
