"""Pieces like others, and mirror images that differ: they mean what the same lines mean, written out."""

from __future__ import annotations

from dataclasses import fields, is_dataclass
from typing import Any

import pytest

from tests.design.drawing import FRAME, plain, sound
from tests.design.shaped import understood
from walewright.design.model import Origin
from walewright.report.model import Span

BACK = """\
piece back in plain, knit 2
    levels hem 0 cm, waist 15 cm, underarm 30 cm, tip 48 cm, top 50 cm
    start 40 cm wide with e-wrap
    edges slope to 36 cm wide at waist called side
    edges slope to 40 cm wide at underarm called side
    edges cast off 3 cm then slope by -5 cm at tip called armhole
    neck 16 cm wide, 3 cm deep, round
    slot pocket 8 cm wide at waist, 6 cm left of centre
    shoulders held from tip
    end cast off
"""

FRONT = """\
piece left_front in plain
    levels hem 0 cm, pocket 18 cm, low 20 cm, throat 40 cm, top 50 cm
    start 20 cm wide with e-wrap
    left edge straight to top called side
    right edge straight to throat called opening
    right edge slope by -6 cm at top called neckline
    slot pocket 6 cm wide at pocket, 2 cm left of centre
    buttonholes 3 over 2 stitches from low to throat, 1.5 cm from the right edge
    end cast off
"""


def meant(thing: Any) -> Any:
    """A datum of the design without the places that it comes from."""
    if isinstance(thing, tuple):
        return tuple(meant(x) for x in thing)
    if isinstance(thing, Origin) or not is_dataclass(thing):
        return None if isinstance(thing, Origin) else thing
    return {f.name: meant(getattr(thing, f.name)) for f in fields(thing)}


def the(name: str, *parts: str) -> dict[str, Any]:
    """What a piece of a source comes to, by the field; unused names apart, nothing is reported."""
    design, told = understood(plain(), *parts, head=FRAME)
    assert [d.code for d in told if d.code not in ("unused-name", "row-falls")] == []
    assert design is not None
    return dict(meant(design.piece(name)))


def codes(*parts: str) -> list[str]:
    return [d.code for d in understood(plain(), *parts, head=FRAME)[1] if d.code not in ("unused-name", "loops-left-open")]


def written(of: str, name: str, **changed: str) -> str:
    """A piece's lines under another name, those that begin with a key replaced by its value, or left out where that is empty."""
    head, *lines = of.splitlines()
    old = head.split()[1]
    made = [head.replace(f"piece {old}", f"piece {name}").replace(", knit 2", "")]
    for line in lines:
        key = next((k for k in changed if line.strip().startswith(k.replace("_", " "))), None)
        if key is None or changed[key]:
            made.append(line if key is None else f"    {changed[key]}")
    return "\n".join(made) + "\n"


@pytest.mark.parametrize(
    ("lines", "changed"),
    [
        ((), {}),
        (("neck 16 cm wide, 8 cm deep, v",), {"neck": "neck 16 cm wide, 8 cm deep, v"}),
        (("without neck",), {"neck": ""}),
        (("without pocket", "without shoulders"), {"slot": "", "shoulders": ""}),
        (("slot pocket 8 cm wide at underarm",), {"slot": "slot pocket 8 cm wide at underarm"}),
        (("start 42 cm wide with chain",), {"start": "start 42 cm wide with chain"}),
        (
            ("edges slope to 38 cm wide at waist called side",),
            {"edges_slope_to_36": "edges slope to 38 cm wide at waist called side"},
        ),
        (
            ("levels hem 0 cm, waist 20 cm, underarm 30 cm, tip 48 cm, top 50 cm",),
            {"levels": "levels hem 0 cm, waist 20 cm, underarm 30 cm, tip 48 cm, top 50 cm"},
        ),
        (("fabric thick from hem to waist",), {"end": "fabric thick from hem to waist\n    end cast off"}),
    ],
)
def test_a_piece_like_another_is_that_piece_with_its_own_lines(lines: tuple[str, ...], changed: dict[str, str]) -> None:
    short = "piece front like back\n" + "".join(f"    {line}\n" for line in lines)
    thick = plain(name="thick")
    assert the("front", thick, BACK, short) == the("front", thick, BACK, written(BACK, "front", **changed))


