"""A small pullover written out by hand, operation by operation, for the bed to knit.

Back and front: 20 stitches, 20 rows, neck of 4 stitches on waste yarn and 2 cast off each side, shoulders held in 3 + 3.
Sleeve: 8 stitches increased to 12, cast off. Welts on the rehung first rows, a band picked up round the neck.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from walewright.bed import Bed, BedResult, Fabric, Gauge, knit
from walewright.knit.operations import (
    Block,
    BreakYarn,
    CastOff,
    CastOn,
    Check,
    FillFromBelow,
    Hold,
    IntoWork,
    Join,
    LatchUp,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    Operation,
    Pass,
    PickUpEdge,
    Rehang,
    Release,
    SetCounter,
    Side,
    Transfer,
    UseYarn,
    Work,
    Wrap,
    other,
)

BED = Bed(40, (1, 2, 3), {("wool", "4"): Gauge(1.3, 1.85), ("wool", "2"): Gauge(1.4, 2.0)})
Ops = list[Operation]


def rows(count: int, first_to: Side) -> Ops:
    to = first_to
    passes: Ops = []
    for _ in range(count):
        passes.append(Pass(to))
        to = other(to)
    return passes


def waste_start(first: int, last: int) -> Ops:
    """Eight rows of waste and one of ravel yarn; the carriage ends at the right."""
    return [
        MoveCarriage("left"),
        IntoWork(first, last),
        UseYarn("waste", "waste"),
        CastOn("comb", first, last),
        *rows(8, "right"),
        UseYarn("ravel", "ravel"),
        *rows(1, "right"),
        SetCounter(0),
        UseYarn("wool", "4"),
    ]


def half(side: Side) -> Ops:
    """A shoulder of the body from RC 20, the carriage at its outer side: neck 2 off, then 3 + 3 held."""
    away = other(side)
    right = side == "right"
    neck, near, far, whole = ((2, 3), (4, 6), (7, 9), (4, 9)) if right else ((-4, -3), (-7, -5), (-10, -8), (-10, -5))
    return [
        Pass(away),
        CastOff(*neck, start=away),
        Pass(side),
        Pass(away),
        Hold(*far),
        Pass(side),
        Wrap(far[0] if right else far[1]),
        Pass(away),
        Release(*far),
        Pass(side),
        Check(near[1] - near[0] + 4 + (8 if right else 0), 26, side),
        OntoWaste(*whole, 8, f"shoulder {side}"),
        BreakYarn(),
    ]


def body(name: str) -> Block:
    operations: Ops = [
        *waste_start(-10, 9),
        *rows(20, "left"),
        Check(20, 20, "right"),
        OntoWaste(-2, 1, 8, "neck centre"),
        Hold(-10, -3),
        *half("right"),
        MoveCarriage("left"),
        SetCounter(20),
        Release(-10, -3),
        UseYarn("wool", "4"),
        *half("left"),
        NameEdge("side", "outer", 0, 14),
        NameEdge("armhole", "outer", 14, 22),
        NameEdge("neck", "inner", 20, 26),
    ]
    return Block(name, tuple(operations))


def widen(first: int, last: int) -> Ops:
    """A fashioned increase at both ends, two stitches in, from first..last."""
    return [
        IntoWork(first - 1, first - 1),
        Transfer(first, first + 1, -1),
        FillFromBelow(first + 1, first + 2),
        IntoWork(last + 1, last + 1),
        Transfer(last - 1, last, 1),
        FillFromBelow(last - 1, last - 2),
    ]


def sleeve() -> Block:
    operations: Ops = [
        *waste_start(-4, 3),
        *rows(4, "left"),
        *widen(-4, 3),
        *rows(4, "left"),
        *widen(-5, 4),
        *rows(4, "left"),
        Check(12, 12, "right"),
        CastOff(-6, 5, "right"),
        NameEdge("side", "outer", 0, 12),
    ]
    return Block("sleeve", tuple(operations), 2)


def welt(piece: str, first: int, last: int, copies: int = 1) -> Block:
    latched = [LatchUp(slot, 6) for slot in range(first + 1, last, 3)]
    operations: Ops = [
        MoveCarriage("right"),
        IntoWork(first, last),
        Rehang(piece, first, last),
        UseYarn("wool", "2"),
        SetCounter(0),
        *rows(6, "left"),
        *latched,
        CastOff(first, last, "right"),
    ]
    return Block(f"{piece} welt", tuple(operations), copies)


def neckband() -> Block:
    picks: Ops = []
    at = -16
    for piece in ("back", "front"):
        for part, count in (("left", 6), ("centre", 4), ("right", 6)):
            picks.append(PickUpEdge(piece, "neck", part, at, at + count - 1))
            at += count
    operations: Ops = [
        MoveCarriage("right"),
        IntoWork(-16, 15),
        *picks,
        UseYarn("wool", "2"),
        SetCounter(0),
        *rows(4, "left"),
        Check(32, 4, "right"),
        CastOff(-16, 15, "right"),
    ]
    return Block("neckband", tuple(operations))


def pullover() -> Work:
    blocks = (
        body("back"),
        body("front"),
        sleeve(),
        welt("back", -10, 9),
        welt("front", -10, 9),
        welt("sleeve", -4, 3, 2),
        neckband(),
    )
    joins = (
        Join((("back", "shoulder"),), (("front", "shoulder"),), 0),
        Join((("back", "side"),), (("front", "side"),), 0),
        Join((("sleeve", "end"),), (("back", "armhole"), ("front", "armhole")), 10),
    )
    return Work("S", blocks, joins)


@pytest.fixture(scope="session")
def bed() -> Bed:
    return BED


@pytest.fixture(scope="session")
def work() -> Work:
    return pullover()


@pytest.fixture(scope="session")
def result(work: Work) -> BedResult:
    return knit(work, BED)


@pytest.fixture(scope="session")
def fabrics(result: BedResult) -> dict[str, Fabric]:
    return {fabric.name: fabric for fabric in result.fabrics}


@pytest.fixture(scope="session")
def one() -> Callable[..., BedResult]:
    """Knit one block of the operations given, on the bed of 40 needles."""

    def run(*operations: Operation, name: str = "swatch", copies: int = 1) -> BedResult:
        return knit(Work("S", (Block(name, operations, copies),), ()), BED)

    return run
