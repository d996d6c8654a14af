"""Every code that a diagnostic can have: how grave it is by itself, and in one sentence what it says.

A code is written once and stays: pages of the documentation, tests and people's notes speak of it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from walewright.report.model import Severity


@dataclass(frozen=True, slots=True)
class CodeInfo:
    severity: Severity
    summary: str


def _errors(**summaries: str) -> dict[str, CodeInfo]:
    return {code.replace("_", "-"): CodeInfo(Severity.ERROR, summary) for code, summary in summaries.items()}


def _warnings(**summaries: str) -> dict[str, CodeInfo]:
    return {code.replace("_", "-"): CodeInfo(Severity.WARNING, summary) for code, summary in summaries.items()}


SOURCE = _errors(
    control_character="A character that cannot be seen stands in a line.",
    empty_source="The source has no statement.",
    incomplete_statement="A statement does not say something that it has to say.",
    line_too_long="A line is longer than any statement.",
    misplaced_line="A line stands where lines of its kind cannot stand.",
    not_whole_number="A count has a fraction.",
    number_too_long="A number has more digits than anything on a bed.",
    repeated_option="A line says the same thing twice.",
    reserved_word="A name has a meaning of its own where it would be used.",
    tab_indent="A line is indented with a tab.",
    too_deep="An expression is nested deeper than anybody could follow.",
    unclosed_text="A text has no closing quote on its line.",
    unknown_escape="A backslash in a text stands before a letter that it has no meaning with.",
    unreadable_line="A line does not read as a statement.",
    wrong_indent="A line is not indented as its block is.",
)
"""What can be wrong with lines; told by `source`."""

DESIGN = _errors(
    absurd_count="A count is beyond anything that is knitted.",
    absurd_length="A length is beyond anything that is knitted.",
    absurd_measurement="A measurement is beyond any body.",
    absurd_swatch="A swatch is tighter or looser than a bed can knit.",
    bad_machine_fact="A fact of the machine has a value that no machine has.",
    bad_measure="A measurement given on the command line cannot be used.",
    bad_rib="A latched rib needs at least every second needle.",
    bad_tension="A tension given on the command line cannot be used.",
    cast_off_too_wide="More is cast off than the edge moves in.",
    cyclic_let="A definition leads back to itself.",
    division_by_zero="An expression divides by zero.",
    edge_goes_down="An edge is led to a level that it has passed.",
    edge_past_shoulder="An edge is shaped or named beyond the level where its shoulder is held.",
    edges_apart="Both edges are moved together and stand at different levels.",
    edging_needs_loops="An edging is to be hung on loops that a closed start does not leave.",
    first_level="The first level of a piece is not at its start.",
    impossible_statement="A statement says something that it cannot say.",
    levels_fall="A level is not above the one before.",
    mirror_other_fabric="A mirror image is in another fabric than its model.",
    mirror_ring="A piece is in the end a mirror of itself.",
    mirror_with_shape="A mirror image has a shape of its own.",
    missing_part="Something that has to be there is missing.",
    mixed_units="Two quantities that do not mix are added or compared.",
    neck_flat="The flat part of a neck does not suit its width.",
    neck_too_deep="A neck is as deep as its piece is high.",
    neck_too_wide="A neck leaves nothing of the piece beside it.",
    negative_measurement="A measurement is less than nothing.",
    no_such_edge="A piece has no edge of that name.",
    no_such_tool="A way of shaping needs a transfer tool that is not at hand.",
    no_unit="A quantity has no unit.",
    no_width_left="A piece has no width left at a level.",
    not_positive="A quantity that has to be above zero is not.",
    number_too_large="A value worked out to more than any garment has.",
    odd_needles="A bed has an odd number of needles.",
    one_sided_name="An edge is named on one side only.",
    ragged_row="A row of the size table does not have one value for each size.",
    repeated_name="Two things of a kind have one name.",
    repeated_statement="A block says something twice.",
    require_fails="A requirement does not hold.",
    reserved_name="A name is given away that every piece has already.",
    rows_across="Rows are counted across the work.",
    shoulders_at_top="Shoulders are held from the top of the piece.",
    stitches_up="Stitches are counted up the work.",
    unknown_name="A name is not known here.",
    unknown_size="The pattern has no size of that name.",
    unknown_table="No shipped table has that name.",
    unknown_table_row="A shipped table has no such measurement.",
    unknown_table_size="A shipped table has no such size.",
    width_of_one_edge="One edge alone is given a width.",
    wrong_unit="A quantity has a unit of the wrong kind.",
) | _warnings(
    row_falls="A measurement gets smaller from one size to the next.",
    table_from_memory="A figure of a shipped table was not seen in a published table.",
)
"""What can be wrong with what lines mean; told by `design`."""

MAKING = _errors(
    band_up_both_sides="A band is to run along an edge that runs up both sides of its piece.",
    bed_refuses="The simulated bed cannot make a move of the plan.",
    counts_conflict="No stitches and rows suit all that is said of them.",
    join_does_not_meet="Edges that are joined differ by more than their easing.",
    knitted_otherwise="A piece was knitted otherwise than it was counted.",
    no_proven_best="No best counts were found within the solver's limit.",
    wider_than_bed="A piece or band takes more needles than the bed has.",
    start_left_open="A piece is started on open loops that nothing takes up.",
    words_contradict="The printed words contradict themselves.",
    words_knit_otherwise="The printed words knit another fabric than the plan.",
    words_no_sizes="A printed text does not begin with its sizes.",
    words_no_such_size="A printed text has no size of that number.",
    words_size_count="A printed line has more or fewer readings than the text has sizes.",
    words_unreadable="A printed line is no sentence of the printed language.",
)
"""What stands between a garment and its proof; told by `solve`, `readback` and `proof`."""

COMMANDS = _errors(
    argument_missing="A command lacks something it needs.",
    command_line="The command line does not read.",
    command_unknown="There is no such command.",
    option_unknown="There is no such option.",
    option_value="An option has a value that it cannot have.",
    output_clash="Two results would be written to one file.",
    output_unwritable="A file cannot be written.",
    source_is_folder="A folder was named in place of a source.",
    source_missing="There is no such source.",
    source_not_text="A source is not a text in UTF-8.",
    source_too_large="A source is larger than any pattern.",
    source_unreadable="A source cannot be read.",
) | _warnings(
    page_printer="The printer of the pages warns of something.",
)
"""What can be wrong around the sources; told by `world` and the commands."""

CODES: Mapping[str, CodeInfo] = SOURCE | DESIGN | MAKING | COMMANDS
"""Code to what it says."""
