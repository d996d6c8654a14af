"""German parts of sentences about what was counted, and about other figures that would do."""

from __future__ import annotations

PHRASES: dict[str, str] = {
    # ------------------------------------------------------------- figures written otherwise
    "allow-easing": "{lengths:and} Einhalten erlauben",
    "be-centred": "`{fabric}` mit `centred` in die Mitte setzen",
    "change": "ändern: {figures:and}",
    "end-of": "`{level}` von Teil `{piece}` auf {lengths:and}",
    "end-too": "`{level}` auf {lengths:and}",
    "figure-at": "{figure} auf {lengths:and}",
    "in-sizes": "{amount} in {sizes}",
    "knit-looser": "es mit {stitches} Maschen oder weniger auf 10 cm stricken",
    "let-ends-be": "{least:?mindestens|höchstens} so setzen: {ends:and}",
    "make-wide": "Teil `{piece}` bei `{level}` {lengths:and} breit machen",
    "narrow-it": "es höchstens {cm} breit machen",
    "range": "{least} bis {most}",
    "wider-bed": "es auf einem Nadelbett mit {needles} oder mehr Nadeln stricken",
    "of-sizes": "{amount} ({sizes})",
    "several-at-a-time": "jeweils mehrere Maschen auf einmal: `steps {cm:source} {times} times to {level}`",
    "would-do": "so ginge es: {figures:and}",
    # ------------------------------------------------------------- sizes and their figures
    "figures": "{sizes}: {figures:/; }",
    "in-size": "{size}: {note}",
    # ------------------------------------------------------------- joins
    "along-rows": "Reihen",
    "along-stitches": "Maschen",
    "apart": "Unterschied {count}",
    "ratio-against": "{one_count} gegen {other_count}, und nicht {rows} Reihen auf {stitches} Maschen",
    "counts-against": (
        "{one_count} ({one_cm:.1f}) gegen {other_count} ({other_cm:.1f}): {difference}, und Einhalten ist nicht erlaubt"
    ),
    "first-longer": "die erste {cm:.1f} {longer:?länger|kürzer}",
    "not-as-longer": (
        "{one_cm:.1f} gegen {other_cm:.1f}: {found:.1f} länger, und es sollten {longer} cm sein, {allowed:.1f} mehr oder weniger"
    ),
    "not-eased": "{one_cm:.1f} gegen {other_cm:.1f}: Unterschied {apart:.1f}, und {allowed:g} cm lassen sich einhalten",
    "nothing": "nichts",
    "rows": "{rows:Reihe|Reihen}",
    "rows-and-stitches": "{rows:Reihe|Reihen} und {stitches:Masche|Maschen}",
    "sides": (
        "`{one}` {one_count}, {one_cm:.1f}; `{other}` {other_count}, {other_cm:.1f}: {difference}{longer:?, verlangt sind {longer} "
        "cm}"
    ),
    "stitches": "{stitches:Masche|Maschen}",
    # ------------------------------------------------------------- patterns
    "moved-at-both-ends": "{moved}, am einen Rand vor der nächsten Reihe und am anderen danach",
    "no-pattern": "kein Muster",
    "opening-between": "dort {widths:and}, und eine Öffnung ist im Weg",
    "opening-in-its-way": "Öffnung `{opening}` ist von Reihe {row} der Strickschrift an im Weg",
    "parted-there": "Teil `{piece}` ist dort durch `{opening}` geteilt",
    "plain-row": "eine schlichte Reihe",
    "row-meets": "in Reihe {row} der Naht trifft {here} auf {there}",
    "row-of-pattern": "Reihe {row} von `{fabric}`",
    "rows-left": "bis `{level}` {rows:=bleibt|bleiben} {rows:Reihe|Reihen}",
    "stitches-added": "{stitches:Masche kommt|Maschen kommen} dazu",
    "stitches-held": "{stitches:Masche ist|Maschen sind} in Haltestellung",
    "stitches-taken-off": "{stitches:Masche wird|Maschen werden} vom Nadelbett genommen",
    "too-few-there": "dort {widths:and}, {lacks} zu wenig auf der Seite",
    # ------------------------------------------------------------- what lies in a piece
    "edge-at-row": "{side:term}e Kante von Teil `{piece}` in Reihe {row}",
    "edging-of": "`{edging}` von Teil `{piece}`",
    "hole-wide": (
        "`{hole}`, {stitches:Masche|Maschen} breit, {parts:?wo das Teil sich teilt, in Reihe|in Reihe} {row}; {works:/; }"
    ),
    "in-work-there": "{stitches:Masche ist|Maschen sind} dort in Arbeit",
    "on-an-end-needle": "es liegt auf einer Endnadel",
    "panel-of": "Bahn aus `{fabric}` in Teil `{piece}`",
    "slot-at": "`{slot}` in Reihe {row}",
    "weight-of": "von `{kind}` {weight}",
    "zone-of": "`{fabric}` in Teil `{piece}`",
    # ------------------------------------------------------------- places on the bed
    "along": "entlang `{along}`",
    "at-start": "am Anfang",
    "bed": "{needles} Nadeln",
}
