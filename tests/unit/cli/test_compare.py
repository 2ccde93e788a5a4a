"""`compare`: a file beside itself, as one table."""

import csv
import json
from io import StringIO
from pathlib import Path

import pytest

from tests.unit.cli.pinwheel import PINWHEEL, Run, spoil

SHORE = """\
use "palette.block"
use "pinwheel.block"

quilt "Shore"
  set straight 4 x 5 of "Pinwheel"
  binding 2 1/4 in slate straight
  backing fog
  wadding
"""


@pytest.fixture
def shore(folder: Path) -> Path:
    """The folder with a quilt of twenty pinwheels."""
    (folder / "shore.block").write_text(SHORE, encoding="utf-8")
    return folder


def lines(text: str) -> list[list[str]]:
    """The cells of a table in columns, which two spaces or more stand between."""
    return [[cell.strip() for cell in line.split("   ") if cell.strip()] for line in text.splitlines() if line]


def test_a_quilt_stands_beside_itself_with_larger_blocks(shore: Path, run: Run) -> None:
    """By hand, of cloth 40 in wide.

    4 x 5 blocks of 6 in: 24 x 30 in. Two squares of each fabric a block are 40, 3 7/8 in: ten to a strip, four strips,
    15 1/2 in; with 2 in for washing 17 1/2 in, so 1/2 yd. The raw top is 24 1/2 x 30 1/2 in, 110 in round. A strip of
    binding loses 2 1/4 in to a join, so it gives 37 3/4 in: three give 113 1/4 in, which is less than 110 and 10 in of
    room, so four; 15 1/2 and 9 in are 24 1/2 in, with 2 in more than 22 1/2 in, so 3/4 yd. Strips: 4, 4 and 4. The
    back is 4 in larger on each side: 32 1/2 x 38 1/2 in, and 38 1/2 in lie across the cloth: 32 1/2 in, with 2 in 1 yd.

    At 9 in: 36 x 45 in. Squares of 5 3/8 in: seven to a strip, six strips, 32 1/4 in, with 2 in 1 yd. Round the raw
    top are 164 in, with room 174 in; four strips give 151 in: five, 11 1/4 in; 43 1/2 in and a twentieth are
    45.7 in: 1 3/8 yd. The back is 44 1/2 x 53 1/2 in: two widths side by side, 44 1/2 in each, 89 in; with a twentieth
    93.5 in, so 2 5/8 yd.
    """
    ended = run("compare", "shore.block", "--size", "9 in")

    assert (ended.status, ended.told) == (0, "")
    assert lines(ended.out) == [
        ["Shore"],
        ["as the file says", "9 in"],
        ["finished", "24 × 30 in", "36 × 45 in"],
        ["blocks", "20", "20"],
        ["pieces to cut", "80", "80"],
        ["strips across", "12", "17"],
        ["Harbour fog", "1/2 yd (needs 15 1/2 in)", "1 yd (needs 32 1/4 in)"],
        ["Wet slate", "3/4 yd (needs 24 1/2 in)", "1 3/8 yd (needs 43 1/2 in)"],
        ["all of these", "1 1/4 yd (needs 40 in)", "2 3/8 yd (needs 75 3/4 in)"],
        ["backing", "1 yd (needs 32 1/2 in), 1 width", "2 5/8 yd (needs 89 in), 2 widths"],
        ["binding", "4 strips", "5 strips"],
        ["wadding", "32 1/2 × 38 1/2 in", "44 1/2 × 53 1/2 in"],
    ]


def test_a_block_stands_beside_itself_at_other_sizes_and_in_other_colours(folder: Path, run: Run) -> None:
    """By hand: one slate square in four. Whole inches have halves on 1/2 in, so they are friendly.

    7 in have cells of 3 1/2 in, 7 1/4 in of 3 5/8 in, 841/64 square inches each.
    """
    text = PINWHEEL.replace("fog\\slate  fog/slate", "fog  slate").replace("slate/fog  slate\\fog", "fog  fog")
    (folder / "plain.block").write_text(f'{text}  colourway "Night" fog=slate slate=fog\n', encoding="utf-8")

    ended = run("compare", "plain.block", "--size", "7 in", "--size", "7 1/4 in", "--colourway", "Night")

    assert ended.status == 0
    assert lines(ended.out) == [
        ["Pinwheel"],
        ["as the file says", "7 in, Night", "7 1/4 in, Night"],
        ["finished", "6 × 6 in", "7 × 7 in", "7 1/4 × 7 1/4 in"],
        ["unfinished", "6 1/2 × 6 1/2 in", "7 1/2 × 7 1/2 in", "7 3/4 × 7 3/4 in"],
        ["smallest patch", "A, 3 × 3 in", "A, 3 1/2 × 3 1/2 in", "A, 3 5/8 × 3 5/8 in"],
        ["patches", "4", "4", "4"],
        ["pieces to cut", "4", "4", "4"],
        ["on the ruler", "yes", "yes", "yes"],
        ["friendly", "yes", "yes", "no"],
        ["friendly sizes near it", "4, 5, 7, 8 in", "5, 6, 8, 9 in", "6, 7, 8, 9 in"],
        ["Harbour fog, seen", "27 sq in", "12 1/4 sq in", "13 9/64 sq in"],
        ["Wet slate, seen", "9 sq in", "36 3/4 sq in", "39 27/64 sq in"],
    ]


