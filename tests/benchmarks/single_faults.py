"""Single faults made in every package, by hand: what share of them the tests beside it catch.

    python -m tests.benchmarks.single_faults RESULTS [FAULTS] [SEED] [PACKAGE …]

Of each package (all, unless some are named) so many faults are drawn, spread evenly over its files and over the kinds of faults.
Each is made in a copy of the checkout, and the tests of the folder of its name run over it: those that pass through the faulty line
first, quickest first, then the others. Each is a line of JSON in RESULTS, and is not tried again when the same draw is taken up
once more; at the end all in RESULTS are counted. A fault in a line that no test of the folder runs is not caught, nor is
one that only the tests of other folders would see.

Why the faults are our own (`faults.py`) and not those of a library, looked at in November 2026: mutmut 3.8 makes all mutants of
the functions it is pointed at, none in the tables beside functions, and draws none by a seed; cosmic-ray 8.7 has a time limit and a
kept session, but writes into the checkout, runs one command for every fault, drops no term and returns no neutral value, and has
ten dependencies, among them a web server and a database; mutatest was last released in 2022. `coverage`, which tells the tests
that pass through a line, is a library.

`without_effect.toml` has the faults that change nothing anybody could observe, each with its reason; they are not drawn.
"""

from __future__ import annotations

import ast
import json
import random
import sys
import tempfile
import time
import tomllib
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import asdict
from itertools import islice
from pathlib import Path
from typing import Any

from tests.benchmarks.faults import Fault, Words, faults_in, literals
from tests.benchmarks.trying_faults import CODE, HERE, ROOT, Bench

Draw = dict[str, Any]

WITHOUT_EFFECT = HERE / "without_effect.toml"
WANTED, WANTED_OF_EACH = 0.85, 0.75


def packages() -> dict[str, list[Path]]:
    """The modules of each package, and of the pipeline, which is one by itself."""
    found = {p.name: sorted(p.rglob("*.py")) for p in sorted((ROOT / CODE).iterdir()) if (p / "__init__.py").exists()}
    found["pipeline"] = [ROOT / CODE / "pipeline.py"]
    return {name: [m.relative_to(ROOT) for m in modules] for name, modules in found.items()}


def faults_of(modules: Sequence[Path], common: Words) -> dict[Path, list[Fault]]:
    """All faults that can be made in these modules and could be observed."""
    known = tomllib.loads(WITHOUT_EFFECT.read_text(encoding="utf-8")).get("fault", ())
    idle = {(e["file"], e["line"], e["change"]) for e in known}
    found: dict[Path, list[Fault]] = {}
    for module in modules:
        text = (ROOT / module).read_text(encoding="utf-8")
        name = str(module.relative_to(CODE))
        faults = faults_in(text, common)
        found[module] = [f for f in faults if (name, line(text, f), change(f)) not in idle]
    return found


def drawn(package: str, modules: Sequence[Path], seed: int, common: Words) -> Iterator[tuple[Path, Fault]]:
    """The faults of a package one after the other: of the next file, and of it a kind that was drawn least so far."""
    chance = random.Random(f"{seed} {package}")
    left = faults_of(modules, common)
    used: Counter[str] = Counter()
    while left := {m: faults for m, faults in left.items() if faults}:
        for module in chance.sample(sorted(left), len(left)):
            kinds = sorted({f.kind for f in left[module]})
            fewest = min(used[k] for k in kinds)
            kind = chance.choice([k for k in kinds if used[k] == fewest])
            fault = chance.choice([f for f in left[module] if f.kind == kind])
            left[module].remove(fault)
            used[kind] += 1
            yield module, fault


def line(text: str, fault: Fault) -> str:
    return text.splitlines()[fault.start[0] - 1].strip()


def change(fault: Fault) -> str:
    return f"{fault.before} -> {fault.after}"


def campaign(results: Path, count: int, seed: int, wanted: Sequence[str]) -> list[Draw]:
    """Try what is drawn and not yet in the results, and give all that is drawn."""
    kept = [json.loads(told) for told in results.read_text(encoding="utf-8").splitlines()] if results.exists() else []
    known: dict[tuple[object, ...], Draw] = {(d["file"], tuple(d["at"]), d["change"]): d for d in kept}
    bench = Bench(Path(tempfile.gettempdir()) / "single_faults")
    common = literals(ast.parse((ROOT / m).read_text(encoding="utf-8")) for all_of in packages().values() for m in all_of)
    found: list[Draw] = []
    for package, modules in packages().items():
        if wanted and package not in wanted:
            continue
        for module, fault in islice(drawn(package, modules, seed, common), count):
            name = str(module.relative_to(CODE))
            if (same := (name, fault.start, change(fault))) not in known:
                began = time.monotonic()
                tried = bench.tried(module, fault, bench.noted(package, modules))
                text = line((ROOT / module).read_text(encoding="utf-8"), fault)
                known[same] = {"package": package, "seed": seed, "file": name, "at": fault.start, "line": text, "kind": fault.kind}
                known[same] |= {"change": change(fault), **asdict(tried), "seconds": round(time.monotonic() - began, 1)}
                with results.open("a", encoding="utf-8") as out:
                    print(json.dumps(known[same], ensure_ascii=False), file=out)
                print(f"{known[same]['seconds']:6.1f} s  {tried.outcome:8s}  {name}:{fault.start[0]}  {change(fault)}", flush=True)
            found.append(known[same])
    return found


def told(found: Sequence[Draw]) -> bool:
    """Print the shares and what was not caught; whether the shares are as wanted."""
    caught = Counter(d["package"] for d in found if d["outcome"] in ("caught", "hung"))
    of = Counter(d["package"] for d in found)
    for d in found:
        if d["outcome"] not in ("caught", "hung"):
            print(f"{d['outcome']}: {d['file']}:{d['at'][0]}  {d['kind']}: {d['change']}\n    {d['line']}")
    for package in of:
        print(f"{package:10s} {caught[package]:3d} of {of[package]:3d}  {caught[package] / of[package]:4.0%}")
    together = caught.total() / max(1, of.total())
    print(f"{'together':10s} {caught.total():3d} of {of.total():3d}  {together:4.0%}")
    print(", ".join(f"{n} {outcome}" for outcome, n in sorted(Counter(d["outcome"] for d in found).items())))
    return together >= WANTED and all(caught[p] >= WANTED_OF_EACH * of[p] for p in of)


if __name__ == "__main__":
    numbers = [int(word) for word in sys.argv[2:] if word.isdigit()]
    names = [word for word in sys.argv[2:] if not word.isdigit()]
    many, of_seed = *numbers, *(8, 1)[len(numbers) :]
    sys.exit(0 if told(campaign(Path(sys.argv[1]), many, of_seed, names)) else 1)
