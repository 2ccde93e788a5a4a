"""Web sites read with Python's own parser: what they say, where they lead, what they do without."""

from __future__ import annotations

import re
import subprocess
from itertools import pairwise
from pathlib import Path
from urllib.parse import unquote

import pytest
from fontTools.ttLib import TTFont
from pypdf import PdfReader

from tests.outside.web.reading import Node, read_page

SITES = ["a-harbour-sampler.web", "rough-em-ready-em.web"]


@pytest.fixture(params=SITES)
def pages(request: pytest.FixtureRequest, web_sites: Path) -> dict[str, Node]:
    return {path.name: read_page(path) for path in sorted((web_sites / request.param).glob("*.html"))}


def rows_of(page: Node, table: int) -> list[list[str]]:
    """The rows of a page's table that are about a piece, without the box to tick."""
    body = list(page.all("table"))[table]
    rows = [[cell.words for cell in row.children if isinstance(cell, Node)] for row in body.all("tr")]
    return [row[1:] for row in rows[1:] if len(row) > 1]


# --- what is said ------------------------------------------------------------------------------------


def test_the_harbour_light_is_cut_from_the_sizes_of_the_published_formulas(demo_site: Path) -> None:
    """12 in, geese of 6 x 3 in: 6 + 1 1/4 and 3 + 7/8; corners of 1 1/2 in: 1 1/2 + 7/8 and 1 1/2 + 1/2."""
    page = read_page(demo_site / "harbour-light.html")
    cutting = list(page.all("table"))[1]
    assert "6, 9 and 12 in finished" in cutting.one("caption").words
    assert [head.words for head in cutting.one("thead").all("th")][3:6] == ["6 in", "9 in", "12 in"]
    sizes = {(row[0], row[1], row[4], row[6]) for row in rows_of(page, 1)}
    assert ("1", "square", "7 1/4", "D") in sizes
    assert ("4", "squares", "3 7/8", "C") in sizes
    assert ("4", "squares", "2 3/8", "B") in sizes
    assert ("4", "squares", "2", "A") in sizes


def test_a_block_asked_for_at_three_sizes_has_its_steps_at_each(demo_site: Path) -> None:
    page = read_page(demo_site / "harbour-light.html")
    assert [label.words for label in page.one("fieldset").all("label")] == ["6 in", "9 in", "12 in"]
    headings = [heading.words for heading in page.all("h3")]
    assert sum(words.startswith("8 Block") for words in headings) == 1  # the steps are the same ones at each size
    for size in ("6 1/2 × 6 1/2 in", "9 1/2 × 9 1/2 in", "12 1/2 × 12 1/2 in"):
        assert any(label.words.startswith(size) for label in page.all("label"))


def test_a_blocks_page_goes_in_the_order_of_the_work(demo_site: Path) -> None:
    page = read_page(demo_site / "harbour-light.html")
    assert [heading.words for heading in page.all("h2")] == [
        "Notes",
        "About the sizes",
        "Take care",
        "Cutting",
        "Units to make",
        "Steps",
        "Other colourways",
        "In the colourway Night watch",
        "In the colourway Storm cone",
        "Techniques",
    ]


def test_a_site_says_what_stays_on_the_bias(demo_site: Path) -> None:
    # Only the hourglass is sewn of triangles: quarters of a square that is cut twice corner to corner, whose long edge
    # is the side of the square, on the straight grain. The half squares and the beams are made of squares.
    page = read_page(demo_site / "harbour-light.html")
    told = [paragraph.words for paragraph in page.all("p") if paragraph.words.startswith("Bias edges")]
    assert len(told) == 1
    assert re.search(r"if cut as listed: the short edges of D\.", told[0])


def test_every_unit_says_what_it_should_measure_at_every_size(demo_site: Path) -> None:
    """The beam is half as wide as the block, and half of that high; half an inch more before it is joined."""
    page = read_page(demo_site / "harbour-light.html")
    (beam,) = (table for table in page.all("table") if table.one("caption").words.startswith("Beam"))
    measures = [[cell.words for cell in row.children if isinstance(cell, Node)] for row in beam.one("tbody").all("tr")]
    assert [row[:2] for row in measures] == [
        ["6 in", "3 1/2 × 2 in"],
        ["9 in", "5 × 2 3/4 in"],
        ["12 in", "6 1/2 × 3 1/2 in"],
    ]
    assert list(page.all("label"))
    assert all(label.one("input").attributes["type"] in {"checkbox", "radio"} for label in page.all("label"))


