"""commands: what the program can be asked to do, a file each.

A command's file has a `COMMAND`: its parameters and what it does. Its name goes into `NAMES`, and the program knows it; only the
one that is asked for is loaded.
"""

from __future__ import annotations

from importlib import import_module

import click

__all__ = ["NAMES", "command_named"]

NAMES = ("check", "build", "publish", "choices", "show", "serve", "format")
"""As the help lists them, the most used first; each is a module of this package."""


def command_named(name: str) -> click.Command:
    """The command of that name, one of `NAMES`."""
    found: click.Command = import_module(f"{__name__}.{name}").COMMAND
    return found
