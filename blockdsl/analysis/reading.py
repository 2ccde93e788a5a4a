"""How files come in: one small interface, so that editors and tests can read from memory."""

from __future__ import annotations

import os
from collections.abc import Mapping
from pathlib import Path, PurePosixPath
from typing import Protocol

from blockdsl.diagnostics import Source, nearest_word
from blockdsl.resources import library_names, library_path

MOST_BYTES = 1 << 20


class CannotRead(Exception):
    """A file that cannot be brought in; `code` is the problem's code, `values` fill its message."""

    def __init__(
        self,
        code: str,
        help: str | None = None,  # noqa: A002  the word printed
        near: str | None = None,
        **values: str,
    ) -> None:
        """Keep what the report needs; `near` is the file that was probably meant."""
        super().__init__(code)
        self.code = code
        self.help = help
        self.near = near
        self.values = values


class Reader(Protocol):
    """Brings in what `use` names."""

    def used(self, path: str, by: str) -> Source:
        """The file `path`, relative to the file `by`. Raises CannotRead."""

    def library(self, name: str) -> Source:
        """A file of the library. Raises CannotRead."""

    def binary(self, path: str, by: str, most_bytes: int) -> bytes:
        """The bytes of the file `path`, relative to the file `by`. Raises CannotRead."""


def decode(data: bytes) -> str:
    """Text of a file: UTF-8, with or without a byte order mark; line ends are kept.

    Raises CannotRead when it is too large or not UTF-8.
    """
    if len(data) > MOST_BYTES:
        raise CannotRead("file-too-large", "split it: `use` brings the parts together")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as fault:
        why = f"byte {fault.start + 1} is not UTF-8 text"
        raise CannotRead("file-unreadable", "save the file as UTF-8 text in your editor", why=why) from None


def read_library(name: str) -> Source:
    """A file of the library that comes with blockdsl. Raises CannotRead."""
    if name not in library_names():
        known = ", ".join(f'"{known}"' for known in library_names())
        raise CannotRead("library-unknown", f"the library has {known}", nearest_word(name, library_names()), name=name)
    return Source(f"library/{name}.block", decode(library_path(name).read_bytes()))


class FileReader:
    """Reads from the disk, never outside the project folder."""

    def __init__(self, project: Path) -> None:
        """`project` is the folder that paths may not leave."""
        self._project = project.resolve()

    def used(self, path: str, by: str) -> Source:
        """See Reader."""
        wanted = Path(by).parent / path
        return Source(_shown(wanted), decode(self._read(wanted, path, MOST_BYTES)))

    def binary(self, path: str, by: str, most_bytes: int) -> bytes:
        """See Reader."""
        return self._read(Path(by).parent / path, path, most_bytes)

    def _read(self, wanted: Path, path: str, most_bytes: int) -> bytes:
        real = wanted.resolve()
        if PurePosixPath(path).is_absolute() or not real.is_relative_to(self._project):
            raise CannotRead("use-leaves-project", f"move the file into {self._project.name}/", path=path)
        try:
            if real.exists() and not real.is_file():  # a folder, or a pipe that would be waited for
                what = "it is a folder" if real.is_dir() else "it is no plain file"
                raise CannotRead("file-unreadable", _neighbours(wanted), why=what)
            if (written := _written_otherwise(wanted)) is not None:
                help_text = f"the file is called `{written}`; other systems tell small and capital letters apart"
                near = str(PurePosixPath(path).with_name(written))
                raise CannotRead("use-missing", help_text, near, path=path)
            if real.stat().st_size > most_bytes:
                raise CannotRead("file-too-large", "split it: `use` brings the parts together")
            return real.read_bytes()
        except FileNotFoundError:
            raise CannotRead("use-missing", _neighbours(wanted), _nearest(wanted, path), path=path) from None
        except PermissionError:
            raise CannotRead("file-unreadable", "ask for leave to read it", why="it may not be opened") from None
        except OSError as fault:
            why = (fault.strerror or str(fault)).lower()
            raise CannotRead("file-unreadable", None, why=why) from None

    def library(self, name: str) -> Source:
        """See Reader."""
        return read_library(name)


def _shown(path: Path) -> str:
    """The path as the user would write it: `a/../b.block` is `b.block`."""
    parts: list[str] = []
    for part in path.parts:
        if part == ".." and parts and parts[-1] not in ("..", "/"):
            parts.pop()
        else:
            parts.append(part)
    return str(Path(*parts)) if parts else str(path)


def _written_otherwise(path: Path) -> str | None:
    """The name that a file has on the disk, where the system finds it under one with other small and capital letters.

    Macs and Windows do; the same project would not be found on another machine.
    """
    try:
        names = os.listdir(path.parent)  # noqa: PTH208 - names alone
    except OSError:
        return None
    if path.name in names or path.name in ("", "..", "."):
        return None
    return next((name for name in names if name.casefold() == path.name.casefold()), None)


def _nearest(path: Path, said: str) -> str | None:
    """The file beside a missing one that was probably meant, as it would be said."""
    try:
        near = nearest_word(path.name, [other.name for other in path.parent.glob(f"*{path.suffix}")])
    except (OSError, ValueError):
        return None
    return None if near is None else str(PurePosixPath(said).with_name(near))


def _neighbours(path: Path) -> str | None:
    """The files of its kind beside a missing one, for the help line."""
    kind = path.suffix if path.suffix[1:].isalnum() else ".block"
    try:
        found = sorted(other.name for other in path.parent.glob(f"*{kind}"))[:6]
    except OSError:
        return None
    return f"beside it there is {', '.join(found)}" if found else "paths start from the folder of this file"


class TextReader:
    """Reads from memory: names to texts."""

    def __init__(self, files: Mapping[str, str] | None = None) -> None:
        """`files` maps the names that `use` may say to their texts."""
        self._files = dict(files or {})

    def used(self, path: str, by: str) -> Source:
        """See Reader; `by` plays no part."""
        del by
        if path not in self._files:
            raise CannotRead("use-missing", None, path=path)
        return Source(path, self._files[path])

    def binary(self, path: str, by: str, most_bytes: int) -> bytes:
        """See Reader: there are only texts here."""
        del by, most_bytes
        raise CannotRead("use-missing", None, path=path)

    def library(self, name: str) -> Source:
        """See Reader."""
        return read_library(name)
