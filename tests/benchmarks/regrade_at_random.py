"""Shipped garments at tensions and for bodies drawn at random, each refusal looked into, each help followed.

Run on demand: `python -m tests.benchmarks.regrade_at_random RESULTS [FIRST [COUNT [GARMENT...]]]`. A draw is the same on every
computer. Each writes a line into the file RESULTS; what is there already is not drawn again, so a run that was stopped is taken up
where it was, and runs of several days add up. At the end the sum of the whole file is printed:

- how many came to a proven pattern, and which codes told why the others did not; the rate of refusals apart from a bed's width;
- sizes that were refused together with others and are proven alone (there should be none);
- helps that name a figure: how many were followed, and how many of those led to a proven pattern;
- faults: an exception, a bed that refuses, words that are read otherwise (there should be none).

Draws: the fabrics of a garment looser or tighter by up to 35 %, stitches and rows apart, all by one ratio or each by its own; all
sizes, or one with a body of its own within the sizes that the table has.
"""

from __future__ import annotations

import json
import random
import sys
from collections import Counter
from dataclasses import replace
from pathlib import Path
from typing import Any

from tests.whole.shipped_once import GARMENTS, SHIPPED, design_of, source
from walewright.design import Changes
from walewright.design.model import Design
from walewright.pipeline import Outcome, compile, from_design
from walewright.report.english import in_english
from walewright.report.model import Change, Diagnostic, Severity
from walewright.solve.conflict.changed import changed

SPREAD = 0.35
FAULTS = ("bed-refuses", "words-", "knitted-otherwise")


def drawn(number: int, name: str) -> Changes:
    """The knitter's changes of a draw."""
    design, chance = design_of(name), random.Random(f"{number} {name}")
    coherent = chance.random() < 0.5
    ratios = [chance.uniform(1 - SPREAD, 1 + SPREAD) for _ in range(2)]
    tensions = {}
    for fabric in design.fabrics:
        across, up = ratios if coherent else [chance.uniform(1 - SPREAD, 1 + SPREAD) for _ in range(2)]
        tensions[fabric.name] = f"{fabric.stitches_per_cm * 10 * across:.3f} st {fabric.rows_per_cm * 10 * up:.3f} rows"
    if chance.random() < 0.5:
        return Changes(None, tensions, {})
    bodies = {
        m.name: f"{chance.uniform(min(m.values), max(m.values)):.1f} cm"
        for m in design.measurements
        if m.to_fit and chance.random() < 0.5
    }
    return Changes((chance.choice(design.sizes),), tensions, bodies)


def made(name: str, changes: Changes) -> Outcome:
    return compile(source(name), f"{name}.wale", SHIPPED, changes)


def errors(outcome: Outcome) -> list[Diagnostic]:
    return [d for d in outcome.diagnostics if d.severity is Severity.ERROR]


def looked_into(number: int, name: str) -> dict[str, Any]:
    """What came of a draw, as a line of the results."""
    changes = drawn(number, name)
    line: dict[str, Any] = {"draw": number, "garment": name}
    try:
        outcome = made(name, changes)
        told = errors(outcome)
        line["codes"] = sorted({d.code for d in told})
        if not outcome.proven:
            line["said"] = [in_english(d).message for d in told]
            line["changes"] = {"sizes": changes.sizes, "tensions": dict(changes.tensions), "measures": dict(changes.measures)}
            line["alone"] = alone(name, changes, outcome)
            line["followed"] = followed(outcome, told)
    except Exception as fault:  # a fault of ours is what the campaign looks for
        line["codes"] = [f"exception {type(fault).__name__}"]
        line["said"] = [str(fault)[:300]]
    return line


def alone(name: str, changes: Changes, outcome: Outcome) -> list[str]:
    """Sizes that were refused and are proven when they are made alone."""
    sizes = outcome.design.sizes if outcome.design is not None else design_of(name).sizes
    if len(sizes) < 2:
        return []
    refused = {s for d in errors(outcome) for s in d.sizes or sizes}
    return [s for s in sizes if s in refused and made(name, replace(changes, sizes=(s,))).proven]


def followed(outcome: Outcome, told: list[Diagnostic]) -> dict[str, list[int]]:
    """Kind of change to (helps followed, proven then): each help of a single error; of several the first of each, at once."""
    if outcome.design is None or not all(d.changes for d in told):
        return {}
    ways = [(c, (c,)) for c in told[0].changes] if len(told) == 1 else [(told[0].changes[0], tuple(d.changes[0] for d in told))]
    found: dict[str, list[int]] = {}
    for first, all_of_them in ways:
        counts = found.setdefault(f"{told[0].code}: {first[0].figure}", [0, 0])
        counts[0] += 1
        counts[1] += _proven(outcome, outcome.design, [change for changes in all_of_them for change in changes])
    return found


def _proven(outcome: Outcome, design: Design, changes: list[Change]) -> bool:
    otherwise = changed(design, changes)
    kept = tuple(d for d in outcome.diagnostics if d.severity is not Severity.ERROR)
    return otherwise is not None and from_design(replace(outcome, design=otherwise, diagnostics=kept)).proven


def summed(lines: list[dict[str, Any]]) -> None:
    """Prints what all draws came to."""
    count = len(lines)
    codes = Counter(" ".join(line["codes"]) or "proven" for line in lines)
    refused = [line for line in lines if line["codes"] and not all("the bed has" in message for message in line["said"])]
    faults = [line for line in lines if any(code.startswith((*FAULTS, "exception")) for code in line["codes"])]
    print(f"{count} draws: " + ", ".join(f"{what} {n}" for what, n in codes.most_common()))
    print(f"refused apart from the bed's width: {len(refused)}, {100 * len(refused) / max(count, 1):.2f} %")
    print(f"sizes refused that are proven alone: {sum(len(line.get('alone', ())) for line in lines)}")
    helps: dict[str, list[int]] = {}
    for line in lines:
        for what, (tried, led) in line.get("followed", {}).items():
            of = helps.setdefault(what, [0, 0])
            of[0], of[1] = of[0] + tried, of[1] + led
    for what, (tried, led) in sorted(helps.items()):
        print(f"help {what}: followed {tried}, proven then {led}")
    print(f"faults: {len(faults)}")
    for line in faults:
        print(" ", line["draw"], line["garment"], line["codes"], line["said"][:1])


def main() -> None:
    """Draw what is not there yet, and sum up."""
    results = Path(sys.argv[1])
    first, count = (int(a) for a in (sys.argv[2:4] + ["0", "100"][len(sys.argv[2:4]) :]))
    among = tuple(sys.argv[4:]) or GARMENTS
    lines = [json.loads(text) for text in results.read_text(encoding="utf-8").splitlines()] if results.exists() else []
    done = {(line["draw"], line["garment"]) for line in lines}
    with results.open("a", encoding="utf-8") as file:
        for number in range(first, first + count):
            name = among[number % len(among)]
            if (number, name) not in done:
                lines.append(looked_into(number, name))
                file.write(json.dumps(lines[-1]) + "\n")
                file.flush()
    summed(lines)


if __name__ == "__main__":
    main()
