"""Words for choices and the alternatives of a source, and for other files that it uses."""

from __future__ import annotations

from walewright.report.wording import Wording

SHARED_FILES = {
    "outside": (
        "the file `{file}` is outside of the source's folder",
        "name a file in the folder of the source or below it, with / between folders",
    ),
    "not-source": ("the file `{file}` is no source", "name a file that ends in .wale"),
    "missing": ("there is no file `{file}`", "name a file that is there; its path goes from the folder of the file that names it"),
    "unreadable": ("the file `{file}` cannot be read", "name a plain file that holds text in UTF-8 and may be read"),
    "ring": ("the file `{file}` uses itself in the end", "put what both need into a third file"),
    "nested": ("files use files more than {deepest} deep", "name the file that has the definition"),
    "many": ("more than {most} files are used", "put what is shared into fewer files"),
}

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
    **{
        f"shared-file-unusable/{case}": Wording(message, labels={"named": "named here"}, helps={"which": help_})
        for case, (message, help_) in SHARED_FILES.items()
    },
}
