"""Serving the page on this machine, and watching the files that it shows."""

from __future__ import annotations

import socket
import time
from collections.abc import Callable
from pathlib import Path
from secrets import token_urlsafe
from threading import Event, Thread
from typing import Final

import uvicorn

from blockdsl.preview.app import Changes, app_of
from blockdsl.preview.guard import LOOPBACK
from blockdsl.preview.seen import Seen
from blockdsl.watching import wait_for_save

_LETTERS: Final = 16
"""Bytes of chance in the address."""


class Preview:
    """One file that is shown at an address on this machine."""

    def __init__(self, path: Path, port: int = 0, pointed: Callable[[str, int], None] | None = None) -> None:
        """Take a port, any free one for 0, and read the file; `pointed` is told which line's patch is chosen.

        Errors: OSError for a port that cannot be had.
        """
        self._socket = socket.create_server((LOOPBACK, port))
        taken: int = self._socket.getsockname()[1]
        word = token_urlsafe(_LETTERS)
        self.address = f"http://{LOOPBACK}:{taken}/{word}/"
        self._began_ns = time.time_ns()
        self.seen = Seen(path)
        self._changes = Changes(pointed)
        self._stop = Event()
        config = uvicorn.Config(
            app_of(self.seen, self._changes, word, taken),
            log_level="critical",
            access_log=False,
            timeout_graceful_shutdown=1,
            ws="none",
        )
        self._server = uvicorn.Server(config)

    def run(self, when_ready: Callable[[], None] = lambda: None) -> None:
        """Serve until `stop` is called or Ctrl+C is pressed; a page that is open does not hold it up."""
        watcher = Thread(target=self._watch, daemon=True)
        watcher.start()
        when_ready()
        try:
            self._server.run(sockets=[self._socket])
        finally:
            self.stop()
            watcher.join(timeout=2)
            self._socket.close()

    def stop(self) -> None:
        """End it, from any thread."""
        self._stop.set()
        self._changes.over = True
        self._changes.told()
        self._server.should_exit = True

    def typed(self, text: str | None) -> None:
        """Show what an editor has and has not saved; None for what lies on the disk."""
        self.seen.typed(text)
        self._changes.told()

    def moved(self, file: str, line: int) -> None:
        """Light the patches that are drawn by the line at an editor's cursor."""
        self.seen.moved(file, line)
        self._changes.told()

    def _watch(self) -> None:
        """Read again whenever one of the files is saved, also those that could not be read before."""
        began = self._began_ns
        while not self._stop.is_set():
            wait_for_save(self.seen.last.paths, began, self._stop)
            began = time.time_ns()
            if not self._stop.is_set():
                self.seen.again()
                self._changes.told()
