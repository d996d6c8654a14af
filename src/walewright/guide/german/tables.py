"""German heads, captions and labels of tables, and the notes beneath them."""

from __future__ import annotations

TABLES = {
    "listed": "{names:and}",
    "span": "{low} bis {high}",
    "from-to": "{first} bis {last}",
    "rc": "RZ",
    "unit/cm": "Zentimetern",
    "unit/in": "Zoll",
    "unit/both": "Zentimetern und Zoll",
    "told/cm": "{cm} cm",
    "told/in": "{inches} Zoll",
    "told/both": "{cm} cm ({inches} Zoll)",
    # The figures of a schematic's letters.
    "legend": "Maße von {piece} in {unit}",
    # Sizes, and what they are held against.
    "sizes": "Größen in {unit}",
    "sizes/cm": "cm",
    "sizes/in": "Zoll",
    "sizes/both": "cm, Zoll in kleiner Schrift",
    "sizes/to-fit": "Körpermaße",
    "sizes/finished": "Fertigmaße",
    "sizes/ease": "Weitenzugabe: Fertigmaß weniger Körpermaß",
    "sizes/of-pieces": "{pieces}: {what}",
    "sizes/as-knitted": "Fertigmaße sind die der gestrickten und gespannten Teile vor dem Zusammennähen; was ringsum gemessen"
    " ist, ist zusammengenäht.",
    "sizes/seamed": "{note} Eine genähte Naht nimmt eine Masche jeder Seite in sich auf: zusammen etwa {told}.",
    "sizes/bust": "Brust",
    "sizes/chest": "Brust",
    "sizes/choose": "Zum Wählen der Größe ein Kleidungsstück, das so sitzt, wie Sie es mögen, flach liegend messen und die"
    " Größe nehmen, deren Fertigmaße am nächsten kommen.{worn:? Um die {worn} liegt ein Kleidungsstück, so weit wie der"
    " Körper, eng an, mit {classic} mehr sitzt es normal, mit {loose} mehr weit (Quelle: Craft Yarn Council, fit and ease).}",
    # The garment as it is worn.
    "fit/finished": "{name}, fertig",
    "fit/whole": "{name}, insgesamt",
    "fit/beside": "{name}: {wanted} insgesamt gewünscht, {knitted} gestrickt.",
    "fit/girth": "Ringsum, {where}",
    "fit/girth-of": "{over}: ringsum, {where}",
    "fit/girth-of-each": "{over}, jedes: ringsum, {where}",
    "fit/closed": "{what}",
    "fit/lapped": "{what}, zugeknöpft",
    "fit/edge to edge": "{what}, Kante an Kante",
    "fit/below-armholes": "unter den Armausschnitten",
    "fit/at": "bei {level}",
    "fit/reach": "Hintere Mitte am Hals bis Ärmelende",
    "fit/reach-of": "Hintere Mitte am Hals bis zum Ende von {sleeve}",
    "fit/neck-to-wrist": "Hintere Mitte am Hals bis Handgelenk",
    "fit/ease-as-finished": "{body}: {name} im fertigen Stück",
    "fit/ease-round": "{body}: ringsum {where}",
    "fit/role": "{role:term}",
    "fit/passes": "{opening}: {rest} in Ruhe, gedehnt etwa {wide}; so passt hindurch: {part:term}, gerechnet mit {figure}.",
    "fit/buttons": "{over} liegt um {overlap} über {under}. {count:Knopf|Knöpfe} auf {under} annähen, {across} vom Außenrand,"
    " unter den Knopflöchern: vom unteren Ende an bei {places}.",
    "fit/buttons-by-size": "{over} liegt um {overlap} über {under}. {count} Knöpfe auf {under} annähen, {across} vom Außenrand,"
    " unter den Knopflöchern: vom unteren Ende an bei {places}.",
    # Bobbins and floats.
    "bobbins": "Spulen für {piece}: was auf jede zu wickeln ist, Fadenenden eingeschlossen",
    "bobbins/bobbin": "Spule",
    "bobbins/yarn": "Garn",
    "bobbins/begins-on": "Ihre Fläche beginnt auf",
    "bobbins/counter": "Reihenzähler vor ihrer ersten Reihe",
    "bobbins/last-row": "Letzte Reihe",
    "bobbins/metres": "{size}, m",
    "bobbins/begins": "RZ {row}",
    "bobbins/ends": "bis RZ {row}",
    "bobbins/hangs": "{ends}; sie hängt von {hangs} und wird wieder aufgenommen",
    "bobbins/stretch": "RZ {first} bis {last}",
    "floats": "Lange Spannfäden, in denen sich Finger verfangen: jeden in seiner Mitte einfangen. Ist die nächste Reihe zu"
    " stricken, den Spannfaden mit einem Decker auf die mittlere der Nadeln heben, an denen er vorbeiläuft, über ihre Masche;"
    " beide werden als eine gestrickt",
    "floats/piece": "Teil",
    "floats/yarn": "Garn",
    "floats/row": "RZ vor der Reihe",
    "floats/needles": "Nadeln, an denen er vorbeiläuft",
    "floats/more": "{shown} und {count} weitere",
    "floats/across": "{first} bis {last}: {stitches} Maschen, {cm} cm",
    # Where a chart lies.
    "places": "Wo die Strickschrift liegt",
    "places/heading": "Auf dem Nadelbett",
    "places/across": "In der Breite, jedes Mal",
    "places/time": "{piece}, {ordinal} Mal",
    "places/from": "Von RZ",
    "places/to": "Bis RZ",
    "places/first": "Erste Nadel",
    "places/last": "Letzte Nadel",
    "places/edge": "Glatte Randmaschen",
    "places/edge-note": "an jedem Ende",
    "places/start": "Erste Spalte des Rapports",
    "places/start-note": "Spalte {column}",
    "places/repeats": "Ganze Rapporte",
    "places/centre": "An der Mittelmarkierung",
    "places/centre-note": "Spalten links, rechts",
    "places/middle": "Mitte bei",
    # Yarn.
    "yarn": "Garn für jede Größe",
    "yarn/balls": "Knäuel zu kaufen",
    "yarn/metres": "Meter",
    "yarn/grams": "Gramm insgesamt",
    "yarn/garment": "Gramm für das Kleidungsstück",
    "yarn/swatches": "Gramm für Maschenproben",
    "yarn/reserve": "Gramm als Vorrat",
    "yarn/ball": "{yarn}, {grams} g = {metres} m je Knäuel",
    "yarn/away": "Hilfsgarn und Trennfaden (werden entfernt), Meter",
    "yarn/waste": "Hilfsgarn",
    "yarn/ravel": "Trennfaden",
    "yarn/together": "{yarn}: {strands:and} zusammen verstrickt.",
    "yarn/strands": "{yarn}, {count} Fäden",
    # How it was reckoned.
    "way/from-loops": "{known:/; }; Maschenproben, Nähte und Fadenenden eingeschlossen, mit {spare} % für Reste; auf etwa {error} %"
    " genau{estimated:?: eine Maschenprobe wiegen, um es besser zu wissen}",
    "way/none": "davon wird keines verstrickt",
    "way/of-fabrics": "{fabrics:and} {way}",
    "way/weighed": "nach dem Gewicht der Maschenprobe",
    "way/measured": "nach der gemessenen Garnlänge einer Masche",
    "way/estimated": "geschätzt aus der Maschenzahl nach den Verhältnissen glatten Gestricks",
    "way/as-in-fabric": "in Maschen so lang wie die von {fabric}; das Gewicht ist das eines Garns, so dick wie {yarn}; auf etwa"
    " {error} % genau",
    "way/one-length": "ein Stück von {cm} cm, genug für die längste Reihe und {ends} cm an jedem Ende{times:?; es wird {times}-mal"
    " gebraucht, oder so viele Stücke, wenn Teile mit ihrem darin warten}; auf etwa {error} % genau",
    "way/lengths": "{lengths} Stücke von {cm} cm, genug für die längste Reihe und {ends} cm an jedem Ende{times:?; sie werden"
    " {times}-mal gebraucht, oder so viele Paare, wenn Teile mit ihrem darin warten}; auf etwa {error} % genau",
    # Where figures are from.
    "credit": "Quelle: {published:/; }{recalled:? (aus dem Gedächtnis, nicht eingesehen)}{own:?, doch eigene Angabe: {own}}",
    "credit/shared": "{first}; {unit:?{unit} }{rest:/, }",
    "credit/of": "{rows}. {credit}.",
    # Edges and joins.
    "edge/start": "erste Reihe",
    "edge/end": "letzte Reihe",
    "edge/shoulder": "Schulter",
    "edge/neck": "Halsausschnitt",
    "edge/of-left": "{edge} links",
    "edge/of-centre": "{edge} Mitte",
    "edge/of-right": "{edge} rechts",
    "edge/of-upper": "{edge} oben",
    "edge/cast-on": "{edge} (Anschlagkante)",
    "join/of-two": "{one:/ + } mit {other:/ + }",
    "join/upon-itself": "{one:/ + } mit sich selbst",
    "join/edge": "{piece} {edge}",
    "join/edge-of-copy": "{piece} {copy} {edge}",
    "yarn/way": "{yarns}: {way}.",
    "yarn/other": "Ein anderes Garn tut es auch, wenn seine Maschenprobe gleich ausfällt und sich anfühlt, wie Sie es mögen."
    " Nach Metern kaufen: ein Knäuel von gleichem Gewicht kann kürzer sein.",
    # How the pattern was checked.
    "checked/one": "Bevor diese Seiten gedruckt wurden, wurde das Kleidungsstück im Rechner gestrickt, Masche für Masche auf"
    " einem Nadelbett: {loops} Maschen in {moves} Bewegungen von Hand und Schlitten, keine davon eine, die die Maschine nicht"
    " machen kann, und keine Masche blieb, die nichts hält.",
    "checked/each": "Bevor diese Seiten gedruckt wurden, wurde jede der {sizes} Größen im Rechner gestrickt, Masche für Masche"
    " auf einem Nadelbett: {loops} Maschen in {moves} Bewegungen von Hand und Schlitten, keine davon eine, die die Maschine"
    " nicht machen kann, und keine Masche blieb, die nichts hält.",
    "checked/read": "Dann wurden die gedruckten Wörter von einem zweiten Leser zurückgelesen, der vom ersten nichts weiß: was"
    " sie zu tun heißen, ist das, was gestrickt wurde, Bewegung für Bewegung, oder es wurde seinerseits gestrickt und ergab"
    " dasselbe Gestrick.",
    "checked/unread": "Die gedruckten Wörter wurden nicht zurückgelesen für: {sizes}.",
    "checked/figures": "Maschen und Reihen sind ganze Zahlen, daher trifft ein Maß die jeweils nächste; was gewünscht war und was"
    " gestrickt wurde, steht nebeneinander im Plandokument der Anleitung.",
    # What a copy was regraded from, and what can be given.
    "regraded": "Umgerechnet",
    "regraded/chosen": "Gewählt",
    "regraded/what": "Was",
    "regraded/own": "In dieser Ausgabe",
    "regraded/source": "In der Quelle",
    "regraded/line": "Umgerechnet: {told}.",
    "regraded/measure": "{name}",
    "regraded/tension": "Maschen und Reihen von {name} auf 10 cm",
    "regraded/swatch": "Maschenprobe von {name}",
    "regraded/dial": "Maschenweite für {name}",
    "regraded/dial/plate": "Platte für {name}",
    "regraded/yarn": "Garn: {name}",
    "regraded/bed": "Nadelbett",
    "regrade/measures": "Maße dieser Anleitung, {unit}",
    "regrade/others": "Alles andere",
    "regrade/cm": "cm",
    "regrade/in": "Zoll",
    "regrade/both": "cm und Zoll",
    "regrade/to-fit": "Körpermaß",
    "regrade/about-to-fit": "{about}, Körpermaß",
    "regrade/choice": "{own}, oder {others:or}",
    "regrade/count": "{values}{about:?, {about}}",
    "regrade/size": "Größe",
    "regrade/tension-or-swatch": "--tension oder --swatch",
    "regrade/to-10-cm": "{tension} auf 10 cm, {fabric}",
    "regrade/dial": "{fabric}: Maschenweite",
    "regrade/plates": "{fabric}: Platte",
    "regrade/bed": "{bed}: {needles} Nadeln, Teilung {pitch} mm",
    "regrade/fabric": "{stitch} in {yarn}",
    "regrade/how": "Die Anleitung kann für eigene Zahlen neu berechnet werden. Zu sagen ist dem, von dem sie stammt, welche der"
    " Zeilen sich ändern sollen und wie; alles andere bleibt, wie es ist. Ein Maß, das nicht in der Liste steht, folgt aus"
    " denen, die darin stehen.",
    "regrade/such-as": "Zum Beispiel: {command}",
}
