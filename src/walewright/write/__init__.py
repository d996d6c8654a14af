"""write: the plans of all sizes as one graded text.

Input: one `SizePlan` a size. Output: `Instructions`, a tree of sentences (`write`), and its plain text (`plain_text`), which
`readback` reads. Every kind of step has one template (`words`); nothing is decided here about the knitting.
"""

from walewright.write.plain import plain_text
from walewright.write.sections import write

__all__ = ["plain_text", "write"]
