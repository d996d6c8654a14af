"""Words for what is cut into a piece: necks, openings, slots and buttonholes."""

from __future__ import annotations

from walewright.report.wording import Wording

_ROOM = Wording(
    "{what} leaves nothing of the piece beside it",
    labels={"wide": "{taken} wide"},
    notes={
        "piece-wide": "the piece {where} is {width} wide",
        "beside": "{side:term} of it, {where}, the piece has {room}",
        "beyond": "on the {side:term}, {where}, it goes {over} beyond the edge of the piece",
    },
    helps={
        "narrower": "make it {by} narrower at least, or the piece as much wider there",
        "narrower-or-inwards": "make it {by} narrower at least on that side, or move it as far towards the centre",
    },
)
WORDINGS: dict[str, Wording] = {
    "beyond-the-edge/buttonholes": Wording(
        "the buttonholes of piece `{piece}` leave nothing of the piece beside them",
        labels={"in-from": "{reach} in from the {edge:term} edge"},
        notes={"room": "the piece has {room} there"},
        helps={"nearer": "bring them {over} nearer to the edge at least"},
    ),
    "beyond-the-edge/room": _ROOM,
    "buttonholes-too-close": Wording(
        "{count} buttonholes need {needed} rows from the first to the last",
        labels={"here": "{rows} here"},
        helps={"apart": "bring their ends {lacking} further apart, or make fewer of them"},
    ),
    "edge-past-opening": Wording(
        "{what} ends at `{end}`, below `{to_level}`",
        labels={"to": "to `{to_level}`"},
        notes={"levels": "levels of piece `{piece}` from the start up: {levels}"},
        helps={"another-level": "name `{end}`, or a level below it"},
    ),
    "named-in-opening": Wording(
        "the edges of {what} go by its own name",
        labels={"called": "called `{called}`"},
        helps={"leave-name-out": "leave out `called {called}`; where the edge is meant, the opening's name stands for it"},
    ),
    "neck-flat": Wording(
        "the flat part of {what} is {wider:?wider than the neck|less than the whole of a square neck}",
        labels={"flat": "flat {flat}", "neck": "neck {width}"},
        helps={"narrower": "{wider:?make the flat part narrower, or the neck wider|leave it out: a square neck is all flat}"},
    ),
    "neck-too-deep": Wording(
        "{what} is as deep as the piece is high, or deeper",
        labels={"deep": "{depth} deep", "at": "`{top}` at {height}"},
        helps={"less": "make it less deep, by more than this: {by}"},
    ),
    "neck-too-wide": _ROOM,
    "no-buttonholes": Wording(
        "`{owner}` has no buttonholes",
        labels={"here": "one for each of them"},
        helps={"own-count": "name the piece or band that has them, or write how many, such as `6`"},
    ),
    "no-width-left/opening": Wording(
        "{what} has no width left at `{level}`",
        labels={"wide": "{width} wide"},
        helps={"less": "bring its edges {short} less together"},
    ),
    "opening-at-start": Wording(
        "{what} begins at the start, where no row is knitted yet",
        labels={"from": "from `{from_level}`"},
        helps={"own-level": "give it a level of its own, two rows up or more"},
    ),
    "odd-or-even-parted": Wording(
        "`{opening}` parts the piece between two stitches in the middle, so the number of stitches cannot be left open",
        labels={"parts": "takes no stitch where it parts", "either": "`odd or even`"},
        helps={
            "leave-out": "leave `odd or even` out of the piece",
            "stitch-at-point": "or write `centre stitch` in its place: then the neck has a stitch at its point",
        },
    ),
    "openings-in-turn": Wording(
        "`{one}` and `{other}` of piece `{piece}` begin or end in another order from size to size",
        labels={"one": "from {one_low} to {one_high}", "other": "from {other_low} to {other_high}"},
        notes={"one-text": "all sizes are worked by one text, with the same parts one after the other"},
        helps={"all-sizes": "let the same one begin first, end first and lie at the left in all sizes"},
    ),
    "openings-overlap": Wording(
        "`{one}` and `{other}` of piece `{piece}` are open in the same rows, with nothing of the piece between them",
        labels={"one": "from {one_low} to {one_high}", "other": "from {other_low} to {other_high}"},
        helps={
            "end-before": "let one end before the other begins: they share {shared}",
            "further-apart": "or let them lie further apart, by more than this: {over}",
        },
    ),
    "openings-touch": Wording(
        "`{upper}` of piece `{piece}` begins in the row where `{lower}` ends",
        labels={"from": "from {low}", "to": "to {high}"},
        notes={"whole-rows": "rows over the whole width join the parts of one before the piece parts for the other"},
        helps={"own-level": "let `{upper}` begin at a level of its own, two rows up or more"},
    ),
    "needles-out/end": Wording(
        "piece `{piece}` ends with edging `{edging}`, which is knitted on every needle of the last row",
        labels={"rows": "out of work to the end"},
        helps={"end": "let them come back to work at a level below the top, or end the piece without the edging"},
    ),
    "needles-out/start": Wording(
        "piece `{piece}` begins {along:?along edges|with an edging}, which takes a loop on every needle of the start",
        labels={"rows": "out of work from the start", "start": "{along:?hung on edges|an edging here}"},
        helps={"start": "let them go out at a level above the start, or begin the piece {along:?by itself|without the edging}"},
    ),
    "needles-out/every": Wording(
        "needles of piece `{piece}` cannot be out of work so",
        labels={"which": "these needles"},
        helps={"every": "write every {fewest}rd needle at the nearest, and not so many that none lies within the width"},
    ),
    "needles-out/near": Wording(
        "needles out of work in piece `{piece}` lie at its edge, or side by side",
        labels={"which": "these needles"},
        helps={"apart": "place them three stitches from the edge and from one another, or more"},
    ),
    "needles-out/worn": Wording(
        "piece `{piece}` is no narrower as it is worn than as it is knitted, so it is not folded along its needles out of work",
        labels={"worn": "worn {worn}, knitted {width}"},
        helps={"worn": "write how wide it is when it is folded, or leave the width out"},
    ),
    "needles-out/other-work": Wording(
        "{what} shares rows of piece `{piece}` with needles that are out of work",
        labels={"rows": "needles out", "other": "shares rows"},
        helps={"other-rows": "let them go out above it or come back below it, at levels of their own"},
    ),
    "needles-out/fabric": Wording(
        "fabric `{fabric}` of piece `{piece}` is worked by needles, and some of them are out of work",
        labels={"rows": "needles out"},
        helps={"fabric": "knit the piece plain, or in stripes"},
    ),
    "slots-overlap": Wording(
        "`{one}` and `{other}` of piece `{piece}` lie across one another, or touch, at `{level}`",
        labels={"one": "one", "other": "the other"},
        helps={"apart": "place them further apart, by {by} at least, or in rows of their own"},
    ),
    "reserved-name/opening": Wording(
        "every piece has an edge `{name}` already",
        labels={"opening-called": "an opening called so", "slot-called": "a slot called so"},
        notes={"kept": "kept names: {kept}"},
        helps={"rename": "call it by another name"},
    ),
    "slot-at-edge": Wording(
        "{what} cannot be at `{level}`: there are no rows {start:?below|above} it",
        labels={"at": "at `{level}`"},
        helps={"own-level": "give it a level of its own {start:?above the start|below the top}"},
    ),
}
