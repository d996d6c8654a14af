"""The program as the option parser sees it: its own options, and a table of commands."""

from __future__ import annotations

import signal

import click

from walewright.cli import console, stops
from walewright.cli.collecting import spare_the_collector
from walewright.cli.command_line import CommandLine
from walewright.cli.commands import NAMES, command_named
from walewright.cli.parameters import HELP, LANGUAGE, VERSION, together
from walewright.report.said import said


def run(arguments: tuple[str, ...]) -> int:
    """Parse and run one command line; returns the exit code, whatever happens."""
    console.prepare()
    spare_the_collector()
    try:
        code = _answer(arguments)
        console.finish()
    except console.OutputLost as fault:
        from walewright.cli import mishaps

        return mishaps.lost(fault, CommandLine(arguments))
    return code


def _answer(arguments: tuple[str, ...]) -> int:
    line = CommandLine(arguments)
    try:
        with stops.stoppable(), app.make_context("walewright", list(arguments), obj=line) as context:
            result = app.invoke(context)
    except click.ClickException as fault:
        line.report((line.usage_fault(fault),))
        return 2
    except (KeyboardInterrupt, click.Abort):
        return stops.STOPPED + signal.SIGINT
    except stops.Stopped as stopped:
        return stopped.exit_code
    except click.exceptions.Exit as leaving:
        return leaving.exit_code
    except BrokenPipeError:
        console.abandon_output()
        return 1
    except console.OutputLost:
        raise
    except Exception as fault:  # the last resort: a message instead of a traceback
        from walewright.cli import mishaps

        return mishaps.told(fault, said("starting"), line)
    return result if isinstance(result, int) else 0


class _Program(click.Group):
    def list_commands(self, ctx: click.Context) -> list[str]:
        return list(NAMES)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        return command_named(cmd_name) if cmd_name in NAMES else None


@click.group(
    cls=_Program,
    invoke_without_command=True,
    subcommand_metavar="COMMAND [ARGS]...",
    add_help_option=False,
    help="Compile garments for the hand-operated knitting machine from sources to proven, printed instructions.",
    epilog="Exit codes: 0 done; 1 a source has errors or cannot be made as asked, or a file cannot be read or written; "
    "2 the command line is wrong, such as a value that is not what its option takes; 70 a fault of the compiler.",
)
@together([VERSION, LANGUAGE, HELP])
@click.pass_context
def app(context: click.Context, language: str) -> None:
    """The program; without a command it shows its help. A language before the command holds for it."""
    if context.invoked_subcommand is None:
        from walewright.cli.helping import help_text

        console.say(help_text(context, language))
    else:
        context.default_map = {context.invoked_subcommand: {"language": language}}
