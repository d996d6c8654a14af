"""German words for yarns, fabrics, edgings, beds and what is joined."""

from __future__ import annotations

from walewright.report.wording import Wording

_EDGE_STITCHES = Wording(
    "{edge:Randmasche|Randmaschen}",
    labels={"edge": "{edge:Randmasche|Randmaschen}"},
    notes={"possible": "0 bis {most} sind möglich"},
)
_STRIPE_ROWS = Wording(
    "ein Streifen von {rows:Reihe|Reihen}", labels={"rows": "{rows:Reihe|Reihen}"}, notes={"possible": "1 bis {most} sind möglich"}
)
_WHICH_NUMBER = "auf die Einheit achten, und darauf, welche Zahl welche ist"
_ONE_STITCH = "auf die Einheit achten: es ist die Länge einer Masche, nicht einer Reihe"
_LEAVE_OR_KIND = {"leave-out": "das weglassen, oder dem Randabschluss eine dieser Arten geben"}
_FOLD_KINDS = {"kinds": "Randabschlüsse mit einer Bruchreihe: {kinds:`/, }"}
_IN_FULL = {"in-full": "eines dieser Teile ganz beschreiben"}
_SEVERAL = {"leave-out-or-several": "das weglassen, oder das Teil mehrmals stricken (`, knit 4`)"}

