"""What was made before is kept and not made again: finished bytes in a folder, each under a key of its content.

A key says all that the bytes depend on, so nothing kept is ever out of date; it is only thrown away when the folder
grows too large, what was not used for longest first. Several processes may use one folder at once. Whatever goes
wrong here is not worth a word: the work is done again.
"""

from __future__ import annotations

import os
from argparse import Namespace
from collections.abc import Callable
from contextlib import suppress
from hashlib import sha256
from pathlib import Path
from stat import S_IMODE, S_ISDIR, S_ISREG
from typing import Final

MOST_BYTES: Final = 256 << 20
"""What a cache folder may hold."""

_SHELVES: Final = 16
"""The folder's parts, by the first figure of the key: each is kept in bounds by itself."""

_LOOKED_AT: Final = "0"
"""A shelf is measured only after a key with this last figure, one of sixteen: looking at it takes a while."""

_DIGEST_BYTES: Final = 32
_KEY_LENGTH: Final = 63
"""A key's figures but for the first, which names the shelf."""

_FIGURES: Final = frozenset("0123456789abcdef")
_BEGUN: Final = "blockdsl-"
_PART: Final = ".part"
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
        if self._folder is None or not key:
            return None
        path = self._place(self._folder, key)
        entry = _read(path, self._share)
        if entry is None:
            return None
        data = entry[_DIGEST_BYTES:]
        if sha256(data).digest() != entry[:_DIGEST_BYTES]:
            return None
        with suppress(OSError):
            os.utime(path)  # used just now
        return data

    def has(self, key: str) -> bool:
        """Whether there is something under the key, good or damaged."""
        return self._folder is not None and self._place(self._folder, key).is_file()

    def put(self, key: str, data: bytes) -> None:
        """Keep the bytes, whole or not at all."""
        if self._folder is None or not key or len(data) + _DIGEST_BYTES > self._share:
            return
        from tempfile import mkstemp

        path = self._place(self._folder, key)
        temporary = None
        try:
            path.parent.mkdir(parents=True, exist_ok=True)
            handle, temporary = mkstemp(prefix=_BEGUN, suffix=_PART, dir=path.parent)
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
        entries = [(entry.stat(), entry.path) for entry in os.scandir(shelf) if _is_entry(entry.path)]
        entries.sort(key=lambda pair: (pair[0].st_mtime_ns, pair[1]), reverse=True)
        newest = entries[0][0].st_mtime if entries else 0.0
        held = 0
        for known, path in entries:
            held += known.st_size
            left_over = path.endswith(_PART) and newest - known.st_mtime > _RUBBISH_AGE_SECONDS
            if held > self._share or left_over:
                with suppress(OSError):
                    Path(path).unlink()

    @staticmethod
    def _place(folder: Path, key: str) -> Path:
        return folder / key[0] / key[1:]


def _read(path: Path, most_bytes: int) -> bytes | None:
    """All of a plain file that is not too large; None for a pipe, a device, a link, or nothing."""
    try:
        # A pipe would be waited for at its opening already.
        handle = os.open(path, os.O_RDONLY | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_NONBLOCK", 0))
    except OSError:
        return None
    try:
        known = os.fstat(handle)
        if not S_ISREG(known.st_mode) or known.st_size > most_bytes:
            return None
        return os.read(handle, most_bytes + 1)
    except OSError:
        return None
    finally:
        os.close(handle)


def _is_entry(path: str) -> bool:
    """Whether a file has a name such as we give: nothing else is ever taken away."""
    name = Path(path).name
    return name.endswith(_PART) if name.startswith(_BEGUN) else len(name) == _KEY_LENGTH and set(name) <= _FIGURES


def asked_cache(arguments: Namespace) -> Cache:
    """The cache that the options `--cache` and `--no-cache` ask for."""
    if arguments.no_cache:
        return Cache(None)
    return Cache(Path(arguments.cache) if arguments.cache else usual_folder())


def usual_folder() -> Path | None:
    """Where programs of this system keep what they can make again, open to nobody but the user.

    None for somebody who has no home folder, and where the folder is not the user's own.
    """
    folder = _usual_place()
    return folder if folder is not None and _is_private(folder) else None


def _is_private(folder: Path) -> bool:
    """Whether the folder is ours alone; it is made so, and shut to others where it was open."""
    if not hasattr(os, "getuid"):
        return True
    try:
        folder.parent.mkdir(parents=True, exist_ok=True)
        folder.mkdir(mode=0o700, exist_ok=True)
        known = folder.lstat()
        if not S_ISDIR(known.st_mode) or known.st_uid != os.getuid():
            return False
        if S_IMODE(known.st_mode) & 0o077:
            folder.chmod(0o700)
    except OSError:
        return False
    return True


def _usual_place() -> Path | None:
    from platformdirs import user_cache_path

    try:
        place = user_cache_path("blockdsl", appauthor=False)
        home = Path.home()
    except (RuntimeError, OSError):
        return None
    return place if home.is_dir() or not place.is_relative_to(home) else None
