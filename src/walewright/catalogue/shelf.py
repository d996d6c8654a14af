"""The shelf, `index.html`: a page to leaf through what was made. It brings all that it needs but the covers and the products beside
it, and can be read without its script, which only sifts."""

from __future__ import annotations

import itertools
import re
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from jinja2 import FileSystemLoader, StrictUndefined
from jinja2.sandbox import SandboxedEnvironment
from markupsafe import Markup

from walewright import world
from walewright.catalogue.model import JsonObject
from walewright.guide.model import Guide
from walewright.guide.numbers import sentence

TEX = (0, 150, 250, 400, 700)
"""Where classes of yarn begin, in tex: those of a fine, a standard, a mid and a bulky bed, and what is thicker than these (common
practice)."""

SLACK = 0.05
"""By how much of itself a measure may differ from the only size, or from the first and the last where no other lies beyond."""

WORDS = ("filters", "measure", "size-that-fits", "any", "shown", "none", "size", "cm")
"""By these names the template asks for its words."""

_UNFIT = re.compile(r"[^a-z0-9]+")


def shelf(document: Mapping[str, Any], guide: Guide) -> str:
    """The page of a manifest, in the language of `guide`."""
    garments = document["garments"]
    made_of = {
        "code": guide.code,
        "title": document["title"],
        "edition": guide.say("shelf/edition", edition=document["edition"], date=guide.date(document["date"]))
        if document["edition"]
        else guide.date(document["date"]),
        "imprint": document["imprint"],
        "words": {word: guide.say(f"shelf/{word}") for word in WORDS},
        "measures": _measures(garments, guide.code),
        "choices": tuple(_choices(guide, garments)),
        "garments": [{**_garment(guide, one), "anchor": f"garment-{at}"} for at, one in enumerate(garments, 1)],
        # Our own, and the only texts that are let through unescaped.
        "style": Markup(world.package_text("catalogue/templates/shelf.css")),
        "script": Markup(world.package_text("catalogue/templates/shelf.js")),
    }
    environment = SandboxedEnvironment(
        loader=FileSystemLoader(str(world.package_path("catalogue/templates"))), autoescape=True, undefined=StrictUndefined
    )
    return environment.get_template("shelf.html").render(made_of)


def _measures(garments: Sequence[JsonObject], code: str) -> tuple[str, ...]:
    """Measures of the body: those of garments in the page's own language, and of these that of the most garments, first."""
    times = Counter(fit["measure"] for one in garments for fit in one["fits"])
    own = {fit["measure"] for one in garments if one["code"] == code for fit in one["fits"]}
    return tuple(sorted(times, key=lambda name: (name not in own, -times[name], name)))


def _choices(guide: Guide, garments: Sequence[JsonObject]) -> Iterator[JsonObject]:
    """What can be chosen among, each with its values; nothing is offered that is the same in all garments."""
    # Of what is called otherwise in another language, the page has its own name.
    garments = sorted(garments, key=lambda one: bool(one["code"] == guide.code))
    beds = {_slug(one["bed"]["name"]): one["bed"]["label"] for one in garments}
    yarns = {_tex_class(one): _tex_words(guide, _tex_class(one)) for one in garments}
    techniques = {t["key"]: t["title"] for one in garments for t in one["techniques"]}
    everywhere = [{t["key"] for t in one["techniques"]} for one in garments]
    telling = {k: v for k, v in techniques.items() if not all(k in one for one in everywhere)}
    languages = {one["language"]: one["language"] for one in garments}
    for name, options in (("bed", beds), ("yarn", dict(sorted(yarns.items(), key=_class_order))), ("technique", telling)):
        if len(options) > 1 or (name == "technique" and options):
            in_order = options.items() if name == "yarn" else sorted(options.items(), key=lambda pair: pair[1].casefold())
            yield {"name": name, "label": guide.say(f"shelf/{name}"), "options": tuple(in_order)}
    if len(languages) > 1:
        yield {"name": "language", "label": guide.say("shelf/language"), "options": tuple(sorted(languages.items()))}


def _class_order(pair: tuple[str, str]) -> int:
    return int(pair[0] or -1)


