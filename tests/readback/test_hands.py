"""The moves that words make, without a plan: figures worked out by hand from the conventions."""

from __future__ import annotations

import re

import pytest

from tests.in_english import read_back
from walewright.knit import operations as op
from walewright.readback.hands import Contradiction, Hands
from walewright.report.english import ENGLISH, in_english
from walewright.report.wording import phrased

START = "Take the carriage to the right without knitting.\n[ ] Bring needles L 5 to R 5 to working position: 10 sts."

LATCH = "st outwards, 9 rows deep, and latch it up on the other face; leave the end sts as they are."
MIDDLE = LATCH.replace("; leave", "; in the middle L 1 to R 1 stay plain; leave")
RESTS = "move the st to the needle at its right and push it out of work"

SPREAD = "Take the sts in work off on waste yarn and hang them back from the left on"
CHAINED = "chaining them through each other to the right and on to the next needle"
AGAIN = "cast on again on the same needles by e-wrap with a separate length of the yarn"


def moves(*lines: str) -> tuple[op.Operation, ...]:
    """What one size does after the needles are set out, carriage at the right."""
    body = "\n".join(f"[ ] {line}" for line in (START, *lines))
    work, faults = read_back(f"Sizes M\n\nBack\n====\n\n{body}\n\nJoining\n=======\n", 0)
    assert faults == ()
    assert work is not None
    return work.blocks[0].operations[2:]


def refused(*lines: str) -> str:
    """What is said of lines that contradict what is on the bed."""
    body = "\n".join(f"[ ] {line}" for line in (START, *lines))
    work, faults = read_back(f"Sizes M\n\nBack\n====\n\n{body}\n\nJoining\n=======\n", 0)
    assert work is None
    (fault,) = faults
    told = in_english(fault)
    return " ".join((told.message, *told.notes))


@pytest.mark.parametrize(
    ("lines", "names"),
    [
        # The stitch goes on to a needle that has one, and only one that is there is moved.
        (("Move the st of R 5 to the needle at its right and push R 5 out of work: 9 sts.",), "R 6"),
        (("Move the st of R 6 to the needle at its right and push R 6 out of work: 9 sts.",), "R 6"),
        (("Move the st of L 2 to the needle at its right and push L 3 out of work: 9 sts.",), "L 3"),
        (("Move the st of L 2 to the needle at its right and push L 2 out of work: 8 sts.",), "8"),
        (
            (
                "Move the st of L 1 to the needle at its right and push L 1 out of work: 9 sts.",
                "Move the st of L 2 to the needle at its right and push L 2 out of work: 8 sts.",
            ),
            "L 1",
        ),
        # Counted off, the last one named is one of them.
        (
            (f"Of L 3 and every 3rd needle from there to R 2 {RESTS}: 8 sts.",),
            "L 3",
        ),
        (
            (f"Of L 3 and every 1st needle from there to R 1 {RESTS}: 6 sts.",),
            "L 3",
        ),
        (
            (f"Of R 1 and every 3rd needle from there to L 3 {RESTS}: 8 sts.",),
            "R 1",
        ),
    ],
)
def test_a_needle_goes_out_of_work_beside_one_that_is_in_it(lines: tuple[str, ...], names: str) -> None:
    assert names in refused(*lines)


