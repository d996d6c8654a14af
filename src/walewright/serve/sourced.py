"""The source of a garment taken through the pipeline: a file, or a text that somebody gave, which has no files beside it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from walewright import world
from walewright.cli import sources
from walewright.record import replace
from walewright.serve.model import ServedGarment
from walewright.world.pictures import NoPicture

if TYPE_CHECKING:
    from walewright.cli.options import Wanted
    from walewright.pipeline import Outcome


def understood(garment: ServedGarment, wanted: Wanted) -> Outcome:
    """Without counting a stitch."""
    if not garment.text:
        return sources.understand_file(garment.file, wanted)
    from walewright import pipeline

    return pipeline.understood(garment.text, garment.file, sources.shipped(), wanted.changes, wanted.printed)


def counted(garment: ServedGarment, wanted: Wanted) -> Outcome:
    """As far as its stitches and rows."""
    if not garment.text:
        return sources.count_file(garment.file, wanted)
    from walewright import pipeline

    return pipeline.counted(garment.text, garment.file, sources.shipped(), wanted.changes)


def compiled(garment: ServedGarment, wanted: Wanted) -> Outcome:
    """To the end."""
    if not garment.text:
        return sources.compile_file(garment.file, wanted)
    return sources.compile_text(garment.file, garment.text, sources.shipped(), wanted, _no_picture)


def _no_picture(_: str) -> tuple[bytes, NoPicture | None]:
    return b"", "missing"


def texts(garment: ServedGarment) -> tuple[str, ...]:
    """All that is read for it: what was worked out of other texts holds no longer."""
    text = garment.text or world.read_source(garment.file)[0] or ""
    beside = {} if garment.text else sources.files_used(garment.file, text)
    return text, *(f"{name}\n{file.text}" for name, file in sorted(beside.items()))


# ----------------------------------------------------------------- what is kept of an outcome


def slim(outcome: Outcome) -> Outcome:
    """What is needed to print it, with the language that it was written in. The fabric is large, and the bed knits it again from
    the same moves; where needles are missing it lies elsewhere than the moves, and is kept."""
    return replace(outcome, tree=None, read=(), language=None, results=outcome.results if outcome.placed else ())


def with_fabric(outcome: Outcome) -> Outcome:
    """With what the bed knits."""
    if outcome.results or outcome.design is None:
        return outcome
    from walewright import bed
    from walewright.pipeline import bed_of

    machine = bed_of(outcome.design)
    return replace(outcome, results=tuple(bed.knit(work, machine) for work in outcome.works))
