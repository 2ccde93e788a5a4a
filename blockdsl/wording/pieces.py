"""How the pieces of a step are named: by letter, by fabric, or by both, always the shortest that is unique in it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence

from blockdsl.facts.blockfacts import BlockFacts
from blockdsl.sewing.message import Style
from blockdsl.sewing.method_steps import MethodPiece
from blockdsl.wording.grammar import Article, Name, an, listed, name_of
from blockdsl.wording.lengths import figure
from blockdsl.wording.messages import Messages


def fabric_labels(block: BlockFacts) -> dict[str, str]:
    """What is printed for each fabric; one name of several fabrics gets the number of its swatch."""
    often = Counter(fabric.label for fabric in block.fabrics)
    return {
        fabric.name: f"{fabric.label} ({fabric.number})" if often[fabric.label] > 1 else fabric.label
        for fabric in block.fabrics
    }


class PieceNames:
    """The names of the pieces of one step, by role."""

    def __init__(self, pieces: Mapping[int, MethodPiece], block: BlockFacts, words: Messages) -> None:
        self._pieces, self._words, self._unit = pieces, words, block.unit
        self._labels = fabric_labels(block)
        self._kinds = {(piece.label, piece.fabric) for piece in pieces.values()}

    def name(self, role: int, style: Style) -> str:
        """The name of the role's piece in a style."""
        piece = self._pieces[role]
        fabric = self._labels[piece.fabric]
        match style:
            case "letter":
                return piece.label
            case "fabric":
                return fabric
            case "both":
                return piece.label if self._is_own_letter(piece) else self._in_fabric(piece)
            case "a":
                return an(piece.label, self._words) if self._is_own_letter(piece) else self._called(piece, "a")
            case "the":
                return piece.label if self._is_own_letter(piece) else self._called(piece, "the")
        return self._plain(piece)

    def takes(self, roles: Sequence[int]) -> str:
        """All that is taken: `1 D square (Lantern) and 4 C squares (Harbour fog)`; a piece of two roles once."""
        counts: dict[tuple[str, str], int] = {}
        kept: dict[tuple[str, str], MethodPiece] = {}
        for role in roles:
            piece = self._pieces[role]
            key = piece.label, piece.fabric
            counts[key] = counts.get(key, 0) + piece.count
            kept[key] = piece
        return listed([self._taken(kept[key], count) for key, count in counts.items()], self._words)

    def _taken(self, piece: MethodPiece, count: int) -> str:
        form, fabric = name_of(f"form-{piece.form}", self._words, count=count), self._labels[piece.fabric]
        return self._words("take-piece", count=count, letter=piece.label, form=form, fabric=fabric)

    def _called(self, piece: MethodPiece, article: Article) -> Name:
        """With its form behind its letter or fabric: `the Lantern square`."""
        return name_of(f"called-{piece.form}", self._words, article=article, name=self._plain(piece))

    def _in_fabric(self, piece: MethodPiece) -> str:
        return self._words("patch-in-fabric", letter=piece.label, fabric=self._labels[piece.fabric])

    def _is_own_letter(self, piece: MethodPiece) -> bool:
        return sum(label == piece.label for label, _ in self._kinds) == 1

    def _plain(self, piece: MethodPiece) -> str:
        if self._is_own_letter(piece):
            return piece.label
        fabric = self._labels[piece.fabric]
        own = sum(name == piece.fabric for _, name in self._kinds) == 1
        return fabric if own else self._in_fabric(piece)

    def size(self, piece: MethodPiece) -> str:
        """`1 1/2 × 27 1/2 in`."""
        width, height = (figure(piece.cut[place], self._unit, self._words) for place in (0, -1))
        return self._words("size", width=width, height=height, unit=self._unit)
