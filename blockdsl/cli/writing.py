"""Outputs into their folders: never over an input, a file that is not ours, or what another file's build made."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from hashlib import sha256
from pathlib import Path
from typing import Final

from msgspec import Struct

from blockdsl.cli.saying import in_words
from blockdsl.cli.status import CannotGoOn
from blockdsl.export.files import identities
from blockdsl.export.naming import slug
from blockdsl.export.output_folder import Busy, OutputFolder, Refused

BOOK: Final = "--book"
CHECK_PRINT: Final = "--check-print"
RULES: Final = "--depfile"
GALLERY: Final = "gallery"
DOCUMENTATION: Final = "docs"
SQUARES: Final = "grid"
"""Who has made what no file alone declares."""


class Clash(Struct, frozen=True):
    """An output that another file has made, and makes still, with other contents."""

    path: Path
    other: Path


class Writer:
    """Writes what one run of a command makes."""

    def __init__(self, inputs: Iterable[Path]) -> None:
        """`inputs` are all files that were read: nothing is ever written over one of them."""
        self._inputs = tuple(dict.fromkeys(inputs))
        self._identities = {identity for path in self._inputs for identity in identities(path)}
        self._folders: dict[str, OutputFolder] = {}
        self._planned: dict[str, str] = {}
        self.written: list[Path] = []

    def folder(self, path: Path) -> OutputFolder:
        """The folder there, with its record."""
        key = os.path.realpath(path)
        if key not in self._folders:
            self._folders[key] = OutputFolder(path, _format_waiting)
        return self._folders[key]

    def plan(self, path: Path, what: str) -> None:
        """Announce an output before anything is written; `what` says what it is for the message.

        Errors: CannotGoOn where it would replace an input or another output of this run.
        """
        if self._is_input(path):
            raise CannotGoOn(f"{path} is read by this build, so {what} cannot be written there; give it another name")
        key = os.path.realpath(path)
        if key in self._planned:
            raise CannotGoOn(
                f"{path} would be written twice, as {self._planned[key]} and as {what}; rename one of them"
            )
        self._planned[key] = what

    def refuse_strangers(self, paths: Iterable[Path]) -> None:
        """Before anything is written: see that each path is free, or holds what blockdsl wrote there.

        Errors: CannotGoOn.
        """
        by_folder: dict[Path, list[str]] = {}
        for path in paths:
            by_folder.setdefault(path.parent, []).append(path.name)
        for folder, names in by_folder.items():
            with _plainly(folder):
                self.folder(folder).refuse_strangers(names)

    def put(
        self, folder: Path, files: Mapping[str, bytes], by: Path | str | None, of: Mapping[str, str] | None = None
    ) -> list[Path]:
        """Write files into a folder, all as one step; their paths. `by` is the file that was built, or what made them.

        Errors: CannotGoOn.
        """
        place = self.folder(folder)
        for name in files:
            if self._is_input(folder / name):
                raise CannotGoOn(f"{folder / name} is read by this build and is not written over")
        with _plainly(folder):
            place.write(files, maker(place, by), of or {})
        paths = [folder / name for name in files]
        self.written += paths
        return paths

    def clashes(
        self, folder: Path, files: Mapping[str, bytes], by: Path | None, of: Mapping[str, str]
    ) -> tuple[list[Clash], set[str]]:
        """Which of the files another file's build has made differently; and which are to be left to that file.

        What a file only brings in is left to the file that declares it, once that has been built into this folder.
        """
        place = self.folder(folder)
        with _plainly(folder):
            known = place.known()
        mine = maker(place, by)
        found: list[Clash] = []
        left: set[str] = set()
        for name, data in files.items():
            entry = known.get(name)
            if entry is None or sha256(data).hexdigest() == entry.digest:
                continue
            others = [other for other in entry.by if other != mine and _makes_it_still(place, other, entry.of, name)]
            if not others:
                continue
            if entry.of != of.get(name, mine):
                found.append(Clash(folder / name, place.lies(others[0])))
            elif entry.of in others:
                left.add(name)
        return found, left

    def _is_input(self, path: Path) -> bool:
        return any(identity in self._identities for identity in identities(path))


def maker(place: OutputFolder, by: Path | str | None) -> str:
    """Who made a file, as the record of a folder has it."""
    return place.told(by) if isinstance(by, Path) else by or "<stdin>"


def _makes_it_still(place: OutputFolder, other: str, of: str, name: str) -> bool:
    """Whether the other file is there and what declares the output still has something of that name."""
    if other.startswith(("--", "<")) or not place.lies(other).exists():
        return False
    declares = place.lies(of)
    try:
        text = (declares if declares.exists() else place.lies(other)).read_text(encoding="utf-8-sig")
    except (OSError, ValueError):
        return False
    return any(name.startswith((f"{stem}.", f"{stem}-")) for stem in titles(text))


def titles(text: str) -> Iterator[str]:
    """The names, as parts of file names, of all blocks, quilts and books that a text declares."""
    from blockdsl.diagnostics import Problems, Source
    from blockdsl.syntax.ast import BlockDeclaration, BookDeclaration, QuiltDeclaration
    from blockdsl.syntax.parse import parse

    for declaration in parse(Source("", text), Problems()).declarations:
        if isinstance(declaration, BlockDeclaration | BookDeclaration | QuiltDeclaration):
            yield slug(declaration.name.text)


@contextmanager
def _plainly(folder: Path) -> Iterator[None]:
    """What goes wrong with files, in plain words."""
    try:
        yield
    except Refused as fault:
        raise CannotGoOn(f"{fault.path} {fault.why}; move it away, or name another folder with -o") from fault
    except Busy as fault:
        raise CannotGoOn(
            f"another build has been writing to {folder} for minutes; try again when it is done"
        ) from fault
    except OSError as fault:
        name = _named(fault, folder)
        # A viewer on Windows keeps others from the file that it shows.
        shown = isinstance(fault, PermissionError) and Path(name).is_file() and os.access(Path(name).parent, os.W_OK)
        advice = "; if another program shows it, close it there" if shown else ""
        raise CannotGoOn(f"{name} cannot be written: {in_words(fault)}{advice}") from fault


def _named(fault: OSError, folder: Path) -> str:
    """The file that the system speaks of; our own names for files that are not whole yet mean nothing to anybody."""
    name = str(fault.filename2 or fault.filename or folder)
    return str(folder) if ".blockdsl" in name else name


def _format_waiting(folder: Path) -> None:
    sys.stderr.write(f"waiting for another build that is writing to {folder}\n")