WORDINGS: dict[str, Wording] = {
    "absurd-count/edge-stitches": _EDGE_STITCHES,
    "absurd-count/stripe-rows": _STRIPE_ROWS,
    "absurd-count/strands": Wording(
        "Garn `{yarn}` ist {count}-fädig",
        labels={"strands": "{count} Fäden"},
        notes={"possible": "2 bis {most} sind möglich"},
        helps={"leave-some-out": "einige davon weglassen"},
    ),
    "absurd-swatch/density": Wording(
        "{what}: {density} auf 10 cm",
        labels={"in": "{count} auf {length}"},
        notes={"possible": "ein Nadelbett strickt {least} bis {most} auf 10 cm"},
        helps={"look": _WHICH_NUMBER},
    ),
    "absurd-swatch/loop": Wording(
        "{what}: {loop} Garn je Masche",
        labels={"loop": "{loop} je Masche"},
        notes={"possible": "ein Nadelbett legt {least} bis {most}"},
        helps={"look": _ONE_STITCH},
    ),
    "bad-colour": Wording(
        "`{colour}` ist keine Farbe für {owner}",
        labels={"colour": "die Farbe"},
        helps={"write": "nach einem # sechs Ziffern oder Buchstaben a bis f schreiben, etwa `#23395d`"},
    ),
    "fibre-of-strands": Wording(
        "`{name}` sind mehrere Garne zusammen, und jedes hat seine eigene Faser",
        labels={"fibre": "von allen gesagt"},
        helps={"at-the-strands": "die Faser bei jedem Garn sagen, das mitläuft"},
    ),
    "unknown-fibre": Wording(
        "`{name}` ist keine hier bekannte Faser",
        labels={"fibre": "die Faser"},
        helps={
            "one-of": "eine von diesen schreiben: {known:or}; oder mehrere mit + dazwischen",
            "did-you-mean": "vielleicht `{near}`?",
        },
    ),
    "bad-machine-fact": Wording(
        "`{key}` verlangt {wanted}", labels={"not-that": "das nicht"}, helps={"such-as": "schreiben wie in `{example}`"}
    ),
    "bad-rib": Wording(
        "bei hochgehäkelten Rippen ist es jede 2. Nadel oder ein größerer Abstand",
        labels={"every": "`every {every}`", "every-needle": "jede Nadel"},
        helps={"wider": "`every 2nd needle` schreiben, oder eine höhere Zahl"},
    ),
    "bad-stretch": Wording(
        "eine Kante dehnt sich auf einen Anteil ihrer Länge, 100 % oder mehr",
        labels={"length": "eine Länge", "less": "weniger als ihre eigene Länge"},
        helps={"write": "schreiben wie in `stretches to 140 %`"},
    ),
    "bad-yarn-count/out-of-range": Wording(
        "die Feinheit ergibt {tex:.4g} g auf 1000 m: {owner}",
        labels={"here": "{text} {system}"},
        notes={"possible": "gemeint sein können {finest:g} bis {coarsest:g} g auf 1000 m"},
        helps={"look": "auf das System achten, und darauf, welche Zahl welche ist"},
    ),
    "bad-yarn-count/unreadable": Wording(
        "`{text} {system}` ist keine Feinheit für {owner}",
        labels={"count": "diese Feinheit"},
        notes={"plies": "die Zahl der Fäden ist eine ganze Zahl von 1 bis {most}"},
        helps={"write": "die Feinheit schreiben, oder Feinheit und Zahl der Fäden mit einem Schrägstrich, etwa `2/28 Nm`"},
    ),
    "border-needs-whole": Wording(
        "Strickschrift `{chart}` hat {borders:Spalte|Spalten} neben ihrem Rapport, und `{fit}` gesetzte Rapporte haben kein Ende, "
        "an das sie kämen",
        labels={"fit": "`{fit}`", "columns": "{before:Spalte|Spalten} vor dem Rapport, {after} dahinter"},
        helps={"whole": "`whole repeats` schreiben, oder den Rapport über die ganze Strickschrift gehen lassen"},
    ),
    "fabric-not-like/own-lines": Wording(
        "ein Gestrick wie `{model}` hat nichts Eigenes als Hinweise",
        labels={"own": "Eigenes", "like": "wie `{model}`"},
        helps={"in-full": "das Gestrick ganz schreiben, mit seinem Muster und einer eigenen Maschenprobe"},
    ),
    "fabric-not-like/ring": Wording(
        "`{ring:/` ist wie `}` ist letztlich wie es selbst",
        labels={"like": "wie `{model}`"},
        helps={"in-full": "eines dieser Gestricke ganz schreiben"},
    ),
    "fabric-not-like/stripes": Wording(
        "`{model}` ist in Streifen, und die nennen ihre eigenen Garne",
        labels={"like": "in einem anderen Garn", "stripes": "die Streifen"},
        helps={"in-full": "die Streifen ganz schreiben, in ihren Garnen"},
    ),
    "swatch-of-other-yarn": Wording(
        "`{fabric}` ist in `{yarn}`, seine Maschenprobe aber in `{other}`, das nicht ebenso dick ist",
        labels={"in": "{tex:.0f} g auf 1000 m", "swatched": "{its:.0f} g auf 1000 m"},
        helps={"swatch": "das Gestrick ganz schreiben, mit einer eigenen Maschenprobe"},
    ),
    "cord-on-child": Wording(
        "durch `{piece}` geht eine Kordel, und das Kleidungsstück ist für Kinder",
        labels={
            "cord": "eine Kordel",
            "sizes-from": "Größen aus der Tabelle `{table}`",
            "size-of-child": "`{size}` ist eine Größe für Kinder",
        },
        helps={"leave-out": "die Kordel weglassen: ein Knopf, Rippen oder Gummiband schließen ebenso"},
    ),
    "cord-through-nothing": Wording(
        "durch `{name}` geht eine Kordel, und dafür ist dort nichts",
        labels={"cord": "eine Kordel", "folded-edging-hole": "kein umgeschlagener Randabschluss, kein Loch, kein Schlitz"},
        helps={
            "give-piece-folded": "dem Teil einen umgeschlagenen Randabschluss, Knopflöcher oder eine Lochreihe geben, oder die "
            "Kordel weglassen",
        },
    ),
    "edging-charted": Wording(
        "Randabschluss `{edging}` ist in `{fabric}`, das nach einer Strickschrift gearbeitet wird",
        labels={"in": "in `{fabric}`", "chart": "Strickschrift `{chart}`"},
        helps={"plain": "den Randabschluss in einem schlichten Gestrick, hochgehäkelten Rippen oder Streifen stricken"},
    ),
    "along-later-piece/band": Wording(
        "Blende `{band}` liegt an einem Ende von `{model}`, das nicht davor gestrickt wird",
        labels={"along": "entlang `{model} {edge}`", "band": "Blende `{model}`"},
        helps={"write-before": "Blende `{model}` vor Blende `{band}` schreiben"},
    ),
    "buttonholes-off-band": Wording(
        "die Knopflöcher von Blende `{band}` liegen an Kanten, {twice:?die sie mehr als einmal hat|an denen sie so nicht liegt}",
        labels={"along": "entlang dieser"},
        notes={"band-along": "von ihrem linken zum rechten Ende liegt sie entlang `{along}`"},
        helps={
            "stretch": "eine dieser Kanten nennen, oder einige aufeinanderfolgende, in derselben Folge",
            "twice": "mehr ihrer Kanten nennen, sodass es eine einzige solche Stelle gibt",
        },
    ),
    "edging-first-in-band": Wording(
        "{band} wird auf vorhandene Kanten gehängt, und Randabschluss `{edging}` wird zuerst gestrickt",
        labels={"with": "mit `{edging}`", "knitted-first": "zuerst gestrickt"},
        helps={"after": "der Blende einen Randabschluss geben, der danach angesetzt wird"},
    ),
    "edging-first-at-end": Wording(
        "Teil `{piece}` endet mit Randabschluss `{edging}`, der zuerst gestrickt wird",
        labels={"with": "mit `{edging}`", "knitted-first": "zuerst gestrickt"},
        helps={
            "after": "es mit einem Randabschluss beenden, der danach angesetzt wird: er wird auf den Maschen der letzten Reihe "
            "gestrickt"
        },
    ),
    "edging-in-parts": Wording(
        "Teil `{piece}` soll mit Randabschluss `{edging}` enden, und `{opening}` teilt es bis oben, also hat es nicht eine letzte "
        "Reihe",
        labels={"with": "mit `{edging}`", "open": "offen bis `{top}`"},
        helps={
            "bands": "es auf Hilfsgarn enden lassen oder abketten, und entlang `shoulder_left` und `shoulder_right` je eine Blende "
            "stricken",
            "end-below": "`{opening}` an einer Höhe darunter enden lassen",
        },
    ),
    "edging-latched": Wording(
        "Randabschluss `{edging}` ist {made_as} und in hochgehäkelten Rippen",
        labels={"made-as": "{made_as}", "latched-rib": "hochgehäkelte Rippen"},
        helps={"plain": "ihn in einem schlichten Gestrick stricken; eines aus demselben Garn mit anderer Maschenweite genügt"},
    ),
    "edging-left-open": Wording(
        "Randabschluss `{edging}` endet auf Hilfsgarn, und nichts fasst seine Maschen auf: {place}",
        labels={"left": "auf Hilfsgarn gelassen"},
        helps={
            "cast-off-or-graft": "ihn abketten (`chain` oder `sewn`), oder {place} im Maschenstich mit einer anderen Kante "
            "verbinden",
        },
    ),
    "edging-only-after": Wording(
        "Randabschluss `{edging}` ist {made_as} und wird auf vorhandenen Maschen gearbeitet",
        labels={"knitted-first": "zuerst gestrickt"},
        helps={"after": "ihn danach ansetzen"},
    ),
    "edging-only-first": Wording(
        "Randabschluss `{edging}` ist {made_as} und beginnt auf Nadeln außer Arbeit",
        labels={"added-after": "danach angesetzt"},
        notes={"hanging": "vorhandene Maschen hängen auf jeder Nadel und lassen keine frei"},
        helps={"first": "ihn zuerst stricken, oder dort hochgehäkelte Rippen oder einen umgeschlagenen Randabschluss stricken"},
    ),
    "edging-without-fold/fold-row": Wording(
        "Randabschluss `{edging}` hat eine Bruchreihe und wird nicht umgeschlagen",
        labels={"here": "eine Bruchreihe"},
        notes=_FOLD_KINDS,
        helps=_LEAVE_OR_KIND,
    ),
    "edging-without-fold/inside": Wording(
        "Randabschluss `{edging}` hat eine Maschenweite für innen und hat kein Innen",
        labels={"here": "eine Maschenweite für innen"},
        notes={"kinds": "Randabschlüsse mit einer Maschenweite für innen: {kinds:`/, }"},
        helps=_LEAVE_OR_KIND,
    ),
    "edging-without-fold/picot": Wording(
        "Randabschluss `{edging}` hat eine Bruchreihe und bricht schon an seiner Lochreihe",
        labels={"here": "eine Bruchreihe"},
        notes=_FOLD_KINDS,
        helps=_LEAVE_OR_KIND,
    ),
    "hood-on-child": Wording(
        "`{piece}` ist eine Kapuze, und das Kleidungsstück ist für Kinder",
        labels={
            "hood": "als Kapuze",
            "sizes-from": "Größen aus der Tabelle `{table}`",
            "size-of-child": "`{size}` ist eine Größe für Kinder",
        },
        notes={"catches": "eine Kapuze kann hängen bleiben und ein Kind am Hals festhalten"},
        helps={"draw-nothing": "nichts durch sie ziehen, und sie nicht größer machen, als der Kopf es braucht"},
    ),
    "join-needs-loops": Wording(
        "Kanten, die {way:term} werden, brauchen {closed_too:?Maschen|offene Maschen}, und `{piece} {edge}` hat keine",
        labels={"here": "hier {way:term}", "piece": "Teil `{piece}`"},
        helps={
            "begin-on-waste": "`{piece}` auf Hilfsgarn beginnen, oder die Kanten nähen",
            "begin-without-edging": "`{piece}` auf Hilfsgarn ohne Randabschluss beginnen, oder die Kanten nähen",
            "end-on-waste-or-cast-off": "`{piece}` auf Hilfsgarn oder abgekettet enden lassen, oder die Kanten nähen",
            "end-on-waste": "`{piece}` auf Hilfsgarn enden lassen, oder die Kanten nähen",
            "sew": "die Kanten nähen",
        },
    ),
    "join-ratio/beside": Wording(
        "Reihen, die eins zu eins mit Maschen verbunden werden, werden nicht außerdem gemessen, im Muster abgestimmt oder "
        "eingehalten",
        labels={"ratio": "so viele Reihen auf so viele Maschen", "beside": "und dies"},
        helps={"leave-one": "eines von beiden weglassen"},
    ),
    "join-ratio/numbers": Wording(
        "{rows} {rows:=Reihe lässt|Reihen lassen} sich nicht mit {stitches} {stitches:=Masche|Maschen} verbinden",
        labels={"ratio": "von jedem 1 bis {most}"},
        helps={"numbers": "das Verhältnis in kleinen Zahlen schreiben, etwa `4 rows to 3 stitches`"},
    ),
    "joined-to-itself": Wording(
        "{edges} wird Masche für Masche mit sich selbst {way:term}",
        labels={"twice": "eine Kante, zweimal genannt"},
        helps={
            "another": "auf einer Seite der Verbindung eine andere Kante nennen, oder die Kante nähen: sie wird dann auf die "
            "Hälfte gefaltet",
        },
    ),
    "loops-do-not-ease": Wording(
        "Kanten, die {way:term} werden, treffen Masche auf Masche: keine ist länger als die andere",
        labels={"easing": "mit Einhalten", "longer": "länger um"},
        helps={"leave-out": "das weglassen, oder die Kanten nähen"},
    ),
    "like-half-edge": Wording(
        "`{model}` gibt bei `{level}` die Breite beider Kanten, und hier ist eine Kante allein geschrieben",
        labels={"one": "eine Kante", "both": "beide Kanten von `{model}`"},
        helps={"other-edge": "den Verlauf der anderen Kante bis `{level}` auch schreiben"},
    ),
    "like-ring": Wording(
        "Teil `{piece}` ist letztlich wie es selbst",
        labels={"like": "{ring:and`} sind wie einander"},
        helps=_IN_FULL,
    ),
    "mirror-other-fabric": Wording(
        "ein Spiegelbild wird im Gestrick seines Vorbilds gestrickt, `{fabric}`",
        labels={"own": "in `{own_fabric}`", "model": "in `{fabric}`"},
        helps={"same-fabric": "`in {fabric}` schreiben, oder das Teil ganz beschreiben"},
    ),
    "mirror-ring": Wording(
        "Teil `{piece}` ist letztlich sein eigenes Spiegelbild",
        labels={"mirror": "Spiegelbild von `{piece}`"},
        helps=_IN_FULL,
    ),
    "missing-argument": Wording(
        "Form `{used}` braucht {missing:and`}, und bei dieser Verwendung fehlt das",
        labels={"lacking": "es fehlt: {missing:`/, }", "shape": "Form `{used}`"},
        helps={"say-it": "es in dieser Zeile nennen, mit seinem Wert dahinter"},
    ),
    "missing-part/ball": Wording(
        "weder Lauflänge noch Feinheit: {owner}",
        labels={"here": "dieses Garn"},
        helps={"write": "schreiben, was ein Knäuel wiegt und wie lang es ist, oder die Feinheit"},
    ),
    "missing-part/buttonhole": Wording(
        "wie weit das Knopfloch vom Ende entfernt ist, ist nicht gesagt: {band}, `{which}`",
        labels={"none": "`{which}` fehlt"},
        helps={"add": "es ergänzen, etwa `2 cm {which}`"},
    ),
    "missing-part/depth": Wording(
        "Randabschluss `{edging}` sagt nicht, wie tief er ist",
        labels={"none": "keine Tiefe"},
        helps={"add": "sie ergänzen, etwa `3 cm deep`; nur ein Randabschluss mit `chained` hat keine"},
    ),
    "missing-part/fabric": Wording("{owner}: es fehlt {lacking:term/ und }", labels={"here": "dieses Gestrick"}),
    "missing-part/machine": Wording(
        "bei Maschine `{machine}` fehlt: {lacking:and}",
        labels={"own-bed": "ein eigenes Nadelbett"},
        notes={"shipped": "mitgelieferte Maschinen: {shipped}"},
    ),
    "missing-part/stripes": Wording("Streifen brauchen mindestens ein Garn und Reihen", labels={"none": "kein Streifen"}),
    "next-of-one/knitted-once": Wording(
        "jedes wird mit {next:?dem nächsten|seinem eigenen} verbunden, und Teil `{piece}` wird einmal gestrickt",
        labels={"next": "jedes mit {next:?dem nächsten|seinem eigenen}", "once": "einmal gestrickt"},
        helps=_SEVERAL,
    ),
    "next-of-one/two-pieces": Wording(
        (
            "jedes wird mit {next:?dem nächsten|seinem eigenen} verbunden, und `{piece}` und `{other}` werden nicht gleich oft "
            "gestrickt"
        ),
        labels={"next": "jedes mit {next:?dem nächsten|seinem eigenen}"},
        helps=_SEVERAL,
    ),
    "no-such-edge/piece-alone": Wording(
        "`{measured}` nennt ein Teil und keine seiner Kanten",
        labels={"edge": "welche Kante?"},
        helps={"name-an-edge": "eine seiner Kanten dahinter schreiben, wie in `{measured} start`"},
    ),
    "no-such-edge/turned-in": Wording(
        "`{piece} {edge}` liegt hinter der Arbeit: ein Beleg wird als Ganzes nach innen gelegt",
        labels={"here": "hier entlang aufgefasst"},
        helps={"other-edging": "es weglassen, oder einen Randabschluss nehmen, der nicht nach innen gelegt wird"},
    ),
    "no-such-tool/prongs": Wording(
        "zum Formen {inset} Maschen vom Rand braucht es einen Decker mit {inset} Zinken",
        labels={"fashioned": "`fashioned {inset} in`", "bed": "dieses Nadelbett"},
        notes={"at-hand": "die vorhandenen Decker haben {prongs} Zinken"},
        helps={"other-tool": "näher am Rand formen, oder den Decker beim Nadelbett eintragen, wenn er vorhanden ist"},
    ),
    "not-positive/edge-stitches": _EDGE_STITCHES,
    "not-positive/stripe-rows": _STRIPE_ROWS,
    "odd-needles": Wording(
        "ein Nadelbett mit {needles} Nadeln hat keine Mittelmarkierung zwischen zwei Nadeln",
        labels={"odd": "eine ungerade Zahl"},
        helps={"even": "eine gerade Zahl schreiben, ohne die letzte Nadel"},
    ),
    "pick-up-ratio": Wording(
        "{band} lässt sich nicht mit {stitches} Maschen auf {rows} Reihen auffassen",
        labels={"ratio": "aus jeder Reihe höchstens eine Masche"},
        helps={
            "fewer": "eine Masche oder mehr auf ebenso viele Reihen oder mehr schreiben, höchstens {most}, etwa `3 stitches to 4 "
            "rows`"
        },
    ),
    "reserved-name/yarn": Wording(
        "`{name}` heißt auf der Seite das Hilfsgarn der Maschine selbst",
        labels={"own": "ein Garn des Kleidungsstücks"},
        helps={"rename": "es anders nennen, etwa `{name}_yarn`"},
    ),
    "table-rows-disagree": Wording(
        "Zeilen der Tabelle `{table}` widersprechen einander in {among}",
        notes={
            "leaves": (
                "{size}: `centre_back_neck_to_wrist` {reach} weniger der Hälfte von `cross_back` {back} weniger "
                "`arm_length_to_underarm` {seam} lässt {cap} für eine Armkugel, bei `armhole_depth` {depth}"
            ),
            "highest": "eine Armkugel ist weniger als das {highest:g}-Fache der Tiefe des Armausschnitts hoch und wächst mit den "
            "Größen",
        },
        helps={
            "choose": "wählen, welche davon gilt, und die anderen weglassen, oder eigene Maße angeben: `, {last} ... cm`",
        },
    ),
    "unlikely-swatch/loop": Wording(
        "die Maschenprobe von Gestrick `{fabric}` hat {loop} Garn je Masche, zu erwarten sind etwa {plain_loop}",
        labels={"density": "{density} auf 10 cm"},
        helps={"look": _ONE_STITCH},
    ),
    "unlikely-swatch/weight": Wording(
        "die Maschenprobe von Gestrick `{fabric}` wiegt {grams}, zu erwarten sind etwa {expected} g",
        labels={"loop": "{loop} Garn je Masche, {dense:.0f} g je Quadratmeter"},
        notes={
            "plain": (
                "in `{yarn}` nimmt glatt rechts in dieser Dichte {plain_loop} je Masche und wiegt {usual:.0f} g je Quadratmeter"
            )
        },
        helps={"look": "auf das Gewicht und seine Einheit achten, und darauf, dass nur dieses Stück gewogen ist"},
    ),
    "unlikely-yarn": Wording(
        "Garn `{yarn}`, {grams} = {metres}, ist für die Maschenprobe von Gestrick `{fabric}` zu {thick:?dick|dünn}",
        labels={"ball": "{grams} = {metres}: {tex} g auf 1000 m", "swatch": "`{fabric}` darin: {density} auf 10 cm"},
        notes={
            "metres-usual": (
                "so viele Maschen und Reihen auf 10 cm werden in Garnen von etwa {least} bis {most} auf {grams} gestrickt"
            ),
            "tightness": ("der Dichtefaktor wäre {cover:.2g}; {usual_least} bis {usual_most} ist bei glatt rechts üblich"),
        },
        helps={
            "metres": "`{length:source}` schreiben, wenn das Knäuel Meter hat, wo `{unit}` steht",
            "look": "auf Gewicht, Länge und Einheit des Knäuels achten, und auf Maschen, Reihen und Größe der Maschenprobe",
        },
    ),
}
