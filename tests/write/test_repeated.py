"""What repeats is said once: which steps are referred to, where the line stands, and what it says is true after them."""

from __future__ import annotations

from tests.in_english import plain_text, read_back_all, write
from walewright.knit import expand
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.report.english import in_english
from walewright.write.model import Section, Sentence

Titled = tuple[str, tuple[Step, ...]]


def begun(half: int) -> tuple[Step, ...]:
    """Four lines."""
    return (
        *(st.CarriageAt("left"), st.NeedlesToWork(-half, half - 1, 2 * half), st.WasteStart(8)),
        *(st.UseYarnStep("wool", "4"), st.SetRowCounter(0), st.Now(2 * half, 0, "right")),
    )


def knitted(half: int, *rows: int) -> tuple[Step, ...]:
    return tuple(s for row in rows for s in (st.KnitTo(row), st.Now(2 * half, row, "right")))


ENDED = (st.CastOffAll(), st.BreakOff())
MARKED = st.MarkEdges("armhole", "both ends")


def block(name: str, *paragraphs: Titled, copies: int = 1) -> StepBlock:
    return StepBlock(name, copies, paragraphs)


def cast_on(half: int) -> Titled:
    return "Cast on", begun(half)


def printed(*blocks: StepBlock) -> dict[str, Section]:
    """The sections by name; the words are read back to the moves of the plan."""
    return graded((blocks,))


def graded(sizes: tuple[tuple[StepBlock, ...], ...]) -> dict[str, Section]:
    plans = tuple(SizePlan(f"{n}X", blocks) for n, blocks in enumerate(sizes))
    made = write(plans)
    assert read_back_all(plain_text(made)) == (tuple(expand(plan) for plan in plans), ())
    return {section.name: section for section in made.sections}


def lines(section: Section) -> list[tuple[str, tuple[int, ...], str]]:
    return [(p.title, s.numbers, s.text) for p in section.paragraphs for s in p.sentences]


BACK = block("back", cast_on(20), ("Knit", (*knitted(20, 54), MARKED, *knitted(20, 90))), ("Finish", ENDED))


def test_steps_are_numbered_and_what_only_states_is_not() -> None:
    back = printed(block("back", cast_on(20), ("Knit", (st.Say("Wet it."), *knitted(20, 54))), ("Finish", ENDED)))["back"]
    assert [s.numbers for s in back.sentences] == [(1,), (2,), (3,), (4,), (), (5,), (6,)]


def test_a_run_of_steps_is_one_line_that_says_what_is_true_after_it() -> None:
    front = block("front", cast_on(20), ("Knit", (*knitted(20, 54), MARKED, *knitted(20, 80))), ("Finish", ENDED))
    made = printed(BACK, front)
    assert lines(made["front"]) == [
        ("", (1, 6), "As the back, steps 1 to 6. 40 sts, RC 54, COR."),
        ("Knit", (7,), "Knit to RC 80. 40 sts, COR."),
        ("Finish", (8,), "Cast off the sts in work from the carriage side. Break off the yarn."),
    ]
    line = made["front"].sentences[0]
    assert (line.row, line.side, line.refers, line.check) == ("54", "right", "back", False)
    # Whoever asks which kinds of steps a section has is told those that it refers to.
    assert {"WasteStart", "MarkEdges", "KnitTo"} <= set(line.kinds)


def narrowed(half: int, *runs: tuple[int, int]) -> tuple[Step, ...]:
    """Decreases at both ends, every so many rows so many times."""
    steps: list[Step] = []
    row, stitches = 0, 2 * half
    for rows, times in runs:
        row, stitches = row + rows * times, stitches - 2 * times
        side = "left" if row % 2 else "right"
        steps += [st.Repeat((st.KnitRows(rows), st.Decrease("both ends", 1, 2)), times), st.Now(stitches, row, side)]
    return tuple(steps)


def told_so_far(*blocks: StepBlock) -> tuple[Sentence, ...]:
    """The lines of the last section, read back to the moves of the plan; what must be true on the way is said elsewhere."""
    plan = SizePlan("M", blocks)
    made = write((plan,))
    works, faults = read_back_all(plain_text(made))
    assert works is not None
    assert not faults
    read, planned = (
        [[move for move in block.operations if not isinstance(move, op.Check)] for block in work.blocks]
        for work in (works[0], expand(plan))
    )
    assert read == planned
    return made.sections[-1].sentences


