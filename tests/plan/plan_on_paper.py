"""A whole plan document followed on paper, size by size: every operation of every block, and what the document says came of it.

Written from docs/plan.md and from nothing else, see `needles_on_paper`.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

from tests.plan.moves_on_paper import DONE
from tests.plan.needles_on_paper import Differs, Paper, Row

Json = dict[str, Any]
COUNTS = ("pass", "picture-row")


@dataclass
class Tally:
    """How much was followed."""

    plans: int = 0
    sizes: int = 0
    operations: int = 0
    loops: int = 0
    stated: int = 0
    """`check` entries."""
    looked: int = 0
    """Things looked at, each of which could have differed."""


@dataclass
class Knitted:
    """What the blocks of a size left: their papers, what was taken up of (block, edge), so many times, and what was hung on the
    first row of a block."""

    papers: dict[str, Paper] = field(default_factory=dict)
    copies: dict[str, int] = field(default_factory=dict)
    taken: Counter[tuple[str, str]] = field(default_factory=Counter)
    edged: defaultdict[str, list[Paper]] = field(default_factory=lambda: defaultdict(list))
    operations: int = 0
    loops: int = 0


def follow(document: Json, sizes: int | None = None) -> Tally:
    """Knit the document's sizes (the first and last of `sizes`, all if None) on paper. Raises `Differs`."""
    tally = Tally(plans=1)
    chosen = document["sizes"]
    if sizes is not None and len(chosen) > sizes:
        chosen = [*chosen[: sizes - 1], chosen[-1]]
    for size in chosen:
        _size(document, size, tally)
    return tally


def _size(document: Json, size: Json, tally: Tally) -> None:
    made = Knitted()
    for task in size["work"]:
        if task["kind"] == "seam":
            made.operations += 1
            tally.looked += _seam(task, made)
            continue
        paper = _block(document, task, made, tally)
        made.papers[task["name"]], made.copies[task["name"]] = paper, task["copies"]
        made.loops += paper.count * task["copies"]
    for piece in size["pieces"]:
        paper = made.papers[piece["name"]]
        before = paper.looked
        _as_told(piece, paper, made.copies[piece["name"]])
        _outline(piece, paper)
        tally.looked += paper.looked - before
    for what, told, found in (
        ("operations", size["operations"], made.operations),
        ("loops", size["loops"], made.loops),
        ("bobbins", len(size["bobbins"]), sum(paper.ends_begun for paper in made.papers.values())),
    ):
        tally.looked += 1
        if told != found:
            raise Differs(f"{size['size']}: {found} {what}, and {told} are told")
    for band in size["bands"]:
        tally.looked += _band(band, made)
    tally.looked += _all_taken_up(made)
    tally.sizes += 1
    tally.loops += made.loops


def _block(document: Json, block: Json, made: Knitted, tally: Tally) -> Paper:
    machine = document["machine"]
    paper = Paper(block["name"], machine["needles"], max(machine["prongs"]))
    for row in block["rows"]:
        if row["operations"][0]["do"] != "set-counter":
            paper.must(row["row"] == paper.counter, f"a list stands under row {row['row']}")
        for number, op in enumerate(row["operations"]):
            DONE[op["do"]](paper, op)
            tally.operations += 1
            made.operations += block["copies"]
            tally.stated += op["do"] == "check"
            if op["do"] == "set-counter":
                paper.must(number == 0 and row["row"] == op["rows"], f"the counter is set to {op['rows']} under row {row['row']}")
            elif op["do"] in COUNTS:
                paper.must(row["row"] == paper.counter - 1, f"row {paper.counter} starts under row {row['row']}")
                paper.must(
                    number == len(row["operations"]) - 1, f"something is done after row {paper.counter} under the one before"
                )
            elif op["do"] in ("rehang", "pick-up-edge"):
                _taken(paper, op, block["copies"], made)
    paper.finish()
    tally.looked += paper.looked
    return paper


