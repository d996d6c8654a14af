"""Every measurement that a knitter can give says what it is."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.design.shaped import HEAD, piece
from walewright.cli.sources import shipped
from walewright.design import Changes, understand_all
from walewright.design.reading.tables import size_table
from walewright.source import read, tidy
from walewright.source.syntax import SizeRow, Sizes

PATTERNS = sorted((Path(__file__).parents[2] / "patterns").glob("*.wale"))
SHIPPED = shipped()


@pytest.mark.parametrize("table", sorted(SHIPPED.tables))
def test_every_row_of_the_shipped_tables_is_described(table: str) -> None:
    for row in size_table(table, SHIPPED.tables[table]).measurements:
        found = SHIPPED.described(row)
        assert found.name, row
        assert found.about, row
        assert not found.about.endswith("."), row


@pytest.mark.parametrize("path", PATTERNS, ids=lambda p: p.stem)
def test_every_row_of_the_shipped_garments_is_described(path: Path) -> None:
    tree, _ = read(path.name, path.read_text(encoding="utf-8"))
    (sizes,) = (s for s in tree.statements if isinstance(s, Sizes))
    for row in (r for r in sizes.body if isinstance(r, SizeRow)):
        # What is only counted is no measurement, and has no text.
        assert row.about or row.table or row.unit is None, row.name


def test_a_row_of_a_table_has_the_tables_words_or_the_authors() -> None:
    rows = '    foot from foot foot_circumference, to fit\n    heel from foot total_foot_length "from the heel on"\n'
    head = HEAD.replace("sizes S M", "sizes woman_shoe_7 woman_shoe_10").replace(
        "    length 40 42 cm\n", f"    length 40 42 cm\n{rows}"
    )
    tree, unread = read("trial.wale", f"{head}\n{piece()}")
    assert unread == ()
    design, _ = understand_all(tree, SHIPPED, Changes())
    assert design is not None
    about = {m.name: m.about for m in design.measurements}
    assert about["foot"].startswith("round the ball of the foot")
    assert about["heel"] == "from the heel on"
    assert about["length"] == ""


def test_a_description_is_kept_when_a_source_is_tidied() -> None:
    text = 'sizes S M\n    length   4 5 cm, to fit "across \\"here\\""\n    bust from women bust "round"\n'
    tree, unread = read("trial.wale", text)
    assert unread == ()
    tidied = tidy(tree)
    assert 'cm, to fit "across \\"here\\""' in tidied
    assert 'bust from women bust "round"' in tidied
    assert read("trial.wale", tidied)[0] == tree
