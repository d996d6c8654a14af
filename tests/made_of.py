"""Shipped garments taken as far as their words, each in a few sizes: for tests of what is planned, knitted, written and read."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from functools import cache

from tests.whole.copies_at_random import copied
from tests.whole.garments_at_random import Drawn, drawn
from tests.whole.more_garments_at_random import more
from tests.whole.parted_at_random import parted
from tests.whole.said_around_at_random import said_around
from tests.whole.shipped_once import SHIPPED, source
from walewright import knit, proof, readback, write
from walewright.bed import BedResult
from walewright.design import Changes
from walewright.knit.operations import Block, Check, Work
from walewright.languages import printed
from walewright.pipeline import Outcome, _count, _knit_and_write, _put_together, understood
from walewright.report.model import Diagnostic

FEW: dict[str, tuple[str, ...]] = {
    # Lace, cables, picture knitting; what is dropped and latched up; tuck, ladders, long and slipped stitches.
    "anemone": ("XS", "2X"),
    "hawser": ("S",),
    "shoal": ("2_years", "10_years"),
    "barnacle": ("child", "broad"),
    # Short rows, wedges, slots, gussets, thumbs begun on slots, gathered and grafted ends.
    "driftline": ("toddler_shoe_5", "man_shoe_12"),
    "mooring": ("toddler", "man"),
    "dotterel": ("child", "large"),
    "bollard": ("toddler", "man"),
    "limpet": ("baby", "man"),
    # Parts between openings, saddles, darts, slits, pockets, bands with buttonholes, hems, pleats, panels, borders.
    "halyard": ("S",),
    "dunlin": ("2_years", "10_years"),
    "samphire": ("2_years",),
    "turnstone": ("XS",),
    "curlew": ("2_years", "10_years"),
    "saltmarsh": ("XS",),
    "breakwater": ("doll", "bed"),
    "sandbar": ("one",),
    "greylag": ("S",),
}
"""Garments, and the sizes of each, that between them have most of what there is."""

DRAWERS: Mapping[str, Callable[[int], Drawn]] = {
    "common": drawn,
    "more": more,
    "parted": parted,
    "copies": lambda seed: copied(seed).drawn,
    "around": said_around,
}
NO_CHANGES = Changes()


def one_of_each_kind() -> list[tuple[str, int]]:
    """A drawer and a number for each kind of garment that is drawn: none of those that other tests begin with."""
    found: dict[str, tuple[str, int]] = {}
    for drawer, many in (("more", 400), ("common", 12), ("parted", 3), ("copies", 2), ("around", 2)):
        for seed in range(7000, 7000 + many):
            kind = DRAWERS[drawer](seed).kind
            found.setdefault(kind if drawer == "more" else f"{drawer} {kind} {seed % 2}", (drawer, seed))
    return sorted(found.values())


@cache
def made(name: str, language: str = "english", sizes: tuple[str, ...] | None = None, bed: str = "") -> Outcome:
    """A garment in some sizes (of those above, where none are named) with its plans, its knitted work and its words; on the
    source's own bed, or one with facts of its own."""
    return from_text(source(name), language, Changes(sizes or FEW[name], bed=bed))


@cache
def drawn_at_random(kind: str, seed: int, language: str = "english") -> Outcome:
    """A garment drawn at random: of the "common" kinds, of others ("more"), with parts side by side, in unlike numbers of copies,
    or with what is said around pieces."""
    return from_text(DRAWERS[kind](seed).text, language)


def from_text(text: str, language: str = "english", changes: Changes = NO_CHANGES) -> Outcome:
    """The same of a source that a test has."""
    outcome = understood(text, "small.wale", SHIPPED, changes, printed(language))
    assert outcome.design is not None, outcome.diagnostics
    counted = _count(_put_together(outcome), helps=False)
    assert counted.counts is not None, counted.diagnostics
    made_so = _knit_and_write(counted)
    assert [r.faults for r in made_so.results] == [()] * len(made_so.works)
    return made_so


def faults_of(outcome: Outcome, works: Sequence[Work], results: Sequence[BedResult]) -> list[Diagnostic]:
    """What the proof finds where the garment is worked and knitted so, number by number and loop by loop."""
    assert outcome.design is not None
    assert outcome.glued is not None
    assert outcome.counts is not None
    made_so = tuple(results)
    _, faults = proof.prove(outcome.design, outcome.glued, outcome.counts, tuple(works), made_so, made_so)
    return [d for d in faults if d.severity.value == "error"]


def read(outcome: Outcome, text: str) -> tuple[Work, ...]:
    """The work that a text tells, as it is read in the outcome's language."""
    works, faults = readback.read_back_all(text, (outcome.language or printed()).reading)
    assert works is not None, faults
    return works


def bench_text(outcome: Outcome, size: int = 0) -> str:
    """The plain text of the bench copy of one size."""
    language = (outcome.language or printed()).writing
    assert outcome.design is not None
    charts = outcome.design.charts
    copy = write.write_bench(outcome.plans[size], knit.unrolled(outcome.plans[size], charts), language, charts)
    return write.plain_text(copy, language)


def without_checks(works: Sequence[Work]) -> list[Work]:
    """What hands and carriage do, without what is only stated to be true: a bench copy states more."""
    return [
        replace(
            work,
            tasks=tuple(
                replace(t, operations=tuple(o for o in t.operations if not isinstance(o, Check))) if isinstance(t, Block) else t
                for t in work.tasks
            ),
        )
        for work in works
    ]
