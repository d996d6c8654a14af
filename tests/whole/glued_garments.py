"""Garments of the tests' own, in one size, whose making is damaged: on the source, on the bed's work, in the printed words."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache

from walewright import bed, proof
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.knit.operations import Block, Join, Operation, Work
from walewright.pipeline import Outcome, _prove, bed_of, compile
from walewright.report.model import Severity

SHIPPED = shipped()

_HEAD = """pattern "Trial"
sizes S
    chest 60 cm
let half = chest / 2
machine bulky
yarn wool "chunky wool", 100 g = 120 m
fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm
fabric rib
    latched rib every 3rd needle in wool at tension 2
    swatch 40 stitches by 60 rows = 28.6 cm by 29.4 cm
edging welt in plain, 3 cm deep, folded, knitted first
edging cuff in rib, 3 cm deep, added after
edging collar in rib, 2 cm deep, added after
"""


def _body(name: str, deep: int) -> str:
    return f"""piece {name} in plain
    levels hem 0 cm, underarm 18 cm, top 32 cm
    start half wide on waste yarn, with welt
    edges straight to underarm called side
    edges straight to top called armhole
    neck 14 cm wide, {deep} cm deep, round
    end on waste yarn
"""


PULLOVER = f"""{_HEAD}{_body("back", 2)}{_body("front", 6)}piece sleeve in plain, knit 2
    levels cuff 0 cm, wide 18 cm, top 20 cm
    start 18 cm wide on waste yarn, with cuff
    edges slope to 28 cm wide at wide called seam
    edges straight to top called seam
    end cast off
band neckband with collar along back neck + front neck
join back shoulder to front shoulder, linked
join sleeve end to back armhole + front armhole, easing 3 cm
join back side to front side
join sleeve seam to sleeve seam
"""

CARDIGAN = f"""{_HEAD}{_body("back", 2)}piece left_front in plain
    levels hem 0 cm, underarm 18 cm, throat 24 cm, top 32 cm
    start half / 2 wide on waste yarn, with welt
    left edge straight to underarm called side
    left edge straight to top called armhole
    right edge straight to throat called edge
    right edge slope by -7 cm at top called neckline
    end on waste yarn
piece right_front in plain, mirror of left_front
band neckband with collar along right_front neckline + back neck + left_front neckline
band left_band with collar along left_front edge
band right_band with collar along right_front edge, buttonholes 4 over 1 stitch, 2 cm first, 2 cm last
band left_armband with collar along left_front armhole + back armhole_right
band right_armband with collar along back armhole_left + right_front armhole
join back shoulder to right_front end + left_front end
join back side to right_front side
join back side to left_front side
"""

MITTENS = f"""{_HEAD}piece right_mitten in plain
    levels wrist 0 cm, palm 8 cm, top 18 cm
    start 22 cm wide on waste yarn, with cuff
    edges straight to top called seam
    slot thumb 5 cm wide at palm, 4 cm right of centre, on waste yarn
    end gathered
piece left_mitten in plain, mirror of right_mitten
piece right_thumb in plain
    levels base 0 cm, tip 5 cm
    start 9 cm wide along right_mitten thumb + right_mitten thumb_upper
    edges straight to tip called seam
    end gathered
piece left_thumb in plain
    levels base 0 cm, tip 5 cm
    start 9 cm wide along left_mitten thumb_upper + left_mitten thumb
    edges straight to tip called seam
    end gathered
join right_thumb seam to right_thumb seam
join left_thumb seam to left_thumb seam
join right_mitten seam to right_mitten seam
join left_mitten seam to left_mitten seam
"""

PANELS = f"""{_HEAD}piece panel in plain, knit 3
    levels hem 0 cm, top 20 cm
    start 14 cm wide with e-wrap
    left edge straight to top called one
    right edge straight to top called other
    end on waste yarn
band top with collar along panel end + panel end + panel end
join panel other to panel one, each to the next
"""


@cache
def made(text: str) -> Outcome:
    return compile(text, "trial.wale", SHIPPED, Changes())


def errors(outcome: Outcome) -> set[str]:
    return {d.code for d in outcome.diagnostics if d.severity is Severity.ERROR}


# ----------------------------------------------------------------- work and words


def caught(text: str, work: Work) -> set[str]:
    """What the bed, or else the proof, says of other work for the garment."""
    outcome = made(text)
    assert outcome.proven, outcome.diagnostics
    assert outcome.design is not None
    assert outcome.glued is not None
    assert outcome.counts is not None
    result = bed.knit(work, bed_of(outcome.design))
    if result.faults:
        return {fault.code for fault in result.faults}
    _, told = proof.prove(outcome.design, outcome.glued, outcome.counts, (work,), (result,), (None,))
    return {d.code for d in told if d.severity is Severity.ERROR}


def misread(text: str, words: str) -> set[str]:
    """What the reader, or else the comparison with the plan, says of other printed words for the garment."""
    outcome = made(text)
    assert outcome.proven, outcome.diagnostics
    told = _prove(replace(outcome, plain_text=words, proof=None, diagnostics=())).diagnostics
    return {d.code for d in told if d.severity is Severity.ERROR}


def work_of(text: str) -> Work:
    return made(text).works[0]


def changed(work: Work, block: str, change: Callable[[Operation], Operation | None]) -> Work:
    """With every operation of a block put through `change`; None leaves it out."""

    def other(task: Block | Join) -> Block | Join:
        if not isinstance(task, Block) or task.name != block:
            return task
        return replace(task, operations=tuple(new for op in task.operations if (new := change(op)) is not None))

    assert any(b.name == block for b in work.blocks), [b.name for b in work.blocks]
    found = replace(work, tasks=tuple(map(other, work.tasks)))
    assert found != work
    return found


def joins_changed(work: Work, number: int, *instead: Join) -> Work:
    """With others in place of join `number`."""
    old = work.joins[number]
    at = next(i for i, task in enumerate(work.tasks) if task is old)
    found = replace(work, tasks=(*work.tasks[:at], *instead, *work.tasks[at + 1 :]))
    assert found != work
    return found


def moved(work: Work, task: str | int, to: int) -> Work:
    """A block, or join number so and so, moved to another place in the order of work (-1: the end)."""
    one = work.joins[task] if isinstance(task, int) else next(b for b in work.blocks if b.name == task)
    rest = [t for t in work.tasks if t is not one]
    rest.insert(to if to >= 0 else len(rest), one)
    found = replace(work, tasks=tuple(rest))
    assert found != work
    return found
