"""Words and documents on standard output."""

from __future__ import annotations

import sys
from collections.abc import Iterator, Sequence
from typing import Final

from blockdsl.cli.status import CannotGoOn

_GAP: Final = "   "


def write_out(text: str) -> None:
    """Text on standard output, UTF-8 wherever we are; halves of characters become question marks.

    Errors: CannotGoOn when nothing can be written there; BrokenPipeError when the reader has gone.
    """
    try:
        sys.stdout.flush()
        sys.stdout.buffer.write(text.encode("utf-8", "replace"))
        sys.stdout.buffer.flush()
    except BrokenPipeError:
        raise
    except OSError as fault:
        raise CannotGoOn(f"standard output cannot be written: {in_words(fault)}") from fault


def in_words(fault: OSError) -> str:
    """What the system says of a failure, without its number."""
    return (fault.strerror or str(fault)).lower()


def many(count: int, word: str) -> str:
    """`1 file`, `8 files`."""
    return f"{count} {word}" if count == 1 else f"{count} {word}s"


def in_columns(rows: Sequence[Sequence[str]]) -> Iterator[str]:
    """The rows as lines of text, each cell under the one above it."""
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for row in rows:
        yield _GAP.join(words.ljust(width) for words, width in zip(row, widths, strict=True)).rstrip()
