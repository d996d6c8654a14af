"""The page as a browser meets it: one application for all tests of this folder, with its processes."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from starlette.testclient import TestClient

from tests.serve.served import KnittersHand, served
from walewright.cli.garments import garments_of, shipped_garments
from walewright.serve.app import serving
from walewright.serve.model import ServedGarment
from walewright.serve.pool import Limits
from walewright.serve.security import Door

if TYPE_CHECKING:
    from playwright.sync_api import Browser

TOKEN = "t0ken-of-these-tests"
ROOT = f"/{TOKEN}"
ORIGIN = "http://127.0.0.1:8040"
DOOR = Door("127.0.0.1", 8040, TOKEN)


@contextmanager
def serving_client(
    garments: tuple[ServedGarment, ...], limits: Limits | None = None, language: str = "english"
) -> Iterator[TestClient]:
    app = serving(garments, DOOR, language, "2026-01-02", limits)
    with TestClient(app, base_url=ORIGIN, headers={"origin": ORIGIN}) as client:
        yield client


@pytest.fixture(scope="session")
def client() -> Iterator[TestClient]:
    """The shipped garments."""
    with serving_client(shipped_garments(), Limits(processes=2)) as made:
        yield made


@pytest.fixture
def folder_client() -> Callable[[Path], AbstractContextManager[TestClient]]:
    """A folder's garments."""
    return lambda folder: serving_client(garments_of([str(folder)]), Limits(processes=1))


@pytest.fixture(scope="session")
def address() -> Iterator[str]:
    """The shipped garments, as a knitter starts the page."""
    with served() as there:
        yield there


@pytest.fixture
def hand(browser: Browser) -> Iterator[KnittersHand]:
    """On a page of its own."""
    made = KnittersHand(browser)
    yield made
    made.close()
