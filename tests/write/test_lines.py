"""What becomes one printed line, and what goes under a head for some sizes."""

from __future__ import annotations

from tests.in_english import write
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan, Step, StepBlock
from walewright.write.model import Paragraph


def paragraphs(*sizes: tuple[Step, ...]) -> tuple[Paragraph, ...]:
    plans = tuple(SizePlan(f"s{i}", (StepBlock("back", 1, (("Knit", steps),)),)) for i, steps in enumerate(sizes))
    return write(plans).sections[0].paragraphs


def texts(*sizes: tuple[Step, ...]) -> list[str]:
    (paragraph,) = paragraphs(*sizes)
    return [s.text for s in paragraph.sentences]


def outline(*sizes: tuple[Step, ...]) -> list[tuple[str, str, list[str]]]:
    return [(p.title, p.only, [s.text for s in p.sentences]) for p in paragraphs(*sizes)]


def test_rows_and_the_shaping_after_them_are_one_sentence() -> None:
    steps = (st.KnitRows(2), st.Decrease("left end", 1, 0), st.HoldAtEnd("right", 4), st.KnitRows(1), st.WrapHeld("right"))
    assert texts(steps) == [
        "Knit 2 rows, decrease 1 st at the left end, at the right end hold 4 sts, carriage set to hold.",
        "Knit 1 row, wrap the innermost needle held at the right.",
    ]


def test_what_is_one_turn_of_the_hands_is_one_line() -> None:
    steps = (
        st.UseYarnStep("wool", "4"),
        st.SetRowCounter(0),
        st.CastOffAll(),
        st.BreakOff(),
        st.BreakOff(),
        st.OffOnWaste(8, "end"),
        st.ReturnHeld("left"),
        st.KnitRows(1),
    )
    assert texts(steps) == [
        "Thread wool; carriage at tension 4. Set the row counter to 000.",
        "Cast off the sts in work from the carriage side. Break off the yarn.",
        "Break off the yarn. Knit 8 rows of waste yarn over the sts in work and take them off the bed (last row).",
        "Return the needles held at the left to work, carriage set to knit all. Knit 1 row.",
    ]


def test_what_must_be_true_ends_the_line_before() -> None:
    (paragraph,) = paragraphs((st.KnitTo(20), st.Now(80, 20, "right")), (st.KnitTo(24), st.Now(84, 24, "right")))
    (sentence,) = paragraph.sentences
    assert sentence.text == "Knit to RC 20 (24). 80 (84) sts, COR."
    assert (sentence.row, sentence.side, sentence.check) == ("20 (24)", "right", False)
    assert [r.kind for r in sentence.runs] == ["word", "number", "word", "check", "word"]


def test_what_must_be_true_stands_alone_where_the_line_before_is_for_fewer_sizes() -> None:
    repeat = st.Repeat((st.KnitRows(2), st.Decrease("both ends", 1, 2)), 3)
    now = st.Now(80, 20, "right")
    (paragraph,) = paragraphs((repeat, now), (now,), (repeat, now))
    first, second = paragraph.sentences
    assert first.text == "Knit 2 rows, decrease 1 st at both ends, 2 sts in: work this 3 (–: 3) times in all."
    assert (first.sizes, first.row, first.check) == ((0, 2), "", False)
    assert second.text == "80 sts, RC 20, COR."
    assert (second.sizes, second.row, second.check) == ((0, 1, 2), "20", True)


def test_the_counter_is_not_said_twice() -> None:
    assert texts((st.SetRowCounter(6), st.Now(80, 6, "right"))) == ["Set the row counter to 006. 80 sts, COR."]
    # What differs from the words before, in any size, is said.
    one, other = (st.KnitTo(6), st.Now(80, 6, "right")), (st.KnitTo(6), st.Now(80, 8, "right"))
    assert texts(one, other) == ["Knit to RC 6. 80 sts, RC 6 (8), COR."]
    assert texts((st.KnitRows(6), st.Now(80, 6, "right"))) == ["Knit 6 rows. 80 sts, RC 6, COR."]


def test_carriages_at_both_sides_are_graded() -> None:
    (paragraph,) = paragraphs((st.KnitTo(6), st.Now(80, 6, "right")), (st.KnitTo(7), st.Now(80, 7, "left")), (st.KnitTo(8),))
    (sentence,) = paragraph.sentences
    assert sentence.text == "Knit to RC 6 (7: 8). 80 (80: –) sts, COR (COL: –)."
    assert (sentence.row, sentence.side) == ("6 (7: –)", "")


def test_a_line_that_most_skip_gets_a_head() -> None:
    rest = (st.KnitTo(9),)
    assert outline((st.KnitRows(2), *rest), (st.KnitRows(2), *rest), rest) == [
        ("Knit", "", ["Knit 2 (2: –) rows.", "Knit to RC 9."]),
    ]
    assert outline((st.KnitRows(2), *rest), rest, rest) == [
        ("Knit", "s0 only", ["Knit 2 rows."]),
        ("All sizes", "", ["Knit to RC 9."]),
    ]


