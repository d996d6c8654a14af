"""German words for a garment put together and worn."""

from __future__ import annotations

from walewright.report.wording import Wording

_PASSING = {
    "passes": (
        "{size}: {relaxed:.1f} in Ruhe, {stretched:.1f} gedehnt; {part:term} {figure:.1f}{needed:?, und {needed:.1f} sind nötig}"
    ),
    "source": "{part:term}: {credit}",
}
_TOO_TIGHT_HELPS = {
    "wider": "die Öffnung weiter oder tiefer machen, ihr eine dehnbarere Kante geben, oder eine Öffnung, die sich knöpfen lässt",
    "stretches-more": "wenn eine Maschenprobe sich weiter dehnt: `through {place} passes {part}, stretches to 160 %`",
}

CAUTIONS: dict[str, str] = {
    "caution/us-hood": "Vereinigte Staaten: keinerlei Kordel in Kapuze oder Halsausschnitt von Oberbekleidung für Kinder, Größen "
    "2T bis 12 (US CPSC, Drawstrings in Children’s Upper Outerwear, FAQ; 16 CFR 1120.3(b); ASTM F1816-97)",
    "caution/us-waist": "Vereinigte Staaten: an Taille oder Unterkante, Größen 2T bis 16, höchstens 7,6 cm (3 in) Kordel außerhalb "
    "ihres Tunnels, keine Knebel oder Knoten an den freien Enden, und die Kordel festgenäht, wenn sie aus einem Stück ist "
    "(dieselbe Quelle)",
    "caution/eu-small": "Europäische Union: keine Kordel und kein Zugband in Kapuze, Kopf- und Halsbereich bis 7 Jahre oder 134 cm "
    "(Finnish Safety and Chemicals Agency, Cords and drawstrings on children’s clothing, zu EN 14682)",
    "caution/eu-older": "Europäische Union: kein Zugband mit freien Enden im Kopf- und Halsbereich von 7 bis 14 Jahren (dieselbe "
    "Quelle)",
}

