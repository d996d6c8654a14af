"""What was given and did it, and its limit, on a garment that is quick to count."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from walewright.cli.sources import shipped
from walewright.design import Changes, Shipped
from walewright.pipeline import Outcome, compile, counted
from walewright.regrade import Trials, explained
from walewright.regrade.trials import A_HEIGHT, A_TRIAL, MOST_WORK, STITCHES, work
from walewright.report.english import in_english

SHIPPED = shipped()
TEXT = """\
pattern "Cushion"

sizes S M
    length 40 42 cm
    wide 40 42 cm
    rise 20 21 cm

let middle = rise + 4 cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m
yarn cotton "cotton", 50 g = 120 m

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

piece front in plain
    levels hem 0 cm, middle middle, top length
    start wide wide with e-wrap
    end cast off

"""


def told(changes: Changes, text: str = TEXT, work: float = MOST_WORK) -> tuple[Outcome, int]:
    """The outcome as it is explained, with so much work at most, and how many trials were made."""
    made = []

    def tried(by: Callable[[str, str, Shipped, Changes], Outcome]) -> Callable[[Changes], Outcome]:
        def trial(changes: Changes) -> Outcome:
            made.append(changes)
            return by(text, "cushion.wale", SHIPPED, changes)

        return trial

    trials = Trials(tried(counted), tried(compile), work)
    return explained(compile(text, "cushion.wale", SHIPPED, changes), changes, trials), len(made)


def errors(outcome: Outcome) -> list[tuple[str, str]]:
    return [(d.code, in_english(d).message) for d in outcome.diagnostics if d.severity.value == "error"]


@pytest.mark.parametrize(
    ("changes", "what", "limit"),
    [
        (Changes(measures={"length": "15 cm"}), "`length` 15 cm (option --measure length)", "at least 25.5 cm"),
        (Changes(measures={"Rise": "90 cm"}), "`rise` 90 cm (option --measure Rise)", "at most"),
        (Changes(measures={"wide": "200 cm"}), "`wide` 200 cm (option --measure wide)", "at most"),
        (Changes(bed="needles=40"), "the bed needles=40 (option --bed)", "at least needles="),
        (Changes(tensions={"plain": "60 st 70 rows"}), "`plain` 60 st 70 rows (option --tension plain)", "at most"),
    ],
)
def test_what_did_it_is_named_with_a_limit_that_works(changes: Changes, what: str, limit: str) -> None:
    outcome, trials = told(changes)
    ((code, message),) = errors(outcome)
    assert code == "given-too-far"
    assert message.endswith(what)
    (help_,) = in_english(next(d for d in outcome.diagnostics if d.code == code)).helps
    assert limit in help_
    works = help_.split("`")[3 if help_.startswith("`") else 1].split('"')[1]
    name, _, value = works.rpartition("=") if "--bed" not in help_ else ("", "", works)
    kind = next(k for k in ("bed", "tension", "measure") if f"--{k}" in help_)
    typed = next((n for k, n, _ in changes.texts() if k == kind), "")
    assert name == typed
    assert compile(TEXT, "cushion.wale", SHIPPED, changes.with_text(kind, typed, value)).proven
    fails = help_.rpartition("works, ")[2].removesuffix(" does not")
    assert not compile(TEXT, "cushion.wale", SHIPPED, changes.with_text(kind, typed, fails)).proven
    assert trials < 40


def test_only_what_did_it_is_named() -> None:
    outcome, _ = told(
        Changes(measures={"length": "15 cm", "wide": "44 cm"}, tensions={"plain": "13 st 19 rows"}, dials={"plain": "5"})
    )
    assert [m for _, m in errors(outcome)] == ["this pattern cannot be made with `length` 15 cm (option --measure length)"]


def test_two_that_fail_each_by_itself_are_both_named() -> None:
    outcome, _ = told(Changes(measures={"length": "15 cm", "wide": "300 cm"}))
    assert {m.split("`")[1] for _, m in errors(outcome)} == {"length", "wide"}


def test_what_the_pattern_says_is_kept_below_it() -> None:
    outcome, _ = told(Changes(measures={"length": "15 cm"}))
    (said,) = (d for d in outcome.diagnostics if d.severity.value == "error")
    assert in_english(said).notes == ("the pattern: `top` is not above `middle` in piece `front`",)


def test_a_fault_of_the_source_is_the_sources() -> None:
    outcome, _ = told(Changes(measures={"wide": "44 cm"}), TEXT.replace("middle middle,", "middle 90 cm,"))
    assert [code for code, _ in errors(outcome)] == ["levels-fall"]


def test_a_fault_of_an_option_is_told_once() -> None:
    outcome, _ = told(Changes(measures={"lenght": "44 cm"}))
    assert [code for code, _ in errors(outcome)] == ["unknown-name"]


def test_sizes_alone_explain_nothing_and_cost_nothing() -> None:
    assert told(Changes(sizes=("S",)), TEXT.replace("middle middle,", "middle 90 cm,"))[1] == 0
    assert told(Changes(measures={"length": "44 cm"}))[1] == 0


def test_the_search_is_bounded_by_the_work_that_is_in_it() -> None:
    """Twice the pieces are twice the work of counting; what is knitted and read back is counted by its stitches."""
    of_one = compile(TEXT, "cushion.wale", SHIPPED, Changes(sizes=("S",)))
    both = compile(TEXT, "cushion.wale", SHIPPED, Changes())
    only_counted = counted(TEXT, "cushion.wale", SHIPPED, Changes(sizes=("S",)))
    assert work(only_counted) == A_TRIAL + 3 * A_HEIGHT
    stitches = work(of_one) - work(only_counted)
    assert stitches == pytest.approx(52 * 74 / STITCHES)
    assert work(both) == pytest.approx(A_TRIAL + 6 * A_HEIGHT + (52 * 74 + 54 * 78) / STITCHES)
    limits = [
        in_english(told(Changes(measures={"length": "15 cm"}), work=enough)[0].diagnostics[0]).helps
        for enough in (50 * A_TRIAL, 300)
    ]
    assert "at least 25.5 cm" in limits[0][0]
    assert "40, 42 cm" in limits[1][0]


def test_without_work_left_the_sources_own_figures_are_told() -> None:
    outcome, _ = told(Changes(measures={"length": "15 cm"}), work=1)
    ((code, _),) = errors(outcome)
    assert code == "given-too-far"
    assert "40, 42 cm" in in_english(next(d for d in outcome.diagnostics if d.code == code)).helps[0]


def test_what_counts_but_is_not_proven_is_gone_back_from() -> None:
    """The limit is the last that is proven, however far from what can be counted; what failed is named beside it."""
    given = Changes(measures={"length": "15 cm"})

    def whole(changes: Changes) -> Outcome:
        made = compile(TEXT, "cushion.wale", SHIPPED, changes)
        longest = float(dict(changes.measures).get("length", "99 cm").split()[0])
        return made if longest >= 33 else counted(TEXT.replace("wide wide", "wide 900 cm"), "cushion.wale", SHIPPED, changes)

    trials = Trials(lambda c: counted(TEXT, "cushion.wale", SHIPPED, c), whole)
    outcome = explained(compile(TEXT, "cushion.wale", SHIPPED, given), given, trials)
    (help_,) = in_english(next(d for d in outcome.diagnostics if d.code == "given-too-far")).helps
    works, fails = (float(said.split("=")[-1].split()[0].strip('"`')) for said in (help_.split("`")[3], help_.split("works, ")[1]))
    assert works >= 33 > fails
    assert works - fails <= 5
