"""German words for choices and the alternatives of a source, and for other files that it uses."""

from __future__ import annotations

from walewright.report.wording import Wording

SHARED_FILES = {
    "outside": (
        "die Datei `{file}` liegt außerhalb des Ordners des Quelltextes",
        "eine Datei im Ordner des Quelltextes oder darunter nennen, mit / zwischen den Ordnern",
    ),
    "not-source": ("die Datei `{file}` ist kein Quelltext", "eine Datei nennen, die auf .wale endet"),
    "missing": (
        "eine Datei `{file}` gibt es nicht",
        "eine vorhandene Datei nennen; ihr Pfad geht vom Ordner der Datei aus, die sie nennt",
    ),
    "unreadable": (
        "die Datei `{file}` lässt sich nicht lesen",
        "eine einfache Datei nennen, die Text in UTF-8 enthält und gelesen werden darf",
    ),
    "ring": ("die Datei `{file}` verwendet letztlich sich selbst", "was beide brauchen, in eine dritte Datei legen"),
    "nested": (
        "Dateien verwenden Dateien mehr als {deepest} Stufen tief",
        "die Datei nennen, in der die Definition steht",
    ),
    "many": ("mehr als {most} Dateien werden verwendet", "was gemeinsam ist, in weniger Dateien legen"),
}

WORDINGS: dict[str, Wording] = {
    "choice-of-one": Wording(
        "`{name}` lässt keine Wahl: es gibt nur `{only}`",
        labels={"alone": "die einzige Alternative"},
        helps={"another": "hinter einem Komma eine weitere Alternative nennen, oder das Zugehörige ohne Wahl schreiben"},
    ),
    "choice-within-itself/again": Wording(
        "`{choice} {alternative}` ist hier ohnehin gewählt",
        labels={"inner": "noch einmal gesagt", "outer": "innerhalb dieser Alternative"},
        helps={"take-out": "ihre Zeilen ohne sie schreiben"},
    ),
    "choice-within-itself/never": Wording(
        "`{choice} {alternative}` ist nie gewählt, wo `{choice} {other}` es ist",
        labels={"inner": "kommt nie vor", "outer": "innerhalb dieser Alternative"},
        helps={"take-out": "es aus der anderen Alternative herausnehmen"},
    ),
    "choice-without-effect/alike": Wording(
        "mit `{choice} {other}` ist alles wie mit `{choice} {one}`",
        labels={"this": "dafür ist nichts gesagt, oder dasselbe", "that": "wie hierfür"},
        helps={"say-or-delete": "unter `for {choice} {other}` schreiben, was anders ist, oder es weglassen"},
    ),
    "choice-without-effect/empty": Wording(
        "zu `{choice} {alternative}` gehört hier nichts",
        labels={"empty": "keine Zeile steht darunter"},
        helps={"fill-or-delete": "die zugehörigen Zeilen darunter einrücken, oder es löschen"},
    ),
    **{
        f"shared-file-unusable/{case}": Wording(message, labels={"named": "hier genannt"}, helps={"which": help_})
        for case, (message, help_) in SHARED_FILES.items()
    },
}
