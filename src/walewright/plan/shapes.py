"""Charts, and the counts of a piece, as JSON: edges, openings, slots, held rows, fabrics, charts, repeats."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from walewright.counted.model import PickUp, SizedChart, SizedOpening, SizedPiece, SizedRun, SizedSlot, SizedWedge, SizedZone
    from walewright.design.model import Chart

Json = dict[str, Any]


def cm(value: float) -> float:
    """Rounded to 1/1000 cm, so that the last bits of a sum do not make two documents differ."""
    return round(value, 3) + 0.0


def counts(piece: SizedPiece) -> Json:
    """Stitches, rows and schedules of a piece."""
    return {
        "start_stitches": piece.start,
        "start_left": piece.start_left,
        "widest_stitches": piece.widest,
        "rows": piece.rows,
        "counter": piece.counter(piece.rows),
        "edging_rows": piece.edging_rows,
        "levels": [{"name": name, "row": row} for name, row in piece.levels],
        "left": [run(r) for r in piece.left],
        "right": [run(r) for r in piece.right],
        "openings": [_opening(o) for o in piece.openings],
        "wedges": [_wedge(w) for w in piece.wedges],
        "slots": [slot(s) for s in piece.slots],
        "zones": [_zone(z) for z in piece.zones],
        "charts": [_placement(c) for c in piece.charts],
        "repeats": [{"from_row": r.from_row, "to_row": r.to_row, "times": r.times} for r in piece.repeats],
        **_needles_out(piece),
        **({"end_edging_rows": piece.end_rows} if piece.end_rows else {}),
    }


def _needles_out(piece: SizedPiece) -> Json:
    """Needles out of work over a stretch of rows, where there are any."""
    outs = [{"from_row": o.from_row, "to_row": o.to_row, "needles": list(o.slots)} for o in piece.needles_out]
    return {"needles_out": outs} if outs else {}


def chart(of: Chart) -> Json:
    """A grid of symbols and what each means."""
    return {
        "name": of.name,
        "rows": list(of.rows),
        "key": [
            {
                "symbol": key.symbol,
                "kind": key.cell.kind,
                "yarn": key.cell.yarn,
                "cross": key.cell.cross,
                "hung_first": key.cell.hung_first,
            }
            for key in of.key
        ],
        "before": of.before,
        "repeat": of.repeat,
        "after": of.after,
        "picture": of.picture,
        "stage": of.stage,
    }


def run(of: SizedRun) -> Json:
    """One edge between two rows."""
    return {
        "name": of.name,
        "from_row": of.from_row,
        "to_row": of.to_row,
        "across": of.across,
        "way": {"kind": of.way.kind, "inset": of.way.inset, "at_once": of.way.at_once, **_lines(of)},
        "phrases": [{"gaps": list(p.gaps), "by": list(p.by), "times": p.times} for p in of.phrases],
        "changes": [{"row": row, "by": by} for row, by in of.changes()],
    }


def _lines(of: SizedRun) -> Json:
    """Of a run shaped inside the piece, its lines from the centre outwards."""
    return {"lines": [{"of": line.of, "at": line.at} for line in of.lines]} if of.lines else {}


def slot(of: SizedSlot) -> Json:
    """A slot, a buttonhole or an eyelet."""
    return {"name": of.name, "row": of.row, "first": of.first, "last": of.last, "taken": of.taken}


def pick_up(of: PickUp) -> Json:
    """What is picked up along one edge."""
    return {
        "piece": of.edge.piece,
        "edge": of.edge.edge,
        "part": of.part,
        "stitches": of.stitches,
        "points": of.points,
        "cm": cm(of.cm),
        "between": None if of.between is None else list(of.between),
    }


def _opening(of: SizedOpening) -> Json:
    return {
        "name": of.name,
        "row": of.row,
        "to_row": of.to_row,
        "first": of.first,
        "flat": of.flat,
        "width": of.width,
        "taken": of.taken,
        "rejoins": of.rejoins,
        "edge": run(of.run),
        "left": [run(r) for r in of.left],
        "right": [run(r) for r in of.right],
    }


def _wedge(of: SizedWedge) -> Json:
    return {
        "name": of.name,
        "edge": of.edge,
        "kind": of.kind,
        "from_row": of.from_row,
        "to_row": of.to_row,
        "groups": list(of.groups),
        "rest": of.rest,
    }


def _placement(of: SizedChart) -> Json:
    return {
        "chart": of.chart,
        "fabric": of.fabric,
        "area": of.area,
        "from_row": of.from_row,
        "to_row": of.to_row,
        "first": of.first,
        "last": of.last,
        "edge": of.edge,
        "start": of.start,
        "repeats": of.repeats,
    }


def _zone(of: SizedZone) -> Json:
    first, last = of.panel or (None, None)
    return {
        "fabric": of.fabric,
        "from_row": of.from_row,
        "to_row": of.to_row,
        "first": first,
        "last": last,
    }
