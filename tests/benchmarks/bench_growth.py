"""How time grows with what is written. Run on demand: `python -m tests.benchmarks.bench_growth [KIND ...]`.

For each kind a source with n, 2n and 4n of it is compiled, refused or proven; printed are the seconds and the exponents of
both doublings: 1 is linear, 2 quadratic. What is refused early for being too many is marked with its code.
"""

from __future__ import annotations

import math
import sys
import time
from collections.abc import Callable
from itertools import pairwise

from walewright import pipeline
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.report.render import terminal

HEAD = """pattern "Growth"

sizes      one
    length 40 cm

machine standard

yarn wool "wool", 100 g = 400 m

fabric plain
    stocking stitch in wool at tension 6
    swatch 40 stitches by 60 rows = 14 cm by 15 cm, 10 g
"""

PIECE = """
piece {name} in plain
    levels {levels}
    start {width} cm wide with e-wrap
{body}
    end cast off

free {name} side
"""


def _piece(name: str = "scarf", levels: str = "bottom 0 cm, top length", body: str = "", width: str = "20") -> str:
    return PIECE.format(name=name, levels=levels, width=width, body=body or "    edges straight to top called side")


def _lets(n: int, before: str) -> str:
    chained = "\n".join(f"let a{i} = {before.format(i=i, j=i - 1, k=i + 1)}" for i in range(1, n + 1))
    return f"{HEAD}\nlet a0 = 20 cm\nlet a{n + 1} = 20 cm\n{chained}\n{_piece()}"


def lets(n: int) -> str:
    """Definitions, each from the one before."""
    return _lets(n, "a{j} + 0 mm")


def lets_before(n: int) -> str:
    """Definitions, each from the one after."""
    return _lets(n, "a{k} + 0 mm")


def lets_of_all(n: int) -> str:
    """Definitions that each name one and the same that comes last, and a ring of all of them."""
    return f"{HEAD}\n" + "\n".join(f"let a{i} = a{(i + 1) % n} + a{n - 1}" for i in range(n)) + f"\n{_piece()}"


def unknown(n: int) -> str:
    """Names that nothing has, among as many that something has."""
    return f"{HEAD}\n" + "\n".join(f"let stitch{i} = strech{i} + 1 mm" for i in range(n)) + f"\n{_piece()}"


def unknown_again(n: int) -> str:
    """One name that nothing has, again and again."""
    return f"{HEAD}\n" + "\n".join(f"let a{i} = lenght + 1 mm" for i in range(n)) + f"\n{_piece()}"


def unread(n: int) -> str:
    """Lines that cannot be read, each another."""
    return f"{HEAD}{_piece()}" + "\n".join(f"join{i} scarf side too scarf side" for i in range(n)) + "\n"


def shapes(n: int) -> str:
    """Shapes, each used once by a piece of its own."""
    made = "\n".join(f"shape s{i}\n    let w{i} = 1 cm\n    edges straight to top called side" for i in range(n))
    return f"{HEAD}\n{made}\n" + "".join(_piece(f"p{i}", "bottom 0 cm, top 5 cm", f"    use s{i}", "5") for i in range(min(n, 8)))


def shapes_within(n: int) -> str:
    """Shapes that use two shapes each, so deep."""
    made = "\n".join(f"shape s{i}\n    use s{i + 1}\n    use s{i + 1}" for i in range(n))
    body = "    use s0\n    edges straight to top called side"
    return f'{HEAD}\n{made}\nshape s{n}\n    note "-"\n{_piece(body=body)}'


def levels(n: int) -> str:
    """Levels of a piece, with an edge to each."""
    stack = ["bottom 0 cm", *(f"l{i} {(i + 1) * 0.5:g} cm" for i in range(n - 1)), "top 200 cm"]
    rows = "\n".join(f"    levels {stack[0]}, {', '.join(stack[1:])}" for _ in (1,))
    body = "\n".join(f"    edges straight to l{i}" for i in range(n - 1)) + "\n    edges straight to top called side"
    return HEAD + _piece(levels=rows.strip().removeprefix("levels "), body=body)


