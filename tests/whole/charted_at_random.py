"""Garments with a patterned fabric, drawn at random as source texts: beds, swatches, shapes, edgings and charts of every family."""

from __future__ import annotations

from dataclasses import dataclass
from random import Random

from tests.whole.beds_at_random import bed_facts, lacking
from tests.whole.charts_at_random import FAMILIES, Drawing, drawing

BEDS = {"fine": (34, 48), "standard": (28, 40), "mid": (20, 28), "bulky": (13, 18)}
"""Stitches and rows to 10 cm, about, of what is knitted on a bed."""
FIRST = ("folded", "picot", "mock rib 1 by 1", "mock rib 2 by 1", "rolled", "")
"""Kinds of edging that can be knitted first; an empty one is a latched rib."""
AFTER = ("folded", "picot", "rolled", "facing", "chained", "")
FOLDED = ("folded", "picot", "mock rib 1 by 1", "mock rib 2 by 1")


@dataclass(frozen=True, slots=True)
class Charted:
    """A source and what was drawn of it. `area`: "all" of the piece, a "zone" of it, a "panel" or a "motif". `fit`: "whole",
    "centred" or "balanced". `offset` stitches right of the centre, about `wide` of a panel given by its width (else 0)."""

    text: str
    family: str
    area: str
    fit: str
    edge: int
    chart: Drawing | None
    odd: bool
    offset_cm: float
    per_cm: float
    """Stitches of the ground to a cm."""
    mirrored: bool = False
    """Whether the front is the back's mirror image."""


def charted(chance: Random) -> Charted:
    """A garment of one or two pieces."""
    return _Garment(chance).made()


