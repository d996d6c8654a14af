"""A drawing surveyed: of each run of one pen how many lines it has, between which coordinates they lie, where their middle is and
how long they are, and what is lettered where. So a drawing is told in a few lines that change with any stroke of it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from itertools import pairwise
from math import hypot

from walewright.figures.model import Drawing, Lettering, Stroke

Place = tuple[float, float]

TAKES = {"M": 2, "L": 2, "H": 1, "V": 1, "C": 6, "Q": 4, "A": 7, "Z": 0}
"""Numbers that a command of path data takes, each time."""


def lines(data: str) -> Iterator[list[Place]]:
    """The lines of path data: their corners and, of curves, the points that lead them."""
    found: list[Place] = []
    for command, written in re.findall(r"([A-Za-z])([^A-Za-z]*)", data):
        numbers = [float(n) for n in re.findall(r"-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?", written)]
        many = TAKES[command.upper()]
        assert (not numbers) if not many else (len(numbers) % many == 0 and numbers), f"{command}{written}"
        for at in range(0, len(numbers), many or 1):
            here = found[-1] if found else (0.0, 0.0)
            if command == "M":
                if found:
                    yield found
                found = []
            points = list(_points(command, numbers[at : at + many], here))
            found += points
        if not many:
            found.append(found[0])
    if found:
        yield found


def _points(command: str, numbers: list[float], here: Place) -> Iterator[Place]:
    ox, oy = here if command.islower() else (0.0, 0.0)
    match command.upper():
        case "H":
            yield ox + numbers[0], here[1]
        case "V":
            yield here[0], oy + numbers[0]
        case "A":
            # The radii are part of the drawing: they count as a point beside the end.
            yield here[0] + numbers[0], here[1] + (numbers[1] if numbers[4] else -numbers[1])
            yield ox + numbers[5], oy + numbers[6]
        case _:
            for x, y in zip(numbers[::2], numbers[1::2], strict=True):
                yield ox + x, oy + y


def _long(line: Iterable[Place]) -> float:
    return sum(hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(line))


def _pen(of: Stroke) -> str:
    return " ".join(filter(None, (of.kind, of.colour, f"{of.width:g}" if of.width else "")))


def _drawn(found: list[list[Place]]) -> str:
    points = [p for line in found for p in line]
    xs, ys = [x for x, _ in points], [y for _, y in points]
    middle = f"{sum(xs) / len(xs):.2f} {sum(ys) / len(ys):.2f}"
    span = f"{min(xs):.2f} {min(ys):.2f} to {max(xs):.2f} {max(ys):.2f}"
    # Where along the drawing each line lies, so that two that change places show.
    turned = sum(n * (line[0][0] + 2 * line[0][1]) for n, line in enumerate(found, 1)) / len(found) ** 2
    return f"{len(found)} of {len(points)} points, {span}, about {middle}, {sum(map(_long, found)):.2f} mm, {turned:.2f}"


def _letterings(of: Drawing) -> Iterator[str]:
    """What is lettered alike in one line, and where it stands."""
    alike: dict[tuple[str, int, str], list[Lettering]] = {}
    for t in of.letterings:
        alike.setdefault((t.anchor, t.turn, t.kind), []).append(t)
    for (anchor, turn, kind), found in alike.items():
        places = [f"{t.x:g} {t.y:g}" for t in found]
        if len(found) > 4:
            ways = sum(n * (t.x + 2 * t.y) for n, t in enumerate(found, 1)) / len(found) ** 2
            places = [places[0], "to", places[-1], f"{ways:.2f}"]
        texts = " | ".join(t.text for t in found)
        yield f"{kind} {anchor}{f' turned {turn}' if turn else ''}, {', '.join(places)}: {texts}"


def survey(of: Drawing) -> str:
    """The strokes pen by pen, in the order in which they are first taken up, and that in which they are when it is another."""
    told = [f"{of.width:g} by {of.height:g} from {of.left:g} {of.top:g}" + (f", times {of.scale:g}" if of.scale != 1 else "")]
    by_pen: dict[str, list[list[Place]]] = {}
    for stroke in of.strokes:
        by_pen.setdefault(_pen(stroke), []).extend(lines(stroke.data))
    told += [f"{pen}: {_drawn(found)}" for pen, found in by_pen.items()]
    if len(by_pen) < len(of.strokes):
        pens = list(by_pen)
        taken = " ".join(f"{pens.index(_pen(stroke)) + 1}.{len(list(lines(stroke.data)))}" for stroke in of.strokes)
        told.append(f"taken up {taken}")
    for tile in of.tiles:
        found = list(lines(tile.data))
        size = f"{tile.name}, {tile.width:g} by {tile.height:g}, {tile.colour} {tile.pen:g}"
        told.append(f"{size}: {_drawn(found) if found else 'nothing'}")
    return "\n".join((*told, *_letterings(of)))
