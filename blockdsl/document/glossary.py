"""The trade's words that a site uses, each explained, with the first page that says it."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.document.content import DefinitionList, TextRun, WebPage
from blockdsl.document.said import words_on
from blockdsl.wording.glossary import terms_used
from blockdsl.wording.messages import Messages


def glossary_page(pages: Sequence[WebPage], name: str, words: Messages) -> WebPage | None:
    """The page of words; `name` is that of its file. None where the pages use no word of the trade."""
    titles = {page.name: page.title for page in pages}
    terms = terms_used({page.name: words_on(page) for page in pages}, words)

    entries = tuple(
        (
            used.term,
            (
                (TextRun(used.meaning, defines=True),),
                (TextRun(words("glossary-first"), "quiet"), TextRun(titles[used.page], target=used.page)),
            ),
        )
        for used in terms
    )
    return WebPage(name, words("glossary-title"), (DefinitionList(entries, "terms"),)) if entries else None
