"""The files of a project as an editor has them: what is open as it was typed, the rest as it lies on the disk."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable, Iterator
from functools import cached_property, partial
from pathlib import Path
from typing import Final

from msgspec import Struct
from pygls import uris

from blockdsl.analysis.inputs import RememberingReader
from blockdsl.analysis.reading import MOST_BYTES, CannotRead, decode, read_library
from blockdsl.analysis.scope import Scope, bring_together
from blockdsl.diagnostics import Diagnostic, Problems, Source
from blockdsl.editor.edited import EditedSource
from blockdsl.editor.remembered import KeptMemory
from blockdsl.pipeline import Stages, run
from blockdsl.resources import library_names, library_path
from blockdsl.syntax import ast

_MOST_FILES: Final = 2000
_MOST_FOLDERS: Final = 2000
"""What of a project is searched for a name; a folder with more is probably a whole disk."""
_MOST_PARSED: Final = 500
_PASSED_OVER: Final = frozenset({"node_modules", "out", "__pycache__"})
_LIBRARY: Final = "library/"


class Reading:
    """What a file came to: its steps, and all its problems in order; its names when they are asked for."""

    def __init__(self, stages: Stages, problems: tuple[Diagnostic, ...], names: Callable[[], Scope]) -> None:
        """`names` finds the names."""
        self.stages = stages
        self.problems = problems
        self._find = names

    @cached_property
    def names(self) -> Scope:
        """The names that the file knows."""
        return self._find()

    @property
    def file(self) -> ast.File:
        """What the file itself says."""
        return self.names.main


class OpenFile(Struct):
    """A file that is open. `seen` is the state of the project that its reading is of."""

    uri: str
    source: EditedSource
    memory: KeptMemory
    reading: Reading | None = None
    seen: int = -1


class Project:
    """All that is open, and the folders that it belongs to."""

    def __init__(self) -> None:
        """Nothing is open yet."""
        self.folders: list[Path] = []
        self._open: dict[str, OpenFile] = {}
        self._state = 0
        self._on_disk: dict[str, tuple[tuple[int, int], Source]] = {}
        self._shelf: dict[str, Source] = {}
        self._memory = KeptMemory()

    # --- what is open --------------------------------------------------------------------------

    def open(self, uri: str, text: str) -> OpenFile:
        """Take a file over from the editor."""
        name = name_of(uri)
        self._state += 1
        self._open[name] = OpenFile(uri, EditedSource(name, text), KeptMemory())
        return self._open[name]

    def change(self, uri: str, text: str) -> OpenFile:
        """The file has this text now."""
        found = self._open.get(name_of(uri))
        if found is None:
            return self.open(uri, text)
        self._state += 1
        found.source.replace(text)
        return found

    def close(self, uri: str) -> None:
        """The file is as it lies on the disk again."""
        self._state += 1
        self._open.pop(name_of(uri), None)

    def touched(self) -> None:
        """Something on the disk may have changed."""
        self._state += 1

    def opened(self) -> Iterator[OpenFile]:
        """All that is open, in the order in which it was opened."""
        yield from list(self._open.values())

    def file(self, uri: str) -> OpenFile | None:
        """The open file; None where the editor asks for one that it has not opened."""
        return self._open.get(name_of(uri))

    # --- what it comes to ----------------------------------------------------------------------

    def reading(self, file: OpenFile) -> Reading:
        """What the file comes to as all files are now."""
        if file.reading is None or file.seen != self._state:
            problems = Problems()
            file.memory.next_reading()
            reader = self._reader(file.source)
            stages = run(file.source, reader, problems, memory=file.memory)
            names = partial(bring_together, file.source, reader, Problems(), file.memory)
            file.reading, file.seen = Reading(stages, tuple(problems), names), self._state
        return file.reading

    def names_of(self, source: Source) -> Scope:
        """The names that any file of the project knows."""
        found = self._open.get(source.name)
        if found is not None:
            return self.reading(found).names
        return bring_together(source, self._reader(source), Problems(), self._memory)

    def parsed(self, source: Source) -> ast.File:
        """What any file of the project says."""
        if self._memory.size > _MOST_PARSED:
            self._memory = KeptMemory()
        return self._memory.parse(source, Problems())

    def _reader(self, source: Source) -> ProjectReader:
        return ProjectReader(project=self.folder_of(source.name), texts=self)

    def folder_of(self, name: str) -> Path:
        """The folder that a file's `use` lines may not leave."""
        path = Path(name)
        inside = [folder for folder in self.folders if path.is_relative_to(folder)]
        return max(inside, key=lambda folder: len(folder.parts)) if inside else path.parent

    # --- files ---------------------------------------------------------------------------------

    def source(self, name: str) -> Source | None:
        """The file's text, as it is open or as it lies on the disk; None when it cannot be read."""
        if name in self._open:
            return self._open[name].source
        try:
            return self.shelved(name) if name.startswith(_LIBRARY) else self.on_disk(Path(name))
        except (CannotRead, OSError, ValueError):
            return None

    def open_text(self, path: Path) -> Source | None:
        """What the editor has of a file, if it is open."""
        found = self._open.get(str(path))
        return None if found is None else found.source

    def on_disk(self, path: Path) -> Source:
        """A text from the disk; the same one while the file is not written. Errors: CannotRead, OSError."""
        state = path.stat()
        stamp = (state.st_mtime_ns, state.st_size)
        kept = self._on_disk.get(str(path))
        if kept is None or kept[0] != stamp:
            with path.open("rb") as file:
                kept = self._on_disk[str(path)] = stamp, Source(str(path), decode(file.read(MOST_BYTES + 1)))
        return kept[1]

    def shelved(self, name: str) -> Source:
        """A file of the library by the name of its source. Errors: CannotRead."""
        if name not in self._shelf:
            self._shelf[name] = read_library(name.removeprefix(_LIBRARY).removesuffix(".block"))
        return self._shelf[name]

    def all_files(self) -> Iterator[Source]:
        """Every block file that is open or lies in the project's folders."""
        seen = set(self._open)
        for file in self.opened():
            yield file.source
        folders = self.folders or [Path(name).parent for name in self._open if Path(name).is_absolute()]
        for path in _block_files(folders):
            if str(path) not in seen and (source := self.source(str(path))) is not None:
                seen.add(str(path))
                yield source


