"""Words for a publisher's theme."""

from __future__ import annotations

from walewright.report.wording import Wording

_LEAVE_OUT = "leave it out"
_WITHIN = "name a file that lies in the theme's folder, or below it"
_LOGO = {"which": "name a PNG or JPEG file of 150 pixels or more on its longer side, and of 5 MB at most"}
_FONT = {"which": "name a TTF, OTF or WOFF2 file of one font, of 4 MB at most"}

_FILES = {
    "outside": ("does not lie in the theme's folder", "a name within the folder is meant"),
    "missing": ("is not there", "no file of that name"),
    "not-file": ("is no file", "a folder, a pipe or a device"),
    "too-large": ("is larger than a theme's files are", "too many bytes"),
    "refused": ("cannot be read", "the system refuses it"),
}
_LOGOS = {
    "logo-kind": ("is neither PNG nor JPEG", "a logo is a picture; drawings in SVG are not taken"),
    "logo-damaged": ("cannot be decoded", "the file is damaged"),
    "logo-too-small": ("is too small to be printed", "less than 150 pixels"),
    "logo-too-many-pixels": ("has more pixels than any camera takes", "more than 80 million pixels"),
}
_FONTS = {
    "font-kind": ("is no font", "it begins as no TTF, OTF or WOFF2 file does"),
    "font-damaged": ("cannot be used as a font", "tables that a font needs are damaged or not there"),
    "font-unpacked": ("unpacks to more than a font has", "more than 16 MB"),
    "font-restricted": ("forbids that it is put into a document", "so its table OS/2 says"),
}

WORDINGS: dict[str, Wording] = {
    **{
        f"theme-file-unusable/{case}": Wording(f"the theme's {{file}} {why}", labels={"named": label}, helps=helps)
        for cases, helps in ((_FILES, {"which": _WITHIN}), (_LOGOS, _LOGO), (_FONTS, _FONT))
        for case, (why, label) in cases.items()
    },
    "theme-file-unusable/empty-folder": Wording(
        "the folder {file} holds no theme",
        labels={"lacks": "neither {sheet} nor {description} is in it"},
        helps={"put-one": "put a style sheet {sheet} into it, or a description {description}"},
    ),
    "theme-line/no-toml": Wording(
        "the theme's description is not TOML",
        labels={"stopped": "reading stopped here"},
        helps={"as-in": 'write lines as in: imprint = ["Printed by us"]'},
    ),
    "theme-line/unknown": Wording(
        "a theme's description has nothing called `{name}` here",
        labels={"unknown": "not known"},
        helps={"known": "what can stand here is {known:and`}"},
    ),
    "theme-line/no-table": Wording(
        "`{name}` is not a table", helps={"write-table": "write [{name}] in a line of its own, and below it what it has"}
    ),
    "theme-line/no-text": Wording(
        "`{name}` wants a text in quotes, of one line and at most {most} letters",
        helps={"write-text": "write a text in quotes, without line ends or control characters, and not empty"},
    ),
    "theme-line/lacking": Wording(
        "`{within}` says nothing of `{name}`", helps={"add-it": 'add a line {name} = "…", with a text in the quotes'}
    ),
    "theme-line/no-list": Wording(
        "`imprint` wants a list of at most {most} lines",
        helps={"write-list": 'write it as in: imprint = ["Printed by us", "For private use"]'},
    ),
    "theme-line/colour-unknown": Wording(
        "a sheet has no colour called `{name}`", helps={"colours-are": "the colours are {known:and`}"}
    ),
    "theme-line/no-colour": Wording(
        "`{name}` wants a colour that hides what is behind it",
        helps={"write-colour": 'write it in quotes, as "#7a2f3b", "rgb(122, 47, 59)" or "maroon"'},
    ),
    "theme-line/no-fonts": Wording(
        "`font` wants tables, at most {most} of them",
        helps={"write-fonts": "write [[font]] in a line of its own for each font file, and below it its family and file"},
    ),
    "theme-line/face-twice": Wording(
        "two files are given for the family {family} in weight {weight}, style {style}",
        helps={"leave-one-out": "leave one of them out, or state the weight or style that it has"},
    ),
    "theme-line/family": Wording(
        "{family} is no name for a family of fonts",
        helps={"write-family": "write it with letters, digits, spaces and hyphens only"},
    ),
    "theme-line/house-family": Wording(
        "the family {family} is one of the house's", helps={"other-name": "give it another name, and use that in the style sheet"}
    ),
    "theme-line/weight": Wording(
        "the weight of a font is a whole number from 1 to {most}",
        helps={"write-weight": "write it without quotes, as weight = 400 for a regular or weight = 700 for a bold font"},
    ),
    "theme-line/style": Wording(
        "the style of a font is {styles:or`}", helps={"write-style": 'write one of them in quotes, as style = "italic"'}
    ),
    "theme-low-contrast": Wording(
        "the colour `{name}` is hard to read on paper: its contrast is {ratio} : 1",
        labels={"has": "{colour} on {paper}"},
        notes={"wanted": "text is wanted with {least} : 1 or more (WCAG 2.2, success criterion 1.4.3)"},
        helps={"further-apart": "make the colour darker, or the paper lighter"},
    ),
    "theme-reaches-out/end-of-sheet": Wording(
        "{what} in a theme would end the style sheet in the page", helps={"leave-it-out": _LEAVE_OUT}
    ),
    "theme-reaches-out/fetches": Wording(
        "{what} in a theme would fetch something from outside",
        helps={"leave-it-out": "leave it out: a page brings all that it needs, and draws with colours and lines"},
    ),
}
