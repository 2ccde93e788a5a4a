"""The parts of a quilt's sheet: what they tell is worked out by hand here."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable

import pytest

from blockdsl.document.assembly import alike_rows, assembly, finishing, format_prints, prints
from blockdsl.document.content import Part, Section, Step, Steps
from blockdsl.document.materials import material_lines, said_of_materials
from blockdsl.document.quilt import block_totals, quilt_parts
from blockdsl.document.quilt_cuts import cut_lines, quilt_cutting, quilt_cutting_rows
from blockdsl.facts import QuiltFacts
from blockdsl.geometry import to_float
from blockdsl.marks.display_list import Figure, Mark, Path, Stamp, TextMark
from blockdsl.marks.theme import Box
from blockdsl.page.parts import flowables
from blockdsl.pictures.border import ring_picture
from blockdsl.pictures.placing import Placing
from blockdsl.pictures.prints import shade
from blockdsl.pictures.quilt import QuiltPainter, quilt_picture, rows_picture
from blockdsl.wording import messages, quilt_step_texts
from blockdsl.wording.quilt_words import format_strips_of_ring, title_of
from tests.unit.model.quilts import design, outline_of, quilt
from tests.unit.page import quilts

BOX = Box(0.0, 0.0, 300.0, 300.0)
ON_POINT = ('set on point 3 x 4 of "Pin"', 'alternate "Four"', "fill fog", "turn > on every second")
TURNED = ('set straight 4 x 4 of "Pin"', "turn ~> on even rows", "turn >> on odd columns")


def inside(marks: Iterable[Mark]) -> list[Mark]:
    """All marks, those in figures too."""
    found: list[Mark] = []
    for mark in marks:
        found.append(mark)
        if isinstance(mark, Figure):
            found += inside(mark.marks)
    return found


def words(parts: Iterable[Part]) -> str:
    """What the parts say on paper."""
    pieces = flowables(parts, messages())
    return " ".join(mark.text for piece in pieces for mark in inside(piece.marks) if isinstance(mark, TextMark))


def steps_of_finishing(facts: QuiltFacts) -> tuple[Step, ...]:
    (section,) = finishing(facts)
    assert isinstance(section, Section)
    (steps,) = section.parts
    assert isinstance(steps, Steps)
    return steps.steps


# --- pictures ------------------------------------------------------------------------------------------


@pytest.mark.parametrize("lines", [ON_POINT, TURNED, ('set dropped columns 3 x 4 of "Four"', "fill fog")])
def test_every_block_is_drawn_where_it_exactly_lies(lines: tuple[str, ...]) -> None:
    facts, laid = quilt(*lines), design(*lines)
    painter = QuiltPainter(facts, Placing(10.0, 0.0, 0.0), "test")
    for place, block in enumerate(facts.placed):
        a, b, c, d, e, f = painter.place_of(block)
        width, height = (to_float(side) * 10 for side in facts.kinds[block.kind].block.finished)
        drawn = {(a * x + c * y + e, b * x + d * y + f) for x in (0.0, width) for y in (0.0, height)}
        exact = [(to_float(x) * 10, to_float(y) * 10) for x, y in outline_of(laid, place)]
        for point in exact:
            assert min(abs(point[0] - x) + abs(point[1] - y) for x, y in drawn) < 1e-6


def test_the_picture_has_every_block_once() -> None:
    """On point, 3 × 4 blocks and 2 × 3 between them."""
    picture, _ = quilt_picture(quilt(*ON_POINT), BOX)
    stamps = [mark for mark in picture.marks if isinstance(mark, Stamp)]
    assert sum(len(stamp.places) for stamp in stamps) == 12 + 6


def test_a_block_is_drawn_once_however_often_it_is_stamped() -> None:
    """The picture of a hundred blocks has as many marks as that of four."""
    few, many = (quilt_picture(quilt(f'set straight {n} x {n} of "Chain"'), BOX)[0] for n in (2, 10))
    assert len(few.marks) == len(many.marks)


def test_rows_drawn_apart_have_every_block_and_every_sash_once() -> None:
    """3 × 4 blocks; two sashes in each of four rows, three long ones between the rows."""
    facts = quilt('set straight 3 x 4 of "Four"', "sash 1 in slate", "border 2 in fog")
    picture, _ = rows_picture(facts, BOX)
    stamps = [mark for mark in picture.marks if isinstance(mark, Stamp)]
    assert sum(len(stamp.places) for stamp in stamps) == 12
    filled = [mark for mark in picture.marks if isinstance(mark, Path) and mark.fill == "#3a4750"]
    assert sum(len(path.rings) for path in filled) == 2 * 4 + 3  # the border is not yet there


def test_blocks_of_scraps_are_drawn_in_the_tints_of_their_prints() -> None:
    facts = quilts.scrappy()
    picture, _ = quilt_picture(facts, BOX)
    spread = facts.scraps[0]
    tints = {shade("#3a4750", number, 7): uses for number, uses in enumerate(spread.uses, start=1)}
    assert len(tints) == 7
    seen: Counter[str] = Counter()
    for stamp in (mark for mark in picture.marks if isinstance(mark, Stamp)):
        for colour in {mark.fill for mark in stamp.marks if isinstance(mark, Path)} & tints.keys():
            seen[str(colour)] += len(stamp.places)
    assert dict(seen) == tints
    assert sum(seen.values()) == 42


def test_the_first_print_has_the_colour_of_the_role_and_the_last_is_farthest_from_it() -> None:
    assert shade("#3a4750", 1, 7) == "#3a4750"
    shades = [shade("#3a4750", number, 7) for number in range(1, 8)]
    assert shades == sorted(shades)
    light = [shade("#f6f2e6", number, 3) for number in (1, 2, 3)]
    assert light == sorted(light, reverse=True)  # next to white there is no room for palest
    assert len(set(light)) == 3
    assert shade("#3a4750", 1, 1) == "#3a4750"


def test_a_unit_of_a_border_has_a_capital_and_a_block_its_own_title() -> None:
    facts = quilt('set straight 3 x 4 of "Four"', "border 3 in pieced beam corners slate")
    assert [title_of(kind, messages()) for kind in facts.kinds] == ["Four", "Beam"]


@pytest.mark.parametrize(("colour", "value"), [("#f3ead6", "light"), ("#dfe3e0", "light"), ("#26304a", "dark")])
def test_no_print_of_a_light_fabric_looks_dark_and_none_of_a_dark_one_light(colour: str, value: str) -> None:
    """The parts of a colour go from 0 to 255: their mean stays on its side of the middle."""
    last = shade(colour, 8, 8)
    mean = sum(int(last[place : place + 2], 16) for place in (1, 3, 5)) / 3
    assert (mean > 255 / 2) == (value == "light")


@pytest.mark.parametrize(
    ("line", "numbers"),
    [("border 3 in fog", "2121"), ("border 3 in fog top first", "1212"), ("border 3 in fog mitred", "1234")],
)
def test_the_sides_of_a_border_are_numbered_in_the_order_of_sewing(line: str, numbers: str) -> None:
    """Top, right, bottom, left."""
    facts = quilt('set straight 3 x 4 of "Four"', line)
    picture, _ = ring_picture(facts, facts.rings[0], BOX)
    assert "".join(mark.text for mark in picture.marks if isinstance(mark, TextMark) and mark.text.isdigit()) == numbers


def test_a_pieced_border_is_drawn_unit_by_unit_with_its_corner_squares() -> None:
    """24 in on a side, beams of 6 in: four on each; a square in each corner."""
    facts = quilts.medallion()
    picture, _ = ring_picture(facts, facts.rings[2], BOX)
    stamps = [mark for mark in picture.marks if isinstance(mark, Stamp)]
    assert sum(len(stamp.places) for stamp in stamps) == 4 * 4
    squares = [mark for mark in picture.marks if isinstance(mark, Path) and mark.fill == "#3a4750"]
    assert sum(len(path.rings) for path in squares) == 4


@pytest.mark.parametrize("first", ["", " top first"])
def test_no_piece_of_a_border_drawn_round_the_top_lies_on_another(first: str) -> None:
    facts = quilt('set straight 3 x 4 of "Four"', f"border 3 in fog corners lantern{first}")
    picture, _ = ring_picture(facts, facts.rings[0], BOX)
    boxes = [
        (min(x for x, _ in ring), min(y for _, y in ring), max(x for x, _ in ring), max(y for _, y in ring))
        for mark in picture.marks
        if isinstance(mark, Path) and mark.fill in {"#dfe3e0", "#e0a030"}
        for ring in mark.rings
    ]
    assert len(boxes) == 4 + 4
    for place, (left, top, right, bottom) in enumerate(boxes):
        for left2, top2, right2, bottom2 in boxes[place + 1 :]:
            apart = right <= left2 + 0.01 or right2 <= left + 0.01 or bottom <= top2 + 0.01 or bottom2 <= top + 0.01
            assert apart


def test_strips_that_a_block_cuts_further_say_where_that_is_told() -> None:
    star = 'block "Eight"\n  size 12 in\n  row (star45 points lantern slate ground fog)\n'
    facts = quilt('set straight 2 x 2 of "Eight"', above=star)
    lines = [line for cloth in facts.fabrics for line in cut_lines(facts, cloth) if line.piece.startswith("strip")]
    assert {line.then for line in lines} == {"then follow the block instructions"}


def test_a_mitred_corner_is_drawn_in_three_steps_beside_its_words() -> None:
    mitred, butted = (
        words(assembly(quilt('set straight 3 x 4 of "Four"', f"border 4 in fog {way}"))) for way in ("mitred", "butted")
    )
    for step in ("(1) sew to the dot", "(2) fold, sew on the line", "(3) trim, press open"):
        assert step in mitred
        assert step not in butted


# --- words and tables ----------------------------------------------------------------------------------


def test_the_head_tells_how_many_of_each_block_and_the_borders_from_the_inside_out() -> None:
    head = words(quilt_parts(quilt('set straight 3 x 3 of "Four"', "alternate fog", "border 2 in lantern mitred"))[:2])
    assert "Make 5" in head
    assert "Quilt center 18 × 18 in" in head
    assert "Border 2 in, Lantern, mitered corners" in head


def test_every_piece_is_in_the_cutting_list_once() -> None:
    """By hand: 12 blocks of 2 squares of each fabric, 17 sashes (2 × 4 + 3 × 3), 6 posts, 4 border strips."""
    facts = quilt('set straight 3 x 4 of "Four"', "sash 1 in slate posts lantern", "border 2 in lantern")
    counts = Counter[str]()
    for cloth in facts.fabrics:
        for line in cut_lines(facts, cloth):
            for use, count in line.uses:
                counts[use] += count
    assert sum(counts.pop(use) for use in list(counts) if use.startswith("Four")) == 12 * 4
    assert counts == {"sashes": 17, "cornerstones": 6, "border": 4}


@pytest.mark.parametrize("name", list(quilts.ALL))
def test_the_cutting_list_has_as_many_pieces_as_the_facts_and_the_binding_and_sleeve_strips(name: str) -> None:
    facts = quilts.ALL[name]()
    _, rows = quilt_cutting_rows(facts)
    strips = sum(piece.count for cloth in facts.fabrics for piece in cloth.pieces if not piece.key.isdigit())
    assert sum(int(row[1]) for row in rows) == sum(cut.count for cut in facts.cutting) + strips


def test_the_letters_of_a_fabric_are_each_used_for_one_size() -> None:
    facts = quilts.harbour_quilt()
    for cloth in facts.fabrics:
        letters = [line.letter for line in cut_lines(facts, cloth)]
        assert letters == sorted(set(letters))


def test_a_plan_says_whether_it_is_proved_the_shortest() -> None:
    for name in quilts.ALL:
        facts = quilts.ALL[name]()
        told = words(quilt_cutting(facts))
        assert told.count("needed: the shortest layout") == sum(
            cloth.plan.proved for cloth in facts.fabrics if cloth.plan
        )
        rest = sum(not cloth.plan.proved for cloth in facts.fabrics if cloth.plan)
        assert told.count("in of the shortest layout") == rest


def test_the_length_for_what_is_bought_covers_what_is_needed_and_what_washing_takes() -> None:
    for name in quilts.ALL:
        facts = quilts.ALL[name]()
        for cloth in facts.fabrics:
            if cloth.buy is not None and cloth.plan is not None:
                assert cloth.buy.length >= cloth.plan.length + cloth.buy.allowed


def test_all_that_is_bought_stands_in_the_materials() -> None:
    names = [line.name for line in material_lines(quilts.scrappy())]
    assert names == ["Harbour fog", "Lantern", "Wet slate, 7 prints", "Wet slate", "Backing: Harbour fog", "Batting"]


def test_a_fabric_too_narrow_for_a_piece_is_told_among_the_materials() -> None:
    facts = quilt('set straight 3 x 4 of "Four"', "blocks 30 in", "fabric width 12 in usable")
    assert {line.buy for line in material_lines(facts)} == {"wider fabric"}


def test_fat_quarters_are_told_for_fabrics_whose_pieces_they_hold() -> None:
    """A fat quarter squared up, 20 1/2 × 17 1/2 in, holds 5 × 5 squares of 3 1/2 in: 24 squares take one."""
    facts = quilt('set straight 3 x 4 of "Four"')
    assert "Fat quarters of 18 × 21 in instead of a length: Harbour fog 1, Wet slate 1." in " ".join(
        said_of_materials(facts)
    )


def test_rows_that_are_alike_share_a_line() -> None:
    """Three blocks of 6 in and two sashes of 1 in: 20 in and two seams of 1/4 in; 6 1/2 and 1 1/2 in high."""
    facts = quilt('set straight 3 x 4 of "Four"', "sash 1 in slate posts lantern")
    assert list(alike_rows(facts)) == [
        ("Rows 1, 2, 3, and 4", "3 blocks and 2 sashes", "20 1/2 × 6 1/2 in"),
        ("Sashing strips", "3 sashes and 2 cornerstones", "20 1/2 × 1 1/2 in"),
    ]


def test_a_column_is_told_width_by_height_in_the_table_and_in_its_step() -> None:
    """Six blocks of 6 in: 6 1/2 in wide and 36 1/2 in high."""
    facts = quilt('set strippy 2 x 6 of "Four"', "sash 4 in lantern")
    ((_, _, size),) = alike_rows(facts)
    assert size == "6 1/2 × 36 1/2 in"
    assert quilt_step_texts(facts)[0].text.endswith("☐ 6 1/2 × 36 1/2 in")


def test_the_table_of_one_block_says_what_the_whole_quilt_takes() -> None:
    """Three pairs of triangles for each of four blocks, two at a time: two pairs of squares for one, six for all."""
    rows = "  row fog/slate  fog/slate\n  row fog/slate  lantern\n"
    three = f'block "Three"\n  size 4 in\n  make half as two at a time\n{rows}'
    facts = quilt('set straight 2 x 2 of "Three"', above=three)
    (kind,) = facts.kinds
    totals = block_totals(facts, kind)
    told = {(cut.fabric, cut.count, totals[place]) for place, cut in enumerate(kind.block.cutting)}
    assert told == {("fog", 2, 6), ("slate", 2, 6), ("lantern", 1, 4)}


def test_a_mitred_border_is_cut_two_inches_longer_than_its_outer_edge() -> None:
    """18 × 24 in with 4 in all round: 26 and 32 in, 26 1/2 and 32 1/2 in raw, and 2 in; 4 1/2 in wide."""
    facts = quilt('set straight 3 x 4 of "Four"', "border 4 in fog mitred")
    (border,) = [text for text in quilt_step_texts(facts) if text.name == "Border"]
    assert "2 strips (Harbour fog) 4 1/2 × 34 1/2 in for the sides" in border.text
    assert "2 strips (Harbour fog) 4 1/2 × 28 1/2 in for the top and bottom" in border.text


@pytest.mark.parametrize(
    ("line", "told"),
    [
        (
            "border 4 in fog",
            "2 strips 4 1/2 × 26 1/2 in for the sides, 2 strips 4 1/2 × 28 1/2 in for the top and bottom.",
        ),
        (
            "border 4 in fog top first",
            "2 strips 4 1/2 × 20 1/2 in for the top and bottom, 2 strips 4 1/2 × 34 1/2 in for the sides.",
        ),
        (
            "border 4 in fog corners slate",
            (
                "2 strips 4 1/2 × 26 1/2 in for the sides, 2 strips 4 1/2 × 20 1/2 in for the top and bottom, "
                "4 squares 4 1/2 in for the corners."
            ),
        ),
    ],
)
def test_the_strips_of_a_border_are_told_in_the_order_of_sewing(line: str, told: str) -> None:
    """18 × 24 in, 4 in all round, two seams of 1/4 in each way, and 2 in to spare."""
    facts = quilt('set straight 3 x 4 of "Four"', line)
    assert (
        format_strips_of_ring(facts, facts.rings[0]) == f"From the cutting list: {told} Each strip has 2 in to spare."
    )


def test_the_prints_are_told_with_how_often_each_is_used() -> None:
    """Forty-two blocks from seven prints: six of each."""
    facts = quilts.scrappy()
    assert "Each print is used in 6 blocks." in format_prints(facts.scraps[0], messages())
    assert words(prints(facts)).count("6 blocks, 1 fat quarter") == 7


def test_the_back_is_told_with_its_trimmed_size_and_its_seams() -> None:
    """18 1/2 × 24 1/2 in raw and 4 in on every side: 26 1/2 × 32 1/2 in."""
    facts = quilt('set straight 3 x 4 of "Four"', "backing fog overage 4 in")
    (back, *_) = steps_of_finishing(facts)
    assert "Trim the backing to at least 26 1/2 × 32 1/2 in: 4 in more than the top" in " ".join(
        part.text for part in back.parts
    )


def test_finishing_leaves_out_what_the_quilt_does_not_ask_for() -> None:
    names = [step.name for step in steps_of_finishing(quilts.place_by_place())]
    assert names == ["Layers", "Quilting", "Label"]


def test_a_ring_of_units_has_nothing_to_cut() -> None:
    facts: QuiltFacts = quilts.medallion()
    assert format_strips_of_ring(facts, facts.rings[1]) == ""


def test_rows_drawn_apart_are_numbered_as_the_table_counts_them() -> None:
    picture, _ = rows_picture(quilt('set straight 2 x 3 of "Four"', "sash 1 in slate posts fog"), BOX)
    assert [mark.text for mark in picture.marks if isinstance(mark, TextMark)] == ["1", "2", "3"]
