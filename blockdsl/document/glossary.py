"""The trade's words that a site uses, each explained, with the first page that says it."""

from __future__ import annotations

from collections.abc import Sequence

from blockdsl.document.parts import Pairs, Run, WebPage, plain
from blockdsl.document.said import words_of
from blockdsl.page.book.glossary import TERMS, TITLE, terms_used


def glossary_page(pages: Sequence[WebPage], name: str) -> WebPage | None:
    """The page of words; `name` is that of its file. None where the pages use no word of the trade."""
    titles = {page.name: page.title for page in pages}
    terms = terms_used({page.name: words_of(page) for page in pages})
    entries = tuple(
        (term, (plain(TERMS[term]), (Run("first in ", "quiet"), Run(titles[first], target=first))))
        for term, first in terms.items()
    )
    return WebPage(name, TITLE, (Pairs(entries, "terms"),)) if entries else None
