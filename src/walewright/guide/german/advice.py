"""The house's own words to the knitter in German: how to read the pages, what to do when things go wrong, safety.

Trade advice is common practice where no source is named.
"""

from __future__ import annotations

from walewright.guide.model import Advice

LINES = {
    "reading": "Zum Lesen der Anleitung",
    "reading/order-of-sizes": "Zahlen für die Größen stehen immer in derselben Reihenfolge, die kleinste zuerst, die anderen in"
    " Klammern. Eine einzelne Zahl gilt für jede Größe, und der Buchstabe einer Nadel, L oder R, gilt auch für die dahinter."
    " Vor dem Beginn überall die eigene Größe markieren.",
    "reading/dashes": "Ein Strich in den Klammern oder eine Überschrift, die Größen nennt, bedeutet, dass die anderen dies"
    " auslassen.",
    "reading/counter": "RZ ist der Reihenzähler. „RZ 84“ bedeutet, dass 84 Reihen gezählt sind: was dort steht, wird nach der"
    " 84. und vor der nächsten Reihe getan.",
    "reading/tick": "Jede Zeile abhaken, wenn sie getan ist.",
    "reading/tick/text": "Vor jedem Schritt steht ein Paar Klammern zum Abhaken: eckige, wo Hände oder Schlitten an den Maschen"
    " arbeiten, runde vor dem, was sonst von Hand getan wird, und so viele Paare, wie oft das Teil gestrickt wird.",
    "reading/again": "Die Schritte sind in jedem Teil nummeriert. „Wie back, Schritte 1 bis 6“: jene Schritte von back hier"
    " arbeiten, mit den Zahlen der eigenen Größe, und hier abhaken. Was am Balken daneben steht, muss nach dem letzten"
    " stimmen.",
    "reading/again/text": "Die Schritte sind in jedem Teil nummeriert. „Wie back, Schritte 1 bis 6“: jene Schritte von back hier"
    " arbeiten, mit den Zahlen der eigenen Größe, und hier abhaken. Was dahinter steht, muss nach dem letzten stimmen.",
    "reading/mirrored": "„Gespiegelt wie Schritte 10 bis 14“: jene Schritte noch einmal arbeiten, links statt rechts, rechts "
    "statt links und SL statt SR; diesmal muss nichts warten.",
    "reading/bar": "Zeilen mit einem Balken sind Prüfungen: sie sagen, was jetzt stimmen muss. Stimmt es nicht, anhalten und"
    " die Ursache suchen.",
    "reading/bar/text": "Maschen, RZ und Schlitten ohne Tätigkeit, wie „84 M, RZ 92, SR“, sind eine Prüfung: sie sagen, was jetzt"
    " stimmen muss. Stimmt es nicht, anhalten und die Ursache suchen.",
    "reading/left-and-right": "Links und rechts sind die Seiten der Maschine, wie Sie davor sitzen. Nadeln werden von der"
    " Mittelmarkierung nach außen gezählt: L 1, L 2 nach links, R 1, R 2 nach rechts.",
    "reading/purl-side": "Die linke Maschenseite ist Ihnen zugewandt; die rechte hängt von Ihnen abgewandt.",
    "reading/edges": "Links und rechts eines Teils, seiner Kanten, Schultern und Armausschnitte sind so, wie es auf dem Nadelbett"
    " lag, nicht wie es getragen wird; der Name eines ganzen Teils, etwa eines linken Vorderteils, gilt für die Person, die es"
    " trägt. Getragen mit der rechten Maschenseite außen, hat ein Vorderteil seine linke Kante auf der linken Seite der Person"
    " und ein Rückenteil auf ihrer rechten: so trifft die linke Kante eines Rückenteils auf die rechte eines Vorderteils, und"
    " die rechte Schulter eines Rückenteils ist die linke der Person.",
    "reading/edges/pieces": "Links und rechts eines Teils und seiner Kanten sind so, wie es auf dem Nadelbett lag, nicht wie es"
    " getragen wird; links oder rechts im Namen eines ganzen Teils gilt für die Person, die es trägt.",
    "reading/edges/one-piece": "Links und rechts des Teils und seiner Kanten sind so, wie es auf dem Nadelbett lag, nicht wie es"
    " getragen wird.",
    "reading/without-knitting": "„Ohne zu stricken“: zuerst das Garn aus dem Fadenführer nehmen. Dann den Schlitten so"
    " einstellen, dass er an allen Nadeln vorbeigeht, wenn er das kann; oder ihn abheben und auf der anderen Seite aufsetzen,"
    " wenn das Nadelbett es erlaubt; oder jede Nadel mit einer Masche ganz nach vorn ziehen und ihn auf Halten stellen. Ist"
    " keine Masche in Arbeit, kann er einfach hinüberfahren, auf Halten gestellt, wenn Maschen gehalten werden. Auf Stricken"
    " gestellt und ohne Garn wirft er das Gestrick ab."
    " Was der Reihenzähler dabei gezählt hat, zurückstellen.",
    "reading/without-knitting/slip": "„Ohne zu stricken“: zuerst das Garn aus dem Fadenführer nehmen. Ist keine Masche in Arbeit,"
    " kann der Schlitten einfach hinüberfahren, auf Halten gestellt, wenn Maschen gehalten werden; an Maschen in Arbeit"
    " vorbei wird er auf Gleiten gestellt, danach wieder wie zuvor. Auf Stricken gestellt"
    " und ohne Garn wirft er das Gestrick ab. Was der Reihenzähler dabei gezählt hat, zurückstellen.",
    "reading/without-knitting/lift": "„Ohne zu stricken“: zuerst das Garn aus dem Fadenführer nehmen. Ist keine Masche in Arbeit,"
    " kann der Schlitten einfach hinüberfahren, auf Halten gestellt, wenn Maschen gehalten werden; an Maschen in Arbeit"
    " vorbei wird er abgehoben und auf der anderen Seite"
    " aufgesetzt. Auf Stricken gestellt und ohne Garn wirft er das Gestrick ab. Was der Reihenzähler dabei gezählt hat,"
    " zurückstellen.",
    "reading/without-knitting/hold": "„Ohne zu stricken“: zuerst das Garn aus dem Fadenführer nehmen. Ist keine Masche in Arbeit,"
    " kann der Schlitten einfach hinüberfahren, auf Halten gestellt, wenn Maschen gehalten werden; an Maschen in Arbeit"
    " vorbei wird er auf Halten gestellt, jede Nadel mit einer"
    " Masche ganz nach vorn gezogen, und die in Arbeit waren, gehen danach zurück, ihre Maschen in den Haken. Auf Stricken gestellt"
    " und ohne Garn wirft er das Gestrick ab. Was der Reihenzähler dabei gezählt hat, zurückstellen.",
    "reading/without-knitting/none": "„Ohne zu stricken“: zuerst das Garn aus dem Fadenführer nehmen und darauf achten, dass keine"
    " Nadel mit einer Masche in Arbeit ist: der Schlitten strickt, was in Arbeit ist, und ohne Garn wirft er das Gestrick ab."
    " Was der Reihenzähler dabei gezählt hat, zurückstellen.",
    "reading/brackets": "Wörter in eckigen Klammern sind ein Durchgang: so oft arbeiten, wie dahinter steht, dann weitergehen.",
    "reading/together": "„Gleichzeitig“: die folgenden Zeilen, eine für jeden Rand, beginnen alle bei derselben Reihe. Jede"
    " Reihe nur einmal stricken; nach jeder Reihe tun, was eine der Zeilen dort verlangt: zuerst den Faden um Nadeln legen,"
    " dann, was wieder in Arbeit kommt, dann, was in Haltestellung geht, dann das Übrige, jeweils in der Reihenfolge der"
    " Zeilen. Wörter in eckigen Klammern sind ein Durchgang. Für jede Zeile zuerst die Reihen der eigenen Größe an den Rand"
    " schreiben und abhaken, wie sie kommen.",
    # Care: common practice where nothing is on the ball.
    "care": "Pflege",
    "care/label": "Zuerst die Maschenprobe waschen, wie es auf der Banderole des Garns steht; wo dort nichts steht, wie hier"
    " gesagt (allgemein üblich).",
    "care/hair": "{fibres:and}: von Hand in lauwarmem Wasser, höchstens 30 °C, mit mildem Wollwaschmittel. Nicht reiben,"
    " wringen oder hängen: es filzt und längt sich. Das Wasser in einem Handtuch ausdrücken und liegend trocknen, fern von"
    " Hitze und Sonne.",
    "care/regenerated": "{fibres:and}: nass empfindlich. Höchstens bei 30 °C waschen, mit beiden Händen heben, das Wasser in"
    " einem Handtuch ausdrücken und liegend trocknen.",
    "care/plastic": "{fibres:and}: bei 30 °C waschen und liegend trocknen. Nicht bügeln und nicht dämpfen, auch nicht beim"
    " Spannen: Hitze drückt es für immer platt.",
    "care/plant": "{fibres:and}: höchstens bei 40 °C waschen, in Form ziehen und liegend trocknen. Es kann bei der ersten"
    " Wäsche einlaufen, und die Maschenprobe zeigt, um wie viel.",
    # Words of the trade, as they are used here.
    "word/in-work": "in Arbeit",
    "meaning/in-work": "Nadeln so weit vorn, dass der Schlitten sie strickt; alle anderen sind außer Arbeit",
    "word/waste-yarn": "Hilfsgarn",
    "meaning/waste-yarn": "Garn, das offene Maschen eine Weile hält, einige Reihen gestrickt und danach abgezogen",
    "word/held": "gehalten",
    "meaning/held": "Nadeln in Haltestellung, ganz nach vorn geschoben: der Schlitten geht daran vorbei, ohne sie zu stricken, ihre"
    " Maschen bleiben",
    "word/waiting": "wartend",
    "meaning/waiting": "ein Teil, dessen Maschen auf Nadeln bleiben, gehalten oder auf Trennfaden, bis er an der Reihe ist;"
    " die auf Hilfsgarn zählen nicht mit",
    "word/wrap": "Faden um die Nadel legen",
    "meaning/wrap": "den Faden unter einer gehaltenen Nadel durchführen, damit kein Loch bleibt, wo eine Reihe wendet",
    "word/carriage-side": "Schlittenseite",
    "meaning/carriage-side": "das Ende der Reihe, an dem der Schlitten und sein Garn sind",
    "word/marker": "Markierungsfaden",
    "meaning/marker": "ein kurzer Faden in anderer Farbe durch die Randmasche, um die Stelle wiederzufinden",
    "word/tail": "Fadenende",
    "meaning/tail": "das Ende des Garns, das lang gelassen wird, um damit zu nähen oder abzuketten",
    "word/link": "verbinden",
    "meaning/link": "zwei Kanten auf dieselben Nadeln hängen, zusammen abstricken und abketten",
    "word/times": "insgesamt",
    "meaning/times": "wie oft die Wörter davor gearbeitet werden, das erste Mal mitgezählt",
    # For children: figures as read in the sources named in each line; "common practice" where there is none.
    "swatch/rib": "Eine hochgehäkelte Rippe: jetzt ihre Stäbchen fallen lassen und hochhäkeln.",
    "swatch/rib-in-stages": "Eine hochgehäkelte Rippe: bei je {most} Reihen des Blocks und nach der letzten ihre Stäbchen so tief "
    "fallen lassen, wie sie noch nicht hochgehäkelt sind, und hochhäkeln: auf einmal fallen sie unter Kamm und Gewichte.",
    "swatch/chart": "Ein Strickstück mit Muster: das Muster über den ganzen Block arbeiten, von seiner ersten Reihe an, Rapport "
    "neben Rapport.",
    "children": "Wenn ein Kind es trägt",
    "children/small-parts": "Für Kinder unter 3 Jahren: Knöpfe, Perlen und alles, was sich lösen kann, sind Kleinteile, an"
    " denen ein Kind ersticken kann. In den Vereinigten Staaten dürfen Artikel für sie keine Teile haben und im Gebrauch"
    " keine verlieren, die ganz in den Prüfzylinder von 16 CFR 1501 passen. Was nötig ist, mit starkem Faden durch und durch"
    " annähen, daran ziehen und nach jeder Wäsche nachsehen.",
    "children/no-cords": "Keine Kordeln oder Zugbänder an Kapuze, Kopf oder Hals von Kleidung für ein Kind bis 7 Jahre oder 134"
    " cm, und keine, die hinter dem Hals gebunden werden (EN 14682, nach der finnischen Behörde für Sicherheit und"
    " Chemikalien); von 7 bis 14 Jahren dort keine mit freien Enden. In den Vereinigten Staaten keine an Kapuze und Hals von"
    " Oberbekleidung in den Größen 2T bis 12 (CPSC; ASTM F1816-97; 16 CFR 1120.3).",
    "children/apart": "Für Mützen, Handschuhe und Schals gelten die Regeln von EN 14682 zu Kordeln nicht; ihr Entwurf von "
    "2023 verlangt, sie nach denselben Grundsätzen zu beurteilen: keine Kordel, mit der sie gebunden werden oder die um "
    "den Hals geht, keine von einem zum anderen eines Paars und kein Ende, das hängen bleiben kann (allgemein üblich).",
    "children/asleep": "Wo ein Säugling schläft, bleiben Gesicht und Kopf unbedeckt, und nichts Loses oder Flauschiges liegt im"
    " Bett; eine dünne Decke wird fest eingeschlagen, nicht höher als bis zu den Schultern (Health Service Executive, Irland;"
    " NHS). Fragen Sie Hebamme oder Arzt.",
    "children/drawstrings": "An Taille und Saum von Oberbekleidung in den Größen 2T bis 16 nicht mehr als 7,6 cm (3 Zoll) eines"
    " Zugbands außerhalb seines Tunnels, wenn das Kleidungsstück in voller Weite liegt, keine Knebel oder Knoten an freien"
    " Enden, und ein Zugband in einem Stück fest angenäht (CPSC).",
    "children/loose-threads": "Innen keine losen Fäden, langen Spannfäden oder offenen Maschen: sie können sich um Finger und"
    " Zehen zuziehen. Das Kleidungsstück wenden und nachsehen, bevor es zum ersten Mal getragen wird und nach jeder Wäsche"
    " (allgemein üblich).",
    "children/nightwear": "Für Nachtwäsche von Kindern gelten eigene Regeln zum Brennverhalten: in den Vereinigten Staaten 16"
    " CFR 1615 und 1616; Kleidungsstücke bis 9 Monate und eng anliegende sind ausgenommen.",
    "children/rules-differ": "Vorschriften sind von Ort zu Ort verschieden und ändern sich. Die des Ortes, an dem Sie das"
    " Kleidungsstück verschenken oder verkaufen, gehen allem hier Gesagten vor.",
    "children/hood": "Dieses Kleidungsstück hat eine Kapuze: nichts durch ihren Rand ziehen, und dafür sorgen, dass nichts"
    " an ihr hängen bleiben kann.",
    "children/cord": "Dieses Kleidungsstück hat eine Kordel: prüfen, ob sie dort und für die Person, für die es gemacht wird,"
    " erlaubt ist, und sie weglassen, wo sie es nicht ist.",
}

