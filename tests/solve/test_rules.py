"""The rules of `docs/solver.md` by their ids, and the tests that try each of them, at its limit and one beyond it if it has one."""

from __future__ import annotations

import ast
import re
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

RULES = {
    # What must hold.
    "M1": ("solve/test_limits_of_widths.a_width_is_the_nearest", "solve/test_limits_of_openings.a_v_neck_needs_a_row"),
    "M2": ("solve/test_limits_of_joins.levels_of_one_name", "solve/test_shapes.levels_alike_but_for_their_fabric"),
    "M3": ("solve/test_limits_of_joins.joined_edges_of_rows", "solve/test_limits_of_joins.ends_that_are_joined"),
    "M4": ("solve/test_limits_of_joins.joined_edges_of_rows",),
    "M5": ("solve/test_limits_of_sizes.widths_go_up", "solve/test_limits_of_sizes.heights_do_too"),
    "M6": ("solve/test_limits_of_joins.levels_are_two_rows_apart",),
    "M7": ("solve/test_limits_of_edges.a_slope_has_the_rows", "solve/test_limits_of_edges.an_edge_by_itself_grows"),
    "M8": ("solve/test_limits_of_edges.equal_steps_are_made", "solve/test_limits_of_edges.a_curve_is_as_near"),
    "M9": ("solve/test_limits_of_edges.a_slope_has_the_rows", "solve/test_limits_of_edges.what_follows_a_cast_off"),
    "M10": ("solve/test_limits_of_edges.a_rate_moves_as_often", "solve/test_limits_of_edges.a_rate_that_never_moves"),
    "M11": ("solve/test_limits_of_moves.each_of_equal_steps", "solve/test_limits_of_moves.steps_that_may_differ"),
    "M12": ("solve/test_limits_of_wedges.a_group_is_held", "solve/test_limits_of_wedges.a_shoulder_has_a_stitch"),
    "M13": ("solve/test_limits_of_wedges.something_stays_in_work", "solve/test_limits_of_wedges.wedges_at_both_edges"),
    "M14": ("solve/test_limits_of_edges.across_the_width",),
    "M15": ("solve/test_limits_of_openings.stitches_are_left_on_each_side", "solve/test_limits_of_openings.a_slot_has_a_stitch"),
    "M16": ("solve/test_limits_of_widths.a_piece_has_as_many", "solve/test_limits_of_widths.edges_of_their_own_have_room"),
    "M17": ("solve/test_limits_of_repeats.whole_repeats_between_edge_stitches",),
    "M18": ("solve/test_limits_of_repeats.a_mock_rib_of_two_and_one",),
    # How far off.
    "F1": ("solve/test_limits_of_widths.one_edge_is_a_stitch_off", "solve/test_limits_of_moves.steps_of_several_sizes"),
    "F2": ("solve/test_limits_of_wedges.a_group_is_held", "solve/test_limits_of_moves.one_edge_of_a_gap_moves"),
    "F3": ("solve/test_limits_of_edges.equal_steps_are_made", "solve/test_limits_of_moves.equal_steps_of_one_edge"),
    "F4": ("solve/test_limits_of_moves.the_middle_of_a_gap",),
    "F5": ("solve/test_limits_of_moves.a_curve_and_an_arch", "solve/test_limits_of_wedges.the_rows_of_a_wedge_over"),
    "F6": ("solve/test_limits_of_repeats.whole_repeats_between_edge_stitches",),
    # How many rows.
    "R1": ("solve/test_limits_of_edges.a_slope_has_the_rows", "solve/test_limits_of_edges.two_at_once"),
    "R2": ("solve/test_limits_of_edges.a_fashioned_increase", "solve/test_limits_of_moves.the_edge_of_a_gap"),
    "R3": ("solve/test_limits_of_edges.what_follows_a_cast_off",),
    "R4": ("solve/test_limits_of_edges.a_slope_has_the_rows", "solve/test_limits_of_openings.the_edge_of_a_gap"),
    "R5": ("solve/test_limits_of_moves.each_of_equal_steps", "solve/test_limits_of_moves.the_edge_of_a_gap"),
    "R6": ("solve/test_limits_of_moves.a_curve_and_an_arch", "solve/test_limits_of_moves.the_edge_of_a_gap"),
    "R7": ("solve/test_limits_of_schedules.no_move_at_the_carriage",),
    # How many stitches.
    "N1": ("solve/test_limits_of_widths.a_piece_keeps_a_stitch",),
    "N2": ("solve/test_limits_of_widths.edges_of_their_own_together",),
    "N3": ("solve/test_limits_of_widths.a_piece_has_as_many", "solve/test_limits_of_widths.a_mirror_image_has_room"),
    "N4": (
        "solve/test_limits_of_openings.stitches_are_left_on_each_side",
        "solve/test_limits_of_openings.stitches_are_left_between",
    ),
    "N5": ("solve/test_limits_of_openings.a_slot_has_a_stitch",),
    "N6": ("solve/test_limits_of_openings.rows_over_the_whole_width", "solve/test_limits_of_openings.a_neck_is_as_deep"),
    "N7": ("solve/test_limits_of_openings.buttonholes_lie_two_rows",),
    # What is best.
    "C0": ("solve/test_limits_of_widths.one_edge_is_a_stitch_off", "solve/test_limits_of_edges.a_slope_has_the_rows"),
    "C1": ("solve/test_limits_of_widths.one_edge_is_a_stitch_off", "solve/test_counts.two_figures_off_by_one"),
    "C2": ("solve/test_limits_of_joins.levels_are_two_rows_apart", "solve/test_equals.the_distance_between"),
    "C3": ("solve/test_limits_of_wedges.the_rows_of_a_wedge_over", "solve/test_limits_of_wedges.a_group_is_held"),
    "C4": ("solve/test_limits_of_openings.the_edge_of_a_gap", "solve/test_limits_of_moves.steps_of_several_sizes"),
    "C5": ("solve/test_limits_of_wedges.a_group_is_held",),
    "C6": ("solve/test_limits_of_widths.what_is_knitted_in_copies", "solve/test_equals.what_is_knitted_several_times"),
    "C7": ("solve/test_wholes.of_two_pieces", "solve/test_wholes.nothing_is_wished_for"),
    "C8": ("solve/test_limits_of_sizes.two_sizes_alike",),
    "C9": ("solve/test_limits_of_joins.joined_edges_of_rows",),
    "C10": ("solve/test_equals.the_shares_are_those", "solve/test_matching.a_cap_comes_as_near"),
    "C11": ("solve/test_limits_of_sizes.widths_go_up",),
    "C12": ("solve/test_limits_of_widths.a_width_is_the_nearest", "solve/test_counts.equally_near_numbers"),
    "C13": ("solve/test_limits_of_joins.a_free_width", "solve/test_limits_of_joins.two_free_levels"),
    # Joins and free levels.
    "J1": ("solve/test_matching.a_side_that_goes_round",),
    "J2": ("solve/test_matching.a_side_that_goes_round",),
    "J3": ("counted/test_edges.an_edge_called_on_one_side", "counted/test_edges.a_gap_has_both"),
    "J4": (
        "counted/test_edges.a_held_edge_gets_two",
        "counted/test_edges.a_left_edge_held_across",
        "counted/test_edges.rows_of_a_repeat",
    ),
    "J5": ("solve/test_limits_of_joins.joined_edges_of_rows",),
    "J6": ("solve/test_limits_of_joins.joined_edges_of_rows",),
    "J7": ("solve/test_limits_of_joins.ends_that_are_joined",),
    "J8": ("solve/test_limits_of_moves.a_join_in_a_ratio",),
    "L1": ("solve/test_matching.the_cap_is_nearest", "solve/test_trying.free_levels_find_their_own_ways"),
    "L2": ("solve/test_limits_of_joins.two_free_levels",),
    "L3": ("solve/test_matching.a_cap_that_cannot_be_high", "solve/test_matching.a_cap_that_cannot_be_low"),
    # When nothing fits.
    "T1": ("solve/test_limits_of_sizes.what_is_proposed",),
    "T2": ("solve/test_limits_of_sizes.a_join_is_blamed", "solve/test_conflicts.the_conflict_told_is_smallest"),
    "T3": ("solve/test_trying.each_figure_that_is_printed", "solve/test_trying.tries_are_bounded"),
    "T4": ("solve/test_conflicts.no_size_is_refused",),
    # On which rows.
    "S1": ("solve/test_schedule.the_least_deviation", "solve/test_least.the_least_deviation_of_single_moves"),
    "S2": ("solve/test_schedule.phrases_keep_the_promise",),
    "S3": ("solve/test_limits_of_schedules.the_plainest_structure",),
    "S4": ("solve/test_limits_of_schedules.the_plainest_structure", "solve/test_schedule.the_plainest_structure"),
    "S5": ("solve/test_limits_of_edges.equal_steps_are_made",),
    "S6": ("solve/test_exact_moves.steps_of_several_sizes",),
    "S7": ("solve/test_exact_moves.an_edge_begins_and_ends",),
    "S8": ("solve/test_limits_of_edges.a_rate_at_the_carriage", "solve/test_rates.where_the_first_gap"),
    "S9": ("solve/test_limits_of_edges.a_curve_is_as_near", "solve/test_least.stairs_against_every_way"),
    "S10": ("solve/test_limits_of_edges.an_edge_by_itself_grows", "solve/test_carriage_sides.casting_off_and_on"),
    "S11": ("solve/test_limits_of_wedges.a_group_is_held",),
    "S12": ("solve/test_limits_of_openings.stitches_are_left_between", "solve/test_shapes.a_gap_that_rejoins"),
    "S13": ("solve/test_limits_of_joins.a_zone_is_reckoned", "solve/test_shapes.a_width_is_measured"),
    "S14": ("solve/test_limits_of_joins.a_zone_is_reckoned", "solve/test_amounts.rows_that_are_repeated"),
    # Charts.
    "W1": ("solve/test_limits_of_repeats.whole_repeats_between_edge_stitches",),
    "W2": ("solve/test_limits_of_moves.whole_repeats_above_one_edge",),
    "W3": ("solve/test_limits_of_repeats.two_fabrics_on_one_width",),
    "W4": ("solve/test_limits_of_edges.a_slope_has_the_rows",),
    "W5": ("solve/test_limits_of_repeats.whole_repeats_between_edge_stitches",),
    "W6": ("solve/test_limits_of_repeats.whole_repeats_between_edge_stitches",),
    "W7": ("solve/test_limits_of_repeats.the_middle_of_a_repeat", "solve/test_limits_of_repeats.a_piece_that_leans"),
    "W8": ("solve/test_limits_of_repeats.a_panel_has_the_repeats",),
    "W9": ("solve/test_repeats.a_motif_lies_round", "solve/test_repeats.a_motif_needs_room"),
    "W10": ("solve/test_matched.the_patterns_are_brought", "solve/test_matched.welts_too_far_apart"),
    # Bands.
    "B1": ("solve/test_bands.a_neck_is_walked",),
    "B2": ("solve/test_band_places.a_simple_ratio",),
    "B3": ("solve/test_limits_of_bands.buttonholes_lie_evenly", "solve/test_limits_of_bands.a_buttonhole_lies_at_half"),
    "B4": ("solve/test_limits_of_bands.a_band_that_the_bed", "solve/test_band_places.within_an_edge_evenly"),
    "B5": ("solve/test_limits_of_bands.a_piece_is_begun", "solve/test_as_wide_as_edges.as_many_stitches"),
    "B6": ("solve/test_limits_of_bands.along_rows_as_many",),
    "B7": ("solve/test_limits_of_bands.along_stitches_stitch_for_stitch",),
    "B8": ("solve/test_limits_of_bands.a_rib_comes_out_whole",),
    "B9": ("solve/test_limits_of_bands.a_band_has_the_nearest", "solve/test_edgings.rows_of_an_edging"),
    "B10": ("solve/test_mirrored_edges.both_sides_of_any_neck", "solve/test_mirrored_edges.two_bands_with_one_edge"),
    # Lengths.
    "D1": ("counted/test_edges.a_slope_of_single", "counted/test_lengths_walked.an_edge_is_as_long"),
    "D2": ("counted/test_lengths_walked.an_edge_is_as_long", "counted/test_lengths_walked.an_outline_goes"),
    "D3": ("counted/test_edges.loops_hung_back", "counted/test_edges.moves_while_an_edge"),
    "D4": ("counted/test_edges.terms_of_the_programme", "solve/test_conflicts.within_the_easing"),
}
"""By the id of a rule, the files of tests and how the names of the tests in them go on after `test_`."""


