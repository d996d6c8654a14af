"""German sentences of steps: infinitives, with what they are done to before them."""

from __future__ import annotations

SETTING_UP = {
    "needles_to_work": "die Nadeln {@span} in Arbeitsstellung bringen: {stitches} {stitches|st}",
    "carriage_at": "den Schlitten ohne zu stricken nach {side} bringen",
    "carriage_at/held": "steht der Schlitten nicht {side}, ihn ohne zu stricken dorthin bringen, auf Halten gestellt",
    "carriage_at/slip": "den Schlitten ohne zu stricken nach {side} bringen, auf Gleiten gestellt",
    "carriage_at/lift": "den Schlitten ohne zu stricken nach {side} bringen, abgehoben und dort wieder aufgesetzt",
    "carriage_at/hold": "den Schlitten ohne zu stricken nach {side} bringen, an den ganz nach vorn gezogenen Nadeln vorbei, und"
    " diese wieder zurückschieben",
    "every_out_of_work": "von links gezählt jede {every:ordinal} Nadel, nur nicht die letzte, wieder außer Arbeit schieben:"
    " {stitches} {stitches|st}",
    "waste_start": "mit Hilfsgarn {way} anschlagen und {rows} {rows|row} stricken, dann 1 Reihe mit Trennfaden",
    "waste_start/hem": "den Anschlagstreifen auf die Nadeln in Arbeitsstellung hängen, 1 Reihe mit Trennfaden und {rows} {rows|row}"
    " mit Hilfsgarn stricken, dann 1 Reihe mit Trennfaden",
    "closed_start": "auf allen Nadeln in Arbeitsstellung {way} anschlagen",
    "use_yarn_step": "das Garn {yarn} einfädeln; Schlitten auf Maschenweite {tension}{@said_for}{@left_hanging}",
    "said_for": ", für „{fabric}“",
    "left_hanging": ", das Garn davor an seiner Seite hängen lassen",
    "use_yarn_step/same": "Schlitten auf Maschenweite {tension}{@said_for}, Garn wie zuvor",
    "use_yarn_step/plate": "das Garn {yarn} einfädeln; Schlitten mit Platte {tension}{@said_for}{@left_hanging}",
    "use_yarn_step/same/plate": "Schlitten mit Platte {tension}{@said_for}, Garn wie zuvor",
    "set_row_counter": "den Reihenzähler auf {rows:counter} stellen",
    "span": "{first:needle} bis {last:needle}",
    "one_needle": "{first:needle}",
}