def sizes(n: int) -> str:
    """Sizes of one garment."""
    head = HEAD.replace("sizes      one", "sizes " + " ".join(f"s{i}" for i in range(n)))
    head = head.replace("length 40 cm", "length " + " ".join(f"{40 + i / 4:g}" for i in range(n)) + " cm")
    return head + _piece()


def pieces(n: int) -> str:
    """Pieces, each for itself."""
    return HEAD + "".join(_piece(f"p{i}", "bottom 0 cm, top 10 cm", width="10") for i in range(n))


def pieces_joined(n: int) -> str:
    """Pieces, each joined to the next."""
    joins = "\n".join(f"join p{i} side_right to p{i + 1} side_left" for i in range(n - 1))
    made = "".join(_piece(f"p{i}", "bottom 0 cm, top 10 cm", width="10").split("\nfree")[0] + "\n" for i in range(n))
    return f"{HEAD}{made}\n{joins}\nfree p0 side_left\nfree p{n - 1} side_right\n"


def chart_rows(n: int) -> str:
    """Rows of a chart."""
    chart = "\n".join(("    | . . O / . . . . |", "    | . . . . . . . . |")[i % 2] for i in range(n))
    keys = "    key . knit\n    key O hole\n    key / two from left"
    swatch = "    swatch 40 stitches by 60 rows = 14 cm by 15 cm, 10 g\n"
    fabric = f"fabric lace\n    chart holes in wool at tension 6, 1 edge stitch\n{swatch}"
    return f"{HEAD}\nchart holes\n{keys}\n{chart}\n\n{fabric}{_piece().replace('in plain', 'in lace')}"


def rows(n: int) -> str:
    """Rows of a piece: so many centimetres."""
    return HEAD.replace("40 cm", f"{n} cm") + _piece()


def wide(n: int) -> str:
    """Stitches of a piece: so many centimetres."""
    return HEAD + _piece(width=str(n))


def long_line(n: int) -> str:
    """Characters of one line."""
    return f"{HEAD}\nlet a = {' + '.join(['1 mm'] * n)}\n{_piece()}"


def notes(n: int) -> str:
    """Notes of a piece."""
    return HEAD + _piece(body="\n".join([f'    note "note {i}"' for i in range(n)] + ["    edges straight to top called side"]))


KINDS: dict[Callable[[int], str], int] = {
    lets: 500,
    lets_before: 500,
    lets_of_all: 500,
    unknown: 250,
    unknown_again: 500,
    unread: 250,
    shapes: 250,
    shapes_within: 4,
    levels: 16,
    sizes: 10,
    pieces: 10,
    pieces_joined: 10,
    chart_rows: 50,
    rows: 90,
    wide: 15,
    long_line: 30,
    notes: 200,
}
"""What grows, and from how many."""


def taken(text: str) -> tuple[float, str]:
    """Seconds of this processor to compile the source and render what is said of it, and what came of it."""
    data = shipped()
    begun = time.process_time()
    outcome = pipeline.compile(text, "growth.wale", data, Changes())
    terminal(outcome.diagnostics, {"growth.wale": text})
    errors = [d.code for d in outcome.diagnostics if d.severity.name == "ERROR"]
    return time.process_time() - begun, "proven" if outcome.proven else errors[0] if errors else "nothing"


def main() -> None:
    """Time each kind and print its exponents."""
    wanted = set(sys.argv[1:])
    taken(HEAD + _piece())
    for make, n in KINDS.items():
        if wanted and make.__name__ not in wanted:
            continue
        found = [taken(make(n * by)) for by in (1, 2, 4)]
        seconds = [s for s, _ in found]
        exponents = [math.log2(b / a) for a, b in pairwise(seconds)]
        shown = ", ".join(f"{n * by} {s:.3f} s {what}" for by, (s, what) in zip((1, 2, 4), found, strict=True))
        print(f"{make.__name__:14} exponents {exponents[0]:5.2f} {exponents[1]:5.2f}   {shown}", flush=True)


if __name__ == "__main__":
    main()
