"""Problems as words on a screen, and as lines of JSON."""

from __future__ import annotations

import json
import re

from blockdsl.diagnostics import CATALOGUE, Diagnostic, Problems, Source, Span, render_json, render_text, summary


def problem_at(text: str, place: str, *, help: str | None = None) -> Diagnostic:  # noqa: A002  the word that is printed
    source = Source("a.block", text)
    start = text.index(place)
    return Diagnostic("name-unknown", "error", "there is no fabric", Span(source, start, start + len(place)), help)


def test_a_problem_shows_its_place_its_line_and_carets_under_the_words() -> None:
    shown = render_text(problem_at('block "A"\n  row fgo fog', "fgo", help="did you mean `fog`?"), colour=False)
    assert shown.splitlines() == [
        "a.block:2:7: error[name-unknown]: there is no fabric",
        "2 |   row fgo fog",
        "  |       ^^^",
        "  help: did you mean `fog`?",
    ]


def carets(text: str, place: str) -> str:
    return render_text(problem_at(text, place), colour=False).splitlines()[2]


def test_carets_stand_under_the_words_after_wide_letters_and_marks() -> None:
    # 布 takes two columns, an accent of its own none.
    assert carets("row 布 fog", "fog") == "  | " + " " * 7 + "^^^"
    assert carets("row e\u0301 fog", "fog") == "  | " + " " * 6 + "^^^"
    assert carets("row a 布", "布") == "  | " + " " * 6 + "^^"


def test_a_tab_is_four_columns() -> None:
    assert render_text(problem_at("\trow fog", "fog"), colour=False).splitlines()[1:] == [
        "1 |     row fog",
        "  |         ^^^",
    ]


def test_a_place_between_two_letters_has_one_caret() -> None:
    source = Source("a.block", "size")
    shown = render_text(Diagnostic("size-missing", "error", "m", Span(source, 4, 4)), colour=False)
    assert shown.splitlines()[2] == "  |     ^"


def test_a_place_over_several_lines_is_marked_in_its_first_line() -> None:
    assert carets("row abc\nrow def", "c\nrow") == "  |       ^"


def test_a_long_line_is_cut_around_the_place() -> None:
    lines = render_text(problem_at("row " + "fog " * 100 + "fgo " + "fog " * 100, "fgo"), colour=False).splitlines()
    assert len(lines[1]) <= len("1 | ") + 162
    caret = lines[2].index("^")
    assert lines[1][caret : caret + 3] == "fgo"
    assert lines[1].count("…") == 2


def test_control_characters_never_reach_the_screen() -> None:
    shown = render_text(problem_at("row \x1b[31m\u202e fog", "fog"), colour=False)
    assert "\x1b" not in shown
    assert "\u202e" not in shown
    assert "␛" in shown


def test_colour_is_added_only_when_asked() -> None:
    problem = problem_at("row fog", "fog")
    plain = render_text(problem, colour=False)
    coloured = render_text(problem, colour=True)
    assert "\x1b" not in plain
    assert re.sub(r"\x1b\[[0-9]+m", "", coloured) == plain


def test_related_places_are_shown_with_their_words() -> None:
    source = Source("a.block", "unit a\nunit a")
    problem = Diagnostic(
        "name-twice", "error", "m", Span(source, 12, 13), related=((Span(source, 5, 6), "the first is here"),)
    )
    assert render_text(problem, colour=False).splitlines()[3:] == [
        "  = a.block:1:6: the first is here",
        "1 | unit a",
        "  |      -",
    ]


def test_json_is_one_object_on_one_line() -> None:
    text = render_json(problem_at('block "A"\n  row fgo', "fgo", help="h"))
    assert "\n" not in text
    assert json.loads(text) == {
        "code": "name-unknown",
        "severity": "error",
        "message": "there is no fabric",
        "file": "a.block",
        "line": 2,
        "column": 7,
        "end_line": 2,
        "end_column": 10,
        "help": "h",
        "related": [],
        "fixes": [],
    }


def test_the_summary_counts_errors_and_warnings() -> None:
    problems = Problems()
    assert summary(problems) == "no problems"
    span = Span(Source("a.block", ""), 0, 0)
    problems.report("grid-mixed", span)
    problems.report("grid-mixed", span)
    problems.report("trim-without-method", span)
    assert summary(problems) == "2 errors, 1 warning"


def test_every_problem_has_a_slug_a_message_and_a_meaning() -> None:
    for code, entry in CATALOGUE.items():
        assert re.fullmatch(r"[a-z]+(-[a-z0-9]+)*", code)
        assert entry.severity in {"error", "warning"}
        assert not entry.message.endswith(".")
        assert entry.meaning.endswith(".")
