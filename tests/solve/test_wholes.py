"""What is wanted all round and all across: the programme sums up what the bed knits, and the number that suits it is taken."""

from __future__ import annotations

from itertools import product

import pytest

from tests.fit.wardrobe import CARDIGAN, DOLMAN, GORES, HAT, HEAD, PULLOVER, RAGLAN, TUBE, VEST
from walewright import bed, fit, glue, knit, pipeline, solve
from walewright.cli.sources import shipped
from walewright.counted.needles import stitches_at
from walewright.design import Changes
from walewright.design.model import Design, Measured
from walewright.fit.cloth import cloth
from walewright.fit.girths import from_edge_to_edge, measured
from walewright.fit.loops import Walker, walker
from walewright.fit.model import Fit
from walewright.glue.model import GluedSizes
from walewright.pipeline import Outcome
from walewright.solve.algebra.programme import Draft
from walewright.solve.joins.wholes import _followed, _seams, whole_wishes
from walewright.solve.model import Counts

GRADED = HEAD.replace("sizes one\n    chest 80 cm, to fit", "sizes S M L\n    chest 80 87 95 cm, to fit")

SKIRT = """
piece gore in plain, knit {copies}{odd}
    levels hem 0 cm, low 10 cm, hip 30 cm, waistline 50 cm
    start 24 cm wide with e-wrap
    edges straight to low called side
    edges slope to 20 cm wide at hip called side
    edges slope to between chest / {copies} and chest / {copies} + 3 cm wide at waistline called side
    end cast off
join gore side to gore side, each to the next all round
finished waist round gore waistline, wanted chest + {more} cm
"""

STRIPS = """
piece strip in plain, knit {copies}
    levels hem 0 cm, top 50 cm
    start between chest / {copies} and chest / {copies} + 3 cm wide with e-wrap
    edges straight to top called side
    end cast off
join strip side_right to strip side_left, each to the next
finished width across strip top, wanted chest + 6 cm
"""

APRON = """
piece left in plain
    levels hem 0 cm, top 50 cm
    start 7 cm wide with e-wrap
    edges straight to top called side
    end cast off
piece middle in plain, centre stitch
    levels hem 0 cm, top 50 cm
    start between 30 cm and chest / 2 wide with e-wrap
    edges straight to top called side
    end cast off
piece right in plain
    levels hem 0 cm, top 50 cm
    start 8.5 cm wide with e-wrap
    edges straight to top called side
    end cast off
join left side_right to middle side_left
join middle side_right to right side_left
finished width across middle top, wanted 48.4 cm
"""

TUBES = """
piece front in plain
    levels hem 0 cm, top 40 cm
    start chest / 2 + {more} cm wide with e-wrap
    edges straight to top called side
    end cast off
piece back in plain{odd}
    levels hem 0 cm, top 40 cm
    start chest / 2 + {more} cm wide with e-wrap
    edges straight to top called side
    end cast off
join back side to front side
finished chest_round round back top, wanted chest + {whole} cm
"""


def made(text: str, head: str = GRADED) -> tuple[Design, GluedSizes, Counts, tuple[Walker, ...], Fit]:
    """The garment as the bed knits it, and who measures it."""
    outcome = pipeline._understand(Outcome("small.wale", head + text), shipped(), Changes())
    assert outcome.design is not None, outcome.diagnostics
    design = outcome.design
    glued, apart = glue.glue(design)
    assert glued is not None, apart
    counts, impossible = solve.solve(design, glued)
    assert counts is not None, impossible
    works = [knit.expand(p, design.charts) for p in knit.plan(design, glued, counts)]
    results = [bed.knit(work, pipeline.bed_of(design)) for work in works]
    pairs = enumerate(zip(counts.sizes, results, strict=True))
    walkers = tuple(walker(design, glued.in_size(n), cloth(design.at(n), g, r.fabrics)) for n, (g, r) in pairs)
    return design, glued, counts, walkers, fit.fit(design, glued, counts, results)[0]


SOURCES = {
    "tube": TUBE,
    "vest": VEST,
    "pullover": PULLOVER,
    "raglan": RAGLAN,
    "cardigan": CARDIGAN,
    "dolman": DOLMAN,
    "gores": GORES,
    "hat": HAT,
    "skirt": SKIRT.format(copies=6, odd=", odd or even", more=2),
    "strips": STRIPS.format(copies=5),
    "apron": APRON,
}
FEWEST = {"tube": 2, "vest": 4, "pullover": 4, "raglan": 4, "skirt": 4, "strips": 2, "apron": 4, "hat": 2}
"""Places that are followed at the least, so that there is something to compare."""


