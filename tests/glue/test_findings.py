"""What is said of garments that do not hold together, and the page of each code."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from tests.docs import error_pages
from tests.glue.sewn import HEAD, JACKET, MITTENS, NECKBAND, SHOULDERS, SIDES, SLEEVE, SLEEVES, VEST, body, codes, panel, told
from walewright import glue
from walewright.cli.sources import shipped
from walewright.design import Changes, understand
from walewright.report.codes import GLUE
from walewright.report.english import in_english
from walewright.report.model import Diagnostic, Severity
from walewright.source import read

ROOT = Path(__file__).parents[2]


def said_codes() -> set[str]:
    """First arguments of the diagnostics that the stage makes."""
    found = set()
    for module in (ROOT / "src" / "walewright" / "glue").rglob("*.py"):
        for node in ast.walk(ast.parse(module.read_text())):
            if isinstance(node, ast.Call) and ast.unparse(node.func) == "diagnosed" and isinstance(node.args[0], ast.Constant):
                found.add(str(node.args[0].value).partition("/")[0])
    return found


def test_the_table_has_exactly_the_codes_of_the_stage() -> None:
    assert said_codes() == set(GLUE)


def of_source(text: str) -> list[Diagnostic]:
    design, unclear = understand(read("page.wale", text)[0], shipped(), Changes())
    assert design is not None, unclear
    return list(glue.glue(design)[1])


@pytest.mark.parametrize("code", sorted(GLUE))
def test_the_page_of_a_code(code: str) -> None:
    page = error_pages.page(code)
    assert page.wrong
    assert page.mended
    assert {d.code for d in of_source(page.wrong.source)} == {code}
    assert of_source(page.mended.source) == []


ON_START = """\
piece more in plain
    levels foot 0 cm, top 10 cm
    start 30 cm wide along panel start
    end cast off
