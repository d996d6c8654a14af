"""A small garment as a hand-built syntax tree, and the shipped data, for the tests of this stage."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from importlib import import_module
from pathlib import Path

import pytest
from syrupy.assertion import SnapshotAssertion

from tests.as_ever import kept_as_ever, watched
from walewright.design import Changes, Shipped, understand_all
from walewright.design.model import Design
from walewright.report.model import Diagnostic, Span
from walewright.source.syntax import (
    BandLine,
    EdgeLine,
    EdgeRef,
    EdgingLine,
    End,
    FabricBlock,
    JoinLine,
    Let,
    LevelDef,
    Levels,
    MachineBlock,
    Name,
    Neck,
    Number,
    PatternBlock,
    PieceBlock,
    Shoulders,
    SizeRow,
    Sizes,
    Start,
    Statement,
    Stitch,
    Swatch,
    TextLine,
    Tree,
    YarnLine,
)

PATTERNS = Path(__file__).parents[2] / "patterns"

Understood = tuple[Design | None, tuple[Diagnostic, ...]]
Understand = Callable[..., Understood]


def at(line: int) -> Span:
    """A place of its own for every statement, so that labels can be told apart."""
    return Span("hand.wale", line * 100, line * 100 + 10)


def cm(value: float) -> Number:
    return Number(value, "cm", span=at(int(abs(value)) % 50))


def vest() -> dict[str, Statement]:
    """A sleeveless body in two sizes: every kind of statement once. Statements by a word, to change one at a time."""
    levels = Levels(
        (
            LevelDef("hem", cm(0), span=at(60)),
            LevelDef("underarm", cm(30), span=at(61)),
            LevelDef("tip", cm(50), span=at(62)),
            LevelDef("top", cm(52), span=at(63)),
        ),
        span=at(64),
    )
    body: tuple[Statement, ...] = (
        levels,
        Start(Name("half", span=at(65)), "waste", "welt", span=at(66)),
        EdgeLine("both", "straight", "underarm", called="side", span=at(67)),
        EdgeLine("both", "slope", "tip", width=cm(40), called="armhole", way="fashioned", inset=2, span=at(68)),
        Neck(cm(18), cm(8), "round", span=at(69)),
        Shoulders("tip", span=at(70)),
        End("waste", span=at(71)),
    )
    return {
        "pattern": PatternBlock("Vest", (TextLine("summary", "A vest."),), span=at(1)),
        "sizes": Sizes(
            ("S", "M"),
            (
                SizeRow("bust", table="women", table_row="bust", to_fit=True, span=at(3)),
                SizeRow("length", (52.0, 54.0), "cm", span=at(4)),
            ),
            span=at(2),
        ),
        "let": Let("half", cm(48), span=at(5)),
        "machine": MachineBlock("bulky", span=at(6)),
        "yarn": YarnLine("wool", "chunky wool", Number(100, "g", span=at(7)), Number(120, "m", span=at(7)), span=at(7)),
        "fabric": FabricBlock("plain", (stocking(), swatch()), span=at(10)),
        "edging": EdgingLine("welt", "plain", cm(6), span=at(13)),
        "piece": PieceBlock("back", "plain", body=body, span=at(14)),
        "band": BandLine("neckband", "welt", (EdgeRef("back", "neck", span=at(80)),), span=at(81)),
        "join": JoinLine((EdgeRef("back", "start", span=at(82)),), (EdgeRef("back", "shoulder", span=at(83)),), cm(2), span=at(84)),
    }


def stocking() -> Stitch:
    return Stitch("stocking stitch", "wool", "4", span=at(11))


def swatch(width: float = 20.0, height: float = 15.0, weight: float | None = 30.0) -> Swatch:
    return Swatch(
        Number(40, "stitches", span=at(12)),
        Number(60, "rows", span=at(12)),
        Number(width, "cm", span=at(12)),
        Number(height, "cm", span=at(12)),
        Number(weight, "g", span=at(12)) if weight is not None else None,
        span=at(12),
    )


@pytest.fixture(scope="session")
def shipped() -> Shipped:
    return Shipped(
        {p.stem: p.read_text() for p in sorted((PATTERNS / "tables").glob("*.csv"))},
        {p.stem: p.read_text() for p in sorted((PATTERNS / "machines").glob("*.toml"))},
        {p.stem: p.read_text() for p in sorted((PATTERNS / "shapes").glob("*.wale"))},
    )


@pytest.fixture(scope="session")
def read(shipped: Shipped) -> Understand:
    """Understands the vest with some statements replaced (None: left out) and more added behind."""

    def understood(*more: Statement, changes: Changes | None = None, **replaced: Statement | None) -> Understood:
        statements = {**vest(), **replaced}
        tree = Tree("hand.wale", (*(s for s in statements.values() if s is not None), *more))
        return understand_all(tree, shipped, changes or Changes())

    return understood


@pytest.fixture(scope="session")
def cut(read: Understand) -> Understand:
    """Understands the vest with statements of the back's block replaced, by class; `without` are left out."""

    def understood(
        *nodes: Statement, without: tuple[type, ...] = (), add: tuple[Statement, ...] = (), **piece: object
    ) -> Understood:
        back = vest()["piece"]
        assert isinstance(back, PieceBlock)
        kinds = {type(n): n for n in nodes}
        body = tuple(kinds.get(type(s), s) for s in back.body if not isinstance(s, without)) + add
        return read(piece=replace(back, **{"body": body, **piece}))

    return understood


@pytest.fixture
def vest_nodes() -> dict[str, Statement]:
    """The statements of the vest by their word."""
    return vest()


@pytest.fixture(autouse=True)
def understood_as_ever(
    request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch, snapshot: SnapshotAssertion
) -> Iterator[None]:
    """Whatever the tests of this stage have understood, kept: the designs, and what is told of their sources."""
    entry = import_module("walewright.design.understand")
    made = watched(monkeypatch, entry, {"_meant": lambda given: (given[3], given[2].all()), "_understood": lambda given: given[1]})
    yield
    kept_as_ever(made, request, snapshot)
