"""`--executor dask`: a cluster of two processes makes what this computer makes, also when one of them is lost."""

from __future__ import annotations

import os
import signal
import threading
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import distributed
import pytest

from tests.cli.publishing import Publisher, publisher
from walewright.cli.publishing import cluster as asking
from walewright.cli.publishing.inputs import Inputs

Said = pytest.CaptureFixture[str]
NAMES = ("ebb", "lagoon", "skerry", "tombolo")


@pytest.fixture(scope="module")
def cluster() -> Iterator[Any]:
    """Two workers, each a process of its own."""
    local: Any = distributed.LocalCluster
    with local(n_workers=2, threads_per_worker=2, processes=True, dashboard_address=None, silence_logs=50) as made:
        yield made


def test_it_makes_what_one_job_makes(tmp_path: Path, cluster: Any, capsys: Said) -> None:
    alone, together = publisher(tmp_path / "alone", NAMES), publisher(tmp_path / "together", NAMES)
    said = []
    for made, more in ((alone, ()), (together, ("--executor", "dask", "--scheduler", cluster.scheduler_address))):
        made.source("lagoon").write_text("nonsense\n", encoding="utf-8")
        code = made.run("--why", *more)
        told = capsys.readouterr()
        said.append((code, *(text.replace(str(made.folder), "HERE").replace(str(made.into), "SHELF") for text in told)))
    assert said[0] == said[1]
    assert said[0][0] == 1
    assert alone.files() == together.files()


def test_a_worker_that_is_killed_costs_time_alone(tmp_path: Path, cluster: Any, capsys: Said) -> None:
    alone, together = publisher(tmp_path / "alone", NAMES), publisher(tmp_path / "together", NAMES)
    assert alone.run() == 0
    ended = []

    def kill() -> None:
        """One worker, as soon as both work."""
        scheduler = cluster.scheduler
        until = time.monotonic() + 60
        while time.monotonic() < until:
            busy = [w for w in list(scheduler.workers.values()) if w.processing]
            if len(busy) == 2:
                pids = {nanny.process.pid for nanny in cluster.workers.values() if nanny.worker_address == busy[0].address}
                for pid in pids:
                    os.kill(pid, signal.SIGKILL)
                    ended.append(pid)
                return
            time.sleep(0.01)

    killing = threading.Thread(target=kill)
    killing.start()
    code = together.run("--executor", "dask", "--scheduler", cluster.scheduler_address)
    killing.join()
    told = capsys.readouterr()
    assert len(ended) == 1
    assert code == 0, told.err
    assert alone.files() == together.files()


def test_a_worker_that_is_not_the_same_makes_nothing(tmp_path: Path, capsys: Said) -> None:
    made = publisher(tmp_path / "scarves", ("skerry",))
    jobs = _jobs(made)
    here = {**Inputs("").all_now(asking.made_with()), "package:lark": "0", "shipped:tables/women.csv": "0"}
    assert asking.make_there(jobs[0], here).code == 1
    assert "has not the same lark, tables/women.csv" in capsys.readouterr().err
    assert asking.make_there(jobs[0], Inputs("").all_now(asking.made_with())).code == 0


def _jobs(made: Publisher) -> list[Any]:
    """The jobs of a catalogue of which nothing is made."""
    from walewright.catalogue import read
    from walewright.cli.command_line import CommandLine
    from walewright.cli.commands.publish import known
    from walewright.cli.publishing.preparing import Preparing
    from walewright.cli.publishing.stale import stale

    text = made.catalogue.read_text(encoding="utf-8")
    catalogue, _ = read(str(made.catalogue), text, known(str(made.folder)))
    assert catalogue is not None
    inputs = Inputs(str(made.folder))
    wanted = [stale(catalogue, making, None, False, inputs, str(made.into)) for making in catalogue.makings]
    preparing = Preparing(CommandLine(("publish",)), catalogue, text, inputs)
    return [preparing.job(one, preparing.themes(wanted))[0] for one in wanted]


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (("--executor", "dask"), "option-value"),
        (("--scheduler", "tcp://127.0.0.1:1"), "option-value"),
        (("--executor", "spark"), "option-value"),
        (("--executor", "dask", "--scheduler", "no address"), "executor-unusable"),
    ],
)
def test_who_works_has_to_be_said(tmp_path: Path, capsys: Said, arguments: tuple[str, ...], told: str) -> None:
    made = publisher(tmp_path / "scarves", ("skerry",))
    assert made.run(*arguments) == 2
    assert f"error[{told}]" in capsys.readouterr().err
    assert not list(made.into.glob("*.txt"))
