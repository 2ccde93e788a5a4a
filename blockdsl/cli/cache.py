"""What was made before is kept and not made again: finished bytes in a folder, each under a key of its content.

A key says all that the bytes depend on, so nothing kept is ever out of date; it is only thrown away when the folder
grows too large, what was not used for longest first. Several processes may use one folder at once. Whatever goes
wrong here is not worth a word: the work is done again.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from contextlib import suppress
from hashlib import sha256
from pathlib import Path
from tempfile import mkstemp
from typing import Final

MOST_BYTES: Final = 256 << 20
"""What a cache folder may hold."""

_SHELVES: Final = 16
"""The folder's parts, by the first figure of the key: each is kept in bounds by itself."""

_LOOKED_AT: Final = "0"
"""A shelf is measured only after a key with this last figure, one of sixteen: looking at it takes a while."""

_DIGEST_BYTES: Final = 32
_RUBBISH_AGE_SECONDS: Final = 3600.0


class Cache:
    """Kept bytes by their keys. Without a folder nothing is kept."""

    def __init__(self, folder: Path | None, most_bytes: int = MOST_BYTES) -> None:
        """Keep in `folder`, which is made when something is put into it."""
        self._folder = folder
        self._share = most_bytes // _SHELVES
        self._grown: set[Path] = set()

    @property
    def folder(self) -> Path | None:
        """Where things are kept; None when nothing is."""
        return self._folder

    def get(self, key: str) -> bytes | None:
        """The bytes kept under the key; None when there are none, or when they are not what was put there."""
        if self._folder is None:
            return None
        path = self._place(self._folder, key)
        try:
            entry = path.read_bytes()
        except OSError:
            return None
        data = entry[_DIGEST_BYTES:]
        if sha256(data).digest() != entry[:_DIGEST_BYTES]:
            return None
        with suppress(OSError):
            os.utime(path)  # used just now
        return data

    def has(self, key: str) -> bool:
        """Whether there is something under the key, good or damaged."""
        return self._folder is not None and self._place(self._folder, key).exists()

    def put(self, key: str, data: bytes) -> None:
        """Keep the bytes, whole or not at all."""
        if self._folder is None or len(data) + _DIGEST_BYTES > self._share:
            return
        path = self._place(self._folder, key)
        temporary = None
        try:
            path.parent.mkdir(parents=True, exist_ok=True)
            handle, temporary = mkstemp(suffix=".part", dir=path.parent)
            with os.fdopen(handle, "wb") as file:
                file.write(sha256(data).digest() + data)
            Path(temporary).replace(path)
            if key.endswith(_LOOKED_AT):
                self._grown.add(path.parent)
        except OSError:
            if temporary is not None:
                with suppress(OSError):
                    Path(temporary).unlink()

    def made(self, key: str, make: Callable[[], bytes]) -> bytes:
        """What is kept under the key, or else what `make` gives, which is kept from now on."""
        found = self.get(key)
        if found is None:
            found = make()
            self.put(key, found)
        return found

    def tidy(self) -> None:
        """Bring the parts of the folder that have grown back into bounds."""
        for shelf in sorted(self._grown):
            with suppress(OSError):
                self._thin(shelf)
        self._grown.clear()

    def _thin(self, shelf: Path) -> None:
        entries = [(entry.stat(), entry.path) for entry in os.scandir(shelf)]
        entries.sort(key=lambda pair: (pair[0].st_mtime_ns, pair[1]), reverse=True)
        newest = entries[0][0].st_mtime if entries else 0.0
        held = 0
        for known, path in entries:
            held += known.st_size
            left_over = path.endswith(".part") and newest - known.st_mtime > _RUBBISH_AGE_SECONDS
            if held > self._share or left_over:
                with suppress(OSError):
                    Path(path).unlink()

    @staticmethod
    def _place(folder: Path, key: str) -> Path:
        return folder / key[0] / key[1:]


def usual_folder() -> Path | None:
    """Where programs of this system keep what they can make again; None for somebody who has no home folder."""
    given = os.environ.get("XDG_CACHE_HOME", "")
    if given and Path(given).is_absolute():
        return Path(given) / "blockdsl"
    try:
        home = Path.home()
    except RuntimeError:
        return None
    return home / ("Library/Caches" if sys.platform == "darwin" else ".cache") / "blockdsl" if home.is_dir() else None
