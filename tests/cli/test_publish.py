"""`publish`: a catalogue becomes files, each made again when something that it depends on is otherwise, and only then."""

from __future__ import annotations

import datetime
import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import jsonschema
import pypdf
import pytest

from tests.cli.publishing import CATALOGUE, SCARF, Publisher, agrees, in_process, publisher
from walewright.catalogue import schema
from walewright.cli import main
from walewright.cli.formats import NAMES
from walewright.cli.options import PAPERS, UNITS
from walewright.cli.publishing.records import FOLDER
from walewright.guide.english import LANGUAGE
from walewright.languages import printed

Said = pytest.CaptureFixture[str]


@pytest.fixture
def scarves(tmp_path: Path) -> Publisher:
    """Two sources and their catalogue."""
    return publisher(tmp_path / "scarves")


@pytest.fixture
def made(scarves: Publisher, capsys: Said) -> Publisher:
    """The same, published."""
    assert scarves.run() == 0
    capsys.readouterr()
    return scarves


EACH = ("{}.html", "{}.txt", "{}.cover.svg")


def of(*names: str) -> set[str]:
    """The products of sources."""
    return {form.format(name) for name in names for form in EACH}


def test_all_is_made_and_told_of(scarves: Publisher, capsys: Said) -> None:
    assert scarves.run() == 0
    said = capsys.readouterr()
    assert said.err == ""
    assert said.out.splitlines()[-1] == "made 6 files; 0 as before"
    assert set(scarves.files()) == {*of("lagoon", "skerry"), "catalogue.json", "index.html"}
    agrees(scarves)
    jsonschema.Draft202012Validator.check_schema(schema())
    jsonschema.Draft202012Validator(schema()).validate(scarves.manifest())


def test_the_schema_has_all_forms_that_there_are() -> None:
    product = schema()["$defs"]["product"]["properties"]
    assert set(product["format"]["enum"]) == set(NAMES)
    assert (tuple(product["paper"]["enum"]), tuple(product["units"]["enum"])) == (PAPERS, UNITS)
    words = LANGUAGE.words.phrases
    assert {f"shelf/format/{name}" for name in NAMES if name != "cover"} == {
        key for key in words if key.startswith("shelf/format/")
    }
    assert {f"shelf/form/{name}" for name in (*PAPERS, *UNITS)} < set(words)


def test_a_manifest_that_lies_is_refused_by_its_schema(made: Publisher) -> None:
    for damage in ({"pages": 0}, {"sha256": "x"}, {"format": "epub"}, {"author": "x"}):
        document = made.manifest()
        document["garments"][0]["products"][0] |= damage
        with pytest.raises(jsonschema.ValidationError):
            jsonschema.Draft202012Validator(schema()).validate(document)


def test_facts_of_a_garment(made: Publisher) -> None:
    garment = made.manifest()["garments"][0]
    assert (garment["source"], garment["title"], garment["sizes"]) == ("lagoon.wale", "Lagoon", ["S", "M"])
    assert garment["bed"] == {"name": "bulky", "label": garment["bed"]["label"], "needles": 100, "pitch_mm": 8.0}
    assert [yarn["label"] for yarn in garment["yarn"]] == ["chunky wool"]
    assert garment["yarn"][0]["tex"] == pytest.approx(833.3)
    assert garment["yarn"][0]["grams"]["M"] > garment["yarn"][0]["grams"]["S"] > 50
    assert "e-wrap" in [technique["key"] for technique in garment["techniques"]]
    assert [size["size"] for size in garment["proof"]] == ["S", "M"]


def test_pages_are_counted(tmp_path: Path) -> None:
    one = publisher(tmp_path / "one", ("lagoon",))
    one.says(CATALOGUE.replace('["html", "text"]', '["pdf"]').replace("[[garments]]", 'papers = ["letter"]\n\n[[garments]]'))
    assert one.run() == 0
    product = one.manifest()["garments"][0]["products"][0]
    reader = pypdf.PdfReader(one.into / product["file"])
    assert product["pages"] == len(reader.pages) > 2
    assert reader.pages[0].mediabox.width == 612
    text = "".join(page.extract_text() for page in reader.pages)
    assert "2026-03-01" in text
    assert "First edition" in text


