"""German words for a publisher's catalogue, and for what is said of making it."""

from __future__ import annotations

from walewright.report.wording import Wording

_DID_YOU_MEAN = "ist `{near}` gemeint?"
_OTHER_FOLDER = {"other-folder": "einen anderen Ordner wählen, mit --into"}

WORDINGS: dict[str, Wording] = {
    "catalogue-line/no-toml": Wording(
        "eine Zeile des Katalogs ist kein TOML",
        labels={"stopped": "bis hierher gelesen"},
        helps={"as-in": 'Zeilen schreiben wie in: title = "Gestricktes im Frühling"'},
    ),
    "catalogue-line/unknown": Wording(
        "ein Katalog hat hier nichts, was `{name}` heißt",
        labels={"unknown": "nicht bekannt"},
        helps={"did-you-mean": _DID_YOU_MEAN, "known": "hier kann stehen: {known:and`}"},
    ),
    "catalogue-line/no-table": Wording(
        "`{name}` ist keine Tabelle",
        helps={"write-table": 'Namen und Werte in geschweiften Klammern schreiben, wie in: {name} = {{eins = "zwei"}}'},
    ),
    "catalogue-line/no-tables": Wording(
        "`{name}` verlangt Tabellen",
        helps={"write-tables": "[[{name}]] in eine eigene Zeile schreiben, und darunter, was dazugehört"},
    ),
    "catalogue-line/no-text": Wording(
        "`{name}` verlangt einen Text in Anführungszeichen, von einer Zeile und höchstens {most} Buchstaben",
        helps={"write-text": "einen Text in Anführungszeichen schreiben, ohne Zeilenenden und Steuerzeichen, und nicht leer"},
    ),
    "catalogue-line/no-list": Wording(
        "`{name}` verlangt eine Liste von einem bis {most} Texten",
        helps={
            "write-list": 'in eckige Klammern schreiben, jeden Text in Anführungszeichen, wie in: {name} = ["eins", "zwei"]',
        },
    ),
    "catalogue-line/no-date": Wording(
        "`date` verlangt einen Tag",
        helps={"write-date": "Jahr, Monat und Tag ohne Anführungszeichen schreiben, wie in: date = 2026-03-01"},
    ),
    "catalogue-line/lacking-title": Wording(
        "der Katalog hat keinen Titel",
        helps={"add-title": 'am Anfang eine Zeile ergänzen, wie in: title = "Gestricktes im Frühling"'},
    ),
    "catalogue-line/lacking-date": Wording(
        "der Katalog hat kein Datum",
        notes={"on-the-pages": "es ist das Datum der Ausgabe und steht auf den Seiten, wann immer sie gemacht werden"},
        helps={"add-date": "am Anfang eine Zeile ergänzen, wie in: date = 2026-03-01"},
    ),
    "catalogue-line/lacking-garments": Wording(
        "der Katalog nennt keine Kleidungsstücke",
        helps={"add-garments": 'eine Zeile [[garments]] ergänzen, und darunter eine wie: sources = ["*.wale"]'},
    ),
    "catalogue-line/not-one-of": Wording(
        "`{name}` hat nichts, was {text} heißt",
        labels={"not-known": "nicht bekannt"},
        helps={"did-you-mean": _DID_YOU_MEAN, "one-of": "hier kann stehen: {known:and`}"},
    ),
    "catalogue-line/twice": Wording("`{name}` steht zweimal in der Liste", helps={"leave-one-out": "eines davon weglassen"}),
    "catalogue-line/theme-name": Wording(
        "`{name}` kann eine Gestaltung nicht heißen",
        helps={"other-name": "Buchstaben, Ziffern und Striche verwenden; `{house}` heißt die eigene Gestaltung des Hauses"},
    ),
    "catalogue-line/theme-file": Wording(
        "die Gestaltung {file} ist kein Ordner und heißt nicht wie eine Gestaltungsvorlage: diese enden auf {suffix}",
        helps={"name-a-theme": "einen Ordner oder eine Gestaltungsvorlage nennen, mit dem Pfad vom Ordner des Katalogs aus"},
    ),
    "catalogue-line/no-sources": Wording(
        "eine Tabelle `{name}` nennt keine Quelltexte",
        helps={"add-sources": 'darunter eine Zeile ergänzen, wie in: sources = ["*.wale"]'},
    ),
    "catalogue-line/name-no-text": Wording(
        "der Name des Quelltexts {name} ist kein Text in UTF-8", helps={"rename-source": "der Datei einen anderen Namen geben"}
    ),
    "catalogue-line/no-match": Wording(
        "kein Quelltext heißt {name}",
        labels={"meant-here": "gesucht im Ordner des Katalogs und darunter"},
        helps={
            "did-you-mean": _DID_YOU_MEAN,
            "in-folder": "den Pfad vom Ordner des Katalogs aus schreiben; * steht für beliebige Buchstaben, ** für Ordner",
        },
    ),
    "catalogue-line/no-place": Wording(
        "ein Name hat keine Stelle {name}", helps={"places-are": "in geschweiften Klammern kann stehen: {known:and`}"}
    ),
    "catalogue-line/name": Wording(
        "so können Dateien nicht heißen",
        helps={
            "write-name": 'Buchstaben, Ziffern, Striche und Punkte verwenden, und dabei {source}, wie in: name = "{source}"',
        },
    ),
    "catalogue-clash/forms": Wording(
        "zwei Dateien aus {source} würden {product} heißen",
        helps={"add-places": "dem Namen Stellen für das geben, worin sie sich unterscheiden: {places:and`}, jede in Klammern"},
    ),
    "catalogue-clash/sources": Wording(
        "Dateien aus {source} und aus {other} würden beide {product} heißen",
        helps={"tell-apart": "einer davon einen anderen Namen geben, oder eine weglassen"},
    ),
    "catalogue-clash/kept": Wording(
        "aus {source} würde {product}, und so heißt, was daneben geschrieben wird",
        helps={"other-name": "den Dateien daraus einen anderen Namen geben"},
    ),
    "executor-unusable/unreachable": Wording(
        "unter {address} antwortet kein Verteiler",
        helps={
            "start-it": "dort einen starten, oder die Adresse schreiben, die er nennt; ohne --executor arbeitet dieser Rechner",
        },
    ),
    "executor-unusable/differs": Wording(
        "ein Rechner des Verbunds hat nicht dasselbe: {differ:names}",
        helps={"install-the-same": "überall dieselben Versionen installieren; andere könnten andere Dateien machen"},
    ),
    "catalogue-folder/other": Wording(
        "im Ordner {folder} liegt, was aus einem anderen Katalog gemacht ist: {other}, nicht {own}", helps=_OTHER_FOLDER
    ),
    "catalogue-folder/taken": Wording("der Ordner {folder} hat eigene Dateien: {there:and}", helps=_OTHER_FOLDER),
}

PHRASES: dict[str, str] = {
    "published": "{made:Datei|Dateien} gemacht; {kept} wie zuvor{withdrawn:?; {withdrawn} entfernt}"
    "{failed:?; nicht gemacht: {failed:Kleidungsstück|Kleidungsstücke}}",
    "watching": "{folder} wird beobachtet{page:?; {page} zeigt, was entsteht}",
    "withdrew": "{file} entfernt",
    "why-product": "{product}: {reasons:/; }",
    "why-new": "neu",
    "why-damaged": "was davon aufgehoben war, ist beschädigt",
    "why-gone": "die Datei fehlt",
    "why-by-hand": "die Datei wurde geändert",
    "why-asked": "der Katalog sagt anderes zu `{name}`",
    "why-program": "ein anderer Übersetzer",
    "why-names": "mehr oder andere mitgelieferte Dateien",
    "why-package": "{name} {now} statt {before}",
    "why-file": "{name} wurde geändert",
    "why-file-gone": "{name} fehlt",
}
