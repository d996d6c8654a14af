"""The script of the shelf, run by an interpreter on a page of plain objects and, where there is one, by a browser on the page."""

from __future__ import annotations

import json
import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest

from tests.catalogue.test_shelf import OTHER, Read, document, garment
from walewright.catalogue.shelf import shelf
from walewright.guide.english import LANGUAGE
from walewright.world import package_text

NODE = shutil.which("node")
BROWSER = next((found for name in ("chromium", "chromium-browser", "google-chrome") if (found := shutil.which(name))), None)

STAGE = """
const [script, articles, chosen] = JSON.parse(require("fs").readFileSync(0, "utf8"));
const listeners = {};
globalThis.window = { location: { hash: "" } };
const form = {
  hidden: true, elements: { count: { value: "" } },
  addEventListener: (name, does) => { listeners[name] = does; },
};
const garments = articles.map((dataset) => ({ dataset, hidden: false }));
const none = { hidden: true };
globalThis.document = {
  querySelector: (what) => ({ "form.filters": form, ".none": none })[what],
  querySelectorAll: (what) => (what === "article" ? garments : []),
};
let given = {};
globalThis.FormData = class { [Symbol.iterator]() { return Object.entries(given)[Symbol.iterator](); } };
new Function(script)();
const seen = [];
for (given of chosen) {
  listeners.input();
  seen.push({ shown: garments.flatMap((g, at) => (g.hidden ? [] : [at])), count: form.elements.count.value, none: none.hidden });
}
process.stdout.write(JSON.stringify({ seen, form: form.hidden }));
"""


def sifted(*chosen: dict[str, str]) -> list[dict[str, Any]]:
    """What is shown of two garments for what is chosen in the form."""
    page = Read(shelf(document(garment(), OTHER), LANGUAGE))
    data = [{k.removeprefix("data-"): v for k, v in one.items() if k.startswith("data-")} for one in page.all("article")]
    given = json.dumps([package_text("catalogue/templates/shelf.js"), data, chosen])
    assert NODE is not None
    done = subprocess.run([NODE, "-e", STAGE], input=given, capture_output=True, text=True, check=True)
    found = json.loads(done.stdout)
    assert found["form"] is False
    seen: list[dict[str, Any]] = found["seen"]
    return seen


@pytest.mark.skipif(NODE is None, reason="no interpreter for the script is installed")
@pytest.mark.parametrize(
    ("chosen", "shown"),
    [
        ({}, [0, 1]),
        ({"measure": "bust", "cm": "92"}, [0]),
        ({"measure": "bust", "cm": "79"}, []),
        ({"measure": "bust", "cm": ""}, [0, 1]),
        ({"measure": "head", "cm": "57.5"}, [1]),
        ({"bed": "fine"}, [1]),
        ({"yarn": "700"}, [0]),
        ({"technique": "holding"}, [1]),
        ({"technique": "e-wrap", "bed": "bulky"}, [0]),
        ({"technique": "hold"}, []),
        ({"language": "english", "measure": "bust", "cm": "84"}, [0]),
        ({"language": "german"}, []),
    ],
)
def test_the_script_shows_what_is_like_that(chosen: dict[str, str], shown: list[int]) -> None:
    (seen,) = sifted(chosen)
    assert seen == {"shown": shown, "count": str(len(shown)), "none": bool(shown)}


@pytest.mark.skipif(NODE is None, reason="no interpreter for the script is installed")
def test_what_was_hidden_comes_back() -> None:
    assert [seen["shown"] for seen in sifted({"bed": "fine"}, {})] == [[1], [0, 1]]


@pytest.mark.skipif(BROWSER is None, reason="no browser is installed")
def test_a_browser_runs_it_from_a_file(tmp_path: Path) -> None:
    (tmp_path / "index.html").write_text(shelf(document(garment(), OTHER), LANGUAGE), encoding="utf-8")
    (tmp_path / "skerry.cover.svg").write_text('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>', encoding="utf-8")
    assert BROWSER is not None
    options = ("--headless", "--no-sandbox", "--disable-gpu", f"--user-data-dir={tmp_path / 'own'}", "--virtual-time-budget=2000")
    command = [BROWSER, *options, "--dump-dom", (tmp_path / "index.html").as_uri()]
    done = subprocess.run(command, capture_output=True, text=True, check=True, timeout=120)
    page = Read(done.stdout)
    # The script is let run, and takes away what hides the form.
    assert all("hidden" not in one for one in page.all("form"))
    assert len(page.all("article")) == 2
