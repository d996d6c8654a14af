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
    chained_depth="A chained edging has a depth.",
    control_character="A character that cannot be seen stands in a line.",
    empty_source="The source has no statement.",
    incomplete_statement="A statement does not say something that it has to say.",
    invisible_symbol="A symbol of a chart cannot be seen by itself.",
    line_too_long="A line is longer than any statement.",
    misplaced_line="A line stands where lines of its kind cannot stand.",
    name_unreadable="A name could not be printed and read back.",
    not_whole_number="A count has a fraction.",
    number_too_long="A number has more digits than anything on a bed.",
    repeated_option="A line says the same thing twice.",
    reserved_word="A name has a meaning of its own where it would be used.",
    source_too_long="A source has more lines, or more characters, than any garment.",
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
    absurd_length="A length is beyond ten metres.",
    absurd_measurement="A measurement is beyond four metres.",
    absurd_swatch="A swatch is tighter or looser than a bed can knit.",
    across_elsewhere="The width is changed across at a level that the edges have not come to.",
    across_too_far="The width is more than doubled or less than halved across.",
    along_later_piece="A piece is begun on one that is not knitted before it.",
    bad_colour="A colour of a yarn does not read as one.",
    bad_machine_fact="A fact of the machine has a value that no machine has.",
    bad_ball="A yarn given on the command line cannot be read.",
    bad_bed="A bed given on the command line cannot be read.",
    bad_dial="A setting of the dial given on the command line cannot be read.",
    bad_measure="A measurement given on the command line cannot be used.",
    bad_rib="A latched rib needs at least every second needle.",
    bad_stretch="An edge stretches to less than its own length, or to no share of it.",
    bad_swatch="A swatch given on the command line cannot be read.",
    bad_tension="A tension given on the command line cannot be used.",
    bad_yarn_count="A yarn count does not read as one, or is beyond any yarn.",
    beyond_the_edge="What is cut into a piece, or laid over a part of it, reaches to its edge or beyond.",
    border_needs_whole="A chart with columns beside its repeat is centred or balanced.",
    buttonholes_too_close="Buttonholes have too few rows between them.",
    cast_off_at_start="Stitches are cast off where no row is knitted yet.",
    cast_off_too_wide="More is cast off than the edge moves in.",
    chart_begins_open="A chart whose first row is worked by hand begins on waste yarn.",
    chart_empty="A chart has no row.",
    chart_in_own_yarn="A symbol of a chart means the yarn that the fabric is in already.",
    chart_in_two_ways="A chart without a repeat is that of a fabric and of a motif.",
    chart_ragged="The rows of a chart are not of one length.",
    chart_repeat_too_wide="A repeat is wider than its chart.",
    chart_unknown_symbol="A symbol of a chart is not in its key.",
    cord_on_child="A cord is drawn through a garment for children.",
    cross_beyond_tools="A cross is wider than the largest transfer tool.",
    cross_cut="A cross is drawn with too few or too many cells.",
    cross_uneven="A cross exchanges groups of unlike size, or none.",
    cross_without_slack="A wide cross has no dropped column beside it that gives slack.",
    cyclic_let="A definition leads back to itself.",
    division_by_zero="An expression divides by zero.",
    edge_goes_down="An edge is led to a level that it has passed.",
    edge_moves_in_wedge="An edge moves in rows where it is held.",
    edge_past_opening="An edge of an opening is led beyond the opening's end.",
    edge_past_shoulder="An edge is shaped or named beyond the level where its shoulder is held.",
    edge_stitches_too_few="A charted fabric has too few stitches outside its chart at the edges.",
    edges_apart="Both edges are moved together and stand at different levels.",
    edging_charted="An edging is in a charted fabric.",
    edging_first_in_band="A band has an edging that is knitted first.",
    edging_latched="An edging of a kind that is knitted plain is in a latched rib.",
    edging_left_open="An edging ends on waste yarn, and nothing takes up its loops.",
    edging_needs_closed_start="An edging is knitted first on a start that is not closed.",
    edging_needs_loops="An edging is to be hung on loops that a closed start does not leave.",
    edging_needs_waste_start="A folded edging is knitted first on a start that leaves no loops.",
    edging_only_after="An edging that is worked on loops is knitted first.",
    edging_only_first="An edging that begins on needles out of work is added after.",
    edging_without_fold="An edging without a fold has something said of its fold.",
    count_not_whole="What counts something has a fraction in some size.",
    first_level="The first level of a piece is not at its start.",
    gathered_in_parts="The last loops of a piece in two parts are to be gathered.",
    given_twice="One thing is given twice on the command line.",
    hole_unasked="A move leaves a needle empty that is not drawn so.",
    hole_without_move="A loop of a chart is moved away and lies nowhere.",
    holes_meet="Empty needles of a chart leave no stitch between them.",
    impossible_statement="A statement says what no text of a source can say.",
    in_repeat="Something that is there once stands in rows that are repeated.",
    join_needs_loops="Edges without loops are to be joined loop by loop.",
    joined_to_itself="An edge is put together with itself, loop by loop.",
    ladder_needs_knit="A ladder has no plain stitch beside it or above it.",
    ladder_never_dropped="Every row of a column is a ladder.",
    ladder_too_short="A ladder has one row.",
    levels_fall="A level is not above the one before.",
    loops_do_not_ease="Edges that are joined loop by loop have easing.",
    like_half_edge="A piece that is like another moves one edge where the other piece gives the width of both.",
    like_ring="A piece is in the end like itself.",
    mirror_other_fabric="A mirror image is in another fabric than its model.",
    mirror_ring="A piece is in the end a mirror of itself.",
    missing_argument="A use of a shape does not say something that the shape needs.",
    missing_part="Something that has to be there is missing.",
    mixed_units="Two quantities that do not mix are added or compared.",
    name_expected="A use of a shape gives a quantity where the shape needs a name.",
    motif_past_top="A motif has more rows than its piece above its level.",
    motif_with_repeat="A motif's chart has a repeat.",
    move_beyond_tools="More loops are moved together than a transfer tool holds.",
    move_without_hole="A loop of a chart is taken from where none is given.",
    named_in_opening="An edge of an opening has a name of its own.",
    neck_flat="The flat part of a neck does not suit its width.",
    neck_too_deep="A neck is as deep as its piece is high.",
    neck_too_wide="A neck leaves nothing of the piece beside it.",
    names_look_alike="Two names of a kind look alike.",
    negative_measurement="A measurement is below zero.",
    no_such_edge="A piece has no edge of that name.",
    no_such_tool="A way of shaping needs a transfer tool that is not at hand.",
    no_unit="A quantity has no unit.",
    no_width_left="A piece has no width left at a level.",
    next_of_one="Each copy is joined to the next one, of a piece that is knitted once.",
    not_positive="A quantity that has to be above zero is not.",
    number_too_large="A value worked out to more than any garment has.",
    odd_needles="A bed has an odd number of needles.",
    opening_at_start="An opening begins where no row is knitted yet.",
    openings_overlap="Two openings of a piece are open in the same rows.",
    openings_touch="An opening begins in the row where another ends.",
    panel_fabric="A panel is in a fabric that cannot be knitted beside the other.",
    patterns_clash="A chart and something else cannot be worked on the same needles.",
    picture_other_stitch="A chart whose colours are laid in blocks has other stitches than knit.",
    ragged_row="A row of the size table does not have one value for each size.",
    range_falls="A range goes down.",
    rate_not_kept="An edge cannot move at the rate that is written.",
    repeat_changes_width="The width at the end of a repeat is not that at its beginning.",
    repeat_parity="Whole repeats never come to the piece's even or odd number of stitches.",
    repeat_wider_than_piece="A piece is narrower than one repeat.",
    repeated_name="Two things of a kind have one name.",
    repeated_statement="A block says something twice.",
    repeats_without_chart="A panel is so many repeats wide, and its fabric has none.",
    require_fails="A requirement does not hold.",
    reserved_name="A name is given to an edge that every piece has already, or to a yarn that helps the machine.",
    row_without_main="A row of a chart leaves no stitch in the fabric's own yarn.",
    rows_across="Rows are counted across the work.",
    shape_ring="A shape uses itself in the end.",
    shape_too_large="Shapes within shapes come to more than anybody can follow.",
    shoulders_at_top="Shoulders are held from the top of the piece.",
    slot_at_edge="A slot or a buttonhole is at the start or the top of its piece.",
    stitches_up="Stitches are counted up the work.",
    stretch_falls="A stretch of rows ends at a level that is not above its beginning.",
    stretches_overlap="Two things that cannot go on at the same time share rows.",
    three_colours_in_row="A row of a chart has more than one other yarn.",
    too_many="A source has more of a kind of thing than any garment.",
    tuck_side_by_side="Two needles side by side are held in one row of a chart.",
    tuck_too_long="A needle is held for more rows than knit off.",
    two_at_once_outwards="Two stitches at once are to be moved outwards.",
    unknown_argument="A use of a shape says something that the shape does not know.",
    unknown_name="A name is not known here.",
    unknown_size="The pattern has no size of that name.",
    unknown_table="No shipped table has that name.",
    unknown_table_row="A shipped table has no such measurement.",
    unknown_table_size="A shipped table has no such size.",
    without_effect="An option changes nothing where it stands.",
    wedge_too_wide="A wedge is wider than its piece has room for.",
    while_held="Something that needs the whole width is in rows where stitches are held.",
    while_parted="Something that needs the whole width is in rows where the piece is parted.",
    width_of_one_edge="One edge alone is given a width.",
    without_model="A piece leaves something out that it has from no other piece.",
    worked_out_measure="A measurement given on the command line is worked out by the source.",
    wrong_unit="A quantity has a unit of the wrong kind.",
) | _warnings(
    same_as_model="A line of a piece says what the piece that it is like says already.",
    chart_key_unused="A symbol of a chart's key is not drawn.",
    cord_through_nothing="A cord is drawn through a piece that has nothing to draw it through.",
    cross_too_soon="The same needles are crossed again within few rows.",
    given_for_nothing="A measurement given on the command line moves no stitch.",
    hood_on_child="A garment for children has a hood.",
    slip_too_long="A stitch is slipped over more than two rows.",
    row_falls="A measurement gets smaller from one size to the next.",
    table_rows_disagree="Rows of one size table, used together, contradict each other.",
    table_slip="A figure of a shipped table is likely misprinted in its source.",
    tension_not_yours="A fabric keeps the tension of the source beside a knitter's own yarn or tension.",
    unlikely_swatch="A swatch weighs, or takes, much more or less yarn than knitting so dense does.",
    unlikely_yarn="A yarn is much too thick or too thin for its swatch.",
    unused_name="Nothing that is made uses a name.",
    table_from_memory="A figure of a shipped table was not seen in a published table.",
)
"""What can be wrong with what lines mean; told by `design`."""

