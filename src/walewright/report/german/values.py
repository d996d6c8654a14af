"""German words for sizes, values and what is given in their place."""

from __future__ import annotations

from walewright.report.wording import Wording

_NO_SUCH_EDGE = Wording(
    "{what:@kein|keine|kein} {what:term} heißt `{name}`",
    labels={"here": "nicht bekannt"},
    notes={"known": "hier bekannt: {known:names`}", "nothing": "hier gibt es {what:@keinen|keine|kein} {what:term}"},
)
_LOOK_AT_UNIT = {"look": "auf die Einheit achten"}
_LEAVE_ONE = "eines davon weglassen"
_FIRST_AND_AGAIN = {"again": "hier noch einmal", "first": "zuerst hier"}
_DIMENSION = {"dimension": "{dimension}"}
_LARGER_SMALLER = {
    "larger": "`{left}` größer machen, um {by}, wo am meisten fehlt, oder weniger verlangen",
    "smaller": "`{left}` kleiner machen, um {by}, wo es am meisten zu groß ist, oder mehr zulassen",
}
_FAILS = {"fails": "nicht erfüllt in {failing}"}
_AGAINST = {"against": "{size}: {left} gegen {right}"}
_SWATCH_OF_YOURS = {"swatch": 'eine Maschenprobe stricken und angeben, was sie misst: `--tension "{fabric}=... st ... rows"`'}
_OWN_FIGURES = "hier eigene Maße angeben: `{with_own}`"
_IT_HAS = {"it-has": "sie hat {names}"}
_WITHIN = "innerhalb dieser Alternative"