def test_notes_cautions_and_every_colourway_are_on_the_blocks_page(demo_site: Path) -> None:
    page = read_page(demo_site / "harbour-light.html")
    said = page.words
    assert "The beams point outward and the slate squares meet the lamp in the middle." in said
    assert "Rotary cutter: close the blade when you put it down" in said
    assert {"Night watch", "Storm cone"} <= {heading.words for heading in page.all("h3")}


def test_the_contents_lead_to_every_page_but_the_way_home(pages: dict[str, Node]) -> None:
    led_to = {unquote(link.attributes["href"]) for link in pages["index.html"].one("main").all("a")}
    assert led_to == pages.keys() - {"index.html", "search.html"}


def test_every_page_leads_to_the_search_and_the_search_to_every_page(pages: dict[str, Node]) -> None:
    search = pages["search.html"]
    assert {unquote(link.attributes["href"]) for link in search.one("main").all("a")} == pages.keys() - {"search.html"}
    others = [page for name, page in pages.items() if name != "search.html"]
    assert all("search.html" in {link.attributes["href"] for link in page.all("a")} for page in others)


def test_blocks_are_found_by_name_size_family_and_number_of_patches_and_quilts_by_name(demo_site: Path) -> None:
    page = read_page(demo_site / "blocks.html")
    headings = [heading.words for heading in page.all("h2")]
    assert headings == ["By name", "By finished size", "By family", "By number of patches", "Quilts"]
    names = [row.one("th").words for row in page.one("tbody").all("tr")]
    assert names == sorted(names)
    terms = {entry.one("dt").words: entry.one("dd") for entry in page.all("div")}
    assert "Harbour Light" in terms["9 in"].words
    assert "Harbour Light" in terms["40 patches"].words
    assert terms["70 × 82 in"].words == "Breakwater"  # what the demo's own `expect finished` says


def test_a_quilt_is_told_from_what_to_buy_to_its_label(demo_site: Path) -> None:
    page = read_page(demo_site / "breakwater.html")
    headings = [heading.words for heading in page.all("h2")]
    assert headings == [
        "Fabric requirements",
        "About the sizes",
        "Take care",
        "Cutting",
        "Blocks to make",
        "Beam",
        "Assembly",
        "Finishing",
        "Techniques",
    ]
    assert "Make 10" in page.words
    assert [heading.words for heading in page.all("h3")][-1] == "11 Label"


def test_texts_are_titled_as_their_maker_wrote_not_as_their_files_are_called(demo_site: Path) -> None:
    titles = {path.name: read_page(path).one("h1").words for path in demo_site.glob("*.html")}
    assert titles["four-of-them-together.html"] == "Four of them together"  # text/rip-current.md
    assert titles["from-other-shores.html"] == "From other shores"  # text/shores.md, the first of its chapter
    assert not {"Rip current", "Shores", "Intro"} & set(titles.values())


def test_every_method_leads_to_its_lesson_and_the_lesson_back_to_its_blocks(demo_site: Path) -> None:
    page, lesson = (read_page(demo_site / f"{name}.html") for name in ("harbour-light", "four-at-a-time"))
    led_to = [link.words for link in page.all("a") if link.attributes["href"] == "four-at-a-time.html"]
    assert led_to == ["Method: four at a time", "Lesson: Four at a time", "Four at a time"]
    corners = [
        link.words for link in read_page(demo_site / "breakwater.html").all("a") if "mitred" in link.words.lower()
    ]
    assert corners  # the lesson of its borders, which no method of a block leads to
    assert "harbour-light.html" in {link.attributes["href"] for link in lesson.one("main").all("a")}


def test_a_word_is_explained_with_the_first_page_that_says_it(demo_site: Path) -> None:
    page = read_page(demo_site / "words.html")
    entries = {entry.one("dt").words: entry for entry in page.all("div")}
    entry = entries["half-square triangle"]
    first = read_page(demo_site / unquote(entry.one("a").attributes["href"]))
    assert "half-square triangle" in first.words.lower()


# --- how it is made ----------------------------------------------------------------------------------


def test_a_fraction_is_plain_figures_that_can_be_heard_copied_and_searched_for(pages: dict[str, Node]) -> None:
    for page in pages.values():
        fractions = [mark.words for mark in page.all("span") if mark.attributes.get("class") == "fraction"]
        assert all(re.fullmatch(r"\d+/\d+", fraction) for fraction in fractions)
        assert "⁄" not in page.words


