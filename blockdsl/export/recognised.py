"""Whether a file that is in no record looks as if blockdsl wrote it: by the marks that its writers leave."""

from __future__ import annotations

from codecs import BOM_UTF8
from pathlib import Path
from typing import Final

PRODUCER: Final = "blockdsl"
"""A PDF's producer, and the generator of an HTML page."""

SVG_MARK: Final = b"<!-- blockdsl -->"
"""Behind the XML declaration of an SVG."""

DXF_MARK: Final = b"999\nblockdsl\n"
"""A comment at the head of a DXF file."""

RULES_MARK: Final = b"# Written by blockdsl"
"""At the head of a file of rules for make."""

_HEAD_BYTES: Final = 1 << 12


def is_recognised(path: Path, data: bytes | None = None) -> bool:
    """Whether the file at `path`, a plain one, is one of ours; `data` is what would be written in its place.

    A PDF names its producer, an SVG and a page of a site their generator; a table is known by its first line, which
    cannot be judged before there is something to compare it with.
    """
    try:
        with path.open("rb") as file:
            head = file.read(_HEAD_BYTES)
    except OSError:
        return False
    if head.startswith(b"%PDF-"):
        return _producer(path) == PRODUCER
    match path.suffix:
        case ".svg":
            known = b"<svg" in head and (SVG_MARK in head or b"font-family:FiraGO" in head)
        case ".dxf":
            known = head.startswith(DXF_MARK)
        case ".html":
            known = f'content="{PRODUCER}"'.encode() in head
        case ".md" | ".csv":
            known = data is None or _first_line(head) == _first_line(data)
        case _:  # rules for make had no mark at first, but name themselves first among their targets
            first = head.split(maxsplit=1)[:1]
            known = head.startswith(RULES_MARK) or first in ([path.name.encode()], [str(path).encode()])
    return known


def _first_line(data: bytes) -> bytes:
    """Without the mark of UTF-8, which tables for spreadsheets did not always have."""
    return data.removeprefix(BOM_UTF8).split(b"\n", 1)[0]


def _producer(path: Path) -> str:
    """Who a PDF says has made it; nothing where it cannot be read as one."""
    from pypdf import PdfReader  # noqa: PLC0415 - loaded for a folder without a record alone, once in its life

    try:
        told = PdfReader(path).metadata
        return str(told.producer) if told is not None else ""
    except Exception:  # noqa: BLE001 - whatever ails it, it is not a file that we wrote
        return ""
