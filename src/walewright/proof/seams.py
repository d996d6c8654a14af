"""Seams as the bed has them: both sides of each measured on the fabric, those that are alike told once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import groupby

from walewright.bed import Fabric, seam
from walewright.design.model import Design, EdgeName
from walewright.glue.model import Chain, Glued
from walewright.proof.model import JoinProof
from walewright.solve.model import SizedGarment


def seam_proofs(design: Design, glued: Glued, garment: SizedGarment, fabrics: Mapping[str, Fabric]) -> Iterator[JoinProof]:
    """One for each join, or, where its seams differ in length, for each seam."""
    numbers = range(len(glued.seams))
    for join, group in groupby(sorted(numbers, key=lambda n: glued.seams[n].join), key=lambda n: glued.seams[n].join):
        own = list(group)
        found = [_measured(design, glued, garment, fabrics, n) for n in own]
        if len({(p.one_rows, p.other_rows, p.one_cm, p.other_cm) for p in found}) == 1:
            of = design.joins[join]
            yield _named(found[0], f"{_written(of.one)} to {_written(of.other)}", len(own))
            continue
        for number, proof in zip(own, found, strict=True):
            yield _named(proof, f"{spoken(glued.seams[number].one)} to {spoken(glued.seams[number].other)}", 1)


def _measured(design: Design, glued: Glued, garment: SizedGarment, fabrics: Mapping[str, Fabric], number: int) -> JoinProof:
    made, sized = glued.seams[number], garment.seams[number]
    one, other = (seam(fabrics, pairs(side)) for side in (made.one, made.other or made.one))
    assert one is not None, "the bed has joined these edges"
    assert other is not None, "the bed has joined these edges"
    return JoinProof(
        "",
        one.rows or None,
        other.rows or None,
        one.length_cm or 0.0,
        other.length_cm or 0.0,
        sized.easing_cm,
        sized.longer_cm,
        design.joins[made.join].way,
        made.join,
    )


def _named(proof: JoinProof, text: str, times: int) -> JoinProof:
    told = (proof.one_rows, proof.other_rows, proof.one_cm, proof.other_cm, proof.easing_cm, proof.longer_cm, proof.way, proof.join)
    return JoinProof(text, *told, times)


def pairs(chain: Chain) -> tuple[tuple[str, str], ...]:
    """(piece, edge) of each place."""
    return tuple((place.owner, place.edge) for place in chain)


def spoken(chain: Chain) -> str:
    """ "front armhole right + back armhole left"."""
    return " + ".join(f"{p.owner}{f' {p.copy}' if p.copies > 1 else ''} {p.edge}" for p in chain)


def _written(names: tuple[EdgeName, ...]) -> str:
    return " + ".join(f"{n.piece} {n.edge}" for n in names)
