"""German how-tos of shaping: at the edges, by holding, and by hanging back."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "a-decrease-at-the-edge": HowToText(
        "Eine Abnahme am Rand",
        "Die Randmasche auf ihre Nachbarin hängen und die leere Nadel außer Arbeit schieben. Wo die Zeile 2 Maschen sagt,"
        " zweimal: dann teilen sich drei Maschen die Randnadel. Das Randgewicht jedes Mal versetzen.",
        "die Randmasche auf ihre Nachbarin gehängt, ihre eigene Nadel außer Arbeit geschoben",
    ),
    "a-decrease-some-stitches-in": HowToText(
        "Eine Abnahme einige Maschen vom Rand",
        "Den Decker mit so vielen Zinken nehmen, wie die Zeile Maschen vom Rand sagt, die Randmaschen zusammen abheben und eine"
        " Nadel nach innen hängen: zwei Maschen teilen sich dann die innerste dieser Nadeln. Die leere Randnadel außer Arbeit"
        " schieben und das Randgewicht versetzen.",
        "ein Decker mit zwei Zinken, der die zwei Randmaschen eine Nadel nach innen hängt",
    ),
    "two-decreased-at-once-some-stitches-in": HowToText(
        "Zwei Abnahmen zugleich, einige Maschen vom Rand",
        "Den Decker mit so vielen Zinken nehmen, wie die Zeile Maschen vom Rand sagt, die Randmaschen zusammen abheben und zwei"
        " Nadeln nach innen hängen: auf jeder der zwei innersten dieser Nadeln liegen dann zwei Maschen. Die zwei leeren"
        " Randnadeln außer Arbeit schieben und das Randgewicht versetzen.",
        "ein Decker mit zwei Zinken, der die zwei Randmaschen zwei Nadeln nach innen hängt",
    ),
    "an-increase-some-stitches-in": HowToText(
        "Eine Zunahme einige Maschen vom Rand",
        "Mit dem Decker mit so vielen Zinken die Randmaschen zusammen abheben und eine Nadel nach außen hängen. Auf die leer"
        " gewordene Nadel den Bogen unter der nächsten Masche nach innen hängen, damit kein Loch bleibt.",
        "die Randmaschen nach außen gehängt, und der Bogen der Reihe darunter wird auf die leer gewordene Nadel gehängt",
    ),
    "a-decrease-on-a-line-inside": HowToText(
        "Eine Abnahme auf einer Linie im Inneren",
        "Mitten im Gestrick darf keine Nadel leer stehen, sonst läuft von ihr eine Leiter hinab. Daher die Maschen neben der"
        " Linie abheben, so viele, wie der Decker Zinken hat, und eine Nadel zu ihr hin hängen: die erste davon teilt sich"
        " die Nadel auf der Linie. Die Maschen daneben auf die nun leeren Nadeln hängen und so weiter bis zum Rand. Die leere"
        " Randnadel außer Arbeit schieben und das Randgewicht versetzen.",
        "ein Decker mit drei Zinken, der drei Maschen eine Nadel nach innen hängt, die erste davon auf die Nadel der Linie",
    ),
    "an-increase-beside-a-line-inside": HowToText(
        "Eine Zunahme neben einer Linie im Inneren",
        "Die nächste leere Nadel am Rand in Arbeitsstellung bringen. Die Randmaschen abheben, so viele, wie der Decker Zinken"
        " hat, und eine Nadel nach außen hängen, dann die daneben, und so weiter bis zur Linie. Auf die dort leer gewordene"
        " Nadel den Bogen unter der Masche auf der Linie hängen, damit kein Loch bleibt. Das Randgewicht versetzen.",
        "drei Maschen eine Nadel nach außen gehängt, und der Bogen der Reihe darunter wird auf die leer gewordene Nadel gehängt",
    ),
    "a-needle-out-of-work": HowToText(
        "Eine Nadel außer Arbeit",
        "Ihre Masche auf die Nadel rechts daneben hängen und sie ganz zurückschieben, außer Arbeit. Die folgenden Reihen legen"
        " dort einen Querfaden über die Lücke: eine Leiter, an der sich das Gestrick nach beiden Seiten falten lässt. Ab und"
        " zu nachsehen, dass die Nadel nicht nach vorn gekommen ist.",
        "eine Masche auf die Nadel rechts von ihrer eigenen gehängt, die außer Arbeit geschoben ist",
    ),
    "a-needle-left-out": HowToText(
        "Eine ausgelassene Nadel",
        "Sie ganz zurückschieben, bevor etwas angeschlagen wird. Der Anschlag geht an ihr vorbei, und ebenso, was die letzte"
        " Reihe abnimmt, wo Nadeln bis oben außer Arbeit sind. Die Reihen legen einen Querfaden über die Lücke: eine Leiter,"
        " an der sich das Gestrick nach beiden Seiten falten lässt. Ab und zu nachsehen, dass die Nadel nicht nach vorn"
        " gekommen ist.",
        "Maschen auf den Nadeln einer Reihe bis auf eine, die ganz zurückgeschoben ist, und das Garn läuft an ihr vorbei",
    ),
    "a-needle-back-to-work": HowToText(
        "Eine Nadel wieder in Arbeit",
        "Sie leer in Arbeitsstellung bringen: die nächste Reihe legt das Garn in ihren Haken, und die Reihe danach macht eine"
        " Masche daraus. Die Leiter endet dort.",
        "eine leere Nadel zwischen den anderen, das Garn der nächsten Reihe in ihren Haken gelegt",
    ),
    "an-increase-at-the-carriage": HowToText(
        "Eine Zunahme am Schlitten",
        "Die nächste leere Nadel auf der Seite in Arbeitsstellung bringen, auf der der Schlitten steht: die nächste Reihe legt"
        " eine Schlinge in ihren Haken. Darauf achten, dass die Schlinge gefasst wird und in der Reihe danach strickt.",
        "eine leere Nadel, neben der letzten Masche in Arbeitsstellung gebracht",
    ),
    "casting-off": HowToText(
        "Abketten",
        "Auf der Schlittenseite die Randmasche auf die nächste Nadel hängen, das Garn in deren Haken legen, eine lockere"
        " Schlinge durch beide ziehen und so weiter. Die Schlingen so lang machen wie zwei Maschen, damit die Kante sich"
        " dehnt. Die leeren Nadeln außer Arbeit schieben.",
        "zwei Maschen auf einer Nadel, und die Repassiernadel zieht das Garn durch beide",
    ),
    "casting-on-beside-the-work": HowToText(
        "Neben dem Gestrick anschlagen",
        "Auf der Schlittenseite die leeren Nadeln ganz nach vorn bringen und das Garn vom Gestrick nach außen um jede führen,"
        " eine Schlinge auf jeden Schaft, nicht stramm. Vor der nächsten Reihe ein Gewicht unter die neuen Schlingen hängen.",
        "leere Nadeln neben dem Gestrick, das Garn nach außen um sie gewickelt",
    ),
    "holding": HowToText(
        "Halten",
        "Die Nadeln ganz nach vorn in Haltestellung ziehen und den Schlitten so einstellen, dass er sie nicht strickt. Was"
        " wieder in Arbeit kommt, wird von Hand zurückgeschoben, bis die Zunge hinter der Masche liegt; ein Teil, der noch"
        " wartet, bleibt vorn. Gewichte von gehaltenen Maschen nehmen, und den Schlitten wieder so einstellen, dass er alles"
        " strickt, wenn keine mehr gehalten wird.",
        "drei Nadeln mit ihren Maschen ganz nach vorn gezogen; das Garn läuft an ihnen vorbei",
    ),
    "wrapping": HowToText(
        "Den Faden um die Nadel legen",
        "Bevor der Schlitten zurückfährt, das Garn unter und über die gehaltene Nadel neben den gestrickten legen. Ohne das"
        " bleibt ein Loch.",
        "das Garn um die innerste gehaltene Nadel gelegt",
    ),
    "returning-needles-in-steps": HowToText(
        "Nadeln nach und nach zurückholen",
        "Nur die Nadeln zurückschieben, die die Zeile nennt, die neben den gestrickten, bis dorthin, wo die Zunge hinter der"
        " Masche liegt; die anderen bleiben gehalten. Zu ihnen hin stricken, den Faden um die erste legen, die noch gehalten"
        " ist, und zurückstricken. Die Gewichte dorthin versetzen, wo Reihen dazukommen: gehaltene Maschen mit einem Gewicht"
        " darunter dehnen sich.",
        "die Nadel neben den gestrickten zurückgeschoben, während andere gehalten bleiben",
    ),
    "hanging-stitches-back-evenly": HowToText(
        "Maschen gleichmäßig wieder einhängen",
        "Reihenzähler, Schlitten und Garn lassen, wie sie sind: die Maschen auf Kämme oder einen Faden abheben, oder einige"
        " Reihen Hilfsgarn von Hand stricken und das Gestrick abnehmen. Die leeren Nadeln außer Arbeit schieben. Die Nadeln"
        " in Arbeitsstellung bringen, die die Zeile nennt. Mit der linken Maschenseite zu Ihnen die Maschen von links nach"
        " rechts in der angegebenen Reihenfolge einhängen, durch das Garn des Kleidungsstücks und nicht durch das Hilfsgarn;"
        " wo sich zwei eine Nadel teilen, beide in einen Haken, wo eine Nadel leer bleibt, sie in Arbeit lassen: die nächste"
        " Reihe gibt ihr eine Schlinge. Zählen, bevor das Hilfsgarn herausgezogen wird, und die erste Reihe langsam stricken.",
        "wieder eingehängte Maschen, zwei auf manchen Nadeln",
    ),
}
