"""Technique pages: everything fits, nothing overlaps, both hands are served, all is said for those who cannot see."""

from functools import lru_cache

import pytest
from msgspec.structs import replace

from blockdsl.facts.blockfacts import RulerUnit
from blockdsl.facts.techniquefacts import TechniqueFacts
from blockdsl.facts.techniques import technique_facts, techniques_for
from blockdsl.marks.display_list import Figure, Mark, Page, Path
from blockdsl.marks.theme import PAPERS, paper_named
from blockdsl.model.language import LANGUAGES, Language
from blockdsl.page.lesson import technique_bodies, technique_pages
from blockdsl.pictures.tools import tools
from blockdsl.sewing.techniques import LESSONS
from blockdsl.wording.lessons import section_title
from tests.unit.page.test_sheet import boxes, figures, texts
from tests.unit.pictures import sample

UNITS: tuple[RulerUnit, ...] = ("in", "cm")


@lru_cache
def lesson(method: str, unit: RulerUnit = "in") -> TechniqueFacts:
    return technique_facts(method, list(LESSONS[method].topics), None, unit)


@lru_cache
def pages(method: str, unit: RulerUnit = "in") -> tuple[Page, ...]:
    return technique_pages([lesson(method, unit)])


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("method", LESSONS)
def test_every_heading_is_whole_in_every_language(method: str, language: Language) -> None:
    """A heading that is too long for its picture would end in an ellipsis."""
    for unit in UNITS:
        told = technique_facts(method, list(LESSONS[method].topics), None, unit, language)
        cut = [text.text for page in technique_pages([told]) for text in texts(page.marks) if text.text.endswith("…")]
        assert cut == []


BY_HAND = ("over papers", "applique", "set-in seams", "partial seams", "mitered corners")
"""Lessons that cut nothing along a ruler."""


ROOM = (-100.0, 200.0)
"""The top and bottom of a picture with room for everything."""


def said(method: str, unit: RulerUnit = "in") -> str:
    return "\n".join(text.text for page in pages(method, unit) for text in texts(page.marks))


def paths(marks: tuple[Mark, ...]) -> list[Path]:
    found: list[Path] = []
    for mark in marks:
        if isinstance(mark, Path):
            found.append(mark)
        elif isinstance(mark, Figure):
            found += paths(mark.marks)
    return found


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("method", LESSONS)
def test_no_words_lie_on_other_words(method: str, unit: RulerUnit) -> None:
    for page in pages(method, unit):
        covered = sorted(boxes(page.marks))
        for place, (_, top, right, bottom, words) in enumerate(covered):
            for left2, top2, _, bottom2, words2 in covered[place + 1 :]:
                if left2 >= right - 0.3:
                    break
                assert bottom2 <= top + 0.3 or top2 >= bottom - 0.3, f"{words!r} lies on {words2!r}"


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("method", LESSONS)
def test_words_and_pictures_stay_in_the_box_that_prints_on_letter_and_a4(method: str, unit: RulerUnit) -> None:
    box = paper_named("letter").content
    for page in pages(method, unit):
        for left, top, right, bottom, words in boxes(page.marks):
            assert left >= box.x_pt - 1.5, words
            assert right <= box.right_pt + 0.1, words
            assert top >= box.y_pt, words
            assert bottom <= box.bottom_pt, words
        for path in paths(page.marks):
            for x, y in (place for ring in path.rings for place in ring):
                assert box.x_pt - 0.1 <= x <= box.right_pt + 0.1
                assert box.y_pt - 0.1 <= y <= box.bottom_pt + 0.1


@pytest.mark.parametrize("method", LESSONS)
def test_the_steps_of_each_kind_of_unit_take_one_page(method: str) -> None:
    bodies = technique_bodies(lesson(method), paper_named("letter"))
    for section, body in zip(lesson(method).sections, bodies, strict=False):
        words = [text.text for text in texts(body)]
        assert section_title(section) in words
        assert f"{len(section.steps)}  " in words  # its last number


