"""The pipeline: every stage in order, from one source text to a proven pattern. Pure; the caller reads and writes files.

Stages are imported inside the functions, so that a command pays only for those it runs.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import field
from typing import TYPE_CHECKING

from walewright.record import record, replace
from walewright.report.model import Diagnostic, Severity, has_errors

if TYPE_CHECKING:
    from walewright.bed import Bed, BedResult
    from walewright.design import Changes, Shipped
    from walewright.design.model import Design
    from walewright.fit.model import Fit
    from walewright.glue.model import GluedSizes
    from walewright.knit.operations import Work
    from walewright.knit.placing import PlacedPlan
    from walewright.knit.steps import SizePlan
    from walewright.languages import PrintedIn
    from walewright.proof.model import Proof
    from walewright.sheet.photograph import ReadyPicture
    from walewright.solve.joins.band_parts import Glue
    from walewright.solve.model import Counts
    from walewright.source.renamed import Renaming
    from walewright.source.syntax import Tree
    from walewright.write.model import Instructions

    Count = Callable[[Design, GluedSizes, Glue], tuple[Counts | None, tuple[Diagnostic, ...]]]


@record
class Outcome:
    """What came of one source. Stages that were not reached left None or an empty tuple; `diagnostics` says why."""

    file: str
    text: str
    tree: Tree | None = None
    design: Design | None = None
    glued: GluedSizes | None = None
    counts: Counts | None = None
    plans: tuple[SizePlan, ...] = ()
    works: tuple[Work, ...] = ()
    results: tuple[BedResult, ...] = ()
    """What the bed knitted from each size's plan, in the order of `design.sizes`."""
    fit: Fit | None = None
    instructions: Instructions | None = None
    plain_text: str = ""
    """The printed steps as plain text, the form that is read back."""
    proof: Proof | None = None
    """There only when every size was knitted as wanted and read back as printed."""
    diagnostics: tuple[Diagnostic, ...] = ()
    language: PrintedIn | None = None
    """What the instructions are printed in; English where nothing is said."""
    shared: Mapping[str, str] = field(default_factory=dict)
    """The texts of other files that it uses, by the names that messages have."""
    files: tuple[str, ...] = ()
    """Their paths from the source's folder."""
    placed: tuple[PlacedPlan, ...] = ()
    """On a bed with missing needles, by size: `plans` and `works` are as there, `results` as if all lay in the middle of a whole
    one."""
    read: tuple[Work, ...] = ()
    """The work of each size as the printed words tell it."""
    picture: ReadyPicture | None = None
    """The photograph that the design names, where who has the files has read it."""
    renamed: Renaming | None = None
    """What the names of the source are in `design` and all that follows, where the language has words of its own for them."""

    @property
    def proven(self) -> bool:
        return self.proof is not None and not has_errors(self.diagnostics)

    def result(self) -> tuple[Design, Counts, Instructions, Proof]:
        """What is printed. Raises ValueError for an outcome that is not proven: nothing may be printed of it."""
        if not self.proven or not self.design or not self.counts or not self.instructions or not self.proof:
            raise ValueError(f"{self.file} is not proven")
        return self.design, self.counts, self.instructions, self.proof


def compile(text: str, file: str, shipped: Shipped, changes: Changes, language: PrintedIn | None = None) -> Outcome:
    """Take the source `text`, called `file` in messages, through all stages.

    `shipped` are the tables and machines that a source can name, `changes` the knitter's own sizes, tensions and
    measurements, `language` what is printed in, if not English. Goes as far as it can and never raises for a fault of the author's.
    """
    outcome = understood(text, file, shipped, changes, language)
    if outcome.design is None or has_errors(outcome.diagnostics):
        return outcome
    if not changes.only_choose_sizes:
        return from_design(outcome)
    whole = _understand(Outcome(file, text, language=language), shipped, replace(changes, sizes=None), alone=True)
    return from_design(outcome, whole)


