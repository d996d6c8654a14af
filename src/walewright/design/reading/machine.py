"""The bed: a shipped profile by name, such a profile with facts of its own, or a bed of the author's."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from typing import Any

from walewright.design.findings import Findings
from walewright.design.model import MachineProfile, Origin
from walewright.design.reading.units import LENGTH, NUMBER, ROWS
from walewright.design.reading.values import literal
from walewright.record import replace
from walewright.report.said import Amount, Fact, Said, said
from walewright.source import syntax
from walewright.trade.beds import HandTool

KEYS = ("needles", "pitch", "prongs", "waste rows", "plates", "missing")
"""Facts that have values."""

HAD: Mapping[str, Mapping[str, Any]] = {
    "edge guides": {"edge_guides": True},
    "dial": {"plates": ()},
    "starts with comb": {"start": "comb"},
    "starts with hem": {"start": "hem"},
    "starts by hand": {"start": "by hand"},
    "crosses on slip": {"crossing": "slip"},
    "crosses lifted off": {"crossing": "lift"},
    "crosses on hold": {"crossing": "hold"},
    "crosses only knitting": {"crossing": "none"},
}
"""Facts that a bed has or has not, and what each says of it."""

LACKS: Mapping[str, HandTool] = {"without latch tool": "latch tool", "without edge weights": "edge weights"}

PRONGS = (1, 2, 3)
"""The transfer tools of an ordinary bed (common practice)."""
WASTE_ROWS = 8
"""Eight to ten rows of waste yarn (common practice)."""
FEWEST_NEEDLES = 20
"""Narrower than any bed that is sold, toys among them: a number below is a slip."""
MOST_NEEDLES = 400
LEAST_PITCH_MM = 1.0
MOST_PITCH_MM = 30.0
MOST_PRONGS = 20
MOST_WASTE_ROWS = 100
"""Far beyond the widest and coarsest beds and their tools: a number above is a slip."""


def profile(name: str, text: str, language: str = "") -> MachineProfile:
    """A shipped profile from its TOML: label, needles, pitch_mm, prongs, waste_rows, edge_guides; start and crossing as the trade
    names them, plates where it has no dial. Its label is in the `language` where it has a table of that name."""
    read: Mapping[str, Any] = tomllib.loads(text)
    return MachineProfile(
        name=name,
        label=str(read.get(language, read)["label"]),
        needles=int(read["needles"]),
        pitch_mm=float(read["pitch_mm"]),
        prongs=tuple(int(p) for p in read["prongs"]),
        waste_rows=int(read["waste_rows"]),
        edge_guides=bool(read["edge_guides"]),
        origin=Origin(f"machine {name}"),
        plates=tuple(str(p) for p in read.get("plates", ())),
        start=read["start"],
        crossing=read["crossing"],
    )


def machine(
    node: syntax.MachineBlock, profiles: Mapping[str, str], findings: Findings, language: str = ""
) -> MachineProfile | None:
    """The bed of a `machine` statement; None when told why not."""
    facts = [f for f in node.body if isinstance(f, syntax.MachineFact)]
    findings.once("machine fact", ((subject(f.key), f.span) for f in facts))
    origin = Origin(f"machine {node.name}", node.span)
    if node.name in profiles:
        bed = replace(profile(node.name, profiles[node.name], language), origin=origin)
    elif not node.body:
        findings.unknown("shipped machine", node.name, node.span, sorted(profiles))
        return None
    else:
        lacking = [k for k in ("needles", "pitch") if k not in {f.key for f in facts}]
        if lacking:
            if not any(isinstance(s, syntax.Broken) for s in node.body):
                findings.report(
                    "missing-part/machine",
                    (node.span, "own-bed"),
                    notes=("shipped",),
                    machine=node.name,
                    lacking=tuple(lacking),
                    shipped=tuple(sorted(profiles)),
                )
            return None
        bed = MachineProfile(node.name, node.name, 0, 0.0, prongs=PRONGS, waste_rows=WASTE_ROWS, edge_guides=False, origin=origin)
    sound = True
    # What is missing is told by numbers that the bed has, wherever it says how many.
    for fact in sorted(facts, key=lambda f: f.key == "missing"):
        changed = _with(bed, fact, findings)
        sound = sound and changed is not None
        bed = changed or bed
    return bed if sound else None


def _with(bed: MachineProfile, fact: syntax.MachineFact, findings: Findings) -> MachineProfile | None:
    """The bed with one fact of its own."""
    if fact.key not in (*KEYS, *HAD, *LACKS):
        findings.unknown("machine fact", fact.key, fact.span, (*KEYS, *HAD, *LACKS))
        return None
    if fact.key == "plates":
        return _on_plates(bed, fact, findings)
    if fact.key == "missing":
        return _without(bed, fact, findings)
    if fact.key in HAD or fact.key in LACKS:
        if fact.values:
            _refuse(fact, "no-number", findings)
            return None
        if fact.key in LACKS:
            return replace(bed, lacking=(*bed.lacking, LACKS[fact.key]))
        return replace(bed, **HAD[fact.key])
    if fact.key == "pitch":
        pitch = _single(fact, findings)
        read = pitch and literal(pitch, findings)
        if not read:
            return None
        if read[1] != LENGTH or not LEAST_PITCH_MM <= read[0] * 10 <= MOST_PITCH_MM:
            _refuse(fact, "pitch", findings, Amount(LEAST_PITCH_MM, ""), Amount(MOST_PITCH_MM, "mm"))
            return None
        return replace(bed, pitch_mm=round(read[0] * 10, 9))
    wholes = [_whole(n, fact, findings) for n in fact.values]
    if not wholes or None in wholes:
        if not wholes:
            _refuse(fact, "some-number", findings)
        return None
    numbers = tuple(n for n in wholes if n is not None)
    most = {"prongs": MOST_PRONGS, "waste rows": MOST_WASTE_ROWS, "needles": MOST_NEEDLES}[fact.key]
    if max(numbers) > most:
        _refuse(fact, "at-most", findings, most=most)
        return None
    if fact.key == "needles" and min(numbers) < FEWEST_NEEDLES:
        _refuse(fact, "at-least", findings, least=FEWEST_NEEDLES)
        return None
    if fact.key == "prongs":
        return replace(bed, prongs=tuple(sorted(set(numbers))))
    if _single(fact, findings) is None:
        return None
    if fact.key == "waste rows":
        return replace(bed, waste_rows=numbers[0])
    if numbers[0] % 2:
        findings.report("odd-needles", (fact.span, "odd"), helps=("even",), needles=numbers[0])
        return None
    return replace(bed, needles=numbers[0])


def subject(key: str) -> str:
    """What a fact says something of: a bed is told once how it starts."""
    words = key.split(" ")
    return words[0] if key in HAD and words[0] in ("starts", "crosses") else "plates" if key == "dial" else key


def _on_plates(bed: MachineProfile, fact: syntax.MachineFact, findings: Findings) -> MachineProfile | None:
    """The bed with plates of those names, the tightest first; they may be given as numbers, too."""
    names = fact.names or tuple(f"{n.value:g}" for n in fact.values if n.unit is None)
    if len(names) < max(1, len(fact.values)):
        _refuse(fact, "plates", findings)
        return None
    findings.once("plate", ((name, fact.span) for name in names))
    return replace(bed, plates=tuple(dict.fromkeys(names)))


def _without(bed: MachineProfile, fact: syntax.MachineFact, findings: Findings) -> MachineProfile | None:
    """The bed without some needles, each told by its side and its number from the centre mark."""
    slots = [_slot(name, bed.needles // 2) for name in fact.names]
    if not slots or None in slots:
        _refuse(fact, "missing-needles", findings, most=bed.needles // 2)
        return None
    return replace(bed, missing=tuple(sorted({slot for slot in slots if slot is not None})))


def _slot(name: str, half: int) -> int | None:
    side, _, number = name.partition(" ")
    if side not in ("L", "R") or not number.isdecimal() or not 1 <= int(number) <= half:
        return None
    return int(number) - 1 if side == "R" else -int(number)


EXAMPLES: Mapping[str, str] = {
    "needles": "needles 200",
    "pitch": "pitch 4.5 mm",
    "prongs": "prongs 1, 2, 3",
    "waste rows": "waste rows 10",
    "plates": "plates 1, 2, 3, 4",
    "missing": "missing L 12, R 40",
    **{key: key for key in (*HAD, *LACKS)},
}
"""How each fact can be written."""


def _single(fact: syntax.MachineFact, findings: Findings) -> syntax.Number | None:
    if len(fact.values) == 1:
        return fact.values[0]
    _refuse(fact, "one-number", findings)
    return None


def _whole(number: syntax.Number, fact: syntax.MachineFact, findings: Findings) -> int | None:
    read = literal(number, findings)
    if read is None:
        return None
    rows = fact.key == "waste rows" and read[1] == ROWS
    if not (rows or (read[1] == NUMBER and number.unit is None)) or read[0] != int(read[0]) or read[0] < 1:
        _refuse(fact, "whole-numbers", findings)
        return None
    return int(read[0])


def _refuse(fact: syntax.MachineFact, wanted: str, findings: Findings, least: Fact = 0, most: Fact = 0) -> None:
    """`wanted` is the key of the phrase for what the fact has to be, `least` and `most` its bounds."""
    findings.report(
        "bad-machine-fact",
        (fact.span, "not-that"),
        helps=_as_millimetres(fact) or (said("such-as", example=EXAMPLES[fact.key]),),
        key=fact.key,
        wanted=Said(wanted, (("least", least), ("most", most))),
    )


def _as_millimetres(fact: syntax.MachineFact) -> tuple[Said, ...]:
    """A distance without a unit that could be one in millimetres."""
    (number, *more) = fact.values or (None,)
    if fact.key != "pitch" or more or number is None or number.unit or not LEAST_PITCH_MM <= number.value <= MOST_PITCH_MM:
        return ()
    wrong = f"{number.value:g}"
    right = f"{wrong} mm"
    return (said("instead", wrong=wrong, right=right),)
