"""Lengths that the simulated bed measured: bobbins of picture knitting, and floats that are too long."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from walewright.design.model import Design
from walewright.figures.measures import name_of
from walewright.figures.yarns import yarn_named
from walewright.guide.model import Guide
from walewright.guide.numbers import graded, sentence
from walewright.proof.model import BobbinUse, FloatFound, Proof
from walewright.sheet.model import ListTable

MOST = 8
"""Rows of one float that are named."""

NARROW = "\N{NO-BREAK SPACE}"
"""Keeps the name of a size in one line of a narrow column."""


def bobbins(guide: Guide, design: Design, proof: Proof) -> tuple[ListTable, ...]:
    """A table for each piece with picture knitting: one line an end of yarn, its length a size."""
    found: dict[str, dict[int, list[BobbinUse | None]]] = {}
    for place, size in enumerate(proof.sizes):
        for use in size.bobbins:
            rows = found.setdefault(use.piece, {})
            rows.setdefault(use.number, [None] * len(proof.sizes))[place] = use
    tables = ((_by_yarn(guide, design, piece, rows), _bobbins(guide, design, piece, rows)) for piece, rows in found.items())
    return tuple(table for pair in tables for table in pair if table is not None)


def _bobbins(guide: Guide, design: Design, piece: str, rows: dict[int, list[BobbinUse | None]]) -> ListTable:
    made = []
    for number, uses in sorted(rows.items()):
        some = next(u for u in uses if u is not None)
        places = (_block(guide, uses), _begins(guide, uses), _ends(guide, uses))
        lengths = (guide.decimal(f"{u.metres:.1f}") if u is not None else "–" for u in uses)
        made.append((str(number), sentence(yarn_named(design, some.yarn).label), *places, *lengths))
    columns = ("bobbin", "yarn", "begins-on", "counter", "last-row")
    heads = (*(guide.say(f"bobbins/{column}") for column in columns), *_metres(guide, design))
    return ListTable(guide.say("bobbins", piece=name_of(piece)), heads, tuple(made))


def _by_yarn(guide: Guide, design: Design, piece: str, rows: Mapping[int, Sequence[BobbinUse | None]]) -> ListTable | None:
    """How many bobbins each yarn is wound on, and how much of it on all together; None where no yarn is wound on several."""
    found: dict[str, list[Sequence[BobbinUse | None]]] = {}
    for _, uses in sorted(rows.items()):
        found.setdefault(next(u.yarn for u in uses if u is not None), []).append(uses)
    if all(len(several) < 2 for several in found.values()):
        return None
    made = []
    for yarn, several in found.items():
        by_size = [[use for use in of_size if use is not None] for of_size in zip(*several, strict=True)]
        count = graded([str(len(of_size)) for of_size in by_size])
        lengths = (guide.decimal(f"{sum(use.metres for use in of_size):.1f}") for of_size in by_size)
        made.append((sentence(yarn_named(design, yarn).label), count, *lengths))
    heads = (guide.say("bobbins/yarn"), guide.say("bobbins/how-many"), *_metres(guide, design))
    return ListTable(guide.say("bobbins/by-yarn", piece=name_of(piece)), heads, tuple(made))


def _metres(guide: Guide, design: Design) -> tuple[str, ...]:
    return tuple(guide.say("bobbins/metres", size=s.replace(" ", NARROW)) for s in design.sizes)


def _block(guide: Guide, uses: list[BobbinUse | None]) -> str:
    """The needles of a block's first row, in the order of the sizes, what is alike said once."""
    first, last = (_said([str(getattr(u, end)) if u is not None else "–" for u in uses]) for end in ("first", "last"))
    return first if first == last else guide.needles(first, last)


def _begins(guide: Guide, uses: list[BobbinUse | None]) -> str:
    """What the counter reads when the first row with the end is about to be knitted."""
    return guide.say("bobbins/begins", row=_said([str(u.row - 1) if u is not None else "–" for u in uses]))


def _ends(guide: Guide, uses: list[BobbinUse | None]) -> str:
    """What the counter reads after the last row with the end, and whether it hangs in between, to be taken up again."""
    ends = guide.say("bobbins/ends", row=_said([str(u.last_row) if u is not None else "–" for u in uses]))
    rests = [u.rests for u in uses if u is not None]
    if not any(rests):
        return ends
    hangs = [guide.listed([_stretch(guide, *at) for at in stretches]) if stretches else "–" for stretches in rests]
    return guide.say("bobbins/hangs", ends=ends, hangs=_said(hangs))


def _stretch(guide: Guide, first: int, last: int) -> str:
    return guide.say("bobbins/stretch", first=first - 1, last=last)


def _said(found: list[str]) -> str:
    """One figure where all sizes that have it agree: the lengths beside it show which have it not."""
    there = set(found) - {"–"}
    return there.pop() if len(there) == 1 else graded(found)


def floats(guide: Guide, design: Design, proof: Proof) -> ListTable | None:
    """The long floats of all sizes, alike ones of several rows or sizes in one line; None without any."""
    found: dict[tuple[str, str, str, str, int], list[tuple[FloatFound, str]]] = {}
    for size, name in zip(proof.sizes, design.sizes, strict=True):
        for one in size.floats:
            found.setdefault((one.piece, one.yarn, one.first, one.last, one.stitches), []).append((one, name))
    rows = []
    for (piece, yarn, first, last, stitches), ones in found.items():
        cm = max(one.cm for one, _ in ones)
        names = list(dict.fromkeys(name for _, name in ones))
        told = [] if len(names) == len(design.sizes) else names
        # A row is found by what the counter reads before it, as everywhere on the sheet.
        at = sorted({one.row - 1 for one, _ in ones})
        shown = ", ".join(str(r) for r in at[:MOST])
        if len(at) > MOST:
            shown = guide.say("floats/more", shown=shown, count=len(at) - MOST)
        where = f"{sentence(name_of(piece))}{f' ({guide.listed(told)})' if told else ''}"
        across = guide.say("floats/across", first=first, last=last, stitches=stitches, cm=guide.decimal(f"{cm:.1f}"))
        rows.append((where, sentence(yarn_named(design, yarn).label), shown, across))
    if not rows:
        return None
    heads = tuple(guide.say(f"floats/{column}") for column in ("piece", "yarn", "row", "needles"))
    return ListTable(guide.say("floats"), heads, tuple(rows))
