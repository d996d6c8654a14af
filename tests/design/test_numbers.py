"""How many of each kind a source may have."""

from __future__ import annotations

from collections.abc import Iterable

import pytest

from tests.design.shaped import HEAD, only, piece, told
from walewright.design import findings
from walewright.design.reading import values
from walewright.design.reading.numbers import MOST_SIZES
from walewright.report.english import in_english


def _sizes(count: int) -> str:
    return HEAD.replace("sizes S M", "sizes " + " ".join(f"s{i}" for i in range(count))).replace("40 42", " ".join(["42"] * count))


@pytest.mark.parametrize(
    ("parts", "head", "says"),
    [
        ((piece(),), _sizes(MOST_SIZES + 1), "61 sizes"),
        (tuple(piece(name=f"p{i}") for i in range(61)), HEAD, "61 pieces"),
        ((piece(), *(f"join front start to p{i} end" for i in range(151))), HEAD, "151 joins"),
        ((piece(levels="hem 0 cm, " + ", ".join(f"l{i} {i + 1} cm" for i in range(80)) + ", top length"),), HEAD, ""),
    ],
)
def test_too_many(parts: tuple[str, ...], head: str, says: str) -> None:
    codes = told(*parts, head=head)
    assert ("too-many" in codes) == bool(says)
    if says:
        assert says in in_english(only(*parts, head=head)).message


def test_as_many_sizes_as_there_may_be() -> None:
    assert told(piece(), head=_sizes(MOST_SIZES)) == []


def test_each_of_many_unknown_names_is_told_and_few_are_compared(monkeypatch: pytest.MonkeyPatch) -> None:
    compared: list[str] = []

    def near_help(name: str, known: Iterable[str]) -> tuple[str, ...]:
        compared.extend([name] if tuple(known) else [])
        return ()

    monkeypatch.setattr(findings, "near_help", near_help)
    lets = [f"let stitch{i} = strech{i} + 1 mm" for i in range(300)]
    codes = told(*lets, piece())
    assert codes == ["unknown-name"] * 300
    assert len(compared) == findings.MOST_PROPOSED
    monkeypatch.undo()
    said = only("let stitch = strech + 1 mm", piece())
    assert in_english(said).helps == ("`stitch` is close",)


def test_what_is_told_of_many_names_stays_short() -> None:
    lets = "\n".join(f"let a{i} = 1 cm" for i in range(200))
    said = only(lets, "let b = strech + 1 mm", piece())
    assert in_english(said).notes[0].endswith("and 182 more")
    again = only("\n".join(f"let a{i} = strech" for i in range(200)), piece())
    assert len(again.labels) == findings.MOST_PLACES


def test_a_chain_of_definitions_is_walked_once(monkeypatch: pytest.MonkeyPatch) -> None:
    looked: list[int] = []
    plain = values.names

    def counted(expression: object) -> object:
        looked.append(1)
        return plain(expression)  # type: ignore[arg-type]

    monkeypatch.setattr(values, "names", counted)
    many = 1500
    lets = "\n".join(f"let a{i} = a{i + 1} + 1 mm" for i in range(many)) + f"\nlet a{many} = 1 cm"
    assert told(lets, piece()) == []
    assert len(looked) < 8 * many
