"""Twenty knitters at once: nobody gets an error, nobody's figures are lost, and the memory is bounded."""

from __future__ import annotations

import http.client
import threading
import time
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path
from urllib.parse import urlencode, urlsplit

import pytest

from tests.serve.html_seen import Seen
from tests.serve.served import served_by

CLIENTS = 20
MOST_BYTES = 1536 * 1024**2
"""Of all its processes together: each with the libraries that count, knit and print takes a hundred or two of millions."""
GARMENTS = {"sandbar": "measure:span", "driftline": "measure:foot", "tidewrack": "measure:length"}


@dataclass
class Seat:
    """One knitter: types figures one after the other, each a little different, and takes a file away now and then."""

    address: str
    number: int
    states: Counter[str] = field(default_factory=Counter)
    wrong: list[str] = field(default_factory=list)

    def sit(self, until: float) -> None:
        name, row = list(GARMENTS.items())[self.number % len(GARMENTS)]
        base = {"sandbar": 150, "driftline": 23, "tidewrack": 60}[name]
        step = 0
        while time.monotonic() < until or not step:
            step += 1
            # Some ask for the same as others, which is kept.
            figure = f"{base + (self.number % 4) + (step % 5) / 10:g}"
            form = "/plan" if step % 4 == 0 else ""
            try:
                self._ask(f"garment/{name}{form}", {row: figure}, row, figure)
            except (OSError, http.client.HTTPException) as fault:
                self.wrong.append(f"{self.number}: {fault!r}")

    def _ask(self, path: str, fields: dict[str, str], row: str, figure: str) -> None:
        there = urlsplit(self.address)
        connection = http.client.HTTPConnection(there.netloc, timeout=200)
        headers = {"content-type": "application/x-www-form-urlencoded", "origin": f"http://{there.netloc}"}
        connection.request("POST", f"{there.path}{path}", urlencode(fields), headers)
        answer = connection.getresponse()
        text = answer.read().decode("utf-8")
        connection.close()
        if "attachment" in (answer.headers["content-disposition"] or ""):
            self.states["file"] += 1
            return
        seen = Seen(text)
        busy = "Too much at once" in seen.text
        self.states["busy" if busy else str(answer.status)] += 1
        if (answer.status != 200 and not busy) or seen.fields.get(row) != figure:
            self.wrong.append(f"{self.number}: {answer.status} {seen.fields.get(row)} for {figure}")


def memory(pid: int) -> int:
    """Bytes of a process and all below it, as the system counts what is theirs alone or shared fairly."""
    below: dict[int, list[int]] = {}
    for stat in Path("/proc").glob("[0-9]*/stat"):
        try:
            one, parent = int(stat.parent.name), int(stat.read_text().rpartition(")")[2].split()[1])
        except OSError:
            continue
        below.setdefault(parent, []).append(one)
    total, left = 0, [pid]
    while left:
        one = left.pop()
        left += below.get(one, [])
        try:
            lines = Path(f"/proc/{one}/smaps_rollup").read_text().splitlines()
        except OSError:
            continue
        total += sum(int(line.split()[1]) * 1024 for line in lines if line.startswith("Pss:"))
    return total


def crowded(seconds: float) -> tuple[list[Seat], int]:
    """The seats after so many seconds, and the most memory that was seen."""
    with served_by() as (address, pid):
        seats = [Seat(address, number) for number in range(CLIENTS)]
        until = time.monotonic() + seconds
        threads = [threading.Thread(target=seat.sit, args=(until,)) for seat in seats]
        for thread in threads:
            thread.start()
        most = 0
        while any(thread.is_alive() for thread in threads):
            most = max(most, memory(pid))
            time.sleep(0.5)
        return seats, most


@pytest.mark.parametrize("seconds", [2, pytest.param(60, marks=pytest.mark.campaign)])
def test_twenty_at_once(seconds: float) -> None:
    seats, most = crowded(seconds)
    assert [line for seat in seats for line in seat.wrong] == []
    assert all(seat.states["200"] or seat.states["file"] for seat in seats)
    assert 0 < most < MOST_BYTES
    told = sum((seat.states for seat in seats), Counter())
    print(f"{seconds} s, {CLIENTS} clients: {dict(told)}, {most / 1024**2:.0f} MB")
