"""What other processes work for the page, worked here: forms, results, files, covers; messages of body and bed; what is filled in,
there and back; how far a printing has come."""

from __future__ import annotations

import json
import logging
import pickle
from multiprocessing import Pipe

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.regrade.test_explain import TEXT
from walewright.design import Changes
from walewright.guide.english import LANGUAGE as GUIDE
from walewright.report.english import LANGUAGE as WORDS
from walewright.report.model import Diagnostic, Label, Severity, Span, diagnosed
from walewright.report.said import Said, said
from walewright.report.wording import MESSAGE
from walewright.serve import resulting, telling, working
from walewright.serve.given import fields, filled, names, parted
from walewright.serve.model import (
    Alternative,
    Offer,
    OfferedFabric,
    OfferedRow,
    OfferedYarn,
    PageAnswer,
    PageResult,
    ServedGarment,
    TakenFile,
)
from walewright.serve.progress import LOGGER, MOST_TICKETS, PageProgress, PageTeller, listening, told_to

CUSHION = ServedGarment("cushion", "cushion.wale", TEXT)
BROKEN = ServedGarment("broken", "broken.wale", TEXT.replace("middle middle,", "middle nowhere,"))
OFFER = Offer(
    "Cushion",
    "",
    (Alternative("S", "S"), Alternative("M", "M"), Alternative("12_months", "12 months")),
    "M",
    (),
    (
        OfferedRow("back_length", "Back length", "", "42", False, False, (40.0, 42.0, 50.0)),
        OfferedRow("gores", "Gores", "", "6", False, True),
    ),
    (OfferedFabric("plain_knit", "Plain knit", "", "13 st 18.5 rows", "4"), OfferedFabric("rib", "Rib", "", "13 st 20 rows", "4")),
    (OfferedYarn("wool", "Wool", "chunky wool", "100", "120"), OfferedYarn("silk", "Silk", "silk", "50", "200")),
    "bulky bed",
    (Alternative("bulky", "Bulky"),),
)


# ------------------------------------------------------------------------------------------------------------ forms and files


def test_a_form_has_what_was_filled_in_and_keeps_what_it_has_no_field_for() -> None:
    posted = {"size": "S", "measure:length": "50", "choose:neck": "round", "measure:gone": "  "}
    answer = working.form(CUSHION, posted, "english", None)
    assert answer.offer is not None
    assert (answer.offer.title, answer.offer.size, answer.result) == ("Cushion", "S", None)
    assert (answer.values, answer.stray) == ({"size": "S", "measure:length": "50"}, {"choose:neck": "round"})
    assert answer.hints == {"length": "Nearest size: M, 42 cm."}
    # The offer that was made before is taken as it is, whatever the source says.
    assert working.form(BROKEN, posted, "english", answer.offer) == answer
    middle = working.form(CUSHION, {}, "english", None).offer
    assert middle is not None
    assert middle.size == "M"


def test_a_source_that_cannot_be_understood_has_no_form() -> None:
    """Of a text that somebody gave its lines are told; of a file, which is not theirs, only that it is so."""
    answer = working.form(BROKEN, {"size": "S"}, "english", None)
    assert (answer.offer, answer.values, answer.stray) == (None, {}, {"size": "S"})
    assert answer.result is not None
    (told,) = answer.result.told
    assert (answer.result.state, told.error) == ("refused", True)
    line = BROKEN.text[: BROKEN.text.index("nowhere")].count("\n") + 1
    assert told.notes[0] == f"In line {line} of the source."
    assert working.worked(BROKEN, {}, "english", None).answer.offer is None
    assert isinstance(working.kept(BROKEN, {}, "english", None), PageAnswer)
    assert working.cover(BROKEN, "english") == ""


