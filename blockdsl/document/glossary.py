"""The trade's words that a book or a site uses, each explained, with the first page that says it."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from blockdsl.document.content import Definition, DefinitionList, RichText, TextRun, WebPage
from blockdsl.document.said import words_on
from blockdsl.wording.glossary import TermUsed, terms_used
from blockdsl.wording.messages import Messages


def glossary_list(terms: Sequence[TermUsed], where: Callable[[str], RichText]) -> DefinitionList:
    """A line or two for each term; `where` shows the page that uses it first."""
    entries = (Definition(used.term, ((TextRun(used.meaning, defines=True),),), where(used.page)) for used in terms)
    return DefinitionList(tuple(entries), "terms")


def glossary_page(pages: Sequence[WebPage], name: str, words: Messages) -> WebPage | None:
    """The page of words; `name` is that of its file. None where the pages use no word of the trade."""
    titles = {page.name: page.title for page in pages}
    terms = terms_used({page.name: words_on(page) for page in pages}, words)

    def first(page: str) -> RichText:
        return (TextRun(words("glossary-first"), "quiet"), TextRun(titles[page], target=page))

    return WebPage(name, words("glossary-title"), (glossary_list(terms, first),)) if terms else None
