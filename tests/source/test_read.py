"""Reading: every statement, blocks, comments and spans."""

from __future__ import annotations

import pytest

from walewright import source
from walewright.source import syntax as s

CM3 = s.Number(3.0, "cm")

GERMAN = s.InLanguage("german", "B")


def statement(kind: str, line: str) -> s.Statement:
    """The one statement that a line of that block reads as."""
    tree, told = source.read("", line if kind == "" else f"{kind}\n    {line}")
    assert told == ()
    if kind == "":
        return tree.statements[0]
    body: tuple[s.Statement, ...] = getattr(tree.statements[0], "body", ())
    return body[0]


@pytest.mark.parametrize(
    ("kind", "line", "node"),
    [
        ("", 'pattern "A \\"b\\" \\\\ c\\nd"', s.PatternBlock('A "b" \\ c\nd', ())),
        ("", "sizes XS 2X 104/110 3-6", s.Sizes(("XS", "2X", "104/110", "3-6"), ())),
        ("", "yarn wool \"w\", 50 g = 82 m", s.YarnLine("wool", "w", s.Number(50, "g"), s.Number(82, "m"))),
        ("", "edging e in rib, cast off chain, added after, 3 cm deep", s.EdgingLine("e", "rib", CM3, "after", "chain")),
        ("", "edging e in rib, 3 cm deep", s.EdgingLine("e", "rib", CM3)),
        (
            "",
            'yarn f "w", 50 g = 82 m, shown "#23395d"',
            s.YarnLine("f", "w", s.Number(50, "g"), s.Number(82, "m"), colour="#23395d"),
        ),
        (
            "",
            'yarn f "w", 500 g of 2/28 Nm, shown "#23395d"',
            s.YarnLine("f", "w", s.Number(500, "g"), count=s.YarnCount("2/28", "Nm"), colour="#23395d"),
        ),
        ("", 'yarn f "w", 50 g of 83.5tex', s.YarnLine("f", "w", s.Number(50, "g"), count=s.YarnCount("83.5", "tex"))),
        ("", 'yarn f "w", 50 g of 20/2 NeK', s.YarnLine("f", "w", s.Number(50, "g"), count=s.YarnCount("20/2", "NeK"))),
        ("", "chart lozenge", s.ChartBlock("lozenge", ())),
        ("chart c", "key X knit", s.ChartKey("X", "knit")),
        ("chart c", "key 3 knit in navy", s.ChartKey("3", "knit", "navy")),
        ("chart c", "key \\ from right", s.ChartKey("\\", "from right")),
        ("chart c", "key / two from left", s.ChartKey("/", "two from left")),
        ("chart c", "key ( three together", s.ChartKey("(", "three")),
        ("chart c", "key k long", s.ChartKey("k", "long")),
        ("chart c", "key C cross 2 over 3, left first", s.ChartKey("C", "cross", None, 2, 3, "left")),
        ("chart c", "key D cross 1 over 1, right first", s.ChartKey("D", "cross", None, 1, 1, "right")),
        ("chart c", "| . . O / . |", s.ChartRow((".", ".", "O", "/", "."))),
        ("chart c", "|..O /.|", s.ChartRow((".", ".", "O", "/", "."))),
        ("chart c", "|12 in\\k(,=|", s.ChartRow(tuple("12in\\k(,="))),
        ("chart c", "repeat 6 stitches", s.ChartRepeat(6)),
        ("chart c", "repeat 1 stitch, after 2 sts", s.ChartRepeat(1, 2)),
        ("chart c", "colours laid in blocks", s.ChartWay("blocks")),
        ("chart c", "colours with floats", s.ChartWay("floats")),
        ("fabric f", "chart c in wool at tension 5.", s.Stitch("chart", "wool", "5.", chart="c")),
        (
            "fabric f",
            "chart c in wool at tension 5, 2 edge stitches, centred",
            s.Stitch("chart", "wool", "5", chart="c", fit="centred", edge=2),
        ),
        (
            "fabric f",
            "chart c in wool at tension 5, whole repeats, 1 edge stitch",
            s.Stitch("chart", "wool", "5", chart="c", fit="whole", edge=1),
        ),
        ("fabric f", "chart c in wool at tension 5, balanced", s.Stitch("chart", "wool", "5", chart="c", fit="balanced")),
        (
            "fabric f",
            "stripes of 4 rows wool, 1 row at, 2 rows to at tension 5",
            s.Stitch("stripes", "", "5", stripes=(s.StripeRows(4, "wool"), s.StripeRows(1, "at"), s.StripeRows(2, "to"))),
        ),
        ("fabric f", "right side purl", s.RightSide("purl")),
        ("fabric f", "right side knit", s.RightSide("knit")),
        ("fabric f", "swatch 3 cm by 3 cm = 3 cm by 3 cm, 3 cm", s.Swatch(CM3, CM3, CM3, CM3, CM3)),
        ("fabric f", "swatch 3 cm by 3 cm = 3 cm by 3 cm, 3 cm to a stitch", s.Swatch(CM3, CM3, CM3, CM3, loop=CM3)),
        (
            "fabric f",
            "swatch 3 cm by 3 cm = 3 cm by 3 cm, 14 mm to a stitch, 62 g",
            s.Swatch(CM3, CM3, CM3, CM3, s.Number(62, "g"), s.Number(14, "mm")),
        ),
        (
            "",
            "edging e in f, folded, 3 cm deep, inside at tension 3, fold row at tension 8., knitted first",
            s.EdgingLine("e", "f", CM3, "first", kind="folded", fold_tension="8.", inside_tension="3"),
        ),
        ("", "edging e in f, 3 cm deep, picot", s.EdgingLine("e", "f", CM3, kind="picot")),
        ("", "edging e in f, 3 cm deep, mock rib 1 by 1", s.EdgingLine("e", "f", CM3, kind="mock rib", mock=2)),
        ("", "edging e in f, 3 cm deep, mock rib 2 by 1", s.EdgingLine("e", "f", CM3, kind="mock rib", mock=3)),
        ("", "edging e in f, rolled, 3 cm deep", s.EdgingLine("e", "f", CM3, kind="rolled")),
        ("", "edging e in f, facing, facing deep", s.EdgingLine("e", "f", s.Name("facing"), kind="facing")),
        ("", "edging e in f, chained", s.EdgingLine("e", "f", kind="chained")),
        ("", "edging e in f, 3 cm deep, cast off sewn", s.EdgingLine("e", "f", CM3, cast_off="sewn")),
        ("piece a in b", "start 3 cm wide on waste yarn by hand, with welt", s.Start(CM3, "hand waste", "welt")),
        ("piece a in b", "motif anchor at yoke", s.MotifLine("anchor", "yoke")),
        ("piece a in b", "motif anchor at yoke, 3 cm left of centre", s.MotifLine("anchor", "yoke", s.Negative(CM3))),
        ("piece a in b", "motif anchor at yoke, 3 cm right of centre", s.MotifLine("anchor", "yoke", CM3)),
        (
            "piece a in b",
            "fabric rib from waist to hip, 3 repeats wide, 3 cm right of centre",
            s.ZoneLine("rib", "waist", "hip", None, CM3, 3),
        ),
        ("piece a in b", "fabric rib from waist to hip, 1 repeat wide", s.ZoneLine("rib", "waist", "hip", repeats=1)),
        ("piece a in b", "end cast off sewn", s.End("sewn-off")),
        (
            "",
            "join a side to b side, matching, linked",
            s.JoinLine((s.EdgeRef("a", "side"),), (s.EdgeRef("b", "side"),), way="linked", matching=True),
        ),
        ("", "piece a in b, mirror of c, knit 2", s.PieceBlock("a", "b", 2, "c")),
        ("", "piece a like b", s.PieceBlock("a", "", like="b")),
        ("", "piece a like b, in c, knit 2", s.PieceBlock("a", "c", 2, like="b")),
        ("", "band a with b along c neck + d neck", s.BandLine("a", "b", (s.EdgeRef("c", "neck"), s.EdgeRef("d", "neck")))),
        (
            "",
            "join a end to b x + c y, easing 3 cm",
            s.JoinLine((s.EdgeRef("a", "end"),), (s.EdgeRef("b", "x"), s.EdgeRef("c", "y")), CM3),
        ),
        ("", 'require a <= b because "so"', s.Require(s.Name("a"), "<=", s.Name("b"), "so")),
        ("", 'note "n"', s.TextLine("note", "n")),
        ("", 'note "n", in german "B"', s.TextLine("note", "n", (GERMAN,))),
        ("", 'note "n", for S 2X, in german "B"', s.TextLine("note", "n", (GERMAN,), ("S", "2X"))),
        ("pattern \"x\"", 'designer "d"', s.TextLine("designer", "d")),
        ("pattern \"x\"", 'photograph "a/b.jpg", showing "A hat"', s.PhotographLine("a/b.jpg", "A hat")),
        ("", 'needed "a zip", along front edge', s.NeededLine("a zip", s.Along(s.PlaceRef("front", "edge")))),
        ("", 'needed "buttons", 6, in german "B"', s.NeededLine("buttons", s.Number(6), (GERMAN,))),
        ("", 'needed "buttons", for each buttonhole of a + b', s.NeededLine("buttons", s.ForEachButtonhole(("a", "b")))),
        ("", 'yarn m "both", a + b together', s.YarnLine("m", "both", strands=("a", "b"))),
        ("", 'pattern "A", in german "B", in welsh "C"', s.PatternBlock("A", (), (GERMAN, s.InLanguage("welsh", "C")))),
        ("sizes S M", "length 54 56.5 cm, to fit", s.SizeRow("length", (54.0, 56.5), "cm", to_fit=True)),
        ("sizes S M", "length 54 56 cm to fit", s.SizeRow("length", (54.0, 56.0), "cm", to_fit=True)),
        ("sizes S M", "ease -2 0", s.SizeRow("ease", (-2.0, 0.0))),
        ("sizes S M", "bust from women bust", s.SizeRow("bust", table="women", table_row="bust")),
        (
            "sizes S 3X",
            "bust from men bust, 3X 142 cm, S 36 in, to fit",
            s.SizeRow(
                "bust",
                table="men",
                table_row="bust",
                to_fit=True,
                own=(s.OwnFigure("3X", s.Number(142, "cm")), s.OwnFigure("S", s.Number(36, "in"))),
            ),
        ),
        ("machine mine", "waste rows 8", s.MachineFact("waste rows", (s.Number(8),))),
        ("machine mine", "prongs 1 2 3", s.MachineFact("prongs", (s.Number(1), s.Number(2), s.Number(3)))),
        ("fabric f", "stocking stitch in wool at tension 4.", s.Stitch("stocking stitch", "wool", "4.")),
        ("fabric f", "latched rib every 3rd needle in wool at tension 4", s.Stitch("latched rib", "wool", "4", 3)),
        ("piece a in b", "levels hem 0 cm, top 3cm", s.Levels((s.LevelDef("hem", s.Number(0, "cm")), s.LevelDef("top", CM3)))),
        ("piece a in b", "start 3 cm wide on waste yarn, with welt", s.Start(CM3, "waste", "welt")),
        ("piece a in b", "start 3 cm wide with welt, on waste yarn", s.Start(CM3, "waste", "welt")),
        ("piece a in b", "start 3 cm wide with e-wrap", s.Start(CM3, "e-wrap")),
        ("piece a in b", "start 3 cm wide with chain, with welt", s.Start(CM3, "chain", "welt")),
        (
            "piece a in b",
            "start a left to 3 cm right of centre with e-wrap",
            s.Start(None, "e-wrap", from_place=s.Negative(s.Name("a")), to_place=CM3),
        ),
        (
            "piece a in b",
            "left edge curve to 3 cm from centre at top",
            s.EdgeLine("left", "curve", "top", CM3, beside="own"),
        ),
        (
            "piece a in b",
            "right edge slope to between 3 cm and a left of centre at top",
            s.EdgeLine("right", "slope", "top", CM3, width_most=s.Name("a"), beside="left"),
        ),
        (
            "piece a in b",
            "edges slope to 3 cm wide at top, shaped a from centre and 3 cm from edge",
            s.EdgeLine(
                "both",
                "slope",
                "top",
                CM3,
                way="inside",
                places=(s.InsidePlace(s.Name("a"), "own"), s.InsidePlace(CM3, "edge")),
            ),
        ),
        (
            "piece a in b",
            "left edge slope by 3 cm at top, shaped 3 cm left of centre",
            s.EdgeLine("left", "slope", "top", by=CM3, way="inside", places=(s.InsidePlace(CM3, "left"),)),
        ),
        ("piece a in b", "needles out every 12th from a to b", s.NeedlesLine("a", "b", 12)),
        ("piece a in b", "needles out every 12th from a to b, worn 3 cm wide", s.NeedlesLine("a", "b", 12, worn=CM3)),
        ("piece a in b", "needles out every 3rd needle from a to b", s.NeedlesLine("a", "b", 3)),
        (
            "piece a in b",
            "needles out at 3 cm from centre and 3 cm from the edge from a to b",
            s.NeedlesLine("a", "b", places=(s.InsidePlace(CM3, "own"), s.InsidePlace(CM3, "edge"))),
        ),
        ("piece a in b", "use lean at the left edge, by 3 cm", s.Use("lean", (("by", CM3),), "left")),
        ("piece a in b", "edges straight to top called side", s.EdgeLine("both", "straight", "top", called="side")),
        (
            "piece a in b",
            "edges slope to 3 cm wide at top, called x, fashioned 2 in",
            s.EdgeLine("both", "slope", "top", CM3, called="x", way="fashioned", inset=2),
        ),
        (
            "piece a in b",
            "edges slope to 3 in wide at top, fashioned 2 in called x",
            s.EdgeLine("both", "slope", "top", s.Number(3, "in"), called="x", way="fashioned", inset=2),
        ),
        (
            "piece a in b",
            "edges cast off 3 cm then curve to 3 cm wide at top, simple",
            s.EdgeLine("both", "curve", "top", CM3, cast_off=CM3, way="simple"),
        ),
        ("piece a in b", "edges steps 3 cm 2 times to top", s.EdgeLine("both", "steps", "top", by=CM3, times=2)),
        ("piece a in b", "left edge slope by -3 cm at top", s.EdgeLine("left", "slope", "top", by=s.Negative(CM3))),
        ("piece a in b", "right edge curve by 3 cm at top", s.EdgeLine("right", "curve", "top", by=CM3)),
        ("piece a in b", "neck neck wide, 3 cm deep, round", s.Neck(s.Name("neck"), CM3, "round")),
        (
            "piece a in b",
            "neck square, fashioned 3 in, 3 cm flat, 3 cm deep, a wide",
            s.Neck(s.Name("a"), CM3, "square", CM3, "fashioned", 3),
        ),
        ("piece a in b", "neck 3 cm wide, round(a to 3 cm) deep, v", s.Neck(CM3, s.Call("round", (s.Name("a"), CM3)), "v")),
        ("piece a in b", "shoulders held from tip", s.Shoulders("tip")),
        ("piece a in b", "end on waste yarn", s.End("waste")),
        ("piece a in b", "end cast off", s.End("cast-off")),
        ("making up", 'step "Sew."', s.TextLine("step", "Sew.")),
        (
            "piece a in b",
            "levels hem 0 cm, top between 3 cm and a + 3 cm",
            s.Levels(
                (
                    s.LevelDef("hem", s.Number(0, "cm")),
                    s.LevelDef("top", CM3, s.Binary("+", s.Name("a"), CM3)),
                )
            ),
        ),
        ("piece a in b", "start between 3 cm and a wide with e-wrap", s.Start(CM3, "e-wrap", most=s.Name("a"))),
        (
            "piece a in b",
            "start 3 cm wide along m slot + m palm, with welt",
            s.Start(CM3, "along", "welt", (s.EdgeRef("m", "slot"), s.EdgeRef("m", "palm"))),
        ),
        ("piece a in b", "edges arch to 3 cm wide at top", s.EdgeLine("both", "arch", "top", CM3)),
        (
            "piece a in b",
            "edges slope to between 3 cm and a wide at top, fashioned 3 in, two at once",
            s.EdgeLine("both", "slope", "top", CM3, way="fashioned", inset=3, width_most=s.Name("a"), at_once=2),
        ),
        (
            "piece a in b",
            "edges slope to 3 cm wide at top, beginning with a move, ending with a move",
            s.EdgeLine("both", "slope", "top", CM3, begins_moving=True, ends_moving=True),
        ),
        (
            "piece a in b",
            "neck 3 cm wide, 3 cm deep, v, ending with a move",
            s.Neck(CM3, CM3, "v", ends_moving=True),
        ),
        (
            "piece a in b",
            "edges steps 3 cm 4 times to top, larger steps first",
            s.EdgeLine("both", "steps", "top", by=CM3, times=4, larger="first"),
        ),
        (
            "piece a in b",
            "left edge steps -3 cm then a, n times then 3 cm 2 times to top called e",
            s.EdgeLine(
                "left",
                "steps",
                "top",
                called="e",
                in_turn=(s.EqualSteps(s.Negative(CM3)), s.EqualSteps(s.Name("a"), s.Name("n")), s.EqualSteps(CM3, 2)),
            ),
        ),
        (
            "piece a in b",
            "edges in 1 stitch every 2 rows to tip",
            s.EdgeLine("both", "rate", "tip", by=s.Negative(s.Number(1, "stitch")), every=2),
        ),
        (
            "piece a in b",
            "left edge out 2 sts every 1 row to tip, simple",
            s.EdgeLine("left", "rate", "tip", by=s.Number(2, "sts"), every=1, way="simple"),
        ),
        (
            "piece a in b",
            "edges cast off 3 cm then in 1 st every 2 rows to tip",
            s.EdgeLine("both", "rate", "tip", by=s.Negative(s.Number(1, "st")), cast_off=CM3, every=2),
        ),
        ("piece a in b", "across to 3 cm wide at yoke", s.AcrossLine(CM3, "yoke")),
        ("piece a in b", "opening neck 3 cm wide from slit to top", s.OpeningLine("neck", CM3, "slit", "top")),
        (
            "piece a in b",
            "opening n 3 cm wide from a to b, cast off, a + 3 cm left of centre",
            s.OpeningLine("n", CM3, "a", "b", s.Negative(s.Binary("+", s.Name("a"), CM3)), "cast-off"),
        ),
        (
            "piece a in b",
            "slot thumb 3 cm wide at palm, 3 cm right of centre, on waste yarn",
            s.SlotLine("thumb", CM3, "palm", CM3),
        ),
        ("piece a in b", "slot pocket 3 cm wide at palm, cast off", s.SlotLine("pocket", CM3, "palm", taken="cast-off")),
        (
            "piece a in b",
            "buttonholes 6 over 2 stitches from hem to neck, 3 cm from the right edge",
            s.ButtonholesLine(6, 2, "hem", "neck", "right", CM3),
        ),
        (
            "piece a in b",
            "buttonholes 6 over 1 stitch from hem to neck, 3 cm from left edge",
            s.ButtonholesLine(6, 1, "hem", "neck", "left", CM3),
        ),
        ("piece a in b", "wedge 3 cm wide at both edges from a to b, held in", s.WedgeLine(CM3, "both", "a", "b", "in")),
        (
            "piece a in b",
            "wedge 3 cm wide at the left edge from a to b, let out, resting 3 cm",
            s.WedgeLine(CM3, "left", "a", "b", "out", CM3),
        ),
        (
            "piece a in b",
            "wedge 3 cm wide at right edge from a to b, resting 3 cm, held in and let out",
            s.WedgeLine(CM3, "right", "a", "b", "both", CM3),
        ),
        ("piece a in b", "fabric rib from waist to hip", s.ZoneLine("rib", "waist", "hip")),
        (
            "piece a in b",
            "fabric cable from hem to top, 3 cm wide, 3 cm left of centre",
            s.ZoneLine("cable", "hem", "top", CM3, s.Negative(CM3)),
        ),
        ("piece a like b", "without neck", s.Without("neck")),
        ("piece a in b", "repeat 8 times from base to gore", s.RepeatLine(8, "base", "gore")),
        (
            "piece a in b",
            "use set_in, chest chest, tip top, across 3 cm, drop -3 cm",
            s.Use(
                "set_in",
                (("chest", s.Name("chest")), ("tip", s.Name("top")), ("across", CM3), ("drop", s.Negative(CM3))),
            ),
        ),
        ("shape s(a, b)", "use other", s.Use("other", ())),
        ("shape s(a, b)", "let c = a", s.Let("c", s.Name("a"))),
        ("shape s(a, b)", "edges straight to a called b", s.EdgeLine("both", "straight", "a", called="b")),
        ("", "shape set_in(armhole, chest)", s.ShapeBlock("set_in", ("armhole", "chest"), ())),
        ("", "shape plain_neck", s.ShapeBlock("plain_neck", (), ())),
        ("piece a in b", "neck 3 cm wide, 3 cm deep, v, cast off", s.Neck(CM3, CM3, "v", taken="cast-off")),
        ("piece a in b", "end gathered", s.End("gathered")),
        ("piece a in b", "end with welt", s.End("edging", "welt")),
        ("", "edging e in rib, 3 cm deep, knitted first", s.EdgingLine("e", "rib", CM3, "first")),
        ("", "piece a in b, odd or even", s.PieceBlock("a", "b", parity="either")),
        (
            "",
            "piece a in b, knit 2, centre stitch, as hood",
            s.PieceBlock("a", "b", 2, parity="odd", purpose="hood"),
        ),
        (
            "",
            "band a with b along c neck, buttonholes 6 over 2 stitches, 3 cm first, a last",
            s.BandLine("a", "b", (s.EdgeRef("c", "neck"),), 6, 2, CM3, s.Name("a")),
        ),
        (
            "",
            "join a end to b x, longer by 3 cm, easing a, gathered",
            s.JoinLine((s.EdgeRef("a", "end"),), (s.EdgeRef("b", "x"),), s.Name("a"), CM3, "gathered"),
        ),
        ("", "join a start to a end, grafted", s.JoinLine((s.EdgeRef("a", "start"),), (s.EdgeRef("a", "end"),), way="grafted")),
        ("", "join a end to b end, linked", s.JoinLine((s.EdgeRef("a", "end"),), (s.EdgeRef("b", "end"),), way="linked")),
        ("", "piece a in b, knit gores", s.PieceBlock("a", "b", s.Name("gores"))),
        ("", "piece a like b, knit gores, centre stitch", s.PieceBlock("a", copies=s.Name("gores"), parity="odd", like="b")),
        ("", "cord hood 3 cm long", s.CordLine("hood", CM3)),
        ("", "finished chest a, fits b", s.FinishedLine("chest", s.Name("a"), s.Name("b"))),
        ("", "finished waist round back waist, stretches", s.FinishedLine("waist", s.Round("back", "waist"), stretches=True)),
        (
            "",
            "finished waist round back waist, wanted a + 3 cm, fits b",
            s.FinishedLine("waist", s.Round("back", "waist"), s.Name("b"), wanted=s.Binary("+", s.Name("a"), CM3)),
        ),
        ("", "finished width across strip top", s.FinishedLine("width", s.Round("strip", "top", across=True))),
        ("", "finished width across, fits b", s.FinishedLine("width", s.Name("across"), s.Name("b"))),
        ("", "require across strip top >= 3 cm", s.Require(s.Round("strip", "top", across=True), ">=", CM3)),
        ("", "finished collar along neckband", s.FinishedLine("collar", s.Along(s.PlaceRef("neckband")))),
        ("", "require along back armhole >= 3 cm", s.Require(s.Along(s.PlaceRef("back", "armhole")), ">=", CM3)),
        ("", "through neckband passes head", s.Through(s.PlaceRef("neckband"), "head")),
        (
            "",
            "through sleeve start never passes hand of a, stretches to 150 %",
            s.Through(s.PlaceRef("sleeve", "start"), "hand", True, s.Name("a"), s.Number(150.0, "%")),
        ),
        ("", "lap a over b", s.LapLine(s.PlaceRef("a"), s.PlaceRef("b"))),
        ("", "lap a edge over b edge, 3 cm wide", s.LapLine(s.PlaceRef("a", "edge"), s.PlaceRef("b", "edge"), CM3)),
    ],
)  # fmt: skip
def test_a_statement(kind: str, line: str, node: s.Statement) -> None:
    assert statement(kind, line) == node


