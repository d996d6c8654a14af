"""More garments drawn at random with what makes each wrong: turned, begun along edges, sideways, in many copies, with bands on
mirror images, shaped inside. The draws of `garments_at_random` are the common ones."""

from __future__ import annotations

from random import Random

from tests.whole import closed_garments_at_random as closed
from tests.whole import inside_garments_at_random as inside
from tests.whole import open_garments_at_random as opens
from tests.whole import other_garments_at_random as others
from tests.whole.garments_at_random import Drawn

KINDS = {
    "set in": closed._set_in,
    "v neck": closed._v_neck,
    "boat neck": closed._boat_neck,
    "purl out": closed._purl_out,
    "collar begun": closed._collar_begun,
    "vented": closed._vented,
    "slit": closed._slit,
    "twin bodies": closed._twin_bodies,
    "turned collar": opens._turned_collar,
    "banded cardigan": opens._banded_cardigan,
    "mirrored bands": opens._mirrored_bands,
    "buttoned": opens._buttoned,
    "hood": opens._hood,
    "centre seam": opens._centre_seam,
    "darts": inside._darts,
    "palm": inside._palm,
    "closing": inside._closing,
    "pleats": inside._pleats,
    "exact": inside._exact,
    "yoke": others._yoke,
    "gusset": others._gusset,
    "dolman": others._dolman,
    "wedges": others._wedges,
    "socks": others._socks,
    "hems": others._hems,
    "banded panels": others._banded_panels,
}


def more(seed: int) -> Drawn:
    """The garment of that number."""
    dice = Random(seed)
    kind = dice.choice(list(KINDS))
    return KINDS[kind](kind, dice).on_its_bed(seed)
