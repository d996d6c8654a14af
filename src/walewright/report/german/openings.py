"""German words for what is cut into a piece: necks, openings, slots and buttonholes."""

from __future__ import annotations

from walewright.report.wording import Wording

_ROOM = Wording(
    "{what}: daneben bleibt vom Teil nichts übrig",
    labels={"wide": "{taken} breit"},
    notes={
        "piece-wide": "das Teil ist {where} {width} breit",
        "beside": "{side:term}s davon, {where}, hat das Teil {room}",
        "beyond": "{side:term}s, {where}, geht es {over} über die Kante des Teils hinaus",
    },
    helps={
        "narrower": "es mindestens {by} schmaler machen, oder das Teil dort um ebenso viel breiter",
        "narrower-or-inwards": "es auf dieser Seite mindestens {by} schmaler machen, oder es so weit zur Mitte rücken",
    },
)
_OWN_NAME = {"rename": "anders nennen"}
_KEPT = {"kept": "vorbehaltene Namen: {kept:`/, }"}

WORDINGS: dict[str, Wording] = {
    "beyond-the-edge/buttonholes": Wording(
        "Knopflöcher von Teil `{piece}`: daneben bleibt vom Teil nichts übrig",
        labels={"in-from": "bis {reach} von der {edge:term}en Kante"},
        notes={"room": "das Teil hat dort {room}"},
        helps={"nearer": "sie mindestens {over} näher an die Kante legen"},
    ),
    "beyond-the-edge/room": _ROOM,
    "buttonholes-too-close": Wording(
        "{count} Knopflöcher brauchen vom ersten bis zum letzten {needed} Reihen",
        labels={"here": "hier {rows}"},
        helps={"apart": "ihre Enden {lacking} weiter auseinanderlegen, oder weniger davon machen"},
    ),
    "edge-past-opening": Wording(
        "{what} endet bei `{end}`, unter `{to_level}`",
        labels={"to": "bis `{to_level}`"},
        notes={"levels": "Höhen von Teil `{piece}` vom Anfang aufwärts: {levels}"},
        helps={"another-level": "`{end}` oder eine Höhe darunter nennen"},
    ),
    "named-in-opening": Wording(
        "die Kanten heißen hier nach der Öffnung selbst: {what}",
        labels={"called": "`called {called}`"},
        helps={"leave-name-out": "`called {called}` weglassen; wo die Kante gemeint ist, steht der Name der Öffnung für sie"},
    ),
    "neck-flat": Wording(
        "{what}: das flache Stück ist {wider:?breiter als der Halsausschnitt|weniger als ein ganzer eckiger Ausschnitt}",
        labels={"flat": "flach {flat}", "neck": "Halsausschnitt {width}"},
        helps={
            "narrower": "{wider:?das flache Stück schmaler machen, oder den Halsausschnitt breiter|es weglassen: ein eckiger "
            "Ausschnitt ist ganz flach}",
        },
    ),
    "neck-too-deep": Wording(
        "{what} ist so tief, wie das Teil hoch ist, oder tiefer",
        labels={"deep": "{depth} tief", "at": "`{top}` bei {height}"},
        helps={"less": "weniger tief machen, um mehr als dies: {by}"},
    ),
    "neck-too-wide": _ROOM,
    "no-buttonholes": Wording(
        "`{owner}` hat keine Knopflöcher",
        labels={"here": "eines für jedes von ihnen"},
        helps={"own-count": "das Teil oder die Blende mit den Knopflöchern nennen, oder schreiben, wie viele es sind, etwa `6`"},
    ),
    "no-width-left/opening": Wording(
        "{what}: bei `{level}` bleibt keine Breite übrig",
        labels={"wide": "{width} breit"},
        helps={"less": "ihre Kanten {short} weniger zusammenführen"},
    ),
    "opening-at-start": Wording(
        "{what} beginnt am Anfang, wo noch keine Reihe gestrickt ist",
        labels={"from": "von `{from_level}`"},
        helps={"own-level": "eine eigene Höhe dafür angeben, zwei Reihen höher oder mehr"},
    ),
    "odd-or-even-parted": Wording(
        "`{opening}` teilt das Teil zwischen zwei Maschen in der Mitte, also kann die Zahl der Maschen nicht offen bleiben",
        labels={"parts": "nimmt beim Teilen keine Masche", "either": "`odd or even`"},
        helps={
            "leave-out": "`odd or even` beim Teil weglassen",
            "stitch-at-point": "oder stattdessen `centre stitch` schreiben: dann hat der Halsausschnitt an seiner Spitze eine "
            "Masche",
        },
    ),
    "openings-in-turn": Wording(
        "`{one}` und `{other}` von Teil `{piece}` beginnen oder enden von Größe zu Größe in anderer Reihenfolge",
        labels={"one": "von {one_low} bis {one_high}", "other": "von {other_low} bis {other_high}"},
        notes={"one-text": "alle Größen werden nach einem Text gearbeitet, mit denselben Abschnitten nacheinander"},
        helps={"all-sizes": "in allen Größen dasselbe zuerst beginnen, zuerst enden und links liegen lassen"},
    ),
    "openings-overlap": Wording(
        "`{one}` und `{other}` von Teil `{piece}` sind in denselben Reihen offen, und dazwischen bleibt nichts vom Teil",
        labels={"one": "von {one_low} bis {one_high}", "other": "von {other_low} bis {other_high}"},
        helps={
            "end-before": "das eine enden lassen, bevor das andere beginnt: gemeinsam haben sie {shared}",
            "further-apart": "oder sie weiter auseinander legen, um mehr als: {over}",
        },
    ),
    "openings-touch": Wording(
        "`{upper}` von Teil `{piece}` beginnt in der Reihe, in der `{lower}` endet",
        labels={"from": "von {low}", "to": "bis {high}"},
        notes={
            "whole-rows": "Reihen über die ganze Breite verbinden die Hälften der einen, bevor sich das Teil für die andere teilt",
        },
        helps={"own-level": "`{upper}` an einer eigenen Höhe beginnen lassen, zwei Reihen höher oder mehr"},
    ),
    "needles-out/end": Wording(
        "Teil `{piece}` endet mit Randabschluss `{edging}`, der auf jeder Nadel der letzten Reihe gestrickt wird",
        labels={"rows": "bis zum Ende außer Arbeit"},
        helps={
            "end": "sie an einer Höhe unter dem oberen Ende wieder in Arbeit bringen, oder das Teil ohne den Randabschluss enden "
            "lassen",
        },
    ),
    "needles-out/start": Wording(
        "Teil `{piece}` beginnt {along:?entlang von Kanten|mit einem Randabschluss}, und das braucht auf jeder Nadel des Anfangs "
        "eine Masche",
        labels={"rows": "vom Anfang an außer Arbeit", "start": "{along:?auf Kanten gehängt|hier ein Randabschluss}"},
        helps={
            "start": "sie an einer Höhe über dem Anfang außer Arbeit bringen, oder das Teil {along:?für sich|ohne den "
            "Randabschluss} beginnen",
        },
    ),
    "needles-out/every": Wording(
        "Nadeln von Teil `{piece}` können so nicht außer Arbeit sein",
        labels={"which": "diese Nadeln"},
        helps={
            "every": "höchstens jede {fewest}. Nadel schreiben, und nicht so wenige, dass keine in der Breite liegt",
        },
    ),
    "needles-out/near": Wording(
        "Nadeln außer Arbeit in Teil `{piece}` liegen an seiner Kante oder nebeneinander",
        labels={"which": "diese Nadeln"},
        helps={"apart": "sie drei Maschen oder mehr von der Kante und voneinander entfernt setzen"},
    ),
    "needles-out/worn": Wording(
        "Teil `{piece}` ist getragen nicht schmaler als gestrickt, also ist es nicht an seinen Nadeln außer Arbeit gefaltet",
        labels={"worn": "getragen {worn}, gestrickt {width}"},
        helps={"worn": "schreiben, wie breit es gefaltet ist, oder die Breite weglassen"},
    ),
    "needles-out/other-work": Wording(
        "{what} und Nadeln außer Arbeit haben in Teil `{piece}` gemeinsame Reihen",
        labels={"rows": "Nadeln außer Arbeit", "other": "dieselben Reihen"},
        helps={"other-rows": "sie darüber außer Arbeit bringen, oder darunter wieder in Arbeit, an eigenen Höhen"},
    ),
    "needles-out/fabric": Wording(
        "Gestrick `{fabric}` von Teil `{piece}` wird nach Nadeln gearbeitet, und einige davon sind außer Arbeit",
        labels={"rows": "Nadeln außer Arbeit"},
        helps={"fabric": "das Teil schlicht oder in Streifen stricken"},
    ),
    "slots-overlap": Wording(
        "`{one}` und `{other}` von Teil `{piece}` liegen bei `{level}` übereinander oder berühren sich",
        labels={"one": "der eine", "other": "der andere"},
        helps={"apart": "sie weiter auseinanderlegen, mindestens um {by}, oder in eigene Reihen"},
    ),
    "reserved-name/opening": Wording(
        "jedes Teil hat schon eine Kante `{name}`",
        labels={"opening-called": "eine Öffnung, die so heißt", "slot-called": "ein Schlitz, der so heißt"},
        notes=_KEPT,
        helps=_OWN_NAME,
    ),
    "slot-at-edge": Wording(
        "{what} kann nicht bei `{level}` sein: {start:?darunter|darüber} sind keine Reihen",
        labels={"at": "bei `{level}`"},
        helps={"own-level": "eine eigene Höhe {start:?über dem Anfang|unter dem oberen Ende} dafür angeben"},
    ),
}
