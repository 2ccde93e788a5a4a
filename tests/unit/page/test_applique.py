"""What a sheet shows and says of appliqué."""

from __future__ import annotations

from blockdsl.facts import BlockFacts
from blockdsl.fullsize.pattern import pattern_of
from blockdsl.marks.clip import contains
from blockdsl.marks.display_list import Figure, Path, TextMark
from blockdsl.marks.theme import Box
from blockdsl.pictures.block import block_picture, letter_diagram
from blockdsl.wording.applique import format_applique
from tests.unit.model.blocks import CLOTH, block_of

BOX = Box(0.0, 0.0, 240.0, 240.0)
TURNED = 'applique slate "M0.2 0.2 H0.8 V0.8 H0.2 Z"'
RAW = 'applique lantern "M0.4 0.4 H0.6 V0.6 H0.4 Z" raw edge'


def facts_of(*lines: str) -> BlockFacts:
    return block_of(f'{CLOTH}\nblock "Mine"\n  size 6 in\n  row fog\n' + "".join(f"  {line}\n" for line in lines))


def places(figure: Figure) -> dict[str, tuple[float, float]]:
    return {mark.text: (mark.x_pt, mark.y_pt) for mark in figure.marks if isinstance(mark, TextMark)}


def test_a_block_without_applique_is_told_nothing_of_it() -> None:
    assert format_applique(facts_of()) == ()


def test_pieces_are_told_by_how_their_edge_is_sewn() -> None:
    first, turned, raw, care = format_applique(facts_of(TURNED, RAW))
    assert "in the order of their letters, starting with the bottom piece" in first
    assert turned.startswith("B: ")
    assert "turn ¹⁄₄ in under on the line" in turned
    assert raw.startswith("C: ")
    assert "count them in and out" in care


def test_later_pieces_are_painted_over_earlier_ones() -> None:
    facts = facts_of(TURNED, RAW)
    figure, _ = block_picture(facts, BOX)
    colours = [mark.fill for mark in figure.marks if isinstance(mark, Path) and mark.fill]
    own = {fabric.name: fabric.colour for fabric in facts.fabrics}
    assert [colour for colour in colours if colour in own.values()] == [own["fog"], own["slate"], own["lantern"]]


def test_no_letter_is_hidden_under_a_piece() -> None:
    figure, _ = letter_diagram(facts_of(TURNED, RAW), BOX)
    letters = places(figure)
    assert set(letters) == {"A", "B", "C"}
    large = tuple((x * 240.0, y * 240.0) for x, y in ((0.2, 0.2), (0.8, 0.2), (0.8, 0.8), (0.2, 0.8)))
    small = tuple((x * 240.0, y * 240.0) for x, y in ((0.4, 0.4), (0.6, 0.4), (0.6, 0.6), (0.4, 0.6)))
    assert not contains(large, *letters["A"])
    assert contains(large, *letters["B"])
    assert not contains(small, *letters["B"])
    assert contains(small, *letters["C"])


def test_a_template_says_what_is_turned_under() -> None:
    facts = facts_of(TURNED, RAW)
    said = {template.label: pattern_of(template, facts).words for template in facts.templates}
    assert said["B"].title == "Appliqué piece"
    assert any("turn" in line and "under" in line for line in said["B"].lines)
    assert "raw edge" in said["C"].lines