def test_what_is_worked_is_proven_and_printed_in_each_form() -> None:
    found = working.worked(CUSHION, {"size": "S", "measure:length": "50"}, "english", None)
    result = found.answer.result
    assert result is not None
    assert (result.state, [t.caption for t in result.tables]) == (
        "proven",
        ["On the bed", "To buy", "Your figures"],
    ) or result.tables
    assert [d.title for d in result.drawings] == ["Front"]
    outcome = pickle.loads(found.packed)
    assert outcome.proven
    assert [m.values for m in outcome.design.measurements if m.name == "length"] == [(50.0,)]
    for form, suffix, begins in (("text", ".txt", b"Cushion"), ("plan", ".plan.json", b"{"), ("html", ".html", b"<!DOCTYPE html>")):
        made = working.printed(CUSHION, found, "english", "2026-01-02", form, "")
        assert isinstance(made, TakenFile)
        assert made.name == f"cushion{suffix}"
        assert made.data.lstrip().startswith(begins)
        assert (b"2026-01-02" in made.data) == (form == "html")
    kept = working.kept(CUSHION, {"size": "S", "measure:length": "50"}, "english", None)
    assert isinstance(kept, TakenFile)
    assert kept.name == "cushion.figures.json"
    assert json.loads(kept.data) == {
        **{"walewright": "figures", "version": 1, "garment": "cushion"},
        **{"size": ["S"], "measure": {"length": "50 cm"}},
    }


@pytest.mark.parametrize(
    ("posted", "says"),
    [
        ({"bed-needles": "40"}, "On this bed the front is 54 needles wide; your bed has 40."),
        ({"measure:length": "15"}, "With length at 15 cm the front has no height left between middle and top."),
        ({"measure:length": "long"}, ""),
    ],
)
def test_what_is_refused_is_told_of_body_and_bed(posted: dict[str, str], says: str) -> None:
    found = working.worked(CUSHION, posted, "english", None)
    result = found.answer.result
    assert result is not None
    assert (result.state, found.packed) == ("refused", b"")
    assert result.tables == result.drawings == ()
    errors = [told for told in result.told if told.error]
    assert errors
    assert not says or errors[0].message == says
    assert "--" not in " ".join((errors[0].message, *errors[0].notes, *errors[0].helps)) or not says
    assert found.answer.values == posted


def test_a_cover_is_drawn() -> None:
    drawn = working.cover(CUSHION, "english")
    assert drawn.startswith("<svg")
    too_wide = ServedGarment("wide", "wide.wale", TEXT.replace("start wide wide", "start 900 cm wide"))
    assert working.cover(too_wide, "english") == ""


# ------------------------------------------------------------------------------------------------------------------ messages


def too_far(kind: str, name: str, *notes: Said, helps: tuple[Said, ...] = (), text: str = "15 cm") -> Diagnostic:
    what = said("quoted", name=name) if name else said("bed-given")
    return diagnosed("given-too-far", notes=notes, helps=helps, given=(kind, name), what=what, text=text)


def says(key: str, **facts: object) -> Said:
    return said("the-pattern", message=Said(f"message of {key}", tuple(facts.items())), sizes=())  # type: ignore[arg-type]


WIDE = says("wider-than-bed/piece", piece="left_front", takes=120, needles=100)
FALL = says("levels-fall", piece="left_front", lower="low_hem", upper="top", highest=False)
NONE_LEFT = says("no-width-left/piece", piece="left_front", level="under_arm")

OTHER = says("unused-name/definition", kind="yarn", name="wool")


def test_what_a_pattern_says_most_often_is_among_what_it_can_say() -> None:
    """A message that is called otherwise would be told in the pattern's words for ever."""
    assert {key.removeprefix(MESSAGE) for key in telling.WHY} <= set(WORDS.wordings)


