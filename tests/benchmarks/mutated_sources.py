"""The shipped and the documented sources, mutated, each through everything. Run by hand:

    python -m tests.benchmarks.mutated_sources N [SEED [FOLDER]]

Draw number i of N has the seed SEED + i, so that a run is resumed by giving the seed after the last one reported. Most often
numbers change a little and options are exchanged for others that the grammar has there (`small_changes.py`), so that the source
still reads. Of the rest, lines are left out, doubled, moved and exchanged; numbers, units, names and texts changed; words of the
grammar put in; odd letters, deep nesting and cut-off files tried (`mutating.py`). Each source is compiled, its report rendered,
and, if it is proven, its page and plan written, in a process of its own that has `SECONDS` of processor time and `MEMORY` bytes
of memory. What is no fault of the author's is written to FOLDER with its first line saying what happened: an exception, a move
that the bed refuses, words that do not read back, or what took too long or too much.
"""

from __future__ import annotations

import gc
import json
import os
import random
import re
import resource
import signal
import sys
import time
import traceback
from collections import Counter
from dataclasses import dataclass
from importlib import import_module
from pathlib import Path
from pkgutil import walk_packages

import walewright
from tests.benchmarks.mutating import mutated
from tests.benchmarks.small_changes import changed
from tests.benchmarks.variants_at_random import FAULTS, ROOT, one_size, sources, variant
from walewright import pipeline, plan, sheet
from walewright.cli.sources import shipped
from walewright.design import Changes, Shipped
from walewright.guide.english import LANGUAGE
from walewright.report.english import in_english
from walewright.report.render import terminal

SECONDS = 10
MEMORY = 500 * 2**20
PATIENCE = 1200
"""Seconds by the clock after which a process is ended that has not used up its own: a machine may be busy with other work."""
EVERY_SIZE = 0.15
"""Share of the draws that are compiled in all sizes of the source; the others in one."""
SMALL = 0.7
"""Share of the draws with small changes only, most of which read."""
MEANT = 0.15
"""Share of the draws whose numbers and options are exchanged for others that read as well."""


@dataclass(frozen=True, slots=True)
class Result:
    """What came of one source. `what`: "proven", "refused", a code that is a fault of ours, "exception", "time" or "memory"."""

    what: str
    detail: str = ""
    codes: tuple[str, ...] = ()
    seconds: float = 0.0
    mib: int = 0


def compiled(text: str, changes: Changes, data: Shipped) -> Result:
    """The source through all stages, its report and its page."""
    outcome = pipeline.compile(text, "mutated.wale", data, changes)
    terminal(outcome.diagnostics, {"mutated.wale": text})
    codes = tuple(dict.fromkeys(d.code for d in outcome.diagnostics))
    ours = [d for d in outcome.diagnostics if d.code.startswith(FAULTS)]
    if ours:
        return Result(ours[0].code, f"{in_english(ours[0]).message} {in_english(ours[0]).notes[-1:]}", codes)
    if outcome.proven:
        design, counts, instructions, proof = outcome.result()
        sheet.html(
            sheet.compose(LANGUAGE, sheet.ProvenPattern(design, counts, instructions, proof, outcome.fit), sheet.PageOptions())
        )
        plan.plan_bytes(outcome)
    return Result("proven" if outcome.proven else "refused", "", codes)


