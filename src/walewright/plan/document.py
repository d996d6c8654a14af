"""The plan document: format 1."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING

from walewright import __version__, world
from walewright.knit.operations import Block, Join
from walewright.plan import shapes
from walewright.plan.measured import measured
from walewright.plan.moves import block, join_side
from walewright.plan.page import for_the_page
from walewright.plan.regraded import regraded
from walewright.plan.shapes import Json, cm
from walewright.plan.worn import worn
from walewright.proof.model import AsInFabric, FromLoops, OneLength, Reckoning, SewnEdge

if TYPE_CHECKING:
    from walewright.counted.model import SizedBand, SizedGarment, SizedPiece
    from walewright.design.model import Design, Fabric, Measurement, Yarn
    from walewright.design.model import MachineProfile as Bed
    from walewright.design.model.credit import Credit
    from walewright.knit.operations import Work
    from walewright.pipeline import Outcome
    from walewright.proof.model import BobbinUse, FloatFound, JoinProof, Measure, PieceProof, SizeProof, YarnUse

FORMAT = 1
"""Version of the document's shape: rises when a reader of the old shape could misunderstand the new one."""


def schema() -> Json:
    """The JSON Schema (draft 2020-12) of the document."""
    read: Json = json.loads(world.package_text("plan/plan.schema.json"))
    return read


def plan_bytes(outcome: Outcome) -> bytes:
    """The document as UTF-8 JSON: keys sorted, the same bytes for the same source."""
    return (json.dumps(plan_json(outcome), ensure_ascii=False, indent=1, sort_keys=True, allow_nan=False) + "\n").encode()


def plan_json(outcome: Outcome) -> Json:
    """The document of a proven outcome. Lengths are centimetres to 1/1000, needles slots (0 is the first right of the
    centre). Raises ValueError for an outcome that is not proven."""
    design, counts, _, proven = outcome.result()
    return {
        "format": FORMAT,
        "compiler": f"walewright {__version__}",
        "title": design.title,
        "texts": [{"key": key, "text": text} for key, text in design.texts],
        "machine": _machine(design.machine),
        "yarns": [_yarn(yarn) for yarn in design.yarns],
        "fabrics": [_fabric(fabric) for fabric in design.fabrics],
        "charts": [shapes.chart(chart) for chart in design.charts],
        "measurements": [_measurement(m, design.sizes) for m in design.measurements],
        "choices": [
            {"name": c.name, "alternatives": list(c.alternatives), "alternative": c.alternative, "chosen": c.chosen}
            for c in design.choices
        ],
        "files": list(outcome.files),
        "regraded": regraded(design),
        "sizes": [
            _size(design, garment, work, proof)
            for garment, work, proof in zip(counts.sizes, outcome.works, proven.sizes, strict=True)
        ],
        "making_up": list(design.making_up),
        "worn": worn(outcome.fit, design.sizes),
        "for_children": design.for_children,
        "cords": [
            {"piece": c.piece, "cm": {size: cm(v) for size, v in zip(design.sizes, c.length, strict=True)}} for c in design.cords
        ],
        **for_the_page(design, outcome.fit),
    }


def _machine(machine: Bed) -> Json:
    return {
        "name": machine.name,
        "label": machine.label,
        "needles": machine.needles,
        "pitch_mm": machine.pitch_mm,
        "prongs": list(machine.prongs),
        "edge_guides": machine.edge_guides,
        **({"plates": list(machine.plates)} if machine.plates else {}),
        **({"start": machine.start} if machine.start != "comb" else {}),
        **({"crossing": machine.crossing} if machine.crossing else {}),
        **({"lacking": list(machine.lacking)} if machine.lacking else {}),
        **({"missing": list(machine.missing)} if machine.missing else {}),
    }


