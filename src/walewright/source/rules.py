"""What each rule of the grammar makes: one table for all of them.

A rule makes a node (its children fill the node's fields in order), a part (which fills fields of the node it stands in),
a tuple, or an expression. A part may set fields to fixed values: `on waste yarn` is `way="waste"`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field

from walewright.record import record
from walewright.source import syntax

AMOUNT_NAMES_TAKEN = (
    "round",
    "v",
    "square",
    "simple",
    "fashioned",
    "added",
    "knitted",
    "cast",
    "on",
    "between",
    "along",
    "for",
    "in",
)
"""Words that mean something else where an amount can stand, so that no measurement can have them for a name."""

SIZE_NAMES_TAKEN = ("to",)
"""`bust from men bust, to fit` ends so, where a size's own figure could stand."""

EDGING_NAMES_TAKEN = ("chain",)
"""`with chain` is a way to start."""

EDGE_NAMES_TAKEN = ("over", "passes", "never")
"""`lap front over back`, `through neck passes head`: what stands behind the name of a piece there."""


@record
class Makes:
    """What a rule makes: a node of `node`, or a part where that is None."""

    node: type[syntax.Node] | None
    fields: tuple[str, ...] = ()
    fixed: Mapping[str, object] = field(default_factory=dict)
    needs: Mapping[str, tuple[str, str]] = field(default_factory=dict)
    """Fields that a part has to fill: what the author calls it, and the key of the help that shows how it is written."""
    unless: tuple[str, ...] = ()
    """Kinds (the field `kind`) that need nothing of that."""
    places: str = ""
    """A field for where each token of the rule's one tuple stands in the file."""
    many: str = ""
    """A field for all nodes among the children, in order, however many."""
    turned: str = ""
    """A field whose amount is written without a sign and meant the other way round: `left of centre`, `in`."""


_DEPTH = {"depth": ("depth", "add-depth")}
_NECK = {
    "width": ("width", "add-width"),
    "depth": ("depth", "add-neck-depth"),
    "shape": ("shape", "add-shape"),
}
_WAY = {"way": ("way of casting on", "add-start")}
_KIND = {"kind": ("way of holding", "add-holding")}

CELL_KINDS = {
    "hole": "hole",
    "from_left": "from left",
    "from_right": "from right",
    "two_from_left": "two from left",
    "two_from_right": "two from right",
    "three_together": "three",
    "purl": "purl",
    "tuck": "tuck",
    "slip": "slip",
    "long": "long",
    "ladder": "ladder",
}
"""Rules for what a symbol can mean by itself, to the kind of `syntax.ChartKey`."""

