"""German words for files and the command line."""

from __future__ import annotations

from walewright.report.wording import Wording

_PHOTOGRAPH = "eine JPEG- oder PNG-Datei mit 500 oder mehr Bildpunkten nennen, die im Ordner des Quelltextes oder darunter liegt"
_UNFIT_PICTURES = {
    "outside": ("liegt nicht beim Quelltext", "gemeint ist ein Name im Ordner des Quelltextes"),
    "missing": ("ist nicht da", "keine Datei dieses Namens"),
    "not-file": ("ist keine Datei", "ein Ordner, eine Pipe oder ein Gerät"),
    "too-large": ("ist größer als jedes Bild", "mehr als 40 MB"),
    "refused": ("lässt sich nicht lesen", "das System verweigert sie"),
    "kind": ("ist weder JPEG noch PNG", "eine andere Art von Datei"),
    "damaged": ("lässt sich nicht entschlüsseln", "die Datei ist beschädigt"),
    "too-small": ("ist zum Drucken zu klein", "weniger als 500 Bildpunkte"),
    "too-many-pixels": ("hat mehr Bildpunkte, als eine Kamera aufnimmt", "mehr als 80 Millionen Bildpunkte"),
}
_DATE = {
    "notes": {"sets-the-date": "sie setzt das Datum auf der Seite, in ganzen Sekunden seit Anfang 1970"},
    "helps": {
        "set-or-unset": "sie auf eine solche Zahl setzen, etwa {variable}=1767225600 für den 1. Januar 2026, oder sie für das "
        "heutige Datum löschen",
    },
}
_RUN_AGAIN = {"run-again": "den Befehl noch einmal ausführen, wenn nichts mehr in sie schreibt"}
_SAVE_PLAIN = {"save-plain": "den Quelltext als einfache Datei sichern und diese nennen"}
_OTHER_FOLDERS = {"other-folders": "sie in verschiedene Ordner bauen oder eine umbenennen"}

