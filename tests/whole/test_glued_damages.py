"""The work for the bed, damaged in every way in which a garment goes wrong: the bed, or else the proof, objects."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from tests.whole.glued_garments import (
    CARDIGAN,
    MITTENS,
    PANELS,
    PULLOVER,
    caught,
    changed,
    joins_changed,
    made,
    misread,
    moved,
    work_of,
)
from walewright.knit.operations import HangFeet, IntoWork, Operation, PickUpEdge, Rehang, Work


@pytest.mark.parametrize("text", [PULLOVER, CARDIGAN, MITTENS, PANELS], ids=["pullover", "cardigan", "mittens", "panels"])
def test_undamaged_they_are_proven(text: str) -> None:
    assert made(text).proven, made(text).diagnostics
    assert caught(text, work_of(text)) == set()
    assert misread(text, made(text).plain_text) == set()


def _pick(text: str, block: str, number: int, **other: object) -> Work:
    """Pick-up `number` of a block made otherwise."""
    at = iter(range(100))

    def change(op: Operation) -> Operation | None:
        if not isinstance(op, PickUpEdge):
            return op
        return replace(op, **other) if next(at) == number else op  # type: ignore[arg-type]

    return changed(work_of(text), block, change)


def _without_pick(text: str, block: str, number: int) -> Work:
    at = iter(range(100))
    return changed(work_of(text), block, lambda op: None if isinstance(op, PickUpEdge) and next(at) == number else op)


def _exchanged(text: str, block: str, one: int, other: int) -> Work:
    """Two pick-ups of a block with each other's edges."""
    picks = [op for b in work_of(text).blocks if b.name == block for op in b.operations if isinstance(op, PickUpEdge)]
    a, b = picks[one], picks[other]
    swap = {a: replace(b, first=a.first, last=a.last, over=a.over), b: replace(a, first=b.first, last=b.last, over=b.over)}
    return changed(work_of(text), block, lambda op: swap.get(op, op) if isinstance(op, PickUpEdge) else op)


def _fold_behind(op: Operation) -> Operation:
    return replace(op, behind=True) if isinstance(op, HangFeet) else op


def _rehung(op: Operation) -> Operation:
    return replace(op, facing="knit") if isinstance(op, Rehang) else op


def _join(text: str, number: int, **other: object) -> Work:
    work = work_of(text)
    return joins_changed(work, number, replace(work.joins[number], **other))  # type: ignore[arg-type]


def _bundle(text: str, one: int, other: int) -> Work:
    """Two joins with each other's first sides."""
    work = work_of(text)
    a, b = work.joins[one], work.joins[other]
    return joins_changed(joins_changed(work, one, replace(a, one=b.one)), other, replace(b, one=a.one))


LINK, LINK_LEFT = "back shoulder right link", "back shoulder left link"

