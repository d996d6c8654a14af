"""The templates of pages, compiled, with what they ask of the code."""

from __future__ import annotations

from contextlib import suppress
from functools import cache

from jinja2 import FileSystemBytecodeCache, FileSystemLoader, StrictUndefined
from jinja2.bccache import Bucket
from jinja2.sandbox import SandboxedEnvironment
from markupsafe import Markup

from walewright import world
from walewright.sheet.columns import in_boxes, in_columns
from walewright.sheet.theme import lettering, pen
from walewright.sheet.unbroken import stretches


class _KeptIfPossible(FileSystemBytecodeCache):
    """Compiled templates; a disk that is full is found out by those who write what was asked for."""

    def dump_bytecode(self, bucket: Bucket) -> None:
        with suppress(OSError):
            super().dump_bytecode(bucket)


@cache
def templates() -> SandboxedEnvironment:
    """The templates, compiled once a process, or not even that where they are kept: compiling them takes longer than filling them
    in."""
    environment = SandboxedEnvironment(
        loader=FileSystemLoader(str(world.package_path("sheet/templates"))),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    folder = world.compiled_beside("sheet/templates/sheet.html")
    environment.bytecode_cache = _KeptIfPossible(str(folder)) if folder is not None else None
    environment.filters |= {
        "stretches": stretches,
        "pen": pen,
        "lettering": lettering,
        "in_columns": in_columns,
        "in_style": in_style,
        "in_boxes": in_boxes,
    }
    return environment


def in_style(text: str) -> Markup:
    """A text as a string of a style sheet, in which nothing ends the style sheet that it stands in."""
    return Markup('"' + "".join(c if c.isalnum() or c in " .,:" else f"\\{ord(c):x} " for c in text) + '"')
