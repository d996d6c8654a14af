"""German words for what the proof finds, and for printed words that do not read."""

from __future__ import annotations

from walewright.report.wording import Wording

_PLAN = {"fault-of-the-plan": "das ist ein Fehler der Planung, nicht des Quelltextes: bitte mit dem Quelltext melden"}
_WORDS = {"fault-of-the-words": "das ist ein Fehler der Worte, nicht des Quelltextes: bitte mit dem Quelltext melden"}

WORDINGS: dict[str, Wording] = {
    "bed-refuses": Wording(
        "{block} lässt sich nicht wie geplant stricken: {refusal}",
        notes={"stopped": "das Nadelbett hält bei Handgriff {move} von {block} an ({fault})"},
        helps=_PLAN,
    ),
    "needle-missing/no-row": Wording(
        "`{block}` braucht {needed} Nadeln nebeneinander, und ohne {missing:and} hat das Nadelbett höchstens {room}",
        labels={"this-bed": "dieses Nadelbett"},
        helps={
            "narrower": "schmaler stricken, oder in Bahnen von höchstens {room} Nadeln",
            "replace-needles": "bei {missing:and} neue Nadeln einsetzen, oder welche vom Ende des Nadelbetts",
        },
    ),
    "needle-missing/from-centre": Wording(
        "`{block}` braucht {missing:and} und kann nicht daneben liegen: Rippen und Muster werden von der Mitte aus gezählt",
        labels={"this-bed": "dieses Nadelbett"},
        helps={"replace-needles": "bei {missing:and} neue Nadeln einsetzen, oder welche vom Ende des Nadelbetts"},
    ),
    "knitted-otherwise/counts": Wording("`{name}`: gezählt {counted}, gestrickt {knitted}; {where}", helps=_PLAN),
    "knitted-otherwise/garment": Wording("{otherwise}", helps=_PLAN),
    "knitted-otherwise/pattern": Wording(
        "gezählt {counted}, gestrickt {knitted}; {where}", labels={"joined-here": "hier verbunden"}, helps=_PLAN
    ),
    "knitted-otherwise/seam": Wording(
        "die Naht entlang {side:/ + } ist mit {counted} Reihen gezählt und mit {knitted} gestrickt",
        labels={"joined-here": "hier verbunden"},
        helps=_PLAN,
    ),
    "lace-unpaired/decrease": Wording(
        "Teil `{piece}` hat an Nadel {needle} in Reihe {row} eine Abnahme und kein Loch dazu", helps=_PLAN
    ),
    "lace-unpaired/hole": Wording(
        "Teil `{piece}` hat an Nadel {needle} in Reihe {row} ein Loch und keine durch zwei Maschen gezogene Masche dazu",
        helps=_PLAN,
    ),
    "long-float": Wording(
        "`{yarn}` läuft als Spannfaden über {needles} Nadeln ({length:.1f}), in `{within}`",
        labels={"knitted-here": "hier gestrickt"},
        notes={
            "catches": "an mehr als {most_stitches} Maschen oder {most} losem Garn bleiben Finger und Knöpfe hängen",
            "floats": "{size}: {pieces:/; }",
        },
        helps={
            "lift-it": (
                "ihn einfangen: wenn eine solche Reihe gestrickt ist, den Spannfaden von `{yarn}` mit einem Decker auf die Nadel "
                "in seiner Mitte heben, über deren Masche: die nächste Reihe strickt beide zusammen; oder dazwischen eine Masche "
                "in diesem Garn zeichnen"
            ),
        },
    ),
    "words-contradict/chart": Wording("Strickschrift {chart}: {fault}"),
    "words-contradict/chart-twice": Wording("es gibt zwei Strickschriften {chart}"),
    "words-contradict/step": Wording("{section}: das ist Schritt {number}, nicht {printed}"),
    "words-contradict/ticks": Wording("{section}: was unter Schritt {number} abgehakt wird, sagt der Schritt nicht"),
    "words-contradict/section": Wording("{section}: {fault}"),
    "words-knit-otherwise/fabric": Wording(
        "die gedruckten Worte für {name} stricken etwas anderes, als geplant ist",
        notes={"reading-back": "beim Zurücklesen: {block}: {refusal}"},
        helps=_WORDS,
    ),
    "words-knit-otherwise/left-free": Wording("die gedruckten Worte lassen `{edge}` von Teil `{piece}` frei", helps=_WORDS),
    "words-knit-otherwise/order": Wording("die gedruckten Worte sagen {printed}, geplant ist {planned}", helps=_WORDS),
    "words-knit-otherwise/stop": Wording("die gedruckten Worte enden bei {block}: {refusal}"),
    "words-knit-otherwise/taken-up": Wording("die gedruckten Worte fassen `{edge}` von Teil `{piece}` auf", helps=_WORDS),
    "words-no-sizes": Wording("der Text beginnt nicht mit seinen Größen"),
    "words-no-such-size": Wording("eine Größe mit der Nummer {number} gibt es nicht; der Text gilt für {sizes_known}"),
    "words-size-count/readings": Wording("eine Zahl hat {readings} Werte, und der Text {sizes_known} Größen"),
    "words-size-count/size": Wording("das gilt für Größe {size}, und der Text hat {known:and}"),
    "words-unreadable/chart": Wording("Strickschrift {chart}: {fault}"),
    "words-unreadable/line": Wording("diese Zeile ist keine Überschrift, kein Schritt und kein Hinweis"),
    "words-unreadable/no-sections": Wording("der Text hat keine Abschnitte"),
    "words-unreadable/sentence": Wording("das ist kein gedruckter Satz", notes={"from-there": "nicht verstanden ab: {rest}"}),
}

