"""The search for what did it and how far it may go, on a source that is only pretended, compared with trying everything."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from itertools import combinations
from types import SimpleNamespace
from typing import Any

import pytest
from hypothesis import given as drawn
from hypothesis import strategies as st

from walewright.design import Changes
from walewright.design.model import Edition, MachineProfile, Measurement, Origin, Yarn
from walewright.design.model.fabrics import Fabric
from walewright.design.model.regrading import CountRow
from walewright.pipeline import Outcome
from walewright.regrade import Trials, explained
from walewright.regrade.explain import MOST_CAUSES, MOST_NOTES
from walewright.regrade.trials import A_TRIAL, work
from walewright.report.model import NOWHERE, Diagnostic, Label, Severity, Span, diagnosed
from walewright.source import syntax

HERE = Origin("here")
SOURCE = Edition(
    ("S", "M"),
    (
        Measurement("length", (40.0, 42.0, 40.0), False, None, HERE, "centre_back_length", "", "back neck to hem"),
        Measurement("wide", (50.0,), False, None, HERE),
    ),
    (
        Fabric("plain", "stocking stitch", 0, "wool", "4", 40, 60, 20, 20, 30, HERE),
        Fabric("loose", "stocking stitch", 0, "wool", "6", 32, 48, 20, 20, 30, HERE),
    ),
    (Yarn("wool", "soft wool", 50, 120, HERE), Yarn("silk", "", 100, 400, HERE)),
    MachineProfile("bulky", "bulky bed", 100, 8.0, (1, 2), 8, False, HERE),
    (CountRow("gores", (6.0, 8.0, 6.0), ""), CountRow("points", (4.0,), "st")),
)
WRONG = diagnosed("levels-fall", piece="front", lower="middle", upper="top")
WARNED = diagnosed("unused-name", severity=Severity.WARNING)

Holds = Callable[[Changes], bool]


@dataclass
class Pretended:
    """A source that cannot be counted with changes that `uncounted` holds of, nor proven with those that `unproven` holds of; and
    what was asked of it."""

    uncounted: Holds = lambda _: False
    unproven: Holds = lambda _: False
    source: Edition | None = SOURCE
    counted: list[Changes] = field(default_factory=list)
    proven: list[Changes] = field(default_factory=list)

    def trials(self, left: float = 1e9) -> Trials:
        return Trials(self._count, self._prove, left)

    def _asked(self, changes: Changes, of: list[Changes]) -> None:
        of.append(changes)
        assert len(self.counted) + len(self.proven) <= 100, "a search comes to its end"

    def _count(self, changes: Changes) -> Outcome:
        self._asked(changes, self.counted)
        return self.outcome(self.uncounted(changes))

    def _prove(self, changes: Changes) -> Outcome:
        self._asked(changes, self.proven)
        return self.outcome(self.uncounted(changes) or self.unproven(changes))

    def outcome(self, wrong: bool, *more: Diagnostic, plans: tuple[Any, ...] = ()) -> Outcome:
        design: Any = SimpleNamespace(edition=self.source)
        return Outcome("x", "", design=design, plans=plans, diagnostics=(*(WRONG,) * wrong, *more))


def causes(changes: Changes, pretended: Pretended, left: float = 1e9) -> list[tuple[str, str]]:
    """(kind, name as it was typed) of what is told to be too far; nothing where all stays as it was."""
    before = pretended.outcome(True, WARNED)
    after = explained(before, changes, pretended.trials(left))
    if after is before:
        return []
    found = [d for d in after.diagnostics if d.code == "given-too-far"]
    assert after == replace(before, diagnostics=(*found, WARNED))
    return [d.given for d in found if d.given is not None]


def help_of(changes: Changes, pretended: Pretended, left: float = 1e9) -> tuple[str, dict[str, Any]]:
    """The key and the facts of the one help that is told."""
    (told, _) = explained(pretended.outcome(True, WARNED), changes, pretended.trials(left)).diagnostics
    (help_,) = told.helps
    return help_.key, dict(help_.facts)


# ------------------------------------------------------------------------------------------------ how far a value may go


def cm(changes: Changes) -> float:
    return float(changes.measures.get("wide", "50 cm").split()[0])


@pytest.mark.parametrize("last_good", [50, 50.5, 51, 57.5, 63, 81, 89, 89.5])
def test_the_limit_is_the_last_half_centimetre_that_works(last_good: float) -> None:
    up = Pretended(lambda c: cm(c) > last_good)
    key, facts = help_of(Changes(measures={"wide": "90 cm"}), up)
    assert (key, facts["rises"]) == ("may-be", True)
    assert (facts["works"], facts["fails"]) == (f"{last_good:g} cm", f"{last_good + 0.5:g} cm")
    assert facts["option"] == f'--measure "wide={last_good:g} cm"'
    # Of 80 half centimetres one is found by halving in seven steps, behind the source alone and its own value.
    assert len(up.counted) <= 9
    assert len(up.proven) == 1

    down = Pretended(lambda c: cm(c) < 100 - last_good)
    key, facts = help_of(Changes(measures={"wide": "10 cm"}), down)
    assert (key, facts["rises"]) == ("may-be", False)
    assert (facts["works"], facts["fails"]) == (f"{100 - last_good:g} cm", f"{99.5 - last_good:g} cm")


@drawn(st.integers(1, 80), st.integers(0, 79))
def test_what_is_told_is_proven_and_the_next_was_tried(given: int, proven: int) -> None:
    """Where less is proven than can be counted, the way back is by quarters of what is left, never past a step that was tried."""
    counts = 70

    def step(changes: Changes) -> int:
        return round((cm(changes) - 50) / 0.5)

    pretended = Pretended(lambda c: step(c) > counts, lambda c: step(c) > proven)
    changes = Changes(measures={"wide": f"{50 + given * 0.5:g} cm"})
    if given <= counts:
        # It can be counted and is only not proven, so that it is proven at each trial.
        pretended = Pretended(lambda c: step(c) > min(counts, proven))
        counts = proven
    if given <= min(proven, counts):
        return
    key, facts = help_of(changes, pretended)
    assert key == "may-be"
    works, fails = (round((float(facts[k].split()[0]) - 50) / 0.5) for k in ("works", "fails"))
    assert works <= min(proven, counts) < fails
    tried = [step(c) for c in pretended.proven]
    assert tried == [min(given - 1, counts), *(at - max(1, at // 4) for at in tried[:-1])]
    assert tried[-1] == works
    assert fails == (tried[-2] if len(tried) > 1 else works + 1)


def test_nothing_on_the_line_that_is_proven_has_no_limit() -> None:
    pretended = Pretended(lambda c: cm(c) > 60, lambda c: True)
    assert help_of(Changes(measures={"wide": "90 cm"}), pretended)[0] == "without-it"
    # From step 20 to the source's own value, and no further.
    assert [cm(c) for c in pretended.proven] == [60, 57.5, 56, 54.5, 53.5, 53, 52.5, 52, 51.5, 51, 50.5, 50]


@pytest.mark.parametrize("trials", range(1, 12))
def test_work_is_looked_at_before_each_trial(trials: int) -> None:
    """No trial is made with nothing left, wherever in the search it ends; and a limit is told as soon as it is proven."""
    pretended = Pretended(lambda c: cm(c) > 57, lambda c: cm(c) > 54)
    key, _ = help_of(Changes(measures={"wide": "90 cm"}), pretended, left=trials * A_TRIAL - A_TRIAL / 2)
    made = len(pretended.counted) + len(pretended.proven)
    enough = Pretended(lambda c: cm(c) > 57, lambda c: cm(c) > 54)
    help_of(Changes(measures={"wide": "90 cm"}), enough)
    wanted = len(enough.counted) + len(enough.proven)
    assert made == min(trials, wanted)
    assert key == ("may-be" if trials >= wanted else "without-it")


def test_a_line_whose_own_value_fails_is_passed_over() -> None:
    """Another size's value is tried where the nearest size's cannot be made with all else as it is."""

    def long(changes: Changes) -> bool:
        return float(changes.measures.get("length", "40 cm").split()[0]) > 41

    key, facts = help_of(Changes(measures={"length": "60 cm"}), Pretended(long))
    assert (key, facts["works"], facts["fails"]) == ("may-be", "41 cm", "41.5 cm")


def test_where_no_line_begins_well_the_sources_own_is_told() -> None:
    """With the source's own figures it can be made, but not with those of one size in all."""
    key, facts = help_of(Changes(measures={"length": "60 cm"}), Pretended(lambda c: "length" in c.measures))
    assert (key, facts["own"]) == ("without-it", "40, 42 cm")


