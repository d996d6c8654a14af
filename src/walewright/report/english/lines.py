"""Words for lines that do not read."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "chained-depth": Wording(
        "edging `{name}` is chained, which is one row, and has a depth",
        labels={
            "depth": "a depth",
        },
        helps={
            "leave-depth-out": "leave the depth out, or leave out `chained`",
        },
    ),
    "control-character": Wording(
        "the character U+{ord:04X} {what}",
        labels={
            "invisible-here": "invisible here",
        },
        helps={
            "delete-type-line": "delete it, or type the line anew",
        },
    ),
    "empty-source": Wording(
        "the source says nothing",
        labels={
            "statement": "no statement",
        },
        helps={
            "begin-title-such": 'begin with a title, such as `pattern "Tidewrack"`',
        },
    ),
    "incomplete-statement": Wording(
        "this `{line}` does not say its {called}",
        labels={
            "no": "no {called}",
        },
        helps={
            "add": "add {written}",
        },
    ),
    "invisible-symbol": Wording(
        "the character U+{ord:04X} cannot be seen by itself, and counts as a stitch here",
        labels={
            "symbol-own": "a symbol of its own",
        },
        helps={
            "delete-draw-chart": "delete it, and draw the chart with symbols of one character each",
        },
    ),
    "line-too-long": Wording(
        "the line has {length} characters beside its texts; {LONGEST} are the most",
        labels={
            "begins-here": "begins here",
        },
        helps={
            "write-statement-line": "write one statement a line, and give long expressions names with `let`",
        },
    ),
    "misplaced-line": Wording(
        "a line of `{word}` cannot stand {PLACES}",
        notes={
            "stands": "it stands {elsewhere:or}",
        },
    ),
    "name-unreadable/name": Wording(
        "the name `{shown}` {says}",
        labels={
            "cannot-read-back": "cannot be read back from the page",
        },
        helps={
            "call": "call it `{sound}`",
            "give-name-letters": "give it a name of letters, digits and single `_` between words",
        },
    ),
    "name-unreadable/name-u-mark": Wording(
        "the name `{shown}` has U+{ord:04X}, a mark that is no letter by itself",
        labels={
            "names-none": "names have none",
        },
        helps={
            "call": "call it `{sound}`",
            "give-name-letters": "give it a name of letters, digits and single `_` between words",
        },
    ),
    "name-unreadable/tension": Wording(
        "the tension `{shown}` {says}",
        labels={
            "cannot-read-back": "cannot be read back from the page",
        },
        helps={
            "write-dial-digits": "write it as the dial has it, in digits, letters and dots",
        },
    ),
    "not-whole-number": Wording(
        "a whole number stands here, and {token} is none",
        labels={
            "count": "a count",
        },
    ),
    "number-too-long": Wording(
        "a number has at most {MOST_DIGITS} digits before the point and {MOST_DECIMALS} after it",
        labels={
            "before-after": "{whole} before, {decimals} after",
        },
    ),
    "repeated-option": Wording(
        "this line says the same thing twice",
        labels={
            "said-again": "said again",
            "said-first": "said first",
        },
    ),
    "reserved-word": Wording(
        "`{name}` has a meaning of its own where this name would be used",
        labels={
            "named": "named `{name}`",
        },
        notes={
            "words-cannot-names": "words that cannot be names here: {taken}",
        },
        helps={
            "call-something-longer": "call it `own_{name}` or something longer",
        },
    ),
    "source-too-long": Wording(
        "the source has {have}, and {most:,} are the most",
        labels={
            "begins-here": "begins here",
        },
        helps={
            "write-source-each": "write a source for each garment, and what is repeated once, as a `shape`",
        },
    ),
    "tab-indent": Wording(
        "this line is indented with a tab; blocks are indented with spaces",
        labels={
            "tab": "a tab",
        },
        notes={
            "so": "so {further}",
        },
        helps={
            "write-spaces-instead": "write {TAB_COLUMNS} spaces instead",
        },
    ),
    "too-deep": Wording(
        "brackets and operations stand more than {DEEPEST} deep in one another",
        labels={
            "still-deeper-here": "still deeper from here",
        },
        helps={
            "give-parts-names": "give parts of it names, a `let` line for each",
        },
    ),
    "unclosed-text": Wording(
        "the text begun here has no closing quote on its line",
        labels={
            "text-end-line": "text to the end of the line",
        },
        notes={
            "inside-text-quote": 'inside a text, `\\"` is a quote and `\\n` begins a new line',
        },
        helps={
            "close": 'close it with `"`',
        },
    ),
    "unknown-escape": Wording(
        "`\\{found}` stands for nothing",
        labels={
            "text": "in a text",
        },
        notes={
            "backslash-can-stand": 'a backslash can stand before `"`, `n` (a new line) and itself',
        },
        helps={
            "write-backslash": "write `\\\\` for a backslash",
        },
    ),
    "unreadable-line/line-begins": Wording(
        "no line {PLACES} begins with `{word}`",
        notes={
            "lines-begin": "lines there begin with: {begins}",
        },
    ),
}
