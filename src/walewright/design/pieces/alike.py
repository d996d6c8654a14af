"""Pieces like others: `like` replaced by the model's statements with those of the piece's own block in their places.

A statement of the block takes the place of the model's that says the same thing: the start, the levels, the neck, a run of an edge
to the same level, an opening or a slot of the same name. What has no counterpart is added, and `without` leaves one out. What comes
of the model has a `Used` span: messages point at the piece that is like it, and then at the statement in the model.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, fields
from typing import Any

from walewright.design.findings import Findings, Used
from walewright.record import replace
from walewright.report.model import Severity, Span
from walewright.report.said import said
from walewright.source import syntax
from walewright.trade.sides import EdgeSide, WhichEdges

SIDES: Mapping[WhichEdges, frozenset[EdgeSide]] = {
    "both": frozenset(("left", "right")),
    "left": frozenset(("left",)),
    "right": frozenset(("right",)),
}

KEYS: Mapping[type, tuple[str, ...]] = {
    syntax.Start: (),
    syntax.Levels: (),
    syntax.End: (),
    syntax.Shoulders: (),
    syntax.AcrossLine: ("level",),
    syntax.OpeningLine: ("name",),
    syntax.SlotLine: ("name",),
    syntax.ButtonholesLine: ("edge",),
    syntax.WedgeLine: ("edge", "from_level"),
    syntax.ZoneLine: ("fabric", "from_level"),
    syntax.MotifLine: ("chart", "level"),
    syntax.RepeatLine: ("from_level", "to_level"),
    syntax.NeedlesLine: ("from_level",),
    syntax.Use: ("name", "edge"),
}
"""Fields by which a statement is the same thing as another of its kind. Runs of edges go by level and side."""

LEFT_OUT: Mapping[type, str] = {
    syntax.OpeningLine: "name",
    syntax.SlotLine: "name",
    syntax.MotifLine: "chart",
    syntax.ZoneLine: "fabric",
    syntax.Use: "name",
}
"""Statements that `without` leaves out by a name in them."""
LEFT_OUT_BY_KIND: Mapping[type, str] = {
    syntax.Neck: "neck",
    syntax.Shoulders: "shoulders",
    syntax.ButtonholesLine: "buttonholes",
    syntax.WedgeLine: "wedges",
    syntax.NeedlesLine: "needles",
}
"""Statements that `without` leaves out by what they are."""

Body = tuple[syntax.Statement, ...]


def written_out(tree: syntax.Tree, findings: Findings) -> syntax.Tree:
    """The tree with every piece that is `like` another written out, and its fabric and centre stitch with it."""
    if not any(isinstance(s, syntax.PieceBlock) and (s.like is not None or _leaves_out(s.body)) for s in tree.statements):
        return tree
    writer = _Writer({s.name: s for s in reversed(tree.statements) if isinstance(s, syntax.PieceBlock)}, findings)
    statements = tuple(writer.written(s) if isinstance(s, syntax.PieceBlock) else s for s in tree.statements)
    return replace(tree, statements=statements)


def _leaves_out(body: Body) -> bool:
    return any(isinstance(s, syntax.Without) for s in body)


@dataclass(slots=True)
class _Writer:
    nodes: Mapping[str, syntax.PieceBlock]
    findings: Findings

    def written(self, piece: syntax.PieceBlock) -> syntax.PieceBlock:
        """A piece as if it had been written without a model."""
        if piece.like is None:
            # A mirror image that leaves something out is merged when its model has been turned over.
            return piece if piece.mirror_of is not None else replace(piece, body=self._nothing_to_leave_out(piece.body))
        model = self.findings.look_up("piece", piece.like, piece.span, self.nodes)
        if model is None:
            # As for a line that cannot be read: what the piece lacks without its model is not reported as well.
            return replace(piece, like=None, fabric=piece.fabric or _a_fabric(self.nodes), body=(*piece.body, _lost(piece)))
        chain = self._chain(piece)
        if chain is None:
            return replace(piece, like=None, fabric=piece.fabric or _a_fabric(self.nodes), body=(_lost(piece),))
        whole = self.written(model)
        body = piece.body if whole.mirror_of is not None else merged(copied(whole, piece), piece, whole.name, self.findings)
        return replace(
            piece,
            like=None,
            fabric=piece.fabric or whole.fabric,
            parity=whole.parity if piece.parity == "even" else piece.parity,
            purpose=piece.purpose or whole.purpose,
            mirror_of=whole.mirror_of,
            body=body,
        )

    def _chain(self, piece: syntax.PieceBlock) -> tuple[str, ...] | None:
        """The models of a piece, up to one that is like no other; None, and reported at one of them, where there is no such."""
        names = [piece.name]
        while (node := self.nodes[names[-1]]).like in self.nodes and node.like is not None:
            if node.like in names:
                ring = names[names.index(node.like) :]
                if piece.name == min(ring):
                    self.findings.report("like-ring", (piece.span, "like"), helps=("in-full",), ring=tuple(ring), piece=piece.name)
                return None
            names.append(node.like)
        return tuple(names)

    def _nothing_to_leave_out(self, body: Body) -> Body:
        for statement in body:
            if isinstance(statement, syntax.Without):
                self.findings.report("without-model", (statement.span, "no-model"), helps=("delete",))
        return tuple(s for s in body if not isinstance(s, syntax.Without))


def _lost(piece: syntax.PieceBlock) -> syntax.Broken:
    return syntax.Broken("", span=piece.span)


def _a_fabric(nodes: Mapping[str, syntax.PieceBlock]) -> str:
    """Any fabric of the source's pieces: what stands for that of a model that is not there is not reported as unknown."""
    return next((n.fabric for n in nodes.values() if n.fabric), "")


