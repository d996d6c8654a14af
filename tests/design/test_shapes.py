"""Shapes: statements with names for what a use of them says."""

from __future__ import annotations

from typing import Any

import pytest

from tests.design.dump import dump
from tests.design.shaped import HEAD, PATTERNS, SHIPPED, design, front, only, piece, told
from walewright.design import wanted_shapes
from walewright.design.pieces import shapes
from walewright.report.english import in_english
from walewright.source import read
from walewright.source.syntax import ShapeBlock, Use

WAIST = """
shape waist(narrow, wide, by, side)
    let half = by / 2
    edges slope by -by at narrow called side
    edges slope by half + half at wide
"""
USE = "use waist, narrow low, wide high, by 2 cm, side seam"


def test_a_use_is_the_statements_with_its_values() -> None:
    used = design(WAIST, piece(USE))
    written = design(piece("edges slope by -(2 cm) at low called seam", "edges slope by 2 cm at high"))
    assert dump(used) == dump(written)


def test_names_of_edges_given_to_a_shape_can_be_joined() -> None:
    assert told(WAIST, piece(USE), "join front seam to front start, easing 2 cm") == []


def test_a_let_of_a_shape_is_local_to_each_use() -> None:
    first = "use waist, narrow low, wide middle, by 2 cm, side seam"
    second = "use waist, narrow high, wide top, by 3 cm, side other"
    made = design("let half = 7 cm", WAIST, piece(first, second))
    assert [r.change[0] for r in made.piece("front").left] == [-2.0, 2.0, -3.0, 3.0]


def test_a_value_is_what_it_is_where_it_is_said() -> None:
    # `half` of the source, though the shape has a `half` of its own.
    made = design("let half = 3 cm", WAIST, piece(USE.replace("2 cm", "half")))
    assert made.piece("front").left[0].change == (-3.0, -3.0)


def test_shapes_use_shapes() -> None:
    outer = "shape hourglass(low, high, by)\n    use waist, narrow low, wide high, by by * 2, side seam\n"
    made = design(WAIST, outer, piece("use hourglass, low low, high high, by 1 cm"))
    assert [(r.name, r.change) for r in made.piece("front").left][:2] == [("seam", (-2.0, -2.0)), ("", (2.0, 2.0))]


def test_a_fault_points_at_the_use_and_at_the_statement_in_the_shape() -> None:
    said = only(WAIST, piece(USE.replace("narrow low", "narrow hihg").replace("wide high", "wide top")))
    text = "\n".join((HEAD, WAIST, piece(USE.replace("narrow low", "narrow hihg").replace("wide high", "wide top"))))
    assert said.code == "unknown-name"
    marked = [text[label.span.start : label.span.end] for label in said.labels]
    assert marked[0].startswith("use waist")
    assert marked[1] == "edges slope by -by at narrow called side"


def test_a_fault_in_a_value_points_at_the_value() -> None:
    said = only(WAIST, piece(USE.replace("2 cm", "2 rows + 1 cm")))
    assert said.code == "mixed-units"


def test_a_later_stage_points_at_the_use_too() -> None:
    text = "\n".join((HEAD, WAIST, piece(USE)))
    (run, *_) = design(WAIST, piece(USE)).piece("front").left
    assert text[run.origin.span.start : run.origin.span.end] == USE


@pytest.mark.parametrize(
    ("use", "code"),
    [
        ("use waits, narrow low, wide high, by 2 cm, side seam", "unknown-name"),
        ("use waist, narrow low, wide high, by 2 cm", "missing-argument"),
        ("use waist", "missing-argument"),
        ("use waist, narrow low, wide high, by 2 cm, side seam, depth 3 cm", "unknown-argument"),
        ("use waist, narrow low, wide high, by 2 cm, by 3 cm, side seam", "repeated-name"),
        ("use waist, narrow 3 cm, wide high, by 2 cm, side seam", "name-expected"),
        ("use waist, narrow low, wide high, by low, side seam", "unknown-name"),
        ("use waist, narrow low, wide high, by 2 cm, side neck", "reserved-name"),
    ],
)
def test_faulty_uses(use: str, code: str) -> None:
    assert told(WAIST, piece(use)) == [code]


@pytest.mark.parametrize(
    ("shape", "code"),
    [
        ("shape waist(narrow, wide, by, side)\n    edges straight to narrow\n", "repeated-name"),
        ("shape a(to)\n    use a, to to\n", None),
        ("shape a(to, to)\n    edges straight to to\n", "repeated-name"),
        ("shape a(to)\n    let to = 3 cm\n    edges straight to low\n", "repeated-name"),
    ],
)
def test_faulty_shapes(shape: str, code: str | None) -> None:
    assert told(WAIST, shape, piece(USE)) == ([code] if code else [])


