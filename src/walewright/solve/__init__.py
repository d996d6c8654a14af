"""The solving stage: how many stitches and rows, and on which rows each edge moves. `solve` is the entry; data in `model`."""

from walewright.solve.solver import among, apart, attempt, solve

__all__ = ["among", "apart", "attempt", "solve"]