def test_what_is_seen_is_told_to_the_tenth_where_no_ruler_has_the_fraction(folder: Path, run: Run) -> None:
    """Thirds of 8 in: nine cells of 64/9 square inches each, 7.11; five of them are 35.56, four 28.44."""
    (folder / "nine.block").write_text(
        'fabric fog "Fog" #dfe3e0\nfabric slate "Slate" #3a4750\nblock "Nine"\n  size 9 in\n'
        "  row fog slate fog\n  row slate fog slate\n  row fog slate fog\n",
        encoding="utf-8",
    )
    told = run("compare", "nine.block", "--size", "8 in")
    assert told.status == 0
    assert lines(told.out)[-2:] == [
        ["Fog, seen", "45 sq in", "about 35.6 sq in"],
        ["Slate, seen", "36 sq in", "about 28.4 sq in"],
    ]


def test_every_combination_is_a_column_and_none_stands_twice(shore: Path, run: Run) -> None:
    words = ("--size", "9 in", "--size", "12 in", "--set", "3 x 3", "--set", "strippy", "--size", "9in")
    ended = run("compare", "shore.block", *words, "--set", "strippy 5 x 5")
    told = ended.told
    assert ended.status == 1
    assert told.count("error[fill-missing]") >= 1  # a strippy quilt has strips of a fabric that this one does not name
    heads = lines(ended.out)[1]
    assert heads == ["as the file says", "9 in, 3 x 3", "12 in, 3 x 3"]


def test_numbers_for_a_page_and_for_a_spreadsheet_are_the_same(shore: Path, run: Run) -> None:
    page = run("compare", "shore.block", "--size", "9 in", "--format", "markdown").out
    sheet = run("compare", "shore.block", "--size", "9 in", "--format", "csv").out
    rows = list(csv.reader(StringIO(sheet)))
    assert rows[0] == ["Shore", "as the file says", "9 in"]
    assert rows[1] == ["finished", "24 × 30 in", "36 × 45 in"]
    cells = [[cell.strip() for cell in line.strip("|").split("|")] for line in page.splitlines()]
    assert [cells[0], *cells[2:]] == rows


def test_programs_read_the_comparison_as_json(shore: Path, run: Run) -> None:
    """Blocks of 9 in straight, 3 x 3: 27 in; backing and the rest as above, by hand."""
    document = json.loads(run("compare", "shore.block", "--size", "9 in", "--set", "3 x 3", "--format", "json").out)
    (quilt,) = document["quilts"]
    own, other = quilt["columns"]
    assert (document["schema"], document["file"], quilt["name"]) == (2, "shore.block", "Shore")
    assert own["what_if"] == {"size": None, "set": None, "colourway": None}
    assert other["what_if"] == {"size": "9 in", "set": "3 x 3", "colourway": None}
    assert (own["finished"], other["finished"]) == (["24", "30"], ["27", "27"])
    assert own["fabrics"]["fog"] == {"need": "15 1/2", "allowed": "2", "buy": "1/2 yd"}
    assert own["backing"] == {"need": "32 1/2", "allowed": "2", "buy": "1 yd", "widths": 1}
    assert own["binding"] == {"strips": 4, "square": None, "need": "9"}
    assert document["blocks"] == []


def test_what_cannot_be_is_told_and_the_rest_is_compared(shore: Path, run: Run) -> None:
    ended = run("compare", "shore.block", "--set", "on point", "--set", "5 x 5")
    assert ended.status == 1
    assert "with --set 'on point': no fabric is given for the setting triangles" in ended.told
    assert lines(ended.out)[1:3] == [["as the file says", "5 x 5"], ["finished", "24 × 30 in", "30 × 30 in"]]


def test_plain_squares_and_half_blocks_are_told_beside_the_blocks(shore: Path, run: Run) -> None:
    """By hand: every second of 20 places; dropped, every second of four columns loses one block to two halves."""
    (shore / "shore.block").write_text(f"{SHORE}  alternate slate\n", encoding="utf-8")
    assert lines(run("compare", "shore.block").out)[3] == ["blocks", "10 and 10 plain squares"]
    (shore / "shore.block").write_text(SHORE, encoding="utf-8")
    table = lines(run("compare", "shore.block", "--set", "dropped columns").out)
    assert table[3] == ["blocks", "20", "18 and 4 half blocks"]


def test_a_file_with_mistakes_is_not_compared(shore: Path, run: Run) -> None:
    spoil(shore / "pinwheel.block")
    ended = run("compare", "shore.block", "--size", "9 in", "--size", "12 in")
    assert (ended.status, ended.out.strip()) == (1, "")
    assert ended.told.count("error[name-unknown]") == 1


def test_a_setting_is_refused_where_there_is_no_quilt(folder: Path, run: Run) -> None:
    ended = run("compare", "pinwheel.block", "--set", "5 x 5")
    assert (ended.status, ended.out) == (2, "")
    assert "there is no quilt" in ended.told


def test_standard_input_is_compared_too(folder: Path, run: Run) -> None:
    ended = run("compare", "-", "--size", "20 cm", typed=PINWHEEL)
    assert ended.status == 0
    assert lines(ended.out)[2] == ["finished", "6 × 6 in", "20 × 20 cm"]
