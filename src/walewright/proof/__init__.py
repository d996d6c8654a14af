"""proof: does the knitted fabric agree with the counts, and with what the printed words make?

Input: design, counts, and what the bed made of the plan and of the printed words. Output: the `Proof`, or diagnostics.
It compares; it neither plans nor knits.
"""

from walewright.proof.prove import merged, needing_missing, prove

__all__ = ["merged", "needing_missing", "prove"]