# ----------------------------------------------------------------- edges


def _taken(paper: Paper, op: Json, copies: int, made: Knitted) -> None:
    of = made.papers.get(op["piece"])
    paper.must(of is not None, f"the {op['piece']} is not knitted yet")
    assert of is not None
    if op["do"] == "rehang":
        paper.must(len(of.feet) == op["last"] - op["first"] + 1, f"the first row of the {of.name} has {len(of.feet)} loops")
        made.taken[of.name, "start"] += copies
        made.edged[of.name].append(paper)
        return
    edge = op["edge"] if op["part"] == "whole" else f"{op['edge']} {op['part']}"
    # What an edging has that was hung on the first row is asked for by the name of its piece.
    known = _edges(of).union(*map(_edges, made.edged[of.name]))
    paper.must(edge in known, f"the {of.name} has no edge {edge!r} but {sorted(known)}")
    paper.must(op["copy"] <= made.copies[of.name], f"there is no copy {op['copy']} of the {of.name}")
    paper.must(op["copy"] > 0 or copies == made.copies[of.name], f"{copies} are hung on {made.copies[of.name]} of the {of.name}")
    made.taken[of.name, edge] += copies if op["copy"] <= 0 else 1


def _edges(paper: Paper) -> set[str]:
    """Names of a finished block's edges; of one that has parts, with and without them."""
    names = {"start", *paper.edges, *(f"{edge} upper" for edge in paper.waste_edges)}
    for op in paper.named:
        names |= {op["edge"]} if op["where"] in ("left", "right") else {op["edge"], f"{op['edge']} left", f"{op['edge']} right"}
        if op["where"] == "inner" and op["from_row"] in paper.cast_off_at:
            names.add(f"{op['edge']} centre")
    names |= {"end left", "end right", "shoulder left", "shoulder right"} if "end" in names else set()
    return names | {name.rpartition(" ")[0] for name in names if name.endswith((" left", " right", " centre"))}


def _all_taken_up(made: Knitted) -> int:
    """Loops on waste yarn, and those drawn through the waste yarn of a beginning: of each copy once."""
    looked = 0
    for name, paper in made.papers.items():
        opened = set(paper.waste_edges) | ({"start"} if paper.feet and not paper.feet_hung else set())
        for edge in opened:
            head, _, part = edge.rpartition(" ")
            times = made.taken[name, edge] + (made.taken[name, head] if part in ("left", "centre", "right") else 0)
            looked += 1
            if times != made.copies[name]:
                raise Differs(f"the {edge} of the {name}, knitted {made.copies[name]} times, is taken up {times} times")
    return looked


def _seam(seam: Json, made: Knitted) -> int:
    """The edges are there; where the row ends and open loops of both sides are to be equal, they are."""
    looked = 0
    for side in (seam["one"], seam["other"]):
        found = []
        for edge in side:
            if edge["piece"] not in made.papers:
                raise Differs(f"{edge['piece']} is to be joined, and nothing of that name is knitted")
            paper, copies = made.papers[edge["piece"]], made.copies[edge["piece"]]
            paper.must(edge["edge"] in _edges(paper), f"no edge {edge['edge']!r} to be joined, but {sorted(_edges(paper))}")
            paper.must(edge["copy"] <= copies, f"there is no copy {edge['copy']}")
            made.taken[edge["piece"], edge["edge"]] += 1 if edge["copy"] else copies
            found.append(_length(paper, edge["edge"]))
            looked += 2
        if seam["rows"] and found and None not in found:
            looked += 1
            if sum(found) != seam["rows"]:
                raise Differs(f"{seam['rows']} are to be joined along {side}, and {found} are there")
    return looked


