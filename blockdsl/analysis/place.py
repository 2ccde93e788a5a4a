"""Placing cells: units looked up, turned, nested and laid down in their boxes."""

from __future__ import annotations

from collections.abc import Sequence
from math import ceil
from typing import Final

from msgspec import Struct
from msgspec.structs import replace

from blockdsl.analysis.applique import MOST_PIECES, lay_appliques
from blockdsl.analysis.census import MOST_PATCHES, MOST_UNITS, Census, Excess
from blockdsl.analysis.fitting import Around, fits_so
from blockdsl.analysis.fixes import declare_fabric, did_you_mean
from blockdsl.analysis.free import lay_free_patches
from blockdsl.analysis.grid import MOST_CELLS, CellRegion, Grid, is_damaged_drawing, lines_at, read_grid
from blockdsl.analysis.scope import MOST_NESTING, Scope
from blockdsl.diagnostics import Edit, Fix, Problems, Span, change_to, nearest_word
from blockdsl.geometry import Exact, Point
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.symmetry import IDENTITY, Symmetry, from_turns
from blockdsl.model import Applique, Patch, ShapeUse, UnitPlace
from blockdsl.shapes import SHAPES, half, half_rectangle, square
from blockdsl.shapes.fields import MOST_PATCHES as MOST_IN_A_FIELD
from blockdsl.shapes.listed import FORMER_NAMES, shape_meant
from blockdsl.shapes.outlines import box
from blockdsl.shapes.words import WordReader
from blockdsl.syntax import ast
from blockdsl.syntax.read import renamed_help

MOST_GUESSES = 100
HALF, OBLONG = half.SHAPE.name, half_rectangle.SHAPE.name
HALF_BACK = f"{HALF}\\"
_TURNS_IN_WORDS: Final = {
    **dict.fromkeys(("mirror", "mirrored", "flip", "flipped", "reverse", "reversed"), "~"),
    **dict.fromkeys(("turn", "turned", "rotate", "rotated", "right", "clockwise"), ">"),
    **dict.fromkeys(("left", "anticlockwise", "counterclockwise"), "<"),
}
"""What somebody writes who does not know the signs of turns, and the sign."""
"""The half whose line slants the other way, `a\\b`, until it is laid: then it is a half that is mirrored."""
ZERO = Fraction(0)


class BlockLayout(Struct, frozen=True):
    """What fills a box: patches and units with the box's top left corner as origin."""

    patches: tuple[Patch, ...]
    units: tuple[UnitPlace, ...]
    appliques: tuple[Applique, ...] = ()


