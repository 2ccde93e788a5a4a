"""The pages of templates as a whole."""

from __future__ import annotations

import pytest

from blockdsl.fullsize.templates import template_pages, templates_too_large
from blockdsl.geometry.fraction import Fraction
from blockdsl.marks.display_list import Document, Figure, Path
from tests.unit.fullsize.sample_templates import block_of, half_square, outline, sample_block, square, template
from tests.unit.fullsize.test_templates_words import flat, texts


def test_every_page_has_the_test_square_of_exactly_72_points() -> None:
    for page in template_pages(sample_block(), paper="a4").pages:
        squares = [
            mark.rings[0]
            for mark in page.marks
            if isinstance(mark, Path) and mark.closed and mark.stroke and len(mark.rings[0]) == 4
        ]
        assert len(squares) == 1
        (x0, y0), (x1, _), (_, y2), _ = squares[0]
        assert (x1 - x0, y2 - y0) == pytest.approx((72.0, 72.0), abs=1e-9)


def bars(document: Document, page: int) -> list[float]:
    return [
        mark.rings[0][1][0] - mark.rings[0][0][0]
        for mark in document.pages[page].marks
        if isinstance(mark, Path) and not mark.closed and len(mark.rings) == 1 and mark.stroke == "#1d1d1b"
    ]


def test_the_first_page_has_a_6_in_and_a_15_cm_bar_and_every_page_one_of_5_cm() -> None:
    document = template_pages(sample_block(), paper="letter")
    centimetre = 72 / 2.54
    assert bars(document, 0) == pytest.approx([432.0, 15 * centimetre, 5 * centimetre], abs=1e-9)
    for page in range(1, len(document.pages)):
        assert bars(document, page) == pytest.approx([5 * centimetre], abs=1e-9)


def test_every_page_says_to_print_at_actual_size_and_which_page_it_is() -> None:
    document = template_pages(sample_block(), paper="letter")
    words = texts(document)
    pages = len(document.pages)
    assert words.count("Print at actual size (100 %),") == pages
    assert words.count("not fit to page") == pages
    assert [word for word in words if word.startswith("page ") and " of " in word] == [
        f"page {number} of {pages}" for number in range(1, pages + 1)
    ]


def test_letter_fitted_to_a4_is_found_in_the_table_as_97_3_per_cent() -> None:
    # 14.6 cm read on the 15 cm bar: 14.6 / 15 = 0.9733.
    words = texts(template_pages(sample_block(), paper="letter"))
    assert words.count("97.3 %") == 1
    place = words.index("97.3 %")
    # The lengths are the row above: as many cells before as a row has, its name counted.
    first = next(at for at in range(place, 0, -1) if not words[at].endswith("%"))
    row = next(at for at in range(place, len(words)) if not words[at].endswith("%")) - first
    assert words[place - row] == "14.6"


def test_every_template_is_drawn_once_and_a_large_one_once_on_each_of_its_tiles() -> None:
    document = template_pages(sample_block(), paper="letter")
    names = [
        mark.alternative.split(":")[0]
        for page in document.pages
        for mark in page.marks
        if isinstance(mark, Figure) and mark.alternative.startswith("Template")
    ]
    assert sorted(set(names)) == [f"Template {letter}" for letter in ("A", "B", "C", "D", "E", "Er", "F", "G", "H")]
    assert len(names) == 8 + names.count("Template H")
    assert names.count("Template H") == 9


def test_tiles_are_numbered_with_their_row_and_column() -> None:
    words = texts(template_pages(sample_block(), paper="letter"))
    assert words.count("H, tile 1 of 9 (row 1, column 1)") == 1
    assert words.count("H, tile 9 of 9 (row 3, column 4)") == 1


