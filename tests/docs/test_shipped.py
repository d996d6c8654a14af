"""The tables of shipped garments and shapes say what the files say."""

from __future__ import annotations

import re
from pathlib import Path

from tests.docs.blocks import EXAMPLE_PAGES, ROOT, blocks
from walewright import source
from walewright.source import syntax

PATTERNS = ROOT / "patterns"
GARMENT = re.compile(
    r"^\| \[(?P<title>[^\]]+)\]\(patterns/(?P<file>\w+)\.wale\) \| [^|]+ \| (?P<bed>\w+) \| (?P<sizes>[^|]+) \| [^|]+ \|$",
    re.MULTILINE,
)
SHAPE = re.compile(r"^\| `(?P<name>\w+)` \| [^|]+ \| (?P<edges>[^|]+) \| (?P<values>[^|]+) \|$", re.M)


def tree(path: Path) -> syntax.Tree:
    return source.read(path.name, path.read_text(encoding="utf-8"))[0]


def garment(path: Path) -> tuple[str, str, str, str]:
    """File, title, bed and range of sizes, as the README's table has them."""
    statements = tree(path).statements
    title = next(s.title for s in statements if isinstance(s, syntax.PatternBlock))
    bed = next(s.name for s in statements if isinstance(s, syntax.MachineBlock))
    names = [n.replace("_", " ") for s in statements if isinstance(s, syntax.Sizes) for n in s.names]
    return path.stem, title, bed, names[0] if len(names) == 1 else f"{names[0]} to {names[-1]}"


def test_the_readme_lists_every_garment_as_it_is() -> None:
    rows = GARMENT.finditer((ROOT / "README.md").read_text(encoding="utf-8"))
    listed = {(row["file"], row["title"], row["bed"], row["sizes"]) for row in rows}
    assert listed == {garment(path) for path in PATTERNS.glob("*.wale")}


def test_the_page_of_shapes_lists_every_shape_as_it_is() -> None:
    page = (ROOT / "docs" / "constructions" / "shapes.md").read_text(encoding="utf-8")
    listed = {row["name"]: tuple(re.findall(r"\w+", row["values"])) for row in SHAPE.finditer(page)}
    shapes = [s for path in (PATTERNS / "shapes").glob("*.wale") for s in tree(path).statements if isinstance(s, syntax.ShapeBlock)]
    assert listed == {s.name: s.parameters for s in shapes}
    for shape in shapes:
        row = next(r for r in SHAPE.finditer(page) if r["name"] == shape.name)
        called = {s.called for s in shape.body if isinstance(s, syntax.EdgeLine)} - {None, *shape.parameters}
        assert called == set(re.findall(r"`(\w+)`", row["edges"]))


def test_every_shipped_shape_is_used_in_an_example() -> None:
    used = {name for b in blocks("wale") if b.info == "wale example" for name in re.findall(r"^ +use (\w+)", b.text, re.M)}
    assert {p.stem for p in (PATTERNS / "shapes").glob("*.wale")} <= used


def test_every_garment_is_named_where_a_construction_is_shown() -> None:
    """In italics, with its title."""
    shown = {n for page in EXAMPLE_PAGES for n in re.findall(r"(?<!\*)\*(\w+)\.?\*(?!\*)", page.read_text(encoding="utf-8"))}
    titles = {garment(path)[1] for path in PATTERNS.glob("*.wale")}
    assert titles - shown == set()
    assert shown - titles == set()
