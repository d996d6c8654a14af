"""Words for sizes, values and what is given in their place."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "absurd-measurement": Wording(
        "`{name}` is more than {LARGEST_CM}",
        labels={
            "chosen": "{chosen}",
        },
        helps={
            "look-unit": "look at the unit",
        },
    ),
    "bad-measure": Wording(
        "`{name}` cannot be {cm} ({option})",
        helps={
            "must-more-most": "it must be more than 0 and at most {LARGEST_CM:g} cm",
        },
    ),
    "bad-tension": Wording(
        "no bed knits {number} to {SWATCH_CM:g} cm ({option})",
        notes={
            "bed-knits-cm": "a bed knits {least} to {most} to {SWATCH_CM:g} cm",
        },
        helps={
            "look-number-both": "look at which number is which, and that both are to 10 cm",
        },
    ),
    "cyclic-let": Wording(
        "{ring}: this has no end",
    ),
    "division-by-zero": Wording(
        "this divides by zero",
        labels={
            "zero": "zero",
        },
    ),
    "given-for-nothing": Wording(
        "no stitch of the garment follows from `{name}` ({option})",
        notes={
            "page-holds-finished": "the page holds the finished garment against it, no more",
        },
        helps={
            "lists-what-can": "`walewright choices` lists what can be given",
        },
    ),
    "given-twice/given-tension-swatch": Wording(
        "`{name}` is given a tension and a swatch ({option})",
        helps={
            "leave-them-out": "leave one of them out: a swatch says the tension too",
        },
    ),
    "given-twice/given-twice": Wording(
        "`{name}` is given twice, as {found} and as {text} ({option})",
        helps={
            "leave-them-out": "leave one of them out",
        },
    ),
    "impossible-statement/nothing-prints-text": Wording(
        "nothing prints a text `{key}` here",
        labels={
            "can-stand-here": "{keys:or} can stand here",
        },
    ),
    "impossible-statement/statement-belongs-into": Wording(
        "this statement belongs into a block",
        labels={
            "own-here": "on its own here",
        },
    ),
    "impossible-statement/statement-cannot-stand": Wording(
        "this statement cannot stand in a shape",
        labels={
            "shape": "in a shape",
        },
    ),
    "impossible-statement/takes": Wording(
        "`{function}` takes {wanted}",
        labels={
            "given": "{args} given",
        },
    ),
    "missing-part/source": Wording(
        "the source has no {join}",
    ),
    "mixed-units": Wording(
        "{sort} and {sort_2} do not mix",
        labels={
            "sort": "{sort}",
            "sort-2": "{sort_2}",
        },
        helps={
            "write-bare-number": "write the bare number with its unit",
        },
    ),
    "name-expected": Wording(
        "`{parameter}` of shape `{shape}` is a {what}, and a quantity is given",
        labels={
            "quantity": "a quantity",
            "names-here": "`{parameter}` names a {what} here",
        },
    ),
    "negative-measurement": Wording(
        "`{name}` is less than nothing",
        labels={
            "chosen": "{chosen}",
        },
    ),
    "no-unit/unit": Wording(
        "`{name}` has no unit",
        labels={
            "bare-numbers": "bare numbers",
        },
        helps={
            "end-row-cm": "end the row with cm",
        },
    ),
    "not-positive/must-more-zero": Wording(
        "{what} must be more than zero",
        labels={
            "value": "{value}",
        },
    ),
    "not-positive/rounding-needs-step": Wording(
        "rounding needs a step above zero",
        labels={
            "amounts": "{amounts}",
        },
    ),
    "number-too-large": Wording(
        "this comes to more than any garment has",
        labels={
            "too-large": "too large",
        },
    ),
    "ragged-row": Wording(
        "`{name}` has {count} for {count_2}",
        labels={
            "count-3": "{count_3}",
            "count-4": "{count_4}",
        },
        notes={
            "value": "no value for {lacking}",
        },
    ),
    "row-falls": Wording(
        "`{name}` gets smaller from {chosen} to {chosen_2}",
        labels={
            "then": "{values}, then {values_2}",
        },
    ),
    "shape-ring": Wording(
        "{ring}: this has no end",
        labels={
            "again": "{again}",
        },
    ),
    "shape-too-large/shapes-give-piece": Wording(
        "shapes give this piece {lines:,} lines, and {MOST_STATEMENTS:,} are the most",
        labels={
            "comes": "`{name}` comes to {lines_2:,}",
        },
        helps={
            "let-shapes-use": "let shapes use fewer shapes, or write what is repeated as a stretch with `repeat`",
        },
    ),
    "shape-too-large/shapes-give-pieces": Wording(
        "shapes give the pieces of this source more than {MOST_IN_ALL:,} lines together",
        labels={
            "more-shapes-piece": "{lines:,} more by the shapes of this piece",
        },
        helps={
            "write-fewer-pieces": "write fewer pieces with these shapes, or two sources",
        },
    ),
    "shape-too-large/shapes-used-within": Wording(
        "shapes are used within shapes more than {DEEPEST} deep",
        labels={
            "goes-deep": "`{name}` goes {deep} deep",
        },
    ),
    "table-from-memory": Wording(
        "`{measurement}` in the table `{name}` is from memory",
        labels={
            "seen-published-table": "not seen in a published table",
        },
        notes={
            "memory": "from memory: {recalled}",
        },
        helps={
            "check-figures-write": "check the figures, or write them out",
        },
    ),
    "table-slip": Wording(
        "`{measurement}` in the table `{name}` is likely misprinted in its source: {figures}",
        labels={
            "used-here": "used here",
        },
        helps={
            "give-your-own": "give your own figures here: `{with_own}`",
        },
    ),
    "tension-not-yours/keep-tension-source": Wording(
        "{listed} keep{if_rest:?s} the tension of the source, beside your own of `{first}` ({came_by})",
        notes={
            "another-yarn-cannot": "`{name}` is in another yarn, `{yarn}`: it cannot be reckoned from `{first}`",
        },
        helps={
            "knit-swatch-give": 'knit a swatch, and give what it measures: `--tension "{name}=... st ... rows"`',
        },
    ),
    "tension-not-yours/keeps-tension-source": Wording(
        "`{name}` keeps the tension of the source, in another yarn ({option})",
        notes={
            "source-s-cm": "the source's {stitches_per_cm} and {rows_per_cm} to 10 cm were measured in its own yarn",
        },
        helps={
            "knit-swatch-give": 'knit a swatch, and give what it measures: `--tension "{name}=... st ... rows"`',
        },
    ),
    "too-many": Wording(
        "there are {places} {what}, and {most} are the most",
        labels={
            "too-many-here": "one too many from here on",
        },
        helps={
            "write-second-source": "write a second source, or leave out what no garment needs",
        },
    ),
    "unknown-name/called": Wording(
        "no {what} is called `{name}` ({option})",
        notes={
            "s-here": "{what}s here: {known}",
            "here": "there is no {what} here",
        },
        helps={
            "lists-what-can": "`walewright choices` lists what can be given, with its names",
        },
    ),
    "unknown-name/may": Wording(
        "`{name}` may be {found:or} ({option})",
        helps={
            "write-source-does": "write it as the source does",
        },
    ),
    "unknown-size/size-named-option": Wording(
        "no size is named (option --size)",
        notes={
            "pattern": "the pattern has {names}",
        },
    ),
    "unknown-table-row": Wording(
        "the table `{name}` has no measurement `{measurement}`",
        labels={
            "table": "not in the table",
        },
        notes={
            "it-has": "it has {measurements}",
        },
    ),
    "unknown-table-size": Wording(
        "the table `{name}` has no `{measurement}` for {absent}",
        labels={
            "table": "not in the table",
            "sizes-pattern": "sizes of this pattern",
        },
        notes={
            "it-has": "it has {entries}",
        },
        helps={
            "give-them-here": "give them here: `{with_own}`, with your own figures",
        },
    ),
    "unused-name/nothing-made-uses": Wording(
        "nothing that is made uses the {word} `{name}`",
        labels={
            "used-only-what": "used only by what is itself unused",
            "used-nowhere": "used nowhere",
        },
        notes={
            "named": "named by {fromkeys}",
        },
        helps={
            "help": "{help}",
        },
    ),
    "unused-name/nothing-shape-uses": Wording(
        "nothing in shape `{name}` uses its {sort} `{name_2}`",
        labels={
            "used-nowhere": "`{name_2}` is used nowhere in it",
        },
        helps={
            "help": "{help}",
        },
    ),
    "worked-out-measure": Wording(
        "`{name}` is worked out by the pattern and cannot be given ({option})",
        notes={
            "follows": "it follows from {listed}",
            "same-every-body": "it is the same for every body",
        },
        helps={
            "give-such": 'give {found}, such as `--measure "{found_2}=... cm"`',
            "leave-out": "leave it out",
        },
    ),
    "wrong-unit/length-2": Wording(
        "`{left}` is a length",
        labels={
            "sort": "{sort}",
        },
    ),
    "wrong-unit/must": Wording(
        "{what}: this must be {sort}",
        labels={
            "sort-2": "{sort_2}",
        },
    ),
    "wrong-unit/must-length": Wording(
        "`{name}` must be a length",
        labels={
            "what": "{what}",
        },
    ),
}