def copied(model: syntax.PieceBlock, piece: syntax.PieceBlock) -> Body:
    """The statements of the model but its notes, each with the place of the piece that has them too."""
    at = piece.span

    def mark(span: Span) -> Span:
        inner, name = (span.shape, span.name) if isinstance(span, Used) else (span, "")
        return Used(at.file, at.start, at.end, inner, name, model.name)

    return tuple(marked(s, mark) for s in model.body if not isinstance(s, syntax.TextLine))


def marked(node: Any, mark: Callable[[Span], Span]) -> Any:
    """The node with its spans, and those of all that stands in it, marked."""
    if isinstance(node, tuple):
        return tuple(marked(n, mark) for n in node)
    if not isinstance(node, syntax.Node):
        return node
    changed: dict[str, Any] = {"span": mark(node.span), "said": tuple((name, mark(span)) for name, span in node.said)}
    for field in fields(node):
        value = getattr(node, field.name)
        if field.name not in changed and isinstance(value, syntax.Node | tuple):
            changed[field.name] = marked(value, mark)
    return replace(node, **changed)


def merged(shared: Body, piece: syntax.PieceBlock, model: str, findings: Findings) -> Body:
    """The model's statements with the piece's own in their places; `piece` is the piece as written."""
    own = [s for s in piece.body if not isinstance(s, syntax.Without)]
    left_out = _left_out(shared, piece, model, findings)
    body = [s for s in shared if not any(_names(w, s) for w in left_out)]
    made = _Merging(body, _levels(own) or _levels(body), findings, model)
    runs = [s for s in own if isinstance(s, syntax.EdgeLine)]
    made.give_way(runs)
    for statement in own:
        if isinstance(statement, syntax.EdgeLine):
            made.put_run(statement)
        else:
            made.put(statement)
    return tuple(s for s in made.body if s is not None)


def _left_out(shared: Body, piece: syntax.PieceBlock, model: str, findings: Findings) -> tuple[str, ...]:
    """What the piece leaves out; reported where its model has no such thing, or the piece says it anew."""
    there = dict.fromkeys(name for s in shared for name in _names_of(s))
    own = {name for s in piece.body for name in _names_of(s)}
    found = []
    for statement in piece.body:
        if not isinstance(statement, syntax.Without):
            continue
        if statement.part not in there:
            findings.unknown(said("part-of", piece=model), statement.part, statement.span, there)
        elif statement.part in own:
            why = said("written-anew", what=statement.part)
            findings.report("without-effect", (statement.span, "here"), helps=("leave-out",), why=why)
        else:
            found.append(statement.part)
    return tuple(found)


def _names_of(statement: syntax.Statement) -> Iterator[str]:
    """The names by which a statement can be left out."""
    if (kind := LEFT_OUT_BY_KIND.get(type(statement))) is not None:
        yield kind
    elif (field := LEFT_OUT.get(type(statement))) is not None:
        yield getattr(statement, field)


