"""What a form sends, as fields and their texts: bounded in bytes, fields and time, whatever the request says of itself."""

from __future__ import annotations

import asyncio
import re
from urllib.parse import parse_qsl

from starlette.requests import ClientDisconnect, Request

LARGEST = 128 * 1024
"""Bytes of a body. A form of the largest garment is some kilobytes."""
THROWN_AWAY = 8 * 1024 * 1024
"""Bytes of a larger body that are read all the same and kept nowhere: who drops the wrong file has a page for an answer, which a
browser shows when it has sent the whole. What is larger still is not read."""
MOST_FIELDS = 600
LONGEST_TEXT = 64 * 1024
"""Letters of one field: what is remembered can be pasted into one."""
SECONDS = 20.0
"""For a body to come."""

URLENCODED, MULTIPART = "application/x-www-form-urlencoded", "multipart/form-data"
BOUNDARY = re.compile(r'boundary="?([\w\'()+,./:=? -]{1,70})"?', re.ASCII)
NAME = re.compile(rb'[;\s]name="([^"\r\n]{0,200})"', re.IGNORECASE)


class BodyUnreadable(Exception):
    """A body that is not that of a form; `status` as HTTP has it."""

    def __init__(self, status: int) -> None:
        super().__init__(status)
        self.status = status


async def posted(request: Request) -> dict[str, str]:
    """The fields of a form and their texts; of several of one name the last. Raises BodyUnreadable."""
    body = await _body(request)
    if not body:
        return {}
    kind, _, more = request.headers.get("content-type", "").partition(";")
    match kind.strip().lower():
        case "application/x-www-form-urlencoded":
            found = _urlencoded(body)
        case "multipart/form-data":
            found = _multipart(body, more)
        case _:
            raise BodyUnreadable(415)
    if any(len(name) > 200 or len(text) > LONGEST_TEXT for name, text in found.items()):
        raise BodyUnreadable(413)
    return found


async def _body(request: Request) -> bytes:
    try:
        async with asyncio.timeout(SECONDS):
            parts: list[bytes] = []
            size = 0
            async for part in request.stream():
                size += len(part)
                if size > THROWN_AWAY:
                    break
                if size > LARGEST:
                    parts.clear()
                else:
                    parts.append(part)
            if size > LARGEST:
                raise BodyUnreadable(413)
            return b"".join(parts)
    except TimeoutError:
        raise BodyUnreadable(408) from None
    except ClientDisconnect:
        raise BodyUnreadable(400) from None


def _urlencoded(body: bytes) -> dict[str, str]:
    try:
        text = body.decode("ascii")
        pairs = parse_qsl(text, keep_blank_values=True, errors="strict", max_num_fields=MOST_FIELDS)
    except ValueError:
        raise BodyUnreadable(400) from None
    return {name: _clean(value) for name, value in pairs}


def _multipart(body: bytes, parameters: str) -> dict[str, str]:
    """Parts and their texts, files as well as fields. What stands before the first boundary and behind the last is no part."""
    boundary = BOUNDARY.search(parameters)
    if boundary is None:
        raise BodyUnreadable(400)
    mark = b"\r\n--" + boundary[1].encode()
    parts = (b"\r\n" + body).split(mark)[1:]
    if len(parts) > MOST_FIELDS or not parts or not parts[-1].startswith(b"--"):
        raise BodyUnreadable(400)
    found = {}
    for part in parts[:-1]:
        head, blank, text = part.partition(b"\r\n\r\n")
        name = NAME.search(head)
        if name is None or not blank:
            raise BodyUnreadable(400)
        try:
            found[name[1].decode()] = _clean(text.decode("utf-8-sig"))
        except UnicodeDecodeError:
            raise BodyUnreadable(400) from None
    return found


def _clean(text: str) -> str:
    """Without characters that nobody types and no page can show."""
    return "".join(c for c in text.replace("\r\n", "\n") if c.isprintable() or c in "\n\t")
