"""Fibres that yarns are spun of, and how what is knitted of them is cared for.

Names as in Annex I of Regulation (EU) No 1007/2011 on textile fibre names, in lower case; `flax` is also what the label of a ball
calls linen, and `nylon` what many call polyamide. How each is cared for is common practice: the label on the ball comes first.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

FibreKind = Literal[
    "wool",
    "alpaca",
    "angora",
    "camel",
    "cashmere",
    "llama",
    "mohair",
    "yak",
    "silk",
    "cotton",
    "flax",
    "hemp",
    "ramie",
    "acrylic",
    "cupro",
    "elastane",
    "lyocell",
    "modal",
    "polyamide",
    "polyester",
    "viscose",
]

FibreCare = Literal["hair", "regenerated", "plastic", "plant"]
"""hair: felts and stretches when wet | regenerated: weak when wet | plastic: heat flattens it for good | plant: may shrink."""

FIBRES: Mapping[FibreKind, FibreCare] = {
    "wool": "hair",
    "alpaca": "hair",
    "angora": "hair",
    "camel": "hair",
    "cashmere": "hair",
    "llama": "hair",
    "mohair": "hair",
    "yak": "hair",
    "silk": "hair",
    "cotton": "plant",
    "flax": "plant",
    "hemp": "plant",
    "ramie": "plant",
    "acrylic": "plastic",
    "cupro": "regenerated",
    "elastane": "plastic",
    "lyocell": "regenerated",
    "modal": "regenerated",
    "polyamide": "plastic",
    "polyester": "plastic",
    "viscose": "regenerated",
}

OTHER_NAMES: Mapping[str, FibreKind] = {"linen": "flax", "nylon": "polyamide"}
"""What labels say as well."""
