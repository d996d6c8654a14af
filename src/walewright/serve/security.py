"""Who is answered: requests to this address by one of its names, with its token, from its own pages."""

from __future__ import annotations

import ipaddress
import secrets
from collections.abc import Mapping
from urllib.parse import urlsplit

from starlette.datastructures import Headers, MutableHeaders
from starlette.responses import PlainTextResponse
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from walewright.record import record
from walewright.serve.bodies import THROWN_AWAY

LOOPBACK = frozenset({"127.0.0.1", "localhost", "::1"})
METHODS = frozenset({"GET", "HEAD", "POST"})

HEADERS: Mapping[str, str] = {
    "content-security-policy": (
        "default-src 'none'; script-src 'self'; connect-src 'self'; img-src 'self' data:; style-src 'self'; "
        "style-src-attr 'unsafe-inline'; font-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'"
    ),
    "x-content-type-options": "nosniff",
    "x-frame-options": "DENY",
    # An address has the token in it, and goes to nobody else.
    "referrer-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "cross-origin-opener-policy": "same-origin",
    "cache-control": "no-store",
}


@record
class Door:
    """`host` and `port` that are listened on, and the `token` that an address has to begin with."""

    host: str
    port: int
    token: str

    def known_as(self, authority: str) -> bool:
        """Whether "127.0.0.1:8040" is a name of this address. Where every address of the computer is listened on, each is, but no
        name: a name could be led here by anybody."""
        try:
            parts = urlsplit(f"//{authority}")
            host, port = parts.hostname or "", parts.port
        except ValueError:
            return False
        if parts.username is not None or parts.path or parts.query or parts.fragment or (port or 80) != self.port:
            return False
        if host in LOOPBACK or host == self.host.lower():
            return True
        return _is_any(self.host) and _is_address(host)

    def own(self, origin: str) -> bool:
        """Whether a page of that origin is one of ours."""
        return origin.startswith("http://") and self.known_as(origin.removeprefix("http://"))


def _is_address(host: str) -> bool:
    try:
        ipaddress.ip_address(host)
    except ValueError:
        return False
    return True


def _is_any(host: str) -> bool:
    return _is_address(host) and ipaddress.ip_address(host).is_unspecified


class Guard:
    """Before everything else: what is not to be answered is refused without a word of what is here."""

    def __init__(self, app: ASGIApp, door: Door) -> None:
        self.app, self.door = app, door

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """One request."""
        if scope["type"] == "lifespan":
            await self.app(scope, receive, send)
        elif scope["type"] != "http":
            await send({"type": "websocket.close", "code": 1008})
        else:
            status = self._refusal(scope)
            answer = PlainTextResponse(str(status), status) if status else self.app
            await answer(scope, receive, _sealed(send))

    def _refusal(self, scope: Scope) -> int:
        headers = Headers(scope=scope)
        hosts, origins = headers.getlist("host"), headers.getlist("origin")
        if len(hosts) != 1 or not self.door.known_as(hosts[0]):
            return 421
        if scope["method"] not in METHODS:
            return 405
        if any(not self.door.own(origin) for origin in origins):
            return 403
        if scope["method"] == "POST" and headers.get("sec-fetch-site", "same-origin") not in ("same-origin", "none"):
            return 403
        token = scope["path"].split("/")[1] if scope["path"].startswith("/") else ""
        if not secrets.compare_digest(token.encode("utf-8", "replace"), self.door.token.encode()):
            return 404
        length = headers.get("content-length", "0")
        if not (length.isascii() and length.isdecimal()):
            return 400
        return 413 if len(length) > 12 or int(length) > THROWN_AWAY else 0


def _sealed(send: Send) -> Send:
    async def sealed(message: Message) -> None:
        if message["type"] == "http.response.start":
            headers = MutableHeaders(scope=message)
            for name, value in HEADERS.items():
                headers.setdefault(name, value)
        await send(message)

    return sealed
