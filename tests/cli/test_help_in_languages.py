"""`--help` in another language: of every command, argument and option, and nothing of it in English."""

from __future__ import annotations

from collections.abc import Mapping
from importlib import import_module

import click
import pytest

from walewright.cli import main
from walewright.cli.app import app
from walewright.cli.commands import NAMES, command_named
from walewright.cli.helping import keys
from walewright.languages import ENGLISH, known

OTHERS = [name for name in known() if name != ENGLISH]
AROUND = {"usage", "arguments", "options", "commands", "required", "default", "walewright", "exit-codes"}

Said = pytest.CaptureFixture[str]


def words(language: str) -> Mapping[str, str]:
    found: Mapping[str, str] = import_module(f"walewright.report.{language}.help").HELP
    return found


def commands() -> list[tuple[str, click.Command]]:
    return [("walewright", app), *((name, command_named(name)) for name in NAMES)]


@pytest.mark.parametrize("language", OTHERS)
def test_there_are_words_for_all_and_no_others(language: str) -> None:
    there = words(language)
    asked = {*AROUND, *NAMES}
    for name, command in commands():
        for param in command.params:
            own, shared = keys(name, param)
            asked.add(own if own in there else shared)
    assert set(there) == asked


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("command", ["", *NAMES])
def test_it_says_all_in_the_language(language: str, command: str, capsys: Said) -> None:
    typed = [command, "--help", "--language", language] if command else ["--language", language, "--help"]
    assert main(typed) == 0
    told = capsys.readouterr()
    assert told.err == ""
    assert main([*([command] if command else []), "--help"]) == 0
    english = capsys.readouterr().out
    # The same is listed, in the same order.
    assert _listed(told.out) == _listed(english)
    of = app if not command else command_named(command)
    shown = " ".join(told.out.split())
    for text in (of.help, *(getattr(param, "help", None) for param in of.params), "Options:", "[required]", "Usage"):
        assert text is None or " ".join(text.split()) not in shown


def _listed(told: str) -> list[str]:
    """What stands at the margin of the lists: arguments, options, commands."""
    rest = told.split("\n\n", 2)[2]
    return [line.split()[0] for line in rest.splitlines() if line[:2] == "  " and line[2:3].strip() and "  " in line.strip()]


def test_a_language_before_the_command_holds_for_it(capsys: Said) -> None:
    assert main(["--language", "german", "check", "nowhere.wale"]) == 1
    assert "Fehler" in capsys.readouterr().err
    assert main(["--language", "german"]) == 0
    assert capsys.readouterr().out.startswith("Aufruf: walewright")


def test_a_language_that_there_is_not(capsys: Said) -> None:
    assert main(["build", "--help", "--language", "volapük"]) == 0
    assert capsys.readouterr().out.startswith("Usage: ")
