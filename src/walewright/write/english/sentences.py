"""The English sentences of steps, by their kinds, and the parts of them that are put together by themselves."""

from __future__ import annotations

SETTING_UP = {
    "needles_to_work": "bring needles {@span} to working position: {stitches} {stitches|st}",
    "carriage_at": "take the carriage to the {side} without knitting",
    "carriage_at/held": "take the carriage to the {side} without knitting, set to hold, if it is not there already",
    "carriage_at/slip": "take the carriage to the {side} without knitting, set to slip",
    "carriage_at/lift": "take the carriage to the {side} without knitting, lifted off and put on again there",
    "carriage_at/hold": "take the carriage to the {side} without knitting, past the needles in work pulled right out, then push "
    "these back",
    "every_out_of_work": "push every {every:ordinal} needle from the left back out of work, but not the last one:"
    " {stitches} {stitches|st}",
    "waste_start": "cast on in waste yarn {way} and knit {rows} {rows|row}, then 1 row with ravel cord",
    "waste_start/hem": "hang the cast-on hem on the needles in work, knit 1 row with ravel cord and {rows} {rows|row} in waste "
    "yarn, "
    "then 1 row with ravel cord",
    "closed_start": "cast on all needles in working position by {way}",
    "use_yarn_step": "thread {yarn}; carriage at tension {tension}{@said_for}{@left_hanging}",
    "said_for": ", for “{fabric}”",
    "left_hanging": ", the yarn before it left hanging at its side",
    "use_yarn_step/plate": "thread {yarn}; put in plate {tension}{@said_for}{@left_hanging}",
    "use_yarn_step/same/plate": "put in plate {tension}{@said_for}, the yarn as before",
    "use_yarn_step/same": "carriage at tension {tension}{@said_for}, the yarn as before",
    "set_row_counter": "set the row counter to {rows:counter}",
    "span": "{first:needle} to {last:needle}",
    "one_needle": "{first:needle}",
}

KNITTING = {
    "knit_rows": "knit {rows} {rows|row}",
    "knit_to": "knit to {RC} {row}",
    "knit_rows/listed": "knit {rows} {rows|row}{@on_the_way}",
    "knit_to/listed": "knit to {RC} {row}{@on_the_way}",
    "crossing": "crossing {rows}",
    "crossing/at": "crossing at {RC} {rows}",
    "moving": "moving {STS} {rows}",
    "moving/at": "moving {STS} at {RC} {rows}",
    "dropping": "dropping ladders {rows}",
    "dropping/at": "dropping ladders at {RC} {rows}",
    "holding": "holding needles {rows}",
    "holding/at": "holding needles at {RC} {rows}",
    "latching": "latching up {rows}",
    "latching/at": "latching up at {RC} {rows}",
    "columns": "latching up the purl columns {rows}",
    "columns/at": "latching up the purl columns at {RC} {rows}",
    "columns/on": "latching up the purl columns on {needles} {rows}",
    "columns/on/at": "latching up the purl columns on {needles} at {RC} {rows}",
    "changing": "changing the yarn {rows}",
    "changing/at": "changing the yarn at {RC} {rows}",
    "again_from_row_1": "row 1 of the chart again {rows}",
    "again_from_row_1/at": "row 1 of the chart again at {RC} {rows}",
    "every": "every {every} {every|row} from {RC} {firsts} to {RC} {last}",
    "decrease": "decrease {by} {by|st} at {ends}{@inset}",
    "inset": ", {inset} {inset|st} in",
    "increase_fashioned": "increase {1} {1|st} at {ends}{@inset}",
    "needle_out": "move the {ST} of {at:needle} to the needle at its right and push {at:needle} out of work:"
    " {stitches} {stitches|st}",
    "needles_out_every": "of every {every:ordinal} needle from {first:needle} to {last:needle} move the {ST} to the needle at its"
    " right and push it out of work: {stitches} {stitches|st}",
    "leave_out": "push {at:needle} back out of work: {stitches} {stitches|st}",
    "leave_out_every": "push every {every:ordinal} needle from {first:needle} to {last:needle} back out of work:"
    " {stitches} {stitches|st}",
    "needle_back": "bring {at:needle} back to work, empty: {stitches} {stitches|st}",
    "needles_back_every": "bring every {every:ordinal} needle from {first:needle} to {last:needle} back to work, empty:"
    " {stitches} {stitches|st}",
    "decrease_on": "decrease {1} {1|st} at {ends}, on {@lines}, the {STS} outside moved inwards {prongs} at a time",
    "decrease_outer": "decrease {1} {1|st} at {ends}, the outer {stitches} {stitches|st} moved inwards {prongs} at a time",
    "increase_beside": "increase {1} {1|st} at {ends}, beside {@lines}, the {STS} outside moved outwards {prongs} at a time",
    "increase_outer": "increase {1} {1|st} at {ends}, the outer {stitches} {stitches|st} moved outwards {prongs} at a time",
    "lines": "{first:needle}",
    "lines/both": "{first:needle} and {last:needle}",
    "increase_at_carriage": "increase {1} {1|st} at the carriage side",
    "cast_off_at_carriage": "cast off {stitches} {stitches|st} at the carriage side",
    "cast_on_at_carriage": "cast on {stitches} {stitches|st} by e-wrap at the carriage side",
    "hold_at_end": "at the {side} end hold {stitches} {stitches|st}",
    "hold_at_end/more": "at the {side} end hold {stitches} more {stitches|st}",
    "hold_at_end/next": "at the {side} end hold the next {stitches} {stitches|st}",
    "wrap_held": "wrap the innermost needle held at the {side}",
    "return_held": "return the needles held at the {side} to work",
    "return_some": "return the innermost {stitches} {stitches|st} held at the {side} to work",
    "repeat": "[{@repeated}]",
    "loop": "{body}: work this {times} {times|time} in all",
    "stop": ".",
    "between": ", ",
    "and": " and ",
    "mark_edges": "tie a marker thread at {ends} for the {@end_of}{what}",
    "end_of": "end of the ",
    "now": "{stitches} {stitches|st}, {counter}, {carriage}",
    "now/short": "{stitches} {stitches|st}, {carriage}",
    "now_held": "{working} {working|st} in work, {held} held, {counter}, {carriage}",
    "now_held/short": "{working} {working|st} in work, {held} held, {carriage}",
    "now_in_half_held": "{working} {working|st} in work, {held} held, and {waiting} waiting, {counter}, {carriage}",
    "now_in_half_held/short": "{working} {working|st} in work, {held} held, and {waiting} waiting, {carriage}",
    "now_in_half": "{stitches} {stitches|st}, and {waiting} waiting, {counter}, {carriage}",
    "now_in_half/short": "{stitches} {stitches|st}, and {waiting} waiting, {carriage}",
    "counter": "{RC} {row}",
    "say": "note “{@text}”",
}

