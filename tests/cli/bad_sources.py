"""Sources with one mistake each: a sound one, and what is changed in it."""

from __future__ import annotations

from dataclasses import dataclass

SOUND = """\
pattern "Slack Water"
    summary "A straight sleeveless top."

sizes       S  M
    chest  84 92 cm
    length 50 52 cm

let half = chest / 2 + 2 cm
let body = length - 5 cm

machine bulky

yarn wool "chunky wool", 100 g = 120 m

fabric plain
    stocking stitch in wool at tension 4
    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g

fabric rib
    latched rib every 3rd needle in wool at tension 2
    swatch 40 stitches by 60 rows = 28.6 cm by 29.4 cm, 56 g

edging welt in rib, 5 cm deep, added after, cast off chain

piece back in plain
    levels hem 0 cm, underarm body - 20 cm, tip body - 2 cm, top body
    start half wide on waste yarn, with welt
    edges straight to underarm called side
    edges straight to tip
    neck 20 cm wide, 2.5 cm deep, round, 14 cm flat, cast off
    shoulders held from tip
    end on waste yarn

piece front in plain
    levels hem 0 cm, underarm body - 20 cm, tip body - 2 cm, top body
    start half wide on waste yarn, with welt
    edges straight to underarm called side
    edges straight to tip
    neck 20 cm wide, 8 cm deep, round, cast off
    shoulders held from tip
    end on waste yarn

join back shoulder to front shoulder
join back side to front side
"""


@dataclass(frozen=True, slots=True)
class Bad:
    """`old` in the sound source becomes `new`. The first message must have `code`, and point at `at`, which begins in the
    line holding `line`."""

    name: str
    old: str
    new: str
    code: str
    at: str
    line: str

    @property
    def text(self) -> str:
        assert SOUND.count(self.old) >= 1, self.name
        return SOUND.replace(self.old, self.new, 1)


BAD = (
    Bad("wrong unit of a row", "length 50 52 cm", "length 50 52 g", "wrong-unit", "length 50 52 g", "length 50 52 g"),
    Bad("unknown unit", "+ 2 cm", "+ 2 ells", "unreadable-line", "ells", "let half"),
    Bad("mixed units", "+ 2 cm", "+ 2 rows", "mixed-units", "chest / 2", "let half"),
    Bad("no unit", "20 cm wide, 2.5", "20 wide, 2.5", "no-unit", "20", "neck 20 wide"),
    Bad("ragged table", "length 50 52 cm", "length 50 cm", "ragged-row", "length 50 cm", "length 50 cm"),
    Bad("unknown name", "chest / 2", "cheest / 2", "unknown-name", "cheest", "let half"),
    Bad("repeated name", "let body", "let half = 30 cm\nlet body", "repeated-name", "let half = 30 cm", "let half = 30 cm"),
    Bad("cyclic let", "length - 5 cm", "body - 5 cm", "cyclic-let", "let body", "let body"),
    Bad("negative length", "underarm body - 20 cm", "underarm 20 cm - body", "levels-fall", "underarm", "levels"),
    Bad("negative measurement", "length 50 52 cm", "length -50 52 cm", "negative-measurement", "length -50 52 cm", "length -50"),
    Bad("absurd number", "length 50 52 cm", "length 50 52 m", "absurd-measurement", "length 50 52 m", "length 50 52 m"),
    Bad("swatch of zero", "40 stitches by 60 rows = 30.8 cm", "40 stitches by 60 rows = 0 cm", "not-positive", "0 cm", "swatch"),
    Bad(
        "shaping too fast",
        "underarm body - 20 cm, tip body - 2 cm, top body\n    start half wide on waste yarn, with welt\n"
        "    edges straight to underarm called side\n    edges straight to tip\n",
        "underarm body - 20 cm, bust body - 17 cm, tip body - 2 cm, top body\n    start half wide on waste yarn, with welt\n"
        "    edges straight to underarm called side\n    edges slope to half + 24 cm wide at bust\n"
        "    edges slope to half wide at tip\n",
        "slope-too-flat",
        "edges slope",
        "edges slope",
    ),
    Bad("tab", "    summary", "\tsummary", "tab-indent", "\t", "summary"),
    Bad("unknown machine", "machine bulky", "machine bulk", "unknown-name", "machine bulk", "machine bulk"),
    Bad("unknown table", "chest  84 92 cm", "chest from wimmen bust", "unknown-table", "chest from wimmen bust", "chest"),
    Bad("neck wider than the piece", "neck 20 cm wide, 2.5", "neck 60 cm wide, 2.5", "neck-too-wide", "neck 60 cm", "neck 60 cm"),
    Bad("wider than the bed", "start half wide", "start 2 * half wide", "wider-than-bed", "piece back", "piece back"),
    Bad(
        "join that does not meet",
        "underarm body - 20 cm, tip body - 2 cm, top body\n    start half wide on waste yarn, with welt\n"
        "    edges straight to underarm called side\n    edges straight to tip\n    neck 20 cm wide, 8 cm",
        "underarm body - 10 cm, tip body - 2 cm, top body\n    start half wide on waste yarn, with welt\n"
        "    edges straight to underarm called side\n    edges straight to tip\n    neck 20 cm wide, 8 cm",
        "join-does-not-meet",
        "join back side to front side",
        "join back side",
    ),
    Bad(
        "require fails", "join back side", "require half >= 60 cm\njoin back side", "require-fails", "require half", "require half"
    ),
    Bad(
        "missing swatch",
        "    swatch 40 stitches by 60 rows = 30.8 cm by 32.4 cm, 62 g\n",
        "",
        "missing-part",
        "fabric plain",
        "fabric plain",
    ),
    Bad("no such edge", "join back side to", "join back slide to", "no-such-edge", "back slide", "join back slide"),
    Bad(
        "no tool",
        "straight to underarm called side",
        "slope by 2 cm at underarm, fashioned 4 in called side",
        "no-such-tool",
        "edges slope",
        "fashioned 4 in",
    ),
    Bad(
        "neck too deep", "neck 20 cm wide, 2.5 cm deep", "neck 20 cm wide, 60 cm deep", "neck-too-deep", "neck 20 cm", "neck 20 cm"
    ),
    Bad("division by zero", "chest / 2", "chest / 0", "division-by-zero", "0", "let half"),
    Bad("unreadable line", "end on waste yarn", "end up on waste yarn", "unreadable-line", "up", "end up"),
)