@pytest.mark.parametrize(
    ("words", "made"),
    [
        ("Knit 3 rows.", (op.Pass("left"), op.Pass("right"), op.Pass("left"))),
        ("Take the carriage to the right without knitting.", ()),
        ("Take the carriage to the left without knitting.", (op.MoveCarriage("left"),)),
        (
            "Decrease 1 st at both ends.",
            (op.Transfer(-5, -5, 1), op.OutOfWork(-5, -5), op.Transfer(4, 4, -1), op.OutOfWork(4, 4)),
        ),
        (
            "Decrease 2 sts at the left end.",
            (op.Transfer(-5, -5, 1), op.OutOfWork(-5, -5), op.Transfer(-4, -4, 1), op.OutOfWork(-4, -4)),
        ),
        ("Decrease 1 st at the right end, 3 sts in.", (op.Transfer(2, 4, -1), op.OutOfWork(4, 4))),
        ("Decrease 2 sts at the left end, 2 sts in.", (op.Transfer(-5, -4, 2), op.OutOfWork(-5, -4))),
        ("Increase 1 st at the right end, 2 sts in.", (op.IntoWork(5, 5), op.Transfer(3, 4, 1), op.FillFromBelow(3, 2))),
        ("Increase 1 st at the left end, 1 st in.", (op.IntoWork(-6, -6), op.Transfer(-5, -5, -1), op.FillFromBelow(-5, -4))),
        (
            "Move the st of L 2 to the needle at its right and push L 2 out of work: 9 sts. Knit 1 row. Bring L 2 back to work,"
            " empty: 10 sts.",
            (op.Transfer(-2, -2, 1), op.OutOfWork(-2, -2), op.Pass("left"), op.IntoWork(-2, -2)),
        ),
        (
            f"Of L 3 and every 3rd needle from there to R 1 {RESTS}: 8 sts.",
            (op.Transfer(-3, -3, 1), op.OutOfWork(-3, -3), op.Transfer(0, 0, 1), op.OutOfWork(0, 0)),
        ),
        # Two at a time, those beside the needle first.
        (
            "Decrease 1 st on each of L 2 and R 3, the sts outside moved inwards 2 at a time.",
            (
                *(op.Transfer(-4, -3, 1), op.Transfer(-5, -5, 1), op.OutOfWork(-5, -5)),
                *(op.Transfer(3, 4, -1), op.OutOfWork(4, 4)),
            ),
        ),
        (
            "Decrease 1 st at the right end, the outer 3 sts moved inwards 2 at a time.",
            (op.Transfer(2, 3, -1), op.Transfer(4, 4, -1), op.OutOfWork(4, 4)),
        ),
        # Those at the edge first; the gap beside the needle is filled from its stitch.
        (
            "Increase 1 st beside R 1, the sts to its left moved outwards 3 at a time.",
            (op.IntoWork(-6, -6), op.Transfer(-5, -3, -1), op.Transfer(-2, -1, -1), op.FillFromBelow(-1, 0)),
        ),
        (
            "Increase 1 st at the right end, the outer 2 sts moved outwards 1 at a time.",
            (op.IntoWork(5, 5), op.Transfer(4, 4, 1), op.Transfer(3, 3, 1), op.FillFromBelow(3, 2)),
        ),
        ("Increase 1 st at the carriage side.", (op.IntoWork(5, 5),)),
        ("Knit 1 row, increase 1 st at the carriage side.", (op.Pass("left"), op.IntoWork(-6, -6))),
        ("Cast off 2 sts at the carriage side.", (op.CastOff(3, 4, "right"),)),
        ("Knit 1 row, cast off 2 sts at the carriage side.", (op.Pass("left"), op.CastOff(-5, -4, "left"))),
        ("Cast on 2 sts by e-wrap at the carriage side.", (op.IntoWork(5, 6), op.CastOn("e-wrap", 5, 6))),
        (
            "At the left end hold 2 sts, at the left end hold 1 st, wrap the innermost needle held at the left.",
            (op.Hold(-5, -4), op.Hold(-3, -3), op.Wrap(-3)),
        ),
        (
            "At the right end hold 2 sts, carriage set to hold, knit 1 row: work this 2 times in all.",
            (op.Hold(3, 4), op.Pass("left"), op.Hold(1, 2), op.Pass("right")),
        ),
        ("At the right end hold 3 sts. Return the needles held at the right to work.", (op.Hold(2, 4), op.Release(2, 4))),
        (
            "Cast on in waste yarn with the comb and knit 2 rows, then 1 row with ravel cord.",
            (
                *(op.UseYarn("waste", "waste"), op.CastOn("comb", -5, 4), op.Pass("left"), op.Pass("right")),
                *(op.UseYarn("ravel", "ravel"), op.Pass("left")),
            ),
        ),
        ("Cast on all needles in working position by latch-tool chain.", (op.CastOn("chain", -5, 4),)),
        ("Set the row counter to 084. Knit to RC 86.", (op.SetCounter(84), op.Pass("left"), op.Pass("right"))),
        ("10 sts, RC 0, COR.", (op.Check(10, 0, "right"),)),
        ("Tie a marker thread at both ends, where “armhole” begins.", ()),
        ("Take the centre 2 sts, L 1 to R 1, off on waste yarn (neck centre).", (op.OntoWaste(-1, 0, 8, "neck centre"),)),
        # From L 2 and R 2 every third, and neither of the two end needles.
        (
            f"Beginning with L 2 and R 2, drop every 3rd {LATCH}",
            (op.LatchUp(-2, 9), op.LatchUp(1, 9)),
        ),
        (
            f"Beginning with L 2 and R 2, drop every 2nd {LATCH}",
            (op.LatchUp(-4, 9), op.LatchUp(-2, 9), op.LatchUp(1, 9), op.LatchUp(3, 9)),
        ),
        (
            f"Beginning with L 2 and R 2, drop every 2nd {MIDDLE}",
            (op.LatchUp(-4, 9), op.LatchUp(-2, 9), op.LatchUp(1, 9), op.LatchUp(3, 9)),
        ),
        (
            "Purl side facing, pick up 4 sts along the right side of the front neck, from bottom to top, on needles R 1 to"
            " R 4.",
            (op.PickUpEdge("front", "neck", "right", 0, 3, False, "purl", "bottom"),),
        ),
        (
            "Knit side facing, pick up 4 sts along the sleeve (2nd) end, from its right end to its left end, on needles R 1"
            " to R 4.",
            (op.PickUpEdge("sleeve", "end", "whole", 0, 3, False, "knit", "right", 2),),
        ),
        (
            "At the right end hold 4 sts. Return the innermost 3 sts held at the right to work.",
            (op.Hold(1, 4), op.Release(1, 3)),
        ),
        ("At the left end hold 4 sts. Return the innermost 1 st held at the left to work.", (op.Hold(-5, -2), op.Release(-2, -2))),
        # 10 loops on 8 needles: two of them get 2.
        (
            f"{SPREAD} needles L 4 to R 4, 8 sts: *1 loop on each of 2 needles, 2 loops on the next; work from * 2 times in all;"
            " 1 loop on each of the last 2 needles.",
            (op.Spread(-5, 4, -4, (1, 1, 2, 1, 1, 2, 1, 1)),),
        ),
        # 10 loops on 13 needles: three stay empty.
        (
            f"{SPREAD} needles L 6 to R 7, 13 sts: *1 loop on each of 3 needles, no loop on the next; work from * 2 times in all;"
            " *1 loop on each of 2 needles, no loop on the next; work from * 1 time in all; 1 loop on each of the last 2 needles.",
            (op.Spread(-5, 4, -6, (1, 1, 1, 0, 1, 1, 1, 0, 1, 1, 0, 1, 1)),),
        ),
        (
            f"{SPREAD} needles L 3 to R 2, 5 sts: 2 loops on each of the next 5 needles.",
            (op.Spread(-5, 4, -3, (2, 2, 2, 2, 2)),),
        ),
        (
            f"Take 2 sts, R 1 to R 2, off on waste yarn (thumb) and {AGAIN}.",
            (op.OntoWaste(0, 1, 8, "thumb"), op.IntoWork(0, 1), op.CastOn("e-wrap", 0, 1, own_length=True)),
        ),
        (
            f"Close 2 sts, L 2 to L 1, by {CHAINED}; {AGAIN}.",
            (op.Close(-2, -1, "right"), op.IntoWork(-2, -1), op.CastOn("e-wrap", -2, -1, own_length=True)),
        ),
        ("Move the st of L 2 one needle to the left and leave the empty needle in work.", (op.Transfer(-2, -2, -1),)),
        (f"Close the centre 2 sts, L 1 to R 1, by {CHAINED}.", (op.Close(-1, 0, "right"),)),
        (
            f"Close the 1 st between the parts, R 2, by {CHAINED}. Cast on 1 st by e-wrap on R 2 between the parts with a separate"
            " length of the yarn.",
            (op.Close(1, 1, "right"), op.IntoWork(1, 1), op.CastOn("e-wrap", 1, 1, own_length=True)),
        ),
        ("Thread the tail of the yarn through the sts in work, take them off the bed and draw them up.", (op.Gather(-5, 4),)),
        (
            "Of every 3rd st counted outwards from L 2 and R 2, drop those on needles L 1 to R 5,"
            " 9 rows deep, and latch them up on the other face; leave the end sts as they are.",
            (op.LatchUp(1, 9),),
        ),
        # R 5 is the end needle.
        (
            "Drop L 1, R 2 and R 5, 9 rows deep, and latch up on the other face; leave the end sts as they are.",
            (op.LatchUp(-1, 9), op.LatchUp(1, 9)),
        ),
        # Up to RC 2, and only then.
        (
            "RC 2: decrease 1 st at the left end; 9 sts.",
            (op.Pass("left"), op.Pass("right"), op.Transfer(-5, -5, 1), op.OutOfWork(-5, -5)),
        ),
        ("The left edge from RC 10 to RC 20 is called “front”.", (op.NameEdge("front", "left", 10, 20),)),
        ("The inner edges from RC 10 to RC 20 are called “neck”.", (op.NameEdge("neck", "inner", 10, 20),)),
    ],
)  # fmt: skip
def test_moves(words: str, made: tuple[op.Operation, ...]) -> None:
    assert moves(words) == made