def test_a_swatch_is_tried_as_the_tension_that_it_says() -> None:
    def tight(changes: Changes) -> bool:
        if changes.swatches:
            return True
        return any(float(text.split()[0]) > 24.05 for text in changes.tensions.values())

    changes = Changes(
        measures={"wide": "44 cm"}, swatches={"Plain": "60 st 60 rows 20 cm 20 cm"}, dials={"plain": "5"}, bed="needles=90"
    )
    pretended = Pretended(tight)
    key, facts = help_of(changes, pretended)
    assert key == "may-be"
    # Of 64 steps from 20 to 30 stitches.
    assert (facts["works"], facts["fails"]) == ("23.9 st 30.0 rows", "24.1 st 30.0 rows")
    assert facts["option"] == f'--tension "Plain={facts["works"]}"'
    # All else is as it was given.
    others = replace(changes, swatches={}, tensions={"Plain": facts["works"]})
    assert pretended.proven == [others]


def test_a_swatch_on_a_bed_of_its_own_is_tried_on_that_bed() -> None:
    bed = syntax.MachineBlock("mine", (), span=Span("mine.wale", 0, 1))
    changes = Changes(swatches={"plain": "60 st 60 rows 20 cm 20 cm"}, own_bed=bed)
    pretended = Pretended(lambda c: bool(c.swatches) and c.own_bed is not None)
    assert causes(changes, pretended) == [("swatch", "plain"), ("bed", "")]
    assert {c.own_bed for c in pretended.proven} == {bed}


