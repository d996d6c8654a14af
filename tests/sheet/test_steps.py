"""The steps on the page: figures in one line, tables of rows, techniques explained where they are used."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import Any

import pytest

from tests.figures import gallery
from tests.whole.shipped_once import compiled
from walewright.cli.formats.format import Pattern
from walewright.cli.options import Wanted
from walewright.design import model as d
from walewright.figures.hands import TECHNIQUES
from walewright.guide.english import LANGUAGE
from walewright.guide.numbers import figure, unmarked
from walewright.knit.steps import HoldAtEnd, Repeat, ReturnHeld, StepBlock
from walewright.sheet import html
from walewright.sheet.facts import section_facts
from walewright.sheet.handwork import handwork
from walewright.sheet.images import images
from walewright.sheet.parts import FEW_LINES, _stages
from walewright.sheet.unbroken import longest, stretches
from walewright.write.model import Cells, Manner, Paragraph, Run, Section, Sentence
from walewright.write.tally import RowTally, counted

Make = Callable[..., Any]


def sentence(text: str, row: str = "", cells: Cells | None = None, kinds: tuple[str, ...] = ()) -> Sentence:
    return Sentence((Run(text),), (0, 1), row, "", "by hand", False, kinds, cells)


def with_paragraph(made: Any, *paragraphs: Paragraph) -> Any:
    section = replace(made.instructions.sections[0], paragraphs=paragraphs)
    return replace(made, instructions=replace(made.instructions, sections=(section,)))


def test_a_graded_figure_is_one_stretch_with_its_brackets_needle_and_stop() -> None:
    left, right, row = figure(["L 26", "L 30", "L 33"]), figure(["R 26", "R 30", "R 33"]), figure(["8", "9", "10"], "RC ")
    text, figures = unmarked(f"Bring needles {left.marked} to {right.marked}, then {row.marked}. Done (neck centre).")
    assert text == "Bring needles L 26 (L 30: L 33) to R 26 (R 30: R 33), then RC 8 (9: 10). Done (neck centre)."
    kept = [t for t, kind in stretches(text, figures) if kind]
    assert kept == ["L 26 (L 30: L 33)", "R 26 (R 30: R 33),", "RC 8 (9: 10)."]
    assert "".join(t for t, _ in stretches(text, figures)) == text
    assert longest(figures) == len("R 26 (R 30: R 33),")
    assert unmarked("none (here), " + figure(["4", "4", "4"]).marked) == ("none (here), 4", ())


def test_a_long_figure_is_set_smaller_rather_than_broken() -> None:
    for last, kind in ((113, "long"), (121, "longer")):
        text, figures = unmarked(figure([str(n) for n in range(100, last)]).marked)
        assert stretches(text, figures) == ((text, kind),)


def test_every_graded_figure_of_a_page_is_kept_whole(pattern: Make) -> None:
    page = html(pattern(8).sheet())
    body = re.sub(r"<(svg|style|title)\b.*?</\1>", "", page, flags=re.S)
    body = re.sub(r'<p class="example">.*?</p>', "", body)
    kept = re.sub(r'<span class="(whole|long|longer)">.*?</span>', "", body)
    assert len(kept) < len(body)
    assert re.findall(r"\d+ \(\d+: [^)]*\)", re.sub(r"<[^>]+>", "", kept)) == []


def test_a_counter_of_many_sizes_stands_beneath_its_line_unless_the_line_says_it(pattern: Make) -> None:
    long = "88 (90: 92: 94: 96: 98: 100: 102)"
    lines = (sentence("Decrease.", long), replace(sentence(f"Knit to RC {long}.", long), row_said=True), sentence("Knit.", "12"))
    part = with_paragraph(pattern(2), Paragraph("", "", lines)).sheet().parts[0]
    assert [(x.row, x.below) for x in part.stages[0].lines] == [("", f"RC {long}"), ("", ""), ("", "RC 12")]
    assert not part.counted


def test_a_counter_that_the_line_does_not_say_stands_beneath_it_in_two_columns(pattern: Make) -> None:
    lines = (sentence("Decrease.", "88"), replace(sentence("Knit to RC 90.", "90"), row_said=True))
    part = with_paragraph(pattern(1), Paragraph("", "", lines)).sheet().parts[0]
    assert [(x.row, x.below) for x in part.stages[0].lines] == [("", "RC 88"), ("", "")]


def row(at: str, what: str, stitches: str, number: int = 1) -> Sentence:
    cells = Cells((Run(at, "number"),), (Run(what),), (Run(stitches, "number"),))
    return replace(sentence(f"RC {at}: {what}; {stitches}.", cells=cells), numbers=(number,))


def test_a_table_of_rows(pattern: Make) -> None:
    note = sentence("Armhole and neck are shaped at the same time.")
    table = Paragraph(
        "Shape", "", (note, row("34 (36)", "Decrease 1", "80 (84) sts", 11), row("36 (38)", "Cast off 3", "77 (81) sts", 12)), True
    )
    after = Paragraph("Finish", "", (sentence("Cast off."),))
    made = with_paragraph(pattern(2), table, after)
    first, second = made.sheet().parts[0].stages
    assert [len(first.lines), len(first.rows), len(second.lines), len(second.rows)] == [1, 2, 1, 0]
    page = html(made.sheet())
    (rows,) = re.findall(r'<table class="steps rows boxes-\d">.*?</table>', page, flags=re.S)
    cells = [re.sub(r"<[^>]+>", "", c).strip() for c in re.findall(r"<t[hd][^>]*>(.*?)</t[hd]>", rows, flags=re.S)]
    assert cells == [
        "No.",
        "Done",
        "RC",
        "At this row",
        "Stitches",
        "11",
        "□",
        "34 (36)",
        "Decrease 1",
        "80 (84) sts",
        "12",
        "□",
        "36 (38)",
        "Cast off 3",
        "77 (81) sts",
    ]
    # Tables are closed again: what comes after has one of its own.
    assert page.count("<table") == page.count("</table>")
    assert page.index("at the same time") < page.index("At this row") < page.index("Cast off.")


def test_a_table_whose_figures_are_too_long_is_set_as_sentences(pattern: Make) -> None:
    figure = "34 (36: 38: 40: 42: 44: 46: 48)"
    table = Paragraph("Shape", "", (row(figure, "Decrease 1", "80 sts"),), True)
    (stage,) = with_paragraph(pattern(2), table).sheet().parts[0].stages
    assert stage.rows == ()
    assert "".join(p.text for p in stage.lines[0].pieces) == f"RC {figure}: Decrease 1; 80 sts."


def test_a_reference_is_a_link_to_the_section(pattern: Make) -> None:
    runs = (Run("As the "), Run("left front", "section"), Run(", steps 1 to 6."))
    line = replace(sentence(""), runs=runs, numbers=(4, 9), refers="left_front", kinds=("Again", "CarriageAt"))
    made = with_paragraph(pattern(2), Paragraph("Knit", "", (replace(sentence("Knit."), numbers=(3,)), line)))
    sheet = made.sheet()
    assert [(x.number, x.refers) for x in sheet.parts[0].stages[0].lines] == [("3", ""), ("4\N{EN DASH}9", "part-left_front")]
    assert '<p>As the <a href="#part-left_front">left front</a>, steps 1 to 6.</p>' in html(sheet)
    assert any("As the back" in told for told in sheet.reading.lines)
    assert not any("As the back" in told for told in pattern(2).sheet().reading.lines)


@pytest.mark.parametrize(("kind", "what"), [("Again", "as step"), ("Mirrored", "as step"), ("Repeat", "round")])
def test_boxes_below_a_line_say_what_their_numbers_are_of(pattern: Make, kind: str, what: str) -> None:
    line = replace(sentence("As before.", kinds=(kind,)), numbers=(24, 26), ticks=(12, 13, 14))
    page = html(with_paragraph(pattern(2), Paragraph("Knit", "", (line,))).sheet())
    ((told, numbers),) = re.findall(r'<p class="ticks">([^<]*)(<span>.*?)</p>', page)
    assert told.strip() == what
    assert re.findall(r"\d+", numbers) == ["12", "13", "14"]


TOLD = {
    "SpreadEvenly": "Hanging stitches back evenly",
    "ReturnSome": "Returning needles in steps",
    "CloseCentre": "Closing stitches without yarn",
    "SlotClosed": "Closing stitches without yarn",
    "SlotOnWaste": "A slot on waste yarn",
    "CastOnBetween": "E-wrap with a length of its own",
    "EyeletAt": "Eyelet and lace",
    "SewOffAll": "Back-stitch cast-off",
    "PicotRow": "Picot hem",
    "EveryOutOfWork 2": "Mock rib 1 by 1",
    "EveryOutOfWork 3": "Mock rib 2 by 1",
    "Decrease 2": "A decrease at the edge",
    "Decrease 1 in": "A decrease some stitches in",
    "Decrease 2 in": "Two decreased at once, some stitches in",
    "HangToLink": "Linking on the bed",
    "GatherAll": "Drawing up",
    "CastOnAtCarriage": "Casting on beside the work",
}


def closed(made: Any) -> Any:
    """Without loops on waste yarn, which no seam holds: they want grafting or linking, and boxes of these."""
    pieces = tuple(replace(p, end_way="cast-off") for p in made.design.pieces)
    return replace(made, design=replace(made.design, pieces=pieces))


@pytest.mark.parametrize(("kind", "title"), TOLD.items())
def test_a_technique_is_told_where_a_step_needs_it(pattern: Make, kind: str, title: str) -> None:
    made = closed(pattern(2))
    without = [a.title for a in handwork(LANGUAGE, made.design, made.instructions)]
    assert title not in without
    needing = with_paragraph(made, Paragraph("", "", (sentence("Do it.", kinds=("Repeat", kind)),)))
    assert title in [a.title for a in handwork(LANGUAGE, needing.design, needing.instructions)]


def test_every_step_that_hands_carry_out_is_told_or_needs_no_telling() -> None:
    import walewright.knit.steps as st

    # Of some the numbers are told with them.
    told = {kind.split(" ")[0] for t in TECHNIQUES for kind in t.when if kind[0].isupper()}
    # A chart is told by its symbols, a fold by its edging, a closed start by its way.
    plain = {
        "StartChart", "StopChart", "StopChartOn", "StopStripes", "FoldUp", "ClosedStart", "Together", "Track",
        "UseLooser", "NeedlesToWork", "CarriageAt", "UseYarnStep", "SetRowCounter", "KnitRows", "KnitTo",
        "Repeat", "Now", "NowInHalf",
        "BreakOff", "EdgeIs", "GapIs", "JoinEdges", "SeamOf", "EdgeInSeam", "Say",
    }  # fmt: skip
    classes = {name for name, of in vars(st).items() if isinstance(of, type) and issubclass(of, st.Step)} - {"Step"}
    assert told <= classes
    assert classes - told == plain


@pytest.mark.parametrize(
    ("way", "title"), [("grafted", "Grafting"), ("linked", "Linking on the bed"), ("gathered", "Sewing a gathered edge")]
)
def test_joins_are_told(pattern: Make, way: str, title: str) -> None:
    made = closed(pattern(2))
    assert title not in [a.title for a in handwork(LANGUAGE, made.design, made.instructions)]
    joins = (replace(made.design.joins[0], way=way), *made.design.joins[1:])
    if way == "linked":
        # A link is a section of its own, in which the stitches are hung.
        made = with_paragraph(made, Paragraph("", "", (sentence("Hang.", kinds=("HangToLink",)),)))
    assert title in [a.title for a in handwork(LANGUAGE, replace(made.design, joins=joins), made.instructions)]


SEAMS = [
    ("back side", "front side", "cast-off", {"Sewing row to row"}),
    ("sleeve end", "back armhole", "cast-off", {"Sewing stitches to rows"}),
    ("sleeve end", "back armhole", "waste", {"Sewing stitches to rows"}),
    ("back shoulder", "front shoulder left", "cast-off", {"Sewing stitch to stitch"}),
    ("back shoulder", "front shoulder", "waste", {"Grafting", "Linking on the bed"}),
    ("back start", "front side", "cast-off", {"Sewing stitches to rows"}),
]


@pytest.mark.parametrize(("one", "other", "end_way", "titles"), SEAMS)
def test_a_seam_s_box_goes_by_what_lies_against_what(pattern: Make, one: str, other: str, end_way: str, titles: set[str]) -> None:
    made = pattern(2)
    sides = [(d.EdgeName(*edge.split(" ", 1)),) for edge in (one, other)]
    pieces = tuple(replace(p, end_way=end_way) for p in made.design.pieces)
    design = replace(made.design, pieces=pieces, joins=(replace(made.design.joins[0], one=sides[0], other=sides[1]),))
    told = {a.title for a in handwork(LANGUAGE, design, made.instructions)}
    seams = {LANGUAGE.how_to[t.key].title for t in TECHNIQUES if any(w.startswith("join ") for w in t.when)}
    assert told & seams == titles


def test_facts_tell_what_the_drawing_marks() -> None:
    def facts(name: str, image_of: str = "") -> dict[str, str]:
        made = getattr(gallery, name)()
        section = Section(made.name, made.name, (1,), ())
        return {f.label: f.text for f in section_facts(LANGUAGE, made.design(), made.counts(), section, image_of=image_of)}

    front = facts("front")
    assert front["Buttonholes"].startswith("5 of 2 stitches, needles R 17 to R 18, at RC 6; 20; 34; 48; 62; closed")
    assert facts("mirror", "front_right")["Mirror image"].startswith("of the front right")
    assert front["Short rows"] == "14 stitches at the left edge held step by step from the edge, 4 rows from RC 96"
    vest = facts("vest")
    assert vest["Thumb"] == "8 stitches, needles R 9 to R 16, at RC 52; left on waste yarn"
    assert vest["Pocket"].endswith("from RC 20 to 40")
    assert vest["Moss"].endswith("RC 0 to 64, needles L 22 to L 9")
    skirt = facts("skirt")
    assert skirt["Repeated"] == "48 rows, 8 times in all"
    # Rows above a repeat are told as the counter shows them.
    assert facts("thumb")["Begun on"] == "hand thumb, then hand thumb (cast-on edge)"
    assert facts("tail")["End"] == "all stitches drawn up on the tail"


def test_cautions_only_for_children(pattern: Make) -> None:
    made = pattern(2)
    assert made.sheet().children is None
    assert "If a child wears it" not in html(made.sheet())
    young = replace(made.design, for_children=True)
    words = html(replace(made, design=young).sheet())
    for told in ("16 CFR 1501", "loose threads", "Rules differ from place to place"):
        assert told in words
    for of_cords in ("This garment has a cord", "EN 14682", "7.6 cm"):
        assert of_cords not in words
    corded = replace(young, cords=(d.Cord("front", (50.0, 50.0), d.Origin("by hand")),))
    words = html(replace(made, design=corded).sheet())
    for of_cords in ("This garment has a cord", "EN 14682", "7.6 cm"):
        assert of_cords in words
    hooded = replace(young, pieces=(replace(young.pieces[0], purpose="hood"), *young.pieces[1:]))
    words = html(replace(made, design=hooded).sheet())
    assert "This garment has a hood" in words
    assert ("EN 14682" in words, "7.6 cm" in words) == (True, False)


def test_cautions_come_before_the_first_piece(pattern: Make) -> None:
    made = pattern(2)
    page = html(replace(made, design=replace(made.design, for_children=True)).sheet())
    first = made.sheet().parts[0].anchor
    places = [page.index(f'id="{anchor}"') for anchor in ("trouble", "safety", first, "regrade", "checked")]
    assert places == sorted(places)
    assert page.index("If a child wears it") < page.index(f'id="{first}"')
    contents = [anchor for anchor, _ in made.sheet().contents]
    assert contents.index("safety") < contents.index(first)


@pytest.mark.parametrize("name", ["ebb", "kittiwake", "turnstone"])
def test_rows_of_holding_begin_where_the_steps_hold(name: str) -> None:
    """What beside the drawing is said of short rows that one edge has is where the plan holds first at that edge, and after so
    many rows they return."""
    made = compiled(name)
    assert made.design is not None
    assert made.counts is not None
    assert made.instructions is not None
    seen = 0
    for section in made.instructions.sections:
        facts = [
            f.text
            for f in section_facts(LANGUAGE, made.design, made.counts, section)
            if re.search("edge held (step by step|at once)", f.text)
        ]
        block = next((b for b in made.plans[0].blocks if b.name == section.name), None)
        for text in facts:
            side, rows, counter = re.search(r"at the (left|right) edge.*, (\d+) rows from RC (\d+)", text).groups()  # type: ignore[union-attr]
            assert block is not None
            assert (side, int(counter), int(rows)) in set(_held(block))
            seen += 1
    assert seen


def _held(block: StepBlock) -> Iterator[tuple[str, int, int]]:
    """(side, counter, rows) of each stretch in which needles are held at one side, by the single steps of the plan."""
    tally, since = RowTally(), dict[str, int]()
    todo = [step for _, steps in block.paragraphs for step in steps][::-1]
    while todo:
        step = todo.pop()
        if isinstance(step, Repeat):
            todo += step.body[::-1] * step.times
            continue
        if isinstance(step, HoldAtEnd):
            since.setdefault(step.side, tally.row or 0)
        if isinstance(step, ReturnHeld) and step.side in since:
            begin = since.pop(step.side)
            yield step.side, begin, (tally.row or 0) - begin
        tally = counted(tally, step)


def test_every_row_with_eyelets_is_named() -> None:
    """A size that has fewer than another has a dash."""
    made = compiled("turnstone")
    assert made.design is not None
    assert made.counts is not None
    assert made.instructions is not None
    (section,) = [s for s in made.instructions.sections if s.name == "right_front"]
    (told,) = [f.text for f in section_facts(LANGUAGE, made.design, made.counts, section) if f.label == "Eyelets"]
    count, *rows = told.replace(", at RC", ";").split("; ")
    by_size = list(zip(*(re.findall(r"[\d–]+", row) * (1 if "(" in row else 6) for row in rows), strict=True))
    assert re.findall(r"\d+", count) == [str(sum(row != "–" for row in of)) for of in by_size]


def test_a_note_stands_above_the_head_of_the_table_that_it_begins(pattern: Make) -> None:
    made = pattern(1)
    note = replace(sentence("Note: two things at once."), manner=Manner.NOTE, check=True)
    cells = Cells((Run("34"),), (Run("Cast off"),), (Run("20 sts"),), carriage=(Run("COL"),))
    rows = Paragraph("At the same time", "", (note, sentence("RC 34: cast off; 20 sts.", cells=cells)), True)
    steps = Paragraph("Knit", "", (note, sentence("Knit.")))
    for paragraphs, named in (
        ((rows,), "Carriage"),
        ((steps,), "Step"),
        ((replace(steps, sentences=steps.sentences[1:]), rows), "RC"),
    ):
        page = html(with_paragraph(made, *paragraphs).sheet())
        body = page[page.index('<table class="steps') - 400 :]
        above, _, table = body.partition("two things at once")
        assert above.rindex('<div class="above">') > above.rfind("<table")
        assert named in table[: table.index("</thead>")]
    assert ">COL</td>" in html(with_paragraph(made, rows).sheet())


@pytest.mark.parametrize(("piece", "own"), [("samphire right_lining", False), ("dotterel left_mitt", True)])
def test_a_mirror_image_tells_of_steps_of_its_own_where_it_has_any(piece: str, own: bool) -> None:
    """The right lining says of all its steps that they are the left one's."""
    name, _, piece = piece.partition(" ")
    made = compiled(name)
    assert made.design is not None
    assert made.counts is not None
    assert made.instructions is not None
    section = next(s for s in made.instructions.sections if s.name == piece)
    of = images(made.design.pieces, made.instructions.sections)[piece]
    found = section_facts(LANGUAGE, made.design, made.counts, section, image_of=of)
    (told,) = [f.text for f in found if f.label == "Mirror image"]
    assert ("its own steps below" in told) is own