def test_a_half_with_held_needles_waits_and_comes_back() -> None:
    made = moves(
        "At the left end hold 1 st, carriage set to hold.",
        "Take the centre 2 sts, L 1 to R 1, off on waste yarn (neck centre).",
        "Put the left part, L 4 to L 2, into hold until its turn.",
        "Decrease 1 st at the left end. Break off the yarn.",
        "Knit 8 rows of waste yarn over the sts in work and take them off the bed (right).",
        "Take the carriage to the left without knitting.",
        "Return the waiting left part, L 4 to L 2, to work.",
        "Wrap the innermost needle held at the left. Cast off the sts in work from the carriage side.",
    )
    assert made == (
        op.Hold(-5, -5),
        op.OntoWaste(-1, 0, 8, "neck centre"),
        op.Hold(-4, -2),
        op.Transfer(1, 1, 1),
        op.OutOfWork(1, 1),
        op.BreakYarn(),
        op.OntoWaste(2, 4, 8, "right"),
        op.MoveCarriage("left"),
        op.Release(-4, -2),
        op.Wrap(-5),
        op.CastOff(-5, -2, "left"),
    )


def test_two_parts_wait_at_once_and_come_together() -> None:
    made = moves(
        "At the right end hold 1 st.",
        "Put the right part, R 1 to R 4, into hold until its turn.",
        "5 sts, and 5 waiting, RC 0, COR.",
        "At the left end hold 1 st.",
        "Put the left part, L 4 to L 1, into hold until its turn.",
        "Return the waiting right part, R 1 to R 4, to work.",
        "Wrap the innermost needle held at the right. Return the needles held at the right to work.",
        "5 sts, and 5 waiting, RC 0, COR.",
        "Return the waiting left part, L 4 to L 1, to work.",
        "Wrap the innermost needle held at the left. Decrease 1 st at the right end.",
    )
    assert made == (
        op.Hold(4, 4),
        op.Hold(0, 3),
        op.Check(10, 0, "right"),
        op.Hold(-5, -5),
        op.Hold(-4, -1),
        op.Release(0, 3),
        op.Wrap(4),
        op.Release(4, 4),
        op.Check(10, 0, "right"),
        op.Release(-4, -1),
        op.Wrap(-5),
        op.Transfer(4, 4, -1),
        op.OutOfWork(4, 4),
    )


