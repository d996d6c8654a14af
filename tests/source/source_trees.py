"""Trees as an author could write them, for property tests: every node, names that are words of the language too."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import strategies as st

from walewright.source import syntax as s
from walewright.source.blocks import BLOCKS
from walewright.source.grammar import literals
from walewright.source.rules import AMOUNT_NAMES_TAKEN, CELL_KINDS, EDGE_NAMES_TAKEN, EDGING_NAMES_TAKEN, SIZE_NAMES_TAKEN

WORDS = sorted(w for w in literals().values() if w.isidentifier())
STITCH_UNITS = ("stitches", "stitch", "sts", "st")
UNITS = ("cm", "mm", "m", "in", *STITCH_UNITS, "rows", "row", "g", "%")

names = st.one_of(st.sampled_from(WORDS), st.from_regex(r"[a-zA-ZäßÉ][a-z0-9]{0,5}(_[a-z0-9]{1,4}){0,2}", fullmatch=True))
amount_names = names.filter(lambda n: n not in AMOUNT_NAMES_TAKEN)
edging_names = names.filter(lambda n: n not in EDGING_NAMES_TAKEN)
edge_names = names.filter(lambda n: n not in EDGE_NAMES_TAKEN)
size_names = st.from_regex(r"[0-9A-Za-z]{1,4}([-/.][0-9]{1,2})?", fullmatch=True)
# Everything a text may hold: quotes, backslashes, hashes, new lines, wide letters; no control characters.
texts = st.text(st.one_of(st.sampled_from('"\\#\n ,()'), st.characters(exclude_categories=("C", "Zl", "Zp"))), max_size=30).filter(
    str.strip
)
values = st.one_of(
    st.integers(0, 999_999_999).map(float),
    st.decimals(0, 9999, places=4, allow_nan=False, allow_infinity=False).map(float),
)
counts = st.integers(0, 999)
counted = st.one_of(counts, st.builds(s.Name, names))
numbers = st.builds(s.Number, values, st.one_of(st.none(), st.sampled_from(UNITS)))


def _operations(inner: st.SearchStrategy[s.Expr]) -> st.SearchStrategy[s.Expr]:
    several = st.lists(inner, min_size=1, max_size=3).map(tuple)
    functions = st.one_of(st.sampled_from(("min", "max")), amount_names)
    return st.one_of(
        st.builds(s.Binary, st.sampled_from("+-*/"), inner, inner),
        st.builds(s.Negative, inner),
        st.builds(s.Call, functions, several),
        st.builds(s.Call, st.sampled_from(("round", "round_up", "round_down")), st.tuples(inner, inner)),
        st.builds(s.Regauged, amount_names, inner, names, names),
    )


expressions: st.SearchStrategy[s.Expr] = st.recursive(
    st.one_of(numbers, st.builds(s.Name, amount_names)), _operations, max_leaves=12
)


_some_others = st.lists(st.builds(s.InLanguage, names, texts), min_size=1, max_size=2).map(tuple)
_others = st.lists(st.builds(s.InLanguage, names, texts), max_size=2).map(tuple)
"""What a text is in other languages."""


def _text(*keys: str) -> st.SearchStrategy[s.TextLine]:
    return st.builds(s.TextLine, st.sampled_from(keys), texts, _others)


FRONT = ("designer", "copyright", "edition", "date")
notes = st.builds(s.TextLine, st.just("note"), texts, _others, st.lists(size_names, max_size=3).map(tuple))
photographs = st.builds(s.PhotographLine, texts, texts, _others)


def _maybe(strategy: st.SearchStrategy[object]) -> st.SearchStrategy[object]:
    return st.one_of(st.none(), strategy)


def _body(*kinds: st.SearchStrategy[s.Statement]) -> st.SearchStrategy[tuple[s.Statement, ...]]:
    return st.lists(st.one_of(*kinds), max_size=5).map(tuple)


ways = st.one_of(st.just({}), st.just({"way": "simple"}), counts.map(lambda inset: {"way": "fashioned", "inset": inset}))
inside_places = st.builds(s.InsidePlace, expressions, st.sampled_from(("own", "left", "right", "edge")))
inside = st.lists(inside_places, min_size=1, max_size=3).map(lambda places: {"way": "inside", "places": tuple(places)})
refs = st.lists(st.builds(s.EdgeRef, names, names), min_size=1, max_size=3).map(tuple)

size_rows = st.one_of(
    st.builds(
        s.SizeRow,
        amount_names,
        st.lists(st.one_of(values, values.map(lambda v: -v)), min_size=1, max_size=6).map(tuple),
        _maybe(st.sampled_from(UNITS)),
        to_fit=st.booleans(),
    ),
    st.builds(s.SizeRow, amount_names, values.map(lambda v: (v,)), st.just("cm"), about=texts.filter(bool), others=_others),
    st.builds(
        s.SizeRow,
        amount_names,
        table=names,
        table_row=names,
        to_fit=st.booleans(),
        own=st.lists(st.builds(s.OwnFigure, names.filter(lambda n: n not in SIZE_NAMES_TAKEN), numbers), max_size=3).map(tuple),
    ),
)
tensions = st.from_regex(r"[A-Za-z0-9]{1,3}(\.[0-9]|\.{1,2})?", fullmatch=True)
machine_facts = st.one_of(
    st.builds(
        s.MachineFact,
        st.lists(names, min_size=1, max_size=2).map(" ".join),
        st.lists(numbers, max_size=3).map(tuple),
    ),
    st.builds(s.MachineFact, st.just("plates"), st.just(()), st.lists(tensions, min_size=1, max_size=4).map(tuple)),
    st.builds(
        s.MachineFact,
        st.just("missing"),
        st.just(()),
        st.lists(st.builds("{} {}".format, st.sampled_from("LR"), st.integers(1, 200)), min_size=1, max_size=4).map(tuple),
    ),
)
stripes = st.lists(st.builds(s.StripeRows, counts, names), min_size=1, max_size=4).map(tuple)
stitches = st.one_of(
    st.builds(
        s.Stitch,
        st.just("chart"),
        names,
        tensions,
        chart=names,
        fit=_maybe(st.sampled_from(("whole", "centred", "balanced"))),
        edge=_maybe(counts),
    ),
    st.builds(s.Stitch, st.just("stripes"), st.just(""), tensions, stripes=stripes),
    st.builds(s.Stitch, st.just("stocking stitch"), names, tensions),
    st.builds(s.Stitch, st.just("latched rib"), names, tensions, counts),
)
right_sides = st.builds(s.RightSide, st.sampled_from(("purl", "knit")))
swatches = st.builds(s.Swatch, numbers, numbers, numbers, numbers, _maybe(numbers), _maybe(numbers))
# One visible character that ends no row and begins no text and no comment.
symbols = st.characters(exclude_categories=("C", "M", "Z"), exclude_characters='#|"')
cells = st.lists(symbols, min_size=1, max_size=12).map(tuple)
chart_keys = st.one_of(
    st.builds(s.ChartKey, symbols, st.just("knit"), _maybe(names)),
    st.builds(s.ChartKey, symbols, st.sampled_from(tuple(CELL_KINDS.values()))),
    st.builds(s.ChartKey, symbols, st.just("cross"), cross=counts, over=counts, hung_first=st.sampled_from(("left", "right"))),
)
chart_lines = (
    chart_keys,
    st.builds(s.ChartRow, cells),
    st.builds(s.ChartRepeat, counts, counts),
    st.builds(s.ChartWay, st.sampled_from(("blocks", "floats"))),
)
yarn_counts = st.builds(
    s.YarnCount,
    st.from_regex(r"[0-9]{1,3}(\.[0-9]{1,2})?(/[0-9]{1,3}(\.[0-9]{1,2})?)?", fullmatch=True),
    st.sampled_from(("tex", "dtex", "denier", "Nm", "Ne", "NeK", "lea")),
)
edging_kinds = st.one_of(
    st.sampled_from(("plain", "folded", "picot", "rolled", "facing", "chained")).map(lambda kind: {"kind": kind}),
    st.sampled_from((2, 3)).map(lambda mock: {"kind": "mock rib", "mock": mock}),
)
levels = st.lists(st.builds(s.LevelDef, names, expressions, _maybe(expressions)), min_size=1, max_size=4).map(tuple).map(s.Levels)
starts = st.one_of(
    st.builds(
        s.Start,
        expressions,
        st.sampled_from(("waste", "hand waste", "e-wrap", "chain")),
        _maybe(edging_names),
        most=_maybe(expressions),
    ),
    st.builds(s.Start, expressions, st.just("along"), _maybe(edging_names), refs, _maybe(expressions)),
    st.builds(s.Start, st.none(), st.just("along"), _maybe(edging_names), refs),
    st.builds(s.Start, st.none(), st.sampled_from(("waste", "chain")), from_place=expressions, to_place=expressions),
)
stitch_counts = st.builds(s.Number, counts.map(float), st.sampled_from(STITCH_UNITS))


moving = st.fixed_dictionaries({"begins_moving": st.booleans(), "ends_moving": st.booleans()})


@st.composite
def edges(draw: st.DrawFn) -> s.EdgeLine:
    """One run of an edge, with every path and way."""
    fields: dict[str, object] = dict(draw(st.one_of(ways, inside)))
    path = draw(st.sampled_from(("straight", "slope", "curve", "arch", "steps", "rate")))
    if path == "steps" and draw(st.booleans()):
        fields["in_turn"] = tuple(draw(st.lists(st.builds(s.EqualSteps, expressions, counted), min_size=2, max_size=4)))
    elif path == "steps":
        fields |= {"by": draw(expressions), "times": draw(counted)}
    elif path == "rate":
        fields |= {"by": draw(st.one_of(stitch_counts, stitch_counts.map(s.Negative))), "every": draw(counted)}
    elif path != "straight" and draw(st.booleans()):
        fields["by"] = draw(expressions)
    elif path != "straight":
        fields |= {"width": draw(expressions), "width_most": draw(_maybe(expressions))}
        fields["beside"] = draw(st.sampled_from(("", "own", "left", "right")))
    which = draw(st.sampled_from(("both", "left", "right")))
    fields["at_once"] = draw(st.sampled_from((1, 2)))
    fields["larger"] = draw(st.sampled_from(("", "first", "last")))
    fields |= draw(moving)
    return s.EdgeLine(which, path, draw(names), cast_off=draw(_maybe(expressions)), called=draw(_maybe(edge_names)), **fields)


taken = st.sampled_from(("waste", "cast-off"))
offsets = _maybe(expressions)


@st.composite
def necks(draw: st.DrawFn) -> s.Neck:
    """A neck of every shape."""
    shape = draw(st.sampled_from(("round", "v", "square")))
    fields = draw(ways) | draw(moving)
    return s.Neck(draw(expressions), draw(expressions), shape, draw(_maybe(expressions)), taken=draw(taken), **fields)


@st.composite
def edgings(draw: st.DrawFn) -> s.EdgingLine:
    """An edging of every kind."""
    kind = draw(edging_kinds)
    when, cast_off = draw(st.one_of(st.tuples(st.sampled_from(("after", "first")), names), st.just(("first", "chain"))))
    tensions_of = draw(st.fixed_dictionaries({"fold_tension": _maybe(tensions), "inside_tension": _maybe(tensions)}))
    depth = None if kind["kind"] == "chained" else draw(expressions)
    return s.EdgingLine(draw(edging_names), draw(names), depth, when, cast_off, **kind, **tensions_of)


choices = st.builds(s.ChoiceLine, names, st.lists(names, min_size=1, max_size=4).map(tuple))


def _for(*kinds: st.SearchStrategy[s.Statement]) -> st.SearchStrategy[s.ForBlock]:
    """The lines of an alternative, and of one within it."""
    inner = st.builds(s.ForBlock, names, names, _body(*kinds))
    return st.builds(s.ForBlock, names, names, _body(*kinds, inner))


lines_of_pieces = (
    levels,
    starts,
    edges(),
    st.builds(s.AcrossLine, expressions, names, st.booleans()),
    st.builds(s.OpeningLine, edge_names, expressions, names, names, offsets, taken, _body(edges())),
    necks(),
    st.builds(s.SlotLine, edge_names, expressions, names, offsets, taken),
    st.builds(s.ButtonholesLine, counts, counts, names, names, st.sampled_from(("left", "right")), expressions),
    st.builds(
        s.WedgeLine,
        expressions,
        st.sampled_from(("both", "left", "right")),
        names,
        names,
        st.sampled_from(("in", "out", "both")),
        _maybe(expressions),
        st.booleans(),
    ),
    st.builds(s.Shoulders, names, st.sampled_from(["both", "left", "right"]), st.booleans()),
    st.builds(s.ZoneLine, names, names, names, _maybe(expressions), offsets),
    st.builds(s.ZoneLine, names, names, names, st.none(), offsets, counted),
    st.builds(s.MotifLine, names, names, offsets),
    st.builds(s.NeedlesLine, names, names, counts, worn=_maybe(expressions)),
    st.builds(
        s.NeedlesLine,
        names,
        names,
        places=st.lists(inside_places, min_size=1, max_size=3).map(tuple),
        worn=_maybe(expressions),
    ),
    st.builds(s.RepeatLine, counts, names, names),
    st.builds(s.Without, names),
    st.builds(
        s.Use,
        names,
        st.lists(st.tuples(names, expressions), max_size=3).map(tuple),
        st.sampled_from(("both", "left", "right")),
    ),
    st.builds(s.End, st.sampled_from(("waste", "cast-off", "sewn-off", "gathered"))),
    st.builds(s.End, st.just("edging"), names),
    notes,
)
parities = st.sampled_from(("even", "odd", "either"))
piece_lines = (*lines_of_pieces, _for(*lines_of_pieces))
pieces = st.one_of(
    st.builds(
        s.PieceBlock,
        names,
        names,
        counted,
        _maybe(names),
        _body(*piece_lines),
        parities,
        st.sampled_from(("", "hood")),
    ),
    st.builds(
        s.PieceBlock,
        names,
        st.one_of(st.just(""), names),
        counted,
        st.none(),
        _body(*piece_lines),
        parities,
        st.sampled_from(("", "hood")),
        names,
    ),
)
lets = st.builds(s.Let, amount_names, expressions)
shapes = st.builds(
    s.ShapeBlock, names, st.lists(amount_names, max_size=4).map(tuple), _body(*piece_lines, lets, _for(*lines_of_pieces, lets))
)
bands = st.one_of(
    st.builds(s.BandLine, names, edging_names, refs),
    st.builds(s.BandLine, names, edging_names, refs, counts, counts, expressions, expressions),
    st.builds(s.BandLine, names, edging_names, refs, picked=counts, of_rows=counts.map(lambda n: n + 1)),
    st.builds(s.BandLine, names, edging_names, refs, counts, counts, expressions, expressions, hole_along=refs),
)
joins = st.builds(
    s.JoinLine,
    refs,
    refs,
    _maybe(expressions),
    _maybe(expressions),
    st.sampled_from(("sewn", "grafted", "linked", "gathered", "pleated")),
    st.booleans(),
    of_rows=st.just(4),
    to_stitches=counts,
)
machines = st.builds(s.MachineBlock, names, _body(machine_facts))


places = st.builds(s.PlaceRef, names, _maybe(edge_names))
measured = st.one_of(st.builds(s.Round, names, names, st.booleans()), st.builds(s.Along, places))
for_holes = st.builds(s.ForEachButtonhole, st.lists(names, min_size=1, max_size=3).map(tuple))
needed_amounts = _maybe(st.one_of(expressions, measured, for_holes))
finished_measures = st.builds(
    s.FinishedLine, amount_names, st.one_of(expressions, measured), _maybe(expressions), st.booleans(), _maybe(expressions)
)

_pattern_texts = (_text("summary", "difficulty", "story", *FRONT), notes, photographs)
plain_statements = st.one_of(
    notes,
    choices,
    st.builds(s.UseFrom, st.lists(names, min_size=1, max_size=3).map(tuple), texts),
    st.builds(s.NameLine, names, _some_others),
    st.builds(s.PatternBlock, texts, _body(*_pattern_texts, _for(*_pattern_texts)), _others),
    st.builds(s.Sizes, st.lists(size_names, min_size=1, max_size=6).map(tuple), _body(size_rows)),
    lets,
    machines,
    st.builds(s.YarnLine, names, texts, numbers, numbers, colour=_maybe(texts), others=_others),
    st.builds(s.YarnLine, names, texts, numbers, count=yarn_counts, colour=_maybe(texts)),
    st.builds(s.FabricBlock, names, _body(notes), names, names),
    st.builds(s.FabricBlock, names, _body(stitches, right_sides, swatches, notes)),
    st.builds(s.ChartBlock, names, _body(*chart_lines)),
    edgings(),
    pieces,
    shapes,
    bands,
    joins,
    st.builds(s.CordLine, names, expressions),
    st.builds(s.NeededLine, texts, needed_amounts, _others),
    st.builds(s.YarnLine, names, texts, colour=_maybe(texts), strands=st.lists(names, min_size=2, max_size=3).map(tuple)),
    finished_measures,
    st.builds(s.Through, places, names, st.booleans(), _maybe(expressions), _maybe(expressions)),
    st.builds(s.LapLine, places, places, _maybe(expressions)),
    st.builds(
        s.Require, st.one_of(expressions, measured), st.sampled_from(("<=", ">=", "=", "<", ">")), expressions, _maybe(texts)
    ),
    st.builds(s.Require, expressions, st.sampled_from(("<=", ">=")), expressions, texts, _others),
    st.builds(s.MakingUp, _body(_text("step"), joins, _for(_text("step"), joins))),
)
statements = st.one_of(plain_statements, _for(plain_statements))


def _depths(statements: tuple[s.Statement, ...], depth: int = 0) -> list[tuple[int, bool]]:
    """Of all statements in order: in how many blocks each stands, and whether it opens one."""
    found: list[tuple[int, bool]] = []
    for statement in statements:
        found += [(depth, isinstance(statement, BLOCKS)), *_depths(getattr(statement, "body", ()), depth + 1)]
    return found


@st.composite
def trees(draw: st.DrawFn) -> s.Tree:
    """A source with comments before and beside its statements, each as deep as what it stands among."""
    tree = s.Tree("made.wale", tuple(draw(st.lists(statements, min_size=1, max_size=6))))
    depths = _depths(tree.statements)
    comments: list[s.Comment] = []
    words = st.text(st.characters(exclude_categories=("C", "Zl", "Zp")), max_size=12).map(str.rstrip)
    for number in range(len(depths) + 1):
        least = depths[number][0] if number < len(depths) else 0
        most = max(least, sum(depths[number - 1])) if number else least
        for text in draw(st.lists(words, max_size=2)) if draw(st.booleans()) else ():
            most = draw(st.integers(least, most))
            comments.append(s.Comment(text, number, True, most))
        if number < len(depths) and draw(st.integers(0, 4)) == 0:
            comments.append(s.Comment(draw(words), number, False, depths[number][0]))
    return replace(tree, comments=tuple(comments))
