"""Hands taking needles out of the middle of the work, and bringing them back."""

from __future__ import annotations

from walewright.knit import operations as op
from walewright.readback.mind import Contradiction, Mind, needle


class Resting(Mind):
    """Methods are named for the grammar's phrases."""

    def needle_out(self, at: int, pushed: int, stitches: int) -> None:
        if at != pushed:
            raise Contradiction("contradiction/other-needle", needle=needle(at), other=needle(pushed))
        self._rest([at], stitches)

    def needles_out_every(self, first: int, every: int, last: int, stitches: int) -> None:
        self._rest(self._counted_off(first, every, last), stitches)

    def leave_out(self, at: int, stitches: int) -> None:
        self._leave([at], stitches)

    def leave_out_every(self, first: int, every: int, last: int, stitches: int) -> None:
        self._leave(self._counted_off(first, every, last), stitches)

    def needle_back(self, at: int, stitches: int) -> None:
        self._again([at], stitches)

    def needles_back_every(self, first: int, every: int, last: int, stitches: int) -> None:
        self._again(self._counted_off(first, every, last), stitches)

    def _counted_off(self, first: int, every: int, last: int) -> list[int]:
        if every < 2 or last < first or (last - first) % every:
            raise Contradiction("contradiction/not-counted-off", first=needle(first), last=needle(last), every=every)
        return list(range(first, last + 1, every))

    def _rest(self, needles: list[int], stitches: int) -> None:
        for s in needles:
            self._all(s, s + 1, ("work",))
            self.made += [op.Transfer(s, s, 1), op.OutOfWork(s, s)]
            self._empty(s, s)
        self._are(stitches)

    def _leave(self, needles: list[int], stitches: int) -> None:
        for s in needles:
            self._all(s, s, ("work",))
            self.made.append(op.OutOfWork(s, s))
            self._empty(s, s)
        self._are(stitches)

    def _again(self, needles: list[int], stitches: int) -> None:
        for s in needles:
            self._free(s, s)
            self.made.append(op.IntoWork(s, s))
            self._state(s, s, "work")
        self._are(stitches)

    def _are(self, stitches: int) -> None:
        there = len(self._part())
        if there != stitches:
            raise Contradiction("contradiction/stitches-in-part", stitches=stitches, there=there)
