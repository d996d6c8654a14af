"""The requests that are answered."""

from __future__ import annotations

from collections.abc import AsyncIterator, Awaitable, Callable, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass, field

from starlette.applications import Starlette
from starlette.exceptions import HTTPException
from starlette.requests import Request
from starlette.responses import HTMLResponse, Response
from starlette.routing import Route
from starlette.types import ASGIApp

from walewright import languages, world
from walewright.cli import remembered
from walewright.serve import working
from walewright.serve.bodies import BodyUnreadable, posted
from walewright.serve.given import filled
from walewright.serve.model import PageAnswer, PageResult, Posted, ServedGarment, TakenFile
from walewright.serve.pages import FORMATS, Pages
from walewright.serve.pool import Limits, Unfinished, WorkPool
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


@dataclass(frozen=True)
class Serving:
    """All that answers have in common. `today` is an ISO date."""

    garments: Sequence[ServedGarment]
    door: Door
    pages: Pages
    language: str
    today: str
    pool: WorkPool
    covers: dict[str, bytes] = field(default_factory=dict)

    def garment(self, request: Request) -> ServedGarment:
        """The one that the address names. Nothing else of an address leads to a file."""
        found = next((g for g in self.garments if g.name == request.path_params["name"]), None)
        if found is None:
            raise HTTPException(404)
        return found

    async def gallery(self, request: Request) -> Response:
        return HTMLResponse(self.pages.gallery(self.garments))

    async def cover(self, request: Request) -> Response:
        garment = self.garment(request)
        if garment.name not in self.covers:
            drawn = await self.pool.in_the_background(working.cover, garment, self.language)
            if isinstance(drawn, Unfinished) or not drawn:
                raise HTTPException(404)
            self.covers[garment.name] = drawn.encode()
        return Response(self.covers[garment.name], media_type="image/svg+xml", headers={"cache-control": "private,max-age=3600"})

    async def form(self, request: Request) -> Response:
        garment = self.garment(request)
        return self._answered(garment, {}, await self.pool.work(working.form, garment, {}, self.language))

    async def result(self, request: Request) -> Response:
        garment, given = self.garment(request), await posted(request)
        return await self._finished(garment, given, await self.pool.work(working.worked, garment, given, self.language, self.today))

    async def make(self, request: Request) -> Response:
        garment, given, form = self.garment(request), await posted(request), request.path_params["form"]
        if form not in FORMATS:
            raise HTTPException(404)
        found = await self.pool.work(working.made, garment, given, self.language, self.today, form)
        return await self._finished(garment, given, found)

    async def keep(self, request: Request) -> Response:
        garment, given = self.garment(request), await posted(request)
        return await self._finished(garment, given, await self.pool.work(working.kept, garment, given, self.language))

    async def recall(self, request: Request) -> Response:
        """What a file remembers, for the garment that it names, or the one that it was given to."""
        given = await posted(request)
        text = given.get("file", "").strip() or given.get("pasted", "")
        found = remembered.read(text)
        if not isinstance(found, remembered.Remembered):
            return HTMLResponse(self.pages.gallery(self.garments, text, found), 422)
        name = given.get("garment") or found.garment
        garment = next((g for g in self.garments if g.name == name), None)
        if garment is None:
            return HTMLResponse(self.pages.gallery(self.garments, text, "garment"), 422)
        fields = dict(found.fields)
        answer = await self.pool.work(working.recalled, garment, fields, self.language, self.today)
        return await self._finished(garment, filled(fields), answer)

    async def own(self, request: Request) -> Response:
        name = request.path_params["file"]
        if name not in OWN:
            raise HTTPException(404)
        return Response(world.package_text(f"serve/{name}"), media_type=OWN[name])

    async def _finished(self, garment: ServedGarment, given: Posted, found: PageAnswer | TakenFile | Unfinished) -> Response:
        """The answer; where the work came to nothing, the form all the same, with what was filled in."""
        if not isinstance(found, Unfinished):
            return self._answered(garment, given, found)
        form = await self.pool.work(working.form, garment, given, self.language)
        if isinstance(form, Unfinished):
            return self._answered(garment, given, found)
        return self._answered(garment, given, PageAnswer(form.offer, form.values, form.stray, PageResult(found.why)))

    def _answered(self, garment: ServedGarment, given: Posted, found: PageAnswer | TakenFile | Unfinished) -> Response:
        if isinstance(found, TakenFile):
            suffix = found.name[found.name.rindex(".") :]
            # Names are those of sources, which the page's own list has.
            name = "".join(c if c.isascii() and (c.isalnum() or c in "-_.") else "_" for c in found.name)
            headers = {"content-disposition": f'attachment;filename="{name}"'}
            return Response(found.data, media_type=TYPES[suffix], headers=headers)
        if isinstance(found, Unfinished):
            return HTMLResponse(self.pages.unfinished(garment, given, PageResult(found.why)), STATUS[found.why])
        state = found.result.state if found.result is not None else "proven"
        return HTMLResponse(self.pages.garment(garment, found), STATUS.get(state, 200))


def serving(garments: Sequence[ServedGarment], door: Door, language: str, today: str, limits: Limits | None = None) -> ASGIApp:
    """The application that answers at `door`."""
    guide = languages.printed(language).guide
    pool = WorkPool(limits or Limits())
    there = Serving(garments, door, Pages(guide, f"/{door.token}"), language, today, pool)

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
    }
    post: dict[str, Endpoint] = {
        "/garment/{name}": there.result,
        "/garment/{name}/keep": there.keep,
        "/garment/{name}/{form}": there.make,
        "/recall": there.recall,
    }
    return [
        *(Route(f"/{{token}}{path}", endpoint, methods=["GET"]) for path, endpoint in get.items()),
        *(Route(f"/{{token}}{path}", endpoint, methods=["POST"]) for path, endpoint in post.items()),
    ]
