"""A message that the sewing layer made, in words: measures, places and names of pieces are written here."""

from __future__ import annotations

from blockdsl.model.fabric import RulerUnit
from blockdsl.sewing.message import (
    Argument,
    CutArgument,
    Length,
    Message,
    MessageList,
    Names,
    PieceList,
    PieceName,
    SizeArgument,
)
from blockdsl.wording.grammar import in_series, listed, name_of
from blockdsl.wording.lengths import length_words, size_words
from blockdsl.wording.messages import Messages
from blockdsl.wording.pieces import PieceNames


def sentence(
    said: Message, unit: RulerUnit, words: Messages, names: PieceNames | None = None, **more: str | int
) -> str:
    """The message with its arguments written out.

    Errors: ValueError when it names a piece and there are no `names`; as `Messages` when it lacks a message.
    """
    written = {name: _argument(value, unit, words, names) for name, value in said.arguments}
    return words(said.key, **(more | written))


def _argument(value: Argument, unit: RulerUnit, words: Messages, names: PieceNames | None) -> str | int:
    if isinstance(value, str | int):
        return value
    if isinstance(value, Message | MessageList):
        several = (value,) if isinstance(value, Message) else value.messages
        return listed([sentence(each, unit, words, names) for each in several], words)
    if isinstance(value, PieceName | PieceList):
        if names is None:
            raise ValueError(f"no pieces to name in {value}")
        return _named(value, words, names)
    if isinstance(value, Length | SizeArgument | CutArgument):
        return _measured(value, unit, words)
    if isinstance(value, Names):
        return in_series(value.names, words) if value.in_order else listed(value.names, words)
    return words(f"place-{value.position}")


def _named(value: PieceName | PieceList, words: Messages, names: PieceNames) -> str:
    if isinstance(value, PieceName):
        return names.name(value.role, value.style)
    if value.style == "take":
        return names.takes(value.roles)
    return listed([names.name(role, value.style) for role in value.roles], words)


def _measured(value: Length | SizeArgument | CutArgument, unit: RulerUnit, words: Messages) -> str:
    if isinstance(value, Length):
        return length_words(value.value, unit, words)
    if isinstance(value, CutArgument) and value.width == value.height:
        return name_of("cut-square", words, side=length_words(value.width, unit, words))
    size = size_words((value.width, value.height), unit, words)
    return name_of("cut-rectangle", words, size=size) if isinstance(value, CutArgument) else size