def test_the_first_page_says_where_each_template_is() -> None:
    words = texts(template_pages(sample_block(), paper="letter"))
    found = [word for word in words if word.startswith(("page 1:", "page 2:", "page 3:", "pages "))]
    letters = [letter for word in found[:3] for letter in word.split(": ")[1].split(", ")]
    assert sorted(letters) == ["A", "B", "C", "D", "E", "Er", "F", "G"]
    assert found[3] == "pages 4–12: H in 9 tiles"


def test_letter_and_a4_pages_break_alike() -> None:
    letter, a4 = (template_pages(sample_block(), paper=paper) for paper in ("letter", "a4"))
    assert texts(letter) == texts(a4)
    assert {(page.width_pt, page.height_pt) for page in letter.pages} == {(612.0, 792.0)}
    assert {(round(page.width_pt, 2), round(page.height_pt, 2)) for page in a4.pages} == {(595.28, 841.89)}


def test_a_half_square_triangle_of_3_in_is_drawn_with_its_seam_and_blunt_points() -> None:
    # Legs of 3 in + (2 + √2)/4 in = 3.8536 in before its points are trimmed. In the box that is left the right angle
    # has both its cutting edges; sewing legs are 3 in.
    document = template_pages(block_of([half_square("B", 3)]), paper="letter")
    figure = next(mark for mark in document.pages[0].marks if isinstance(mark, Figure))
    cutting, sewing = [mark.rings[0] for mark in flat(figure.marks) if isinstance(mark, Path)][:2]
    xs, ys = zip(*sewing, strict=True)
    assert max(xs) - min(xs) == pytest.approx(216.0)
    assert max(ys) - min(ys) == pytest.approx(216.0)
    assert min(xs) - min(x for x, _ in cutting) == pytest.approx(18.0)
    assert max(y for _, y in cutting) - max(ys) == pytest.approx(18.0)
    assert max(x for x, _ in cutting) - min(x for x, _ in cutting) < 3.8536 * 72
    assert len(cutting) > len(sewing)


def test_centimetres_are_drawn_at_their_own_size() -> None:
    sides = outline((0, 0), (5, 0), (5, 5), (0, 5))
    block = block_of([template("A", "square", (5, 5), sides)], unit="cm")
    document = template_pages(block, paper="a4")
    figure = next(mark for mark in document.pages[0].marks if isinstance(mark, Figure))
    sewing = next(mark for mark in flat(figure.marks) if isinstance(mark, Path) and mark.dash)
    assert sewing.rings[0][1][0] - sewing.rings[0][0][0] == pytest.approx(5 * 72 / 2.54)
    assert "finished 5 cm square" in texts(document)


def test_a_template_longer_than_14_400_points_is_refused_by_its_letter() -> None:
    # 199 in with half an inch of seam are 199.5 in; 200 in is 14,400 pt.
    block = block_of([square("A", 199), square("B", 200)])
    assert templates_too_large(block) == ("B",)
    with pytest.raises(ValueError, match="too large to print as a template: B"):
        template_pages(block, paper="letter")


def test_an_unknown_paper_is_refused() -> None:
    with pytest.raises(ValueError, match="unknown paper"):
        template_pages(sample_block(), paper="napkin")


def test_a_block_without_templates_has_one_page_that_says_so() -> None:
    document = template_pages(block_of([]), paper="letter")
    assert len(document.pages) == 1
    assert "This block has no templates: the ruler cuts all its pieces." in texts(document)


def test_hundreds_of_templates_share_pages() -> None:
    # A half-inch square is 1 in with its seam; with its words beside it three go side by side, seven below one another
    # (a page's 617 pt hold seven times 72 + 14), on the first fewer, below its head: 20 times 21 are more than 400.
    letters = [f"{one}{two}" for one in "ABCDEFGHJKLMNPQRSTUV" for two in "ABCDEFGHJKLMNPQRSTUV"]
    assert len(letters) == 400
    document = template_pages(block_of([square(letter, Fraction(1, 2)) for letter in letters]), paper="letter")
    assert len(document.pages) <= 21
