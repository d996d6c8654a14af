"""German words for lines that do not read."""

from __future__ import annotations

from walewright.report.wording import Wording

_INDENT = {
    "as-first-line": "eine Zeile eines Blocks ist so weit eingerückt wie seine erste Zeile; alle anderen beginnen am linken Rand",
}
_CALL = {
    "call": "`{sound}` als Namen nehmen",
    "letters": "einen Namen aus Buchstaben, Ziffern und einzelnen `_` zwischen Wörtern geben",
}
_DIVIDE = {"divide": "für jedes Kleidungsstück einen eigenen Quelltext schreiben, und was sich wiederholt, einmal als `shape`"}
_INVISIBLE = {"invisible": "hier unsichtbar"}
_DELETE = {"delete": "es löschen, oder die Zeile neu tippen"}
_READS = {
    "reads": "eine solche Zeile lautet `{sample}`",
    "straight-quotes": 'Texte stehen in geraden Anführungszeichen, `"`',
    "decimal-point": "im Quelltext steht bei Dezimalzahlen ein Punkt, etwa `2.5`",
}
_CAN_STAND = {"can-stand": "hier kann stehen: {words:or`}"}

WORDINGS: dict[str, Wording] = {
    "chained-depth": Wording(
        "Randabschluss `{edging}` ist `chained`, also eine einzige Reihe, und hat eine Tiefe",
        labels={"depth": "eine Tiefe"},
        helps={"leave-out": "die Tiefe weglassen, oder `chained` weglassen"},
    ),
    "control-character/no-letter": Wording(
        "das Zeichen U+{letter:04X} ist kein Buchstabe eines Textes", labels=_INVISIBLE, helps=_DELETE
    ),
    "control-character/turns": Wording("das Zeichen U+{letter:04X} kehrt die Schreibrichtung um", labels=_INVISIBLE, helps=_DELETE),
    "empty-source": Wording(
        "der Quelltext sagt nichts",
        labels={"nothing": "keine Anweisung"},
        helps={"title": 'mit einem Titel beginnen, etwa `pattern "Tidewrack"`'},
    ),
    "incomplete-statement": Wording(
        "in dieser Anweisung `{line}` fehlt: {lacking:term}",
        labels={"lacking": "{lacking:term} fehlt"},
        helps={
            "add-depth": "sie ergänzen, etwa `6 cm deep`",
            "add-width": "sie ergänzen, etwa `18 cm wide`",
            "add-neck-depth": "sie ergänzen, etwa `8 cm deep`",
            "add-shape": "`round`, `v` oder `square` ergänzen",
            "add-start": "`on waste yarn`, `with e-wrap`, `with chain` oder `along` mit Kanten ergänzen",
            "add-holding": "`held in`, `let out` oder `held in and let out` ergänzen",
        },
    ),
    "invisible-symbol": Wording(
        "das Zeichen U+{letter:04X} ist für sich allein nicht zu sehen und zählt hier als Masche",
        labels={"own": "ein eigenes Zeichen"},
        helps={"delete": "es löschen und die Strickschrift mit Zeichen aus je einem Buchstaben zeichnen"},
    ),
    "line-too-long": Wording(
        "die Zeile hat ohne ihre Texte {length} Zeichen, höchstens {most} sind erlaubt",
        labels={"begins": "beginnt hier"},
        helps={"one-statement": "je Zeile eine Anweisung schreiben und langen Ausdrücken mit `let` Namen geben"},
    ),
    "misplaced-line": Wording(
        "eine Zeile mit `{word}` kann {place} nicht stehen",
        labels={"begins": "so beginnt die Zeile"},
        notes={"stands": "sie steht {elsewhere:or}"},
        helps={"move-it": "sie {elsewhere:or} schreiben, oder weglassen"},
    ),
    "name-in-language/no-word": Wording(
        "nichts kann {word!r} heißen",
        labels={"word": "von der Seite nicht zurückzulesen"},
        helps={"letters": "bis zu {most} Buchstaben und Ziffern schreiben, mit einzelnen Leerzeichen zwischen den Wörtern"},
    ),
    "name-in-language/taken": Wording(
        "zwei Dinge einer Art hießen `{word}`",
        labels={"again": "hier", "first": "zuerst hier"},
        helps={"another": "eines davon anders nennen"},
    ),
    "name-in-language/twice": Wording(
        "`{name}` heißt in einer Sprache zweimal anders",
        labels={"again": "hier noch einmal", "first": "zuerst hier"},
        helps={"leave-one-out": "eines davon weglassen"},
    ),
    "name-in-language/unknown": Wording(
        "in dieser Quelle heißt nichts `{name}`",
        labels={"called": "heißt hier anders"},
        helps={"did-you-mean": "war `{near}` gemeint?", "define-or-delete": "die Zeile löschen, oder etwas so nennen"},
    ),
    "name-unreadable/mark": Wording(
        "der Name `{shown}` enthält U+{letter:04X}, ein Zeichen, das für sich allein kein Buchstabe ist",
        labels={"no-marks": "in Namen nicht erlaubt"},
        helps=_CALL,
    ),
    "name-unreadable/name": Wording(
        "der Name `{shown}` {fault}",
        labels={"not-read-back": "von der Seite nicht zurückzulesen"},
        helps=_CALL,
    ),
    "name-unreadable/tension": Wording(
        "die Maschenweite `{shown}` {fault}",
        labels={"not-read-back": "von der Seite nicht zurückzulesen"},
        helps={"as-dial": "sie so schreiben, wie sie auf der Maschine steht: aus Ziffern, Buchstaben und Punkten"},
    ),
    "not-whole-number": Wording(
        "hier gehört eine ganze Zahl hin, und `{number}` ist keine",
        labels={"count": "eine Anzahl"},
        helps={"whole": "eine Zahl ohne Nachkommastellen schreiben"},
    ),
    "number-too-long": Wording(
        "eine Zahl hat höchstens {most_whole} Ziffern vor dem Punkt und {most_decimals} dahinter",
        labels={"digits": "{whole} davor, {decimals} dahinter"},
        helps={"round-it": "sie runden, oder in einer größeren Einheit schreiben"},
    ),
    "repeated-option": Wording(
        "diese Zeile sagt dasselbe zweimal",
        labels={"again": "noch einmal gesagt", "first": "zuerst gesagt"},
        helps={"leave-one-out": "eines von beiden weglassen"},
    ),
    "reserved-word": Wording(
        "`{name}` hat dort, wo dieser Name stehen würde, eine eigene Bedeutung",
        labels={"named": "heißt `{name}`"},
        notes={"taken": "Wörter, die hier keine Namen sein können: {taken:`/, }"},
        helps={"longer": "es `own_{name}` nennen, oder sonst etwas Längeres"},
    ),
    "source-too-long/characters": Wording(
        "der Quelltext hat {count:,} Zeichen, höchstens {most:,} sind erlaubt",
        labels={"begins": "beginnt hier"},
        helps=_DIVIDE,
    ),
    "source-too-long/lines": Wording(
        "der Quelltext hat {count:,} Zeilen, höchstens {most:,} sind erlaubt",
        labels={"begins": "beginnt hier"},
        helps=_DIVIDE,
    ),
    "tab-indent": Wording(
        "diese Zeile ist mit einem Tabulator eingerückt; Blöcke werden mit Leerzeichen eingerückt",
        labels={"tab": "ein Tabulator"},
        notes={"further": "ebenso {further:1 weitere Zeile|# weitere Zeilen}"},
        helps={"spaces": "stattdessen {columns} Leerzeichen schreiben"},
    ),
    "too-deep": Wording(
        "Klammern und Rechenzeichen stehen mehr als {most} Stufen tief ineinander",
        labels={"deeper": "von hier an noch tiefer"},
        helps={"name-parts": "Teilen davon Namen geben, jedem eine Zeile `let`"},
    ),
    "empty-text": Wording(
        "zwischen diesen Anführungszeichen ist nichts zu lesen",
        labels={"own": "leer"},
        helps={"write": "den Text schreiben, oder seine Anweisung weglassen"},
    ),
    "unclosed-text": Wording(
        "dem hier begonnenen Text fehlt in seiner Zeile das schließende Anführungszeichen",
        labels={"to-end": "Text bis zum Ende der Zeile"},
        notes={"quotes": 'in einem Text ist `\\"` ein Anführungszeichen, und `\\n` beginnt eine neue Zeile'},
        helps={"close": 'ihn mit `"` schließen'},
    ),
    "unknown-escape": Wording(
        "`\\{letter}` steht für nichts",
        labels={"text": "in einem Text"},
        notes={"known": 'ein umgekehrter Schrägstrich kann vor `"`, `n` (neue Zeile) und sich selbst stehen'},
        helps={"double": "für einen umgekehrten Schrägstrich `\\\\` schreiben"},
    ),
    "unreadable-line/cannot-follow": Wording(
        "`{word}` kann nicht auf `{before}` folgen",
        labels={"stopped": "bis hierher gelesen"},
        notes=_CAN_STAND,
        helps=_READS,
    ),
    "unreadable-line/ends-too-soon": Wording(
        "die Zeile endet nach `{before}` zu früh",
        labels={"ends": "die Zeile endet"},
        notes=_CAN_STAND,
        helps=_READS,
    ),
    "unreadable-line/unknown-beginning": Wording(
        "keine Zeile {place} beginnt mit `{word}`",
        labels={"begins": "so beginnt die Zeile"},
        notes={
            "beginnings": "Zeilen dort beginnen mit: {beginnings:`/, }",
            "name-begins": "Zeilen dort beginnen mit einem Namen",
        },
        helps={"reads": "eine solche Zeile lautet `{sample}`"},
    ),
    "wrong-indent/at-margin": Wording(
        "diese Zeile gehört zum Block darüber und ist nicht eingerückt",
        labels={"at-margin": "am linken Rand"},
        helps=_INDENT,
    ),
    "wrong-indent/no-block": Wording(
        "diese Zeile ist eingerückt, und hier ist kein Block offen",
        labels={"indented": "um {indent} eingerückt"},
        helps=_INDENT,
    ),
    "wrong-indent/unlike-block": Wording(
        "diese Zeile ist nicht so weit eingerückt wie die anderen ihres Blocks",
        labels={"unlike": "um {indent} eingerückt, der Block um {block}"},
        helps=_INDENT,
    ),
}
