"""Every language that is shipped beside English: what is written in it is read back in it, and knits the same; and on a page no
word stands but its own, its author's, and what is typed."""

from __future__ import annotations

import html as entities
import re
import tomllib
from collections.abc import Iterable, Iterator
from dataclasses import fields, is_dataclass, replace
from functools import cache
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings

from tests.draws import draws
from tests.whole.shipped_once import GARMENTS, SHIPPED, compiled, source
from tests.whole.test_another_language import PROGRAM
from tests.whole.test_bench import copy_of, middle
from tests.whole.test_turned import UNSHIPPED
from tests.write.chart_garments import charted_plans
from tests.write.garments import SAMPLES, size_plans
from tests.write.rich_garments import hoods, yokes
from walewright.design import Changes
from walewright.design.model import Chart
from walewright.knit import expand
from walewright.knit import steps as st
from walewright.knit.steps import SizePlan
from walewright.languages import ENGLISH, PrintedIn, known, printed
from walewright.pipeline import Outcome, compile, understood
from walewright.readback import read_back_all
from walewright.readback.sentences import Unreadable, said
from walewright.report.typography import typographic
from walewright.sheet import PageOptions, ProvenPattern, compose, html
from walewright.write import plain_text, write
from walewright.write.lines import lines, sentence

OTHERS = tuple(name for name in known() if name != ENGLISH)

SIGNS = {"jis", "din", "iso", "en", "cfr", "cpsc", "astm", "xs"}
"""Standards, and the size of an example."""


def in_language(outcome: Outcome, tongue: PrintedIn) -> str:
    assert outcome.design is not None
    return plain_text(write(outcome.plans, tongue.writing, outcome.design.sizes, outcome.design.charts), tongue.writing)


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("name", GARMENTS)
def test_a_garment_reads_back(name: str, language: str) -> None:
    outcome = compiled(name)
    works, faults = read_back_all(in_language(outcome, printed(language)), printed(language).reading)
    assert faults == ()
    assert works == outcome.read


@pytest.mark.parametrize("language", OTHERS)
def test_what_no_shipped_garment_has_reads_back(language: str) -> None:
    outcome = compile(UNSHIPPED, "unshipped.wale", SHIPPED, Changes())
    works, faults = read_back_all(in_language(outcome, printed(language)), printed(language).reading)
    assert faults == ()
    assert works == outcome.read


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("step", SAMPLES, ids=lambda s: type(s).__name__)
def test_every_kind_of_step_is_read_as_the_same_data(step: st.Step, language: str) -> None:
    if isinstance(step, st.Say):
        return
    steps = (step,) if isinstance(step, st.JoinEdges) else (step, st.Repeat((st.KnitRows(1), step, st.BreakOff()), 2))
    for one in steps:
        (line,) = lines([(one,)])
        told = [said(sentence(line, (0,), tongue.writing).text, tongue.reading) for tongue in (printed(language), printed())]
        assert not isinstance(told[0], Unreadable)
        assert told[0] == told[1]


