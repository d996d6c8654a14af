"""German words for the shape of a piece: levels, edges, starts and ends. What lies in a piece, and what holds it, is in "
"`inside`."""

from __future__ import annotations

from walewright.report.german.inside import WORDINGS as INSIDE
from walewright.report.wording import Wording

_COPIES = Wording(
    "Teil `{piece}` wird {copies}-mal gestrickt",
    labels={"knit": "`knit {copies}`"},
    notes={"possible": "1 bis {most} sind möglich"},
)
_EVERY = Wording(
    "eine Kante verschiebt sich in jeder Reihe bis hin zu jeder {most}. Reihe", labels={"every": "alle {every} Reihen"}
)
_NUMBER = Wording(
    "{what}: {number} {unit:terms}", labels={"here": "{number} {unit:terms}"}, notes={"possible": "1 bis {most} sind möglich"}
)
_REPEATS = Wording(
    "{what}: {repeats:Rapport|Rapporte} breit",
    labels={"repeats": "{repeats:Rapport|Rapporte}"},
    notes={"possible": "1 bis {most} sind möglich"},
)
_TIMES = Wording(
    "{what} wird {times}-mal gearbeitet",
    labels={"times": "{times}-mal wiederholt"},
    notes={"possible": "2 bis {most} sind möglich"},
)
_LEVELS = {"levels": "Höhen von Teil `{piece}` vom Anfang aufwärts: {levels}"}
_STARTS = {"along": "entlang anderer Teile begonnen", "with": "mit `{way}` begonnen"}
_ON_WASTE = {"on-waste": "auf Hilfsgarn beginnen"}
_RATE_HELPS = {"even": "`every {even} rows` schreiben", "fashioned": "oder `fashioned {prongs} in` dahinter schreiben"}

