"""Pieces in the programme: which numbers a piece has in a size, as terms over variables."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from walewright.design.model import Design, EdgeRun, Opening, Piece
from walewright.solve.programme import Draft, Kind, Terms, total
from walewright.solve.quantities import HIDDEN, LESSER, STEADY, Quantity, want

SIDES = ("left", "right")


@dataclass(frozen=True, slots=True)
class EdgeTerms:
    """One edge in one size: stitches from the centre at the start and after each run; what each run casts off at once and
    by how much each of its steps goes (no terms where it does not)."""

    start: Terms
    after: tuple[Terms, ...]
    cast_off: tuple[Terms, ...]
    step: tuple[Terms, ...]

    def before(self, run: int) -> Terms:
        """Stitches from the centre at the beginning of run number `run`."""
        return self.after[run - 1] if run else self.start


@dataclass(frozen=True, slots=True)
class OpeningTerms:
    """Stitches of half the opening's width and flat part, and pairs of rows of its depth."""

    half: Terms
    flat: Terms
    depth: Terms


@dataclass(frozen=True, slots=True)
class PieceTerms:
    """A piece in one size. `rows` are pairs of rows up to each level; the first level has no terms: it is 0."""

    left: EdgeTerms
    right: EdgeTerms
    rows: Mapping[str, Terms]
    openings: tuple[OpeningTerms, ...]

    def edge(self, side: str) -> EdgeTerms:
        """The edge at that side."""
        return self.left if side == "left" else self.right


Heights = dict[tuple[str, tuple[float, ...], str], tuple[Terms, ...]]
"""(level, heights, fabric) to its terms per size: levels alike in all three share their rows."""


def piece_terms(draft: Draft, design: Design, piece: Piece, heights: Heights) -> tuple[PieceTerms, ...]:
    """The numbers of a piece that is no mirror image, per size; what is wanted of them is written into the draft."""
    sizes = range(len(design.sizes))
    rows = _levels(draft, design, piece, heights)
    left = _edge(draft, design, piece, "left", None)
    right = left if piece.symmetric else _edge(draft, design, piece, "right", left)
    openings = tuple(_opening(draft, design, piece, o) for o in piece.openings)
    _stages(draft, design, piece, rows)
    return tuple(PieceTerms(left[i], right[i], rows[i], tuple(o[i] for o in openings)) for i in sizes)


def _new(draft: Draft, design: Design, piece: Piece, name: str) -> tuple[Terms, ...]:
    return tuple(((draft.variable(f"{piece.name}: {name}", piece.name, i), 1),) for i in range(len(design.sizes)))


def _levels(draft: Draft, design: Design, piece: Piece, heights: Heights) -> tuple[dict[str, Terms], ...]:
    fabric = design.fabric(piece.fabric)
    found: tuple[dict[str, Terms], ...] = tuple({} for _ in design.sizes)
    for number, level in enumerate(piece.levels):
        key = (level.name, level.height, piece.fabric)
        if number == 0:
            terms: tuple[Terms, ...] = tuple(() for _ in design.sizes)
        elif key in heights:
            terms = heights[key]
        else:
            terms = heights[key] = _new(draft, design, piece, f"rows to {level.name}")
            alike = tuple(p.name for p in design.pieces if any((x.name, x.height, p.fabric) == key for x in p.levels))
            want(
                draft,
                Quantity(
                    f"the height of `{level.name}` of the {piece.name}",
                    alike,
                    level.origin,
                    terms,
                    2,
                    tuple(h * fabric.rows_per_cm for h in level.height),
                    level.height,
                    "rows",
                    (2.0,) * len(design.sizes),
                    f"`{level.name}` of the {piece.name} is {{cm}} up",
                    f"`{level.name}` of the {piece.name} cannot be {{cm}} up",
                    HIDDEN if level.name in {w.from_level for w in piece.wedges} else 1.0,
                ),
            )
        for i, of_size in enumerate(found):
            of_size[level.name] = terms[i]
    return found


def _stages(draft: Draft, design: Design, piece: Piece, rows: Sequence[Mapping[str, Terms]]) -> None:
    """The rows between two levels are wanted for themselves, not as what two rounded levels leave between them: an armhole
    meets its sleeve, and a held slope equally high in all sizes gets the same steps in all."""
    per_cm = design.fabric(piece.fabric).rows_per_cm
    slopes = {wedge.from_level for wedge in piece.wedges}
    for low, high in pairwise(piece.levels):
        if low is piece.levels[0]:
            continue
        cm = tuple(h - b for h, b in zip(high.height, low.height, strict=True))
        held = low.name in slopes and high is piece.levels[-1]
        what = f"`{low.name}` to `{high.name}` of the {piece.name}"
        want(
            draft,
            Quantity(
                f"the rows from {what}",
                (piece.name,),
                high.origin,
                tuple(total((r[high.name], 1), (r[low.name], -1)) for r in rows),
                2,
                tuple(c * per_cm for c in cm),
                cm,
                "rows",
                (3.0,) * len(design.sizes),
                f"it is {{cm}} from {what}",
                f"it cannot be {{cm}} from {what}",
                STEADY if held else 1.0,
                Kind.BETWEEN,
            ),
        )


