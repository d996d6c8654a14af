"""Figures that a file remembers: the same outcome as the options, and what is no such file is refused."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from walewright.cli import main, remembered

Said = pytest.CaptureFixture[str]

GIVEN = ["--size", "M", "--measure", "chest=95 cm", "--tension", "plain=17.5 st 25 rows", "--dial", "plain=7"]
FILE = {
    "walewright": "figures",
    "version": 1,
    "garment": "slackwater",
    "size": ["M"],
    "measure": {"chest": "95 cm"},
    "tension": {"plain": "17.5 st 25 rows"},
    "dial": {"plain": "7"},
}


def kept(folder: Path, what: object) -> str:
    path = folder / "mine.figures.json"
    path.write_text(what if isinstance(what, str) else json.dumps(what), encoding="utf-8")
    return str(path)


def said(arguments: list[str], capsys: Said) -> tuple[int, str, str]:
    code = main(arguments)
    told = capsys.readouterr()
    return code, told.out, told.err


def test_the_file_gives_what_the_options_give(sound: Path, capsys: Said) -> None:
    by_hand = said(["check", str(sound), *GIVEN], capsys)
    assert by_hand[0] == 0
    assert said(["check", str(sound), "--from", kept(sound.parent, FILE)], capsys) == by_hand
    assert by_hand != said(["check", str(sound), "--size", "M"], capsys)


def test_what_is_given_besides_holds(sound: Path, capsys: Said) -> None:
    file = kept(sound.parent, {**FILE, "measure": {"chest": "400 cm"}})
    besides = ["--measure", "chest=95 cm", "--size", "S"]
    by_hand = [*GIVEN[2:], "--size", "S"]
    assert said(["check", str(sound), "--from", file, *besides], capsys) == said(["check", str(sound), *by_hand], capsys)


def test_a_swatch_takes_the_place_of_a_remembered_tension() -> None:
    both = remembered.over(
        {"tensions": {"plain": "1 st 1 rows", "rib": "2 st 2 rows"}}, {"swatches": {"plain": "x"}, "tensions": {}}
    )
    assert both == {"swatches": {"plain": "x"}, "tensions": {"rib": "2 st 2 rows"}}


def test_what_is_written_is_read_again() -> None:
    fields = {
        "sizes": ("M",),
        "chosen": {"sleeves": "short"},
        "swatches": {"plain": "40 st 60 rows 23.5 cm 21 cm"},
        "yarns": {"wool": 'Mörk "ull", 50 g = 120 m'},
        "bed": "standard, needles=180",
    }
    assert remembered.read(remembered.written("ebb", fields)) == remembered.Remembered("ebb", fields)


@pytest.mark.parametrize(
    ("what", "at"),
    [
        ("no JSON", ""),
        ("[" * 100_000, ""),
        ([], ""),
        ({"walewright": "plan", "version": 1}, ""),
        ({"walewright": "figures"}, "version"),
        ({"walewright": "figures", "version": 2}, "version"),
        ({**FILE, "measure": "60 cm"}, "measure"),
        ({**FILE, "measure": {"chest": 95}}, "measure"),
        ({**FILE, "measure": {"chest": "95\u0007"}}, "measure"),
        ({**FILE, "bed": "x" * 500}, "bed"),
        ({**FILE, "size": "M"}, "size"),
        ({**FILE, "own_bed": "/etc/bed.wale"}, "own_bed"),
    ],
)
def test_what_is_no_such_file_is_refused(what: object, at: str, sound: Path, capsys: Said) -> None:
    assert remembered.read(what if isinstance(what, str) else json.dumps(what)) == at
    code, out, err = said(["check", str(sound), "--from", kept(sound.parent, what)], capsys)
    assert (code, out) == (2, "")
    assert "error[figures-file]" in err
    assert f"`{at}`" in err or not at


def test_a_remembered_bed_is_never_a_file(sound: Path, capsys: Said) -> None:
    (sound.parent / "mine.wale").write_text("machine mine\n    needles 100\n    pitch 8 mm\n", encoding="utf-8")
    code, _, err = said(["check", str(sound), "--from", kept(sound.parent, {**FILE, "bed": "mine.wale"})], capsys)
    assert code == 2
    assert "error[bad-bed]" in err


def test_a_value_that_does_not_read_is_told_at_the_option(sound: Path, capsys: Said) -> None:
    code, _, err = said(["check", str(sound), "--from", kept(sound.parent, {**FILE, "measure": {"chest": "wide"}})], capsys)
    assert code == 2
    assert "error[bad-measure]" in err
    assert "--from" in err


def test_a_file_that_is_not_there_is_told(sound: Path, capsys: Said) -> None:
    code, _, err = said(["check", str(sound), "--from", str(sound.parent / "none.json")], capsys)
    assert code == 2
    assert "none.json" in err


def test_figures_kept_for_a_pattern_as_it_was_are_told_at_the_file(sound: Path, capsys: Said) -> None:
    """An old file names what the pattern has no longer: each is told, and none is passed over."""
    file = kept(sound.parent, {**FILE, "size": ["XXL"], "measure": {"chest": "95 cm", "girth": "80 cm"}, "dial": {"lace": "5"}})
    code, out, err = said(["check", str(sound), "--from", file], capsys)
    assert (code, out) == (1, "")
    assert err.count("error[") >= 1
    assert "--from" in err
    for size, measure, dial in ((["M"], {"girth": "80 cm"}, {}), (["M"], {}, {"lace": "5"})):
        old = {"walewright": "figures", "version": 1, "size": size, "measure": measure, "dial": dial}
        code, _, err = said(["check", str(sound), "--from", kept(sound.parent, old)], capsys)
        assert code == 1
        assert next(iter({**measure, **dial})) in err
        assert "--from" in err