ON_WORK: tuple[tuple[str, str, Callable[[], Work], str], ...] = (
    ("neck parts in another order", PULLOVER, lambda: _exchanged(PULLOVER, "neckband", 0, 2), "edges-do-not-meet"),
    ("necks in another order", PULLOVER, lambda: _exchanged(PULLOVER, "neckband", 1, 4), "edges-do-not-meet"),
    (
        "a pick-up with its knit side to the knitter",
        PULLOVER,
        lambda: _pick(PULLOVER, "neckband", 0, facing="knit"),
        "edge-lies-otherwise",
    ),
    ("the other end at the left", PULLOVER, lambda: _pick(PULLOVER, "neckband", 3, left_end="bottom"), "edge-lies-otherwise"),
    (
        "facing and end turned together",
        PULLOVER,
        lambda: _pick(PULLOVER, "neckband", 3, facing="knit", left_end="bottom"),
        "edges-do-not-meet",
    ),
    ("a needle gap in the neckband", PULLOVER, lambda: _pick(PULLOVER, "neckband", 5, first=17), "*"),
    ("a part of the neck left out", PULLOVER, lambda: _without_pick(PULLOVER, "neckband", 5), "*"),
    ("a part of the neck twice", PULLOVER, lambda: _exchanged_for(PULLOVER, "neckband", 5, 3), "*"),
    ("sleeves exchanged in their armholes", PULLOVER, lambda: _bundle(PULLOVER, 1, 2), "knitted-otherwise"),
    ("both armholes for one sleeve", PULLOVER, lambda: _join(PULLOVER, 2, one=(("sleeve", "end", 1),)), "edge-taken"),
    ("a sleeve from its other end", PULLOVER, lambda: _join(PULLOVER, 1, ends=("right", "bottom")), "*"),
    ("an armhole from its top", PULLOVER, lambda: _join(PULLOVER, 1, ends=("left", "top")), "join-not-in-line"),
    (
        "halves of an armhole of two armholes",
        PULLOVER,
        lambda: _join(PULLOVER, 1, other=(("front", "armhole right", 0), ("back", "armhole right", 0))),
        "join-not-in-line",
    ),
    ("a side from the top of one piece", PULLOVER, lambda: _join(PULLOVER, 3, ends=("bottom", "top")), "side-turned"),
    ("sides crossed", PULLOVER, lambda: _bundle(PULLOVER, 3, 4), "side-turned"),
    ("the ends of the neckband left open", PULLOVER, lambda: joins_changed(work_of(PULLOVER), 0), "knitted-otherwise"),
    ("a side sewn without its welts", PULLOVER, lambda: _join(PULLOVER, 3, over=()), "knitted-otherwise"),
    ("a side left out", PULLOVER, lambda: joins_changed(work_of(PULLOVER), 3), "knitted-otherwise"),
    ("a side made twice", PULLOVER, lambda: joins_changed(work_of(PULLOVER), 3, *(work_of(PULLOVER).joins[3],) * 2), "edge-taken"),
    ("a side sewn before its pieces", PULLOVER, lambda: moved(work_of(PULLOVER), 3, 1), "piece-unknown"),
    (
        "a seam of one sleeve only",
        PULLOVER,
        lambda: _join(PULLOVER, 5, one=(("sleeve", "seam left", 1),), other=(("sleeve", "seam right", 1),)),
        "knitted-otherwise",
    ),
    (
        "sleeves sewn to each other",
        PULLOVER,
        lambda: _join(PULLOVER, 5, one=(("sleeve", "seam left", 1),), other=(("sleeve", "seam right", 2),)),
        "knitted-otherwise",
    ),
    ("sleeve before the shoulder", PULLOVER, lambda: moved(work_of(PULLOVER), 1, 4), "join-not-in-line"),
    ("the neckband after both shoulders", PULLOVER, lambda: moved(work_of(PULLOVER), "neckband", 7), "line-is-a-ring"),
    ("the neckband before any shoulder", PULLOVER, lambda: moved(work_of(PULLOVER), "neckband", 4), "edges-do-not-meet"),
    ("the second shoulder before the neckband", PULLOVER, lambda: moved(work_of(PULLOVER), LINK_LEFT, 5), "line-is-a-ring"),
    (
        "shoulder linked face to back",
        PULLOVER,
        lambda: _pick(PULLOVER, LINK, 1, facing="knit", left_end="right"),
        "linked-face-to-back",
    ),
    ("shoulder linked with wrong sides together", PULLOVER, lambda: _both_turned(PULLOVER, LINK), "knitted-otherwise"),
    ("shoulder linked to the same side's", PULLOVER, lambda: _pick(PULLOVER, LINK, 1, part="right"), "*"),
    ("a shoulder left out", PULLOVER, lambda: _without_block(PULLOVER, LINK_LEFT), "join-not-in-line"),
    ("a hem folded outwards", PULLOVER, lambda: changed(work_of(PULLOVER), "back", _fold_behind), "knitted-otherwise"),
    ("a cuff rehung inside out", PULLOVER, lambda: changed(work_of(PULLOVER), "sleeve cuff", _rehung), "knitted-otherwise"),
    ("cuffs for one sleeve", PULLOVER, lambda: _copies(PULLOVER, "sleeve cuff", 1), "copies-differ"),
    ("one sleeve", PULLOVER, lambda: _copies(PULLOVER, "sleeve", 1), "copies-differ"),
    ("two neckbands on one neck", PULLOVER, lambda: _copies(PULLOVER, "neckband", 2), "copies-differ"),
    ("fronts exchanged at the shoulders", CARDIGAN, lambda: _fronts(CARDIGAN), "*"),
    ("a shoulder from the neck", CARDIGAN, lambda: _join(CARDIGAN, 0, ends=("right", "right")), "*"),
    ("armband behind the seam that closes it", CARDIGAN, lambda: moved(work_of(CARDIGAN), "left_armband", -1), "line-is-a-ring"),
    ("armband before its shoulder", CARDIGAN, lambda: moved(work_of(CARDIGAN), "left_armband", 5), "edges-do-not-meet"),
    ("armband from its other end", CARDIGAN, lambda: _exchanged(CARDIGAN, "left_armband", 0, 1), "edges-do-not-meet"),
    ("the neckband on the fronts exchanged", CARDIGAN, lambda: _exchanged(CARDIGAN, "neckband", 0, 4), "edges-do-not-meet"),
    (
        "a front band inside out",
        CARDIGAN,
        lambda: _pick(CARDIGAN, "left_band", 0, facing="knit", left_end="bottom"),
        "knitted-otherwise",
    ),
    (
        "front bands on one front",
        CARDIGAN,
        lambda: _pick(CARDIGAN, "left_band", 0, piece="right_front", part="left", left_end="bottom"),
        "edge-taken",
    ),
    ("front bands exchanged", CARDIGAN, lambda: _exchanged_blocks(CARDIGAN, "left_band", "right_band"), "knitted-otherwise"),
    ("a band left out", CARDIGAN, lambda: _without_block(CARDIGAN, "left_band"), "knitted-otherwise"),
    ("a side sewn before the armband", CARDIGAN, lambda: moved(work_of(CARDIGAN), 2, 6), "line-is-a-ring"),
    ("a front's side sewn from its top", CARDIGAN, lambda: _join(CARDIGAN, 3, ends=("bottom", "top")), "side-turned"),
    ("a thumb begun at the other corner", MITTENS, lambda: _exchanged(MITTENS, "left_thumb", 0, 1), "knitted-otherwise"),
    ("a thumb inside out", MITTENS, lambda: _all_turned(MITTENS, "left_thumb"), "knitted-otherwise"),
    ("a thumb's seam turned", MITTENS, lambda: _join(MITTENS, 1, ends=("bottom", "top")), "side-turned"),
    ("thumbs sewn to each other", MITTENS, lambda: _join(MITTENS, 0, one=(("left_thumb", "seam left", 0),)), "*"),
    ("panels in another order below the band", PANELS, lambda: _pick(PANELS, "top", 1, copy=3), "*"),
    ("a panel that is not there", PANELS, lambda: _pick(PANELS, "top", 2, copy=4), "no-such-copy"),
    ("a panel not named", PANELS, lambda: _pick(PANELS, "top", 2, copy=0), "copies-differ"),
    ("panels joined to themselves", PANELS, lambda: _join(PANELS, 0, other=(("panel", "one", 1),)), "*"),
    ("the band before the panels are joined", PANELS, lambda: moved(work_of(PANELS), "top", 1), "edges-do-not-meet"),
)