def counted(text: str, file: str, shipped: Shipped, changes: Changes) -> Outcome:
    """As `compile`, as far as the stitches and rows of every size. No helps are tried for what cannot be counted."""
    outcome = _understand(Outcome(file, text), shipped, changes, alone=True)
    if outcome.design is None or has_errors(outcome.diagnostics):
        return outcome
    together = _put_together(outcome)
    if together.glued is None or has_errors(together.diagnostics):
        return together
    return _count(together, helps=False)


def from_design(outcome: Outcome, whole: Outcome | None = None) -> Outcome:
    """The stages after a source is understood, to the proof: an outcome that has a design, taken as far as it goes. Of a pattern
    that is understood in all its sizes as `whole`, the outcome's own are counted as they are beside the others."""
    from walewright import renaming

    made = _from_design(outcome, whole)
    return replace(made, diagnostics=renaming.as_written(made.diagnostics, made.renamed))


def _from_design(outcome: Outcome, whole: Outcome | None) -> Outcome:
    together = _put_together(outcome)
    if together.glued is None or has_errors(together.diagnostics):
        return together
    among = _counted_among(together, whole) if whole is not None else None
    if among is not None:
        made = _worn(_knit_and_write(among))
        if not _refused(made):
            return _prove(made)
    counted = _count(together, helps=True)
    if counted.counts is None or has_errors(counted.diagnostics):
        return counted
    return _prove(_none_refused_for_others(together, _worn(_knit_and_write(counted))))


def _counted_among(together: Outcome, whole: Outcome) -> Outcome | None:
    """The sizes of `together` with the numbers that they have among all sizes of the pattern: a page of one size is the graded page
    read in that size. None where another size cannot be counted: then they are counted by themselves."""
    from walewright import solve

    if whole.design is None or has_errors(whole.diagnostics):
        return None
    whole = _put_together(whole)
    if whole.glued is None or has_errors(whole.diagnostics):
        return None
    every = _count(whole, helps=False)
    counts = every.counts
    if counts is None:
        return None
    told = tuple(d for d in every.diagnostics if d.code == "band-parted")
    made = _counts_taken(together, lambda design, glued, glue: (solve.among(design, counts, glue), told))
    return None if made.counts is None or has_errors(made.diagnostics) else made


def _none_refused_for_others(together: Outcome, worn: Outcome) -> Outcome:
    """The garment as it is worn; where a size is refused that would not be if its rows were scheduled for it alone, with every size
    scheduled so: all of them share the form of a curve, and in another form it may be longer."""
    refused = _refused(worn)
    if not refused or worn.design is None or len(worn.design.sizes) == 1:
        return worn
    apart = _count(together, helps=False, apart=True)
    if apart.counts is None or has_errors(apart.diagnostics):
        return worn
    again = _worn(_knit_and_write(apart))
    return again if _refused(again) < refused else worn


def _refused(outcome: Outcome) -> frozenset[str]:
    """The sizes that something forbids."""
    every = outcome.design.sizes if outcome.design is not None else ()
    return frozenset(size for d in outcome.diagnostics if d.severity is Severity.ERROR for size in d.sizes or every)


def understood(text: str, file: str, shipped: Shipped, changes: Changes, language: PrintedIn | None = None) -> Outcome:
    """As `compile`, as far as what the source means."""
    return _understand(Outcome(file, text, language=language), shipped, changes)


