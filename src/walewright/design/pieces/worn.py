"""What is said of a garment as it is worn: finished measurements, what passes through its openings, what laps over what."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from typing import Literal

from walewright.design.findings import Findings
from walewright.design.model import Finished, Lap, Measured, Origin, Passage, PerSize, Piece
from walewright.design.pieces.names import EdgesOfPieces
from walewright.design.reading.places import POSITIVE, AmountPlace
from walewright.design.reading.requirements import spoken
from walewright.design.reading.units import LENGTH, NUMBER
from walewright.design.reading.values import Scope, words
from walewright.record import record
from walewright.report.model import Span
from walewright.report.said import Said, said
from walewright.source import syntax
from walewright.trade.worn import BODY_PARTS

"""What is put through the openings of garments."""


def stated(nodes: Sequence[syntax.FinishedLine]) -> Iterator[syntax.Let]:
    """Finished measurements that are worked out are names like any other."""
    for node in nodes:
        if not isinstance(node.amount, syntax.Round | syntax.Along):
            yield syntax.Let(node.name, node.amount, span=node.span)


@record
class Worn:
    pieces: Mapping[str, Piece | None]
    bands: Collection[str]
    known: EdgesOfPieces
    scope: Scope
    findings: Findings

    def finished(self, node: syntax.FinishedLine) -> Finished | None:
        values: PerSize | None = ()
        measured = self.measured(node.amount)
        if not isinstance(node.amount, syntax.Round | syntax.Along):
            values = self._length(node.amount, said("quoted", name=node.name))
        elif measured is None:
            return None
        body = self._length(node.fits, said("what-it-fits", name=node.name)) if node.fits is not None else ()
        wanted = self._length(node.wanted, said("quoted", name=node.name)) if node.wanted is not None else ()
        if values is None or body is None or wanted is None:
            return None
        fits = words(node.fits) if node.fits is not None else ""
        return Finished(
            name=node.name,
            values=values,
            measured=measured,
            fits=fits,
            body=body,
            stretches=node.stretches,
            origin=Origin(f"finished {node.name}", node.span),
            wanted=wanted,
        )

    def measured(self, amount: syntax.Expr | syntax.ToMeasure) -> Measured | None:
        """What is to be measured on the garment; None for an expression, and for what is not there (told)."""
        if isinstance(amount, syntax.Along):
            at = self._place(amount.place)
            if at is not None and not at[1] and at[0] not in self.bands:
                self.findings.report(
                    "no-such-edge/piece-alone", (amount.span, "edge"), helps=("name-an-edge",), measured=spoken(amount)
                )
                return None
            return Measured("along", *at) if at is not None else None
        if not isinstance(amount, syntax.Round):
            return None
        piece = self.findings.look_up("piece", amount.piece, amount.span, self.pieces)
        if piece is None:
            return None
        edges = self.known.get(amount.piece) or {}
        levels = [level.name for level in piece.levels]
        if amount.level in levels:
            kind: Literal["round level", "across level"] = "across level" if amount.across else "round level"
            return Measured(kind, amount.piece, amount.level)
        if amount.level in edges and not amount.across:
            return Measured("round edge", amount.piece, edges[amount.level])
        self.findings.unknown(said("level-of", piece=amount.piece), amount.level, amount.span, levels)
        return None

    def passage(self, node: syntax.Through) -> Passage | None:
        at = self._place(node.place)
        if node.part not in BODY_PARTS:
            self.findings.unknown("part of the body", node.part, node.span, BODY_PARTS)
            return None
        figure = self._length(node.figure, said("the-part", part=node.part)) if node.figure is not None else ()
        share = self._share(node.share) if node.share is not None else ()
        if at is None or figure is None or share is None:
            return None
        origin = Origin(f"through {at[0]} {at[1]}".rstrip(), node.span)
        return Passage(owner=at[0], edge=at[1], part=node.part, never=node.never, figure=figure, share=share, origin=origin)

    def lap(self, node: syntax.LapLine) -> Lap | None:
        over, under = self._place(node.over), self._place(node.under)
        width = self._length(node.width, said("a-lap")) if node.width is not None else ()
        if over is None or under is None or width is None:
            return None
        return Lap(over, under, width, Origin(f"lap {over[0]} over {under[0]}", node.span))

    def _place(self, node: syntax.PlaceRef) -> tuple[str, str] | None:
        """(band, ""), (piece, "") or (piece, edge)."""
        if node.edge is None and (node.owner in self.bands or node.owner in self.pieces):
            return node.owner, ""
        if node.edge is None or node.owner not in self.known:
            known = {**dict.fromkeys(self.bands), **dict.fromkeys(self.pieces)}
            self.findings.unknown("piece or band", node.owner, node.span, known)
            return None
        names = self.known[node.owner]
        if names is None:
            return None
        if node.edge not in names:
            self.findings.unknown(said("edge-of-piece", piece=node.owner), node.edge, node.span, names, code="no-such-edge")
            return None
        return node.owner, names[node.edge]

    def _length(self, expression: syntax.Expr, what: Said) -> PerSize | None:
        return AmountPlace(self.scope, self.findings, None, in_fabric=False).across(expression, what, POSITIVE)

    def _share(self, expression: syntax.Expr) -> PerSize | None:
        value = self.scope.value(expression)
        if value is None:
            return None
        if value.dimension != NUMBER or min(value.amounts) < 1:
            place: Span = value.span
            label = "length" if value.dimension == LENGTH else "less"
            self.findings.report("bad-stretch", (place, label), helps=("write",))
            return None
        return value.amounts
