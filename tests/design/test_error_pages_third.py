"""The third third of the pages of codes: their wrong examples do what they say."""

from __future__ import annotations

import pytest

from tests.design.test_error_pages import WITH_EXAMPLE, causes_it_alone
from walewright.design import Shipped


@pytest.mark.parametrize("code", WITH_EXAMPLE[2::3])
def test_the_wrong_example_causes_this_message_alone(code: str, shipped: Shipped) -> None:
    causes_it_alone(code, shipped)
