"""Names that nothing made uses: told of, whatever their kind, and left out of the design; shapes looked into all the same."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields

import pytest

from tests.design.shaped import SHIPPED
from walewright.design import Changes, understand
from walewright.design.model import Design
from walewright.design.pieces.shapes import NAMES
from walewright.design.used.uses import DEFINITIONS, REFERENCES
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity
from walewright.source import read, syntax

SCARF = """\
pattern "Scarf"
sizes one
    length 140 cm
machine bulky
yarn wool "wool", 100 g = 120 m
fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 20 cm by 15 cm
piece scarf in plain
    levels bottom 0 cm, bend 70 cm, top length
    start 24 cm wide on waste yarn
{lines}    end cast off
"""

SWATCH = "    swatch 40 stitches by 60 rows = 20 cm by 15 cm"
SILK = 'yarn silk "silk", 50 g = 100 m'
SHEEN = f"fabric sheen\n    stocking stitch in silk at tension 2\n{SWATCH}"
CHART = "chart lace\n    key . knit\n    key O hole\n    key / two from left\n    | . O / . |\n    | . . . . |"
LACY = f"fabric lacy\n    chart lace in wool at tension 4, 2 edge stitches\n{SWATCH}"
TRIM = "edging trim in sheen, 3 cm deep, added after"
MOVE = "shape move(to)\n    edges straight to to called side"


def understood(*more: str, lines: tuple[str, ...] = (), frame: str = SCARF) -> tuple[Design | None, tuple[Diagnostic, ...]]:
    text = frame.format(lines="".join(f"    {line}\n" for line in lines)) + "\n".join((*more, ""))
    tree, unread = read("scarf.wale", text)
    assert unread == ()
    design, found = understand(tree, SHIPPED, Changes())
    # The bend is there to be used by some of these; `test_idle_places.py` looks at levels that are not.
    return design, tuple(d for d in found if "level `bend`" not in in_english(d).message)


def told(*more: str, lines: tuple[str, ...] = ()) -> list[str]:
    """What is said, and for errors their code."""
    return [in_english(d).message if d.severity is Severity.WARNING else d.code for d in understood(*more, lines=lines)[1]]


def test_all_used_is_quiet() -> None:
    assert told() == []


@pytest.mark.parametrize(
    ("definition", "what", "use"),
    [
        ("let gores = 12 cm", "definition `gores`", "    require length > gores"),
        (LACY + "\n" + CHART, "fabric `lacy`", "fabric lacy from bend to top"),
        (MOVE, "shape `move`", "use move, to bend"),
        ("edging trim in plain, 3 cm deep, added after", "edging `trim`", "start"),
    ],
)
def test_a_definition_is_told_of_until_it_is_used(definition: str, what: str, use: str) -> None:
    assert f"nothing that is made uses the {what}" in told(definition)
    if use == "start":
        assert told(definition, "band end_band with trim along scarf start") == []
    elif use.startswith(" "):
        assert told(definition, use.strip()) == []
    else:
        assert told(definition, lines=(use,)) == []


def test_what_only_an_unused_one_uses_is_unused_and_says_by_what() -> None:
    design, found = understood(SILK, SHEEN, TRIM)
    assert [(d.code, in_english(d).message) for d in found] == [
        ("unused-name", "nothing that is made uses the yarn `silk`"),
        ("unused-name", "nothing that is made uses the fabric `sheen`"),
        ("unused-name", "nothing that is made uses the edging `trim`"),
    ]
    assert [in_english(d).notes for d in found] == [("named by fabric `sheen`",), ("named by edging `trim`",), ()]
    assert design is not None
    assert [y.name for y in design.yarns] == ["wool"]
    assert [f.name for f in design.fabrics] == ["plain"]
    assert design.edgings == ()
    used, quiet = understood(SILK, SHEEN, TRIM, "band edge with trim along scarf start")
    assert quiet == ()
    assert used is not None
    assert [y.name for y in used.yarns] == ["wool", "silk"]
    assert [f.name for f in used.fabrics] == ["plain", "sheen"]
    assert [e.name for e in used.edgings] == ["trim"]


def test_a_motif_uses_its_chart_and_the_chart_its_yarn() -> None:
    chart = "chart fleet\n    key . knit\n    key N knit in silk\n    | . N . |\n    | . N . |"
    assert told(SILK, chart) == ["nothing that is made uses the yarn `silk`", "nothing that is made uses the chart `fleet`"]
    assert told(SILK, chart, lines=("motif fleet at bend",)) == []


def test_a_row_of_the_sizes() -> None:
    frame = SCARF.replace("    length 140 cm\n", "    length 140 cm\n    wrist 16 cm{fit}\n")
    design, (one,) = understood(frame=frame.replace("{fit}", ""))
    assert in_english(one).message == "nothing that is made uses the measurement `wrist`"
    assert "to fit" in in_english(one).helps[0]
    assert design is not None
    assert [m.name for m in design.measurements] == ["length"]
    # A measure of the body is printed to choose a size by.
    fitted, quiet = understood(frame=frame.replace("{fit}", ", to fit"))
    assert quiet == ()
    assert fitted is not None
    assert [m.name for m in fitted.measurements] == ["length", "wrist"]


def test_a_use_by_way_of_a_shape_and_its_values() -> None:
    shape = "shape flare(to, out)\n    let half = out / 2\n    edges slope by half at to"
    assert told(shape, "let more = 4 cm", lines=("use flare, to bend, out more",)) == []
    assert told(shape, "let more = 4 cm", lines=("use flare, to bend, out more + 1 cm",)) == []


def test_shapes_used_by_shapes() -> None:
    outer = "shape outer(to)\n    use move, to to"
    assert told(MOVE, outer) == ["nothing that is made uses the shape `move`", "nothing that is made uses the shape `outer`"]
    assert told(MOVE, outer, lines=("use outer, to bend",)) == []


def test_what_is_unused_within_a_shape() -> None:
    shape = "shape flare(to, out)\n    let half = 2 cm\n    let quarter = half / 2\n    edges straight to to"
    assert told(shape, lines=("use flare, to bend, out 4 cm",)) == [
        "nothing in shape `flare` uses its value `out`",
        "nothing in shape `flare` uses its definition `half`",
        "nothing in shape `flare` uses its definition `quarter`",
    ]


@pytest.mark.parametrize(
    ("body", "codes"),
    [
        ("edges slope to nosuch wide at a", ["unknown-name"]),
        ("edges slope to length wide at a", []),
        ("use nowhere, b c", ["unknown-name"]),
        ("use waist, b c", []),
        ("use move, to a", []),
        ("use move, from a", ["unknown-argument", "missing-argument"]),
        ("fabric sheen from bottom to a", ["unknown-name"]),
        ("fabric plain from bottom to a", []),
        ("start 10 cm wide on waste yarn, with trim", ["unknown-name"]),
        ("motif fleet at a", ["unknown-name"]),
    ],
)
def test_a_shape_is_looked_into_though_nothing_uses_it(body: str, codes: list[str]) -> None:
    found = [d.code for d in understood(MOVE, f"shape foo(a)\n    {body}")[1] if d.code != "unused-name"]
    assert sorted(found) == sorted(codes)


def test_a_misspelt_use_is_one_mistake() -> None:
    assert told(SILK, SHEEN.replace("in silk", "in slik"), TRIM, "band edge with trim along scarf start") == ["unknown-name"]


def nodes() -> Iterator[type]:
    """Every kind of node of the syntax tree."""
    return (k for k in vars(syntax).values() if isinstance(k, type) and issubclass(k, syntax.Node) and k is not syntax.Node)


OTHER_NAMES = {
    "BandLine.name", "OpeningLine.name", "PieceBlock.name", "LevelDef.name", "SlotLine.name", "PieceBlock.mirror_of",
    "PieceBlock.image_of",
    "CordLine.piece", "EdgeRef.piece", "EdgeRef.edge", "SizeRow.table", "SizeRow.table_row", "MachineBlock.name",
    "OwnFigure.size", "FinishedLine.name", "Round.piece", "Round.level", "PlaceRef.owner", "Through.part",
    "PieceBlock.like", "Without.part", "InLanguage.language", "ChoiceLine.name", "ForBlock.choice", "ForBlock.alternative",
    "UseFrom.file", "PhotographLine.file", "PhotographLine.showing", "NameLine.name",
}  # fmt: skip
WORDS = {
    "text", "key", "title", "unit", "label", "system", "colour", "stitch", "tension", "fit", "face", "symbol", "kind", "hung_first",
    "way", "when", "cast_off", "fold_tension", "inside_tension", "purpose", "relation", "because", "op", "function", "which",
    "path", "called", "taken", "edge", "shape", "facing", "next_copy", "about",
}  # fmt: skip
"""Fields with words of the language, the author's texts, or names that are given where they stand."""


def test_every_name_in_the_tree_is_known_to_the_search_for_uses() -> None:
    """A new field that names something has to be entered in `REFERENCES`, or in one of the lists above."""
    unsorted: set[str] = set()
    for kind in nodes():
        for field in fields(kind):
            known = field.name in REFERENCES.get(kind, {}) or field.name in NAMES.get(kind, ()) or field.name in WORDS
            known = known or (kind in DEFINITIONS and field.name == "name") or f"{kind.__name__}.{field.name}" in OTHER_NAMES
            if field.type in ("str", "str | None") and not known:
                unsorted.add(f"{kind.__name__}.{field.name}")
    assert unsorted == set()
