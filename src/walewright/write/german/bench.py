"""The German of a bench copy: its lines, and the single moves that stand in them."""

from __future__ import annotations

BENCH = {
    "bench/rows": "{rows} {rows|row} bis {RC} {row}, {carriage}: {steps} {counts}.",
    "bench/counter": "{RC} {row}, {carriage}: {steps} {counts}.",
    "bench/uncounted": "{carriage}: {steps} {counts}.",
    "bench/first": "Zuerst: {steps} {counts}.",
    "bench/step": "{step}.",
    "bench/counts": "{in_work} in Arbeit, {held} gehalten, {waiting} wartend",
    "plain_rows": "diese Reihen stricken",
    "of_chart": "vor der Reihe {row} der Strickschrift „{chart}“",
    "of_chart/itself": "die Reihe {row} der Strickschrift „{chart}“",
    "fabric_begins": "„{fabric}“ beginnt mit der nächsten Reihe, nach der Strickschrift „{chart}“{@over_needles}",
    "motif_begins": "die Strickschrift „{chart}“ beginnt mit der nächsten Reihe{@over_needles}",
    "chart_ends": "die Strickschrift „{chart}“ endet hier{@over_needles}",
    "over_needles": ", auf den Nadeln {first:needle} bis {last:needle}",
    "stripes_begin": "„{fabric}“ beginnt mit der nächsten Reihe, in Streifen",
    "stripes_end": "„{fabric}“ endet hier",
    "take_up": "das Ende von {yarn} aufnehmen, das an dieser Seite hängt, oder ein neues, Maschenweite {tension}",
    "take_up/plate": "das Ende von {yarn} aufnehmen, das an dieser Seite hängt, oder ein neues, Platte {tension}",
    "hold_needles": "in Haltestellung bringen: {@listed}",
    "return_needles": "wieder in Arbeitsstellung bringen: {@listed}",
    "float_past": "den Faden abheben und wieder in Arbeitsstellung bringen: {@listed}",
    "draw_long_on": "den Faden von Hand auf die doppelte Länge einer {ST} durchziehen und wieder in Arbeitsstellung bringen:"
    " {@listed}",
    "knit_needles": "den Faden von {@listed} abheben; diese von Hand mit {yarn} stricken und wieder in Arbeitsstellung bringen",
    "lay_colours": "einlegen: {@laid}{main} in alle anderen Haken; benachbarte Fäden verkreuzen, wo sie sich treffen, und den"
    " Schlitten ohne Garn hinüberführen",
    "lay_colours/one": "einlegen: {main} in alle Haken, und den Schlitten ohne Garn hinüberführen",
    "laid": "{yarn} in die Haken von {listed}; ",
    "move_stitches": "eine Nadel nach {side} umhängen: {@listed}",
    "cross_stitches": "verkreuzen: {@crossed}; zuerst die {side} {half} einhängen",
    "crossed": "{left} mit {right}",
    "drop_rows": "{rows} {rows|row} tief fallen lassen: {@listed}",
    "latch_columns": "auf der anderen Seite {rows} {rows|row} hochhäkeln: {@listed}",
    "latch_on": "auf der anderen Seite die {rows} {rows|row} seit dem letzten Hochhäkeln hochhäkeln: {@listed}",
    "set_to_hold": "den Schlitten auf Halten stellen",
    "set_to_knit": "den Schlitten auf Stricken aller Nadeln stellen",
    "hang_first_row": "{facing}, die {stitches} {stitches|loop} der ersten Reihe von {piece} auf diese Nadeln einhängen, die"
    " {between} Bögen zwischen ihren {STS} und die äußerste am Rand, und den Trennfaden herausziehen",
    "listed/needle": "{first}",
    "listed/run": "{first} bis {last}",
    "listed/every": "jede {every} Nadel von {first} bis {last}",
    "listed/groups": "{count} von je {every} Nadeln von {first} bis {last}",
}
