"""Parse tables: worked out once for a grammar and shipped beside it as `grammar/NAME.tables`.

To work them out takes ten times as long as to read them. They are plain JSON that can make nothing but a parser, and hold for the
very grammar, the very code that edits its terminals, and the library's release that they were worked out for: of any other, of
a damaged file, and where there is none, the parser is made from the grammar itself. Asking for a parser writes nothing.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, Any

from walewright.record import record
from walewright.world.shipped import package_text, shipped_text

if TYPE_CHECKING:
    from lark import Lark
    from lark.lexer import TerminalDef


@record
class Grammar:
    """A grammar and how its parser is made: `name` of grammar/NAME.lark, `module` the file in which `edit` is."""

    name: str
    module: str
    start: tuple[str, ...]
    edit: Callable[[TerminalDef], None]
    options: Callable[[], Mapping[str, Any]]
    """What the parser makes of what it reads: options that do not change its tables."""
    text: str = ""
    """The grammar itself, of one that is not shipped: it has no tables."""


def made(grammar: Grammar) -> Lark:
    """The LALR parser, from its tables where they hold, else from the grammar."""
    if grammar.text:
        return worked_out(grammar)
    try:
        head, _, body = shipped_text("grammar", f"{grammar.name}.tables").partition("\n")
        if head == _head(grammar, body):
            return _restored(body, grammar.options())
    except Exception:  # Whatever is wrong with them, the grammar says the same.
        pass
    return worked_out(grammar)


def worked_out(grammar: Grammar) -> Lark:
    """The parser made from the grammar itself."""
    from lark import Lark

    return Lark(
        grammar.text or shipped_text("grammar", f"{grammar.name}.lark"),
        parser="lalr",
        lexer="contextual",
        start=list(grammar.start),
        maybe_placeholders=False,
        edit_terminals=grammar.edit,
        **grammar.options(),
    )


def tables(grammar: Grammar) -> str:
    """What stands in the file: what the tables are of, and on the next line the tables."""
    from lark.grammar import Rule
    from lark.lark import _LOAD_ALLOWED_OPTIONS
    from lark.lexer import TerminalDef

    data, memo = worked_out(grammar).memo_serialize([TerminalDef, Rule])
    left_out = {*_LOAD_ALLOWED_OPTIONS, "edit_terminals"}
    data["options"] = {name: value for name, value in data["options"].items() if name not in left_out}
    body = json.dumps(_in_order(data, memo), separators=(",", ":")) + "\n"
    return f"{_head(grammar, body)}\n{body}"


def _in_order(data: dict[str, Any], memo: Mapping[int, Any]) -> dict[str, Any]:
    """The same tables, numbered by what they are of. The library numbers what it keeps in sets as it comes, each time otherwise."""
    kept = {old: new for new, old in enumerate(sorted(memo, key=lambda old: json.dumps(memo[old])))}

    def named(value: Any) -> Any:
        if isinstance(value, dict):
            return {"@": kept[value["@"]]} if "@" in value else {key: named(each) for key, each in value.items()}
        return [named(each) for each in value] if isinstance(value, list | tuple) else value

    found = named(data)
    table = found["parser"]["parser"]
    names = table["tokens"]
    tokens = {old: new for new, old in enumerate(sorted(names, key=lambda old: str(names[old])))}
    rows = {old: sorted((tokens[token], action) for token, action in row.items()) for old, row in table["states"].items()}
    # From each start on, by what leads from one to the next.
    states: dict[int, int] = {}
    waiting = [table["start_states"][start] for start in sorted(table["start_states"])]
    while waiting:
        state = waiting.pop(0)
        if state not in states:
            states[state] = len(states)
            waiting += [to for _, (reduces, to) in rows[state] if not reduces]
    table["tokens"] = {tokens[old]: names[old] for old in sorted(names, key=tokens.__getitem__)}
    table["states"] = {
        states[old]: {token: (reduces, to if reduces else states[to]) for token, (reduces, to) in rows[old]} for old in states
    }
    for ends in ("start_states", "end_states"):
        table[ends] = {name: states[table[ends][name]] for name in sorted(table[ends])}
    return {"data": found, "memo": {kept[old]: memo[old] for old in sorted(memo, key=kept.__getitem__)}}


def _head(grammar: Grammar, body: str) -> str:
    import lark

    release = ".".join(lark.__version__.split(".")[:2])
    of = (release, *grammar.start, shipped_text("grammar", f"{grammar.name}.lark"), package_text(grammar.module), body)
    return hashlib.sha256("\0".join(of).encode()).hexdigest()


def _restored(body: str, options: Mapping[str, Any]) -> Lark:
    from lark import Lark

    found = json.loads(body)
    table = found["data"]["parser"]["parser"]
    # In JSON all keys are texts; those of the tables are numbers.
    table["tokens"] = _numbered(table["tokens"])
    table["states"] = {int(state): _numbered(actions) for state, actions in table["states"].items()}
    # What the library's own tool for parsers of their own calls; it has no types.
    restore: Any = Lark._load_from_dict
    parser: Lark = restore(found["data"], _numbered(found["memo"]), **options)
    return parser


def _numbered(texts: Mapping[str, Any]) -> dict[int, Any]:
    return {int(key): value for key, value in texts.items()}
