"""German words for what the counts have to keep to: what each rule of the solver asks for, stated and denied, and what its figures
are called. Each is a main clause, so that it can stand alone or after "denn"."""

from __future__ import annotations

CLAUSES: dict[str, tuple[str, str]] = {
    # ------------------------------------------------------------- what is wanted
    "begins-cast-off": (
        "die Kante {opening:?von `{opening}` }von Teil `{piece}` beginnt vor `{level}` mit {cm} Abketten",
        "die Kante {opening:?von `{opening}` }von Teil `{piece}` kann vor `{level}` nicht mit {cm} Abketten beginnen",
    ),
    "edge-moves": (
        "die {side:?{side:term}e }Kante von Teil `{piece}` verschiebt sich bis `{level}` um {cm}",
        "die {side:?{side:term}e }Kante von Teil `{piece}` kann sich bis `{level}` nicht um {cm} verschieben",
    ),
    "graded": (
        "die Abstufung ist wie verlangt und geht nie zurück, wo sie steigen soll: {figure}",
        "die Abstufung geht zurück, wo sie steigen soll: {figure}",
    ),
    "is-between": (
        "von `{low}` bis `{high}` von Teil `{piece}` sind es {cm}",
        "von `{low}` bis `{high}` von Teil `{piece}` können es nicht {cm} sein",
    ),
    "is-deep": ("`{part}` von Teil `{piece}` ist {cm} tief", "`{part}` von Teil `{piece}` kann nicht {cm} tief sein"),
    "is-flat-middle": (
        "`{part}` von Teil `{piece}` ist in der Mitte {cm} flach",
        "`{part}` von Teil `{piece}` kann in der Mitte nicht {cm} flach sein",
    ),
    "is-flat-parting": (
        "`{part}` von Teil `{piece}` ist beim Teilen {cm} flach",
        "`{part}` von Teil `{piece}` kann beim Teilen nicht {cm} flach sein",
    ),
    "is-from-the-centre": (
        "Teil `{piece}` liegt bei `{level}` {side:term}s {cm} von der Mitte",
        "Teil `{piece}` kann bei `{level}` {side:term}s nicht {cm} von der Mitte liegen",
    ),
    "is-held-wide": (
        "{wedge} von Teil `{piece}` ist {cm} breit",
        "{wedge} von Teil `{piece}` lässt sich {cm} breit nicht halten",
    ),
    "is-high": ("{part} von Teil `{piece}` ist {cm} hoch", "{part} von Teil `{piece}` kann nicht {cm} hoch sein"),
    "is-off-centre": (
        "`{part}` von Teil `{piece}` liegt {cm} {side:term}s der Mitte",
        "`{part}` von Teil `{piece}` kann nicht {cm} {side:term}s der Mitte liegen",
    ),
    "is-up": ("`{level}` von Teil `{piece}` liegt bei {cm}", "`{level}` von Teil `{piece}` kann nicht bei {cm} liegen"),
    "is-wide": (
        "`{part}` von Teil `{piece}` ist {place:?bei `{place}` }{cm} breit",
        "`{part}` von Teil `{piece}` kann {place:?bei `{place}` }nicht {cm} breit sein",
    ),
    "is-wide-at": (
        "Teil `{piece}` ist bei `{level}` {cm} breit",
        "Teil `{piece}` kann bei `{level}` nicht {cm} breit sein",
    ),
    "part-moves": (
        "die {side:term}e Kante von `{part}` von Teil `{piece}` verschiebt sich bis `{level}` um {cm}",
        "die {side:term}e Kante von `{part}` von Teil `{piece}` kann sich bis `{level}` nicht um {cm} verschieben",
    ),
    "rests": (
        "{wedge} von Teil `{piece}` lässt {cm} ruhen",
        "{wedge} von Teil `{piece}` lässt sich nicht halten, wenn {cm} ruhen",
    ),
    "step-moves": (
        "die {side:?{side:term}e }Kante {opening:?von `{opening}` }von Teil `{piece}` verschiebt sich in Stufe {number} bis "
        "`{level}` um {cm}",
        "die {side:?{side:term}e }Kante {opening:?von `{opening}` }von Teil `{piece}` kann sich in Stufe {number} bis `{level}` "
        "nicht um {cm} verschieben",
    ),
    "starts-wide": ("Teil `{piece}` beginnt {cm} breit", "Teil `{piece}` kann nicht {cm} breit beginnen"),
    # ------------------------------------------------------------- what joins ask for
    "joined-eased": (
        "`{one}` und `{other}` werden verbunden, wobei {easing} eingehalten werden",
        "`{one}` und `{other}` lassen sich nicht so verbinden, dass {easing} eingehalten werden",
    ),
    "joined-longer": (
        "`{one}` und `{other}` werden verbunden, das eine {longer} länger als das andere",
        "`{one}` und `{other}` lassen sich nicht verbinden, das eine {longer} länger als das andere",
    ),
    "joined-loops": (
        "`{one}` und `{other}` werden Masche auf Masche {way:term}",
        "`{one}` und `{other}` können nicht Masche auf Masche {way:term} werden",
    ),
    "joined-ratio": (
        "`{one}` und `{other}` werden {rows} {rows:=Reihe|Reihen} auf {stitches} {stitches:=Masche|Maschen} verbunden",
        "`{one}` und `{other}` lassen sich nicht {rows} {rows:=Reihe|Reihen} auf {stitches} {stitches:=Masche|Maschen} verbinden",
    ),
    "joined-rows": (
        "`{one}` und `{other}` werden Reihe für Reihe verbunden",
        "`{one}` und `{other}` lassen sich nicht Reihe für Reihe verbinden",
    ),
    "patterns-begin": (
        "die Muster von `{one}` und `{other}` beginnen in denselben Reihen",
        "die Muster von `{one}` und `{other}` können nicht in denselben Reihen beginnen",
    ),
    # ------------------------------------------------------------- what the bed and the hands ask for
    "bed-has": ("das Nadelbett hat {needles} Nadeln", "Teil `{piece}` kann nicht auf {needles} Nadeln hängen"),
    "buttonholes-apart": (
        "die {buttonholes} Knopflöcher von Teil `{piece}` liegen mindestens zwei Reihen auseinander",
        "die {buttonholes} Knopflöcher von Teil `{piece}` können nicht zwei Reihen auseinanderliegen",
    ),
    "edging-alike": (
        "`{edging}` von Teil `{piece}` beginnt und endet gleich: dazu gehören {rest:Masche|Maschen} und ein Vielfaches von {step}",
        "`{edging}` von Teil `{piece}` kann nicht gleich beginnen und enden (dazu gehören {rest:Masche|Maschen} und ein Vielfaches "
        "von {step})",
    ),
    "from-the-middle": (
        "die Kanten von Teil `{piece}` zählen von der Mitte seines Anfangs",
        "die Kanten von Teil `{piece}` können nicht von der Mitte seines Anfangs zählen",
    ),
    "groups-held": (
        "je {rows:word} Reihen von {wedge} von Teil `{piece}` halten mindestens {stitches:eine Masche|# Maschen}",
        "für je {rows:word} Reihen von {wedge} von Teil `{piece}` {stitches:kann nicht eine Masche|können nicht # Maschen} da sein",
    ),
    "held-in-and-out": (
        "{wedge} von Teil `{piece}` kommt in ebenso vielen Reihen in Haltestellung, wie er wieder in Arbeit kommt",
        "{wedge} von Teil `{piece}` kann nicht in ebenso vielen Reihen in Haltestellung kommen, wie er wieder in Arbeit kommt",
    ),
    "hung-across": (
        "die Maschen von Teil `{piece}` bei `{level}` hängen höchstens zu zweit auf einer Nadel, und höchstens jede zweite Nadel "
        "bleibt leer",
        "die Maschen von Teil `{piece}` bei `{level}` lassen sich so nicht wieder einhängen (höchstens zwei kommen auf eine Nadel, "
        "und höchstens jede zweite Nadel bleibt leer)",
    ),
    "keeps-stitches": (
        "Teil `{piece}` behält mindestens {stitches:eine Masche|# Maschen}",
        "Teil `{piece}` kann nicht an allen Höhen {stitches:eine Masche|# Maschen} behalten",
    ),
    "levels-rise": (
        "zwischen zwei Höhen von Teil `{piece}` liegen zwei Reihen oder mehr",
        "zwischen allen Höhen von Teil `{piece}` können nicht zwei Reihen oder mehr liegen",
    ),
    "lies-inside": (
        "`{slot}` von Teil `{piece}` liegt innerhalb des Teils",
        "`{slot}` von Teil `{piece}` kann nicht innerhalb des Teils liegen",
    ),
    "moves-at-most": (
        "{edge} verschiebt sich höchstens {rows:einmal in jeder Reihe|einmal in # Reihen}{stitches:? um {stitches:=eine "
        "Masche|zwei Maschen}}",
        "{edge} kann sich in so wenigen Reihen nicht so weit verschieben (höchstens {rows:einmal in jeder Reihe|einmal in # "
        "Reihen}{stitches:? um {stitches:=eine Masche|zwei Maschen}})",
    ),
    "moves-at-rate": (
        "{edge} verschiebt sich {rows:in jeder Reihe|alle # Reihen} um {stitches:eine Masche|# Maschen}, mindestens einmal",
        "{edge} kann sich nicht {rows:in jeder Reihe|alle # Reihen} um {stitches:eine Masche|# Maschen} verschieben (die Reihen "
        "unter `{level}` und die Breite dort lassen es nicht zu)",
    ),
    "moves-one-way": (
        "{edge} verschiebt sich in eine Richtung{steps:? in gleichen Stufen}",
        "{edge} kann sich nicht in eine Richtung{steps:? in gleichen Stufen} verschieben",
    ),
    "odd-number": (
        "Teil `{piece}` hat eine ungerade Zahl von Maschen",
        "Teil `{piece}` kann keine ungerade Zahl von Maschen haben",
    ),
    "opening-formed": (
        "`{opening}` von Teil `{piece}` beginnt über dem Anfang und endet über der Teilung",
        "`{opening}` von Teil `{piece}` lässt sich nicht bilden",
    ),
    "steps-have-stitches": (
        "{edge} verschiebt sich in jeder Stufe mindestens um eine Masche",
        "{edge} hat nicht für jede Stufe eine Masche",
    ),
    "shaping-takes": (
        "Formen {inset} Maschen vom Rand braucht auf jeder Seite {stitches} Maschen",
        "Teil `{piece}` lässt sich nicht {inset} Maschen vom Rand formen",
    ),
    "stays-in-work": (
        "neben {wedges:and} von Teil `{piece}` bleiben einige Maschen in Arbeit",
        "neben {wedges:and} von Teil `{piece}` können keine Maschen in Arbeit bleiben",
    ),
    "stitches-beside": (
        "auf jeder Seite von `{opening}` von Teil `{piece}` {stitches:bleibt mindestens 1 Masche|bleiben mindestens # Maschen}",
        "auf jeder Seite von `{opening}` von Teil `{piece}` können keine Maschen bleiben",
    ),
    "stitches-between": (
        "zwischen `{one}` und `{other}` von Teil `{piece}` {stitches:bleibt mindestens 1 Masche|bleiben mindestens # Maschen}",
        "zwischen `{one}` und `{other}` von Teil `{piece}` können keine Maschen bleiben",
    ),
    "openings-in-turn": (
        "`{one}` und `{other}` von Teil `{piece}` beginnen und enden in der Reihenfolge ihrer Höhen",
        "`{one}` und `{other}` von Teil `{piece}` können nicht in der Reihenfolge ihrer Höhen beginnen und enden",
    ),
    "as-wide-as-edges": (
        "der Anfang von Teil `{piece}` hat so viele Maschen, wie entlang `{edges}` aufgefasst werden",
        "der Anfang von Teil `{piece}` kann nicht so viele Maschen haben, wie entlang `{edges}` aufgefasst werden",
    ),
    "place-for-each-stitch": (
        "jede Masche des Anfangs von Teil `{piece}` hat eine Stelle entlang `{edges}`",
        "die Maschen des Anfangs von Teil `{piece}` können nicht jede eine Stelle entlang `{edges}` haben",
    ),
    "whole-repeats": (
        "Teil `{piece}` ist bei `{level}` {rest:Masche|Maschen} und ganze Rapporte von {repeat} breit: `{fabric}` wird in ganzen "
        "Rapporten gestrickt",
        "Teil `{piece}` kann bei `{level}` nicht {rest:Masche|Maschen} und ganze Rapporte von {repeat} breit sein (`{fabric}` wird "
        "in ganzen Rapporten gestrickt)",
    ),
    "whole-rows-between": (
        "zwischen dem Ende von `{lower}` und der Teilung für `{upper}` von Teil `{piece}` liegen zwei Reihen oder mehr",
        "zwischen dem Ende von `{lower}` und der Teilung für `{upper}` von Teil `{piece}` können nicht zwei Reihen oder mehr "
        "liegen",
    ),
}