def test_a_line_without_numbers_that_some_skip_gets_a_head() -> None:
    assert outline((st.KnitTo(4), st.BreakOff(), st.KnitTo(6)), (st.KnitTo(4), st.KnitTo(6))) == [
        ("Knit", "", ["Knit to RC 4."]),
        ("", "s0 only", ["Break off the yarn."]),
        ("All sizes", "", ["Knit to RC 6."]),
    ]


def test_several_lines_for_the_same_sizes_get_one_head() -> None:
    mine = (st.KnitTo(4), st.Decrease("left end", 1, 2), st.KnitTo(6))
    assert outline((st.MarkEdges("side"),), (st.MarkEdges("side"), *mine), (st.MarkEdges("side"), *mine)) == [
        ("Knit", "", ["Tie a marker thread at both ends, where “side” begins."]),
        ("", "s1, s2 only", ["Knit to RC 4.", "Decrease 1 st at the left end, 2 sts in.", "Knit to RC 6."]),
    ]


def test_numbers_under_a_head_keep_their_place() -> None:
    made = outline((), (st.KnitTo(4), st.BreakOff(), st.KnitTo(6)), (st.KnitTo(5), st.BreakOff(), st.KnitTo(6)))
    assert made == [("Knit", "s1, s2 only", ["Knit to RC – (4: 5).", "Break off the yarn.", "Knit to RC 6."])]


def test_the_next_title_ends_a_head() -> None:
    def block(*paragraphs: tuple[str, tuple[Step, ...]]) -> SizePlan:
        return SizePlan("s", (StepBlock("back", 1, paragraphs),))

    knit, finish = ("Knit", (st.KnitTo(4),)), ("Finish", (st.CastOffAll(),))
    some = ("Neck", (st.BreakOff(),))
    made = write((block(knit, some, finish), block(knit, finish)), ("a", "b")).sections[0].paragraphs
    assert [(p.title, p.only) for p in made] == [("Knit", ""), ("Neck", "a only"), ("Finish", "")]


def test_a_paragraph_without_title_goes_on() -> None:
    plan = SizePlan("s", (StepBlock("back", 1, (("Half", (st.CastOffAll(),)), ("", (st.BreakOff(),)))),))
    (paragraph,) = write((plan,)).sections[0].paragraphs
    assert [s.text for s in paragraph.sentences] == ["Cast off the sts in work from the carriage side. Break off the yarn."]


def test_rows_and_repeats_of_nothing_are_not_said() -> None:
    nothing = st.Repeat((st.BreakOff(),), 0)
    some, none = (st.KnitTo(4), st.KnitRows(2), nothing), (st.KnitTo(4), st.KnitRows(0), nothing)
    assert texts(none, some, some) == ["Knit to RC 4.", "Knit – (2: 2) rows."]


def test_notes_are_the_author_s_words_and_not_ticked() -> None:
    (paragraph,) = paragraphs((st.Say("Mind\n the edge "), st.KnitTo(3), st.Now(5, 3, "left")))
    note, work = paragraph.sentences
    assert (note.text, note.check) == ("Note: Mind the edge", True)
    assert not work.check


def test_origins_are_kept() -> None:
    (paragraph,) = paragraphs((st.KnitTo(3, origin="piece back"), st.Now(5, 3, "left", origin="piece front")))
    assert paragraph.sentences[0].origin == "piece back"


def test_two_titles_of_one_paragraph_are_one() -> None:
    def block(title: str) -> SizePlan:
        return SizePlan("s", (StepBlock("back", 1, (("Cast on", (st.KnitTo(4),)), (title, (st.KnitTo(6),)))),))

    made = write((block("Knit"), block("Knit and shape")), ("a", "b")).sections[0].paragraphs
    assert [(p.title, p.only) for p in made] == [("Cast on", ""), ("Knit and shape", "")]


def test_a_line_tells_the_kinds_of_its_steps() -> None:
    repeat = st.Repeat((st.KnitRows(2), st.KnitRows(0), st.Repeat((st.Decrease("both ends", 1, 2), st.KnitRows(1)), 2)), 3)
    (paragraph,) = paragraphs(
        (st.Say("Rest."), st.UseYarnStep("wool", "4"), st.SetRowCounter(0), st.Now(80, 0, "right"), repeat, st.Now(68, 12, "right"))
    )
    assert [s.kinds for s in paragraph.sentences] == [
        ("Say",),
        ("UseYarnStep", "SetRowCounter", "Now"),
        ("Repeat", "RepeatInside", "KnitRows", "Repeat", "Decrease 1 in", "KnitRows", "Now"),
    ]


def test_a_head_over_what_is_not_for_all_sizes_names_those_that_it_is_for() -> None:
    """After lines of the first size comes one that the third skips, and one that only the second has."""
    some, none = (st.KnitRows(2), st.BreakOff(), st.KnitRows(4)), (st.BreakOff(), st.KnitRows(4))
    made = outline((*some, st.KnitTo(9)), (*none, st.KnitTo(9)), (st.BreakOff(), st.KnitTo(9)))
    assert [(title, only) for title, only, _ in made][:2] == [("Knit", "s0 only"), ("All sizes", "")]
    made = outline(some, none, (st.Repeat((st.KnitRows(2),), 0),))
    assert [(title, only) for title, only, _ in made] == [("Knit", "s0 only"), ("", "s0, s1 only")]
