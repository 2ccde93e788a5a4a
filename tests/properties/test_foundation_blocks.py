"""Any unit that straight seams sew can be sewn to its papers: tried seam by seam."""

from dataclasses import replace

from hypothesis import assume, given, settings
from hypothesis import strategies as st

from blockdsl.geometry.fraction import Fraction
from tests.unit.model.any_block import AnyBlock, any_blocks
from tests.unit.model.blocks import block_of, read, written
from tests.unit.sewing.virtual_papers import sew

FABRICS = ("fog", "lantern", "slate", "moss")
Corner = tuple[Fraction, Fraction]


@given(any_blocks())
@settings(max_examples=15)
def test_a_whole_block_of_rows_and_shapes_is_sewn_to_its_papers(any_block: AnyBlock) -> None:
    text = replace(any_block, choices=()).text() + "  make whole as foundation\n"
    facts, problems = read(text)
    # A block of one unit has that unit's name, and some have more patches than papers are made for.
    assume(not {"foundation-too-many", "name-unknown"} & {problem.code for problem in problems})
    assert [problem.message for problem in problems if problem.severity == "error"] == []
    (found,) = facts.blocks[0].foundations
    sew(found)
    cut = sum(line.yields - line.spare for line in facts.blocks[0].cutting)
    assert cut == len(facts.blocks[0].placed) == sum(len(paper.patches) for paper in found.papers)


@st.composite
def slashed(draw: st.DrawFn) -> str:
    """A unit of 12 x 12 cut again and again by a straight line right across one of its parts."""
    parts: list[tuple[Corner, ...]] = [
        tuple((Fraction(x), Fraction(y)) for x, y in ((0, 0), (12, 0), (12, 12), (0, 12)))
    ]
    for _ in range(draw(st.integers(1, 7))):
        part = parts.pop(draw(st.integers(0, len(parts) - 1)))
        first, second = draw(st.lists(st.integers(0, len(part) - 1), min_size=2, max_size=2, unique=True).map(sorted))
        start, end = (_between(part, edge, Fraction(draw(st.integers(1, 3)), 4)) for edge in (first, second))
        parts += [(start, *part[first + 1 : second + 1], end), (end, *part[second + 1 :], *part[: first + 1], start)]
    lines = ["unit slashed", "  grid 12 x 12"]
    for place, part in enumerate(parts):
        lines.append(f"  patch {FABRICS[place % 4]} at " + " ".join(f"{x},{y}" for x, y in part))
    return "\n".join(lines)


def _between(part: tuple[Corner, ...], edge: int, share: Fraction) -> Corner:
    (x, y), (to_x, to_y) = part[edge], part[(edge + 1) % len(part)]
    return x + share * (to_x - x), y + share * (to_y - y)


@given(slashed())
@settings(max_examples=20)
def test_whatever_is_cut_by_lines_right_across_is_sewn_to_papers(unit: str) -> None:
    text = written("row slashed", "make slashed as foundation", size="12 in", above=unit)
    (found,) = block_of(text).foundations
    sew(found)
    assert 1 <= len(found.papers) <= sum(len(paper.patches) for paper in found.papers)
