"""What has to pass what: parts of the body held against openings."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from walewright.design.model import Design, DesignInSize, Measurement, Passage
from walewright.design.model.credit import Credit
from walewright.design.model.per_size import times
from walewright.fit.cloth import Cloth
from walewright.fit.girths import narrower, width_of
from walewright.fit.loops import Walker
from walewright.fit.model import ROWS, Passing, Ring, Role
from walewright.fit.openings import is_strip_end, measure, without_lapped
from walewright.glue.model import Chain, Glued, Place
from walewright.report.model import Diagnostic, Severity, diagnosed
from walewright.report.said import Amount, Said, only, said
from walewright.trade.edge_names import part_of_edge
from walewright.trade.worn import BodyPart

HEAD_MORE = 2.0
"""cm that a neck has to be wider, stretched, than the head (common practice)."""
MEDIAN_MORE = 3.0
"""The same where nobody has measured the head and it is a table's median: for nearly all heads (from memory)."""
HAND = 1.15
"""A hand with its thumb laid in, as a share of its girth (from memory)."""
FOOT = 1.3
"""Heel over instep, as a share of the girth round the ball of the foot (from memory)."""
HIPS_MORE = 2.0
"""cm that a waist has to be wider, stretched, than the hips (common practice)."""


def figure(design: Design, part: BodyPart) -> tuple[Measurement, bool] | None:
    """How large a part of the body is, and whether the source says so itself."""
    for rows, own in ((design.measurements, True), (design.bodies, False)):
        found = next((m for name in ROWS[part] for m in rows if m.body == name), None)
        if found is not None:
            return found, own
    return None


def needed(part: BodyPart, cm: float, own: bool) -> float:
    """The length of an opening that lets a part of the body through."""
    match part:
        case "head":
            return cm + (HEAD_MORE if own else MEDIAN_MORE)
        case "hand":
            return cm * HAND
        case "foot":
            return cm * FOOT
        case "hips":
            return cm + HIPS_MORE
    return cm


# ----------------------------------------------------------------- what is held against what

_PASSES: Mapping[Role, BodyPart | None] = {"": None, "neck": "head", "cuff": "hand", "waist": "hips", "leg": "foot"}
"""What has to pass an opening of that role."""


def passings(
    design: Design, walkers: Sequence[Walker], rings: Sequence[Ring]
) -> tuple[tuple[Passing, ...], tuple[Diagnostic, ...]]:
    """What the author says of openings, then what is known without being told."""
    found: list[Passing] = []
    told: list[Diagnostic] = []
    spoken: set[int] = set()
    for passage in design.passages:
        edges = _edges(walkers[0].glued, passage)
        ring = next((r for r in rings if edges and edges[0] in r.chains[0]), None)
        if ring is not None:
            spoken.add(id(ring))
        made = _stated(design, walkers, passage, ring)
        if isinstance(made, Diagnostic):
            told.append(made)
        else:
            found.append(made)
    for ring in rings:
        part = _PASSES[ring.role]
        known = figure(design, part) if part is not None and id(ring) not in spoken else None
        if part is not None and known is not None and ring.relaxed:
            found.append(_by_itself(design, walkers[0], ring, part, known))
    return tuple(found), (*told, *(d for p in found for d in _findings(design, p)))


def _by_itself(design: Design, walker: Walker, ring: Ring, part: BodyPart, known: tuple[Measurement, bool]) -> Passing:
    row, own = known
    more = tuple(needed(part, cm, own) for cm in row.values)
    at = ring.edges[0]
    band = next((b for b in design.bands if b.name == at.owner), None)
    origin = band.origin if band is not None else design.piece(at.owner).origin
    place = at.owner if band is not None else f"{at.owner} {at.edge.replace(' ', '_')}"
    return Passing(
        name=name_of(ring),
        part=part,
        never=False,
        relaxed=ring.relaxed,
        stretched=ring.stretched,
        figure=row.values,
        needed=more,
        credit=row.credit,
        origin=origin,
        place=place,
        around=_around(design, without_lapped(design, walker.cloth, ring.edges)),
    )


def name_of(ring: Ring) -> str:
    """What an opening is called: by what it is, or by the edge where it begins."""
    at = ring.edges[0]
    return ring.role or (at.owner if at.edge == "rim" else f"{at.owner} {at.edge}").strip()


def _edges(glued: Glued, passage: Passage) -> Chain:
    """The free edges that a passage names, of the first copy."""
    wanted = passage.edge or "rim"
    free = [p for o in glued.openings for p in o.edges if p.owner == passage.owner and p.copy == 1]
    return tuple(p for p in free if p.edge == wanted or p.edge in (f"{wanted} {part}" for part in ("left", "centre", "right")))


def _stated(design: Design, walkers: Sequence[Walker], passage: Passage, ring: Ring | None) -> Passing | Diagnostic:
    known = figure(design, passage.part)
    values, own = passage.figure, True
    credit: Credit | None = None
    if not values and known is not None:
        values, own, credit = known[0].values, known[1], known[0].credit
    if not values:
        place = passage.origin.span, "passes"
        return diagnosed("nothing-to-measure/size-unknown", place, helps=("write-it",), part=passage.part)
    lengths = [_length(design, w, passage, ring) for w in walkers] if ring is not None else [None]
    known_lengths = [length for length in lengths if length is not None]
    if len(known_lengths) < len(lengths):
        return diagnosed(
            "nothing-to-measure/no-opening",
            (passage.origin.span, "nothing-passes"),
            helps=("name-the-edge",),
            edge=passage.place,
        )
    relaxed = tuple(length[0] for length in known_lengths)
    stretched = tuple(length[1] for length in known_lengths)
    if passage.share:
        stretched = times(relaxed, passage.share)
    more = values if passage.never else tuple(needed(passage.part, cm, own) for cm in values)
    return Passing(
        name=passage.place,
        part=passage.part,
        never=passage.never,
        relaxed=relaxed,
        stretched=stretched,
        figure=values,
        needed=more,
        credit=credit,
        origin=passage.origin,
        place=passage.place,
        around=next((_around(design, inner[0]) for w in walkers if ring and (inner := _inner(design, w, passage, ring))), ()),
    )


