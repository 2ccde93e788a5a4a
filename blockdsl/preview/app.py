"""The answers to what the page asks."""

from __future__ import annotations

import asyncio
import json
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from functools import cache, partial
from importlib.resources import files
from typing import Any, Final

from starlette.applications import Starlette
from starlette.concurrency import run_in_threadpool
from starlette.requests import Request
from starlette.responses import JSONResponse, PlainTextResponse, Response, StreamingResponse
from starlette.routing import Route

from blockdsl.analysis.override import WhatIf
from blockdsl.export.html.fonts import shipped_bytes
from blockdsl.facts import BlockFacts, QuiltFacts
from blockdsl.fonts import FontWeight
from blockdsl.marks.theme import PAPERS
from blockdsl.preview.downloads import downloads_of
from blockdsl.preview.frames import Film
from blockdsl.preview.guard import Guard
from blockdsl.preview.seen import Seen
from blockdsl.preview.view import SETTINGS, SIZES, view_of

_STATIC: Final = {
    "": ("page.html", "text/html; charset=utf-8"),
    "preview.css": ("preview.css", "text/css; charset=utf-8"),
    "preview.js": ("preview.js", "text/javascript; charset=utf-8"),
}
_FONTS: Final[dict[str, FontWeight]] = {"regular.woff2": "regular", "bold.woff2": "bold"}
_LONGEST: Final = 4_096
"""Bytes of what an editor tells of its cursor."""
_HEARTBEAT_S: Final = 15.0


class Changes:
    """Wakes everyone who waits for a change; `told` may be called from any thread."""

    def __init__(self, pointed: Callable[[str, int], None] | None = None) -> None:
        """Nobody waits yet. `pointed` is told the file and line of a patch that is chosen on the page."""
        self.pointed = pointed
        self._waiting: set[asyncio.Event] = set()
        self._loop: asyncio.AbstractEventLoop | None = None
        self.over = False

    def begin(self) -> None:
        """Those who wait are in this loop."""
        self._loop = asyncio.get_running_loop()

    def told(self) -> None:
        """There is something new."""
        if self._loop is not None and not self._loop.is_closed():
            self._loop.call_soon_threadsafe(self._wake)

    def _wake(self) -> None:
        for event in self._waiting:
            event.set()

    async def events(self, seen: Seen) -> AsyncIterator[str]:
        """The number of each reading as an event stream, the present one first."""
        event = asyncio.Event()
        self._waiting.add(event)
        try:
            while not self.over:
                yield f"data: {seen.number}\n\n"
                event.clear()
                try:
                    await asyncio.wait_for(event.wait(), _HEARTBEAT_S)
                except TimeoutError:
                    yield ": still here\n\n"
        finally:
            self._waiting.discard(event)


@cache
def _static(name: str) -> bytes:
    return (files("blockdsl.preview") / "static" / name).read_bytes()


