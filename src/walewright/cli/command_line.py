"""The command line as a source of its own, so that a wrong option is shown in place, like a wrong line of a pattern."""

from __future__ import annotations

import re
import shlex
from dataclasses import dataclass, replace

from typer import BadParameter
from typer.exceptions import TyperException

from walewright.report.model import Diagnostic, Label, Span

FILE = "command line"

COMMANDS = "the commands are check, choices, build, format and show"

OPTION = re.compile(r" \(option (--\w+)(?: ([^()]+))?\)$")


@dataclass(frozen=True, slots=True)
class CommandLine:
    """The arguments after the program's name."""

    arguments: tuple[str, ...]

    @property
    def text(self) -> str:
        """As it would be typed."""
        return " ".join(("walewright", *(shlex.quote(a) for a in self.arguments)))

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

    def fault(self, code: str, message: str, *, at: tuple[str, ...], label: str = "", helps: tuple[str, ...]) -> Diagnostic:
        """A diagnostic that points into the command line."""
        return Diagnostic(code, message, (Label(self.span(*at), label),), helps=helps)

    def placed(self, diagnostics: tuple[Diagnostic, ...]) -> tuple[Diagnostic, ...]:
        """Diagnostics about an option that came back from the pipeline without a place ("… (option --tension plain)") get
        their place in the command line; all others stay as they are."""
        return tuple(self._placed(d) for d in diagnostics)

    def _placed(self, diagnostic: Diagnostic) -> Diagnostic:
        named = None if diagnostic.labels else OPTION.search(diagnostic.message)
        if named is None:
            return diagnostic
        place = self._given(named[1], named[2] or "")
        return replace(diagnostic, message=diagnostic.message[: named.start()], labels=(Label(place),))

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
        if option is not None and "No such option" in fault.format_message():
            near = tuple(getattr(fault, "possibilities", None) or ())
            proposal = f"did you mean {' or '.join(near)}?" if near else "`walewright --help` lists the options"
            return self.fault("option-unknown", f"there is no option {option}", at=(option,), label="not known", helps=(proposal,))
        if option is not None and "not take a value" in fault.format_message():
            return self.fault("option-value", f"the option {option} takes no value", at=(option,), helps=(f"write {option} alone",))
        if option is not None:
            return self.fault(
                "option-value", f"the option {option} wants a value", at=(option,), helps=(f"write a value after {option}",)
            )
        message = fault.format_message().rstrip(".")
        if message.startswith("No such command"):
            word = message.split("'")[1] if "'" in message else ""
            return self.fault(
                "command-unknown",
                f"there is no command {word!r}",
                at=(word,),
                label="not known",
                helps=(COMMANDS,),
            )
        if message.startswith("Missing"):
            return self._missing(fault, message)
        if isinstance(fault, BadParameter):
            names = tuple(getattr(fault.param, "opts", ()))
            return self.fault("option-value", fault.message.rstrip("."), at=names, helps=("`walewright --help` lists the values",))
        return self.fault("command-line", message[:1].lower() + message[1:], at=(), helps=("`walewright --help` shows how",))

    def _missing(self, fault: TyperException, message: str) -> Diagnostic:
        names = tuple(getattr(getattr(fault, "param", None), "opts", ()))
        if "command" in message:
            return self.fault(
                "command-unknown",
                "there is no command",
                at=(),
                label="one is wanted here",
                helps=(COMMANDS,),
            )
        if any(n.startswith("-") for n in names):
            return self.fault(
                "argument-missing",
                f"the option {names[0]} is missing",
                at=(),
                label="it is wanted here",
                helps=(f"add {names[0]} and its value",),
            )
        return self.fault(
            "argument-missing",
            "no source file is named",
            at=(),
            label="one is wanted here",
            helps=("name one or more files that end in .wale",),
        )
