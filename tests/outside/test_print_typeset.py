"""Text measured, judged by fontTools reading the font's own tables, and broken into lines."""

from functools import cache
from io import BytesIO
from itertools import pairwise

import pytest
import uharfbuzz
from fontTools.ttLib import TTFont

from blockdsl.fonts import CORE_RANGES, core_bytes, font_bytes
from blockdsl.geometry.fraction_text import fraction_text
from blockdsl.marks.display_list import Weight
from blockdsl.marks.typeset import GlyphRun, cap_height, ellipsis, line_height, measure, shape, wrap

WEIGHTS: tuple[Weight, ...] = ("regular", "bold")


@cache
def font(weight: Weight) -> TTFont:
    return TTFont(BytesIO(font_bytes(weight)))


def width_of(letters: str, weight: Weight) -> int:
    names = font(weight).getBestCmap()
    return sum(font(weight)["hmtx"][names[ord(letter)]][0] for letter in letters)


@pytest.mark.parametrize("weight", WEIGHTS)
def test_letters_without_kerning_are_as_wide_as_the_font_says(weight: Weight) -> None:
    assert measure("Hinm", 1000, weight) == width_of("Hinm", weight)


@pytest.mark.parametrize("weight", WEIGHTS)
def test_letters_that_lean_are_kerned_together(weight: Weight) -> None:
    assert measure("AV", 1000, weight) < width_of("AV", weight)


@pytest.mark.parametrize("weight", WEIGHTS)
def test_a_line_is_as_long_as_harfbuzz_sets_it_although_its_words_are_measured_one_by_one(weight: Weight) -> None:
    letters = [chr(code) for first, last in CORE_RANGES for code in range(first, last + 1) if chr(code).strip()]
    for place, letter in enumerate(letters):
        other, third = letters[place * 7 % len(letters)], letters[place * 31 % len(letters)]
        line = f"{other}{letter} {letter} A{letter}  {letter}{third} Vf"
        set_whole = sum(glyph.advance for run in shape(line, weight) for glyph in run.glyphs)
        assert measure(line, 1000, weight) == set_whole, line


def test_a_measure_grows_with_the_size() -> None:
    assert measure("Lantern", 18) == pytest.approx(2 * measure("Lantern", 9))
    assert measure("", 9) == 0


def test_a_letter_that_the_font_lacks_is_measured_as_an_empty_box() -> None:
    assert measure("\U0001f9f5", 1000) == font("regular")["hmtx"][".notdef"][0]


def test_heights_are_those_of_the_font() -> None:
    table = font("regular")
    assert cap_height(1000) == table["OS/2"].sCapHeight
    assert line_height(1000) == table["hhea"].ascent - table["hhea"].descent


@pytest.mark.parametrize(
    ("plain", "typeset"),
    [
        ("2 7/8", "2 ⁷⁄₈"),
        ("7/8 in × 12 1/2 in.", "⁷⁄₈ in × 12 ¹⁄₂ in."),
        ("(11/16)", "(¹¹⁄₁₆)"),
        ("1/4, 3/4", "¹⁄₄, ³⁄₄"),
        ("fog/lantern", "fog/lantern"),
        ("1/2/2026", "1/2/2026"),
        ("1.5/2", "1.5/2"),
        ("A1/2", "A1/2"),
        ("", ""),
    ],
)
def test_plain_fractions_are_set_as_fractions_and_nothing_else_is(plain: str, typeset: str) -> None:
    assert fraction_text(plain) == typeset


@pytest.mark.parametrize("weight", WEIGHTS)
def test_the_figures_of_a_fraction_stand_between_baseline_and_capital_height(weight: Weight) -> None:
    glyphs, order = font(weight)["glyf"], font(weight).getGlyphOrder()
    above, _, below = shape("⁷⁄₈", weight)[0].glyphs
    assert glyphs[order[above.number]].yMax == pytest.approx(font(weight)["OS/2"].sCapHeight, abs=15)
    assert glyphs[order[below.number]].yMin == pytest.approx(0, abs=15)