def raglan(name: str, end: int, *runs: tuple[int, int]) -> StepBlock:
    """Decreases up to a row, which is knitted to after them."""
    left = 40 - 2 * sum(times for _, times in runs)
    told = (*narrowed(20, *runs), st.KnitTo(end), st.Now(left, end, "left" if end % 2 else "right"))
    return block(name, cast_on(20), ("Knit", (*told, MARKED)), ("Finish", ENDED))


BEFORE_IT = "before anything is done at that RC."


def test_what_goes_the_same_way_to_a_row_is_said_so_however_its_runs_are_cut() -> None:
    back = raglan("back", 40, (2, 3), (3, 8), (4, 2))
    told = [told_so_far(back, raglan("front", 19, (2, 3), *runs)) for runs in (((3, 4),), ((3, 2), (3, 2)))]
    assert [s.numbers for s in told[1]] == [(1, 5), (6,), (7,), (8,)]
    far = [[s.text for s in sentences if "from step" in s.text] for sentences in told]
    # Two steps are as easily read again.
    assert far == [
        [],
        [f"As the back, from step 6 on to RC 19, within step 6; stop there, {BEFORE_IT} 26 sts, COL."],
    ]


def test_another_way_before_that_row_is_not_the_same() -> None:
    back = raglan("back", 40, (2, 3), (3, 8), (4, 2))
    for runs in (((3, 1), (3, 1), (4, 1)), ((3, 1), (3, 1), (3, 1), (2, 1))):
        assert not any("from step" in s.text for s in told_so_far(back, raglan("front", 19, (2, 3), *runs)))


def test_what_is_done_at_the_row_itself_is_left_out() -> None:
    """The back decreases at RC 18; the front stops there before."""
    back = raglan("back", 40, (2, 3), (3, 8), (4, 2))
    told = told_so_far(back, raglan("front", 18, (2, 3), (3, 1), (3, 2)))
    assert any("on to RC 18" in s.text and "28 sts" in s.text for s in told)


def test_steps_that_never_come_to_that_row_cannot_be_worked_so_far() -> None:
    back = raglan("back", 40, (2, 3), (3, 8), (4, 2))
    text = plain_text(write((SizePlan("M", (back, raglan("front", 19, (2, 3), (3, 2), (3, 2)))),)))
    for row in ("41", "6"):
        assert read_back_all(text.replace("on to RC 19,", f"on to RC {row},"))[1]


def test_many_steps_that_are_referred_to_are_ticked_off_one_by_one() -> None:
    back = block("back", cast_on(20), ("Knit", knitted(20, *range(10, 60, 10), 90)), ("Finish", ENDED))
    few, many = (
        block("front", cast_on(20), ("Knit", (*knitted(20, *range(10, rows, 10)), MARKED)), ("Finish", ENDED)) for rows in (50, 60)
    )
    assert printed(back, few)["front"].sentences[0].ticks == ()
    assert printed(back, many)["front"].sentences[0].ticks == tuple(range(1, 10))
    text = plain_text(write((SizePlan("M", (back, many)),)))
    assert "[1] [2] [3] [4] [5] [6] [7] [8] [9]\n" in text
    faults = read_back_all(text.replace("[8] [9]", "[8] [10]"))[1]
    assert [in_english(fault).message for fault in faults] == ["front: what is ticked off below step 1 is not what that step says"]


def test_rounds_are_ticked_off() -> None:
    turn = st.Repeat((st.HoldAtEnd("right", 2), st.KnitRows(1), st.WrapHeld("right"), st.KnitRows(1)), 3)
    start, rounds = st.KnitTo(1), st.Repeat((turn, st.ReturnHeld("right"), st.KnitRows(2)), 4)
    made = printed(block("hat", cast_on(20), ("Knit", (start, st.Now(40, 1, "left"), rounds)), ("Finish", ENDED)))
    assert [s.ticks for s in made["hat"].sentences if s.ticks] == [(1, 2, 3, 4)]


def test_nothing_is_said_of_an_empty_bed() -> None:
    made = printed(BACK, block("front", cast_on(20), ("Knit", (*knitted(20, 50), MARKED, *knitted(20, 90))), ("Finish", ENDED)))
    assert lines(made["front"])[-1] == ("Knit", (6, 8), "As the back, steps 6 to 8.")


def test_nor_of_what_is_not_known() -> None:
    """After the last check something comes that changes what it stated."""
    other = st.CarriageAt("left")
    one, two = (block(n, ("Knit", (*begun(20), other, *knitted(20, row)))) for n, row in (("one", 10), ("two", 12)))
    assert lines(printed(one, two)["two"])[0] == ("Knit", (1, 5), "As the one, steps 1 to 5.")


