"""Web sites among the outputs: a folder of files that is made, kept and written as one."""

from __future__ import annotations

from typing import TYPE_CHECKING

import msgspec

from blockdsl.cli.cache_keys import content_of
from blockdsl.cli.outputs import Output
from blockdsl.export.written import is_inside
from blockdsl.printing import site_files

if TYPE_CHECKING:
    from blockdsl.facts import BookFacts


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
    return msgspec.msgpack.encode(site_files(book))
