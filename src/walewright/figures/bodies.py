"""Where a measurement of the body is taken: a small body, head, hand or foot, and on it a line."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Literal

from walewright.counted.outline import Point
from walewright.figures.model import Drawing
from walewright.figures.pens import Paper, path, smooth
from walewright.guide.model import Guide
from walewright.record import record

SIDE = 30.0
"""mm of paper, upwards and across."""
MIDDLE = SIDE / 2
LIMB, LINE = 0.5, 1.3
"""Widths of the pens, mm."""

SeenFrom = Literal["front", "behind", "side"]


@record
class TakenMeasure:
    """`lines` on the `figure`. A line that goes round bends as what it lies on does."""

    figure: Callable[[], tuple[str, ...]]
    lines: tuple[str, ...]
    seen: SeenFrom = "front"


def taken(guide: Guide, measure: str, name: str) -> Drawing | None:
    """Where the `measure` that a shipped table calls so is taken; None for one that is of no body. `name`: what a page calls it."""
    found = TAKEN.get(measure)
    if found is None:
        return None
    paper = Paper()
    paper.draw("strand", *found.figure(), colour="ink", width=LIMB)
    paper.draw("strand", *found.lines, colour="accent", width=LINE)
    return paper.finished(guide.say(f"drawing/taken-{found.seen}", name=name), SIDE, SIDE)


def _mirrored(points: tuple[Point, ...]) -> tuple[Point, ...]:
    return tuple((SIDE - x, y) for x, y in points)


def _both(points: tuple[Point, ...]) -> tuple[str, str]:
    return smooth(points), smooth(_mirrored(points))


def _oval(x: float, y: float, across: float, down: float) -> str:
    return f"M{x - across} {y}a{across} {down} 0 1 0 {2 * across} 0a{across} {down} 0 1 0 {-2 * across} 0Z"


def _round(left: Point, right: Point, sag: float) -> str:
    """The front half of a line that goes round, from `left` to `right`."""
    return smooth((left, ((left[0] + right[0]) / 2, (left[1] + right[1]) / 2 + sag), right))


# ----------------------------------------------------------------- figures

SHOULDER: Point = (9.4, 8.6)
UNDERARM: Point = (9.9, 12.0)
WRIST: Point = (4.3, 20.6)
NAPE: Point = (MIDDLE, 7.0)


def _body() -> tuple[str, ...]:
    """Head, trunk, arms a little away from it, and legs to above the knee."""
    side = (UNDERARM, (10.2, 14.0), (10.7, 17.0), (10.2, 19.5), (9.6, 22.0), (9.7, 25.0), (10.4, 29.5))
    outer = ((13.6, 6.2), (13.4, 7.5), SHOULDER, (8.2, 9.8), (6.9, 13.2), (5.4, 17.2), (3.4, 20.3), (2.9, 22.6))
    inner = (UNDERARM, (8.6, 14.0), (7.2, 17.4), (5.2, 20.9), (4.4, 23.0), (2.9, 22.6))
    leg = ((MIDDLE, 24.0), (14.6, 26.0), (14.3, 29.5))
    return _oval(MIDDLE, 3.6, 2.3, 2.9), *_both(side), *_both(outer), *_both(inner), *_both(leg)


def _head() -> tuple[str, ...]:
    neck = ((12.0, 20.5), (11.8, 23.6), (9.0, 25.4), (4.5, 27.0))
    ear = ((7.6, 12.0), (6.6, 12.6), (7.0, 15.0), (8.0, 15.6))
    return _oval(MIDDLE, 12.4, 7.4, 9.6), *_both(neck), *_both(ear)


def _hand() -> tuple[str, ...]:
    """A hand laid flat, its fingers together, the thumb away from them."""
    outline = (
        (19.6, 29.0), (20.2, 24.0), (20.8, 19.0), (20.6, 12.0), (19.8, 7.0), (18.2, 5.4), (16.6, 3.2), (14.6, 2.6), (12.4, 3.6),
        (10.8, 6.2), (10.4, 11.0), (10.2, 15.2), (8.4, 12.6), (6.4, 11.4), (5.6, 13.2), (7.4, 17.6), (9.8, 22.0), (11.4, 25.0),
        (11.6, 29.0),
    )  # fmt: skip
    fingers = tuple(path([(x, 6.4), (x, 13.0)]) for x in (13.2, 15.8, 18.4))
    return smooth(outline), *fingers


def _foot() -> tuple[str, ...]:
    """A foot and the shin, from the side, the toes to the right."""
    back = ((7.0, 2.0), (7.2, 10.0), (7.4, 16.0), (5.8, 20.6), (6.4, 24.0), (9.0, 24.6))
    top = ((14.0, 2.0), (13.4, 10.0), (13.8, 15.4), (17.4, 18.2), (22.0, 20.4), (26.4, 21.6), (27.4, 23.6), (26.0, 24.6))
    return smooth(back), smooth(top), smooth(((9.0, 24.6), (15.0, 24.2), (20.0, 24.6), (26.0, 24.6)))


# ----------------------------------------------------------------- where each is taken

ARM = ((MIDDLE, 7.2), (9.6, 8.9), (7.4, 13.6), (6.2, 17.2), WRIST)

TAKEN: Mapping[str, TakenMeasure] = {
    "arm_length_to_underarm": TakenMeasure(_body, (smooth((UNDERARM, (8.6, 14.0), (7.2, 17.4), (5.2, 20.9))),)),
    "armhole_depth": TakenMeasure(_body, (path([SHOULDER, (SHOULDER[0], UNDERARM[1])]),)),
    "back_hip_length": TakenMeasure(_body, (path([NAPE, (MIDDLE, 22.0)]),), "behind"),
    "back_waist_length": TakenMeasure(_body, (path([NAPE, (MIDDLE, 17.0)]),), "behind"),
    "bust": TakenMeasure(_body, (_round((10.2, 13.6), (19.8, 13.6), 0.9),)),
    "centre_back_neck_to_wrist": TakenMeasure(_body, (smooth(ARM),), "behind"),
    "chest": TakenMeasure(_body, (_round((10.0, 12.9), (20.0, 12.9), 0.9),)),
    "cross_back": TakenMeasure(_body, (path([(SHOULDER[0], 9.8), (SIDE - SHOULDER[0], 9.8)]),), "behind"),
    "foot_circumference": TakenMeasure(_foot, (smooth(((20.2, 19.6), (18.8, 22.2), (19.6, 24.6))),), "side"),
    "hand": TakenMeasure(_hand, (_round((10.2, 16.0), (20.8, 16.0), 1.2),)),
    "head": TakenMeasure(_head, (_round((7.9, 9.0), (22.1, 9.0), 1.4),)),
    "hips": TakenMeasure(_body, (_round((9.6, 22.0), (20.4, 22.0), 0.9),)),
    "sock_height": TakenMeasure(_foot, (path([(3.0, 26.0), (3.0, 2.0)]),), "side"),
    "total_foot_length": TakenMeasure(_foot, (path([(5.8, 27.2), (27.4, 27.2)]),), "side"),
    "upper_arm": TakenMeasure(_body, (_round((7.1, 12.7), (9.3, 13.2), 0.5),)),
    "waist": TakenMeasure(_body, (_round((10.7, 17.0), (19.3, 17.0), 0.8),)),
}
"""By the names of the shipped tables' rows."""