@pytest.mark.parametrize("name", SOURCES)
def test_what_is_followed_in_the_programme_is_what_goes_round_the_knitted_garment(name: str) -> None:
    """At every level of every piece: where the programme finds a sum, the bed's girth, or width, is that sum."""
    design, glued, counts, walkers, _ = made(SOURCES[name])
    seams = _seams(design, glued.groups[0])
    found = 0
    for piece in design.pieces:
        for level, kind in product(piece.levels, ("round level", "across level")):
            what = Measured(kind, piece.name, level.name)  # type: ignore[arg-type]
            crossed = _followed(design, seams, what)
            if crossed is None:
                continue
            for size, own in enumerate(walkers):
                sized = [counts.sizes[size].piece(name) for name, _ in crossed.pieces]
                rows = [p.row(at) for p, (_, at) in zip(sized, crossed.pieces, strict=True)]
                whole = sum(own.cloth.width(p.name, max(row, 1)) or 0.0 for p, row in zip(sized, rows, strict=True))
                whole -= sum(own.cloth.stitch(name) for name in crossed.taken)
                if kind == "round level":
                    girth = measured(design, [own], what)
                    assert girth is not None
                    assert girth.values[0] == pytest.approx(whole)
                else:
                    assert from_edge_to_edge(own, what) == pytest.approx(whole)
                found += 1
    assert found >= FEWEST.get(name, 0)


@pytest.mark.parametrize("copies", [3, 4, 6, 8])
@pytest.mark.parametrize("odd", ["", ", odd or even"])
@pytest.mark.parametrize("more", [0, 1, 3, 6])
def test_a_free_width_is_the_one_that_comes_nearest_to_the_whole(copies: int, odd: str, more: int) -> None:
    """By hand: of all even numbers of stitches within the range, two to a centimetre; each gore loses two to its seams."""
    _, _, counts, _, found = made(SKIRT.format(copies=copies, odd=odd, more=more))
    (beside,) = found.beside
    for size, chest in enumerate((80, 87, 95)):
        gore = counts.sizes[size].piece("gore")
        wide = stitches_at(gore, gore.rows)
        assert beside.wanted[size] == chest + more
        assert beside.knitted[size] == pytest.approx(copies * (wide - 2) / 2)
        assert beside.off[size] == pytest.approx(beside.knitted[size] - beside.wanted[size])
        able = [n for n in range(0, 200, 2) if 2 * chest / copies <= n <= 2 * (chest / copies + 3)]
        best = min(abs(copies * (n - 2) / 2 - (chest + more)) for n in able)
        assert abs(beside.off[size]) <= best + 1e-6


def test_all_across_goes_from_one_free_edge_to_the_other() -> None:
    """Three pieces of 14, an odd number and 17 or 18 stitches, less two at each seam: 48.4 cm are 96.8."""
    _, _, counts, _, found = made(APRON)
    (beside,) = found.beside
    for size in range(3):
        left, middle, right = (counts.sizes[size].piece(name).start for name in ("left", "middle", "right"))
        assert (left, middle % 2) == (14, 1)
        assert beside.knitted[size] == pytest.approx((left + middle + right - 4) / 2)
        assert abs(2 * beside.knitted[size] - 96.8) <= 1


@pytest.mark.parametrize("more", [0.3, 0.6, 0.9, 1.2, 1.6])
def test_of_two_pieces_that_could_be_either_one_gives_way_to_the_whole(more: float) -> None:
    """Each keeps within a stitch of its own width, and no choice of both comes nearer to the whole."""
    text = TUBES.format(more=more, odd=", centre stitch", whole=f"{2 * more - 2:g}")
    _, _, counts, _, found = made(text)
    (beside,) = found.beside
    for size, chest in enumerate((80, 87, 95)):
        wanted = chest + 2 * more
        front, back = (counts.sizes[size].piece(name).start for name in ("front", "back"))
        assert max(abs(front - wanted), abs(back - wanted)) <= 1
        able = [(a, b) for a in range(60, 120, 2) for b in range(61, 121, 2) if max(abs(a - wanted), abs(b - wanted)) <= 1]
        best = min(abs(a + b - 4 - 2 * beside.wanted[size]) for a, b in able)
        assert abs(front + back - 4 - 2 * beside.wanted[size]) == pytest.approx(best)


def test_nothing_is_wished_for_where_nothing_is_wanted() -> None:
    plain = TUBES.format(more=0.6, odd="", whole=0).split("finished")[0]
    design, glued, _, _, found = made(plain)
    draft = Draft()
    whole_wishes(draft, design, {}, glued)
    assert (draft.wishes, found.beside) == ([], ())
