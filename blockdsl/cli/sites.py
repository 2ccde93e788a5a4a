"""Web sites among the outputs: a folder of files that is made, kept and written as one."""

from __future__ import annotations

from pathlib import PurePosixPath
from typing import TYPE_CHECKING

import msgspec

from blockdsl.cli.cache_keys import content_of
from blockdsl.cli.outputs import Output
from blockdsl.export.naming import Taken
from blockdsl.export.written import is_inside

if TYPE_CHECKING:
    from collections.abc import Sequence

    from blockdsl.facts import BlockFacts, BookFacts
    from blockdsl.facts.quiltfacts import QuiltFacts


def site_output(book: BookFacts, stem: str) -> Output:
    """The folder of the book's site; its bytes are packed."""
    return Output(f"{stem}.web", lambda: _packed(book), ("site", content_of(book)), folder=True)


def unpacked(folder: str, data: bytes) -> dict[str, bytes]:
    """The files of a site by their names below the output folder.

    Errors: ValueError where the data are not a site's, or name a file outside its folder.
    """
    try:
        files = msgspec.msgpack.decode(data, type=dict[str, bytes])
    except msgspec.MsgspecError:
        raise ValueError("not the files of a site") from None
    if not all(map(is_inside, files)):
        raise ValueError("a site has no files outside its folder")
    return {f"{folder}/{name}": content for name, content in files.items()}


def _packed(book: BookFacts) -> bytes:
    from blockdsl.document.site import RESERVED, web_site
    from blockdsl.export.html import site_files

    return msgspec.msgpack.encode(site_files(web_site(book, Taken(RESERVED).take)))


def site_of_blocks(
    blocks: Sequence[BlockFacts], source: str, paper: str, quilts: Sequence[QuiltFacts] = ()
) -> BookFacts:
    """What a file without a book declares as one, by the name of its one quilt or block, or else of the file."""
    from blockdsl.facts import book_of

    words = PurePosixPath(source.replace("\\", "/")).stem.replace("-", " ").replace("_", " ").strip("<> ")
    named = quilts or blocks
    return book_of(blocks, named[0].name if len(named) == 1 else words[:1].upper() + words[1:], paper, quilts)
