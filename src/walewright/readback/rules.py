"""What the rules of a printed grammar become: phrases of their names, repeats, and the seams of a join."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, cast

from lark import Tree

from walewright.knit.operations import NEXT_COPY
from walewright.readback.phrases import (
    ReadCounts,
    ReadEased,
    ReadEvents,
    ReadForSome,
    ReadGraded,
    ReadPhrase,
    ReadRepeat,
    ReadRows,
    ReadRowsBySize,
    ReadRun,
    ReadSaid,
    ReadStages,
    ReadStrips,
    ReadTrack,
    SeamEdgesRead,
    SeamRead,
    Several,
)
from walewright.readback.tokens import ReadTokens

_UNTOLD = ReadGraded((None,))
"""What no size is told."""


def on_the_way(what: str) -> Callable[[Any, list[Any]], ReadPhrase]:
    """What makes a phrase of the children of a rule that tells at which rows something is done."""
    return lambda _, children: ReadPhrase("on_the_way", (ReadEvents(what, tuple(children)),))


def _ends_first(children: list[Any]) -> tuple[Any, ...]:
    """How many stitches are shaped, at which ends, which is said behind the needles, on which needles, and how many move at a
    time."""
    count, *rest = children
    (ends,) = (c for c in rest if isinstance(c, str))
    return (count, ends, *(c for c in rest if c is not ends))


class ReadRules(ReadTokens):
    """Reads the words of a grammar; each rule becomes a `ReadPhrase` of its name."""

    def __default__(self, data: Any, children: list[Any], meta: Any) -> ReadPhrase | Tree[Any]:
        # Rules with an underscore only put others together: the parser takes their trees apart again.
        if data.startswith("_"):
            return Tree(data, children, meta)
        apart = ((c.arguments if isinstance(c, Several) else (c,)) for c in children)
        arguments = tuple(argument for told in apart for argument in told)
        order = self._language.order.get(str(data))
        return ReadPhrase(str(data), tuple(arguments[at] for at in order if at < len(arguments)) if order else arguments)

    def start(self, children: list[Any]) -> tuple[ReadSaid, ...]:
        return tuple(children)

    def loop(self, children: list[Any]) -> ReadRepeat:
        return ReadRepeat(tuple(children[:-1]), children[-1])

    def row(self, children: list[Any]) -> ReadRepeat | ReadRun:
        if isinstance(children[0], ReadPhrase) and children[0].kind == "at_run":
            run, *told, stands = children
            ways = tuple(one for one in told if isinstance(one, ReadPhrase) and one.kind == "on_the_way")
            first, every, last, *side = run.arguments
            numbers = first, every, last
            return ReadRun(numbers, tuple(one for one in told if one not in ways), ways, stands, tuple(side))
        at, told = children[0], children[1:]
        if isinstance(at, ReadGraded):
            at, told = ReadPhrase("at", (at, children[1])), children[2:]
        # A size whose counter value is a dash has nothing to do in the whole row.
        times = ReadGraded(tuple(None if r is None else 1 for r in at.arguments[0].readings))
        return ReadRepeat((at, *told), times)

    def bench_row(self, children: list[Any]) -> ReadPhrase:
        told = children
        if isinstance(told[0], ReadGraded):
            counter, side, *rest = told
            told = [ReadPhrase("bench_counter", (counter,)), ReadPhrase("bench_side", (side,)), *rest]
        return ReadPhrase("bench_row", tuple(told))

    def track(self, children: list[Any]) -> ReadTrack:
        title, *body = children
        at = body.pop(0) if isinstance(body[0], ReadRows | ReadRowsBySize) else None
        return ReadTrack(title, tuple(body), at)

    def repeat(self, children: list[Any]) -> ReadRepeat:
        return ReadRepeat(tuple(children), ReadGraded((1,)))

    crossing, moving, dropping, holding = map(on_the_way, ("cross", "move", "drop", "hold"))
    latching, changing, again_from_row_1 = map(on_the_way, ("latch", "change", "again"))

    def columns_latched(self, children: list[Any]) -> ReadPhrase:
        """The needles, where they are named, and the rows."""
        needles = tuple(c for c in children if isinstance(c, ReadGraded))
        events = ReadEvents("columns", tuple(c for c in children if not isinstance(c, ReadGraded)))
        return ReadPhrase("on_the_way", (events, ReadRows(needles)) if needles else (events,))

    def every(self, children: list[Any]) -> Any:
        return tuple(children)

    def stage_rows(self, children: list[Any]) -> ReadStages:
        return ReadStages(children[0], tuple(children[1:]))

    def decrease_on(self, children: list[Any]) -> ReadPhrase:
        return ReadPhrase("decrease_on", _ends_first(children))

    def increase_beside(self, children: list[Any]) -> ReadPhrase:
        return ReadPhrase("increase_beside", _ends_first(children))

    def for_some(self, children: list[Any]) -> ReadForSome:
        sizes, *body = children
        return ReadForSome(tuple(body), sizes)

    def span(self, children: list[Any]) -> Several:
        return Several((children[0], children[-1]))

    on_needles = span

    def spread_evenly(self, children: list[Any]) -> ReadPhrase:
        first, last, stitches, *rounds = children
        told = tuple(
            n for one in rounds for n in (one.arguments if isinstance(one, Several) else (one,)) if isinstance(n, ReadGraded)
        )
        return ReadPhrase("spread_evenly", (first, last, stitches, ReadCounts(told)))

    def round(self, children: list[Any]) -> Several:
        singles, changed, *times = children
        return Several((singles, changed, *(times or [ReadGraded((1,))])))

    def round_of_one(self, children: list[Any]) -> Several:
        return self.round([ReadGraded((1,)), *children])

    def round_changed(self, children: list[Any]) -> Several:
        return self.round([ReadGraded((0,)), *children])

    def columns_up(self, children: list[Any]) -> ReadPhrase:
        return ReadPhrase("columns_up", (ReadRows(tuple(children)),))

    def latch_panel(self, children: list[Any]) -> ReadPhrase:
        *needles, rows = children
        return ReadPhrase("latch_panel", (ReadRows(tuple(needles)), rows))

    def latch_every_of_panel(self, children: list[Any]) -> ReadPhrase:
        return ReadPhrase("latch_panel", tuple(children))

    def latch_panel_in_stages(self, children: list[Any]) -> ReadPhrase:
        needles = [c for c in children if isinstance(c, ReadGraded)]
        return ReadPhrase("latch_panel_in_stages", (ReadRows(tuple(needles)), *children[len(needles) :]))

    def latch_every_of_panel_in_stages(self, children: list[Any]) -> ReadPhrase:
        return ReadPhrase("latch_panel_in_stages", tuple(children))

    def edge_told(self, children: list[Any]) -> Several:
        """The part comes before the piece, where one is named."""
        names = sum(isinstance(c, str) for c in children)
        return Several(tuple(children) if names > 2 else ("whole", *children))

    def again_along(self, children: list[Any]) -> ReadPhrase:
        """Each edge by itself, as many as there are lines that hang one."""
        edges = (ReadPhrase("edge_told", c.arguments) if isinstance(c, Several) else c for c in children)
        return ReadPhrase("again_along", tuple(edges))

    def shoulder_told(self, children: list[Any]) -> Several:
        return Several((*children, "shoulder"))

    def row_told(self, children: list[Any]) -> Several:
        row, *piece = children
        return Several(("whole", *piece, row))

    def upper_told(self, children: list[Any]) -> Several:
        opening, *piece = children
        return Several(("whole", *piece, f"{opening} upper"))

    def use_yarn_step(self, children: list[Any]) -> ReadPhrase:
        if children[-1] == "threaded":
            fabric = next((str(c.arguments[0]) for c in children if isinstance(c, Several)), "")
            return ReadPhrase("use_yarn_step", ("", children[0], fabric))
        yarn, tension, *rest = children
        if not rest:
            return ReadPhrase("use_yarn_step", (yarn, tension))
        said = next((c.arguments[0] for c in rest if isinstance(c, Several)), "")
        return ReadPhrase("use_yarn_step", (yarn, tension, said, next((c for c in rest if isinstance(c, str)), "")))

    def use_looser(self, children: list[Any]) -> ReadPhrase:
        told = ["", *children[:-1]] if children[-1] == "threaded" else children
        return ReadPhrase("use_looser", tuple(told))

    def start_chart(self, children: list[Any]) -> ReadPhrase:
        # A motif is no fabric of its own.
        *fabric, chart, area, start = children
        return ReadPhrase("start_chart", (chart, *(fabric or [""]), *area.arguments, start))

    def on_all(self, children: list[Any]) -> Several:
        """Nothing is said without plain stitches at the ends."""
        *edge, first, last = children
        return Several(("whole", first, last, *(edge or [ReadGraded((0,))])))

    def on_panel(self, children: list[Any]) -> Several:
        """On one needle it is the first and the last."""
        needles = [c for c in children if isinstance(c, ReadGraded)]
        edge = [n for c in children if isinstance(c, Several) for n in c.arguments]
        return Several(("panel", needles[0], needles[-1], *(edge or [ReadGraded((0,))])))

    def start_stripes(self, children: list[Any]) -> ReadPhrase:
        fabric, tension, *rest = children
        carried = rest.pop() if isinstance(rest[-1], Several) else Several(())
        return ReadPhrase("start_stripes", (fabric, tension, tuple(rest), tuple(str(c) for c in carried.arguments)))

    def stripe(self, children: list[Any]) -> tuple[str, int]:
        rows, yarn = children
        return yarn, rows

    def carried(self, children: list[Any]) -> Several:
        return Several(tuple(children))

    def chart_line(self, children: list[Any]) -> ReadPhrase:
        return cast(ReadPhrase, children[0])

    meaning = chart_line

    def kept(self, children: list[Any]) -> str:
        return str(children[0])

    def columns(self, children: list[Any]) -> tuple[int, int]:
        return children[0], children[-1]

    rows = columns

    def stretched(self, children: list[Any]) -> ReadGraded:
        return ReadGraded(tuple(None if r is None else -r for r in children[0].readings))

    def row_for_row(self, children: list[Any]) -> Several:
        return Several((children[0], ReadGraded((0,)), ReadGraded((0,))))

    def in_ratio(self, children: list[Any]) -> Several:
        return Several(tuple(children))

    def lengths(self, children: list[Any]) -> Several:
        return Several((ReadGraded((0,)), *children))

    def join_edges(self, children: list[Any]) -> ReadPhrase:
        way, *told = children
        seams = tuple(seam for c in told if isinstance(c, tuple | list) for seam in (c if isinstance(c, list) else (c,)))
        over = next((c for c in told if isinstance(c, ReadStrips)), ReadStrips((), ()))
        numbers = [several.arguments for several in told if isinstance(several, Several)]
        matched = next((n for n in numbers if len(n) == 3), (ReadGraded((0,)),) * 3)
        phrases = {c.kind: c.arguments for c in told if isinstance(c, ReadPhrase)}
        reached = (over.reached[1], _UNTOLD, _UNTOLD, over.reached[0]) if over.reached else ()
        eased = next((c for c in told if isinstance(c, ReadEased)), ReadEased(reached))
        turn = next((n for n in numbers if isinstance(n[0], str)), ("", ReadGraded((0,))))
        ratio = next((n for n in numbers if len(n) == 2 and not isinstance(n[0], str)), ())
        first_row, hung = (next((c for c in told if c == word), "") for word in ("start", "at tail"))
        new_cm, tails = phrases.get("thread", (ReadGraded((0,)), ()))
        chained = phrases.get("chained", (ReadGraded((0,)),) * 2)
        return ReadPhrase(
            "join_edges", (way, seams, over, *turn, *matched, eased, *ratio, first_row, hung, new_cm, tails, *chained)
        )

    def chained(self, children: list[Any]) -> ReadPhrase:
        """How many of both sides; of edges that have as many, the number is said once."""
        numbers = [c for c in children if isinstance(c, ReadGraded)]
        return ReadPhrase("chained", (numbers[0], numbers[-1]))

    def thread(self, children: list[Any]) -> ReadPhrase:
        """How long a new length is, and whose tails are named."""
        new_cm = next((c for c in children if isinstance(c, ReadGraded)), ReadGraded((0,)))
        return ReadPhrase("thread", (new_cm, tuple(c for c in children if isinstance(c, tuple))))

    def tail_of(self, children: list[Any]) -> tuple[str, str]:
        owner, *edging = children
        return owner, edging[0] if edging else ""

    def ratio(self, children: list[Any]) -> Several:
        return Several(("about", *children))

    def stretch_of_rows(self, children: list[Any]) -> Several:
        return Several(tuple(children))

    turn = stretch_of_rows

    def stretch_of_stitches(self, children: list[Any]) -> Several:
        first, last = children
        return Several((ReadGraded(tuple(None if r is None else r - 1 for r in first.readings)), last))

    def seam(self, children: list[Any]) -> SeamRead:
        """Where nothing is said of it, a side begins at the bottom of its rows. "The next one" is another copy of the piece named
        before it."""
        (one, begin), (other, beside) = children
        there = tuple((piece or one[-1][0], edge, copy) for piece, edge, copy in other)
        return one, there, (begin or "bottom", beside or "bottom")

    def own_seam(self, children: list[Any]) -> SeamRead:
        """Two edges of one piece."""
        (one, begin), edge, *beside = children
        piece, _, copy = one[-1]
        return one, ((piece, edge, copy),), (begin or "bottom", beside[0] if beside else "bottom")

    def same_row(self, children: list[Any]) -> SeamRead:
        """Two parts of one row, which is named with the first of them."""
        (one, begin), half, *beside = children
        piece, edge, copy = one[-1]
        return one, ((piece, f"{edge.rpartition(' ')[0]} {half}", copy),), (begin or "bottom", beside[0] if beside else "bottom")

    def closed_seam(self, children: list[Any]) -> SeamRead:
        told = children[0] if isinstance(children[0], list) else children[0][0]
        return tuple(told), (), ("", "")

    def seams_of_copies(self, children: list[Any]) -> list[SeamRead]:
        """The same edges of one copy after the other."""
        (edges, begin), *others = children
        return [
            (tuple((piece, edge, copy) for piece, edge, _ in edges), other, (begin or "bottom", beside or "bottom"))
            for copy, (other, beside) in others
        ]

    def copy_seam(self, children: list[Any]) -> tuple[int, tuple[SeamEdgesRead, str]]:
        copy, side = children
        return copy, side

    def side(self, children: list[Any]) -> tuple[SeamEdgesRead, str]:
        edges: list[tuple[str, str, int]] = []
        told = (c if isinstance(c, list) else [c] for c in children if isinstance(c, tuple | list))
        for piece, name, copy in (edge for some in told for edge in some):
            edges.append((piece, name, copy) if piece or not edges else (edges[-1][0], name, edges[-1][2]))
        return tuple(edges), next((c for c in children if isinstance(c, str)), "")

    def edges(self, children: list[Any]) -> list[tuple[str, str, int]]:
        """Edges of one piece, or of one of its copies."""
        *names, (piece, copy) = children
        return [(piece, name, copy) for name in names]

    def owner(self, children: list[Any]) -> tuple[str, int]:
        """A piece, and which of its copies; of the next one, whichever it is, its name was said before."""
        return next((c for c in children if isinstance(c, str)), ""), next((c for c in children if isinstance(c, int)), 0)

    def edge_words(self, children: list[Any]) -> str:
        """The last word is the edge; each word before it says which part of what follows."""
        *parts, row = children
        return " ".join(("shoulder" if row == "end" and parts else row, *reversed(parts)))

    def strips(self, children: list[Any]) -> ReadStrips:
        strips = [c for c in children if isinstance(c, tuple)]
        reached = next((c for c in children if isinstance(c, list)), [])
        return ReadStrips(tuple(name for name, _ in strips), tuple(rows for _, rows in strips), tuple(reached))

    def reached(self, children: list[Any]) -> list[Any]:
        """How long the strips are, give or take how much."""
        return children

    def strip(self, children: list[Any]) -> tuple[tuple[str, str], ReadGraded]:
        rows, owner, *edging = children
        return (owner, edging[0] if edging else ""), rows

    def eased(self, children: list[Any]) -> ReadEased:
        sides: dict[str, Any] = {c.kind: c.arguments[0] for c in children if isinstance(c, ReadPhrase)}
        if sides:
            return ReadEased((sides.get("first", _UNTOLD), _UNTOLD, sides.get("second", _UNTOLD)))
        longer, easing = children
        return ReadEased((easing, longer))

    def first_eased(self, children: list[Any]) -> ReadPhrase:
        return ReadPhrase("first", tuple(children))

    def second_eased(self, children: list[Any]) -> ReadPhrase:
        return ReadPhrase("second", tuple(children))

    second_too = second_eased

    def edge(self, children: list[Any]) -> tuple[str, str, int]:
        piece, *copy, name = children
        return piece, name, copy[0] if copy else 0

    def next_edge(self, children: list[Any]) -> tuple[str, str, int]:
        """Of the next copy of the piece named before it."""
        return "", children[0], NEXT_COPY

    def same_piece(self, children: list[Any]) -> tuple[str, str, int]:
        return "", children[0], 0

    def edge_name(self, children: list[Any]) -> str:
        """A part of the last row is what is called so beside an opening that goes up to it."""
        row, *part = children
        return " ".join(("shoulder" if row == "end" and part else row, *part))
