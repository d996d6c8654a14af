"""German words for stitches and rows that cannot be."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "band-parted": Wording(
        (
            "Blende `{band}` nimmt bis zu {stitches} Nadeln, und das Nadelbett hat {needles}{missing:? nebeneinander}: sie wird in "
            "{parts} Teilen gestrickt"
        ),
        labels={"picked-up-here": "hier aufgefasst"},
        notes={
            "part": "`{part}`: entlang `{along}`",
            "cut-rows": "in `{edge}` wird sie {far} über dem unteren Ende geteilt",
            "cut-stitches": "in `{edge}` wird sie {far} vom linken Ende geteilt",
            "ends-sewn": "wo die Enden zusammentreffen, werden sie zusammengenäht, von jedem eine Masche",
        },
        helps={"bands-of-their-own": "sie als eigene Blenden schreiben, um sie anderswo zu teilen"},
    ),
    "buttonholes-crowded": Wording(
        "die {buttonholes} Knopflöcher von Blende `{band}` passen nicht auf sie",
        labels={"buttonholes-here": "hier Knopflöcher"},
        notes={
            "band-has": "{size}: {stitches:Masche|Maschen} und {rows:Reihe|Reihen}{part:? in dem Teil, der sie hat}",
        },
        helps={
            "deeper": (
                "{chained:?der Blende einen Randabschluss geben, der eine Tiefe hat|die Blende tiefer machen}: ein Knopfloch "
                "braucht zwei Reihen unter sich und zwei über sich"
            ),
            "fewer": "höchstens {room:Knopfloch|Knopflöcher} arbeiten",
            "nearer-ends": "das erste und das letzte näher an die Enden legen",
        },
    ),
    "called-edges-differ": Wording(
        "`{edge}` von Teil `{piece}` hat auf einer Seite mehr Reihen als auf der anderen",
        labels={"called": "heißt `{edge}`"},
        notes={"rows": "{size}: links {left} Reihen, rechts {right}"},
        helps={"call-each": "jeder Kante einen eigenen Namen geben (`left edge ... called`, `right edge ... called`)"},
    ),
    "cap-cannot-meet": Wording(
        "wie hoch die freien Höhen von Teil `{piece}` auch liegen, `{one}` und `{other}` treffen nicht aufeinander",
        labels={"joined-here": "hier verbunden", "free": "`{level}` ist frei", "piece": "Teil `{piece}`"},
        helps={"change-widths": "die Breiten ändern, aus denen diese Kanten entstehen, oder mehr Einhalten erlauben"},
    ),
    "counts-conflict/alone": Wording("{failing:cannot}"),
    "counts-conflict/because": Wording("{failing:cannot}, denn {because:and}"),
    "free-level-without-room": Wording(
        "wo die freien Höhen von Teil `{piece}` auch liegen: {failing:cannot}",
        labels={"free": "`{level}` ist frei"},
        helps={
            "go-farther": "`{level}` von Teil `{piece}` weiter reichen lassen, oder die Kanten zwischen diesen Höhen weniger nach "
            "innen führen",
        },
    ),
    "hole-at-edge/buttonhole": Wording(
        "ein Knopfloch von Teil `{piece}` reicht an eine Kante oder an Maschen, die gerade umgehängt werden",
        labels={"here": "hier"},
        notes={"needs": "ein Loch braucht auf jeder Seite eine Masche, die in den Reihen ringsum nicht umgehängt wird"},
        helps={
            "move-them": "sie {cm} {inwards:?weiter weg von der {edge:term}en|näher an die {edge:term}e} Kante arbeiten",
            "room": "das Teil dort breiter machen, oder die Knopflöcher über weniger Maschen arbeiten",
        },
    ),
    "hole-at-edge/slot": Wording(
        "Schlitz `{slot}` von Teil `{piece}` reicht an eine Kante oder an Maschen, die gerade umgehängt werden",
        labels={"here": "hier"},
        notes={"needs": "ein Loch braucht auf jeder Seite eine Masche, die in den Reihen ringsum nicht umgehängt wird"},
        helps={
            "further": "ihn auf dem Nadelbett {cm} weiter nach {side:term}s legen",
            "narrower": "ihn schmaler machen, oder `{level}` dorthin legen, wo die Kanten gerade verlaufen und das Teil nicht "
            "geteilt ist",
        },
    ),
    "join-does-not-meet": Wording(
        "`{one}` und `{other}` treffen nicht aufeinander",
        labels={"joined-here": "hier verbunden"},
        notes={"runs-along": "`{one}` läuft entlang {one_kinds:and}, `{other}` entlang {other_kinds:and}"},
        helps={
            "change-levels": "die Höhen oder Breiten ändern, aus denen diese Kanten entstehen, oder mehr Einhalten erlauben",
            "rows-to-stitches": "eine Seite entlang Reihen und die andere entlang Maschen laufen lassen, oder sie mit `easing` "
            "nach Länge nähen",
            "sew-it": "sie zusammennähen: nur Maschen und Maschen lassen sich so verbinden, dass sie {way:term} werden",
            "some-easing": "etwas Einhalten erlauben: dann werden ihre Längen verglichen",
        },
    ),
    "motif-outside/edge": Wording(
        "`{motif}` auf Teil `{piece}` reicht bis an dessen Kante oder darüber hinaus",
        labels={"begun-here": "hier begonnen", "as-large": "{stitches:Masche|Maschen} breit"},
        helps={
            "towards-the-middle": (
                "es zur Mitte rücken, oder dort beginnen, wo das Teil breiter ist: auf jeder Seite muss eine Masche bleiben"
            ),
        },
    ),
    "motif-outside/opening": Wording(
        "`{motif}` auf Teil `{piece}` reicht in eine Öffnung",
        labels={"begun-here": "hier begonnen", "as-large": "{stitches:Masche|Maschen} breit, {rows:Reihe|Reihen} hoch"},
        helps={
            "away-from-the-opening": "es tiefer beginnen, oder von der Öffnung wegrücken: daneben muss eine Masche bleiben",
        },
    ),
    "motif-too-high": Wording(
        "`{motif}` auf Teil `{piece}` ist höher, als das Gestrick dort weitergeht",
        labels={"begun-here": "hier begonnen", "as-large": "{rows:Reihe|Reihen} hoch"},
        helps={"lower": "es an einer tieferen Höhe beginnen"},
    ),
    "no-proven-best": Wording(
        "für {pieces:and} sind innerhalb der Rechengrenze keine besten Zahlen gefunden worden",
        helps={"differ-less": "Maße angeben, die sich von Größe zu Größe weniger unterscheiden, oder weniger Größen"},
    ),
    "panel-crossed": Wording(
        "die Bahn aus {fabric} in Teil `{piece}` wird durchschnitten",
        labels={"panel": "diese Bahn"},
        helps={"narrower": "die Bahn schmaler machen, sie darunter enden lassen, oder sie oder das andere zur Seite rücken"},
    ),
    "rib-without-column": Wording(
        "{rib} hat keine Masche, auf der sich die Rippen hochhäkeln ließen",
        labels={"too-narrow": "zu schmal für Rippen", "rib": "hochgehäkelte Rippen"},
        notes={"end-needles": "die beiden Endnadeln werden nie hochgehäkelt: sonst würde der Rand laufen"},
        helps={
            "inwards": "die Bahn nach innen rücken",
            "wider": "es {stitches:Masche|Maschen} oder mehr breit machen ({cm})",
            "no-rib": "oder es in einem Gestrick ohne Rippen stricken",
        },
    ),
    "sizes-not-graded": Wording(
        "die Größen lassen sich nicht so gleichmäßig abstufen, wie es verlangt ist: jede lässt sich für sich stricken, aber nicht "
        "alle zusammen",
        labels={"let-go": "hier nicht eingehalten", "first-piece": "das erste Teil"},
        notes={
            "goes-down": "abnehmend von einer Größe zur nächsten, wo es das nicht sollte: {figure}",
            "rows-of-its-own": "wo Größen verschieden geformt sind, hat jede ihre eigenen Reihen",
        },
        helps={
            "differ-more": "Maße angeben, die sich von Größe zu Größe mehr unterscheiden, oder die Größen nach getrennten "
            "Anleitungen stricken",
        },
    ),
    "slope-too-flat": Wording(
        "die Kante bis `{level}` verschiebt sich um mehr Maschen, als ihre Reihen erlauben",
        labels={"over": "um {change} in {rows}"},
        notes={"too-much": "sie verschiebt sich um {wide} zu viel, oder ihr Ende liegt {tall} zu tief"},
        helps={
            "fashioned": "`fashioned 1 in` dahinter schreiben: mit einem Decker wird in jeder Reihe eine Masche zugenommen",
            "two-at-once": "`two at once` dahinter schreiben: jede Abnahme nimmt dann zwei Maschen",
            "hold": "die Maschen bleiben lassen und in verkürzten Reihen halten: ein `wedge`, und oben `shoulders`",
        },
    ),
    "start-longer-than-edges": Wording(
        "Teil `{piece}` beginnt mit mehr Maschen, als sich entlang `{along}` auffassen lassen",
        labels={"begun-here": "hier begonnen"},
        notes={"places": "{size}: {stitches:Masche|Maschen} und {places:Stelle|Stellen}"},
        helps={
            "narrower": "es höchstens {widest} breit beginnen",
            "more-edges": "oder es entlang weiterer Kanten beginnen",
        },
    ),
    "wedge-too-steep": Wording(
        "{wedge} hat weniger Maschen als Stufen: eine Stufe nimmt {rows_a_step} Reihen und mindestens eine Masche",
        labels={"in": "{stitches} in {rows}"},
        helps={"wider-or-lower": "den Keil breiter machen, oder tiefer enden lassen"},
    ),
    "wider-than-bed/band": Wording(
        "Blende `{band}` nimmt bis zu {stitches} Nadeln, und das Nadelbett hat {needles}",
        labels={"picked-up-here": "hier aufgefasst"},
        helps={
            "several-bands": "sie als {bands:word} Blenden stricken: {each:/; }",
            "lengthways": (
                "sie der Länge nach stricken, als Teil, das mit `{edge}` verbunden wird; das allein nimmt {takes} Nadeln"
            ),
        },
    ),
    "wider-than-bed/piece": Wording(
        "Teil `{piece}` nimmt bis zu {takes} Nadeln, und das Nadelbett hat {needles}",
        labels={"widest": "am breitesten {where}{by_side:?, gerechnet nach der {by_side:term}en Seite}"},
        notes={
            "takes": "{size}: {cm} {where}{by_side:?, gerechnet nach der {by_side:term}en Seite,} nehmen {takes} Nadeln",
            "needles-make": "mit {tension:.1f} Maschen auf 10 cm ergeben {needles} Nadeln {room}",
        },
        helps={
            "panels": (
                "es als {panels:word} Teile (Bahnen) von je {each} Nadeln stricken, verbunden durch {seams:=eine Naht|{seams} "
                "Nähte}"
            ),
        },
    ),
}