A, B, C = s.Name("a"), s.Name("b"), s.Name("c")


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("12", s.Number(12)),
        ("12cm", s.Number(12, "cm")),
        ("2.5 %", s.Number(2.5, "%")),
        ("3 in", s.Number(3, "in")),
        ("inch", s.Name("inch")),
        ("round_up(a to b)", s.Call("round_up", (A, B))),
        ("round_down(a to b + c)", s.Call("round_down", (A, s.Binary("+", B, C)))),
        ("a + b * c", s.Binary("+", A, s.Binary("*", B, C))),
        ("(a + b) * c", s.Binary("*", s.Binary("+", A, B), C)),
        ("a - b - c", s.Binary("-", s.Binary("-", A, B), C)),
        ("a - (b - c)", s.Binary("-", A, s.Binary("-", B, C))),
        ("-a * b", s.Binary("*", s.Negative(A), B)),
        ("-(a * b)", s.Negative(s.Binary("*", A, B))),
        ("min(a, b, c)", s.Call("min", (A, B, C))),
        ("stitches(a + b of rib in plain)", s.Regauged("stitches", s.Binary("+", A, B), "rib", "plain")),
        (
            "2 * stitches(3 in of rib in plain)",
            s.Binary("*", s.Number(2), s.Regauged("stitches", s.Number(3, "in"), "rib", "plain")),
        ),
        ("round(a / b to c)", s.Call("round", (s.Binary("/", A, B), C))),
    ],
)
def test_an_expression(text: str, value: s.Expr) -> None:
    assert statement("", f"let x = {text}") == s.Let("x", value)


