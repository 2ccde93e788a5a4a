"""Notes and addresses that a designer gives with her block, or at the unit whose step they belong to."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from blockdsl.analysis.fixes import did_you_mean
from blockdsl.analysis.maker_choices import is_of_the_web
from blockdsl.analysis.reading import CannotRead, Reader
from blockdsl.analysis.scope import Scope
from blockdsl.diagnostics import Problems, nearest_word
from blockdsl.model.remark import PLACES, Remark
from blockdsl.raster import MOST_BYTES, NotAPicture, Raster, read_raster
from blockdsl.shapes.listed import FORMER_NAMES
from blockdsl.syntax import ast

Lines = Sequence[ast.BlockLine | ast.UnitLine]
_MOST_PIXELS: Final = (1060, 710)
"""300 dots to the inch where it is printed largest, in a box of 254 × 170 points."""
_PAIR: Final = "half"
"""The shape of `fog/lantern`."""


def read_remarks(block: ast.BlockDeclaration, names: Scope, problems: Problems) -> tuple[Remark, ...]:
    """All that has a place in the steps, all addresses and pictures, in order; those of the units that it uses last.

    A note in a unit belongs to the step that makes the unit. What names no unit of the block is reported.
    """
    units: dict[str, ast.UnitDeclaration] = {}
    made = set(_made(block.lines, names, units))
    found = list(_read(block.lines, "", made, problems))
    for name, unit in units.items():
        found += _read(unit.lines, name, made, problems)
    return tuple(found)


def _read(lines: Lines, unit: str, made: set[str], problems: Problems) -> Iterator[Remark]:
    for line in lines:
        if not isinstance(line, ast.Note | ast.See | ast.PhotoLine):
            continue
        place = unit if line.place is None else _place(line.place, made, problems)
        if isinstance(line, ast.PhotoLine):
            yield Remark(line.text.text, picture=line.path.text, place=place)
        elif isinstance(line, ast.See):
            if is_of_the_web(line.address, problems):
                yield Remark(line.text.text, line.address.text, place=place)
        elif place:
            yield Remark(line.text.text, place=place)


def read_photos(block: ast.BlockDeclaration, names: Scope, problems: Problems) -> tuple[tuple[str, Raster], ...]:
    """The pictures that the block's lines name, by their paths; one that cannot be printed is reported."""
    found: dict[str, Raster] = {}
    for line in block.lines:
        if isinstance(line, ast.PhotoLine) and line.path.text not in found and names.reader is not None:
            raster = _photo(line.path, names.reader, problems)
            found |= {} if raster is None else {line.path.text: raster}
    return tuple(found.items())


def _photo(path: ast.Text, reader: Reader, problems: Problems) -> Raster | None:
    try:
        return read_raster(reader.binary(path.text, path.span.source.name, MOST_BYTES), _MOST_PIXELS)
    except CannotRead as fault:
        fixes = did_you_mean(path, fault.near)
        advice = fault.help if fault.code != "file-too-large" else "save it smaller: 3,000 pixels across are plenty"
        problems.report(fault.code, path.span, help=advice, related=(), fixes=fixes, **fault.values)
    except NotAPicture as fault:
        advice = "save it as JPEG or PNG from the program that shows it"
        problems.report("picture-unreadable", path.span, path=path.text, why=str(fault), help=advice)
    return None


def _place(word: ast.Word, made: set[str], problems: Problems) -> str:
    """The place that is named, or none where the block has no such unit."""
    name = FORMER_NAMES.get(word.text, word.text)
    if name in made or name in PLACES:
        return name
    near = nearest_word(word.text, [*sorted(made), *PLACES])
    advice = f"did you mean `{near}`?" if near else "name a unit that the block uses, a shape, `rows` or `last`"
    fixes = did_you_mean(word, near)
    problems.report("name-unknown", word.span, kind="unit in this block", name=word.text, help=advice, fixes=fixes)
    return ""


def _made(lines: Lines, names: Scope, units: dict[str, ast.UnitDeclaration]) -> Iterator[str]:
    """The units and shapes that the lines say, and those inside them; `units` gathers the named ones."""
    for line in lines:
        for cell in line.cells if isinstance(line, ast.Row) else ():
            match cell:
                case ast.PairCell():
                    yield _PAIR
                case ast.ShapeCell(call=call):
                    yield FORMER_NAMES.get(call.shape.text, call.shape.text)
                case ast.NameCell(name=name) if name.text in names.units and name.text not in units:
                    unit = units[name.text] = names.units[name.text]
                    yield name.text
                    if unit.shape is not None:
                        yield FORMER_NAMES.get(unit.shape.shape.text, unit.shape.shape.text)
                    yield from _made(unit.lines, names, units)
