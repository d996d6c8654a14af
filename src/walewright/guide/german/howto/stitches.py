"""German how-tos of stitch patterns: moved, held, dropped, crossed and re-formed stitches."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "eyelet-and-lace": HowToText(
        "Löcher und Lochmuster",
        "Mit dem Decker die Masche von ihrer Nadel nehmen und auf die Nadel daneben hängen, auf die Masche dort. Die leere"
        " Nadel in Arbeit lassen: die nächste Reihe legt das Garn über ihren Haken, die Reihe danach macht eine Masche"
        " daraus, und das Loch ist offen. Maschen, die zusammen eine Nadel weiterrücken, werden zusammen umgehängt, mit einem"
        " Decker mit so vielen Zinken. Vor jeder Reihe nachsehen, dass alle Zungen offen sind und die doppelt belegten Nadeln"
        " ein wenig vorn stehen.",
        "eine Masche auf die Nadel rechts daneben gehängt, ihre eigene Nadel leer in Arbeit gelassen",
    ),
    "tuck-by-holding": HowToText(
        "Fangmasche durch Halten",
        "Die Nadel ganz nach vorn ziehen und mit ihrer Masche warten lassen, während der Schlitten vorbeigeht; das Garn liegt"
        " jedes Mal über ihrem Schaft. Sind ihre Reihen vorbei, sie zurückschieben, bis ihre Zunge hinter der Masche liegt:"
        " die nächste Reihe zieht eine Schlinge durch die Masche und alle Fäden. Das Gewicht gleichmäßig halten; eine Nadel,"
        " die zu lange wartet, verliert ihre Fäden.",
        "eine nach vorn gezogene Nadel, zwei Fäden liegen zwischen ihren Nachbarinnen darüber",
    ),
    "slip": HowToText(
        "Hebemasche",
        "Die Nadel ganz nach vorn ziehen, die Reihe stricken und den neuen Faden über ihren Haken auf Ihre Seite abheben: er"
        " liegt quer über der linken Maschenseite, und die Masche ist eine Reihe höher. Die Nadel sofort zurückschieben.",
        "eine nach vorn gezogene Nadel, der Faden vor ihrer Masche abgehoben",
    ),
    "long-stitch": HowToText(
        "Lang gezogene Masche",
        "Die Nadel ganz nach vorn ziehen und die Reihe stricken: das Garn liegt über ihrem Schaft. Dann, von der Nadel an, die"
        " dem Schlitten am nächsten ist, jede von Hand zurückschieben, so dass sie dieses Garn durch ihre Masche nimmt, und"
        " die neue Masche mit dem Werkzeug lang ziehen, dabei Garn vom Schlitten nachgeben: von den Nachbarinnen genommen,"
        " würde es diese fest machen. Alle gleich: eine Pappe oder einen dünnen Stab zwischen Nadelbett und Maschen legen, um"
        " danach zu messen.",
        "zwei Maschen, weit länger gezogen als ihre Nachbarinnen",
    ),
    "ladder": HowToText(
        "Leiter",
        "Die erste Masche der Leiter auf ihre Nachbarin hängen und die Nadel in Arbeit lassen: sie beginnt ein neues"
        " Maschenstäbchen, das gestrickt wird wie die anderen. Sind die Reihen vorbei, das Maschenstäbchen fallen lassen: es"
        " läuft hinab bis dorthin, wo es begann, und nicht weiter. Die Nadel in Arbeit lassen; die nächste Reihe beginnt es"
        " neu. Die Querfäden gerade ziehen.",
        "ein Stäbchen aus Querfäden zwischen zwei Maschenstäbchen",
    ),
    "crossing-stitches": HowToText(
        "Maschen verkreuzen",
        "Die beiden Gruppen mit zwei Deckern abnehmen. Die Gruppe, die die Zeichenerklärung zuerst nennt, hinüber auf die"
        " Nadeln der anderen hängen, dann die andere auf die übrigen Nadeln. Alle nach vorn ziehen, Zungen offen hinter den"
        " Maschen, und die nächste Reihe langsam stricken, von Hand, wenn es schwer geht. Die zuerst gehängte Gruppe liegt"
        " auf der rechten Maschenseite vorn.",
        "zwei Maschen über zwei andere geführt",
    ),
    "slack-beside-a-cross": HowToText(
        "Spiel neben einer Verkreuzung",
        "Vor dem Verkreuzen die linken Maschenstäbchen daneben von ihren Nadeln fallen lassen, eines links und"
        " eines rechts, nur bis dorthin, wo sie zuletzt hochgehäkelt wurden: die Querfäden geben das Garn, das die"
        " verkreuzten Maschen brauchen. Verkreuzen, dann sie zu Ihnen hin bis oben hochhäkeln und wieder einhängen.",
        "die Maschenstäbchen zu beiden Seiten einer Gruppe zu Querfäden gefallen, eines wird hochgehäkelt",
    ),
    "purl-columns-and-ridges": HowToText(
        "Linksrippen und Querrippen",
        "Maschen, die auf der rechten Maschenseite ihre linke Seite zeigen, werden glatt gestrickt und neu gebildet. Sind die"
        " Reihen der Folge fertig, die Repassiernadel von Ihrer Seite aus durch die Masche unter der ersten davon stecken,"
        " das Maschenstäbchen von seiner Nadel fallen lassen, den Querfaden dahinter fassen und zu Ihnen hin durchziehen,"
        " einen nach dem anderen; die letzte Masche wieder einhängen. Das Stäbchen zeigt dann rechte Maschen auf der Seite,"
        " die Ihnen zugewandt ist. Für eine Querrippe wird jedes Maschenstäbchen der Reihe so neu gebildet, eine Reihe tief.",
        "ein gefallenes Maschenstäbchen, die Repassiernadel zieht seine Querfäden einen nach dem anderen durch",
    ),
}
