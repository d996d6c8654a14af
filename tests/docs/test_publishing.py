"""The page on publishing: its example makes what it says, its tables have all there is, and the shipped catalogue is whole."""

from __future__ import annotations

import re
from pathlib import Path

from tests.docs.blocks import ROOT, blocks_of, frames
from walewright.catalogue import read, schema
from walewright.catalogue.reading import WHOLE
from walewright.catalogue.settings import PLACES, SETTINGS
from walewright.cli import main
from walewright.cli.commands.publish import known

PAGE = ROOT / "docs" / "publishing.md"
SHIPPED = ROOT / "patterns" / "catalogue.toml"
TEXT = PAGE.read_text(encoding="utf-8")


def block(info: str) -> str:
    (found,) = (b.text for b in blocks_of(PAGE) if b.info == info)
    return found


def test_the_example_makes_what_the_page_says(tmp_path: Path) -> None:
    for name in ("panel", "bag", "mittens"):
        (tmp_path / f"{name}.wale").write_text(frames()[name], encoding="utf-8")
    (tmp_path / "quiet.css").write_text(":root { --accent: #333; }\n", encoding="utf-8")
    (tmp_path / "catalogue.toml").write_text(block("toml catalogue"), encoding="utf-8")
    shelf = tmp_path / "shelf"
    assert main(["publish", str(tmp_path / "catalogue.toml"), "--into", str(shelf), "--jobs", "1"]) == 0
    made = sorted(path.name for path in shelf.iterdir() if path.is_file())
    assert made == sorted([*block("text products").split(), "catalogue.json", "index.html"])


def test_the_tables_have_all_that_can_be_said() -> None:
    told = set(re.findall(r"`\[*([a-z_]+)\]*`", TEXT))
    assert {*WHOLE, *SETTINGS} - told == set()
    assert {f"{{{place}}}" for place in PLACES} - set(re.findall(r"`(\{\w+\})`", TEXT)) == set()


def test_the_manifest_is_told_key_by_key() -> None:
    told = set(re.findall(r"`([a-z0-9_]+)`", TEXT))
    shape = schema()
    keys = {*shape["properties"], *shape["$defs"]["garment"]["properties"], *shape["$defs"]["product"]["properties"]}
    keys |= {*shape["$defs"]["garment"]["properties"]["bed"]["properties"], "at", "closing", "body", "cm", "operations", "loops"}
    assert keys - told == set()


def test_the_shipped_catalogue_names_every_garment_once() -> None:
    found, faults = read(str(SHIPPED), SHIPPED.read_text(encoding="utf-8"), known(str(SHIPPED.parent)))
    assert faults == ()
    assert found is not None
    assert [making.source for making in found.makings] == sorted(path.name for path in SHIPPED.parent.glob("*.wale"))
    assert {product.paper for making in found.makings for product in making.products} == {"", "a4", "letter"}
