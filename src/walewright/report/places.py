"""From offsets to lines and columns, as an author counts them: both from 1, columns in letters."""

from __future__ import annotations

from bisect import bisect_right

from walewright.record import record


@record
class TextPlace:
    line: int
    column: int


@record
class Source:
    """A text with the offsets at which its lines begin."""

    text: str
    starts: tuple[int, ...]

    def place(self, offset: int) -> TextPlace:
        """Line and column of an offset. Behind a text that ends with a line break is the end of its last line."""
        offset = min(max(offset, 0), len(self.text))
        if offset == len(self.text) and self.text.endswith("\n") and offset:
            offset -= 1
        line = bisect_right(self.starts, offset)
        return TextPlace(line, offset - self.starts[line - 1] + 1)

    def line(self, number: int) -> str:
        """The text of a line, counted from 1, without its line break."""
        start = self.starts[number - 1]
        end = self.text.find("\n", start)
        return self.text[start : len(self.text) if end < 0 else end].removesuffix("\r")


def source(text: str) -> Source:
    """The text, ready to be asked for places."""
    starts = [0]
    starts.extend(index + 1 for index, letter in enumerate(text) if letter == "\n")
    return Source(text, tuple(starts))
