"""What was worked out is kept: a file after a result takes no second compile, and what is kept is bounded."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from walewright.cli.formats import format_named
from walewright.cli.formats.format import Pattern
from walewright.cli.garments import garments_of, shipped_garments
from walewright.cli.options import Wanted
from walewright.serve import working
from walewright.serve.answering import Answering
from walewright.serve.kept import KeptAnswer, KeptAnswers, KeptOffers, key_of
from walewright.serve.model import DrawnPiece, PageAnswer, PageResult, ServedGarment, TakenFile
from walewright.serve.pool import Asker, Limits, WorkPool
from walewright.serve.sourced import compiled, slim, texts, with_fabric
from walewright.world import shipped_path


class PoolAtHand(WorkPool):
    """Works at once, in this process, and notes what it was given."""

    def __init__(self) -> None:
        super().__init__(Limits())
        self.tasks: list[str] = []

    async def work(self, asker: Asker, task: Callable[..., Any], *arguments: Any, **named: Any) -> Any:
        self.tasks.append(task.__name__)
        return task(*arguments, **named)


async def _never() -> None:
    await asyncio.Event().wait()


ASKER = Asker(_never)
GARMENTS = {garment.name: garment for garment in shipped_garments()}


FIELD = "measure:span"
"""It is called so on the page of every language."""

FORMS = [
    *((form, language) for language in ("english", "german") for form in ("text", "plan", "html")),
    ("bench", "english"),
    pytest.param("bench", "german", marks=pytest.mark.campaign),
]
"""A bench copy takes long: of one language in every run."""


@pytest.mark.parametrize(("form", "language"), FORMS)
def test_a_file_after_a_result_is_the_compilers_own_without_a_second_compile(form: str, language: str) -> None:
    pool = PoolAtHand()
    answering, garment, given = Answering(pool, language, "2026-01-02"), GARMENTS["sandbar"], {FIELD: "150"}
    first = asyncio.run(answering.worked(ASKER, garment, given))
    assert isinstance(first, KeptAnswer)
    assert (first.answer.values, first.answer.stray) == (given, {})
    assert asyncio.run(answering.worked(ASKER, garment, given)) is first
    taken = asyncio.run(answering.printed(ASKER, garment, given, form, ""))
    assert pool.tasks == ["worked", "printed"]
    assert isinstance(taken, TakenFile)
    wanted = Wanted({"sizes": ("one",), "measures": {"span": "150 cm"}}, (), language=language)
    outcome = compiled(garment, wanted)
    made = format_named(form).make(Pattern(outcome, wanted.guide, "a4", "cm", working.__version__, "2026-01-02"))
    assert taken.data == made.data


def test_a_form_is_understood_once_for_its_alternatives() -> None:
    pool = PoolAtHand()
    answering, garment = Answering(pool, "english", "2026-01-02"), GARMENTS["redshank"]
    for given in ({}, {"measure:bust": "97"}, {"choose:neck": "boat", "size": "M"}):
        asyncio.run(answering.form(ASKER, garment, given))
    assert len(answering.offers._kept) == 2


def test_a_changed_source_is_worked_anew(tmp_path: Path) -> None:
    file = tmp_path / "mine.wale"
    source = shipped_path("patterns", "sandbar.wale").read_text(encoding="utf-8")
    file.write_text(source, encoding="utf-8")
    pool = PoolAtHand()
    answering, (garment,) = Answering(pool, "english", "2026-01-02"), garments_of([str(tmp_path)])
    asyncio.run(answering.worked(ASKER, garment, {}))
    file.write_text(source.replace('pattern "', 'pattern "New '), encoding="utf-8")
    found = asyncio.run(answering.worked(ASKER, garment, {}))
    assert pool.tasks == ["worked", "worked"]
    assert isinstance(found, KeptAnswer)
    assert found.answer.offer is not None
    assert found.answer.offer.title.startswith("New ")


def test_what_beside_a_source_is_read_counts_as_its_text(tmp_path: Path) -> None:
    (tmp_path / "mine.wale").write_text('use bow from "shared.wale"\npattern "Mine"\n', encoding="utf-8")
    garment = ServedGarment("mine", str(tmp_path / "mine.wale"))
    seen = []
    for shared in ("shape bow\n", "shape bow\n    # more\n"):
        (tmp_path / "shared.wale").write_text(shared, encoding="utf-8")
        seen.append(key_of("mine", texts(garment), {}))
    assert seen[0] != seen[1]


def test_the_fabric_is_knitted_again_from_the_moves() -> None:
    outcome = compiled(GARMENTS["sandbar"], Wanted({}, (), language="english"))
    kept = slim(outcome)
    assert kept.results == ()
    assert with_fabric(kept).results == outcome.results
    assert slim(replace(outcome, placed=outcome.placed or (None,))).results == outcome.results  # type: ignore[arg-type]


def _answer(packed: int, drawn: int = 0) -> KeptAnswer:
    result = PageResult("proven", drawings=(DrawnPiece("back", "x" * drawn),))
    return KeptAnswer(PageAnswer(None, {}, {}, result), bytes(packed))


def test_what_is_kept_is_bounded_in_number_and_in_bytes() -> None:
    few = KeptAnswers(number=3)
    for key in (b"a", b"b", b"c"):
        few.put(key, _answer(10))
    assert few.get(b"a") is not None
    few.put(b"d", _answer(10))
    assert [few.get(key) is not None for key in (b"a", b"b", b"c", b"d")] == [True, False, True, True]
    small = KeptAnswers(room=100_000)
    for key in (b"a", b"b", b"c", b"a"):
        small.put(key, _answer(20_000, 10_000))
    assert (len(small), small.used) == (2, 100_000)
    small.put(b"e", _answer(200_000))
    assert small.get(b"e") is None
    assert len(small) == 2
    offers = KeptOffers(number=2)
    form = working.form(GARMENTS["sandbar"], {}, "english", None).offer
    assert form is not None
    for key in (b"a", b"b", b"c"):
        offers.put(key, form)
    assert [offers.get(key) is not None for key in (b"a", b"b", b"c")] == [False, True, True]


def test_a_key_tells_apart_what_is_filled_in() -> None:
    keys = {
        key_of("a", ("text",), {"x": "1"}),
        key_of("b", ("text",), {"x": "1"}),
        key_of("a", ("other",), {"x": "1"}),
        key_of("a", ("text",), {"x": "2"}),
        key_of("a", ("text",), {"y": "1"}),
        key_of("a", ("text",), {"x": "1", "y": "2"}),
    }
    assert len(keys) == 6
    assert key_of("a", ("t",), {"x": "1", "y": " "}) == key_of("a", ("t",), {"x": "1"})