# ---------------------------------------------------------------------------------------------------------- what did it

THINGS = [
    ("measure", "length", "60 cm"),
    ("measure", "wide", "90 cm"),
    ("tension", "plain", "21 st 31 rows"),
    ("swatch", "loose", "60 st 60 rows 20 cm 20 cm"),
    ("yarn", "wool", "50 g = 90 m"),
    ("bed", "", "needles=90"),
]


def given(things: list[tuple[str, str, str]]) -> Changes:
    changes = Changes()
    for kind, name, text in things:
        changes = changes.with_text(kind, name, text)  # type: ignore[arg-type]
    return changes


def things_in(changes: Changes) -> set[tuple[str, str]]:
    return {(kind, name) for kind, name, _ in changes.texts()}


@pytest.mark.parametrize("how_many", range(1, 7))
@pytest.mark.parametrize("together", [1, 2, 3])
def test_what_did_it_is_what_it_cannot_be_made_with(how_many: int, together: int) -> None:
    """Of any so many of the things given one or more, alone or together, are at fault: told is that without which the rest passes;
    else each that fails alone."""
    things = THINGS[:how_many]
    keys = [(kind, name) for kind, name, _ in things]
    sets = [frozenset(s) for n in range(1, together + 1) for s in combinations(keys, n)]
    for faults in [*([s] for s in sets), *(list(pair) for pair in combinations(sets[: 2 * how_many], 2))]:

        def fails(there: set[tuple[str, str]], faults: list[frozenset[tuple[str, str]]] = faults) -> bool:
            return any(fault <= there for fault in faults)

        pretended = Pretended(lambda c: fails(things_in(c)))
        without = [k for k in keys if not fails({*keys} - {k})]
        alone = [k for k in keys if fails({k})]
        wanted = keys if how_many == 1 else without or alone
        assert sorted(causes(given(things), pretended)) == sorted(wanted[:MOST_CAUSES])