def test_blocks_and_comments() -> None:
    text = "# first\n\nfabric f # beside\n\n  # inside\n  swatch 1 st by 2 rows = 3 cm by 3 cm\n  # end of block\n# last\n"
    tree, told = source.read("f.wale", text)
    assert told == ()
    assert tree.statements == (s.FabricBlock("f", (s.Swatch(s.Number(1, "st"), s.Number(2, "rows"), CM3, CM3),)),)
    assert tree.comments == (
        s.Comment("first", 0, True, 0),
        s.Comment("beside", 0, False, 0),
        s.Comment("inside", 1, True, 1),
        s.Comment("end of block", 2, True, 1),
        s.Comment("last", 2, True, 0),
    )


NESTED = """piece a in b
  # before the opening
  opening n 3 cm wide from slit to top
      # of its edges
# indented less than the line that it is before
      left edge straight to top  # beside
      # still of its edges
    # indented less than they
  # of the piece
  end cast off
  opening m 3 cm wide from slit to top
      # alone in the block
# at the margin
"""


def test_a_block_within_a_block() -> None:
    tree, told = source.read("", NESTED)
    assert told == ()
    edge = s.EdgeLine("left", "straight", "top")
    opening = s.OpeningLine("n", CM3, "slit", "top", body=(edge,))
    assert tree.statements == (s.PieceBlock("a", "b", body=(opening, s.End("cast-off"), s.OpeningLine("m", CM3, "slit", "top"))),)
    assert [(c.text, c.before, c.own_line, c.indent) for c in tree.comments] == [
        ("before the opening", 1, True, 1),
        ("of its edges", 2, True, 2),
        ("indented less than the line that it is before", 2, True, 2),
        ("beside", 2, False, 2),
        ("still of its edges", 3, True, 2),
        ("indented less than they", 3, True, 1),
        ("of the piece", 3, True, 1),
        ("alone in the block", 5, True, 2),
        ("at the margin", 5, True, 0),
    ]


