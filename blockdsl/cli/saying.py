"""Words and documents on standard output."""

from __future__ import annotations

import sys

from blockdsl.cli.status import CannotGoOn


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
