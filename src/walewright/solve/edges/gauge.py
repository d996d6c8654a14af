"""Gauge: which fabric is knitted where in a piece, and how many stitches and rows go to a length of it there.

Zones over the whole width begin and end at levels, so between two levels that follow each other there is one fabric. A panel
changes neither: the rows of a course are those of the piece.
"""

from __future__ import annotations

from itertools import pairwise

from walewright.design.model import Design, DesignInSize, Fabric, Level, Piece


def level_number(piece: Piece, name: str) -> int:
    """Which level that is, from the start up; the empty name is the top."""
    if not name:
        return len(piece.levels) - 1
    return next(i for i, level in enumerate(piece.levels) if level.name == name)


def fabric_above(design: Design, piece: Piece, level: str) -> Fabric:
    """The fabric of the rows just above a level; at the top, that of the rows below."""
    number = min(level_number(piece, level), len(piece.levels) - 2)
    name = piece.fabric
    for zone in piece.zones:
        if zone.width is None and level_number(piece, zone.from_level) <= number < level_number(piece, zone.to_level):
            name = zone.fabric
    return design.fabric(name)


def fabric_below(design: Design, piece: Piece, level: str) -> Fabric:
    """The fabric of the rows just below a level, by which a width is measured there; at the start, that of the first rows."""
    number = level_number(piece, level)
    return fabric_above(design, piece, piece.levels[max(number - 1, 0)].name)


def stages(design: Design, piece: Piece) -> tuple[tuple[Level, Level, Fabric], ...]:
    """Every two levels that follow each other, and the fabric between them, as `fabric_above` has it; in time linear in both."""
    names = [piece.fabric] * (len(piece.levels) - 1)
    for zone in piece.zones:
        if zone.width is None:
            low, high = level_number(piece, zone.from_level), level_number(piece, zone.to_level)
            names[low:high] = [zone.fabric] * len(names[low:high])
    made = {name: design.fabric(name) for name in set(names)}
    return tuple((low, high, made[name]) for (low, high), name in zip(pairwise(piece.levels), names, strict=True))


def highest(level: Level) -> tuple[float, ...]:
    """The most that a level may be up, in cm: of a free one its upper end."""
    return level.height if level.most is None else level.most


def rows_to(at: DesignInSize, piece: Piece, level: str, most: bool = False) -> float:
    """Rows from the start to a level; `most`: all free levels at their upper ends."""
    top = level_number(piece, level)
    heights = [at.of(highest(x) if most else x.height) for x in piece.levels]
    parts = enumerate(stages(at.design, piece)[:top])
    return sum((heights[i + 1] - heights[i]) * fabric.rows_per_cm for i, (_, _, fabric) in parts)


def rows_down(at: DesignInSize, piece: Piece, level: str, cm: float) -> float:
    """Rows of the `cm` centimetres below a level."""
    rows = 0.0
    for low, high, fabric in reversed(stages(at.design, piece)[: level_number(piece, level)]):
        stage = min(cm, at.of(high.height) - at.of(low.height))
        rows, cm = rows + stage * fabric.rows_per_cm, cm - stage
        if cm <= 0:
            break
    return rows


def fabric_at(at: DesignInSize, piece: Piece, cm: float) -> Fabric:
    """The fabric of the rows just below a height in cm."""
    made = stages(at.design, piece)
    return next((fabric for _, high, fabric in made if cm <= at.of(high.height) + 1e-9), made[-1][2])


def course(design: Design, piece: Piece, level: str) -> tuple[tuple[str, tuple[float, ...]], ...]:
    """(fabric, up to which height) from the start to a level: levels alike in this have the same rows."""
    found: list[tuple[str, tuple[float, ...]]] = []
    for _, high, fabric in stages(design, piece)[: level_number(piece, level)]:
        if found and found[-1][0] == fabric.name:
            found.pop()
        found.append((fabric.name, high.height))
    return tuple(found)
