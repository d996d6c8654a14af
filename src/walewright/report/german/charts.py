"""German words for charts, panels and motifs."""

from __future__ import annotations

from walewright.report.wording import Wording

_TOO_FEW_LABELS = {
    "edge": "{edge:Randmasche|Randmaschen}",
    "no-edge": "keine Randmaschen",
    "fashioned": "`fashioned {inset} in`",
    "at-last-stitch": "an der letzten Masche geformt",
    "symbol-is": "`{symbol}` bedeutet `{kind}`",
    "symbol-knit-in": "`{symbol}` wird in {yarn} gestrickt",
}
_TOO_FEW_NOTES = {
    "end-needle": "die Endnadel einer Reihe muss stricken",
    "own-yarn": "das Garn des Gestricks muss bis ans Ende einer Reihe gehen, sonst läge es als Spannfaden neben dem Rand",
    "moved-stitches": "die Maschen, die beim Formen umgehängt werden, und die, auf die sie kommen, liegen außerhalb der "
    "Strickschrift",
}
_TOO_FEW_HELPS = {"write": "hinter die Maschenweite `{needed:edge stitch|edge stitches}` schreiben"}
_IN_OWN_YARN = {"in": "in `{yarn}`", "symbol": "`{symbol}`"}
_KEEP_YARN = {"knit": "dieses Zeichen `knit` bedeuten lassen: diese Maschen behalten das Garn des Gestricks"}
_SLIPPED = {"too-long": "zu lange abgehoben", "from-here": "von hier an abgehoben"}
_PULLS = {"pulls": "eine Masche, die über mehr als {most} Reihen abgehoben wird, zieht das Gestrick zusammen (allgemein üblich)"}
_KNIT_BEFORE = {
    "knit-before": "sie nach höchstens {most} Reihen stricken: darüber eine Reihe zeichnen, die dort strickt",
}
_HELD = {"too-long": "zu lange in Haltestellung", "from-here": "von hier an in Haltestellung"}
_KNIT_HELD = {"knit-before": "sie nach höchstens {most} Reihen stricken; 2 sind üblich"}

