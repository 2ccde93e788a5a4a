"""Block files in memory, read all the way to their facts, and words for what they say."""

from collections.abc import Mapping

from blockdsl import pipeline
from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Diagnostic, Problems, Source
from blockdsl.facts import BlockFacts, FileFacts
from blockdsl.geometry import Polygon, sign
from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.geometry.number import write_exact
from blockdsl.geometry.polygon import Point, cross, edges, step
from blockdsl.model import BlockDesign

CLOTH = """
fabric fog     "Harbour fog" #dfe3e0
fabric lantern "Lantern"     #e0a030
fabric slate   "Wet slate"   #3a4750
fabric moss    "Moss"        #5f7a3a
"""


def read(text: str, files: Mapping[str, str] | None = None) -> tuple[FileFacts, list[Diagnostic]]:
    """The facts of a file and all that is wrong with it."""
    problems = Problems()
    facts = pipeline.run(Source("mine.block", text), TextReader(files), problems).facts
    return facts, list(problems)


def written(*lines: str, size: str = "12 in", above: str = "") -> str:
    """A file with four fabrics, what is declared `above`, and one block of these lines."""
    return "\n".join([CLOTH, above, 'block "Mine"', f"  size {size}", *(f"  {line}" for line in lines), ""])


def block(*lines: str, size: str = "12 in", above: str = "") -> BlockFacts:
    """The facts of the block, in which nothing may be wrong but warnings."""
    return block_of(written(*lines, size=size, above=above))


def block_of(text: str) -> BlockFacts:
    """The facts of the only block of a file, in which nothing may be wrong but warnings."""
    facts, problems = read(text)
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    return facts.blocks[0]


def errors(*lines: str, size: str = "12 in", above: str = "") -> list[Diagnostic]:
    """The errors in a file with this block."""
    return [problem for problem in read(written(*lines, size=size, above=above))[1] if problem.severity == "error"]


def warnings(*lines: str, size: str = "12 in", above: str = "") -> list[Diagnostic]:
    """The warnings about a file with this block, unused fabrics left out; there may be no errors."""
    problems = read(written(*lines, size=size, above=above))[1]
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    return [problem for problem in problems if problem.code != "fabric-unused"]


def one_error(*lines: str, size: str = "12 in", above: str = "") -> Diagnostic:
    """The only error: one mistake, one message."""
    found = errors(*lines, size=size, above=above)
    assert len(found) == 1, [problem.message for problem in found]
    return found[0]


def cloth_at(facts: BlockFacts, x: Fraction | float | str, y: Fraction | float | str) -> str:
    """The fabric at a place of the finished block, which must lie inside one patch."""
    place = Point(*(read_fraction(each) if isinstance(each, str) else Fraction(each) for each in (x, y)))
    found = [patch.fabric for patch in facts.placed if _inside(patch.outline, place)]
    assert len(found) == 1, f"{found} at {x}, {y}"
    return found[0]


def _inside(outline: Polygon, place: Point) -> bool:
    """By the crossings of a ray to the right; a place on an edge is in no patch."""
    within = False
    for a, b in edges(outline):
        side = sign(cross(step(a, b), step(a, place)))
        if side == 0 and min(a.x, b.x) <= place.x <= max(a.x, b.x) and min(a.y, b.y) <= place.y <= max(a.y, b.y):
            return False
        if (a.y > place.y) != (b.y > place.y):
            within ^= side > 0 if b.y > a.y else side < 0
    return within


def around(facts: BlockFacts) -> str:
    """The fabrics near the middles of the four sides: top, right, bottom, left."""
    width, height = Fraction(facts.finished[0]), Fraction(facts.finished[1])  # type: ignore[arg-type]
    near = Fraction(1, 16)
    places = [(width / 2, near), (width - near, height / 2), (width / 2, height - near), (near, height / 2)]
    # A little off the middle, which is often a corner of patches.
    nudge = Fraction(1, 128)
    return " ".join(cloth_at(facts, x + nudge, y + nudge) for x, y in places)


def corners(facts: BlockFacts) -> str:
    """The fabrics in the four corners: top left, top right, bottom right, bottom left."""
    width, height = Fraction(facts.finished[0]), Fraction(facts.finished[1])  # type: ignore[arg-type]
    near, off = Fraction(1, 8), Fraction(1, 64)
    places = [(near, off), (width - near, off), (width - near, height - off), (near, height - off)]
    return " ".join(cloth_at(facts, x, y) for x, y in places)


def cut_lines(facts: BlockFacts, fabric: str | None = None) -> list[str]:
    """The cut list in words: `fog: 2 square 3 7/8 once for patches, gives 4`."""
    lines = []
    for cut in facts.cutting:
        if fabric in (None, cut.fabric):
            one, other = (write_exact(side) for side in cut.cut)
            size = one if cut.piece == "square" else f"{one} x {other}"
            subcut = "" if cut.subcut == "none" else f" {cut.subcut}"
            spare = f", {cut.spare} spare" if cut.spare else ""
            lines.append(f"{cut.fabric}: {cut.count} {cut.piece} {size}{subcut} for {cut.yields}{spare}")
    return lines


def unit_lines(facts: BlockFacts) -> list[str]:
    """The units in words: `half-square triangle: 4 of 3 x 3, two at a time`."""
    lines = []
    for unit in facts.units:
        one, other = (write_exact(side) for side in unit.finished)
        spare = f", {unit.spare} spare" if unit.spare else ""
        lines.append(f"{unit.title}: {unit.count} of {one} x {other}, {unit.method}{spare}")
    return lines


def letters(facts: BlockFacts) -> str:
    """The letters of the patches in the order in which they lie."""
    return " ".join(patch.label for patch in facts.placed)


def exactly(measures: object) -> object:
    """Exact numbers to be compared with whole ones and fractions, which they may equal."""
    return measures


def read_program(*lines: str, size: str = "12 in", above: str = "") -> BlockDesign:
    """The block as it was understood, before anything is sewn or cut."""
    problems = Problems()
    program = pipeline.analyse(Source("mine.block", written(*lines, size=size, above=above)), TextReader(), problems)
    assert not problems.has_errors, [problem.message for problem in problems]
    return program.blocks[0]
