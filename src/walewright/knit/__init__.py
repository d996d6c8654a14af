"""knit: counts into a knitter's steps, and steps into what hands and carriage do.

Input: a `Design` and its `Counts`. Output: one `SizePlan` of steps per size (`plan`), and its operations (`expand`).
Knows nothing of words. What it plans is not believed until the bed has knitted it.
"""

from walewright.knit.expand import expand
from walewright.knit.planner import plan

__all__ = ["expand", "plan"]