class Placer:
    """Lays units into boxes; each unit is laid out once for each size and turn."""

    def __init__(self, names: Scope, problems: Problems) -> None:
        """`names` is the table of fabrics and units."""
        self._names = names
        self._problems = problems
        self._grids: dict[str, Grid | None] = {}
        self._laid: dict[tuple[str, Exact, Exact], BlockLayout | None] = {}
        self._shaped: dict[tuple[ShapeUse, Exact, Exact, Symmetry, str | None], BlockLayout] = {}
        self._census = Census(names, self._grid_of, self._filling)
        self._reported: set[tuple[str, Span]] = set()
        self._missing: set[str] = set()
        self._size_is_known = True
        self._around: Around | None = None

    # --- a whole grid -------------------------------------------------------------------------

    def look_through(self, lines: Sequence[ast.BlockLine], title: Span) -> None:
        """Report what is wrong with the rows of a block whose size cannot be read, but for what follows from a size."""
        laid, self._laid, self._size_is_known = self._laid, {}, False
        self.lay_lines(lines, title, Fraction(1), Fraction(1))
        self._laid, self._size_is_known = laid, True

    def lay_lines(
        self, lines: Sequence[ast.BlockLine], title: Span, width: Fraction, height: Fraction
    ) -> tuple[BlockLayout | None, tuple[Fraction, ...], tuple[Fraction, ...]]:
        """Fill width × height with the rows or free patches of a block; also gives its grid lines."""
        first = next((line for line in lines if isinstance(line, ast.Row)), None)
        if first is None:
            self.look_up(lines)
            if not self._extents_are_usable(lines):
                return None, (), ()
            layout = lay_free_patches(lines, title, width, height, self._names, self._problems)
            free = (
                None if layout is None else self._with_appliques(BlockLayout(layout, ()), lines, None, (width, height))
            )
            return free, *_even_lines(lines, width, height)
        # Two blocks may have one title here: that of the size at which they are both asked for.
        grid = self._grid(f"block {first.span.source.name} {first.span.start}", lines, title)
        if grid is None:
            self.look_up(lines)
            return None, (), ()
        if excess := self._census.excess_in(grid):
            self._report_excess(excess)
            self.look_up(lines)
            return None, (), ()
        xs, ys = lines_at(grid.columns, width), lines_at(grid.heights, height)
        laid = self._lay_grid(lines, grid, xs, ys)
        return self._with_appliques(laid, lines, grid, (width, height)), xs, ys

    def _with_appliques(
        self,
        layout: BlockLayout | None,
        lines: Sequence[ast.BlockLine],
        grid: Grid | None,
        size: tuple[Fraction, Fraction],
    ) -> BlockLayout | None:
        """The layout with the pieces of the lines' own `applique` lines on top; None when one of them is at fault."""
        if not any(isinstance(line, ast.Applique) for line in lines):
            return layout
        extent = next((line for line in lines if isinstance(line, ast.GridExtent)), None)
        if grid is not None:
            squares = sum(grid.columns, ZERO), sum(grid.heights, ZERO)
        elif extent is not None:
            squares = extent.across.value, extent.down.value
        else:
            return None  # reported where the patches are laid
        fabrics = [line.fabric for line in lines if isinstance(line, ast.Applique)]
        known = [self._fabric(fabric) for fabric in fabrics]
        pieces = lay_appliques(lines, squares, size, self._names, self._once)
        if layout is None or pieces is None or not all(known):
            return None
        return replace(layout, appliques=(*layout.appliques, *pieces))

    def _extents_are_usable(self, lines: Sequence[ast.BlockLine]) -> bool:
        return all(self._is_usable(line) for line in lines if isinstance(line, ast.GridExtent))

    def _is_usable(self, extent: ast.GridExtent) -> bool:
        for number in (extent.across, extent.down):
            if number.value <= 0:
                self._once("length-not-positive", extent.span, what="grid")
                return False
            if number.value > MOST_CELLS:
                help_text = f"a grid has at most {MOST_CELLS} × {MOST_CELLS} cells"
                self._once("too-many-cells", extent.span, help=help_text)
                return False
        return True

    def _report_excess(self, excess: Excess) -> None:
        match excess.code:
            case "unit-cycle":
                help_text = f"it is made of itself: {' → '.join(excess.ring)}"
                self._once(excess.code, excess.span, name=excess.ring[-1], help=help_text)
            case "nesting-too-deep":
                help_text = f"units may lie {MOST_NESTING} deep in one another"
                self._once(excess.code, excess.span, help=help_text)
            case "too-many-units":
                help_text = f"a block has at most {MOST_UNITS:,} units"
                self._once(excess.code, excess.span, help=help_text)
            case _:
                help_text = f"a block has at most {MOST_PATCHES:,} patches"
                self._once(excess.code, excess.span, help=help_text)

    def look_up(self, lines: Sequence[ast.BlockLine]) -> None:
        """Look up the names in lines that cannot be placed, so that all mistakes are reported in one run."""
        for line in lines:
            if isinstance(line, ast.FreePatch | ast.Applique):
                self._fabric(line.fabric)
            elif isinstance(line, ast.Row) and self._bare_shape(line) is None:
                for cell in line.cells:
                    self._look_up_cell(cell)

    def _bare_shape(self, row: ast.Row) -> ast.NameCell | None:
        """The first cell that names a shape which should stand in brackets, its words in the cells after it."""
        known = (self._names.fabrics, self._names.units, self._names.damaged)
        named = (cell for cell in row.cells if isinstance(cell, ast.NameCell) and cell.name.text in SHAPES)
        return next((cell for cell in named if not any(cell.name.text in names for names in known)), None)

    def _report_bare_shapes(self, lines: Sequence[ast.BlockLine]) -> bool:
        bare = [(line, cell) for line in lines if isinstance(line, ast.Row) and (cell := self._bare_shape(line))]
        for line, cell in bare:
            usage = SHAPES[cell.name.text].usage.split(", or ")[0]
            self._once(
                "shape-needs-brackets",
                cell.span,
                name=cell.name.text,
                help=f"write it as `({usage})`",
                fixes=(_in_brackets(cell, line),),
            )
        return bool(bare)

    def _look_up_cell(self, cell: ast.Cell) -> None:
        match cell:
            case ast.PairCell():
                self._pair(cell)
            case ast.ShapeCell():
                self._filling(cell.call)
            case ast.NameCell(name=name):
                if name.text not in self._names.fabrics and name.text not in self._names.units:
                    self._unknown(name, "fabric or unit")
            case ast.Continue():
                pass

    def look_up_unit(self, unit: ast.UnitDeclaration) -> None:
        """As `look_up`, for a unit that no block places; its grid is read too."""
        if unit.shape is not None:
            self._filling(unit.shape)
            return
        self.look_up(unit.lines)
        self._extents_are_usable(unit.lines)
        if any(isinstance(line, ast.Row) for line in unit.lines):
            self._grid_of(unit)

    def _grid(self, key: str, lines: Sequence[ast.BlockLine], title: Span) -> Grid | None:
        if key not in self._grids:
            if any(isinstance(line, ast.FreePatch | ast.GridExtent) for line in lines):
                span = next(line.span for line in lines if isinstance(line, ast.FreePatch | ast.GridExtent))
                help_text = "make the free patches a unit of their own and put its name into a cell"
                self._problems.report("grid-mixed", span, help=help_text)
                self._grids[key] = None
            elif self._report_bare_shapes(lines):
                self._grids[key] = None
            else:
                self._grids[key] = read_grid(lines, title, self._problems)
        return self._grids[key]

    def _grid_of(self, unit: ast.UnitDeclaration) -> Grid | None:
        return self._grid(f"unit {unit.name.text}", unit.lines, unit.name.span)

    def _lay_grid(
        self, lines: Sequence[ast.BlockLine], grid: Grid, xs: Sequence[Fraction], ys: Sequence[Fraction]
    ) -> BlockLayout | None:
        patches: list[Patch] = []
        units: list[UnitPlace] = []
        appliques: list[Applique] = []
        complete = True
        fabrics = self._names.fabrics
        for region in grid.regions:
            left, top, right, bottom = xs[region.left], ys[region.top], xs[region.right], ys[region.bottom]
            cell = region.cell
            if isinstance(cell, ast.NameCell) and cell.name.text in fabrics:
                # By far the commonest cell; a plain rectangle looks the same however it is turned.
                patches.append(Patch(cell.name.text, box(left, top, right, bottom), span=cell.span))
                continue
            outer, self._around = self._around, Around(lines, grid, region)
            layout = self._lay_cell(region, right - left, bottom - top)
            self._around = outer
            if layout is None:
                complete = False
            else:
                _put(layout, (left, top), cell.span, patches, units)
                if len(appliques) <= MOST_PIECES:
                    appliques += [piece.moved(left, top) for piece in layout.appliques]
        return BlockLayout(tuple(patches), tuple(units), tuple(appliques)) if complete else None

    # --- one cell ------------------------------------------------------------------------------

    def _lay_cell(self, region: CellRegion, width: Fraction, height: Fraction) -> BlockLayout | None:
        cell = region.cell
        symmetry = from_turns("".join(cell.turns))
        natural = symmetry.inverse.turned_extent(width, height)
        match cell:
            case ast.PairCell():
                pair = self._pair(cell)
                return None if pair is None else self._fit(pair, None, cell.span, natural, symmetry)
            case ast.ShapeCell():
                filling = self._filling(cell.call)
                return None if filling is None else self._fit(filling, None, cell.span, natural, symmetry)
            case ast.NameCell():
                return self._lay_named(cell, natural, symmetry)

    def _pair(self, cell: ast.PairCell) -> ShapeUse | None:
        if not all([self._fabric(cell.left), self._fabric(cell.right)]):
            return None
        # The back slash is the mirror image of the slash: the left word stays on the left.
        return ShapeUse(HALF if cell.slope == "/" else HALF_BACK, (cell.left.text, cell.right.text))

    def _trade_word(self, call: ast.ShapeCall) -> bool:
        """Whether the shape is called by a word of the trade that the language has another name for; it is reported."""
        said = [call.shape, *(word for word in call.words if isinstance(word, ast.Word))]
        meant = shape_meant([word.text for word in said])
        if meant is None or (meant[1] == 1 and call.shape.text in SHAPES):
            return False
        now, count = meant
        span = call.shape.span.to(said[count - 1].span)
        help_text = f"it is written `{SHAPES[now].usage}`"
        self._once("shape-unknown", span, name=span.text, help=help_text, fixes=(change_to(span, now),))
        return True

    def _filling(self, call: ast.ShapeCall) -> ShapeUse | None:
        if self._trade_word(call):
            return None
        shape = SHAPES.get(call.shape.text)
        if shape is None and (now := FORMER_NAMES.get(call.shape.text)):
            self._once(
                "word-renamed",
                call.shape.span,
                word=call.shape.text,
                now=now,
                help=renamed_help(now),
                fixes=(change_to(call.shape.span, now, sure=True),),
            )
            shape = SHAPES[now]
        if shape is None:
            near = nearest_word(call.shape.text, SHAPES)
            help_text = f"did you mean `{near}`?" if near else f"the shapes are {', '.join(SHAPES)}"
            fixes = did_you_mean(call.shape, near)
            self._once("shape-unknown", call.shape.span, name=call.shape.text, help=help_text, fixes=fixes)
            return None
        filling = shape.read(WordReader(call.words))
        if filling is None:
            help_text = f"write it as `{shape.usage}`: {shape.summary}"
            self._once("shape-words", call.span, shape=shape.name, usage=shape.usage, help=help_text)
            return None
        words = [word for word in call.words if isinstance(word, ast.Word) and word.text in filling.fabrics]
        known = [self._fabric(word) for word in words]
        return filling if all(known) else None

    def _fabric(self, word: ast.Word) -> bool:
        if word.text in self._names.fabrics:
            return True
        self._unknown(word, "fabric")
        return False

    def _unknown(self, word: ast.Word, kind: str) -> None:
        """Report a name that nothing declares where it is first said; said again, it is the same mistake."""
        if word.text in self._missing:
            return
        # Looking for what was meant takes a while: after so many the file has been mistaken for another.
        near = self._names.nearest(word.text) if len(self._missing) < MOST_GUESSES else None
        self._missing.add(word.text)
        if word.text in self._names.damaged or (self._names.incomplete and not near):
            return
        fixes = did_you_mean(word, near)
        turn = None if near else _TURNS_IN_WORDS.get(word.text.lower())
        if kind == "fabric" and word.text in self._names.units:
            fixes = ()
            help_text = f"`{word.text}` is a unit; a shape is made of fabrics"
        elif turn:
            help_text = f"write `{turn}` right behind the cell that is meant"
        elif near:
            help_text = f"did you mean `{near}`?"
        else:
            help_text = f'declare it: `fabric {word.text} "Its name in print" #c0c0c0`'
        if not turn and word.text not in self._names.units and (file := self._names.file_of(word.span)) is not None:
            fixes = (*fixes, declare_fabric(word, file))
        self._once("name-unknown", word.span, kind=kind, name=word.text, help=help_text, fixes=fixes)

    def _fit(
        self, filling: ShapeUse, name: str | None, span: Span, natural: tuple[Exact, Exact], symmetry: Symmetry
    ) -> BlockLayout | None:
        """A shape in its box before turning, then turned."""
        wants = SHAPES[filling.shape.rstrip("\\")].wants(filling)
        if wants is not None and natural[0] != wants * natural[1]:
            title = name or SHAPES[filling.shape.rstrip("\\")].title
            self._does_not_fit(title, wants, natural, symmetry, span, _half_rectangle(filling))
            return None
        count = SHAPES[filling.shape.rstrip("\\")].count
        if count is not None and count(filling, *natural) > MOST_IN_A_FIELD:
            help_text = f"a field has at most {MOST_IN_A_FIELD:,} patches; make its patches larger"
            self._once("too-many-patches", span, help=help_text)
            return None
        key = (filling, *natural, symmetry, name)
        if key not in self._shaped:
            self._shaped[key] = _shape_layout(filling, name, natural, symmetry)
        return self._shaped[key]

    def _does_not_fit(
        self,
        name: str,
        wants: Fraction,
        natural: tuple[Exact, Exact],
        symmetry: Symmetry,
        span: Span,
        instead: str = "",
    ) -> None:
        if not self._size_is_known:  # its cells may have any proportion
            return
        gets = Fraction(natural[0]) / Fraction(natural[1])  # type: ignore[arg-type]  # boxes of a grid are rational
        turned = symmetry.turned_extent(Fraction(1), Fraction(2))[0] == Fraction(2)
        if gets == 1 / wants:
            help_text = "take the turn off, or turn once more" if turned else "turn it with `>` or `<`"
        else:
            help_text = (
                "change `columns` and `heights`, let it continue over more cells with `-` and `|`, or let the block be "
                "as oblong as its cells: three by two are `size 9 x 6 in`"
            )
        if instead:
            help_text += f"; a rectangle cut corner to corner is `{instead}`"
        self._once(
            "unit-does-not-fit",
            span,
            name=name,
            wants=_proportion(wants),
            gets=_proportion(gets),
            help=help_text,
            fixes=fits_so(span, wants, gets, turned=turned, instead=instead, around=self._around),
        )

    # --- named units ---------------------------------------------------------------------------

    def _lay_named(self, cell: ast.NameCell, natural: tuple[Exact, Exact], symmetry: Symmetry) -> BlockLayout | None:
        name = cell.name.text
        unit = self._names.units.get(name)
        if unit is None:
            self._unknown(cell.name, "fabric or unit")
            return None
        if unit.shape is not None:
            filling = self._filling(unit.shape)
            return None if filling is None else self._fit(filling, name, cell.span, natural, symmetry)
        return self._lay_grid_unit(unit, cell, natural, symmetry)

    def _lay_grid_unit(
        self, unit: ast.UnitDeclaration, cell: ast.NameCell, natural: tuple[Exact, Exact], symmetry: Symmetry
    ) -> BlockLayout | None:
        wants = self._proportion_of(unit)
        if wants is None:
            return None
        if natural[0] != wants * natural[1]:
            self._does_not_fit(unit.name.text, wants, natural, symmetry, cell.span)
            return None
        key = (unit.name.text, *natural)
        if key not in self._laid:
            self._laid[key] = self._lay_unit_lines(unit, *natural)
        inner = self._laid[key]
        return None if inner is None else _turned_unit(inner, unit.name.text, natural, symmetry)

    def proportion_of(self, unit: ast.UnitDeclaration) -> Fraction | None:
        """Width to height of a unit of rows or free patches; None where it is not known, which is reported."""
        return self._proportion_of(unit)

    def _proportion_of(self, unit: ast.UnitDeclaration) -> Fraction | None:
        if any(is_damaged_drawing(line) for line in unit.lines):
            return None
        for line in unit.lines:
            if isinstance(line, ast.GridExtent):
                return line.across.value / line.down.value if self._is_usable(line) else None
        if not any(isinstance(line, ast.Row) for line in unit.lines):
            help_text = "give it `row` lines, or `grid` and `patch` lines"
            self._once("rows-missing", unit.name.span, kind="unit", name=unit.name.text, help=help_text)
            return None
        grid = self._grid_of(unit)
        return None if grid is None else sum(grid.columns, ZERO) / sum(grid.heights, ZERO)

    def _lay_unit_lines(self, unit: ast.UnitDeclaration, width: Exact, height: Exact) -> BlockLayout | None:
        across, down = Fraction(width), Fraction(height)  # type: ignore[arg-type]  # boxes of a grid are rational
        if not any(isinstance(line, ast.Row) for line in unit.lines):
            self.look_up(unit.lines)
            patches = lay_free_patches(unit.lines, unit.name.span, across, down, self._names, self._problems)
            free = None if patches is None else BlockLayout(patches, ())
            return self._with_appliques(free, unit.lines, None, (across, down))
        grid = self._grid_of(unit)
        if grid is None:
            return None
        laid = self._lay_grid(unit.lines, grid, lines_at(grid.columns, across), lines_at(grid.heights, down))
        return self._with_appliques(laid, unit.lines, grid, (across, down))

    def _once(
        self,
        code: str,
        span: Span,
        *,
        help: str | None = None,  # noqa: A002
        fixes: tuple[Fix, ...] = (),
        **values: str,
    ) -> None:
        """Report a fault of a unit once, however often the unit is placed."""
        if (code, span) not in self._reported:
            self._reported.add((code, span))
            self._problems.report(code, span, help=help, related=(), fixes=fixes, **values)


