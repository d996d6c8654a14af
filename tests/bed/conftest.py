"""A small pullover written out by hand, operation by operation, for the bed to knit.

Back and front: 20 stitches, 20 rows, neck of 4 stitches on waste yarn and 2 cast off each side, shoulders held in 3 + 3.
Sleeve: 8 stitches increased to 12, cast off. Welts on the rehung first rows, a band picked up round the neck.

And a pair of mittens, which has what the pullover has not: see `mitten`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import fields
from typing import Any

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.as_ever import digest
from tests.bed.by_hand import BED, Ops, again, apart_and_together, rows, seam_of, strip, welt
from tests.bed.words import told
from tests.kept import written
from walewright.bed import Bed, BedResult, KnitFabric, knit
from walewright.knit.operations import (
    Block,
    BreakYarn,
    CastOff,
    CastOn,
    Check,
    Close,
    FillFromBelow,
    Gather,
    Hold,
    IntoWork,
    LatchUp,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    Operation,
    Pass,
    PickUpEdge,
    Release,
    SetCounter,
    Side,
    Spread,
    Transfer,
    UseYarn,
    Work,
    Wrap,
    other,
)


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


def neckband() -> Block:
    picks: Ops = []
    at = -16
    for piece in ("back", "front"):
        for part, count, left_end in (("left", 6, "top"), ("centre", 4, "left"), ("right", 6, "bottom")):
            picks.append(PickUpEdge(piece, "neck", part, at, at + count - 1, left_end=left_end))
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
    """The neckband hangs from the back's left to the front's right, over the one shoulder that is joined by then."""
    return Work(
        "S",
        (
            body("back"),
            body("front"),
            sleeve(),
            welt("back", -10, 9),
            welt("front", -10, 9),
            welt("sleeve", -4, 3, 2),
            seam_of("back shoulder right", "front shoulder left", ("left", "right")),
            neckband(),
            seam_of("back shoulder left", "front shoulder right", ("right", "left")),
            seam_of("back side right", "front side left", ("bottom", "bottom")),
            seam_of("back side left", "front side right", ("bottom", "bottom")),
            seam_of("sleeve 1 end", "back armhole right + front armhole left", ("left", "bottom"), 10),
            seam_of("sleeve 2 end", "front armhole right + back armhole left", ("left", "bottom"), 10),
        ),
    )


def short_rows() -> Ops:
    """Two and two stitches at the right edge held in from RC 4 and let out again, until RC 12."""
    return [
        Pass("left"),
        Hold(6, 7),
        Pass("right"),
        Wrap(6),
        Pass("left"),
        Hold(4, 5),
        Pass("right"),
        Wrap(4),
        Pass("left"),
        Release(4, 5),
        Pass("right"),
        Wrap(6),
        Pass("left"),
        Release(6, 7),
        Pass("right"),
    ]


def mitten() -> Block:
    """A rib knitted first, then short rows, a slot for the thumb, a buttonhole, a gap off the centre, and the top drawn in."""
    operations: Ops = [
        MoveCarriage("right"),
        IntoWork(-8, 7),
        UseYarn("wool", "2"),
        CastOn("e-wrap", -8, 7),
        *rows(4, "left"),
        *(LatchUp(slot, 4) for slot in (-5, -2, 1, 4)),
        UseYarn("wool", "4"),
        SetCounter(0),
        *rows(4, "left"),
        *short_rows(),
        *rows(2, "left"),
        OntoWaste(-4, -1, 8, "thumb"),
        *again(-4, -1),
        *rows(2, "left"),
        Check(16, 16, "right"),
        Close(2, 3, "right"),
        *again(2, 3),
        *rows(2, "left"),
        *apart_and_together(),
        *rows(2, "left"),
        Spread(-8, 7, -4, (2,) * 8),
        Check(8, 26, "right"),
        *rows(2, "left"),
        BreakYarn(),
        Gather(-4, 3),
        NameEdge("palm", "left", 0, 14),
        NameEdge("back", "right", 0, 14),
        NameEdge("seam", "outer", 14, 28),
        NameEdge("gap", "inner", 18, 24),
    ]
    return Block("mitten", tuple(operations), 2)


def thumb() -> Block:
    """Round the slot: the waiting stitches, then those cast on above them."""
    operations: Ops = [
        MoveCarriage("right"),
        IntoWork(-4, 3),
        PickUpEdge("mitten", "thumb", "whole", -4, -1),
        PickUpEdge("mitten", "thumb upper", "whole", 0, 3),
        UseYarn("wool", "4"),
        SetCounter(0),
        *rows(4, "left"),
        Check(8, 4, "right"),
        BreakYarn(),
        Gather(-4, 3),
        NameEdge("seam", "outer", 0, 4),
    ]
    return Block("thumb", tuple(operations), 2)


def facing() -> Block:
    """All round the gap but for what is cast on above it."""
    operations: Ops = [
        MoveCarriage("right"),
        IntoWork(-6, 3),
        PickUpEdge("mitten", "gap", "whole", -6, 3, left_end="top"),
        UseYarn("wool", "2"),
        *rows(2, "left"),
        CastOff(-6, 3, "right"),
    ]
    return Block("facing", tuple(operations), 2)


def tongue() -> Block:
    """Along an edge of rows that only one side has."""
    operations: Ops = [
        MoveCarriage("right"),
        IntoWork(4, 5),
        PickUpEdge("mitten", "palm", "whole", 4, 5, left_end="bottom"),
        UseYarn("wool", "2"),
        *rows(2, "left"),
        CastOff(4, 5, "right"),
    ]
    return Block("tongue", tuple(operations), 2)


def mittens() -> Work:
    blocks = (mitten(), thumb(), facing(), tongue(), strip("strip"), strip("tab"))
    joins = (
        seam_of("strip end", "tab end", ("left", "right"), way="grafted"),
        seam_of("strip start", "mitten 1 gap upper", ("left", "left")),
        seam_of("mitten seam left", "thumb seam right", ("bottom", "bottom"), 1, longer_mm=54),
    )
    return Work("S", (*blocks, *joins))


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
def fabrics(result: BedResult) -> dict[str, KnitFabric]:
    return {fabric.name: fabric for fabric in result.fabrics}


@pytest.fixture(scope="session")
def pair() -> Work:
    """The mittens."""
    return mittens()


@pytest.fixture(scope="session")
def paired(pair: Work) -> dict[str, KnitFabric]:
    result = knit(pair, BED)
    assert result.faults == ()
    return {fabric.name: fabric for fabric in result.fabrics}


@pytest.fixture(scope="session")
def one() -> Callable[..., BedResult]:
    """Knit one block of the operations given, on the bed of 40 needles."""

    def run(*operations: Operation, name: str = "swatch", copies: int = 1) -> BedResult:
        return knit(Work("S", (Block(name, operations, copies),)), BED)

    return run


# ----------------------------------------------------------------- whatever is knitted

DRAWN_OR_KEPT = frozenset({"test_mutations", "test_shipped_works"})
"""Files of tests whose work is drawn at random, or knitted once for several tests."""


@pytest.fixture(autouse=True)
def knitted_as_ever(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch, snapshot: SnapshotAssertion) -> Iterator[None]:
    """Whatever a test of this folder has the bed knit comes out as ever, in all that a fabric has; and what is refused is told in
    the same words. A test looks at one thing of what it makes: this looks at the rest."""
    made: list[BedResult] = []
    begin = BedResult.__init__

    def noted(self: BedResult, *values: Any, **more: Any) -> None:
        begin(self, *values, **more)
        made.append(self)

    monkeypatch.setattr(BedResult, "__init__", noted)
    yield
    if made and request.path.stem not in DRAWN_OR_KEPT:
        refused = dict.fromkeys(told(fault) for result in made for fault in result.faults)
        assert "\n".join([*refused, *_fabrics(made)]) == snapshot(name="made")


def _fabrics(made: list[BedResult]) -> Iterator[str]:
    """Of all results together: how many fabrics there are, and a digest of everything that is known of them."""
    known = [written(getattr(fabric, f.name)) for result in made for fabric in result.fabrics for f in fields(fabric)]
    known += [written((r.open_edges, r.free_edges, r.done, r.sides)) for r in made]
    yield f"{sum(len(result.fabrics) for result in made)} fabrics, {digest(known)}"
