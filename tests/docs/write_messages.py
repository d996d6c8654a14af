"""Writes what the pages of codes show of the compiler: the message of each, its head, and the list of codes.

    python -m tests.docs.write_messages [CODE...]

Without codes, all pages. Read what changed before it is committed: the pages are how messages are seen with their sources.
"""

from __future__ import annotations

import sys

from tests.docs import error_pages


def main() -> None:
    wanted = sys.argv[1:] or error_pages.codes_with_page()
    written = 0
    for code in wanted:
        shown = error_pages.page(code)
        text = error_pages.as_it_should_be(shown)
        if text != shown.text:
            (error_pages.FOLDER / f"{code}.md").write_text(text, encoding="utf-8")
            written += 1
    error_pages.INDEX.write_text(error_pages.index_as_it_should_be(), encoding="utf-8")
    sys.stdout.write(f"{len(wanted)} pages, {written} changed\n")


if __name__ == "__main__":
    main()