def _join(words: str, sizes: str = "M", size: int = 0) -> op.Join | None:
    """One join as it is read, None where it is refused."""
    work, faults = read_back(
        f"Sizes {sizes}\n\nBack\n====\n\nMaking up\n=========\n\n[ ] Join the b of the a to the d of the c, {words}.", size
    )
    assert (work is None) == bool(faults)
    return None if work is None else work.joins[0]


@pytest.mark.parametrize(
    ("words", "easing"),
    [
        ("40 cm to 38.5 cm, easing in up to 1.5 cm", 16),
        ("38.5 cm to 40 cm, easing in up to 1.5 cm of what it is joined to", 16),
        ("38.5 cm to 38 cm", 6),
        # More, less, on the other side, on a side that is no longer, or nothing told of it.
        ("40 cm to 38.5 cm, easing in up to 4 cm", None),
        ("40 cm to 38.5 cm, easing in up to 1.4 cm", None),
        ("38.5 cm to 40 cm, easing in up to 1.5 cm", None),
        ("40 cm to 38.5 cm, easing in up to 1.5 cm of what it is joined to", None),
        ("40 cm to 40 cm, easing in up to 1.5 cm", None),
        ("40 cm to 38.5 cm", None),
    ],
)
def test_easing_is_what_the_lengths_differ_by(words: str, easing: int | None) -> None:
    read = _join(words)
    assert (read and read.easing_mm) == easing


