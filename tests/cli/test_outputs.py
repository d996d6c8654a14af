"""What is built is never written over a source, and no two products over one another."""

from __future__ import annotations

import os
import unicodedata
from pathlib import Path

import pytest

from walewright import world
from walewright.cli import main
from walewright.cli.command_line import CommandLine
from walewright.cli.outputs import unfit_outputs
from walewright.report.english import in_english

Said = pytest.CaptureFixture[str]


def build(sound: Path, out: Path, *more: str) -> int:
    return main(["build", str(sound), "--as", "text", "--out", str(out), *more])


def test_a_source_named_like_a_product_is_no_source(sound: Path, capsys: Said) -> None:
    own = sound.parent / "own"
    own.mkdir()
    text = sound.read_bytes()
    (own / "scarf.txt").write_bytes(text)
    assert build(own / "scarf.txt", own) == 2
    assert "source-name" in capsys.readouterr().err
    assert (own / "scarf.txt").read_bytes() == text


def hard(product: Path, source: Path) -> None:
    os.link(source, product)


def soft(product: Path, source: Path) -> None:
    product.symlink_to(os.path.relpath(source, product.parent))


def behind(product: Path, source: Path) -> None:
    """The source is a link to the file that has the product's name."""
    source.rename(product)
    source.symlink_to(os.path.relpath(product, source.parent))


@pytest.mark.parametrize("other", [False, True], ids=["the source built", "another in its folder"])
@pytest.mark.parametrize("way", [hard, soft, behind])
def test_a_product_that_is_a_source_under_another_name(way: object, other: bool, sound: Path, capsys: Said) -> None:
    out = sound.parent / "out"
    out.mkdir()
    source = sound
    if other:
        source = sound.parent / "other.wale"
        source.write_bytes(b"# another\n")
    text = source.read_bytes()
    way(out / "slackwater.txt", source)  # type: ignore[operator]
    before = sorted(os.listdir(out))
    assert build(sound, out) == 2
    told = capsys.readouterr()
    assert "output-is-source" in told.err
    assert source.name in told.err
    assert told.out == ""
    assert source.read_bytes() == text
    assert sorted(os.listdir(out)) == before


def test_a_link_to_a_source_elsewhere(sound: Path, capsys: Said) -> None:
    for name in ("out", "far"):
        (sound.parent / name).mkdir()
    (sound.parent / "far" / "away.wale").write_bytes(b"# away\n")
    (sound.parent / "out" / "slackwater.txt").symlink_to("../far/away.wale")
    assert build(sound, sound.parent / "out") == 2
    assert "output-is-source" in capsys.readouterr().err
    assert (sound.parent / "out" / "slackwater.txt").is_symlink()


def test_a_link_to_something_else_is_replaced_and_what_it_leads_to_is_not(sound: Path) -> None:
    out = sound.parent / "out"
    out.mkdir()
    (sound.parent / "letter.txt").write_bytes(b"mine")
    (out / "slackwater.txt").symlink_to("../letter.txt")
    assert build(sound, out) == 0
    assert not (out / "slackwater.txt").is_symlink()
    assert (sound.parent / "letter.txt").read_bytes() == b"mine"


def test_a_folder_named_like_a_source(sound: Path, capsys: Said) -> None:
    text = sound.read_bytes()
    for out in (sound, sound.parent / "new.wale", sound.parent / "new.wale" / "."):
        assert build(sound, out) == 2
        assert "option-value" in capsys.readouterr().err
    assert sound.read_bytes() == text
    assert os.listdir(sound.parent) == [sound.name]


def clashes(*files: str, formats: tuple[str, ...] = ("text", "plan")) -> list[str]:
    return [in_english(d).message for d in unfit_outputs(CommandLine(files), files, "out", formats) if d.code == "output-clash"]


COMPOSED = unicodedata.normalize("NFC", "Möwe")


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("a.wale", "b/a.wale"),
        ("a.wale", "A.wale"),
        ("a.wale", "a.WALE"),
        ("a.wale", "a.wale"),
        ("straße.wale", "STRASSE.wale"),
        (f"{COMPOSED}.wale", f"{unicodedata.normalize('NFD', COMPOSED)}.wale"),
        (f"{COMPOSED}.wale", f"{unicodedata.normalize('NFD', COMPOSED.upper())}.wale"),
        ("\u212bngstrom.wale", "ångstrom.wale"),
    ],
)
def test_two_products_of_one_name(one: str, other: str) -> None:
    assert len(clashes(one, other)) == 1
    assert len(clashes(one, "between.wale", other, one)) == 2


def test_names_that_only_look_alike_do_not_clash() -> None:
    assert clashes("a.wale", "b.wale", "a.plan.wale", "ä.wale", "a.txt.wale") == []


def test_a_clash_is_told_before_anything_is_compiled(sound: Path, capsys: Said) -> None:
    again = sound.parent / "SLACKWATER.wale"
    again.write_bytes(b"not read")
    assert build(sound, sound.parent / "out", str(again)) == 2
    told = capsys.readouterr()
    assert "output-clash" in told.err
    assert "capitals" in told.err
    assert told.out == ""
    assert not (sound.parent / "out").exists()


def test_what_cannot_be_looked_at_hides_no_source(sound: Path) -> None:
    known = world.sources_known([str(sound), "none.wale", "a\0b.wale"], ["", "nowhere", str(sound.parent)])
    assert str(sound) in known.values()
    assert world.source_behind(str(sound.parent / "x.txt"), known) is None
    assert world.source_behind("a\0b.txt", known) is None


def test_a_theme_is_laid_over_the_house_and_told_where_it_reaches_out(
    tmp_path: Path, sound: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    theme = tmp_path / "mine.css"
    theme.write_text(":root { --accent: #c0ffee }", encoding="utf-8")
    out = tmp_path / "out"
    assert main(["build", str(sound), "--as", "html", "--out", str(out), "--theme", str(theme)]) == 0
    assert "#c0ffee" in next(out.glob("*.html")).read_text(encoding="utf-8")
    theme.write_text("a { background: url(x) }", encoding="utf-8")
    assert main(["build", str(sound), "--as", "html", "--out", str(out), "--theme", str(theme)]) == 2
    assert "theme-reaches-out" in capsys.readouterr().err
    assert main(["build", str(sound), "--as", "html", "--out", str(out), "--theme", str(sound)]) == 2
    assert "option-value" in capsys.readouterr().err
    assert main(["build", str(sound), "--as", "html", "--out", str(out), "--theme", str(tmp_path / "none.css")]) == 2
    assert "source-missing" in capsys.readouterr().err