def _understand(outcome: Outcome, shipped: Shipped, changes: Changes, alone: bool = False) -> Outcome:
    """`alone`: without a look into the alternatives that are not taken."""
    from walewright import design, renaming, source, used_besides

    tree, unread = source.read(outcome.file, outcome.text)
    read, of_others = used_besides.files(tree, shipped)
    used, unshared = design.with_shared(tree, shipped.files, read)
    texts = {shipped.files[key].name: shipped.files[key].text for key in read}
    used, of_charts = used_besides.with_charts(used, shipped)
    texts |= of_charts
    # A source with broken lines is still understood, so that the author hears of every mistake at once.
    shapes, unshaped = used_besides.shapes(used, shipped)
    spoken, shapes, by, misnamed = source.in_language(used, shapes, _named(outcome), shipped.names, read.values())
    if design.only_definitions(tree):
        # What they are called may be said of names that whoever uses them has.
        misnamed = tuple(one for one in misnamed if one.case != "unknown")
    shipped = replace(shipped, language=_named(outcome), written=by.back("size"))
    meant, unclear = design.understand(spoken, shipped, renaming.called(changes, by), shapes, alone)
    told = (*unread, *of_others, *unshared, *unshaped, *misnamed, *renaming.as_written(unclear, by))
    meant = None if has_errors((*of_others, *unshared, *misnamed)) else meant
    return replace(outcome, tree=tree, design=meant, diagnostics=told, shared=texts, files=tuple(read), renamed=by)


def _put_together(outcome: Outcome) -> Outcome:
    from walewright import glue

    assert outcome.design is not None
    glued, apart = glue.glue(outcome.design)
    return replace(outcome, glued=glued, diagnostics=(*outcome.diagnostics, *apart))


def _count(outcome: Outcome, helps: bool, apart: bool = False) -> Outcome:
    from walewright import solve

    return _counts_taken(outcome, solve.apart if apart else solve.solve if helps else solve.attempt)


def _counts_taken(outcome: Outcome, count: Count) -> Outcome:
    """The outcome with what `count` makes of it."""
    from walewright import glue

    assert outcome.design is not None
    assert outcome.glued is not None
    counts, told = count(outcome.design, outcome.glued, lambda design: glue.glue(design)[0])
    made = replace(outcome, counts=counts, diagnostics=(*outcome.diagnostics, *told))
    if counts is None or counts.parted is None:
        return made
    # A band wider than the bed is knitted in parts, which later stages take for bands of their own.
    return replace(made, design=counts.parted.of(outcome.design), glued=counts.parted.glued)


def _knit_and_write(outcome: Outcome) -> Outcome:
    from walewright import bed, knit, write

    assert outcome.design is not None
    assert outcome.counts is not None
    assert outcome.glued is not None
    plans = knit.plan(outcome.design, outcome.glued, outcome.counts)
    works = tuple(knit.expand(plan, outcome.design.charts) for plan in plans)
    machine = bed_of(outcome.design)
    language = printed_in(outcome).writing
    results = tuple(bed.knit(work, machine) for work in works)
    placed, told = _placed(outcome.design, plans, works)
    if placed:
        plans, works = tuple(p.plan for p in placed), tuple(p.work for p in placed)
        if not told:
            gaps = replace(machine, missing=frozenset(outcome.design.machine.missing))
            there = (bed.knit(work, gaps) for work in works)
            results = tuple(made if made.faults else result for made, result in zip(there, results, strict=True))
    columns = tuple(knit.columns_latched(plan, outcome.design.charts) for plan in plans)
    instructions = write.write(plans, language, outcome.design.sizes, outcome.design.charts, columns)
    return replace(
        outcome,
        plans=plans,
        works=works,
        results=results,
        placed=placed,
        instructions=instructions,
        plain_text=write.plain_text(instructions, language),
        diagnostics=(*outcome.diagnostics, *told),
    )


def _placed(
    design: Design, plans: tuple[SizePlan, ...], works: tuple[Work, ...]
) -> tuple[tuple[PlacedPlan, ...], tuple[Diagnostic, ...]]:
    """The plans as they lie on a bed from which needles are missing, and what finds no place there; nothing on a whole bed."""
    from walewright import knit, proof

    bed = design.machine
    if not bed.missing:
        return (), ()
    made = tuple(knit.place(p, w, design.charts, bed.needles, bed.missing) for p, w in zip(plans, works, strict=True))
    told = (
        proof.needing_missing(design, p.plan.size, b.block, b.of, needed=b.last - b.first + 1, missing=b.missing, room=b.room)
        for p in made
        for b in p.left_over
    )
    return made, proof.merged(told)