def _length(paper: Paper, name: str) -> int | None:
    """Row ends or open loops of an edge; None for those beside a gap and those of a part's end."""
    if paper.edges.get(name) is not None:
        return paper.edges[name]
    head, _, part = name.rpartition(" ")
    for op in paper.named:
        if name == op["edge"] and op["where"] in ("left", "right"):
            return _row_ends(paper, op["where"], op)
        if op["where"] == "outer" and op["edge"] in (name, head):
            return _row_ends(paper, part if op["edge"] == head else "left", op)
    return None


def _row_ends(paper: Paper, side: str, op: Json) -> int:
    """Readings of the counter at which a row came to the outermost needle at that side."""
    rows = paper.rows[paper.main_from :]
    return len({row.counter for row in rows if op["from_row"] < row.counter <= op["to_row"] and _reaches(row, side)})


def _reaches(row: Row, side: str) -> bool:
    return row.first == row.outer_first if side == "left" else row.last == row.outer_last


def _band(band: Json, made: Knitted) -> int:
    """It begins on as many stitches as are told, so many from each edge."""
    paper = made.papers[band["name"]]
    told = [pick_up["stitches"] for pick_up in band["pick_ups"]]
    paper.must(sum(told) == band["stitches"] == len(paper.first_rows), f"begun on {len(paper.first_rows)} stitches")
    paper.must(told == paper.picked, f"{paper.picked} are picked up, and {told} are told")
    return 2


# ----------------------------------------------------------------- a piece


def _as_told(piece: Json, paper: Paper, copies: int) -> None:
    told = piece["knitted"]
    for what, found in (
        ("first_needle", _needle(paper.least or 0)),
        ("last_needle", _needle(paper.most or 0)),
        ("most_stitches", paper.widest),
        ("rows", paper.counted_rows()),
        ("loops", paper.count),
    ):
        paper.must(told[what] == found, f"{what} is {found}, and {told[what]} is told")
    paper.must(piece["copies"] == copies, f"knitted {copies} times, and {piece['copies']} is told")
    paper.must(piece["widest_stitches"] == paper.widest, f"{paper.widest} needles wide, and {piece['widest_stitches']} is told")
    paper.must(piece["counter"] == max(r.counter for r in paper.rows[paper.main_from :]), "the counter ends elsewhere")


def _needle(slot: int) -> str:
    return f"R {slot + 1}" if slot >= 0 else f"L {-slot}"


def _outline(piece: Json, paper: Paper) -> None:
    """Both outer edges, row by row, beside the changes told of them. A move may come a row before or after its own, for the
    carriage has to be at that edge. Not of a piece whose loops are hung back or whose rows repeat."""
    if piece["repeats"] or any(run["across"] for run in piece["left"]):
        return
    begins = {"left": piece["start_left"], "right": piece["start_stitches"] - piece["start_left"]}
    for side, begin in begins.items():
        reach = list(_reach(begin, piece[side], piece["rows"]))
        for row in paper.rows[paper.main_from :]:
            if not _part(piece, row, side) or not _reaches(row, side):
                continue
            found = -row.first if side == "left" else row.last + 1
            near = reach[max(row.counter - 1, 0) : row.counter + 2]
            paper.must(min(near) <= found <= max(near), f"the {side} edge is {found} needles from the centre, not {near}")


def _reach(begin: int, runs: list[Json], rows: int) -> Iterator[int]:
    """Needles from the centre mark to the edge in row 0, 1, ..., one more than there are."""
    moves: Counter[int] = Counter()
    for run in runs:
        for change in run["changes"]:
            moves[change["row"]] += change["by"]
    yield begin
    for row in range(rows + 1):
        begin += moves[row]
        yield begin


def _part(piece: Json, row: Row, side: str) -> bool:
    """Whether that edge is one of the part that the row goes over."""
    for opening in piece["openings"]:
        if opening["row"] < row.counter <= opening["to_row"]:
            middle = opening["first"] + opening["flat"] / 2
            if (row.last < middle and side == "right") or (row.first >= middle and side == "left"):
                return False
    return True