FIGURES: dict[str, str] = {
    "begun-cast-off": "Abketten {opening:?von `{opening}` }von Teil `{piece}` vor `{level}`",
    "edge-at": "{side:term}e Kante von Teil `{piece}` bei `{level}`",
    "edge-move": "Verschiebung der {side:?{side:term}en }Kante von Teil `{piece}` bis `{level}`",
    "flat-part": "flaches Stück von `{part}` von Teil `{piece}`{place:? bei `{place}`}",
    "height": "Lage von `{level}` von Teil `{piece}`",
    "held-rest": "ruhender Rest von {wedge} von Teil `{piece}` an {both:?beiden Kanten|der Kante `{edge} edge`} ab `{level}`",
    "held-width": "Breite von {wedge} von Teil `{piece}` an {both:?beiden Kanten|der Kante `{edge} edge`} ab `{level}`",
    "part-depth": "Tiefe von `{part}` von Teil `{piece}`",
    "part-move": "Verschiebung der {side:term}en Kante von `{part}` von Teil `{piece}` bis `{level}`",
    "part-place": "Lage von `{part}` von Teil `{piece}`",
    "part-width": "Breite von `{part}` von Teil `{piece}`{place:? bei `{place}`}",
    "rows-between": "Reihen von `{low}` bis `{high}` von Teil `{piece}`",
    "rows-held": "Reihen von {wedge} von Teil `{piece}`",
    "start": "Anfang von Teil `{piece}`",
    "step-move": "Stufe {number} der {side:?{side:term}en }Kante {opening:?von `{opening}` }von Teil `{piece}` bis `{level}`",
    "width-of-the": "Breite von {part} von Teil `{piece}`",
    "width-wanted": "Breite von Teil `{piece}` bei `{level}`",
}
"""What a message calls a wanted number."""

EDGES: dict[str, str] = {
    "outer-edge": "die Kante von Teil `{piece}`",
    "edge-of-opening": "die Kante von `{opening}` von Teil `{piece}`",
    "edge-to": "{edge} bis `{level}`",
}
