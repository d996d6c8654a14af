"""Words for a publisher's catalogue, and for what is said of making it."""

from __future__ import annotations

from walewright.report.wording import Wording

_DID_YOU_MEAN = "did you mean `{near}`?"
_OTHER_FOLDER = {"other-folder": "choose another folder with --into"}

WORDINGS: dict[str, Wording] = {
    "catalogue-line/no-toml": Wording(
        "a line of the catalogue is not TOML",
        labels={"stopped": "reading stopped here"},
        helps={"as-in": 'write lines as in: title = "Garments of the spring"'},
    ),
    "catalogue-line/unknown": Wording(
        "a catalogue has nothing called `{name}` here",
        labels={"unknown": "not known"},
        helps={"did-you-mean": _DID_YOU_MEAN, "known": "what can stand here is {known:and`}"},
    ),
    "catalogue-line/no-table": Wording(
        "`{name}` is not a table", helps={"write-table": 'write names and values in braces, as in: {name} = {{one = "other"}}'}
    ),
    "catalogue-line/no-tables": Wording(
        "`{name}` wants tables", helps={"write-tables": "write [[{name}]] in a line of its own, and below it what it has"}
    ),
    "catalogue-line/no-text": Wording(
        "`{name}` wants a text in quotes, of one line and at most {most} letters",
        helps={"write-text": "write a text in quotes, without line ends or control characters, and not empty"},
    ),
    "catalogue-line/no-list": Wording(
        "`{name}` wants a list of one to {most} texts",
        helps={"write-list": 'write it in brackets, each text in quotes, as in: {name} = ["one", "other"]'},
    ),
    "catalogue-line/no-date": Wording(
        "`date` wants a day", helps={"write-date": "write year, month and day without quotes, as in: date = 2026-03-01"}
    ),
    "catalogue-line/lacking-title": Wording(
        "the catalogue has no title", helps={"add-title": 'add a line at its head, as in: title = "Garments of the spring"'}
    ),
    "catalogue-line/lacking-date": Wording(
        "the catalogue has no date",
        notes={"on-the-pages": "it is the date of the edition, and stands on the pages whenever they are made"},
        helps={"add-date": "add a line at its head, as in: date = 2026-03-01"},
    ),
    "catalogue-line/lacking-garments": Wording(
        "the catalogue names no garments",
        helps={"add-garments": 'add a line [[garments]], and below it one as in: sources = ["*.wale"]'},
    ),
    "catalogue-line/not-one-of": Wording(
        "`{name}` has nothing called {text}",
        labels={"not-known": "not known"},
        helps={"did-you-mean": _DID_YOU_MEAN, "one-of": "what can stand here is {known:and`}"},
    ),
    "catalogue-line/twice": Wording("`{name}` stands in the list twice", helps={"leave-one-out": "leave one of them out"}),
    "catalogue-line/theme-name": Wording(
        "`{name}` cannot be the name of a theme",
        helps={"other-name": "use letters, digits, hyphens and underscores; `{house}` is the name of the house's own look"},
    ),
    "catalogue-line/theme-file": Wording(
        "the theme {file} is no folder, and not named like a style sheet: those end in {suffix}",
        helps={"name-a-theme": "name a folder or a style sheet by its path from the catalogue's folder"},
    ),
    "catalogue-line/no-sources": Wording(
        "a table `{name}` names no sources",
        helps={"add-sources": 'add a line below its head, as in: sources = ["*.wale"]'},
    ),
    "catalogue-line/name-no-text": Wording(
        "the name of the source {name} is no text in UTF-8", helps={"rename-source": "give the file another name"}
    ),
    "catalogue-line/no-match": Wording(
        "no source is called {name}",
        labels={"meant-here": "looked for in the catalogue's folder and below"},
        helps={
            "did-you-mean": _DID_YOU_MEAN,
            "in-folder": "write the path of a source from the catalogue's folder; * stands for any letters, ** for any folders",
        },
    ),
    "catalogue-line/no-place": Wording(
        "a name has no place called {name}", helps={"places-are": "what can stand in braces is {known:and`}"}
    ),
    "catalogue-line/name": Wording(
        "products cannot be called so",
        helps={
            "write-name": 'use letters, digits, hyphens, underscores and stops, and {source} among them, as in: name = "{source}"',
        },
    ),
    "catalogue-clash/forms": Wording(
        "two products of {source} would be called {product}",
        helps={"add-places": "let the name have places for what differs between them: {places:and`}, each in braces"},
    ),
    "catalogue-clash/sources": Wording(
        "products of {source} and of {other} would both be called {product}",
        helps={"tell-apart": "give one of them another name, or leave one out"},
    ),
    "catalogue-clash/kept": Wording(
        "{source} would be made into {product}, which is written beside the products",
        helps={"other-name": "give its products another name"},
    ),
    "executor-unusable/unreachable": Wording(
        "no scheduler of a cluster answers at {address}",
        helps={"start-it": "start one there, or write the address that it says; without --executor this computer works"},
    ),
    "executor-unusable/differs": Wording(
        "a worker of the cluster has not the same {differ:names}",
        helps={"install-the-same": "install the same versions everywhere; others could make other files"},
    ),
    "catalogue-folder/other": Wording(
        "the folder {folder} has the products of another catalogue: {other}, and not {own}", helps=_OTHER_FOLDER
    ),
    "catalogue-folder/taken": Wording("the folder {folder} has files of its own: {there:and}", helps=_OTHER_FOLDER),
}

PHRASES: dict[str, str] = {
    "published": "made {made:file|files}; {kept} as before{withdrawn:?; {withdrawn} withdrawn}"
    "{failed:?; not made: {failed:garment|garments}}",
    "watching": "watching {folder}{page:?; {page} shows what is made}",
    "withdrew": "withdrew {file}",
    "why-product": "{product}: {reasons:/; }",
    "why-new": "new",
    "why-damaged": "what was kept of it is damaged",
    "why-gone": "the file is gone",
    "why-by-hand": "the file was changed",
    "why-asked": "the catalogue says otherwise of `{name}`",
    "why-program": "another compiler",
    "why-names": "more or other shipped files",
    "why-package": "{name} {now} instead of {before}",
    "why-file": "{name} changed",
    "why-file-gone": "{name} is gone",
}
