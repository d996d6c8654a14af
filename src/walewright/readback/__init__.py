"""readback: the printed words as the moves they make a knitter do, one size at a time.

Input: the plain text of the instructions. Output: `Work`, or diagnostics of the text. Shares with the planner nothing but
the list of operations, and with the writer nothing but the language, of which each has its own half: here a folder with a grammar
and a layout.
"""

from walewright.readback.reading import read_back, read_back_all

__all__ = ["read_back", "read_back_all"]
