"""Who may ask: the browser on this machine that was given the address, and nobody else.

Any page that is open in the same browser could ask this machine for things, and a name on the web can be made to lead
here after its page was loaded (DNS rebinding). So the Host must be one of ours, another page's Origin is refused, and
the path begins with a word that cannot be guessed.
"""

from __future__ import annotations

from secrets import compare_digest
from typing import Final

from starlette.requests import Request
from starlette.responses import PlainTextResponse, Response
from starlette.types import ASGIApp, Receive, Scope, Send

LOOPBACK: Final = "127.0.0.1"
_POLICY: Final = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; "
    "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
HEADERS: Final = {
    "Content-Security-Policy": _POLICY,
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
    "Cache-Control": "no-store",
}


class Guard:
    """Lets through what the page itself asks; everything else is answered with 403 or 404, which say nothing."""

    def __init__(self, app: ASGIApp, word: str, port: int) -> None:
        """Guard `app`, whose paths begin with `/word`, on this port of this machine."""
        self._app = app
        self._word = word
        self._hosts = {f"{LOOPBACK}:{port}", f"localhost:{port}"}

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer a request, or refuse it."""
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return
        refused = self._refused(Request(scope))
        if refused is not None:
            await refused(scope, receive, send)
            return
        await self._app(scope, receive, _with_headers(send))

    def _refused(self, request: Request) -> Response | None:
        host = request.headers.get("host", "").lower()
        if host not in self._hosts:
            return PlainTextResponse("not here\n", 403, HEADERS)
        origin = request.headers.get("origin")
        if origin is not None and origin not in {f"http://{each}" for each in self._hosts}:
            return PlainTextResponse("not for other pages\n", 403, HEADERS)
        # `none` is what was typed or opened from outside the browser.
        if request.headers.get("sec-fetch-site", "none") not in ("none", "same-origin"):
            return PlainTextResponse("not for other pages\n", 403, HEADERS)
        first = request.url.path.split("/")[1] if request.url.path.startswith("/") else ""
        if not compare_digest(first.encode(), self._word.encode()):
            return PlainTextResponse("not found\n", 404, HEADERS)
        return None


def _with_headers(send: Send) -> Send:
    async def told(message: dict[str, object]) -> None:
        if message["type"] == "http.response.start":
            known = list(message.get("headers", []))  # type: ignore[call-overload]
            names = {name.lower() for name, _ in known}
            known += [
                (name.lower().encode(), value.encode())
                for name, value in HEADERS.items()
                if name.lower().encode() not in names
            ]
            message = {**message, "headers": known}
        await send(message)

    return told  # type: ignore[return-value]
