"""German words for what the bed refuses: by the kind of a refusal, and the parts that they share."""

from __future__ import annotations

REFUSALS: dict[str, str] = {
    "bed/already-held": "Nadel {needle} ist schon in Haltestellung",
    "bed/already-in-work/held": "Nadel {needle} ist schon in Haltestellung; in Arbeit kommen nur Nadeln, die außer Arbeit sind",
    "bed/already-in-work/in-work": "Nadel {needle} ist schon in Arbeit; in Arbeit kommen nur Nadeln, die außer Arbeit sind",
    "bed/already-in-work/on-cord": "Nadel {needle} wartet schon am Trennfaden; in Arbeit kommen nur Nadeln, die außer Arbeit sind",
    "bed/already-on-cord": "Nadel {needle} wartet schon am Trennfaden",
    "bed/bars-side-by-side": "die Nadeln {needle} und {other} sind beide leer und in Arbeit: dort bildet das Garn keine Maschen",
    "bed/beyond-bed": "Nadel {needle} liegt außerhalb des Nadelbetts, das von {first} bis {last} reicht",
    "bed/block-named-twice": "zwei Teile heißen `{piece}`",
    "bed/block-uncrossed": "`{one}` und `{other}` sind zwischen den Nadeln {last} und {first} nicht verkreuzt: dort bleibt ein "
    "Loch",
    "bed/carriage-already-there": ("der Schlitten steht schon {to:term}s, also kann er keine Reihe nach {to:term}s stricken"),
    "bed/cast-off-away-from-carriage/not-placed": (
        "die Maschen {first} bis {last} lassen sich nicht von {start:term}s her abketten: wo der Schlitten steht, ist nicht "
        "bekannt, und abgekettet wird von der äußersten Masche auf der Schlittenseite an, denn dort ist das Garn"
    ),
    "bed/cast-off-away-from-carriage/placed": (
        "die Maschen {first} bis {last} lassen sich nicht von {start:term}s her abketten: der Schlitten steht {side:term}s, und "
        "abgekettet wird von der äußersten Masche auf der Schlittenseite an, denn dort ist das Garn"
    ),
    "bed/cast-off-empty": "Nadel {needle} trägt keine Masche {purpose}",
    "bed/cast-on-away-from-carriage/side-known": (
        "neben offenen Maschen wird nach der letzten auf der Schlittenseite ({side:term}s) angeschlagen, nicht auf {first} bis "
        "{last}"
    ),
    "bed/cast-on-away-from-carriage/side-unknown": (
        "neben offenen Maschen wird nach der letzten auf der Schlittenseite (nicht bekannt) angeschlagen, nicht auf {first} bis "
        "{last}"
    ),
    "bed/cast-on-over-loops": "Nadel {needle} trägt schon eine Masche; {purpose} muss sie leer sein",
    "bed/cast-on-way": "einen Anschlag `{way}` gibt es nicht; es gibt {ways:and`}",
    "bed/check-differs": "was der Schritt angibt, stimmt nicht: {differing:/; }",
    "bed/close-empty": "Nadel {needle} trägt keine Masche {purpose}",
    "bed/close-without-neighbour/end-of-bed": (
        "{first} bis {last} werden nach {towards:term}s abgekettet, aber am Ende des Nadelbetts ist keine Masche, auf die sich die "
        "letzte hängen lässt"
    ),
    "bed/close-without-neighbour/needle": (
        "{first} bis {last} werden nach {towards:term}s abgekettet, aber {needle} hat keine Masche, auf die sich die letzte hängen "
        "lässt"
    ),
    "bed/comb-in-garment-yarn": ("der Anschlagkamm ergibt eine offene Kante, die in `{yarn}` auflaufen würde: Hilfsgarn verwenden"),
    "bed/copies-differ/hung": (
        "Teil `{piece}` wird {copies}-mal gestrickt und dieses {own}-mal: jedes Exemplar des einen wird auf eines des anderen "
        "gehängt"
    ),
    "bed/copies-differ/joined": "das eine wird {fewest:=einmal|{fewest}-mal} gestrickt, ein anderes {most}-mal",
    "bed/cord-drawn-in-part": (
        "der Trennfaden wird aus den Nadeln {first} bis {last} gezogen, und Nadel {needle} ist noch hinten an ihm: ihre Masche "
        "fällt"
    ),
    "bed/cord-empty": "Nadel {needle} trägt keine Masche, die der Trennfaden halten könnte",
    "bed/cord-under-yarn": (
        "Garn `{yarn}` hängt an Nadel {needle}: es abschneiden oder zur anderen Seite stricken, bevor diese Nadel am Trennfaden "
        "wartet"
    ),
    "bed/cross-empty": "Nadel {needle} trägt keine Masche zum Verkreuzen",
    "bed/cross-of-one-group": "{first} bis {last} werden verkreuzt, aber nicht als zwei Gruppen",
    "bed/cross-without-slack": (
        "{one} und {other} Maschen von {first} bis {last} werden verkreuzt, und auf beiden Seiten liegen Maschen dicht daneben: "
        "zuvor das Maschenstäbchen daneben hinunterlaufen lassen oder dort eine leere Nadel lassen"
    ),
    "bed/drop-through-join": (
        "das Maschenstäbchen von Nadel {needle} geht {found} Reihen tiefer mit einem anderen zusammen oder von ihm ab; es kann "
        "nicht {rows} Reihen hinunterlaufen"
    ),
    "bed/drop-too-deep": (
        "das Maschenstäbchen von Nadel {needle} ist {found} Reihen hoch; es kann nicht {rows} Reihen hinunterlaufen"
    ),
    "bed/edge-lies-otherwise": (
        "wenn die {facing:term}e Maschenseite zu sehen ist, hängt `{edge}` von Teil `{piece}` mit dem {at_left:term}en Ende links, "
        "nicht mit dem {left_end:term}en"
    ),
    "bed/edge-named-twice/edge": "es gibt schon eine Kante `{edge}`",
    "bed/edge-named-twice/end": "das Teil hat schon ein Ende, also kommen keine weiteren Maschen dazu",
    "bed/edge-named-twice/on-waste": "auf Hilfsgarn liegen schon Maschen, die `{edge}` heißen",
    "bed/edge-sides-differ": "die Kante `{edge}` hat links {left} und rechts {right} Reihen",
    "bed/edge-taken/hung": "{edge} von Teil `{piece}` ist schon aufgefasst",
    "bed/edge-taken/joined": "`{edge}` von Teil `{piece}` ist schon verbunden",
    "bed/edge-taken/own-start": "die erste Reihe dieses Abschnitts ist schon eingehängt",
    "bed/edge-unknown/to-hang": "Teil `{piece}` hat keine Kante {edge}; es hat {known:and}",
    "bed/edge-unknown/to-join": "Teil `{piece}` hat keine Kante `{edge}` zum Verbinden; es hat {known:and}",
    "bed/edge-where": (
        "`{where}` ist kein Ort für die Kante `{edge}`; es gibt außen (`outer`), innen (`inner`), links (`left`) und rechts "
        "(`right`)"
    ),
    "bed/edge-without-rows/at-either-side": (
        "keine Reihe von RZ {after} bis RZ {to} reicht auf einer der Seiten bis an die Kante, die `{edge}` heißen soll"
    ),
    "bed/edge-without-rows/none": "die Kante `{edge}` von RZ {after} bis RZ {to} hat keine Reihen",
    "bed/edge-without-rows/on-side": (
        "keine Reihe von RZ {after} bis RZ {to} reicht {side:term}s bis an die Kante, die `{edge}` heißen soll"
    ),
    "bed/edges-do-not-meet": "{one} und {other} hängen nebeneinander, und nichts verbindet sie dort",
    "bed/feet-open": ("Teil `{piece}` beginnt auf Hilfsgarn, und die {feet} Maschenfüße seiner ersten Reihe fasst nichts auf"),
    "bed/fill-over-loop": "Nadel {needle} trägt schon eine Masche; {purpose} muss sie leer sein",
    "bed/fill-too-far": "ein Querfaden reicht nur zur Nachbarnadel, nicht von {source} zu {target}",
    "bed/float-at-edge": (
        "Nadel {needle} liegt außerhalb der Reihe von {first} bis {last}: ein Spannfaden braucht an beiden Enden eine Masche der "
        "Reihe"
    ),
    "bed/fold-without-rows": "unter den Maschen auf den Nadeln ist keine erste Reihe, die sich hochklappen und einhängen lässt",
    "bed/follows-from-earlier": "Teil `{piece}` hat schon einen Fehler",
    "bed/gather-empty": "Nadel {needle} trägt keine Masche {purpose}",
    "bed/gather-not-all": (
        "{first} bis {last} werden zusammengezogen, aber auf dem Nadelbett {held:?sind noch {stitches} Maschen in "
        "Haltestellung|liegen noch {stitches} Maschen}, von {one} bis {other}"
    ),
    "bed/gather-yarn-unbroken": "Garn `{yarn}` ist nicht abgeschnitten, also ist kein Fadenende da, das durch die Maschen gezogen "
    "wird",
    "bed/grafted-not-open-loops/closed": (
        "`{edge}` von Teil `{piece}` hat geschlossene Maschen, und nur offene Maschen lassen sich im Maschenstich verbinden"
    ),
    "bed/grafted-not-open-loops/row-ends": (
        "`{edge}` von Teil `{piece}` besteht aus Reihenenden, und nur offene Maschen lassen sich im Maschenstich verbinden"
    ),
    "bed/hang-feet-count": (
        "die erste Reihe hat {feet} Maschen zum Einhängen, aber {needles} Nadeln sind genannt, die je eine aufnehmen sollen"
    ),
    "bed/held-at-carriage": (
        "die Nadeln {first} bis {last} sind {side:term}s, wo der Schlitten steht; mehr als eine Nadel kommt nur gegenüber dem "
        "Schlitten in Haltestellung"
    ),
    "bed/held-edge-unwrapped": (
        "bei RZ {row} wendet das Garn neben der gehaltenen Nadel {needle}, ohne um sie gelegt zu sein; beim Weiterstricken über "
        "{beside} und {needle} bleibt ein Loch"
    ),
    "bed/held-left": "am Ende des Abschnitts sind noch {held} Nadeln in Haltestellung, von {first} bis {last}",
    "bed/hold-empty": "Nadel {needle} trägt keine Masche, die sich halten ließe",
    "bed/hung-apart": "zwischen {one} und {other} bleiben Nadeln leer",
    "bed/join-in-block": "Teile werden verbunden, wenn alle gestrickt sind, nicht während eines auf dem Nadelbett ist",
    "bed/join-not-in-line": "die Kanten {edges:/ + } folgen von der ersten an nicht aufeinander, gezählt vom {begin:term}en Ende",
    "bed/join-told/length": "eine Kante ist {long} lang, angegeben ist {stated}",
    "bed/join-told/no-length": "die Länge einer Kante ist nicht bekannt, angegeben ist {stated}",
    "bed/join-told/no-strip": "an {piece} gibt es {edging:?keinen Randabschluss {edging}|keine Enden} zum Mitnähen",
    "bed/join-told/strip": "am Ende von {piece} {edging} sind {found} Reihen, angegeben ist {rows}",
    "bed/join-told/chained": "{one} gegen {other} Maschen auf einmal ab- oder angekettet, angegeben {says_one} und {says_other}",
    "bed/join-told/rows": "{one} gegen {other} Reihen, angegeben ist {rows}",
    "bed/join-told/tail-elsewhere": "das Fadenende von {piece} hängt anderswo",
    "bed/join-told/thread": "die Naht ist {long} lang, und der Faden dafür {thread}",
    "bed/join-unequal/apart": "{one:.1f} gegen {other:.1f}; der Unterschied ist {apart}, und {easing} lassen sich einhalten",
    "bed/join-unequal/longer": (
        "{one:.1f} gegen {other:.1f}; die erste soll {wanted} länger sein, das sind {apart} Abweichung, und {easing} lassen sich "
        "einhalten"
    ),
    "bed/join-unequal/ratio": "{rows} Reihen gegen {stitches} Maschen, wo {of_rows} auf {to_stitches} treffen sollen",
    "bed/join-unequal/rows": "{one} gegen {other} Reihen",
    "bed/join-unequal/shorter": (
        "{one:.1f} gegen {other:.1f}; die erste soll {wanted} kürzer sein, das sind {apart} Abweichung, und {easing} lassen sich "
        "einhalten"
    ),
    "bed/join-unequal/stitches": "{one} gegen {other} Maschen",
    "bed/join-way/closing": "eine Kante allein wird zusammengenäht oder zusammengezogen, nicht {way:term}",
    "bed/join-way/joining": "eine Verbindung `{way}` gibt es nicht; es gibt {ways:and`}",
    "bed/ladder-runs-on": (
        "das Maschenstäbchen von Nadel {needle} ist {rows} Reihen bis zu einer Masche hinuntergelaufen und nicht hochgehäkelt: von "
        "dort läuft es weiter"
    ),
    "bed/latch-over-loop": "Nadel {needle} trägt wieder eine Masche: ihr Maschenstäbchen kann nicht zu ihr zurück",
    "bed/latch-through-join": (
        "das Maschenstäbchen von Nadel {needle} geht {found} Reihen tiefer mit einem anderen zusammen; es lässt sich nicht {rows} "
        "Reihen fallen lassen"
    ),
    "bed/latch-too-deep/run-down": (
        "das Maschenstäbchen von Nadel {needle} ist {found} Reihen hinuntergelaufen; {rows} lassen sich nicht hochhäkeln"
    ),
    "bed/latch-too-deep/wale": (
        "das Maschenstäbchen von Nadel {needle} ist {found} Reihen hoch; {rows} Reihen lassen sich nicht hochhäkeln"
    ),
    "bed/latched-above-gap": (
        "das Maschenstäbchen von Nadel {needle} fällt {rows} Reihen, und die Masche darunter ist zuvor nicht hochgehäkelt worden: "
        "ein Stück davon bliebe, wie es gestrickt ist"
    ),
    "bed/latched-already": (
        "das Maschenstäbchen von Nadel {needle} ist bis {found} Reihen tiefer hochgehäkelt; {rows} Reihen fallen gelassen verliert "
        "es, was neu gebildet ist"
    ),
    "bed/lay-in-not-held": "Nadel {needle} ist nicht in Haltestellung, also lässt sich Garn `{yarn}` dort nicht einlegen",
    "bed/lay-in-nowhere": "Garn `{yarn}` wird auf keiner Nadel eingelegt",
    "bed/lay-in-over-yarn": "das eigene Garn der Reihe liegt noch über Nadel {needle}: es zuerst abheben",
    "bed/length-too-short": (
        "{length} von Garn `{yarn}` sind zum Anschlagen zu kurz{width:?, und {first} bis {last} sind {width} breit}: nötig ist das "
        "{widths}-Fache der Breite"
    ),
    "bed/length-unused": "für einen Anschlag mit dem Garn, das schon eingefädelt ist, ist eine Länge von {length} angegeben",
    "bed/line-is-a-ring": (
        "die beiden Enden dessen, was eingehängt wird, {one} und {other}, sind schon verbunden: es liegt nicht gerade"
    ),
    "bed/link-over-loops": "Nadel {needle} trägt eine andere Masche als die eines Teils, das eben dort eingehängt ist",
    "bed/link-over-nothing": "Nadel {needle} trägt keine Masche eines anderen Teils zum Verbinden",
    "bed/link-unequal": (
        "{stitches} Maschen von {edge} von Teil `{piece}` würden über {needles} andere gehängt; verbunden wird Masche auf Masche"
    ),
    "bed/linked-face-to-back": (
        "bei `{beneath}` und `{over}` ist die {facing:term}e Maschenseite zu sehen: so verbunden liegt eines verkehrt herum"
    ),
    "bed/loop-dropped": "nichts hält die Masche, die auf Nadel {needle} bei RZ {row} gebildet ist",
    "bed/loops-left": "am Ende des Abschnitts liegen noch Maschen auf {loaded} Nadeln, von {first} bis {last}",
    "bed/moved-nowhere": "die Masche von Nadel {needle} kommt auf keine Nadel",
    "bed/needle-held": "Nadel {needle} ist in Haltestellung; sie zuerst wieder in Arbeitsstellung bringen",
    "bed/crossing-drops": (
        "der Schlitten soll an Maschen in Arbeit vorbei {to:term}, und wie, ist nicht gesagt: ohne Garn wirft er sie ab; dieses "
        "Nadelbett {bed}"
    ),
    "bed/crossing-not-there": "der Schlitten soll {way} hinüber; dieses Nadelbett {bed}",
    "bed/hem-knitted-on": "ein angehängter Anschlaglappen würde mit `{yarn}` am Teil festgestrickt: eine Reihe Trennfaden "
    "dazwischen",
    "bed/needle-missing": "Nadel {needle} fehlt im Nadelbett",
    "bed/no-such-plate": "es gibt keine Platte {plate}, nur {plates:and}",
    "bed/no-such-start/comb": "das Nadelbett hat keinen Anschlagkamm",
    "bed/no-such-start/hem": "das Nadelbett hat keinen Anschlaglappen",
    "bed/needle-on-cord": "Nadel {needle} wartet am Trennfaden; ihn zuerst herausziehen",
    "bed/needles-reversed/first-row": "die Nadeln, auf die die erste Reihe gehängt wird, werden von links nach rechts genannt",
    "bed/needles-reversed/span": "Nadeln werden von links nach rechts genannt, nicht {first} bis {last}",
    "bed/needles-reversed/yarn": "die Nadeln für Garn `{yarn}` werden von links nach rechts genannt",
    "bed/no-gauge": "ohne die Maschenproben ihrer Gestricke haben die Kanten keine Länge, die sich vergleichen lässt",
    "bed/no-loop-to-move": "Nadel {needle} trägt keine Masche zum Umhängen",
    "bed/no-loops": "keine Nadel in Arbeitsstellung trägt eine Masche, also strickt die Reihe nichts",
    "bed/no-needle-in-work": "keine Nadel ist in Arbeitsstellung, also strickt die Reihe nichts",
    "bed/no-open-feet": "Teil `{piece}` beginnt nicht auf Hilfsgarn, also sind keine Maschenfüße offen",
    "bed/no-such-copy/hung": (
        "Exemplar {copy} von Teil `{piece}` soll aufgefasst werden, das {copies:=einmal|{copies}-mal} gestrickt wird"
    ),
    "bed/no-such-copy/joined": "Exemplar {copy} von Teil `{piece}`, das {copies:=einmal|{copies}-mal} gestrickt wird",
    "bed/no-yarn/fastened": "Garn `{yarn}` ist vernäht; für {wanted} neu einfädeln",
    "bed/no-yarn/none": "für {wanted} ist kein Garn eingefädelt",
    "bed/no-yarn/to-break": "kein Garn lässt sich abschneiden: es ist keines eingefädelt",
    "bed/not-held/to-return": "Nadel {needle} ist nicht in Haltestellung, also lässt sie sich nicht zurückbringen",
    "bed/not-held/to-work": "Nadel {needle} ist nicht in Haltestellung, also liegt dort kein Garn {purpose}",
    "bed/not-in-work": "Nadel {needle} ist nicht in Arbeit; {purpose} muss sie es sein",
    "bed/not-on-cord": "Nadel {needle} wartet nicht am Trennfaden",
    "bed/not-parted": (
        "das Teil ist von RZ {after} bis RZ {to} nicht geteilt, also hat es keine inneren Kanten, die `{edge}` heißen könnten"
    ),
    "bed/nothing-below": "unter der Masche von Nadel {needle} ist keine Masche, aus der sich die leere Nadel füllen lässt",
    "bed/nothing-laid/to-work": (
        "die letzte Reihe hat {purpose} kein Garn über Nadel {needle} gelegt, oder es ist nicht mehr dort"
    ),
    "bed/nothing-laid/worked": (
        "Nadel {needle} ist seit der letzten Reihe von Hand gearbeitet oder erst nach ihr in Haltestellung gebracht worden"
    ),
    "bed/only-waste-yarn/laid-in": "Garn `{yarn}` wird wieder abgezogen; für Maschen lässt es sich nicht einlegen",
    "bed/only-waste-yarn/needle": "Nadel {needle} trägt nur Hilfsgarn, keine Masche des Teils",
    "bed/only-waste-yarn/needles": "{first} bis {last} tragen nur Hilfsgarn",
    "bed/onto-idle-needle": "die Masche von Nadel {needle} käme auf {other}, die nicht in Arbeit ist",
    "bed/parts-meet-unevenly": (
        "die Reihe ginge über zwei Hälften, von denen eine bis RZ {one} und die andere bis RZ {other} gestrickt ist"
    ),
    "bed/pick-up-over-loops": "Nadel {needle} trägt schon eine Masche; {purpose} muss sie leer sein",
    "bed/pick-up-too-many": (
        "{stitches} Maschen lassen sich aus {edge} von Teil `{piece}` nicht auffassen: es gibt {places} Stellen, und keine gibt "
        "mehr als eine her"
    ),
    "bed/picture-gap/block": (
        "das Feld in Garn `{yarn}` reicht von {first} bis {last}, müsste aber bei {wanted} beginnen, neben dem vorigen"
    ),
    "bed/picture-gap/out-of-work": (
        "zwischen den Nadeln {last} und {first} sind nicht alle in Arbeit: eine Reihe Intarsien geht über alle Nadeln"
    ),
    "bed/picture-gap/too-short": "die Felder enden bei Nadel {reached}, die Nadeln in Arbeit bei {last}",
    "bed/piece-unknown/to-hang": "ein Teil `{piece}` ist noch nicht gestrickt",
    "bed/piece-unknown/to-join": "ein Teil `{piece}` zum Verbinden gibt es nicht",
    "bed/rehang-count": (
        "die erste Reihe von Teil `{piece}` hat {feet} Maschenfüße, aber es sind {needles} Nadeln, {first} bis {last}, die je "
        "einen aufnehmen"
    ),
    "bed/rehang-over-loops": "Nadel {needle} trägt schon eine Masche; {purpose} muss sie leer sein",
    "bed/returned-under-yarn": (
        "das Garn der letzten Reihe liegt über Nadel {needle}; zurückstricken, bevor die Nadel wieder in Arbeitsstellung kommt"
    ),
    "bed/rows-ambiguous": (
        "der Reihenzähler ist über denselben Nadeln zurückgestellt worden, also sagt RZ {after} bis {to} von `{edge}` nicht, "
        "welche Reihen gemeint sind"
    ),
    "bed/rows-not-knitted": (
        "die Kante `{edge}` geht von RZ {after} bis RZ {to}, aber Reihe {row} ist {side:term}s nicht gestrickt worden"
    ),
    "bed/sew-off-away-from-tail/elsewhere": (
        "{first} bis {last} lassen sich nicht von {start:term}s her abnähen: das Fadenende von Garn `{yarn}` hängt {side:term}s, "
        "an Nadel {needle}"
    ),
    "bed/sew-off-away-from-tail/loose": (
        "{first} bis {last} lassen sich nicht von {start:term}s her abnähen: das Fadenende von Garn `{yarn}` hängt an keiner Masche"
    ),
    "bed/sew-off-empty": "Nadel {needle} trägt keine Masche {purpose}",
    "bed/sew-off-not-all": "{first} bis {last} werden abgenäht, aber das sind nicht alle Maschen in Arbeit",
    "bed/sew-off-without-tail": "es ist kein Fadenende eines abgeschnittenen Garns da, mit dem sich abnähen ließe",
    "bed/sew-off-yarn-unbroken": "Garn `{yarn}` ist nicht abgeschnitten, also ist kein Fadenende zum Abnähen da",
    "bed/side-turned": "Teil `{piece}` läge mit der anderen Seite nach außen als das, woran es schon hängt",
    "bed/spread-count": "{taken} Maschen werden abgehoben und {given} wieder eingehängt",
    "bed/spread-crowded": "{stitches} Maschen kämen auf Nadel {needle}; eine Nadel strickt höchstens {most}",
    "bed/spread-empty": "Nadel {needle} trägt keine Masche zum Abheben und Wiedereinhängen",
    "bed/spread-over-loops": "Nadel {needle} trägt schon eine Masche, also lässt sich keine auf sie hängen",
    "bed/stitch-dropped": "Nadel {needle} trägt eine Masche; außer Arbeit würde sie sie fallen lassen",
    "bed/ratio-told": ("{stitches} Maschen aus `{edge}` von Teil `{piece}` mit {places} Stellen sind nicht {per} je {every}"),
    "bed/stretch-not-there": "`{edge}` von Teil `{piece}` hat nichts von {low} bis {high}",
    "bed/stretch-of-many": "`{edge}` von Teil `{piece}` sind mehrere Kanten, und Abschnitte hat nur eine einzelne",
    "bed/tail-too-short/gathering": (
        "das Fadenende von Garn `{yarn}` ist {tail} lang, und {first} bis {last} sind {width} breit: zum Zusammenziehen ist das "
        "{widths}-Fache der Breite nötig"
    ),
    "bed/tail-too-short/negative": "ein Fadenende von {tail} von Garn `{yarn}` kann nicht bleiben",
    "bed/tail-too-short/sewing-off": (
        "das Fadenende von Garn `{yarn}` ist {tail} lang, und {first} bis {last} sind {width} breit: zum Abnähen ist das "
        "{widths}-Fache der Breite nötig"
    ),
    "bed/tool-too-narrow": (
        "{loops} Maschen von {first} bis {last} werden zusammen abgehoben, aber der breiteste Decker hat {prongs} Zinken"
    ),
    "bed/transfer-across-held": "über Nadel {needle}, die in Haltestellung ist, lassen sich keine Maschen hinweghängen",
    "bed/tuck-side-by-side": (
        "das Garn einer Reihe liegt über den Nadeln {needle} und {other} nebeneinander: daraus werden keine zwei Maschen"
    ),
    "bed/tuck-too-long": "das Garn von {rows} Reihen liegt über Nadel {needle}; ein Haken fasst das von höchstens {most}",
    "bed/waste-empty/no-loop": "Nadel {needle} trägt keine Masche {purpose}",
    "bed/waste-empty/waste-yarn": "Nadel {needle} trägt nur Hilfsgarn, keine Masche des Teils",
    "bed/waste-rows": "{rows} Reihen Hilfsgarn halten nichts",
    "bed/wrap-away-from-yarn": (
        "das Garn ist nicht neben Nadel {needle}: umgelegt wird die innerste gehaltene Nadel, über die die letzte Reihe ging"
    ),
    "bed/wrap-not-held": "Nadel {needle} ist nicht in Haltestellung, also lässt sich der Faden nicht um sie legen",
    "bed/wrapped-already": "um Nadel {needle} ist der Faden seit der letzten Reihe schon gelegt",
    "bed/yarn-at-other-side": (
        "Garn `{yarn}` hängt {hangs:term}s, die Reihe beginnt aber {start:term}s; es läge über der ganzen Reihe"
    ),
    "bed/yarn-float/from-needle": (
        "Garn `{yarn}` kommt von Nadel {needle}, und die Reihe beginnt bei Nadel {other}: es läge als Spannfaden über {over} Nadeln"
    ),
    "bed/yarn-float/out-of-work": (
        "zwischen den Nadeln {needle} und {other} läge das Garn als Spannfaden über {over} Nadeln außer Arbeit"
    ),
}

