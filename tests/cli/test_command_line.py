"""The command line itself: options, values, and where a wrong one is shown."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

import click
import pytest

import walewright
from walewright.cli import main
from walewright.cli.command_line import CommandLine
from walewright.report.english import in_english

Said = pytest.CaptureFixture[str]


@pytest.mark.parametrize(
    ("arguments", "code", "shown"),
    [
        (["check", "--sise", "M", "x.wale"], "option-unknown", "--sise"),
        (["check"], "argument-missing", "no source file"),
        (["show"], "argument-missing", "no stage"),
        (["knit", "x.wale"], "command-unknown", "knit"),
        (["-"], "command-unknown", "'-'"),
        (["show", "knit", "x.wale", "y.wale"], "command-line", "one argument more than the command takes: y.wale"),
        (["show", "knit", "x.wale", "y", "z"], "command-line", "2 arguments more than the command takes: y, z"),
        (["build", "x.wale", "--paper", "a5"], "option-value", "a5"),
        (["build", "x.wale", "--language", "englisch"], "language-unknown", "did you mean english?"),
        (["check", "x.wale", "--language=welsh"], "language-unknown", "write one of english"),
        (["build", "x.wale", "--units", "ells"], "option-value", "ells"),
        (["build", "x.wale", "--as", "pdf,doc"], "option-value", "doc"),
        (["check", "x.wale", "--size"], "option-value", "--size"),
        (["--version=2", "check", "x.wale"], "option-value", "takes no value"),
        (["check", "x.wale", "--size", ","], "option-value", "--size"),
        (["check", "x.wale", "--tension", "plain"], "option-value", "--tension"),
        (["check", "x.wale", "--measure", "=4 cm"], "option-value", "--measure"),
        (["check", "x.wale", "--tension", "plain=17 stitches"], "bad-tension", "17 stitches"),
        (["check", "x.wale", "--measure", "length=long"], "bad-measure", "long"),
        (["check", "x.wale", "--swatch", "plain=40 st"], "bad-swatch", "40 st"),
        (["check", "x.wale", "--dial", "plain=6 7"], "bad-dial", "6 7"),
        (["check", "x.wale", "--yarn", "wool=thick"], "bad-ball", "thick"),
        (["check", "x.wale", "--bed", "a b"], "bad-bed", "a b"),
        (["check", "x.wale", "--measure", "a=4 cm", "--measure", "a=5 cm"], "option-value", "twice"),
    ],
)
def test_a_wrong_command_line(arguments: list[str], code: str, shown: str, capsys: Said) -> None:
    assert main(arguments) == 2
    told = capsys.readouterr()
    assert code in told.err
    assert shown in told.err
    assert "command line" in told.err
    assert "^" in told.err
    assert "help" in told.err
    assert told.out == ""


@pytest.mark.parametrize(
    ("arguments", "code", "shown", "exits"),
    [
        (["--size", "XXL"], "unknown-size", "XXL", 1),
        (["--tension", "plane=17 st 24 rows"], "unknown-name", "plane", 1),
        (["--tension", "plain=17"], "bad-tension", "17", 2),
        (["--tension", "plain=17 stitches"], "bad-tension", "17 stitches", 2),
        (["--tension", "plain=0 st 24 rows"], "bad-tension", "0 st", 2),
        (["--tension", "plain=60 st 80 rows"], "given-too-far", "plain=60 st 80 rows", 1),
        (["--measure", "lenght=60 cm"], "unknown-name", "lenght", 1),
        (["--measure", "length=60"], "bad-measure", "60", 2),
        (["--measure", "length=long"], "bad-measure", "long", 2),
        (["--measure", "length=5 cm"], "given-too-far", "underarm", 1),
        (["--dial", "plane=6", "--tension", "plain=17 st 24 rows"], "unknown-name", "plane", 1),
        (["--measure", "half=30 cm"], "worked-out-measure", "half=30 cm", 1),
        (["--bed", "bulkie"], "unknown-name", "bulkie", 1),
        (["--measure", "chest=300 cm"], "given-too-far", "chest=300 cm", 1),
    ],
)
def test_an_option_that_does_not_fit_the_source_is_shown_in_place(
    arguments: list[str], code: str, shown: str, exits: int, sound: Path, capsys: Said
) -> None:
    """A value that is not what the option takes is the command line's fault; one that reads well, the source's with it."""
    assert main(["build", str(sound), "--out", str(sound.parent / "out"), *arguments]) == exits
    told = capsys.readouterr()
    assert code in told.err
    assert shown in told.err
    assert "command line" in told.err or code in ("wider-than-bed", "levels-fall")
    assert told.out == ""
    assert not (sound.parent / "out").exists()


def test_the_version(capsys: Said) -> None:
    assert main(["--version"]) == 0
    assert capsys.readouterr().out == f"walewright {walewright.__version__}\n"


@pytest.mark.parametrize(
    ("arguments", "column", "letters"),
    [
        (["check", "x.wale", "--size", "S", "--size"], 34, 6),
        (["check", "-xy", "x.wale"], 18, 3),
        (["check", ""], 18, 2),
        (["show", "knit", "x.wale", "knit", "fit"], 29, 4),
    ],
)
def test_the_very_argument_is_marked(arguments: list[str], column: int, letters: int, capsys: Said) -> None:
    """The columns are counted by hand."""
    assert main(arguments) == 2
    told = capsys.readouterr().err
    assert f"column {column}\n" in told
    assert re.search(rf"\| {' ' * (column - 1)}\^{{{letters}}}(?!\^)", told)


def test_what_the_parser_refuses_for_another_reason_is_told_without_its_words() -> None:
    """Its sentences are those of a library, and of the language that the system is set to."""
    told = CommandLine(("check",)).usage_fault(click.ClickException("der Befehl passt nicht"))
    assert in_english(told).message == "the command line cannot be understood"


USAGES = {
    "": "walewright [OPTIONS] COMMAND [ARGS]...",
    "check": "walewright check [OPTIONS] FILE...",
    "show": "walewright show [OPTIONS] STAGE FILE",
    "publish": "walewright publish [OPTIONS] CATALOGUE",
}


@pytest.mark.parametrize("command", USAGES)
def test_help_names_every_argument_and_option(command: str, capsys: Said) -> None:
    assert main([*command.split(), "--help"]) == 0
    usage, *rest = capsys.readouterr().out.splitlines()
    assert usage == f"Usage: {USAGES[command]}"
    there = {line.split()[0] for line in rest if line[:2] == "  " and line[2:3] not in (" ", "")}
    assert (
        there
        >= {
            "": {"--version", "--help", "check", "build", "publish", "choices", "show", "serve", "format"},
            "publish": {"CATALOGUE", "--into", "--watch", "--why", "--jobs", "--executor", "--scheduler", "--messages", "--help"},
            "check": {
                "FILE...",
                "--size",
                "--tension",
                "--swatch",
                "--measure",
                "--yarn",
                "--dial",
                "--bed",
                "--from",
                "--messages",
                "--help",
            },
            "show": {"STAGE", "FILE", "--size", "--tension", "--swatch", "--measure", "--yarn", "--dial", "--bed", "--messages"},
        }[command]
    )


def test_commands_are_listed_in_the_order_of_their_use(capsys: Said) -> None:
    assert main(["--help"]) == 0
    listed = capsys.readouterr().out.partition("Commands:")[2].partition("Exit codes")[0]
    assert [line.split()[0] for line in listed.splitlines() if line.strip()] == [
        "check",
        "build",
        "publish",
        "choices",
        "show",
        "serve",
        "format",
    ]


@pytest.mark.parametrize(
    "command", [[], ["--help"], ["build", "--help"], ["check", "--help"], ["format", "--help"], ["choices", "--help"]]
)
def test_help(command: list[str], capsys: Said) -> None:
    assert main(command) == 0
    assert "FILE" in capsys.readouterr().out or not command or command == ["--help"]


def test_a_command_starts_quickly_enough_to_be_asked_for_its_version() -> None:
    # Whatever is slow to load (the page printer, the solver) is loaded only by the commands that use it.
    code = "import sys; from walewright.cli import main; main(['--version']); print(*sorted(sys.modules))"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert {"weasyprint", "highspy", "numpy", "pint", "lark", "jinja2"} & set(done.stdout.split()) == set()


@pytest.mark.parametrize("module", ["walewright", "walewright.cli"])
def test_the_package_can_be_run(module: str) -> None:
    done = subprocess.run([sys.executable, "-m", module, "--version"], capture_output=True, text=True, check=False)
    assert (done.returncode, done.stdout) == (0, f"walewright {walewright.__version__}\n")
