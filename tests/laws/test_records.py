"""A record is what `dataclass(frozen=True, slots=True)` makes of the same class, but that its methods are made at first use."""

from __future__ import annotations

import copy
import pickle
import re
from dataclasses import FrozenInstanceError, dataclass, field, fields, is_dataclass, replace
from pathlib import Path
from typing import Any

import pytest

from walewright.record import record
from walewright.record import replace as record_replace

SOURCES = Path(__file__).resolve().parents[2] / "src"


@record(kw_only=True)
class Placed:
    where: int = field(default=0, compare=False, repr=False)


@record
class Stitch(Placed):
    """A stitch."""

    name: str
    rows: tuple[int, ...] = ()
    notes: list[str] = field(default_factory=list)

    def longer(self) -> Stitch:
        return replace(self, rows=(*self.rows, 1))


@record
class Purl(Stitch):
    raised: bool = True

    def __repr__(self) -> str:
        return "purl"


@record
class Nothing:
    pass


@dataclass(frozen=True, slots=True, kw_only=True)
class PlacedLikewise:
    where: int = field(default=0, compare=False, repr=False)


@dataclass(frozen=True, slots=True)
class Likewise(PlacedLikewise):
    name: str
    rows: tuple[int, ...] = ()
    notes: list[str] = field(default_factory=list)


MADE: list[tuple[tuple[Any, ...], dict[str, Any]]] = [
    (("knit",), {}),
    (("knit", (1, 2)), {"where": 4}),
    ((), {"name": "tuck", "notes": ["slack"]}),
]


@pytest.mark.parametrize(("given", "named"), MADE)
def test_it_is_made_as_a_dataclass_is(given: tuple[Any, ...], named: dict[str, Any]) -> None:
    made, likewise = Stitch(*given, **named), Likewise(*given, **named)
    assert is_dataclass(made)
    assert [one.name for one in fields(made)] == [one.name for one in fields(likewise)]
    assert [getattr(made, one.name) for one in fields(made)] == [getattr(likewise, one.name) for one in fields(likewise)]
    assert repr(made) == repr(likewise).replace("Likewise", "Stitch")
    assert made == Stitch(*given, **named)
    assert made.notes is not Stitch(*given, **named).notes or "notes" in named
    assert not hasattr(made, "__dict__")


@pytest.mark.parametrize("wrong", [lambda of: of(), lambda of: of("knit", (), [], 4), lambda of: of("knit", colour=1)])
def test_it_refuses_what_a_dataclass_refuses(wrong: Any) -> None:
    told = []
    for kind in (Stitch, Likewise):
        with pytest.raises(TypeError) as refused:
            wrong(kind)
        told.append(str(refused.value).replace("Likewise", "Stitch"))
    assert told[0] == told[1]


def test_it_is_compared_by_what_counts() -> None:
    assert Stitch("knit", where=1) == Stitch("knit", where=2)
    assert Stitch("knit") != Stitch("purl")
    assert Stitch("knit") != Likewise("knit")
    assert Stitch("knit") != Purl("knit")
    assert Nothing() == Nothing()
    assert hash(Nothing()) == hash(Nothing())
    flat = Stitch("knit", (1,), ("a",))  # type: ignore[arg-type]
    assert len({flat, replace(flat, where=3), replace(flat, name="purl")}) == 2
    with pytest.raises(TypeError):
        hash(Stitch("knit"))


def test_it_is_never_changed() -> None:
    made = Stitch("knit")
    with pytest.raises(FrozenInstanceError, match="cannot assign to field 'name'"):
        made.name = "purl"  # type: ignore[misc]
    with pytest.raises(FrozenInstanceError, match="cannot delete field 'name'"):
        del made.name
    assert made.longer().rows == (1,)
    assert made.rows == ()


def test_one_that_adds_to_another() -> None:
    made = Purl("purl", (2,), raised=False, where=3)
    assert (made.name, made.rows, made.raised, made.where) == ("purl", (2,), False, 3)
    assert repr(made) == "purl"
    assert Purl("purl").raised


def test_fields_are_called_as_they_like() -> None:
    @record
    class Bed:
        missing: tuple[int, ...]
        put: list[int] = field(default_factory=list)
        default: int = 3
        make: list[int] = field(default_factory=lambda: [1])

    made = Bed((4,))
    assert (made.missing, made.put, made.default, made.make) == ((4,), [], 3, [1])
    assert Bed((), [2], 5, [6]).make == [6]


def test_who_takes_the_place_of_its_init_keeps_it(monkeypatch: pytest.MonkeyPatch) -> None:
    @record
    class Row:
        number: int

    seen: list[int] = []
    begin = Row.__init__

    def noted(self: Row, number: int) -> None:
        seen.append(number)
        begin(self, number)

    monkeypatch.setattr(Row, "__init__", noted)
    assert [Row(1).number, Row(2).number] == [1, 2]
    assert seen == [1, 2]
    monkeypatch.undo()
    assert Row(3) == Row(number=3)
    assert seen == [1, 2]


def test_it_is_packed_and_copied() -> None:
    made = Stitch("knit", (1, 2), ["slack"], where=7)
    for same in (pickle.loads(pickle.dumps(made)), copy.copy(made), copy.deepcopy(made)):
        assert same == made
        assert same.where == 7
        assert type(same) is Stitch


def test_it_is_taken_apart() -> None:
    match Stitch("knit", (5,)):
        case Stitch(name, rows):
            assert (name, rows) == ("knit", (5,))


def test_the_stages_hand_on_records() -> None:
    """What `record` is for: frozen values of seven hundred kinds. One that is ordered, or that compares by identity, is made as
    `dataclass` makes it."""
    written_out = re.compile(r"@dataclass\(frozen=True, slots=True(?:, kw_only=True)?\)")
    assert [str(path) for path in SOURCES.rglob("*.py") if written_out.search(path.read_text(encoding="utf-8"))] == []


def test_one_is_copied_with_changes_as_a_dataclass_is() -> None:
    made, likewise = Stitch("knit", (1, 2), where=4), Likewise("knit", (1, 2), where=4)
    for changes in ({}, {"name": "purl"}, {"rows": (), "notes": ["slack"]}):
        one, other = record_replace(made, **changes), replace(likewise, **changes)
        assert type(one) is Stitch
        assert [getattr(one, of.name) for of in fields(one)] == [getattr(other, of.name) for of in fields(other)]
    assert record_replace(made).notes is made.notes
    assert made.name == "knit"
    for of, copied in ((made, record_replace), (likewise, replace)):
        with pytest.raises(TypeError, match="colour"):
            copied(of, colour=1)
    # Any other dataclass is copied too.
    assert record_replace(likewise, name="purl") == replace(likewise, name="purl")


def test_one_that_adds_to_another_is_copied_as_what_it_is() -> None:
    made = record_replace(Purl("purl", (2,), raised=False, where=3), name="slip")
    assert (type(made), made.name, made.rows, made.raised, made.where) == (Purl, "slip", (2,), False, 3)


def test_fields_of_one_that_is_copied_are_called_as_they_like() -> None:
    @record
    class Made:
        made: int
        of: int = 2

    copy = record_replace(Made(1), of=5)
    assert (copy.made, copy.of) == (1, 5)
