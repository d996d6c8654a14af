"""From the pictures to the file that is taken away, without a script."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from contextlib import AbstractContextManager
from pathlib import Path

import pytest
from starlette.testclient import TestClient

from tests.serve.conftest import ROOT, serving_client
from tests.serve.html_seen import Seen
from walewright.cli import main
from walewright.cli.garments import shipped_garments
from walewright.serve import working
from walewright.serve.pool import Limits
from walewright.world import shipped_path

Said = pytest.CaptureFixture[str]

JOURNEYS = {
    # A pullover, a sock, a shawl.
    "tidewrack": {"size": "M", "measure:length": "60", "swatch-st:plain": "40", "swatch-rows:plain": "60",
                  "swatch-wide:plain": "30,5", "swatch-high:plain": "32", "bed-needles": "110"},
    "driftline": {"size": "woman_shoe_7", "measure:foot": "23", "dial:plain": "6"},
    "sandbar": {"measure:span": "150"},
}  # fmt: skip


def filled(client: TestClient, name: str, own: dict[str, str]) -> dict[str, str]:
    """The form as it comes, with figures filled in."""
    seen = Seen(client.get(f"{ROOT}/garment/{name}").text)
    assert set(own) <= set(seen.fields) | {"size"}
    return {**seen.fields, **{key: text for key, text in own.items() if text}}


def test_every_shipped_garment_is_offered_with_its_picture(client: TestClient) -> None:
    seen = Seen(client.get(f"{ROOT}/").text)
    for garment in shipped_garments():
        assert f"{ROOT}/garment/{garment.name}" in seen.links
        assert f"{ROOT}/cover/{garment.name}.svg" in seen.links
    drawn = client.get(f"{ROOT}/cover/sandbar.svg")
    assert drawn.headers["content-type"] == "image/svg+xml"
    assert drawn.text.startswith("<svg")
    assert "<path" in drawn.text


@pytest.mark.parametrize("name", JOURNEYS)
def test_a_garment_is_regraded_and_taken_away(name: str, client: TestClient, tmp_path: Path, capsys: Said) -> None:
    form = filled(client, name, JOURNEYS[name])
    answer = client.post(f"{ROOT}/garment/{name}", data=form)
    assert answer.status_code == 200
    seen = Seen(answer.text)
    assert "It can be knitted" in seen.text
    assert answer.text.count("<svg") >= 1
    assert "needles" in seen.text.lower()
    assert "Balls" in seen.text
    assert seen.fields == form, "the form stands filled in beside the result"
    kept = client.post(f"{ROOT}/garment/{name}/keep", data=form)
    assert kept.headers["content-disposition"] == f'attachment;filename="{name}.figures.json"'
    plan = client.post(f"{ROOT}/garment/{name}/plan", data=form)
    assert plan.headers["content-type"] == "application/json"
    _same_on_the_command_line(name, kept.content, plan.content, tmp_path, capsys)
    again = client.post(f"{ROOT}/recall", files={"file": ("mine.json", kept.content)}, data={"pasted": ""})
    recalled = Seen(again.text)
    assert "It can be knitted" in recalled.text
    assert {k: v.replace(",", ".") for k, v in recalled.fields.items() if v} == {
        k: v.replace(",", ".") for k, v in form.items() if v
    }


def _same_on_the_command_line(name: str, kept: bytes, plan: bytes, folder: Path, capsys: Said) -> None:
    (folder / "mine.figures.json").write_bytes(kept)
    source = str(shipped_path("patterns", f"{name}.wale"))
    command = ["build", source, "--from", str(folder / "mine.figures.json"), "--as", "plan", "--out", str(folder / "out")]
    assert main(command) == 0, capsys.readouterr().err
    capsys.readouterr()
    built = json.loads((folder / "out" / f"{name}.plan.json").read_bytes())
    assert json.loads(plan) == built


@pytest.mark.parametrize(("form", "begins"), [("pdf", b"%PDF"), ("bench", b"%PDF"), ("html", b"<!"), ("text", b"SANDBAR")])
def test_each_format_is_made(form: str, begins: bytes, client: TestClient) -> None:
    made = client.post(f"{ROOT}/garment/sandbar/{form}", data={"measure:span": "150"})
    assert made.status_code == 200
    assert made.content[: len(begins)].upper() == begins.upper()
    assert made.headers["content-disposition"].startswith('attachment;filename="sandbar.')


def test_pasted_figures_fill_the_form(client: TestClient) -> None:
    text = json.dumps(
        {"walewright": "figures", "version": 1, "garment": "sandbar", "measure": {"span": "60 in"}, "dial": {"plain": "5"}}
    )
    seen = Seen(client.post(f"{ROOT}/recall", data={"pasted": text}).text)
    assert seen.fields["measure:span"] == "152.4"
    assert seen.fields["dial:plain"] == "5"


@pytest.mark.parametrize("text", ["", "{}", "[1", '{"walewright": "figures", "version": 1, "garment": "nowhere"}'])
def test_what_is_no_figures_is_told_and_kept(text: str, client: TestClient) -> None:
    answer = client.post(f"{ROOT}/recall", data={"pasted": text})
    assert answer.status_code == 422
    assert "no figures that this page kept" in answer.text
    assert text.replace('"', "&#34;") in answer.text


ABSURD = {
    "a giant": {"measure:bust": "300"},
    "nothing": {"measure:bust": "0"},
    "less than nothing": {"measure:bust": "-40"},
    "a word": {"measure:bust": "broad"},
    "another's statement": {"measure:bust": "104 cm\npiece evil in plain"},
    "markup": {"measure:bust": '"><script>alert(1)</script>'},
    "half a swatch": {"swatch-st:plain": "40"},
    "a swatch and a tension": {"st:plain": "13", "rows:plain": "18", "swatch-st:plain": "40", "swatch-rows:plain": "60",
                               "swatch-wide:plain": "30", "swatch-high:plain": "32"},
    "no needles": {"bed-needles": "0"},
    "a file for a bed": {"bed": "/etc/passwd.wale"},
    "no such size": {"size": "Z"},
    "a yarn of no weight": {"grams:wool": "0"},
}  # fmt: skip


@pytest.mark.parametrize("what", ABSURD)
def test_absurd_figures_are_told_in_words_and_the_form_is_kept(what: str, client: TestClient) -> None:
    form = filled(client, "tidewrack", {"size": "M", **ABSURD[what], "measure:length": "61.5"})
    answer = client.post(f"{ROOT}/garment/tidewrack", data=form)
    seen = Seen(answer.text)
    assert answer.status_code == 200
    assert "It cannot be knitted so" in seen.text
    assert "Not possible:" in seen.text
    assert seen.fields == {key: text.replace("\r", "") for key, text in form.items()}
    for foreign in ("Traceback", "--measure", "--swatch", "tidewrack.wale", "line 1", "<script>alert"):
        assert foreign not in answer.text, foreign
    refused = client.post(f"{ROOT}/garment/tidewrack/pdf", data=form)
    assert refused.headers["content-type"].startswith("text/html")
    assert Seen(refused.text).fields == seen.fields


def test_how_far_a_measure_may_go_is_said_of_the_body(client: TestClient) -> None:
    seen = Seen(client.post(f"{ROOT}/garment/tidewrack", data={"size": "M", "measure:bust": "300"}).text)
    assert "With bust at 300 cm the sleeve has no height left between cuff and widest." in seen.text
    assert re.search(r"Bust may be at most [\d.]+ cm here", seen.text)
    assert "Nearest size: 4X, 144.5 cm." in seen.text


def test_a_bed_that_is_too_small_is_said_of_piece_and_bed(client: TestClient) -> None:
    seen = Seen(client.post(f"{ROOT}/garment/marram", data={"size": "M", "measure:bust": "300"}).text)
    assert "With bust at 300 cm the back is 428 needles wide; your bed has 200." in seen.text
    assert "And the left front is 210 needles wide; your bed has 200." in seen.text
    seen = Seen(client.post(f"{ROOT}/garment/tidewrack", data={"bed-needles": "20"}).text)
    assert "On this bed the back is 80 needles wide; your bed has 20." in seen.text


def test_a_figure_of_another_alternative_is_kept(client: TestClient) -> None:
    seen = Seen(client.post(f"{ROOT}/garment/sandbar", data={"measure:no_such_row": "12"}).text)
    assert seen.fields["measure:no_such_row"] == "12"
    assert "It can be knitted" in seen.text


def test_every_field_has_a_label_and_an_id_of_its_own(client: TestClient) -> None:
    seen = Seen(client.post(f"{ROOT}/garment/tidewrack", data={"size": "M"}).text)
    assert {f"f-{name}" for name in seen.fields} <= seen.labelled
    assert len(seen.ids) == len(set(seen.ids))
    assert all(link.startswith((ROOT, "#", "data:,")) for link in seen.links)
    assert all(action.startswith(ROOT) for action in (*seen.forms, *seen.actions))


FolderClient = Callable[[Path], AbstractContextManager[TestClient]]


def test_a_folder_has_its_own_garments_and_nothing_outside(tmp_path: Path, folder_client: FolderClient) -> None:
    source = shipped_path("patterns", "sandbar.wale").read_text(encoding="utf-8")
    (tmp_path / "in").mkdir()
    (tmp_path / "in" / "mine & <yours>.wale").write_text(source, encoding="utf-8")
    (tmp_path / "in" / "broken.wale").write_text('pattern "Broken"\n\npiece what in nothing\n', encoding="utf-8")
    (tmp_path / "in" / "shared.wale").write_text("shape x\n", encoding="utf-8")
    (tmp_path / "out.wale").write_text(source, encoding="utf-8")
    (tmp_path / "in" / "led_out.wale").symlink_to(tmp_path / "out.wale")
    with folder_client(tmp_path / "in") as client:
        seen = Seen(client.get(f"{ROOT}/").text)
        offered = sorted(link.rpartition("/")[2] for link in seen.links if "/garment/" in link)
        assert offered == ["broken", "mine%20%26%20%3Cyours%3E"]
        mine = client.post(f"{ROOT}/garment/{offered[1]}", data={})
        assert "It can be knitted" in mine.text
        broken = client.post(f"{ROOT}/garment/broken", data={"measure:x": "12"})
        assert broken.status_code == 200
        assert "cannot be understood as it is written" in broken.text
        assert Seen(broken.text).fields["measure:x"] == "12"
        assert client.get(f"{ROOT}/cover/broken.svg").status_code == 404


def test_hopeless_work_is_stopped_and_the_rest_goes_on() -> None:
    hasty = Limits(seconds=0.01, processes=1)
    with serving_client(shipped_garments(), hasty) as client:
        for _ in range(3):
            answer = client.post(f"{ROOT}/garment/tidewrack", data={"measure:bust": "104"})
            assert answer.status_code == 503
            assert "took too long" in answer.text
            assert Seen(answer.text).fields["measure:bust"] == "104"
        assert client.get(f"{ROOT}/").status_code == 200


def test_a_process_without_memory_is_no_end() -> None:
    with serving_client(shipped_garments(), Limits(memory=40 * 1024**2, processes=1)) as client:
        answer = client.post(f"{ROOT}/garment/tidewrack", data={"measure:bust": "104"})
        assert answer.status_code in (500, 503)
        assert Seen(answer.text).fields["measure:bust"] == "104"
        assert client.get(f"{ROOT}/").status_code == 200


def test_too_much_at_once_is_told() -> None:
    with serving_client(shipped_garments(), Limits(waiting=0, processes=1)) as client:
        answer = client.post(f"{ROOT}/garment/tidewrack", data={"measure:bust": "104"})
        assert answer.status_code == 503
        assert "Too much at once" in answer.text
        assert Seen(answer.text).fields["measure:bust"] == "104"


OWN = {
    "size": "M", "choose:sleeves": "long", "choose:neckline": "v", "measure:bust": "92", "swatch-st:rib": "39",
    "swatch-rows:rib": "60", "swatch-wide:rib": "13,9", "swatch-high:rib": "14,7", "dial:plain": "7", "yarn:wool": "Schafwolle",
    "bed-needles": "190",
}  # fmt: skip
"""For redshank, whose names are others on a German page: sizes, necks, measures, fabrics and yarns."""


@pytest.mark.parametrize(("kept_in", "read_in"), [("german", "english"), ("english", "german")])
def test_what_one_language_keeps_another_one_reads(kept_in: str, read_in: str, tmp_path: Path, capsys: Said) -> None:
    one = Limits(processes=1)
    with serving_client(shipped_garments(), one, language=kept_in) as client:
        kept = client.post(f"{ROOT}/garment/redshank/keep", data=OWN)
        before = Seen(client.post(f"{ROOT}/garment/redshank", data=OWN).text)
    with serving_client(shipped_garments(), one, language=read_in) as client:
        recalled = Seen(client.post(f"{ROOT}/recall", data={"pasted": kept.text}).text)
        again = client.post(f"{ROOT}/garment/redshank/keep", data=recalled.fields)
    filled_in = {name: text for name, text in recalled.fields.items() if text and name != "garment"}
    assert {k: v.replace(",", ".") for k, v in OWN.items()}.items() <= filled_in.items()
    assert again.text == kept.text
    assert set(before.fields) == set(recalled.fields)
    # The command line takes it in both as well, and makes the same of it.
    file = tmp_path / "mine.figures.json"
    file.write_text(kept.text, encoding="utf-8")
    counts = []
    for language in (kept_in, read_in):
        assert main(["check", "redshank", "--from", str(file), "--language", language]) == 0
        told = capsys.readouterr()
        assert told.err == ""
        counts.append(re.findall(r"\d+", told.out))
    assert counts[0] == counts[1]


def test_a_knitter_is_told_by_the_names_that_the_page_has() -> None:
    with serving_client(shipped_garments(), Limits(processes=1), language="german") as client:
        told = Seen(client.post(f"{ROOT}/garment/marram", data={"measure:bust": "300"}).text).text
    assert "Mit Brustumfang: 300 cm" in told
    assert "Rückenteil braucht 428 Nadeln" in told
    assert "Brustumfang darf hier bei allem sonst Gegebenen höchstens" in told
    assert "back" not in told


WRONG_FILES = {"a PDF": b"%PDF-1.4\n\xff\xfe", "UTF-16": 'pattern "X"\n'.encode("utf-16")}


@pytest.mark.parametrize("place", ["yours", "recall"])
@pytest.mark.parametrize("data", WRONG_FILES.values(), ids=WRONG_FILES)
def test_the_wrong_file_is_told_where_another_can_be_given(data: bytes, place: str, client: TestClient) -> None:
    answer = client.post(f"{ROOT}/{place}", files={"file": ("mine.wale", data)})
    assert answer.status_code == 400
    told = {"yours": "There was no source, or it is no text in UTF-8", "recall": "no figures that this page kept"}
    assert told[place] in answer.text
    assert 'name="file"' in answer.text


def test_a_source_without_a_garment_is_told(client: TestClient) -> None:
    answer = client.post(f"{ROOT}/yours", data={"source": 'yarn wool "wool", 100 g = 120 m\n'})
    assert "It has no garment of its own." in answer.text


def test_what_no_file_would_remember_is_told_and_not_kept(client: TestClient) -> None:
    answer = client.post(f"{ROOT}/garment/sandbar/keep", data={"measure:span": "9" * 500})
    assert answer.headers["content-type"].startswith("text/html")
    assert "It cannot be knitted so" in answer.text
    assert Seen(answer.text).fields["measure:span"] == "9" * 500


def test_what_a_file_remembers_of_another_garment_is_told() -> None:
    old = {"walewright": "figures", "version": 1, "garment": "sandbar", "measure": {"span": "150 cm", "full_chest": "95 cm"}}
    with serving_client(shipped_garments(), Limits(processes=1)) as client:
        seen = Seen(client.post(f"{ROOT}/recall", data={"pasted": json.dumps(old)}).text)
        assert seen.fields["measure:span"] == "150"
        assert "this garment does not ask for it as it is chosen now: Full chest." in seen.text
        # It is not lost, for another alternative may ask for it.
        again = Seen(client.post(f"{ROOT}/garment/sandbar", data=seen.fields).text)
        assert again.fields["measure:full_chest"] == "95"
        assert "does not ask" not in Seen(client.post(f"{ROOT}/garment/sandbar", data={"measure:span": "150"}).text).text


@pytest.mark.parametrize("language", ["english", "german"])
@pytest.mark.parametrize("name", ["bollard", "driftline", "sandbar", "marram"])
def test_every_language_has_the_pictures(name: str, language: str) -> None:
    """Sizes may be called otherwise: toddler, woman_shoe_7, one."""
    (garment,) = (one for one in shipped_garments() if one.name == name)
    assert working.cover(garment, language).startswith("<svg")


def test_the_page_is_in_the_language_that_is_wanted() -> None:
    with serving_client(shipped_garments(), Limits(processes=1), language="german") as client:
        answer = client.post(f"{ROOT}/garment/sandbar", data={"measure:span": "150"})
        assert '<html lang="de">' in answer.text
        assert "150" in Seen(answer.text).text
        assert "So lässt es sich stricken" in answer.text
        refused = client.post(f"{ROOT}/garment/sandbar", data={"measure:span": "breit"})
        assert "So lässt es sich nicht stricken" in refused.text
        assert "pattern" not in Seen(refused.text).text
