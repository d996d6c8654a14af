"""How the carriage is set: what it knits as it goes by, and what it goes past."""

from __future__ import annotations

from typing import Literal

from walewright.knit import operations as op
from walewright.knit.operations import Side
from walewright.readback.mind import Contradiction, Mind, in_reach
from walewright.report.said import said

_SETTINGS = {"knit all": "setting/knit", "hold": "setting/hold", "slip": "setting/slip"}
"""What a message calls what the carriage is set to."""


_RIGHT_OUT = frozenset({"held", "waiting", "waiting, held"})


class Carriage(Mind):
    """Methods are named for the grammar's phrases."""

    def __init__(self) -> None:
        super().__init__()
        self._set = "knit all"
        """What the carriage is set to: "knit all", "hold" or "slip"."""

    def carriage_at(self, side: Side, way: op.CrossingWay | Literal["held"] = "") -> None:
        if way == "held" and in_reach(self._needles):
            raise Contradiction("contradiction/held-and-in-work")
        if self._carriage != side:
            self.made.append(op.MoveCarriage(side, "" if way == "held" else way))
            if way == "held":
                self._set = "hold"
        self._carriage = side

    def set_to_hold(self) -> None:
        self._set = "hold"

    def set_to_knit(self, free: str = "") -> None:
        """`free`: if none is held any more, where that is said."""
        self._set = "hold" if free and self._right_out() else "knit all"

    def _right_out(self) -> bool:
        """Whether any needle is right out, held or of a part that waits; a part on cord is not."""
        return not _RIGHT_OUT.isdisjoint(self._needles.values())

    def _refuse_setting(self, *settings: str) -> None:
        if self._set in settings:
            raise Contradiction("contradiction/carriage-set", set=said(_SETTINGS[self._set]))

    def _row_begins(self) -> None:
        super()._row_begins()
        self._rightly_set()

    def _rightly_set(self) -> None:
        """Past needles right out the carriage is set to hold, and where all are knitted it is not: words that say neither where
        the first one goes out and the last one comes back have left it out."""
        self._refuse_setting("knit all" if self._right_out() else "hold")
