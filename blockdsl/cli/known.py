"""`blockdsl known`: whether a block, or one of its units, is one that the library or the maker's folders have."""

from __future__ import annotations

import json
from argparse import Namespace
from collections.abc import Iterable, Iterator, Sequence
from pathlib import Path
from typing import Final

from msgspec import Struct

from blockdsl import pipeline
from blockdsl.analysis.inputs import Input, RememberingReader, open_input, open_inputs, project_folder
from blockdsl.analysis.likeness import Likeness, likeness_of, units_of
from blockdsl.cli.problem_printer import ProblemPrinter
from blockdsl.cli.saying import write_out
from blockdsl.cli.settings import levels_asked
from blockdsl.cli.status import ERRORS, FINE, CannotGoOn
from blockdsl.resources import library_names, library_path

_MOST_FILES: Final = 5_000
_NEAR: Final = 4
"""Blocks are near each other if no more than one patch in four has a different fabric."""
_MOST_NEAR: Final = 3
_DEMO: Final = "demo/"


class _Known(Struct, frozen=True):
    """A block, or a `unit` of one, with where it is declared."""

    block: str
    unit: str | None
    file: str
    line: int
    sources: tuple[str, ...]
    likeness: Likeness
    path: Path | None = None

    @property
    def place(self) -> tuple[object, ...]:
        """Where it is declared, however its file is called."""
        return self.path or self.file, self.line, self.unit

    @property
    def described(self) -> str:
        """`Ohio Star (library "stars", line 12)`."""
        name = self.block if self.unit is None else f"the unit `{self.unit}` of {self.block}"
        return f"{name} ({self.file}, line {self.line})"


def run(arguments: Namespace) -> int:
    """Look each block of the files up, and each of its units; problems are shown."""
    printer = ProblemPrinter(arguments)
    own: list[_Known] = []
    folders = [Path(folder) for folder in arguments.folder]
    for origin in open_inputs(arguments.files, levels_asked(arguments)):
        own += _declared(origin, origin.source.name)
        printer.show(origin.problems)
        folders.append(Path.cwd() if origin.path is None else origin.path.parent)
    if printer.sum_up():
        return ERRORS
    known = [*_of_library(), *_of_folders(folders)]
    found = [_Found.of(each, known) for each in own if each.unit is None]
    for each, units in zip(found, _units_by_block(own), strict=True):
        each.units.extend((unit, _Found.of(unit, known)) for unit in units)
    if arguments.format == "json":
        write_out(f"{json.dumps([each.as_json() for each in found], ensure_ascii=False, indent=2)}\n")
    else:
        write_out("\n".join("\n".join(each.lines()) + "\n" for each in found))
    return FINE


def _units_by_block(own: Sequence[_Known]) -> Iterator[list[_Known]]:
    """The units of each block, block by block."""
    units: list[_Known] = []
    for place, each in enumerate(own):
        if each.unit is None:
            if place:
                yield units
            units = []
        else:
            units.append(each)
    if own:
        yield units


class _Found(Struct, frozen=True):
    """What a block or unit is like: those that are the same, and those that are nearly so, the nearest first."""

    asked: _Known
    same: tuple[_Known, ...]
    near: tuple[tuple[int, _Known], ...]
    units: list[tuple[_Known, _Found]]

    @classmethod
    def of(cls, asked: _Known, known: Iterable[_Known]) -> _Found:
        """Compare with all that is known, but for what is declared in the very same place."""
        same, near = [], []
        for other in known:
            if other.place == asked.place:
                continue
            if other.likeness.patches != asked.likeness.patches or other.likeness.seams != asked.likeness.seams:
                continue
            differ = asked.likeness.patches_that_differ(other.likeness) or 0
            if not differ:
                same.append(other)
            elif differ * _NEAR <= asked.likeness.patches:
                near.append((differ, other))
        near.sort(key=lambda pair: (pair[0], pair[1].block))
        return cls(asked, tuple(_once(same)), tuple(near[:_MOST_NEAR]), [])

    def lines(self) -> Iterator[str]:
        """What is said of a block: what it is, what it is near, what its units are."""
        yield f"{self.asked.block} ({self.asked.file}, line {self.asked.line})"
        for other in self.same:
            yield f"   is {other.described}"
            yield from (f"      {source}" for source in other.sources)
        for differ, other in self.near:
            patches = "1 patch" if differ == 1 else f"{differ} patches"
            yield f"   is {other.described} but for the fabrics of {patches}"
        if not self.same and not self.near:
            yield "   is not known"
        for unit, found in self.units:
            if found.same:
                yield f"   its unit `{unit.unit}` is {found.same[0].described}"

    def as_json(self) -> dict[str, object]:
        """The same for programs."""
        return {
            "block": self.asked.block,
            "unit": self.asked.unit,
            "file": self.asked.file,
            "line": self.asked.line,
            "same": [_as_json(other) for other in self.same],
            "near": [{"patches": differ, **_as_json(other)} for differ, other in self.near],
            "units": [found.as_json() for _, found in self.units],
        }


def _as_json(known: _Known) -> dict[str, object]:
    return {
        "block": known.block,
        "unit": known.unit,
        "file": known.file,
        "line": known.line,
        "sources": known.sources,
    }


def _once(found: Iterable[_Known]) -> Iterator[_Known]:
    """Blocks before units, and of the units of one name and block the first."""
    ordered = sorted(found, key=lambda each: each.unit is not None)
    yield from {each.place: each for each in ordered}.values()


def _of_library() -> Iterator[_Known]:
    """The traditional blocks that come with blockdsl; those of the demo are its own."""
    for name in library_names():
        if not name.startswith(_DEMO):
            yield from _declared(open_input(str(library_path(name))), f'library "{name}"')


def _of_folders(folders: Iterable[Path]) -> Iterator[_Known]:
    """The blocks of all files below the folders; what has errors is passed over, for nothing can be said of it."""
    files: dict[Path, Path] = {}
    for folder in folders:
        if not folder.is_dir():
            raise CannotGoOn(f"{folder}: there is no such folder")
        for path in sorted(folder.rglob("*.block")):
            if not any(part.startswith(".") for part in path.relative_to(folder).parts):
                files.setdefault(path.resolve(), path)
            if len(files) > _MOST_FILES:
                raise CannotGoOn(f"there are more than {_MOST_FILES} block files in these folders; name fewer")
    ours = {library_path(name).resolve() for name in library_names() if not name.startswith(_DEMO)}
    for real, path in files.items():
        if real in ours:
            continue
        origin = open_input(str(path))
        found = list(_declared(origin, str(path)))
        if not origin.problems.has_errors:
            yield from found


def _declared(origin: Input, file: str) -> Iterator[_Known]:
    """The blocks that a file itself declares, each with its units after it."""
    if not origin.readable:
        return
    with pipeline.about(origin.source.name):
        reader = RememberingReader(project_folder(origin.path))
        program = pipeline.analyse(origin.source, reader, origin.problems)
    for design in program.blocks:
        if design.span.source.name == origin.source.name:
            named = [(None, likeness_of(design)), *units_of(design)]
            for unit, likeness in named:
                line, sources = design.span.line, design.sources
                path = origin.path and origin.path.resolve()
                yield _Known(design.name, unit, file, line, sources, likeness, path)
