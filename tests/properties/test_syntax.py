"""Whatever is typed gives problems, never a fault of ours; setting a file in its usual form changes no meaning."""

from __future__ import annotations

from typing import Any

from hypothesis import given
from hypothesis import strategies as st
from msgspec import Struct

from blockdsl.diagnostics import Problems, Source, Span, render_json, render_text
from blockdsl.syntax import parse
from blockdsl.syntax.format import format_text
from blockdsl.syntax.grammar import build_line, parse_line
from blockdsl.syntax.lines import split_lines
from blockdsl.syntax.plain_rows import read_row

# --- what a maker may type ---------------------------------------------------------------------

names = st.sampled_from(
    [
        "fog",
        "lantern",
        "row",
        "on",
        "x",
        "x4",
        "in",
        "sand-2",
        "dark_blue",
        "布",
        "été",
        "हिन्दी",
        "unit",
        "at",
        "as",
        "count",
    ]
)
spaces = st.sampled_from([" ", "  ", "\t", "   ", "\u00a0"])
numbers = st.one_of(
    st.integers(1, 40).map(str),
    st.sampled_from(["1/2", "2 7/8", "2.5", "1  1/2", "0.75", "12 3/4"]),
)
units = st.sampled_from([" in", "in", " cm", "  mm"])
quoted = st.text(st.characters(exclude_characters='"“”', exclude_categories=("C", "Z")), min_size=1, max_size=12).map(
    lambda t: f'"{t}"'
)
turns = st.text("<>~", max_size=3)
times = st.sampled_from([" x ", "x", " × ", "×"])


def words(*parts: Any) -> st.SearchStrategy[str]:
    """Parts with some space between them; a plain text stands for itself."""
    strategies = [st.just(part) if isinstance(part, str) else part for part in parts]
    return st.tuples(spaces, *strategies).map(lambda drawn: drawn[0].join(drawn[1:]))


shapes = st.lists(st.one_of(names, numbers, st.just("4x4"), st.just("3 × 2")), max_size=6).flatmap(
    lambda rest: words("geese", *rest)
)
cells = st.one_of(
    st.sampled_from(["-", "|"]),
    st.tuples(names, turns).map("".join),
    st.tuples(names, st.sampled_from("/\\"), names, turns).map("".join),
    st.tuples(st.just("("), shapes, st.just(")"), turns).map("".join),
)
places = st.sampled_from(["0,0", "1,0", "1/2,2.5", "2-r2,1/2", "1/2r3,-r2", "3,4"])
rows = st.lists(cells, min_size=1, max_size=5).flatmap(lambda row: words("row", *row))
grid_lines = st.one_of(
    rows,
    rows,
    st.lists(numbers, min_size=1, max_size=4).flatmap(lambda found: words("columns", *found)),
    st.lists(numbers, min_size=1, max_size=4).flatmap(lambda found: words("heights", *found)),
    st.tuples(st.just("grid 4"), times, numbers).map("".join),
    st.tuples(names, st.lists(places, min_size=3, max_size=5)).flatmap(
        lambda found: words("patch", found[0], "at", *found[1])
    ),
    words("note", quoted),
)
lengths = st.tuples(numbers, units).map("".join)
extents = st.one_of(lengths, st.tuples(numbers, times, numbers, units).map("".join))
block_lines = st.one_of(
    grid_lines,
    words("size", extents),
    words("seam", lengths),
    words("measure", lengths),
    words("trim", lengths),
    words("make", names, "as two at a time"),
    st.tuples(quoted, names, names).map(lambda found: f"colourway {found[0]} {found[1]} = {found[2]} fog=fog"),
    st.tuples(names, numbers, numbers).map(
        lambda found: f"expect cut {found[0]} 4 rectangles {found[1]} x {found[2]} once"
    ),
    st.tuples(names, extents).map(lambda found: f"expect unit {found[0]} {found[1]} count 3"),
    words("expect finished", extents),
    words("family", names),
    words("source", quoted),
)
quilt_places = st.lists(st.one_of(names, st.tuples(quoted, turns).map("".join)), min_size=1, max_size=4)
wheres = st.sampled_from(["all", "every second", "odd rows", "even columns"])
bands = st.tuples(
    st.sampled_from(["border", "round"]),
    lengths,
    st.one_of(names.filter(lambda name: name != "pieced"), st.tuples(st.just("pieced "), quoted, turns).map("".join)),
    st.sampled_from(["", "mitred", "top first butted", "corners fog", "along length"]),
)
quilt_lines = st.one_of(
    st.tuples(st.sampled_from(["straight", "dropped columns", "on point", "strippy"]), times, quoted).map(
        lambda found: f"set {found[0]} 4{found[1]}6 of {found[2]}"
    ),
    words("set medallion on point of", quoted),
    st.just("set rows"),
    quilt_places.flatmap(lambda found: words("row", *found)),
    words("blocks", lengths),
    words("fill", names),
    words("alternate", st.one_of(names, quoted)),
    words("turn ~> on", wheres),
    words("colourway", quoted, "on", wheres),
    words("sash", lengths, names, "posts", names, "outer"),
    bands.flatmap(lambda found: words(*found)),
    words("binding", lengths, names, "bias"),
    words("backing", names, "overage", lengths, "width", lengths),
    words("wadding overage", lengths),
    words("sleeve", lengths, names),
    words("scraps", names, "from 8 fat quarters"),
    words("fabric width", lengths, "usable"),
    st.just("shrinkage 5%"),
    words("expect finished", extents),
    words("expect blocks", quoted, numbers),
    words("note", quoted),
)
comments = st.sampled_from(["", "", "", " # a word", "  #", ' # of `row` and "quotes'])
indents = st.sampled_from(["", "  ", "\t", "      "])
gaps = st.sampled_from(["\n", "\n", "\n\n", "\n\n\n", "\r\n", "\n# a comment\n", "\n  # inside\n\n", "\n\n# above\n"])
fabrics = st.one_of(
    words("fabric", names, quoted, "#DFE3e0"),
    words("fabric", names, quoted, "#3a4750", "dark", "width 42in", "directional"),
)
one_liners = st.one_of(fabrics, fabrics, words("use library", quoted), words("unit", names, "=", shapes))


