"""German how-tos of putting edges together."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "sewing-row-to-row": HowToText(
        "Reihe an Reihe nähen",
        "Die Teile nebeneinander legen, Außenseiten oben. Die Nadel unter den Querfaden zwischen der Randmasche und ihrer"
        " Nachbarin führen, auf der einen Seite, dann auf der anderen, Reihe für Reihe, und den Faden so anziehen, dass die"
        " Randmaschen sich nach innen legen: eine Masche jeder Seite geht in die Naht.",
        "ein Faden, der zwischen den Randmaschen zweier Teile hin und her geht",
    ),
    "sewing-stitches-to-rows": HowToText(
        "Maschen an Reihen nähen",
        "Die Teile mit den Außenseiten nach oben legen, die Kante aus Maschen an die Kante aus Reihen; zuerst die Mitte, die"
        " Enden und die Viertel feststecken. Auf der Seite der Maschen die Nadel unter beide Schenkel der Masche unmittelbar"
        " innerhalb der Abkett- oder Anschlagkante führen oder, wo die Maschen noch auf Hilfsgarn sind, durch jede Masche,"
        " bevor ihr Hilfsgarn herauskommt; auf der Seite der Reihen unter den Querfaden zwischen der Randmasche und ihrer"
        " Nachbarin. Eine Masche ist breiter, als eine Reihe hoch ist: hier und da zwei Querfäden auf eine Masche nehmen, so"
        " dass beide Kanten aufgehen, oder um so viel länger, wie die Zeile sagt.",
        "ein Faden, der zwischen den Maschen der einen Kante und den Querfäden der anderen hin und her geht, zwei Querfäden für"
        " manche Maschen",
    ),
    "sewing-stitch-to-stitch": HowToText(
        "Masche an Masche nähen",
        "Die beiden Kanten aneinander legen, Außenseiten oben. Die Nadel unter beide Schenkel einer Masche unmittelbar"
        " innerhalb der Abkett- oder Anschlagkante der einen führen, dann der Masche gegenüber, und so Masche für Masche"
        " weiter; den Faden so anziehen, dass beide Ketten sich nach innen legen. Die Naht soll so flach liegen wie eine"
        " Reihe und die Kante nicht zusammenziehen.",
        "ein Faden, der unter den Maschen zweier geschlossener Kanten hin und her geht",
    ),
    "grafting": HowToText(
        "Maschenstich",
        "Die beiden Reihen offener Maschen aneinander legen, Außenseiten oben, und das Hilfsgarn einige Maschen weit abziehen;"
        " wo die Kante an Trennfaden hängt, diesen nach und nach herausziehen. Die erste Reihe eines Teils hat zwischen ihren"
        " Maschen eine Schlinge weniger, als sie Maschen hat: die am Rand wird mit verbunden. Mit einer stumpfen Wollnadel auf"
        " der einen Seite durch eine Masche hinunter und durch die nächste herauf, dann auf der anderen, wie eine Reihe Maschen"
        " läuft, und jede auf die Größe ihrer Nachbarinnen ziehen. Es braucht das Drei- bis Vierfache der Länge der Reihe.",
        "zwei Reihen offener Maschen, verbunden durch einen Faden, der läuft wie eine Reihe Maschen",
    ),
    "linking-on-the-bed": HowToText(
        "Auf dem Nadelbett verbinden",
        "Die eine Kante mit der Seite zu Ihnen, die die Zeile nennt, Masche für Masche auf das Nadelbett hängen, dann die"
        " andere auf dieselben Nadeln mit ihrer anderen Seite zu Ihnen, so dass die Außenseiten aufeinander liegen, jede von"
        " dem Ende an, das die Zeile zuerst nennt. Die Maschenweite zwei bis drei Zahlen lockerer als für die Teile"
        " einstellen, wie die Zeile sagt, bei dickem Garn mehr, und eine Reihe langsam über beide stricken; geht das zu"
        " schwer, die Maschen des zweiten Teils durch die des ersten ziehen und diese stricken. Locker abketten, Masche durch"
        " Masche: die Naht darf nicht fester sein als die Teile und auch nicht länger werden. Nachmessen.",
        "zwei Maschen auf jeder Nadel, eine von jedem Teil",
    ),
    "linking-on-the-bed/plate": HowToText(
        "Auf dem Nadelbett verbinden",
        "Die eine Kante mit der Seite zu Ihnen, die die Zeile nennt, Masche für Masche auf das Nadelbett hängen, dann die"
        " andere auf dieselben Nadeln mit ihrer anderen Seite zu Ihnen, so dass die Außenseiten aufeinander liegen, jede von"
        " dem Ende an, das die Zeile zuerst nennt. Die Platte einsetzen, die die Zeile nennt, wenn es sie gibt die nächste"
        " lockerere, und eine Reihe langsam über beide stricken; geht das zu schwer, die Maschen des zweiten Teils durch die"
        " des ersten ziehen und diese stricken. Locker abketten, Masche durch Masche: die Naht darf nicht fester sein als die"
        " Teile und auch nicht länger werden. Nachmessen.",
        "zwei Maschen auf jeder Nadel, eine von jedem Teil",
    ),
    "sewing-a-gathered-edge": HowToText(
        "Eine eingereihte Kante nähen",
        "Einen Faden durch die längere Kante ziehen und sie auf die Länge der anderen einreihen. Die Mehrweite gleichmäßig"
        " verteilen, feststecken und nähen; der Faden bleibt, bis die Naht fertig ist.",
        "eine längere Kante, in kleinen Wellen über einer geraden eingereiht",
    ),
}
