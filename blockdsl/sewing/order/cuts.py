"""The order while it is being found: patches, the parts they come apart into, and seams left open."""

from __future__ import annotations

from collections.abc import Iterator

from msgspec import Struct, field


class CutLine(Struct):
    """Some patches; once parted, the parts in order.

    `opened` are sides of a partial seam closed at this place. `bent`: the last part is set in.
    """

    patches: list[int]
    parts: list[CutLine] = field(default_factory=list)
    opened: frozenset[int] = frozenset()
    bent: bool = False

    def walk(self) -> Iterator[CutLine]:
        """This and all parts within, each before its own parts."""
        waiting = [self]
        while waiting:
            here = waiting.pop()
            yield here
            waiting.extend(reversed(here.parts))