WORDINGS: dict[str, Wording] = {
    "chart-begins-open": Wording(
        "Reihe 1, Spalte {column} von Strickschrift `{chart}`, mit der Teil `{piece}` beginnt: davor tragen die Nadeln Hilfsgarn, "
        "keine Masche des Teils",
        labels={"begins": "beginnt mit dem Teil"},
        notes={
            "plain": "die erste Reihe auf Hilfsgarn wird schlicht gestrickt, damit sie frei hängt und wieder eingehängt oder "
            "verbunden werden kann"
        },
        helps={"draw-knit": "darunter eine Reihe `knit` zeichnen oder die Strickschrift an einer Höhe über dem Anfang beginnen"},
    ),
    "chart-empty": Wording(
        "Strickschrift `{chart}` hat keine Reihe",
        labels={"nothing": "nichts gezeichnet"},
        helps={"draw": "ihre Reihen zwischen Strichen zeichnen, `| . . |`, die zuerst gestrickte als letzte"},
    ),
    "chart-in-own-yarn/fabric": Wording(
        "`{symbol}` von Strickschrift `{chart}` wird in `{yarn}` gestrickt, und das ist schon das Garn des Gestricks",
        labels=_IN_OWN_YARN,
        helps=_KEEP_YARN,
    ),
    "chart-in-own-yarn/motif": Wording(
        "`{symbol}` von Strickschrift `{chart}` wird in `{yarn}` gestrickt, und das ist das Garn um das Motiv herum",
        labels=_IN_OWN_YARN,
        helps=_KEEP_YARN,
    ),
    "chart-in-two-ways": Wording(
        "Strickschrift `{chart}` gehört zu einem Gestrick und zu einem Motiv: das eine wiederholt sie überall, das andere arbeitet "
        "sie einmal",
        labels={"chart": "eine Strickschrift", "fabric": "in einem Gestrick wiederholt", "motif": "einmal als Motiv gearbeitet"},
        helps={"own-chart": "für das Motiv eine eigene Strickschrift zeichnen"},
    ),
    "chart-key-unused": Wording(
        "`{symbol}` steht in der Zeichenerklärung von Strickschrift `{chart}`, aber in keiner ihrer Reihen",
        labels={"not-drawn": "nicht gezeichnet"},
        helps={"leave-out": "es weglassen"},
    ),
    "chart-ragged": Wording(
        "Reihe {row} von Strickschrift `{chart}` hat {cells} Kästchen, Reihe {model} hat {wide}",
        labels={
            "too-many": "von hier an {difference} Kästchen zu viel",
            "too-few": "{difference} Kästchen zu wenig",
            "model": "{wide} Kästchen",
        },
        helps={"draw-alike": "jede Reihe mit gleich vielen Zeichen zeichnen"},
    ),
    "chart-repeat-too-wide/after": Wording(
        "der Rapport von Strickschrift `{chart}` ist {stitches} Maschen breit, mit {after} links davor, und ihre Reihen haben "
        "{cells} Kästchen",
        labels={"columns": "{columns} Spalten", "cells": "{cells} Kästchen"},
        helps={"fewer": "höchstens {most} Maschen schreiben oder die Reihen breiter zeichnen"},
    ),
    "chart-repeat-too-wide/alone": Wording(
        "der Rapport von Strickschrift `{chart}` ist {stitches} Maschen breit, und ihre Reihen haben {cells} Kästchen",
        labels={"columns": "{columns} Spalten", "cells": "{cells} Kästchen"},
        helps={"fewer": "höchstens {most} Maschen schreiben oder die Reihen breiter zeichnen"},
    ),
    "chart-unknown-symbol": Wording(
        "Reihe {row}, Spalte {column} von Strickschrift `{chart}`: keine Zeichenerklärung sagt, was `{symbol}` bedeutet",
        labels={"no-key": "nicht in der Zeichenerklärung"},
        notes={
            "symbols": "Zeichen in der Zeichenerklärung: {symbols:/ }",
            "no-key": "die Strickschrift hat keine Zeichenerklärung",
        },
        helps={"add": "eine Zeile dafür ergänzen, etwa `key {symbol} knit`"},
    ),
    "cross-beyond-tools": Wording(
        "{cell}: eine Verkreuzung von {over} über {over} braucht zwei Decker mit {over} Zinken",
        labels={"over": "{over} über {over}", "meant": "hier gemeint"},
        notes={"largest": "der größte vorhandene Decker hat {prongs} Zinken"},
        helps={"cross-fewer": "höchstens {prongs} über {prongs} verkreuzen"},
    ),
    "cross-cut": Wording(
        "{cell}: eine Verkreuzung von {over} über {over} nimmt {needles} Nadeln nebeneinander, und hier sind {here} gezeichnet",
        labels={"part": "Teil einer Verkreuzung"},
        helps={"draw-all": "für jede Verkreuzung {needles} Kästchen nebeneinander zeichnen"},
    ),
    "cross-too-soon": Wording(
        "{cell}: dieselben Nadeln werden {rows:Reihe|Reihen} nach Reihe {row} schon wieder verkreuzt",
        labels={"again": "wieder verkreuzt", "before": "zuvor verkreuzt"},
        notes={"usual": "{over} über {over} alle {usual} Reihen ist allgemein üblich; in kürzerem Abstand wird das Gestrick steif"},
        helps={"later": "sie nach {usual} oder mehr Reihen wieder verkreuzen"},
    ),
    "cross-uneven": Wording(
        "`{symbol}` verkreuzt {over} über {under}",
        labels={"cross": "diese Verkreuzung"},
        notes={"alike": "zwei Gruppen von gleich vielen Maschen werden vertauscht"},
        helps={"write": "auf beiden Seiten von `over` gleich viele schreiben, 1 bis {most}"},
    ),
    "cross-without-slack": Wording(
        "{cell}: eine Verkreuzung von {over} über {over} hat unmittelbar daneben keine Linksrippe, die {needed} Reihen unter die "
        "Verkreuzung reicht",
        labels={"tight": "zu straff gezogen"},
        notes={
            "dropped": "eine solche Linksrippe wird vor dem Verkreuzen fallen gelassen, das gibt Luft, und danach hochgehäkelt",
            "rows-below": "unter dieser hat die Strickschrift {below} Reihen",
        },
        helps={
            "cross-higher": "in Reihe {least} oder darüber verkreuzen",
            "draw-purl": "daneben `purl` zeichnen, in ihrer Reihe und den {needed} Reihen darunter",
        },
    ),
    "edge-stitches-too-few/none": Wording(
        "Gestrick `{fabric}` von Teil `{piece}` braucht {needed:Randmasche|Randmaschen} und hat keine",
        labels=_TOO_FEW_LABELS,
        notes=_TOO_FEW_NOTES,
        helps=_TOO_FEW_HELPS,
    ),
    "edge-stitches-too-few/some": Wording(
        "Gestrick `{fabric}` von Teil `{piece}` braucht {needed:Randmasche|Randmaschen} und hat {edge}",
        labels=_TOO_FEW_LABELS,
        notes=_TOO_FEW_NOTES,
        helps=_TOO_FEW_HELPS,
    ),
    "hole-unasked": Wording(
        "{cell}: die Masche wird nach {side:term}s umgehängt, und die Nadel, die dadurch leer ist, ist als `{stitch}` gezeichnet",
        labels={"empty": "leer, und nicht so gezeichnet", "loop": "hier liegt die Masche"},
        helps={"draw-hole": "sie als {hole} zeichnen oder das Umhängen weglassen"},
    ),
    "hole-without-move/gone": Wording(
        "{cell}: die eigene Masche ist nach {side:term}s gegangen und liegt dort auf keiner Nadel",
        labels={"nowhere": "die Masche liegt nirgends"},
        helps={"draw-taker": "das Kästchen {side:term}s daneben als {taker} zeichnen"},
    ),
    "hole-without-move/taken-by-none": Wording(
        "{cell}: die Nadel ist leer, und ihre Masche liegt auf keiner der Nachbarnadeln",
        labels={"nowhere": "die Masche liegt nirgends"},
        helps={"draw-taker": "ein Kästchen daneben als {takers:or} zeichnen"},
    ),
    "holes-meet/row-by-row": Wording(
        "{cell}: die Nadel war schon in der Reihe davor leer und trägt einen Querfaden, aber noch keine Masche zum Umhängen",
        labels={"twice": "zweimal nacheinander leer", "before": "in der Reihe davor leer"},
        helps={"work-row": "zwischen den beiden Löchern eine Reihe arbeiten"},
    ),
    "holes-meet/side-by-side": Wording(
        "{cell}: die linke Nachbarnadel ist in derselben Reihe leer, und Garn über zwei leeren Nadeln bildet keine Maschen",
        labels={"beside-empty": "leer neben einer leeren Nadel", "empty-too": "auch leer"},
        helps={"leave-one": "dazwischen eine Nadel mit einer Masche lassen"},
    ),
    "ladder-needs-knit/no-row-above": Wording(
        "{cell}: die Reihe über einer Leiter lässt sie fallen, und die Strickschrift hat keine weitere Reihe",
        labels={"last-row": "letzte Reihe der Leiter"},
        helps={"draw-knit": "darüber eine Reihe `knit` zeichnen"},
    ),
    "ladder-needs-knit/right-neighbour": Wording(
        "{cell}: die Masche, mit der eine Leiter beginnt, wird auf die rechte Nachbarnadel gehängt, und die muss stricken",
        labels={"begins": "hier beginnt die Leiter", "nothing-right": "rechts davon ist nichts", "not-knit": "nicht `knit`"},
        helps={
            "knit-right": "das Kästchen rechts daneben in dieser Reihe `knit` sein lassen",
            "draw-column": "rechts eine weitere Spalte zeichnen",
        },
    ),
    "ladder-needs-knit/row-above": Wording(
        "{cell}: die Leiter darunter fällt, und die Reihe über einer Leiter legt dort eine neue Masche",
        labels={"row-above": "die Reihe über einer Leiter", "ladder": "die Leiter"},
        helps={"knit": "sie `knit` sein lassen"},
    ),
    "ladder-never-dropped": Wording(
        "{cell}: jede Reihe dieser Spalte ist Leiter, also lässt keine Reihe darüber sie fallen, und sie bleibt gestrickt",
        labels={"never": "fällt nie"},
        helps={
            "drop": "über so vielen Reihen, wie die Leiter hoch sein soll ({least} oder mehr), eine Reihe zeichnen, die hier "
            "strickt: sie lässt sie fallen"
        },
    ),
    "ladder-too-short": Wording(
        "{cell}: eine Leiter von einer Reihe: ihr einziger Querfaden verschwindet zwischen den Nachbarmaschen",
        labels={"one-row": "eine Reihe"},
        helps={"draw-more": "mindestens {least} Reihen davon zeichnen, oder {hole}"},
    ),
    "missing-part/hung-first": Wording(
        "`{symbol}` sagt nicht, welche Gruppe der Verkreuzung zuerst eingehängt wird",
        labels={"cross": "diese Verkreuzung"},
        helps={"add": "`left first` oder `right first` ergänzen: diese Gruppe liegt auf der Außenseite vorn"},
    ),
    "motif-past-top": Wording(
        "{what} hat {chart_rows} Reihen, und das Teil hat über `{level}` weniger",
        labels={"above": "{rows} darüber", "rows": "{chart_rows} Reihen"},
        helps={"lower": "es tiefer beginnen"},
    ),
    "motif-with-repeat": Wording(
        "{what} wird einmal gearbeitet, und die Strickschrift hat einen Rapport",
        labels={"motif": "als Motiv", "repeat": "Rapport von {repeat} Spalten"},
        helps={"leave-out": "`repeat` aus der Strickschrift weglassen oder ein Gestrick daraus machen"},
    ),
    "move-beyond-tools": Wording(
        "{cell}: {loops} Maschen werden zusammen nach {side:term}s umgehängt",
        labels={"from-here": "{loops} Maschen von hier", "to-here": "hierher"},
        notes={"largest": "der größte vorhandene Decker hat {prongs} Zinken"},
        helps={"nearer": "das Loch näher an die Stelle legen, an der zwei Maschen zusammen liegen"},
    ),
    "move-without-hole/loop-gone": Wording(
        "{cell}: die Masche der {side:term}en Nachbarnadel liegt darauf, und diese Masche ist nach {gone:term}s gegangen",
        labels={"again": "noch einmal dieselbe Masche"},
        helps={"two-holes": "zweimal umhängen lässt zwei Löcher: für jedes eines zeichnen"},
    ),
    "move-without-hole/loop-kept": Wording(
        "{cell}: die Masche der {side:term}en Nachbarnadel liegt darauf, und diese ist mit einer Masche gezeichnet, die nicht "
        "dorthin geht",
        labels={"kept": "`{symbol}` gibt seine Masche nicht her"},
        helps={"drawn-as": "eine Masche, die nach {onward:term}s weitergeht, wird als {passing} gezeichnet"},
    ),
    "move-without-hole/no-beginning": Wording(
        "{cell}: das Umhängen beginnt hier an keiner leeren Nadel", labels={"no-hole": "kein Loch davor"}
    ),
    "move-without-hole/outside": Wording(
        "{cell}: die Masche der {side:term}en Nachbarnadel liegt darauf, und diese Nadel ist nicht in der Strickschrift",
        labels={"from-outside": "nimmt eine Masche von außerhalb"},
        helps={"draw-column": "{side:term}s eine weitere Spalte zeichnen, hier mit {hole}"},
    ),
    "not-positive/chart-repeat": Wording(
        "der Rapport von Strickschrift `{chart}` ist mindestens eine Masche breit",
        labels={"stitches": "{stitches} Maschen"},
        helps={"a-stitch": "schreiben, wie viele Spalten ein Rapport sind, 1 oder mehr"},
    ),
    "patterns-clash": Wording(
        "{one} und {other} von Teil `{piece}` lassen sich nicht in denselben Reihen arbeiten",
        labels={"one": "{one}", "other": "{other}"},
        helps={
            "plain-or-drawn": "die Strickschrift in einem schlichten Gestrick arbeiten oder die Reihen der Streifen in sie "
            "hineinzeichnen",
            "end-or-move": "das eine enden lassen, bevor das andere beginnt, oder eines neben das andere rücken",
            "end-before-picture": "das eine enden lassen, bevor das andere beginnt: {picture} legt seine Garne über alle Nadeln "
            "einer Reihe",
            "same-yarn": "für beide dasselbe andere Garn nehmen, oder das eine enden lassen, bevor das andere beginnt",
            "within": "{local} innerhalb von {whole} beginnen und enden lassen",
            "after": "{local} nach {panel} beginnen",
            "move-or-end": "eines neben das andere rücken, oder das eine enden lassen, bevor das andere beginnt",
            "plain-or-drawn-often": "für die wiederholten Reihen ein schlichtes Gestrick nehmen oder sie ebenso oft in die "
            "Strickschrift zeichnen",
            "plain": "für die wiederholten Reihen ein schlichtes Gestrick nehmen",
            "end-or-begin": "die Strickschrift vor dieser Höhe enden oder an ihr beginnen lassen",
            "elsewhere": "es in Reihen arbeiten, in denen die Strickschrift nicht ist",
            "elsewhere-or-beside": "es in Reihen arbeiten, in denen die Strickschrift nicht ist, oder neben ihr",
        },
    ),
    "picture-other-stitch": Wording(
        "{cell}: Farben in Feldern werden von Hand über alle Nadeln gelegt, und `{symbol}` bedeutet `{stitch}`",
        labels={"stitch": "`{stitch}`"},
        helps={"keep-to-knit": "bei `knit` bleiben oder die Farben als Spannfäden mitführen"},
    ),
    "repeat-parity": Wording(
        "Teil `{piece}` hat eine {odd:?ungerade|gerade} Zahl von Maschen, und ganze Rapporte von Strickschrift `{chart}` ergeben "
        "nie eine solche",
        labels={
            "number": "eine {odd:?ungerade|gerade} Zahl von Maschen",
            "repeat": "Rapport von {repeat} Maschen, {beside} daneben",
        },
        helps={
            "no-centre-stitch": "`centre stitch` beim Teil weglassen",
            "centre-stitch": "dem Teil `centre stitch` geben",
            "draw-column": "oder neben dem Rapport eine Spalte mehr oder weniger zeichnen",
        },
    ),
    "repeat-wider-than-piece": Wording(
        "ein Rapport von Strickschrift `{chart}` nimmt {needed} Maschen, und {what} von Teil `{piece}` ist schmaler",
        labels={"wide": "{stitches} breit", "takes": "{takes}"},
        helps={"widen": "mindestens {width} breit machen"},
    ),
    "row-without-main": Wording(
        "{cell}: in dieser Reihe behält keine Masche des Rapports das Garn des Gestricks",
        labels={"whole-repeat": "der ganze Rapport in anderen Garnen"},
        helps={"leave-one": "eine Masche im Garn des Gestricks lassen, oder solche Reihen als Streifen stricken"},
    ),
    "slip-too-long/for-ever": Wording(
        "{cell}: die Masche wird abgehoben und nie gestrickt", labels=_SLIPPED, notes=_PULLS, helps=_KNIT_BEFORE
    ),
    "slip-too-long/rows": Wording(
        "{cell}: die Masche wird über {rows} Reihen abgehoben", labels=_SLIPPED, notes=_PULLS, helps=_KNIT_BEFORE
    ),
    "three-colours-in-row": Wording(
        "{cell}: die Reihe hat `{one}` und `{other}` neben dem Garn des Gestricks",
        labels={"one": "`{one}`", "other": "`{other}`"},
        helps={"keep-to-one": "in einer Reihe bei einem anderen Garn bleiben, oder die Farben in Feldern legen"},
    ),
    "tuck-side-by-side": Wording(
        "{cell}: die linke Nachbarnadel ist in derselben Reihe in Haltestellung, und Henkel über zwei Nadeln lassen sich nicht "
        "abstricken",
        labels={"beside-held": "in Haltestellung neben einer gehaltenen Nadel", "held-too": "auch in Haltestellung"},
        helps={"knit-one": "eine der beiden stricken lassen"},
    ),
    "tuck-too-long/for-ever": Wording(
        "{cell}: die Nadel bleibt für immer in Haltestellung, und eine Masche mit mehr als {most} Henkeln lässt sich nicht "
        "abstricken",
        labels=_HELD,
        helps=_KNIT_HELD,
    ),
    "tuck-too-long/rows": Wording(
        "{cell}: die Nadel bleibt {rows} Reihen in Haltestellung, und eine Masche mit mehr als {most} Henkeln lässt sich nicht "
        "abstricken",
        labels=_HELD,
        helps=_KNIT_HELD,
    ),
}