DATES = {"english": "2026-03-01", "german": "1. März 2026"}
"""How each language writes the day of the edition."""


def test_the_date_on_a_page_is_the_editions(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """In the words of its language, whatever the day is and whatever the environment says of it."""
    other = {"2001-09-09", "9 September 2001", "9. September 2001", *_forms(datetime.datetime.now(datetime.UTC).date())}
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1000000000")
    one = publisher(tmp_path / "one", ("lagoon",))
    one.says(CATALOGUE.replace('["html", "text"]', '["html", "pdf", "text", "plan"]\nlanguages = ["english", "german"]'))
    assert one.run() == 0
    for language, date in DATES.items():
        page = (one.into / f"lagoon-{language}.html").read_text(encoding="utf-8")
        pdf = pypdf.PdfReader(one.into / f"lagoon-{language}.pdf")
        texts = {"page": page, "paper": " ".join("".join(p.extract_text() for p in pdf.pages).split())}
        for what, text in texts.items():
            assert date in text, (language, what)
            assert [found for found in other if found in text] == [], (language, what)
        assert f'content="{CREATED}"' in page
        assert pdf.metadata is not None
        assert str(pdf.metadata.creation_date_raw).startswith(f"D:{CREATED.replace('-', '')}")
    shelf = (one.into / "index.html").read_text(encoding="utf-8")
    assert f"First edition, {DATES['english']}" in shelf
    assert [found for found in other if found in shelf] == []
    # The first language of the catalogue is that of its shelf.
    one.says(one.catalogue.read_text(encoding="utf-8").replace('["english", "german"]', '["german", "english"]'))
    assert one.run() == 0
    assert f"First edition, {DATES['german']}" in (one.into / "index.html").read_text(encoding="utf-8")


CREATED = "2026-03-01"


def _forms(day: datetime.date) -> set[str]:
    """A day as pages would have it."""
    return {day.isoformat(), *(printed(language).guide.date(day.isoformat()) for language in DATES)}


def test_another_date_of_the_edition_makes_its_pages_anew(made: Publisher, capsys: Said) -> None:
    made.says(CATALOGUE.replace("2026-03-01", "2026-04-02"))
    pages = {"lagoon.html", "skerry.html"}
    assert made.why(capsys) == dict.fromkeys(pages, "the catalogue says otherwise of `date`")
    assert "2026-04-02" in made.files()["lagoon.html"].decode()
    assert "2026-04-02" in (made.into / "catalogue.json").read_text(encoding="utf-8")


QUIET = ("weasyprint", "lark", "highspy", "jinja2", "fontTools", "PIL", "rich", "pebble", "walewright.design", "walewright.sheet")


def test_a_run_with_nothing_to_do_opens_nothing(made: Publisher) -> None:
    before = {p: p.stat().st_mtime_ns for p in made.into.rglob("*")}
    seen = (
        "import sys, time; from walewright.cli import main; began = time.process_time(); code = main(sys.argv[1:]);"
        "sys.stderr.write(f'{code} {time.process_time() - began}\\n' + ' '.join(sys.modules))"
    )
    command = [sys.executable, "-c", seen, *made.arguments()]
    done = subprocess.run(command, capture_output=True, text=True, check=True)
    figures, modules = done.stderr.split("\n")
    assert done.stdout == "made 0 files; 6 as before\n"
    assert figures.startswith("0 ")
    assert float(figures.split(" ")[1]) < 0.5
    assert [name for name in QUIET if name in modules.split(" ")] == []
    assert {p: p.stat().st_mtime_ns for p in made.into.rglob("*")} == before


@pytest.mark.campaign
def test_the_shipped_catalogue_is_made_whole(tmp_path: Path, capsys: Said) -> None:
    shipped = Path(__file__).resolve().parents[2] / "patterns"
    whole = Publisher(shipped, tmp_path / "shelf")
    arguments = [str(shipped / "catalogue.toml") if a.endswith("scarves.toml") else a for a in whole.arguments("--jobs", "2")]
    assert main(arguments) == 0
    agrees(whole)
    assert len(whole.manifest()["garments"]) == len(list(shipped.glob("*.wale")))
    jsonschema.Draft202012Validator(schema()).validate(whole.manifest())


def test_a_source_that_changed(made: Publisher, capsys: Said) -> None:
    made.source("skerry").write_text(SCARF.format(name="Skerry", length=44), encoding="utf-8")
    assert made.why(capsys) == dict.fromkeys(of("skerry"), "skerry.wale changed")
    assert "44 cm long" in made.files()["skerry.txt"].decode()
    agrees(made)
    assert made.why(capsys) == {}


def test_a_file_that_is_used(scarves: Publisher, capsys: Said) -> None:
    text = SCARF.format(name="Skerry", length=44)
    yarn, rest = text.split("yarn ")[1].split("\n\n", 1)
    (scarves.folder / "yarns").mkdir()
    shared = scarves.folder / "yarns" / "wool.wale"
    shared.write_text(f"yarn {yarn}\n", encoding="utf-8")
    scarves.source("skerry").write_text(f'{text.split("yarn ")[0]}use wool from "yarns/wool.wale"\n\n{rest}', encoding="utf-8")
    assert scarves.run() == 0
    assert set(scarves.manifest()["garments"][1]["files"]) == {"skerry.wale", "yarns/wool.wale"}
    assert scarves.why(capsys) == {}
    shared.write_text(f"yarn {yarn}\n".replace("chunky wool", "thick wool"), encoding="utf-8")
    assert scarves.why(capsys) == dict.fromkeys(of("skerry"), "yarns/wool.wale changed")
    assert "thick wool" in scarves.files()["skerry.txt"].decode()
    shared.unlink()
    assert scarves.run("--why") == 1
    assert "skerry.html: yarns/wool.wale is gone" in capsys.readouterr().out


def test_a_photograph(scarves: Publisher, capsys: Said) -> None:
    from PIL import Image

    picture = scarves.folder / "scarf.jpg"
    Image.new("RGB", (600, 600), "navy").save(picture)
    source = scarves.source("skerry")
    source.write_text(
        source.read_text().replace("\n\nsizes", '\n    photograph "scarf.jpg", showing "A scarf"\n\nsizes'), encoding="utf-8"
    )
    assert scarves.run() == 0
    assert scarves.why(capsys) == {}
    Image.new("RGB", (600, 600), "teal").save(picture)
    assert scarves.why(capsys) == dict.fromkeys(of("skerry"), "scarf.jpg changed")


GRADED = SCARF.replace("    length {length} 60 cm", "    bust from women bust, to fit\n    length {length} 60 cm")


def test_a_size_table(tmp_path: Path) -> None:
    """In an installation of its own, for the tables are shipped."""
    root, own = Path(__file__).resolve().parents[2], tmp_path / "own"
    for name in ("src", "grammar", "patterns"):
        shutil.copytree(root / name, own / name, ignore=shutil.ignore_patterns("__pycache__"))
    made = publisher(tmp_path / "scarves")
    made.source("skerry").write_text(GRADED.format(name="Skerry", length=44), encoding="utf-8")
    more = {"PYTHONPATH": str(own / "src")}
    assert in_process(made.arguments(), tmp_path, more).returncode == 0
    before = made.files()
    table = own / "patterns" / "tables" / "women.csv"
    text = table.read_text(encoding="utf-8")
    assert text.count("M,bust,91.5,96.5,") == 1
    table.write_text(text.replace("M,bust,91.5,96.5,", "M,bust,91.5,97.5,"), encoding="utf-8")
    done = in_process(made.arguments("--why"), tmp_path, more)
    told = [line for line in done.stdout.splitlines() if ": " in line]
    assert sorted(told) == sorted(f"{product}: tables/women.csv changed" for product in of("skerry"))
    assert made.files()["skerry.html"] != before["skerry.html"]
    # Another compiler makes all of it anew.
    (own / "src" / "walewright" / "sheet" / "themes" / "booklet.css").open("a", encoding="utf-8").write("\n")
    done = in_process(made.arguments("--why"), tmp_path, more)
    assert done.stdout.count(": another compiler") == 6


def test_a_theme_changes_what_is_printed_with_it(scarves: Publisher, capsys: Said) -> None:
    theme = scarves.folder / "quiet"
    theme.mkdir()
    (theme / "theme.toml").write_text('[colours]\naccent = "#7a2f3b"\n', encoding="utf-8")
    scarves.says(CATALOGUE.replace("[[garments]]", 'themes = ["house", "quiet"]\n[themes]\nquiet = "quiet"\n\n[[garments]]'))
    assert scarves.run() == 0
    assert scarves.why(capsys) == {}
    (theme / "theme.toml").write_text('[colours]\naccent = "#2f3b7a"\n', encoding="utf-8")
    quiet = {"lagoon-quiet.html", "skerry-quiet.html"}
    assert scarves.why(capsys) == dict.fromkeys(quiet, "quiet/theme.toml changed")
    assert "#2f3b7a" in scarves.files()["skerry-quiet.html"].decode()
    # One that was not there before.
    (theme / "theme.css").write_text("h1 { color: var(--accent); }", encoding="utf-8")
    assert scarves.why(capsys) == dict.fromkeys(quiet, "quiet/theme.css changed")


def test_what_the_catalogue_says(made: Publisher, capsys: Said) -> None:
    pages = {"lagoon.html", "skerry.html"}
    made.says(CATALOGUE.replace("First", "Second"))
    assert made.why(capsys) == dict.fromkeys(pages, "the catalogue says otherwise of `edition`")
    made.says(CATALOGUE.replace("First", "Second").replace("[usual]", '[usual]\nunits = ["in"]'))
    assert made.why(capsys) == dict.fromkeys({*pages, "lagoon.txt", "skerry.txt"}, "the catalogue says otherwise of `units`")
    made.says(made.catalogue.read_text().replace('"Scarves"', '"All scarves"'))
    before = made.files()
    assert made.why(capsys) == {}
    assert {name for name, data in made.files().items() if before[name] != data} == {"catalogue.json", "index.html"}


def test_a_new_form_makes_only_what_is_new(made: Publisher, capsys: Said) -> None:
    made.says(CATALOGUE.replace('"text"]', '"text", "plan"]'))
    assert made.why(capsys) == {"lagoon.plan.json": "new", "skerry.plan.json": "new"}
    agrees(made)


def test_files_that_were_changed_or_deleted_by_hand(made: Publisher, capsys: Said) -> None:
    before = made.files()
    (made.into / "lagoon.html").unlink()
    (made.into / "skerry.txt").write_bytes(before["skerry.txt"] + b" ")
    (made.into / "catalogue.json").write_bytes(before["catalogue.json"][:-9])
    (made.into / "index.html").unlink()
    assert made.why(capsys) == {"lagoon.html": "the file is gone", "skerry.txt": "the file was changed"}
    assert made.files() == before


@pytest.mark.parametrize("damage", ["cut short", "empty", "no JSON", "another number", "pickled", "of another", "huge"])
def test_a_damaged_entry_is_made_again(made: Publisher, capsys: Said, damage: str) -> None:
    before = made.files()
    entry, other = made.records()
    data = entry.read_bytes()
    name = json.loads(data)["record"]["making"].split(".")[0]
    entry.write_bytes(
        {
            "cut short": data[: len(data) // 2],
            "empty": b"",
            "no JSON": b"{" * 100_000,
            "another number": data.replace(b'"bytes":', b'"bytes":1', 1),
            "pickled": b"cos\nsystem\n(S'touch owned'\ntR.",
            "of another": other.read_bytes(),
            "huge": data + b" " * 5_000_000,
        }[damage]
    )
    assert made.why(capsys) == dict.fromkeys(of(name), "what was kept of it is damaged" if damage != "huge" else "new")
    assert made.files() == before
    assert len(made.records()) == 2
    assert made.why(capsys) == {}


def test_what_is_kept_is_json_and_no_more_than_the_catalogue(made: Publisher, capsys: Said) -> None:
    (made.into / FOLDER / ("0" * 32 + ".json")).write_bytes(b"{}")
    assert made.why(capsys) == {}
    assert all(json.loads(path.read_bytes()) for path in (made.into / FOLDER).iterdir())
    assert len(made.records()) == 2


def test_what_is_no_longer_in_the_catalogue_is_taken_away(made: Publisher, capsys: Said) -> None:
    (made.into / "lagoon.txt").write_text("a publisher's own", encoding="utf-8")
    made.says(CATALOGUE.replace('["*.wale"]', '["skerry.wale"]'))
    assert made.run() == 0
    out = capsys.readouterr().out
    assert out.count("withdrew ") == 2
    assert out.endswith("made 0 files; 3 as before; 2 withdrawn\n")
    assert set(made.files()) == {*of("skerry"), "lagoon.txt", "catalogue.json", "index.html"}
    assert len(made.records()) == 1


def test_a_form_that_is_no_longer_wanted_is_taken_away(made: Publisher, capsys: Said) -> None:
    made.says(CATALOGUE.replace('["html", "text"]', '["html"]'))
    assert made.run() == 0
    assert capsys.readouterr().out.endswith("made 0 files; 4 as before; 2 withdrawn\n")
    agrees(made)
    assert made.run() == 0
    assert capsys.readouterr().out == "made 0 files; 4 as before\n"


def test_a_source_that_only_defines_now_has_no_products(made: Publisher, capsys: Said) -> None:
    made.source("lagoon").write_text('yarn wool "chunky wool", 100 g = 120 m\n', encoding="utf-8")
    assert made.run() == 0
    assert capsys.readouterr().out.endswith("made 0 files; 3 as before; 3 withdrawn\n")
    agrees(made)


def test_one_that_fails_keeps_its_products_and_holds_up_nobody(made: Publisher, capsys: Said) -> None:
    before = made.files()
    made.source("lagoon").write_text("nonsense\n", encoding="utf-8")
    made.source("skerry").write_text(SCARF.format(name="Skerry", length=44), encoding="utf-8")
    assert made.run() == 1
    said = capsys.readouterr()
    assert "unreadable-line" in said.err
    assert said.out.endswith("made 3 files; 0 as before; not made: 1 garment\n")
    assert {name for name, data in made.files().items() if before[name] != data} == {*of("skerry"), "catalogue.json", "index.html"}
    agrees(made)
    # It is told again as long as it is so.
    assert made.run() == 1


def test_definitions_make_nothing(made: Publisher, capsys: Said) -> None:
    (made.folder / "wool.wale").write_text('yarn wool "chunky wool", 100 g = 120 m\n', encoding="utf-8")
    assert set(made.why(capsys)) == of("wool")
    assert made.why(capsys) == {}
    assert [garment["source"] for garment in made.manifest()["garments"]] == ["lagoon.wale", "skerry.wale"]


def test_a_choice_that_is_none_is_told_in_the_catalogue(scarves: Publisher, capsys: Said) -> None:
    scarves.says(CATALOGUE + 'choices = {fringe = "long"}\nsizes = ["S", "L"]\n')
    assert scarves.run() == 1
    err = capsys.readouterr().err
    assert 'choices = {fringe = "long"}' in err
    assert 'sizes = ["S", "L"]' in err
    assert "scarves.toml" in err


def test_sizes_that_are_asked_for(scarves: Publisher) -> None:
    scarves.says(CATALOGUE + 'sizes = ["S"]\n')
    assert scarves.run() == 0
    assert [garment["sizes"] for garment in scarves.manifest()["garments"]] == [["S"], ["S"]]


@pytest.mark.parametrize(
    ("arguments", "code", "told"),
    [
        (["publish", "nothing.toml"], 1, "source-missing"),
        (["publish", "scarf.wale"], 2, "option-value"),
        (["publish", "scarves.toml", "--jobs", "0"], 2, "option-value"),
        (["publish", "scarves.toml", "--messages", "xml"], 2, "option-value"),
        (["publish"], 2, "argument-missing"),
        (["publish", "scarves.toml", "lagoon.wale"], 2, "command-line"),
    ],
)
def test_a_wrong_command_line(scarves: Publisher, arguments: list[str], code: int, told: str) -> None:
    done = in_process(arguments, scarves.folder)
    assert (done.returncode, f"error[{told}]" in done.stderr) == (code, True), done.stderr


def test_a_theme_that_is_unfit_is_told_before_anything_is_made(scarves: Publisher, capsys: Said) -> None:
    scarves.says(CATALOGUE.replace("[[garments]]", 'themes = ["quiet"]\n[themes]\nquiet = "quiet.txt"\n\n[[garments]]'))
    assert scarves.run() == 1
    assert "error[catalogue-line]: the theme" in capsys.readouterr().err
    assert not list(scarves.into.glob("*.txt"))


def test_a_folder_belongs_to_one_catalogue(made: Publisher, capsys: Said) -> None:
    before = made.files()
    other = made.folder / "other.toml"
    shutil.copy(made.catalogue, other)
    assert Publisher(made.folder, made.into).run() == 0
    moved = [str(other) if argument == str(made.catalogue) else argument for argument in made.arguments()]
    assert in_process(moved, made.folder).returncode == 2
    assert made.files() == before


def test_files_of_somebody_else_are_left(scarves: Publisher, capsys: Said) -> None:
    scarves.into.mkdir()
    (scarves.into / "index.html").write_text("mine", encoding="utf-8")
    assert scarves.run() == 2
    assert "catalogue-folder" in capsys.readouterr().err
    assert scarves.files() == {"index.html": b"mine"}


def test_a_source_whose_name_is_no_text_is_refused(scarves: Publisher, capsys: Said) -> None:
    (scarves.folder / os.fsdecode(b"\xff\xfe.wale")).write_text(SCARF.format(name="Odd", length=40), encoding="utf-8")
    assert scarves.run() == 1
    assert "is no text in UTF-8" in capsys.readouterr().err
    assert not scarves.into.exists()


@pytest.mark.parametrize(("data", "help_"), [(b"\0", "ends in .toml"), (None, "ends in .toml")], ids=["binary", "folder"])
def test_what_is_no_catalogue_is_told_in_its_own_terms(data: bytes | None, help_: str, scarves: Publisher, capsys: Said) -> None:
    scarves.catalogue.unlink()
    if data is None:
        scarves.catalogue.mkdir()
    else:
        scarves.catalogue.write_bytes(data)
    assert scarves.run() == 1
    assert help_ in capsys.readouterr().err
    assert not scarves.into.exists()


def test_messages_for_programs(scarves: Publisher, capsys: Said) -> None:
    scarves.says(CATALOGUE.replace("2026-03-01", '"spring"'))
    assert scarves.run("--messages", "json") == 1
    (message,) = (json.loads(line) for line in capsys.readouterr().err.splitlines())
    assert (message["code"], message["case"]) == ("catalogue-line", "no-date")
    assert (message["span"]["start_line"], message["span"]["start_column"]) == (3, 8)
