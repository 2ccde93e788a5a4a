"""What the parts of a quilt are called in its steps: blocks, plain cloth, rows, borders, and how each lies."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import cached_property

from msgspec import Struct

from blockdsl.facts.block_landmark import BlockLandmark
from blockdsl.facts.quiltfacts import QuiltFacts, QuiltPieceFacts, RingFacts
from blockdsl.facts.quiltstepfacts import QuiltPart, QuiltTake
from blockdsl.geometry import Exact, to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.model.quilt import PieceRole, RowKind
from blockdsl.sewing.part_name import part_called
from blockdsl.wording.grammar import Noun, an, listed
from blockdsl.wording.lengths import figure, length_words, size_words
from blockdsl.wording.messages import Messages
from blockdsl.wording.part_names import name_of_part
from blockdsl.wording.quilt_words import kind_words

_LISTED = 8
"""So many rows are listed one by one; more that follow each other by their first and last."""


_ORDER: tuple[PieceRole, ...] = (
    "plain square",
    "sash",
    "sash strip",
    "strip",
    "post",
    "half block",
    "edge post",
    "side triangle",
    "corner triangle",
    "border",
    "border corner",
)


class QuiltNames(Struct, frozen=True, dict=True):
    """The names of one quilt's parts in one language."""

    facts: QuiltFacts
    words: Messages

    # --- measures ----------------------------------------------------------------------------------

    def length(self, length: Exact) -> str:
        """`80 in`, `about 38 3/4 in`."""
        return length_words(length, self.facts.unit, self.words)

    def figure(self, length: Exact) -> str:
        """A length to come after `about`."""
        return self.words("length", length=figure(length, self.facts.unit, self.words), unit=self.facts.unit)

    def size(self, extent: tuple[Exact, Exact]) -> str:
        """`57 × 84 in`."""
        return size_words(extent, self.facts.unit, self.words)

    # --- fabrics, blocks, cloth --------------------------------------------------------------------

    @cached_property
    def _labels(self) -> dict[str, str]:
        return {fabric.name: fabric.label or fabric.name for fabric in self.facts.fabrics_used}

    def fabric(self, name: str) -> str:
        """A fabric as it is printed."""
        return self._labels.get(name, name)

    def fabric_of(self, piece: int) -> str:
        """The fabric of a piece of plain cloth."""
        return self.fabric(self.facts.pieces[piece].fabric)

    def part(self, part: QuiltPart | QuiltTake, count: int = 1) -> str:
        """So many of a part, without the number: `blocks`, `long sash`."""
        if part.what == "block":
            return self._block(part.index, part.colourway, count)
        return self.piece(part.index, count)

    def _block(self, kind: int, colourway: str, count: int) -> str:
        design = self.facts.kinds[kind]
        if design.role == "border unit" and design.name[:1].islower():
            return name_of_part(part_called(design.name), self.words, count=count)
        if design.role == "half block" and (half := self._half(design.name)):
            return self.words(half, count=count)
        colored = len(design.colourways) > 1
        if colored and colourway:
            return self.words("quilt-block-colored", name=design.name, count=count, colorway=colourway)
        blocks = [each for each in self.facts.kinds if each.role == "block"]
        alone = design.role == "block" and len(blocks) == 1 and not colored
        return self.words("quilt-block" if alone else "quilt-block-named", name=design.name, count=count)

    def _half(self, name: str) -> str:
        """The message for a half of the quilt's only block that is cut in two; none where there are several."""
        halved = {each.name.rpartition(", ")[0] for each in self.facts.kinds if each.role == "half block"}
        side = name.rpartition(", ")[2].removesuffix(" half")
        return f"quilt-half-{side}" if len(halved) == 1 and f"quilt-half-{side}" in self.words else ""

    def piece(self, piece: int, count: int = 1) -> str:
        """So many pieces of plain cloth, told from others of their role by length, or else by fabric or size."""
        own = self.facts.pieces[piece]
        alike = [each for each in self.facts.pieces if each.role == own.role and each.ring == own.ring]
        key = f"quilt-{own.role.replace(' ', '-')}"
        lengths = sorted({_longer(each) for each in alike})
        if own.role == "sash" and len(lengths) == 2:
            key = "quilt-long-sash" if _longer(own) == lengths[1] else "quilt-short-sash"
            alike = [each for each in alike if _longer(each) == _longer(own)]
        noun = Noun(key, count, "", ())
        if len({each.fabric for each in alike}) > 1:
            return noun.name(self.words, "quilt-piece-of-fabric", fabric=self.fabric(own.fabric))
        if len(alike) == 1:
            return noun.name(self.words)
        return noun.name(self.words, "quilt-piece-of-size", size=self.size(own.cut))

    def _rank(self, take: QuiltTake) -> int:
        if take.what == "block":
            return len(_ORDER) if self.facts.kinds[take.index].role == "half block" else 0
        return _ORDER.index(self.facts.pieces[take.index].role) + 1

    def a(self, part: QuiltPart) -> str:
        """One part with its article."""
        return an(self.part(part), self.words)

    def takes(self, takes: Iterable[QuiltTake]) -> str:
        """`6 blocks and 5 long sashes`: blocks first, then what lies between them, then what ends a row."""
        takes = sorted(takes, key=self._rank)
        taken = [self.words("take-units", count=take.count, name=self.part(take, take.count)) for take in takes]
        return listed(taken, self.words)

    def use(self, use: str, fabric: str, cut: tuple[Fraction, Fraction]) -> str:
        """What pieces of one size are cut for: borders by number, other plain cloth by its name, parts of blocks."""
        if use in ("binding", "sleeve"):
            return self.words(f"quilt-{use}")
        alike = [
            place
            for place, piece in enumerate(self.facts.pieces)
            if piece.role == use and piece.fabric == fabric and sorted(piece.cut) == sorted(cut)
        ]
        if not alike:
            return self._of_block(use)
        rings = [ring for ring in self.facts.rings if ring.number in {self.facts.pieces[each].ring for each in alike}]
        if use in ("border", "border corner"):
            names = listed([self.ring(ring) for ring in rings], self.words)
            return names if use == "border" else f"{self.piece(alike[0], 2)}, {names}"
        return listed(list(dict.fromkeys(self.piece(each, 2) for each in alike)), self.words)

    def _of_block(self, use: str) -> str:
        """A block, or a part of one: `Harbour Light: beam`."""
        block, part, unit = use.partition(": ")
        return f"{kind_words(block, self.words)}{part}{unit}"

    def role(self, role: str) -> str:
        """What a fabric is bought for, in one word or two."""
        if role == "border":
            return self.words("quilt-ring-only-border")
        return self.words(f"quilt-{role.replace(' ', '-')}", count=2)

    # --- how a block lies --------------------------------------------------------------------------

    def places(self, places: Sequence[str]) -> str:
        """`top and bottom`."""
        return listed([self.words(f"place-{place}") for place in places], self.words)

    def lies(self, landmarks: Sequence[BlockLandmark]) -> str:
        """`Wet slate at the upper left`."""
        return listed([self._landmark(each) for each in landmarks], self.words)

    def _landmark(self, mark: BlockLandmark) -> str:
        fabric = self.fabric(mark.fabric)
        if mark.kind == "center":
            where = listed([self.words(f"center-{place}") for place in mark.places], self.words)
            return self.words("landmark-center", fabric=fabric, places=where)
        if mark.kind == "mark":
            return self.words("landmark-mark", places=self.places(mark.places))
        key = "landmark-middle" if mark.kind == "middle" else "landmark-at"
        return self.words(key, fabric=fabric, places=self.places(mark.places), count=len(mark.places))

    def part_as_it_lies(self, part: QuiltPart) -> str:
        """One part with its article, and in brackets how it lies where that is not said elsewhere."""
        how = self.lies(part.landmarks) if part.landmarks else ""
        if part.corner is not None:
            how = self.words("quilt-square-corner", place=self.words(f"place-{part.corner}"))
        return self.words("quilt-part-lies", part=self.a(part), how=how) if how else self.a(part)

    # --- rows and borders --------------------------------------------------------------------------

    def numbers(self, numbers: Sequence[int]) -> str:
        """`1, 3, and 5`; many that follow each other as `1 through 24`."""
        if len(numbers) > _LISTED and numbers[-1] - numbers[0] == len(numbers) - 1:
            return self.words("quilt-numbers-through", first=str(numbers[0]), last=str(numbers[-1]))
        return listed(list(map(str, numbers)), self.words)

    def rows(self, kind: RowKind, numbers: Sequence[int]) -> str:
        """`columns 1 and 3`."""
        name = {"column": "column", "diagonal row": "diagonal", "row": "row"}.get(kind, "strips-numbered")
        return self.words(f"quilt-rows-{name}", count=len(numbers), numbers=self.numbers(numbers))

    def ring(self, ring: RingFacts) -> str:
        """`first border`, `border` where there is only one."""
        same = [each.number for each in self.facts.rings if each.word == ring.word]
        if len(same) == 1:
            return self.words(f"quilt-ring-only-{ring.word}")
        place = same.index(ring.number) + 1
        return self.words(f"quilt-ring-{ring.word}", ordinal=self.words("ordinal", number=place))


def _longer(piece: QuiltPieceFacts) -> float:
    return max(map(to_float, piece.finished))
