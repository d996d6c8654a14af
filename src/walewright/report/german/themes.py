"""German words for a publisher's theme."""

from __future__ import annotations

from walewright.report.wording import Wording

_LEAVE_OUT = "es weglassen"
_WITHIN = "eine Datei nennen, die im Ordner der Gestaltung oder darunter liegt"
_LOGO = {"which": "eine PNG- oder JPEG-Datei mit 150 oder mehr Bildpunkten an der längeren Seite und höchstens 5 MB nennen"}
_FONT = {"which": "eine TTF-, OTF- oder WOFF2-Datei mit einer Schrift und höchstens 4 MB nennen"}

_FILES = {
    "outside": ("liegt nicht im Ordner der Gestaltung", "gemeint ist ein Name im Ordner"),
    "missing": ("ist nicht da", "keine Datei dieses Namens"),
    "not-file": ("ist keine Datei", "ein Ordner, eine Pipe oder ein Gerät"),
    "too-large": ("ist größer als Dateien einer Gestaltung", "zu viele Bytes"),
    "refused": ("lässt sich nicht lesen", "das System verweigert sie"),
}
_LOGOS = {
    "logo-kind": ("ist weder PNG noch JPEG", "ein Logo ist ein Bild; Zeichnungen in SVG werden nicht genommen"),
    "logo-damaged": ("lässt sich nicht entschlüsseln", "die Datei ist beschädigt"),
    "logo-too-small": ("ist zum Drucken zu klein", "weniger als 150 Bildpunkte"),
    "logo-too-many-pixels": ("hat mehr Bildpunkte, als eine Kamera aufnimmt", "mehr als 80 Millionen Bildpunkte"),
}
_FONTS = {
    "font-kind": ("ist keine Schrift", "sie beginnt wie keine TTF-, OTF- oder WOFF2-Datei"),
    "font-damaged": ("lässt sich nicht als Schrift verwenden", "Tabellen, die eine Schrift braucht, sind beschädigt oder fehlen"),
    "font-unpacked": ("wird beim Entpacken größer als eine Schrift", "mehr als 16 MB"),
    "font-restricted": ("verbietet es, in ein Dokument gelegt zu werden", "so sagt es ihre Tabelle OS/2"),
}

WORDINGS: dict[str, Wording] = {
    **{
        f"theme-file-unusable/{case}": Wording(f"{{file}} der Gestaltung {why}", labels={"named": label}, helps=helps)
        for cases, helps in ((_FILES, {"which": _WITHIN}), (_LOGOS, _LOGO), (_FONTS, _FONT))
        for case, (why, label) in cases.items()
    },
    "theme-file-unusable/empty-folder": Wording(
        "der Ordner {file} enthält keine Gestaltung",
        labels={"lacks": "weder {sheet} noch {description} ist darin"},
        helps={"put-one": "eine Gestaltungsvorlage {sheet} hineinlegen, oder eine Beschreibung {description}"},
    ),
    "theme-line/no-toml": Wording(
        "die Beschreibung der Gestaltung ist kein TOML",
        labels={"stopped": "bis hierher gelesen"},
        helps={"as-in": 'Zeilen schreiben wie in: imprint = ["Printed by us"]'},
    ),
    "theme-line/unknown": Wording(
        "die Beschreibung einer Gestaltung hat hier nichts, was `{name}` heißt",
        labels={"unknown": "nicht bekannt"},
        helps={"known": "hier kann stehen: {known:and`}"},
    ),
    "theme-line/no-table": Wording(
        "`{name}` ist keine Tabelle",
        helps={"write-table": "[{name}] in eine eigene Zeile schreiben, und darunter, was dazugehört"},
    ),
    "theme-line/no-text": Wording(
        "`{name}` verlangt einen Text in Anführungszeichen, von einer Zeile und höchstens {most} Buchstaben",
        helps={"write-text": "einen Text in Anführungszeichen schreiben, ohne Zeilenenden und Steuerzeichen, und nicht leer"},
    ),
    "theme-line/lacking": Wording(
        "`{within}` sagt nichts von `{name}`",
        helps={"add-it": 'eine Zeile {name} = "…" ergänzen, mit einem Text in den Anführungszeichen'},
    ),
    "theme-line/no-list": Wording(
        "`imprint` verlangt eine Liste von höchstens {most} Zeilen",
        helps={"write-list": 'schreiben wie in: imprint = ["Printed by us", "For private use"]'},
    ),
    "theme-line/colour-unknown": Wording(
        "eine Seite hat keine Farbe, die `{name}` heißt", helps={"colours-are": "die Farben sind {known:and`}"}
    ),
    "theme-line/no-colour": Wording(
        "`{name}` verlangt eine Farbe, die verdeckt, was dahinter liegt",
        helps={"write-colour": 'sie in Anführungszeichen schreiben, etwa "#7a2f3b", "rgb(122, 47, 59)" oder "maroon"'},
    ),
    "theme-line/no-fonts": Wording(
        "`font` verlangt Tabellen, höchstens {most}",
        helps={
            "write-fonts": "für jede Schriftdatei [[font]] in eine eigene Zeile schreiben, und darunter `family` und `file`",
        },
    ),
    "theme-line/face-twice": Wording(
        "für die Schriftfamilie {family}, `weight` {weight}, `style` {style} sind zwei Dateien angegeben",
        helps={"leave-one-out": "eine davon weglassen, oder angeben, welches `weight` oder welchen `style` sie hat"},
    ),
    "theme-line/family": Wording(
        "{family} ist kein Name für eine Schriftfamilie",
        helps={"write-family": "ihn nur mit Buchstaben, Ziffern, Leerzeichen und Bindestrichen schreiben"},
    ),
    "theme-line/house-family": Wording(
        "die Schriftfamilie {family} gehört schon zum Haus",
        helps={"other-name": "ihr einen anderen Namen geben, und diesen in der Gestaltungsvorlage verwenden"},
    ),
    "theme-line/weight": Wording(
        "die Stärke einer Schrift ist eine ganze Zahl von 1 bis {most}",
        helps={
            "write-weight": "sie ohne Anführungszeichen schreiben, etwa weight = 400 für eine normale oder weight = 700 für eine "
            "fette Schrift",
        },
    ),
    "theme-line/style": Wording(
        "`style` einer Schrift ist {styles:or`}",
        helps={"write-style": 'eines davon in Anführungszeichen schreiben, etwa style = "italic"'},
    ),
    "theme-low-contrast": Wording(
        "die Farbe `{name}` ist auf dem Papier schwer zu lesen: ihr Kontrast ist {ratio} : 1",
        labels={"has": "{colour} auf {paper}"},
        notes={"wanted": "für Text ist {least} : 1 oder mehr verlangt (WCAG 2.2, Erfolgskriterium 1.4.3)"},
        helps={"further-apart": "die Farbe dunkler machen, oder das Papier heller"},
    ),
    "theme-reaches-out/end-of-sheet": Wording(
        "{what} in einer Gestaltung würde die Gestaltungsvorlage in der Seite beenden", helps={"leave-it-out": _LEAVE_OUT}
    ),
    "theme-reaches-out/fetches": Wording(
        "{what} in einer Gestaltung würde etwas von außen holen",
        helps={"leave-it-out": "es weglassen: eine Seite bringt alles mit, was sie braucht, und zeichnet mit Farben und Linien"},
    ),
}