def _garment(guide: Guide, one: JsonObject) -> JsonObject:
    products = [p for p in one["products"] if p["format"] != "cover"]
    themed = len({p["theme"] for p in products if "theme" in p}) > 1
    cover = next((p["file"] for p in one["products"] if p["format"] == "cover"), "")
    return {
        "language": one["language"],
        "code": one["code"],
        "bed": _slug(one["bed"]["name"]),
        "yarn_class": _tex_class(one),
        "techniques": " ".join(t["key"] for t in one["techniques"]),
        "ranges": "|".join(_ranges(one)),
        "cover": cover,
        "main": products[0]["file"] if products else cover,
        "alternative": guide.say("shelf/cover", title=one["title"]),
        "title": one["title"],
        "summary": one["summary"],
        "facts": tuple(_facts(guide, one)),
        "sizes": one["sizes"],
        "rows": [
            {
                "label": sentence(guide.say("shelf/fits", measure=fit["measure"])),
                "cells": [guide.decimal(_cm(fit["cm"][s])) for s in one["sizes"]],
            }
            for fit in one["fits"]
        ],
        "products": [{"file": p["file"], "text": ", ".join(_form(guide, p, themed))} for p in products],
    }


def _facts(guide: Guide, one: JsonObject) -> Iterator[str]:
    if one["designer"]:
        yield guide.say("shelf/designer", designer=one["designer"])
    if len(one["sizes"]) > 1 and not one["fits"]:
        yield guide.say("shelf/sizes", sizes=tuple(one["sizes"]))
    if one["for_children"]:
        yield guide.say("shelf/for-children")
    bed = one["bed"]
    yield guide.say("shelf/needles", label=bed["label"], needles=bed["needles"], pitch=guide.decimal(_cm(bed["pitch_mm"])))
    for yarn in one["yarn"]:
        grams = [yarn["grams"][size] for size in one["sizes"]]
        amount = f"{min(grams)}" if min(grams) == max(grams) else f"{min(grams)}\N{EN DASH}{max(grams)}"
        yield guide.say("shelf/grams", label=yarn["label"], grams=amount)
    yield guide.say("shelf/proven", sizes=len(one["proof"]), loops=sum(size["loops"] for size in one["proof"]))


def _form(guide: Guide, product: JsonObject, themed: bool) -> Iterator[str]:
    """What a product is, and in which form; `themed`: of several themes."""
    yield guide.say(f"shelf/format/{product['format']}")
    for name in ("paper", "units"):
        if name in product:
            yield guide.say(f"shelf/form/{product[name]}")
    if themed and "theme" in product:
        yield product["theme"]
    if product.get("print") == "large":
        yield guide.say("shelf/form/large")
    if "pages" in product:
        yield guide.say("shelf/pages", pages=product["pages"])


def _ranges(one: JsonObject) -> Iterator[str]:
    """Of each measure, from what to what a body may measure for each size to be the nearest to it."""
    for fit in one["fits"]:
        values = sorted(set(fit["cm"].values()))
        between = [(a + b) / 2 for a, b in itertools.pairwise(values)]
        least = [values[0] - _beyond(values[0], values[1:2]), *between]
        most = [*between, values[-1] + _beyond(values[-1], values[-2:-1])]
        for low, high in zip(least, most, strict=True):
            yield f"{fit['measure']}:{low:.2f}:{high:.2f}"


def _beyond(value: float, next_to: Sequence[float]) -> float:
    """How far a body may lie beyond the last size: half a step between sizes, or a share of the only one."""
    return abs(value - next_to[0]) / 2 if next_to else value * SLACK


def _tex_class(one: JsonObject) -> str:
    """The class of the yarn that a garment takes most of, by where it begins; "" where its thickness is not known."""
    known = [yarn for yarn in one["yarn"] if yarn["tex"] is not None]
    if not known:
        return ""
    most = max(known, key=lambda yarn: sum(yarn["grams"].values()))
    return str(max(least for least in TEX if least <= most["tex"]))


def _tex_words(guide: Guide, least: str) -> str:
    if not least:
        return ""
    at = TEX.index(int(least))
    if at == 0:
        return guide.say("shelf/tex-to", most=TEX[1])
    if at == len(TEX) - 1:
        return guide.say("shelf/tex-from", least=TEX[at])
    return guide.say("shelf/tex-from-to", least=TEX[at], most=TEX[at + 1])


def _slug(text: str) -> str:
    return _UNFIT.sub("-", text.casefold()).strip("-")


def _cm(value: float) -> str:
    return f"{value:.1f}".removesuffix(".0")