KNITTING = {
    "knit_rows": "{rows} {rows|row} stricken",
    "knit_to": "bis {RC} {row} stricken",
    "knit_rows/listed": "{rows} {rows|row} stricken{@on_the_way}",
    "knit_to/listed": "bis {RC} {row} stricken{@on_the_way}",
    "crossing": "dabei {rows} verkreuzen",
    "crossing/said": "dabei verkreuzen, wo die Strickschrift es verlangt",
    "crossing/at": "dabei bei {RC} {rows} verkreuzen",
    "moving": "dabei {STS} {rows} umhängen",
    "moving/said": "dabei {STS} umhängen, wo die Strickschrift es verlangt",
    "moving/at": "dabei {STS} bei {RC} {rows} umhängen",
    "dropping": "dabei {rows} Leitern fallen lassen",
    "dropping/said": "dabei Leitern fallen lassen, wo die Strickschrift es verlangt",
    "dropping/at": "dabei bei {RC} {rows} Leitern fallen lassen",
    "holding": "dabei {rows} Nadeln in Haltestellung bringen",
    "holding/said": "dabei Nadeln in Haltestellung bringen, wo die Strickschrift es verlangt",
    "holding/at": "dabei bei {RC} {rows} Nadeln in Haltestellung bringen",
    "latching": "dabei {rows} hochhäkeln",
    "latching/said": "dabei bei jeder für die Rippe genannten {RC} hochhäkeln",
    "latching/at": "dabei bei {RC} {rows} hochhäkeln",
    "columns": "dabei die linken Maschenstäbchen {rows} hochhäkeln",
    "columns/at": "dabei die linken Maschenstäbchen bei {RC} {rows} hochhäkeln",
    "columns/on": "dabei die linken Maschenstäbchen auf {needles} {rows} hochhäkeln",
    "columns/on/at": "dabei die linken Maschenstäbchen auf {needles} bei {RC} {rows} hochhäkeln",
    "changing": "dabei {rows} das Garn wechseln",
    "changing/said": "dabei das Garn so wechseln, wie die Streifen weitergehen",
    "changing/at": "dabei bei {RC} {rows} das Garn wechseln",
    "again_from_row_1": "dabei {rows} wieder Reihe 1 der Strickschrift",
    "again_from_row_1/said": "dabei nach der letzten Reihe der Strickschrift wieder ihre Reihe 1",
    "again_from_row_1/at": "dabei bei {RC} {rows} wieder Reihe 1 der Strickschrift",
    "columns_up": "die wartenden linken Maschenstäbchen auf {@needles_named} hochhäkeln",
    "every": "alle {every} {every|row} von {RC} {firsts} bis {RC} {last}",
    "decrease": "{ends} {by} {by|st} abnehmen{@inset}",
    "inset": ", {inset} {inset|st} vom Rand",
    "increase_fashioned": "{ends} {1} {1|st} zunehmen{@inset}",
    "needle_out": "die {ST} von {at:needle} auf die Nadel rechts daneben umhängen und {at:needle} außer Arbeit schieben:"
    " {stitches} {stitches|st}",
    "needles_out_every": "von {first:needle} und jeder {every:ordinal} Nadel von dort bis {last:needle} die {ST} auf die Nadel"
    " rechts daneben umhängen und die Nadel außer Arbeit schieben: {stitches} {stitches|st}",
    "leave_out": "die Nadel {at:needle} wieder außer Arbeit schieben: {stitches} {stitches|st}",
    "leave_out_every": "die Nadel {first:needle} und jede {every:ordinal} von dort bis {last:needle} wieder außer Arbeit schieben:"
    " {stitches} {stitches|st}",
    "needle_back": "die Nadel {at:needle} leer wieder in Arbeitsstellung bringen: {stitches} {stitches|st}",
    "needles_back_every": "die Nadel {first:needle} und jede {every:ordinal} von dort bis {last:needle} leer wieder in"
    " Arbeitsstellung bringen: {stitches} {stitches|st}",
    "decrease_on": "{1} {1|st} auf {@lines} abnehmen, die {STS} {ends} je {prongs} zugleich nach innen umhängen",
    "decrease_outer": "{ends} {1} {1|st} abnehmen, die äußeren {stitches} {stitches|st} je {prongs} zugleich nach innen umhängen",
    "increase_beside": "{1} {1|st} neben {@lines} zunehmen, die {STS} {ends} je {prongs} zugleich nach außen umhängen",
    "increase_outer": "{ends} {1} {1|st} zunehmen, die äußeren {stitches} {stitches|st} je {prongs} zugleich nach außen umhängen",
    "lines": "{first:needle}",
    "lines/both": "jeder der Nadeln {first:needle} und {last:needle}",
    "increase_at_carriage": "auf der Schlittenseite {1} {1|st} zunehmen",
    "cast_off_at_carriage": "auf der Schlittenseite {stitches} {stitches|st} abketten",
    "cast_on_at_carriage": "auf der Schlittenseite {stitches} {stitches|st} mit Wickelanschlag anschlagen",
    "hold_at_end": "{side} {stitches} {stitches|st} in Haltestellung bringen{@carriage_set}",
    "hold_at_end/more": "{side} {stitches} {stitches|st} mehr in Haltestellung bringen{@carriage_set}",
    "hold_at_end/next": "{side} die nächsten {stitches} {stitches|st} in Haltestellung bringen{@carriage_set}",
    "wrap_held": "den Faden um die innerste {side} gehaltene Nadel legen",
    "return_held": "die {side} gehaltenen Nadeln wieder in Arbeitsstellung bringen{@carriage_set}",
    "carriage_set/to_hold": ", Schlitten auf Halten",
    "carriage_set/to_knit": ", Schlitten auf Stricken aller Nadeln",
    "carriage_set/to_knit/if_free": ", Schlitten auf Stricken aller Nadeln, wenn keine mehr gehalten wird",
    "return_some": "die innersten {stitches} {side} gehaltenen {stitches|st} wieder in Arbeitsstellung bringen",
    "repeat": "[{@repeated}]",
    "loop": "{body}: dies insgesamt {times} {times|time} arbeiten",
    "loop/whole": "{body}: dies alles insgesamt {times} {times|time} arbeiten",
    "stop": ".",
    "between": ", ",
    "and": " und ",
    "mark_edges": "{ends} einen Markierungsfaden einknoten, wo „{what}“ {@begins_or_ends}",
    "begins": "beginnt",
    "ends": "endet",
    "now": "{stitches} {stitches|st}, {counter}, {carriage}",
    "now/short": "{stitches} {stitches|st}, {carriage}",
    "now_held": "{working} {working|st} in Arbeit, {held} gehalten, {counter}, {carriage}",
    "now_held/short": "{working} {working|st} in Arbeit, {held} gehalten, {carriage}",
    "now_in_half_held": "{working} {working|st} in Arbeit, {held} gehalten, und {waiting} wartend, {counter}, {carriage}",
    "now_in_half_held/short": "{working} {working|st} in Arbeit, {held} gehalten, und {waiting} wartend, {carriage}",
    "now_in_half": "{stitches} {stitches|st}, und {waiting} wartend, {counter}, {carriage}",
    "now_in_half/short": "{stitches} {stitches|st}, und {waiting} wartend, {carriage}",
    "counter": "{RC} {row}",
    "say": "notieren: „{@text}“",
}

