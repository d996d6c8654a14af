"""The command line as a source of its own, so that a wrong option is shown in place, like a wrong line of a pattern."""

from __future__ import annotations

import shlex
from dataclasses import dataclass, replace

from typer import BadParameter
from typer.exceptions import TyperException

from walewright.cli.console import MessageForm
from walewright.report.model import Diagnostic, Label, Span, diagnosed
from walewright.report.said import Fact

FILE = "command line"
MESSAGES = "--messages"


@dataclass(frozen=True, slots=True)
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
        asked = ""
        for argument, value in zip(self.arguments, (*self.arguments[1:], ""), strict=True):
            if argument == MESSAGES or argument.startswith(f"{MESSAGES}="):
                # Given several times, the last holds, as for every option.
                asked = argument.partition("=")[2] or value
        return "json" if asked == "json" else "text"

    def span(self, *wanted: str) -> Span:
        """Where an argument stands that is, or begins with, the first of `wanted` that is there; else the end of the line."""
        places: list[tuple[str, Span]] = []
        at = len("walewright")
        for argument in self.arguments:
            typed = len(shlex.quote(argument))
            places.append((argument, Span(FILE, at + 1, at + 1 + typed)))
            at += 1 + typed
        for word in filter(None, wanted):
            for argument, span in places:
                if argument == word or argument.startswith(f"{word}="):
                    return span
        return Span(FILE, at, at)

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
        at = len("walewright") + 1
        before = ""
        for argument in self.arguments:
            typed = len(shlex.quote(argument))
            joined = argument.startswith(f"{option}=")
            value = argument.removeprefix(f"{option}=") if joined else argument
            named = not name or value.partition("=")[0].strip() == name
            if named and (joined or before == option):
                return Span(FILE, at, at + typed)
            at += typed + 1
            before = argument
        return self.span(name, option)

    def usage_fault(self, fault: TyperException) -> Diagnostic:
        """What the option parser refused, as a coded diagnostic."""
        option = getattr(fault, "option_name", None)
        if option is not None and hasattr(fault, "possibilities"):
            near = tuple(fault.possibilities or ())
            help_ = "did-you-mean" if near else "help-lists-options"
            return self.fault("option-unknown", help_, at=(option,), label="not-known", option=option, near=near)
        if option is not None:
            # An option has no value where nothing stands behind it; with a value behind it, it is one that takes none.
            case, help_ = ("value-missing", "value-after") if self.arguments[-1:] == (option,) else ("no-value", "alone")
            return self.fault(f"option-value/{case}", help_, at=(option,), option=option)
        param = getattr(fault, "param", None)
        if param is not None and hasattr(fault, "param_type"):
            return self._missing(tuple(param.opts))
        words = getattr(fault, "message", "").rstrip(".")
        if isinstance(fault, BadParameter):
            return self.fault("option-value/parser", "help-lists", at=tuple(getattr(param, "opts", ())), parser=words)
        known = getattr(getattr(getattr(fault, "ctx", None), "command", None), "commands", None)
        if known is not None:
            return self._no_command(tuple(known))
        return self.fault("command-line/parser", "help-shows", at=(), parser=words[:1].lower() + words[1:])

    def _no_command(self, known: tuple[str, ...]) -> Diagnostic:
        """Before the name of a command stand options of the whole program only, which take no values."""
        word = next((argument for argument in self.arguments if not argument.startswith("-")), None)
        if word is None:
            return self.fault("command-unknown/none", "commands", at=(), label="wanted-here", known=known)
        return self.fault("command-unknown/word", "commands", at=(word,), label="not-known", command=repr(word), known=known)

    def _missing(self, names: tuple[str, ...]) -> Diagnostic:
        if any(n.startswith("-") for n in names):
            return self.fault("argument-missing/option", "add-it", at=(), label="wanted-here", option=names[0])
        return self.fault("argument-missing/file", "name-files", at=(), label="wanted-here")
