"""Words for stitch patterns over the whole width or a part of it: charts and stripes, where they begin and end."""

from __future__ import annotations

from collections.abc import Set

from walewright.write.model import Run
from walewright.write.said import STS, Phrase, StepSaid, span, sts, worded


def start_chart(s: StepSaid) -> Phrase:
    """Words of `steps.StartChart`."""
    fabric = f"“{s.any.fabric}” by " if s.any.fabric else ""
    edge = s.graded("edge")
    beside = (" and the ", STS, " that come to work beside them") if s.any.area == "whole" else (" alone",)
    plain: tuple[str | Run, ...] = () if edge.always(0) else (", plain on the ", *sts(edge), " at each end of the part in work")
    first = "its repeat beginning" if s.any.fabric else "its first column"
    return worded(
        *(f"from the next row work {fabric}the chart {s.any.chart}, from its row 1, on needles ", *span(s), *beside),
        *(*plain, f", {first} on needle ", s.graded("start").needle()),
    )


def stop_chart(s: StepSaid) -> Phrase:
    """Words of `steps.StopChart`."""
    return worded(f"end the chart {s.any.chart}")


def stop_chart_on(s: StepSaid) -> Phrase:
    """Words of `steps.StopChartOn`."""
    return worded(f"end the chart {s.any.chart} on needles ", *span(s))


def start_stripes(s: StepSaid) -> Phrase:
    """Words of `steps.StartStripes`."""
    again = "in stripes, again and again from the first"
    stripes = ", ".join(f"{rows} {'row' if rows == 1 else 'rows'} of {yarn}" for yarn, rows in s.any.stripes)
    return worded(
        f"from the next row knit “{s.any.fabric}”, tension {s.any.tension}, {again}: {stripes}; ",
        carrying({yarn for yarn, _ in s.any.stripes}, s.any.carried),
    )


def carrying(used: Set[str], carried: tuple[str, ...]) -> str:
    """What becomes of the yarns `used` in stripes at the end of their stripe."""
    if not carried:
        return "every yarn broken off at the end of its stripe"
    listed = " and ".join(part for part in (", ".join(carried[:-1]), carried[-1]) if part)
    rest = ", any other broken off at the end of its stripe" if used - set(carried) else ""
    return f"{listed} carried up the side{rest}"


def stop_stripes(s: StepSaid) -> Phrase:
    """Words of `steps.StopStripes`."""
    return worded(f"end the stripes “{s.any.fabric}”")
