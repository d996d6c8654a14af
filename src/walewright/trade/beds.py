"""What beds differ in beside needles and pitch: how the tension is set, how knitting begins, how the carriage crosses without
knitting, and which tools lie beside it."""

from __future__ import annotations

from typing import Literal

BedStart = Literal["comb", "hem", "by hand"]
"""What the waste yarn of an open start is cast on with: comb: over the teeth of a comb | hem: a knitted strip is hung on the
needles, and a row of ravel cord parts the two again | by hand: wound round the needles."""

EmptyCrossing = Literal["", "slip", "lift", "hold", "none"]
"""How the carriage is taken past needles in work: slip: set so that it slips them | lift: taken off and put on at the other side |
hold: past needles that are all right out | none: not at all. Empty where the bed's owner has not said."""

HandTool = Literal["latch tool", "edge weights"]
"""Tools that a bed's owner may lack."""