class ProjectReader(RememberingReader, kw_only=True):
    """Reads what `use` names: files that are open as they were typed."""

    texts: Project

    def used(self, path: str, by: str) -> Source:
        """See `Reader`."""
        if by not in self.shelved:
            wanted = Path(os.path.normpath(Path(by).parent / path))
            if (typed := self.texts.open_text(wanted)) is not None and wanted.is_relative_to(self.project):
                return typed
        found = super().used(path, by)
        try:
            # The same text is the same source, so that what was made of it is found again.
            known = self.texts.source(found.name)
        except RuntimeError:
            return found
        return known if known is not None and known.text == found.text else found

    def library(self, name: str) -> Source:
        """See `Reader`."""
        found = self.texts.shelved(f"{_LIBRARY}{name}.block")
        self.shelved[found.name] = name
        return found

    def _remember(self, path: Path, found: Source) -> None:
        """An editor asks again each time."""


def name_of(uri: str) -> str:
    """What a file is called here: its path, or for a text that was never saved its whole address."""
    path = uris.to_fs_path(uri) if uri.startswith("file:") else None
    return os.path.normpath(path) if path else uri


def uri_of(name: str) -> str:
    """The address of a file, also of the library's."""
    if name.startswith(_LIBRARY):
        library = name.removeprefix(_LIBRARY).removesuffix(".block")
        return library_path(library).resolve().as_uri() if library in library_names() else name
    return Path(name).as_uri() if Path(name).is_absolute() else name


def _block_files(folders: list[Path]) -> Iterator[Path]:
    for count, path in enumerate(files_below(folders, (".block",))):
        if count >= _MOST_FILES:
            return
        yield path


def files_below(folders: Iterable[Path], endings: tuple[str, ...]) -> Iterator[Path]:
    """Files in some folders whose names end so, in order; hidden folders and those of programs are passed over."""
    seen = 0
    for folder in folders:
        for place, below, files in os.walk(folder):
            seen += 1
            if seen > _MOST_FOLDERS:
                return
            below[:] = sorted(name for name in below if not name.startswith(".") and name not in _PASSED_OVER)
            yield from (Path(os.path.normpath(Path(place) / name)) for name in sorted(files) if name.endswith(endings))