PLACES: dict[str, str] = {
    "at/chart-first": "Reihe {row}, unter der Strickschrift {chart}: Nummer ihrer ersten Nadel",
    "at/chart-in-work": "Reihe {row}, unter der Strickschrift {chart}: Nadeln in Arbeit",
    "at/chart-last": "Reihe {row}, unter der Strickschrift {chart}: Nummer ihrer letzten Nadel",
    "at/chart-needles": "Reihe {row}, unter der Strickschrift {chart}: Nadeln",
    "at/chart-rows": "Reihe {row}, unter der Strickschrift {chart}: Reihen",
    "at/chart-stitches": "Reihe {row}, unter der Strickschrift {chart}: Maschen",
    "at/stretch-begins": "wo der Abschnitt von `{piece} {edge}` beginnt",
    "at/stretch-ends": "wo der Abschnitt von `{piece} {edge}` endet",
    "at/gained": "Reihe {row}, zugenommene Masche an Nadel {needle}",
    "at/lost": "Reihe {row}, abgenommene Masche an Nadel {needle}",
    "at/edge-rows": "Reihe {row}, {side:term}e Kante: Reihen",
    "at/first-row": "erste Reihe",
    "at/hung-back": "Reihe {row}, wieder eingehängt {side:term}s der Mitte",
    "at/latched-at-once": "Reihen einer Spalte, die auf einmal hochgehäkelt werden",
    "at/latched-rows": "Reihen {first} bis {last}, hochgehäkelte Maschen von {fabric}",
    "at/latched-wales": "Reihe {row}, hochgehäkelte Maschenstäbchen von {fabric}",
    "at/edging-rows": "Reihen der Blende am Ende, über alle ihre Maschen in ihrem eigenen Garn",
    "at/fold": "Reihe {row}, ihre am Bruch hochgehängten Maschen",
    "at/needles-back": "Reihe {row}, Maschen auf Nadeln, die wieder in Arbeit sind",
    "at/needles-out": "Reihen {first} bis {last}, Maschen auf Nadeln außer Arbeit",
    "at/of-centre": "Reihe {row}, {side:term}s der Mitte",
    "at/opening": "`{opening}`",
    "at/opening-above": "`{opening}`, darüber angeschlagene Maschen",
    "at/opening-start": "`{opening}`, an ihrem Beginn abgenommene Maschen",
    "at/other-yarn": "Reihen in anderem Garn oder anderer Maschenweite als der ihres Gestricks",
    "at/part-last": "`{opening}`, {part:term}e Hälfte, Reihe {row}: Nummer der letzten Nadel",
    "at/part-rows": "`{opening}`, {part:term}e Hälfte, Reihe {row}: Reihen",
    "at/parts": "`{opening}`, Reihe {row}: Hälften",
    "at/end-rows": "{end}: Reihen",
    "at/end-first-row": "{end}: erste Reihe",
    "at/end-layers": "{end}: Reihenenden, bei einem Umschlag die beider Lagen zusammen",
    "at/edging-end": "{side:term}es Ende von {edging} an {piece}",
    "at/band-end": "`{end}` von {band}",
    "at/rib-of-band": "Reihen ihrer Rippen, hochgehäkelte Maschen",
    "at/rows": "Reihen",
    "at/seam-charts": "Naht von `{one} {one_edge}` und `{other} {other_edge}`: Strickschriften daran",
    "at/seam-column": "Naht von `{one} {one_edge}` und `{other} {other_edge}`: Spalte von {chart} links von {piece}",
    "at/seam-first-row": "Naht von `{one} {one_edge}` und `{other} {other_edge}`: erste Reihe von {chart}",
    "at/seam-rows": "Naht von `{one} {one_edge}` und `{other} {other_edge}`: Reihen von {chart}",
    "at/slot-cast-on": "`{slot}`, Nadeln {first} bis {last} in Reihe {row}: wieder angeschlagene Maschen",
    "at/slot-closed": "`{slot}`, Nadeln {first} bis {last} in Reihe {row}: geschlossene Maschen",
    "at/slot-empty": "`{slot}`, Nadeln {first} bis {last} in Reihe {row}: leere Nadeln",
    "at/slot-on-waste": "`{slot}`, Nadeln {first} bis {last} in Reihe {row}: Maschen auf Hilfsgarn",
    "at/slot-row": "`{slot}`, Nadeln {first} bis {last} in Reihe {row}: Reihe",
    "at/start": "Anfang",
    "at/wedge-fewest": "{wedge}, {side:term}e Kante, Reihen {first} bis {last}: wenigste Reihen dieser Maschen",
    "at/wedge-group": "{wedge}, {side:term}e Kante, Reihen {first} bis {last}: Reihen der {stitches} Maschen ab Nadel {needle}",
    "at/wedge-reach": "{wedge}, {side:term}e Kante, Reihen {first} bis {last}: Reihen, die bis zur Kante reichen",
    "at/within-row": "Reihe {row}, von ihrer ersten bis zu ihrer letzten Masche",
}
"""Where what was knitted is compared with what was counted."""

