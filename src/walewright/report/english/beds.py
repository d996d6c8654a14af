"""English words for what a bed does not have."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "no-empty-crossing": Wording(
        "{what} needs the carriage to cross without knitting, and that of the bed cannot",
        labels={"rejoins": "the parts come together again at `{level}`", "bed": "this bed"},
        helps={
            "to-the-top": "lead it to the top of the piece, or knit two pieces and join them; or write how the carriage crosses "
            "(`crosses lifted off`), if it does"
        },
    ),
    "no-such-plate/fabric": Wording(
        "there is no plate {tension} to knit `{fabric}` with",
        labels={"at": "tension {tension}", "bed": "this bed"},
        notes={"plates": "the bed has the plates {plates:and}"},
        helps={"one-of-these": "write one of these"},
    ),
    "no-such-plate/edging": Wording(
        "there is no plate {tension} to knit `{edging}` with",
        labels={"at": "tension {tension}", "bed": "this bed"},
        notes={"plates": "the bed has the plates {plates:and}"},
        helps={"one-of-these": "write one of these"},
    ),
    "no-such-plate/given": Wording(
        "there is no plate {tension} to knit `{fabric}` with",
        notes={"plates": "the bed has the plates {plates:and}"},
        helps={"one-of-these": "give one of these"},
    ),
    "no-such-plate/other-bed": Wording(
        "the bed has plates, and the source knits {fabrics:and} by the numbers of a dial",
        notes={"plates": "the bed has the plates {plates:and}"},
        helps={"give-plate": 'give the plate that your swatch was knitted with, as in `--dial "{first}={plate}"`'},
    ),
    "no-such-plate/dial": Wording(
        "the bed has a dial, and the source knits {fabrics:and} with plates",
        helps={"give-number": 'give the number that your swatch was knitted at, as in `--dial "{first}=6"`'},
    ),
    "no-such-tool/edge-weights": Wording(
        "the {piece} has edges that are drawn down by weights of their own, and none are at hand",
        labels={"here": "as here", "bed": "this bed"},
        helps={"pull": "pull the work down by hand at that edge while the rows beside it are knitted"},
    ),
    "no-such-tool/latch-tool": Wording(
        "this needs a latch tool, and none is at hand",
        labels={"here": "loops are drawn through each other", "bed": "this bed"},
        helps={
            "e-wrap": "begin `with e-wrap`",
            "end-sewn": "write `end cast off sewn`: by back-stitch, with a blunt needle",
            "have-it": "leave `without latch tool` out of the bed if you have one",
            "in-steps": "lead the edge there without casting off, by a slope",
            "mock": "a mock rib (`mock rib 1 by 1`, of an edging) needs none",
            "seam": "sew the join (leave `linked` out)",
            "sewn": "write `cast off sewn`: by back-stitch, with a blunt needle",
            "waste": "leave the stitches `on waste yarn`",
        },
    ),
}