@pytest.mark.parametrize("language", OTHERS)
@settings(max_examples=draws(80), deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(plans=size_plans())
def test_any_plan_reads_back(language: str, plans: tuple[SizePlan, ...]) -> None:
    _reads_back(plans, (), printed(language))


@pytest.mark.parametrize("language", OTHERS)
@settings(max_examples=draws(80), deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(drawn=charted_plans())
def test_any_chart_reads_back(language: str, drawn: tuple[tuple[SizePlan, ...], tuple[Chart, ...]]) -> None:
    plans, charts = drawn
    tongue, english = printed(language), printed()
    told = [read_back_all(plain_text(write(plans, of.writing, None, charts), of.writing), of.reading) for of in (tongue, english)]
    assert told[0] == told[1]


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("plans", [hoods(), yokes(1), yokes(3)], ids=["hoods", "yoke", "yokes"])
def test_a_rich_plan_reads_back(language: str, plans: tuple[SizePlan, ...]) -> None:
    _reads_back(plans, (), printed(language))


def _reads_back(plans: tuple[SizePlan, ...], charts: tuple[Chart, ...], tongue: PrintedIn) -> None:
    works, faults = read_back_all(plain_text(write(plans, tongue.writing, None, charts), tongue.writing), tongue.reading)
    assert faults == ()
    assert works == tuple(expand(plan) for plan in plans)


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("name", ["hawser", "marram", "shoal", "mooring", "fairlead"])
def test_a_bench_copy_reads_back(name: str, language: str) -> None:
    outcome = replace(compiled(name), language=printed(language))
    assert copy_of(outcome, middle(outcome)).plain_text


@pytest.mark.parametrize("language", OTHERS)
def test_a_reader_of_one_language_reads_no_other(language: str) -> None:
    outcome = compiled(GARMENTS[0])
    assert read_back_all(outcome.plain_text, printed(language).reading)[0] is None
    assert read_back_all(in_language(outcome, printed(language)), printed().reading)[0] is None


@pytest.mark.parametrize("language", OTHERS)
def test_measures_of_the_shipped_tables_are_described(language: str) -> None:
    told = replace(SHIPPED, language=language)
    for name in tomllib.loads(SHIPPED.measures):
        own, english = told.described(name), SHIPPED.described(name)
        assert own.name != english.name
        assert own.about not in ("", english.about)
    outcome = understood(source("tidewrack"), "tidewrack.wale", SHIPPED, Changes(), printed(language))
    assert outcome.design is not None
    assert outcome.renamed is not None
    (bust,) = (m for m in outcome.design.measurements if m.name == outcome.renamed.of("value", "bust"))
    assert bust.about == told.described("bust").about


# ----------------------------------------------------------------- words


def words_of(text: str) -> set[str]:
    return {word.lower() for word in re.findall(r"[^\W\d_]{2,}", text)}


def texts_of(value: Any) -> Iterator[str]:
    """Every text of a language, wherever it stands in its tables."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        yield from (text for one in value.values() for text in texts_of(one))
    elif isinstance(value, tuple):
        yield from (text for one in value for text in texts_of(one))
    elif is_dataclass(value) and not isinstance(value, type):
        yield from (text for f in fields(value) for text in texts_of(getattr(value, f.name)))


def _bare(texts: Iterable[str]) -> set[str]:
    """Their words without the names of places."""
    return {word for text in texts for word in words_of(re.sub(r"\{@?\w+", "{", text))}


@cache
def own(language: str) -> frozenset[str]:
    """Every word of a language's tables for pages."""
    tongue = printed(language)
    return frozenset(_bare((*texts_of(tongue.writing), *texts_of(tongue.guide))))


NAMED = {"name", "label", "about", "published", "own", "title", "sizes", "piece", "edge", "unit", "alternative", "alternatives"}
"""Fields of a design that hold what its author, or a shipped table or bed, has named."""


def named(what: object, field: str = "") -> Iterator[str]:
    """The texts of every name in a design."""
    if isinstance(what, str):
        yield from (what,) if field in NAMED else ()
    elif isinstance(what, tuple):
        yield from (text for one in what for text in named(one, field))
    elif is_dataclass(what) and not isinstance(what, type):
        yield from (text for f in fields(what) for text in named(getattr(what, f.name), f.name))


def without_authors(text: str, outcome: Outcome) -> str:
    """The text without what the author wrote: each text in quotes, and each name, as a whole."""
    assert outcome.design is not None
    texts = (*re.findall(r'"([^"\n]*)"', outcome.text), *named(outcome.design), outcome.design.machine.called)
    own = {" ".join(typographic(text).replace("_", " ").split()) for text in texts}
    text = " ".join(text.replace("_", " ").split())
    for phrase in sorted(own - {""}, key=len, reverse=True):
        text = re.sub(rf"(?<!\w){re.escape(phrase.rstrip('.'))}(?!\w)", "|", text, flags=re.IGNORECASE)
    return text


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("name", GARMENTS)
def test_only_its_own_words_stand_on_a_page(name: str, language: str) -> None:
    outcome = compiled(name)
    design, counts, _, proof = outcome.result()
    tongue = printed(language)
    instructions = write(outcome.plans, tongue.writing, design.sizes, design.charts)
    page = html(compose(tongue.guide, ProvenPattern(design, counts, instructions, proof, outcome.fit), PageOptions(units="both")))
    assert f'<html lang="{tongue.guide.code}">' in page
    text = entities.unescape(re.sub(r"<[^>]*>", " ", re.sub(r"<style>.*?</style>", "", page, flags=re.DOTALL)))
    # A part of a name can stand by itself: `left_front` is "front" where both are meant.
    names = {word for text in named(design) if text.isidentifier() for word in text.lower().split("_")}
    # What the names of yarns begin with alike is said once.
    names |= words_of(" ".join(yarn.label for yarn in design.yarns))
    assert sorted(words_of(without_authors(text, outcome)) - own(language) - names - PROGRAM - {name} - SIGNS) == []


@pytest.mark.parametrize("language", OTHERS)
def test_a_word_of_english_would_be_seen(language: str) -> None:
    assert words_of("the rows") & own(language) == set()
