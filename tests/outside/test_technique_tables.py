"""The tables of common sizes against what quilt teachers print, each value with its source.

Inches, quarter-inch seams, ruler of eighths. Roomy columns are ours with 1/8 in for trimming; they are held against
published rules that cut "generously" where these come to the same.
"""

import pytest

from blockdsl.facts.blockfacts import RulerUnit
from blockdsl.facts.techniquefacts import SizeRow
from blockdsl.facts.techniques import USUAL, size_table
from blockdsl.geometry.fraction import Fraction, read_fraction

TRIANGLES = "How to measure and cut triangles (2018) — grannymaudsgirl.wordpress.com"
EIGHT_HALVES = "HSTs 8 at a time — scrapish.com"
FOUR_GEESE = "Four geese from five squares, members.shaw.ca/beverlysquiltingpage"
FAST_GEESE = "Fast easy flying geese (2011) — alinequilts.blogspot.com"
STAR_VARIATION = "Ohio Star Variation — delawarequilts.com"
PUZZLE = "Dutchman's Puzzle (2011) — piecemealquilts.com"


def length(text: str) -> Fraction:
    """`3 7/8` as a number."""
    return sum((read_fraction(part) for part in text.split()), Fraction(0))


def row(method: str, shape: str, finished: str, unit: RulerUnit = "in") -> SizeRow:
    (found,) = size_table(method, shape, (unit, *USUAL[unit]), [length(finished)]).rows
    return found


def cuts(method: str, shape: str, finished: str) -> list[tuple[Fraction, ...]]:
    return list(row(method, shape, finished).cuts)


PUBLISHED = [
    # method, shape, finished width, column, published cut, source
    ("two at a time", "half", "3", 0, "3 7/8", TRIANGLES),
    ("two at a time", "half", "2", 1, "3", "Traditional Tuesday 58, 42quilts.com, 2012 (finished + 1, trimmed)"),
    ("cut patches", "half", "3", 0, "3 7/8", "Jacob's Ladder, allthingsfrugal.com"),
    ("cut patches", "half", "4", 0, "4 7/8", STAR_VARIATION),
    ("eight at a time", "half", "2", 0, "5 3/4", EIGHT_HALVES),
    ("eight at a time", "half", "4", 0, "9 3/4", EIGHT_HALVES),
    ("eight at a time", "half", "5", 0, "11 3/4", EIGHT_HALVES),
    ("eight at a time", "half", "7", 0, "15 3/4", EIGHT_HALVES),
    ("eight at a time", "half", "3", 0, "7 3/4", "Eight HSTs at once, craftsy.com, 2014"),
    ("eight at a time", "half", "1 3/4", 0, "5 1/4", "Apple Pie in the Sky block 6, sistersandquilters, 2013"),
    ("eight at a time", "half", "2", 1, "6", "Eight-at-a-time HST, quilted-diary.com (trimmed to 2 1/2)"),
    ("two at a time", "hourglass", "4", 0, "5 1/4", "Ohio Star, quiltcg.com, 2015; quilterscache.com"),
    ("two at a time", "hourglass", "3 1/2", 0, "4 3/4", "Ohio Star, allpeoplequilt.com"),
    ("two at a time", "hourglass", "4", 1, "5 3/8", STAR_VARIATION),
    ("two at a time", "hourglass", "1", 1, "2 3/8", STAR_VARIATION),
    ("two at a time", "hourglass", "2", 1, "3 3/8", STAR_VARIATION),
    ("two at a time", "hourglass", "3", 1, "4 3/8", STAR_VARIATION),
    (
        "cut patches",
        "hourglass",
        "3",
        0,
        "4 1/4",
        "Twin Stars, allpeoplequilt.com; Henry of the West, quilterscache.com",
    ),
    ("four at a time", "geese", "7", 0, "8 1/4", FOUR_GEESE),
    ("four at a time", "geese", "7", 1, "4 3/8", FOUR_GEESE),
    ("four at a time", "geese", "6", 0, "7 1/4", FOUR_GEESE),
    ("four at a time", "geese", "6", 1, "3 7/8", FOUR_GEESE),
    ("four at a time", "geese", "4", 0, "5 1/4", FOUR_GEESE),
    ("four at a time", "geese", "4", 1, "2 7/8", FOUR_GEESE),
    ("four at a time", "geese", "2", 0, "3 1/4", FOUR_GEESE),
    ("four at a time", "geese", "2", 1, "1 7/8", FOUR_GEESE),
    ("four at a time", "geese", "2 1/2", 0, "3 3/4", FAST_GEESE),
    ("four at a time", "geese", "2 1/2", 1, "2 1/8", FAST_GEESE),
    ("four at a time", "geese", "3 1/2", 0, "4 3/4", FAST_GEESE),
    ("four at a time", "geese", "3 1/2", 1, "2 5/8", FAST_GEESE),
    ("four at a time", "geese", "5 1/2", 0, "6 3/4", FAST_GEESE),
    ("four at a time", "geese", "5 1/2", 1, "3 5/8", FAST_GEESE),
    ("four at a time", "geese", "3", 0, "4 1/4", "Dutchman's Puzzle, academicquilter.blogspot.com, 2015"),
    ("four at a time", "geese", "3", 1, "2 3/8", "Dutchman's Puzzle, academicquilter.blogspot.com, 2015"),
    ("four at a time", "geese", "6", 2, "7 1/2", PUZZLE),
    ("four at a time", "geese", "6", 3, "4", PUZZLE),
    ("four at a time", "geese", "4", 3, "3", "Quadruple Square Method, quiltingpassion.com"),
    ("cut patches", "geese", "3", 0, "4 1/4", "Piecing Flying Geese, allpeoplequilt.com"),
    ("cut patches", "geese", "3", 1, "2 3/8", "Piecing Flying Geese, allpeoplequilt.com (height + 7/8)"),
    ("cut patches", "diamond", "6", 0, "4 3/4", "Hither and Yon, modifytradition.blogspot.com, 2010"),
    ("cut patches", "diamond", "4", 0, "3 3/8", "Hither and Yon, modifytradition.blogspot.com, 2010"),
    ("cut patches", "diamond", "6", 1, "3 7/8", TRIANGLES + " (leg of 3)"),
    ("stitch and flip", "geese", "6", 1, "3 1/2", "Stitch-and-flip geese, theashleytomlinson.com; delawarequilts.com"),
    ("stitch and flip", "snowball", "3", 0, "3 1/2", "Snowballs BOM, delawarequilts.com"),
    ("stitch and flip", "snowball", "3", 1, "1 1/2", "Snowballs BOM, delawarequilts.com"),
    ("stitch and flip", "snowball", "4 1/2", 0, "5", "Snowballs BOM, delawarequilts.com"),
    ("stitch and flip", "snowball", "4 1/2", 1, "2", "Snowballs BOM, delawarequilts.com"),
    ("stitch and flip", "snowball", "6", 0, "6 1/2", "Snowball corners, katiemaequilts.com"),
    ("stitch and flip", "snowball", "6", 1, "2 1/2", "Snowball corners, katiemaequilts.com"),
]


