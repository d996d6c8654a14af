"""write: the plans of all sizes as one graded text, in a language.

Input: one `SizePlan` a size, and a `PrintedLanguage`. Output: `Instructions`, a tree of sentences (`write`), and its plain text
(`plain_text`), which `readback` reads; `shared` measures how much of it is for all sizes. Every kind of step has one template or a
few, in the folder of the language; nothing is decided here about the knitting.
"""

from walewright.write.bench import write_bench
from walewright.write.plain import plain_text
from walewright.write.sections import write
from walewright.write.sharing import shared

__all__ = ["plain_text", "shared", "write", "write_bench"]