def test_every_picture_has_words_or_stands_beside_them(pages: dict[str, Node]) -> None:
    for page in pages.values():
        for picture in page.all("svg"):
            told = picture.attributes
            assert (told.get("role") == "img" and told.get("aria-label")) or told.get("aria-hidden") == "true"


def test_headings_go_down_one_step_at_a_time_under_one_title(pages: dict[str, Node]) -> None:
    for name, page in pages.items():
        levels = [int(node.tag[1]) for node in walk(page) if re.fullmatch(r"h\d", node.tag)]
        assert levels.count(1) == 1, name
        assert levels[0] == 1, name
        assert all(later <= earlier + 1 for earlier, later in pairwise(levels)), name


def test_every_table_is_named_and_its_heads_say_what_they_head(pages: dict[str, Node]) -> None:
    tables = [table for page in pages.values() for table in page.all("table")]
    assert tables
    for table in tables:
        assert table.one("caption").words
        assert all(head.attributes["scope"] in {"col", "row", "rowgroup"} for head in table.all("th"))


def test_every_page_names_its_language_and_begins_with_a_way_past_what_is_on_all(pages: dict[str, Node]) -> None:
    assert {page.one("html").attributes["lang"] for page in pages.values()} in ({"en-US"}, {"en-GB"})
    for page in pages.values():
        (skip, *_) = page.one("body").all("a")
        assert skip.attributes["href"] == "#" + page.one("main").attributes["id"]


def test_every_link_leads_to_a_page_or_a_place_that_is_there(pages: dict[str, Node]) -> None:
    for name, page in pages.items():
        for link in page.all("a"):
            target, _, anchor = link.attributes["href"].partition("#")
            reached = pages[unquote(target)] if target else page
            places = {node.attributes["id"] for node in walk(reached) if "id" in node.attributes}
            assert not anchor or anchor in places, f"{name}: {link.attributes['href']}"


def test_no_script_stands_in_a_page_and_nothing_comes_from_elsewhere(web_sites: Path) -> None:
    for path in web_sites.glob("*/*"):
        if path.suffix not in {".html", ".css"}:
            continue
        told = path.read_text(encoding="utf-8")
        assert not re.search(r"<script(?! src=\"[a-z-]+\.js\" defer></script>)", told)
        assert not re.search(r"""(?:href|src)="(?:[a-z]+:|//)|url\("?(?:[a-z]+:|//)|@import""", told)


def test_the_style_sheet_names_fonts_that_are_there(web_sites: Path) -> None:
    for sheet in web_sites.glob("*/style.css"):
        named = re.findall(r'url\("([^"]+)"\)', sheet.read_text(encoding="utf-8"))
        assert {"regular.woff2", "bold.woff2"} <= set(named)
        assert all((sheet.parent / name).is_file() for name in named)


def test_the_fonts_of_a_site_set_fractions_and_figures_of_one_width(demo_site: Path) -> None:
    for name in ("regular.woff2", "bold.woff2"):
        features = {record.FeatureTag for record in TTFont(demo_site / name)["GSUB"].table.FeatureList.FeatureRecord}
        assert {"frac", "tnum"} <= features


# --- what quilters write -----------------------------------------------------------------------------


def test_markup_in_names_and_notes_is_shown_as_it_was_written(rough_site: Path) -> None:
    page = read_page(rough_site / "script-alert-1-script.html")
    assert page.one("h1").words == "<script>alert(1)</script>"
    assert "1/2 & <i>half</i>: as it is" in page.words
    assert "</svg><b>Night" in {heading.words for heading in page.all("h3")}
    assert not list(page.all("b"))
    assert not list(page.all("i"))


def test_the_makers_own_words_keep_their_lists_emphasis_and_quotations(rough_site: Path) -> None:
    page = read_page(rough_site / "deep-at-once.html")
    assert page.one("ol").attributes["start"] == "3"
    assert page.one("em").words == "light"
    assert "Somebody said 2 1/2 in." in page.one("blockquote").words
    assert "kept    as it is" in "".join(map(str, page.one("pre").children))
    assert page.one("h1").words == "Deep at once"  # the heading that the text begins with, not its file's name
    assert [heading.words for heading in page.all("h2")] == ["Deeper at once"]
    assert not list(page.all("h3"))


