"""One of the quilts that a block can become: its setting as the language writes it, and its numbers."""

from __future__ import annotations

from msgspec import Struct

from blockdsl.facts.quiltfacts import QuiltFacts


class Plan(Struct, frozen=True):
    """A setting as it is to be tried: its lines in the language, and what they do, for whoever gives it a name.

    `colourway` is that of some blocks, `alternate` the fabric of plain squares between them, or nothing.
    """

    lines: tuple[str, ...]
    turned: bool = False
    colourway: str = ""
    alternate: str = ""
    sashed: bool = False
    posts: bool = False

    def declared(self, name: str) -> str:
        """The declaration of a quilt of this name."""
        return "\n".join((f'quilt "{name}"', *(f"  {line}" for line in self.lines))) + "\n"


class Possibility(Struct, frozen=True):
    """A setting, and the quilt that comes of it."""

    plan: Plan
    quilt: QuiltFacts
