"""A slip is named, shown where it is, and spoils one line only."""

from __future__ import annotations

import pytest

from blockdsl.diagnostics import Diagnostic, Problems, Source
from blockdsl.syntax import ast, parse
from blockdsl.syntax.explain import TRADE_WORDS
from blockdsl.syntax.kinds import KEYWORDS
from blockdsl.syntax.parse import LARGEST_FILE


def slips_in(text: str) -> list[Diagnostic]:
    problems = Problems()
    parse(Source("test.block", text), problems)
    return list(problems)


def slip_in(line: str) -> Diagnostic:
    (slip,) = slips_in(f'block "Test"\n{line}')
    return slip


@pytest.mark.parametrize(
    ("line", "code", "place"),
    [
        ("size 12", "length-needs-unit", "12"),
        ("size 12 x 9", "length-needs-unit", "9"),
        ('size 12"', "length-needs-unit", '12"'),
        ("seam 1/4 inches", "length-needs-unit", "1/4"),
        ("size 12 in x 9 cm", "units-mixed", "cm"),
        ("size 7,5 cm", "word-unexpected", "7,5"),
        ("size 1 3/2 in", "word-unexpected", "1 3/2"),
        ("size", "line-ends-early", ""),
        ("columns 1 1/0", "number-over-zero", "1 1/0"),
        ("columns " + "9" * 31, "number-too-long", "9" * 31),
        ("patch fog at 0,0 1,1/0 0,1", "number-over-zero", "1,1/0"),
        ("rwo fog", "line-unknown", "rwo"),
        ("(half a b)", "line-unknown", "("),
        ("row (half a b", "bracket-not-closed", "("),
        ("row half a b)", "bracket-not-opened", ")"),
        ("row (half (half a b) c)", "bracket-inside-bracket", "("),
        ("row fog >", "turn-apart", ">"),
        ("row (half a b) ~>", "turn-apart", "~>"),
        ("row fog / lantern", "pair-apart", "/"),
        ("row fog /lantern", "pair-apart", "/"),
        ("row", "row-empty", "row"),
        ("row 3fog", "name-needs-letter", "3fog"),
        ("row fog،", "name-needs-letter", "fog،"),
        ("row fog>fog", "word-unexpected", "fog"),
        ("row --", "word-unexpected", "--"),
        ('note "Press', "quote-not-closed", '"Press'),
        ("row fog #comment", "comment-needs-space", "#comment"),
        ("#dfe3e0", "comment-needs-space", "#dfe3e0"),
        ('fabric fog "Fog" #dfe', "colour-not-six-digits", "#dfe"),
        ('fabric fog "Fog" #gggggg', "colour-not-six-digits", "#gggggg"),
        ("fabric fog #dfe3e0", "fabric-label-missing", "#dfe3e0"),
        ('fabric fog "Fog" light', "fabric-colour-missing", "light"),
        ('fabric 3fog "Fog" #dfe3e0', "name-needs-letter", "3fog"),
        ('fabric fog "Fog" #dfe3e0 bright', "value-unknown", "bright"),
        ('fabric fog "Fog" #dfe3e0 light dark', "setting-twice", "dark"),
        ("block Harbour", "word-unexpected", "Harbour"),
        ("unit y = (half a b)", "word-unexpected", "("),
        ("row f\x00og", "control-character", "\x00"),
        ("row fog\rrow fog", "control-character", "\r"),
        ("row fog\u202e", "control-character", "\u202e"),
    ],
)
def test_a_slip_is_named_and_shown_where_it_is(line: str, code: str, place: str) -> None:
    slip = slip_in(line)
    assert (slip.code, slip.span.text) == (code, place)
    assert slip.span.line == 2


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("size 12", "say inches or centimetres: `size 12 in`"),
        ('size 12"', "write `in` for inches: `12 in`"),
        ("rwo fog", "did you mean `row`?"),
        ("Row fog", "did you mean `row`?"),
        ("coloring", '`colourway "Night" fog=slate slate=fog`'),
        ("row fog >", "`fog>`"),
        ("row fog #comment", "`# comment`"),
        ("size 7,5 cm", "`7.5`"),
        ("row (half (half a b) c)", "`unit`"),
    ],
)
def test_the_help_says_how_to_mend_it(line: str, words: str) -> None:
    assert words in (slip_in(line).help or "")


def test_five_slips_give_five_problems_and_leave_the_other_lines() -> None:
    text = 'fabric fog "Fog" #dfe\nblock "A"\n  size 12\n  row fog fog\n  row fog >\n  rwo fog fog\n  note "a\n'
    problems = Problems()
    file = parse(Source("test.block", text), problems)
    assert [problem.span.line for problem in problems] == [1, 3, 5, 6, 7]
    fabric, block = file.declarations
    assert isinstance(fabric, ast.UnreadableLine)
    assert isinstance(block, ast.BlockDeclaration)
    assert [type(line) for line in block.lines] == [
        ast.UnreadableLine,
        ast.Row,
        ast.UnreadableLine,
        ast.UnreadableLine,
        ast.UnreadableLine,
    ]


def test_a_spoilt_declaration_still_says_which_name_it_would_have_given() -> None:
    file = parse(Source("test.block", 'fabric fog "Fog" #dfe\nunit beam = (half a b)'), Problems())
    assert [d.name for d in file.declarations if isinstance(d, ast.UnreadableLine)] == ["fog", "beam"]


def test_lines_below_a_spoilt_declaration_are_not_judged() -> None:
    assert [slip.code for slip in slips_in("block Harbour\n  size 12 in\n  row fog\n")] == ["word-unexpected"]


def test_a_line_before_any_declaration_is_reported_once() -> None:
    slips = slips_in("row fog\nrow fog\nunit a\nrow fog")
    assert [(slip.code, slip.span.line) for slip in slips] == [("line-outside-declaration", 1)]


