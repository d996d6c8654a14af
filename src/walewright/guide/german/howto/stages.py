"""German how-tos of what is put by or done in stages: deep ribs, and a part that waits on cord."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "latching-in-stages": HowToText(
        "In Abschnitten hochhäkeln",
        "Ein Maschenstäbchen kann nur so tief fallen, wie es frei über dem Anschlagkamm und den Gewichten hängt: alle 20 bis 30"
        " Reihen auf einem sehr feinen oder feinen Nadelbett, alle 10 bis 15 auf einem gröberen, nach einer geraden Zahl, so"
        " dass die Seite des Schlittens bleibt. Bei jeder der genannten Reihen, ein Maschenstäbchen nach dem anderen: einen"
        " Halter, ein Werkzeug oder eine Sicherheitsnadel, durch den Fuß des Stäbchens stecken, dann es fallen lassen,"
        " hochhäkeln und die letzte Masche einhängen. Der erste Abschnitt beginnt in der ersten Masche der Rippe, jeder"
        " andere in der Masche, die zuletzt eingehängt wurde. Der letzte Abschnitt wird vor dem Abketten gearbeitet; unter"
        " einem Loch bis zu dessen Reihe hochhäkeln, das Loch arbeiten und weiter.",
        "ein Halter in der zuletzt hochgehäkelten Masche, darüber die Querfäden",
    ),
    "a-part-waiting-on-ravel-cord": HowToText(
        "Ein Teil, der auf Trennfaden wartet",
        "Nadeln, die mehr als etwa 30 Reihen ganz vorn stehen, nutzen ihre Maschen ab; daher wartet dieser Teil ganz hinten."
        " Von der Mitte nach außen den Trennfaden von Hand in den Haken jeder Nadel legen, die Nadel durch ihre Masche"
        " zurückschieben, wie es der Schlitten täte, und weiter, so weit sie zurückgeht: der Trennfaden hält die Masche auf"
        " ihrer eigenen Nadel. Lange Enden lassen und die Gewichte von diesem Teil nehmen. Ist er an der Reihe, die Nadeln"
        " ganz nach vorn schieben, so dass jede Masche hinter ihrer offenen Zunge liegt, den Trennfaden von einem Ende her"
        " herausziehen, zählen und die Gewichte wieder anhängen.",
        "drei Nadeln ganz hinten mit Trennfaden in ihren Haken, ihre Maschen darauf gehalten",
    ),
}
