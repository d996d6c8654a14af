"""What is needed, from the source to the page, the text and the plan; yarns that are held together."""

from __future__ import annotations

from walewright import pipeline
from walewright.cli.formats.format import Pattern
from walewright.cli.formats.text import text as text_of
from walewright.cli.sources import shipped
from walewright.design import Changes
from walewright.guide import english
from walewright.plan import plan_json

SOURCE = """\
pattern "Buttoned"
    designer "The Windrow Workshop"
    copyright "2026, The Windrow Workshop"
    edition "Second edition"
    date "November 2026"

sizes S M
    length 30 34 cm
    buttons 3 4

machine standard
yarn fine "lace wool", 50 g = 400 m
yarn silk "silk singles", 25 g = 210 m
yarn marl "lace wool and silk", fine + silk together
fabric plain
    stocking stitch in marl at tension 5
    swatch 30 stitches by 40 rows = 10 cm by 10 cm
edging strip in plain, 3 cm deep, added after, cast off chain

piece front in plain, knit 2
    levels hem 0 cm, top length
    start 20 cm wide with e-wrap
    left edge straight to top called edge
    right edge straight to top called other
    end cast off
band front_band with strip along front edge, buttonholes buttons over 2 stitches, 2 cm first, 2 cm last
free front other

needed "buttons, 15 mm", for each buttonhole of front_band
needed "ribbon", along front other
needed "hooks and eyes", buttons - 3
needed "press stud"
needed "elastic, 2 cm wide", length * 0.5
"""


def pattern(units: str = "cm", changes: Changes | None = None) -> Pattern:
    outcome = pipeline.compile(SOURCE, "buttoned.wale", shipped(), changes or Changes())
    assert outcome.proven, outcome.diagnostics
    return Pattern(outcome, english.LANGUAGE, "a4", units, "0", "2026-11-29")  # type: ignore[arg-type]


def test_also_needed_by_size() -> None:
    made = pattern()
    assert made.outcome.counts is not None
    lengths = [g.piece("front").counter(g.piece("front").rows) / 4 for g in made.outcome.counts.sizes]
    ribbon = " ".join(f"{x:g}" if i == 0 else f"({x:g})" for i, x in enumerate(lengths))
    # Two fronts: the band is knitted twice.
    wanted = (
        "6 (8) buttons, 15 mm", f"Ribbon: {ribbon} cm", "\N{EN DASH} (1) hooks and eyes", "Press stud",
        "Elastic, 2 cm wide: 15 (17) cm",
    )  # fmt: skip
    assert made.sheet.tools[: len(wanted)] == wanted
    copy = text_of(made)
    assert all(line[:1].lower() + line[1:] in copy for line in wanted)


def test_in_inches_and_for_one_size() -> None:
    made = pattern("in", Changes(sizes=("M",)))
    assert made.sheet.tools[0] == "8 buttons, 15 mm"
    assert made.sheet.tools[4].startswith("Elastic, 2 cm wide: 6")
    assert made.sheet.tools[4].endswith(" in")


def test_the_plan_has_what_is_needed() -> None:
    plan = plan_json(pattern().outcome)
    needed = plan["needed"]
    assert needed[0] == {"what": "buttons, 15 mm", "count": {"S": 6, "M": 8}}
    assert needed[3] == {"what": "press stud"}
    assert needed[4] == {"what": "elastic, 2 cm wide", "cm": {"S": 15, "M": 17}}
    assert next(y for y in plan["yarns"] if y["name"] == "marl")["strands"] == ["fine", "silk"]


def test_both_yarns_are_bought_and_the_one_name_is_explained() -> None:
    made = pattern()
    uses = [u for u in plan_json(made.outcome)["sizes"][0]["yarn"] if u["kind"] == "yarn"]
    assert [u["yarn"] for u in uses] == ["fine", "silk"]
    assert abs(uses[0]["metres"] - uses[1]["metres"]) < 0.01
    assert made.sheet.materials_notes[0] == "Marl: lace wool and silk singles held together."
    assert [g.title.split(":")[0].split(",")[0] for g in made.sheet.materials.groups[:2]] == ["Lace wool", "Silk singles"]
    assert "marl: lace wool and silk singles held together" in text_of(made).lower()


def test_whose_pattern_it_is_is_on_the_cover() -> None:
    made = pattern()
    credits = ("Design: The Windrow Workshop", "Second edition", "November 2026", "\N{COPYRIGHT SIGN} 2026, The Windrow Workshop")
    assert made.sheet.credits == credits
    assert '<meta name="author" content="The Windrow Workshop" />' in made.page
    assert all(f"<li>{line}</li>" in made.page for line in credits)
    assert all(f"\n{line}\n" in text_of(made) for line in credits)
