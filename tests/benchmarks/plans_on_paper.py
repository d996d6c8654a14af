"""Plan documents followed on paper: all sizes of every shipped garment, and every source of the documentation that is proven.

Run on demand: `python -m tests.benchmarks.plans_on_paper [GARMENT...]`. Prints how much was followed; stops at the first
difference. Two sizes of each garment are followed with the other tests, in `tests/plan/test_on_paper.py`.
"""

from __future__ import annotations

import json
import sys
from dataclasses import fields

from tests.docs.test_blocks import EXAMPLES, WHOLE, below_the_frame
from tests.plan.plan_on_paper import Tally, follow
from tests.whole.shipped_once import GARMENTS, SHIPPED, source
from walewright.design import Changes
from walewright.pipeline import compile
from walewright.plan import plan_bytes


def main(names: list[str]) -> None:
    sources = [(name, source(name)) for name in names or GARMENTS]
    if not names:
        sources += [(block.name, block.text) for block in (*map(below_the_frame, EXAMPLES), *dict.fromkeys(WHOLE))]
    whole = Tally()
    for name, text in sources:
        outcome = compile(text, f"{name}.wale", SHIPPED, Changes())
        if not outcome.proven:
            continue
        found = follow(json.loads(plan_bytes(outcome)))
        for of in fields(Tally):
            setattr(whole, of.name, getattr(whole, of.name) + getattr(found, of.name))
        print(
            f"{name}: {found.sizes} sizes, {found.operations} operations, {found.loops} loops, {found.looked} looked at", flush=True
        )
    print(whole)


if __name__ == "__main__":
    main(sys.argv[1:])
