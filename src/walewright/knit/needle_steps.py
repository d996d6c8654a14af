"""Steps of needles that take no part for a while: ladders, and the lines along which pleats fold."""

from __future__ import annotations

from walewright.knit.step import Step
from walewright.record import record


@record
class NeedleOut(Step):
    """The stitch of needle `at` goes to the needle at its right, and `at` out of work; `stitches` are left."""

    at: int
    stitches: int


@record
class NeedlesOutEvery(Step):
    """The same with every so many needles from `first` to `last`."""

    every: int
    first: int
    last: int
    stitches: int


@record
class NeedleBack(Step):
    """Needle `at` comes back to work, empty; with it there are `stitches`."""

    at: int
    stitches: int


@record
class NeedlesBackEvery(Step):
    """The same with every so many needles from `first` to `last`."""

    every: int
    first: int
    last: int
    stitches: int


@record
class LeaveOut(Step):
    """Before the cast on: needle `at`, brought to work with the others, goes out of work again; `stitches` are left."""

    at: int
    stitches: int


@record
class LeaveOutEvery(Step):
    """The same with every so many needles from `first` to `last`."""

    every: int
    first: int
    last: int
    stitches: int