def _worn(outcome: Outcome) -> Outcome:
    from walewright import fit

    if outcome.design is None or outcome.glued is None or outcome.counts is None or any(r.faults for r in outcome.results):
        return outcome
    found, unfit = fit.fit(outcome.design, outcome.glued, outcome.counts, outcome.results)
    return replace(outcome, fit=found, diagnostics=(*outcome.diagnostics, *unfit))


def _prove(outcome: Outcome) -> Outcome:
    from walewright import bed, knit, proof, readback

    assert outcome.design is not None
    assert outcome.counts is not None
    assert outcome.glued is not None
    machine = bed_of(outcome.design)
    works, unread = readback.read_back_all(outcome.plain_text, printed_in(outcome).reading)
    again: tuple[BedResult | None, ...] = (None,) * len(outcome.design.sizes)
    if works is not None:
        # The bed is a function of the work alone: the same moves, one by one, are the same fabric without knitting it again.
        middle = (knit.moved_back(read, outcome.placed, size) for size, read in enumerate(works))
        planned = zip(works, middle, outcome.works, outcome.results, strict=True)
        again = tuple(result if read == work else bed.knit(there, machine) for read, there, work, result in planned)
    proven, faults = proof.prove(outcome.design, outcome.glued, outcome.counts, outcome.works, outcome.results, again)
    return replace(outcome, read=works or (), proof=proven, diagnostics=(*outcome.diagnostics, *unread, *faults))


def _named(outcome: Outcome) -> str:
    from walewright.languages import ENGLISH

    return outcome.language.name if outcome.language is not None else ENGLISH


def printed_in(outcome: Outcome) -> PrintedIn:
    """What an outcome's instructions are printed in."""
    from walewright.languages import printed

    return outcome.language or printed()


def bed_of(design: Design) -> Bed:
    """The author's bed, with the density of each fabric, by which lengths of the knitted edges are measured.

    A yarn at a tension, without a word of the fabric, is one without a chart or stripes, if there is such a one; never one
    that only panels are in, for those change no row."""
    from walewright.bed import Bed, BedStartsWith, Gauge
    from walewright.knit.dial import HEM, LINKING, looser

    by_name = {f.name: Gauge(f.stitches_per_cm, f.rows_per_cm) for f in design.fabrics}
    whole = design.whole_fabrics()
    patterned = [f for f in whole if f.chart or f.stripes]
    plain = [f for f in whole if not (f.chart or f.stripes)]
    gauges = {(f.yarn, f.tension): by_name[f.name] for f in (*patterned, *plain)}
    # A motif's other yarns, and rows of an edging at a tension of its own, are as wide as what they are knitted in.
    for yarn in dict.fromkeys(yarn for chart in design.charts for yarn in chart.yarns):
        gauges |= {(yarn, f.tension): by_name[f.name] for f in plain if (yarn, f.tension) not in gauges}
    for edging in design.edgings:
        knit = design.fabric(edging.fabric)
        for tension in (edging.fold_tension, edging.inside_tension):
            gauges.setdefault((knit.yarn, tension or knit.tension), by_name[knit.name])
    # Rows that knit two layers together are looser than these, and as wide.
    for knit in design.fabrics:
        for by in (HEM, LINKING):
            gauges.setdefault((knit.yarn, looser(knit.tension, by, design.machine.plates).setting), by_name[knit.name])
    machine = design.machine
    start: BedStartsWith = "nothing" if machine.start == "by hand" else machine.start
    return Bed(
        machine.needles, machine.prongs, gauges, by_name, start=start, crossing=machine.crossing or "any", settings=machine.plates
    )
