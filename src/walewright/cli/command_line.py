"""The command line as a source of its own, so that a wrong option is shown in place, like a wrong line of a pattern."""

from __future__ import annotations

import shlex
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

import click

from walewright import languages
from walewright.cli import console
from walewright.cli.console import MessageForm
from walewright.record import record, replace
from walewright.report.model import COMMAND_LINE, Diagnostic, Label, Span, diagnosed
from walewright.report.said import Fact, Said
from walewright.report.wording import Language, phrased

if TYPE_CHECKING:
    from walewright.report.as_json import Edits

FILE = COMMAND_LINE
MESSAGES = "--messages"
LANGUAGE = "--language"


class TooMany(click.UsageError):
    """More arguments than a command takes; `arguments` are those in excess."""

    def __init__(self, arguments: Sequence[str], context: click.Context) -> None:
        super().__init__("", context)
        self.arguments = tuple(arguments)


@record
class CommandLine:
    """The arguments after the program's name."""

    arguments: tuple[str, ...]

    @property
    def text(self) -> str:
        """As it would be typed."""
        return " ".join(("walewright", *(shlex.quote(a) for a in self.arguments)))

    @property
    def form(self) -> MessageForm:
        """How messages are wanted. It is looked for in the arguments themselves, for where these are wrong that is a message
        too."""
        return "json" if self._asked(MESSAGES) == "json" else "text"

    @property
    def words(self) -> Language:
        """What messages are told in, looked for in the same way."""
        return languages.telling(self.language)

    @property
    def language(self) -> str:
        """The name or tag of the language that is asked for, as it is typed."""
        return self._asked(LANGUAGE) or languages.ENGLISH

    def _asked(self, option: str) -> str:
        """What stands behind an option; nothing where it is not there."""
        asked = ""
        for argument, value in zip(self.arguments, (*self.arguments[1:], ""), strict=True):
            if argument == option or argument.startswith(f"{option}="):
                # Given several times, the last holds, as for every option.
                asked = argument.partition("=")[2] or value
        return asked

    def report(
        self, diagnostics: Iterable[Diagnostic], sources: Mapping[str, str] | None = None, edits: Edits | None = None
    ) -> None:
        """Tell diagnostics in the form and the language that are asked for; `sources` has the texts by their files, that of the
        command line goes without saying."""
        told = tuple(diagnostics)
        if told:
            console.report(told, {FILE: self.text, **(sources or {})}, self.form, edits, self.words)

    def say(self, phrase: Said, *, done: bool = False) -> None:
        """One line of results; with `done`, it says what was done."""
        console.say(phrased(phrase, self.words), done=done)

    def _places(self) -> Iterator[tuple[str, Span]]:
        """Every argument, and where it is typed."""
        at = len("walewright")
        for argument in self.arguments:
            start, at = at + 1, at + 1 + len(shlex.quote(argument))
            yield argument, Span(FILE, start, at)

    def span(self, *wanted: str) -> Span:
        """Where an argument stands that is, or begins with, the first of `wanted` that is there; else the end of the line."""
        places = list(self._places())
        for word in wanted:
            for argument, span in places:
                if argument == word or argument.startswith(f"{word}="):
                    return span
        end = len(self.text)
        return Span(FILE, end, end)

    def fault(
        self,
        kind: str,
        *helps: str,
        at: tuple[str, ...],
        label: str = "",
        notes: tuple[str, ...] = (),
        **facts: Fact,
    ) -> Diagnostic:
        """A diagnostic that points into the command line; label, notes and helps by their keys."""
        return diagnosed(kind, (self.span(*at), label), notes=notes, helps=helps, facts=facts)

    def placed(self, diagnostics: tuple[Diagnostic, ...]) -> tuple[Diagnostic, ...]:
        """Diagnostics about something given that came back from the pipeline without a place get that of its option in the
        command line; all others stay as they are."""
        return tuple(self._placed(d) for d in diagnostics)

    def _placed(self, diagnostic: Diagnostic) -> Diagnostic:
        if diagnostic.labels or diagnostic.given is None:
            return diagnostic
        option, name = diagnostic.given
        return replace(diagnostic, labels=(Label(self._given(f"--{option}", name)),))

    def _given(self, option: str, name: str) -> Span:
        """Where an option gives something of that name: a fabric may be named by several options."""
        before = ""
        for argument, span in self._places():
            joined = argument.startswith(f"{option}=")
            value = argument.removeprefix(f"{option}=") if joined else argument
            named = not name or value.partition("=")[0].strip() == name
            if named and (joined or before == option):
                return span
            before = argument
        return self.span(*filter(None, (name, option, "--from")))

    def usage_fault(self, fault: click.ClickException) -> Diagnostic:
        """What the option parser refused, as a coded diagnostic. Nothing is taken from the parser's own sentences."""
        match fault:
            case click.NoSuchOption(option_name=str(option)):
                near = tuple(fault.possibilities or ())
                help_ = "did-you-mean" if near else "help-lists-options"
                place = self._with_letter(option)
                return self.fault("option-unknown", help_, at=place, label="not-known", option=option, near=near)
            case click.BadOptionUsage(option_name=str(option)):
                return self._misused(option)
            case click.MissingParameter(param=click.Parameter() as missing):
                return self._missing(missing)
            case click.NoSuchCommand(command_name=word):
                known = (
                    tuple(fault.ctx.command.list_commands(fault.ctx))
                    if fault.ctx and isinstance(fault.ctx.command, click.Group)
                    else ()
                )
                command = repr(word)
                return self.fault("command-unknown", "commands", at=(word,), label="not-known", command=command, known=known)
            case TooMany(arguments=more):
                # They are the last; the first of them may be a word that stands further ahead too.
                first = self._last(more[0])
                facts: dict[str, Fact] = {"more": more, "count": len(more)}
                return diagnosed("command-line/too-many", (first, "in-excess"), helps=("leave-out",), facts=facts)
        return self.fault("command-line/other", "help-shows", at=())

    def _with_letter(self, option: str) -> tuple[str, ...]:
        """The argument that an unknown option stands in: of a single letter, one that may have several (-xy)."""
        if option.startswith("--"):
            return (option,)
        return (option, *(a for a in self.arguments if a[:1] == "-" and a[1:2] != "-" and option[1:] in a))

    def _misused(self, option: str) -> Diagnostic:
        """An option has no value where nothing stands behind it; with a value behind it, it is one that takes none."""
        if self.arguments[-1:] != (option,):
            return self.fault("option-value/no-value", "alone", at=(option,), option=option)
        place = self._last(option)
        return diagnosed("option-value/value-missing", (place, ""), helps=("value-after",), facts={"option": option})

    def _last(self, word: str) -> Span:
        return next(span for argument, span in reversed(list(self._places())) if argument == word)

    def _missing(self, missing: click.Parameter) -> Diagnostic:
        if missing.name == "stage":
            return self.fault("argument-missing/stage", "name-stage", at=(), label="wanted-here")
        if missing.name == "catalogue":
            return self.fault("argument-missing/catalogue", "name-catalogue", at=(), label="wanted-here")
        help_ = "name-a-file" if missing.nargs == 1 else "name-files"
        return self.fault("argument-missing/file", help_, at=(), label="wanted-here")
