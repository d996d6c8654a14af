"""What the bed spent on one size: loops and floats of each yarn by fabric, tails, waste yarn and ravel cord, all copies."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import field
from functools import cache

from walewright.bed import Course, KnitFabric
from walewright.bed.density import fabric_at
from walewright.bed.loops import YARNLESS_COURSES, LoopKind
from walewright.design.model import Design
from walewright.design.model import Fabric as Knit
from walewright.record import record


@record
class Tally:
    """Of one yarn in one fabric: `loops` (all but chains and those of lengths cut for them), `longs` of them drawn long, `chains`
    of a cast-off or a cast-on with the latch tool, `passed` needles that it floats past, `empty` of those that were slipped: they
    got no loop of any yarn in that row."""

    loops: int = 0
    longs: int = 0
    chains: int = 0
    passed: int = 0
    empty: int = 0


@record
class Spent:
    """`tallies` by (fabric, yarn); `tails_cm` by yarn; `waste` loops of waste yarn, `ravel` loops of each row of ravel cord,
    `cords` of which lie in one start; `parts`: the stitches of each part that waited on cord."""

    tallies: dict[tuple[str, str], Tally] = field(default_factory=dict)
    tails_cm: Counter[str] = field(default_factory=Counter)
    waste: int = 0
    ravel: tuple[int, ...] = ()
    cords: int = 1
    parts: tuple[int, ...] = ()


def spent(design: Design, fabrics: Iterable[KnitFabric]) -> Spent:
    """Count it all."""
    counts: LoopCounts = Counter()
    tails: Counter[str] = Counter()
    waste = 0
    ravel: list[int] = []
    cords = 1
    every = tuple(fabrics)
    for fabric in every:
        for key, count in _counts(design, fabric).items():
            counts[key] += count * fabric.copies
        for yarn, cm in fabric.tails_cm.items():
            tails[yarn] += cm * fabric.copies
        waste += fabric.helpers.get("waste", 0) * fabric.copies
        rows = sum(1 for yarn, *_ in fabric.waste if yarn == "ravel")
        ravel += [fabric.helpers["ravel"] // rows] * rows * fabric.copies if rows else []
        cords = max(cords, rows)
    of = dict.fromkeys((knit, yarn) for knit, yarn, _ in counts)
    tallies = {key: Tally(*(counts[(*key, what)] for what in ("loops", "longs", "chains", "passed", "empty"))) for key in of}
    parts = tuple(last - first + 1 for fabric in every for *_, first, last in fabric.corded)
    return Spent(tallies, tails, waste, tuple(ravel), cords, parts)


LoopCounts = Counter[tuple[str, str, str]]
"""By (fabric, yarn, field of `Tally`)."""


def _counts(design: Design, fabric: KnitFabric) -> LoopCounts:
    counts: LoopCounts = Counter()

    @cache
    def swatch(name: str, yarn: str, tension: str) -> str:
        return knit_of(design, name, yarn, tension).name

    def add(what: str, name: str, yarn: str, tension: str, count: int) -> None:
        counts[swatch(name, yarn, tension), yarn, what] += count

    for (name, yarn, tension), count in fabric.loops_by_fabric.items():
        add("loops", name, yarn, tension, count)
    tails = fabric.tails_cm
    for course in fabric.courses:
        if course.chained:
            add("loops", course.fabric, course.yarn, course.tension, -course.count)
            add("chains", course.fabric, course.yarn, course.tension, course.count)
        elif course.apart and course.cast_on == "e-wrap" and tails.get(course.yarn):
            add("loops", course.fabric, course.yarn, course.tension, -course.count)
    if LoopKind.LONG in fabric.kinds:
        for loop in (i for i, kind in enumerate(fabric.kinds) if kind == LoopKind.LONG):
            course = fabric.course_of(loop)
            add("longs", fabric_at(course, fabric.slots[loop]), course.yarn, course.tension, 1)
    for name, yarn, tension, passed, empty in _floats(fabric):
        add("passed", name, yarn, tension, passed)
        add("empty", name, yarn, tension, empty)
    return counts


def long_rows(fabric: KnitFabric) -> tuple[int, ...]:
    """Stitches drawn long, row by row of those that have any."""
    if LoopKind.LONG not in fabric.kinds:
        return ()
    made = Counter(fabric.course_of(loop).counter for loop, kind in enumerate(fabric.kinds) if kind == LoopKind.LONG)
    return tuple(made[row] for row in sorted(made))


def _floats(fabric: KnitFabric) -> Iterator[tuple[str, str, str, int, int]]:
    """(fabric, yarn, tension, needles passed, needles of them slipped) of each float."""
    rows = courses_by_row(fabric) if fabric.floats else {}
    slipped = {counter: _slipped(fabric, courses) for counter, courses in rows.items()}
    for run in fabric.floats:
        courses = rows.get(run.counter, [])
        at = next((c for c in courses if c.first <= run.first <= c.last), None)
        if at is None:
            continue
        own = next((c for c in courses if c.yarn == run.yarn), at)
        needles = range(run.first, run.last + 1)
        # A slipped needle counts once, with the yarn of the row, though another yarn floats past it too.
        empty = sum(1 for slot in needles if slot in slipped[run.counter]) if run.yarn == at.yarn else 0
        yield fabric_at(at, run.first), run.yarn, own.tension, len(needles), empty


def _slipped(fabric: KnitFabric, courses: Iterable[Course]) -> frozenset[int]:
    """Needles of a row whose yarn was lifted off, and that got no loop of another."""
    lifted: set[int] = set()
    loops: set[int] = set()
    for course in courses:
        loops.update(looped(fabric, course))
        if course.kind == "laid":
            lifted.update(fabric.slots[course.first_loop : course.first_loop + course.count])
    return frozenset(lifted - loops)


def courses_by_row(fabric: KnitFabric) -> dict[int, list[Course]]:
    """Reading of the counter -> what was made of yarn then, the passes first."""
    rows: dict[int, list[Course]] = {}
    for course in fabric.courses:
        if course.kind not in YARNLESS_COURSES:
            rows.setdefault(course.counter, []).append(course)
    for courses in rows.values():
        courses.sort(key=lambda course: course.kind != "knit")
    return rows


def looped(fabric: KnitFabric, course: Course) -> Iterator[int]:
    """The needles on which the course made a loop; yarn that was lifted off again is none."""
    for loop in range(course.first_loop, course.first_loop + course.count):
        if course.kind != "laid" or fabric.kinds[loop] != LoopKind.FLOAT:
            yield fabric.slots[loop]


# ----------------------------------------------------------------- which swatch


def grams_per_stitch(knit: Knit) -> float:
    """Of a weighed swatch; 0 where it was not weighed."""
    return knit.swatch_grams / (knit.swatch_stitches * knit.swatch_rows)


def _best(fabrics: tuple[Knit, ...], yarn: str, tension: str) -> Knit:
    """Of fabrics that can be meant, those without a chart first, then the heaviest, so that the yarn is enough."""
    fits = (
        [f for f in fabrics if (f.yarn, f.tension) == (yarn, tension)]
        or [f for f in fabrics if f.tension == tension]
        or [f for f in fabrics if f.yarn == yarn]
        or list(fabrics)
    )
    plain = [f for f in fits if not f.chart and not f.stripes] or fits
    return max(plain, key=grams_per_stitch)


def knit_of(design: Design, name: str, yarn: str, tension: str) -> Knit:
    """The fabric by whose swatch loops are reckoned: the one named, else one of that yarn and tension, else the nearest to it."""
    named = next((f for f in design.fabrics if f.name == name), None) if name else None
    return _best(design.fabrics, yarn, tension) if named is None else named