def test_rings_and_floods_end() -> None:
    ring = "shape a(to)\n    use b, to to\n\nshape b(to)\n    use a, to to\n"
    said = only(ring, piece("use a, to low"))
    assert said.code == "shape-ring"
    assert in_english(said).message == "`a` uses `b` uses `a`: this has no end"
    flood = "".join(f"shape s{n}(to)\n" + f"    use s{n + 1}, to to\n" * 2 + "\n" for n in range(18))
    last = "shape s18(to)\n    edges straight to to\n"
    assert told(flood, last, piece("use s0, to low"))[0] == "shape-too-large"
    lets = "shape a(by)\n    let b = c\n    let c = b\n    edges slope by by + b at low\n"
    said = only(lets, piece("use a, by 2 cm"))
    assert (said.code, in_english(said).message) == ("cyclic-let", "`b` needs `c` needs `b`: this has no end")


def _doubling(depth: int) -> str:
    doubled = "".join(f"shape s{n}(to)\n" + f"    use s{n + 1}, to to\n" * 2 + "\n" for n in range(depth))
    return f"{doubled}shape s{depth}(to)\n    edges straight to to\n"


def test_shapes_that_double_are_counted_and_not_followed(monkeypatch: pytest.MonkeyPatch) -> None:
    followed: list[str] = []
    plain = shapes._Expander.used

    def counted(self: shapes._Expander, use: Use, *rest: Any) -> Any:
        followed.append(use.name)
        return plain(self, use, *rest)

    monkeypatch.setattr(shapes._Expander, "used", counted)
    said = only(_doubling(19), piece("use s0, to low"))
    # Each shape is two uses and what these come to; the last one is one line.
    assert said.code == "shape-too-large"
    assert f"{2**21 - 2 - 2**19:,} lines" in in_english(said).message
    assert followed == []
    assert only(_doubling(1200), piece("use s0, to low")).code == "shape-too-large"


def test_a_ring_of_shapes_that_all_use_each_other_ends_at_once() -> None:
    names = range(40)
    ring = "".join(f"shape s{n}(to)\n" + "".join(f"    use s{m}, to to\n" for m in names if m != n) + "\n" for n in names)
    assert only(ring, piece("use s0, to low")).code == "shape-ring"


def test_pieces_together_are_given_no_more_than_all_of_a_garment() -> None:
    many = "shape lines(to)\n" + '    note "a line"\n' * 900 + "    edges straight to to\n"
    alone = [piece("use lines, to low").replace("front", f"front{n}") for n in range(5)]
    assert "shape-too-large" not in told(many, *alone)
    told_of = [*told(many, *alone, piece("use lines, to low"))]
    assert told_of.count("shape-too-large") == 1


def test_the_shipped_shapes_read_and_are_named_by_their_files() -> None:
    assert SHIPPED.shapes
    for name, text in SHIPPED.shapes.items():
        tree, unread = read(f"{name}.wale", text)
        assert unread == ()
        assert [s.name for s in tree.statements if isinstance(s, ShapeBlock)] == [name]
        assert (PATTERNS / "shapes" / f"{name}.wale").is_file()


def test_only_shapes_that_a_source_does_not_define_are_asked_for() -> None:
    tree, _ = read("a.wale", HEAD + WAIST + piece(USE, "use set_in"))
    assert wanted_shapes(tree) == ("set_in",)


def test_a_sources_own_shape_comes_before_the_shipped_one() -> None:
    assert told(piece(USE)) == ["unknown-argument", "missing-argument"]
    assert told(WAIST, piece(USE)) == []


def test_set_in() -> None:
    made = front(
        "edges straight to low called side",
        "use armhole_set_in, chest middle, tip high, across 34 cm, off 2 cm",
        "neck 10 cm wide, 4 cm deep, round",
        "shoulders held from high",
    )
    assert [(r.name, r.path, r.change[0], r.cast_off[0]) for r in made.left][1:3] == [
        ("armhole", "curve", -3.0, 2.0),
        ("armhole", "straight", 0.0, 0.0),
    ]


def test_waist() -> None:
    levels = "hem 0 cm, hip 5 cm, low 10 cm, high 14 cm, chest 20 cm, top length"
    made = front("use waist, hip hip, low low, high high, chest chest, narrow 36 cm, wide 42 cm, side side", levels=levels)
    assert [(r.name, r.change[0]) for r in made.right][:4] == [("side", 0), ("side", -2), ("side", 0), ("side", 3)]
