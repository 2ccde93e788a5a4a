"""Quilts in memory: three blocks to set, read all the way to their facts, and words for what lies in them."""

from collections import Counter

from blockdsl.analysis import TextReader, analyse
from blockdsl.diagnostics import Diagnostic, Problems, Source
from blockdsl.facts import QuiltFacts
from blockdsl.geometry import Exact, Point, Polygon, square_root
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import area
from blockdsl.model.quilt import QuiltDesign
from tests.unit.model.blocks import CLOTH, read

BLOCKS = """
unit beam = geese lantern on fog

unit wing
  row fog/lantern  lantern  slate

block "Four"
  size 6 in
  row fog    slate
  row slate  fog

block "Chain"
  size 6 in
  row slate  fog    slate
  row fog    slate  fog
  row slate  fog    slate

block "Pin"
  size 6 in
  make half as two at a time
  row fog\\slate  fog/slate
  row slate/fog  slate\\fog
  colourway "Night" fog=lantern

block "Small"
  size 3 in
  row lantern  fog

block "Wide"
  size 8 x 4 in
  row fog  lantern
"""


def text(*lines: str, above: str = "") -> str:
    """A file with four fabrics, the blocks, what is declared `above`, and one quilt of these lines."""
    return "\n".join([CLOTH, BLOCKS, above, 'quilt "Mine"', *(f"  {line}" for line in lines), ""])


def quilt(*lines: str, above: str = "") -> QuiltFacts:
    """The facts of the quilt, in which nothing may be wrong but warnings."""
    facts, problems = read(text(*lines, above=above))
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    return facts.quilts[0]


def told(*lines: str, above: str = "") -> list[Diagnostic]:
    """What is wrong with a file with this quilt, unused fabrics left out."""
    return [problem for problem in read(text(*lines, above=above))[1] if problem.code != "fabric-unused"]


def one_told(*lines: str, above: str = "") -> Diagnostic:
    """The only problem: one mistake, one message."""
    found = told(*lines, above=above)
    assert len(found) == 1, [problem.message for problem in found]
    return found[0]


def design(*lines: str, above: str = "") -> QuiltDesign:
    """The quilt as it is set, before anything is cut."""
    problems = Problems()
    program = analyse(Source("mine.block", text(*lines, above=above)), TextReader({}), problems)
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    return program.quilts[0]


def roles(facts: QuiltFacts) -> dict[str, int]:
    """How many pieces of plain cloth of each role."""
    counts: Counter[str] = Counter()
    for piece in facts.pieces:
        counts[piece.role] += piece.count
    return dict(counts)


def covered(laid: QuiltDesign) -> Exact:
    """The area of all that lies in the quilt: blocks and cloth."""
    total: Exact = Fraction(0)
    for place in laid.blocks:
        block = laid.kinds[place.kind].design
        total = total + block.width * block.height
    for cloth in laid.cloth:
        total = total + area(cloth.outline)
    return total


def outline_of(laid: QuiltDesign, place: int) -> Polygon:
    """Where a block lies, from what the model says of its place."""
    block = laid.blocks[place]
    kind = laid.kinds[block.kind].design
    width, height = block.symmetry.turned_extent(kind.width, kind.height)
    corners = [(Fraction(0), Fraction(0)), (width, Fraction(0)), (width, height), (Fraction(0), height)]
    if not block.on_point:
        return tuple(Point(block.x + u, block.y + v) for u, v in corners)
    root = square_root(Fraction(2)) / 2
    return tuple(Point(block.x + (u - v) * root, block.y + (u + v) * root) for u, v in corners)