def _names(name: str, statement: syntax.Statement) -> bool:
    return name in _names_of(statement)


def _levels(body: Sequence[syntax.Statement]) -> tuple[str, ...]:
    return next((tuple(level.name for level in s.levels) for s in body if isinstance(s, syntax.Levels)), ())


def _key(statement: syntax.Statement) -> tuple[object, ...] | None:
    """What makes a statement the same thing as another; None for what stands beside all others."""
    if isinstance(statement, syntax.Neck):
        # A neck is an opening of that name, written in short.
        return (syntax.OpeningLine, "neck")
    names = KEYS.get(type(statement))
    return None if names is None else (type(statement), *(getattr(statement, n) for n in names))


class _Merging:
    """A model's statements, in which those of a piece take their places one by one. None: given up, for one still to come."""

    def __init__(self, body: list[syntax.Statement], levels: tuple[str, ...], findings: Findings, model: str) -> None:
        self.body: list[syntax.Statement | None] = list(body)
        self.levels = {name: index for index, name in enumerate(levels)}
        self.findings = findings
        self.model = model
        self.places: dict[str, int] = {}
        self.replaced: list[syntax.EdgeLine] = []
        self.taken: set[int] = set()
        self.halved: set[str] = set()

    def put(self, statement: syntax.Statement) -> None:
        """A statement in the place of the model's, or behind all others."""
        key = _key(statement)
        at = next((i for i, s in enumerate(self.body) if i not in self.taken and s is not None and key and _key(s) == key), None)
        if at is None:
            self.body.append(statement)
            self.taken.add(len(self.body) - 1)
            return
        if self.body[at] == statement:
            self._same(statement)
        self.body[at] = statement
        self.taken.add(at)

    def give_way(self, runs: Sequence[syntax.EdgeLine]) -> None:
        """The model's runs to the levels that the piece's own runs lead to go, on the same sides."""
        own: dict[str, set[str]] = {}
        for run in runs:
            own.setdefault(run.to_level, set()).update(SIDES[run.which])
        for index, statement in enumerate(self.body):
            if not isinstance(statement, syntax.EdgeLine):
                continue
            sides = SIDES[statement.which]
            staying = sides - own.get(statement.to_level, set())
            if staying == sides:
                continue
            if staying and statement.width is not None:
                # The model's run stays, so that what follows from a missing one is not reported as well.
                self._half(statement, next(r for r in runs if r.to_level == statement.to_level))
                self.halved.add(statement.to_level)
                continue
            self.places.setdefault(statement.to_level, index)
            self.body[index] = replace(statement, which=next(iter(staying))) if staying else None
            if not staying:
                self.replaced.append(statement)

    def put_run(self, run: syntax.EdgeLine) -> None:
        """A run in the place of the model's to the same level, else below the first that leads higher."""
        if run.to_level in self.halved:
            return
        if any(r == run for r in self.replaced):
            self._same(run)
        at = self.places.get(run.to_level)
        if at is None:
            height = self.levels.get(run.to_level, len(self.levels))
            at = next((i for i, s in enumerate(self.body) if self._height(s) > height), len(self.body))
        else:
            # Behind those that have come to stand there before.
            at += 1
        self.body.insert(at, run)
        self.places = {level: place + (place >= at) for level, place in self.places.items()}
        self.places[run.to_level] = at
        self.taken = {place + (place >= at) for place in self.taken}

    def _height(self, statement: syntax.Statement | None) -> int:
        """Where a run leads or loops are hung back, as the number of a level; -1 for what stands beside the edges."""
        if isinstance(statement, syntax.EdgeLine):
            return self.levels.get(statement.to_level, -1)
        return self.levels.get(statement.level, -1) if isinstance(statement, syntax.AcrossLine) else -1

    def _same(self, statement: syntax.Statement) -> None:
        self.findings.report(
            "same-as-model", (statement.span, "again"), helps=("leave-out",), model=self.model, severity=Severity.WARNING
        )

    def _half(self, run: syntax.EdgeLine, own: syntax.EdgeLine) -> None:
        self.findings.report(
            "like-half-edge", (own.span, "one"), (run.span, "both"), helps=("other-edge",), level=run.to_level, model=self.model
        )
