"""German words for what a bed does not have."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "no-empty-crossing": Wording(
        "für {what} muss der Schlitten leer hinüber, und der dieses Nadelbetts kann das nicht",
        labels={"rejoins": "bei `{level}` kommen die Teile wieder zusammen", "bed": "dieses Nadelbett"},
        helps={
            "to-the-top": "bis oben ans Teil führen, oder zwei Teile stricken und verbinden; oder angeben, wie der Schlitten leer "
            "hinüberkommt (`crosses lifted off`), wenn er es kann"
        },
    ),
    "no-such-plate/fabric": Wording(
        "es gibt keine Platte {tension}, mit der `{fabric}` zu stricken wäre",
        labels={"at": "`tension {tension}`", "bed": "dieses Nadelbett"},
        notes={"plates": "das Nadelbett hat die Platten {plates:and}"},
        helps={"one-of-these": "eine von diesen schreiben"},
    ),
    "no-such-plate/dial": Wording(
        "das Nadelbett hat eine Maschenweite zum Einstellen, und die Vorlage strickt {fabrics:and} mit Platten",
        helps={"give-number": 'die Zahl angeben, bei der die eigene Maschenprobe gestrickt ist, etwa `--dial "{first}=6"`'},
    ),
    "no-such-plate/edging": Wording(
        "es gibt keine Platte {tension}, mit der `{edging}` zu stricken wäre",
        labels={"at": "`tension {tension}`", "bed": "dieses Nadelbett"},
        notes={"plates": "das Nadelbett hat die Platten {plates:and}"},
        helps={"one-of-these": "eine von diesen schreiben"},
    ),
    "no-such-plate/given": Wording(
        "es gibt keine Platte {tension}, mit der `{fabric}` zu stricken wäre",
        notes={"plates": "das Nadelbett hat die Platten {plates:and}"},
        helps={"one-of-these": "eine von diesen angeben"},
    ),
    "no-such-plate/other-bed": Wording(
        "das Nadelbett hat Platten, und die Vorlage strickt {fabrics:and} nach den Zahlen einer Maschenweite",
        notes={"plates": "das Nadelbett hat die Platten {plates:and}"},
        helps={"give-plate": 'die Platte angeben, mit der die eigene Maschenprobe gestrickt ist, etwa `--dial "{first}={plate}"`'},
    ),
    "no-such-tool/edge-weights": Wording(
        "Teil `{piece}` hat Ränder, die eigene Gewichte nach unten ziehen, und es sind keine da",
        labels={"here": "etwa hier", "bed": "dieses Nadelbett"},
        helps={"pull": "das Gestrick an diesem Rand von Hand nach unten ziehen, solange die Reihen daneben gestrickt werden"},
    ),
    "no-such-tool/latch-tool": Wording(
        "dazu braucht es eine Zungennadel, und es ist keine da",
        labels={"here": "hier werden Maschen durcheinander gezogen", "bed": "dieses Nadelbett"},
        helps={
            "e-wrap": "`with e-wrap` beginnen",
            "end-sewn": "`end cast off sewn` schreiben: mit Rückstichen, mit einer stumpfen Nadel",
            "have-it": "`without latch tool` beim Nadelbett weglassen, wenn eine da ist",
            "in-steps": "den Rand dort ohne Abketten führen, mit einer Schräge",
            "mock": "eine falsche Rippe (`mock rib 1 by 1`, einer Blende) kommt ohne sie aus",
            "seam": "nähen (`linked` weglassen)",
            "sewn": "`cast off sewn` schreiben: mit Rückstichen, mit einer stumpfen Nadel",
            "waste": "die Maschen stilllegen (`on waste yarn`)",
        },
    ),
}
