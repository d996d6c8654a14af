"""The proof refuses what was not knitted as counted, and what the words do not knit."""

from __future__ import annotations

from dataclasses import replace

import pytest

from tests.whole.garment import SHIPPED, regraded, tidewrack
from walewright.bed import Bed, BedResult, Fault, Gauge, knit
from walewright.counted.model import ShapingPhrase
from walewright.design import Changes
from walewright.knit.operations import Join, Pass, Work
from walewright.pipeline import Outcome, compile
from walewright.proof import prove
from walewright.report.english import in_english
from walewright.report.said import said


@pytest.fixture(scope="module")
def sound() -> Outcome:
    outcome = regraded(13, 18.5)
    assert outcome.proven
    return outcome


def again(outcome: Outcome, work: Work) -> BedResult:
    assert outcome.design is not None
    gauges = {(f.yarn, f.tension): Gauge(f.stitches_per_cm, f.rows_per_cm) for f in outcome.design.fabrics}
    return knit(work, Bed(outcome.design.machine.needles, outcome.design.machine.prongs, gauges))


def codes(outcome: Outcome, results: tuple[BedResult, ...], words: tuple[BedResult | None, ...]) -> list[str]:
    assert outcome.design is not None
    assert outcome.counts is not None
    assert outcome.glued is not None
    proof, found = prove(outcome.design, outcome.glued, outcome.counts, outcome.works, results, words)
    assert (proof is None) == bool(found)
    return [d.code for d in found]


def test_a_sound_garment_is_proven_with_all_its_pieces(sound: Outcome) -> None:
    assert sound.proof is not None
    assert [s.size for s in sound.proof.sizes] == list(sound.design.sizes if sound.design else ())
    pieces = [p.name for p in sound.proof.sizes[0].pieces]
    links = ["back shoulder right link", "back shoulder left link"]
    assert pieces == ["back", "back welt", "front", "front welt", "sleeve", "sleeve welt", *links[:1], "neckband", *links[1:]]
    assert codes(sound, sound.results, sound.results) == []


def test_seams_have_the_same_rows_on_both_sides(sound: Outcome) -> None:
    assert sound.proof is not None
    for size in sound.proof.sizes:
        side = next(j for j in size.joins if (j.one[0].edge, j.other[0].piece) == ("side", "front"))
        assert side.one_rows == side.other_rows
        assert side.one_rows


def beyond_the_bed(block: str) -> Fault:
    first, last = (said(f"bed/needle/{side}", number=50) for side in ("left", "right"))
    named = (("needle", said("bed/needle/right", number=51)), ("first", first), ("last", last))
    return Fault("beyond-bed", block, 3, facts=named)


@pytest.mark.parametrize(
    ("block", "described"),
    [("back", "back"), ("back welt", "back"), ("back shoulder right link", "back"), ("neckband", "neckband")],
)
def test_a_fault_of_the_bed_is_told_with_its_piece_and_size(sound: Outcome, block: str, described: str) -> None:
    fault = beyond_the_bed(block)
    broken = replace(sound.results[2], faults=(fault,))
    assert sound.design is not None
    assert sound.glued is not None
    assert sound.counts is not None
    results = (*sound.results[:2], broken, *sound.results[3:])
    _, found = prove(sound.design, sound.glued, sound.counts, sound.works, results, sound.results)
    assert [(d.code, d.sizes) for d in found] == [("bed-refuses", (sound.design.sizes[2],))]
    assert "R 51" in in_english(found[0]).message
    assert in_english(found[0]).labels[0] == f"{described} is described here"


def test_an_open_start_is_the_source_s_to_mend(sound: Outcome) -> None:
    open_start = tidewrack().replace("start half wide on waste yarn, with welt", "start half wide on waste yarn", 1)
    outcome = compile(open_start, "tidewrack.wale", SHIPPED, Changes(sizes=("M", "L")))
    assert [(d.code, d.sizes) for d in outcome.diagnostics] == [("loops-left-open", ())]
    assert "back" in in_english(outcome.diagnostics[0]).message


def test_counts_that_were_not_knitted_are_refused(sound: Outcome) -> None:
    assert sound.counts is not None
    garment = sound.counts.sizes[0]
    wide = replace(garment.pieces[0], start=garment.pieces[0].start + 2)
    counts = replace(sound.counts, sizes=(replace(garment, pieces=(wide, *garment.pieces[1:])), *sound.counts.sizes[1:]))
    assert set(codes(replace(sound, counts=counts), sound.results, sound.results)) == {"knitted-otherwise"}


