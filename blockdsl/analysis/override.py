"""What if: the same file with its blocks at another size, its quilts set in another way, or in another colourway.

The file itself is never changed. What it says is changed after it is read and before anything is laid, here and
nowhere else; all that follows, warnings too, is then about the changed file.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TypeVar

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.analysis.resize import measured
from blockdsl.analysis.scope import Scope
from blockdsl.diagnostics import Problems
from blockdsl.geometry.fraction import Fraction
from blockdsl.model import RulerUnit
from blockdsl.model.lengths import write_size
from blockdsl.syntax import ast

Declared = TypeVar("Declared", bound=ast.Declaration)


class WhatIf(Struct, frozen=True):
    """What is to be changed; None where the file stays as it is.

    `size` is the finished width of every block; `places` are the blocks across and down and `pattern` the setting of
    every quilt; `colourway` is the colour plan in which all blocks are that have it.
    """

    size: tuple[Fraction, RulerUnit] | None = None
    places: tuple[int, int] | None = None
    pattern: ast.Pattern | None = None
    colourway: str | None = None

    @property
    def sets(self) -> bool:
        """Whether the setting of quilts is another one."""
        return self.places is not None or self.pattern is not None

    @property
    def size_words(self) -> str:
        """`9 in`, or nothing."""
        return write_size(self.size[0], self.size[0], self.size[1]) if self.size else ""

    @property
    def set_words(self) -> str:
        """`6 x 8 on point`, or a part of it, or nothing."""
        counts = [f"{self.places[0]} x {self.places[1]}"] if self.places else []
        return " ".join([*counts, *([self.pattern] if self.pattern else [])])

    @property
    def options(self) -> str:
        """As it is typed in a command: `--size '9 in' --set 'on point'`."""
        pairs = (("--size", self.size_words), ("--set", self.set_words), ("--colourway", self.colourway or ""))
        return " ".join(f"{option} {_quoted(words)}" for option, words in pairs if words)

    @property
    def words(self) -> str:
        """In short, to stand over a column: `9 in, 6 x 8 on point, Night`; nothing for the file as it says."""
        return ", ".join(words for words in (self.size_words, self.set_words, self.colourway) if words)


def _quoted(words: str) -> str:
    """As one word of a command."""
    if "'" in words:
        return '"' + words + '"'
    return words if words.isalnum() else f"'{words}'"


def override(names: Scope, what_if: WhatIf, problems: Problems) -> None:
    """Change the blocks and quilts of all files that were read; a quilt whose lines contradict is reported."""
    changed: dict[int, ast.Declaration] = {}
    for file in names.files:
        for declaration in file.declarations:
            match declaration:
                case ast.BlockDeclaration():
                    changed[id(declaration)] = _block(declaration, what_if)
                case ast.QuiltDeclaration():
                    changed[id(declaration)] = _quilt(declaration, what_if, problems)
                case _:
                    pass

    def now(declared: Declared) -> Declared:
        new = changed.get(id(declared), declared)
        assert isinstance(new, type(declared))  # noqa: S101  a block stays a block
        return new

    main = names.main.source
    names.files = [replace(file, declarations=tuple(map(now, file.declarations))) for file in names.files]
    names.main = next(file for file in names.files if file.source is main)
    names.blocks = {title: now(block) for title, block in names.blocks.items()}
    names.quilts = {title: now(quilt) for title, quilt in names.quilts.items()}


# --- blocks ------------------------------------------------------------------------------------


def _block(block: ast.BlockDeclaration, what_if: WhatIf) -> ast.BlockDeclaration:
    """The block at the size; checks of its numbers are of the block as it is written, and are left out."""
    lines: Iterable[ast.BlockLine] = block.lines
    plans = {line.name.text for line in block.lines if isinstance(line, ast.Colourway)}
    if what_if.colourway in plans:
        lines = [line for line in lines if not isinstance(line, ast.ExpectCut)]
    if what_if.size is not None and not _has_odd_size(block):
        lines = list(_at_size(block, lines, what_if.size))
    return replace(block, lines=tuple(lines))


def _has_odd_size(block: ast.BlockDeclaration) -> bool:
    """Whether its own size cannot be read or is none: that must be fixed before anything is changed."""
    damaged = any(isinstance(line, ast.UnreadableLine) and line.keyword == "size" for line in block.lines)
    sizes = [line for line in block.lines if isinstance(line, ast.Size)]
    return damaged or len(sizes) != 1 or min(sizes[0].width.value, sizes[0].height.value) <= 0


def _at_size(
    block: ast.BlockDeclaration, lines: Iterable[ast.BlockLine], size: tuple[Fraction, RulerUnit]
) -> Iterator[ast.BlockLine]:
    """As wide as is asked and as high as its proportion makes it.

    In the other kind of unit its seam, measure and trim say nothing, and the usual ones hold.
    """
    own = next(line for line in block.lines if isinstance(line, ast.Size))
    same_unit = (own.width.unit == "in") == (size[1] == "in")
    for line in lines:
        match line:
            case ast.Size():
                width = ast.LengthLiteral(line.width.span, *size)
                yield replace(
                    line, width=width, height=replace(width, value=size[0] * own.height.value / own.width.value)
                )
            case ast.Sizes():
                widths = tuple(width for width in line.widths if measured(width) != (size[1], size[0]))
                if widths:
                    yield replace(line, widths=widths)
            case ast.Seam() | ast.Measure() | ast.Trim() if not same_unit:
                pass
            case ast.ExpectCut() | ast.ExpectUnit() | ast.ExpectFinished():
                pass
            case _:
                yield line


# --- quilts ------------------------------------------------------------------------------------


def _quilt(quilt: ast.QuiltDeclaration, what_if: WhatIf, problems: Problems) -> ast.QuiltDeclaration:
    """The quilt with blocks of the size, set as asked; checks of what changes are left out."""
    lines: list[ast.QuiltLine] = list(quilt.lines)
    if what_if.size is not None:
        said = next((line.span for line in lines if isinstance(line, ast.BlocksSize)), quilt.name.span)
        kept = [line for line in lines if not isinstance(line, ast.BlocksSize | ast.ExpectFinished)]
        lines = [ast.BlocksSize(said, ast.LengthLiteral(said, *what_if.size)), *kept]
    if what_if.sets:
        _report_contradiction(quilt, what_if, problems)
        lines = [_set(line, what_if) for line in lines if not isinstance(line, ast.ExpectFinished | ast.ExpectBlocks)]
    return replace(quilt, lines=tuple(lines))


def _set(line: ast.QuiltLine, what_if: WhatIf) -> ast.QuiltLine:
    """A `set` line as it is asked for, any other line as it is."""
    match line:
        case ast.SetGrid():
            across, down = what_if.places or (line.across.value, line.down.value)
            return replace(
                line,
                pattern=what_if.pattern or line.pattern,
                across=replace(line.across, value=Fraction(across)),
                down=replace(line.down, value=Fraction(down)),
            )
        case ast.SetCount():
            pattern = what_if.pattern or line.pattern
            if what_if.places is None:
                return replace(line, pattern=pattern)
            numbers = [ast.Number(line.count.span, Fraction(count)) for count in what_if.places]
            return ast.SetGrid(line.span, pattern, numbers[0], numbers[1], line.block)
        case ast.SetMedallion():
            return replace(line, on_point=what_if.pattern == "on point")
        case _:
            return line


def _report_contradiction(quilt: ast.QuiltDeclaration, what_if: WhatIf, problems: Problems) -> None:
    """Rows name every place themselves, and a medallion has one block in its middle."""
    row = next((line for line in quilt.lines if isinstance(line, ast.SetRows | ast.QuiltRow)), None)
    medallion = next((line for line in quilt.lines if isinstance(line, ast.SetMedallion)), None)
    if row is not None:
        advice = "leave `--set` out, or write a `set` line in place of its rows"
        problems.report("setting-fixed", row.span, why="its rows name every place", help=advice)
    elif medallion is not None and (what_if.places is not None or what_if.pattern not in ("on point", "straight")):
        advice = "`--set 'on point'` and `--set straight` turn that block"
        problems.report("setting-fixed", medallion.span, why="a medallion has one block in its middle", help=advice)
