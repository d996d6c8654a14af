"""What day it is, or is to be."""

from __future__ import annotations

import datetime
import os
from collections.abc import Mapping

from walewright.report.model import Diagnostic, diagnosed

VARIABLE = "SOURCE_DATE_EPOCH"
LAST_SECOND = 253_402_300_799
"""The end of the year 9999, the last that a calendar date here can have."""


def today(environment: Mapping[str, str] = os.environ) -> tuple[datetime.date | None, Diagnostic | None]:
    """Today, or the day (UTC) of SOURCE_DATE_EPOCH where that is set and not empty, so that a build can be repeated byte for
    byte; or what is wrong with that variable.

    Its specification (reproducible-builds.org/specs/source-date-epoch, 1.1) wants an integer in ASCII, and a build that stops
    when it is malformed.
    """
    given = environment.get(VARIABLE, "")
    if not given:
        return datetime.date.today(), None
    digits = given.removeprefix("-")
    if not (digits.isascii() and digits.isdigit()):
        return None, _refused(given, "no-number")
    if given.startswith("-") and digits.strip("0"):
        return None, _refused(given, "before-1970")
    # Compared by length first: Python reads no number of more than some thousand digits.
    digits = digits.lstrip("0") or "0"
    if len(digits) > len(str(LAST_SECOND)) or int(digits) > LAST_SECOND:
        return None, _refused(given, "after-9999")
    return datetime.datetime.fromtimestamp(int(digits), tz=datetime.UTC).date(), None


def _refused(given: str, case: str) -> Diagnostic:
    shown = given if len(given) <= 40 else f"{given[:40]}…"
    return diagnosed(f"bad-date/{case}", notes=("sets-the-date",), helps=("set-or-unset",), variable=VARIABLE, text=repr(shown))
