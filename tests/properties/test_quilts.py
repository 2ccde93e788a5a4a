"""What holds for every quilt: all of it is covered, all that is cut is at least what is sewn, nothing is cut twice."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from blockdsl.cutting.quilt_cuts import quilt_cuts
from blockdsl.cutting.quilt_pieces import plain_pieces
from blockdsl.geometry import Exact
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.polygon import area
from blockdsl.model.quilt import QuiltDesign
from tests.unit.model.quilts import covered, design

lengths = st.sampled_from(["1 in", "1 1/2 in", "2 in", "5/8 in"])
fabrics = st.sampled_from(["fog", "lantern", "slate", "moss"])
wheres = st.sampled_from(["all", "every second", "odd rows", "even columns"])


@st.composite
def quilts(draw: st.DrawFn) -> QuiltDesign:
    """A quilt without errors, of square blocks that may be turned any way."""
    setting = draw(st.sampled_from(["straight", "dropped columns", "on point", "strippy"]))
    block = draw(st.sampled_from(["Four", "Chain", "Pin"]))
    lines = [f'set {setting} {draw(st.integers(1, 4))} x {draw(st.integers(1, 4))} of "{block}"']
    if setting in ("on point", "strippy") or draw(st.booleans()):
        lines.append(f"fill {draw(fabrics)}")
    if draw(st.booleans()):
        lines.append(draw(st.sampled_from(['alternate "Pin"', "alternate moss"])))
    if draw(st.booleans()):
        posts = f" posts {draw(fabrics)}" if draw(st.booleans()) else ""
        lines.append(f"sash {draw(lengths)} {draw(fabrics)}{posts}{draw(st.sampled_from(['', ' outer']))}")
    if draw(st.booleans()):
        lines.append(f"turn {draw(st.sampled_from(['>', '<', '>>', '~', '~>']))} on {draw(wheres)}")
    corners = st.sampled_from(["", " mitred", " butted top first", " corners fog"])
    lines += [f"border {draw(lengths)} {draw(fabrics)}{draw(corners)}" for _ in range(draw(st.integers(0, 2)))]
    return design(*lines)


@given(quilts())
def test_blocks_and_cloth_are_as_large_as_the_quilt(laid: QuiltDesign) -> None:
    assert covered(laid) == laid.width * laid.height


@given(quilts())
def test_everything_inside_the_borders_is_in_one_row_but_for_the_corners(laid: QuiltDesign) -> None:
    seen = [(member.what, member.index) for row in laid.rows for member in row.members]
    corners = sum(cloth.role == "corner triangle" for cloth in laid.cloth)
    inside = sum(not cloth.ring for cloth in laid.cloth) + sum(not block.ring for block in laid.blocks)
    assert len(set(seen)) == len(seen) == inside - corners


@given(quilts())
def test_what_is_cut_is_more_than_what_is_sewn_of_every_fabric(laid: QuiltDesign) -> None:
    sewn: dict[str, Exact] = {}
    for place in laid.blocks:
        for patch in laid.kinds[place.kind].design.patches:
            sewn[patch.fabric] = sewn.get(patch.fabric, Fraction(0)) + area(patch.outline)
    for cloth in laid.cloth:
        sewn[cloth.fabric] = sewn.get(cloth.fabric, Fraction(0)) + area(cloth.outline)
    cut: dict[str, Fraction] = {}
    for each in quilt_cuts(laid, plain_pieces(laid)):
        cut[each.fabric] = cut.get(each.fabric, Fraction(0)) + each.cut[0] * each.cut[1] * each.count
    assert cut.keys() == sewn.keys()
    assert all(cut[fabric] > sewn[fabric] for fabric in sewn)
