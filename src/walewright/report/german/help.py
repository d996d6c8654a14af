"""What `--help` says: of the program and of each command, under its name; of options and arguments, under theirs, with that of the
command before it where one command has its own; and the words around."""

from __future__ import annotations

HELP = {
    # The words around.
    "usage": "Aufruf: ",
    "arguments": "Argumente",
    "options": "Optionen",
    "commands": "Befehle",
    "required": "nötig",
    "default": "ohne Angabe: {value}",
    # The program and its commands.
    "walewright": "Übersetzt Kleidungsstücke für die handbetriebene Strickmaschine aus Quelltexten in bewiesene, gedruckte "
    "Anleitungen.",
    "exit-codes": "Endecodes: 0 getan; 1 ein Quelltext hat Fehler oder kann so nicht gestrickt werden, oder eine Datei kann nicht"
    " gelesen oder geschrieben werden; 2 die Befehlszeile stimmt nicht, etwa ein Wert, den die Option nicht "
    "annimmt; 70 ein Fehler des Programms.",
    "check": "Rechnet jede Größe aus, beweist sie und zeigt, was herauskam. Schreibt nichts.",
    "build": "Druckt bewiesene Anleitungen: NAME.pdf, NAME.html, NAME.txt und NAME.plan.json; auf Wunsch NAME.bench.pdf.",
    "publish": "Stellt einen Katalog her: jedes Kleidungsstück, das er nennt, in jeder Sprache, auf jedem Papier, in jeder "
    "Einheit und Gestaltung, dazu ein Verzeichnis und eine Seite zum Blättern. Nur was sich seit dem letzten Mal "
    "geändert hat, wird hergestellt.",
    "choices": "Zählt auf, was anstelle der Angaben des Quelltexts gegeben werden kann: Wahlmöglichkeiten, Größen, Maße, "
    "Maschenproben, Garne und Nadelbett. Schreibt nichts.",
    "show": "Zeigt als JSON, was eine Stufe des Übersetzers aus einem Quelltext gemacht hat. Schreibt nichts.",
    "serve": "Bietet auf diesem Rechner eine Seite an, auf der Anleitungen mit einem Formular umgerechnet werden. Ohne "
    "Dateien hat sie die mitgelieferten Kleidungsstücke.",
    "format": "Schreibt Quelltexte neu, mit gleichmäßigen Abständen und Einrückungen. Bedeutung und Kommentare bleiben.",
    # What several commands have.
    "files": "Quelltexte, die auf .wale enden.",
    "serve files": "Ordner mit Quelltexten, oder Quelltexte, die auf .wale enden.",
    "file": "Ein Quelltext, der auf .wale endet.",
    "--help": "Diese Hilfe zeigen und enden.",
    "--version": "Die Version zeigen und enden.",
    "--size": "Nur diese Größe (mehrfach, oder mit Kommas aufgezählt).",
    "--choose": 'Eine der Möglichkeiten, die der Quelltext bietet, wie "sleeves=short".',
    "--tension": 'Die eigene Maschenprobe auf 10 cm, wie "plain=17 st 24 rows".',
    "--swatch": 'Die eigene Maschenprobe, wie sie gemessen und gewogen wurde, wie "plain=40 st 60 rows 23.5 cm 21 cm 28 g".',
    "--measure": 'Das eigene Maß, wie "length=60 cm".',
    "--yarn": 'Das eigene Garn und sein Knäuel, wie "wool=mein Garn, 50 g = 120 m".',
    "--dial": 'Die eigene Maschenweite, wie "plain=6".',
    "--bed": 'Das eigene Nadelbett: ein mitgeliefertes, wie "standard", Angaben, wie "needles=180, pitch=4.5 mm", oder eine '
    "Datei mit einem `machine`-Block.",
    "--from": "Eine Datei mit früher gegebenen Angaben (docs/regrading.md); was daneben gegeben wird, gilt.",
    "--language": "Die Sprache, in der gedruckt und gesprochen wird: ihr Name oder ihr Kürzel, wie de.",
    "walewright --language": "Die Sprache, in der gedruckt und gesprochen wird: ihr Name oder ihr Kürzel, wie de.",
    "publish --language": "Die Sprache der Meldungen: ihr Name oder ihr Kürzel, wie de. Die der Anleitungen sagt der Katalog.",
    "--messages": "text, oder json: für Programme, ein JSON-Objekt in jeder Zeile (docs/files.md).",
    "--jobs": "Wie viele Prozesse höchstens arbeiten; ohne Angabe so viele, wie es Kerne gibt.",
    # What one command has.
    "--all": "Jede Anzahl neben der gewünschten, auch jede Öffnung und jede Naht.",
    "--every-choice": "Alle Möglichkeiten, unter denen eines Quelltexts zu wählen, eine nach der anderen.",
    "--out": "Ordner für das Gedruckte; wird angelegt, wenn er fehlt.",
    "--paper": "Das Papier: {values}.",
    "--units": "cm, in oder both.",
    "--as": "Von {values} (mehrfach, oder mit Kommas aufgezählt).",
    "--theme": "Das eigene Stylesheet (.css) oder der eigene Ordner einer Gestaltung, über der des Hauses.",
    "--large-print": "Alle Schrift mindestens 14 Punkt, Strickschriften 7 mm je Kästchen.",
    "catalogue": "Ein Katalog, der auf .toml endet, im Ordner seiner Quelltexte.",
    "--into": "Ordner für alles, was hergestellt wird; wird angelegt, wenn er fehlt.",
    "--watch": "Weitermachen und herstellen, was eine gespeicherte Datei ändert, bis zum Abbruch.",
    "--why": "Zu jeder Datei sagen, warum sie hergestellt wird.",
    "--executor": "Wer arbeitet: local, oder dask für einen Cluster, der läuft.",
    "--scheduler": "Der Scheduler des Clusters, wie tcp://10.0.0.7:8786.",
    "--check": "Nur sagen, welche Dateien sich ändern würden; Endecode 1, wenn es welche sind.",
    "stage": "Eine Stufe des Übersetzers, wie solve oder knit.",
    "--port": "Der Port, auf dem gelauscht wird; ohne Angabe irgendein freier.",
    "--host": "Die Adresse, auf der gelauscht wird: nur dieser Rechner.",
    "--no-browser": "Die Adresse zeigen und keinen Browser öffnen.",
}
