"""Messages are found in the language asked for, or in the one that it varies, and never half said."""

from importlib.resources import files

import pytest
from fluent.runtime import FluentResource
from fluent.syntax.ast import Message, Term

from blockdsl.sewing.message import Names, message
from blockdsl.wording import LANGUAGES, messages
from blockdsl.wording.messages import MissingMessageError
from blockdsl.wording.sentences import sentence


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_language_has_every_message_of_the_language_it_varies(language: str) -> None:
    assert "step-take" in messages(language)


def test_a_message_has_its_arguments_in_place() -> None:
    assert messages()("step-take", list="2 beams") == "Take 2 beams."


def test_a_message_that_is_missing_is_never_passed_over() -> None:
    with pytest.raises(MissingMessageError, match="no-such-message in en-GB"):
        messages("en-GB")("no-such-message")


def test_a_message_without_its_argument_is_never_printed() -> None:
    with pytest.raises(MissingMessageError, match="step-take"):
        messages()("step-take")


def entries(folder: str) -> list[str]:
    found: list[str] = []
    for source in files("blockdsl.wording").joinpath(folder).iterdir():
        if source.name.endswith(".ftl"):
            body = FluentResource(source.read_text(encoding="utf-8")).body
            found += [entry.id.name for entry in body if isinstance(entry, (Message, Term))]
    return found


@pytest.mark.parametrize("folder", LANGUAGES)
def test_no_message_is_written_twice_in_a_language(folder: str) -> None:
    found = entries(folder)
    assert [key for key in found if found.count(key) > 1] == []


def test_british_english_has_no_message_that_american_english_lacks() -> None:
    assert set(entries("en-GB")) <= set(entries("en-US"))


def test_a_message_of_several_lines_in_its_file_is_one_paragraph() -> None:
    said = messages()("squaring-up", first="1", again="1/2", unit="in")
    assert "\n" not in said
    assert "squaring up the ends, and 1/2 in longer" in said


def test_a_list_of_any_length_has_its_place_in_a_message() -> None:
    # Fluent itself takes no argument of more than 2,500 letters, and this one is put into a term too.
    row = ", ".join(["A (Harbour fog)"] * 400)
    assert messages()("step-take", list=row) == f"Take {row}."


def test_names_are_a_list_with_and_unless_their_order_matters() -> None:
    letters = ("A", "B", "C")
    said = sentence(message("step-take", list=Names(letters)), "in", messages())
    assert said == "Take A, B, and C."
    said = sentence(message("step-take", list=Names(letters, in_order=True)), "in", messages())
    assert said == "Take A, B, C."
