"""Words for a garment put together and worn."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "band-up-both-sides": Wording(
        "band `{owner}` is to run along {stands}",
        labels={"picked-up-here": "picked up here"},
        notes={"band-line-each": "a band is one line; each of these is a line of its own"},
        helps={"name-them-write": "name one of them, and write a band for each of the others"},
    ),
    "copies-left-over": Wording(
        "the {name} is knitted {copies} times, and there is nothing to join {idle} of them to",
        labels={"the": "the {name}"},
        helps={"write-name-what": "write `knit {copies_2}`, or name what the others are joined to"},
    ),
    "copies-mixed": Wording(
        (
            "`{owner}` is hung {times} times, on a {owner_2} that is knitted {copies} times: nobody can say which copy of "
            "the one lies on which of the other"
        ),
        labels={"hung-here": "hung here"},
        helps={
            "describe-copies-them": "describe the copies that one of them lies on as pieces of their own, or name all copies in one line",
        },
    ),
    "edge-half-joined": Wording(
        "`{fact}` is on both sides of the {piece}, and nothing is joined to `{piece} {one_word}`",
        labels={"joined-here": "joined here"},
        notes={"stays-open-edge": "it stays as it is, an open edge"},
        helps={"if-meant-name": "if that is meant, name the side that is joined: {named}"},
    ),
    "edge-used-twice": Wording(
        "`{fact}` has been used up already: every stretch of an edge is joined, or taken up, once",
        helps={"take-two-out": "take one of the two out, or name another edge"},
    ),
    "finished-otherwise": Wording(
        "`{name}` is stated, and all round below the armholes the pieces come to something else",
        labels={"stated": "stated"},
        notes={"stated-cm-knitted": "{among}: stated {values:.1f} cm, knitted {values_2:.1f} cm"},
        helps={"write-measured": "write `finished {name} round {piece} {at}, fits {fits}`, and it is measured"},
    ),
    "join-not-in-line/cannot-put-edges": Wording(
        "{one} cannot be put to {other}: the edges of a side do not make one line",
        labels={"joined-here": "joined here"},
        helps={
            "join-first-what": "join first what lies between the edges, such as a shoulder between two halves of an armhole",
        },
    ),
    "lap-apart": Wording(
        "{over} cannot be laid over {under}: they do not lie at the two edges of one opening",
        labels={"lapped-here": "lapped here"},
        helps={"name-two-bands": "name the two bands, or the two edges, that stay free in front"},
    ),
    "lets-through": Wording(
        "the {part} goes through the opening at `{name}`, and must not",
        labels={"never-passes": "never passes"},
        helps={"make-opening-smaller": "make the opening smaller, or the lap wider"},
    ),
    "line-closed": Wording(
        "when {along} can be hung, the two ends of the line are joined already: a ring does not lie on a straight bed",
        labels={"hung-here": "hung here"},
        helps={"let-these-joins": "let one of these joins come later, or begin the line where the edges stay open"},
    ),
    "line-not-in-order": Wording(
        "{along} cannot be hung side by side in this order",
        labels={"hung-here": "hung here"},
    ),
    "line-not-mirrored": Wording(
        (
            "{owner} is begun on the {owner_2} as {owner_3} is on the {owner_4}, which is its mirror image: their seams lie "
            "at opposite sides"
        ),
        labels={"hung-here": "hung here", "here": "and here"},
        helps={"begin-mirrored-corner": "begin it at the mirrored corner"},
    ),
    "loops-left-open": Wording(
        "nothing takes up the open loops of {said:and}",
        notes={"when-waste-yarn": "when the waste yarn is taken out, the fabric runs down from there"},
        helps={
            "take-them-up": "take them up with a band, a join (grafted or linked), an edging or a piece begun along them",
            "close-them-start": "or close them: `with e-wrap` or `with chain` for a start, `cast off` for an end, a neck or a slot",
        },
    ),
    "named-for-other-side": Wording(
        "`{name}` opens where the {worn} front does, seen from the wearer",
        labels={"called": "called {called}"},
        notes={
            "left-front-opens": "a left front opens at its right edge, as it hangs on the bed with its purl side in front",
        },
        helps={"call-other-side": "call it by its other side, or shape its other edge"},
    ),
    "nothing-to-measure/edge-opening": Wording(
        "`{path}` is no edge of an opening",
        labels={"nothing-passes-here": "nothing passes here"},
        helps={"name-band-edge": "name the band, or the edge, that stays free"},
    ),
    "nothing-to-measure/known-how-large": Wording(
        "it is not known how large the {part} is",
        labels={"passes": "passes {part}"},
        helps={"write-row-sizes": "write it: `passes {part} of 52 cm`, or a row of the sizes"},
    ),
    "opening-too-tight": Wording(
        "the {part} does not go through the {spoken}",
        labels={"too-tight": "too tight"},
        helps={
            "make-opening-wider": "make the opening wider or deeper, give it an edge that stretches more, or an opening that buttons",
            "if-swatch-stretches": "if a swatch stretches more: `through {place} passes {part}, stretches to 160 %`",
        },
    ),
    "reach-too-short": Wording(
        "the sleeve `{sleeve}` ends {SHORT:g} cm and more before the wrist",
        labels={"way": "{way}"},
        notes={"middle-back-neck": "{among}: from the middle of the back neck {values:.1f} cm, the body's {body:.1f} cm"},
        helps={
            "make-sleeve-longer": "make the sleeve longer: from the middle of the back neck to the wrist, less what the body's pieces reach",
        },
    ),
    "seam-twisted": Wording(
        (
            "`{owner} {edge}` and `{owner_2} {edge_2}` are both {side} edges: joined foot to foot, one of the pieces would "
            "be inside out"
        ),
        labels={"joined-here": "joined here"},
        helps={
            "join-left-edge": "join a left edge to a right edge, as the pieces hung on the bed; a mirror image has them exchanged",
        },
    ),
    "seams-cross": Wording(
        "put together so, the garment has a hole through it that no body goes through: two of its seams cross",
        helps={
            "look-piece-joined": "look for a piece that is joined to the wrong side of another: its two fronts, or its two sleeves, exchanged",
        },
    ),
    "smaller-than-body": Wording(
        "the garment is smaller than the body it is to fit: {fits}",
        notes={"finished-cm-body": "{among}: finished {finished:.1f} cm, body {body:.1f} cm"},
        helps={"if-worn-stretched": "if it is to be worn stretched, say so: `{wording}, fits {fits}, stretches`"},
    ),
    "start-draws-in": Wording(
        "the {name} starts much narrower than the edges that it is begun along",
        labels={"begun-here": "begun here"},
        notes={"cm-edges-cm": "{among}: {wide:.1f} cm, and the edges are {edges:.1f} cm long"},
        helps={"start-wide-edges": "start it as wide as the edges are long, or a tenth less where it is to hold them in"},
    ),
    "start-on-both-sides": Wording(
        "the copies of `{owner}` are begun along {stands}",
        labels={"begun-here": "begun here"},
        notes={"copies-piece-knitted": "copies of a piece are knitted alike, each begun along the same edge as the others"},
        helps={"name-them-describe": "name one of them, and describe what is begun along another as a piece of its own"},
    ),
    "too-tight": Wording(
        "the {part} does not go through the {spoken}",
        labels={"too-tight": "too tight"},
        helps={
            "make-opening-wider": "make the opening wider or deeper, give it an edge that stretches more, or an opening that buttons",
            "if-swatch-stretches": "if a swatch stretches more: `through {place} passes {part}, stretches to 160 %`",
        },
    ),
}
