"""Connections that begin something and do not end it are closed; those that do are left alone."""

from __future__ import annotations

import socket
import threading
import time
from collections.abc import Awaitable, Callable, Iterator
from contextlib import contextmanager
from itertools import takewhile
from typing import Any

import pytest
import uvicorn

from walewright.serve.patience import PatientFor

Scope, Receive, Send = dict[str, Any], Callable[[], Awaitable[Any]], Callable[[Any], Awaitable[None]]

LARGE = 40_000_000
"""Bytes: more than any system keeps for who does not read."""
SHORT, LONG = 1.0, 30.0


async def _app(scope: Scope, receive: Receive, send: Send) -> None:
    """/large answers with much, everything else with what was sent."""
    body = b""
    while True:
        message = await receive()
        body += message.get("body", b"")
        if not message.get("more_body"):
            break
    data = bytes(LARGE) if scope["path"] == "/large" else b"got " + body
    headers = [(b"content-length", str(len(data)).encode())]
    await send({"type": "http.response.start", "status": 200, "headers": headers})
    await send({"type": "http.response.body", "body": data})


class Hasty(PatientFor):
    head_s, taken_s = SHORT, SHORT


@pytest.fixture(scope="module")
def port() -> Iterator[int]:
    with socket.create_server(("127.0.0.1", 0)) as listening:
        config = uvicorn.Config(_app, lifespan="off", log_level="critical", http=Hasty, limit_concurrency=8)  # type: ignore[arg-type]
        server = uvicorn.Server(config)
        thread = threading.Thread(target=server.run, kwargs={"sockets": [listening]}, daemon=True)
        thread.start()
        yield listening.getsockname()[1]
        server.should_exit = True
        thread.join(LONG)


@contextmanager
def line_to(port: int) -> Iterator[socket.socket]:
    with socket.create_connection(("127.0.0.1", port), timeout=LONG) as line:
        yield line


def to_the_end(line: socket.socket) -> bytes:
    """All that comes until the other end closes."""
    got = b""
    while part := line.recv(1 << 20):
        got += part
    return got


@pytest.mark.parametrize("beginning", [b"", b"G", b"GET / HTTP/1.1\r\nHost: a\r\nX-Slow: "])
def test_a_head_that_does_not_come_is_not_waited_for(port: int, beginning: bytes) -> None:
    began = time.monotonic()
    with line_to(port) as line:
        line.sendall(beginning)
        assert to_the_end(line).startswith(b"HTTP/1.1 408 ")
    assert SHORT * 0.9 < time.monotonic() - began < LONG / 2


def test_letters_one_by_one_give_no_more_time(port: int) -> None:
    with line_to(port) as line:
        line.sendall(b"GET / HTTP/1.1\r\n")
        sent = sum(takewhile(bool, (_goes_on(line, b"X") for _ in range(100))))
    assert 2 <= sent <= 20


def _goes_on(line: socket.socket, letter: bytes) -> bool:
    """Whether a letter is still taken, after a while."""
    time.sleep(SHORT / 10)
    try:
        line.sendall(letter)
    except ConnectionError:
        return False
    return True


def test_nor_does_a_request_before(port: int) -> None:
    with line_to(port) as line:
        line.sendall(b"GET / HTTP/1.1\r\nHost: a\r\n\r\n")
        assert line.recv(1 << 16).startswith(b"HTTP/1.1 200 ")
        line.sendall(b"GET / HT")
        assert b"HTTP/1.1 408 " in to_the_end(line)


def test_their_places_are_free_again(port: int) -> None:
    lines = [socket.create_connection(("127.0.0.1", port), timeout=LONG) for _ in range(8)]
    for line in lines:
        line.sendall(b"GET / HTTP/1.1\r\nX: ")
    for line in lines:
        to_the_end(line)
        line.close()
    with line_to(port) as line:
        line.sendall(b"GET / HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n")
        assert to_the_end(line).startswith(b"HTTP/1.1 200 ")


def test_an_answer_that_nobody_takes_is_broken_off(port: int) -> None:
    with line_to(port) as line:
        line.sendall(b"GET /large HTTP/1.1\r\nHost: a\r\n\r\n")
        assert line.recv(12) == b"HTTP/1.1 200"
        time.sleep(SHORT * 3)
        assert _left(line) < LARGE


def _left(line: socket.socket) -> int:
    """How many bytes come until the connection ends, well or not."""
    got = 0
    try:
        while part := line.recv(1 << 20):
            got += len(part)
    except ConnectionError:
        pass
    return got


def test_who_comes_to_the_point_is_served(port: int) -> None:
    with line_to(port) as line:
        line.sendall(b"POST / HTTP/1.1\r\nHost: a\r\nContent-Length: 6\r\n\r\nabc")
        # A body has its own time.
        time.sleep(SHORT * 1.5)
        line.sendall(b"def")
        assert line.recv(1 << 16).startswith(b"HTTP/1.1 200 ")
        # The connection may rest between requests; only then the time for a head begins anew.
        time.sleep(SHORT * 1.5)
        line.sendall(b"GET / HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n")
        assert b"HTTP/1.1 200 " in to_the_end(line)
    with line_to(port) as line:
        line.sendall(b"GET /large HTTP/1.1\r\nHost: a\r\nConnection: close\r\n\r\n")
        assert len(_taken_slowly(line)) > LARGE


def _taken_slowly(line: socket.socket) -> bytes:
    """All of it, for longer than nothing may be taken."""
    got, until = b"", time.monotonic() + SHORT * 3
    while part := line.recv(LARGE // 60):
        got += part
        if time.monotonic() < until:
            time.sleep(SHORT / 10)
    return got