@pytest.mark.parametrize("method", [method for method in LESSONS if method not in BY_HAND])
def test_each_cut_is_drawn_for_the_right_and_for_the_left_hand(method: str) -> None:
    words = said(method)
    assert words.count("right-handed") == words.count("left-handed") >= len(lesson(method).sections)


def test_the_left_handed_tools_are_the_right_handed_ones_mirrored_in_the_cut() -> None:
    right, left = (
        tools((100.0, 80.0), (100.0, 20.0), (10.0, 90.0), ROOM, right_handed=hand, unit_pt=18.0)
        for hand in (True, False)
    )
    for one, other in zip(paths(right), paths(left), strict=True):
        mirrored = [[(round(200.0 - x, 6), round(y, 6)) for x, y in ring] for ring in one.rings]
        assert [[(round(x, 6), round(y, 6)) for x, y in ring] for ring in other.rings] == mirrored


def test_the_ruler_of_a_right_handed_maker_lies_at_the_left_of_the_cut() -> None:
    ruler, *_ = paths(tools((100.0, 80.0), (100.0, 20.0), (10.0, 90.0), ROOM, right_handed=True, unit_pt=18.0))
    assert {x for x, _ in ruler.rings[0]} == {58.0, 100.0}


@pytest.mark.parametrize("reach", [(10.0, 90.0), (2.0, 30.0), (60.0, 98.0), (40.0, 50.0)])
def test_the_ruler_stays_in_the_picture(reach: tuple[float, float]) -> None:
    room = (0.0, 100.0)
    ruler, *_ = paths(tools((50.0, reach[1]), (50.0, reach[0]), reach, room, right_handed=True, unit_pt=18.0))
    low, high = min(y for _, y in ruler.rings[0]), max(y for _, y in ruler.rings[0])
    assert 0.0 <= low <= reach[0]
    assert reach[1] <= high <= 100.0


@pytest.mark.parametrize("method", LESSONS)
def test_every_picture_says_what_it_shows(method: str) -> None:
    for page in pages(method):
        for figure in figures(page.marks):
            assert len(figure.alternative) > 10
            assert figure.alternative.endswith(".")


@pytest.mark.parametrize("method", LESSONS)
def test_every_technique_ends_with_the_cautions(method: str) -> None:
    last = [text.text for text in texts(pages(method)[-1].marks)]
    assert "Take care" in last
    assert any("instructions that came with your tools" in words for words in last)


def test_the_pages_tell_the_sizes_of_the_block_at_hand() -> None:
    facts = sample.harbour_light()
    shapes = {"beam": "geese", "hourglass": "hourglass"}
    units = tuple(
        replace(unit, shape=shapes.get(unit.name, ""), method="cut patches" if unit.name in shapes else unit.method)
        for unit in facts.units
    )
    techniques = techniques_for([replace(facts, units=units)])
    words = " ".join(text.text for page in technique_pages(techniques) for text in texts(page.marks))
    assert "Flying geese in Harbour Light" in words
    assert "Each should measure 6 ¹⁄₂ × 3 ¹⁄₂ in before it is joined." in words


def test_metric_pages_speak_of_centimetres_only() -> None:
    for method in LESSONS:
        words = said(method, "cm").split()
        assert "in," not in words
        assert not any(word.endswith("⁄₈") for word in words)


def test_common_sizes_run_from_1_to_6_in_by_halves() -> None:
    rows = lesson("two at a time").sections[0].table.rows
    assert [float(row.finished[0]) for row in rows] == [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6]


def test_common_sizes_run_from_3_to_16_cm() -> None:
    rows = lesson("two at a time", "cm").sections[0].table.rows
    assert [row.finished[0] for row in rows] == list(range(3, 17))


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_pages_have_the_size_of_the_paper_and_break_alike(paper: str) -> None:
    made = technique_pages([lesson("two at a time")], paper=paper)
    assert {(page.width_pt, page.height_pt) for page in made} == {(PAPERS[paper].width_pt, PAPERS[paper].height_pt)}
    assert len(made) == len(pages("two at a time"))


def test_an_unknown_paper_is_refused_by_name() -> None:
    with pytest.raises(ValueError, match="unknown paper 'napkin'"):
        technique_pages([lesson("two at a time")], paper="napkin")
