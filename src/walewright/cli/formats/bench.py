"""Pages to stand at the machine with: each time that hands do something, one size, in large type. Proven by their own words."""

from __future__ import annotations

from walewright.cli.formats.format import Format, Made, Pattern, on_pages
from walewright.record import replace
from walewright.report.model import Diagnostic, diagnosed


def _make(pattern: Pattern) -> Made:
    from walewright import sheet
    from walewright.sheet.themed import PLAIN

    copy, _ = pattern.bench_copy
    assert copy is not None
    (plan,) = pattern.outcome.plans
    made = sheet.compose_bench(pattern.guide, replace(pattern.proven, instructions=copy.instructions), plan, pattern.options)
    pages = sheet.anchors_of_pages(sheet.bench_html(made, pattern.theme or PLAIN))
    made = sheet.with_heads(pattern.guide, made, pages)
    laid = sheet.on_paper(sheet.bench_html(made, pattern.theme or PLAIN), made)
    return on_pages(pattern, laid.data, laid.warnings, laid.pages)


def _refused(pattern: Pattern) -> tuple[Diagnostic, ...]:
    """Who stands at the machine knits one size; and what does not read back is not printed."""
    sizes = pattern.outcome.result()[0].sizes
    if len(sizes) > 1:
        given = ("as", "bench")
        return (diagnosed("option-value/one-size", helps=("name-yours",), sizes_there=sizes, example=sizes[0], given=given),)
    _, faults = pattern.bench_copy
    return faults


FORMAT = Format(".bench.pdf", _make, _refused)
