"""Words for files and the command line."""

from __future__ import annotations

from walewright.report.wording import Wording

_PHOTOGRAPH = "name a JPEG or PNG file of 500 pixels or more that lies in the folder of the source, or below it"
_UNFIT_PICTURES = {
    "outside": ("does not lie beside the source", "a name within the folder of the source is meant"),
    "missing": ("is not there", "no file of that name"),
    "not-file": ("is no file", "a folder, a pipe or a device"),
    "too-large": ("is larger than any picture", "more than 40 MB"),
    "refused": ("cannot be read", "the system refuses it"),
    "kind": ("is neither JPEG nor PNG", "another kind of file"),
    "damaged": ("cannot be decoded", "the file is damaged"),
    "too-small": ("is too small to be printed", "less than 500 pixels"),
    "too-many-pixels": ("has more pixels than any camera takes", "more than 80 million pixels"),
}
_DATE = {
    "notes": {"sets-the-date": "it sets the date on the page, in whole seconds since the beginning of 1970"},
    "helps": {
        "set-or-unset": "set it to such a number, as {variable}=1767225600 for 1 January 2026, or unset it for today's date",
    },
}
_RUN_AGAIN = {"run-again": "run the command again when nothing writes to it any more"}
_SAVE_PLAIN = {"save-plain": "save the source as a plain file and name that"}

