"""The list of contents on the first page, and what is left out for those who have the pattern only on paper."""

from __future__ import annotations

import re

import pytest

from tests.browser_pages import built

HEADING = re.compile(r'<section [^>]*id="([^"]+)"[^>]*>(?:(?!<section).)*?<h2>(.*?)</h2>', re.DOTALL)
LISTED = re.compile(r'<li><a href="#([^"]+)">(.*?)</a></li>')


@pytest.mark.parametrize("name", ["tidewrack", "bollard", "hawser"])
def test_the_contents_are_the_headings_in_their_words_and_order(name: str) -> None:
    page = built(name)
    listed = page.partition('<div class="contents')[2].partition("</div>")[0]
    headings = HEADING.findall(page)
    assert len(headings) == page.count("<h2>")
    assert LISTED.findall(listed) == headings
    assert ("by-hand", "Work by hand") in LISTED.findall(listed)


@pytest.mark.parametrize("name", ["tidewrack", "bollard", "hawser"])
def test_what_can_be_regraded_is_said_without_a_command_line(name: str) -> None:
    told = re.sub("<[^>]*>", " ", built(name).partition('id="regrade"')[2].partition('id="checked"')[0])
    assert "worked out anew for your own figures" in told
    assert "to 10 cm" in told
    assert "--" not in told
    assert "walewright" not in told