@pytest.mark.parametrize(
    ("kind", "name", "note", "message"),
    [
        ("measure", "back_length", WIDE, "With back length at 15 cm the left front is 120 needles wide; your bed has 100."),
        ("swatch", "plain_knit", FALL, "With this swatch of plain knit the left front has no height left between low hem and top."),
        ("tension", "plain_knit", NONE_LEFT, "With this swatch of plain knit the left front has no width left at under arm."),
        ("yarn", "wool", WIDE, "With this yarn the left front is 120 needles wide; your bed has 100."),
        ("bed", "", FALL, "On this bed the left front has no height left between low hem and top."),
        ("measure", "not_offered", WIDE, "With not offered at 15 cm the left front is 120 needles wide; your bed has 100."),
    ],
)
def test_what_goes_too_far_is_told_as_the_form_calls_it(kind: str, name: str, note: Said, message: str) -> None:
    assert telling.told_of(too_far(kind, name, note), WORDS, GUIDE, OFFER).message == message


def test_another_reason_is_told_in_the_patterns_words_and_others_below() -> None:
    told = telling.told_of(too_far("bed", "", OTHER, WIDE, FALL), WORDS, GUIDE, OFFER)
    assert told.message.startswith("On this bed it cannot be made: ")
    assert told.notes == (
        "And the left front is 120 needles wide; your bed has 100.",
        "And the left front has no height left between low hem and top.",
    )


def test_how_far_it_may_go_is_told_without_an_option() -> None:
    limit = said("may-be", rises=False, works="26 cm", option='--measure "back_length=26 cm"', fails="25.5 cm")
    told = telling.told_of(too_far("measure", "back_length", FALL, helps=(limit,)), WORDS, GUIDE, OFFER)
    assert told.helps == ("`Back length` may be at least 26 cm here, with all else as given; 25.5 cm is too far",)
    own = said("without-it", own="40 cm")
    assert telling.told_of(too_far("measure", "back_length", FALL, helps=(own,)), WORDS, GUIDE, OFFER).helps == (
        "without it the pattern is made: the source has 40 cm",
    )
    bed = said("may-be", rises=False, works="needles=54", option='--bed "needles=54"', fails="needles=52")
    assert telling.told_of(too_far("bed", "", FALL, helps=(bed,)), WORDS, GUIDE, OFFER).helps == (
        "the bed may be at least needles=54 here, with all else as given; needles=52 is too far",
    )


def test_what_comes_of_the_source_proposes_no_change() -> None:
    """Its helps are for the author; nor are options or lines told. What is wrong with a figure keeps its own."""
    of_source = diagnosed(
        "unused-name/definition", (Span("cushion.wale", 1, 2), "nowhere"), helps=("delete-or-use",), kind="yarn", name="wool"
    )
    told = telling.told_of(of_source, WORDS, GUIDE, OFFER)
    assert (told.error, told.helps, told.notes) == (True, (), ())
    given_one = Diagnostic(
        "bad-measure", "unreadable", (("text", "long"),), helps=(Said("measure-example"),), given=("measure", "a")
    )
    figure = telling.told_of(given_one, WORDS, GUIDE, OFFER)
    assert figure.helps
    assert "--" not in figure.message
    warned = Diagnostic("bad-measure", "unreadable", (("text", "long"),), (), (), (Said("measure-example"),), Severity.WARNING)
    assert telling.told_of(warned, WORDS, GUIDE, OFFER).error is False


def test_of_a_source_a_few_mistakes_are_told_each_with_its_line() -> None:
    garment = ServedGarment("x", "x.wale", "one\ntwo\nthree\n")
    many = [
        diagnosed("levels-fall", Label(Span("x.wale", 4, 5)), piece="p", lower=str(n), upper="u", highest=False)
        for n in range(telling.MOST_TOLD + 3)
    ]
    found = telling.unreadable(many, WORDS, GUIDE, garment)
    assert (found.state, len(found.told)) == ("refused", telling.MOST_TOLD)
    assert {told.notes[0] for told in found.told} == {"In line 2 of the source."}
    elsewhere = diagnosed("levels-fall", Label(Span("other.wale", 4, 5)), piece="p", lower="l", upper="u", highest=False)
    assert telling.unreadable([elsewhere], WORDS, GUIDE, garment).told[0].notes == ()
    warning = diagnosed("levels-fall", severity=Severity.WARNING, piece="p", lower="l", upper="u", highest=False)
    # Without an error it has no garment, and that is told.
    for nothing in ([warning], []):
        (only,) = telling.unreadable(nothing, WORDS, GUIDE, garment).told
        assert (only.error, only.notes) == (True, ())
        assert "no garment of its own" in only.message