def _length(design: Design, walker: Walker, passage: Passage, ring: Ring) -> tuple[float, float] | None:
    """How long it is at rest and stretched; None in a size that has no such ring."""
    inner = _inner(design, walker, passage, ring)
    if inner is None:
        return None
    edges, overlap = inner
    found = measure(design, walker, edges)
    if found is None or not overlap:
        return found
    left = max(found[0] - overlap, 0.0)
    return left, left * found[1] / found[0] if found[0] else 0.0


def _inner(design: Design, walker: Walker, passage: Passage, ring: Ring) -> tuple[Chain, float] | None:
    """The whole ring; of one that opens along a lap, what is left of it when that is closed, and by how much that laps. None in a
    size that has no such ring."""
    edges, whole = _edges(walker.glued, passage), walker.cloth.at.of(ring.chains)
    if not edges or edges[0] not in whole:
        return None
    return _between_lap(design, walker.cloth, whole, edges) or (without_lapped(design, walker.cloth, whole), 0.0)


def _around(design: Design, edges: Chain) -> tuple[tuple[str, str], ...]:
    """What the edges are of: of an edging along a piece that edging, of a band the band, else the piece's edge itself."""
    found = []
    for place in edges:
        piece = next((p for p in design.pieces if p.name == place.owner), None)
        if is_strip_end(design, place):
            continue
        edge = "" if piece is None else part_of_edge(place.edge).name
        edging = None if piece is None else {"start": piece.start_edging, "end": piece.end_edging}.get(edge)
        found.append((place.owner, edging or edge))
    return tuple(dict.fromkeys(found))


def _between_lap(design: Design, cloth: Cloth, ring: Chain, edges: Chain) -> tuple[Chain, float] | None:
    """What is left of a ring with the laps closed on the way along `edges`, and how far they lap in all: at a lapped edge it goes
    on behind the edge that lies upon it. Ends of strips that lap lie in it, those of other bands stand across it. None without a
    lap."""
    partner: dict[int, int] = {}
    width: dict[int, float] = {}
    for lap in design.laps:
        over, under = (next((i for i, at in enumerate(ring) if _is(design, at, place)), None) for place in (lap.over, lap.under))
        overlap = cloth.at.of(lap.width) if lap.width else narrower(cloth, lap)
        if over is None or under is None or overlap is None:
            continue
        partner |= {over: under, under: over}
        width |= {over: overlap, under: overlap}
    first = ring.index(edges[0])
    at, left, overlaps, lapped = first, list[Place](), 0.0, set[str]()
    for _ in range(len(ring)):
        if at in partner:
            overlaps += width[at]
            lapped |= {ring[at].owner, ring[partner[at]].owner}
            at = partner[at]
        else:
            left.append(ring[at])
        at = (at + 1) % len(ring)
        if at == first:
            break
    if not lapped:
        return None
    return tuple(p for p in left if not is_strip_end(design, p) or p.owner in lapped), overlaps


def _is(design: Design, at: Place, place: tuple[str, str]) -> bool:
    """Whether an edge is the lapped one: of a band its last edge, of a strip the row edge that stays free."""
    if at.owner != place[0]:
        return False
    return at.edge == place[1] if place[1] else at.edge not in ("start", "end") and not is_strip_end(design, at)


# ----------------------------------------------------------------- what there is to say


def _findings(design: Design, passing: Passing) -> Iterator[Diagnostic]:
    bad = [at for at in design.each_size if not at.of(passing.good)]
    if not bad:
        return
    sizes = only(design.sizes, [at.number for at in bad])
    rows = tuple(_row(at, passing) for at in bad)
    source = (said("source", credit=credited(passing.credit)),) if passing.credit is not None else ()
    if passing.never:
        yield diagnosed(
            "lets-through",
            (passing.origin.span, "never-passes"),
            notes=(*rows, *source),
            helps=("smaller",),
            sizes=sizes,
            part=passing.part,
            opening=passing.name,
        )
        return
    child = design.for_children
    yield diagnosed(
        "too-tight" if child else "opening-too-tight",
        (passing.origin.span, "too-tight"),
        notes=(*rows, *source),
        helps=("wider", "stretches-more"),
        severity=Severity.ERROR if child else Severity.WARNING,
        sizes=sizes,
        part=passing.part,
        opening=said("role", role=passing.name) if passing.name in ROLES else said("opening-at", name=passing.name),
        place=passing.place,
    )


ROLES = ("neck", "cuff", "waist", "leg")
"""Openings that are called by what they are."""


def credited(credit: Credit) -> Said:
    """Where a row's figures are from, to be told."""
    return said("credit", published=credit.published, recalled=credit.recalled, own=credit.own)


def _row(at: DesignInSize, passing: Passing) -> Said:
    return said(
        "passes",
        size=at.size,
        relaxed=Amount(at.of(passing.relaxed)),
        stretched=Amount(at.of(passing.stretched)),
        figure=Amount(at.of(passing.figure)),
        needed=0 if passing.never else Amount(at.of(passing.needed)),
    )


__all__ = ["figure", "name_of", "needed", "passings", "width_of"]
