"""What an editor remembers changes no result, and is forgotten when nothing asks for it."""

from __future__ import annotations

from random import Random

import pytest

from blockdsl.analysis import TextReader
from blockdsl.diagnostics import Diagnostic, Problems, Source
from blockdsl.editor.edited import EditedSource
from blockdsl.editor.remembered import KeptMemory
from blockdsl.pipeline import Stages, run
from blockdsl.resources import library_path
from blockdsl.wording import facts_json

_TYPED = 'abeghinorw 12/"()-|<~\n#é😀'


def _file() -> str:
    """Some blocks with the fabrics and units that they use, and a quilt."""
    texts = [library_path(name).read_text(encoding="utf-8") for name in ("basics", "crosses", "curves")]
    lines = [line for text in texts for line in text.splitlines() if not line.startswith("use ")]
    quilt = ['quilt "Bay"', '  set straight 2 x 3 of "Tangled Garter"', "  sash 1 in main", "  binding 2 1/4 in main"]
    return "\n".join([*lines, *quilt]) + "\n"


def _told(problems: Problems) -> list[object]:
    def place(found: Diagnostic) -> tuple[object, ...]:
        return found.span.line, found.span.column, found.span.source.position(found.span.stop), found.span.text

    return [
        (
            each.code,
            each.message,
            each.help,
            place(each),
            [(span.line, span.text, words) for span, words in each.related],
        )
        for each in problems
    ]


def _edited(text: str, chance: Random) -> str:
    place = chance.randrange(len(text))
    match chance.randrange(8):
        case 0 | 1 | 2 | 3:
            return text[:place] + chance.choice(_TYPED) + text[place:]
        case 4 | 5 | 6:
            return text[:place] + text[place + 1 :]
        case _:
            lines = text.split("\n")
            lines.insert(chance.randrange(len(lines)), lines.pop(chance.randrange(len(lines))))
            return "\n".join(lines)


def _cold(text: str) -> tuple[Stages, Problems]:
    problems = Problems()
    return run(Source("a.block", text), TextReader(), problems), problems


def test_after_every_edit_the_same_is_found_as_when_the_file_is_read_for_the_first_time() -> None:
    text, chance = _file(), Random(14)  # noqa: S311  the same edits every time
    source, memory = EditedSource("a.block", text), KeptMemory()
    for number in range(20):
        before = text
        text = _edited(text, chance)
        source.replace(text)
        memory.next_reading()
        warm = Problems()
        stages = run(source, TextReader(), warm, memory=memory)
        cold_stages, cold = _cold(text)
        assert _told(warm) == _told(cold), number
        if number % 8 == 0:
            assert facts_json(stages.facts, warm) == facts_json(cold_stages.facts, cold)
        if chance.random() < 0.6:  # the slip is corrected
            text = before


def test_what_is_no_longer_asked_for_is_forgotten() -> None:
    source, memory = EditedSource("a.block", _file()), KeptMemory()
    kept = []
    for number in range(8):
        source.replace(_file().replace("size 12 in", f"size {12 + number} in", 1))
        memory.next_reading()
        run(source, TextReader(), memory=memory)
        kept.append(memory.size)
    assert kept[-1] <= kept[5]


def test_lines_keep_what_was_made_of_them_wherever_they_are_moved() -> None:
    source = EditedSource("a.block", "one\ntwo\nthree")
    starts = dict(zip(("one", "two", "three"), source.line_starts, strict=True))
    made = [source.recall(("test", starts["three"]), object) for _ in range(2)]
    source.replace("three\nnew\none\ntwo")
    assert [source.position(starts[word]) for word in ("one", "two", "three")] == [(3, 1), (4, 1), (1, 1)]
    assert made[0] is made[1] is source.recall(("test", starts["three"]), object)


@pytest.mark.parametrize("text", ["", "\n", "\ufeff", "\ufeffblock", "a\r\nb\r\n", "a\rb", "é\n😀 x\n\n"])
def test_an_edited_text_has_the_lines_of_any_other(text: str) -> None:
    plain, edited = Source("a", text), EditedSource("a", "before\n")
    edited.replace(text)
    assert [whole for _, whole in edited.lines()] == [whole for _, whole in plain.lines()]
    assert [edited.position(start) for start, _ in edited.lines()] == [
        plain.position(start) for start, _ in plain.lines()
    ]
    assert [edited.line(n + 1) for n in range(len(edited.line_starts))] == [
        plain.line(n + 1) for n in range(len(plain.line_starts))
    ]
    assert edited.between(edited.line_starts[0], edited.offset(10**6, 10**6)).rstrip("\r") == text.rstrip("\r")
