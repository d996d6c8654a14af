"""Styles of a report: tags of rich's console markup, or nothing."""

from __future__ import annotations

from walewright.record import record
from walewright.report.model import Severity

STYLES = {Severity.ERROR: "bold red", Severity.WARNING: "bold yellow"}


@record
class Paint:
    """Every piece of text of a report goes through one of these methods; with `markup` they escape and tag it."""

    markup: bool

    def plain(self, text: str) -> str:
        """Text as it is."""
        if not self.markup:
            return text
        from rich.markup import escape  # here, because a report without colours does not need it

        # Before a tag, a backslash at the end would be taken for an escape; with a style of its own it cannot be.
        return f"[none]{escape(text)}[/]" if text.endswith("\\") else escape(text)

    def strong(self, text: str) -> str:
        """What the eye should find first."""
        return self._styled("bold", text)

    def faint(self, text: str) -> str:
        """Line numbers and what stands around."""
        return self._styled("dim", text)

    def severity(self, text: str, severity: Severity) -> str:
        """In the colour of that severity."""
        return self._styled(STYLES[severity], text)

    def mark(self, text: str, primary: bool, severity: Severity) -> str:
        """A mark under a line of source."""
        return self._styled(STYLES[severity] if primary else "bold blue", text)

    def _styled(self, style: str, text: str) -> str:
        return f"[{style}]{self.plain(text)}[/]" if self.markup and text else text