def test_one_edge_of_its_own_leaves_the_other_as_it_was() -> None:
    short = "piece front like back\n    left edge cast off 4 cm then slope by -6 cm at tip called other\n"
    long = written(BACK, "front").replace(
        "    edges cast off 3 cm then slope by -5 cm at tip called armhole\n",
        "    left edge cast off 4 cm then slope by -6 cm at tip called other\n"
        "    right edge cast off 3 cm then slope by -5 cm at tip called armhole\n",
    )
    assert the("front", BACK, short) == the("front", BACK, long)


def test_a_run_to_a_new_level_stands_where_it_leads() -> None:
    levels = "levels hem 0 cm, waist 15 cm, bust 22 cm, underarm 30 cm, tip 48 cm, top 50 cm"
    short = f"piece front like back\n    {levels}\n    edges slope to 37 cm wide at bust called side\n"
    long = written(BACK, "front", levels=levels).replace(
        "    edges slope to 40", "    edges slope to 37 cm wide at bust called side\n    edges slope to 40"
    )
    assert the("front", BACK, short) == the("front", BACK, long)


def test_a_neck_takes_the_place_of_an_opening_of_that_name_and_the_other_way_round() -> None:
    parted = "piece front like back\n    opening neck 4 cm wide from underarm to top, cast off\n        edges straight to top\n"
    assert [o["name"] for o in the("front", BACK, parted)["openings"]] == ["neck"]
    assert [
        o["name"] for o in the("again", BACK, parted, "piece again like front\n    neck 16 cm wide, 3 cm deep, round\n")["openings"]
    ] == ["neck"]


def test_the_header_says_what_is_its_own() -> None:
    design = sound(plain(), plain(name="thick"), BACK.replace("    end", "    end"), "piece front like back, in thick, knit 3\n")
    assert (design.piece("front").fabric, design.piece("front").copies) == ("thick", (3, 3))
    assert (design.piece("back").fabric, design.piece("back").copies) == ("plain", (2, 2))


def test_a_piece_like_one_that_is_like_another() -> None:
    chain = "piece second like first\n    without neck\n", "piece first like back\n    without pocket\n"
    assert the("second", *chain, BACK) == the("second", BACK, written(BACK, "second", neck="", slot=""))


def test_a_shape_is_used_with_other_values() -> None:
    shape = "shape flare(at, wide)\n    edges slope to wide wide at at called side\n"
    lines = "levels hem 0 cm, top 40 cm", "start 40 cm wide with e-wrap", "use flare, at top, wide 30 cm", "end cast off"
    back = "piece back in plain\n" + "".join(f"    {line}\n" for line in lines)
    short = "piece front like back\n    use flare, at top, wide 34 cm\n"
    assert the("front", shape, back, short) == the(
        "front", shape, back, written(back, "front", use="use flare, at top, wide 34 cm")
    )


MIRRORED = """\
piece right_front in plain
    levels hem 0 cm, pocket 18 cm, low 20 cm, throat 40 cm, top 50 cm
    start 20 cm wide with e-wrap
    right edge straight to top called side
    left edge straight to throat called opening
    left edge slope by -6 cm at top called neckline
{}    end cast off
"""


@pytest.mark.parametrize(
    ("lines", "left"),
    [
        (("without buttonholes",), ("slot pocket 6 cm wide at pocket, 2 cm right of centre",)),
        (("without pocket",), ("buttonholes 3 over 2 stitches from low to throat, 1.5 cm from the left edge",)),
        (("without pocket", "without buttonholes"), ()),
        (
            ("buttonholes 4 over 2 stitches from low to throat, 1.5 cm from the left edge", "without pocket"),
            ("buttonholes 4 over 2 stitches from low to throat, 1.5 cm from the left edge",),
        ),
    ],
)
def test_a_mirror_image_with_lines_of_its_own(lines: tuple[str, ...], left: tuple[str, ...]) -> None:
    short = "piece right_front in plain, mirror of left_front\n" + "".join(f"    {line}\n" for line in lines)
    long = MIRRORED.format("".join(f"    {line}\n" for line in left))
    assert the("right_front", FRONT, short) == the("right_front", FRONT, long)


