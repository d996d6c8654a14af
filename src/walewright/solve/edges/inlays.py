"""What lies inside the outline: slots, buttonholes, zones and panels, and stretches worked again."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from math import floor

from walewright.counted.model import SizedRepeat, SizedRun, SizedSlot, SizedZone
from walewright.design.model import Buttonholes, Design, DesignInSize, Piece, Slot
from walewright.report.said import said
from walewright.solve.algebra.programme import Draft
from walewright.solve.algebra.quantities import Quantity, want
from walewright.solve.edges.edges import PerSizeTerms, doubled, new
from walewright.solve.edges.gauge import fabric_below
from walewright.solve.edges.widths import panel_slots, placed
from walewright.trade.ends import SlotTaken


def slot_terms(draft: Draft, design: Design, piece: Piece, slot: Slot, one: PerSizeTerms) -> PerSizeTerms:
    """Stitches of a slot, per size. One in the middle has an even or odd number of them as its piece has."""
    count = new(draft, design, piece, f"{slot.name} width")
    per_cm = fabric_below(design, piece, slot.level).stitches_per_cm
    terms, factor = (count, 1) if any(slot.centre) else doubled(count, one)
    quantity = Quantity(
        name=said("part-width", part=slot.name, piece=piece.name, place=""),
        pieces=(piece.name,),
        origin=slot.origin,
        terms=terms,
        factor=factor,
        wanted=tuple(w * per_cm for w in slot.width),
        cm=slot.width,
        tolerance=(2.0,) * len(design.sizes),
        clause=said("is-wide", part=slot.name, piece=piece.name, place=""),
        either=piece.parity == "either" and not any(slot.centre),
    )
    want(draft, quantity)
    return tuple(factor * t for t in terms)


def sized_slots(
    at: DesignInSize, piece: Piece, stitches: Mapping[str, int], rows: Mapping[str, int], lean: int
) -> Iterator[SizedSlot]:
    """The slots of a piece that starts `lean` stitches off the centre mark; `stitches` of each by its name."""
    for slot in piece.slots:
        per_cm = fabric_below(at.design, piece, slot.level).stitches_per_cm
        count = stitches[slot.name]
        first = placed(at, piece, count, (at.of(slot.centre) if slot.centre else 0.0) * per_cm) - lean
        yield SizedSlot(
            name=slot.name, row=rows[slot.level], first=first, last=first + count - 1, taken=slot.taken, origin=slot.origin
        )


def hole_rows(count: int, first: int, last: int) -> tuple[int, ...]:
    """Even rows from the first to the last, as evenly as even rows are."""
    if count == 1:
        return (first,)
    pairs = (last - first) // 2
    return tuple(first + 2 * ((2 * pairs * i + count - 1) // (2 * (count - 1))) for i in range(count))


def sized_buttonholes(
    at: DesignInSize,
    piece: Piece,
    holes: Buttonholes,
    rows: Mapping[str, int],
    reach: int,
    runs: tuple[SizedRun, ...],
) -> Iterator[SizedSlot]:
    """Buttonholes beside an outer edge, which moves by `runs` from `reach` stitches outside the centre mark on."""
    per_cm = fabric_below(at.design, piece, holes.to_level).stitches_per_cm
    between = floor(at.of(holes.distance) * per_cm + 0.5)
    taken: SlotTaken = "eyelet" if holes.stitches == 1 else "cast-off"
    for number, row in enumerate(hole_rows(at.of(holes.counts), rows[holes.from_level], rows[holes.to_level]), 1):
        edge = reach + sum(by for run in runs for moved, by in run.changes() if moved < row)
        first = between - edge if holes.edge == "left" else edge - between - holes.stitches
        yield SizedSlot(
            name=f"buttonhole {number}", row=row, first=first, last=first + holes.stitches - 1, taken=taken, origin=holes.origin
        )


def sized_zones(at: DesignInSize, piece: Piece, rows: Mapping[str, int], lean: int) -> Iterator[SizedZone]:
    """Zones over the whole width (no slots of their own) and panels, centred on needles."""
    for zone in piece.zones:
        first, last = 0, -1
        if zone.width is not None:
            first, last = (slot - lean for slot in panel_slots(at, piece, zone))
        yield SizedZone(
            fabric=zone.fabric,
            from_row=rows[zone.from_level],
            to_row=rows[zone.to_level],
            first=first,
            last=last,
            origin=zone.origin,
        )


def sized_repeats(at: DesignInSize, piece: Piece, rows: Mapping[str, int]) -> tuple[SizedRepeat, ...]:
    """The stretches worked several times."""
    return tuple(SizedRepeat(rows[r.from_level], rows[r.to_level], at.of(r.times), r.origin) for r in piece.repeats)
