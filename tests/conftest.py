"""Property tests take the same examples every time, so that a failure is a change's and not the day's.

`pytest -m campaign` draws many more of them, `HYPOTHESIS_PROFILE=explore pytest` looks for new ones.
"""

from __future__ import annotations

import gc
import os
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, is_hypothesis_test, settings

from tests.browser import browser
from tests.draws import PROFILES
from tests.whole import shipped_once

if TYPE_CHECKING:
    from xdist.remote import Producer
    from xdist.scheduler import Scheduling

__all__ = ["browser"]

for name, examples in PROFILES.items():
    # How long a draw takes depends on what else the computer does, and says nothing of the compiler.
    unhurried = {"deadline": None, "suppress_health_check": [HealthCheck.too_slow]}
    settings.register_profile(name, derandomize=name != "explore", max_examples=examples, **unhurried)


def _campaign(config: pytest.Config) -> bool:
    return config.getoption("markexpr") == "campaign"


def pytest_configure(config: pytest.Config) -> None:
    """The profile is chosen before the tests are read, because they take it over as they are."""
    settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "campaign" if _campaign(config) else "steady"))


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """A campaign takes every property test, with more examples."""
    if _campaign(config):
        for item in items:
            if is_hypothesis_test(getattr(item, "obj", None)):
                item.add_marker("campaign")


def pytest_collection_finish() -> None:
    """What has been read by now stays to the end: it need not be looked through for garbage again and again. And of what tests make
    little goes round in circles, so that it is enough to look now and then."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 20)


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config: pytest.Config, log: Producer) -> Scheduling | None:
    """Tests that stand together stay together, so that what a file makes once is made in one worker; who is done takes half of
    what is left to another."""
    from xdist.scheduler import WorkStealingScheduling

    return WorkStealingScheduling(config, log) if config.getoption("dist") == "load" else None


@pytest.fixture(scope="session", autouse=True)
def _garments_compiled_once(tmp_path_factory: pytest.TempPathFactory) -> None:
    """All workers of a run share what has been compiled of the shipped garments."""
    own = tmp_path_factory.getbasetemp()
    shipped_once.keep_in(own.parent if "PYTEST_XDIST_WORKER" in os.environ else own)
