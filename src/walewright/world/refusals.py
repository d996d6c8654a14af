"""Faults of files as diagnostics, in the system's own words for the reason."""

from __future__ import annotations

from walewright.report.model import Diagnostic, Span, diagnosed
from walewright.report.said import Fact, Said


def refusal(path: str, kind: str, *helps: str, notes: tuple[str, ...] = (), **facts: Fact) -> Diagnostic:
    """A diagnostic about the file `path` as a whole; `helps` and `notes` by their keys."""
    return diagnosed(kind, (Span(path, 0, 0), ""), helps=helps, notes=notes, facts=facts)


class Hindrance(OSError):
    """What we ourselves find in the way of a file, with the phrase that says it."""

    def __init__(self, number: int, hindrance: Said) -> None:
        super().__init__(number, hindrance.key)
        self.hindrance = hindrance


def reason(fault: OSError | ValueError) -> Fact:
    """Why the system refused: "no space left on device"."""
    if isinstance(fault, Hindrance):
        return fault.hindrance
    return (getattr(fault, "strerror", None) or str(fault)).lower()


def unwritable(path: str, fault: OSError, *helps: str, notes: tuple[str, ...] = ()) -> Diagnostic:
    """What a refused write comes to."""
    return refusal(path, "output-unwritable/refused", *helps, notes=notes, reason=reason(fault))
