"""Faults of files as diagnostics, in the system's own words for the reason."""

from __future__ import annotations

from walewright.report.model import Diagnostic, Label, Span


def refusal(path: str, code: str, message: str, *helps: str, notes: tuple[str, ...] = ()) -> Diagnostic:
    """A diagnostic about the file `path` as a whole."""
    return Diagnostic(code=code, message=message, labels=(Label(Span(path, 0, 0)),), notes=notes, helps=helps)


def reason(fault: OSError | ValueError) -> str:
    """Why the system refused: "no space left on device"."""
    return (getattr(fault, "strerror", None) or str(fault)).lower()


def unwritable(path: str, fault: OSError, *helps: str, notes: tuple[str, ...] = ()) -> Diagnostic:
    """What a refused write comes to."""
    return refusal(path, "output-unwritable", f"the file cannot be written: {reason(fault)}", *helps, notes=notes)