WORDINGS: dict[str, Wording] = {
    "argument-missing/catalogue": Wording(
        "kein Katalog ist genannt",
        labels={"wanted-here": "hier fehlt einer"},
        helps={"name-catalogue": "eine Datei nennen, die auf .toml endet, wie publish catalogue.toml"},
    ),
    "argument-missing/file": Wording(
        "keine Quelltextdatei ist genannt",
        labels={"wanted-here": "hier fehlt eine"},
        helps={
            "name-a-file": "eine Datei nennen, die auf .wale endet",
            "name-files": "eine oder mehrere Dateien nennen, die auf .wale enden",
        },
    ),
    "argument-missing/stage": Wording(
        "keine Stufe des Übersetzers ist genannt",
        labels={"wanted-here": "hier fehlt eine"},
        helps={"name-stage": "eine Stufe nennen und eine Datei, die auf .wale endet, etwa `show solve cardigan.wale`"},
    ),
    "bad-date/after-9999": Wording("die Umgebungsvariable {variable} liegt nach dem Jahr 9999: {text}", **_DATE),
    "bad-date/before-1970": Wording("die Umgebungsvariable {variable} liegt vor 1970: {text}", **_DATE),
    "bad-date/no-number": Wording("die Umgebungsvariable {variable} ist keine Zahl: {text}", **_DATE),
    "command-line/other": Wording(
        "die Befehlszeile ist nicht zu verstehen",
        helps={"help-shows": "`walewright --help` zeigt, was sich schreiben lässt"},
    ),
    "command-line/stage": Wording(
        "eine Stufe `{stage}` gibt es nicht", labels={"no-stage": "keine Stufe"}, helps={"stages": "die Stufen sind {stages}"}
    ),
    "command-line/too-many": Wording(
        "{count:ein Wert|# Werte} mehr, als der Befehl annimmt: {more:names}",
        labels={"in-excess": "dafür ist kein Platz"},
        helps={"leave-out": "{count:=ihn|sie} weglassen; ein Wert mit Leerzeichen kommt in Anführungszeichen"},
    ),
    "command-unknown": Wording(
        "einen Befehl {command} gibt es nicht",
        labels={"not-known": "nicht bekannt"},
        helps={"commands": "die Befehle sind {known:and}"},
    ),
    "figures-file/other": Wording(
        "{file} enthält keine gemerkten Maße",
        helps={"keep-anew": "eine Datei nennen, die die Seite von `walewright serve` gespeichert hat"},
    ),
    "figures-file/unfit": Wording(
        "{file} ist bei `{key}` nicht zu verstehen",
        helps={"keep-anew": "die Maße mit der Seite von `walewright serve` neu speichern"},
    ),
    "given-too-far": Wording(
        "so lässt sich diese Anleitung nicht herstellen: {what} {text:?{text}|wie in der Datei}",
        notes={"the-pattern": "die Anleitung: {message}{sizes:? ({sizes})}"},
        helps={
            "without-it": "ohne diese Angabe lässt sie sich herstellen: im Quelltext steht {own}",
            "may-be": "{what} darf hier {rises:?höchstens|mindestens} {works} sein, wenn alles andere so bleibt: mit `{option}` "
            "geht es, mit {fails} nicht",
        },
    ),
    "installation-incomplete": Wording(
        "beim {doing} lässt sich ein Teil des Programms nicht laden: {reason}",
        helps={
            "install-again": "es neu installieren, mit den Paketen, die im README stehen; oder, wenn der Speicher knapp ist, "
            "welchen frei machen",
        },
    ),
    "memory-exhausted/memory": Wording(
        "beim {doing} ist der Speicher ausgegangen; dafür ist nichts geschrieben",
        helps={"free-memory": "andere Programme schließen, oder mit --size weniger Größen auf einmal bauen"},
    ),
    "memory-exhausted/stack": Wording(
        "was dasteht, ist tiefer geschachtelt, als sich verfolgen lässt: beim {doing} ist der Stapel ausgegangen; dafür ist nichts "
        "geschrieben",
        helps={"less-deep": "Ausdrücke, oder was aufeinander verweist, weniger tief schachteln"},
    ),
    "process-lost": Wording(
        "der Prozess, der {file} bearbeitet hat, ist vorzeitig zu Ende{signal:?, durch Signal {signal}|, mit Rückgabewert {code}}; "
        "dafür ist nichts geschrieben",
        helps={
            "one-job": "andere Programme schließen und noch einmal bauen; mit --jobs 1 wird sie in diesem Prozess bearbeitet",
        },
    ),
    "language-unknown": Wording(
        "in einer Sprache {name} lässt sich nichts drucken",
        labels={"not-known": "nicht bekannt"},
        helps={"did-you-mean": "vielleicht {near}?", "one-of": "eine von diesen schreiben: {known}"},
    ),
    "option-unknown": Wording(
        "eine Option {option} gibt es nicht",
        labels={"not-known": "nicht bekannt"},
        helps={"did-you-mean": "vielleicht {near:or}?", "help-lists-options": "`walewright --help` nennt die Optionen"},
    ),
    "option-value/bed-file": Wording(
        "--bed: {file} beschreibt {several:?mehr als ein Nadelbett|kein Nadelbett}",
        helps={
            "one-machine": "einen Block `machine` hineinschreiben, etwa `machine mine` mit `needles 180` und `pitch 4.5 mm`",
        },
    ),
    "option-value/catalogue-file": Wording(
        "{file} heißt nicht wie ein Katalog: diese enden auf {suffix}",
        helps={"name-a-catalogue": "einen Katalog nennen, wie catalogue{suffix}"},
    ),
    "option-value/jobs": Wording(
        "--jobs: {text} ist keine Zahl von Prozessen", helps={"count-of-jobs": "eine ganze Zahl von 1 bis {most} schreiben"}
    ),
    "option-value/port": Wording(
        "--port: {text} ist kein Port", helps={"port-number": "eine ganze Zahl von 0 bis 65535 schreiben; 0 ist irgendein freier"}
    ),
    "option-value/garments": Wording(
        "in {places:and} ist keine Anleitung", helps={"name-garments": "einen Ordner oder Quellen nennen, die auf .wale enden"}
    ),
    "address-refused": Wording(
        "{host}, Port {port}, steht nicht zur Verfügung: {reason}",
        helps={"other-port": "einen anderen --port wählen, oder ihn weglassen, dann wird ein freier genommen"},
    ),
    "option-value/given-twice": Wording("{option}: {name} ist zweimal angegeben", helps={"leave-one-out": "eines weglassen"}),
    "option-value/not-installed": Wording(
        "{option} braucht Pakete, die nicht installiert sind",
        helps={"install-extra": 'sie installieren, mit pip install "walewright[{extra}]", oder {option} weglassen'},
    ),
    "option-value/no-pair": Wording(
        "{option}: erwartet wird ein Name, ein Gleichheitszeichen und ein Wert",
        helps={"as-in": 'schreiben wie in {option} "{example}"'},
    ),
    "option-value/no-size": Wording(
        "keine Größe ist genannt", helps={"name-a-size": "eine Größe aus dem Quelltext schreiben, etwa --size M"}
    ),
    "option-value/no-value": Wording("die Option {option} hat keinen Wert", helps={"alone": "{option} allein schreiben"}),
    "option-value/not-one-of": Wording(
        "{option} kann nicht {text} sein",
        labels={"not-known": "nicht bekannt"},
        helps={"one-of": "eines von diesen schreiben: {known}"},
    ),
    "option-value/one-size": Wording(
        "eine Anleitung für die Maschine gilt einer Größe, und hier sind es {sizes_there:and}",
        helps={"name-yours": "die eigene nennen, etwa --size {example}"},
    ),
    "option-value/scheduler": Wording(
        "--scheduler und --executor dask gehören zusammen",
        helps={
            "both-or-none": "beide schreiben, wie --executor dask --scheduler tcp://10.0.0.7:8786, oder beide weglassen",
        },
    ),
    "option-value/source-folder": Wording(
        "--out kann nicht {out} sein: ein Name, der auf {suffix} endet, gehört einem Quelltext",
        helps={"name-a-folder": "einen Ordner nennen, etwa --out out"},
    ),
    "option-value/theme-file": Wording(
        "--theme: {file} ist kein Ordner und heißt nicht wie eine Gestaltungsvorlage: die enden auf {suffix}",
        helps={"name-a-theme": "eine Gestaltungsvorlage nennen, etwa --theme mine{suffix}, oder einen vorhandenen Ordner"},
    ),
    "option-value/value-missing": Wording(
        "die Option {option} braucht einen Wert", helps={"value-after": "hinter {option} einen Wert schreiben"}
    ),
    "output-clash/alike": Wording(
        "{one} und {other} würden nach {product} und {other_product} geschrieben",
        notes={
            "one-name": "auf vielen Systemen ist das ein Name: Großbuchstaben gelten dort als kleine, getrennt geschriebene "
            "Akzente als zusammengesetzte",
        },
        helps=_OTHER_FOLDERS,
    ),
    "output-clash/same": Wording(
        "{one} und {other} würden beide nach {product} geschrieben",
        helps=_OTHER_FOLDERS,
    ),
    "output-is-source": Wording(
        "{product} würde über einen Quelltext geschrieben: es ist ein anderer Name von {source}",
        helps={"other-folder": "mit --out einen anderen Ordner wählen, oder umbenennen, was so heißt"},
    ),
    "output-lost": Wording(
        "die Standardausgabe lässt sich nicht schreiben: {reason}",
        notes={"done-before": "davor erledigt: {done}"},
        helps={"send-elsewhere": "sie in eine Datei oder an ein Terminal leiten, in das sich schreiben lässt"},
    ),
    "output-unwritable/left-behind": Wording(
        "was ein abgebrochener Bau hier hinterlassen hat, lässt sich nicht in Ordnung bringen: {reason}",
        helps={
            "free-the-way": "frei machen, was im Weg ist, und noch einmal bauen",
            "delete-what-was-left": "oder in diesem Ordner {new} und {whole} löschen und alles darin neu bauen",
        },
    ),
    "output-unwritable/refused": Wording(
        "die Datei lässt sich nicht schreiben: {reason}",
        notes={"partly-in-place": "ein Teil ihres Satzes steht schon da; der nächste Bau in diesen Ordner macht ihn vollständig"},
        helps={
            "elsewhere": "einen anderen Ordner wählen, oder ihre Zugriffsrechte ändern",
            "free-its-folder": "die Zugriffsrechte ihres Ordners ändern, oder auf dem Datenträger Platz schaffen",
            "still-there": "nachsehen, ob die Datei noch da ist",
            "wait-for-it": "den anderen Bau abwarten, oder einen anderen Ordner wählen",
        },
    ),
    "size-not-picked": Wording(
        "Größe {size} kann auf der Seite für den Browser nicht gewählt werden: Die Zeilen ihrer Anleitung für die Maschine lassen "
        "sich nicht so zurücklesen, wie sie geplant sind"
    ),
    "page-printer": Wording(
        "der Seitendruck warnt: {warning}",
        helps={"look-at-it": "das PDF ansehen, bevor es weitergegeben wird"},
    ),
    **{
        f"photograph-unusable/{case}": Wording(f"das Foto {{file}} {why}", labels={"named": label}, helps={"which": _PHOTOGRAPH})
        for case, (why, label) in _UNFIT_PICTURES.items()
    },
    "source-is-folder": Wording(
        "das ist ein Ordner, kein Quelltext", helps={"name-a-file": "eine Datei darin nennen, die auf {suffix} endet"}
    ),
    "source-linked": Wording(
        "die Datei hat {names} Namen (harte Verweise); neu geschrieben würde sie von den anderen getrennt",
        helps={"copy-it": "sie in eine eigene Datei kopieren und diese formatieren"},
    ),
    "source-missing": Wording("eine solche Datei gibt es nicht", helps={"check-the-name": "Namen und Ordner prüfen"}),
    "source-name": Wording(
        "{file} heißt nicht wie ein Quelltext: die enden auf {suffix}",
        labels={"no-name": "kein Name eines Quelltextes"},
        helps={"name-or-rename": "eine Datei nennen, die auf {suffix} endet, oder diese umbenennen"},
    ),
    "source-not-file/device": Wording("das ist ein Gerät, keine Datei mit einem Text", helps=_SAVE_PLAIN),
    "source-not-file/other": Wording("das ist keine einfache Datei mit einem Text", helps=_SAVE_PLAIN),
    "source-not-file/pipe": Wording("das ist eine benannte Pipe, keine Datei mit einem Text", helps=_SAVE_PLAIN),
    "source-not-file/socket": Wording("das ist ein Socket, keine Datei mit einem Text", helps=_SAVE_PLAIN),
    "source-not-text/binary": Wording(
        "das ist eine Binärdatei, kein Text", helps={"name-a-text": "eine Textdatei nennen, die auf {suffix} endet"}
    ),
    "source-not-text/encoding": Wording(
        "der Text ist nicht in UTF-8: Byte {byte} passt zu keinem Buchstaben",
        helps={"save-as-utf-8": "die Datei im Editor als UTF-8 sichern"},
    ),
    "source-read-only": Wording(
        "die Datei ist schreibgeschützt", helps={"free-permissions": "ihren Schreibschutz aufheben, oder eine Kopie formatieren"}
    ),
    "source-too-large": Wording(
        "die Datei hat {size:.1f}; ein Quelltext darf {most:.1f} haben",
        helps={"right-file": "prüfen, ob die richtige Datei genannt ist"},
    ),
    "source-unreadable/changed-after-read": Wording(
        "die Datei ist nach dem Lesen geändert worden; sie bleibt, wie sie ist", helps=_RUN_AGAIN
    ),
    "source-unreadable/changed-while-read": Wording("die Datei ist beim Lesen geändert worden", helps=_RUN_AGAIN),
    "source-unreadable/refused": Wording(
        "die Datei lässt sich nicht lesen: {reason}", helps={"check-permissions": "ihren Namen und ihre Zugriffsrechte prüfen"}
    ),
    "system-refused": Wording(
        "beim {doing} hat das System etwas verweigert: {reason}",
        helps={"see-the-words": "nachlesen, was die Worte des Systems bedeuten, und den Befehl noch einmal ausführen"},
    ),
}

