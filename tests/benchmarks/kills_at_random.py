"""Builds killed at random moments, by hand: after each, every set of files is wholly the old one or wholly the new one.

    python -m tests.benchmarks.kills_at_random [KILLS] [SEED]

Several small sources are built into a folder that holds an older set of each, and the build is ended by SIGKILL or SIGTERM: at a
moment drawn from all of its time or, about every second one, right after a set begins to be written. What lies there then is
compared byte by byte with both sets, and again after the next build, which has to leave nothing behind. A set in which a SIGKILL
fell between two moves is told of by the folder of what is decided, and is counted as "midway": the next build has to make it new.
"""

from __future__ import annotations

import io
import os
import random
import shutil
import signal
import sys
import tempfile
import time
from collections import Counter
from contextlib import redirect_stdout
from pathlib import Path

from walewright.cli import main
from walewright.cli.outputs import product_names
from walewright.world.sets import NEW, WHOLE

SOURCE = """\
pattern "{name}"
    summary "A straight piece, {length} cm long."

sizes      one
    length {length} cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

piece scarf in plain
    levels bottom 0 cm, top length
    start 24 cm wide with e-wrap
    edges straight to top called side
    end cast off
"""
NAMES = ("skerry", "tombolo", "lagoon", "estuary")
TEXTS, ALL = ("text", "plan"), ("pdf", "html", "text", "plan")
WITH_PAGES = 8
"""Every so manieth build is of one source with its pages too: those take most of the time."""

NEARLY_S = 0.01
"""A set is written within about this time."""

Files = dict[str, bytes]


def sources(folder: Path, length: int) -> list[str]:
    folder.mkdir()
    for at, name in enumerate(NAMES):
        (folder / f"{name}.wale").write_text(SOURCE.format(name=name.title(), length=length + at), encoding="utf-8")
    return [str(folder / f"{name}.wale") for name in NAMES]


def started(files: list[str], out: Path, formats: tuple[str, ...]) -> int:
    """A process of its own that builds; it begins where everything is loaded, so that most of its time is work."""
    child = os.fork()
    if child:
        return child
    code = 99
    try:
        nowhere = os.open(os.devnull, os.O_RDWR)
        for number in (1, 2):
            os.dup2(nowhere, number)
        code = main(["build", *files, "--out", str(out), "--as", ",".join(formats)])
    finally:
        os._exit(code)


def ended(child: int) -> int:
    return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])


def read(folder: Path) -> Files:
    return {p.name: p.read_bytes() for p in folder.iterdir() if p.is_file()}


def state(there: Files, old: Files, new: Files, names: list[str]) -> str:
    """old, new, midway (each file is of one of them), or torn."""
    if all(there.get(n) == old[n] for n in names):
        return "old"
    if all(there.get(n) == new[n] for n in names):
        return "new"
    return "midway" if all(there.get(n) in (old[n], new[n]) for n in names) else "torn"


def wait_to_kill(child: int, out: Path, lasts: float, chance: random.Random, aimed: bool, sets: int) -> None:
    until = time.monotonic() + chance.uniform(0, lasts)
    if not aimed:
        time.sleep(max(0.0, until - time.monotonic()))
        return
    until = time.monotonic() + 4 * lasts
    wanted = chance.randrange(sets)
    while wanted >= 0 and time.monotonic() < until:
        here = os.path.lexists(out / NEW) or os.path.lexists(out / WHOLE)
        if here and wanted:
            while os.path.lexists(out / NEW) or os.path.lexists(out / WHOLE):
                time.sleep(0.0002)
        if here:
            wanted -= 1
        time.sleep(0.0002)
        if not here and os.waitid(os.P_PID, child, os.WEXITED | os.WNOHANG | os.WNOWAIT) is not None:
            return
    time.sleep(chance.uniform(0, NEARLY_S))


def campaign(kills: int, seed: int) -> bool:
    chance = random.Random(seed)
    os.environ["SOURCE_DATE_EPOCH"] = "1767225600"
    place = Path(tempfile.mkdtemp(prefix="kills-"))
    older, newer = sources(place / "older", 40), sources(place / "newer", 50)
    # In this very process: what is loaded now is there in every process begun from it.
    with redirect_stdout(io.StringIO()):
        for files, folder in ((older, "old"), (newer, "new")):
            assert main(["build", *files[:1], "--out", str(place / folder), "--as", ",".join(ALL)]) == 0
            assert main(["build", *files[1:], "--out", str(place / folder), "--as", ",".join(TEXTS)]) == 0
    old, new = read(place / "old"), read(place / "new")
    lasts: dict[bool, float] = {}
    for paged in (False, True):
        began = time.monotonic()
        assert ended(started(newer[:1] if paged else newer, place / "warm", ALL if paged else TEXTS)) == 0
        lasts[paged] = time.monotonic() - began

    seen: Counter[str] = Counter()
    wrong: list[str] = []
    for kill in range(kills):
        paged, aimed = kill % WITH_PAGES < 1, chance.random() < 0.5
        number = chance.choice((signal.SIGKILL, signal.SIGTERM))
        files, formats = (newer[:1], ALL) if paged else (newer, TEXTS)
        names = {Path(f).stem: list(product_names(f, formats).values()) for f in files}
        out = place / "out"
        shutil.rmtree(out, ignore_errors=True)
        out.mkdir()
        before = {n: old[n] for all_of in names.values() for n in all_of}
        for name, data in before.items():
            (out / name).write_bytes(data)
        child = started(files, out, formats)
        wait_to_kill(child, out, lasts[paged], chance, aimed, len(files))
        os.kill(child, number)
        code = ended(child)
        how = "ended before it was killed" if code == 0 else signal.Signals(number).name
        seen[how] += 1
        decided = (out / WHOLE).exists()
        left = sorted(n for n in os.listdir(out) if n.startswith("."))
        states = {name: state(read(out), old, new, names[name]) for name in names}
        seen.update(f"sets right after: {s}" for s in states.values())
        seen["builds with leftovers"] += bool(left)
        seen["builds killed when a set was decided"] += decided
        if left and number == signal.SIGTERM:
            wrong.append(f"kill {kill}: SIGTERM left {left}")
        if "torn" in states.values() or ("midway" in states.values() and not decided):
            wrong.append(f"kill {kill}: {states}")
        other = older[-1:]
        again = ended(started(other, out, ("text",)))
        after = {name: state(read(out), old, new, all_of) for name, all_of in names.items() if name != NAMES[-1]}
        seen.update(f"sets after the next build: {s}" for s in after.values())
        if again or set(after.values()) - {"old", "new"} or set(os.listdir(out)) != {*before, f"{NAMES[-1]}.txt"}:
            wrong.append(f"kill {kill}: the next build ended with {again}: {after}, {sorted(os.listdir(out))}")
        if any(states[n] in ("new", "midway") and after[n] != "new" for n in after):
            wrong.append(f"kill {kill}: {states} became {after}")
    shutil.rmtree(place)
    print(f"{kills} kills, seed {seed}; a build takes {lasts[False]:.1f} s, one with pages {lasts[True]:.1f} s")
    for what in sorted(seen):
        print(f"  {seen[what]:5d} {what}")
    print(f"  {len(wrong):5d} wrong", *wrong, sep="\n        ")
    return not wrong


if __name__ == "__main__":
    given = [int(word) for word in sys.argv[1:]]
    sys.exit(0 if campaign(*(given + [100, 1][len(given) :])) else 1)
