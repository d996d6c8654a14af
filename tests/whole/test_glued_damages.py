"""The garment glued, damaged in every way in which a garment goes wrong: on its source, on the work for the bed, in its words."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from glued_garments import (
    CARDIGAN,
    MITTENS,
    PANELS,
    PULLOVER,
    caught,
    changed,
    errors,
    joins_changed,
    made,
    misread,
    moved,
    work_of,
)

from walewright.knit.operations import HangFeet, IntoWork, Operation, PickUpEdge, Rehang, Work

# ----------------------------------------------------------------- on the source

NECK = "along back neck + front neck"
FRONTS = "right_front neckline + back neck + left_front neckline"
LEFT_ARM = "left_front armhole + back armhole_right"
RIGHT_ARM = "back armhole_left + right_front armhole"
SHOULDERS = "join back shoulder to right_front end + left_front end"

ON_SOURCE: tuple[tuple[str, str, str, str, str], ...] = (
    ("a shoulder left out", PULLOVER, "join back shoulder to", "join back shoulder_left to", "line-not-in-order"),
    ("shoulders left out", PULLOVER, "join back shoulder to front shoulder, linked\n", "", "line-not-in-order"),
    ("shoulders joined left to left", PULLOVER, "join back shoulder to front shoulder,", "join back shoulder_left to front shoulder_left,", "*"),
    ("neckband left out", PULLOVER, f"band neckband with collar {NECK}\n", "", "loops-left-open"),
    ("one neck left out", PULLOVER, NECK, "along back neck", "loops-left-open"),
    ("a part of a neck left out", PULLOVER, NECK, "along back neck + front neck_left", "loops-left-open"),
    ("a neck twice in the band", PULLOVER, NECK, f"{NECK} + back neck", "line-not-in-order"),
    ("halves of a neck exchanged", PULLOVER, NECK, "along back neck_right + back neck_centre + back neck_left + front neck", "line-not-in-order"),
    ("the neckband turned within one neck", PULLOVER, NECK, "along back neck + front neck_right + front neck_centre + front neck_left", "line-not-in-order"),
    ("a second neckband", PULLOVER, "join back shoulder", "band second with collar along back neck\njoin back shoulder", "edge-used-twice"),
    ("sleeves sewn in twice", PULLOVER, "join back side", "join sleeve end to back armhole\njoin back side", "*"),
    ("a sleeve on two armholes of one piece", PULLOVER, "to back armhole + front armhole,", "to back armhole_left + back armhole_right,", "*"),
    ("sleeve seam to the body", PULLOVER, "join sleeve seam to sleeve seam", "join sleeve seam to front side", "edge-used-twice"),
    ("sides inside out", PULLOVER, "join back side to front side", "join back side_left to front side_left", "seam-twisted"),
    ("armhole joined to the side", PULLOVER, "join back side to front side", "join back side to front armhole", "*"),
    ("front linked to itself", PULLOVER, "join back shoulder to front shoulder", "join front shoulder_left to front shoulder_right", "*"),
    ("fronts exchanged in the neckband", CARDIGAN, FRONTS, "left_front neckline + back neck + right_front neckline", "line-not-in-order"),
    ("the neckband begins at the back", CARDIGAN, FRONTS, "back neck + right_front neckline + left_front neckline", "line-not-in-order"),
    ("the neckband leaves the back out", CARDIGAN, FRONTS, "right_front neckline + left_front neckline", "line-not-in-order"),
    ("the neckband with the right side facing", CARDIGAN, FRONTS, f"{FRONTS}, right side facing", "line-not-in-order"),
    ("left armband the other way round", CARDIGAN, LEFT_ARM, "back armhole_right + left_front armhole", "line-closed"),
    ("right armband the other way round", CARDIGAN, RIGHT_ARM, "right_front armhole + back armhole_left", "line-closed"),
    ("left armband with the right side facing", CARDIGAN, LEFT_ARM, f"{LEFT_ARM}, right side facing", "line-closed"),
    ("armband on the wrong side of the back", CARDIGAN, LEFT_ARM, "left_front armhole + back armhole_left", "*"),
    ("armband on one piece's two armholes", CARDIGAN, RIGHT_ARM, "back armhole_left + back armhole_right", "*"),
    ("shoulders of the fronts left out", CARDIGAN, f"{SHOULDERS}\n", "", "line-not-in-order"),
    ("fronts exchanged at the shoulders", CARDIGAN, SHOULDERS, "join back shoulder_left to left_front end\njoin back shoulder_right to right_front end", "*"),
    ("a front closed by a side", CARDIGAN, "join back side to left_front side", "join back side to left_front edge", "edge-used-twice"),
    ("a side made twice", CARDIGAN, "join back side to left_front side", "join back side to left_front side\njoin back side to left_front side", "edge-used-twice"),
    ("both sides to one front", CARDIGAN, "join back side to left_front side", "join back side to right_front side", "edge-used-twice"),
    ("a front band left out and the other doubled", CARDIGAN, "along left_front edge", "along right_front edge", "edge-used-twice"),
    ("a front not mirrored", CARDIGAN, "piece right_front in plain, mirror of left_front\n", "", "unknown-name"),
    ("a thumb not mirrored", MITTENS, "along left_mitten thumb_upper + left_mitten thumb", "along left_mitten thumb + left_mitten thumb_upper", "line-not-mirrored"),
    ("both thumbs on one mitten", MITTENS, "along left_mitten thumb_upper + left_mitten thumb", "along right_mitten thumb_upper + right_mitten thumb", "edge-used-twice"),
    ("a thumb on half a slot", MITTENS, "along left_mitten thumb_upper + left_mitten thumb", "along left_mitten thumb_upper", "loops-left-open"),
    ("a thumb sewn to the mitten", MITTENS, "join left_thumb seam to left_thumb seam", "join left_thumb seam to left_mitten seam", "*"),
    ("a third sleeve", PULLOVER, "knit 2", "knit 3", "copies-left-over"),
    ("panels not joined below their band", PANELS, "join panel other to panel one, each to the next\n", "", "line-not-in-order"),
    ("a band over fewer panels than there are", PANELS, "along panel end + panel end + panel end", "along panel end + panel end", "loops-left-open"),
    ("a band over more panels than there are", PANELS, "along panel end", "along panel end + panel end", "line-not-in-order"),
    ("panels joined to themselves", PANELS, ", each to the next", "", "*"),
)  # fmt: skip


@pytest.mark.parametrize("text", [PULLOVER, CARDIGAN, MITTENS, PANELS], ids=["pullover", "cardigan", "mittens", "panels"])
def test_undamaged_they_are_proven(text: str) -> None:
    assert made(text).proven, made(text).diagnostics
    assert caught(text, work_of(text)) == set()
    assert misread(text, made(text).plain_text) == set()


@pytest.mark.parametrize(("name", "text", "old", "new", "code"), ON_SOURCE, ids=[row[0] for row in ON_SOURCE])
def test_on_the_source(name: str, text: str, old: str, new: str, code: str) -> None:
    assert old in text
    told = errors(made(text.replace(old, new, 1)))
    assert told, f"{name}: not caught"
    assert code in told or code == "*", told
    assert not told & {"bed-refuses", "knitted-otherwise", "words-knit-otherwise", "words-contradict"}, told


@pytest.mark.parametrize(
    ("text", "old", "new", "edge"),
    [
        (PULLOVER, "piece sleeve in plain, knit 2", "piece sleeve in plain", "`back armhole_right`"),
        (CARDIGAN, "join back side to left_front side\n", "", "`back side_right`"),
    ],
    ids=["one sleeve for two armholes", "a side of the back not joined"],
)
def test_what_can_be_meant_is_warned_of(text: str, old: str, new: str, edge: str) -> None:
    """A garment may have one sleeve, and be open at a side."""
    assert old in text
    outcome = made(text.replace(old, new, 1))
    told = [d for d in outcome.diagnostics if d.code == "edge-half-joined"]
    assert outcome.proven
    assert [edge in d.message for d in told] == [True]
    assert not [d for d in made(text).diagnostics if d.code == "edge-half-joined"]


# ----------------------------------------------------------------- on the work for the bed


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
    ("a pick-up with its knit side to the knitter", PULLOVER, lambda: _pick(PULLOVER, "neckband", 0, facing="knit"), "edge-lies-otherwise"),
    ("the other end at the left", PULLOVER, lambda: _pick(PULLOVER, "neckband", 3, left_end="bottom"), "edge-lies-otherwise"),
    ("facing and end turned together", PULLOVER, lambda: _pick(PULLOVER, "neckband", 3, facing="knit", left_end="bottom"), "edges-do-not-meet"),
    ("a needle gap in the neckband", PULLOVER, lambda: _pick(PULLOVER, "neckband", 5, first=17), "*"),
    ("a part of the neck left out", PULLOVER, lambda: _without_pick(PULLOVER, "neckband", 5), "*"),
    ("a part of the neck twice", PULLOVER, lambda: _exchanged_for(PULLOVER, "neckband", 5, 3), "*"),
    ("sleeves exchanged in their armholes", PULLOVER, lambda: _bundle(PULLOVER, 0, 1), "knitted-otherwise"),
    ("both armholes for one sleeve", PULLOVER, lambda: _join(PULLOVER, 1, one=(("sleeve", "end", 1),)), "edge-taken"),
    ("a sleeve from its other end", PULLOVER, lambda: _join(PULLOVER, 0, ends=("right", "bottom")), "*"),
    ("an armhole from its top", PULLOVER, lambda: _join(PULLOVER, 0, ends=("left", "top")), "join-not-in-line"),
    ("halves of an armhole of two armholes", PULLOVER, lambda: _join(PULLOVER, 0, other=(("front", "armhole right", 0), ("back", "armhole right", 0))), "join-not-in-line"),
    ("a side from the top of one piece", PULLOVER, lambda: _join(PULLOVER, 2, ends=("bottom", "top")), "side-turned"),
    ("sides crossed", PULLOVER, lambda: _bundle(PULLOVER, 2, 3), "side-turned"),
    ("a side left out", PULLOVER, lambda: joins_changed(work_of(PULLOVER), 2), "knitted-otherwise"),
    ("a side made twice", PULLOVER, lambda: joins_changed(work_of(PULLOVER), 2, *(work_of(PULLOVER).joins[2],) * 2), "edge-taken"),
    ("a side sewn before its pieces", PULLOVER, lambda: moved(work_of(PULLOVER), 2, 1), "piece-unknown"),
    ("a seam of one sleeve only", PULLOVER, lambda: _join(PULLOVER, 4, one=(("sleeve", "seam left", 1),), other=(("sleeve", "seam right", 1),)), "knitted-otherwise"),
    ("sleeves sewn to each other", PULLOVER, lambda: _join(PULLOVER, 4, one=(("sleeve", "seam left", 1),), other=(("sleeve", "seam right", 2),)), "knitted-otherwise"),
    ("sleeve before the shoulder", PULLOVER, lambda: moved(work_of(PULLOVER), 0, 4), "join-not-in-line"),
    ("the neckband after both shoulders", PULLOVER, lambda: moved(work_of(PULLOVER), "neckband", 7), "line-is-a-ring"),
    ("the neckband before any shoulder", PULLOVER, lambda: moved(work_of(PULLOVER), "neckband", 4), "edges-do-not-meet"),
    ("the second shoulder before the neckband", PULLOVER, lambda: moved(work_of(PULLOVER), LINK_LEFT, 5), "line-is-a-ring"),
    ("shoulder linked face to back", PULLOVER, lambda: _pick(PULLOVER, LINK, 1, facing="knit", left_end="right"), "linked-face-to-back"),
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
    ("a front band inside out", CARDIGAN, lambda: _pick(CARDIGAN, "left_band", 0, facing="knit", left_end="bottom"), "knitted-otherwise"),
    ("front bands on one front", CARDIGAN, lambda: _pick(CARDIGAN, "left_band", 0, piece="right_front", part="left", left_end="bottom"), "edge-taken"),
    ("front bands exchanged", CARDIGAN, lambda: _exchanged_blocks(CARDIGAN, "left_band", "right_band"), "knitted-otherwise"),
    ("a band left out", CARDIGAN, lambda: _without_block(CARDIGAN, "left_band"), "knitted-otherwise"),
    ("a side sewn before the armband", CARDIGAN, lambda: moved(work_of(CARDIGAN), 2, 6), "line-is-a-ring"),
    ("a front's side sewn from its top", CARDIGAN, lambda: _join(CARDIGAN, 3, ends=("bottom", "top")), "side-turned"),
    ("a thumb begun at the other corner", MITTENS, lambda: _exchanged(MITTENS, "left_thumb", 0, 1), "knitted-otherwise"),
    ("a thumb inside out", MITTENS, lambda: _all_turned(MITTENS, "left_thumb"), "knitted-otherwise"),
    ("a thumb's seam turned", MITTENS, lambda: _join(MITTENS, 1, ends=("bottom", "top")), "side-turned"),
    ("thumbs sewn to each other", MITTENS, lambda: _join(MITTENS, 0, one=(("left_thumb", "seam left", 0),)), "*"),
    ("panels in another order below the band", PANELS, lambda: _pick(PANELS, "top", 1, copy=3), "*"),
    ("a panel that is not there", PANELS, lambda: _pick(PANELS, "top", 2, copy=4), "copy-unknown"),
    ("a panel not named", PANELS, lambda: _pick(PANELS, "top", 2, copy=0), "copies-differ"),
    ("panels joined to themselves", PANELS, lambda: _join(PANELS, 0, other=(("panel", "one", 1),)), "*"),
    ("the band before the panels are joined", PANELS, lambda: moved(work_of(PANELS), "top", 1), "edges-do-not-meet"),
)  # fmt: skip


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


# ----------------------------------------------------------------- in the printed words

IN_WORDS: tuple[tuple[str, str, str, str], ...] = (
    ("knit side for purl side", PULLOVER, "Purl side facing, pick up 6 sts along the left part of the back neck", "Knit side facing, pick up 6 sts along the left part of the back neck"),
    ("bottom for top", PULLOVER, "along the left part of the back neck, its top at", "along the left part of the back neck, its bottom at"),
    ("the other part", PULLOVER, "along the left part of the back neck", "along the right part of the back neck"),
    ("right end for left end", PULLOVER, "the centre of the back neck, its left end", "the centre of the back neck, its right end"),
    ("2nd sleeve for 1st", PULLOVER, "Join sleeve (1st) end", "Join sleeve (2nd) end"),
    ("each sleeve for the 1st", PULLOVER, "Join sleeve (1st) end", "Join sleeve (each) end"),
    ("then in another order", PULLOVER, "front armhole right then back armhole left", "back armhole left then front armhole right"),
    ("another armhole", PULLOVER, "front armhole right then back armhole left", "front armhole left then back armhole right"),
    ("a sleeve from its right end", PULLOVER, "end from its left end to front", "end from its right end to front"),
    ("a side from its top", PULLOVER, "Join back side left to front", "Join back side left from its top to front"),
    ("sides crossed", PULLOVER, "back side left to front side right and back side right to front side left", "back side left to front side left and back side right to front side right"),
    ("a side forgotten", PULLOVER, "back side left to front side right and back side right to front side left", "back side left to front side right"),
    ("sewn for gathered", PULLOVER, "Join sleeve (1st) end", "Gather sleeve (1st) end"),
    ("more rows", PULLOVER, "row for row, 34 rows", "row for row, 36 rows"),
    ("more easing", PULLOVER, "easing in up to 30 mm", "easing in up to 40 mm"),
    ("the fold behind", PULLOVER, "in front, towards you, purl sides together", "behind, away from you, knit sides together"),
    ("a cuff rehung the other way", PULLOVER, "Purl side facing, hang the 24 loops", "Knit side facing, hang the 24 loops"),
    ("a shoulder hung face to back", PULLOVER, "Purl side facing, hang the 10 open loops along the left part of the front", "Knit side facing, hang the 10 open loops along the left part of the front"),
    ("another shoulder", PULLOVER, "along the left part of the front shoulder", "along the right part of the front shoulder"),
    ("not over the other piece", PULLOVER, ", over the sts of the other piece", ""),
    ("a front's shoulder exchanged", CARDIGAN, "Join back shoulder left from its left end to right front end", "Join back shoulder left from its left end to left front end"),
    ("a shoulder from its other end", CARDIGAN, "to right front end from its right end", "to right front end from its left end"),
    ("a side of the other front", CARDIGAN, "Join back side left to right front side", "Join back side left to left front side"),
    ("the other front's edge", CARDIGAN, "along the right part of the left front edge, its top", "along the left part of the right front edge, its bottom"),
    ("a thumb's other edge", MITTENS, "whole of the left mitten thumb upper", "whole of the left mitten thumb"),
    ("the other mitten", MITTENS, "whole of the left mitten thumb,", "whole of the right mitten thumb,"),
    ("a thumb's seam to the mitten's", MITTENS, "left thumb seam left to left thumb seam right", "left thumb seam left to left mitten seam right"),
    ("the next panel", PANELS, "Join panel (1st) other to panel (2nd) one", "Join panel (1st) other to panel (3rd) one"),
    ("panels exchanged below the band", PANELS, "panel (2nd) end", "panel (3rd) end"),
)  # fmt: skip


def _printed(text: str, old: str, new: str) -> str:
    """The plain text with words changed, wherever its lines are broken."""
    from re import escape, subn

    pattern = r"\s+".join(r"[\s\u00a0]+".join(escape(w) for w in part.split("\u00a0")) for part in old.split(" "))
    pattern = pattern.replace(r"\s+", r"(?:\s|\u00a0)+")
    words = made(text).plain_text

    def instead(found: object) -> str:
        return _like(found.group(0), new)  # type: ignore[attr-defined]

    changed_words, times = subn(pattern, instead, words, count=1)
    assert times == 1, f"not printed: {old}"
    return changed_words


def _like(found: str, new: str) -> str:
    """With spaces that are part of names kept."""
    for name in {w for w in found.split() if "\u00a0" in w}:
        new = new.replace(name.replace("\u00a0", " "), name)
    for name in _NAMES:
        new = new.replace(name.replace("\u00a0", " "), name)
    return new


_NAMES = ("right\u00a0front", "left\u00a0front", "left\u00a0mitten", "right\u00a0mitten", "left\u00a0thumb", "right\u00a0thumb")


@pytest.mark.parametrize(("name", "text", "old", "new"), IN_WORDS, ids=[row[0] for row in IN_WORDS])
def test_in_the_words(name: str, text: str, old: str, new: str) -> None:
    told = misread(text, _printed(text, old, new))
    assert told, f"{name}: not caught"
    assert told <= {"words-knit-otherwise", "words-contradict", "words-unreadable"}, told


@pytest.mark.parametrize("text", [PULLOVER, CARDIGAN, MITTENS, PANELS], ids=["pullover", "cardigan", "mittens", "panels"])
def test_a_sentence_of_joining_or_hanging_left_out(text: str) -> None:
    """Each by itself."""
    sentences = _sentences(made(text).plain_text)
    some = [s for s in sentences if any(w in s for w in ("Join ", "hang the", "pick up", "make the", "makes the"))]
    assert len(some) > 4
    for sentence in some:
        assert misread(text, made(text).plain_text.replace(sentence, "", 1)), sentence


def _sentences(text: str) -> list[str]:
    """Lines with those that go on from them."""
    found: list[str] = []
    for line in text.splitlines(keepends=True):
        if line.startswith("    ") and found:
            found[-1] += line
        else:
            found.append(line)
    return [s for s in found if s.startswith(("[ ]", "-   "))]


@pytest.mark.parametrize("text", [PULLOVER, CARDIGAN, PANELS], ids=["pullover", "cardigan", "panels"])
def test_a_section_moved(text: str) -> None:
    """What is joined or hung in another place in the order of work is another order, or cannot be done."""
    words = made(text).plain_text
    heads = _heads(words)
    for at in range(1, len(heads) - 1):
        parts = [words[a:b] for a, b in zip(heads, [*heads[1:], len(words)], strict=True)]
        parts[at], parts[at + 1] = parts[at + 1], parts[at]
        assert misread(text, words[: heads[0]] + "".join(parts)), words[heads[at] : heads[at] + 40]


def _heads(words: str) -> list[int]:
    """Where sections begin: a line underlined with =."""
    lines = words.splitlines(keepends=True)
    starts, at = [], 0
    for i, line in enumerate(lines):
        if i + 1 < len(lines) and lines[i + 1].startswith("==="):
            starts.append(at)
        at += len(line)
    return starts
