"""A second printed language: every shipped garment is written in it, read back in it, and knits the same."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from functools import cache

import pytest

from tests.whole.shipped_once import GARMENTS, SHIPPED, compiled
from tests.whole.turned import MARK, language, turned
from tests.write.garments import SAMPLES
from walewright.design import Changes
from walewright.knit import steps as st
from walewright.languages import PrintedIn
from walewright.languages import printed as english
from walewright.pipeline import Outcome, compile
from walewright.readback import read_back_all
from walewright.readback.sentences import Unreadable, said
from walewright.write import plain_text, write
from walewright.write.lines import lines
from walewright.write.lines import sentence as spoken
from walewright.write.said import plain

NAMES = {"name", "sizes", "yarn", "yarns", "fabric", "tension", "start_edging"}
"""Fields of a design that hold what the author has named."""


def in_turned(outcome: Outcome) -> str:
    assert outcome.design is not None
    writing = language().writing
    return plain_text(write(outcome.plans, writing, outcome.design.sizes, outcome.design.charts), writing)


@cache
def shipped_in_turned(name: str) -> str:
    return in_turned(compiled(name))


def authors_words(what: object, field: str = "") -> Iterator[str]:
    """The words of every name in a design."""
    if isinstance(what, str):
        yield from re.findall(r"[^\W\d_]+", what) if field in NAMES else ()
    elif isinstance(what, tuple):
        for one in what:
            yield from authors_words(one, field)
    elif is_dataclass(what):
        for f in fields(what):
            yield from authors_words(getattr(what, f.name), f.name)


def without_symbols(text: str) -> Iterator[str]:
    """The lines of a text; of a chart neither its rows nor the symbols of its key."""
    for line in text.split("\n"):
        if not re.match(r" *\d+ \| ", line):
            yield re.sub(rf"^({turned('Key')}:) \S ", r"\1", line)


UNSHIPPED = """pattern "Unshipped"
sizes S M
    half 44 48.3 cm
machine standard
yarn wool "wool", 50 g = 150 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 40 stitches by 60 rows = 14.3 cm by 15 cm, 9 g
piece pleated in plain, odd or even
    levels hem 0 cm, top 20 cm
    start half wide with chain
    needles out every 14th from hem to top, worn half / 3 wide
    end gathered
piece striped in plain
    levels hem 0 cm, low 8 cm, high 12 cm, top 20 cm
    start half wide with e-wrap
    needles out at 5 cm left of centre from hem to low
    needles out at 5 cm from centre from high to top
    end cast off sewn
piece darted in plain, odd or even
    levels hem 0 cm, low 2 cm, waist 18 cm, top 20 cm
    start half wide with e-wrap
    edges straight to low
    edges slope by -3 cm at waist, shaped 4 cm from centre and 8 cm from centre and 2 cm from the edge
    edges straight to top
    end cast off
"""
"""What no shipped garment has."""


def test_what_no_shipped_garment_has_reads_back_in_another_language() -> None:
    outcome = compile(UNSHIPPED, "unshipped.wale", SHIPPED, Changes())
    assert outcome.proven
    made = {type(step) for plan in outcome.plans for block in plan.blocks for _, steps in block.paragraphs for step in steps}
    assert {st.LeaveOut, st.LeaveOutEvery} <= made
    works, faults = read_back_all(in_turned(outcome), language().reading)
    assert faults == ()
    assert works == outcome.read


@pytest.mark.parametrize("name", GARMENTS)
def test_a_garment_reads_back_in_another_language(name: str) -> None:
    outcome = compiled(name)
    works, faults = read_back_all(shipped_in_turned(name), language().reading)
    assert faults == ()
    assert works == outcome.read


@pytest.mark.parametrize("name", GARMENTS)
def test_nothing_english_is_left_but_what_the_author_wrote(name: str) -> None:
    outcome = compiled(name)
    assert outcome.design is not None
    own = {word.lower() for word in authors_words(outcome.design)}
    text = " ".join(" ".join(without_symbols(shipped_in_turned(name))).split())
    for step in outcome.design.making_up:
        text = text.replace(plain(step), "")
    printed = set(re.findall(r"[^\W\d_]+", text))
    assert {word for word in printed if not word.endswith(MARK) and word.lower() not in own} == set()


@pytest.mark.parametrize("step", SAMPLES, ids=lambda s: type(s).__name__)
def test_every_kind_of_step_is_read_as_the_same_data(step: st.Step) -> None:
    if isinstance(step, st.Say):
        return
    (line,) = lines([(step,)])
    told = [said(spoken(line, (0,), tongue.writing).text, tongue.reading) for tongue in (language(), english())]
    assert not isinstance(told[0], Unreadable)
    assert told[0] == told[1]


def test_a_reader_of_one_language_reads_no_other() -> None:
    outcome = compiled(GARMENTS[0])
    assert read_back_all(outcome.plain_text, language().reading)[0] is None
    assert read_back_all(in_turned(outcome), english().reading)[0] is None


SOURCE = """
pattern "Strip", in turned "Pirts"
    note "Wash it.", in turned "Hsaw"
sizes M
    high 10 cm "from below", in turned "Morf"
machine standard
yarn wool "wool", 50 g = 82 m, shown "#23395d", in turned "Loow"
fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 20 cm by 21 cm, 10 g
piece strip in plain
    levels hem 0 cm, top high
    start 20 cm wide with e-wrap
    end cast off
require high >= 9 cm because "it is so", in turned "Os"
making up
    step "Sew in all ends.", in turned "Wes"
    step "Steam it."
"""


@pytest.mark.parametrize(
    ("tongue", "title", "told"),
    [(None, "Strip", ("Sew in all ends.", "Steam it.")), (language(), "Pirts", ("Wes", "Steam it."))],
    ids=["english", "turned"],
)
def test_a_text_is_taken_in_the_language_that_is_printed(tongue: PrintedIn | None, title: str, told: tuple[str, ...]) -> None:
    outcome = compile(SOURCE, "strip.wale", SHIPPED, Changes(), tongue)
    assert outcome.proven
    assert outcome.design is not None
    assert (outcome.design.title, outcome.design.making_up) == (title, told)
    assert all(text in outcome.plain_text for text in told)
    assert ("Hsaw" in str(outcome.design.texts)) is (tongue is not None)
    row, yarn, required = outcome.design.measurements[0], outcome.design.yarns[0], outcome.design.requirements[0]
    own = (row.about, yarn.label, required.because)
    assert own == (("from below", "wool", "it is so") if tongue is None else ("Morf", "Loow", "Os"))


@pytest.mark.parametrize("line", ["yarn wool", "    high 10 cm", "require high"])
def test_a_text_is_there_once_in_each_language(line: str) -> None:
    (old,) = (one for one in SOURCE.splitlines() if one.startswith(line))
    twice = SOURCE.replace(old, f'{old}, in turned "Eciwt"')
    told = compile(twice, "strip.wale", SHIPPED, Changes()).diagnostics
    assert "language-twice" in [d.code for d in told]