join panel end to more end
"""


def spans(said: Diagnostic) -> int:
    return len({label.span for label in said.labels})


def test_every_message_shows_its_place() -> None:
    for code in GLUE:
        wrong = error_pages.page(code).wrong
        assert wrong
        said = of_source(wrong.source)[0]
        assert said.labels
        assert said.helps or said.severity is Severity.WARNING


@pytest.mark.parametrize(
    ("text", "names"),
    [
        (panel("panel", "on waste yarn"), "`panel start`"),
        (panel("panel", end="on waste yarn", copies=2), "`panel end` of 2 copies"),
        (body("back", "9 cm deep, round"), "`back neck centre`"),
        (body("back", end="on waste yarn"), "`back shoulder left` and `back shoulder right`"),
        (
            panel("panel")
            .replace("    end", "    slot pocket 6 cm wide at hem_end\n    end")
            .replace("0 cm,", "0 cm, hem_end 10 cm,"),
            "`panel pocket`",
        ),
    ],
)
def test_open_loops_are_told_in_one_message(text: str, names: str) -> None:
    (said,) = told(text)
    assert said.code == "loops-left-open"
    assert names in in_english(said).message


@pytest.mark.parametrize(
    "closing",
    [
        "band edge with collar along panel start + panel end\n",
        "join panel start to panel end, grafted\n",
        "join panel start to panel end\n",
        ON_START,
    ],
)
def test_whatever_takes_loops_up_will_do(closing: str) -> None:
    text = panel("panel", "on waste yarn", "on waste yarn").replace(
        "    edges straight to top called side\n", "    edges straight to top\n"
    )
    assert "loops-left-open" not in codes(text + closing)


@pytest.mark.parametrize(
    "more",
    [
        NECKBAND.replace("neckband", "second"),
        "join back neck to front neck\n",
        "piece tie in plain\n    levels foot 0 cm, top 10 cm\n    start 10 cm wide along back neck\n    end cast off\n",
    ],
)
def test_nothing_is_used_twice(more: str) -> None:
    said = told(VEST + NECKBAND + more + SHOULDERS + SIDES)
    assert [d.code for d in said] == ["edge-used-twice"]
    assert spans(said[0]) == 2


def test_a_seam_made_twice() -> None:
    assert codes(VEST + SHOULDERS + SIDES + SIDES) == ["edge-used-twice"]


def test_a_sleeve_without_its_shoulder() -> None:
    (said,) = told(VEST + SLEEVE + SLEEVES)
    assert said.code == "join-not-in-line"
    assert "nothing joins" in in_english(said).notes[0]


def test_a_thumb_at_the_same_corner_as_its_twin_s() -> None:
    same = MITTENS.replace("left_mitten thumb_upper + left_mitten thumb", "left_mitten thumb + left_mitten thumb_upper")
    (said,) = told(same)
    assert said.code == "line-not-mirrored"
    assert in_english(said).helps == ("write `along left_mitten thumb_upper + left_mitten thumb`",)


def test_two_lines_that_need_each_other_s_seam_are_one_mistake() -> None:
    bands = "band top_band with collar along back end + front end\nband hem_band with collar along back start + front start\n"
    (said,) = told(panel("back") + panel("front") + bands + SIDES)
    assert said.code == "line-closed"
    assert "front start + back start" in in_english(said).helps[0] or "front end + back end" in in_english(said).helps[0]


def test_left_to_left_is_inside_out() -> None:
    assert codes(panel("back") + panel("front") + "join back side_left to front side_left\n") == ["seam-twisted"]
    assert codes(panel("back") + panel("front") + "join back side_left to front side_right\n") == []


def test_of_a_copy_too_many_the_joins_of_its_piece_are_shown() -> None:
    """A third sleeve: where the piece stands, and both joins that name it, but not those of shoulders and sides."""
    text = (VEST + SLEEVE + NECKBAND + SHOULDERS + SLEEVES + SIDES).replace("knit 2", "knit 3")
    (said,) = told(text)
    assert (said.code, dict(said.facts)["idle"], dict(said.facts)["joined"]) == ("copies-left-over", 1, 2)
    whole = HEAD + text
    lines = [whole[label.span.start : whole.index("\n", label.span.start)] for label in said.labels]
    assert [line.split(",")[0] for line in lines] == [
        "piece sleeve in plain",
        "join sleeve end to back armhole + front armhole",
        "join sleeve seam to sleeve seam",
    ]


def test_what_lies_between_two_edges_of_a_line_is_named() -> None:
    """Beside a slit at the top, and between a front's edge and a back's neck."""
    slit = "piece hand in plain\n    levels cuff 0 cm, part 10 cm, top 12 cm\n    start 20 cm wide with e-wrap\n"
    slit += "    edges straight to top called side\n    opening slit 0 cm wide from part to top\n    end on waste yarn\n"
    (said,) = told(slit + "join hand side to hand side\nband rim with collar along hand shoulder_left + hand shoulder_right\n")
    assert said.code == "line-not-in-order"
    assert "between them lies hand slit_left + hand slit_right" in in_english(said).notes
    (said,) = told(JACKET.replace("along right_front neckline + back", "along right_front front + back"))
    assert "between them lies right_front neckline" in in_english(said).notes


def test_a_long_line_is_written_in_the_order_in_which_it_can_be_hung() -> None:
    right, left = "right_front front + right_front neckline", "left_front neckline + left_front front"
    sides = " + ".join(f"{piece} start" for piece in ("left_front", "back"))
    along = f"{right} + back neck + {left} + {sides}"
    jacket = JACKET.replace("right_front neckline + back neck + left_front neckline", "{along}")
    assert codes(jacket.format(along=along)) == []
    wrong = f"{left} + back neck + {right} + {sides}"
    (said,) = told(jacket.format(along=wrong))
    assert said.code == "line-not-in-order"
    (write,) = [line for line in in_english(said).helps if line.startswith("write")]
    assert codes(jacket.format(along=write.removeprefix("write `along ").removesuffix("`"))) == []