def test_shaping_at_the_wrong_edge_is_refused(sound: Outcome) -> None:
    assert sound.counts is not None
    garment = sound.counts.sizes[0]
    sleeve = garment.piece("sleeve")
    # One stitch less at the left and one more at the right: as wide as knitted, and not the same piece.
    left, right = sleeve.left[0], sleeve.right[0]
    extra = ShapingPhrase((1,), (1,), 1)
    lopsided = replace(
        sleeve,
        left=(replace(left, phrases=(*left.phrases, replace(extra, by=(-1,)))), *sleeve.left[1:]),
        right=(replace(right, phrases=(*right.phrases, extra)), *sleeve.right[1:]),
    )
    pieces = tuple(lopsided if p is sleeve else p for p in garment.pieces)
    counts = replace(sound.counts, sizes=(replace(garment, pieces=pieces), *sound.counts.sizes[1:]))
    assert set(codes(replace(sound, counts=counts), sound.results, sound.results)) == {"knitted-otherwise"}


def test_words_that_knit_another_fabric_are_refused(sound: Outcome) -> None:
    work = sound.works[0]
    sleeve = next(b for b in work.blocks if b.name == "sleeve")
    passes = [i for i, o in enumerate(sleeve.operations) if isinstance(o, Pass)]
    # Two rows fewer before the waste: still a fabric, but another one. The counts told in the words then disagree too.
    short = replace(sleeve, operations=tuple(o for i, o in enumerate(sleeve.operations) if i not in passes[:2]))
    other = replace(work, tasks=tuple(short if t is sleeve else t for t in work.tasks))
    assert "words-knit-otherwise" in codes(sound, sound.results, (again(sound, other), *sound.results[1:]))


def otherwise(sound: Outcome, **changed: object) -> list[str]:
    """What is told where the words of the first size come to another result, in words."""
    words = replace(sound.results[0], **changed)  # type: ignore[arg-type]
    assert sound.design is not None
    assert sound.counts is not None
    assert sound.glued is not None
    results = (words, *sound.results[1:])
    _, found = prove(sound.design, sound.glued, sound.counts, sound.works, sound.results, results)
    assert {(d.code, d.sizes) for d in found} <= {("words-knit-otherwise", (sound.design.sizes[0],))}
    return [in_english(d).message for d in found]


def test_another_order_of_work_is_told_at_its_first_difference(sound: Outcome) -> None:
    done = sound.results[0].done
    at = next(n for n, task in enumerate(done) if isinstance(task, Join))
    join = done[at]
    assert isinstance(join, Join)
    (told,) = otherwise(sound, done=(*done[:at], replace(join, ends=(join.ends[0], "left end")), *done[at + 1 :]))
    assert "left end" in told
    for piece, edge, _ in (*join.one, *join.other):
        assert piece in told
        assert edge.split()[0] in told
    # Both ends of it are told, the planned ones and the printed ones.
    planned, printed = (f"{one} of {other}" for one, other in (("a", "b"), ("c", "d")))
    (told,) = otherwise(sound, done=(*done[:at], replace(join, ends=(planned, printed)), *done[at + 1 :]))  # type: ignore[arg-type]
    assert told.index(planned) < told.index(printed)
    (told,) = otherwise(sound, done=(*done[:at], "another block", *done[at + 1 :]))
    assert "another block" in told
    (shorter,) = otherwise(sound, done=done[:-1])
    (longer,) = otherwise(sound, done=(*done, "one more"))
    assert "one more" in longer
    assert "nothing" in shorter
    assert "nothing" in longer


def test_edges_left_free_or_taken_up_otherwise_are_told(sound: Outcome) -> None:
    free = sound.results[0].free_edges
    assert free
    (told,) = otherwise(sound, free_edges=(*free, ("sleeve", "cuff", 1), ("sleeve", "elbow", 1)))
    assert "cuff" in told
    assert "elbow" not in told
    (told,) = otherwise(sound, free_edges=free[1:])
    assert free[0][0] in told
    assert free[0][1] in told


def test_words_that_stop_are_told_with_what_stops_them_and_nothing_else(sound: Outcome) -> None:
    fault = beyond_the_bed("sleeve")
    left = tuple(f for f in sound.results[0].fabrics if f.name != "sleeve")
    told = otherwise(sound, faults=(fault,), fabrics=left, done=(), free_edges=())
    assert len(told) == 2
    assert "sleeve" in told[0]
    assert "R 51" in told[1]


def test_one_fault_in_all_sizes_is_one_message(sound: Outcome) -> None:
    fault = beyond_the_bed("back")
    broken = tuple(replace(r, faults=(fault,)) for r in sound.results)
    assert codes(sound, broken, sound.results) == ["bed-refuses"]


def test_words_that_could_not_be_read_are_not_said_to_be(sound: Outcome) -> None:
    assert sound.design is not None
    assert sound.glued is not None
    assert sound.counts is not None
    unread = (None, *sound.results[1:])
    proof, found = prove(sound.design, sound.glued, sound.counts, sound.works, sound.results, unread)
    assert found == ()
    assert proof is not None
    assert [s.read_back for s in proof.sizes] == [False] + [True] * (len(proof.sizes) - 1)
