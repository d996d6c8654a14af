"""Widths and heights in cm: what a course was said to be of, and its gauge."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from walewright.bed.model import Course, Gauge
from walewright.record import record


@record
class Density:
    """`gauges` by (yarn, tension), `fabrics` by the name that was said of a course. A name without a gauge falls back on the
    yarn and tension."""

    gauges: Mapping[tuple[str, str], Gauge]
    fabrics: Mapping[str, Gauge]

    def base(self, course: Course) -> Gauge | None:
        """Of the course beside its panels."""
        named = self.fabrics.get(course.fabric) if course.fabric else None
        return self.gauges.get((course.yarn, course.tension)) if named is None else named

    def at(self, course: Course, slot: int) -> Gauge | None:
        """Of the course on that needle."""
        name = fabric_at(course, slot) if course.panels else ""
        named = self.fabrics.get(name) if name else None
        return self.base(course) if named is None else named

    def width_cm(self, course: Course, slots: Iterable[int], count: int) -> float | None:
        """`count` stitches of the course, on `slots`, side by side: those in panels by the panels' own gauges."""
        if not course.panels:
            gauge = self.base(course)
            return None if gauge is None else count / gauge.stitches_per_cm
        width = 0.0
        for slot in slots:
            gauge = self.at(course, slot)
            if gauge is None:
                return None
            width += 1 / gauge.stitches_per_cm
        return width


def fabric_at(course: Course, slot: int) -> str:
    """What was said of the course on that needle; of panels that overlap the later one counts."""
    inside = [name for name, first, last in course.panels if first <= slot <= last]
    return inside[-1] if inside else course.fabric
