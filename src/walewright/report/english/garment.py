"""Words for a garment put together and worn."""

from __future__ import annotations

from walewright.report.wording import Wording

_PASSING = {
    "passes": (
        "{size}: {relaxed:.1f} at rest, {stretched:.1f} stretched; the {part:term} is {figure:.1f}"
        "{needed:?, and {needed:.1f} are needed}"
    ),
    "source": "{part:term}: {credit}",
}

CAUTIONS: dict[str, str] = {
    "caution/us-hood": "United States: no drawstring at all in the hood or neck of children’s upper outerwear, sizes 2T to 12 "
    "(US CPSC, Drawstrings in Children’s Upper Outerwear, FAQ; 16 CFR 1120.3(b); ASTM F1816-97)",
    "caution/us-waist": "United States: at the waist or bottom, sizes 2T to 16, at most 7.6 cm (3 in) of drawstring outside its "
    "channel, no toggles or knots at its free ends, and the string sewn down if it is one piece (same source)",
    "caution/eu-small": "European Union: no cord or drawstring in the hood, head and neck area up to 7 years or 134 cm "
    "(Finnish Safety and Chemicals Agency, Cords and drawstrings on children’s clothing, on EN 14682)",
    "caution/eu-older": "European Union: no drawstring with free ends in the head and neck area from 7 to 14 years (same source)",
}

