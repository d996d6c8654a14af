"""What the renderer leaves out of a tagged PDF (ISO 14289-1), added before the file is written, and its contents compressed.

Header cells get their scope (7.5), running heads and page numbers become pagination artifacts (7.8), and links carry the flag
that says that they are printed (7.18.1).
"""

from __future__ import annotations

import zlib
from collections.abc import Iterator
from typing import Any

PRINTED = 4
"""The annotation flag "Print" (ISO 32000-1, table 165)."""


def finish(_: Any, made: Any) -> None:
    """Complete the PDF `made`, an object of the renderer's, in place."""
    objects = {item.number: item for item in made.objects}
    _scope(objects)
    _artifacts(objects, made)
    for item in objects.values():
        if isinstance(item, dict) and item.get("Subtype") == "/Link":
            item["F"] = PRINTED
    for item in objects.values():
        if getattr(item, "compress", False):
            _compress(item)
    _written_once(made)


def _compress(item: Any) -> None:
    """Content of a page, a picture or a font, made smaller once. The renderer would do it twice, the second time for a hash of the
    file, and as hard as it can, which takes twice as long for a hundredth of the size."""
    item.compress = False
    _, _, rest = item.data.partition(b"\nstream\n")
    item.stream = [zlib.compress(rest.removesuffix(b"\nendstream"))]
    item.extra["Filter"] = "/FlateDecode"


def _written_once(made: Any) -> None:
    """Each object's bytes, which the renderer would put together twice, the second time for a hash of the file."""
    from pydyf import Object, Stream

    class Written(Object):  # type: ignore[misc]
        data = b""

    for at, item in enumerate(made.objects):
        if item.free == "n" and not isinstance(item, Stream):
            written = made.objects[at] = Written()
            written.number, written.generation, written.data = item.number, item.generation, item.data


def _at(reference: Any) -> int:
    """Object number of a reference such as b"12 0 R"."""
    return int(reference.split()[0])


def _scope(objects: dict[int, Any]) -> None:
    for item in objects.values():
        if isinstance(item, dict) and item.get("S") == "/TH":
            group = objects[_at(objects[_at(item["P"])]["P"])]
            item["A"]["Scope"] = "/Column" if group.get("S") == "/THead" else "/Row"


def _artifacts(objects: dict[int, Any], made: Any) -> None:
    """Marked content that no element of the tree holds is that of the page margins."""
    root = objects[_at(made.catalog["StructTreeRoot"])]
    held = set(_elements(objects, root))
    tree = objects[_at(root["ParentTree"])]["Nums"]
    for page_number, reference in enumerate(made.page_references):
        owners = tree[tree.index(page_number) + 1]
        loose = {mcid for mcid, owner in enumerate(owners) if _at(owner) not in held}
        content = objects[_at(objects[_at(reference)]["Contents"])].stream
        for at, token in enumerate(content):
            if isinstance(token, dict) and token.get("MCID") in loose:
                content[at - 1] = "/Artifact"
                token.pop("MCID")
                token["Type"] = "/Pagination"
        for mcid in loose:
            owners[mcid] = "null"


def _elements(objects: dict[int, Any], element: Any) -> Iterator[int]:
    """Object numbers of the structure elements below one."""
    for kid in element["K"]:
        if isinstance(kid, (bytes, str)):
            item = objects[_at(kid)]
            if isinstance(item, dict) and "S" in item:
                yield _at(kid)
                yield from _elements(objects, item)
