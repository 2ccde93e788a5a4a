"""SVG drawings: real size, escaped, whole in themselves."""

import re
from xml.etree import ElementTree as ET

import pytest

from blockdsl.export.printable import Unprintable
from blockdsl.export.svg import write_svg
from blockdsl.marks.display_list import Figure, Page, Path, TextMark

SVG = "{http://www.w3.org/2000/svg}"
INCH = ((72.0, 72.0), (144.0, 72.0), (144.0, 144.0), (72.0, 144.0))


def drawn(
    *marks: Path | TextMark | Figure, title: str = "Sheet", width_pt: float = 612, height_pt: float = 792
) -> ET.Element:
    return ET.fromstring(write_svg(Page(width_pt, height_pt, marks), title=title))  # noqa: S314 - our own drawing


def test_a_letter_page_is_8_5_by_11_in_and_its_viewbox_is_in_points() -> None:
    root = drawn()
    assert (root.get("width"), root.get("height"), root.get("viewBox")) == ("8.5in", "11in", "0 0 612 792")


def test_an_a4_page_keeps_its_proportions_in_inches_and_points() -> None:
    root = drawn(width_pt=595.2756, height_pt=841.8898)
    width, height = (float((root.get(side) or "").removesuffix("in")) for side in ("width", "height"))
    assert root.get("viewBox") == "0 0 595.28 841.89"
    assert width * 72 == pytest.approx(595.28, abs=1e-5)
    assert height * 72 == pytest.approx(841.89, abs=1e-5)


def test_an_inch_square_is_drawn_from_corner_to_corner() -> None:
    path = drawn(Path((INCH,), fill="#e0a030", stroke="#1d1d1b")).find(f"{SVG}path")
    assert path is not None
    assert path.get("d") == "M72,72 144,72 144,144 72,144Z"
    assert (path.get("fill"), path.get("stroke"), path.get("stroke-width")) == ("#e0a030", "#1d1d1b", "0.5")


def test_open_lines_stay_open_and_dashes_keep_their_lengths() -> None:
    path = drawn(Path((((0, 0), (9, 0)), ((0, 5), (9, 5))), closed=False, stroke="#000000", dash=(3, 1.5))).find(
        f"{SVG}path"
    )
    assert path is not None
    assert (path.get("d"), path.get("fill"), path.get("stroke-dasharray")) == ("M0,0 9,0M0,5 9,5", "none", "3 1.5")


def test_numbers_are_rounded_to_a_hundredth_of_a_point_without_a_minus_before_nothing() -> None:
    path = drawn(Path((((1 / 3, -0.001), (2.005, 1e-9)),), closed=False, stroke="#000000")).find(f"{SVG}path")
    assert path is not None
    assert path.get("d") == "M0.33,0 2,0"


def test_signs_of_markup_in_a_name_are_printed_as_they_are() -> None:
    name = "Moss & <Fern> \"Nº 1\" 'b' ]]>"
    root = drawn(TextMark(10, 20, name, 9), Figure(name, ()), title=name)
    assert root.findtext(f"{SVG}text") == name
    assert root.findtext(f"{SVG}title") == name
    assert root.findtext(f"{SVG}g/{SVG}title") == name


def test_a_figure_has_its_alternative_text_and_holds_its_marks() -> None:
    group = drawn(Figure("The block, 12 in square", (Path((INCH,), fill="#000000"),))).find(f"{SVG}g")
    assert group is not None
    assert group.get("role") == "img"
    assert [child.tag for child in group] == [f"{SVG}title", f"{SVG}path"]


def test_turned_text_turns_about_its_own_start() -> None:
    text = drawn(TextMark(72, 144, "A", 9, "bold", "#c02020", 90)).find(f"{SVG}text")
    assert text is not None
    assert (text.get("transform"), text.get("font-weight")) == ("rotate(90 72 144)", "600")


def test_a_drawing_carries_its_fonts_and_points_to_nothing_outside() -> None:
    written = write_svg(
        Page(100, 100, (TextMark(0, 9, "A", 9), TextMark(0, 20, "שלום", 9, "bold"))), title="T"
    ).decode()
    assert written.count("@font-face") == 3  # core regular, core bold, and Hebrew bold
    assert "unicode-range:U+5D5,U+5DC,U+5DD,U+5E9" in written
    assert all(address.startswith("data:font/") for address in re.findall(r'url\("([^"]*)', written))
    assert set(re.findall(r"https?://[^\"']*", written)) == {"http://www.w3.org/2000/svg"}


def test_a_drawing_without_letters_carries_no_font() -> None:
    assert b"@font-face" not in write_svg(Page(9, 9, (Path((INCH,), fill="#000000"),)), title="T")


def test_the_same_page_gives_the_same_drawing() -> None:
    page = Page(100, 100, (TextMark(1, 2, "2 ⁷⁄₈ Ω", 9), Figure("f", (Path((INCH,), fill="#123456"),))))
    assert write_svg(page, title="T") == write_svg(page, title="T")


@pytest.mark.parametrize("title", ["a\x00b", "bell\x07", "half \ud800"])
def test_a_title_with_letters_that_no_file_may_hold_is_refused(title: str) -> None:
    with pytest.raises(Unprintable, match="not a letter"):
        write_svg(Page(9, 9, ()), title=title)
