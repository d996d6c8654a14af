"""Printed words damaged: the reader, or the bed, or the comparison with the plan objects."""

from __future__ import annotations

from re import Match, escape, match, subn

import pytest

from tests.whole.glued_garments import CARDIGAN, MITTENS, PANELS, PULLOVER, made, misread

IN_WORDS: tuple[tuple[str, str, str, str], ...] = (
    (
        "knit side for purl side",
        PULLOVER,
        "Purl side facing, pick up 6 sts along the left side of the back neck",
        "Knit side facing, pick up 6 sts along the left side of the back neck",
    ),
    (
        "bottom for top",
        PULLOVER,
        "along the left side of the back neck, from top to bottom",
        "along the left side of the back neck, from bottom to top",
    ),
    ("the other part", PULLOVER, "along the left side of the back neck", "along the right side of the back neck"),
    (
        "right end for left end",
        PULLOVER,
        "the centre of the back neck, from its left end to its right",
        "the centre of the back neck, from its right end to its left",
    ),
    ("2nd sleeve for 1st", PULLOVER, ": of the 1st to the", ": of the 2nd to the"),
    ("a 3rd sleeve", PULLOVER, ": of the 1st to the", ": of the 3rd to the"),
    (
        "then in another order",
        PULLOVER,
        "right armhole of the front, then the left armhole of the back",
        "left armhole of the back, then the right armhole of the front",
    ),
    (
        "another armhole",
        PULLOVER,
        "right armhole of the front, then the left armhole of the back",
        "left armhole of the front, then the right armhole of the back",
    ),
    (
        "a sleeve from its right end",
        PULLOVER,
        "last row of each sleeve from its left end",
        "last row of each sleeve from its right end",
    ),
    ("a side from its top", PULLOVER, "Join the left side of the back to", "Join the left side of the back from its top to"),
    (
        "sides crossed",
        PULLOVER,
        "left side of the back to the right side of the front and the right side of the back to the left side of the front",
        "left side of the back to the left side of the front and the right side of the back to the right side of the front",
    ),
    (
        "a side forgotten",
        PULLOVER,
        "left side of the back to the right side of the front and the right side of the back to the left side of the front",
        "left side of the back to the right side of the front",
    ),
    ("sewn for gathered", PULLOVER, "Join the last row of each sleeve", "Gather the last row of each sleeve"),
    ("more rows", PULLOVER, "row for row, 34 rows", "row for row, 36 rows"),
    ("more easing", PULLOVER, "27.7 cm to 28.1 cm", "27.7 cm to 28.1 cm, easing in up to 4 cm"),
    ("easing on the shorter side", PULLOVER, "27.7 cm to 28.1 cm", "27.7 cm to 28.1 cm, easing in up to 0.4 cm"),
    ("the fold behind", PULLOVER, "in front, towards you, purl sides together", "behind, away from you, knit sides together"),
    ("a cuff rehung the other way", PULLOVER, "Purl side facing, hang the 24 loops", "Knit side facing, hang the 24 loops"),
    (
        "a shoulder hung face to back",
        PULLOVER,
        "Purl side facing, hang the 10 open loops along the left shoulder of the front",
        "Knit side facing, hang the 10 open loops along the left shoulder of the front",
    ),
    ("another shoulder", PULLOVER, "along the left shoulder of the front", "along the right shoulder of the front"),
    ("not over the other piece", PULLOVER, ", over the sts of the other piece", ""),
    (
        "a front's shoulder exchanged",
        CARDIGAN,
        "Join the left shoulder of the back from its left end to the last row of the right front",
        "Join the left shoulder of the back from its left end to the last row of the left front",
    ),
    (
        "a shoulder from its other end",
        CARDIGAN,
        "to the last row of the right front from its right end",
        "to the last row of the right front from its left end",
    ),
    (
        "a side of the other front",
        CARDIGAN,
        "Join the left side of the back to the side of the right front",
        "Join the left side of the back to the side of the left front",
    ),
    (
        "the other front's edge",
        CARDIGAN,
        "along the left front edge, about",
        "along the right front edge, about",
    ),
    ("a thumb's other edge", MITTENS, "the cast-on edge above the thumb of the left mitten", "the left mitten thumb"),
    ("the other mitten", MITTENS, "along the left mitten thumb,", "along the right mitten thumb,"),
    (
        "a thumb's seam to the mitten's",
        MITTENS,
        "left seam of the left thumb to its right seam",
        "left seam of the left thumb to the right seam of the left mitten",
    ),
    (
        "the next panel",
        PANELS,
        ": of the 1st to the one of the 2nd panel",
        ": of the 1st to the one of the 3rd panel",
    ),
    ("panels exchanged below the band", PANELS, "last row of the panel (2nd)", "last row of the panel (3rd)"),
)