RULES: Mapping[str, Makes] = {
    "choice": Makes(syntax.ChoiceLine, ("name", "alternatives"), places="places"),
    "for_choice": Makes(syntax.ForBlock, ("choice", "alternative"), {"body": ()}),
    "use_from": Makes(syntax.UseFrom, ("names", "file")),
    "naming": Makes(syntax.NameLine, ("name",), many="others"),
    "pattern": Makes(syntax.PatternBlock, ("title",), {"body": ()}, many="others"),
    "summary": Makes(syntax.TextLine, ("text",), {"key": "summary"}, many="others"),
    "difficulty": Makes(syntax.TextLine, ("text",), {"key": "difficulty"}, many="others"),
    "story": Makes(syntax.TextLine, ("text",), {"key": "story"}, many="others"),
    "designer": Makes(syntax.TextLine, ("text",), {"key": "designer"}, many="others"),
    "copyright": Makes(syntax.TextLine, ("text",), {"key": "copyright"}, many="others"),
    "edition": Makes(syntax.TextLine, ("text",), {"key": "edition"}, many="others"),
    "date": Makes(syntax.TextLine, ("text",), {"key": "date"}, many="others"),
    "photograph": Makes(syntax.PhotographLine, ("file", "showing"), many="others"),
    "note": Makes(syntax.TextLine, ("text",), {"key": "note"}, many="others"),
    "for_sizes": Makes(None, ("sizes",)),
    "step": Makes(syntax.TextLine, ("text",), {"key": "step"}, many="others"),
    "told_in": Makes(None, (), many="others"),
    "in_language": Makes(syntax.InLanguage, ("language", "text")),
    "sizes": Makes(syntax.Sizes, ("names",), {"body": ()}),
    "size_row": Makes(syntax.SizeRow, ("name", "values"), many="own"),
    "row_unit": Makes(None, ("unit",)),
    "from_table": Makes(None, ("table", "table_row")),
    "own_figure": Makes(syntax.OwnFigure, ("size", "value")),
    "to_fit": Makes(None, (), {"to_fit": True}),
    "about": Makes(None, ("about",), many="others"),
    "let": Makes(syntax.Let, ("name", "value")),
    "machine": Makes(syntax.MachineBlock, ("name",)),
    "machine_fact": Makes(syntax.MachineFact, ("key", "values"), {"values": ()}),
    "plates": Makes(syntax.MachineFact, ("names",), {"key": "plates", "values": ()}),
    "missing": Makes(syntax.MachineFact, ("names",), {"key": "missing", "values": ()}),
    "yarn": Makes(syntax.YarnLine, ("name", "label", "ball_weight", "ball_length")),
    "fabric": Makes(syntax.FabricBlock, ("name",), {"body": ()}),
    "fabric_like": Makes(syntax.FabricBlock, ("name", "like", "yarn"), {"body": ()}),
    "stocking_stitch": Makes(syntax.Stitch, ("yarn", "tension"), {"stitch": "stocking stitch"}),
    "latched_rib": Makes(syntax.Stitch, ("every", "yarn", "tension"), {"stitch": "latched rib"}),
    "swatch": Makes(syntax.Swatch, ("stitches", "rows", "width", "height")),
    "weight": Makes(None, ("weight",)),
    "loop": Makes(None, ("loop",)),
    "by_count": Makes(None, ("count",)),
    "yarn_count": Makes(syntax.YarnCount, ("text", "system")),
    "together": Makes(None, ("strands",)),
    "fibre": Makes(None, ("fibres",)),
    "shown": Makes(None, ("colour",)),
    "charted": Makes(syntax.Stitch, ("chart", "yarn", "tension"), {"stitch": "chart"}),
    "whole_repeats": Makes(None, (), {"fit": "whole"}),
    "centred": Makes(None, (), {"fit": "centred"}),
    "balanced": Makes(None, (), {"fit": "balanced"}),
    "edge_stitches": Makes(None, ("edge",)),
    "striped": Makes(syntax.Stitch, ("stripes", "tension"), {"stitch": "stripes", "yarn": ""}),
    "stripe": Makes(syntax.StripeRows, ("rows", "yarn")),
    "right_side": Makes(syntax.RightSide, ("face",)),
    "chart": Makes(syntax.ChartBlock, ("name",), {"body": ()}),
    "key": Makes(syntax.ChartKey, ("symbol",)),
    "knit_cell": Makes(None, ("yarn",), {"kind": "knit"}),
    **{rule: Makes(None, (), {"kind": kind}) for rule, kind in CELL_KINDS.items()},
    "cross": Makes(None, ("cross", "over", "hung_first"), {"kind": "cross"}),
    "chart_row": Makes(syntax.ChartRow, ("cells",), places="places"),
    "chart_repeat": Makes(syntax.ChartRepeat, ("stitches",)),
    "repeat_after": Makes(None, ("after",)),
    "colours": Makes(syntax.ChartWay),
    "laid_in_blocks": Makes(None, (), {"way": "blocks"}),
    "with_floats": Makes(None, (), {"way": "floats"}),
    "edging": Makes(syntax.EdgingLine, ("name", "fabric"), needs=_DEPTH, unless=("chained",)),
    "folded": Makes(None, (), {"kind": "folded"}),
    "picot": Makes(None, (), {"kind": "picot"}),
    "mock_rib_1": Makes(None, (), {"kind": "mock rib", "mock": 2}),
    "mock_rib_2": Makes(None, (), {"kind": "mock rib", "mock": 3}),
    "rolled": Makes(None, (), {"kind": "rolled"}),
    "facing": Makes(None, (), {"kind": "facing"}),
    "chained": Makes(None, (), {"kind": "chained"}),
    "fold_row": Makes(None, ("fold_tension",)),
    "inside": Makes(None, ("inside_tension",)),
    "added_after": Makes(None, (), {"when": "after"}),
    "knitted_first": Makes(None, (), {"when": "first"}),
    "cast_off_way": Makes(None, ("cast_off",)),
    "piece": Makes(syntax.PieceBlock, ("name", "fabric")),
    "piece_like": Makes(syntax.PieceBlock, ("name", "like")),
    "knitted_in": Makes(None, ("fabric",)),
    "copies": Makes(None, ("copies",)),
    "mirror": Makes(None, ("mirror_of",)),
    "centre_stitch": Makes(None, (), {"parity": "odd"}),
    "odd_or_even": Makes(None, (), {"parity": "either"}),
    "as_hood": Makes(None, (), {"purpose": "hood"}),
    "shape": Makes(syntax.ShapeBlock, ("name", "parameters"), {"parameters": (), "body": ()}),
    "use": Makes(syntax.Use, ("name", "arguments"), {"arguments": ()}),
    "without": Makes(syntax.Without, ("part",)),
    "levels": Makes(syntax.Levels, ("levels",)),
    "level_def": Makes(syntax.LevelDef, ("name", "height", "most")),
    "start": Makes(syntax.Start, ("width", "most"), {"width": None}, needs=_WAY),
    "start_as_wide": Makes(syntax.Start, (), {"width": None}),
    "start_left": Makes(None, ("from_place",), turned="from_place"),
    "start_right": Makes(None, ("from_place",)),
    "start_to_left": Makes(None, ("to_place",), turned="to_place"),
    "start_to_right": Makes(None, ("to_place",)),
    "on_waste": Makes(None, (), {"way": "waste"}),
    "on_waste_by_hand": Makes(None, (), {"way": "hand waste"}),
    "with_e_wrap": Makes(None, (), {"way": "e-wrap"}),
    "with_chain": Makes(None, (), {"way": "chain"}),
    "with_edging": Makes(None, ("edging",)),
    "start_along": Makes(None, ("along",), {"way": "along"}),
    "both_edges": Makes(syntax.EdgeLine, (), {"which": "both"}),
    "left_edge": Makes(syntax.EdgeLine, (), {"which": "left"}),
    "right_edge": Makes(syntax.EdgeLine, (), {"which": "right"}),
    "cast_off_first": Makes(None, ("cast_off",)),
    "straight": Makes(None, ("to_level",), {"path": "straight"}),
    "slope": Makes(None, ("to_level",), {"path": "slope"}),
    "curve": Makes(None, ("to_level",), {"path": "curve"}),
    "arch": Makes(None, ("to_level",), {"path": "arch"}),
    "steps": Makes(None, ("by", "times", "to_level"), {"path": "steps"}),
    "steps_in_turn": Makes(None, ("to_level",), {"path": "steps"}, many="in_turn"),
    "equal_steps": Makes(syntax.EqualSteps, ("by", "times")),
    "rate_in": Makes(None, ("by", "every", "to_level"), {"path": "rate"}, turned="by"),
    "rate_out": Makes(None, ("by", "every", "to_level"), {"path": "rate"}),
    "to_width": Makes(None, ("width", "width_most")),
    "from_centre": Makes(None, ("width", "width_most"), {"beside": "own"}),
    "left_from_centre": Makes(None, ("width", "width_most"), {"beside": "left"}),
    "right_from_centre": Makes(None, ("width", "width_most"), {"beside": "right"}),
    "by": Makes(None, ("by",)),
    "called": Makes(None, ("called",)),
    "simple": Makes(None, (), {"way": "simple"}),
    "fashioned": Makes(None, ("inset",), {"way": "fashioned"}),
    "shaped_inside": Makes(None, (), {"way": "inside"}, many="places"),
    "inside_own": Makes(syntax.InsidePlace, ("distance",), {"of": "own"}),
    "inside_left": Makes(syntax.InsidePlace, ("distance",), {"of": "left"}),
    "inside_right": Makes(syntax.InsidePlace, ("distance",), {"of": "right"}),
    "inside_edge": Makes(syntax.InsidePlace, ("distance",), {"of": "edge"}),
    "two_at_once": Makes(None, (), {"at_once": 2}),
    "begins_moving": Makes(None, (), {"begins_moving": True}),
    "ends_moving": Makes(None, (), {"ends_moving": True}),
    "larger_steps_first": Makes(None, (), {"larger": "first"}),
    "larger_steps_last": Makes(None, (), {"larger": "last"}),
    "across": Makes(syntax.AcrossLine, ("width", "level")),
    "half_gaps": Makes(None, (), {"half_gaps": True}),
    "opening": Makes(syntax.OpeningLine, ("name", "width", "from_level", "to_level"), {"body": ()}),
    "slot": Makes(syntax.SlotLine, ("name", "width", "level")),
    "left_of_centre": Makes(None, ("offset",), turned="offset"),
    "right_of_centre": Makes(None, ("offset",)),
    "taken_off": Makes(None, (), {"taken": "waste"}),
    "closed": Makes(None, (), {"taken": "cast-off"}),
    "buttonholes": Makes(syntax.ButtonholesLine, ("count", "stitches", "from_level", "to_level", "distance", "edge")),
    "wedge": Makes(syntax.WedgeLine, ("width", "from_level", "to_level"), needs=_KIND),
    "at_both_edges": Makes(None, (), {"edge": "both"}),
    "at_one_edge": Makes(None, ("edge",)),
    "held_in": Makes(None, (), {"kind": "in"}),
    "let_out": Makes(None, (), {"kind": "out"}),
    "held_in_and_let_out": Makes(None, (), {"kind": "both"}),
    "larger_last": Makes(None, (), {"larger_last": True}),
    "resting": Makes(None, ("rest",)),
    "zone": Makes(syntax.ZoneLine, ("fabric", "from_level", "to_level")),
    "repeats_wide": Makes(None, ("repeats",)),
    "motif": Makes(syntax.MotifLine, ("chart", "level")),
    "needles_out": Makes(syntax.NeedlesLine, ("from_level", "to_level")),
    "worn_wide": Makes(None, ("worn",)),
    "every_needle": Makes(None, ("every",)),
    "at_places": Makes(None, (), many="places"),
    "repeat": Makes(syntax.RepeatLine, ("times", "from_level", "to_level")),
    "neck": Makes(syntax.Neck, (), needs=_NECK),
    "width": Makes(None, ("width",)),
    "depth": Makes(None, ("depth",)),
    "flat": Makes(None, ("flat",)),
    "round_shape": Makes(None, (), {"shape": "round"}),
    "v_shape": Makes(None, (), {"shape": "v"}),
    "square_shape": Makes(None, (), {"shape": "square"}),
    "shoulders": Makes(syntax.Shoulders, ("from_level",)),
    "left_shoulder": Makes(syntax.Shoulders, ("from_level",), {"edge": "left"}),
    "right_shoulder": Makes(syntax.Shoulders, ("from_level",), {"edge": "right"}),
    "end_on_waste": Makes(syntax.End, (), {"way": "waste"}),
    "end_cast_off": Makes(syntax.End, (), {"way": "cast-off"}),
    "end_sewn": Makes(syntax.End, (), {"way": "sewn-off"}),
    "end_gathered": Makes(syntax.End, (), {"way": "gathered"}),
    "end_with": Makes(syntax.End, ("edging",), {"way": "edging"}),
    "band": Makes(syntax.BandLine, ("name", "edging", "along")),
    "band_buttonholes": Makes(None, ("holes", "hole_stitches", "first", "last")),
    "picked_up": Makes(None, ("picked", "of_rows")),
    "band_buttonholes_along": Makes(None, ("holes", "hole_stitches", "hole_along", "first", "last")),
    "edge_ref": Makes(syntax.EdgeRef, ("piece", "edge")),
    "join": Makes(syntax.JoinLine, ("one", "other")),
    "easing": Makes(None, ("easing",)),
    "longer": Makes(None, ("longer",)),
    "in_ratio": Makes(None, ("of_rows", "to_stitches")),
    "sewn": Makes(None, (), {"way": "sewn"}),
    "grafted": Makes(None, (), {"way": "grafted"}),
    "linked": Makes(None, (), {"way": "linked"}),
    "gathered": Makes(None, (), {"way": "gathered"}),
    "pleated": Makes(None, (), {"way": "pleated"}),
    "matching": Makes(None, (), {"matching": True}),
    "to_the_next": Makes(None, (), {"next_copy": "next"}),
    "all_round": Makes(None, (), {"next_copy": "all round"}),
    "to_its_own": Makes(None, (), {"next_copy": "own"}),
    "right_side_facing": Makes(None, (), {"facing": "right"}),
    "wrong_side_facing": Makes(None, (), {"facing": "wrong"}),
    "free": Makes(syntax.Free, ("edges",)),
    "cord": Makes(syntax.CordLine, ("piece", "length")),
    "needed": Makes(syntax.NeededLine, ("text",), many="others"),
    "needed_amount": Makes(None, ("amount",)),
    "holes_of": Makes(syntax.ForEachButtonhole, ("owners",)),
    "finished": Makes(syntax.FinishedLine, ("name", "amount")),
    "measured_round": Makes(syntax.Round, ("piece", "level")),
    "measured_across": Makes(syntax.Round, ("piece", "level"), {"across": True}),
    "measured_along": Makes(syntax.Along, ("place",)),
    "place": Makes(syntax.PlaceRef, ("owner", "edge")),
    "fits": Makes(None, ("fits",)),
    "wanted_whole": Makes(None, ("wanted",)),
    "stretching": Makes(None, (), {"stretches": True}),
    "through": Makes(syntax.Through, ("place",)),
    "passing": Makes(None, (), {"never": False}),
    "never_passing": Makes(None, (), {"never": True}),
    "body_part": Makes(None, ("part", "figure")),
    "stretched": Makes(None, ("share",)),
    "lap": Makes(syntax.LapLine, ("over", "under")),
    "require": Makes(syntax.Require, ("left", "relation", "right")),
    "because": Makes(None, ("because",), many="others"),
    "making_up": Makes(syntax.MakingUp, (), {"body": ()}),
}

TUPLES = (
    "alternatives",
    "used_names",
    "size_names",
    "values",
    "fact_values",
    "plate_names",
    "needle_names",
    "cells",
    "stripe_list",
    "level_defs",
    "edge_refs",
    "parameters",
    "arguments",
    "argument",
    "fibres",
    "strands",
    "owners",
)
WORDS = {
    "unit": "",
    "stitch_unit": "",
    "side": "",
    "face": "",
    "count_system": "",
    "relation": "",
    "fact_key": " ",
    "needle_name": " ",
}
"""Rules that make a word, and what stands between the tokens it is made of."""
ROUNDINGS = ("round", "round_up", "round_down")
"""Functions that are written `round(a to b)`."""
OPERATIONS = {"add": "+", "subtract": "-", "multiply": "*", "divide": "/"}
