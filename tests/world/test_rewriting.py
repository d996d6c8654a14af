"""`format` changes the text of a source and nothing else of it."""

from __future__ import annotations

import os
import stat
from pathlib import Path

import pytest

from walewright import world
from walewright.cli import main
from walewright.report.english import in_english

Said = pytest.CaptureFixture[str]


@pytest.fixture
def untidy(sound: Path) -> Path:
    """A source that `format` would change."""
    sound.write_text(sound.read_text(encoding="utf-8").replace("let half = chest", "let half   =  chest"), encoding="utf-8")
    return sound


def only(path: Path) -> None:
    """Nothing lies beside the file but what was there."""
    assert [p.name for p in path.parent.iterdir() if p.name.startswith(".")] == []


@pytest.mark.parametrize("mode", [0o600, 0o644, 0o664, 0o755])
def test_permissions_stay(mode: int, untidy: Path) -> None:
    untidy.chmod(mode)
    assert main(["format", str(untidy)]) == 0
    assert "half   =" not in untidy.read_text(encoding="utf-8")
    assert stat.S_IMODE(untidy.stat().st_mode) == mode
    only(untidy)


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() != 0, reason="only root gives files away")
def test_the_owner_stays_where_the_system_lets(untidy: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    os.chown(untidy, 1234, 4321)
    untidy.chmod(0o664)
    assert main(["format", str(untidy)]) == 0
    facts = untidy.stat()
    assert (facts.st_uid, facts.st_gid, stat.S_IMODE(facts.st_mode)) == (1234, 4321, 0o664)


def test_without_its_group_a_file_opens_to_nobody_new(untidy: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from walewright.world import rewriting

    untidy.chmod(0o664)
    monkeypatch.setattr(rewriting, "_owned", lambda *_: False)
    assert main(["format", str(untidy)]) == 0
    assert stat.S_IMODE(untidy.stat().st_mode) == 0o644


def test_further_attributes_stay(untidy: Path) -> None:
    try:
        os.setxattr(untidy, "user.kept", b"yes")
    except (AttributeError, OSError):
        pytest.skip("no extended attributes here")
    assert main(["format", str(untidy)]) == 0
    assert os.getxattr(untidy, "user.kept") == b"yes"


def test_a_link_stays_a_link(untidy: Path, capsys: Said) -> None:
    (untidy.parent / "links").mkdir()
    link = untidy.parent / "links" / "mine.wale"
    link.symlink_to("../slackwater.wale")
    assert main(["format", str(link)]) == 0
    assert capsys.readouterr().out == f"rewrote {link}\n"
    assert link.is_symlink()
    assert os.readlink(link) == "../slackwater.wale"
    assert "half   =" not in untidy.read_text(encoding="utf-8")
    only(untidy)
    only(link)


def test_hard_links_are_not_parted(untidy: Path, capsys: Said) -> None:
    again = untidy.parent / "again.wale"
    os.link(untidy, again)
    before = untidy.read_bytes()
    assert main(["format", "--check", str(untidy)]) == 1
    assert main(["format", str(untidy)]) == 1
    assert "source-linked" in capsys.readouterr().err
    assert untidy.read_bytes() == before
    assert untidy.samefile(again)


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("mark", [b"", b"\xef\xbb\xbf"])
def test_line_ends_and_the_mark_stay(end: str, mark: bytes, untidy: Path, capsys: Said) -> None:
    text = untidy.read_text(encoding="utf-8")
    tidy = text.replace("let half   =  chest", "let half = chest")
    untidy.write_bytes(mark + text.replace("\n", end).encode())
    assert main(["format", str(untidy)]) == 0
    assert untidy.read_bytes() == mark + tidy.replace("\n", end).encode()
    assert main(["format", "--check", str(untidy)]) == 0
    assert capsys.readouterr().out == f"rewrote {untidy}\n"


def test_mixed_line_ends_become_one_kind_and_are_told(sound: Path, capsys: Said) -> None:
    tidy = sound.read_bytes()
    sound.write_bytes(tidy.replace(b"\n", b"\r\n", 3))
    assert main(["format", "--check", str(sound)]) == 1
    assert main(["format", str(sound)]) == 0
    mixed = "(its line ends were mixed)"
    assert capsys.readouterr().out == f"{sound} would change {mixed}\nrewrote {sound} {mixed}\n"
    assert sound.read_bytes() == tidy


def test_a_read_only_file_is_told(untidy: Path, capsys: Said) -> None:
    before = untidy.read_bytes()
    untidy.chmod(0o444)
    assert main(["format", "--check", str(untidy)]) == 1
    assert main(["format", str(untidy)]) == 1
    assert "source-read-only" in capsys.readouterr().err
    assert untidy.read_bytes() == before


def test_a_file_that_somebody_changed_meanwhile_is_left(untidy: Path) -> None:
    held, _ = world.read_held(str(untidy))
    assert held is not None
    untidy.write_text("# theirs\n", encoding="utf-8")
    fault = world.rewrite(held, b"ours")
    assert fault is not None
    assert "changed" in in_english(fault).message
    assert untidy.read_text(encoding="utf-8") == "# theirs\n"
    untidy.unlink()
    assert world.rewrite(held, b"ours") is not None
    assert not untidy.exists()


def test_a_full_disk_leaves_the_file(untidy: Path, capsys: Said, monkeypatch: pytest.MonkeyPatch) -> None:
    before = untidy.read_bytes()

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    assert main(["format", str(untidy)]) == 1
    monkeypatch.undo()
    told = capsys.readouterr().err
    assert "output-unwritable" in told
    assert "no space left on device" in told
    assert "--out" not in told, "format has no such option"
    assert untidy.read_bytes() == before
    only(untidy)
