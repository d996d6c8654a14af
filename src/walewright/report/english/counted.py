"""English parts of sentences about what was counted, and about other figures that would do."""

from __future__ import annotations

PHRASES: dict[str, str] = {
    # ------------------------------------------------------------- figures written otherwise
    "allow-easing": "allow {lengths:and} of easing",
    "be-centred": "let `{fabric}` be centred",
    "change": "change {figures:and}",
    "end-of": "`{level}` of the {piece} be {lengths:and}",
    "end-too": "`{level}` be {lengths:and}",
    "figure-at": "{figure} at {lengths:and}",
    "in-sizes": "{amount} in {sizes}",
    "knit-looser": "knit it at {stitches} stitches to 10 cm or fewer",
    "let-ends-be": "let {ends:and} at the {least:?least|most}",
    "make-wide": "make the {piece} {lengths:and} wide at `{level}`",
    "narrow-it": "make it {cm} wide at the most",
    "range": "{least} to {most}",
    "wider-bed": "knit it on a bed of {needles} needles or more",
    "of-sizes": "{amount} ({sizes})",
    "several-at-a-time": "move several stitches at a time: `steps {cm:source} {times} times to {level}`",
    "would-do": "{figures:and} would work",
    # ------------------------------------------------------------- sizes and their figures
    "figures": "{sizes}: {figures:/; }",
    "in-size": "{size}: {note}",
    # ------------------------------------------------------------- joins
    "along-rows": "rows",
    "along-stitches": "stitches",
    "apart": "{count} apart",
    "ratio-against": "{one_count} against {other_count}, and not {rows} rows to {stitches} stitches",
    "counts-against": ("{one_count} ({one_cm:.1f}) against {other_count} ({other_cm:.1f}): {difference}, and no easing is allowed"),
    "first-longer": "the first {cm:.1f} {longer:?longer|shorter}",
    "not-as-longer": (
        "{one_cm:.1f} against {other_cm:.1f}: {found:.1f} longer, and it should be {longer} cm, {allowed:.1f} more or less"
    ),
    "not-eased": "{one_cm:.1f} against {other_cm:.1f}: {apart:.1f} apart, and {allowed:g} cm can be eased in",
    "nothing": "nothing",
    "rows": "{rows:row|rows}",
    "rows-and-stitches": "{rows:row|rows} and {stitches:stitch|stitches}",
    "sides": (
        "{one} {one_count}, {one_cm:.1f}; {other} {other_count}, {other_cm:.1f}: {difference}{longer:?, and {longer} cm are wanted}"
    ),
    "stitches": "{stitches:stitch|stitches}",
    # ------------------------------------------------------------- patterns
    "moved-at-both-ends": "{moved}, at one end before the next row and at the other after it",
    "no-pattern": "no pattern",
    "opening-between": "{widths:and} there, and an opening in its way",
    "opening-in-its-way": "opening `{opening}` is in its way from its row {row}",
    "parted-there": "the {piece} is parted by the {opening} there",
    "plain-row": "a plain row",
    "row-meets": "in row {row} of the seam {here} meets {there}",
    "row-of-pattern": "row {row} of `{fabric}`",
    "rows-left": "{rows:row is|rows are} left to `{level}`",
    "stitches-added": "{stitches:stitch is|stitches are} added",
    "stitches-held": "{stitches:stitch is|stitches are} held",
    "stitches-taken-off": "{stitches:stitch is|stitches are} taken off",
    "too-few-there": "{widths:and} there, {lacks} too few on its side",
    # ------------------------------------------------------------- what lies in a piece
    "edge-at-row": "the {side:term} edge of the {piece} at row {row}",
    "edging-of": "`{edging}` of the {piece}",
    "hole-wide": ("{hole}, {stitches:stitch|stitches} wide, {parts:?where the piece parts, at row|at row} {row}; {works:/; }"),
    "in-work-there": "{stitches:stitch is|stitches are} in work there",
    "on-an-end-needle": "it lies on an end needle",
    "panel-of": "the panel of `{fabric}` in the {piece}",
    "slot-at": "{slot} at row {row}",
    "weight-of": "of a {kind} {weight}",
    "zone-of": "`{fabric}` in the {piece}",
    # ------------------------------------------------------------- places on the bed
    "along": "along {along}",
    "at-start": "at the start",
    "bed": "{needles} needles",
}