def test_of_many_the_first_few_are_told() -> None:
    assert len(causes(given(THINGS), Pretended(lambda c: bool(things_in(c))))) == MOST_CAUSES
    assert len(causes(given(THINGS), Pretended(lambda c: len(things_in(c)) == len(THINGS)))) == MOST_CAUSES


def test_a_dial_never_did_it() -> None:
    """What it is set to changes no count."""
    assert causes(Changes(dials={"plain": "5"}), Pretended(lambda c: bool(c.dials))) == []
    only = Changes(measures={"wide": "90 cm"}, dials={"plain": "5"})
    pretended = Pretended(lambda c: bool(c.measures))
    assert causes(only, pretended) == [("measure", "wide")]
    # Alone given besides, the measure needs no trial to be found.
    assert pretended.counted[1].measures == {"wide": "50 cm"}


def test_without_work_no_cause_is_looked_for_among_several() -> None:
    pretended = Pretended(lambda c: bool(c.measures))
    assert causes(given(THINGS), pretended, left=A_TRIAL / 2) == []
    assert len(pretended.counted) == 1


# ------------------------------------------------------------------------------------------------ when nothing is explained


@pytest.mark.parametrize(
    "wrong",
    [
        diagnosed("bad-measure", given=("measure", "wide")),
        replace(WRONG, labels=(Label(NOWHERE), Label(Span("mine.wale", 3, 4)))),
    ],
)
def test_what_is_wrong_in_itself_is_told_as_it_is(wrong: Diagnostic) -> None:
    """With its option, or in the file of a bed; though something else is wrong besides."""
    bed = syntax.MachineBlock("mine", (), span=Span("mine.wale", 0, 1))
    changes = Changes(measures={"wide": "90 cm"}, own_bed=bed)
    pretended = Pretended(lambda c: bool(c.measures))
    outcome = pretended.outcome(True, wrong)
    assert explained(outcome, changes, pretended.trials()) is outcome
    assert pretended.counted == []
    # A place in another file says nothing of the bed.
    elsewhere = pretended.outcome(True, replace(WRONG, labels=(Label(Span("other.wale", 3, 4)),)))
    assert explained(elsewhere, changes, pretended.trials()).diagnostics[0].code == "given-too-far"


def test_a_warning_has_nothing_to_explain() -> None:
    pretended = Pretended()
    outcome = pretended.outcome(False, WARNED)
    assert explained(outcome, Changes(measures={"wide": "90 cm"}), pretended.trials()) is outcome
    assert pretended.counted == []


def test_a_source_that_cannot_be_made_by_itself_is_told_as_it_is() -> None:
    everything = Pretended(lambda _: True)
    assert causes(Changes(measures={"wide": "90 cm"}), everything) == []
    assert len(everything.counted) == 1
    assert causes(Changes(measures={"wide": "90 cm"}), Pretended(lambda c: bool(c.measures), source=None)) == []


def test_what_fails_when_it_is_worn_is_proven_at_each_trial() -> None:
    pretended = Pretended(lambda _: False, lambda c: cm(c) > 55)
    outcome = pretended.outcome(True, plans=(object(),))
    (told,) = explained(outcome, Changes(measures={"wide": "90 cm"}), pretended.trials()).diagnostics
    assert dict(told.helps[0].facts)["works"] == "55 cm"
    assert pretended.counted == []


# ------------------------------------------------------------------------------------------------------------- the words


def test_a_few_things_that_the_pattern_says_are_repeated_once_each() -> None:
    said = [diagnosed("levels-fall", piece=name, sizes=("S",)) for name in ("a", "a", "b", "c", "d")]
    pretended = Pretended(lambda c: bool(c.measures))
    outcome = replace(pretended.outcome(False), diagnostics=(*said, WARNED))
    (told, _) = explained(outcome, Changes(measures={"wide": "90 cm"}), pretended.trials()).diagnostics
    assert len(told.notes) == MOST_NOTES
    assert len(set(told.notes)) == MOST_NOTES
    assert all(dict(n.facts)["sizes"] == ("S",) for n in told.notes)