def test_a_mirror_image_tells_so_after_what_it_is_the_image_of() -> None:
    """The right collar is the left one's image, and is knitted first: it has the drawing, whichever the source describes."""
    shipped = Pattern(compiled("peatbank"), Wanted({}, (), language="english").guide, "a4", "cm", "", "2026-01-02")
    parts = {part.anchor: part for part in shipped.sheet.parts}
    first, then = (parts[f"part-{side}_collar"] for side in ("right", "left"))
    assert list(parts).index("part-right_collar") < list(parts).index("part-left_collar")
    assert first.drawing is not None
    assert then.drawing is None
    assert not [f for f in (*first.facts, *first.details) if f.label == "Mirror image"]
    (told,) = [f.text for f in (*then.facts, *then.details) if f.label == "Mirror image"]
    assert told.startswith("of the right collar: its drawing and measurements hold")


def test_few_lines_of_some_sizes_name_them_and_stand_with_the_others() -> None:
    """No head is for a line or two, and none says that all sizes go on; many lines of some sizes have one head."""

    def line(*sizes: int) -> Sentence:
        return Sentence((Run(f"For {sizes}."),), sizes, "", "", "", False, ("KnitRows",), numbers=(1,))

    def stages(few: int) -> list[tuple[str, str, list[str]]]:
        section = Section(
            "back",
            "Back",
            (1, 1),
            (
                Paragraph("Knit", "", (line(0, 1),)),
                Paragraph("", "M only", (line(1),) * few),
                Paragraph("All sizes", "", (line(0, 1),), resumes=True),
                Paragraph("Shape neck", "S only", (line(0),)),
            ),
        )
        return [(s.title, s.only, [told.sizes for told in s.lines]) for s in _stages(LANGUAGE, section, ("S", "M"), False)]

    assert stages(2) == [("Knit", "", ["", "M", "M", ""]), ("Shape neck", "", ["S"])]
    assert stages(FEW_LINES + 1) == [
        ("Knit", "", [""]),
        ("", "M only", [""] * (FEW_LINES + 1)),
        ("All sizes", "", [""]),
        ("Shape neck", "", ["S"]),
    ]
