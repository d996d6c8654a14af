"""What hands do where charts and stripes begin and end."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.charting import InForce
from walewright.knit.operations import Operation
from walewright.knit.rows import Done, stopped
from walewright.knit.state import State, StripesInForce
from walewright.record import replace


def _in_fabric(fabric: str, of: st.StartChart | InForce) -> op.InFabric:
    return op.InFabric(fabric) if of.area == "whole" else op.InFabric(fabric, of.first, of.last)


def _start_chart(s: State, step: st.StartChart) -> Done:
    if step.fabric and step.area == "whole":
        # What was said of the yarn before is said no more.
        s = replace(s, fabric="")
    if not s.by_needle:
        return (), s
    begun = InForce(
        s.chart(step.chart), step.fabric, step.area, first=step.first, last=step.last, edge=step.edge, start=step.start, base=s.row
    )
    said: tuple[Operation, ...] = (_in_fabric(step.fabric, step),) if step.fabric else ()
    if any(begun.placed_as(one) for one in s.in_force):
        return said, s
    kept = tuple(one for one in s.in_force if not begun.replaces(one))
    return said, replace(s, in_force=(*kept, begun))


def _stop_chart(s: State, step: st.StopChart | st.StopChartOn) -> Done:
    if not s.by_needle:
        return (), s
    named = [one for one in s.in_force if one.chart.name == step.chart]
    if isinstance(step, st.StopChartOn):
        named = [one for one in named if (one.first, one.last) == (step.first, step.last)]
    if not named:
        raise ValueError(f"{s.block}: the chart {step.chart!r} is not in force")
    ended = named[0]
    said: tuple[Operation, ...] = (_in_fabric("", ended),) if ended.fabric else ()
    return (*stopped(ended), *said), replace(s, in_force=tuple(one for one in s.in_force if one is not ended))


def _start_stripes(s: State, step: st.StartStripes) -> Done:
    stripes = StripesInForce(step.fabric, step.stripes, step.tension, step.carried, s.row)
    return (op.InFabric(step.fabric),), replace(s, stripes=stripes, fabric="")


def _stop_stripes(s: State, step: st.StopStripes) -> Done:
    return (op.InFabric(""),), replace(s, stripes=None)


PATTERN_HANDS: Mapping[type[st.Step], Callable[[State, Any], Done]] = {
    st.StartChart: _start_chart,
    st.StopChart: _stop_chart,
    st.StopChartOn: _stop_chart,
    st.StartStripes: _start_stripes,
    st.StopStripes: _stop_stripes,
}
