"""German words for patterns that do not come out on the counted stitches, and for too little or too much knitting."""

from __future__ import annotations

from walewright.report.wording import Wording

_JOINED = {"joined-here": "hier verbunden"}
_NO_MATCHING = {"mend": "ohne `matching` zusammennähen"}
_AT_A_TIME = {
    "sizes-at-a-time": "bis zu {able} der {sizes} Größen auf einmal bauen, jede mit `--size` genannt",
    "look-at-units": "auf die Einheiten achten, und darauf, wie viele Teile es sind",
}
_OF_THEM = {"of-them": "davon {of_piece:,}"}

WORDINGS: dict[str, Wording] = {
    "cannot-match/begins-elsewhere": Wording(
        "`{one}` und `{other}` lassen sich im Muster nicht abstimmen: `{fabric}` beginnt bei `{here}` von Teil `{piece}` und bei "
        "`{there}` von Teil `{other_piece}`, und die liegen verschieden weit von den Anfängen dieser Kanten",
        labels=_JOINED,
        helps={"mend": "es in beiden Teilen in gleicher Höhe beginnen lassen"},
    ),
    "cannot-match/borders": Wording(
        "`{one}` und `{other}` lassen sich im Muster nicht abstimmen: die Strickschrift von `{fabric}` hat Ränder, die "
        "nebeneinander lägen",
        labels=_JOINED,
        helps={"mend": "die Ränder aus der Strickschrift weglassen"},
    ),
    "cannot-match/eased": Wording(
        "`{one}` und `{other}` lassen sich im Muster nicht abstimmen: was eingehalten wird, verschiebt die Reihen gegeneinander",
        labels=_JOINED,
        helps={"mend": "das Einhalten weglassen: dann bekommen beide Kanten gleich viele Reihen"},
    ),
    "cannot-match/no-pattern": Wording(
        "`{one}` und `{other}` lassen sich im Muster nicht abstimmen: keine der Kanten ist in einem Gestrick mit Strickschrift "
        "oder in Streifen",
        labels=_JOINED,
        helps=_NO_MATCHING,
    ),
    "cannot-match/no-repeat": Wording(
        "`{one}` und `{other}` lassen sich im Muster nicht abstimmen: die Strickschrift von `{fabric}` hat keinen Rapport",
        labels=_JOINED,
        helps={"mend": "der Strickschrift einen Rapport geben"},
    ),
    "cannot-match/not-along-rows": Wording(
        "`{one}` und `{other}` lassen sich im Muster nicht abstimmen: Reihe für Reihe geht das nur bei Kanten entlang Reihen",
        labels=_JOINED,
        helps=_NO_MATCHING,
    ),
    "cannot-match/other-fabrics": Wording(
        "`{one}` und `{other}` lassen sich im Muster nicht abstimmen: entlang `{one}` liegt {here:and}, entlang `{other}` "
        "{there:and}",
        labels=_JOINED,
        helps={"mend": "beide in denselben Gestricken in derselben Folge stricken"},
    ),
    "cannot-match/repeat-cut": Wording(
        "`{one}` und `{other}` lassen sich im Muster nicht abstimmen: `{fabric}` ist `{fit}`: an jeder Kante ist ein Rapport "
        "angeschnitten",
        labels=_JOINED,
        helps={"mend": "`{fabric}` in ganzen Rapporten stricken"},
    ),
    "cannot-match/rows-apart": Wording(
        "`{one}` und `{other}` lassen sich im Muster nicht abstimmen: ihre Reihen treffen nicht aufeinander",
        labels=_JOINED,
        helps={"mend": "beiden Teilen dieselben Höhen geben, wo Gestricke und Kanten beginnen"},
    ),
    "rate-not-kept/where-it-parts": Wording(
        "die Kante von Teil `{piece}` bis `{level}` kann sich nicht alle {rows} Reihen verschieben: einmal fiele das in die Reihe, "
        "in der das Teil sich teilt oder wieder zusammengeht, und dort lassen sich nicht beide Ränder verschieben",
        labels={"rate": "alle {rows} Reihen"},
        notes={"counter": "{size}: RZ {row}"},
        helps={
            "write-rate": "`every {rows} rows` schreiben",
            "end-at-the-level": "die Kante zu einer Höhe in dieser Reihe führen, und von dort in einer eigenen Zeile weiter",
        },
    ),
    "repeats-on-a-slope/edge-on-its-way": Wording(
        "ganze Rapporte von `{fabric}` beginnen bei `{level}` von Teil `{piece}`, wo dessen Kante gerade unterwegs ist",
        labels={"begins-here": "beginnt hier", "level": "`{level}`"},
        notes={"width-follows": "die Breite dort folgt aus der Schräge und lässt sich nicht nach den Rapporten wählen"},
        helps={
            "two-steps": "die Kanten in zwei Schritten führen, bis `{level}` und von dort weiter (`edges ... at {level}`)",
            "or-centred": "oder `{fabric}` mit `centred` in die Mitte setzen",
        },
    ),
    "repeats-on-a-slope/no-one-width": Wording(
        "ganze Rapporte von `{fabric}` beginnen bei `{level}` von Teil `{piece}`, wo es nicht eine feste Breite gibt",
        labels={"begins-here": "beginnt hier", "level": "`{level}`"},
        helps={
            "another-level": "`{fabric}` an einer Höhe darüber oder darunter beginnen lassen",
            "or-centred": "oder `{fabric}` mit `centred` in die Mitte setzen",
        },
    ),
    "steps-turn-back": Wording(
        "die Stufen bis `{to_level}` gehen nicht alle in eine Richtung",
        labels={"other-way": "geht in eine andere Richtung, oder nirgendwohin", "first": "die erste geht so"},
        helps={
            "one-way": "jede Stufe in dieselbe Richtung gehen lassen, oder die Kante dort, wo sie umkehrt, zu einer eigenen Höhe "
            "führen"
        },
    ),
    "too-much-knitting/heights-in-all": Wording(
        "für alle Größen zusammen sind {amount:,} Höhen zu bestimmen, höchstens {most:,} sind möglich",
        labels=_OF_THEM,
        notes={"level-is-a-height": "eine Höhe zählt in jeder Größe einmal"},
        helps=_AT_A_TIME,
    ),
    "too-much-knitting/rows": Wording(
        "Teil `{piece}` hat {rows:,} Reihen, höchstens {most:,} sind möglich",
        labels={"top": "`{level}` ist sein oberes Ende", "piece": "dieses Teil"},
        notes={"rows": "{size}: {rows:,} Reihen"},
        helps={
            "look-at-rows": "auf die Einheit achten, auf die Reihen der Maschenprobe, und darauf, wie oft Reihen wiederholt werden",
        },
    ),
    "too-much-knitting/rows-in-all": Wording(
        "alle Größen zusammen haben {amount:,} Reihen, höchstens {most:,} sind möglich",
        labels=_OF_THEM,
        helps=_AT_A_TIME,
    ),
    "too-much-knitting/stitches-in-all": Wording(
        "für alle Größen zusammen sind {amount:,} Maschen zu berechnen, höchstens {most:,} sind möglich",
        labels=_OF_THEM,
        notes={
            "stitches-count": "eine schlichte Masche zählt einfach, eine {weights}, eine aus einer Strickschrift mit eigenen "
            "Garnen {in_colours}",
        },
        helps=_AT_A_TIME,
    ),
    "too-small/rows": Wording(
        "Teil `{piece}` hat {rows:.2g} {rows:=Reihe|Reihen}, und weniger als {fewest} sind kein gestricktes Teil",
        labels={"top": "`{level}` ist sein oberes Ende", "piece": "dieses Teil"},
        notes={"high": "{size}: {height:.3g} sind {rows:.2g} {rows:=Reihe|Reihen}"},
        helps={"look-at-height": "auf die Einheit achten, und darauf, woraus die Höhe berechnet wird"},
    ),
    "too-small/stitches": Wording(
        "Teil `{piece}` ist {stitches:.2g} {stitches:=Masche|Maschen} breit, und weniger als {fewest} sind kein Teil",
        labels={"widest": "breiter wird es nicht"},
        notes={"at-the-widest": "{size}: {stitches:.2g} {stitches:=Masche|Maschen} an der breitesten Stelle"},
        helps={"look-at-width": "auf die Einheit achten; eine Kordel ist kein Teil und wird mit `cord` genannt"},
    ),
}
