"""A sentence as data: the key of a message, and what is put in its places.

The words are in `blockdsl/wording`, a file for each language; what is measured stays exact until it is written there.
"""

from __future__ import annotations

from typing import Literal

from msgspec import Struct

from blockdsl.geometry import Exact

Position = Literal["top", "bottom", "left", "right", "upper-left", "upper-right", "lower-left", "lower-right"]
Style = Literal["plain", "the", "a", "both", "letter", "fabric", "take"]
"""How a piece is named in a sentence.

`plain`: the shortest name that is its own in the step, C, Lantern or C (Lantern). `the`: as plain, but the Lantern
square. `a`: the same with an article, a C or a Lantern square. `both`: C (Lantern), or
C where the letter is its own. `letter`: the letter alone. `fabric`: the fabric alone.
`take`: all that is taken of it, 1 C square (Lantern).
"""


class Length(Struct, frozen=True):
    """A measure, written with its unit."""

    value: Exact


class SizeArgument(Struct, frozen=True):
    """Width and height, written with their unit."""

    width: Exact
    height: Exact


class CutArgument(Struct, frozen=True):
    """A square or rectangle to be cut: `3 7/8 in square`, `3 1/2 × 6 1/2 in rectangle`."""

    width: Exact
    height: Exact


class PlaceArgument(Struct, frozen=True):
    """A side or a corner, as it lies on the table."""

    position: Position


class PieceName(Struct, frozen=True):
    """A piece that the step takes, by its role in the shape."""

    role: int
    style: Style = "plain"


class PieceList(Struct, frozen=True):
    """Several pieces one after the other."""

    roles: tuple[int, ...]
    style: Style = "plain"


class Message(Struct, frozen=True):
    """What is to be said: a key, and its arguments by name; an argument may be a message itself."""

    key: str
    arguments: tuple[tuple[str, Argument], ...] = ()


class Names(Struct, frozen=True):
    """Letters or names, as a list in words; `in_order` as they come, without *and*."""

    names: tuple[str, ...]
    in_order: bool = False


class MessageList(Struct, frozen=True):
    """Several messages as a list in words."""

    messages: tuple[Message, ...]


Argument = (
    str
    | int
    | Length
    | SizeArgument
    | CutArgument
    | Names
    | PlaceArgument
    | PieceName
    | PieceList
    | Message
    | MessageList
)


def message(key: str, **arguments: Argument) -> Message:
    """A message with its arguments."""
    return Message(key, tuple(arguments.items()))
