"""How far a page printer in another process has come, told through a pipe."""

from __future__ import annotations

import logging
import re
from collections import OrderedDict
from collections.abc import Iterator
from contextlib import contextmanager
from multiprocessing.connection import Connection

LOGGER = "weasyprint.progress"
"""The page printer tells there which page it sets."""
PAGE = re.compile(r"Page (\d+)$")
TICKET = re.compile(r"[0-9a-f]{16}")
"""By which a page asks for the progress of its own printing."""
MOST_TICKETS = 200


class PageTeller(logging.Handler):
    """In the other process: each page that is begun, with the ticket of who asked. A message is short enough to be written in one
    go, so that many processes can share the pipe, and one that is ended in the middle blocks nobody."""

    def __init__(self, pipe: Connection) -> None:
        super().__init__(logging.INFO)
        self.pipe, self.ticket = pipe, ""

    def emit(self, record: logging.LogRecord) -> None:
        """One line of the printer's."""
        found = PAGE.search(record.getMessage())
        if found is not None and self.ticket:
            self.pipe.send_bytes(f"{self.ticket} {found[1]}".encode())


def listening(pipe: Connection) -> None:
    """From now on this process tells through the pipe."""
    logger = logging.getLogger(LOGGER)
    logger.addHandler(PageTeller(pipe))
    logger.setLevel(logging.INFO)
    logger.propagate = False


@contextmanager
def told_to(ticket: str) -> Iterator[None]:
    """What is printed within is told under that ticket."""
    tellers = [one for one in logging.getLogger(LOGGER).handlers if isinstance(one, PageTeller)]
    for one in tellers:
        one.ticket = ticket
    try:
        yield
    finally:
        for one in tellers:
            one.ticket = ""


class PageProgress:
    """In the serving process: the page that each printing is at, of the latest tickets."""

    def __init__(self) -> None:
        self._pages: OrderedDict[str, int] = OrderedDict()

    def page(self, ticket: str) -> int:
        """0 before the first."""
        return self._pages.get(ticket, 0)

    def heard(self, pipe: Connection) -> None:
        """Take in what has been told."""
        while pipe.poll():
            ticket, _, page = pipe.recv_bytes(200).decode("ascii", "replace").partition(" ")
            if TICKET.fullmatch(ticket) and page.isdecimal():
                self._pages[ticket] = int(page)
                self._pages.move_to_end(ticket)
                while len(self._pages) > MOST_TICKETS:
                    self._pages.popitem(last=False)
