"""Following names across files: where a thing is declared, where it is used, and giving it another name."""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Final

from msgspec import Struct

from blockdsl.diagnostics import Edit, Source, Span
from blockdsl.editor.mentions import Kind, Mention, mention_at, mentions, target
from blockdsl.editor.outline import paths_said, target_of
from blockdsl.editor.project import Project, name_of
from blockdsl.syntax.atoms import is_name, normalized
from blockdsl.syntax.grammar import pattern

_LIBRARY: Final = "library/"


class CannotRename(Exception):
    """Why a name cannot be another one, in words for the user."""


class Named(Struct, frozen=True):
    """A thing that a place names, and where it is declared, if anywhere."""

    mention: Mention
    declared: Span | None


def named_at(project: Project, source: Source, offset: int) -> Named | None:
    """What a place names."""
    names = project.names_of(source)
    mention = mention_at(names.main, offset)
    if mention is None or mention.kind == "shape":
        return None
    return Named(mention, target(mention, names))


def uses(project: Project, named: Named, *, with_declaration: bool) -> Iterator[Span]:
    """Every place in the project that names the same thing."""
    if named.declared is None:
        return
    sources = list(project.all_files())
    if all(source is not named.declared.source for source in sources):
        sources.append(named.declared.source)
    for source in sources:
        if named.mention.name not in normalized(source.text):
            continue
        names = project.names_of(source)
        for mention in mentions(names.main):
            if mention.name != named.mention.name or mention.kind != named.mention.kind:
                continue
            found = target(mention, names)
            if (
                found is not None
                and _same(found, named.declared)
                and (with_declaration or not _same(mention.span, found))
            ):
                yield mention.span


def _same(one: Span, other: Span) -> bool:
    return one.source.name == other.source.name and one.source.position(one.start) == other.source.position(other.start)


# --- another name --------------------------------------------------------------------------------

_BARE: Final[frozenset[Kind]] = frozenset({"fabric or unit"})


def renameable(project: Project, source: Source, offset: int) -> Span:
    """The place of the name to be changed. Errors: CannotRename."""
    named = named_at(project, source, offset)
    if named is None:
        raise CannotRename("There is nothing here that has a name of its own.")
    if named.declared is None:
        raise CannotRename(f"Nothing declares {named.mention.name}.")
    if named.declared.source.name.startswith(_LIBRARY):
        raise CannotRename(f"{named.mention.name} is in the library that comes with blockdsl.")
    return named.mention.span


def rename(project: Project, source: Source, offset: int, new: str) -> list[Edit]:
    """The edits that give a thing another name wherever it is said. Errors: CannotRename."""
    renameable(project, source, offset)
    named = named_at(project, source, offset)
    assert named is not None  # noqa: S101  just looked at
    new = new.strip()
    _refuse(project, named, new)
    return [Edit(span, new) for span in uses(project, named, with_declaration=True)]


def _refuse(project: Project, named: Named, new: str) -> None:
    """Errors: CannotRename for a name that cannot be written, or that something else has."""
    if named.mention.kind in _BARE:
        if not re.fullmatch(pattern("NAME"), new) or not is_name(new):
            raise CannotRename(f"{new!r} is not a name: a name starts with a letter, then letters, digits, - and _.")
    elif not new or any(letter in new for letter in '"“”\n\r'):
        raise CannotRename("A title has at least one letter and no quotation marks.")
    for span in uses(project, named, with_declaration=True):
        names = project.names_of(span.source)
        taken: dict[str, object] = {
            "fabric or unit": names.declared,
            "block": names.blocks,
            "quilt": names.quilts,
        }
        if normalized(new) in taken.get(named.mention.kind, {}):  # type: ignore[operator]  # tables of names
            raise CannotRename(f"{new} is taken already.")


# --- files that move -----------------------------------------------------------------------------


def moved(project: Project, moves: list[tuple[str, str]]) -> list[Edit]:
    """The edits that let lines name files by their new places; `moves` are addresses before and after."""
    places = {name_of(before): name_of(after) for before, after in moves}
    edits = []
    for source in project.all_files():
        own = source.name
        if not Path(own).is_absolute():
            continue
        # A file that has itself moved may be known by its old place or by its new one.
        before = next((old for old, new in places.items() if new == own), own)
        after = places.get(own, own)
        for path, library in paths_said(project.parsed(source)):
            if library or not path.text:
                continue
            meant = os.path.normpath(Path(before).parent / path.text)
            now = _now(meant, places)
            said = Path(os.path.relpath(now, Path(after).parent)).as_posix()
            if (now != meant or after != before) and said != Path(os.path.normpath(path.text)).as_posix():
                edits.append(Edit(Span(path.span.source, path.span.start + 1, path.span.stop - 1), said))
    return edits


def _now(path: str, places: dict[str, str]) -> str:
    """Where a file lies after the moves, of itself or of a folder around it."""
    for before, after in places.items():
        if path == before:
            return after
        if Path(path).is_relative_to(before):
            return str(Path(after) / Path(path).relative_to(before))
    return path


def file_at(project: Project, source: Source, offset: int) -> str | None:
    """The address of the file that a line names at this place."""
    number = source.position(offset)[0]
    for path, library in paths_said(project.parsed(source)):
        if path.span.line == number and path.span.start <= offset <= path.span.stop:
            return target_of(project, source, path, library=library)
    return None