class Answers:
    """The page, its data, its events and its files, of one file that is looked at."""

    def __init__(self, seen: Seen, changes: Changes) -> None:
        """Answer for this file."""
        self.seen = seen
        self.changes = changes
        self._films: dict[int, tuple[BlockFacts, Film]] = {}

    async def static(self, name: str, _: Request) -> Response:
        """The page, its style and its script."""
        file, media = _STATIC[name]
        return Response(_static(file), media_type=media)

    async def font(self, name: str, _: Request) -> Response:
        """The typeface of the drawings."""
        return Response(shipped_bytes(_FONTS[name]), media_type="font/woff2")

    async def data(self, request: Request) -> Response:
        """What the page shows, as chosen."""
        what_if = _what_if(request)
        item = _number(request, "item")
        return JSONResponse(await run_in_threadpool(view_of, self.seen, what_if, item))

    async def frame(self, request: Request) -> Response:
        """One moment of the sewing."""
        return await run_in_threadpool(self._frame, request)

    def _frame(self, request: Request) -> Response:
        item = self._item(request)
        if not isinstance(item, BlockFacts):
            return PlainTextResponse("not found\n", 404)
        kept, film = self._films.get(0, (None, None))
        if film is None or kept is not item:
            film = Film.of(item)
            self._films[0] = (item, film)
        if not film.frames:
            return PlainTextResponse("not found\n", 404)
        number = min(max(_number(request, "frame"), 0), len(film.frames) - 1)
        return JSONResponse(film.drawn(number))

    async def download(self, request: Request) -> Response:
        """A file to take away."""
        return await run_in_threadpool(self._download, request)

    def _download(self, request: Request) -> Response:
        item = self._item(request)
        found = downloads_of(item, _paper(request)).get(request.path_params["name"]) if item is not None else None
        if found is None:
            return PlainTextResponse("not found\n", 404)
        told = {"Content-Disposition": f'attachment; filename="{found.name}"'}
        return Response(found.make(), media_type=found.media, headers=told)

    async def listed(self, request: Request) -> Response:
        """The files that there are to take away."""
        item = await run_in_threadpool(self._item, request)
        found = downloads_of(item, _paper(request)) if item is not None else {}
        return JSONResponse([{"word": word, "title": each.title, "name": each.name} for word, each in found.items()])

    async def events(self, _: Request) -> Response:
        """A line whenever there is something new."""
        return StreamingResponse(self.changes.events(self.seen), media_type="text/event-stream")

    async def cursor(self, request: Request) -> Response:
        """Where an editor's cursor stands: `{"file": …, "line": …}`."""
        place = await _place(request)
        if place is None:
            return PlainTextResponse("say a file and a line\n", 400)
        self.seen.moved(*place)
        self.changes.told()
        return Response(status_code=204)

    async def chosen(self, request: Request) -> Response:
        """The line of a patch that was chosen, for the editor to go to: one of a file that was read."""
        place = await _place(request)
        if place is None:
            return PlainTextResponse("say a file and a line\n", 400)
        if self.changes.pointed is not None and place[0] in {str(path) for path in self.seen.last.paths}:
            self.changes.pointed(*place)
        return Response(status_code=204)

    def _item(self, request: Request) -> BlockFacts | QuiltFacts | None:
        reading = self.seen.reading(_what_if(request))
        if reading is None:
            return None
        facts = reading.stages.facts
        items: list[BlockFacts | QuiltFacts] = [*facts.quilts, *facts.blocks]
        place = _number(request, "item")
        return items[place if 0 <= place < len(items) else 0] if items else None


async def _place(request: Request) -> tuple[str, int] | None:
    """A file and a line of it; None for anything else."""
    body = await request.body()
    try:
        told = json.loads(body) if len(body) <= _LONGEST else None
    except (ValueError, RecursionError):
        return None
    if not isinstance(told, dict):
        return None
    file, line = told.get("file"), told.get("line")
    return (file, line) if isinstance(file, str) and type(line) is int else None


def _number(request: Request, name: str) -> int:
    text = request.query_params.get(name, "0")
    return int(text) if text.isascii() and text.isdigit() and len(text) < len("1000000") else 0


def _paper(request: Request) -> str:
    name = request.query_params.get("paper", "")
    return name if name in PAPERS else next(iter(PAPERS))


def _what_if(request: Request) -> WhatIf:
    """What is chosen; words that nobody can have chosen change nothing."""
    setting: Any = request.query_params.get("setting", "")
    return WhatIf(
        size=SIZES.get(request.query_params.get("size", "")),
        pattern=setting if setting in SETTINGS else None,
        colourway=request.query_params.get("colourway") or None,
    )


def app_of(seen: Seen, changes: Changes, word: str, port: int) -> Guard:
    """The whole, behind its guard."""
    answers = Answers(seen, changes)

    @asynccontextmanager
    async def living(_: Starlette) -> AsyncIterator[None]:
        changes.begin()
        yield

    routes = [
        *(Route(f"/{word}/{name}", partial(answers.static, name), methods=["GET"]) for name in _STATIC),
        *(Route(f"/{word}/{name}", partial(answers.font, name), methods=["GET"]) for name in _FONTS),
        Route(f"/{word}/data", answers.data),
        Route(f"/{word}/frame", answers.frame),
        Route(f"/{word}/files", answers.listed),
        Route(f"/{word}/files/{{name}}", answers.download),
        Route(f"/{word}/events", answers.events),
        Route(f"/{word}/cursor", answers.cursor, methods=["POST"]),
        Route(f"/{word}/chosen", answers.chosen, methods=["POST"]),
    ]
    return Guard(Starlette(routes=routes, lifespan=living), word, port)
