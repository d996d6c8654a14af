"""`--help` in the language that is asked for: in English what the option parser makes of the commands' own words, in another
language the same of that language's `HELP`."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from importlib import import_module

import click

from walewright import languages
from walewright.cli.formats import NAMES as FORMATS
from walewright.cli.options import PAPERS


def help_text(context: click.Context, language: str) -> str:
    """The help of the command of a context."""
    meant = languages.named(language)
    if meant == languages.ENGLISH or meant not in languages.known():
        return context.get_help()
    words: Mapping[str, str] = import_module(f"walewright.report.{meant}.help").HELP
    return _told(context, words)


def _told(context: click.Context, words: Mapping[str, str]) -> str:
    command, formatter = context.command, context.make_formatter()
    formatter.write_usage(context.command_path, " ".join(command.collect_usage_pieces(context)), prefix=words["usage"])
    formatter.write_paragraph()
    with formatter.indentation():
        formatter.write_text(words[_name(context)])
    for title, kind in (("arguments", click.Argument), ("options", click.Option)):
        listed = [(found[0], _about(context, param, words)) for param in command.params if (found := _record(context, param, kind))]
        if listed:
            with formatter.section(words[title]):
                formatter.write_dl(listed)
    if isinstance(command, click.Group):
        with formatter.section(words["commands"]):
            formatter.write_dl([(name, _first(words[name])) for name in command.list_commands(context)])
        formatter.write_paragraph()
        with formatter.indentation():
            formatter.write_text(words["exit-codes"])
    return formatter.getvalue().rstrip("\n")


def _name(context: click.Context) -> str:
    return "walewright" if isinstance(context.command, click.Group) else str(context.command.name)


def _record(context: click.Context, param: click.Parameter, kind: type[click.Parameter]) -> tuple[str, str] | None:
    return param.get_help_record(context) if isinstance(param, kind) else None


def keys(command: str, param: click.Parameter) -> tuple[str, str]:
    """Under what the words of a parameter stand: that of its command alone, or of all that have it."""
    name = next((opt for opt in param.opts if opt.startswith("--")), str(param.name))
    return f"{command} {name}", name


def _about(context: click.Context, param: click.Parameter, words: Mapping[str, str]) -> str:
    own, name = keys(_name(context), param)
    values = {"--paper": PAPERS, "--as": FORMATS}.get(name, ())
    text = (words[own] if own in words else words[name]).replace("{values}", ", ".join(values))
    return "  ".join((text, *_besides(param, words)))


def _besides(param: click.Parameter, words: Mapping[str, str]) -> Iterator[str]:
    if isinstance(param, click.Argument) and param.required:
        yield f"[{words['required']}]"
    if isinstance(param, click.Option) and param.show_default:
        yield f"[{words['default'].replace('{value}', str(param.default))}]"


def _first(text: str) -> str:
    """Its first sentence."""
    return text.partition(". ")[0].rstrip(".") + "."