def _edge(draft: Draft, design: Design, piece: Piece, side: str, beside: tuple[EdgeTerms, ...] | None) -> tuple[EdgeTerms, ...]:
    """One edge; of a symmetric piece it stands for both. `beside` is the other edge: the two begin equally far out."""
    per_cm = design.fabric(piece.fabric).stitches_per_cm
    alike = piece.symmetric
    factor = 2 if alike else 1
    count = len(design.sizes)
    position = [w / 2 for w in piece.start_width]
    if beside is None:
        start = _new(draft, design, piece, "start")
        wide = tuple(w * per_cm for w in piece.start_width)
        what = f"the start of the {piece.name}"
        says = (f"the {piece.name} starts {{cm}} wide", f"the {piece.name} cannot start {{cm}} wide")
        want(
            draft,
            Quantity(what, (piece.name,), piece.origin, start, 2, wide, piece.start_width, "st", (2.0,) * count, says[0], says[1]),
        )
    else:
        start = tuple(e.start for e in beside)
    now = start
    after: list[tuple[Terms, ...]] = []
    casts: list[tuple[Terms, ...]] = []
    steps: list[tuple[Terms, ...]] = []
    nothing: tuple[Terms, ...] = tuple(() for _ in design.sizes)
    for run in piece.left if side == "left" else piece.right:
        position = [p + c for p, c in zip(position, run.change, strict=True)]
        if any(run.change):
            place = f"`{run.to_level}`" if alike else f"`{run.to_level}` on the {side}"
            now = _new(draft, design, piece, f"{'width' if alike else side} at {run.to_level}")
            cm = tuple(factor * p for p in position)
            # Steps are equal, so each of them may be off by half a stitch.
            off = factor + factor * run.steps / 2
            reach = "wide" if alike else "from the centre"
            want(
                draft,
                Quantity(
                    f"the {'width' if alike else 'edge'} of the {piece.name} at {place}",
                    (piece.name,),
                    run.origin,
                    now,
                    factor,
                    tuple(c * per_cm for c in cm),
                    cm,
                    "st",
                    (float(off),) * count,
                    f"the {piece.name} is {{cm}} {reach} at {place}",
                    f"the {piece.name} cannot be {{cm}} {reach} at {place}",
                ),
            )
        after.append(now)
        casts.append(_cast_off(draft, design, piece, run, per_cm) if any(run.cast_off) else nothing)
        steps.append(_new(draft, design, piece, f"steps to {run.to_level}") if run.path == "steps" and any(run.change) else nothing)
    return tuple(
        EdgeTerms(start[i], tuple(a[i] for a in after), tuple(c[i] for c in casts), tuple(s[i] for s in steps))
        for i in range(count)
    )


def _cast_off(draft: Draft, design: Design, piece: Piece, run: EdgeRun, per_cm: float) -> tuple[Terms, ...]:
    terms = _new(draft, design, piece, f"cast off before {run.to_level}")
    want(
        draft,
        Quantity(
            f"the cast-off of the {piece.name} before `{run.to_level}`",
            (piece.name,),
            run.origin,
            terms,
            1,
            tuple(c * per_cm for c in run.cast_off),
            run.cast_off,
            "st",
            (1.0,) * len(design.sizes),
            f"the edge of the {piece.name} to `{run.to_level}` begins with {{cm}} cast off",
            f"the edge of the {piece.name} to `{run.to_level}` cannot begin with {{cm}} cast off",
            LESSER,
        ),
    )
    return terms


def _opening(draft: Draft, design: Design, piece: Piece, opening: Opening) -> tuple[OpeningTerms, ...]:
    fabric = design.fabric(piece.fabric)
    what = f"the {opening.name} of the {piece.name}"

    def quantity(
        name: str, cm: tuple[float, ...], per_cm: float, unit: str, adjective: str, share: float = 1.0
    ) -> tuple[Terms, ...]:
        terms = _new(draft, design, piece, f"{opening.name} {name}")
        want(
            draft,
            Quantity(
                f"the {name} of {what}",
                (piece.name,),
                opening.origin,
                terms,
                2,
                tuple(c * per_cm for c in cm),
                cm,
                unit,
                (2.0,) * len(design.sizes),
                f"{what} is {{cm}} {adjective}",
                f"{what} cannot be {{cm}} {adjective}",
                share,
            ),
        )
        return terms

    half = quantity("width", opening.width, fabric.stitches_per_cm, "st", "wide")
    depth = quantity("depth", opening.depth, fabric.rows_per_cm, "rows", "deep")
    if opening.flat == opening.width:
        flat = half
    elif any(opening.flat):
        flat = quantity("flat part", opening.flat, fabric.stitches_per_cm, "st", "flat at its middle", LESSER)
    else:
        flat = tuple(() for _ in design.sizes)
    return tuple(OpeningTerms(half[i], flat[i], depth[i]) for i in range(len(design.sizes)))
