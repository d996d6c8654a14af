"""German words for what lies in a piece and what holds it: panels, lines, repeats, wedges and what happens in the same rows."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "in-repeat": Wording(
        "{what} von Teil `{piece}`: das fällt in Reihen, die wiederholt werden",
        labels={"this": "{what}", "repeated": "hier wiederholt"},
        helps={"before-or-after": "es vor oder nach diesen Reihen arbeiten"},
    ),
    "panel-fabric": Wording(
        "{what} lässt sich in den Reihen von `{around}` nicht als Bahn stricken",
        labels={
            "part": "über einen Teil der Breite",
            "fabric": "{stitch:term} in `{yarn}`, Maschenweite {tension}",
            "around": "{around_stitch:term} in `{around_yarn}`, Maschenweite {around_tension}",
        },
        helps={
            "same-yarn": "eine Bahn ist aus hochgehäkelten Rippen oder einem Gestrick mit Strickschrift, im selben Garn und mit "
            "derselben Maschenweite",
            "whole-width": "oder das Gestrick über die ganze Breite gehen lassen",
        },
    ),
    "repeat-changes-width": Wording(
        "die {side:term}e Kante von Teil `{piece}` endet in den wiederholten Reihen anderswo, als sie beginnt",
        labels={"from-to": "von `{from_level}` bis `{to_level}`"},
        notes={"centre": "{before} von der Mitte bei `{from_level}`, {after} bei `{to_level}`"},
        helps={"straight": "die Kanten dort gerade führen, oder zurück an die Stelle, an der sie begonnen haben"},
    ),
    "repeats-without-chart": Wording(
        "{what} ist {repeats} Rapporte breit und hat keine Strickschrift, die sich wiederholt",
        labels={"repeats": "{repeats} Rapporte", "stitch": "{stitch:term}"},
        helps={"give-width": "die Breite in cm oder Maschen angeben"},
    ),
    "shoulders-at-top": Wording(
        "die Schultern sind ab `{from_level}`, dem oberen Ende von Teil `{piece}`, in Haltestellung: für sie bleiben keine Reihen",
        labels={"top": "vom oberen Ende an"},
        notes={"levels": "Höhen vom Anfang aufwärts: {levels}"},
        helps={"lower": "eine Höhe unter dem oberen Ende nennen"},
    ),
    "stretches-overlap/two-things": Wording(
        "{one} und {other} von Teil `{piece}` haben gemeinsame Reihen",
        labels={"one": "{one}", "other": "{other}"},
        helps={
            "end-before": "das eine enden lassen, bevor das andere beginnt",
            "within-or-outside": "es innerhalb der wiederholten Reihen beginnen und enden lassen, oder außerhalb",
        },
    ),
    "stretches-overlap/wedges": Wording(
        "zwei Keile von Teil `{piece}` haben gemeinsame Reihen",
        labels={"this": "dieser", "that": "und dieser"},
        helps={"same-time": "gleichzeitig gearbeitet werden Keile an je einer Kante, zwischen denselben beiden Höhen"},
    ),
    "wedge-too-wide/both": Wording(
        "die Keile an beiden Kanten sind zusammen breiter als Teil `{piece}`",
        labels={"other": "{other_held} in Haltestellung", "one": "{one_held} in Haltestellung"},
        notes={"room": "das Teil ist dort {room} breit"},
        helps={"narrower": "sie zusammen {by} schmaler machen"},
    ),
    "wedge-too-wide/one": Wording(
        "{wedge}: breiter, als in Teil `{piece}`{each:? an jeder Kante} Platz ist",
        labels={"held": "{held} in Haltestellung"},
        notes={"room": "Platz ist{each:? an jeder Kante} für {room}"},
        helps={"narrower": "{over} schmaler machen, oder das Teil dort{each:? an jeder Kante} um so viel breiter"},
    ),
    "while-held/parting": Wording(
        "Teil `{piece}` {rejoins:?geht bei `{opening}` wieder zusammen|teilt sich bei `{opening}`}, in Reihen, in denen Maschen in "
        "Haltestellung sind",
        labels={"at": "{rejoins:?geht zusammen|teilt sich} bei {at}", "held": "hier in Haltestellung"},
        helps={"end-or-begin": "den Keil vor dieser Reihe enden lassen, oder nach ihr beginnen"},
    ),
    "while-held/whole-width": Wording(
        "{what} von Teil `{piece}`: das fällt in Reihen, in denen Maschen in Haltestellung sind",
        labels={"this": "{what}", "held": "hier in Haltestellung"},
        helps={
            "before-or-after": "es arbeiten, bevor sie in Haltestellung kommen, oder wenn sie wieder in Arbeit sind",
        },
    ),
    "while-parted": Wording(
        "{what} von Teil `{piece}`: das braucht die ganze Breite, und das Teil ist dort geteilt",
        labels={"this": "{what}", "open": "offen von {low} bis {high}"},
        helps={"before-or-after": "es vor der Teilung arbeiten, oder wenn die Hälften wieder zusammen sind"},
    ),
    "line-inside/opening": Wording(
        "die Kante einer Öffnung lässt sich nicht an einer Linie in der Hälfte daneben formen",
        labels={"shaped": "in einer Öffnung"},
        helps={"opening": "unter der Öffnung an der äußeren Kante formen"},
    ),
    "line-inside/slope": Wording(
        "an einer Linie in einem Teil werden Maschen gleichmäßig und einzeln ab- und zugenommen",
        labels={"shaped": "bis `{to_level}`"},
        helps={"slope": "`slope` schreiben, ohne Abketten"},
    ),
    "line-inside/fabric": Wording(
        "{fabric:?Gestrick `{fabric}`|ein Motiv} wird nach Nadeln gearbeitet, und wo ein Teil innen geformt wird, kommen Maschen "
        "auf andere Nadeln",
        labels={"shaped": "bis `{to_level}`"},
        helps={"fabric": "in glatt Gestricktem formen, darunter oder darüber, oder am Rand"},
    ),
    "line-inside/one-place": Wording(
        "beide Kanten werden an einer Linie geformt",
        labels={"shaped": "beide Kanten"},
        helps={"one-place": "`left edge` und `right edge` einzeln schreiben, oder von der Kante zählen"},
    ),
    "line-inside/no-room": Wording(
        "neben einer Linie, an der die Kante bis `{to_level}` geformt wird, sind zu wenige Maschen",
        labels={"shaped": "kein Platz"},
        notes={
            "between-outermost": "was alle ihre Linien abnehmen, geht zwischen den beiden äußersten ab",
            "other-edge": "die Linie der anderen Kante in denselben Reihen ist weniger als 2 Maschen davon entfernt",
        },
        helps={
            "no-room": "zwischen Linie und Kante und zur nächsten Linie müssen einige Maschen liegen: sie anderswohin legen",
        },
    ),
    "many-stitches-moved": Wording(
        "für jede Masche, die die Kante bis `{to_level}` innen ab- oder zunimmt, werden {stitches} Maschen von Hand umgehängt",
        labels={"shaped": "außerhalb der Linie"},
        helps={
            "seam": "das Teil in Bahnen stricken, sodass eine Naht der Abnäher ist, oder am Rand formen",
            "nearer": "oder die Linie näher an die Kante legen: mit einem Decker mit {prongs:einer Zinke|# Zinken} lassen sich "
            "{most} Maschen umhängen",
        },
    ),
}
