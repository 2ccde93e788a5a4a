"""What the steps of a block say, for tests of their words."""

from blockdsl.facts import BlockFacts
from blockdsl.wording import step_texts


def texts(facts: BlockFacts, language: str | None = None) -> list[str]:
    """The words of every step on one line each."""
    return [text.text for text in step_texts(facts, language)]


def titles(facts: BlockFacts) -> list[str]:
    """The headings of the steps."""
    return [text.title for text in step_texts(facts)]