@pytest.mark.parametrize("ending", ["\n", "\r\n"])
def test_spans_are_places_in_the_file(ending: str) -> None:
    text = ending.join(("\ufeff# Maße", "piece ärmel in plain  # und", "    levels hem 0 cm, top (a + b) * 2", ""))
    tree, told = source.read("f.wale", text)
    assert told == ()
    piece = tree.statements[0]
    assert isinstance(piece, s.PieceBlock)
    levels = piece.body[0]
    assert isinstance(levels, s.Levels)
    height = levels.levels[1].height
    assert isinstance(height, s.Binary)

    def at(node: s.Node) -> str:
        assert node.span.file == "f.wale"
        return text[node.span.start : node.span.end]

    assert at(piece) == "piece ärmel in plain"
    assert at(levels) == "levels hem 0 cm, top (a + b) * 2"
    assert at(levels.levels[0]) == "hem 0 cm"
    assert at(levels.levels[0].height) == "0 cm"
    assert at(height) == "(a + b) * 2"
    assert at(height.left) == "a + b"
    assert at(height.right) == "2"


def test_a_byte_order_mark_is_no_part_of_the_first_line() -> None:
    text = "\ufeff    let a = 1"
    (fault,) = source.read("", text)[1]
    assert (fault.code, fault.labels[0].span.end) == ("wrong-indent", text.index("let"))
    assert source.read("", "\ufefflet a = 1")[0].statements[0].span.start == 1


def test_spans_do_not_count_for_equality() -> None:
    assert source.read("", "let a = 1")[0] == source.read("", "\n\nlet  a  =  1")[0]


@pytest.mark.parametrize(
    ("header", "opens"),
    [("piece back in", True), ("piece back plain in", True), ("piece", True), ("edging x", False), ("nothing at all", False)],
)
def test_a_comment_below_a_header_that_does_not_read_stands_in_its_block(header: str, opens: bool) -> None:
    tree, told = source.read("x.wale", f'pattern "x"\n{header}\n    # within\n')
    assert [d.code for d in told] == ["unreadable-line"]
    assert [(c.text, c.before, c.indent) for c in tree.comments] == [("within", 2, int(opens))]
