"""knit: counts into a knitter's steps, and steps into what hands and carriage do.

Input: a `Design`, how it is put together (`Glued`) and its `Counts`. Output: one `SizePlan` of steps per size (`plan`), and
its operations (`expand`).
Knows nothing of words. What it plans is not believed until the bed has knitted it.

The bed and the read-back share only `knit.operations` with this stage; so that importing it does not bring the
planner along, the two entries import their modules when called.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from walewright.design.model import Chart, Design
    from walewright.glue.model import GluedSizes
    from walewright.knit.bench_steps import BenchBlock
    from walewright.knit.columns import BlockColumns
    from walewright.knit.operations import Work
    from walewright.knit.placing import PlacedPlan
    from walewright.knit.steps import SizePlan
    from walewright.solve.model import Counts

__all__ = ["columns_latched", "expand", "moved_back", "place", "plan", "unrolled"]


def plan(design: Design, glued: GluedSizes, counts: Counts) -> tuple[SizePlan, ...]:
    """One plan per size, in the order of `counts.sizes`; things are done in the order of `glued`."""
    from walewright.knit import planner

    return planner.plan(design, glued, counts)


def expand(plan: SizePlan, charts: tuple[Chart, ...] = ()) -> Work:
    """The work of one size: every operation of every block, in order, and the joins. `charts` are the design's."""
    from walewright.knit import expansion

    return expansion.expand(plan, charts)


def place(plan: SizePlan, work: Work, charts: tuple[Chart, ...], needles: int, missing: tuple[int, ...]) -> PlacedPlan:
    """The plan, whose operations are `work`, on a bed with missing needles: each block moved to where it needs none of them."""
    from walewright.knit import placing

    return placing.placed(plan, work, charts, needles, missing)


def moved_back(work: Work, made: tuple[PlacedPlan, ...], size: int) -> Work:
    """Work of size number `size` on such a bed, as it would be done in the middle of a whole one; on that nothing was placed."""
    from walewright.knit import placing

    return placing.work_moved(work, {name: -by for name, by in made[size].moved.items()}) if made else work


def unrolled(plan: SizePlan, charts: tuple[Chart, ...] = ()) -> tuple[BenchBlock, ...]:
    """The bench copy of a plan, block by block: a line for each time that hands do something. `charts` are the design's."""
    from walewright.knit import bench

    return bench.unrolled(plan, charts)


def columns_latched(plan: SizePlan, charts: tuple[Chart, ...] = ()) -> tuple[BlockColumns, ...]:
    """Of each block of a plan, when purl columns of charts are latched up. `charts` are the design's."""
    from walewright.knit import columns

    return columns.columns_latched(plan, charts)
