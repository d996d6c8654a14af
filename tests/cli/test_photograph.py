"""A photograph from the source's folder to the page: read there and nowhere else."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from PIL import Image

from walewright import world
from walewright.cli import main

Said = pytest.CaptureFixture[str]


def pictured(sound: Path, name: str) -> Path:
    text = sound.read_text(encoding="utf-8")
    found = re.search(r'^pattern ".*"$', text, re.MULTILINE)
    assert found is not None
    shown = f'\n    photograph "{name}", showing "Slack <water> & a hat"'
    sound.write_text(text[: found.end()] + shown + text[found.end() :], encoding="utf-8")
    return sound


def photograph(path: Path) -> None:
    path.parent.mkdir(exist_ok=True)
    Image.new("RGB", (900, 600), "teal").save(path)


def test_it_is_written_into_the_page_with_its_words(sound: Path, tmp_path: Path, capsys: Said) -> None:
    photograph(tmp_path / "pictures" / "hat.png")
    source = pictured(sound, "pictures/hat.png")
    assert main(["build", str(source), "--as", "html,pdf,plan", "--out", str(tmp_path / "out")]) == 0, capsys.readouterr().err
    page = (tmp_path / "out" / "slackwater.html").read_text(encoding="utf-8")
    assert page.count('<img src="data:image/jpeg;base64,') == 1
    assert 'alt="Slack &lt;water&gt; &amp; a hat" width="900" height="600"' in page
    assert '"file": "pictures/hat.png"' in (tmp_path / "out" / "slackwater.plan.json").read_text(encoding="utf-8")
    assert b"/Subtype /Image" in (tmp_path / "out" / "slackwater.pdf").read_bytes()


@pytest.mark.parametrize(
    ("name", "told"),
    [
        ("none.jpg", "is not there"),
        ("../beside.jpg", "does not lie beside the source"),
        ("/etc/hostname", "does not lie beside the source"),
        ("https://example.org/hat.jpg", "does not lie beside the source"),
        ("out_of_here.jpg", "does not lie beside the source"),
        ("folder", "is no file"),
        ("slackwater.wale", "is neither JPEG nor PNG"),
    ],
)
@pytest.mark.parametrize("command", ["check", "build"])
def test_what_is_no_picture_beside_the_source_is_refused(
    command: str, name: str, told: str, tmp_path: Path, sound: Path, capsys: Said
) -> None:
    photograph(tmp_path.parent / "beside.jpg")
    (tmp_path / "out_of_here.jpg").symlink_to(tmp_path.parent / "beside.jpg")
    (tmp_path / "folder").mkdir()
    where = ["--out", str(tmp_path / "out")] if command == "build" else []
    assert main([command, str(pictured(sound, name)), *where]) == 1
    said = capsys.readouterr()
    assert "error[photograph-unusable]" in said.err
    assert told in said.err
    assert not (tmp_path / "out").exists()


def test_a_file_that_is_larger_than_a_picture_is_read_no_further(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(world.pictures, "LARGEST_PICTURE", 1000)  # type: ignore[attr-defined]
    (tmp_path / "large.jpg").write_bytes(b"x" * 1001)
    assert world.read_picture(str(tmp_path / "a.wale"), "large.jpg") == (b"", "too-large")
    (tmp_path / "large.jpg").write_bytes(b"x" * 1000)
    assert world.read_picture(str(tmp_path / "a.wale"), "large.jpg") == (b"x" * 1000, None)