GLUE = {
    **_errors(
        band_up_both_sides="A band is to run along a name that stands for several edges.",
        copies_mixed="Copies of a band lie on several copies of a piece, and it cannot be told on which.",
        copies_left_over="Of a piece knitted several times nothing is joined to some copies.",
        edge_used_twice="A stretch of an edge is joined or taken up twice.",
        join_not_in_line="The edges of a side of a join do not make one line.",
        line_closed="The edges that something is hung on are a ring by the time they can be hung.",
        line_not_in_order="Edges cannot be hung side by side in the order written.",
        line_not_mirrored="What is hung on a mirror image does not begin at the mirrored corner.",
        loops_left_open="Nothing takes up open loops.",
        seam_twisted="A seam would turn a piece inside out.",
        seams_cross="Two seams of a garment cross.",
        start_on_both_sides="Copies of a piece are begun along different edges.",
    ),
    **_warnings(
        edge_half_joined="An edge on both sides is joined on one side only.",
        named_for_other_side="A front is called by the side at which the other front is worn.",
    ),
}
"""What can be wrong with how pieces are put together; told by `glue`."""

MAKING = _errors(
    bed_refuses="The simulated bed cannot make a move of the plan.",
    buttonholes_crowded="The buttonholes of a band do not fit on it.",
    called_edges_differ="An edge called on both sides has more rows on one side than on the other.",
    free_level_without_room="Nowhere in the range of a free level is there room to shape the edges.",
    cannot_match="Stitch patterns cannot go on across a join as it is asked for.",
    cap_cannot_meet="No height within the range of a free level makes joined edges meet.",
    counts_conflict="No stitches and rows suit all that is said of them.",
    hole_at_edge="A slot or a buttonhole comes to lie at an edge, or where an edge is just shaped.",
    join_does_not_meet="Edges that are joined differ by more than their easing.",
    knitted_otherwise="A piece was knitted otherwise than it was counted.",
    lace_unpaired="A charted row was knitted with a hole and no decrease to it, or the reverse.",
    motif_outside="A motif reaches to the edge of its piece or beyond, or into an opening.",
    motif_too_high="A motif is higher than its fabric goes on.",
    no_proven_best="No best counts were found within the solver's limit.",
    panel_crossed="A slot, a buttonhole or an edge disturbs the wales of a panel.",
    repeats_on_a_slope="Whole repeats begin where an edge is on its way, or the piece is parted.",
    rib_without_column="A latched rib is so narrow that only end needles would be latched up.",
    wider_than_bed="A piece or band takes more needles than the bed has.",
    too_much_knitting="A piece, or all sizes of a garment together, are more than can be worked out.",
    too_small="A piece has too few stitches or rows to be knitted.",
    slope_too_flat="An edge moves by more stitches than its rows allow.",
    start_longer_than_edges="A piece is begun along edges with more stitches than they have places.",
    wedge_too_steep="A wedge has fewer stitches than steps.",
    words_contradict="A printed sentence cannot be done on the bed as it is, or its numbers disagree.",
    words_knit_otherwise="The printed words knit another fabric than the plan.",
    words_no_sizes="A printed text does not begin with its sizes.",
    words_no_such_size="A printed text has no size of that number.",
    words_size_count="A printed line has more or fewer readings than the text has sizes.",
    words_unreadable="A printed line is no sentence of the printed language.",
) | _warnings(
    band_parted="A band is wider than the bed, and knitted in parts.",
    long_float="A float is longer than is left loose.",
    sizes_not_graded="A grading was let go, because the sizes could be counted each by itself, but not all together.",
)
"""What stands between a garment and its proof; told by `solve`, `readback` and `proof`."""

