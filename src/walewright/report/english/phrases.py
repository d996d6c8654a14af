"""English parts of sentences: phrases that several sentences share, and words of closed kinds with their plurals."""

from __future__ import annotations

PHRASES: dict[str, str] = {
    "by-shape": "by shape `{shape}`",
    "by-option": "{message} (option --{option}{name:? {name}})",
    "close": "`{meant}` is close",
    "here-too": "here too",
    "letters": "`{one}` is {named}, `{other}` is {other_named}",
    "edge-of-copies": "`{edge}`{copies:=| of {copies} copies}",
    "opening-at": "opening at `{name}`",
    "or-only-one": "or only one, `along {along}`",
    "shown": "{shown}",
    "the": "the {name}",
    "turn-over": "turn them over: `along {along}, {side} side facing`",
    "write-along": "write `along {along}`",
    "write-several": "write {count} {pieces:?pieces|bands}, {each:and}",
}
TERMS: dict[str, tuple[str, str]] = {
    word: (word, f"{word}s")
    for word in ("band", "chart", "edge", "edging", "fabric", "level", "measurement", "piece", "shape", "size", "value", "yarn")
}
TERMS |= {word: (word, word) for word in ("from the neck", "half the span", "over the shoulder")}