PARTING = {
    "spread_evenly": "take the {STS} in work off on waste yarn and hang them back from the left on needles {@span},"
    " {stitches} {stitches|st}: {@rounds}",
    "round": "{changed} on each of the next {times} {times|needle}",
    "round/once": "{changed} on the next needle",
    "round/one": "*1 loop, {changed}; work from * {times} {times|time} in all",
    "round/one-once": "1 loop, {changed}",
    "round/singles": "*1 loop on each of {singles} {singles|needle}, {changed} on the next; work from * {times} {times|time} in"
    " all",
    "round/singles-once": "1 loop on each of {singles} {singles|needle}, {changed} on the next",
    "rest": "1 loop on each of the last {rest} {rest|needle}",
    "rest/one": "1 loop on the last needle",
    "rounds": "; ",
    "slot_on_waste": "take {stitches} {stitches|st}, {@needles}, off on waste yarn ({edge})"
    " and cast on again on the same needles by e-wrap{@length}",
    "slot_closed": "close {stitches} {stitches|st}, {@needles}, by chaining them through each other to the right and on to the"
    " next needle; cast on again on the same needles by e-wrap{@length}",
    "length": " with a separate length of the yarn",
    "length/least": " with a separate length of at least {length_cm} cm of the yarn",
    "eyelet_at": "move the {ST} of {needle:needle} one needle to the {side} and leave the empty needle in work",
    "centre_to_waste": "take {@gap}, off on waste yarn ({edge})",
    "close_centre": "close {@gap}, by chaining them through each other to the right and on to the next needle",
    "gap/centre": "the centre {stitches} {stitches|st}, {@needles}",
    "gap/between": "the {stitches} {stitches|st} between the parts, {@needles}",
    "cast_on_between": "cast on {stitches} {stitches|st} by e-wrap on {@needles} between the parts{@length}",
    "hold_part": "put the {@which_part}, {@needles}, into hold until its turn",
    "part_on_cord": "lay ravel cord into the hooks of the {@which_part}, {@needles}, by hand and push each needle fully back on it;"
    " it waits {rows} {rows|row} for its turn, too long to wait right out",
    "draw_parts_cord": "push the needles of the {@which_part}, {@needles}, right out and draw the ravel cord out of them",
    "return_part": "return the waiting {@which_part}, {@needles}, to work",
    "which_part": "{side} part",
    "which_part/nth": "{nth:ordinal} part from the left",
    "off_on_waste": "knit {rows} {rows|row} of waste yarn over the {STS} in work and take them off the bed ({edge})",
    "cast_off_all": "cast off the {STS} in work from the carriage side",
    "sew_off_all": "cast off the {STS} in work by back-stitch with the tail, from the carriage side",
    "gather_all": "thread the tail of the yarn through the {STS} in work, take them off the bed and draw them up",
    "break_off": "break off the yarn{@tail}",
    "tail": ", leaving a tail of {tail_cm} cm",
}

