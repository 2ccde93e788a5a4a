"""Web sites among the outputs: a folder of files that is made, kept and written as one."""

from __future__ import annotations

import pickle
from pathlib import PurePosixPath
from typing import TYPE_CHECKING

from blockdsl.cli.cache_keys import content_of
from blockdsl.cli.naming import Taken
from blockdsl.cli.outputs import Output

if TYPE_CHECKING:
    from collections.abc import Sequence

    from blockdsl.facts import BlockFacts, BookFacts
    from blockdsl.facts.quiltfacts import QuiltFacts


def site_output(book: BookFacts, stem: str) -> Output:
    """The folder of the book's site; its bytes are packed."""
    return Output(f"{stem}.web", lambda: _packed(book), ("site", content_of(book)), folder=True)


def unpacked(folder: str, data: bytes) -> dict[str, bytes]:
    """The files of a site by their names below the output folder."""
    files: dict[str, bytes] = pickle.loads(data)  # noqa: S301 - packed below, and kept in our own folder with a digest
    return {f"{folder}/{name}": content for name, content in files.items()}


def _packed(book: BookFacts) -> bytes:
    from blockdsl.drawing.web_site import RESERVED, web_site
    from blockdsl.export.html import site_files

    return pickle.dumps(site_files(web_site(book, Taken(RESERVED).take)), pickle.HIGHEST_PROTOCOL)


def site_of_blocks(
    blocks: Sequence[BlockFacts], source: str, paper: str, quilts: Sequence[QuiltFacts] = ()
) -> BookFacts:
    """What a file without a book declares as one, by the name of its one quilt or block, or else of the file."""
    from blockdsl.facts import book_of

    words = PurePosixPath(source.replace("\\", "/")).stem.replace("-", " ").replace("_", " ").strip("<> ")
    named = quilts or blocks
    return book_of(blocks, named[0].name if len(named) == 1 else words[:1].upper() + words[1:], paper, quilts)
