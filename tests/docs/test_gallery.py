"""The gallery shows every shipped garment as it is now."""

from __future__ import annotations

from xml.etree import ElementTree

import pytest

from tests.docs import gallery
from tests.whole.shipped_once import GARMENTS, compiled


@pytest.mark.parametrize("name", GARMENTS)
def test_a_picture_is_that_of_the_source(name: str) -> None:
    kept = (gallery.PICTURES / f"{name}.svg").read_text(encoding="utf-8")
    assert kept == gallery.picture(compiled(name))
    root = ElementTree.fromstring(kept)
    assert root.tag.endswith("svg")
    assert "var(" not in kept


def test_the_page_has_each_garment_once() -> None:
    assert gallery.PAGE.read_text(encoding="utf-8") == gallery.page()
    assert {p.stem for p in gallery.PICTURES.glob("*.svg")} == set(GARMENTS)