PARTS: dict[str, str] = {
    "bed/crosses/hold": "kommt leer an Nadeln vorbei, die alle ganz herausgezogen sind",
    "bed/crosses/lift": "hat einen Schlitten, der abgehoben und drüben aufgesetzt wird",
    "bed/crosses/none": "kommt nicht leer hinüber",
    "bed/crosses/slip": "hat einen Schlitten, der auf Leerlauf gestellt wird",
    "bed/crossing/hold": "an herausgezogenen Nadeln vorbei",
    "bed/crossing/lift": "abgehoben",
    "bed/crossing/slip": "auf Leerlauf gestellt",
    "bed/differs/no-side": "Seite: angegeben {stated:term}s, noch keine bekannt",
    "bed/differs/row": "Reihe: angegeben {stated}, gefunden {found}",
    "bed/differs/side": "Seite: angegeben {stated:term}s, gefunden {found:term}s",
    "bed/differs/stitches": "Maschen: angegeben {stated}, gefunden {found}",
    "bed/seam-edge": "`{piece} {edge}`",
    "bed/piece-edge": "`{edge}` von Teil `{piece}`",
    "bed/edge/centre": "`{edge}` Mitte",
    "bed/edge/left": "`{edge}` links",
    "bed/edge/right": "`{edge}` rechts",
    "bed/edge/whole": "`{edge}`",
    "bed/for/cast-off": "das Abketten",
    "bed/for/cast-on": "den Anschlag",
    "bed/for/row": "diese Reihe",
    "bed/for/wrap": "das Umlegen",
    "bed/in-block": "{block}, bei RZ {counter}: {why}",
    "bed/in-join": ("{other:?Verbinden|Schließen} von {one:/ + } {other:?mit {other:/ + }|in sich}: {why}"),
    "bed/needle/left": "L {number}",
    "bed/needle/right": "R {number}",
    "bed/to/be-cast-off": "zum Abketten",
    "bed/to/be-cast-on": "zum Anschlagen",
    "bed/to/be-chained-off": "zum Abketten in der Reihe",
    "bed/to/be-crossed": "zum Verkreuzen",
    "bed/to/be-drawn-through": "zum Durchziehen",
    "bed/to/be-filled": "zum Füllen von unten",
    "bed/to/be-gathered": "zum Zusammenziehen",
    "bed/to/be-held": "zum Halten",
    "bed/to/be-hung-back": "zum Abheben und Wiedereinhängen ihrer Masche",
    "bed/to/be-knitted-off": "zum Abstricken auf Hilfsgarn",
    "bed/to/be-latched-up": "zum Hochhäkeln",
    "bed/to/be-lifted-off": "zum Abheben",
    "bed/to/be-moved-over": "zum Hinweghängen von Maschen",
    "bed/to/be-pushed-back": "zum Zurückschieben",
    "bed/to/be-sewn-off": "zum Abnähen",
    "bed/to/pick-up": "zum Auffassen einer Masche",
    "bed/to/run-down": "zum Hinunterlaufen ihres Maschenstäbchens",
    "bed/to/take-a-foot": "zum Einhängen eines Maschenfußes",
    "bed/to/take-a-linked-stitch": "zum Einhängen einer Masche, die verbunden wird",
    "bed/to/take-a-loop": "zum Einhängen einer Masche der ersten Reihe",
    "bed/to/wait-on-cord": "zum Warten am Trennfaden",
}

PHRASES = {**REFUSALS, **PARTS}
