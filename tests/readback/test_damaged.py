"""A damaged text is refused with a code, never worked and never an exception."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as hs

from tests.draws import draws
from tests.in_english import plain_text, read_back, read_back_all, write
from tests.write.garments import three_sizes
from walewright.knit import expand
from walewright.report.english import in_english

TEXT = plain_text(write(three_sizes()))


@pytest.mark.parametrize(
    ("there", "instead", "code"),
    [
        ("Sizes XS (S: M)", "Sizes XS (S)", "words-size-count"),
        ("Sizes XS (S: M)\n", "", "words-no-sizes"),
        ("[ ]  5. Knit to RC 10.", "[ ]  5. Knit to RC ten.", "words-unreadable"),
        ("[ ]  5. Knit to RC 10.", "[ ]  5. Knit on to RC 10.", "words-unreadable"),
        ("[ ]  5. Knit to RC 10.", "[ ]  5. Knit to RC 10", "words-unreadable"),
        ("[ ]  5. Knit to RC 10.", "Knit to RC 10.", "words-unreadable"),
        ("[ ]  5. Knit to RC 10.", "[ ]  5. Knit to RC 10 (12).", "words-size-count"),
        ("[ ]  5. Knit to RC 10.", "[ ]  5. Knit to RC 10 (12: 14: 16).", "words-size-count"),
        ("Right half\n----------", "Right half\n----------\nXS, L only", "words-size-count"),
        ("R 45 (48: 51) to working", "R 44 (48: 51) to working", "words-contradict"),
        ("row counter to 000.", "row counter to 011.", "words-contradict"),
        ("12. Return the needles held at the right", "12. Return the needles held at the left", "words-contradict"),
        ("L 42 (48: 47) to L 7, into hold", "L 42 (48: 47) to L 6, into hold", "words-contradict"),
        ("[ ]  1. Take the carriage to the left without knitting.", "[ ]  1. Note: it is there.", "words-contradict"),
        ("RC 22 (–: 34), COR", "RC 22 (10: 34), COR", "words-contradict"),
        ("hang the 90 (96: 102) loops", "hang the 91 (96: 102) loops", "words-contradict"),
        ("Beginning with L 2 and R 2", "Beginning with L 2 and R 3", "words-contradict"),
        ("[ ] 2. Join the", "[ ] 2. Break off the yarn. Join the", "words-contradict"),
        ("[ ] 13. Break off the yarn.", "[ ] 13. Join the side of the back to the side of the front.", "words-contradict"),
    ],
)
def test_damage(there: str, instead: str, code: str) -> None:
    assert there in TEXT
    damaged = TEXT.replace(there, instead, 1)
    works, faults = read_back_all(damaged)
    assert works is None
    assert {f.code for f in faults} == {code}
    # Size by size, those it concerns are refused for the same reasons.
    refused = [read_back(damaged, size) for size in range(3)]
    assert {f for work, told in refused if work is None for f in told} == set(faults)


def test_a_fault_shows_its_line() -> None:
    text = TEXT.replace("decrease 1 st", "decreese 1 st")
    _, (fault,) = read_back(text, 0)
    span = fault.labels[0].span
    line = text[span.start : span.end]
    assert line.startswith("[ ]  6. Knit 4 (–: 6) rows, decreese")
    assert line.endswith("COR.")
    assert "decreese 1" in in_english(fault).notes[0]


def test_every_bad_line_is_told_once() -> None:
    text = TEXT.replace("Knit to RC", "Knit till RC")
    _, faults = read_back(text, 0)
    assert [f.code for f in faults] == ["words-unreadable"] * TEXT.count("Knit to RC")


@pytest.mark.parametrize("size", [-1, 3, 99])
def test_a_size_that_is_not_there(size: int) -> None:
    work, (fault,) = read_back(TEXT, size)
    assert work is None
    assert fault.code == "words-no-such-size"


@pytest.mark.parametrize("number", ["12", "90", "57"])
def test_another_number_is_other_work(number: str) -> None:
    """Whatever cannot be seen from the words alone reaches the bed as a different garment."""
    changed = TEXT.replace("Knit to RC 12.", f"Knit to RC {number}.")
    work, faults = read_back(changed, 0)
    assert faults == ()
    assert (work == expand(three_sizes()[0])) is (number == "12")


@settings(max_examples=draws(150), deadline=None)
@given(hs.data())
def test_no_damage_is_an_exception(data: hs.DataObject) -> None:
    at = data.draw(hs.integers(0, len(TEXT) - 1))
    gone = data.draw(hs.integers(0, 40))
    put = data.draw(hs.text(" \n[]()-–:.,0123456789LRabkKnt=“”", max_size=6))
    damaged = TEXT[:at] + put + TEXT[at + gone :]
    for size in range(3):
        work, faults = read_back(damaged, size)
        assert (work is None) is (faults != ())


@pytest.mark.parametrize(
    "sentence",
    [
        "[[Knit 9999 rows: work this 9999 times in all]: work this 9999 times in all]: work this 9999 times in all.",
        "[[Knit – (–: 1) rows: work this 9999 times in all]: work this 9999 times in all], break off the yarn, join a b to c d.",
        "[" * 2000 + "Knit 1 row" + "]" * 2000 + ".",
        f"Knit {'9' * 5000} rows.",
    ],
    ids=["a lifetime's", "nothing often", "deep", "long"],
)
def test_what_nobody_could_do(sentence: str) -> None:
    work, (fault,) = read_back(TEXT.replace("[ ]  5. Knit to RC 10.", f"[ ]  5. {sentence}"), 0)
    assert work is None
    assert fault.code in ("words-contradict", "words-unreadable")


@pytest.mark.parametrize(
    "text", ["", "\n", "Sizes", "Sizes XS", "Sizes XS\n\nKnit to RC 3.", "Joining\n=======", "===", "\x00", "[ ] Knit 3 rows."]
)
def test_nothing_much(text: str) -> None:
    work, faults = read_back(text, 0)
    assert work is None
    assert faults
