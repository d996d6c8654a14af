"""Connections that do not come to the point: how long a request may take to arrive, and an answer to be taken."""

from __future__ import annotations

import asyncio
from collections.abc import Callable

import h11
from uvicorn.protocols.http.h11_impl import H11Protocol

HEAD_S = 10.0
"""For the head of a request, from the first letter or from the connection on. `bodies.SECONDS` is for what follows it."""
TAKEN_S = 60.0
"""For who asked to take any more of the answer."""


class PatientFor(H11Protocol):
    """One connection. Where nobody comes to the point in time, it is closed and its place is free for others."""

    head_s, taken_s = HEAD_S, TAKEN_S
    _for_head: asyncio.TimerHandle | None = None
    _for_taking: asyncio.TimerHandle | None = None
    _left = 0
    """Bytes of the answer that were not taken when it was looked last."""

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        """Somebody is there."""
        super().connection_made(transport)
        self._for_head = self._after(self.head_s, self._no_head)

    def data_received(self, data: bytes) -> None:
        """Some of a request. More letters give no more time."""
        if self._for_head is None and self._between():
            self._for_head = self._after(self.head_s, self._no_head)
        super().data_received(data)
        if not self._between():
            self._stop_waiting()

    def connection_lost(self, exc: Exception | None) -> None:
        """Nobody is there any longer."""
        self._stop_waiting()
        self.resume_writing()
        super().connection_lost(exc)

    def pause_writing(self) -> None:
        """Who asked does not take the answer as fast as it is given."""
        super().pause_writing()
        if self._for_taking is None:
            self._look_again()

    def _look_again(self) -> None:
        self._left = self.transport.get_write_buffer_size()
        self._for_taking = self._after(self.taken_s, self._is_anything_taken)

    def _is_anything_taken(self) -> None:
        if self.transport.get_write_buffer_size() < self._left:
            self._look_again()
        else:
            self.transport.abort()

    def resume_writing(self) -> None:
        """They took some of it."""
        super().resume_writing()
        if self._for_taking is not None:
            self._for_taking.cancel()
            self._for_taking = None

    def _after(self, seconds: float, do: Callable[[], None]) -> asyncio.TimerHandle:
        return self.loop.call_later(seconds, do)

    def _between(self) -> bool:
        """Whether no request has a whole head now."""
        return self.conn.their_state is h11.IDLE

    def _no_head(self) -> None:
        self._for_head = None
        if not self._between() or self.transport.is_closing():
            return
        if self.conn.our_state is h11.IDLE:
            head = h11.Response(status_code=408, headers=[("connection", "close"), ("content-length", "0")])
            self.transport.write((self.conn.send(head) or b"") + (self.conn.send(h11.EndOfMessage()) or b""))
        self.transport.close()

    def _stop_waiting(self) -> None:
        if self._for_head is not None:
            self._for_head.cancel()
            self._for_head = None