def test_each_size_eases_its_own_side() -> None:
    words = "40 (38: 38.2) cm to 38.5 (40: 38.5) cm, easing in up to 1.5 (–: –) cm, and up to – (2: –) cm of what it is joined to"
    read = [_join(words, "S (M: L)", size) for size in range(3)]
    assert [join and join.easing_mm for join in read] == [16, 21, 4]
    assert _join(words.replace("1.5 (–: –)", "– (–: –)"), "S (M: L)", 0) is None


def test_easing_of_named_sizes() -> None:
    words = (
        "40 (38: 40.5) cm to 38.5 (40: 38.5) cm, easing in up to 1.5 cm (S), 2 cm (L), and up to 2 cm (M) of what it is joined to"
    )
    read = [_join(words, "S (M: L)", size) for size in range(3)]
    assert [join and join.easing_mm for join in read] == [16, 21, 21]
    for wrong in (words.replace("2 cm (L)", "1.5 cm (L)"), words.replace(", 2 cm (L)", ""), words.replace("(L)", "(XL)")):
        assert _join(wrong, "S (M: L)", 2) is None


def test_what_goes_on_along_a_strip_is_of_the_longer_side() -> None:
    along = ", and on along the ends of 12 rows of c welt, 7.5 cm in all, give or take 1 cm"
    for lengths, longer in (("51.5 cm to 44 cm", 75), ("44 cm to 51.5 cm", -75)):
        read = _join(lengths + along)
        assert read is not None
        assert (read.longer_mm, read.easing_mm, read.over) == (longer, 10, (("c", "welt", 12),))


