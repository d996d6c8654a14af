"""One making: a source compiled, and the products that are wanted of it as bytes. Nothing is read and nothing written: all that
goes in comes with the job, so that it can be worked anywhere, and gives the same everywhere."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING, Any, cast

from walewright import __version__
from walewright.catalogue.model import Making, Product
from walewright.cli import sources
from walewright.cli.command_line import CommandLine
from walewright.cli.formats import format_named
from walewright.cli.formats.format import Pattern
from walewright.cli.options import PaperSize, Units, Wanted
from walewright.record import record, replace
from walewright.report.columns import named
from walewright.report.model import Diagnostic, Label
from walewright.report.said import said

if TYPE_CHECKING:
    from walewright.design import SharedFile
    from walewright.pipeline import Outcome
    from walewright.sheet.themed import Theme
    from walewright.world.pictures import NoPicture


@record
class Job:
    """What goes into one making: the source in `file` by its text, what it uses, and how pages are printed. `catalogue`: the name
    and the text of the catalogue's file, for messages."""

    line: CommandLine
    making: Making
    file: str
    text: str
    used: Mapping[str, SharedFile]
    pictures: Mapping[str, tuple[bytes, NoPicture | None]]
    themes: Mapping[str, Theme]
    date: str
    catalogue: tuple[str, str]


@record
class MadeProduct:
    """A product's bytes, and on how many pages it lies."""

    product: Product
    data: bytes
    pages: int


@record
class MadeGarment:
    """What a making came to: the exit code; the products; what is said about the garment, or None; the shipped files
    that it used; and whether the source only defines."""

    code: int
    products: tuple[MadeProduct, ...] = ()
    garment: dict[str, Any] | None = None
    shipped: tuple[str, ...] = ()
    only_defines: bool = False


def make(job: Job) -> MadeGarment:
    """Work a job. What goes wrong is said, and shows in the exit code."""
    try:
        return _made(job)
    except Exception as fault:
        from walewright.cli import console, mishaps

        if isinstance(fault, BrokenPipeError | console.OutputLost):
            raise
        return MadeGarment(mishaps.told(fault, said("building", file=named(job.file)), job.line))


def _made(job: Job) -> MadeGarment:
    from walewright.design import only_definitions
    from walewright.report.model import has_errors

    wanted = _wanted(job.making)
    noted, given = _noting(job)
    outcome = sources.compile_text(job.file, job.text, given, wanted, lambda name: job.pictures.get(name, (b"", "missing")))
    texts = {**outcome.shared, job.file: job.text, job.catalogue[0]: job.catalogue[1]}
    job.line.report(_placed(outcome.diagnostics, job), texts, sources.edits(outcome, wanted))
    shipped = tuple(sorted(noted))
    if not outcome.proven:
        if outcome.tree is not None and not has_errors(outcome.diagnostics) and only_definitions(outcome.tree):
            return MadeGarment(0, shipped=shipped, only_defines=True)
        return MadeGarment(1)
    from walewright.catalogue import garment_facts

    patterns = _Patterns(job, outcome, wanted)
    refused = tuple(fault for p in job.making.products for fault in format_named(p.format).refused(patterns.of(p)))
    if refused:
        job.line.report(_placed(dict.fromkeys(refused), job), texts)
        return MadeGarment(1)
    products = tuple(_product(job, patterns.of(product), product) for product in job.making.products)
    return MadeGarment(0, products, garment_facts(outcome, patterns.of(job.making.products[0]).sheet), shipped)


def _product(job: Job, pattern: Pattern, product: Product) -> MadeProduct:
    made = format_named(product.format).make(pattern)
    job.line.report(made.doubts, {job.file: job.text})
    return MadeProduct(product, made.data, made.pages)


def _wanted(making: Making) -> Wanted:
    fields = {"sizes": making.sizes or None, "chosen": dict(making.choices)}
    return Wanted(fields, (), {}, making.language)


def _placed(diagnostics: Any, job: Job) -> tuple[Diagnostic, ...]:
    """What came back of something that the catalogue gives has its place there."""
    return tuple(_in_catalogue(d, job) for d in diagnostics)


def _in_catalogue(diagnostic: Diagnostic, job: Job) -> Diagnostic:
    if diagnostic.labels or diagnostic.given is None:
        return diagnostic
    place = job.making.places.get(diagnostic.given[0], job.making.places[""])
    return replace(diagnostic, labels=(Label(place),))


class _Patterns:
    """The outcome as it is printed in each form, made once each. What a format does not depend on is taken as usual."""

    def __init__(self, job: Job, outcome: Outcome, wanted: Wanted) -> None:
        self._job, self._outcome, self._guide = job, outcome, wanted.guide
        self._made: dict[tuple[str, str, str, str], Pattern] = {}

    def of(self, product: Product) -> Pattern:
        """The pattern in a product's form."""
        form = (product.paper or "a4", product.units or "cm", product.theme, product.print)
        if form not in self._made:
            self._made[form] = Pattern(
                outcome=self._outcome,
                guide=self._guide,
                paper=cast(PaperSize, form[0]),
                units=cast(Units, form[1]),
                version=__version__,
                date=self._job.date,
                theme=self._job.themes.get(product.theme),
                large_print=product.print == "large",
            )
        return self._made[form]


class _Noted(Mapping[str, str]):
    """Shipped texts by their names, which notes those that are looked at."""

    def __init__(self, texts: Mapping[str, str], noted: set[str], path: str) -> None:
        self._texts, self._noted, self._path = texts, noted, path

    def __getitem__(self, name: str) -> str:
        text = self._texts[name]
        self._noted.add(self._path.format(name))
        return text

    def __contains__(self, name: object) -> bool:
        return name in self._texts

    def __iter__(self) -> Iterator[str]:
        return iter(self._texts)

    def __len__(self) -> int:
        return len(self._texts)


def _noting(job: Job) -> tuple[set[str], Any]:
    """What the source can name, and the paths of what is shipped that are looked at, which fill as it is compiled."""
    noted: set[str] = set()
    there = sources.shipped()
    given = replace(
        there,
        tables=_Noted(there.tables, noted, "tables/{}.csv"),
        machines=_Noted(there.machines, noted, "machines/{}.toml"),
        shapes=_Noted(there.shapes, noted, "shapes/{}.wale"),
        charts=_Noted(there.charts, noted, "charts/{}.wale"),
        files=job.used,
    )
    return noted, given