@cache
def _tests(file: str) -> tuple[str, ...]:
    module = ast.parse((ROOT / "tests" / f"{file}.py").read_text(encoding="utf-8"))
    names = [n.name for n in module.body if isinstance(n, ast.FunctionDef) and n.name.startswith("test_")]
    return tuple(name.removeprefix("test_") for name in names)


def test_each_rule_of_the_document_has_a_test_and_each_test_a_rule() -> None:
    told = (ROOT / "docs" / "solver.md").read_text(encoding="utf-8")
    at_beginning = re.findall(r"(?:^\| |^- |^|[.:] )([A-Z]\d+)(?: \||: )", told, re.M)
    in_heading = re.findall(r"^\*\*.+?\*\*[^(\n]*\(([A-Z]\d+)\)", told, re.M)
    ids = at_beginning + in_heading
    assert len(ids) == len(set(ids))
    assert set(ids) == set(RULES)


def test_all_that_is_a_rule_in_the_document_has_an_id() -> None:
    """Every row of a table, and every paragraph and item of the sections whose rules are told in sentences."""
    told = (ROOT / "docs" / "solver.md").read_text(encoding="utf-8")
    rows = [line for line in told.splitlines() if line.startswith("| ") and not line.startswith("| | ")]
    assert rows
    assert [row for row in rows if not re.match(r"\| [A-Z]\d+ \|", row)] == []
    items = [line for line in told.splitlines() if line.startswith("- ")]
    assert [item for item in items if not re.match(r"- [A-Z]\d+: ", item)] == []


def test_the_tests_that_are_named_are_there() -> None:
    missing = [f"{rule}: {name}" for rule, names in RULES.items() for name in names if not _there(name)]
    assert missing == []


def _there(name: str) -> bool:
    file, _, begins = name.partition(".")
    return any(test.startswith(begins) for test in _tests(file))
