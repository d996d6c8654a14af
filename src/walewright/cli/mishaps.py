"""Exceptions that reach the commands, told apart: the world's faults have messages of their own, the compiler's are confessed."""

from __future__ import annotations

from walewright.cli import console
from walewright.cli.command_line import CommandLine
from walewright.report.columns import named
from walewright.report.model import Diagnostic, diagnosed
from walewright.report.said import Said

BUG = 70
"""Exit code of a fault of the compiler itself (EX_SOFTWARE of sysexits.h)."""


def told(fault: Exception, doing: Said, line: CommandLine) -> int:
    """Say what an exception means that came up while `doing` something ("building a.wale"); returns the exit code."""
    found = _of_the_world(fault, doing)
    if found is None:
        console.confess(fault, doing, line.words)
        return BUG
    line.report((found,))
    return 1


def lost(fault: console.OutputLost, line: CommandLine) -> int:
    """Say that standard output is lost, and what was done all the same; returns the exit code."""
    notes = ("done-before",) if fault.done else ()
    found = diagnosed("output-lost", notes=notes, helps=("send-elsewhere",), reason=fault.reason, done=fault.done)
    line.report((found,))
    return 1


def _of_the_world(fault: Exception, doing: Said) -> Diagnostic | None:
    match fault:
        case MemoryError():
            return diagnosed("memory-exhausted/memory", helps=("free-memory",), doing=doing)
        case RecursionError():
            return diagnosed("memory-exhausted/stack", helps=("less-deep",), doing=doing)
        case ImportError() | FileNotFoundError():
            reason = _short(_first_cause(fault))
            return diagnosed("installation-incomplete", helps=("install-again",), doing=doing, reason=reason)
        case OSError():
            return diagnosed("system-refused", helps=("see-the-words",), doing=doing, reason=_short(fault))
        case _:
            return None


def _first_cause(fault: BaseException) -> BaseException:
    """What went wrong first: a package that cannot be loaded for the want of another says much before it comes to that."""
    while fault.__cause__ is not None:
        fault = fault.__cause__
    return fault


def _short(fault: BaseException) -> str:
    """The first line of what an exception says; the page printer's own libraries say more than one."""
    name = getattr(fault, "filename", None)
    said = getattr(fault, "strerror", None) or str(fault) or type(fault).__name__
    return named(str(said).strip().split("\n")[0] + (f" ({name})" if name else ""))