WORDINGS: dict[str, Wording] = {
    "argument-missing/catalogue": Wording(
        "no catalogue is named",
        labels={"wanted-here": "one is wanted here"},
        helps={"name-catalogue": "name a file that ends in .toml, as publish catalogue.toml"},
    ),
    "argument-missing/file": Wording(
        "no source file is named",
        labels={"wanted-here": "one is wanted here"},
        helps={
            "name-a-file": "name a file that ends in .wale",
            "name-files": "name one or more files that end in .wale",
        },
    ),
    "argument-missing/stage": Wording(
        "no stage of the compiler is named",
        labels={"wanted-here": "one is wanted here"},
        helps={"name-stage": "name a stage and a file that ends in .wale, as show solve cardigan.wale"},
    ),
    "bad-date/after-9999": Wording("the environment variable {variable} is after the year 9999: {text}", **_DATE),
    "bad-date/before-1970": Wording("the environment variable {variable} is before 1970: {text}", **_DATE),
    "bad-date/no-number": Wording("the environment variable {variable} is no number: {text}", **_DATE),
    "command-line/other": Wording(
        "the command line cannot be understood", helps={"help-shows": "`walewright --help` shows what can be written"}
    ),
    "command-line/stage": Wording(
        "no stage is called `{stage}`", labels={"no-stage": "not a stage"}, helps={"stages": "the stages are {stages}"}
    ),
    "command-line/too-many": Wording(
        "{count:one argument|# arguments} more than the command takes: {more:names}",
        labels={"in-excess": "nothing takes this"},
        helps={"leave-out": "leave {count:=it|them} out; a value with blanks in it goes into quotes"},
    ),
    "command-unknown": Wording(
        "there is no command {command}", labels={"not-known": "not known"}, helps={"commands": "the commands are {known:and}"}
    ),
    "figures-file/other": Wording(
        "{file} does not remember a knitter's figures",
        helps={"keep-anew": "name a file that the page of `walewright serve` has kept"},
    ),
    "figures-file/unfit": Wording(
        "{file} cannot be understood at `{key}`",
        helps={"keep-anew": "keep the figures anew with the page of `walewright serve`"},
    ),
    "given-too-far": Wording(
        "this pattern cannot be made with {what} {text:?{text}|as its file has it}",
        notes={"the-pattern": "the pattern: {message}{sizes:? ({sizes})}"},
        helps={
            "without-it": "without it the pattern is made: the source has {own}",
            "may-be": (
                "{what} may be {rises:?at most|at least} {works} here, with all else as given: `{option}` was tried and works, "
                "{fails} does not"
            ),
        },
    ),
    "installation-incomplete": Wording(
        "a part of the installation cannot be loaded while {doing}: {reason}",
        helps={
            "install-again": "install it again, with the packages that the README names; or, where memory is short, free some",
        },
    ),
    "memory-exhausted/memory": Wording(
        "memory ran out while {doing}; nothing was written for it",
        helps={"free-memory": "close other programs, or build fewer sizes at a time with --size"},
    ),
    "memory-exhausted/stack": Wording(
        ("what is written there goes deeper than can be followed: the stack ran out while {doing}; nothing was written for it"),
        helps={"less-deep": "make expressions, or what refers to one another, less deep"},
    ),
    "process-lost": Wording(
        "the process that worked on {file} ended before it was done{signal:?, by signal {signal}|, with exit code {code}}; "
        "nothing was written for it",
        helps={"one-job": "close other programs and build it again; with --jobs 1 it is worked in this process"},
    ),
    "language-unknown": Wording(
        "nothing can be printed in a language called {name}",
        labels={"not-known": "not known"},
        helps={"did-you-mean": "did you mean {near}?", "one-of": "write one of {known}"},
    ),
    "option-unknown": Wording(
        "there is no option {option}",
        labels={"not-known": "not known"},
        helps={"did-you-mean": "did you mean {near:or}?", "help-lists-options": "`walewright --help` lists the options"},
    ),
    "option-value/bed-file": Wording(
        "--bed: {file} describes {several:?more than a bed|no bed}",
        helps={
            "one-machine": "write one `machine` block in it, such as `machine mine` with `needles 180` and `pitch 4.5 mm`",
        },
    ),
    "option-value/catalogue-file": Wording(
        "{file} is not named like a catalogue: those end in {suffix}",
        helps={"name-a-catalogue": "name a catalogue, as catalogue{suffix}"},
    ),
    "option-value/jobs": Wording(
        "--jobs: {text} is not a number of processes", helps={"count-of-jobs": "write a whole number from 1 to {most}"}
    ),
    "option-value/port": Wording(
        "--port: {text} is no port", helps={"port-number": "write a whole number from 0 to 65535; 0 is any that is free"}
    ),
    "option-value/garments": Wording(
        "there is no pattern to serve in {places:and}", helps={"name-garments": "name a folder or sources that end in .wale"}
    ),
    "address-refused": Wording(
        "{host}, port {port}, cannot be listened on: {reason}",
        helps={"other-port": "choose another --port, or leave it out for one that is free"},
    ),
    "option-value/given-twice": Wording("{option}: {name} is given twice", helps={"leave-one-out": "leave one of them out"}),
    "option-value/not-installed": Wording(
        "{option} needs packages that are not installed",
        helps={"install-extra": 'install them, as pip install "walewright[{extra}]", or leave {option} out'},
    ),
    "option-value/no-pair": Wording(
        "{option}: a name, an equals sign and a value are wanted", helps={"as-in": 'write {option} "{example}"'}
    ),
    "option-value/no-size": Wording("no size is named", helps={"name-a-size": "write a size of the source, as --size M"}),
    "option-value/no-value": Wording("the option {option} takes no value", helps={"alone": "write {option} alone"}),
    "option-value/not-one-of": Wording(
        "{option} cannot be {text}", labels={"not-known": "not known"}, helps={"one-of": "write one of {known}"}
    ),
    "option-value/one-size": Wording(
        "a bench copy is of one size, and there are {sizes_there:and}", helps={"name-yours": "name yours, as --size {example}"}
    ),
    "option-value/scheduler": Wording(
        "--scheduler and --executor dask go together",
        helps={"both-or-none": "write both, as --executor dask --scheduler tcp://10.0.0.7:8786, or leave both out"},
    ),
    "option-value/source-folder": Wording(
        "--out cannot be {out}: a name that ends in {suffix} is a source's", helps={"name-a-folder": "name a folder, as --out out"}
    ),
    "option-value/theme-file": Wording(
        "--theme: {file} is no folder, and not named like a style sheet: those end in {suffix}",
        helps={"name-a-theme": "name a style sheet, as --theme mine{suffix}, or a folder that is there"},
    ),
    "option-value/value-missing": Wording(
        "the option {option} wants a value", helps={"value-after": "write a value after {option}"}
    ),
    "output-clash/alike": Wording(
        "{one} and {other} would be written to {product} and {other_product}",
        notes={
            "one-name": (
                "on many systems these are one name: capitals count as small letters, and accents written apart as composed"
            ),
        },
        helps={"other-folders": "build them into different folders, or rename one"},
    ),
    "output-clash/same": Wording(
        "{one} and {other} would both be written to {product}",
        helps={"other-folders": "build them into different folders, or rename one"},
    ),
    "output-is-source": Wording(
        "{product} would be written over a source: it is another name of {source}",
        helps={"other-folder": "choose another folder with --out, or rename what has that name"},
    ),
    "output-lost": Wording(
        "standard output cannot be written: {reason}",
        notes={"done-before": "done before that: {done}"},
        helps={"send-elsewhere": "send it to a file or a terminal that can be written to"},
    ),
    "output-unwritable/left-behind": Wording(
        "what a build that was killed left here cannot be put in order: {reason}",
        helps={
            "free-the-way": "free what is in the way, and build again",
            "delete-what-was-left": "or delete {new} and {whole} in this folder, and build everything in it anew",
        },
    ),
    "output-unwritable/refused": Wording(
        "the file cannot be written: {reason}",
        notes={"partly-in-place": "some of its set are in place; the next build into this folder completes it"},
        helps={
            "elsewhere": "choose another folder, or free its permissions",
            "free-its-folder": "free the permissions of its folder, or make room on its disk",
            "still-there": "check that the file is still there",
            "wait-for-it": "wait for the other build, or choose another folder",
        },
    ),
    "size-not-picked": Wording(
        "size {size} cannot be picked in the page for a browser: the lines of its bench copy do not read back as planned"
    ),
    "page-printer": Wording(
        "the page printer warns: {warning}",
        helps={"look-at-it": "look at the PDF before you give it away"},
    ),
    **{
        f"photograph-unusable/{case}": Wording(
            f"the photograph {{file}} {why}", labels={"named": label}, helps={"which": _PHOTOGRAPH}
        )
        for case, (why, label) in _UNFIT_PICTURES.items()
    },
    "source-is-folder": Wording("this is a folder, not a source", helps={"name-a-file": "name a file in it that ends in {suffix}"}),
    "source-linked": Wording(
        "the file has {names} names (hard links); written anew, it would be parted from the others",
        helps={"copy-it": "copy it to a file of its own, and format that"},
    ),
    "source-missing": Wording("there is no such file", helps={"check-the-name": "check the name and the folder"}),
    "source-name": Wording(
        "{file} is not named like a source: those end in {suffix}",
        labels={"no-name": "no source's name"},
        helps={"name-or-rename": "name a file that ends in {suffix}, or rename this one"},
    ),
    "source-not-file/device": Wording("this is a device, not a file with a text", helps=_SAVE_PLAIN),
    "source-not-file/other": Wording("this is no plain file, not a file with a text", helps=_SAVE_PLAIN),
    "source-not-file/pipe": Wording("this is a named pipe, not a file with a text", helps=_SAVE_PLAIN),
    "source-not-file/socket": Wording("this is a socket, not a file with a text", helps=_SAVE_PLAIN),
    "source-not-text/binary": Wording(
        "this is a binary file, not a text", helps={"name-a-text": "name a text file that ends in {suffix}"}
    ),
    "source-not-text/encoding": Wording(
        "the text is not UTF-8: byte {byte} fits no letter", helps={"save-as-utf-8": "save the file as UTF-8 in your editor"}
    ),
    "source-read-only": Wording("the file is read-only", helps={"free-permissions": "free its permissions, or format a copy"}),
    "source-too-large": Wording(
        "the file has {size:.1f}; a source may have {most:.1f}", helps={"right-file": "check that the right file was named"}
    ),
    "source-unreadable/changed-after-read": Wording(
        "the file was changed after it was read; it is left as it is", helps=_RUN_AGAIN
    ),
    "source-unreadable/changed-while-read": Wording("the file was changed while it was read", helps=_RUN_AGAIN),
    "source-unreadable/refused": Wording(
        "the file cannot be read: {reason}", helps={"check-permissions": "check its name and its permissions"}
    ),
    "system-refused": Wording(
        "the system refused something while {doing}: {reason}",
        helps={"see-the-words": "see what the system's words say about it, and run the command again"},
    ),
}