def _in_brackets(shape: ast.NameCell, row: ast.Row) -> Fix:
    """The fix that puts brackets round a shape and all the words after it in its row."""
    last = row.cells[-1].span
    return Fix("Put brackets round it", (Edit(shape.span.before, "("), Edit(last.after, ")")))


def _even_lines(
    lines: Sequence[ast.BlockLine], width: Fraction, height: Fraction
) -> tuple[tuple[Fraction, ...], tuple[Fraction, ...]]:
    """Grid lines of a block of free patches: the squares of its `grid`."""
    for line in lines:
        if isinstance(line, ast.GridExtent) and line.across.value > 0 and line.down.value > 0:
            return _squares_along(line.across.value, width), _squares_along(line.down.value, height)
    return (ZERO, width), (ZERO, height)


def _squares_along(count: Fraction, length: Fraction) -> tuple[Fraction, ...]:
    """Lines of `count` squares along `length`; where they do not come out even, the last is narrower."""
    return (*(length * i / count for i in range(ceil(count))), length)


def _half_rectangle(filling: ShapeUse) -> str:
    """How to write the same two triangles in a box that is no square, for those of a half-square; else nothing."""
    if filling.shape not in (HALF, HALF_BACK):
        return ""
    left, right = filling.fabrics
    return f"({OBLONG} {left} {right})" if filling.shape == HALF else f"({OBLONG} {right} {left})~"