PARTING = {
    "spread_evenly": "die {STS} in Arbeit auf Hilfsgarn vom Nadelbett nehmen und von links wieder auf die Nadeln {@span} einhängen,"
    " {stitches} {stitches|st}: {@rounds}",
    "round": "{changed} auf jede der nächsten {times} {times|needle}",
    "round/once": "{changed} auf die nächste Nadel",
    "round/one": "*1 Masche, {changed}; ab * insgesamt {times} {times|time} arbeiten",
    "round/one-once": "1 Masche, {changed}",
    "round/singles": "*1 Masche auf jede von {singles} {singles|needle}, {changed} auf die nächste; ab * insgesamt {times}"
    " {times|time} arbeiten",
    "round/singles-once": "1 Masche auf jede von {singles} {singles|needle}, {changed} auf die nächste",
    "rest": "1 Masche auf jede der letzten {rest} {rest|needle}",
    "rest/one": "1 Masche auf die letzte Nadel",
    "rounds": "; ",
    "slot_on_waste": "{stitches} {stitches|st}, {@needles}, auf Hilfsgarn stilllegen ({edge})"
    " und auf denselben Nadeln mit Wickelanschlag neu anschlagen{@length}",
    "slot_closed": "{stitches} {stitches|st}, {@needles}, schließen, indem sie nach rechts durcheinander und auf die nächste Nadel"
    " gezogen werden; auf denselben Nadeln mit Wickelanschlag neu anschlagen{@length}",
    "length": ", mit einem eigenen Stück des Garns",
    "length/least": ", mit einem eigenen Stück des Garns von mindestens {length_cm} cm",
    "eyelet_at": "die {ST} von {needle:needle} eine Nadel nach {side} umhängen und die leere Nadel in Arbeit lassen",
    "centre_to_waste": "{@gap}, auf Hilfsgarn stilllegen ({edge})",
    "close_centre": "{@gap}, schließen, indem sie nach rechts durcheinander und auf die nächste Nadel gezogen werden",
    "gap/centre": "die mittleren {stitches} {stitches|st}, {@needles}",
    "gap/between": "die {stitches} {stitches|st} zwischen den Teilen, {@needles}",
    "cast_on_between": "zwischen den Teilen {stitches} {stitches|st} mit Wickelanschlag auf {@needles} anschlagen{@length}",
    "hold_part": "den {@which_part}, {@needles}, in Haltestellung bringen, bis er an der Reihe ist{@carriage_set}",
    "part_on_cord": "für den {@which_part}, {@needles}, von Hand Trennfaden in die Haken legen und jede Nadel darauf ganz"
    " zurückschieben; er wartet {rows} {rows|row} lang, zu lange, um ganz vorn zu warten{@carriage_set}",
    "draw_parts_cord": "für den {@which_part}, {@needles}, die Nadeln ganz nach vorn schieben und den Trennfaden herausziehen",
    "return_part": "den wartenden {@which_part}, {@needles}, wieder in Arbeitsstellung bringen{@carriage_set}",
    "which_part": "{side} Teil",
    "which_part/nth": "{nth:ordinal} Teil von links",
    "off_on_waste": "über die {STS} in Arbeit {rows} {rows|row} Hilfsgarn stricken und sie vom Nadelbett nehmen ({edge})",
    "cast_off_all": "die {STS} in Arbeit von der Schlittenseite aus abketten",
    "sew_off_all": "die {STS} in Arbeit von der Schlittenseite aus mit dem Fadenende im Rückstich abnähen",
    "gather_all": "das Fadenende durch die {STS} in Arbeit ziehen, sie vom Nadelbett nehmen und zusammenziehen",
    "break_off": "den Faden abschneiden{@tail}",
    "tail": ", dabei {tail_cm} cm hängen lassen",
}