PHRASES: dict[str, str] = {
    **PLACES,
    "described-here": "{name} ist hier beschrieben",
    "edge-and-copy": "`{piece} {edge}`{copy:? ({copy})}",
    "edge-free": (
        "`{edge}` von Teil `{piece}` bleibt frei: {glued:?so zusammengesetzt, aber nicht auf dem Nadelbett|auf dem Nadelbett, aber "
        "nicht so zusammengesetzt}"
    ),
    "falls-apart": "auf dem Nadelbett zerfällt das Kleidungsstück in {parts:Stück|Stücke}, zusammengesetzt in {glued}",
    "float-at": "bei RZ {counter}, vor Reihe {row}, über die Nadeln {needles}{more:? und {more} weitere}",
    "float-of": "`{piece}`, {at}",
    "floats-of": "`{piece}`, {floats} Spannfäden: der erste {at}; der letzte bei RZ {last}",
    "not-folded": "die erste Reihe des Randabschlusses von {fabric} wird nicht hochgehängt, also ist er nicht umgeschlagen",
    "ends-not-sewn": (
        "beim Verbinden von {one} mit {other} werden die Enden von `{piece}{edging:? {edging}}` nicht mit zusammengenäht"
    ),
    "ends-sewn-otherwise": (
        "beim Verbinden von {one} mit {other} werden die Enden von `{piece}{edging:? {edging}}` zusammengenäht und liegen woanders"
    ),
    "folded": "{fabric} ist nach {front:?vorn|hinten} umgeschlagen, und dort wäre die Innenseite zu sehen",
    "hangs-elsewhere": "{hung} hängt nicht an dem, womit es zusammengesetzt ist",
    "hangs-on-nothing-glued": "{hung} hängt an etwas, womit nichts zusammengesetzt ist",
    "join-done": "`{way}` {one:/, dann } ab `{one_end}` mit {other:/, dann } ab `{other_end}`",
    "joined-otherwise": "{one} ist anders {other:?mit {other}|in sich} verbunden, als es zusammengesetzt ist",
    "linked-wrong-sides": "`{piece}` und `{other_piece}` sind mit den Innenseiten aneinander auf dem Nadelbett verbunden",
    "loops-open": "die offenen Maschen von `{edge}` von Teil `{piece}` fasst nichts auf",
    "not-joined": "{one} ist nicht so {other:?mit {other}|in sich} verbunden, wie es zusammengesetzt ist",
    "nothing-more": "nichts mehr",
    "right-side-in": "an Teil `{piece}` hängt etwas mit der Außenseite nach innen",
}
