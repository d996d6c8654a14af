"""What a bed has beside its needles: facts, settings of the tension, crossings and tools, and what a source asks of them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.design.shaped import HEAD, SHIPPED, piece
from walewright.design import Changes
from walewright.design.findings import Findings
from walewright.design.model import Design, MachineProfile
from walewright.design.reading.given import read_bed
from walewright.design.reading.machine import HAD, LACKS, machine
from walewright.pipeline import Outcome, understood
from walewright.report.model import Severity
from walewright.source import read
from walewright.source.syntax import MachineBlock

PLAIN = "hem 0 cm, top length"
STRAIGHT = piece(end="cast off", start="40 cm wide with e-wrap", levels=PLAIN)


def bed(*facts: str, name: str = "bulky") -> tuple[MachineProfile | None, list[str]]:
    tree, unread = read("it.wale", "\n".join((f"machine {name}", *(f"    {fact}" for fact in facts))) + "\n")
    assert unread == ()
    (block,) = tree.statements
    assert isinstance(block, MachineBlock)
    findings = Findings()
    made = machine(block, SHIPPED.machines, findings)
    return made, [d.code for d in findings.all()]


def meant(text: str, *facts: str, head: str = HEAD, **given: object) -> Outcome:
    block = "".join(f"    {fact}\n" for fact in facts)
    return understood(head.replace("machine bulky\n", f"machine bulky\n{block}") + text, "it.wale", SHIPPED, Changes(**given))  # type: ignore[arg-type]


def told(outcome: Outcome) -> list[str]:
    return [f"{d.code}/{d.case}" if d.case else d.code for d in outcome.diagnostics if d.code != "unused-name"]


def of(outcome: Outcome) -> Design:
    assert outcome.design is not None, outcome.diagnostics
    return outcome.design


@pytest.mark.parametrize("fact", HAD)
def test_a_fact_changes_what_it_says_and_nothing_else(fact: str) -> None:
    plain, _ = bed(name="plate")
    made, codes = bed(fact, name="plate")
    assert codes == []
    assert plain is not None
    assert made == replace(plain, **HAD[fact])  # type: ignore[arg-type]


def test_plates_stand_in_their_order_by_any_name() -> None:
    made, codes = bed("plates fine, 2, B.5")
    assert codes == []
    assert made is not None
    assert made.plates == ("fine", "2", "B.5")


@pytest.mark.parametrize(
    ("facts", "code"),
    [
        (("starts with comb", "starts by hand"), "repeated-name"),
        (("crosses on slip", "crosses on hold"), "repeated-name"),
        (("dial", "plates 1, 2"), "repeated-name"),
        (("plates 1, 2, 1",), "repeated-name"),
        (("starts with luck",), "unknown-name"),
        (("without needles",), "unknown-name"),
        (("dial 10",), "bad-machine-fact"),
    ],
)
def test_facts_that_contradict_or_are_none(facts: tuple[str, ...], code: str) -> None:
    assert bed(*facts)[1] == [code]


@pytest.mark.parametrize("fact", [*HAD, *LACKS, "plates 1, 2"])
def test_a_fact_can_be_given_on_the_command_line(fact: str) -> None:
    read_as = read_bed(fact.replace("plates ", "plates=").replace(",", ""))
    assert read_as is not None
    assert read_as.name == ""
    assert [f.key for f in read_as.facts] == [fact.partition(" 1")[0]]


def test_what_is_given_takes_the_place_of_what_the_source_says_of_it() -> None:
    design = of(meant(STRAIGHT, "starts with hem", "crosses on hold", bed="starts by hand"))
    assert (design.machine.start, design.machine.crossing) == ("by hand", "hold")


# ----------------------------------------------------------------- settings


def test_a_tension_is_one_of_the_plates() -> None:
    assert told(meant(STRAIGHT, "plates 2, 4")) == []
    assert told(meant(STRAIGHT, "plates 1, 2")) == ["no-such-plate/fabric"]


HEMMED = HEAD + "edging hem in plain, 3 cm deep, folded, fold row at tension 6, inside at tension 3, knitted first\n"
HEM = piece(start="40 cm wide on waste yarn, with hem", end="cast off", levels=PLAIN)


def test_so_are_those_of_an_edging() -> None:
    assert told(meant(HEM, "plates 2, 3, 4, 6", head=HEMMED)) == []
    assert told(meant(HEM, "plates 2, 3, 4", head=HEMMED)) == ["no-such-plate/edging"]


def test_on_a_bed_of_the_other_kind_the_knitter_says_the_setting() -> None:
    for text, head in ((STRAIGHT, HEAD), (HEM, HEMMED)):
        assert told(meant(text, head=head, bed="plates=1 2 3 4")) == ["no-such-plate/other-bed"]
        assert told(meant(text, "plates 2, 3, 4, 6", head=head, bed="dial")) == ["no-such-plate/dial"]
        assert told(meant(text, head=head, bed="plates=1 2 3 4", dials={"plain": "2"})) == []
        assert told(meant(text, head=head, bed="plates=1 2 3 4", dials={"plain": "5"})) == ["no-such-plate/given"]


@pytest.mark.parametrize(("plate", "fold", "inside"), [("1", "2", "1"), ("2", "3", "1"), ("4", "4", "3")])
def test_looser_and_tighter_is_the_next_plate(plate: str, fold: str, inside: str) -> None:
    design = of(meant(HEM, head=HEMMED, bed="plates=1 2 3 4", dials={"plain": plate}))
    assert design.fabric("plain").tension == plate
    edging = design.edging("hem")
    assert (edging.fold_tension, edging.inside_tension) == (fold, inside)


def test_a_setting_of_another_bed_with_plates_is_a_start() -> None:
    design = of(meant(STRAIGHT, "plates 2, 4", bed="plates=3 4 5"))
    assert design.fabric("plain").start_dial
    assert not of(meant(STRAIGHT, "plates 2, 4")).fabric("plain").start_dial


# ----------------------------------------------------------------- crossings and tools


def slit(top: str) -> str:
    return piece(
        f"opening slit 0 cm wide from low to {top}",
        end="cast off",
        start="40 cm wide with e-wrap",
        levels="hem 0 cm, low 10 cm, high 20 cm, top length",
    )


@pytest.mark.parametrize(("top", "codes"), [("high", ["no-empty-crossing"]), ("top", [])])
def test_a_carriage_that_only_knits_comes_to_no_part_past_loops(top: str, codes: list[str]) -> None:
    assert told(meant(slit(top), "crosses only knitting")) == codes
    assert told(meant(slit(top), "crosses on hold")) == []


LATCHED = {
    "rib": "piece front in rib\n    levels hem 0 cm, top length\n    start 40 cm wide with e-wrap\n    end cast off sewn\n",
    "chain": STRAIGHT.replace("e-wrap", "chain").replace("cast off", "cast off sewn"),
    "end": STRAIGHT,
    "neck": piece("neck 18 cm wide, 8 cm deep, round, cast off", start="40 cm wide with e-wrap", end="cast off sewn"),
    "edge": piece(
        "edges cast off 3 cm then straight to top",
        start="40 cm wide with e-wrap",
        end="cast off sewn",
        levels="hem 0 cm, top length",
    ),
    "slot": piece("slot thumb 6 cm wide at middle, cast off", start="40 cm wide with e-wrap", end="cast off sewn"),
}


@pytest.mark.parametrize("what", LATCHED)
def test_what_needs_a_latch_tool_is_told_where_none_is(what: str) -> None:
    assert "no-such-tool/latch-tool" not in told(meant(LATCHED[what]))
    found = [d for d in meant(LATCHED[what], "without latch tool").diagnostics if d.code == "no-such-tool"]
    assert len(found) == 1
    assert found[0].labels[0].span.start > len(HEAD.splitlines()) or what == "rib"


def test_what_needs_none_is_not() -> None:
    assert told(meant(STRAIGHT.replace("cast off", "cast off sewn"), "without latch tool")) == []


def test_edge_weights_are_missed_with_a_warning() -> None:
    (found,) = (d for d in meant(LATCHED["edge"], "without edge weights").diagnostics if d.code == "no-such-tool")
    assert found.severity is Severity.WARNING
    assert told(meant(STRAIGHT, "without edge weights")) == []