EDGINGS = {
    "use_looser": "das Garn {yarn} einfädeln; Schlitten auf Maschenweite {tension}, {@looser} lockerer als Maschenweite {than}",
    "use_looser/next": "das Garn {yarn} einfädeln; Schlitten auf die nächste lockerere Einstellung nach Maschenweite {than}",
    "use_looser/same": "Schlitten auf Maschenweite {tension}, {@looser} lockerer als Maschenweite {than}, Garn wie zuvor",
    "use_looser/same/next": "Schlitten auf die nächste lockerere Einstellung nach Maschenweite {than}, Garn wie zuvor",
    "use_looser/plate": "das Garn {yarn} einfädeln; Schlitten mit Platte {tension}, lockerer als Platte {than}",
    "use_looser/same/plate": "Schlitten mit Platte {tension}, lockerer als Platte {than}, Garn wie zuvor",
    "looser": "{least} {least|number}",
    "looser/range": "{least} bis {most} {most|number}",
    "picot_row": "jede 2. {ST}, ab der 2. von links und ohne die letzte, eine Nadel nach rechts umhängen und die leeren Nadeln in"
    " Arbeit lassen",
    "fold_up": "das Gestrick {way} umschlagen und von links nach rechts die {loops} {loops|loop} der ersten Reihe des"
    " Kleidungsstücks einhängen, jede auf die Nadel, die sie gestrickt hat, und den Trennfaden herausziehen:"
    " {stitches} {stitches|st}",
    "fold_up/hung": "das Gestrick {way} umschlagen und von links nach rechts die {loops} {loops|loop} der ersten Reihe dieser"
    " Blende einhängen, jede auf die Nadel, die sie gestrickt hat: {stitches} {stitches|st}",
    "fold_up/row": "das Gestrick {way} umschlagen und von links nach rechts die {loops} {loops|loop} der bei {RC} {row} gestrickten"
    " Reihe einhängen, jede auf die Nadel, die sie gestrickt hat: {stitches} {stitches|st}",
    "fold_up/all": "die Nadeln außer Arbeit wieder in Arbeitsstellung bringen; das Gestrick {way} umschlagen und von links nach"
    " rechts die {loops} {loops|loop} der ersten Reihe des Kleidungsstücks einhängen, jede auf die Nadel, die sie gestrickt hat,"
    " aber wo die Nadel rechts davon leer ist, auf die leere, und den Trennfaden herausziehen: {stitches} {stitches|st}",
    "rehang_start": "{facing}, die {stitches} {stitches|loop} der ersten Reihe von {piece} auf diese Nadeln einhängen, die"
    " Randschlinge mitgezählt, und den Trennfaden herausziehen",
    "hang_to_link": "{facing}, die {stitches} {stitches|open_loop} entlang {@edge_told}, {left_end}, {@on_needles}"
    " einhängen{@over}, dann {stitches|its} Hilfsgarn herausziehen",
    "over": ", über die {STS} des anderen Teils",
    "pick_up_along": "{facing}, {stitches} {stitches|st} entlang {@edge_told}{@stretch}{@ratio}, {left_end}, {@on_needles}"
    " auffassen",
    "ratio": ", etwa {per} {per|st} auf je {every} {every|row}",
    "pick_up_along/open": "{facing}, die {stitches} {stitches|open_loop} entlang {@edge_told}{@stretch}, {left_end},"
    " {@on_needles} einhängen, dann {stitches|its} Hilfsgarn herausziehen",
    "pick_up_along/on_cord": "{facing}, die {stitches} {stitches|loop} entlang {@edge_told}, {left_end}, {@on_needles}"
    " einhängen, die Randschlinge mitgezählt, und den Trennfaden herausziehen",
    "pick_up_along/cord": "{facing}, {stitches} {stitches|st} entlang {@edge_told}, {left_end}, {@on_needles} auffassen und den"
    " Trennfaden herausziehen",
    "on_needles": "auf die Nadeln {@span}",
    "on_needles/one": "auf die Nadel {first:needle}",
    "stretch/rows": " von {RC} {low} bis {RC} {high}",
    "stretch/stitches": " von der {lowest:ordinal} bis zur {high:ordinal} {ST}, von links gezählt",
    "edge_told": "{part}{piece}{@copy} {edge}",
    "edge_told/shoulder": "der {side} Schulter von {piece}{@copy}",
    "edge_told/row": "{row} von {piece}{@copy}",
    "edge_told/upper": "der Anschlagkante über {opening} von {piece}{@copy}",
    "of_copy": " ({copy})",
    "latch_rib": "ab {left:needle} und {begin:needle} nach außen jede {every:ordinal} {ST} {rows} {rows|row} tief fallen lassen und"
    " auf der anderen Seite hochhäkeln{@middle}; die Randmaschen bleiben, wie sie sind",
    "middle": "; in der Mitte bleiben {plain_left:needle} bis {plain_right:needle} glatt",
    "latch_panel": "bei {@wales} die {STS} fallen lassen, {rows} {rows|row} tief, und auf der anderen Seite hochhäkeln; die"
    " Randmaschen bleiben, wie sie sind",
    "latch_panel/every": "von jeder {every:ordinal} {ST}, ab {left:needle} und {begin:needle} nach außen gezählt, die auf den"
    " Nadeln {@span} fallen lassen, {rows} {rows|row} tief, und auf der anderen Seite hochhäkeln; die Randmaschen bleiben,"
    " wie sie sind",
    "latch_in_stages": "von hier an jede {every:ordinal} {ST}, ab {left:needle} und {begin:needle} nach außen gezählt, auf der"
    " anderen Seite hochhäkeln{@at_rows}{@middle}; die Randmaschen bleiben, wie sie sind",
    "latch_panel_in_stages": "von hier an bei {@wales} auf der anderen Seite hochhäkeln{@at_rows}; die Randmaschen bleiben, wie sie"
    " sind",
    "latch_panel_in_stages/every": "von hier an jede {every:ordinal} {ST}, ab {left:needle} und {begin:needle} nach außen gezählt,"
    " doch nur die auf den Nadeln {@span}, auf der anderen Seite hochhäkeln{@at_rows}; die Randmaschen bleiben, wie sie sind",
    "stages/every": ", alle {every} {every|row} von {RC} {first} bis {RC} {last}",
    "stages/more": ", alle {every} {every|row} von {RC} {first} bis {RC} {last} und bei {RC} {more}",
    "stages/sizes": "({sizes}) {rows}",
    "stages/at": ", bei {RC} {rows}",
    "at_rows": "{@rows_listed}, jedes Mal hinab bis dorthin, wo zuletzt hochgehäkelt wurde{@sooner}",
    "sooner": ", höchstens bis zum {RC} davor, und früher, wo die {ST} umgehängt, abgekettet, gehalten, vom Nadelbett"
    " genommen oder mit einer weiteren behängt werden soll",
}

