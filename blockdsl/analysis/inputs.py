"""Files named on the command line become sources; what cannot be read is a problem like others."""

from __future__ import annotations

import os
import posixpath
import sys
from collections.abc import Callable, Iterable
from glob import glob, has_magic
from hashlib import sha256
from itertools import chain
from pathlib import Path
from typing import Any, Final

from msgspec import Struct, field

from blockdsl.analysis.reading import MOST_BYTES, CannotRead, FileReader, decode
from blockdsl.diagnostics import Problems, Source, Span
from blockdsl.diagnostics.levels import Levels
from blockdsl.resources import library_path

STDIN: Final = "-"
_BYTES: Final = "bytes "
STDIN_NAME: Final = "<stdin>"

LevelsFor = Callable[[Path | None], Levels]
"""How warnings count in a file, by its path; None is standard input."""


class Input(Struct, frozen=True):
    """One file that was asked for: its text, where it lies, and what was found wrong with it.

    `path` is None for standard input. `readable` is whether there is a text at all.
    """

    source: Source
    path: Path | None
    problems: Problems
    readable: bool


def open_inputs(names: Iterable[str], levels: LevelsFor | None = None) -> list[Input]:
    """The inputs in their order; one named twice is read once. `levels` is how warnings count in a file."""
    inputs: list[Input] = []
    seen: set[object] = set()
    for name in chain.from_iterable(map(_matching, names)):
        key = STDIN if name == STDIN else _identity(Path(name))
        if key not in seen:
            seen.add(key)
            inputs.append(open_input(name, levels))
    return inputs


def open_input(name: str, levels: LevelsFor | None = None) -> Input:
    """The file `name`, or standard input for `-`."""
    path = None if name == STDIN else Path(name)
    shown = STDIN_NAME if path is None else str(path)
    problems = Problems() if levels is None else Problems(levels(path))
    try:
        return Input(Source(shown, decode(_bytes_of(path))), path, problems, readable=True)
    except CannotRead as fault:
        source = Source(shown, "")
        values: dict[str, Any] = dict(fault.values)
        problems.report(fault.code, Span(source, 0, 0), help=fault.help, **values)
        return Input(source, path, problems, readable=False)


def _matching(name: str) -> list[str]:
    """The files that a pattern such as `*.block` names, in order: shells of Windows leave that to the command.

    A name that is a file itself, or that nothing matches, is left as it is.
    """
    if name == STDIN or not has_magic(name) or os.path.lexists(name):
        return [name]
    return sorted(glob(name, recursive=True)) or [name]  # noqa: PTH207 - the pattern may begin anywhere


def _identity(path: Path) -> object:
    try:
        return path.resolve()
    except (OSError, RuntimeError, ValueError):  # a ring of links, a path that no system knows
        return path


def _bytes_of(path: Path | None) -> bytes:
    """What is in it, one byte more than may be at the most, so that nothing endless is read to its end."""
    try:
        if path is None:
            return sys.stdin.buffer.read(MOST_BYTES + 1)
        with path.open("rb") as file:
            return file.read(MOST_BYTES + 1)
    except FileNotFoundError:
        raise CannotRead("file-unreadable", _beside(path), why="there is no such file") from None
    except IsADirectoryError:
        raise CannotRead("file-unreadable", "name the files in it", why="it is a folder") from None
    except PermissionError:
        raise CannotRead("file-unreadable", "ask for leave to read it", why="it may not be opened") from None
    except (OSError, ValueError) as fault:
        why = fault.strerror if isinstance(fault, OSError) and fault.strerror else str(fault)
        raise CannotRead("file-unreadable", None, why=why.lower()) from None


def _beside(path: Path | None) -> str | None:
    """The block files that are in the folder, for the help line."""
    try:
        found = sorted(other.name for other in path.parent.glob("*.block"))[:6] if path else []
    except OSError:
        return None
    return f"in that folder there is {', '.join(found)}" if found else None


def project_folder(path: Path | None) -> Path:
    """The folder that `use` may not leave: the current one when the file lies below it, otherwise the file's own."""
    here = Path.cwd()
    if path is None:
        return here
    own = path.resolve().parent
    return here if own.is_relative_to(here) else own


class RememberingReader(Struct):
    """Reads what `use` names and remembers where each file lies, with a digest of the text that was read there.

    `shelved` are the files that came out of the library, by the names that their sources have.
    """

    project: Path
    read: dict[Path, str] = field(default_factory=dict)
    shelved: dict[str, str] = field(default_factory=dict)

    def used(self, path: str, by: str) -> Source:
        """The file `path`, relative to the file `by`. Raises CannotRead."""
        if by in self.shelved:
            return self._beside_on_the_shelf(path, self.shelved[by])
        try:
            found = FileReader(self.project).used(path, by)
        except (RuntimeError, ValueError):  # a ring of links, a path that no system knows
            raise CannotRead("use-missing", None, path=path) from None
        self._remember(Path(found.name), found)
        return found

    def binary(self, path: str, by: str, most_bytes: int) -> bytes:
        """The bytes of the file `path`, relative to the file `by`. Raises CannotRead."""
        try:
            found = FileReader(self.project).binary(path, by, most_bytes)
        except (RuntimeError, ValueError):
            raise CannotRead("use-missing", None, path=path) from None
        self.read.setdefault(Path(by).parent / path, f"{_BYTES}{sha256(found).hexdigest()}")
        return found

    def library(self, name: str) -> Source:
        """A file of the library. Raises CannotRead."""
        found = FileReader(self.project).library(name)
        self.shelved[found.name] = name
        self._remember(library_path(name), found)
        return found

    def _beside_on_the_shelf(self, path: str, by: str) -> Source:
        """A file that a library file uses lies in the library too, wherever the user's own files are."""
        name = posixpath.normpath(posixpath.join(posixpath.dirname(by), path)).removesuffix(".block")
        try:
            return self.library(name)
        except CannotRead:
            raise CannotRead("use-missing", None, path=path) from None

    def _remember(self, path: Path, found: Source) -> None:
        # Of what was read, not of what lies there now: it may have been saved again since.
        self.read.setdefault(path, digest_of(found.text))


def digest_of(text: str) -> str:
    """A digest of a file's text."""
    return sha256(text.encode("utf-8", "surrogatepass")).hexdigest()


def has_digest(path: Path, digest: str) -> bool:
    """Whether what lies there now has the digest of what was read: of its text, or of its bytes."""
    try:
        if not path.is_file():
            return False
        if digest.startswith(_BYTES):
            return digest == f"{_BYTES}{sha256(path.read_bytes()).hexdigest()}"
        with path.open("rb") as file:
            return digest == digest_of(decode(file.read(MOST_BYTES + 1)))
    except (OSError, CannotRead):
        return False