SHOWN: dict[str, str] = {
    "severity/error": "Fehler",
    "severity/warning": "Warnung",
    "shown/note": "Hinweis",
    "shown/help": "Abhilfe",
    "shown/sizes": "{count:=in Größe|in den Größen}",
    "counted/errors": "{count} Fehler",
    "counted/warnings": "{count:Warnung|Warnungen}",
    "shown/command-line": "Befehlszeile",
    "shown/printed-words": "gedruckten Worten",
    "shown/in": "in {file}",
    "shown/at": "in {file}, Zeile {line}, Spalte {column}",
    "shown/to-line": "(bis Zeile {line})",
    "shown/more": "{told:/, } mehr, nicht gezeigt",
}
"""What stands round messages on a terminal."""

PHRASES: dict[str, str] = {
    **SHOWN,
    "may-be-here": "{what} darf hier bei allem sonst Gegebenen {rises:?höchstens|mindestens} {works} sein; {fails} geht zu weit",
    "serving": "Seite unter {address}, bis Strg+C gedrückt wird",
    "another-build": "ein anderer Bau schreibt in diesen Ordner",
    "bug": "Programmfehler[compiler-fault]: walewright {version} ist beim {doing} gescheitert\n  {fault}\n  in {file}, Zeile "
    "{line}, in {function}\n  Python {python} auf {platform}\n  Hinweis: der Fehler liegt im Übersetzer, nicht in der Anleitung; "
    "dafür ist nichts geschrieben\n  Abhilfe: ihn mit diesen Zeilen und dem Quelltext denen melden, die diese Fassung pflegen",
    "building": "Bauen von {file}",
    "printing": "Drucken von {name} als {form}",
    "built": "{name} ist fertig",
    "proving": "Nachweisen von {name}",
    "rewrote": "{file} neu geschrieben{mixed:? (die Zeilenenden waren gemischt)}",
    "only-definitions": "{file}: Definitionen für andere Quelltexte; daraus wird nichts hergestellt",
    "would-change": "{file} würde geändert{mixed:? (die Zeilenenden waren gemischt)}",
    "wrote": "{file} geschrieben",
    "checking": "Prüfen von {file}",
    "formatting": "Formatieren von {file}",
    "listing": "Auflisten von {file}",
    "starting": "Starten",
    "bed-given": "das Nadelbett",
    "file-has-its-name": "eine Datei hat den Namen des Ordners",
    "folder-has-its-name": "ein Ordner hat ihren Namen",
    "holds-another": "er enthält {name}, was kein Bau dorthin gelegt hat",
    "kept-for-builds": "sein Name bleibt einem Ordner für Gebautes vorbehalten",
    "source-has-its-name": "ein Quelltext hat seinen Namen",
}
