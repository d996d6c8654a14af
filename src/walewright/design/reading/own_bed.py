"""The bed of a knitter's own: a shipped one by name, facts in place of the source's, or one described in a file."""

from __future__ import annotations

from collections.abc import Mapping

from walewright.design.findings import Findings
from walewright.design.model import MachineProfile, Origin
from walewright.design.reading.changes import Changes, tell_malformed
from walewright.design.reading.given import read_bed
from walewright.design.reading.machine import machine, subject
from walewright.record import replace
from walewright.report.model import NOWHERE
from walewright.source import syntax


def changed_bed(
    node: syntax.MachineBlock,
    bed: MachineProfile | None,
    profiles: Mapping[str, str],
    changes: Changes,
    findings: Findings,
    language: str = "",
) -> MachineProfile | None:
    """The bed that is knitted on: the source's `bed`, which is that of `node`, or the knitter's; None when told why not."""
    if changes.own_bed is not None:
        return machine(changes.own_bed, profiles, findings, language)
    if not changes.bed:
        return bed
    read = read_bed(changes.bed)
    if read is None:
        tell_malformed("bed", "", changes.bed, findings)
        return None
    own_of = {subject(own.key) for own in read.facts}
    facts = tuple(f for f in node.body if not (isinstance(f, syntax.MachineFact) and subject(f.key) in own_of))
    # A bed by name is that bed, whatever the source says of its own.
    wanted = syntax.MachineBlock(read.name, read.facts) if read.name else replace(node, body=(*facts, *read.facts))
    own = Findings()
    made = machine(wanted, profiles, own, language)
    findings.take(own, "bed", "")
    return made and replace(made, origin=Origin("bed", NOWHERE))