WORDINGS: dict[str, Wording] = {
    "absurd-measurement": Wording("`{row}` ist mehr als {longest}", labels={"values": "{values}"}, helps=_LOOK_AT_UNIT),
    "bad-ball": Wording(
        "`{text}` ist kein Garn mit Knäuel",
        helps={"ball-example": "Bezeichnung, Gramm und Meter schreiben, etwa `my wool, 50 g = 120 m`"},
    ),
    "bad-bed": Wording(
        "`{text}` ist kein Nadelbett",
        helps={
            "bed-example": "ein mitgeliefertes Nadelbett schreiben, oder Angaben, etwa `standard` oder `needles=180, pitch=4.5 mm`"
        },
    ),
    "bad-dial": Wording(
        "`{text}` ist keine Einstellung des Maschenweitenreglers",
        helps={"dial-example": "die Zahl schreiben, die der Regler zeigt, etwa `6` oder `4.5`"},
    ),
    "bad-measure/count-out-of-range": Wording(
        "`{name}` kann nicht {count} sein",
        helps={"count-range": "nötig ist {whole:?eine ganze Zahl |ein Wert }über 0 und bis {most}"},
    ),
    "bad-measure/other-count": Wording(
        "`{text}` ist nicht, was `{name}` zählt{unit:? ({unit})}",
        helps={"count-example": "{unit:?eine Zahl mit `{unit}`|eine Zahl ohne Einheit} schreiben, etwa `{example}`"},
    ),
    "bad-measure/out-of-range": Wording(
        "`{name}` kann nicht {length} sein", helps={"range": "nötig ist mehr als 0 und höchstens {longest}"}
    ),
    "bad-measure/unreadable": Wording(
        "`{text}` ist keine Länge",
        helps={
            "measure-example": "eine Zahl und ihre Einheit schreiben, etwa `104 cm`; für eine Zeile, die zählt, eine Zahl allein",
        },
    ),
    "bad-swatch": Wording(
        "`{text}` ist keine Maschenprobe",
        helps={"swatch-example": "Maschen, Reihen, Breite, Höhe und Gewicht schreiben, etwa `40 st 60 rows 23.5 cm 21 cm 28 g`"},
    ),
    "bad-tension/out-of-range": Wording(
        "kein Nadelbett strickt {count} auf {width}",
        notes={"possible": "ein Nadelbett strickt {least} bis {most} auf {width}"},
        helps={"look": "darauf achten, welche Zahl welche ist, und dass beide auf 10 cm gelten"},
    ),
    "bad-tension/unreadable": Wording(
        "`{text}` gibt keine Maschen und Reihen an",
        helps={"tension-example": "Maschen und Reihen auf 10 cm schreiben, etwa `17 st 24 rows`"},
    ),
    "cyclic-let": Wording(
        "{ring:`/ braucht }: das hat kein Ende",
        labels={"named-here": "`{name}`"},
        helps={"own-value": "einem davon einen Wert geben, der keines der anderen braucht"},
    ),
    "division-by-zero": Wording(
        "hier wird durch null geteilt",
        labels={"zero": "null"},
        helps={"not-zero": "es so schreiben, dass dies in keiner Größe null ist"},
    ),
    "given-for-nothing": Wording(
        "aus `{name}` folgt keine Masche des Kleidungsstücks",
        notes={"finished": "auf der Seite wird das fertige Kleidungsstück damit verglichen, sonst nichts"},
        helps={"choices": "`walewright choices` nennt, was sich angeben lässt"},
    ),
    "given-twice/tension-and-swatch": Wording(
        "für `{name}` sind Maschen und Reihen und auch eine Maschenprobe angegeben",
        helps={"leave-one": "eines davon weglassen: eine Maschenprobe sagt Maschen und Reihen auch"},
    ),
    "given-twice/texts": Wording("`{name}` ist zweimal angegeben, als {one} und als {other}", helps={"leave-one": _LEAVE_ONE}),
    "impossible-statement/at-margin": Wording("diese Anweisung gehört in einen Block", labels={"alone": "hier für sich allein"}),
    "impossible-statement/choice": Wording(
        "eine Auswahl kann nicht zu einer Alternative einer anderen gehören",
        labels={"within": "hier angeboten", "around": _WITHIN},
    ),
    "impossible-statement/use-from": Wording(
        "was aus einer anderen Datei verwendet wird, kann nicht zu einer Alternative gehören",
        labels={"within": "hier verwendet", "around": _WITHIN},
    ),
    "impossible-statement/in-shape": Wording("diese Anweisung kann in einer Form nicht stehen", labels={"shape": "in einer Form"}),
    "impossible-statement/no-value": Wording("`{function}` braucht mindestens einen Wert", labels={"given": "{count} angegeben"}),
    "impossible-statement/round": Wording(
        "`{function}` braucht einen Wert, und worauf er zu runden ist", labels={"given": "{count} angegeben"}
    ),
    "impossible-statement/text": Wording(
        "ein Text `{key}` wird hier nicht gedruckt", labels={"can-stand": "hier kann stehen: {keys:or`}"}
    ),
    "missing-part/source": Wording("im Quelltext fehlt: {lacking:term/, }"),
    "mixed-units": Wording(
        "{one} und {other} passen nicht zusammen",
        labels={"one": "{one}", "other": "{other}"},
        helps={
            "write-unit": "die bloße Zahl mit ihrer Einheit schreiben",
            "alike": "beide in derselben Art von Einheit schreiben",
            "in-its-place": "die Rechnung dort schreiben, wo Breite oder Höhe stehen: dort sind Maschen und Reihen des Gestricks "
            "Längen",
        },
    ),
    "name-expected": Wording(
        "`{parameter}` von Form `{shape}` braucht einen Namen ({what:term}), und angegeben ist ein Maß",
        labels={"quantity": "ein Maß", "named": "`{parameter}` ist hier der Name ({what:term})"},
        helps={"name-one": "dort den Namen schreiben ({what:term})"},
    ),
    "names-look-alike": Wording(
        "{what:terms} `{known}` und `{name}` sehen gleich aus und sind zwei verschiedene",
        labels={"this": "`{name}`", "that": "`{known}`"},
        notes={"letters": "`{one}` ist {named}, `{other}` ist {other_named}"},
        helps={"rename": "davon eines umbenennen, oder denselben Namen mit denselben Buchstaben schreiben"},
    ),
    "negative-measurement": Wording(
        "`{row}` ist kleiner als null",
        labels={"values": "{values}"},
        helps={"no-minus": "schreiben, was gemessen ist, ohne das Minus"},
    ),
    "no-such-edge": _NO_SUCH_EDGE,
    "no-unit/amount": Wording(
        "{what}: die Einheit fehlt", labels={"bare": "eine bloße Zahl"}, helps={"write": "es in {unit} schreiben"}
    ),
    "no-unit/row": Wording(
        "`{row}` hat keine Einheit", labels={"bare": "bloße Zahlen"}, helps={"cm": "die Zeile mit `cm` enden lassen"}
    ),
    "not-positive/amount": Wording(
        "{what}: der Wert muss größer als null sein",
        labels={"value": "{value}"},
        helps={"above-nothing": "schreiben, was gemessen ist, größer als null"},
    ),
    "not-positive/step": Wording(
        "Runden braucht eine Stufe, die größer als null ist",
        labels={"step": "{step}"},
        helps={"a-step": "schreiben, auf welches Vielfache gerundet wird, wie in `round(length / 3 to 1 cm)`"},
    ),
    "number-too-large": Wording(
        "das ergibt mehr, als ein Kleidungsstück hat",
        labels={"too-large": "zu groß"},
        helps={"check-units": "auf die Zahlen und ihre Einheiten achten"},
    ),
    "ragged-row": Wording(
        "`{row}` hat {values:Wert|Werte} für {wanted:Größe|Größen}",
        labels={"values": "{values:Wert|Werte}", "sizes": "{wanted:Größe|Größen}"},
        notes={"lacking": "kein Wert für {lacking}"},
        helps={"a-value-each": "{wanted:einen Wert|# Werte} schreiben, in der Folge der Größen"},
    ),
    "repeated-name": Wording(
        "zwei {what:terms} heißen `{name}`", labels=_FIRST_AND_AGAIN, helps={"rename": "davon eines umbenennen"}
    ),
    "repeated-statement": Wording(
        "{owner}: zwei Anweisungen `{what}`",
        labels=_FIRST_AND_AGAIN,
        helps={"leave-one-out": "eine von beiden weglassen"},
    ),
    "language-twice": Wording(
        "der Text ist in `{language}` zweimal da",
        labels=_FIRST_AND_AGAIN,
        helps={"leave-one-out": "einen davon weglassen"},
    ),
    "require-fails/bare": Wording(
        "verlangt ist `{requirement}`, und so ist es nicht", labels=_FAILS, notes=_AGAINST, helps=_LARGER_SMALLER
    ),
    "require-fails/because": Wording(
        "verlangt ist `{requirement}`, und so ist es nicht: {because}", labels=_FAILS, notes=_AGAINST, helps=_LARGER_SMALLER
    ),
    "row-falls": Wording(
        "`{row}` wird von {one} zu {next} kleiner",
        labels={"then": "{value}, dann {next_value}"},
        helps={"check-order": "auf die Folge der Werte achten; wenn es so gemeint ist, es so lassen"},
    ),
    "shape-too-large/deep": Wording(
        "Formen werden in Formen mehr als {deepest} Stufen tief verwendet",
        labels={"deep": "`{used}` geht {deep} Stufen tief"},
        helps={"less-deep": "die Zeilen der innersten Formen dort schreiben, wo sie verwendet werden"},
    ),
    "shape-too-large/piece": Wording(
        "durch Formen bekommt dieses Teil {lines:,} Zeilen, höchstens {most:,} sind erlaubt",
        labels={"comes": "`{used}` ergibt {own_lines:,}"},
        helps={"fewer": "Formen weniger Formen verwenden lassen, oder was sich wiederholt, als Abschnitt mit `repeat` schreiben"},
    ),
    "shape-too-large/source": Wording(
        "durch Formen bekommen die Teile dieses Quelltextes zusammen mehr als {most:,} Zeilen",
        labels={"more": "{lines:,} mehr durch die Formen dieses Teils"},
        helps={"fewer": "weniger Teile mit diesen Formen schreiben, oder zwei Quelltexte"},
    ),
    "table-from-memory": Wording(
        "`{measurement}` in der Tabelle `{table}` ist aus dem Gedächtnis",
        labels={"not-seen": "in keiner veröffentlichten Tabelle eingesehen"},
        notes={"memory": "aus dem Gedächtnis: {recalled}"},
        helps={"check": "die Werte prüfen, oder sie ausschreiben"},
    ),
    "table-slip": Wording(
        "`{measurement}` in der Tabelle `{table}` ist in der Vorlage wahrscheinlich ein Druckfehler: {figures}",
        labels={"here": "hier verwendet"},
        notes={"doubt": "{size}: {note}"},
        helps={"own": _OWN_FIGURES},
    ),
    "tension-not-yours/beside-own": Wording(
        "{fabrics:names`} {single:?behält|behalten} Maschen und Reihen aus dem Quelltext, neben den angegebenen von `{own}`",
        notes={"not-reckoned": "`{fabric}` ist in einem anderen Garn, `{yarn}`: es lässt sich nicht aus `{own}` berechnen"},
        helps=_SWATCH_OF_YOURS,
    ),
    "tension-not-yours/other-yarn": Wording(
        "`{fabric}` behält Maschen und Reihen aus dem Quelltext, in einem anderen Garn",
        notes={"measured-in": "im Quelltext sind {stitches} und {rows} auf 10 cm im eigenen Garn gemessen"},
        helps=_SWATCH_OF_YOURS,
    ),
    "too-many": Wording(
        "{count} {what:terms} sind zu viele, höchstens {most} sind erlaubt",
        labels={"from-here": "von hier an zu viel"},
        helps={"second-source": "einen zweiten Quelltext schreiben, oder weglassen, was kein Kleidungsstück braucht"},
    ),
    "unknown-argument": _NO_SUCH_EDGE,
    "unknown-name": _NO_SUCH_EDGE,
    "unknown-name/given": Wording(
        "{what:@kein|keine|kein} {what:term} heißt `{name}`",
        notes={
            "here": "{what:terms} hier: {known:names`}",
            "none-here": "hier gibt es {what:@keinen|keine|kein} {what:term}",
        },
        helps={
            "close-as": "ähnlich ist `{close}`: das ist `{own}`",
            "choices": "`walewright choices` nennt, was sich angeben lässt, mit den Namen",
        },
    ),
    "unknown-name/several": Wording("`{name}` kann {meant:or`} sein", helps={"as-in-source": "es wie im Quelltext schreiben"}),
    "unknown-size": _NO_SUCH_EDGE,
    "unknown-size/given": Wording("die Anleitung hat keine Größe `{size}`", notes=_IT_HAS),
    "unknown-size/no-name": Wording("keine Größe ist genannt", notes={"pattern-has": "die Anleitung hat {names}"}),
    "unknown-size/several": Wording("`{size}` sind mehrere Größen", notes=_IT_HAS),
    "unknown-table": _NO_SUCH_EDGE,
    "unknown-table-row": Wording(
        "die Tabelle `{table}` hat kein Maß `{measurement}`",
        labels={"table": "nicht in der Tabelle"},
        notes={"it-has": "sie hat {measurements:names`}"},
    ),
    "unknown-table-size": Wording(
        "die Tabelle `{table}` hat `{measurement}` nicht für {absent}",
        labels={"table": "nicht in der Tabelle", "sizes": "Größen dieser Anleitung"},
        notes={"it-has": "sie hat {known}"},
        helps={"own": _OWN_FIGURES},
    ),
    "unused-name/definition": Wording(
        "nichts, was hergestellt wird, verwendet dies: {kind:term} `{name}`",
        labels={"by-unused": "nur von etwas verwendet, das selbst nicht verwendet wird", "nowhere": "nirgends verwendet"},
        notes={"by": "genannt von {by}"},
        helps={
            "delete-or-use": "es löschen, oder es verwenden",
            "or-to-fit": "es löschen, es verwenden, oder es mit `to fit` enden lassen, wenn es ein Körpermaß ist, nach dem sich "
            "die Größe wählen lässt",
        },
    ),
    "unused-name/edge": Wording(
        "mit der Kante `{edge}` von Teil `{piece}` ist nichts verbunden, und keine Anweisung nennt sie",
        labels={"only-here": "nur hier genannt"},
        helps={
            "leave-out-or-free": (
                "`called {edge}` weglassen, oder schreiben, was mit ihr verbunden wird; soll es nichts sein, `free {piece} {edge}` "
                "schreiben"
            )
        },
    ),
    "same-as-model": Wording(
        "diese Zeile ändert nichts: `{model}` sagt dasselbe",
        labels={"again": "wie in `{model}`"},
        helps={"leave-out": "sie weglassen"},
    ),
    "unused-name/in-shape": Wording(
        "nichts in Form `{shape}` verwendet dies: {kind:term} `{name}`",
        labels={"nowhere": "`{name}` wird darin nirgends verwendet"},
        helps={
            "delete-in-uses": "es hier und in jedem `use` löschen, oder es verwenden",
            "delete-or-use": "es löschen, oder es verwenden",
        },
    ),
    "unused-name/level": Wording(
        "zur Höhe `{level}` von Teil `{piece}` geht nichts, und an ihr steht nichts",
        labels={"unnamed": "keine Zeile des Teils nennt sie"},
        helps={"delete-or-use": "sie löschen, oder eine Kante, eine Öffnung oder ein Gestrick dort beginnen oder enden lassen"},
    ),
    "without-effect": Wording(
        "das ändert nichts: {why}",
        labels={"here": "ohne Wirkung"},
        helps={
            "leave-out": "das weglassen",
            "leave-out-or-after": "das weglassen, oder den Randabschluss danach ansetzen",
            "leave-out-or-of-model": "das weglassen, oder es bei `{model}` sagen",
            "leave-out-or-along": "das weglassen, oder das Teil mit `along` an einer Kante beginnen",
            "leave-out-or-slope": "das weglassen, oder die Kante schräg oder gebogen führen",
            "leave-out-or-steps": "das weglassen, oder die Kante in Stufen gehen lassen",
            "leave-out-or-straight-slope": "das weglassen, oder die Kante schräg gehen lassen",
            "leave-one-move-out": "eines von beiden weglassen",
            "leave-out-or-one-at-a-time": "das weglassen, oder jeweils eine Masche umhängen, oder mit `two at once` zwei abnehmen",
            "leave-out-or-width": "das weglassen, oder sagen, wie breit die Bahn ist, etwa `8 cm wide`",
            "leave-one-width-out": "eine der beiden Breiten weglassen",
            "leave-weight-or-loop-out": "eines von beiden weglassen: das Gewicht, wenn das Garn je Masche sorgfältiger gemessen "
            "ist",
            "leave-out-or-measure": "das weglassen, oder es an einer Höhe mit `round` oder `across` an einem Teil messen lassen",
            "leave-out-or-fits": "das weglassen, oder sagen, wozu es passt, etwa `, fits bust`",
            "leave-out-or-use-whole-width": "das weglassen, oder das Gestrick auch über eine ganze Breite verwenden",
            "leave-out-or-knit-in": "das weglassen, oder ein Zeichen mit `knit in` in einem anderen Garn stricken",
            "leave-out-or-wider": "das weglassen, oder es einige Maschen breit beginnen lassen",
        },
    ),
    "without-model": Wording(
        "`without` lässt weg, was ein Teil von einem anderen hat, dem es gleicht oder dessen Spiegelbild es ist",
        labels={"no-model": "dieses Teil hat alle seine Zeilen selbst"},
        helps={"delete": "diese Zeile löschen, und was nicht gewollt ist"},
    ),
    "worked-out-measure": Wording(
        "`{name}` wird von der Anleitung berechnet und lässt sich nicht angeben",
        notes={"follows": "es folgt aus {rows:names`}", "same": "es ist für jeden Körper gleich"},
        helps={
            "leave-out": "es weglassen",
            "give-one": 'eines davon angeben, etwa `--measure "{first}=... cm"`',
            "give-it": '`{first}` angeben, etwa `--measure "{first}=... cm"`',
        },
    ),
    "wrong-unit/amount": Wording("{what}: hier gehört hin: {wanted}", labels=_DIMENSION),
    "wrong-unit/compared": Wording(
        "`{measured}` ist eine Länge", labels=_DIMENSION, helps={"a-length": "es mit einer Länge vergleichen, etwa `40 cm`"}
    ),
    "wrong-unit/count": Wording(
        "{what}: hier wird gezählt, und `{name}` ist {dimension}",
        labels={"here": "{dimension}"},
        helps={"no-unit": "die Zeile oder die Rechnung ohne Einheit schreiben"},
    ),
    "wrong-unit/needed": Wording(
        "was gebraucht wird, wird gezählt oder hat eine Länge, und das ist {dimension}",
        labels=_DIMENSION,
        helps={"count-or-length": "eine Zahl ohne Einheit schreiben, etwa `6`, oder eine Länge, etwa `60 cm`"},
    ),
    "wrong-unit/regauged": Wording(
        "`{function}` braucht eine Breite, als Länge",
        labels=_DIMENSION,
        helps={"a-length": "eine Breite schreiben, etwa `40 cm`"},
    ),
    "wrong-unit/row": Wording(
        "`{row}` muss eine Länge sein", labels=_DIMENSION, helps={"a-length": "Längen schreiben, etwa `40 cm`"}
    ),
}