def test_two_steps_are_said_again() -> None:
    one, two = (block(n, ("Knit", (*begun(half), *knitted(half, 10), MARKED))) for n, half in (("one", 20), ("two", 22)))
    assert all(not s.refers for s in printed(one, two)["two"].sentences)


def test_what_differs_in_one_size_is_said() -> None:
    same = graded(((BACK, block("front", *BACK.paragraphs)),) * 2)["front"]
    assert lines(same) == [("", (1, 8), "As the back, steps 1 to 8.")]
    longer = block("front", cast_on(20), ("Knit", (*knitted(20, 56), MARKED, *knitted(20, 90))), ("Finish", ENDED))
    other = graded(((BACK, block("front", *BACK.paragraphs)), (BACK, longer)))["front"]
    assert lines(other)[:2] == [
        ("Cast on", (1, 4), "As the back, steps 1 to 4. 40 sts, RC 0, COR."),
        ("Knit", (5,), "Knit to RC 54 (56). 40 sts, COR."),
    ]


def test_figures_are_graded_behind_a_reference() -> None:
    def pair(half: int, row: int) -> tuple[StepBlock, ...]:
        return tuple(
            block(name, cast_on(half), ("Knit", (*knitted(half, row, row + last), *ENDED)))
            for name, last in (("back", 30), ("front", 20))
        )

    front = graded((pair(20, 54), pair(22, 56), pair(24, 58)))["front"]
    assert lines(front)[0] == ("", (1, 5), "As the back, steps 1 to 5. 40 (44: 48) sts, RC 54 (56: 58), COR.")
    assert (front.sentences[0].row, front.sentences[0].row_graded) == ("54 (56: 58)", True)


def test_the_first_that_says_it_is_referred_to() -> None:
    third = block("third", *BACK.paragraphs, copies=2)
    made = printed(BACK, block("front", *BACK.paragraphs), third)
    assert [s.refers for s in made["third"].sentences] == ["back"]
    assert "[ ] [ ] 1 to 8. As the back, steps 1 to 8." in plain_text(write((SizePlan("M", (BACK, third)),)))


def test_a_line_that_refers_on_is_not_referred_to() -> None:
    """The third piece begins as the first and ends as the second, which begins as the first too."""
    second = block("second", cast_on(20), ("Knit", (*knitted(20, 54), MARKED, *knitted(20, 60, 70, 80, 100))), ("Finish", ENDED))
    third = block("third", *second.paragraphs)
    assert [(s.numbers, s.text) for s in printed(BACK, second, third)["third"].sentences] == [
        ((1, 6), "As the back, steps 1 to 6. 40 sts, RC 54, COR."),
        ((7, 11), "As the second, steps 7 to 11."),
    ]


def test_what_two_sections_of_one_name_say_is_not_referred_to() -> None:
    """In one size the piece is knitted before another, in the other after it, so that it has two sections."""
    other = block("other", cast_on(30), ("Finish", ENDED))
    last = block("last", *BACK.paragraphs)
    plans = (SizePlan("S", (BACK, other, last)), SizePlan("M", (other, BACK, last)))
    made = write(plans)
    assert [s.name for s in made.sections].count("back") + [s.name for s in made.sections].count("other") == 3
    twice = next(name for name in ("back", "other") if [s.name for s in made.sections].count(name) == 2)
    assert all(s.refers != twice for section in made.sections for s in section.sentences)
    assert read_back_all(plain_text(made)) == (tuple(expand(plan) for plan in plans), ())


def test_names_stand_as_in_headings() -> None:
    one = block("Left_front", *BACK.paragraphs)
    made = printed(one, block("b", *BACK.paragraphs))
    assert made["b"].sentences[0].text == "As the “Left\N{NO-BREAK SPACE}front”, steps 1 to 8."


def test_lines_for_some_sizes_only() -> None:
    """What only one size works is referred to with the rest, and by itself stays under its head."""
    more = (st.EyeletAt(3, "right"), st.EyeletAt(5, "right"), st.EyeletAt(7, "right"))

    def piece(name: str, row: int, *some: Step) -> StepBlock:
        return block(name, ("Knit", (*begun(20), *some, *knitted(20, row), *ENDED)))

    small, large = (tuple(piece(name, 20, *some) for name in ("one", "two")) for some in ((), more))
    (head,) = graded((small, large))["two"].paragraphs
    assert (head.only, [s.numbers for s in head.sentences]) == ("", [(1, 9)])
    small, large = (tuple(piece(name, row, *some) for name, row in (("one", 20), ("two", 30))) for some in ((), more))
    made = graded((small, large))["two"]
    assert next((p.only, s.numbers, s.refers) for p in made.paragraphs for s in p.sentences) == ("", (1, 7), "one")


