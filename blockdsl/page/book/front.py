"""What a maker should know before she cuts: how to read the pages, how to print them, and the cautions in full."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.marks.theme import PaperSize
from blockdsl.page.book.parts import Bodies
from blockdsl.page.book.sections import section
from blockdsl.page.headings import heading
from blockdsl.page.parts import PageNumbers, flowed, title_flowable
from blockdsl.wording.messages import Messages
from blockdsl.wording.sheet import format_allowance, format_metric_rule, format_squaring

_CAUTIONS: Final = ("cutter", "iron", "needles", "others", "tools")
"""By what they are about: said once in a book, in short on every sheet."""


def front_pages(
    blocks: Sequence[BlockFacts], words: Messages, pages: PageNumbers, paper: PaperSize, *, quilts: bool = False
) -> Bodies:
    """The whole section; sizes are explained for each unit and seam that the book uses, `quilts` where it has some."""
    sizes = list(dict.fromkeys(format_allowance(facts) for facts in blocks))
    for say in (format_squaring, format_metric_rule):
        sizes += [text for text in dict.fromkeys(say(facts) for facts in blocks) if text]
    topics = ("pictures", "cutting", "units", "quilts") if quilts else ("pictures", "cutting", "units")
    reading = [words(f"begin-reading-{topic}") for topic in topics]
    printing = [words("begin-printing-size", page=pages.get("test", "0")), words("begin-printing-scale")]
    flowables = [title_flowable(words("begin-title"))]
    flowables += section(words("begin-reading"), reading, ruled=False)
    flowables += section(words("sheet-sizes"), sizes)
    flowables += section(words("begin-printing"), printing)
    flowables += section(words("begin-first"), [words("begin-first-words")])
    flowables.append(heading(words("sheet-care")))
    for number, what in enumerate(_CAUTIONS):
        flowables += section(words(f"caution-{what}"), [words(f"caution-{what}.words")], ruled=number > 0)
    return flowed(flowables, paper)
