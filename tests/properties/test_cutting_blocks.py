"""What is cut is never less than what is sewn, and never more than the ruler makes it."""

from hypothesis import given, settings

from blockdsl.geometry.arc import CurvedArea
from blockdsl.geometry.polygon import area
from tests.unit.model.any_block import AnyBlock, any_blocks
from tests.unit.model.blocks import block_of


@given(any_blocks())
@settings(max_examples=12)
def test_rounding_up_adds_less_than_one_mark_of_the_ruler(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    for cut in facts.cutting:
        if cut.strip is not None and cut.strip.form != "template":
            # the length of strip that a piece takes follows from measures that are each rounded up
            assert cut.strip.exact[0] <= cut.strip.width < cut.strip.exact[0] + facts.measure
            assert cut.exact[1] <= cut.cut[1]
            continue
        for side, exact in zip(cut.cut, cut.exact, strict=True):
            assert (side / facts.measure).denominator == 1
            if cut.piece == "strip" and side == cut.cut[1]:
                continue  # as long as its segments, each of them rounded up
            assert exact <= side < exact + facts.measure


@given(any_blocks())
@settings(max_examples=10)
def test_strips_are_as_long_as_their_segments_and_fit_across_the_fabric(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    for cut in facts.cutting:
        if cut.piece == "strip":
            assert cut.exact[1] <= cut.cut[1] <= (40 if facts.unit == "in" else 100)


@given(any_blocks())
@settings(max_examples=10)
def test_the_cloth_of_each_fabric_is_more_than_what_is_seen_of_it(any_block: AnyBlock) -> None:
    facts = block_of(any_block.text())
    for fabric, seen in facts.area_by_fabric:
        assert not isinstance(seen, CurvedArea)  # none of these blocks has arcs
        assert sum(cut.count * cut.cut[0] * cut.cut[1] for cut in facts.cutting if cut.fabric == fabric) > seen


@given(any_blocks())
@settings(max_examples=12)
def test_a_template_has_more_cloth_than_its_patch(any_block: AnyBlock) -> None:
    for template in block_of(any_block.text()).templates:
        assert area(template.cutting) > area(template.sewing)
