"""German how-tos of more than one yarn."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "colour-in-the-row-by-hand": HowToText(
        "Farbe in der Reihe von Hand",
        "Die Nadeln der zweiten Farbe ganz nach vorn ziehen; der Schlitten strickt die anderen und lässt sein Garn über diesen"
        " liegen. Dieses Garn nach vorn abheben, so dass es auf der linken Maschenseite als Spannfaden läuft. Das zweite Garn"
        " von Hand in ihre Haken legen, in der Richtung, in der der Schlitten gefahren ist, jede durch ihre Masche"
        " zurückschieben und das Garn dazwischen locker lassen: stramm gezogen zieht es das Gestrick zusammen. Die beiden"
        " Garne am Rand einmal umeinander winden.",
        "drei nach vorn gezogene Nadeln; ein zweites Garn in ihre Haken gelegt, an den anderen als Spannfaden vorbei",
    ),
    "picture-knitting": HowToText(
        "Intarsienmuster",
        "Das Garn jeder Fläche auf eine eigene Spule wickeln; eine Fläche des Grundes, die nicht in der Tabelle der Spulen"
        " steht, wird vom Knäuel gestrickt, dessen Faden in den einfarbigen Reihen weiterläuft. Das Garn aus dem Schlitten"
        " nehmen. Alle Nadeln stehen vorn,"
        " Zungen offen. Auf der Seite beginnen, auf der die Fäden hängen, der des Schlittens, und jeden Faden in die Haken"
        " seiner Fläche legen; wo sich zwei treffen, den neuen unter dem alten hervorholen, so dass sie einander halten und"
        " kein Schlitz bleibt. Jeden Haken prüfen: einer ohne Faden oder mit geschlossener Zunge lässt seine Masche fallen."
        " Dann den leeren Schlitten hinüberführen. Eine Fläche, die endet, lässt ihre Spule hängen, bis sie innerhalb weniger"
        " Reihen wieder gebraucht wird. Eine einfarbige Reihe kann der Schlitten stricken.",
        "zwei Fäden nebeneinander in die Haken gelegt, verkreuzt, wo sie sich treffen, jeder auf seiner Spule",
    ),
    "stripes-carried-up-the-side": HowToText(
        "Streifen, am Rand mitgeführt",
        "Das ruhende Garn wird nicht abgeschnitten: es hängt am Rand. Bevor es wieder aufgenommen wird, einmal um das andere"
        " winden und so locker lassen, dass der Rand sich nicht zusammenzieht. Es ist immer auf der Seite, auf der sein"
        " Streifen endete.",
        "das ruhende Garn am Rand des Gestricks zu seinem nächsten Streifen hinaufgeführt",
    ),
}
