"""Charts drawn at random, one family of technique each, as the statements of a source. All of them can be knitted by themselves."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from random import Random

MEANINGS = {
    ".": "knit",
    "O": "hole",
    ">": "from left",
    "<": "from right",
    ")": "two from left",
    "(": "two from right",
    "^": "three together",
    "-": "purl",
    "t": "tuck",
    "v": "slip",
    "i": "long",
    "H": "ladder",
    "n": "knit in navy",
    "r": "knit in red",
    "1": "cross 1 over 1, left first",
    "2": "cross 2 over 2, right first",
    "3": "cross 3 over 3, left first",
    "4": "cross 3 over 3, right first",
}
"""Symbol to what it means; a source's key has those that are drawn."""

WIDEST = 24


@dataclass(frozen=True, slots=True)
class Drawing:
    """A grid: `rows` from the bottom up, `before` columns once, `repeat` again and again (0: a motif), `after` once."""

    rows: tuple[str, ...]
    before: int
    repeat: int
    after: int
    picture: bool = False

    def source(self, name: str) -> str:
        """The `chart` statement."""
        drawn = dict.fromkeys("".join(self.rows))
        lines = [f"chart {name}", *(f"    key {symbol} {MEANINGS[symbol]}" for symbol in drawn)]
        lines += [f"    | {' '.join(row)} |" for row in reversed(self.rows)]
        if self.repeat:
            lines.append(f"    repeat {self.repeat} stitches" + (f", after {self.before} stitches" if self.before else ""))
        lines += ["    colours laid in blocks"] * self.picture
        return "\n".join(lines)


def drawing(chance: Random, family: str, *, motif: bool, borders: bool) -> Drawing:
    """A chart of a family: `motif` without a repeat, `borders` with columns beside it."""
    before, after = (chance.randint(0, 3), chance.randint(0, 3)) if borders else (0, 0)
    wide = chance.choice((chance.randint(1, 12), chance.randint(1, WIDEST)))
    while True:
        rows, across = _FAMILIES[family](chance, wide)
        if set("".join(rows)) != {"."}:
            break
    wide = across
    if chance.random() < 0.8:
        rows.insert(0, _first(rows, wide))
    if family != "cable" and not (before or after or motif) and chance.random() < 0.5:
        # What belongs together comes to lie over the border of two repeats.
        turn = chance.randrange(wide)
        rows = [row[turn:] + row[:turn] for row in rows]
    if motif:
        return Drawing(tuple(f".{row}." for row in (*rows, "." * wide)), 0, 0, 0, family == "blocks")
    border = "-" if family == "cable" and chance.random() < 0.5 else "."
    framed = tuple(border * before + row + border * after for row in rows)
    return Drawing(framed, before, wide, after, family == "blocks")


def _first(rows: list[str], wide: int) -> str:
    """A row below the others that can be begun on waste yarn: knit, and columns of purl begin there already."""
    return "".join("-" if all(row[x] == "-" for row in rows) else "." for x in range(wide))


Grid = tuple[list[str], int]


def _empty(wide: int, high: int) -> list[list[str]]:
    return [["."] * wide for _ in range(high)]


def _made(cells: list[list[str]]) -> Grid:
    return ["".join(row) for row in cells], len(cells[0])


# ----------------------------------------------------------------- families


def _lace(chance: Random, wide: int) -> Grid:
    """Holes with their decreases, to the left, to the right and to both sides, by one prong to three; a plain row follows each."""
    rows: list[str] = []
    wide = max(wide, 3)
    for _ in range(chance.randint(1, 5)):
        row, room = "", wide
        while room > 2:
            group = _move(chance)
            if chance.random() < 0.4 or len(group) + 1 > room:
                group = "."
            row += group if group == "." else f"{group}."
            room = wide - len(row)
        rows += [row.ljust(wide, "."), "." * wide]
    return rows, wide


def _move(chance: Random) -> str:
    passed = chance.choice((0, 0, 0, 1, 2))
    return chance.choice(
        (f"O{'>' * passed})", f"({'<' * passed}O", f"O{'>' * passed}^{'<' * chance.choice((0, passed))}O", f"O{'>' * passed}).(O")
    )


