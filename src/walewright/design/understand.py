"""The entry of this stage: a syntax tree understood as a design, everything in cm and per size."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import TypeVar

from walewright.design.charts.grids import chart, first_row, uses_of
from walewright.design.findings import Findings, broken
from walewright.design.model import Chart, Design, Edging, Edition, Fabric, Finished, MachineProfile, Requirement, Yarn
from walewright.design.pieces.alike import written_out
from walewright.design.pieces.cords import drawn_through
from walewright.design.pieces.edgings import closed, edging
from walewright.design.pieces.fabrics_alike import fabrics_written_out, of_one_swatch
from walewright.design.pieces.joins import cloth_of_each, cord, every_band, every_join, joins_before
from walewright.design.pieces.names import edges, known_edges, with_bands
from walewright.design.pieces.shapes import expanded
from walewright.design.pieces.turned_over import turned_over
from walewright.design.pieces.worn import Worn, stated
from walewright.design.put_together import Workroom, pieces
from walewright.design.reading.changes import Changes, changed_rows, chosen_sizes
from walewright.design.reading.children import CAUTIONS, for_children, look_after
from walewright.design.reading.choices import Chosen, choices, selected, to_look_into
from walewright.design.reading.companions import companions
from walewright.design.reading.held_together import held_together
from walewright.design.reading.likely import look_at_swatches
from walewright.design.reading.machine import machine
from walewright.design.reading.materials import fabric, yarn
from walewright.design.reading.meanings import tell_idle
from walewright.design.reading.numbers import not_too_many
from walewright.design.reading.own_bed import changed_bed
from walewright.design.reading.regauged import changed_fabrics, changed_yarns, in_place_of
from walewright.design.reading.requirements import requirement
from walewright.design.reading.settings import edgings_set_on, set_on
from walewright.design.reading.sizes import GradedRows, grade
from walewright.design.reading.tables import Shipped
from walewright.design.reading.values import HIDDEN, Scope
from walewright.design.used.agreement import look_for_disagreement
from walewright.design.used.alternatives import OneWay, told_of_all
from walewright.design.used.at_hand import look_at_hand
from walewright.design.used.edition import edition, given
from walewright.design.used.idle import tell_idle_shapes
from walewright.design.used.idle_places import tell_idle_places
from walewright.design.used.needed import needed, photograph
from walewright.design.used.once import StatementKind, every, heads
from walewright.design.used.shared import only_definitions
from walewright.design.used.texts import texts
from walewright.design.used.unmoved import tell_unmoved
from walewright.design.used.uses import Uses, tell_unused, uses, with_what_is_used
from walewright.record import record, replace
from walewright.report.model import Diagnostic, has_errors
from walewright.source import syntax

MadeOf = TypeVar("MadeOf")
NamedPart = TypeVar("NamedPart", syntax.YarnLine, syntax.ChartBlock, syntax.FabricBlock, syntax.EdgingLine)


def understand(
    tree: syntax.Tree, shipped: Shipped, changes: Changes, shapes: Iterable[syntax.ShapeBlock] = (), alone: bool = False
) -> tuple[Design | None, tuple[Diagnostic, ...]]:
    """The design that the tree means with a knitter's changes in it, and what there is to say about it.

    The design is None when anything told is an error or a line of the tree could not be read. `shipped` is the text of
    the size tables, machine profiles and shapes; `shapes` are those of the shipped shapes that `wanted_shapes` asks for, read.
    The alternatives of a choice that are not taken are looked into as well, but for `alone`. Never raises for a fault of the
    author's.
    """
    lost = tuple(broken(tree.statements))
    if only_definitions(tree):
        return None, _definitions(tree, shipped, changes, shapes, lost)
    findings = Findings(lost)
    offered = choices(tree, changes, findings)
    if offered is None:
        return None, findings.all()

    def meant(chosen: Chosen, changes: Changes) -> tuple[Design | None, OneWay]:
        design, told = _understood(selected(tree, chosen), shipped, changes, shapes, lost)
        return design, OneWay(chosen, told)

    design, way = meant({choice.name: choice.alternative for choice in offered}, changes)
    if findings.failed:
        return None, (*findings.all(), *way.told)
    found = way.told
    if offered and not alone:
        # What a knitter gives is given for the alternative that is taken.
        plain = changes.only(())
        written = meant(way.chosen, plain)[1] if changes.regrade else way
        others = [meant(other, plain)[1] for other in to_look_into(tree, offered)]
        found = told_of_all(tree, way, written, others)
    told = (*findings.all(), *found)
    return (None if design is None or has_errors(told) else replace(design, choices=offered)), told


def _understood(
    tree: syntax.Tree, shipped: Shipped, changes: Changes, shapes: Iterable[syntax.ShapeBlock], lost: tuple[syntax.Broken, ...]
) -> tuple[Design | None, tuple[Diagnostic, ...]]:
    """What a tree without choices means."""
    found, whole, findings, design = _meant(tree, shipped, changes, shapes, lost)
    if design is None:
        # What is misspelt, or in a line that cannot be read, may be the use that seems to be missing.
        return None, findings.all()
    tell_unused(tree, found, findings)
    tell_idle_places(whole, design, findings)
    return with_what_is_used(design, found), findings.all()


def _definitions(
    tree: syntax.Tree, shipped: Shipped, changes: Changes, shapes: Iterable[syntax.ShapeBlock], lost: tuple[syntax.Broken, ...]
) -> tuple[Diagnostic, ...]:
    """What there is to say of definitions by themselves. A name that they do not have is one of whoever uses them."""
    findings = Findings(lost)
    expanded(tree, shapes, sorted(shipped.shapes), findings)
    _Reading(tree, tree, shipped, changes, findings, uses(tree, tree)).design(lines_lost=True)
    return tuple(d for d in findings.all() if d.code != "unknown-name")


def understand_all(
    tree: syntax.Tree, shipped: Shipped, changes: Changes, shapes: Iterable[syntax.ShapeBlock] = ()
) -> tuple[Design | None, tuple[Diagnostic, ...]]:
    """As `understand` of the alternatives taken alone, with all that is defined in the design, used or not, and no report of what
    is unused."""
    lost = tuple(broken(tree.statements))
    told = Findings(lost)
    offered = choices(tree, changes, told)
    if offered is None:
        return None, told.all()
    whole = selected(tree, {choice.name: choice.alternative for choice in offered})
    _, _, findings, design = _meant(whole, shipped, changes, shapes, lost)
    return design, findings.all()


def _meant(
    tree: syntax.Tree, shipped: Shipped, changes: Changes, shapes: Iterable[syntax.ShapeBlock], lost: tuple[syntax.Broken, ...]
) -> tuple[Uses, syntax.Tree, Findings, Design | None]:
    findings = Findings(lost)
    tree = written_out(fabrics_written_out(tree, findings), findings)
    whole = turned_over(expanded(tree, shapes, sorted(shipped.shapes), findings), findings)
    found = uses(tree, whole)
    if not not_too_many(whole, findings):
        return found, whole, findings, None
    tell_idle(tree, whole, findings)
    design = _Reading(tree, whole, shipped, changes, findings, found).design(bool(lost))
    return found, whole, findings, None if findings.failed or lost else design


@record
class _Materials:
    """Bed, yarns, charts and fabrics by name; the source's `own` ones, and those that are knitted with. What was not understood is
    None."""

    own_machine: MachineProfile | None
    machine: MachineProfile | None
    own_yarns: Mapping[str, Yarn | None]
    yarns: Mapping[str, Yarn | None]
    charts: Mapping[str, Chart | None]
    own_fabrics: Mapping[str, Fabric | None]
    fabrics: Mapping[str, Fabric | None]

    def edition(self, sizes: tuple[str, ...], rows: GradedRows, found: Uses) -> Edition | None:
        """What the source itself says; None where its bed was not understood."""
        if self.own_machine is None:
            return None
        return edition(sizes, rows, self.own_fabrics.values(), self.own_yarns.values(), self.own_machine, found)


class _Reading:
    """One reading of one tree."""

    def __init__(
        self, written: syntax.Tree, whole: syntax.Tree, shipped: Shipped, changes: Changes, findings: Findings, found: Uses
    ) -> None:
        self.written = written
        self.tree = whole
        self.found = found
        self.shipped = shipped
        self.changes = changes
        self.findings = findings

    def every(self, kind: type[StatementKind]) -> tuple[StatementKind, ...]:
        return every(self.tree, kind)

    def design(self, lines_lost: bool) -> Design | None:
        findings = self.findings
        there = heads(self.tree, lines_lost, findings)
        stuff = self._materials(there.bed)
        tell_idle_shapes(self.tree, self.shipped.shapes, self.found, findings)
        if (table := there.table) is None:
            return None  # Without sizes no expression has a value; the rest waits for them.
        written, graded, scope = self._sizes(table, stuff.fabrics)
        known, hung = known_edges(worked := self.every(syntax.PieceBlock), edgings := self._edgings(stuff, scope))
        first_rows = {node.name: first_row(node) for node in reversed(self.every(syntax.ChartBlock))}
        room = Workroom(scope, stuff.fabrics, stuff.charts, edgings, stuff.machine, hung, findings=findings, first_rows=first_rows)
        made = pieces(worked, room)
        bands = every_band(lines := self.every(syntax.BandLine), hung, edgings, stuff.fabrics, scope, findings)
        order = (*self.every(syntax.JoinLine), *(there.finish.body if there.finish else ()))
        sewn = with_bands(hung, lines, edgings)
        cloth = cloth_of_each(made, lines, edgings, stuff.fabrics)
        joins = every_join(order, sewn, made, edgings, cloth=cloth, scope=scope, findings=findings)
        closed(edgings.values(), made.values(), bands, joins, findings)
        free = [edges(n.edges, sewn, findings) for n in self.every(syntax.Free)]
        cords = [cord(n, known, scope, findings) for n in self.every(syntax.CordLine)]
        if (child := for_children(table)) is not None:
            look_after(child, worked, self.every(syntax.CordLine), findings)
        else:
            drawn_through(cords, made, bands, (edgings, stuff.fabrics, stuff.charts), findings)
        worn = Worn(made, {b.name for b in bands if b is not None}, known, scope, findings)
        finished, required = self._claims(worn, scope)
        needs = [needed(n, worn, bands, findings) for n in self.every(syntax.NeededLine)]
        source = stuff.edition(table.names, written, self.found)
        if (title := there.title) is None or stuff.machine is None or source is None:
            return None
        return Design(
            file=self.tree.file,
            title=title.title,
            texts=texts(title, self.tree, self.found, (table.names, graded.sizes), findings),
            sizes=graded.sizes,
            measurements=_there(graded.rows.values()),
            machine=stuff.machine,
            yarns=_there(stuff.yarns.values()),
            fabrics=_there(stuff.fabrics.values()),
            edgings=_there(edgings.values()),
            pieces=_there(made.values()),
            bands=_there(bands),
            joins=_there(joins),
            requirements=_there(required),
            making_up=tuple(t.text for t in order if isinstance(t, syntax.TextLine)),
            joins_before=joins_before(order),
            cords=_there(cords),
            free=tuple(edge for names in _there(free) for edge in names),
            finished=_there(finished),
            passages=_there(worn.passage(n) for n in self.every(syntax.Through)),
            laps=_there(worn.lap(n) for n in self.every(syntax.LapLine)),
            bodies=companions(table, graded, self.shipped),
            for_children=child is not None,
            charts=_there(stuff.charts.values()),
            cautions=CAUTIONS if child is not None and any(p.purpose == "hood" for p in worked) else (),
            edition=source,
            given=tuple(given(source, graded, stuff.fabrics, stuff.yarns, stuff.machine, self.changes)),
            needed=_there(needs),
            photograph=photograph(title, findings),
        )

    def _materials(self, bed: syntax.MachineBlock | None) -> _Materials:
        findings = self.findings
        beds, language = self.shipped.machines, self.shipped.language
        own_machine = machine(bed, beds, findings, language) if bed else None
        knitted = changed_bed(bed, own_machine, beds, self.changes, findings, language) if bed else None
        look_at_hand(self.tree.statements, self.found, knitted, findings)
        yarn_lines = self.every(syntax.YarnLine)
        single = self._by_name(tuple(n for n in yarn_lines if not n.strands), lambda n: yarn(n, findings))
        own_yarns = held_together(yarn_lines, single, findings)
        changed = changed_yarns(yarn_lines, single, self.changes, findings)
        # What is wrong with the strands is reported for the source's own.
        yarns = held_together(yarn_lines, changed, Findings())
        uses = uses_of(self.tree.statements)
        charts = self._by_name(self.every(syntax.ChartBlock), lambda n: chart(n, yarns, uses, knitted, findings))
        # A shipped chart that is named is among the source's by now; the others are known by name, should one be misspelt.
        charts = {**charts, **{name: None for name in self.shipped.charts if name not in charts}}
        own_fabrics = self._by_name(self.every(syntax.FabricBlock), lambda n: fabric(n, yarns, charts, findings))
        own_fabrics = of_one_swatch(own_fabrics, own_yarns, findings)
        look_at_swatches(self.every(syntax.FabricBlock), own_fabrics, own_yarns, yarn_lines, findings)
        in_yarns = {name: (y, yarns[name]) for name, y in own_yarns.items()}
        used = tuple(n for n in own_fabrics if self.found.has("fabric", n))
        fabrics = changed_fabrics(own_fabrics, in_yarns, self.changes, used, findings)
        fabrics = set_on(fabrics, self.every(syntax.FabricBlock), (own_machine, knitted), used, findings)
        yarns = in_place_of(yarns, own_yarns, fabrics.values())
        return _Materials(own_machine, knitted, own_yarns, yarns=yarns, charts=charts, own_fabrics=own_fabrics, fabrics=fabrics)

    def _edgings(self, stuff: _Materials, scope: Scope) -> dict[str, Edging | None]:
        lines = self.every(syntax.EdgingLine)
        edgings = self._by_name(lines, lambda n: edging(n, stuff.fabrics, scope, self.findings))
        beds = (stuff.own_machine, stuff.machine)
        return edgings_set_on(edgings, lines, stuff.own_fabrics, stuff.fabrics, beds, self.findings)

    def _sizes(self, table: syntax.Sizes, fabrics: Mapping[str, Fabric | None]) -> tuple[GradedRows, GradedRows, Scope]:
        """The size table as written and with the knitter's changes, and the scope of all names with a value; every `let` worked
        out."""
        findings = self.findings
        written = grade(table, chosen_sizes(table.names, self.changes, findings), self.shipped, findings)
        lets: dict[str, syntax.Let] = {}
        for let in (*self.every(syntax.Let), *stated(self.every(syntax.FinishedLine))):
            lets.setdefault(let.name, let)
        # What a shape works out for itself has no name that a knitter could know.
        graded = changed_rows(written, {n: node for n, node in lets.items() if HIDDEN not in n}, self.changes, findings)
        scope = Scope(findings, graded.sizes, graded.values(), lets, fabrics)
        for name, node in lets.items():
            scope.named(name, node.span)
        look_for_disagreement(table, graded, self.found, findings)
        tell_unmoved(self.written, self.tree, graded, self.changes, findings)
        return written, graded, scope

    def _claims(self, worn: Worn, scope: Scope) -> tuple[list[Finished | None], list[Requirement | None]]:
        """What the finished garment is to measure."""
        finished = [worn.finished(n) for n in self.every(syntax.FinishedLine)]
        told = {f.name: f.measured for f in finished if f is not None and f.measured is not None}
        lines = self.every(syntax.Require)
        return finished, [requirement(n, worn.measured(n.left), told, scope, self.findings) for n in lines]

    def _by_name(self, nodes: tuple[NamedPart, ...], make: Callable[[NamedPart], MadeOf | None]) -> dict[str, MadeOf | None]:
        """Everything of a kind by name, in the order of the source; the first of two with one name counts."""
        made: dict[str, MadeOf | None] = {}
        for node in nodes:
            if node.name not in made:
                made[node.name] = make(node)
        return made


def _there(made: Iterable[MadeOf | None]) -> tuple[MadeOf, ...]:
    return tuple(m for m in made if m is not None)
