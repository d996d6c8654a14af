"""What is needed beside the yarn, notes for some sizes, the photograph, and yarns that are held together."""

from __future__ import annotations

import pytest

from tests.design.shaped import HEAD, SHIPPED, piece, understood
from walewright.design import Changes, understand
from walewright.design.model import Design
from walewright.report.english import in_english
from walewright.source import read

COUNTED = HEAD.replace(
    "    length 40 42 cm\n", "    length 40 42 cm\n    buttons 5 6\n    half_metres 0.5 1\n    rows_of 4 5 rows\n"
)
HOLED = piece("buttonholes buttons over 2 stitches from low to high, 2 cm from the right edge")
TWICE = piece("buttonholes 3 over 2 stitches from low to high, 2 cm from the left edge", name="cuff", more=", knit 2")


def made(*parts: str, head: str = COUNTED) -> Design:
    design, told = understood(*parts, head=head)
    assert design is not None, [in_english(d).message for d in told]
    return design


def messages(*parts: str, head: str = COUNTED) -> list[tuple[str, str]]:
    _, told = understood(*parts, head=head)
    return [(d.code, in_english(d).message) for d in told]


def test_counts_and_lengths_are_by_size() -> None:
    lines = ('needed "buttons", buttons', 'needed "elastic", length / 2', 'needed "a stud"', 'needed "hooks", 2 * buttons - 9')
    found = made(HOLED, *lines).needed
    assert [(n.what, n.unit, n.values) for n in found] == [
        ("buttons", "count", (5.0, 6.0)),
        ("elastic", "length", (20.0, 21.0)),
        ("a stud", "", ()),
        ("hooks", "count", (1.0, 3.0)),
    ]


@pytest.mark.parametrize(
    ("amount", "values"),
    [("buttons - 5", (0.0, 1.0)), ("6 - buttons", (1.0, 0.0)), ("1000", (1000.0, 1000.0)), ("1001 - buttons", (996.0, 995.0))],
)
def test_what_a_size_does_not_need_is_none_of_it(amount: str, values: tuple[float, ...]) -> None:
    """None in one size, if there is some in another; and up to a thousand."""
    assert [n.values for n in made(HOLED, f'needed "hooks", {amount}').needed] == [values]


@pytest.mark.parametrize("amount", ["buttons - buttons", "996 + buttons"])
def test_what_no_size_needs_or_one_too_many_of_is_told(amount: str) -> None:
    assert [code for code, _ in messages(HOLED, f'needed "hooks", {amount}')] in (["not-positive"], ["absurd-count"])


def test_buttonholes_are_counted_in_all_copies() -> None:
    band = "edging strip in plain, 3 cm deep, added after, cast off chain"
    banded = "band front_band with strip along front end, buttonholes buttons over 1 stitch, 2 cm first, 2 cm last"
    (one,) = made(HOLED, TWICE, band, banded, 'needed "buttons", for each buttonhole of front + cuff + front_band').needed
    assert one.holes == (("front", (5, 6)), ("cuff", (6, 6)), ("front_band", (5, 6)))


@pytest.mark.parametrize(
    ("amount", "code", "message"),
    [
        ("half_metres", "count-not-whole", "what is needed: `half_metres` is not a whole number"),
        ("rows_of", "wrong-unit", "what is needed is counted or has a length, and this is a number of rows"),
        ("0", "not-positive", "what is needed must be more than zero"),
        ("buttons - 6", "not-positive", "what is needed must be zero or more"),
        ("5000", "absurd-count", "what is needed is more than 1000"),
        ("20 m", "absurd-length", "what is needed is more than 10 m"),
        ("for each buttonhole of cuff", "unknown-name", "no piece or band is called `cuff`"),
        ("for each buttonhole of plain_front", "no-buttonholes", "`plain_front` has no buttonholes"),
        ("along front nothing", "no-such-edge", "edge of piece `front`"),
    ],
)
def test_an_amount_that_cannot_be_is_told_at_its_place(amount: str, code: str, message: str) -> None:
    ((told_code, told),) = messages(HOLED, piece(name="plain_front"), f'needed "things", {amount}')
    assert told_code == code
    assert message in told


def test_a_note_for_sizes_is_headed_by_them_and_left_out_of_other_copies() -> None:
    parts = (piece(), 'note "Long.", for M', 'note "All.", for S M', 'note "Short.", for S')
    assert made(*parts).texts == (("note", "M: Long."), ("note", "All."), ("note", "S: Short."))
    tree, _ = read("trial.wale", "\n".join((HEAD, *parts)))
    only, _ = understand(tree, SHIPPED, Changes(sizes=("M",)))
    assert only is not None
    assert only.texts == (("note", "Long."), ("note", "All."))


def test_a_note_for_a_size_that_is_not_there_is_told() -> None:
    ((code, message),) = messages(piece(), 'note "Long.", for M XL')
    assert code == "unknown-size"
    assert "XL" in message


def test_one_photograph() -> None:
    shown = '    photograph "a.jpg", showing "A trial"\n'
    head = HEAD.replace('pattern "Trial"\n', f'pattern "Trial"\n{shown}')
    picture = made(piece(), head=head).photograph
    assert picture is not None
    assert (picture.file, picture.showing) == ("a.jpg", "A trial")
    assert [code for code, _ in messages(piece(), head=head.replace(shown, shown * 2))] == ["repeated-statement"]


HELD = HEAD.replace(
    'yarn wool "wool", 100 g = 300 m\n',
    'yarn fine "fine", 50 g = 200 m\nyarn silk "silk", 25 g = 210 m\nyarn wool "both", fine + silk + fine together\n',
)


def test_yarns_held_together_are_as_thick_as_all_of_them() -> None:
    marl = next(y for y in made(piece(), head=HELD).yarns if y.name == "wool")
    assert marl.strands == ("fine", "silk", "fine")
    assert marl.tex == pytest.approx(250 + 250 + 25 / 210 * 1000)
    assert [y.name for y in made(piece(), head=HELD).bought()] == ["fine", "silk"]


def test_a_strand_of_the_knitters_own_changes_the_whole() -> None:
    tree, _ = read("trial.wale", "\n".join((HELD.replace("15 cm", "15 cm, 30 g"), piece())))
    own, _ = understand(tree, SHIPPED, Changes(yarns={"silk": "100 g = 100 m"}))
    assert own is not None
    marl = next(y for y in own.yarns if y.name == "wool")
    assert marl.tex == pytest.approx(250 + 250 + 1000)
    assert own.fabric("plain").swatch_grams == pytest.approx(30 * 1500 / (500 + 25 / 210 * 1000))


@pytest.mark.parametrize(
    ("strands", "code"),
    [("fine + lace", "unknown-name"), ("fine + both", "unknown-name"), (" + ".join(["fine"] * 13), "absurd-count")],
)
def test_strands_that_cannot_be_held_are_told(strands: str, code: str) -> None:
    head = HELD.replace("fine + silk + fine", strands) + 'yarn both "both", fine + silk together\n'
    assert [c for c, _ in messages(piece(), head=head) if c != "unused-name"] == [code]
