"""The other half beside an opening, and a welt on another piece: said by what stands above, read where it stands, worked here; and
references of that kind that are broken."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from tests.in_english import plain_text, read_back_all, write
from tests.write.garments import joined, joining
from tests.write.test_repeated import BACK, ENDED, block, cast_on, knitted
from walewright.bed import Bed, knit
from walewright.knit import expand
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.readback import read_back_all as read_back_in
from walewright.readback.english import LANGUAGE as ENGLISH_READ
from walewright.readback.german import LANGUAGE as GERMAN_READ
from walewright.readback.language import ReadLanguage
from walewright.readback.layout import laid_out
from walewright.report.english import in_english
from walewright.report.said import said
from walewright.trade.sides import EdgeSide
from walewright.write import plain_text as plain_text_in
from walewright.write import write as write_in
from walewright.write.english import LANGUAGE as ENGLISH
from walewright.write.german import LANGUAGE as GERMAN
from walewright.write.language import PrintedLanguage


def half(side: EdgeSide, *between: Step, waiting: int = 0, held: int = 5, last: int = 62) -> tuple[Step, ...]:
    far: EdgeSide = "left" if side == "right" else "right"
    now, later = (st.NowInHalf(15, row, far, waiting) if waiting else st.Now(15, row, far) for row in (57, 59))
    return (
        *(st.KnitRows(1), st.CastOffAtCarriage(2), st.KnitRows(2), st.Decrease(f"{side} end", 1, 0), now),
        *(st.HoldAtEnd(side, held), st.KnitRows(1), st.WrapHeld(side), st.KnitRows(1), st.ReturnHeld(side), later, *between),
        *(st.KnitTo(last), st.BreakOff(), st.OffOnWaste(8, f"shoulder {side}")),
    )


def parted(name: str, *other_half: Step) -> StepBlock:
    right = (st.CentreToWaste(4, -2, 1, "neck centre"), st.HoldPart("left", -20, -3), *half("right", waiting=18))
    back = (st.CarriageAt("left"), st.SetRowCounter(54), st.ReturnPart("left", -20, -3), st.UseYarnStep("wool", "4"))
    titled = (("Right half", right), ("Left half", (*back, *other_half)))
    return block(name, cast_on(20), ("Knit", knitted(20, 54)), *titled)


def welt(piece: str, stitches: int = 40) -> StepBlock:
    far = stitches // 2
    hung = (st.CarriageAt("right"), st.NeedlesToWork(-far, far - 1, stitches), st.RehangStart(piece, stitches))
    return block(f"{piece} welt", ("Hang on", hung), ("Knit", (st.UseYarnStep("wool", "2"), *ENDED)))


BED = Bed(100, (1, 2, 3))
PARTED = (SizePlan("S", (parted("back", *half("left")),)),)
WELTS = (SizePlan("S", (BACK, welt("back"), block("front", *BACK.paragraphs), welt("front"))),)


def texts(plans: tuple[SizePlan, ...], section: str) -> list[str]:
    """What a section says; the words are read back to the moves of the plan, in both languages."""
    made = write(plans)
    works = tuple(expand(plan) for plan in plans)
    assert read_back_all(plain_text(made)) == (works, ())
    assert read_back_in(plain_text_in(write_in(plans, GERMAN), GERMAN), GERMAN_READ) == (works, ())
    return [s.text for one in made.sections if one.name == section for s in one.sentences]


def test_the_other_half_is_the_first_one_mirrored() -> None:
    assert texts(PARTED, "back")[-1] == "As steps 8 to 14, mirrored."
    line = write(PARTED).sections[0].sentences[-1]
    assert (line.numbers, line.kinds[0], line.refers) == ((18, 24), "Mirrored", "")


def test_what_is_true_after_it_is_said_of_the_other_half() -> None:
    told = texts((SizePlan("S", (parted("back", *half("left", last=64)),)),), "back")
    assert told[17:19] == ["As steps 8 to 12, mirrored. 15 sts, RC 59, COR.", "Knit to RC 64."]


def test_what_differs_in_a_half_is_said() -> None:
    told = texts((SizePlan("S", (parted("back", *half("left", held=6)),)),), "back")
    assert told[-2:] == ["At the left end hold 6 sts, carriage set to hold.", "As steps 11 to 14, mirrored."]


def test_nor_is_one_mirrored_that_names_needles() -> None:
    eyelet = half("left", st.EyeletAt(-10, "right"))
    told = texts((SizePlan("S", (parted("back", *eyelet),)),), "back")
    assert told[-2:-1] != ["As steps 8 to 14, mirrored."]
    assert any("L 10" in text for text in told)


def at_once(side: EdgeSide, rows: int = 4) -> tuple[Step, ...]:
    """Short rows at the shoulder while the neck is shaped."""
    far: EdgeSide = "left" if side == "right" else "right"
    short = st.Repeat((st.HoldAtEnd(side, 5), st.KnitRows(1), st.WrapHeld(side), st.KnitRows(1)), 2)
    neck = (st.KnitRows(2), st.Decrease(f"{far} end", 1, 0), st.KnitRows(rows - 2))
    tracks = (
        st.Track(said("short-rows", side=side), (short, st.ReturnHeld(side), st.KnitRows(rows - 4))),
        st.Track("neck", neck),
    )
    return (st.KnitRows(1), st.CastOffAtCarriage(2), st.Together(55, 55 + rows, tracks), *half(side)[-3:])


def test_shapings_that_go_on_at_the_same_time_are_mirrored_too() -> None:
    right = (st.CentreToWaste(4, -2, 1, "neck centre"), st.HoldPart("left", -20, -3), *at_once("right"))
    back = (st.CarriageAt("left"), st.SetRowCounter(54), st.ReturnPart("left", -20, -3), st.UseYarnStep("wool", "4"))
    titled = (("Right half", right), ("Left half", (*back, *at_once("left"))))
    plans = (SizePlan("S", (block("back", cast_on(20), ("Knit", knitted(20, 54)), *titled),)),)
    told = texts(plans, "back")
    assert "At the same time, from RC 55 to RC 59:" in told
    assert told[-1] == "As steps 8 to 12, mirrored."
    longer = (*back, *at_once("left", 6))
    other = block("back", cast_on(20), ("Knit", knitted(20, 54)), ("Right half", right), ("Left half", longer))
    assert sum("For the neck" in text for text in texts((SizePlan("S", (other,)),), "back")) == 2


def test_where_another_piece_would_have_to_say_more_halves_are_said() -> None:
    """The front has both halves of the back with what is between them: one line, if the back says both."""
    front = parted("front", *half("left"))
    told = texts((SizePlan("S", (parted("back", *half("left")), front)),), "front")
    assert told == ["As the back, steps 1 to 24."]


def test_a_second_welt_is_the_first_one_on_another_piece() -> None:
    assert texts(WELTS, "front welt") == ["As the back welt, steps 1 to 5, but on the front."]


def test_one_of_other_stitches_is_not() -> None:
    front = block("front", cast_on(22), ("Knit", (*knitted(22, 54), *ENDED)))
    told = texts((SizePlan("S", (BACK, welt("back"), front, welt("front", 44))),), "front welt")
    assert not any("but on" in text for text in told)


def refused(text: str, was: str, instead: str) -> str:
    damaged = text.replace(was, instead)
    assert damaged != text
    works, (fault,) = read_back_all(damaged)
    assert works is None
    assert fault.code == "words-contradict"
    span = fault.labels[0].span
    assert damaged[span.start : span.end].startswith("[ ] ")
    return in_english(fault).message


@pytest.mark.parametrize(
    ("instead", "message"),
    [
        ("As steps 9 to 14, mirrored", "back: this is 7 steps, and 6 are referred to"),
        ("As steps 18 to 24, mirrored", "back: the back has no steps 18 to 24"),
        ("As steps 14 to 8, mirrored", "back: the back has no steps 14 to 8"),
        ("As steps 7 to 13, mirrored", "back: these steps cannot be worked mirrored"),
        ("As steps 8 to 14, mirrored. 15 sts, RC 62, COL", "back: 15 stitches should be on the bed, and 0 are"),
    ],
)
def test_broken_references_to_the_first_half_are_refused(instead: str, message: str) -> None:
    assert refused(plain_text(write(PARTED)), "As steps 8 to 14, mirrored", instead) == message


def test_a_half_that_begins_at_the_other_side_is_another_fabric() -> None:
    """The check says which side the carriage has to be at, mirrored; the bed finds it elsewhere."""
    text = plain_text(write(PARTED))
    damaged = text.replace("15. Take the carriage to the left", "15. Take the carriage to the right")
    assert damaged != text
    (work,), faults = read_back_all(damaged)[0] or (None,), read_back_all(damaged)[1]
    assert not faults
    assert work is not None
    assert {fault.code for fault in knit(work, BED).faults} != {fault.code for fault in knit(expand(PARTED[0]), BED).faults}


@pytest.mark.parametrize(
    ("instead", "message"),
    [
        ("As the back welt, steps 2 to 5, but on the front", "front welt: this is 5 steps, and 4 are referred to"),
        ("As the front welt, steps 1 to 5, but on the front", "front welt: no section before this one is called front welt"),
        ("As the back, steps 1 to 5, but on the front", "front welt: the steps that are referred to hang no first row of a piece"),
    ],
)
def test_broken_references_to_another_piece_are_refused(instead: str, message: str) -> None:
    assert refused(plain_text(write(WELTS)), "As the back welt, steps 1 to 5, but on the front", instead) == message


def test_another_piece_is_another_seam() -> None:
    text = plain_text(write(WELTS))
    works, faults = read_back_all(text.replace("but on the front", "but on the hood"))
    assert not faults
    assert works != tuple(expand(plan) for plan in WELTS)


def test_a_link_is_named_whole_behind_its_colon() -> None:
    """In German its edge stands behind a colon, as where a part of a band runs does: it is a link all the same."""
    text = "Größen S\n\nVerbinden: Schulter rechts von back, auf dem Nadelbett\n" + "=" * 54 + "\n"
    (section,) = laid_out(text, GERMAN_READ).sections
    assert section.name == "back shoulder right link"


def test_the_other_half_tells_what_is_true_before_its_stitches_are_taken_off() -> None:
    def stated(steps: tuple[Step, ...], now: Step) -> tuple[Step, ...]:
        at = next(n for n, step in enumerate(steps) if isinstance(step, st.KnitTo))
        return (*steps[: at + 1], now, *steps[at + 1 :])

    block = parted("back", *stated(half("left"), st.Now(15, 62, "left")))
    right = stated(block.paragraphs[-2][1], st.NowInHalf(15, 62, "right", 18))
    plans = (SizePlan("S", (replace(block, paragraphs=(*block.paragraphs[:-2], ("Right half", right), block.paragraphs[-1])),)),)
    told = next(text for text in texts(plans, "back") if "mirrored" in text)
    assert "Before step" in told
    assert told.endswith("RC 62, COL.")
    text = plain_text(write(plans))
    number = told.split("Before step ")[1].split(":")[0]
    wrong = text.replace(f"Before step {number}:", f"Before step {int(number) - 1}:"), text.replace("RC 62, COL.", "RC 61, COL.")
    for damaged in wrong:
        assert damaged != text
        _, faults = read_back_all(damaged)
        assert [fault.code for fault in faults] == ["words-contradict"]


def grafted_halves(begin: str) -> tuple[SizePlan, ...]:
    """Both halves of a piece grafted together, told from that end of the right one; its tail hangs at the right."""
    ends = f"{begin} {'left' if begin == 'right' else 'right'}"
    join = joined("back shoulder right", "back shoulder left", 0, 0, "grafted", edges="at tail", ends=ends)
    return (SizePlan("S", (parted("back", *half("left")), joining(join))),)


def test_a_graft_is_read_to_begin_where_its_tail_hangs() -> None:
    texts(grafted_halves("right"), "joining")
    _, faults = read_back_all(plain_text(write(grafted_halves("left"))))
    assert [fault.code for fault in faults] == ["words-contradict"]
    assert "tail" in in_english(faults[0]).message + "".join(in_english(faults[0]).notes)


def test_the_carriage_passes_held_loops_set_to_hold_where_none_is_in_work() -> None:
    text = plain_text(write(PARTED))
    turned = "Take the carriage to the left without knitting"
    assert turned in text
    begun, _, half_turned = text.rpartition(turned)
    held = f"{begun}If the carriage is not at the left, take it there without knitting, set to hold{half_turned}"
    assert read_back_all(held) == read_back_all(text)
    first = "If the carriage is not at the left, take it there without knitting, set to hold. Knit 1 row"
    _, faults = read_back_all(text.replace("Knit 1 row, cast off 2 sts", f"{first}, cast off 2 sts", 1))
    assert [fault.code for fault in faults] == ["words-contradict"]


@pytest.mark.parametrize("language", [(ENGLISH, ENGLISH_READ), (GERMAN, GERMAN_READ)], ids=["english", "german"])
@pytest.mark.parametrize("edges", ["no tail", "at tail"])
def test_a_graft_of_a_first_row_counts_its_edge_loop(language: tuple[PrintedLanguage, ReadLanguage], edges: str) -> None:
    """It hangs on ravel cord; no other row does, and of no other is that said."""
    written, read = language
    told = written.sentences["how/first_row"]

    def text(one: str) -> str:
        ends = "right left" if edges == "at tail" else "bottom bottom"
        join = joined(one, "back shoulder left", 0, 0, "grafted", edges=edges, ends=ends)
        plans = (SizePlan("S", (parted("back", *half("left")), joining(join))),)
        return re.sub("\n {4,}", " ", plain_text_in(write_in(plans, written), written))

    def faults(page: str) -> list[str]:
        return [fault.code for fault in read_back_in(page, read)[1]]

    other, first = text("back shoulder right"), text("back start")
    assert told not in other
    assert faults(other) == []
    assert first.count(told) == 1
    if edges == "no tail":
        assert faults(first) == []
    assert faults(first.replace(told, "")) == ["words-contradict"]
    how = written.sentences[f"how/{edges.replace(' ', '_')}"]
    assert faults(other.replace(how, how + told)) == ["words-contradict"]
