"""The parameters that commands share, and how a command is made of its own and these."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, TypeVar

import click

from walewright import __version__
from walewright.cli import console
from walewright.cli.command_line import TooMany
from walewright.languages import ENGLISH

Command = TypeVar("Command", bound=Callable[..., object])


class _Command(click.Command):
    allow_extra_args = True

    def parse_args(self, ctx: click.Context, args: list[str]) -> list[str]:
        """As the library does; raises TooMany, with what nothing takes, where the library has a sentence."""
        more = super().parse_args(ctx, args)
        if more:
            raise TooMany(more, ctx)
        return more

    def format_arguments(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """The arguments, each with whether it has to be there, as for options."""
        arguments = (param for param in self.params if isinstance(param, click.Argument))
        found = [(record, param.required) for param in arguments if (record := param.get_help_record(ctx))]
        if found:
            with formatter.section("Arguments"):
                formatter.write_dl([(name, f"{about}  [required]" if needed else about) for (name, about), needed in found])


def _help(context: click.Context, _: click.Parameter, wanted: bool) -> None:
    if wanted:
        from walewright.cli.helping import help_text

        console.say(help_text(context, context.find_root().obj.language))
        raise click.exceptions.Exit(0)


def _version(_: click.Context, __: click.Parameter, wanted: bool) -> None:
    if wanted:
        console.say(f"walewright {__version__}")
        raise click.exceptions.Exit(0)


def together(options: Sequence[Callable[[Command], Command]]) -> Callable[[Command], Command]:
    """Several decorators as one, in the order in which the help lists them."""

    def decorate(command: Command) -> Command:
        for option in reversed(options):
            command = option(command)
        return command

    return decorate


def _leaving(
    name: str, callback: Callable[[click.Context, click.Parameter, bool], None], about: str
) -> Callable[[Command], Command]:
    """An option that answers by itself, whatever else is typed."""
    return click.option(name, is_flag=True, is_eager=True, expose_value=False, callback=callback, help=about)


HELP = _leaving("--help", _help, "Show this message and exit.")
VERSION = _leaving("--version", _version, "Print the version and leave.")
FILES = click.argument("files", nargs=-1, required=True, metavar="FILE...", help="Sources, ending in .wale.")
SIZES = click.option("--size", "sizes", multiple=True, metavar="SIZE", help="Only this size (repeat, or list with commas).")
CHOOSE = click.option(
    "--choose",
    "chosen",
    multiple=True,
    metavar="CHOICE=ALTERNATIVE",
    help='One of the alternatives that the source offers, as "sleeves=short".',
)
MESSAGES = click.option(
    "--messages",
    default="text",
    show_default=True,
    metavar="FORM",
    help="text, or json: for programs, an object of JSON a line (docs/files.md).",
)
LANGUAGE = click.option(
    "--language",
    default=ENGLISH,
    show_default=True,
    metavar="NAME",
    help="The language that is printed and told in: its name, or its tag, such as de.",
)
FROM = click.option(
    "--from",
    "figures",
    default="",
    metavar="FILE",
    help="A file that remembers figures given before (docs/regrading.md); what is given besides holds.",
)
GIVEN = together(
    [
        CHOOSE,
        click.option(
            "--tension",
            "tensions",
            multiple=True,
            metavar="FABRIC=TENSION",
            help='Your own tension over 10 cm, as "plain=17 st 24 rows".',
        ),
        click.option(
            "--swatch",
            "swatches",
            multiple=True,
            metavar="FABRIC=SWATCH",
            help='Your own swatch as you measured and weighed it, as "plain=40 st 60 rows 23.5 cm 21 cm 28 g".',
        ),
        click.option(
            "--measure", "measures", multiple=True, metavar="NAME=LENGTH", help='Your own measurement, as "length=60 cm".'
        ),
        click.option(
            "--yarn",
            "yarns",
            multiple=True,
            metavar="YARN=LABEL, BALL",
            help='Your own yarn and its ball, as "wool=my wool, 50 g = 120 m".',
        ),
        click.option(
            "--dial", "dials", multiple=True, metavar="FABRIC=NUMBER", help='The number of your tension dial, as "plain=6".'
        ),
        click.option(
            "--bed",
            default="",
            metavar="BED",
            help='Your own bed: a shipped one, as "standard", facts, as "needles=180, pitch=4.5 mm", or a file '
            "with a `machine` block.",
        ),
    ],
)
"""What a knitter gives. What is typed goes to the fields of `options.Asked` by the names of the parameters."""


def command(name: str, run: Callable[..., int], parameters: Sequence[Callable[[Command], Command]]) -> click.Command:
    """The command of that name: `run` gets the command line and the parameters by their names, and returns the exit code; its
    docstring is the help, its first sentence the line in the list of commands."""
    with_line: Any = click.pass_obj(run)
    made: click.Command = click.command(name, cls=_Command, add_help_option=False)(together(parameters)(with_line))
    return made
