"""The requests that are answered."""

from __future__ import annotations

from collections.abc import AsyncIterator, Awaitable, Callable, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass, field

from starlette.applications import Starlette
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import FileResponse, HTMLResponse, JSONResponse, Response
from starlette.routing import Route
from starlette.types import ASGIApp

from walewright import languages, world
from walewright.cli import remembered
from walewright.serve import working
from walewright.serve.answering import Answering
from walewright.serve.bodies import BodyUnreadable, posted
from walewright.serve.given import filled
from walewright.serve.kept import KeptAnswer
from walewright.serve.model import PageAnswer, PageResult, Posted, ServedGarment, TakenFile
from walewright.serve.pages import FORMATS, PRINTED, Pages
from walewright.serve.pool import Asker, Limits, Unfinished, WorkPool
from walewright.serve.progress import TICKET
from walewright.serve.security import Door, Guard

STATUS = {"busy": 503, "stopped": 503, "memory": 503, "failed": 500}
"""Of results that are the program's; a pattern that cannot be made is an answer like another."""

TYPES = {
    ".pdf": "application/pdf",
    ".html": "text/html;charset=utf-8",
    ".txt": "text/plain;charset=utf-8",
    ".json": "application/json",
}
OWN = {"page.css": "text/css", "page.js": "text/javascript"}
FACES = ("serif", "sans")
FOR_AN_HOUR = {"cache-control": "private,max-age=3600"}

LONGEST_SOURCE = 40_000
"""Letters of a source that somebody gives; the largest shipped one has a fifth of it."""
YOURS = "yours.wale"
"""What messages call it."""


@dataclass(frozen=True)
class Serving:
    """All that answers have in common."""

    garments: Sequence[ServedGarment]
    pages: Pages
    answering: Answering
    covers: dict[str, bytes] = field(default_factory=dict)
    faces: dict[str, str] = field(default_factory=dict)

    def garment(self, request: Request, given: Posted) -> ServedGarment:
        """The one that the address names, or whose text was given. Nothing else of an address leads to a file."""
        if "name" not in request.path_params:
            text = given.get("source", "")
            if not text.strip():
                raise HTTPException(404)
            if len(text) > LONGEST_SOURCE:
                raise BodyUnreadable(413)
            return ServedGarment("yours", YOURS, text)
        found = next((g for g in self.garments if g.name == request.path_params["name"]), None)
        if found is None:
            raise HTTPException(404)
        return found

    async def gallery(self, request: Request) -> Response:
        return HTMLResponse(self.pages.gallery(self.garments))

    async def cover(self, request: Request) -> Response:
        garment = self.garment(request, {})
        if garment.name not in self.covers:
            drawn = await self.answering.pool.in_the_background(working.cover, garment, self.answering.language)
            if isinstance(drawn, Unfinished) or not drawn:
                raise HTTPException(404)
            self.covers[garment.name] = drawn.encode()
        return Response(self.covers[garment.name], media_type="image/svg+xml", headers=FOR_AN_HOUR)

    async def form(self, request: Request) -> Response:
        garment = self.garment(request, {})
        return self._answered(garment, {}, await self.answering.form(_asker(request), garment, {}))

    async def result(self, request: Request) -> Response:
        garment, given = await self._given(request)
        found = await self.answering.worked(_asker(request), garment, given)
        return await self._finished(request, garment, given, found)

    async def make(self, request: Request) -> Response:
        form = request.path_params["form"]
        if form not in FORMATS:
            raise HTTPException(404)
        garment, given = await self._given(request)
        ticket = given.pop("ticket", "")
        asker = _asker(request, at_once=form in PRINTED)
        found = await self.answering.printed(asker, garment, given, form, ticket if TICKET.fullmatch(ticket) else "")
        return await self._finished(request, garment, given, found)

    async def progress(self, request: Request) -> Response:
        """The page that a printing is at."""
        return JSONResponse({"page": self.answering.pool.progress.page(request.path_params["ticket"])})

    async def keep(self, request: Request) -> Response:
        garment, given = await self._given(request)
        return await self._finished(request, garment, given, await self.answering.kept(_asker(request), garment, given))

    async def recall(self, request: Request) -> Response:
        """What a file remembers, for the garment that it names, or the one that it was given to."""
        try:
            given = await posted(request)
        except BodyUnreadable as fault:
            return HTMLResponse(self.pages.gallery(self.garments, "", ""), fault.status)
        text = given.get("file", "").strip() or given.get("pasted", "")
        found = remembered.read(text)
        if not isinstance(found, remembered.Remembered):
            return HTMLResponse(self.pages.gallery(self.garments, text, found), 422)
        if given.get("source", "").strip():
            garment: ServedGarment | None = self.garment(request, given)
        else:
            name = given.get("garment") or found.garment
            garment = next((g for g in self.garments if g.name == name), None)
        if garment is None:
            return HTMLResponse(self.pages.gallery(self.garments, text, "garment"), 422)
        fields = filled(dict(found.fields))
        return await self._finished(request, garment, fields, await self.answering.worked(_asker(request), garment, fields))

    async def yours(self, request: Request) -> Response:
        """A source that somebody gives, as a file or pasted, or the form of one with what was filled in."""
        try:
            given = await posted(request)
        except BodyUnreadable as fault:
            # The wrong file was dropped, or one that another program saved in its own way.
            return HTMLResponse(self.pages.gallery(self.garments, unread=True), fault.status)
        text = given.pop("file", "").strip("\n") or given.get("source", "")
        if not text.strip() or len(text) > LONGEST_SOURCE:
            return HTMLResponse(self.pages.gallery(self.garments, source=text[:LONGEST_SOURCE], unread=True), 422)
        garment = ServedGarment("yours", YOURS, text)
        given.pop("source", None)
        return await self._finished(request, garment, given, await self.answering.worked(_asker(request), garment, given))

    async def own(self, request: Request) -> Response:
        name = request.path_params["file"]
        if name.removesuffix(".ttf") in FACES:
            return await self._face(name.removesuffix(".ttf"))
        if name not in OWN:
            raise HTTPException(404)
        return Response(world.package_text(f"serve/{name}"), media_type=OWN[name])

    async def _face(self, face: str) -> Response:
        if face not in self.faces:
            found = await self.answering.pool.in_the_background(working.face, face)
            self.faces[face] = found if isinstance(found, str) else ""
        if not self.faces[face]:
            raise HTTPException(404)
        return FileResponse(self.faces[face], media_type="font/ttf", headers=FOR_AN_HOUR)

    async def _given(self, request: Request) -> tuple[ServedGarment, dict[str, str]]:
        given = await posted(request)
        garment = self.garment(request, given)
        given.pop("source", None)
        return garment, given

    async def _finished(
        self, request: Request, garment: ServedGarment, given: Posted, found: KeptAnswer | PageAnswer | TakenFile | Unfinished
    ) -> Response:
        """The answer; where the work came to nothing, the form all the same, with what was filled in."""
        if isinstance(found, KeptAnswer):
            return self._answered(garment, given, found.answer)
        if not isinstance(found, Unfinished) or found.why == "cancelled":
            return self._answered(garment, given, found)
        form = await self.answering.form(_asker(request), garment, given)
        if isinstance(form, Unfinished):
            return self._answered(garment, given, found)
        return self._answered(garment, given, PageAnswer(form.offer, form.values, form.stray, PageResult(found.why), form.hints))

    def _answered(self, garment: ServedGarment, given: Posted, found: PageAnswer | TakenFile | Unfinished) -> Response:
        if isinstance(found, TakenFile):
            suffix = found.name[found.name.rindex(".") :]
            # Names are those of sources, which the page's own list has.
            name = "".join(c if c.isascii() and (c.isalnum() or c in "-_.") else "_" for c in found.name)
            headers = {"content-disposition": f'attachment;filename="{name}"'}
            return Response(found.data, media_type=TYPES[suffix], headers=headers)
        if isinstance(found, Unfinished):
            return HTMLResponse(self.pages.unfinished(garment, given, PageResult(found.why)), STATUS.get(found.why, 503))
        state = found.result.state if found.result is not None else "proven"
        return HTMLResponse(self.pages.garment(garment, found), STATUS.get(state, 200))