COMMANDS = _errors(
    argument_missing="A command lacks something it needs.",
    bad_date="The date that the environment states is not a date.",
    command_line="The command line does not read.",
    command_unknown="There is no such command.",
    installation_incomplete="Something that the compiler needs is not installed.",
    memory_exhausted="Memory, or the stack, ran out.",
    option_unknown="There is no such option.",
    option_value="An option has a value that it cannot have.",
    output_clash="Two results would be written to one file.",
    output_is_source="A result would be written over a source.",
    output_lost="Standard output cannot be written.",
    output_unwritable="A file cannot be written.",
    source_is_folder="A folder was named in place of a source.",
    source_linked="A source has several names, which formatting would part.",
    source_missing="There is no such source.",
    source_name="A file is not named like a source.",
    source_not_file="What is named is a pipe or a device, not a file.",
    source_not_text="A source is not a text in UTF-8.",
    source_read_only="A source to be formatted is read-only.",
    source_too_large="A source is larger than any pattern.",
    source_unreadable="A source cannot be read, or changes while it is.",
    system_refused="The system refused something that was needed.",
) | _warnings(
    page_printer="The printer of the pages warns of something.",
)
"""What can be wrong around the sources; told by `world` and the commands."""

FIT = _errors(
    lap_apart="What is lapped does not lie at the two edges of one opening.",
    lets_through="An opening that must not let a part of the body through does, or may.",
    nothing_to_measure="What is to be measured on the garment is not there, or goes round nothing.",
    too_tight="A part of the body does not pass through an opening of a garment for children.",
) | _warnings(
    finished_otherwise="A finished measurement is not what the pieces come to.",
    opening_too_tight="A part of the body hardly passes through an opening.",
    reach_too_short="A sleeve ends too far from the wrist.",
    smaller_than_body="A garment is smaller than the body it is to fit.",
    start_draws_in="A piece is begun along edges that are much longer than it is wide.",
)
"""What can be wrong with a garment as it is worn; told by `fit`."""

REGRADE = _errors(
    given_too_far="Something given on the command line goes further than the pattern does.",
)
"""What can be wrong with a knitter's copy where the source's own edition is sound; told by `regrade`."""

CODES: Mapping[str, CodeInfo] = SOURCE | DESIGN | GLUE | MAKING | FIT | REGRADE | COMMANDS
"""Code to what it says."""