def _tuck(chance: Random, wide: int) -> Grid:
    """Needles held for a row to four, none of them beside another."""
    wide = max(wide, 2)
    cells = _empty(wide, chance.randint(2, 10))
    for x in range(0, wide - 1, chance.choice((2, 2, 3))):
        _runs(chance, cells, x, "t", 4)
    return _made(cells)


def _slip(chance: Random, wide: int) -> Grid:
    cells = _empty(wide, chance.randint(2, 8))
    for x in range(wide):
        if chance.random() < 0.5:
            _runs(chance, cells, x, "v", 2)
    return _made(cells)


def _runs(chance: Random, cells: list[list[str]], x: int, symbol: str, most: int) -> None:
    """Fills a column with runs of at most so many rows, a row of knit above each; the last row is knit."""
    y = chance.randrange(len(cells))
    while y < len(cells) - 1:
        for _ in range(chance.randint(1, min(most, len(cells) - 1 - y))):
            cells[y][x] = symbol
            y += 1
        y += chance.randint(1, 3)


def _long(chance: Random, wide: int) -> Grid:
    rows = ["".join(chance.choice(".ii") for _ in range(wide)), "." * wide] * chance.randint(1, 2)
    return rows, wide


def _purl(chance: Random, wide: int) -> Grid:
    """Columns and ridges."""
    cells = [[chance.choice("..-") for _ in range(wide)] for _ in range(chance.randint(1, 10))]
    for x in range(wide):
        if chance.random() < 0.2:
            for row in cells:
                row[x] = "-"
    if chance.random() < 0.3:
        cells[chance.randrange(len(cells))] = ["-"] * wide
    return _made(cells)


def _ladder(chance: Random, wide: int) -> Grid:
    """Ladders of two rows and more, a plain stitch beside each, a plain row above."""
    wide = max(wide, 2)
    cells = _empty(wide, chance.randint(3, 12))
    for x in range(0, wide - 1, chance.choice((2, 3, 4))):
        low = chance.randrange(len(cells) - 2)
        for y in range(low, chance.randint(low + 2, len(cells) - 1)):
            cells[y][x] = "H"
    return _made(cells)


def _floats(chance: Random, wide: int) -> Grid:
    """One other yarn in a row, and a stitch of the fabric's own."""
    wide = max(wide, 2)
    cells = _empty(wide, chance.randint(1, 10))
    for row in cells:
        other = chance.choice("nnr")
        for x in range(wide):
            row[x] = chance.choice((other, "."))
        row[chance.randrange(wide)] = "."
    return _made(cells)


def _blocks(chance: Random, wide: int) -> Grid:
    cells = _empty(wide, chance.randint(1, 10))
    for row in cells:
        x = chance.randint(0, 2)
        while x < wide:
            symbol = chance.choice(".nr")
            end = min(wide, x + chance.randint(1, 6))
            row[x:end] = symbol * (end - x)
            x = end
    return _made(cells)


def _cable(chance: Random, wide: int) -> Grid:
    """Cords between columns of purl, crossed once or twice."""
    cords = [chance.choice("1234") for _ in range(2 if wide > 12 else 1)]
    high = chance.randint(4, 10)
    at = {n: chance.sample(range(2, high), chance.choice((1, 1, 2))) for n in range(len(cords))}
    gap = "-" * chance.randint(1, 2)
    rows = []
    for y in range(high):
        parts = [(cord if y in at[n] else ".") * (2 * min(int(cord), 3)) for n, cord in enumerate(cords)]
        rows.append(gap + gap.join(parts) + gap)
    return rows, len(rows[0])


_FAMILIES: dict[str, Callable[[Random, int], Grid]] = {
    "lace": _lace,
    "tuck": _tuck,
    "slip": _slip,
    "long": _long,
    "purl": _purl,
    "ladder": _ladder,
    "floats": _floats,
    "blocks": _blocks,
    "cable": _cable,
}
FAMILIES = (*_FAMILIES, "stripes")