def _yarn(yarn: Yarn) -> Json:
    return {
        "name": yarn.name,
        "label": yarn.label,
        "ball_grams": cm(yarn.ball_grams),
        "ball_metres": cm(yarn.ball_metres),
        "tex": cm(yarn.tex),
        "colour": yarn.colour,
        **({"strands": list(yarn.strands)} if yarn.strands else {}),
        **({"fibres": list(yarn.fibres)} if yarn.fibres else {}),
    }


def _fabric(fabric: Fabric) -> Json:
    return {
        "name": fabric.name,
        "stitch": fabric.stitch,
        "yarn": fabric.yarn,
        "tension": fabric.tension,
        "stitches_per_10_cm": cm(fabric.stitches_per_cm * 10),
        "rows_per_10_cm": cm(fabric.rows_per_cm * 10),
        "loop_cm": cm(fabric.loop_cm),
        "chart": fabric.chart,
        "edge": fabric.edge,
        "fit": fabric.fit,
        "stripes": [{"yarn": yarn, "rows": rows} for yarn, rows in fabric.stripes],
        "right_side": fabric.right_side,
        "basis": fabric.basis,
        "reckoned_from": fabric.reckoned_from,
        "swatch_of": fabric.swatch_of,
        "start_dial": fabric.start_dial,
    }


def _measurement(measurement: Measurement, sizes: tuple[str, ...]) -> Json:
    return {
        "name": measurement.name,
        "to_fit": measurement.to_fit,
        "about": measurement.about,
        "credit": _credit(measurement.credit),
        "cm": {size: cm(value) for size, value in zip(sizes, measurement.values, strict=True)},
    }


def _credit(credit: Credit | None) -> Json | None:
    if credit is None:
        return None
    return {"published": list(credit.published), "recalled": credit.recalled, "own": list(credit.own)}


def _size(design: Design, garment: SizedGarment, work: Work, proof: SizeProof) -> Json:
    proven = {piece.name: piece for piece in proof.pieces}
    return {
        "size": garment.size,
        "pieces": [_piece(design, piece, proven[piece.name]) for piece in garment.pieces],
        "bands": [_band(band) for band in garment.bands],
        "deviations": [
            {
                "piece": d.piece,
                "what": measured(d.key),
                "unit": d.unit,
                "wanted_cm": cm(d.wanted_cm),
                "wanted": cm(d.wanted),
                "solved": d.solved,
                "solved_cm": cm(d.solved_cm),
            }
            for d in garment.deviations
        ],
        "work": [task_json(task) for task in work.tasks],
        "joins": [_proven_join(design, done) for done in proof.joins],
        "yarn": [_use(use) for use in proof.yarn],
        "bobbins": [_bobbin(bobbin) for bobbin in proof.bobbins],
        "floats": [_float(found) for found in proof.floats],
        "operations": proof.operations,
        "loops": proof.loops,
        "read_back": proof.read_back,
    }


def _piece(design: Design, piece: SizedPiece, proof: PieceProof) -> Json:
    of = design.piece(piece.name)
    return {
        "name": piece.name,
        "fabric": of.fabric,
        "copies": proof.copies,
        "mirror_of": of.mirror_of,
        "purpose": of.purpose,
        "start": {
            "way": of.start_way,
            "along": [{"piece": e.piece, "edge": e.edge} for e in of.start_along],
            "pick_ups": [shapes.pick_up(p) for p in piece.start_pick_ups],
        },
        "end": of.end_way,
        **shapes.counts(piece),
        "knitted": {
            "first_needle": proof.first_needle,
            "last_needle": proof.last_needle,
            "most_stitches": proof.most_stitches,
            "rows": proof.rows,
            "loops": proof.loops,
            "measures": [_measure(m) for m in proof.measures],
        },
    }


def _measure(measure: Measure) -> Json:
    return {
        "what": measured(measure.key),
        "unit": measure.unit,
        "wanted_cm": cm(measure.wanted_cm),
        "knitted_cm": cm(measure.knitted_cm),
        "off": cm(measure.off),
    }