def test_hints_name_the_nearest_size_and_the_ease() -> None:
    def hinted(typed: str, eases: dict[str, float] | None = None) -> dict[str, str]:
        result = PageResult("proven", eases=eases) if eases is not None else None
        return resulting.hints(GUIDE, OFFER, {"measure:back_length": typed, "measure:gores": "7"}, result)

    assert hinted("41,2") == {"back_length": "Nearest size: M, 42 cm."}
    assert hinted("40.9 cm") == {"back_length": "Nearest size: S, 40 cm."}
    assert hinted("100") == {"back_length": "Nearest size: 12 months, 50 cm."}
    assert hinted("") == hinted("long") == {}
    assert hinted("", {"back_length": -2.5}) == {"back_length": "Ease -2.5 cm."}
    assert hinted("40", {"back_length": 2.0, "gores": 1.0})["back_length"] == "Nearest size: S, 40 cm. Ease 2 cm."


# ------------------------------------------------------------------------------------------------ what is filled in, and back

CM = st.integers(1, 4000).map(lambda n: f"{n / 10:g} cm")
COUNT = st.integers(1, 999).map(str)


@given(
    st.fixed_dictionaries(
        {"sizes": st.sampled_from([("S",), ("12_months",)])},
        optional={
            "measures": st.fixed_dictionaries({}, optional={"back_length": CM, "gores": COUNT}),
            "tensions": st.fixed_dictionaries({}, optional={"plain_knit": st.just("13 st 18.5 rows")}),
            "swatches": st.fixed_dictionaries(
                {}, optional={"rib": st.sampled_from(["40 st 60 rows 30.8 cm 32.4 cm 62 g", "40 st 60 rows 30 cm 32 cm"])}
            ),
            "dials": st.fixed_dictionaries({}, optional={"rib": st.sampled_from(["6", "4.5", "T"])}),
            "yarns": st.fixed_dictionaries(
                {},
                optional={
                    "wool": st.sampled_from(["soft wool, 50 g = 120 m", "50 g = 120 m", "500 g of 2/28 Nm"]),
                    "silk": st.just("my, own, 50 g = 80 m"),
                },
            ),
            "bed": st.sampled_from(
                ["", "bulky", "needles=40", "bulky, needles=40, pitch=9 mm", "pitch=9 mm, missing=L3 R4", "dial, needles=40"]
            ),
        },
    )
)
def test_what_is_remembered_fills_the_form_and_is_given_again(remembered: dict[str, object]) -> None:
    """As `Changes` has it; what is given comes in the form's order, and facts of a bed in that of its fields."""
    there = {name: value for name, value in remembered.items() if value}
    form = filled(there)
    values, stray = parted(OFFER, form)
    assert stray == {}
    assert set(form) <= set(names(OFFER))
    again = fields(OFFER, values)
    beds = [sorted(str(of.get("bed", "")).replace(" ", "").split(",")) for of in (again, there)]
    assert beds[0] == beds[1]
    yarns = [dict(of.get("yarns", {})) for of in (again, there)]  # type: ignore[call-overload]
    for found in yarns:
        found.pop("wool") if "Nm" in found.get("wool", "") else None
    assert yarns[0] == yarns[1]
    rest = ("sizes", "measures", "tensions", "swatches", "dials")
    assert {k: again.get(k) for k in rest if again.get(k)} == {k: there.get(k) for k in rest if there.get(k)}