PATTERNS = {
    "start_chart": "ab der nächsten Reihe {@fabric_by}nach der Strickschrift „{chart}“ arbeiten, ab deren Reihe 1, {@area},"
    " {@first_column} auf Nadel {start:needle}",
    "fabric_by": "„{fabric}“ ",
    "area/whole": "auf allen {STS}{@but_ends}, jetzt auf den Nadeln {@span}",
    "but_ends": " außer {edge} an jedem Ende der Arbeit",
    "area/panel": "nur auf den Nadeln {@span}{@plain_ends}",
    "area/one": "nur auf der Nadel {first:needle}{@plain_ends}",
    "plain_ends": ", glatt auf {edge} {edge|st} an jedem Ende der Arbeit",
    "first_column": "die erste Spalte",
    "first_column/repeat": "der Anfang des Rapports",
    "stop_chart": "die Strickschrift „{chart}“ endet hier: auf ihren Nadeln ab jetzt glatt stricken",
    "stop_chart_on": "die Strickschrift „{chart}“ endet auf den Nadeln {@span}: dort ab jetzt glatt stricken",
    "start_stripes": "ab der nächsten Reihe „{fabric}“ stricken, Maschenweite {tension}, in Streifen, immer wieder vom ersten an:"
    " {@stripes}; {@carrying}",
    "start_stripes/plate": "ab der nächsten Reihe „{fabric}“ stricken, Platte {tension}, in Streifen, immer wieder vom ersten an:"
    " {@stripes}; {@carrying}",
    "stripe": "{rows} {rows|row} {yarn}",
    "carrying": "jedes Garn am Ende seines Streifens abschneiden",
    "carrying/all": "{yarns} am Rand mitführen",
    "carrying/some": "{yarns} am Rand mitführen, jedes andere am Ende seines Streifens abschneiden",
    "stop_stripes": "die Streifen „{fabric}“ beenden",
}