@pytest.mark.parametrize(
    ("thing", "name", "own"),
    [
        (("measure", "length", "90 cm"), "length", "40, 42 cm"),
        (("measure", "Back neck to hem", "90 cm"), "length", "40, 42 cm"),
        (("measure", "centre back-length", "90 cm"), "length", "40, 42 cm"),
        (("measure", "WIDE", "90 cm"), "wide", "50 cm"),
        (("measure", "Gores", "12"), "gores", "6, 8"),
        (("measure", "points", "9 st"), "points", "4 st"),
        (("tension", "Plain", "21 st 31 rows"), "plain", "20 st 30 rows to 10 cm"),
        (("swatch", "loose", "60 st 60 rows 20 cm 20 cm"), "loose", "16 st 24 rows to 10 cm"),
        (("yarn", "soft wool", "50 g = 90 m"), "wool", "soft wool, 50 g = 120 m"),
        (("yarn", "silk", "50 g = 90 m"), "silk", "100 g = 400 m"),
        (("bed", "", "fine"), "", "100 needles, 8 mm apart"),
    ],
)
def test_the_sources_own_is_told_under_its_own_name(thing: tuple[str, str, str], name: str, own: str) -> None:
    changes = given([thing])
    pretended = Pretended(lambda c: bool(things_in(c)))
    outcome = explained(pretended.outcome(True), changes, pretended.trials())
    (told,) = outcome.diagnostics
    assert (told.given, dict(told.facts)["text"]) == (thing[:2], thing[2])
    what: Any = dict(told.facts)["what"]
    assert (what.key, dict(what.facts).get("name", "")) == ("quoted" if name else "bed-given", name)
    assert [(h.key, dict(h.facts)["own"]) for h in told.helps] == [("without-it", own)]


def test_names_of_one_kind_are_not_those_of_another() -> None:
    """A yarn and a fabric of one name each have their own figures."""
    source = replace(SOURCE, yarns=(Yarn("plain", "", 50, 120, HERE),))
    for thing, own in (
        (("yarn", "plain", "1 g = 1 m"), "50 g = 120 m"),
        (("tension", "plain", "1 st 1 rows"), "20 st 30 rows to 10 cm"),
    ):
        pretended = Pretended(lambda c: bool(things_in(c)), source=source)
        (told,) = explained(pretended.outcome(True), given([thing]), pretended.trials()).diagnostics
        assert dict(told.helps[0].facts)["own"] == own


# -------------------------------------------------------------------------------------------------------------- the work


def made(**of: Any) -> Outcome:
    pieces = [SimpleNamespace(levels=(1, 2, 3), mirror_of=None), SimpleNamespace(levels=(1, 2), mirror_of="front")]
    design: Any = SimpleNamespace(pieces=pieces, sizes=("S", "M"))
    return Outcome("x", "", **{"design": design, **of})


def test_work_is_of_what_was_come_to() -> None:
    """A piece that is another one mirrored is counted with that; what is not put together is not counted, and what has no plans is
    not knitted."""
    there: Any = object()
    pieces = [SimpleNamespace(start=50, rows=80), SimpleNamespace(start=10, rows=20)]
    counts: Any = SimpleNamespace(sizes=[SimpleNamespace(pieces=pieces), SimpleNamespace(pieces=pieces[:1])])
    # A hundred for the trial, 18 for each level in each size, one for 125 stitches: as they were measured, so that a copy is
    # explained in the same words by every release.
    assert work(Outcome("x", "")) == 100
    assert work(made()) == 100
    assert work(made(design=None, glued=there)) == 100
    assert work(made(glued=there)) == 100 + 6 * 18
    assert work(made(glued=there, counts=counts)) == 100 + 6 * 18
    assert work(made(glued=there, counts=counts, plans=(there,))) == pytest.approx(100 + 6 * 18 + 8200 / 125)
    assert Trials(counts, counts).left == 40_000


def test_there_is_more_work_as_long_as_any_is_left() -> None:
    pretended = Pretended()
    assert [pretended.trials(left).more for left in (1, 0.5, 0, -1)] == [True, True, False, False]
    trials = pretended.trials(3 * A_TRIAL)
    trials.counted(Changes())
    trials.proven(Changes())
    assert trials.left == A_TRIAL