@pytest.mark.parametrize(("method", "shape", "finished", "column", "published", "source"), PUBLISHED)
def test_the_table_cuts_what_teachers_print(
    method: str, shape: str, finished: str, column: int, published: str, source: str
) -> None:
    assert cuts(method, shape, finished)[column] == (length(published),), source


def test_the_goose_of_stitch_and_flip_is_a_rectangle_of_3_1_2_by_6_1_2_for_6_by_3() -> None:
    # Stitch-and-flip flying geese, theashleytomlinson.com; Dutchman's Puzzle, delawarequilts.com
    assert cuts("stitch and flip", "geese", "6")[0] == (length("3 1/2"), length("6 1/2"))


@pytest.mark.parametrize(
    ("method", "shape", "finished", "told"),
    [
        ("two at a time", "half", "3", ("3 1/2",)),
        ("eight at a time", "half", "2", ("2 1/2",)),
        ("two at a time", "hourglass", "3 1/2", ("4",)),
        ("four at a time", "geese", "4", ("4 1/2", "2 1/2")),
    ],
)
def test_units_are_trimmed_to_finished_plus_half_an_inch(
    method: str, shape: str, finished: str, told: tuple[str, ...]
) -> None:
    # Bright New Day block 3 tips and Ohio Star, allpeoplequilt.com; BOM 3 Sawtooth Star, sewstormy.blogspot.com
    assert row(method, shape, finished).unfinished == tuple(length(part) for part in told)


def test_metric_geese_are_never_short_as_the_common_rule_makes_them() -> None:
    # Metric flying geese, weednstitch.blogspot.com, 2012: 13.5 and 7.5 cm for 10 x 5 cm with a 0.75 cm seam, where
    # 10 + 0.75 (2 + 2√2) = 13.621 and 5 + 0.75 (2 + √2) = 7.561 are needed.
    goose, sky, *_ = row("four at a time", "geese", "10", "cm").cuts
    assert goose == (read_fraction("13.7"),)
    assert sky == (read_fraction("7.6"),)
