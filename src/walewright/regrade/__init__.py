"""Above the pipeline: why a source that compiles does not with what a knitter gave, and how far each given value may go."""

from walewright.regrade.explain import explained
from walewright.regrade.trials import Trials

__all__ = ["Trials", "explained"]
