"""The mended examples on the pages of codes have nothing to be said about."""

from __future__ import annotations

import pytest

from tests.design.test_error_pages import WITH_EXAMPLE, changes, understood
from tests.docs import error_pages
from walewright.design import Changes, Shipped


@pytest.mark.parametrize("code", WITH_EXAMPLE)
def test_the_mended_example_is_sound(code: str, shipped: Shipped) -> None:
    page = error_pages.page(code)
    text = page.mended.source if page.mended else page.source
    sound, told = understood(text, shipped, changes(page.commands[1]) if page.commands else Changes())
    assert told == ()
    assert sound
