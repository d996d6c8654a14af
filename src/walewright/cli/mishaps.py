"""Exceptions that reach the commands, told apart: the world's faults have messages of their own, the compiler's are confessed."""

from __future__ import annotations

from walewright.cli import console
from walewright.report.columns import named
from walewright.report.model import Diagnostic, diagnosed

BUG = 70
"""Exit code of a fault of the compiler itself (EX_SOFTWARE of sysexits.h)."""

STOPPED = 128
"""What a shell adds to a signal's number for the exit code of what it ended."""


def told(fault: Exception, doing: str) -> int:
    """Say what an exception means that came up while `doing` something ("building a.wale"); returns the exit code."""
    found = _of_the_world(fault, named(doing))
    if found is None:
        console.confess(fault, named(doing))
        return BUG
    console.report((found,), {})
    return 1


def lost(fault: console.OutputLost) -> int:
    """Say that standard output is lost, and what was done all the same; returns the exit code."""
    notes = (f"done before that: {fault.done}",) if fault.done else ()
    found = diagnosed("output-lost", notes=notes, helps=("send-file-terminal",), reason=fault.reason)
    console.report((found,), {})
    return 1


def _of_the_world(fault: Exception, doing: str) -> Diagnostic | None:
    match fault:
        case MemoryError():
            helps = ("close other programs, or build fewer sizes at a time with --size",)
            return diagnosed("memory-exhausted/memory-ran-out", helps=helps, doing=doing)
        case RecursionError():
            helps = ("make expressions, or what refers to one another, less deep",)
            message = f"what is written there goes deeper than can be followed: the stack ran out while {doing}"
            return diagnosed("memory-exhausted/nothing-was-written", helps=helps, message=message)
        case ImportError() | FileNotFoundError():
            helps = ("install it again, with the packages that the README names; or, where memory is short, free some",)
            message = f"a part of the installation cannot be loaded while {doing}: {_short(_first_cause(fault))}"
            return Diagnostic("installation-incomplete", message, helps=helps)
        case OSError():
            helps = ("see what the system's words say about it, and run the command again",)
            return diagnosed("system-refused", helps=helps, doing=doing, short=_short(fault))
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