@pytest.mark.parametrize("own", ["", "    without buttonholes\n"])
def test_what_hangs_on_a_model_has_its_image_on_the_image(own: str) -> None:
    front = FRONT.replace("2 cm left of centre\n", "2 cm left of centre, on waste yarn\n")
    right = f"piece right_front in plain, mirror of left_front\n{own}"
    lining = """piece lining in plain
    levels mouth 0 cm, foot 10 cm
    start 6 cm wide along left_front pocket_upper
    end cast off
"""
    image = the("other_lining", front, right, lining, "piece other_lining in plain, mirror of lining\n")
    assert [edge["piece"] for edge in image["start_along"]] == ["right_front"]


def test_the_mirror_image_of_one_that_differs_is_turned_back() -> None:
    right = "piece right_front in plain, mirror of left_front\n    without buttonholes\n"
    again = "piece other in plain, mirror of right_front\n    without pocket\n"
    assert the("other", FRONT, right, again) == the("other", FRONT, written(FRONT, "other", slot="", buttonholes=""))


@pytest.mark.parametrize(
    ("parts", "wanted"),
    [
        (("piece front like bakc\n",), ["unknown-name"]),
        (("piece front like front\n",), ["like-ring"]),
        (("piece one like two\n", "piece two like three\n", "piece three like one\n"), ["like-ring"]),
        (("piece four like one\n", "piece one like two\n", "piece two like one\n"), ["like-ring"]),
        (("piece front like back\n    without pockte\n",), ["unknown-name"]),
        (("piece front like back\n    without pocket\n    slot pocket 9 cm wide at waist\n",), ["without-effect"]),
        (("piece front like back\n    shoulders held from tip\n",), ["same-as-model"]),
        (("piece front like back\n    edges slope to 36 cm wide at waist called side\n",), ["same-as-model"]),
        (("piece front like back\n    left edge straight to waist\n",), ["like-half-edge"]),
        (("piece other in plain, mirror of back\n    without neck\n    without sleeve\n",), ["unknown-name"]),
        (("piece other in plain, mirror of other\n    without neck\n",), ["mirror-ring"]),
        (("piece other in plain, mirror of bakc\n    without neck\n",), ["unknown-name"]),
    ],
)
def test_what_cannot_be(parts: tuple[str, ...], wanted: list[str]) -> None:
    assert codes(BACK, *parts) == wanted


def test_a_fault_of_the_model_is_reported_once() -> None:
    faulty = BACK.replace("at waist, 6 cm", "at wasit, 6 cm")
    assert codes(faulty, "piece front like back\n", "piece third like front\n    without neck\n") == ["unknown-name"]
    too_deep = BACK.replace("3 cm deep", "60 cm deep")
    assert codes("piece front like back\n", too_deep) == codes(too_deep) == ["neck-too-deep"]


def test_a_fault_of_the_copy_alone_is_shown_where_it_is_like_the_model() -> None:
    told = understood(plain(), BACK, "piece front like back\n    edges slope to 18 cm wide at waist\n", head=FRAME)[1]
    faults = [d for d in told if d.code not in ("unused-name", "loops-left-open")]
    assert [d.code for d in faults] == ["beyond-the-edge"]
    assert [label.said.key for label in faults[0].labels][:1] == ["by-model"]


def test_data_of_other_places_in_the_file_are_the_same() -> None:
    """Where something stands says nothing of what it is; which statement it is does."""
    one, other = (Origin("piece back", Span("a.wale", at, at + 3)) for at in (1, 7))
    assert one == other
    assert hash(one) == hash(other)
    assert repr(one) == repr(other)
    assert one != Origin("piece front", one.span)