class _Garment:
    """Draws in the order in which things depend on each other."""

    def __init__(self, chance: Random) -> None:
        self.chance = chance
        self.bed = chance.choice(tuple(BEDS))
        stitches, rows = BEDS[self.bed]
        self.per_cm = stitches / 10 * chance.uniform(0.75, 1.3)
        self.rows_per_cm = rows / 10 * chance.uniform(0.75, 1.3)
        self.family = chance.choice(FAMILIES)
        areas = ("all", "zone") if self.family == "stripes" else ("all", "all", "zone", "zone", "panel", "motif")
        self.area = "motif" if self.family == "blocks" and chance.random() < 0.6 else chance.choice(areas)
        self.fit = "whole" if self.area == "panel" else chance.choice(("whole", "whole", "centred", "balanced"))
        borders = self.area in ("all", "zone") and (chance.random() < 0.4 if self.fit == "whole" else chance.random() < 0.03)
        self.chart = None if self.family == "stripes" else drawing(chance, self.family, motif=self.area == "motif", borders=borders)
        self.shape = chance.choice(("straight", "straight", "armholes", "raglan", "flare"))
        self.way = chance.choice((0, 0, 1, 2))
        """Stitches in from the edge, with a tool; 0: at the edge."""
        self.neck = chance.choice(("", "", "round", "v", "square"))
        self.edge = self._edge()
        self.held = self.shape in ("straight", "flare") and chance.random() < 0.3
        self.odd = self._odd()
        self.two = chance.random() < 0.4
        self.top = round(chance.uniform(40, 66) / self.rows_per_cm, 1)
        self.wide = self._wide()
        sizes = chance.choice((1, 1, 2, 3))
        self.grown = [1 + number * chance.uniform(0.03, 0.2) for number in range(sizes)]
        """By size: how much larger than the first one it is."""
        self.offset = 0.0
        self.outline = self._outline()
        """Statements that both pieces have alike."""
        self.edgings: list[str] = []
        self.after: list[str] = []

    # ------------------------------------------------------------- what the chart asks for

    def _edge(self) -> int:
        """Mostly as many as hand work and shaping need; at times any number up to 3."""
        if self.chance.random() < 0.12:
            return self.chance.randint(0, 3)
        shaped = self.shape != "straight" or self.neck in ("round", "v")
        need = (max(self.way, 1) if self.shape != "straight" else 1) + 1 if shaped else 1
        return min(3, need + self.chance.choice((0, 0, 1)))

    def _odd(self) -> bool:
        """Mostly what whole repeats can come to."""
        chart = self.chart
        if self.fit == "whole" and self.area in ("all", "zone") and chart is not None and chart.repeat % 2 == 0:
            return bool((chart.before + chart.after) % 2) != (self.chance.random() < 0.03)
        return self.chance.random() < 0.25

    def _wide(self) -> float:
        """Width in cm that holds a repeat or more."""
        chart = self.chart
        least = 30 if chart is None else len(chart.rows[0]) + 2 * self.edge + 6
        return round(self.chance.uniform(max(least, 24), max(least + 10, 64)) / self.per_cm, 1)

    # ------------------------------------------------------------- the source

    def made(self) -> Charted:
        start = self._start()
        self.pattern = self._pattern()
        pieces = [self._piece("back", start)]
        mirrored = self.two and self.chance.random() < 0.3
        if self.two:
            mirror = f"piece front in {self.fabric}, mirror of back"
            pieces.append(mirror if mirrored else self._piece("front", start))
            self._joined()
        self._bands()
        text = "\n\n".join(part for part in (self._head(), *self.edgings, *pieces, *self.after) if part) + "\n"
        return Charted(text, self.family, self.area, self.fit, self.edge, self.chart, self.odd, self.offset, self.per_cm, mirrored)

    def _head(self) -> str:
        chance = self.chance
        parts = [
            'pattern "Drawn"',
            self._sizes(),
            f"machine {self.bed}{bed_facts(Random(self.per_cm))}{lacking(Random(self.rows_per_cm))}",
            'yarn wool "wool", 100 g = 200 m\nyarn navy "navy wool", 100 g = 200 m\nyarn red "red wool", 100 g = 200 m',
            f"fabric plain\n    stocking stitch in wool at tension 5\n    {self._swatch(1, 1)}",
            f"fabric rib\n    latched rib every {chance.choice(('2nd', '3rd', '4th'))} needle in wool at tension 3\n"
            f"    {self._swatch(1.1, 1.1)}",
        ]
        other = chance.uniform(0.85, 1.2), chance.uniform(0.85, 1.2)
        # A panel lies in the rows of its ground, in its yarn and at its tension.
        tension = "5" if self.area == "panel" else "6"
        if self.chart is not None:
            parts.append(self.chart.source("grid"))
        if self.family == "stripes":
            parts.append(f"fabric patterned\n    {self._stripes()} at tension 6\n    {self._swatch(*other)}")
        elif self.area != "motif":
            fits = {"whole": ", whole repeats", "centred": ", centred", "balanced": ", balanced"}
            edge = f", {self.edge} edge {'stitch' if self.edge == 1 else 'stitches'}" if self.edge else ""
            side = "\n    right side purl" if chance.random() < 0.3 else ""
            # A panel is whole repeats without edge stitches.
            fit = "" if self.area == "panel" else fits[self.fit] + edge
            stitch = f"chart grid in wool at tension {tension}{fit}{side}"
            parts.append(f"fabric patterned\n    {stitch}\n    {self._swatch(*other)}")
        return "\n\n".join(parts)

    def _sizes(self) -> str:
        rows = (
            f"{name} " + " ".join(f"{value * by:.1f}" for by in self.grown)
            for name, value in (("wide", self.wide), ("tall", self.top))
        )
        return "\n    ".join(("sizes " + " ".join("SML"[: len(self.grown)]), *(f"{row} cm" for row in rows)))

    def _stripes(self) -> str:
        rows = [f"{self.chance.choice((1, 2, 2, 3, 4, 6))} rows {yarn}" for yarn in ("wool", "navy", "red", "wool", "navy")]
        return "stripes of " + ", ".join(rows[: self.chance.randint(2, 5)]).replace("1 rows", "1 row")

    def _swatch(self, wider: float, taller: float) -> str:
        across, up = 40 / self.per_cm / wider, 60 / self.rows_per_cm / taller
        return f"swatch 40 stitches by 60 rows = {across:.1f} cm by {up:.1f} cm"

    # ------------------------------------------------------------- edges

    def _start(self) -> str:
        """The start of each piece, and the edging along it."""
        how = self.chance.choice(("first", "first", "after", "none"))
        if how == "none":
            return self.chance.choice(("with e-wrap", "with chain"))
        kind = self.chance.choice(FIRST if how == "first" else AFTER)
        self.edgings.append(f"edging welt in {'plain' if kind else 'rib'}{self._said(kind)}, {self._when(how)}")
        if how == "after" or kind in FOLDED:
            return self.chance.choice(("on waste yarn", "on waste yarn by hand")) + ", with welt"
        return self.chance.choice(("with e-wrap", "with chain")) + ", with welt"

    def _said(self, kind: str) -> str:
        """Depth, kind and tensions of an edging."""
        depth = f", {self.chance.uniform(2, 7) / self.rows_per_cm + 0.3:.1f} cm deep" if kind != "chained" else ""
        fold = ", fold row at tension 8" if kind in ("folded", "facing", *FIRST[2:4]) and self.chance.random() < 0.6 else ""
        inside = ", inside at tension 4" if kind in FOLDED and self.chance.random() < 0.6 else ""
        return depth + (f", {kind}" if kind else "") + fold + inside

    def _when(self, how: str) -> str:
        return "knitted first" if how == "first" else f"added after, cast off {self.chance.choice(('chain', 'sewn'))}"

    def _bands(self) -> None:
        """A band round the neck, or along the rows of a side that is in no join."""
        if self.chance.random() < 0.5 or (self.two and not self.neck):
            return
        kind = self.chance.choice(AFTER)
        self.edgings.append(f"edging border in {'plain' if kind else 'rib'}{self._said(kind)}, {self._when('after')}")
        along = "back neck" if self.neck else self.chance.choice(("back side_left", "back side_right"))
        self.after.append(f"band edge with border along {along}")

    def _joined(self) -> None:
        patterned = self.area == "all" and self.fit == "whole"
        matching = ", matching" if patterned and self.chance.random() < 0.4 else ""
        self.after.append(f"join back side to front side{matching}")
        if self.end == "on waste yarn":
            edge = "shoulder" if self.neck else "end"
            self.after.append(f"join back {edge} to front {edge}, {self.chance.choice(('linked', 'grafted'))}")

    # ------------------------------------------------------------- pieces

    @property
    def end(self) -> str:
        return "on waste yarn" if self.two else "cast off"

    @property
    def fabric(self) -> str:
        return "patterned" if self.area == "all" else "plain"

    def _piece(self, name: str, start: str) -> str:
        lines = [
            f"piece {name} in {self.fabric}" + (", centre stitch" if self.odd else ""),
            "levels hem 0 cm, low tall * 0.15, underarm tall * 0.5, chest tall * 0.7, tip tall * 0.85, top tall",
            f"start wide wide {start}",
            *self.pattern,
            *self.outline,
            f"end {self.end}",
        ]
        return "\n    ".join(lines)

    def _outline(self) -> list[str]:
        lines, chance = self._edges(), self.chance
        if self.neck:
            across = chance.uniform(0.2, 0.35) * (0.5 if self.shape == "raglan" else 1)
            # Deep enough that the edge need not move by more than a stitch a row.
            least = self.wide * across / 2 * self.per_cm / self.rows_per_cm / self.top + 0.03
            deep = chance.uniform(least, max(least, 0.4))
            off = "" if self.neck == "v" else ", cast off"
            lines.append(f"neck wide * {across:.2f} wide, tall * {deep:.2f} deep, {self.neck}{off}")
        if self.held:
            lines.append("shoulders held from tip")
        return lines

    def _edges(self) -> list[str]:
        way = f", fashioned {self.way} in" if self.way else ""
        chance = self.chance
        if self.shape == "armholes":
            path = chance.choice(("curve", "slope"))
            return [
                "edges straight to underarm called side",
                f"edges cast off wide * 0.06 then {path} to wide * 0.78 wide at chest{way} called armhole",
                "edges straight to top called armhole",
            ]
        if self.shape == "raglan":
            return [
                "edges straight to underarm called side",
                f"edges slope to wide * {chance.uniform(0.5, 0.8):.2f} wide at top{way} called raglan",
            ]
        above = [] if self.held else ["edges straight to top called side"]
        if self.shape == "flare":
            return [f"edges slope to wide * {chance.uniform(0.8, 1.2):.2f} wide at tip{way} called side", *above]
        return ["edges straight to tip called side", *above]

    def _pattern(self) -> list[str]:
        chance = self.chance
        if self.area == "zone":
            low, high = sorted(chance.sample(("hem", "low", "underarm", "chest", "tip", "top"), 2), key=_LEVELS.index)
            return [f"fabric patterned from {low} to {high}"]
        if self.area not in ("panel", "motif") or self.chart is None:
            return []
        if self.offset == 0.0 and chance.random() < 0.4:
            self.offset = round(chance.uniform(-0.15, 0.15) * self.wide, 1)
        where = f", {abs(self.offset)} cm {'right' if self.offset > 0 else 'left'} of centre" if self.offset else ""
        if self.area == "motif":
            return [f"motif grid at {chance.choice(('hem', 'low', 'low', 'underarm'))}{where}"]
        room = int(self.wide * 0.6 * self.per_cm) // self.chart.repeat
        low, high = chance.choice((("hem", "top"), ("low", "tip"), ("low", "underarm")))
        if chance.random() < 0.5:
            times = chance.randint(1, max(room, 1))
            return [f"fabric patterned from {low} to {high}, {times} repeat{'s' if times > 1 else ''} wide{where}"]
        return [f"fabric patterned from {low} to {high}, wide * {chance.uniform(0.2, 0.6):.2f} wide{where}"]


_LEVELS = ("hem", "low", "underarm", "chest", "tip", "top")