SHOWN: dict[str, str] = {
    "severity/error": "error",
    "severity/warning": "warning",
    "shown/note": "note",
    "shown/help": "help",
    "shown/sizes": "{count:=in size|in sizes}",
    "counted/errors": "{count:error|errors}",
    "counted/warnings": "{count:warning|warnings}",
    "shown/command-line": "command line",
    "shown/printed-words": "printed words",
    "shown/in": "in {file}",
    "shown/at": "in {file}, line {line}, column {column}",
    "shown/to-line": "(to line {line})",
    "shown/more": "{told:/, } more not shown",
}
"""What stands round messages on a terminal."""

PHRASES: dict[str, str] = {
    **SHOWN,
    "may-be-here": "{what} may be {rises:?at most|at least} {works} here, with all else as given; {fails} is too far",
    "serving": "serving at {address} until Ctrl+C is pressed",
    "another-build": "another build is writing into this folder",
    "bug": "bug[compiler-fault]: walewright {version} failed while {doing}\n"
    "  {fault}\n"
    "  at {file}, line {line}, in {function}\n"
    "  Python {python} on {platform}\n"
    "  note: the fault is in the compiler, not in your pattern; nothing was written for it\n"
    "  help: report it to the maintainers of your copy with these lines and the source file",
    "building": "building {file}",
    "printing": "printing {name} as {form}",
    "built": "{name} is done",
    "proving": "proving {name}",
    "rewrote": "rewrote {file}{mixed:? (its line ends were mixed)}",
    "only-definitions": "{file}: definitions for other sources; nothing is made of it",
    "would-change": "{file} would change{mixed:? (its line ends were mixed)}",
    "wrote": "wrote {file}",
    "checking": "checking {file}",
    "formatting": "formatting {file}",
    "listing": "listing {file}",
    "starting": "starting",
    "bed-given": "the bed",
    "file-has-its-name": "a file has the folder's name",
    "folder-has-its-name": "a folder has its name",
    "holds-another": "it holds {name}, which no build put there",
    "kept-for-builds": "its name is kept for a folder of builds",
    "source-has-its-name": "a source has its name",
}