def test_a_link_to_elsewhere_in_the_makers_words_is_said_not_followed(rough_site: Path) -> None:
    page = read_page(rough_site / "deep-at-once.html")
    assert "a link (https://example.org/a?b=1&c=2)" in page.words
    assert all("example" not in link.attributes["href"] for link in page.all("a"))


def test_letters_that_few_sites_need_come_in_a_font_of_their_own(demo_site: Path, rough_site: Path) -> None:
    assert not list(demo_site.glob("*.ttf"))
    style = (rough_site / "style.css").read_text(encoding="utf-8")
    assert f"U+{ord('ש'):X}" in style
    assert f"U+{ord('Δ'):X}" in style


# --- the command -------------------------------------------------------------------------------------


def test_blocks_without_a_book_have_a_site_when_it_is_asked_for(
    project: Path, blockdsl_command: str, tmp_path: Path
) -> None:
    words = [blockdsl_command, "build", "harbour-light.block", "-o", str(tmp_path), "--no-cache"]
    subprocess.run([*words, "--only", "web"], cwd=project / "library/demo", check=True, capture_output=True)
    home = read_page(tmp_path / "harbour-light.web" / "index.html")
    assert home.one("h1").words == "Harbour Light"
    assert (tmp_path / "harbour-light.web" / "harbour-light.html").is_file()


def test_the_first_page_of_a_book_of_22_blocks_loads_at_most_a_megabyte(
    project: Path, blockdsl_command: str, tmp_path: Path
) -> None:
    """With its style, its script and its fonts; pictures are in the page."""
    libraries = sorted((project / "library").glob("*.block"))
    found = [re.findall(r'^block "([^"]+)"', path.read_text(encoding="utf-8"), re.MULTILINE)[:2] for path in libraries]
    names = [name for some in found for name in some][:22]
    assert len(names) == 22
    lines = [f'use library "{path.stem}"' for path in libraries] + ['book "Twenty Two"']
    book = tmp_path / "book.block"
    book.write_text("\n".join([*lines, *(f'  block "{name}"' for name in names)]) + "\n", encoding="utf-8")
    words = [blockdsl_command, "build", str(book), "-o", str(tmp_path), "--only", "web"]
    subprocess.run(words, check=True, capture_output=True)
    site = tmp_path / "twenty-two.web"
    loaded = [site / "index.html", *(path for path in site.iterdir() if path.suffix in {".css", ".woff2", ".ttf"})]
    loaded.append(site / "site.js")
    assert sum(path.stat().st_size for path in loaded) <= 1 << 20
    assert len(list(site.glob("*.html"))) > 22


def test_a_site_has_the_sheets_and_templates_that_are_asked_for_too(
    project: Path, blockdsl_command: str, tmp_path: Path
) -> None:
    """Pilot's Star is cut by template; Churn Dash is cut with a ruler, so nobody needs templates for it."""
    words = [
        blockdsl_command,
        "build",
        "book.block",
        "-o",
        str(tmp_path),
        "--no-cache",
        "--only",
        "web,sheet,templates",
    ]
    subprocess.run(words, cwd=project / "library/demo", check=True, capture_output=True)
    site = tmp_path / "a-harbour-sampler.web"
    for block, sizes in (("pilot-s-star", 2), ("churn-dash", 0)):
        page = read_page(site / f"{block}.html")
        files = [link.attributes["href"] for link in page.one("main").all("a") if link.words.endswith("(PDF)")]
        assert len(files) == 1 + sizes
        assert all((site / name).read_bytes().startswith(b"%PDF") for name in files)
        assert page.one("h1").words.split()[0] in PdfReader(site / files[0]).pages[0].extract_text()


def test_a_site_is_the_same_bytes_twice(project: Path, blockdsl_command: str, tmp_path: Path, rough_site: Path) -> None:
    words = [blockdsl_command, "build", "rough.block", "-o", str(tmp_path), "--only", "web", "--no-cache"]
    subprocess.run(words, cwd=project / "tests/outside/web", check=True, capture_output=True)
    again = tmp_path / rough_site.name
    assert {path.name for path in again.iterdir()} == {path.name for path in rough_site.iterdir()}
    for path in rough_site.iterdir():
        assert path.read_bytes() == (again / path.name).read_bytes(), path.name


def walk(node: Node) -> list[Node]:
    """Every element inside, in order."""
    found = []
    for child in node.children:
        if isinstance(child, Node):
            found += [child, *walk(child)]
    return found