WORDINGS: dict[str, Wording] = {
    **INSIDE,
    "absurd-count/at-once": Wording(
        "auf einmal wird eine Masche oder werden zwei umgehängt", labels={"once": "{at_once} auf einmal"}
    ),
    "absurd-count/copies": _COPIES,
    "absurd-count/edge-steps": Wording("eine Kante in Stufen hat höchstens {most} davon", labels={"steps": "{times} Stufen"}),
    "absurd-count/every": _EVERY,
    "absurd-count/needed": Wording(
        "{what}: mehr als {longest}", labels={"amounts": "{amounts}"}, helps={"look": "auf die Zahl achten"}
    ),
    "absurd-count/number": _NUMBER,
    "absurd-count/repeats": _REPEATS,
    "absurd-count/times": _TIMES,
    "absurd-length/piece": Wording("Teil `{piece}` ist bei `{level}` mehr als {longest} breit", labels={"width": "{width}"}),
    "absurd-length/value": Wording(
        "{what}: mehr als {longest}", labels={"amounts": "{amounts}"}, helps={"look": "auf die Einheit achten"}
    ),
    "across-elsewhere": Wording(
        "die Kanten sind bis `{reached}` gekommen, und die Breite ändert sich quer bei `{level}`",
        labels={"at": "bei `{level}`"},
        helps={
            "lead-there": "zuvor beide Kanten bis `{level}` führen",
            "write-before": "es vor den Verlauf schreiben, der an `{level}` vorbeigeht",
        },
    ),
    "across-too-far": Wording(
        "die Breite von Teil `{piece}` wird bei `{level}` quer {more:?mehr als verdoppelt|auf weniger als die Hälfte gebracht}",
        labels={"to": "auf {width}"},
        notes={
            "below": "darunter ist das Teil {least} breit",
            "loops": "höchstens zwei Maschen kommen auf eine Nadel, und höchstens jede zweite Nadel bleibt leer",
        },
        helps={"write": "{more:?höchstens|mindestens} {bound} schreiben"},
    ),
    "along-later-piece/piece": Wording(
        "Teil `{piece}` wird auf `{model}` begonnen, das nicht davor gestrickt wird",
        labels={"along": "entlang `{model} {edge}`", "piece": "Teil `{model}`"},
        helps={"write-before": "Teil `{model}` vor Teil `{piece}` schreiben"},
    ),
    "cast-off-at-start": Wording(
        "{what}: bei `{first}` werden Maschen abgekettet, wo noch keine Reihe gestrickt ist",
        labels={"at-start": "am Anfang abgekettet"},
        helps={
            "narrower": "das Teil um so viel schmaler beginnen",
            "straight-first": "oder die Kante zuerst gerade bis zu einer Höhe über dem Anfang führen",
        },
    ),
    "cast-off-too-wide/more-than-edge": Wording(
        "es wird mehr abgekettet, als die Kante bis `{to_level}` nach innen geht",
        labels={"cast-off": "{cast_off} abgekettet"},
        notes={"moves": "die Kante geht um {inwards} nach innen"},
        helps={
            "less": "{excess} weniger abketten",
            "leave-out": "das Abketten weglassen",
            "go-in": "oder die Kante um so viel und mehr nach innen gehen lassen: `cast off 4 cm then curve to 30 cm wide`",
        },
    ),
    "cast-off-too-wide/rate-outwards": Wording(
        "es werden Maschen abgekettet, und die Kante geht bis `{to_level}` nach außen",
        labels={"then-out": "abgekettet, und dann nach außen"},
        helps={"leave-out": "das Abketten weglassen"},
    ),
    "cast-off-too-wide/wrong-way": Wording(
        "es werden Maschen abgekettet, und dann {gap:?verengt die Kante die Lücke|geht die Kante nach außen} bis `{to_level}`",
        labels={"other-way": "abgekettet, und dann in die andere Richtung"},
        notes={"moves": "die Kante {gap:?verengt die Lücke|geht nach außen} um {change}"},
        helps={
            "leave-out": "das Abketten weglassen",
            "without-minus": "die Verschiebung ohne Minus schreiben: eine Lücke weitet sich nach außen",
            "minus": "ein Minus vor die Verschiebung schreiben: sie geht nach innen",
            "wider": "eine Breite über der unteren schreiben",
            "narrower": "eine Breite unter der schreiben, von der die Kanten kommen",
        },
    ),
    "edge-goes-down": Wording(
        "die Kante ist schon bis `{reached}` gekommen, und das liegt nicht unter `{to_level}`",
        labels={"to": "bis `{to_level}`"},
        notes=_LEVELS,
        helps={"another-level": "eine Höhe über `{reached}` nennen"},
    ),
    "edge-moves-in-wedge": Wording(
        "die {side:term}e Kante von Teil `{piece}` ist ab `{from_level}` in Haltestellung und verschiebt sich dort",
        labels={"moves": "verschiebt sich hier", "held": "ab `{from_level}` in Haltestellung"},
        helps={"straight": "diese Kante von `{from_level}` bis `{to_level}` gerade führen"},
    ),
    "edge-past-shoulder": Wording(
        "eine Kante von Teil `{piece}` geht bis `{to_level}` weiter, während die Schultern ab `{from_level}` in Haltestellung sind",
        labels={"up": "bis `{to_level}`", "held": "ab `{from_level}` in Haltestellung"},
        helps={
            "end-or-hold": "diese Kante bei `{from_level}` enden lassen, oder die Schultern ab einer höheren Höhe in Haltestellung "
            "bringen",
        },
    ),
    "edges-apart": Wording(
        "das verschiebt beide Kanten, und sie sind auf verschiedene Höhen gekommen",
        labels={"both": "beide Kanten von hier"},
        notes={"reached": "die {side:term}e Kante ist bis `{level}` gekommen"},
        helps={"write-apart": "`left edge` und `right edge` getrennt schreiben"},
    ),
    "edging-needs-closed-start": Wording(
        "Randabschluss `{edging}` wird zuerst gestrickt, und seine Kante muss geschlossen sein",
        labels={"on-waste": "auf Hilfsgarn begonnen", **_STARTS, "knitted-first": "zuerst gestrickt"},
        helps={"closed": "mit `e-wrap` oder `chain` beginnen, oder den Randabschluss danach ansetzen"},
    ),
    "edging-needs-loops": Wording(
        "Randabschluss `{edging}` hängt an der ersten Reihe, und dieser Anfang lässt dort keine Maschen",
        labels={**_STARTS, "added-after": "danach angesetzt"},
        helps=_ON_WASTE,
    ),
    "edging-needs-waste-start": Wording(
        "die erste Reihe von Randabschluss `{edging}` wird hochgehängt, um den Umschlag zu schließen, und dieser Anfang lässt dort "
        "keine Maschen",
        labels={**_STARTS, "kind-first": "{made_as:term}, zuerst gestrickt"},
        helps=_ON_WASTE,
    ),
    "first-level": Wording(
        "die erste Höhe von Teil `{piece}` ist sein Anfang, bei 0 cm",
        labels={"at": "bei {heights}", "in-range": "irgendwo in einem Bereich"},
        helps={"begin-at-0": "sie bei 0 cm schreiben, und was höher liegt, als Höhe darüber"},
    ),
    "gathered-in-parts": Wording(
        "die letzten Maschen von Teil `{piece}` sollen zusammengezogen werden, und `{opening}` teilt es bis oben",
        labels={"gathered": "zusammengezogen", "open": "offen bis `{top}`"},
        helps={"end-below": "`{opening}` an einer Höhe darunter enden lassen, oder auf Hilfsgarn enden oder abketten"},
    ),
    "levels-fall": Wording(
        "`{upper}` liegt in Teil `{piece}` nicht über `{lower}`{highest:? an seiner höchsten Stelle}",
        labels={"upper": "`{upper}`", "lower": "`{lower}`"},
        notes={"then": "{size}: {low}, dann {high}"},
        helps={"apart": "`{upper}` höher legen, oder `{lower}` tiefer"},
    ),
    "missing-part/along": Wording("der Anfang von Teil `{piece}` liegt entlang keiner Kante", labels={"none": "keine Kante"}),
    "missing-part/how-far": Wording(
        "wie weit es geht, ist nicht gesagt: `{path}` bis `{to_level}`", labels={"neither": "keine Breite und kein `by`"}
    ),
    "missing-part/piece": Wording(
        "bei Teil `{piece}` fehlt: {lacking:term/, }",
        labels={"here": "dieses Teil"},
        helps={"add-lines": "eine Zeile ergänzen, die so beginnt: {lacking:and`}"},
    ),
    "missing-part/two-levels": Wording(
        "Teil `{piece}` braucht zwei Höhen oder mehr",
        labels={"least": "mindestens Anfang und oberes Ende"},
        helps={"second-level": "eine Höhe über dem Anfang ergänzen, etwa `top 60 cm`"},
    ),
    "no-unit/length": Wording(
        "{what}: die Einheit fehlt",
        labels={"bare": "eine bloße Zahl", "row": "diese Zeile hat keine Einheit"},
        helps={
            "row-unit": "die Zeile mit einer Einheit enden lassen, etwa cm",
            "or-count": "es in `cm`, `mm`, `in` oder `{count}` schreiben",
            "length": "es in `cm`, `mm` oder `in` schreiben",
        },
    ),
    "no-width-left/piece": Wording(
        "Teil `{piece}` hat bei `{level}` keine Breite mehr",
        labels={"width": "{width}"},
        helps={
            "less-in": "die beiden Kanten weniger nach innen führen, zusammen um mehr als {lacking}",
            "leave-some": "dort etwas Breite lassen: eine Spitze sind ein oder zwei Maschen, abgekettet oder zusammengezogen",
        },
    ),
    "not-positive/copies": _COPIES,
    "not-positive/edge-steps": Wording("eine Kante in Stufen braucht mindestens eine Stufe", labels={"steps": "{times} Stufen"}),
    "not-positive/every": _EVERY,
    "not-positive/length": Wording(
        "{what}: der Wert muss {above:?größer als null|null oder größer} sein",
        labels={"amounts": "{amounts}"},
        helps={"above-nothing": "schreiben, was gemessen ist, {above:?größer als null|null oder größer}"},
    ),
    "count-not-whole": Wording(
        "{what}: `{name}` ist keine ganze Zahl",
        labels={"here": "{values}"},
        helps={"round": "sie runden, wie in `let whole = round({name} to 1)`"},
    ),
    "not-positive/number": _NUMBER,
    "not-positive/rate": Wording(
        "eine Kante, die sich in einem Takt verschiebt, verschiebt sich mindestens um eine Masche",
        labels={"none": "um keine Masche"},
        helps={"a-stitch-or-straight": "`by 1 stitch` schreiben, oder `straight`, wo sie sich nicht verschiebt"},
    ),
    "not-positive/repeats": _REPEATS,
    "not-positive/times": _TIMES,
    "range-falls": Wording(
        "{what}: der Bereich geht von der zweiten Zahl hinunter zur ersten",
        labels={"from-to": "von {low} bis {high}"},
        helps={"lesser-first": "die kleinere Zahl zuerst schreiben, oder nur eine Zahl"},
    ),
    "rate-not-kept/increase-at-carriage": Wording(
        "die Kante bis `{to_level}` kann sich nicht {rows:in jeder Reihe|alle # Reihen} verschieben: eine einfache Zunahme wird "
        "dort gearbeitet, wo der Schlitten steht, und der kommt jede zweite Reihe zurück",
        labels={"every": "{rows:in jeder Reihe|alle # Reihen}"},
        helps=_RATE_HELPS,
    ),
    "rate-not-kept/several-at-carriage": Wording(
        "die Kante bis `{to_level}` kann sich nicht {rows:in jeder Reihe|alle # Reihen} verschieben: {stitches} Maschen auf einmal "
        "werden dort abgekettet oder angeschlagen, wo der Schlitten steht, und der kommt jede zweite Reihe zurück",
        labels={"every": "{rows:in jeder Reihe|alle # Reihen}"},
        helps=_RATE_HELPS,
    ),
    "rate-not-kept/too-few-rows": Wording(
        "von `{low}` bis `{to_level}` sind weniger Reihen, als die Kante braucht, um sich einmal zu verschieben",
        labels={"every": "alle {every} Reihen"},
        notes={"there": "Reihen dort: {rows}"},
        helps={"straight": "die Kante gerade bis `{to_level}` führen", "fewer": "oder weniger Reihen schreiben"},
    ),
    "rate-not-kept/two-at-once": Wording(
        "die Kante bis `{to_level}` verschiebt sich um {stitches:eine Masche|je # Maschen}, und mit `two at once` sind es zwei",
        labels={"two": "`two at once`"},
        helps={"write": "`in 2 stitches every {every} rows` schreiben"},
    ),
    "repeated-statement/across": Wording(
        "die Breite von Teil `{piece}` ändert sich bei `{level}` zweimal quer",
        labels={"again": "hier noch einmal", "first": "zuerst hier"},
        helps={"leave-one-out": "eines von beiden weglassen"},
    ),
    "reserved-name/called-edge": Wording(
        "jedes Teil hat schon eine Kante `{name}`",
        labels={"here": "heißt hier so"},
        notes={"kept": "vorbehaltene Namen: {kept:`/, }"},
        helps={"rename": "sie anders nennen"},
    ),
    "rows-across": Wording(
        "{what} läuft quer, und Reihen laufen nach oben",
        labels={"rows": "Reihen"},
        helps={"width": "eine Länge oder Maschen schreiben"},
    ),
    "shape-ring": Wording(
        "{ring:`/ verwendet }: das hat kein Ende",
        labels={"again": "verwendet `{again}` noch einmal"},
        helps={"without": "eine dieser Formen ohne die anderen schreiben"},
    ),
    "stitches-up": Wording(
        "{what} läuft nach oben, und Maschen laufen quer",
        labels={"stitches": "Maschen"},
        helps={"height": "eine Länge oder Reihen schreiben"},
    ),
    "stretch-falls": Wording(
        "{what} geht von `{from_level}` bis `{to_level}`, und das liegt nicht darüber",
        labels={"from-to": "von `{from_level}` bis `{to_level}`"},
        notes=_LEVELS,
        helps={"higher": "hinter `to` eine Höhe über `{from_level}` nennen"},
    ),
    "two-at-once-outwards": Wording(
        "die Kante bis `{to_level}` geht nach außen, und zwei Maschen auf einmal lassen sich nur abnehmen",
        labels={"two": "`two at once`"},
        helps={"one-at-a-time": "`two at once` weglassen"},
    ),
    "width-of-one-edge": Wording(
        "eine Breite gehört beiden Kanten; eine Kante allein wird an eine Stelle geführt, oder verschiebt sich um eine Länge",
        labels={"one-edge": "nur die {side:term}e Kante"},
        helps={
            "write-place": "schreiben, wie weit von der Mittellinie sie zu liegen kommt, etwa `to 9 cm from centre`",
            "write-by": "oder `by` schreiben, und wie weit die {side:term}e Kante sich verschiebt",
        },
    ),
    "edges-to-one-place": Wording(
        "zwei Kanten werden an dieselbe Stelle geführt",
        labels={"both": "beide Kanten"},
        helps={"one-by-one": "`left edge` und `right edge` einzeln führen, oder sagen, wie breit das Teil dort ist"},
    ),
    "wrong-unit/length": Wording(
        "{what}: hier gehört eine Länge hin",
        labels={"dimension": "{dimension}"},
        helps={"a-length": "eine Länge schreiben, etwa `40 cm`"},
    ),
}
