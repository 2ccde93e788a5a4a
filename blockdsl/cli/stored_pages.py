"""Pages of a book that were painted before, kept one block at a time."""

from __future__ import annotations

from collections.abc import Callable

import msgspec

from blockdsl.cli.cache import Cache
from blockdsl.cli.cache_keys import content_of, key_of
from blockdsl.export.pdf_page import PaintedPage, paint_page
from blockdsl.marks.display_list import Kept, Page
from blockdsl.marks.theme import ACCENT, PaperSize
from blockdsl.marks.typeset import font_beside, painted
from blockdsl.page.book.parts import Bodies, texts_of

_Painted = tuple[tuple[PaintedPage, str], ...]
"""The pages of one part, each with its texts."""


class StoredPages:
    """Draws and paints what the cache does not have, and gives marks that stand for what is painted.

    `painted` is what they stand for, by their keys: the painter of the book needs it.
    """

    def __init__(self, cache: Cache) -> None:
        """Keep in `cache`; within one book everything is kept, even when the cache keeps nothing."""
        self.painted: dict[str, PaintedPage] = {}
        self._cache = cache
        self._known: dict[str, Bodies] = {}

    def pages(self, depends: tuple[object, ...], paper: PaperSize, draw: Callable[[], Bodies]) -> Bodies:
        """A mark for each page that `draw` gives or gave."""
        key = key_of("pages", content_of((depends, paper)), font_beside(), painted(ACCENT))
        if key not in self._known:
            pages = self._recalled(key)
            if pages is None:
                pages = tuple(
                    (paint_page(Page(paper.width_pt, paper.height_pt, marks)), " ".join(texts_of(marks)))
                    for marks in draw()
                )
                self._cache.put(key, msgspec.msgpack.encode(pages))
            self._known[key] = [
                (self._mark(f"{key}-{place}", page, words),) for place, (page, words) in enumerate(pages)
            ]
        return self._known[key]

    def _mark(self, key: str, page: PaintedPage, words: str) -> Kept:
        self.painted[key] = page
        return Kept(key, words)

    def _recalled(self, key: str) -> _Painted | None:
        data = self._cache.get(key)
        if data is None:
            return None
        try:
            return msgspec.msgpack.decode(data, type=_Painted)
        except msgspec.MsgspecError:  # whatever it is, it is not ours: then it is made again
            return None
