"""How a file is built: its declarations, what folds, what a selection grows to, which of its words are links."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path
from typing import Final, Literal

from msgspec import Struct

from blockdsl.diagnostics import Source, Span
from blockdsl.editor.mentions import DECLARING
from blockdsl.editor.nodes import declaration_of, last_line, lines_of, nodes_around
from blockdsl.editor.project import Project, uri_of
from blockdsl.resources import library_names
from blockdsl.syntax import ast

What = Literal["use", "fabric", "unit", "block", "cutter", "quilt", "book", "maker", "colourway", "chapter"]


class Entry(Struct, frozen=True):
    """One thing in the outline: its name, a word about it, all of it and the part that names it, what is below it."""

    what: What
    name: str
    detail: str
    whole: Span
    named: Span
    below: tuple[Entry, ...] = ()


def outline(file: ast.File) -> list[Entry]:
    """What a file declares, in order, with the colourways of blocks and the chapters of books below them."""
    return [entry for declaration in file.declarations if (entry := _entry(declaration)) is not None]


_WHAT: Final[dict[str, What]] = {
    "Use": "use",
    "FabricDeclaration": "fabric",
    "UnitDeclaration": "unit",
    "BlockDeclaration": "block",
    "CutterDeclaration": "cutter",
    "QuiltDeclaration": "quilt",
    "BookDeclaration": "book",
    "MakerDeclaration": "maker",
}


def _entry(declaration: ast.Declaration) -> Entry | None:
    made = type(declaration).__name__
    if isinstance(declaration, ast.UnreadableLine):
        return None
    lines = lines_of(declaration)
    whole = Span(
        declaration.span.source, declaration.span.start, lines[-1].span.stop if lines else declaration.span.stop
    )
    if isinstance(declaration, ast.Use):
        library = "library" if declaration.library else ""
        return Entry("use", declaration.path.text or '""', library, whole, declaration.path.span)
    named = getattr(declaration, next(iter(DECLARING[made])))
    return Entry(_WHAT[made], named.text, _detail(declaration), whole, named.span, tuple(_below(lines)))


def _detail(declaration: ast.Declaration) -> str:
    match declaration:
        case ast.FabricDeclaration():
            return declaration.label.text
        case ast.UnitDeclaration(shape=ast.ShapeCall() as shape):
            return shape.span.text
        case _:
            sizes = (
                line
                for line in lines_of(declaration)
                if isinstance(line, ast.Size | ast.SetGrid | ast.SetCount | ast.SetMedallion)
            )
            return next((line.span.text for line in sizes), "")


def _below(lines: tuple[object, ...]) -> Iterator[Entry]:
    for line in lines:
        if isinstance(line, ast.Colourway):
            yield Entry("colourway", line.name.text, "", line.span, line.name.span)
        elif isinstance(line, ast.Chapter):
            yield Entry("chapter", line.title.text, "", line.span, line.title.span)


# --- folding -------------------------------------------------------------------------------------


def folds(file: ast.File) -> list[tuple[int, int, Literal["region", "comment", "imports"]]]:
    """First and last line, from 1, of what can be folded: declarations, runs of `use` lines and of comments."""
    found: list[tuple[int, int, Literal["region", "comment", "imports"]]] = []
    for declaration in file.declarations:
        first, last = declaration.span.line, last_line(declaration)
        if last > first:
            found.append((first, last, "region"))
    uses = [declaration.span.line for declaration in file.declarations if isinstance(declaration, ast.Use)]
    found += [(first, last, "imports") for first, last in _runs(uses)]
    texts = [text.lstrip() for _, text in file.source.lines()]
    comments = [number for number, text in enumerate(texts, start=1) if text.startswith("# ") or text == "#"]
    found += [(first, last, "comment") for first, last in _runs(comments)]
    return sorted(found)


def _runs(numbers: list[int]) -> list[tuple[int, int]]:
    """The first and the last of numbers that follow one another, two at least."""
    starts = [number for number in numbers if number - 1 not in numbers]
    stops = [number for number in numbers if number + 1 not in numbers]
    return [(first, last) for first, last in zip(starts, stops, strict=True) if last > first]


# --- selections ----------------------------------------------------------------------------------


def selections(file: ast.File, offset: int) -> list[Span]:
    """What a selection at a place grows to, the smallest first: word, cell, line, declaration, file."""
    source = file.source
    spans = [node.span for node in nodes_around(file, offset)]
    declaration = declaration_of(file, offset)
    if declaration is not None and spans:
        lines = lines_of(declaration)
        spans.append(Span(source, declaration.span.start, lines[-1].span.stop if lines else declaration.span.stop))
    spans.append(Span(source, source.line_starts[0], source.offset(len(source.line_starts), 1 << 30)))
    spans.insert(0, Span(source, offset, offset))
    return [span for place, span in enumerate(spans) if not place or _is_wider(span, spans[place - 1])]


def _is_wider(span: Span, inner: Span) -> bool:
    def places(found: Span) -> tuple[tuple[int, ...], tuple[int, ...]]:
        return found.source.order(found.start), found.source.order(found.stop)

    (start, stop), (first, last) = places(span), places(inner)
    return start <= first and last <= stop and (start, stop) != (first, last)


# --- links ---------------------------------------------------------------------------------------


def links(project: Project, file: ast.File) -> Iterator[tuple[Span, str]]:
    """The file names that lines say, each with the address that it leads to."""
    for path, library in paths_said(file):
        target = target_of(project, file.source, path, library=library)
        if target is not None:
            yield Span(path.span.source, path.span.start + 1, path.span.stop - 1), target


def paths_said(file: ast.File) -> Iterator[tuple[ast.Text, bool]]:
    """Each file name that a line says, and whether it is of the library."""
    for declaration in file.declarations:
        if isinstance(declaration, ast.Use):
            yield declaration.path, declaration.library
        for line in lines_of(declaration):
            if isinstance(line, ast.BookText | ast.Font):
                yield line.path, False


def target_of(project: Project, source: Source, path: ast.Text, *, library: bool) -> str | None:
    """The address of a file that a line names; None where there is none."""
    own = source.name
    if library or own.startswith("library/"):
        name = path.text if library else os.path.normpath(Path(own.removeprefix("library/")).parent / path.text)
        name = name.removesuffix(".block")
        return uri_of(f"library/{name}.block") if name in library_names() else None
    if not path.text or not Path(own).is_absolute():
        return None
    wanted = Path(os.path.normpath(Path(own).parent / path.text))
    if project.open_text(wanted) is not None:
        return wanted.as_uri()
    try:
        return wanted.as_uri() if wanted.is_file() else None
    except (OSError, ValueError):
        return None