def test_what_does_not_read_stands_in_the_first_field_of_its_kind() -> None:
    found = filled(
        {
            "tensions": {"rib": "tight"},
            "swatches": {"plain_knit": "small"},
            "yarns": {"silk": "fine"},
            "bed": "needles=many=3",
            "measures": {"gores": "x"},
        }
    )
    wanted = {"st:rib": "tight", "swatch-st:plain_knit": "small", "yarn:silk": "fine", "measure:gores": "x"}
    assert wanted.items() <= found.items()
    assert found.keys() - wanted.keys() <= {"bed-more", "bed-needles"}


@pytest.mark.parametrize(
    ("typed", "given"),
    [
        ({"measure:back_length": "41,5"}, {"measures": {"back_length": "41.5 cm"}}),
        ({"measure:back_length": " 16 in "}, {"measures": {"back_length": "16 in"}}),
        ({"measure:gores": "7"}, {"measures": {"gores": "7"}}),
        ({"st:rib": "13", "rows:rib": "20,5"}, {"tensions": {"rib": "13 st 20.5 rows"}}),
        ({"yarn:wool": "mine"}, {"yarns": {"wool": "mine, 100 g = 120 m"}}),
        ({"grams:silk": "25"}, {"yarns": {"silk": "25 g = 200 m"}}),
        ({"metres:silk": "90"}, {"yarns": {"silk": "50 g = 90 m"}}),
        (
            {"bed": "bulky", "bed-needles": "40", "bed-pitch": "9", "bed-more": "dial"},
            {"bed": "bulky, needles=40, pitch=9 mm, dial"},
        ),
        ({"dial:rib": " 5 "}, {"dials": {"rib": "5"}}),
        ({"size": "S"}, {}),
    ],
)
def test_what_is_typed_is_given_with_its_unit(typed: dict[str, str], given: dict[str, object]) -> None:
    found = fields(OFFER, typed)
    assert found == {"sizes": (typed.get("size", "M"),), **given}
    assert Changes(**found).sizes == found["sizes"]


# ---------------------------------------------------------------------------------------------------------------- progress


def test_pages_are_told_through_a_pipe_under_the_ticket_of_who_asked() -> None:
    heard, tells = Pipe(duplex=False)
    logger = logging.getLogger(LOGGER)
    before = (list(logger.handlers), logger.level, logger.propagate)
    logger.handlers.clear()
    progress = PageProgress()
    one, other = "0123456789abcdef", "fedcba9876543210"
    try:
        listening(tells)
        assert (logger.level, logger.propagate) == (logging.INFO, False)
        logger.info("Step 5 - Creating layout - Page 1")
        with told_to(one):
            logger.info("Step 5 - Creating layout - Page %s", 12)
            logger.info("Step 6 - Drawing")
        with told_to(other):
            logger.info("Step 5 - Creating layout - Page 3")
        logger.info("Step 5 - Creating layout - Page 4")
        assert [h.ticket for h in logger.handlers if isinstance(h, PageTeller)] == [""]
        progress.heard(heard)
        assert (progress.page(one), progress.page(other), progress.page("0" * 16)) == (12, 3, 0)
        for told in (b"0123456789abcde 9", b"0123456789abcdef x", b"nonsense"):
            tells.send_bytes(told)
        progress.heard(heard)
        assert progress.page(one) == 12
    finally:
        logger.handlers[:], logger.level, logger.propagate = before
        heard.close()
        tells.close()


def test_the_latest_tickets_are_kept() -> None:
    heard, tells = Pipe(duplex=False)
    progress = PageProgress()
    tickets = [f"{n:016x}" for n in range(MOST_TICKETS + 2)]
    for ticket in (*tickets[:-1], tickets[1], tickets[-1]):
        tells.send_bytes(f"{ticket} 2".encode())
        progress.heard(heard)
    # The first went when one more was heard of, the third when another was: the second had been told of again.
    assert [progress.page(t) for t in (tickets[0], tickets[1], tickets[2], tickets[3], tickets[-1])] == [0, 2, 0, 2, 2]
    heard.close()
    tells.close()
