"""All that is to be made of a catalogue: each source with its languages, and of each the products in all their forms."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import product

from walewright.catalogue.lines import CatalogueLines
from walewright.catalogue.model import HOUSE, MANIFEST, SHELF, Making, Nameable, Product
from walewright.catalogue.places import TomlPath
from walewright.catalogue.settings import Settings, filled
from walewright.record import record, replace
from walewright.world import alike

COVER = "cover"
"""The format that every garment is made in besides, for the shelf."""

FORMS = ("theme", "paper", "units", "print")
"""What a product's form is made of, in the order in which a name has it."""


_UNFIT = re.compile(r"[^\w-]")
"""What the name of a file does not take over from the name of an alternative."""


@record
class Issued:
    """A source, what holds for it, and where it is said that it is issued."""

    source: str
    settings: Settings
    at: TomlPath


def makings(lines: CatalogueLines, issued: tuple[Issued, ...], known: Nameable) -> tuple[Making, ...]:
    """What is to be made; no two products of one name, which is reported, and no making twice."""
    found: dict[str, Making] = {}
    taken: dict[str, tuple[Making | None, Product]] = {alike(name): (None, Product(name, "")) for name in (MANIFEST, SHELF)}
    for one in issued:
        for making in _of_source(lines, one, known):
            before = found.get(making.name)
            if before is not None:
                # The same once more, in other forms.
                fresh = tuple(p for p in making.products if p not in before.products)
                making = replace(making, products=(*before.products, *fresh))
            else:
                fresh = making.products
            found[making.name] = making
            # One message for a source, however many of its products share a name.
            if not all(_free(lines, one, making, made, taken) for made in fresh):
                break
    return tuple(found.values())


def _free(
    lines: CatalogueLines, one: Issued, making: Making, made: Product, taken: dict[str, tuple[Making | None, Product]]
) -> bool:
    """Whether nothing else is called so; else that is reported."""
    maker, other = taken.setdefault(alike(made.file), (making, made))
    if maker == making and other == made:
        return True
    product, source = made.file, making.source
    place = lines.value(*one.at[:-1], "name") if _says_name(lines, one) else lines.value(*one.at)
    if maker is None:
        lines.fault("catalogue-clash/kept", place, "other-name", product=product, source=source)
        return False
    differ = _differences(maker, other, making, made)
    if maker.source == source and differ:
        lines.fault("catalogue-clash/forms", place, "add-places", places=differ, product=product, source=source)
    else:
        lines.fault("catalogue-clash/sources", place, "tell-apart", other=maker.source, product=product, source=source)
    return False


def _differences(one: Making, of_one: Product, other: Making, of_other: Product) -> tuple[str, ...]:
    """The places of a name by which two products could be told apart."""
    own = (("language", one.language != other.language), ("choice", one.choices != other.choices))
    return (*(place for place, differs in own if differs), *(f for f in FORMS if getattr(of_one, f) != getattr(of_other, f)))


def _says_name(lines: CatalogueLines, one: Issued) -> bool:
    table, at = str(one.at[0]), one.at[1]
    return isinstance(at, int) and "name" in lines.tables(table)[at]


def _of_source(lines: CatalogueLines, one: Issued, known: Nameable) -> Iterator[Making]:
    own = one.settings
    formats = tuple(dict.fromkeys((*(own.formats or known.usual_formats), COVER)))
    values = {
        "theme": own.themes or (HOUSE,),
        "paper": own.papers or known.papers[:1],
        "units": own.units or known.units[:1],
        "print": own.prints or ("usual",),
    }
    languages = own.languages or ("english",)
    name = own.name or _usual_name(languages, values)
    choices = own.choices or ()
    at = lines.value(*one.at)
    places = {"": at, "choose": own.choices_at or at, "size": own.sizes_at or at}
    for language in languages:
        facts = {
            "source": one.source.rpartition("/")[2].rpartition(".")[0],
            "choice": _UNFIT.sub("_", "-".join(alternative for _, alternative in choices)),
            "language": language,
        }
        products: dict[Product, None] = {}
        for form in known.formats:
            if form in formats:
                varies = known.formats[form].varies_with
                for form_values in product(*(values[f] if f in varies else ("",) for f in FORMS)):
                    of = dict(zip(FORMS, form_values, strict=True))
                    file = filled(name, facts | of) + known.formats[form].suffix
                    products[Product(file, form, of["paper"], of["units"], of["theme"], of["print"])] = None
        yield Making(one.source, language, own.sizes or (), choices, tuple(products), places)


def _usual_name(languages: tuple[str, ...], values: dict[str, tuple[str, ...]]) -> str:
    """The source's own name and, with hyphens, whatever there are several of."""
    several = [form for form in FORMS if len(values[form]) > 1]
    named = ["choice", *(["language"] if len(languages) > 1 else []), *several]
    return "{source}" + "".join(f"-{{{place}}}" for place in named)