def _exchanged_for(text: str, block: str, number: int, other: int) -> Work:
    picks = [op for b in work_of(text).blocks if b.name == block for op in b.operations if isinstance(op, PickUpEdge)]
    instead = replace(picks[other], first=picks[number].first, last=picks[number].last)
    return changed(work_of(text), block, lambda op: instead if op == picks[number] else op)


_END = {"left": "right", "right": "left", "bottom": "top", "top": "bottom"}
_FACE = {"purl": "knit", "knit": "purl"}


def _both_turned(text: str, block: str) -> Work:
    """Everything hung with its other side to the knitter, and so with its other end at the left."""
    return changed(
        work_of(text),
        block,
        lambda op: replace(op, facing=_FACE[op.facing], left_end=_END[op.left_end]) if isinstance(op, PickUpEdge) else op,
    )


def _all_turned(text: str, block: str) -> Work:
    """The same from the other end of the line."""
    turned = _both_turned(text, block)
    picks = [op for b in turned.blocks if b.name == block for op in b.operations if isinstance(op, PickUpEdge)]
    swap = {a: replace(b, first=a.first, last=a.last) for a, b in zip(picks, reversed(picks), strict=True)}
    return changed(turned, block, lambda op: swap[op] if isinstance(op, PickUpEdge) else op)


def _without_block(text: str, block: str) -> Work:
    work = work_of(text)
    return replace(work, tasks=tuple(t for t in work.tasks if getattr(t, "name", "") != block))


def _copies(text: str, block: str, copies: int) -> Work:
    work = work_of(text)
    return replace(work, tasks=tuple(replace(t, copies=copies) if getattr(t, "name", "") == block else t for t in work.tasks))  # type: ignore[call-arg]


def _fronts(text: str) -> Work:
    work = work_of(text)
    a, b = work.joins[:2]
    return joins_changed(joins_changed(work, 0, replace(a, other=b.other)), 1, replace(b, other=a.other))


def _exchanged_blocks(text: str, one: str, other: str) -> Work:
    work = work_of(text)
    a, b = (next(x for x in work.blocks if x.name == n) for n in (one, other))
    swap = {one: replace(b, name=one), other: replace(a, name=other)}
    return replace(work, tasks=tuple(swap.get(getattr(t, "name", ""), t) for t in work.tasks))


@pytest.mark.parametrize(("name", "text", "damaged", "code"), ON_WORK, ids=[row[0] for row in ON_WORK])
def test_on_the_work(name: str, text: str, damaged: Callable[[], Work], code: str) -> None:
    told = caught(text, damaged())
    assert told, f"{name}: not caught"
    assert code in told or code == "*", told


def test_a_needle_left_empty_between_edges() -> None:
    """The last edge hung one needle further to the right."""
    work = changed(work_of(PULLOVER), "neckband", lambda op: replace(op, last=27) if isinstance(op, IntoWork) else op)
    picks = [op for b in work.blocks if b.name == "neckband" for op in b.operations if isinstance(op, PickUpEdge)]
    further = replace(picks[-1], first=picks[-1].first + 1, last=picks[-1].last + 1)
    assert caught(PULLOVER, changed(work, "neckband", lambda op: further if op == picks[-1] else op)) == {"hung-apart"}
