"""Edges of seams in words: a piece named once, its own rows, and what is a shoulder; each read back as the edge that it is."""

from __future__ import annotations

from tests.in_english import plain_text, read_back_all, write
from walewright.knit import expand
from walewright.knit import steps as st
from walewright.knit.copies import NONE, Copy
from walewright.knit.steps import EdgeInSeam, SeamOf, SizePlan, StepBlock

Side = tuple[EdgeInSeam, ...]


def side(piece: str, *edges: str, copy: Copy = NONE) -> Side:
    return tuple(EdgeInSeam(piece, edge, copy, "bottom") for edge in edges)


def told(one: Side, other: Side, *off: StepBlock) -> str:
    """The sentence of a seam, read back."""
    seam = st.JoinEdges((SeamOf(one, other),), 0, rows=20)
    plan = SizePlan("S", (*off, StepBlock("making_up", 1, (("", (seam,)),), joining=True)))
    made = write((plan,))
    assert read_back_all(plain_text(made)) == ((expand(plan),), ())
    return made.sections[-1].sentences[0].text.replace("\N{NO-BREAK SPACE}", " ")


def half(piece: str) -> StepBlock:
    """A piece of one row, whose last row goes off as the right shoulder."""
    on = (st.CarriageAt("left"), st.NeedlesToWork(-4, 3, 8), st.WasteStart(8), st.UseYarnStep("wool", "4"), st.SetRowCounter(0))
    return StepBlock(piece, 1, (("Knit", (*on, st.KnitTo(2), st.BreakOff(), st.OffOnWaste(8, "shoulder right"))),))


def test_a_piece_is_named_once() -> None:
    head = side("sleeve", "head left", "end", "head right", copy=Copy(1))
    assert told(head, (*side("front", "armhole right"), *side("back", "armhole left"))) == (
        "Join the left head, then the last row, then the right head of the 1st sleeve to the right armhole of the front, then the"
        " left armhole of the back, row for row, 20 rows."
    )


def test_another_copy_is_named() -> None:
    both = (*side("sleeve", "end", copy=Copy(1)), *side("sleeve", "end", copy=Copy(2)))
    assert told(both, side("body", "edge")).startswith(
        "Join the last row of the 1st sleeve, then the last row of the 2nd sleeve to the edge of the body,"
    )


def test_an_edge_of_ones_own_name_stays_an_edge() -> None:
    assert told(side("hood", "face", "end"), side("cape", "neck", "rim")).startswith(
        "Join the face, then the last row of the hood to the neck, then the rim of the cape,"
    )


def test_no_shoulder_is_told_of_a_piece_that_meets_itself() -> None:
    block = half("sock")
    assert told(side("sock", "shoulder right"), side("sock", "shoulder left"), block).startswith(
        "Join the right part of the last row of the sock to the left part of the same row,"
    )
    off = write((SizePlan("S", (block, joined(side("sock", "shoulder right"), side("sock", "shoulder left")))),)).sections[0]
    assert "(last row right)" in off.sentences[-1].text.replace("\N{NO-BREAK SPACE}", " ")


def test_a_shoulder_that_meets_another_piece_is_one() -> None:
    assert told(side("back", "shoulder right"), side("front", "shoulder left")).startswith(
        "Join the right shoulder of the back to the left shoulder of the front,"
    )


def test_a_piece_with_both_keeps_its_shoulders() -> None:
    blocks = (
        half("cape"),
        joined(side("cape", "shoulder right"), side("cape", "shoulder left")),
        joined(side("cape", "shoulder right"), side("hood", "end")),
    )
    assert "shoulder right)" in write((SizePlan("S", blocks),)).sections[0].sentences[-1].text


def joined(one: Side, other: Side) -> StepBlock:
    return StepBlock(f"join_{other[0].piece}", 1, (("", (st.JoinEdges((SeamOf(one, other),), 0, rows=20),)),), joining=True)