def _band(band: SizedBand) -> Json:
    return {
        "name": band.name,
        "stitches": band.stitches,
        "rows": band.rows,
        "pick_ups": [shapes.pick_up(p) for p in band.pick_ups],
        "holes": [shapes.slot(h) for h in band.holes],
        "holes_behind": [shapes.slot(h) for h in band.behind],
    }


def task_json(task: Block | Join) -> Json:
    """A block on the bed, or a seam, in the order of work."""
    if not isinstance(task, Join):
        return {"kind": "block", **block(task)}
    return {
        "kind": "seam",
        "one": join_side(task.one),
        "other": join_side(task.other),
        "ends": list(task.ends),
        "easing_mm": task.easing_mm,
        "longer_mm": task.longer_mm,
        "way": task.way,
        "rows": task.rows,
        "one_mm": task.one_mm,
        "other_mm": task.other_mm,
        **({"ratio": list(task.ratio)} if any(task.ratio) else {}),
        **({"over": [{"piece": piece, "edging": edging, "rows": rows} for piece, edging, rows in task.over]} if task.over else {}),
    }


def _proven_join(design: Design, join: JoinProof) -> Json:
    return {
        "times": join.times,
        "one": [_sewn(e) for e in join.one],
        "other": [_sewn(e) for e in join.other],
        "one_rows": join.one_rows,
        "other_rows": join.other_rows,
        "one_cm": cm(join.one_cm),
        "other_cm": cm(join.other_cm),
        "easing_cm": cm(join.easing_cm),
        "longer_cm": cm(join.longer_cm),
        "way": join.way,
        "matching": join.join is not None and design.joins[join.join].matching,
        **(
            {"over": [{"piece": o.piece, "edging": o.edging, "rows": o.rows, "cm": cm(o.cm)} for o in join.over]}
            if join.over
            else {}
        ),
    }


def _sewn(edge: SewnEdge) -> Json:
    return {"piece": edge.piece, "edge": edge.edge, **({"copy": edge.copy} if edge.copy else {})}


def _several(lengths: int) -> Json:
    return {"lengths": lengths} if lengths > 1 else {}


def _reckoned(way: Reckoning) -> Json:
    match way:
        case FromLoops():
            return {"by": [{"from": source, "fabrics": list(fabrics)} for source, fabrics in way.known], "spare": cm(way.spare)}
        case AsInFabric():
            return {"as_in_fabric": way.fabric, "as_thick_as": way.label}
        case OneLength():
            part = {"part_cm": way.part_cm} if way.part_cm else {}
            return {"length_cm": way.cm, "ends_cm": way.ends_cm, "times": way.times, **_several(way.lengths), **part}


def _use(use: YarnUse) -> Json:
    return {
        "yarn": use.yarn,
        "label": use.label,
        "kind": use.kind,
        "metres": cm(use.metres),
        "grams": cm(use.grams),
        "garment_grams": cm(use.garment_grams),
        "swatch_grams": cm(use.swatch_grams),
        "reserve_grams": cm(use.reserve_grams),
        "balls": use.balls,
        "reckoned": _reckoned(use.way),
        "error": cm(use.error),
    }


def _bobbin(bobbin: BobbinUse) -> Json:
    return {
        "piece": bobbin.piece,
        "chart": bobbin.chart,
        "yarn": bobbin.yarn,
        "number": bobbin.number,
        "first": bobbin.first,
        "last": bobbin.last,
        "row": bobbin.row,
        "last_row": bobbin.last_row,
        "rests": [{"from": begin, "to": end} for begin, end in bobbin.rests],
        "metres": cm(bobbin.metres),
    }


def _float(found: FloatFound) -> Json:
    return {
        "piece": found.piece,
        "yarn": found.yarn,
        "row": found.row,
        "first": found.first,
        "last": found.last,
        "stitches": found.stitches,
        "cm": cm(found.cm),
    }
