"""What was worked out is kept for the next request, in memory alone, bounded in number and bytes: the longest unused goes first."""

from __future__ import annotations

import hashlib
from collections import OrderedDict
from dataclasses import dataclass, field

from walewright.record import record
from walewright.serve.model import Offer, PageAnswer, Posted

KeptKey = bytes


@record
class KeptAnswer:
    """An answer, and the outcome that it tells of, packed (empty: it is not proven)."""

    answer: PageAnswer
    packed: bytes = b""

    @property
    def size(self) -> int:
        """Bytes, about."""
        result = self.answer.result
        return len(self.packed) + (sum(len(drawn.svg) for drawn in result.drawings) if result is not None else 0) + 20_000


@dataclass(slots=True)
class KeptAnswers:
    """At most `number` answers of `room` bytes in all."""

    number: int = 48
    room: int = 64 * 1024**2
    used: int = 0
    _kept: OrderedDict[KeptKey, KeptAnswer] = field(default_factory=OrderedDict)

    def __len__(self) -> int:
        return len(self._kept)

    def get(self, key: KeptKey) -> KeptAnswer | None:
        """What is kept under the key, which is thereby used."""
        found = self._kept.get(key)
        if found is not None:
            self._kept.move_to_end(key)
        return found

    def put(self, key: KeptKey, answer: KeptAnswer) -> None:
        """Keep it, if it has room at all."""
        self._drop(key)
        if answer.size > self.room:
            return
        self._kept[key] = answer
        self.used += answer.size
        while self.used > self.room or len(self._kept) > self.number:
            self._drop(next(iter(self._kept)))

    def _drop(self, key: KeptKey) -> None:
        gone = self._kept.pop(key, None)
        if gone is not None:
            self.used -= gone.size


@dataclass(slots=True)
class KeptOffers:
    """The forms of sources as they were understood last, at most `number`."""

    number: int = 200
    _kept: OrderedDict[KeptKey, Offer] = field(default_factory=OrderedDict)

    def get(self, key: KeptKey) -> Offer | None:
        found = self._kept.get(key)
        if found is not None:
            self._kept.move_to_end(key)
        return found

    def put(self, key: KeptKey, offer: Offer) -> None:
        self._kept[key] = offer
        self._kept.move_to_end(key)
        while len(self._kept) > self.number:
            self._kept.popitem(last=False)


def key_of(name: str, texts: tuple[str, ...], fields: Posted) -> KeptKey:
    """Of a garment, all that is read for it, and what was filled in."""
    said = hashlib.sha256()
    for text in (name, *texts, "", *(f"{key}={value}" for key, value in sorted(fields.items()) if value.strip())):
        said.update(f"{len(text)}:{text}".encode())
    return said.digest()