def test_a_reference_for_all_after_a_head_for_some() -> None:
    """The head ends before it."""
    more = (st.EyeletAt(3, "right"), st.EyeletAt(5, "right"))

    def piece(name: str, *some: Step) -> StepBlock:
        return block(
            name, ("Cast on", begun(20)), ("Knit", (*some, *knitted(20, 10))), ("Go on", knitted(20, 20)), ("Finish", ENDED)
        )

    first = piece("one")
    plans = ((first, piece("two")), (first, piece("two", *more)))
    made = graded(plans)["two"]
    assert [(p.title, p.only, [s.numbers for s in p.sentences]) for p in made.paragraphs] == [
        ("Cast on", "", [(1, 4)]),
        ("Knit", "1X only", [(5,), (6,)]),
        ("All sizes", "", [(7, 9)]),
    ]


def test_shapings_that_go_on_together_are_one() -> None:
    """The line that names their rows has no number, and is never left behind."""

    def piece(name: str, end: int, eyelet: int = 0) -> StepBlock:
        left = st.Track("left edge", (st.Repeat((st.KnitRows(2), st.Decrease("left end", 1, 2)), 2), st.KnitRows(end - 4)))
        right = st.Track("right edge", (st.Repeat((st.KnitRows(2), st.Decrease("right end", 1, 2)), 1), st.KnitRows(end - 2)))
        third = st.Track("eyelet", (st.KnitRows(1), st.EyeletAt(eyelet, "right"), st.KnitRows(end - 1)))
        together = st.Together(20, 20 + end, (left, right, third))
        return block(name, ("Knit", (*begun(20), *knitted(20, 20), together, st.Now(37, 20 + end, "right"), *ENDED)))

    same = graded(((piece("one", 6), piece("two", 6)), (piece("one", 8), piece("two", 8))))
    assert [s.numbers for s in same["one"].sentences] == [(1,), (2,), (3,), (4,), (5,), (), (6,), (7,), (8,), (), (9,)]
    assert [s.numbers for s in same["two"].sentences] == [(1, 9)]
    other = graded(((piece("one", 6), piece("two", 6, 1)), (piece("one", 8), piece("two", 8, 1))))
    assert [s.numbers for s in other["two"].sentences] == [(1, 5), (), (6,), (7,), (8,), (), (9,)]


def test_tables_are_one() -> None:
    """The note above the rows goes with them."""

    def piece(name: str, last: int) -> StepBlock:
        rows = tuple(
            step
            for n in range(5)
            for step in (st.KnitRows(2), st.Decrease("left end" if n % 2 else "right end", 1, 2, origin=f"edge {n % 2}"))
        )
        shaped = (*knitted(20, 20), *rows, st.KnitTo(last), st.Now(35, last, "right"), *ENDED)
        return block(name, ("Knit", (*begun(20), *shaped)))

    made = printed(piece("one", 40), piece("two", 42))
    table = next(p for p in made["one"].paragraphs if p.table)
    assert [s.numbers for s in table.sentences] == [(), (6,), (7,), (8,), (9,), (10,)]
    assert [s.numbers for s in made["two"].sentences] == [(1, 10), (11,), (12,)]
    assert not any(p.table for p in made["two"].paragraphs)


def test_the_step_in_which_one_stops_is_named_and_read() -> None:
    """It is another one where a size has worked the one before it to its end already."""
    back = raglan("back", 40, (2, 3), (3, 8), (4, 2))
    front = raglan("front", 19, (2, 3), (3, 2), (3, 2))
    small, large = SizePlan("S", (back, front)), SizePlan("L", (raglan("back", 40, (2, 3), (3, 4), (4, 2)), front))
    made = write((small, large))
    (far,) = (s.text for s in made.sections[-1].sentences if "from step" in s.text)
    assert "on to RC 19, within step 6 (7); stop there" in far
    text = plain_text(made)
    works, faults = read_back_all(text)
    assert works is not None
    assert not faults
    for wrong in ("step 6", "step 7 (7)", "step 6 (8)"):
        works, faults = read_back_all(text.replace("step 6 (7)", wrong))
        assert works is None
        assert [fault.code for fault in faults] == ["words-contradict"]