def test_joins() -> None:
    text = "Sizes M\n\nBack\n====\n\nMaking up\n=========\n\n" + "\n".join(
        f"[ ] {line}"
        for line in (
            "Join the b of the a to the d of the c.",
            "Join the b of the a from its top to the d of the 2nd c, then the f of the e, easing in up to 0.5 cm.",
            "Gather the b of the a from its left end to the d of the c from its right end, easing in 9 cm, give or take 0 cm.",
            "Pleat the b of the a from its left end to the d of the c, taking up 9 cm in the folds, give or take 0 cm.",
            "Join the b of the a to the d of the c, stretching it 2 cm, give or take 0.5 cm.",
            "Graft the b of the a to the d of the c and the e of the a to the f of the c.",
            "Join the b of each a upon itself. Gather the d of the c upon itself.",
            "Join the left b of each a to its right b.",
            "Join the left b, then the last row of each a from its top: of the 1st to the d of the c; of the 2nd to the f of the"
            " c.",
            "Join the b of each a to the d of the next one, and so on, 2 seams.",
        )
    )
    work, faults = read_back(text, 0)
    assert faults == ()
    assert work is not None
    ab, cd, rows = (("a", "b", 0),), (("c", "d", 0),), ("bottom", "bottom")
    assert work.joins == (
        op.Join(ab, cd, rows, 0),
        op.Join(ab, (("c", "d", 2), ("e", "f", 0)), ("top", "bottom"), 5),
        op.Join(ab, cd, ("left", "right"), 0, 90, "gathered"),
        op.Join(ab, cd, ("left", "bottom"), 0, 90, "pleated"),
        op.Join(ab, cd, rows, 5, -20),
        op.Join(ab, cd, rows, 0, 0, "grafted"),
        op.Join((("a", "e", 0),), (("c", "f", 0),), rows, 0, 0, "grafted"),
        op.Join(ab, (), ("", ""), 0),
        op.Join(cd, (), ("", ""), 0, 0, "gathered"),
        op.Join((("a", "b left", 0),), (("a", "b right", 0),), rows, 0),
        op.Join((("a", "b left", 1), ("a", "end", 1)), cd, ("top", "bottom"), 0),
        op.Join((("a", "b left", 2), ("a", "end", 2)), (("c", "f", 0),), ("top", "bottom"), 0),
        op.Join((("a", "b", 1),), (("a", "d", 2),), rows, 0),
        op.Join((("a", "b", 2),), (("a", "d", 3),), rows, 0),
    )


def test_a_decrease_at_a_held_end_takes_the_outermost_of_the_held() -> None:
    made = moves("At the right end hold 2 sts. Decrease 1 st at the right end. Return the needles held at the right to work.")
    assert made == (op.Hold(3, 4), op.Transfer(4, 4, -1), op.OutOfWork(4, 4), op.Release(3, 3))


@pytest.mark.parametrize(
    ("do", "why"),
    [
        (lambda h: h.knit_rows(1), "where the carriage is"),
        (lambda h: h.decrease(1, "left end"), "no needle is in work"),
        (lambda h: h.needles_to_work(0, 9, 9), "10 needles, not 9"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.hold_at_end("left", 4)), "4 stitches are asked for and 3 are there"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.needle_out(1, 2, 2)), "the stitch of R 2 is moved, and R 3 is to go out of work"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.needle_out(1, 1, 3)), "2"),
        (lambda h: (h.needles_to_work(0, 8, 9), h.needles_out_every(1, 3, 6, 7)), "it is not so many times 3 needles"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.decrease_on(2, "left end", 1, 3)), "1 stitch goes along a line at a time, not 2"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.decrease_on(1, "both ends", 1, 3)), "a needle is named for 2 ends"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.decrease_on(1, "left end", 0, 3)), "outside R 1 no stitch can be moved"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.increase_beside(1, "right end", 7, 3)), "outside R 8 no stitch can be moved"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.increase_outer(1, "right end", 2, 0)), "a tool has a prong at least"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.wrap_held("left")), "no needle is held at the left"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.return_part("left", 0, 2)), "needle R 1 is not waiting"),
        (lambda h: (h.needles_to_work(0, 2, 3), h.increase_fashioned(2, "left end", 1)), "an increase adds 1 stitch, not 2"),
        (lambda h: (h.needles_to_work(0, 1, 2), h.hold_at_end("left", 1), h.spread_evenly(0, 1, 2, ())), "while all are taken off"),
        (lambda h: (h.needles_to_work(0, 3, 4), h.slot_closed(2, 2, 3)), "no stitch beside R 4"),
        (lambda h: (h.needles_to_work(0, 3, 4), h.eyelet_at(3, "right")), "needle R 5 is not work"),
        (lambda h: (h.needles_to_work(0, 3, 4), h.stands(3)), "3 stitches should be in the part being worked, and 4 are"),
        (lambda h: (h.set_row_counter(9), h.knit_to(8)), "the counter is at 9 already"),
    ],
)  # fmt: skip
def test_what_cannot_be_obeyed(do: object, why: str) -> None:
    with pytest.raises(Contradiction) as told:
        do(Hands())  # type: ignore[operator]
    assert re.search(why, phrased(told.value.why, ENGLISH))