def _lay_out(lines: list[str], decoration: list[tuple[str, str, str]]) -> str:
    return "".join(f"{before}{line}{after}{gap}" for line, (before, after, gap) in zip(lines, decoration, strict=True))


@st.composite
def block_files(draw: st.DrawFn) -> str:
    """A file without slips, laid out any way at all."""
    lines: list[str] = []
    for _ in range(draw(st.integers(0, 4))):
        lines += draw(st.lists(one_liners, max_size=3))
        kind = draw(st.sampled_from(["unit", "quilt", "block"]))
        if kind == "unit":
            lines += [f"unit {draw(names)}", *draw(st.lists(grid_lines, max_size=4))]
        elif kind == "quilt":
            lines += [f"quilt {draw(quoted)}", *draw(st.lists(quilt_lines, max_size=5))]
        else:
            lines += [f"block {draw(quoted)}", *draw(st.lists(block_lines, max_size=5))]
    size = len(lines)
    decoration = draw(st.lists(st.tuples(indents, comments, gaps), min_size=size, max_size=size))
    return draw(st.sampled_from(["", "# first\n", "\n\n  # first\n\n"])) + _lay_out(lines, decoration)


# Words of the language in any order: nearer to real slips than any text at all.
scraps = st.lists(
    st.one_of(
        st.sampled_from(
            [
                *("row", "block", "unit", "fabric", "size", "patch", "use", "quilt", "book", "applique", "expect cut"),
                *(
                    "(",
                    ")",
                    '"',
                    "“",
                    "”",
                    "#",
                    "#dfe3e0",
                    "#abc",
                    "=",
                    "/",
                    "\\",
                    "-",
                    "|",
                    ">",
                    "<",
                    "~",
                    "x",
                    "in",
                    "1/0",
                ),
                *(
                    "\n",
                    "\n",
                    "\n",
                    "\r\n",
                    "\r",
                    "\t",
                    "\u00a0",
                    "\x00",
                    "\u202e",
                    "\ufeff",
                    "\ud800",
                    "é",
                    "e\u0301",
                    "½",
                ),
            ]
        ),
        names,
        numbers,
        places,
    ),
    max_size=40,
).map(" ".join)


def bare(node: Any) -> Any:
    """The ast without its places."""
    if isinstance(node, tuple):
        return tuple(bare(part) for part in node)
    if not isinstance(node, Struct):
        return node
    fields = [getattr(node, name) for name in node.__struct_fields__]
    return (type(node).__name__, *(bare(field) for field in fields if not isinstance(field, Span | Source)))


# --- promises ----------------------------------------------------------------------------------


@given(st.one_of(st.text(), scraps))
def test_any_text_gives_a_file_and_problems_that_can_be_shown(text: str) -> None:
    problems = Problems()
    source = Source("any.block", text)
    file = parse(source, problems)
    assert file.source is source
    for problem in problems:
        assert 0 <= problem.span.start <= problem.span.stop <= len(text)
        assert problem.help
        assert "\x00" not in render_text(problem, colour=False)
        assert "\n" not in render_json(problem)


@given(st.one_of(st.text(), scraps))
def test_a_text_is_set_in_its_usual_form_only_when_it_has_no_slip(text: str) -> None:
    problems = Problems()
    source = Source("any.block", text)
    parse(source, problems)
    slips = [problem for problem in problems if problem.code != "word-renamed"]
    assert (format_text(source) is None) == bool(slips)


@given(block_files())
def test_a_file_without_slips_has_no_problem(text: str) -> None:
    problems = Problems()
    parse(Source("good.block", text), problems)
    assert [problem.message for problem in problems] == []


@given(block_files())
def test_setting_a_file_in_its_usual_form_keeps_what_it_says(text: str) -> None:
    formatted = format_text(Source("before.block", text))
    assert formatted is not None
    before = parse(Source("before.block", text), Problems())
    after = parse(Source("after.block", formatted), Problems())
    assert bare(after.declarations) == bare(before.declarations)
    assert formatted.count("#") == text.count("#")


@given(st.one_of(block_files(), scraps))
def test_setting_twice_gives_the_same_as_once(text: str) -> None:
    once = format_text(Source("once.block", text))
    if once is not None:
        assert format_text(Source("twice.block", once)) == once


@given(st.lists(cells, min_size=1, max_size=6).flatmap(lambda row: words("row", *row)))
def test_a_row_read_by_hand_is_the_row_that_the_grammar_reads(text: str) -> None:
    (line,) = split_lines(Source("row.block", text))
    by_hand = read_row(line)
    assert by_hand is not None
    assert by_hand == build_line(line, parse_line(line.text))


@given(scraps.map(lambda text: "row " + " ".join(text.split())))
def test_a_row_that_the_grammar_refuses_is_never_read_by_hand(text: str) -> None:
    (line,) = split_lines(Source("row.block", text))
    if line.issue is None and (by_hand := read_row(line)) is not None:
        assert by_hand == build_line(line, parse_line(line.text))
