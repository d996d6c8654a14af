"""English parts of sentences: phrases that several sentences share, and words of closed kinds with their plurals."""

from __future__ import annotations

PHRASES: dict[str, str] = {
    "by-shape": "by shape `{shape}`",
    "close": "`{meant}` is close",
    "here-too": "here too",
    "letters": "`{one}` is {named}, `{other}` is {other_named}",
    "shown": "{shown}",
    "the": "the {name}",
}
TERMS: dict[str, tuple[str, str]] = {
    word: (word, f"{word}s")
    for word in ("band", "chart", "edge", "edging", "fabric", "level", "measurement", "piece", "shape", "size", "value", "yarn")
}
