"""The page of the shipped charts: each as it is drawn, and a picture of its loops as the bed knitted them.

    python -m tests.docs.stitches

writes it and its pictures anew.
"""

from __future__ import annotations

import re
import sys
from functools import cache
from pathlib import Path

from walewright import sheet, source
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.guide.english import LANGUAGE
from walewright.pipeline import Outcome, compile
from walewright.source import syntax

DOCS = Path(__file__).resolve().parents[2] / "docs"
PAGE, PICTURES = DOCS / "stitches.md", DOCS / "stitches"
CHARTS = tuple(sorted(shipped().charts))

CONTRAST = 'yarn contrast "the other colour", 100 g = {metres} m, shown "#1f5a61"\n'
SWATCH = """pattern "Swatch"

sizes one
    long 5 cm

machine {machine}

yarn wool "wool", 100 g = {metres} m, shown "#d9c9a3"
{contrast}
fabric cloth
    chart {name} in wool at tension 7, whole repeats, 3 edge stitches
    swatch 40 stitches by 60 rows = {width} cm by {height} cm

piece swatch in cloth
    levels hem 0 cm, top long
    start {wide} cm wide with e-wrap
    edges straight to top called side
    end cast off

free swatch side + swatch start + swatch end
"""

HEAD = """# Shipped charts

Stitch patterns that a source uses by name, without drawing them: `chart rope in wool at tension 5`. Each is a file in [patterns/charts/](../patterns/charts/), which another chart can be begun from. They are proven on the simulated bed; what shows is the knit side. Those in two colours lay the second one in a yarn that the source calls `contrast`. Page and pictures are made by `python -m tests.docs.stitches`.
"""  # noqa: E501


def swatch(
    name: str, machine: str = "standard", width: float = 14.3, height: float = 15.0, wide: int = 9, metres: int = 400
) -> str:
    """A source with a swatch in that chart."""
    contrast = CONTRAST.format(metres=metres) if needs_contrast(name) else ""
    return SWATCH.format(name=name, machine=machine, contrast=contrast, width=width, height=height, wide=wide, metres=metres)


def needs_contrast(name: str) -> bool:
    return " in contrast" in shipped().charts[name]


@cache
def knitted(name: str) -> Outcome:
    return compile(swatch(name), "swatch.wale", shipped(), Changes())


def picture(name: str) -> str:
    """The loops of two repeats as an SVG, to a tenth of a millimetre."""
    outcome = knitted(name)
    made = sheet.compose(LANGUAGE, sheet.ProvenPattern(*outcome.result(), outcome.fit), sheet.PageOptions())
    (part,) = made.charts
    assert part.picture is not None
    return re.sub(r"(\d\.\d)\d+", r"\1", sheet.picture(part.picture)) + "\n"


def entry(name: str) -> str:
    text = shipped().charts[name]
    about = text.splitlines()[0].removeprefix("# ")
    (chart,) = (s for s in source.read(f"{name}.wale", text)[0].statements if isinstance(s, syntax.ChartBlock))
    rows = [s for s in chart.body if isinstance(s, syntax.ChartRow)]
    return (
        f"\n## {name}\n\n{about} {len(rows[0].cells)} by {len(rows)}.\n\n![{name}: {about}](stitches/{name}.svg)\n\n"
        f"Source: [{name}.wale](../patterns/charts/{name}.wale).\n"
    )


def page() -> str:
    return HEAD + "".join(entry(name) for name in CHARTS)


def main() -> None:
    PICTURES.mkdir(exist_ok=True)
    for old in PICTURES.glob("*.svg"):
        if old.stem not in CHARTS:
            old.unlink()
    for name in CHARTS:
        (PICTURES / f"{name}.svg").write_text(picture(name), encoding="utf-8")
    PAGE.write_text(page(), encoding="utf-8")
    sys.stdout.write(f"{len(CHARTS)} charts\n")


if __name__ == "__main__":
    main()
