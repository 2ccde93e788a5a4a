"""Previews that an editor has opened: they show what is typed, light what the cursor's line draws, and point back."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from threading import Lock, Thread

from blockdsl.preview.serving import Preview

Pointed = Callable[[str, int], None]
"""What is done when a patch is chosen on a page: its file and line."""


class Previews:
    """The previews of an editor's files, each in threads of its own, so that no key waits for a drawing."""

    def __init__(self, pointed: Pointed) -> None:
        """None is open yet."""
        self._pointed = pointed
        self._open: dict[str, tuple[Preview, Thread]] = {}
        self._typed: dict[str, str] = {}
        self._lines: dict[str, int] = {}
        self._lock = Lock()
        self._reader = ThreadPoolExecutor(1, "preview")

    def open(self, name: str, text: str) -> str:
        """The address of a file's preview, which is begun where there is none.

        Errors: OSError where this machine gives no port.
        """
        if name not in self._open:
            preview = Preview(Path(name), pointed=self._pointed)
            serving = Thread(target=preview.run, daemon=True)
            serving.start()
            self._open[name] = preview, serving
            self.typed(name, text)
        return self._open[name][0].address

    def typed(self, name: str, text: str) -> None:
        """The file has this text now; of several in a row the last one is drawn."""
        if name in self._open:
            with self._lock:
                is_first = name not in self._typed
                self._typed[name] = text
            if is_first:
                self._reader.submit(self._read, name)

    def _read(self, name: str) -> None:
        with self._lock:
            text = self._typed.pop(name)
        if name in self._open:
            self._open[name][0].typed(text)

    def moved(self, name: str, line: int) -> None:
        """The cursor stands in this line, from 1."""
        if name in self._open and self._lines.get(name) != line:
            self._lines[name] = line
            self._open[name][0].moved(name, line)

    def close(self, name: str) -> None:
        """The editor has closed the file: its preview ends."""
        if name in self._open:
            preview, serving = self._open.pop(name)
            preview.stop()
            serving.join(timeout=3)

    def end(self) -> None:
        """All previews end."""
        for name in list(self._open):
            self.close(name)
        self._reader.shutdown(wait=False, cancel_futures=True)
