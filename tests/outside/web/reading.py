"""A web page as a reader of our own makes it out, with nothing but Python's own parser of HTML."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from html.parser import HTMLParser
from pathlib import Path

VOID = {"hr", "input", "link", "meta", "br"}


@dataclass
class Node:
    """An element; its children are elements and words."""

    tag: str
    attributes: dict[str, str]
    children: list[Node | str] = field(default_factory=list)

    def all(self, tag: str) -> Iterator[Node]:
        """Every element of that name inside, in order."""
        for child in self.children:
            if isinstance(child, Node):
                if child.tag == tag:
                    yield child
                yield from child.all(tag)

    def one(self, tag: str) -> Node:
        """The only element of that name inside."""
        (found,) = self.all(tag)
        return found

    @property
    def text(self) -> str:
        """Its words as they stand there, pictures left out."""
        return "".join(
            child if isinstance(child, str) else "" if child.tag == "svg" else child.text for child in self.children
        )

    @property
    def words(self) -> str:
        """What is read: the text with plain single spaces."""
        return " ".join(self.text.split())


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.open = [Node("document", {})]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        node = Node(tag, {name: value or "" for name, value in attrs})
        self.open[-1].children.append(node)
        if tag not in VOID:
            self.open.append(node)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.open[-1].children.append(Node(tag, {name: value or "" for name, value in attrs}))

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop().tag == tag, f"</{tag}> closes something else"

    def handle_data(self, data: str) -> None:
        self.open[-1].children.append(data)


def read_page(path: Path) -> Node:
    """The page at `path`."""
    reader = _Reader()
    reader.feed(path.read_text(encoding="utf-8"))
    reader.close()
    assert len(reader.open) == 1, f"{path.name}: something is not closed"
    return reader.open[0]
