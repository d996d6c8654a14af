"""Which names mean one file, and which name a source."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from walewright import world


@pytest.mark.parametrize("name", ["scarf.wale", "a/b/SCARF.WALE", "x.y.Wale", "-.wale"])
def test_a_source_ends_in_wale_and_has_something_before_it(name: str) -> None:
    assert world.is_source_name(name)


@pytest.mark.parametrize("name", ["scarf", ".wale", "a/.WALE", "wale", "scarf.wale.txt", "scarf.wale/", "scarfwale", "", "x.waleß"])
def test_other_names_are_no_sources(name: str) -> None:
    assert not world.is_source_name(name)


@pytest.mark.parametrize(
    ("one", "other"),
    [("Scarf", "scarf"), ("naïve", "nai\u0308ve"), ("STRASSE", "straße"), ("ΣΊΣΥΦΟΣ", "σίσυφος"), ("É", "e\u0301")],
)
def test_names_that_some_system_takes_for_one(one: str, other: str) -> None:
    assert world.alike(one) == world.alike(other)


def test_other_names_are_told_apart() -> None:
    assert len({world.alike(name) for name in ("scarf", "scarfs", "scärf", "scarf ", "sсarf")}) == 5
    assert world.alike("e\u0301") != world.alike("e")


def test_sources_known_are_those_named_and_those_in_folders(tmp_path: Path) -> None:
    """Each once, by the first of its names; what is not there is left out."""
    folder, own = tmp_path / "folder", tmp_path / "own.wale"
    folder.mkdir()
    own.write_text("")
    for name in ("b.wale", "a.WALE", "notes.txt", ".wale"):
        (folder / name).write_text("")
    (folder / "c.wale").symlink_to(own)
    gone, absent = str(tmp_path / "gone.wale"), str(tmp_path / "absent")
    known = world.sources_known([str(own), gone, "a\0b.wale"], [str(folder), absent, str(folder)])
    assert list(known.values()) == [str(own), str(folder / "a.WALE"), str(folder / "b.wale")]
    for identity, path in known.items():
        facts = os.stat(path)
        assert identity == (facts.st_dev, facts.st_ino)


def test_a_folder_without_a_name_is_the_one_at_hand(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "a.wale").write_text("")
    assert list(world.sources_known([], [""]).values()) == ["a.wale"]


def test_the_source_behind_a_name(tmp_path: Path) -> None:
    """One that is known under another name, or one that a link leads to."""
    own, text, link, other = tmp_path / "own.wale", tmp_path / "a.txt", tmp_path / "b.txt", tmp_path / "c.txt"
    for path in (own, text):
        path.write_text("")
    known = world.sources_known([str(own)], [])
    assert world.source_behind(str(own), known) == str(own)
    assert world.source_behind(str(text), known) is None
    assert world.source_behind(str(tmp_path / "new.txt"), known) is None
    os.link(own, link)
    assert world.source_behind(str(link), known) == str(own)
    unknown = tmp_path / "unknown.wale"
    other.symlink_to(unknown)
    assert world.source_behind(str(other), known) == os.path.realpath(unknown)
    assert world.source_behind(str(tmp_path / "new.wale"), {}) == os.path.realpath(tmp_path / "new.wale")
    assert world.source_behind("a\0b", known) is None
