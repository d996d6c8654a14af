"""German how-tos of bands, hems and other edges."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "hanging-a-first-row": HowToText(
        "Eine erste Reihe einhängen",
        "Das Teil auf den Kopf drehen, die Seite, die die Zeile nennt, zu Ihnen: mit der linken Maschenseite zu Ihnen kommt"
        " seine rechte Kante nach links. Den Bogen zwischen zwei Maschen der ersten Reihe des Kleidungsstücks auf je eine"
        " Nadel hängen und die äußerste Masche des Randes auf die letzte; hängen alle, den Trennfaden ziehen, und das"
        " Hilfsgarn fällt ab.",
        "Maschen der ersten Reihe, die eine nach der anderen auf die Nadeln gehängt werden",
    ),
    "picking-up-along-rows": HowToText(
        "Entlang von Reihen auffassen",
        "Die Seite, die die Zeile nennt, ist Ihnen zugewandt, die Kante entlang der Nadeln. An ihr entlanggehen, wie die Zeile"
        " sagt: was sie zuerst nennt, ihr unteres oder ihr linkes Ende, hängt auf der Nadel, die zuerst genannt ist. Links"
        " und rechts sind die des Teils, wie es auf dem Nadelbett hing. Beide Enden, die Mitte und die Viertel zuerst"
        " einhängen. Maschen auf Hilfsgarn werden einzeln eingehängt und das Hilfsgarn entfernt; entlang von Reihen die Nadel"
        " durch die Kante schieben, eine ganze Masche tief, und die Maschen gleichmäßig verteilen: etwa drei auf vier Reihen,"
        " so viele, wie die Zeile sagt. Entlang einer abgeketteten Kante beide Fäden der Kette nehmen, Masche für Masche;"
        " entlang einer Anschlagkante den Bogen am Fuß jeder Masche.",
        "Nadeln, die eine Kante in gleichen Abständen auffassen, weniger, als Reihen da sind",
    ),
    "latched-rib": HowToText(
        "Hochgehäkelte Rippen",
        "Ein Maschenstäbchen nach dem anderen. Die Repassiernadel durch die Masche des Stäbchens in der ersten Reihe der Rippen"
        " stecken, damit sie nicht weiterläuft, das Werkzeug auf Ihrer Seite; das Stäbchen von seiner Nadel fallen lassen;"
        " einen Querfaden nach dem anderen zu Ihnen hin durchziehen, bis oben, und die letzte Masche wieder einhängen. Das"
        " Stäbchen zeigt dann rechte Maschen auf der Seite, die Ihnen zugewandt ist.",
        "ein Maschenstäbchen bis zu seiner ersten Reihe gefallen, ein anderes wird hochgehäkelt",
    ),
    "mock-rib-1-by-1": HowToText(
        "Scheinrippen 1 zu 1",
        "Jede zweite Nadel, von links gezählt und ohne die letzte, außer Arbeit schieben, bevor das Hilfsgarn angeschlagen"
        " wird; die doppelte Höhe stricken, die Reihe in der Mitte lockerer, wo die Zeilen es sagen. Dann die leeren Nadeln"
        " wieder in Arbeitsstellung bringen, die erste Reihe nach vorn hochschlagen, zu Ihnen hin, linke Maschenseiten"
        " aufeinander, und ihre Maschen einhängen: die links von jeder leeren Nadel auf diese, die anderen dorthin, woher sie"
        " kamen. Die lockerere Maschenweite einstellen, die die Zeile nennt, und beide Lagen in einer Reihe zusammenstricken."
        " Die Querfäden der Lücken ziehen sich zu Rippen zusammen.",
        "jede zweite Nadel außer Arbeit, Querfäden in den Lücken",
    ),
    "mock-rib-2-by-1": HowToText(
        "Scheinrippen 2 zu 1",
        "Jede dritte Nadel, von links gezählt und ohne die letzte, außer Arbeit schieben, bevor das Hilfsgarn angeschlagen"
        " wird; die doppelte Höhe stricken, die Reihe in der Mitte lockerer, wo die Zeilen es sagen. Dann die leeren Nadeln"
        " wieder in Arbeitsstellung bringen, die erste Reihe nach vorn hochschlagen, zu Ihnen hin, linke Maschenseiten"
        " aufeinander, und ihre Maschen einhängen: die links von jeder leeren Nadel auf diese, die anderen dorthin, woher sie"
        " kamen. Die lockerere Maschenweite einstellen, die die Zeile nennt, und beide Lagen in einer Reihe zusammenstricken."
        " Die Querfäden der Lücken ziehen sich zu Rippen zusammen.",
        "jede dritte Nadel außer Arbeit, Querfäden in den Lücken",
    ),
    "folded-hem": HowToText(
        "Umgeschlagener Saum",
        "Die erste Reihe wird nach vorn hochgeschlagen, zu Ihnen hin, so dass die linken Maschenseiten aufeinander liegen und"
        " die rechte außen ist. Ein Saum am Anfang: den Teil stricken, der innen liegen wird, die Bruchreihe, wenn die Zeilen"
        " eine haben, und die Außenseite; die erste Reihe hochschlagen und jede Masche auf die Nadel hängen, auf der sie"
        " entstanden ist, gerade über ihrem Maschenstäbchen. Die Maschen zählen und den Trennfaden herausziehen: das Hilfsgarn"
        " fällt ab. Die lockerere Maschenweite einstellen, die die Zeile nennt, und beide Lagen in einer Reihe langsam"
        " zusammenstricken."
        " Eine angestrickte Blende: die Linie, an der sie hängt, vorn hochheben, die Masche ihrer ersten Reihe unter jeder"
        " Masche auf deren Nadel hängen und durch beide locker abketten.",
        "das Gestrick von der Seite, nach vorn hochgeschlagen und seine erste Reihe an den Haken gehängt, an dem es hängt",
    ),
    "picot-hem": HowToText(
        "Mäusezähnchensaum",
        "Die erste Hälfte stricken; dann jede zweite Masche auf die Nadel rechts daneben umhängen, wie die Zeile sagt, und die"
        " leeren Nadeln in Arbeit lassen. Die zweite Hälfte stricken. Die erste Reihe nach vorn hochschlagen, zu Ihnen hin,"
        " linke Maschenseiten aufeinander, jede ihrer Maschen gerade über ihrem Maschenstäbchen einhängen und zählen; wo sie"
        " auf Hilfsgarn begann, dann den Trennfaden herausziehen; beide Lagen zusammenstricken oder"
        " abketten, wie die Zeile sagt. Die Lochreihe ist der Bruch und bildet kleine Zähnchen.",
        "jede zweite Masche auf ihre Nachbarin gehängt, und die Zähnchenkante, die daraus wird",
    ),
    "rolled-edge": HowToText(
        "Rollrand",
        "Nichts wird hochgehängt oder angenäht: glattes Gestrick rollt sich an einer ersten oder letzten Reihe von selbst zu"
        " seiner rechten Maschenseite, wie sich Kanten von Reihen zur linken rollen. Nicht flach bügeln.",
        "die Kante von der Seite, zur rechten Maschenseite gerollt",
    ),
    "facing": HowToText(
        "Beleg",
        "Eine lockerere Reihe bildet den Bruch; die Reihen danach werden nach innen geschlagen. Die letzte Reihe auf der"
        " Innenseite annähen, Masche für Masche, nur durch einen Faden des Gestricks, nicht stramm, so dass nichts zu sehen"
        " ist und die Kante sich noch dehnt.",
        "die Kante von der Seite, nach innen geschlagen und mit einer stumpfen Wollnadel angenäht",
    ),
    "chained-edge": HowToText(
        "Kettenkante",
        "Die Kante auf die Nadeln hängen, eine Reihe stricken, nicht fest, und mit der Repassiernadel abketten, jede Schlinge"
        " so lang wie zwei Maschen: eine Kette liegt entlang der Kante.",
        "eine Kette, mit der Repassiernadel entlang der Kante gezogen",
    ),
}
