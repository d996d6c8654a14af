"""`--theme FOLDER`: all that it brings comes onto the page, and nothing is read that does not lie in it."""

from __future__ import annotations

import io
import os
from collections.abc import Callable
from contextlib import redirect_stderr
from pathlib import Path
from typing import Any

import pypdf
import pytest

from tests.cli.bad_sources import SOUND
from tests.sheet.themes import SHEET, WHOLE, folder, font, picture
from walewright.cli import main, theme

Said = pytest.CaptureFixture[str]
DATE = "1767225600"


@pytest.fixture(autouse=True)
def dated(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", DATE)


def build(source: Path, where: Path, out: Path, *more: str, form: str = "html") -> int:
    return main(["build", str(source), "--as", form, "--out", str(out), "--theme", str(where), *more])


def page(out: Path) -> str:
    return next(out.glob("*.html")).read_text(encoding="utf-8")


@pytest.fixture(scope="module")
def themed(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, str]:
    """Where all is that was built with a whole theme, and what was told of it."""
    own = tmp_path_factory.mktemp("themed")
    (own / "slackwater.wale").write_text(SOUND, encoding="utf-8")
    told = io.StringIO()
    with pytest.MonkeyPatch.context() as patch, redirect_stderr(told):
        patch.setenv("SOURCE_DATE_EPOCH", DATE)
        assert build(own / "slackwater.wale", folder(own / "house"), own / "out", form="html,pdf") == 0
    return own / "out", told.getvalue()


def test_all_that_it_brings_comes_onto_the_page(themed: tuple[Path, str]) -> None:
    out, told = themed
    assert "theme" not in told
    text = page(out)
    assert text.count("<p>Loops &amp; &lt;Rows&gt;</p><p>For private use.</p>") == 2
    assert text.count("Loops & <Rows>") == 0
    assert text.index("<p>For private use.</p>") < text.index("</header>") < text.rindex("<p>For private use.</p>")
    assert text.count('alt="A row of loops" width="400" height="200"') == 1
    assert text.count('src: url("data:font/woff2;base64,') == 1
    assert text.count('src: url("data:font/ttf;base64,') == 1
    assert text.count('stroke="#800000"') > 10
    assert "1f5a61'" not in text.replace("--accent: #1f5a61", "")
    assert "http" not in text.replace("http://www.w3.org/", "").split("</head>")[0]
    cover = pypdf.PdfReader(next(out.glob("*.pdf"))).pages[0]
    assert len(cover.images) == 1
    fonts: Any = cover["/Resources"]["/Font"]  # type: ignore[index]
    assert any("House-Display" in font.get_object()["/BaseFont"] for font in fonts.values())


def test_the_same_theme_gives_the_same_bytes(themed: tuple[Path, str], tmp_path: Path, sound: Path) -> None:
    assert build(sound, folder(tmp_path / "other house"), tmp_path / "out", form="html,pdf") == 0
    one, other = ({p.name: p.read_bytes() for p in out.iterdir()} for out in (themed[0], tmp_path / "out"))
    assert one == other
    assert len(one) == 2


def test_each_part_may_be_left_out(tmp_path: Path, sound: Path) -> None:
    for name, description, sheet in (("a", None, ":root { --accent: navy }"), ("b", '[colours]\naccent = "navy"', None)):
        assert build(sound, folder(tmp_path / name, description, sheet), tmp_path / f"out {name}") == 0
        text = page(tmp_path / f"out {name}")
        assert 'class="imprint"' not in text
        assert "data:font" not in text
        assert 'class="logo"' not in text
    assert 'stroke="#000080"' in page(tmp_path / "out b")


def test_the_style_sheet_has_the_last_word_on_a_colour(tmp_path: Path, sound: Path) -> None:
    own = folder(tmp_path / "house", '[colours]\naccent = "#ffffff"', ":root { --accent: #123456 }")
    assert build(sound, own, tmp_path / "out") == 0
    assert 'stroke="#123456"' in page(tmp_path / "out")
    assert 'stroke="#ffffff"' not in page(tmp_path / "out")


def test_a_bench_copy_takes_the_colours_alone(tmp_path: Path, sound: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from walewright import sheet

    pages: list[str] = []
    made = sheet.bench_html
    monkeypatch.setattr(sheet, "bench_html", lambda *given: pages.append(made(*given)) or pages[-1], raising=False)
    assert build(sound, folder(tmp_path / "house"), tmp_path / "out", "--size", "S", form="bench") == 0
    assert pages
    assert "--accent: #800000" in pages[-1]
    assert not any(what in pages[-1] for what in ("data:font", "Loops &amp;", "A row of loops", "House Display"))


def put(own: Path, role: str, target: Path) -> None:
    """A file of the theme becomes a link to the target."""
    (own / role).unlink()
    (own / role).symlink_to(target)


ROLES = {
    "theme.css": SHEET.encode(),
    "theme.toml": WHOLE.encode(),
    "pictures/mark.png": picture(),
    "display.ttf": None,
}
"""Files and what they hold; the font, which takes a while to be made, is made where it is wanted."""


@pytest.mark.parametrize("role", ROLES)
def test_a_link_out_of_the_folder_is_refused_and_one_within_is_not(role: str, tmp_path: Path, sound: Path, capsys: Said) -> None:
    own, outside = folder(tmp_path / "house"), tmp_path / "outside"
    outside.write_bytes(ROLES[role] or font())
    put(own, role, outside)
    assert build(sound, own, tmp_path / "out") == 2
    said = capsys.readouterr().err
    assert said.count("error[") == 1
    assert "error[theme-file-unusable]" in said
    assert f"{role} does not lie in the theme's folder" in said
    assert not (tmp_path / "out").exists()
    (own / "kept").write_bytes(ROLES[role] or font())
    put(own, role, own / "kept")
    assert build(sound, own, tmp_path / "out") == 0


def test_a_folder_that_is_linked_out_is_refused(tmp_path: Path, sound: Path, capsys: Said) -> None:
    own = folder(tmp_path / "house")
    (own / "pictures").rename(tmp_path / "pictures")
    (own / "pictures").symlink_to(tmp_path / "pictures")
    assert build(sound, own, tmp_path / "out") == 2
    assert "pictures/mark.png does not lie in the theme's folder" in capsys.readouterr().err


@pytest.mark.parametrize("name", ["../mark.png", "/etc/hostname", "https://example.org/a.png", "pictures/../../mark.png", "a\\\\b"])
def test_a_name_that_leads_out_is_refused(name: str, tmp_path: Path, sound: Path, capsys: Said) -> None:
    own = folder(tmp_path / "house", f'[logo]\nfile = "{name}"\nalternative = "x"')
    (tmp_path / "mark.png").write_bytes(picture())
    assert build(sound, own, tmp_path / "out") == 2
    said = capsys.readouterr().err
    assert "does not lie in the theme's folder" in said
    assert "theme.toml, line 2, column 1" in said


@pytest.mark.parametrize(
    ("role", "data", "told"),
    [
        ("pictures/mark.png", None, "is not there"),
        ("pictures/mark.png", b"<svg xmlns='http://www.w3.org/2000/svg'/>", "is neither PNG nor JPEG"),
        ("pictures/mark.png", picture()[:80], "cannot be decoded"),
        ("pictures/mark.png", picture(100, 100), "is too small"),
        ("display.ttf", None, "is not there"),
        ("display.ttf", b"none", "is no font"),
        ("display.ttf", lambda: font()[:500], "cannot be used as a font"),
        ("display.ttf", lambda: font(fs_type=2), "forbids that it is put into a document"),
        ("theme.css", b"a { color: \xff }", "not UTF-8"),
        ("theme.toml", b"\0", "binary"),
        ("theme.css", b"a { background: url(mark.png) }", "would fetch something"),
    ],
)
def test_a_file_that_a_page_cannot_use_is_refused(
    role: str, data: bytes | Callable[[], bytes] | None, told: str, tmp_path: Path, sound: Path, capsys: Said
) -> None:
    own = folder(tmp_path / "house")
    (own / role).unlink()
    if data is not None:
        (own / role).write_bytes(data if isinstance(data, bytes) else data())
    assert build(sound, own, tmp_path / "out") == 2
    said = capsys.readouterr().err
    assert said.count("error[") == 1
    assert told in said
    assert "help: " in said
    assert not (tmp_path / "out").exists()


def test_files_have_a_size(tmp_path: Path, sound: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch) -> None:
    own = folder(tmp_path / "house")
    monkeypatch.setattr(theme, "LARGEST_FONT", 100)
    monkeypatch.setattr(theme, "LARGEST_LOGO", 100)
    assert build(sound, own, tmp_path / "out") == 2
    assert capsys.readouterr().err.count("is larger than a theme's files are") == 3


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="the system has no pipes with names")
def test_what_is_no_plain_file_is_not_opened(tmp_path: Path, sound: Path, capsys: Said) -> None:
    own = folder(tmp_path / "house")
    for role in ("theme.css", "pictures/mark.png"):
        (own / role).unlink()
        os.mkfifo(own / role)
    assert build(sound, own, tmp_path / "out") == 2
    assert "source-not-file" in capsys.readouterr().err


def test_a_folder_without_a_theme_is_refused(tmp_path: Path, sound: Path, capsys: Said) -> None:
    (tmp_path / "empty").mkdir()
    assert build(sound, tmp_path / "empty", tmp_path / "out") == 2
    said = capsys.readouterr().err
    assert "holds no theme" in said
    assert "neither theme.css nor theme.toml is in it" in said
    assert build(sound, tmp_path / "none", tmp_path / "out") == 2
    assert "option-value" in capsys.readouterr().err


def test_colours_that_are_hard_to_read_are_warned_of_where_they_stand(tmp_path: Path, sound: Path, capsys: Said) -> None:
    own = folder(tmp_path / "house", '[colours]\nink = "#777777"', ":root { --accent: silver }")
    assert build(sound, own, tmp_path / "out") == 0
    said = capsys.readouterr().err
    assert said.count("warning[theme-low-contrast]") == 2
    assert "theme.toml, line 2, column 1" in said
    assert "theme.css, line 1, column 9" in said
    assert (tmp_path / "out").exists()