@pytest.mark.parametrize("weight", WEIGHTS)
@pytest.mark.parametrize("words", ["Harbour Light", "Cut 2 ⁷⁄₈ in × 11 ¹⁵⁄₁₆", "AVATAR Wave, Žluť", "office → 4 °"])
def test_the_font_in_a_drawing_sets_words_as_wide_as_they_were_measured(words: str, weight: Weight) -> None:
    core = TTFont(BytesIO(core_bytes(weight)))
    core.flavor = None
    plain = BytesIO()
    core.save(plain)
    buffer = uharfbuzz.Buffer()
    buffer.add_str(words)
    buffer.guess_segment_properties()
    uharfbuzz.shape(uharfbuzz.Font(uharfbuzz.Face(plain.getvalue())), buffer)
    assert sum(place.x_advance for place in buffer.glyph_positions) == measure(words, 1000, weight)


@pytest.mark.parametrize("weight", WEIGHTS)
def test_the_font_in_a_drawing_has_all_letters_that_it_claims_and_not_the_reserved_name(weight: Weight) -> None:
    core, whole = TTFont(BytesIO(core_bytes(weight))), font(weight).getBestCmap()
    claimed = {code for first, last in CORE_RANGES for code in range(first, last + 1)}
    assert claimed & set(whole) == set(core.getBestCmap())
    names = {number: core["name"].getDebugName(number) for number in (1, 4, 6)}
    assert not [name for name in names.values() if "Fira" in str(name)]


def spoken(runs: tuple[GlyphRun, ...]) -> list[tuple[str, bool]]:
    return [(run.text, run.right_to_left) for run in runs]


def test_hebrew_runs_right_to_left_within_a_line_that_runs_left_to_right() -> None:
    assert spoken(shape("Fog שלום end")) == [("Fog ", False), ("שלום", True), (" end", False)]


def test_figures_within_hebrew_keep_their_own_direction() -> None:
    # Unicode's annex 9: a number after right-to-left letters stands to their left and reads left to right.
    assert spoken(shape("שלום 12 עולם")) == [(" עולם", True), ("12", False), ("שלום ", True)]


def test_right_to_left_glyphs_stand_from_left_to_right_with_the_last_letter_first() -> None:
    (run,) = shape("שלום")
    assert [glyph.cluster for glyph in run.glyphs] == [3, 2, 1, 0]
    assert [glyph.x for glyph in run.glyphs] == sorted(glyph.x for glyph in run.glyphs)


def test_arabic_letters_join() -> None:
    names = font("regular").getBestCmap()
    nominal = [names[ord(letter)] for letter in "سلام"]
    drawn = [font("regular").getGlyphOrder()[glyph.number] for run in shape("سلام") for glyph in run.glyphs]
    assert drawn[::-1] != nominal


def test_lines_break_at_spaces_and_fit() -> None:
    words = "Press the seams towards the darker fabric wherever you can"
    lines = wrap(words, 9, "regular", 100)
    assert " ".join(lines) == words
    assert all(measure(line, 9) <= 100 for line in lines)
    assert all(measure(f"{line} {after.split()[0]}", 9) > 100 for line, after in pairwise(lines))


def test_a_word_too_long_for_its_line_is_broken_inside_and_loses_nothing() -> None:
    lines = wrap("a Donaudampfschifffahrt", 9, "bold", 40)
    assert "".join(lines) == "aDonaudampfschifffahrt"
    assert all(measure(line, 9, "bold") <= 40 for line in lines)


def test_an_accent_never_leaves_its_letter() -> None:
    assert wrap("e\u0301e\u0301e\u0301", 9, "regular", 1) == ["e\u0301"] * 3


def test_a_line_break_in_the_text_is_kept_and_no_text_is_one_empty_line() -> None:
    assert wrap("one\n\ntwo", 9, "regular", 100) == ["one", "", "two"]
    assert wrap("", 9, "regular", 100) == [""]


def test_a_name_that_does_not_fit_ends_in_dots() -> None:
    short = ellipsis("Harbour Light at night", 9, "regular", 60)
    assert short.endswith("…")
    assert "Harbour Light at night".startswith(short.removesuffix("…"))
    assert measure(short, 9) <= 60
    assert ellipsis("Fog", 9, "regular", 60) == "Fog"