JOINS = {
    "edge_is": "die {where} Kanten von {RC} {from_row} bis {RC} {to_row} heißen „{@edge_called}“",
    "edge_is/one": "die {where} Kante von {RC} {from_row} bis {RC} {to_row} heißt „{@edge_called}“",
    "gap_is": "die inneren Kanten der {gap:ordinal} Lücke von links, von {RC} {from_row} bis {RC} {to_row}, heißen"
    " „{@edge_called}“",
    "join_edges": "{way}: {@seams}{@turn}{@matched}{@chained}{@eased}{@how}{@strips}{@thread}",
    "seam": "{one} mit {other}",
    "seam/own": "{one} mit dem Gegenstück {other}",
    "seam/own_row": "{one} mit {other}",
    "same_row": "derselben Reihe {half}",
    "seam/closed": "{one} mit sich selbst",
    "seam/folded": "{one} mit sich selbst, auf die Hälfte gefaltet",
    "seams/copies": "{one}: {others}",
    "seams/copy": "{copy} Teil mit {other}",
    "side": "{edges} {begin}",
    "then": ", dann ",
    "edges": "{piece} {edges}",
    "edges/copy": "{piece} ({copy}) {edges}",
    "edges/each": "{piece} (jedes Teil) {edges}",
    "edges/next": "{piece} (nächstes Teil) {edges}",
    "edges/next_one": "nächstem Teil {edges}",
    "edge": "{edge}",
    "edge_part": "{edge} {half}",
    "edge_part/row": "{edge} {half}",
    "turn/own": ", jedes mit dem seinen, {times} {times|seam}",
    "turn/next": ", jedes mit dem nächsten, {times} {times|seam}",
    "turn/round": ", jedes mit dem nächsten und das letzte mit dem ersten, {times} {times|seam}",
    "matched/ratio": ", {ratio_rows} {ratio_rows|row} auf {ratio_stitches} {ratio_stitches|st}",
    "matched/rows": ", Reihe für Reihe, {rows} {rows|row}",
    "matched/lengths": ", {one_mm:cm} cm auf {other_mm:cm} cm",
    "chained": ", die an beiden Kanten {chained} {one_chain} {STS} aufeinander",
    "chained/unlike": ", die {chained} {one_chain} {STS} auf {other_chain}",
    "eased": ", dabei bis zu {easing} einhalten",
    "eased/second": ", dabei von der Gegenkante bis zu {easing} einhalten",
    "eased/second_too": ", von der Gegenkante bis zu {easing}",
    "eased/all": "{easing:cm} cm",
    "eased/sizes": "{easing:cm} cm ({sizes})",
    "eased/by": ", dabei {beyond:cm} cm einhalten, {easing_mm:cm} cm mehr oder weniger",
    "eased/pleats": ", dabei {beyond:cm} cm in die Falten legen, {easing_mm:cm} cm mehr oder weniger",
    "eased/stretching": ", dabei um {beyond:cm} cm dehnen, {easing_mm:cm} cm mehr oder weniger",
    "how/open": ", Masche auf Masche, im Maschenstich oder auf dem Nadelbett, beide auf denselben Nadeln, 1 Reihe um 2 bis 3 Zahlen"
    " lockerer gestrickt und abgekettet",
    "how/open/plate": ", Masche auf Masche, im Maschenstich oder auf dem Nadelbett, beide auf denselben Nadeln, 1 Reihe eine Platte"
    " lockerer gestrickt und abgekettet",
    "how/no_tail": ", Masche auf Masche mit einem neuen Faden, viermal so lang wie die Reihe",
    "how/grafted": ", Masche auf Masche mit dem langen Fadenende",
    "how/at_tail": ", Masche auf Masche mit dem langen Fadenende, das dort hängt",
    "how/first_row": ", dabei die Randschlinge der ersten Reihe mitzählen und ihren Trennfaden nach und nach herausziehen",
    "strips": ", und weiter an den Enden von {strips}",
    "strips/beyond": ", zusammen {beyond:cm} cm, {easing_mm:cm} cm mehr oder weniger",
    "strip": "{rows} {rows|row} von {name}",
    "thread/tail": ", mit dem Fadenende",
    "thread/tails": ", mit dem Fadenende von {tails}",
    "tail_of": "{name}",
    "thread/new": ", mit einem neuen Faden von {thread_cm} cm",
    "thread/new_each": ", mit je einem neuen Faden von {thread_cm} cm",
    "thread/either": ", mit dem Fadenende oder, wo keines hängt, mit einem neuen Faden von {thread_cm} cm",
}

SENTENCES = {**SETTING_UP, **KNITTING, **PARTING, **EDGINGS, **PATTERNS, **JOINS}
