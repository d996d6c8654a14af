"""Moves by hand that tests of the bed and of the proof share."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from walewright.bed import Bed, BedResult, Gauge, KnitFabric
from walewright.knit.operations import (
    Block,
    BreakYarn,
    CastOff,
    CastOn,
    Check,
    Cross,
    DrawLong,
    Drop,
    HangFeet,
    Hold,
    InFabric,
    IntoWork,
    Join,
    LatchUp,
    LayIn,
    LiftOff,
    MoveCarriage,
    NameEdge,
    OntoWaste,
    Operation,
    OutOfWork,
    Pass,
    PictureRow,
    Rehang,
    Release,
    SetCounter,
    SewOff,
    Side,
    Transfer,
    UseYarn,
    Work,
    other,
)

BED = Bed(40, (1, 2, 3), {("wool", "4"): Gauge(1.3, 1.85), ("wool", "2"): Gauge(1.4, 2.0)})
Ops = list[Operation]


def fabric(result: BedResult) -> KnitFabric:
    """The first thing knitted, without a fault."""
    assert result.faults == ()
    return result.fabrics[0]


def refusal(result: BedResult) -> str:
    """The code of the one fault."""
    (fault,) = result.faults
    return fault.code


def rows(count: int, to: Side) -> Ops:
    """So many passes, the first one `to` that side."""
    return [Pass(to if i % 2 == 0 else other(to)) for i in range(count)]


def with_blocks(work: Work, blocks: Iterable[Block]) -> Work:
    """The work with these blocks in the place of those of the same name; others go, and so do all that are not among them."""
    given = list(blocks)
    by_name = {block.name: block for block in given}
    known = {block.name for block in work.blocks}
    kept = (by_name.get(task.name) if isinstance(task, Block) else task for task in work.tasks)
    return replace(work, tasks=(*(task for task in kept if task is not None), *(b for b in given if b.name not in known)))


def seam_of(one: str, other: str, ends: tuple[str, str], easing_mm: int = 0, way: str = "sewn", **more: int) -> Join:
    """Sides as "back armhole right + front armhole left"; a piece's copy behind it, "sleeve 2 end"."""

    def side(text: str) -> tuple[tuple[str, str, int], ...]:
        found = []
        for part in text.split(" + "):
            piece, *edge = part.split()
            copy = int(edge.pop(0)) if edge[0].isdigit() else 0
            found.append((piece, " ".join(edge), copy))
        return tuple(found)

    return Join(side(one), side(other), ends, easing_mm, way=way, **more)


def strip(name: str) -> Block:
    operations: Ops = [
        MoveCarriage("right"),
        IntoWork(-2, 1),
        UseYarn("wool", "4"),
        CastOn("e-wrap", -2, 1),
        *rows(2, "left"),
        OntoWaste(-2, 1, 8, "end"),
    ]
    return Block(name, tuple(operations))


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


def again(first: int, last: int) -> Ops:
    """Cast on in the place of stitches taken off in mid-row."""
    return [IntoWork(first, last), CastOn("e-wrap", first, last, own_length=True)]


def apart_and_together() -> Ops:
    """From RC 18: two stitches off, the left part to RC 24, the right part to RC 24, four cast on between, and on together."""
    return [
        OntoWaste(1, 2, 8, "gap centre"),
        BreakYarn(),
        Hold(3, 7),
        MoveCarriage("left"),
        UseYarn("wool", "4"),
        *rows(2, "right"),
        Transfer(0, 0, -1),
        OutOfWork(0, 0),
        *rows(4, "right"),
        Hold(-8, -1),
        BreakYarn(),
        MoveCarriage("right"),
        SetCounter(18),
        Release(3, 7),
        UseYarn("wool", "4"),
        *rows(2, "left"),
        Transfer(3, 3, 1),
        OutOfWork(3, 3),
        *rows(4, "left"),
        *again(0, 3),
        Release(-8, -1),
        Check(16, 24, "right"),
    ]


def sampler() -> Ops:
    """A mock rib folded up, then a bit of every stitch pattern, carried stripes and a picture, sewn off."""
    two_colours: Ops = [LiftOff(-3, -3), LiftOff(3, 3), LayIn("navy", "4", (-3, 3), "left"), Release(-3, -3), Release(3, 3)]
    return [
        MoveCarriage("left"),
        IntoWork(-8, 7),
        OutOfWork(-5, -5),
        OutOfWork(3, 3),
        UseYarn("waste", "waste"),
        CastOn("e-wrap", -8, 7),
        *rows(2, "right"),
        UseYarn("ravel", "ravel"),
        Pass("right"),
        SetCounter(0),
        UseYarn("wool", "2"),
        *rows(4, "left"),
        IntoWork(-5, -5),
        IntoWork(3, 3),
        HangFeet((-8, -7, -5, *range(-4, 2), 3, *range(4, 8))),
        UseYarn("wool", "4"),
        SetCounter(0),
        InFabric("moss"),
        InFabric("cable", -2, 1),
        Hold(-3, -3),
        Hold(3, 3),
        Pass("left"),
        *two_colours,
        Hold(5, 5),
        Hold(-6, -6),
        Hold(-1, -1),
        Pass("right"),
        LiftOff(5, 5),
        Release(5, 5),
        DrawLong(-6),
        Release(-6, -6),
        Release(-1, -1),
        *rows(2, "left"),
        Drop(3, 2),
        Cross(-3, 2, 3, "left"),
        LatchUp(3, 2),
        Transfer(4, 5, 1),
        *rows(4, "left"),
        Drop(4, 4),
        *rows(2, "left"),
        InFabric("", -2, 1),
        UseYarn("navy", "4", carried=True),
        *rows(2, "left"),
        UseYarn("wool", "4", carried=True),
        *rows(2, "left"),
        PictureRow("left", "4", (("wool", -8, -1), ("navy", 0, 7))),
        PictureRow("right", "4", (("wool", -8, 0), ("navy", 1, 7))),
        *rows(2, "left"),
        Check(16, 18, "right"),
        BreakYarn(40),
        SewOff(-8, 7, "right"),
        NameEdge("side", "outer", 0, 18),
    ]
