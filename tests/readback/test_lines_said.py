"""A printed line is parsed once, however many sizes work it and however often it stands there."""

from __future__ import annotations

from collections import Counter

import pytest

from tests.in_english import plain_text, read_back_all, write
from tests.write.garments import three_sizes
from walewright.readback import sentences
from walewright.readback.phrases import ReadSaid
from walewright.readback.sentences import Unreadable


def test_each_line_is_parsed_once(monkeypatch: pytest.MonkeyPatch) -> None:
    parsed: Counter[str] = Counter()
    honest = sentences.said

    def counted(line: str, language: sentences.ReadLanguage) -> tuple[ReadSaid, ...] | Unreadable:
        parsed[line] += 1
        return honest(line, language)

    monkeypatch.setattr(sentences, "said", counted)
    works, faults = read_back_all(plain_text(write(three_sizes(copies=2))))
    assert faults == ()
    assert works is not None
    assert len(works) == 3
    assert len(parsed) > 5
    assert set(parsed.values()) == {1}
