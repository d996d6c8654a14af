"""howto: what hands do, a technique a text, in German.

All of it is common practice where no source is named.
"""

from __future__ import annotations

from walewright.guide.german.howto import colour, edges, finishing, joins, shaping, stages, starts, stitches

HOW_TO = {
    **starts.HOW_TO,
    **shaping.HOW_TO,
    **stitches.HOW_TO,
    **colour.HOW_TO,
    **edges.HOW_TO,
    **stages.HOW_TO,
    **finishing.HOW_TO,
    **joins.HOW_TO,
}
"""By the keys of `figures.hands`."""
