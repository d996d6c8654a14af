"""Source text to syntax tree and back: what the author wrote, with nothing decided."""

from walewright.source.chosen import in_language
from walewright.source.reading import read
from walewright.source.tidying import tidy

__all__ = ["in_language", "read", "tidy"]
