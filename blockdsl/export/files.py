"""Files written whole or not at all: nobody ever reads half a sheet, and a failure leaves the old file as it was."""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping
from contextlib import suppress
from pathlib import Path
from typing import Final

READABLE: Final = 0o666
_PART: Final = ".part"


def write_whole(path: Path, data: bytes) -> None:
    """Write one file; its folder is made where it is missing.

    Errors: OSError of the system, with the old file untouched and nothing left over.
    """
    write_all({path: data})


def write_all(files: Mapping[Path, bytes]) -> None:
    """Write all the files or none: each goes beside its place first, and only when all are on the disk do they move in.

    Errors: OSError of the system. Where it comes before the moving, nothing has changed. Should a move itself fail
            (somebody deletes the folder at that very moment), the files already moved stay.
    """
    waiting: dict[Path, Path] = {}
    try:
        for path, data in files.items():
            waiting[path] = _write_beside(path, data)
        for path in files:
            if path.is_dir():  # found before anything moves, for os.replace would find it in the middle
                raise IsADirectoryError(21, os.strerror(21), str(path))
        for path in files:
            waiting[path].replace(path)
            del waiting[path]
    finally:
        for left in waiting.values():
            with suppress(OSError):
                left.unlink()


def _write_beside(path: Path, data: bytes) -> Path:
    from tempfile import mkstemp  # noqa: PLC0415 - `check` writes nothing, and starts the sooner

    path.parent.mkdir(parents=True, exist_ok=True)
    handle, name = mkstemp(prefix=f".{path.name[:40]}.", suffix=_PART, dir=path.parent)
    temporary = Path(name)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        temporary.chmod(READABLE & ~umask())  # mkstemp's own files are for nobody else to read
    except BaseException:
        temporary.unlink(missing_ok=True)
        raise
    return temporary


def umask() -> int:
    """What the user keeps from others; the system tells it only to those who set it."""
    mask = os.umask(0)
    os.umask(mask)
    return mask


def identities(path: Path) -> Iterator[object]:
    """What a path is, whatever it is called: where it leads to, and which file the system has there."""
    yield os.path.realpath(path)
    try:
        there = path.stat()
    except (OSError, ValueError):
        return
    yield there.st_dev, there.st_ino