def in_a_process(text: str, changes: Changes, data: Shipped) -> Result:
    """`compiled` in a process of its own, within its limits. This process has loaded everything and solved nothing."""
    reader, writer = os.pipe()
    child = os.fork()
    if child == 0:
        os.close(reader)
        resource.setrlimit(resource.RLIMIT_CPU, (SECONDS + 1, SECONDS + 2))
        # Of private memory that can be written; the libraries' code is not the source's doing.
        resource.setrlimit(resource.RLIMIT_DATA, (MEMORY, MEMORY))
        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))
        begun = time.process_time()
        try:
            found = compiled(text, changes, data)
        except MemoryError:
            found = Result("memory", traceback.format_exc(limit=-3))
        except BaseException as fault:
            found = Result("exception", f"{type(fault).__name__}: {fault}\n{traceback.format_exc(limit=-4)}")
        taken = time.process_time() - begun
        used = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
        what = "time" if taken > SECONDS and found.what in ("proven", "refused") else found.what
        with os.fdopen(writer, "w") as out:
            json.dump([what, found.detail, found.codes, taken, used], out)
        os._exit(0)
    os.close(writer)
    signal.alarm(PATIENCE)
    try:
        with os.fdopen(reader) as answer:
            said = answer.read()
    except TimeoutError:
        os.kill(child, signal.SIGKILL)
        said = ""
    finally:
        signal.alarm(0)
    _, status, spent = os.wait4(child, 0)
    if said:
        what, detail, codes, taken, used = json.loads(said)
        return Result(what, detail, tuple(codes), taken, used)
    ended = os.WTERMSIG(status) if os.WIFSIGNALED(status) else 0
    if ended in (signal.SIGXCPU, signal.SIGKILL):
        return Result("time", f"ended after {SECONDS} s", (), spent.ru_utime + spent.ru_stime)
    return Result("memory", f"the process ended with signal {ended}, status {status}")


def _overdue(*_: object) -> None:
    raise TimeoutError


def drawn(text: str, others: list[str], chance: random.Random) -> tuple[str, list[str]]:
    """The source changed: most often in ways that mean something, which go further than to the reading of the lines."""
    kind = chance.random()
    if kind < SMALL:
        return changed(text, others, chance)
    if kind < SMALL + MEANT:
        return variant(text, chance), ["variant"]
    return mutated(text, others, chance)


def kept(drawn: str, number: str, result: Result, made: str, folder: Path | None) -> None:
    """A fault printed, and its source written to the folder if there is one."""
    first = f"{drawn}: {result.what} {result.seconds:.1f} s"
    last = re.sub(r"\s+", " ", result.detail)
    print(f"{first} {last[:300]}", flush=True)
    if folder:
        folder.mkdir(parents=True, exist_ok=True)
        (folder / f"{result.what}_{number}.wale").write_text(f"# {first} {last}\n{made}", errors="surrogatepass")


def ready() -> None:
    """Every module loaded, so that processes start with what this one had at its start, whatever is edited meanwhile."""
    for module in walk_packages(walewright.__path__, "walewright."):
        if not module.name.endswith("__main__"):
            import_module(module.name)
    import_module("highspy")
    # A first page, so that no child reads the tables of the grammars or compiles the templates again.
    compiled((ROOT / "patterns/bollard.wale").read_text(), Changes(sizes=("toddler",)), shipped())
    gc.collect()
    gc.freeze()
    signal.signal(signal.SIGALRM, _overdue)


def main() -> None:
    """Draw, compile, count; a line for whatever is a fault, and a summary every hundred."""
    count = int(sys.argv[1])
    begin = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    folder = Path(sys.argv[3]) if len(sys.argv) > 3 else None
    every, data = sources(), shipped()
    ready()
    found, codes, slowest, largest = Counter[str](), Counter[str](), 0.0, 0
    for seed in range(begin, begin + count):
        chance = random.Random(seed)
        name, text = chance.choice(every)
        made, how = drawn(text, [t for _, t in every], chance)
        changes = Changes() if chance.random() < EVERY_SIZE else one_size(made, chance)
        result = in_a_process(made, changes, data)
        found[result.what] += 1
        codes.update(result.codes)
        slowest, largest = max(slowest, result.seconds), max(largest, result.mib)
        if result.what not in ("proven", "refused"):
            kept(f"{seed} {name} {changes.sizes} {'+'.join(how)}", str(seed), result, made, folder)
        done = seed - begin + 1
        if done % 100 == 0 or done == count:
            told = ", ".join(f"{what} {n}" for what, n in found.most_common())
            print(f"-- {done} (to seed {seed}): {told}; slowest {slowest:.1f} s, largest {largest} MiB", flush=True)
    print("codes: " + ", ".join(f"{code} {n}" for code, n in codes.most_common()))


if __name__ == "__main__":
    main()
