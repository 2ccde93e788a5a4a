"""Plain names for what nobody has named: by what it is joined from, or by where in the block it lies."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockdsl.geometry import Exact, Polygon, sign
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import area, bounding_box
from blockdsl.model import BlockDesign, Patch
from blockdsl.sewing.order import Assembly, Joined, Piece
from blockdsl.sewing.part_name import ORDINALS, PartName
from blockdsl.sewing.steps.edges import is_rectangle
from blockdsl.sewing.steps.tree import Thing
from blockdsl.shapes import diamond, hourglass

_QUARTER, _HALF = Fraction(3, 20), Fraction(3, 10)
"""Of the block's area: four parts of a star have so much between what is set in between them, or two."""
_NUMBERS = range(2, len(ORDINALS) + 2)
_GRIDS = {2: "four-patch", 3: "nine-patch", 4: "sixteen-patch"}


def described(design: BlockDesign, thing: Thing) -> Iterator[PartName]:
    """Names that fit, the best first; the same name may fit several things."""
    patches = [design.patches[number] for number in thing.node.patches]
    labels = {fabric.name: fabric.label for fabric in design.fabrics}
    fabrics = tuple(dict.fromkeys(labels[patch.fabric] for patch in patches))
    nouns = [*_by_form(thing, patches), *_by_place(design, thing, patches)]
    if _surrounded(thing.node):
        # Of those that lie one within the other there is one middle; the others are counted.
        yield from map(PartName, (*nouns, diamond.SHAPE.title))
        yield from (PartName(diamond.SHAPE.title, ordinal=number) for number in _NUMBERS)
    nouns.append(_kind(thing))
    yield from map(PartName, nouns)
    if len(fabrics) == 1:
        yield from (PartName(noun, fabric=fabrics[0]) for noun in nouns)
    elif len(fabrics) == 2:
        yield from (PartName(noun, fabrics=fabrics) for noun in nouns)
    for number in _NUMBERS:
        yield from (PartName(noun, ordinal=number) for noun in nouns)


def _kind(thing: Thing) -> str:
    if all(seam.kind == "straight" for seam in thing.node.seams):
        if len(thing.node.parts) == 2:
            return "pair"
        if _comes_out_as_triangle(thing.node):
            return "section"
        outline = thing.node.outline
        return "square" if outline is not None and is_rectangle(outline) and _is_square(outline) else "strip"
    return "section"


def _surrounded(node: Joined) -> bool:
    """Whether two triangles are sewn to opposite sides of a middle, and two more to its other sides."""
    first, middle, last = node.parts if len(node.parts) == 3 else (None, None, None)
    square = node.outline is not None and is_rectangle(node.outline) and _is_square(node.outline)
    if not square or not isinstance(middle, Joined) or len(middle.parts) != 3:
        return False
    return all(_is_triangle(part) for part in (first, last, middle.parts[0], middle.parts[-1]))


def _is_triangle(part: Assembly | None) -> bool:
    return isinstance(part, Piece) and len(part.outline) == 3


def _comes_out_as_triangle(node: Joined) -> bool:
    """Whether a line of pieces comes out as a triangle: nobody calls that a strip."""
    return node.outline is not None and len(node.outline) == 3


def _by_form(thing: Thing, patches: Sequence[Patch]) -> Iterator[str]:
    outlines = [patch.outline for patch in patches]
    outline = thing.node.outline
    square = outline is not None and is_rectangle(outline) and _is_square(outline)
    corners = sorted(len(ring) for ring in outlines)
    if square and corners == [3, 3]:
        # Some of a block may be made two at a time, and others from triangles: then they have two names.
        yield from ("half-square triangle", "pieced square")
    if outline is not None and is_rectangle(outline) and not square and corners == [3, 3]:
        yield "half-rectangle triangle"
    if square and corners == [3, 3, 3, 3]:
        yield hourglass.SHAPE.title if len({area(ring) for ring in outlines}) == 1 else "square"
    if square and corners == [3, 3, 3]:
        yield "split square"
    if outline is not None and is_rectangle(outline) and not square and corners == [3, 3, 3] and _is_goose(outlines):
        yield "goose"
    side = round(len(patches) ** 0.5)
    if square and side in _GRIDS and side * side == len(patches) and corners == [4] * len(patches):
        sizes = {area(ring) for ring in outlines}
        if len(sizes) == 1 and all(is_rectangle(ring) and _is_square(ring) for ring in outlines):
            yield _GRIDS[side]
    if corners == [3, 3] and outline is not None and len(outline) == 3:
        yield "triangle pair"
    if corners == [3, 4] and len(patches) == 2 and outline is not None and len(outline) == 3:
        yield "corner triangle"


def _is_square(outline: Polygon) -> bool:
    ways = [(b.x - a.x, b.y - a.y) for a, b in zip(outline, (*outline[1:], outline[0]), strict=True)]
    lengths = {x * x + y * y for x, y in ways}
    return len(lengths) == 1


def _is_goose(outlines: Sequence[Polygon]) -> bool:
    areas = sorted((area(ring) for ring in outlines), key=lambda each: each)
    return areas[0] == areas[1] and areas[2] == 2 * areas[0]


def _by_place(design: BlockDesign, thing: Thing, patches: Sequence[Patch]) -> Iterator[str]:
    """By its share of the block and where it lies, when it lies so everywhere."""
    whole = bounding_box(tuple(corner for patch in design.patches for corner in patch.outline))
    left, top, right, bottom = whole
    width, height = right - left, bottom - top
    boxes = [
        bounding_box(tuple(corner for number in place for corner in design.patches[number].outline))
        for place in thing.places
    ]
    if not boxes:
        return
    share = sum((area(patch.outline) for patch in patches), Fraction(0)) / (width * height)
    count = len(boxes)
    if share >= _QUARTER and count == 4:
        yield "quarter"
    if share >= _HALF and count == 2:
        yield "half"
    touching = [sum(one == other for one, other in zip(box, whole, strict=True)) for box in boxes]
    if all(touch == 2 for touch in touching) and all(_in_corner(box, whole) for box in boxes):
        yield "corner"
    middle = (left + right) / 2, (top + bottom) / 2
    if count == 1 and touching[0] in (0, 4) and _is_middle(boxes[0], middle):
        yield "middle"
    if all(touch == 1 for touch in touching):
        yield "side"


def _in_corner(box: Sequence[Exact], whole: Sequence[Exact]) -> bool:
    return (box[0] == whole[0]) != (box[2] == whole[2]) and (box[1] == whole[1]) != (box[3] == whole[3])


def _is_middle(box: Sequence[Exact], middle: tuple[Exact, Exact]) -> bool:
    return not sign(box[0] + box[2] - 2 * middle[0]) and not sign(box[1] + box[3] - 2 * middle[1])
