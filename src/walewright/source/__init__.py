"""Source text to syntax tree and back: what the author wrote, with nothing decided."""

from walewright.source.reading import read
from walewright.source.tidying import tidy

__all__ = ["read", "tidy"]