EDGINGS = {
    "use_looser": "thread {yarn}; carriage at tension {tension}, {@looser} looser than tension {than}",
    "use_looser/plate": "thread {yarn}; put in plate {tension}, looser than plate {than}",
    "use_looser/same/plate": "put in plate {tension}, looser than plate {than}, the yarn as before",
    "use_looser/next": "thread {yarn}; carriage at the next looser setting after tension {than}",
    "use_looser/same": "carriage at tension {tension}, {@looser} looser than tension {than}, the yarn as before",
    "use_looser/same/next": "carriage at the next looser setting after tension {than}, the yarn as before",
    "looser": "{least} {least|number}",
    "looser/range": "{least} to {most} {most|number}",
    "picot_row": "move every 2nd {ST}, beginning with the 2nd from the left and leaving out the last, one needle to the right and"
    " leave the empty needles in work",
    "fold_up": "fold the work up {way} and hang the {loops} {loops|loop} of the first garment row from left to right,"
    " each on the needle that knitted it: {stitches} {stitches|st}",
    "fold_up/row": "fold the work up {way} and hang the {loops} {loops|loop} of the row knitted at {RC} {row} from left to right,"
    " each on the needle that knitted it: {stitches} {stitches|st}",
    "fold_up/all": "bring the needles out of work back to work; fold the work up {way} and hang the {loops} {loops|loop} of the"
    " first garment row from left to right, each on the needle that knitted it, but where the needle to the right of that one is"
    " empty, on the empty one: {stitches} {stitches|st}",
    "rehang_start": "{facing}, hang the {stitches} {stitches|loop} of the first row of the {piece} on these needles, its edge"
    " loop counted, and pull out the ravel cord",
    "hang_to_link": "{facing}, hang the {stitches} {stitches|open_loop} along the {@edge_told}, {left_end}, {@on_needles}{@over}",
    "over": ", over the {STS} of the other piece",
    "pick_up_along": "{facing}, pick up {stitches} {stitches|st} along the {@edge_told}{@stretch}{@ratio}, {left_end},"
    " {@on_needles}",
    "ratio": ", about {per} {per|st} for every {every} {every|row}",
    "pick_up_along/open": "{facing}, hang the {stitches} {stitches|open_loop} along the {@edge_told}{@stretch},"
    " {left_end}, {@on_needles}",
    "on_needles": "on needles {@span}",
    "on_needles/one": "on needle {first:needle}",
    "stretch/rows": " from {RC} {low} to {RC} {high}",
    "stretch/stitches": " from its {lowest:ordinal} to its {high:ordinal} {ST}, counted from the left",
    "edge_told": "{part}{piece}{@copy} {edge}",
    "edge_told/shoulder": "{side} shoulder of the {piece}{@copy}",
    "edge_told/row": "{row} of the {piece}{@copy}",
    "edge_told/upper": "cast-on edge above the {opening} of the {piece}{@copy}",
    "of_copy": " ({copy})",
    "latch_rib": "beginning with {left:needle} and {begin:needle}, drop every {every:ordinal} {ST} outwards,"
    " {rows} {rows|row} deep, and latch it up on the other face; leave the end {STS} as they are",
    "latch_panel": "drop {@wales}, {rows} {rows|row} deep, and latch up on the other face; leave the end {STS} as they are",
    "latch_panel/every": "of every {every:ordinal} {ST} counted outwards from {left:needle} and {begin:needle}, drop those on"
    " needles {@span}, {rows} {rows|row} deep, and latch them up on the other face; leave the end {STS} as they are",
    "latch_in_stages": "from here on latch up every {every:ordinal} {ST} on the other face, beginning with {left:needle} and"
    " {begin:needle} and counting outwards{@at_rows}; leave the end {STS} as they are",
    "latch_panel_in_stages": "from here on latch up {@wales} on the other face{@at_rows}; leave the end {STS} as they are",
    "latch_panel_in_stages/every": "from here on latch up every {every:ordinal} {ST} on the other face, counted outwards from"
    " {left:needle} and {begin:needle}, only those on needles {@span}{@at_rows}; leave the end {STS} as they are",
    "stages/every": ", every {every} {every|row} from {RC} {first} to {RC} {last}",
    "stages/more": ", every {every} {every|row} from {RC} {first} to {RC} {last} and at {RC} {more}",
    "stages/sizes": "({sizes}) {rows}",
    "stages/at": ", at {RC} {rows}",
    "at_rows": "{@rows_listed}, each time down to where it was latched up last{@sooner}",
    "sooner": ", at most down to the {RC} named before, and sooner where its {ST} is about to be moved, cast off, held, taken off"
    " or hung with another",
}