@pytest.mark.parametrize(
    "text",
    [
        "unit a\n size 12 in",
        "unit a = half b c\n row b",
        'fabric fog "Fog" #dfe3e0\n row fog',
        'use "a.block"\n size 12 in',
    ],
)
def test_a_line_in_the_wrong_declaration_is_a_slip(text: str) -> None:
    (slip,) = slips_in(text)
    assert (slip.code, slip.span.line) == ("line-does-not-belong", 2)


def test_a_slip_in_one_line_of_a_quilt_spoils_that_line_only() -> None:
    text = 'quilt "Top"\n set straight 4 x 6 of "A"\n fabric width 40 in usable\n wading\nblock "A"\n row 3'
    assert [(slip.code, slip.span.line) for slip in slips_in(text)] == [("line-unknown", 4), ("word-unexpected", 6)]


@pytest.mark.parametrize(
    ("line", "code", "wanted"),
    [
        ('set diagonal 4 x 6 of "A"', "word-unexpected", "`on`"),
        ("set straight 4 x 6", "line-ends-early", "`of`"),
        ("sash 1 1/2 slate", "length-needs-unit", "`sash 1 1/2 in`"),
        ("border 2 in", "line-ends-early", "`pieced`"),
        ("turn sideways on all", "word-unexpected", "a turn"),
        ("fabric width 40 in", "line-ends-early", "`usable`"),
        ("shrinkage 5", "line-ends-early", "`%`"),
        ("border 2 in fog butted mitred", "setting-twice", "corners"),
        ("backing fog width 42 in width 108 in", "setting-twice", "width"),
    ],
)
def test_a_slip_in_a_line_of_a_quilt_says_what_belongs_there(line: str, code: str, wanted: str) -> None:
    (slip,) = slips_in(f'quilt "Top"\n {line}\n')
    assert slip.code == code
    assert wanted in f"{slip.message} {slip.help}"


@pytest.mark.parametrize("line", ['set straight 2 x 2 of "A"', "fill fog", "border 2 in fog"])
def test_a_line_of_a_quilt_belongs_in_no_block(line: str) -> None:
    (slip,) = slips_in(f'block "A"\n {line}\n')
    assert slip.code == "line-does-not-belong"
    assert "quilt" in str(slip.help)


def test_a_line_of_a_block_belongs_in_no_quilt() -> None:
    (slip,) = slips_in('quilt "Top"\n size 12 in\n')
    assert slip.code == "line-does-not-belong"
    assert "blocks 9 in" in str(slip.help)


def test_a_book_may_name_its_blocks_without_declaring_them() -> None:
    book = 'book "All"\n chapter "One"\n  block "A" sizes 6 12 in\n  quilt "Top"\n'
    text = f'{book}quilt "Top"\n set straight 2 x 2 of "A"\n'
    assert slips_in(text) == []


def test_a_file_over_1_mib_is_refused_unread() -> None:
    file_text = "# " + "x" * (LARGEST_FILE - 1)
    assert [slip.code for slip in slips_in(file_text)] == ["file-too-large"]
    assert slips_in(file_text[:-1]) == []


def test_letters_of_several_bytes_count_as_such() -> None:
    assert [slip.code for slip in slips_in("# " + "布" * (LARGEST_FILE // 3))] == ["file-too-large"]


def test_brackets_may_be_32_deep_and_no_deeper() -> None:
    assert slip_in("row " + "(" * 33 + ")" * 33).code == "nesting-too-deep"
    assert slip_in("row " + "(half " * 32 + ")" * 32).code == "bracket-inside-bracket"
    assert slip_in("row " + "(" * 100_000).code == "nesting-too-deep"


def test_reading_stops_after_100_slips() -> None:
    slips = slips_in("what\n" * 5000)
    assert len(slips) == 101
    assert slips[-1].code == "too-many-mistakes"


def test_a_message_never_repeats_a_whole_long_line() -> None:
    slip = slip_in("row " + "[" * 5000)
    assert len(slip.message) < 200


def test_a_slip_in_the_name_of_a_quilt_in_a_book_says_how_it_is_written() -> None:
    slip = slips_in('book "Sampler"\n  quilt "Shore" by moonlight\nunit t = square fog\n')[0]
    assert slip.code == "word-unexpected"
    assert '`quilt "Breakwater"`' in str(slip.help)


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("Lattice 2 in slate", "`sash 1 1/2 in slate`"),
        ("cornerstones lantern", "posts lantern"),
        ("sashing 2 in slate", "`sash 1 1/2 in slate`"),
        ("setting triangles slate", "`fill fog`"),
    ],
)
def test_a_line_in_another_word_of_the_trade_is_told_how_it_is_written(line: str, words: str) -> None:
    (slip,) = slips_in(f'quilt "Top"\n {line}\n')
    assert slip.code == "line-unknown"
    assert words in str(slip.help)
    assert "did you mean" not in str(slip.help)


def test_every_word_of_the_trade_leads_to_a_line_that_there_is() -> None:
    for word, usage in TRADE_WORDS.items():
        assert word not in KEYWORDS
        assert usage[1:].split(maxsplit=1)[0].rstrip("`") in KEYWORDS


def test_cells_with_commas_between_are_told_to_leave_them_out() -> None:
    slip = slip_in("row fog, lantern")
    assert slip.code == "word-unexpected"
    assert slip.help == "leave out the comma: put only spaces between cells, `row fog lantern fog`"


def test_all_that_could_stand_in_a_place_is_said() -> None:
    (slip,) = slips_in('quilt "Top"\n set 3 x 4 of "A"\n')
    assert "`medallion` should come next" in slip.message
