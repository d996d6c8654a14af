"""Words for what the proof finds, and for files and the command line."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "bed-refuses": Wording(
        "{block} cannot be knitted as planned: {message}",
        notes={"bed-stopped-move": "the bed stopped at move {index} of {block} ({coded})"},
        helps={"fault-plan-source": "this is a fault of the plan, not of the source: please report it with the source"},
    ),
    "knitted-otherwise/seam-along-was": Wording(
        "the seam along {side} was counted with {rows} rows and knitted with {rows_2}",
        labels={"joined-here": "joined here"},
        helps={"fault-plan-source": "this is a fault of the plan, not of the source: please report it with the source"},
    ),
    "knitted-otherwise/was-counted-knitted": Wording(
        "the {name} was counted with {counted} at {where} and knitted with {knitted}",
        helps={"fault-plan-source": "this is a fault of the plan, not of the source: please report it with the source"},
    ),
    "knitted-otherwise/was-counted-knitted-2": Wording(
        "at {where} {counted} was counted and {knitted} knitted",
        labels={"joined-here": "joined here"},
        helps={"fault-plan-source": "this is a fault of the plan, not of the source: please report it with the source"},
    ),
    "lace-unpaired": Wording(
        "the {name} has a {what} at needle {at} in row {row} and no {lacks} to it",
        helps={"fault-plan-source": "this is a fault of the plan, not of the source: please report it with the source"},
    ),
    "long-float": Wording(
        "{yarn} floats over {longest} needles ({cm:.1f} cm) in {within}",
        labels={"knitted-here": "knitted here"},
        notes={
            "more-stitches-cm": "more than {LONGEST_STITCHES} stitches or {LONGEST_CM:g} cm of loose yarn catches on fingers and buttons",
        },
        helps={
            "catch-when-such": (
                "catch it: when such a row is knitted, lift the float of {yarn} with a transfer tool on to the needle at "
                "its middle, above that needle's stitch: the next row knits both as one; or draw a stitch of the yarn "
                "between"
            ),
        },
    ),
    "memory-exhausted/memory-ran-out": Wording(
        "memory ran out while {doing}; nothing was written for it",
    ),
    "memory-exhausted/nothing-was-written": Wording(
        "{message}; nothing was written for it",
    ),
    "output-lost": Wording(
        "standard output cannot be written: {reason}",
        helps={"send-file-terminal": "send it to a file or a terminal that can be written to"},
    ),
    "page-printer": Wording(
        "the page printer warns: {warning}",
        helps={"look-pdf-before": "look at the PDF before you give it away"},
    ),
    "system-refused": Wording(
        "the system refused something while {doing}: {short}",
    ),
    "words-knit-otherwise/printed-words": Wording(
        "the printed words {otherwise}",
        helps={"fault-words-source": "this is a fault of the words, not of the source: please report it with the source"},
    ),
    "words-knit-otherwise/printed-words-knit": Wording(
        "the printed words for {name} knit another fabric than the plan",
        notes={"reading-them-back": "reading them back: {block}: {message}"},
        helps={"fault-words-source": "this is a fault of the words, not of the source: please report it with the source"},
    ),
    "words-knit-otherwise/printed-words-stop": Wording(
        "the printed words stop at {block}: {message}",
    ),
}
