"""Lengths that the simulated bed measured: bobbins of picture knitting, and floats that are too long."""

from __future__ import annotations

from collections.abc import Sequence

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


Wound = tuple[int, tuple[BobbinUse, ...]]
"""A size, by its place, and its bobbins of one piece in order."""


def bobbins(guide: Guide, design: Design, proof: Proof) -> tuple[ListTable, ...]:
    """Of each piece with picture knitting how much of each yarn is wound, where it is on several bobbins, and one line a bobbin."""
    pieces = dict.fromkeys(use.piece for size in proof.sizes for use in size.bobbins)
    tables: list[ListTable | None] = []
    for piece in pieces:
        sized = [tuple(use for use in size.bobbins if use.piece == piece) for size in proof.sizes]
        tables.append(_by_yarn(guide, design, piece, sized))
        groups = _alike(sized)
        for group in groups:
            names = tuple(design.sizes[place] for place, _ in group) if len(groups) > 1 else ()
            tables.append(_bobbins(guide, design, piece, group, names))
    return tuple(table for table in tables if table is not None)


def _alike(sized: Sequence[tuple[BobbinUse, ...]]) -> list[list[Wound]]:
    """The sizes that have bobbins, in groups of those whose bobbins are wound for the same blocks: only there is a line of a
    table one bobbin in all of them."""
    groups: dict[tuple[tuple[str, str, int], ...], list[Wound]] = {}
    for place, uses in enumerate(sized):
        if uses:
            groups.setdefault(_blocks(uses), []).append((place, uses))
    return list(groups.values())


def _blocks(uses: tuple[BobbinUse, ...]) -> tuple[tuple[str, str, int], ...]:
    """Of each bobbin its picture, its yarn, and how many rows before its own others begin on."""
    rows = sorted({use.row for use in uses})
    return tuple((use.chart, use.yarn, rows.index(use.row)) for use in uses)


def _bobbins(guide: Guide, design: Design, piece: str, group: Sequence[Wound], names: tuple[str, ...]) -> ListTable:
    made = []
    for number, uses in enumerate(zip(*(of_size for _, of_size in group), strict=True), start=1):
        places = (_block(guide, uses), _begins(guide, uses), _ends(guide, uses))
        lengths = (guide.decimal(f"{use.metres:.1f}") for use in uses)
        made.append((str(number), sentence(yarn_named(design, uses[0].yarn).label), *places, *lengths))
    columns = ("bobbin", "yarn", "begins-on", "counter", "last-row")
    sizes = [design.sizes[place] for place, _ in group]
    heads = (*(guide.say(f"bobbins/{column}") for column in columns), *_metres(guide, sizes))
    title = guide.say("bobbins/sizes", piece=name_of(piece), sizes=names) if names else guide.say("bobbins", piece=name_of(piece))
    return ListTable(title, heads, tuple(made))


def _by_yarn(guide: Guide, design: Design, piece: str, sized: Sequence[tuple[BobbinUse, ...]]) -> ListTable | None:
    """How many bobbins each yarn is wound on, and how much of it on all together; None where no yarn is wound on several."""
    made = []
    several = False
    for yarn in dict.fromkeys(use.yarn for uses in sized for use in uses):
        wound = [[use.metres for use in uses if use.yarn == yarn] for uses in sized]
        several |= any(len(of_size) > 1 for of_size in wound)
        lengths = (guide.decimal(f"{sum(of_size):.1f}") if of_size else "–" for of_size in wound)
        count = graded([str(len(of_size)) for of_size in wound])
        made.append((sentence(yarn_named(design, yarn).label), count, *lengths))
    if not several:
        return None
    heads = (guide.say("bobbins/yarn"), guide.say("bobbins/how-many"), *_metres(guide, design.sizes))
    return ListTable(guide.say("bobbins/by-yarn", piece=name_of(piece)), heads, tuple(made))


def _metres(guide: Guide, sizes: Sequence[str]) -> tuple[str, ...]:
    return tuple(guide.say("bobbins/metres", size=s.replace(" ", NARROW)) for s in sizes)


def _block(guide: Guide, uses: Sequence[BobbinUse]) -> str:
    """The needles of a block's first row, in the order of the sizes, what is alike said once."""
    first, last = graded([use.first for use in uses]), graded([use.last for use in uses])
    return first if first == last else guide.needles(first, last)


def _begins(guide: Guide, uses: Sequence[BobbinUse]) -> str:
    """What the counter reads when the first row with the end is about to be knitted."""
    return guide.say("bobbins/begins", row=graded([str(use.row - 1) for use in uses]))


def _ends(guide: Guide, uses: Sequence[BobbinUse]) -> str:
    """What the counter reads after the last row with the end, and whether it hangs in between, to be taken up again."""
    ends = guide.say("bobbins/ends", row=graded([str(use.last_row) for use in uses]))
    rests = [use.rests for use in uses]
    if not any(rests):
        return ends
    hangs = [guide.listed([_stretch(guide, *at) for at in stretches]) if stretches else "–" for stretches in rests]
    return guide.say("bobbins/hangs", ends=ends, hangs=graded(hangs))


def _stretch(guide: Guide, first: int, last: int) -> str:
    return guide.say("bobbins/stretch", first=first - 1, last=last)


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
