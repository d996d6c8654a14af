"""Words for lines that do not read."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "chained-depth": Wording(
        "edging `{edging}` is chained, which is one row, and has a depth",
        labels={"depth": "a depth"},
        helps={"leave-out": "leave the depth out, or leave out `chained`"},
    ),
    "control-character/no-letter": Wording(
        "the character U+{letter:04X} is no letter of a text",
        labels={"invisible": "invisible here"},
        helps={"delete": "delete it, or type the line anew"},
    ),
    "control-character/turns": Wording(
        "the character U+{letter:04X} turns the direction of writing",
        labels={"invisible": "invisible here"},
        helps={"delete": "delete it, or type the line anew"},
    ),
    "empty-source": Wording(
        "the source says nothing",
        labels={"nothing": "no statement"},
        helps={"title": 'begin with a title, such as `pattern "Tidewrack"`'},
    ),
    "incomplete-statement": Wording(
        "this `{line}` does not say its {lacking:term}",
        labels={"lacking": "no {lacking:term}"},
        helps={
            "add-depth": "add it, such as `6 cm deep`",
            "add-width": "add it, such as `18 cm wide`",
            "add-neck-depth": "add it, such as `8 cm deep`",
            "add-shape": "add one of `round`, `v`, `square`",
            "add-start": "add one of `on waste yarn`, `with e-wrap`, `with chain`, `along` edges",
            "add-holding": "add one of `held in`, `let out`, `held in and let out`",
        },
    ),
    "invisible-symbol": Wording(
        "the character U+{letter:04X} cannot be seen by itself, and counts as a stitch here",
        labels={"own": "a symbol of its own"},
        helps={"delete": "delete it, and draw the chart with symbols of one character each"},
    ),
    "line-too-long": Wording(
        "the line has {length} characters beside its texts; {most} are the most",
        labels={"begins": "begins here"},
        helps={"one-statement": "write one statement a line, and give long expressions names with `let`"},
    ),
    "misplaced-line": Wording(
        "a line of `{word}` cannot stand {place}",
        labels={"begins": "the line begins so"},
        notes={"stands": "it stands {elsewhere:or}"},
        helps={"move-it": "write it {elsewhere:or}, or leave it out"},
    ),
    "name-in-language/no-word": Wording(
        "nothing can be called {word!r}",
        labels={"word": "cannot be read back from the page"},
        helps={"letters": "write up to {most} letters and digits, with single blanks between words"},
    ),
    "name-in-language/taken": Wording(
        "two things of a kind would be called `{word}`",
        labels={"again": "here", "first": "first here"},
        helps={"another": "call one of them otherwise"},
    ),
    "name-in-language/twice": Wording(
        "`{name}` is called otherwise twice in one language",
        labels={"again": "here again", "first": "first here"},
        helps={"leave-one-out": "leave one of them out"},
    ),
    "name-in-language/unknown": Wording(
        "nothing is called `{name}` in this source",
        labels={"called": "is called otherwise here"},
        helps={"did-you-mean": "did you mean `{near}`?", "define-or-delete": "delete the line, or call something so"},
    ),
    "name-unreadable/mark": Wording(
        "the name `{shown}` has U+{letter:04X}, a mark that is no letter by itself",
        labels={"no-marks": "names have none"},
        helps={"call": "call it `{sound}`", "letters": "give it a name of letters, digits and single `_` between words"},
    ),
    "name-unreadable/name": Wording(
        "the name `{shown}` {fault}",
        labels={"not-read-back": "cannot be read back from the page"},
        helps={"call": "call it `{sound}`", "letters": "give it a name of letters, digits and single `_` between words"},
    ),
    "name-unreadable/tension": Wording(
        "the tension `{shown}` {fault}",
        labels={"not-read-back": "cannot be read back from the page"},
        helps={"as-dial": "write it as the dial has it, in digits, letters and dots"},
    ),
    "not-whole-number": Wording(
        "a whole number belongs here, and {number} is not one",
        labels={"count": "a count"},
        helps={"whole": "write a number without decimals"},
    ),
    "number-too-long": Wording(
        "a number has at most {most_whole} digits before the point and {most_decimals} after it",
        labels={"digits": "{whole} before, {decimals} after"},
        helps={"round-it": "round it, or write it in a larger unit"},
    ),
    "repeated-option": Wording(
        "this line says the same thing twice",
        labels={"again": "said again", "first": "said first"},
        helps={"leave-one-out": "leave one of the two out"},
    ),
    "reserved-word": Wording(
        "`{name}` has a meaning of its own where this name would be used",
        labels={"named": "named `{name}`"},
        notes={"taken": "words that cannot be names here: {taken}"},
        helps={"longer": "call it `own_{name}` or something longer"},
    ),
    "source-too-long/characters": Wording(
        "the source has {count:,} characters, and {most:,} are the most",
        labels={"begins": "begins here"},
        helps={"divide": "write a source for each garment, and what is repeated once, as a `shape`"},
    ),
    "source-too-long/lines": Wording(
        "the source has {count:,} lines, and {most:,} are the most",
        labels={"begins": "begins here"},
        helps={"divide": "write a source for each garment, and what is repeated once, as a `shape`"},
    ),
    "tab-indent": Wording(
        "this line is indented with a tab; blocks are indented with spaces",
        labels={"tab": "a tab"},
        notes={"further": "so {further:is 1 further line|are # further lines}"},
        helps={"spaces": "write {columns} spaces instead"},
    ),
    "too-deep": Wording(
        "brackets and operations stand more than {most} deep in one another",
        labels={"deeper": "still deeper from here"},
        helps={"name-parts": "give parts of it names, a `let` line for each"},
    ),
    "empty-text": Wording(
        "there is nothing to be read between these quotation marks",
        labels={"own": "empty"},
        helps={"write": "write the text, or leave its statement out"},
    ),
    "unclosed-text": Wording(
        "the text begun here has no closing quote on its line",
        labels={"to-end": "text to the end of the line"},
        notes={"quotes": 'inside a text, `\\"` is a quote and `\\n` begins a new line'},
        helps={"close": 'close it with `"`'},
    ),
    "unknown-escape": Wording(
        "`\\{letter}` stands for nothing",
        labels={"text": "in a text"},
        notes={"known": 'a backslash can stand before `"`, `n` (a new line) and itself'},
        helps={"double": "write `\\\\` for a backslash"},
    ),
    "unreadable-line/cannot-follow": Wording(
        "`{word}` cannot follow `{before}`",
        labels={"stopped": "reading stopped here"},
        notes={"can-stand": "here can stand: {words:or`}"},
        helps={
            "reads": "such a line reads `{sample}`",
            "straight-quotes": 'texts stand in straight quotes, `"`',
            "decimal-point": "a decimal fraction is written with a point, such as `2.5`",
        },
    ),
    "unreadable-line/ends-too-soon": Wording(
        "the line ends too soon after `{before}`",
        labels={"ends": "the line ends"},
        notes={"can-stand": "here can stand: {words:or`}"},
        helps={
            "reads": "such a line reads `{sample}`",
            "straight-quotes": 'texts stand in straight quotes, `"`',
            "decimal-point": "a decimal fraction is written with a point, such as `2.5`",
        },
    ),
    "unreadable-line/unknown-beginning": Wording(
        "no line {place} begins with `{word}`",
        labels={"begins": "the line begins so"},
        notes={"beginnings": "lines there begin with: {beginnings:`/, }", "name-begins": "lines there begin with: a name"},
        helps={"reads": "such a line reads `{sample}`"},
    ),
    "wrong-indent/at-margin": Wording(
        "this line belongs to the block above it and is not indented",
        labels={"at-margin": "at the left margin"},
        helps={
            "as-first-line": ("a line of a block is indented as the first line of the block; all others begin at the left margin")
        },
    ),
    "wrong-indent/no-block": Wording(
        "this line is indented, and no block is open here",
        labels={"indented": "indented {indent}"},
        helps={
            "as-first-line": ("a line of a block is indented as the first line of the block; all others begin at the left margin")
        },
    ),
    "wrong-indent/unlike-block": Wording(
        "this line is not indented as the others of its block",
        labels={"unlike": "indented {indent}, the block {block}"},
        helps={
            "as-first-line": ("a line of a block is indented as the first line of the block; all others begin at the left margin")
        },
    ),
}
