"""What the page costs beside the compiler: a request against the same compile in the same kind of process, and a file that is taken
away after a result against one that is made at once.

`python -m tests.benchmarks.bench_serve [GARMENT...]`"""

from __future__ import annotations

import asyncio
import itertools
import statistics
import sys
import time
from collections.abc import Awaitable, Callable

from walewright.cli.garments import shipped_garments
from walewright.cli.options import Wanted
from walewright.serve.answering import Answering
from walewright.serve.model import ServedGarment
from walewright.serve.pages import Pages
from walewright.serve.pool import Asker, Limits, Unfinished, WorkPool
from walewright.serve.sourced import compiled

ROUNDS = 7
ADDED_MS = 50.0
"""At most, to one compile."""


def compiled_only(garment: ServedGarment, size: str) -> bool:
    """What the compiler alone does for a request."""
    return compiled(garment, Wanted({"sizes": (size,)}, (), language="english")).proven


async def nobody_gone() -> None:
    await asyncio.Event().wait()


async def timed(work: Callable[[], Awaitable[object]]) -> float:
    begun = time.perf_counter()
    found = await work()
    assert not isinstance(found, Unfinished), found
    return (time.perf_counter() - begun) * 1000


async def measured(garment: ServedGarment) -> tuple[float, float, float]:
    """(ms of a compile in the process, ms of a request, ms of a plan taken after it), the medians of rounds that take turns."""
    pool = WorkPool(Limits(processes=1))
    pool.start()
    try:
        answering, asker = Answering(pool, "english", "2026-01-02"), Asker(nobody_gone)
        pages = Pages(Wanted({}, (), language="english").guide, "/x")
        form = await answering.form(asker, garment, {})
        assert not isinstance(form, Unfinished)
        assert form.offer is not None
        size, numbers = form.offer.size, itertools.count(1)
        given: dict[str, str] = {}

        async def requested() -> object:
            # Another figure each time, of something that changes nothing that is worked out.
            given.update({"size": size, "nothing": str(next(numbers))})
            found = await answering.worked(asker, garment, dict(given))
            if not isinstance(found, Unfinished):
                pages.garment(garment, found.answer)
            return found

        rounds = []
        for _ in range(ROUNDS + 1):
            alone = await timed(lambda: pool.in_the_background(compiled_only, garment, size))
            asked = await timed(requested)
            taken = await timed(lambda: answering.printed(asker, garment, dict(given), "plan", ""))
            rounds.append((alone, asked, taken))
        # The first warms the process.
        alone, asked, taken = (statistics.median(times) for times in zip(*rounds[1:], strict=True))
        return alone, asked, taken
    finally:
        pool.stop()


def main(names: list[str]) -> None:
    there = {garment.name: garment for garment in shipped_garments()}
    for name in names or ["sandbar", "driftline", "tidewrack", "marram"]:
        alone, asked, taken = asyncio.run(measured(there[name]))
        print(
            f"{name:12} compile {alone:6.0f} ms   request {asked:6.0f} ms   added {asked - alone:5.0f} ms (at most {ADDED_MS:.0f})"
            f"   ratio {asked / alone:.2f}   a plan after it {taken:5.0f} ms, {taken / asked:.2f} of the request"
        )


if __name__ == "__main__":
    main(sys.argv[1:])
