"""A kind of line: its word, where it belongs, how it is written, and how its tree becomes a node.

The tables of such kinds lie beside the nodes: `declarations`, `block_lines`, `book_lines`, `quilt_lines`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, Final, Literal, Protocol, TypeVar

from msgspec import Struct

from blockdsl.diagnostics import Span
from blockdsl.syntax.atoms import LineAt
from blockdsl.syntax.tree import LineTree, extent_of, find, length_of, tokens_of, trees_of, turns_of, widths_of

Home = Literal["file", "grid", "block", "quilt", "book", "maker", "maker alone"]


class Node(Protocol):
    """What a line says; it knows its place in the text."""

    @property
    def span(self) -> Span:
        """From its first letter to its last."""


Build = Callable[[LineAt, Span, LineTree], Any]
Made = TypeVar("Made")


class LineKind(Struct, frozen=True):
    """One row of the table.

    `home`: it declares something, or belongs in units and blocks, in blocks only, in quilts only, or in books. A line
    whose home is `maker` is a maker's own choice: it belongs in her `maker`, and in a book, a quilt or a block, where
    it wins; one whose home is `maker alone` belongs nowhere else. `usage` is an example. `forms` are the grammar's
    rules for the line, each with its node's class, or a function where the fields do not say how it is read. The word
    may also be spelled as in `also`; `former` are words that it had once, which are read and reported. A line that is
    allowed `once` is reported when it comes again in one declaration.
    """

    word: str
    home: Home
    usage: str
    forms: Mapping[str, type | Build]
    also: tuple[str, ...] = ()
    former: tuple[str, ...] = ()
    once: bool = False

    @property
    def makes(self) -> tuple[str, ...]:
        """The classes of the nodes that its forms make, by name."""
        return tuple(
            form.__name__ if isinstance(form, type) else str(form.__annotations__["return"])
            for form in self.forms.values()
        )

    def build(self, at: LineAt, span: Span, tree: LineTree) -> Any:
        """The node of a line of this kind.

        Errors: IssueFound where a word fits the grammar but is not allowed.
        """
        form = self.forms[tree.data]
        return node_from(form, at, span, tree) if isinstance(form, type) else form(at, span, tree)


def node_from(made: type[Made], at: LineAt, span: Span, tree: LineTree) -> Made:
    """A node from a tree that has what its fields ask for, in their order.

    A `Text` is the quoted text, a `Word` the next name, a `Number` the next number, a `LengthLiteral` the length, two
    of them the extent, a `bool` whether one of the words of its name was said.
    """
    fields = {name: kind for name, kind in made.__annotations__.items() if name != "span"}
    values: dict[str, object] = {}
    names, numbers = iter(tokens_of(tree, "NAME")), iter(tokens_of(tree, "NUMBER"))
    for name, kind in fields.items():
        match kind:
            case "Word" | "Word | None":
                word = next(names, None)
                values[name] = at.word(word) if word is not None else None
            case "Number" | "Number | None":
                number = next(numbers, None)
                values[name] = at.number(number) if number is not None else None
            case _ if kind in _READ:
                values[name] = _READ[kind](at, tree)
            case "bool":
                values[name] = find(tree, *name.upper().split("_")) is not None
    if {"width", "height"} <= fields.keys():
        values["width"], values["height"] = extent_of(at, tree)
    return made(span, **values)  # type: ignore[call-arg]  # every node begins with its span


def _length_if_any(at: LineAt, tree: LineTree) -> object:
    return length_of(at, tree) if trees_of(tree, "length") else None


def _text_or_word(at: LineAt, tree: LineTree) -> object:
    text = find(tree, "TEXT")
    return at.text(text) if text is not None else at.word(tokens_of(tree, "NAME")[0])


_READ: Final[dict[str, Callable[[LineAt, LineTree], object]]] = {
    "Text": lambda at, tree: at.text(tokens_of(tree, "TEXT")[0]),
    "Quoted": lambda at, tree: at.quoted(tokens_of(tree, "TEXT")[0]),
    "Text | Word": _text_or_word,
    "LengthLiteral": _length_if_any,
    "LengthLiteral | None": _length_if_any,
    "tuple[LengthLiteral, ...]": widths_of,
    "tuple[Number, ...]": lambda at, tree: tuple(
        number for token in tokens_of(tree, "NUMBER") for number in at.numbers(token)
    ),
    "tuple[Turn, ...]": lambda _at, tree: turns_of(find(tree, "TURNS")),
}
"""How each kind of field is read, by the words of its annotation; those that are taken in turn are read above."""
