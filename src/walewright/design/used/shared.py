"""What a source has of other files: definitions by name, and what these need that the source does not define itself.

The statements keep their places in their own files, so whatever is wrong with one is told at its line there.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from walewright.design.findings import Findings, broken
from walewright.design.reading.choices import in_all
from walewright.design.reading.tables import SharedFile
from walewright.design.used.uses import DEFINITIONS, NamedIn, references
from walewright.record import replace
from walewright.report.model import Diagnostic
from walewright.report.said import said
from walewright.source import syntax

MOST_FILES = 20
DEEPEST = 5
"""Files that use files."""

SHARED = (syntax.YarnLine, syntax.FabricBlock, syntax.ChartBlock, syntax.EdgingLine, syntax.ShapeBlock, syntax.Let)
"""What one file can have of another."""
BESIDE = (syntax.UseFrom, syntax.NameLine, syntax.TextLine, syntax.Broken)
"""What else stands in a file of definitions alone."""


def only_definitions(tree: syntax.Tree) -> bool:
    """Whether a file holds what others may use and nothing that is made."""
    rest = [s for s in tree.statements if not isinstance(s, BESIDE)]
    return any(not isinstance(s, syntax.Let) for s in rest) and all(isinstance(s, SHARED) for s in rest)


def file_key(user: str, name: str) -> str:
    """The path of a file from the source's folder, as the file `user` (a path from there too) names it."""
    folder, slash, _ = user.rpartition("/")
    parts = [part for part in name.split("/") if part not in ("", ".")]
    # An absolute name stays one, so that it is outside of every folder.
    path = "/".join((folder, *parts) if slash and not name.startswith("/") else parts)
    return f"/{path}" if name.startswith("/") else path


def used_files(tree: syntax.Tree) -> tuple[syntax.UseFrom, ...]:
    """The lines that use other files."""
    return tuple(s for s in tree.statements if isinstance(s, syntax.UseFrom))


def with_shared(
    tree: syntax.Tree, files: Mapping[str, SharedFile], trees: Mapping[str, syntax.Tree]
) -> tuple[syntax.Tree, tuple[Diagnostic, ...]]:
    """The tree with what it uses of other files behind its own statements, and what is wrong with the lines that say so. `trees`
    are those of the `files` that could be read."""
    if not any(isinstance(s, syntax.UseFrom) for s in in_all(tree.statements)):
        return tree, ()
    lost = tuple(b for used in trees.values() for b in broken(used.statements))
    findings = Findings(lost)
    sharing = _Sharing(files, trees, findings)
    own = {_named(s) for s in in_all(tree.statements) if isinstance(s, SHARED)}
    own |= {
        ("measurement", r.name)
        for t in tree.statements
        if isinstance(t, syntax.Sizes)
        for r in t.body
        if isinstance(r, syntax.SizeRow)
    }
    brought = sharing.brought("", tree, own, ())
    for block in (s for s in tree.statements if isinstance(s, syntax.ForBlock)):
        for line in (s for s in in_all(block.body) if isinstance(s, syntax.UseFrom)):
            findings.report("impossible-statement/use-from", (line.span, "within"), (block.span, "around"))
    return replace(tree, statements=(*tree.statements, *brought, *lost)), findings.all()


@dataclass(slots=True)
class _Sharing:
    files: Mapping[str, SharedFile]
    trees: Mapping[str, syntax.Tree]
    findings: Findings

    def brought(self, user: str, tree: syntax.Tree, own: set[NamedIn], chain: tuple[str, ...]) -> tuple[syntax.Statement, ...]:
        """The statements that the lines of a tree bring into it, each once; `own` are definitions that it has itself."""
        found: dict[int, syntax.Statement] = {}
        for line in used_files(tree):
            there = self._defined_in(user, line, chain)
            if there is None:
                continue
            wanted: list[NamedIn] = []
            for name in line.names:
                named = [key for key in there if key[1] == name]
                if not named:
                    file = said("definition-in", file=line.file)
                    self.findings.unknown(file, name, line.span, dict.fromkeys(n for _, n in there))
                wanted += named
            for statement in _needed(wanted, there, own):
                found.setdefault(id(statement), statement)
        return tuple(found.values())

    def _defined_in(self, user: str, line: syntax.UseFrom, chain: tuple[str, ...]) -> dict[NamedIn, syntax.Statement] | None:
        """What a file defines, or has of others; None, and told, where it cannot be used."""
        key = file_key(user, line.file)
        file = self.files.get(key)
        fault = (
            "ring" if key in chain else "nested" if len(chain) >= DEEPEST else self._missing(key) if file is None else file.fault
        )
        if fault or key not in self.trees:
            self._unusable(line, fault or "unreadable")
            return None
        tree = self.trees[key]
        own = {_named(s): s for s in reversed(tree.statements) if isinstance(s, SHARED)}
        others = self.brought(key, tree, set(own), (*chain, key))
        return {**{_named(s): s for s in reversed(others) if isinstance(s, SHARED)}, **own}

    def _missing(self, key: str) -> str:
        """Why nobody has read a file."""
        outside = key.startswith("/") or ".." in key.split("/")
        return "outside" if outside else "many" if len(self.files) >= MOST_FILES else "missing"

    def _unusable(self, line: syntax.UseFrom, fault: str) -> None:
        self.findings.report(
            _UNUSABLE[fault],
            (line.span, "named"),
            helps=("which",),
            file=line.file,
            most=MOST_FILES,
            deepest=DEEPEST,
        )


_UNUSABLE = {
    "outside": "shared-file-unusable/outside",
    "not-source": "shared-file-unusable/not-source",
    "missing": "shared-file-unusable/missing",
    "unreadable": "shared-file-unusable/unreadable",
    "ring": "shared-file-unusable/ring",
    "nested": "shared-file-unusable/nested",
    "many": "shared-file-unusable/many",
}
"""What is reported of each fault of a file."""


def _needed(wanted: Iterable[NamedIn], there: Mapping[NamedIn, syntax.Statement], own: set[NamedIn]) -> Iterator[syntax.Statement]:
    """What is wanted, and what that needs and the user does not define."""
    left, seen = list(wanted), set(wanted)
    while left:
        statement = there[left.pop(0)]
        yield statement
        fresh = [n for n in references(statement) if n in there and n not in own and n not in seen]
        seen.update(fresh)
        left += dict.fromkeys(fresh)


def _named(statement: syntax.Node) -> NamedIn:
    return DEFINITIONS[type(statement)], str(getattr(statement, "name", ""))
