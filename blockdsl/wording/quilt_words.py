"""What is said of a quilt's pictures and pieces, and what it takes from the shop."""

from __future__ import annotations

import re
from typing import Final

from blockdsl.cutting.buying import SHOP_UNIT, Buy
from blockdsl.facts.blockfacts import RulerUnit
from blockdsl.facts.quiltfacts import QuiltFacts, QuiltKindFacts, QuiltPieceFacts, RingFacts
from blockdsl.geometry import to_float
from blockdsl.geometry.fraction import Fraction
from blockdsl.geometry.number import write_exact
from blockdsl.wording.grammar import capital, in_figures, in_series, in_thousands, many
from blockdsl.wording.lengths import plain_measure, plain_size, size_words
from blockdsl.wording.messages import Messages, words_of

_SUFFIX: Final = re.compile("(.*), (mirror image|(?:upper|lower|left|right) half|border unit)")
_WITH_MIRROR: Final = " and its mirror image"


def format_setting(facts: QuiltFacts) -> str:
    """The setting and its count: `straight setting, 4 × 6`."""
    key = f"setting-{facts.setting.replace(' ', '-')}"
    return words_of(facts)(key, across=facts.across, down=facts.down)


def kind_words(name: str, words: Messages) -> str:
    """A block's name, and that it is a mirror image, a half or a border's unit where the facts say so."""
    if name.endswith(_WITH_MIRROR):
        return words("kind-with-mirror-image", name=kind_words(name.removesuffix(_WITH_MIRROR), words))
    found = _SUFFIX.fullmatch(name)
    if found is None:
        return name
    return words(f"kind-{found[2].replace(' ', '-')}", name=kind_words(found[1], words))


def format_blocks(facts: QuiltFacts) -> str:
    """The blocks by name: `22 Harbour Light`."""
    words = words_of(facts)
    return in_series(
        (
            words("quilt-blocks-named", count=in_thousands(count, words), block=kind_words(name, words))
            for name, count in (*facts.blocks, *facts.half_blocks)
        ),
        words,
    )


def title_of(kind: QuiltKindFacts, words: Messages) -> str:
    """A block's name as it stands; a unit of a border with a capital, as units have it on the sheets of blocks."""
    name = kind_words(kind.name, words)
    return capital(name) if kind.role == "border unit" else name


def format_buy(buy: Buy, words: Messages) -> str:
    """What to say in the shop: `2 3/4 yd`, `1.2 m`; `0 yd` for nothing."""
    name, whole = SHOP_UNIT[buy.unit]
    amount = buy.length / whole
    if name == "yd":
        return words("buy-yards", amount=write_exact(amount))
    return words("buy-meters", amount=in_figures(f"{float(amount):g}", words))


def format_strips_of_ring(facts: QuiltFacts, ring: RingFacts) -> str:
    """What is cut for a plain border, and how much of each length is to spare. Nothing of one whose step says it."""
    if ring.corners == "mitred":
        return ""
    words = words_of(facts)
    pieces = sorted(
        (piece for piece in facts.pieces if piece.ring == ring.number), key=lambda piece: _turn_of(piece, ring)
    )
    sizes = in_series((_format_strip(piece, ring, facts.unit, words) for piece in pieces), words)
    if not sizes:
        return ""
    spare = max((piece.to_spare for piece in pieces), default=Fraction(0))
    if not spare:
        return words("quilt-strips-listed", sizes=sizes)
    return words("quilt-strips-listed-spare", sizes=sizes, spare=plain_measure(spare, facts.unit, words))


def _format_strip(piece: QuiltPieceFacts, ring: RingFacts, unit: RulerUnit, words: Messages) -> str:
    """`2 of 3 1/2 × 80 1/2 in for the sides`; a square says its side once."""
    short, long = min(piece.cut), max(piece.cut)
    size = plain_measure(short, unit, words) if short == long else size_words((short, long), unit, words)
    return words(f"quilt-strip-{_place_of(piece, ring)}", count=piece.pieces, size=size)


def _turn_of(piece: QuiltPieceFacts, ring: RingFacts) -> int:
    """When a piece is sewn on: first or second, corners last."""
    order = ("all", "sides", "ends", "corners") if ring.sides_first else ("all", "ends", "sides", "corners")
    return order.index(_place_of(piece, ring))


def _place_of(piece: QuiltPieceFacts, ring: RingFacts) -> str:
    """Where a piece of a plain border lies; all four strips of a square one are alike."""
    if piece.role == "border corner":
        return "corners"
    if piece.count == 4:
        return "all"
    if ring.corners == "squares" and ring.before[0] == ring.before[1]:
        # All four strips are of one length, but an upright print runs up those of the sides.
        return "sides" if piece.cut[1] > piece.cut[0] else "ends"
    sides, ends = (ring.after if ring.corners == "mitred" else ring.before)[1], ring.after[0]
    if ring.corners != "mitred" and not ring.sides_first:
        sides = ring.after[1]
    return "sides" if max(piece.finished, key=to_float) == sides and sides != ends else "ends"


def describe_quilt_picture(facts: QuiltFacts) -> str:
    """Alternative text of the whole quilt."""
    words = words_of(facts)
    return words(
        "quilt-picture",
        quilt=facts.name,
        setting=format_setting(facts),
        blocks=format_blocks(facts),
        borders=many(len(facts.rings), "borders", words),
        size=plain_size(facts.finished, facts.unit, words),
    )


def describe_rows_picture(facts: QuiltFacts) -> str:
    """Alternative text of the rows drawn apart."""
    return words_of(facts)("quilt-rows-picture", count=len(facts.rows), quilt=facts.name)
