"""Why an operation cannot be done, as data: a kind and its facts. The words are the report's, under `bed/`."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Literal

from walewright.knit.operations import HungPart
from walewright.record import record
from walewright.report.said import Fact, Said, said

Purpose = Literal[
    "be-cast-off",
    "be-cast-on",
    "be-chained-off",
    "be-crossed",
    "be-drawn-through",
    "be-filled",
    "be-gathered",
    "be-held",
    "be-hung-back",
    "be-knitted-off",
    "be-latched-up",
    "be-lifted-off",
    "be-moved-over",
    "be-pushed-back",
    "be-sewn-off",
    "pick-up",
    "run-down",
    "take-a-foot",
    "take-a-linked-stitch",
    "take-a-loop",
    "wait-on-cord",
]
"""What a needle has to be in some state for."""

YarnFor = Literal["cast-off", "cast-on", "row", "wrap"]
"""What takes yarn."""

OverLoops = Literal["cast-on-over-loops", "fill-over-loop", "pick-up-over-loops", "rehang-over-loops"]
"""What new loops would be hung over."""

Empty = Literal["cast-off-empty", "close-empty", "gather-empty", "sew-off-empty", "waste-empty/no-loop"]
"""What a needle without a loop is left out of."""


@record
class Refusal:
    """Why an operation cannot be done; the block's loop makes a Fault of it. `case` tells the messages of one code apart."""

    code: str
    case: str
    facts: tuple[tuple[str, Fact], ...] = ()


def refused(kind: str, /, **facts: Fact) -> Refusal:
    """A refusal of a kind: its code, or code/case where the code has several messages."""
    code, _, case = kind.partition("/")
    return Refusal(code, case, tuple(facts.items()))


def purpose_of(purpose: Purpose) -> Said:
    """What the needle is wanted for."""
    return said(f"bed/to/{purpose}")


def slot_of(slot: int) -> Said:
    """A needle, counted from the middle of the bed."""
    return said("bed/needle/right", number=slot + 1) if slot >= 0 else said("bed/needle/left", number=-slot)


def edge_said(edge: str, part: HungPart) -> Said:
    """An edge, or a part of one."""
    return said(f"bed/edge/{part}", edge=edge)


def known_edges(edges: Iterable[tuple[str, HungPart]]) -> tuple[Said, ...]:
    """The edges that there are, (name, part)."""
    return tuple(edge_said(edge, part) for edge, part in sorted(set(edges)))


def of_piece(piece: str, edge: str) -> Said:
    """An edge with its piece."""
    return said("bed/piece-edge", piece=piece, edge=edge)


def walk_said(side: Sequence[tuple[str, str, int]]) -> tuple[Said, ...]:
    """The edges of one side of a seam, (piece, edge, copy), in order."""
    return tuple(said("bed/seam-edge", piece=piece, edge=edge) for piece, edge, _ in side)
