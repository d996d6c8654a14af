"""What a source uses besides itself: other files, shipped charts and shapes. Each is read where it is wanted, and no other."""

from __future__ import annotations

from typing import TYPE_CHECKING

from walewright.record import replace

if TYPE_CHECKING:
    from walewright.design import Shipped
    from walewright.report.model import Diagnostic
    from walewright.source.syntax import ShapeBlock, Tree


def files(tree: Tree, shipped: Shipped) -> tuple[dict[str, Tree], tuple[Diagnostic, ...]]:
    """The trees of the files that a source uses, and of those that these use, by their paths from its folder."""
    from walewright import design, source

    found: dict[str, Tree] = {}
    told: tuple[Diagnostic, ...] = ()
    left = [design.file_key("", line.file) for line in design.used_files(tree)]
    while left:
        key = left.pop(0)
        file = shipped.files.get(key)
        if file is None or file.fault or key in found:
            continue
        other, unread = source.read(file.name, file.text)
        found[key] = other
        told += unread
        left += [design.file_key(key, line.file) for line in design.used_files(other)]
    return found, told


def with_charts(tree: Tree, shipped: Shipped) -> tuple[Tree, dict[str, str]]:
    """The tree with the shipped charts that it names and does not define, and their texts by their files."""
    from walewright import design, source

    wanted = [name for name in design.wanted_charts(tree) if name in shipped.charts]
    texts = {f"patterns/charts/{name}.wale": shipped.charts[name] for name in wanted}
    charts = [statement for file, text in texts.items() for statement in source.read(file, text)[0].statements]
    return (replace(tree, statements=(*tree.statements, *charts)) if charts else tree), texts


def shapes(tree: Tree, shipped: Shipped) -> tuple[tuple[ShapeBlock, ...], tuple[Diagnostic, ...]]:
    """The shipped shapes that a tree uses, and those they use themselves; files of no use to it stay unread."""
    from walewright import design, source
    from walewright.source.syntax import ShapeBlock

    found: list[ShapeBlock] = []
    told: tuple[Diagnostic, ...] = ()
    seen: set[str] = set()
    wanted = list(design.wanted_shapes(tree))
    while wanted:
        name = wanted.pop()
        if name in seen or name not in shipped.shapes:
            continue
        seen.add(name)
        part, unread = source.read(f"patterns/shapes/{name}.wale", shipped.shapes[name])
        found += (s for s in part.statements if isinstance(s, ShapeBlock))
        told += unread
        wanted += design.wanted_shapes(part)
    return tuple(found), told
