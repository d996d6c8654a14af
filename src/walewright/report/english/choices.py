"""Words for choices and the alternatives of a source."""

from __future__ import annotations

from walewright.report.wording import Wording

WORDINGS: dict[str, Wording] = {
    "choice-of-one": Wording(
        "`{name}` leaves no choice: it has only `{only}`",
        labels={"alone": "the only alternative"},
        helps={"another": "name another alternative behind a comma, or write what belongs to this one without a choice"},
    ),
    "choice-within-itself/again": Wording(
        "`{choice} {alternative}` is what is chosen here anyway",
        labels={"inner": "said again", "outer": "within this alternative"},
        helps={"take-out": "write its lines without it"},
    ),
    "choice-within-itself/never": Wording(
        "`{choice} {alternative}` is never chosen where `{choice} {other}` is",
        labels={"inner": "never there", "outer": "within this alternative"},
        helps={"take-out": "take it out of the other alternative"},
    ),
    "choice-without-effect/alike": Wording(
        "with `{choice} {other}` everything is as with `{choice} {one}`",
        labels={"this": "nothing is said for it, or the same", "that": "as for this"},
        helps={"say-or-delete": "write what is otherwise under `for {choice} {other}`, or leave it out"},
    ),
    "choice-without-effect/empty": Wording(
        "nothing belongs to `{choice} {alternative}` here",
        labels={"empty": "no line stands under it"},
        helps={"fill-or-delete": "indent the lines that belong to it below it, or delete it"},
    ),
}
