"""From the grammar's tree of a line to the node that the line says."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final, cast

from lark import Token

from blockdsl.diagnostics import Span
from blockdsl.syntax.ast import (
    Applique,
    BlockDeclaration,
    BlockLine,
    BookBlock,
    BookDeclaration,
    BookLine,
    BookText,
    By,
    Chapter,
    Colourway,
    Columns,
    Compare,
    Corner,
    CutterDeclaration,
    ExpectCut,
    ExpectFinished,
    ExpectUnit,
    FabricDeclaration,
    Family,
    Font,
    FreePatch,
    Grain,
    GridExtent,
    Heights,
    Language,
    LengthLiteral,
    LengthUnit,
    Make,
    MakerDeclaration,
    MakerLine,
    Measure,
    Note,
    Number,
    Origin,
    Paper,
    Press,
    Pressed,
    QuiltDeclaration,
    QuiltLine,
    Row,
    Seam,
    Size,
    Sizes,
    Techniques,
    Trim,
    UnitDeclaration,
    Use,
    Word,
)
from blockdsl.syntax.atoms import Place, SlipFound, number_slip, slip_at
from blockdsl.syntax.cells import build_cells, build_shape
from blockdsl.syntax.grammar import LineTree
from blockdsl.syntax.lines import RawLine, Slip
from blockdsl.syntax.numbers import NumberFault, read_place

Head = (
    Use
    | FabricDeclaration
    | UnitDeclaration
    | BlockDeclaration
    | CutterDeclaration
    | QuiltDeclaration
    | BookDeclaration
    | MakerDeclaration
)
LineNode = Head | BlockLine | QuiltLine | BookLine | MakerLine

_PRESSED: Final[dict[str, Pressed]] = {
    "open": "open",
    "as it nests": "as it nests",
    "toward dark": "toward dark",
    "toward the dark": "toward dark",
    "towards dark": "toward dark",
    "towards the dark": "toward dark",
}


def build_line(line: RawLine, tree: LineTree) -> LineNode:
    """The node of one line; a declaration comes without the lines below it.

    Errors: SlipFound where a word fits the grammar but cannot stand.
    """
    return _BUILD[tree.data](Place(line.source, line.start), line.span(), tree)


# --- reading a tree ----------------------------------------------------------------------------


def _tokens(tree: LineTree, *kinds: str) -> list[Token]:
    return [child for child in tree.children if isinstance(child, Token) and child.type in kinds]


def _trees(tree: LineTree, rule: str) -> list[LineTree]:
    return [
        child for child in tree.children if not isinstance(child, Token) and child is not None and child.data == rule
    ]


def _token(tree: LineTree, kind: str) -> Token:
    return _tokens(tree, kind)[0]


def _maybe(tree: LineTree, *kinds: str) -> Token | None:
    found = _tokens(tree, *kinds)
    return found[0] if found else None


def length_of(place: Place, tree: LineTree) -> LengthLiteral:
    """The one length in a tree."""
    (length,) = _trees(tree, "length")
    return place.length(_token(length, "NUMBER"), _token(length, "LENGTH_UNIT"))


def extent_of(place: Place, tree: LineTree) -> tuple[LengthLiteral, LengthLiteral]:
    """Width and height; the unit after the second number holds for both, and one number is a square."""
    (extent,) = _trees(tree, "extent")
    numbers, units = _tokens(extent, "NUMBER"), _tokens(extent, "LENGTH_UNIT")
    if len(numbers) == 1:
        side = place.length(numbers[0], units[0])
        return side, side
    if units[0] != units[-1]:
        raise SlipFound(slip_at("units-mixed", units[-1], "give both measures in one unit"))
    span = place.span(numbers[0], units[0] if len(units) == 2 else None)
    unit = cast("LengthUnit", str(units[-1]))
    width = LengthLiteral(span, place.number(numbers[0]).value, unit)
    return width, place.length(numbers[1], units[-1])


def _all_numbers(place: Place, tree: LineTree) -> tuple[Number, ...]:
    return tuple(number for token in _tokens(tree, "NUMBER") for number in place.numbers(token))


# --- declarations ------------------------------------------------------------------------------


def _use(place: Place, span: Span, tree: LineTree) -> Use:
    return Use(span, place.quoted(_token(tree, "TEXT")), _maybe(tree, "LIBRARY") is not None)


def _fabric(place: Place, span: Span, tree: LineTree) -> FabricDeclaration:
    value: Word | None = None
    width: LengthLiteral | None = None
    directional = False
    for choice in _trees(tree, "fabric_choice"):
        first = cast("Token", choice.children[0])
        if first.type == "WIDTH":
            _not_twice(first, "width", said=width is not None)
            width = length_of(place, choice)
        elif first == "directional":
            _not_twice(first, "directional", said=directional)
            directional = True
        elif first in {"light", "medium", "dark"}:
            _not_twice(first, "the value", said=value is not None)
            value = place.word(first)
        else:
            advice = "after the colour come only `light`, `medium` or `dark`, `width 42 in` and `directional`"
            raise SlipFound(slip_at("value-unknown", first, advice, name=str(first)))
    name, label, colour = _token(tree, "NAME"), _token(tree, "TEXT"), _token(tree, "COLOUR")
    return FabricDeclaration(span, place.word(name), place.text(label), colour.lower(), value, width, directional)


def _not_twice(token: Token, what: str, *, said: bool) -> None:
    if said:
        raise SlipFound(slip_at("setting-twice", token, "leave one of them out", what=what))


def _unit(place: Place, span: Span, tree: LineTree) -> UnitDeclaration:
    shapes = _trees(tree, "shape")
    shape = build_shape(place, shapes[0]) if shapes else None
    return UnitDeclaration(span, place.word(_token(tree, "NAME")), shape, ())


def _block(place: Place, span: Span, tree: LineTree) -> BlockDeclaration:
    return BlockDeclaration(span, place.text(_token(tree, "TEXT")), ())


def _cutter(place: Place, span: Span, tree: LineTree) -> CutterDeclaration:
    label, shape = place.text(_token(tree, "TEXT")), place.word(_token(tree, "NAME"))
    return CutterDeclaration(span, label, shape, *extent_of(place, tree))


# --- grid lines --------------------------------------------------------------------------------


def _row(place: Place, span: Span, tree: LineTree) -> Row:
    return Row(span, build_cells(place, cast("list[LineTree]", tree.children[1:])))


def _columns(place: Place, span: Span, tree: LineTree) -> Columns:
    return Columns(span, _all_numbers(place, tree))


def _heights(place: Place, span: Span, tree: LineTree) -> Heights:
    return Heights(span, _all_numbers(place, tree))


def _grid(place: Place, span: Span, tree: LineTree) -> GridExtent:
    across, down = _tokens(tree, "NUMBER")
    return GridExtent(span, place.number(across), place.number(down))


def _patch(place: Place, span: Span, tree: LineTree) -> FreePatch:
    corners = []
    for token in _tokens(tree, "PLACE"):
        try:
            corners.append(Corner(place.span(token), *read_place(token)))
        except NumberFault as fault:
            raise number_slip(fault, token) from None
    return FreePatch(span, place.word(_token(tree, "NAME")), tuple(corners))


def _applique(place: Place, span: Span, tree: LineTree) -> Applique:
    under = length_of(place, tree) if _trees(tree, "length") else None
    fabric, path = place.word(_token(tree, "NAME")), place.quoted(_token(tree, "TEXT"))
    return Applique(span, fabric, path, under, _maybe(tree, "RAW") is not None)


# --- choices in a block ------------------------------------------------------------------------


def _size(place: Place, span: Span, tree: LineTree) -> Size:
    return Size(span, *extent_of(place, tree))


def _seam(place: Place, span: Span, tree: LineTree) -> Seam:
    return Seam(span, length_of(place, tree))


def _measure(place: Place, span: Span, tree: LineTree) -> Measure:
    return Measure(span, length_of(place, tree))


def _trim(place: Place, span: Span, tree: LineTree) -> Trim:
    return Trim(span, length_of(place, tree))


def _grain(place: Place, span: Span, tree: LineTree) -> Grain:
    return Grain(span, place.word(_token(tree, "NAME")), place.word(_tokens(tree, "LONG", "SHORT")[0]))


def _compare(_place: Place, span: Span, _tree: LineTree) -> Compare:
    return Compare(span)


def _sizes(place: Place, span: Span, tree: LineTree) -> Sizes:
    return Sizes(span, _widths(place, tree))


def _make(place: Place, span: Span, tree: LineTree) -> Make:
    what, *method = (place.word(token) for token in _tokens(tree, "NAME"))
    count = _maybe(tree, "NUMBER")
    number = place.number(count) if count else None
    return Make(span, what, Word(method[0].span.to(method[-1].span), " ".join(word.text for word in method)), number)


def _colourway(place: Place, span: Span, tree: LineTree) -> Colourway:
    changes = []
    for change in _trees(tree, "change"):
        before, after = _tokens(change, "NAME")
        changes.append((place.word(before), place.word(after)))
    return Colourway(span, place.text(_token(tree, "TEXT")), tuple(changes))


def _note(place: Place, span: Span, tree: LineTree) -> Note:
    return Note(span, place.text(_token(tree, "TEXT")))


def _family(place: Place, span: Span, tree: LineTree) -> Family:
    return Family(span, place.word(_token(tree, "NAME")))


def _font(place: Place, span: Span, tree: LineTree) -> Font:
    return Font(span, place.quoted(_token(tree, "TEXT")))


def press_of(place: Place, span: Span, tree: LineTree) -> Press:
    """A line that says how seams are pressed, in a quilt as elsewhere."""
    del place
    words = _tokens(tree, "NAME")
    said = " ".join(words)
    if said not in _PRESSED:
        advice = "seams are pressed `open`, `as it nests` or `toward dark`"
        first, last = cast("int", words[0].start_pos), cast("int", words[-1].end_pos)
        raise SlipFound(Slip("pressing-unknown", first, last, advice, {"text": said}))
    return Press(span, _PRESSED[said])


def language_of(place: Place, span: Span, tree: LineTree) -> Language:
    """A line that says what the pages are in, in a quilt as elsewhere."""
    return Language(span, place.word(_token(tree, "NAME")))


def _source(place: Place, span: Span, tree: LineTree) -> Origin:
    return Origin(span, place.text(_token(tree, "TEXT")))


def _expect_cut(place: Place, span: Span, tree: LineTree) -> ExpectCut:
    fabric, piece = (place.word(token) for token in _tokens(tree, "NAME"))
    count, *sides = (place.number(token) for token in _tokens(tree, "NUMBER"))
    subcut = _maybe(tree, "ONCE", "TWICE")
    return ExpectCut(span, fabric, count, piece, sides[0], sides[-1], place.word(subcut) if subcut else None)


def _expect_unit(place: Place, span: Span, tree: LineTree) -> ExpectUnit:
    count = _maybe(tree, "NUMBER")
    number = place.number(count) if count else None
    return ExpectUnit(span, place.word(_token(tree, "NAME")), *extent_of(place, tree), number)


def _expect_finished(place: Place, span: Span, tree: LineTree) -> ExpectFinished:
    return ExpectFinished(span, *extent_of(place, tree))


# --- books -------------------------------------------------------------------------------------


def _book(place: Place, span: Span, tree: LineTree) -> BookDeclaration:
    return BookDeclaration(span, place.text(_token(tree, "TEXT")), ())


def _by(place: Place, span: Span, tree: LineTree) -> By:
    return By(span, place.text(_token(tree, "TEXT")))


def _paper(place: Place, span: Span, tree: LineTree) -> Paper:
    width = length_of(place, tree) if _trees(tree, "length") else None
    return Paper(span, place.word(_token(tree, "NAME")), width)


def _chapter(place: Place, span: Span, tree: LineTree) -> Chapter:
    return Chapter(span, place.text(_token(tree, "TEXT")))


def _widths(place: Place, tree: LineTree) -> tuple[LengthLiteral, ...]:
    """`6 9 12 in 30 cm`: several widths, the unit behind those that it holds for."""
    widths: list[LengthLiteral] = []
    for sizes in _trees(tree, "sizes"):
        unit = _token(sizes, "LENGTH_UNIT")
        *before, last = _tokens(sizes, "NUMBER")
        numbers = [number for token in before for number in place.numbers(token)]
        widths += [LengthLiteral(number.span, number.value, cast("LengthUnit", str(unit))) for number in numbers]
        widths.append(place.length(last, unit))
    return tuple(widths)


def _book_block(place: Place, span: Span, tree: LineTree) -> BookBlock:
    return BookBlock(span, place.text(_token(tree, "TEXT")), _widths(place, tree))


def _quilt(place: Place, span: Span, tree: LineTree) -> QuiltDeclaration:
    return QuiltDeclaration(span, place.text(_token(tree, "TEXT")), ())


def _maker(place: Place, span: Span, tree: LineTree) -> MakerDeclaration:
    return MakerDeclaration(span, place.text(_token(tree, "TEXT")), ())


def _book_text(place: Place, span: Span, tree: LineTree) -> BookText:
    return BookText(span, place.quoted(_token(tree, "TEXT")))


def _techniques(place: Place, span: Span, tree: LineTree) -> Techniques:
    del place, tree
    return Techniques(span)


_BUILD: Final[dict[str, Callable[[Place, Span, LineTree], LineNode]]] = {
    "use": _use,
    "fabric": _fabric,
    "unit": _unit,
    "block": _block,
    "cutter": _cutter,
    "row": _row,
    "columns": _columns,
    "heights": _heights,
    "grid": _grid,
    "patch": _patch,
    "applique": _applique,
    "size": _size,
    "seam": _seam,
    "measure": _measure,
    "trim": _trim,
    "block_sizes": _sizes,
    "make": _make,
    "grain": _grain,
    "compare": _compare,
    "colourway": _colourway,
    "note": _note,
    "family": _family,
    "source": _source,
    "press": press_of,
    "language": language_of,
    "font": _font,
    "expect_cut": _expect_cut,
    "expect_unit": _expect_unit,
    "expect_finished": _expect_finished,
    "book": _book,
    "by": _by,
    "paper": _paper,
    "chapter": _chapter,
    "book_block": _book_block,
    "quilt": _quilt,
    "maker": _maker,
    "book_text": _book_text,
    "techniques": _techniques,
}
