"""Messages are found in the language asked for, or in the one that it varies, and never half said."""

import pytest

from blockdsl.wording import LANGUAGES, messages
from blockdsl.wording.messages import MissingMessageError


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_language_has_every_message_of_the_language_it_varies(language: str) -> None:
    assert "step-measure" in messages(language)


def test_a_message_has_its_arguments_in_place() -> None:
    assert messages()("step-measure", size="6 1/2 × 3 1/2 in") == "It should measure 6 1/2 × 3 1/2 in."


def test_a_message_that_is_missing_is_never_passed_over() -> None:
    with pytest.raises(MissingMessageError, match="no-such-message in en-GB"):
        messages("en-GB")("no-such-message")


def test_a_message_without_its_argument_is_never_printed() -> None:
    with pytest.raises(MissingMessageError, match="step-measure"):
        messages()("step-measure")