ADVICE = {
    # When things go wrong: common practice in words of our own.
    "jam": Advice(
        "Der Schlitten klemmt",
        (
            "Nicht mit Gewalt bewegen. Ihn lösen, wie die Anleitung der Maschine sagt, und zur Seite zurückbringen, auf der die"
            " Reihe begann.",
            "Auftrennen, was von dieser Reihe gestrickt wurde, und nachsehen, dass jede Masche in ihrem Haken oder hinter einer"
            " offenen Zunge liegt.",
            "Den Reihenzähler um die Reihe zurückstellen und sie noch einmal stricken. Die Ursache suchen: eine verbogene"
            " Nadel, eine geschlossene Zunge, Garn, das am Fadenspanner hängt, zu wenig Gewicht am Rand.",
        ),
        ordered=True,
    ),
    "dropped": Advice(
        "Eine Masche ist gefallen",
        (
            "Die Masche sofort mit der Repassiernadel fangen; ein Gewicht darunter hängen, damit sie nicht weiterläuft.",
            "Sie von der linken Maschenseite durch den Querfaden jeder ausgelassenen Reihe wieder hochhäkeln und auf ihre Nadel"
            " hängen.",
            "Die Nadeln mit Maschen mit der nächsten Zeile vergleichen, die sagt, wie viele es sein müssen.",
        ),
        ordered=True,
    ),
    "row-count": Advice(
        "Die Reihenzahl ist zweifelhaft",
        (
            "Dem Reihenzähler nach einem Klemmen oder einer Unterbrechung nicht trauen: er zählt Fahrten, nicht Reihen.",
            "Die Reihen ab der letzten markierten Reihe auf der linken Maschenseite zählen und den Reihenzähler danach stellen.",
            "Die Seite des Schlittens mit der nächsten Zeile vergleichen, die Reihe und Seite nennt. Eine gerade Zahl von Reihen"
            " nach einer solchen Zeile steht er auf der Seite, die die Zeile nennt; nach einer ungeraden gegenüber. Eine Hälfte,"
            " die mit zurückgestelltem Reihenzähler begonnen wurde, hat eigene Zeilen.",
        ),
    ),
    "length": Advice(
        "Das Teil ist zu lang oder zu kurz",
        (
            "Gestrick auf der Maschine ist von den Gewichten gedehnt: erst messen, wenn es geruht hat.",
            "Bei den Reihen bleiben. Stimmt die Maschenprobe, so stimmen auch sie; Nähte passen, weil beide Teile dieselben"
            " Reihen haben.",
        ),
    ),
    # Cautions, restated from the health and safety page of
    # https://kcguild.org.uk/sharing-knowledge/machine-knitting/using-your-knitting-machine/health-and-safety-machine-knit/;
    # covered scissors from https://lib.zlibraries.com/text/mr5xoo1p3p4k/machine-knitting-designing-with-colour/10;
    # rest and cleaning are common practice.
    "safety": Advice(
        "Sicher arbeiten",
        (
            "Vor jedem Stricken prüfen, ob die Tischklemmen fest sitzen: sie lockern sich beim Stricken. Ein Nadelbett"
            " vorsichtig heben und niemanden dahinter vorbeigehen lassen.",
            "Haare zusammenbinden, Ärmel, Kordeln und Schmuck vom Schlitten fernhalten.",
            "Haken und Abschlagzähne sind scharf und hart: auf Finger und Gesicht achten, wenn Sie sich über das Nadelbett"
            " beugen. Die Drähte eines Fadenspanners schnellen zurück, wenn das Garn zu Ende geht oder reißt.",
            "Gewichte sind schwer und können auf die Füße fallen. Scheren an der Maschine mit bedeckten Spitzen aufbewahren,"
            " Garn und Kabel vom Boden fernhalten, wo Sie gehen.",
            "Kinder nicht mit der Maschine allein lassen.",
            "Handgelenke und Schultern ausruhen. Mit Spiritus nur fern von Flammen und bei offenem Fenster reinigen.",
            "Die Anleitung der Maschine und die Vorschriften des Ortes, an dem Sie arbeiten oder verkaufen, gehen allem hier"
            " Gesagten vor.",
        ),
    ),
    # For a small size of a garment that no table of children stands behind; sources as for children.
    "hood": Advice(
        "Wenn ein Kind es trägt",
        (
            "Dieses Kleidungsstück hat eine Kapuze und Größen für Erwachsene. Wenn Sie es für ein Kind machen: bis 7 Jahre oder"
            " 134 cm keine Kordel und kein Zugband an Kapuze, Kopf oder Hals, von 7 bis 14 Jahren dort keine mit freien Enden"
            " (EN 14682, nach der finnischen Behörde für Sicherheit und Chemikalien); in den Vereinigten Staaten keine an"
            " Kapuze und Hals von Oberbekleidung in den Größen 2T bis 12 (16 CFR 1120.3).",
            "Für ein Kind nichts durch den Rand der Kapuze ziehen und dafür sorgen, dass nichts an ihr hängen bleiben kann.",
        ),
    ),
    # Common practice; block sizes and the mean of three measurements as in published how-to pages of the trade.
    "swatch": Advice(
        "Zuerst die Maschenprobe stricken",
        (
            "Mindestens 10 Maschen mehr anschlagen, als gemessen werden, und etwa 15 Reihen mit Hilfsgarn stricken, das so dick wie"
            " das Garn ist und eine andere Farbe hat.",
            "Die Reihen, die gemessen werden, mit dem Garn stricken. Die Seiten des Feldes mit Fäden auf den Nadeln unmittelbar"
            " daneben markieren.",
            "15 Reihen mit dem Hilfsgarn stricken und alles vom Nadelbett nehmen. Über Nacht ruhen lassen und waschen, wie das"
            " Kleidungsstück gewaschen wird.",
            "Flach hinlegen, ohne zu ziehen. Zwischen den Markierungen in jeder Richtung dreimal messen und den Mittelwert nehmen.",
            "Zu viele Maschen oder Reihen: die Maschenweite lockerer stellen und noch eine stricken. Zu wenige: fester. Die Zahl am"
            " Maschenweitenregler ist nur ein Anhaltspunkt. Das Kleidungsstück nicht beginnen, bevor beide Zahlen stimmen.",
        ),
        ordered=True,
    ),
    "swatch/plate": Advice(
        "Zuerst die Maschenprobe stricken",
        (
            "Mindestens 10 Maschen mehr anschlagen, als gemessen werden, und etwa 15 Reihen mit Hilfsgarn stricken, das so dick wie"
            " das Garn ist und eine andere Farbe hat.",
            "Die Reihen, die gemessen werden, mit dem Garn stricken. Die Seiten des Feldes mit Fäden auf den Nadeln unmittelbar"
            " daneben markieren.",
            "15 Reihen mit dem Hilfsgarn stricken und alles vom Nadelbett nehmen. Über Nacht ruhen lassen und waschen, wie das"
            " Kleidungsstück gewaschen wird.",
            "Flach hinlegen, ohne zu ziehen. Zwischen den Markierungen in jeder Richtung dreimal messen und den Mittelwert nehmen.",
            "Zu viele Maschen oder Reihen: noch eine mit einer lockereren Platte stricken. Zu wenige: mit einer festeren. Die"
            " Platte, die hier steht, ist nur ein Anhaltspunkt. Ist eine zu fest und die nächste zu locker, hilft ein anderes Garn,"
            " oder die Anleitung für Ihre Maschenprobe. Das Kleidungsstück nicht beginnen, bevor beide Zahlen stimmen.",
        ),
        ordered=True,
    ),
}
