"""The only place that speaks to HiGHS: a programme in, whole numbers out. The same programme gives the same numbers."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from walewright.record import record
from walewright.solve.algebra.programme import Programme, Wish
from walewright.solve.algebra.sums import Linear, Terms
from walewright.solve.model import SolveStatus

NODE_LIMIT = 200_000
"""Far above what a garment takes (a handful); a node limit, unlike a time limit, gives the same result on every computer."""

OPTIONS: tuple[tuple[str, bool | int | float], ...] = (
    ("output_flag", False),
    ("threads", 1),
    ("random_seed", 1),
    ("mip_rel_gap", 0.0),
    ("mip_abs_gap", 0.0),
    # A garment is done in a handful of nodes: looking for good numbers beforehand takes longer than finding the best.
    ("mip_heuristic_run_feasibility_jump", False),
    ("mip_heuristic_run_rens", False),
    ("mip_heuristic_run_rins", False),
)

_FAR = 1_000_000
"""Above any count of stitches or rows."""


@record
class Answer:
    """`values` are the variables' numbers by variable number, None when there are none. `status`: "optimal", "infeasible",
    or "stopped" when the node limit was reached."""

    status: SolveStatus
    values: dict[int, int] | None
    objective: float
    bound: float


@record
class Slack:
    """A line that may be broken: both of its bounds, at `cost` for each unit."""

    line: Linear
    cost: float


class _Matrix:
    """Columns and rows of a linear programme being written."""

    def __init__(self) -> None:
        self.columns: dict[int, int] = {}
        self.cost: list[float] = []
        self.lower: list[float] = []
        self.upper: list[float] = []
        self.whole: list[bool] = []
        self.rows: list[tuple[list[int], list[float], float, float]] = []

    def column(self, cost: float = 0.0, whole: bool = False) -> int:
        self.cost.append(cost)
        self.lower.append(0.0)
        self.upper.append(float(_FAR))
        self.whole.append(whole)
        return len(self.cost) - 1

    def variable(self, number: int) -> int:
        if number not in self.columns:
            self.columns[number] = self.column(whole=True)
        return self.columns[number]

    def expression(self, terms: Terms) -> tuple[list[int], list[float]]:
        return [self.variable(v) for v, _ in terms], [float(c) for _, c in terms]

    def line(self, line: Linear) -> None:
        if len(line.terms.of) == 1 and line.terms.of[0][1] == 1:
            column = self.variable(line.terms.of[0][0])
            low, high = (0 if line.low is None else line.low), (_FAR if line.high is None else line.high)
            self.lower[column], self.upper[column] = max(self.lower[column], low), min(self.upper[column], high)
            return
        index, value = self.expression(line.terms)
        self.rows.append((index, value, -_FAR if line.low is None else line.low, _FAR if line.high is None else line.high))

    def slack(self, slack: Slack) -> None:
        index, value = self.expression(slack.line.terms)
        over, under = self.column(slack.cost), self.column(slack.cost)
        line = slack.line
        low, high = (-_FAR if line.low is None else line.low), (_FAR if line.high is None else line.high)
        self.rows.append(([*index, over, under], [*value, -1.0, 1.0], low, high))

    def wish(self, wish: Wish) -> None:
        index, value = self.expression(wish.terms)
        wanted = wish.wanted - wish.terms.more
        over, under = self.column(wish.weight), self.column(wish.weight)
        self.rows.append(([*index, over, under], [*value, -1.0, 1.0], wanted, wanted))
        if wish.beyond:
            more = self.column(wish.beyond)
            self.rows.append(([over, under, more], [1.0, 1.0, -1.0], -_FAR, wish.free))


def solve_programme(programme: Programme) -> Answer:
    """The best values of the variables that occur in the programme."""
    matrix = _Matrix()
    for rule in programme.rules:
        for _, line in rule.constraints:
            matrix.line(line)
    for wish in programme.wishes:
        matrix.wish(wish)
    for variable, cost in programme.nudges:
        matrix.cost[matrix.variable(variable)] += cost
    return _run(matrix)


def feasible(lines: Sequence[Linear]) -> bool:
    """Whether whole numbers keep all the lines."""
    matrix = _Matrix()
    for line in lines:
        matrix.line(line)
    return _run(matrix).status != "infeasible"


def relaxed(lines: Sequence[Linear], slacks: Sequence[Slack]) -> Answer:
    """Whole numbers that keep all the lines and break the slack ones least."""
    matrix = _Matrix()
    for line in lines:
        matrix.line(line)
    for slack in slacks:
        matrix.slack(slack)
    return _run(matrix)


def _run(matrix: _Matrix) -> Answer:
    import highspy  # half of the start-up time of this stage

    if any(low > high for low, high in zip(matrix.lower, matrix.upper, strict=True)):
        return Answer("infeasible", None, 0.0, 0.0)
    if not matrix.cost:
        held = all(low <= 0 <= high for _, _, low, high in matrix.rows)
        return Answer("optimal" if held else "infeasible", {} if held else None, 0.0, 0.0)
    library: Any = highspy
    model = library.HighsLp()
    model.num_col_ = len(matrix.cost)
    model.num_row_ = len(matrix.rows)
    model.col_cost_ = matrix.cost
    model.col_lower_ = matrix.lower
    model.col_upper_ = matrix.upper
    model.row_lower_ = [float(low) for _, _, low, _ in matrix.rows]
    model.row_upper_ = [float(high) for _, _, _, high in matrix.rows]
    starts, index, value = [0], [], []
    for columns, coefficients, _, _ in matrix.rows:
        index += columns
        value += coefficients
        starts.append(len(index))
    model.a_matrix_.format_ = library.MatrixFormat.kRowwise
    model.a_matrix_.start_ = starts
    model.a_matrix_.index_ = index
    model.a_matrix_.value_ = value
    kinds = library.HighsVarType
    model.integrality_ = [kinds.kInteger if whole else kinds.kContinuous for whole in matrix.whole]
    highs: Any = _quiet()
    for option, setting in (*OPTIONS, ("mip_max_nodes", NODE_LIMIT)):
        highs.setOptionValue(option, setting)
    highs.passModel(model)
    highs.run()
    status = highs.getModelStatus()
    if status in (library.HighsModelStatus.kInfeasible, library.HighsModelStatus.kUnboundedOrInfeasible):
        return Answer("infeasible", None, 0.0, 0.0)
    info = highs.getInfo()
    found = highs.getSolution().col_value
    optimal = status == library.HighsModelStatus.kOptimal
    if not optimal and info.primal_solution_status != 2:
        return Answer("stopped", None, 0.0, 0.0)
    values = {number: round(found[column]) for number, column in matrix.columns.items()}
    bound = info.mip_dual_bound if any(matrix.whole) else info.objective_function_value
    return Answer("optimal" if optimal else "stopped", values, info.objective_function_value, bound)


def _quiet() -> Any:
    """A solver that does not announce itself on standard output, which belongs to the commands."""
    import highspy

    class Quiet(highspy.Highs):
        def enableCallbacks(self) -> None:
            # The library greets when its callbacks are set up, before its maker can set an option from outside.
            self.setOptionValue("output_flag", False)
            super().enableCallbacks()  # type: ignore[no-untyped-call]

    return Quiet()  # type: ignore[no-untyped-call]
