"""What a maker should know before she cuts: how to read the pages, how to print them, and the cautions in full."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from blockdsl.document.content import (
    PAGE_NUMBER,
    Heading,
    Paragraph,
    Part,
    Parts,
    Prose,
    RichText,
    Section,
    TextRun,
    plain,
)
from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.wording.messages import Messages
from blockdsl.wording.sheet import format_allowance, format_metric_rule, format_squaring

_CAUTIONS: Final = ("cutter", "iron", "needles", "others", "tools")
"""By what they are about: said once in a book, in short on every sheet."""


def front_parts(blocks: Sequence[BlockFacts], words: Messages, *, quilts: bool = False, test: str = "") -> Parts:
    """Sizes are explained for each unit and seam that the book uses, `quilts` where it has some.

    `test` is where the test page is, of a book that ends with one.
    """
    says = (format_allowance, format_squaring, format_metric_rule)
    sizes = [text for say in says for text in dict.fromkeys(say(facts) for facts in blocks) if text]
    topics = ("pictures", "cutting", "units", "quilts") if quilts else ("pictures", "cutting", "units")
    size = _with_page(words("begin-printing-size", page=PAGE_NUMBER), test) if test else ()
    printing = [*((size,) if size else ()), plain(words("begin-printing-scale"))]
    return (
        Prose(
            (
                *_headed(words("begin-reading"), [plain(words(f"begin-reading-{topic}")) for topic in topics]),
                *_headed(words("sheet-sizes"), list(map(plain, sizes))),
                *_headed(words("begin-printing"), printing),
                *_headed(words("begin-first"), [plain(words("begin-first-words"))]),
            )
        ),
        Section(
            Heading(2, plain(words("sheet-care"))),
            (Prose(tuple(part for what in _CAUTIONS for part in _caution(what, words))),),
        ),
    )


def _headed(title: str, texts: Sequence[RichText], level: int = 2) -> Iterator[Part]:
    yield Heading(level, plain(title))
    yield from map(Paragraph, texts)


def _caution(what: str, words: Messages) -> Iterator[Part]:
    return _headed(words(f"caution-{what}"), [plain(words(f"caution-{what}.words"))], level=3)


def _with_page(text: str, target: str) -> RichText:
    """The sentence with the number of the page in its place."""
    before, _, after = text.partition(PAGE_NUMBER)
    return (TextRun(before), TextRun(PAGE_NUMBER, target=target), TextRun(after))
