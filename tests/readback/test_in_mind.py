"""Words that lean on what a knitter has in mind: refused where it is not so."""

from __future__ import annotations

import pytest

from tests.in_english import read_back_all
from walewright.report.english import in_english

START = "Bring needles L 5 to R 5 to working position: 10 sts. Take the carriage to the right without knitting."


def told(line: str) -> str:
    """Why the words are refused; nothing if they are read."""
    text = f"Sizes M\n\nBack\n====\n\n[ ] {START}\n[ ] {line}\n"
    _, faults = read_back_all(text)
    return "; ".join(in_english(f).message for f in faults)


@pytest.mark.parametrize(
    ("line", "why"),
    [
        ("Thread wool; carriage at tension 4. Carriage at tension 6, the yarn as before.", ""),
        ("Carriage at tension 6, the yarn as before.", "no yarn is threaded"),
        ("Carriage at tension 6, 2 numbers looser than tension 4, the yarn as before.", "no yarn is threaded"),
        ("At the left end hold 2 sts. At the left end hold 3 more sts. 5 sts in work, 5 held, RC 0, COR.", ""),
        ("At the left end hold 3 more sts.", "no needle is held at the left"),
        ("At the left end hold 2 sts. 7 sts in work, 3 held, RC 0, COR.", "3 stitches should be held, and 2 are"),
        ("Knit to RC 4, crossing at RC 2.", "at RC 2 the charts, stripes or ribs ask for something else than is told"),
        (
            "Knit to RC 4, moving sts every 2 rows from RC 1 to RC 3.",
            "at RC 1 the charts, stripes or ribs ask for something else than is told",
        ),
        ("Knit to RC 4, holding needles at RC 2.", "at RC 2 the charts, stripes or ribs ask for something else than is told"),
        ("[M only: knit 2 rows]. 10 sts, RC 2, COR.", ""),
        ("[L only: knit 2 rows]. 10 sts, RC 0, COR.", "this is for size L, and the text has M"),
    ],
)
def test_what_is_in_mind(line: str, why: str) -> None:
    said = told(line)
    assert why in said if why else not said
