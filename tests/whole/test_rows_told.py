"""Of the shipped garments: rows of a shoulder that are not counted with an armhole, and edge stitches that a panel never meets."""

from __future__ import annotations

import pytest

from tests.whole.handwork_told import steps
from tests.whole.shipped_once import compiled
from walewright.knit import operations as op
from walewright.knit import steps as st
from walewright.knit.shoulder_rows import rows_at_end
from walewright.knit.shoulder_rows import told as rows_told
from walewright.knit.steps import StepBlock
from walewright.report.said import Said


def told(block: StepBlock) -> dict[str, tuple[str, int]]:
    """The rows of a shoulder beside the edge of a name: which of the rows after it they are, and how many."""
    of_shoulder = [text for text in notes(block) if text.key.startswith("rows-of-shoulder")]
    found = {}
    for text in of_shoulder:
        facts = dict(text.facts)
        found[str(facts["edge"])] = (text.key.partition("/")[2], int(str(facts["rows"])))
    return found


def knitted_above(operations: tuple[op.Operation, ...], row: int) -> list[int]:
    """The rows above `row` that knit the outermost needle at the right, up to the last row of the part that is worked first."""
    there: set[int] = set()
    held: set[int] = set()
    counter = 0
    rows: list[int] = []
    for move in operations:
        match move:
            case op.IntoWork(first=first, last=last):
                there |= {*range(first, last + 1)}
            case op.Hold(first=first, last=last):
                held |= {*range(first, last + 1)}
            case op.Release(first=first, last=last):
                held -= {*range(first, last + 1)}
            case op.SetCounter(rows=to):
                if to and to < counter:
                    break
                counter = to
            case op.OntoWaste() if move.rows and counter > row and max(there) in range(move.first, move.last + 1):
                break
            case op.Pass():
                counter += 1
                rows += [counter] if counter > row and max(there) not in held else []
            case _:
                pass
    return rows


@pytest.mark.parametrize("name", ["tidewrack", "hawser"])
def test_rows_of_the_shoulder_are_told_as_they_are_knitted(name: str) -> None:
    made = compiled(name)
    seen = 0
    for plan, work in zip(made.plans, made.works, strict=True):
        for block, done in zip([b for b in plan.blocks if not b.joining], work.blocks, strict=True):
            for edge, (which, number) in told(block).items():
                ends = {s.edge: s.to_row for _, row in block.paragraphs for s in row if isinstance(s, st.EdgeIs)}
                rows = knitted_above(done.operations, ends[edge])
                assert (which, number) == ("ends", 2)
                assert rows == [ends[edge] + 1, max(ends.values())]
                seen += 1
    assert seen == 2 * len(made.plans)


def test_a_shoulder_held_at_once_has_its_last_rows_alone() -> None:
    held = [st.HoldAtEnd("left", 5), st.KnitRows(1), st.WrapHeld("left"), st.KnitRows(1), st.ReturnHeld("left"), st.KnitTo(14)]
    rows = rows_at_end([st.SetRowCounter(0), st.KnitTo(10), *held], "left", 10)
    assert rows == (13, 14)
    assert rows_told("armhole", rows, 10, 14) == Said("rows-of-shoulder/last", (("edge", "armhole"), ("rows", 2)))
    after = rows_at_end([st.SetRowCounter(0), st.KnitTo(11), *held], "left", 10)
    assert (after, rows_told("armhole", after, 10, 14).key) == ((11, 14), "rows-of-shoulder/ends")
    waiting = [st.SetRowCounter(0), st.HoldPart("left", -9, -1), st.KnitTo(14), st.OffOnWaste(8, "shoulder right")]
    assert rows_at_end([*waiting, st.SetRowCounter(10), st.ReturnPart("left", -9, -1), *held], "left", 10) == (13, 14)


def test_a_sleeve_has_no_such_rows() -> None:
    assert [told(b) for plan in compiled("tidewrack").plans for b in plan.blocks if b.name == "sleeve"] == [{}] * 8


def test_a_panel_up_the_middle_has_no_edge_stitches() -> None:
    charts = [s for s in steps(compiled("hawser")) if isinstance(s, st.StartChart)]
    assert {(s.area, s.edge) for s in charts} == {("panel", 0)}


@pytest.mark.parametrize(("name", "closed"), [("dotterel", False), ("limpet", False), ("lapwing", True)])
def test_what_is_open_is_told_only_where_something_is_closed(name: str, closed: bool) -> None:
    """Nobody has been told to sew the side of a mitt when its wristband is hung on it."""
    says = [text for block in compiled(name).plans[0].blocks for text in notes(block)]
    assert all("joined" in text.key for text in says if "open" in text.key)
    assert any("joined" in text.key for text in says) is closed


def notes(block: StepBlock) -> list[Said]:
    """What the house's own notes say."""
    return [s.text for _, row in block.paragraphs for s in row if isinstance(s, st.Say) and not isinstance(s.text, str)]
