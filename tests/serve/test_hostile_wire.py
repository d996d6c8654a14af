"""A thousand requests that nobody means well with, on the wire: it goes on serving, and meanwhile too."""

from __future__ import annotations

import itertools
import socket
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from urllib.parse import urlsplit

from tests.serve.served import served

HOSTILE = 1000
SLOW = 60
"""Connections that are held open while the others come."""

Wire = Callable[[int, str, str], bytes]


def _post(path: str, host: str, body: bytes, *more: str) -> bytes:
    kind = "Content-Type: application/x-www-form-urlencoded"
    lines = (f"POST {path} HTTP/1.1", f"Host: {host}", f"Origin: http://{host}", kind, f"Content-Length: {len(body)}", *more)
    return "\r\n".join((*lines, "", "")).encode("latin-1") + body


WIRES: dict[str, Wire] = {
    "no request": lambda n, host, root: bytes(range(256)) * (1 + n % 4),
    "no method": lambda n, host, root: f"\x00GET {root} HTTP/1.1\r\nHost: {host}\r\n\r\n".encode("latin-1"),
    "version": lambda n, host, root: f"GET {root} HTTP/x{n}\r\nHost: {host}\r\n\r\n".encode(),
    "header flood": lambda n, host, root: f"GET {root} HTTP/1.1\r\nHost: {host}\r\n".encode() + b"X-A: b\r\n" * 20_000 + b"\r\n",
    "long header": lambda n, host, root: f"GET {root} HTTP/1.1\r\nHost: {host}\r\nX: {'a' * 200_000}\r\n\r\n".encode(),
    "long path": lambda n, host, root: f"GET {root}{'a/' * 40_000} HTTP/1.1\r\nHost: {host}\r\n\r\n".encode(),
    "two hosts": lambda n, host, root: f"GET {root} HTTP/1.1\r\nHost: {host}\r\nHost: evil.example\r\n\r\n".encode(),
    "no host": lambda n, host, root: f"GET {root} HTTP/1.1\r\n\r\n".encode(),
    "foreign host": lambda n, host, root: f"GET {root} HTTP/1.1\r\nHost: evil{n}.example\r\n\r\n".encode(),
    "wrong token": lambda n, host, root: f"GET /{'x' * n}/garment/sandbar HTTP/1.1\r\nHost: {host}\r\n\r\n".encode(),
    "upwards": lambda n, host, root: f"GET {root}own/{'../' * (n % 30)}etc/passwd HTTP/1.1\r\nHost: {host}\r\n\r\n".encode(),
    "encoded": lambda n, host, root: f"GET {root}garment/%2e%2e%2f%00%ff{n} HTTP/1.1\r\nHost: {host}\r\n\r\n".encode(),
    "foreign origin": lambda n, host, root: _post(f"{root}garment/sandbar", host, b"a=b", "Origin: http://evil.example"),
    "no form": lambda n, host, root: _post(f"{root}garment/sandbar", host, b"\xff\xfe" * 50),
    "too many fields": lambda n, host, root: _post(f"{root}recall", host, b"&".join(b"a%d=1" % i for i in range(2000))),
    "too long": lambda n, host, root: _post(f"{root}recall", host, b"a=" + b"b" * 100_000 + b"&c=" + b"d" * 60_000),
    "deep": lambda n, host, root: _post(f"{root}recall", host, b"pasted=" + b"%5B" * 20_000),
    "no source": lambda n, host, root: _post(f"{root}yours", host, b"source=" + b"x" * 60_000),
    "two lengths": lambda n, host, root: _post(f"{root}recall", host, b"a=b", "Content-Length: 99"),
    "chunks": lambda n, host, root: _post(f"{root}recall", host, b"zz\r\n", "Transfer-Encoding: chunked"),
}  # fmt: skip


def _sent(host: str, data: bytes, timeout: float = 3) -> int:
    """The status of the answer; 0 where none came."""
    name, _, port = host.partition(":")
    with socket.create_connection((name, int(port)), timeout=timeout) as line:
        try:
            line.sendall(data)
            return int((*line.recv(64).split(b" "), b"0", b"0")[1])
        except (ConnectionError, TimeoutError, ValueError):
            return 0


def _held(host: str, root: str) -> Iterator[socket.socket]:
    """Connections that begin something and never end it."""
    name, _, port = host.partition(":")
    beginnings = itertools.cycle(
        (f"GET {root} HTTP/1.1\r\nHost: {host}\r\nX-Slow: ".encode(), _post(f"{root}recall", host, b"a=b")[:-2], b"G")
    )
    for beginning in itertools.islice(beginnings, SLOW):
        line = socket.create_connection((name, int(port)), timeout=60)
        line.sendall(beginning)
        yield line


def test_a_thousand_hostile_requests_leave_it_serving() -> None:
    with served() as address, ExitStack() as held:
        there = urlsplit(address)
        host, root = there.netloc, there.path
        for line in _held(host, root):
            held.enter_context(line)
        answered: Counter[int] = Counter()
        for number, (name, wire) in zip(range(HOSTILE), itertools.cycle(WIRES.items()), strict=False):
            status = _sent(host, wire(number, host, root))
            assert status in (0, 400, 403, 404, 405, 408, 411, 413, 415, 421, 422, 431, 505), (name, status)
            answered[status] += 1
        assert sum(answered.values()) == HOSTILE
        assert answered[0] < HOSTILE / 4, "nearly all are answered, and not only cut off"
        assert _sent(host, f"GET {root} HTTP/1.1\r\nHost: {host}\r\n\r\n".encode()) == 200
        assert _sent(host, _post(f"{root}garment/sandbar", host, b"measure%3Aspan=150"), 100) == 200
