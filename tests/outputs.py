"""What a maker sees in a folder of outputs: everything but blockdsl's own record of it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

RECORD = ".blockdsl"


def in_folder(folder: Path) -> Iterator[Path]:
    """The entries of the folder."""
    return (path for path in folder.iterdir() if path.name != RECORD)


def bytes_below(folder: Path) -> dict[str, bytes]:
    """Every file below the folder, by its path there."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in folder.rglob("*")
        if path.is_file() and RECORD not in path.parts
    }