PATTERNS = {
    "start_chart": "with the next row begin {@fabric_by}the chart {chart}, {@area}, {@first_column} on {start:needle}",
    "fabric_by": "“{fabric}” by ",
    "area/whole": "on all {STS}{@but_ends}, now on needles {@span}",
    "but_ends": " but the {edge} at each end of the work",
    "area/panel": "on needles {@span} alone{@plain_ends}",
    "area/one": "on needle {first:needle} alone{@plain_ends}",
    "plain_ends": ", plain on the {edge} {edge|st} at each end of the work",
    "first_column": "its first column",
    "first_column/repeat": "its repeat starting",
    "stop_chart": "the chart {chart} ends here: knit plain from now on, unless another begins",
    "stop_chart_on": "the chart {chart} ends on needles {@span}: knit plain there from now on, unless another begins",
    "start_stripes/plate": "from the next row knit “{fabric}”, plate {tension}, in stripes, repeated from the first:"
    " {@stripes}; {@carrying}",
    "start_stripes": "from the next row knit “{fabric}”, tension {tension}, in stripes, repeated from the first:"
    " {@stripes}; {@carrying}",
    "stripe": "{rows} {rows|row} of {yarn}",
    "carrying": "every yarn broken off at the end of its stripe",
    "carrying/all": "{yarns} carried up the side",
    "carrying/some": "{yarns} carried up the side, any other broken off at the end of its stripe",
    "stop_stripes": "end the stripes “{fabric}”",
}

JOINS = {
    "edge_is": "the {where} edges from {RC} {from_row} to {RC} {to_row} make the {edge}",
    "gap_is": "the inner edges of the {gap:ordinal} gap from the left, from {RC} {from_row} to {RC} {to_row}, make the {edge}",
    "edge_is/one": "the {where} edge from {RC} {from_row} to {RC} {to_row} makes the {edge}",
    "join_edges": "{way} {@seams}{@turn}{@matched}{@eased}{@how}{@strips}{@thread}",
    "seam": "{one} to {other}",
    "seam/own": "{one} to its {other}",
    "seam/closed": "{one} upon itself",
    "seams/copies": "{one}: {others}",
    "seams/copy": "of the {copy} to {other}",
    "side": "{edges} from its {begin}",
    "then": ", then ",
    "edges": "{edges} of the {piece}",
    "edges/copy": "{edges} of the {copy} {piece}",
    "edges/each": "{edges} of each {piece}",
    "edges/next": "{edges} of the {piece} (next)",
    "edges/next_one": "{edges} of the next one",
    "edge": "the {edge}",
    "edge_part": "{half} {edge}",
    "edge_part/row": "{half} part of the {edge}",
    "turn/own": ", each to its own, {times} {times|seam}",
    "turn/next": ", and so on, {times} {times|seam}",
    "turn/round": ", and the last one to the first, {times} {times|seam}",
    "matched/ratio": ", {ratio_rows} {ratio_rows|row} to {ratio_stitches} {ratio_stitches|st}",
    "matched/rows": ", row for row, {rows} {rows|row}",
    "matched/lengths": ", {one_mm:cm} cm to {other_mm:cm} cm",
    "eased": ", easing in up to {easing:cm} cm",
    "eased/second": ", easing in up to {easing:cm} cm of the second",
    "eased/second_too": ", and up to {easing:cm} cm of the second",
    "eased/by": ", easing in {beyond:cm} cm, give or take {easing_mm:cm} cm",
    "eased/pleats": ", taking up {beyond:cm} cm in the folds, give or take {easing_mm:cm} cm",
    "eased/stretching": ", stretching it {beyond:cm} cm, give or take {easing_mm:cm} cm",
    "how/open": ", loop for loop, by grafting, or on the bed, both on the same needles, with 1 row knitted, 2 to 3 numbers looser,"
    " and cast off",
    "how/open/plate": ", loop for loop, by grafting, or on the bed, both on the same needles, with 1 row knitted, one plate looser,"
    " and cast off",
    "how/no_tail": ", loop for loop with a new end of yarn, four times as long as the row",
    "how/grafted": ", loop for loop with the long tail",
    "how/at_tail": ", loop for loop with the long tail, which hangs there",
    "strips": ", and on along the ends of {strips}",
    "strips/beyond": ", {beyond:cm} cm in all, give or take {easing_mm:cm} cm",
    "strip": "{rows} {rows|row} of {name}",
    "thread/tail": ", with the tail",
    "thread/new": ", with a new length of {thread_cm} cm",
    "thread/new_each": ", with a new length of {thread_cm} cm each",
    "thread/either": ", with the tail, or where none hangs with a new length of {thread_cm} cm",
}

SENTENCES = {**SETTING_UP, **KNITTING, **PARTING, **EDGINGS, **PATTERNS, **JOINS}