def _printed(text: str, old: str, new: str) -> str:
    """The plain text with words changed, wherever its lines are broken."""
    pattern = r"\s+".join(r"[\s\u00a0]+".join(escape(w) for w in part.split("\u00a0")) for part in old.split(" "))
    pattern = pattern.replace(r"\s+", r"(?:\s|\u00a0)+")
    words = made(text).plain_text

    def instead(found: Match[str]) -> str:
        return _like(found.group(0), new)

    changed_words, times = subn(pattern, instead, words, count=1)
    assert times == 1, f"not printed: {old}"
    return changed_words


def _like(found: str, new: str) -> str:
    """With spaces that are part of names kept."""
    for name in {w for w in found.split() if "\u00a0" in w}:
        new = new.replace(name.replace("\u00a0", " "), name)
    for name in _NAMES:
        new = new.replace(name.replace("\u00a0", " "), name)
    return new


_NAMES = ("right\u00a0front", "left\u00a0front", "left\u00a0mitten", "right\u00a0mitten", "left\u00a0thumb", "right\u00a0thumb")


@pytest.mark.parametrize(("name", "text", "old", "new"), IN_WORDS, ids=[row[0] for row in IN_WORDS])
def test_in_the_words(name: str, text: str, old: str, new: str) -> None:
    told = misread(text, _printed(text, old, new))
    assert told, f"{name}: not caught"
    assert told <= {"words-knit-otherwise", "words-contradict", "words-unreadable"}, told


def test_easing_that_is_true_may_be_told() -> None:
    told = "27.7 cm to 28.1 cm, easing in up to 0.4 cm of what it is joined to"
    assert not misread(PULLOVER, _printed(PULLOVER, "27.7 cm to 28.1 cm", told))


@pytest.mark.parametrize("text", [PULLOVER, CARDIGAN, MITTENS, PANELS], ids=["pullover", "cardigan", "mittens", "panels"])
def test_a_sentence_of_joining_or_hanging_left_out(text: str) -> None:
    """Each by itself."""
    sentences = _sentences(made(text).plain_text)
    some = [s for s in sentences if any(w in s for w in ("Join ", "hang the", "pick up", "is called", "are called"))]
    assert len(some) > 4
    for sentence in some:
        # The numbers of the steps stay: what is found is that something is not done.
        numbered = match(r"(?:\[ \] )+ *[0-9]+\. ", sentence)
        instead = f"{numbered.group()}Note: nothing.\n" if numbered else ""
        assert misread(text, made(text).plain_text.replace(sentence, instead, 1)), sentence


def _sentences(text: str) -> list[str]:
    """Lines with those that go on from them."""
    found: list[str] = []
    for line in text.splitlines(keepends=True):
        if line.startswith("    ") and found:
            found[-1] += line
        else:
            found.append(line)
    return [s for s in found if s.startswith(("[ ]", "-   "))]


@pytest.mark.parametrize("text", [PULLOVER, CARDIGAN, PANELS], ids=["pullover", "cardigan", "panels"])
def test_a_section_moved(text: str) -> None:
    """What is joined or hung in another place in the order of work is another order, or cannot be done."""
    words = made(text).plain_text
    heads = _heads(words)
    for at in range(1, len(heads) - 1):
        parts = [words[a:b] for a, b in zip(heads, [*heads[1:], len(words)], strict=True)]
        parts[at], parts[at + 1] = parts[at + 1], parts[at]
        assert misread(text, words[: heads[0]] + "".join(parts)), words[heads[at] : heads[at] + 40]


def _heads(words: str) -> list[int]:
    """Where sections begin: a line underlined with =."""
    lines = words.splitlines(keepends=True)
    starts, at = [], 0
    for i, line in enumerate(lines):
        if i + 1 < len(lines) and lines[i + 1].startswith("==="):
            starts.append(at)
        at += len(line)
    return starts
