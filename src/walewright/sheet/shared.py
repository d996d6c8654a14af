"""What several texts begin with alike, so that it is printed once."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import takewhile


def shared(texts: Sequence[str], mark: str) -> tuple[str, tuple[str, ...]]:
    """What all begin with, up to a `mark` between parts, and what each goes on with; nothing and the texts themselves, where they
    share no whole part or one of them says nothing more."""
    parts = [text.split(mark) for text in texts]
    alike = takewhile(lambda of: len(set(of)) == 1, zip(*parts, strict=False)) if len(texts) > 1 else ()
    common = len(list(alike))
    if not common or any(len(of) == common for of in parts):
        return "", tuple(texts)
    return mark.join(parts[0][:common]), tuple(mark.join(of[common:]) for of in parts)
