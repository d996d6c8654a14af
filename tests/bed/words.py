"""What the bed refuses, in the words an author reads."""

from __future__ import annotations

from walewright.bed import Fault
from walewright.report.english import ENGLISH
from walewright.report.wording import phrased


def told(fault: Fault) -> str:
    return phrased(fault.told, ENGLISH)
