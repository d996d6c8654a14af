"""`walewright serve`: a page in which a knitter regrades a pattern, for this computer alone unless it is told otherwise."""

from __future__ import annotations

import os
import secrets
import socket
import threading
from collections.abc import Sequence

import click

from walewright import languages, world
from walewright.cli import options
from walewright.cli.command_line import CommandLine
from walewright.cli.parameters import HELP, LANGUAGE, MESSAGES, command
from walewright.cli.sources import meant, unfit_names
from walewright.report.columns import named
from walewright.report.model import Diagnostic
from walewright.report.said import said

TOKEN_BYTES = 24
LOCAL = "127.0.0.1"
HIGHEST_PORT = 65535
MOST_CONNECTIONS = 200
"""At once; more are refused until some are done."""


def _serve(line: CommandLine, /, files: Sequence[str], port: str, host: str, no_browser: bool, language: str, messages: str) -> int:
    """Serve a page on this computer in which patterns are regraded by a form. Without FILES it has the shipped garments."""
    files, language = meant(files), languages.named(language)
    faults = [*options.unfit_form(line, messages), *options.unknown_language(line, language)]
    faults += unfit_names(line, [file for file in files if not world.is_folder(file)])
    number = _port(line, port)
    today, undated = world.today()
    faults += [fault for fault in (undated, number) if isinstance(fault, Diagnostic)]
    if faults or isinstance(number, Diagnostic) or today is None:
        line.report(faults)
        return 2
    # What answers is loaded for who asks for it.
    from walewright.cli.garments import garments_of, shipped_garments

    garments = garments_of(files) if files else shipped_garments()
    if not garments:
        places = tuple(named(file) for file in files)
        line.report((line.fault("option-value/garments", "name-garments", at=tuple(files), places=places),))
        return 2
    try:
        family = socket.AF_INET6 if ":" in host else socket.AF_INET
        listening = socket.create_server((host, number), family=family)
    except (OSError, ValueError) as fault:
        number_of = fault.errno if isinstance(fault, OSError) else None
        reason = named(os.strerror(number_of) if number_of and number_of > 0 else str(fault))
        told = line.fault("address-refused", "other-port", at=("--port", "--host"), host=named(host), port=number, reason=reason)
        line.report((told,))
        return 1
    with listening:
        from walewright.serve.app import serving
        from walewright.serve.security import Door

        door = Door(host, listening.getsockname()[1], secrets.token_urlsafe(TOKEN_BYTES))
        app = serving(garments, door, language, today.isoformat())
        line.say(said("serving", address=_address(door.host, door.port, door.token)))
        if not no_browser:
            _open(_address(door.host, door.port, door.token))
        return _run(app, listening)


def _address(host: str, port: int, token: str) -> str:
    """Where the page is, as a browser on this computer takes it."""
    name = LOCAL if host in ("0.0.0.0", "") else "[::1]" if host == "::" else f"[{host}]" if ":" in host else host
    return f"http://{name}:{port}/{token}/"


def _port(line: CommandLine, text: str) -> int | Diagnostic:
    if text.isascii() and text.isdecimal() and len(text) <= len(str(HIGHEST_PORT)) and int(text) <= HIGHEST_PORT:
        return int(text)
    return line.fault("option-value/port", "port-number", at=(text, "--port"), text=repr(text))


def _open(address: str) -> None:
    """In a browser, if there is one; some hold up who opened them."""
    import webbrowser

    threading.Thread(target=webbrowser.open, args=(address,), daemon=True).start()


def _run(app: object, listening: socket.socket) -> int:
    """Until somebody stops it, which is how it ends well."""
    import uvicorn

    from walewright.serve.patience import PatientFor

    config = uvicorn.Config(
        app,  # type: ignore[arg-type]
        lifespan="on",
        # An address has the token in it, and is written down nowhere.
        access_log=False,
        log_level="critical",
        server_header=False,
        date_header=False,
        proxy_headers=False,
        limit_concurrency=MOST_CONNECTIONS,
        timeout_graceful_shutdown=1,
        ws="none",
        http=PatientFor,
    )
    try:
        uvicorn.Server(config).run(sockets=[listening])
    except KeyboardInterrupt:
        return 0
    return 0


COMMAND = command(
    "serve",
    _serve,
    [
        click.argument("files", nargs=-1, metavar="[FILE...]", help="Folders of sources, or sources ending in .wale."),
        click.option("--port", default="0", metavar="NUMBER", help="The port to listen on; any that is free if not given."),
        click.option(
            "--host", default=LOCAL, show_default=True, metavar="ADDRESS", help="The address to listen on: this computer alone."
        ),
        click.option("--no-browser", is_flag=True, help="Print the address and open no browser."),
        LANGUAGE,
        MESSAGES,
        HELP,
    ],
)
