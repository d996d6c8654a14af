"""German words beside charts: what each mark asks for, what is repeated, and the notes."""

from __future__ import annotations

MARKS = {
    "mark/knit": "glatt stricken",
    "mark/by-hand": "die Nadel für diese Reihe in Haltestellung bringen, dann den Faden abheben und sie von Hand mit {yarn}"
    " stricken",
    "mark/lay": "{yarn} einlegen",
    "mark/lay-in-use": "das Garn in Gebrauch einlegen",
    "mark/hole": "die Nadel leer in Arbeit lassen; ihre M geht eine Nadel weiter zu der Seite, die die Zeichen daneben zeigen",
    "mark/from left": "die M der Nadel links kommt hierher; die eigene der Nadel geht eine Nadel nach rechts",
    "mark/from right": "die M der Nadel rechts kommt hierher; die eigene der Nadel geht eine Nadel nach links",
    "mark/two from left": "die M der Nadel links kommt hierher, auf die eigene der Nadel",
    "mark/two from right": "die M der Nadel rechts kommt hierher, auf die eigene der Nadel",
    "mark/three": "die M der Nadeln links und rechts kommen hierher, auf die eigene der Nadel, die linke zuerst",
    "mark/purl": "stricken; wo darüber kein solches Zeichen folgt, das Maschenstäbchen dieser Zeichen fallen lassen und auf der"
    " anderen Seite hochhäkeln",
    "mark/purl-in-stages": "stricken; bei dem RZ, den die Schritte nennen, das Maschenstäbchen bis dorthin fallen lassen, wo es"
    " zuletzt hochgehäkelt wurde, und auf der anderen Seite hochhäkeln: wenn {rows} oder mehr solche Zeichen davon warten und in"
    " der Reihe darüber keine Verkreuzung daneben steht, und beim letzten davon",
    "mark/tuck": "die Nadel in Haltestellung bringen, so dass der Faden darüber liegt, bis darüber ein anderes Zeichen steht",
    "mark/slip": "die Nadel für diese Reihe in Haltestellung bringen, dann den Faden abheben, so dass er auf Ihrer Seite"
    " vorbeiläuft",
    "mark/long": "die Nadel für diese Reihe in Haltestellung bringen, dann den Faden von Hand auf die doppelte Länge einer M"
    " durchziehen",
    "mark/ladder": "stricken, nachdem die M vor der ersten Reihe des Maschenstäbchens eine Nadel nach rechts umgehängt wurde;"
    " vor der nächsten Reihe ohne solches Zeichen das Maschenstäbchen dieser Zeichen fallen lassen",
    "mark/cross": "von je {marks} solchen Zeichen nebeneinander die linken {half} und die rechten {half} vertauschen, dabei die"
    " {first:terms} zuerst einhängen",
}

REPEATED = {
    "repeat": "Rapport: {columns} in der Breite{left}{right}; {rows} in der Höhe.",
    "repeat/none": "Rapport: keiner; die {columns:Spalte|Spalten} und {rows:Reihe|Reihen} werden einmal gearbeitet.",
    "repeat/left": ", {columns} einmal links",
    "repeat/right": ", {columns} einmal rechts",
    "columns": "Spalten {first} bis {last}",
    "columns/one": "Spalte {first}",
    "rows": "Reihen {first} bis {last}",
    "rows/one": "Reihe {first}",
}

NOTES = {
    "chart": "Strickschrift {chart}",
    "chart/side": "Die linke Maschenseite ist Ihnen zugewandt; links und rechts sind die Seiten des Nadelbetts. Reihe 1 ist die"
    " unterste und wird zuerst gestrickt.",
    "chart/before-the-row": "Umgehängt und verkreuzt wird, bevor die Reihe gestrickt wird.",
    "chart/plain": "Wo eine Nadel eines Umhängens oder einer Verkreuzung fehlt, gehalten wird oder eine Randmasche trägt, alle M"
    " davon glatt stricken.",
    "chart/slack": "Ein Maschenstäbchen aus linken Zeichen neben einer Verkreuzung vor dieser bis dorthin fallen lassen, wo"
    " es zuletzt hochgehäkelt wurde, und danach hochhäkeln; eines zwischen zwei Verkreuzungen nach beiden"
    " hochhäkeln.",
    "chart/tight": "Eine Verkreuzung 3 über 3 oder breiter ohne ein solches Maschenstäbchen daneben glatt stricken.",
    "chart/columns": "Linke Zeichen: jedes Maschenstäbchen nach dem letzten davon hochhäkeln, und früher, wo die Strickschrift"
    " endet oder wo an seiner Nadel abgenommen, abgekettet, gehalten, vom Nadelbett genommen oder eine weitere M dazugehängt"
    " werden soll. In einem Teil, der wartet, warten auch die Maschenstäbchen.",
    "chart/in-stages": "Tiefe Maschenstäbchen in Abschnitten hochhäkeln, den ersten vom Fuß des Maschenstäbchens an; bei welchem"
    " Stand des Reihenzählers, sagen die Schritte.",
    "chart/returned": "Wo die Strickschrift endet oder ein Rand des Gestricks nahe kommt, kommen Nadeln mit Fangmaschen wieder in"
    " Arbeitsstellung.",
    "chart/ladders": "Leitern: jede vor der Reihe über ihrem letzten Zeichen fallen lassen und die Nadel in Arbeit lassen; eine,"
    " die vom Ende der Strickschrift oder von der Formgebung erreicht wird, bleibt gestrickt.",
    "chart/one-row": "Die eine Reihe kommt immer wieder.",
    "chart/next-row": "Reihe 1 kommt alle {rows} Reihen wieder, gezählt ab dem Beginn der Strickschrift; wird der Reihenzähler"
    " zurückgestellt, geht die Strickschrift mit ihm zurück.",
    "chart/by-blocks": "Weise: von Hand, über die ganze Breite, auf der Schlittenseite beginnend, wo die Fäden hängen, den"
    " Faden jeder Fläche in die offenen Haken legen, auch den anderer Strickschriften, und benachbarte Fäden verkreuzen, wo"
    " sie sich treffen; dann den Schlitten ohne Garn hinüberführen.",
}

CHARTS = {**MARKS, **REPEATED, **NOTES}