def _asker(request: Request, at_once: bool = False) -> Asker:
    """Who waits for the answer: until the connection is closed."""

    async def gone() -> None:
        while (await request.receive())["type"] != "http.disconnect":
            pass

    return Asker(gone, at_once)


def serving(garments: Sequence[ServedGarment], door: Door, language: str, today: str, limits: Limits | None = None) -> ASGIApp:
    """The application that answers at `door`."""
    guide = languages.printed(language).guide
    pool = WorkPool(limits or Limits())
    there = Serving(garments, Pages(guide, f"/{door.token}"), Answering(pool, language, today))

    @asynccontextmanager
    async def lifespan(_: Starlette) -> AsyncIterator[None]:
        pool.start()
        try:
            yield
        finally:
            pool.stop()

    async def unread(_: Request, fault: Exception) -> Response:
        status = (
            fault.status if isinstance(fault, BodyUnreadable) else fault.status_code if isinstance(fault, HTTPException) else 500
        )
        return HTMLResponse(there.pages.unread(), status)

    handlers = dict.fromkeys((HTTPException, BodyUnreadable, Exception), unread)
    app = Starlette(routes=_routes(there), exception_handlers=handlers, lifespan=lifespan)
    return Guard(app, door)


Endpoint = Callable[[Request], Awaitable[Response]]


def _routes(there: Serving) -> list[Route]:
    """Every address, below the token."""
    get: dict[str, Endpoint] = {
        "/": there.gallery,
        "/own/{file}": there.own,
        "/cover/{name}.svg": there.cover,
        "/garment/{name}": there.form,
        "/progress/{ticket}": there.progress,
    }
    post: dict[str, Endpoint] = {
        "/garment/{name}": there.result,
        "/garment/{name}/keep": there.keep,
        "/garment/{name}/{form}": there.make,
        "/recall": there.recall,
        "/yours": there.yours,
        "/yours/keep": there.keep,
        "/yours/{form}": there.make,
    }
    return [
        *(Route(f"/{{token}}{path}", endpoint, methods=["GET"]) for path, endpoint in get.items()),
        *(Route(f"/{{token}}{path}", endpoint, methods=["POST"]) for path, endpoint in post.items()),
    ]
