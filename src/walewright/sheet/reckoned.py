"""How yarn was reckoned, in the guide's words."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from walewright.guide.model import Guide
from walewright.guide.numbers import graded
from walewright.proof.model import AsInFabric, FromLoops, LoopSource, OneLength, YarnUse
from walewright.report.said import Said, said


def reckoned(guide: Guide, uses: Sequence[YarnUse]) -> tuple[str, ...]:
    """How one yarn was reckoned in every size, each way once; what differs from size to size only by its figures is one phrase."""
    alike: dict[object, list[YarnUse]] = {}
    for use in uses:
        alike.setdefault(_kind(use), []).append(use)
    return tuple(dict.fromkeys(phrase for same in alike.values() for phrase in _phrases(guide, same)))


def _known(source: LoopSource, fabrics: tuple[str, ...]) -> Said:
    way = said(f"way/{source}")
    return said("way/of-fabrics", fabrics=fabrics, way=way) if fabrics else way


def _kind(use: YarnUse) -> object:
    """What is alike in ways that differ by their figures only."""
    if not isinstance(use.way, OneLength):
        return use.way
    return use.way.times > 1, use.way.lengths, use.way.cm > 0, use.way.part_cm > 0


def _phrases(guide: Guide, uses: Sequence[YarnUse]) -> Iterator[str]:
    way = uses[0].way
    error = graded([f"{use.error * 100:.0f}" for use in uses])
    match way:
        case FromLoops():
            known = tuple(_known(source, fabrics) for source, fabrics in way.known)
            yield guide.say(
                "way/from-loops",
                known=known or (said("way/none"),),
                spare=round(way.spare * 100),
                error=error,
                estimated=any(source == "estimated" for source, _ in way.known),
            )
        case AsInFabric():
            yield guide.say("way/as-in-fabric", error=error)
        case OneLength():
            lengths = [use.way for use in uses if isinstance(use.way, OneLength)]
            start = guide.say(
                "way/one-length" if way.lengths == 1 else "way/lengths",
                lengths=way.lengths,
                cm=graded([str(one.cm) for one in lengths]),
                ends=way.ends_cm,
                times=graded([str(one.times) for one in lengths]) if way.times > 1 else "",
            )
            part = guide.say("way/cord-part", cm=graded([str(one.part_cm) for one in lengths]))
            cords = (*([start] if way.cm else ()), *([part] if way.part_cm else ()))
            yield guide.say("way/cord", cords=cords, error=error)