WORDINGS: dict[str, Wording] = {
    "band-up-both-sides": Wording(
        "band `{band}` is to run along `{name}`, which is not one edge but {count}: {edges:and}",
        labels={"picked-up-here": "picked up here"},
        notes={"one-line": "a band is one line; each of these is a line of its own"},
        helps={"a-band-for-each": "name one of them, and write a band for each of the others"},
    ),
    "copies-by-size": Wording(
        "`{first}` is knitted before `{then}` in some sizes and after it in others, as these have another number of copies",
        labels={"often": "{copies:or} times, by size"},
        notes={"order": "{sizes:and}: {order:names`}"},
        helps={
            "same-order": "join first what both of them need, and only then what has to stay open until one of them is knitted",
            "make-apart": "or build sizes with the same number together: {groups:or}",
        },
    ),
    "copies-in-doubt": Wording(
        "each copy of the {piece} could be joined to one copy of the {other} or to another",
        labels={"joined-here": "joined here", "joined-before": "joined already"},
        notes={"ring-or-pairs": "by both seams all copies are one ring, or each is a pair with its own"},
        helps={
            "to-the-next": "if all of them go round: write `each to the next all round`",
            "to-its-own": "if each is by itself: write `each to its own`",
        },
    ),
    "copies-left-over": Wording(
        "the {piece} is knitted {copies} times, and there is nothing to join {idle} of them to",
        labels={"piece": "the {piece}", "joined-here": "joined here"},
        helps={"knit-fewer": "write `knit {joined}`, or name what the others are joined to"},
    ),
    "copies-mixed": Wording(
        (
            "`{hung}` is hung {times} times, on a {piece} that is knitted {copies} times: nobody can say which copy of "
            "the one lies on which of the other"
        ),
        labels={"hung-here": "hung here"},
        helps={
            "pieces-of-their-own": (
                "describe the copies that one of them lies on as pieces of their own, or name all copies in one line"
            ),
        },
    ),
    "edge-half-joined": Wording(
        "`{edge}` is on both sides of the {piece}, and nothing is joined to `{free}`",
        labels={"joined-here": "joined here"},
        notes={"stays-open": "it stays as it is, an open edge"},
        helps={"name-the-side": "if that is meant, name the side that is joined: {sides:or}"},
    ),
    "edge-used-twice/again": Wording(
        "`{edge}` has been used up already: every stretch of an edge is joined, or taken up, once",
        labels={"used-here": "used here", "already-used": "and already used here"},
        notes={"copies": "the {piece} is knitted {copies} times; a band is knitted once for each"},
        helps={"take-one-out": "take one of the two out, or name another edge"},
    ),
    "edge-used-twice/edged": Wording(
        "`{edge}` has been used up already: `{edging}` is hung on the first row of `{piece}` and cast off",
        labels={"used-here": "used here", "edged-here": "here it is edged"},
        helps={"knit-first": "let `{edging}` be `knitted first`: the piece grows out of it, and its start stays free"},
    ),
    "finished-otherwise": Wording(
        "`{measurement}` is stated, and all round below the armholes the pieces come to something else",
        labels={"stated": "stated"},
        notes={"knitted": "{size}: stated {stated:.1f}, knitted {knitted:.1f}"},
        helps={"measure-it": "write `finished {measurement} round {piece} {at}, fits {fits}`, and it is measured"},
    ),
    "whole-off": Wording(
        "`{measurement}` is knitted more than two stitches off what is wanted",
        labels={"wanted": "so large it is wanted"},
        notes={"beside": "{size}: wanted {wanted:.1f}, knitted {knitted:.1f}: {off:.1f} {more:?too much|too little}"},
        helps={
            "for-seams": "count a stitch for each side of a sewn seam in the widths of the pieces",
            "leave-free": "or let the width of a piece be free, `between` two widths: then the whole decides",
            "odd-or-even": "or let pieces be `odd or even`, so that their widths come in single stitches",
        },
    ),
    "join-not-in-line/knitted-once": Wording(
        "each is joined to the next, and the band `{band}` is knitted once",
        labels={"next": "each to the next"},
        helps={"leave-out-or-lines": "leave that out, or knit what the band lies along several times"},
    ),
    "join-not-in-line/no-one-line": Wording(
        "{one} cannot be put to {other}: the edges of a side do not make one line",
        labels={"joined-here": "joined here"},
        notes={"gap": "{side}: nothing joins the end of `{edge}` to `{next}`"},
        helps={
            "join-between": ("join first what lies between the edges, such as a shoulder between two halves of an armhole"),
        },
    ),
    "lap-apart": Wording(
        "{over} cannot be laid over {under}: they do not lie at the two edges of one opening",
        labels={"lapped-here": "lapped here"},
        helps={"name-two": "name the two bands, or the two edges, that stay free in front"},
    ),
    "lets-through": Wording(
        "the {part:term} goes through the opening at `{opening}`, and must not",
        labels={"never-passes": "never passes"},
        notes=_PASSING,
        helps={"smaller": "make the opening smaller, or the lap wider"},
    ),
    "line-closed": Wording(
        "when {along} can be hung, the two ends of the line are joined already: a ring does not lie on a straight bed",
        labels={"hung-here": "hung here", "joined-before": "joined before"},
        helps={"join-later": "let one of these joins come later, or begin the line where the edges stay open"},
    ),
    "line-not-in-order": Wording(
        "{along} cannot be hung side by side in this order",
        labels={"hung-here": "hung here"},
        notes={
            "apart": "`{edge}` does not end where `{next}` begins",
            "between": "between them lies {edges}",
            "nameless": (
                "between them the {piece} has an edge without a name{high:?, from `{low}` to `{high}`}: give it the name of the "
                "one it goes on from, or one of its own"
            ),
            "clockwise": (
                "from the left needle to the right, with the {side:term} side to the knitter, edges are hung clockwise as the "
                "piece lay on the bed: up its left edge, along its top to the right, down its right edge"
            ),
            "anticlockwise": (
                "from the left needle to the right, with the {side:term} side to the knitter, edges are hung anticlockwise as the "
                "piece lay on the bed: up its right edge, along its top to the left, down its left edge"
            ),
        },
        helps={
            "name-once": "if each copy of the {piece} is to have its own, name its edge once",
            "join-between": "{otherwise:?else }join what lies between them, or name the edge that lies between them too",
        },
    ),
    "line-not-mirrored": Wording(
        (
            "{hung} is begun on the {piece} as {model_hung} is on the {model}, which is its mirror image: their seams lie "
            "at opposite sides"
        ),
        labels={"hung-here": "hung here", "and-here": "and here"},
        helps={"mirrored-corner": "begin it at the mirrored corner"},
    ),
    "loops-left-open": Wording(
        "nothing takes up the open loops of {edges:and}",
        notes={"runs-down": "when the waste yarn is taken out, the fabric runs down from there"},
        helps={
            "take-them-up": "take them up with a band, a join (grafted or linked), an edging or a piece begun along them",
            "close-them": "or close them: `with e-wrap` or `with chain` for a start, `cast off` for an end, a neck or a slot",
        },
    ),
    "named-for-other-side": Wording(
        "`{piece}` opens where the {worn:term} front does, seen from the wearer",
        labels={"called": "called {called}"},
        notes={
            "left-opens-right": "a left front opens at its right edge, as it hangs on the bed with its purl side in front",
        },
        helps={"other-side": "call it by its other side, or shape its other edge"},
    ),
    "nothing-to-measure/goes-round": Wording(
        "nothing goes from a free edge to another there: it goes round, or is not joined at that level",
        labels={"measured-here": "measured here"},
        helps={"measure-round": "measure `round` the piece in place of `across` it, or join the pieces side by side"},
    ),
    "nothing-to-measure/no-length": Wording(
        "there is no such length",
        labels={"measured-here": "measured here"},
    ),
    "nothing-to-measure/no-opening": Wording(
        "`{edge}` is no edge of an opening",
        labels={"nothing-passes": "nothing passes here"},
        helps={"name-the-edge": "name the band, or the edge, that stays free"},
    ),
    "nothing-to-measure/no-ring": Wording(
        "nothing goes all round there: the edges of the pieces are not joined to a ring",
        labels={"measured-here": "measured here"},
        helps={
            "join-the-pieces": (
                "join the pieces, or say what laps over what: `lap right_front edge over left_front edge, 8 cm wide`"
            ),
        },
    ),
    "nothing-to-measure/size-unknown": Wording(
        "it is not known how large the {part:term} is",
        labels={"passes": "passes {part:term}"},
        helps={"write-it": "write it: `passes {part} of 52 cm`, or a row of the sizes"},
    ),
    "opening-too-tight": Wording(
        "the {part:term} does not go through the {opening}",
        labels={"too-tight": "too tight"},
        notes=_PASSING,
        helps={
            "wider": "make the opening wider or deeper, give it an edge that stretches more, or an opening that buttons",
            "stretches-more": "if a swatch stretches more: `through {place} passes {part}, stretches to 160 %`",
        },
    ),
    "reach-too-short": Wording(
        "the sleeve `{sleeve}` ends {short} and more before the wrist",
        labels={"way": "{way:term}"},
        notes={"reach": "{size}: from the middle of the back neck {reach:.1f}, the body's {body:.1f}"},
        helps={
            "longer": ("make the sleeve longer: from the middle of the back neck to the wrist, less what the body's pieces reach"),
        },
    ),
    "require-fails/on-the-garment": Wording(
        "it is required that {required}, and it is not so{because:?: {because}}",
        labels={"fails": "fails in {sizes}"},
        notes={"against": "{size}: {found:.1f} against {wanted:.1f}"},
        helps={
            "less-by": "let it come out {by:.1f} less, or ask for more",
            "more-by": "let it come out {by:.1f} more, or ask for less",
        },
    ),
    "seam-twisted": Wording(
        (
            "`{piece} {edge}` and `{other_piece} {other_edge}` are both {side:term} edges: joined foot to foot, one of "
            "the pieces would be inside out"
        ),
        labels={"joined-here": "joined here"},
        helps={
            "left-to-right": "join a left edge to a right edge, as the pieces hung on the bed; a mirror image has them exchanged",
        },
    ),
    "seams-cross": Wording(
        "put together so, the garment has a hole through it that no body goes through: two of its seams cross",
        labels={"joined-here": "joined here"},
        helps={
            "exchanged": (
                "look for a piece that is joined to the wrong side of another: its two fronts, or its two sleeves, exchanged"
            ),
        },
    ),
    "smaller-than-body": Wording(
        "the garment is smaller than the body it is to fit: {fits}",
        labels={"to-fit": "to fit"},
        notes={"beside-body": "{size}: finished {finished:.1f}, body {body:.1f}"},
        helps={
            "it-stretches": (
                "if it is to be worn stretched, say so: `finished {measurement} {round:?round {round}|...}, fits {fits}, stretches`"
            ),
        },
    ),
    "start-draws-in": Wording(
        "the {piece} starts much narrower than the edges that it is begun along",
        labels={"begun-here": "begun here"},
        notes={"narrower": "{size}: {wide:.1f}, and the edges are {edges:.1f} long"},
        helps={"as-wide": "start it as wide as the edges are long, or a tenth less where it is to hold them in"},
    ),
    "start-too-full": Wording(
        "the {piece} starts much wider than the edges that it is begun along",
        labels={"begun-here": "begun here"},
        notes={"wider": "{size}: {wide:.1f}, and the edges are {edges:.1f} long"},
        helps={
            "as-edges": "leave the width out: `start along` and the edges makes it as wide as these are long",
            "fullness": "or leave it so, if it is to be a frill",
        },
    ),
    "start-on-both-sides": Wording(
        "the copies of `{piece}` are begun along `{name}`, which is not one edge but {count}: {edges:and}",
        labels={"begun-here": "begun here"},
        notes={"knitted-alike": "copies of a piece are knitted alike, each begun along the same edge as the others"},
        helps={"a-piece-for-each": "name one of them, and describe what is begun along another as a piece of its own"},
    ),
    "too-tight": Wording(
        "the {part:term} does not go through the {opening}",
        labels={"too-tight": "too tight"},
        notes=_PASSING,
        helps={
            "wider": "make the opening wider or deeper, give it an edge that stretches more, or an opening that buttons",
            "stretches-more": "if a swatch stretches more: `through {place} passes {part}, stretches to 160 %`",
        },
    ),
}
