"""German how-tos of stitches that wait, are closed or drawn up, and of what is done at the end."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "off-on-waste-yarn-in-mid-row": HowToText(
        "Mitten in der Reihe auf Hilfsgarn stilllegen",
        "Das Garn des Kleidungsstücks lassen, wo es ist. Mit einem Stück Hilfsgarn diese Maschen von Hand stricken, 8 Reihen,"
        " und vom Nadelbett nehmen; oder es mit einer stumpfen Wollnadel durch die Maschen ziehen und sie abheben. Die leeren"
        " Nadeln außer Arbeit schieben.",
        "ein Hilfsgarn durch die Maschen in der Mitte gezogen, ihre Nadeln außer Arbeit",
    ),
    "off-on-waste-yarn-at-the-end": HowToText(
        "Am Ende auf Hilfsgarn abstricken",
        "Das Hilfsgarn in den Schlitten einfädeln und die Reihen stricken. Darauf achten, dass ein Teil, der auf seinen Nadeln"
        " wartet, ganz vorn steht und der Schlitten ihn nicht strickt; einer auf Trennfaden bleibt ganz hinten. Die Gewichte"
        " abnehmen und das Gestrick halten: dann das Garn herausnehmen und noch einmal ohne Garn hinüberfahren, so dass das"
        " Gestrick von den Nadeln fällt. Die leeren Nadeln außer Arbeit schieben.",
        "leere Nadeln; darunter halten Reihen Hilfsgarn die letzten Maschen",
    ),
    "closing-stitches-without-yarn": HowToText(
        "Maschen ohne Garn schließen",
        "Links beginnen. Die erste Masche auf die Nadel rechts daneben hängen, hinter die Masche dort, und diese mit der"
        " Repassiernadel nach vorn durch sie ziehen, so dass eine Masche bleibt; so nach rechts weiter. Die letzte Masche"
        " kommt auf die Nadel danach, die dann zwei zusammenstrickt. Die Kette nicht dehnen: sie ist so lang, wie die Maschen"
        " waren.",
        "Maschen, nach rechts durcheinander gezogen",
    ),
    "a-slot-on-waste-yarn": HowToText(
        "Ein Schlitz auf Hilfsgarn",
        "Die genannten Maschen von Hand mit einem Stück Hilfsgarn stricken, einige Reihen, und fallen lassen; das Hilfsgarn"
        " vorn feststecken. Dann auf denselben Nadeln neu anschlagen, siehe unten. Die Maschen auf dem Hilfsgarn warten auf"
        " einen Daumen, eine Tasche oder einen Taschenbeutel: eine Zeile, die sie einhängt, nennt sie beim Namen des"
        " Schlitzes, und den Fuß der darüber angeschlagenen Maschen, die auch warten, seine Kante „oben“.",
        "unten Maschen auf Hilfsgarn, darüber neue Maschen auf ihren Nadeln",
    ),
    "e-wrap-with-a-length-of-its-own": HowToText(
        "Wickelanschlag mit eigenem Fadenstück",
        "Das Garn im Schlitten bleibt, wo es ist. Vom selben Garn ein Stück abschneiden, etwa viermal so lang, wie die Nadeln"
        " breit sind. Die leeren Nadeln ganz nach vorn bringen; das Stück von links nach rechts um jede führen, eine"
        " gekreuzte Schlinge auf jeden Nadelschaft, nicht stramm. An beiden Enden ein Fadenende lassen: sie schließen die"
        " Ecken und werden beim Zusammennähen vernäht. Ein Gewicht darunter hängen.",
        "ein kurzes Stück Garn, zwischen den Maschen um die leeren Nadeln gewickelt",
    ),
    "back-stitch-cast-off": HowToText(
        "Mit Rückstichen abnähen",
        "Das Garn mit dem Fadenende abschneiden, das die Zeile nennt, etwa dreimal so lang wie die Breite, und in eine stumpfe"
        " Wollnadel fädeln. Von der Schlittenseite aus: durch die zweite Masche, zurück durch die erste, so dass ein"
        " Rückstich über beiden liegt; die erste abgleiten lassen und so weiter, immer zwei vor und eine zurück. Den Faden"
        " nicht fester ziehen als eine Reihe.",
        "eine stumpfe Wollnadel, die Rückstiche durch die letzten Maschen näht",
    ),
    "drawing-up": HowToText(
        "Zusammenziehen",
        "Das Garn mit dem Fadenende abschneiden, das die Zeile nennt, und in eine stumpfe Wollnadel fädeln. Nacheinander durch"
        " jede Masche führen, die Maschen vom Nadelbett heben, zusammenziehen, bis kein Loch bleibt, noch einmal ringsum"
        " gehen und auf der Innenseite befestigen.",
        "das Fadenende durch die letzten Maschen gezogen",
    ),
    "a-marker": HowToText(
        "Ein Markierungsfaden",
        "Einen Faden in anderer Farbe in die Randmasche knoten, an dem Rand oder den Rändern, die die Zeile nennt.",
        "ein Faden in Kontrastfarbe, in die Randmasche geknotet",
    ),
    "buttonholes": HowToText(
        "Knopflöcher",
        "Nach den fertigen Löchern markieren, wo die Knöpfe hinkommen, nicht nach der Zeichnung. Jedes Loch mit einigen Stichen"
        " um seinen Rand sauber machen; ein Loch, das viel aushalten muss, bekommt innen ein Band oder einen kleinen Knopf"
        " zur Verstärkung.",
        "ein Schlitz im Gestrick, seine Ränder umstochen",
    ),
}
