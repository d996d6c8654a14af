"""The law of one direction: a stage imports only the models of stages before it, `report` and `world`."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from tests.laws.code_tree import PACKAGE, breaches, dotted, each_stage, imports, modules, stage, tree

SYNTAX, DESIGN, GLUE, SOLVE, FIT = "source.syntax", "design.model", "glue.model", "solve.model", "fit.model"
OPERATIONS, STEPS, MANNERS = "knit.operations", "knit.steps", "knit.manners"
# What goes on together, as the steps of one order: what the data means, for all that tell of it.
MERGING = "knit.merging"
BENCH_STEPS, PATTERN_STEPS = "knit.bench_steps", "knit.pattern_steps"
BED, WRITE, PROOF = "bed.model", "write.model", "proof.model"

ALLOWED: dict[str, set[str]] = {
    "record": set(),
    "report": set(),
    # The tables of the trade lean on nothing; bed and reader know the trade for themselves.
    "trade": set(),
    "world": {"report.model", "report.said"},
    "source": {"report", "trade", "world"},
    "design": {"report", "trade", "world", SYNTAX},
    "glue": {"report", "trade", DESIGN},
    # Questions about counted pieces are asked in one place, by the solver's own late checks too.
    "counted": {"report", "trade", DESIGN},
    "solve": {"report", "trade", "world", DESIGN, GLUE, "counted"},
    "knit": {"report", "trade", "world", DESIGN, GLUE, "counted", SOLVE},
    # The bed and the reader share nothing with what they check but the words for moves.
    "bed": {"report", OPERATIONS},
    "write": {"report", "trade", "world", DESIGN, SOLVE, STEPS, BENCH_STEPS, PATTERN_STEPS, MERGING, MANNERS, OPERATIONS},
    "readback": {"report", "world", OPERATIONS},
    # The proof compares fabrics, and measures their edges as the bed does.
    "proof": {"report", "trade", "world", DESIGN, GLUE, "counted", SOLVE, OPERATIONS, "bed"},
    "fit": {"report", "trade", "world", DESIGN, GLUE, "counted", SOLVE, OPERATIONS, "bed"},
    "guide": {"report", "trade", DESIGN, "counted"},
    "figures": {"report", "trade", DESIGN, GLUE, "counted", SOLVE, PROOF, OPERATIONS, "guide.model", "guide.numbers"},
    "sheet": {
        "report",
        "trade",
        "world",
        "figures",
        "guide.model",
        "guide.numbers",
        FIT,
        DESIGN,
        GLUE,
        "counted",
        SOLVE,
        STEPS,
        OPERATIONS,
        WRITE,
        PROOF,
    },
    "plan": {"report", "trade", "world", "pipeline", FIT, DESIGN, GLUE, "counted", SOLVE, STEPS, OPERATIONS, BED, WRITE, PROOF},
    # What is told of garments that were made: of one, what its pages tell, and of all, the manifest and the shelf.
    "catalogue": {
        "report",
        "trade",
        "world",
        "pipeline",
        "figures.measures",
        "guide.model",
        "guide.numbers",
        FIT,
        DESIGN,
        PROOF,
        "sheet.model",
    },
    # Above the pipeline: it compiles again and again.
    "regrade": {"report", "pipeline", "design", SYNTAX},
}
"""What each stage may import besides itself. `pipeline` with its `renaming`, `used_besides` and `bench_copies`, `languages`, `cli`,
`serve` and `__main__` stand outside: they call the stages."""

MADE_OF = "record"
"""What is handed on between stages is made of it."""

CALLERS = {"pipeline", "bench_copies", "renaming", "used_besides", "languages", "cli", "serve", "__main__"}


def offences(importer: str, module: ast.Module, within: str) -> list[str]:
    """Imports of `module`, which belongs to the stage `importer`, that the law forbids."""
    found = []
    for name, line in imports(module, within):
        short = name.removeprefix("walewright").removeprefix(".")
        own = short == importer or short.startswith(f"{importer}.")
        allowed = any(short == a or short.startswith(f"{a}.") for a in ALLOWED[importer] | {MADE_OF})
        if short and not own and not allowed:
            found.append(f"line {line}: {importer} imports {name}")
    return found


def offences_of(path: Path) -> list[str]:
    package = dotted(path) if path.name == "__init__.py" else dotted(path).rpartition(".")[0]
    return offences(stage(path), tree(path), package)


@each_stage(p for p in modules() if stage(p) not in CALLERS | {""})
def test_a_stage_imports_only_what_comes_before(paths: list[Path]) -> None:
    assert breaches(offences_of, paths) == {}


def test_every_stage_is_under_the_law() -> None:
    entries = {p.stem for p in PACKAGE.iterdir() if (p.is_dir() or p.suffix == ".py") and not p.name.startswith("_")}
    assert entries - {"py"} == {*ALLOWED, *CALLERS} - {"__main__"}


@pytest.mark.parametrize(
    ("importer", "text"),
    [
        ("bed", "from walewright.knit.planner import plan"),
        ("bed", "def f():\n    from walewright import solve"),
        ("readback", "import walewright.write.sentences"),
        ("design", "from ..solve import model"),
        ("glue", "from walewright.solve.model import Counts"),
        ("solve", "from walewright.glue.surface import Surface"),
        ("knit", "from walewright import bed as b"),
        ("report", "from walewright.world import today"),
        ("bed", "from walewright.trade.cells import CELLS"),
        ("readback", "from walewright.trade.edgings import EDGINGS"),
        ("trade", "from walewright.report.said import said"),
    ],
)
def test_the_law_sees_an_offence(importer: str, text: str) -> None:
    assert len(offences(importer, ast.parse(text), f"walewright.{importer}")) == 1


def test_the_rest_of_the_compiler_imports_no_command() -> None:
    for path in modules():
        if stage(path) not in ("cli", "serve", "__main__"):
            assert [n for n, _ in imports(tree(path), dotted(path)) if n.startswith("walewright.cli")] == [], path