def _shape_layout(filling: ShapeUse, name: str | None, natural: tuple[Exact, Exact], symmetry: Symmetry) -> BlockLayout:
    width, height = natural
    symmetry_here, plain = symmetry, filling
    if filling.shape == HALF_BACK:
        # `a\b` is `b/a` mirrored left for right: the mirror image keeps a on the left.
        plain = ShapeUse(HALF, (filling.fabrics[1], filling.fabrics[0]))
        symmetry_here = from_turns("~").then(symmetry)
        width, height = symmetry_here.inverse.turned_extent(*symmetry.turned_extent(width, height))
    if plain.shape == OBLONG and width == height:
        # In a square it is the usual half, by whatever name, and can be made as one.
        plain = replace(plain, shape=HALF)
    patches = _shape_patches(plain, width, height)
    if symmetry_here != IDENTITY:
        patches = tuple(patch.turned(symmetry_here, width, height) for patch in patches)
    if plain.shape == square.SHAPE.name:
        return BlockLayout(patches, ())
    return BlockLayout(patches, (UnitPlace(name, plain, ZERO, ZERO, width, height, symmetry_here, 0, len(patches)),))


def _shape_patches(filling: ShapeUse, width: Exact, height: Exact) -> tuple[Patch, ...]:
    """The patches of a shape as drawn, with their curved sides where the shape has any."""
    shape = SHAPES[filling.shape]
    cloth = shape.draw(filling, width, height)
    curved = shape.bend(filling, width, height) if shape.bend else (None,) * len(cloth)
    return tuple(Patch(fabric, polygon, true) for (fabric, polygon), true in zip(cloth, curved, strict=True))


