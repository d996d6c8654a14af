"""Sources of one piece or a few, written as text, and what is understood of them."""

from __future__ import annotations

from pathlib import Path

from walewright.design import Changes, Shipped, understand_all, wanted_shapes
from walewright.design.model import Design, Piece
from walewright.report.model import Diagnostic
from walewright.source import read
from walewright.source.syntax import ShapeBlock

PATTERNS = Path(__file__).parents[2] / "patterns"
SHIPPED = Shipped(
    {p.stem: p.read_text() for p in (PATTERNS / "tables").glob("*.csv")},
    {p.stem: p.read_text() for p in (PATTERNS / "machines").glob("*.toml")},
    {p.stem: p.read_text() for p in (PATTERNS / "shapes").glob("*.wale")},
)

HEAD = """\
pattern "Trial"
sizes S M
    length 40 42 cm
machine bulky
yarn wool "wool", 100 g = 300 m
fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 20 cm by 15 cm
fabric rib
    latched rib every 3rd needle in wool at tension 4
    swatch 40 stitches by 60 rows = 16 cm by 12 cm
fabric dense
    stocking stitch in wool at tension 2
    swatch 40 stitches by 60 rows = 16 cm by 12 cm
edging welt in rib, 4 cm deep, knitted first
edging collar in rib, 3 cm deep, added after, cast off chain
"""
"""Plain has 2 stitches and 4 rows to the centimetre, rib and dense 2.5 and 5."""

LEVELS = "hem 0 cm, low 10 cm, middle 20 cm, high 30 cm, top length"


def piece(
    *lines: str,
    name: str = "front",
    levels: str = LEVELS,
    start: str = "40 cm wide on waste yarn",
    end: str = "on waste yarn",
    more: str = "",
) -> str:
    """The text of a piece; lines beginning with a space stand in the block of the line before."""
    block = (f"levels {levels}", f"start {start}", *lines, f"end {end}")
    return f"piece {name} in plain{more}\n" + "".join(f"    {line}\n" for line in block)


def understood(*parts: str, head: str = HEAD) -> tuple[Design | None, tuple[Diagnostic, ...]]:
    """What the source of these parts means; its lines have to be readable."""
    tree, unread = read("trial.wale", "\n".join((head, *parts)))
    assert unread == ()
    shapes: list[ShapeBlock] = []
    for name in wanted_shapes(tree):
        shapes += (s for s in read(f"{name}.wale", SHIPPED.shapes.get(name, ""))[0].statements if isinstance(s, ShapeBlock))
    # Most of these sources define more than they use; `test_uses.py` looks at that.
    return understand_all(tree, SHIPPED, Changes(), shapes)


def told(*parts: str, head: str = HEAD) -> list[str]:
    """The codes of everything told of a source."""
    return [d.code for d in understood(*parts, head=head)[1]]


def only(*parts: str, head: str = HEAD) -> Diagnostic:
    """The one thing told of a source."""
    (said,) = understood(*parts, head=head)[1]
    return said


def design(*parts: str, head: str = HEAD) -> Design:
    """The design of a sound source."""
    made, said = understood(*parts, head=head)
    assert said == ()
    assert made is not None
    return made


def front(*lines: str, **options: str) -> Piece:
    """The piece of a sound source of one piece."""
    return design(piece(*lines, **options)).piece("front")
