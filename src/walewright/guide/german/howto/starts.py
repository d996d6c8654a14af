"""German how-tos of beginnings: on waste yarn and closed."""

from __future__ import annotations

from walewright.guide.model import HowToText

HOW_TO = {
    "start-on-waste-yarn": HowToText(
        "Anschlag mit Hilfsgarn",
        "Die Maschenweite der ersten Reihe des Kleidungsstücks einstellen, oder die, bei der die Maschen des Hilfsgarns ebenso"
        " groß werden. Mit jeder 2. Nadel vorn legt die erste Fahrt ein Zickzack: es ist die erste Reihe Hilfsgarn. Den"
        " Anschlagkamm hineinhängen und die Gewichte gleichmäßig verteilt, etwa eines auf je 20 Maschen; alle Nadeln in"
        " Arbeitsstellung bringen und die übrigen Reihen stricken, die letzte eine Zahl lockerer, damit sie sich leicht"
        " wieder einhängen lässt. Dann eine Reihe mit Trennfaden, von Hand geführt: er verbindet Hilfsgarn und"
        " Kleidungsstück, und herausgezogen trennt er sie. Die Gewichte etwa alle 20 Reihen höher hängen.",
        "Hilfsgarn, das in den Haken und über den Zähnen eines Kamms darunter liegt",
    ),
    "start-on-waste-yarn/plate": HowToText(
        "Anschlag mit Hilfsgarn",
        "Die Platte der ersten Reihe des Kleidungsstücks einsetzen, oder die, bei der die Maschen des Hilfsgarns ebenso groß"
        " werden. Mit jeder 2. Nadel vorn legt die erste Fahrt ein Zickzack: es ist die erste Reihe Hilfsgarn. Den Anschlagkamm"
        " hineinhängen und die Gewichte gleichmäßig verteilt, etwa eines auf je 20 Maschen; alle Nadeln in Arbeitsstellung"
        " bringen und die übrigen Reihen stricken, die letzte mit der nächsten lockereren Platte, damit sie sich leicht wieder"
        " einhängen lässt. Dann eine Reihe mit Trennfaden, von Hand geführt: er verbindet Hilfsgarn und Kleidungsstück, und"
        " herausgezogen trennt er sie. Die Gewichte etwa alle 20 Reihen höher hängen.",
        "Hilfsgarn, das in den Haken und über den Zähnen eines Kamms darunter liegt",
    ),
    # Common practice, the order of cord and waste yarn from memory.
    "start-on-a-hung-hem": HowToText(
        "Anschlag an einem Streifen",
        "Die Schlingen am Rand des Anschlagstreifens auf die Nadeln in Arbeit hängen, eine auf jede, und die Gewichte in seinen"
        " unteren Rand, etwa eines auf je 20 Maschen. Mit der Maschenweite der ersten Reihe des Kleidungsstücks langsam eine Reihe"
        " mit Trennfaden stricken, von Hand geführt, und die Reihen mit Hilfsgarn. Dann wieder eine Reihe mit Trennfaden. Der erste"
        " trennt den Streifen vom Hilfsgarn: herausgezogen, wenn das Stück so weit hängt, dass es selbst Gewichte trägt, gibt er"
        " den Streifen für den nächsten Anschlag frei. Der zweite verbindet Hilfsgarn und Kleidungsstück, und herausgezogen trennt"
        " er sie. Die Gewichte etwa alle 20 Reihen höher hängen.",
        "ein gestrickter Streifen, auf die Nadeln gehängt, darüber der durchlaufende Trennfaden",
    ),
    "waste-yarn-by-hand": HowToText(
        "Hilfsgarn im Wickelanschlag",
        "Ohne Anschlag über einen Kamm: die Nadeln ganz nach vorn ziehen, das Hilfsgarn von hinten um jeden Nadelschaft"
        " wickeln, zum Schlitten hin, die Schlingen gekreuzt, und sie hinter die Zungen schieben. Zwei Reihen langsam"
        " stricken, einen Kamm oder Krallengewichte hineinhängen und weiter. Das Wickeln ist keine Reihe: alle, die die Zeile"
        " nennt, werden gestrickt. Die Maschenweite der ersten Reihe des Kleidungsstücks einstellen, die letzte Reihe"
        " Hilfsgarn eine Zahl lockerer. Dann eine Reihe mit Trennfaden, von Hand geführt: er verbindet Hilfsgarn und"
        " Kleidungsstück, und herausgezogen trennt er sie.",
        "nach vorn gezogene Nadeln, das Hilfsgarn einmal um jede gewickelt",
    ),
    "waste-yarn-by-hand/plate": HowToText(
        "Hilfsgarn im Wickelanschlag",
        "Ohne Anschlag über einen Kamm: die Nadeln ganz nach vorn ziehen, das Hilfsgarn von hinten um jeden Nadelschaft"
        " wickeln, zum Schlitten hin, die Schlingen gekreuzt, und sie hinter die Zungen schieben. Zwei Reihen langsam"
        " stricken, Krallengewichte hineinhängen und weiter. Das Wickeln ist keine Reihe: alle, die die Zeile nennt, werden"
        " gestrickt. Die Platte der ersten Reihe des Kleidungsstücks einsetzen, für die letzte Reihe Hilfsgarn die nächste"
        " lockerere. Dann eine Reihe mit Trennfaden, von Hand geführt: er verbindet Hilfsgarn und Kleidungsstück, und"
        " herausgezogen trennt er sie.",
        "nach vorn gezogene Nadeln, das Hilfsgarn einmal um jede gewickelt",
    ),
    "e-wrap": HowToText(
        "Wickelanschlag",
        "Die Nadeln ganz nach vorn stellen, das Garn nacheinander von hinten um jeden Nadelschaft führen, die Schlingen"
        " gekreuzt, und jede Schlinge hinter ihre Zunge zurückschieben; die ersten Reihen langsam stricken. Zum Schlitten hin"
        " arbeiten, so dass das Garn endet, wo die erste Reihe beginnt.",
        "ein Garn, um eine Nadel nach der anderen gewickelt",
    ),
    "latch-tool-chain": HowToText(
        "Gehäkelter Anschlag",
        "Am Ende beginnen, das dem Schlitten gegenüberliegt. Das Garn unter die Nadel führen, es mit der Repassiernadel von"
        " oben fassen und eine Kettenmasche über die Nadel ziehen; so zur nächsten, zum Schlitten hin, so dass das Garn"
        " endet, wo die erste Reihe beginnt. Die letzte Schlinge auf die Randnadel hängen. Die Kette sieht aus wie eine"
        " Abkettkante.",
        "Kettenmaschen, die über den Nadeln liegen, die Repassiernadel zieht die nächste",
    ),
}
