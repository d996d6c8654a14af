"""`build --as bench`: one size, a sheet for each thing on the bed; told, not made, for several."""

from __future__ import annotations

import io
import json
import re
from pathlib import Path

import page as checker
import pypdf
import pytest

from walewright import bench_copies, pipeline
from walewright.cli import main

Said = pytest.CaptureFixture[str]


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    from tests.cli.bad_sources import SOUND

    folder = tmp_path_factory.mktemp("bench")
    (folder / "slackwater.wale").write_text(SOUND, encoding="utf-8")
    assert main(["build", str(folder / "slackwater.wale"), "--size", "M", "--as", "bench", "--out", str(folder)]) == 0
    return (folder / "slackwater.bench.pdf").read_bytes()


def test_a_sheet_for_each_thing_on_the_bed(built: bytes) -> None:
    read = pypdf.PdfReader(io.BytesIO(built))
    pages = [page.extract_text().replace("\N{NO-BREAK SPACE}", " ") for page in read.pages]
    assert "Slack Water, size M" in pages[0]
    assert read.metadata is not None
    assert read.metadata.title == "Slack Water, size M"
    # A sheet of one page is not counted.
    assert all(re.search(r"Slack Water, size M: [^\n]*(tension [\d, ]+( · \d of \d)?|\d of \d)\n", page) for page in pages[:-1])
    assert "tension" in pages[0]
    assert not any("1 of 1\n" in page for page in pages)
    assert all(re.search(r"Slack Water, size M: \w", page) for page in pages)
    assert f"{len(pages)} of {len(pages)}" in pages[-1]
    for words in ("To RC", "Carriage", "In work", "Held", "Waiting", "000", "tension"):
        assert words in pages[0]


def test_an_independent_checker_finds_nothing(built: bytes) -> None:
    report = checker.validate_pdf_bytes(built, profile=checker.ValidationProfile.PDF_UA_1)
    assert [f"{f.rule_id}: {f.message}" for f in report.failures] == []
    assert report.is_compliant


def test_steps_are_in_large_type(built: bytes) -> None:
    sizes: list[tuple[float, str]] = []

    def visit(text: str, _: object, matrix: list[float], __: object, size: float) -> None:
        if text.strip():
            sizes.append((size * abs(matrix[3]), text))

    pypdf.PdfReader(io.BytesIO(built)).pages[0].extract_text(visitor_text=visit)
    assert sizes
    assert min(size for size, _ in sizes) >= 10.9


def test_of_several_sizes_none_is_taken(sound: Path, capsys: Said) -> None:
    out = sound.parent / "out"
    assert main(["build", str(sound), "--as", "text,bench", "--out", str(out)]) == 2
    told = capsys.readouterr().err
    assert "option-value" in told
    assert "a bench copy is of one size, and there are S and M" in told
    assert not list(out.glob("*"))


def test_it_is_made_only_where_it_is_asked_for(sound: Path) -> None:
    out = sound.parent / "out"
    assert main(["build", str(sound), "--size", "M", "--as", "text", "--out", str(out)]) == 0
    assert not list(out.glob("*.bench.pdf"))


def test_a_copy_that_does_not_read_back_is_not_written(sound: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch) -> None:
    def misprinted(outcome: pipeline.Outcome, size: int, copy: bench_copies.BenchCopy) -> object:
        changed = copy.plain_text.replace(" in work, 0 held", " in work, 1 held", 1)
        return proven(outcome, size, bench_copies.BenchCopy(copy.instructions, changed))

    proven = bench_copies.proven_bench
    monkeypatch.setattr(bench_copies, "proven_bench", misprinted)
    out = sound.parent / "out"
    assert main(["build", str(sound), "--size", "M", "--as", "text,bench", "--out", str(out)]) == 1
    assert "words-contradict" in capsys.readouterr().err
    assert not list(out.glob("*.txt"))


def _misprinted_in_m(monkeypatch: pytest.MonkeyPatch) -> None:
    """The bench copy of size number 1 says something else than is planned."""

    def misprinted(outcome: pipeline.Outcome, size: int, copy: bench_copies.BenchCopy) -> object:
        changed = re.sub(r"\b0 (held|gehalten)", r"1 \1", copy.plain_text, count=1) if size == 1 else copy.plain_text
        return proven(outcome, size, bench_copies.BenchCopy(copy.instructions, changed))

    proven = bench_copies.proven_bench
    monkeypatch.setattr(bench_copies, "proven_bench", misprinted)


def test_a_size_that_the_page_has_not_is_told(sound: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch) -> None:
    _misprinted_in_m(monkeypatch)
    out = sound.parent / "out"
    assert main(["build", str(sound), "--as", "html", "--out", str(out), "--messages", "json"]) == 0
    told = [json.loads(line) for line in capsys.readouterr().err.splitlines()]
    assert [(one["code"], one["severity"]) for one in told] == [("size-not-picked", "warning"), ("words-contradict", "warning")]
    assert told[0]["facts"] == {"size": "M"}
    page = (out / "slackwater.html").read_text(encoding="utf-8")
    assert re.findall(r'<template data-size="(\d+)"', page) == ["0"]
    assert main(["build", str(sound), "--as", "html", "--out", str(out), "--language", "german"]) == 0
    assert "[size-not-picked]: Größe M kann auf der Seite für den Browser nicht gewählt werden" in capsys.readouterr().err
    # Where all read back, there is nothing to say.
    assert main(["build", str(sound), "--as", "text,plan", "--out", str(out)]) == 0
    assert capsys.readouterr().err == ""


def test_a_publisher_is_told_too(sound: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch) -> None:
    _misprinted_in_m(monkeypatch)
    catalogue = sound.parent / "one.toml"
    garments = '[usual]\nformats = ["html"]\n\n[[garments]]\nsources = ["*.wale"]\n'
    catalogue.write_text(f'title = "One"\ndate = 2026-03-01\n\n{garments}', encoding="utf-8")
    assert main(["publish", str(catalogue), "--into", str(sound.parent / "shelf"), "--jobs", "1"]) == 0
    assert "warning[size-not-picked]: size M cannot be picked" in capsys.readouterr().err


def test_large_print_is_larger_in_a_browser_too(sound: Path) -> None:
    out = sound.parent / "out"
    pages = []
    for more in ([], ["--large-print"]):
        assert main(["build", str(sound), "--size", "M", "--as", "html", "--out", str(out), *more]) == 0
        pages.append((out / "slackwater.html").read_text(encoding="utf-8"))
    ordinary, large = pages
    assert "html { font-size: 14pt;" in large
    assert "html { font-size: 14pt;" not in ordinary
