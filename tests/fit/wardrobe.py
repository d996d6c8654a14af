"""Small garments of two stitches and three rows to a centimetre, so that every figure can be worked out by hand."""

from __future__ import annotations

HEAD = """pattern "Small"
sizes one
    chest 80 cm, to fit
machine standard
    needles 400
yarn wool "wool", 50 g = 200 m
fabric plain
    stocking stitch in wool at tension 7
    swatch 20 stitches by 30 rows = 10 cm by 10 cm
fabric rib
    latched rib every 3rd needle in wool at tension 5
    swatch 20 stitches by 30 rows = 10 cm by 10 cm
edging collar in rib, 2 cm deep, added after, cast off chain
edging welt in rib, 4 cm deep, added after, cast off chain
"""
"""One size. A stitch is 0.5 cm wide; six stitches and nine rows are 3 cm."""

TUBE = """
piece front in plain
    levels hem 0 cm, top 40 cm
    start 41 cm wide with e-wrap
    edges straight to top called side
    end cast off
piece back in plain
    levels hem 0 cm, top 40 cm
    start 41 cm wide with e-wrap
    edges straight to top called side
    end cast off
join back side to front side
"""


def body(name: str, deep: int) -> str:
    """44 cm wide, 30 cm to the underarm, 20 cm of armhole, a neck 20 cm wide."""
    return f"""
piece {name} in plain
    levels hem 0 cm, under 30 cm, top 50 cm
    start 44 cm wide with e-wrap
    edges straight to under called side
    edges straight to top called armhole
    neck 20 cm wide, {deep} cm deep, square
    end on waste yarn
"""


VEST = (
    body("back", 2)
    + body("front", 8)
    + """
band neckband with collar along back neck + front neck
join back shoulder to front shoulder, linked
join back side to front side
"""
)

SLEEVE = """
piece sleeve in plain, knit 2
    levels cuff 0 cm, wide 36 cm, top 40 cm
    start 20 cm wide on waste yarn, with welt
    edges slope to 40 cm wide at wide called seam
    edges straight to top called seam
    end cast off
join sleeve end to back armhole + front armhole, easing 2 cm
join sleeve seam_left to sleeve seam_right
"""

PULLOVER = VEST + SLEEVE

FRONTS = """
piece left_front in plain
    levels hem 0 cm, under 30 cm, throat 42 cm, top 50 cm
    start 21 cm wide with e-wrap
    left edge straight to under called side
    left edge straight to top called armhole
    right edge straight to throat called edge
    right edge slope by -9 cm at top called neckline
    end on waste yarn
piece right_front in plain, mirror of left_front
join back shoulder to right_front end + left_front end, linked
join back side to left_front side
join back side to right_front side
"""

CARDIGAN = (
    body("back", 2)
    + FRONTS
    + """
band buttonhole_band with collar along right_front edge, buttonholes 3 over 1 stitch, 2 cm first, 2 cm last
band button_band with collar along left_front edge
"""
)

CARDIGAN = CARDIGAN.replace(
    "band buttonhole_band",
    "band neckband with collar along right_front neckline + back neck + left_front neckline\nband buttonhole_band",
)


ONE_BAND = (
    body("back", 2)
    + FRONTS
    + """
band border with collar along right_front edge + right_front neckline + back neck + left_front neckline + left_front edge
"""
)
"""A cardigan with one band all round the opening."""


def raglan_body(name: str, deep: int) -> str:
    """40 cm wide; 24 cm of raglan line, up to 20 cm at the neck."""
    neck = f"\n    neck 16 cm wide, {deep} cm deep, square, cast off" if deep else ""
    return f"""
piece {name} in plain
    levels hem 0 cm, under 30 cm, top 54 cm
    start 44 cm wide with e-wrap
    edges straight to under called side
    edges slope to 20 cm wide at top called raglan{neck}
    end cast off
"""


RAGLAN = (
    raglan_body("back", 0)
    + raglan_body("front", 0)
    + """
piece sleeve in plain, knit 2
    levels cuff 0 cm, wide 40 cm, top 64 cm
    start 20 cm wide with e-wrap
    edges slope to 36 cm wide at wide called seam
    edges slope to 6 cm wide at top called raglan
    end cast off
join back raglan to sleeve raglan
join front raglan to sleeve raglan
join back side to front side
join sleeve seam_left to sleeve seam_right
"""
)

DOLMAN = """
piece back in plain
    levels hem 0 cm, under 10 cm, wrist 30 cm, top 50 cm
    start 44 cm wide with e-wrap
    edges straight to under called side
    edges slope to 70 cm wide at wrist called seam
    edges straight to top called opening
    neck 20 cm wide, 2 cm deep, square
    end on waste yarn
piece front in plain
    levels hem 0 cm, under 10 cm, wrist 30 cm, top 50 cm
    start 44 cm wide with e-wrap
    edges straight to under called side
    edges slope to 70 cm wide at wrist called seam
    edges straight to top called opening
    neck 20 cm wide, 6 cm deep, square
    end on waste yarn
band neckband with collar along back neck + front neck
join back shoulder to front shoulder, linked
join back side + back seam to front side + front seam
"""

GORES = """
piece gore in plain, knit 4
    levels base 0 cm, mid 8 cm, top 20 cm
    start 30 cm wide with e-wrap
    left edge straight to top called waist
    right edge straight to top called hem
    end cast off
join gore end to gore start, each to the next all round
"""

HAT = """
piece hat in plain
    levels brim 0 cm, top 20 cm
    start 46 cm wide with e-wrap
    edges straight to top called seam
    end gathered
join hat seam_left to hat seam_right
"""

SOCK_HEAD = HEAD.replace("sizes one\n    chest 80 cm, to fit", "sizes woman_shoe_7\n    foot from foot foot_circumference, to fit")
SOCK = """
piece sock in plain, knit 2
    levels cuff 0 cm, toe 40 cm
    start 19 cm wide on waste yarn, with welt
    edges straight to toe called seam
    end gathered
join sock seam_left to sock seam_right
"""

BAG_HEAD = HEAD.replace("sizes one\n    chest 80 cm, to fit", "sizes 3_months\n    chest from baby chest, to fit")
