"""How the pattern was checked: the proof in three sentences. Its figures stand in the check and in the plan."""

from __future__ import annotations

from walewright.guide.model import Guide
from walewright.proof.model import Proof


def checked(guide: Guide, proof: Proof) -> tuple[str, ...]:
    """What was knitted, where wanted and knitted stand beside each other, and what was read back."""
    count = len(proof.sizes)
    loops, moves = (_thousands(sum(getattr(s, of) for s in proof.sizes)) for of in ("loops", "operations"))
    unread = tuple(s.size for s in proof.sizes if not s.read_back)
    return (
        guide.say("checked/one" if count == 1 else "checked/each", sizes=count, loops=loops, moves=moves),
        guide.say("checked/unread", sizes=unread) if unread else guide.say("checked/read"),
        guide.say("checked/figures"),
    )


def _thousands(value: int) -> str:
    return f"{value:,}".replace(",", "\u202f")