def _turned_unit(inner: BlockLayout, name: str, natural: tuple[Exact, Exact], symmetry: Symmetry) -> BlockLayout:
    width, height = natural
    whole = UnitPlace(name, None, ZERO, ZERO, width, height, symmetry, 0, len(inner.patches))
    if symmetry == IDENTITY:
        return BlockLayout(inner.patches, (whole, *inner.units), inner.appliques)
    patches = tuple(patch.turned(symmetry, width, height) for patch in inner.patches)
    units = tuple(_turned_place(unit, width, height, symmetry) for unit in inner.units)
    return BlockLayout(
        patches, (whole, *units), tuple(piece.turned(symmetry, width, height) for piece in inner.appliques)
    )


def _turned_place(unit: UnitPlace, width: Exact, height: Exact, symmetry: Symmetry) -> UnitPlace:
    """A unit's place after the unit around it is turned."""
    across, down = unit.symmetry.turned_extent(unit.width, unit.height)
    one = symmetry.apply(Point(unit.x, unit.y), width, height)
    other = symmetry.apply(Point(unit.x + across, unit.y + down), width, height)
    return replace(unit, x=min(one.x, other.x), y=min(one.y, other.y), symmetry=unit.symmetry.then(symmetry))


def _put(
    layout: BlockLayout, at: tuple[Exact, Exact], cell: Span, patches: list[Patch], units: list[UnitPlace]
) -> None:
    """Add a layout to what is laid already, moved to its place; what has no span yet was drawn by the cell."""
    before = len(patches)
    dx, dy = at
    patches.extend(patch.moved(dx, dy, cell) for patch in layout.patches)
    units.extend(
        replace(
            unit,
            x=unit.x + dx,
            y=unit.y + dy,
            first=unit.first + before,
            stop=unit.stop + before,
            span=unit.span or cell,
        )
        for unit in layout.units
    )


def _proportion(ratio: Fraction) -> str:
    return f"{ratio.numerator} : {ratio.denominator}"
