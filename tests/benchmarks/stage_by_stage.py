"""Two texts compared stage by stage, no further than to the first at which they differ.

The stages are pure, so what was made of equal things is equal and is not made again: of equal plans the bed has knitted the same
fabric, from an equal made the same page is printed. What a stage looks for to explain a refusal is left out, since a refusal shows
whatever its explanation: the text that is compared with compiles.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import replace
from functools import cached_property
from unittest import mock

from tests.design.dump import dump
from walewright import bed, pipeline, plan, proof, readback, sheet, solve, write
from walewright.bed import BedResult
from walewright.cli.formats.format import Pattern
from walewright.cli.formats.text import text
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.languages import printed
from walewright.pipeline import Outcome
from walewright.report.model import Diagnostic, has_errors
from walewright.sheet.model import PageOptions, Sheet

SHIPPED = shipped()

Told = tuple[tuple[object, ...], ...]


def told(diagnostics: tuple[Diagnostic, ...]) -> Told:
    """What is reported, without the places, which move when a line is taken out."""
    return tuple((d.code, d.case, d.facts, tuple(label.said for label in d.labels)) for d in diagnostics)


def failed(outcome: Outcome) -> bool:
    return has_errors(outcome.diagnostics)


class Compiled:
    """One text in some sizes, taken only as far as it is asked for; a stage that is not come to is None."""

    def __init__(self, text: str, sizes: tuple[str, ...] | None, chosen: Mapping[str, str] | None = None) -> None:
        self.text = text
        self.changes = Changes(sizes=sizes, chosen=chosen or {})

    @cached_property
    def understood(self) -> Outcome:
        return pipeline.understood(self.text, "it.wale", SHIPPED, self.changes)

    @cached_property
    def meant(self) -> str:
        """The canonical text of the design, empty where there is none."""
        design = self.understood.design
        return "" if design is None else dump(design)

    @cached_property
    def counted(self) -> Outcome:
        if self.understood.design is None or failed(self.understood):
            return self.understood
        with _unexplained(alone=len(self.understood.design.sizes) == 1):
            together = pipeline._put_together(self.understood)
            return together if failed(together) else pipeline._count(together, helps=False)

    @cached_property
    def planned(self) -> Outcome | None:
        from walewright import knit

        made = self.counted
        if made.design is None or made.glued is None or made.counts is None or failed(made):
            return None
        return replace(made, plans=knit.plan(made.design, made.glued, made.counts))

    @cached_property
    def knitted(self) -> tuple[Outcome, tuple[BedResult | None, ...]] | None:
        """As far as the words, and what the bed knits from them when they are read back."""
        from walewright import knit

        made = self.planned
        if made is None or made.design is None:
            return None
        works = tuple(knit.expand(size, made.design.charts) for size in made.plans)
        machine = pipeline.bed_of(made.design)
        made = _written(replace(made, works=works, results=tuple(bed.knit(work, machine) for work in works)))
        read, unread = readback.read_back_all(made.plain_text, printed().reading)
        again = tuple(bed.knit(work, machine) for work in read) if read is not None else (None,) * len(works)
        return replace(made, diagnostics=(*made.diagnostics, *unread)), again

    def knitted_as(self, other: Compiled) -> tuple[Outcome, tuple[BedResult | None, ...]] | None:
        """The same, of another's fabric where the bed and all that it is told are the other's."""
        own, its, known = self.planned, other.planned, other.knitted
        if known is None or own is None or its is None or own.design is None or its.design is None:
            return self.knitted
        alike = own.plans == its.plans and own.design.sizes == its.design.sizes and own.design.charts == its.design.charts
        if not alike or pipeline.bed_of(own.design) != pipeline.bed_of(its.design):
            return self.knitted
        words, again = known
        made = _written(replace(own, works=words.works, results=words.results))
        return (made, again) if made.plain_text == words.plain_text else self.knitted

    @cached_property
    def proven(self) -> Outcome | None:
        return _proven(self.knitted)

    @cached_property
    def made(self) -> Sheet | None:
        return _sheet(self.proven)


@contextmanager
def _unexplained(alone: bool) -> Iterator[None]:
    """Refusals of one size `alone` without what a conflict is about. Of several, the sizes that are at fault decide how the others
    are coupled."""
    refused = Diagnostic("counts-conflict")
    if not alone:
        yield
        return
    with mock.patch.object(solve.solver, "explain", return_value=((refused,), True)):
        yield


def _written(made: Outcome) -> Outcome:
    assert made.design is not None
    words = printed()
    instructions = write.write(made.plans, words.writing, made.design.sizes, made.design.charts)
    return replace(made, instructions=instructions, plain_text=write.plain_text(instructions, words.writing))


def _proven(knitted: tuple[Outcome, tuple[BedResult | None, ...]] | None) -> Outcome | None:
    """Worn and proven; None where that is refused."""
    if knitted is None:
        return None
    made, again = pipeline._worn(knitted[0]), knitted[1]
    assert made.design is not None
    assert made.glued is not None
    assert made.counts is not None
    proven, faults = proof.prove(made.design, made.glued, made.counts, made.works, made.results, again)
    made = replace(made, proof=proven, diagnostics=(*made.diagnostics, *faults))
    return made if made.proven else None


def _sheet(proven: Outcome | None) -> Sheet | None:
    return (
        None
        if proven is None
        else sheet.compose(LANGUAGE, sheet.ProvenPattern(*proven.result(), proven.fit), PageOptions(date="today"))
    )


def _text(proven: Outcome) -> str:
    return text(Pattern(proven, LANGUAGE, "a4", "cm", "0", ""))


def shows(was: Compiled, now: Compiled) -> str:
    """The first stage at which two texts differ, or an empty text."""
    if told(was.understood.diagnostics) != told(now.understood.diagnostics):
        return "told"
    if was.meant == now.meant:
        return ""
    if told(was.counted.diagnostics) != told(now.counted.diagnostics):
        return "told later"
    one, other = was.planned, now.planned
    if one is None or other is None:
        return "" if one is other else "told later"
    if one.plans != other.plans:
        return "knitted"
    before, after = was.proven, _proven(now.knitted_as(was))
    if before is None or after is None:
        return "" if before is after else "told later"
    if told(before.diagnostics) != told(after.diagnostics):
        return "told later"
    if _text(before) != _text(after):
        return "text"
    page, its = was.made, _sheet(after)
    assert page is not None
    assert its is not None
    if page != its and sheet.html(page) != sheet.html(its):
        return "page"
    return "" if plan.plan_bytes(before) == plan.plan_bytes(after) else "plan"