WORDINGS: dict[str, Wording] = {
    "band-up-both-sides": Wording(
        "Blende `{band}` soll entlang `{name}` laufen, und das ist nicht eine Kante, sondern {count}: {edges:and}",
        labels={"picked-up-here": "hier aufgefasst"},
        notes={"one-line": "eine Blende ist eine Linie; jede von diesen ist eine eigene"},
        helps={"a-band-for-each": "eine davon nennen, und für jede andere eine eigene Blende schreiben"},
    ),
    "copies-by-size": Wording(
        "`{first}` wird in manchen Größen vor `{then}` gestrickt und in anderen danach, weil es dort nicht gleich viele Teile sind",
        labels={"often": "je nach Größe {copies:or} Mal"},
        notes={"order": "{sizes:and}: {order:names`}"},
        helps={
            "same-order": "zuerst verbinden, was beide brauchen, und dann erst, was so lange offen bleiben muss",
            "make-apart": "oder Größen mit der gleichen Zahl zusammen erzeugen: {groups:or}",
        },
    ),
    "copies-in-doubt": Wording(
        "jedes Exemplar von Teil `{piece}` könnte mit dem einen oder dem anderen Exemplar von Teil `{other}` verbunden werden",
        labels={"joined-here": "hier verbunden", "joined-before": "schon verbunden"},
        notes={"ring-or-pairs": "durch beide Nähte sind alle Exemplare ein Ring, oder jedes mit dem seinen ein Paar"},
        helps={
            "to-the-next": "wenn alle zusammen rundum gehen: `each to the next all round` schreiben",
            "to-its-own": "wenn jedes für sich ist: `each to its own` schreiben",
        },
    ),
    "copies-left-over": Wording(
        "Teil `{piece}` wird {copies}-mal gestrickt, und für {idle} davon ist nichts zum Verbinden da",
        labels={"piece": "Teil `{piece}`", "joined-here": "hier verbunden"},
        helps={"knit-fewer": "`knit {joined}` schreiben, oder nennen, womit die anderen verbunden werden"},
    ),
    "copies-mixed": Wording(
        "`{hung}` wird {times}-mal eingehängt, auf Teil `{piece}`, das {copies}-mal gestrickt wird: welches Exemplar des einen auf "
        "welchem des anderen liegt, lässt sich nicht sagen",
        labels={"hung-here": "hier eingehängt"},
        helps={
            "pieces-of-their-own": (
                "die Exemplare, auf denen eines davon liegt, als eigene Teile beschreiben, oder alle Exemplare in einer Zeile "
                "nennen"
            ),
        },
    ),
    "edge-half-joined": Wording(
        "`{edge}` ist auf beiden Seiten von Teil `{piece}`, und mit `{free}` ist nichts verbunden",
        labels={"joined-here": "hier verbunden"},
        notes={"stays-open": "es bleibt, wie es ist, eine offene Kante"},
        helps={"name-the-side": "wenn das so gemeint ist, die verbundene Seite nennen: {sides:or}"},
    ),
    "edge-used-twice/again": Wording(
        "`{edge}` ist schon aufgebraucht: jeder Abschnitt einer Kante wird einmal verbunden oder aufgefasst",
        labels={"used-here": "hier gebraucht", "already-used": "und hier schon gebraucht"},
        notes={"copies": "Teil `{piece}` wird {copies}-mal gestrickt; eine Blende wird einmal für jedes gestrickt"},
        helps={"take-one-out": "eines von beiden herausnehmen, oder eine andere Kante nennen"},
    ),
    "edge-used-twice/edged": Wording(
        "`{edge}` ist schon aufgebraucht: `{edging}` wird an die erste Reihe von `{piece}` angestrickt und abgekettet",
        labels={"used-here": "hier gebraucht", "edged-here": "hier hat der Anschlag eine Kante"},
        helps={"knit-first": "`{edging}` mit `knitted first` zuerst stricken: das Teil wächst daraus, und sein Anfang bleibt frei"},
    ),
    "finished-otherwise": Wording(
        "`{measurement}` ist angegeben, und ringsum unter den Armausschnitten ergeben die Teile etwas anderes",
        labels={"stated": "angegeben"},
        notes={"knitted": "{size}: angegeben {stated:.1f}, gestrickt {knitted:.1f}"},
        helps={"measure-it": "`finished {measurement} round {piece} {at}, fits {fits}` schreiben, dann wird es gemessen"},
    ),
    "join-not-in-line/knitted-once": Wording(
        "jedes wird mit dem nächsten verbunden, und Blende `{band}` wird einmal gestrickt",
        labels={"next": "jedes mit dem nächsten"},
        helps={"leave-out-or-lines": "das weglassen, oder mehrmals stricken, woran die Blende hängt"},
    ),
    "join-not-in-line/no-one-line": Wording(
        "`{one}` lässt sich nicht an `{other}` legen: die Kanten einer Seite ergeben nicht eine Linie",
        labels={"joined-here": "hier verbunden"},
        notes={"gap": "`{side}`: nichts verbindet das Ende von `{edge}` mit `{next}`"},
        helps={
            "join-between": "zuerst verbinden, was zwischen den Kanten liegt, etwa eine Schulter zwischen zwei Hälften eines "
            "Armausschnitts",
        },
    ),
    "lap-apart": Wording(
        "`{over}` lässt sich nicht über `{under}` legen: sie liegen nicht an den beiden Kanten einer Öffnung",
        labels={"lapped-here": "hier übereinandergelegt"},
        helps={"name-two": "die beiden Blenden oder die beiden Kanten nennen, die vorn frei bleiben"},
    ),
    "lets-through": Wording(
        "durch die Öffnung bei `{opening}` geht, was nicht hindurch darf: {part:term}",
        labels={"never-passes": "darf nie hindurch"},
        notes=_PASSING,
        helps={"smaller": "die Öffnung kleiner machen, oder den Übertritt breiter"},
    ),
    "line-closed": Wording(
        "wenn `{along}` eingehängt werden kann, sind die beiden Enden der Linie schon verbunden: ein Ring liegt nicht auf einem "
        "geraden Nadelbett",
        labels={"hung-here": "hier eingehängt", "joined-before": "davor verbunden"},
        helps={"join-later": "eine dieser Verbindungen später machen, oder die Linie dort beginnen, wo die Kanten offen bleiben"},
    ),
    "line-not-in-order": Wording(
        "`{along}`: das lässt sich in dieser Folge nicht nebeneinander einhängen",
        labels={"hung-here": "hier eingehängt"},
        notes={
            "apart": "`{edge}` endet nicht dort, wo `{next}` beginnt",
            "between": "dazwischen liegt {edges}",
            "nameless": (
                "dazwischen hat Teil `{piece}` eine Kante ohne Namen{high:?, von `{low}` bis `{high}`}: ihr den Namen derer geben, "
                "die sie fortsetzt, oder einen eigenen"
            ),
            "clockwise": (
                "von der linken Nadel zur rechten, wenn die {side:term}e Maschenseite zu sehen ist, werden Kanten im Uhrzeigersinn "
                "eingehängt, wie das Teil auf dem Nadelbett lag: die linke Kante hinauf, oben nach rechts, die rechte Kante "
                "hinunter"
            ),
            "anticlockwise": (
                "von der linken Nadel zur rechten, wenn die {side:term}e Maschenseite zu sehen ist, werden Kanten gegen den "
                "Uhrzeigersinn eingehängt, wie das Teil auf dem Nadelbett lag: die rechte Kante hinauf, oben nach links, die linke "
                "Kante hinunter"
            ),
        },
        helps={
            "name-once": "wenn jedes Exemplar von Teil `{piece}` sein eigenes haben soll, seine Kante einmal nennen",
            "join-between": "{otherwise:?sonst }verbinden, was dazwischen liegt, oder auch die Kante nennen, die dazwischen liegt",
        },
    ),
    "line-not-mirrored": Wording(
        "`{hung}` ist auf Teil `{piece}` so begonnen wie `{model_hung}` auf Teil `{model}`, dessen Spiegelbild es ist: ihre Nähte "
        "liegen auf entgegengesetzten Seiten",
        labels={"hung-here": "hier eingehängt", "and-here": "und hier"},
        helps={"mirrored-corner": "an der gespiegelten Ecke beginnen"},
    ),
    "loops-left-open": Wording(
        "nichts fasst die offenen Maschen auf: {edges:and}",
        notes={"runs-down": "wenn das Hilfsgarn abgezogen ist, läuft das Gestrick von dort auf"},
        helps={
            "take-them-up": "sie mit einer Blende, einer Verbindung (`graft` oder `link`), einem Randabschluss oder einem darauf "
            "begonnenen Teil auffassen",
            "close-them": "oder sie schließen: `with e-wrap` oder `with chain` für einen Anfang, `cast off` für ein Ende, einen "
            "Halsausschnitt oder einen Schlitz",
        },
    ),
    "named-for-other-side": Wording(
        "`{piece}` öffnet sich dort, wo das {worn:term}e Vorderteil es tut, getragen gesehen",
        labels={"called": "heißt `{called}`"},
        notes={
            "left-opens-right": "ein linkes Vorderteil öffnet sich an seiner rechten Kante, so wie es mit der linken Maschenseite "
            "vorn auf dem Nadelbett hängt",
        },
        helps={"other-side": "es nach der anderen Seite benennen, oder seine andere Kante formen"},
    ),
    "whole-off": Wording(
        "`{measurement}` ist um mehr als zwei Maschen anders gestrickt als verlangt",
        labels={"wanted": "so groß verlangt"},
        notes={"beside": "{size}: verlangt {wanted:.1f}, gestrickt {knitted:.1f}: {off:.1f} {more:?zu viel|zu wenig}"},
        helps={
            "for-seams": "in den Breiten der Teile für jede Seite einer genähten Naht eine Masche mitzählen",
            "leave-free": "oder die Breite eines Teils mit `between` zwischen zwei Breiten frei lassen: dann entscheidet das Ganze",
            "odd-or-even": "oder Teilen `odd or even` geben, sodass ihre Breiten auf einzelne Maschen genau sind",
        },
    ),
    "nothing-to-measure/goes-round": Wording(
        "dort geht nichts von einer freien Kante zur anderen: es geht herum, oder ist an dieser Höhe nicht verbunden",
        labels={"measured-here": "hier gemessen"},
        helps={"measure-round": "mit `round` um das Teil messen statt mit `across` quer, oder die Teile nebeneinander verbinden"},
    ),
    "nothing-to-measure/no-length": Wording(
        "eine solche Länge gibt es nicht",
        labels={"measured-here": "hier gemessen"},
    ),
    "nothing-to-measure/no-opening": Wording(
        "`{edge}` ist keine Kante einer Öffnung",
        labels={"nothing-passes": "hier geht nichts hindurch"},
        helps={"name-the-edge": "die Blende oder die Kante nennen, die frei bleibt"},
    ),
    "nothing-to-measure/no-ring": Wording(
        "dort geht nichts ganz herum: die Kanten der Teile sind nicht zu einem Ring verbunden",
        labels={"measured-here": "hier gemessen"},
        helps={
            "join-the-pieces": (
                "die Teile verbinden, oder sagen, was über was liegt: `lap right_front edge over left_front edge, 8 cm wide`"
            ),
        },
    ),
    "nothing-to-measure/size-unknown": Wording(
        "das Maß ist nicht bekannt: {part:term}",
        labels={"passes": "hindurch geht: {part:term}"},
        helps={"write-it": "es schreiben: `passes {part} of 52 cm`, oder eine Zeile der Größen"},
    ),
    "opening-too-tight": Wording(
        "durch {opening} passt nicht hindurch: {part:term}",
        labels={"too-tight": "zu eng"},
        notes=_PASSING,
        helps=_TOO_TIGHT_HELPS,
    ),
    "reach-too-short": Wording(
        "der Ärmel `{sleeve}` endet {short} und mehr vor dem Handgelenk",
        labels={"way": "{way:term}"},
        notes={"reach": "{size}: von der hinteren Mitte am Hals {reach:.1f}, am Körper {body:.1f}"},
        helps={
            "longer": (
                "den Ärmel länger machen: von der hinteren Mitte am Hals bis zum Handgelenk, weniger das, was die Teile des "
                "Rumpfes davon einnehmen"
            ),
        },
    ),
    "require-fails/on-the-garment": Wording(
        "verlangt ist `{required}`, und so ist es nicht{because:?: {because}}",
        labels={"fails": "nicht erfüllt in {sizes}"},
        notes={"against": "{size}: {found:.1f} gegen {wanted:.1f}"},
        helps={
            "less-by": "es {by:.1f} kleiner werden lassen, oder mehr zulassen",
            "more-by": "es {by:.1f} größer werden lassen, oder weniger verlangen",
        },
    ),
    "seam-twisted": Wording(
        "`{piece} {edge}` und `{other_piece} {other_edge}` sind beides {side:term}e Kanten: Fuß an Fuß verbunden läge eines der "
        "Teile mit der Innenseite nach außen",
        labels={"joined-here": "hier verbunden"},
        helps={
            "left-to-right": "eine linke Kante mit einer rechten verbinden, so wie die Teile auf dem Nadelbett hingen; bei einem "
            "Spiegelbild sind sie vertauscht",
        },
    ),
    "seams-cross": Wording(
        "so zusammengesetzt hat das Kleidungsstück ein Loch, durch das kein Körper geht: zwei seiner Nähte kreuzen sich",
        labels={"joined-here": "hier verbunden"},
        helps={
            "exchanged": (
                "ein Teil suchen, das mit der falschen Seite eines anderen verbunden ist: beide Vorderteile oder beide Ärmel "
                "vertauscht"
            ),
        },
    ),
    "smaller-than-body": Wording(
        "das Kleidungsstück ist kleiner als der Körper, dem es passen soll: `{fits}`",
        labels={"to-fit": "soll passen"},
        notes={"beside-body": "{size}: fertig {finished:.1f}, Körper {body:.1f}"},
        helps={
            "it-stretches": (
                "wenn es gedehnt getragen werden soll, das sagen: `finished {measurement} {round:?round {round}|...}, fits {fits}, "
                "stretches`"
            ),
        },
    ),
    "start-draws-in": Wording(
        "Teil `{piece}` beginnt viel schmaler als die Kanten, entlang derer es begonnen wird",
        labels={"begun-here": "hier begonnen"},
        notes={"narrower": "{size}: {wide:.1f}, und die Kanten sind {edges:.1f} lang"},
        helps={
            "as-wide": "es so breit beginnen, wie die Kanten lang sind, oder ein Zehntel weniger, wo es sie zusammenhalten soll"
        },
    ),
    "start-too-full": Wording(
        "Teil `{piece}` beginnt viel breiter als die Kanten, entlang derer es begonnen wird",
        labels={"begun-here": "hier begonnen"},
        notes={"wider": "{size}: {wide:.1f}, und die Kanten sind {edges:.1f} lang"},
        helps={
            "as-edges": "die Breite weglassen: `start along` mit den Kanten macht es so breit, wie diese lang sind",
            "fullness": "oder es so lassen, wenn es eine Rüsche sein soll",
        },
    ),
    "start-on-both-sides": Wording(
        "die Exemplare von `{piece}` werden entlang `{name}` begonnen, und das ist nicht eine Kante, sondern {count}: {edges:and}",
        labels={"begun-here": "hier begonnen"},
        notes={
            "knitted-alike": "Exemplare eines Teils werden gleich gestrickt, jedes entlang derselben Kante begonnen wie die anderen"
        },
        helps={"a-piece-for-each": "eine davon nennen, und was entlang einer anderen begonnen wird, als eigenes Teil beschreiben"},
    ),
    "too-tight": Wording(
        "durch {opening} passt nicht hindurch: {part:term}",
        labels={"too-tight": "zu eng"},
        notes=_PASSING,
        helps=_TOO_TIGHT_HELPS,
    ),
}
