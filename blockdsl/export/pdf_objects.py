"""The file format of PDF 1.5: numbered objects, many compressed as one, and the table that finds them (ISO 32000-1)."""

from __future__ import annotations

import zlib
from collections.abc import Iterable
from hashlib import sha256
from typing import Final

from blockdsl.export.pdf_text import utf16

_TOGETHER: Final = 500
"""So many objects are compressed as one: more gains nothing, and readers take them out one stream at a time."""

_SQUEEZE: Final = 6


class ObjectFile:
    """Takes objects in any order of their numbers and gives the whole file.

    A number is taken first (`number`), for objects name one another, and what it stands for is put later.
    """

    def __init__(self) -> None:
        """An empty file."""
        self._written: list[bytes] = [b"%PDF-1.5\n%\xe2\xe3\xcf\xd3\n"]
        self._length = len(self._written[0])
        self._places: list[tuple[int, int, int] | None] = [(0, 0, 65535)]
        self._waiting: list[tuple[int, bytes]] = []

    def number(self) -> int:
        """A number for an object to come."""
        self._places.append(None)
        return len(self._places) - 1

    def put(self, number: int, body: bytes) -> None:
        """A dictionary, an array or another value."""
        self._waiting.append((number, body))
        if len(self._waiting) == _TOGETHER:
            self._flush()

    def add(self, body: bytes) -> int:
        """The same with a number of its own, which is given back."""
        number = self.number()
        self.put(number, body)
        return number

    def put_stream(
        self, number: int, entries: bytes, data: bytes, *, squeezed: bool = False, opened_by: bytes = b"FlateDecode"
    ) -> None:
        """Bytes with some entries about them; `squeezed` says that they are compressed already, `opened_by` how."""
        if not squeezed:
            data = zlib.compress(data, _SQUEEZE)
        self._places[number] = (1, self._length, 0)
        self._write(
            b"%d 0 obj\n<<%s/Filter/%s/Length %d>>stream\n%s\nendstream\nendobj\n"
            % (number, entries, opened_by, len(data), data)
        )

    def add_stream(
        self, entries: bytes, data: bytes, *, squeezed: bool = False, opened_by: bytes = b"FlateDecode"
    ) -> int:
        """The same with a number of its own, which is given back."""
        number = self.number()
        self.put_stream(number, entries, data, squeezed=squeezed, opened_by=opened_by)
        return number

    def finished(self, root: int, information: int) -> bytes:
        """The file; its id follows from all that stands in it."""
        self._flush()
        table = self.number()
        start = self._length
        self._places[table] = (1, start, 0)
        identity = sha256(b"".join(self._written)).hexdigest()[:32].encode()
        rows = b"".join(
            bytes((kind,)) + one.to_bytes(4, "big") + two.to_bytes(2, "big")
            for kind, one, two in (place or (0, 0, 65535) for place in self._places)
        )
        entries = b"/Type/XRef/Size %d/W[1 4 2]/Root %d 0 R/Info %d 0 R/ID[<%s><%s>]" % (
            len(self._places),
            root,
            information,
            identity,
            identity,
        )
        self.put_stream(table, entries, rows)
        self._write(b"startxref\n%d\n%%%%EOF\n" % start)
        return b"".join(self._written)

    def _flush(self) -> None:
        """Write the waiting objects as one stream."""
        if not self._waiting:
            return
        holder = self.number()
        heads, bodies, at = [], [], 0
        for place, (number, body) in enumerate(self._waiting):
            self._places[number] = (2, holder, place)
            heads.append(b"%d %d" % (number, at))
            bodies.append(body)
            at += len(body) + 1
        head = b" ".join(heads) + b"\n"
        entries = b"/Type/ObjStm/N %d/First %d" % (len(bodies), len(head))
        self._waiting.clear()
        self.put_stream(holder, entries, head + b"\n".join(bodies))

    def _write(self, data: bytes) -> None:
        self._written.append(data)
        self._length += len(data)


def words(text: str) -> bytes:
    """A text as a value: plain ASCII stays readable, all else is UTF-16."""
    if not text.isascii() or not text.isprintable():
        return utf16(text)
    escaped = text.replace("\\", "\\\\").replace("(", "\\(").replace(")", "\\)")
    return f"({escaped})".encode("ascii")


def references(numbers: Iterable[int]) -> bytes:
    """A list of objects by their numbers."""
    return b"[%s]" % b" ".join(b"%d 0 R" % number for number in numbers)
